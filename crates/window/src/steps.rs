//! The steps: the one to do now big, the rest below it.

use egui::{Stroke, Ui, vec2};
use quarterturn_guidance::{Act, Answer, Step, count, fill};
use quarterturn_home::{Component, DeviceState};

use crate::ask::{Command, StepKey};
use crate::controls::{button, card, line, main_button, plate, section, soft, strong, tall_button};
use crate::system::System;
use crate::tokens::{self, Palette, size};
use crate::view::View;
use crate::{place, signs};

/// The steps that were done, and the one to do now.
pub(crate) fn now_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    for (n, step) in (1..).zip(&answer.steps) {
        if view.asked.done.contains(&StepKey::of(step)) {
            done_ui(ui, view, n, step, out);
        }
    }
    match view.asked.now(answer).and_then(|at| answer.steps.get(at).map(|step| (at, step))) {
        Some((at, step)) => step_ui(ui, view, answer, at, step, out),
        None if answer.steps.is_empty() => {}
        None => {
            first_card(ui, |ui| {
                ui.label(strong(view.text("all-done"), size::ACT));
            });
        }
    }
}

/// The steps after the one to do now.
pub(crate) fn later_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer) {
    let Some(now) = view.asked.now(answer) else { return };
    let later: Vec<(usize, &Step)> = (1..)
        .zip(&answer.steps)
        .skip(now + 1)
        .filter(|(_, step)| !view.asked.done.contains(&StepKey::of(step)))
        .collect();
    if later.is_empty() {
        return;
    }
    section(ui, &view.text("then"));
    for (n, step) in later {
        ui.scope(|ui| {
            ui.spacing_mut().interact_size.y = 0.0;
            ui.horizontal_top(|ui| {
                ui.label(view.fill("step-number", &[fill("n", &n.to_string())]));
                ui.add(egui::Label::new(step.text.as_str()).wrap());
            });
        });
    }
}

/// The step to do now.
fn step_ui(
    ui: &mut Ui,
    view: &View<'_>,
    answer: &Answer,
    at: usize,
    step: &Step,
    out: &mut Vec<Command>,
) {
    first_card(ui, |ui| {
        let place = [count("n", as_number(at + 1)), count("of", as_number(answer.steps.len()))];
        let head = if at == 0 { "do-this-first" } else { "do-this-now" };
        line(ui, |ui| {
            ui.label(strong(view.text(head), size::SECTION));
            ui.label(soft(ui, view.fill("step-of", &place)));
        });
        let component = step.component.as_deref().and_then(|id| view.home.component(id));
        ui.horizontal_top(|ui| {
            if let Some(component) = component {
                let preferred = view.asked.trouble.and_then(System::of_trouble);
                let system = System::of(view.home, component, preferred);
                plate(ui, system, component.tag.as_deref(), tokens::PIN_NOW);
            }
            ui.vertical(|ui| {
                words_ui(ui, &step.text);
                if let Some(component) = component {
                    condition_ui(ui, view, component);
                }
                cost_ui(ui, view, answer, step);
                if let Some(prove) = &step.prove {
                    ui.label(view.fill("prove", &[fill("prove", prove)]));
                }
            });
        });
        ui.add_space(4.0);
        ui.horizontal_wrapped(|ui| {
            if main_button(ui, &view.text("done")).clicked() {
                out.push(Command::Done(StepKey::of(step)));
            }
            if let (Some(id), Some(key)) = (&step.component, refusal(step.act))
                && tall_button(ui, &view.text(key)).clicked()
            {
                out.push(Command::Failed(id.clone()));
            }
        });
    });
}

/// The words of a step: its first sentence big, for it says what; the rest says where and how.
pub(crate) fn words_ui(ui: &mut Ui, text: &str) {
    let (first, rest) = match text.find(". ") {
        Some(at) => text.split_at(at + 1),
        None => (text, ""),
    };
    ui.add(egui::Label::new(strong(first, size::ACT)).wrap());
    let rest = rest.trim();
    if !rest.is_empty() {
        ui.add(egui::Label::new(rest).wrap());
    }
}

/// What the button says for a device that does not do what the step asks of it.
fn refusal(act: Act) -> Option<&'static str> {
    match act {
        Act::Close | Act::Open => Some("wont-turn"),
        Act::SwitchOff => Some("wont-switch-off"),
        Act::Reset => Some("wont-stay-on"),
        Act::OpenCap => Some("wont-open"),
        Act::Leave | Act::Call | Act::Unplug | Act::StopUse | Act::Look | Act::Advice => None,
    }
}

/// How long it takes, and how much water is on the floor by then.
fn cost_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, step: &Step) {
    let Some(seconds) = step.seconds else { return };
    let time = fill("time", &view.duration(seconds));
    let set =
        answer.sets.first().filter(|set| step.component.iter().any(|id| set.close.contains(id)));
    let text = match set.and_then(|set| set.litres) {
        Some(litres) => view.fill("takes-and-spills", &[time, fill("water", &view.volume(litres))]),
        None => view.fill("takes", &[time]),
    };
    ui.label(soft(ui, text));
}

/// What to know of a device before touching it.
fn condition_ui(ui: &mut Ui, view: &View<'_>, component: &Component) {
    match component.state() {
        DeviceState::Stiff => {
            ui.label(view.text("stiff"));
        }
        DeviceState::LeaksBy => {
            ui.label(view.text("leaks-by"));
        }
        DeviceState::Works | DeviceState::Seized | DeviceState::Unknown => {}
    }
    if let Some(note) = &component.note {
        ui.add(egui::Label::new(soft(ui, note)).wrap());
    }
}

/// A device: its tag plate, its name, where it is, and what to know before touching it.
pub(crate) fn device_ui(ui: &mut Ui, view: &View<'_>, id: &str) {
    let Some(component) = view.home.component(id) else { return };
    let preferred = view.asked.trouble.and_then(System::of_trouble);
    let system = System::of(view.home, component, preferred);
    ui.horizontal_top(|ui| {
        plate(ui, system, component.tag.as_deref(), tokens::PIN_NOW);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 1.0;
            ui.label(strong(component.name.as_str(), size::BODY));
            ui.label(place::whereabouts(view.home, component, view.words));
            condition_ui(ui, view, component);
        });
    });
}

/// A device on one line: tag, name, where.
pub(crate) fn device_line(view: &View<'_>, id: &str) -> String {
    let Some(component) = view.home.component(id) else { return id.to_owned() };
    let place = place::whereabouts(view.home, component, view.words);
    let fills = [fill("device", &component.name), fill("place", &place)];
    match &component.tag {
        Some(tag) => {
            let [device, place] = fills;
            view.fill("device-line-tagged", &[fill("tag", tag), device, place])
        }
        None => view.fill("device-line", &fills),
    }
}

/// A step that was done, with the way to take it back.
fn done_ui(ui: &mut Ui, view: &View<'_>, n: usize, step: &Step, out: &mut Vec<Command>) {
    ui.horizontal(|ui| {
        let (rect, _) = ui.allocate_exact_size(vec2(20.0, 20.0), egui::Sense::hover());
        signs::tick(ui.painter(), rect.center(), Palette::of(ui).ink);
        let fills = [fill("n", &n.to_string()), fill("step", &step.text)];
        let text = soft(ui, view.fill("was-done", &fills));
        let width = (ui.available_width() - 110.0).max(120.0);
        ui.scope(|ui| {
            ui.set_width(width);
            ui.add(egui::Label::new(text).truncate());
        });
        let label = view.fill("not-done-of", &[fill("n", &n.to_string())]);
        if button(ui, &view.text("not-done")).accessible_name(label).clicked() {
            out.push(Command::NotDone(StepKey::of(step)));
        }
    });
}

/// The card of what to do now: the strongest frame on the page.
fn first_card(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    let edge = Stroke::new(3.0, Palette::of(ui).ink);
    card(ui, edge, add);
}

fn as_number(n: usize) -> f64 {
    u32::try_from(n).map_or(f64::INFINITY, f64::from)
}
