//! Boxes about the home itself: a new one, a copy that lasts, one zip, what a session left that came to a
//! sudden end, and another window that has the home.

mod boxes;
mod work;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError};

use quarterturn_folder::{FolderError, Unsaved};
use quarterturn_guidance::Catalogue;
use quarterturn_home::{FORMAT, History, Home, Level, Units};

use crate::app::App;
use crate::ask::Page;
use crate::keeping::{Conflict, Keeping};
use crate::map::Tool;

pub(crate) use boxes::boxes_ui;

/// What is asked for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Form {
    /// A new home.
    New,
    /// Where a copy of this one goes.
    Copy,
    /// Where this zip is unpacked.
    Unzip(PathBuf),
}

/// What is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Field {
    /// Name of the home.
    Name,
    /// Where it stands.
    Address,
    /// Number to call when people are in danger.
    Emergency,
    /// The folder.
    Folder,
}

/// What is done in the boxes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Ask for a new home.
    New,
    /// Ask for a new home whose plan is in this picture.
    NewFrom(PathBuf),
    /// Ask where a copy goes.
    Copy,
    /// Ask where this zip goes.
    Unzip(PathBuf),
    /// This is typed.
    Type(Field, String),
    /// The new home's units.
    Units(Units),
    /// The language of its answers, by its tag.
    Language(&'static str),
    /// Let the system's file window choose the folder that it goes into.
    ChooseFolder,
    /// Do what is asked for.
    Go,
    /// Close the box.
    Close,
    /// Go on from what was left unsaved.
    TakeUp,
    /// Leave it; it is offered again next time.
    Leave,
    /// Throw it away.
    Discard,
    /// Load what is on disk now.
    Reload,
    /// Try again to save here.
    Retry,
}

/// What the boxes show.
#[derive(Debug, Default)]
pub(crate) struct State {
    form: Option<Form>,
    typed: BTreeMap<Field, String>,
    /// The picture of the new home's plan.
    picture: Option<PathBuf>,
    /// False until the form was drawn once.
    is_drawn: bool,
    units: Units,
    /// Tag of the language; `None` for the window's.
    language: Option<&'static str>,
    left: Option<Unsaved>,
    conflict: Option<Conflict>,
    choosing: Option<(Receiver<Option<PathBuf>>, f64)>,
    work: Option<Receiver<Result<PathBuf, FolderError>>>,
    /// What is wrong, in words.
    wrong: Option<String>,
}

impl State {
    /// At the opening of a home: what was left unsaved in it is offered.
    pub(crate) fn of(keeping: &Keeping, home: &Home) -> Self {
        Self { left: keeping.unsaved().filter(|left| left.home != *home), ..Self::default() }
    }

    /// The form was drawn: the focus stays where it is put from now on.
    pub(crate) fn drawn(&mut self) {
        self.is_drawn = self.form.is_some();
    }

    /// True if one of the boxes is there.
    pub(crate) fn is_open(&self) -> bool {
        self.form.is_some() || self.left.is_some() || self.conflict.is_some()
    }

    fn typed(&self, field: Field) -> &str {
        self.typed.get(&field).map_or("", |typed| typed.trim())
    }

    fn ask(&mut self, form: Form, units: Units) {
        *self = Self {
            form: Some(form),
            units,
            left: self.left.take(),
            conflict: self.conflict,
            ..Self::default()
        };
    }
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    app.starting.wrong = None;
    let units = app.history.home().units;
    match command {
        Command::New => {
            app.open_box = None;
            app.starting.ask(Form::New, units);
        }
        Command::NewFrom(picture) => {
            app.open_box = None;
            app.starting.ask(Form::New, units);
            app.starting.picture = Some(picture);
        }
        Command::Copy => {
            app.open_box = None;
            app.starting.ask(Form::Copy, units);
        }
        Command::Unzip(zip) => {
            app.open_box = None;
            app.starting.ask(Form::Unzip(zip), units);
        }
        Command::Type(field, text) => {
            app.starting.typed.insert(field, text);
        }
        Command::Units(units) => app.starting.units = units,
        Command::Language(tag) => app.starting.language = Some(tag),
        Command::ChooseFolder => {
            let chosen = crate::opening::choose_folder(ctx);
            app.starting.choosing = Some((chosen, ctx.input(|i| i.time)));
        }
        Command::Go => go(app, ctx),
        Command::Close => {
            app.starting.form = None;
            app.starting.work = None;
            app.starting.conflict = None;
        }
        Command::TakeUp => take_up(app),
        Command::Leave => app.starting.left = None,
        Command::Discard => {
            if let Some(left) = app.starting.left.take()
                && let Err(error) = app.keeping.discard(left)
            {
                app.message = Some(error.told(&app.words));
            }
        }
        Command::Reload => {
            app.starting.conflict = None;
            if let Some(folder) = app.folder().map(Path::to_owned) {
                app.open(&folder);
            }
        }
        Command::Retry => {
            app.starting.conflict = None;
            app.message = None;
            let home = app.history.home().clone();
            app.keeping.retry(&home);
        }
    }
}

/// Goes on from what was left unsaved, and saves it.
fn take_up(app: &mut App) {
    let Some(left) = app.starting.left.take() else { return };
    let home = left.home.clone();
    match app.keeping.take_up(left) {
        Ok(()) => {
            app.history = History::new(home);
            app.home_changed();
            app.message = Some(app.words.text("window-start-taken-up"));
        }
        Err(error) => app.message = Some(error.told(&app.words)),
    }
}

/// Shows the box about what cannot be saved, if that is new.
pub(crate) fn take_conflict(app: &mut App) {
    if let Some(conflict) = app.keeping.conflict() {
        app.starting.conflict = Some(conflict);
    }
}

/// The folder that the home goes into: what is typed, or one named after the home beside the other
/// homes.
fn folder(state: &State, home: &Home, here: Option<&Path>, words: &Catalogue) -> PathBuf {
    let typed = state.typed(Field::Folder);
    if !typed.is_empty() {
        return PathBuf::from(typed);
    }
    let beside = here.and_then(Path::parent).map(Path::to_owned);
    let parent = beside.or_else(std::env::home_dir).unwrap_or_default();
    match &state.form {
        Some(Form::Unzip(zip)) => zip.with_extension(""),
        Some(Form::Copy) => {
            let name = here.and_then(Path::file_name).map(|name| name.to_string_lossy());
            let name = name.map_or_else(|| Home::default().free_id(&home.name), Into::into);
            let copy = words.text("window-start-copy-folder");
            free_folder(&parent, &format!("{name}-{copy}"))
        }
        Some(Form::New) | None => {
            let name = state.typed(Field::Name);
            let name =
                if name.is_empty() { words.text("window-start-folder") } else { name.to_owned() };
            free_folder(&parent, &Home::default().free_id(&name))
        }
    }
}

/// A folder of this name, or with a number behind it, that is not there yet.
fn free_folder(parent: &Path, name: &str) -> PathBuf {
    let numbered = (2_u32..1000).map(|number| parent.join(format!("{name}-{number}")));
    let first = parent.join(name);
    [first.clone()].into_iter().chain(numbered).find(|path| !path.exists()).unwrap_or(first)
}

fn go(app: &mut App, ctx: &egui::Context) {
    if app.starting.work.is_some() {
        return;
    }
    let home = app.history.home().clone();
    let to = folder(&app.starting, &home, app.opening.folder.as_deref(), &app.words);
    let done = match app.starting.form.clone() {
        None => return,
        Some(Form::New) => {
            if app.starting.typed(Field::Name).is_empty() {
                app.starting.wrong = Some(app.words.text("window-start-no-name"));
                return;
            }
            let home = new_home(&app.starting, &app.words);
            work::start(ctx, move || work::create(&to, &home))
        }
        Some(Form::Copy) => {
            let from = app.keeping.folder().cloned();
            work::start(ctx, move || work::copy(from.as_ref(), &home, &to))
        }
        Some(Form::Unzip(zip)) => work::start(ctx, move || work::unzip(&zip, &to)),
    };
    app.starting.work = Some(done);
}

fn new_home(state: &State, words: &Catalogue) -> Home {
    let typed =
        |field| Some(state.typed(field)).filter(|typed| !typed.is_empty()).map(str::to_owned);
    let name = words.text("window-plans-name-ground");
    let id = Home::default().free_id(&name);
    Home {
        format: FORMAT,
        name: state.typed(Field::Name).to_owned(),
        units: state.units,
        language: Some(state.language.map_or_else(|| words.language().to_owned(), str::to_owned)),
        address: typed(Field::Address),
        emergency_phone: typed(Field::Emergency),
        levels: vec![Level { id, name, elevation_m: 0.0, plan: None }],
        ..Home::default()
    }
}

/// Takes what threads and the system's file window have to say. Called once a frame.
pub(crate) fn poll(app: &mut App, ctx: &egui::Context) {
    let state = &mut app.starting;
    if let Some((chosen, since)) = &state.choosing {
        let waited = ctx.input(|i| i.time) - since;
        let chosen = match chosen.try_recv() {
            Err(TryRecvError::Empty) => None,
            Err(TryRecvError::Disconnected) => Some(None),
            Ok(chosen) => Some(chosen),
        };
        match chosen {
            None => {}
            Some(chosen) => {
                state.choosing = None;
                // See `App::take_chosen`.
                if chosen.is_none() && !(0.5..=24.0).contains(&waited) {
                    state.wrong = Some(app.words.text("window-perhaps-no-dialog"));
                }
                if let Some(path) = chosen {
                    state.typed.insert(Field::Folder, path.display().to_string());
                }
            }
        }
    }
    let Some(work) = &app.starting.work else { return };
    let done = match work.try_recv() {
        Err(TryRecvError::Empty) => return,
        Err(TryRecvError::Disconnected) => {
            app.starting.work = None;
            return;
        }
        Ok(done) => done,
    };
    app.starting.work = None;
    match done {
        Ok(folder) => {
            let is_new = app.starting.form == Some(Form::New);
            let picture = app.starting.picture.take();
            let (page, tool) = (app.page, app.map.tool);
            app.open(&folder);
            if is_new {
                app.not_empty_any_more();
                app.map.tool = Tool::Plans;
                app.turn_to(Page::Map);
                match picture {
                    Some(picture) => crate::map::plans::take_in(app, ctx, &picture),
                    // A map begins with a picture of the plan, or without one.
                    None => app.map.plans.begin(),
                }
            } else {
                // A copy goes on where one was.
                app.map.tool = tool;
                app.turn_to(page);
            }
            let words = app.words.fill(
                "window-start-in-folder",
                &[quarterturn_guidance::fill("path", &folder.display().to_string())],
            );
            app.message = Some(words);
        }
        Err(error) => app.starting.wrong = Some(error.told(&app.words)),
    }
}
