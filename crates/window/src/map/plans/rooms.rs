//! Rooms: drawn, typed, named, moved, stretched, taken out.

use egui::{Label, Ui};
use quarterturn_guidance::fill;
use quarterturn_home::{Edit, Level, Space};
use quarterturn_mapping::{Rectangle, read_distance, snapped};

use super::levels::{free_name, type_press};
use super::paper::{Point, length};
use super::room_edits::{around, beside, corner, drawn, is_rectangle, reshape};
use super::{Field, State, press};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, main_button, section, soft};
use crate::field::field;
use crate::sheet::spaces_of;
use crate::tokens::GAP;
use crate::view::View;

/// Names that rooms usually have, as keys of texts.
const NAMES: [&str; 11] = [
    "kitchen", "bathroom", "living", "bedroom", "hall", "laundry", "utility", "garage", "basement",
    "attic", "yard",
];

/// What is done with rooms.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Draw by corners, or as rectangles.
    ByCorners(bool),
    /// A rectangle was drawn on this level.
    Drawn(String, Point, Point),
    /// Put a room of the size that is typed on this level.
    Add(String),
    /// A corner was set on this level.
    Corner(String, Point),
    /// The corners are a room.
    Close(String),
    /// They are none.
    ForgetCorners,
    /// Pick this room, or none.
    Pick(Option<String>),
    /// Give it the name and size that are typed.
    Change(String),
    /// Whether it is outdoors.
    Outdoors(String, bool),
    /// It was moved by so much.
    Move(String, Point),
    /// A corner of it was moved.
    Stretch {
        /// Id of the room.
        id: String,
        /// Which of its corners.
        place: usize,
        /// Where to, in metres.
        to: Point,
        /// True if it goes to the grid or to what is near.
        snaps: bool,
    },
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, command: Command) {
    match command {
        Command::ByCorners(by_corners) => {
            app.map.plans.by_corners = by_corners;
            app.map.plans.corners.clear();
        }
        Command::Drawn(level, from, to) => {
            let home = app.history.home();
            let rectangle =
                home.level(&level).and_then(|level| drawn(home, level, (from, to), None));
            match rectangle {
                Some(rectangle) => add(app, &level, rectangle.outline()),
                None => wrong(app, "plans-too-small"),
            }
        }
        Command::Add(level) => add_typed(app, &level),
        Command::Corner(level, at) => {
            let home = app.history.home();
            let Some(on) = home.level(&level) else { return };
            let at = corner(home, on, at, None, &app.map.plans.corners);
            let corners = &mut app.map.plans.corners;
            // Back at the first, the room is closed.
            if corners.len() > 2 && corners.first() == Some(&at) {
                close(app, &level);
            } else if corners.last() != Some(&at) {
                corners.push(at);
            }
        }
        Command::Close(level) => close(app, &level),
        Command::ForgetCorners => app.map.plans.corners.clear(),
        Command::Pick(room) => app.map.plans.room = room,
        Command::Change(id) => change(app, &id),
        Command::Outdoors(id, outdoors) => {
            if let Some(room) = app.history.home().space(&id) {
                let room = Space { outdoors, ..room.clone() };
                app.edit(Edit::PutSpace(Box::new(room)));
            }
        }
        Command::Move(id, by) => move_by(app, &id, by),
        Command::Stretch { id, place, to, snaps } => stretch(app, &id, (place, to), snaps),
    }
}

fn wrong(app: &mut App, key: &str) {
    app.map.plans.wrong = Some(app.words.text(&format!("window-{key}")));
}

/// Adds a room with the name that is typed; one without is picked.
fn add(app: &mut App, level: &str, outline: Vec<Point>) {
    let home = app.history.home();
    let typed = app.map.plans.typed(Field::Name, "").map(str::trim).filter(|name| !name.is_empty());
    let usual = app.words.text("window-plans-room");
    let is_named = typed.is_some();
    let name = typed.unwrap_or(&usual);
    let name = free_name(name, |name| home.spaces.iter().any(|room| room.name == name));
    let id = home.free_id(&name);
    let outdoors = quarterturn_mapping::room_kind(&name) == Some("outdoors");
    let level = Some(level.to_owned());
    let room = Space { id: id.clone(), name, level, outline, outdoors };
    if app.edit(Edit::PutSpace(Box::new(room))) {
        let plans = &mut app.map.plans;
        // One without a name is there to be named; else the corners of one that is picked would be in
        // the way of the next one's.
        plans.room = (!is_named).then_some(id);
        plans.forget_typed("");
        plans.corners.clear();
    }
}

fn add_typed(app: &mut App, level: &str) {
    let plans = &app.map.plans;
    let typed = |field| read_distance(plans.typed(field, "").unwrap_or_default());
    match (typed(Field::Across), typed(Field::Down)) {
        (Ok(across), Ok(down)) => {
            let home = app.history.home();
            let Some(on) = home.level(level) else { return };
            let rectangle = beside(home, on, plans.room.as_deref(), (across, down));
            add(app, level, rectangle.outline());
        }
        (Err(error), _) | (_, Err(error)) => app.map.plans.wrong = Some(error.told(&app.words)),
    }
}

fn close(app: &mut App, level: &str) {
    let corners = std::mem::take(&mut app.map.plans.corners);
    // Twice the area of what they enclose, by the shoelace formula.
    let next = corners.iter().cycle().skip(1);
    let area: f64 = corners.iter().zip(next).map(|(a, b)| a.0 * b.1 - b.0 * a.1).sum();
    if corners.len() < 3 || area.abs() < 0.1 {
        wrong(app, "plans-too-few-corners");
        return;
    }
    add(app, level, corners);
}

fn change(app: &mut App, id: &str) {
    let home = app.history.home();
    let Some(old) = home.space(id) else { return };
    let plans = &app.map.plans;
    let name = plans.typed(Field::Name, id).map_or(old.name.as_str(), str::trim);
    if name.is_empty() {
        wrong(app, "plans-no-name");
        return;
    }
    let mut room = Space { name: name.to_owned(), ..old.clone() };
    let (across, down) = (plans.typed(Field::Across, id), plans.typed(Field::Down, id));
    if let Some(now) = around(&old.outline).filter(|_| across.is_some() || down.is_some()) {
        let read = |typed: Option<&str>, now: f64| typed.map_or(Ok(now), read_distance);
        let sizes = (read(across, now.right - now.left), read(down, now.bottom - now.top));
        match sizes {
            (Ok(across), Ok(down)) => {
                let (right, bottom) = (now.left + across, now.top + down);
                room.outline = Rectangle { right, bottom, ..now }.outline();
            }
            (Err(error), _) | (_, Err(error)) => {
                app.map.plans.wrong = Some(error.told(&app.words));
                return;
            }
        }
    }
    let outline = room.outline.clone();
    let edit = reshape(home, &room, outline, None);
    if app.edit(edit) {
        app.map.plans.forget_typed(id);
    }
}

fn move_by(app: &mut App, id: &str, (dx, dy): Point) {
    let home = app.history.home();
    let Some(room) = home.space(id) else { return };
    let Some(level) = room.level.as_deref().and_then(|level| home.level(level)) else { return };
    let Some(now) = around(&room.outline) else { return };
    let there = Rectangle {
        left: now.left + dx,
        top: now.top + dy,
        right: now.right + dx,
        bottom: now.bottom + dy,
    };
    // It keeps its size: only its top left corner is drawn to the grid and to other rooms.
    let to = drawn(home, level, ((there.left, there.top), (there.right, there.bottom)), Some(id));
    let by = to.map_or((dx, dy), |to| (to.left - now.left, to.top - now.top));
    if by == (0.0, 0.0) {
        return;
    }
    let outline = room.outline.iter().map(|(x, y)| (x + by.0, y + by.1)).collect();
    let edit = reshape(home, room, outline, Some(by));
    app.edit(edit);
}

fn stretch(app: &mut App, id: &str, (place, to): (usize, Point), snaps: bool) {
    let home = app.history.home();
    let Some(room) = home.space(id) else { return };
    let Some(level) = room.level.as_deref().and_then(|level| home.level(level)) else { return };
    let outline = if is_rectangle(&room.outline) {
        let opposite = (place + 2) % 4;
        let Some(fixed) = room.outline.get(opposite).copied() else { return };
        let rectangle = if snaps {
            drawn(home, level, (fixed, to), Some(id))
        } else {
            // The same without a grid and without reach.
            snapped(Rectangle::between(fixed, to), &[], 0.0, 0.0)
        };
        let Some(rectangle) = rectangle else {
            wrong(app, "plans-too-small");
            return;
        };
        rectangle.outline()
    } else {
        let mut outline = room.outline.clone();
        let at = if snaps { corner(home, level, to, Some(id), &[]) } else { to };
        match outline.get_mut(place) {
            Some(point) => *point = at,
            None => return,
        }
        outline
    };
    let edit = reshape(home, room, outline, None);
    app.edit(edit);
}

/// The column of the rooms.
pub(super) fn column_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    level: &Level,
    out: &mut Vec<Press>,
) {
    let picked = state.room.as_deref().and_then(|id| view.home.space(id));
    let picked = picked.filter(|room| room.level.as_deref() == Some(&level.id));
    section(ui, &view.text("plans-new-room"));
    names_ui(ui, view, state, "", out);
    ui.horizontal_wrapped(|ui| {
        for (key, by_corners) in [("plans-rectangle", false), ("plans-corners", true)] {
            if chosen_button(ui, &view.text(key), state.by_corners == by_corners).clicked() {
                out.push(room_press(Command::ByCorners(by_corners)));
            }
        }
    });
    if state.by_corners {
        corners_ui(ui, view, state, level, out);
    } else {
        ui.add(Label::new(soft(ui, view.text("plans-rectangle-hint"))).wrap());
        let entered = sizes_ui(ui, view, state, "", None, out);
        if button(ui, &view.text("plans-add-room")).clicked() || entered {
            out.push(room_press(Command::Add(level.id.clone())));
        }
    }
    let mut rooms = spaces_of(view.home, level).peekable();
    if rooms.peek().is_some() {
        section(ui, &view.text("plans-rooms-here"));
        ui.horizontal_wrapped(|ui| {
            for room in rooms {
                let is_picked = picked.is_some_and(|picked| picked.id == room.id);
                if chosen_button(ui, &room.name, is_picked).clicked() {
                    let room = (!is_picked).then(|| room.id.clone());
                    out.push(room_press(Command::Pick(room)));
                }
            }
        });
    }
    if let Some(room) = picked {
        picked_ui(ui, view, state, room, out);
    }
}

/// The usual names, and a box for another.
fn names_ui(ui: &mut Ui, view: &View<'_>, state: &State, id: &str, out: &mut Vec<Press>) {
    let now = state.typed(Field::Name, id).unwrap_or_default();
    ui.horizontal_wrapped(|ui| {
        for name in NAMES {
            let name = view.text(&format!("plans-name-{name}"));
            if chosen_button(ui, &name, now == name).clicked() {
                type_press(Field::Name, id, Some(name), out);
            }
        }
    });
    let typed = field(ui, &view.text("plans-room-name"), "", now);
    type_press(Field::Name, id, typed.text, out);
}

/// Boxes for how wide and how deep it is. True if Enter was pressed in one.
fn sizes_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    id: &str,
    now: Option<Rectangle>,
    out: &mut Vec<Press>,
) -> bool {
    let units = view.home.units;
    let example = length(3.81, units);
    let mut entered = false;
    let is_new = id.is_empty();
    ui.columns(2, |columns| {
        for ((ui, (key, of_picked, kind)), now) in columns
            .iter_mut()
            .zip([
                ("plans-across", "plans-across-now", Field::Across),
                ("plans-down", "plans-down-now", Field::Down),
            ])
            .zip([now.map(|r| r.right - r.left), now.map(|r| r.bottom - r.top)])
        {
            let now = now.map(|metres| length(metres, units)).unwrap_or_default();
            let value = state.typed(kind, id).unwrap_or(&now);
            let label = view.text(if is_new { key } else { of_picked });
            let typed = field(ui, &label, &example, value);
            entered |= typed.is_entered;
            type_press(kind, id, typed.text, out);
        }
    });
    entered
}

fn corners_ui(ui: &mut Ui, view: &View<'_>, state: &State, level: &Level, out: &mut Vec<Press>) {
    ui.add(Label::new(soft(ui, view.text("plans-corners-hint"))).wrap());
    ui.horizontal_wrapped(|ui| {
        let has_some = !state.corners.is_empty();
        ui.add_enabled_ui(state.corners.len() > 2, |ui| {
            if main_button(ui, &view.text("plans-close-room")).clicked() {
                out.push(room_press(Command::Close(level.id.clone())));
            }
        });
        if has_some && button(ui, &view.text("plans-forget-corners")).clicked() {
            out.push(room_press(Command::ForgetCorners));
        }
    });
}

fn picked_ui(ui: &mut Ui, view: &View<'_>, state: &State, room: &Space, out: &mut Vec<Press>) {
    section(ui, &view.fill("plans-picked", &[fill("name", &room.name)]));
    let name = state.typed(Field::Name, &room.id).unwrap_or(&room.name);
    let typed = field(ui, &view.text("plans-picked-name"), "", name);
    let mut entered = typed.is_entered;
    type_press(Field::Name, &room.id, typed.text, out);
    if is_rectangle(&room.outline) {
        entered |= sizes_ui(ui, view, state, &room.id, around(&room.outline), out);
    }
    ui.add(Label::new(soft(ui, view.text("plans-picked-hint"))).wrap());
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if button(ui, &view.text("plans-change-room")).clicked() || entered {
            out.push(room_press(Command::Change(room.id.clone())));
        }
        if chosen_button(ui, &view.text("plans-outdoors"), room.outdoors).clicked() {
            out.push(room_press(Command::Outdoors(room.id.clone(), !room.outdoors)));
        }
        if button(ui, &view.text("plans-remove-room")).clicked() {
            out.push(press(super::Command::AskRemove(room.id.clone())));
        }
    });
}

pub(super) fn room_press(command: Command) -> Press {
    press(super::Command::Room(command))
}
