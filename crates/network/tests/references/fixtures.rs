//! What networkx, igraph and scipy found on sixty random nets; see `tests/fixtures/make_networks.py`.

use quarterturn_network::{
    Builder, Cut, Cutter, Dominators, Isolator, Network, Node, ROOT, Terms, UNREACHED,
};
use serde::Deserialize;

#[derive(Deserialize)]
struct Fixtures {
    networks: Vec<Fixture>,
}

#[derive(Deserialize)]
struct Fixture {
    nodes: Vec<String>,
    arcs: Vec<(Node, Node)>,
    costs: Vec<Option<u64>>,
    cuts: Vec<(Vec<Node>, Option<u64>)>,
    parents: Vec<Option<i64>>,
    reached: Vec<Node>,
    shut: Vec<Node>,
    reached_shut: Vec<Node>,
}

impl Fixture {
    fn network(&self) -> Network {
        let mut builder = Builder::default();
        for node in &self.nodes {
            match node.as_str() {
                "plain" => builder.node(),
                "device" => builder.device(),
                "source" => builder.source(),
                other => panic!("{other}"),
            };
        }
        for &(a, b) in &self.arcs {
            builder.one_way(a, b);
        }
        builder.build()
    }
}

impl Terms for Fixture {
    fn effort(&self, device: Node) -> Option<u64> {
        self.costs[device as usize]
    }

    fn is_shut(&self, _: Node) -> bool {
        false
    }

    fn loss(&self, _: Node) -> u64 {
        0
    }
}

fn fixtures() -> Vec<Fixture> {
    let text =
        include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/fixtures/networks.json"));
    let fixtures: Fixtures = serde_json::from_str(text).unwrap();
    assert_eq!(fixtures.networks.len(), 60);
    fixtures.networks
}

fn marked(marks: &[bool]) -> Vec<Node> {
    (0..marks.len()).filter(|&i| marks[i]).map(|i| i as Node).collect()
}

#[test]
fn cuts_have_the_value_that_three_libraries_found() {
    let (mut possible, mut impossible) = (0, 0);
    for fixture in fixtures() {
        let network = fixture.network();
        let mut cutter = Cutter::new(&network);
        cutter.set_costs(|device| fixture.costs[device as usize]);
        for (targets, value) in &fixture.cuts {
            match (cutter.cheapest(targets), value) {
                (Cut::Impossible, None) => impossible += 1,
                (Cut::Devices(devices, cost), Some(value)) => {
                    possible += 1;
                    assert_eq!(cost, *value);
                    let shut = |n: Node| devices.contains(&n);
                    assert!(!network.is_fed(targets, shut));
                    let sum: u64 = devices.iter().filter_map(|&d| fixture.costs[d as usize]).sum();
                    assert_eq!(sum, cost);
                }
                (found, expected) => panic!("{targets:?}: {found:?}, expected {expected:?}"),
            }
        }
    }
    assert!(possible > 100 && impossible > 100, "{possible} possible, {impossible} impossible");
}

#[test]
fn the_best_set_costs_what_three_libraries_found() {
    for fixture in fixtures() {
        let network = fixture.network();
        let mut isolator = Isolator::new(&network, &fixture);
        for (targets, value) in &fixture.cuts {
            let first = isolator.first(targets, usize::MAX).map(|set| set.cost);
            assert_eq!(first, value.filter(|&value| value > 0));
            let best = isolator.best(targets, 1, usize::MAX);
            assert_eq!(best.sets.first().map(|set| set.cost), first);
        }
    }
}

#[test]
fn dominator_trees_are_those_of_two_libraries() {
    for fixture in fixtures() {
        let network = fixture.network();
        let tree = Dominators::of(&network, |_| false);
        for (node, parent) in fixture.parents.iter().enumerate() {
            let expected = match parent {
                None => UNREACHED,
                Some(-1) => ROOT,
                Some(parent) => Node::try_from(*parent).unwrap(),
            };
            assert_eq!(tree.parent(node as Node), expected, "node {node}");
        }
    }
}

#[test]
fn reach_is_that_of_two_libraries() {
    for fixture in fixtures() {
        let network = fixture.network();
        assert_eq!(marked(&network.reached(|_| false)), fixture.reached);
        let shut = |n: Node| fixture.shut.contains(&n);
        assert_eq!(marked(&network.reached(shut)), fixture.reached_shut);
        for node in 0..network.nodes() as Node {
            assert_eq!(network.is_fed(&[node], shut), fixture.reached_shut.contains(&node));
        }
    }
}
