//! Dominators against taking each node away, and against petgraph.

use petgraph::algo::dominators::simple_fast;
use petgraph::graph::{DiGraph, NodeIndex};
use proptest::prelude::*;
use quarterturn_network::{Dominators, Node, ROOT, UNREACHED};

use crate::case::{Case, bits_of, cases, ones};

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3000))]

    #[test]
    fn dominators_are_the_nodes_without_which_nothing_arrives(case in cases()) {
        let network = case.network();
        let shut = case.shut();
        let tree = Dominators::of(&network, |n| shut & (1 << n) != 0);
        let wet = case.wet(shut);
        for node in 0..case.nodes.len() {
            let above: Vec<Node> = tree.above(node as Node).collect();
            if wet & (1 << node) == 0 {
                prop_assert_eq!(tree.parent(node as Node), UNREACHED);
                prop_assert!(above.is_empty());
                continue;
            }
            let expected = (0..case.nodes.len())
                .filter(|&d| d != node && without(&case, d, shut) & (1 << node) == 0)
                .fold(0_u32, |bits, d| bits | 1 << d);
            prop_assert_eq!(bits_of(&above), expected, "above {}", node);
            prop_assert_eq!(above.len(), ones(expected).count());
            // Nearest first: each one stands between the next ones and the node.
            for pair in above.windows(2) {
                prop_assert_eq!(without(&case, pair[1] as usize, shut) & (1 << pair[0]), 0);
            }
            prop_assert_eq!(tree.parent(node as Node), above.first().copied().unwrap_or(ROOT));
        }
    }

    #[test]
    fn sums_are_what_goes_with_each_node(case in cases()) {
        let network = case.network();
        let shut = case.shut();
        let sums = Dominators::of(&network, |n| shut & (1 << n) != 0)
            .sums(|n| case.nodes[n as usize].loss);
        let wet = case.wet(shut);
        for (node, &sum) in sums.iter().enumerate() {
            let gone = if wet & (1 << node) == 0 { 0 } else { wet & !without(&case, node, shut) };
            prop_assert_eq!(sum, ones(gone).map(|n| case.nodes[n].loss).sum::<u64>());
        }
    }

    #[test]
    fn petgraph_builds_the_same_tree(case in cases()) {
        let network = case.network();
        let shut = case.shut();
        let tree = Dominators::of(&network, |n| shut & (1 << n) != 0);
        let count = case.nodes.len();
        let mut graph: DiGraph<(), ()> = DiGraph::new();
        for _ in 0..=count {
            graph.add_node(());
        }
        let root = NodeIndex::new(count);
        for &source in network.sources() {
            graph.add_edge(root, NodeIndex::new(source as usize), ());
        }
        for &(a, b) in network.arc_list() {
            if shut & (1 << a) == 0 {
                graph.add_edge(NodeIndex::new(a as usize), NodeIndex::new(b as usize), ());
            }
        }
        let theirs = simple_fast(&graph, root);
        for node in 0..count {
            let parent = match theirs.immediate_dominator(NodeIndex::new(node)) {
                None => UNREACHED,
                Some(above) if above == root => ROOT,
                Some(above) => above.index() as Node,
            };
            prop_assert_eq!(tree.parent(node as Node), parent);
        }
    }
}

/// What still gets wet when `node` is taken out, with all that is joined to it.
fn without(case: &Case, node: usize, shut: u32) -> u32 {
    let mut rest = case.clone();
    rest.links.retain(|&(a, b, _)| a != node && b != node);
    rest.nodes[node].is = crate::case::Is::Plain;
    rest.wet(shut)
}
