//! The corners of a rectangle in a photo.

use quarterturn_guidance::Catalogue;

use crate::Said;

type Point = (f64, f64);

/// Least distance between two corners, in pixels.
const NEAREST: f64 = 16.0;
/// Flattest and sharpest angle at a corner, in degrees. Beyond it the photo was taken almost along the
/// paper, and a pixel of error is a room.
const FLATTEST: f64 = 170.0;
const SHARPEST: f64 = 10.0;

/// Four corners of a rectangle as they lie in a photo, in pixels from its top left corner: clockwise from
/// the one that is top left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corners([Point; 4]);

/// Why four points are no corners of a rectangle that a photo could show.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum BadCorners {
    /// One is far outside the picture, or no number.
    #[error("corner {0:?} is far outside the picture")]
    FarOutside(Point),
    /// Two are at the same place.
    #[error("corners {0:?} and {1:?} are at the same place")]
    Together(Point, Point),
    /// Three are nearly in one line.
    #[error("corner {0:?} lies nearly in line with its neighbours")]
    InLine(Point),
    /// One lies inside the triangle of the others.
    #[error("corner {0:?} lies between the others")]
    Hollow(Point),
    /// Two sides nearly meet in a point.
    #[error("corner {0:?} is too sharp")]
    TooSharp(Point),
}

impl BadCorners {
    /// What is wrong, and what to do about it.
    #[must_use]
    pub fn told(&self, words: &Catalogue) -> String {
        self.said().text(words)
    }

    /// The same in no language yet.
    #[must_use]
    pub fn said(&self) -> Said {
        Said::new(match self {
            Self::FarOutside(_) => "picture-corner-outside",
            Self::Together(..) => "picture-corners-together",
            Self::InLine(_) => "picture-corners-in-line",
            Self::Hollow(_) => "picture-corners-hollow",
            Self::TooSharp(_) => "picture-corner-sharp",
        })
    }
}

impl Corners {
    /// The corners, whatever order they were set in, in a picture of this width and height. A corner that
    /// the photo cut off may lie outside, by not more than the picture is large.
    ///
    /// # Errors
    /// If a rectangle cannot look so, or only from so low an angle that nothing could be measured.
    pub fn new(points: [Point; 4], size: (u32, u32)) -> Result<Self, BadCorners> {
        let (width, height) = (f64::from(size.0), f64::from(size.1));
        for point in points {
            let is_near = (-width..=2.0 * width).contains(&point.0)
                && (-height..=2.0 * height).contains(&point.1);
            if !is_near {
                return Err(BadCorners::FarOutside(point));
            }
        }
        let points = clockwise(points);
        for (index, point) in points.iter().enumerate() {
            for other in points.iter().skip(index + 1) {
                if distance(*point, *other) < NEAREST {
                    return Err(BadCorners::Together(*point, *other));
                }
            }
        }
        let [a, b, c, d] = points;
        for [before, corner, after] in [[d, a, b], [a, b, c], [b, c, d], [c, d, a]] {
            let angle = angle(before, corner, after);
            if angle.abs() > FLATTEST {
                return Err(BadCorners::InLine(corner));
            }
            if angle < 0.0 {
                return Err(BadCorners::Hollow(corner));
            }
            if angle < SHARPEST {
                return Err(BadCorners::TooSharp(corner));
            }
        }
        Ok(Self(points))
    }

    /// A frame well inside a picture, to begin dragging from.
    #[must_use]
    pub fn to_begin_with(size: (u32, u32)) -> [Point; 4] {
        let (width, height) = (f64::from(size.0), f64::from(size.1));
        [(0.2, 0.2), (0.8, 0.2), (0.8, 0.8), (0.2, 0.8)].map(|(x, y)| (x * width, y * height))
    }

    /// The corners, clockwise from the one that is top left.
    #[must_use]
    pub fn points(&self) -> [Point; 4] {
        self.0
    }

    /// The same corners, the next one taken for top left: what comes out is turned by a quarter.
    #[must_use]
    pub fn turned(&self) -> Self {
        let mut points = self.0;
        points.rotate_left(1);
        Self(points)
    }

    /// How long the longer of the sides across and the longer of those down are, in pixels.
    #[must_use]
    pub fn sides(&self) -> (f64, f64) {
        let [a, b, c, d] = self.0;
        (distance(a, b).max(distance(d, c)), distance(a, d).max(distance(b, c)))
    }

    /// How many times as wide as high the rectangle itself is, told from how its sides run together;
    /// `None` if the photo does not tell.
    ///
    /// Right for a whole photo, whose middle is where the camera looked, with square pixels. Source:
    /// Z. Zhang and L.-W. He, *Whiteboard scanning and image enhancement*, Digital Signal Processing 17
    /// (2007), equations 11, 12, 16, 18 and 20 (their numbers from memory).
    #[must_use]
    pub fn aspect(&self, size: (u32, u32)) -> Option<f64> {
        let (width, height) = (f64::from(size.0), f64::from(size.1));
        let half = width.max(height) / 2.0;
        // In halves of the longer side from the middle.
        let seen = |(x, y): Point| [(x - width / 2.0) / half, (y - height / 2.0) / half, 1.0];
        let [m1, m2, m4, m3] = self.0.map(seen);
        let k2 = dot(cross(m1, m4), m3) / dot(cross(m2, m4), m3);
        let k3 = dot(cross(m1, m4), m2) / dot(cross(m3, m4), m2);
        let across = minus(scaled(k2, m2), m1);
        let down = minus(scaled(k3, m3), m1);
        let ([ax, ay, az], [bx, by, bz]) = (across, down);
        // Sides that do not run together tell nothing of the distance; they are as they look.
        if az.abs() < 0.01 && bz.abs() < 0.01 {
            return Some(ax.hypot(ay) / bx.hypot(by)).filter(|aspect| aspect.is_finite());
        }
        let focal_squared = -(ax * bx + ay * by) / (az * bz);
        // From a fish eye to a long lens; beyond, the numbers are noise.
        if !(0.2..=100.0).contains(&focal_squared) {
            return None;
        }
        let length = |x: f64, y: f64, z: f64| ((x * x + y * y) / focal_squared + z * z).sqrt();
        Some(length(ax, ay, az) / length(bx, by, bz)).filter(|aspect| aspect.is_finite())
    }
}

/// In the order of the clock round their middle, from the one that is nearest to top left.
fn clockwise(mut points: [Point; 4]) -> [Point; 4] {
    let middle = |of: fn(&Point) -> f64| points.iter().map(of).sum::<f64>() / 4.0;
    let (x, y) = (middle(|p| p.0), middle(|p| p.1));
    // On a picture y grows downwards, so that growing angles go with the clock.
    let turn = |p: &Point| (p.1 - y).atan2(p.0 - x);
    points.sort_by(|a, b| turn(a).total_cmp(&turn(b)));
    let first = points
        .iter()
        .enumerate()
        .min_by(|(_, a), (_, b)| (a.0 + a.1).total_cmp(&(b.0 + b.1)))
        .map_or(0, |(index, _)| index);
    points.rotate_left(first);
    points
}

/// The angle inside at `corner`, in degrees; negative if it points inwards.
fn angle(before: Point, corner: Point, after: Point) -> f64 {
    let (to, from) =
        ((after.0 - corner.0, after.1 - corner.1), (before.0 - corner.0, before.1 - corner.1));
    let sine = to.0 * from.1 - to.1 * from.0;
    sine.atan2(to.0 * from.0 + to.1 * from.1).to_degrees()
}

fn distance(a: Point, b: Point) -> f64 {
    (a.0 - b.0).hypot(a.1 - b.1)
}

fn cross([a, b, c]: [f64; 3], [x, y, z]: [f64; 3]) -> [f64; 3] {
    [b * z - c * y, c * x - a * z, a * y - b * x]
}

fn dot([a, b, c]: [f64; 3], [x, y, z]: [f64; 3]) -> f64 {
    a * x + b * y + c * z
}

fn scaled(by: f64, v: [f64; 3]) -> [f64; 3] {
    v.map(|n| by * n)
}

fn minus([a, b, c]: [f64; 3], [x, y, z]: [f64; 3]) -> [f64; 3] {
    [a - x, b - y, c - z]
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    const SIZE: (u32, u32) = (4000, 3000);
    const GOOD: [Point; 4] = [(900.0, 600.0), (3100.0, 700.0), (3500.0, 2500.0), (400.0, 2400.0)];

    #[test]
    fn the_order_of_setting_them_makes_no_difference() {
        let right = Corners::new(GOOD, SIZE).unwrap();
        assert_eq!(right.points(), GOOD);
        let [a, b, c, d] = GOOD;
        for order in [[b, a, d, c], [c, a, b, d], [d, c, b, a], [a, c, b, d]] {
            assert_eq!(Corners::new(order, SIZE).unwrap(), right);
        }
        assert_eq!(right.turned().points(), [b, c, d, a]);
    }

    #[test]
    fn what_cannot_be_a_rectangle_is_refused_with_its_reason() {
        let [a, b, c, d] = GOOD;
        let new = |points| Corners::new(points, SIZE).unwrap_err();
        assert_eq!(new([a, b, (9000.0, 2500.0), d]), BadCorners::FarOutside((9000.0, 2500.0)));
        assert!(matches!(new([a, b, (f64::NAN, 0.0), d]), BadCorners::FarOutside(_)));
        assert!(matches!(new([a, (905.0, 605.0), c, d]), BadCorners::Together(..)));
        assert!(matches!(new([a, b, c, (2000.0, 651.0)]), BadCorners::InLine(_)));
        assert!(matches!(new([a, b, c, (2300.0, 1000.0)]), BadCorners::Hollow((2300.0, 1000.0))));
        let thin = [(100.0, 1500.0), (2000.0, 1400.0), (3900.0, 1500.0), (2000.0, 1600.0)];
        assert!(matches!(new(thin), BadCorners::InLine(_) | BadCorners::TooSharp(_)));
        // Cut off by the photo's edge, but near.
        assert!(Corners::new([a, b, c, (-300.0, 3200.0)], SIZE).is_ok());
    }

    #[test]
    fn each_reason_is_told_in_every_language() {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            let p = (1.0, 2.0);
            for bad in [
                BadCorners::FarOutside(p),
                BadCorners::Together(p, p),
                BadCorners::InLine(p),
                BadCorners::Hollow(p),
                BadCorners::TooSharp(p),
            ] {
                let text = bad.told(&words);
                assert!(text.len() > 30 && !text.contains(['{', '[']), "{text}");
            }
        }
    }

    #[test]
    fn the_frame_to_begin_with_is_a_good_one() {
        for size in [(4096, 3072), (600, 4096), (64, 64)] {
            assert!(Corners::new(Corners::to_begin_with(size), size).is_ok());
        }
    }

    /// A rectangle before a camera, as the optics has it.
    fn photo(aspect: f64, turns: (f64, f64, f64), away: f64, focal: f64) -> [Point; 4] {
        let (pitch, yaw, roll) = turns;
        [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(x, y)| {
            let (x, y) = (x * aspect / 2.0, y / 2.0);
            let (x, y) = (x * roll.cos() - y * roll.sin(), x * roll.sin() + y * roll.cos());
            let (x, z) = (x * yaw.cos(), x * yaw.sin());
            let (y, z) = (y * pitch.cos() - z * pitch.sin(), y * pitch.sin() + z * pitch.cos());
            let depth = z + away;
            (2000.0 + 2000.0 * focal * x / depth, 1500.0 + 2000.0 * focal * y / depth)
        })
    }

    proptest! {
        #[test]
        fn the_true_aspect_is_told_by_a_photo_at_an_angle(
            aspect in 0.5..2.0, pitch in 0.15..0.6, yaw in 0.15..0.6, roll in -0.2..0.2, focal in 1.2..2.5,
        ) {
            let points = photo(aspect, (pitch, yaw, roll), 4.0, focal);
            let corners = Corners::new(points, SIZE).unwrap();
            prop_assume!(corners.points() == points);
            if let Some(found) = corners.aspect(SIZE) {
                prop_assert!((found / aspect - 1.0).abs() < 1e-3, "{found} for {aspect}");
            }
        }
    }

    #[test]
    fn the_aspect_is_told_where_the_sides_run_together_or_do_not_at_all() {
        let tilted = Corners::new(photo(1.5, (0.4, 0.3, 0.1), 4.0, 1.5), SIZE).unwrap();
        assert!((tilted.aspect(SIZE).unwrap() - 1.5).abs() < 1e-6);
        let flat = Corners::new(photo(1.5, (0.0, 0.0, 0.1), 4.0, 1.5), SIZE).unwrap();
        assert!((flat.aspect(SIZE).unwrap() - 1.5).abs() < 1e-6);
    }
}
