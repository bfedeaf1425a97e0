//! Typical sets: a basin with its stops, hoses and trap in one go, from data.
//!
//! What a set holds stands in `assets/mapping/sets.ron`. Its heights are common practice, and the
//! placed set says so: whoever stands there corrects them.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use quarterturn_guidance::{Catalogue, count, fill};
use quarterturn_home::{
    Closes, Component, Connection, Edit, Handle, Home, Kind, Medium, OperableBy, Operates, Space,
};
use serde::Deserialize;

use crate::propose::{Proposal, proposals_for};
use crate::said::{Said, as_number};
use crate::tags::Tags;
use crate::words::folded;

/// Sets and rooms, as their file tells them.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Data {
    pub(crate) sets: Vec<Set>,
    pub(crate) rooms: Vec<Room>,
}

/// What is usually found together.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Set {
    pub(crate) id: String,
    /// Role of the part that the set is known by.
    #[serde(default)]
    main: String,
    #[serde(default)]
    count: Option<Count>,
    parts: Vec<Part>,
    lines: Vec<(String, String, Medium)>,
}

/// How many of a set's numbered parts.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
struct Count {
    usual: usize,
    most: usize,
}

/// A part of a set.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Part {
    role: String,
    #[serde(default)]
    name: Option<String>,
    kind: Kind,
    #[serde(default)]
    dx: f64,
    #[serde(default)]
    dy: f64,
    z: f64,
    #[serde(default)]
    handle: Option<Handle>,
    #[serde(default)]
    by: OperableBy,
    #[serde(default)]
    boundary: bool,
    /// It stands outside the house, wherever the rest is.
    #[serde(default)]
    outdoors: bool,
    #[serde(default)]
    poles: Option<u32>,
    #[serde(default)]
    each: bool,
    /// The water in it, for the words of its name.
    #[serde(default)]
    water: Option<Medium>,
}

/// What a room usually has.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Room {
    pub(crate) id: String,
    pub(crate) always: Vec<String>,
    pub(crate) often: Vec<String>,
}

/// Read once. A file that cannot be read gives no sets; a test reads it strictly.
pub(crate) static DATA: LazyLock<Data> = LazyLock::new(|| {
    ron::from_str(include_str!("../../../assets/mapping/sets.ron"))
        .unwrap_or(Data { sets: Vec::new(), rooms: Vec::new() })
});

/// A set that can be placed.
#[derive(Debug, Clone, PartialEq)]
pub struct SetInfo {
    /// Its id.
    pub id: &'static str,
    /// Its name.
    pub name: Said,
    /// The kind that it is known by.
    pub kind: Kind,
    /// If it has numbered parts: how many there usually are, and at most.
    pub count: Option<(usize, usize)>,
}

/// Which set, and where.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Wish {
    /// Id of the set.
    pub set: String,
    /// Id of the space.
    pub space: Option<String>,
    /// Where it was clicked on the level, in metres.
    pub at: Option<(f64, f64)>,
    /// What it is called; `None` for the set's name and the room's.
    pub label: Option<String>,
    /// How many of its numbered parts; `None` for as many as usual.
    pub count: Option<usize>,
}

/// A set, ready to be put on the map.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed {
    /// Its components, the one that it is known by first.
    pub components: Vec<Component>,
    /// Its lines inside.
    pub connections: Vec<Connection>,
    /// What probably feeds and drains it.
    pub proposals: Vec<Proposal>,
    /// That heights and places are common practice, to be corrected on the spot.
    pub practice: Said,
}

/// Why a set cannot be placed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CannotPlace {
    /// There is no set with this id.
    NoSet(String),
    /// There is no space with this id.
    NoSpace(String),
    /// So many numbered parts it cannot have.
    Count {
        /// How many were wished for.
        wished: usize,
        /// How many it can have.
        most: usize,
    },
}

impl CannotPlace {
    /// What is wrong and what would be right.
    #[must_use]
    pub fn said(&self) -> Said {
        match self {
            Self::NoSet(id) => Said::new("sets-no-set").with("id", id),
            Self::NoSpace(id) => Said::new("sets-no-space").with("id", id),
            Self::Count { wished, most } => {
                Said::new("sets-count").count("wished", *wished).count("most", *most)
            }
        }
    }
}

impl Placed {
    /// The edits that put it on the map.
    #[must_use]
    pub fn edits(&self) -> Vec<Edit> {
        let components = self.components.iter().cloned().map(Box::new).map(Edit::PutComponent);
        let lines = self.connections.iter().cloned().map(Box::new).map(Edit::Connect);
        components.chain(lines).collect()
    }
}

/// Every set, in the order of its file.
#[must_use]
pub fn sets() -> Vec<SetInfo> {
    DATA.sets.iter().map(Set::info).collect()
}

/// The set that a kind is known by, if there is one; the first in the order of the file.
#[must_use]
pub fn set_of(kind: Kind) -> Option<SetInfo> {
    sets().into_iter().find(|set| set.kind == kind)
}

/// A set at a place, with ids, tags and names that are free in this home.
///
/// The same home and wish give the same set, so that it can be shown before it is placed.
///
/// # Errors
/// If there is no such set or space, or so many parts it cannot have.
pub fn place(home: &Home, wish: &Wish, words: &Catalogue) -> Result<Placed, CannotPlace> {
    let set = DATA
        .sets
        .iter()
        .find(|set| set.id == wish.set)
        .ok_or_else(|| CannotPlace::NoSet(wish.set.clone()))?;
    let space = match &wish.space {
        Some(id) => Some(home.space(id).ok_or_else(|| CannotPlace::NoSpace(id.clone()))?),
        None => None,
    };
    let usual = set.count.map_or((0, 0), |count| (count.usual, count.most));
    let many = wish.count.unwrap_or(usual.0);
    if set.count.is_some() && (many == 0 || many > usual.1) {
        return Err(CannotPlace::Count { wished: many, most: usual.1 });
    }
    // A set may be called by all that is in it, the thing itself by less.
    let thing = format!("thing-{}", set.id);
    let own_name = if words.has(&thing) { words.text(&thing) } else { words.text(set.name_key()) };
    let of = match (&wish.label, space) {
        (Some(label), _) if !label.trim().is_empty() => label.trim().to_owned(),
        // The kitchen's kitchen sink is the kitchen sink.
        (_, Some(space)) if folded(&own_name).contains(&folded(&space.name)) => own_name,
        (_, Some(space)) => {
            words.fill("set-in-space", &[fill("set", &own_name), fill("space", &space.name)])
        }
        _ => own_name,
    };
    let label = wish.label.as_deref().map(str::trim).filter(|label| !label.is_empty());
    let place = label.or(space.map(|space| space.name.as_str())).unwrap_or(&of).to_owned();
    let stem = stem(home, set, wish, many);
    let mut tags = Tags::of(home);
    let mut components = Vec::new();
    let mut parts: Vec<(&Part, usize)> = Vec::new();
    let main = set.parts.iter().filter(|p| p.role == set.main);
    for part in main.chain(set.parts.iter().filter(|p| p.role != set.main)) {
        let numbers = if part.each { 1..=many } else { 0..=0 };
        parts.extend(numbers.map(|number| (part, number)));
    }
    for (part, number) in parts {
        let name = match &part.name {
            None => of.clone(),
            Some(key) => words.fill(
                &format!("part-{key}"),
                &[
                    fill("of", &of),
                    fill("place", &place),
                    count("number", as_number(number)),
                    fill("water", part.water_word()),
                ],
            ),
        };
        let mut component = Component::new(&id(&stem, part, number), part.kind, &name);
        component.tag = tags.next(part.kind);
        let here = if part.outdoors { outside(home, space) } else { Some(space) };
        if let Some(here) = here {
            component.space = here.map(|space| space.id.clone());
            component.at = wish.at.map(|(x, y)| {
                let shift = as_number(number.saturating_sub(1))
                    * if part.kind == Kind::Breaker { 0.0 } else { 0.4 };
                let (x, y) = inside(here, (x + part.dx + shift, y + part.dy));
                (x, y, part.z)
            });
        }
        component.operates = part.handle.map(|handle| Operates {
            handle: Some(handle),
            closes: part.closes(),
            ..Operates::default()
        });
        component.operable_by = part.by;
        component.boundary = part.boundary;
        component.poles = part.poles;
        if part.kind == Kind::Breaker && part.each {
            component.circuit = Some(number.to_string());
            component.panel = Some(stem.clone());
        }
        components.push(component);
    }
    let connections = set.connections(&stem, many);
    let mut with = home.clone();
    with.components.extend(components.iter().cloned());
    with.connections.extend(connections.iter().cloned());
    let proposals = components.iter().flat_map(|c| proposals_for(&with, &c.id)).collect();
    Ok(Placed { components, connections, proposals, practice: Said::new("sets-practice") })
}

impl Set {
    fn info(&'static self) -> SetInfo {
        let kind = self.parts.iter().find(|p| p.role == self.main).map_or(Kind::Other, |p| p.kind);
        SetInfo {
            id: &self.id,
            name: Said::new(self.name_key()),
            kind,
            count: self.count.map(|count| (count.usual, count.most)),
        }
    }

    fn name_key(&self) -> &'static str {
        NAMES.iter().find(|(id, _)| *id == self.id).map_or("set-unknown", |(_, key)| key)
    }

    fn connections(&self, stem: &str, many: usize) -> Vec<Connection> {
        let part = |role: &str| self.parts.iter().find(|p| p.role == role);
        let mut list = Vec::new();
        for (from, to, carries) in &self.lines {
            let (Some(from), Some(to)) = (part(from), part(to)) else { continue };
            let numbers = if from.each || to.each { 1..=many } else { 0..=0 };
            for number in numbers {
                list.push(Connection::new(
                    &id(stem, from, number),
                    &id(stem, to, number),
                    *carries,
                ));
            }
        }
        list
    }
}

impl Part {
    fn water_word(&self) -> &'static str {
        match self.water {
            Some(Medium::HotWater) => "hot",
            Some(Medium::ColdWater) => "cold",
            _ => "none",
        }
    }

    /// How such a handle usually closes. Common practice: stops of today turn a quarter.
    fn closes(&self) -> Option<Closes> {
        match self.handle? {
            Handle::Toggle => Some(Closes::ToOff),
            Handle::PullOut => Some(Closes::Pull),
            Handle::Cap => Some(Closes::Unscrew),
            Handle::Button => Some(Closes::Push),
            Handle::Lever | Handle::Key => Some(Closes::QuarterTurn),
            // A knob may turn a quarter or many times: whoever stands there tells.
            _ => None,
        }
    }
}

/// The id of a part; a numbered part ends in its number.
fn id(stem: &str, part: &Part, number: usize) -> String {
    match (part.role.as_str(), part.each) {
        ("", _) => stem.to_owned(),
        (role, false) => format!("{stem}-{role}"),
        (role, true) => format!("{stem}-{role}-{number}"),
    }
}

/// The beginning of all ids of a set, so that none of them is taken.
fn stem(home: &Home, set: &Set, wish: &Wish, many: usize) -> String {
    let taken: BTreeSet<&str> = home
        .components
        .iter()
        .map(|c| c.id.as_str())
        .chain(home.spaces.iter().map(|s| s.id.as_str()))
        .chain(home.connections.iter().filter_map(|c| c.id.as_deref()))
        .collect();
    let label = wish.label.as_deref().map(slug).filter(|slug| !slug.is_empty());
    let base = label.unwrap_or_else(|| match &wish.space {
        // The kitchen's kitchen sink is the kitchen sink.
        Some(space) if !set.id.starts_with(&format!("{}-", slug(space))) => {
            format!("{}-{}", slug(space), set.id)
        }
        _ => set.id.clone(),
    });
    let free = |stem: &str| {
        set.parts.iter().all(|part| {
            let numbers = if part.each { 1..=many } else { 0..=0 };
            numbers.map(|n| id(stem, part, n)).all(|id| !taken.contains(id.as_str()))
        })
    };
    (1_u32..)
        .map(|n| if n == 1 { base.clone() } else { format!("{base}-{n}") })
        .find(|stem| free(stem))
        .unwrap_or(base)
}

/// A text as an id: small letters, digits, hyphens.
pub(crate) fn slug(text: &str) -> String {
    let folded = folded(text);
    let mut out = String::new();
    for letter in folded.chars() {
        if letter.is_ascii_alphanumeric() {
            out.push(letter);
        } else if !out.is_empty() && !out.ends_with('-') {
            out.push('-');
        }
        if out.len() >= 48 {
            break;
        }
    }
    out.trim_end_matches('-').to_owned()
}

/// Where what stands outside the house is, if the rest of its set is in `space`: there, if that is
/// outdoors or unknown; else outdoors on the same level. `None` if the map does not tell: then its place is
/// to be asked for, for a curb stop in the utility room would be worse than none.
fn outside<'h>(home: &'h Home, space: Option<&'h Space>) -> Option<Option<&'h Space>> {
    match space {
        Some(room) if !room.outdoors => {
            home.spaces.iter().find(|other| other.outdoors && other.level == room.level).map(Some)
        }
        _ => Some(space),
    }
}

/// A point, moved into the box round a space if it has left it.
fn inside(space: Option<&Space>, (x, y): (f64, f64)) -> (f64, f64) {
    let round = |v: f64| (v * 100.0).round() / 100.0;
    let Some(space) = space.filter(|s| s.outline.len() > 2) else { return (round(x), round(y)) };
    let bounds = |of: &dyn Fn(&(f64, f64)) -> f64| {
        space
            .outline
            .iter()
            .map(of)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| (low.min(v), high.max(v)))
    };
    let ((left, right), (top, bottom)) = (bounds(&|p| p.0), bounds(&|p| p.1));
    (round(x.max(left).min(right)), round(y.max(top).min(bottom)))
}

/// Keys of the names of the sets.
const NAMES: &[(&str, &str)] = &[
    ("basin", "set-basin"),
    ("kitchen-sink", "set-kitchen-sink"),
    ("utility-sink", "set-utility-sink"),
    ("toilet", "set-toilet"),
    ("shower", "set-shower"),
    ("bath", "set-bath"),
    ("washer-box", "set-washer-box"),
    ("dishwasher", "set-dishwasher"),
    ("ice-maker", "set-ice-maker"),
    ("water-heater", "set-water-heater"),
    ("water-service", "set-water-service"),
    ("house-drain", "set-house-drain"),
    ("stack", "set-stack"),
    ("floor-drain", "set-floor-drain"),
    ("softener", "set-softener"),
    ("hose-bibb", "set-hose-bibb"),
    ("panel", "set-panel"),
    ("sub-panel", "set-sub-panel"),
    ("gfci", "set-gfci"),
    ("outlets", "set-outlets"),
    ("light", "set-light"),
    ("smoke-alarm", "set-smoke-alarm"),
    ("sump-pit", "set-sump-pit"),
    ("air-handler", "set-air-handler"),
    ("gas-meter", "set-gas-meter"),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lines::may_connect;
    use quarterturn_home::{History, open};

    fn example() -> Home {
        open("home.ron", include_str!("../../../examples/two-storey/home.ron")).home.unwrap()
    }

    fn wish(set: &str, space: &str, count: Option<usize>) -> Wish {
        Wish {
            set: set.to_owned(),
            space: Some(space.to_owned()),
            at: Some((2.0, 2.0)),
            label: None,
            count,
        }
    }

    #[test]
    fn the_file_reads_and_every_set_and_part_has_words_in_every_language() {
        let data: Data = ron::from_str(include_str!("../../../assets/mapping/sets.ron")).unwrap();
        let ids: Vec<&str> = data.sets.iter().map(|s| s.id.as_str()).collect();
        assert_eq!(ids, NAMES.iter().map(|(id, _)| *id).collect::<Vec<_>>());
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for set in &data.sets {
                assert!(words.has(set.name_key()), "{} {}", language.tag, set.id);
                assert!(set.parts.iter().any(|p| p.role == set.main), "{}", set.id);
                for name in set.parts.iter().filter_map(|p| p.name.as_ref()) {
                    assert!(words.has(&format!("part-{name}")), "{} {name}", language.tag);
                }
            }
        }
    }

    #[test]
    fn every_set_goes_onto_an_empty_and_a_full_map_and_may_be_drawn_line_by_line() {
        for home in [Home::default(), example()] {
            let space = home.spaces.first().map(|s| s.id.clone());
            for set in sets() {
                let wish = Wish { space: space.clone(), ..wish(set.id, "", None) };
                let placed = place(&home, &wish, &Catalogue::english()).unwrap();
                assert_eq!(placed.components[0].kind, set.kind, "{}", set.id);
                let mut drawn = home.clone();
                drawn.components.extend(placed.components.clone());
                for line in &placed.connections {
                    let refusal = may_connect(&drawn, &line.from, &line.to, line.carries).err();
                    assert_eq!(refusal, None, "{}: {}", set.id, line.spot());
                    drawn.connections.push(line.clone());
                }
                let mut history = History::new(home.clone());
                for edit in placed.edits() {
                    history.apply(edit).unwrap();
                }
                assert_eq!(history.home().components.len(), drawn.components.len(), "{}", set.id);
                // What it wrote reads back without a complaint about an id or a connection.
                let text =
                    quarterturn_home::save(history.home(), &quarterturn_home::Kept::default());
                let problems = open("home.ron", &text).problems;
                let serious: Vec<_> = problems
                    .iter()
                    .filter(|p| {
                        p.severity == quarterturn_home::Severity::Error
                            && p.key != "format-unreadable"
                    })
                    .collect();
                assert!(serious.is_empty(), "{}: {serious:?}", set.id);
                let inside: BTreeSet<&str> =
                    placed.components.iter().map(|c| c.id.as_str()).collect();
                for proposal in &placed.proposals {
                    assert!(inside.contains(proposal.of.as_str()));
                }
            }
        }
    }

    #[test]
    fn ids_and_tags_are_free_and_the_same_twice() {
        let home = example();
        let words = Catalogue::english();
        let first = place(&home, &wish("basin", "half-bath", None), &words).unwrap();
        assert_eq!(first, place(&home, &wish("basin", "half-bath", None), &words).unwrap());
        // The example has a half-bath-basin already.
        assert_eq!(first.components[0].id, "half-bath-basin-2");
        assert_eq!(first.components[1].id, "half-bath-basin-2-cold-stop");
        let most = |letter: char| {
            home.components
                .iter()
                .filter_map(|c| c.tag.as_deref()?.strip_prefix(letter)?.parse::<u32>().ok())
                .max()
                .unwrap()
        };
        assert_eq!(first.components[0].tag, Some(format!("W{}", most('W') + 1)));
        assert_eq!(first.components[1].tag, Some(format!("W{}", most('W') + 2)));
        let labelled =
            Wish { label: Some("Ba\u{f1}o 2".to_owned()), ..wish("toilet", "half-bath", None) };
        let spanish = place(&home, &labelled, &Catalogue::in_language("es")).unwrap();
        assert_eq!(spanish.components[0].id, "bano-2");
        assert!(
            spanish.components[1].name.contains("Ba\u{f1}o 2"),
            "{}",
            spanish.components[1].name
        );
    }

    #[test]
    fn a_panel_has_as_many_breakers_as_wished_for_within_reason() {
        let home = example();
        let words = Catalogue::english();
        let panel = place(&home, &wish("panel", "garage", Some(30)), &words).unwrap();
        let circuits: Vec<&str> =
            panel.components.iter().filter_map(|c| c.circuit.as_deref()).collect();
        assert_eq!(circuits.len(), 30);
        assert_eq!((circuits[0], circuits[29]), ("1", "30"));
        let many = place(&home, &wish("panel", "garage", Some(500)), &words);
        assert_eq!(many, Err(CannotPlace::Count { wished: 500, most: 84 }));
        let none = place(&home, &wish("panel", "garage", Some(0)), &words).unwrap_err();
        assert!(none.said().text(&words).contains("84"));
        let nowhere = place(&home, &wish("basin", "nowhere", None), &words).unwrap_err();
        assert_eq!(nowhere, CannotPlace::NoSpace("nowhere".to_owned()));
    }

    #[test]
    fn a_basin_in_the_example_finds_its_lines() {
        let home = example();
        let placed =
            place(&home, &wish("basin", "main-bath", None), &Catalogue::english()).unwrap();
        let found: Vec<&str> = placed.proposals.iter().map(|p| p.line.from.as_str()).collect();
        assert!(found.contains(&"cold-upper") && found.contains(&"hot-upper"), "{found:?}");
        let drains = placed.proposals.iter().find(|p| p.line.carries == Medium::Waste).unwrap();
        assert_eq!(drains.line.to, "main-bath-branch");
    }
}
