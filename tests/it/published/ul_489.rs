//! Times that UL 489 allows a breaker.
//!
//! Sources: a fuse maker's page on UL circuit breakers (100 % holds; 135 % within 1 h up to 50 A;
//! 200 % within 2 min up to 30 A); the larger frames from memory.

use quarterturn_estimate::si::electric_current::ampere;
use quarterturn_estimate::si::time::{hour, minute, second};
use quarterturn_estimate::trip::{self, Breaker, Tells, Window};
use quarterturn_estimate::{ElectricCurrent, Time};

use super::agrees;

fn window(rating: f64, times: f64) -> Window {
    let rating = ElectricCurrent::new::<ampere>(rating);
    trip::window(Breaker::Ul489, rating, times * rating)
}

#[test]
fn the_points_of_the_standard() {
    for (rating, hours, minutes) in [
        (15.0, 1.0, 2.0),
        (20.0, 1.0, 2.0),
        (30.0, 1.0, 2.0),
        (50.0, 1.0, 4.0),
        (100.0, 2.0, 6.0),
        (150.0, 2.0, 8.0),
        (225.0, 2.0, 10.0),
    ] {
        assert_eq!(window(rating, 1.0).trips_within, None, "{rating}");
        assert!(window(rating, 1.0).holds.get::<hour>().is_infinite(), "{rating}");
        let late = window(rating, 1.35).trips_within.unwrap();
        assert!(agrees(late.get::<hour>(), hours, 1e-9), "{rating}");
        let soon = window(rating, 2.0).trips_within.unwrap();
        assert!(agrees(soon.get::<minute>(), minutes, 1e-9), "{rating}");
    }
}

/// Between its rating and 135 % a breaker may hold for ever or trip.
#[test]
fn a_little_too_much_is_not_bounded() {
    let between = window(20.0, 1.2);
    assert_eq!(between.trips_within, None);
    assert_eq!(between.holds, Time::default());
}

/// Heater and hair dryer, 141 % of 20 A: within the hour, not at once; at once is a fault.
#[test]
fn a_hundred_and_forty_one_percent() {
    assert!(agrees(window(20.0, 1.41).trips_within.unwrap().get::<hour>(), 1.0, 1e-9));
    let amperes = ElectricCurrent::new::<ampere>;
    let tells = |after| trip::tells(amperes(20.0), amperes(28.1), Time::new::<second>(after));
    assert_eq!(tells(1_800.0), Tells::Overload);
    assert_eq!(tells(0.1), Tells::Fault);
}
