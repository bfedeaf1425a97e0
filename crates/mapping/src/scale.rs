//! How many metres a pixel of a plan is.

mod distance;

use quarterturn_guidance::Catalogue;
use quarterturn_home::Plan;

pub use distance::{BadDistance, read_distance};

use crate::Said;

/// Least distance between the two points, in pixels: nearer, a finger's error is a tenth of a room.
const NEAREST: f64 = 20.0;
/// How far a point is set beside what it should mark, in pixels of the picture.
const POINT_ERROR: f64 = 2.0;

/// How many metres a pixel of a picture is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    metres_per_pixel: f64,
    error_share: f64,
}

/// Why two points and a distance give no scale.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum BadScale {
    /// The two points are at nearly the same place.
    #[error("the points are {0} pixels apart")]
    TooClose(f64),
    /// The distance is none, or the picture would be as small as a table or as large as a town.
    #[error("the picture would be {0} m wide")]
    Unlikely(f64),
}

impl BadScale {
    /// What is wrong, and what to do about it.
    #[must_use]
    pub fn told(&self, words: &Catalogue) -> String {
        self.said().text(words)
    }

    /// The same in no language yet.
    #[must_use]
    pub fn said(&self) -> Said {
        match self {
            Self::TooClose(_) => Said::new("picture-points-close"),
            Self::Unlikely(_) => Said::new("picture-scale-unlikely"),
        }
    }
}

impl Scale {
    /// From two points of a picture, in pixels, and the metres between them.
    ///
    /// # Errors
    /// If the points are too close together, or the picture would be smaller than 0.5 m or larger than
    /// 1000 m.
    pub fn between(
        a: (f64, f64),
        b: (f64, f64),
        metres: f64,
        size: (u32, u32),
    ) -> Result<Self, BadScale> {
        let apart = (a.0 - b.0).hypot(a.1 - b.1);
        // Also if one of them is no number.
        if apart.is_nan() || apart < NEAREST {
            return Err(BadScale::TooClose(apart));
        }
        Self::of(metres / apart, size).map(|scale| Self {
            error_share: POINT_ERROR * std::f64::consts::SQRT_2 / apart,
            ..scale
        })
    }

    /// From metres a pixel, as [`straighten`](crate::straighten) tells them.
    ///
    /// # Errors
    /// If the picture would be smaller than 0.5 m or larger than 1000 m.
    pub fn of(metres_per_pixel: f64, size: (u32, u32)) -> Result<Self, BadScale> {
        let width = f64::from(size.0.max(size.1)) * metres_per_pixel;
        if (0.5..=1000.0).contains(&width) {
            Ok(Self { metres_per_pixel, error_share: 0.0 })
        } else {
            Err(BadScale::Unlikely(width))
        }
    }

    /// How many metres a pixel is.
    #[must_use]
    pub fn metres_per_pixel(&self) -> f64 {
        self.metres_per_pixel
    }

    /// By which share distances may be wrong because a point is set beside what it should mark by two
    /// pixels: 0.02 for two points 141 pixels apart.
    #[must_use]
    pub fn error_share(&self) -> f64 {
        self.error_share
    }

    /// The plan of a level with the picture stored at `path`, as wide as `width` pixels. Its top left
    /// corner lies at `corner_m` on the level, in metres.
    #[must_use]
    pub fn plan(&self, path: &str, width: u32, corner_m: (f64, f64)) -> Plan {
        Plan {
            picture: path.to_owned(),
            left_m: corner_m.0,
            top_m: corner_m.1,
            width_m: f64::from(width) * self.metres_per_pixel,
            mirrored: false,
        }
    }

    /// The plan that lies so that the point `on_picture` in pixels is at `on_level` in metres, such as a
    /// stair that is on two levels.
    #[must_use]
    pub fn plan_at(
        &self,
        path: &str,
        width: u32,
        on_picture: (f64, f64),
        on_level: (f64, f64),
    ) -> Plan {
        let corner = (
            on_level.0 - on_picture.0 * self.metres_per_pixel,
            on_level.1 - on_picture.1 * self.metres_per_pixel,
        );
        self.plan(path, width, corner)
    }
}

/// A door as it is commonly made, for a plan without any measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Door {
    /// Key of its name in the catalogue.
    pub key: &'static str,
    /// Width of the door itself, not of its frame, in metres.
    pub width_m: f64,
    /// True where measures are in feet and inches.
    pub is_us: bool,
    /// Where the width is from.
    pub source: &'static str,
}

/// Common doors, for each system of measures the likeliest first. A door is a poor measure, wrong by a tenth
/// and more: a measured wall is better.
pub const DOORS: &[Door] = &[
    Door {
        key: "picture-door-entrance",
        width_m: 0.9144,
        is_us: true,
        source: "International Residential Code, R311.2: 32 in clear, for which a door of 36 in is the one made",
    },
    Door {
        key: "picture-door-room",
        width_m: 0.762,
        is_us: true,
        source: "common practice: 30 in",
    },
    Door {
        key: "picture-door-bathroom",
        width_m: 0.7112,
        is_us: true,
        source: "common practice: 28 in",
    },
    Door {
        key: "picture-door-entrance",
        width_m: 0.925,
        is_us: false,
        source: "UNE 56801, widths of door leaves: 625, 725, 825, 925 mm",
    },
    Door {
        key: "picture-door-room",
        width_m: 0.825,
        is_us: false,
        source: "UNE 56801, widths of door leaves: 625, 725, 825, 925 mm",
    },
    Door {
        key: "picture-door-bathroom",
        width_m: 0.725,
        is_us: false,
        source: "UNE 56801, widths of door leaves: 625, 725, 825, 925 mm",
    },
];

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    const SIZE: (u32, u32) = (4000, 3000);

    #[test]
    fn a_wall_gives_the_plan_its_width() {
        // A wall of 4 m, 3-4-5 on the picture.
        let scale = Scale::between((100.0, 100.0), (700.0, 900.0), 4.0, SIZE).unwrap();
        assert!((scale.metres_per_pixel() - 0.004).abs() < 1e-12);
        assert!((scale.error_share() - 0.002_828).abs() < 1e-5);
        let plan = scale.plan("plans/ground.png", SIZE.0, (-1.0, 2.0));
        assert!((plan.width_m - 16.0).abs() < 1e-9);
        assert_eq!(
            (plan.left_m, plan.top_m, plan.picture.as_str()),
            (-1.0, 2.0, "plans/ground.png")
        );
        let plan = scale.plan_at("plans/ground.png", SIZE.0, (1000.0, 500.0), (6.0, 5.0));
        assert!((plan.left_m - 2.0).abs() < 1e-9 && (plan.top_m - 3.0).abs() < 1e-9);
    }

    #[test]
    fn what_gives_no_scale_is_refused() {
        let between = |b, metres| Scale::between((100.0, 100.0), b, metres, SIZE);
        assert!(matches!(between((105.0, 100.0), 4.0), Err(BadScale::TooClose(_))));
        assert!(matches!(between((f64::NAN, 100.0), 4.0), Err(BadScale::TooClose(_))));
        for metres in [0.0, -4.0, 1e-3, 1e6, f64::NAN, f64::INFINITY] {
            assert!(
                matches!(between((900.0, 100.0), metres), Err(BadScale::Unlikely(_))),
                "{metres}"
            );
        }
    }

    #[test]
    fn doors_and_refusals_are_told_in_every_language() {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for door in DOORS {
                assert!(words.has(door.key) && (0.6..1.0).contains(&door.width_m), "{door:?}");
                assert!(!door.source.is_empty());
            }
            for bad in [BadScale::TooClose(3.0), BadScale::Unlikely(1e6)] {
                assert!(bad.told(&words).len() > 30, "{}", bad.told(&words));
            }
        }
        assert!(DOORS.iter().any(|door| door.is_us) && DOORS.iter().any(|door| !door.is_us));
    }

    proptest! {
        #[test]
        fn the_two_points_come_to_lie_as_far_apart_as_was_said(
            a in (0.0..4000.0, 0.0..3000.0), b in (0.0..4000.0, 0.0..3000.0), metres in 1.0..10.0,
        ) {
            if let Ok(scale) = Scale::between(a, b, metres, SIZE) {
                let plan = scale.plan("p", SIZE.0, (0.0, 0.0));
                let on_level = |p: (f64, f64)| (p.0 * plan.width_m / 4000.0, p.1 * plan.width_m / 4000.0);
                let (a, b) = (on_level(a), on_level(b));
                prop_assert!(((a.0 - b.0).hypot(a.1 - b.1) - metres).abs() < 1e-9);
            }
        }
    }
}
