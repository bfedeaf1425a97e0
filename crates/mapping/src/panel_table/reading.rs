//! A table while it is being read: its columns, its panels, and what each row says.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Home, Kind};

use super::rows::told;
use super::{Import, ImportTo};
use crate::circuit_text::{CircuitText, poles, rating};
use crate::columns::{Column, Guess, Layout};
use crate::said::Said;
use crate::sets::slug;
use crate::table::Row;
use crate::tags::Tags;
use crate::words::{folded, is, says};

/// A side of a row: one circuit and what belongs to it.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Side {
    pub(super) circuit: Option<usize>,
    pub(super) rating: Option<usize>,
    pub(super) poles: Option<usize>,
    pub(super) serves: Option<usize>,
}

/// A circuit while it is being gathered.
pub(super) struct Gathered {
    pub(super) panel: String,
    pub(super) text: CircuitText,
    pub(super) serves: Option<String>,
    pub(super) rating_a: Option<f64>,
    pub(super) poles: Option<u32>,
    pub(super) rows: Vec<usize>,
    /// Things on it, by place in the import's components.
    pub(super) things: Vec<usize>,
}

/// A table on its way onto the map.
pub(super) struct Reading<'a> {
    pub(super) home: &'a Home,
    pub(super) guess: &'a Guess,
    pub(super) into: &'a ImportTo,
    pub(super) words: &'a Catalogue,
    pub(super) sides: Vec<Side>,
    /// Panel ids by what the table calls them, folded.
    pub(super) panels: BTreeMap<String, String>,
    /// Panels that are no panels of breakers.
    pub(super) alarm_panels: BTreeSet<String>,
    pub(super) ids: BTreeSet<String>,
    pub(super) tags: Tags,
    pub(super) circuits: Vec<Gathered>,
    pub(super) import: Import,
}

impl<'a> Reading<'a> {
    pub(super) fn new(
        home: &'a Home,
        guess: &'a Guess,
        into: &'a ImportTo,
        words: &'a Catalogue,
    ) -> Self {
        let all = |wanted: Column| -> Vec<usize> {
            guess
                .columns
                .iter()
                .enumerate()
                .filter(|(_, c)| **c == wanted)
                .map(|(at, _)| at)
                .collect()
        };
        let (ratings, poles, serves) =
            (all(Column::Rating), all(Column::Poles), all(Column::Serves));
        let circuits = all(Column::Circuit);
        let many = circuits.len().max(1);
        let sides = (0..many)
            .map(|side| {
                let of =
                    |list: &[usize]| list.get(side).or(list.first().filter(|_| many == 1)).copied();
                Side {
                    circuit: of(&circuits),
                    rating: of(&ratings),
                    poles: of(&poles),
                    serves: of(&serves),
                }
            })
            .collect();
        let ids = home
            .components
            .iter()
            .map(|c| c.id.clone())
            .chain(home.spaces.iter().map(|s| s.id.clone()))
            .chain(home.connections.iter().filter_map(|c| c.id.clone()))
            .collect();
        Self {
            home,
            guess,
            into,
            words,
            sides,
            panels: BTreeMap::new(),
            alarm_panels: BTreeSet::new(),
            ids,
            tags: Tags::of(home),
            circuits: Vec::new(),
            import: Import::default(),
        }
    }

    /// The first column of a meaning, in a row.
    pub(super) fn text<'r>(&self, row: &'r Row, column: Column) -> &'r str {
        let at = self.guess.columns.iter().position(|c| *c == column);
        at.and_then(|at| row.cells.get(at)).map_or("", |cell| cell.text.as_str())
    }

    /// All columns of a meaning, in a row.
    pub(super) fn texts(&self, row: &Row, column: Column) -> String {
        let cells = self.guess.columns.iter().zip(&row.cells).filter(|(c, _)| **c == column);
        cells.map(|(_, cell)| cell.text.as_str()).collect::<Vec<_>>().join(" ")
    }

    /// The panels that the table speaks of: those the home has, and new ones.
    pub(super) fn find_panels(&mut self, rows: &[Row]) {
        let mut names: Vec<&str> = Vec::new();
        for row in rows {
            let name = self.text(row, Column::Panel);
            if !name.is_empty() && !is(name, "words-unknown") && !names.contains(&name) {
                names.push(name);
            }
        }
        for name in names {
            self.panel(name);
        }
    }

    /// The id of the panel of that name; a new one if there is none.
    fn panel(&mut self, name: &str) -> String {
        let key = folded(name);
        if let Some(id) = self.panels.get(&key) {
            return id.clone();
        }
        let known = self.home.components.iter().find(|c| {
            matches!(c.kind, Kind::Panel | Kind::Other) && (c.id == name || folded(&c.name) == key)
        });
        let alarm = says(name, "words-alarm");
        let id = if let Some(known) = known {
            known.id.clone()
        } else {
            let id = self.free_id(&slug(name), "panel");
            let kind = if alarm { Kind::Other } else { Kind::Panel };
            let mut panel = Component::new(&id, kind, name);
            panel.tag = self.tags.next(kind);
            panel.space.clone_from(&self.into.space);
            self.import.components.push(panel);
            id
        };
        if alarm {
            self.alarm_panels.insert(id.clone());
        }
        self.panels.insert(key, id.clone());
        id
    }

    pub(super) fn free_id(&mut self, wanted: &str, otherwise: &str) -> String {
        let base = if wanted.is_empty() { otherwise } else { wanted };
        let id = (1_u32..)
            .map(|n| if n == 1 { base.to_owned() } else { format!("{base}-{n}") })
            .find(|id| !self.ids.contains(id))
            .unwrap_or_default();
        self.ids.insert(id.clone());
        id
    }

    pub(super) fn row(&mut self, row: &Row) {
        if row.is_blank() {
            self.leave(row, Said::new("import-blank"));
            return;
        }
        let itself = self.text(row, Column::PanelItself);
        if self.guess.layout == Layout::Things
            && self.panels.contains_key(&folded(itself))
            && !itself.is_empty()
        {
            self.import.panels.push(row.number);
            return;
        }
        let sides = self.sides.clone();
        if self.guess.layout == Layout::Things {
            let side = sides.first().copied().unwrap_or_default();
            self.thing(row, side);
            return;
        }
        for (place, side) in sides.into_iter().enumerate() {
            let here = [side.circuit, side.serves, side.rating, side.poles];
            let blank = here.iter().flatten().all(|&at| {
                row.cells.get(at).is_none_or(|cell| cell.text.is_empty() && cell.odd.is_none())
            });
            // The other side of a panel may end sooner.
            if blank && (place > 0 || self.sides.len() > 1) {
                continue;
            }
            self.entry(row, side);
        }
    }

    /// The panel of a row: as it says, else as was wished, else a new one.
    pub(super) fn panel_of(&mut self, name: &str) -> String {
        if !name.is_empty() && !is(name, "words-unknown") {
            return self.panel(name);
        }
        match &self.into.panel {
            Some(id) if self.home.component(id).is_some() => id.clone(),
            _ => {
                let name = self.words.text("import-new-panel");
                self.panel(&name)
            }
        }
    }

    pub(super) fn rating(&mut self, row: &Row, text: &str) -> (Option<f64>, Option<u32>) {
        if text.is_empty() || is(text, "words-unknown") || text == "-" {
            return (None, None);
        }
        match rating(text) {
            Some((amps, poles)) => (Some(amps), poles),
            None => {
                self.doubt(row, Said::new("import-not-a-rating").with("value", text));
                (None, None)
            }
        }
    }

    pub(super) fn poles(&mut self, row: &Row, text: &str) -> Option<u32> {
        if text.is_empty() || is(text, "words-unknown") || text == "-" {
            return None;
        }
        let found = poles(text);
        if found.is_none() {
            self.doubt(row, Said::new("import-not-poles").with("value", text));
        }
        found
    }

    /// Puts a thing into the room that the table names, if the home has it; else into its note.
    pub(super) fn place(&self, component: &mut Component, room: &str) {
        if room.is_empty() {
            return;
        }
        let key = folded(room);
        let space = self.home.spaces.iter().find(|s| folded(&s.name) == key || s.id == room);
        match space {
            Some(space) => component.space = Some(space.id.clone()),
            None => {
                let note = self.words.fill("import-note-place", &[fill("place", room)]);
                component.note = Some(note);
            }
        }
    }

    pub(super) fn leave(&mut self, row: &Row, why: Said) {
        self.import.left.push(told(row, why));
    }

    pub(super) fn doubt(&mut self, row: &Row, why: Said) {
        self.import.doubts.push(told(row, why));
    }
}
