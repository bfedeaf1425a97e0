//! Whether a home's own file can tell what an edit made of it.

use std::collections::BTreeSet;

use crate::history::head;
use crate::{CannotEdit, Component, Home, Kept, Problem, Severity, Space, open, save};

/// Refuses a change by which the home's own file would be refused in part.
pub(crate) fn fit(before: &Home, after: &Home) -> Result<(), CannotEdit> {
    let found = match new_things(before, after) {
        Some(new) => faults(&new),
        None => faults(after),
    };
    if found.is_empty() {
        return Ok(());
    }
    // A home that was put together by a program may have had them before.
    let known = faults(before);
    let is_new = |fault: &Problem| {
        let same = |other: &Problem| other.key == fault.key && other.args == fault.args;
        !known.iter().any(same)
    };
    match found.into_iter().find(is_new) {
        Some(fault) => Err(CannotEdit::Unfit(Box::new(fault))),
        None => Ok(()),
    }
}

/// What is wrong with the file of a home.
fn faults(home: &Home) -> Vec<Problem> {
    let mut faults = open("", &save(home, &Kept::default())).problems;
    faults.retain(|problem| problem.severity == Severity::Error);
    faults
}

/// What is new in a home, with as much of the rest as it speaks of: a room is drawn many times a second,
/// and the rest of the file stays as sound as it was.
///
/// `None` where all must be looked at: something went, or what connects changed.
fn new_things(before: &Home, after: &Home) -> Option<Home> {
    let is_bound = |home: &Home, id: &str| {
        home.connections.iter().any(|line| line.from == id || line.to == id)
    };
    let shrinks = after.levels.len() < before.levels.len()
        || after.spaces.len() < before.spaces.len()
        || after.components.len() < before.components.len()
        || after.contacts.len() < before.contacts.len();
    if shrinks || before.connections != after.connections {
        return None;
    }
    let mut new = Home {
        levels: differing(&before.levels, &after.levels),
        spaces: differing(&before.spaces, &after.spaces),
        passages: differing(&before.passages, &after.passages),
        components: differing(&before.components, &after.components),
        contacts: differing(&before.contacts, &after.contacts),
        warranties: differing(&before.warranties, &after.warranties),
        jobs: differing(&before.jobs, &after.jobs),
        done: differing(&before.done, &after.done),
        move_in: differing(&before.move_in, &after.move_in),
        documents: differing(&before.documents, &after.documents),
        drills: differing(&before.drills, &after.drills),
        ..head(after)
    };
    if new.components.iter().any(|component| is_bound(after, &component.id)) {
        let lines = |old: &Component, new: &Component| {
            old.kind == new.kind && old.normally_shut() == new.normally_shut()
        };
        let stays = |new: &Component| before.component(&new.id).is_none_or(|old| lines(old, new));
        if !new.components.iter().all(stays) {
            return None;
        }
    }
    let mentioned = mentions(&new);
    add(&mut new.levels, &after.levels, |level| mentioned.contains(&level.id));
    let spaces = after.spaces.iter().map(|space| Space { level: None, ..space.clone() });
    let spaces: Vec<Space> = spaces.filter(|space| mentioned.contains(&space.id)).collect();
    for space in spaces {
        if new.space(&space.id).is_none() {
            new.spaces.push(space);
        }
    }
    for component in after.components.iter().filter(|c| mentioned.contains(&c.id)) {
        if new.component(&component.id).is_none() {
            new.components.push(Component::new(&component.id, component.kind, &component.name));
        }
    }
    for contact in after.contacts.iter().filter(|contact| mentioned.contains(&contact.id)) {
        if new.contact(&contact.id).is_none() {
            new.contacts.push(contact.clone());
        }
    }
    Some(new)
}

fn add<T: Clone + PartialEq>(list: &mut Vec<T>, all: &[T], is_wanted: impl Fn(&T) -> bool) {
    for thing in all.iter().filter(|thing| is_wanted(thing)) {
        if !list.contains(thing) {
            list.push(thing.clone());
        }
    }
}

/// What stands in a list of one home and not in the same place of the other.
fn differing<T: Clone + PartialEq>(before: &[T], after: &[T]) -> Vec<T> {
    let in_place = |place: usize, thing: &T| before.get(place) == Some(thing);
    let pairs = after.iter().enumerate();
    pairs
        .filter(|(place, thing)| !in_place(*place, thing))
        .map(|(_, thing)| thing.clone())
        .collect()
}

/// Every id that the things of a home speak of.
fn mentions(home: &Home) -> BTreeSet<String> {
    let spaces = home.spaces.iter().filter_map(|space| space.level.as_ref());
    let parts = home.components.iter().flat_map(|c| [c.space.as_ref(), c.owner.as_ref()]).flatten();
    let passages = home.passages.iter().flat_map(|p| [&p.between.0, &p.between.1]);
    let warranties = home.warranties.iter().flat_map(|w| w.contact.iter().chain(&w.covers));
    let jobs = home.jobs.iter().flat_map(|job| &job.components);
    let done = home.done.iter().flat_map(|done| &done.components);
    let documents = home.documents.iter().flat_map(|document| &document.components);
    let drills = home.drills.iter().flat_map(|d| [Some(&d.component), d.from.as_ref()]).flatten();
    let all = spaces.chain(parts).chain(passages).chain(warranties).chain(jobs);
    all.chain(done).chain(documents).chain(drills).chain(&home.usual_space).cloned().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Connection, Edit, Kind, Medium};

    /// What is looked at is small, and what is wrong with it is found all the same.
    #[test]
    fn a_room_is_checked_without_the_rest_of_the_home() {
        let pipes = (0..50).map(|n| Component::new(&format!("p{n}"), Kind::Pipe, "Pipe"));
        let mut before = Home { components: pipes.collect(), ..Home::default() };
        before.connections.push(Connection::new("p0", "p1", Medium::ColdWater));
        let room = |level: Option<&str>, x: f64| {
            Edit::PutSpace(Box::new(Space {
                id: "hall".to_owned(),
                name: "Hall".to_owned(),
                level: level.map(str::to_owned),
                outline: vec![(x, 0.0)],
                outdoors: false,
            }))
        };
        let after = room(None, 1.0).made_on(&before).unwrap();
        let looked_at = new_things(&before, &after).unwrap();
        assert_eq!((looked_at.components.len(), looked_at.spaces.len()), (0, 1));
        for (edit, key) in [
            (room(None, f64::NAN), "wrong-type"),
            (room(None, 1e12), "out-of-range"),
            (room(Some("attic"), 1.0), "unknown-id"),
        ] {
            let why = edit.made_on(&after);
            let Err(CannotEdit::Unfit(problem)) = why else { panic!("{why:?}") };
            assert!([key, "out-of-range"].contains(&problem.key), "{}", problem.key);
        }
        // A pipe that becomes a lamp cannot carry water.
        let lamp = Edit::PutComponent(Box::new(Component::new("p1", Kind::Light, "Lamp")));
        let why = lamp.made_on(&after);
        let Err(CannotEdit::Unfit(problem)) = why else { panic!("{why:?}") };
        assert_eq!(problem.key, "cannot-meet");
    }
}
