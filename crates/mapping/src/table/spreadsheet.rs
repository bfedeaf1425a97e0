//! A table out of a spreadsheet file, `.xlsx` or `.ods`.

use std::io::{Cursor, Read as _};

use super::{Cell, Form, MOST_COLUMNS, MOST_ROWS, Odd, Row, Sheet, Table, TableError, cell};
use calamine::{Data, DataRef, Ods, Reader as _, Xlsx};

/// Most bytes that a spreadsheet file may unpack to.
const MOST_UNPACKED: u64 = 96 << 20;
/// Most cells that a spreadsheet may stand for with its repeats.
const MOST_CELLS: u64 = 2_000_000;

pub(super) fn spreadsheet(bytes: &[u8]) -> Result<Table, TableError> {
    let contents = unpacked(bytes)?;
    match contents {
        Contents::Xlsx => xlsx(bytes),
        Contents::Ods => ods(bytes),
        Contents::Other => Err(TableError::NoTable),
    }
}

enum Contents {
    Xlsx,
    Ods,
    Other,
}

/// What a zip holds, once it is sure that it does not unpack to more than it may.
fn unpacked(bytes: &[u8]) -> Result<Contents, TableError> {
    let damaged = |_| TableError::Damaged;
    let mut zip = zip::ZipArchive::new(Cursor::new(bytes)).map_err(damaged)?;
    let (mut left, mut contents) = (MOST_UNPACKED, Contents::Other);
    for index in 0..zip.len() {
        let mut file = zip.by_index(index).map_err(damaged)?;
        let name = file.name().map_err(damaged)?.into_owned();
        if name == "xl/workbook.xml" {
            contents = Contents::Xlsx;
        }
        let is_ods = name == "content.xml";
        let mut text = Vec::new();
        // One byte more than may be tells that there is more.
        let mut limited = (&mut file).take(left + 1);
        let read = if is_ods {
            limited.read_to_end(&mut text).map(|n| u64::try_from(n).unwrap_or(u64::MAX))
        } else {
            std::io::copy(&mut limited, &mut std::io::sink())
        };
        let read = read.or(Err(TableError::Damaged))?;
        if read > left {
            return Err(TableError::UnpacksTooLarge);
        }
        left -= read;
        if is_ods {
            contents = Contents::Ods;
            if cells_with_repeats(&String::from_utf8_lossy(&text)) > MOST_CELLS {
                return Err(TableError::UnpacksTooLarge);
            }
        }
    }
    Ok(contents)
}

/// How many cells the sheets of an Open Document file stand for, empty ends of rows aside.
///
/// A cell may stand for thousands and a row for a million, so that a small file can ask for more
/// memory than there is.
fn cells_with_repeats(xml: &str) -> u64 {
    let repeats = |tag: &str, of: &str| -> u64 {
        let Some((_, rest)) = tag.split_once(of) else { return 1 };
        let digits: String = rest
            .chars()
            .skip_while(|c| !c.is_ascii_digit())
            .take_while(char::is_ascii_digit)
            .collect();
        digits.parse().unwrap_or(u64::MAX)
    };
    let (mut total, mut row_repeats, mut row, mut pending) = (0_u64, 1_u64, 0_u64, 0_u64);
    for tag in xml.split('<') {
        if tag.starts_with("table:table-row") || tag.starts_with("/table:table") {
            total = total.saturating_add(row.saturating_mul(row_repeats));
            (row, pending) = (0, 0);
            row_repeats = repeats(tag, "number-rows-repeated=");
        } else if tag.starts_with("table:table-cell") || tag.starts_with("table:covered-table-cell")
        {
            let cells = repeats(tag, "number-columns-repeated=");
            pending = pending.saturating_add(cells);
            if tag.contains("value-type") || tag.contains("formula") {
                row = row.saturating_add(pending);
                pending = 0;
            }
        }
    }
    total.saturating_add(row.saturating_mul(row_repeats))
}

fn xlsx(bytes: &[u8]) -> Result<Table, TableError> {
    let mut book = Xlsx::new(Cursor::new(bytes)).or(Err(TableError::Damaged))?;
    let mut sheets = Vec::new();
    for name in book.sheet_names() {
        let Ok(mut cells) = book.worksheet_cells_reader(&name) else { continue };
        let mut sheet = Sheet { name: name.clone(), rows: Vec::new() };
        loop {
            let next = cells.next_cell_with_formula().or(Err(TableError::Damaged))?;
            let Some(found) = next else { break };
            let (row, column) = found.pos;
            let mut value = from_xlsx(&found.value);
            if found.formula.is_some() && value.text.is_empty() && value.odd.is_none() {
                value.odd = Some(Odd::NoResult);
            }
            if value.text.is_empty() && value.odd.is_none() {
                continue;
            }
            sheet.put(row, column, value)?;
        }
        sheets.push(sheet);
    }
    finished(Form::Xlsx, sheets)
}

fn ods(bytes: &[u8]) -> Result<Table, TableError> {
    let mut book = Ods::new(Cursor::new(bytes)).or(Err(TableError::Damaged))?;
    let mut sheets = Vec::new();
    for name in book.sheet_names() {
        let range = book.worksheet_range(&name).or(Err(TableError::Damaged))?;
        let formulas = book.worksheet_formula(&name).ok();
        let mut sheet = Sheet { name: name.clone(), rows: Vec::new() };
        let Some((top, left)) = range.start() else {
            sheets.push(sheet);
            continue;
        };
        for (row, column, value) in range.used_cells() {
            let at = (offset(top, row), offset(left, column));
            let value = from_data(value);
            sheet.put(at.0, at.1, value)?;
        }
        if let Some(formulas) = formulas
            && let Some((top, left)) = formulas.start()
        {
            for (row, column, _) in formulas.used_cells() {
                let at = (offset(top, row), offset(left, column));
                if sheet.cell(at.0, at.1).is_none_or(|c| c.text.is_empty() && c.odd.is_none()) {
                    sheet.put(
                        at.0,
                        at.1,
                        Cell { text: String::new(), odd: Some(Odd::NoResult) },
                    )?;
                }
            }
        }
        sheets.push(sheet);
    }
    finished(Form::Ods, sheets)
}

fn offset(start: u32, by: usize) -> u32 {
    start.saturating_add(u32::try_from(by).unwrap_or(u32::MAX))
}

fn finished(form: Form, mut sheets: Vec<Sheet>) -> Result<Table, TableError> {
    sheets.retain(|sheet| !sheet.rows.iter().all(Row::is_blank));
    if sheets.is_empty() { Err(TableError::Empty) } else { Ok(Table { form, sheets }) }
}

impl Sheet {
    /// Puts a value where it stands; rows before it that hold nothing are there too.
    fn put(&mut self, row: u32, column: u32, value: Cell) -> Result<(), TableError> {
        let row = usize::try_from(row).unwrap_or(usize::MAX);
        let column = usize::try_from(column).unwrap_or(usize::MAX);
        if row >= MOST_ROWS {
            return Err(TableError::TooManyRows);
        }
        if column >= MOST_COLUMNS {
            return Err(TableError::TooManyColumns);
        }
        while self.rows.len() <= row {
            self.rows.push(Row { number: self.rows.len() + 1, cells: Vec::new() });
        }
        if let Some(row) = self.rows.get_mut(row) {
            if row.cells.len() <= column {
                row.cells.resize(column + 1, Cell::default());
            }
            if let Some(cell) = row.cells.get_mut(column) {
                *cell = value;
            }
        }
        Ok(())
    }

    fn cell(&self, row: u32, column: u32) -> Option<&Cell> {
        let row = self.rows.get(usize::try_from(row).ok()?)?;
        row.cells.get(usize::try_from(column).ok()?)
    }
}

fn from_xlsx(value: &DataRef<'_>) -> Cell {
    let odd = |odd| Cell { text: String::new(), odd: Some(odd) };
    match value {
        DataRef::Int(number) => cell(&number.to_string()),
        DataRef::Float(number) => cell(&number.to_string()),
        DataRef::String(text) => cell(text),
        DataRef::SharedString(text) => cell(text),
        DataRef::Bool(yes) => cell(if *yes { "1" } else { "0" }),
        DataRef::DateTime(_) | DataRef::DateTimeIso(_) | DataRef::DurationIso(_) => odd(Odd::Date),
        DataRef::Error(_) => odd(Odd::Error),
        DataRef::Empty => Cell::default(),
    }
}

fn from_data(value: &Data) -> Cell {
    let odd = |odd| Cell { text: String::new(), odd: Some(odd) };
    match value {
        Data::Int(number) => cell(&number.to_string()),
        Data::Float(number) => cell(&number.to_string()),
        Data::String(text) => cell(text),
        Data::Bool(yes) => cell(if *yes { "1" } else { "0" }),
        Data::DateTime(_) | Data::DateTimeIso(_) | Data::DurationIso(_) => odd(Odd::Date),
        Data::Error(_) => odd(Odd::Error),
        Data::Empty => Cell::default(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn repeats_of_an_open_document_are_counted_before_they_are_unfolded() {
        let cell = "<table:table-cell office:value-type=\"float\"/>";
        let far = "<table:table-cell table:number-columns-repeated=\"16000\"/>";
        let row = |n: u64, inner: &str| {
            format!("<table:table-row table:number-rows-repeated=\"{n}\">{inner}</table:table-row>")
        };
        assert_eq!(cells_with_repeats(&row(1, cell)), 1);
        assert_eq!(cells_with_repeats(&row(10, &format!("{cell}{far}"))), 10);
        assert_eq!(cells_with_repeats(&row(1000, &format!("{far}{cell}"))), 16_001_000);
    }
}
