//! Afterwards: bring it back, and write down what was learnt, so that the next answer is better.

use egui::{TextEdit, Ui, vec2};
use quarterturn_guidance::{Answer, fill};
use quarterturn_home::{DeviceState, Kind, Lesson, Net};

use crate::ask::Command;
use crate::controls::{button, card, chosen_button, main_button, section, soft, strong};
use crate::steps::device_ui;
use crate::tokens::{GAP, Palette, TOUCH, size};
use crate::view::View;
use crate::{place, signs};

/// How it is brought back, what was learnt, and what else the log should say.
pub(crate) fn after_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    restore_ui(ui, view, answer, out);
    learn_ui(ui, view, answer, out);
    note_ui(ui, view, out);
}

/// How to bring it back, act by act.
pub(crate) fn restore_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    if answer.restore.is_empty() {
        return;
    }
    section(ui, &view.text("restore"));
    for (at, text) in answer.restore.iter().enumerate() {
        let n = (at + 1).to_string();
        ui.horizontal_top(|ui| {
            let is_done = view.session.restored.contains(&at);
            let key = if is_done { "restored-not" } else { "restored" };
            let label = view.fill(key, &[fill("n", &n)]);
            let (rect, response) = ui.allocate_exact_size(vec2(TOUCH, TOUCH), egui::Sense::click());
            response.widget_info(|| {
                let role = egui::accesskit::Role::CheckBox;
                egui::WidgetInfo::selected(role, ui.is_enabled(), is_done, &label)
            });
            let palette = Palette::of(ui);
            let square = egui::Rect::from_center_size(rect.center(), vec2(26.0, 26.0));
            let edge = egui::Stroke::new(2.0, palette.ink);
            ui.painter().rect(square, 4.0, palette.card, edge, egui::StrokeKind::Inside);
            if is_done {
                signs::tick(ui.painter(), square.center(), palette.ink);
            }
            crate::controls::focus_ring(ui, &response);
            if response.clicked() {
                out.push(Command::Restored(at));
            }
            ui.vertical(|ui| {
                ui.add_space(10.0);
                let numbered = view.fill("was-done", &[fill("n", &n), fill("step", text)]);
                ui.add(egui::Label::new(numbered).wrap());
            });
        });
    }
}

/// What was learnt about each device that was worked or tried.
fn learn_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    let devices = devices(view, answer);
    section(ui, &view.text("learnt"));
    if devices.is_empty() {
        ui.add(egui::Label::new(soft(ui, view.text("learnt-nothing"))).wrap());
        return;
    }
    ui.add(egui::Label::new(soft(ui, view.text("learnt-hint"))).wrap());
    for id in devices {
        card(ui, Palette::of(ui).edge_stroke(), |ui| device_learn_ui(ui, view, &id, out));
    }
}

/// Devices that were worked or tried in this trouble, first the ones that failed.
fn devices(view: &View<'_>, answer: &Answer) -> Vec<String> {
    let worked = view.asked.done.iter().filter_map(|step| step.component.as_ref());
    let shown = answer.sets.first().into_iter().flat_map(|set| &set.close);
    let mut devices: Vec<String> = Vec::new();
    for id in view.asked.failed.iter().chain(worked).chain(shown) {
        let has_handle = view.home.component(id).is_some_and(|c| {
            let isolates =
                [Net::Water, Net::Power, Net::Gas].iter().any(|net| c.kind.isolates(*net));
            isolates || c.operates.is_some() || matches!(c.kind, Kind::Gfci | Kind::Cleanout)
        });
        if has_handle && !devices.contains(id) {
            devices.push(id.clone());
        }
    }
    devices
}

/// The states that one may find a device in, and how they are said.
pub(crate) const STATES: [(DeviceState, &str); 4] = [
    (DeviceState::Works, "learnt-works"),
    (DeviceState::Stiff, "learnt-stiff"),
    (DeviceState::Seized, "learnt-seized"),
    (DeviceState::LeaksBy, "learnt-leaks-by"),
];

fn device_learn_ui(ui: &mut Ui, view: &View<'_>, id: &str, out: &mut Vec<Command>) {
    device_ui(ui, view, id);
    let name = place::name(view.home, id);
    let was_learnt =
        |lesson: &Lesson| view.session.learnt.iter().any(|l| l.device == id && l.lesson == *lesson);
    ui.horizontal_wrapped(|ui| {
        for (state, key) in STATES {
            let text = view.text(key);
            let label = view.fill("learnt-of", &[fill("device", name), fill("lesson", &text)]);
            let is_chosen = was_learnt(&Lesson::State(state));
            if chosen_button(ui, &text, is_chosen).accessible_name(label).clicked() {
                out.push(Command::Learn(id.to_owned(), Lesson::State(state)));
            }
        }
        let label = view
            .fill("learnt-of", &[fill("device", name), fill("lesson", &view.text("learnt-label"))]);
        if button(ui, &view.text("learnt-label")).accessible_name(label).clicked() {
            let tag = view.home.component(id).and_then(|c| c.tag.clone()).unwrap_or_default();
            out.push(Command::Relabel(Some((id.to_owned(), tag))));
        }
    });
    if let Some((device, typed)) = &view.session.relabel
        && device == id
    {
        relabel_ui(ui, view, id, typed, out);
    }
    if view.session.learnt.iter().any(|l| l.device == id) {
        ui.horizontal_wrapped(|ui| {
            ui.label(view.text("learnt-written"));
            let label = view.fill("unlearn-of", &[fill("device", name)]);
            if button(ui, &view.text("unlearn")).accessible_name(label).clicked() {
                out.push(Command::Unlearn(id.to_owned()));
            }
        });
    }
}

/// What the tag on it really says.
fn relabel_ui(ui: &mut Ui, view: &View<'_>, id: &str, typed: &str, out: &mut Vec<Command>) {
    let label = ui.label(view.text("relabel"));
    ui.horizontal_wrapped(|ui| {
        let mut text = typed.to_owned();
        let edit = TextEdit::singleline(&mut text)
            .id_salt(("relabel", id))
            .desired_width(140.0)
            .min_size(vec2(TOUCH, TOUCH))
            .align(egui::Align2::LEFT_CENTER);
        if ui.add(edit).labelled_by(label.id).changed() {
            out.push(Command::Relabel(Some((id.to_owned(), text.clone()))));
        }
        if main_button(ui, &view.text("write-down")).clicked() && !text.trim().is_empty() {
            out.push(Command::Learn(id.to_owned(), Lesson::Tag(text.trim().to_owned())));
        }
        if button(ui, &view.text("cancel")).clicked() {
            out.push(Command::Relabel(None));
        }
    });
}

/// What else the log should say.
fn note_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    section(ui, &view.text("log-note"));
    let told = view.session.is_worth_telling(view.asked);
    ui.add(
        egui::Label::new(soft(ui, view.text(if told { "log-kept" } else { "log-not-yet" }))).wrap(),
    );
    let mut note = view.session.note.clone();
    let edit = TextEdit::multiline(&mut note)
        .id_salt("log-note")
        .desired_rows(2)
        .desired_width(f32::INFINITY);
    if ui.add(edit).accessible_name(view.text("log-note")).changed() {
        out.push(Command::Note(note));
    }
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("finish")).clicked() {
            out.push(Command::Leave);
        }
        if button(ui, &view.text("see-log")).clicked() {
            out.push(Command::Open(crate::ask::Page::Log));
        }
    });
    if !view.lasts {
        ui.add(egui::Label::new(soft(ui, view.text("not-lasting"))).wrap());
    }
    if let Some(message) = view.message {
        ui.add(egui::Label::new(strong(message, size::BODY)).wrap());
    }
}
