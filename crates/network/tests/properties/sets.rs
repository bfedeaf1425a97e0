//! The sets that isolate, and the cheapest cut.

use proptest::prelude::*;
use quarterturn_network::{Cut, Cutter, Isolator, Node, Set};

use crate::case::{Case, bits_of, cases, ones, subsets};

/// Every minimal set in the stated order, by trying all of them.
fn expected(case: &Case) -> Vec<Set> {
    let mut sets: Vec<Set> = case
        .minimal_sets(case.usable())
        .into_iter()
        .filter(|&set| set != 0)
        .map(|set| Set { cost: case.cost(set), devices: ones(set).map(|d| d as Node).collect() })
        .collect();
    sets.sort_by(|a, b| {
        (a.cost, a.devices.len(), &a.devices).cmp(&(b.cost, b.devices.len(), &b.devices))
    });
    sets
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3000))]

    #[test]
    fn best_is_all_minimal_sets_in_the_stated_order(case in cases()) {
        let network = case.network();
        let all = expected(&case);
        let mut isolator = Isolator::new(&network, &case);
        for k in [1, 2, 3, 4, 5, 6, 1000] {
            let found = isolator.best(&case.targets, k, usize::MAX);
            prop_assert!(found.proven);
            prop_assert_eq!(&found.sets, &all[..k.min(all.len())], "k = {}", k);
        }
        prop_assert!(isolator.best(&case.targets, 0, usize::MAX).sets.is_empty());
    }

    #[test]
    fn the_first_set_is_one_of_least_cost(case in cases()) {
        let network = case.network();
        let all = expected(&case);
        let first = Isolator::new(&network, &case).first(&case.targets, usize::MAX);
        prop_assert_eq!(first.as_ref().map(|s| s.cost), all.first().map(|s| s.cost));
        if let Some(first) = first {
            prop_assert!(all.contains(&first));
        }
    }

    #[test]
    fn where_effort_alone_counts_losses_change_nothing(case in cases(), k in 1..7_usize) {
        let network = case.network();
        let mut free = case.clone();
        for part in &mut free.nodes {
            part.loss = 0;
        }
        let all = expected(&free);
        let mut isolator = Isolator::without_loss(&network, &case, Cutter::new(&network));
        let found = isolator.best(&case.targets, k, usize::MAX);
        prop_assert!(found.proven);
        prop_assert_eq!(&found.sets, &all[..k.min(all.len())]);
    }

    #[test]
    fn a_small_budget_never_gives_a_wrong_set_and_never_claims_proof(
        case in cases(), budget in 0..12_usize, k in 1..5_usize,
    ) {
        let network = case.network();
        let all = expected(&case);
        let found = Isolator::new(&network, &case).best(&case.targets, k, budget);
        for set in &found.sets {
            prop_assert!(all.contains(set), "{:?} is not a minimal set", set);
        }
        prop_assert!(found.sets.is_sorted_by_key(|s| (s.cost, s.devices.len(), s.devices.clone())));
        if found.proven {
            prop_assert_eq!(&found.sets, &all[..k.min(all.len())]);
        }
    }

    #[test]
    fn a_used_isolator_answers_like_a_new_one(case in cases(), other in cases()) {
        let network = case.network();
        let mut used = Isolator::new(&network, &case);
        for target in other.targets {
            let target = target % case.nodes.len() as Node;
            used.best(&[target], 3, 7);
            used.first(&[target], 100);
        }
        let fresh = Isolator::new(&network, &case).best(&case.targets, 4, usize::MAX);
        prop_assert_eq!(used.best(&case.targets, 4, usize::MAX), fresh);
    }

    #[test]
    fn costs_and_losses_are_what_goes_dry(case in cases(), pick in any::<u32>()) {
        let network = case.network();
        let mut isolator = Isolator::new(&network, &case);
        let before = case.wet(case.shut());
        let usable = case.usable();
        for set in [pick & usable, usable, usable & usable.wrapping_neg()] {
            let devices: Vec<Node> = ones(set).map(|d| d as Node).collect();
            prop_assert_eq!(isolator.cost(&devices), case.cost(set));
            let dry = before & !case.wet(case.shut() | set);
            prop_assert_eq!(bits_of(&isolator.lost(&devices)), dry);
        }
    }

    #[test]
    fn reach_is_what_gets_wet(case in cases(), pick in any::<u32>()) {
        let network = case.network();
        let closed = pick & case.bits(|_, _| true);
        let is_closed = |n: Node| closed & (1 << n) != 0;
        prop_assert_eq!(bits_of(&marked(&network.reached(is_closed))), case.wet(closed));
        let starts = case.target_bits();
        prop_assert_eq!(
            bits_of(&marked(&network.reached_from(&case.targets, is_closed))),
            case.wet_from(starts, closed)
        );
        // A source that is closed still counts as wet itself, so only devices are closed here.
        let shut = case.shut();
        prop_assert_eq!(
            network.is_fed(&case.targets, |n| shut & (1 << n) != 0),
            case.wet(shut) & starts != 0
        );
    }

    /// The cutter by itself: costs as given, shut devices at no cost.
    #[test]
    fn the_cheapest_cut_is_of_least_cost_and_nearest_to_the_targets(case in cases()) {
        let network = case.network();
        let mut cutter = Cutter::new(&network);
        let price = |d: usize| {
            let part = &case.nodes[d];
            if part.shut { Some(0) } else { part.effort }
        };
        cutter.set_costs(|device| price(device as usize));
        let devices = case.bits(|i, part| {
            part.is == crate::case::Is::Device && price(i).is_some()
        }) & !case.target_bits();
        let dry = |set: u32| case.wet(set) & case.target_bits() == 0;
        let total = |set: u32| ones(set).filter_map(price).sum::<u64>();
        let cuts: Vec<u32> = subsets(devices).filter(|&set| dry(set)).collect();
        let least = cuts.iter().map(|&set| total(set)).min();
        for _ in 0..2 {
            match cutter.cheapest(&case.targets) {
                Cut::Impossible => prop_assert_eq!(least, None),
                Cut::Devices(found, cost) => {
                    prop_assert_eq!(Some(cost), least);
                    let free = devices & case.bits(|i, _| price(i) == Some(0));
                    let found = bits_of(&found);
                    prop_assert!(dry(found | free));
                    prop_assert_eq!(total(found), cost);
                    prop_assert_eq!(found & free, 0);
                    // What still reaches the targets is least with this cut.
                    let near = |set: u32| reaches_targets(&case, set);
                    for &other in cuts.iter().filter(|&&set| total(set) == cost) {
                        prop_assert_eq!(near(found | free) & !near(other | free), 0);
                    }
                }
            }
        }
    }
}

/// The nodes from which something would flow to a target if `closed` were shut.
fn reaches_targets(case: &Case, closed: u32) -> u32 {
    (0..case.nodes.len())
        .filter(|&node| closed & (1 << node) == 0)
        .filter(|&node| case.wet_from(1 << node, closed) & case.target_bits() != 0)
        .fold(0, |bits, node| bits | 1 << node)
}

fn marked(marks: &[bool]) -> Vec<Node> {
    (0..marks.len()).filter(|&i| marks[i]).map(|i| i as Node).collect()
}
