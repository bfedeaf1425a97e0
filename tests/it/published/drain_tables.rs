//! What drains carry and hold.
//!
//! Sources: Manning's formula worked out for schedule 40 bores; an engineering site's table of
//! sewer pipe (4 in at 0.5 %, n 0.015, half full, about 25 gpm); schedule 40 dimensions; ASPE Data
//! Book vol. 2 (2 ft/s).

use quarterturn_estimate::Length;
use quarterturn_estimate::drain::{self, Fill, IN_USE, ROUGH, SMOOTH_PLASTIC};
use quarterturn_estimate::si::length::{foot, inch};
use quarterturn_estimate::si::velocity::foot_per_second;
use quarterturn_estimate::si::volume::gallon;
use quarterturn_estimate::si::volume_rate::gallon_per_minute;
use quarterturn_estimate::standing::{self, Pipe};

use super::agrees;

/// gpm and ft/s.
#[expect(clippy::unwrap_used, reason = "a test stops where it fails")]
fn carries(inches: f64, slope: f64, roughness: f64, fill: Fill) -> (f64, f64) {
    let carries = drain::carries(Length::new::<inch>(inches), slope, roughness, fill).unwrap();
    (carries.flow.get::<gallon_per_minute>(), carries.speed.get::<foot_per_second>())
}

#[test]
fn three_and_four_inch_pipes() {
    for (inches, fall, smooth, full, speed, half, rough) in [
        (3.0, 0.125, 58.5, 40.5, 1.84, 20.2, 35.1),
        (3.0, 0.25, 82.7, 57.2, 2.60, 28.6, 49.6),
        (4.0, 0.125, 125.9, 87.2, 2.23, 43.6, 75.6),
        (4.0, 0.25, 178.1, 123.3, 3.15, 61.6, 106.9),
    ] {
        let slope = drain::inches_per_foot(fall);
        let row = format!("{inches} in at {fall}");
        assert!(
            agrees(carries(inches, slope, SMOOTH_PLASTIC, Fill::Full).0, smooth, 0.01),
            "{row}"
        );
        assert!(agrees(carries(inches, slope, IN_USE, Fill::Full).0, full, 0.01), "{row}");
        assert!(agrees(carries(inches, slope, IN_USE, Fill::Full).1, speed, 0.01), "{row}");
        assert!(agrees(carries(inches, slope, IN_USE, Fill::Half).0, half, 0.01), "{row}");
        assert!(agrees(carries(inches, slope, ROUGH, Fill::Full).0, rough, 0.01), "{row}");
    }
}

/// The published table has 25 gpm where the formula gives 26.2.
#[test]
fn half_a_sewer_pipe() {
    let (flow, _) = carries(4.0, 0.005, ROUGH, Fill::Half);
    assert!(agrees(flow, 26.2, 0.005), "{flow}");
    assert!(agrees(flow, 25.0, 0.06), "{flow}");
}

/// 1/8 in to the foot is 1.04 %, 1/4 in 2.08 %; a 3 in pipe at 1/8 in does not scour.
#[test]
fn three_inches_at_an_eighth_does_not_scour() {
    assert!(agrees(drain::inches_per_foot(0.125), 0.0104, 0.005));
    assert!(agrees(drain::inches_per_foot(0.25), 0.0208, 0.005));
    let scour = drain::scour_speed().get::<foot_per_second>();
    assert!(carries(3.0, drain::inches_per_foot(0.125), IN_USE, Fill::Full).1 < scour);
    assert!(carries(3.0, drain::inches_per_foot(0.25), IN_USE, Fill::Full).1 > scour);
}

#[test]
fn a_foot_of_drain_pipe() {
    for (inches, full, half) in
        [(1.5, 0.1031, 0.0516), (2.0, 0.1710, 0.0855), (3.0, 0.3776, 0.1888), (4.0, 0.6521, 0.3261)]
    {
        let bore = standing::bore(Pipe::PvcDrain, Length::new::<inch>(inches)).unwrap();
        let one = Length::new::<foot>(1.0);
        assert!(agrees(standing::held(bore, one).get::<gallon>(), full, 0.002), "{inches}");
        let to_the_middle = drain::holds(bore, one, 0.0, 0.5 * bore).unwrap();
        assert!(agrees(to_the_middle.get::<gallon>(), half, 0.002), "{inches}");
    }
}

/// 60 ft of empty 4 in pipe: 39.1 gal, about 24 flushes of 1.6 gal.
#[test]
fn flushes_that_a_stopped_lateral_takes() {
    let bore = standing::bore(Pipe::PvcDrain, Length::new::<inch>(4.0)).unwrap();
    let slope = drain::inches_per_foot(0.25);
    let room =
        drain::holds(bore, Length::new::<foot>(60.0), slope, Length::new::<foot>(6.0)).unwrap();
    assert!(agrees(room.get::<gallon>(), 39.1, 0.005));
    let flushes = drain::uses_until_full(room, drain::flush().likely);
    assert!(agrees(flushes.floor(), 24.0, 1e-9), "{flushes}");
}
