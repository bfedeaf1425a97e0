//! Leaks.

use std::collections::BTreeSet;
use std::path::Path;

use quarterturn_guidance::{Catalogue, Question, Spot, Trouble};
use quarterturn_home::Medium;

use super::{Story, sets, words};

/// The sink is fed by two hoses, each behind its own stop, and passes nothing on. The hot stop also
/// feeds the dishwasher.
#[test]
fn kitchen_sink_needs_both_stops() {
    let told = Story::of("two-storey", "leak", "kitchen-sink", "");
    assert_eq!(told.best()["by"], "anyone");
    assert_eq!(words(&told.way().join(" ")), words("kitchen-cold-stop kitchen-hot-stop"));
    let mut off = told.goes_off_with("kitchen-cold-stop kitchen-hot-stop");
    off.sort();
    assert_eq!(off, ["dishwasher", "kitchen-sink"]);
    assert!(!told.has_set("kitchen-cold-stop") && !told.has_set("kitchen-hot-stop"));
    assert!(told.0["steps"][1]["prove"].is_string(), "closed is not proven");
}

/// With the hot stop stuck, the hot branch of the ground floor does it: nothing else feeds that branch.
#[test]
fn kitchen_sink_with_a_stuck_stop() {
    let told = Story::of("two-storey", "leak", "kitchen-sink", "--failed kitchen-hot-stop");
    assert!(!told.ever_closes("kitchen-hot-stop"));
    assert!(told.has_set("hot-ground-valve kitchen-cold-stop"), "{:?}", told.sets());
    assert_eq!(told.best()["by"], "anyone");
}

/// One line leads from the street to the main. A leak at the main itself is not stopped by closing
/// it; both shutoffs at the backflow preventer stand before it, and cut the sprinklers too.
#[test]
fn the_main_itself_leaks() {
    let told = Story::of("two-storey", "leak", "house-main", "");
    assert_eq!(
        told.sets(),
        sets("anyone: backflow-inlet\nanyone: backflow-outlet\nutility: curb-stop")
    );
    assert_eq!(told.goes_off_with("backflow-inlet")[0], "sprinkler-riser");
    assert!(told.cautions().contains(&"caution-sprinklers-off".to_owned()));
}

/// The main that does not turn: a broken cold trunk then hangs on the same shutoffs outdoors. The
/// trunk is before the softener's valves, so those do not help.
#[test]
fn the_main_does_not_turn() {
    let easy = Story::of("two-storey", "leak", "cold-trunk", "");
    assert_eq!(easy.way()[0], "house-main");
    let told = Story::of("two-storey", "leak", "cold-trunk", "--failed house-main");
    assert_eq!(
        told.sets(),
        sets("anyone: backflow-inlet\nanyone: backflow-outlet\nutility: curb-stop")
    );
}

/// Nothing comes back from the house through the backflow preventer, and there is no other source: of
/// the two shutoffs only the one before it stops a leak of its body.
#[test]
fn the_backflow_preventer_leaks() {
    let told = Story::of("two-storey", "leak", "backflow", "");
    assert_eq!(told.sets(), sets("anyone: backflow-inlet\nutility: curb-stop"));
    assert_eq!(told.way()[0], "backflow-inlet");
    let stuck = Story::of("two-storey", "leak", "backflow", "--failed backflow-inlet");
    assert_eq!(stuck.sets(), sets("utility: curb-stop"));
    assert!(stuck.way().is_empty(), "nothing for the owner to work: {:?}", stuck.way());
    assert_eq!(
        stuck.phones()[..3],
        ["555-0100", "555-0104", "555-0105"],
        "the utility shuts it, the builder answers for it, the plumber mends it"
    );
}

/// Irrigation leaves before the house main, which therefore does not stop it.
#[test]
fn irrigation_is_not_stopped_by_the_house_main() {
    let told = Story::of("two-storey", "leak", "irrigation", "");
    assert_eq!(told.way()[0], "irrigation-valve");
    assert!(!told.ever_closes("house-main"));
}

/// The control valve of the sprinklers is before the riser, and is not shut to save water.
#[test]
fn the_sprinkler_riser_leaks() {
    let told = Story::of("two-storey", "leak", "sprinkler-riser", "");
    assert!(!told.ever_closes("sprinkler-valve"));
    assert_eq!(
        told.sets(),
        sets("anyone: backflow-inlet\nanyone: backflow-outlet\nutility: curb-stop")
    );
    assert!(told.cautions().contains(&"caution-sprinklers-off".to_owned()));
}

/// The shower of the main bath joins hot and cold. So the cold riser is fed by the hot one too: its
/// own branch valve alone does not stop a leak in it, only with the hot riser's.
#[test]
fn the_cold_riser_is_fed_through_the_hand_shower() {
    let told = Story::of("two-storey", "leak", "cold-upper", "");
    assert!(!told.has_set("cold-upper-valve"), "{:?}", told.sets());
    assert!(told.has_set("cold-upper-valve hot-upper-valve"), "{:?}", told.sets());
    assert!(told.has_set("house-main"));
    // A basin passes nothing on, so its cold hose hangs on one stop.
    let hose = Story::of("two-storey", "leak", "main-bath-cold-hose", "");
    assert_eq!(hose.way(), ["main-bath-cold-stop"]);
}

/// Three ways lead to the heater: its inlet; from the cold riser through the hand shower and the hot
/// riser back into the outlet; and from there by the return line. The bypass of the softener is shut.
#[test]
fn the_water_heater_leaks() {
    let told = Story::of("two-storey", "leak", "water-heater", "");
    assert_eq!(
        told.sets(),
        sets(
            "anyone: house-main
             anyone: softener-inlet
             anyone: softener-outlet
             anyone: backflow-inlet
             anyone: backflow-outlet
             anyone: cold-upper-valve heater-inlet
             anyone: heater-inlet heater-outlet return-valve
             anyone: heater-inlet hot-upper-valve return-valve
             utility: curb-stop"
        )
    );
    assert!(told.cautions().contains(&"caution-heater-dry".to_owned()));
    assert!(told.cautions().contains(&"caution-hot-water".to_owned()));
    assert!(told.steps().contains("PILOT"), "a gas heater is turned down: {}", told.steps());
    assert!(told.0["restore"].as_array().unwrap().len() >= 3);
}

/// With its bypass shut a softener hangs on its inlet alone; with the bypass open water comes back
/// through the outlet.
#[test]
fn the_softener_and_its_bypass() {
    let shut = Story::of("two-storey", "leak", "softener", "");
    assert_eq!(shut.best()["close"][0], "softener-inlet");
    assert!(!shut.ever_closes("softener-bypass"), "it is shut already");
    let open = Story::of("two-storey", "leak", "softener", "--seen softener-bypass=on");
    assert!(!open.has_set("softener-inlet"));
    assert!(open.has_set("softener-inlet softener-outlet"), "{:?}", open.sets());
}

/// Only the curb stop is left: the gate at the entry is seized, the main one leaks by, and the shower
/// has no stops. It is the utility's alone.
#[test]
fn the_old_house_has_only_the_utility() {
    let told = Story::of("old-house", "leak", "shower", "");
    assert_eq!(told.sets(), sets("utility: curb-stop"));
    assert!(told.way().is_empty(), "nobody is sent to a valve: {:?}", told.way());
    assert_eq!(told.0["steps"][0]["component"], serde_json::Value::Null);
    assert!(told.steps().contains("Curb stop at the street"), "{}", told.steps());
    assert!(told.phones().contains(&"555-0120".to_owned()));
    assert_eq!(told.phones().last().unwrap(), "911");
}

/// The hot stop is painted over; the gate at the heater is the only other one on the hot side, which
/// nothing else feeds: basin and shower do not join.
#[test]
fn the_old_house_hot_hose() {
    let told = Story::of("old-house", "leak", "sink-hot-hose", "");
    assert_eq!(told.sets(), sets("anyone: heater-gate\nutility: curb-stop"));
    // The heater then gets no water: its breaker is 30 A, two poles, beside the fuse box.
    assert!(told.way().contains(&"heater-breaker".to_owned()), "{:?}", told.way());
}

/// The cold valve of the washing machine works, the hot one leaks by.
#[test]
fn the_old_house_washing_machine() {
    let told = Story::of("old-house", "leak", "washer", "");
    assert_eq!(told.sets(), sets("anyone: heater-gate washer-cold-valve\nutility: curb-stop"));
}

/// The well's line is capped: it feeds nothing, so the street alone counts.
#[test]
fn the_old_well_is_no_source_of_the_trunk() {
    let told = Story::of("old-house", "leak", "toilet", "");
    assert_eq!(told.way()[0], "toilet-stop");
    assert!(!told.ever_closes("well-valve"));
    let capped = Story::of("old-house", "leak", "well-stub", "");
    assert_eq!(capped.0["sets"].as_array().unwrap().len(), 0, "its valve is shut already");
}

/// The stopcock on the landing is before our meter, and before the flat next door as well.
#[test]
fn the_flats_stopcock_cuts_the_neighbours() {
    let told = Story::of("flat", "leak", "flat-meter", "");
    assert_eq!(
        told.sets(),
        sets("anyone: landing-stopcock\nanyone: building-stopcock\nutility: street-valve")
    );
    let off = told.goes_off_with("landing-stopcock");
    assert!(
        off.contains(&"next-door-sink".to_owned()) && off.contains(&"next-door-toilet".to_owned())
    );
    assert!(!off.contains(&"below-sink".to_owned()), "the flat below has its own stopcock");
    // Nobody is sent to a neighbour's tap to prove it.
    assert!(!told.proofs().contains("flat below") && !told.proofs().contains("next door"));
}

/// The hand shower joins hot and cold: the cold line to the bathroom is fed by the heater too. The
/// heater's water comes by the kitchen valve and then its inlet.
#[test]
fn the_flats_bathroom_line_is_fed_twice() {
    let told = Story::of("flat", "leak", "bath-cold", "");
    assert_eq!(
        told.sets(),
        sets(
            "anyone: bath-valve kitchen-valve
             anyone: bath-valve heater-inlet
             anyone: landing-stopcock
             anyone: building-stopcock
             utility: street-valve"
        )
    );
}

/// Everything wet in the kitchen and above it may be the cause, devices there as well. The lines to
/// both floors part at the manifolds in the basement.
#[test]
fn water_from_above_in_the_kitchen() {
    let told = Story::of("two-storey", "water-from-above", "kitchen", "");
    for near in [
        "kitchen-cold-stop",
        "kitchen-hot-stop",
        "ice-stop",
        "family-cold-stop",
        "main-bath-toilet-stop",
    ] {
        assert!(!told.ever_closes(near), "{near} may be what leaks");
    }
    assert_eq!(told.best()["by"], "anyone");
    assert!(told.has_set("house-main"), "{:?}", told.sets());
    assert!(!told.has_set("cold-ground-valve cold-upper-valve"), "hot water may be it as well");
    assert!(told.cautions().contains(&"caution-ceiling".to_owned()));
    assert!(told.cautions()[0].starts_with("caution-water-near-power"));
}

/// A toilet hangs on its stop, which is stiff and takes a minute, and on the cold branch of its floor, a
/// lever in the basement. Whichever is shut first, the stop is no help if it does not hold, and the
/// branch takes only the ice maker with it: all others keep their hot water.
#[test]
fn the_stiff_toilet_stop() {
    let told = Story::of("two-storey", "leak", "half-bath-toilet", "");
    assert_eq!(told.way()[0], "cold-ground-valve", "37 s against 61 s");
    assert_eq!(told.goes_off_with("cold-ground-valve"), ["ice-maker", "half-bath-toilet"]);
    assert!(told.has_set("half-bath-toilet-stop"));
    let next =
        Story::of("two-storey", "leak", "half-bath-toilet", "--failed half-bath-toilet-stop");
    assert_eq!(next.way(), ["cold-ground-valve"]);
    assert!(!next.ever_closes("half-bath-toilet-stop"));
    let works = Story::of("two-storey", "leak", "family-toilet", "");
    assert_eq!(works.way(), ["family-toilet-stop"]);
}

/// The hand shower joins its lines, so it is fed by both risers, each behind its valve at the manifold.
/// The return line runs from the hot riser to the heater through a pump and a check valve: nothing
/// comes back by it. With plain pipe in their stead it does, and its valve must be shut as well.
#[test]
fn the_shower_and_the_return_line() {
    let told = Story::of("two-storey", "leak", "main-bath-shower", "");
    assert_eq!(words(&told.way().join(" ")), words("cold-upper-valve hot-upper-valve"));
    let text = std::fs::read(
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../examples/two-storey/home.ron"),
    );
    let plain = String::from_utf8(text.unwrap())
        .unwrap()
        .replace(r#"id: "return-pump", kind: CirculationPump"#, r#"id: "return-pump", kind: Pipe"#)
        .replace(r#"id: "return-check", kind: CheckValve"#, r#"id: "return-check", kind: Pipe"#);
    let mut home = quarterturn_home::open("home.ron", &plain).home.unwrap();
    // A pipe has no wires; without them the file would be told off, not the answer changed.
    home.connections.retain(|link| link.to != "return-pump" || link.carries != Medium::Power);
    let question = Question {
        trouble: Trouble::Leak,
        at: Spot::Component("main-bath-shower".to_owned()),
        from: None,
        failed: Vec::new(),
        seen: Vec::new(),
    };
    let answer = quarterturn_guidance::answer(&home, &question, &Catalogue::english());
    let sets: Vec<BTreeSet<String>> =
        answer.sets.iter().map(|set| set.close.iter().cloned().collect()).collect();
    assert!(!sets.contains(&words("cold-upper-valve hot-upper-valve")), "{sets:?}");
    assert!(sets.contains(&words("cold-upper-valve hot-upper-valve return-valve")), "{sets:?}");
    assert!(sets.contains(&words("cold-upper-valve heater-inlet")), "{sets:?}");
}
