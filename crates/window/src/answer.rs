//! The third page: what to do.

use egui::{Align, Layout, Stroke, Ui, UiBuilder, vec2};
use quarterturn_guidance::{Answer, Caution, Signal, Spot, count, fill};

use crate::ask::{Command, Tab};
use crate::controls::{button, card, chosen_button, end_ui, soft, strong};
use crate::pictures::Pictures;
use crate::steps::{self, device_ui, words_ui};
use crate::tokens::{self, GAP, Palette, ROUND, SIGNAL_WIDTH, TEXT_COLUMN, TOUCH, size};
use crate::view::View;
use crate::{after, call, more, place, plot, signs, troubles};

/// What counts now: what can kill, and the step to do.
pub(crate) fn now_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, pictures: &mut Pictures) {
    cautions_ui(ui, view, &by_weight(&answer.cautions).0);
    if !answer.mapped {
        ui.add(egui::Label::new(soft(ui, view.text("not-mapped"))).wrap());
    }
    steps::now_ui(ui, view, answer, pictures);
}

/// The part of the answer that was turned to. Below the step to do now stand what else could hurt and
/// how to find the cause.
pub(crate) fn part_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    match view.asked.tab {
        Tab::Now => {
            failed_ui(ui, view, out);
            cautions_ui(ui, view, &by_weight(&answer.cautions).1);
            more::check_ui(ui, view, answer, out);
            more::relief_ui(ui, view, answer);
            more::suspects_ui(ui, view, answer);
        }
        Tab::Steps => {
            steps::steps_ui(ui, view, answer, out);
            plot::choices_ui(ui, view, answer);
            more::sets_ui(ui, view, answer, out);
        }
        Tab::GoesOff => more::goes_off_ui(ui, view, answer),
        Tab::Call => call::calls_ui(ui, view, &answer.call),
        Tab::After => after::after_ui(ui, view, answer, out),
    }
}

/// The parts of the answer, all in reach at any time.
pub(crate) fn tabs_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().button_padding.x = 9.0;
        for tab in Tab::ALL {
            let text = match tab {
                Tab::Steps => {
                    let n = count("n", steps::as_number(answer.steps.len()));
                    view.fill("tab-steps-count", &[n])
                }
                Tab::GoesOff => {
                    let off = answer.sets.first().map_or(0, |set| set.goes_off.len());
                    view.fill("tab-goes-off-count", &[count("n", steps::as_number(off))])
                }
                Tab::Now | Tab::Call | Tab::After => view.text(tab.key()),
            };
            if chosen_button(ui, &text, view.asked.tab == tab).clicked() {
                out.push(Command::Turn(tab));
            }
        }
    });
}

/// The step to do now on one line, while another part is in sight.
pub(crate) fn back_to_now_ui(
    ui: &mut Ui,
    view: &View<'_>,
    answer: &Answer,
    out: &mut Vec<Command>,
) {
    let Some(step) = view.asked.now(answer).and_then(|at| answer.steps.get(at)) else { return };
    let (first, _) = steps::first_sentence(&step.text);
    let text = view.fill("back-to-now", &[fill("step", first)]);
    if button(ui, &text).clicked() {
        out.push(Command::Turn(Tab::Now));
    }
    ui.add_space(GAP);
}

/// What can kill, which stands before the first step, and the rest, which must not push that off the
/// screen.
fn by_weight(cautions: &[Caution]) -> (Vec<&Caution>, Vec<&Caution>) {
    cautions.iter().partition(|caution| caution.signal <= Signal::Warning)
}

/// The answer that fills the window, where the only right thing is to leave and call.
pub(crate) fn leave_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    column_of_text(ui, |ui| {
        asked_ui(ui, view, out);
        let (grave, rest) = by_weight(&answer.cautions);
        cautions_ui(ui, view, &grave);
        for (n, step) in (1..).zip(&answer.steps) {
            let edge = Palette::of(ui).edge_stroke();
            card(ui, edge, |ui| {
                ui.with_layout(Layout::left_to_right(Align::TOP), |ui| {
                    let n = view.fill("step-number", &[fill("n", &n.to_string())]);
                    ui.label(strong(n, size::ACT));
                    ui.vertical(|ui| {
                        words_ui(ui, &step.text);
                        if let Some(prove) = &step.prove {
                            ui.label(soft(ui, view.fill("prove", &[fill("prove", prove)])));
                        }
                        if let Some(id) = &step.component {
                            device_ui(ui, view, id);
                        }
                    });
                });
            });
        }
        call::calls_ui(ui, view, &answer.call);
        cautions_ui(ui, view, &rest);
        after::restore_ui(ui, view, answer, out);
    });
}

/// A column in the middle, no wider than text is read.
pub(crate) fn column_of_text(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    let width = ui.available_width().min(TEXT_COLUMN);
    let left = (ui.available_width() - width) / 2.0;
    let area = ui.available_rect_before_wrap();
    let column = egui::Rect::from_min_size(area.min + vec2(left, 0.0), vec2(width, area.height()));
    ui.scope_builder(UiBuilder::new().max_rect(column), add);
}

/// The trouble and the spot, and the way back.
pub(crate) fn asked_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let Some(trouble) = view.asked.trouble else { return };
    ui.horizontal(|ui| {
        if button(ui, &view.text("back")).clicked() {
            out.push(Command::Back);
        }
        let (rect, _) = ui.allocate_exact_size(vec2(TOUCH, TOUCH), egui::Sense::hover());
        end_ui(ui.painter(), rect, ROUND, troubles::end(trouble), |painter, rect, ink| {
            signs::trouble(painter, rect, ink, trouble);
        });
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            let title = view.words.text(&format!("trouble-{}", trouble.id()));
            let spot = view.asked.at.as_ref().filter(|spot| **spot != Spot::Home);
            if spot.is_none() {
                ui.add_space(10.0);
            }
            ui.add(egui::Label::new(strong(title, size::BODY)).wrap());
            if let Some(spot) = spot {
                ui.add(egui::Label::new(spot_line(view, spot)).wrap());
            }
        });
    });
    ui.add_space(GAP / 2.0);
}

/// A spot with its room.
fn spot_line(view: &View<'_>, spot: &Spot) -> String {
    let name = place::name_of_spot(view.home, spot, view.words);
    match (spot, place::space_of_spot(view.home, spot)) {
        // A name that tells the room says it once.
        (Spot::Component(_) | Spot::Connection(..), Some(space)) if !name.contains(&space.name) => {
            view.fill("device-line", &[fill("device", &name), fill("place", &space.name)])
        }
        (Spot::Component(_) | Spot::Connection(..) | Spot::Space(_) | Spot::Home, _) => name,
    }
}

/// What could hurt, before anything is done: the signal word in its colour, then the text.
fn cautions_ui(ui: &mut Ui, view: &View<'_>, cautions: &[&Caution]) {
    for caution in cautions {
        caution_ui(ui, view, caution);
    }
}

fn caution_ui(ui: &mut Ui, view: &View<'_>, caution: &Caution) {
    let paint = tokens::signal(caution.signal);
    let palette = Palette::of(ui);
    let word = view.text(match caution.signal {
        Signal::Danger => "signal-danger",
        Signal::Warning => "signal-warning",
        Signal::Caution => "signal-caution",
        Signal::Notice => "signal-notice",
    });
    let width = ui.available_width();
    let signal_width = signal_width(ui, view);
    let text_width = width - signal_width - 24.0;
    let body = egui::FontId::proportional(size::CAUTION);
    let text = ui.painter().layout(caution.text.clone(), body, palette.ink, text_width);
    let head = egui::FontId::new(size::BODY, crate::fonts::bold());
    let word = ui.painter().layout_no_wrap(word, head, paint.on);
    let height = (text.size().y + 14.0).max(40.0);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), egui::Sense::hover());
    let label = view.fill("caution", &[fill("signal", word.text()), fill("text", &caution.text)]);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::accesskit::Role::Alert, true, &label));
    let painter = ui.painter();
    let panel = rect.with_max_x(rect.left() + signal_width);
    painter.rect_filled(rect, ROUND, palette.card);
    painter.rect_filled(panel, egui::CornerRadius { ne: 0, se: 0, ..ROUND }, paint.fill);
    painter.rect_stroke(rect, ROUND, Stroke::new(2.0, paint.fill), egui::StrokeKind::Inside);
    let mut at = panel.left_center() + vec2(12.0, 0.0);
    // ANSI Z535.4: a notice is not about injury and has no alert sign.
    if caution.signal != Signal::Notice {
        let sign = egui::Rect::from_center_size(at + vec2(9.0, 0.0), vec2(20.0, 20.0));
        signs::alert(painter, sign, paint.on, paint.fill);
        at.x += 26.0;
    }
    painter.galley(at - vec2(0.0, word.size().y / 2.0), word, paint.on);
    let at = egui::pos2(panel.right() + 12.0, rect.center().y - text.size().y / 2.0);
    painter.galley(at, text, palette.ink);
}

/// Width of the coloured end of a caution: room for the longest signal word of the language, so that
/// all cautions line up.
fn signal_width(ui: &Ui, view: &View<'_>) -> f32 {
    /// The alert sign with the space round it and behind the word.
    const ROUND_THE_WORD: f32 = 12.0 + 26.0 + 12.0;
    let words = ["signal-danger", "signal-warning", "signal-caution", "signal-notice"];
    let font = egui::FontId::new(size::BODY, crate::fonts::bold());
    words.iter().fold(SIGNAL_WIDTH, |widest, key| {
        let word = ui.painter().layout_no_wrap(view.text(key), font.clone(), egui::Color32::BLACK);
        widest.max(word.size().x + ROUND_THE_WORD)
    })
}

/// The devices that were said not to work, each with the way to take it back.
fn failed_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    for id in &view.asked.failed {
        let name = place::name(view.home, id);
        ui.horizontal_wrapped(|ui| {
            let far = view.asked.out_of_reach.contains(id);
            let key = if far { "left-out-of-reach" } else { "left-out" };
            ui.label(view.fill(key, &[fill("device", name)]));
            let key = if view.asked.out_of_reach.contains(id) {
                "in-reach-after-all"
            } else {
                "works-after-all"
            };
            if button(ui, &view.fill(key, &[fill("device", name)])).clicked() {
                out.push(Command::Works(id.clone()));
            }
        });
    }
}
