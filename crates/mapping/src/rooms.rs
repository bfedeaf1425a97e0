//! Rooms drawn as rectangles on a grid, where there is no plan at all: good enough to walk by.

/// A rectangle on a level, in metres; y grows downwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rectangle {
    /// Its left edge.
    pub left: f64,
    /// Its top edge.
    pub top: f64,
    /// Its right edge.
    pub right: f64,
    /// Its bottom edge.
    pub bottom: f64,
}

/// A room as it was drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn {
    /// Id of its space.
    pub id: String,
    /// Where it was drawn.
    pub rectangle: Rectangle,
}

/// Rooms, laid out.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Laid {
    /// The rooms where they came to lie, in the order in which they were drawn.
    pub rooms: Vec<Drawn>,
    /// Rooms that lie on each other, in the same order.
    pub overlaps: Vec<Overlap>,
    /// Rooms that were drawn too small to be one, and have no place.
    pub too_small: Vec<String>,
}

/// Two rooms that lie on each other.
#[derive(Debug, Clone, PartialEq)]
pub struct Overlap {
    /// The one that was drawn first.
    pub one: String,
    /// The other.
    pub other: String,
    /// On how many square metres.
    pub square_metres: f64,
}

/// Least side of a room, in metres: a closet.
const NARROWEST: f64 = 0.3;
/// Less than this is no overlap but the rounding of sums.
const NOTHING: f64 = 1e-9;

impl Rectangle {
    /// Between two corners, whichever they are.
    #[must_use]
    pub fn between(a: (f64, f64), b: (f64, f64)) -> Self {
        Self { left: a.0.min(b.0), top: a.1.min(b.1), right: a.0.max(b.0), bottom: a.1.max(b.1) }
    }

    /// Its corners in metres, clockwise from top left: the outline of a space.
    #[must_use]
    pub fn outline(&self) -> Vec<(f64, f64)> {
        vec![
            (self.left, self.top),
            (self.right, self.top),
            (self.right, self.bottom),
            (self.left, self.bottom),
        ]
    }

    /// On how many square metres it lies on another.
    #[must_use]
    pub fn overlap(&self, other: &Self) -> f64 {
        let across = self.right.min(other.right) - self.left.max(other.left);
        let down = self.bottom.min(other.bottom) - self.top.max(other.top);
        across.max(0.0) * down.max(0.0)
    }

    fn is_large_enough(&self) -> bool {
        // Also false for what is no number.
        self.right - self.left >= NARROWEST - NOTHING
            && self.bottom - self.top >= NARROWEST - NOTHING
    }
}

/// Where a room comes to lie: each edge on the nearest edge of another room within `reach` metres, so that
/// they share a wall; else on the grid of `grid` metres. `None` if too little is left of it.
#[must_use]
pub fn snapped(drawn: Rectangle, others: &[Rectangle], grid: f64, reach: f64) -> Option<Rectangle> {
    // An edge is drawn to those of rooms it runs along or nearly does, not to one across the home.
    let is_near = |other: &&Rectangle| {
        let beside = |low: f64, high: f64, other_low: f64, other_high: f64| {
            low <= other_high + reach && other_low <= high + reach
        };
        beside(drawn.left, drawn.right, other.left, other.right)
            && beside(drawn.top, drawn.bottom, other.top, other.bottom)
    };
    let near: Vec<&Rectangle> = others.iter().filter(is_near).collect();
    let upright: Vec<f64> = near.iter().flat_map(|other| [other.left, other.right]).collect();
    let level: Vec<f64> = near.iter().flat_map(|other| [other.top, other.bottom]).collect();
    let edge = |at: f64, edges: &[f64]| snap(at, edges, grid, reach);
    let snapped = Rectangle {
        left: edge(drawn.left, &upright),
        top: edge(drawn.top, &level),
        right: edge(drawn.right, &upright),
        bottom: edge(drawn.bottom, &level),
    };
    snapped.is_large_enough().then_some(snapped)
}

/// Lays out rooms in the order in which they were drawn: each against those before it. See [`snapped`].
#[must_use]
pub fn lay_out(drawn: &[Drawn], grid: f64, reach: f64) -> Laid {
    let mut laid = Laid::default();
    let mut placed: Vec<Rectangle> = Vec::new();
    for room in drawn {
        let Some(rectangle) = snapped(room.rectangle, &placed, grid, reach) else {
            laid.too_small.push(room.id.clone());
            continue;
        };
        for before in &laid.rooms {
            let square_metres = before.rectangle.overlap(&rectangle);
            if square_metres > NOTHING {
                let (one, other) = (before.id.clone(), room.id.clone());
                laid.overlaps.push(Overlap { one, other, square_metres });
            }
        }
        placed.push(rectangle);
        laid.rooms.push(Drawn { id: room.id.clone(), rectangle });
    }
    laid
}

fn snap(at: f64, edges: &[f64], grid: f64, reach: f64) -> f64 {
    let nearest = edges.iter().copied().min_by(|a, b| (a - at).abs().total_cmp(&(b - at).abs()));
    match nearest {
        Some(edge) if (edge - at).abs() <= reach => edge,
        // Divided back, so that edges on the same line of the grid are the same number.
        _ if grid > 0.0 => (at / grid).round() * grid,
        _ => at,
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn room(id: &str, a: (f64, f64), b: (f64, f64)) -> Drawn {
        Drawn { id: id.to_owned(), rectangle: Rectangle::between(a, b) }
    }

    fn places(laid: &Laid) -> Vec<[f64; 4]> {
        let sides = |r: &Rectangle| [r.left, r.top, r.right, r.bottom];
        laid.rooms.iter().map(|room| sides(&room.rectangle)).collect()
    }

    #[test]
    fn rooms_lie_on_the_grid_and_share_their_walls() {
        let laid = lay_out(
            &[
                room("kitchen", (0.1, -0.1), (4.05, 3.1)),
                // Drawn from the other corner, with a gap of 10 cm beside the kitchen.
                room("hall", (6.0, 3.0), (4.12, 0.02)),
                room("bath", (-0.1, 3.2), (2.4, 5.4)),
            ],
            0.5,
            0.3,
        );
        assert_eq!(
            places(&laid),
            [[0.0, 0.0, 4.0, 3.0], [4.0, 0.0, 6.0, 3.0], [0.0, 3.0, 2.5, 5.5]]
        );
        assert!(laid.overlaps.is_empty() && laid.too_small.is_empty());
        let outline = laid.rooms[1].rectangle.outline();
        assert_eq!(outline, [(4.0, 0.0), (6.0, 0.0), (6.0, 3.0), (4.0, 3.0)]);
    }

    #[test]
    fn a_wall_that_is_not_on_the_grid_still_draws_its_neighbour() {
        let measured = Rectangle::between((0.0, 0.0), (3.81, 3.0));
        let beside = Rectangle::between((3.9, 0.1), (6.2, 3.1));
        let snapped = snapped(beside, &[measured], 0.5, 0.3).unwrap();
        assert_eq!((snapped.left, snapped.top, snapped.bottom), (3.81, 0.0, 3.0));
        assert!((snapped.right - 6.0).abs() < 1e-12);
        // Across the home it does not.
        let far = Rectangle::between((3.9, 20.1), (6.2, 23.1));
        let far = super::snapped(far, &[measured], 0.5, 0.3).unwrap();
        assert!((far.left - 4.0).abs() < 1e-12);
    }

    #[test]
    fn rooms_on_each_other_and_rooms_that_are_none_are_told() {
        let laid = lay_out(
            &[
                room("kitchen", (0.0, 0.0), (4.0, 3.0)),
                room("slip", (5.0, 5.0), (5.1, 8.0)),
                room("bath", (2.0, 1.0), (6.0, 5.0)),
                room("none", (f64::NAN, 0.0), (1.0, 1.0)),
            ],
            0.5,
            0.2,
        );
        let overlap =
            Overlap { one: "kitchen".to_owned(), other: "bath".to_owned(), square_metres: 4.0 };
        assert_eq!(laid.overlaps, [overlap]);
        assert_eq!(laid.too_small[0], "slip");
        assert_eq!(laid.rooms[1].id, "bath");
    }

    fn any_rooms() -> impl Strategy<Value = Vec<Drawn>> {
        let corner = || (-10.0..10.0, -10.0..10.0);
        prop::collection::vec((corner(), corner()), 1..8).prop_map(|corners| {
            let named = corners.into_iter().enumerate();
            named.map(|(n, (a, b))| room(&n.to_string(), a, b)).collect()
        })
    }

    proptest! {
        #[test]
        fn laid_out_again_they_stay_where_they_are(rooms in any_rooms()) {
            let laid = lay_out(&rooms, 0.5, 0.2);
            let again = lay_out(&laid.rooms, 0.5, 0.2);
            prop_assert_eq!(&again, &Laid { too_small: Vec::new(), ..laid });
        }

        #[test]
        fn no_edge_moves_further_than_its_reach(rooms in any_rooms()) {
            let laid = lay_out(&rooms, 0.5, 0.2);
            prop_assert_eq!(laid.rooms.len() + laid.too_small.len(), rooms.len());
            for after in &laid.rooms {
                let before = rooms.iter().find(|room| room.id == after.id).unwrap().rectangle;
                let after = after.rectangle;
                for (a, b) in [
                    (before.left, after.left),
                    (before.top, after.top),
                    (before.right, after.right),
                    (before.bottom, after.bottom),
                ] {
                    prop_assert!((a - b).abs() <= 0.25 + 1e-9);
                }
            }
        }

        #[test]
        fn every_overlap_is_told_once_and_no_other(rooms in any_rooms()) {
            let laid = lay_out(&rooms, 0.5, 0.2);
            let mut told = laid.overlaps.iter();
            // By counting the cells of a fine grid.
            for (n, other) in laid.rooms.iter().enumerate() {
                for one in &laid.rooms[..n] {
                    let cells = (-410..410).flat_map(|x| (-410..410).step_by(5).map(move |y| (x, y)));
                    let inside = |r: &Rectangle, (x, y): (f64, f64)| {
                        r.left < x && x < r.right && r.top < y && y < r.bottom
                    };
                    let is_shared = cells.step_by(5).any(|(x, y)| {
                        let middle = (f64::from(x) * 0.025 + 0.011, f64::from(y) * 0.025 + 0.011);
                        inside(&one.rectangle, middle) && inside(&other.rectangle, middle)
                    });
                    if is_shared {
                        let next = told.next().unwrap();
                        prop_assert_eq!((&next.one, &next.other), (&one.id, &other.id));
                    }
                }
            }
            prop_assert!(told.next().is_none());
        }
    }
}
