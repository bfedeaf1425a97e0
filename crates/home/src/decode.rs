//! Reads the fields of one struct of a home file, one by one, so that a bad field hides no other.
//!
//! Every leaf is read by `ron` and serde from its own slice of the text. A field that cannot be used
//! is reported, and its text is put aside for saving.

use std::ops::Range;

use ron::extensions::Extensions;
use serde::de::DeserializeOwned;

use crate::nearest::nearest;
use crate::report::Found;
use crate::scan::{Field, Form, Piece, excerpt};
use crate::trade_names::nearest_kind;
use crate::{Date, Kind, Severity};

/// Least and most that a number may be.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Limits(pub(crate) f64, pub(crate) f64);

/// Past this, a figure of a house is a slip, and sums of such figures stop being numbers.
const HUGE: f64 = 1e9;

impl Limits {
    pub(crate) const ANY: Self = Self(-HUGE, HUGE);
    pub(crate) const NOT_NEGATIVE: Self = Self(0.0, HUGE);

    pub(crate) fn allow(self, value: f64) -> bool {
        value.is_finite() && value >= self.0 && value <= self.1
    }
}

/// A field put aside for saving.
#[derive(Debug)]
pub(crate) struct Left {
    /// The struct inside the element, such as `operates`; empty for the element itself.
    pub(crate) inner: &'static str,
    /// The field that it stands for; `None` for one that no field of the model stands for.
    pub(crate) field: Option<String>,
    /// Its text, from the name to the end of the value; empty if the file has no such field.
    pub(crate) text: String,
}

/// An id that speaks of something elsewhere in the file.
#[derive(Debug)]
pub(crate) struct Reference {
    pub(crate) field: &'static str,
    pub(crate) id: String,
    pub(crate) at: usize,
}

/// What became of a field with a fixed set of names.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Choice<T> {
    Absent,
    Unknown,
    Is(T),
}

impl<T> Choice<T> {
    /// The value, or `absent` or `unknown` in its place.
    pub(crate) fn or(self, absent: T, unknown: T) -> T {
        match self {
            Self::Absent => absent,
            Self::Unknown => unknown,
            Self::Is(value) => value,
        }
    }

    pub(crate) fn known(self) -> Option<T> {
        match self {
            Self::Is(value) => Some(value),
            Self::Absent | Self::Unknown => None,
        }
    }
}

/// The fields of a struct while they are read.
#[derive(Debug)]
pub(crate) struct Fields<'p, 't> {
    pub(crate) text: &'t str,
    /// Where the struct is, in the file's own words: `components / main / operates`.
    pub(crate) path: String,
    /// Byte where it begins.
    pub(crate) at: usize,
    pub(crate) fields: &'p [Field],
    pub(crate) inner: &'static str,
    /// Names that were asked for: the fields that there are.
    pub(crate) asked: Vec<&'static str>,
    pub(crate) left: Vec<Left>,
    pub(crate) references: Vec<Reference>,
    pub(crate) found: &'p mut Vec<Found>,
}

impl<'p, 't> Fields<'p, 't> {
    pub(crate) fn new(
        text: &'t str,
        path: String,
        at: usize,
        fields: &'p [Field],
        found: &'p mut Vec<Found>,
    ) -> Self {
        Self {
            text,
            path,
            at,
            fields,
            inner: "",
            asked: Vec::new(),
            left: Vec::new(),
            references: Vec::new(),
            found,
        }
    }

    /// The value of a field, with `Some(…)` taken off; `None` if it is missing or `None`.
    pub(crate) fn take(&mut self, name: &'static str) -> Option<&'p Piece> {
        self.asked.push(name);
        self.find(name).and_then(|field| present(self.text, &field.value))
    }

    pub(crate) fn text(&mut self, name: &'static str) -> Option<String> {
        let piece = self.take(name)?;
        self.text_of(name, piece)
    }

    /// A text that must be there.
    pub(crate) fn needed_text(&mut self, name: &'static str) -> Option<String> {
        self.need(name);
        self.text(name)
    }

    /// An id of something elsewhere in the file.
    pub(crate) fn reference(&mut self, name: &'static str) -> Option<String> {
        let at = self.take(name)?.span.start;
        let id = self.text(name)?;
        self.references.push(Reference { field: name, id: id.clone(), at });
        Some(id)
    }

    /// A list of ids of things elsewhere in the file.
    pub(crate) fn ids(&mut self, name: &'static str) -> Vec<String> {
        self.list(name, |fields, piece| {
            let id = fields.text_of(name, piece)?;
            fields.references.push(Reference { field: name, id: id.clone(), at: piece.span.start });
            Some(id)
        })
    }

    /// A pair of ids of things elsewhere in the file, in round brackets.
    pub(crate) fn pair(&mut self, name: &'static str) -> Option<(String, String)> {
        let piece = self.take(name)?;
        let Form::Tuple { name: None, items } = &piece.form else {
            self.wrong_type(name, piece, "pair", Severity::Error);
            return None;
        };
        let [one, other] = items.as_slice() else {
            self.wrong_type(name, piece, "pair", Severity::Error);
            return None;
        };
        let ids = [one, other].map(|piece| (self.text_of(name, piece), piece.span.start));
        let [(Some(one), one_at), (Some(other), other_at)] = ids else { return None };
        let references = [(&one, one_at), (&other, other_at)];
        let references = references.map(|(id, at)| Reference { field: name, id: id.clone(), at });
        self.references.extend(references);
        Some((one, other))
    }

    /// A list; items that cannot be read are left out.
    pub(crate) fn list<T>(
        &mut self,
        name: &'static str,
        mut read: impl FnMut(&mut Self, &'p Piece) -> Option<T>,
    ) -> Vec<T> {
        let Some(piece) = self.take(name) else {
            return Vec::new();
        };
        match &piece.form {
            Form::List(items) => items.iter().filter_map(|item| read(self, item)).collect(),
            _ => {
                self.wrong_type(name, piece, "list", Severity::Error);
                Vec::new()
            }
        }
    }

    pub(crate) fn number(&mut self, name: &'static str, limits: Limits) -> Option<f64> {
        let piece = self.take(name)?;
        match self.leaf::<f64>(piece) {
            Ok(value) if limits.allow(value) => Some(value),
            Ok(_) => {
                self.out_of_range(name, piece, limits);
                None
            }
            Err(_) => {
                self.wrong_type(name, piece, "number", Severity::Error);
                None
            }
        }
    }

    /// A direction in degrees, from 0 up to a whole turn, which is 0 again.
    pub(crate) fn direction(&mut self, name: &'static str) -> Option<f64> {
        const TURN: f64 = 360.0;
        let piece = self.take(name)?;
        let Ok(value) = self.leaf::<f64>(piece) else {
            self.wrong_type(name, piece, "number", Severity::Error);
            return None;
        };
        if (0.0..TURN).contains(&value) {
            return Some(value);
        }
        // The same direction within the turn, where the figure tells one.
        let same = value.rem_euclid(TURN);
        let better = (Limits::ANY.allow(value) && same < TURN).then(|| same.to_string());
        let problem = self
            .problem(piece, "no-direction", name, Severity::Error)
            .with("suggested", if better.is_some() { "yes" } else { "no" })
            .with("better", better.unwrap_or_default());
        self.report(problem);
        self.leave(name);
        None
    }

    pub(crate) fn whole(&mut self, name: &'static str, least: u32, most: u32) -> Option<u32> {
        let piece = self.take(name)?;
        let value = self.leaf::<u32>(piece);
        if let Ok(value) = value
            && (least..=most).contains(&value)
        {
            return Some(value);
        }
        let is_whole = value.is_ok() || self.leaf::<i64>(piece).is_ok();
        if is_whole {
            self.out_of_range(name, piece, Limits(f64::from(least), f64::from(most)));
        } else {
            self.wrong_type(name, piece, "whole-number", Severity::Error);
        }
        None
    }

    pub(crate) fn yes_or_no(&mut self, name: &'static str) -> Option<bool> {
        let piece = self.take(name)?;
        let value = self.leaf(piece).ok();
        if value.is_none() {
            self.wrong_type(name, piece, "yes-or-no", Severity::Error);
        }
        value
    }

    /// Numbers in brackets: a point, or a list of points.
    pub(crate) fn points<T: DeserializeOwned>(
        &mut self,
        name: &'static str,
        wanted: &str,
        numbers: impl Fn(&T) -> Vec<f64>,
    ) -> Option<T> {
        let piece = self.take(name)?;
        match self.leaf::<T>(piece) {
            Ok(value) if numbers(&value).into_iter().all(|n| Limits::ANY.allow(n)) => Some(value),
            Ok(_) => {
                self.out_of_range(name, piece, Limits::ANY);
                None
            }
            Err(_) => {
                self.wrong_type(name, piece, wanted, Severity::Error);
                None
            }
        }
    }

    pub(crate) fn date(&mut self, name: &'static str) -> Option<Date> {
        let piece = self.take(name)?;
        let date = self.leaf::<String>(piece).ok().and_then(|text| text.parse().ok());
        if date.is_none() {
            let problem = self.problem(piece, "unreadable-date", name, Severity::Error);
            self.report(problem);
            self.leave(name);
        }
        date
    }

    /// One of a fixed set of names. `severity` tells how bad an unknown one is.
    pub(crate) fn choice<T: DeserializeOwned>(
        &mut self,
        name: &'static str,
        severity: Severity,
    ) -> Choice<T> {
        let Some(piece) = self.take(name) else {
            return Choice::Absent;
        };
        match self.choice_of(name, piece, severity) {
            Some(value) => Choice::Is(value),
            None => Choice::Unknown,
        }
    }

    /// One of a fixed set of names, in `piece`.
    pub(crate) fn choice_of<T: DeserializeOwned>(
        &mut self,
        name: &'static str,
        piece: &Piece,
        severity: Severity,
    ) -> Option<T> {
        let piece = present(self.text, piece)?;
        let (word, is_quoted) = self.word_of(piece);
        match leaf::<T>(&word) {
            Ok(value) => {
                if is_quoted {
                    self.quoted_name(name, piece);
                }
                return Some(value);
            }
            Err(ron::Error::NoSuchEnumVariant { expected, found, .. }) => {
                let problem = self
                    .problem(piece, "unknown-value", name, severity)
                    .suggest(nearest(&found, expected.iter().copied()))
                    .with("known", expected.join(", "));
                self.report(problem);
                self.leave(name);
            }
            Err(_) => self.wrong_type(name, piece, "name", severity),
        }
        None
    }

    /// The kind of a component; `Kind::Other` for one that is unknown or missing.
    pub(crate) fn kind(&mut self, name: &'static str) -> Kind {
        let Some(piece) = self.take(name) else {
            self.missing(name);
            self.leave(name);
            return Kind::Other;
        };
        let (word, is_quoted) = self.word_of(piece);
        if let Some(kind) = Kind::from_name(&word) {
            if is_quoted {
                self.quoted_name(name, piece);
            }
            return kind;
        }
        if matches!(piece.form, Form::Word | Form::Text) {
            let problem = self
                .problem(piece, "unknown-kind", name, Severity::Error)
                .suggest(nearest_kind(&word).map(Kind::name));
            self.report(problem);
            self.leave(name);
        } else {
            self.wrong_type(name, piece, "name", Severity::Error);
        }
        Kind::Other
    }

    /// A struct in a field.
    pub(crate) fn nested<T>(
        &mut self,
        name: &'static str,
        read: impl FnOnce(&mut Fields<'_, 't>) -> Option<T>,
    ) -> Option<T> {
        let piece = self.take(name)?;
        let Some(fields) = struct_fields(piece) else {
            self.wrong_type(name, piece, "group", Severity::Error);
            return None;
        };
        let path = format!("{} / {name}", self.path);
        let mut inside = Fields::new(self.text, path, piece.span.start, fields, self.found);
        inside.inner = name;
        let value = read(&mut inside);
        inside.finish();
        let left = inside.left;
        if value.is_some() {
            self.left.extend(left);
        } else {
            self.leave(name);
        }
        value
    }

    /// Reports fields that there are none of, and fields that stand twice.
    pub(crate) fn finish(&mut self) {
        let mut seen: Vec<(&str, usize)> = Vec::new();
        for field in self.fields {
            let name = slice(self.text, &field.name);
            let at = field.name.start;
            let first = seen.iter().find(|(other, _)| *other == name).map(|(_, at)| *at);
            if let Some(first) = first {
                let problem = Found::error(at, "field-twice")
                    .with("path", self.path.as_str())
                    .with("field", name)
                    .other(first);
                self.report(problem);
            } else if !self.asked.contains(&name) {
                let problem = Found::warning(at, "unknown-field")
                    .with("path", self.path.as_str())
                    .with("field", name)
                    .suggest(nearest(name, self.asked.iter().copied()));
                self.report(problem);
            } else {
                seen.push((name, at));
                continue;
            }
            let text = slice(self.text, &field.span).to_owned();
            self.left.push(Left { inner: self.inner, field: None, text });
        }
    }

    /// Reports a field that must be there and is not.
    pub(crate) fn need(&mut self, name: &'static str) {
        if self.take(name).is_none() {
            self.missing(name);
        }
    }

    /// Reports that a field is missing.
    fn missing(&mut self, name: &'static str) {
        let problem = Found::error(self.at, "missing-field")
            .with("path", self.path.as_str())
            .with("field", name);
        self.report(problem);
    }

    /// Puts the text of a field aside.
    pub(crate) fn leave(&mut self, name: &'static str) {
        let text = self.find(name).map_or("", |field| slice(self.text, &field.span)).to_owned();
        let already = |left: &Left| left.inner == self.inner && left.field.as_deref() == Some(name);
        if !self.left.iter().any(already) {
            self.left.push(Left { inner: self.inner, field: Some(name.to_owned()), text });
        }
    }

    pub(crate) fn out_of_range(&mut self, name: &'static str, piece: &Piece, limits: Limits) {
        let problem = self
            .problem(piece, "out-of-range", name, Severity::Error)
            .with("least", limits.0.to_string())
            .with("most", limits.1.to_string());
        self.report(problem);
        self.leave(name);
    }

    pub(crate) fn wrong_type(
        &mut self,
        name: &'static str,
        piece: &Piece,
        wanted: &str,
        severity: Severity,
    ) {
        let problem = self.problem(piece, "wrong-type", name, severity).with("wanted", wanted);
        self.report(problem);
        self.leave(name);
    }

    pub(crate) fn problem(
        &self,
        piece: &Piece,
        key: &'static str,
        field: &str,
        severity: Severity,
    ) -> Found {
        let found = excerpt(slice(self.text, &piece.span));
        Found { severity, ..Found::error(piece.span.start, key) }
            .with("path", self.path.as_str())
            .with("field", field)
            .with("found", found)
    }

    pub(crate) fn report(&mut self, problem: Found) {
        self.found.push(problem);
    }

    /// Reads a piece by serde.
    pub(crate) fn leaf<T: DeserializeOwned>(&self, piece: &Piece) -> Result<T, ron::Error> {
        leaf(slice(self.text, &piece.span))
    }

    /// The span of a field, from its name to the end of its value.
    pub(crate) fn find(&self, name: &str) -> Option<&'p Field> {
        self.fields.iter().find(|field| slice(self.text, &field.name) == name)
    }

    pub(crate) fn text_of(&mut self, name: &'static str, piece: &Piece) -> Option<String> {
        let text = matches!(piece.form, Form::Text).then(|| self.leaf(piece));
        match text {
            Some(Ok(text)) => return Some(text),
            Some(Err(_)) => {
                let problem = self.problem(piece, "unreadable-text", name, Severity::Error);
                self.report(problem);
                self.leave(name);
            }
            None => self.wrong_type(name, piece, "text", Severity::Error),
        }
        None
    }

    /// The text of a name, and whether it stands in quotes where it should not.
    fn word_of(&self, piece: &Piece) -> (String, bool) {
        let word = slice(self.text, &piece.span);
        if !matches!(piece.form, Form::Text) {
            return (word.to_owned(), false);
        }
        match self.leaf::<String>(piece) {
            Ok(inside) if is_name(&inside) => (inside, true),
            _ => (word.to_owned(), true),
        }
    }

    fn quoted_name(&mut self, name: &str, piece: &Piece) {
        let problem = self.problem(piece, "quoted-name", name, Severity::Warning);
        self.report(problem);
    }
}

/// The piece inside any `Some(…)`; `None` if it is `None`.
pub(crate) fn present<'p>(text: &str, piece: &'p Piece) -> Option<&'p Piece> {
    match &piece.form {
        Form::Word if slice(text, &piece.span) == "None" => None,
        Form::Tuple { name: Some(name), items } if slice(text, name) == "Some" => {
            match items.as_slice() {
                [inside] => present(text, inside),
                _ => Some(piece),
            }
        }
        // `Some(field: value)`: the struct is what counts.
        _ => Some(piece),
    }
}

/// The fields of a struct, or `None` if the piece is none.
pub(crate) fn struct_fields(piece: &Piece) -> Option<&[Field]> {
    match &piece.form {
        Form::Struct { fields, .. } => Some(fields),
        Form::Empty { .. } => Some(&[]),
        Form::Text | Form::Word | Form::Plain | Form::Tuple { .. } | Form::List(_) | Form::Map => {
            None
        }
    }
}

pub(crate) fn slice<'t>(text: &'t str, span: &Range<usize>) -> &'t str {
    text.get(span.clone()).unwrap_or_default()
}

/// Reads a text by serde, with `Some(…)` or without.
fn leaf<T: DeserializeOwned>(text: &str) -> Result<T, ron::Error> {
    ron::Options::default()
        .with_default_extension(Extensions::IMPLICIT_SOME)
        .from_str(text)
        .map_err(|error| error.code)
}

fn is_name(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_alphabetic())
        && text.chars().all(|c| c.is_ascii_alphanumeric() || c == '_')
}
