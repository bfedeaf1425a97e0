use std::collections::BTreeSet;

use super::*;
use crate::columns::guess;
use crate::table::read_text;
use quarterturn_home::{History, Kind, Medium, Space};

fn imported(home: &Home, text: &str) -> Import {
    let table = read_text(text).unwrap();
    let guess = guess(&table);
    let import = import(home, &table, &guess, &ImportTo::default(), &Catalogue::english());
    // Every row is somewhere, whatever it holds.
    let mut rows: BTreeSet<usize> = import.circuits.iter().flat_map(|c| c.rows.clone()).collect();
    rows.extend(import.left.iter().chain(&import.unknown).map(|told| told.row));
    rows.extend(&import.panels);
    for row in guess.rows(&table) {
        assert!(rows.contains(&row.number), "row {} is lost", row.number);
    }
    for told in import.left.iter().chain(&import.unknown).chain(&import.doubts) {
        for language in Catalogue::languages() {
            let text = told.why.text(&Catalogue::in_language(language.tag));
            assert!(!text.contains(['{', '[']), "{text}");
        }
    }
    let mut history = History::new(home.clone());
    for edit in import.edits() {
        history.apply(edit).unwrap();
    }
    import
}

fn circuits(import: &Import) -> Vec<(&str, Option<&str>)> {
    import
        .circuits
        .iter()
        .map(|c| {
            let breaker =
                c.breaker.as_ref().and_then(|id| import.components.iter().find(|b| b.id == *id));
            (c.circuit.as_str(), breaker.map(|b| b.name.as_str()))
        })
        .collect()
}

#[test]
fn a_door_directory_becomes_breakers_and_every_other_row_a_reason() {
    let import = imported(
        &Home::default(),
        "Circuit,Serves,Amps,Poles\n1,Kitchen counter,20,1\n3,Range,50,2\n5,,,\n2,Spare,20,1\n4,Space,,\n,Attic fan,15,\n<unnamed>,Shed,15,\n1,Kitchen again,20,1\n7,Bath,lots,1\n,,,\n9/11,Dryer,2P30,\n",
    );
    let names = circuits(&import);
    assert_eq!(
        names,
        [
            ("1", Some("Breaker 1, Kitchen counter")),
            ("3,5", Some("Breaker 3, Range")),
            ("2", Some("Breaker 2, spare")),
            ("7", Some("Breaker 7, Bath")),
            ("9,11", Some("Breaker 9,11, Dryer")),
        ]
        .map(|(c, n)| (
            c,
            n.map(|n| if n == "Breaker 3, Range" { "Breaker 3,5, Range" } else { n })
        ))
    );
    let left: Vec<(usize, &str)> = import.left.iter().map(|t| (t.row, t.why.key)).collect();
    assert_eq!(
        left,
        [
            (6, "import-no-breaker"),
            (7, "import-no-circuit"),
            (8, "import-not-a-circuit"),
            (9, "import-twice"),
            (11, "import-blank"),
        ]
    );
    assert_eq!(import.doubts[0].why.key, "import-not-a-rating");
    let poles: Vec<_> = import
        .components
        .iter()
        .filter(|c| c.kind == Kind::Breaker)
        .map(|c| c.poles.unwrap())
        .collect();
    assert_eq!(poles, [1, 2, 1, 1, 2]);
    assert_eq!(import.connections.len(), 5);
}

#[test]
fn two_columns_of_a_panel_are_two_circuits_a_row() {
    let import = imported(&Home::default(), "1,Kitchen,Bath,2\n3,Hall,Den,4\n5,Attic,,\n");
    let numbers: Vec<&str> = import.circuits.iter().map(|c| c.circuit.as_str()).collect();
    assert_eq!(numbers, ["1", "2", "3", "4", "5"]);
    assert!(circuits(&import).contains(&("4", Some("Breaker 4, Den"))));
}

#[test]
fn what_the_map_has_is_kept_and_completed() {
    let mut home = Home::default();
    let space: Space = ron::from_str(r#"(id: "hall", name: "Hall")"#).unwrap();
    home.spaces.push(space);
    let mut panel = Component::new("main-panel", Kind::Panel, "Main panel");
    panel.space = Some("hall".to_owned());
    home.components.push(panel);
    let breaker = |n: &str, name: &str| {
        let mut b = Component::new(&format!("b{n}"), Kind::Breaker, name);
        b.circuit = Some(n.to_owned());
        b.panel = Some("main-panel".to_owned());
        b
    };
    home.components.push(breaker("1", "Breaker 1"));
    home.components.push(breaker("2", "Breaker, my own words"));
    home.connections.push(Connection::new("main-panel", "b1", Medium::Power));
    let import = imported(
        &home,
        "Panel,Circuit,Description\nMain panel,1,Kitchen\nMain Panel,2,Bath\nmain panel,3,Den\n",
    );
    let names: Vec<(&str, &str)> =
        import.components.iter().map(|c| (c.id.as_str(), c.name.as_str())).collect();
    assert_eq!(
        names,
        [
            ("b1", "Breaker 1, Kitchen"),
            ("b2", "Breaker, my own words"),
            ("main-panel-3", "Breaker 3, Den"),
        ]
    );
    assert_eq!(import.components[2].space.as_deref(), Some("hall"));
    assert_eq!(import.connections.len(), 2);
}

#[test]
fn things_hang_on_their_circuits_and_those_without_are_told() {
    let import = imported(
        &Home::default(),
        "Element,Type,Panel,Circuit,Room,VA\nOutlet A,Receptacle,P1,4,Hall,180\nLamp,Light,P1,4,Hall,60\nOven,Appliance,P1,\"6,8\",,7000\nFan,Appliance,,,,\nClock,Thermostat,P1,<unnamed>,,\n",
    );
    let numbers: Vec<&str> = import.circuits.iter().map(|c| c.circuit.as_str()).collect();
    assert_eq!(numbers, ["4", "6,8"]);
    let unknown: Vec<(usize, &str)> = import.unknown.iter().map(|t| (t.row, t.why.key)).collect();
    assert_eq!(
        unknown,
        [(5, "import-thing-without-circuit"), (6, "import-thing-with-odd-circuit")]
    );
    // The panel, two breakers, and all five things.
    assert_eq!(import.components.len(), 8);
}
