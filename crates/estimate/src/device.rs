//! How long it takes to work a valve, breaker or cap, once one stands before it.
//!
//! No publication of such times was found: the figures are common practice, chosen so that an
//! answer errs slow. A home that has timed its own devices should be believed instead.

use uom::si::f64::{Length, Time};
use uom::si::length::inch;
use uom::si::time::second;

use crate::Range;

/// How a device is worked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Way {
    /// A lever or slot, a quarter turn.
    QuarterTurn,
    /// This many turns of a wheel or knob.
    Turns(f64),
    /// Turns of a wheel or knob that nobody counted.
    MultiTurn,
    /// A button to push.
    Push,
    /// A block or knob to pull.
    Pull,
    /// A breaker's toggle, to OFF.
    ToOff,
    /// A cap to unscrew with a wrench.
    Unscrew,
}

/// How well a device is known to work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Condition {
    /// It was tried, and works.
    Works,
    /// It works, but takes force or time.
    Stiff,
    /// It does not move.
    Seized,
    /// It moves, but does not hold.
    LeaksBy,
    /// Nobody tried.
    #[default]
    Unknown,
}

/// What lies between standing at a device and having a hand on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Reach {
    /// Nothing: it is in the open.
    #[default]
    AtHand,
    /// A cupboard or access door, with things in front.
    Cupboard,
    /// The door of a breaker panel, and its directory to read.
    Panel,
    /// A box in the ground: its lid, dirt, and a key to set.
    MeterBox,
}

/// Time to work a device, with a hand on it.
///
/// A stiff device takes 1.5 to 6 times as long as one that works; an unknown one may be either. For
/// a seized one it is the time until one gives up. Turns below zero count as none.
///
/// Source: common practice (quarter turn 1 to 2 s, fixture stop 3 to 5 s, gate of 6 to 8 turns
/// 10 to 20 s). Errs slow.
///
/// ```
/// use quarterturn_estimate::device::{Condition, Way, work_time};
/// use quarterturn_estimate::si::time::second;
///
/// let ball = work_time(Way::QuarterTurn, Condition::Works);
/// let gate = work_time(Way::Turns(8.0), Condition::Unknown);
/// assert!(ball.high < gate.likely);
/// assert!(gate.high.get::<second>() > 60.0);
/// ```
#[must_use]
pub fn work_time(way: Way, condition: Condition) -> Range<Time> {
    let works = when_it_works(way);
    match condition {
        Condition::Works | Condition::LeaksBy => works,
        Condition::Stiff => {
            Range::new(works.low * STIFF.low, works.likely * STIFF.likely, works.high * STIFF.high)
        }
        Condition::Unknown => {
            Range::new(works.low, works.likely * STIFF.low, works.high * STIFF.high)
        }
        Condition::Seized => seconds(10.0, 20.0, 60.0),
    }
}

/// Time until a hand is on the device.
///
/// Source: common practice; a meter box with its key is 2 to 5 min, lid included.
#[must_use]
pub fn reach_time(reach: Reach) -> Range<Time> {
    match reach {
        Reach::AtHand => seconds(0.0, 0.0, 0.0),
        Reach::Cupboard => seconds(3.0, 10.0, 30.0),
        Reach::Panel => seconds(3.0, 8.0, 20.0),
        Reach::MeterBox => seconds(120.0, 180.0, 300.0),
    }
}

/// Turns to close a gate valve of a nominal size: three for each inch, and two or three more.
///
/// Source: trade rule for waterworks gates (4 in: 14 to 15, 6 in: 20 to 21), quoted by suppliers.
/// Below 2 in it is stretched: "1 in main valve, about 6 turns" agrees, smaller sizes were not
/// found.
#[must_use]
pub fn gate_turns(nominal: Length) -> Range<f64> {
    let closing = 3.0 * nominal.max(Length::default()).get::<inch>();
    Range::new(closing + 2.0, closing + 2.5, closing + 3.0)
}

/// How many times as long a stiff device takes.
const STIFF: Range<f64> = Range { low: 1.5, likely: 3.0, high: 6.0 };

fn when_it_works(way: Way) -> Range<Time> {
    match way {
        Way::QuarterTurn => seconds(1.0, 1.5, 3.0),
        Way::Turns(turns) => seconds(1.25, 2.0, 3.3) * turns.max(0.0),
        // From a fixture stop of two turns to a gate of eight.
        Way::MultiTurn => seconds(3.0, 12.0, 26.0),
        Way::Push => seconds(0.5, 1.0, 2.0),
        Way::Pull => seconds(1.0, 2.0, 4.0),
        Way::ToOff => seconds(1.0, 1.5, 3.0),
        Way::Unscrew => seconds(15.0, 30.0, 90.0),
    }
}

fn seconds(low: f64, likely: f64, high: f64) -> Range<Time> {
    Range::new(low, likely, high).map(Time::new::<second>)
}

#[cfg(test)]
mod tests {
    use super::*;

    const WAYS: [Way; 7] = [
        Way::QuarterTurn,
        Way::Turns(7.0),
        Way::MultiTurn,
        Way::Push,
        Way::Pull,
        Way::ToOff,
        Way::Unscrew,
    ];

    #[test]
    fn stiff_is_slower_than_works_and_unknown_spans_both() {
        for way in WAYS {
            let works = work_time(way, Condition::Works);
            let stiff = work_time(way, Condition::Stiff);
            let unknown = work_time(way, Condition::Unknown);
            assert!(works.low < stiff.low && works.likely < stiff.likely, "{way:?}");
            assert_eq!((unknown.low, unknown.high), (works.low, stiff.high), "{way:?}");
            assert!(works.likely < unknown.likely && unknown.likely < stiff.likely, "{way:?}");
        }
    }

    #[test]
    fn a_gate_of_seven_turns_takes_ten_to_twenty_seconds() {
        let gate = work_time(Way::Turns(7.0), Condition::Works);
        assert!((8.0..=10.0).contains(&gate.low.get::<second>()));
        assert!((20.0..=25.0).contains(&gate.high.get::<second>()));
        assert!((10.0..=20.0).contains(&gate.likely.get::<second>()));
    }

    #[test]
    fn giving_up_on_a_seized_device_does_not_depend_on_its_turns() {
        assert_eq!(
            work_time(Way::Turns(40.0), Condition::Seized),
            work_time(Way::QuarterTurn, Condition::Seized)
        );
    }

    /// Suppliers of waterworks valves: 4 in 14 to 15 turns, 6 in 20 to 21, a 1 in main about 6.
    #[test]
    fn gates_turn_as_often_as_their_suppliers_say() {
        for (size, low, high) in [(4.0, 14.0, 15.0), (6.0, 20.0, 21.0), (1.0, 5.0, 6.0)] {
            let turns = gate_turns(Length::new::<inch>(size));
            approx::assert_relative_eq!(turns.low, low);
            approx::assert_relative_eq!(turns.high, high);
            approx::assert_relative_eq!(turns.likely, f64::midpoint(low, high));
        }
    }

    #[test]
    fn turns_below_zero_are_none() {
        let none = work_time(Way::Turns(-3.0), Condition::Works);
        assert_eq!(none, Range::exactly(Time::default()));
    }
}
