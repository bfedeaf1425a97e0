//! For which troubles, at which spots, the map has an answer of its own.
//!
//! Whole answers take half a millisecond each and there are hundreds, so that what decides them is
//! read off the nets at once: one pass a net. A test holds it against the answers themselves.

use std::collections::BTreeSet;

use quarterturn_guidance::{Spot, Trouble};
use quarterturn_home::{Component, DeviceState, Home, Kind, Medium, Net, OperableBy};
use quarterturn_network::{HomeNet, NO_FEED, Node, Places, as_node, drain, lines_of_defence};

use crate::usual::usual;

/// A spot, and whether the map answers its trouble.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Known {
    pub(crate) trouble: Trouble,
    pub(crate) at: Spot,
    /// Why there is no answer; `None` if there is one.
    pub(crate) lacks: Option<Cause>,
    /// How much harm an answer averts, against other spots. Common practice, no source: it ranks.
    pub(crate) weight: f64,
}

/// Why the map has no answer.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
#[expect(clippy::enum_variant_names, reason = "each is something that is not there")]
pub(crate) enum Cause {
    /// There is no source of this net at all.
    NoSource(Net),
    /// Nothing feeds this component, on which the spot hangs.
    NoFeed(Net, String),
    /// It is fed, and nothing that anyone in the house may work cuts it off.
    NoDevice(Net, String),
    /// No one device cuts the water of the house off.
    NoMain,
    /// Nothing takes the medium away from this component, on which the spot hangs.
    NoDrain(Medium, String),
    /// There is no sewer or septic tank at all.
    NoOutfall,
    /// Its drain passes no cleanout.
    NoCleanout,
    /// No breaker is known for it.
    NoBreaker(String),
    /// The pit has no pump.
    NoPump(String),
    /// A room usually has it, and it is not on the map.
    NoSet(&'static str, String),
}

/// Every spot that counts, in a stated order: the house, then the components in the home's order,
/// then what rooms usually have. Time: (components + connections) × a few.
pub(crate) fn known(home: &Home) -> Vec<Known> {
    let map = Map::of(home);
    let mut list = map.house();
    for (place, component) in home.components.iter().enumerate() {
        map.component(place, component, &mut list);
    }
    for space in &home.spaces {
        for usual in usual(home, space).into_iter().filter(|u| u.always && !u.there) {
            list.push(Known {
                trouble: Trouble::Leak,
                at: Spot::Space(space.id.clone()),
                lacks: Some(Cause::NoSet(usual.set.id, space.id.clone())),
                weight: 6.0,
            });
        }
    }
    list
}

/// What the nets of a home tell, read off once.
struct Map<'a> {
    home: &'a Home,
    places: Places<'a>,
    water: HomeNet,
    power: HomeNet,
    /// By node: devices between the sources and it that anyone may work; and that anybody at all may.
    water_lines: Vec<u32>,
    water_lines_of_all: Vec<u32>,
    power_lines: Vec<u32>,
    /// By place: reached by power without passing a breaker.
    bare: Vec<bool>,
    /// By place: its waste comes to an outfall; and: it passes a cleanout.
    drains: Vec<(bool, bool)>,
}

impl<'a> Map<'a> {
    fn of(home: &'a Home) -> Self {
        let places = Places::of_home(home);
        let water = HomeNet::of(home, &places, Net::Water, None);
        let power = HomeNet::of(home, &places, Net::Power, None);
        let operable = |node: Node| component(home, node).is_some_and(is_operable);
        let water_lines = lines_of_defence(&water.network, operable);
        let holds = |node: Node| component(home, node).is_some_and(is_sound);
        let water_lines_of_all = lines_of_defence(&water.network, holds);
        let power_lines = lines_of_defence(&power.network, operable);
        let sources = power.network.sources().to_vec();
        let breaker = |node: Node| component(home, node).is_some_and(|c| c.kind == Kind::Breaker);
        let bare = power.network.reached_from(&sources, breaker);
        let drains = ways_out(home, &places);
        Self {
            home,
            places,
            water,
            power,
            water_lines,
            water_lines_of_all,
            power_lines,
            bare,
            drains,
        }
    }

    /// What holds for the house as a whole: water off, power off, the sewer relieved.
    fn house(&self) -> Vec<Known> {
        let has = |kind: Kind| self.home.components.iter().any(|c| c.kind == kind);
        let water = has(Kind::WaterMain) || has(Kind::Well);
        let outfall = self.home.components.iter().any(|c| c.kind.is_outfall());
        let main = if !water {
            Some(Cause::NoSource(Net::Water))
        } else {
            (!self.has_main()).then_some(Cause::NoMain)
        };
        let power = (!has(Kind::Panel)).then_some(Cause::NoSource(Net::Power));
        let cleanout = (!has(Kind::Cleanout)).then_some(Cause::NoCleanout);
        let sewer = if outfall { cleanout } else { Some(Cause::NoOutfall) };
        let spot = |trouble, lacks, weight| Known { trouble, at: Spot::Home, lacks, weight };
        vec![
            spot(Trouble::Leak, main, 14.0),
            spot(Trouble::Sparks, power, 12.0),
            spot(Trouble::SewageRising, sewer, 10.0),
        ]
    }

    /// True if one device that anyone may work stops at least half of what uses water.
    fn has_main(&self) -> bool {
        let sources = self.water.network.sources().to_vec();
        let used: Vec<usize> = (0..self.home.components.len())
            .filter(|&p| {
                self.home.components.get(p).is_some_and(|c| c.kind.is_served())
                    && line(&self.water_lines, p) != NO_FEED
                    && self.is_member(&self.water, p)
            })
            .collect();
        self.home.components.iter().enumerate().any(|(place, valve)| {
            if !valve.kind.isolates(Net::Water) || !is_operable(valve) || valve.normally_shut() {
                return false;
            }
            if line(&self.water_lines, place) == NO_FEED {
                return false;
            }
            let shut = as_node(place);
            let reached = self.water.network.reached_from(&sources, |node| node == shut);
            let wet = used.iter().filter(|&&p| reached.get(p).copied().unwrap_or(false)).count();
            wet * 2 <= used.len()
        })
    }

    fn component(&self, place: usize, c: &Component, list: &mut Vec<Known>) {
        let mut add = |trouble, lacks, weight| {
            list.push(Known { trouble, at: Spot::Component(c.id.clone()), lacks, weight });
        };
        let wet_kind = c.kind.is_water_fixture()
            && !matches!(c.kind, Kind::Appliance | Kind::AirHandler | Kind::MedicalDevice)
            || matches!(c.kind, Kind::WaterHeater | Kind::SupplyHose);
        // What is the utility's is theirs to close and to repair.
        let theirs = c.operable_by == OperableBy::Utility || c.kind.is_source(Net::Water);
        let member = self.is_member(&self.water, place) && !theirs;
        if wet_kind || (member && c.kind != Kind::ReliefValve) {
            let lacks = self.water_cause(place, c);
            let weight = match c.kind {
                Kind::SupplyHose | Kind::WashingMachine | Kind::WaterHeater => 10.0,
                kind if kind.is_water_fixture() => 8.0,
                _ => 3.0,
            };
            if c.kind == Kind::Toilet {
                add(Trouble::ToiletOverflow, lacks.clone(), 9.0);
            }
            add(Trouble::Leak, lacks, weight);
        }
        if c.kind.is_drain_opening() {
            add(Trouble::SewageRising, self.drain_cause(place, c), 7.0);
        }
        match c.kind {
            Kind::Receptacle | Kind::Gfci => {
                let lacks = self.power_cause(place, c);
                add(Trouble::Sparks, lacks.clone(), 4.0);
                add(Trouble::DeadOutlet, lacks, 2.0);
            }
            Kind::Light | Kind::Lampholder => {
                add(Trouble::DeadLight, self.power_cause(place, c), 2.0);
            }
            Kind::MedicalDevice => add(Trouble::DeadOutlet, self.power_cause(place, c), 12.0),
            Kind::SumpPit | Kind::EjectorPit => add(Trouble::PitRising, self.pit_cause(c), 10.0),
            Kind::AirHandler => {
                let away = self.home.connections.iter().any(|l| {
                    l.from == c.id && matches!(l.carries, Medium::Condensate | Medium::Waste)
                });
                let lacks = (!away).then(|| Cause::NoDrain(Medium::Condensate, c.id.clone()));
                add(Trouble::WaterAtAirHandler, lacks, 5.0);
            }
            _ => {}
        }
    }

    fn water_cause(&self, place: usize, c: &Component) -> Option<Cause> {
        let body = self.water.body.get(place).map_or(place, |node| index(*node));
        // A piece of the service before the main shutoff is cut off by the utility: to call them is the
        // answer. What people use should have a device that they may work.
        let lines = if c.kind.is_served() || c.kind == Kind::SupplyHose {
            &self.water_lines
        } else {
            &self.water_lines_of_all
        };
        match line(lines, body) {
            NO_FEED => Some(self.unfed(Net::Water, c)),
            0 => Some(Cause::NoDevice(Net::Water, c.id.clone())),
            _ => None,
        }
    }

    fn power_cause(&self, place: usize, c: &Component) -> Option<Cause> {
        let fed = line(&self.power_lines, place) != NO_FEED;
        let before_breakers = c.kind == Kind::Gfci
            && self.home.connections.iter().any(|l| {
                l.from == c.id
                    && self.home.component(&l.to).is_some_and(|d| d.kind == Kind::Breaker)
            });
        if fed && (before_breakers || !self.bare.get(place).copied().unwrap_or(false)) {
            return None;
        }
        if fed {
            return Some(Cause::NoBreaker(c.id.clone()));
        }
        match self.unfed(Net::Power, c) {
            // It is a thing of its own that hangs on nothing: its breaker is to be found.
            Cause::NoFeed(_, root)
                if self.home.component(&root).is_some_and(|r| !r.kind.is_power_distribution()) =>
            {
                Some(Cause::NoBreaker(root))
            }
            cause => Some(cause),
        }
    }

    /// Where the way up from a component ends without coming to a source.
    fn unfed(&self, net: Net, c: &Component) -> Cause {
        if !self.home.components.iter().any(|c| c.kind.is_source(net)) {
            return Cause::NoSource(net);
        }
        let mut seen: BTreeSet<&str> = BTreeSet::from([c.id.as_str()]);
        let mut at = c.id.as_str();
        loop {
            let up =
                self.home.connections.iter().find(|l| {
                    l.to == at && l.carries.net() == net && !seen.contains(l.from.as_str())
                });
            let Some(line) = up else { return Cause::NoFeed(net, at.to_owned()) };
            seen.insert(&line.from);
            at = &line.from;
        }
    }

    fn drain_cause(&self, place: usize, c: &Component) -> Option<Cause> {
        match self.drains.get(place).copied().unwrap_or((false, false)) {
            (true, true) => None,
            (true, false) => Some(Cause::NoCleanout),
            (false, _) if !self.home.components.iter().any(|c| c.kind.is_outfall()) => {
                Some(Cause::NoOutfall)
            }
            (false, _) => {
                let mut seen: BTreeSet<&str> = BTreeSet::from([c.id.as_str()]);
                let mut at = c.id.as_str();
                while let Some(line) = self.home.connections.iter().find(|l| {
                    l.from == at && l.carries == Medium::Waste && !seen.contains(l.to.as_str())
                }) {
                    seen.insert(&line.to);
                    at = &line.to;
                }
                Some(Cause::NoDrain(Medium::Waste, at.to_owned()))
            }
        }
    }

    /// A pit is answered if its pump is known, and what brings the pump power.
    fn pit_cause(&self, pit: &Component) -> Option<Cause> {
        let mut pumps = self.home.connections.iter().filter(|l| {
            (l.from == pit.id || l.to == pit.id)
                && [&l.from, &l.to]
                    .iter()
                    .any(|id| self.home.component(id).is_some_and(|c| c.kind == Kind::SumpPump))
        });
        let pump = pumps.next().map(|l| if l.from == pit.id { &l.to } else { &l.from });
        let powered = |id: &str| {
            let place = self.places.of(id)?;
            self.power_cause(place, self.home.components.get(place)?)
        };
        match pump {
            Some(pump) => powered(pump),
            // A pit may hold its pump itself.
            None if self.places.of(&pit.id).is_some_and(|p| self.is_member(&self.power, p)) => {
                powered(&pit.id)
            }
            None => Some(Cause::NoPump(pit.id.clone())),
        }
    }

    fn is_member(&self, net: &HomeNet, place: usize) -> bool {
        net.member.get(place).copied().unwrap_or(false)
    }
}

/// By place: whether its waste comes to an outfall, and passes a cleanout before.
fn ways_out(home: &Home, places: &Places<'_>) -> Vec<(bool, bool)> {
    let drain = drain(home, places);
    let count = home.components.len();
    let mut below: Vec<Vec<usize>> = vec![Vec::new(); count];
    for piece in &drain.pieces {
        if let Some(list) = below.get_mut(index(piece.from)) {
            list.push(index(piece.to));
        }
    }
    (0..count)
        .map(|start| {
            let (mut outfall, mut cleanout) = (false, false);
            if below.get(start).is_none_or(Vec::is_empty) {
                return (false, false);
            }
            let mut seen = BTreeSet::from([start]);
            let mut stack = vec![start];
            while let Some(at) = stack.pop() {
                if let Some(c) = home.components.get(at) {
                    outfall |= c.kind.is_outfall();
                    cleanout |= c.kind == Kind::Cleanout;
                }
                for &next in below.get(at).into_iter().flatten() {
                    if seen.insert(next) {
                        stack.push(next);
                    }
                }
            }
            (outfall, cleanout)
        })
        .collect()
}

fn component(home: &Home, node: Node) -> Option<&Component> {
    home.components.get(index(node))
}

fn index(node: Node) -> usize {
    usize::try_from(node).unwrap_or(usize::MAX)
}

fn line(lines: &[u32], place: usize) -> u32 {
    lines.get(place).copied().unwrap_or(NO_FEED)
}

/// True if anyone in the house may work it, and nothing is known against it.
fn is_operable(c: &Component) -> bool {
    c.operable_by == OperableBy::Anyone && is_sound(c)
}

/// True if nothing is known against it.
fn is_sound(c: &Component) -> bool {
    !matches!(c.state(), DeviceState::Seized | DeviceState::LeaksBy)
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::{By, Catalogue, Question, answer};
    use quarterturn_home::open;

    fn homes() -> Vec<Home> {
        [
            include_str!("../../../examples/two-storey/home.ron"),
            include_str!("../../../examples/flat/home.ron"),
            include_str!("../../../examples/old-house/home.ron"),
        ]
        .map(|text| open("home.ron", text).home.unwrap())
        .into()
    }

    /// Whether the whole answer really holds what the quick look promises.
    fn really(home: &Home, known: &Known) -> bool {
        let question = Question {
            trouble: known.trouble,
            at: known.at.clone(),
            from: None,
            failed: Vec::new(),
            seen: Vec::new(),
        };
        let answer = answer(home, &question, &Catalogue::english());
        let Spot::Component(id) = &known.at else { panic!("{:?}", known.at) };
        let kind = home.component(id).unwrap().kind;
        match known.trouble {
            Trouble::Leak if !kind.is_served() && kind != Kind::SupplyHose => {
                answer.mapped && !answer.sets.is_empty()
            }
            Trouble::Leak | Trouble::Sparks => {
                answer.mapped && answer.sets.iter().any(|set| set.by == By::Anyone)
            }
            Trouble::ToiletOverflow => answer.sets.iter().any(|set| set.by == By::Anyone),
            Trouble::SewageRising => {
                answer.mapped
                    && answer.relief.is_some_and(|r| r.open.is_some() || r.rod_from.is_some())
            }
            _ => answer.mapped,
        }
    }

    /// With every ninth line taken out, the quick look says what the whole answers say, in both
    /// directions, but for a few that hang on more than the nets.
    #[test]
    fn the_quick_look_agrees_with_the_answers() {
        let (mut same, mut promised, mut denied) = (0, Vec::new(), Vec::new());
        for whole in homes() {
            for skip in [usize::MAX, 0, 4] {
                let mut home = whole.clone();
                let mut index = 0;
                home.connections.retain(|_| {
                    index += 1;
                    index % 9 != skip
                });
                for known in known(&home) {
                    let asked = matches!(
                        known.trouble,
                        Trouble::Leak
                            | Trouble::ToiletOverflow
                            | Trouble::SewageRising
                            | Trouble::DeadOutlet
                            | Trouble::DeadLight
                    );
                    if !asked || !matches!(known.at, Spot::Component(_)) {
                        continue;
                    }
                    match (known.lacks.is_none(), really(&home, &known)) {
                        (a, b) if a == b => same += 1,
                        (true, false) => promised.push(known),
                        (_, _) => denied.push(known),
                    }
                }
            }
        }
        assert!(same > 700, "{same}");
        // Where no breaker is on the way the answer still names suspects; the look is stricter.
        assert!(promised.len() * 50 < same, "{} of {same}: {promised:#?}", promised.len());
        assert!(denied.len() * 12 < same, "{} of {same}: {denied:#?}", denied.len());
    }

    #[test]
    fn an_empty_home_answers_nothing() {
        let list = known(&Home::default());
        let lacks: Vec<_> = list.iter().map(|k| k.lacks.clone().unwrap()).collect();
        assert_eq!(
            lacks,
            [Cause::NoSource(Net::Water), Cause::NoSource(Net::Power), Cause::NoOutfall]
        );
    }
}
