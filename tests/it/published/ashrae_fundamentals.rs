//! Moist air.
//!
//! Sources: ASHRAE Fundamentals 2017, ch. 1, tables 2 and 3 and example 1, as the tests of an open
//! psychrometric library quote them.

use quarterturn_estimate::air::{Air, saturation_pressure, sea_level};
use quarterturn_estimate::si::available_energy::btu_it_per_pound;
use quarterturn_estimate::si::pressure::psi;
use quarterturn_estimate::si::specific_volume::cubic_meter_per_kilogram;
use quarterturn_estimate::si::thermodynamic_temperature::degree_fahrenheit;
use quarterturn_estimate::{Pressure, ThermodynamicTemperature};

use super::agrees;

fn fahrenheit(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_fahrenheit>(degrees)
}

fn psia(pressure: f64) -> Pressure {
    Pressure::new::<psi>(pressure)
}

/// Heat content as American tables count it, from 0 °F.
fn btu_per_pound(air: Air) -> f64 {
    air.enthalpy().get::<btu_it_per_pound>() + 7.687
}

/// Table 3, from ice to steam; ASHRAE states 0.03 %.
#[test]
fn saturation_pressure_by_table_3() {
    for (degrees, published) in [
        (-4.0, 0.014_974),
        (23.0, 0.058_268),
        (41.0, 0.126_56),
        (77.0, 0.459_73),
        (122.0, 1.791_40),
        (212.0, 14.709_4),
        (300.0, 67.020_6),
    ] {
        let pressure = saturation_pressure(fahrenheit(degrees)).unwrap().get::<psi>();
        assert!(agrees(pressure, published, 3e-4), "{degrees} F {pressure}");
    }
}

/// Table 2 is of real air; the formula, of a perfect gas, is half a percent lower.
#[test]
fn saturated_air_by_table_2() {
    for (degrees, published) in [(23.0, 0.002_486_3), (41.0, 0.005_425), (77.0, 0.020_173)] {
        let air = Air::saturated(fahrenheit(degrees), psia(14.696)).unwrap();
        assert!(agrees(air.water, published, 0.005), "{degrees} F {air:?}");
        assert!(air.water < published, "errs low: {degrees} F {air:?}");
    }
}

/// At 1 000 ft (14.175 psi), worked out apart from any program: 86 °F with a wet bulb of 77 °F, and
/// 86 °F with a water content of 0.02. The rows were worked with the coefficients for US units,
/// which differ in the fourth figure.
#[test]
fn worked_rows_at_a_thousand_feet() {
    let slung = Air::at_wet_bulb(fahrenheit(86.0), fahrenheit(77.0), psia(14.175)).unwrap();
    assert!(agrees(slung.water, 0.018_719_328_8, 5e-4), "{slung:?}");
    let air = Air { temperature: fahrenheit(86.0), water: 0.02, pressure: psia(14.175) };
    assert!(agrees(btu_per_pound(air), 42.616_8, 0.001), "{}", btu_per_pound(air));
    let cubic_feet = air.specific_volume().get::<cubic_meter_per_kilogram>() * 16.018_463;
    assert!(agrees(cubic_feet, 14.720_575, 3e-4), "{cubic_feet}");
}

/// 100 °F dry bulb, 65 °F wet bulb, read off the chart: W 0.00523, 13 %, h 29.80 Btu/lb, v 14.22
/// ft³/lb.
#[test]
fn example_1() {
    let air = Air::at_wet_bulb(fahrenheit(100.0), fahrenheit(65.0), sea_level()).unwrap();
    assert!(agrees(air.water, 0.005_23, 0.01), "{air:?}");
    assert!(agrees(air.relative_humidity().unwrap(), 0.13, 0.04), "{air:?}");
    assert!(agrees(btu_per_pound(air), 29.80, 0.003), "{}", btu_per_pound(air));
    let cubic_feet = air.specific_volume().get::<cubic_meter_per_kilogram>() * 16.018_463;
    assert!(agrees(cubic_feet, 14.22, 0.002), "{cubic_feet}");
}

/// Return air of 80 °F and 67 °F wet bulb: W 0.01117, 51 %, h 31.45, dew point 60.3 °F.
#[test]
fn return_air() {
    let air = Air::at_wet_bulb(fahrenheit(80.0), fahrenheit(67.0), sea_level()).unwrap();
    assert!(agrees(air.water, 0.011_17, 0.003), "{air:?}");
    assert!(agrees(air.relative_humidity().unwrap(), 0.51, 0.01), "{air:?}");
    assert!(agrees(btu_per_pound(air), 31.45, 0.002), "{}", btu_per_pound(air));
    let dew = air.dew_point().unwrap().get::<degree_fahrenheit>();
    assert!(agrees(dew, 60.3, 0.002), "{dew}");
}
