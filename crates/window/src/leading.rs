//! What leads to the device: the way one walks, the stairs, the pipes or wires, and their names.

use egui::{
    FontId, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, accesskit::Role, pos2,
    vec2,
};
use quarterturn_guidance::fill;
use quarterturn_home::{Home, Level};

use crate::ask::Command;
use crate::controls::{focus_ring, line};
use crate::fonts::bold;
use crate::marks::{Meaning, Pin};
use crate::pins::covered;
use crate::sheet::Sheet;
use crate::system::System;
use crate::tokens::{EDGE_ON_PLAN, INK_ON_PLAN, PIN_NOW, Palette, ROUND, TOUCH, size};
use crate::trail::{self, Run, stretches};
use crate::view::View;

/// Farther than this, in points, a button is tied to its stairs by a line.
const NEAR: f32 = 22.0;
/// Nearer than this, in metres, one need not walk.
const AT_HAND: f64 = 1.5;

/// The lines on a level.
pub(crate) fn runs(view: &View<'_>, level: &Level, lines: &[Vec<String>]) -> Vec<Run> {
    let preferred = view.asked.trouble.and_then(System::of_trouble);
    trail::runs(view.home, level, lines, preferred)
}

/// What the strokes on the plan mean, each with a sample.
pub(crate) fn legend_ui(ui: &mut Ui, view: &View<'_>, level: &Level, lines: &[Vec<String>]) {
    // A step away there is no way to speak of.
    let way = view.way.filter(|way| way.metres >= AT_HAND && !stretches(way, level).is_empty());
    let mut systems: Vec<System> = runs(view, level, lines).iter().map(|run| run.system).collect();
    systems.sort();
    systems.dedup();
    if way.is_none() && systems.is_empty() {
        return;
    }
    line(ui, |ui| {
        ui.spacing_mut().item_spacing = vec2(6.0, 2.0);
        if let Some(way) = way {
            let far = fill("far", &view.distance(way.metres));
            let key = if way.is_guess { "plan-way-guess" } else { "plan-way" };
            sample_ui(ui, &view.fill(key, &[far]), |painter, rect| {
                trail::way_sample(painter, rect);
            });
        }
        for system in systems {
            let text = view.fill("plan-line", &[fill("system", system_key(system))]);
            sample_ui(ui, &text, |painter, rect| trail::line_sample(painter, rect, system));
        }
    });
}

fn system_key(system: System) -> &'static str {
    match system {
        System::Water => "water",
        System::Drain => "drain",
        System::Power => "power",
        System::Gas => "gas",
        System::Cooling => "cooling",
        System::Control => "control",
    }
}

/// A sample with its meaning beside it, on one line as one thing.
fn sample_ui(ui: &mut Ui, text: &str, sample: impl FnOnce(&egui::Painter, Rect)) {
    const SAMPLE: f32 = 46.0;
    let palette = Palette::of(ui);
    let font = FontId::proportional(size::SMALL);
    let most = (ui.max_rect().width() - SAMPLE - 20.0).max(80.0);
    let words = ui.painter().layout(text.to_owned(), font, palette.ink, most);
    let size = vec2(SAMPLE + words.size().x + 20.0, words.size().y.max(20.0));
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, text));
    let at = Rect::from_min_size(rect.min, vec2(SAMPLE, rect.height()));
    sample(ui.painter(), at);
    let top = rect.center().y - words.size().y / 2.0;
    ui.painter().galley(pos2(at.right() + 8.0, top), words, palette.ink);
}

/// Draws the way on this level, from the trouble or from where one stands, up to the goal.
pub(crate) fn way_ui(ui: &Ui, view: &View<'_>, level: &Level, sheet: &Sheet, pins: &[(Pin, Pos2)]) {
    let Some(way) = view.way else { return };
    let pin = |meaning, near: Option<&(f64, f64)>| {
        let near = near.map(|&(x, y)| sheet.at(x, y))?;
        let (pin, place) = pins.iter().find(|(pin, _)| pin.meaning == meaning)?;
        // A pin that was moved off others still stands for what it is tied to.
        (pin.anchor.distance(near) < PIN_NOW).then_some(*place)
    };
    for stretch in stretches(way, level) {
        let from = pin(Meaning::Trouble, stretch.points.first());
        let to = match stretch.goes_on {
            Some(_) => None,
            None => pin(Meaning::Goal, stretch.points.last()),
        };
        trail::way(ui.painter(), sheet, &stretch, from, to);
    }
}

/// At stairs, the button that shows where the way goes on or comes from.
pub(crate) fn stairs_ui(
    ui: &mut Ui,
    view: &View<'_>,
    level: &Level,
    sheet: &Sheet,
    taken: Vec<Rect>,
    out: &mut Vec<Command>,
) {
    // A guess knows of no stairs.
    let Some(way) = view.way.filter(|way| !way.is_guess) else { return };
    let mut taken = taken;
    for stretch in stretches(way, level) {
        taken.extend(trail::footprints(sheet, &stretch));
    }
    for stretch in stretches(way, level) {
        for (point, other, key) in [
            (stretch.points.first(), stretch.comes_from, "plan-comes-from"),
            (stretch.points.last(), stretch.goes_on, "plan-goes-on"),
        ] {
            let (Some(&(x, y)), Some(other)) = (point, other) else { continue };
            let Some(other) = view.home.level(other) else { continue };
            let at = sheet.at(x, y);
            let text = view.fill(key, &[fill("level", &other.name)]);
            let font = FontId::new(size::SMALL, bold());
            let words = ui.painter().layout_no_wrap(text.clone(), font, INK_ON_PLAN);
            let size = vec2(words.size().x + 56.0, TOUCH);
            let rect = beside(at, size, sheet.seen, &taken);
            taken.push(rect);
            let id = ui.scope_id().with((key, &other.id));
            let response = ui.interact(rect, id, Sense::click());
            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &text));
            let painter = ui.painter();
            if rect.distance_to_pos(at) > NEAR {
                let near = rect.clamp(at);
                painter.line_segment([at, near], Stroke::new(4.0, EDGE_ON_PLAN));
                painter.line_segment([at, near], Stroke::new(1.5, INK_ON_PLAN));
            }
            let width = if response.hovered() { 3.0 } else { 2.0 };
            painter.rect_filled(rect.expand(2.0), ROUND, EDGE_ON_PLAN);
            let edge = Stroke::new(width, INK_ON_PLAN);
            painter.rect(rect, ROUND, EDGE_ON_PLAN, edge, StrokeKind::Inside);
            let middle = pos2(rect.left() + 25.0, rect.center().y);
            let sign = Rect::from_center_size(middle, vec2(24.0, 22.0));
            trail::stairs(painter, sign, INK_ON_PLAN, is_higher(view.home, level, other));
            let top = rect.center().y - words.size().y / 2.0;
            painter.galley(pos2(rect.left() + 45.0, top), words, INK_ON_PLAN);
            focus_ring(ui, &response);
            if response.clicked() {
                out.push(Command::ShowLevel(other.id.clone()));
            }
        }
    }
}

/// True if the other level is above this one; levels of the same height go by the file's order.
fn is_higher(home: &Home, this: &Level, other: &Level) -> bool {
    let place = |level: &Level| home.levels.iter().position(|l| l.id == level.id);
    match other.elevation_m.total_cmp(&this.elevation_m) {
        std::cmp::Ordering::Equal => place(other) > place(this),
        order => order.is_gt(),
    }
}

/// A place for something at a point that is within what is seen and covers nothing else, if there is one.
fn beside(at: Pos2, size: Vec2, seen: Rect, taken: &[Rect]) -> Rect {
    const AWAY: f32 = 14.0;
    let half = size / 2.0;
    let (x, y) = (half.x + AWAY, half.y + AWAY);
    let inside = |middle: Pos2| {
        let bounds = seen.shrink2(half + vec2(6.0, 6.0));
        let middle =
            if bounds.is_positive() { middle.clamp(bounds.min, bounds.max) } else { seen.center() };
        Rect::from_center_size(middle, size)
    };
    let places = [
        vec2(x, 0.0),
        vec2(-x, 0.0),
        vec2(0.0, y),
        vec2(0.0, -y),
        vec2(x, y),
        vec2(-x, y),
        vec2(x, -y),
        vec2(-x, -y),
        vec2(0.0, y * 2.4),
        vec2(0.0, -y * 2.4),
    ];
    let hidden = |rect: Rect| covered(rect, taken) + if rect.contains(at) { 1e4 } else { 0.0 };
    let best = places
        .into_iter()
        .map(|by| inside(at + by))
        .min_by(|a, b| hidden(*a).total_cmp(&hidden(*b)));
    best.unwrap_or_else(|| inside(at))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_button_at_the_stairs_covers_neither_them_nor_a_pin() {
        let seen = Rect::from_min_size(pos2(0.0, 0.0), vec2(600.0, 400.0));
        let size = vec2(160.0, 44.0);
        let at = pos2(300.0, 200.0);
        let free = beside(at, size, seen, &[]);
        assert!(seen.contains_rect(free) && !free.contains(at));
        assert!(free.distance_to_pos(at) < 20.0);
        let pin = Rect::from_center_size(free.center(), Vec2::splat(60.0));
        let other = beside(at, size, seen, &[pin]);
        assert!(!other.intersects(pin), "{other}");
        // In a corner it moves inwards.
        assert!(seen.contains_rect(beside(pos2(599.0, 1.0), size, seen, &[])));
    }
}
