//! What the figures are drawn with: few strokes of two weights on a square of 100 by 100.
//!
//! What stays where it is is pale with a thin edge; what one takes hold of is solid ink; where it goes
//! is dashed; an arrow says which way. Angles are in degrees, clockwise from the right, as on a clock.

use egui::epaint::EllipseShape;
use egui::{Align2, Color32, FontId, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2, vec2};

use crate::fonts::bold;
use crate::tokens::Palette;

/// A point on the square, from its left top corner.
pub(super) type Point = (f32, f32);

/// Weight of edges of what stays.
const THIN: f32 = 2.6;
/// Weight of arrows.
const ARROW: f32 = 4.4;
/// Length and half the width of the head of an arrow.
const HEAD: (f32, f32) = (12.0, 7.6);
/// Length of a dash and of the gap after it.
const DASH: (f32, f32) = (4.6, 3.4);
/// Points along a bend.
const BENDS: u8 = 64;

/// Draws on a square of 100 by 100.
#[derive(Clone, Copy)]
pub(super) struct Pen<'a> {
    painter: &'a Painter,
    square: Rect,
    palette: &'a Palette,
}

impl<'a> Pen<'a> {
    /// A pen for the largest square in the middle of `rect`.
    pub(super) fn new(painter: &'a Painter, rect: Rect, palette: &'a Palette) -> Self {
        let side = rect.width().min(rect.height());
        let square = Rect::from_center_size(rect.center(), Vec2::splat(side));
        Self { painter, square, palette }
    }

    /// The same pen on a part of its square.
    pub(super) fn within(self, left: f32, top: f32, side: f32) -> Self {
        let min = self.at((left, top));
        let square = Rect::from_min_size(min, Vec2::splat(side * self.scale()));
        Self { square, ..self }
    }

    fn at(self, (x, y): Point) -> Pos2 {
        self.square.lerp_inside(vec2(x / 100.0, y / 100.0))
    }

    fn scale(self) -> f32 {
        self.square.width() / 100.0
    }

    fn points(self, points: &[Point]) -> Vec<Pos2> {
        points.iter().map(|point| self.at(*point)).collect()
    }

    /// What stays: its edge.
    fn edge(self) -> Stroke {
        Stroke::new(THIN * self.scale(), self.palette.soft)
    }

    /// A box that stays.
    pub(super) fn body(self, (left, top): Point, (right, bottom): Point, round: f32) {
        self.boxed((left, top), (right, bottom), round, self.palette.hover);
    }

    /// A pipe that goes on beyond the square: there it is cut off.
    pub(super) fn run(self, from: Point, to: Point) {
        let clipped = self.painter.with_clip_rect(self.square.intersect(self.painter.clip_rect()));
        Pen { painter: &clipped, ..self }.body(from, to, 0.0);
    }

    /// An opening in what stays.
    pub(super) fn opening(self, from: Point, to: Point, round: f32) {
        self.boxed(from, to, round, self.palette.card);
    }

    fn boxed(self, from: Point, to: Point, round: f32, fill: Color32) {
        let rect = Rect::from_min_max(self.at(from), self.at(to));
        let round = round * self.scale();
        self.painter.rect(rect, round, fill, self.edge(), StrokeKind::Middle);
    }

    /// A box that one takes hold of.
    pub(super) fn grip(self, from: Point, to: Point, round: f32) {
        let rect = Rect::from_min_max(self.at(from), self.at(to));
        self.painter.rect_filled(rect, round * self.scale(), self.palette.ink);
    }

    /// A disc that stays.
    pub(super) fn disc(self, centre: Point, radius: f32) {
        let radius = radius * self.scale();
        self.painter.circle(self.at(centre), radius, self.palette.hover, self.edge());
    }

    /// A ring that stays, with what is behind it in sight.
    pub(super) fn ring(self, centre: Point, radius: f32) {
        self.painter.circle_stroke(self.at(centre), radius * self.scale(), self.edge());
    }

    /// A disc one takes hold of.
    pub(super) fn knob(self, centre: Point, radius: f32) {
        self.painter.circle_filled(self.at(centre), radius * self.scale(), self.palette.ink);
    }

    /// A hole in what one takes hold of, or the paper under a badge.
    pub(super) fn hole(self, centre: Point, radius: f32) {
        self.painter.circle_filled(self.at(centre), radius * self.scale(), self.palette.card);
    }

    /// A ring one takes hold of.
    pub(super) fn rim(self, centre: Point, radius: f32, width: f32) {
        let stroke = Stroke::new(width * self.scale(), self.palette.ink);
        self.painter.circle_stroke(self.at(centre), radius * self.scale(), stroke);
    }

    /// An oval one takes hold of.
    pub(super) fn oval(self, centre: Point, (wide, high): (f32, f32)) {
        let radius = vec2(wide, high) * self.scale();
        self.painter.add(EllipseShape::filled(self.at(centre), radius, self.palette.ink));
    }

    /// Where an oval goes.
    pub(super) fn oval_to(self, centre: Point, (wide, high): (f32, f32)) {
        self.dashed(&bend(centre, (wide, wide), high / wide, 0.0, 360.0));
    }

    /// A bar with round ends that one takes hold of.
    pub(super) fn bar(self, from: Point, to: Point, width: f32) {
        self.rod(&[from, to], width, self.palette.ink);
    }

    /// A line with round ends and corners, of what one takes hold of or of a person.
    pub(super) fn limb(self, points: &[Point], width: f32) {
        self.rod(points, width, self.palette.ink);
    }

    /// The same of what stays.
    pub(super) fn wire(self, points: &[Point], width: f32) {
        self.rod(points, width, self.palette.soft);
    }

    fn rod(self, points: &[Point], width: f32, colour: Color32) {
        let width = width * self.scale();
        let places = self.points(points);
        for place in &places {
            self.painter.circle_filled(*place, width / 2.0, colour);
        }
        self.painter.add(Shape::line(places, Stroke::new(width, colour)));
    }

    /// Where a bar goes.
    pub(super) fn bar_to(self, from: Point, to: Point, width: f32) {
        let angle = (to.1 - from.1).atan2(to.0 - from.0).to_degrees();
        let round = width / 2.0;
        let mut outline = bend(to, (round, round), 1.0, angle - 90.0, angle + 90.0);
        outline.extend(bend(from, (round, round), 1.0, angle + 90.0, angle + 270.0));
        outline.extend(outline.first().copied());
        self.dashed(&outline);
    }

    /// Where a box goes.
    pub(super) fn grip_to(self, (left, top): Point, (right, bottom): Point, round: f32) {
        let corner =
            |x: f32, y: f32, from: f32| bend((x, y), (round, round), 1.0, from, from + 90.0);
        let mut outline = corner(right - round, top + round, 270.0);
        outline.extend(corner(right - round, bottom - round, 0.0));
        outline.extend(corner(left + round, bottom - round, 90.0));
        outline.extend(corner(left + round, top + round, 180.0));
        outline.extend(outline.first().copied());
        self.dashed(&outline);
    }

    fn dashed(self, outline: &[Point]) {
        let stroke = Stroke::new(THIN * self.scale(), self.palette.ink);
        let (dash, gap) = (DASH.0 * self.scale(), DASH.1 * self.scale());
        self.painter.extend(Shape::dashed_line(&self.points(outline), stroke, dash, gap));
    }

    /// An arrow that turns about `centre`.
    pub(super) fn turn(self, centre: Point, radius: f32, from: f32, to: f32) {
        self.swirl(centre, (radius, radius), 1.0, from, to);
    }

    /// An arrow that turns about `centre` at a distance that grows or shrinks, on a circle that is seen
    /// from the side: `flat` is its height for its width.
    pub(super) fn swirl(self, centre: Point, radius: (f32, f32), flat: f32, from: f32, to: f32) {
        let path = bend(centre, radius, flat, from, to);
        self.arrow_along(&path);
    }

    /// An arrow in steps: turn slowly.
    pub(super) fn slow_turn(self, centre: Point, radius: f32, from: f32, to: f32) {
        let path = bend(centre, (radius, radius), 1.0, from, to);
        let stroke = Stroke::new(ARROW * self.scale(), self.palette.ink);
        let (dash, gap) = (6.0 * self.scale(), 4.0 * self.scale());
        // From the head backwards, so that the head has a whole dash behind it.
        let mut backwards = self.points(&path);
        backwards.reverse();
        self.painter.extend(Shape::dashed_line(&backwards, stroke, dash, gap));
        self.head(&path);
    }

    /// A straight arrow.
    pub(super) fn arrow(self, from: Point, to: Point) {
        let (x, y) = (to.0 - from.0, to.1 - from.1);
        let long = x.hypot(y).max(1.0);
        let base = (to.0 - x / long * HEAD.0, to.1 - y / long * HEAD.0);
        self.arrow_along(&[from, base]);
    }

    fn arrow_along(self, path: &[Point]) {
        let stroke = Stroke::new(ARROW * self.scale(), self.palette.ink);
        if let Some(start) = path.first() {
            let round = ARROW / 2.0 * self.scale();
            self.painter.circle_filled(self.at(*start), round, self.palette.ink);
        }
        self.painter.add(Shape::line(self.points(path), stroke));
        self.head(path);
    }

    /// The head at the end of a path, in the direction of its last stretch.
    fn head(self, path: &[Point]) {
        let [.., before, end] = path else { return };
        let (x, y) = (end.0 - before.0, end.1 - before.1);
        let long = x.hypot(y).max(f32::EPSILON);
        let (x, y) = (x / long, y / long);
        let (length, half) = HEAD;
        // A little back, so that no seam shows.
        let base = (end.0 - x * 0.4, end.1 - y * 0.4);
        let corners = [
            (base.0 - y * half, base.1 + x * half),
            (base.0 + x * length, base.1 + y * length),
            (base.0 + y * half, base.1 - x * half),
        ];
        let corners = self.points(&corners);
        self.painter.add(Shape::convex_polygon(corners, self.palette.ink, Stroke::NONE));
    }

    /// A line along a bend, of what stays.
    pub(super) fn arc(self, centre: Point, radius: f32, from: f32, to: f32, width: f32) {
        let path = bend(centre, (radius, radius), 1.0, from, to);
        self.rod_smooth(&path, width, self.palette.soft);
    }

    /// The same of what one takes hold of.
    pub(super) fn bow(self, centre: Point, radius: f32, from: f32, to: f32, width: f32) {
        let path = bend(centre, (radius, radius), 1.0, from, to);
        self.rod_smooth(&path, width, self.palette.ink);
    }

    /// A line through points that lie close together: only its ends need to be made round.
    pub(super) fn rod_smooth(self, path: &[Point], width: f32, colour: Color32) {
        let width = width * self.scale();
        for end in [path.first(), path.last()].into_iter().flatten() {
            self.painter.circle_filled(self.at(*end), width / 2.0, colour);
        }
        self.painter.add(Shape::line(self.points(path), Stroke::new(width, colour)));
    }

    /// Something flat that one takes hold of, with corners bulging outwards only.
    pub(super) fn shape(self, corners: &[Point]) {
        let points = self.points(corners);
        self.painter.add(Shape::convex_polygon(points, self.palette.ink, Stroke::NONE));
    }

    /// The same of what stays.
    pub(super) fn stays(self, corners: &[Point]) {
        let points = self.points(corners);
        self.painter.add(Shape::convex_polygon(points, self.palette.hover, self.edge()));
    }

    /// The sign for on, a bar: IEC 60417, symbol 5007.
    pub(super) fn sign_on(self, (x, y): Point) {
        self.bar((x, y - 4.5), (x, y + 4.5), 3.6);
    }

    /// The sign for off, a circle: IEC 60417, symbol 5008.
    pub(super) fn sign_off(self, centre: Point) {
        self.rim(centre, 5.2, 3.2);
    }

    /// A number, which is the same in every language.
    pub(super) fn number(self, centre: Point, points: f32, number: &str) {
        let font = FontId::new(points * self.scale(), bold());
        let (at, ink) = (self.at(centre), self.palette.ink);
        self.painter.text(at, Align2::CENTER_CENTER, number, font, ink);
    }

    /// A pipe from left to right, as thick as `thick`, with a flange on each side of `middle`.
    pub(super) fn pipe(self, y: f32, thick: f32, middle: f32) {
        let half = thick / 2.0;
        self.run((-6.0, y - half), (106.0, y + half));
        for side in [-1.0, 1.0] {
            let x = middle + side * 24.0;
            self.body((x - 4.0, y - half - 4.0), (x + 4.0, y + half + 4.0), 1.5);
        }
    }

    /// The ink, for what has a shape of its own.
    pub(super) fn ink(self) -> Color32 {
        self.palette.ink
    }
}

/// Points along a bend about `centre`, from one angle to another, at a distance that goes from the
/// first to the second `radius`.
pub(super) fn bend(centre: Point, radius: (f32, f32), flat: f32, from: f32, to: f32) -> Vec<Point> {
    (0..=BENDS)
        .map(|n| {
            let part = f32::from(n) / f32::from(BENDS);
            let angle = egui::lerp(from..=to, part).to_radians();
            let far = egui::lerp(radius.0..=radius.1, part);
            (centre.0 + far * angle.cos(), centre.1 + far * flat * angle.sin())
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn is_near((x, y): Point, (u, v): Point) -> bool {
        (x - u).hypot(y - v) < 1e-3
    }

    /// Closing is clockwise: from the right of the square down.
    #[test]
    fn angles_grow_clockwise() {
        let quarter = bend((50.0, 50.0), (40.0, 40.0), 1.0, 0.0, 90.0);
        assert!(is_near(quarter[0], (90.0, 50.0)), "{:?}", quarter[0]);
        assert!(is_near(*quarter.last().unwrap(), (50.0, 90.0)));
        let middle = quarter[quarter.len() / 2];
        assert!(middle.0 > 50.0 && middle.1 > 50.0, "{middle:?}");
    }

    #[test]
    fn a_circle_seen_from_the_side_is_flat() {
        let turn = bend((0.0, 0.0), (10.0, 10.0), 0.25, 0.0, 360.0);
        let highest = turn.iter().map(|p| p.1).fold(0.0, f32::max);
        let widest = turn.iter().map(|p| p.0).fold(0.0, f32::max);
        assert!((highest - 2.5).abs() < 0.05 && (widest - 10.0).abs() < 1e-3);
    }
}
