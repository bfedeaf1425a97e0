//! Which questions the page can answer: every trouble at every spot, and what comes of it when a
//! device does not do what a step asks, or when a check shows something.

use std::collections::BTreeMap;

use quarterturn_guidance::{Act, Answer, Catalogue, Guide, Question, Seen, Spot, Trouble};
use quarterturn_home::{Component, Date, Home};

use super::observations::what_may_be_seen;

/// How many devices in a row may fail.
const MOST_FAILED: usize = 3;

/// What failed and what was seen.
type Happened = (Vec<String>, Vec<(String, Seen)>);

/// A trouble at a spot, with all that may come of it.
#[derive(Debug)]
pub(super) struct Asked {
    pub(super) trouble: Trouble,
    pub(super) spot: Spot,
    /// The first is the answer to begin with; the others are reached from it.
    pub(super) nodes: Vec<Node>,
}

/// An answer, and where it leads.
#[derive(Debug)]
pub(super) struct Node {
    /// What failed and what was seen before this answer.
    pub(super) failed: Vec<String>,
    pub(super) seen: Vec<(String, Seen)>,
    /// The same answer in each language, in the order of the catalogues.
    pub(super) answers: Vec<Answer>,
    /// Step whose device does not do what is asked, and the node that this leads to.
    pub(super) refused: Vec<(usize, usize)>,
    /// The node for when all that the steps closed or switched off did not help.
    pub(super) no_help: Option<usize>,
    /// What the next check may show, and the node that this leads to.
    pub(super) shown: Vec<(Seen, usize)>,
}

impl Node {
    fn events(&self) -> usize {
        self.failed.len() + self.seen.len()
    }

    /// The answer in the first language, which tells what there is in the others too.
    fn answer(&self) -> Option<&Answer> {
        self.answers.first()
    }
}

/// How many checks in a row may have been made. Where people may be hurt, nobody goes on looking.
fn most_seen(trouble: Trouble) -> usize {
    match trouble {
        Trouble::Sparks | Trouble::Shock | Trouble::WaterNearPower => 1,
        _ => 2,
    }
}

/// True if a device may refuse to do what such a step asks.
pub(super) fn can_refuse(act: Act) -> bool {
    match act {
        Act::Close | Act::Open | Act::SwitchOff | Act::Reset | Act::OpenCap => true,
        Act::Leave | Act::Call | Act::Unplug | Act::StopUse | Act::Look | Act::Advice => false,
    }
}

/// The steps that are to cut the spot off.
fn cuts(act: Act) -> bool {
    matches!(act, Act::Close | Act::SwitchOff)
}

/// Works out a trouble at a spot: breadth first, so that what is likely to be needed is there even
/// where the most nodes are reached.
pub(super) fn follow(
    guide: &Guide<'_>,
    catalogues: &[Catalogue],
    today: Date,
    most: usize,
    trouble: Trouble,
    spot: Spot,
) -> Asked {
    let home = guide.home();
    let mut asked = Asked { trouble, spot, nodes: Vec::new() };
    let mut known: BTreeMap<Happened, usize> = BTreeMap::new();
    let first = (Vec::new(), Vec::new());
    known.insert(first.clone(), 0);
    let mut waiting = vec![first];
    let mut at = 0;
    while let Some((failed, seen)) = waiting.get(at).cloned() {
        let question = Question {
            trouble,
            at: asked.spot.clone(),
            from: None,
            failed: failed.clone(),
            seen: seen.clone(),
        };
        let answers = guide.answers(&question, catalogues, Some(today));
        let mut node =
            Node { failed, seen, answers, refused: Vec::new(), no_help: None, shown: Vec::new() };
        let mut lead = |failed: Vec<String>, seen: Vec<(String, Seen)>| -> Option<usize> {
            let key = (in_order(home, failed), seen);
            if let Some(&there) = known.get(&key) {
                return Some(there);
            }
            if waiting.len() >= most {
                return None;
            }
            let there = waiting.len();
            known.insert(key.clone(), there);
            waiting.push(key);
            Some(there)
        };
        branch(home, &mut node, trouble, &mut lead);
        asked.nodes.push(node);
        at += 1;
    }
    asked
}

/// Finds where a node leads.
fn branch(
    home: &Home,
    node: &mut Node,
    trouble: Trouble,
    lead: &mut dyn FnMut(Vec<String>, Vec<(String, Seen)>) -> Option<usize>,
) {
    let Some(answer) = node.answer() else { return };
    let (mut refused, mut no_help, mut shown) = (Vec::new(), None, Vec::new());
    let worked: Vec<(usize, Act, &String)> = (0..)
        .zip(&answer.steps)
        .filter(|(_, step)| can_refuse(step.act))
        .filter_map(|(at, step)| Some((at, step.act, step.component.as_ref()?)))
        .filter(|(_, _, id)| !node.failed.contains(id))
        .collect();
    if node.failed.len() < MOST_FAILED {
        for &(at, _, id) in &worked {
            let failed = node.failed.iter().chain([id]).cloned().collect();
            refused.extend(lead(failed, node.seen.clone()).map(|there| (at, there)));
        }
        let cut: Vec<String> = worked
            .iter()
            .filter(|(_, act, _)| cuts(*act))
            .map(|(_, _, id)| (*id).clone())
            .collect();
        if !cut.is_empty() {
            let failed = node.failed.iter().chain(&cut).cloned().collect();
            no_help = lead(failed, node.seen.clone());
        }
    }
    // What was looked at already is not asked again: that would lead round in a circle.
    let check = answer.next_check.as_ref().filter(|check| {
        node.seen.len() < most_seen(trouble)
            && node.seen.iter().all(|(id, _)| *id != check.component)
    });
    if let Some(check) = check {
        let component = home.component(&check.component);
        for &seen in what_may_be_seen(home, trouble, component) {
            let here = [(check.component.clone(), seen)];
            let all = node.seen.iter().cloned().chain(here).collect();
            shown.extend(lead(node.failed.clone(), all).map(|there| (seen, there)));
        }
    }
    node.refused = refused;
    node.no_help = no_help;
    node.shown = shown;
}

/// Each once, in the order of the home file: what failed first makes no difference.
fn in_order(home: &Home, failed: Vec<String>) -> Vec<String> {
    let place = |id: &String| home.components.iter().position(|c: &Component| c.id == *id);
    let mut failed = failed;
    failed.sort_by_key(place);
    failed.dedup();
    failed
}

/// The nodes in an order in which each comes after all that it leads to.
pub(super) fn leaves_first(asked: &Asked) -> Vec<usize> {
    let mut order: Vec<usize> = (0..asked.nodes.len()).collect();
    order.sort_by_key(|&at| std::cmp::Reverse(asked.nodes.get(at).map_or(0, Node::events)));
    order
}
