//! Moist air: how much water it carries and at what point it lets it go.
//!
//! All states are at a total pressure, [`sea_level`] where nobody knows better. Water content is
//! mass of vapour for each mass of dry air. Air is taken as a perfect gas, which errs low by half a
//! percent at saturation.

use uom::si::available_energy::kilojoule_per_kilogram;
use uom::si::f64::{AvailableEnergy, Pressure, SpecificVolume, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::specific_volume::cubic_meter_per_kilogram;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use crate::Refused;

/// Moist air at rest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// Temperature, read on a dry bulb.
    pub temperature: ThermodynamicTemperature,
    /// Mass of vapour for each mass of dry air.
    pub water: f64,
    /// Total pressure.
    pub pressure: Pressure,
}

/// Pressure of the standard atmosphere at sea level: 101 325 Pa, 14.696 psi.
#[must_use]
pub fn sea_level() -> Pressure {
    Pressure::new::<pascal>(101_325.0)
}

/// Pressure of water vapour over water, or over ice below the triple point.
///
/// Holds from -100 to 200 °C, within 0.03 % of measurement.
///
/// Source: Hyland and Wexler 1983, as in ASHRAE Fundamentals 2017, ch. 1, equations 5 and 6.
///
/// # Errors
///
/// [`Refused::OutOfRange`] beyond those temperatures.
pub fn saturation_pressure(temperature: ThermodynamicTemperature) -> Result<Pressure, Refused> {
    let celsius = temperature.get::<degree_celsius>();
    Refused::unless_between("temperature in °C", celsius, -100.0, 200.0)?;
    let t = temperature.get::<kelvin>();
    let ln = if celsius <= 0.01 {
        -5.674_535_9e3 / t + 6.392_524_7 - 9.677_843e-3 * t
            + 6.221_570_1e-7 * t.powi(2)
            + 2.074_782_5e-9 * t.powi(3)
            - 9.484_024e-13 * t.powi(4)
            + 4.163_501_9 * t.ln()
    } else {
        -5.800_220_6e3 / t + 1.391_499_3 - 4.864_023_9e-2 * t + 4.176_476_8e-5 * t.powi(2)
            - 1.445_209_3e-8 * t.powi(3)
            + 6.545_967_3 * t.ln()
    };
    Ok(Pressure::new::<pascal>(ln.exp()))
}

impl Air {
    /// Air of a relative humidity from 0 to 1.
    ///
    /// Source: ASHRAE Fundamentals 2017, ch. 1, W = 0.621945·pw/(p - pw).
    ///
    /// # Errors
    ///
    /// [`Refused::OutOfRange`] for a humidity or temperature that air does not have.
    pub fn at_humidity(
        temperature: ThermodynamicTemperature,
        relative: f64,
        pressure: Pressure,
    ) -> Result<Self, Refused> {
        let relative = Refused::unless_between("relative humidity", relative, 0.0, 1.0)?;
        let vapour = relative * saturation_pressure(temperature)?;
        Ok(Self { temperature, water: water_of(vapour, pressure)?, pressure })
    }

    /// Air that a sling of two thermometers reads `dry` and `wet`.
    ///
    /// Holds above freezing; below, the wet bulb may carry ice.
    ///
    /// Source: ASHRAE Fundamentals 2017, ch. 1, equation 33:
    /// W = ((2501 - 2.326 t*)·Ws* - 1.006 (t - t*))/(2501 + 1.86 t - 4.186 t*).
    ///
    /// # Errors
    ///
    /// [`Refused::WetBulbAboveDryBulb`], or [`Refused::OutOfRange`] for a wet bulb below freezing
    /// or too low to be true.
    pub fn at_wet_bulb(
        dry: ThermodynamicTemperature,
        wet: ThermodynamicTemperature,
        pressure: Pressure,
    ) -> Result<Self, Refused> {
        if wet > dry {
            return Err(Refused::WetBulbAboveDryBulb);
        }
        let (t, star) = (dry.get::<degree_celsius>(), wet.get::<degree_celsius>());
        Refused::unless_between("wet bulb in °C", star, 0.0, 100.0)?;
        let saturated = water_of(saturation_pressure(wet)?, pressure)?;
        let water = ((2501.0 - 2.326 * star) * saturated - 1.006 * (t - star))
            / (2501.0 + 1.86 * t - 4.186 * star);
        Refused::unless_between("water content by these bulbs", water, 0.0, 1.0)?;
        Ok(Self { temperature: dry, water, pressure })
    }

    /// Saturated air.
    ///
    /// # Errors
    ///
    /// [`Refused::OutOfRange`] beyond -100 to 200 °C, or where water boils.
    pub fn saturated(
        temperature: ThermodynamicTemperature,
        pressure: Pressure,
    ) -> Result<Self, Refused> {
        Self::at_humidity(temperature, 1.0, pressure)
    }

    /// Pressure of the vapour in it.
    #[must_use]
    pub fn vapour_pressure(self) -> Pressure {
        self.pressure * (self.water / (VAPOUR_TO_AIR + self.water))
    }

    /// Relative humidity, from 0 to 1 (more if it is fog).
    ///
    /// # Errors
    ///
    /// [`Refused::OutOfRange`] beyond -100 to 200 °C.
    pub fn relative_humidity(self) -> Result<f64, Refused> {
        Ok(f64::from(self.vapour_pressure() / saturation_pressure(self.temperature)?))
    }

    /// Temperature at which it begins to let water go.
    ///
    /// By halving between -100 and 200 °C until a millionth of a degree. Cost: 50 evaluations.
    ///
    /// # Errors
    ///
    /// [`Refused::OutOfRange`] if it is drier than any dew point.
    pub fn dew_point(self) -> Result<ThermodynamicTemperature, Refused> {
        let vapour = self.vapour_pressure();
        let (mut low, mut high) = (-100.0, 200.0);
        let least = saturation_pressure(ThermodynamicTemperature::new::<degree_celsius>(low))?;
        let from = least.get::<pascal>();
        Refused::unless_between("vapour pressure in Pa", vapour.get::<pascal>(), from, 1.5e6)?;
        while high - low > 1e-6 {
            let middle = f64::midpoint(low, high);
            let there = ThermodynamicTemperature::new::<degree_celsius>(middle);
            if saturation_pressure(there)? < vapour { low = middle } else { high = middle }
        }
        Ok(ThermodynamicTemperature::new::<degree_celsius>(high))
    }

    /// Heat content for each mass of dry air, above dry air and liquid water at 0 °C.
    ///
    /// Tables in Btu/lb count from 0 °F: theirs is h/2.326 + 7.687.
    ///
    /// Source: ASHRAE Fundamentals 2017, ch. 1, h = 1.006 t + W (2501 + 1.86 t).
    #[must_use]
    pub fn enthalpy(self) -> AvailableEnergy {
        let t = self.temperature.get::<degree_celsius>();
        AvailableEnergy::new::<kilojoule_per_kilogram>(1.006 * t + self.water * (2501.0 + 1.86 * t))
    }

    /// Volume for each mass of dry air.
    ///
    /// Source: ASHRAE Fundamentals 2017, ch. 1, v = R·T·(1 + 1.607858 W)/p with R = 287.042 J/(kg
    /// K).
    #[must_use]
    pub fn specific_volume(self) -> SpecificVolume {
        let volume = 287.042 * self.temperature.get::<kelvin>() * (1.0 + 1.607_858 * self.water)
            / self.pressure.get::<pascal>();
        SpecificVolume::new::<cubic_meter_per_kilogram>(volume)
    }
}

/// Molar mass of water over that of dry air.
const VAPOUR_TO_AIR: f64 = 0.621_945;

fn water_of(vapour: Pressure, pressure: Pressure) -> Result<f64, Refused> {
    // At nine tenths of the total the air boils off as steam: no household air is near it.
    let share = f64::from(vapour / pressure);
    Refused::unless_between("vapour pressure over total", share, 0.0, 0.9)?;
    Ok(VAPOUR_TO_AIR * share / (1.0 - share))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    #[test]
    fn ice_and_water_meet_at_the_triple_point() {
        let below = saturation_pressure(celsius(0.01)).unwrap();
        let above = saturation_pressure(celsius(0.010_001)).unwrap();
        assert_relative_eq!(below.value, above.value, max_relative = 1e-4);
        assert_relative_eq!(below.value, 611.657, max_relative = 1e-3);
    }

    #[test]
    fn water_boils_at_a_hundred_degrees() {
        let boiling = saturation_pressure(celsius(99.97)).unwrap();
        assert_relative_eq!(boiling.value, 101_325.0, max_relative = 1e-3);
    }

    #[test]
    fn saturated_air_is_at_its_dew_point_and_wet_bulb() {
        for degrees in [1.0, 10.0, 25.0, 40.0] {
            let air = Air::saturated(celsius(degrees), sea_level()).unwrap();
            let dew = air.dew_point().unwrap();
            assert_relative_eq!(dew.get::<degree_celsius>(), degrees, epsilon = 1e-4);
            assert_relative_eq!(air.relative_humidity().unwrap(), 1.0, max_relative = 1e-9);
            let slung = Air::at_wet_bulb(celsius(degrees), celsius(degrees), sea_level()).unwrap();
            assert_relative_eq!(slung.water, air.water, max_relative = 1e-9);
        }
    }

    #[test]
    fn bulbs_that_cannot_be_are_refused() {
        let (warm, cool) = (celsius(25.0), celsius(18.0));
        assert_eq!(Air::at_wet_bulb(cool, warm, sea_level()), Err(Refused::WetBulbAboveDryBulb));
        // Drier than dry.
        assert!(Air::at_wet_bulb(celsius(45.0), celsius(5.0), sea_level()).is_err());
        assert!(Air::at_humidity(warm, 1.2, sea_level()).is_err());
        assert!(Air::saturated(celsius(99.9), sea_level()).is_err());
        assert!(saturation_pressure(celsius(300.0)).is_err());
        let bone_dry = Air { temperature: warm, water: 0.0, pressure: sea_level() };
        assert!(bone_dry.dew_point().is_err());
    }
}
