//! The file as a text: its notation, its format, and what is kept of it.

use super::*;

const DESIGN: &str = r#"#![enable(implicit_some)]
Home(
    format: 1,
    name: "Two rooms",
    units: Us,                              // Us | Si : display only; the file is always SI
    levels: [(id: "ground", name: "Ground floor", elevation_m: 0.0)],
    spaces: [
        (id: "kitchen", name: "Kitchen", level: "ground"),
        (id: "hall",    name: "Hall",    level: "ground"),
    ],
    components: [
        (id: "street",     kind: WaterMain,   name: "Street main",          owner: "utility"),
        (id: "meter",      kind: WaterMeter,  name: "Water meter",          owner: "utility", boundary: true),
        (id: "main",       kind: IsolatingValve, name: "House main shutoff", tag: "W1", space: "hall", at: (0.4, 0.2, 1.1),
            operates: (handle: Lever, closes: QuarterTurn, state: Works, exercised: "2026-05-02")),
        (id: "stop-cold",  kind: IsolatingValve, name: "Cold stop under the sink", tag: "W2", space: "kitchen", at: (2.1, 3.0, 0.4)),
        (id: "hose-cold",  kind: SupplyHose,  name: "Cold hose to the tap", space: "kitchen"),
        (id: "tap",        kind: Tap,         name: "Kitchen tap",          space: "kitchen"),
    ],
    connections: [
        (from: "street", to: "meter",     carries: ColdWater),
        (from: "meter",  to: "main",      carries: ColdWater, length_m: 9.0, size: "3/4 in", material: Copper),
        (from: "main",   to: "stop-cold", carries: ColdWater),
        (from: "stop-cold", to: "hose-cold", carries: ColdWater),
        (from: "hose-cold", to: "tap",    carries: ColdWater),
    ],
    contacts: [(id: "utility", name: "Water utility, emergencies", phone: "555-0100")],
)
"#;

#[test]
fn a_sound_home_has_no_problem_and_its_saved_text_is_as_expected() {
    let opened = check(DESIGN);
    assert!(opened.may_save());
    let saved = save(opened.home.as_ref().unwrap(), &opened.kept);
    let expected = r#"#![enable(implicit_some)]
Home(
    format: 1,
    name: "Two rooms",
    units: Us,
    levels: [
        (id: "ground", name: "Ground floor"),
    ],
    spaces: [
        (id: "kitchen", name: "Kitchen", level: "ground"),
        (id: "hall", name: "Hall", level: "ground"),
    ],
    components: [
        (id: "street", kind: WaterMain, name: "Street main", owner: "utility"),
        (id: "meter", kind: WaterMeter, name: "Water meter", boundary: true, owner: "utility"),
        (id: "main", kind: IsolatingValve, name: "House main shutoff", tag: "W1", space: "hall", at: (0.4, 0.2, 1.1),
            operates: (handle: Lever, closes: QuarterTurn, state: Works, exercised: "2026-05-02")),
        (id: "stop-cold", kind: IsolatingValve, name: "Cold stop under the sink", tag: "W2", space: "kitchen", at: (2.1, 3.0, 0.4)),
        (id: "hose-cold", kind: SupplyHose, name: "Cold hose to the tap", space: "kitchen"),
        (id: "tap", kind: Tap, name: "Kitchen tap", space: "kitchen"),
    ],
    connections: [
        (from: "street", to: "meter", carries: ColdWater),
        (from: "meter", to: "main", carries: ColdWater, length_m: 9.0, size: "3/4 in", material: Copper),
        (from: "main", to: "stop-cold", carries: ColdWater),
        (from: "stop-cold", to: "hose-cold", carries: ColdWater),
        (from: "hose-cold", to: "tap", carries: ColdWater),
    ],
    contacts: [
        (id: "utility", name: "Water utility, emergencies", phone: "555-0100"),
    ],
)
"#;
    assert_eq!(saved, expected);
}

#[test]
fn every_form_of_the_notation_is_read() {
    let opened = check(
        r##"// A line, /* and a block */
/* that /* nests */ */
#![enable(implicit_some)]
#![enable(unwrap_newtypes,)]
// Between.
Home(format: 1, name: r#"Raw "name" \n"#, units: Si, language: Some("en-GB"), usual_space: Some("hall"),
    spaces: [Space(id: "hall", name: "H\u{e4}ll \"A\" \x41\t", outline: [(0, 0), (3, 0), (3, 2.5)])],
    components: [
        Component (id: "tap", kind: Tap, name: "Tap", at: (1, -2, 0), tag: None, joins: Some(true),
            operates: Some((closes: Some(Turns(8)), handle: None)), poles: 0x2, watts: 1_500),
        Some((id: "none", kind: Other, name: "", operates: ())),
    ],
) // After.
/* And after. */"##,
    );
    let home = opened.home.unwrap();
    assert_eq!(home.name, r#"Raw "name" \n"#);
    assert_eq!(home.spaces[0].name, "Häll \"A\" A\t");
    assert_eq!(home.usual_space.as_deref(), Some("hall"));
    let tap = home.component("tap").unwrap();
    assert_eq!((tap.at, tap.poles, tap.watts), (Some((1.0, -2.0, 0.0)), Some(2), Some(1500.0)));
    assert!(home.component("none").unwrap().operates.is_some());
    assert_eq!(opened.kept.above.len(), 2);
    assert_eq!(opened.kept.below, ["// Between."]);
}

#[test]
fn comments_above_the_home_stay_where_they_stood() {
    let text = "// A flat in town.\n#![enable(implicit_some)]\n// Second.\nHome(\n    format: 1,\n    \
                name: \"\",\n    components: [\n        (id: \"a\", kind: Tap, name: \"A\"),\n    ],\n)\n";
    let opened = open("home.ron", text);
    assert_eq!(save(&opened.home.unwrap(), &opened.kept), text);
}

#[test]
fn text_that_cannot_be_read_gives_no_home_and_a_place() {
    for marked in [
        "⟦!empty-file⟧",
        "  // Nothing.\n⟦!empty-file⟧",
        "Home⟦!unclosed⟧(format: 1, name: \"x\"",
        "Home(format: 1, components: ⟦!unclosed⟧[(id: \"a\"), ",
        "Home(format: 1, components: [⟦!wrong-bracket⟧(id: \"a\", ], name: \"x\")",
        "Home(format: 1, components: [\n\t⟦!wrong-bracket⟧(id: \"a\",\n\t(id: \"b\"),\n])",
        "Home(format: 1, components: ⟦!wrong-bracket⟧[(id: \"a\")), name: \"x\")",
        "Home(format: 1, name: ⟦!unclosed-text⟧\"Test)",
        "Home(format: 1, name: ⟦!unclosed-text⟧r#\"Test\")",
        "Home(format: 1, ⟦!unclosed-comment⟧/* name: \"x\" /* */)",
        "Home(format: 1, ⟦!unreadable⟧name \"Test\")",
        "Home(format: 1, name: ⟦!unreadable⟧@)",
        "Home(format: 1, name: \"A\", ⟦!unreadable⟧: 5)",
        "⟦!unreadable⟧#[enable(implicit_some)]\nHome()",
        "⟦!not-a-home⟧[1, 2]",
        "⟦!not-a-home⟧Home(\"x\")",
        "⟦!not-a-home⟧Home",
    ] {
        let opened = check(marked);
        assert_eq!(opened.home, None, "{marked}");
        assert!(!opened.may_save());
    }
    let deep = format!("Home(x: {}", "[".repeat(100_000));
    let opened = open("home.ron", &deep);
    assert_eq!(opened.problems[0].key, "too-deep");
    has_words(&opened.problems[0]);
    let wrong = open("home.ron", "Home(a: [(b: 1,\n ])");
    assert_eq!(arg(&wrong.problems[0], "bracket"), "(");
    assert_eq!(arg(&wrong.problems[0], "other_line"), "2");
    assert_eq!(arg(&wrong.problems[0], "other_column"), "2");
}

#[test]
fn commas_are_passed_over() {
    let opened = check(
        "Home(format: 1⟦?missing-comma⟧ name: \"x\",⟦?extra-comma⟧, components: [\n\
         \t(id: \"a\", kind: Tap, name: \"A\")⟦?missing-comma⟧\n\
         \t(id: \"b\", kind: Tap⟦?missing-comma⟧ name: \"B\")])",
    );
    assert_eq!(opened.home.unwrap().components.len(), 2);
}

#[test]
fn what_follows_the_home_is_kept() {
    let opened = check(
        "⟦?other-name⟧House(format: 1, name: \"x\", components: [(id: \"a\", kind: Tap, name: \"A\")])\n  \
         ⟦!text-after-home⟧), contacts: [] // end\n)\n",
    );
    assert_eq!(opened.kept.after.as_deref(), Some("), contacts: [] // end\n)"));
}

#[test]
fn formats() {
    let body = "name: \"x\", components: [(id: \"a\", kind: Tap, name: \"A\")]";
    let missing = check(&format!("⟦!format-missing⟧Home({body})"));
    assert!(missing.may_save());
    assert_eq!(missing.home.unwrap().format, 1);
    let newer =
        check(&format!("Home(format: ⟦!format-newer⟧2, {body}, ⟦?unknown-field⟧rooms: [1])"));
    assert!(!newer.may_save());
    assert_eq!(newer.home.unwrap().components.len(), 1);
    let unreadable = check(&format!("Home(format: ⟦!format-unreadable⟧\"1\", {body})"));
    assert!(!unreadable.may_save());
    let older = check(&format!("Home(format: 0, {body})"));
    assert!(older.may_save());
    check(&format!(
        "#![enable(implicit_some, ⟦?unknown-extension⟧magic)]\nHome(format: 1, {body})"
    ));
    check("Home(format: 1, name: \"x\", components: ⟦?no-components⟧[])");
    check("⟦?no-components⟧Home(format: 1, name: \"x\")");
    check("⟦!format-missing⟧⟦!missing-field⟧⟦?no-components⟧()");
}

#[test]
fn several_problems_are_told_at_once_whatever_the_line_ends() {
    let marked = "\u{feff}#![enable(implicit_some)]\r\nHome(format: 1, name: \"x\",\r\n\tcomponents: [\r\n\
        \t\t(id: \"é\u{301}\", kind: ⟦!unknown-kind⟧Tapp, name: \"ü\", at: ⟦!wrong-type⟧(1, 2)),\r\n\
        \t\t(id: \"b\", kind: Tap, name: \"B\")⟦?missing-comma⟧\r\n\
        \t\t(id: \"b2\", kind: Tap, name: \"B\", spce: \"hall\"),\r\n\t],\r\n\
        \tconnections: [(from: ⟦!unknown-id⟧\"c\", to: \"b\", carries: ColdWater)],\r\n)\r\n"
        .replace("(id: \"é", "(id: ⟦?odd-id⟧\"é")
        .replace("spce", "⟦?unknown-field⟧spce");
    let opened = check(&marked);
    let places: Vec<_> = opened.problems.iter().map(|p| (p.line, p.column)).collect();
    assert_eq!(places, [(4, 8), (4, 20), (4, 41), (5, 34), (6, 36), (8, 23)]);
}

#[test]
fn pieces_left_out_stand_where_they_stood_after_the_home_was_edited() {
    let opened = check(&home(
        r#"(id: "a", kind: Tap, name: "A", rating_a: ⟦!wrong-type⟧"ten"),
        (id: ⟦!duplicate-id⟧"tap", kind: Tap, name: "Second"),
        (id: "b", kind: Tap, name: "B", watts: ⟦!wrong-type⟧"few"),"#,
        "",
    ));
    let mut home = opened.home.unwrap();
    // Someone puts one field right and takes out the first component.
    home.components.remove(0);
    home.components.iter_mut().find(|c| c.id == "a").unwrap().rating_a = Some(10.0);
    let saved = save(&home, &opened.kept);
    let expected = r#"    components: [
        (id: "pipe", kind: Pipe, name: "Pipe"),
        (id: "tap", kind: Tap, name: "Tap"),
        (id: "a", kind: Tap, name: "A", rating_a: 10.0),
        (id: "tap", kind: Tap, name: "Second"),
        (id: "b", kind: Tap, name: "B", watts: "few"),
    ],
"#;
    assert!(saved.contains(expected), "{saved}");
}
