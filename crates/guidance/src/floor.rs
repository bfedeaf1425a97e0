//! The floor of one space: the shortest way on foot between two of its points.
//!
//! In a simple polygon a shortest path bends only at corners that point inwards (Lozano-Pérez and
//! Wesley 1979), so that it is enough to look which of those corners see each other. Furniture is not
//! on the map, and not looked at.

/// A point of a level, in metres.
pub(crate) type Xy = (f64, f64);

/// Metres that count as nothing.
const NOTHING: f64 = 1e-6;

/// Most corners that point inwards: with more, a floor is walked straight across. Rooms have a few.
const MOST_BENDS: usize = 32;

/// The floor of a space.
#[derive(Debug, Clone, Default)]
pub(crate) struct Floor {
    corners: Vec<Xy>,
    /// Corners that point inwards, where a way may bend.
    bends: Vec<Xy>,
    /// For each two bends, the metres between them and the bend to go to first.
    between: Vec<Vec<(f64, usize)>>,
}

/// A way across a floor.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Across {
    pub(crate) metres: f64,
    /// Points between the two ends, in order.
    pub(crate) points: Vec<Xy>,
}

impl Floor {
    /// The floor inside an outline. Fewer than three corners enclose nothing: it is walked straight.
    ///
    /// Time: corners, and for b bends b² × corners × the outline's crossings with a straight line.
    pub(crate) fn new(outline: &[Xy]) -> Self {
        if outline.len() < 3 {
            return Self::default();
        }
        let mut floor = Self { corners: outline.to_vec(), bends: bends(outline), between: vec![] };
        if floor.bends.len() > MOST_BENDS {
            floor.bends.clear();
        }
        floor.between = floor.all_between();
        floor
    }

    /// The way between two points. What lies outside the outline, such as the middle of a doorway, is
    /// reached by the nearest point inside.
    ///
    /// ```text
    ///   ┌───────┐
    ///   │ from  └────┐      bends at the corner between them
    ///   │         to │
    ///   └────────────┘
    /// ```
    pub(crate) fn across(&self, from: Xy, to: Xy) -> Across {
        let (first, last) = (self.nearest_inside(from), self.nearest_inside(to));
        let mut points = vec![first];
        points.extend(self.bends_between(first, last));
        points.push(last);
        points.dedup_by(|a, b| far(*a, *b) <= NOTHING);
        let mut all = vec![from];
        all.extend(points.iter().copied());
        all.push(to);
        let metres = all.windows(2).map(|pair| far(pair[0], pair[1])).sum();
        points.retain(|&point| far(point, from) > NOTHING && far(point, to) > NOTHING);
        Across { metres, points }
    }

    /// The metres of [`Self::across`].
    pub(crate) fn metres(&self, from: Xy, to: Xy) -> f64 {
        if !self.bends.is_empty() {
            return self.across(from, to).metres;
        }
        let (first, last) = (self.nearest_inside(from), self.nearest_inside(to));
        far(from, first) + far(first, last) + far(last, to)
    }

    /// True if a point lies inside or on the outline.
    pub(crate) fn contains(&self, point: Xy) -> bool {
        if self.edges().any(|(a, b)| far(point, nearest_on(a, b, point)) <= NOTHING) {
            return true;
        }
        let crosses = |&(a, b): &(Xy, Xy)| {
            (a.1 > point.1) != (b.1 > point.1)
                && point.0 < (b.0 - a.0) * (point.1 - a.1) / (b.1 - a.1) + a.0
        };
        self.edges().filter(crosses).count() % 2 == 1
    }

    /// The point of the floor that is nearest to `point`; itself where there is no outline.
    pub(crate) fn nearest_inside(&self, point: Xy) -> Xy {
        if self.corners.is_empty() || self.contains(point) {
            return point;
        }
        let on_edges = self.edges().map(|(a, b)| nearest_on(a, b, point));
        on_edges.min_by(|a, b| far(*a, point).total_cmp(&far(*b, point))).unwrap_or(point)
    }

    /// Where two floors meet that have a wall between them: the middle of the stretch where they are
    /// nearest. `None` if one of them has no outline.
    pub(crate) fn meets(&self, other: &Self) -> Option<Xy> {
        if self.corners.is_empty() || other.corners.is_empty() {
            return None;
        }
        let from_here = self.corners.iter().map(|&here| (here, other.nearest_inside(here)));
        let from_there = other.corners.iter().map(|&there| (self.nearest_inside(there), there));
        let pairs: Vec<(Xy, Xy)> = from_here.chain(from_there).collect();
        let least = pairs.iter().map(|&(a, b)| far(a, b)).min_by(f64::total_cmp)?;
        let near: Vec<Xy> = pairs
            .into_iter()
            .filter(|&(a, b)| far(a, b) <= least + NOTHING)
            .map(|(a, b)| ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0))
            .collect();
        let first = *near.first()?;
        let farthest =
            |from: Xy| near.iter().copied().max_by(|a, b| far(*a, from).total_cmp(&far(*b, from)));
        let one = farthest(first)?;
        let other = farthest(one)?;
        Some(((one.0 + other.0) / 2.0, (one.1 + other.1) / 2.0))
    }

    /// The bends on the way between two points of the floor.
    fn bends_between(&self, from: Xy, to: Xy) -> Vec<Xy> {
        if self.bends.is_empty() || self.sees(from, to) {
            return Vec::new();
        }
        let seen_from = |point: Xy| -> Vec<usize> {
            (0..self.bends.len()).filter(|&bend| self.sees(point, self.bends[bend])).collect()
        };
        let (starts, ends) = (seen_from(from), seen_from(to));
        let mut best: Option<(f64, usize, usize)> = None;
        for &start in &starts {
            for &end in &ends {
                let metres = far(from, self.bends[start])
                    + self.between[start][end].0
                    + far(self.bends[end], to);
                if metres.is_finite() && best.is_none_or(|(least, ..)| metres < least) {
                    best = Some((metres, start, end));
                }
            }
        }
        let Some((_, mut bend, end)) = best else { return Vec::new() };
        let mut points = vec![self.bends[bend]];
        while bend != end {
            bend = self.between[bend][end].1;
            points.push(self.bends[bend]);
        }
        points
    }

    /// Floyd and Warshall's shortest paths between all bends.
    fn all_between(&self) -> Vec<Vec<(f64, usize)>> {
        let count = self.bends.len();
        let mut between: Vec<Vec<(f64, usize)>> = (0..count)
            .map(|from| {
                let straight = |to: usize| {
                    let seen = from == to || self.sees(self.bends[from], self.bends[to]);
                    if seen { far(self.bends[from], self.bends[to]) } else { f64::INFINITY }
                };
                (0..count).map(|to| (straight(to), to)).collect()
            })
            .collect();
        for over in 0..count {
            for from in 0..count {
                for to in 0..count {
                    let metres = between[from][over].0 + between[over][to].0;
                    if metres < between[from][to].0 {
                        between[from][to] = (metres, between[from][over].1);
                    }
                }
            }
        }
        between
    }

    /// True if the straight line between two points stays on the floor.
    fn sees(&self, from: Xy, to: Xy) -> bool {
        let line = minus(to, from);
        let length = line.0.hypot(line.1);
        if length <= NOTHING {
            return true;
        }
        // Where the line meets the outline, as parts of its length; between two such places it is
        // either inside or outside all the way.
        let mut meets = vec![0.0, 1.0];
        for (a, b) in self.edges() {
            let edge = minus(b, a);
            let turn = cross(line, edge);
            if turn.abs() <= NOTHING * length * edge.0.hypot(edge.1) {
                for corner in [a, b] {
                    meets.push(dot(minus(corner, from), line) / (length * length));
                }
                continue;
            }
            let along = cross(minus(a, from), edge) / turn;
            let beside = cross(minus(a, from), line) / turn;
            if (-NOTHING..=1.0 + NOTHING).contains(&beside) {
                meets.push(along);
            }
        }
        meets.retain(|part| (0.0..=1.0).contains(part));
        meets.sort_by(f64::total_cmp);
        meets.windows(2).all(|pair| {
            let middle = (pair[0] + pair[1]) / 2.0;
            (pair[1] - pair[0]) * length <= NOTHING
                || self.contains((from.0 + middle * line.0, from.1 + middle * line.1))
        })
    }

    fn edges(&self) -> impl Iterator<Item = (Xy, Xy)> {
        let next = self.corners.iter().cycle().skip(1);
        self.corners.iter().zip(next).map(|(a, b)| (*a, *b))
    }
}

/// Metres between two points.
pub(crate) fn far(a: Xy, b: Xy) -> f64 {
    (b.0 - a.0).hypot(b.1 - a.1)
}

/// Corners of an outline that point inwards.
fn bends(outline: &[Xy]) -> Vec<Xy> {
    let count = outline.len();
    let at = |index: usize| outline[index % count];
    let area: f64 = (0..count).map(|i| cross(at(i), at(i + 1))).sum();
    (0..count)
        .filter(|&i| {
            let turn = cross(minus(at(i + 1), at(i)), minus(at(i + 2), at(i + 1)));
            turn * area.signum() < -NOTHING
        })
        .map(|i| at(i + 1))
        .collect()
}

/// The point of a stretch that is nearest to `point`.
fn nearest_on(a: Xy, b: Xy, point: Xy) -> Xy {
    let edge = minus(b, a);
    let square = dot(edge, edge);
    if square <= 0.0 {
        return a;
    }
    let part = (dot(minus(point, a), edge) / square).clamp(0.0, 1.0);
    (a.0 + part * edge.0, a.1 + part * edge.1)
}

fn minus(a: Xy, b: Xy) -> Xy {
    (a.0 - b.0, a.1 - b.1)
}

fn dot(a: Xy, b: Xy) -> f64 {
    a.0 * b.0 + a.1 * b.1
}

fn cross(a: Xy, b: Xy) -> f64 {
    a.0 * b.1 - a.1 * b.0
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ```text
    ///   0   2       6   8
    /// 0 ┌───┐       ┌───┐
    /// 3 │   └───────┘   │
    /// 5 └───────────────┘
    /// ```
    const U: [Xy; 8] = [
        (0.0, 0.0),
        (2.0, 0.0),
        (2.0, 3.0),
        (6.0, 3.0),
        (6.0, 0.0),
        (8.0, 0.0),
        (8.0, 5.0),
        (0.0, 5.0),
    ];

    #[test]
    fn a_way_bends_at_the_corners_that_point_inwards() {
        let floor = Floor::new(&U);
        let across = floor.across((1.0, 0.0), (7.0, 0.0));
        assert_eq!(across.points, [(2.0, 3.0), (6.0, 3.0)]);
        // Two slopes of 1 by 3, and 4 along the wall.
        assert!((across.metres - (2.0 * 10.0_f64.sqrt() + 4.0)).abs() < 1e-9);
        let mut back = U;
        back.reverse();
        assert_eq!(Floor::new(&back).across((1.0, 0.0), (7.0, 0.0)), across);
        assert_eq!(floor.across((1.0, 4.0), (7.0, 4.0)).points, []);
    }

    #[test]
    fn a_doorway_in_the_wall_is_reached_by_the_nearest_point_of_the_floor() {
        let floor = Floor::new(&[(0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)]);
        let across = floor.across((4.5, 0.0), (0.0, 3.0));
        assert_eq!(across, Across { metres: 5.5, points: vec![(4.0, 0.0)] });
        assert_eq!(floor.across((1.0, 1.0), (1.0, 1.0)), Across::default());
        // No outline: straight.
        let straight = Floor::new(&[]).across((0.0, 0.0), (3.0, 4.0));
        assert_eq!(straight, Across { metres: 5.0, points: vec![] });
    }

    #[test]
    fn floors_meet_in_the_middle_of_the_wall_that_they_share() {
        let room =
            |x: f64, y: f64| Floor::new(&[(x, y), (x + 4.0, y), (x + 4.0, y + 3.0), (x, y + 3.0)]);
        // They share y from 2 to 3, with a wall of 0.2 between.
        assert_eq!(room(0.0, 0.0).meets(&room(4.2, 2.0)), Some((4.1, 2.5)));
        assert_eq!(room(0.0, 0.0).meets(&Floor::new(&[])), None);
    }

    /// Paths over a fine grid are never shorter than ours, and hardly longer.
    #[test]
    fn no_way_over_a_fine_grid_is_shorter() {
        let outlines: [&[Xy]; 3] = [
            &U,
            &[
                (0.0, 0.0),
                (6.0, 0.0),
                (6.0, 6.0),
                (4.0, 6.0),
                (4.0, 2.0),
                (2.0, 2.0),
                (2.0, 6.0),
                (0.0, 6.0),
            ],
            &[(0.0, 0.0), (7.0, 0.0), (7.0, 1.0), (2.0, 3.0), (7.0, 5.0), (7.0, 6.0), (0.0, 6.0)],
        ];
        let mut bent = 0;
        for outline in outlines {
            let floor = Floor::new(outline);
            let grid = Grid::over(&floor);
            for from in (0..grid.points.len()).step_by(97) {
                let metres = grid.metres_from(from);
                for (to, &by_grid) in metres.iter().enumerate().step_by(19) {
                    let across = floor.across(grid.points[from], grid.points[to]);
                    bent += usize::from(!across.points.is_empty());
                    assert!(across.metres <= by_grid + 1e-9, "{across:?} {by_grid}");
                    // Sixteen directions are off by at most 2.8 %, and a grid cuts no corner exactly.
                    assert!(by_grid <= across.metres * 1.028 + 0.3, "{across:?} {by_grid}");
                }
            }
        }
        assert!(bent > 100, "{bent}");
    }

    /// Points every quarter of a metre, each joined to its neighbours in sixteen directions.
    struct Grid<'f> {
        floor: &'f Floor,
        points: Vec<Xy>,
    }

    impl<'f> Grid<'f> {
        const STEP: f64 = 0.25;

        fn over(floor: &'f Floor) -> Self {
            let places = (0..=32).flat_map(|x| (0..=32).map(move |y| (f64::from(x), f64::from(y))));
            let points = places
                .map(|(x, y)| (x * Self::STEP, y * Self::STEP))
                .filter(|&point| floor.contains(point))
                .collect();
            Self { floor, points }
        }

        /// Bellman and Ford: over and over until nothing gets shorter. Whether a step stays on the
        /// floor is told by points along it, not by what is tested.
        fn metres_from(&self, start: usize) -> Vec<f64> {
            let mut steps = Vec::new();
            for (a, &from) in self.points.iter().enumerate() {
                for (b, &to) in self.points.iter().enumerate() {
                    let metres = far(from, to);
                    let inside = |part: i32| {
                        let part = f64::from(part) / 8.0;
                        self.floor.contains((
                            from.0 + part * (to.0 - from.0),
                            from.1 + part * (to.1 - from.1),
                        ))
                    };
                    if metres > 0.0 && metres < 2.3 * Self::STEP && (0..=8).all(inside) {
                        steps.push((a, b, metres));
                    }
                }
            }
            let mut least = vec![f64::INFINITY; self.points.len()];
            least[start] = 0.0;
            let mut shorter = true;
            while shorter {
                shorter = false;
                for &(a, b, metres) in &steps {
                    if least[a] + metres < least[b] - 1e-12 {
                        least[b] = least[a] + metres;
                        shorter = true;
                    }
                }
            }
            least
        }
    }
}
