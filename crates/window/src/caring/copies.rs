//! Copies: for the next lot, for the next owner, as one zip; and what has changed.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};

use egui::Ui;
use quarterturn_folder::{Folder, FolderError, pack_into};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Home, changes, copy_for_next_lot, for_next_owner, mirrored};

use super::{Command as Care, typed};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, main_button, section, soft, strong};
use crate::tokens::{GAP, size};
use crate::view::View;

/// What is being put together.
#[derive(Debug, Default)]
pub(crate) struct State {
    /// Name of the copy for the next lot.
    name: String,
    /// Where it is written.
    folder: String,
    /// True if the plan is turned left to right.
    is_mirrored: bool,
    /// Ids of the contacts that go along.
    kept: Vec<String>,
    /// Where the zip is written.
    zip: String,
    /// The home that this one is compared with, by its path.
    other: String,
    /// What has changed, in words.
    changed: Option<Vec<String>>,
    said: Option<String>,
    work: Option<Receiver<Outcome>>,
}

#[derive(Debug)]
enum Outcome {
    Said(String),
    Changed(Vec<String>),
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Name of the copy.
    Name(String),
    /// Where it is written.
    Folder(String),
    /// Whether the plan is turned left to right.
    Mirror(bool),
    /// Whether a contact goes along.
    Keep(String, bool),
    /// Write the copy for the next lot.
    NextLot,
    /// Write the copy for the next owner.
    NextOwner,
    /// Where the zip is written.
    Zip(String),
    /// Write it.
    Pack,
    /// The home to compare with.
    Other(String),
    /// Compare with it, or with how this home was when it was opened.
    Compare,
}

impl State {
    /// Takes what the thread has to say.
    pub(crate) fn poll(&mut self) {
        let Some(outcome) = self.work.as_ref().and_then(|work| work.try_recv().ok()) else {
            return;
        };
        self.work = None;
        match outcome {
            Outcome::Said(said) => self.said = Some(said),
            Outcome::Changed(changed) => self.changed = Some(changed),
        }
    }

    fn start(&mut self, ctx: &egui::Context, work: impl FnOnce() -> Outcome + Send + 'static) {
        let (send, receive) = channel();
        let ctx = ctx.clone();
        std::thread::spawn(move || {
            // Nobody waits any more if another home was opened meanwhile.
            if send.send(work()).is_ok() {
                ctx.request_repaint();
            }
        });
        self.said = None;
        self.work = Some(receive);
    }
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    let language = app.words.language();
    match command {
        Command::Name(name) => app.care.copies.name = name,
        Command::Folder(folder) => app.care.copies.folder = folder,
        Command::Mirror(is_mirrored) => app.care.copies.is_mirrored = is_mirrored,
        Command::Keep(id, is_kept) => {
            app.care.copies.kept.retain(|kept| *kept != id);
            if is_kept {
                app.care.copies.kept.push(id);
            }
        }
        Command::NextLot => {
            let copies = &app.care.copies;
            let keep: Vec<&str> = copies.kept.iter().map(String::as_str).collect();
            let mut copy = copy_for_next_lot(app.history.home(), &keep, None);
            copies.name.trim().clone_into(&mut copy.name);
            let copy = if copies.is_mirrored { mirrored(&copy) } else { copy };
            write(app, ctx, copy, language);
        }
        Command::NextOwner => {
            let copy = for_next_owner(app.history.home());
            write(app, ctx, copy, language);
        }
        Command::Zip(zip) => app.care.copies.zip = zip,
        Command::Pack => {
            let to = PathBuf::from(app.care.copies.zip.trim());
            let Some(folder) = app.opening.folder.clone() else {
                app.care.copies.said = Some(app.words.text("window-care-no-folder"));
                return;
            };
            app.keeping.flush();
            app.care.copies.start(ctx, move || {
                let words = Catalogue::in_language(language);
                let packed = Folder::at(&folder).and_then(|folder| pack_into(&folder, &to));
                Outcome::Said(told(&words, packed, &to))
            });
        }
        Command::Other(other) => app.care.copies.other = other,
        Command::Compare => compare(app, ctx, language),
    }
}

/// Writes a copy into a new folder, with the pictures that it names.
fn write(app: &mut App, ctx: &egui::Context, copy: Home, language: &'static str) {
    let to = PathBuf::from(app.care.copies.folder.trim());
    let from = app.opening.folder.clone();
    app.care.copies.start(ctx, move || {
        let words = Catalogue::in_language(language);
        let pictures = pictures(&copy, from.as_deref());
        let written = Folder::create(&to, &copy).and_then(|folder| {
            for (path, bytes) in pictures {
                folder.store_as(&path, &bytes)?;
            }
            Ok(())
        });
        Outcome::Said(told(&words, written, &to))
    });
}

/// The pictures that a home names, as far as they can be read.
fn pictures(home: &Home, from: Option<&Path>) -> Vec<(String, Vec<u8>)> {
    let folder = from.and_then(|path| Folder::at(path).ok());
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref());
    let photos = home.components.iter().filter_map(|component| component.photo.as_deref());
    plans
        .map(|plan| plan.picture.as_str())
        .chain(photos)
        .filter_map(|path| {
            let bytes = match &folder {
                Some(folder) => folder.read_inside(path).ok()?,
                None => crate::builtin::picture(path)?.to_vec(),
            };
            Some((path.to_owned(), bytes))
        })
        .collect()
}

fn told(words: &Catalogue, written: Result<(), FolderError>, to: &Path) -> String {
    match written {
        Ok(()) => words.fill("window-papers-saved", &[fill("path", &to.display().to_string())]),
        Err(error) => error.told(words),
    }
}

/// Compares with another home, or with how this one was when it was opened.
fn compare(app: &mut App, ctx: &egui::Context, language: &'static str) {
    let now = std::sync::Arc::clone(app.history.home());
    let other = app.care.copies.other.trim().to_owned();
    let opened = app.opening.home.clone();
    app.care.copies.changed = None;
    app.care.copies.start(ctx, move || {
        let words = Catalogue::in_language(language);
        let before = if other.is_empty() {
            opened
        } else {
            match read(Path::new(&other)) {
                Ok(home) => home,
                Err(error) => return Outcome::Said(error.told(&words)),
            }
        };
        let all = changes(&before, &now);
        Outcome::Changed(all.iter().flat_map(|change| words.change(change)).collect())
    });
}

fn read(path: &Path) -> Result<Home, FolderError> {
    Ok(Folder::at(path)?.read()?.home)
}

/// The part of the page.
pub(super) fn copies_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    let mut say = |command: Command| out.push(Press::Care(Care::Copies(command)));
    if let Some(said) = &state.said {
        ui.add(egui::Label::new(strong(said.as_str(), size::BODY)).wrap());
    }
    if state.work.is_some() {
        ui.label(view.text("papers-waiting"));
    }
    section(ui, &view.text("care-copy"));
    ui.add(egui::Label::new(soft(ui, view.text("care-copy-hint"))).wrap());
    if let Some(name) = typed(ui, "copy-name", &view.text("care-copy-name"), &state.name) {
        say(Command::Name(name));
    }
    if let Some(folder) = typed(ui, "copy-folder", &view.text("care-copy-folder"), &state.folder) {
        say(Command::Folder(folder));
    }
    ui.horizontal_wrapped(|ui| {
        if chosen_button(ui, &view.text("care-mirror"), state.is_mirrored).clicked() {
            say(Command::Mirror(!state.is_mirrored));
        }
    });
    ui.label(view.text("care-copy-contacts"));
    ui.horizontal_wrapped(|ui| {
        for contact in &view.home.contacts {
            let is_kept = state.kept.contains(&contact.id);
            if chosen_button(ui, &contact.name, is_kept).clicked() {
                say(Command::Keep(contact.id.clone(), !is_kept));
            }
        }
    });
    ui.add_space(GAP);
    let has_place = !state.folder.trim().is_empty() && state.work.is_none();
    ui.horizontal_wrapped(|ui| {
        ui.add_enabled_ui(has_place && !state.name.trim().is_empty(), |ui| {
            if main_button(ui, &view.text("care-next-lot")).clicked() {
                say(Command::NextLot);
            }
        });
        ui.add_enabled_ui(has_place, |ui| {
            if button(ui, &view.text("care-next-owner")).clicked() {
                say(Command::NextOwner);
            }
        });
    });
    ui.add(egui::Label::new(soft(ui, view.text("care-next-owner-hint"))).wrap());
    section(ui, &view.text("care-zip"));
    if let Some(zip) = typed(ui, "copy-zip", &view.text("care-zip-path"), &state.zip) {
        say(Command::Zip(zip));
    }
    ui.add_enabled_ui(!state.zip.trim().is_empty() && state.work.is_none(), |ui| {
        if button(ui, &view.text("care-pack")).clicked() {
            say(Command::Pack);
        }
    });
    section(ui, &view.text("care-changed"));
    if let Some(other) = typed(ui, "copy-other", &view.text("care-other"), &state.other) {
        say(Command::Other(other));
    }
    if button(ui, &view.text("care-compare")).clicked() {
        say(Command::Compare);
    }
    match &state.changed {
        Some(changed) if changed.is_empty() => {
            ui.label(view.text("care-no-change"));
        }
        Some(changed) => {
            for text in changed {
                ui.add(egui::Label::new(text.as_str()).wrap());
            }
        }
        None => {}
    }
}
