//! What a circuit carries, and what to unplug when it is too much.

use uom::si::f64::{ElectricCurrent, ElectricPotential, Power};
use uom::si::power::watt;

use crate::Refused;

/// Something on a circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// What it draws when it runs; volt-amperes where they are known.
    pub power: Power,
    /// True if it runs for three hours or more at a stretch.
    pub continuous: bool,
    /// How much one minds unplugging it, or `None` if it cannot be unplugged.
    pub bother: Option<u32>,
}

/// A breaker and the voltage of its circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circuit {
    /// Rating of the breaker.
    pub rating: ElectricCurrent,
    /// Voltage between its conductors, 120 or 240 V in North America.
    pub voltage: ElectricPotential,
}

/// Whether a circuit can carry its loads.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// It can.
    Fits,
    /// The sum is within the rating, but too much of it runs for three hours or more: the breaker
    /// may trip late.
    TooLong,
    /// The sum exceeds the rating: the breaker will trip, though perhaps only within the hour.
    TooMuch,
}

impl Circuit {
    /// Power that the breaker is rated for.
    #[must_use]
    pub fn capacity(self) -> Power {
        self.rating * self.voltage
    }

    /// Current of all loads together.
    ///
    /// All are taken to run at once and at power factor 1, motors without their start: errs high
    /// for what cycles (a refrigerator runs a third of the time), low for motors.
    ///
    /// Source: I = P/U. Cost: O(loads).
    #[must_use]
    pub fn current(self, loads: &[Load]) -> ElectricCurrent {
        sum(loads, |load| load.power) / self.voltage
    }

    /// Whether the circuit can carry all loads at once.
    ///
    /// Source: NEC 210.20(A): the breaker is at least the non-continuous load and 125 % of the
    /// continuous one, so a continuous load alone may fill 80 % of it. A breaker listed for 100 %
    /// may carry more: errs safe. Cost: O(loads).
    #[must_use]
    pub fn verdict(self, loads: &[Load]) -> Verdict {
        if sum(loads, |load| load.power) > self.capacity() {
            Verdict::TooMuch
        } else if sum(loads, Load::demand) > self.capacity() {
            Verdict::TooLong
        } else {
            Verdict::Fits
        }
    }

    /// Loads to unplug so that the rest [fits](Verdict::Fits), by their places in `loads`: the set
    /// of least total bother, among such sets the smallest, among those the first by place.
    ///
    /// Exact: a 0/1 knapsack of what stays, by branch and bound. Cost: O(loads) for each branch, at
    /// worst 2^loads, in practice a few dozen for the dozen plugs of a circuit.
    ///
    /// # Errors
    ///
    /// [`Refused::FixedLoadsTooMuch`] if what cannot be unplugged does not fit on its own.
    ///
    /// ```
    /// use quarterturn_estimate::circuit::{Circuit, Load};
    /// use quarterturn_estimate::si::electric_current::ampere;
    /// use quarterturn_estimate::si::electric_potential::volt;
    /// use quarterturn_estimate::si::power::watt;
    /// use quarterturn_estimate::{ElectricCurrent, ElectricPotential, Power};
    ///
    /// let circuit = Circuit {
    ///     rating: ElectricCurrent::new::<ampere>(20.0),
    ///     voltage: ElectricPotential::new::<volt>(120.0),
    /// };
    /// let plugged = |watts, bother| Load {
    ///     power: Power::new::<watt>(watts), continuous: false, bother: Some(bother)
    /// };
    /// let loads = [plugged(1500.0, 1), plugged(1875.0, 1), plugged(60.0, 1)];
    /// assert_eq!(circuit.unplug(&loads).unwrap(), [0]);
    /// ```
    pub fn unplug(self, loads: &[Load]) -> Result<Vec<usize>, Refused> {
        let fixed = sum(loads, |load| match load.bother {
            None => load.demand(),
            Some(_) => Power::default(),
        });
        let room = self.capacity() - fixed;
        if room < Power::default() {
            return Err(Refused::FixedLoadsTooMuch);
        }
        let mut plugs: Vec<Plug> = loads
            .iter()
            .enumerate()
            .filter_map(|(place, load)| {
                let bother = load.bother?;
                Some(Plug { place, bother, watts: load.demand().get::<watt>() })
            })
            .collect();
        // Large ones first: taking one off settles most.
        plugs.sort_by(|a, b| b.watts.total_cmp(&a.watts).then(a.place.cmp(&b.place)));
        let over = plugs.iter().map(|plug| plug.watts).sum::<f64>() - room.get::<watt>();
        let mut search = Search { best: None, taken: Vec::new() };
        search.go(&plugs, over, 0);
        Ok(search.best.map(|(_, _, places)| places).unwrap_or_default())
    }

    /// Combinations of loads that exceed the rating together though no smaller part of them does,
    /// by their places in `loads`; at most `at_most` of them, those of the largest loads first.
    ///
    /// Only what runs at the same time counts, so a household can keep a rule such as "not the
    /// heater and the dryer together". Cost: O(loads) for each combination found, or each branch
    /// that comes to nothing because all that is left is too little.
    #[must_use]
    pub fn too_much_together(self, loads: &[Load], at_most: usize) -> Vec<Vec<usize>> {
        let mut order: Vec<(usize, f64)> =
            loads.iter().map(|load| load.power.get::<watt>()).enumerate().collect();
        order.retain(|&(_, watts)| watts > 0.0);
        order.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
        let mut found = Vec::new();
        combine(&order, self.capacity().get::<watt>(), &mut Vec::new(), &mut found, at_most);
        found
    }
}

impl Load {
    /// What the breaker must be sized for.
    fn demand(&self) -> Power {
        if self.continuous { 1.25 * self.power } else { self.power }
    }
}

struct Plug {
    place: usize,
    bother: u32,
    watts: f64,
}

struct Search {
    /// Bother, number and places of the best set so far.
    best: Option<(u64, usize, Vec<usize>)>,
    taken: Vec<usize>,
}

impl Search {
    /// Tries every set of `plugs` added to `taken` that could still be the best; `over` watts have
    /// to go.
    fn go(&mut self, plugs: &[Plug], over: f64, bother: u64) {
        let mut places = self.taken.clone();
        places.sort_unstable();
        let here = (bother, places.len(), places);
        if self.best.as_ref().is_some_and(|best| (here.0, here.1) > (best.0, best.1)) {
            return;
        }
        // Sums of decimal watts are not exact; a milliwatt trips no breaker.
        if over <= 1e-3 {
            if self.best.as_ref().is_none_or(|best| here < *best) {
                self.best = Some(here);
            }
            return;
        }
        let Some((first, rest)) = plugs.split_first() else { return };
        if plugs.iter().map(|plug| plug.watts).sum::<f64>() < over - 1e-3 {
            return;
        }
        self.taken.push(first.place);
        self.go(rest, over - first.watts, bother + u64::from(first.bother));
        self.taken.pop();
        self.go(rest, over, bother);
    }
}

/// Adds to `found` every set that begins with `taken`, goes on with some of `rest` and is over
/// `room` only with its last, smallest member.
fn combine(
    rest: &[(usize, f64)],
    room: f64,
    taken: &mut Vec<usize>,
    found: &mut Vec<Vec<usize>>,
    at_most: usize,
) {
    if room < -1e-3 {
        let mut places = taken.clone();
        places.sort_unstable();
        found.push(places);
        return;
    }
    let mut rest = rest;
    while let Some((&(place, watts), after)) = rest.split_first() {
        let left: f64 = rest.iter().map(|&(_, watts)| watts).sum();
        if found.len() >= at_most || left <= room + 1e-3 {
            return;
        }
        taken.push(place);
        combine(after, room - watts, taken, found, at_most);
        taken.pop();
        rest = after;
    }
}

fn sum(loads: &[Load], each: impl Fn(&Load) -> Power) -> Power {
    loads.iter().map(each).fold(Power::default(), |sum, power| sum + power)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::electric_current::ampere;
    use uom::si::electric_potential::volt;

    fn circuit(amps: f64) -> Circuit {
        Circuit {
            rating: ElectricCurrent::new::<ampere>(amps),
            voltage: ElectricPotential::new::<volt>(120.0),
        }
    }

    fn plugged(watts: f64, bother: u32) -> Load {
        Load { power: Power::new::<watt>(watts), continuous: false, bother: Some(bother) }
    }

    /// All sets, to hold the search against.
    fn brute_force(circuit: Circuit, loads: &[Load]) -> Option<Vec<usize>> {
        let mut best: Option<(u64, usize, Vec<usize>)> = None;
        for mask in 0_u32..1 << loads.len() {
            let off: Vec<usize> = (0..loads.len()).filter(|i| mask & (1 << i) != 0).collect();
            let bother: Option<u64> =
                off.iter().map(|&i| loads[i].bother.map(u64::from)).sum::<Option<u64>>();
            let Some(bother) = bother else { continue };
            let on: Vec<Load> =
                (0..loads.len()).filter(|i| mask & (1 << i) == 0).map(|i| loads[i]).collect();
            if circuit.verdict(&on) == Verdict::Fits {
                let here = (bother, off.len(), off);
                if best.as_ref().is_none_or(|best| here < *best) {
                    best = Some(here);
                }
            }
        }
        best.map(|best| best.2)
    }

    /// A small linear congruential generator (Knuth's MMIX constants), so that a failure repeats.
    fn numbers(seed: u64) -> impl FnMut(u64) -> u32 {
        let mut state = seed;
        move |below| {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            u32::try_from((state >> 33) % below).unwrap()
        }
    }

    #[test]
    fn the_cheapest_set_is_that_of_brute_force() {
        let mut number = numbers(7);
        let (mut refused, mut unplugged) = (0, 0);
        for _ in 0..2000 {
            let circuit = circuit(f64::from(10 + 5 * number(3)));
            let loads: Vec<Load> = (0..number(9))
                .map(|_| Load {
                    power: Power::new::<watt>(f64::from(50 * number(40))),
                    continuous: number(3) == 0,
                    bother: (number(5) > 0).then(|| number(4)),
                })
                .collect();
            let brute = brute_force(circuit, &loads);
            match circuit.unplug(&loads) {
                Ok(set) => {
                    unplugged += usize::from(!set.is_empty());
                    assert_eq!(Some(set), brute, "{circuit:?} {loads:?}");
                }
                Err(_) => {
                    refused += 1;
                    assert_eq!(brute, None, "{circuit:?} {loads:?}");
                }
            }
        }
        assert!(refused > 50 && unplugged > 500, "{refused} {unplugged}");
    }

    #[test]
    fn combinations_are_all_minimal_and_none_is_missed() {
        let mut number = numbers(11);
        for _ in 0..500 {
            let circuit = circuit(15.0);
            let loads: Vec<Load> =
                (0..number(9)).map(|_| plugged(f64::from(100 * number(19)), 1)).collect();
            let over = |mask: u32| {
                let on: Vec<Load> =
                    (0..loads.len()).filter(|i| mask & (1 << i) != 0).map(|i| loads[i]).collect();
                circuit.verdict(&on) == Verdict::TooMuch
            };
            let mut brute: Vec<Vec<usize>> = (0_u32..1 << loads.len())
                .filter(|&mask| {
                    over(mask)
                        && (0..loads.len())
                            .filter(|i| mask & (1 << i) != 0)
                            .all(|i| !over(mask & !(1 << i)))
                })
                .map(|mask| (0..loads.len()).filter(|i| mask & (1 << i) != 0).collect())
                .collect();
            let mut found = circuit.too_much_together(&loads, usize::MAX);
            brute.sort();
            found.sort();
            assert_eq!(found, brute, "{loads:?}");
        }
    }

    #[test]
    fn a_heater_all_evening_may_fill_four_fifths() {
        let heater = |watts| Load { continuous: true, ..plugged(watts, 1) };
        assert_eq!(circuit(15.0).verdict(&[heater(1440.0)]), Verdict::Fits);
        assert_eq!(circuit(15.0).verdict(&[heater(1500.0)]), Verdict::TooLong);
        assert_eq!(circuit(15.0).verdict(&[heater(1900.0)]), Verdict::TooMuch);
        assert_eq!(circuit(15.0).verdict(&[plugged(1500.0, 1)]), Verdict::Fits);
    }

    #[test]
    fn fixed_loads_that_are_too_much_are_refused() {
        let oven = Load { bother: None, ..plugged(3000.0, 1) };
        assert_eq!(circuit(20.0).unplug(&[oven]), Err(Refused::FixedLoadsTooMuch));
        assert_eq!(circuit(20.0).unplug(&[]), Ok(vec![]));
    }

    #[test]
    fn a_heater_and_a_hair_dryer_draw_twenty_eight_amperes() {
        let both = circuit(20.0).current(&[plugged(1500.0, 1), plugged(1875.0, 1)]);
        assert_relative_eq!(both.get::<ampere>(), 28.125, max_relative = 1e-12);
    }

    #[test]
    fn the_number_of_combinations_can_be_limited() {
        let loads = [plugged(1000.0, 1); 12];
        assert_eq!(circuit(15.0).too_much_together(&loads, 5).len(), 5);
    }
}
