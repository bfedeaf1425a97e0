//! Loops, mixers, tanks and stops.

use super::drawing::water;

#[test]
fn a_tap_is_fed_hot_and_cold() {
    let home = water(
        "street@ - main* - trunk; trunk - cs* - faucet:Tap!; trunk - hv* - heater+5 - hs* - faucet
         trunk - fridge:IceMaker+50",
    );
    assert_eq!(home.sets(), "cs hs\ncs hv\nmain");
    assert!(home.is_fed(&["cs"]) && home.is_fed(&["hs"]));
}

#[test]
fn a_joined_mixer_feeds_a_hose_backwards() {
    let home = water(
        "street@ - main* - trunk+50; trunk - cbv* - cb!; trunk - hv* - heater+5 - hot - hbv* - hb
         cb - shower:Shower& - hb",
    );
    assert_eq!(home.sets(), "cbv hbv\ncbv hv\nmain");
    assert!(home.is_fed(&["cbv"]));
}

/// Shutting the hot side as well would be a mistake too.
#[test]
fn a_mixer_with_checks_does_not_feed_back() {
    let home = water(
        "street@ - main* - trunk+50; trunk - cbv* - cb!; trunk - hv* - heater+5 - hot - hbv* - hb
         cb > shower:Shower&; hb > shower",
    );
    assert_eq!(home.sets(), "cbv\nmain");
}

#[test]
fn check_valves_as_components_do_the_same() {
    let home = water(
        "street@ - main* - trunk+50; trunk - cbv* - cb!; trunk - hv* - heater+5 - hot - hbv* - hb
         cb - cc:CheckValve - shower:MixingValve; hb - hc:CheckValve - shower",
    );
    assert_eq!(home.sets(), "cbv\nmain");
}

/// The check valve's own body stands in water from the side it does not let through.
#[test]
fn a_leaking_check_valve_is_fed_from_both_sides() {
    let home = water(
        "street@ - main* - trunk+50; trunk - cbv* - cb; trunk - hv* - heater+5 - hot - hbv* - hb
         cb - cc:CheckValve! - shower:MixingValve; hb - hc:CheckValve - shower",
    );
    assert_eq!(home.sets(), "cbv hbv\ncbv hv\nmain");
}

#[test]
fn a_closed_tap_joins_nothing() {
    let home = water(
        "street@ - main* - trunk+50; trunk - cbv* - cb!; trunk - hv* - heater+5 - hot - hbv* - hb
         cb - sink:Sink; hb - sink",
    );
    assert_eq!(home.sets(), "cbv\nmain");
}

#[test]
fn recirculation_feeds_a_riser_from_its_far_end() {
    let home = water("street@ - main* - trunk+50 - heater+9 - hrv* - riser! - far - rv* - heater");
    assert_eq!(home.sets(), "hrv rv\nmain");
}

#[test]
fn a_check_in_the_return_changes_the_answer() {
    let home = water("street@ - main* - trunk+50 - heater+9 - hrv* - riser! - far > rv* > heater");
    assert_eq!(home.sets(), "hrv\nmain");
}

#[test]
fn a_circulation_pump_in_the_return_is_a_check_too() {
    let home = water(
        "street@ - main* - trunk+50 - heater+9 - hrv* - riser! - far - pump:CirculationPump
         pump - rv* - heater",
    );
    assert_eq!(home.sets(), "hrv\nmain");
}

#[test]
fn an_open_bypass_feeds_a_softener_from_its_outlet() {
    let home = water(
        "street@ - main* - trunk+50 - si* - soft:Softener! - so* - house+20; trunk - byp* - house",
    );
    assert_eq!(home.best(), "si so");
}

#[test]
fn with_the_bypass_shut_one_valve_is_enough() {
    let home = water(
        "street@ - main* - trunk+50 - si* - soft:Softener! - so* - house+20; trunk - byp*/ - house",
    );
    assert_eq!(home.sets(), "si\nmain");
}

#[test]
fn a_leaking_stop_cannot_isolate_itself() {
    let home = water("street@ - main* - trunk+50 - kbv* - kb - stop*! > sink:Sink+1");
    assert_eq!(home.sets(), "kbv\nmain");
}

/// The valve that seems best holds the sprinklers; the main is quickest to reach and worst.
#[test]
fn what_goes_off_decides_between_valves() {
    let home = water(
        "street@ > main*5 - trunk - v1*20 - seg! - v2*20 - B - v3*10 - trunk
         B > sprinkler:SprinklerRiser+500; v1 - A > dialysis:MedicalDevice+900",
    );
    let named = |names: &[&str], cost| (names.iter().map(|n| (*n).to_owned()).collect(), cost);
    assert_eq!(
        home.priced_sets(),
        [named(&["v1", "v2"], 940), named(&["main"], 1405), named(&["v1", "v3"], 1430)]
    );
    assert!(home.is_fed(&["v1"]));
}

/// One valve, hardly any effort, and it takes the sprinklers with it: the two further on are better.
#[test]
fn a_branch_valve_that_also_holds_the_sprinklers_comes_last() {
    let home = water(
        "street@ - main*60 - trunk+50 - branch* - tee - kv*30 - kit!; tee - sprinkler:SprinklerRiser+900",
    );
    assert_eq!(home.sets(), "kv\nbranch\nmain");
}

/// Shutting the inlet stops what feeds a heater. What stands in it and above is another question: its
/// outlet valve is in no minimal set.
#[test]
fn a_heaters_inlet_stops_the_feed() {
    let home = water(
        "street@ - main* - trunk+50 - hv* - heater:WaterHeater! - ho* - hot1 - hot2 - attic - tub:Bath",
    );
    assert_eq!(home.sets(), "hv\nmain");
}

#[test]
fn a_supply_line_is_fed_from_the_end_that_is_left_open() {
    let home =
        water("street@ - main* - trunk+50; trunk - a* - left; left -! right; right - b* - trunk");
    assert_eq!(home.sets(), "a b\nmain");
}

#[test]
fn a_hose_that_nothing_runs_back_in_still_leaks_from_its_far_end() {
    let home =
        water("street@ - main* - trunk+50; trunk - a* - left; left >! right; right - b* - trunk");
    assert_eq!(home.sets(), "a b\nmain");
}

/// By cost, then fewer devices, then their places in the file.
#[test]
fn equal_sets_come_in_the_stated_order() {
    let home = water("street@ - d*2 - c*2 - b*2 - kit!");
    assert_eq!(home.sets(), "d\nc\nb");
    let home = water("kit! - b*2 - c*2 - d*2 - street@");
    assert_eq!(home.sets(), "b\nc\nd");
    let home = water("tee - one*2 - kit!; tee - two*2 - kit; street@ - all*4 - tee");
    assert_eq!(home.sets(), "all\none two");
    let home = water("tee - one*2 - kit!; tee - two*2 - kit; street@ - all*5 - tee");
    assert_eq!(home.sets(), "one two\nall");
}

#[test]
fn a_set_with_a_needless_device_is_never_listed() {
    let home = water("street@ - main* - tee - a* - kit!; tee - b* - bath");
    for (set, _) in home.priced_sets() {
        let names: Vec<&str> = set.iter().map(String::as_str).collect();
        assert!(!home.is_fed(&names));
        for left_out in 0..names.len() {
            let mut fewer = names.clone();
            fewer.remove(left_out);
            assert!(home.is_fed(&fewer), "{set:?} holds more than it needs");
        }
    }
    assert_eq!(home.sets(), "main\na");
}

#[test]
fn a_stop_behind_the_trouble_is_in_no_set() {
    let home = water("street@ - main* - trunk - kit! - stop* - sink:Sink");
    assert_eq!(home.sets(), "main");
}

/// Several spots at once, as when a whole room is under water.
#[test]
fn several_spots_are_cut_off_together() {
    let home = water(
        "street@ - main*5 - trunk+50; trunk - a* - bath! ; trunk - b* - basin!; trunk - c* - kitchen",
    );
    assert_eq!(home.sets(), "a b\nmain");
}
