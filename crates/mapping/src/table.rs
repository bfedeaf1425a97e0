//! A table out of bytes: text with separators, or a spreadsheet file.
//!
//! Files come from anywhere, so everything has a limit, and what a cell holds beside text (a formula
//! without a result, an error, a date made of a circuit number) is kept as such and not guessed away.

mod spreadsheet;
#[cfg(test)]
mod tests;
mod text;

use self::spreadsheet::spreadsheet;
use self::text::{decode, text_table};
use crate::said::Said;

/// Largest file, in bytes.
pub const MOST_BYTES: usize = 16 << 20;
/// Most rows. The largest panel board of a house has 84 circuits; a list of all outlets is longer.
pub const MOST_ROWS: usize = 20_000;
/// Most columns.
pub const MOST_COLUMNS: usize = 200;
/// Longest text of a cell that is used, in characters.
pub const MOST_LETTERS: usize = 500;

/// A table, or the sheets of a spreadsheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// How the bytes were read.
    pub form: Form,
    /// Its sheets; text has one, without a name.
    pub sheets: Vec<Sheet>,
}

/// How the bytes of a table were read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// Text with separators.
    Text {
        /// The sign between cells.
        separator: char,
        /// How letters are coded.
        encoding: Encoding,
    },
    /// A spreadsheet in Office Open XML.
    Xlsx,
    /// A spreadsheet in the Open Document format.
    Ods,
}

/// How the letters of a text are coded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Encoding {
    /// Unicode, UTF-8.
    Utf8,
    /// Unicode, UTF-16.
    Utf16,
    /// The Western European code page; letters with accents should be looked at.
    Western,
}

/// One sheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Sheet {
    /// Its name.
    pub name: String,
    /// Its rows, those without anything in them too.
    pub rows: Vec<Row>,
}

/// One row.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Row {
    /// Its number in the file, from 1.
    pub number: usize,
    /// Its cells.
    pub cells: Vec<Cell>,
}

/// One cell.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Cell {
    /// Its text, without blanks around it.
    pub text: String,
    /// What it holds instead of plain text.
    pub odd: Option<Odd>,
}

/// Something in a cell that is no plain text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Odd {
    /// A formula whose result was not saved.
    NoResult,
    /// A formula that failed.
    Error,
    /// A date; often a circuit such as `1-3` that the spreadsheet took for one.
    Date,
    /// More letters than a cell of a panel directory has; cut off.
    TooLong,
}

/// Why a file gives no table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum TableError {
    /// There is nothing in it.
    Empty,
    /// It is larger than any panel directory.
    TooLarge,
    /// It has more rows than any panel directory.
    TooManyRows,
    /// It has more columns than any panel directory.
    TooManyColumns,
    /// It unpacks to more than any panel directory.
    UnpacksTooLarge,
    /// It is a spreadsheet of an older kind, or protected by a password.
    OldOrLocked,
    /// It is no table at all.
    NoTable,
    /// It is a spreadsheet, but damaged.
    Damaged,
}

impl TableError {
    /// What is wrong.
    #[must_use]
    pub fn cause(&self) -> Said {
        let said = |key| {
            Said::new(key)
                .count("rows", MOST_ROWS)
                .count("columns", MOST_COLUMNS)
                .count("megabytes", MOST_BYTES >> 20)
        };
        match self {
            Self::Empty => said("table-empty"),
            Self::TooLarge => said("table-too-large"),
            Self::TooManyRows => said("table-too-many-rows"),
            Self::TooManyColumns => said("table-too-many-columns"),
            Self::UnpacksTooLarge => said("table-unpacks-too-large"),
            Self::OldOrLocked => said("table-old-or-locked"),
            Self::NoTable => said("table-no-table"),
            Self::Damaged => said("table-damaged"),
        }
    }

    /// What to do about it.
    #[must_use]
    pub fn remedy(&self) -> Said {
        Said::new(match self {
            Self::Empty => "table-empty-remedy",
            Self::TooLarge | Self::TooManyRows | Self::TooManyColumns | Self::UnpacksTooLarge => {
                "table-too-large-remedy"
            }
            Self::OldOrLocked => "table-old-or-locked-remedy",
            Self::NoTable => "table-no-table-remedy",
            Self::Damaged => "table-damaged-remedy",
        })
    }
}

/// A table out of the bytes of a file: separated text, `.xlsx` or `.ods`, told by its content.
///
/// # Errors
/// If it is no table, too large, or damaged.
pub fn read_table(bytes: &[u8]) -> Result<Table, TableError> {
    if bytes.len() > MOST_BYTES {
        return Err(TableError::TooLarge);
    }
    let begins = |magic: &[u8]| bytes.starts_with(magic);
    if begins(b"PK\x03\x04") {
        return spreadsheet(bytes);
    }
    if begins(&[0xd0, 0xcf, 0x11, 0xe0]) {
        return Err(TableError::OldOrLocked);
    }
    let pictures: [&[u8]; 5] = [b"%PDF", b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"{\\rtf"];
    if pictures.iter().any(|magic| begins(magic)) {
        return Err(TableError::NoTable);
    }
    let (text, encoding) = decode(bytes).ok_or(TableError::NoTable)?;
    text_table(&text, encoding)
}

/// A table out of text, such as was pasted.
///
/// # Errors
/// If it is empty or too large.
pub fn read_text(text: &str) -> Result<Table, TableError> {
    if text.len() > MOST_BYTES {
        return Err(TableError::TooLarge);
    }
    text_table(text, Encoding::Utf8)
}

impl Row {
    /// True if there is nothing in it.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.cells.iter().all(|cell| cell.text.is_empty() && cell.odd.is_none())
    }
}

/// The text of a cell, as much of it as is used.
fn cell(text: &str) -> Cell {
    let text = text.trim();
    let plain: String =
        text.chars().map(|c| if c.is_control() { ' ' } else { c }).take(MOST_LETTERS).collect();
    let odd = text.chars().nth(MOST_LETTERS).map(|_| Odd::TooLong);
    let error = text.starts_with('#') && text.ends_with(['!', '?']) || text == "#N/A";
    Cell { text: plain, odd: odd.or_else(|| error.then_some(Odd::Error)) }
}
