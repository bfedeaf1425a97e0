//! How a drawing lies on the screen: metres of a level, or pixels of a photo.

use egui::{Pos2, Rect, vec2};
use quarterturn_home::{Home, Level, Units};

use crate::sheet::{Part, spaces_of};

/// A point of the drawing, in its own measure.
pub(crate) type Point = (f64, f64);

/// Least part of a level that is shown, in metres: a small home and its surroundings.
const LEAST: (f64, f64) = (14.0, 10.0);
/// Room left around what is drawn, to draw the next room in, in metres.
const AROUND: f64 = 3.0;

/// A drawing on the screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Paper {
    /// Where it lies on the screen.
    pub(crate) rect: Rect,
    left: f64,
    top: f64,
    scale: f64,
}

impl Paper {
    /// As large as `area` allows, in its middle.
    pub(crate) fn fit(area: Rect, (left, top, width, height): Part) -> Self {
        let (width, height) = (width.max(1e-3), height.max(1e-3));
        let scale = (f64::from(area.width()) / width).min(f64::from(area.height()) / height);
        let scale = scale.max(1e-6);
        let size = vec2(as_f32(width * scale), as_f32(height * scale));
        Self { rect: Rect::from_center_size(area.center(), size), left, top, scale }
    }

    /// Where a point is on the screen.
    pub(crate) fn at(&self, (x, y): Point) -> Pos2 {
        self.rect.min
            + vec2(as_f32((x - self.left) * self.scale), as_f32((y - self.top) * self.scale))
    }

    /// Which point is there on the screen.
    pub(crate) fn point(&self, at: Pos2) -> Point {
        let from = at - self.rect.min;
        (f64::from(from.x) / self.scale + self.left, f64::from(from.y) / self.scale + self.top)
    }

    /// So many points of the screen, in the measure of the drawing.
    pub(crate) fn far(&self, points: f32) -> f64 {
        f64::from(points) / self.scale
    }
}

/// The part of a level to draw on: its rooms and its plan, and room for more beside them. It changes by
/// whole metres, so that the drawing does not creep.
pub(crate) fn part_of(home: &Home, level: &Level, aspect: Option<f64>) -> Part {
    let corners = spaces_of(home, level).flat_map(|space| space.outline.iter().copied());
    let mut points: Vec<Point> = corners.collect();
    if let (Some(plan), Some(aspect)) = (&level.plan, aspect) {
        points.push((plan.left_m, plan.top_m));
        points.push((plan.left_m + plan.width_m, plan.top_m + plan.width_m * aspect));
    }
    points.retain(|(x, y)| x.is_finite() && y.is_finite());
    let range = |pick: fn(&Point) -> f64, least: f64| {
        let from = points.iter().map(pick).fold(f64::INFINITY, f64::min);
        let to = points.iter().map(pick).fold(f64::NEG_INFINITY, f64::max);
        if points.is_empty() {
            return (-1.0, least);
        }
        let from = (from - AROUND).floor();
        (from, ((to + AROUND).ceil() - from).max(least))
    };
    let (left, width) = range(|p| p.0, LEAST.0);
    let (top, height) = range(|p| p.1, LEAST.1);
    (left, top, width, height)
}

/// A foot in metres, exactly (NIST Special Publication 811, appendix B.8).
pub(crate) const FOOT: f64 = 0.3048;

/// Distance of the lines that rooms snap to, in metres.
pub(crate) fn grid(units: Units) -> f64 {
    match units {
        Units::Us => FOOT,
        Units::Si => 0.25,
    }
}

/// A length as it is typed, such as `12' 6"` or `3.81 m`.
pub(crate) fn length(metres: f64, units: Units) -> String {
    match units {
        Units::Si => format!("{metres:.2} m"),
        Units::Us => {
            let inches = (metres / FOOT * 12.0).round();
            let feet = (inches / 12.0).trunc();
            format!("{feet:.0}' {:.0}\"", (inches - feet * 12.0).abs())
        }
    }
}

/// For the screen.
#[expect(clippy::cast_possible_truncation, reason = "a place on the screen needs no more digits")]
pub(crate) fn as_f32(value: f64) -> f32 {
    value as f32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_goes_to_the_screen_and_back() {
        let area = Rect::from_min_size(egui::pos2(10.0, 20.0), vec2(400.0, 300.0));
        let paper = Paper::fit(area, (-1.0, -2.0, 14.0, 10.0));
        for point in [(0.0, 0.0), (3.25, 7.5), (-1.0, -2.0)] {
            let back = paper.point(paper.at(point));
            assert!((back.0 - point.0).abs() < 1e-3 && (back.1 - point.1).abs() < 1e-3);
        }
        assert!(area.contains(paper.rect.min) && area.contains(paper.rect.max));
    }

    #[test]
    fn lengths_are_told_so_that_they_can_be_typed_again() {
        for metres in [0.9144, 3.81, 2.5] {
            for units in [Units::Us, Units::Si] {
                let read = quarterturn_mapping::read_distance(&length(metres, units)).unwrap();
                assert!((read - metres).abs() < 0.013, "{metres} {read}");
            }
        }
        // 11.99 inches are a foot, not twelve inches.
        assert_eq!(length(0.3047, Units::Us), "1' 0\"");
    }
}
