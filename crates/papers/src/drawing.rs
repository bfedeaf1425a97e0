//! Riser and one-line drawings, laid out from the map: what feeds what, and on which floor.
//!
//! A drawing is a tree. It grows from where the supply comes in (for drains, from the sewer) through
//! the first line that reaches each device. Every other line that reaches a device ends in a copy of
//! its sign, drawn thin: so no two lines ever cross. A device stands in the column of what feeds it if
//! it is the first thing fed, else in a column of its own; within a floor, each one stands a row
//! further than all before it on its way. A drawing that is larger than the paper is cut between
//! columns and rows into several pages.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_guidance::{count, fill};
use quarterturn_home::{Component, Home, Kind, Medium};
use serde::Serialize;

use crate::house::{House, number};
use crate::sign::Sign;

/// Width of a column, in millimetres.
const COLUMN: f64 = 7.2;
/// Height of a row.
const ROW: f64 = 7.4;
/// Air above the first row of a floor and below its last.
const AIR: f64 = 1.5;

/// Which drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Sort {
    /// Cold and hot water from the street to the taps.
    Water,
    /// Drains down to the sewer.
    Drains,
    /// Power from the street to the circuits.
    Power,
    /// Gas from the meter to the appliances.
    Gas,
}

/// A drawing, on one or more pages.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Drawing {
    title: String,
    hint: String,
    alt: String,
    sheets: Vec<Part>,
    key: Vec<KeyLine>,
}

/// What fits on one page of a drawing. Lengths are millimetres from its top left corner.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Part {
    width: f64,
    height: f64,
    bands: Vec<Band>,
    lines: Vec<Line>,
    nodes: Vec<Node>,
    /// Which page of how many; empty if there is only one.
    of: String,
}

/// A floor in a drawing.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Band {
    name: String,
    top: f64,
    height: f64,
}

/// A line: two strokes, along the row of what feeds and then along the column of what is fed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
struct Line {
    from: (f64, f64),
    to: (f64, f64),
    /// Hot water and vents are drawn dashed.
    dashed: bool,
}

/// A sign in a drawing.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Node {
    at: (f64, f64),
    /// `None` for a mere branching of a line.
    sign: Option<Sign>,
    /// True if the same device stands in the drawing already.
    copy: bool,
}

/// A line of the key.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct KeyLine {
    sign: Sign,
    name: String,
    whereabouts: String,
    /// What feeds it, or what it drains into.
    from: String,
}

/// Room for a drawing on a page, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Room {
    pub(crate) width: f64,
    pub(crate) height: f64,
}

/// The drawing of a sort. `None` if the home has nothing of it.
pub(crate) fn drawing(house: &House<'_>, sort: Sort, room: Room) -> Option<Drawing> {
    let tree = Tree::of(house.home, sort);
    if tree.spots.is_empty() {
        return None;
    }
    let (title, hint) = match sort {
        Sort::Water => ("paper-riser-water", "paper-riser-water-hint"),
        Sort::Drains => ("paper-riser-drains", "paper-riser-drains-hint"),
        Sort::Power => ("paper-one-line", "paper-one-line-hint"),
        Sort::Gas => ("paper-riser-gas", "paper-riser-gas-hint"),
    };
    let signs = tree.signs(house);
    let laid = Laid::out(house, &tree, sort, &signs);
    let key = tree
        .spots
        .iter()
        .filter(|spot| !spot.copy)
        .filter_map(|spot| {
            let component = house.home.components.get(spot.place)?;
            let sign = signs.get(&spot.place)?.clone();
            let from = spot.parent.and_then(|parent| tree.spots.get(parent));
            let from = from.and_then(|from| house.home.components.get(from.place));
            Some(KeyLine {
                sign,
                name: component.name.clone(),
                whereabouts: house.whereabouts(component),
                from: from.map(|from| house.named(from)).unwrap_or_default(),
            })
        })
        .collect();
    let title = house.text(title);
    Some(Drawing {
        alt: house.words.fill("paper-drawing-alt", &[fill("title", &title)]),
        title,
        hint: house.text(hint),
        sheets: laid.cut(house, room),
        key,
    })
}

/// A place in the tree.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Spot {
    /// Its component, by place in the home.
    place: usize,
    /// The spot that feeds it.
    parent: Option<usize>,
    dashed: bool,
    copy: bool,
    /// True if it is the first thing that its parent feeds.
    first: bool,
}

/// The tree, each spot after its parent and with all that hangs on it before the next.
#[derive(Debug, Default)]
struct Tree {
    spots: Vec<Spot>,
}

impl Tree {
    fn of(home: &Home, sort: Sort) -> Self {
        let mut next: BTreeMap<usize, Vec<(usize, bool)>> = BTreeMap::new();
        let mut fed = BTreeSet::new();
        let places: BTreeMap<&str, usize> =
            home.components.iter().enumerate().map(|(place, c)| (c.id.as_str(), place)).collect();
        for link in &home.connections {
            let (from, to) =
                if sort == Sort::Drains { (&link.to, &link.from) } else { (&link.from, &link.to) };
            let ends = (places.get(from.as_str()), places.get(to.as_str()));
            if let (true, (Some(&from), Some(&to))) = (sort.carries(link.carries), ends)
                && sort.shows(home, from)
                && sort.shows(home, to)
            {
                let dashed = matches!(link.carries, Medium::HotWater | Medium::Vent);
                next.entry(from).or_default().push((to, dashed));
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
        let mut tree = Self::default();
        let mut seen = BTreeSet::new();
        for root in roots {
            if !seen.contains(&root) {
                tree.grow(home, &next, &mut seen, root);
            }
        }
        tree
    }

    fn grow(
        &mut self,
        home: &Home,
        next: &BTreeMap<usize, Vec<(usize, bool)>>,
        seen: &mut BTreeSet<usize>,
        root: usize,
    ) {
        let root = Spot { place: root, parent: None, dashed: false, copy: false, first: false };
        let mut stack = vec![root];
        while let Some(mut spot) = stack.pop() {
            let mut fed = next.get(&spot.place).cloned().unwrap_or_default();
            spot.copy = !seen.insert(spot.place);
            // A plain piece of line with one way on is a line, not a device.
            while !spot.copy
                && spot.parent.is_some()
                && is_plain(home, spot.place)
                && let [(on, dashed)] = fed.as_slice()
            {
                spot.dashed |= dashed;
                spot.place = *on;
                fed = next.get(&spot.place).cloned().unwrap_or_default();
                spot.copy = !seen.insert(spot.place);
            }
            let index = self.spots.len();
            if !spot.copy {
                let below = fed.iter().enumerate().map(|(nth, &(place, dashed))| Spot {
                    place,
                    parent: Some(index),
                    dashed,
                    copy: false,
                    first: nth == 0,
                });
                stack.extend(below.rev());
            }
            self.spots.push(spot);
        }
    }

    /// The sign of each device: its tag, or a number where it has none.
    fn signs(&self, house: &House<'_>) -> BTreeMap<usize, Sign> {
        let mut untagged = 0_u32;
        let mut signs = BTreeMap::new();
        for spot in &self.spots {
            let Some(component) = house.home.components.get(spot.place) else { continue };
            if is_plain(house.home, spot.place) || signs.contains_key(&spot.place) {
                continue;
            }
            let mut sign = house.sign(component);
            if sign.tag.is_empty() {
                untagged += 1;
                sign.tag = untagged.to_string();
            }
            signs.insert(spot.place, sign);
        }
        signs
    }
}

impl Sort {
    fn carries(self, medium: Medium) -> bool {
        match self {
            Self::Water => matches!(medium, Medium::ColdWater | Medium::HotWater),
            Self::Drains => matches!(medium, Medium::Waste | Medium::Vent),
            Self::Power => medium == Medium::Power,
            Self::Gas => medium == Medium::Gas,
        }
    }

    /// A one-line drawing ends at the circuits.
    fn shows(self, home: &Home, place: usize) -> bool {
        self != Self::Power
            || home.components.get(place).is_some_and(|c| c.kind.is_power_distribution())
    }

    fn begins_at(self, kind: Kind) -> bool {
        match self {
            Self::Drains => kind.is_outfall(),
            Self::Water => kind.is_source(quarterturn_home::Net::Water),
            Self::Power => kind.is_source(quarterturn_home::Net::Power),
            Self::Gas => kind.is_source(quarterturn_home::Net::Gas),
        }
    }
}

/// True for a piece of line that nobody tagged.
fn is_plain(home: &Home, place: usize) -> bool {
    home.components.get(place).is_some_and(|component: &Component| {
        component.tag.is_none()
            && matches!(
                component.kind,
                Kind::Pipe | Kind::SupplyHose | Kind::Trap | Kind::Stack | Kind::Manifold
            )
    })
}

/// A column and a row.
type Place = (u32, u32);

/// The whole drawing, in columns and rows.
struct Laid {
    columns: u32,
    rows: u32,
    /// Name, first row and number of rows, from the top.
    bands: Vec<(String, u32, u32)>,
    nodes: Vec<(u32, u32, Option<Sign>, bool)>,
    /// Column and row of what feeds, column and row of what is fed.
    lines: Vec<(Place, Place, bool)>,
}

impl Laid {
    fn out(house: &House<'_>, tree: &Tree, sort: Sort, signs: &BTreeMap<usize, Sign>) -> Self {
        // Floors from the top, and the outdoors below them. A one-line drawing has none.
        let levels = if sort == Sort::Power { Vec::new() } else { house.levels() };
        let outdoors = levels.len();
        let floor_of = |place: usize| -> Option<usize> {
            if sort == Sort::Power {
                return Some(0);
            }
            let component = house.home.components.get(place)?;
            let space = house.home.space(component.space.as_deref()?)?;
            if space.outdoors {
                return Some(outdoors);
            }
            levels.iter().position(|level| Some(level.id.as_str()) == space.level.as_deref())
        };
        let mut columns = 0;
        // For each spot: column, floor, row within the floor; and the last row on its way, by floor.
        let mut at: Vec<(u32, usize, u32)> = Vec::new();
        let mut way: Vec<BTreeMap<usize, u32>> = Vec::new();
        for spot in &tree.spots {
            let before = spot.parent.and_then(|parent| at.get(parent).copied());
            let floor = floor_of(spot.place)
                .unwrap_or_else(|| before.map_or(outdoors, |(_, floor, _)| floor));
            let column = match before {
                // Straight on, unless the way turns back down.
                Some((column, above, _)) if spot.first && floor <= above => column,
                _ => {
                    columns += 1;
                    columns - 1
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
        let mut bands = Vec::new();
        let mut tops = BTreeMap::new();
        let mut rows = 0;
        for (&floor, &height) in &heights {
            let name = match levels.get(floor) {
                Some(level) => level.name.clone(),
                None if sort == Sort::Power => String::new(),
                None => house.text("paper-outdoors"),
            };
            bands.push((name, rows, height));
            tops.insert(floor, rows);
            rows += height;
        }
        // Supplies rise from below; a one-line drawing comes down from the street.
        let place = |&(column, floor, row): &(u32, usize, u32)| {
            let top = tops.get(&floor).copied().unwrap_or_default();
            let height = heights.get(&floor).copied().unwrap_or(1);
            let row = if sort == Sort::Power { row } else { height - 1 - row };
            (column, top + row)
        };
        let nodes = tree.spots.iter().zip(&at).map(|(spot, at)| {
            let (column, row) = place(at);
            (column, row, signs.get(&spot.place).cloned(), spot.copy)
        });
        let lines = tree.spots.iter().zip(&at).filter_map(|(spot, here)| {
            let parent = at.get(spot.parent?)?;
            Some((place(parent), place(here), spot.dashed))
        });
        Self { columns, rows, bands, nodes: nodes.collect(), lines: lines.collect() }
    }

    /// Cuts the drawing into pages.
    fn cut(&self, house: &House<'_>, room: Room) -> Vec<Part> {
        let across = fitting(room.width, COLUMN);
        let down = fitting(room.height - 2.0 * AIR, ROW);
        let parts_across = self.columns.div_ceil(across).max(1);
        let parts_down = self.rows.div_ceil(down).max(1);
        let mut parts = Vec::new();
        for part_down in 0..parts_down {
            for part_across in 0..parts_across {
                let (left, top) = (part_across * across, part_down * down);
                let right = (left + across).min(self.columns);
                let bottom = (top + down).min(self.rows);
                parts.push(self.part(left, top, right, bottom));
            }
        }
        // A corner in which nothing stands needs no page.
        parts.retain(|part| !part.nodes.is_empty());
        let all = number(parts.len());
        if parts.len() > 1 {
            for (nth, part) in parts.iter_mut().enumerate() {
                let fills = [count("part", number(nth + 1)), count("all", all)];
                part.of = house.words.fill("paper-part", &fills);
            }
        }
        parts
    }

    fn part(&self, left: u32, top: u32, right: u32, bottom: u32) -> Part {
        let (first_column, first_row) = (f64::from(left), f64::from(top));
        let middle = |column: u32, row: u32| {
            let x = (f64::from(column) - first_column + 0.5) * COLUMN;
            let y = (f64::from(row) - first_row + 0.5) * ROW + AIR;
            (x, y)
        };
        let bands = self.bands.iter().filter_map(|(name, first, rows)| {
            let (from, to) = ((*first).max(top), (first + rows).min(bottom));
            (from < to).then(|| Band {
                name: name.clone(),
                top: (f64::from(from) - first_row) * ROW + AIR,
                height: f64::from(to - from) * ROW,
            })
        });
        let nodes = self.nodes.iter().filter(|(column, row, _, _)| {
            (left..right).contains(column) && (top..bottom).contains(row)
        });
        let touches = |from: (u32, u32), to: (u32, u32)| {
            let (low, high) = (from.0.min(to.0), from.0.max(to.0));
            let (up, deep) = (from.1.min(to.1), from.1.max(to.1));
            low < right && high >= left && up < bottom && deep >= top
        };
        let lines = self.lines.iter().filter(|(from, to, _)| touches(*from, *to));
        Part {
            width: f64::from(right - left) * COLUMN,
            height: f64::from(bottom - top) * ROW + 2.0 * AIR,
            bands: bands.collect(),
            lines: lines
                .map(|&(from, to, dashed)| Line {
                    from: middle(from.0, from.1),
                    to: middle(to.0, to.1),
                    dashed,
                })
                .collect(),
            nodes: nodes
                .map(|(column, row, sign, copy)| Node {
                    at: middle(*column, *row),
                    sign: sign.clone(),
                    copy: *copy,
                })
                .collect(),
            of: String::new(),
        }
    }
}

/// How many whole steps fit, at least one.
fn fitting(room: f64, step: f64) -> u32 {
    let mut fit = 1;
    while f64::from(fit + 1) * step <= room {
        fit += 1;
    }
    fit
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Connection;

    fn home(lines: &[(&str, &str, Medium)], kinds: &[(&str, Kind)]) -> Home {
        Home {
            components: kinds.iter().map(|(id, kind)| Component::new(id, *kind, id)).collect(),
            connections: lines.iter().map(|(a, b, m)| Connection::new(a, b, *m)).collect(),
            ..Home::default()
        }
    }

    fn ids(home: &Home, tree: &Tree) -> Vec<(String, Option<usize>, bool)> {
        tree.spots.iter().map(|s| (home.components[s.place].id.clone(), s.parent, s.copy)).collect()
    }

    #[test]
    fn a_second_way_to_a_device_ends_in_a_copy_of_its_sign() {
        let home = home(
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
            ],
        );
        let tree = Tree::of(&home, Sort::Water);
        let expected = [
            ("street", None, false),
            ("heater", Some(0), false),
            ("sink", Some(1), false),
            ("cold", Some(0), false),
            ("sink", Some(3), true),
        ];
        let expected: Vec<_> = expected.map(|(id, p, c)| (id.to_owned(), p, c)).into();
        assert_eq!(ids(&home, &tree), expected);
        assert!(tree.spots[2].dashed, "the pipe between is a hot line");
    }

    #[test]
    fn a_circle_without_a_source_is_drawn_once_and_ends() {
        let home = home(
            &[("a", "b", Medium::ColdWater), ("b", "a", Medium::ColdWater)],
            &[("a", Kind::IsolatingValve), ("b", Kind::IsolatingValve)],
        );
        let tree = Tree::of(&home, Sort::Water);
        assert_eq!(tree.spots.len(), 3);
        assert_eq!(tree.spots.iter().filter(|spot| spot.copy).count(), 1);
    }
}
