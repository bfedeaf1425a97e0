//! Dryer ducts.
//!
//! Sources: IRC M1502.4.5.1 (35 ft and the table of fittings; permit sheets of Everett WA); worked
//! examples; IRC 2006 (25 ft); UMC 504 (14 ft with two elbows, 2 ft less for each further one); a
//! guide to duct lengths.

use quarterturn_estimate::Length;
use quarterturn_estimate::duct::{Bend, Code, Elbow, Turn, longest};
use quarterturn_estimate::si::length::{foot, inch, millimeter};

use super::agrees;

const MITERED_90: Elbow = Elbow { bend: Bend::Mitered, turn: Turn::Quarter };
const MITERED_45: Elbow = Elbow { bend: Bend::Mitered, turn: Turn::Eighth };
const SMOOTH_90: Elbow = Elbow { bend: Bend::Smooth10, turn: Turn::Quarter };

fn feet(code: Code, elbows: &[Elbow]) -> f64 {
    longest(code, elbows).get::<foot>()
}

#[test]
fn table_of_fittings() {
    for (bend, eighth, quarter) in [
        (Bend::Mitered, 2.5, 5.0),
        (Bend::Smooth6, 1.0, 1.75),
        (Bend::Smooth8, 1.0, 1.583),
        (Bend::Smooth10, 0.75, 1.5),
    ] {
        let deducts = |turn| 35.0 - feet(Code::Irc, &[Elbow { bend, turn }]);
        assert!(agrees(deducts(Turn::Eighth), eighth, 0.001), "{bend:?}");
        assert!(agrees(deducts(Turn::Quarter), quarter, 0.001), "{bend:?}");
    }
}

/// 35 - 2·5 - 2.5 = 22.5 ft; three mitered elbows leave 20 ft, four smooth ones 29 ft.
#[test]
fn worked_examples() {
    assert!(agrees(feet(Code::Irc, &[MITERED_90, MITERED_90, MITERED_45]), 22.5, 1e-9));
    assert!(agrees(feet(Code::Irc, &[MITERED_90; 3]), 20.0, 1e-9));
    assert!(agrees(feet(Code::Irc, &[SMOOTH_90; 4]), 29.0, 1e-9));
    assert!(agrees(feet(Code::Irc, &[]), 35.0, 1e-9));
}

#[test]
fn older_and_other_codes() {
    assert!(agrees(feet(Code::Irc2006, &[]), 25.0, 1e-9));
    assert!(agrees(feet(Code::Irc2006, &[MITERED_90, MITERED_45]), 17.5, 1e-9));
    assert!(agrees(feet(Code::Umc, &[MITERED_90; 2]), 14.0, 1e-9));
    assert!(agrees(feet(Code::Umc, &[MITERED_90; 4]), 10.0, 1e-9));
}

/// A guide prints the transition duct as "8 in (2438 mm)": it is 8 ft.
#[test]
fn eight_inches_is_a_misprint() {
    assert!(agrees(Length::new::<foot>(8.0).get::<millimeter>(), 2_438.0, 0.001));
    assert!(!agrees(Length::new::<inch>(8.0).get::<millimeter>(), 2_438.0, 0.5));
}
