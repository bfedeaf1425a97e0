//! Stretches that no device divides: what fails, is drained and is shut off together.

use crate::{Network, Node, as_node};

/// The segment of every node, numbered in the order of each segment's first node.
///
/// Two nodes are in one segment if water can go both ways between them without passing a device or
/// a one-way arc. A device is a segment by itself, since it can be shut on either side of it. Every
/// set of devices that cuts one node of a segment off cuts off all of it.
///
/// ```text
///   street ── meter ── main ── trunk ── tee ──► check ── hose      main is a device
///      0        0       1        2       2        3       3
/// ```
///
/// Reference: Walski 1993, "Water distribution valve topology for reliability analysis", and Jun &
/// Loganathan 2007, "Valve-controlled segments in water distribution systems".
///
/// Method: union-find. Time: arcs, almost (an arc whose way back was added apart from it costs a look
/// through the shorter of two lists of neighbours). Space: nodes.
#[must_use]
pub fn segments(network: &Network) -> Vec<u32> {
    let nodes = network.nodes();
    let mut parent: Vec<Node> = (0..nodes).map(as_node).collect();
    let mut arcs = network.arc_list();
    while let [(a, b), rest @ ..] = arcs {
        arcs = rest;
        if network.is_device(*a) || network.is_device(*b) {
            continue;
        }
        let together = rest.first() == Some(&(*b, *a));
        if together {
            arcs = &rest[1..];
        }
        let (top, other) = (root(&mut parent, *a), root(&mut parent, *b));
        if top != other && (together || runs_back(network, *a, *b)) {
            // The smaller number stays on top, so that the labels follow the first node.
            parent[top.max(other) as usize] = top.min(other);
        }
    }
    let mut labels = vec![0; nodes];
    let mut count = 0;
    for node in 0..nodes {
        let top = root(&mut parent, as_node(node)) as usize;
        if top == node {
            labels[node] = count;
            count += 1;
        } else {
            labels[node] = labels[top];
        }
    }
    labels
}

/// True if there is also an arc from `b` to `a`.
fn runs_back(network: &Network, a: Node, b: Node) -> bool {
    let (out, feeders) = (network.out(b), network.feeders(a));
    if out.len() <= feeders.len() { out.contains(&a) } else { feeders.contains(&b) }
}

/// The node that stands for the set of `node`, with the way to it halved for the next look.
fn root(parent: &mut [Node], mut node: Node) -> Node {
    while parent[node as usize] != node {
        parent[node as usize] = parent[parent[node as usize] as usize];
        node = parent[node as usize];
    }
    node
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Builder;

    #[test]
    fn a_device_and_a_one_way_arc_divide() {
        let mut builder = Builder::default();
        let street = builder.source();
        let meter = builder.node();
        let main = builder.device();
        let trunk = builder.node();
        let tee = builder.node();
        let check = builder.node();
        let hose = builder.node();
        builder.two_way(street, meter);
        builder.two_way(meter, main);
        builder.two_way(main, trunk);
        builder.two_way(trunk, tee);
        builder.one_way(tee, check);
        builder.two_way(check, hose);
        assert_eq!(segments(&builder.build()), [0, 0, 1, 2, 2, 3, 3]);
    }

    #[test]
    fn two_arcs_added_apart_make_a_two_way_pipe() {
        let mut builder = Builder::default();
        let (a, b, c) = (builder.node(), builder.node(), builder.node());
        builder.one_way(a, b);
        builder.two_way(b, c);
        builder.one_way(b, a);
        assert_eq!(segments(&builder.build()), [0, 0, 0]);
    }

    #[test]
    fn a_pipe_that_leads_round_a_valve_joins_both_sides() {
        let mut builder = Builder::default();
        let (a, valve, b) = (builder.node(), builder.device(), builder.node());
        builder.two_way(a, valve);
        builder.two_way(valve, b);
        builder.two_way(b, a);
        assert_eq!(segments(&builder.build()), [0, 1, 0]);
    }
}
