use std::collections::BTreeMap;

use super::*;
use crate::halving::height;
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Connection, History, open};

/// A panel with breakers named so, and outlets in rooms.
fn home(breakers: &[&str], outlets: &[(&str, Kind)]) -> Home {
    let mut home = Home::default();
    home.components.push(Component::new("panel", Kind::Panel, "Panel"));
    for (n, name) in breakers.iter().enumerate() {
        let mut b = Component::new(&format!("b{n}"), Kind::Breaker, name);
        b.circuit = Some(n.to_string());
        home.components.push(b);
        home.connections.push(Connection::new("panel", &format!("b{n}"), Medium::Power));
    }
    for (id, kind) in outlets {
        home.components.push(Component::new(id, *kind, id));
    }
    home
}

/// Walks as the search wishes, with the things really on these devices, and ticks one wrongly.
fn run(
    search: &mut Search,
    home: &Home,
    truth: &BTreeMap<&str, &str>,
    slip: Option<(usize, &str)>,
) {
    while let Some(next) = search.next_walk(home) {
        let mut walk = Walk { off: next.off.clone(), ..Walk::default() };
        for key in &next.visit {
            let mut dead = truth.get(key.as_str()).is_some_and(|b| next.off.iter().any(|o| o == b));
            dead ^= slip == Some((search.walks().len(), key.as_str()));
            if dead {
                walk.dead.insert(key.clone())
            } else {
                walk.live.insert(key.clone())
            };
        }
        search.record(walk);
        assert!(search.walks().len() < 12);
    }
}

#[test]
fn walks_find_every_breaker_and_write_them_onto_the_map() {
    let names = ["Kitchen", "Bath", "Hall", "Den", "Porch", "Lights", "Bedroom"];
    let home = home(
        &names,
        &[
            ("kitchen outlet", Kind::Receptacle),
            ("x", Kind::Receptacle),
            ("lamp", Kind::Light),
            ("alone", Kind::Receptacle),
        ],
    );
    let mut search = Search::breakers(&home, &[]).unwrap();
    let first = search.next_walk(&home).unwrap();
    assert_eq!((first.walks_at_most, first.one_at_a_time, first.visit.len()), (3, 7, 4));
    let truth = BTreeMap::from([("kitchen outlet", "b0"), ("x", "b4"), ("lamp", "b5")]);
    run(&mut search, &home, &truth, None);
    assert!(search.walks().len() <= 3);
    let found = search.found(&home);
    let on: Vec<(&str, &str)> = found.on.iter().map(|(t, b)| (t.as_str(), b.as_str())).collect();
    assert_eq!(on, [("kitchen outlet", "b0"), ("x", "b4"), ("lamp", "b5")]);
    assert_eq!(found.on_none, ["alone"]);
    let mut history = History::new(home);
    for edit in found.edits {
        history.apply(edit).unwrap();
    }
    let now = history.home();
    assert_eq!(now.component("x").unwrap().circuit.as_deref(), Some("4"));
    assert_eq!(now.component("x").unwrap().panel.as_deref(), Some("panel"));
    assert!(now.connections.contains(&Connection::new("b5", "lamp", Medium::Power)));
    // Only what is still unknown is looked for next time.
    assert_eq!(Search::breakers(now, &[]).unwrap().things(), ["alone"]);
}

#[test]
fn undoing_a_walk_is_as_if_it_had_not_been() {
    let home = home(&["A", "B", "C", "D"], &[("x", Kind::Receptacle), ("y", Kind::Light)]);
    let mut search = Search::breakers(&home, &[]).unwrap();
    let before = search.clone();
    let next = search.next_walk(&home).unwrap();
    search.record(Walk {
        off: next.off,
        dead: BTreeSet::from(["x".to_owned()]),
        ..Walk::default()
    });
    assert_ne!(search.next_walk(&home), before.next_walk(&home));
    assert!(search.undo() && !search.undo());
    assert_eq!(search, before);
}

#[test]
fn what_someone_depends_on_stays_on_until_a_person_says_so() {
    let mut home = home(
        &["Kitchen", "Oxygen concentrator", "Freezer", "Hall", "Main breaker"],
        &[("x", Kind::Receptacle), ("y", Kind::Receptacle)],
    );
    home.components.push(Component::new("pump", Kind::SumpPump, "Sump pump"));
    home.connections.push(Connection::new("b3", "pump", Medium::Power));
    let mut search = Search::breakers(&home, &[]).unwrap();
    let asked: Vec<&str> =
        search.devices().iter().filter(|d| !d.ask.is_empty()).map(|d| d.id.as_str()).collect();
    assert_eq!(asked, ["b1", "b2", "b3"]);
    assert!(search.devices().iter().all(|d| d.id != "b4"), "the main is switched");
    let off = |search: &Search| search.next_walk(&home).unwrap().off;
    assert_eq!(off(&search), ["b0"]);
    search.confirm("b2", true);
    assert!(!off(&search).contains(&"b1".to_owned()));
    let truth = BTreeMap::from([("x", "b1"), ("y", "b2")]);
    run(&mut search, &home, &truth, None);
    let found = search.found(&home);
    assert_eq!(found.on, [("y".to_owned(), "b2".to_owned())]);
    let (key, left) = &found.open[0];
    assert_eq!((key.as_str(), left.as_slice()), ("x", &["b1".to_owned(), "b3".to_owned()][..]));
    for said in search.devices().iter().flat_map(|d| &d.ask).chain(&search.cautions(&home)) {
        for language in Catalogue::languages() {
            let text = said.text(&Catalogue::in_language(language.tag));
            assert!(!text.contains(['{', '[']), "{text}");
        }
    }
}

#[test]
fn a_thorough_search_notices_any_one_slip() {
    let home = home(&["A", "B", "C", "D", "E"], &[("x", Kind::Receptacle), ("y", Kind::Light)]);
    for on in ["b0", "b1", "b2", "b3", "b4", "none"] {
        let truth = BTreeMap::from([("x", on), ("y", "b2")]);
        let mut clean = Search::breakers(&home, &[]).unwrap();
        clean.set_thorough(true);
        run(&mut clean, &home, &truth, None);
        assert!(clean.found(&home).odd.is_empty());
        for walk in 0..clean.walks().len() {
            let mut search = Search::breakers(&home, &[]).unwrap();
            search.set_thorough(true);
            run(&mut search, &home, &truth, Some((walk, "x")));
            let found = search.found(&home);
            assert_eq!(found.odd, ["x"], "{on}, slip in walk {walk}: {:?}", search.walks());
        }
    }
}

#[test]
fn a_split_outlet_is_two() {
    let home = home(&["A", "B", "C"], &[("x", Kind::Receptacle), ("y", Kind::Receptacle)]);
    let mut search = Search::breakers(&home, &[]).unwrap();
    search.split("x");
    assert_eq!(search.things(), ["x#1", "x#2", "y"]);
    let truth = BTreeMap::from([("x#1", "b0"), ("x#2", "b2"), ("y", "b1")]);
    run(&mut search, &home, &truth, None);
    let mut history = History::new(home.clone());
    for edit in search.found(&home).edits {
        history.apply(edit).unwrap();
    }
    let feeds = history.home().connections.iter().filter(|l| l.to == "x").count();
    assert_eq!(feeds, 2);
}

#[test]
fn gfcis_of_the_example_are_found_again_when_forgotten() {
    let text = include_str!("../../../../examples/two-storey/home.ron");
    let mut home = open("home.ron", text).home.unwrap();
    // What hangs on the garage's GFCI is remembered as hanging straight on the breaker.
    let behind: Vec<String> = home
        .connections
        .iter()
        .filter(|l| l.from == "garage-gfci" && l.carries == Medium::Power)
        .map(|l| l.to.clone())
        .collect();
    for line in &mut home.connections {
        if line.from == "garage-gfci" {
            line.from = "br-baths-outdoor".to_owned();
        }
    }
    let mut search = Search::gfcis(&home).unwrap();
    let ids: Vec<String> = search.devices().iter().map(|d| d.id.clone()).collect();
    for id in &ids {
        search.confirm(id, true);
    }
    let truth: BTreeMap<&str, &str> =
        behind.iter().map(|id| (id.as_str(), "garage-gfci")).collect();
    run(&mut search, &home, &truth, None);
    assert!(search.walks().len() <= usize::try_from(height(ids.len() + 1)).unwrap());
    let found = search.found(&home);
    assert!(found.conflicts.is_empty(), "{:?}", found.conflicts);
    let mut history = History::new(home);
    for edit in found.edits {
        history.apply(edit).unwrap();
    }
    for id in &behind {
        assert!(is_downstream(history.home(), Net::Power, "garage-gfci", id), "{id}");
    }
}

#[test]
fn what_the_map_knows_otherwise_is_told_and_not_changed() {
    let mut home = home(&["A", "B"], &[("x", Kind::Receptacle), ("box", Kind::JunctionBox)]);
    home.components.push(Component::new("g", Kind::Gfci, "GFCI"));
    home.connections.push(Connection::new("b0", "g", Medium::Power));
    home.connections.push(Connection::new("b1", "x", Medium::Power));
    let mut search = Search::gfcis(&home).unwrap();
    run(&mut search, &home, &BTreeMap::from([("x", "g")]), None);
    let found = search.found(&home);
    assert_eq!(found.edits, []);
    assert_eq!(found.conflicts[0].key, "find-conflict");
    search.set_broken("g", true);
    assert!(search.found(&home).conflicts.iter().any(|s| s.key == "find-gfci-broken"));
}

#[test]
fn a_search_that_keeps_to_some_things_visits_and_finds_only_those() {
    let outlets = ["a", "b", "c", "d"].map(|id| (id, Kind::Receptacle));
    let home = home(&["One", "Two", "Three"], &outlets);
    let mut search = Search::breakers(&home, &[]).unwrap();
    assert!(!search.keep_to(&["no such thing".to_owned()]));
    assert_eq!(search.things(), ["a", "b", "c", "d"]);
    assert!(search.keep_to(&["d".to_owned(), "b".to_owned(), "b".to_owned()]));
    assert_eq!(search.things(), ["b", "d"]);
    let mut visited = search.next_walk(&home).unwrap().visit;
    visited.sort();
    assert_eq!(visited, ["b", "d"]);
    let truth = BTreeMap::from([("b", "b0"), ("d", "b2")]);
    run(&mut search, &home, &truth, None);
    let on = |thing: &str, device: &str| (thing.to_owned(), device.to_owned());
    assert_eq!(search.found(&home).on, [on("b", "b0"), on("d", "b2")]);
}
