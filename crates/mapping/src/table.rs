//! A table out of bytes: text with separators, or a spreadsheet file.
//!
//! Files come from anywhere, so everything has a limit, and what a cell holds beside text (a formula
//! without a result, an error, a date made of a circuit number) is kept as such and not guessed away.

use std::io::{Cursor, Read as _};

use calamine::{Data, DataRef, Ods, Reader as _, Xlsx};

use crate::said::Said;

/// Largest file, in bytes.
pub const MOST_BYTES: usize = 16 << 20;
/// Most rows. The largest panel board of a house has 84 circuits; a list of all outlets is longer.
pub const MOST_ROWS: usize = 20_000;
/// Most columns.
pub const MOST_COLUMNS: usize = 200;
/// Longest text of a cell that is used, in characters.
pub const MOST_LETTERS: usize = 500;
/// Most bytes that a spreadsheet file may unpack to.
const MOST_UNPACKED: u64 = 96 << 20;
/// Most cells that a spreadsheet may stand for with its repeats.
const MOST_CELLS: u64 = 2_000_000;

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

/// The text of bytes, whatever they are coded in; `None` if they are no text.
fn decode(bytes: &[u8]) -> Option<(String, Encoding)> {
    let utf16 = |of: &'static encoding_rs::Encoding, bytes: &[u8]| {
        let (text, _, faulty) = of.decode(bytes);
        (!faulty).then(|| (text.into_owned(), Encoding::Utf16))
    };
    if bytes.starts_with(&[0xff, 0xfe]) {
        return utf16(encoding_rs::UTF_16LE, bytes);
    }
    if bytes.starts_with(&[0xfe, 0xff]) {
        return utf16(encoding_rs::UTF_16BE, bytes);
    }
    let head = bytes.get(..bytes.len().min(4096)).unwrap_or_default();
    let zeros = |parity: usize| head.iter().skip(parity).step_by(2).filter(|b| **b == 0).count();
    // Without a mark at its start, UTF-16 of Western text has a zero in every other byte.
    let (even, odd) = (zeros(0), zeros(1));
    if even + odd > 0 {
        return match (even * 3 > head.len(), odd * 3 > head.len()) {
            (false, true) => utf16(encoding_rs::UTF_16LE, bytes),
            (true, false) => utf16(encoding_rs::UTF_16BE, bytes),
            _ => None,
        };
    }
    let plain = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    if let Ok(text) = std::str::from_utf8(plain) {
        return Some((text.to_owned(), Encoding::Utf8));
    }
    let controls = head.iter().filter(|b| **b < 9 || (14..32).contains(*b)).count();
    let (text, _) = encoding_rs::WINDOWS_1252.decode_without_bom_handling(plain);
    (controls == 0).then(|| (text.into_owned(), Encoding::Western))
}

fn text_table(text: &str, encoding: Encoding) -> Result<Table, TableError> {
    let mut text = text.trim_start_matches('\u{feff}');
    let mut skipped = 0;
    let mut separator = None;
    // Some spreadsheets write the separator into a line of its own.
    if let Some(rest) = text.strip_prefix("sep=")
        && let Some(sign) = rest.chars().next().filter(char::is_ascii)
    {
        separator = Some(sign);
        text = rest.get(1..).unwrap_or_default().trim_start_matches(['\r', '\n']);
        skipped = 1;
    }
    if text.trim().is_empty() {
        return Err(TableError::Empty);
    }
    // One sign for the end of a line, so that lines are counted as an editor counts them.
    let lines = if text.contains('\r') {
        text.replace("\r\n", "\n").replace('\r', "\n")
    } else {
        text.to_owned()
    };
    let text = lines.as_str();
    let separator = separator.unwrap_or_else(|| sniff(text));
    // An odd number of quotation marks is an inch sign or a slip; quotes then mean nothing, or one of
    // them would swallow the rest of the file.
    let quoted = text.bytes().filter(|b| *b == b'"').count() % 2 == 0;
    let mut rows = Vec::new();
    let mut reader = records(text, separator, quoted);
    let mut record = csv::StringRecord::new();
    let bytes = text.as_bytes();
    let (mut line, mut counted) = (1, 0);
    while reader.read_record(&mut record).unwrap_or(false) {
        if rows.len() >= MOST_ROWS {
            return Err(TableError::TooManyRows);
        }
        if record.len() > MOST_COLUMNS {
            return Err(TableError::TooManyColumns);
        }
        // The reader tells where it began to look; empty lines before the row are not the row.
        let begin = record.position().map_or(0, csv::Position::byte);
        let begin = usize::try_from(begin).unwrap_or(text.len()).min(text.len());
        let blank =
            bytes.get(begin..).unwrap_or_default().iter().take_while(|b| **b == b'\n').count();
        let between = bytes.get(counted..begin + blank).unwrap_or_default();
        line += between.iter().filter(|b| **b == b'\n').count();
        counted = begin + blank;
        let number = line + skipped;
        rows.push(Row { number, cells: record.iter().map(cell).collect() });
    }
    if rows.iter().all(Row::is_blank) {
        return Err(TableError::Empty);
    }
    let sheets = vec![Sheet { name: String::new(), rows }];
    Ok(Table { form: Form::Text { separator, encoding }, sheets })
}

/// The separator that gives the most even table.
fn sniff(text: &str) -> char {
    /// Rows that are looked at.
    const LOOK: usize = 60;
    let mut best = (0, ',');
    for separator in [',', ';', '\t', '|'] {
        let mut reader = records(text, separator, true);
        let mut widths: Vec<usize> = Vec::new();
        let mut record = csv::StringRecord::new();
        while widths.len() < LOOK && reader.read_record(&mut record).unwrap_or(false) {
            widths.push(record.len());
        }
        let most = widths
            .iter()
            .copied()
            .filter(|width| *width > 1)
            .max_by_key(|width| (widths.iter().filter(|w| *w == width).count(), *width))
            .unwrap_or(1);
        let even = widths.iter().filter(|w| **w == most).count();
        let score = even * most.saturating_sub(1).min(20);
        if score > best.0 {
            best = (score, separator);
        }
    }
    best.1
}

fn records(text: &str, separator: char, quoted: bool) -> csv::Reader<&[u8]> {
    let mut builder = csv::ReaderBuilder::new();
    builder.has_headers(false).flexible(true).quoting(quoted);
    builder.delimiter(u8::try_from(separator).unwrap_or(b','));
    builder.from_reader(text.as_bytes())
}

fn cell(text: &str) -> Cell {
    let text = text.trim();
    let plain: String =
        text.chars().map(|c| if c.is_control() { ' ' } else { c }).take(MOST_LETTERS).collect();
    let odd = text.chars().nth(MOST_LETTERS).map(|_| Odd::TooLong);
    let error = text.starts_with('#') && text.ends_with(['!', '?']) || text == "#N/A";
    Cell { text: plain, odd: odd.or_else(|| error.then_some(Odd::Error)) }
}

impl Row {
    /// True if there is nothing in it.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.cells.iter().all(|cell| cell.text.is_empty() && cell.odd.is_none())
    }
}

fn spreadsheet(bytes: &[u8]) -> Result<Table, TableError> {
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
    use proptest::prelude::*;
    use quarterturn_guidance::Catalogue;

    fn texts(table: &Table) -> Vec<Vec<&str>> {
        table.sheets[0]
            .rows
            .iter()
            .map(|r| r.cells.iter().map(|c| c.text.as_str()).collect())
            .collect()
    }

    #[test]
    fn separators_quotes_and_codings_are_told_by_the_content() {
        let wanted = vec![vec!["Circuit", "Ba\u{f1}o, arriba"], vec!["9,11", "x"]];
        let utf8 = "Circuit;\"Ba\u{f1}o, arriba\"\r\n\"9,11\";x\r\n";
        let form = |separator, encoding| Form::Text { separator, encoding };
        let is = |bytes: &[u8], expected: Form| {
            let table = read_table(bytes).unwrap();
            assert_eq!((table.form, texts(&table)), (expected, wanted.clone()));
        };
        is(utf8.as_bytes(), form(';', Encoding::Utf8));
        is(format!("\u{feff}{utf8}").as_bytes(), form(';', Encoding::Utf8));
        is(utf8.replace(';', "\t").as_bytes(), form('\t', Encoding::Utf8));
        is(format!("sep=;\r\n{utf8}").as_bytes(), form(';', Encoding::Utf8));
        let little: Vec<u8> = utf8.encode_utf16().flat_map(u16::to_le_bytes).collect();
        is(&little, form(';', Encoding::Utf16));
        is(&[&[0xff, 0xfe], little.as_slice()].concat(), form(';', Encoding::Utf16));
        let big: Vec<u8> = utf8.encode_utf16().flat_map(u16::to_be_bytes).collect();
        is(&[&[0xfe, 0xff], big.as_slice()].concat(), form(';', Encoding::Utf16));
        let western: Vec<u8> = utf8.chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
        is(&western, form(';', Encoding::Western));
    }

    #[test]
    fn rows_keep_their_line_even_where_a_cell_spans_several() {
        let table = read_text("a,b\n\"one\ntwo\",c\nd,e\n").unwrap();
        let numbers: Vec<usize> = table.sheets[0].rows.iter().map(|r| r.number).collect();
        assert_eq!(numbers, [1, 2, 4]);
        for ends in ["\r\n", "\r"] {
            let table = read_text(&"a,b\nc,d\n\ne,f\n".replace('\n', ends)).unwrap();
            let numbers: Vec<usize> = table.sheets[0].rows.iter().map(|r| r.number).collect();
            assert_eq!(numbers, [1, 2, 4], "{ends:?}");
        }
        assert_eq!(texts(&table)[1], ["one two", "c"]);
        // A lone inch sign does not swallow the rest.
        let table = read_text("1,TV 55\" wall\n2,Hall\n3,Bath\n").unwrap();
        assert_eq!(texts(&table).len(), 3);
    }

    #[test]
    fn what_is_no_table_says_what_to_do() {
        let cases: Vec<(Vec<u8>, TableError)> = vec![
            (Vec::new(), TableError::Empty),
            (b" \r\n ,,, \n".to_vec(), TableError::Empty),
            (b"%PDF-1.7 a".to_vec(), TableError::NoTable),
            (vec![0xd0, 0xcf, 0x11, 0xe0, 1, 2], TableError::OldOrLocked),
            (b"PK\x03\x04 broken".to_vec(), TableError::Damaged),
            (vec![7, 0, 9, 200, 0, 0, 0, 1], TableError::NoTable),
            (vec![b'x'; MOST_BYTES + 1], TableError::TooLarge),
            ("1,a\n".repeat(100_000).into_bytes(), TableError::TooManyRows),
            (",".repeat(300).into_bytes(), TableError::TooManyColumns),
        ];
        for (bytes, error) in cases {
            assert_eq!(read_table(&bytes).unwrap_err(), error);
            for language in Catalogue::languages() {
                let words = Catalogue::in_language(language.tag);
                for said in [error.cause(), error.remedy()] {
                    let text = said.text(&words);
                    assert!(text.len() > 20 && !text.contains(['[', '{']), "{text}");
                }
            }
        }
    }

    #[test]
    fn a_huge_cell_is_cut_and_marked() {
        let table = read_text(&format!("1,{}\n2,Hall\n", "x".repeat(100_000))).unwrap();
        let cell = &table.sheets[0].rows[0].cells[1];
        assert_eq!((cell.text.len(), cell.odd), (MOST_LETTERS, Some(Odd::TooLong)));
    }

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

    proptest! {
        #[test]
        fn any_bytes_give_a_table_or_a_reason(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
            if let Ok(table) = read_table(&bytes) {
                prop_assert!(table.sheets.iter().any(|s| !s.rows.is_empty()));
            }
        }

        #[test]
        fn what_the_library_writes_is_read_back(rows in proptest::collection::vec(
            proptest::collection::vec("[a-z0-9,;\"\n ]{0,12}", 3), 2..20)) {
            let mut writer = csv::Writer::from_writer(Vec::new());
            for row in &rows { writer.write_record(row).unwrap(); }
            let bytes = writer.into_inner().unwrap();
            let Ok(text) = String::from_utf8(bytes) else { panic!() };
            let mut expected: Vec<Vec<String>> = rows.iter().map(|row| {
                row.iter().map(|c| c.replace(['\n'], " ").trim().to_owned()).collect()
            }).collect();
            match text_table_as(&text, ',') {
                Ok(table) => {
                    let mut found: Vec<Vec<String>> = table.sheets[0].rows.iter()
                        .map(|r| r.cells.iter().map(|c| c.text.clone()).collect()).collect();
                    expected.retain(|r| r.iter().any(|c| !c.is_empty()));
                    found.retain(|r| r.iter().any(|c| !c.is_empty()));
                    prop_assert_eq!(found, expected);
                }
                Err(error) => {
                    prop_assert_eq!(error, TableError::Empty);
                    prop_assert!(expected.iter().flatten().all(String::is_empty));
                }
            }
        }
    }

    /// The table of a text whose separator is told in its first line.
    fn text_table_as(text: &str, separator: char) -> Result<Table, TableError> {
        read_text(&format!("sep={separator}\n{text}"))
    }
}
