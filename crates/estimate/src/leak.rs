//! How fast water leaves a break in a pressurised pipe, hose or joint.
//!
//! A hole alone would let out what an orifice does; a full break lets out no more than the line
//! before it can bring. So a leak is the smaller of the two.

use std::f64::consts::PI;

use uom::si::f64::{Frequency, Length, MassDensity, Pressure, Volume, VolumeRate};
use uom::si::frequency::hertz;
use uom::si::length::{foot, inch};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::psi;
use uom::si::volume::milliliter;
use uom::si::volume_rate::{gallon_per_day, gallon_per_minute};

use crate::Range;

/// Discharge coefficient of a sharp-edged hole, such as a split in a pipe wall.
///
/// Source: textbook value, 0.60 to 0.62; tables of three water utilities imply 0.61 to 0.63.
pub const SHARP_EDGE: f64 = 0.61;

/// Discharge coefficient of a short tube, such as a pipe broken off at a fitting.
///
/// Source: textbook value, from memory.
pub const SHORT_TUBE: f64 = 0.8;

/// Roughness coefficient of copper tube and plastic pipe in the formula of Hazen and Williams.
///
/// Source: 150 for copper and plastic in tables that go with NFPA 13; 140 leaves room for fittings.
pub const SMOOTH_PIPE: f64 = 140.0;

/// What broke.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Source {
    /// A joint, packing or tap that drips.
    DrippingJoint,
    /// A toilet whose tank runs into the bowl.
    RunningToilet,
    /// A toilet's fill valve that stays open, onto the floor when the bowl is blocked.
    ToiletFill,
    /// A pinhole in a pipe.
    Pinhole,
    /// A split hose to a tap or toilet.
    SplitHose,
    /// A washing machine's hose, burst.
    WasherHose,
    /// A water heater's tank that leaks.
    HeaterTank,
    /// A 1/2 in pipe, broken across.
    BurstHalfInch,
    /// A 3/4 in pipe, broken across.
    BurstThreeQuarterInch,
    /// A 1 in pipe before the meter, such as the service line, broken across.
    BurstOneInch,
}

/// A line of which it is known what it brings when open at the end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// What it brings …
    pub flow: VolumeRate,
    /// … at this pressure.
    pub at: Pressure,
}

/// Flow through a round hole `diameter` wide with `gauge` pressure behind it.
///
/// The jet leaves at √(2p/ρ); `discharge`, from 0 to 1, takes off what the edge costs. Pipe
/// friction is left out, so it errs high for holes that are not small against the pipe: put
/// [`capped`] after it. A hole that opens with pressure (a split in plastic) grows faster than the
/// root: published exponents run from 0.4 to beyond 1. Suction gives zero.
///
/// Source: textbook; in US units 29.85·Cd·d²·√p, in fire-service handbooks 29.83 or 29.84.
///
/// ```
/// use quarterturn_estimate::si::{length::inch, pressure::psi, volume_rate::gallon_per_minute};
/// use quarterturn_estimate::{Length, Pressure, leak};
///
/// let hole = Length::new::<inch>(0.25);
/// let flow = leak::orifice(hole, leak::SHARP_EDGE, Pressure::new::<psi>(60.0));
/// assert!((8.7..8.9).contains(&flow.get::<gallon_per_minute>()));
/// ```
#[must_use]
pub fn orifice(diameter: Length, discharge: f64, gauge: Pressure) -> VolumeRate {
    let area = PI / 4.0 * diameter * diameter;
    let jet = (2.0 * gauge.max(Pressure::default()) / water_density()).sqrt();
    discharge * area * jet
}

/// What really comes out: no more than the hole passes, no more than the supply brings.
///
/// Errs high by up to a third where the two are about equal, since each is taken as if it were
/// alone.
#[must_use]
pub fn capped(hole: VolumeRate, supply: VolumeRate) -> VolumeRate {
    hole.min(supply)
}

/// What comes through two things in a row, each of which alone would bring so much at the pressure
/// they share.
///
/// Source: in both the loss goes with the square of the flow, and the losses add up.
#[must_use]
pub fn in_a_row(first: VolumeRate, second: VolumeRate) -> VolumeRate {
    let (less, more) = (first.min(second), first.max(second));
    if more > VolumeRate::default() {
        less / (1.0 + f64::from(less / more).powi(2)).sqrt()
    } else {
        VolumeRate::default()
    }
}

impl Supply {
    /// A washing machine's hose, burst: 650 gal/h at 70 psi.
    ///
    /// Source: insurers' guides to household water damage. One of them prints the same 650 gal/h as
    /// "six gpm", which is 360 gal/h.
    #[must_use]
    pub fn washer_hose() -> Self {
        Self {
            flow: VolumeRate::new::<gallon_per_minute>(650.0 / 60.0),
            at: Pressure::new::<psi>(70.0),
        }
    }

    /// A house's 5/8 in water meter: 20 gpm for a loss of 15 psi.
    ///
    /// Source: AWWA C700, safe maximum capacity and greatest loss allowed (from memory). Most meters
    /// lose less and so bring more.
    #[must_use]
    pub fn house_meter() -> Self {
        Self { flow: VolumeRate::new::<gallon_per_minute>(20.0), at: Pressure::new::<psi>(15.0) }
    }

    /// What the line brings at another pressure: k·√p.
    ///
    /// Holds for a line open at the end, in which friction goes about with the square of the flow.
    #[must_use]
    pub fn at(self, gauge: Pressure) -> VolumeRate {
        self.flow * (gauge.max(Pressure::default()) / self.at).sqrt()
    }
}

/// What a pipe of `bore` and `length`, open at the end, brings when all of `gauge` goes into
/// friction.
///
/// Fittings, meter, height and the jet's own speed are left out, so it errs high, the more the
/// shorter the pipe. Cold water in turbulent flow only.
///
/// Source: the formula of Hazen and Williams as NFPA 13 has it, p = 4.52·Q^1.85/(C^1.85·d^4.87) psi
/// for each foot, Q in gpm and d in inches.
#[must_use]
pub fn pipe_brings(bore: Length, length: Length, roughness: f64, gauge: Pressure) -> VolumeRate {
    let psi_per_foot = gauge.max(Pressure::default()).get::<psi>() / length.get::<foot>();
    let power = psi_per_foot * bore.get::<inch>().powf(4.87) / 4.52;
    VolumeRate::new::<gallon_per_minute>(roughness * power.powf(1.0 / 1.85))
}

/// What drips bring to, at so many drops a second.
///
/// Published drops are 0.25 and 0.33 mL (USGS); a rule of EPA, 3000 gal a year at one a second,
/// means 0.36 mL. Beyond some five a second drops join into a thread and this no longer holds.
#[must_use]
pub fn drip(drops: Frequency) -> Range<VolumeRate> {
    let per_drop = Range::new(0.25, 0.33, 0.36);
    per_drop
        .map(|millilitres| Volume::new::<milliliter>(millilitres) * drops.max(Frequency::default()))
}

/// Water pressure in a house that has not been measured: 40, 60 or 80 psi.
///
/// Source: common practice; 80 psi is where the IPC (604.8, from memory) asks for a reducing valve,
/// and utilities' leak tables are printed for 60.
#[must_use]
pub fn house_pressure() -> Range<Pressure> {
    Range::new(40.0, 60.0, 80.0).map(Pressure::new::<psi>)
}

/// Flow to reckon with before anyone has measured anything, at [`house_pressure`].
#[must_use]
pub fn typical(source: Source) -> Range<VolumeRate> {
    typical_at(source, house_pressure())
}

/// Flow to reckon with at a known pressure.
///
/// Sources: [`drip`] at 1/6, 1 and 5 drops a second; EPA (running toilet 200 gal a day) between
/// 30 gal a day and the open fill valve; IPC 2018 table 604.3 (toilet 3 gpm, one-piece 6 gpm);
/// [`Supply::washer_hose`]; the others are [`orifice`] for holes that are common practice
/// (pinhole 1/32, 1/16, 1/8 in; hose 1/8, 3/16, 1/4 in), and for a pipe broken across
/// [`pipe_brings`] over 100, 50 and 20 ft of the same pipe, inside the house [`in_a_row`] with its
/// meter. The lower figure goes with the lower pressure.
#[must_use]
pub fn typical_at(source: Source, gauge: Range<Pressure>) -> Range<VolumeRate> {
    let holes = |low: f64, likely: f64, high: f64| {
        let wide = Range::new(low, likely, high).map(Length::new::<inch>);
        wide.with(gauge, |wide, gauge| orifice(wide, SHARP_EDGE, gauge))
    };
    match source {
        Source::DrippingJoint => {
            let [slow, usual, fast] =
                [1.0 / 6.0, 1.0, 5.0].map(|each| drip(Frequency::new::<hertz>(each)));
            Range::new(slow.low, usual.likely, fast.high)
        }
        Source::RunningToilet => Range::new(
            VolumeRate::new::<gallon_per_day>(30.0),
            VolumeRate::new::<gallon_per_day>(200.0),
            VolumeRate::new::<gallon_per_minute>(3.0),
        ),
        Source::ToiletFill => Range::new(2.0, 3.0, 6.0).map(VolumeRate::new::<gallon_per_minute>),
        Source::Pinhole => holes(1.0 / 32.0, 1.0 / 16.0, 1.0 / 8.0),
        Source::SplitHose => holes(1.0 / 8.0, 3.0 / 16.0, 1.0 / 4.0),
        Source::WasherHose => gauge.map(|gauge| Supply::washer_hose().at(gauge)),
        Source::HeaterTank => {
            let weeping = drip(Frequency::new::<hertz>(1.0)).likely;
            let holes = holes(1.0 / 16.0, 1.0 / 16.0, 1.0 / 4.0);
            Range::new(weeping, holes.likely, holes.high)
        }
        Source::BurstHalfInch => metered(broken_across(0.545, gauge), gauge),
        Source::BurstThreeQuarterInch => metered(broken_across(0.785, gauge), gauge),
        Source::BurstOneInch => broken_across(1.025, gauge),
    }
}

/// What of `broken` comes through the house's meter.
fn metered(broken: Range<VolumeRate>, gauge: Range<Pressure>) -> Range<VolumeRate> {
    broken.with(gauge, |broken, gauge| in_a_row(broken, Supply::house_meter().at(gauge)))
}

/// A pipe of `bore` inches (copper type L), broken across: near the main at most, at its far end at
/// least.
fn broken_across(bore: f64, gauge: Range<Pressure>) -> Range<VolumeRate> {
    let bore = Length::new::<inch>(bore);
    let from = |feet: f64, gauge: Pressure| {
        let brings = pipe_brings(bore, Length::new::<foot>(feet), SMOOTH_PIPE, gauge);
        capped(orifice(bore, SHORT_TUBE, gauge), brings)
    };
    Range::new(from(100.0, gauge.low), from(50.0, gauge.likely), from(20.0, gauge.high))
}

/// Cold tap water at 20 °C.
fn water_density() -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(998.2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::f64::Time;
    use uom::si::time::day;
    use uom::si::volume::gallon;
    use uom::si::volume_rate::liter_per_minute;

    const SOURCES: [Source; 10] = [
        Source::DrippingJoint,
        Source::RunningToilet,
        Source::ToiletFill,
        Source::Pinhole,
        Source::SplitHose,
        Source::WasherHose,
        Source::HeaterTank,
        Source::BurstHalfInch,
        Source::BurstThreeQuarterInch,
        Source::BurstOneInch,
    ];

    #[test]
    fn suction_is_not_a_leak() {
        let suction = Pressure::new::<psi>(-3.0);
        let bore = Length::new::<inch>(1.0);
        assert_eq!(orifice(bore, SHARP_EDGE, suction), VolumeRate::default());
        assert_eq!(Supply::washer_hose().at(suction), VolumeRate::default());
        let brings = pipe_brings(bore, Length::new::<foot>(10.0), SMOOTH_PIPE, suction);
        assert_eq!(brings, VolumeRate::default());
    }

    #[test]
    fn a_broken_pipe_brings_less_than_its_bare_end_would_pass() {
        let gauge = Pressure::new::<psi>(60.0);
        let real = typical_at(Source::BurstHalfInch, Range::exactly(gauge));
        let bare = orifice(Length::new::<inch>(0.5), SHARP_EDGE, gauge);
        assert!(real.high < bare, "{real:?}");
        // The hose that insurers measured hangs at such a pipe.
        let hose = Supply::washer_hose().at(gauge);
        assert!(real.contains(hose), "{:?}", real.map(|f| f.get::<gallon_per_minute>()));
    }

    #[test]
    fn every_source_has_an_honest_range() {
        for source in SOURCES {
            let flow = typical(source);
            assert!(flow.low > VolumeRate::default(), "{source:?}");
            assert!(flow.low < flow.likely && flow.likely < flow.high, "{source:?}");
            assert!(flow.high.get::<liter_per_minute>() < 800.0, "{source:?}");
        }
        let likely = |source| typical(source).likely;
        assert!(likely(Source::DrippingJoint) < likely(Source::Pinhole));
        assert!(likely(Source::Pinhole) < likely(Source::SplitHose));
        assert!(likely(Source::SplitHose) < likely(Source::WasherHose));
        assert!(likely(Source::BurstHalfInch) < likely(Source::BurstThreeQuarterInch));
        assert!(likely(Source::BurstThreeQuarterInch) < likely(Source::BurstOneInch));
    }

    #[test]
    fn one_drop_a_second_is_thousands_of_gallons_a_year() {
        let year: Volume = drip(Frequency::new::<hertz>(1.0)).likely * Time::new::<day>(365.0);
        assert_relative_eq!(year.get::<gallon>(), 2749.0, max_relative = 0.01);
    }

    #[test]
    fn two_in_a_row_bring_less_than_either() {
        let gpm = VolumeRate::new::<gallon_per_minute>;
        assert_relative_eq!(in_a_row(gpm(3.0), gpm(4.0)).get::<gallon_per_minute>(), 2.4);
        let meter = Supply::house_meter().at(Pressure::new::<psi>(60.0));
        assert_relative_eq!(meter.get::<gallon_per_minute>(), 40.0, max_relative = 1e-9);
        assert_eq!(in_a_row(gpm(0.0), meter), VolumeRate::default());
        assert_eq!(in_a_row(gpm(0.0), gpm(0.0)), VolumeRate::default());
    }

    #[test]
    fn the_smaller_of_hole_and_supply_counts() {
        let [small, large] = [2.0, 9.0].map(VolumeRate::new::<gallon_per_minute>);
        assert_eq!(capped(small, large), small);
        assert_eq!(capped(large, small), small);
    }
}
