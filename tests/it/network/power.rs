//! Breakers and what is wired behind them.

use super::drawing::power;

#[test]
fn a_box_on_two_circuits_needs_both_breakers() {
    let home = power(
        "utility@ > mainbk* - bus+9; bus > bk1* > box:JunctionBox!
         bus > bk2* > sw:Switch > box",
    );
    assert_eq!(home.sets(), "bk1 bk2\nmainbk");
    assert!(home.is_fed(&["bk1"]));
}

#[test]
fn a_wall_switch_isolates_nothing() {
    let home = power("utility@ - bus - bk* - sw:Switch - lamp:Light!");
    assert_eq!(home.sets(), "bk");
}

#[test]
fn a_gfci_button_isolates_nothing() {
    let home = power("utility@ - bus - bk* - gfci:Gfci - outlet:Receptacle!");
    assert_eq!(home.sets(), "bk");
}

/// One half is always on, the other by way of the switch.
#[test]
fn a_half_switched_outlet_is_dead_with_its_breaker_only() {
    let home = power(
        "utility@ - bus - bk* - box:JunctionBox; box - outlet:Receptacle!
         box - sw:Switch - outlet",
    );
    assert_eq!(home.sets(), "bk");
}

/// As before, with the switched half fed from a neighbouring circuit.
#[test]
fn an_outlet_on_two_circuits_needs_both_breakers() {
    let home =
        power("utility@ - bus - bk* - outlet:Receptacle!; bus - other* - sw:Switch - outlet");
    assert_eq!(home.sets(), "bk other");
    assert!(home.is_fed(&["bk"]) && home.is_fed(&["other"]));
}

/// Beyond the breaker, current runs on from box to box and never back.
#[test]
fn an_outlet_further_down_the_line_feeds_nothing_back() {
    let home =
        power("utility@ - bus+9 - bk1* - near:Receptacle! - far:Receptacle; bus - bk2* - far");
    assert_eq!(home.sets(), "bk1");
}

#[test]
fn a_breaker_in_trouble_itself_is_opened_above() {
    let home = power("utility@ - disconnect* - bus - bk*! - oven:Appliance");
    assert_eq!(home.sets(), "disconnect");
}
