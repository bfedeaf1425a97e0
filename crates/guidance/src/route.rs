//! Places on the plan, and how long the way from one to another is where no passages are mapped.

use quarterturn_estimate::si::length::meter;
use quarterturn_estimate::si::time::second;
use quarterturn_estimate::{Length, walk};
use quarterturn_home::{Component, Home, Kind, Medium};

use crate::floor::Xy;
use crate::footpaths::WITHIN_A_ROOM_M;

/// A place on the plan, in metres; `None` where the map does not tell.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Point {
    pub(crate) xy: Option<Xy>,
    pub(crate) elevation_m: Option<f64>,
    /// Place of its space in the home.
    pub(crate) space: Option<usize>,
}

/// Metres walked when the map does not tell where things are.
const UNKNOWN_M: f64 = 10.0;

/// Metres walked for a metre straight through the walls. Common practice, no source: rooms are
/// reached through doors and round furniture.
pub(crate) const DETOUR: f64 = 1.4;

impl Point {
    /// Where a component is; its space's middle if only that is known.
    pub(crate) fn of_component(home: &Home, component: &Component) -> Self {
        let space = component.space.as_deref();
        let mut point = space.map_or_else(Self::default, |id| Self::of_space(home, id));
        if let Some((x, y, _)) = component.at {
            point.xy = Some((x, y));
        }
        point
    }

    /// The middle of a space: of its outline, else of what stands in it.
    pub(crate) fn of_space(home: &Home, id: &str) -> Self {
        let Some(space) = home.space(id) else { return Self::default() };
        let level = space.level.as_deref().and_then(|level| home.level(level));
        let corners = if space.outline.is_empty() {
            home.components
                .iter()
                .filter(|c| c.space.as_deref() == Some(id))
                .filter_map(|c| c.at.map(|(x, y, _)| (x, y)))
                .collect()
        } else {
            space.outline.clone()
        };
        Self {
            xy: middle(&corners),
            elevation_m: level.map(|level| level.elevation_m),
            space: home.spaces.iter().position(|s| s.id == id),
        }
    }

    /// True if two points lie within `metres` of each other on the plan, levels aside; also where the
    /// map does not tell.
    pub(crate) fn is_near(self, other: Self, metres: f64) -> bool {
        match (self.xy, other.xy) {
            (Some((x, y)), Some((u, v))) => (u - x).hypot(v - y) <= metres,
            _ => true,
        }
    }

    /// True if both lie in one space that the map knows.
    pub(crate) fn is_same_space(self, other: Self) -> bool {
        self.space.is_some() && self.space == other.space
    }

    /// Likely seconds to walk from here to `to` where the map tells no way, for someone who takes
    /// their time.
    pub(crate) fn seconds_straight_to(self, to: Self) -> f64 {
        let level_m = match (self.xy, to.xy) {
            (Some((x, y)), Some((u, v))) => (u - x).hypot(v - y) * DETOUR,
            _ if self.space.is_some() && self.space == to.space => WITHIN_A_ROOM_M,
            _ => UNKNOWN_M,
        };
        let rise_m = match (self.elevation_m, to.elevation_m) {
            (Some(from), Some(to)) => to - from,
            _ => 0.0,
        };
        let path = walk::Path {
            level: Length::new::<meter>(level_m),
            up: Length::new::<meter>(rise_m.max(0.0)),
            down: Length::new::<meter>((-rise_m).max(0.0)),
            doors: u32::from(self.space != to.space),
        };
        walk::time(&path, walk::Profile::Slow).likely.get::<second>()
    }
}

/// The component that tells where another is: itself, or the panel that a breaker sits in.
pub(crate) fn stands_in<'h>(home: &'h Home, component: &'h Component) -> &'h Component {
    if component.space.is_some() || component.kind != Kind::Breaker {
        return component;
    }
    home.connections
        .iter()
        .filter(|link| link.carries == Medium::Power && link.to == component.id)
        .filter_map(|link| home.component(&link.from))
        .find(|feeder| feeder.kind == Kind::Panel)
        .unwrap_or(component)
}

fn middle(corners: &[(f64, f64)]) -> Option<(f64, f64)> {
    #[expect(clippy::cast_precision_loss, reason = "a space has few corners")]
    let count = corners.len() as f64;
    let (x, y) = corners.iter().fold((0.0, 0.0), |(x, y), (u, v)| (x + u, y + v));
    (!corners.is_empty()).then(|| (x / count, y / count))
}
