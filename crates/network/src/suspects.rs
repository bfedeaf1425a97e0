//! What may be the cause of dead power, and the next check that tells most.

use std::collections::BTreeSet;

use crate::{Builder, Cutter, Dominators, Isolator, Network, Node, Terms, as_node};

/// A network in which every node can fail, with a load hung on those that people plug into.
///
/// An outlet can be dead through a fault of its own, so what is seen is the load's state.
#[derive(Debug, Clone)]
pub struct Faults {
    network: Network,
    load: Vec<Node>,
    dominators: Dominators,
    cutter: Cutter,
}

/// How likely each node is to have failed, before anything was seen.
pub trait Priors {
    /// Odds against a fault, as the natural logarithm of (1 − p) / p; `None` for what can't fail or
    /// was seen to be sound. Zero or less for what was seen to have failed.
    fn odds_against(&self, node: Node) -> Option<f64>;
}

/// What was seen.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Observed {
    /// Nodes seen to be dead.
    pub dead: Vec<Node>,
    /// Nodes seen to be live.
    pub live: Vec<Node>,
}

/// A set of faults that explains all that was seen, none of them needless.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// The faults, by number.
    pub faults: Vec<Node>,
    /// Its probability among the diagnoses found.
    pub share: f64,
}

/// What may be the cause.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Diagnoses {
    /// Most likely first, ties by numbers.
    pub list: Vec<Diagnosis>,
    /// Live reports that had to be disbelieved, since nothing explains all that was seen.
    pub disbelieved: Vec<Node>,
}

/// Odds are searched in thousandths of a natural logarithm.
const SCALE: f64 = 1000.0;

impl Faults {
    /// Hangs a load on each of `loads`. Nothing comes through what is `shut` on an ordinary day, such
    /// as an interlocked generator's breaker. Time: arcs.
    #[must_use]
    pub fn of(network: &Network, loads: &[Node], shut: impl Fn(Node) -> bool) -> Self {
        let plain = network.nodes();
        let mut builder = Builder::with_capacity(plain + loads.len());
        for _ in 0..plain {
            builder.device();
        }
        for &(a, b) in network.arc_list().iter().filter(|&&(a, _)| !shut(a)) {
            builder.one_way(a, b);
        }
        // A source can fail too (an outage): what it gives comes from behind it.
        for &source in network.sources() {
            let behind = builder.source();
            builder.one_way(behind, source);
        }
        let mut load: Vec<Node> = (0..as_node(plain)).collect();
        for &node in loads {
            load[node as usize] = builder.node();
            builder.one_way(node, load[node as usize]);
        }
        let network = builder.build();
        let dominators = Dominators::of(&network, |_| false);
        let cutter = Cutter::new(&network);
        Self { network, load, dominators, cutter }
    }

    /// The `most` likeliest minimal diagnoses.
    ///
    /// With only dead reports they are the minimal cuts between the supply and all dead loads, and
    /// the cheapest cut by odds is the most probable one. Live reports clear what they certainly
    /// pass through (a load with two feeds clears neither), and drop the diagnoses that contradict
    /// them. If nothing explains everything, live reports are disbelieved one at a time (a test lamp
    /// can lie). Time: about `most` maximum flows.
    #[must_use]
    pub fn diagnoses(&self, priors: &impl Priors, seen: &Observed, most: usize) -> Diagnoses {
        let list = self.explain(priors, &seen.dead, &seen.live, most);
        if !list.is_empty() || seen.live.is_empty() {
            return Diagnoses { list, disbelieved: Vec::new() };
        }
        for &doubted in &seen.live {
            let rest: Vec<Node> = seen.live.iter().copied().filter(|&l| l != doubted).collect();
            let list = self.explain(priors, &seen.dead, &rest, most);
            if !list.is_empty() {
                return Diagnoses { list, disbelieved: vec![doubted] };
            }
        }
        let list = self.explain(priors, &seen.dead, &[], most);
        Diagnoses { list, disbelieved: seen.live.clone() }
    }

    fn explain(
        &self,
        priors: &impl Priors,
        dead: &[Node],
        live: &[Node],
        most: usize,
    ) -> Vec<Diagnosis> {
        let mut cleared: BTreeSet<Node> = BTreeSet::new();
        for &node in live {
            let load = self.load[node as usize];
            cleared.extend(self.dominators.above(load));
        }
        let terms = Odds { priors, cleared: &cleared };
        let targets: Vec<Node> = dead.iter().map(|&node| self.load[node as usize]).collect();
        if targets.is_empty() {
            return Vec::new();
        }
        let mut search = Isolator::without_loss(&self.network, &terms, self.cutter.clone());
        // Diagnoses that a live report contradicts fall out below, so a few more are asked for.
        let wanted = if live.is_empty() { most } else { 4 * most };
        let found = search.best(&targets, wanted, 40 * wanted);
        let mut list: Vec<Diagnosis> = found
            .sets
            .into_iter()
            .filter(|set| {
                live.iter().all(|&node| {
                    let load = self.load[node as usize];
                    self.network.is_fed(&[load], |n| set.devices.binary_search(&n).is_ok())
                })
            })
            .take(most)
            .map(|set| {
                let odds: f64 = set.devices.iter().filter_map(|&d| terms.odds(d)).sum();
                Diagnosis { faults: set.devices, share: (-odds).exp() }
            })
            .collect();
        let total: f64 = list.iter().map(|d| d.share).sum();
        for diagnosis in &mut list {
            diagnosis.share /= total;
        }
        list.sort_by(|a, b| b.share.total_cmp(&a.share).then_with(|| a.faults.cmp(&b.faults)));
        list
    }

    /// For each diagnosis, which loads it leaves live.
    #[must_use]
    pub fn live_loads(&self, diagnosis: &Diagnosis, nodes: &[Node]) -> Vec<bool> {
        let left = self.network.reached(|n| diagnosis.faults.binary_search(&n).is_ok());
        nodes.iter().map(|&node| left[self.load[node as usize] as usize]).collect()
    }
}

/// A check one can make: which node, what it costs, and what each diagnosis says of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// Where to look.
    pub node: Node,
    /// Walking and looking, in seconds.
    pub seconds: f64,
    /// For each diagnosis, whether the check would then come out "good".
    pub good: Vec<bool>,
}

/// The check that tells most bits per second, if any tells anything; ties by the order given.
///
/// Bits are the entropy of the outcome under the diagnoses' shares, since each diagnosis decides
/// the outcome. This rule looks one step ahead; against the best plan it costs a few per cent more
/// walking on average.
#[must_use]
pub fn next_check<'c>(diagnoses: &[Diagnosis], checks: &'c [Check]) -> Option<(&'c Check, f64)> {
    let mut best: Option<(&Check, f64)> = None;
    for check in checks {
        let good: f64 = diagnoses
            .iter()
            .zip(&check.good)
            .filter(|(_, good)| **good)
            .map(|(d, _)| d.share)
            .sum();
        let rate = entropy(good) / check.seconds.max(1.0);
        if rate > 1e-9 && best.is_none_or(|(_, known)| rate > known + 1e-12) {
            best = Some((check, rate));
        }
    }
    best
}

/// Each node's share of the blame: a diagnosis's share is split evenly among its faults, so that
/// all shares make 1. Largest first, ties by number.
#[must_use]
pub fn blame(diagnoses: &[Diagnosis]) -> Vec<(Node, f64)> {
    let mut shares: std::collections::BTreeMap<Node, f64> = std::collections::BTreeMap::new();
    for diagnosis in diagnoses {
        #[expect(clippy::cast_precision_loss, reason = "a diagnosis has a handful of faults")]
        let part = diagnosis.share / diagnosis.faults.len() as f64;
        for &fault in &diagnosis.faults {
            *shares.entry(fault).or_default() += part;
        }
    }
    let mut list: Vec<(Node, f64)> = shares.into_iter().collect();
    list.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
    list
}

/// Bits told by something that happens with probability `p`.
fn entropy(p: f64) -> f64 {
    let term = |p: f64| if p > 0.0 && p < 1.0 { -p * p.log2() } else { 0.0 };
    term(p) + term(1.0 - p)
}

struct Odds<'a, P> {
    priors: &'a P,
    cleared: &'a BTreeSet<Node>,
}

impl<P: Priors> Odds<'_, P> {
    fn odds(&self, node: Node) -> Option<f64> {
        if self.cleared.contains(&node) {
            return None;
        }
        self.priors.odds_against(node)
    }
}

impl<P: Priors> Terms for Odds<'_, P> {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "odds are clamped to a small positive range"
    )]
    fn effort(&self, device: Node) -> Option<u64> {
        self.odds(device).map(|odds| (odds.clamp(0.001, 1e6) * SCALE).round() as u64)
    }

    fn is_shut(&self, _: Node) -> bool {
        false
    }

    fn loss(&self, _: Node) -> u64 {
        0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    struct Same(f64);

    impl Priors for Same {
        fn odds_against(&self, _: Node) -> Option<f64> {
            Some(self.0)
        }
    }

    /// utility 0 → b1 1, b2 2; b1 → x 3; b2 → x; b1 → y 4.
    fn two_feeds() -> Faults {
        let mut b = Builder::default();
        let u = b.source();
        let nodes: Vec<Node> = (0..4).map(|_| b.node()).collect();
        for (from, to) in [(u, nodes[0]), (u, nodes[1]), (nodes[0], nodes[2])] {
            b.one_way(from, to);
        }
        b.one_way(nodes[1], nodes[2]);
        b.one_way(nodes[0], nodes[3]);
        Faults::of(&b.build(), &[3, 4], |_| false)
    }

    /// Row 18 of the design's table of traps: a live outlet with two feeds clears neither.
    #[test]
    fn a_live_outlet_with_two_feeds_clears_neither() {
        let seen = Observed { dead: vec![4], live: vec![3] };
        let found = two_feeds().diagnoses(&Same(3.0), &seen, 5);
        let sets: Vec<&[Node]> = found.list.iter().map(|d| d.faults.as_slice()).collect();
        assert_eq!(sets, [&[1][..], &[4]]);
        assert!(found.disbelieved.is_empty());
    }

    #[test]
    fn a_live_outlet_clears_what_it_certainly_hangs_on() {
        let seen = Observed { dead: vec![3], live: vec![4] };
        let found = two_feeds().diagnoses(&Same(3.0), &seen, 5);
        assert_eq!(found.list.len(), 1);
        assert_eq!(found.list[0].faults, [3]);
    }

    #[test]
    fn a_test_lamp_that_lies_is_disbelieved() {
        let mut b = Builder::default();
        let u = b.source();
        let breaker = b.node();
        b.one_way(u, breaker);
        let faults = Faults::of(&b.build(), &[breaker], |_| false);
        let seen = Observed { dead: vec![breaker], live: vec![breaker] };
        let found = faults.diagnoses(&Same(3.0), &seen, 5);
        assert_eq!(found.disbelieved, [breaker]);
        assert!(!found.list.is_empty());
    }

    #[test]
    fn the_check_that_halves_the_blame_wins_unless_it_is_far() {
        let d = |fault, share| Diagnosis { faults: vec![fault], share };
        let list = [d(1, 0.5), d(2, 0.3), d(3, 0.2)];
        let check = |node, seconds, good: [bool; 3]| Check { node, seconds, good: good.to_vec() };
        let near = [
            check(7, 10.0, [false, true, true]),
            check(8, 10.0, [true, true, false]),
            check(9, 10.0, [true, true, true]),
        ];
        assert_eq!(next_check(&list, &near).unwrap().0.node, 7);
        let far = [check(7, 40.0, [false, true, true]), check(8, 10.0, [true, true, false])];
        assert_eq!(next_check(&list, &far).unwrap().0.node, 8);
        assert_eq!(next_check(&list, &[check(9, 1.0, [true; 3])]), None);
    }
}
