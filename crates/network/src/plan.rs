//! In which order to work devices so that least harm is done, when each may fail and shutting the
//! far one first and opening it again may be best.

/// What the planner must know. Devices are numbered from 0; a set of devices is a bit mask.
///
/// Harm is in any one unit, such as litres or what is worth as much.
pub trait Situation {
    /// Number of devices that may be worked; at most [`MOST_DEVICES`].
    fn devices(&self) -> usize;
    /// Seconds to walk from one device to another; `None` is where one starts.
    fn walk_seconds(&self, from: Option<usize>, to: usize) -> f64;
    /// Seconds to work a device, once there.
    fn work_seconds(&self, device: usize) -> f64;
    /// Chance that a device does not turn or hold.
    fn fails(&self, device: usize) -> f64;
    /// Harm of each act as such: it must be understood and found, and can be done wrong.
    fn harm_of_act(&self) -> f64;
    /// Harm a second while these devices are shut.
    fn harm_rate(&self, shut: u32) -> f64;
    /// True if nothing feeds the trouble while these devices are shut.
    fn is_cut_off(&self, shut: u32) -> bool;
    /// Harm of leaving things so, from when it is cut off until it is mended.
    fn harm_at_end(&self, shut: u32) -> f64;
    /// Harm of giving up with these devices shut: someone else cuts it off, later.
    fn harm_of_giving_up(&self, shut: u32) -> f64;
}

/// One act of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Act {
    /// Shut a device.
    Shut(usize),
    /// Open a device again that was shut before.
    Open(usize),
}

/// A plan: what to do as long as everything works, and what harm is to be expected of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// The acts in order, if each device works.
    pub acts: Vec<Act>,
    /// Expected harm, failures included.
    pub harm: f64,
}

/// Most devices in a plan: the states are 4 to that power.
pub const MOST_DEVICES: usize = 6;

/// What became of a device.
const UNTRIED: u32 = 0;
const SHUT: u32 = 1;
const FAILED: u32 = 2;
const REOPENED: u32 = 3;

/// The plan of least expected harm.
///
/// ```text
///   stiff stop at hand 90 s, main 10 s away:   shut main, shut stop, open main again
/// ```
///
/// A plan that only shuts things can't express that; so it is a search over what became of each
/// device and where one stands, not a cut. No state comes twice (a device is tried once and opened
/// again at most once), so plain recursion with a table is exact. A plan may end when the trouble
/// is cut off, or give up. Ties: ending first, then shutting before opening, smaller numbers first.
///
/// Time: states × devices, at most 4^d × (d + 1) × 2d for d devices, each state visited once.
#[must_use]
pub fn least_harm(situation: &impl Situation) -> Plan {
    let devices = situation.devices().min(MOST_DEVICES);
    let states = 1_usize << (2 * devices);
    let mut search = Search { situation, devices, known: vec![None; states * (devices + 1)] };
    let harm = search.harm(0, None).0;
    let mut acts = Vec::new();
    let (mut state, mut at) = (0_u32, None);
    while let Some(act) = search.harm(state, at).1 {
        let (device, became) = match act {
            Act::Shut(device) => (device, SHUT),
            Act::Open(device) => (device, REOPENED),
        };
        acts.push(act);
        state = with(state, device, became);
        at = Some(device);
    }
    Plan { acts, harm }
}

struct Search<'s, S> {
    situation: &'s S,
    devices: usize,
    known: Vec<Option<(f64, Option<Act>)>>,
}

impl<S: Situation> Search<'_, S> {
    /// Least expected harm from here on, and the act that leads to it; no act to end.
    fn harm(&mut self, state: u32, at: Option<usize>) -> (f64, Option<Act>) {
        let slot = state as usize * (self.devices + 1) + at.map_or(0, |device| device + 1);
        if let Some(known) = self.known[slot] {
            return known;
        }
        let shut = self.shut(state);
        let mut best = if self.situation.is_cut_off(shut) {
            (self.situation.harm_at_end(shut), None)
        } else {
            (self.situation.harm_of_giving_up(shut), None)
        };
        let rate = self.situation.harm_rate(shut);
        for (became, wanted) in [(UNTRIED, true), (SHUT, false)] {
            for device in 0..self.devices {
                if of(state, device) != became {
                    continue;
                }
                let seconds =
                    self.situation.walk_seconds(at, device) + self.situation.work_seconds(device);
                let spent = rate * seconds + self.situation.harm_of_act();
                if spent >= best.0 {
                    continue;
                }
                let (harm, act) = if wanted {
                    let fails = self.situation.fails(device);
                    let works = self.harm(with(state, device, SHUT), Some(device)).0;
                    let stuck = if fails > 0.0 {
                        self.harm(with(state, device, FAILED), Some(device)).0
                    } else {
                        0.0
                    };
                    ((1.0 - fails) * works + fails * stuck, Act::Shut(device))
                } else {
                    let open = self.harm(with(state, device, REOPENED), Some(device)).0;
                    (open, Act::Open(device))
                };
                if spent + harm < best.0 - 1e-9 {
                    best = (spent + harm, Some(act));
                }
            }
        }
        self.known[slot] = Some(best);
        best
    }

    fn shut(&self, state: u32) -> u32 {
        (0..self.devices).filter(|&d| of(state, d) == SHUT).fold(0, |mask, d| mask | (1 << d))
    }
}

fn of(state: u32, device: usize) -> u32 {
    (state >> (2 * device)) & 3
}

fn with(state: u32, device: usize, became: u32) -> u32 {
    (state & !(3 << (2 * device))) | (became << (2 * device))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Feeds in parallel: it is cut off when one set of `cuts` is shut.
    #[derive(Debug, Clone)]
    struct Case {
        walk: Vec<Vec<f64>>,
        work: Vec<f64>,
        fails: Vec<f64>,
        cuts: Vec<u32>,
        rate: f64,
        loss: Vec<f64>,
        repair: f64,
        give_up: f64,
        act: f64,
    }

    impl Situation for Case {
        fn devices(&self) -> usize {
            self.work.len()
        }
        fn walk_seconds(&self, from: Option<usize>, to: usize) -> f64 {
            self.walk[from.map_or(0, |d| d + 1)][to]
        }
        fn work_seconds(&self, device: usize) -> f64 {
            self.work[device]
        }
        fn fails(&self, device: usize) -> f64 {
            self.fails[device]
        }
        fn harm_of_act(&self) -> f64 {
            self.act
        }
        fn harm_rate(&self, shut: u32) -> f64 {
            let loss: f64 =
                (0..self.loss.len()).filter(|d| shut & (1 << d) != 0).map(|d| self.loss[d]).sum();
            loss + if self.is_cut_off(shut) { 0.0 } else { self.rate }
        }
        fn is_cut_off(&self, shut: u32) -> bool {
            self.cuts.iter().any(|cut| cut & shut == *cut)
        }
        fn harm_at_end(&self, shut: u32) -> f64 {
            self.harm_rate(shut) * self.repair
        }
        fn harm_of_giving_up(&self, _: u32) -> f64 {
            self.give_up
        }
    }

    /// Row 17 of the design's table of traps: main 0 lies 10 s away, the stiff stop 1 takes 90 s.
    fn stiff_stop_and_main() -> Case {
        Case {
            walk: vec![vec![10.0, 0.0], vec![0.0, 10.0], vec![10.0, 0.0]],
            work: vec![5.0, 90.0],
            fails: vec![0.0, 0.0],
            cuts: vec![1, 2],
            rate: 50.0,
            loss: vec![0.5, 0.0],
            repair: 7200.0,
            give_up: 1e6,
            act: 0.0,
        }
    }

    #[test]
    fn the_main_is_shut_first_and_opened_again() {
        let plan = least_harm(&stiff_stop_and_main());
        assert_eq!(plan.acts, [Act::Shut(0), Act::Shut(1), Act::Open(0)]);
        // 15 s of leak; then 100 s and 15 s without water in the house.
        assert!((plan.harm - (15.0 * 50.0 + 115.0 * 0.5)).abs() < 1e-9, "{}", plan.harm);
    }

    #[test]
    fn a_stop_at_hand_is_shut_straight_away() {
        let mut case = stiff_stop_and_main();
        case.work[1] = 5.0;
        assert_eq!(least_harm(&case).acts, [Act::Shut(1)]);
    }

    #[test]
    fn what_likely_fails_is_not_tried_first() {
        let mut case = stiff_stop_and_main();
        case.work[1] = 12.0;
        assert_eq!(least_harm(&case).acts, [Act::Shut(1)]);
        case.fails[1] = 0.6;
        assert_eq!(least_harm(&case).acts[0], Act::Shut(0));
    }

    /// Two feeds, no walking, harm adds up: the one with most harm a second of work comes first
    /// (Smith 1956, "Various optimizers for single-stage production"). Here each feed is its own
    /// trouble: it is cut off when both are shut.
    #[test]
    fn parallel_feeds_follow_smiths_rule() {
        struct Feeds([(f64, f64); 2]);
        impl Situation for Feeds {
            fn devices(&self) -> usize {
                2
            }
            fn walk_seconds(&self, _: Option<usize>, _: usize) -> f64 {
                0.0
            }
            fn work_seconds(&self, device: usize) -> f64 {
                self.0[device].1
            }
            fn fails(&self, _: usize) -> f64 {
                0.0
            }
            fn harm_of_act(&self) -> f64 {
                0.0
            }
            fn harm_rate(&self, shut: u32) -> f64 {
                (0..2).filter(|d| shut & (1 << d) == 0).map(|d| self.0[d].0).sum()
            }
            fn is_cut_off(&self, shut: u32) -> bool {
                shut == 3
            }
            fn harm_at_end(&self, _: u32) -> f64 {
                0.0
            }
            fn harm_of_giving_up(&self, _: u32) -> f64 {
                1e9
            }
        }
        for (a, b, first) in [((10.0, 5.0), (10.0, 4.0), 1), ((10.0, 5.0), (6.0, 4.0), 0)] {
            assert_eq!(least_harm(&Feeds([a, b])).acts[0], Act::Shut(first));
        }
    }

    /// Every policy tried without a table, as the definition has it.
    fn brute(case: &Case, became: &mut Vec<u32>, at: Option<usize>) -> f64 {
        let shut = (0..became.len())
            .filter(|&d| became[d] == SHUT)
            .fold(0, |mask: u32, d| mask | (1 << d));
        let mut best = if case.is_cut_off(shut) { case.harm_at_end(shut) } else { case.give_up };
        for device in 0..became.len() {
            let seconds = case.walk_seconds(at, device) + case.work_seconds(device);
            let spent = case.harm_rate(shut) * seconds + case.act;
            let before = became[device];
            let harm = match before {
                UNTRIED => {
                    became[device] = SHUT;
                    let works = brute(case, became, Some(device));
                    became[device] = FAILED;
                    let stuck = brute(case, became, Some(device));
                    (1.0 - case.fails[device]) * works + case.fails[device] * stuck
                }
                SHUT => {
                    became[device] = REOPENED;
                    brute(case, became, Some(device))
                }
                _ => continue,
            };
            became[device] = before;
            best = best.min(spent + harm);
        }
        best
    }

    proptest! {
        #[test]
        fn no_policy_does_less_harm(
            devices in 1..4_usize,
            walk in prop::collection::vec(prop::collection::vec(0.0..60.0_f64, 4), 5),
            work in prop::collection::vec(1.0..100.0_f64, 4),
            fails in prop::collection::vec(prop_oneof![Just(0.0), 0.0..0.9_f64], 4),
            cuts in prop::collection::vec(1..8_u32, 1..4),
            loss in prop::collection::vec(0.0..2.0_f64, 4),
            rate in 0.5..60.0_f64,
            act in prop_oneof![Just(0.0), 0.0..40.0_f64],
        ) {
            let case = Case {
                walk,
                work: work[..devices].to_vec(),
                fails: fails[..devices].to_vec(),
                cuts,
                rate,
                loss: loss[..devices].to_vec(),
                repair: 600.0,
                give_up: 20_000.0,
                act,
            };
            let plan = least_harm(&case);
            let expected = brute(&case, &mut vec![UNTRIED; devices], None);
            prop_assert!((plan.harm - expected).abs() < 1e-6 * expected.max(1.0),
                "{} against {expected}", plan.harm);
        }
    }
}
