//! Writes a home file.

use std::collections::BTreeMap;
use std::fmt::{Debug, Write as _};

use crate::kept::{Kept, KeptPiece, KeptPlace};
use crate::layout::{Entry, Node};
use crate::read::Element;
use crate::{
    Component, Connection, Contact, Document, Done, Drill, Duct, FORMAT, Home, Job, Level, MovedIn,
    OperableBy, Operates, Passage, Plan, Space, Units, Warranty,
};

/// The text of the home's file. The same home gives the same bytes.
///
/// Fields stand in the order of the model, and those that hold their default are not written.
/// Pieces that could not be used are written back where they stood, word for word, and unknown fields
/// at the end of their struct. Comments are lost, but for those above the home.
///
/// It writes [`FORMAT`]: do not save a home that was opened from a newer format
/// ([`Opened::may_save`](crate::Opened::may_save)).
#[must_use]
pub fn save(home: &Home, kept: &Kept) -> String {
    let mut text = String::new();
    for comment in &kept.above {
        push_line(&mut text, comment);
    }
    text.push_str("#![enable(implicit_some)]\n");
    for comment in &kept.below {
        push_line(&mut text, comment);
    }
    text.push_str("Home(\n");

    let left = Lefts::of(kept);
    let mut entries = home_entries(home);
    let extra = left.lay_over("", "", "", &mut entries);
    let mut fields: BTreeMap<&str, String> = BTreeMap::new();
    for entry in &entries {
        let written = entry.written();
        if !written.is_empty() {
            fields.insert(entry.name, format!("    {written},\n"));
        }
    }
    left.list(&home.levels, &mut fields);
    left.list(&home.spaces, &mut fields);
    left.list(&home.passages, &mut fields);
    left.list(&home.components, &mut fields);
    left.list(&home.connections, &mut fields);
    left.list(&home.contacts, &mut fields);
    left.list(&home.warranties, &mut fields);
    left.list(&home.jobs, &mut fields);
    left.list(&home.done, &mut fields);
    left.list(&home.move_in, &mut fields);
    left.list(&home.documents, &mut fields);
    left.list(&home.drills, &mut fields);
    for entry in &entries {
        text.push_str(fields.get(entry.name).map_or("", String::as_str));
    }
    for piece in extra {
        push_line(&mut text, &format!("    {piece},"));
    }
    text.push_str(")\n");
    if let Some(after) = &kept.after {
        push_line(&mut text, after);
    }
    text
}

/// What a field of an element is written as; `None` if it is not written.
pub(crate) fn written<T: Stored>(element: &T, inner: &str, field: &str) -> Option<String> {
    let entries = element.entries();
    find(&entries, inner, field).map(Entry::written).filter(|text| !text.is_empty())
}

/// What a field of the home itself is written as; `None` if it is not written.
pub(crate) fn home_written(home: &Home, field: &str) -> Option<String> {
    let entries = home_entries(home);
    find(&entries, "", field).map(Entry::written).filter(|text| !text.is_empty())
}

/// Keys of the elements of a list. Where several would be known by the same key, they are numbered.
pub(crate) fn keys<'e, T: Element + 'e>(elements: impl IntoIterator<Item = &'e T>) -> Vec<String> {
    let mut seen: BTreeMap<String, usize> = BTreeMap::new();
    elements
        .into_iter()
        .map(|element| {
            let key = element.key();
            let count = seen.entry(key.clone()).or_default();
            *count += 1;
            if *count == 1 { key } else { format!("{key} #{count}") }
        })
        .collect()
}

/// An element that can be written.
pub(crate) trait Stored: Element {
    /// All its fields, in the order of the model.
    fn entries(&self) -> Vec<Entry>;
}

/// What was put aside, by list and element.
pub(crate) struct Lefts<'k> {
    fields: BTreeMap<(&'k str, &'k str), Vec<&'k KeptPiece>>,
    elements: BTreeMap<&'k str, Vec<&'k KeptPiece>>,
}

impl<'k> Lefts<'k> {
    pub(crate) fn of(kept: &'k Kept) -> Self {
        let mut fields: BTreeMap<_, Vec<_>> = BTreeMap::new();
        let mut elements: BTreeMap<_, Vec<_>> = BTreeMap::new();
        for piece in &kept.pieces {
            match &piece.place {
                KeptPlace::Element { .. } => {
                    elements.entry(piece.list.as_str()).or_default().push(piece);
                }
                KeptPlace::Field { element, .. } => {
                    fields.entry((piece.list.as_str(), element.as_str())).or_default().push(piece);
                }
            }
        }
        Self { fields, elements }
    }

    /// Puts what was left of one struct over its fields, and returns what belongs to none.
    pub(crate) fn lay_over(
        &self,
        list: &str,
        key: &str,
        inside: &str,
        entries: &mut [Entry],
    ) -> Vec<String> {
        let mut extra = Vec::new();
        for piece in self.fields.get(&(list, key)).into_iter().flatten() {
            let KeptPlace::Field { inner, field, instead, .. } = &piece.place else { continue };
            if inner != inside {
                continue;
            }
            let Some(field) = field else {
                extra.push(piece.text.clone());
                continue;
            };
            if let Some(entry) = entries.iter_mut().find(|entry| entry.name == field)
                && entry.written() == instead.as_deref().unwrap_or_default()
            {
                entry.kept = Some(piece.text.clone());
            }
        }
        extra
    }

    /// Writes a list, with what was left of it, unless there is nothing to write.
    pub(crate) fn list<T: Stored>(&self, elements: &[T], fields: &mut BTreeMap<&str, String>) {
        let left = self.elements.get(T::LIST).map(Vec::as_slice).unwrap_or_default();
        if elements.is_empty() && left.is_empty() {
            return;
        }
        let keys = keys(elements);
        // Where each piece goes: behind that many elements.
        let mut behind: BTreeMap<usize, Vec<&str>> = BTreeMap::new();
        let numbers: BTreeMap<&str, usize> =
            keys.iter().enumerate().map(|(i, key)| (key.as_str(), i + 1)).collect();
        for piece in left {
            let KeptPlace::Element { after, index } = &piece.place else { continue };
            let known = match after {
                Some(key) => numbers.get(key.as_str()).copied(),
                None => Some(0),
            };
            let number = known.unwrap_or(*index).min(elements.len());
            behind.entry(number).or_default().push(&piece.text);
        }
        let mut text = format!("    {}: [\n", T::LIST);
        let push_left = |text: &mut String, number: usize| {
            for piece in behind.get(&number).into_iter().flatten() {
                text.push_str(&Node::Leaf((*piece).to_owned()).as_item(8));
            }
        };
        push_left(&mut text, 0);
        for (i, (element, key)) in elements.iter().zip(&keys).enumerate() {
            text.push_str(&self.element(element, key).as_item(8));
            push_left(&mut text, i + 1);
        }
        text.push_str("    ],\n");
        fields.insert(T::LIST, text);
    }

    fn element<T: Stored>(&self, element: &T, key: &str) -> Node {
        let mut entries = element.entries();
        if !self.fields.contains_key(&(T::LIST, key)) {
            return Node::Struct(entries);
        }
        for entry in &mut entries {
            if let Some(Node::Struct(inner)) = &mut entry.value {
                let extra = self.lay_over(T::LIST, key, entry.name, inner);
                inner.extend(extra.into_iter().map(extra_entry));
            }
        }
        let extra = self.lay_over(T::LIST, key, "", &mut entries);
        entries.extend(extra.into_iter().map(extra_entry));
        Node::Struct(entries)
    }
}

fn extra_entry(text: String) -> Entry {
    Entry { name: "", value: None, kept: Some(text) }
}

fn find<'e>(entries: &'e [Entry], inner: &str, field: &str) -> Option<&'e Entry> {
    if inner.is_empty() {
        return entries.iter().find(|entry| entry.name == field);
    }
    match &entries.iter().find(|entry| entry.name == inner)?.value {
        Some(Node::Struct(entries)) => find(entries, "", field),
        _ => None,
    }
}

fn push_line(text: &mut String, line: &str) {
    text.push_str(line);
    text.push('\n');
}

/// The fields of the home; its lists are empty here and are written by [`Lefts::list`].
pub(crate) fn home_entries(home: &Home) -> Vec<Entry> {
    let mut entries = vec![
        Entry::new("format", Some(Node::Leaf(FORMAT.to_string()))),
        Entry::new("name", Some(text(&home.name))),
        Entry::new("units", unless(home.units == Units::default(), word(&home.units))),
        Entry::new("language", home.language.as_deref().map(text)),
        Entry::new("address", home.address.as_deref().map(text)),
        Entry::new("emergency_phone", home.emergency_phone.as_deref().map(text)),
        Entry::new("usual_space", home.usual_space.as_deref().map(text)),
        Entry::new("north_deg", home.north_deg.map(number)),
    ];
    let lists = [
        Level::LIST,
        Space::LIST,
        Passage::LIST,
        Component::LIST,
        Connection::LIST,
        Contact::LIST,
        Warranty::LIST,
        Job::LIST,
        Done::LIST,
        MovedIn::LIST,
        Document::LIST,
        Drill::LIST,
    ];
    entries.extend(lists.map(|name| Entry::new(name, None)));
    entries
}

impl Stored for Level {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("elevation_m", unless_zero(self.elevation_m)),
            Entry::new("plan", self.plan.as_ref().map(plan)),
        ]
    }
}

fn plan(plan: &Plan) -> Node {
    Node::Struct(vec![
        Entry::new("picture", Some(text(&plan.picture))),
        Entry::new("left_m", unless_zero(plan.left_m)),
        Entry::new("top_m", unless_zero(plan.top_m)),
        Entry::new("width_m", Some(number(plan.width_m))),
        Entry::new("mirrored", plan.mirrored.then(yes)),
    ])
}

impl Stored for Space {
    fn entries(&self) -> Vec<Entry> {
        let outline = self.outline.iter().map(|(x, y)| Node::Leaf(format!("({x:?}, {y:?})")));
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("level", self.level.as_deref().map(text)),
            Entry::new("outline", unless(self.outline.is_empty(), Node::List(outline.collect()))),
            Entry::new("outdoors", self.outdoors.then(yes)),
        ]
    }
}

impl Stored for Passage {
    fn entries(&self) -> Vec<Entry> {
        let (one, other) = (quoted(&self.between.0), quoted(&self.between.1));
        let point = |at: Option<(f64, f64)>| at.map(|(x, y)| Node::Leaf(format!("({x:?}, {y:?})")));
        vec![
            Entry::new("between", Some(Node::Leaf(format!("({one}, {other})")))),
            Entry::new("at", point(self.at)),
            Entry::new("stairs", self.stairs.then(yes)),
            Entry::new("to_at", point(self.to_at)),
            Entry::new("note", self.note.as_deref().map(text)),
        ]
    }
}

impl Stored for Component {
    fn entries(&self) -> Vec<Entry> {
        let at = self.at.map(|(x, y, z)| Node::Leaf(format!("({x:?}, {y:?}, {z:?})")));
        let is_anyone = self.operable_by == OperableBy::default();
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("kind", Some(Node::Leaf(self.kind.name().to_owned()))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("tag", self.tag.as_deref().map(text)),
            Entry::new("space", self.space.as_deref().map(text)),
            Entry::new("at", at),
            Entry::new("operates", self.operates.as_ref().map(operates)),
            Entry::new("operable_by", unless(is_anyone, word(&self.operable_by))),
            Entry::new("rating_a", self.rating_a.map(number)),
            Entry::new("poles", self.poles.map(|poles| word(&poles))),
            Entry::new("watts", self.watts.map(number)),
            Entry::new("volume_l", self.volume_l.map(number)),
            Entry::new("joins", self.joins.map(|joins| word(&joins))),
            Entry::new("critical", self.critical.then(yes)),
            Entry::new("boundary", self.boundary.then(yes)),
            Entry::new("owner", self.owner.as_deref().map(text)),
            Entry::new("panel", self.panel.as_deref().map(text)),
            Entry::new("circuit", self.circuit.as_deref().map(text)),
            Entry::new("arc_fault", self.arc_fault.then(yes)),
            Entry::new("installed", self.installed.map(|day| text(&day.to_string()))),
            Entry::new("duct", self.duct.as_ref().map(duct)),
            Entry::new("lamp", self.lamp.as_deref().map(text)),
            Entry::new("photo", self.photo.as_deref().map(text)),
            Entry::new("note", self.note.as_deref().map(text)),
            Entry::new("private", self.private.then(yes)),
        ]
    }
}

fn duct(duct: &Duct) -> Node {
    let elbows = |count: u32| unless(count == 0, word(&count));
    Node::Struct(vec![
        Entry::new("length_m", duct.length_m.map(number)),
        Entry::new("quarter_elbows", elbows(duct.quarter_elbows)),
        Entry::new("eighth_elbows", elbows(duct.eighth_elbows)),
    ])
}

fn operates(operates: &Operates) -> Node {
    let plain = Operates::default();
    let state = unless(operates.state == plain.state, word(&operates.state));
    let normally = unless(operates.normally == plain.normally, word(&operates.normally));
    Node::Struct(vec![
        Entry::new("handle", operates.handle.as_ref().map(word)),
        Entry::new("closes", operates.closes.as_ref().map(word)),
        Entry::new("state", state),
        Entry::new("normally", normally),
        Entry::new("tool", operates.tool.as_deref().map(text)),
        Entry::new("exercised", operates.exercised.map(|day| text(&day.to_string()))),
        Entry::new("seconds", operates.seconds.map(number)),
    ])
}

impl Stored for Connection {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("id", self.id.as_deref().map(text)),
            Entry::new("from", Some(text(&self.from))),
            Entry::new("to", Some(text(&self.to))),
            Entry::new("carries", Some(word(&self.carries))),
            Entry::new("length_m", self.length_m.map(number)),
            Entry::new("size", self.size.as_deref().map(text)),
            Entry::new("material", self.material.as_ref().map(word)),
            Entry::new("one_way", self.one_way.then(yes)),
            Entry::new("note", self.note.as_deref().map(text)),
        ]
    }
}

impl Stored for Contact {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("phone", self.phone.as_deref().map(text)),
            Entry::new("role", self.role.as_ref().map(word)),
            Entry::new("hours", self.hours.as_deref().map(text)),
            Entry::new("note", self.note.as_deref().map(text)),
        ]
    }
}

impl Stored for Warranty {
    fn entries(&self) -> Vec<Entry> {
        let media = Node::List(self.media.iter().map(word).collect());
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("kind", self.kind.as_ref().map(word)),
            Entry::new("contact", self.contact.as_deref().map(text)),
            Entry::new("covers", texts(&self.covers)),
            Entry::new("media", unless(self.media.is_empty(), media)),
            Entry::new("from", Some(text(&self.from.to_string()))),
            Entry::new("years", self.years.as_ref().map(word)),
            Entry::new("days", self.days.as_ref().map(word)),
            Entry::new("months", self.months.as_ref().map(word)),
        ]
    }
}

impl Stored for Job {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("stands_for", self.stands_for.as_deref().map(text)),
            Entry::new("components", texts(&self.components)),
            Entry::new("how", self.how.as_deref().map(text)),
            Entry::new("every_months", self.every_months.as_ref().map(word)),
            Entry::new("last_done", self.last_done.map(|day| text(&day.to_string()))),
            Entry::new("note", self.note.as_deref().map(text)),
        ]
    }
}

impl Stored for Done {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("job", Some(text(&self.job))),
            Entry::new("on", Some(text(&self.on.to_string()))),
            Entry::new("by", self.by.as_deref().map(text)),
            Entry::new("components", texts(&self.components)),
            Entry::new("finding", self.finding.as_ref().map(word)),
            Entry::new("note", self.note.as_deref().map(text)),
        ]
    }
}

impl Stored for MovedIn {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("item", Some(text(&self.item))),
            Entry::new("on", Some(text(&self.on.to_string()))),
            Entry::new("by", Some(text(&self.by))),
            Entry::new("note", self.note.as_deref().map(text)),
        ]
    }
}

impl Stored for Document {
    fn entries(&self) -> Vec<Entry> {
        vec![
            Entry::new("id", Some(text(&self.id))),
            Entry::new("name", Some(text(&self.name))),
            Entry::new("file", self.file.as_deref().map(text)),
            Entry::new("components", texts(&self.components)),
            Entry::new("private", self.private.then(yes)),
        ]
    }
}

/// A text in quotes. Letters of every language stand as they are.
pub(crate) fn text(value: &str) -> Node {
    Node::Leaf(quoted(value))
}

pub(crate) fn quoted(value: &str) -> String {
    let mut quoted = String::with_capacity(value.len() + 2);
    quoted.push('"');
    for c in value.chars() {
        match c {
            '"' => quoted.push_str("\\\""),
            '\\' => quoted.push_str("\\\\"),
            '\n' => quoted.push_str("\\n"),
            '\r' => quoted.push_str("\\r"),
            '\t' => quoted.push_str("\\t"),
            c if c.is_control() => {
                // Writing to a string cannot fail.
                let _written: Result<(), std::fmt::Error> =
                    write!(quoted, "\\u{{{:x}}}", u32::from(c));
            }
            c => quoted.push(c),
        }
    }
    quoted.push('"');
    quoted
}

fn texts(values: &[String]) -> Option<Node> {
    unless(values.is_empty(), Node::List(values.iter().map(|value| text(value)).collect()))
}

/// A name of the model, or a whole number: they are written as Rust writes them.
pub(crate) fn word<T: Debug>(value: &T) -> Node {
    Node::Leaf(format!("{value:?}"))
}

pub(crate) fn number(value: f64) -> Node {
    Node::Leaf(format!("{value:?}"))
}

pub(crate) fn yes() -> Node {
    Node::Leaf("true".to_owned())
}

pub(crate) fn unless(is_default: bool, node: Node) -> Option<Node> {
    (!is_default).then_some(node)
}

fn unless_zero(value: f64) -> Option<Node> {
    // Both noughts are the default.
    unless(value.total_cmp(&0.0).is_eq() || value.total_cmp(&-0.0).is_eq(), number(value))
}
