//! What a home and an answer amount to, worked out from outside.

use std::collections::BTreeSet;

use quarterturn_guidance::{Act, Seen, Spot, Step};

use super::Told;
use crate::black_box::house::can_stand_off;
use crate::black_box::impact::{goes_off, is_missed};

/// The troubles that put water on the floor of their spot.
const WET: &[&str] = &[
    "leak",
    "water-from-above",
    "toilet-overflow",
    "drain-backs-up",
    "sewage-rising",
    "water-near-power",
    "water-at-air-handler",
];

/// True for what one leaves the house for, or stays away from.
pub(super) fn leaves(told: &Told<'_>) -> bool {
    ["gas-smell", "co-alarm", "fire", "wires-down"].contains(&told.answer.trouble)
}

/// Rooms where water is, and those of them where it was seen standing.
pub(super) struct Water<'a> {
    wet: BTreeSet<&'a str>,
    standing: BTreeSet<&'a str>,
}

impl<'a> Water<'a> {
    pub(super) fn of(told: &'a Told<'_>) -> Self {
        let room_of = |id: &'a str| match told.house.room(id) {
            Some(room) => Some(room.id.as_str()),
            None => room_of_part(told, id),
        };
        // Water in a pan or a pit is where it belongs, and does not wet the room.
        let holds_water = |id: &str| {
            let part = told.house.parts.iter().find(|part| part.id == id);
            part.is_some_and(|p| {
                matches!(p.kind, "CondensatePan" | "FloatSwitch" | "SumpPit" | "EjectorPit")
            })
        };
        let standing: BTreeSet<&str> = told
            .question
            .seen
            .iter()
            .filter(|(id, seen)| *seen == Seen::Wet && !holds_water(id))
            .filter_map(|(id, _)| room_of(id))
            .collect();
        let mut wet = standing.clone();
        let wet_trouble = WET.contains(&told.answer.trouble);
        if wet_trouble {
            let ids: Vec<&str> = match &told.question.at {
                Spot::Component(id) | Spot::Space(id) => vec![id],
                Spot::Connection(from, to) => vec![from, to],
                Spot::Home => Vec::new(),
            };
            wet.extend(ids.into_iter().find_map(room_of));
        }
        // What was seen dry is dry, unless it was seen wet as well.
        let dry = |room: &str| {
            told.question.seen.iter().any(|(id, seen)| id == room && *seen == Seen::Dry)
        };
        wet.retain(|room| !dry(room) || standing.contains(room));
        Self { wet, standing }
    }

    /// True if nobody may go to the part: it is in water, or every way there leads through rooms where
    /// water was seen standing.
    pub(super) fn forbids(&self, told: &Told<'_>, id: &str) -> bool {
        self.is_around(told, id) || self.bars(told, id)
    }

    /// True if the doors of the home lead to the part's room, but none of the ways keeps out of standing
    /// water. Where one is, one may leave; where water meets power, all of the room counts.
    fn bars(&self, told: &Told<'_>, id: &str) -> bool {
        let start = match (&told.question.from, &told.question.at) {
            (Some(room), _) | (None, Spot::Space(room)) => Some(room.as_str()),
            (None, Spot::Component(id) | Spot::Connection(id, _)) => room_of_part(told, id),
            (None, Spot::Home) => None,
        };
        let (Some(start), Some(target)) = (start, room_of_part(told, id)) else { return false };
        let live = |room: &str| {
            let meets_power = told.answer.trouble == "water-near-power" && self.wet.contains(room);
            room != start && (self.standing.contains(room) || meets_power)
        };
        let reaches = |may_cross: &dyn Fn(&str) -> bool| {
            let mut reached: BTreeSet<&str> = BTreeSet::from([start]);
            loop {
                let next = told.house.doors.iter().find_map(|(one, other)| {
                    let pairs = [(one.as_str(), other.as_str()), (other.as_str(), one.as_str())];
                    let opens = |(from, to): &(&str, &str)| {
                        reached.contains(from) && may_cross(from) && !reached.contains(to)
                    };
                    pairs.into_iter().find(opens).map(|(_, to)| to)
                });
                match next {
                    Some(room) => reached.insert(room),
                    None => return reached.contains(target),
                };
            }
        };
        reaches(&|_| true) && !reaches(&|room| !live(room))
    }

    /// True if the part is in water: in a room where it stands, or something electrical where it is
    /// wet.
    pub(super) fn is_around(&self, told: &Told<'_>, id: &str) -> bool {
        let Some(room) = room_of_part(told, id) else { return false };
        self.standing.contains(room)
            || (self.wet.contains(room) && is_electrical(told.house.part(id).kind))
    }
}

/// The room a part is in; a breaker without one is in its panel's.
pub(super) fn room_of_part<'a>(told: &'a Told<'_>, id: &str) -> Option<&'a str> {
    let part = told.house.part(id);
    if part.room.is_none() && part.kind == "Breaker" {
        let feeds = told.house.lines.iter().filter(|line| line.carries == "Power" && line.to == id);
        return feeds
            .map(|line| told.house.part(&line.from))
            .find(|feed| feed.kind == "Panel")?
            .room
            .as_deref();
    }
    part.room.as_deref()
}

pub(super) fn is_electrical(kind: &str) -> bool {
    matches!(
        kind,
        "ElectricityService"
            | "Generator"
            | "Inverter"
            | "Battery"
            | "ElectricityMeter"
            | "Panel"
            | "JunctionBox"
            | "ServiceDisconnect"
            | "Breaker"
            | "Disconnect"
            | "TransferSwitch"
            | "Switch"
            | "Gfci"
            | "Receptacle"
            | "Light"
            | "Lampholder"
            | "Appliance"
            | "SumpPump"
            | "SmokeAlarm"
            | "MedicalDevice"
    )
}

/// True if a text names a part by its whole name, and that name is no other part's.
pub(super) fn names(told: &Told<'_>, text: &str, id: &str) -> bool {
    let name = &told.house.part(id).name;
    let plain = name.len() > 3
        && name.split_once(' ').is_some_and(|(_, number)| number.parse::<usize>().is_ok());
    plain
        && text
            .match_indices(name.as_str())
            .any(|(at, _)| !text[at + name.len()..].starts_with(|next: char| next.is_ascii_digit()))
}

/// True if a valve usually feeds sprinklers and nothing else that people use.
pub(super) fn controls_sprinklers(told: &Told<'_>, id: &str) -> bool {
    let below = below(told, id, &["ColdWater", "HotWater"]);
    let served = |id: &&&str| is_missed(told.house.part(id).kind);
    let mut kinds = below.iter().filter(served).map(|id| told.house.part(id).kind).peekable();
    told.house.part(id).kind == "IsolatingValve"
        && kinds.peek().is_some()
        && kinds.all(|kind| kind == "SprinklerRiser")
}

/// Ids of what a part usually feeds, in the direction of the lines.
pub(super) fn below<'a>(told: &'a Told<'_>, id: &'a str, media: &[&str]) -> BTreeSet<&'a str> {
    let mut below: BTreeSet<&str> = BTreeSet::from([id]);
    loop {
        let more: BTreeSet<&str> = told
            .house
            .lines
            .iter()
            .filter(|line| media.contains(&line.carries) && below.contains(line.from.as_str()))
            .map(|line| line.to.as_str())
            .filter(|id| !below.contains(id))
            .collect();
        if more.is_empty() {
            below.remove(id);
            return below;
        }
        below.extend(more);
    }
}

/// Ids of what goes off when `close` is shut, beyond what is off already.
pub(super) fn off_with(told: &Told<'_>, close: &[&str]) -> BTreeSet<String> {
    let holds = |id: &str| {
        !told.question.failed.iter().any(|failed| failed == id)
            && told.house.part(id).state != "LeaksBy"
    };
    let shut: BTreeSet<&str> = told
        .house
        .parts
        .iter()
        .filter(|part| can_stand_off(part.kind) && holds(&part.id))
        .filter(|part| {
            let last = told
                .question
                .seen
                .iter()
                .rev()
                .find(|(id, _)| *id == part.id)
                .map(|(_, seen)| *seen);
            match last {
                Some(Seen::Off | Seen::Tripped) => true,
                Some(Seen::On) => false,
                _ => part.normally_shut,
            }
        })
        .map(|part| part.id.as_str())
        .collect();
    let mut after = shut.clone();
    after.extend(close);
    goes_off(told.house, &shut, &after)
}

/// Ids of what the steps shut or switch off.
pub(super) fn worked<'a>(told: &'a Told<'_>) -> Vec<&'a str> {
    let works = |step: &&Step| matches!(step.act, Act::Close | Act::SwitchOff);
    told.answer.steps.iter().filter(works).filter_map(|step| step.component.as_deref()).collect()
}

pub(super) fn emergency(told: &Told<'_>) -> Option<String> {
    let contact = told
        .home
        .contacts
        .iter()
        .find(|contact| contact.role == Some(quarterturn_home::Role::Emergency));
    told.home.emergency_phone.clone().or_else(|| contact.and_then(|contact| contact.phone.clone()))
}
