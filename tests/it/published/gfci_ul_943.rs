//! Times of a Class A ground-fault device.
//!
//! Sources: a glossary's and two code forums' quotation of UL 943: no trip below 4 mA, trip from 6
//! mA, within (20/I)^1.43 s from 6 to 264 mA.

use quarterturn_estimate::ElectricCurrent;
use quarterturn_estimate::si::electric_current::milliampere;
use quarterturn_estimate::si::time::second;
use quarterturn_estimate::trip::{GroundFault, gfci};

use super::agrees;

fn at(milliamperes: f64) -> GroundFault {
    gfci(ElectricCurrent::new::<milliampere>(milliamperes))
}

#[test]
fn the_curve() {
    for (milliamperes, seconds) in [
        (6.0, 5.59),
        (10.0, 2.69),
        (20.0, 1.000),
        (30.0, 0.560),
        (50.0, 0.270),
        (100.0, 0.100),
        (264.0, 0.0250),
    ] {
        let GroundFault::TripsWithin(time) = at(milliamperes) else {
            panic!("{milliamperes} mA holds");
        };
        assert!(agrees(time.get::<second>(), seconds, 0.005), "{milliamperes} mA {time:?}");
    }
}

/// The formula gives 7.26 s at 5 mA, but below 6 mA the device need not trip at all.
#[test]
fn five_milliamperes_promise_nothing() {
    assert_eq!(at(5.0), GroundFault::MayTrip);
    assert_eq!(at(3.9), GroundFault::Holds);
}
