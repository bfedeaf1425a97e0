//! What is still missing: the next useful things to record, most protective first.
//!
//! How much each would help is found by trying it: the map is taken as if it were recorded, and the
//! spots that have an answer then are counted again. What counts is spots with an answer, not fields.

use std::collections::BTreeMap;

use quarterturn_guidance::{Catalogue, Spot, Trouble};
use quarterturn_home::{
    Component, Connection, DeviceState, Home, Kind, Medium, Net, OperableBy, Role,
};

use crate::known::{Cause, Known, known};
use crate::order::Lack;
use crate::propose::{Proposal, accept_all, proposals_for};
use crate::said::Said;
use crate::sets::{Wish, place};

/// How far the map has come, and what would help next.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Missing {
    /// Spots that count.
    pub spots: usize,
    /// Spots with an answer of their own.
    pub answered: usize,
    /// What to record next, most protective first.
    pub list: Vec<Item>,
}

/// Something to record.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// What is missing, in words.
    pub said: Said,
    /// Where it is put right.
    pub fix: Fix,
    /// The spots that would have an answer then, or are better served.
    pub protects: Vec<(Trouble, Spot)>,
    /// How much it would help, against others. It ranks, and has no unit.
    pub help: f64,
}

/// Where something missing is put right.
#[derive(Debug, Clone, PartialEq)]
pub enum Fix {
    /// Draw the rooms.
    DrawRooms,
    /// Place a typical set, in this space if one is told.
    PlaceSet {
        /// Id of the set.
        set: &'static str,
        /// Id of the space.
        space: Option<String>,
    },
    /// Find and pin the shutoff that stops this component's water (or gas).
    AddShutoff {
        /// Id of the component.
        before: String,
    },
    /// Find and pin the main shutoff of the house.
    AddMain,
    /// Pin a cleanout on the house drain.
    AddCleanout,
    /// Draw what feeds or drains a component.
    Connect {
        /// Id of the component.
        id: String,
        /// What it lacks.
        lack: Lack,
        /// What the line carries.
        carries: Medium,
        /// The likely line, if there is one.
        proposal: Option<Box<Proposal>>,
    },
    /// Find the breakers of these, walk by walk.
    FindBreakers {
        /// Ids of the things.
        things: Vec<String>,
    },
    /// Press the test buttons and see what goes dead.
    FindGfcis,
    /// Try a device once and write down how it turned out.
    Try {
        /// Id of the device.
        id: String,
    },
    /// Put a device into its room.
    PutInRoom {
        /// Id of the device.
        id: String,
    },
    /// Fill in the emergency number.
    EmergencyPhone,
    /// Add a contact with a number.
    AddContact {
        /// What they are called for.
        role: Role,
    },
}

/// Things that are tried out for their help; more would not be read, and takes time.
const MOST_TRIED: usize = 20;
/// Things in the list.
const MOST_TOLD: usize = 30;

impl Missing {
    /// Percent of spots with an answer, 100 only if all have one.
    #[must_use]
    pub fn percent(&self) -> usize {
        (self.answered * 100).checked_div(self.spots).unwrap_or(0)
    }

    /// The one line above the list.
    #[must_use]
    pub fn said(&self) -> Said {
        Said::new("missing-percent")
            .count("percent", self.percent())
            .count("answered", self.answered)
            .count("spots", self.spots)
    }
}

/// How far the map has come and what is missing next.
///
/// Time: (components + connections) × things that are tried, at most twenty.
#[must_use]
pub fn missing(home: &Home) -> Missing {
    let now = known(home);
    let answered = now.iter().filter(|k| k.lacks.is_none()).count();
    let mut groups: Vec<Item> = Vec::new();
    let mut by_cause: BTreeMap<Cause, Vec<&Known>> = BTreeMap::new();
    for spot in &now {
        if let Some(cause) = &spot.lacks {
            by_cause.entry(gathered(cause)).or_default().push(spot);
        }
    }
    for (cause, spots) in by_cause {
        let Some((fix, said)) = fix(home, &cause, &spots) else { continue };
        let weight = spots.iter().map(|spot| spot.weight).sum();
        let at = spots.iter().map(|spot| (spot.trouble, spot.at.clone())).collect();
        groups.push(Item { said, fix, protects: at, help: weight });
    }
    groups.sort_by(|a, b| b.help.total_cmp(&a.help));
    let words = Catalogue::english();
    let mut list: Vec<Item> = groups
        .into_iter()
        .enumerate()
        .map(|(rank, item)| {
            let then = if rank < MOST_TRIED { tried(home, &item.fix, &words) } else { None };
            let Some(then) = then else {
                // What cannot be tried is judged by what hangs on it, at half.
                return Item { help: item.help / 2.0, ..item };
            };
            let gained = gained(&now, &known(&then));
            if gained.is_empty() {
                // It is one step of several.
                return Item { help: item.help / 4.0, ..item };
            }
            let help = gained.iter().map(|spot| spot.weight).sum::<f64>();
            let protects = gained.iter().map(|spot| (spot.trouble, spot.at.clone())).collect();
            Item { protects, help, ..item }
        })
        .collect();
    list.extend(beside_the_nets(home));
    list.sort_by(|a, b| b.help.total_cmp(&a.help));
    list.truncate(MOST_TOLD);
    Missing { spots: now.len(), answered, list }
}

/// Causes that are put right in one go are one.
fn gathered(cause: &Cause) -> Cause {
    match cause {
        // One guided search finds them all.
        Cause::NoBreaker(_) => Cause::NoBreaker(String::new()),
        other => other.clone(),
    }
}

/// Where a cause is put right, and its words.
fn fix(home: &Home, cause: &Cause, spots: &[&Known]) -> Option<(Fix, Said)> {
    let name = |id: &str| home.component(id).map_or_else(|| id.to_owned(), |c| c.name.clone());
    let set = |set, key| (Fix::PlaceSet { set, space: None }, Said::new(key));
    let count = spots.len();
    Some(match cause {
        Cause::NoSource(Net::Water) => set("water-service", "missing-water-service"),
        Cause::NoSource(Net::Power) => set("panel", "missing-panel"),
        Cause::NoSource(Net::Gas) => set("gas-meter", "missing-gas-meter"),
        Cause::NoSource(_) => return None,
        Cause::NoOutfall => set("house-drain", "missing-house-drain"),
        Cause::NoMain => (Fix::AddMain, Said::new("missing-main")),
        Cause::NoCleanout => {
            (Fix::AddCleanout, Said::new("missing-cleanout").count("count", count))
        }
        Cause::NoDevice(_, id) => (
            Fix::AddShutoff { before: id.clone() },
            Said::new("missing-shutoff").with("name", name(id)),
        ),
        Cause::NoFeed(net, id) => {
            let carries = spots_medium(home, id, *net);
            let said = Said::new("missing-feed")
                .with("name", name(id))
                .medium("medium", carries)
                .count("count", count);
            (connect(home, id, Lack::Feed, carries), said)
        }
        Cause::NoDrain(carries, id) => {
            let said = Said::new("missing-drain").with("name", name(id)).count("count", count);
            (connect(home, id, Lack::Drain, *carries), said)
        }
        Cause::NoPump(id) => {
            let said = Said::new("missing-pump").with("name", name(id));
            (connect(home, id, Lack::Drain, Medium::Waste), said)
        }
        Cause::NoBreaker(_) => {
            let mut things: Vec<String> = spots
                .iter()
                .filter_map(|spot| match &spot.at {
                    Spot::Component(id) => Some(id.clone()),
                    _ => None,
                })
                .collect();
            things.dedup();
            let said = Said::new("missing-breakers").count("count", things.len());
            let breakers = home.components.iter().any(|c| c.kind == Kind::Breaker);
            if breakers {
                (Fix::FindBreakers { things }, said)
            } else {
                (Fix::PlaceSet { set: "panel", space: None }, Said::new("missing-panel"))
            }
        }
        Cause::NoSet(id, space) => {
            let room = home.space(space).map_or(space.as_str(), |s| s.name.as_str());
            let info = crate::sets::sets().into_iter().find(|set| set.id == *id)?;
            let said = Said::new("missing-set").kind("kind", info.kind).with("room", room);
            (Fix::PlaceSet { set: info.id, space: Some(space.clone()) }, said)
        }
    })
}

/// What a component of a net lacks, as far as it tells: a line that leaves it, else the usual.
fn spots_medium(home: &Home, id: &str, net: Net) -> Medium {
    let lacking = home.component(id).map(|c| crate::order::lacks(home, c)).unwrap_or_default();
    let told = lacking.into_iter().find(|(lack, m)| *lack == Lack::Feed && m.net() == net);
    told.map_or(
        match net {
            Net::Power => Medium::Power,
            Net::Gas => Medium::Gas,
            _ => Medium::ColdWater,
        },
        |(_, medium)| medium,
    )
}

fn connect(home: &Home, id: &str, lack: Lack, carries: Medium) -> Fix {
    let proposal = proposals_for(home, id)
        .into_iter()
        .find(|p| p.lack == lack && p.line.carries == carries)
        .map(Box::new);
    Fix::Connect { id: id.to_owned(), lack, carries, proposal }
}

/// The home as if something missing had been recorded; `None` if that cannot be tried.
fn tried(home: &Home, fix: &Fix, words: &Catalogue) -> Option<Home> {
    let mut then = home.clone();
    match fix {
        Fix::PlaceSet { set, space } => {
            let wish = Wish { set: (*set).to_owned(), space: space.clone(), ..Wish::default() };
            let placed = place(home, &wish, words).ok()?;
            then.components.extend(placed.components);
            then.connections.extend(placed.connections);
            for edit in accept_all(&then, &placed.proposals, None, 0.0) {
                if let quarterturn_home::Edit::Connect(line) = edit {
                    then.connections.push(*line);
                }
            }
            if space.is_none() {
                // What the set is for hangs on it as soon as it is there.
                hang_on(&mut then, home);
            }
        }
        Fix::AddShutoff { before } => {
            put_before(&mut then, before, Net::Water, Kind::IsolatingValve);
        }
        Fix::AddMain => {
            let sources: Vec<String> = home
                .components
                .iter()
                .filter(|c| c.kind.is_source(Net::Water))
                .map(|c| c.id.clone())
                .collect();
            for source in sources {
                put_behind(&mut then, &source);
            }
        }
        Fix::AddCleanout => {
            let outfalls: Vec<String> = home
                .components
                .iter()
                .filter(|c| c.kind.is_outfall())
                .map(|c| c.id.clone())
                .collect();
            for outfall in outfalls {
                put_before(&mut then, &outfall, Net::Waste, Kind::Cleanout);
            }
        }
        Fix::Connect { id, lack, carries, proposal } => {
            let line = match proposal {
                Some(proposal) => proposal.line.clone(),
                None => virtual_line(&mut then, home, id, *lack, *carries)?,
            };
            then.connections.push(line);
        }
        Fix::FindBreakers { things } => {
            let breaker = home.components.iter().find(|c| {
                c.kind == Kind::Breaker && home.connections.iter().any(|l| l.to == c.id)
            })?;
            for thing in things {
                then.connections.push(Connection::new(&breaker.id, thing, Medium::Power));
            }
        }
        _ => return None,
    }
    Some(then)
}

/// Joins what lacked a source or an outfall altogether to the one that is there now.
fn hang_on(then: &mut Home, before: &Home) {
    let lacking: Vec<Proposal> = before
        .components
        .iter()
        .filter(|c| !crate::order::lacks(before, c).is_empty())
        .take(60)
        .flat_map(|c| proposals_for(then, &c.id))
        .collect();
    for edit in accept_all(then, &lacking, None, 0.0) {
        if let quarterturn_home::Edit::Connect(line) = edit {
            then.connections.push(*line);
        }
    }
}

/// A line from where the medium comes from, or to where it goes, when nobody knows the way.
fn virtual_line(
    then: &mut Home,
    home: &Home,
    id: &str,
    lack: Lack,
    carries: Medium,
) -> Option<Connection> {
    let net = carries.net();
    let usable = |c: &&Component| match (lack, net) {
        (Lack::Drain, _) => c.kind.is_outfall() || c.kind == Kind::CondensateOutlet,
        (Lack::Feed, Net::Power) => c.kind == Kind::Panel,
        (Lack::Feed, _) => c.kind.isolates(net) && c.operable_by == OperableBy::Anyone,
    };
    if let Some(end) = home.components.iter().find(usable) {
        return Some(match lack {
            Lack::Feed => Connection::new(&end.id, id, carries),
            Lack::Drain => Connection::new(id, &end.id, carries),
        });
    }
    let source = home.components.iter().find(|c| c.kind.is_source(net))?;
    let valve = Component::new(VIRTUAL, Kind::IsolatingValve, VIRTUAL);
    then.components.push(valve);
    then.connections.push(Connection::new(&source.id, VIRTUAL, carries));
    Some(Connection::new(VIRTUAL, id, carries))
}

/// Id of what is put on the map for a try; the home never holds it.
const VIRTUAL: &str = "tried-out";

/// Puts a device into every line of a net that comes to a component.
fn put_before(then: &mut Home, id: &str, net: Net, kind: Kind) {
    let mut added = Vec::new();
    for (number, line) in then.connections.iter_mut().enumerate() {
        if line.to == id && line.carries.net() == net {
            let device = format!("{VIRTUAL}-{number}");
            added.push((device.clone(), Connection::new(&device, id, line.carries)));
            line.to = device;
        }
    }
    for (device, line) in added {
        then.components.push(Component::new(&device, kind, &device));
        then.connections.push(line);
    }
}

/// Puts a valve behind everything that leaves a source.
fn put_behind(then: &mut Home, source: &str) {
    let device = format!("{VIRTUAL}-{source}");
    let mut carries = Medium::ColdWater;
    for line in &mut then.connections {
        if line.from == source && line.carries.net() == Net::Water {
            carries = line.carries;
            line.from.clone_from(&device);
        }
    }
    then.components.push(Component::new(&device, Kind::IsolatingValve, &device));
    then.connections.push(Connection::new(source, &device, carries));
}

/// Spots that had no answer and have one then.
fn gained<'k>(now: &'k [Known], then: &[Known]) -> Vec<&'k Known> {
    let answered: std::collections::BTreeSet<(Trouble, &Spot)> =
        then.iter().filter(|k| k.lacks.is_none()).map(|k| (k.trouble, &k.at)).collect();
    let open: std::collections::BTreeSet<(Trouble, &Spot)> =
        then.iter().filter(|k| k.lacks.is_some()).map(|k| (k.trouble, &k.at)).collect();
    now.iter()
        .filter(|k| k.lacks.is_some())
        .filter(|k| {
            let spot = (k.trouble, &k.at);
            // What a room lacked is no spot of its own any more once it is there.
            let placed = matches!(k.lacks, Some(Cause::NoSet(..))) && !open.contains(&spot);
            answered.contains(&spot) || placed
        })
        .collect()
}

/// What no net tells: numbers to call, devices that nobody tried or that stand in no room, GFCIs with
/// nothing behind them.
fn beside_the_nets(home: &Home) -> Vec<Item> {
    let mut list = Vec::new();
    let mut add = |said: Said, fix: Fix, trouble: Trouble, at: Spot, help: f64| {
        list.push(Item { said, fix, protects: vec![(trouble, at)], help });
    };
    if home.spaces.is_empty() {
        add(Said::new("missing-rooms"), Fix::DrawRooms, Trouble::Leak, Spot::Home, 9.0);
    }
    if home.emergency_phone.is_none() {
        let said = Said::new("missing-emergency-phone");
        add(said, Fix::EmergencyPhone, Trouble::Fire, Spot::Home, 13.0);
    }
    let has = |kind: Kind| home.components.iter().any(|c| c.kind == kind);
    for (role, kind, key, trouble) in [
        (Role::WaterUtility, Kind::WaterMain, "missing-water-utility", Trouble::Leak),
        (
            Role::ElectricityUtility,
            Kind::ElectricityService,
            "missing-electricity-utility",
            Trouble::WiresDown,
        ),
        (Role::SewerUtility, Kind::SewerMain, "missing-sewer-utility", Trouble::SewageRising),
        (Role::GasUtility, Kind::GasMeter, "missing-gas-utility", Trouble::GasSmell),
    ] {
        let known = home.contacts.iter().any(|c| c.role == Some(role) && c.phone.is_some());
        if has(kind) && !known {
            add(Said::new(key), Fix::AddContact { role }, trouble, Spot::Home, 5.0);
        }
    }
    for c in &home.components {
        let at = || Spot::Component(c.id.clone());
        let valve = c.kind == Kind::IsolatingValve && c.operable_by == OperableBy::Anyone;
        if valve && c.space.is_none() {
            let said = Said::new("missing-place").with("name", &c.name);
            add(said, Fix::PutInRoom { id: c.id.clone() }, Trouble::Leak, at(), 4.0);
        } else if valve && c.state() == DeviceState::Unknown {
            // The main is tried first: all hangs on it.
            let main = crate::words::says(&c.name, "words-main");
            let said = Said::new("missing-tried").with("name", &c.name);
            let help = if main { 6.0 } else { 1.5 };
            add(said, Fix::Try { id: c.id.clone() }, Trouble::Leak, at(), help);
        }
    }
    let bare: Vec<&Component> = home
        .components
        .iter()
        .filter(|c| c.kind == Kind::Gfci)
        .filter(|c| !home.connections.iter().any(|l| l.from == c.id && l.carries == Medium::Power))
        .collect();
    if let Some(first) = bare.first() {
        let said =
            Said::new("missing-behind-gfci").with("name", &first.name).count("count", bare.len());
        let at = Spot::Component(first.id.clone());
        add(said, Fix::FindGfcis, Trouble::DeadOutlet, at, 2.0);
    }
    list
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::open;

    fn example() -> Home {
        open("home.ron", include_str!("../../../examples/two-storey/home.ron")).home.unwrap()
    }

    fn all_said(missing: &Missing) {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for said in missing.list.iter().map(|item| &item.said).chain([&missing.said()]) {
                let text = said.text(&words);
                assert!(!text.contains(['{', '[']), "{}: {text}", language.tag);
            }
        }
    }

    #[test]
    fn an_empty_home_begins_with_water_power_and_drain() {
        let missing = missing(&Home::default());
        assert_eq!((missing.percent(), missing.spots, missing.answered), (0, 3, 0));
        let keys: Vec<&str> = missing.list.iter().map(|item| item.said.key).take(5).collect();
        for key in [
            "missing-water-service",
            "missing-panel",
            "missing-house-drain",
            "missing-emergency-phone",
        ] {
            assert!(keys.contains(&key), "{keys:?}");
        }
        assert_eq!(keys[0], "missing-water-service");
        all_said(&missing);
    }

    #[test]
    fn the_example_is_nearly_complete() {
        let missing = missing(&example());
        assert!(missing.percent() >= 90, "{} {:#?}", missing.percent(), missing.list);
        all_said(&missing);
    }

    #[test]
    fn a_toilet_whose_stop_is_forgotten_is_told_with_its_name() {
        let mut home = example();
        // The upstairs toilet hangs on the riser, and the riser's own valves are the plumber's.
        for valve in home.components.iter_mut().filter(|c| c.kind == Kind::IsolatingValve) {
            if valve.id != "family-toilet-stop" {
                valve.operable_by = OperableBy::Licensed;
            }
        }
        home.components.retain(|c| c.id != "family-toilet-stop");
        home.connections.retain(|l| l.to != "family-toilet-stop");
        for line in &mut home.connections {
            if line.from == "family-toilet-stop" {
                line.from = "cold-upper".to_owned();
            }
        }
        let missing = missing(&home);
        let at = |item: &Item| {
            item.protects.iter().any(|(_, at)| *at == Spot::Component("family-toilet".to_owned()))
        };
        let item = missing.list.iter().find(|item| at(item)).unwrap();
        assert!(matches!(item.fix, Fix::AddMain | Fix::AddShutoff { .. }), "{item:?}");
        all_said(&missing);
    }

    #[test]
    fn what_helps_most_comes_first_and_doing_it_helps() {
        let mut home = example();
        // All but sprinklers and garden hang on one line that is missing.
        home.connections.retain(|l| !(l.from == "house-main" && l.to == "cold-trunk"));
        home.connections.retain(|l| l.to != "west-stack" || l.from != "main-bath-branch");
        let before = missing(&home);
        let feeds = |item: &&Item| matches!(&item.fix, Fix::Connect { id, lack: Lack::Feed, .. } if id == "cold-trunk");
        let item = before.list.iter().find(feeds).unwrap();
        let Fix::Connect { proposal: Some(proposal), .. } = &item.fix else { panic!("{item:#?}") };
        assert!(item.protects.len() > 3, "{item:#?}");
        let mut then = home.clone();
        then.connections.push(proposal.line.clone());
        let after = missing(&then);
        assert!(after.answered > before.answered + 3, "{} {}", before.answered, after.answered);
        assert!(before.list.iter().any(|item| matches!(&item.fix, Fix::Connect { id, lack: Lack::Drain, .. } if id == "main-bath-branch")));
        let helps: Vec<f64> = before.list.iter().map(|item| item.help).collect();
        assert!(helps.is_sorted_by(|a, b| a >= b), "{helps:?}");
        all_said(&before);
    }

    #[test]
    fn a_bathroom_without_a_toilet_is_not_complete() {
        let mut home = example();
        home.components.retain(|c| c.id != "half-bath-toilet");
        home.connections.retain(|l| l.from != "half-bath-toilet" && l.to != "half-bath-toilet");
        let missing = missing(&home);
        let set = Fix::PlaceSet { set: "toilet", space: Some("half-bath".to_owned()) };
        assert!(missing.list.iter().any(|item| item.fix == set), "{:#?}", missing.list);
        all_said(&missing);
    }

    #[test]
    fn outlets_without_a_breaker_are_one_search() {
        let mut home = example();
        home.connections.retain(|l| l.from != "br-living" && l.from != "br-kitchen-left");
        let missing = missing(&home);
        let item = missing.list.iter().find(|i| matches!(i.fix, Fix::FindBreakers { .. })).unwrap();
        assert!(item.protects.len() >= 4, "{item:#?}");
        all_said(&missing);
    }
}
