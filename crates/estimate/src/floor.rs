//! How much water is on the floor.

use uom::si::f64::{Area, Length, Time, Volume, VolumeRate};
use uom::si::length::millimeter;

use crate::Range;

/// Water on the floor after `time` at `flow`.
///
/// Nothing soaks in and nothing drains off, so it errs high for one room. It ignores what still
/// runs out of the pipes when the source is shut: see [`crate::standing`].
///
/// Source: volume is flow times time.
#[must_use]
pub fn litres(flow: Range<VolumeRate>, time: Range<Time>) -> Range<Volume> {
    flow.with(time, |flow, time| flow.max(VolumeRate::default()) * time.max(Time::default()))
}

/// Time until `flow` has filled `volume`, such as a pan or a bucket; `None` if nothing flows.
///
/// The more flows, the sooner; the likely flow gives the likely time.
#[must_use]
pub fn time_to_fill(volume: Volume, flow: Range<VolumeRate>) -> Option<Range<Time>> {
    (flow.low > VolumeRate::default()).then(|| flow.map(|flow| volume / flow))
}

/// Depth of `volume` spread evenly over a floor that keeps it, such as a shower tray or a cellar.
///
/// Source: volume over area. `None` if there is no area.
#[must_use]
pub fn depth(volume: Volume, floor: Area) -> Option<Length> {
    (floor > Area::default()).then(|| volume / floor)
}

/// Area that `volume` wets on a smooth level floor, before walls or a drain stop it.
///
/// A puddle creeps outward until surface tension holds it, 2 to 5 mm deep by how well the floor is
/// wetted; on a floor that slopes it runs farther one way. Errs high on carpet and rough concrete,
/// which soak it up.
///
/// Source: puddle height 2 a sin(θ/2) with capillary length a = 2.7 mm of water and contact angles
/// θ of 40, 70 and 120 degrees (textbook, from memory).
#[must_use]
pub fn wet_area(volume: Volume) -> Range<Area> {
    puddle_depth().map(|depth| volume / depth)
}

fn puddle_depth() -> Range<Length> {
    let capillary = Length::new::<millimeter>(2.7);
    Range::new(40.0_f64, 70.0, 120.0)
        .map(|degrees| 2.0 * capillary * (degrees.to_radians() / 2.0).sin())
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::area::square_meter;
    use uom::si::time::{minute, second};
    use uom::si::volume::{gallon, liter};
    use uom::si::volume_rate::{gallon_per_minute, liter_per_minute};

    #[test]
    fn ten_gallons_a_minute_for_three_minutes() {
        let flow = Range::exactly(VolumeRate::new::<gallon_per_minute>(10.0));
        let wet = litres(flow, Range::new(1.0, 3.0, 5.0).map(Time::new::<minute>));
        assert_relative_eq!(wet.likely.get::<gallon>(), 30.0, max_relative = 1e-9);
        assert_relative_eq!(wet.high.get::<liter>(), 50.0 * 3.785_412, max_relative = 1e-6);
    }

    #[test]
    fn time_running_backwards_wets_nothing() {
        let flow = Range::exactly(VolumeRate::new::<liter_per_minute>(5.0));
        let before = litres(flow, Range::exactly(Time::new::<second>(-10.0)));
        assert_eq!(before, Range::exactly(Volume::default()));
    }

    #[test]
    fn a_faster_leak_fills_sooner() {
        let flow = Range::new(1.0, 2.0, 10.0).map(VolumeRate::new::<liter_per_minute>);
        let bucket = time_to_fill(Volume::new::<liter>(10.0), flow).unwrap();
        assert_relative_eq!(bucket.low.get::<minute>(), 1.0, max_relative = 1e-9);
        assert_relative_eq!(bucket.high.get::<minute>(), 10.0, max_relative = 1e-9);
        assert_eq!(time_to_fill(Volume::default(), Range::exactly(VolumeRate::default())), None);
    }

    #[test]
    fn ten_litres_wet_a_small_room() {
        let area = wet_area(Volume::new::<liter>(10.0));
        assert!((2.0..3.0).contains(&area.low.get::<square_meter>()), "{area:?}");
        assert!((4.0..6.0).contains(&area.high.get::<square_meter>()), "{area:?}");
        let deep = depth(Volume::new::<liter>(10.0), area.likely).unwrap();
        assert_relative_eq!(deep.get::<millimeter>(), 3.097, max_relative = 1e-3);
        assert_eq!(depth(Volume::default(), Area::default()), None);
    }
}
