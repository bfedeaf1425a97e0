//! Floors, rooms and places, in whole centimetres, as the page draws them.

use std::collections::BTreeMap;

use quarterturn_home::{Component, Home, Level};

use super::picture::{Picture, picture};

/// Pictures beyond this many are made smaller still.
const MANY_FLOORS: usize = 4;
/// Farther from the zero than this, in metres, nothing is drawn: it is a slip of the finger.
const FARTHEST: f64 = 10_000.0;

/// The plans of a home.
#[derive(Debug)]
pub(super) struct Plans {
    /// One for each level, in the home's order.
    pub(super) floors: Vec<Floor>,
    /// Paths of pictures that are missing or cannot be read.
    pub(super) unreadable: Vec<String>,
}

/// A floor.
#[derive(Debug)]
pub(super) struct Floor {
    pub(super) name: String,
    /// Its picture, and where that lies: left, top, width, height.
    pub(super) picture: Option<(Picture, [i32; 4])>,
    /// True if the picture is drawn left for right.
    pub(super) mirrored: bool,
}

impl Plans {
    pub(super) fn new(home: &Home, pictures: &BTreeMap<String, Vec<u8>>) -> Self {
        let mut unreadable = Vec::new();
        let is_one_of_many = home.levels.len() > MANY_FLOORS;
        let mut floor = |level: &Level| {
            let shown = level.plan.as_ref().and_then(|plan| {
                let read = pictures.get(&plan.picture).and_then(|b| picture(b, is_one_of_many));
                if read.is_none() {
                    unreadable.push(plan.picture.clone());
                }
                let picture = read?;
                let height = plan.width_m * picture.aspect;
                let place = [
                    centimetres(plan.left_m)?,
                    centimetres(plan.top_m)?,
                    centimetres(plan.width_m).filter(|&width| width > 0)?,
                    centimetres(height)?,
                ];
                Some((picture, place))
            });
            let mirrored = level.plan.as_ref().is_some_and(|plan| plan.mirrored);
            Floor { name: level.name.clone(), picture: shown, mirrored }
        };
        let floors = home.levels.iter().map(&mut floor).collect();
        Self { floors, unreadable }
    }
}

/// Corners of a room, x and y in turn; empty if they make none.
pub(super) fn outline(corners: &[(f64, f64)]) -> Vec<i32> {
    let points: Option<Vec<[i32; 2]>> =
        corners.iter().map(|&(x, y)| Some([centimetres(x)?, centimetres(y)?])).collect();
    points.filter(|points| points.len() >= 3).unwrap_or_default().concat()
}

/// Where a component is drawn: its own place, or else the middle of its room.
pub(super) fn place(home: &Home, component: &Component) -> Option<[i32; 2]> {
    let at = match component.at {
        Some((x, y, _)) => (x, y),
        None => middle(&home.space(component.space.as_deref()?)?.outline)?,
    };
    Some([centimetres(at.0)?, centimetres(at.1)?])
}

/// The middle of the corners of a room, each counted once. Good enough to say "in this room", whose
/// outline is shown with it.
fn middle(outline: &[(f64, f64)]) -> Option<(f64, f64)> {
    let n = f64::from(u32::try_from(outline.len()).ok().filter(|&n| n > 0)?);
    let sum = outline.iter().fold((0.0, 0.0), |sum, at| (sum.0 + at.0, sum.1 + at.1));
    Some((sum.0 / n, sum.1 / n))
}

/// A direction in whole degrees, which is closer than anyone draws a plan.
pub(super) fn whole_degrees(degrees: f64) -> Option<i32> {
    #[expect(clippy::cast_possible_truncation, reason = "within a turn, as just tested")]
    (0.0..360.0).contains(&degrees).then(|| degrees.round() as i32 % 360)
}

fn centimetres(metres: f64) -> Option<i32> {
    #[expect(clippy::cast_possible_truncation, reason = "within the farthest, as just tested")]
    (metres.abs() <= FARTHEST).then(|| (metres * 100.0).round() as i32)
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Kind, Plan, Space};

    #[test]
    fn a_picture_that_is_missing_or_broken_is_named() {
        let level = |id: &str, picture: &str| Level {
            id: id.to_owned(),
            name: id.to_owned(),
            elevation_m: 0.0,
            plan: Some(Plan {
                picture: picture.to_owned(),
                left_m: -1.0,
                top_m: 0.0,
                width_m: 12.5,
                mirrored: false,
            }),
        };
        let home =
            Home { levels: vec![level("a", "a.png"), level("b", "b.png")], ..Home::default() };
        let pictures = BTreeMap::from([("b.png".to_owned(), b"no picture".to_vec())]);
        let plans = Plans::new(&home, &pictures);
        assert_eq!(plans.unreadable, ["a.png", "b.png"]);
        assert!(plans.floors.iter().all(|floor| floor.picture.is_none()));
    }

    #[test]
    fn nothing_is_drawn_that_is_nowhere() {
        assert_eq!(centimetres(1.234), Some(123));
        for nowhere in [f64::NAN, f64::INFINITY, -1e9] {
            assert_eq!(centimetres(nowhere), None);
            assert!(outline(&[(0.0, 0.0), (1.0, 0.0), (nowhere, 1.0)]).is_empty());
        }
        assert!(outline(&[(0.0, 0.0), (1.0, 0.0)]).is_empty());
        assert_eq!(outline(&[(0.0, 0.0), (1.0, 0.0), (0.5, 2.0)]), [0, 0, 100, 0, 50, 200]);
    }

    #[test]
    fn a_direction_in_whole_degrees() {
        assert_eq!([0.0, 44.6, 359.7].map(whole_degrees), [Some(0), Some(45), Some(0)]);
        assert_eq!([360.0, -1.0, f64::NAN].map(whole_degrees), [None, None, None]);
    }

    #[test]
    fn a_device_without_a_place_stands_in_the_middle_of_its_room() {
        let space = Space {
            id: "hall".to_owned(),
            name: "Hall".to_owned(),
            level: None,
            outline: vec![(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (0.0, 2.0)],
            outdoors: false,
        };
        let home = Home { spaces: vec![space], ..Home::default() };
        let mut valve = Component::new("valve", Kind::IsolatingValve, "Valve");
        assert_eq!(place(&home, &valve), None);
        valve.space = Some("hall".to_owned());
        assert_eq!(place(&home, &valve), Some([200, 100]));
    }
}
