//! What stands in the fields.

use super::*;

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
fn a_direction_is_less_than_a_whole_turn() {
    let north = |written: &str| {
        check(&format!(
            r#"Home(format: 1, name: "x", north_deg: {written},
            components: [(id: "tap", kind: Tap, name: "T")])"#
        ))
    };
    for (written, deg) in [("0", 0.0), ("12.5", 12.5), ("Some(359.9)", 359.9), ("-0.0", 0.0)] {
        assert_eq!(north(written).home.unwrap().north_deg, Some(deg), "{written}");
    }
    // The remedy names the same direction, if there is one.
    for (written, better) in [
        ("360", "0"),
        ("-90.0", "270"),
        ("450.5", "90.5"),
        ("inf", ""),
        ("NaN", ""),
        // A hair less than nothing, and far more than a slip.
        ("-1e-20", ""),
        ("1e300", ""),
    ] {
        let opened = north(&format!("⟦!no-direction⟧{written}"));
        assert_eq!(arg(&opened.problems[0], "better"), better, "{written}");
        let has = if better.is_empty() { "no" } else { "yes" };
        assert_eq!(arg(&opened.problems[0], "suggested"), has);
        assert_eq!(opened.home.as_ref().unwrap().north_deg, None);
        // What the file says stays in it until someone puts it right.
        let saved = save(opened.home.as_ref().unwrap(), &opened.kept);
        assert!(saved.contains(&format!("    north_deg: {written},")), "{saved}");
    }
    assert_eq!(north(r#"⟦!wrong-type⟧"up""#).home.unwrap().north_deg, None);
    // What someone tells later takes its place.
    let opened = north("⟦!no-direction⟧400");
    let told = Edit::SetNorth(Some(40.0)).made_on(opened.home.as_ref().unwrap()).unwrap();
    let saved = save(&told, &opened.kept);
    assert!(saved.contains("    north_deg: 40.0,\n") && !saved.contains("400"), "{saved}");
    for wild in [360.0, -1.0, f64::NAN] {
        let why = Edit::SetNorth(Some(wild)).made_on(&told);
        let Err(CannotEdit::Unfit(problem)) = why else { panic!("{wild}: {why:?}") };
        assert!(["no-direction", "wrong-type"].contains(&problem.key), "{}", problem.key);
    }
}
