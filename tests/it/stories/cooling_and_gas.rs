//! Cooling that stopped, and what one leaves the house for.

use super::Story;

/// Water in the pan under the air handler: the first drain has failed. Below the unit lies the garage.
#[test]
fn the_secondary_pan_is_wet() {
    let told =
        Story::of("two-storey", "cooling-stopped", "air-handler", "--seen secondary-pan=wet");
    assert!(
        told.caution("caution-secondary-pan").contains("Garage"),
        "{}",
        told.caution("caution-secondary-pan")
    );
    assert!(!told.caution("caution-secondary-pan").contains("Kitchen"));
    assert!(
        told.suspects()[..2].iter().all(|id| id.starts_with("float-")),
        "{:?}",
        told.suspects()
    );
    assert!(told.steps().starts_with("Turn the cooling off"));
    assert!(
        told.way().contains(&"condensate-outlet".to_owned()),
        "the line is cleared from outdoors"
    );
    assert!(told.phones().contains(&"555-0107".to_owned()));
}

/// Both pans dry: then it is not the floats, and the power of the unit is looked at.
#[test]
fn both_pans_are_dry() {
    let told = Story::of(
        "two-storey",
        "cooling-stopped",
        "air-handler",
        "--seen primary-pan=dry --seen secondary-pan=dry",
    );
    assert!(!told.suspects()[0].starts_with("float-"), "{:?}", told.suspects());
    let total: f64 = told.suspects().iter().map(|id| told.share(id)).sum();
    assert!((total - 1.0).abs() < 0.02, "{total}");
}

/// Out, then call: the emergency number before the gas utility's, and no valve.
#[test]
fn it_smells_of_gas() {
    for home in ["two-storey", "old-house", "flat"] {
        let told = Story::of(home, "gas-smell", "", "");
        assert!(told.steps().starts_with("Get everyone out"));
        assert!(told.way().is_empty());
        assert!(!told.steps().contains("valve"));
        assert!(["911", "112"].contains(&told.phones()[0].as_str()));
        assert!(["555-0103", "555-0123", "555-0116"].contains(&told.phones()[1].as_str()));
    }
}

/// Smoke, or the carbon monoxide alarm: the same, whatever else was seen.
#[test]
fn fire_and_carbon_monoxide() {
    for trouble in ["fire", "co-alarm"] {
        let told = Story::of("flat", trouble, "kitchen", "--seen kitchen-outlet=dead");
        assert!(told.steps().starts_with("Get everyone out"));
        assert!(told.suspects().is_empty() && told.way().is_empty());
        assert_eq!(told.phones()[0], "112");
    }
}
