//! How many lines of defence stand between the sources and each node.

use std::collections::VecDeque;

use crate::{Network, Node};

/// No way in: nothing to defend against.
pub const NO_FEED: u32 = u32::MAX;

/// For every node, the fewest operable devices on any way from a source to it.
///
/// That is also the largest number of sets of devices, no two sharing one, of which each alone cuts
/// the node off (Robacker 1956). A device does not count for itself: shutting it does not stop a
/// leak at its own body. [`NO_FEED`] where no source reaches. Time: arcs (one 0-1 search).
#[must_use]
pub fn lines_of_defence(network: &Network, operable: impl Fn(Node) -> bool) -> Vec<u32> {
    let mut lines = vec![NO_FEED; network.nodes()];
    let mut queue: VecDeque<(Node, u32)> = VecDeque::new();
    for &source in network.sources() {
        lines[source as usize] = 0;
        queue.push_back((source, 0));
    }
    while let Some((node, found)) = queue.pop_front() {
        if lines[node as usize] < found {
            continue;
        }
        let through = u32::from(network.is_device(node) && operable(node));
        for &next in network.out(node) {
            let count = found + through;
            if count < lines[next as usize] {
                lines[next as usize] = count;
                if through == 0 {
                    queue.push_front((next, count));
                } else {
                    queue.push_back((next, count));
                }
            }
        }
    }
    lines
}
