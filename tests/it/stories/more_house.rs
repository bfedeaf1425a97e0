//! Water at the air handler, wires down, and what does not answer.

use quarterturn_guidance::{Catalogue, Question, Trouble, answer, spots};

use super::Story;

/// Each answer goes all the way: what could hurt, what to do, whom to call, how to bring it back. Two
/// cautions at least: that local codes come first is none of the trouble's own.
#[test]
fn every_answer_goes_all_the_way() {
    let words = Catalogue::english();
    for name in ["two-storey", "old-house", "flat"] {
        let home = crate::homes::example(name);
        for &trouble in Trouble::ALL {
            for at in spots(&home, trouble) {
                let question =
                    Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() };
                let told = answer(&home, &question, &words);
                let whole = told.cautions.len() > 1
                    && !told.steps.is_empty()
                    && told.call.len() > 1
                    && !told.restore.is_empty();
                assert!(whole, "{name}: {question:?}\n{told:#?}");
            }
        }
    }
}

/// Pans before float switches before the line; the garage lies below. The trap is to blame more than any
/// other piece.
#[test]
fn water_drips_from_the_air_handler() {
    let told = Story::of("two-storey", "water-at-air-handler", "air-handler", "");
    assert!(told.steps().starts_with("Turn the cooling off at the thermostat."));
    let way = told.way();
    let at = |id: &str| way.iter().position(|place| place == id).unwrap();
    assert!(at("primary-pan") < at("float-primary"));
    assert!(at("secondary-pan") < at("float-primary"));
    assert!(at("float-secondary") < at("condensate-outlet"));
    assert!(told.caution("caution-ceiling-below").contains("Garage"));
    assert_eq!(told.suspects()[0], "condensate-trap");
    assert_eq!(told.0["next_check"]["component"], "primary-pan");
    assert_eq!(told.phones()[0], "555-0107");
    // The sub-panel is in the same room: nobody is sent to its breakers.
    assert!(!told.way().iter().any(|id| id.starts_with("br-")), "{way:?}");
}

/// The secondary pan holds water: urgent, with the ceiling below named.
#[test]
fn the_secondary_pan_of_the_air_handler_is_wet() {
    let told =
        Story::of("two-storey", "water-at-air-handler", "air-handler", "--seen secondary-pan=wet");
    assert!(told.caution("caution-secondary-pan").contains("Garage"));
    assert!(told.0["next_check"].is_null(), "enough is known");
}

/// Away, then call: the emergency number, then the electricity utility. Nothing is touched.
#[test]
fn a_wire_lies_in_the_street() {
    for (home, emergency, utility) in [
        ("two-storey", "911", "555-0102"),
        ("old-house", "911", "555-0122"),
        ("flat", "112", "555-0115"),
    ] {
        let told = Story::of(home, "wires-down", "", "");
        assert!(told.steps().starts_with("Get away from the wire"));
        assert!(told.steps().contains("10 m (35 ft)"));
        assert!(told.way().is_empty() && told.0["sets"].as_array().unwrap().is_empty());
        assert_eq!(told.phones()[..2], [emergency.to_owned(), utility.to_owned()]);
    }
}

/// The map knows the red cord. The builder's side gave a warranty on everything electrical, but covers no
/// device by name, so the builder is asked about the account.
#[test]
fn the_garage_door_does_not_answer() {
    let told = Story::of("two-storey", "not-answering", "garage-door", "");
    assert!(told.steps().contains("pull the red cord"), "what the map says: {}", told.steps());
    assert!(told.caution("caution-heavy-door").contains("can fall"));
    assert_eq!(told.suspects()[0], "br-garage");
    let by_hand = told.steps().find("red cord").unwrap();
    assert!(by_hand < told.steps().find("push it fully to OFF").unwrap());
}

/// The thermostat of the flat runs on two batteries and on no wire.
#[test]
fn the_thermostat_of_the_flat_is_blank() {
    let told = Story::of("flat", "not-answering", "thermostat", "");
    assert!(
        told.steps()
            .starts_with("What the map says of Room thermostat (C1): Runs on two batteries")
    );
    assert!(told.steps().contains("Put new batteries in"));
    assert!(told.suspects().is_empty(), "no wire leads to it");
    assert!(told.cautions().contains(&"caution-no-heat".to_owned()));
}

/// An alarm that does not answer: nobody sleeps there without one that works.
#[test]
fn the_smoke_alarm_does_not_answer() {
    let told = Story::of("two-storey", "not-answering", "smoke-landing", "--seen hall-light=live");
    assert!(told.caution("caution-alarm-silent").contains("Nobody sleeps"));
    // The hall light is on the same circuit and before it: what feeds it is sound.
    assert!(told.share("br-smoke") <= 0.0, "{:?}", told.0["suspects"]);
    assert!(told.suspects().contains(&"smoke-ground".to_owned()));
}
