//! What has all that it needs.

use std::collections::VecDeque;

use crate::{Lists, as_node};

/// What needs what: a node lives if each of its ports is fed by a living node.
///
/// ```text
///   cold ─► [port] ┐
///                  ├ washer         needs water and power; either of two feeds of one port will do
///   panel ─► [port] ┘
/// ```
#[derive(Debug, Clone, Default)]
pub struct Supply {
    ports_of: Vec<u32>,
    node_of_port: Vec<u32>,
    feeds: Lists,
}

/// Collects what needs what for a [`Supply`].
#[derive(Debug, Clone, Default)]
pub struct Needs {
    ports_of: Vec<u32>,
    node_of_port: Vec<u32>,
    feeds: Vec<(u32, u32)>,
}

impl Needs {
    /// Adds a node without ports: it lives by itself until it is given one.
    pub fn node(&mut self) -> u32 {
        self.ports_of.push(0);
        as_node(self.ports_of.len() - 1)
    }

    /// Adds a port to a node: one more thing it needs.
    pub fn port(&mut self, node: u32) -> u32 {
        self.ports_of[node as usize] += 1;
        self.node_of_port.push(node);
        as_node(self.node_of_port.len() - 1)
    }

    /// Lets `feeder` feed a port. Any one living feeder is enough.
    pub fn feed(&mut self, feeder: u32, port: u32) {
        self.feeds.push((feeder, port));
    }

    /// Number of nodes so far.
    #[must_use]
    pub fn nodes(&self) -> usize {
        self.ports_of.len()
    }

    /// What was collected, ready to be asked. Time and space: nodes + ports + feeds.
    #[must_use]
    pub fn build(self) -> Supply {
        let feeds = Lists::collect(self.nodes(), self.feeds.iter().copied());
        Supply { ports_of: self.ports_of, node_of_port: self.node_of_port, feeds }
    }
}

impl Supply {
    /// Number of nodes.
    #[must_use]
    pub fn nodes(&self) -> usize {
        self.ports_of.len()
    }

    /// Marks the nodes that live when those that are `dead` don't.
    ///
    /// The least fixpoint: a loop never feeds itself. Method: each node counts its unfed ports
    /// (Dowling & Gallier 1984). Time: nodes + ports + feeds.
    #[must_use]
    pub fn alive(&self, dead: impl Fn(u32) -> bool) -> Vec<bool> {
        let nodes = self.nodes();
        let mut unfed = self.ports_of.clone();
        let mut fed = vec![false; self.node_of_port.len()];
        let mut alive = vec![false; nodes];
        let mut queue: VecDeque<u32> = VecDeque::new();
        for node in 0..as_node(nodes) {
            if unfed[node as usize] == 0 && !dead(node) {
                alive[node as usize] = true;
                queue.push_back(node);
            }
        }
        while let Some(feeder) = queue.pop_front() {
            for &port in self.feeds.of(feeder) {
                if std::mem::replace(&mut fed[port as usize], true) {
                    continue;
                }
                let node = self.node_of_port[port as usize] as usize;
                unfed[node] -= 1;
                if unfed[node] == 0 && !dead(as_node(node)) {
                    alive[node] = true;
                    queue.push_back(as_node(node));
                }
            }
        }
        alive
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_loop_does_not_feed_itself() {
        let mut supply = Needs::default();
        let (a, b) = (supply.node(), supply.node());
        let (into_a, into_b) = (supply.port(a), supply.port(b));
        supply.feed(a, into_b);
        supply.feed(b, into_a);
        assert_eq!(supply.build().alive(|_| false), [false, false]);
    }

    #[test]
    fn one_of_two_pumps_is_enough_and_a_washer_needs_both() {
        let mut supply = Needs::default();
        let (pump, other, pit) = (supply.node(), supply.node(), supply.node());
        let port = supply.port(pit);
        supply.feed(pump, port);
        supply.feed(other, port);
        let washer = supply.node();
        let (water, power) = (supply.port(washer), supply.port(washer));
        supply.feed(pump, water);
        supply.feed(other, power);
        assert_eq!(supply.build().alive(|n| n == pump), [false, true, true, false]);
    }

    proptest! {
        /// Against the definition: start with nothing alive, let live whatever can, until nothing
        /// changes.
        #[test]
        fn is_the_least_fixpoint(
            ports in prop::collection::vec(0..3_usize, 1..9),
            feeds in prop::collection::vec((0..9_u32, 0..20_u32), 0..30),
            dead in prop::collection::vec(any::<bool>(), 9),
        ) {
            let mut supply = Needs::default();
            let mut of_port = Vec::new();
            for &count in &ports {
                let node = supply.node();
                for _ in 0..count {
                    of_port.push(node);
                    supply.port(node);
                }
            }
            let feeds: Vec<(u32, u32)> = feeds
                .into_iter()
                .filter(|&(f, p)| (f as usize) < ports.len() && (p as usize) < of_port.len())
                .collect();
            for &(feeder, port) in &feeds {
                supply.feed(feeder, port);
            }
            let mut expected = vec![false; ports.len()];
            loop {
                let before = expected.clone();
                for node in 0..ports.len() {
                    let all_fed = (0..of_port.len()).filter(|&p| of_port[p] as usize == node).all(
                        |p| feeds.iter().any(|&(f, q)| q as usize == p && before[f as usize]),
                    );
                    expected[node] = all_fed && !dead[node];
                }
                if expected == before {
                    break;
                }
            }
            prop_assert_eq!(supply.build().alive(|n| dead[n as usize]), expected);
        }
    }
}
