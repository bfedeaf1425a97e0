//! The steps: the one to do now big, the rest below it.

use egui::{Stroke, Ui, vec2};
use quarterturn_guidance::{Act, Answer, Step, count, fill};
use quarterturn_home::{Component, DeviceState};

use crate::ask::{Command, StepKey, Tab};
use crate::controls::{button, card, line, main_button, plate, section, soft, strong, tall_button};
use crate::pictures::{Picture, Pictures};
use crate::system::System;
use crate::tokens::{self, FIGURE, Palette, SIDE_BY_SIDE, size};
use crate::view::View;
use crate::{figures, place, practice, signs};

/// The step to do now, or what comes after the last.
pub(crate) fn now_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, pictures: &mut Pictures) {
    match step_now(view, answer) {
        Some((at, step)) => step_ui(ui, view, answer, at, step, pictures),
        None if answer.steps.is_empty() => {}
        None => {
            first_card(ui, |ui| {
                ui.label(strong(view.text("all-done"), size::ACT));
                ui.add(egui::Label::new(view.text("all-done-hint")).wrap());
            });
        }
    }
}

/// How it turned out: the whole of what a person has to say. It stands where it is always in sight.
pub(crate) fn replies_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    ui.horizontal_wrapped(|ui| match step_now(view, answer) {
        Some((_, step)) => buttons_ui(ui, view, step, out),
        None => {
            if !answer.steps.is_empty() && main_button(ui, &view.text("go-after")).clicked() {
                out.push(Command::Turn(Tab::After));
            }
            take_back_ui(ui, view, out);
        }
    });
}

fn step_now<'a>(view: &View<'_>, answer: &'a Answer) -> Option<(usize, &'a Step)> {
    let at = view.asked.now(answer)?;
    answer.steps.get(at).map(|step| (at, step))
}

/// What is done and to be done at the same glance, with the way to take back what was done.
pub(crate) fn steps_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    section(ui, &view.text("tab-steps"));
    let now = view.asked.now(answer);
    for (at, step) in answer.steps.iter().enumerate() {
        let n = at + 1;
        if view.asked.done.contains(&StepKey::of(step)) {
            done_ui(ui, view, n, step, out);
        } else {
            later_ui(ui, view, n, step, now == Some(at));
        }
    }
}

/// A step that is still to be done; the one to do now in bold.
fn later_ui(ui: &mut Ui, view: &View<'_>, n: usize, step: &Step, is_now: bool) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        ui.horizontal_top(|ui| {
            let number = view.fill("step-number", &[fill("n", &n.to_string())]);
            let (number, text) = if is_now {
                (strong(number, size::BODY), strong(step.text.as_str(), size::BODY))
            } else {
                (number.into(), step.text.as_str().into())
            };
            ui.label(number);
            ui.add(egui::Label::new(text).wrap());
        });
    });
}

/// The step to do now.
fn step_ui(
    ui: &mut Ui,
    view: &View<'_>,
    answer: &Answer,
    at: usize,
    step: &Step,
    pictures: &mut Pictures,
) {
    first_card(ui, |ui| {
        let place = [count("n", as_number(at + 1)), count("of", as_number(answer.steps.len()))];
        let head = if at == 0 { "do-this-first" } else { "do-this-now" };
        line(ui, |ui| {
            ui.label(strong(view.text(head), size::SECTION));
            ui.label(soft(ui, view.fill("step-of", &place)));
        });
        let component = step.component.as_deref().and_then(|id| view.home.component(id));
        let words = |ui: &mut Ui| {
            words_ui(ui, &step.text);
            if let Some(component) = component {
                condition_ui(ui, view, component);
            }
            far_ui(ui, view, step);
            cost_ui(ui, view, answer, step);
            if let Some(prove) = &step.prove {
                ui.add(egui::Label::new(view.fill("prove", &[fill("prove", prove)])).wrap());
            }
        };
        if ui.available_width() < SIDE_BY_SIDE {
            ui.horizontal_top(|ui| {
                picture_ui(ui, view, component, step.act, pictures, FIGURE * 0.75);
            });
            words(ui);
        } else {
            ui.horizontal_top(|ui| {
                picture_ui(ui, view, component, step.act, pictures, FIGURE);
                ui.vertical(words);
            });
        }
    });
}

fn buttons_ui(ui: &mut Ui, view: &View<'_>, step: &Step, out: &mut Vec<Command>) {
    if let Some(drill) = view.drill {
        practice::found_ui(ui, view, drill, step, out);
        return;
    }
    let refusal = refusal(step.act);
    let done = if refusal.is_some() { "it-worked" } else { "done" };
    if main_button(ui, &view.text(done)).clicked() {
        out.push(Command::Done(StepKey::of(step)));
    }
    if let Some(id) = &step.component {
        if let Some(key) = refusal
            && tall_button(ui, &view.text(key)).clicked()
        {
            out.push(Command::Failed(id.clone()));
        }
        if refusal.is_some() && tall_button(ui, &view.text("out-of-reach")).clicked() {
            out.push(Command::OutOfReach(id.clone()));
        }
    }
    take_back_ui(ui, view, out);
}

fn take_back_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    if view.asked.can_take_back() && tall_button(ui, &view.text("take-back")).clicked() {
        out.push(Command::TakeBack);
    }
}

/// The device: its photo, or else a drawing of how such a thing is worked, with its tag over it.
fn picture_ui(
    ui: &mut Ui,
    view: &View<'_>,
    component: Option<&Component>,
    act: Act,
    pictures: &mut Pictures,
    side: f32,
) {
    let photo = component.and_then(|c| c.photo.as_deref());
    let response = match (pictures.get(ui.ctx(), photo), component) {
        (Picture::Ready(texture), Some(component)) => {
            let label = photo_label(view, component);
            let size = texture.size_vec2();
            let size = size * (side * 1.2 / size.max_elem().max(1.0));
            let (rect, response) = ui.allocate_exact_size(size, egui::Sense::hover());
            let all = egui::Rect::from_min_max(egui::Pos2::ZERO, egui::pos2(1.0, 1.0));
            let palette = Palette::of(ui);
            ui.painter().image(texture.id(), rect, all, palette.picture);
            response.widget_info(|| {
                egui::WidgetInfo::labeled(egui::accesskit::Role::Image, true, &label)
            });
            response
        }
        _ => {
            let label = figures::label(view.words, component, act);
            figures::figure_ui(ui, vec2(side, side), component, act, &label)
        }
    };
    if let Some(component) = component
        && component.tag.is_some()
    {
        let preferred = view.asked.trouble.and_then(System::of_trouble);
        let system = System::of(view.home, component, preferred);
        let at = response.rect.left_top() + vec2(tokens::PIN_NOW + 2.0, tokens::PIN_NOW + 2.0);
        let edge = Stroke::new(2.0, Palette::of(ui).card);
        crate::controls::pin(
            ui.painter(),
            at,
            tokens::PIN_NOW,
            system,
            component.tag.as_deref(),
            edge,
        );
    }
}

/// What the photo of a device shows.
fn photo_label(view: &View<'_>, component: &Component) -> String {
    let name = fill("device", &component.name);
    match &component.tag {
        Some(tag) => view.fill("picture-of-tagged", &[name, fill("tag", tag)]),
        None => view.fill("picture-of", &[name]),
    }
}

/// How far it is, along the way one walks.
fn far_ui(ui: &mut Ui, view: &View<'_>, step: &Step) {
    if step.component.is_none() {
        return;
    }
    let Some(way) = view.way else { return };
    let far = fill("far", &view.distance(way.metres));
    let text = match (way.levels_up >= 1.0, way.levels_down >= 1.0) {
        (false, false) if way.metres < 1.5 => view.text("far-here"),
        (false, false) => view.fill("far", &[far]),
        (true, _) => view.fill("far-up", &[far]),
        (false, true) => view.fill("far-down", &[far]),
    };
    ui.label(text);
}

/// The words of a step: its first sentence big, for it says what; the rest says where and how.
pub(crate) fn words_ui(ui: &mut Ui, text: &str) {
    let (first, rest) = first_sentence(text);
    ui.add(egui::Label::new(strong(first, size::ACT)).wrap());
    let rest = rest.trim();
    if !rest.is_empty() {
        ui.add(egui::Label::new(rest).wrap());
    }
}

/// The first sentence of a text, and the rest.
pub(crate) fn first_sentence(text: &str) -> (&str, &str) {
    match text.find(". ") {
        Some(at) => text.split_at(at + 1),
        None => (text, ""),
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

pub(crate) fn as_number(n: usize) -> f64 {
    u32::try_from(n).map_or(f64::INFINITY, f64::from)
}
