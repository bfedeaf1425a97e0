//! What a drain carries, and what a blocked one holds before it comes out.

use std::f64::consts::PI;

use uom::si::f64::{Length, Time, Velocity, Volume, VolumeRate};
use uom::si::length::{foot, meter};
use uom::si::velocity::meter_per_second;
use uom::si::volume::{cubic_meter, gallon};

use crate::{Range, Refused};

/// Manning's n of smooth plastic drain pipe.
pub const SMOOTH_PLASTIC: f64 = 0.009;
/// Manning's n of drain pipe in use, the figure to design with.
pub const IN_USE: f64 = 0.013;
/// Manning's n of old, rough or clay pipe.
pub const ROUGH: f64 = 0.015;

/// How full a pipe runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fill {
    /// To the crown.
    Full,
    /// To the middle, as branch drains are laid out.
    Half,
}

/// What a pipe carries by gravity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Carries {
    /// Flow.
    pub flow: VolumeRate,
    /// Mean speed of the water.
    pub speed: Velocity,
}

/// What a round pipe carries at a steady `slope` (fall over length), open at the end.
///
/// Half full it carries half as much at the same speed. Solids, fittings, venting and a rising
/// sewer are left out, so it errs high for a house drain in use.
///
/// Source: Manning, Q = (1/n)·A·R^(2/3)·S^(1/2) in metres and seconds (1.486/n in feet).
///
/// # Errors
///
/// [`Refused::OutOfRange`] for a roughness outside 0.008 to 0.035 or a slope outside 0 to 0.1,
/// where water in a pipe no longer runs evenly.
pub fn carries(bore: Length, slope: f64, roughness: f64, fill: Fill) -> Result<Carries, Refused> {
    let slope = Refused::unless_between("slope", slope, 0.0, 0.1)?;
    let roughness = Refused::unless_between("Manning's n", roughness, 0.008, 0.035)?;
    let hydraulic_radius = bore.max(Length::default()).get::<meter>() / 4.0;
    let speed = hydraulic_radius.powf(2.0 / 3.0) * slope.sqrt() / roughness;
    let speed = Velocity::new::<meter_per_second>(speed);
    let share = match fill {
        Fill::Full => 1.0,
        Fill::Half => 0.5,
    };
    Ok(Carries { flow: share * PI / 4.0 * bore * bore * speed, speed })
}

/// Slope of so many inches in each foot of length, as the trade says it.
#[must_use]
pub fn inches_per_foot(inches: f64) -> f64 {
    inches / 12.0
}

/// Speed that keeps a drain clean: 2 ft/s.
///
/// Source: ASPE Plumbing Engineering Design Handbook, vol. 2. A 3 in pipe at 1/8 in to the foot
/// misses it with [`IN_USE`] roughness.
#[must_use]
pub fn scour_speed() -> Velocity {
    Length::new::<foot>(2.0) / Time::new::<uom::si::time::second>(1.0)
}

/// What the pipe upstream of a blockage holds once the water stands `spill` high above its invert
/// there.
///
/// `length` is the pipe from the blockage up to where it ends or branches; `spill` the height of
/// the lowest opening. The level is flat, so a sloping pipe fills only as far as it lies below it.
/// The pipe is taken to be empty at first and its branches to hold nothing: errs low for branches,
/// high if it was half full already.
///
/// Source: geometry of a round pipe cut by a level.
///
/// # Errors
///
/// [`Refused::OutOfRange`] for a slope outside 0 to 0.1.
pub fn holds(bore: Length, length: Length, slope: f64, spill: Length) -> Result<Volume, Refused> {
    let slope = Refused::unless_between("slope", slope, 0.0, 0.1)?;
    let none = Length::default();
    let [bore, length, spill] = [bore, length, spill].map(|given| given.max(none).get::<meter>());
    let volume = if slope * length < 1e-6 * bore {
        wetted(bore, spill) * length
    } else {
        (wetted_up_to(bore, spill) - wetted_up_to(bore, spill - slope * length)) / slope
    };
    Ok(Volume::new::<cubic_meter>(volume))
}

/// Uses of a fixture, each letting down `each`, until `room` is full.
#[must_use]
pub fn uses_until_full(room: Volume, each: Volume) -> f64 {
    if each > Volume::default() { f64::from(room / each) } else { f64::INFINITY }
}

/// Water that a flush of a toilet lets down: 1.28, 1.6, 3.5 gal.
///
/// Sources: EPA's label for saving water (1.28); Energy Policy Act of 1992, in force from 1994
/// (1.6); before that 3.5, and before 1980 5 to 7 (state guide to household water).
#[must_use]
pub fn flush() -> Range<Volume> {
    Range::new(1.28, 1.6, 3.5).map(Volume::new::<gallon>)
}

/// Area of a round pipe that is wet at `depth`, in square metres.
fn wetted(bore: f64, depth: f64) -> f64 {
    let radius = bore / 2.0;
    let depth = depth.clamp(0.0, bore);
    let above = radius - depth;
    if radius <= 0.0 {
        return 0.0;
    }
    radius * radius * (above / radius).clamp(-1.0, 1.0).acos()
        - above * (depth * (bore - depth)).max(0.0).sqrt()
}

/// Sum of [`wetted`] over all depths up to `depth`, in cubic metres for each unit of slope.
///
/// With u = (r - y)/r it is r³·(√(1-u²) - (1-u²)^(3/2)/3 - u·acos u).
fn wetted_up_to(bore: f64, depth: f64) -> f64 {
    let radius = bore / 2.0;
    if radius <= 0.0 || depth <= 0.0 {
        return 0.0;
    }
    let u = ((radius - depth) / radius).clamp(-1.0, 1.0);
    let chord = (1.0 - u * u).max(0.0).sqrt();
    let inside = radius.powi(3) * (chord - chord.powi(3) / 3.0 - u * u.acos());
    inside + PI * radius * radius * (depth - bore).max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::length::inch;
    use uom::si::volume_rate::gallon_per_minute;

    fn feet(feet: f64) -> Length {
        Length::new::<foot>(feet)
    }

    fn four_inch() -> Length {
        Length::new::<inch>(3.998)
    }

    #[test]
    fn sixty_feet_of_stopped_lateral_hold_twenty_four_flushes() {
        // A spill level far above the pipe: it fills wholly.
        let room = holds(four_inch(), feet(60.0), inches_per_foot(0.25), feet(30.0)).unwrap();
        assert_relative_eq!(room.get::<gallon>(), 39.1, max_relative = 0.005);
        let flushes = uses_until_full(room, flush().likely);
        assert_relative_eq!(flushes, 24.0, max_relative = 0.03);
    }

    #[test]
    fn a_low_opening_leaves_the_upper_pipe_dry() {
        // 1/4 in to the foot rises 4 in, one bore, in 16 ft: of the first 16 ft half is wet.
        let slope = inches_per_foot(0.25);
        let wedge = holds(four_inch(), feet(200.0), slope, four_inch()).unwrap();
        let half = holds(four_inch(), feet(15.992 / 2.0), slope, feet(30.0)).unwrap();
        assert_relative_eq!(wedge.value, half.value, max_relative = 1e-6);
    }

    #[test]
    fn the_closed_form_is_the_sum_of_slices() {
        for (length, spill) in [(10.0, 0.2), (20.0, 0.3), (8.0, 0.05), (40.0, 1.0), (3.0, 0.333)] {
            let slope = 0.02;
            let slices = 200_000;
            let step = length / f64::from(slices);
            let bore = four_inch().get::<foot>();
            let sum: f64 = (0..slices)
                .map(|slice| wetted(bore, spill - slope * step * (f64::from(slice) + 0.5)) * step)
                .sum();
            let closed = holds(four_inch(), feet(length), slope, feet(spill)).unwrap();
            assert_relative_eq!(
                closed.get::<uom::si::volume::cubic_foot>(),
                sum,
                max_relative = 1e-5
            );
        }
    }

    #[test]
    fn a_level_pipe_fills_evenly() {
        let half = holds(four_inch(), feet(10.0), 0.0, 0.5 * four_inch()).unwrap();
        let full = holds(four_inch(), feet(10.0), 0.0, feet(2.0)).unwrap();
        assert_relative_eq!(half.value, full.value / 2.0, max_relative = 1e-9);
    }

    #[test]
    fn half_full_carries_half() {
        let at = |fill| carries(four_inch(), inches_per_foot(0.125), IN_USE, fill).unwrap();
        let (full, half) = (at(Fill::Full), at(Fill::Half));
        assert_eq!(full.speed, half.speed);
        assert_relative_eq!(full.flow.value, 2.0 * half.flow.value, max_relative = 1e-12);
        assert!(full.flow.get::<gallon_per_minute>() > 80.0);
    }

    #[test]
    fn a_pipe_that_runs_uphill_is_refused() {
        assert!(carries(four_inch(), -0.01, IN_USE, Fill::Full).is_err());
        assert!(carries(four_inch(), 0.01, 0.5, Fill::Full).is_err());
        assert!(holds(four_inch(), feet(1.0), f64::NAN, feet(1.0)).is_err());
    }

    #[test]
    fn nothing_let_down_never_fills() {
        assert!(uses_until_full(Volume::default(), Volume::default()).is_infinite());
    }
}
