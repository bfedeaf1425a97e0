//! What the plan to work on shows beside the paper and the pins.

use egui::{Align2, Color32, FontId, Painter, Pos2, Shape, Stroke, Ui, vec2};
use quarterturn_home::{Home, Level, Space};

use super::{MarkedLine, Marks, Placed};
use crate::fonts::bold;
use crate::pictures::Picture;
use crate::sheet::{Sheet, spaces_of};
use crate::system::System;
use crate::tokens::{EDGE_ON_PLAN, FOCUS_ON_PLAN, INK_ON_PLAN, PIN, Palette, size};
use crate::view::View;
use crate::{light, place, trail};

/// How strong a line is that is only proposed.
const FAINT: f32 = 0.55;

/// A grid of metres where there is no picture; over a picture the rooms.
pub(super) fn ground(
    ui: &Ui,
    view: &View<'_>,
    level: &Level,
    picture: &Picture<'_>,
    sheet: &Sheet,
) {
    let palette = Palette::of(ui);
    let painter = ui.painter();
    if matches!(picture, Picture::Ready(_)) {
        for space in spaces_of(view.home, level) {
            light::outline(painter, sheet, space, Stroke::new(1.5, palette.wall));
        }
        return;
    }
    let mut painter = painter.clone();
    painter.set_opacity(0.45);
    let stroke = Stroke::new(1.0, palette.line);
    let (least, most) = (sheet.metres(sheet.seen.min), sheet.metres(sheet.seen.max));
    // Closer lines than this would be a grey sheet.
    let step = if sheet.points(1.0) < 9.0 { 5.0 } else { 1.0 };
    let mut x = (least.0 / step).ceil() * step;
    while x < most.0 {
        painter.vline(sheet.at(x, 0.0).x, sheet.seen.y_range(), stroke);
        x += step;
    }
    let mut y = (least.1 / step).ceil() * step;
    while y < most.1 {
        painter.hline(sheet.seen.x_range(), sheet.at(0.0, y).y, stroke);
        y += step;
    }
}

/// Lines, outlines and points of a tool.
pub(super) fn marks(
    ui: &Ui,
    view: &View<'_>,
    level: &Level,
    marks: &Marks,
    pins: &[Placed<'_>],
    sheet: &Sheet,
) {
    let painter = ui.painter();
    for (corners, name) in &marks.outlines {
        let points: Vec<Pos2> = corners.iter().map(|&(x, y)| sheet.at(x, y)).collect();
        painter.add(Shape::closed_line(points.clone(), Stroke::new(5.0, EDGE_ON_PLAN)));
        painter.add(Shape::closed_line(points, Stroke::new(2.5, FOCUS_ON_PLAN)));
        if let Some((x, y)) = place::middle(corners) {
            written(painter, sheet.at(x, y), name);
        }
    }
    for line in &marks.lines {
        line_ui(painter, view.home, level, line, pins, sheet);
    }
    for ((x, y), text) in &marks.points {
        let at = sheet.at(*x, *y);
        painter.circle(at, 7.0, EDGE_ON_PLAN, Stroke::new(3.0, FOCUS_ON_PLAN));
        painter.circle_filled(at, 1.5, INK_ON_PLAN);
        if !text.is_empty() {
            written(painter, at - vec2(0.0, 20.0), text);
        }
    }
}

fn line_ui(
    painter: &Painter,
    home: &Home,
    level: &Level,
    line: &MarkedLine,
    pins: &[Placed<'_>],
    sheet: &Sheet,
) {
    let end = |id: &str| {
        let pin = pins.iter().find(|pin| pin.component.id == id).map(|pin| pin.at);
        let elsewhere = || {
            let here = place::of_component(home, id).filter(|here| here.level == level.id)?;
            Some(sheet.at(here.x, here.y))
        };
        pin.or_else(elsewhere)
    };
    let system = System::of_net(line.carries.net());
    let (from, to) = match (end(&line.from), end(&line.to)) {
        (Some(from), Some(to)) => (from, to),
        // The other end is on another level: a short piece shows that it goes on.
        (Some(from), None) => (from, from + vec2(PIN * 1.6, -PIN * 2.4)),
        (None, Some(to)) => (to - vec2(PIN * 1.6, -PIN * 2.4), to),
        (None, None) => return,
    };
    let mut painter = painter.clone();
    if line.is_proposed {
        painter.set_opacity(FAINT);
    }
    painter.line_segment([from, to], Stroke::new(7.0, EDGE_ON_PLAN));
    trail::dashes(&painter, &[from, to], system);
    painter.set_opacity(1.0);
    let middle = from + (to - from) / 2.0;
    if line.is_proposed {
        painter.circle(middle, 9.0, EDGE_ON_PLAN, Stroke::new(1.5, INK_ON_PLAN));
        let font = FontId::new(size::PIN, bold());
        painter.text(middle, Align2::CENTER_CENTER, "?", font, INK_ON_PLAN);
    } else if from.distance(to) > PIN * 4.0 {
        let along = (to - from).normalized();
        let across = along.rot90() * 5.0;
        let tip = middle + along * 6.0;
        let back = middle - along * 5.0;
        let points = vec![tip, back + across, back - across];
        let stroke = Stroke::new(1.0, EDGE_ON_PLAN);
        painter.add(Shape::convex_polygon(points, INK_ON_PLAN, stroke));
    }
}

/// The thread from a pin that was moved off others to what it stands for.
pub(super) fn tie(painter: &Painter, anchor: Pos2, at: Pos2) {
    if anchor.distance(at) > PIN {
        painter.line_segment([anchor, at], Stroke::new(4.0, EDGE_ON_PLAN));
        painter.line_segment([anchor, at], Stroke::new(1.5, INK_ON_PLAN));
        painter.circle_filled(anchor, 3.0, INK_ON_PLAN);
    }
}

/// The cross-hair, with the name of the room under it.
pub(super) fn cross(ui: &Ui, view: &View<'_>, level: &Level, metres: (f64, f64), at: Pos2) {
    let painter = ui.painter();
    for (width, color) in [(5.0, EDGE_ON_PLAN), (2.0, FOCUS_ON_PLAN)] {
        let stroke = Stroke::new(width, color);
        for way in [vec2(1.0, 0.0), vec2(-1.0, 0.0), vec2(0.0, 1.0), vec2(0.0, -1.0)] {
            painter.line_segment([at + way * 6.0, at + way * 24.0], stroke);
        }
    }
    if let Some(space) = room_at(view.home, level, metres) {
        written(painter, at + vec2(0.0, 40.0), &space.name);
    }
}

/// The room of a level at a point.
pub(super) fn room_at<'a>(home: &'a Home, level: &Level, (x, y): (f64, f64)) -> Option<&'a Space> {
    let on_it = |space: &&Space| space.level.as_deref() == Some(&level.id);
    home.spaces.iter().filter(on_it).find(|space| place::is_within(&space.outline, x, y))
}

/// A word on a white plate.
fn written(painter: &Painter, at: Pos2, text: &str) {
    let font = FontId::new(size::ROOM, bold());
    let words = painter.layout_no_wrap(text.to_owned(), font, INK_ON_PLAN);
    let rect = Align2::CENTER_CENTER.anchor_size(at, words.size());
    painter.rect_filled(rect.expand2(vec2(5.0, 2.0)), 4.0, Color32::from_white_alpha(225));
    painter.galley(rect.min, words, INK_ON_PLAN);
}
