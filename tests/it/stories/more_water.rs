//! Toilets, taps that give nothing, pits.

use super::{Story, words};

/// The stop behind it is a quarter turn, 1.5 m away. The one in the way is the toilet itself, until
/// something else backs up as well.
#[test]
fn the_toilet_upstairs_runs_over() {
    let told = Story::of("two-storey", "toilet-overflow", "main-bath-toilet", "");
    assert!(told.steps().starts_with("Do not flush again."), "{}", told.steps());
    assert_eq!(told.way()[0], "main-bath-toilet-stop");
    assert_eq!(told.best()["close"][0], "main-bath-toilet-stop");
    assert!(!told.ever_closes("sprinkler-valve"));
    let between = &told.0["relief"]["blocked_between"][0];
    assert_eq!(between, &serde_json::json!(["main-bath-toilet", "main-bath-branch"]));
    assert!(
        !told.way().contains(&"house-cleanout".to_owned()),
        "nobody opens a cap for one toilet"
    );
    assert!(told.cautions().contains(&"caution-sewage".to_owned()));
    assert_eq!(
        told.phones()[..2],
        ["555-0104", "555-0100"],
        "drains are covered for two years; the curb stop is the water utility's"
    );
}

/// The washer two floors down backs up too: the two meet at the building drain, and below that the cap
/// in the front bed lies lower than the toilet's rim.
#[test]
fn the_toilet_is_not_alone() {
    let told = Story::of(
        "two-storey",
        "toilet-overflow",
        "main-bath-toilet",
        "--seen laundry-drain=backs-up",
    );
    assert_eq!(
        told.blocked(),
        words(
            "building-drain>house-cleanout house-cleanout>building-sewer
             building-sewer>property-cleanout property-cleanout>street-sewer"
        )
    );
    assert!(told.way().contains(&"house-cleanout".to_owned()));
}

/// The stop is stiff and was said not to turn: the branch it hangs on goes off instead, and hot with it,
/// since the shower upstairs joins the two.
#[test]
fn the_stiff_stop_does_not_turn() {
    let told = Story::of(
        "two-storey",
        "toilet-overflow",
        "half-bath-toilet",
        "--failed half-bath-toilet-stop",
    );
    assert!(!told.ever_closes("half-bath-toilet-stop"));
    assert!(told.way().contains(&"cold-ground-valve".to_owned()), "{:?}", told.way());
}

/// The sink gives nothing and neither does the bath: what the two share lies before the manifolds. The
/// drain tap above the house main runs, so the street, the meter and that valve are sound; what is left
/// is the softener with its valves, and the trunk.
#[test]
fn the_drain_tap_tells_ours_from_the_streets() {
    let ask = "--seen family-tub=dead";
    let first = Story::of("two-storey", "no-water", "kitchen-sink", ask);
    assert_eq!(first.suspects()[0], "street-main", "{:?}", first.0["suspects"]);
    assert!(first.steps().contains("555-0109"), "the neighbor is asked: {}", first.steps());
    assert_eq!(
        first.phones()[0],
        "555-0104",
        "most of what may be at fault is covered for two years"
    );
    let second = Story::of(
        "two-storey",
        "no-water",
        "kitchen-sink",
        "--seen family-tub=dead --seen drain-tap=live",
    );
    for sound in ["street-main", "curb-stop", "water-meter", "backflow-inlet", "house-main"] {
        assert!(second.share(sound) <= 0.0, "{sound}: {:?}", second.0["suspects"]);
    }
    assert!(second.share("softener-inlet") > 0.1, "{:?}", second.0["suspects"]);
    let total: f64 = second.suspects().iter().map(|id| second.share(id)).sum();
    assert!((total - 1.0).abs() < 0.02, "{total}");
}

/// The old house has one line from the street: nothing indoors but the main gate can be shut, and the
/// gate at the entry does not move. More likely than not it is the street's, so the utility is first.
#[test]
fn the_old_house_has_no_water() {
    let told = Story::of("old-house", "no-water", "bath", "");
    assert_eq!(told.suspects()[..2], ["street-main", "main-gate"]);
    assert!(told.share("entry-gate") < 0.03, "nobody has shut what does not move");
    assert_eq!(told.phones()[0], "555-0120");
    // The curb stop is the utility's: one asks, and does not turn it.
    assert!(told.steps().contains("Call and ask whether this is shut: Curb stop at the street"));
    assert!(told.cautions().contains(&"caution-heater-dry".to_owned()));
}

/// The shower at the other end of the hot trunk is cold as well: it is the heater, and what it lacks. The
/// breaker beside the fuse box is looked at before anything else.
#[test]
fn no_hot_water_anywhere_in_the_old_house() {
    let told = Story::of("old-house", "no-hot-water", "sink", "--seen shower=dead");
    assert_eq!(words(&told.suspects()[..2].join(" ")), words("heater heater-breaker"));
    assert!(told.share("sink") < 0.05, "{:?}", told.0["suspects"]);
    assert!(told.way().contains(&"heater-breaker".to_owned()));
    // Full before its energy is back, and unplugged or off before the one reset.
    let (full, off) = ("Open a hot tap before you touch", "switch off at its own switch");
    let reset = told.steps().find("push it fully to OFF").unwrap();
    assert!(told.steps().find(full).unwrap() < reset && told.steps().find(off).unwrap() < reset);
    assert!(told.0["restore"][0].as_str().unwrap().contains("it is full"));
    let tripped = Story::of(
        "old-house",
        "no-hot-water",
        "sink",
        "--seen shower=dead --seen heater-breaker=tripped",
    );
    assert_eq!(tripped.suspects()[0], "heater-breaker");
    assert!(tripped.share("heater-breaker") > 0.8, "{:?}", tripped.0["suspects"]);
}

/// The basin is hot, the bath is not: the heater and the shared line are sound.
#[test]
fn only_the_bath_stays_cold() {
    let told = Story::of("two-storey", "no-hot-water", "family-tub", "--seen family-basin=live");
    assert_eq!(words(&told.suspects().join(" ")), words("family-tub family-bath-hot-stop"));
    assert!(!told.steps().contains("push it fully to OFF"), "nothing electrical is touched");
}

/// The pump hangs on its own GFCI, that on circuit 17. It is in the pit's room, which is dry.
#[test]
fn the_sump_pit_fills_up() {
    let told = Story::of("two-storey", "pit-rising", "sump-pit", "");
    assert_eq!(told.suspects()[..1], ["sump-gfci"]);
    assert!(told.share("br-sump") > 0.1 && told.share("br-laundry") <= 0.0);
    let way = told.way();
    let at = |id: &str| way.iter().position(|place| place == id).unwrap();
    assert!(at("sump-pump") < at("sump-gfci") && at("sump-gfci") < at("sump-check"));
    assert_eq!(told.0["next_check"]["component"], "sump-gfci");
    assert_eq!(told.phones()[..2], ["555-0104", "555-0105"], "its wires are covered for two years");
    // Ground water: no fixture drains into it.
    assert!(!told.steps().contains("Stop using"));
}

/// Water stands on the workshop's floor: nobody goes to the GFCI or the pump in it any more.
#[test]
fn the_sump_pit_has_run_over() {
    let told = Story::of("two-storey", "pit-rising", "sump-pit", "--seen workshop=wet");
    assert!(told.way().is_empty(), "{}", told.steps());
    for by_hand in ["Plug the pump in again", "Bail it out", "Free it"] {
        assert!(!told.steps().contains(by_hand), "{}", told.steps());
    }
    assert!(told.steps().contains("Call the electricity utility"));
}
