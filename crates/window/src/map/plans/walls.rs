//! Walls that two rooms share, where doors can be. Draws nothing.

use quarterturn_home::{Home, Level, Passage, Space};

use super::paper::Point;
use crate::sheet::spaces_of;

/// How far apart two outlines are along a wall that they share, in metres: as much as a thick wall.
const THICKEST: f64 = 0.5;
/// Least length of wall that a door needs, in metres.
const LEAST_WALL: f64 = 0.6;

/// A stretch of wall between two rooms.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Wall {
    /// Id of the one room.
    pub(crate) one: String,
    /// Id of the other.
    pub(crate) other: String,
    /// Its ends, in metres.
    pub(crate) ends: (Point, Point),
}

impl Wall {
    /// Its middle.
    pub(crate) fn middle(&self) -> Point {
        let ((x, y), (u, v)) = self.ends;
        (f64::midpoint(x, u), f64::midpoint(y, v))
    }

    /// Its point nearest to another, and how far that is.
    pub(crate) fn nearest(&self, (x, y): Point) -> (Point, f64) {
        let ((ax, ay), (bx, by)) = self.ends;
        let (dx, dy) = (bx - ax, by - ay);
        let along = (((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)).clamp(0.0, 1.0);
        let at = (ax + dx * along, ay + dy * along);
        (at, (at.0 - x).hypot(at.1 - y))
    }

    /// A door in it.
    pub(crate) fn door(&self, at: Point) -> Passage {
        Passage {
            between: (self.one.clone(), self.other.clone()),
            at: Some(at),
            stairs: false,
            to_at: None,
            note: None,
        }
    }
}

/// The longest wall between each two rooms of a level, in the order of the rooms.
pub(crate) fn walls(home: &Home, level: &Level) -> Vec<Wall> {
    let rooms: Vec<&Space> = spaces_of(home, level).collect();
    let mut walls = Vec::new();
    for (place, one) in rooms.iter().enumerate() {
        for other in rooms.iter().skip(place + 1) {
            if let Some(ends) = shared(&one.outline, &other.outline) {
                walls.push(Wall { one: one.id.clone(), other: other.id.clone(), ends });
            }
        }
    }
    walls
}

/// True if one can walk from one room straight to the other.
pub(crate) fn is_joined(home: &Home, one: &str, other: &str) -> bool {
    home.passages.iter().any(|passage| joins(passage, one, other))
}

fn joins(passage: &Passage, one: &str, other: &str) -> bool {
    let (a, b) = (passage.between.0.as_str(), passage.between.1.as_str());
    (a, b) == (one, other) || (a, b) == (other, one)
}

/// The longest stretch along which two outlines run side by side.
pub(crate) fn shared(one: &[Point], other: &[Point]) -> Option<(Point, Point)> {
    let mut best: Option<(f64, (Point, Point))> = None;
    for (a, b) in sides(one) {
        for (c, d) in sides(other) {
            let Some((long, ends)) = side_by_side((a, b), (c, d)) else { continue };
            if long >= LEAST_WALL && best.is_none_or(|(most, _)| long > most + 1e-9) {
                best = Some((long, ends));
            }
        }
    }
    best.map(|(_, ends)| ends)
}

fn sides(outline: &[Point]) -> impl Iterator<Item = (Point, Point)> {
    let next = outline.iter().cycle().skip(1);
    let closed = outline.len() > 2;
    outline.iter().copied().zip(next.copied()).filter(move |_| closed)
}

/// Of the first side, the stretch that the second runs along.
fn side_by_side(
    ((ax, ay), (bx, by)): (Point, Point),
    (c, d): (Point, Point),
) -> Option<(f64, (Point, Point))> {
    let long = (bx - ax).hypot(by - ay);
    if long < LEAST_WALL {
        return None;
    }
    let (ux, uy) = ((bx - ax) / long, (by - ay) / long);
    let place = |(x, y): Point| {
        let (dx, dy) = (x - ax, y - ay);
        (dx * ux + dy * uy, dy * ux - dx * uy)
    };
    let ((c_along, c_beside), (d_along, d_beside)) = (place(c), place(d));
    if c_beside.abs() > THICKEST || d_beside.abs() > THICKEST {
        return None;
    }
    let from = c_along.min(d_along).max(0.0);
    let to = c_along.max(d_along).min(long);
    // Between the two faces of the wall.
    let beside = f64::midpoint(c_beside, d_beside) / 2.0;
    let at = |along: f64| (ax + ux * along - uy * beside, ay + uy * along + ux * beside);
    (to > from).then(|| (to - from, (at(from), at(to))))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn room(left: f64, top: f64, right: f64, bottom: f64) -> Vec<Point> {
        vec![(left, top), (right, top), (right, bottom), (left, bottom)]
    }

    fn is_near(a: Point, b: Point) -> bool {
        (a.0 - b.0).hypot(a.1 - b.1) < 1e-9
    }

    #[test]
    fn a_wall_is_as_long_as_both_rooms_have_it() {
        let (a, b) = shared(&room(0.0, 0.0, 4.0, 3.0), &room(4.0, 1.0, 7.0, 5.0)).unwrap();
        let (top, bottom) = if a.1 < b.1 { (a, b) } else { (b, a) };
        assert!(is_near(top, (4.0, 1.0)) && is_near(bottom, (4.0, 3.0)), "{a:?} {b:?}");
    }

    #[test]
    fn a_thick_wall_has_its_door_in_the_middle_of_it() {
        let (a, b) = shared(&room(0.0, 0.0, 4.0, 3.0), &room(4.2, 0.0, 7.0, 3.0)).unwrap();
        assert!((a.0 - 4.1).abs() < 1e-9 && (b.0 - 4.1).abs() < 1e-9, "{a:?} {b:?}");
    }

    #[test]
    fn rooms_that_meet_at_a_corner_or_not_at_all_share_none() {
        let one = room(0.0, 0.0, 4.0, 3.0);
        assert_eq!(shared(&one, &room(4.0, 3.0, 6.0, 5.0)), None);
        assert_eq!(shared(&one, &room(6.0, 0.0, 8.0, 3.0)), None);
        assert_eq!(shared(&one, &[]), None);
        assert_eq!(shared(&one, &[(0.0, 0.0), (4.0, 0.0)]), None);
    }

    #[test]
    fn the_nearest_point_stays_on_the_wall() {
        let ends = ((4.0, 1.0), (4.0, 3.0));
        let wall = Wall { one: "a".to_owned(), other: "b".to_owned(), ends };
        let (at, far) = wall.nearest((4.3, 2.0));
        assert!(is_near(at, (4.0, 2.0)) && (far - 0.3).abs() < 1e-9);
        assert!(is_near(wall.nearest((4.0, 9.0)).0, (4.0, 3.0)));
    }
}
