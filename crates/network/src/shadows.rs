//! What goes off with what, as far as one flow can count it.

use crate::cut::NONE;
use crate::{Dominators, Network, Node, ROOT};

/// The dominator tree as far as something is lost in it: each shadow node stands for a node and for
/// the run above it on which nothing else is lost.
#[derive(Debug, Default)]
pub(crate) struct Shadows {
    /// What is lost with each shadow node itself.
    pub(crate) lost: Vec<u64>,
    /// From shadow node to shadow node below.
    pub(crate) arcs: Vec<(u32, u32)>,
    /// The shadow node that goes dry with a node.
    pub(crate) of_node: Vec<u32>,
    /// The shadow node in which a node's own loss is counted.
    pub(crate) counted_in: Vec<u32>,
}

impl Shadows {
    /// The shadows of a tree. Time and space: nodes.
    #[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³¹ arcs")]
    pub(crate) fn of(network: &Network, tree: &Dominators, loss: impl Fn(Node) -> u64) -> Self {
        let nodes = network.nodes();
        // From where nothing flows on, nothing can flow to the targets: its loss counts with what
        // feeds it. A device that is shut is still fed itself, so its own loss is never certain.
        let mut own = vec![0_u64; nodes];
        let mut counted_at = vec![ROOT; nodes];
        for &node in tree.order() {
            let above = tree.parent(node);
            let ends_here = network.out(node).is_empty();
            let at = if ends_here { above } else { node };
            let lost = loss(node);
            if lost > 0 && at < ROOT && (ends_here || !network.is_device(node)) {
                own[at as usize] += lost;
                counted_at[node as usize] = at;
            }
        }
        let mut shadows =
            Self { of_node: vec![NONE; nodes], counted_in: vec![NONE; nodes], ..Self::default() };
        // From the leaves up, the shadow nodes right below each node.
        let mut below: Vec<Below> = vec![Below::Nothing; nodes];
        let mut pending: Vec<Vec<u32>> = Vec::new();
        for &node in tree.order().iter().rev() {
            let here = std::mem::replace(&mut below[node as usize], Below::Nothing);
            let shadow = match here {
                Below::Nothing if own[node as usize] == 0 => continue,
                Below::One(only) if own[node as usize] == 0 => only,
                several => {
                    let new = shadows.lost.len() as u32;
                    shadows.lost.push(own[node as usize]);
                    match several {
                        Below::Nothing => {}
                        Below::One(only) => shadows.arcs.push((new, only)),
                        Below::Many(list) => {
                            let list = std::mem::take(&mut pending[list as usize]);
                            shadows.arcs.extend(list.into_iter().map(|only| (new, only)));
                        }
                    }
                    new
                }
            };
            shadows.of_node[node as usize] = shadow;
            let above = tree.parent(node);
            if above < ROOT {
                let place = &mut below[above as usize];
                *place = match *place {
                    Below::Nothing => Below::One(shadow),
                    Below::One(other) => {
                        pending.push(vec![other, shadow]);
                        Below::Many(pending.len() as u32 - 1)
                    }
                    Below::Many(list) => {
                        pending[list as usize].push(shadow);
                        Below::Many(list)
                    }
                };
            }
        }
        for (node, &at) in counted_at.iter().enumerate().filter(|&(_, &at)| at < ROOT) {
            shadows.counted_in[node] = shadows.of_node[at as usize];
        }
        shadows
    }
}

/// The shadow nodes right below a node.
#[derive(Debug, Clone, Copy)]
enum Below {
    Nothing,
    One(u32),
    /// The place of a list of them.
    Many(u32),
}
