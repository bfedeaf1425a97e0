//! How long a breaker may hold an overload, and how soon a ground-fault device must trip.
//!
//! Standards do not print curves but points: at so many times the rating, trip within this, hold
//! for at least that. More current never trips later, so a point bounds everything beyond it.

use uom::si::electric_current::{ampere, milliampere};
use uom::si::f64::{ElectricCurrent, Time};
use uom::si::time::{hour, millisecond, minute, second};

/// Standard that a breaker is built to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Breaker {
    /// UL 489, North America, at 25 °C.
    Ul489,
    /// IEC 60898-1, for households elsewhere.
    Iec60898(Curve),
}

/// Where the magnetic trip of an IEC breaker sets in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Curve {
    /// 3 to 5 times the rating.
    B,
    /// 5 to 10 times the rating.
    C,
    /// 10 to 20 times the rating.
    D,
}

/// When a breaker trips.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// It holds at least this long.
    pub holds: Time,
    /// It trips within this; `None` if it may hold for ever.
    pub trips_within: Option<Time>,
}

/// What a ground-fault device does about a leakage current.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GroundFault {
    /// It must not trip.
    Holds,
    /// It may trip or not.
    MayTrip,
    /// It must trip within this.
    TripsWithin(Time),
}

/// What a trip tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tells {
    /// The loads known do not add up to it: something else draws current, or the breaker is weak.
    NotTheKnownLoads,
    /// Too much plugged in explains it.
    Overload,
    /// Too soon for an overload: a short or ground fault. Leave it off.
    Fault,
}

/// When a cold breaker of `rating` trips at a steady `current`.
///
/// Holds at the standard's temperature; in a hot panel or with hot neighbours a breaker trips
/// sooner, so `holds` errs long. Where a standard says nothing the window is open: UL 489 has no
/// least time, and between 100 and 135 % no greatest.
///
/// Sources: UL 489: 100 % holds; 135 % within 1 h up to 50 A (2 h above, from memory); 200 % within
/// 2 min up to 30 A (4, 6, 8, 10 min up to 50, 100, 150, 225 A, from memory). IEC 60898-1: 1.13
/// times holds an hour and 1.45 times trips within it up to 63 A (above, 2 h), 2.55 times within 1
/// to 60 s up to 32 A (120 s above), all from memory; magnetic trip within 0.1 s from the upper end
/// of the curve, no sooner than that at its lower end.
///
/// ```
/// use quarterturn_estimate::si::{electric_current::ampere, time::hour};
/// use quarterturn_estimate::{ElectricCurrent, trip};
///
/// let amps = ElectricCurrent::new::<ampere>;
/// let window = trip::window(trip::Breaker::Ul489, amps(20.0), amps(28.1));
/// assert!(window.trips_within.unwrap().get::<hour>() <= 1.0 + 1e-12);
/// ```
#[must_use]
pub fn window(breaker: Breaker, rating: ElectricCurrent, current: ElectricCurrent) -> Window {
    let times = f64::from(current / rating);
    match breaker {
        Breaker::Ul489 => ul_489(rating.get::<ampere>(), times),
        Breaker::Iec60898(curve) => iec_60898(rating.get::<ampere>(), times, curve),
    }
}

/// What it tells that a breaker tripped `after` it was closed, with `known` loads on it.
///
/// "At once" is taken as within one second: IEC 60898-1 has a breaker hold 2.55 times its rating
/// for that long; for UL 489 breakers it is common practice. A motor's start can look like a fault;
/// a trip late at less than the rating hints at a weak breaker, a hot panel or an unknown load.
#[must_use]
pub fn tells(rating: ElectricCurrent, known: ElectricCurrent, after: Time) -> Tells {
    if after < Time::new::<second>(1.0) {
        Tells::Fault
    } else if known > rating {
        Tells::Overload
    } else {
        Tells::NotTheKnownLoads
    }
}

/// What a Class A ground-fault device does at a leakage of `leak`.
///
/// Source: UL 943: no trip below 4 mA, a trip from 6 mA on, within (20/I)^1.43 s with I in mA as
/// far as 264 mA; 25 ms beyond. Real devices are faster, so it errs long.
#[must_use]
pub fn gfci(leak: ElectricCurrent) -> GroundFault {
    let milliamperes = leak.get::<milliampere>();
    if milliamperes < 4.0 {
        GroundFault::Holds
    } else if milliamperes < 6.0 {
        GroundFault::MayTrip
    } else {
        let seconds = (20.0 / milliamperes.min(264.0)).powf(1.43);
        GroundFault::TripsWithin(Time::new::<second>(seconds))
    }
}

/// What a residual-current device for `rated` leakage (30 mA in houses) does at a leakage of
/// `leak`.
///
/// Source: IEC 61008-1, general type: no trip at half; 300, 150 and 40 ms at 1, 2 and 5 times (from
/// memory).
#[must_use]
pub fn rcd(rated: ElectricCurrent, leak: ElectricCurrent) -> GroundFault {
    let times = f64::from(leak / rated);
    let milliseconds = match times {
        _ if times < 0.5 => return GroundFault::Holds,
        _ if times < 1.0 => return GroundFault::MayTrip,
        _ if times < 2.0 => 300.0,
        _ if times < 5.0 => 150.0,
        _ => 40.0,
    };
    GroundFault::TripsWithin(Time::new::<millisecond>(milliseconds))
}

fn ul_489(rating: f64, times: f64) -> Window {
    let at_twice = match rating {
        _ if rating <= 30.0 => 2.0,
        _ if rating <= 50.0 => 4.0,
        _ if rating <= 100.0 => 6.0,
        _ if rating <= 150.0 => 8.0,
        _ => 10.0,
    };
    let trips_within = if times >= 2.0 {
        Some(Time::new::<minute>(at_twice))
    } else if times >= 1.35 {
        Some(Time::new::<hour>(if rating <= 50.0 { 1.0 } else { 2.0 }))
    } else {
        None
    };
    // At its rating it never trips; the longest hold that a window can say is without an end.
    let holds = if times <= 1.0 { Time::new::<hour>(f64::INFINITY) } else { Time::default() };
    Window { holds, trips_within }
}

fn iec_60898(rating: f64, times: f64, curve: Curve) -> Window {
    let (magnetic_from, magnetic_to) = match curve {
        Curve::B => (3.0, 5.0),
        Curve::C => (5.0, 10.0),
        Curve::D => (10.0, 20.0),
    };
    let conventional = Time::new::<hour>(if rating <= 63.0 { 1.0 } else { 2.0 });
    let at_once = Time::new::<second>(0.1);
    let trips_within = if times >= magnetic_to {
        Some(at_once)
    } else if times >= 2.55 {
        Some(Time::new::<second>(if rating <= 32.0 { 60.0 } else { 120.0 }))
    } else if times >= 1.45 {
        Some(conventional)
    } else {
        None
    };
    let holds = if times <= 1.13 {
        conventional
    } else if times <= 2.55 {
        Time::new::<second>(1.0)
    } else if times <= magnetic_from {
        at_once
    } else {
        Time::default()
    };
    Window { holds, trips_within }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    const BREAKERS: [Breaker; 4] = [
        Breaker::Ul489,
        Breaker::Iec60898(Curve::B),
        Breaker::Iec60898(Curve::C),
        Breaker::Iec60898(Curve::D),
    ];

    fn amps(amperes: f64) -> ElectricCurrent {
        ElectricCurrent::new::<ampere>(amperes)
    }

    #[test]
    fn more_current_never_trips_later() {
        for breaker in BREAKERS {
            for rating in [6.0, 15.0, 20.0, 40.0, 63.0, 100.0, 200.0] {
                let mut before = window(breaker, amps(rating), amps(0.1));
                for step in 1..2500 {
                    let now = window(breaker, amps(rating), amps(rating * f64::from(step) / 100.0));
                    assert!(now.holds <= before.holds, "{breaker:?} {rating} {step}");
                    let end =
                        |window: Window| window.trips_within.map_or(f64::INFINITY, |t| t.value);
                    assert!(end(now) <= end(before), "{breaker:?} {rating} {step}");
                    assert!(now.holds.value <= end(now), "{breaker:?} {rating} {step}");
                    before = now;
                }
            }
        }
    }

    #[test]
    fn a_trip_at_once_is_a_fault_whatever_is_plugged_in() {
        let seconds = Time::new::<second>;
        assert_eq!(tells(amps(20.0), amps(28.1), seconds(0.2)), Tells::Fault);
        assert_eq!(tells(amps(20.0), amps(28.1), seconds(900.0)), Tells::Overload);
        assert_eq!(tells(amps(20.0), amps(8.0), seconds(900.0)), Tells::NotTheKnownLoads);
    }

    #[test]
    fn a_small_leak_holds_and_a_large_one_trips_in_a_fortieth_of_a_second() {
        let at = |milliamperes| gfci(ElectricCurrent::new::<milliampere>(milliamperes));
        assert_eq!(at(3.9), GroundFault::Holds);
        assert_eq!(at(5.0), GroundFault::MayTrip);
        for leak in [264.0, 5000.0] {
            let GroundFault::TripsWithin(time) = at(leak) else { panic!("{leak} mA holds") };
            assert_relative_eq!(time.get::<second>(), 0.025, max_relative = 0.01);
        }
    }

    #[test]
    fn a_residual_current_device_is_fast_at_five_times() {
        let rated = ElectricCurrent::new::<milliampere>(30.0);
        assert_eq!(rcd(rated, 0.4 * rated), GroundFault::Holds);
        assert_eq!(rcd(rated, 0.9 * rated), GroundFault::MayTrip);
        let within = |times: f64| match rcd(rated, times * rated) {
            GroundFault::TripsWithin(time) => time.get::<millisecond>(),
            other => panic!("{other:?}"),
        };
        assert_relative_eq!(within(1.0), 300.0, max_relative = 1e-9);
        assert_relative_eq!(within(3.0), 150.0, max_relative = 1e-9);
        assert_relative_eq!(within(5.0), 40.0, max_relative = 1e-9);
    }
}
