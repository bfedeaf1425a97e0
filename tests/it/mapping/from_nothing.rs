//! Three rooms, from nothing to right answers: sets placed, proposals accepted, circuits found.

use std::collections::BTreeMap;

use quarterturn_guidance::{By, Catalogue, Question, Spot, Trouble, answer};
use quarterturn_home::{Edit, History, Home, Kind, Level, Space};
use quarterturn_mapping::{Search, Walk, Wish, accept_all, missing, place, proposals, usual};

fn three_rooms() -> Home {
    let space = |id: &str, name: &str, x: f64, outdoors: bool| Space {
        id: id.to_owned(),
        name: name.to_owned(),
        level: Some("ground".to_owned()),
        outline: vec![(x, 0.0), (x + 4.0, 0.0), (x + 4.0, 4.0), (x, 4.0)],
        outdoors,
    };
    Home {
        levels: vec![Level {
            id: "ground".to_owned(),
            name: "Ground floor".to_owned(),
            elevation_m: 0.0,
            plan: None,
        }],
        spaces: vec![
            space("kitchen", "Kitchen", 0.0, false),
            space("bath", "Bath", 4.0, false),
            space("utility", "Utility room", 8.0, false),
            space("yard", "Front yard", 12.0, true),
        ],
        ..Home::default()
    }
}

fn ask(home: &Home, trouble: Trouble, at: &str) -> quarterturn_guidance::Answer {
    let question = Question {
        trouble,
        at: Spot::Component(at.to_owned()),
        from: None,
        failed: Vec::new(),
        seen: Vec::new(),
    };
    answer(home, &question, &Catalogue::english())
}

#[test]
fn twenty_acts_make_a_map_that_answers() {
    let words = Catalogue::english();
    let mut history = History::new(three_rooms());
    let mut acts = 0;
    let mut percents = vec![missing(history.home()).percent()];
    for (set, space, x, count) in [
        ("water-service", "utility", 9.0, None),
        ("house-drain", "yard", 13.0, None),
        ("stack", "bath", 7.5, None),
        ("water-heater", "utility", 10.0, None),
        ("kitchen-sink", "kitchen", 1.0, None),
        ("toilet", "bath", 5.0, None),
        ("basin", "bath", 6.0, None),
        ("panel", "utility", 11.0, Some(6)),
        ("gfci", "bath", 6.5, Some(1)),
        ("outlets", "kitchen", 2.0, Some(2)),
    ] {
        let wish = Wish {
            set: set.to_owned(),
            space: Some(space.to_owned()),
            at: Some((x, 2.0)),
            label: None,
            count,
        };
        let placed = place(history.home(), &wish, &words).unwrap();
        acts += 1;
        for edit in placed.edits() {
            history.apply(edit).unwrap();
        }
        percents.push(missing(history.home()).percent());
    }
    // All proposals, until there are no more: one act each time.
    for _ in 0..4 {
        let edits = accept_all(history.home(), &proposals(history.home()), None, 0.0);
        if edits.is_empty() {
            break;
        }
        acts += 1;
        for edit in edits {
            history.apply(edit).unwrap();
        }
    }
    percents.push(missing(history.home()).percent());

    // Which breaker feeds what: walk by walk, with the truth in a drawer.
    let mut search = Search::breakers(history.home(), &[]).unwrap();
    let breakers: Vec<String> = history
        .home()
        .components
        .iter()
        .filter(|c| c.kind == Kind::Breaker && c.circuit.is_some())
        .map(|c| c.id.clone())
        .collect();
    let truth: BTreeMap<String, String> = search
        .things()
        .iter()
        .enumerate()
        .map(|(n, thing)| ((*thing).to_owned(), breakers[(n * 2 + 1) % breakers.len()].clone()))
        .collect();
    while let Some(next) = search.next_walk(history.home()) {
        acts += 1;
        let mut walk = Walk { off: next.off.clone(), ..Walk::default() };
        for key in &next.visit {
            let list = if next.off.contains(&truth[key]) { &mut walk.dead } else { &mut walk.live };
            list.insert(key.clone());
        }
        search.record(walk);
    }
    for edit in search.found(history.home()).edits {
        history.apply(edit).unwrap();
    }
    let home = history.home();
    assert!(acts <= 20, "{acts}");
    percents.push(missing(home).percent());
    assert_eq!(percents[0], 0);
    assert!(*percents.last().unwrap() >= 95, "{percents:?} {:#?}", missing(home).list);

    let leak = ask(home, Trouble::Leak, "kitchen-sink");
    assert!(leak.mapped);
    let by_anyone = |wanted: &[&str]| {
        leak.sets.iter().any(|set| {
            let mut close = set.close.clone();
            close.sort();
            set.by == By::Anyone && close == wanted
        })
    };
    assert!(by_anyone(&["kitchen-sink-cold-stop", "kitchen-sink-hot-stop"]), "{:#?}", leak.sets);
    assert!(by_anyone(&["utility-water-service-main"]), "{:#?}", leak.sets);

    let sewage = ask(home, Trouble::SewageRising, "bath-toilet");
    let relief = sewage.relief.unwrap();
    assert!(sewage.mapped && relief.rod_from.is_some(), "{relief:?}");

    for (thing, breaker) in &truth {
        let dead = ask(home, Trouble::DeadOutlet, thing);
        if home.component(thing).unwrap().kind == Kind::Receptacle {
            assert!(dead.suspects.iter().any(|s| s.component == *breaker), "{thing} {breaker}");
        }
    }
    let bath = home.space("bath").unwrap();
    assert!(usual(home, bath).iter().filter(|u| u.always).all(|u| u.there));
    // All of it can be taken back.
    while history.undo() {}
    assert_eq!(history.home().components.len(), 0);
}

#[test]
fn a_rejected_edit_leaves_the_home_as_it_was() {
    let mut history = History::new(three_rooms());
    let line = quarterturn_home::Connection::new("a", "b", quarterturn_home::Medium::Waste);
    assert!(history.apply(Edit::Connect(Box::new(line))).is_err());
    assert_eq!(**history.home(), three_rooms());
}
