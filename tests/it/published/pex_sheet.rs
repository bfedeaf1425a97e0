//! What PEX tube holds.
//!
//! Source: a supplier's sheet to ASTM F876 (SDR-9), in a county's files. Its contents are 3 to 6 %
//! below what the nominal bore gives, because walls are made thicker than the least.

use quarterturn_estimate::Length;
use quarterturn_estimate::si::length::{foot, inch};
use quarterturn_estimate::si::volume::gallon;
use quarterturn_estimate::standing::{self, Pipe};

use super::agrees;

#[expect(clippy::unwrap_used, reason = "a test stops where it fails")]
fn hundred_feet(inches: f64) -> f64 {
    let bore = standing::bore(Pipe::Pex, Length::new::<inch>(inches)).unwrap();
    standing::held(bore, Length::new::<foot>(100.0)).get::<gallon>()
}

#[test]
fn a_hundred_feet() {
    for (inches, printed, from_bore) in [
        (0.375, 0.50, 0.53),
        (0.5, 0.92, 0.96),
        (0.625, 1.34, 1.39),
        (0.75, 1.83, 1.89),
        (1.0, 3.03, 3.12),
    ] {
        let held = hundred_feet(inches);
        assert!(agrees(held, printed, 0.06), "{inches} {held}");
        assert!(held > printed, "errs high: {inches} {held}");
        assert!(agrees(held, from_bore, 0.005), "{inches} {held}");
    }
}

/// At 1/2 in it holds a fifth less than copper type L.
#[test]
fn a_fifth_less_than_copper() {
    let copper = standing::bore(Pipe::CopperL, Length::new::<inch>(0.5)).unwrap();
    let copper = standing::held(copper, Length::new::<foot>(100.0)).get::<gallon>();
    assert!(agrees(hundred_feet(0.5) / copper, 0.79, 0.005));
}
