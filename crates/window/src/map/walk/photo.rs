//! A photo of a device: chosen, made small and stripped of where it was taken, and stored, on a thread.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use egui::{TextEdit, Ui, vec2};
use quarterturn_folder::Folder;
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Edit};
use quarterturn_mapping::Picture;

use super::choose::{pressed, say};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::soft;
use crate::tokens::TOUCH;
use crate::view::View;

/// Longest side of a photo that is stored, in pixels: enough to read a nameplate.
const LONGEST: u32 = 2048;

/// How far one is with it.
#[derive(Debug, Default)]
pub(super) struct State {
    path: String,
    working: Option<Working>,
}

/// A photo that is on its way.
#[derive(Debug)]
struct Working {
    /// Id of the device.
    id: String,
    arrival: Receiver<Taken>,
    /// Set to stop it.
    stop: Arc<AtomicBool>,
}

/// What became of it: the path in the home's folder, nothing if nothing was chosen, or what is wrong.
type Taken = Result<Option<String>, String>;

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// This path was typed.
    Path(String),
    /// Take the photo at the path that was typed.
    Take(String),
    /// Let the system's file window choose one.
    Choose(String),
    /// Stop it.
    Stop,
    /// The device has no photo any more. Its file stays, for an undo may need it.
    Remove(String),
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    match command {
        Command::Path(path) => app.map.walk.photo.path = path,
        Command::Take(id) => {
            let path = app.map.walk.photo.path.trim().to_owned();
            start(app, ctx, id, Some(PathBuf::from(path)));
        }
        Command::Choose(id) => start(app, ctx, id, None),
        Command::Stop => {
            if let Some(working) = app.map.walk.photo.working.take() {
                working.stop.store(true, Ordering::Relaxed);
            }
        }
        Command::Remove(id) => put(app, &id, None),
    }
}

/// Takes the photo that has arrived.
pub(super) fn poll(app: &mut App, _ctx: &egui::Context) {
    let Some(working) = &app.map.walk.photo.working else { return };
    let taken = match working.arrival.try_recv() {
        Ok(taken) => taken,
        Err(TryRecvError::Empty) => return,
        Err(TryRecvError::Disconnected) => Ok(None),
    };
    let id = working.id.clone();
    app.map.walk.photo.working = None;
    match taken {
        Ok(Some(path)) => {
            app.map.walk.photo.path.clear();
            put(app, &id, Some(path));
        }
        // Nothing was chosen, or there is no file window: the path can be typed.
        Ok(None) => app.message = Some(app.words.text("window-photo-none")),
        Err(why) => app.message = Some(why),
    }
}

/// The photo, and how another is taken.
pub(super) fn photo_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    component: &Component,
    out: &mut Vec<Press>,
) {
    let mut press = |command| say(out, super::Command::Photo(command));
    let id = &component.id;
    if let Some(working) = &state.working {
        ui.add(egui::Label::new(view.text("photo-coming")).wrap());
        if working.id == *id && pressed(ui, &view.text("photo-stop")) {
            press(Command::Stop);
        }
        return;
    }
    if let Some(photo) = &component.photo {
        ui.add(egui::Label::new(view.fill("photo-is", &[fill("path", photo)])).wrap());
        if pressed(ui, &view.text("photo-remove")) {
            press(Command::Remove(id.clone()));
        }
    }
    if !view.lasts {
        ui.add(egui::Label::new(soft(ui, view.text("photo-no-folder"))).wrap());
        return;
    }
    if pressed(ui, &view.text("photo-choose")) {
        press(Command::Choose(id.clone()));
    }
    let mut path = state.path.clone();
    let label = view.text("photo-path");
    ui.add(egui::Label::new(soft(ui, &label)).wrap());
    let edit = TextEdit::singleline(&mut path)
        .id_salt("photo-path")
        .desired_width(f32::INFINITY)
        .min_size(vec2(TOUCH, TOUCH))
        .align(egui::Align2::LEFT_CENTER);
    let response = ui.add(edit).accessible_name(label);
    if response.changed() {
        press(Command::Path(path.clone()));
    }
    if !path.trim().is_empty() && pressed(ui, &view.text("photo-take")) {
        press(Command::Take(id.clone()));
    }
}

/// Reads a photo on a thread; without a path the system's file window asks for one first.
pub(super) fn start(app: &mut App, ctx: &egui::Context, id: String, path: Option<PathBuf>) {
    let folder = app.opening.folder.as_deref().and_then(|path| Folder::at(path).ok());
    let Some(folder) = folder else {
        app.message = Some(app.words.text("window-photo-no-folder"));
        return;
    };
    let (send, arrival) = channel();
    let stop = Arc::new(AtomicBool::new(false));
    let tag = app.words.language().to_owned();
    let (ctx, stopped, device) = (ctx.clone(), Arc::clone(&stop), id.clone());
    std::thread::spawn(move || {
        let words = Catalogue::in_language(&tag);
        let path = path.or_else(|| {
            let kinds = ["jpg", "jpeg", "png", "webp"];
            rfd::FileDialog::new().add_filter(words.text("window-photo-filter"), &kinds).pick_file()
        });
        let taken = path.map(|path| take(&folder, &device, &path, &words, &stopped)).transpose();
        // Nobody waits any more if it was stopped.
        if send.send(taken).is_ok() {
            ctx.request_repaint();
        }
    });
    app.map.walk.photo.working = Some(Working { id, arrival, stop });
}

fn take(
    folder: &Folder,
    id: &str,
    path: &std::path::Path,
    words: &Catalogue,
    stopped: &AtomicBool,
) -> Result<String, String> {
    /// Largest file read, in bytes.
    const LARGEST: u64 = 64 << 20;
    let unread = |error: std::io::Error| {
        let fills = [fill("path", &path.display().to_string()), fill("why", &error.to_string())];
        words.fill("window-unread", &fills)
    };
    let mut bytes = Vec::new();
    let file = std::fs::File::open(path).map_err(unread)?;
    std::io::Read::read_to_end(&mut std::io::Read::take(file, LARGEST), &mut bytes)
        .map_err(unread)?;
    let go_on = |_: f32| !stopped.load(Ordering::Relaxed);
    let picture = Picture::read_within(&bytes, LONGEST, &go_on).map_err(|why| why.told(words))?;
    let stored = picture.stored().map_err(|why| why.told(words))?;
    folder.store_photo(id, &stored).map_err(|why| why.told(words))
}

fn put(app: &mut App, id: &str, photo: Option<String>) {
    let Some(component) = app.history.home().component(id) else { return };
    let changed = Component { photo, ..component.clone() };
    app.edit(Edit::PutComponent(Box::new(changed)));
}
