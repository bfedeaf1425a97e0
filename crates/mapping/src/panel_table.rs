//! A panel directory from a table onto the map.
//!
//! Nothing is dropped silently: each row is a circuit, a thing on a circuit, a thing whose circuit
//! nobody knows, or it is listed with the reason why it is none of these.

mod breakers;
mod reading;
mod rows;
#[cfg(test)]
mod tests;

use quarterturn_guidance::Catalogue;
use quarterturn_home::{Component, Connection, Edit, Home};

use self::reading::Reading;
use crate::columns::Guess;
use crate::said::Said;
use crate::table::Table;

/// Where a directory without a column for the panel belongs.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ImportTo {
    /// Id of the panel; `None` for a new one.
    pub panel: Option<String>,
    /// Id of the space that a new panel stands in.
    pub space: Option<String>,
}

/// What a table becomes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Import {
    /// New components, and old ones with what the table adds to them.
    pub components: Vec<Component>,
    /// New lines.
    pub connections: Vec<Connection>,
    /// The circuits, in the order in which they first stand in the table.
    pub circuits: Vec<Circuit>,
    /// Rows of things that are taken in, but whose circuit nobody knows.
    pub unknown: Vec<RowNote>,
    /// Rows that are not used.
    pub left: Vec<RowNote>,
    /// Values that were not understood, in rows that are used.
    pub doubts: Vec<RowNote>,
    /// Numbers of the rows that are panels themselves.
    pub panels: Vec<usize>,
}

/// A circuit of a table.
#[derive(Debug, Clone, PartialEq)]
pub struct Circuit {
    /// Id of its panel.
    pub panel: String,
    /// Its number as the table writes it.
    pub circuit: String,
    /// Id of its breaker; `None` where it is a loop of an alarm panel, which has none.
    pub breaker: Option<String>,
    /// Numbers of the rows that tell of it.
    pub rows: Vec<usize>,
}

/// A row, and what there is to say about it.
#[derive(Debug, Clone, PartialEq)]
pub struct RowNote {
    /// Its number in the file.
    pub row: usize,
    /// What it holds, for finding it again.
    pub text: String,
    /// Why it is told.
    pub why: Said,
}

impl Import {
    /// The edits that put it on the map.
    #[must_use]
    pub fn edits(&self) -> Vec<Edit> {
        let components = self.components.iter().cloned().map(Box::new).map(Edit::PutComponent);
        let lines = self.connections.iter().cloned().map(Box::new).map(Edit::Connect);
        components.chain(lines).collect()
    }
}

/// Reads a table as a guess says, perhaps one that a person has changed.
#[must_use]
pub fn import(
    home: &Home,
    table: &Table,
    guess: &Guess,
    into: &ImportTo,
    words: &Catalogue,
) -> Import {
    let mut reading = Reading::new(home, guess, into, words);
    let rows = guess.rows(table);
    reading.find_panels(rows);
    for row in rows {
        reading.row(row);
    }
    reading.finish()
}
