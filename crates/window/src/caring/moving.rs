//! The list for moving in, ticked off with the day and initials.

use egui::Ui;
use quarterturn_guidance::fill;
use quarterturn_home::{Edit, MovedIn};
use quarterturn_upkeep::MoveInItem;

use super::{Command, State, typed};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, card, main_button, soft, strong};
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Ticks an item off.
pub(super) fn tick(app: &mut App, item: String) {
    let Some(on) = app.today else {
        app.message = Some(app.words.text("window-no-day"));
        return;
    };
    let note = app.care.note.trim().to_owned();
    let tick = MovedIn {
        item,
        on,
        by: app.care.initials.trim().to_owned(),
        note: Some(note).filter(|note| !note.is_empty()),
    };
    if app.edit(Edit::TickMoveIn(Box::new(tick))) {
        app.care.open = None;
        app.care.note.clear();
    }
}

/// Takes the tick back.
pub(super) fn untick(app: &mut App, item: String) {
    app.edit(Edit::UntickMoveIn { item });
}

/// The list: what is open first.
pub(super) fn moving_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    ui.add(egui::Label::new(soft(ui, view.text("care-moving-hint"))).wrap());
    let (done, open): (Vec<&MoveInItem>, Vec<&MoveInItem>) =
        state.items.iter().partition(|item| item.done.is_some());
    for item in open.into_iter().chain(done) {
        card(ui, Palette::of(ui).edge_stroke(), |ui| item_ui(ui, view, state, item, out));
    }
}

fn item_ui(ui: &mut Ui, view: &View<'_>, state: &State, item: &MoveInItem, out: &mut Vec<Press>) {
    ui.add(egui::Label::new(strong(item.title.as_str(), size::BODY)).wrap());
    if let Some(tick) = &item.done {
        let day = quarterturn_guidance::told_day(view.words, tick.on);
        let note = tick.note.as_deref().unwrap_or_default();
        let fills = [fill("day", &day), fill("by", &tick.by), fill("note", note)];
        ui.add(egui::Label::new(view.words.fill("move-in-done", &fills)).wrap());
        let label = view.fill("care-untick-of", &[fill("item", &item.title)]);
        if button(ui, &view.text("care-untick")).accessible_name(label).clicked() {
            out.push(Press::Care(Command::Untick(item.id.clone())));
        }
        return;
    }
    if state.open.as_ref() != Some(&item.id) {
        let label = view.fill("care-open-of", &[fill("job", &item.title)]);
        if button(ui, &view.text("care-open")).accessible_name(label).clicked() {
            out.push(Press::Care(Command::Open(Some(item.id.clone()))));
        }
        return;
    }
    for caution in &item.cautions {
        ui.add(egui::Label::new(caution.text.as_str()).wrap());
    }
    ui.add(egui::Label::new(item.how.as_str()).wrap());
    for part in &item.parts {
        ui.add(egui::Label::new(part.name.as_str()).wrap());
    }
    ui.add(egui::Label::new(soft(ui, item.source.as_str())).wrap());
    if let Some(initials) = typed(ui, "care-initials", &view.text("care-initials"), &state.initials)
    {
        out.push(Press::Care(Command::Initials(initials)));
    }
    if let Some(note) = typed(ui, "care-note", &view.text("care-note"), &state.note) {
        out.push(Press::Care(Command::Note(note)));
    }
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("care-done")).clicked() {
            out.push(Press::Care(Command::Tick(item.id.clone())));
        }
        if button(ui, &view.text("care-close")).clicked() {
            out.push(Press::Care(Command::Open(None)));
        }
    });
}
