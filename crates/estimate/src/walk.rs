//! How long it takes to walk to a device.
//!
//! Published speeds disagree, on stairs by a factor of two (0.85 to 1.05 m/s in the fire handbook,
//! 0.47 m/s measured in evacuations), so a walk is a [`Range`] and the slow walker is the default.

use uom::si::f64::{Length, Time, Velocity};
use uom::si::length::inch;
use uom::si::time::second;
use uom::si::velocity::{foot_per_second, meter_per_second};

use crate::Range;

/// A way through the house.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Path {
    /// Distance on the level.
    pub level: Length,
    /// Height climbed on stairs, straight up.
    pub up: Length,
    /// Height descended on stairs, straight down.
    pub down: Length,
    /// Doors on the way that have to be opened.
    pub doors: u32,
}

/// Who walks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Profile {
    /// Someone who takes their time on stairs: the one to plan for.
    #[default]
    Slow,
    /// A grown-up without trouble walking.
    Usual,
}

/// Walking speeds, along the slope where there are stairs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Speeds {
    /// On the level.
    pub level: Velocity,
    /// Up stairs.
    pub up: Velocity,
    /// Down stairs.
    pub down: Velocity,
}

/// One step of a flight of stairs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stair {
    /// Height of a step.
    pub riser: Length,
    /// Depth of a step.
    pub tread: Length,
}

/// Time for `path`, walked by someone of `profile`, stairs taken as the steepest that the IRC
/// allows.
///
/// Holds for a known way with the light on and nobody in it. It leaves out getting up, shoes,
/// keys and the dark, and so errs low. Gentler stairs are longer but walked faster: by the speeds
/// of [`Speeds::sfpe`], at most 12 % more time for the same height. Heights below zero count as
/// none.
///
/// Source: the speeds of [`Profile::speeds`]; a door takes [`door_time`].
///
/// ```
/// use quarterturn_estimate::si::{length::meter, time::second};
/// use quarterturn_estimate::{Length, walk};
///
/// let cellar = walk::Path {
///     level: Length::new::<meter>(10.0),
///     down: Length::new::<meter>(2.7),
///     doors: 1,
///     ..walk::Path::default()
/// };
/// let time = walk::time(&cellar, walk::Profile::Slow);
/// assert!((15.0..30.0).contains(&time.likely.get::<second>()));
/// ```
#[must_use]
pub fn time(path: &Path, profile: Profile) -> Range<Time> {
    let walked = profile.speeds().map(|speeds| time_at(path, speeds, Stair::irc_steepest()));
    let doors = door_time() * f64::from(path.doors);
    Range::new(walked[0], walked[1], walked[2]) + doors
}

/// Time for `path` at given speeds, on given stairs, without its doors.
///
/// Stairs are walked along their slope; source of the geometry: SFPE Handbook of Fire Protection
/// Engineering, 5th ed., ch. 59 (conversion factors 1.67 to 2.24 by riser and tread).
#[must_use]
pub fn time_at(path: &Path, speeds: Speeds, stair: Stair) -> Time {
    let slope = stair.slope_per_height();
    let none = Length::default();
    path.level.max(none) / speeds.level
        + path.up.max(none) * slope / speeds.up
        + path.down.max(none) * slope / speeds.down
}

/// Time to open a door and go through: 1, 2 or 5 s.
///
/// Common practice; no publication found. A locked door takes longer.
#[must_use]
pub fn door_time() -> Range<Time> {
    Range::new(1.0, 2.0, 5.0).map(Time::new::<second>)
}

impl Profile {
    /// The speeds of this walker: quickest, likely, slowest.
    ///
    /// Usual: [`Speeds::imo`]; MUTCD on the level with the fire handbook's 7/11 stairs; the slow
    /// walker's likely speeds. Slow: MUTCD on the level with the fire handbook's steepest stairs;
    /// the slower walkers of the MUTCD, on stairs the mean that NIST measured; a mobility-impaired
    /// passenger of IMO MSC.1/Circ.1533 (0.37 m/s, from memory), on stairs one standard deviation
    /// below the NIST mean. Nobody published slow speeds up stairs: taken as 0.8 of those down, as
    /// IMO has it.
    #[must_use]
    pub fn speeds(self) -> [Speeds; 3] {
        let likely_slow =
            Speeds { level: Speeds::mutcd_slower(), ..stairs(Speeds::nist_stairs_down()) };
        match self {
            Self::Usual => [
                Speeds::imo(),
                Speeds { level: Speeds::mutcd(), ..Speeds::sfpe(Stair::new(7.0, 11.0)) },
                likely_slow,
            ],
            Self::Slow => [
                Speeds { level: Speeds::mutcd(), ..Speeds::sfpe(Stair::new(7.5, 10.0)) },
                likely_slow,
                Speeds {
                    level: Velocity::new::<meter_per_second>(0.37),
                    ..stairs(Velocity::new::<meter_per_second>(0.47 - 0.17))
                },
            ],
        }
    }
}

impl Speeds {
    /// Unhindered passengers: corridor 1.2 m/s, stairs up 0.8, stairs down 1.0.
    ///
    /// Source: IMO guidelines on evacuation analysis, tables 1.1 and 1.3 (low density). Written for
    /// ships and a mix of ages; errs fast for the frail.
    #[must_use]
    pub fn imo() -> Self {
        let [level, up, down] = [1.2, 0.8, 1.0].map(Velocity::new::<meter_per_second>);
        Self { level, up, down }
    }

    /// Fire handbook: 0.85 of the constant k, 1.40 on the level and 1.00 to 1.23 by the stairs.
    ///
    /// `k` between the four tabulated stairs goes by their slope, beyond them it stays. Holds for
    /// few people (0.54 per square metre or less); the same up and down.
    ///
    /// Source: SFPE Handbook, 5th ed., ch. 59, S = k - a k D with D = 0.54 (from memory).
    #[must_use]
    pub fn sfpe(stair: Stair) -> Self {
        /// Rise over tread, and k in m/s, steepest last.
        const TABLE: [(f64, f64); 4] =
            [(6.5 / 13.0, 1.23), (6.5 / 12.0, 1.16), (7.0 / 11.0, 1.08), (7.5 / 10.0, 1.00)];
        const LEVEL: f64 = 1.40;
        const FEW_PEOPLE: f64 = 0.85;
        let steepness = f64::from(stair.riser / stair.tread);
        let mut k = TABLE[0].1;
        for pair in TABLE.windows(2) {
            if let [(from, high), (to, low)] = pair {
                let share = ((steepness - from) / (to - from)).clamp(0.0, 1.0);
                k += share * (low - high);
            }
        }
        let speed = |k: f64| Velocity::new::<meter_per_second>(FEW_PEOPLE * k);
        Self { level: speed(LEVEL), up: speed(k), down: speed(k) }
    }

    /// Walking speed by which pedestrian signals are timed: 3.5 ft/s. Level only.
    ///
    /// Source: MUTCD 2009, section 4E.06.
    #[must_use]
    pub fn mutcd() -> Velocity {
        Velocity::new::<foot_per_second>(3.5)
    }

    /// Walking speed for the check with slower walkers: 3.0 ft/s. Level only.
    ///
    /// Source: MUTCD 2009, section 4E.06.
    #[must_use]
    pub fn mutcd_slower() -> Velocity {
        Velocity::new::<foot_per_second>(3.0)
    }

    /// Mean speed down stairs, measured in evacuations: 0.47 m/s (standard deviation 0.17).
    ///
    /// Source: NIST Technical Note 1839. Tall buildings, many people; errs slow at home.
    #[must_use]
    pub fn nist_stairs_down() -> Velocity {
        Velocity::new::<meter_per_second>(0.47)
    }
}

impl Stair {
    /// A stair of `riser` by `tread`, both in inches.
    #[must_use]
    pub fn new(riser: f64, tread: f64) -> Self {
        Self { riser: Length::new::<inch>(riser), tread: Length::new::<inch>(tread) }
    }

    /// The steepest stair in a new house: 7-3/4 in over 10 in.
    ///
    /// Source: IRC R311.7.5 (from memory). Old cellar stairs are steeper, hence shorter.
    #[must_use]
    pub fn irc_steepest() -> Self {
        Self::new(7.75, 10.0)
    }

    /// Length along the slope for one unit of height.
    #[must_use]
    pub fn slope_per_height(self) -> f64 {
        f64::from(self.riser.hypot(self.tread) / self.riser)
    }
}

/// Stair speeds with `down` given and up at 0.8 of it, as in [`Speeds::imo`]; also on the level.
fn stairs(down: Velocity) -> Speeds {
    Speeds { level: down, up: 0.8 * down, down }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::length::{foot, meter};

    fn climb(rise: Length) -> Path {
        Path { up: rise, ..Path::default() }
    }

    #[test]
    fn one_storey_takes_seconds() {
        let storey = climb(Length::new::<foot>(9.0));
        let at = time_at(&storey, Speeds::imo(), Stair::irc_steepest());
        assert_relative_eq!(at.get::<second>(), 5.6, max_relative = 0.01);
    }

    #[test]
    fn steeper_stairs_are_walked_more_slowly() {
        let fast = Speeds::sfpe(Stair::new(6.5, 13.0)).up;
        let slow = Speeds::sfpe(Stair::new(7.5, 10.0)).up;
        assert_relative_eq!(fast.get::<meter_per_second>(), 0.85 * 1.23, max_relative = 1e-9);
        assert_relative_eq!(slow.get::<meter_per_second>(), 0.85, max_relative = 1e-9);
        let ladder = Speeds::sfpe(Stair::new(12.0, 6.0)).up;
        assert_relative_eq!(ladder.get::<meter_per_second>(), 0.85, max_relative = 1e-9);
    }

    #[test]
    fn gentler_stairs_cost_at_most_twelve_percent() {
        let rise = climb(Length::new::<meter>(2.7));
        let took = |stair| time_at(&rise, Speeds::sfpe(stair), stair).get::<second>();
        let steepest = took(Stair::irc_steepest());
        for gentle in [Stair::new(7.0, 11.0), Stair::new(6.5, 12.0), Stair::new(6.5, 13.0)] {
            let more = took(gentle) / steepest;
            assert!((1.0..=1.12).contains(&more), "{gentle:?} {more}");
        }
    }

    #[test]
    fn the_slow_walker_is_never_quicker() {
        let way = Path {
            level: Length::new::<meter>(12.0),
            up: Length::new::<meter>(2.7),
            down: Length::new::<meter>(0.4),
            doors: 2,
        };
        let (slow, usual) = (time(&way, Profile::Slow), time(&way, Profile::Usual));
        assert!(slow.low >= usual.low && slow.likely >= usual.likely && slow.high >= usual.high);
        assert!(slow.low < slow.likely && slow.likely < slow.high);
        assert_eq!(Profile::default(), Profile::Slow);
    }

    #[test]
    fn slow_walkers_climb_at_four_fifths_of_their_speed_down() {
        for speeds in [Profile::Slow.speeds()[1], Profile::Slow.speeds()[2], Speeds::imo()] {
            assert_relative_eq!(f64::from(speeds.up / speeds.down), 0.8, max_relative = 1e-9);
        }
    }

    #[test]
    fn staying_put_takes_no_time_and_each_door_adds() {
        let here = time(&Path::default(), Profile::Slow);
        assert_eq!(here, Range::exactly(Time::default()));
        let doors = time(&Path { doors: 3, ..Path::default() }, Profile::Slow);
        assert_relative_eq!(doors.likely.get::<second>(), 6.0, max_relative = 1e-12);
    }
}
