//! Walking speeds.
//!
//! Sources: MUTCD 2009, 4E.06 (FHWA, worked example quoted in a road forum); a study of pedestrians
//! for TCRP and NCHRP; IMO guidelines on evacuation analysis, tables 1.1 and 1.3; NIST Technical
//! Note 1839; SFPE Handbook, 5th ed., ch. 59 (from memory).

use quarterturn_estimate::si::length::{foot, meter};
use quarterturn_estimate::si::time::second;
use quarterturn_estimate::si::velocity::{foot_per_minute, foot_per_second, meter_per_second};
use quarterturn_estimate::walk::{Path, Profile, Speeds, Stair, time, time_at};
use quarterturn_estimate::{Length, Velocity};

use super::agrees;

/// A crossing of 130 ft with the button 60 ft back: 37.1 s at 3.5 ft/s, and 63.3 s in all at 3.0.
#[test]
fn mutcd_crossing() {
    let seconds = |feet: f64, speed: Velocity| (Length::new::<foot>(feet) / speed).get::<second>();
    assert!(agrees(seconds(130.0, Speeds::mutcd()), 37.1, 0.002));
    assert!(agrees(seconds(190.0, Speeds::mutcd_slower()), 63.3, 0.001));
    assert!(agrees(Speeds::mutcd().get::<meter_per_second>(), 1.07, 0.005));
    // Timed at the 4.0 ft/s of 2003 the crossing would be too short.
    assert!(!agrees(Speeds::mutcd().get::<foot_per_second>(), 4.0, 0.05));
}

/// 15 of 100 young people walk slower than 3.77 ft/s, of old people slower than 3.03.
#[test]
fn one_old_walker_in_seven_is_slower_than_the_slow_one() {
    let likely = Profile::Slow.speeds()[1].level.get::<foot_per_second>();
    assert!(agrees(likely, 3.03, 0.01));
    assert!(Profile::Slow.speeds()[2].level.get::<foot_per_second>() < 3.03);
    assert!(Profile::Usual.speeds()[1].level.get::<foot_per_second>() < 3.77);
}

#[test]
fn imo_low_density() {
    let imo = Speeds::imo();
    for (speed, published) in [(imo.level, 1.2), (imo.down, 1.0), (imo.up, 0.8)] {
        assert!(agrees(speed.get::<meter_per_second>(), published, 1e-9));
    }
}

/// The constants of the handbook's formula, and its printed table of greatest speeds within 4 %:
/// 7/11 is printed 0.95, while 0.85 k is 0.92.
#[test]
fn sfpe_formula_and_table() {
    for (riser, tread, formula, printed, feet) in [
        (7.5, 10.0, 0.85, 0.85, 167.0),
        (7.0, 11.0, 0.92, 0.95, 187.0),
        (6.5, 12.0, 0.99, 1.00, 196.0),
        (6.5, 13.0, 1.05, 1.05, 207.0),
    ] {
        let speed = Speeds::sfpe(Stair::new(riser, tread)).down;
        assert!(agrees(speed.get::<meter_per_second>(), formula, 0.006), "{riser}/{tread}");
        assert!(agrees(speed.get::<meter_per_second>(), printed, 0.04), "{riser}/{tread}");
        assert!(agrees(speed.get::<foot_per_minute>(), feet, 0.04), "{riser}/{tread}");
    }
    let level = Speeds::sfpe(Stair::new(7.0, 11.0)).level;
    assert!(agrees(level.get::<meter_per_second>(), 1.19, 1e-9));
    let seven_eleven = Speeds::sfpe(Stair::new(7.0, 11.0)).down.get::<meter_per_second>();
    assert!(!agrees(seven_eleven, 0.95, 0.02), "the table's 7/11 row is off its own formula");
}

/// Length along the slope for each height: 1.667, 1.863, 2.100, 2.236; IRC's steepest 1.632.
#[test]
fn stairs_are_longer_than_high() {
    for (riser, tread, slope) in [
        (7.5, 10.0, 1.667),
        (7.0, 11.0, 1.863),
        (6.5, 12.0, 2.100),
        (6.5, 13.0, 2.236),
        (7.75, 10.0, 1.632),
    ] {
        assert!(agrees(Stair::new(riser, tread).slope_per_height(), slope, 0.0005));
    }
}

/// One storey of 9 ft on the IRC's steepest stair: 4.48 m; 5.3 s at 0.85 m/s, 5.6 s up by IMO, 9.5
/// s by NIST.
#[test]
fn one_storey() {
    let rise = Length::new::<foot>(9.0);
    let along = rise * Stair::irc_steepest().slope_per_height();
    assert!(agrees(along.get::<meter>(), 4.48, 0.002));
    let down = Path { down: rise, ..Path::default() };
    let up = Path { up: rise, ..Path::default() };
    let steepest = Stair::irc_steepest();
    let seconds = |path, speeds| time_at(path, speeds, steepest).get::<second>();
    assert!(agrees(seconds(&down, Speeds::sfpe(Stair::new(7.5, 10.0))), 5.3, 0.01));
    assert!(agrees(seconds(&up, Speeds::imo()), 5.6, 0.01));
    let nist = Speeds { down: Speeds::nist_stairs_down(), ..Speeds::imo() };
    assert!(agrees(seconds(&down, nist), 9.5, 0.01));
    // Measured with a standard deviation of 0.17 m/s; the slowest is one of it below the mean.
    let slowest = Profile::Slow.speeds()[2].down.get::<meter_per_second>();
    assert!(agrees(slowest, 0.30, 1e-9));
    // The default walker is as slow as NIST measured, and the range spans the publications.
    let slow = time(&down, Profile::default());
    assert!(agrees(slow.likely.get::<second>(), 9.5, 0.01));
    let usual = time(&down, Profile::Usual);
    for published in [4.48, 5.3, 9.5] {
        let within = usual.low.get::<second>() - 0.05..usual.high.get::<second>() + 0.05;
        assert!(within.contains(&published), "{published} {usual:?}");
    }
}
