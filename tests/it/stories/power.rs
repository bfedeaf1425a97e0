//! Dead outlets, breakers that trip, sparks.

use super::{Story, sets, words};

/// The outlet upstairs hangs on the outlet of the family bath, that on the half bath's, and that on
/// the GFCI in the garage, two floors down.
#[test]
fn the_gfci_is_on_another_floor() {
    let told = Story::of("two-storey", "dead-outlet", "main-bath-outlet", "");
    assert_eq!(told.suspects()[0], "garage-gfci");
    assert!(told.steps().contains("GFCI outlet by the garage steps"));
    assert!(told.steps().contains("Green = has power and protects"), "what its lamp means");
    // Unplugging comes before its button.
    let unplug = told.steps().find("Unplug").unwrap();
    assert!(unplug < told.steps().find("RESET").unwrap());
}

/// The half bath is live and on the same GFCI, so all as far as there is sound.
#[test]
fn a_live_outlet_clears_what_it_hangs_on() {
    let told =
        Story::of("two-storey", "dead-outlet", "main-bath-outlet", "--seen half-bath-outlet=live");
    assert_eq!(words(&told.suspects().join(" ")), words("family-bath-outlet main-bath-outlet"));
    assert!(
        (told.share("family-bath-outlet") + told.share("main-bath-outlet") - 1.0).abs() < 0.002
    );
}

/// The amber lamp of this maker means tripped; the one on the other side of the sink has it green.
#[test]
fn the_dining_outlet_and_its_lamp() {
    let told = Story::of("two-storey", "dead-outlet", "dining-outlet", "");
    assert_eq!(told.suspects()[0], "kitchen-gfci-right");
    assert!(told.steps().contains("Amber = tripped"));
}

/// Two feeds: one through the hall outlet and the window outlet, one through the switch. The hall
/// outlet is live, so either the outlet itself, or both feeds.
#[test]
fn the_half_switched_outlet() {
    let told =
        Story::of("two-storey", "dead-outlet", "living-half-outlet", "--seen hall-outlet=live");
    assert_eq!(told.suspects()[0], "living-half-outlet");
    let may = words("living-half-outlet living-outlet living-switch");
    assert!(told.suspects().iter().all(|id| may.contains(id)), "{:?}", told.suspects());
    // All of it hangs on one breaker.
    let sparks = Story::of("two-storey", "sparks", "living-half-outlet", "");
    assert_eq!(sparks.best()["close"][0], "br-living");
    assert!(!sparks.ever_closes("living-switch"), "a wall switch is no isolator");
}

/// Upper half the disposer's breaker, lower half the dishwasher's: both are to be off.
#[test]
fn the_split_outlet_under_the_sink() {
    let told = Story::of("two-storey", "sparks", "sink-base-outlet", "");
    assert_eq!(words(&told.way().join(" ")), words("br-dishwasher br-disposer"));
    assert!(!told.has_set("br-dishwasher") && !told.has_set("br-disposer"));
    assert!(!told.ever_closes("disposer-switch"));
}

/// The interlock keeps the generator's breaker off on an ordinary day. With it on there are two sources,
/// and two things to open.
#[test]
fn the_generator_is_a_second_source() {
    let ordinary = Story::of("two-storey", "sparks", "main-panel", "");
    assert_eq!(ordinary.sets(), sets("anyone: panel-main\nanyone: service-disconnect"));
    let running = Story::of("two-storey", "sparks", "main-panel", "--seen generator-breaker=on");
    assert_eq!(
        running.sets(),
        sets("anyone: generator-breaker panel-main\nanyone: generator-breaker service-disconnect")
    );
}

/// With the generator's breaker off, a house that is dark may have lost the street: the generator is
/// no feed that would have to fail as well.
#[test]
fn a_dark_house_is_an_outage_first() {
    let told = Story::of(
        "two-storey",
        "dead-outlet",
        "dining-outlet",
        "--seen living-outlet=dead --seen hall-light=dead --seen study-outlet=dead",
    );
    assert_eq!(told.suspects()[0], "service", "{:?}", told.0["suspects"]);
    assert!(!told.suspects().iter().any(|id| id.starts_with("generator")));
}

/// The breathing aid hangs on the same circuit and is named first.
#[test]
fn the_breathing_aid_is_named_first() {
    let told = Story::of("two-storey", "sparks", "main-bedroom-outlet", "");
    assert_eq!(told.way(), ["br-main-bedroom"]);
    assert_eq!(told.goes_off_with("br-main-bedroom")[0], "breathing-aid");
    assert!(told.caution("caution-critical-off").contains("Breathing aid"));
}

/// Heater 1,500 W and computer 600 W on 15 A at 120 V, which carries 1,800 W.
#[test]
fn too_much_on_one_breaker() {
    let told = Story::of("two-storey", "breaker-trips", "br-east-rooms", "");
    assert!(told.steps().contains("2100") || told.steps().contains("2,100"), "{}", told.steps());
    assert!(told.steps().contains("1800") || told.steps().contains("1,800"), "{}", told.steps());
    assert_eq!(told.way(), ["br-east-rooms"], "one reset");
    assert!(told.phones().contains(&"555-0106".to_owned()), "the electrician");
}

/// The panel's room stands in water, and so do all its breakers. What is left is outdoors.
#[test]
fn the_panel_stands_in_water() {
    let told = Story::of("two-storey", "sparks", "dining-outlet", "--seen garage=wet");
    assert_eq!(told.sets(), sets("anyone: service-disconnect"));
    assert!(told.cautions().contains(&"caution-power-in-water".to_owned()));
    assert!(told.phones().contains(&"555-0102".to_owned()), "the electric utility cuts it outside");
    let dead = Story::of("two-storey", "dead-outlet", "main-bath-outlet", "--seen garage=wet");
    assert!(
        !dead.way().iter().any(|id| id == "garage-gfci" || id == "br-baths-outdoor"),
        "{:?}",
        dead.way()
    );
}

/// No fuse is known for the sewing room, so only the main makes it dead for certain.
#[test]
fn the_unknown_fuse() {
    let dead = Story::of("old-house", "dead-outlet", "sewing-outlet", "");
    assert_eq!(dead.0["mapped"], false);
    assert!(dead.suspects().is_empty());
    assert!(dead.cautions().contains(&"caution-not-from-map".to_owned()));
    let sparks = Story::of("old-house", "sparks", "sewing-outlet", "");
    assert_eq!(sparks.way(), ["main-pull-out"]);
    assert_eq!(sparks.0["mapped"], false);
}

/// Worktop and washing machine hang on two breakers behind one residual-current device.
#[test]
fn the_flats_residual_current_device() {
    let told = Story::of("flat", "dead-outlet", "kitchen-outlet", "--seen washer-outlet=dead");
    assert_eq!(told.suspects()[0], "rcd-2");
    assert!(!told.suspects().contains(&"rcd-1".to_owned()), "it feeds neither");
}
