//! All ways on foot through a home, from door to door.

use std::cell::{OnceCell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use petgraph::Direction;
use petgraph::algo::dijkstra;
use petgraph::graph::{DiGraph, NodeIndex};
use petgraph::visit::EdgeRef as _;
use quarterturn_estimate::si::length::meter;
use quarterturn_estimate::si::time::second;
use quarterturn_estimate::{Length, walk};
use quarterturn_home::{Home, Passage};

use crate::floor::{Floor, Xy, far};
use crate::route::Point;

/// Metres walked for a metre of the shortest way across a floor. Common practice, no source: people
/// go round tables and keep clear of corners.
const ROUND_FURNITURE: f64 = 1.1;

/// Metres walked across a room when the map does not tell where in it things are. Common practice,
/// no source.
pub(crate) const WITHIN_A_ROOM_M: f64 = 3.0;

/// Seconds that every part of a way takes at least, so that none leads in a circle.
const A_MOMENT: f64 = 0.001;

/// The doors and stairs of a home, and how far they are from each other.
///
/// Two nodes a passage, one on each side:
///
/// ```text
///   ┌─────────┬────────────┐
///   │ hall  a─│─b  room  c─│─d      b─c across the room, a─b and c─d through doors
///   └─────────┴────────────┘
/// ```
#[derive(Debug)]
pub(crate) struct Footpaths {
    floors: Vec<Floor>,
    elevations_m: Vec<Option<f64>>,
    sides: Vec<Side>,
    /// Sides of passages in each space.
    sides_of: Vec<Vec<usize>>,
    graph: DiGraph<(), Edge>,
    pace: Pace,
    /// What was asked for already, by the spaces that are avoided.
    reaches: RefCell<BTreeMap<Vec<bool>, Rc<Reach>>>,
    /// What was asked for already: from a point, the passages of its space.
    ends: RefCell<BTreeMap<InSpace, Ends>>,
}

/// A space, and the point in it where one is, its coordinates as bits.
type InSpace = (usize, Option<(u64, u64)>);

/// Sides of passages, with the seconds to each across its room.
type Ends = Rc<[(usize, f64)]>;

/// One side of a passage.
#[derive(Debug, Clone, Copy)]
struct Side {
    space: usize,
    at: Option<Xy>,
}

/// A part of a way, and the seconds that it takes.
#[derive(Debug, Clone, Copy)]
struct Edge {
    seconds: f64,
    /// The space that it leads across; `None` for a passage.
    across: Option<usize>,
}

/// Seconds for each thing that a way is made of.
#[derive(Debug, Clone, Copy)]
struct Pace {
    metre: f64,
    metre_up: f64,
    metre_down: f64,
    door: f64,
}

/// How long it takes from passage to passage, past some spaces; worked out where it is asked for.
#[derive(Debug)]
pub(crate) struct Reach {
    /// Spaces that are not walked across, by place in the home.
    avoided: Vec<bool>,
    /// From each side of a passage, seconds to each; infinite where there is no way.
    rows: Vec<OnceCell<Vec<f64>>>,
}

/// A way through the home.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Route {
    /// Spaces in order, by place in the home.
    pub(crate) spaces: Vec<usize>,
    /// Points in order, each with the space that it was reached in.
    pub(crate) points: Vec<(usize, Xy)>,
    pub(crate) metres: f64,
    pub(crate) up_m: f64,
    pub(crate) down_m: f64,
}

impl Footpaths {
    /// The doors and stairs of a home.
    ///
    /// Time: spaces × passages of each², times what [`Floor::across`] takes.
    pub(crate) fn new(home: &Home) -> Self {
        let floors: Vec<Floor> = home.spaces.iter().map(|s| Floor::new(&s.outline)).collect();
        let elevations_m: Vec<Option<f64>> = home
            .spaces
            .iter()
            .map(|space| Some(home.level(space.level.as_deref()?)?.elevation_m))
            .collect();
        let pace = Pace::of_slow_walker();
        let mut this = Self {
            sides: Vec::with_capacity(2 * home.passages.len()),
            sides_of: vec![Vec::new(); floors.len()],
            graph: DiGraph::new(),
            floors,
            elevations_m,
            pace,
            reaches: RefCell::default(),
            ends: RefCell::default(),
        };
        let place = |id: &str| home.spaces.iter().position(|space| space.id == id);
        for passage in &home.passages {
            let (one, other) = (&passage.between.0, &passage.between.1);
            if let (Some(one), Some(other)) = (place(one), place(other)) {
                this.add(home, passage, one, other);
            }
        }
        this.cross_floors();
        this
    }

    /// True if the home maps no passage.
    pub(crate) fn is_empty(&self) -> bool {
        self.sides.is_empty()
    }

    /// Ways that do not lead across the spaces that are to be avoided, by place in the home. One may
    /// always leave the space where one is, and enter the last.
    pub(crate) fn reach(&self, avoided: &[bool]) -> Rc<Reach> {
        let is_avoided = |space: usize| avoided.get(space).copied().unwrap_or(false);
        let avoided: Vec<bool> = (0..self.floors.len()).map(is_avoided).collect();
        let new = |avoided: &Vec<bool>| {
            let rows = self.sides.iter().map(|_| OnceCell::new()).collect();
            Rc::new(Reach { avoided: avoided.clone(), rows })
        };
        Rc::clone(self.reaches.borrow_mut().entry(avoided).or_insert_with_key(new))
    }

    /// Seconds from a point to another; `None` if the map tells no way.
    pub(crate) fn seconds(&self, reach: &Reach, from: Point, to: Point) -> Option<f64> {
        self.quickest(reach, from, to).map(|(seconds, _)| seconds)
    }

    /// The way from a point to another; `None` if the map tells none.
    pub(crate) fn route(&self, reach: &Reach, from: Point, to: Point) -> Option<Route> {
        let (_, through) = self.quickest(reach, from, to)?;
        let sides = match through {
            Some((first, last)) => self.sides_between(reach, first, last)?,
            None => Vec::new(),
        };
        Some(self.walked((from.space?, from.xy), &sides, (to.space?, to.xy)))
    }

    /// The space that holds a point of a level, indoors first, then the first of the file.
    pub(crate) fn space_at(&self, home: &Home, level: &str, xy: Xy) -> Option<usize> {
        let holds = |&place: &usize| {
            let space = &home.spaces[place];
            space.level.as_deref() == Some(level)
                && !space.outline.is_empty()
                && self.floors[place].contains(xy)
        };
        let mut holding: Vec<usize> = (0..home.spaces.len()).filter(holds).collect();
        holding.sort_by_key(|&place| home.spaces[place].outdoors);
        holding.first().copied()
    }

    fn add(&mut self, home: &Home, passage: &Passage, one: usize, other: usize) {
        let (mut at, mut to_at) = (passage.at, passage.other_at());
        if at.is_none() && !passage.stairs && self.is_level(one, other) {
            at = self.floors[one].meets(&self.floors[other]);
            to_at = at;
        }
        let number = self.sides.len();
        for (space, at) in [(one, at), (other, to_at)] {
            self.sides_of[space].push(self.sides.len());
            self.sides.push(Side { space, at });
            self.graph.add_node(());
        }
        let outdoors = home.spaces[one].outdoors && home.spaces[other].outdoors;
        for (from, to) in [(number, number + 1), (number + 1, number)] {
            let (from_side, to_side) = (self.sides[from], self.sides[to]);
            let rise = self.rise_m(from_side.space, to_side.space);
            let level_m = self.metres_through(from_side, to_side);
            // From one part of a yard to the next, and on stairs, there is no door.
            let doors = if outdoors || passage.stairs { 0.0 } else { self.pace.door };
            let seconds = self.pace.level(level_m) + self.pace.stairs(rise) + doors + A_MOMENT;
            let edge = Edge { seconds, across: None };
            self.graph.add_edge(NodeIndex::new(from), NodeIndex::new(to), edge);
        }
    }

    fn cross_floors(&mut self) {
        for space in 0..self.floors.len() {
            for (index, &one) in self.sides_of[space].iter().enumerate() {
                for &other in &self.sides_of[space][index + 1..] {
                    let (from, to) = (self.sides[one].at, self.sides[other].at);
                    let seconds = self.seconds_across(space, from, to) + A_MOMENT;
                    let edge = Edge { seconds, across: Some(space) };
                    let (one, other) = (NodeIndex::new(one), NodeIndex::new(other));
                    self.graph.add_edge(one, other, edge);
                    self.graph.add_edge(other, one, edge);
                }
            }
        }
    }

    fn sides_of(&self, space: usize) -> &[usize] {
        self.sides_of.get(space).map_or(&[], Vec::as_slice)
    }

    fn seconds_across(&self, space: usize, from: Option<Xy>, to: Option<Xy>) -> f64 {
        self.pace.level(self.metres_across(space, from, to))
    }

    fn metres_across(&self, space: usize, from: Option<Xy>, to: Option<Xy>) -> f64 {
        match (from, to) {
            (Some(from), Some(to)) => self.floors[space].metres(from, to),
            _ => WITHIN_A_ROOM_M,
        }
    }

    /// Metres on the level from one side of a passage to the other: none through a door, nor by
    /// stairs, which are walked by their height. Steps within a level lead from place to place.
    fn metres_through(&self, from: Side, to: Side) -> f64 {
        match (from.at, to.at) {
            (Some(a), Some(b)) if self.is_level(from.space, to.space) => far(a, b),
            _ => 0.0,
        }
    }

    fn is_level(&self, one: usize, other: usize) -> bool {
        self.rise_m(one, other).abs() <= 0.0
    }

    fn rise_m(&self, from: usize, to: usize) -> f64 {
        match (self.elevations_m[from], self.elevations_m[to]) {
            (Some(from), Some(to)) => to - from,
            _ => 0.0,
        }
    }

    /// The seconds of the quickest way, and the first and last side of a passage on it; `None` for one
    /// that stays in the room.
    fn quickest(
        &self,
        reach: &Reach,
        from: Point,
        to: Point,
    ) -> Option<(f64, Option<(usize, usize)>)> {
        let (start, target) = (from.space?, to.space?);
        let within = (start == target).then(|| (self.seconds_across(start, from.xy, to.xy), None));
        let (outs, ins) = (self.ends(start, from.xy), self.ends(target, to.xy));
        let through = outs.iter().flat_map(|&(first, out)| {
            let row = self.row(reach, first);
            ins.iter().map(move |&(last, into)| (out + row[last] + into, Some((first, last))))
        });
        within
            .into_iter()
            .chain(through)
            .filter(|(seconds, _)| seconds.is_finite())
            .min_by(|(a, _), (b, _)| a.total_cmp(b))
    }

    /// The passages of a space, with the seconds to each from a point in it.
    fn ends(&self, space: usize, xy: Option<Xy>) -> Ends {
        let key = (space, xy.map(|(x, y)| (x.to_bits(), y.to_bits())));
        let new = || {
            let sides = self.sides_of(space).iter();
            sides.map(|&s| (s, self.seconds_across(space, xy, self.sides[s].at))).collect()
        };
        Rc::clone(self.ends.borrow_mut().entry(key).or_insert_with(new))
    }

    /// Seconds from one side of a passage to all, by Dijkstra's algorithm.
    ///
    /// Time: e + n log n for n sides of passages and e pairs of them in one room.
    fn row<'r>(&self, reach: &'r Reach, side: usize) -> &'r [f64] {
        reach.rows[side].get_or_init(|| {
            let found = dijkstra(&self.graph, NodeIndex::new(side), None, |edge| {
                let Edge { seconds, across } = *edge.weight();
                if reach.avoids(across) { f64::INFINITY } else { seconds }
            });
            let seconds = |side| found.get(&NodeIndex::new(side)).copied();
            (0..self.sides.len()).map(|s| seconds(s).unwrap_or(f64::INFINITY)).collect()
        })
    }

    /// The sides of passages on the quickest way from one to another, both among them. From the end
    /// back, the one before is that from which the seconds add up.
    fn sides_between(&self, reach: &Reach, first: usize, last: usize) -> Option<Vec<usize>> {
        let row = self.row(reach, first);
        let mut sides = vec![last];
        let mut at = last;
        while at != first {
            let into = self.graph.edges_directed(NodeIndex::new(at), Direction::Incoming);
            at = into
                .filter(|edge| !reach.avoids(edge.weight().across))
                .map(|edge| (edge.source().index(), edge.weight().seconds))
                .min_by(|&(a, from_a), &(b, from_b)| {
                    (row[a] + from_a).total_cmp(&(row[b] + from_b)).then(a.cmp(&b))
                })
                .map(|(before, _)| before)?;
            sides.push(at);
            if sides.len() > self.sides.len() {
                return None;
            }
        }
        sides.reverse();
        Some(sides)
    }

    /// A way along these sides of passages.
    fn walked(
        &self,
        start: (usize, Option<Xy>),
        sides: &[usize],
        target: (usize, Option<Xy>),
    ) -> Route {
        let mut route = Route::default();
        let mut at = start;
        route.spaces.push(at.0);
        route.points.extend(at.1.map(|xy| (at.0, xy)));
        let ends = sides.iter().map(|&side| (self.sides[side].space, self.sides[side].at));
        for (space, xy) in ends.chain(std::iter::once(target)) {
            if space == at.0 {
                self.cross(&mut route, space, at.1, xy);
            } else {
                let rise = self.rise_m(at.0, space);
                route.up_m += rise.max(0.0);
                route.down_m += (-rise).max(0.0);
                let side = |(space, at)| Side { space, at };
                route.metres += self.metres_through(side(at), side((space, xy)));
                route.spaces.push(space);
                route.points.extend(xy.map(|xy| (space, xy)));
            }
            at = (space, xy);
        }
        route
    }

    fn cross(&self, route: &mut Route, space: usize, from: Option<Xy>, to: Option<Xy>) {
        let (Some(from), Some(to)) = (from, to) else {
            route.metres += WITHIN_A_ROOM_M;
            route.points.extend(to.map(|xy| (space, xy)));
            return;
        };
        let across = self.floors[space].across(from, to);
        route.metres += across.metres;
        route.points.extend(across.points.into_iter().map(|xy| (space, xy)));
        route.points.push((space, to));
    }
}

impl Reach {
    fn avoids(&self, across: Option<usize>) -> bool {
        across.is_some_and(|space| self.avoided[space])
    }
}

impl Pace {
    fn of_slow_walker() -> Self {
        let metre = Length::new::<meter>(1.0);
        let none = walk::Path::default();
        let seconds =
            |path: walk::Path| walk::time(&path, walk::Profile::Slow).likely.get::<second>();
        Self {
            metre: seconds(walk::Path { level: metre, ..none }) * ROUND_FURNITURE,
            metre_up: seconds(walk::Path { up: metre, ..none }),
            metre_down: seconds(walk::Path { down: metre, ..none }),
            door: seconds(walk::Path { doors: 1, ..none }),
        }
    }

    fn level(self, metres: f64) -> f64 {
        self.metre * metres
    }

    fn stairs(self, rise_m: f64) -> f64 {
        self.metre_up * rise_m.max(0.0) + self.metre_down * (-rise_m).max(0.0)
    }
}
