//! The rest of an answer: what to check, what goes off, other ways, how to bring it back.

use egui::{CollapsingHeader, RichText, Stroke, Ui, vec2};
use quarterturn_guidance::{Answer, By, ClosingSet, Seen, Suspect, Trouble, count, fill};
use quarterturn_home::{Component, Kind};

use crate::ask::Command;
use crate::controls::{button, card, section, soft, strong};
use crate::place;
use crate::steps::{device_line, device_ui};
use crate::system::System;
use crate::tokens::{Palette, size};
use crate::view::View;

/// The check that tells most, with a button for each thing that may be seen there, and what was seen
/// so far.
pub(crate) fn check_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    if answer.next_check.is_none() && view.asked.seen.is_empty() {
        return;
    }
    section(ui, &view.text("narrow-down"));
    for (id, seen) in &view.asked.seen {
        ui.horizontal_wrapped(|ui| {
            let fills = [
                fill("device", place::name(view.home, id)),
                fill("seen", &view.text(seen_key(view, id, *seen))),
            ];
            ui.label(view.fill("was-seen", &fills));
            let label = view.fill("not-seen-of", &[fill("device", place::name(view.home, id))]);
            if button(ui, &view.text("not-seen")).accessible_name(label).clicked() {
                out.push(Command::Saw(id.clone(), None));
            }
        });
    }
    let Some(check) = &answer.next_check else { return };
    let edge = Palette::of(ui).edge_stroke();
    card(ui, edge, |ui| {
        ui.label(strong(check.look_for.as_str(), size::BODY));
        device_ui(ui, view, &check.component);
        let time = view.duration(check.seconds);
        ui.label(soft(ui, view.fill("takes", &[fill("time", &time)])));
        ui.horizontal_wrapped(|ui| {
            for seen in what_may_be_seen(view, view.home.component(&check.component)) {
                if button(ui, &view.text(seen_key(view, &check.component, *seen))).clicked() {
                    out.push(Command::Saw(check.component.clone(), Some(*seen)));
                }
            }
        });
    });
}

/// What may be seen at a component, the usual first.
fn what_may_be_seen(view: &View<'_>, component: Option<&Component>) -> &'static [Seen] {
    let asked = view.asked.trouble;
    let trouble = asked.and_then(System::of_trouble);
    let kind = component.map(|c| c.kind);
    let lacks_water = matches!(asked, Some(Trouble::NoWater | Trouble::NoHotWater));
    match kind {
        // Whatever stands there, what matters is whether one's feet stay dry.
        _ if asked == Some(Trouble::WaterNearPower) => &[Seen::Wet, Seen::Dry],
        Some(Kind::CondensatePan | Kind::FloatSwitch) => &[Seen::Wet, Seen::Dry],
        Some(Kind::Thermostat | Kind::AirHandler | Kind::CondensatePump | Kind::SumpPump) => {
            &[Seen::On, Seen::Off]
        }
        Some(Kind::Breaker | Kind::Gfci) => &[Seen::Tripped, Seen::On, Seen::Off],
        Some(Kind::ServiceDisconnect | Kind::Disconnect | Kind::Switch | Kind::TransferSwitch) => {
            &[Seen::On, Seen::Off]
        }
        Some(Kind::IsolatingValve | Kind::GasValve) if lacks_water => &[Seen::Off, Seen::On],
        _ if lacks_water => &[Seen::Dead, Seen::Live],
        _ if asked == Some(Trouble::GfciTrips) => &[Seen::Wet, Seen::Dry],
        _ => match trouble {
            Some(System::Drain) => &[Seen::BacksUp, Seen::Drains],
            Some(System::Power) => &[Seen::Dead, Seen::Live],
            Some(System::Water | System::Cooling) => &[Seen::Wet, Seen::Dry],
            Some(System::Gas | System::Control) | None => &[Seen::On, Seen::Off],
        },
    }
}

fn seen_key(view: &View<'_>, id: &str, seen: Seen) -> &'static str {
    let is_valve = view
        .home
        .component(id)
        .is_some_and(|c| matches!(c.kind, Kind::IsolatingValve | Kind::GasValve));
    match (view.asked.trouble, seen) {
        (Some(Trouble::NoWater), Seen::Live) => return "seen-water-comes",
        (Some(Trouble::NoWater), Seen::Dead) => return "seen-no-water",
        (Some(Trouble::NoHotWater), Seen::Live) => return "seen-hot-comes",
        (Some(Trouble::NoHotWater), Seen::Dead) => return "seen-no-hot",
        (_, Seen::On) if is_valve => return "seen-open",
        (_, Seen::Off) if is_valve => return "seen-shut",
        _ => {}
    }
    match seen {
        Seen::Live => "seen-live",
        Seen::Dead => "seen-dead",
        Seen::Drains => "seen-drains",
        Seen::BacksUp => "seen-backs-up",
        Seen::Wet => "seen-wet",
        Seen::Dry => "seen-dry",
        Seen::On => "seen-on",
        Seen::Off => "seen-off",
        Seen::Tripped => "seen-tripped",
    }
}

/// What goes off with the best way, what matters most first.
pub(crate) fn goes_off_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer) {
    section(ui, &view.text("goes-off"));
    let Some(set) = answer.sets.first().filter(|set| !set.goes_off.is_empty()) else {
        ui.add(egui::Label::new(view.text("goes-off-nothing")).wrap());
        return;
    };
    let (critical, rest): (Vec<&String>, Vec<&String>) = set
        .goes_off
        .iter()
        .partition(|id| view.home.component(id).is_some_and(Component::is_critical));
    for id in critical {
        let edge = Stroke::new(2.0, Palette::of(ui).ink);
        card(ui, edge, |ui| device_ui(ui, view, id));
    }
    for id in rest {
        ui.add(egui::Label::new(device_line(view, id)).wrap());
    }
}

/// What a blocked drain does next.
pub(crate) fn relief_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer) {
    let Some(relief) = &answer.relief else { return };
    section(ui, &view.text("blockage"));
    if let Some(id) = &relief.open {
        ui.label(view.fill("relief-open", &[fill("device", &device_line(view, id))]));
    }
    if let Some(id) = &relief.rod_from {
        ui.label(view.fill("relief-rod", &[fill("device", &device_line(view, id))]));
    }
    if !relief.emerges_at.is_empty() {
        let names: Vec<String> =
            relief.emerges_at.iter().map(|id| place::name(view.home, id).to_owned()).collect();
        ui.label(view.fill("relief-emerges", &[fill("devices", &view.words.list(&names))]));
    }
    for (from, to) in &relief.blocked_between {
        let fills =
            [fill("from", place::name(view.home, from)), fill("to", place::name(view.home, to))];
        ui.label(view.fill("relief-between", &fills));
    }
}

/// Causes that are shown at once.
const SUSPECTS: usize = 5;

/// What may be the cause, with its share as a bar and in words; the less likely folded in.
pub(crate) fn suspects_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer) {
    if answer.suspects.is_empty() {
        return;
    }
    section(ui, &view.text("suspects"));
    let (first, rest) = answer.suspects.split_at(answer.suspects.len().min(SUSPECTS));
    for suspect in first {
        suspect_ui(ui, view, suspect);
    }
    if !rest.is_empty() {
        #[expect(clippy::cast_precision_loss, reason = "a house has few components")]
        let more = rest.len() as f64;
        let title = view.fill("suspects-more", &[count("n", more)]);
        fold(ui, "suspects-more", &title, false, |ui| {
            for suspect in rest {
                suspect_ui(ui, view, suspect);
            }
        });
    }
}

fn suspect_ui(ui: &mut Ui, view: &View<'_>, suspect: &Suspect) {
    ui.horizontal(|ui| {
        let percent = (suspect.share * 100.0).round();
        let (rect, _) = ui.allocate_exact_size(vec2(64.0, 12.0), egui::Sense::hover());
        let palette = Palette::of(ui);
        ui.painter().rect_filled(rect, 2.0, palette.line);
        let filled = egui::lerp(rect.x_range(), share(suspect.share));
        ui.painter().rect_filled(rect.with_max_x(filled), 2.0, palette.ink);
        let fills =
            [fill("device", &device_line(view, &suspect.component)), count("percent", percent)];
        ui.add(egui::Label::new(view.fill("suspect", &fills)).wrap());
    });
}

/// The other ways to cut the spot off, folded in.
pub(crate) fn sets_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer, out: &mut Vec<Command>) {
    let others: Vec<&ClosingSet> = answer.sets_to_tell().skip(1).collect();
    if others.is_empty() {
        return;
    }
    fold(ui, "other-ways", &view.text("other-ways"), false, |ui| {
        for set in others {
            let edge = Stroke::new(1.0, Palette::of(ui).line);
            card(ui, edge, |ui| {
                set_ui(ui, view, set, out);
            });
        }
    });
}

fn set_ui(ui: &mut Ui, view: &View<'_>, set: &ClosingSet, out: &mut Vec<Command>) {
    for id in &set.close {
        ui.label(strong(device_line(view, id), size::BODY));
    }
    let time = fill("time", &view.duration(set.seconds));
    ui.label(match set.litres {
        Some(litres) => view.fill("takes-and-spills", &[time, fill("water", &view.volume(litres))]),
        None => view.fill("takes", &[time]),
    });
    match set.by {
        By::Anyone => {}
        By::Licensed => {
            ui.label(view.text("by-licensed"));
        }
        By::Utility => {
            ui.label(view.text("by-utility"));
        }
    }
    if !set.needs.is_empty() {
        ui.label(view.fill("tool", &[fill("tool", &view.words.list(&set.needs))]));
    }
    let names: Vec<String> =
        set.goes_off.iter().map(|id| place::name(view.home, id).to_owned()).collect();
    if !names.is_empty() {
        ui.label(soft(
            ui,
            view.fill("goes-off-list", &[fill("devices", &view.words.list(&names))]),
        ));
    }
    let first = set.close.first().map_or("", String::as_str);
    if view.asked.shown.as_ref() == Some(&set.close) {
        if button(ui, &view.text("show-step")).clicked() {
            out.push(Command::Show(None));
        }
    } else {
        let label = view.fill("show-on-plan-of", &[fill("device", place::name(view.home, first))]);
        if button(ui, &view.text("show-on-plan")).accessible_name(label).clicked() {
            out.push(Command::Show(Some(set.close.clone())));
        }
    }
}

fn fold(ui: &mut Ui, salt: &str, title: &str, open: bool, add: impl FnOnce(&mut Ui)) {
    ui.add_space(8.0);
    CollapsingHeader::new(RichText::new(title).family(crate::fonts::bold()).size(size::SECTION))
        .id_salt((salt, open))
        .default_open(open)
        .show_unindented(ui, add);
}

#[expect(clippy::cast_possible_truncation, reason = "a share is between 0 and 1")]
fn share(share: f64) -> f32 {
    share.clamp(0.0, 1.0) as f32
}
