//! Drains that back up.

use super::{Story, words};

/// Everything between the floor drain and the street may be blocked. It comes out at the floor drain
/// (0.0 m), or in the basement (-2.7 m) below the flap's own water. The cap in the front bed lies at
/// -0.38 m, outdoors and above the sewer under the yard: opened, it spills before the laundry does.
#[test]
fn sewage_rises_in_the_laundry() {
    let told = Story::of("two-storey", "sewage-rising", "laundry-drain", "");
    assert_eq!(
        told.blocked(),
        words(
            "laundry-drain>laundry-drain-trap laundry-drain-trap>laundry-branch laundry-branch>center-stack
             center-stack>center-cleanout center-cleanout>building-drain building-drain>house-cleanout
             house-cleanout>building-sewer building-sewer>property-cleanout property-cleanout>street-sewer"
        )
    );
    assert_eq!(told.emerges_at(), words("laundry-drain basement-drain"));
    assert_eq!(told.0["relief"]["open"], "house-cleanout");
    assert!(told.way().contains(&"house-cleanout".to_owned()));
    assert_eq!(told.cautions()[0], "caution-sewage");
    assert!(told.cautions().contains(&"caution-cap-pressure".to_owned()));
    assert!(told.steps().starts_with("Stop all water in the house"), "{}", told.steps());
}

/// The cap in the front bed does not come off: the next one outdoors is at the property line.
#[test]
fn the_house_cleanout_is_stuck() {
    let told = Story::of("two-storey", "sewage-rising", "laundry-drain", "--failed house-cleanout");
    assert_eq!(told.0["relief"]["open"], "property-cleanout");
    assert_ne!(told.0["relief"]["rod_from"], "house-cleanout");
}

/// The toilet upstairs in the west drains, so all below the building drain is clear. What is left lies
/// above the cap in the front bed: it would stay dry. The center cleanout is indoors.
#[test]
fn the_west_side_drains() {
    let told =
        Story::of("two-storey", "sewage-rising", "laundry-drain", "--seen main-bath-toilet=drains");
    assert_eq!(
        told.blocked(),
        words(
            "laundry-drain>laundry-drain-trap laundry-drain-trap>laundry-branch laundry-branch>center-stack
             center-stack>center-cleanout center-cleanout>building-drain"
        )
    );
    assert!(told.0["relief"]["open"].is_null());
    assert_eq!(told.0["relief"]["rod_from"], "center-cleanout");
    assert_eq!(told.emerges_at(), words("laundry-drain"));
}

/// Two back up and one drains: it is where the two have met and the third has not.
#[test]
fn two_back_up_and_one_drains() {
    let told = Story::of(
        "two-storey",
        "drain-backs-up",
        "half-bath-toilet",
        "--seen laundry-drain=backs-up --seen main-bath-toilet=drains",
    );
    assert_eq!(
        told.blocked(),
        words("center-stack>center-cleanout center-cleanout>building-drain")
    );
}

/// Only the kitchen sink is slow: it is before its branch meets the west stack. Its own cleanout lies
/// below the trap, under the sink.
#[test]
fn only_the_kitchen_sink_is_slow() {
    let told =
        Story::of("two-storey", "drain-backs-up", "kitchen-sink", "--seen main-bath-toilet=drains");
    assert_eq!(
        told.blocked(),
        words(
            "kitchen-sink>disposer disposer>kitchen-trap kitchen-trap>kitchen-cleanout
             kitchen-cleanout>kitchen-branch kitchen-branch>west-stack"
        )
    );
    assert_eq!(told.emerges_at(), words("kitchen-sink"), "0.88 m, below the dishwasher's 0.9 m");
    assert_eq!(told.0["relief"]["rod_from"], "kitchen-cleanout");
    assert_eq!(
        told.phones()[..2],
        ["555-0104", "555-0105"],
        "the house's own pipe: the builder for two years, then the plumber"
    );
}

/// The stub stands at 0.35 m, the shower at 0.03 m: opening it relieves nothing.
#[test]
fn the_old_house_cap_is_too_high() {
    let told = Story::of("old-house", "sewage-rising", "shower", "");
    assert_eq!(
        told.blocked(),
        words(
            "shower>shower-trap shower-trap>bath-drain bath-drain>building-drain building-drain>cleanout
             cleanout>yard-sewer yard-sewer>street-sewer"
        )
    );
    assert!(told.0["relief"]["open"].is_null());
    assert_eq!(told.emerges_at(), words("shower"));
    assert_eq!(told.0["relief"]["rod_from"], "cleanout");
    assert!(!told.way().contains(&"cleanout".to_owned()), "nobody opens it");
}
