//! The best sets of devices that cut a spot off.

use std::cmp::Ordering;
use std::collections::{BTreeSet, BinaryHeap};

use crate::cut::UNLIMITED;
use crate::dry::Feeds;
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
    /// What feeds what; none where effort alone counts.
    feeds: Option<Feeds>,
    seen: Vec<bool>,
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
        let shut = |node: Node| network.is_device(node) && terms.is_shut(node);
        let dominators = Dominators::of(network, shut);
        let cutter = Cutter::with_losses(network, Some(&dominators), |node| terms.loss(node));
        Self::prepared(network, terms, cutter, Some(Feeds::of(network, shut)))
    }

    /// Prepares a search in which nothing is missed when it goes off: effort alone counts.
    #[must_use]
    pub fn without_loss(network: &'a Network, terms: &'a T, cutter: Cutter) -> Self {
        Self::prepared(network, terms, cutter, None)
    }

    fn prepared(
        network: &'a Network,
        terms: &'a T,
        mut cutter: Cutter,
        feeds: Option<Feeds>,
    ) -> Self {
        cutter.set_costs(|device| {
            if terms.is_shut(device) { Some(0) } else { terms.effort(device).map(working) }
        });
        Self { network, terms, cutter, feeds, seen: vec![false; network.nodes()] }
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
        let fed = match &self.feeds {
            Some(feeds) => targets.iter().any(|&target| feeds.is_fed(target)),
            None => self.network.is_fed(targets, |node| self.is_shut(node)),
        };
        if k > 0 && fed {
            add(self, &mut parts, &mut flows, Vec::new(), Vec::new());
        }
        let mut proven = true;
        while let Some(part) = parts.pop() {
            // Sets of equal cost are all found, so that their order does not hang on the search.
            if found.len() >= k && found.get(k - 1).is_some_and(|set| part.bound > set.cost) {
                break;
            }
            // A cut of least bound is not always minimal: the bound doesn't see all losses.
            let is_new = !part.found.is_empty() && !seen.contains(&part.found);
            if is_new && self.can_matter(targets, &part.found) {
                let cost = self.cost(&part.found);
                let set = Set { cost, devices: part.found.clone() };
                let place = found.partition_point(|other| in_order(other, &set).is_lt());
                found.insert(place, set);
                seen.insert(part.found.clone());
            }
            if flows >= budget {
                // No part is searched further, but what was found in each still counts.
                proven = false;
                continue;
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

    /// Effort and loss of shutting a set. Time: the arcs of what lies below it.
    pub fn cost(&mut self, devices: &[Node]) -> u64 {
        let effort: u64 = devices.iter().filter_map(|&d| self.terms.effort(d)).map(working).sum();
        effort + self.lost(devices).iter().map(|&node| self.terms.loss(node)).sum::<u64>()
    }

    /// What goes off when a set is shut, by number; nothing where effort alone counts.
    ///
    /// Time: the arcs of what lies below the set.
    pub fn lost(&mut self, devices: &[Node]) -> Vec<Node> {
        let (network, terms) = (self.network, self.terms);
        let Some(feeds) = &mut self.feeds else { return Vec::new() };
        let shut = |node: Node| network.is_device(node) && terms.is_shut(node);
        let mut lost = feeds.dry(network, devices, shut);
        lost.sort_unstable();
        lost
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
        let certain = self.certainly_lost(targets, within, without);
        let mut bound = 0;
        for &node in &certain {
            bound += self.terms.loss(node);
            self.cutter.leave_out(node, self.terms.loss(node));
        }
        let mut costs: Vec<(Node, u64)> = Vec::with_capacity(within.len() + without.len());
        for &device in within {
            let cost = self.cutter.set_cost(device, 0);
            bound += cost;
            costs.push((device, cost));
        }
        for &device in without {
            costs.push((device, self.cutter.set_cost(device, UNLIMITED)));
        }
        let cut = self.cutter.cheapest(targets);
        for (device, cost) in costs {
            self.cutter.set_cost(device, cost);
        }
        for &node in &certain {
            self.cutter.put_back(node, self.terms.loss(node));
        }
        let Cut::Devices(mut devices, cost) = cut else { return None };
        devices.extend_from_slice(within);
        devices.sort_unstable();
        Some((bound + cost, devices))
    }

    /// What is lost with every set that has `within` and has not `without`, each node once.
    ///
    /// ```text
    ///   a ── pipe ── b            a and b both feed pipe and bath, so neither holds the bath alone;
    ///   └─► bath ◄── pipe         but whatever cuts the pipe off from both takes the bath too
    /// ```
    fn certainly_lost(&mut self, targets: &[Node], within: &[Node], without: &[Node]) -> Vec<Node> {
        let (network, terms) = (self.network, self.terms);
        let Some(feeds) = &mut self.feeds else { return Vec::new() };
        let shut = |node: Node| network.is_device(node) && terms.is_shut(node);
        let can_close = |node: Node| {
            network.is_device(node)
                && terms.effort(node).is_some()
                && !targets.contains(&node)
                && !without.contains(&node)
        };
        // Nothing may arrive at the targets, nor at what reaches them past no device that can be
        // closed, nor at what is fed through these only.
        let mut lost: Vec<Node> =
            network.behind(targets, &mut self.seen, |node| shut(node) || can_close(node));
        lost.retain(|&node| feeds.is_fed(node));
        let mut closed = lost.clone();
        closed.extend_from_slice(within);
        lost.extend(feeds.dry(network, &closed, shut));
        lost.sort_unstable();
        lost.dedup();
        lost
    }

    /// True if each of `devices` still lets something through to the targets when all the others
    /// are shut; otherwise no minimal set holds them all.
    fn can_matter(&mut self, targets: &[Node], devices: &[Node]) -> bool {
        let (network, terms) = (self.network, self.terms);
        let shut = |node: Node| network.is_device(node) && terms.is_shut(node);
        let stops = |node: Node| shut(node) || devices.contains(&node);
        let near = network.behind(targets, &mut self.seen, stops);
        devices.iter().all(|&device| {
            let leads_on = network.out(device).iter().any(|next| near.binary_search(next).is_ok());
            let others: Vec<Node> = devices.iter().copied().filter(|&d| d != device).collect();
            leads_on
                && match &mut self.feeds {
                    Some(feeds) => {
                        let is_dry = |dry: &[Node]| dry.contains(&device);
                        feeds.is_fed(device) && !is_dry(&feeds.dry(network, &others, shut))
                    }
                    None => network.is_fed(&[device], |n| shut(n) || others.contains(&n)),
                }
        })
    }
}

/// What working a device costs: never nothing, or it could not be told from one that is shut.
fn working(effort: u64) -> u64 {
    effort.max(1)
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
