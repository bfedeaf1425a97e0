//! What goes dry when nodes are closed, found by looking only where it may.

use crate::graph::Lists;
use crate::{Network, Node};

/// One shortest way in for every node that is fed, and room to search again and again.
///
/// ```text
///   source ── main ── trunk ── a ── bath        The ways in make a tree. Below a closed node only what
///                       └───── b ──── ┘         has no other way in goes dry.
/// ```
#[derive(Debug, Clone)]
pub(crate) struct Feeds {
    fed: Vec<bool>,
    below: Lists,
    state: Vec<State>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum State {
    Untouched,
    /// Closed itself, with its way in untouched.
    Closed,
    /// Its way in leads through a closed node.
    Suspect,
    /// The same, and closed itself.
    SuspectClosed,
}

impl Feeds {
    /// The ways in, where nothing flows on from a node that is `shut`. Time: arcs.
    pub(crate) fn of(network: &Network, shut: impl Fn(Node) -> bool) -> Self {
        let nodes = network.nodes();
        let mut fed = vec![false; nodes];
        let mut queue: Vec<Node> = network.sources().to_vec();
        for &source in &queue {
            fed[source as usize] = true;
        }
        let mut pairs: Vec<(Node, Node)> = Vec::with_capacity(nodes);
        let mut done = 0;
        while let Some(&node) = queue.get(done) {
            done += 1;
            if shut(node) {
                continue;
            }
            for &next in network.out(node) {
                if !std::mem::replace(&mut fed[next as usize], true) {
                    queue.push(next);
                    pairs.push((node, next));
                }
            }
        }
        let below = Lists::collect(nodes, pairs.iter().copied());
        Self { fed, below, state: vec![State::Untouched; nodes] }
    }

    /// True if a node is fed while nothing more is closed.
    pub(crate) fn is_fed(&self, node: Node) -> bool {
        self.fed[node as usize]
    }

    /// The nodes that were fed and no longer are when `closed` are closed too, in no stated order. A
    /// closed node is itself still fed if something arrives at it.
    ///
    /// Time: the arcs of what lies below the closed nodes.
    pub(crate) fn dry(
        &mut self,
        network: &Network,
        closed: &[Node],
        shut: impl Fn(Node) -> bool,
    ) -> Vec<Node> {
        for &node in closed {
            self.state[node as usize] = State::Closed;
        }
        let mut suspects: Vec<Node> = Vec::new();
        for &node in closed {
            self.suspect_below(node, &mut suspects);
        }
        let mut done = 0;
        while let Some(&node) = suspects.get(done) {
            done += 1;
            self.suspect_below(node, &mut suspects);
        }
        // Whatever still has a feeder that nobody suspects is fed, and so is what it feeds.
        let mut rescued: Vec<Node> = Vec::new();
        for &node in &suspects {
            let has_other_way = self.is_suspect(node)
                && network.feeders(node).iter().any(|&feeder| {
                    let clear = self.state[feeder as usize] == State::Untouched;
                    clear && self.fed[feeder as usize] && !shut(feeder)
                });
            if has_other_way {
                self.rescue(node, &mut rescued);
            }
            while let Some(node) = rescued.pop() {
                if self.state[node as usize] == State::Closed || shut(node) {
                    continue;
                }
                for &next in network.out(node) {
                    if self.is_suspect(next) {
                        self.rescue(next, &mut rescued);
                    }
                }
            }
        }
        for &node in closed {
            if self.state[node as usize] == State::Closed {
                self.state[node as usize] = State::Untouched;
            }
        }
        suspects.retain(|&node| self.is_suspect(node));
        for &node in &suspects {
            self.state[node as usize] = State::Untouched;
        }
        suspects
    }

    fn is_suspect(&self, node: Node) -> bool {
        matches!(self.state[node as usize], State::Suspect | State::SuspectClosed)
    }

    fn suspect_below(&mut self, node: Node, suspects: &mut Vec<Node>) {
        for &next in self.below.of(node) {
            let state = &mut self.state[next as usize];
            *state = match state {
                State::Untouched => State::Suspect,
                State::Closed => State::SuspectClosed,
                State::Suspect | State::SuspectClosed => continue,
            };
            suspects.push(next);
        }
    }

    fn rescue(&mut self, node: Node, rescued: &mut Vec<Node>) {
        let state = &mut self.state[node as usize];
        *state = if *state == State::SuspectClosed { State::Closed } else { State::Untouched };
        rescued.push(node);
    }
}
