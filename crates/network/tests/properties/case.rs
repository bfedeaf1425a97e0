//! Random house-like nets, and what brute force says about them.

use proptest::prelude::*;
use quarterturn_network::{Builder, Network, Node, Terms};

/// A small net with everything that may be said about it. Sets of nodes are bits.
#[derive(Debug, Clone)]
pub(crate) struct Case {
    pub(crate) nodes: Vec<Part>,
    /// From, to, and whether it also flows back.
    pub(crate) links: Vec<(usize, usize, bool)>,
    pub(crate) targets: Vec<Node>,
}

/// One node.
#[derive(Debug, Clone)]
pub(crate) struct Part {
    pub(crate) is: Is,
    pub(crate) shut: bool,
    pub(crate) effort: Option<u64>,
    pub(crate) loss: u64,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Is {
    Plain,
    Device,
    Source,
}

/// Nets of two to twelve nodes: a tree from the street down, plus a few links that make loops,
/// second feeds and parallel pipes.
pub(crate) fn cases() -> impl Strategy<Value = Case> {
    let is = prop_oneof![5 => Just(Is::Device), 4 => Just(Is::Plain), 1 => Just(Is::Source)];
    let effort = prop_oneof![
        1 => Just(None),
        6 => (0..4_u64).prop_map(Some),
        2 => (0..60_u64).prop_map(Some),
    ];
    let loss = prop_oneof![5 => Just(0), 2 => 1..5_u64, 1 => 1..200_u64];
    let part = (is, prop::bool::weighted(0.08), effort, loss)
        .prop_map(|(is, shut, effort, loss)| Part { is, shut, effort, loss });
    let tree = (part, any::<prop::sample::Index>(), prop::bool::weighted(0.75), any::<bool>());
    let extra =
        (any::<prop::sample::Index>(), any::<prop::sample::Index>(), prop::bool::weighted(0.6));
    let target = any::<prop::sample::Index>();
    (
        prop::collection::vec(tree, 2..=12),
        prop::collection::vec(extra, 0..6),
        prop::collection::vec(target, 1..4),
        prop::bool::weighted(0.9),
        prop::bool::weighted(0.4),
    )
        .prop_map(|(tree, extra, targets, fed, free_of_loss)| {
            let count = tree.len();
            let mut links = Vec::new();
            let mut nodes: Vec<Part> = Vec::new();
            for (number, (part, parent, two_way, near)) in tree.into_iter().enumerate() {
                nodes.push(part);
                if number > 0 {
                    // Half of them hang on the node before, so that there are long runs too.
                    let parent = if near { number - 1 } else { parent.index(number) };
                    links.push((parent, number, two_way));
                }
            }
            if fed {
                nodes[0].is = Is::Source;
            }
            let mut devices = 0;
            for part in &mut nodes {
                devices += usize::from(part.is == Is::Device);
                if devices > 10 && part.is == Is::Device {
                    part.is = Is::Plain;
                }
                if free_of_loss {
                    part.loss = 0;
                }
            }
            links
                .extend(extra.into_iter().map(|(a, b, way)| (a.index(count), b.index(count), way)));
            // Targets lie towards the far end, where a house has its fixtures.
            let targets =
                targets.into_iter().map(|t| (count - 1 - t.index(count)) as Node).collect();
            Case { nodes, links, targets }
        })
}

impl Case {
    pub(crate) fn network(&self) -> Network {
        let mut builder = Builder::default();
        for part in &self.nodes {
            match part.is {
                Is::Plain => builder.node(),
                Is::Device => builder.device(),
                Is::Source => builder.source(),
            };
        }
        for &(a, b, two_way) in &self.links {
            if two_way {
                builder.two_way(a as Node, b as Node);
            } else {
                builder.one_way(a as Node, b as Node);
            }
        }
        builder.build()
    }

    /// Bits of the nodes for which `of` is true.
    pub(crate) fn bits(&self, of: impl Fn(usize, &Part) -> bool) -> u32 {
        let marked = |(i, part): (usize, &Part)| if of(i, part) { 1 << i } else { 0 };
        self.nodes.iter().enumerate().map(marked).fold(0, |a, b| a | b)
    }

    /// Devices that stand shut.
    pub(crate) fn shut(&self) -> u32 {
        self.bits(|_, part| part.is == Is::Device && part.shut)
    }

    pub(crate) fn target_bits(&self) -> u32 {
        self.targets.iter().fold(0, |bits, &t| bits | 1 << t)
    }

    /// Devices that may be part of a set.
    pub(crate) fn usable(&self) -> u32 {
        let usable =
            self.bits(|_, part| part.is == Is::Device && !part.shut && part.effort.is_some());
        usable & !self.target_bits()
    }

    /// What `starts` reach, them included, when nothing flows on from `closed`: link by link, until
    /// nothing more gets wet.
    pub(crate) fn wet_from(&self, starts: u32, closed: u32) -> u32 {
        let mut wet = starts;
        loop {
            let before = wet;
            for &(a, b, two_way) in &self.links {
                if wet & !closed & (1 << a) != 0 {
                    wet |= 1 << b;
                }
                if two_way && wet & !closed & (1 << b) != 0 {
                    wet |= 1 << a;
                }
            }
            if wet == before {
                return wet;
            }
        }
    }

    /// What the sources reach.
    pub(crate) fn wet(&self, closed: u32) -> u32 {
        self.wet_from(self.bits(|_, part| part.is == Is::Source), closed)
    }

    /// True if closing `set` on top of what is shut leaves every target dry.
    pub(crate) fn isolates(&self, set: u32) -> bool {
        self.wet(self.shut() | set) & self.target_bits() == 0
    }

    /// Effort and loss of closing `set`.
    pub(crate) fn cost(&self, set: u32) -> u64 {
        let effort: u64 = ones(set).map(|d| self.nodes[d].effort.unwrap().max(1)).sum();
        let dry = self.wet(self.shut()) & !self.wet(self.shut() | set);
        effort + ones(dry).map(|node| self.nodes[node].loss).sum::<u64>()
    }

    /// All minimal sets among `devices` that isolate the targets; the empty set if they are dry.
    pub(crate) fn minimal_sets(&self, devices: u32) -> Vec<u32> {
        // Subsets come before what holds them, so a set that holds one found before is not minimal.
        let mut sets: Vec<u32> = Vec::new();
        for set in subsets(devices) {
            if sets.iter().all(|&smaller| smaller & set != smaller) && self.isolates(set) {
                sets.push(set);
            }
        }
        sets
    }
}

/// All subsets of `of`, each after its own subsets.
pub(crate) fn subsets(of: u32) -> impl Iterator<Item = u32> {
    let mut next = Some(0_u32);
    std::iter::from_fn(move || {
        let set = next?;
        let following = set.wrapping_sub(of) & of;
        next = (following != 0).then_some(following);
        Some(set)
    })
}

/// Numbers of the bits that are set, smallest first.
pub(crate) fn ones(bits: u32) -> impl Iterator<Item = usize> {
    (0..32).filter(move |&i| bits & (1 << i) != 0)
}

pub(crate) fn bits_of(nodes: &[Node]) -> u32 {
    nodes.iter().fold(0, |bits, &node| bits | 1 << node)
}

impl Terms for Case {
    fn effort(&self, device: Node) -> Option<u64> {
        self.nodes[device as usize].effort
    }

    fn is_shut(&self, device: Node) -> bool {
        self.nodes[device as usize].shut
    }

    fn loss(&self, node: Node) -> u64 {
        self.nodes[node as usize].loss
    }
}
