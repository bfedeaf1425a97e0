//! The command line: exit codes, JSON, and the files that it writes.

use std::path::Path;

use quarterturn_home::{Home, for_next_owner, open, save};
use serde_json::Value;

use super::home;
use crate::homes::example;

fn run(words: &[&str]) -> (u8, String, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let code = quarterturn::run(["quarterturn"].iter().chain(words), &mut out, &mut err);
    (code, String::from_utf8(out).unwrap(), String::from_utf8(err).unwrap())
}

fn folder_of(home: &Home) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let text = save(home, &quarterturn_home::Kept::default());
    std::fs::File::create(folder.path().join("home.ron"))
        .and_then(|mut file| std::io::Write::write_all(&mut file, text.as_bytes()))
        .unwrap();
    folder
}

fn path(folder: &Path) -> &str {
    folder.to_str().unwrap()
}

#[test]
fn something_overdue_is_worth_attention_and_nothing_overdue_is_not() {
    let alarm = home(
        r#"components: [(id: "a", kind: SmokeAlarm, name: "A")],
        done: [(job: "alarm-test", on: "2026-05-02"), (job: "alarm-battery", on: "2026-05-02")]"#,
    );
    let folder = folder_of(&alarm);
    let at = |day: &str| run(&["upkeep", path(folder.path()), "--today", day]);
    let (code, out, _) = at("2026-05-20");
    assert_eq!(code, quarterturn::DONE, "{out}");
    assert!(!out.contains("Overdue"), "{out}");
    let (code, out, _) = at("2026-06-03");
    assert_eq!(code, quarterturn::ATTENTION);
    assert!(out.contains("Overdue\n- Press TEST on every smoke and CO alarm"), "{out}");
    let (code, out, err) = run(&["upkeep", path(folder.path()), "--today", "2026-02-30"]);
    assert_eq!(code, quarterturn::BAD_INPUT, "{out}{err}");
}

#[test]
fn json_holds_both_lists_and_spanish_is_spoken() {
    let folder = folder_of(&example("flat"));
    let ask = ["upkeep", path(folder.path()), "--today", "2026-06-05", "--json"];
    let (_, out, _) = run(&ask);
    let told: Value = serde_json::from_str(&out).unwrap();
    assert_eq!(told["upkeep"]["today"], "2026-06-05");
    let later = told["upkeep"]["later"].as_array().unwrap();
    let rcd = later.iter().find(|job| job["id"] == "rcd-test").unwrap();
    assert_eq!((&rcd["due"], &rcd["every"]["months"]), (&"2026-12-01".into(), &6.into()));
    assert!(told["move_in"].as_array().unwrap().len() > 10);
    let (_, out, _) =
        run(&["upkeep", path(folder.path()), "--today", "2026-06-05", "--language", "es"]);
    assert!(out.contains("Lo que toca en esta casa") && out.contains("Más adelante"), "{out}");
    assert!(!out.contains("[upkeep") && !out.contains("{ $"), "{out}");
}

#[test]
fn files_are_written_and_one_that_cannot_be_is_told() {
    let folder = folder_of(&example("old-house"));
    let to = folder.path().join("upkeep.ics");
    let cards = folder.path().join("contacts.vcf");
    let ask = |ics: &Path| {
        run(&[
            "upkeep",
            path(folder.path()),
            "--today",
            "2026-06-05",
            "--ics",
            path(ics),
            "--cards",
            path(&cards),
        ])
    };
    let (code, _, err) = ask(&to);
    assert_ne!(code, quarterturn::BAD_INPUT, "{err}");
    assert!(std::fs::read(&to).unwrap().starts_with(b"BEGIN:VCALENDAR\r\n"));
    assert!(std::fs::read(&cards).unwrap().starts_with(b"BEGIN:VCARD\r\nVERSION:4.0\r\n"));
    let (code, _, err) = ask(&folder.path().join("no-such-folder/upkeep.ics"));
    assert_eq!(code, quarterturn::BAD_INPUT);
    assert!(err.contains("no-such-folder") && err.contains("is not there"), "{err}");
}

/// A sale: the pack for the next owner says what was done, and not who did it; numbers of people are
/// asked for again.
#[test]
fn the_pack_for_the_next_owner_holds_nothing_private() {
    let sold = for_next_owner(&example("two-storey"));
    let folder = folder_of(&sold);
    let (_, out, _) = run(&["upkeep", path(folder.path()), "--today", "2026-06-05", "--json"]);
    let told: Value = serde_json::from_str(&out).unwrap();
    for private in ["J. R.", "555-0108", "555-0109", "A plastic cover was still over it"] {
        assert!(!out.contains(private), "{private}");
    }
    let items = told["move_in"].as_array().unwrap();
    assert!(items.iter().all(|item| item["done"].is_null()));
    // Neighbor and owner have no number any more: the first thing to do is to ask for theirs.
    assert_eq!(items[0]["id"], "number");
    assert!(items[0]["how"].as_str().unwrap().contains("Neighbor across the street"));
    // What was done stays known.
    assert!(sold.done.iter().any(|done| done.job == "heater-flush"));
}

#[test]
fn the_new_fields_are_read_saved_and_reported_when_wrong() {
    let text = r#"#![enable(implicit_some)]
Home(
    format: 1,
    name: "h",
    components: [
        (id: "d", kind: Appliance, name: "D", arc_fault: true, installed: "2024-02-29",
            duct: (length_m: 6.5, quarter_elbows: 2, eighth_elbows: 1)),
    ],
    contacts: [
        (id: "c", name: "C", role: Insurer, hours: "always"),
    ],
    warranties: [
        (id: "w", name: "W", kind: ServicePlan, contact: "c", covers: ["d"], from: "2024-02-29", years: 2, days: 3, months: 1),
    ],
    jobs: [
        (id: "j", name: "J", stands_for: "dryer-duct", components: ["d"], how: "Slowly.", every_months: 6),
    ],
    done: [
        (job: "j", on: "2026-05-02", by: "X", components: ["d"], finding: LeaksBy, note: "n"),
        (job: "j", on: "2026-05-02"),
    ],
    move_in: [
        (item: "number", on: "2026-05-02", by: "X", note: "n"),
    ],
)
"#;
    let opened = open("home.ron", text);
    assert!(opened.problems.is_empty(), "{:#?}", opened.problems);
    assert_eq!(save(opened.home.as_ref().unwrap(), &opened.kept), text);

    let wrong = text
        .replace("installed: \"2024-02-29", "installed: \"2023-02-29")
        .replace("quarter_elbows: 2", "quarter_elbows: -2")
        .replace("kind: ServicePlan", "kind: ServicePlann")
        .replace("LeaksBy", "Leaks")
        .replace("components: [\"d\"], finding", "components: [\"x\"], finding")
        .replace("(item: \"number\"", "(itm: \"number\"");
    let opened = open("home.ron", &wrong);
    let keys: Vec<&str> = opened.problems.iter().map(|problem| problem.key).collect();
    for key in ["unreadable-date", "out-of-range", "unknown-value", "unknown-id", "missing-field"] {
        assert!(keys.contains(&key), "{key} is not among {keys:?}");
    }
    // Nothing of it is lost.
    let saved = save(opened.home.as_ref().unwrap(), &opened.kept);
    for piece in
        ["2023-02-29", "quarter_elbows: -2", "ServicePlann", "Leaks", "[\"x\"]", "(itm: \"number\""]
    {
        assert!(saved.contains(piece), "{piece} is lost: {saved}");
    }
}
