//! What is worked by hand: the list of it, and the tags that hang on it.

use quarterturn_guidance::{System, fill, how_to_close};
use quarterturn_home::{Component, DeviceState, Kind, Net, OperableBy};
use serde::Serialize;
use serde_json::{Value, json};

use crate::code;
use crate::house::House;
use crate::pictures::Pictures;
use crate::sign::{Sign, key};

/// A device that is worked by hand.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Valve {
    sign: Sign,
    name: String,
    whereabouts: String,
    how: String,
    /// What goes off with it.
    serves: String,
    /// Who may work it, if not anyone; its state, if it is not known to work; its tool; and the like.
    remarks: Vec<String>,
    note: Option<String>,
}

/// The devices of a system.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Group {
    title: String,
    valves: Vec<Valve>,
}

/// A tag.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct Tag {
    valve: Valve,
    /// The drawing of its code.
    picture: Option<String>,
    /// What the code holds, for those who do not see it.
    alt: String,
}

/// The data of the list. `None` if nothing is worked by hand.
pub(crate) fn list(house: &House<'_>) -> Option<Value> {
    let groups = groups(house);
    let words = labels(house);
    (!groups.is_empty()).then(|| json!({ "groups": groups, "words": words }))
}

/// What the template of the list says.
pub(crate) fn labels(house: &House<'_>) -> std::collections::BTreeMap<&'static str, String> {
    house.labels(&["paper-valve-tag", "paper-valve-what", "paper-valve-how", "paper-valve-serves"])
}

/// The data of the tags. `None` if nothing is worked by hand.
pub(crate) fn tags(house: &House<'_>, pictures: &mut Pictures<'_>) -> Option<Value> {
    let emergency = house.numbers().0;
    let tags: Vec<Tag> = by_hand(house)
        .map(|component| {
            let valve = valve(house, component);
            let heading = house.named(component);
            let call = house.words.fill(
                "paper-call-line",
                &[fill("name", &emergency.name), fill("phone", &emergency.phone)],
            );
            // What counts most comes first: a line that no longer fits is left out.
            let mut lines = vec![heading, valve.whereabouts.clone(), valve.how.clone(), call];
            lines.extend(valve.remarks.iter().cloned());
            lines.push(house.words.fill("paper-valve-serves-line", &[fill("list", &valve.serves)]));
            let text = code::lines(&lines);
            let picture = code::drawing(&text).map(|svg| pictures.drawing(svg));
            let alt = house.words.fill("paper-code-alt", &[fill("text", &text)]);
            Tag { valve, picture, alt }
        })
        .collect();
    let words = house.labels(&["paper-tags-hint", "paper-valve-serves"]);
    (!tags.is_empty()).then(|| json!({ "tags": tags, "words": words }))
}

/// The devices by system, each in the order of the file.
pub(crate) fn groups(house: &House<'_>) -> Vec<Group> {
    System::ALL
        .iter()
        .filter_map(|&system| {
            let valves: Vec<Valve> = by_hand(house)
                .filter(|component| System::of(house.home, component, None) == system)
                .map(|component| valve(house, component))
                .collect();
            let title = house.text(key(system));
            (!valves.is_empty()).then_some(Group { title, valves })
        })
        .collect()
}

/// What is there to be worked by hand, but for breakers, which the panel directory has.
fn by_hand<'a>(house: &House<'a>) -> impl Iterator<Item = &'a Component> + use<'a> {
    house.home.components.iter().filter(|component| {
        component.kind == Kind::Cleanout
            || (component.kind != Kind::Breaker
                && Net::ALL.iter().any(|net| component.kind.isolates(*net)))
    })
}

fn valve(house: &House<'_>, component: &Component) -> Valve {
    let off = house.goes_off(component);
    let serves = match (off.is_empty(), component.kind) {
        (_, Kind::Cleanout) => house.text("paper-serves-cleanout"),
        (true, _) if component.normally_shut() => house.text("paper-serves-shut"),
        (true, _) => house.text("paper-serves-nothing"),
        (false, _) => house.few(&off),
    };
    Valve {
        sign: house.sign(component),
        name: component.name.clone(),
        whereabouts: house.whereabouts(component),
        how: how_to_close(component, house.words),
        serves,
        remarks: remarks(house, component),
        note: component.note.clone(),
    }
}

/// What one must know before one takes hold of it.
pub(crate) fn remarks(house: &House<'_>, component: &Component) -> Vec<String> {
    let mut list = Vec::new();
    match component.operable_by {
        OperableBy::Anyone => {}
        OperableBy::Utility => list.push(house.text("paper-by-utility")),
        OperableBy::Licensed => list.push(house.text("paper-by-licensed")),
    }
    match component.state() {
        DeviceState::Works => {}
        DeviceState::Stiff => list.push(house.text("paper-state-stiff")),
        DeviceState::Seized => list.push(house.text("paper-state-seized")),
        DeviceState::LeaksBy => list.push(house.text("paper-state-leaks-by")),
        DeviceState::Unknown => list.push(house.text("paper-state-unknown")),
    }
    if component.normally_shut() {
        list.push(house.text("paper-normally-shut"));
    }
    if let Some(operates) = &component.operates {
        if let Some(tool) = &operates.tool {
            list.push(house.words.fill("with-tool", &[fill("tool", tool)]));
        }
        if let Some(day) = operates.exercised {
            list.push(house.words.fill("paper-exercised", &[fill("day", &day.to_string())]));
        }
    }
    list
}
