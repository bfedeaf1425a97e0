//! The best sets of devices that cut a spot off.

use std::cmp::Ordering;
use std::collections::{BTreeSet, BinaryHeap};

use crate::{Cut, Cutter, Dominators, Network, Node};

/// What may be shut, at what cost, and what would be missed.
///
/// All costs are in the same whole units, such as tenths of a second.
pub trait Terms {
    /// Cost of working a device; `None` if it can't be used (failed, seized, does not hold).
    fn effort(&self, device: Node) -> Option<u64>;
    /// True if a device is shut already and holds.
    fn is_shut(&self, device: Node) -> bool;
    /// What it costs that a node goes off. Give it to what people use, never to pipes.
    fn loss(&self, node: Node) -> u64;
}

/// A minimal set of devices that cuts the targets off.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Set {
    /// Effort and loss together.
    pub cost: u64,
    /// The devices, by number.
    pub devices: Vec<Node>,
}

/// What a search for sets found.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Isolation {
    /// Best first: by cost, then fewer devices, then smaller numbers.
    pub sets: Vec<Set>,
    /// True if no better set can have been missed.
    pub proven: bool,
}

/// Searches the sets that cut targets off in one network under one set of terms.
#[derive(Debug)]
pub struct Isolator<'a, T> {
    network: &'a Network,
    terms: &'a T,
    cutter: Cutter,
    fed: Vec<bool>,
    floor: Vec<u64>,
}

/// A part of all sets still to be searched: those with `within` and without `without`.
struct Part {
    /// No set in this part costs less.
    bound: u64,
    /// Breaks ties, so that the order of the search is the same each time.
    number: usize,
    found: Vec<Node>,
    within: Vec<Node>,
    without: Vec<Node>,
}

impl<'a, T: Terms> Isolator<'a, T> {
    /// Prepares the search. Time: arcs.
    #[must_use]
    pub fn new(network: &'a Network, terms: &'a T) -> Self {
        Self::with_cutter(network, terms, Cutter::new(network))
    }

    /// Prepares the search with a cutter made before. Time: arcs.
    #[must_use]
    pub fn with_cutter(network: &'a Network, terms: &'a T, mut cutter: Cutter) -> Self {
        let shut = |node: Node| network.is_device(node) && terms.is_shut(node);
        let dominators = Dominators::of(network, shut);
        let fed = network.reached(shut);
        // What only gets its supply through a device is certainly lost with it, and no two members
        // of a minimal set have the same loss: a lower bound that adds up.
        let sums = dominators.sums(|node| terms.loss(node));
        let floor: Vec<u64> = (0..network.nodes())
            .map(|index| {
                let node = as_node(index);
                // Nothing goes off with a device that nothing feeds: its sum is 0, whatever its own loss.
                if network.is_device(node) { sums[index].saturating_sub(terms.loss(node)) } else { 0 }
            })
            .collect();
        cutter.set_costs(|device| {
            if terms.is_shut(device) {
                Some(0)
            } else {
                // A set must never look free, or it could not be told from one that is shut.
                terms.effort(device).map(|effort| effort.max(1) + floor[device as usize])
            }
        });
        Self { network, terms, cutter, fed, floor }
    }

    /// Prepares a search in which nothing is missed when it goes off: effort alone counts.
    #[must_use]
    pub fn without_loss(network: &'a Network, terms: &'a T, mut cutter: Cutter) -> Self {
        cutter.set_costs(|device| {
            if terms.is_shut(device) { Some(0) } else { terms.effort(device).map(|e| e.max(1)) }
        });
        Self { network, terms, cutter, fed: Vec::new(), floor: vec![0; network.nodes()] }
    }

    /// The `k` best minimal sets that cut all of `targets` off from every source, with at most
    /// `budget` maximum flows.
    ///
    /// No set holds a target: a device that leaks itself is not stopped by shutting it. An empty
    /// list means that nothing operable cuts the targets off, or that nothing feeds them (see
    /// [`Network::is_fed`]).
    ///
    /// Method: partition of the solutions (Lawler 1972, Murty 1968) in the order of a lower bound
    /// that adds up (effort and what each device alone takes off), until no part left can hold a
    /// better set. Time: about `k` × set size flows where the bound is tight.
    pub fn best(&mut self, targets: &[Node], k: usize, budget: usize) -> Isolation {
        let mut found: Vec<Set> = Vec::new();
        let mut seen: BTreeSet<Vec<Node>> = BTreeSet::new();
        let mut parts: BinaryHeap<Part> = BinaryHeap::new();
        let mut flows = 0;
        let mut number = 0;
        let mut add = |this: &mut Self,
                       parts: &mut BinaryHeap<Part>,
                       flows: &mut usize,
                       within: Vec<Node>,
                       without: Vec<Node>| {
            *flows += 1;
            if let Some((bound, found)) = this.cut(targets, &within, &without) {
                number += 1;
                parts.push(Part { bound, number, found, within, without });
            }
        };
        if k > 0 && self.network.is_fed(targets, |node| self.is_shut(node)) {
            add(self, &mut parts, &mut flows, Vec::new(), Vec::new());
        }
        let mut proven = true;
        while let Some(part) = parts.pop() {
            // Sets of equal cost are all found, so that their order does not hang on the search.
            if found.len() >= k && found.get(k - 1).is_some_and(|set| part.bound > set.cost) {
                break;
            }
            // A cheapest cut is minimal by itself; one that was made to hold devices may not be.
            let minimal = part.within.is_empty() || self.can_matter(targets, &part.found);
            if minimal && !part.found.is_empty() && !seen.contains(&part.found) {
                let cost = self.cost(&part.found);
                let set = Set { cost, devices: part.found.clone() };
                let place = found.partition_point(|other| in_order(other, &set).is_lt());
                found.insert(place, set);
                seen.insert(part.found.clone());
            }
            if flows >= budget {
                proven = false;
                break;
            }
            let free: Vec<Node> =
                part.found.iter().copied().filter(|d| !part.within.contains(d)).collect();
            for (place, &device) in free.iter().enumerate() {
                let mut within = part.within.clone();
                within.extend_from_slice(&free[..place]);
                if !self.can_matter(targets, &within) {
                    continue;
                }
                let mut without = part.without.clone();
                without.push(device);
                add(self, &mut parts, &mut flows, within, without);
            }
        }
        found.truncate(k);
        Isolation { sets: found, proven }
    }

    /// One best set, with as little work as can be: among sets of equal cost the one nearest to the
    /// targets, instead of the stated order. `None` if nothing cuts the targets off, or nothing
    /// feeds them, or the budget ended.
    ///
    /// Time: one maximum flow where the bound is tight, as it is for every single device.
    pub fn first(&mut self, targets: &[Node], budget: usize) -> Option<Set> {
        let (bound, devices) = self.cut(targets, &[], &[])?;
        if devices.is_empty() {
            return None;
        }
        let cost = self.cost(&devices);
        if cost == bound {
            return Some(Set { cost, devices });
        }
        self.best(targets, 1, budget).sets.into_iter().next()
    }

    /// Effort and loss of shutting a set.
    #[must_use]
    pub fn cost(&self, devices: &[Node]) -> u64 {
        let effort: u64 =
            devices.iter().filter_map(|&d| self.terms.effort(d)).map(|e| e.max(1)).sum();
        if self.fed.is_empty() {
            return effort;
        }
        if let [only] = devices {
            return effort + self.floor[*only as usize];
        }
        let left = self.network.reached(|n| self.is_shut(n) || devices.contains(&n));
        let lost: u64 = (0..left.len())
            .filter(|&index| self.fed[index] && !left[index])
            .map(|index| self.terms.loss(as_node(index)))
            .sum();
        effort + lost
    }

    /// Nodes that had supply before anything was shut.
    #[must_use]
    pub fn fed(&self) -> &[bool] {
        &self.fed
    }

    /// What goes off when a set is shut, by number.
    #[must_use]
    pub fn lost(&self, devices: &[Node]) -> Vec<Node> {
        let left = self.network.reached(|n| self.is_shut(n) || devices.contains(&n));
        (0..left.len()).filter(|&i| self.fed[i] && !left[i]).map(as_node).collect()
    }

    fn is_shut(&self, node: Node) -> bool {
        self.network.is_device(node) && self.terms.is_shut(node)
    }

    /// The cheapest set with `within` and without `without`, and the bound of its cost.
    fn cut(
        &mut self,
        targets: &[Node],
        within: &[Node],
        without: &[Node],
    ) -> Option<(u64, Vec<Node>)> {
        let mut before: Vec<(Node, u64)> = Vec::with_capacity(within.len() + without.len());
        let mut bound = 0;
        for &device in within {
            let cost = self.cutter.set_cost(device, 0);
            bound += cost;
            before.push((device, cost));
        }
        for &device in without {
            before.push((device, self.cutter.set_cost(device, crate::cut::UNLIMITED)));
        }
        let cut = self.cutter.cheapest(targets);
        for (device, cost) in before.into_iter().rev() {
            self.cutter.set_cost(device, cost);
        }
        let Cut::Devices(mut devices, cost) = cut else { return None };
        devices.extend_from_slice(within);
        devices.sort_unstable();
        Some((bound + cost, devices))
    }

    /// True if each of `devices` still lets something through to the targets when all the others
    /// are shut; otherwise no minimal set holds them all.
    fn can_matter(&self, targets: &[Node], devices: &[Node]) -> bool {
        devices.iter().all(|&device| {
            let others = |n: Node| n != device && devices.contains(&n);
            self.reaches_through(targets, device, others)
        })
    }

    /// True if something flows from a source to `device` and from it to a target with `others` shut.
    fn reaches_through(
        &self,
        targets: &[Node],
        device: Node,
        others: impl Fn(Node) -> bool,
    ) -> bool {
        let shut = |n: Node| self.is_shut(n) || others(n);
        self.network.is_fed(&[device], shut)
            && self
                .network
                .reached_from(&[device], |n| n != device && shut(n))
                .iter()
                .enumerate()
                .any(|(index, &reached)| reached && targets.contains(&as_node(index)))
    }
}

#[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³² nodes")]
fn as_node(index: usize) -> Node {
    index as Node
}

/// The stated order of sets: by cost, then fewer devices, then smaller numbers.
fn in_order(a: &Set, b: &Set) -> Ordering {
    (a.cost, a.devices.len(), &a.devices).cmp(&(b.cost, b.devices.len(), &b.devices))
}

impl PartialEq for Part {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other).is_eq()
    }
}

impl Eq for Part {}

impl PartialOrd for Part {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Part {
    /// Least bound first out of the heap.
    fn cmp(&self, other: &Self) -> Ordering {
        (other.bound, other.number).cmp(&(self.bound, self.number))
    }
}
