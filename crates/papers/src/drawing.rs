//! Riser and one-line drawings on paper: what feeds what, and on which floor.
//!
//! Where everything stands is worked out by [`quarterturn_mapping::schematic`]. Here each device is its
//! sign, a copy is drawn thin, and a drawing that is larger than the paper is cut between columns and
//! rows into several pages.

use std::collections::BTreeMap;

use quarterturn_guidance::{count, fill};
use quarterturn_home::Medium;
pub(crate) use quarterturn_mapping::schematic::Sort;
use quarterturn_mapping::schematic::{Detail, Schematic, is_plain};
use serde::Serialize;

use crate::house::{House, number};
use crate::sign::Sign;

/// Width of a column, in millimetres.
const COLUMN: f64 = 7.2;
/// Height of a row.
const ROW: f64 = 7.4;
/// Air above the first row of a floor and below its last.
const AIR: f64 = 1.5;

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
    let drawn = Schematic::of(house.home, sort, Detail::Devices, &[]);
    if drawn.spots.is_empty() {
        return None;
    }
    let (title, hint) = match sort {
        Sort::Water => ("paper-riser-water", "paper-riser-water-hint"),
        Sort::Drains => ("paper-riser-drains", "paper-riser-drains-hint"),
        Sort::Power => ("paper-one-line", "paper-one-line-hint"),
        Sort::Gas => ("paper-riser-gas", "paper-riser-gas-hint"),
    };
    let signs = signs(house, &drawn);
    let laid = Laid::out(house, &drawn, sort, &signs);
    let key = drawn
        .spots
        .iter()
        .filter(|spot| !spot.is_copy)
        .filter_map(|spot| {
            let component = house.home.components.get(spot.place)?;
            let sign = signs.get(&spot.place)?.clone();
            let from = spot.parent.and_then(|parent| drawn.spots.get(parent));
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

/// The sign of each device: its tag, or a number where it has none.
fn signs(house: &House<'_>, drawn: &Schematic) -> BTreeMap<usize, Sign> {
    let mut untagged = 0_u32;
    let mut signs = BTreeMap::new();
    for spot in &drawn.spots {
        let Some(component) = house.home.components.get(spot.place) else { continue };
        if is_plain(component) || signs.contains_key(&spot.place) {
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
    fn out(
        house: &House<'_>,
        drawn: &Schematic,
        sort: Sort,
        signs: &BTreeMap<usize, Sign>,
    ) -> Self {
        let bands = drawn.floors.iter().map(|floor| {
            let level = floor.level.as_deref().and_then(|id| house.home.level(id));
            let name = match level {
                Some(level) => level.name.clone(),
                None if sort == Sort::Power => String::new(),
                None => house.text("paper-outdoors"),
            };
            (name, floor.top, floor.rows)
        });
        let nodes = drawn
            .spots
            .iter()
            .map(|spot| (spot.column, spot.row, signs.get(&spot.place).cloned(), spot.is_copy));
        let lines = drawn.spots.iter().filter_map(|spot| {
            let parent = drawn.spots.get(spot.parent?)?;
            let dashed = matches!(spot.carries, Some(Medium::HotWater | Medium::Vent));
            Some(((parent.column, parent.row), (spot.column, spot.row), dashed))
        });
        Self {
            columns: drawn.columns,
            rows: drawn.rows,
            bands: bands.collect(),
            nodes: nodes.collect(),
            lines: lines.collect(),
        }
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

    #[test]
    fn a_room_narrower_than_a_column_holds_one() {
        assert_eq!(fitting(1.0, COLUMN), 1);
        assert_eq!(fitting(COLUMN * 3.5, COLUMN), 3);
    }
}
