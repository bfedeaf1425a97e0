//! Risers and one-lines, laid out from the map: what feeds what, and on which floor.
//!
//! A drawing is a tree. It grows from where the supply comes in (for drains, from the sewer) through
//! the first line that reaches each device. Every other line that reaches a device ends in a copy of
//! it: so no line runs through a device. A device stands in the column of what feeds it if it is the
//! first thing fed, else in a column of its own, and so does what follows after a way that came down a
//! floor; within a floor, each one stands a row further than all before it on its way. That a supply
//! rises from below and power comes down from the street is how the trade draws them (common practice).

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_home::{Component, Connection, Home, Kind, Level, Medium, Net};

/// Which drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sort {
    /// Cold and hot water from the street to the taps.
    Water,
    /// Drains down to the sewer.
    Drains,
    /// Power from the street to the circuits.
    Power,
    /// Gas from the meter to the appliances.
    Gas,
}

/// How much of a net is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Detail {
    /// What one looks for: a piece of line without a tag is part of the line, and power ends at the
    /// circuits.
    Devices,
    /// All that is on the map, to be worked on.
    Whole,
}

/// A place in the drawing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Spot {
    /// Its component, by place in the home.
    pub place: usize,
    /// The spot that the drawing reaches it from, by place in [`Schematic::spots`], always an earlier
    /// one: what feeds it, or for drains what it runs into.
    pub parent: Option<usize>,
    /// What the line from there carries; `None` without a parent.
    pub carries: Option<Medium>,
    /// True if that line is only proposed.
    pub is_proposed: bool,
    /// True if the same component stands in the drawing already.
    pub is_copy: bool,
    /// From the left, the first is 0.
    pub column: u32,
    /// From the top of the whole drawing, the first is 0.
    pub row: u32,
    /// True if it is the first thing that its parent leads to.
    is_first: bool,
}

/// Rows of a drawing that are one floor.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Floor {
    /// Id of its level; `None` outdoors, where no level is known, and in a one-line, which has none.
    pub level: Option<String>,
    /// The first of its rows, from the top.
    pub top: u32,
    /// How many rows it has.
    pub rows: u32,
}

/// A riser or a one-line, in columns and rows.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Schematic {
    /// Each after its parent, and with all that hangs on it before the next.
    pub spots: Vec<Spot>,
    /// Floors from the top.
    pub floors: Vec<Floor>,
    /// How many columns there are.
    pub columns: u32,
    /// How many rows there are.
    pub rows: u32,
    /// Components of the net that no line reaches, by place in the home, in its order. Only in
    /// [`Detail::Whole`], and only those that are in no other net either or that need this one.
    pub loose: Vec<usize>,
}

impl Schematic {
    /// Lays out a net of a home, with lines that are only proposed after those that are there.
    #[must_use]
    pub fn of(home: &Home, sort: Sort, detail: Detail, proposed: &[&Connection]) -> Self {
        let (spots, members) = grown(home, sort, detail, proposed);
        let mut schematic = Self { spots, ..Self::default() };
        schematic.stand(home, sort);
        if detail == Detail::Whole {
            schematic.loose = loose(home, sort, &members);
        }
        schematic
    }

    /// Finds column, floor and row of each spot.
    fn stand(&mut self, home: &Home, sort: Sort) {
        // Floors from the top, and the outdoors below them. A one-line drawing has none.
        let levels = if sort == Sort::Power { Vec::new() } else { from_the_top(home) };
        let outdoors = levels.len();
        // Of each spot its floor and its row within that; and the last row on its way, by floor.
        let mut at: Vec<(u32, usize, u32)> = Vec::new();
        let mut way: Vec<BTreeMap<usize, u32>> = Vec::new();
        // Spots that are reached from a floor above them.
        let mut hangs = BTreeSet::new();
        for (index, spot) in self.spots.iter().enumerate() {
            let before = spot.parent.and_then(|parent| at.get(parent).copied());
            let floor = if sort == Sort::Power { Some(0) } else { floor_of(home, &levels, spot) };
            let floor = floor.unwrap_or_else(|| before.map_or(outdoors, |(_, floor, _)| floor));
            if before.is_some_and(|(_, above, _)| floor > above) {
                hangs.insert(index);
            }
            let column = match before {
                // Straight on, unless the way turns back down, or came down: then the line from
                // above is where one would go on.
                Some((column, above, _))
                    if spot.is_first
                        && floor <= above
                        && !spot.parent.is_some_and(|p| hangs.contains(&p)) =>
                {
                    column
                }
                _ => {
                    self.columns += 1;
                    self.columns - 1
                }
            };
            let mut last =
                spot.parent.and_then(|parent| way.get(parent).cloned()).unwrap_or_default();
            let row = last.get(&floor).map_or(0, |row| row + 1);
            last.insert(floor, row);
            at.push((column, floor, row));
            way.push(last);
        }
        let mut heights: BTreeMap<usize, u32> = BTreeMap::new();
        for &(_, floor, row) in &at {
            let height = heights.entry(floor).or_default();
            *height = (*height).max(row + 1);
        }
        let mut tops = BTreeMap::new();
        for (&floor, &height) in &heights {
            let level = levels.get(floor).map(|level| level.id.clone());
            self.floors.push(Floor { level, top: self.rows, rows: height });
            tops.insert(floor, self.rows);
            self.rows += height;
        }
        for (spot, (column, floor, row)) in self.spots.iter_mut().zip(at) {
            let top = tops.get(&floor).copied().unwrap_or_default();
            let height = heights.get(&floor).copied().unwrap_or(1);
            let row = if sort == Sort::Power { row } else { height - 1 - row };
            (spot.column, spot.row) = (column, top + row);
        }
    }
}

impl Sort {
    /// All of them, in the order in which they are shown.
    pub const ALL: [Self; 4] = [Self::Water, Self::Drains, Self::Power, Self::Gas];

    /// What its lines carry, the usual first.
    #[must_use]
    pub fn media(self) -> &'static [Medium] {
        match self {
            Self::Water => &[Medium::ColdWater, Medium::HotWater],
            Self::Drains => &[Medium::Waste, Medium::Vent],
            Self::Power => &[Medium::Power],
            Self::Gas => &[Medium::Gas],
        }
    }

    /// A drawing of devices ends at the circuits.
    fn shows(self, home: &Home, detail: Detail, place: usize) -> bool {
        self != Self::Power
            || detail == Detail::Whole
            || home.components.get(place).is_some_and(|c| c.kind.is_power_distribution())
    }

    fn begins_at(self, kind: Kind) -> bool {
        match self {
            Self::Drains => kind.is_outfall(),
            Self::Water => kind.is_source(Net::Water),
            Self::Power => kind.is_source(Net::Power),
            Self::Gas => kind.is_source(Net::Gas),
        }
    }

    /// True for what is of little use without a line in this net.
    fn needs(self, kind: Kind) -> bool {
        match self {
            Self::Water | Self::Drains => kind.is_water_fixture(),
            Self::Power => {
                matches!(kind, Kind::Receptacle | Kind::Light | Kind::Gfci | Kind::Breaker)
            }
            Self::Gas => kind == Kind::GasAppliance,
        }
    }
}

/// True for a piece of line that nobody tagged.
#[must_use]
pub fn is_plain(component: &Component) -> bool {
    component.tag.is_none()
        && matches!(
            component.kind,
            Kind::Pipe | Kind::SupplyHose | Kind::Trap | Kind::Stack | Kind::Manifold
        )
}

/// A line on the way out from where the drawing begins.
#[derive(Debug, Clone, Copy)]
struct Way {
    to: usize,
    carries: Medium,
    is_proposed: bool,
}

/// The tree, without columns and rows, and all components that are in it.
fn grown(
    home: &Home,
    sort: Sort,
    detail: Detail,
    proposed: &[&Connection],
) -> (Vec<Spot>, BTreeSet<usize>) {
    let mut next: BTreeMap<usize, Vec<Way>> = BTreeMap::new();
    let mut fed = BTreeSet::new();
    let places: BTreeMap<&str, usize> =
        home.components.iter().enumerate().map(|(place, c)| (c.id.as_str(), place)).collect();
    let drawn = home.connections.iter().map(|line| (line, false));
    for (line, is_proposed) in drawn.chain(proposed.iter().map(|line| (*line, true))) {
        let (from, to) =
            if sort == Sort::Drains { (&line.to, &line.from) } else { (&line.from, &line.to) };
        let ends = (places.get(from.as_str()), places.get(to.as_str()));
        if let (true, (Some(&from), Some(&to))) = (sort.media().contains(&line.carries), ends)
            && sort.shows(home, detail, from)
            && sort.shows(home, detail, to)
        {
            next.entry(from).or_default().push(Way { to, carries: line.carries, is_proposed });
            fed.insert(to);
        }
    }
    let members: BTreeSet<usize> = next.keys().copied().chain(fed.iter().copied()).collect();
    let is_root = |place: usize| {
        home.components.get(place).is_some_and(|component| sort.begins_at(component.kind))
    };
    // First where it comes in, then what nothing feeds, then what is left: circles.
    let mut roots: Vec<usize> = members.iter().copied().filter(|&p| is_root(p)).collect();
    roots.extend(members.iter().copied().filter(|&p| !is_root(p) && !fed.contains(&p)));
    roots.extend(members.iter().copied());
    let mut spots = Vec::new();
    let mut seen = BTreeSet::new();
    for root in roots {
        if !seen.contains(&root) {
            grow(home, detail, &next, &mut seen, root, &mut spots);
        }
    }
    (spots, members)
}

fn grow(
    home: &Home,
    detail: Detail,
    next: &BTreeMap<usize, Vec<Way>>,
    seen: &mut BTreeSet<usize>,
    root: usize,
    spots: &mut Vec<Spot>,
) {
    let begin = |place: usize, parent: Option<usize>| Spot {
        place,
        parent,
        carries: None,
        is_proposed: false,
        is_copy: false,
        column: 0,
        row: 0,
        is_first: false,
    };
    let is_hidden = |place: usize| {
        detail == Detail::Devices && home.components.get(place).is_some_and(is_plain)
    };
    let mut stack = vec![begin(root, None)];
    while let Some(mut spot) = stack.pop() {
        let mut fed = next.get(&spot.place).cloned().unwrap_or_default();
        spot.is_copy = !seen.insert(spot.place);
        // A plain piece of line with one way on is a line, not a device.
        while !spot.is_copy
            && spot.parent.is_some()
            && is_hidden(spot.place)
            && let [on] = fed.as_slice()
        {
            // A line that is hot or a vent for a part of its way is drawn as one.
            if matches!(on.carries, Medium::HotWater | Medium::Vent) {
                spot.carries = Some(on.carries);
            }
            spot.is_proposed |= on.is_proposed;
            spot.place = on.to;
            fed = next.get(&spot.place).cloned().unwrap_or_default();
            spot.is_copy = !seen.insert(spot.place);
        }
        let index = spots.len();
        if !spot.is_copy {
            let below = fed.iter().enumerate().map(|(nth, way)| Spot {
                carries: Some(way.carries),
                is_proposed: way.is_proposed,
                is_first: nth == 0,
                ..begin(way.to, Some(index))
            });
            stack.extend(below.rev());
        }
        spots.push(spot);
    }
}

/// Components that ought to be in the net and that no line of it reaches.
fn loose(home: &Home, sort: Sort, members: &BTreeSet<usize>) -> Vec<usize> {
    let joined: BTreeSet<&str> =
        home.connections.iter().flat_map(|line| [line.from.as_str(), line.to.as_str()]).collect();
    let is_loose = |place: usize, component: &Component| {
        !members.contains(&place)
            && sort.media().iter().any(|medium| component.kind.can_meet(*medium))
            && (sort.needs(component.kind)
                || sort.begins_at(component.kind)
                || !joined.contains(component.id.as_str()))
    };
    let all = home.components.iter().enumerate();
    all.filter(|(place, component)| is_loose(*place, component)).map(|(place, _)| place).collect()
}

/// Levels, highest first, as one draws a house.
fn from_the_top(home: &Home) -> Vec<&Level> {
    let mut levels: Vec<&Level> = home.levels.iter().collect();
    levels.sort_by(|a, b| b.elevation_m.total_cmp(&a.elevation_m));
    levels
}

/// The floor of a spot, counted from the top; the outdoors are below all of them.
fn floor_of(home: &Home, levels: &[&Level], spot: &Spot) -> Option<usize> {
    let component = home.components.get(spot.place)?;
    let space = home.space(component.space.as_deref()?)?;
    if space.outdoors {
        return Some(levels.len());
    }
    levels.iter().position(|level| Some(level.id.as_str()) == space.level.as_deref())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn home(lines: &[(&str, &str, Medium)], kinds: &[(&str, Kind)]) -> Home {
        Home {
            components: kinds.iter().map(|(id, kind)| Component::new(id, *kind, id)).collect(),
            connections: lines.iter().map(|(a, b, m)| Connection::new(a, b, *m)).collect(),
            ..Home::default()
        }
    }

    fn ids(home: &Home, drawn: &Schematic) -> Vec<(String, Option<usize>, bool)> {
        let spots = drawn.spots.iter();
        spots.map(|s| (home.components[s.place].id.clone(), s.parent, s.is_copy)).collect()
    }

    fn two_ways() -> Home {
        home(
            &[
                ("street", "heater", Medium::ColdWater),
                ("street", "cold", Medium::ColdWater),
                ("cold", "sink", Medium::ColdWater),
                ("heater", "pipe", Medium::HotWater),
                ("pipe", "sink", Medium::HotWater),
            ],
            &[
                ("street", Kind::WaterMain),
                ("heater", Kind::WaterHeater),
                ("cold", Kind::IsolatingValve),
                ("pipe", Kind::Pipe),
                ("sink", Kind::Sink),
                ("basin", Kind::Basin),
                ("outlet", Kind::Receptacle),
            ],
        )
    }

    #[test]
    fn a_second_way_to_a_device_ends_in_a_copy_of_its_sign() {
        let home = two_ways();
        let drawn = Schematic::of(&home, Sort::Water, Detail::Devices, &[]);
        let expected = [
            ("street", None, false),
            ("heater", Some(0), false),
            ("sink", Some(1), false),
            ("cold", Some(0), false),
            ("sink", Some(3), true),
        ];
        let expected: Vec<_> = expected.map(|(id, p, c)| (id.to_owned(), p, c)).into();
        assert_eq!(ids(&home, &drawn), expected);
        let sink = &drawn.spots[2];
        assert_eq!(sink.carries, Some(Medium::HotWater), "the pipe between is a hot line");
        assert!(drawn.loose.is_empty());
    }

    #[test]
    fn the_whole_net_shows_the_pipe_what_is_proposed_and_what_hangs_on_nothing() {
        let home = two_ways();
        let line = Connection::new("cold", "basin", Medium::ColdWater);
        let drawn = Schematic::of(&home, Sort::Water, Detail::Whole, &[]);
        assert!(ids(&home, &drawn).iter().any(|(id, _, _)| id == "pipe"));
        assert_eq!(drawn.loose, [5], "the basin; an outlet has nothing to do with water");
        let drawn = Schematic::of(&home, Sort::Water, Detail::Whole, &[&line]);
        assert_eq!(drawn.loose, Vec::<usize>::new());
        let basin = drawn.spots.iter().find(|spot| spot.place == 5).unwrap();
        assert!(basin.is_proposed);
        assert_eq!(drawn.spots.iter().filter(|spot| spot.is_proposed).count(), 1);
    }

    #[test]
    fn a_circle_without_a_source_is_drawn_once_and_ends() {
        let home = home(
            &[("a", "b", Medium::ColdWater), ("b", "a", Medium::ColdWater)],
            &[("a", Kind::IsolatingValve), ("b", Kind::IsolatingValve)],
        );
        for detail in [Detail::Devices, Detail::Whole] {
            let drawn = Schematic::of(&home, Sort::Water, detail, &[]);
            assert_eq!(drawn.spots.len(), 3);
            assert_eq!(drawn.spots.iter().filter(|spot| spot.is_copy).count(), 1);
        }
    }

    /// No two things stand on one place, and a line (along the row of what feeds, then along the
    /// column of what is fed) runs over no other.
    #[test]
    fn in_every_example_nothing_stands_on_another_and_no_line_runs_through_a_box() {
        let files = [
            include_str!("../../../examples/two-storey/home.ron"),
            include_str!("../../../examples/flat/home.ron"),
            include_str!("../../../examples/old-house/home.ron"),
        ];
        for file in files {
            let home: Home = quarterturn_home::open("home.ron", file).home.unwrap();
            for sort in Sort::ALL {
                let drawn = Schematic::of(&home, sort, Detail::Whole, &[]);
                let places: BTreeSet<(u32, u32)> =
                    drawn.spots.iter().map(|spot| (spot.column, spot.row)).collect();
                assert_eq!(places.len(), drawn.spots.len(), "{sort:?}");
                for spot in &drawn.spots {
                    let Some(parent) = spot.parent.map(|parent| &drawn.spots[parent]) else {
                        continue;
                    };
                    let along =
                        (parent.column.min(spot.column) + 1)..parent.column.max(spot.column);
                    let down = (parent.row.min(spot.row) + 1)..parent.row.max(spot.row);
                    assert!(
                        along.into_iter().all(|column| !places.contains(&(column, parent.row)))
                    );
                    assert!(down.into_iter().all(|row| !places.contains(&(spot.column, row))));
                }
            }
        }
    }
}
