//! The worked examples of the National Electrical Code, Annex D.
//!
//! Sources: examples D1(a) and D2(b) as two handbooks print them; an ordinance of Centerville IN
//! with the range alone. The plates behind the 32 800 VA of D2(b) are from memory; they add up to
//! it.

use quarterturn_estimate::dwelling::{Dwelling, service_current};
use quarterturn_estimate::si::area::square_foot;
use quarterturn_estimate::si::electric_current::ampere;
use quarterturn_estimate::si::power::watt;
use quarterturn_estimate::{Area, ElectricCurrent, Power};

use super::agrees;

fn watts(watts: f64) -> Power {
    Power::new::<watt>(watts)
}

/// 1 500 ft², two small-appliance circuits, laundry.
fn house() -> Dwelling {
    Dwelling {
        area: Area::new::<square_foot>(1_500.0),
        small_appliance_circuits: 2,
        laundry_circuits: 1,
        ..Dwelling::default()
    }
}

fn d1a() -> Dwelling {
    Dwelling { range: Some(watts(12_000.0)), dryer: Some(watts(5_500.0)), ..house() }
}

#[test]
fn example_d1_a_line_by_line() {
    assert!(agrees(house().lighting().get::<watt>(), 4_500.0, 1e-9));
    assert!(agrees(house().general().get::<watt>(), 9_000.0, 1e-9));
    assert!(agrees(house().standard().get::<watt>(), 5_100.0, 1e-9));
    assert!(agrees(d1a().standard().get::<watt>(), 18_600.0, 1e-9));
    assert!(agrees(d1a().neutral().get::<watt>(), 14_550.0, 1e-9));
    assert!(agrees(service_current(d1a().standard()).get::<ampere>(), 77.5, 1e-9));
    assert!(agrees(service_current(d1a().neutral()).get::<ampere>().round(), 61.0, 1e-9));
}

/// Three lighting circuits of 15 A or two of 20 A.
#[test]
fn example_d1_a_lighting_circuits() {
    let circuits = |amperes| d1a().lighting_circuits(ElectricCurrent::new::<ampere>(amperes));
    assert!(agrees(circuits(15.0), 3.0, 1e-9));
    assert!(agrees(circuits(20.0), 2.0, 1e-9));
}

/// Two ovens of 4 kW, a cooktop of 5.1 kW, water heater 4.5 kW, dishwasher 1.2 kW, washer and dryer
/// 5 kW, and six room air conditioners of 7 A at 240 V.
#[test]
fn example_d2_b_optional_method() {
    let plates = [4_000.0, 4_000.0, 5_100.0, 4_500.0, 1_200.0, 5_000.0];
    let home = Dwelling {
        fastened: plates.map(watts).to_vec(),
        climate: watts(6.0 * 7.0 * 240.0),
        ..house()
    };
    assert!(agrees(home.climate.get::<watt>(), 10_080.0, 1e-9));
    assert!(agrees(home.optional().get::<watt>(), 29_200.0, 1e-9));
    assert!(agrees(service_current(home.optional()).get::<ampere>().round(), 122.0, 1e-9));
    // 32 800 VA before the allowance: 19 120 after it.
    let without = Dwelling { climate: Power::default(), ..home };
    assert!(agrees(without.optional().get::<watt>(), 19_120.0, 1e-9));
}

/// The range alone with the general load: 13 100 W.
#[test]
fn the_range_alone() {
    let home = Dwelling { range: Some(watts(12_000.0)), ..house() };
    assert!(agrees(home.standard().get::<watt>(), 13_100.0, 1e-9));
}

/// Left without the allowances, D1(a) would be 9 000 + 12 000 + 5 500: the sum that people get by
/// hand.
#[test]
fn the_sum_of_plates_is_not_the_load() {
    assert!(!agrees(d1a().standard().get::<watt>(), 26_500.0, 0.20));
}
