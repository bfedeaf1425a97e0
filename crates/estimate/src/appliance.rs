//! What household appliances draw, where nobody has read the plate.

use uom::si::f64::Power;
use uom::si::power::watt;

use crate::Range;

/// An appliance of which a published list gives the power.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Appliance {
    /// A ceiling fan.
    CeilingFan,
    /// A coffee maker.
    CoffeeMaker,
    /// A clothes dryer, electric.
    ClothesDryer,
    /// A clothes washer, without heating its own water.
    ClothesWasher,
    /// A dehumidifier.
    Dehumidifier,
    /// A dishwasher; the most is with its drying heater on.
    Dishwasher,
    /// The fan of a furnace.
    FurnaceFan,
    /// A hair dryer.
    HairDryer,
    /// A clothes iron.
    Iron,
    /// A microwave oven.
    Microwave,
    /// A portable heater.
    PortableHeater,
    /// A refrigerator; it runs a third of the time.
    Refrigerator,
    /// A toaster.
    Toaster,
    /// A vacuum cleaner.
    VacuumCleaner,
    /// A water heater of 40 gal, electric.
    WaterHeater,
}

/// Power of an appliance while it runs; the plate on the appliance is to be believed instead.
///
/// The middle of the published span is taken as likely. Motors draw several times as much for a
/// moment when they start. Older appliances than the list (before 2010) may draw more.
///
/// Source: US Department of Energy, list of appliance wattages.
///
/// ```
/// use quarterturn_estimate::appliance::{Appliance, power};
/// use quarterturn_estimate::si::power::watt;
///
/// assert!((power(Appliance::HairDryer).high.get::<watt>() - 1875.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn power(appliance: Appliance) -> Range<Power> {
    let (low, high) = match appliance {
        Appliance::CeilingFan => (65.0, 175.0),
        Appliance::CoffeeMaker => (900.0, 1200.0),
        Appliance::ClothesDryer => (1800.0, 5000.0),
        Appliance::ClothesWasher => (350.0, 500.0),
        Appliance::Dehumidifier => (785.0, 785.0),
        Appliance::Dishwasher => (1200.0, 2400.0),
        Appliance::FurnaceFan => (750.0, 750.0),
        Appliance::HairDryer => (1200.0, 1875.0),
        Appliance::Iron => (1000.0, 1800.0),
        Appliance::Microwave => (750.0, 1100.0),
        Appliance::PortableHeater => (750.0, 1500.0),
        Appliance::Refrigerator => (725.0, 725.0),
        Appliance::Toaster => (800.0, 1400.0),
        Appliance::VacuumCleaner => (1000.0, 1440.0),
        Appliance::WaterHeater => (4500.0, 5500.0),
    };
    Range::new(low, f64::midpoint(low, high), high).map(Power::new::<watt>)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_heats_draws_more_than_what_turns() {
        for heats in [Appliance::HairDryer, Appliance::Iron, Appliance::Toaster] {
            for turns in [Appliance::CeilingFan, Appliance::ClothesWasher] {
                assert!(power(heats).low > power(turns).high, "{heats:?} {turns:?}");
            }
        }
    }
}
