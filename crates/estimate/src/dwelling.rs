//! The load of a whole dwelling, as the electrical code reckons it.
//!
//! The code counts volt-amperes; they stand here as [`Power`], at power factor 1. Rooms are floor
//! area by outside dimensions. Editions move the sections about and change some figures: those here
//! are of the 2017 and 2020 NEC, and what is adopted locally governs.

use uom::si::area::square_foot;
use uom::si::electric_potential::volt;
use uom::si::f64::{Area, ElectricCurrent, ElectricPotential, Power};
use uom::si::power::watt;

/// A one-family dwelling.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Dwelling {
    /// Floor area, by outside dimensions.
    pub area: Area,
    /// Small-appliance branch circuits; the code counts two at least.
    pub small_appliance_circuits: u32,
    /// Laundry circuits.
    pub laundry_circuits: u32,
    /// Electric range, by its plate.
    pub range: Option<Power>,
    /// Electric clothes dryer, by its plate.
    pub dryer: Option<Power>,
    /// Other appliances that are fastened in place, by their plates; for the optional method also
    /// ovens and cooktops.
    pub fastened: Vec<Power>,
    /// Air conditioning or heating, whichever is larger.
    pub climate: Power,
}

impl Dwelling {
    /// Lighting, small appliances and laundry before any allowance.
    ///
    /// Source: NEC 220.12, 220.52: 3 VA for each square foot, 1500 VA for each circuit.
    #[must_use]
    pub fn general(&self) -> Power {
        let circuits = self.small_appliance_circuits.max(2) + self.laundry_circuits;
        self.lighting() + Power::new::<watt>(1500.0) * f64::from(circuits)
    }

    /// General lighting alone.
    #[must_use]
    pub fn lighting(&self) -> Power {
        Power::new::<watt>(3.0 * self.area.get::<square_foot>())
    }

    /// [`general`](Self::general) after the allowance that not all of it runs at once.
    ///
    /// Source: NEC table 220.42: 3 000 VA in full, 35 % as far as 120 000, 25 % beyond.
    #[must_use]
    pub fn general_demand(&self) -> Power {
        let steps = [(3_000.0, 1.0), (117_000.0, 0.35), (f64::INFINITY, 0.25)];
        first_then(self.general(), &steps)
    }

    /// Service load by the standard method, without the allowance for fastened appliances.
    ///
    /// Fastened appliances count in full, which the code allows to be cut to 75 % from four on:
    /// errs high.
    ///
    /// Source: NEC 220.42, 220.54, table 220.55 column C; example D1(a) of Annex D.
    #[must_use]
    pub fn standard(&self) -> Power {
        self.general_demand()
            + self.range.map_or_else(Power::default, range_demand)
            + self.dryer.map_or_else(Power::default, dryer_demand)
            + sum(&self.fastened)
            + self.climate
    }

    /// Neutral load by the standard method: range and dryer count for 70 %, what is fastened and
    /// the climate as if all ran at 240 V without a neutral.
    ///
    /// Source: NEC 220.61; example D1(a). Errs low if fastened appliances run at 120 V.
    #[must_use]
    pub fn neutral(&self) -> Power {
        self.general_demand()
            + 0.7 * self.range.map_or_else(Power::default, range_demand)
            + 0.7 * self.dryer.map_or_else(Power::default, dryer_demand)
    }

    /// Service load by the optional method, for services of 100 A and more.
    ///
    /// Everything by its plate: the first 10 kVA in full, of the rest 40 %; the climate in full, as
    /// for air conditioning.
    ///
    /// Source: NEC 220.82; example D2(b).
    #[must_use]
    pub fn optional(&self) -> Power {
        let plates = self.general()
            + self.range.unwrap_or_default()
            + self.dryer.unwrap_or_default()
            + sum(&self.fastened);
        first_then(plates, &[(10_000.0, 1.0), (f64::INFINITY, 0.4)]) + self.climate
    }

    /// Lighting circuits of `rating` amperes that the area asks for, at 120 V.
    ///
    /// Source: NEC 210.11(A); example D1(a).
    #[must_use]
    pub fn lighting_circuits(&self, rating: ElectricCurrent) -> f64 {
        let each = rating * ElectricPotential::new::<volt>(120.0);
        f64::from(self.lighting() / each).ceil()
    }
}

/// Current of a service at `load`: 240 V, single phase. The code rounds it to the whole ampere.
#[must_use]
pub fn service_current(load: Power) -> ElectricCurrent {
    load / ElectricPotential::new::<volt>(240.0)
}

/// What one household range counts for: 8 kVA up to 12 kW, 5 % more for each kilowatt above.
///
/// Source: NEC table 220.55, column C and note 1. Holds from 8.75 to 27 kW; a smaller range errs
/// high.
fn range_demand(plate: Power) -> Power {
    let kilowatts_above = (plate.get::<watt>() / 1000.0 - 12.0).max(0.0).round();
    Power::new::<watt>(8000.0 * (1.0 + 0.05 * kilowatts_above))
}

/// What a dryer counts for: its plate, 5 kVA at least. Source: NEC 220.54.
fn dryer_demand(plate: Power) -> Power {
    plate.max(Power::new::<watt>(5000.0))
}

/// `load` by steps: so many watts at such a share, then the next.
fn first_then(load: Power, steps: &[(f64, f64)]) -> Power {
    let mut left = load.get::<watt>();
    let mut counted = 0.0;
    for &(width, share) in steps {
        let here = left.min(width);
        counted += here * share;
        left -= here;
    }
    Power::new::<watt>(counted)
}

fn sum(powers: &[Power]) -> Power {
    powers.iter().fold(Power::default(), |sum, &power| sum + power)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn house(square_feet: f64) -> Dwelling {
        Dwelling {
            area: Area::new::<square_foot>(square_feet),
            small_appliance_circuits: 2,
            laundry_circuits: 1,
            ..Dwelling::default()
        }
    }

    #[test]
    fn a_mansion_passes_all_three_steps() {
        // 3 VA x 60 000 = 180 000, with circuits 184 500: 3 000 + 40 950 + 16 125.
        assert_relative_eq!(
            house(60_000.0).standard().get::<watt>(),
            60_075.0,
            max_relative = 1e-9
        );
    }

    #[test]
    fn a_large_range_counts_for_more() {
        let demand =
            |kilowatts: f64| range_demand(Power::new::<watt>(1000.0 * kilowatts)).get::<watt>();
        assert_relative_eq!(demand(12.0), 8000.0);
        // Example D2 text in the code: 16.5 kW counts for 8 kW and 25 %.
        assert_relative_eq!(demand(16.5), 10_000.0);
    }

    #[test]
    fn one_small_appliance_circuit_counts_as_two() {
        let one = Dwelling { small_appliance_circuits: 1, ..house(1500.0) };
        assert_eq!(one.general(), house(1500.0).general());
    }

    #[test]
    fn a_small_dryer_counts_for_five_thousand() {
        let small = Dwelling { dryer: Some(Power::new::<watt>(3000.0)), ..house(1500.0) };
        let more = small.standard() - house(1500.0).standard();
        assert_relative_eq!(more.get::<watt>(), 5000.0, max_relative = 1e-9);
    }
}
