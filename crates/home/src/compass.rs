//! On which side of the house a thing stands, by the compass.

use crate::{Component, Home, Space};

/// One of the eight principal points of the compass: cardinal and intercardinal, 45 degrees apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum CompassPoint {
    /// 0 degrees.
    North,
    /// 45 degrees.
    NorthEast,
    /// 90 degrees.
    East,
    /// 135 degrees.
    SouthEast,
    /// 180 degrees.
    South,
    /// 225 degrees.
    SouthWest,
    /// 270 degrees.
    West,
    /// 315 degrees.
    NorthWest,
}

impl CompassPoint {
    /// All of them, clockwise from north.
    pub const ALL: [Self; 8] = [
        Self::North,
        Self::NorthEast,
        Self::East,
        Self::SouthEast,
        Self::South,
        Self::SouthWest,
        Self::West,
        Self::NorthWest,
    ];

    /// The point nearest to a bearing in degrees clockwise from north; halfway between two, the one
    /// further clockwise. `None` if the bearing is no number.
    ///
    /// ```
    /// use quarterturn_home::CompassPoint;
    ///
    /// assert_eq!(CompassPoint::of_bearing(22.4), Some(CompassPoint::North));
    /// assert_eq!(CompassPoint::of_bearing(22.5), Some(CompassPoint::NorthEast));
    /// assert_eq!(CompassPoint::of_bearing(-90.0), Some(CompassPoint::West));
    /// ```
    #[must_use]
    pub fn of_bearing(bearing_deg: f64) -> Option<Self> {
        if !bearing_deg.is_finite() {
            return None;
        }
        let turned = (bearing_deg + 22.5).rem_euclid(360.0);
        Self::ALL.into_iter().rev().find(|point| turned >= point.bearing_deg())
    }

    /// Its bearing, in degrees clockwise from north.
    #[must_use]
    pub fn bearing_deg(self) -> f64 {
        match self {
            Self::North => 0.0,
            Self::NorthEast => 45.0,
            Self::East => 90.0,
            Self::SouthEast => 135.0,
            Self::South => 180.0,
            Self::SouthWest => 225.0,
            Self::West => 270.0,
            Self::NorthWest => 315.0,
        }
    }

    /// The word by which a text of the catalogue chooses.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::North => "north",
            Self::NorthEast => "north-east",
            Self::East => "east",
            Self::SouthEast => "south-east",
            Self::South => "south",
            Self::SouthWest => "south-west",
            Self::West => "west",
            Self::NorthWest => "north-west",
        }
    }
}

/// The bearing of one point of a plan from another, in degrees clockwise from north, `0 <= x < 360`.
///
/// `north_deg` is where north is on the plan ([`Home::north_deg`]). On a plan x grows to the right and y
/// downwards. `None` for a point from itself.
///
/// ```
/// use quarterturn_home::bearing_deg;
///
/// // Straight to the right on the plan: east where north is up, north where north is to the right.
/// assert_eq!(bearing_deg(0.0, (1.0, 1.0), (4.0, 1.0)), Some(90.0));
/// assert_eq!(bearing_deg(90.0, (1.0, 1.0), (4.0, 1.0)), Some(0.0));
/// ```
#[must_use]
pub fn bearing_deg(north_deg: f64, from: (f64, f64), to: (f64, f64)) -> Option<f64> {
    let (right, down) = (to.0 - from.0, to.1 - from.1);
    let far = right.hypot(down);
    if !far.is_finite() || far <= 0.0 || !north_deg.is_finite() {
        return None;
    }
    let from_top = right.atan2(-down).to_degrees();
    let bearing = (from_top - north_deg).rem_euclid(360.0);
    // What is a hair less than nothing is rounded up to a whole turn.
    Some(if bearing < 360.0 { bearing } else { 0.0 })
}

/// On which side of a house or room a point of the plan lies, as seen from its middle.
///
/// `corners` are those of all its outlines; it is taken as the rectangle around them. Both ways across
/// are measured by how far its walls are off, so that whatever lies beyond a wall is on that wall's
/// side or at one of its ends, however long the house is:
///
/// ```text
///   north-west    north    north-east
///            ┌──────────────┐
///       west │    middle    │ east
///            └──────────────┘
/// ```
///
/// `None` nearer to the middle than halfway to the walls, and where there are no walls.
#[must_use]
pub fn side_of(corners: &[(f64, f64)], north_deg: f64, (x, y): (f64, f64)) -> Option<CompassPoint> {
    let range = |pick: fn(&(f64, f64)) -> f64| {
        let least = corners.iter().map(pick).fold(f64::INFINITY, f64::min);
        let most = corners.iter().map(pick).fold(f64::NEG_INFINITY, f64::max);
        (f64::midpoint(least, most), (most - least) / 2.0)
    };
    let ((middle_x, half_x), (middle_y, half_y)) = (range(|p| p.0), range(|p| p.1));
    if !(half_x > 0.0 && half_y > 0.0) {
        return None;
    }
    let (right, down) = ((x - middle_x) / half_x, (y - middle_y) / half_y);
    if right.abs().max(down.abs()) < 0.5 {
        return None;
    }
    CompassPoint::of_bearing(bearing_deg(north_deg, (0.0, 0.0), (right, down))?)
}

/// On which side of the house something outdoors stands; `None` for what stands indoors, where north is
/// not known, and where the map does not tell.
///
/// The house is the rooms indoors on the level of the place; if there are none, all of them. What has no
/// place of its own is in the middle of its space.
#[must_use]
pub fn side_of_house(home: &Home, component: &Component) -> Option<CompassPoint> {
    let north_deg = home.north_deg?;
    let space = home.space(component.space.as_deref()?).filter(|space| space.outdoors)?;
    let corners = |is_here: &dyn Fn(&Space) -> bool| -> Vec<(f64, f64)> {
        let rooms = home.spaces.iter().filter(|room| !room.outdoors && is_here(room));
        rooms.flat_map(|room| room.outline.iter().copied()).collect()
    };
    let mut house = corners(&|room| room.level == space.level);
    if house.is_empty() {
        house = corners(&|_| true);
    }
    match component.at {
        Some((x, y, _)) => side_of(&house, north_deg, (x, y)),
        None => {
            let at = middle(&space.outline)?;
            // A yard all round the house is on no side of it.
            let is_round = is_within(&house, at);
            side_of(&house, north_deg, at).filter(|_| !is_round)
        }
    }
}

fn middle(corners: &[(f64, f64)]) -> Option<(f64, f64)> {
    let n = f64::from(u32::try_from(corners.len()).ok().filter(|&n| n > 0)?);
    let sum = corners.iter().fold((0.0, 0.0), |sum, at| (sum.0 + at.0, sum.1 + at.1));
    Some((sum.0 / n, sum.1 / n))
}

/// True within the rectangle around the corners.
fn is_within(corners: &[(f64, f64)], (x, y): (f64, f64)) -> bool {
    let spans = |value: f64, pick: fn(&(f64, f64)) -> f64| {
        corners.iter().any(|p| pick(p) <= value) && corners.iter().any(|p| pick(p) >= value)
    };
    spans(x, |p| p.0) && spans(y, |p| p.1)
}

#[cfg(test)]
mod tests {
    use super::CompassPoint::*;
    use super::*;
    use crate::Kind;

    /// A house 12 m wide and 4 m deep, its middle at 6, 2.
    const LONG: [(f64, f64); 4] = [(0.0, 0.0), (12.0, 0.0), (12.0, 4.0), (0.0, 4.0)];

    #[test]
    fn the_eight_points_share_the_circle_evenly() {
        for point in CompassPoint::ALL {
            let middle = point.bearing_deg();
            for bearing in [middle - 22.5, middle, middle + 22.499, middle + 360.0, middle - 720.0]
            {
                assert_eq!(CompassPoint::of_bearing(bearing), Some(point), "{bearing}");
            }
            assert_ne!(CompassPoint::of_bearing(middle + 22.5), Some(point));
            assert_ne!(CompassPoint::of_bearing(middle - 22.501), Some(point));
        }
        for nowhere in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(CompassPoint::of_bearing(nowhere), None);
        }
    }

    /// By hand: 3 to the right and 3 down is 135 degrees clockwise from up; with north 30 degrees to the
    /// right of up it is 105 degrees from north.
    #[test]
    fn bearings_turn_with_north() {
        let far = |north, to| bearing_deg(north, (1.0, 1.0), to).unwrap();
        for (north, to, bearing) in [
            (0.0, (1.0, -2.0), 0.0),
            (0.0, (4.0, 4.0), 135.0),
            (30.0, (4.0, 4.0), 105.0),
            (0.0, (1.0, 9.0), 180.0),
            (0.0, (0.0, 1.0), 270.0),
            (270.0, (0.0, 1.0), 0.0),
            (359.0, (1.0, 0.0), 1.0),
        ] {
            assert!((far(north, to) - bearing).abs() < 1e-9, "{north} {to:?}: {}", far(north, to));
        }
        // A hair less than nothing is nothing, not a whole turn.
        assert_eq!(bearing_deg(1e-20, (0.0, 0.0), (0.0, -1.0)), Some(0.0));
        assert_eq!(bearing_deg(0.0, (1.0, 1.0), (1.0, 1.0)), None);
        assert_eq!(bearing_deg(f64::NAN, (1.0, 1.0), (2.0, 1.0)), None);
    }

    /// From the middle 6, 2 the walls are 6 m and 2 m off. By hand, for 11, -1: right 5/6, up 3/2, so
    /// atan(5/9) = 29.05 degrees from up. The straight bearing would be atan(5/3) = 59 degrees.
    #[test]
    fn what_lies_beyond_a_wall_is_on_its_side_however_long_the_house() {
        for (at, side) in [
            ((6.0, -1.0), North),
            // Right 3/6 = 0.5, up 1.5: 18.4 degrees.
            ((9.0, -1.0), North),
            ((11.0, -1.0), NorthEast),
            ((13.0, 2.0), East),
            ((13.0, 5.0), SouthEast),
            ((6.0, 5.0), South),
            ((-0.5, 4.5), SouthWest),
            ((-9.0, 2.0), West),
            ((-1.0, -0.5), NorthWest),
            // Just within the wall.
            ((6.0, 0.2), North),
        ] {
            assert_eq!(side_of(&LONG, 0.0, at), Some(side), "{at:?}");
        }
    }

    /// North to the right of the plan: its upper wall looks west. North up left (315): the upper wall
    /// looks north-east. North 12 degrees right of up: 29.05 - 12 = 17.05 degrees is north still.
    #[test]
    fn a_house_that_lies_otherwise() {
        let side = |north, at| side_of(&LONG, north, at).unwrap();
        assert_eq!(side(90.0, (6.0, -1.0)), West);
        assert_eq!(side(90.0, (13.0, 2.0)), North);
        assert_eq!(side(180.0, (6.0, -1.0)), South);
        assert_eq!(side(315.0, (6.0, -1.0)), NorthEast);
        assert_eq!(side(12.0, (11.0, -1.0)), North);
        assert_eq!(side(0.0, (11.0, -1.0)), NorthEast);
    }

    /// A square, so that bearings are the plan's own: 22.5 degrees is where north ends.
    #[test]
    fn the_border_between_two_sides() {
        let square = [(-1.0, -1.0), (1.0, 1.0)];
        let at = |bearing: f64| {
            let (sine, cosine) = bearing.to_radians().sin_cos();
            (10.0 * sine, -10.0 * cosine)
        };
        assert_eq!(side_of(&square, 0.0, at(22.49)), Some(North));
        assert_eq!(side_of(&square, 0.0, at(22.51)), Some(NorthEast));
        assert_eq!(side_of(&square, 20.0, at(42.49)), Some(North));
        assert_eq!(side_of(&square, 20.0, at(42.51)), Some(NorthEast));
        assert_eq!(side_of(&square, 0.0, at(-22.49)), Some(North));
        assert_eq!(side_of(&square, 0.0, at(-22.51)), Some(NorthWest));
    }

    #[test]
    fn no_side_in_the_middle_or_without_walls() {
        assert_eq!(side_of(&LONG, 0.0, (6.0, 2.0)), None);
        assert_eq!(side_of(&LONG, 0.0, (8.9, 2.9)), None);
        assert_eq!(side_of(&[], 0.0, (8.0, 2.0)), None);
        assert_eq!(side_of(&[(1.0, 1.0), (5.0, 1.0)], 0.0, (8.0, 2.0)), None);
        assert_eq!(side_of(&LONG, 0.0, (f64::NAN, f64::NAN)), None);
    }

    fn home() -> Home {
        let space = |id: &str, level: &str, outdoors, outline: &[(f64, f64)]| Space {
            id: id.to_owned(),
            name: id.to_owned(),
            level: Some(level.to_owned()),
            outline: outline.to_vec(),
            outdoors,
        };
        Home {
            north_deg: Some(0.0),
            spaces: vec![
                space("hall", "ground", false, &LONG),
                // Upstairs is smaller, and does not tell where the house ends on the ground.
                space("attic", "upper", false, &[(0.0, 0.0), (2.0, 0.0), (2.0, 4.0), (0.0, 4.0)]),
                space("front", "ground", true, &[(0.0, 4.0), (12.0, 4.0), (12.0, 9.0), (0.0, 9.0)]),
                space(
                    "yard",
                    "ground",
                    true,
                    &[(-5.0, -5.0), (17.0, -5.0), (17.0, 9.0), (-5.0, 9.0)],
                ),
                space("roof", "roof", true, &[]),
            ],
            ..Home::default()
        }
    }

    fn thing(space: &str, at: Option<(f64, f64, f64)>) -> Component {
        let mut thing = Component::new("stop", Kind::IsolatingValve, "Curb stop");
        thing.space = Some(space.to_owned());
        thing.at = at;
        thing
    }

    #[test]
    fn the_side_of_the_house_is_told_of_what_stands_outdoors() {
        let mut home = home();
        let side = |home: &Home, space, at| side_of_house(home, &thing(space, at));
        assert_eq!(side(&home, "front", Some((6.0, 8.0, 0.0))), Some(South));
        assert_eq!(side(&home, "front", None), Some(South));
        assert_eq!(side(&home, "yard", Some((15.0, 2.0, 0.0))), Some(East));
        // The yard runs round the house, so without a place in it there is no side.
        assert_eq!(side(&home, "yard", None), None);
        assert_eq!(side(&home, "hall", Some((6.0, 0.1, 0.0))), None);
        // No rooms on that level: all rooms are the house.
        assert_eq!(side(&home, "roof", Some((6.0, 0.1, 0.0))), Some(North));
        assert_eq!(side(&home, "roof", None), None);
        assert_eq!(side(&home, "elsewhere", Some((6.0, 8.0, 0.0))), None);
        home.north_deg = None;
        assert_eq!(side(&home, "front", Some((6.0, 8.0, 0.0))), None);
    }
}
