//! The directory of each panel: every circuit with its specific purpose, spares named, in the order
//! in which the poles lie in the panel.
//!
//! What it must tell: NFPA 70 (National Electrical Code), 408.4(A), circuit directory. Odd spaces on
//! the left and even ones on the right are how panels of North America are numbered (common
//! practice); boards elsewhere are numbered in one row.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_guidance::fill;
use quarterturn_home::{Component, Kind, Medium, Units};
use serde::Serialize;
use serde_json::{Value, json};

use crate::house::House;
use crate::sign::Sign;

/// A panel with its circuits.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Directory {
    name: String,
    sign: Sign,
    whereabouts: String,
    rating: Option<String>,
    note: Option<String>,
    /// What cuts the whole panel, and circuits whose place in it is not known.
    apart: Vec<Circuit>,
    /// True for odd spaces on the left and even ones on the right.
    two_sides: bool,
    rows: Vec<Row>,
}

/// A circuit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct Circuit {
    sign: Sign,
    /// As the panel numbers it.
    circuit: String,
    purpose: String,
    feeds: String,
    rating: Option<String>,
    /// The ground-fault devices on it or before it.
    protection: Option<String>,
    note: Option<String>,
    /// True if the map has nothing on it.
    spare: bool,
}

/// A row of the panel: a space on each side, or one space alone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct Row {
    left: Side,
    right: Option<Side>,
}

/// A space in the panel.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct Side {
    number: u32,
    /// What lies in it; `None` if a breaker that begins above reaches into it.
    cell: Option<Cell>,
}

/// What lies in a space, and in how many rows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct Cell {
    rows: u32,
    circuits: Vec<Circuit>,
}

/// The data of the sheet. `None` if the home has no panel.
pub(crate) fn gather(house: &House<'_>) -> Option<Value> {
    let panels = directories(house);
    let words = labels(house);
    (!panels.is_empty()).then(|| json!({ "panels": panels, "words": words }))
}

/// What the template of a directory says.
pub(crate) fn labels(house: &House<'_>) -> BTreeMap<&'static str, String> {
    house.labels(&[
        "paper-panel-empty",
        "paper-panel-spare",
        "paper-panel-apart",
        "paper-panel-number",
        "paper-panel-circuit",
    ])
}

/// The directories of all panels, in the order of the file.
pub(crate) fn directories(house: &House<'_>) -> Vec<Directory> {
    let panels = house.home.components.iter().filter(|c| c.kind == Kind::Panel);
    panels.map(|panel| directory(house, panel)).collect()
}

/// Spaces beyond this are a slip of the pen.
const MOST_SPACES: u32 = 120;

fn directory(house: &House<'_>, panel: &Component) -> Directory {
    let two_sides = house.home.units == Units::Us;
    let mut spaces = Spaces { step: if two_sides { 2 } else { 1 }, ..Spaces::default() };
    let mut apart = Vec::new();
    for breaker in breakers(house, panel) {
        let circuit = circuit(house, breaker);
        match numbers(&circuit.circuit) {
            Some(numbers) => spaces.put(&numbers, &circuit),
            None => apart.push(circuit),
        }
    }
    Directory {
        name: panel.name.clone(),
        sign: house.sign(panel),
        whereabouts: house.whereabouts(panel),
        rating: panel.rating_a.map(|amperes| rating(house, amperes)),
        note: panel.note.clone(),
        apart,
        two_sides,
        rows: spaces.rows(two_sides),
    }
}

/// What stands in a panel: what says so, and what can be switched and is fed straight from it.
fn breakers<'a>(house: &House<'a>, panel: &Component) -> Vec<&'a Component> {
    let switches = |component: &Component| {
        matches!(component.kind, Kind::Breaker | Kind::ServiceDisconnect | Kind::TransferSwitch)
    };
    let fed = |component: &Component| {
        house.home.connections.iter().any(|link| {
            link.carries == Medium::Power && link.from == panel.id && link.to == component.id
        })
    };
    house
        .home
        .components
        .iter()
        .filter(|component| match component.panel.as_deref() {
            Some(named) => {
                named == panel.id && component.kind != Kind::Panel && switches(component)
            }
            None => component.kind == Kind::Breaker && fed(component),
        })
        .collect()
}

fn circuit(house: &House<'_>, breaker: &Component) -> Circuit {
    let off = house.goes_off(breaker);
    let spare = !house
        .home
        .connections
        .iter()
        .any(|link| link.carries == Medium::Power && link.from == breaker.id);
    Circuit {
        sign: house.sign(breaker),
        circuit: breaker.circuit.clone().unwrap_or_default(),
        purpose: breaker.name.clone(),
        feeds: if off.is_empty() { String::new() } else { house.few(&off) },
        rating: breaker.rating_a.map(|amperes| rating(house, amperes)),
        protection: protection(house, breaker),
        note: breaker.note.clone(),
        spare,
    }
}

fn rating(house: &House<'_>, amperes: f64) -> String {
    house.words.fill("paper-amperes", &[quarterturn_guidance::count("amperes", amperes)])
}

/// The ground-fault devices that protect a circuit, or a part of it.
fn protection(house: &House<'_>, breaker: &Component) -> Option<String> {
    let after = devices_along(house, breaker, true);
    let before = devices_along(house, breaker, false);
    let told = |key: &str, devices: &[&Component]| {
        let named: Vec<String> = devices.iter().map(|device| house.named(device)).collect();
        house.words.fill(key, &[fill("list", &house.words.list(&named))])
    };
    if !before.is_empty() {
        Some(told("paper-gfci-before", &before))
    } else if !after.is_empty() {
        Some(told("paper-gfci-on", &after))
    } else {
        None
    }
}

/// The ground-fault devices on the way on from a breaker, as far as the next panel or breaker, or on
/// the way back from it.
fn devices_along<'a>(house: &House<'a>, breaker: &Component, onwards: bool) -> Vec<&'a Component> {
    let mut found = Vec::new();
    let mut seen = BTreeSet::from([breaker.id.as_str()]);
    let mut next = vec![breaker.id.as_str()];
    while let Some(at) = next.pop() {
        for link in house.home.connections.iter().filter(|l| l.carries == Medium::Power) {
            let (here, there) =
                if onwards { (&link.from, &link.to) } else { (&link.to, &link.from) };
            if here != at || !seen.insert(there.as_str()) {
                continue;
            }
            let Some(component) = house.home.component(there) else { continue };
            if component.kind == Kind::Gfci {
                found.push(component);
            }
            let ends = matches!(
                component.kind,
                Kind::Panel | Kind::Breaker | Kind::ServiceDisconnect | Kind::ElectricityMeter
            );
            if !ends {
                next.push(there.as_str());
            }
        }
    }
    found.sort_by_key(|component| house.places.of(&component.id));
    found
}

/// The spaces that a circuit's number names: `9,11,13`, `1-3`, `4A`. `None` if it names none.
fn numbers(circuit: &str) -> Option<Vec<u32>> {
    let digits = circuit.split(|letter: char| !letter.is_ascii_digit());
    let mut list: Vec<u32> = digits
        .filter_map(|part| part.parse().ok())
        .filter(|number| (1..=MOST_SPACES).contains(number))
        .collect();
    list.dedup();
    // A word with a number in it, such as a name, is no number of a space.
    let words = circuit
        .split_whitespace()
        .any(|word| word.chars().filter(|c| c.is_alphabetic()).count() > 1);
    (!list.is_empty() && !words).then_some(list)
}

/// The spaces of a panel, as they fill.
#[derive(Debug, Default)]
struct Spaces {
    /// From a space to the one below it on the same side.
    step: u32,
    cells: BTreeMap<u32, Cell>,
    /// For each space that is taken, the space in which its breaker begins.
    taken: BTreeMap<u32, u32>,
}

impl Spaces {
    fn put(&mut self, numbers: &[u32], circuit: &Circuit) {
        for run in self.runs(numbers) {
            let held = run.iter().find_map(|number| self.taken.get(number).copied());
            match (held, run.first()) {
                // Two breakers in one space: tandem breakers, or a slip of the pen. Both are shown.
                (Some(start), _) => {
                    if let Some(cell) = self.cells.get_mut(&start) {
                        cell.circuits.push(circuit.clone());
                    }
                }
                (None, Some(&start)) => {
                    let rows = u32::try_from(run.len()).unwrap_or(1);
                    let cell = Cell { rows, circuits: vec![circuit.clone()] };
                    self.cells.insert(start, cell);
                    self.taken.extend(run.iter().map(|&number| (number, start)));
                }
                (None, None) => {}
            }
        }
    }

    /// Spaces that lie one below the other, taken together.
    fn runs(&self, numbers: &[u32]) -> Vec<Vec<u32>> {
        let mut sorted = numbers.to_vec();
        sorted.sort_unstable();
        let mut runs: Vec<Vec<u32>> = Vec::new();
        for number in sorted {
            let follows =
                |run: &&mut Vec<u32>| run.last() == number.checked_sub(self.step).as_ref();
            match runs.iter_mut().find(follows) {
                Some(run) => run.push(number),
                None => runs.push(vec![number]),
            }
        }
        runs
    }

    fn rows(mut self, two_sides: bool) -> Vec<Row> {
        let last = self.taken.keys().next_back().copied().unwrap_or_default();
        let mut side = |number: u32| {
            let empty = Cell { rows: 1, circuits: Vec::new() };
            let is_below = self.taken.get(&number).is_some_and(|&start| start != number);
            let cell = self.cells.remove(&number).or((!is_below).then_some(empty));
            Side { number, cell }
        };
        if two_sides {
            let pairs = (1..=last).step_by(2);
            pairs.map(|n| Row { left: side(n), right: Some(side(n + 1)) }).collect()
        } else {
            (1..=last).map(|n| Row { left: side(n), right: None }).collect()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::System;

    fn named(purpose: &str) -> Circuit {
        Circuit {
            sign: Sign { system: System::Power, tag: String::new() },
            circuit: String::new(),
            purpose: purpose.to_owned(),
            feeds: String::new(),
            rating: None,
            protection: None,
            note: None,
            spare: false,
        }
    }

    #[test]
    fn the_number_of_a_circuit_is_read_as_panels_write_it() {
        assert_eq!(numbers("9,11,13"), Some(vec![9, 11, 13]));
        assert_eq!(numbers("1-3"), Some(vec![1, 3]));
        assert_eq!(numbers("4A"), Some(vec![4]));
        assert_eq!(numbers("main"), None);
        assert_eq!(numbers("range block 2"), None);
        assert_eq!(numbers(""), None);
        assert_eq!(numbers("99999"), None);
    }

    #[test]
    fn a_two_pole_breaker_takes_two_rows_of_its_side_and_gaps_are_empty_spaces() {
        let mut spaces = Spaces { step: 2, ..Spaces::default() };
        spaces.put(&[1, 3], &named("range"));
        spaces.put(&[4], &named("lights"));
        spaces.put(&[4], &named("tandem"));
        let rows = spaces.rows(true);
        assert_eq!(rows.len(), 2);
        let cell = |side: &Side| side.cell.clone().map(|cell| (cell.rows, cell.circuits.len()));
        assert_eq!(cell(&rows[0].left), Some((2, 1)));
        assert_eq!(cell(&rows[1].left), None);
        assert_eq!(cell(rows[0].right.as_ref().unwrap()), Some((1, 0)));
        assert_eq!(cell(rows[1].right.as_ref().unwrap()), Some((1, 2)));
    }

    #[test]
    fn poles_on_both_sides_are_shown_on_both_sides() {
        let mut spaces = Spaces { step: 2, ..Spaces::default() };
        spaces.put(&[1, 2], &named("odd one"));
        let rows = spaces.rows(true);
        assert_eq!(rows.len(), 1);
        assert!(rows.iter().all(|row| row.left.cell.is_some() && row.right.is_some()));
    }
}
