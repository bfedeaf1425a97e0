//! What goes off in a home when devices are shut.

use std::collections::BTreeMap;

use quarterturn_home::{Home, Kind, Medium, Net};

use crate::alive::{Needs, Supply};
use crate::{HomeNet, Node, Places, as_node};

/// A home's supplies, with what each component needs.
#[derive(Debug, Clone)]
pub struct Impact {
    supply: Supply,
    /// For each component and each of [`TRACED`], the node that tells whether something arrives.
    arrives: Vec<[Option<u32>; 3]>,
    /// For each pit, the pumps that empty it, as places in the home.
    pumps: Vec<(usize, Vec<usize>)>,
    served: Vec<bool>,
    /// For what people use, the connections that bring it hot or cold water: from, medium.
    water_lines: BTreeMap<usize, Vec<(usize, Medium)>>,
}

/// What arrives where.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Arriving(Vec<bool>);

/// What goes off.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Lost {
    /// Components that no longer have all that they need, by place in the home.
    pub off: Vec<usize>,
    /// Components that still work, but only with cold water.
    pub without_hot: Vec<usize>,
    /// Components that still work, but only with hot water.
    pub without_cold: Vec<usize>,
}

const TRACED: [Net; 3] = [Net::Water, Net::Power, Net::Gas];

impl Impact {
    /// Reads off a home what needs what. Time: components + connections.
    #[must_use]
    pub fn of(home: &Home, places: &Places<'_>) -> Self {
        let count = home.components.len();
        let mut supply = Needs::default();
        let mut arrives = vec![[None; 3]; count];
        let nets = TRACED.map(|net| HomeNet::of(home, places, net, None));
        let mut first = [0_u32; 3];
        for (slot, net) in nets.iter().enumerate() {
            first[slot] = as_node(supply.nodes());
            for node in 0..net.network.nodes() {
                let added = supply.node();
                if let Some(here) = arrives.get_mut(node).filter(|_| net.member[node]) {
                    here[slot] = Some(added);
                }
            }
        }
        for (slot, net) in nets.iter().enumerate() {
            let here = |node: Node| first[slot] + node;
            for node in 0..net.network.nodes() {
                let node = as_node(node);
                if !net.network.is_source(node) {
                    let legs = legs(home, places, net, node);
                    if legs.is_empty() {
                        let port = supply.port(here(node));
                        for &feeder in net.network.feeders(node) {
                            supply.feed(here(feeder), port);
                        }
                    }
                    for leg in legs {
                        let port = supply.port(here(node));
                        supply.feed(here(leg), port);
                    }
                    continue;
                }
                // A source that is wired (a well's pump) or piped (a generator) needs that too.
                for (other, _) in nets.iter().enumerate().filter(|&(other, _)| other != slot) {
                    if let Some(need) = arrives.get(node as usize).and_then(|a| a[other]) {
                        let port = supply.port(here(node));
                        supply.feed(need, port);
                    }
                }
            }
        }
        let mut water_lines: BTreeMap<usize, Vec<(usize, Medium)>> = BTreeMap::new();
        for link in home.connections.iter().filter(|link| link.carries.net() == Net::Water) {
            if let (Some(from), Some(to)) = (places.of(&link.from), places.of(&link.to))
                && home.components[to].kind.is_served()
            {
                water_lines.entry(to).or_default().push((from, link.carries));
            }
        }
        let served = home.components.iter().map(|c| c.kind.is_served()).collect();
        let supply = supply.build();
        Self { supply, arrives, pumps: pumps(home, places), served, water_lines }
    }

    /// The pumps that empty a pit, by place in the home.
    #[must_use]
    pub fn pumps_of(&self, pit: usize) -> &[usize] {
        self.pumps.iter().find(|(place, _)| *place == pit).map_or(&[], |(_, pumps)| pumps)
    }

    /// What arrives where when the components marked by `shut` are shut. Time: connections.
    #[must_use]
    pub fn arriving(&self, shut: impl Fn(usize) -> bool) -> Arriving {
        let mut dead = vec![false; self.supply.nodes()];
        for (place, nodes) in self.arrives.iter().enumerate() {
            if shut(place) {
                for node in nodes.iter().flatten() {
                    dead[*node as usize] = true;
                }
            }
        }
        Arriving(self.supply.alive(|node| dead[node as usize]))
    }

    /// What goes off when the components marked by `shut` are shut, of what had its supply `before`.
    ///
    /// A component counts as off only if something it had before no longer arrives: what has another
    /// feed is still served, and what the map never fed is not blamed on the set. Time: connections.
    #[must_use]
    pub fn lost(&self, before: &Arriving, shut: impl Fn(usize) -> bool) -> Lost {
        let (before, after) = (&before.0, self.arriving(&shut).0);
        let mut lost = Lost::default();
        let mut is_off = vec![false; self.arrives.len()];
        for (place, off) in is_off.iter_mut().enumerate() {
            let needed = |slot: usize| self.arrives[place][slot].filter(|&n| before[n as usize]);
            *off = self.served[place]
                && (0..3).any(|slot| needed(slot).is_some_and(|n| !after[n as usize]));
        }
        for (pit, pumps) in &self.pumps {
            if !pumps.is_empty() {
                is_off[*pit] = pumps.iter().all(|&pump| is_off[pump]);
            }
        }
        lost.off = (0..is_off.len()).filter(|&place| is_off[place]).collect();
        for (&place, lines) in self.water_lines.iter().filter(|(place, _)| !is_off[**place]) {
            let has = |alive: &[bool], medium: Medium, open: &dyn Fn(usize) -> bool| {
                lines.iter().any(|&(from, carries)| {
                    let arrives = self.arrives[from][0].is_some_and(|n| alive[n as usize]);
                    carries == medium && arrives && open(from)
                })
            };
            let gone = |medium: Medium| {
                has(before, medium, &|_| true) && !has(&after, medium, &|from| !shut(from))
            };
            if gone(Medium::HotWater) {
                lost.without_hot.push(place);
            }
            if gone(Medium::ColdWater) {
                lost.without_cold.push(place);
            }
        }
        lost
    }
}

/// The feeders that a load of two or more poles needs all of: single-pole breakers, one a leg.
fn legs(home: &Home, places: &Places<'_>, net: &HomeNet, node: Node) -> Vec<Node> {
    let Some(component) = home.components.get(node as usize) else { return Vec::new() };
    let needs_all = net.net == Net::Power
        && component.poles.is_some_and(|poles| poles >= 2)
        && !component.kind.is_power_distribution();
    if !needs_all {
        return Vec::new();
    }
    let feeders: Vec<usize> = home
        .connections
        .iter()
        .filter(|link| link.carries == Medium::Power && link.to == component.id)
        .filter_map(|link| places.of(&link.from))
        .collect();
    let single_poles = feeders.iter().all(|&place| {
        let feeder = &home.components[place];
        feeder.kind == Kind::Breaker && feeder.poles.unwrap_or(1) == 1
    });
    if feeders.len() >= 2 && single_poles {
        feeders.into_iter().map(as_node).collect()
    } else {
        Vec::new()
    }
}

/// Each pit with the pumps wired to empty it.
fn pumps(home: &Home, places: &Places<'_>) -> Vec<(usize, Vec<usize>)> {
    let is_pit = |kind| matches!(kind, Kind::SumpPit | Kind::EjectorPit);
    home.components
        .iter()
        .enumerate()
        .filter(|(_, pit)| is_pit(pit.kind))
        .map(|(place, pit)| {
            let mut pumps: Vec<usize> = home
                .connections
                .iter()
                .filter(|link| link.carries == Medium::Waste)
                .filter_map(|link| match (link.from == pit.id, link.to == pit.id) {
                    (true, _) => places.of(&link.to),
                    (_, true) => places.of(&link.from),
                    _ => None,
                })
                .filter(|&other| home.components[other].kind == Kind::SumpPump)
                .collect();
            pumps.sort_unstable();
            pumps.dedup();
            (place, pumps)
        })
        .collect()
}
