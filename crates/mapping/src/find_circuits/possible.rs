//! What is still possible for each thing, by the walks so far.

use std::collections::{BTreeMap, BTreeSet};

use super::Search;
use crate::circuit_hints::SAME_ROOM;
use crate::halving::{Belief, height};

impl Search {
    pub(super) fn allowed(&self) -> Vec<bool> {
        self.devices.iter().map(|d| (d.ask.is_empty() || d.confirmed) && !d.broken).collect()
    }

    /// What is still possible for each thing, by all walks so far.
    pub(super) fn beliefs(&self) -> Vec<Belief> {
        let mut beliefs: Vec<Belief> = self.things.iter().map(|t| t.prior.clone()).collect();
        for walk in &self.walks {
            let off: Vec<bool> = self.devices.iter().map(|d| walk.off.contains(&d.id)).collect();
            for (thing, belief) in self.things.iter().zip(&mut beliefs) {
                let dead = match (walk.dead.contains(&thing.key), walk.live.contains(&thing.key)) {
                    (true, _) => true,
                    (_, true) => false,
                    _ => continue,
                };
                for (device, share) in belief.iter_mut().enumerate() {
                    if off.get(device).copied().unwrap_or(false) != dead {
                        *share = 0.0;
                    }
                }
            }
        }
        self.same_room(&mut beliefs);
        beliefs
    }

    /// Outlets of one room are often on one breaker: where one is found, its neighbours lean to the
    /// same. It changes what is likely, never what is possible.
    fn same_room(&self, beliefs: &mut [Belief]) {
        let only = |belief: &Belief| {
            let mut left = belief.iter().enumerate().filter(|(_, share)| **share > 0.0);
            let first = left.next().map(|(device, _)| device);
            first.filter(|_| left.next().is_none())
        };
        let mut known: BTreeMap<&str, BTreeSet<usize>> = BTreeMap::new();
        for (thing, belief) in self.things.iter().zip(beliefs.iter()) {
            if let (Some(room), Some(device)) = (&thing.room, only(belief)) {
                known.entry(room).or_default().insert(device);
            }
        }
        for (thing, belief) in self.things.iter().zip(beliefs.iter_mut()) {
            let Some(near) = thing.room.as_deref().and_then(|room| known.get(room)) else {
                continue;
            };
            for &device in near {
                if let Some(share) = belief.get_mut(device) {
                    *share *= SAME_ROOM;
                }
            }
        }
    }

    /// One more walk that notices any one slip, if all was looked at in each walk: the devices that
    /// were off an odd number of times. A single parity bit makes all codes differ in two places.
    pub(super) fn check_walk(&self, allowed: &[bool]) -> Option<Vec<bool>> {
        let enough = height(self.devices.len() + 1);
        let checked = self.walks.len() > usize::try_from(enough).unwrap_or(usize::MAX);
        if !self.thorough || self.walks.is_empty() || checked {
            return None;
        }
        let off: Vec<bool> = self
            .devices
            .iter()
            .zip(allowed)
            .map(|(d, allowed)| {
                let times = self.walks.iter().filter(|w| w.off.contains(&d.id)).count();
                *allowed && times % 2 == 1
            })
            .collect();
        let again = self.walks.iter().any(|walk| {
            self.devices.iter().zip(&off).all(|(d, off)| walk.off.contains(&d.id) == *off)
        });
        (off.contains(&true) && !again).then_some(off)
    }
}
