//! The form of a device: what it is called, how it is worked, where it is.

use egui::Ui;
use quarterturn_guidance::fill;
use quarterturn_home::{
    Closes, Component, DeviceState, Handle, Net, OperableBy, Operates, Position,
};
use quarterturn_mapping::{kind_key, next_tag};

use super::choose::{self, main_pressed, pressed, say};
use super::fields::{Field, field_ui};
use super::{Command, MapCommand, MapState, State, breaker, change, offers, photo, put};
use crate::ask::Command as Press;
use crate::controls::{
    button, card, chosen_button, focus_ring, line, plate, section, soft, strong,
};
use crate::system::System;
use crate::tokens::{GAP, PIN_NOW, Palette, size};
use crate::view::View;

const HANDLES: [Handle; 10] = [
    Handle::Lever,
    Handle::Wheel,
    Handle::Knob,
    Handle::Tee,
    Handle::Slot,
    Handle::Key,
    Handle::Button,
    Handle::Toggle,
    Handle::PullOut,
    Handle::Cap,
];

const WAYS: [Closes; 6] = [
    Closes::QuarterTurn,
    Closes::MultiTurn,
    Closes::Push,
    Closes::Pull,
    Closes::ToOff,
    Closes::Unscrew,
];

const STATES: [DeviceState; 5] = [
    DeviceState::Works,
    DeviceState::Stiff,
    DeviceState::Seized,
    DeviceState::LeaksBy,
    DeviceState::Unknown,
];

const PEOPLE: [OperableBy; 3] = [OperableBy::Anyone, OperableBy::Licensed, OperableBy::Utility];

/// The form of the device that is picked.
pub(super) fn device_ui(
    ui: &mut Ui,
    view: &View<'_>,
    map: &MapState,
    component: &Component,
    out: &mut Vec<Press>,
) {
    let state = &map.walk;
    let id = &component.id;
    if let Some((_, goes)) = state.deleting.as_ref().filter(|(deleted, _)| deleted == id) {
        deleting_ui(ui, view, component, goes, out);
        return;
    }
    line(ui, |ui| {
        plate(ui, System::of(view.home, component, None), component.tag.as_deref(), PIN_NOW);
        ui.label(strong(&component.name, size::ACT));
        ui.label(soft(ui, view.words.text(&kind_key(component.kind))));
    });
    if state.putting.as_deref() == Some(id) {
        card(ui, Palette::of(ui).focus_stroke(), |ui| {
            ui.add(egui::Label::new(view.text("device-press-place")).wrap());
            if pressed(ui, &view.text("walk-not")) {
                say(out, Command::Putting(None));
            }
        });
    }
    offers::next_ui(ui, view, &state.offers, out);
    offers::offers_ui(ui, view, &state.offers, out);
    breaker::breaker_ui(ui, view, state, component, out);
    if state.placed.contains(id) {
        choose::then_ui(ui, view, map, component, out);
    }
    let typing = state.typing.as_ref();
    section(ui, &view.text("device-is"));
    field_ui(ui, view, typing, component, Field::Name, out);
    field_ui(ui, view, typing, component, Field::Tag, out);
    let free = next_tag(view.home, component.kind).filter(|_| component.tag.is_none());
    if let Some(free) = free {
        let text = view.fill("device-next-tag", &[fill("tag", &free)]);
        if pressed(ui, &text) {
            out.push(change(component, |c| c.tag = Some(free)));
        }
    }
    field_ui(ui, view, typing, component, Field::Note, out);
    where_ui(ui, view, state, component, out);
    if is_worked(component) {
        worked_ui(ui, view, state, component, out);
    }
    section(ui, &view.text("device-photo"));
    photo::photo_ui(ui, view, &state.photo, component, out);
    ui.add_space(GAP);
    if chosen_button(ui, &view.text("device-more"), state.more).clicked() {
        say(out, Command::More);
    }
    if state.more {
        more_ui(ui, view, state, component, out);
    }
    ui.horizontal_wrapped(|ui| {
        if pressed(ui, &view.text("device-copy")) {
            say(out, Command::Copy(id.clone()));
        }
        if pressed(ui, &view.text("device-delete")) {
            say(out, Command::AskDelete(Some(id.clone())));
        }
    });
}

/// What goes with the device, before it goes.
fn deleting_ui(
    ui: &mut Ui,
    view: &View<'_>,
    component: &Component,
    goes: &[String],
    out: &mut Vec<Press>,
) {
    let name = [fill("name", &component.name)];
    ui.add(egui::Label::new(strong(view.fill("device-delete-what", &name), size::ACT)).wrap());
    let key = if goes.is_empty() { "device-delete-nothing" } else { "device-delete-with" };
    ui.add(egui::Label::new(view.text(key)).wrap());
    for change in goes {
        ui.add(egui::Label::new(change.as_str()).wrap());
    }
    ui.horizontal_wrapped(|ui| {
        if main_pressed(ui, &view.fill("device-delete-now", &name)) {
            say(out, Command::Delete(component.id.clone()));
        }
        if pressed(ui, &view.text("device-keep")) {
            say(out, Command::AskDelete(None));
        }
    });
}

/// The room, the place on the plan, the height.
fn where_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    component: &Component,
    out: &mut Vec<Press>,
) {
    section(ui, &view.text("device-where"));
    let rooms: Vec<(Option<&str>, String)> =
        view.home.spaces.iter().map(|s| (Some(s.id.as_str()), s.name.clone())).collect();
    let now = component.space.as_deref();
    if !rooms.is_empty()
        && let Some(room) = choice(ui, view, state, "device-room", &rooms, now, out)
    {
        out.push(Press::Map(MapCommand::Edit(Box::new(quarterturn_home::Edit::Move {
            id: component.id.clone(),
            space: room.map(str::to_owned),
            at: None,
            with: quarterturn_home::With::Attached,
        }))));
    }
    if pressed(ui, &view.text("device-move")) {
        say(out, Command::Putting(Some(component.id.clone())));
    }
    if component.at.is_some() {
        field_ui(ui, view, state.typing.as_ref(), component, Field::Height, out);
    }
}

/// How it is worked, by whom, and whether it was tried.
fn worked_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    component: &Component,
    out: &mut Vec<Press>,
) {
    section(ui, &view.text("device-worked"));
    let word = |word: &str| view.words.text(&format!("change-word-{word}"));
    let operates = component.operates.clone().unwrap_or_default();
    let states = STATES.map(|state| (state, word(state_word(state))));
    ui.horizontal_wrapped(|ui| {
        for (state, name) in &states {
            let response = chosen_button(ui, name, operates.state == *state);
            let fills = [fill("what", &view.text("device-state")), fill("choice", name)];
            if response.accessible_name(view.fill("device-choice", &fills)).clicked() {
                say(out, Command::Tried(component.id.clone(), *state));
            }
        }
    });
    let handles = HANDLES.map(|handle| (Some(handle), word(handle_word(handle))));
    if let Some(handle) = choice(ui, view, state, "device-handle", &handles, operates.handle, out) {
        out.push(worked(component, |o| {
            let is_usual = o.closes.is_none() || o.closes == o.handle.map(put::usual_way);
            o.handle = handle;
            if is_usual {
                o.closes = handle.map(put::usual_way);
            }
        }));
    }
    let ways = WAYS.map(|way| (Some(way), word(way_word(way))));
    if let Some(way) = choice(ui, view, state, "device-closes", &ways, operates.closes, out) {
        out.push(worked(component, |o| o.closes = way));
    }
    let people = PEOPLE.map(|by| (by, word(by_word(by))));
    let now = component.operable_by;
    if let Some(by) = choice(ui, view, state, "device-by", &people, now, out) {
        out.push(change(component, |c| c.operable_by = by));
    }
}

/// What is seldom told.
fn more_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    component: &Component,
    out: &mut Vec<Press>,
) {
    let word = |word: &str| view.words.text(&format!("change-word-{word}"));
    let normally = component.operates.as_ref().map_or(Position::Open, |o| o.normally);
    let positions = [(Position::Open, word("open")), (Position::Shut, word("shut"))];
    let chosen = choice(ui, view, state, "device-normally", &positions, normally, out);
    if let Some(position) = chosen {
        out.push(worked(component, |o| o.normally = position));
    }
    ui.horizontal_wrapped(|ui| {
        let mut toggle = |key: &str, is_on: bool, set: fn(&mut Component)| {
            if chosen_button(ui, &view.text(key), is_on).clicked() {
                out.push(change(component, set));
            }
        };
        toggle("device-critical", component.critical, |c| c.critical = !c.critical);
        toggle("device-boundary", component.boundary, |c| c.boundary = !c.boundary);
        toggle("device-arc-fault", component.arc_fault, |c| c.arc_fault = !c.arc_fault);
        toggle("device-private", component.private, |c| c.private = !c.private);
    });
    for field in [
        Field::Tool,
        Field::Circuit,
        Field::Rating,
        Field::Poles,
        Field::Watts,
        Field::Volume,
        Field::Lamp,
    ] {
        field_ui(ui, view, state.typing.as_ref(), component, field, out);
    }
}

/// A choice, folded in to what is chosen. What was pressed, if something was.
fn choice<T: Copy + PartialEq>(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    key: &'static str,
    options: &[(T, String)],
    now: T,
    out: &mut Vec<Press>,
) -> Option<T> {
    let what = view.text(key);
    let chosen = options.iter().find(|(option, _)| *option == now).map(|(_, name)| name.clone());
    let chosen = chosen.unwrap_or_else(|| view.text("device-untold"));
    let fills = [fill("what", &what), fill("choice", &chosen)];
    let response = button(ui, &view.fill("device-choice", &fills));
    focus_ring(ui, &response);
    if response.on_hover_text(view.text("device-change")).clicked() {
        say(out, Command::Unfold(key));
    }
    if state.open != Some(key) {
        return None;
    }
    let mut taken = None;
    ui.horizontal_wrapped(|ui| {
        for (option, name) in options {
            if chosen_button(ui, name, *option == now).clicked() {
                taken = Some(*option);
                say(out, Command::Unfold(key));
            }
        }
    });
    taken
}

/// True if there is something to take hold of.
fn is_worked(component: &Component) -> bool {
    component.operates.is_some() || Net::ALL.iter().any(|net| component.kind.isolates(*net))
}

fn worked(component: &Component, with: impl FnOnce(&mut Operates)) -> Press {
    change(component, |c| with(c.operates.get_or_insert_with(Operates::default)))
}

fn handle_word(handle: Handle) -> &'static str {
    match handle {
        Handle::Lever => "lever",
        Handle::Wheel => "wheel",
        Handle::Knob => "knob",
        Handle::Tee => "tee",
        Handle::Slot => "slot",
        Handle::Key => "key",
        Handle::Button => "button",
        Handle::Toggle => "toggle",
        Handle::PullOut => "pull-out",
        Handle::Cap => "cap",
    }
}

fn way_word(way: Closes) -> &'static str {
    match way {
        Closes::QuarterTurn => "quarter-turn",
        Closes::MultiTurn | Closes::Turns(_) => "multi-turn",
        Closes::Push => "push",
        Closes::Pull => "pull",
        Closes::ToOff => "to-off",
        Closes::Unscrew => "unscrew",
    }
}

fn state_word(state: DeviceState) -> &'static str {
    match state {
        DeviceState::Works => "works",
        DeviceState::Stiff => "stiff",
        DeviceState::Seized => "seized",
        DeviceState::LeaksBy => "leaks-by",
        DeviceState::Unknown => "unknown",
    }
}

fn by_word(by: OperableBy) -> &'static str {
    match by {
        OperableBy::Anyone => "anyone",
        OperableBy::Licensed => "licensed",
        OperableBy::Utility => "utility",
    }
}
