//! Against petgraph on nets too large for brute force: maximum flow on split nodes, and dominators.
//!
//! On a plain `DiGraph` only, with a source that is not the sink and weights far from the top of
//! their type: petgraph 0.8.3 panics, does not return, or overflows otherwise.

use petgraph::algo::dominators::simple_fast;
use petgraph::algo::maximum_flow::dinics;
use petgraph::graph::{DiGraph, NodeIndex};
use proptest::prelude::*;
use quarterturn_network::{Builder, Cut, Cutter, Dominators, Node, ROOT, UNREACHED};

const UNLIMITED: u64 = 1 << 40;

#[derive(Debug, Clone)]
struct Net {
    /// Cost of a device; `None` for a plain node.
    costs: Vec<Option<u64>>,
    sources: Vec<usize>,
    links: Vec<(usize, usize, bool)>,
    targets: Vec<Node>,
}

fn nets() -> impl Strategy<Value = Net> {
    let index = any::<prop::sample::Index>;
    let node = (prop::option::weighted(0.4, 1..50_u64), index(), any::<bool>());
    (
        prop::collection::vec(node, 10..160),
        prop::collection::vec((index(), index(), any::<bool>()), 0..40),
        prop::collection::vec(index(), 0..3),
        prop::collection::vec(index(), 1..4),
    )
        .prop_map(|(nodes, extra, sources, targets)| {
            let count = nodes.len();
            let mut links = Vec::new();
            let mut costs = Vec::new();
            for (number, (cost, parent, near)) in nodes.into_iter().enumerate() {
                costs.push(cost);
                if number > 0 {
                    let parent = if near { number - 1 } else { parent.index(number) };
                    links.push((parent, number, number % 7 != 0));
                }
            }
            links
                .extend(extra.into_iter().map(|(a, b, way)| (a.index(count), b.index(count), way)));
            let mut sources: Vec<usize> = sources.iter().map(|s| s.index(count / 4)).collect();
            sources.push(0);
            let targets = targets.iter().map(|t| (count - 1 - t.index(count)) as Node).collect();
            Net { costs, sources, links, targets }
        })
}

impl Net {
    fn builder(&self) -> Builder {
        let mut builder = Builder::default();
        for (node, cost) in self.costs.iter().enumerate() {
            match cost {
                _ if self.sources.contains(&node) => builder.source(),
                Some(_) => builder.device(),
                None => builder.node(),
            };
        }
        for &(a, b, two_way) in &self.links {
            if two_way {
                builder.two_way(a as Node, b as Node);
            } else {
                builder.one_way(a as Node, b as Node);
            }
        }
        builder
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn cuts_have_the_value_of_petgraphs_flow(net in nets()) {
        let network = net.builder().build();
        let mut cutter = Cutter::new(&network);
        cutter.set_costs(|device| net.costs[device as usize]);
        // Node 2i is entered and node 2i + 1 left; then come source and sink.
        let count = net.costs.len();
        let mut graph: DiGraph<(), u64> = DiGraph::new();
        let at: Vec<NodeIndex> = (0..2 * count + 2).map(|_| graph.add_node(())).collect();
        let (source, sink) = (at[2 * count], at[2 * count + 1]);
        for node in 0..count {
            let is_target = net.targets.contains(&(node as Node));
            let device = network.is_device(node as Node) && !is_target;
            let capacity = if device { net.costs[node].unwrap() } else { UNLIMITED };
            graph.add_edge(at[2 * node], at[2 * node + 1], capacity);
            if network.is_source(node as Node) {
                graph.add_edge(source, at[2 * node], UNLIMITED);
            }
            if is_target {
                graph.add_edge(at[2 * node], sink, UNLIMITED);
            }
        }
        for &(a, b) in network.arc_list() {
            graph.add_edge(at[2 * a as usize + 1], at[2 * b as usize], UNLIMITED);
        }
        let (flow, _) = dinics(&graph, source, sink);
        match cutter.cheapest(&net.targets) {
            Cut::Impossible => prop_assert!(flow >= UNLIMITED),
            Cut::Devices(devices, cost) => {
                prop_assert_eq!(cost, flow);
                prop_assert!(!network.is_fed(&net.targets, |n| devices.contains(&n)));
                let sum: u64 = devices.iter().filter_map(|&d| net.costs[d as usize]).sum();
                prop_assert_eq!(sum, cost);
            }
        }
    }

    #[test]
    fn dominator_trees_are_those_of_petgraph(net in nets()) {
        let network = net.builder().build();
        let tree = Dominators::of(&network, |_| false);
        let count = net.costs.len();
        let mut graph: DiGraph<(), ()> = DiGraph::new();
        let at: Vec<NodeIndex> = (0..=count).map(|_| graph.add_node(())).collect();
        for &source in network.sources() {
            graph.add_edge(at[count], at[source as usize], ());
        }
        for &(a, b) in network.arc_list() {
            graph.add_edge(at[a as usize], at[b as usize], ());
        }
        let theirs = simple_fast(&graph, at[count]);
        for node in 0..count {
            let parent = match theirs.immediate_dominator(at[node]) {
                None => UNREACHED,
                Some(above) if above == at[count] => ROOT,
                Some(above) => above.index() as Node,
            };
            prop_assert_eq!(tree.parent(node as Node), parent);
        }
    }
}
