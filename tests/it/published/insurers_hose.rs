//! What insurers say of a burst washing-machine hose.
//!
//! Sources: two guides to water damage at home (one after the Insurance Institute for Business and
//! Home Safety): 650 gal/h; "70 psi … almost 11 gpm … 650 gal/h".

use quarterturn_estimate::leak::{self, SHARP_EDGE, Source, Supply};
use quarterturn_estimate::si::length::inch;
use quarterturn_estimate::si::pressure::psi;
use quarterturn_estimate::si::time::hour;
use quarterturn_estimate::si::volume::gallon;
use quarterturn_estimate::si::volume_rate::gallon_per_minute;
use quarterturn_estimate::{Length, Pressure, Time};

use super::agrees;

#[test]
fn six_hundred_and_fifty_gallons_an_hour() {
    let flow = Supply::washer_hose().at(Pressure::new::<psi>(70.0));
    assert!(agrees((flow * Time::new::<hour>(1.0)).get::<gallon>(), 650.0, 1e-6));
    assert!(agrees(flow.get::<gallon_per_minute>(), 10.83, 0.001));
}

/// One of the guides prints the 650 gal/h as "six gpm".
#[test]
fn six_gallons_a_minute_is_a_misprint() {
    let flow = Supply::washer_hose().at(Pressure::new::<psi>(70.0));
    assert!(!agrees(flow.get::<gallon_per_minute>(), 6.0, 0.20));
    assert!(leak::typical(Source::WasherHose).low.get::<gallon_per_minute>() > 6.0);
}

/// k = 10.83/√70 = 1.29 gpm for each root of a psi, as a hole of 0.27 to 0.28 in.
#[test]
fn it_is_as_a_hole_of_a_quarter_inch_and_a_bit() {
    let at_one = Supply::washer_hose().at(Pressure::new::<psi>(1.0));
    assert!(agrees(at_one.get::<gallon_per_minute>(), 1.29, 0.005));
    let pressure = Pressure::new::<psi>(70.0);
    let flow = Supply::washer_hose().at(pressure);
    assert!(leak::orifice(Length::new::<inch>(0.26), SHARP_EDGE, pressure) < flow);
    assert!(leak::orifice(Length::new::<inch>(0.28), SHARP_EDGE, pressure) > flow);
}

/// The bare end of a 1/2 in pipe would pass 35 gpm at 60 psi; the hose brings less than a third of
/// it.
#[test]
fn the_supply_is_the_limit() {
    let pressure = Pressure::new::<psi>(60.0);
    let bare = leak::orifice(Length::new::<inch>(0.5), SHARP_EDGE, pressure);
    let brings = Supply::washer_hose().at(pressure);
    assert_eq!(leak::capped(bare, brings), brings);
    assert!(3.0 * brings < bare);
}
