//! The log of troubles: what happened in this home, latest first.

use egui::Ui;
use quarterturn_guidance::{Seen, fill};
use quarterturn_home::LogEntry;

use crate::ask::Command;
use crate::controls::{button, card, line, main_button, soft, strong};
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// The page of the log.
pub(crate) fn log_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    ui.horizontal_wrapped(|ui| {
        if button(ui, &view.text("back")).clicked() {
            out.push(Command::Leave);
        }
        ui.label(strong(view.text("log"), size::HEADING));
    });
    ui.add(egui::Label::new(soft(ui, view.text("log-hint"))).wrap());
    if view.log.latest().next().is_none() {
        ui.add_space(GAP);
        ui.label(view.text("log-empty"));
        return;
    }
    if main_button(ui, &view.text("log-print")).clicked() {
        out.push(Command::PrintLog);
    }
    if let Some(message) = view.message {
        ui.add(egui::Label::new(strong(message, size::BODY)).wrap());
    }
    for entry in view.log.latest() {
        card(ui, Palette::of(ui).edge_stroke(), |ui| entry_ui(ui, view, entry, out));
        ui.add_space(GAP);
    }
}

fn entry_ui(ui: &mut Ui, view: &View<'_>, entry: &LogEntry, out: &mut Vec<Command>) {
    let trouble = view.words.text(&format!("trouble-{}", entry.trouble));
    line(ui, |ui| {
        let day = entry.on.to_string();
        let when = match &entry.at_time {
            Some(time) => view.fill("log-when", &[fill("day", &day), fill("time", time)]),
            None => day,
        };
        ui.label(soft(ui, when));
        ui.label(strong(trouble.clone(), size::BODY));
        ui.label(entry.place_name.as_str());
    });
    let name = |id: &String| entry.name_of(id).to_owned();
    let list = |ids: &[String]| view.words.list(&ids.iter().map(name).collect::<Vec<_>>());
    for (n, step) in (1..).zip(&entry.done) {
        let fills = [fill("n", &i32::to_string(&n)), fill("step", &step.text)];
        ui.add(egui::Label::new(view.fill("was-done", &fills)).wrap());
    }
    if !entry.failed.is_empty() {
        let fills = [fill("devices", &list(&entry.failed))];
        ui.add(egui::Label::new(view.fill("log-failed", &fills)).wrap());
    }
    for (id, seen) in &entry.seen {
        let seen = Seen::from_word(seen)
            .map_or_else(|| seen.clone(), |s| view.text(&format!("seen-{}", s.word())));
        let fills = [fill("device", &name(id)), fill("seen", &seen)];
        ui.add(egui::Label::new(view.fill("was-seen", &fills)).wrap());
    }
    if !entry.solved_by.is_empty() {
        let fills = [fill("devices", &list(&entry.solved_by))];
        ui.add(egui::Label::new(view.fill("log-solved", &fills)).wrap());
    }
    if let Some(note) = &entry.note {
        ui.add(egui::Label::new(note.as_str()).wrap());
    }
    let label = view
        .fill("log-remove-of", &[fill("trouble", &trouble), fill("day", &entry.on.to_string())]);
    if button(ui, &view.text("log-remove")).accessible_name(label).clicked()
        && let Some(at) = view.log.entries.iter().position(|other| other == entry)
    {
        out.push(Command::RemoveEntry(at));
    }
}
