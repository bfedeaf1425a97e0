//! The places of a panel, and what stands in each.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_home::{Component, Home, Medium};

use super::numbers::{MOST, Numbering, label, numbering, places};
use super::standing::{MAIN, mains, of_panel};

/// Places of a panel of which no breaker is known. Common practice, no source.
const USUAL: u32 = 24;
/// The same of a board that is numbered in one row.
const USUAL_IN_A_ROW: u32 = 12;
/// What stands in a place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Holds<'h> {
    /// Nothing.
    Nothing,
    /// A breaker, which begins here.
    Breaker(&'h Component),
    /// A part of a breaker that begins elsewhere.
    Part(&'h Component),
}

/// What is wrong with the number of a breaker.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Wrong {
    /// Another has it too.
    Twice {
        /// The place.
        number: String,
        /// Name of the other.
        other: String,
    },
    /// It has more poles than there is room for.
    NoRoom {
        /// The place that is taken.
        number: String,
        /// Name of who takes it.
        other: String,
    },
    /// It has none.
    NoNumber,
}

/// A row of the panel.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row<'h> {
    /// What it is known by while things are typed into it.
    pub(super) key: String,
    /// Its number as the panel writes it; empty if it has none.
    pub(super) label: String,
    pub(super) holds: Holds<'h>,
    /// The places that it takes, downwards; none for what has no place.
    pub(super) places: Vec<u32>,
    pub(super) wrong: Vec<Wrong>,
}

/// A panel with its places.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Board<'h> {
    pub(super) panel: &'h Component,
    pub(super) numbering: Numbering,
    /// What cuts the whole panel; empty if it is fed by something that does not.
    pub(super) main: Vec<Row<'h>>,
    /// What feeds the panel and does not stand in it.
    pub(super) fed_by: Vec<&'h Component>,
    pub(super) left: Vec<Row<'h>>,
    pub(super) right: Vec<Row<'h>>,
    /// Breakers whose number names no place.
    pub(super) apart: Vec<Row<'h>>,
    /// How many places are shown.
    pub(super) count: u32,
    /// How many there are at least.
    pub(super) least: u32,
    taken: BTreeMap<u32, Vec<&'h Component>>,
}

impl<'h> Row<'h> {
    /// The breaker that is written here.
    pub(super) fn breaker(&self) -> Option<&'h Component> {
        match self.holds {
            Holds::Breaker(breaker) => Some(breaker),
            Holds::Nothing | Holds::Part(_) => None,
        }
    }

    /// True for what cuts the whole panel.
    pub(super) fn is_main(&self) -> bool {
        self.key == MAIN || self.key.starts_with("main/")
    }

    /// True if something can be typed here.
    pub(super) fn is_typed_in(&self) -> bool {
        !matches!(self.holds, Holds::Part(_))
    }

    /// How many places high it is.
    pub(super) fn height(&self) -> usize {
        self.places.len().max(1)
    }

    /// The first of its numbers, by which a spare is called.
    pub(super) fn first_label(&self) -> &str {
        self.label.split(',').next().unwrap_or_default()
    }
}

impl<'h> Board<'h> {
    /// A panel with at least as many places as are wanted.
    pub(super) fn of(home: &'h Home, panel: &'h Component, wanted: Option<u32>) -> Self {
        let (main, fed_by) = mains(home, panel);
        let breakers: Vec<&Component> = of_panel(home, panel)
            .into_iter()
            .filter(|b| !main.iter().any(|m| m.id == b.id))
            .collect();
        let numbering = numbering(home, &breakers);
        let mut board = Self {
            panel,
            numbering,
            main: main_rows(&main, &fed_by),
            fed_by,
            left: Vec::new(),
            right: Vec::new(),
            apart: Vec::new(),
            count: 0,
            least: 0,
            taken: BTreeMap::new(),
        };
        let placed = board.place(&breakers);
        let highest = board.taken.keys().last().copied().unwrap_or_default();
        board.least = highest;
        let usual = match numbering {
            _ if !breakers.is_empty() => highest,
            Numbering::Sides => USUAL,
            Numbering::InARow | Numbering::Letters => USUAL_IN_A_ROW,
        };
        board.count = wanted.unwrap_or(usual).max(highest);
        let last = if numbering == Numbering::Letters { 26 } else { MOST };
        board.count = board.count.min(last);
        if numbering == Numbering::Sides {
            board.count = board.count.next_multiple_of(2);
            board.least = board.least.next_multiple_of(2);
        }
        let count = board.count;
        let (left, right): (Vec<u32>, Vec<u32>) = match numbering {
            Numbering::Sides => (1..=count).partition(|n| n % 2 == 1),
            _ if count > USUAL_IN_A_ROW => (1..=count).partition(|n| *n <= count.div_ceil(2)),
            _ => ((1..=count).collect(), Vec::new()),
        };
        board.left = board.side(&left, &placed);
        board.right = board.side(&right, &placed);
        board.apart = apart(&breakers, &placed);
        board
    }

    /// The rows in the order in which one goes through them.
    pub(super) fn rows(&self) -> impl DoubleEndedIterator<Item = &Row<'h>> {
        self.main.iter().chain(&self.left).chain(&self.right).chain(&self.apart)
    }

    /// The row that is known by this.
    pub(super) fn row(&self, key: &str) -> Option<&Row<'h>> {
        self.rows().find(|row| row.key == key)
    }

    /// The row where a breaker is written.
    pub(super) fn row_of(&self, id: &str) -> Option<&Row<'h>> {
        self.rows().find(|row| row.breaker().is_some_and(|breaker| breaker.id == id))
    }

    /// The row below, or above, that can be typed in.
    pub(super) fn beside(&self, key: &str, is_below: bool) -> Option<&Row<'h>> {
        let is_typed_in = |row: &&Row<'h>| row.is_typed_in();
        if is_below {
            self.rows().skip_while(|row| row.key != key).skip(1).find(is_typed_in)
        } else {
            self.rows().rev().skip_while(|row| row.key != key).skip(1).find(is_typed_in)
        }
    }

    /// Who stands in a place, other than the breaker with this id.
    pub(super) fn holder(&self, place: u32, but: &str) -> Option<&'h Component> {
        self.taken.get(&place)?.iter().find(|breaker| breaker.id != but).copied()
    }

    /// A place as the panel writes it.
    pub(super) fn label(&self, place: u32) -> String {
        label(self.numbering, place)
    }

    /// The places that a number names.
    pub(super) fn places(&self, number: &str) -> Vec<u32> {
        places(self.numbering, number)
    }

    /// The circuits that nothing known hangs on.
    pub(super) fn idle(&self, home: &Home) -> usize {
        let feeds =
            |id: &str| home.connections.iter().any(|l| l.carries == Medium::Power && l.from == id);
        let rows = self.rows().filter(|row| !row.is_main());
        rows.filter_map(Row::breaker).filter(|breaker| !feeds(&breaker.id)).count()
    }

    /// Finds the places of each breaker, with those that its poles take besides its number.
    fn place(&mut self, breakers: &[&'h Component]) -> Vec<Placed<'h>> {
        let number = |b: &Component| b.circuit.clone().unwrap_or_default();
        let mut placed: Vec<Placed<'h>> = Vec::new();
        for breaker in breakers {
            let places = places(self.numbering, &number(breaker));
            for place in &places {
                self.taken.entry(*place).or_default().push(*breaker);
            }
            placed.push(Placed { breaker, places, no_room: None });
        }
        for one in &mut placed {
            let poles = one.breaker.poles.unwrap_or(1);
            let is_plain = number(one.breaker).trim().chars().all(|c| c.is_ascii_digit());
            let [first] = one.places.as_slice() else { continue };
            if self.numbering != Numbering::Sides || !is_plain {
                continue;
            }
            for place in (1..poles).map(|pole| first.saturating_add(2 * pole)).collect::<Vec<_>>() {
                if let Some(other) = self.holder(place, &one.breaker.id) {
                    one.no_room = Some((place, other.name.clone()));
                    break;
                }
                if place <= MOST {
                    one.places.push(place);
                    self.taken.entry(place).or_default().push(one.breaker);
                }
            }
        }
        placed
    }

    /// The rows of a side, downwards.
    fn side(&self, side: &[u32], placed: &[Placed<'h>]) -> Vec<Row<'h>> {
        let mut rows = Vec::new();
        let mut drawn: BTreeSet<u32> = BTreeSet::new();
        for (at, place) in side.iter().enumerate() {
            let begin = placed.iter().filter(|one| one.places.first() == Some(place));
            let mut is_first = true;
            for one in begin {
                // As far as it reaches downwards without a gap.
                let below = side.iter().skip(at);
                let run: Vec<u32> =
                    below.take_while(|place| one.places.contains(place)).copied().collect();
                drawn.extend(&run);
                let name = self.label(*place);
                let key = if is_first { name } else { format!("{name}/{}", one.breaker.id) };
                is_first = false;
                let wrong = self.wrong(one);
                let label = one.label(self.numbering);
                rows.push(Row {
                    key,
                    label,
                    holds: Holds::Breaker(one.breaker),
                    places: run,
                    wrong,
                });
            }
            if is_first && !drawn.contains(place) {
                let part = placed.iter().find(|one| one.places.contains(place));
                let holds = part.map_or(Holds::Nothing, |one| Holds::Part(one.breaker));
                let label = self.label(*place);
                let key = label.clone();
                rows.push(Row { key, label, holds, places: vec![*place], wrong: Vec::new() });
            }
        }
        rows
    }

    fn wrong(&self, one: &Placed<'h>) -> Vec<Wrong> {
        // Two breakers of half the width in one place have a letter each.
        let has_letter = |b: &Component| {
            b.circuit.as_deref().is_some_and(|text| text.chars().any(char::is_alphabetic))
        };
        let is_half = self.numbering == Numbering::Sides && has_letter(one.breaker);
        let mut wrong = Vec::new();
        for place in &one.places {
            let others = self.taken.get(place).into_iter().flatten();
            let mut others = others.filter(|other| other.id != one.breaker.id);
            let other = others.find(|other| {
                !(is_half && has_letter(other) && other.circuit != one.breaker.circuit)
            });
            if let Some(other) = other {
                wrong.push(Wrong::Twice { number: self.label(*place), other: other.name.clone() });
            }
        }
        if let Some((place, other)) = &one.no_room {
            wrong.push(Wrong::NoRoom { number: self.label(*place), other: other.clone() });
        }
        wrong
    }
}

/// A breaker with its places.
struct Placed<'h> {
    breaker: &'h Component,
    places: Vec<u32>,
    /// A place that its poles would take, and who is there.
    no_room: Option<(u32, String)>,
}

impl Placed<'_> {
    fn label(&self, numbering: Numbering) -> String {
        let number = self.breaker.circuit.clone().unwrap_or_default();
        if self.places.len() > 1 {
            let labels: Vec<String> = self.places.iter().map(|p| label(numbering, *p)).collect();
            return labels.join(",");
        }
        number.trim().to_owned()
    }
}

fn main_rows<'h>(mains: &[&'h Component], fed_by: &[&Component]) -> Vec<Row<'h>> {
    let row = |key: String, holds| Row {
        key,
        label: String::new(),
        holds,
        places: Vec::new(),
        wrong: Vec::new(),
    };
    if mains.is_empty() && fed_by.is_empty() {
        return vec![row(MAIN.to_owned(), Holds::Nothing)];
    }
    let key = |at: usize, id: &str| if at == 0 { MAIN.to_owned() } else { format!("main/{id}") };
    let mains = mains.iter().enumerate();
    mains.map(|(at, main)| row(key(at, &main.id), Holds::Breaker(main))).collect()
}

/// Those whose number names no place, by what it is; those without any at the end.
fn apart<'h>(breakers: &[&'h Component], placed: &[Placed<'h>]) -> Vec<Row<'h>> {
    let is_placed =
        |id: &str| placed.iter().any(|one| one.breaker.id == id && !one.places.is_empty());
    let mut rows: Vec<Row<'h>> = breakers
        .iter()
        .filter(|breaker| !is_placed(&breaker.id))
        .map(|breaker| {
            let label = breaker.circuit.as_deref().unwrap_or_default().trim().to_owned();
            let wrong = if label.is_empty() { vec![Wrong::NoNumber] } else { Vec::new() };
            let key = format!("id/{}", breaker.id);
            Row { key, label, holds: Holds::Breaker(breaker), places: Vec::new(), wrong }
        })
        .collect();
    rows.sort_by_key(|row| (row.label.is_empty(), row.label.clone()));
    rows
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::map::panel::standing::panels;
    use quarterturn_home::{Connection, Kind, Units};

    /// A panel with breakers of these numbers and poles.
    fn home(units: Units, breakers: &[(&str, u32)]) -> Home {
        let mut home = Home { units, ..Home::default() };
        home.components.push(Component::new("panel", Kind::Panel, "Panel"));
        for (at, (number, poles)) in breakers.iter().enumerate() {
            let mut breaker = Component::new(&format!("b{at}"), Kind::Breaker, &format!("B{at}"));
            breaker.circuit = Some((*number).to_owned()).filter(|number| !number.is_empty());
            breaker.panel = Some("panel".to_owned());
            breaker.poles = Some(*poles);
            home.components.push(breaker);
        }
        home
    }

    fn rows(side: &[Row<'_>]) -> Vec<String> {
        let told = |row: &Row<'_>| match row.holds {
            Holds::Nothing => row.label.clone(),
            Holds::Breaker(b) => format!("{}={}*{}", row.label, b.id, row.height()),
            Holds::Part(b) => format!("{}<{}", row.label, b.id),
        };
        side.iter().map(told).collect()
    }

    fn board(home: &Home, wanted: Option<u32>) -> Board<'_> {
        Board::of(home, home.component("panel").unwrap(), wanted)
    }

    #[test]
    fn odd_places_stand_on_the_left_and_two_poles_take_two() {
        let home = home(Units::Us, &[("1,3", 2), ("2", 2), ("7", 1), ("6A", 1), ("6B", 1)]);
        let board = board(&home, Some(8));
        assert_eq!(rows(&board.left), ["1,3=b0*2", "5", "7=b2*1"]);
        assert_eq!(rows(&board.right), ["2,4=b1*2", "6A=b3*1", "6B=b4*1", "8"]);
        assert!(board.rows().all(|row| row.wrong.is_empty()), "{board:?}");
        assert_eq!((board.least, board.count), (8, 8));
        let below = |key: &str| board.beside(key, true).map(|row| row.key.clone());
        assert_eq!(below("1").as_deref(), Some("5"));
        assert_eq!(below("7").as_deref(), Some("2"));
        assert_eq!(below("8"), None);
        assert_eq!(board.beside("2", false).map(|row| row.key.as_str()), Some("7"));
        assert_eq!(board.beside("1", false).map(|row| row.key.as_str()), Some(MAIN));
    }

    #[test]
    fn numbers_that_collide_or_are_missing_are_told() {
        let home =
            home(Units::Us, &[("5", 2), ("7", 1), ("9", 1), ("9", 1), ("", 1), ("block", 1)]);
        let board = board(&home, None);
        let wrong = |id: &str| board.row_of(id).unwrap().wrong.clone();
        let other = |other: &str| (String::from("9"), other.to_owned());
        let no_room = Wrong::NoRoom { number: "7".to_owned(), other: "B1".to_owned() };
        assert_eq!(wrong("b0"), [no_room]);
        let (number, name) = other("B3");
        assert_eq!(wrong("b2"), [Wrong::Twice { number, other: name }]);
        let (number, name) = other("B2");
        assert_eq!(wrong("b3"), [Wrong::Twice { number, other: name }]);
        assert_eq!(wrong("b4"), [Wrong::NoNumber]);
        assert_eq!(wrong("b5"), []);
        assert_eq!(rows(&board.apart), ["block=b5*1", "=b4*1"]);
        // Each can be typed into on its own.
        let keys: BTreeSet<&str> = board.rows().map(|row| row.key.as_str()).collect();
        assert_eq!(keys.len(), board.rows().count());
    }

    #[test]
    fn a_board_in_one_row_keeps_its_order_and_its_letters() {
        let numbered = home(Units::Si, &[("2", 3), ("1", 1)]);
        assert_eq!(rows(&board(&numbered, Some(3)).left), ["1=b1*1", "2=b0*1", "3"]);
        let lettered = home(Units::Us, &[("B", 1), ("A", 2)]);
        let lettered = board(&lettered, Some(3));
        assert_eq!(lettered.numbering, Numbering::Letters);
        assert_eq!(rows(&lettered.left), ["A=b1*1", "B=b0*1", "C"]);
        let long = home(Units::Si, &[("14", 1)]);
        let long = board(&long, None);
        assert_eq!((long.left.len(), long.right.len()), (7, 7));
    }

    #[test]
    fn the_main_stands_on_top_and_a_panel_fed_from_elsewhere_says_so() {
        let mut home = home(Units::Us, &[("main", 2), ("2,4", 2), ("1", 1)]);
        assert_eq!(rows(&board(&home, None).main), ["=b0*1"]);
        // A generator's breaker feeds back from its own place.
        home.connections.push(Connection::new("b1", "panel", Medium::Power));
        let fed_back = board(&home, None);
        assert_eq!((fed_back.main.len(), fed_back.fed_by.len()), (1, 0));
        assert_eq!(rows(&fed_back.right), ["2,4=b1*2"]);
        home.components.push(Component::new("sub", Kind::Panel, "Sub"));
        home.connections.push(Connection::new("b2", "sub", Medium::Power));
        let sub = Board::of(&home, home.component("sub").unwrap(), None);
        assert_eq!((sub.main.len(), sub.fed_by.len(), sub.count), (0, 1, 24));
    }

    #[test]
    fn the_examples_find_a_place_for_every_breaker() {
        let homes = [
            include_str!("../../../../../examples/two-storey/home.ron"),
            include_str!("../../../../../examples/flat/home.ron"),
            include_str!("../../../../../examples/old-house/home.ron"),
        ];
        for text in homes {
            let home = quarterturn_home::open("home.ron", text).home.unwrap();
            let breakers = home.components.iter().filter(|c| c.kind == Kind::Breaker).count();
            let shown: usize = panels(&home)
                .map(|panel| {
                    let board = Board::of(&home, panel, None);
                    let wrong: Vec<_> = board.rows().filter(|row| !row.wrong.is_empty()).collect();
                    assert!(wrong.is_empty(), "{wrong:?}");
                    let all = board.rows().filter_map(Row::breaker);
                    all.filter(|b| b.kind == Kind::Breaker).count()
                })
                .sum();
            assert_eq!(shown, breakers, "{}", home.name);
        }
    }
}
