//! Whom to call first: spots on three dates, worked out by hand from the warranties and boundaries of
//! the example homes.
//!
//! The two-storey house was handed over on 14 November 2025. Its drains are covered for 60 days (to 13
//! January 2026), its workmanship for a year (to 14 November 2026), its pipes and wires for two (to
//! 14 November 2027), the heater's tank for six from 30 September 2025, cooling parts for ten.

use quarterturn_guidance::{
    Catalogue, Party, Question, Side, Spot, Trouble, answer_on, responsible,
};
use quarterturn_home::Net;

use super::{day, home};
use crate::homes::example;

/// In the first weeks, in the first year, and after the second.
const DAYS: [&str; 3] = ["2025-12-20", "2026-06-05", "2028-01-10"];

/// Home, spot, net, side, and for each day: who is called, by which warranty, until when.
type Row = (
    &'static str,
    &'static str,
    Net,
    Side,
    [(&'static str, Option<&'static str>, Option<&'static str>); 3],
);

const BUILDER: (&str, Option<&str>, Option<&str>) =
    ("builder", Some("workmanship"), Some("2026-11-14"));

const TABLE: &[Row] = &[
    // A hose indoors: the builder for two years, and then the owner's plumber.
    (
        "two-storey",
        "kitchen-cold-hose",
        Net::Water,
        Side::House,
        [BUILDER, BUILDER, ("plumber", None, Some("2027-11-14"))],
    ),
    // The tank: while workmanship covers all of it, before the maker's parts.
    (
        "two-storey",
        "water-heater",
        Net::Water,
        Side::House,
        [BUILDER, BUILDER, ("plumber", Some("heater-tank"), Some("2031-09-30"))],
    ),
    ("two-storey", "curb-stop", Net::Water, Side::Street, [("water-utility", None, None); 3]),
    ("two-storey", "water-meter", Net::Water, Side::Boundary, [("water-utility", None, None); 3]),
    (
        "two-storey",
        "building-sewer",
        Net::Waste,
        Side::House,
        [BUILDER, BUILDER, ("plumber", None, Some("2027-11-14"))],
    ),
    (
        "two-storey",
        "property-cleanout..street-sewer",
        Net::Waste,
        Side::Street,
        [("sewer-utility", None, None); 3],
    ),
    (
        "two-storey",
        "living-outlet",
        Net::Power,
        Side::House,
        [BUILDER, BUILDER, ("electrician", None, Some("2027-11-14"))],
    ),
    // Plugged in: no warranty on wires covers it.
    ("two-storey", "computer", Net::Power, Side::House, [("electrician", None, None); 3]),
    // Parts for ten years, but in the first one the builder's work.
    (
        "two-storey",
        "primary-pan",
        Net::Condensate,
        Side::House,
        [BUILDER, BUILDER, ("cooling", Some("cooling-parts"), Some("2035-11-14"))],
    ),
    // The two years leave the condensate line out.
    (
        "two-storey",
        "condensate-line",
        Net::Condensate,
        Side::House,
        [BUILDER, BUILDER, ("cooling", None, Some("2026-11-14"))],
    ),
    // Between the building's meter and the flat's: the building's, as the map says.
    ("flat", "riser", Net::Water, Side::Between, [("manager", None, None); 3]),
    ("flat", "landing-line..flat-meter", Net::Water, Side::Between, [("manager", None, None); 3]),
    ("flat", "flat-meter..flat-line", Net::Water, Side::House, [("plumber", None, None); 3]),
    (
        "flat",
        "heater",
        Net::Water,
        Side::House,
        [("plumber", Some("heater"), Some("2029-10-07")); 3],
    ),
    // A sewer with no boundary on the map.
    ("old-house", "yard-sewer", Net::Waste, Side::Unmarked, [("plumber", None, None); 3]),
    // A warranty that ran out years ago is told, and nothing more.
    ("old-house", "sink", Net::Water, Side::House, [("plumber", None, Some("2023-06-04")); 3]),
];

#[test]
fn each_spot_on_each_day_as_worked_out_by_hand() {
    let words = Catalogue::english();
    for (name, at, net, side, wanted) in TABLE {
        let home = example(name);
        let spot = Spot::find(&home, at).unwrap();
        for (today, (first, warranty, until)) in DAYS.into_iter().zip(wanted) {
            let told = responsible(&home, &spot, *net, Some(day(today)), &words).unwrap();
            assert_eq!(told.side, *side, "{at} on {today}");
            let contact = told.first.contact.as_deref();
            assert_eq!(contact, Some(*first), "{at} on {today}: {told:#?}");
            assert_eq!(told.warranty.as_deref(), *warranty, "{at} on {today}");
            assert_eq!(told.until, until.map(day), "{at} on {today}");
            assert!(told.first.why.starts_with(&told.why), "{}", told.first.why);
        }
    }
}

#[test]
fn the_last_day_still_counts_and_the_day_after_does_not() {
    let home = example("two-storey");
    let words = Catalogue::english();
    let spot = Spot::Component("condensate-line".to_owned());
    let first = |today: &str| {
        let told = responsible(&home, &spot, Net::Condensate, Some(day(today)), &words).unwrap();
        (told.first.contact.unwrap(), told.why)
    };
    assert_eq!(first("2026-11-14").0, "builder");
    let (contact, why) = first("2026-11-15");
    assert_eq!(contact, "cooling");
    assert!(why.contains("Workmanship, first year") && why.contains("14 November 2026"), "{why}");
    // Before it begins there is none.
    assert_eq!(first("2025-11-13").0, "cooling");
}

/// The reason stands in the answer, in the language asked for, and nothing is pushed before what
/// ends the danger.
#[test]
fn the_answer_tells_who_is_first_and_why() {
    let home = example("two-storey");
    for language in Catalogue::languages() {
        let words = Catalogue::in_language(language.tag);
        let calls = |trouble: Trouble, at: &str, today: &str| {
            let at = Spot::find(&home, at).unwrap();
            let question =
                Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() };
            answer_on(&home, &question, &words, Some(day(today))).call
        };
        let ids = |calls: &[quarterturn_guidance::Call]| -> Vec<Option<String>> {
            calls.iter().map(|call| call.contact.clone()).collect()
        };
        let leak = calls(Trouble::Leak, "kitchen-sink", "2026-06-05");
        assert_eq!(leak[0].contact.as_deref(), Some("builder"));
        assert!(leak[0].why.contains("2026"), "{}", leak[0].why);
        assert!(leak[0].why.contains("weekdays 8 to 17"), "the hours: {}", leak[0].why);
        let late = calls(Trouble::Leak, "kitchen-sink", "2028-01-10");
        assert_eq!(late[0].contact.as_deref(), Some("plumber"));
        // The insurer hears of damage, and the emergency number still ends it.
        assert!(ids(&late).contains(&Some("insurer".to_owned())));
        assert_eq!(ids(&late).last().unwrap().as_deref(), Some("emergency"));
        let wet = calls(Trouble::WaterNearPower, "laundry", "2026-06-05");
        assert_eq!(wet[0].contact.as_deref(), Some("electric-utility"));
        let gas = calls(Trouble::GasSmell, "kitchen", "2026-06-05");
        assert_eq!(gas[0].contact.as_deref(), Some("emergency"));
        assert!(!ids(&gas).contains(&Some("builder".to_owned())));
        // Nobody stands in the list twice.
        for calls in [leak, late, wet, gas] {
            let mut ids = ids(&calls);
            ids.sort();
            let all = ids.len();
            ids.dedup();
            assert_eq!(ids.len(), all);
        }
    }
}

#[test]
fn on_a_day_that_nobody_knows_no_warranty_is_claimed() {
    let home = example("two-storey");
    let words = Catalogue::english();
    let spot = Spot::Component("kitchen-cold-hose".to_owned());
    let told = responsible(&home, &spot, Net::Water, None, &words).unwrap();
    assert_eq!((told.party, told.warranty, told.until), (Party::Owner, None, None));
    assert_eq!(told.first.contact.as_deref(), Some("plumber"));
    assert!(told.why.contains("depends on the day"), "{}", told.why);
}

#[test]
fn what_the_map_does_not_hold_is_not_invented() {
    let words = Catalogue::english();
    let today = Some(day("2026-06-05"));
    let home = home(
        r#"components: [(id: "tap", kind: Tap, name: "Tap"), (id: "main", kind: WaterMain, name: "Main"),
            (id: "meter", kind: WaterMeter, name: "Meter", boundary: true), (id: "lamp", kind: Light, name: "Lamp")],
        connections: [(from: "main", to: "meter", carries: ColdWater), (from: "meter", to: "tap", carries: ColdWater)],
        warranties: [(id: "w", name: "Forever", covers: ["tap"], from: "2020-02-29")]"#,
    );
    let at =
        |id: &str, net| responsible(&home, &Spot::Component(id.to_owned()), net, today, &words);
    // A warranty without an end, given by nobody known.
    let tap = at("tap", Net::Water).unwrap();
    assert_eq!((tap.warranty.as_deref(), tap.until), (Some("w"), None));
    assert_eq!((tap.first.contact, tap.first.phone), (None, None));
    // A utility without a contact.
    let main = at("main", Net::Water).unwrap();
    assert_eq!(main.party, Party::Utility(quarterturn_home::Role::WaterUtility));
    assert_eq!(main.first.phone, None);
    // Nothing of that net there.
    assert_eq!(at("lamp", Net::Power), None);
    assert_eq!(at("tap", Net::Waste), None);
    assert_eq!(responsible(&home, &Spot::Home, Net::Water, today, &words), None);
}
