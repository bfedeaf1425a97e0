//! Leak tables that water utilities print for their customers.
//!
//! Sources: City of Durant OK (Bryan County RWD 2), "How Bad is that Leak"; City of Powder Springs
//! GA, "Water Leaks"; North Marshall Water District KY, helpful hints; Town of Kingsville ON,
//! "Plumbing Leaks"; Walnut Creek SUD TX, leak detection advice; Butler County RWD 4, "Do I have a
//! water leak". Between them they imply a discharge coefficient of 0.61 to 0.63 at 60 psi.

use quarterturn_estimate::leak::{self, SHARP_EDGE};
use quarterturn_estimate::si::length::inch;
use quarterturn_estimate::si::pressure::psi;
use quarterturn_estimate::si::time::day;
use quarterturn_estimate::si::volume::{cubic_foot, cubic_meter, gallon, gallon_imperial};
use quarterturn_estimate::si::volume_rate::{
    cubic_foot_per_minute, gallon_per_day, gallon_per_minute, liter_per_minute,
};
use quarterturn_estimate::{Length, Pressure, Time, Volume, VolumeRate};

use super::agrees;

fn hole(inches: f64, pressure: f64, discharge: f64) -> VolumeRate {
    let pressure = Pressure::new::<psi>(pressure);
    leak::orifice(Length::new::<inch>(inches), discharge, pressure)
}

fn at_60_psi(inches: f64) -> VolumeRate {
    hole(inches, 60.0, SHARP_EDGE)
}

fn in_days(days: f64, flow: VolumeRate) -> Volume {
    flow * Time::new::<day>(days)
}

/// The formula worked out for 60 psi and Cd 0.61: gpm, gal/day, L/min, and gpm at Cd 1.
#[test]
fn the_formula_in_us_units() {
    for (inches, gpm, daily, litres, ideal) in [
        (1.0 / 32.0, 0.138, 198.0, 0.52, 0.226),
        (1.0 / 16.0, 0.551, 793.0, 2.09, 0.903),
        (1.0 / 8.0, 2.204, 3_174.0, 8.34, 3.613),
        (3.0 / 16.0, 4.959, 7_141.0, 18.77, 8.129),
        (1.0 / 4.0, 8.815, 12_694.0, 33.37, 14.452),
        (3.0 / 8.0, 19.84, 28_562.0, 75.1, 32.52),
        (1.0 / 2.0, 35.26, 50_777.0, 133.5, 57.81),
    ] {
        let flow = at_60_psi(inches);
        assert!(agrees(flow.get::<gallon_per_minute>(), gpm, 0.01), "{inches}");
        assert!(agrees(flow.get::<gallon_per_day>(), daily, 0.01), "{inches}");
        assert!(agrees(flow.get::<liter_per_minute>(), litres, 0.01), "{inches}");
        let ideal_flow = hole(inches, 60.0, 1.0).get::<gallon_per_minute>();
        assert!(agrees(ideal_flow, ideal, 0.01), "{inches}");
    }
}

/// gpm = 29.85 Cd d² √p; fire-service handbooks print 29.83 or 29.84.
#[test]
fn the_constant_of_fire_service_handbooks() {
    let constant = hole(1.0, 1.0, 1.0).get::<gallon_per_minute>();
    assert!(agrees(constant, 29.84, 0.001), "{constant}");
}

/// 80 against 60 psi is 1.1547 times the flow, 40 is 0.8165.
#[test]
fn flow_goes_with_the_root_of_pressure() {
    let at = |pressure| hole(0.25, pressure, SHARP_EDGE).get::<gallon_per_minute>();
    assert!(agrees(at(80.0) / at(60.0), 1.1547, 1e-4));
    assert!(agrees(at(40.0) / at(60.0), 0.8165, 1e-4));
}

/// Durant, gal/day at 60 psi.
#[test]
fn durant() {
    for (inches, daily) in [(1.0 / 16.0, 800.0), (1.0 / 8.0, 3_200.0), (1.0 / 4.0, 13_000.0)] {
        assert!(agrees(at_60_psi(inches).get::<gallon_per_day>(), daily, 0.05), "{inches}");
    }
}

/// Powder Springs, gal/month at 60 psi; a month is 30.4 days.
#[test]
fn powder_springs() {
    for (inches, monthly) in
        [(1.0 / 32.0, 6_000.0), (1.0 / 16.0, 25_000.0), (1.0 / 8.0, 100_000.0), (0.25, 400_000.0)]
    {
        let month = in_days(30.4, at_60_psi(inches)).get::<gallon>();
        assert!(agrees(month, monthly, 0.05), "{inches} {month}");
    }
}

/// North Marshall, US gallons; the period is not printed and fits a quarter of a year.
#[test]
fn north_marshall() {
    for (inches, quarterly) in [
        (1.0 / 16.0, 74_000.0),
        (1.0 / 8.0, 296_000.0),
        (3.0 / 16.0, 666_000.0),
        (1.0 / 4.0, 1_181_500.0),
    ] {
        let quarter = in_days(91.25, at_60_psi(inches)).get::<gallon>();
        assert!(agrees(quarter, quarterly, 0.05), "{inches} {quarter}");
    }
}

/// North Marshall prints 1/8 in as 37 400 ft³ but as 1 115 m³, which are 39 375 ft³.
#[test]
fn north_marshall_misprints_its_cubic_feet() {
    let quarter = in_days(91.25, hole(1.0 / 8.0, 60.0, 0.623));
    assert!(agrees(quarter.get::<cubic_meter>(), 1_115.0, 0.01));
    assert!(agrees(quarter.get::<cubic_foot>(), 39_375.0, 0.01));
    assert!(!agrees(quarter.get::<cubic_foot>(), 37_400.0, 0.04));
}

/// Kingsville prints the same table for three months in imperial gallons.
#[test]
fn kingsville_counts_imperial_gallons() {
    for (inches, quarterly) in [
        (1.0 / 16.0, 61_600.0),
        (1.0 / 8.0, 245_300.0),
        (3.0 / 16.0, 554_620.0),
        (1.0 / 4.0, 984_500.0),
    ] {
        let quarter = in_days(91.25, at_60_psi(inches));
        assert!(agrees(quarter.get::<gallon_imperial>(), quarterly, 0.05), "{inches}");
        // Read as US gallons the figure is a sixth short.
        assert!(!agrees(quarter.get::<gallon>(), quarterly, 0.12), "{inches}");
    }
    let printed = Volume::new::<gallon_imperial>(984_500.0);
    assert!(agrees(printed.get::<gallon>(), 1_182_000.0, 0.001));
    assert!(agrees(printed.get::<cubic_meter>(), 4_475.0, 0.001));
}

/// Kingsville calls 1/16 in "1.75 mm"; it is 1.59.
#[test]
fn kingsville_misprints_a_sixteenth() {
    let sixteenth =
        Length::new::<inch>(1.0 / 16.0).get::<quarterturn_estimate::si::length::millimeter>();
    assert!(agrees(sixteenth, 1.59, 0.005));
    assert!(!agrees(sixteenth, 1.75, 0.05));
}

/// Walnut Creek states no pressure: a fifth of leeway.
#[test]
fn walnut_creek() {
    for (inches, daily) in [
        (1.0 / 32.0, 180.0),
        (1.0 / 16.0, 690.0),
        (1.0 / 8.0, 2_760.0),
        (1.0 / 4.0, 11_030.0),
        (1.0 / 2.0, 44_160.0),
    ] {
        assert!(agrees(at_60_psi(inches).get::<gallon_per_day>(), daily, 0.20), "{inches}");
    }
}

/// Walnut Creek's gpm column: 1/4 in is 4.66 gpm beside 11 030 gal/day, which are 7.66; 2 in is
/// 290.67 beside 706 560, which are 490.67; 3/4 in is 38.19, which fits no square law.
#[test]
fn walnut_creek_misprints_its_minutes() {
    let quarter_inch = at_60_psi(0.25).get::<gallon_per_minute>();
    assert!(!agrees(quarter_inch, 4.66, 0.20), "{quarter_inch}");
    assert!(agrees(quarter_inch, 7.66, 0.20), "{quarter_inch}");
    let per_minute = |daily| VolumeRate::new::<gallon_per_day>(daily).get::<gallon_per_minute>();
    assert!(agrees(per_minute(11_030.0), 7.66, 0.001));
    assert!(agrees(per_minute(706_560.0), 490.67, 0.001));
    let two_inch = at_60_psi(2.0).get::<gallon_per_minute>();
    assert!(agrees(two_inch, 490.67, 0.20) && !agrees(two_inch, 290.67, 0.20), "{two_inch}");
    let three_quarter = at_60_psi(0.75).get::<gallon_per_minute>();
    assert!(!agrees(three_quarter, 38.19, 0.20), "{three_quarter}");
}

/// EPA, quoted by a water company: an irrigation leak of 1/32 in is 6 300 gal a month.
#[test]
fn an_irrigation_leak() {
    let month = in_days(30.4, at_60_psi(1.0 / 32.0)).get::<gallon>();
    assert!(agrees(month, 6_300.0, 0.05), "{month}");
}

/// Butler County's table of burst pipes has no friction in it: 50 gpm from 1/2 in, and so on.
#[test]
fn burst_pipes_of_butler_county_are_upper_bounds() {
    for (inches, gpm) in
        [(0.5, 50.0), (0.75, 110.0), (1.0, 210.0), (2.0, 850.0), (3.0, 1_900.0), (4.0, 3_400.0)]
    {
        let bare = hole(inches, 60.0, 0.88).get::<gallon_per_minute>();
        assert!(agrees(bare, gpm, 0.05), "{inches} {bare}");
    }
    for (source, gpm) in [
        (leak::Source::BurstHalfInch, 50.0),
        (leak::Source::BurstThreeQuarterInch, 110.0),
        (leak::Source::BurstOneInch, 210.0),
    ] {
        let high = leak::typical(source).high.get::<gallon_per_minute>();
        assert!(high < gpm, "{source:?} {high}");
    }
}

/// A cubic foot is 7.4805 gal: the unit that American meters count in.
#[test]
fn meters_count_cubic_feet() {
    let foot = VolumeRate::new::<cubic_foot_per_minute>(1.0).get::<gallon_per_minute>();
    assert!(agrees(foot, 7.4805, 1e-4));
}
