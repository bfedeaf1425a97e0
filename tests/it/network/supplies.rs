//! More than one supply, or none that can be shut.

use super::drawing::{power, water};

#[test]
fn street_and_well_need_both_valves() {
    let home = water(
        "street@ - meter - main* - trunk; well@ > ptank - wv* - trunk
         trunk - kit! - stop* - sink:Sink",
    );
    assert_eq!(home.sets(), "main wv");
    assert!(home.is_fed(&["main"]) && home.is_fed(&["wv"]) && home.is_fed(&["stop"]));
}

#[test]
fn a_tie_to_the_neighbour_is_a_second_supply() {
    let home = water(
        "street1@ - mainA* - A - bath!; street2@ - mainB* - B; A - tie* - B; B - flat:Sink+50",
    );
    assert_eq!(home.sets(), "mainA tie\nmainA mainB");
}

#[test]
fn a_seized_main_leaves_the_curb_stop() {
    let home = water("street@ > curb* - meter - main*^ - trunk!");
    assert_eq!(home.sets(), "curb");
}

#[test]
fn nothing_isolates_what_lies_before_the_main() {
    let home = water("street@ > meter! - main* - trunk");
    assert_eq!(home.sets(), "");
    assert!(home.is_fed(&["main"]));
}

#[test]
fn nothing_isolates_behind_a_single_seized_valve() {
    let home = water("street@ - main*^ - trunk - kit!");
    assert_eq!(home.sets(), "");
    assert!(home.is_fed(&[]));
}

/// No set and not fed: another answer than no set and fed.
#[test]
fn what_a_shut_valve_keeps_dry_needs_no_set() {
    let home = water("street@ - main* - trunk - hv*/ - hose!:HoseBibb");
    assert_eq!(home.sets(), "");
    assert!(!home.is_fed(&[]));
}

#[test]
fn a_valve_that_was_shut_before_is_part_of_no_set() {
    let home =
        water("street1@ - mainA* - hall - bath!; street2@ - mainB*/ - far; hall - tie* - far");
    assert_eq!(home.sets(), "mainA");
}

#[test]
fn a_battery_behind_the_panel_feeds_back() {
    let home = power("utility@ - mainbk* - bus+9 - tie* - cbus!; battery@:Battery - bbk* - cbus");
    assert_eq!(home.sets(), "tie bbk\nmainbk bbk");
    assert!(home.is_fed(&["tie"]) && home.is_fed(&["mainbk"]));
}

#[test]
fn a_generator_on_the_bus_makes_the_main_breaker_useless_alone() {
    let home = power("utility@ - mainbk* - bus+40 - bk* - oven!; gen@:Generator - genbk* - bus");
    assert_eq!(home.sets(), "bk\nmainbk genbk");
}

/// An interlock keeps the generator's breaker open while the main one is closed.
#[test]
fn an_interlocked_generator_adds_nothing() {
    let home = power("utility@ - mainbk* - bus+5 - oven!; gen@:Generator - genbk*/ - bus");
    assert_eq!(home.sets(), "mainbk");
}
