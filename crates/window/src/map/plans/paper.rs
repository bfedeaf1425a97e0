//! How a drawing lies on the screen: metres of a level, or pixels of a photo.

use egui::{Pos2, Rect, vec2};
use quarterturn_home::{Level, Units};

use crate::sheet::{Part, Sheet};

/// A point of the drawing, in its own measure.
pub(crate) type Point = (f64, f64);

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
    /// The level as it lies on the screen.
    pub(crate) fn of(sheet: &Sheet) -> Self {
        Self { rect: sheet.rect, left: sheet.left, top: sheet.top, scale: sheet.scale }
    }

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

/// A foot in metres, exactly (NIST Special Publication 811, appendix B.8).
pub(crate) const FOOT: f64 = 0.3048;

/// Distance of the lines on the board, in metres.
pub(crate) fn grid(units: Units) -> f64 {
    match units {
        Units::Us => FOOT,
        Units::Si => 0.25,
    }
}

/// What rooms snap to, in metres: the lines on the board; on a picture, which shows where the walls are,
/// as little as a wall is thick.
pub(crate) fn snap(level: &Level, units: Units) -> f64 {
    match (&level.plan, units) {
        (None, units) => grid(units),
        (Some(_), Units::Us) => FOOT / 6.0,
        (Some(_), Units::Si) => 0.05,
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
