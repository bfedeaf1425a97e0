//! Edits drawn at random: all can be undone, none makes a home that its file cannot tell, and the
//! differences are exactly what they did.

use std::collections::BTreeSet;

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use quarterturn_home::{
    Change, Component, Connection, Contact, DeviceState, Document, Done, Drill, Edit, History,
    Home, Job, Kept, Kind, Level, Medium, MovedIn, Part, Passage, Plan, Role, Space, Units,
    Warranty, What, With, changes, depends_on, open, removal, save,
};

use crate::drawn::{date, home, some_text, text};

/// What an edit is drawn from; which home it is made on decides the rest.
#[derive(Debug, Clone)]
struct Drawn {
    which: usize,
    at: [Index; 3],
    text: String,
    other: Option<String>,
    place: Option<(f64, f64, f64)>,
    number: f64,
    day: quarterturn_home::Date,
    kind: Kind,
    medium: Medium,
    state: DeviceState,
    with: With,
    flag: bool,
}

prop_compose! {
    fn drawn()(
        which in 0_usize..39,
        at in any::<[Index; 3]>(),
        text in text(),
        other in some_text(),
        place in option::of((-50.0..50.0, -50.0..50.0, prop_oneof![0.0..3.0, Just(f64::NAN)])),
        number in prop_oneof![0.0..4000.0, Just(f64::INFINITY), Just(-1.0)],
        day in date(),
        kind in select(Kind::ALL),
        medium in select(vec![Medium::ColdWater, Medium::Waste, Medium::Power, Medium::Gas]),
        state in select(vec![DeviceState::Works, DeviceState::Seized]),
        with in select(vec![With::Nothing, With::Attached, With::AttachedAndLines]),
        flag in any::<bool>(),
    ) -> Drawn {
        Drawn { which, at, text, other, place, number, day, kind, medium, state, with, flag }
    }
}

/// An id of the list, or one that nothing has.
fn id<T>(list: &[T], at: Index, own: impl Fn(&T) -> &String) -> String {
    let place = at.index(list.len() + 1);
    list.get(place).map_or_else(|| "nobody".to_owned(), |thing| own(thing).clone())
}

impl Drawn {
    fn edit(&self, home: &Home) -> Edit {
        let [a, b, c] = self.at;
        let device = |at| id(&home.components, at, |c| &c.id);
        let space = |at| id(&home.spaces, at, |s| &s.id);
        let level = |at| id(&home.levels, at, |l| &l.id);
        let contact = |at| id(&home.contacts, at, |c| &c.id);
        let (text, other) = (self.text.clone(), self.other.clone());
        let new_id = if self.flag { home.free_id(&self.text) } else { text.clone() };
        let line = |at: Index| {
            let known = home.connections.get(at.index(home.connections.len() + 1));
            known.cloned().unwrap_or_else(|| Connection::new(&device(b), &device(c), self.medium))
        };
        let put_id = |known: String| if known == "nobody" { new_id.clone() } else { known };
        match self.which {
            0 => Edit::SetState { id: device(a), state: self.state, exercised: Some(self.day) },
            1 | 2 => {
                let id = put_id(device(a));
                let space = self.flag.then(|| space(b));
                let owner = Some(contact(c));
                let new = Component::new(&id, self.kind, &text);
                Edit::PutComponent(Box::new(Component { space, at: self.place, owner, ..new }))
            }
            3 => Edit::RemoveComponent { id: device(a) },
            4..=7 => {
                let new = Connection::new(&device(a), &device(b), self.medium);
                Edit::Connect(Box::new(Connection { length_m: Some(self.number), ..new }))
            }
            8 => Edit::Disconnect(Box::new(line(a))),
            9 => {
                let (old, new) = (line(a), line(b));
                Edit::ChangeConnection {
                    old: Box::new(old.clone()),
                    new: Box::new(Connection { size: other, one_way: self.flag, ..new }),
                }
            }
            10 => Edit::Rename { id: device(a), name: text },
            11 => Edit::SetTag { id: device(a), tag: other },
            12 | 13 => Edit::Move {
                id: device(a),
                space: self.flag.then(|| space(b)),
                at: self.place,
                with: self.with,
            },
            14 | 15 => Edit::Copy {
                id: device(a),
                new_id,
                name: text,
                space: self.flag.then(|| space(b)),
                at: self.place,
                with: self.with,
            },
            16 => Edit::PutSpace(Box::new(Space {
                id: put_id(space(a)),
                name: text,
                level: self.flag.then(|| level(b)),
                outline: vec![(0.0, self.number), (1.0, 1.0), (2.0, 0.0)],
                outdoors: self.flag,
            })),
            17 => Edit::RemoveSpace { id: space(a) },
            18 => Edit::AddPassage(Box::new(Passage::new(&space(a), &space(b)))),
            19 => {
                let known = home.passages.get(a.index(home.passages.len() + 1)).cloned();
                Edit::RemovePassage(Box::new(known.unwrap_or_else(|| Passage::new("x", "y"))))
            }
            20 => Edit::PutLevel(Box::new(Level {
                id: put_id(level(a)),
                name: text,
                elevation_m: self.number,
                plan: None,
            })),
            21 => Edit::RemoveLevel { id: level(a) },
            22 => {
                let plan = Plan {
                    picture: text,
                    left_m: 0.0,
                    top_m: 0.0,
                    width_m: self.number,
                    mirrored: self.flag,
                };
                Edit::SetPlan { level: level(a), plan: self.flag.then(|| Box::new(plan)) }
            }
            23 => Edit::PutContact(Box::new(Contact {
                id: put_id(contact(a)),
                name: text,
                phone: other,
                role: Some(Role::Plumber),
                hours: None,
                note: None,
            })),
            24 => Edit::RemoveContact { id: contact(a) },
            25 => Edit::PutWarranty(Box::new(Warranty {
                id: put_id(id(&home.warranties, a, |w| &w.id)),
                name: text,
                kind: None,
                contact: Some(contact(b)),
                covers: vec![device(c)],
                media: Vec::new(),
                from: self.day,
                years: None,
                days: Some(30),
                months: None,
            })),
            26 => Edit::RemoveWarranty { id: id(&home.warranties, a, |w| &w.id) },
            27 => Edit::PutJob(Box::new(Job {
                id: put_id(id(&home.jobs, a, |j| &j.id)),
                name: text,
                stands_for: None,
                components: vec![device(b)],
                how: other,
                every_months: Some(u32::from(self.flag)),
                last_done: Some(self.day),
                note: None,
            })),
            28 => Edit::RemoveJob { id: id(&home.jobs, a, |j| &j.id) },
            29 => {
                let done = Done {
                    job: text,
                    on: self.day,
                    by: other,
                    components: vec![device(a)],
                    finding: Some(self.state),
                    note: None,
                };
                Edit::AddDone(Box::new(done))
            }
            30 => {
                let tick =
                    MovedIn { item: text.clone(), on: self.day, by: text.clone(), note: other };
                Edit::All(vec![
                    Edit::TickMoveIn(Box::new(tick)),
                    if self.flag { Edit::UntickMoveIn { item: text } } else { Edit::SetName(text) },
                ])
            }
            31 => Edit::PutDocument(Box::new(Document {
                id: put_id(id(&home.documents, a, |d| &d.id)),
                name: text,
                file: other,
                components: vec![device(b), device(c)],
                private: self.flag,
            })),
            32 => Edit::RemoveDocument { id: id(&home.documents, a, |d| &d.id) },
            33 => {
                let from = self.flag.then(|| space(b));
                let drill = Drill::new(&device(a), from.as_deref(), self.number, self.day);
                Edit::AddDrill(Box::new(drill))
            }
            34 => {
                let known = home.drills.get(a.index(home.drills.len() + 1)).cloned();
                Edit::RemoveDrill(Box::new(
                    known.unwrap_or_else(|| Drill::new("x", None, 1.0, self.day)),
                ))
            }
            35 => Edit::Named {
                key: "edit-language",
                fills: Vec::new(),
                edits: vec![Edit::SetLanguage(other.clone()), Edit::SetAddress(other)],
            },
            36 => Edit::All(vec![Edit::SetUnits(Units::Us), Edit::SetEmergencyPhone(other)]),
            // Mostly no direction, and refused then.
            37 => Edit::SetNorth(self.flag.then_some(self.number)),
            _ => Edit::SetUsualSpace(self.flag.then(|| space(a))),
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, ..ProptestConfig::default() })]

    #[test]
    fn every_edit_is_undone_and_redone_exactly(
        home in home(),
        drawn in vec((drawn(), select(vec!["", "", "drag", "type"])), 1..24),
    ) {
        let mut history = History::new(home);
        let mut states = vec![(**history.home()).clone()];
        let mut last = "";
        for (drawn, gesture) in drawn {
            let edit = drawn.edit(history.home());
            let before = (**history.home()).clone();
            let words = edit.words(&before);
            crate::words::has_words(&words);
            let made = edit.made_on(&before);
            let goes_on = !gesture.is_empty() && gesture == last && states.len() > 1;
            let applied = if gesture.is_empty() {
                history.apply(edit)
            } else {
                history.apply_within(gesture, edit)
            };
            prop_assert_eq!(applied.is_ok(), made.is_ok());
            if let Err(why) = &made {
                crate::words::says_why_not(why, &before);
            }
            let Ok(made) = made else {
                prop_assert_eq!(&**history.home(), &before, "a refused edit changed something");
                continue;
            };
            prop_assert_eq!(&**history.home(), &made);
            if made != before {
                if goes_on {
                    states.pop();
                } else {
                    prop_assert_eq!(history.undo_words(), Some(&words));
                }
                states.push(made);
            }
            last = gesture;
        }
        for state in states.iter().rev().skip(1) {
            prop_assert!(history.undo());
            prop_assert_eq!(&**history.home(), state);
        }
        prop_assert!(!history.undo());
        for state in states.iter().skip(1) {
            prop_assert!(history.redo());
            prop_assert_eq!(&**history.home(), state);
        }
        prop_assert!(!history.redo());
    }

    #[test]
    fn an_edited_home_is_told_by_its_file(home in home(), drawn in vec(drawn(), 1..12)) {
        let mut home = home;
        for drawn in drawn {
            let edit = drawn.edit(&home);
            let Ok(made) = edit.made_on(&home) else { continue };
            home = made;
        }
        let saved = save(&home, &Kept::default());
        let opened = open("home.ron", &saved);
        let errors: Vec<_> = opened
            .problems
            .iter()
            .filter(|p| p.severity == quarterturn_home::Severity::Error)
            .collect();
        prop_assert!(errors.is_empty(), "{:?}\n{}", errors, saved);
        prop_assert_eq!(opened.home.as_ref(), Some(&home));
    }

    #[test]
    fn the_differences_are_what_the_edit_did(home in home(), drawn in drawn()) {
        let edit = drawn.edit(&home);
        prop_assert!(changes(&home, &home).is_empty());
        let Ok(made) = edit.made_on(&home) else { return Ok(()) };
        let told = changes(&home, &made);
        prop_assert_eq!(told.is_empty(), home == made, "{:?}", told);
        // Backwards, what came goes.
        let back = changes(&made, &home);
        prop_assert_eq!(sorts(&back, &What::Added), sorts(&told, &What::Removed));
        prop_assert_eq!(sorts(&back, &What::Removed), sorts(&told, &What::Added));
        prop_assert_eq!(touched(&back), touched(&told));
        if let Some(expected) = expected(&edit, &home, &made) {
            let told: BTreeSet<(Part, String)> =
                told.iter().map(|change| (change.part, change.id.clone())).collect();
            prop_assert!(told.is_subset(&expected), "{:?}\n{:?}", told, edit);
        }
    }

    /// Laying the new fields over the old home gives the new one: nothing is missed.
    #[test]
    fn what_is_not_told_to_differ_is_the_same(one in home(), other in home()) {
        let told = changes(&one, &other);
        let names = |part: Part| -> BTreeSet<&str> {
            told.iter().filter(|c| c.part == part).map(|c| c.id.as_str()).collect()
        };
        let components = names(Part::Component);
        for component in &one.components {
            let same = other.component(&component.id) == Some(component);
            prop_assert_eq!(!components.contains(component.id.as_str()), same, "{}", component.id);
        }
        let spaces = names(Part::Space);
        for space in &other.spaces {
            let same = one.space(&space.id) == Some(space);
            prop_assert_eq!(!spaces.contains(space.id.as_str()), same, "{}", space.id);
        }
        for change in &told {
            crate::words::tells(change);
            if let What::Changed(fields) = &change.what {
                prop_assert!(!fields.is_empty());
                for field in fields {
                    // Two things of one name differ all the same.
                    let is_text = matches!(field.after, Some(quarterturn_home::Value::Text(_)));
                    prop_assert!(is_text || field.before != field.after, "{:?}", change);
                }
            }
        }
    }

    #[test]
    fn what_depends_on_a_thing_is_all_that_goes_with_it(home in home(), at in any::<Index>()) {
        let mut ids: Vec<String> = home.components.iter().map(|c| c.id.clone()).collect();
        ids.extend(home.spaces.iter().map(|s| s.id.clone()));
        ids.extend(home.levels.iter().map(|l| l.id.clone()));
        ids.extend(home.contacts.iter().map(|c| c.id.clone()));
        let id = at.get(&ids);
        let (part, edit) = removal(&home, id).unwrap();
        let told = depends_on(&home, id);
        let made = edit.made_on(&home).unwrap();
        let text = save(&made, &Kept::default());
        prop_assert!(!text.contains(&format!("{id:?}")), "{id} is still mentioned:\n{text}");
        // Everything else that mentioned it is told.
        let itself = Change {
            part,
            id: id.clone(),
            names: Vec::new(),
            what: What::Removed,
        };
        let all = changes(&home, &made);
        prop_assert_eq!(all.len(), told.len() + 1);
        prop_assert!(all.iter().any(|c| c.part == itself.part && c.id == itself.id));
        let mentions = save(&home, &Kept::default()).matches(&format!("{id:?}")).count();
        prop_assert!(mentions <= 1 || !told.is_empty());
    }
}

/// The things that are new, or gone.
fn sorts(changes: &[Change], what: &What) -> BTreeSet<(Part, String)> {
    let those = changes.iter().filter(|change| change.what == *what);
    those.map(|change| (change.part, change.id.clone())).collect()
}

fn touched(changes: &[Change]) -> BTreeSet<(Part, String)> {
    changes.iter().map(|change| (change.part, change.id.clone())).collect()
}

/// What an edit may touch, where that can be told from the edit alone.
fn expected(edit: &Edit, before: &Home, after: &Home) -> Option<BTreeSet<(Part, String)>> {
    let one = |part: Part, id: &str| Some(BTreeSet::from([(part, id.to_owned())]));
    match edit {
        Edit::SetState { id, .. } | Edit::Rename { id, .. } | Edit::SetTag { id, .. } => {
            one(Part::Component, id)
        }
        Edit::Move { id, with: With::Nothing, .. } => one(Part::Component, id),
        Edit::Copy { new_id, with: With::Nothing, .. } => one(Part::Component, new_id),
        Edit::PutComponent(new) => one(Part::Component, &new.id),
        Edit::PutSpace(new) => one(Part::Space, &new.id),
        Edit::PutLevel(new) => one(Part::Level, &new.id),
        Edit::PutContact(new) => one(Part::Contact, &new.id),
        Edit::PutJob(new) => one(Part::Job, &new.id),
        Edit::PutDocument(new) => one(Part::Document, &new.id),
        Edit::SetUsualSpace(_) | Edit::SetNorth(_) => one(Part::Home, ""),
        Edit::Connect(_) => {
            assert_eq!(after.connections.len(), before.connections.len() + 1);
            let told = changes(before, after);
            assert_eq!(told.len(), 1, "{told:?}");
            assert_eq!((told[0].part, &told[0].what), (Part::Connection, &What::Added));
            None
        }
        _ => None,
    }
}
