//! How long a clothes dryer's exhaust duct may be.
//!
//! A maker's instructions for the dryer override the code. A duct that is too long dries slowly and
//! gathers lint, which burns.

use uom::si::f64::Length;
use uom::si::length::foot;

/// Code that gives the length.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Code {
    /// International Residential Code, 2009 and later: 35 ft.
    Irc,
    /// International Residential Code, 2006: 25 ft.
    Irc2006,
    /// Uniform Mechanical Code: 14 ft with two elbows in it.
    Umc,
}

/// A fitting in a 4 in duct.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Elbow {
    /// How it is made.
    pub bend: Bend,
    /// How far it turns.
    pub turn: Turn,
}

/// How an elbow is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bend {
    /// Of straight pieces, radius 4 in: the usual one.
    Mitered,
    /// Smooth, radius 6 in.
    Smooth6,
    /// Smooth, radius 8 in.
    Smooth8,
    /// Smooth, radius 10 in.
    Smooth10,
}

/// How far an elbow turns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// 45 degrees.
    Eighth,
    /// 90 degrees.
    Quarter,
}

/// Greatest length of duct from the transition duct to the outlet, with these elbows in it; zero
/// if they leave none.
///
/// The transition duct behind the dryer (8 ft at most) is not counted. An elbow without an entry in
/// an older code is taken as a mitered one, and one of 45 degrees in the UMC as one of 90: errs
/// short, which is safe.
///
/// Sources: IRC M1502.4.5 (table of fittings, in the code of 2009 and later); IRC 2006 M1502.6 (2.5
/// and 5 ft); UMC 504 (14 ft with two elbows of 90°, 2 ft less for each further one). Cost:
/// O(elbows).
///
/// ```
/// use quarterturn_estimate::duct::{Bend, Code, Elbow, Turn, longest};
/// use quarterturn_estimate::si::length::foot;
///
/// let quarter = Elbow { bend: Bend::Mitered, turn: Turn::Quarter };
/// let longest = longest(Code::Irc, &[quarter; 3]);
/// assert!((longest.get::<foot>() - 20.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn longest(code: Code, elbows: &[Elbow]) -> Length {
    let feet = match code {
        Code::Irc => 35.0 - elbows.iter().map(|elbow| counts_for(*elbow)).sum::<f64>(),
        Code::Irc2006 => {
            let mitered = |elbow: &Elbow| counts_for(Elbow { bend: Bend::Mitered, ..*elbow });
            25.0 - elbows.iter().map(mitered).sum::<f64>()
        }
        Code::Umc => 14.0 - elbows.iter().skip(2).map(|_| 2.0).sum::<f64>(),
    };
    Length::new::<foot>(feet.max(0.0))
}

/// Length in feet that an elbow counts for.
fn counts_for(elbow: Elbow) -> f64 {
    match (elbow.bend, elbow.turn) {
        (Bend::Mitered, Turn::Eighth) => 2.5,
        (Bend::Mitered, Turn::Quarter) => 5.0,
        (Bend::Smooth6, Turn::Eighth) | (Bend::Smooth8, Turn::Eighth) => 1.0,
        (Bend::Smooth6, Turn::Quarter) => 1.75,
        (Bend::Smooth8, Turn::Quarter) => 1.0 + 7.0 / 12.0,
        (Bend::Smooth10, Turn::Eighth) => 0.75,
        (Bend::Smooth10, Turn::Quarter) => 1.5,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn smooth_bends_leave_more_than_mitered_ones() {
        for turn in [Turn::Eighth, Turn::Quarter] {
            let longest = |bend| longest(Code::Irc, &[Elbow { bend, turn }; 4]);
            assert!(longest(Bend::Mitered) < longest(Bend::Smooth6));
            assert!(longest(Bend::Smooth6) <= longest(Bend::Smooth8));
            assert!(longest(Bend::Smooth8) < longest(Bend::Smooth10));
        }
    }

    #[test]
    fn too_many_elbows_leave_nothing() {
        let elbow = Elbow { bend: Bend::Mitered, turn: Turn::Quarter };
        for code in [Code::Irc, Code::Irc2006, Code::Umc] {
            assert_eq!(longest(code, &[elbow; 20]), Length::default());
        }
        assert_relative_eq!(longest(Code::Umc, &[elbow; 3]).get::<foot>(), 12.0);
    }
}
