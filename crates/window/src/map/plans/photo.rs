//! A picture of a plan, taken in: read, put straight, measured, stored in the home's folder.
//!
//! Reading, straightening and storing go on in threads, with progress and a way to stop them.

mod threads;

use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::sync::mpsc::{Receiver, TryRecvError};

use egui::{ColorImage, TextureHandle};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Edit, Plan};
use quarterturn_mapping::{
    Corners, Known, Margin, Picture, Scale, Straightened, read_distance, straighten,
};

use super::paper::Point;
use super::room_edits::around;
use crate::app::App;
use crate::ask::Page;
use crate::map::Tool;
use crate::pictures::SHRINKS;
use crate::sheet::spaces_of;
use threads::{Outcome, Work, on_screen, read, store, work};

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
    /// Keep so much beside the rectangle.
    Beside(Margin),
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
    /// Move the level's plan by so many metres; by a key if so.
    Move(String, Point, bool),
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
    /// What of the picture is kept.
    pub(super) beside: Margin,
    /// Where the rectangle begins in what was put straight, in pixels.
    origin: Point,
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
        Command::Move(level, by, is_by_key) => move_by(app, level, by, is_by_key),
    }
}

/// Moves the plan of a level under its rooms.
fn move_by(app: &mut App, level: String, (dx, dy): Point, is_by_key: bool) {
    let home = app.history.home();
    let Some(plan) = home.level(&level).and_then(|level| level.plan.clone()) else { return };
    let moved = Plan { left_m: plan.left_m + dx, top_m: plan.top_m + dy, ..plan };
    let gesture = format!("move the plan of {level}");
    let edit = Edit::SetPlan { level, plan: Some(Box::new(moved)) };
    if is_by_key {
        // In small steps; taken back they are one.
        app.edit_within(&gesture, edit);
    } else {
        app.edit(edit);
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
    *photo = State { level, path: path.display().to_string(), ..State::default() };
    let most = ctx.input(|i| i.max_texture_side);
    photo.stage =
        Stage::Working(work(ctx, "plans-reading", move |progress| read(path, most, progress)));
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
    let margin = photo.beside;
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
            let [left, top, ..] = straight.rectangle;
            photo.origin = (left, top);
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
    let load = |image: ColorImage| ctx.load_texture("plan-photo", image, SHRINKS);
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
    let home = app.history.home();
    // The rectangle comes to lie where the rooms begin that are drawn already, else at the origin: if it
    // was the outer walls, all floors fit on each other.
    let rooms = home.level(&level).into_iter().flat_map(|level| spaces_of(home, level));
    let corners: Vec<Point> = rooms.flat_map(|room| room.outline.iter().copied()).collect();
    let (left, top) = around(&corners).map_or((0.0, 0.0), |rooms| (rooms.left, rooms.top));
    let at = |metres: f64, pixels: f64| metres - pixels * scale.metres_per_pixel();
    let corner = (at(left, photo.origin.0), at(top, photo.origin.1));
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

/// True if a file is a picture by its name.
pub(crate) fn is_picture(path: &Path) -> bool {
    // HEIC and the like too: taking it in tells what to do with it.
    const ENDINGS: [&str; 8] = ["jpg", "jpeg", "png", "webp", "heic", "heif", "tif", "gif"];
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    ending.is_some_and(|ending| ENDINGS.contains(&ending.as_str())) && !path.is_dir()
}

/// Takes a picture in for the level that is shown.
pub(crate) fn take_in(app: &mut App, ctx: &egui::Context, path: &Path) {
    let home = app.history.home();
    let shown = app.map.level.as_deref().and_then(|id| home.level(id));
    let Some(level) = shown.or(home.levels.first()).map(|level| level.id.clone()) else { return };
    app.turn_to(Page::Map);
    app.map.tool = Tool::Plans;
    app.map.plans.at = super::At::Picture;
    take(app, ctx, level, path.to_owned());
}

/// The widths of doors, by the words for them, in the home's units.
pub(super) fn doors(words: &Catalogue, is_us: bool) -> Vec<(String, f64)> {
    quarterturn_mapping::DOORS
        .iter()
        .filter(|door| door.is_us == is_us)
        .map(|door| (words.text(door.key), door.width_m))
        .collect()
}
