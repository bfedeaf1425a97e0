//! Friction in pipes, as sprinkler systems are reckoned.
//!
//! Sources: a calculator to NFPA 13 with its worked line (3 in schedule 40, C 140: 0.056 psi/ft, 5.62
//! psi for 100 ft, 10.85 ft/s; by v = 0.4085 Q/d² that is 250 gpm); a web calculator that gives the
//! unit wrong.

use quarterturn_estimate::leak;
use quarterturn_estimate::si::length::{foot, inch};
use quarterturn_estimate::si::pressure::psi;
use quarterturn_estimate::si::volume_rate::gallon_per_minute;
use quarterturn_estimate::{Length, Pressure};

use super::agrees;

fn gallons_a_minute(pressure: f64) -> f64 {
    let (bore, length) = (Length::new::<inch>(3.068), Length::new::<foot>(100.0));
    leak::pipe_brings(bore, length, 140.0, Pressure::new::<psi>(pressure))
        .get::<gallon_per_minute>()
}

#[test]
fn a_three_inch_line() {
    let flow = gallons_a_minute(5.62);
    assert!(agrees(flow, 10.85 * 3.068 * 3.068 / 0.4085, 0.002), "{flow}");
    assert!(agrees(flow, 250.0, 0.005), "{flow}");
}

/// The web calculator prints the same formula with its 4.52 as "head loss in feet". The constant is
/// of psi; in feet of water the same loss would be 2.31 times as large a number.
#[test]
fn feet_of_head_is_a_misprint() {
    let flow = gallons_a_minute(5.62 / 2.31);
    assert!(!agrees(flow, 250.0, 0.20), "{flow}");
}
