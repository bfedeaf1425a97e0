//! The upkeep calendar: by the rules of RFC 5545, read by libraries that did not write it, and on the
//! days that the list of what is due tells.

use std::collections::{BTreeMap, BTreeSet};

use calcard::common::timezone::Tz;
use calcard::icalendar::{ICalendar, ICalendarComponentType, ICalendarProperty};
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Date, Home};
use quarterturn_papers::calendar;
use quarterturn_upkeep::{Repeat, due};
use serde_json::Value;

use super::{day, home};
use crate::homes::{EXAMPLES, example};

const TODAY: &str = "2026-06-05";
/// Three years on.
const LAST: &str = "2029-06-04";

/// The days on which each event of a calendar text comes up, to `last`, by its summary.
fn expanded(text: &str, last: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut all: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut pieces = text.split("BEGIN:VEVENT\r\n");
    let head = pieces.next().unwrap();
    for piece in pieces {
        let event = piece.split_inclusive("END:VEVENT\r\n").next().unwrap();
        let text = format!("{head}BEGIN:VEVENT\r\n{event}END:VCALENDAR\r\n");
        let read = ICalendar::parse(&text).unwrap();
        let component = read
            .components
            .iter()
            .find(|c| c.component_type == ICalendarComponentType::VEvent)
            .unwrap();
        let summary = component.property(&ICalendarProperty::Summary).unwrap();
        let summary = summary.values[0].as_text().unwrap().to_owned();
        let found = read.expand_dates(Tz::Floating, 500);
        assert!(found.errors.is_empty(), "{summary}: {:?}", found.errors);
        let days = found.events.iter().map(|event| event.start.format("%Y-%m-%d").to_string());
        let days = days.filter(|day| day.as_str() <= last);
        all.entry(summary).or_default().extend(days);
    }
    all
}

fn calendar_of(home: &Home, today: &str) -> String {
    calendar(home, day(today), &Catalogue::english())
}

/// RFC 5545, pages 124 and 126: the checker itself, against the RFC's own examples.
#[test]
fn the_library_that_checks_agrees_with_the_rfc() {
    let days = |start: &str, rule: &str| {
        let text = format!(
            "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//EN\r\nBEGIN:VEVENT\r\nUID:1\r\nDTSTAMP:19970101T000000Z\r\nDTSTART;VALUE=DATE:{start}\r\nRRULE:{rule}\r\nSUMMARY:x\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
        );
        expanded(&text, "9999").remove("x").unwrap().into_iter().collect::<Vec<_>>()
    };
    assert_eq!(
        days("20070115", "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5"),
        ["2007-01-15", "2007-01-30", "2007-02-15", "2007-03-15", "2007-03-30"]
    );
    let tenth = days("19970910", "FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15");
    assert_eq!(tenth.len(), 10);
    assert_eq!((tenth[5].as_str(), tenth[9].as_str()), ("1997-09-15", "1999-03-13"));
    // The last day of the month (page 123), and the trap of the 31st (3.3.10).
    assert_eq!(
        days("20260131", "FREQ=MONTHLY;BYMONTHDAY=-1;COUNT=3"),
        ["2026-01-31", "2026-02-28", "2026-03-31"]
    );
    assert_eq!(
        days("20260131", "FREQ=MONTHLY;INTERVAL=3;COUNT=3"),
        ["2026-01-31", "2026-07-31", "2026-10-31"]
    );
}

#[test]
fn the_calendars_of_the_examples_come_up_on_the_days_of_the_list_for_three_years() {
    let words = Catalogue::english();
    for name in EXAMPLES {
        let home = example(name);
        let mut wanted: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for job in due(&home, day(TODAY), &words).all() {
            let Some(repeat) = Repeat::of(job, day(TODAY)) else { continue };
            let days = repeat.days(day(LAST)).into_iter().map(|day| day.to_string());
            wanted.entry(job.name.clone()).or_default().extend(days);
        }
        assert!(wanted.len() > 8, "{name}: {}", wanted.len());
        assert_eq!(expanded(&calendar_of(&home, TODAY), LAST), wanted, "{name}");
    }
}

/// `tests/fixtures/upkeep_days.json` was made by `make_calendar.py` from the calendars of the examples
/// with Python's `icalendar`, `recurring-ical-events` and `dateutil`.
#[test]
fn other_libraries_find_the_same_days() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/fixtures/upkeep_days.json");
    let fixture: Value = serde_json::from_slice(&std::fs::read(path).unwrap()).unwrap();
    for name in EXAMPLES {
        let told = &fixture[name];
        let (today, last) = (told["today"].as_str().unwrap(), told["last"].as_str().unwrap());
        assert_eq!((today, last), (TODAY, LAST));
        let wanted: BTreeMap<String, BTreeSet<String>> =
            serde_json::from_value(told["days"].clone()).unwrap();
        assert_eq!(expanded(&calendar_of(&example(name), today), last), wanted, "{name}");
    }
}

/// 3.1, 3.6, 3.6.1, 3.8: line ends, folding, what must be there once, distinct ids.
#[test]
fn the_text_keeps_to_the_rules() {
    for name in EXAMPLES {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            let text = calendar(&example(name), day(TODAY), &words);
            assert!(text.ends_with("END:VCALENDAR\r\n"));
            for line in text.split("\r\n") {
                assert!(line.len() <= 75, "{name}: {} octets: {line}", line.len());
                assert!(!line.contains(['\n', '\r']), "{line}");
            }
            let count = |wanted: &str| text.matches(wanted).count();
            let events = count("BEGIN:VEVENT\r\n");
            assert!(events > 8 && count("END:VEVENT\r\n") == events);
            for once in ["\r\nPRODID:", "\r\nVERSION:2.0\r\n"] {
                assert_eq!(count(once), 1, "{once}");
            }
            for each in ["\r\nUID:", "\r\nDTSTAMP:20260605T000000Z\r\n", "\r\nDTSTART;VALUE=DATE:"]
            {
                assert_eq!(count(each), events, "{each}");
            }
            let ids: BTreeSet<&str> =
                text.split("\r\n").filter(|line| line.starts_with("UID:")).collect();
            assert_eq!(ids.len(), events, "{name}: ids that are not distinct");
            assert!(!text.contains("UNTIL") && !text.contains("COUNT="));
        }
    }
}

#[test]
fn the_same_day_gives_the_same_bytes_and_another_day_the_same_ids() {
    let home = example("two-storey");
    let ids = |text: &str| -> BTreeSet<String> {
        let lines = text.split("\r\n").filter(|line| line.starts_with("UID:"));
        lines.map(str::to_owned).collect()
    };
    let text = calendar_of(&home, TODAY);
    assert_eq!(text, calendar_of(&home, TODAY));
    let next = calendar_of(&home, "2026-06-06");
    assert_ne!(text, next);
    assert_eq!(ids(&text), ids(&next));
    // Another home's jobs do not overwrite these.
    let other = calendar_of(&example("flat"), TODAY);
    assert_eq!(ids(&text).intersection(&ids(&other)).count(), 0);
}

#[test]
fn a_job_of_the_31st_skips_no_month() {
    let text = |last_done: &str, every: u32, today: &str| {
        let home = home(&format!(
            r#"jobs: [(id: "j", name: "Job", every_months: {every}, last_done: "{last_done}")]"#
        ));
        let text = calendar_of(&home, today);
        let days = expanded(&text, "2027-12-31").remove("Job").unwrap();
        days.into_iter().collect::<Vec<String>>()
    };
    // Due 31 January, every three months: the trap would skip April.
    let quarters = text("2025-10-31", 3, "2026-01-10");
    assert_eq!(quarters[..4], ["2026-01-31", "2026-04-30", "2026-07-31", "2026-10-31"]);
    // Due on 30 January, every month: February has none, so it is the 28th.
    let months = text("2025-12-30", 1, "2026-01-10");
    assert_eq!(months[..3], ["2026-01-28", "2026-02-28", "2026-03-28"]);
    assert_eq!(months.len(), 24);
    // 29 February, every year: otherwise it would come every fourth.
    let years = text("2023-02-28", 12, "2024-02-29");
    assert_eq!(years[0], "2024-03-01", "overdue, from the first day that every year has");
    assert_eq!(years.len(), 4);
    // What is overdue comes up today.
    assert_eq!(text("2020-01-15", 1, "2026-01-10")[0], "2026-01-10");
}

#[test]
fn odd_names_come_through_and_an_empty_home_is_an_empty_calendar() {
    let mut odd = home(r#"jobs: [(id: "j", name: "x", every_months: 1, note: "one\ntwo")]"#);
    odd.jobs[0].name = "Grifo, \"Peña\"; a\\b — ñandú ☎ and so on for longer than one line of the file may ever be\u{7}".to_owned();
    let days = expanded(&calendar_of(&odd, TODAY), LAST);
    assert_eq!(days.keys().next().unwrap().as_str(), odd.jobs[0].name.trim_end_matches('\u{7}'));
    let empty = calendar_of(&Home::default(), TODAY);
    assert_eq!(empty.matches("BEGIN:").count(), 1);
    assert!(expanded(&empty, LAST).is_empty());
    ICalendar::parse(&empty).unwrap();
}

/// A day far ahead does no harm: the calendar ends with the year 9999.
#[test]
fn the_end_of_the_calendar_is_no_surprise() {
    let home =
        home(r#"jobs: [(id: "j", name: "Job", every_months: 12000, last_done: "9500-01-01")]"#);
    assert_eq!(calendar_of(&home, "9999-12-31").matches("BEGIN:VEVENT").count(), 0);
    let never: Option<Date> =
        due(&home, day("9999-12-31"), &Catalogue::english()).all().next().and_then(|job| job.due);
    assert_eq!(never, None);
}
