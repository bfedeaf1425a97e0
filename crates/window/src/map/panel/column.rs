//! The column beside the panel: which panel it is, and what hangs on the position that is picked.

use egui::{ComboBox, Ui};
use quarterturn_guidance::{count, fill};
use quarterturn_home::Component;

use super::cells::Cell;
use super::directory::{Command, State};
use super::face;
use super::feeds::{Candidate, candidates, loads};
use super::positions::Board;
use super::standing::panels;
use crate::controls::{button, card, focus_ring, section, soft, strong};
use crate::field::field;
use crate::place;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Most rows of what is found by words.
const MOST: usize = 40;

/// Which panel is shown, and how far it has come.
pub(super) fn choice_ui(
    ui: &mut Ui,
    view: &View<'_>,
    board: &Board<'_>,
    say: &mut dyn FnMut(Command),
) {
    if panels(view.home).nth(1).is_some() {
        let combo =
            ComboBox::from_id_salt("panel-shown").selected_text(&board.panel.name).width(280.0);
        let combo = combo.show_ui(ui, |ui| {
            for other in panels(view.home) {
                if ui.selectable_label(other.id == board.panel.id, &other.name).clicked() {
                    say(Command::Panel(other.id.clone()));
                }
            }
        });
        focus_ring(ui, &combo.response);
        combo.response.accessible_name(view.text("panel-which"));
    }
    let circuits = board.rows().filter(|row| !row.is_main() && row.breaker().is_some()).count();
    if circuits > 0 {
        let n = |n: usize| u32::try_from(n).map_or(f64::INFINITY, f64::from);
        let idle = board.idle(view.home);
        let fills = [count("n", n(idle)), count("of", n(circuits))];
        ui.add(egui::Label::new(view.fill("panel-serve-nothing", &fills)).wrap());
    }
}

/// The position that is picked.
pub(super) fn picked_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    board: &Board<'_>,
    say: &mut dyn FnMut(Command),
) {
    let row = state.picked.as_deref().and_then(|key| board.row(key));
    let Some(row) = row else {
        ui.add_space(GAP);
        ui.add(egui::Label::new(soft(ui, view.text("panel-pick"))).wrap());
        return;
    };
    let Some(breaker) = row.breaker() else {
        let key = if row.is_main() { "panel-main-free" } else { "panel-free" };
        section(ui, &view.fill(key, &[fill("position", &row.label)]));
        ui.add(egui::Label::new(soft(ui, view.text("panel-free-hint"))).wrap());
        return;
    };
    let fills = [fill("position", &row.label), fill("name", &breaker.name)];
    ui.add_space(GAP);
    let title = if row.is_main() || row.label.is_empty() {
        breaker.name.clone()
    } else {
        view.fill("panel-picked", &fills)
    };
    ui.add(egui::Label::new(strong(title, size::ACT)).wrap());
    if row.is_main() {
        ui.add(egui::Label::new(view.text("panel-main-feeds")).wrap());
        return;
    }
    number_ui(ui, view, state, board, &row.key, say);
    loads_ui(ui, view, breaker, say);
    add_ui(ui, view, state, breaker, say);
}

/// Its number in the panel, which moves it to another position.
fn number_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    board: &Board<'_>,
    key: &str,
    say: &mut dyn FnMut(Command),
) {
    let Some(row) = board.row(key) else { return };
    let draft = state.draft(&board.panel.id, key, Cell::Number);
    let mut text =
        draft.map_or_else(|| Cell::Number.read(view.words, row), |draft| draft.text.clone());
    ui.horizontal(|ui| {
        let label = ui.label(soft(ui, view.text("panel-number")));
        let edit = egui::TextEdit::singleline(&mut text)
            .id(egui::Id::unique(("panel-number", &board.panel.id, row.breaker().map(|b| &b.id))))
            .desired_width(110.0)
            .min_size(egui::vec2(110.0, crate::tokens::TOUCH))
            .align(egui::Align2::LEFT_CENTER);
        let response = ui.add(edit).labelled_by(label.id);
        focus_ring(ui, &response);
        if response.gained_focus() {
            face::select_all(ui, response.id, &text);
        }
        if response.changed() {
            say(Command::Type(key.to_owned(), Cell::Number, text));
        }
        if response.lost_focus() {
            say(Command::Done(key.to_owned(), Cell::Number));
        }
    });
    if let Some(why) = draft.and_then(|draft| draft.why.as_deref()) {
        ui.add(egui::Label::new(strong(why, size::SMALL)).wrap());
    }
}

/// What hangs on it.
fn loads_ui(ui: &mut Ui, view: &View<'_>, breaker: &Component, say: &mut dyn FnMut(Command)) {
    section(ui, &view.text("panel-hangs"));
    let loads = loads(view.home, &breaker.id);
    if loads.is_empty() {
        ui.add(egui::Label::new(soft(ui, view.text("panel-hangs-nothing"))).wrap());
    }
    for load in loads {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.horizontal_wrapped(|ui| {
                let text = view.text("panel-take-off");
                let label = view.fill("panel-take-off-of", &[fill("thing", &load.thing.name)]);
                let response = button(ui, &text).accessible_name(label);
                focus_ring(ui, &response);
                if response.clicked() {
                    say(Command::TakeOff(Box::new(load.line.clone())));
                }
                ui.vertical(|ui| {
                    ui.spacing_mut().item_spacing.y = 2.0;
                    ui.add(egui::Label::new(&load.thing.name).wrap());
                    let place = place::whereabouts(view.home, load.thing, view.words);
                    ui.add(egui::Label::new(soft(ui, place)).wrap());
                    if !load.behind.is_empty() {
                        let names: Vec<String> =
                            load.behind.iter().map(|thing| thing.name.clone()).collect();
                        let fills = [fill("list", &view.words.list(&names))];
                        let behind = soft(ui, view.fill("panel-behind", &fills));
                        ui.add(egui::Label::new(behind).wrap());
                    }
                });
            });
        });
    }
}

/// What it might feed, room by room.
fn add_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    breaker: &Component,
    say: &mut dyn FnMut(Command),
) {
    section(ui, &view.text("panel-add"));
    if let Some(refused) = &state.refused {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(strong(refused.as_str(), size::BODY)).wrap());
        });
    }
    let search = field(ui, &view.text("panel-add-search"), "", &state.search);
    if let Some(words) = search.text {
        say(Command::Search(words));
    }
    let rooms = candidates(view.home, breaker, &state.search);
    if rooms.is_empty() {
        let is_searched = !state.search.trim().is_empty();
        let key = if is_searched { "panel-add-not-found" } else { "panel-add-all-fed" };
        ui.add(egui::Label::new(soft(ui, view.text(key))).wrap());
    }
    let mut left = if state.search.trim().is_empty() { usize::MAX } else { MOST };
    for (room, here) in rooms {
        let name = room.map_or_else(|| view.text("panel-no-room-known"), |room| room.name.clone());
        ui.add_space(GAP);
        ui.add(egui::Label::new(soft(ui, &name)).wrap());
        ui.horizontal_wrapped(|ui| {
            for candidate in here.iter().take(left).filter(|c| c.fed_by.is_none()) {
                candidate_ui(ui, view, candidate, &name, say);
            }
        });
        // What has a feed is told, and stays where it is.
        for candidate in here.iter().take(left) {
            if let Some(by) = candidate.fed_by {
                let fills = [fill("thing", &candidate.thing.name), fill("device", &by.name)];
                ui.add(egui::Label::new(view.fill("panel-fed-already", &fills)).wrap());
            }
        }
        left = left.saturating_sub(here.len());
        if left == 0 {
            break;
        }
    }
}

fn candidate_ui(
    ui: &mut Ui,
    view: &View<'_>,
    candidate: &Candidate<'_>,
    room: &str,
    say: &mut dyn FnMut(Command),
) {
    let thing = candidate.thing;
    let fills = [fill("thing", &thing.name), fill("room", room)];
    let label = view.fill("panel-add-of", &fills);
    let response = button(ui, &thing.name).accessible_name(label);
    focus_ring(ui, &response);
    if response.clicked() {
        say(Command::Feed(thing.id.clone()));
    }
}
