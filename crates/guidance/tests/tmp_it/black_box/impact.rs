//! What goes off, worked out from what each part had before and has afterwards.

use std::collections::BTreeSet;

use super::flow::{Flow, Running, Sort};
use super::house::House;

/// What people use, and would miss.
pub(crate) fn is_missed(kind: &str) -> bool {
    matches!(
        kind,
        "Tap"
            | "HoseBibb"
            | "Irrigation"
            | "IceMaker"
            | "SprinklerRiser"
            | "Sink"
            | "Basin"
            | "Bath"
            | "Shower"
            | "Toilet"
            | "WashingMachine"
            | "Dishwasher"
            | "WaterHeater"
            | "Gfci"
            | "Receptacle"
            | "Light"
            | "Lampholder"
            | "Appliance"
            | "SumpPump"
            | "EjectorPit"
            | "SumpPit"
            | "SmokeAlarm"
            | "MedicalDevice"
            | "AirHandler"
            | "CondensatePump"
            | "Thermostat"
            | "GasAppliance"
            | "Well"
            | "CirculationPump"
    )
}

/// What must be named first when it goes off.
pub(crate) fn is_critical(house: &House, id: &str) -> bool {
    let part = house.part(id);
    part.critical
        || matches!(
            part.kind,
            "MedicalDevice"
                | "SumpPump"
                | "SumpPit"
                | "EjectorPit"
                | "SmokeAlarm"
                | "SprinklerRiser"
        )
}

/// Ids of what had a feed with `before` shut and has none left with `after` shut.
///
/// A part with water and power lines needs both; a source that is wired needs its current, or gas.
/// Of two lines of the same sort one is enough, except for a load of two poles or more on single
/// breakers, which needs all of them.
pub(crate) fn goes_off(
    house: &House,
    before: &BTreeSet<&str>,
    after: &BTreeSet<&str>,
) -> BTreeSet<String> {
    let flows = [Sort::Water, Sort::Power, Sort::Gas].map(|sort| Flow::of(house, sort));
    let had = served(house, &flows, before);
    let has = served(house, &flows, after);
    let mut off: BTreeSet<String> = BTreeSet::new();
    for (place, part) in house.parts.iter().enumerate() {
        if is_missed(part.kind) && (0..3).any(|sort| had[sort][place] && !has[sort][place]) {
            off.insert(part.id.clone());
        }
    }
    // A pit goes off with the last of its pumps.
    for pit in house.parts.iter().filter(|part| matches!(part.kind, "SumpPit" | "EjectorPit")) {
        let pumps: Vec<&str> = house
            .lines
            .iter()
            .filter(|line| line.carries == "Waste" && (line.from == pit.id || line.to == pit.id))
            .map(|line| if line.from == pit.id { line.to.as_str() } else { line.from.as_str() })
            .filter(|other| house.part(other).kind == "SumpPump")
            .collect();
        if !pumps.is_empty() {
            if pumps.iter().all(|pump| off.contains(*pump)) {
                off.insert(pit.id.clone());
            } else {
                off.remove(&pit.id);
            }
        }
    }
    off
}

/// For each sort, whether something arrives at each part.
fn served(house: &House, flows: &[Flow<'_>; 3], shut: &BTreeSet<&str>) -> [Vec<bool>; 3] {
    let is_shut = |place: usize| shut.contains(house.parts[place].id.as_str());
    // Nothing runs yet; then whatever can run, until nothing changes. A loop never feeds itself.
    let mut served = [(); 3].map(|()| vec![false; house.parts.len()]);
    loop {
        let mut next = served.clone();
        for (sort, flow) in flows.iter().enumerate() {
            let works = |place: usize| {
                (0..3)
                    .filter(|&other| other != sort && flows[other].has(place))
                    .all(|other| served[other][place])
            };
            let running = both_poles(house, flow, &is_shut, &works);
            for (place, next) in next[sort].iter_mut().enumerate() {
                let own = !flow.is_source(place) || works(place);
                *next = own
                    && !is_shut(place)
                    && flow.has(place)
                    && flow.serves(&running.0, place)
                    && !running.1.contains(&place);
            }
        }
        if next == served {
            return served;
        }
        served = next;
    }
}

/// What runs, and the loads that miss one of the single poles they need. Such a load passes nothing
/// on either.
fn both_poles(
    house: &House,
    flow: &Flow<'_>,
    shut: &dyn Fn(usize) -> bool,
    works: &dyn Fn(usize) -> bool,
) -> (Running, BTreeSet<usize>) {
    let mut half: BTreeSet<usize> = BTreeSet::new();
    loop {
        let running = flow.run(&|place| shut(place) || half.contains(&place), works);
        let more: BTreeSet<usize> = (0..house.parts.len())
            .filter(|&place| flow.sort == Sort::Power && house.parts[place].poles >= 2)
            .filter(|&place| {
                let load = &house.parts[place];
                let feeds: Vec<usize> = (0..house.parts.len())
                    .filter(|&other| {
                        house.lines.iter().any(|l| {
                            l.carries == "Power"
                                && l.to == load.id
                                && l.from == house.parts[other].id
                        })
                    })
                    .collect();
                let single = |&feed: &usize| {
                    house.parts[feed].kind == "Breaker" && house.parts[feed].poles < 2
                };
                let alive = |&feed: &usize| !shut(feed) && flow.reaches(&running, feed);
                load.kind == "Appliance"
                    && feeds.len() >= 2
                    && feeds.iter().all(single)
                    && !feeds.iter().all(alive)
            })
            .collect();
        if more == half {
            return (running, half);
        }
        half = more;
    }
}
