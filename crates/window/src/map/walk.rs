//! Walk round the house and pin what you stand in front of.
//!
//! One chooses a thing, presses its place on the plan, and it is on the map with what is usual for it.
//! What is wrong about that is put right in the form of the device, which opens by itself.

mod breaker;
mod choose;
mod device;
mod fields;
mod offers;
mod photo;
mod put;

use egui::Ui;
use quarterturn_guidance::fill;
use quarterturn_home::{Component, DeviceState, Edit, Level, With, attached};
use quarterturn_mapping::{Proposal, accept, accept_all};

use super::canvas::{MarkedLine, Marks, Touch};
use super::{MapCommand, MapState, Tool};
use crate::app::App;
use crate::ask::{Command as Press, Page};
use crate::view::View;
pub(crate) use choose::Pick;
pub(crate) use fields::Field;
pub(crate) use photo::Command as PhotoCommand;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    /// What is typed to find a thing.
    pub(crate) search: String,
    /// The room one stands in.
    pub(crate) room: Option<String>,
    /// What the next press on the plan puts there.
    pub(crate) pick: Option<Pick>,
    /// How many of its numbered parts; `None` for as many as usual.
    pub(crate) count: Option<usize>,
    /// The device whose new place is pressed next.
    pub(crate) putting: Option<String>,
    /// What was just put there: one goes on from it to the next.
    placed: Vec<String>,
    /// What is typed into a field of a device.
    typing: Option<fields::Typing>,
    /// The choice of a device that is folded out.
    open: Option<&'static str>,
    /// True if what is seldom told of a device is folded out.
    more: bool,
    /// The device that is to be deleted, once what goes with it was seen, and that.
    deleting: Option<(String, Vec<String>)>,
    offers: offers::Offers,
    photo: photo::State,
}

impl State {
    /// Another device is picked: what was begun with the last is over.
    pub(crate) fn forget(&mut self) {
        self.putting = None;
        self.placed.clear();
        self.typing = None;
        self.open = None;
        self.deleting = None;
    }
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// These words are searched for.
    Search(String),
    /// One stands in this room.
    Room(Option<String>),
    /// This is put on the plan with the next press; `None` for nothing.
    Pick(Option<Pick>),
    /// So many of its numbered parts.
    Count(usize),
    /// Put what was picked there; without a point into the room alone.
    Place {
        /// Id of the level.
        level: String,
        /// Where, in metres.
        at: Option<(f64, f64)>,
    },
    /// The next press on the plan is the new place of this device.
    Putting(Option<String>),
    /// Move a device.
    Move {
        /// Id of the device.
        id: String,
        /// Id of the level.
        level: String,
        /// Where to, in metres.
        to: (f64, f64),
    },
    /// Fold a choice out, or in.
    Unfold(&'static str),
    /// Fold out what is seldom told, or in.
    More,
    /// This was typed into a field.
    Type(String, Field, String),
    /// The field was left.
    Typed,
    /// A device was tried.
    Tried(String, DeviceState),
    /// Put another like it beside it.
    Copy(String),
    /// Show what depends on it before it is deleted; `None` to keep it.
    AskDelete(Option<String>),
    /// Delete it.
    Delete(String),
    /// The device hangs on this breaker.
    OnBreaker(String, String),
    /// Draw a line that was proposed.
    Accept(Box<Proposal>),
    /// Draw all that were proposed.
    AcceptAll,
    /// Something about the photo.
    Photo(PhotoCommand),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    let state = &mut app.map.walk;
    match command {
        Command::Search(words) => state.search = words,
        Command::Room(room) => state.room = room,
        Command::Pick(pick) => {
            state.pick = pick;
            state.count = None;
            state.putting = None;
            app.map.selected = None;
        }
        Command::Count(count) => state.count = Some(count),
        Command::Place { level, at } => place(app, &level, at),
        Command::Putting(id) => state.putting = id,
        Command::Move { id, level, to } => move_to(app, &id, &level, to),
        Command::Unfold(what) => {
            state.open = if state.open == Some(what) { None } else { Some(what) };
        }
        Command::More => state.more = !state.more,
        Command::Type(id, field, text) => fields::typed(app, id, field, text),
        Command::Typed => {
            state.typing = None;
            app.history.end_gesture();
        }
        Command::Tried(id, state) => {
            let exercised = app.today.filter(|_| state != DeviceState::Unknown);
            app.edit(Edit::SetState { id, state, exercised });
        }
        Command::Copy(id) => copy(app, &id),
        Command::AskDelete(id) => {
            let home = app.history.home();
            app.map.walk.deleting = id.map(|id| {
                let changes = quarterturn_home::depends_on(home, &id);
                let told = changes.iter().flat_map(|change| app.words.change(change)).collect();
                (id, told)
            });
        }
        Command::Delete(id) => {
            state.deleting = None;
            if app.edit(Edit::RemoveComponent { id }) {
                app.map.selected = None;
            }
        }
        Command::OnBreaker(id, breaker) => breaker::connect(app, &id, &breaker),
        Command::Accept(proposal) => {
            if let Some(edit) = accept(app.history.home(), &proposal) {
                app.edit(edit);
            }
        }
        Command::AcceptAll => {
            let home = app.history.home();
            let edits = accept_all(home, &app.map.walk.offers.list, None, 0.0);
            let named = app.map.selected.as_deref().and_then(|id| home.component(id));
            let name = named.map_or_else(String::new, |c| c.name.clone());
            if !edits.is_empty() {
                app.edit(Edit::Named { key: "edit-accept", fills: vec![("name", name)], edits });
            }
        }
        Command::Photo(command) => photo::apply(app, ctx, command),
    }
}

/// Takes a picture that was dropped on the window as the photo of the device that is picked; false if
/// none is.
pub(crate) fn take_photo(app: &mut App, ctx: &egui::Context, path: &std::path::Path) -> bool {
    let is_walked = app.page == Page::Map && app.map.tool == Tool::Walk;
    let id = app.map.selected.clone().filter(|_| is_walked && app.map.walk.pick.is_none());
    let Some(id) = id else { return false };
    photo::start(app, ctx, id, Some(path.to_owned()));
    true
}

/// Works out what follows from the home and from what is picked, when either has changed.
pub(crate) fn poll(app: &mut App, ctx: &egui::Context) {
    offers::poll(app);
    photo::poll(app, ctx);
}

/// The column of the tool.
pub(crate) fn column_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let selected = state.selected.as_deref().and_then(|id| view.home.component(id));
    match (&state.walk.pick, selected) {
        (Some(pick), _) => choose::picked_ui(ui, view, state, pick, out),
        (None, Some(component)) => device::device_ui(ui, view, state, component, out),
        (None, None) => choose::choose_ui(ui, view, state, out),
    }
}

/// What the plan shows for it: the lines of the device, and those that are proposed.
pub(crate) fn marks(view: &View<'_>, state: &MapState, _level: &Level) -> Marks {
    let Some(id) = state.selected.as_deref() else { return Marks::default() };
    let mut group = attached(view.home, id);
    group.push(id.to_owned());
    let drawn = view
        .home
        .connections
        .iter()
        .filter(|line| group.contains(&line.from) || group.contains(&line.to));
    let marked = |from: &str, to: &str, carries, is_proposed| MarkedLine {
        from: from.to_owned(),
        to: to.to_owned(),
        carries,
        is_proposed,
    };
    let drawn = drawn.map(|line| marked(&line.from, &line.to, line.carries, false));
    let proposed = state.walk.offers.list.iter().map(|proposal| &proposal.line);
    let proposed = proposed.map(|line| marked(&line.from, &line.to, line.carries, true));
    Marks { lines: drawn.chain(proposed).collect(), ..Marks::default() }
}

/// What is made of something done on the plan.
pub(crate) fn touched(_view: &View<'_>, state: &MapState, touch: &Touch, out: &mut Vec<Press>) {
    let walk = &state.walk;
    let mut say = |command| out.push(Press::Map(MapCommand::Walk(command)));
    match touch {
        Touch::Pressed { level, at, on } => {
            if let Some(id) = &walk.putting {
                say(Command::Move { id: id.clone(), level: level.clone(), to: *at });
            } else if walk.pick.is_some() {
                say(Command::Place { level: level.clone(), at: Some(*at) });
            } else {
                out.push(Press::Map(MapCommand::Select(on.clone())));
            }
        }
        Touch::Dragged { level, on: Some(id), to, is_over: true, .. } => {
            say(Command::Move { id: id.clone(), level: level.clone(), to: *to });
        }
        Touch::Dragged { .. } | Touch::Hovered { .. } => {}
    }
}

fn place(app: &mut App, level: &str, at: Option<(f64, f64)>) {
    let state = &app.map.walk;
    let Some(pick) = &state.pick else { return };
    let wish = put::Wish { pick, count: state.count, level, at, room: state.room.as_deref() };
    match put::put(app.history.home(), &app.words, &wish) {
        Ok(put::Ready { edit, id, all }) => {
            if app.edit(edit) {
                app.map.walk.placed = all;
                app.map.selected = Some(id);
                app.map.walk.pick = None;
                app.map.walk.count = None;
            }
        }
        Err(cannot) => app.message = Some(cannot.said().text(&app.words)),
    }
}

fn move_to(app: &mut App, id: &str, level: &str, (x, y): (f64, f64)) {
    app.map.walk.putting = None;
    let home = app.history.home();
    let Some(component) = home.component(id) else { return };
    let z = component.at.map_or_else(|| put::usual_height(component.kind), |(_, _, z)| z);
    let name = component.name.clone();
    let room = put::room(home, level, Some((x, y)), component.space.as_deref());
    let stays = room.id() == component.space.as_deref();
    let moved = Edit::Move {
        id: id.to_owned(),
        space: room.id().filter(|_| !stays).map(str::to_owned),
        at: Some((x, y, z)),
        with: With::Attached,
    };
    let edit = match room.edit() {
        Some(edit) => {
            Edit::Named { key: "edit-move", fills: vec![("name", name)], edits: vec![edit, moved] }
        }
        None => moved,
    };
    // Arrow keys move in small steps; taken back they are one.
    if app.edit_within(&format!("move {id}"), edit) {
        app.map.selected = Some(id.to_owned());
    }
}

fn copy(app: &mut App, id: &str) {
    /// How far beside the first the copy is put, in metres.
    const BESIDE: f64 = 0.6;
    let home = app.history.home();
    let Some(component) = home.component(id) else { return };
    let name = app.words.fill("window-device-copy-of", &[fill("name", &component.name)]);
    let new_id = home.free_id(&name);
    let at = component.at.map(|(x, y, z)| (x + BESIDE, y, z));
    let id = id.to_owned();
    let with = With::AttachedAndLines;
    if app.edit(Edit::Copy { id, new_id: new_id.clone(), name, space: None, at, with }) {
        app.map.selected = Some(new_id);
    }
}

/// Changes a device.
fn change(component: &Component, change: impl FnOnce(&mut Component)) -> Press {
    let mut changed = component.clone();
    change(&mut changed);
    Press::Map(MapCommand::Edit(Box::new(Edit::PutComponent(Box::new(changed)))))
}

/// What takes the tool up with a thing to put.
pub(crate) fn start(pick: Pick, room: Option<String>) -> [Press; 3] {
    [
        Press::Map(MapCommand::Take(Tool::Walk)),
        Press::Map(MapCommand::Walk(Command::Room(room))),
        Press::Map(MapCommand::Walk(Command::Pick(Some(pick)))),
    ]
}
