//! Pictures of plans, levels and rooms.
//!
//! It works without any picture: rooms are drawn as rectangles on a grid, or by their corners, or by
//! typing how wide and deep they are. What is drawn on is the [`board`], in place of the plan with its
//! pins.

mod board;
mod doors;
mod handle;
mod levels;
mod paper;
mod photo;
mod photo_ui;
mod room_edits;
mod rooms;
mod walls;

use std::collections::BTreeMap;

use egui::Ui;
use quarterturn_guidance::fill;
use quarterturn_home::{Edit, Level, changes};

use super::canvas::{Marks, Touch};
use super::{MapCommand, MapState, level_to_show};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, main_button, soft, strong};
use crate::pictures::Pictures;
use crate::tokens::{GAP, size};
use crate::view::View;
use paper::Point;

pub(crate) use photo::{is_picture, poll, take_in};

/// What of it one is at.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) enum At {
    /// The floors.
    Floors,
    /// A picture of the plan.
    Picture,
    /// The rooms.
    #[default]
    Rooms,
    /// Doors and stairs.
    Doors,
}

impl At {
    const ALL: [Self; 4] = [Self::Floors, Self::Picture, Self::Rooms, Self::Doors];

    fn key(self) -> &'static str {
        match self {
            Self::Floors => "plans-floors",
            Self::Picture => "plans-picture",
            Self::Rooms => "plans-rooms",
            Self::Doors => "plans-doors",
        }
    }
}

/// What is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Field {
    /// Name of a level or a room.
    Name,
    /// Elevation of a level.
    Height,
    /// How wide a room is.
    Across,
    /// How deep it is.
    Down,
    /// Where north is on the plans, in degrees.
    North,
}

/// Something to be taken out once it was seen what goes with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Removal {
    /// Its name.
    pub(crate) name: String,
    /// What takes it out.
    pub(crate) edit: Edit,
    /// What changes besides, in words.
    pub(crate) with: Vec<String>,
}

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    at: At,
    /// What is typed of a thing, by its id; empty for one that is not there yet.
    typed: BTreeMap<(Field, String), String>,
    /// The room that was picked.
    room: Option<String>,
    /// True if rooms are drawn by their corners.
    by_corners: bool,
    /// The corners set so far, in metres.
    corners: Vec<Point>,
    removal: Option<Removal>,
    /// What is wrong with what was typed or drawn, in words.
    wrong: Option<String>,
    pub(super) photo: photo::State,
}

impl State {
    /// Of a home that has nothing yet: the picture of its plan comes first.
    pub(crate) fn begin(&mut self) {
        self.at = At::Picture;
    }

    /// What is typed of the thing with this id.
    fn typed(&self, field: Field, id: &str) -> Option<&str> {
        self.typed.get(&(field, id.to_owned())).map(String::as_str)
    }

    /// What was typed is done.
    fn forget_typed(&mut self, id: &str) {
        self.typed.retain(|(_, of), _| of != id);
    }
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Turn to this part of it.
    At(At),
    /// This is typed of the thing with this id.
    Type(Field, String, String),
    /// Something with a level.
    Level(levels::Command),
    /// Something with a room.
    Room(rooms::Command),
    /// Something with a door or stairs.
    Door(doors::Command),
    /// Something with the picture.
    Photo(photo::Command),
    /// Ask whether to take the level or room with this id out.
    AskRemove(String),
    /// Take it out, or leave it.
    Remove(bool),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    app.map.plans.wrong = None;
    match command {
        Command::At(at) => {
            let state = &mut app.map.plans;
            state.at = at;
            state.removal = None;
            state.corners.clear();
        }
        Command::Type(field, id, text) => {
            if field == Field::Name && id.is_empty() && app.map.plans.at == At::Rooms {
                // The next room is about to be drawn: nothing of another is in its way.
                app.map.plans.room = None;
            }
            app.map.plans.typed.insert((field, id), text);
        }
        Command::Level(command) => levels::apply(app, command),
        Command::Room(command) => rooms::apply(app, command),
        Command::Door(command) => doors::apply(app, command),
        Command::Photo(command) => photo::apply(app, ctx, command),
        Command::AskRemove(id) => app.map.plans.removal = removal(app, &id),
        Command::Remove(does) => {
            if let Some(removal) = app.map.plans.removal.take().filter(|_| does)
                && app.edit(removal.edit)
            {
                app.map.plans.room = None;
            }
        }
    }
}

/// What takes out a level with its rooms, or a room, and what changes besides.
fn removal(app: &App, id: &str) -> Option<Removal> {
    let home = app.history.home();
    let (name, edits) = match (home.level(id), home.space(id)) {
        (Some(level), _) => (level.name.clone(), levels::removal(home, level)),
        (None, Some(room)) => (room.name.clone(), vec![Edit::RemoveSpace { id: id.to_owned() }]),
        (None, None) => return None,
    };
    let edit = named("edit-remove", &name, edits);
    let after = edit.made_on(home).ok()?;
    let besides = changes(home, &after).into_iter().filter(|change| change.id != id);
    let with = besides.flat_map(|change| app.words.change(&change)).collect();
    Some(Removal { name, edit, with })
}

/// Several edits as one, with a name in words.
fn named(key: &'static str, name: &str, edits: Vec<Edit>) -> Edit {
    Edit::Named { key, fills: vec![("name", name.to_owned())], edits }
}

/// The column of the tool.
pub(crate) fn column_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let plans = &state.plans;
    if plans.photo.is_under_way() {
        photo_ui::column_ui(ui, view, &plans.photo, out);
        return;
    }
    ui.horizontal_wrapped(|ui| {
        for at in At::ALL {
            if chosen_button(ui, &view.text(at.key()), plans.at == at).clicked() {
                out.push(press(Command::At(at)));
            }
        }
    });
    ui.add_space(GAP);
    // In a scope of its own: the box that is typed in keeps the focus when it comes or goes.
    ui.scope(|ui| {
        if let Some(wrong) = &plans.wrong {
            ui.add(egui::Label::new(strong(wrong.as_str(), size::BODY)).wrap());
        }
    });
    if let Some(removal) = &plans.removal {
        removal_ui(ui, view, removal, out);
        return;
    }
    let level = level_to_show(view, state);
    match (plans.at, level) {
        (At::Floors, _) | (_, None) => levels::column_ui(ui, view, plans, level, out),
        (At::Picture, Some(level)) => photo_ui::start_ui(ui, view, &plans.photo, level, out),
        (At::Rooms, Some(level)) => rooms::column_ui(ui, view, plans, level, out),
        (At::Doors, Some(level)) => doors::column_ui(ui, view, plans, level, out),
    }
}

/// What goes with what is to be taken out, before it goes.
fn removal_ui(ui: &mut Ui, view: &View<'_>, removal: &Removal, out: &mut Vec<Press>) {
    let title = view.fill("plans-remove-title", &[fill("name", &removal.name)]);
    ui.add(egui::Label::new(strong(title, size::SECTION)).wrap());
    let key = if removal.with.is_empty() { "plans-remove-alone" } else { "plans-remove-with" };
    ui.add(egui::Label::new(view.text(key)).wrap());
    for line in &removal.with {
        ui.add(egui::Label::new(soft(ui, line.as_str())).wrap());
    }
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("plans-remove-it")).clicked() {
            out.push(press(Command::Remove(true)));
        }
        if button(ui, &view.text("plans-leave-it")).clicked() {
            out.push(press(Command::Remove(false)));
        }
    });
}

/// What the plan shows for it: nothing, as it draws on its own board.
pub(crate) fn marks(_view: &View<'_>, _state: &MapState, _level: &Level) -> Marks {
    Marks::default()
}

/// What is made of something done on the plan.
pub(crate) fn touched(_view: &View<'_>, _state: &MapState, _touch: &Touch, _out: &mut Vec<Press>) {}

/// The board, or the photo that is being taken in; false if there is no level to draw on.
pub(crate) fn own_drawing_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    pictures: &mut Pictures,
    out: &mut Vec<Press>,
) -> bool {
    if state.plans.photo.is_under_way() {
        photo_ui::drawing_ui(ui, view, &state.plans.photo, out);
        return true;
    }
    let Some(level) = level_to_show(view, state) else { return false };
    board::board_ui(ui, view, state, level, pictures, out);
    true
}

/// A command of this tool, as the window takes it.
fn press(command: Command) -> Press {
    Press::Map(MapCommand::Plans(command))
}
