//! The log of troubles: what happened, what was done, what was learnt.
//!
//! It is a file of its own beside the home, `log.ron`, read and written as carefully: all that is wrong
//! is reported at once with its place, and what cannot be used is kept word for word. Names stand in it
//! as they were on the day, so that it can be read when devices have other names, or are gone.

use std::collections::{BTreeMap, BTreeSet};

use crate::decode::{Fields, Limits, struct_fields};
use crate::kept::{Kept, KeptPiece, KeptPlace};
use crate::layout::{Entry, Node};
use crate::learnt::{Learnt, Lesson};
use crate::open::{kept_field, read_format, settle};
use crate::read::{Element, slots};
use crate::report::{Found, by_place};
use crate::save::{Lefts, Stored, number, quoted, text, unless, word, yes};
use crate::scan::{Form, Piece, Scan, excerpt, scan};
use crate::{Date, Home, Problem, Severity};

/// The newest `format` of the log that this version reads and writes.
pub const LOG_FORMAT: u32 = 1;

/// Troubles in a home, oldest first.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Log {
    /// One a trouble.
    pub entries: Vec<LogEntry>,
}

/// A trouble that was, or that was practised.
#[derive(Debug, Clone, PartialEq)]
pub struct LogEntry {
    /// The day.
    pub on: Date,
    /// The time of day, as `HH:MM`.
    pub at_time: Option<String>,
    /// Id of the trouble, such as `leak`.
    pub trouble: String,
    /// Ids of where it was: of a component, of both ends of a connection, or of a space; empty for the
    /// whole home.
    pub at: Vec<String>,
    /// What that place was called on the day.
    pub place_name: String,
    /// Ids of the devices that did not turn, hold or open.
    pub failed: Vec<String>,
    /// What was seen where: an id and the word for it, such as `wet`.
    pub seen: Vec<(String, String)>,
    /// What was done, in order.
    pub done: Vec<DoneStep>,
    /// Ids of the devices that ended it.
    pub solved_by: Vec<String>,
    /// What was learnt about the map.
    pub learnt: Vec<Learnt>,
    /// Least and most litres on the floor, as they were estimated.
    pub litres: Option<(f64, f64)>,
    /// Anything else.
    pub note: Option<String>,
    /// True if nothing happened and it was practised.
    pub practice: bool,
    /// What the ids of this entry were called on the day.
    pub names: Vec<(String, String)>,
}

/// A step that was done.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DoneStep {
    /// Its words, as they stood on the screen.
    pub text: String,
    /// Id of the device it was done at.
    pub component: Option<String>,
    /// How long it took, in seconds.
    pub seconds: Option<f64>,
}

/// What became of a log's file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct OpenedLog {
    /// The log, with what is sound. `None` if the text could not be read at all.
    pub log: Option<Log>,
    /// What is wrong, by place.
    pub problems: Vec<Problem>,
    /// What could not be read, so that saving can write it back.
    pub kept: Kept,
}

/// Reads the text of a log; `file` is the name that problems give.
///
/// An entry of which something cannot be used stays in [`OpenedLog::kept`], and is written back by
/// [`save_log`]. Only a text whose brackets or quotes do not close gives no log at all.
///
/// ```
/// let text = r#"Log(format: 1, entries: [(on: "2026-05-02", trouble: "leak", place_name: "Sink")])"#;
/// let opened = quarterturn_home::open_log("log.ron", text);
/// assert!(opened.problems.is_empty());
/// assert_eq!(opened.log.unwrap().entries[0].place_name, "Sink");
/// ```
#[must_use]
pub fn open_log(file: &str, text: &str) -> OpenedLog {
    let mut found = Vec::new();
    let (log, kept) = match scan(text, &mut found) {
        Ok(scan) => match read_log(text, &scan, &mut found) {
            Some((log, kept)) => (Some(log), kept),
            None => (None, Kept::default()),
        },
        Err(fatal) => {
            found.push(fatal);
            (None, Kept::default())
        }
    };
    OpenedLog { log, problems: by_place(file, text, found), kept }
}

/// The text of a log's file. The same log gives the same bytes.
///
/// What could not be used is written back as it stood. Do not save over a log that could not be read
/// ([`OpenedLog::may_save`]).
#[must_use]
pub fn save_log(log: &Log, kept: &Kept) -> String {
    let mut saved = String::new();
    let lines = |saved: &mut String, lines: &[String]| {
        for line in lines {
            saved.push_str(line);
            saved.push('\n');
        }
    };
    lines(&mut saved, &kept.above);
    saved.push_str("#![enable(implicit_some)]\n");
    lines(&mut saved, &kept.below);
    saved.push_str("Log(\n");
    let left = Lefts::of(kept);
    let format = Some(Node::Leaf(LOG_FORMAT.to_string()));
    let mut entries = vec![Entry::new("format", format), Entry::new(LogEntry::LIST, None)];
    let extra = left.lay_over("", "", "", &mut entries);
    let mut fields = BTreeMap::new();
    for entry in entries.iter().filter(|entry| !entry.written().is_empty()) {
        fields.insert(entry.name, format!("    {},\n", entry.written()));
    }
    left.list(&log.entries, &mut fields);
    for name in ["format", LogEntry::LIST] {
        saved.push_str(fields.get(name).map_or("", String::as_str));
    }
    for piece in extra {
        saved.push_str(&format!("    {piece},\n"));
    }
    saved.push_str(")\n");
    lines(&mut saved, kept.after.as_slice());
    saved
}

impl OpenedLog {
    /// True if saving the log loses nothing: it could be read, its entries are a list, and its format
    /// is one that this version writes.
    #[must_use]
    pub fn may_save(&self) -> bool {
        let is_strange =
            self.problems.iter().any(|p| matches!(p.key, "format-newer" | "format-unreadable"));
        // Entries that are no list would go when the first entry is added.
        let is_list = |piece: &KeptPiece| match &piece.place {
            KeptPlace::Field { field, element, .. } => {
                element.is_empty() && field.as_deref() == Some(LogEntry::LIST)
            }
            KeptPlace::Element { .. } => false,
        };
        self.log.is_some() && !is_strange && !self.kept.pieces.iter().any(is_list)
    }
}

impl Log {
    /// The entries that really happened, latest first; of one day, the last written first.
    pub fn latest(&self) -> impl Iterator<Item = &LogEntry> {
        let mut entries: Vec<&LogEntry> =
            self.entries.iter().rev().filter(|entry| !entry.practice).collect();
        entries.sort_by(|a, b| (b.on, &b.at_time).cmp(&(a.on, &a.at_time)));
        entries.into_iter()
    }
}

impl LogEntry {
    /// An entry with nothing known but the day, the trouble and the place.
    #[must_use]
    pub fn new(on: Date, trouble: &str, place_name: &str) -> Self {
        Self {
            on,
            at_time: None,
            trouble: trouble.to_owned(),
            at: Vec::new(),
            place_name: place_name.to_owned(),
            failed: Vec::new(),
            seen: Vec::new(),
            done: Vec::new(),
            solved_by: Vec::new(),
            learnt: Vec::new(),
            litres: None,
            note: None,
            practice: false,
            names: Vec::new(),
        }
    }

    /// Writes down what everything in this entry is called in `home` now. Names that stand in the entry
    /// already stay as they are.
    pub fn remember(&mut self, home: &Home) {
        let known: BTreeSet<String> = self.names.iter().map(|(id, _)| id.clone()).collect();
        let mut told = BTreeSet::new();
        let ids: Vec<String> = self.ids().map(str::to_owned).collect();
        for id in ids {
            if known.contains(&id) || !told.insert(id.clone()) {
                continue;
            }
            let component = home.component(&id).map(|c| match &c.tag {
                Some(tag) => format!("{} ({tag})", c.name),
                None => c.name.clone(),
            });
            if let Some(name) = component.or_else(|| home.space(&id).map(|s| s.name.clone())) {
                self.names.push((id, name));
            }
        }
    }

    /// What an id of this entry was called on the day; the id itself if that was not written down.
    #[must_use]
    pub fn name_of<'e>(&'e self, id: &'e str) -> &'e str {
        self.names.iter().find(|(known, _)| known == id).map_or(id, |(_, name)| name)
    }

    /// Every id that the entry speaks of, in its order.
    fn ids(&self) -> impl Iterator<Item = &str> {
        let done = self.done.iter().filter_map(|step| step.component.as_deref());
        let learnt = self.learnt.iter().flat_map(|l| {
            let space = match &l.lesson {
                Lesson::Place { space, .. } => space.as_deref(),
                Lesson::State(_) | Lesson::Tag(_) | Lesson::Name(_) => None,
            };
            std::iter::once(l.device.as_str()).chain(space)
        });
        let seen = self.seen.iter().map(|(id, _)| id.as_str());
        let lists = self.at.iter().chain(&self.failed).chain(&self.solved_by);
        lists.map(String::as_str).chain(seen).chain(done).chain(learnt)
    }
}

fn read_log(text: &str, scan: &Scan, found: &mut Vec<Found>) -> Option<(Log, Kept)> {
    let Some(pieces) = struct_fields(&scan.root) else {
        let shown = excerpt(text.get(scan.root.span.clone()).unwrap_or_default());
        found.push(Found::error(scan.root.span.start, "not-a-log").with("found", shown));
        return None;
    };
    if let Form::Struct { name: Some(name), .. } | Form::Empty { name: Some(name) } =
        &scan.root.form
    {
        let word = text.get(name.clone()).unwrap_or_default();
        if word != "Log" {
            // A home in place of the log must not be overwritten.
            found.push(Found::error(name.start, "not-a-log").with("found", word));
            return None;
        }
    }
    let mut kept = Kept { above: scan.above.clone(), below: scan.below.clone(), ..Kept::default() };
    if let Some(rest) = &scan.rest {
        let rest_text = text.get(rest.clone()).unwrap_or_default();
        found.push(Found::error(rest.start, "text-after-log").with("found", excerpt(rest_text)));
        kept.after = Some(rest_text.to_owned());
    }
    let mut fields = Fields::new(text, "Log".to_owned(), scan.root.span.start, pieces, found);
    read_format(&mut fields, LOG_FORMAT);
    let entries = slots(&mut fields);
    fields.finish();
    let left = std::mem::take(&mut fields.left);
    let entries = settle(text, entries, &mut kept);
    for piece in left {
        kept.pieces.push(kept_field("", "", piece, None));
    }
    Some((Log { entries }, kept))
}

impl Element for LogEntry {
    const LIST: &'static str = "entries";
    const NAME: &'static str = "LogEntry";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        fields.need("on");
        let on = fields.date("on");
        let at_time = fields.time("at_time");
        let trouble = fields.needed_text("trouble");
        let at = fields.texts("at");
        let place_name = fields.text("place_name").unwrap_or_default();
        let failed = fields.texts("failed");
        let seen = fields.pairs("seen");
        let done = fields.groups("done", read_step);
        let solved_by = fields.texts("solved_by");
        let learnt = fields.groups("learnt", read_learnt);
        let litres =
            fields.points("litres", "range", |(least, most): &(f64, f64)| vec![*least, *most]);
        let note = fields.text("note");
        let practice = fields.yes_or_no("practice").unwrap_or_default();
        let names = fields.pairs("names");
        Some(Self {
            on: on?,
            at_time,
            trouble: trouble?,
            at,
            place_name,
            failed,
            seen,
            done,
            solved_by,
            learnt,
            litres,
            note,
            practice,
            names,
        })
    }

    fn id(&self) -> Option<&str> {
        None
    }

    fn key(&self) -> String {
        format!("{} {}", self.on, self.trouble)
    }
}

impl Stored for LogEntry {
    fn entries(&self) -> Vec<Entry> {
        let list = |nodes: Vec<Node>| unless(nodes.is_empty(), Node::List(nodes));
        let texts = |values: &[String]| list(values.iter().map(|value| text(value)).collect());
        let pairs = |values: &[(String, String)]| {
            let pair = |(one, other): &(String, String)| {
                Node::Leaf(format!("({}, {})", quoted(one), quoted(other)))
            };
            list(values.iter().map(pair).collect())
        };
        let place = unless(self.place_name.is_empty(), text(&self.place_name));
        vec![
            Entry::new("on", Some(text(&self.on.to_string()))),
            Entry::new("at_time", self.at_time.as_deref().map(text)),
            Entry::new("trouble", Some(text(&self.trouble))),
            Entry::new("at", texts(&self.at)),
            Entry::new("place_name", place),
            Entry::new("failed", texts(&self.failed)),
            Entry::new("seen", pairs(&self.seen)),
            Entry::new("done", list(self.done.iter().map(step).collect())),
            Entry::new("solved_by", texts(&self.solved_by)),
            Entry::new("learnt", list(self.learnt.iter().map(learnt).collect())),
            Entry::new("litres", self.litres.map(|(a, b)| Node::Leaf(format!("({a:?}, {b:?})")))),
            Entry::new("note", self.note.as_deref().map(text)),
            Entry::new("practice", self.practice.then(yes)),
            Entry::new("names", pairs(&self.names)),
        ]
    }
}

fn read_step(fields: &mut Fields<'_, '_>) -> Option<DoneStep> {
    Some(DoneStep {
        text: fields.needed_text("text")?,
        component: fields.text("component"),
        seconds: fields.number("seconds", Limits::NOT_NEGATIVE),
    })
}

fn step(step: &DoneStep) -> Node {
    Node::Struct(vec![
        Entry::new("text", Some(text(&step.text))),
        Entry::new("component", step.component.as_deref().map(text)),
        Entry::new("seconds", step.seconds.map(number)),
    ])
}

/// Which lesson it is shows by which field stands there.
fn read_learnt(fields: &mut Fields<'_, '_>) -> Option<Learnt> {
    let device = fields.needed_text("device");
    let device_name = fields.text("device_name").unwrap_or_default();
    let state = fields.choice("state", Severity::Error).known();
    let tag = fields.text("tag");
    let name = fields.text("name");
    let space = fields.text("space");
    let space_name = fields.text("space_name").unwrap_or_default();
    let at = fields.points("at", "point", |(x, y, z): &(f64, f64, f64)| vec![*x, *y, *z]);
    let place =
        (space.is_some() || at.is_some()).then_some(Lesson::Place { space, space_name, at });
    let lessons = [state.map(Lesson::State), tag.map(Lesson::Tag), name.map(Lesson::Name), place];
    let mut lessons = lessons.into_iter().flatten();
    let lesson = lessons.next();
    if lesson.is_none() || lessons.next().is_some() {
        let problem = Found::error(fields.at, "one-lesson").with("path", fields.path.as_str());
        fields.report(problem);
        return None;
    }
    Some(Learnt { device: device?, device_name, lesson: lesson? })
}

fn learnt(learnt: &Learnt) -> Node {
    let name = &learnt.device_name;
    let mut entries = vec![
        Entry::new("device", Some(text(&learnt.device))),
        Entry::new("device_name", unless(name.is_empty(), text(name))),
    ];
    match &learnt.lesson {
        Lesson::State(state) => entries.push(Entry::new("state", Some(word(state)))),
        Lesson::Tag(tag) => entries.push(Entry::new("tag", Some(text(tag)))),
        Lesson::Name(name) => entries.push(Entry::new("name", Some(text(name)))),
        Lesson::Place { space, space_name, at } => {
            let at = at.map(|(x, y, z)| Node::Leaf(format!("({x:?}, {y:?}, {z:?})")));
            entries.push(Entry::new("space", space.as_deref().map(text)));
            entries.push(Entry::new("space_name", unless(space_name.is_empty(), text(space_name))));
            entries.push(Entry::new("at", at));
        }
    }
    Node::Struct(entries)
}

/// What only the log has: plain texts, pairs of them, groups in a list, and times of day. A list of
/// which one item cannot be used is kept as it stands.
impl<'p, 't> Fields<'p, 't> {
    fn texts(&mut self, name: &'static str) -> Vec<String> {
        self.list(name, |fields, piece| fields.text_of(name, piece))
    }

    fn pairs(&mut self, name: &'static str) -> Vec<(String, String)> {
        self.list(name, |fields, piece| {
            let pair = fields.leaf(piece).ok();
            if pair.is_none() {
                fields.wrong_type(name, piece, "pair", Severity::Error);
            }
            pair
        })
    }

    fn groups<T>(
        &mut self,
        name: &'static str,
        mut read: impl FnMut(&mut Fields<'_, 't>) -> Option<T>,
    ) -> Vec<T> {
        let mut number = 0_usize;
        self.list(name, |fields, piece: &'p Piece| {
            number += 1;
            let Some(pieces) = struct_fields(piece) else {
                fields.wrong_type(name, piece, "group", Severity::Error);
                return None;
            };
            let path = format!("{} / {name} / #{number}", fields.path);
            let at = piece.span.start;
            let mut inside = Fields::new(fields.text, path, at, pieces, fields.found);
            let value = read(&mut inside);
            inside.finish();
            let is_whole = inside.left.is_empty();
            if value.is_none() || !is_whole {
                fields.leave(name);
            }
            value
        })
    }

    fn time(&mut self, name: &'static str) -> Option<String> {
        let piece = self.take(name)?;
        let time = self.leaf::<String>(piece).ok().filter(|time| is_time(time));
        if time.is_none() {
            let problem = self.problem(piece, "unreadable-time", name, Severity::Error);
            self.report(problem);
            self.leave(name);
        }
        time
    }
}

/// True for `00:00` to `23:59`.
fn is_time(text: &str) -> bool {
    let two = |part: &str, most: u32| {
        part.len() == 2
            && part.bytes().all(|b| b.is_ascii_digit())
            && part.parse::<u32>().is_ok_and(|number| number <= most)
    };
    text.split_once(':').is_some_and(|(hours, minutes)| two(hours, 23) && two(minutes, 59))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Component, Edit, History, Kind};

    fn day(text: &str) -> Date {
        text.parse().unwrap()
    }

    #[test]
    fn names_stay_as_they_were_on_the_day() {
        let mut main = Component::new("main", Kind::IsolatingValve, "House main");
        main.tag = Some("W1".to_owned());
        let mut history = History::new(Home { components: vec![main], ..Home::default() });
        let mut entry = LogEntry::new(day("2026-05-02"), "leak", "Kitchen sink");
        entry.failed = vec!["main".to_owned()];
        entry.remember(history.home());
        let rename = Edit::Rename { id: "main".to_owned(), name: "Old main".to_owned() };
        history.apply(rename).unwrap();
        entry.solved_by = vec!["main".to_owned(), "gone".to_owned()];
        entry.remember(history.home());
        assert_eq!(entry.name_of("main"), "House main (W1)");
        assert_eq!(entry.name_of("gone"), "gone");
        assert_eq!(entry.names.len(), 1);
    }

    #[test]
    fn the_latest_comes_first_and_practice_is_left_out() {
        let entry = |on: &str, time: Option<&str>, place: &str| LogEntry {
            at_time: time.map(str::to_owned),
            ..LogEntry::new(day(on), "leak", place)
        };
        let practice = LogEntry { practice: true, ..entry("2026-09-09", None, "drill") };
        let log = Log {
            entries: vec![
                entry("2026-05-02", Some("09:10"), "b"),
                entry("2026-05-02", Some("08:00"), "c"),
                practice,
                entry("2026-06-01", None, "a"),
            ],
        };
        let places: Vec<_> = log.latest().map(|entry| entry.place_name.as_str()).collect();
        assert_eq!(places, ["a", "b", "c"]);
    }

    #[test]
    fn times_of_day() {
        for good in ["00:00", "23:59", "09:05"] {
            assert!(is_time(good), "{good}");
        }
        for bad in ["24:00", "9:05", "09:60", "0905", "+9:05", "09:05:00", ""] {
            assert!(!is_time(bad), "{bad}");
        }
    }
}
