//! What a circuit may carry.
//!
//! Sources: NEC 210.20(A) and 210.19(A), as a maker's bulletin explains them; a code question
//! column on hair dryers (2012); US DOE list of appliance wattages.

use quarterturn_estimate::appliance::{self, Appliance};
use quarterturn_estimate::circuit::{Circuit, Load, Verdict};
use quarterturn_estimate::si::electric_current::ampere;
use quarterturn_estimate::si::electric_potential::volt;
use quarterturn_estimate::si::power::watt;
use quarterturn_estimate::{ElectricCurrent, ElectricPotential, Power};

use super::agrees;

fn circuit(amperes: f64) -> Circuit {
    Circuit {
        rating: ElectricCurrent::new::<ampere>(amperes),
        voltage: ElectricPotential::new::<volt>(120.0),
    }
}

fn load(watts: f64, continuous: bool) -> Load {
    Load { power: Power::new::<watt>(watts), continuous, bother: Some(1) }
}

/// 15 A carries 12 A for three hours and more, 20 A 16 A, 30 A 24 A.
#[test]
fn four_fifths_of_the_rating() {
    for (rating, amperes) in [(15.0, 12.0), (20.0, 16.0), (30.0, 24.0)] {
        let verdict = |amperes: f64| circuit(rating).verdict(&[load(120.0 * amperes, true)]);
        assert_eq!(verdict(amperes), Verdict::Fits, "{rating}");
        assert_eq!(verdict(amperes + 0.1), Verdict::TooLong, "{rating}");
    }
}

/// A hair dryer of 1 875 W draws 15.6 A: listed, yet more than a 15 A circuit has.
#[test]
fn a_hair_dryer_on_fifteen_amperes() {
    let dryer = appliance::power(Appliance::HairDryer).high;
    let loads = [load(dryer.get::<watt>(), false)];
    assert!(agrees(circuit(15.0).current(&loads).get::<ampere>(), 15.6, 0.002));
    assert_eq!(circuit(15.0).verdict(&loads), Verdict::TooMuch);
    assert_eq!(circuit(20.0).verdict(&loads), Verdict::Fits);
}

/// A heater of 1 500 W is 12.5 A; with the hair dryer 28.1 A, 141 % of 20 A.
#[test]
fn a_heater_and_a_hair_dryer_on_twenty_amperes() {
    let heater = appliance::power(Appliance::PortableHeater).high.get::<watt>();
    let dryer = appliance::power(Appliance::HairDryer).high.get::<watt>();
    let circuit = circuit(20.0);
    let amperes = |loads: &[Load]| circuit.current(loads).get::<ampere>();
    assert!(agrees(amperes(&[load(heater, false)]), 12.5, 1e-9));
    let both = [load(heater, false), load(dryer, false)];
    assert!(agrees(amperes(&both), 28.1, 0.002));
    assert!(agrees(amperes(&both) / 20.0, 1.41, 0.005));
    assert_eq!(circuit.too_much_together(&both, 9), [[0, 1]]);
}
