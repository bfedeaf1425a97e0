//! Group testing: which devices to switch off together, so that few walks tell all.
//!
//! Each thing hangs on one of several devices. A walk with a set of devices off tells, for every
//! thing that is looked at, one bit: dead or live. With `h` devices possible no strategy can do with
//! fewer than `⌈log₂ h⌉` walks in the worst case, however many things there are; halving every set of
//! what is still possible reaches that (Dorfman 1943 began group testing; the bound is the height of
//! a binary tree with `h` leaves). Within that bound the likely devices are parted from the rest
//! first, so that things whose panel text was right are found sooner (after Fano 1949). The tests
//! compare both with brute force.

/// What is still possible for a thing: its share of belief for each device, 0 where it is ruled out;
/// the last entry stands for everything that stays on.
pub(crate) type Belief = Vec<f64>;

/// Which devices to switch off next; `None` if no walk tells any more.
///
/// `allowed` tells which devices may be off, `cost` what each one costs to switch (clocks to set
/// again), as a share of what a walk costs. Deterministic. Time: passes × devices × things × devices.
pub(crate) fn choose(beliefs: &[Belief], allowed: &[bool], cost: &[f64]) -> Option<Vec<bool>> {
    let count = allowed.len();
    let open: Vec<Open> = beliefs.iter().filter_map(|belief| Open::of(belief, allowed)).collect();
    let walks = open.iter().map(|thing| height(thing.size())).max()?;
    let mut off = vec![false; count];
    let mut settled = vec![false; count];
    // Largest first: they have the least slack.
    let mut order: Vec<&Open> = open.iter().collect();
    order.sort_by(|a, b| b.size().cmp(&a.size()).then_with(|| a.devices.cmp(&b.devices)));
    order.dedup_by(|a, b| a.devices == b.devices && a.stays == b.stays);
    for thing in order {
        let total: Vec<f64> = (0..count)
            .map(|d| open.iter().filter(|o| o.devices == thing.devices).map(|o| o.share(d)).sum())
            .collect();
        thing.halve(&total, walks, &mut off, &mut settled);
    }
    climb(&open, allowed, cost, &mut off);
    off.contains(&true).then_some(off)
}

/// Walks that are needed at most from here on.
pub(crate) fn most_walks(beliefs: &[Belief], allowed: &[bool]) -> u32 {
    let open = beliefs.iter().filter_map(|belief| Open::of(belief, allowed));
    open.map(|thing| height(thing.size())).max().unwrap_or(0)
}

/// Height of the lowest binary tree with so many leaves.
pub(crate) fn height(leaves: usize) -> u32 {
    leaves.max(1).next_power_of_two().trailing_zeros()
}

/// A thing that more than one device may feed.
struct Open {
    /// Devices that may be switched and may feed it, with its belief in each.
    devices: Vec<usize>,
    shares: Vec<f64>,
    /// Belief that it is on something that stays on.
    stays: Option<Share>,
}

/// A share of belief, compared by its bits: equal sets are found by it.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Share(f64);

impl Open {
    fn of(belief: &Belief, allowed: &[bool]) -> Option<Self> {
        let (mut devices, mut shares, mut stays) = (Vec::new(), Vec::new(), 0.0);
        for (device, &share) in belief.iter().enumerate() {
            if share <= 0.0 {
                continue;
            }
            if allowed.get(device).copied().unwrap_or(false) {
                devices.push(device);
                shares.push(share);
            } else {
                stays += share;
            }
        }
        let total: f64 = shares.iter().sum::<f64>() + stays;
        let is_open = devices.len() + usize::from(stays > 0.0) > 1;
        is_open.then(|| Self {
            devices,
            shares: shares.into_iter().map(|share| share / total).collect(),
            stays: (stays > 0.0).then_some(Share(stays / total)),
        })
    }

    /// How many answers there are.
    fn size(&self) -> usize {
        self.devices.len() + usize::from(self.stays.is_some())
    }

    fn share(&self, device: usize) -> f64 {
        let at = self.devices.iter().position(|d| *d == device);
        at.and_then(|at| self.shares.get(at)).copied().unwrap_or(0.0)
    }

    /// Settles its devices: a part of them off, so large that both parts can be told in the walks
    /// that are left, and so weighty that both are as likely as may be.
    fn halve(&self, total: &[f64], walks: u32, off: &mut [bool], settled: &mut [bool]) {
        let side = 1_usize << walks.saturating_sub(1);
        let is = |list: &[bool], d: usize| list.get(d).copied().unwrap_or(false);
        let weight = |d: usize| total.get(d).copied().unwrap_or(0.0);
        let mut free: Vec<usize> =
            self.devices.iter().copied().filter(|&d| !is(settled, d)).collect();
        free.sort_by(|&a, &b| weight(b).total_cmp(&weight(a)).then(a.cmp(&b)));
        let already = self.devices.iter().filter(|&&d| is(settled, d) && is(off, d)).count();
        let most = side.saturating_sub(already);
        let least =
            self.size().saturating_sub(side).saturating_sub(already).max(usize::from(already == 0));
        let all: f64 = self.devices.iter().map(|&d| weight(d)).sum::<f64>()
            * (1.0 + self.stays.map_or(0.0, |s| s.0 / (1.0 - s.0).max(1e-9)));
        let mut taken = Vec::new();
        let mut sum = 0.0;
        for &device in &free {
            // One that brings the two parts nearer to each other.
            let nearer = (sum + weight(device) - all / 2.0).abs() < (sum - all / 2.0).abs();
            if taken.len() < most && nearer {
                sum += weight(device);
                taken.push(device);
            }
        }
        // The least likely ones fill up.
        for &device in free.iter().rev() {
            if taken.len() >= least.min(most) {
                break;
            }
            if !taken.contains(&device) {
                taken.push(device);
            }
        }
        for device in free {
            if let Some(slot) = settled.get_mut(device) {
                *slot = true;
            }
            if let Some(slot) = off.get_mut(device) {
                *slot = taken.contains(&device);
            }
        }
    }

    /// Walks that its larger part still needs, and how likely it is to be in the part that is off.
    fn parted(&self, off: &[bool]) -> (u32, f64) {
        let is_off = |d: &&usize| off.get(**d).copied().unwrap_or(false);
        let count = self.devices.iter().filter(is_off).count();
        let share: f64 = self
            .devices
            .iter()
            .zip(&self.shares)
            .filter(|(d, _)| is_off(d))
            .map(|(_, share)| share)
            .sum();
        (height(count.max(self.size() - count)), share)
    }
}

/// Switches single devices over as long as that makes the walk better. It never makes the worst case
/// worse.
fn climb(open: &[Open], allowed: &[bool], cost: &[f64], off: &mut [bool]) {
    /// Passes over all devices; each only ever improves.
    const PASSES: usize = 6;
    let value = |off: &[bool]| -> (u32, f64) {
        let mut worst = 0;
        let mut told = 0.0;
        for thing in open {
            let (walks, share) = thing.parted(off);
            worst = worst.max(walks);
            told += bits(share);
        }
        let costs = off.iter().zip(cost).filter(|(off, _)| **off).map(|(_, cost)| cost);
        (worst, told - costs.sum::<f64>())
    };
    let mut now = value(off);
    for _ in 0..PASSES {
        let mut better = false;
        for device in 0..off.len() {
            if !allowed.get(device).copied().unwrap_or(false) {
                continue;
            }
            flip(off, device);
            let then = value(off);
            if then.0 < now.0 || (then.0 == now.0 && then.1 > now.1 + 1e-9) {
                now = then;
                better = true;
            } else {
                flip(off, device);
            }
        }
        if !better {
            break;
        }
    }
}

fn flip(off: &mut [bool], device: usize) {
    if let Some(slot) = off.get_mut(device) {
        *slot = !*slot;
    }
}

/// How much a yes with this chance tells, in bits.
fn bits(share: f64) -> f64 {
    let part = |p: f64| if p <= 0.0 || p >= 1.0 { 0.0 } else { -p * p.log2() };
    part(share) + part(1.0 - share)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Walks until every thing is told, if thing `i` hangs on `truth[i]` (the last: stays on).
    fn walks(beliefs: &[Belief], allowed: &[bool], truth: &[usize]) -> u32 {
        let mut beliefs = beliefs.to_vec();
        let cost = vec![0.001; allowed.len()];
        let mut count = 0;
        while let Some(off) = choose(&beliefs, allowed, &cost) {
            count += 1;
            assert!(count < 20, "it never ends");
            for (belief, &hangs_on) in beliefs.iter_mut().zip(truth) {
                let dead = off.get(hangs_on).copied().unwrap_or(false);
                for (device, share) in belief.iter_mut().enumerate() {
                    if off.get(device).copied().unwrap_or(false) != dead {
                        *share = 0.0;
                    }
                }
            }
        }
        for (belief, &hangs_on) in beliefs.iter().zip(truth) {
            let left: Vec<usize> = (0..belief.len()).filter(|&d| belief[d] > 0.0).collect();
            let switched = |d: usize| allowed.get(d).copied().unwrap_or(false);
            assert!(left.contains(&hangs_on));
            assert!(left.len() == 1 || left.iter().all(|&d| !switched(d)), "{left:?}");
        }
        count
    }

    /// Fewest walks in the worst case for a set of answers, by trying every set of devices.
    fn least_worst(answers: u32, switchable: u32, known: &mut Vec<Option<u32>>) -> u32 {
        if answers.count_ones() <= 1 {
            return 0;
        }
        if let Some(found) = known[answers as usize] {
            return found;
        }
        let mut best = u32::MAX;
        let can = answers & switchable;
        let mut off = can;
        while off != 0 {
            if off != answers {
                let worse = least_worst(off, switchable, known).max(least_worst(
                    answers & !off,
                    switchable,
                    known,
                ));
                best = best.min(1 + worse);
            }
            off = (off - 1) & can;
        }
        known[answers as usize] = Some(best);
        best
    }

    /// Least expected walks for one thing, by trying every set of devices.
    fn least_expected(answers: u32, weights: &[f64], known: &mut Vec<Option<f64>>) -> f64 {
        if answers.count_ones() <= 1 {
            return 0.0;
        }
        if let Some(found) = known[answers as usize] {
            return found;
        }
        let sum = |set: u32| -> f64 {
            (0..weights.len()).filter(|d| set >> d & 1 == 1).map(|d| weights[d]).sum()
        };
        let mut best = f64::INFINITY;
        let mut off = (answers - 1) & answers;
        while off != 0 {
            let rest = answers & !off;
            let then = sum(off) * least_expected(off, weights, known)
                + sum(rest) * least_expected(rest, weights, known);
            best = best.min(1.0 + then / sum(answers));
            off = (off - 1) & answers;
        }
        known[answers as usize] = Some(best);
        best
    }

    #[test]
    fn no_strategy_needs_fewer_walks_in_the_worst_case() {
        for devices in 1..=6_usize {
            for none in [false, true] {
                let answers = devices + usize::from(none);
                let mut known = vec![None; 1 << answers];
                let all = (1_u32 << answers) - 1;
                let best = least_worst(all, (1 << devices) - 1, &mut known);
                assert_eq!(best, height(answers));
                let mut belief = vec![1.0; devices];
                belief.push(if none { 1.0 } else { 0.0 });
                let allowed = vec![true; devices];
                // Three things at once, on every combination of devices.
                let mut worst = 0;
                for code in 0..answers.pow(3) {
                    let truth =
                        [code % answers, code / answers % answers, code / answers / answers];
                    worst = worst.max(walks(&vec![belief.clone(); 3], &allowed, &truth));
                }
                assert_eq!(worst, best, "{devices} devices, none: {none}");
            }
        }
    }

    #[test]
    fn twenty_breakers_take_five_walks_instead_of_nineteen() {
        let mut belief = vec![1.0; 20];
        belief.push(0.0);
        let allowed = vec![true; 20];
        let truth: Vec<usize> = (0..60).map(|i| i * 7 % 20).collect();
        assert_eq!(walks(&vec![belief; 60], &allowed, &truth), 5);
    }

    #[test]
    fn what_must_stay_on_is_told_by_what_is_left() {
        let belief = vec![1.0, 1.0, 1.0, 1.0, 0.0];
        // Device 2 may not be off: of four answers one is never dead.
        let allowed = [true, true, false, true];
        for truth in 0..4 {
            assert!(walks(std::slice::from_ref(&belief), &allowed, &[truth]) <= 2);
        }
        assert_eq!(choose(&[vec![1.0, 0.0, 1.0]], &[false, false], &[0.0; 2]), None);
    }

    proptest! {
        /// For one thing the expected walks are within one walk of the best that any strategy
        /// could do (brute force), and for several none is ever above the bound.
        #[test]
        fn likely_devices_are_found_sooner_and_never_beyond_the_bound(
            weights in proptest::collection::vec(1_u32..40, 2..7),
            several in proptest::collection::vec(proptest::collection::vec(1_u32..9, 6), 1..5),
        ) {
            let shares: Vec<f64> = weights.iter().map(|w| f64::from(*w)).collect();
            let devices = shares.len();
            let total: f64 = shares.iter().sum();
            let mut belief = shares.clone();
            belief.push(0.0);
            let allowed = vec![true; devices];
            let ours: f64 = (0..devices)
                .map(|truth| shares[truth] / total * f64::from(walks(std::slice::from_ref(&belief), &allowed, &[truth])))
                .sum();
            let best = least_expected((1 << devices) - 1, &shares, &mut vec![None; 1 << devices]);
            // The bound on the worst case has its price in the mean: with five devices of which one
            // is nearly certain, asking for it alone would be best and could take four walks.
            prop_assert!(ours <= best + 1.0 + 1e-9, "{ours} {best} {weights:?}");
            prop_assert!(ours <= f64::from(height(devices)) + 1e-9);
            let beliefs: Vec<Belief> = several
                .iter()
                .map(|ws| ws.iter().map(|w| f64::from(*w)).chain([0.0]).collect())
                .collect();
            let truth: Vec<usize> = (0..beliefs.len()).map(|i| (i * 5 + devices) % 6).collect();
            prop_assert!(walks(&beliefs, &[true; 6], &truth) <= 3);
        }
    }
}
