//! Drips and running toilets, as American agencies count them.
//!
//! Sources: USGS drip calculator (0.33 mL, 11 350 drops a gallon) and another text of theirs (0.25
//! mL, 15 140); EPA (a drop a second is more than 3 000 gal a year; 10 drops a minute more than
//! 500; a running toilet 200 gal a day); DOE ("nearly 3 200").

use quarterturn_estimate::leak::{self, Source};
use quarterturn_estimate::si::frequency::{cycle_per_minute, hertz};
use quarterturn_estimate::si::time::day;
use quarterturn_estimate::si::volume::gallon;
use quarterturn_estimate::si::volume_rate::gallon_per_day;
use quarterturn_estimate::{Frequency, Time, VolumeRate};

use super::agrees;

fn yearly(flow: VolumeRate) -> f64 {
    (flow * Time::new::<day>(365.25)).get::<gallon>()
}

#[test]
fn a_drop_a_second() {
    let drip = leak::drip(Frequency::new::<hertz>(1.0));
    assert!(agrees(yearly(drip.low), 2_083.0, 0.005), "USGS text, 0.25 mL");
    assert!(agrees(yearly(drip.likely), 2_777.0, 0.01), "USGS calculator, 0.33 mL");
    assert!(agrees(yearly(drip.high), 3_000.0, 0.005), "EPA");
    // DOE is 6 % above the most.
    assert!(agrees(yearly(drip.high), 3_200.0, 0.07), "DOE");
}

#[test]
fn a_shower_of_ten_drops_a_minute() {
    let drip = leak::drip(Frequency::new::<cycle_per_minute>(10.0));
    assert!(agrees(yearly(drip.high), 500.0, 0.005), "EPA");
}

#[test]
fn drops_in_a_gallon() {
    let drip = leak::drip(Frequency::new::<hertz>(1.0));
    let drops = |flow: VolumeRate| 86_400.0 / (flow * Time::new::<day>(1.0)).get::<gallon>();
    assert!(agrees(drops(drip.likely), 11_350.0, 0.02), "USGS calculator");
    assert!(agrees(drops(drip.low), 15_140.0, 0.001), "USGS text");
}

#[test]
fn a_running_toilet() {
    let flow = leak::typical(Source::RunningToilet).likely;
    assert!(agrees(flow.get::<gallon_per_day>(), 200.0, 1e-9), "EPA");
}
