//! Condensate of cooling coils, its drains and pans.
//!
//! Sources: trade rule of 3 pints for each ton and hour; psychrometrics of ASHRAE and the latent
//! share worked out; IMC table 307.2.2 (Rapid City SD), least slope (Baltimore); IRC 2018 M1411.3.1
//! (pan of 1.5 in); a state's water toolkit (5 to 20 gal a day); a web page that contradicts
//! itself.

use quarterturn_estimate::air::{Air, sea_level};
use quarterturn_estimate::condensate::{
    by_air, by_latent, least_drain, least_slope, pan, ton, typical, volume_rate,
};
use quarterturn_estimate::floor;
use quarterturn_estimate::si::length::inch;
use quarterturn_estimate::si::mass_rate::pound_per_hour;
use quarterturn_estimate::si::ratio::percent;
use quarterturn_estimate::si::thermodynamic_temperature::degree_fahrenheit;
use quarterturn_estimate::si::time::{day, hour};
use quarterturn_estimate::si::volume::{gallon, liter};
use quarterturn_estimate::si::volume_rate::cubic_foot_per_minute;
use quarterturn_estimate::{Length, ThermodynamicTemperature, Time, Volume, VolumeRate};

use super::agrees;

fn fahrenheit(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_fahrenheit>(degrees)
}

fn in_an_hour(flow: VolumeRate) -> Volume {
    flow * Time::new::<hour>(1.0)
}

/// 400 cfm for each nominal ton from 80/67 °F; for each ton delivered 1.51, 1.41 and 1.30 L/h by
/// what leaves.
#[test]
fn by_the_air_that_leaves() {
    let before = Air::at_wet_bulb(fahrenheit(80.0), fahrenheit(67.0), sea_level()).unwrap();
    for (degrees, humidity, litres) in [(55.0, 0.95, 1.51), (58.0, 0.90, 1.41), (55.0, 1.0, 1.30)] {
        let after = Air::at_humidity(fahrenheit(degrees), humidity, sea_level()).unwrap();
        let flow = VolumeRate::new::<cubic_foot_per_minute>(400.0);
        let rate = by_air(flow, before.water, after.water);
        // Standard air: 4.5 lb/h for each cfm, so 1 kg/m³ has 1.2014 of it.
        let delivered = by_air(flow, 1.0, 0.0) * (before.enthalpy() - after.enthalpy());
        let each_ton = rate / f64::from(delivered / ton());
        let hourly = in_an_hour(volume_rate(each_ton)).get::<liter>();
        assert!(agrees(hourly, litres, 0.015), "{degrees} F {humidity}: {hourly}");
    }
}

/// lb/h for each ton are 12 000 (1 - SHR)/1 061: 1.54, 1.28, 1.03 and 0.77 L/h.
#[test]
fn by_the_latent_share() {
    for (sensible, litres) in [(0.70, 1.54), (0.75, 1.28), (0.80, 1.03), (0.85, 0.77)] {
        let rate = by_latent(ton(), sensible).unwrap();
        let hourly = in_an_hour(volume_rate(rate)).get::<liter>();
        assert!(agrees(hourly, litres, 0.005), "{sensible} {hourly}");
    }
    let rate = by_latent(ton(), 0.70).unwrap().get::<pound_per_hour>();
    assert!(agrees(rate, 3.39, 0.002), "{rate}");
}

/// 3 pints, 0.375 gal, 1.42 L for each ton and hour.
#[test]
fn three_pints() {
    let hourly = in_an_hour(typical(ton()).likely);
    assert!(agrees(hourly.get::<gallon>(), 0.375, 0.002));
    assert!(agrees(hourly.get::<liter>(), 1.42, 1e-9));
}

/// A household sees 5 to 20 gal a day: three tons that run a quarter to two thirds of the time.
#[test]
fn a_day_of_a_household() {
    let daily = typical(3.0 * ton()).likely * Time::new::<day>(1.0);
    let (quarter, two_thirds) = (daily / 4.0, daily * (2.0 / 3.0));
    assert!(quarter.get::<gallon>() > 5.0 && two_thirds.get::<gallon>() < 20.0, "{daily:?}");
}

/// "One gallon for each ton and day … three tons about 10 gal a day" contradicts itself, and three
/// gallons a day is what no unit makes that runs most of the day.
#[test]
fn one_gallon_for_each_ton_and_day_is_a_misprint() {
    let daily = (typical(ton()).low * Time::new::<day>(1.0)).get::<gallon>();
    assert!(!agrees(daily, 1.0, 0.5), "{daily}");
}

/// A pan of 30 by 60 by 1.5 in holds 11.7 gal and is full after 10.4 h of three tons.
#[test]
fn the_pan_under_the_air_handler() {
    let inches = Length::new::<inch>;
    let pan = pan(inches(30.0), inches(60.0), inches(1.5));
    assert!(agrees(pan.get::<gallon>(), 11.7, 0.002));
    let full = floor::time_to_fill(pan, typical(3.0 * ton())).unwrap();
    assert!(agrees(full.likely.get::<hour>(), 10.4, 0.005));
}

#[test]
fn drains_by_tons() {
    for (tons, inches) in [
        (3.0, 0.75),
        (20.0, 0.75),
        (21.0, 1.0),
        (40.0, 1.0),
        (90.0, 1.25),
        (125.0, 1.5),
        (250.0, 2.0),
    ] {
        let bore = least_drain(tons * ton()).unwrap().get::<inch>();
        assert!(agrees(bore, inches, 1e-9), "{tons}");
    }
    assert!(agrees(least_slope().get::<percent>(), 1.0, 0.05));
}
