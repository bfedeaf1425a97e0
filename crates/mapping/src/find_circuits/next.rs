//! The next walk: what to switch off, and where to look.

use std::collections::BTreeSet;

use quarterturn_home::Home;

use super::{NextWalk, Search, Switched, Thing};
use crate::halving::{Belief, choose, most_walks};
use crate::way::{seconds_between, walk_order};

/// Seconds to switch a breaker off and on again, and to look whether something is dead. Common
/// practice, no source.
const SWITCH_SECONDS: f64 = 4.0;
const LOOK_SECONDS: f64 = 8.0;
/// What switching a device costs, as a share of what a walk tells: clocks are to be set again.
const SWITCH_COST: f64 = 0.02;

impl Search {
    /// What to switch off next and where to walk; `None` if no walk tells any more.
    #[must_use]
    pub fn next_walk(&self, home: &Home) -> Option<NextWalk> {
        let beliefs = self.beliefs();
        let allowed = self.allowed();
        let cost = vec![SWITCH_COST; self.devices.len()];
        let chosen = choose(&beliefs, &allowed, &cost);
        let is_check = chosen.is_none();
        let off = match chosen {
            Some(off) => off,
            None => self.check_walk(&allowed)?,
        };
        let open = |belief: &Belief| belief.iter().filter(|share| **share > 0.0).count() > 1;
        let seen = self.thorough || is_check;
        let visit: Vec<&Thing> = self
            .things
            .iter()
            .zip(&beliefs)
            .filter(|(_, belief)| seen || open(belief))
            .map(|(thing, _)| thing)
            .collect();
        let ids: Vec<String> = self
            .devices
            .iter()
            .zip(&off)
            .filter(|(_, off)| **off)
            .map(|(device, _)| device.id.clone())
            .collect();
        let start = ids.first().cloned().unwrap_or_default();
        let stops: Vec<&str> = visit.iter().map(|thing| thing.id.as_str()).collect();
        let (order, walking) = match self.switched {
            Switched::Breakers => walk_order(home, &start, &stops),
            // Each button is where it is: they are on the way as well.
            Switched::Gfcis => {
                let (order, walking) = walk_order(home, &start, &stops);
                let buttons: f64 = ids
                    .iter()
                    .zip(ids.iter().skip(1))
                    .map(|(a, b)| 2.0 * seconds_between(home, a, b))
                    .sum();
                (order, walking + buttons)
            }
        };
        let visit: Vec<String> =
            order.iter().filter_map(|&at| visit.get(at)).map(|thing| thing.key.clone()).collect();
        let count = |n: usize| f64::from(u32::try_from(n).unwrap_or(u32::MAX));
        let seconds =
            walking + 2.0 * SWITCH_SECONDS * count(ids.len()) + LOOK_SECONDS * count(visit.len());
        let left: BTreeSet<usize> = beliefs
            .iter()
            .filter(|belief| open(belief))
            .flat_map(|belief| {
                (0..self.devices.len()).filter(|&d| belief.get(d).is_some_and(|s| *s > 0.0))
            })
            .collect();
        let more = u32::from(self.thorough && !is_check);
        Some(NextWalk {
            off: ids,
            visit,
            seconds,
            walks_at_most: if is_check { 1 } else { most_walks(&beliefs, &allowed) + more },
            one_at_a_time: left.len().max(1),
            is_check,
        })
    }
}
