//! How much water a cooling coil makes, and how long until its pan is full.

use uom::si::available_energy::btu_it_per_pound;
use uom::si::f64::{
    AvailableEnergy, Length, MassDensity, MassRate, Power, Ratio, Volume, VolumeRate,
};
use uom::si::length::inch;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::power::watt;
use uom::si::volume::liter;

use crate::{Range, Refused};

/// Condensate from air that a coil dries from water content `before` to `after`.
///
/// The flow is counted as standard air (0.075 lb/ft³), as makers state it; at altitude or in hot
/// air it errs high. No water comes if the air gets no drier.
///
/// Source: textbook; in US units 4.5·cfm·ΔW lb/h.
#[must_use]
pub fn by_air(flow: VolumeRate, before: f64, after: f64) -> MassRate {
    flow * standard_air() * (before - after).max(0.0)
}

/// Condensate from the part of a coil's `capacity` that dries rather than cools.
///
/// `sensible` is the share that cools, from 0 to 1: 0.70 in damp climates to 0.85 in dry ones.
///
/// Source: textbook; heat of condensation 1061 Btu/lb, so 12 000·(1 - SHR)/1061 lb/h for each ton.
///
/// # Errors
///
/// [`Refused::OutOfRange`] for a share that is none.
pub fn by_latent(capacity: Power, sensible: f64) -> Result<MassRate, Refused> {
    let sensible = Refused::unless_between("sensible share", sensible, 0.0, 1.0)?;
    let heat = AvailableEnergy::new::<btu_it_per_pound>(1061.0);
    Ok(capacity * (1.0 - sensible) / heat)
}

/// Condensate to reckon with for a unit of cooling `capacity` that runs all the time.
///
/// Source: trade rule of 3 pints for each ton and hour (1.42 L/h) as likely; [`by_latent`] at 0.85
/// and 0.70 as least and most. Units cycle, so over a day it errs high: a household sees 5 to 20
/// gal.
#[must_use]
pub fn typical(capacity: Power) -> Range<VolumeRate> {
    let each_ton_and_hour = Range::new(0.77, 1.42, 1.54).map(Volume::new::<liter>);
    let tons = f64::from(capacity.max(Power::default()) / ton());
    each_ton_and_hour
        .map(|volume| volume * tons / uom::si::f64::Time::new::<uom::si::time::hour>(1.0))
}

/// Volume of condensate in the mass of it.
#[must_use]
pub fn volume_rate(mass: MassRate) -> VolumeRate {
    mass / MassDensity::new::<kilogram_per_cubic_meter>(998.2)
}

/// What a pan holds to the brim; its float switch trips lower. Time until full is
/// [`crate::floor::time_to_fill`].
#[must_use]
pub fn pan(length: Length, width: Length, depth: Length) -> Volume {
    let none = Length::default();
    length.max(none) * width.max(none) * depth.max(none)
}

/// Least bore of a condensate drain for a cooling `capacity`.
///
/// Source: IMC table 307.2.2: 3/4 in up to 20 tons, 1 in up to 40, 1-1/4 up to 90, 1-1/2 up to 125,
/// 2 in up to 250; never smaller than the pan's outlet.
///
/// # Errors
///
/// [`Refused::OutOfRange`] beyond 250 tons.
pub fn least_drain(capacity: Power) -> Result<Length, Refused> {
    let tons = f64::from(capacity / ton());
    let tons = Refused::unless_between("cooling capacity in tons", tons, 0.0, 250.0)?;
    let inches = match tons {
        _ if tons <= 20.0 => 0.75,
        _ if tons <= 40.0 => 1.0,
        _ if tons <= 90.0 => 1.25,
        _ if tons <= 125.0 => 1.5,
        _ => 2.0,
    };
    Ok(Length::new::<inch>(inches))
}

/// Least slope of a condensate drain: 1/8 in to the foot, 1 %. Source: IMC 307.2.1 and city codes
/// after it.
#[must_use]
pub fn least_slope() -> Ratio {
    Length::new::<inch>(0.125) / Length::new::<inch>(12.0)
}

/// One ton of refrigeration: 12 000 Btu/h, 3.517 kW.
#[must_use]
pub fn ton() -> Power {
    Power::new::<watt>(12_000.0 * 1_055.055_852_62 / 3600.0)
}

/// Air as makers of fans count it: 0.075 lb/ft³.
fn standard_air() -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(0.075 * 16.018_463)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::floor;
    use approx::assert_relative_eq;
    use uom::si::mass_rate::pound_per_hour;
    use uom::si::time::hour;
    use uom::si::volume::gallon;
    use uom::si::volume_rate::cubic_foot_per_minute;

    #[test]
    fn four_and_a_half_pounds_for_each_cfm() {
        let rate = by_air(VolumeRate::new::<cubic_foot_per_minute>(400.0), 0.011, 0.009);
        assert_relative_eq!(rate.get::<pound_per_hour>(), 3.6, max_relative = 1e-5);
        let damper = by_air(VolumeRate::new::<cubic_foot_per_minute>(400.0), 0.009, 0.011);
        assert_eq!(damper, MassRate::default());
    }

    #[test]
    fn a_three_ton_pan_takes_most_of_a_working_day() {
        let inches = Length::new::<inch>;
        let pan = pan(inches(30.0), inches(60.0), inches(1.5));
        assert_relative_eq!(pan.get::<gallon>(), 11.7, max_relative = 0.005);
        let time = floor::time_to_fill(pan, typical(3.0 * ton())).unwrap();
        assert_relative_eq!(time.likely.get::<hour>(), 10.4, max_relative = 0.01);
    }

    #[test]
    fn no_cooling_makes_no_water() {
        assert_eq!(typical(Power::default()).high, VolumeRate::default());
        assert!(by_latent(ton(), 1.2).is_err());
        assert!(least_drain(300.0 * ton()).is_err());
    }
}
