//! The handover pack: everything about the home in one document.

use std::collections::BTreeMap;

use quarterturn_guidance::{MapFinding, System, check, count, fill, how_to_close, last_day};
use quarterturn_home::{Component, Kind, Level, Medium, Warranty};
use serde::Serialize;
use serde_json::{Value, json};

use crate::drawing::{Drawing, Room, Sort, drawing};
use crate::house::House;
use crate::pictures::Pictures;
use crate::plan::{Frame, Plan, plan};
use crate::sign::{Sign, key};
use crate::valves::remarks;
use crate::{panels, valves};

/// A map of a level, with the devices of one system or of all.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct LevelMap {
    title: String,
    plan: Plan,
}

/// The devices in a space.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct InSpace {
    title: String,
    devices: Vec<Device>,
}

/// A device with all that is known of it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
struct Device {
    sign: Sign,
    name: String,
    lines: Vec<String>,
    photo: Option<String>,
    alt: String,
}

/// A line of a table: as many texts as it has columns.
type Row = Vec<String>;

/// Width of a sign on a map, halved, in millimetres.
const SIGN_RADIUS: f64 = 2.7;
/// Devices on one map; with more, each system has a map of its own.
const ON_ONE_MAP: usize = 30;
/// White edge of the page, in millimetres.
pub(crate) const MARGIN: f64 = 16.0;

/// The data of the pack.
pub(crate) fn gather(house: &House<'_>, pictures: &mut Pictures<'_>) -> Value {
    let (width, height) = house.order.paper.size_mm();
    // The name of a floor stands on the left of a drawing; its heading and hint above.
    let room = Room { width: width - 2.0 * MARGIN - 26.0, height: height - 2.0 * MARGIN - 42.0 };
    let sorts = [Sort::Water, Sort::Drains, Sort::Power, Sort::Gas];
    let drawings: Vec<Drawing> =
        sorts.into_iter().filter_map(|sort| drawing(house, sort, room)).collect();
    let due: Vec<Row> = house
        .order
        .extras
        .due
        .iter()
        .map(|line| vec![line.due.to_string(), line.text.clone(), line.note.clone()])
        .collect();
    json!({
        "maps": maps(house, pictures),
        "drawings": drawings,
        "spaces": spaces(house, pictures),
        "panels": panels::directories(house),
        "panel_words": panels::labels(house),
        "valves": valves::groups(house),
        "valve_words": valves::labels(house),
        "parties": parties(house),
        "owners": owners(house),
        "warranties": warranties(house),
        "jobs": jobs(house),
        "due": due,
        "move_in": house.order.extras.move_in,
        "documents": documents(house),
        "missing": missing(check(house.home, house.words)),
        "words": house.labels(&[
            "paper-contents",
            "paper-maps",
            "paper-drawings",
            "paper-devices",
            "paper-panels",
            "paper-valves",
            "paper-parties",
            "paper-party",
            "paper-phone",
            "paper-hours",
            "paper-note",
            "paper-owners",
            "paper-owners-hint",
            "paper-owner",
            "paper-boundary",
            "paper-warranties",
            "paper-warranty",
            "paper-given-by",
            "paper-from",
            "paper-until",
            "paper-covers",
            "paper-upkeep",
            "paper-job",
            "paper-how-often",
            "paper-last-done",
            "paper-due",
            "paper-due-day",
            "paper-move-in",
            "paper-documents",
            "paper-document",
            "paper-file",
            "paper-about",
            "paper-missing",
            "paper-missing-hint",
            "paper-missing-none",
            "paper-missing-what",
            "paper-missing-remedy",
            "paper-key",
            "paper-key-tag",
            "paper-key-name",
            "paper-key-where",
            "paper-key-from",
            "paper-none",
        ]),
    })
}

fn maps(house: &House<'_>, pictures: &mut Pictures<'_>) -> Vec<LevelMap> {
    let (width, height) = house.order.paper.size_mm();
    let frame = Frame {
        width: width - 2.0 * MARGIN,
        height: height - 2.0 * MARGIN - 34.0,
        radius: SIGN_RADIUS,
        close: false,
    };
    let mut maps = Vec::new();
    for level in house.levels() {
        let here: Vec<&Component> = house
            .home
            .components
            .iter()
            .filter(|c| c.tag.is_some() && c.at.is_some() && is_on(house, c, level))
            .collect();
        if here.len() <= ON_ONE_MAP {
            let all = plan(house, pictures, level, &here, frame);
            maps.extend(all.map(|plan| LevelMap { title: level.name.clone(), plan }));
            continue;
        }
        for system in System::ALL {
            let part: Vec<&Component> = here
                .iter()
                .copied()
                .filter(|component| System::of(house.home, component, None) == system)
                .collect();
            let title = house.words.fill(
                "paper-map-of",
                &[fill("level", &level.name), fill("system", &house.text(key(system)))],
            );
            let map = plan(house, pictures, level, &part, frame);
            maps.extend(map.map(|plan| LevelMap { title, plan }));
        }
    }
    maps
}

fn is_on(house: &House<'_>, component: &Component, level: &Level) -> bool {
    house.home.level_of(component).is_some_and(|at| at.id == level.id)
}

/// Every device, space by space in the order of the file, and then those whose space is not known.
fn spaces(house: &House<'_>, pictures: &mut Pictures<'_>) -> Vec<InSpace> {
    let mut list = Vec::new();
    for space in &house.home.spaces {
        let level = space.level.as_deref().and_then(|id| house.home.level(id));
        let title = match level {
            Some(level) if !space.outdoors => house
                .words
                .fill("paper-place", &[fill("space", &space.name), fill("level", &level.name)]),
            _ => space.name.clone(),
        };
        let inside = |c: &&Component| c.space.as_deref() == Some(space.id.as_str());
        push(house, pictures, &mut list, title, &inside);
    }
    let nowhere = |c: &&Component| c.space.as_deref().and_then(|id| house.home.space(id)).is_none();
    push(house, pictures, &mut list, house.text("paper-place-unknown"), &nowhere);
    list
}

fn push(
    house: &House<'_>,
    pictures: &mut Pictures<'_>,
    list: &mut Vec<InSpace>,
    title: String,
    inside: &dyn Fn(&&Component) -> bool,
) {
    let here = house.home.components.iter().filter(inside);
    let devices: Vec<Device> = here.map(|component| device(house, pictures, component)).collect();
    if !devices.is_empty() {
        list.push(InSpace { title, devices });
    }
}

fn device(house: &House<'_>, pictures: &mut Pictures<'_>, component: &Component) -> Device {
    let words = house.words;
    let worked = component.kind == Kind::Cleanout
        || component.operates.is_some()
        || quarterturn_home::Net::ALL.iter().any(|net| component.kind.isolates(*net));
    let mut lines = Vec::new();
    if worked {
        lines.push(how_to_close(component, words));
        lines.extend(remarks(house, component));
    }
    let circuit = (&component.panel, &component.circuit);
    if let (Some(panel), Some(circuit)) = circuit {
        let panel = house.home.component(panel).map_or(panel.as_str(), |panel| &panel.name);
        lines.push(
            words.fill("paper-circuit-of", &[fill("panel", panel), fill("circuit", circuit)]),
        );
    }
    let amounts = [
        ("paper-rated", "amperes", component.rating_a),
        ("paper-draws", "watts", component.watts),
        ("paper-holds", "litres", component.volume_l),
    ];
    for (key, place, amount) in amounts {
        if let Some(amount) = amount {
            lines.push(words.fill(key, &[count(place, amount)]));
        }
    }
    lines.extend(
        component.lamp.as_ref().map(|lamp| words.fill("paper-lamp", &[fill("lamp", lamp)])),
    );
    lines.extend(component.note.clone());
    let photo = component.photo.as_deref().and_then(|path| pictures.photo(path));
    Device {
        sign: house.sign(component),
        name: component.name.clone(),
        lines,
        photo: photo.map(|photo| photo.name),
        alt: words.fill("paper-photo-alt", &[fill("name", &house.named(component))]),
    }
}

fn parties(house: &House<'_>) -> Vec<Row> {
    let row = |contact: &quarterturn_home::Contact| {
        vec![
            contact.name.clone(),
            contact.phone.clone().unwrap_or_else(|| house.text("no-phone")),
            contact.hours.clone().unwrap_or_default(),
            contact.note.clone().unwrap_or_default(),
        ]
    };
    house.home.contacts.iter().map(row).collect()
}

/// What someone else owns, and where one party's side ends.
fn owners(house: &House<'_>) -> Vec<Row> {
    let theirs = house.home.components.iter().filter(|c| c.owner.is_some() || c.boundary);
    theirs
        .map(|component| {
            let owner = component.owner.as_deref().and_then(|id| house.home.contact(id));
            vec![
                house.named(component),
                owner.map(|owner| owner.name.clone()).unwrap_or_default(),
                if component.boundary { house.text("paper-boundary-here") } else { String::new() },
            ]
        })
        .collect()
}

fn warranties(house: &House<'_>) -> Vec<Row> {
    house
        .home
        .warranties
        .iter()
        .map(|warranty| {
            let giver = warranty.contact.as_deref().and_then(|id| house.home.contact(id));
            vec![
                warranty.name.clone(),
                giver.map(|giver| giver.name.clone()).unwrap_or_default(),
                warranty.from.to_string(),
                last_day(warranty).map(|day| day.to_string()).unwrap_or_default(),
                covers(house, warranty),
            ]
        })
        .collect()
}

fn covers(house: &House<'_>, warranty: &Warranty) -> String {
    let named = warranty.covers.iter().filter_map(|id| house.home.component(id));
    let mut list: Vec<String> = named.map(|component| house.named(component)).collect();
    list.extend(warranty.media.iter().map(|medium| house.text(medium_key(*medium))));
    house.words.list(&list)
}

fn medium_key(medium: Medium) -> &'static str {
    match medium {
        Medium::ColdWater => "paper-medium-cold",
        Medium::HotWater => "paper-medium-hot",
        Medium::Waste => "paper-medium-waste",
        Medium::Vent => "paper-medium-vent",
        Medium::Condensate => "paper-medium-condensate",
        Medium::Power => "paper-medium-power",
        Medium::Gas => "paper-medium-gas",
        Medium::Signal => "paper-medium-signal",
    }
}

fn jobs(house: &House<'_>) -> Vec<Row> {
    house
        .home
        .jobs
        .iter()
        .map(|job| {
            let on = job.components.iter().filter_map(|id| house.home.component(id));
            let on: Vec<String> = on.map(|component| house.named(component)).collect();
            let often = job.every_months.map(|months| {
                house.words.fill("paper-every-months", &[count("months", f64::from(months))])
            });
            vec![
                job.name.clone(),
                often.unwrap_or_default(),
                job.last_done.map(|day| day.to_string()).unwrap_or_default(),
                house.words.list(&on),
                job.note.clone().unwrap_or_default(),
            ]
        })
        .collect()
}

fn documents(house: &House<'_>) -> Vec<Row> {
    let row = |document: &quarterturn_home::Document| {
        let about = document.components.iter().filter_map(|id| house.home.component(id));
        let about: Vec<String> = about.map(|component| house.named(component)).collect();
        vec![
            document.name.clone(),
            document.file.clone().unwrap_or_default(),
            house.words.list(&about),
        ]
    };
    house.home.documents.iter().map(row).collect()
}

/// What is missing, with what is told more than once told once.
fn missing(findings: Vec<MapFinding>) -> Vec<Row> {
    let mut remedies: BTreeMap<String, usize> = BTreeMap::new();
    let mut rows: Vec<Row> = Vec::new();
    for finding in findings {
        let key = format!("{}\n{}", finding.text, finding.remedy);
        if remedies.insert(key, rows.len()).is_none() {
            rows.push(vec![finding.text, finding.remedy]);
        }
    }
    rows
}
