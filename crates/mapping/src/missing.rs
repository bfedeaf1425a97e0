//! What is still missing: the next useful things to record, most protective first.
//!
//! How much each would help is found by trying it: the map is taken as if it were recorded, and the
//! spots that have an answer then are counted again. What counts is spots with an answer, not fields.

mod beside;
mod fixes;
#[cfg(test)]
mod tests;
mod tried;

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_guidance::{Catalogue, Spot, Trouble};
use quarterturn_home::{Home, Medium, Role};

use self::beside::beside_the_nets;
use self::fixes::fix;
use self::tried::tried;
use crate::known::{Cause, Known, known};
use crate::order::Lack;
use crate::propose::Proposal;
use crate::said::Said;

/// How far the map has come, and what would help next.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Missing {
    /// Spots that count.
    pub spots: usize,
    /// Spots with an answer of their own.
    pub answered: usize,
    /// What to record next, most protective first.
    pub list: Vec<Item>,
}

/// Something to record.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// What is missing, in words.
    pub said: Said,
    /// Where it is put right.
    pub fix: Fix,
    /// The spots that would have an answer then, or are better served.
    pub protects: Vec<(Trouble, Spot)>,
    /// How much it would help, against others. It ranks, and has no unit.
    pub help: f64,
}

/// Where something missing is put right.
#[derive(Debug, Clone, PartialEq)]
pub enum Fix {
    /// Draw the rooms.
    DrawRooms,
    /// Place a typical set, in this space if one is told.
    PlaceSet {
        /// Id of the set.
        set: &'static str,
        /// Id of the space.
        space: Option<String>,
    },
    /// Find and pin the shutoff that stops this component's water (or gas).
    AddShutoff {
        /// Id of the component.
        before: String,
    },
    /// Find and pin the main shutoff of the house.
    AddMain,
    /// Pin a cleanout on the house drain.
    AddCleanout,
    /// Draw what feeds or drains a component.
    Connect {
        /// Id of the component.
        id: String,
        /// What it lacks.
        lack: Lack,
        /// What the line carries.
        carries: Medium,
        /// The likely line, if there is one.
        proposal: Option<Box<Proposal>>,
    },
    /// Find the breakers of these, walk by walk.
    FindBreakers {
        /// Ids of the things.
        things: Vec<String>,
    },
    /// Press the test buttons and see what goes dead.
    FindGfcis,
    /// Try a device once and write down how it turned out.
    Try {
        /// Id of the device.
        id: String,
    },
    /// Put a device into its room.
    PutInRoom {
        /// Id of the device.
        id: String,
    },
    /// Fill in the emergency number.
    EmergencyPhone,
    /// Add a contact with a number.
    AddContact {
        /// What they are called for.
        role: Role,
    },
}

/// Things that are tried out for their help; more would not be read, and takes time.
const MOST_TRIED: usize = 20;
/// Things in the list.
const MOST_TOLD: usize = 30;

impl Missing {
    /// Percent of spots with an answer, 100 only if all have one.
    #[must_use]
    pub fn percent(&self) -> usize {
        (self.answered * 100).checked_div(self.spots).unwrap_or(0)
    }

    /// The one line above the list.
    #[must_use]
    pub fn said(&self) -> Said {
        Said::new("missing-percent")
            .count("percent", self.percent())
            .count("answered", self.answered)
            .count("spots", self.spots)
    }
}

/// How far the map has come and what is missing next.
///
/// Time: (components + connections) × things that are tried, at most twenty.
#[must_use]
pub fn missing(home: &Home) -> Missing {
    let now = known(home);
    let answered = now.iter().filter(|k| k.lacks.is_none()).count();
    let mut groups: Vec<Item> = Vec::new();
    let mut by_cause: BTreeMap<Cause, Vec<&Known>> = BTreeMap::new();
    for spot in &now {
        if let Some(cause) = &spot.lacks {
            by_cause.entry(gathered(cause)).or_default().push(spot);
        }
    }
    for (cause, spots) in by_cause {
        let Some((fix, said)) = fix(home, &cause, &spots) else { continue };
        let weight = spots.iter().map(|spot| spot.weight).sum();
        let at = spots.iter().map(|spot| (spot.trouble, spot.at.clone())).collect();
        groups.push(Item { said, fix, protects: at, help: weight });
    }
    groups.sort_by(|a, b| b.help.total_cmp(&a.help));
    let words = Catalogue::english();
    let mut list: Vec<Item> = groups
        .into_iter()
        .enumerate()
        .map(|(rank, item)| {
            let then = if rank < MOST_TRIED { tried(home, &item.fix, &words) } else { None };
            let Some(then) = then else {
                // What cannot be tried is judged by what hangs on it, at half.
                return Item { help: item.help / 2.0, ..item };
            };
            let gained = gained(&now, &known(&then));
            if gained.is_empty() {
                // It is one step of several.
                return Item { help: item.help / 4.0, ..item };
            }
            let help = gained.iter().map(|spot| spot.weight).sum::<f64>();
            let protects = gained.iter().map(|spot| (spot.trouble, spot.at.clone())).collect();
            Item { protects, help, ..item }
        })
        .collect();
    list.extend(beside_the_nets(home));
    list.sort_by(|a, b| b.help.total_cmp(&a.help));
    list.truncate(MOST_TOLD);
    Missing { spots: now.len(), answered, list }
}

/// Causes that are put right in one go are one.
fn gathered(cause: &Cause) -> Cause {
    match cause {
        // One guided search finds them all.
        Cause::NoBreaker(_) => Cause::NoBreaker(String::new()),
        other => other.clone(),
    }
}

/// Spots that had no answer and have one then.
fn gained<'k>(now: &'k [Known], then: &[Known]) -> Vec<&'k Known> {
    let answered: BTreeSet<(Trouble, &Spot)> =
        then.iter().filter(|k| k.lacks.is_none()).map(|k| (k.trouble, &k.at)).collect();
    let open: BTreeSet<(Trouble, &Spot)> =
        then.iter().filter(|k| k.lacks.is_some()).map(|k| (k.trouble, &k.at)).collect();
    now.iter()
        .filter(|k| k.lacks.is_some())
        .filter(|k| {
            let spot = (k.trouble, &k.at);
            // What a room lacked is no spot of its own any more once it is there.
            let placed = matches!(k.lacks, Some(Cause::NoSet(..))) && !open.contains(&spot);
            answered.contains(&spot) || placed
        })
        .collect()
}
