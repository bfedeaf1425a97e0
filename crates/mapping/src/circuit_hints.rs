//! What the map tells of a breaker or GFCI before anything is switched: what it likely feeds, and who
//! depends on it.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Home, Kind, Medium};

use crate::said::Said;
use crate::words::{folded, says};

/// Belief that a thing is on none of the devices, against 1 for a device that nothing speaks for.
pub(crate) const NONE_LIKELY: f64 = 0.5;
/// How much likelier a device is that feeds something in the same room.
pub(crate) const SAME_ROOM: f64 = 4.0;

/// How likely a device feeds a thing, by what the panel says; 1 if it says nothing.
pub(crate) fn likelihood(home: &Home, device: &Component, thing: &Component) -> f64 {
    let circuit = |c: &Component| c.circuit.as_deref().map(folded);
    if circuit(thing).is_some() && circuit(thing) == circuit(device) {
        return 20.0;
    }
    let room = thing.space.as_deref().and_then(|id| home.space(id)).map_or("", |s| s.name.as_str());
    let words = |text: &str| -> BTreeSet<String> {
        let folded = folded(text);
        let telling = folded.split(' ').filter(|w| w.chars().count() > 2);
        telling.filter(|w| !says(w, "words-telling-nothing")).map(str::to_owned).collect()
    };
    let mut ours = words(room);
    ours.extend(words(&thing.name));
    let shared = words(&device.name).intersection(&ours).count();
    let same_room =
        device.kind == Kind::Gfci && device.space.is_some() && device.space == thing.space;
    let lights = matches!(thing.kind, Kind::Light | Kind::Lampholder | Kind::Switch);
    let for_lights = says(&device.name, "words-part-light");
    let mut likely = 1.0;
    if shared > 0 {
        likely *= 5.0;
    }
    if same_room {
        likely *= 5.0;
    }
    if lights && for_lights {
        likely *= 2.5;
    }
    likely
}

/// Why a person must be asked before a device goes off.
pub(crate) fn ask_first(home: &Home, device: &Component) -> Vec<Said> {
    let mut below: Vec<&Component> = Vec::new();
    let mut stack = vec![device.id.as_str()];
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    while let Some(at) = stack.pop() {
        for line in home.connections.iter().filter(|l| l.from == at && l.carries == Medium::Power) {
            if seen.insert(&line.to) {
                below.extend(home.component(&line.to));
                stack.push(&line.to);
            }
        }
    }
    below.sort_by(|a, b| a.id.cmp(&b.id));
    let lists = ["words-medical", "words-pump", "words-freezer", "words-alarm"];
    let depended = |c: &Component| c.is_critical() || lists.iter().any(|list| says(&c.name, list));
    let mut names: Vec<String> =
        below.iter().copied().filter(|c| depended(c)).map(|c| c.name.clone()).collect();
    names.truncate(6);
    let mut list = Vec::new();
    if !names.is_empty() {
        list.push(Said::new("find-ask-named").with("device", &device.name).list("list", names));
    }
    for (words, key) in [
        ("words-medical", "find-ask-medical"),
        ("words-pump", "find-ask-pump"),
        ("words-freezer", "find-ask-freezer"),
        ("words-alarm", "find-ask-alarm"),
        ("words-computer", "find-ask-computer"),
    ] {
        if says(&device.name, words) && device.kind == Kind::Breaker {
            list.push(Said::new(key).with("device", &device.name));
        }
    }
    if device.critical && list.is_empty() {
        list.push(Said::new("find-ask-marked").with("device", &device.name));
    }
    list
}

/// True for what a person can see dead or live.
pub(crate) fn is_tried(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::Receptacle
            | Kind::Gfci
            | Kind::Light
            | Kind::Lampholder
            | Kind::Appliance
            | Kind::AirHandler
            | Kind::SumpPump
            | Kind::MedicalDevice
            | Kind::SmokeAlarm
            | Kind::WashingMachine
            | Kind::Dishwasher
    )
}

/// Ids of everything behind a breaker.
pub(crate) fn protected(home: &Home) -> BTreeSet<&str> {
    let mut ids: BTreeSet<&str> = BTreeSet::new();
    let mut stack: Vec<&str> = home
        .components
        .iter()
        .filter(|c| c.kind == Kind::Breaker && !says(&c.name, "words-main"))
        .map(|c| c.id.as_str())
        .collect();
    while let Some(at) = stack.pop() {
        for line in home.connections.iter().filter(|l| l.from == at && l.carries == Medium::Power) {
            // What stands behind a sub-panel's breaker is told by that one.
            let panel = home.component(&line.to).is_some_and(|c| c.kind == Kind::Panel);
            if !panel && ids.insert(&line.to) {
                stack.push(&line.to);
            }
        }
    }
    ids
}

pub(crate) fn feeds_breakers(home: &Home, id: &str) -> bool {
    home.connections.iter().any(|l| {
        l.from == id
            && home.component(&l.to).is_some_and(|c| matches!(c.kind, Kind::Breaker | Kind::Panel))
    })
}

pub(crate) fn has_feed(home: &Home, id: &str) -> bool {
    home.connections.iter().any(|l| l.to == id && l.carries == Medium::Power)
}

pub(crate) fn breakers_above<'h>(home: &'h Home, id: &'h str) -> BTreeSet<&'h str> {
    let mut found = BTreeSet::new();
    let mut seen: BTreeSet<&str> = BTreeSet::from([id]);
    let mut stack = vec![id];
    while let Some(at) = stack.pop() {
        for line in home.connections.iter().filter(|l| l.to == at && l.carries == Medium::Power) {
            match home.component(&line.from) {
                Some(c) if c.kind == Kind::Breaker => {
                    found.insert(c.id.as_str());
                }
                Some(c) if seen.insert(&c.id) => stack.push(&c.id),
                _ => {}
            }
        }
    }
    found
}

pub(crate) fn panel_of(home: &Home, breaker: &str) -> Option<String> {
    let line = home.connections.iter().find(|l| {
        l.to == breaker && home.component(&l.from).is_some_and(|c| c.kind == Kind::Panel)
    });
    line.map(|l| l.from.clone())
}
