//! A panel table out of an open building model (`tests/fixtures/duplex/SOURCES.md`).

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_guidance::Catalogue;
use quarterturn_home::{History, Home, Kind, Medium};
use quarterturn_mapping::{Column, ImportTo, Layout, guess, import, missing, read_table};

const CIRCUITS: &[u8] = include_bytes!("../../fixtures/duplex/circuits.csv");

#[test]
fn every_element_is_on_its_circuit_or_told_as_unknown() {
    let table = read_table(CIRCUITS).unwrap();
    let guess = guess(&table);
    let column = |wanted: Column| guess.columns.iter().position(|c| *c == wanted);
    assert_eq!(guess.heading, Some(0));
    assert_eq!(guess.layout, Layout::Things);
    assert_eq!(column(Column::Panel), Some(6));
    assert_eq!(column(Column::Circuit), Some(7));
    assert_eq!(column(Column::PanelItself), Some(8));

    let home = Home::default();
    let import = import(&home, &table, &guess, &ImportTo::default(), &Catalogue::english());
    // 99 elements: 87 on 24 pairs of panel and circuit, 12 without, 3 of these the panels.
    assert_eq!(import.circuits.len(), 24);
    let on: usize = import.circuits.iter().map(|c| c.rows.len()).sum();
    assert_eq!((on, import.unknown.len(), import.panels.len()), (87, 9, 3));
    assert!(import.left.is_empty() && import.doubts.is_empty(), "{:?}", import.left);
    let rows: BTreeSet<usize> = import
        .circuits
        .iter()
        .flat_map(|c| c.rows.iter().copied())
        .chain(import.unknown.iter().map(|told| told.row))
        .chain(import.panels.iter().copied())
        .collect();
    assert_eq!(rows, (2..=100).collect());

    // The loops of the fire-alarm panel have no breaker; everything else has one.
    let loops = import.circuits.iter().filter(|c| c.breaker.is_none()).count();
    assert_eq!(loops, 2);
    let breakers = import.components.iter().filter(|c| c.kind == Kind::Breaker);
    let poles: BTreeMap<u32, usize> = breakers.fold(BTreeMap::new(), |mut count, breaker| {
        *count.entry(breaker.poles.unwrap()).or_default() += 1;
        count
    });
    assert_eq!(poles.values().sum::<usize>(), 22);
    assert!(poles[&3] >= 3, "{poles:?}");

    let mut history = History::new(home);
    for edit in import.edits() {
        history.apply(edit).unwrap();
    }
    let home = history.home();
    let count = |kind: Kind| home.components.iter().filter(|c| c.kind == kind).count();
    assert_eq!((count(Kind::Panel), count(Kind::SmokeAlarm)), (2, 6));
    assert!(count(Kind::Receptacle) > 40 && count(Kind::Light) > 10 && count(Kind::Switch) > 10);
    // Each outlet hangs on the breaker of its circuit.
    for outlet in home.components.iter().filter(|c| c.kind == Kind::Receptacle) {
        let feed = home
            .connections
            .iter()
            .find(|l| l.to == outlet.id && l.carries == Medium::Power)
            .unwrap_or_else(|| panic!("{}", outlet.id));
        let breaker = home.component(&feed.from).unwrap();
        assert_eq!(breaker.kind, Kind::Breaker);
        assert_eq!((&breaker.circuit, &breaker.panel), (&outlet.circuit, &outlet.panel));
    }
    // The service before the panels is not in the table: that is what is missing next.
    assert!(missing(home).list.iter().any(|item| item.said.key == "missing-panel"));
    // Taken in a second time, it adds no breaker.
    let again = quarterturn_mapping::import(
        home,
        &table,
        &guess,
        &ImportTo::default(),
        &Catalogue::english(),
    );
    let new = again
        .components
        .iter()
        .filter(|c| c.kind == Kind::Breaker && home.component(&c.id).is_none());
    assert_eq!(new.count(), 0);
}
