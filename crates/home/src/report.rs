//! Problems while they are being found: by byte, with the line and column worked out once at the end.

use crate::{Problem, Severity};

/// A problem at a byte of the text.
#[derive(Debug)]
pub(crate) struct Found {
    pub(crate) at: usize,
    pub(crate) severity: Severity,
    pub(crate) key: &'static str,
    pub(crate) args: Vec<(&'static str, String)>,
    /// Another byte that the problem speaks of, given as `other_line` and `other_column`.
    pub(crate) other: Option<usize>,
}

impl Found {
    pub(crate) fn error(at: usize, key: &'static str) -> Self {
        Self { at, severity: Severity::Error, key, args: Vec::new(), other: None }
    }

    pub(crate) fn warning(at: usize, key: &'static str) -> Self {
        Self { severity: Severity::Warning, ..Self::error(at, key) }
    }

    pub(crate) fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.args.push((name, value.into()));
        self
    }

    /// Adds what was perhaps meant; the text chooses its words by `suggested`.
    pub(crate) fn suggest(self, nearest: Option<&str>) -> Self {
        self.with("suggested", if nearest.is_some() { "yes" } else { "no" })
            .with("nearest", nearest.unwrap_or_default())
    }

    pub(crate) fn other(mut self, at: usize) -> Self {
        self.other = Some(at);
        self
    }
}

/// The problems with their places, sorted by place.
pub(crate) fn by_place(file: &str, text: &str, mut found: Vec<Found>) -> Vec<Problem> {
    found.sort_by_key(|f| f.at);
    let lines = Lines::of(text);
    found
        .into_iter()
        .map(|Found { at, severity, key, mut args, other }| {
            let (line, column) = lines.place(at);
            if let Some(other) = other {
                let (line, column) = lines.place(other);
                args.push(("other_line", line.to_string()));
                args.push(("other_column", column.to_string()));
            }
            Problem { severity, file: file.to_owned(), line, column, key, args }
        })
        .collect()
}

/// Where the lines of a text begin. A byte order mark is no character.
struct Lines<'t> {
    text: &'t str,
    starts: Vec<usize>,
}

impl<'t> Lines<'t> {
    fn of(text: &'t str) -> Self {
        let first = if text.starts_with('\u{feff}') { '\u{feff}'.len_utf8() } else { 0 };
        let ends = text.bytes().enumerate().filter(|(_, b)| *b == b'\n');
        Self { text, starts: std::iter::once(first).chain(ends.map(|(i, _)| i + 1)).collect() }
    }

    fn place(&self, at: usize) -> (usize, usize) {
        let line = self.starts.partition_point(|start| *start <= at).max(1);
        let start = self.starts.get(line - 1).copied().unwrap_or(0);
        let column = self.text.get(start..at).map_or(0, |before| before.chars().count());
        (line, column + 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_count_characters_after_the_byte_order_mark() {
        let text = "\u{feff}ab\r\n\té x\n";
        let lines = Lines::of(text);
        assert_eq!(lines.place(text.find('a').unwrap()), (1, 1));
        assert_eq!(lines.place(text.find('x').unwrap()), (2, 4));
        assert_eq!(lines.place(text.len()), (3, 1));
    }
}
