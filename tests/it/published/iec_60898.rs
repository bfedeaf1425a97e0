//! Times that IEC 60898-1 gives a household breaker.
//!
//! Sources: makers' and designers' pages on tripping curves (B 3 to 5, C 5 to 10, D 10 to 20 times
//! the rating); the thermal points from memory; a web page that prints one of them the wrong way
//! round.

use quarterturn_estimate::ElectricCurrent;
use quarterturn_estimate::si::electric_current::ampere;
use quarterturn_estimate::si::time::{hour, second};
use quarterturn_estimate::trip::{self, Breaker, Curve, Window};

use super::agrees;

fn window(curve: Curve, rating: f64, times: f64) -> Window {
    let rating = ElectricCurrent::new::<ampere>(rating);
    trip::window(Breaker::Iec60898(curve), rating, times * rating)
}

#[test]
fn thermal_points() {
    for curve in [Curve::B, Curve::C, Curve::D] {
        for (rating, hours, seconds) in [(16.0, 1.0, 60.0), (40.0, 1.0, 120.0), (100.0, 2.0, 120.0)]
        {
            let late = window(curve, rating, 1.45).trips_within.unwrap();
            assert!(agrees(late.get::<hour>(), hours, 1e-9), "{curve:?} {rating}");
            let overload = window(curve, rating, 2.55);
            assert!(agrees(overload.holds.get::<second>(), 1.0, 1e-9));
            assert!(agrees(overload.trips_within.unwrap().get::<second>(), seconds, 1e-9));
        }
    }
}

#[test]
fn magnetic_points() {
    for (curve, from, to) in [(Curve::B, 3.0, 5.0), (Curve::C, 5.0, 10.0), (Curve::D, 10.0, 20.0)] {
        assert!(window(curve, 16.0, from).holds.get::<second>() > 0.0, "{curve:?}");
        assert!(window(curve, 16.0, from).trips_within.unwrap().get::<second>() > 1.0);
        let at_once = window(curve, 16.0, to).trips_within.unwrap();
        assert!(agrees(at_once.get::<second>(), 0.1, 1e-9), "{curve:?}");
    }
}

/// A page prints 1.13 times the rating as "trips in less than 1 hour". It is the current that must
/// be held for an hour.
#[test]
fn less_than_an_hour_at_one_point_one_three_is_a_misprint() {
    let held = window(Curve::B, 16.0, 1.13);
    assert_eq!(held.trips_within, None);
    assert!(held.holds.get::<hour>() > 1.0 - 1e-9);
}
