//! What the map lacks or gets wrong, in words.

use quarterturn_home::{Home, Net};
use quarterturn_network::{Finding, Places};
use serde::Serialize;

use crate::catalogue::{Catalogue, fill};

/// Something that the map of a home lacks or gets wrong.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct MapFinding {
    /// What sort of finding it is, such as `no-isolation`.
    pub finding: &'static str,
    /// Id of the component, space or contact it is about.
    pub id: String,
    /// What is wrong.
    pub text: String,
    /// What to do about it.
    pub remedy: String,
}

/// Everything the map of a home lacks or gets wrong, in a stated order.
#[must_use]
pub fn check(home: &Home, catalogue: &Catalogue) -> Vec<MapFinding> {
    let places = Places::of_home(home);
    let mut list: Vec<MapFinding> = quarterturn_network::check(home, &places)
        .into_iter()
        .map(|finding| {
            let (sort, net, place) = sort_of(finding);
            let component = &home.components[place];
            let fills = [
                fill("name", &component.name),
                fill("net", net.map_or("none", net_word)),
                fill("id", &component.id),
            ];
            MapFinding {
                finding: sort,
                id: component.id.clone(),
                text: catalogue.fill(&format!("check-{sort}"), &fills),
                remedy: catalogue.fill(&format!("check-{sort}-remedy"), &fills),
            }
        })
        .collect();
    unused(home, catalogue, &mut list);
    list
}

fn sort_of(finding: Finding) -> (&'static str, Option<Net>, usize) {
    match finding {
        Finding::NoIsolation(net, place) => ("no-isolation", Some(net), place),
        Finding::OneLineOfDefence(net, place) => ("one-line-of-defence", Some(net), place),
        Finding::Unreachable(net, place) => ("unreachable", Some(net), place),
        Finding::IsolatesNothing(net, place) => ("isolates-nothing", Some(net), place),
        Finding::DrainWithoutCleanout(place) => ("drain-without-cleanout", None, place),
        Finding::DrainWithoutOutfall(place) => ("drain-without-outfall", None, place),
        Finding::NoBreaker(place) => ("no-breaker", None, place),
        Finding::OneWayDeadEnd(net, place) => ("one-way-dead-end", Some(net), place),
        Finding::NotConnected(place) => ("not-connected", None, place),
    }
}

/// The word by which a text chooses how to name a net.
fn net_word(net: Net) -> &'static str {
    match net {
        Net::Water => "water",
        Net::Waste => "waste",
        Net::Vent => "vent",
        Net::Condensate => "condensate",
        Net::Power => "power",
        Net::Gas => "gas",
        Net::Signal => "signal",
    }
}

/// Ids that nothing refers to, and numbers that are missing.
fn unused(home: &Home, catalogue: &Catalogue, list: &mut Vec<MapFinding>) {
    let mut add = |sort: &'static str, id: &str, name: &str| {
        let fills = [fill("name", name), fill("id", id)];
        list.push(MapFinding {
            finding: sort,
            id: id.to_owned(),
            text: catalogue.fill(&format!("check-{sort}"), &fills),
            remedy: catalogue.fill(&format!("check-{sort}-remedy"), &fills),
        });
    };
    for level in &home.levels {
        if !home.spaces.iter().any(|s| s.level.as_deref() == Some(level.id.as_str())) {
            add("level-unused", &level.id, &level.name);
        }
    }
    for space in &home.spaces {
        let used = home.components.iter().any(|c| c.space.as_deref() == Some(space.id.as_str()))
            || home.usual_space.as_deref() == Some(space.id.as_str())
            // An empty room is still drawn on the plan.
            || !space.outline.is_empty();
        if !used {
            add("space-unused", &space.id, &space.name);
        }
    }
    for contact in &home.contacts {
        let id = Some(contact.id.as_str());
        let used = contact.role.is_some()
            || home.components.iter().any(|c| c.owner.as_deref() == id)
            || home.warranties.iter().any(|w| w.contact.as_deref() == id);
        if !used {
            add("contact-unused", &contact.id, &contact.name);
        }
        if contact.phone.is_none() {
            add("contact-without-phone", &contact.id, &contact.name);
        }
    }
    if home.emergency_phone.is_none() {
        add("no-emergency-phone", "emergency_phone", &home.name);
    }
}
