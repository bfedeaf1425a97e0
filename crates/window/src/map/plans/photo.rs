//! A picture of a plan, taken in: read, put straight, measured, stored in the home's folder.
//!
//! Reading, straightening and storing go on in threads, with progress and a way to stop them.

use std::fmt;
use std::fs::File;
use std::io::Read as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use egui::{ColorImage, TextureHandle, TextureOptions};
use quarterturn_folder::{Folder, FolderError};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Edit, Plan};
use quarterturn_mapping::{
    Corners, Known, Margin, Picture, PictureError, Scale, Straightened, read_distance, straighten,
};

use super::paper::Point;
use crate::app::App;
use crate::ask::Page;
use crate::map::Tool;

/// Largest file read, in bytes: a photo of 48 megapixels has 20 MB.
const LARGEST_FILE: u64 = 256 << 20;

/// What is done with the picture.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Let the system's file window choose one, for this level.
    Choose(String),
    /// This is typed as its path.
    Path(String),
    /// Take in the one at this path, for this level.
    Take(String, PathBuf),
    /// Stop what is under way.
    Stop,
    /// The corner at this place is there, in pixels.
    Corner(usize, Point),
    /// How wide (false) or how deep (true) the rectangle is, as it is typed.
    Size(bool, String),
    /// Keep what is beside the rectangle, or not.
    Beside(bool),
    /// Put it straight by its corners.
    Straighten,
    /// It is straight as it is.
    AsItIs,
    /// It is straight now.
    Accept,
    /// Set the corners again.
    Again,
    /// A point of the distance, in pixels.
    Point(Point),
    /// The point at this place was moved there, in pixels.
    MovePoint(usize, Point),
    /// This is typed as the distance.
    Distance(String),
    /// The distance is a door of this width in metres.
    Door(f64),
    /// The two points are that far apart: it is done.
    Measure,
    /// It is not taken in after all.
    Forget,
    /// Take the level's plan off the map.
    Remove(String),
}

/// What becomes of the picture.
#[derive(Default)]
pub(crate) enum Stage {
    /// There is none.
    #[default]
    Nothing,
    /// The system's file window is open.
    Choosing(Receiver<Option<PathBuf>>, f64),
    /// Something goes on in a thread.
    Working(Work),
    /// Its corners are set.
    Corners,
    /// It was put straight, and is looked at.
    Straight(Box<Straightened>),
    /// It is measured.
    Measuring,
}

/// What goes on in a thread.
pub(crate) struct Work {
    outcome: Receiver<Outcome>,
    /// How much of it is done, in thousandths.
    done: Arc<AtomicU32>,
    stop: Arc<AtomicBool>,
    /// Key of the words for it.
    pub(super) key: &'static str,
}

impl Work {
    /// How much of it is done, from 0 to 1.
    pub(super) fn share(&self) -> f32 {
        let done = u16::try_from(self.done.load(Ordering::Relaxed)).unwrap_or(1000);
        f32::from(done) / 1000.0
    }
}

enum Outcome {
    Read(Picture, ColorImage),
    Straight(Box<Straightened>, ColorImage),
    Stored(String),
    NotRead(PathBuf, std::io::Error),
    Refused(PictureError),
    NotStored(FolderError),
}

/// How far one is with the picture.
#[derive(Default)]
pub(crate) struct State {
    pub(super) stage: Stage,
    /// What is typed as its path.
    pub(super) path: String,
    /// The level that it is of.
    level: String,
    /// The picture as it is worked on.
    pub(super) picture: Option<Arc<Picture>>,
    /// The same on the screen; of what was put straight, that.
    pub(super) texture: Option<TextureHandle>,
    /// As it came, to set the corners again.
    first: Option<TextureHandle>,
    pub(super) corners: [Point; 4],
    /// True to keep what is beside the rectangle.
    pub(super) beside: bool,
    /// The ends of the distance, in pixels.
    pub(super) points: Vec<Point>,
    pub(super) distance: String,
    /// How wide and how deep the rectangle is, if that is typed.
    pub(super) sizes: [String; 2],
    /// How many metres a pixel is, once that is known.
    scale: Option<Scale>,
    /// What is wrong, in words.
    pub(super) wrong: Option<String>,
}

impl fmt::Debug for State {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("State").field("path", &self.path).finish_non_exhaustive()
    }
}

impl State {
    /// True while the picture has the page.
    pub(super) fn is_under_way(&self) -> bool {
        !matches!(self.stage, Stage::Nothing | Stage::Choosing(..))
    }

    /// Width and height in pixels of what is shown.
    pub(super) fn size(&self) -> Option<(u32, u32)> {
        match &self.stage {
            Stage::Straight(straight) => Some(straight.picture.size()),
            _ => self.picture.as_ref().map(|picture| picture.size()),
        }
    }
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    app.map.plans.photo.wrong = None;
    match command {
        Command::Choose(level) => choose(app, ctx, level),
        Command::Path(path) => app.map.plans.photo.path = path,
        Command::Take(level, path) => take(app, ctx, level, path),
        Command::Stop => {
            if let Stage::Working(work) = &app.map.plans.photo.stage {
                work.stop.store(true, Ordering::Relaxed);
            }
        }
        Command::Corner(place, to) => {
            let photo = &mut app.map.plans.photo;
            let size = photo.size();
            if let Some(corner) = photo.corners.get_mut(place) {
                *corner = within(to, size);
            }
        }
        Command::Size(is_depth, text) => {
            let [across, down] = &mut app.map.plans.photo.sizes;
            *(if is_depth { down } else { across }) = text;
        }
        Command::Beside(beside) => app.map.plans.photo.beside = beside,
        Command::Straighten => put_straight(app, ctx),
        Command::AsItIs => app.map.plans.photo.stage = Stage::Measuring,
        Command::Accept => accept(app, ctx),
        Command::Again => {
            let photo = &mut app.map.plans.photo;
            photo.texture.clone_from(&photo.first);
            photo.stage = Stage::Corners;
        }
        Command::Point(at) => {
            let photo = &mut app.map.plans.photo;
            if photo.points.len() > 1 {
                photo.points.clear();
            }
            let at = within(at, photo.size());
            photo.points.push(at);
        }
        Command::MovePoint(place, to) => {
            let photo = &mut app.map.plans.photo;
            let to = within(to, photo.size());
            if let Some(point) = photo.points.get_mut(place) {
                *point = to;
            }
        }
        Command::Distance(distance) => app.map.plans.photo.distance = distance,
        Command::Door(metres) => {
            let units = app.history.home().units;
            app.map.plans.photo.distance = super::paper::length(metres, units);
        }
        Command::Measure => measure(app, ctx),
        Command::Forget => app.map.plans.photo = State::default(),
        Command::Remove(level) => {
            app.edit(Edit::SetPlan { level, plan: None });
        }
    }
}

/// A point of the picture.
fn within((x, y): Point, size: Option<(u32, u32)>) -> Point {
    let (width, height) = size.unwrap_or_default();
    (x.clamp(0.0, f64::from(width)), y.clamp(0.0, f64::from(height)))
}

fn choose(app: &mut App, ctx: &egui::Context, level: String) {
    let filter = app.words.text("window-plans-picture-filter");
    let chosen = crate::opening::choose_file(ctx, &filter, &["jpg", "jpeg", "png", "webp"]);
    let photo = &mut app.map.plans.photo;
    photo.level = level;
    photo.stage = Stage::Choosing(chosen, ctx.input(|i| i.time));
}

fn take(app: &mut App, ctx: &egui::Context, level: String, path: PathBuf) {
    let photo = &mut app.map.plans.photo;
    if app.keeping.folder().is_none() {
        photo.wrong = Some(app.words.text("window-plans-no-folder"));
        return;
    }
    *photo = State { level, beside: true, path: path.display().to_string(), ..State::default() };
    let most = ctx.input(|i| i.max_texture_side);
    photo.stage = Stage::Working(work(ctx, "plans-reading", move |progress| {
        let mut bytes = Vec::new();
        let read =
            File::open(&path).and_then(|file| file.take(LARGEST_FILE).read_to_end(&mut bytes));
        if let Err(error) = read {
            return Outcome::NotRead(path, error);
        }
        match Picture::read(&bytes, progress) {
            Ok(picture) => {
                let shown = on_screen(&picture, most);
                Outcome::Read(picture, shown)
            }
            Err(error) => Outcome::Refused(error),
        }
    }));
}

/// The picture for the screen, not larger than that can hold.
fn on_screen(picture: &Picture, most: usize) -> ColorImage {
    let small = picture.thumb(u32::try_from(most).unwrap_or(u32::MAX).max(1));
    let (width, height) = small.size();
    let side = |pixels: u32| usize::try_from(pixels).unwrap_or_default();
    ColorImage::from_rgb([side(width), side(height)], small.pixels())
}

/// Starts something in a thread.
fn work(
    ctx: &egui::Context,
    key: &'static str,
    does: impl FnOnce(&dyn Fn(f32) -> bool) -> Outcome + Send + 'static,
) -> Work {
    let (send, outcome) = channel();
    let done = Arc::new(AtomicU32::new(0));
    let stop = Arc::new(AtomicBool::new(false));
    let (told, stops, ctx) = (Arc::clone(&done), Arc::clone(&stop), ctx.clone());
    std::thread::spawn(move || {
        let progress = |share: f32| {
            told.store(thousandths(share), Ordering::Relaxed);
            ctx.request_repaint();
            !stops.load(Ordering::Relaxed)
        };
        let outcome = does(&progress);
        // Nobody waits any more if another home was opened meanwhile.
        if send.send(outcome).is_ok() {
            ctx.request_repaint();
        }
    });
    Work { outcome, done, stop, key }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "between 0 and 1000 nothing is lost but what is less than a thousandth"
)]
fn thousandths(share: f32) -> u32 {
    (share.clamp(0.0, 1.0) * 1000.0) as u32
}

fn put_straight(app: &mut App, ctx: &egui::Context) {
    let photo = &mut app.map.plans.photo;
    let Some(picture) = photo.picture.clone() else { return };
    let corners = match Corners::new(photo.corners, picture.size()) {
        Ok(corners) => corners,
        Err(error) => {
            photo.wrong = Some(error.told(&app.words));
            return;
        }
    };
    let typed: Vec<&str> = photo.sizes.iter().map(|size| size.trim()).collect();
    let known = match typed.as_slice() {
        [across, down] if !across.is_empty() || !down.is_empty() => {
            match (read_distance(across), read_distance(down)) {
                (Ok(across), Ok(down)) => Known::Metres { across, down },
                (Err(error), _) | (_, Err(error)) => {
                    photo.wrong = Some(error.told(&app.words));
                    return;
                }
            }
        }
        _ => Known::Nothing,
    };
    let margin = if photo.beside { Margin::Kept } else { Margin::None };
    let most = ctx.input(|i| i.max_texture_side);
    photo.stage =
        Stage::Working(work(ctx, "plans-straightening", move |progress| {
            match straighten(&picture, &corners, known, margin, progress) {
                Ok(straight) => {
                    let shown = on_screen(&straight.picture, most);
                    Outcome::Straight(Box::new(straight), shown)
                }
                Err(error) => Outcome::Refused(error),
            }
        }));
}

fn accept(app: &mut App, ctx: &egui::Context) {
    let photo = &mut app.map.plans.photo;
    match std::mem::take(&mut photo.stage) {
        Stage::Straight(straight) => {
            let size = straight.picture.size();
            photo.scale = straight.metres_per_pixel.and_then(|metres| Scale::of(metres, size).ok());
            photo.picture = Some(Arc::new(straight.picture));
            photo.points.clear();
            photo.stage = Stage::Measuring;
            // Its size was typed: nothing is left to measure.
            if photo.scale.is_some() {
                keep(app, ctx);
            }
        }
        other => photo.stage = other,
    }
}

fn measure(app: &mut App, ctx: &egui::Context) {
    let photo = &mut app.map.plans.photo;
    let Some(picture) = photo.picture.clone() else { return };
    let [from, to] = photo.points.as_slice() else {
        photo.wrong = Some(app.words.text("window-plans-two-points"));
        return;
    };
    let scale = match read_distance(&photo.distance) {
        Ok(metres) => Scale::between(*from, *to, metres, picture.size())
            .map_err(|error| error.told(&app.words)),
        Err(error) => Err(error.told(&app.words)),
    };
    match scale {
        Ok(scale) => photo.scale = Some(scale),
        Err(wrong) => {
            photo.wrong = Some(wrong);
            return;
        }
    }
    keep(app, ctx);
}

/// Stores the picture in the home's folder, in a thread.
fn keep(app: &mut App, ctx: &egui::Context) {
    let photo = &mut app.map.plans.photo;
    let Some(picture) = photo.picture.clone() else { return };
    let Some(folder) = app.keeping.folder().cloned() else {
        photo.wrong = Some(app.words.text("window-plans-no-folder"));
        return;
    };
    let level = photo.level.clone();
    photo.stage =
        Stage::Working(work(ctx, "plans-storing", move |_| store(&folder, &level, &picture)));
}

fn store(folder: &Folder, level: &str, picture: &Picture) -> Outcome {
    let bytes = match picture.stored() {
        Ok(bytes) => bytes,
        Err(error) => return Outcome::Refused(error),
    };
    match folder.store_plan(level, &bytes) {
        Ok(path) => Outcome::Stored(path),
        Err(error) => Outcome::NotStored(error),
    }
}

/// Takes what threads and the system's file window have to say. Called once a frame.
pub(crate) fn poll(app: &mut App, ctx: &egui::Context) {
    match &app.map.plans.photo.stage {
        Stage::Choosing(chosen, since) => {
            let chosen = match chosen.try_recv() {
                Err(TryRecvError::Empty) => return,
                Err(TryRecvError::Disconnected) => None,
                Ok(chosen) => chosen,
            };
            let waited = ctx.input(|i| i.time) - since;
            let photo = &mut app.map.plans.photo;
            photo.stage = Stage::Nothing;
            match chosen {
                Some(path) => {
                    let level = photo.level.clone();
                    take(app, ctx, level, path);
                }
                // See `App::take_chosen`.
                None if !(0.5..=24.0).contains(&waited) => {
                    photo.wrong = Some(app.words.text("window-perhaps-no-dialog"));
                }
                None => {}
            }
        }
        Stage::Working(work) => match work.outcome.try_recv() {
            Ok(outcome) => take_outcome(app, ctx, outcome),
            Err(TryRecvError::Empty) => {}
            Err(TryRecvError::Disconnected) => app.map.plans.photo.stage = Stage::Nothing,
        },
        Stage::Nothing | Stage::Corners | Stage::Straight(_) | Stage::Measuring => {}
    }
}

fn take_outcome(app: &mut App, ctx: &egui::Context, outcome: Outcome) {
    let load = |image: ColorImage| ctx.load_texture("plan-photo", image, TextureOptions::LINEAR);
    let photo = &mut app.map.plans.photo;
    match outcome {
        Outcome::Read(picture, shown) => {
            photo.corners = Corners::to_begin_with(picture.size());
            photo.picture = Some(Arc::new(picture));
            photo.texture = Some(load(shown));
            photo.first.clone_from(&photo.texture);
            photo.stage = Stage::Corners;
        }
        Outcome::Straight(straight, shown) => {
            photo.texture = Some(load(shown));
            photo.stage = Stage::Straight(straight);
        }
        Outcome::Stored(path) => stored(app, &path),
        Outcome::NotRead(path, error) => {
            let fills =
                [fill("path", &path.display().to_string()), fill("why", &error.to_string())];
            let wrong = app.words.fill("window-unread", &fills);
            go_back(photo, wrong);
        }
        Outcome::Refused(error) => {
            let wrong = error.told(&app.words);
            go_back(photo, wrong);
        }
        Outcome::NotStored(error) => {
            photo.wrong = Some(error.told(&app.words));
            photo.stage = Stage::Measuring;
        }
    }
}

/// To where one was before the thread began.
fn go_back(photo: &mut State, wrong: String) {
    photo.wrong = Some(wrong);
    photo.stage = if photo.picture.is_some() { Stage::Corners } else { Stage::Nothing };
}

/// The picture is in the home's folder: now it is the level's plan.
fn stored(app: &mut App, path: &str) {
    let photo = &mut app.map.plans.photo;
    let (Some(picture), Some(scale)) = (&photo.picture, photo.scale) else { return };
    let (level, width) = (photo.level.clone(), picture.size().0);
    let old = app.history.home().level(&level).and_then(|level| level.plan.as_ref());
    let corner = old.map_or((0.0, 0.0), |plan| (plan.left_m, plan.top_m));
    let plan: Plan = scale.plan(path, width, corner);
    if app.edit(Edit::SetPlan { level: level.clone(), plan: Some(Box::new(plan)) }) {
        app.map.level = Some(level);
        let plans = &mut app.map.plans;
        plans.photo = State::default();
        plans.at = super::At::Rooms;
    } else {
        app.map.plans.photo.stage = Stage::Measuring;
    }
}

/// Takes a file that was dropped on the window if plans are being worked on; false if not.
pub(crate) fn take_dropped(app: &mut App, ctx: &egui::Context, path: &Path) -> bool {
    if app.page != Page::Map || app.map.tool != Tool::Plans {
        return false;
    }
    // A home stays a home.
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    if path.is_dir() || matches!(ending.as_deref(), Some("ron" | "zip")) {
        return false;
    }
    let home = app.history.home();
    let shown = app.map.level.as_deref().and_then(|id| home.level(id));
    let Some(level) = shown.or(home.levels.first()).map(|level| level.id.clone()) else {
        return false;
    };
    app.map.plans.at = super::At::Picture;
    take(app, ctx, level, path.to_owned());
    true
}

/// The widths of doors, by the words for them, in the home's units.
pub(super) fn doors(words: &Catalogue, is_us: bool) -> Vec<(String, f64)> {
    quarterturn_mapping::DOORS
        .iter()
        .filter(|door| door.is_us == is_us)
        .map(|door| (words.text(door.key), door.width_m))
        .collect()
}
