//! What hangs on a breaker, and what might.

use std::collections::BTreeSet;

use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Connection, Edit, Home, Kind, Medium, Space};
use quarterturn_mapping::{Lack, lacks, may_connect};

use crate::matching::{matches, plain};

/// Something that hangs on a breaker.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Load<'h> {
    pub(super) line: &'h Connection,
    pub(super) thing: &'h Component,
    /// What hangs on it in turn.
    pub(super) behind: Vec<&'h Component>,
}

/// Something that needs power, or may have it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Candidate<'h> {
    pub(super) thing: &'h Component,
    /// What feeds it already: its breaker, or what is next before it where that is not known.
    pub(super) fed_by: Option<&'h Component>,
}

/// What hangs on a breaker, in the order of its lines.
pub(super) fn loads<'h>(home: &'h Home, breaker: &str) -> Vec<Load<'h>> {
    let lines = power(home).filter(|line| line.from == breaker);
    lines
        .filter_map(|line| {
            let thing = home.component(&line.to)?;
            Some(Load { line, thing, behind: behind(home, &thing.id) })
        })
        .collect()
}

/// What might hang on a breaker, room by room: the rooms that its name tells of first, then in the
/// order of the home; what is in no room at the end.
///
/// Without words what needs power and has none; with words all that power can come to and that they
/// are found in.
pub(super) fn candidates<'h>(
    home: &'h Home,
    breaker: &Component,
    search: &str,
) -> Vec<(Option<&'h Space>, Vec<Candidate<'h>>)> {
    let is_searched = !plain(search).is_empty();
    let found: Vec<Candidate<'h>> = home
        .components
        .iter()
        .filter(|thing| thing.id != breaker.id && may_be_fed(thing))
        .filter(|thing| {
            if is_searched {
                matches(search, &words_of(home, thing))
            } else {
                // Its own panel may lack a feed, but not one from here.
                breaker.panel.as_ref() != Some(&thing.id)
                    && lacks(home, thing).contains(&(Lack::Feed, Medium::Power))
            }
        })
        .map(|thing| Candidate { thing, fed_by: fed_by(home, &thing.id) })
        .collect();
    let mut rooms: Vec<Option<&Space>> = home.spaces.iter().map(Some).collect();
    rooms.sort_by_key(|room| !room.is_some_and(|room| matches(&room.name, &breaker.name)));
    rooms.push(None);
    let in_room = |room: Option<&Space>, thing: &Component| match room {
        Some(room) => thing.space.as_ref() == Some(&room.id),
        None => thing.space.as_deref().is_none_or(|id| home.space(id).is_none()),
    };
    rooms
        .into_iter()
        .map(|room| {
            let here = found.iter().filter(|candidate| in_room(room, candidate.thing));
            (room, here.copied().collect::<Vec<_>>())
        })
        .filter(|(_, here)| !here.is_empty())
        .collect()
}

/// The edit that hangs a thing on a breaker.
///
/// # Errors
/// Why the line may not be drawn, for people.
pub(super) fn feed(
    home: &Home,
    words: &Catalogue,
    breaker: &str,
    thing: &str,
) -> Result<Edit, String> {
    may_connect(home, breaker, thing, Medium::Power).map_err(|refusal| {
        let fills = [
            fill("cause", &refusal.cause.text(words)),
            fill("remedy", &refusal.remedy.text(words)),
        ];
        words.fill("window-lines-refused", &fills)
    })?;
    let line = Connection::new(breaker, thing, Medium::Power);
    let mut edits = vec![Edit::Connect(Box::new(line))];
    // What the map had of its circuit in words was a guess by now.
    if let (Some(by), Some(known)) = (home.component(breaker), home.component(thing))
        && known.circuit.is_some()
        && known.kind != Kind::Breaker
        && known.kind != Kind::Panel
    {
        let mut known = known.clone();
        known.circuit.clone_from(&by.circuit);
        known.panel.clone_from(&by.panel);
        edits.push(Edit::PutComponent(Box::new(known)));
    }
    Ok(named(home, "edit-connect", breaker, thing, edits))
}

/// The edit that takes a thing off what feeds it.
pub(super) fn take_off(home: &Home, line: &Connection) -> Edit {
    let mut edits = vec![Edit::Disconnect(Box::new(line.clone()))];
    if let (Some(by), Some(known)) = (home.component(&line.from), home.component(&line.to))
        && known.circuit.is_some()
        && known.circuit == by.circuit
        && known.panel == by.panel
    {
        let mut known = known.clone();
        known.circuit = None;
        known.panel = None;
        edits.push(Edit::PutComponent(Box::new(known)));
    }
    named(home, "edit-disconnect", &line.from, &line.to, edits)
}

fn named(home: &Home, key: &'static str, from: &str, to: &str, edits: Vec<Edit>) -> Edit {
    let name = |id: &str| home.component(id).map_or_else(|| id.to_owned(), |c| c.name.clone());
    Edit::Named { key, fills: vec![("from", name(from)), ("to", name(to))], edits }
}

fn power(home: &Home) -> impl Iterator<Item = &Connection> {
    home.connections.iter().filter(|line| line.carries == Medium::Power)
}

/// True for what a breaker may feed: no source, and nothing that belongs before it.
fn may_be_fed(thing: &Component) -> bool {
    let before = matches!(
        thing.kind,
        Kind::ElectricityService
            | Kind::ElectricityMeter
            | Kind::ServiceDisconnect
            | Kind::Breaker
            | Kind::Generator
    );
    thing.kind.can_meet(Medium::Power) && !before && !thing.kind.is_plain_line()
}

fn words_of(home: &Home, thing: &Component) -> String {
    let tag = thing.tag.as_deref().unwrap_or_default();
    let room = thing.space.as_deref().and_then(|id| home.space(id)).map_or("", |s| &s.name);
    [tag, &thing.name, room].join(" ")
}

/// The breaker above a thing, or what comes next before it.
fn fed_by<'h>(home: &'h Home, id: &str) -> Option<&'h Component> {
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    let mut next: Vec<&str> = Vec::new();
    let mut first = None;
    let above = |id: &str| power(home).filter(|l| l.to == id).map(|l| l.from.as_str()).collect();
    let mut found: Vec<&str> = above(id);
    loop {
        next.extend(found.into_iter().filter(|id| seen.insert(id)));
        let at = next.pop()?;
        let component = home.component(at);
        first = first.or(component);
        match component {
            Some(c) if c.kind == Kind::Breaker => return Some(c),
            _ if next.is_empty() && above(at).is_empty() => return first,
            _ => found = above(at),
        }
    }
}

/// Everything that hangs on a thing, in the order of the home.
fn behind<'h>(home: &'h Home, id: &str) -> Vec<&'h Component> {
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    let mut next = vec![id];
    while let Some(at) = next.pop() {
        let below = power(home).filter(|line| line.from == at);
        next.extend(below.map(|line| line.to.as_str()).filter(|below| seen.insert(below)));
    }
    home.components.iter().filter(|c| c.id != id && seen.contains(c.id.as_str())).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A room, and what is offered there, with whether it has a feed.
    type Told = (Option<String>, Vec<(String, bool)>);

    fn home() -> Home {
        let mut home = Home::default();
        for (id, kind) in [
            ("panel", Kind::Panel),
            ("breaker", Kind::Breaker),
            ("gfci", Kind::Gfci),
            ("outlet", Kind::Receptacle),
            ("lamp", Kind::Light),
            ("sink", Kind::Sink),
            ("sub", Kind::Panel),
        ] {
            home.components.push(Component::new(id, kind, id));
        }
        for (id, name) in [("hall", "Hall"), ("kitchen", "Kitchen")] {
            home.spaces.push(Space {
                id: id.to_owned(),
                name: name.to_owned(),
                level: None,
                outline: Vec::new(),
                outdoors: false,
            });
        }
        home.components[1].name = "Kitchen counter".to_owned();
        home.components[1].panel = Some("panel".to_owned());
        home.components[4].space = Some("hall".to_owned());
        home.components[3].space = Some("kitchen".to_owned());
        for (from, to) in [("panel", "breaker"), ("breaker", "gfci")] {
            home.connections.push(Connection::new(from, to, Medium::Power));
        }
        home
    }

    #[test]
    fn what_lacks_a_feed_is_offered_by_rooms_and_the_room_of_the_name_first() {
        let home = home();
        let breaker = home.component("breaker").unwrap();
        let told = |search: &str| -> Vec<Told> {
            let found = candidates(&home, breaker, search).into_iter();
            let name = |c: &Candidate<'_>| (c.thing.id.clone(), c.fed_by.is_some());
            found
                .map(|(room, c)| (room.map(|r| r.id.clone()), c.iter().map(name).collect()))
                .collect()
        };
        let some = |id: &str| Some(id.to_owned());
        let thing = |id: &str, is_fed| vec![(id.to_owned(), is_fed)];
        assert_eq!(
            told(""),
            [
                (some("kitchen"), thing("outlet", false)),
                (some("hall"), thing("lamp", false)),
                (None, thing("sub", false)),
            ]
        );
        // With words also what has a feed, and what seldom needs one.
        assert_eq!(told("gfci"), [(None, thing("gfci", true))]);
        assert_eq!(told("sink"), [(None, thing("sink", false))]);
        let gfci = candidates(&home, breaker, "gfci")[0].1[0];
        assert_eq!(gfci.fed_by.map(|c| c.id.as_str()), Some("breaker"));
    }

    #[test]
    fn a_thing_is_hung_on_a_breaker_and_taken_off_with_its_words() {
        let mut home = home();
        let words = Catalogue::in_language("en");
        home.components[1].circuit = Some("5".to_owned());
        home.components[1].panel = Some("panel".to_owned());
        home.components[3].circuit = Some("<unknown>".to_owned());
        let fed = feed(&home, &words, "breaker", "outlet").unwrap().made_on(&home).unwrap();
        assert_eq!(fed.component("outlet").unwrap().circuit.as_deref(), Some("5"));
        let hung = loads(&fed, "breaker");
        assert_eq!(
            hung.iter().map(|l| l.thing.id.as_str()).collect::<Vec<_>>(),
            ["gfci", "outlet"]
        );
        let off = take_off(&fed, hung[1].line).made_on(&fed).unwrap();
        assert_eq!(off.component("outlet").unwrap().circuit, None);
        assert_eq!(loads(&off, "breaker").len(), 1);
        let refused = feed(&home, &words, "breaker", "gfci").unwrap_err();
        assert!(refused.contains("gfci"), "{refused}");
    }

    #[test]
    fn what_hangs_behind_is_told_even_in_a_circle() {
        let mut home = home();
        for (from, to) in [("gfci", "outlet"), ("outlet", "lamp"), ("lamp", "gfci")] {
            home.connections.push(Connection::new(from, to, Medium::Power));
        }
        let hung = loads(&home, "breaker");
        let behind: Vec<&str> = hung[0].behind.iter().map(|c| c.id.as_str()).collect();
        assert_eq!(behind, ["outlet", "lamp"]);
        assert_eq!(fed_by(&home, "lamp").map(|c| c.id.as_str()), Some("breaker"));
    }
}
