//! Splits the text of a home file into pieces that know where they stand.
//!
//! The scanner knows the shapes of RON (brackets, texts, names, numbers, comments) and nothing of
//! homes. What stands in a single piece is left to `ron`. Commas that are missing or too many are
//! reported and passed over; a bracket that does not close ends the reading.

use std::ops::Range;

use crate::report::Found;

/// Deepest nesting that is read. The model needs five.
const DEEPEST: usize = 64;

/// A value, and where it stands.
#[derive(Debug)]
pub(crate) struct Piece {
    pub(crate) span: Range<usize>,
    pub(crate) form: Form,
}

/// What a value looks like.
#[derive(Debug)]
pub(crate) enum Form {
    /// A text in quotes.
    Text,
    /// A bare word: `true`, `Copper`.
    Word,
    /// A number, a character, bytes.
    Plain,
    /// `()` or `Name()`.
    Empty { name: Option<Range<usize>> },
    /// `(field: value)` or `Name(field: value)`.
    Struct { name: Option<Range<usize>>, fields: Vec<Field> },
    /// `(value, value)` or `Name(value)`.
    Tuple { name: Option<Range<usize>>, items: Vec<Piece> },
    /// `[value, value]`.
    List(Vec<Piece>),
    /// `{key: value}`. Homes have none, so what is in it does not matter.
    Map,
}

/// A field of a struct; `span` runs from its name to the end of its value.
#[derive(Debug)]
pub(crate) struct Field {
    pub(crate) name: Range<usize>,
    pub(crate) span: Range<usize>,
    pub(crate) value: Piece,
}

/// A whole file.
#[derive(Debug)]
pub(crate) struct Scan {
    pub(crate) root: Piece,
    /// Comments above the attribute line.
    pub(crate) above: Vec<String>,
    /// Comments between the attribute line and the home.
    pub(crate) below: Vec<String>,
    /// What follows the home, if anything but comments does.
    pub(crate) rest: Option<Range<usize>>,
}

/// Splits `text`.
///
/// # Errors
/// The one thing that makes the rest of the text unreadable.
pub(crate) fn scan(text: &str, found: &mut Vec<Found>) -> Result<Scan, Found> {
    let mut scanner = Scanner { text, at: 0, open: Vec::new(), comments: Vec::new(), found };
    scanner.file()
}

struct Scanner<'t, 'f> {
    text: &'t str,
    at: usize,
    /// Brackets that are open, outermost first.
    open: Vec<(char, usize)>,
    comments: Vec<String>,
    found: &'f mut Vec<Found>,
}

impl<'t> Scanner<'t, '_> {
    fn file(&mut self) -> Result<Scan, Found> {
        if self.peek() == Some('\u{feff}') {
            self.bump();
        }
        self.skip()?;
        let mut above = Vec::new();
        let mut seen_attribute = false;
        while self.peek() == Some('#') {
            if !seen_attribute {
                above = std::mem::take(&mut self.comments);
            }
            seen_attribute = true;
            self.attribute()?;
            self.skip()?;
        }
        let below = std::mem::take(&mut self.comments);
        let (above, below) = if seen_attribute { (above, below) } else { (below, above) };
        let root = self.value()?;
        self.skip()?;
        let rest = self.text.get(self.at..).unwrap_or_default().trim_end();
        let rest = (!rest.is_empty()).then(|| self.at..self.at + rest.len());
        Ok(Scan { root, above, below, rest })
    }

    /// `#![enable(implicit_some, …)]`. What is enabled makes no difference to the reader: it takes
    /// every form there is.
    fn attribute(&mut self) -> Result<(), Found> {
        let start = self.at;
        for expected in ["#", "!", "[", "enable", "("] {
            self.skip()?;
            if !self.take(expected) {
                return Err(self.unreadable(start));
            }
        }
        loop {
            self.skip()?;
            if self.take(")") {
                break;
            }
            let word_at = self.at;
            let word = self.word();
            if word.is_empty() {
                return Err(self.unreadable(self.at));
            }
            let known = [
                "implicit_some",
                "unwrap_newtypes",
                "unwrap_variant_newtypes",
                "explicit_struct_names",
            ];
            let word = self.slice(word);
            if !known.contains(&word) {
                let problem = Found::warning(word_at, "unknown-extension").with("found", word);
                self.found.push(problem);
            }
            self.skip()?;
            self.take(",");
        }
        self.skip()?;
        if self.take("]") { Ok(()) } else { Err(self.unreadable(self.at)) }
    }

    fn value(&mut self) -> Result<Piece, Found> {
        if self.open.len() >= DEEPEST {
            return Err(Found::error(self.at, "too-deep").with("deepest", DEEPEST.to_string()));
        }
        let start = self.at;
        let Some(first) = self.peek() else {
            return Err(self.ended());
        };
        let form = match first {
            '"' => self.quoted('"').map(|()| Form::Text)?,
            '\'' => self.quoted('\'').map(|()| Form::Plain)?,
            '(' => self.round(None)?,
            '[' => Form::List(self.items('[', ']')?),
            '{' => self.map()?,
            'r' | 'b' if self.prefixed()? => {
                if first == 'r' {
                    Form::Text
                } else {
                    Form::Plain
                }
            }
            c if c == '_' || c.is_alphabetic() => self.named()?,
            c if c.is_ascii_digit() || matches!(c, '+' | '-' | '.') => {
                self.run(|c| c.is_alphanumeric() || matches!(c, '_' | '.' | '+' | '-'));
                Form::Plain
            }
            _ => return Err(self.unreadable(self.at)),
        };
        Ok(Piece { span: start..self.at, form })
    }

    /// A bare word, or a struct or tuple with a name.
    fn named(&mut self) -> Result<Form, Found> {
        let name = self.word();
        let end = self.at;
        self.skip()?;
        if self.peek() == Some('(') {
            return self.round(Some(name));
        }
        self.at = end;
        Ok(Form::Word)
    }

    /// What stands in round brackets: a struct if a field's name comes first.
    fn round(&mut self, name: Option<Range<usize>>) -> Result<Form, Found> {
        let start = self.at;
        self.bump();
        self.open.push(('(', start));
        self.skip()?;
        if self.peek() == Some(')') {
            self.bump();
            self.open.pop();
            return Ok(Form::Empty { name });
        }
        let inside = self.at;
        let is_struct = !self.word().is_empty() && {
            self.skip()?;
            self.peek() == Some(':')
        };
        self.at = inside;
        if is_struct {
            let fields = self.fields()?;
            return Ok(Form::Struct { name, fields });
        }
        self.open.pop();
        self.at = start;
        Ok(Form::Tuple { name, items: self.items('(', ')')? })
    }

    fn fields(&mut self) -> Result<Vec<Field>, Found> {
        let mut fields: Vec<Field> = Vec::new();
        let mut comma_due = false;
        loop {
            if self.separator(')', &mut comma_due, fields.last().map(|f| f.span.end))? {
                return Ok(fields);
            }
            let name = self.word();
            self.skip()?;
            if name.is_empty() {
                // A new bracket where a field's name should stand: the old one was not closed.
                return Err(match self.peek() {
                    Some('(' | '[' | '{') => self.misfit(),
                    _ => self.unreadable(self.at),
                });
            }
            if !self.take(":") {
                return Err(if self.peek().is_none() {
                    self.ended()
                } else {
                    self.unreadable(name.start)
                });
            }
            self.skip()?;
            let value = self.value()?;
            fields.push(Field { span: name.start..value.span.end, name, value });
            comma_due = true;
        }
    }

    fn items(&mut self, open: char, close: char) -> Result<Vec<Piece>, Found> {
        self.open.push((open, self.at));
        self.bump();
        let mut items: Vec<Piece> = Vec::new();
        let mut comma_due = false;
        loop {
            if self.separator(close, &mut comma_due, items.last().map(|p| p.span.end))? {
                return Ok(items);
            }
            items.push(self.value()?);
            comma_due = true;
        }
    }

    fn map(&mut self) -> Result<Form, Found> {
        self.open.push(('{', self.at));
        self.bump();
        let mut comma_due = false;
        let mut last = None;
        loop {
            if self.separator('}', &mut comma_due, last)? {
                return Ok(Form::Map);
            }
            self.value()?;
            self.skip()?;
            if !self.take(":") {
                return Err(self.unreadable(self.at));
            }
            self.skip()?;
            last = Some(self.value()?.span.end);
            comma_due = true;
        }
    }

    /// Passes commas; true once the bracket is closed.
    fn separator(
        &mut self,
        close: char,
        comma_due: &mut bool,
        last_end: Option<usize>,
    ) -> Result<bool, Found> {
        loop {
            self.skip()?;
            match self.peek() {
                None => return Err(self.ended()),
                Some(c) if c == close => {
                    self.bump();
                    self.open.pop();
                    return Ok(true);
                }
                Some(')' | ']' | '}') => return Err(self.misfit()),
                Some(',') => {
                    if !*comma_due {
                        self.found.push(Found::warning(self.at, "extra-comma"));
                    }
                    *comma_due = false;
                    self.bump();
                }
                Some(':') => return Err(self.unreadable(self.at)),
                Some(_) => {
                    if *comma_due {
                        let at = last_end.unwrap_or(self.at);
                        self.found.push(Found::warning(at, "missing-comma"));
                    }
                    return Ok(false);
                }
            }
        }
    }

    /// A text or character with escapes.
    fn quoted(&mut self, quote: char) -> Result<(), Found> {
        let start = self.at;
        self.bump();
        loop {
            match self.bump() {
                None => return Err(Found::error(start, "unclosed-text")),
                Some('\\') => {
                    self.bump();
                }
                Some(c) if c == quote => return Ok(()),
                Some(_) => {}
            }
        }
    }

    /// Reads `r"…"`, `r#"…"#`, `b"…"`, `b'…'` and `br"…"`; false if it is a bare word after all.
    fn prefixed(&mut self) -> Result<bool, Found> {
        let start = self.at;
        if self.take("b") {
            match self.peek() {
                Some('"') => return self.quoted('"').map(|()| true),
                Some('\'') => return self.quoted('\'').map(|()| true),
                _ => {}
            }
        }
        if self.take("r") {
            let hashes = self.run(|c| c == '#');
            if self.take("\"") {
                let end = format!("\"{}", self.slice(hashes));
                let Some(length) = self.text.get(self.at..).and_then(|t| t.find(&end)) else {
                    return Err(Found::error(start, "unclosed-text"));
                };
                self.at += length + end.len();
                return Ok(true);
            }
        }
        self.at = start;
        Ok(false)
    }

    /// A name; a raw one (`r#name`) keeps its mark. Empty if none stands here.
    fn word(&mut self) -> Range<usize> {
        let start = self.at;
        self.take("r#");
        if self.peek().is_some_and(|c| c == '_' || c.is_alphabetic()) {
            self.run(|c| c == '_' || c.is_alphanumeric());
        } else {
            self.at = start;
        }
        start..self.at
    }

    /// Passes white space and comments.
    fn skip(&mut self) -> Result<(), Found> {
        loop {
            self.run(is_space);
            let start = self.at;
            if self.take("//") {
                self.run(|c| c != '\n');
            } else if self.take("/*") {
                let mut depth = 1_usize;
                while depth > 0 {
                    if self.take("/*") {
                        depth += 1;
                    } else if self.take("*/") {
                        depth -= 1;
                    } else if self.bump().is_none() {
                        return Err(Found::error(start, "unclosed-comment"));
                    }
                }
            } else {
                return Ok(());
            }
            if self.open.is_empty() {
                let comment = self.slice(start..self.at).trim_end().to_owned();
                self.comments.push(comment);
            }
        }
    }

    fn run(&mut self, wanted: impl Fn(char) -> bool) -> Range<usize> {
        let start = self.at;
        while self.peek().is_some_and(&wanted) {
            self.bump();
        }
        start..self.at
    }

    fn peek(&self) -> Option<char> {
        self.text.get(self.at..)?.chars().next()
    }

    fn bump(&mut self) -> Option<char> {
        let c = self.peek()?;
        self.at += c.len_utf8();
        Some(c)
    }

    fn take(&mut self, expected: &str) -> bool {
        let here = self.text.get(self.at..).is_some_and(|t| t.starts_with(expected));
        if here {
            self.at += expected.len();
        }
        here
    }

    fn slice(&self, span: Range<usize>) -> &'t str {
        self.text.get(span).unwrap_or_default()
    }

    /// The text ended too early.
    fn ended(&self) -> Found {
        match self.open.last() {
            Some((bracket, at)) => {
                Found::error(*at, "unclosed").with("bracket", bracket.to_string())
            }
            None => Found::error(self.at, "empty-file"),
        }
    }

    /// What stands here cannot come before the innermost bracket is closed.
    fn misfit(&self) -> Found {
        let found = self.peek().map(String::from).unwrap_or_default();
        match self.open.last() {
            Some((bracket, at)) => Found::error(*at, "wrong-bracket")
                .with("bracket", bracket.to_string())
                .with("found", found)
                .other(self.at),
            None => self.unreadable(self.at),
        }
    }

    fn unreadable(&self, at: usize) -> Found {
        Found::error(at, "unreadable").with("found", excerpt(self.slice(at..self.text.len())))
    }
}

/// The start of a text, short enough to stand in a sentence.
pub(crate) fn excerpt(text: &str) -> String {
    const MOST: usize = 40;
    let line = text.lines().next().unwrap_or_default();
    if line.chars().count() <= MOST && line.len() == text.len() {
        return line.to_owned();
    }
    line.chars().take(MOST).chain(['…']).collect()
}

/// White space as RON has it.
fn is_space(c: char) -> bool {
    matches!(
        c,
        ' ' | '\t'
            | '\n'
            | '\r'
            | '\u{b}'
            | '\u{c}'
            | '\u{85}'
            | '\u{200e}'
            | '\u{200f}'
            | '\u{2028}'
            | '\u{2029}'
    )
}
