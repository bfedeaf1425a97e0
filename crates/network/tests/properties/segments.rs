//! Segments against trying every pair of nodes.

use proptest::prelude::*;
use quarterturn_network::{Node, lines_of_defence, segments};

use crate::case::{Case, Is, cases};

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn a_segment_is_what_two_way_pipes_join(case in cases()) {
        let labels = segments(&case.network());
        let count = case.nodes.len();
        for a in 0..count {
            for b in 0..count {
                prop_assert_eq!(labels[a] == labels[b], a == b || joined(&case, a, b));
            }
        }
        // Numbered in the order of each segment's first node.
        let mut next = 0;
        for &label in &labels {
            prop_assert!(label <= next);
            next = next.max(label + 1);
        }
    }

    #[test]
    fn all_of_a_segment_has_the_same_sets_and_lines(case in cases()) {
        let network = case.network();
        let labels = segments(&network);
        let lines = lines_of_defence(&network, |n| case.nodes[n as usize].effort.is_some());
        let sets = |node: usize| {
            let mut one = case.clone();
            one.targets = vec![node as Node];
            one.minimal_sets(one.usable())
        };
        for b in 0..labels.len() {
            let a = labels.iter().position(|&label| label == labels[b]).unwrap();
            if a != b {
                prop_assert_eq!(sets(a), sets(b));
                prop_assert_eq!(lines[a], lines[b]);
            }
        }
    }
}

/// True if two-way pipes between plain nodes lead from `a` to `b`.
fn joined(case: &Case, a: usize, b: usize) -> bool {
    let plain = |n: usize| case.nodes[n].is != Is::Device;
    let flows = |x: usize, y: usize| {
        case.links.iter().any(|&(p, q, both)| (p, q) == (x, y) || both && (q, p) == (x, y))
    };
    let mut wet = 1_u32 << a;
    loop {
        let before = wet;
        for x in 0..case.nodes.len() {
            for y in 0..case.nodes.len() {
                if wet & (1 << x) != 0 && plain(x) && plain(y) && flows(x, y) && flows(y, x) {
                    wet |= 1 << y;
                }
            }
        }
        if wet == before {
            return wet & (1 << b) != 0;
        }
    }
}
