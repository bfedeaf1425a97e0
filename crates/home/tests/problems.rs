//! Every problem that a home file can have, with its place.
//!
//! The texts below are marked: `⟦!key⟧` stands before the place of an error, `⟦?key⟧` before that of a
//! warning. The marks are taken out before the file is opened.

#![expect(clippy::unwrap_used, reason = "a test")]

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource};
use quarterturn_home::{DeviceState, Kind, Opened, OperableBy, Problem, Severity, open, save};

/// Opens a marked text, compares every problem with its mark, and gives back what was opened.
#[track_caller]
fn check(marked: &str) -> Opened {
    let mut text = String::new();
    let mut expected = Vec::new();
    let mut rest = marked;
    while let Some((before, after)) = rest.split_once('⟦') {
        text.push_str(before);
        let (mark, after) = after.split_once('⟧').unwrap();
        let line = text.matches('\n').count() + 1;
        let last = text.rsplit('\n').next().unwrap();
        let column = last.chars().filter(|c| *c != '\u{feff}').count() + 1;
        expected.push(format!("{line}:{column} {mark}"));
        rest = after;
    }
    text.push_str(rest);

    let opened = open("home.ron", &text);
    let told: Vec<String> = opened.problems.iter().map(told).collect();
    assert_eq!(told, expected, "{:#?}\n{text}", opened.problems);
    for problem in &opened.problems {
        assert_eq!(problem.file, "home.ron");
        has_words(problem);
    }
    if let Some(home) = &opened.home {
        saving_loses_nothing(&opened, &save(home, &opened.kept));
    }
    opened
}

fn told(problem: &Problem) -> String {
    let mark = if problem.severity == Severity::Error { '!' } else { '?' };
    format!("{}:{} {mark}{}", problem.line, problem.column, problem.key)
}

/// The saved text says the same of the home, has the same problems, and is saved as it is.
#[track_caller]
fn saving_loses_nothing(opened: &Opened, saved: &str) {
    let again = open("home.ron", saved);
    let mut home = opened.home.clone().unwrap();
    home.format = 1;
    assert_eq!(again.home.as_ref(), Some(&home), "{saved}");
    assert_eq!(save(again.home.as_ref().unwrap(), &again.kept), saved);
    // These are put right by writing the file anew.
    let repaired = [
        "missing-comma",
        "extra-comma",
        "quoted-name",
        "other-name",
        "unknown-extension",
        "format-missing",
        "format-newer",
        "format-unreadable",
    ];
    let keys = |opened: &Opened| {
        let keys = opened.problems.iter().map(|p| p.key).filter(|key| !repaired.contains(key));
        let mut keys: Vec<&str> = keys.collect();
        keys.sort_unstable();
        keys
    };
    assert_eq!(keys(&again), keys(opened), "{saved}");
}

/// The catalogue has a cause and a remedy for the problem, and the problem fills all their places.
#[track_caller]
fn has_words(problem: &Problem) {
    let words = include_str!("../../../assets/text/en/problems.ftl").to_owned();
    let mut bundle = FluentBundle::new(vec!["en".parse().unwrap()]);
    bundle.add_resource(FluentResource::try_new(words).unwrap()).unwrap();
    let mut args = FluentArgs::new();
    for (name, value) in &problem.args {
        args.set(*name, value.clone());
    }
    for id in [format!("problem-{}", problem.key), format!("problem-{}-remedy", problem.key)] {
        let message = bundle.get_message(&id).and_then(|m| m.value()).unwrap();
        let mut errors = Vec::new();
        let text = bundle.format_pattern(message, Some(&args), &mut errors);
        assert!(errors.is_empty() && !text.is_empty(), "{id}: {errors:?}");
    }
}

fn arg<'p>(problem: &'p Problem, name: &str) -> &'p str {
    problem.args.iter().find(|(n, _)| *n == name).map(|(_, value)| value.as_str()).unwrap()
}

/// A home with these components and connections, written after five lines of others.
fn home(components: &str, connections: &str) -> String {
    format!(
        r#"#![enable(implicit_some)]
Home(format: 1, name: "Test",
    levels: [(id: "ground", name: "Ground")],
    spaces: [(id: "hall", name: "Hall", level: "ground")],
    contacts: [(id: "utility", name: "Utility")],
    components: [
        (id: "street", kind: WaterMain, name: "Street"),
        (id: "pipe", kind: Pipe, name: "Pipe"),
        (id: "tap", kind: Tap, name: "Tap"),
        {components}
    ],
    connections: [{connections}],
)"#
    )
}

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
fn fields_of_the_wrong_type_leave_the_others() {
    let opened = check(&home(
        r#"(id: "a", kind: Tap, name: ⟦!wrong-type⟧5, tag: ⟦!wrong-type⟧W1, at: ⟦!wrong-type⟧(1.0, 2.0),
            operates: ⟦!wrong-type⟧Lever, rating_a: ⟦!wrong-type⟧"16", poles: ⟦!wrong-type⟧1.5, joins: ⟦!wrong-type⟧yes, note: "kept"),
        (id: "b", kind: Tap, name: "B", operates: (tool: ⟦!wrong-type⟧[], seconds: 5)),
        ⟦!wrong-type⟧"c",
        (id: ⟦!wrong-type⟧7, kind: Tap, name: "D"),
        (id: "e", kind: ⟦!wrong-type⟧Tap(1), name: "E", photo: ⟦!unreadable-text⟧"photos\main.jpg"),"#,
        "",
    ));
    let home = opened.home.unwrap();
    let a = home.component("a").unwrap();
    assert_eq!((a.name.as_str(), a.note.as_deref()), ("a", Some("kept")));
    assert_eq!(home.component("b").unwrap().operates.as_ref().unwrap().seconds, Some(5.0));
    assert_eq!(home.component("e").unwrap().kind, Kind::Other);
    assert_eq!(home.components.len(), 6);
    check("Home(format: 1, name: \"x\", components: ⟦!wrong-type⟧⟦?no-components⟧(id: \"a\"))");
    check(&home_with(
        r#"spaces: [(id: "s", name: "S", outline: ⟦!wrong-type⟧[1, 2], outdoors: true)],"#,
    ));
}

/// A home of one component, with more fields.
fn home_with(fields: &str) -> String {
    format!(
        "Home(format: 1, name: \"x\", {fields}\n components: [(id: \"a\", kind: Tap, name: \"A\")])"
    )
}

#[test]
fn missing_fields() {
    let opened = check(&home(
        r#"⟦!missing-field⟧(kind: Tap, name: "no id"),
        ⟦!missing-field⟧(id: "a", name: "A"),
        ⟦!missing-field⟧(id: "b", kind: Tap),"#,
        r#"⟦!missing-field⟧(from: "street", to: "tap"), ⟦!missing-field⟧(to: "tap", carries: ColdWater), (from: "street", to: "tap", carries: ColdWater)"#,
    ));
    let home = opened.home.unwrap();
    assert_eq!(home.component("a").unwrap().kind, Kind::Other);
    assert_eq!(home.component("b").unwrap().name, "b");
    assert_eq!((home.components.len(), home.connections.len()), (5, 1));
    check(&home_with(r#"warranties: [⟦!missing-field⟧(id: "w", name: "W")],"#));
    check(&home_with(
        r#"levels: [(id: "l", name: "L", plan: ⟦!missing-field⟧(picture: "p.png"))],"#,
    ));
}

#[test]
fn unknown_kinds_and_values() {
    let opened = check(&home(
        r#"(id: "a", kind: ⟦!unknown-kind⟧IsolatingValv, name: "A", operable_by: ⟦!unknown-value⟧Anyon,
            operates: (handle: ⟦?unknown-value⟧Leaver, closes: ⟦?unknown-value⟧Slides(3), state: ⟦!unknown-value⟧Stif, normally: ⟦!unknown-value⟧Closed)),
        (id: "b", kind: ⟦?quoted-name⟧"Tap", name: "B"),"#,
        r#"(from: "street", to: "tap", carries: ⟦!unknown-value⟧ColdWatr), (from: "street", to: "tap", carries: ColdWater, material: ⟦?unknown-value⟧Wood)"#,
    ));
    let told: Vec<_> = opened.problems.iter().map(|p| arg_or(p, "nearest")).collect();
    assert_eq!(told, ["IsolatingValve", "Anyone", "Lever", "", "Stiff", "", "", "ColdWater", ""],);
    let home = opened.home.unwrap();
    let a = home.component("a").unwrap();
    assert_eq!((a.kind, a.operable_by), (Kind::Other, OperableBy::Licensed));
    let operates = a.operates.as_ref().unwrap();
    assert_eq!((operates.handle, operates.closes), (None, None));
    assert_eq!(operates.state, DeviceState::Unknown);
    assert_eq!(home.component("b").unwrap().kind, Kind::Tap);
    assert_eq!((home.connections.len(), home.connections[0].material), (1, None));
    check(&home_with("units: ⟦!unknown-value⟧Uk,"));
}

fn arg_or<'p>(problem: &'p Problem, name: &str) -> &'p str {
    problem.args.iter().find(|(n, _)| *n == name).map_or("", |(_, value)| value)
}

#[test]
fn unknown_and_doubled_fields_are_written_back() {
    let opened = check(&home(
        r#"(id: "a", ⟦?unknown-field⟧colour: "red", kind: Tap, name: "A", ⟦?unknown-field⟧nmae: [1, (x: 2)], ⟦!field-twice⟧name: "B",
            operates: (⟦?unknown-field⟧torque: 5, state: Works)),"#,
        "",
    ));
    assert_eq!(arg(&opened.problems[1], "nearest"), "name");
    assert_eq!(arg(&opened.problems[2], "other_line"), "10");
    let saved = save(opened.home.as_ref().unwrap(), &opened.kept);
    let line = r#"        (id: "a", kind: Tap, name: "A", operates: (state: Works, torque: 5), colour: "red", nmae: [1, (x: 2)], name: "B"),"#;
    assert!(saved.lines().any(|l| l == line), "{saved}");
    check(&home_with("⟦?unknown-field⟧pets: {\"cat\": 1},"));
}

#[test]
fn numbers_out_of_range_and_dates() {
    let opened = check(&home(
        r#"(id: "a", kind: Tap, name: "A", at: ⟦!out-of-range⟧(0, inf, 0), rating_a: ⟦!out-of-range⟧-16, poles: ⟦!out-of-range⟧-1,
            watts: ⟦!out-of-range⟧NaN, volume_l: ⟦!out-of-range⟧1e300,
            operates: (closes: ⟦!out-of-range⟧Turns(-3), exercised: ⟦!unreadable-date⟧"2026-02-30", seconds: ⟦!out-of-range⟧-1)),"#,
        r#"(from: "street", to: "tap", carries: ColdWater, length_m: ⟦!out-of-range⟧-0.1)"#,
    ));
    let home = opened.home.unwrap();
    let a = home.component("a").unwrap();
    assert_eq!((a.at, a.rating_a, a.poles, a.watts, a.volume_l), (None, None, None, None, None));
    assert_eq!(home.connections[0].length_m, None);
    check(&home_with(
        r#"levels: [(id: "l", name: "L", elevation_m: ⟦!out-of-range⟧-inf, plan: (picture: "p", width_m: ⟦!out-of-range⟧0.0))],
        spaces: [(id: "s", name: "S", outline: ⟦!out-of-range⟧[(0, 0), (NaN, 1)])],
        warranties: [(id: "w", name: "W", from: ⟦!unreadable-date⟧"May", months: 12)],
        jobs: [(id: "j", name: "J", every_months: ⟦!out-of-range⟧0, last_done: ⟦!unreadable-date⟧2026-05-02)],"#,
    ));
}

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
