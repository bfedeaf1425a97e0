//! Dead outlets: every set of faults is tried against what was seen.

use std::collections::BTreeSet;
use std::path::Path;

use super::ask::{Asked, Case, answer, hold};
use super::dice::Dice;
use super::draw::Site;
use super::flow::{Flow, Sort};
use super::house::House;

/// More candidates than this are not tried: such a case is held against less.
const MOST_CANDIDATES: usize = 13;
/// The program searches this many explanations at least.
const ALL_SEARCHED: usize = 12;

#[test]
fn dead_outlets_and_what_may_be_the_cause() {
    hold("blame", 220, draw, check);
}

fn draw(dice: Dice) -> Option<Case> {
    let mut site = Site::with_power(dice);
    let house = site.house.clone();
    let dice = &mut site.dice;
    let ids = |fits: &dyn Fn(&str) -> bool| -> Vec<String> {
        house.parts.iter().filter(|part| fits(part.kind)).map(|part| part.id.clone()).collect()
    };
    let outlets = ids(&is_outlet);
    let devices = ids(&|kind| {
        matches!(kind, "Breaker" | "Gfci" | "Switch" | "ServiceDisconnect" | "Disconnect")
    });
    if outlets.is_empty() {
        return None;
    }
    let at = dice.of(&outlets);
    let mut asked = Asked { trouble: "dead-outlet", at, failed: Vec::new(), seen: Vec::new() };
    while dice.chance(55) {
        let id = dice.of(&outlets);
        let state = dice.of(&["live", "live", "dead"]);
        if id != asked.at && !asked.seen.iter().any(|(seen, _)| *seen == id) {
            asked.seen.push((id, state));
        }
    }
    while !devices.is_empty() && dice.chance(25) {
        let id = dice.of(&devices);
        if !asked.seen.iter().any(|(seen, _)| *seen == id) {
            asked.seen.push((id, dice.of(&["on", "off", "tripped"])));
        }
    }
    Some(Case { house, asked })
}

fn is_outlet(kind: &str) -> bool {
    matches!(
        kind,
        "Receptacle" | "Gfci" | "Light" | "Lampholder" | "Appliance" | "SumpPump" | "MedicalDevice"
    )
}

/// The power of a case, in which everything can fail.
struct Power<'a> {
    case: &'a Case,
    flow: Flow<'a>,
    dead: Vec<usize>,
    live: Vec<usize>,
}

impl<'a> Power<'a> {
    fn of(case: &'a Case) -> Self {
        let place = |id: &str| case.house.parts.iter().position(|part| part.id == id).unwrap();
        let flow = Flow::of(&case.house, Sort::Power);
        let seen = |state: &str| -> Vec<usize> {
            case.asked.seen.iter().filter(|(_, s)| *s == state).map(|(id, _)| place(id)).collect()
        };
        let mut dead = vec![place(&case.asked.at)];
        dead.extend(seen("dead"));
        let live = seen("live");
        Self { case, flow, dead, live }
    }

    /// True if the part has power when all of `faults` have failed.
    fn has_power(&self, part: usize, faults: &BTreeSet<usize>) -> bool {
        let off = |place: usize| faults.contains(&place) || self.is_kept_off(place);
        let running = self.flow.run(&off, &|_| true);
        !faults.contains(&part) && self.flow.reaches(&running, part)
    }

    /// Reading: a breaker that stands off on an ordinary day, such as a generator's, brings no power and
    /// is not the fault either, unless it was seen on.
    fn is_kept_off(&self, place: usize) -> bool {
        let part = &self.case.house.parts[place];
        part.normally_shut && part.state != "LeaksBy" && self.seen(place) != Some("on")
    }

    fn seen(&self, place: usize) -> Option<&'static str> {
        let id = &self.case.house.parts[place].id;
        self.case.asked.seen.iter().rev().find(|(seen, _)| seen == id).map(|(_, state)| *state)
    }

    fn explains(&self, faults: &BTreeSet<usize>) -> bool {
        self.dead.iter().all(|&part| !self.has_power(part, faults))
            && self.live.iter().all(|&part| self.has_power(part, faults))
    }

    /// What any power to a dead part may come through.
    fn candidates(&self) -> Vec<usize> {
        let none = BTreeSet::new();
        (0..self.case.house.parts.len())
            .filter(|&place| {
                self.flow.has(place) && !self.is_kept_off(place) && self.has_power(place, &none)
            })
            .filter(|&place| {
                // A part matters only if power can run on from it to a dead one.
                self.dead.contains(&place)
                    || self.dead.iter().any(|&dead| self.leads_to(place, dead))
            })
            .collect()
    }

    fn leads_to(&self, from: usize, to: usize) -> bool {
        let mut reached = BTreeSet::from([from]);
        let mut stack = vec![from];
        while let Some(at) = stack.pop() {
            for next in 0..self.case.house.parts.len() {
                if !reached.contains(&next) && self.flow.leads(at, next) {
                    reached.insert(next);
                    stack.push(next);
                }
            }
        }
        reached.contains(&to)
    }

    /// Every set of faults that explains what was seen and holds none that it could do without.
    fn minimal(&self, candidates: &[usize]) -> Vec<BTreeSet<usize>> {
        let mut masks: Vec<usize> = (1..1_usize << candidates.len()).collect();
        masks.sort_by_key(|mask| mask.count_ones());
        let mut found: Vec<usize> = Vec::new();
        for mask in masks {
            if !found.iter().any(|less| less & mask == *less)
                && self.explains(&of(mask, candidates))
            {
                found.push(mask);
            }
        }
        found.into_iter().map(|mask| of(mask, candidates)).collect()
    }
}

fn of(mask: usize, candidates: &[usize]) -> BTreeSet<usize> {
    (0..candidates.len()).filter(|bit| mask >> bit & 1 == 1).map(|bit| candidates[bit]).collect()
}

fn check(case: &Case, folder: &Path) -> Result<(), String> {
    let answer = answer(case, folder)?;
    let house: &House = &case.house;
    let power = Power::of(case);
    let suspects: Vec<(usize, f64)> = answer["suspects"]
        .as_array()
        .unwrap()
        .iter()
        .map(|suspect| {
            let id = suspect["component"].as_str().unwrap();
            (
                house.parts.iter().position(|part| part.id == id).unwrap(),
                suspect["share"].as_f64().unwrap(),
            )
        })
        .collect();
    let name = |place: usize| house.parts[place].id.as_str();
    let none = BTreeSet::new();
    if !power.dead.iter().all(|&dead| power.has_power(dead, &none)) {
        // What nothing feeds by the map is dead without a fault.
        return Ok(());
    }
    if suspects.is_empty() {
        return Err("no suspects: the map tells what feeds it".to_owned());
    }
    let total: f64 = suspects.iter().map(|(_, share)| share).sum();
    if (total - 1.0).abs() > 0.0006 * suspects.len() as f64 + 0.0005 {
        return Err(format!("shares: they make {total}"));
    }
    if !suspects.is_sorted_by(|a, b| a.1 >= b.1) {
        return Err("order of suspects: the largest share is first".to_owned());
    }
    let candidates = power.candidates();
    if candidates.len() > MOST_CANDIDATES {
        return Ok(());
    }
    let minimal = power.minimal(&candidates);
    if minimal.is_empty() {
        // A test lamp that lies: nothing explains it all.
        return Ok(());
    }
    for &(place, _) in &suspects {
        let alone = BTreeSet::from([place]);
        if let Some(&live) = power.live.iter().find(|&&live| !power.has_power(live, &alone)) {
            return Err(format!(
                "cleared suspect: {} has power, so {} is sound",
                name(live),
                name(place)
            ));
        }
        if !minimal.iter().any(|faults| faults.contains(&place)) {
            return Err(format!(
                "no suspect: {} is in no explanation of {:?}",
                name(place),
                names(house, &minimal)
            ));
        }
    }
    if minimal.len() <= ALL_SEARCHED {
        let told: BTreeSet<usize> = suspects.iter().map(|(place, _)| *place).collect();
        let missed = minimal.iter().flatten().find(|place| !told.contains(place));
        if let Some(&place) = missed {
            return Err(format!(
                "missed suspect: {}, of {:?}",
                name(place),
                names(house, &minimal)
            ));
        }
    }
    check_next(case, &answer, &power, &minimal)
}

/// The next check is one that was not made yet, and whose outcome is not known beforehand.
fn check_next(
    case: &Case,
    answer: &serde_json::Value,
    power: &Power<'_>,
    minimal: &[BTreeSet<usize>],
) -> Result<(), String> {
    let Some(id) = answer["next_check"]["component"].as_str() else { return Ok(()) };
    let place = case.house.parts.iter().position(|part| part.id == id).unwrap();
    if power.seen(place).is_some() {
        return Err(format!("next check: {id} was looked at already"));
    }
    let failed = minimal.iter().filter(|faults| faults.contains(&place)).count();
    let dead = minimal.iter().filter(|faults| !power.has_power(place, faults)).count();
    if [failed, dead].iter().all(|&count| count == 0 || count == minimal.len()) {
        return Err(format!("next check: {id} tells nothing"));
    }
    Ok(())
}

fn names(house: &House, sets: &[BTreeSet<usize>]) -> Vec<Vec<String>> {
    sets.iter()
        .map(|set| set.iter().map(|&place| house.parts[place].id.clone()).collect())
        .collect()
}
