//! On which breaker a device hangs: said at once by who reads it off the panel's door, found out by
//! whoever does not know.

use egui::Ui;
use quarterturn_guidance::fill;
use quarterturn_home::{Component, Connection, Edit, Home, Medium};
use quarterturn_mapping::{Lack, Switched, lacks, may_connect};

use super::choose::{pressed, say};
use super::{Command, MapCommand, State};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, focus_ring, section, soft};
use crate::map::{Tool, panel};
use crate::view::View;

/// The circuits to choose from, while nothing brings power to the device.
pub(super) fn breaker_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    component: &Component,
    out: &mut Vec<Press>,
) {
    // Breakers and what is before them stand in an order of their own.
    if component.kind.is_power_distribution() || !lacks_power(view.home, component) {
        return;
    }
    let circuits = panel::circuits(view.home);
    if circuits.is_empty() {
        return;
    }
    section(ui, &view.text("breaker-which"));
    let with = others(view.home, state, component);
    if !with.is_empty() {
        let names: Vec<String> = with.iter().map(|other| other.name.clone()).collect();
        let fills = [fill("devices", &view.words.list(&names))];
        ui.add(egui::Label::new(soft(ui, view.fill("breaker-with", &fills))).wrap());
    }
    ui.horizontal_wrapped(|ui| {
        for breaker in circuits {
            let number = breaker.circuit.as_deref().unwrap_or_default();
            let fills = [fill("number", number), fill("serves", &breaker.name)];
            // One that nobody has named yet is called by its number alone.
            let is_told = breaker.name.split_whitespace().any(|word| word == number);
            let text =
                if is_told { number.to_owned() } else { view.fill("breaker-circuit", &fills) };
            let response = button(ui, &text).accessible_name(&breaker.name);
            focus_ring(ui, &response);
            if response.clicked() {
                say(out, Command::OnBreaker(component.id.clone(), breaker.id.clone()));
            }
        }
    });
    ui.add(egui::Label::new(soft(ui, view.text("breaker-unknown"))).wrap());
    if pressed(ui, &view.text("breaker-find")) {
        let things = std::iter::once(component).chain(with.iter().copied());
        let things = things.map(|thing| thing.id.clone()).collect();
        out.push(Press::Map(MapCommand::Take(Tool::Panel)));
        let find = panel::Command::Find(Switched::Breakers, things);
        out.push(Press::Map(MapCommand::Panel(find)));
    }
}

/// Draws the lines from a breaker to a device, and to what was put there together with it.
pub(super) fn connect(app: &mut App, id: &str, breaker: &str) {
    let home = app.history.home();
    let Some(component) = home.component(id) else { return };
    let others = others(home, &app.map.walk, component);
    let devices = std::iter::once(component).chain(others);
    let mut edits = Vec::new();
    for device in devices {
        match may_connect(home, breaker, &device.id, Medium::Power) {
            Ok(()) => {
                let line = Connection::new(breaker, &device.id, Medium::Power);
                edits.push(Edit::Connect(Box::new(line)));
            }
            Err(refusal) => {
                app.message = Some(refusal.cause.text(&app.words));
                return;
            }
        }
    }
    let name = component.name.clone();
    app.edit(Edit::Named { key: "edit-connect-breaker", fills: vec![("name", name)], edits });
}

/// What was put there together with a device and lacks power like it.
fn others<'h>(home: &'h Home, state: &State, component: &Component) -> Vec<&'h Component> {
    if !state.placed.contains(&component.id) {
        return Vec::new();
    }
    let others = state.placed.iter().filter(|id| **id != component.id);
    others
        .filter_map(|id| home.component(id))
        .filter(|other| other.kind == component.kind && lacks_power(home, other))
        .collect()
}

fn lacks_power(home: &Home, component: &Component) -> bool {
    lacks(home, component).contains(&(Lack::Feed, Medium::Power))
}
