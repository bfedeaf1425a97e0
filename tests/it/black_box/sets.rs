//! Sets of devices to shut: every set is tried, and none is missed.

use std::collections::BTreeSet;
use std::path::Path;

use serde_json::Value;

use super::ask::{Asked, Case, answer, hold, texts};
use super::dice::Dice;
use super::draw::Site;
use super::flow::{Flow, Sort};
use super::house::{House, can_stand_off};
use super::impact::{goes_off, is_critical, is_missed};

/// More devices than this are not tried: the case is drawn anew.
const MOST_DEVICES: usize = 12;
/// The program lists this many sets at least, if there are so many.
const ALL_LISTED: usize = 10;

#[test]
fn leaks_at_components_and_in_lines() {
    hold("leak", 260, leak, check);
}

#[test]
fn leaks_somewhere_in_a_room_or_above_it() {
    hold("room", 90, room, check);
}

#[test]
fn sparks_and_every_source_of_them() {
    hold("sparks", 200, sparks, check);
}

fn leak(dice: Dice) -> Option<Case> {
    let mut site = Site::with_water(dice);
    let house = site.house.clone();
    let wet = |house: &House, id: &str| house.carries(id, Sort::Water.media());
    let at = spot(&mut site.dice, &house, Sort::Water, wet)?;
    Some(case(&mut site.dice, house, "leak", at, Sort::Water))
}

fn room(dice: Dice) -> Option<Case> {
    let mut site = Site::with_water(dice);
    let house = site.house.clone();
    let rooms: Vec<String> = house.rooms.iter().map(|room| room.id.clone()).collect();
    let trouble = site.dice.of(&["leak", "water-from-above"]);
    let at = site.dice.of(&rooms);
    Some(case(&mut site.dice, house, trouble, at, Sort::Water))
}

fn sparks(dice: Dice) -> Option<Case> {
    let mut site = Site::with_power(dice);
    let house = site.house.clone();
    if site.dice.chance(15) {
        let rooms: Vec<String> = house.rooms.iter().map(|room| room.id.clone()).collect();
        let at = site.dice.of(&rooms);
        return Some(case(&mut site.dice, house, "sparks", at, Sort::Power));
    }
    let wired = |house: &House, id: &str| house.carries(id, Sort::Power.media());
    let at = spot(&mut site.dice, &house, Sort::Power, wired)?;
    Some(case(&mut site.dice, house, "sparks", at, Sort::Power))
}

fn spot(
    dice: &mut Dice,
    house: &House,
    sort: Sort,
    fits: fn(&House, &str) -> bool,
) -> Option<String> {
    if dice.chance(25) {
        let lines: Vec<_> =
            house.lines.iter().filter(|line| sort.media().contains(&line.carries)).collect();
        let line = dice.of(&lines);
        // A pair of parts names the first line between them, whatever it carries.
        let first = house.lines.iter().find(|other| {
            (other.from == line.from && other.to == line.to)
                || (other.from == line.to && other.to == line.from)
        })?;
        return sort
            .media()
            .contains(&first.carries)
            .then(|| format!("{}..{}", first.from, first.to));
    }
    let fits = house.parts.iter().filter(|part| fits(house, &part.id));
    // More often than not at something in use.
    let used = dice.chance(50);
    let ids: Vec<String> =
        fits.filter(|part| !used || is_missed(part.kind)).map(|part| part.id.clone()).collect();
    (!ids.is_empty()).then(|| dice.of(&ids))
}

fn case(dice: &mut Dice, house: House, trouble: &'static str, at: String, sort: Sort) -> Case {
    let devices: Vec<String> = house
        .parts
        .iter()
        .filter(|part| sort.isolates(part.kind))
        .map(|part| part.id.clone())
        .collect();
    let mut asked = Asked { trouble, at, failed: Vec::new(), seen: Vec::new() };
    if !devices.is_empty() {
        while dice.chance(30) {
            asked.failed.push(dice.of(&devices));
        }
        while dice.chance(20) {
            let state = dice.of(&["off", "on", "on", "tripped"]);
            asked.seen.push((dice.of(&devices), state));
        }
    }
    if dice.chance(10) {
        let rooms: Vec<String> = house.rooms.iter().map(|room| room.id.clone()).collect();
        asked.seen.push((dice.of(&rooms), "wet"));
    }
    Case { house, asked }
}

/// What the sentences of the file format make of a case.
struct Truth<'a> {
    house: &'a House,
    flow: Flow<'a>,
    /// Places of what leaks or sparks; empty if the spot is a line.
    targets: Vec<usize>,
    line: Option<(&'a str, &'a str)>,
    shut: BTreeSet<&'a str>,
    usable: Vec<usize>,
}

impl<'a> Truth<'a> {
    fn of(case: &'a Case) -> Self {
        let Case { house, asked } = case;
        let sort = if asked.trouble == "sparks" { Sort::Power } else { Sort::Water };
        let flow = Flow::of(house, sort);
        let line = asked.at.split_once("..");
        let targets: Vec<usize> = match house.room(&asked.at) {
            Some(_) => (0..house.parts.len())
                .filter(|&place| flow.has(place) && may_leak(case, place))
                .collect(),
            None => {
                (0..house.parts.len()).filter(|&place| house.parts[place].id == asked.at).collect()
            }
        };
        let shut: BTreeSet<&str> = house
            .parts
            .iter()
            .map(|part| part.id.as_str())
            .filter(|id| is_shut(case, id))
            .collect();
        let usable = (0..house.parts.len())
            .filter(|&place| sort.isolates(house.parts[place].kind) && flow.has(place))
            .filter(|place| {
                !targets.contains(place) && may_be_used(case, &house.parts[*place].id, &shut)
            })
            .collect();
        Self { house, flow, targets, line, shut, usable }
    }

    /// True if something still runs to the spot with a set shut as well.
    fn runs_with(&self, set: &BTreeSet<&str>) -> bool {
        let id = |place: usize| self.house.parts[place].id.as_str();
        // A switch or an outlet that was seen off cuts nothing off that one relies on.
        let shut = |place: usize| {
            self.flow.sort.isolates(self.house.parts[place].kind)
                && (self.shut.contains(id(place)) || set.contains(id(place)))
        };
        let running = self.flow.run(&shut, &|_| true);
        match self.line {
            Some((from, to)) => self.flow.stands_in(&running, &shut, from, to),
            None => self.targets.iter().any(|&place| self.flow.reaches(&running, place)),
        }
    }

    fn ids(&self, mask: usize) -> BTreeSet<&'a str> {
        (0..self.usable.len())
            .filter(|bit| mask >> bit & 1 == 1)
            .map(|bit| self.house.parts[self.usable[bit]].id.as_str())
            .collect()
    }

    /// Every set that cuts the spot off and of which no device can be left out.
    fn minimal(&self) -> Vec<BTreeSet<&'a str>> {
        let mut masks: Vec<usize> = (0..1_usize << self.usable.len()).collect();
        masks.sort_by_key(|mask| mask.count_ones());
        let mut found: Vec<usize> = Vec::new();
        for mask in masks {
            if !found.iter().any(|less| less & mask == *less) && !self.runs_with(&self.ids(mask)) {
                found.push(mask);
            }
        }
        found.into_iter().map(|mask| self.ids(mask)).collect()
    }
}

/// True if the device is shut on an ordinary day or was seen so, and holds: what was seen last counts.
///
/// Reading: one that failed, or is known to leak by, does not hold and so is not shut.
fn is_shut(case: &Case, id: &str) -> bool {
    let part = case.house.part(id);
    let failed = case.asked.failed.iter().any(|failed| failed == id);
    if failed || part.state == "LeaksBy" || !can_stand_off(part.kind) {
        return false;
    }
    match case.asked.seen.iter().rev().find(|(seen, _)| seen == id) {
        Some((_, "off" | "tripped")) => true,
        Some((_, "on")) => false,
        _ => part.normally_shut,
    }
}

fn may_be_used(case: &Case, id: &str, shut: &BTreeSet<&str>) -> bool {
    let part = case.house.part(id);
    !shut.contains(id)
        && !case.asked.failed.iter().any(|failed| failed == id)
        && !matches!(part.state, "Seized" | "LeaksBy")
        && !controls_sprinklers(&case.house, id)
        && !stands_in_water(case, id)
}

/// Reading: where water was seen standing, nobody is sent to anything, since the map never tells all
/// that may make it live. A breaker without a room is in its panel's.
fn stands_in_water(case: &Case, id: &str) -> bool {
    let part = case.house.part(id);
    let panel = || {
        let feeds = case.house.lines.iter().filter(|l| l.carries == "Power" && l.to == id);
        feeds
            .map(|line| case.house.part(&line.from))
            .find(|feed| feed.kind == "Panel")?
            .room
            .clone()
    };
    let room = part.room.clone().or_else(|| (part.kind == "Breaker").then(panel).flatten());
    case.asked.seen.iter().any(|(at, seen)| *seen == "wet" && Some(at) == room.as_ref())
}

/// Reading: a valve that usually feeds sprinklers and nothing else that people use is their control
/// valve; what feeds a tap as well is a branch valve.
fn controls_sprinklers(house: &House, id: &str) -> bool {
    let mut below: BTreeSet<&str> = BTreeSet::new();
    let mut stack = vec![id];
    while let Some(at) = stack.pop() {
        for line in
            house.lines.iter().filter(|l| l.from == at && Sort::Water.media().contains(&l.carries))
        {
            if below.insert(&line.to) {
                stack.push(&line.to);
            }
        }
    }
    let kinds: Vec<&str> =
        below.iter().map(|id| house.part(id).kind).filter(|kind| is_missed(kind)).collect();
    house.part(id).kind == "IsolatingValve"
        && !kinds.is_empty()
        && kinds.iter().all(|kind| *kind == "SprinklerRiser")
}

/// True if a part can be what leaks (or sparks) when the spot is a room.
///
/// Reading: for water from above, that is what lies in the room or on a higher floor, outdoors too;
/// what is in no room is not taken as above, and a source is not.
fn may_leak(case: &Case, place: usize) -> bool {
    let part = &case.house.parts[place];
    let Some(room) = part.room.as_deref() else { return false };
    if case.asked.trouble != "water-from-above" {
        return room == case.asked.at;
    }
    let floor = |id: &str| case.house.room(id).and_then(|room| case.house.floor_m(room)).unwrap();
    !matches!(part.kind, "WaterMain" | "Well")
        && (room == case.asked.at || floor(room) > floor(&case.asked.at))
}

fn check(case: &Case, folder: &Path) -> Result<(), String> {
    let truth = Truth::of(case);
    assert!(truth.usable.len() <= MOST_DEVICES, "too many devices to try all");
    let answer = answer(case, folder)?;
    let sets: Vec<&Value> = answer["sets"].as_array().unwrap().iter().collect();
    if truth.line.is_none() && truth.targets.iter().all(|&place| !truth.flow.has(place)) {
        return if sets.is_empty() {
            Ok(())
        } else {
            Err("sets without a feed: nothing leads there".to_owned())
        };
    }
    if !truth.runs_with(&BTreeSet::new()) {
        return if sets.is_empty() {
            Ok(())
        } else {
            Err("sets without need: nothing feeds it".to_owned())
        };
    }
    let minimal = truth.minimal();
    let told: Vec<BTreeSet<String>> =
        sets.iter().map(|set| texts(&set["close"]).into_iter().collect()).collect();
    for (set, told) in sets.iter().zip(&told) {
        if !minimal.iter().any(|set| same(set, told)) {
            return Err(format!("wrong set: {told:?} is not one of {minimal:?}"));
        }
        check_set(case, &truth, set)?;
    }
    let by = |set: &BTreeSet<&str>| {
        set.iter().map(|id| rank(case.house.part(id).operable_by)).max().unwrap()
    };
    let anyone: Vec<&BTreeSet<&str>> = minimal.iter().filter(|set| by(set) == 0).collect();
    let must = if minimal.len() <= ALL_LISTED { minimal.iter().collect() } else { anyone };
    if must.len() <= ALL_LISTED {
        for set in must {
            if !told.iter().any(|told| same(set, told)) {
                return Err(format!("missed set: {set:?} is not in {told:?}"));
            }
        }
    }
    if minimal.len() > ALL_LISTED && told.len() < ALL_LISTED {
        return Err(format!("too few sets: {} of {}", told.len(), minimal.len()));
    }
    let only_theirs =
        |set: &BTreeSet<&str>| set.iter().all(|id| case.house.part(id).operable_by == "Utility");
    if minimal.iter().any(only_theirs) && !sets.iter().any(|set| set["by"] == "utility") {
        return Err("last resort: the utility could, and is not told".to_owned());
    }
    let order: Vec<u8> = sets.iter().map(|set| rank(set["by"].as_str().unwrap())).collect();
    if !order.is_sorted() {
        return Err(format!("order: {order:?}, what anyone can do is first"));
    }
    check_steps(case, &truth, &answer)
}

fn same(set: &BTreeSet<&str>, told: &BTreeSet<String>) -> bool {
    set.len() == told.len() && set.iter().all(|id| told.contains(*id))
}

fn rank(who: &str) -> u8 {
    match who {
        "Utility" | "utility" => 2,
        "Licensed" | "licensed" => 1,
        _ => 0,
    }
}

/// What stands beside the devices of a set.
fn check_set(case: &Case, truth: &Truth<'_>, set: &Value) -> Result<(), String> {
    let close = texts(&set["close"]);
    let mut once = close.clone();
    once.sort();
    once.dedup();
    if once.len() != close.len() {
        return Err(format!("device twice: {close:?}"));
    }
    let who = close.iter().map(|id| rank(case.house.part(id).operable_by)).max().unwrap();
    if rank(set["by"].as_str().unwrap()) != who {
        return Err(format!("by: {} for {close:?}", set["by"]));
    }
    let mut tools: Vec<String> =
        close.iter().filter_map(|id| case.house.part(id).tool.clone()).collect();
    tools.sort();
    tools.dedup();
    if texts(&set["needs"]) != tools {
        return Err(format!("needs: {} for {close:?}", set["needs"]));
    }
    let mut after = truth.shut.clone();
    after.extend(close.iter().map(String::as_str));
    let expected = goes_off(&case.house, &truth.shut, &after);
    let listed = texts(&set["goes_off"]);
    if listed.iter().cloned().collect::<BTreeSet<String>>() != expected
        || listed.len() != expected.len()
    {
        return Err(format!("goes off: {listed:?} for {close:?}, it is {expected:?}"));
    }
    if !listed.iter().map(|id| !is_critical(&case.house, id)).is_sorted() {
        return Err(format!("critical last: {listed:?}"));
    }
    let seconds = set["seconds"].as_f64().unwrap();
    let sure = set["confidence"].as_f64().unwrap();
    if seconds < close.len() as f64 || !(0.0 < sure && sure <= 1.0) {
        return Err(format!("figures: {seconds} s, confidence {sure}"));
    }
    let litres = set["litres"].as_f64();
    if litres.is_some() != (truth.flow.sort == Sort::Water)
        || litres.is_some_and(|litres| litres <= 0.0)
    {
        return Err(format!("litres: {litres:?}"));
    }
    Ok(())
}

/// The steps, done one after the other, end with one of the sets that anyone can do. A device that
/// comes up again is opened again; once nothing runs to the spot, it stays so.
fn check_steps(case: &Case, truth: &Truth<'_>, answer: &Value) -> Result<(), String> {
    let sets = answer["sets"].as_array().unwrap();
    let mut ours = sets.iter().filter(|set| set["by"] == "anyone").peekable();
    if ours.peek().is_none() {
        return Ok(());
    }
    let mut shut: BTreeSet<&str> = BTreeSet::new();
    let mut dry = false;
    let steps = answer["steps"].as_array().unwrap().iter();
    for id in steps.filter_map(|step| step["component"].as_str()) {
        if !truth.flow.sort.isolates(case.house.part(id).kind) {
            continue;
        }
        if !shut.remove(id) {
            shut.insert(id);
        }
        let runs = truth.runs_with(&shut);
        if dry && runs {
            return Err(format!("steps: {id} lets it run again, with {shut:?} shut"));
        }
        dry = !runs;
    }
    let done = |set: &Value| same(&shut, &texts(&set["close"]).into_iter().collect());
    if ours.any(done) { Ok(()) } else { Err(format!("steps: they end with {shut:?} shut")) }
}
