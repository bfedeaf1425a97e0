//! What is dark, what trips, and what may be live.

use super::{Story, words};

/// The lamp first, then what feeds it. The dining light hangs on the same breaker and is on, so only the
/// switch and the light itself are left.
#[test]
fn the_kitchen_light_stays_dark() {
    let told = Story::of("two-storey", "dead-light", "kitchen-light", "");
    assert_eq!(told.suspects()[..2], ["kitchen-light", "br-ground-lights"]);
    assert!(told.steps().starts_with("Change the lamp of: Kitchen ceiling light"));
    let lit = Story::of("two-storey", "dead-light", "kitchen-light", "--seen dining-light=live");
    assert_eq!(words(&lit.suspects().join(" ")), words("kitchen-light kitchen-light-switch"));
    assert!(!lit.steps().contains("push it fully to OFF"), "no breaker is to blame");
}

/// A porch light of which only the panel is known.
#[test]
fn the_porch_light_is_on_no_known_circuit() {
    let told = Story::of("old-house", "dead-light", "porch-light", "");
    assert_eq!(told.0["mapped"], false);
    assert!(told.cautions().contains(&"caution-not-from-map".to_owned()));
    assert!(told.steps().starts_with("Switch it off, and let the lamp cool."));
}

/// All outlets of the study hang on circuit 5 of the sub-panel: one fault explains them all. Someone looks
/// for a lost neutral before that.
#[test]
fn the_study_is_dark() {
    let told = Story::of("two-storey", "dead-area", "study", "");
    assert_eq!(told.suspects()[0], "br-east-rooms");
    let (neutral, neighbors) = (
        told.steps().find("some lights are too bright").unwrap(),
        told.steps().find("are the neighbors dark").unwrap(),
    );
    assert!(neutral < neighbors && neighbors < told.steps().find("Breaker, east bedroom").unwrap());
    assert!(told.cautions().contains(&"caution-lost-neutral".to_owned()));
}

/// Everything upstairs is dark while the kitchen has power: the sub-panel's breaker in the garage, the
/// sub-panel, or the wire between. The breathing aid hangs on it and is named before anything is done.
#[test]
fn the_upper_floor_is_dark() {
    let told = Story::of("two-storey", "dead-area", "sub-panel", "--seen dining-outlet=live");
    assert_eq!(words(&told.suspects()[..2].join(" ")), words("br-subpanel sub-panel"));
    assert!(told.share("br-subpanel") + told.share("sub-panel") > 0.9, "{:?}", told.0["suspects"]);
    assert!(told.share("service") <= 0.0);
    assert!(told.caution("caution-critical-lost").contains("Breathing aid"));
    assert!(told.way().contains(&"br-subpanel".to_owned()));
}

/// Seven things on three floors and outdoors are on its load side; each is told with its room. The outlets
/// outdoors are looked at first: they get wet.
#[test]
fn the_garage_gfci_trips() {
    let told = Story::of("two-storey", "gfci-trips", "main-bath-outlet", "");
    assert_eq!(told.way()[0], "garage-gfci", "the outlet upstairs hangs on it");
    for load in ["Main bath: Outlet in the main bath", "Back yard: Outlet at the patio, outside"] {
        assert!(told.steps().contains(load), "{}", told.steps());
    }
    let outside = words("front-outlet back-outlet freezer");
    assert_eq!(words(&told.suspects()[..3].join(" ")), outside);
    assert!(
        ["front-outlet", "back-outlet"]
            .contains(&told.0["next_check"]["component"].as_str().unwrap())
    );
    assert_eq!(told.steps().matches("Press RESET").count(), 1, "one reset");
    assert_eq!(told.phones()[..2], ["555-0104", "555-0106"], "wires are covered for two years");
}

/// The patio outlet is wet: it is the one, and no power is brought back to it.
#[test]
fn the_patio_outlet_is_wet() {
    let told = Story::of("two-storey", "gfci-trips", "garage-gfci", "--seen back-outlet=wet");
    assert_eq!(told.suspects()[0], "back-outlet");
    assert!(told.share("back-outlet") > 0.6, "{:?}", told.0["suspects"]);
    assert!(!told.steps().contains("Press RESET"), "{}", told.steps());
}

/// Circuit 13 kills the bath's outlet. It takes the freezer with it, which is seen to after the person.
#[test]
fn someone_is_shocked_in_the_main_bath() {
    let told = Story::of("two-storey", "shock", "main-bath-outlet", "");
    assert_eq!(told.cautions()[0], "caution-shocked-person");
    assert!(told.steps().starts_with("Touch neither the person nor the thing."));
    assert_eq!(told.way()[0], "br-baths-outdoor");
    assert!(told.has_set("panel-main") && !told.ever_closes("garage-gfci"));
    assert!(told.caution("caution-critical-off").ends_with("See to it right after."));
    let dead = told.steps().find("Switch off").unwrap();
    assert!(dead < told.steps().find("sees a doctor").unwrap());
}

/// A tingle in the shower: no wire of the map leads there, so everything goes off.
#[test]
fn the_shower_tingles() {
    let told = Story::of("old-house", "shock", "shower", "");
    assert_eq!(told.way()[0], "main-pull-out");
    assert_eq!(told.0["mapped"], false);
    assert!(told.steps().contains("Touch no metal and no water there."));
}

/// Two circuits end in the workshop: 15 at the bench, 17 at the sump. The panel is in the dry garage. The
/// pump stops with it, and that is said.
#[test]
fn water_in_the_workshop() {
    let told = Story::of("two-storey", "water-near-power", "workshop", "");
    assert_eq!(words(&told.way().join(" ")), words("br-basement br-sump"));
    assert!(told.caution("caution-critical-off").contains("Sump pump"));
    assert!(told.steps().contains("A pump that hangs on this stops too."));
    assert_eq!(told.phones()[0], "555-0102");
    let keep_out = told.steps().find("Keep everyone out").unwrap();
    assert!(keep_out < told.steps().find("Switch off").unwrap());
}

/// The garage is wet too: the main panel stands in it, and the disconnect outside stays.
#[test]
fn the_panels_room_is_wet_too() {
    let told = Story::of("two-storey", "water-near-power", "workshop", "--seen garage=wet");
    assert_eq!(told.way(), ["service-disconnect"]);
    let street = Story::of(
        "two-storey",
        "water-near-power",
        "workshop",
        "--seen garage=wet --seen east-side=wet",
    );
    assert!(street.way().is_empty(), "{}", street.steps());
    assert!(street.steps().contains("Call the electricity utility"));
    assert!(street.0["sets"].as_array().unwrap().is_empty());
}
