//! Ids, and what refers to them: spaces, contacts, passages, connections.

use super::*;

#[test]
fn ids_that_are_odd_empty_or_given_twice() {
    let opened = check(&home(
        r#"(id: ⟦?odd-id⟧"Hall Valve_1", kind: Tap, name: "A"),
        (id: ⟦!empty-id⟧"", kind: Tap, name: "B"),
        (id: ⟦!duplicate-id⟧"tap", kind: Pipe, name: "C"),
        (id: ⟦?shared-id⟧"hall", kind: Pipe, name: "D"),"#,
        r#"(id: "c", from: "street", to: "tap", carries: ColdWater), (id: ⟦!duplicate-id⟧"c", from: "street", to: "hall", carries: ColdWater)"#,
    ));
    assert_eq!(arg(&opened.problems[0], "better"), "hall-valve-1");
    let twice = &opened.problems[2];
    assert_eq!((arg(twice, "other_line"), arg(twice, "other_column")), ("9", "14"));
    let home = opened.home.unwrap();
    assert_eq!(home.component("tap").unwrap().kind, Kind::Tap);
    assert_eq!((home.components.len(), home.connections.len()), (5, 2));
    assert_eq!(home.connections[1].id, None);
    check(&home_with(
        r#"levels: [(id: "l", name: "L"), (id: ⟦!duplicate-id⟧"l", name: "M")],
        spaces: [(id: "l", name: "A space may be called like its level")],"#,
    ));
}

#[test]
fn unknown_ids_are_left_out_with_a_guess() {
    let opened = check(
        r#"Home(format: 1, name: "x", usual_space: ⟦!unknown-id⟧"hal",
    levels: [(id: "ground", name: "G")],
    spaces: [(id: "hall", name: "H", level: ⟦!unknown-id⟧"grund"), (id: "loft", name: "L", level: ⟦!unknown-id⟧"roof")],
    components: [
        (id: "street", kind: WaterMain, name: "S", space: ⟦!unknown-id⟧"hell", owner: ⟦?unknown-owner⟧"utilty"),
        (id: "tap", kind: Tap, name: "T", owner: "utilty"),
    ],
    connections: [
        (from: ⟦!unknown-id⟧"stret", to: "tap", carries: ColdWater),
        (from: ⟦!unknown-id⟧"x", to: ⟦!unknown-id⟧"y", carries: ColdWater),
        (from: "street", to: "tap", carries: ColdWater),
    ],
    contacts: [(id: "utility", name: "U")],
    warranties: [(id: "w", name: "W", from: "2026-01-01", contact: ⟦!unknown-id⟧"utilities", covers: ["tap", ⟦!unknown-id⟧"tab"])],
    jobs: [(id: "j", name: "J", components: [⟦!unknown-id⟧"tapp", "tap"])],
    documents: [(id: "d", name: "D", components: [⟦!unknown-id⟧"zzzzzz", ⟦!wrong-type⟧5])],
)"#,
    );
    let nearest: Vec<_> = opened.problems.iter().map(|p| arg_or(p, "nearest")).collect();
    let expected = [
        "hall", "ground", "", "hall", "utility", "street", "", "", "utility", "tap", "tap", "", "",
    ];
    assert_eq!(nearest, expected);
    let home = opened.home.unwrap();
    assert_eq!(home.usual_space, None);
    assert_eq!(home.spaces[0].level, None);
    assert_eq!(home.components[0].space, None);
    assert_eq!(home.components[0].owner.as_deref(), Some("utilty"));
    assert_eq!(home.connections.len(), 1);
    assert_eq!(home.warranties[0].contact, None);
    assert_eq!(home.warranties[0].covers, ["tap"]);
    assert_eq!(home.jobs[0].components, ["tap"]);
}

#[test]
fn an_owner_may_be_told_in_words_where_there_are_no_contacts() {
    check(
        r#"Home(format: 1, name: "x", components: [(id: "m", kind: WaterMain, name: "M", owner: "utility")])"#,
    );
}

#[test]
fn passages_that_lead_nowhere_are_left_out_and_odd_ones_are_told() {
    let home = check(
        r#"Home(format: 1, name: "H",
    levels: [(id: "low", name: "Low"), (id: "high", name: "High", elevation_m: 2.5)],
    spaces: [
        (id: "hall", name: "Hall", level: "low"),
        (id: "bath", name: "Bath", level: "low"),
        (id: "loft", name: "Loft", level: "high"),
        (id: "yard", name: "Yard"),
    ],
    passages: [
        (between: ("hall", "bath"), at: (1.0, 2.0), note: "sticks"),
        (between: ("hall", "loft"), at: (1.0, 2.0), stairs: true, to_at: (1.0, 5.0)),
        (between: ("hall", "yard")),
        (between: ("hall", ⟦!unknown-id⟧"bat")),
        (between: ⟦!passage-to-itself⟧("hall", "hall")),
        (between: ("hall", "bath"), stairs: ⟦?stairs-on-one-level⟧true),
        (between: ⟦?door-between-levels⟧("bath", "loft")),
        (between: ("bath", "yard"), to_at: ⟦!door-in-two-places⟧(1.0, 2.0)),
        (between: ("bath", "yard"), at: ⟦!wrong-type⟧(1.0, 2.0, 3.0)),
        (between: ⟦!wrong-type⟧"hall"),
        (between: ⟦!wrong-type⟧("hall", "bath", "loft")),
        (between: ("hall", ⟦!wrong-type⟧5)),
        ⟦!missing-field⟧(at: (1.0, 2.0)),
    ],
    components: [(id: "tap", kind: Tap, name: "Tap")],
)"#,
    )
    .home
    .unwrap();
    let told: Vec<_> = home.passages.iter().map(|p| (p.between.1.as_str(), p.other_at())).collect();
    assert_eq!(
        told,
        [
            ("bath", Some((1.0, 2.0))),
            ("loft", Some((1.0, 5.0))),
            ("yard", None),
            ("bath", None),
            ("loft", None),
            ("yard", None),
            ("yard", None),
        ]
    );
}

#[test]
fn connections_that_cannot_be() {
    let opened = check(&home(
        r#"(id: "panel", kind: Panel, name: "P"), (id: "sewer", kind: SewerMain, name: "S"),
        (id: "backflow", kind: BackflowPreventer, name: "B"), (id: "cock", kind: IsolatingValve, name: "C", operates: (normally: Shut)),
        (id: "valve", kind: IsolatingValve, name: "V"), (id: "drain", kind: FloorDrain, name: "D"), (id: "trap", kind: Trap, name: "T"),"#,
        r#"
        (from: "tap", to: ⟦!to-itself⟧"tap", carries: ColdWater),
        (from: "panel", to: "tap", carries: ⟦!cannot-meet⟧ColdWater),
        (from: "street", to: "pipe", carries: ColdWater),
        (from: "pipe", to: "tap", carries: HotWater),
        (from: "pipe", to: "sewer", carries: ⟦!media-mix⟧Waste),
        (from: "street", to: "backflow", carries: ColdWater),
        (from: "backflow", to: "drain", carries: Waste),
        (from: "street", to: "cock", carries: ColdWater),
        (from: "cock", to: "drain", carries: Waste),
        (from: "valve", to: "drain", carries: Waste),
        (from: "street", to: "valve", carries: ⟦!media-mix⟧ColdWater),
        (from: "drain", to: "trap", carries: Waste),
        (from: "street", to: "trap", carries: ColdWater),
        (from: "trap", to: "sewer", carries: Waste),
    "#,
    ));
    assert_eq!(arg(&opened.problems[1], "id"), "panel");
    assert_eq!(arg(&opened.problems[2], "medium"), "ColdWater");
    assert_eq!(arg(&opened.problems[2], "other_line"), "17");
    assert_eq!(opened.home.unwrap().connections.len(), 10);
}

#[test]
fn a_drain_that_runs_in_a_loop_loses_its_last_connection() {
    let opened = check(&home(
        r#"(id: "a", kind: Pipe, name: "A"), (id: "b", kind: Pipe, name: "B"), (id: "c", kind: Pipe, name: "C"),
        (id: "pan", kind: CondensatePan, name: "P"), (id: "pump", kind: CondensatePump, name: "Q"), (id: "sewer", kind: SewerMain, name: "S"),"#,
        r#"
        (from: "c", to: "a", carries: Waste),
        (from: "a", to: "b", carries: Waste),
        (from: "b", to: "sewer", carries: Waste),
        ⟦!drain-loop⟧(from: "b", to: "c", carries: Waste),
        ⟦!drain-loop⟧(from: "b", to: "a", carries: Waste),
        (from: "pan", to: "pump", carries: Condensate),
        ⟦!drain-loop⟧(from: "pump", to: "pan", carries: Condensate),
        (from: "street", to: "tap", carries: ColdWater),
        (from: "tap", to: "street", carries: ColdWater),
    "#,
    ));
    let ids: Vec<_> = opened.problems.iter().map(|p| arg(p, "ids")).collect();
    assert_eq!(ids, ["c, a, b", "a, b", "pan, pump"]);
    assert_eq!(opened.home.unwrap().connections.len(), 6);
}
