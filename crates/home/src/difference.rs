//! What differs between two states of a home, thing by thing and field by field.
//!
//! Things are told apart by what they are known by in the file: their id, or the ends of a connection.
//! Fields are those of the file, so that a new one is compared without a word here.

use std::collections::BTreeMap;

use crate::layout::{Entry, Node};
use crate::save::{Stored, home_entries, keys};
use crate::{
    Component, Connection, Contact, Document, Done, Drill, Home, Job, Level, MovedIn, Passage,
    Space, Warranty,
};

/// A sort of thing that a home has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The home itself.
    Home,
    /// A floor.
    Level,
    /// A room.
    Space,
    /// A way from room to room.
    Passage,
    /// Something installed.
    Component,
    /// What feeds what.
    Connection,
    /// Whom to call.
    Contact,
    /// Who answers for what.
    Warranty,
    /// Something to do now and then.
    Job,
    /// That it was done.
    Done,
    /// A tick of the move-in list.
    MovedIn,
    /// A paper or a picture.
    Document,
    /// A walk that was practised.
    Drill,
}

/// What became of one thing.
#[derive(Debug, Clone, PartialEq)]
pub struct Change {
    /// What sort of thing.
    pub part: Part,
    /// What it is known by among its sort: its id, for a connection `a..b` and what it carries.
    pub id: String,
    /// Its name for people, as it is now, or was before it went; for a connection and a passage, the
    /// names of its two ends.
    pub names: Vec<String>,
    /// What became of it.
    pub what: What,
}

/// What became of a thing.
#[derive(Debug, Clone, PartialEq)]
pub enum What {
    /// It is new.
    Added,
    /// It is gone.
    Removed,
    /// These fields differ, in the order of the file.
    Changed(Vec<FieldChange>),
    /// The things of this sort stand in another order; the change names none of them.
    Reordered,
}

/// A field that differs.
#[derive(Debug, Clone, PartialEq)]
pub struct FieldChange {
    /// The field, as the file names it, such as `name`.
    pub field: &'static str,
    /// The group that it is in, such as `operates`; empty if in none.
    pub within: &'static str,
    /// What it was; `None` if it was not told.
    pub before: Option<Value>,
    /// What it is; `None` if it is not told any more.
    pub after: Option<Value>,
}

/// What a field holds.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// A text, or the name of the thing that an id stands for.
    Text(String),
    /// A number, in the unit that the field's name tells, else SI.
    Number(f64),
    /// Yes or no.
    Yes(bool),
    /// A name of the model, such as `QuarterTurn`, with a number if it has one.
    Word(String, Option<f64>),
    /// A point or a pair, in metres.
    Point(Vec<f64>),
    /// Several.
    List(Vec<Self>),
}

/// What became of a home: first what concerns all of it, then sort by sort in the order of [`Part`];
/// within a sort, things that are there now in their order, then those that are gone.
///
/// It is empty if, and only if, the homes are equal, the format of the file they came from aside.
///
/// ```
/// use quarterturn_home::{Edit, Home, Part, changes};
///
/// let before = Home::default();
/// let after = Edit::SetName("Hut".to_owned()).made_on(&before)?;
/// assert_eq!(changes(&before, &after)[0].part, Part::Home);
/// assert!(changes(&after, &after).is_empty());
/// # Ok::<(), quarterturn_home::CannotEdit>(())
/// ```
#[must_use]
pub fn changes(before: &Home, after: &Home) -> Vec<Change> {
    let mut all = Vec::new();
    let fields = field_changes(before, after, &home_entries(before), &home_entries(after));
    if !fields.is_empty() {
        let names = vec![after.name.clone()];
        let what = What::Changed(fields);
        all.push(Change { part: Part::Home, id: String::new(), names, what });
    }
    let homes = (before, after);
    of_list(homes, Part::Level, |h| &h.levels, &mut all);
    of_list(homes, Part::Space, |h| &h.spaces, &mut all);
    of_list(homes, Part::Passage, |h| &h.passages, &mut all);
    of_list(homes, Part::Component, |h| &h.components, &mut all);
    of_list(homes, Part::Connection, |h| &h.connections, &mut all);
    of_list(homes, Part::Contact, |h| &h.contacts, &mut all);
    of_list(homes, Part::Warranty, |h| &h.warranties, &mut all);
    of_list(homes, Part::Job, |h| &h.jobs, &mut all);
    of_list(homes, Part::Done, |h| &h.done, &mut all);
    of_list(homes, Part::MovedIn, |h| &h.move_in, &mut all);
    of_list(homes, Part::Document, |h| &h.documents, &mut all);
    of_list(homes, Part::Drill, |h| &h.drills, &mut all);
    all
}

fn of_list<T: Known + 'static>(
    (before, after): (&Home, &Home),
    part: Part,
    list: impl Fn(&Home) -> &Vec<T>,
    all: &mut Vec<Change>,
) {
    let (old, new) = (list(before), list(after));
    let (old_keys, new_keys) = (keys(old), keys(new));
    let old_places: BTreeMap<&str, usize> =
        old_keys.iter().enumerate().map(|(place, key)| (key.as_str(), place)).collect();
    let change = |id: &str, names, what| Change { part, id: id.to_owned(), names, what };
    let mut shared = Vec::new();
    for (thing, key) in new.iter().zip(&new_keys) {
        let known = old_places.get(key.as_str()).copied();
        let Some((place, other)) = known.and_then(|place| Some((place, old.get(place)?))) else {
            all.push(change(key, thing.names(after), What::Added));
            continue;
        };
        shared.push(place);
        let fields = field_changes(before, after, &other.entries(), &thing.entries());
        if !fields.is_empty() {
            all.push(change(key, thing.names(after), What::Changed(fields)));
        }
    }
    for (place, (thing, key)) in old.iter().zip(&old_keys).enumerate() {
        if !shared.contains(&place) {
            all.push(change(key, thing.names(before), What::Removed));
        }
    }
    if !shared.is_sorted() {
        all.push(change("", Vec::new(), What::Reordered));
    }
}

/// The fields of one thing that differ.
fn field_changes(before: &Home, after: &Home, old: &[Entry], new: &[Entry]) -> Vec<FieldChange> {
    let mut all = Vec::new();
    // Both have all fields that there are, in the same order.
    for (old, new) in old.iter().zip(new) {
        if old.written() == new.written() {
            continue;
        }
        let groups = (group(old.value.as_ref()), group(new.value.as_ref()));
        if groups.0.is_none() && groups.1.is_none() {
            let value = |home: &Home, entry: &Entry| {
                entry.value.as_ref().map(|node| value(home, entry.name, node))
            };
            let (was, is) = (value(before, old), value(after, new));
            if !is_same_number(was.as_ref(), is.as_ref()) {
                all.push(FieldChange { field: old.name, within: "", before: was, after: is });
            }
            continue;
        }
        let empty: &[Entry] = &[];
        let (was, is) = (groups.0.unwrap_or(empty), groups.1.unwrap_or(empty));
        let names = if was.is_empty() { is } else { was }.iter().map(|entry| entry.name);
        let length = all.len();
        for name in names {
            let text =
                |entries: &[Entry]| find(entries, name).map_or_else(String::new, |e| e.written());
            if text(was) != text(is) {
                let value = |home: &Home, entries: &[Entry]| {
                    let node = find(entries, name)?.value.as_ref()?;
                    Some(value(home, name, node))
                };
                let (was, is) = (value(before, was), value(after, is));
                if !is_same_number(was.as_ref(), is.as_ref()) {
                    all.push(FieldChange { field: name, within: old.name, before: was, after: is });
                }
            }
        }
        if all.len() == length && groups.0.is_some() != groups.1.is_some() {
            // A group that tells nothing came or went.
            let told = |is_there: bool| is_there.then_some(Value::Yes(true));
            let (was, is) = (told(groups.0.is_some()), told(groups.1.is_some()));
            all.push(FieldChange { field: old.name, within: "", before: was, after: is });
        }
    }
    all
}

/// True for noughts of either sign, which the file writes apart.
fn is_same_number(one: Option<&Value>, other: Option<&Value>) -> bool {
    let is_number = |value: &Value| match value {
        Value::Number(_) | Value::Point(_) => true,
        Value::List(values) => values.iter().all(|value| matches!(value, Value::Point(_))),
        Value::Text(_) | Value::Yes(_) | Value::Word(..) => false,
    };
    one.is_some_and(is_number) && one == other
}

fn find<'e>(entries: &'e [Entry], name: &str) -> Option<&'e Entry> {
    entries.iter().find(|entry| entry.name == name)
}

fn group(node: Option<&Node>) -> Option<&[Entry]> {
    match node {
        Some(Node::Struct(entries)) => Some(entries),
        _ => None,
    }
}

/// What a node of the file tells, ids as the names of what they stand for.
fn value(home: &Home, field: &str, node: &Node) -> Value {
    match node {
        Node::List(items) => {
            Value::List(items.iter().map(|item| value(home, field, item)).collect())
        }
        Node::Struct(_) => Value::Text(node.on_one_line()),
        Node::Leaf(leaf) => of_leaf(home, field, leaf),
    }
}

fn of_leaf(home: &Home, field: &str, leaf: &str) -> Value {
    if leaf.starts_with('"') {
        let text: String = ron::from_str(leaf).unwrap_or_default();
        return Value::Text(name_of(home, field, &text).unwrap_or(text));
    }
    if let Ok(yes) = leaf.parse::<bool>() {
        return Value::Yes(yes);
    }
    if let Ok(number) = leaf.parse::<f64>() {
        return Value::Number(number);
    }
    let (word, inside) = leaf.split_once('(').unwrap_or((leaf, ""));
    let inside = inside.trim_end_matches(')');
    if word.is_empty() {
        let numbers: Option<Vec<f64>> =
            inside.split(',').map(|number| number.trim().parse().ok()).collect();
        return numbers.map_or_else(|| Value::Text(inside.to_owned()), Value::Point);
    }
    Value::Word(word.to_owned(), inside.parse().ok())
}

/// The name of what an id in this field stands for.
fn name_of(home: &Home, field: &str, id: &str) -> Option<String> {
    let name = match field {
        "space" | "usual_space" | "from" => home.space(id).map(|s| &s.name),
        "level" => home.level(id).map(|l| &l.name),
        "contact" | "owner" => home.contact(id).map(|c| &c.name),
        "covers" | "components" | "component" => home.component(id).map(|c| &c.name),
        _ => None,
    };
    name.filter(|name| !name.is_empty()).cloned()
}

/// What things are called.
trait Known: Stored {
    fn names(&self, home: &Home) -> Vec<String>;
}

macro_rules! known_by_name {
    ($($thing:ident)+) => {
        $(impl Known for $thing {
            fn names(&self, _: &Home) -> Vec<String> {
                vec![if self.name.is_empty() { self.id.clone() } else { self.name.clone() }]
            }
        })+
    };
}

known_by_name! { Level Space Component Contact Warranty Job Document }

fn component_name(home: &Home, id: &str) -> String {
    name_of(home, "component", id).unwrap_or_else(|| id.to_owned())
}

impl Known for Connection {
    fn names(&self, home: &Home) -> Vec<String> {
        [&self.from, &self.to].map(|id| component_name(home, id)).to_vec()
    }
}

impl Known for Passage {
    fn names(&self, home: &Home) -> Vec<String> {
        let name = |id: &String| name_of(home, "space", id).unwrap_or_else(|| id.clone());
        vec![name(&self.between.0), name(&self.between.1)]
    }
}

impl Known for Done {
    fn names(&self, home: &Home) -> Vec<String> {
        let job = home.jobs.iter().find(|job| job.id == self.job);
        vec![job.map_or_else(|| self.job.clone(), |job| job.name.clone()), self.on.to_string()]
    }
}

impl Known for MovedIn {
    fn names(&self, _: &Home) -> Vec<String> {
        vec![self.item.clone()]
    }
}

impl Known for Drill {
    fn names(&self, home: &Home) -> Vec<String> {
        vec![component_name(home, &self.component), self.on.to_string()]
    }
}
