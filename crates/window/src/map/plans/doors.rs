//! Doors between rooms that share a wall, and stairs between floors.

use egui::{Label, Ui};
use quarterturn_guidance::fill;
use quarterturn_home::{Edit, Level, Passage};

use super::paper::Point;
use super::room_edits::stairs;
use super::walls::{Wall, is_joined, walls};
use super::{State, press};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, section, soft};
use crate::sheet::spaces_of;
use crate::view::View;

/// How near to a wall one must press, in metres.
const NEAR: f64 = 0.8;

/// What is done with doors and stairs.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// This level was pressed there: a door in the wall that is there.
    Press(String, Point),
    /// A door.
    Add(Box<Passage>),
    /// Stairs from one room to another.
    Stairs(String, String),
    /// Take this one out.
    Remove(Box<Passage>),
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, command: Command) {
    match command {
        Command::Press(level, at) => {
            let home = app.history.home();
            let Some(level) = home.level(&level) else { return };
            let found = walls(home, level)
                .into_iter()
                .map(|wall| (wall.nearest(at), wall))
                .min_by(|(a, _), (b, _)| a.1.total_cmp(&b.1));
            match found {
                Some(((there, far), wall)) if far <= NEAR => {
                    if is_joined(home, &wall.one, &wall.other) {
                        app.map.plans.wrong = Some(app.words.text("window-plans-door-there"));
                    } else {
                        app.edit(Edit::AddPassage(Box::new(wall.door(there))));
                    }
                }
                _ => app.map.plans.wrong = Some(app.words.text("window-plans-no-wall")),
            }
        }
        Command::Add(door) => {
            app.edit(Edit::AddPassage(door));
        }
        Command::Stairs(from, to) => {
            if let Some(stairs) = stairs(app.history.home(), &from, &to) {
                app.edit(Edit::AddPassage(Box::new(stairs)));
            }
        }
        Command::Remove(passage) => {
            app.edit(Edit::RemovePassage(passage));
        }
    }
}

/// The column of doors and stairs.
pub(super) fn column_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    level: &Level,
    out: &mut Vec<Press>,
) {
    ui.add(Label::new(view.text("plans-doors-hint")).wrap());
    let open: Vec<Wall> = walls(view.home, level)
        .into_iter()
        .filter(|wall| !is_joined(view.home, &wall.one, &wall.other))
        .collect();
    if !open.is_empty() {
        section(ui, &view.text("plans-walls"));
    }
    for wall in &open {
        let label = between(view, "plans-add-door", &wall.one, &wall.other);
        if button(ui, &label).clicked() {
            out.push(door_press(Command::Add(Box::new(wall.door(wall.middle())))));
        }
    }
    there_ui(ui, view, level, out);
    stairs_ui(ui, view, state, level, out);
}

/// The doors and stairs that there are.
fn there_ui(ui: &mut Ui, view: &View<'_>, level: &Level, out: &mut Vec<Press>) {
    let here = |id: &str| view.home.space(id).and_then(|s| s.level.as_deref()) == Some(&level.id);
    let passages = view.home.passages.iter();
    let mut there =
        passages.filter(|passage| here(&passage.between.0) || here(&passage.between.1)).peekable();
    if there.peek().is_none() {
        return;
    }
    section(ui, &view.text("plans-doors-there"));
    for passage in there {
        let (one, other) = (&passage.between.0, &passage.between.1);
        let key = if passage.stairs { "plans-stairs-between" } else { "plans-door-between" };
        ui.add(Label::new(between(view, key, one, other)).wrap());
        let key = if passage.stairs { "plans-remove-stairs" } else { "plans-remove-door" };
        if button(ui, &between(view, key, one, other)).clicked() {
            out.push(door_press(Command::Remove(Box::new(passage.clone()))));
        }
    }
}

/// Stairs from the picked room to a room of another floor.
fn stairs_ui(ui: &mut Ui, view: &View<'_>, state: &State, level: &Level, out: &mut Vec<Press>) {
    if view.home.levels.len() < 2 {
        return;
    }
    section(ui, &view.text("plans-stairs"));
    let picked = state.room.as_deref().and_then(|id| view.home.space(id));
    let Some(from) = picked.filter(|room| room.level.as_deref() == Some(&level.id)) else {
        ui.add(Label::new(soft(ui, view.text("plans-stairs-pick"))).wrap());
        ui.horizontal_wrapped(|ui| {
            for room in spaces_of(view.home, level) {
                let label = view.fill("plans-stairs-from", &[fill("name", &room.name)]);
                if button(ui, &label).clicked() {
                    let pick = super::rooms::Command::Pick(Some(room.id.clone()));
                    out.push(super::rooms::room_press(pick));
                }
            }
        });
        return;
    };
    ui.add(Label::new(view.fill("plans-stairs-to", &[fill("name", &from.name)])).wrap());
    ui.horizontal_wrapped(|ui| {
        for other in view.home.levels.iter().filter(|other| other.id != level.id) {
            for room in spaces_of(view.home, other) {
                if is_joined(view.home, &from.id, &room.id) {
                    continue;
                }
                let fills = [fill("room", &room.name), fill("floor", &other.name)];
                if button(ui, &view.fill("plans-stairs-room", &fills)).clicked() {
                    out.push(door_press(Command::Stairs(from.id.clone(), room.id.clone())));
                }
            }
        }
    });
}

fn between<'a>(view: &View<'a>, key: &str, one: &'a str, other: &'a str) -> String {
    let name = |id| view.home.space(id).map_or(id, |room| room.name.as_str());
    view.fill(key, &[fill("one", name(one)), fill("other", name(other))])
}

pub(super) fn door_press(command: Command) -> Press {
    press(super::Command::Door(command))
}
