//! Lines of defence against packing disjoint sets one by one.

use std::collections::BTreeMap;

use proptest::prelude::*;
use quarterturn_network::{NO_FEED, Node, lines_of_defence};

use crate::case::{Is, cases};

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn lines_are_the_most_disjoint_sets_that_each_isolate(case in cases()) {
        // Lines of defence are told of a house at rest: nothing is shut.
        let mut case = case;
        for part in &mut case.nodes {
            part.shut = false;
        }
        let network = case.network();
        let operable = |n: Node| case.nodes[n as usize].effort.is_some();
        let lines = lines_of_defence(&network, operable);
        for (node, &count) in lines.iter().enumerate() {
            let mut one = case.clone();
            one.targets = vec![node as Node];
            let sets = one.minimal_sets(one.usable());
            if case.nodes[node].is == Is::Source {
                prop_assert_eq!(count, 0);
            } else if sets == [0] {
                prop_assert_eq!(count, NO_FEED);
            } else {
                let most = packed(&sets, 0, &mut BTreeMap::new());
                prop_assert_eq!(count, most, "node {} of {:?}", node, case);
            }
        }
    }
}

/// The most of `sets` that share no device with each other, nor with `used`.
fn packed(sets: &[u32], used: u32, known: &mut BTreeMap<u32, u32>) -> u32 {
    if let Some(&count) = known.get(&used) {
        return count;
    }
    let count = sets
        .iter()
        .filter(|&&set| set & used == 0)
        .map(|&set| 1 + packed(sets, used | set, known))
        .max()
        .unwrap_or(0);
    known.insert(used, count);
    count
}
