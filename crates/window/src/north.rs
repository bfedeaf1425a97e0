//! Where north is on a plan: a mark with an arrow, and its words.

use egui::{
    Align2, FontId, Painter, Rect, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo, accesskit::Role,
    pos2, vec2,
};
use quarterturn_guidance::{Catalogue, fill};

use crate::fonts::bold;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Side of the square that the mark takes.
pub(crate) const SIDE: f32 = 44.0;

/// The eight directions of a plan, clockwise, by the word that texts choose by, with their degrees.
pub(crate) const WAYS: [(&str, f64); 8] = [
    ("up", 0.0),
    ("up-right", 45.0),
    ("right", 90.0),
    ("down-right", 135.0),
    ("down", 180.0),
    ("down-left", 225.0),
    ("left", 270.0),
    ("up-left", 315.0),
];

/// Draws the mark in the middle of `area`: an arrow towards north with its letter before its head, on a
/// round plate. `north_deg` is [`Home::north_deg`](quarterturn_home::Home::north_deg).
pub(crate) fn mark(
    painter: &Painter,
    area: Rect,
    north_deg: f64,
    words: &Catalogue,
    palette: &Palette,
) {
    #[expect(clippy::cast_possible_truncation, reason = "an angle on the screen")]
    let (sine, cosine) = (north_deg.to_radians().sin() as f32, north_deg.to_radians().cos() as f32);
    let middle = area.center();
    let along = vec2(sine, -cosine);
    let across = along.rot90();
    let at = |ahead: f32, aside: f32| middle + along * ahead + across * aside;
    let edge = Stroke::new(1.0, palette.edge);
    painter.circle(middle, SIDE / 2.0 - 1.0, palette.card, edge);
    painter.line_segment([at(-17.0, 0.0), at(-4.0, 0.0)], Stroke::new(2.8, palette.ink));
    let head = vec![at(5.5, 0.0), at(-6.0, 6.5), at(-6.0, -6.5)];
    painter.add(Shape::convex_polygon(head, palette.ink, Stroke::NONE));
    let font = FontId::new(size::ROOM, bold());
    painter.text(
        at(12.0, 0.0),
        Align2::CENTER_CENTER,
        words.text("north-letter"),
        font,
        palette.ink,
    );
}

/// Draws the mark on a plan where nothing is `taken`, with words for those who do not see it, and gives
/// what it takes up. It cannot be pressed. `None` where north is not known, or there is no room.
pub(crate) fn mark_ui(ui: &Ui, view: &View<'_>, seen: Rect, taken: &[Rect]) -> Option<Rect> {
    let north_deg = view.home.north_deg?;
    let area = free_place(seen, taken)?;
    mark(ui.painter(), area, north_deg, view.words, Palette::of(ui));
    let response = ui.interact(area, ui.scope_id().with("north"), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, words(view, north_deg)));
    Some(area)
}

/// Where north is, in words.
pub(crate) fn words(view: &View<'_>, north_deg: f64) -> String {
    let way = way_of(north_deg).unwrap_or("other");
    let degrees = ((north_deg * 10.0).round() / 10.0).to_string();
    view.fill("north-mark", &[fill("way", way), fill("degrees", &degrees)])
}

/// The direction that has these degrees, if one of the eight has.
pub(crate) fn way_of(north_deg: f64) -> Option<&'static str> {
    let is_it = |degrees: f64| (degrees - north_deg).abs() < 1e-9;
    WAYS.into_iter().find(|(_, degrees)| is_it(*degrees)).map(|(way, _)| way)
}

/// The first of the corners and edges of what is seen where nothing else is; if something is everywhere,
/// the first corner. `None` on a plan so small that the mark would cover much of it.
fn free_place(seen: Rect, taken: &[Rect]) -> Option<Rect> {
    let inside = seen.shrink(GAP + SIDE / 2.0);
    if inside.width() < 2.0 * SIDE || inside.height() < 2.0 * SIDE {
        return None;
    }
    let (left, right, top, bottom) = (inside.left(), inside.right(), inside.top(), inside.bottom());
    let middle = inside.center();
    let places = [
        pos2(right, top),
        pos2(left, top),
        pos2(left, bottom),
        pos2(right, bottom),
        pos2(right, middle.y),
        pos2(left, middle.y),
        pos2(middle.x, top),
        pos2(middle.x, bottom),
    ];
    let places = places.map(|place| Rect::from_center_size(place, Vec2::splat(SIDE)));
    let is_free = |place: &Rect| !taken.iter().any(|rect| rect.expand(2.0).intersects(*place));
    places.into_iter().find(is_free).or(places.first().copied())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(x: f32, y: f32) -> Rect {
        Rect::from_center_size(pos2(x, y), Vec2::splat(40.0))
    }

    #[test]
    fn the_mark_stands_where_nothing_else_does() {
        let seen = Rect::from_min_size(pos2(100.0, 50.0), vec2(400.0, 300.0));
        let place = free_place(seen, &[]).unwrap();
        assert_eq!(place.max, seen.max - vec2(GAP, 300.0 - GAP - SIDE));
        let mut taken = vec![at(480.0, 70.0)];
        let place = free_place(seen, &taken).unwrap();
        assert_eq!(place.min, seen.min + Vec2::splat(GAP));
        taken.extend([at(120.0, 70.0), at(120.0, 330.0), at(480.0, 330.0)]);
        let place = free_place(seen, &taken).unwrap();
        assert_eq!(place.center(), pos2(seen.right() - GAP - SIDE / 2.0, 200.0));
        assert!(!taken.iter().any(|rect| rect.intersects(place)));
        // Under pins, rather than nowhere: they are drawn over it.
        assert_eq!(free_place(seen, &[seen]), free_place(seen, &[]));
        assert_eq!(free_place(at(0.0, 0.0), &[]), None);
    }

    #[test]
    fn only_a_direction_of_the_eight_has_its_word() {
        assert_eq!(way_of(0.0), Some("up"));
        assert_eq!(way_of(-0.0), Some("up"));
        assert_eq!(way_of(225.0), Some("down-left"));
        assert_eq!(way_of(224.9), None);
    }
}
