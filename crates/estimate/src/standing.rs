//! Water that still runs out after the source is shut: what pipes and tanks hold, and how long it
//! takes to leave.

use std::f64::consts::PI;

use uom::si::acceleration::meter_per_second_squared;
use uom::si::f64::{Acceleration, Area, Length, Time, Volume};
use uom::si::length::inch;

use crate::{Range, Refused};

/// Kind of pipe, which with the nominal size gives the bore.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pipe {
    /// Copper tube, type K.
    CopperK,
    /// Copper tube, type L.
    CopperL,
    /// Copper tube, type M.
    CopperM,
    /// Cross-linked polyethylene tube, SDR-9.
    Pex,
    /// PVC drain pipe, schedule 40.
    PvcDrain,
}

/// A body of water between two heights: a riser, a branch under the floor, a tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Column {
    /// Height of its lowest point.
    pub bottom: Length,
    /// Height of its highest point.
    pub top: Length,
    /// What it holds.
    pub holds: Volume,
}

/// Whether air can get in above the water.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Air {
    /// A tap above is open, or the tank has a vent or a dip tube with its hole.
    GetsIn,
    /// Everything above is shut.
    Unknown,
}

/// Bore of a pipe by its nominal size.
///
/// Sources: copper K and L, Copper Tube Handbook of the Copper Development Association (ASTM B88);
/// M, a dictionary of pipe sizes; PEX, supplier's sheet to ASTM F876 (nominal wall, real bores are
/// 1 to 3 % narrower, so contents err high by 3 to 5 %); PVC, schedule 40 dimensions.
///
/// Cost: one short table.
///
/// # Errors
///
/// [`Refused::UnknownSize`] if the table has no such size.
pub fn bore(pipe: Pipe, nominal: Length) -> Result<Length, Refused> {
    let inches = nominal.get::<inch>();
    pipe.bores()
        .iter()
        .find(|(size, _)| (size - inches).abs() < 0.01)
        .map(|&(_, bore)| Length::new::<inch>(bore))
        .ok_or(Refused::UnknownSize { kind: pipe.name(), inches })
}

/// Nominal size in words, such as `3/4 in`, `1-1/2 in` or `22 mm`; `None` if it is not one.
///
/// ```
/// use quarterturn_estimate::{si::length::inch, standing};
///
/// let size = standing::nominal("1-1/2 in").unwrap();
/// assert!((size.get::<inch>() - 1.5).abs() < 1e-12);
/// assert_eq!(standing::nominal("large"), None);
/// ```
#[must_use]
pub fn nominal(text: &str) -> Option<Length> {
    let text = text.trim();
    if let Some(millimetres) = text.strip_suffix("mm") {
        let millimetres: f64 = millimetres.trim().parse().ok()?;
        return sensible(Length::new::<uom::si::length::millimeter>(millimetres));
    }
    let inches = text
        .strip_suffix("inch")
        .or_else(|| text.strip_suffix("in."))
        .or_else(|| text.strip_suffix("in"))
        .or_else(|| text.strip_suffix('"'))?;
    let mut sum = 0.0;
    for part in inches.split([' ', '-']).filter(|part| !part.is_empty()) {
        sum += match part.split_once('/') {
            Some((above, below)) => above.parse::<f64>().ok()? / below.parse::<f64>().ok()?,
            None => part.parse::<f64>().ok()?,
        };
    }
    sensible(Length::new::<inch>(sum))
}

/// What a full round pipe holds.
///
/// Source: geometry.
#[must_use]
pub fn held(bore: Length, length: Length) -> Volume {
    held_per_length(bore) * length.max(Length::default())
}

/// What a full round pipe holds for each unit of length; volume by length is an area.
#[must_use]
pub fn held_per_length(bore: Length) -> Area {
    PI / 4.0 * bore * bore
}

/// What still drains out at the height `leak` once every source is shut.
///
/// Only water above the leak runs out by itself, in proportion to height within a [`Column`]; a
/// leak is taken to be reached by all columns given. Where air gets in all of that comes; where
/// everything above is shut, part of it hangs, or nothing comes: the likely figure is then one
/// half. High errs high if a check valve or a dip keeps a column back.
///
/// Source: engineering practice. Cost: O(columns).
#[must_use]
pub fn still_drains(columns: &[Column], leak: Length, air: Air) -> Range<Volume> {
    let above = columns
        .iter()
        .map(|column| column.share_above(leak) * column.holds)
        .fold(Volume::default(), |sum, part| sum + part);
    match air {
        Air::GetsIn => Range::exactly(above),
        Air::Unknown => Range::new(Volume::default(), 0.5 * above, above),
    }
}

/// Time for water of free `surface` to sink from `from` to `to` above a round `hole`.
///
/// Torricelli: the jet is √(2gh), less the coefficient of discharge. The surface is the same at
/// every height (an upright tank), air gets in freely, and hoses and fittings are left out: errs
/// short, by half or more through a garden hose. `None` if the level does not sink or there is no
/// hole.
///
/// Source: textbook, t = 2A/(Cd·a·√(2g))·(√h1 - √h2).
#[must_use]
pub fn drain_time(
    surface: Area,
    from: Length,
    to: Length,
    hole: Length,
    discharge: f64,
) -> Option<Time> {
    let none = Length::default();
    if to < none || from <= to || hole <= none || discharge <= 0.0 {
        return None;
    }
    let gravity = Acceleration::new::<meter_per_second_squared>(9.806_65);
    let fall = (2.0 * from / gravity).sqrt() - (2.0 * to / gravity).sqrt();
    Some(surface / (discharge * held_per_length(hole)) * fall)
}

impl Pipe {
    /// Nominal size and bore, in inches.
    fn bores(self) -> &'static [(f64, f64)] {
        match self {
            Self::CopperK => &[
                (0.375, 0.402),
                (0.5, 0.527),
                (0.75, 0.745),
                (1.0, 0.995),
                (1.25, 1.245),
                (1.5, 1.481),
                (2.0, 1.959),
            ],
            Self::CopperL => &[
                (0.375, 0.430),
                (0.5, 0.545),
                (0.75, 0.785),
                (1.0, 1.025),
                (1.25, 1.265),
                (1.5, 1.505),
                (2.0, 1.985),
            ],
            Self::CopperM => &[
                (0.375, 0.450),
                (0.5, 0.569),
                (0.75, 0.811),
                (1.0, 1.055),
                (1.25, 1.291),
                (1.5, 1.527),
                (2.0, 2.009),
            ],
            Self::Pex => {
                &[(0.375, 0.360), (0.5, 0.485), (0.625, 0.584), (0.75, 0.681), (1.0, 0.875)]
            }
            Self::PvcDrain => &[(1.5, 1.590), (2.0, 2.047), (3.0, 3.042), (4.0, 3.998)],
        }
    }

    fn name(self) -> &'static str {
        match self {
            Self::CopperK => "copper type K",
            Self::CopperL => "copper type L",
            Self::CopperM => "copper type M",
            Self::Pex => "PEX",
            Self::PvcDrain => "PVC drain pipe",
        }
    }
}

impl Column {
    /// Share of its water above `height`; a level pipe is above or it is not.
    fn share_above(&self, height: Length) -> f64 {
        let (bottom, top) = (self.bottom.min(self.top), self.bottom.max(self.top));
        if height <= bottom {
            1.0
        } else if height >= top {
            0.0
        } else {
            f64::from((top - height) / (top - bottom))
        }
    }
}

/// Sizes that a house can have.
fn sensible(size: Length) -> Option<Length> {
    (size.get::<inch>() > 0.0 && size.get::<inch>() <= 24.0).then_some(size)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::length::{foot, meter, millimeter};
    use uom::si::time::minute;
    use uom::si::volume::{gallon, liter};

    fn run(feet: f64, inches: f64) -> Volume {
        let bore = bore(Pipe::CopperL, Length::new::<inch>(inches)).unwrap();
        held(bore, Length::new::<foot>(feet))
    }

    #[test]
    fn forty_feet_of_three_quarter_and_twenty_five_of_half() {
        let sum = run(40.0, 0.75) + run(25.0, 0.5);
        assert_relative_eq!(sum.get::<gallon>(), 1.31, max_relative = 0.005);
        assert_relative_eq!(sum.get::<liter>(), 4.95, max_relative = 0.005);
    }

    #[test]
    fn type_l_holds_so_many_litres_a_metre() {
        let table = [(0.375, 0.094), (0.5, 0.150), (0.75, 0.312), (1.0, 0.532), (2.0, 1.996)];
        for (size, litres) in table {
            let bore = bore(Pipe::CopperL, Length::new::<inch>(size)).unwrap();
            let metre = held(bore, Length::new::<meter>(1.0));
            assert_relative_eq!(metre.get::<liter>(), litres, max_relative = 0.005);
        }
    }

    #[test]
    fn sizes_are_read_as_people_write_them() {
        for (text, inches) in [
            ("3/4 in", 0.75),
            ("1-1/2 in", 1.5),
            ("1 1/4 inch", 1.25),
            ("2\"", 2.0),
            ("0.5 in.", 0.5),
        ] {
            let size = nominal(text).unwrap();
            assert_relative_eq!(size.get::<inch>(), inches, max_relative = 1e-12);
        }
        assert_relative_eq!(nominal("22 mm").unwrap().get::<millimeter>(), 22.0);
        for text in ["", "in", "3/4", "3/0 in", "-1 mm", "3/x in", "nan in", "900 in"] {
            assert_eq!(nominal(text), None, "{text}");
        }
    }

    #[test]
    fn a_size_out_of_the_table_is_refused() {
        let refused = bore(Pipe::Pex, Length::new::<inch>(2.0)).unwrap_err();
        assert!(refused.to_string().starts_with("no PEX of 2 in"), "{refused}");
    }

    #[test]
    fn only_what_stands_above_the_leak_drains() {
        let metres = Length::new::<meter>;
        let tank =
            Column { bottom: metres(0.0), top: metres(1.5), holds: Volume::new::<liter>(150.0) };
        let attic =
            Column { bottom: metres(5.0), top: metres(5.0), holds: Volume::new::<liter>(3.0) };
        let cellar =
            Column { bottom: metres(-2.0), top: metres(-2.0), holds: Volume::new::<liter>(9.0) };
        let all = [tank, attic, cellar];
        let open = still_drains(&all, metres(0.5), Air::GetsIn);
        assert_relative_eq!(open.likely.get::<liter>(), 103.0, max_relative = 1e-9);
        assert_eq!(open.low, open.high);
        let shut = still_drains(&all, metres(0.5), Air::Unknown);
        assert_eq!(shut.high, open.high);
        assert_eq!(shut.low, Volume::default());
    }

    /// Water heater makers say: about 1 gal a minute through the cock and a hose, 40 gal in 40 min.
    #[test]
    fn a_tank_drains_no_slower_than_its_maker_says() {
        let tall = Length::new::<foot>(4.0);
        let surface = Volume::new::<gallon>(40.0) / tall;
        let hole = Length::new::<inch>(0.375);
        let time = drain_time(surface, tall, Length::default(), hole, 0.61).unwrap();
        assert!((15.0..40.0).contains(&time.get::<minute>()), "{time:?}");
    }

    #[test]
    fn the_first_half_of_a_tank_leaves_sooner_than_the_second() {
        let metres = Length::new::<meter>;
        let surface = Volume::new::<liter>(100.0) / metres(1.0);
        let time = |from, to| drain_time(surface, metres(from), metres(to), metres(0.01), 0.61);
        let (whole, top, rest) =
            (time(1.0, 0.0).unwrap(), time(1.0, 0.5).unwrap(), time(0.5, 0.0).unwrap());
        assert!(top < rest);
        assert_relative_eq!((top + rest).value, whole.value, max_relative = 1e-12);
        assert_eq!(time(0.5, 0.5), None);
        assert_eq!(time(0.5, -0.5), None);
    }
}
