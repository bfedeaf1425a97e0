//! A table out of text with separators.

use super::{Encoding, Form, MOST_COLUMNS, MOST_ROWS, Row, Sheet, Table, TableError, cell};

/// The text of bytes, whatever they are coded in; `None` if they are no text.
pub(super) fn decode(bytes: &[u8]) -> Option<(String, Encoding)> {
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

pub(super) fn text_table(text: &str, encoding: Encoding) -> Result<Table, TableError> {
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
