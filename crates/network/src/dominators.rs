//! Which nodes every way from the sources to a node passes through.

use crate::{Network, Node};

/// The dominator tree of a network under one root above all its sources.
#[derive(Debug, Clone)]
pub struct Dominators {
    parent: Vec<Node>,
    /// Reached nodes, every parent before its children.
    order: Vec<Node>,
}

/// The root above all sources.
pub const ROOT: Node = Node::MAX - 1;
/// Not reached from any source.
pub const UNREACHED: Node = Node::MAX;

impl Dominators {
    /// The tree, where nothing flows on from a node that is `shut`.
    ///
    /// ```text
    ///   source ── main ── trunk ── stop ── tap      stop, trunk, main and source dominate the tap
    /// ```
    ///
    /// Method: semi-NCA (Georgiadis, Tarjan & Werneck 2006, "Finding dominators in practice"),
    /// which needs one pass where the iterative method needs many on two-way pipes.
    /// Time: arcs × log nodes, near arcs in practice. Space: nodes.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³² nodes")]
    pub fn of(network: &Network, shut: impl Fn(Node) -> bool) -> Self {
        let nodes = network.nodes();
        // Preorder numbers; number 0 is the root.
        let mut number = vec![UNREACHED; nodes];
        let mut vertex: Vec<Node> = vec![ROOT];
        let mut tree_parent: Vec<u32> = vec![0];
        let mut stack: Vec<(Node, u32)> = Vec::new();
        for &source in network.sources().iter().rev() {
            stack.push((source, 0));
        }
        while let Some((node, from)) = stack.pop() {
            if number[node as usize] != UNREACHED {
                continue;
            }
            let own = vertex.len() as u32;
            number[node as usize] = own;
            vertex.push(node);
            tree_parent.push(from);
            if shut(node) {
                continue;
            }
            for &next in network.out(node).iter().rev() {
                if number[next as usize] == UNREACHED {
                    stack.push((next, own));
                }
            }
        }
        let count = vertex.len();
        let mut semi: Vec<u32> = (0..count as u32).collect();
        let mut label: Vec<u32> = (0..count as u32).collect();
        let mut ancestor: Vec<u32> = tree_parent.clone();
        let mut dominator: Vec<u32> = tree_parent.clone();
        let mut path: Vec<u32> = Vec::new();
        for own in (1..count as u32).rev() {
            let node = vertex[own as usize];
            let mut best = own;
            if network.is_source(node) {
                best = 0;
            }
            for &feeder in network.feeders(node) {
                let other = number[feeder as usize];
                if other == UNREACHED || shut(feeder) {
                    continue;
                }
                let through = if other <= own {
                    other
                } else {
                    compress(other, own, &mut ancestor, &mut label, &semi, &mut path)
                };
                best = best.min(if through == other && other <= own {
                    other
                } else {
                    semi[through as usize]
                });
            }
            semi[own as usize] = best;
        }
        for own in 1..count as u32 {
            let mut candidate = dominator[own as usize];
            while candidate > semi[own as usize] {
                candidate = dominator[candidate as usize];
            }
            dominator[own as usize] = candidate;
        }
        let mut parent = vec![UNREACHED; nodes];
        for own in 1..count {
            parent[vertex[own] as usize] = vertex[dominator[own] as usize];
        }
        vertex.remove(0);
        Self { parent, order: vertex }
    }

    /// The nodes that are reached, every one after those above it.
    pub(crate) fn order(&self) -> &[Node] {
        &self.order
    }

    /// The nearest node that every way to `node` passes; [`ROOT`] if there is none, [`UNREACHED`]
    /// if no source reaches it.
    #[must_use]
    pub fn parent(&self, node: Node) -> Node {
        self.parent[node as usize]
    }

    /// All nodes that every way to `node` passes, nearest first, without `node` itself.
    pub fn above(&self, node: Node) -> impl Iterator<Item = Node> + '_ {
        let mut at = self.parent[node as usize];
        std::iter::from_fn(move || {
            if at >= ROOT {
                return None;
            }
            let here = at;
            at = self.parent[here as usize];
            Some(here)
        })
    }

    /// For every node, the sum of `weight` over what only gets its supply through it, itself
    /// included. Time: nodes.
    #[must_use]
    pub fn sums(&self, weight: impl Fn(Node) -> u64) -> Vec<u64> {
        let mut sums = vec![0; self.parent.len()];
        for &node in self.order.iter().rev() {
            sums[node as usize] += weight(node);
            let parent = self.parent[node as usize];
            if parent < ROOT {
                sums[parent as usize] += sums[node as usize];
            }
        }
        sums
    }
}

/// The node with the least semidominator on the forest path above `node` that is younger than
/// `last`, with the path shortened on the way.
fn compress(
    node: u32,
    last: u32,
    ancestor: &mut [u32],
    label: &mut [u32],
    semi: &[u32],
    path: &mut Vec<u32>,
) -> u32 {
    path.clear();
    let mut at = node;
    while ancestor[at as usize] > last {
        path.push(at);
        at = ancestor[at as usize];
    }
    while let Some(below) = path.pop() {
        let above = ancestor[below as usize];
        if semi[label[above as usize] as usize] < semi[label[below as usize] as usize] {
            label[below as usize] = label[above as usize];
        }
        ancestor[below as usize] = ancestor[above as usize];
    }
    label[node as usize]
}
