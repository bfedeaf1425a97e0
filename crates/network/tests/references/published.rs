//! Published graphs and valve layouts; see `tests/fixtures/published/SOURCES.md`.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_network::{
    Builder, Cut, Cutter, Dominators, Isolator, Node, Terms, UNREACHED, segments,
};
use serde::Deserialize;

macro_rules! published {
    ($file:literal) => {
        include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/fixtures/published/", $file))
    };
}

#[derive(Deserialize)]
struct Graphs {
    dominators: Vec<Tree>,
    node_cuts: Vec<NodeCut>,
}

#[derive(Deserialize)]
struct Tree {
    source: String,
    root: Node,
    edges: Vec<(Node, Node)>,
    idom: BTreeMap<Node, Node>,
}

#[derive(Deserialize)]
struct NodeCut {
    source: String,
    s: Node,
    t: Node,
    edges: Vec<(Node, Node)>,
    size: usize,
    all_minimum_cuts: Vec<Vec<Node>>,
}

fn graphs() -> Graphs {
    serde_json::from_str(published!("graphs.json")).unwrap()
}

#[test]
fn dominators_are_as_printed() {
    let trees = graphs().dominators;
    assert_eq!(trees.len(), 6);
    for tree in trees {
        let last = tree.edges.iter().map(|&(a, b)| a.max(b)).max().unwrap();
        let mut builder = Builder::default();
        for node in 0..=last {
            if node == tree.root {
                builder.source()
            } else {
                builder.node()
            };
        }
        for &(a, b) in &tree.edges {
            builder.one_way(a, b);
        }
        let found = Dominators::of(&builder.build(), |_| false);
        for node in (0..=last).filter(|&node| node != tree.root) {
            let printed = tree.idom.get(&node).copied().unwrap_or(UNREACHED);
            assert_eq!(found.parent(node), printed, "{}, node {node}", tree.source);
        }
    }
}

/// Every node can be shut, at the same effort.
struct Alike;

impl Terms for Alike {
    fn effort(&self, _: Node) -> Option<u64> {
        Some(1)
    }

    fn is_shut(&self, _: Node) -> bool {
        false
    }

    fn loss(&self, _: Node) -> u64 {
        0
    }
}

#[test]
fn minimum_vertex_cuts_are_as_printed() {
    let cuts = graphs().node_cuts;
    assert_eq!(cuts.len(), 1);
    for cut in cuts {
        let last = cut.edges.iter().map(|&(a, b)| a.max(b)).max().unwrap();
        let mut builder = Builder::default();
        for node in 0..=last {
            if node == cut.s {
                builder.source();
            } else if node == cut.t {
                builder.node();
            } else {
                builder.device();
            }
        }
        for &(a, b) in &cut.edges {
            builder.two_way(a, b);
        }
        let network = builder.build();
        let mut cutter = Cutter::new(&network);
        cutter.set_costs(|_| Some(1));
        let found = cutter.cheapest(&[cut.t]);
        let Cut::Devices(devices, cost) = found else { panic!("{}: {found:?}", cut.source) };
        assert_eq!(cost, cut.size as u64, "{}", cut.source);
        assert!(cut.all_minimum_cuts.contains(&devices), "{}: {devices:?}", cut.source);
        // All of them, and then none of the same size.
        let count = cut.all_minimum_cuts.len();
        let best = Isolator::new(&network, &Alike).best(&[cut.t], count + 1, usize::MAX);
        let sets: Vec<Vec<Node>> = best.sets.iter().map(|set| set.devices.clone()).collect();
        assert_eq!(sets[..count], cut.all_minimum_cuts, "{}", cut.source);
        assert!(sets[count].len() > cut.size);
    }
}

/// The rows of a table, without its heading.
fn rows(text: &str) -> impl Iterator<Item = Vec<&str>> {
    text.lines().skip(1).map(|line| line.split(',').collect())
}

/// The pieces into which the valves of a water network divide its nodes and links; a link is named
/// `/link`, since a node may have the same name.
fn pieces(links: &str, valves: &str) -> BTreeSet<BTreeSet<String>> {
    let valves: BTreeSet<(&str, &str)> = rows(valves).map(|row| (row[0], row[1])).collect();
    let mut builder = Builder::default();
    let mut named: BTreeMap<String, Node> = BTreeMap::new();
    let mut used = 0;
    for row in rows(links) {
        let link = *named.entry(format!("/{}", row[0])).or_insert_with(|| builder.node());
        for end in &row[1..3] {
            let node = *named.entry((*end).to_owned()).or_insert_with(|| builder.node());
            if valves.contains(&(row[0], end)) {
                used += 1;
                let valve = builder.device();
                builder.two_way(link, valve);
                builder.two_way(valve, node);
            } else {
                builder.two_way(link, node);
            }
        }
    }
    assert_eq!(used, valves.len(), "every valve is on a link, beside one of its nodes");
    let labels = segments(&builder.build());
    let mut pieces: BTreeMap<u32, BTreeSet<String>> = BTreeMap::new();
    for (name, node) in named {
        pieces.entry(labels[node as usize]).or_default().insert(name);
    }
    pieces.into_values().collect()
}

/// The pieces as the tables tell them.
fn tabled(node_segments: &str, link_segments: &str) -> BTreeSet<BTreeSet<String>> {
    let mut pieces: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    for row in rows(node_segments) {
        pieces.entry(row[1]).or_default().insert(row[0].to_owned());
    }
    for row in rows(link_segments) {
        pieces.entry(row[1]).or_default().insert(format!("/{}", row[0]));
    }
    pieces.into_values().collect()
}

#[test]
fn forty_valves_make_twenty_three_segments() {
    let found =
        pieces(published!("segments/net3-links.csv"), published!("segments/net3-valves-40.csv"));
    assert_eq!(found.len(), 23);
    assert_eq!(found.iter().map(BTreeSet::len).max(), Some(125));
    let tabled = tabled(
        published!("segments/net3-node-segments-40.csv"),
        published!("segments/net3-link-segments-40.csv"),
    );
    assert_eq!(found, tabled);
}

#[test]
fn a_hundred_and_forty_one_valves_make_a_hundred_and_nineteen_segments() {
    let found =
        pieces(published!("segments/net3-links.csv"), published!("segments/net3-valves-141.csv"));
    assert_eq!(found.len(), 119);
    assert_eq!(found.iter().map(BTreeSet::len).max(), Some(3));
    let tabled = tabled(
        published!("segments/net3-node-segments-141.csv"),
        published!("segments/net3-link-segments-141.csv"),
    );
    assert_eq!(found, tabled);
}

#[test]
fn the_seven_node_network_has_four_segments() {
    let found =
        pieces(published!("segments/seven-links.csv"), published!("segments/seven-valves.csv"));
    // Links are p1 to p8 there, nodes n1 to n6 and s.
    let name = |word: &str| {
        if word.starts_with('p') { format!("/{word}") } else { word.to_owned() }
    };
    let expected: BTreeSet<BTreeSet<String>> = published!("segments/seven-expected.txt")
        .lines()
        .map(|line| line.split_whitespace().map(name).collect())
        .collect();
    assert_eq!(expected.len(), 4);
    assert_eq!(found, expected);
}
