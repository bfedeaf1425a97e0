//! The way to a device, as one walks it: through doors and by stairs, round the corners of rooms.

use quarterturn_home::Home;

use crate::floor::{Xy, far};
use crate::footpaths::{Footpaths, Route};
use crate::route::{DETOUR, Point, stands_in};

/// Where someone stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stand<'a> {
    /// Somewhere in the space with this id: taken as its middle.
    Space(&'a str),
    /// At the component with this id.
    Component(&'a str),
    /// At a point of a level, in metres.
    Point {
        /// Id of the level.
        level: &'a str,
        /// To the right on the plan.
        x: f64,
        /// Downwards on the plan.
        y: f64,
    },
}

/// A way on foot.
#[derive(Debug, Clone, PartialEq)]
pub struct Way {
    /// Its parts, in order: one for each stay on a level. A guess that leads to another level has the
    /// same line on both.
    pub legs: Vec<Leg>,
    /// Metres walked on levels, by the shortest way past corners; for a guess, the straight line with
    /// an allowance for walls. Stairs come on top of it by their height.
    pub metres: f64,
    /// Metres climbed by stairs, straight up.
    pub levels_up: f64,
    /// Metres descended by stairs, straight down.
    pub levels_down: f64,
    /// Ids of the spaces that it leads through, in order, the first and the last among them.
    pub spaces: Vec<String>,
    /// True where the home maps no way, so that a straight line stands for it.
    pub is_guess: bool,
}

/// A part of a way that stays on one level.
#[derive(Debug, Clone, PartialEq)]
pub struct Leg {
    /// Id of the level.
    pub level: String,
    /// Points in metres, in order. The last of one leg and the first of the next are the ends of the
    /// stairs between them.
    pub points: Vec<(f64, f64)>,
}

/// The way from where someone stands to a component; `None` where the home does not tell where one
/// of them is.
///
/// It is the quickest through the home's [passages](quarterturn_home::Passage) for someone who takes
/// their time, doors and stairs counted. A passage without a place is taken as in the middle of the
/// wall that its spaces share. A breaker without a space of its own is in its panel. It does not know
/// where water stands: an [`Answer`](crate::Answer) does, and warns.
///
/// Dijkstra's algorithm over the sides of all passages, with shortest paths in polygons inside each
/// space. Time: p² for p passages in the fullest space, times its corners where it is not convex; for
/// the examples some tens of microseconds.
#[must_use]
pub fn way(home: &Home, from: Stand<'_>, to: &str) -> Option<Way> {
    let to = stands_in(home, home.component(to)?);
    let to = Point::of_component(home, to);
    let paths = Footpaths::new(home);
    let (from, level) = start(home, &paths, from)?;
    if (from.space.is_none() && from.xy.is_none()) || (to.space.is_none() && to.xy.is_none()) {
        return None;
    }
    match paths.route(&paths.reach(&[]), from, to) {
        Some(route) => Some(along(home, &route)),
        None => straight(home, from, level, to),
    }
}

/// Where someone stands, and on which level.
fn start<'h>(
    home: &'h Home,
    paths: &Footpaths,
    from: Stand<'h>,
) -> Option<(Point, Option<&'h str>)> {
    let point = match from {
        Stand::Space(id) => {
            home.space(id)?;
            Point::of_space(home, id)
        }
        Stand::Component(id) => Point::of_component(home, stands_in(home, home.component(id)?)),
        Stand::Point { level, x, y } => {
            let known = home.level(level)?;
            let space = paths.space_at(home, level, (x, y));
            let elevation_m = Some(known.elevation_m);
            return Some((Point { xy: Some((x, y)), elevation_m, space }, Some(level)));
        }
    };
    Some((point, level_of(home, point.space)))
}

fn level_of(home: &Home, space: Option<usize>) -> Option<&str> {
    home.spaces.get(space?)?.level.as_deref()
}

fn along(home: &Home, route: &Route) -> Way {
    let mut legs: Vec<Leg> = Vec::new();
    for &(space, xy) in &route.points {
        let Some(level) = level_of(home, Some(space)) else { continue };
        match legs.last_mut().filter(|leg| leg.level == level) {
            Some(leg) if leg.points.last() == Some(&xy) => {}
            Some(leg) => leg.points.push(xy),
            None => legs.push(Leg { level: level.to_owned(), points: vec![xy] }),
        }
    }
    Way {
        legs,
        metres: route.metres,
        levels_up: route.up_m,
        levels_down: route.down_m,
        spaces: route.spaces.iter().map(|&space| home.spaces[space].id.clone()).collect(),
        is_guess: false,
    }
}

fn straight(home: &Home, from: Point, from_level: Option<&str>, to: Point) -> Option<Way> {
    let (start, end): (Xy, Xy) = (from.xy?, to.xy?);
    let mut levels = vec![from_level?];
    levels.extend(level_of(home, to.space));
    levels.dedup();
    let rise = match (from.elevation_m, to.elevation_m) {
        (Some(from), Some(to)) => to - from,
        _ => 0.0,
    };
    let mut spaces: Vec<usize> = from.space.into_iter().chain(to.space).collect();
    spaces.dedup();
    Some(Way {
        legs: levels
            .into_iter()
            .map(|level| Leg { level: level.to_owned(), points: vec![start, end] })
            .collect(),
        metres: far(start, end) * DETOUR,
        levels_up: rise.max(0.0),
        levels_down: (-rise).max(0.0),
        spaces: spaces.into_iter().map(|space| home.spaces[space].id.clone()).collect(),
        is_guess: true,
    })
}
