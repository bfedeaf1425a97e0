//! Edits, and what differs between two states of a home, in words.

use quarterturn_home::{CannotEdit, Change, FieldChange, Home, Part, Value, What, Words};

use crate::catalogue::{Catalogue, Fill, count, fill};

impl Catalogue {
    /// The words of an edit, such as "move Kitchen tap".
    #[must_use]
    pub fn words(&self, (key, fills): &Words) -> String {
        let fills: Vec<Fill<'_>> = fills.iter().map(|(name, value)| fill(name, value)).collect();
        self.fill(key, &fills)
    }

    /// What undo takes back, such as "Undo: move Kitchen tap".
    #[must_use]
    pub fn undo(&self, words: &Words) -> String {
        self.fill("edit-undo", &[fill("what", &self.words(words))])
    }

    /// What redo makes again.
    #[must_use]
    pub fn redo(&self, words: &Words) -> String {
        self.fill("edit-redo", &[fill("what", &self.words(words))])
    }

    /// Why a home cannot be changed so.
    #[must_use]
    pub fn cannot_edit(&self, why: &CannotEdit, home: &Home) -> String {
        match why {
            CannotEdit::Unfit(problem) => self.problem_cause(problem),
            CannotEdit::NoComponent(_)
            | CannotEdit::Nothing { .. }
            | CannotEdit::NoId
            | CannotEdit::IdTaken(_)
            | CannotEdit::NoConnection(_)
            | CannotEdit::CannotConnect(_)
            | CannotEdit::DrainLoop(_) => self.words(&why.words(home)),
        }
    }

    /// What became of one thing, one line a fact.
    #[must_use]
    pub fn change(&self, change: &Change) -> Vec<String> {
        let thing = self.thing(change);
        match &change.what {
            What::Added => vec![self.fill("change-added", &[fill("thing", &thing)])],
            What::Removed => vec![self.fill("change-removed", &[fill("thing", &thing)])],
            What::Reordered => {
                let part = self.text(part_key(change.part));
                vec![self.fill("change-reordered", &[fill("part", &part)])]
            }
            What::Changed(fields) => {
                fields.iter().map(|field| self.field_change(&thing, field)).collect()
            }
        }
    }

    /// The sort of thing and its name, such as "Room: Kitchen".
    fn thing(&self, change: &Change) -> String {
        let part = self.text(part_key(change.part));
        let name = |place: usize| change.names.get(place).map(String::as_str).unwrap_or_default();
        let part = fill("part", &part);
        match change.part {
            Part::Connection | Part::Passage => {
                let ends = [part, fill("one", name(0)), fill("other", name(1))];
                self.fill("change-thing-between", &ends)
            }
            Part::Done | Part::Drill => {
                self.fill("change-thing-on", &[part, fill("name", name(0)), fill("on", name(1))])
            }
            Part::MovedIn => {
                // What an item of the built-in list is called stands in the catalogue.
                let key = format!("move-in-{}", name(0));
                let told = if self.has(&key) { self.text(&key) } else { name(0).to_owned() };
                self.fill("change-thing", &[part, fill("name", &told)])
            }
            Part::Home
            | Part::Level
            | Part::Space
            | Part::Component
            | Part::Contact
            | Part::Warranty
            | Part::Job
            | Part::Document => self.fill("change-thing", &[part, fill("name", name(0))]),
        }
    }

    fn field_change(&self, thing: &str, change: &FieldChange) -> String {
        let key = field_key(change);
        // A field that is younger than the texts shows as the file names it.
        let field = if self.has(&key) { self.text(&key) } else { change.field.to_owned() };
        let value = |value: &Option<Value>| value.as_ref().map(|value| self.value(value));
        let (thing, field) = (fill("thing", thing), fill("field", &field));
        match (value(&change.before), value(&change.after)) {
            (Some(before), Some(after)) => {
                let values = [thing, field, fill("before", &before), fill("after", &after)];
                self.fill("change-field", &values)
            }
            (None, Some(after)) => {
                self.fill("change-field-new", &[thing, field, fill("after", &after)])
            }
            (Some(before), None) => {
                self.fill("change-field-gone", &[thing, field, fill("before", &before)])
            }
            (None, None) => self.fill("change-field-other", &[thing, field]),
        }
    }

    fn value(&self, value: &Value) -> String {
        match value {
            Value::Text(text) => self.fill("change-quoted", &[fill("text", text)]),
            Value::Number(number) => plain(*number),
            Value::Yes(true) => self.text("change-yes"),
            Value::Yes(false) => self.text("change-no"),
            Value::Word(word, number) => {
                let word = kebab(word);
                let places = [
                    format!("change-word-{word}"),
                    format!("kind-{word}"),
                    format!("medium-{word}"),
                    format!("role-{word}"),
                ];
                let fills = [count("n", number.unwrap_or_default())];
                let known = places.iter().find(|key| self.has(key));
                known.map_or(word, |key| self.fill(key, &fills))
            }
            Value::Point(numbers) => {
                let numbers: Vec<String> = numbers.iter().map(|number| plain(*number)).collect();
                self.fill("change-point", &[fill("point", &numbers.join(" · "))])
            }
            Value::List(values) if values.len() > MOST_LISTED => {
                self.fill("change-several", &[fill("n", &values.len().to_string())])
            }
            Value::List(values) => {
                let values: Vec<String> = values.iter().map(|value| self.value(value)).collect();
                self.list(&values)
            }
        }
    }
}

/// Longer lists, such as the corners of a room, are counted.
const MOST_LISTED: usize = 6;

/// A number with no more digits than matter in a house: a millimetre, a tenth of a second.
fn plain(number: f64) -> String {
    let rounded = (number * 1000.0).round() / 1000.0;
    format!("{rounded}")
}

fn part_key(part: Part) -> &'static str {
    match part {
        Part::Home => "change-part-home",
        Part::Level => "change-part-level",
        Part::Space => "change-part-space",
        Part::Passage => "change-part-passage",
        Part::Component => "change-part-component",
        Part::Connection => "change-part-connection",
        Part::Contact => "change-part-contact",
        Part::Warranty => "change-part-warranty",
        Part::Job => "change-part-job",
        Part::Done => "change-part-done",
        Part::MovedIn => "change-part-moved-in",
        Part::Document => "change-part-document",
        Part::Drill => "change-part-drill",
    }
}

/// Key of a field's name. A field that stands in a group has a key of its own if it means something
/// else there.
fn field_key(change: &FieldChange) -> String {
    format!("change-of-{}", change.field.replace('_', "-"))
}

/// `QuarterTurn` as the catalogue writes it: `quarter-turn`.
fn kebab(word: &str) -> String {
    let mut kebab = String::new();
    for letter in word.chars() {
        if letter.is_ascii_uppercase() && !kebab.is_empty() {
            kebab.push('-');
        }
        kebab.push(letter.to_ascii_lowercase());
    }
    kebab
}

#[cfg(test)]
mod tests {
    use quarterturn_home::{
        Component, Connection, DeviceState, Edit, History, Home, Kind, Medium, Operates, Space,
        changes, mirrored,
    };

    use super::*;

    fn home() -> Home {
        let mut main = Component::new("main", Kind::IsolatingValve, "House main");
        main.space = Some("hall".to_owned());
        main.at = Some((1.0, 2.0, 0.4));
        main.operates = Some(Operates::default());
        let hall = Space {
            id: "hall".to_owned(),
            name: "Hall".to_owned(),
            level: None,
            outline: Vec::new(),
            outdoors: false,
        };
        let tap = Component::new("tap", Kind::Tap, "Kitchen tap");
        Home { spaces: vec![hall], components: vec![main, tap], ..Home::default() }
    }

    fn told(language: &str, before: &Home, after: &Home) -> Vec<String> {
        let catalogue = Catalogue::in_language(language);
        changes(before, after).iter().flat_map(|change| catalogue.change(change)).collect()
    }

    #[test]
    fn a_finding_a_line_and_a_room_are_told_in_words() {
        let before = home();
        let edits = Edit::All(vec![
            Edit::SetState {
                id: "main".to_owned(),
                state: DeviceState::Seized,
                exercised: "2026-05-02".parse().ok(),
            },
            Edit::Connect(Box::new(Connection::new("main", "tap", Medium::ColdWater))),
            Edit::RemoveSpace { id: "hall".to_owned() },
        ]);
        let after = edits.made_on(&before).unwrap();
        assert_eq!(
            told("en", &before, &after),
            [
                "Gone: Room “Hall”",
                "Device “House main”: room was “Hall”, is not told any more",
                "Device “House main”: place was (1 · 2 · 0.4 m), is not told any more",
                "Device “House main”: state is now stuck",
                "Device “House main”: last worked is now “2026-05-02”",
                "New: Line between “House main” and “Kitchen tap”",
            ]
        );
        let spanish = told("es", &before, &after);
        assert_eq!(spanish[0], "Ya no está: Cuarto «Hall»");
        assert_eq!(spanish[3], "Aparato «House main»: estado, ahora no se mueve");
    }

    #[test]
    fn undo_and_redo_say_what_they_take_back() {
        let mut history = History::new(home());
        let at = Some((2.0, 2.0, 1.0));
        let with = quarterturn_home::With::Nothing;
        history.apply(Edit::Move { id: "tap".to_owned(), space: None, at, with }).unwrap();
        let catalogue = Catalogue::english();
        let undo = history.undo_words().map(|words| catalogue.undo(words));
        assert_eq!(undo.as_deref(), Some("Undo: move Kitchen tap"));
        history.undo();
        let redo = history.redo_words().map(|words| catalogue.redo(words));
        assert_eq!(redo.as_deref(), Some("Redo: move Kitchen tap"));
        let spanish = Catalogue::in_language("es");
        let redo = history.redo_words().map(|words| spanish.redo(words));
        assert_eq!(redo.as_deref(), Some("Rehacer: mover Kitchen tap"));
    }

    #[test]
    fn why_not_is_told_in_the_words_of_the_file_or_of_the_edit() {
        let home = home();
        let catalogue = Catalogue::english();
        let why = |edit: Edit| catalogue.cannot_edit(&edit.made_on(&home).unwrap_err(), &home);
        let waste = Connection::new("main", "tap", Medium::Gas);
        let text = why(Edit::Connect(Box::new(waste)));
        assert!(text.starts_with("House main and Kitchen tap cannot be connected"), "{text}");
        let mut lost = Component::new("lost", Kind::Tap, "Lost");
        lost.space = Some("attic".to_owned());
        let text = why(Edit::PutComponent(Box::new(lost)));
        assert!(text.contains("attic") && !text.contains('['), "{text}");
    }

    #[test]
    fn a_mirrored_home_is_told_place_by_place() {
        let before = home();
        let mut wide = before.clone();
        wide.components[1].at = Some((9.0, 0.0, 1.0));
        for line in told("en", &wide, &mirrored(&wide)) {
            assert!(line.contains("place was ("), "{line}");
        }
    }
}
