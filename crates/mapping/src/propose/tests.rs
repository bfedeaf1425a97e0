use std::collections::BTreeSet;

use super::*;
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Component, Medium, open};

const HOMES: [&str; 3] = [
    include_str!("../../../../examples/two-storey/home.ron"),
    include_str!("../../../../examples/flat/home.ron"),
    include_str!("../../../../examples/old-house/home.ron"),
];

fn part(id: &str, kind: Kind, space: &str, x: f64) -> Component {
    let mut c = Component::new(id, kind, id);
    c.space = Some(space.to_owned());
    c.at = Some((x, 0.0, 0.5));
    c
}

fn lines(home: &Home) -> Vec<(String, f64)> {
    proposals(home).iter().map(|p| (p.line.spot(), p.confidence)).collect()
}

#[test]
fn stop_before_hose_before_tap_and_trap_before_drain() {
    let home = Home {
        components: vec![
            part("hall-line", Kind::Pipe, "hall", 1.0),
            part("main", Kind::WaterMain, "street", 0.0),
            part("cold stop", Kind::IsolatingValve, "bath", 4.0),
            part("cold hose", Kind::SupplyHose, "bath", 4.1),
            part("far hose", Kind::SupplyHose, "kitchen", 4.2),
            part("toilet", Kind::Toilet, "bath", 4.5),
            part("basin", Kind::Basin, "bath", 5.0),
            part("trap", Kind::Trap, "bath", 5.0),
            part("stack", Kind::Stack, "bath", 6.0),
            part("sewer", Kind::SewerMain, "street", 0.0),
        ],
        connections: vec![
            Connection::new("main", "hall-line", Medium::ColdWater),
            Connection::new("stack", "sewer", Medium::Waste),
        ],
        ..Home::default()
    };
    let found: Vec<String> = lines(&home).into_iter().map(|(line, _)| line).collect();
    assert!(found.contains(&"hall-line..cold stop".to_owned()), "{found:?}");
    assert!(found.contains(&"cold stop..cold hose".to_owned()), "{found:?}");
    assert!(found.contains(&"cold hose..toilet".to_owned()), "{found:?}");
    assert!(found.contains(&"basin..trap".to_owned()), "{found:?}");
    assert!(found.contains(&"trap..stack".to_owned()), "{found:?}");
    assert!(found.contains(&"toilet..stack".to_owned()), "{found:?}");
    assert!(!found.iter().any(|line| line.starts_with("far hose")), "{found:?}");
    // One hose feeds one fixture: of the two that want it only one gets it.
    let edits = accept_all(&home, &proposals(&home), None, 0.0);
    let hose = |e: &&Edit| matches!(e, Edit::Connect(l) if l.from == "cold hose");
    assert_eq!(edits.iter().filter(hose).count(), 1, "{edits:#?}");
}

#[test]
fn a_circuit_told_in_words_leads_to_its_breaker_or_its_gfci() {
    let on = |mut c: Component, circuit: &str| {
        c.circuit = Some(circuit.to_owned());
        c.panel = Some("Main panel".to_owned());
        c
    };
    let mut panel = part("p1", Kind::Panel, "garage", 0.0);
    panel.name = "Main panel".to_owned();
    let home = Home {
        components: vec![
            panel,
            on(part("b3", Kind::Breaker, "garage", 0.0), "3"),
            on(part("b5", Kind::Breaker, "garage", 0.0), "5"),
            on(part("outlet", Kind::Receptacle, "bedroom", 20.0), "3"),
            on(part("bath gfci", Kind::Gfci, "bath", 9.0), "5"),
            on(part("patio", Kind::Receptacle, "patio", 25.0), "5"),
            part("lost", Kind::Receptacle, "attic", 5.0),
        ],
        ..Home::default()
    };
    let found = lines(&home);
    let has = |line: &str| found.iter().any(|(l, c)| l == line && *c > 0.5);
    assert!(has("p1..b3") && has("p1..b5"), "{found:?}");
    assert!(has("b3..outlet") && has("b5..bath gfci") && has("bath gfci..patio"), "{found:?}");
    assert!(!found.iter().any(|(line, _)| line.ends_with("..lost")), "{found:?}");
    let all = proposals(&home);
    assert_eq!(accept_all(&home, &all, Some(Kind::Breaker), 0.0).len(), 2);
    assert_eq!(accept_all(&home, &all, Some(Kind::Breaker), 0.99).len(), 0);
}

#[test]
fn accepting_everything_in_the_examples_with_lines_taken_out_stays_legal_and_finds_many_back() {
    for text in HOMES {
        let whole = open("home.ron", text).home.unwrap();
        let (mut right, mut wrong) = (0, 0);
        for skip in 0..9 {
            let mut home = whole.clone();
            let mut index = 0;
            home.connections.retain(|_| {
                index += 1;
                index % 9 != skip
            });
            let found = proposals(&home);
            for edit in accept_all(&home, &found, None, 0.0) {
                let Edit::Connect(line) = edit else { panic!("{edit:?}") };
                assert!(may_connect(&home, &line.from, &line.to, line.carries).is_ok());
                home.connections.push(*line);
            }
            for proposal in &found {
                let there = whole.connections.iter().any(|l| {
                    l.from == proposal.line.from
                        && l.to == proposal.line.to
                        && l.carries == proposal.line.carries
                });
                let cut = whole.connections.iter().enumerate().any(|(i, l)| {
                    (i + 1) % 9 == skip && (l.to == proposal.of || l.from == proposal.of)
                });
                if cut {
                    if there { right += 1 } else { wrong += 1 }
                }
            }
            let text = quarterturn_home::save(&home, &quarterturn_home::Kept::default());
            let again = open("home.ron", &text);
            assert!(again.problems.iter().all(|p| p.key != "drain-loop"), "{:?}", again.problems);
        }
        // Which of several like lines was meant, nobody can tell from outside: half is good.
        assert!(right * 2 >= wrong, "{right} right, {wrong} wrong");
    }
}

#[test]
fn every_reason_has_words() {
    let home = open("home.ron", HOMES[0]).home.unwrap();
    let mut bare = home.clone();
    bare.connections.truncate(60);
    let mut keys = BTreeSet::new();
    for proposal in proposals(&bare) {
        keys.insert(proposal.why.key);
        for language in Catalogue::languages() {
            let text = proposal.why.text(&Catalogue::in_language(language.tag));
            assert!(!text.contains(['{', '[']), "{text}");
        }
    }
    assert!(keys.len() >= 3, "{keys:?}");
}

#[test]
fn fixtures_join_the_building_drain_and_the_hot_line_for_sure() {
    let home = Home {
        components: vec![
            part("toilet", Kind::Toilet, "bath", 4.0),
            part("building drain", Kind::Pipe, "utility", 8.0),
            part("cleanout", Kind::Cleanout, "utility", 8.5),
            part("sewer line", Kind::Pipe, "utility", 9.0),
            part("sewer", Kind::SewerMain, "street", 9.5),
            part("heater", Kind::WaterHeater, "utility", 5.0),
            part("hot line", Kind::Pipe, "utility", 5.2),
            part("hot stop", Kind::IsolatingValve, "kitchen", 2.0),
            part("hot hose", Kind::SupplyHose, "kitchen", 2.1),
            part("main", Kind::WaterMain, "street", 0.0),
        ],
        connections: vec![
            Connection::new("building drain", "cleanout", Medium::Waste),
            Connection::new("cleanout", "sewer line", Medium::Waste),
            Connection::new("sewer line", "sewer", Medium::Waste),
            Connection::new("main", "heater", Medium::ColdWater),
            Connection::new("heater", "hot line", Medium::HotWater),
            Connection::new("hot stop", "hot hose", Medium::HotWater),
        ],
        ..Home::default()
    };
    let found = lines(&home);
    let sure = |line: &str| found.iter().any(|(found, sure)| found == line && *sure > 0.5);
    assert!(sure("toilet..building drain"), "{found:?}");
    assert!(sure("hot line..hot stop"), "{found:?}");
}
