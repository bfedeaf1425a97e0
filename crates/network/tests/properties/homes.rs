//! Homes against brute force on their components: the rules of how water, current and gas run,
//! written down again without any graph.
//!
//! What is kept here is, for each end of each connection, whether something comes in by it.

use proptest::prelude::*;
use quarterturn_home::{Component, Connection, Home, Kind, Medium, Net, Operates, Position};
use quarterturn_network::{HomeNet, Isolator, Node, Places, Set, Terms};

const WATER: &[Kind] = &[
    Kind::WaterMain,
    Kind::Well,
    Kind::IsolatingValve,
    Kind::IsolatingValve,
    Kind::IsolatingValve,
    Kind::IsolatingValve,
    Kind::CheckValve,
    Kind::BackflowPreventer,
    Kind::PressureReducingValve,
    Kind::CirculationPump,
    Kind::Pipe,
    Kind::WaterMeter,
    Kind::WaterHeater,
    Kind::MixingValve,
    Kind::Tap,
    Kind::Sink,
    Kind::Shower,
    Kind::SprinklerRiser,
];
const POWER: &[Kind] = &[
    Kind::ElectricityService,
    Kind::Generator,
    Kind::ServiceDisconnect,
    Kind::Breaker,
    Kind::Breaker,
    Kind::Breaker,
    Kind::Disconnect,
    Kind::TransferSwitch,
    Kind::Panel,
    Kind::JunctionBox,
    Kind::Switch,
    Kind::Gfci,
    Kind::Receptacle,
];
const GAS: &[Kind] = &[
    Kind::GasMeter,
    Kind::GasValve,
    Kind::GasValve,
    Kind::Pipe,
    Kind::GasAppliance,
    Kind::WaterHeater,
];

/// Where the trouble is.
#[derive(Debug, Clone)]
enum Spot {
    Component(usize),
    /// A place in a pipe or cable: the number of the connection.
    Along(usize),
    /// Everything in one space.
    Space(Vec<usize>),
}

#[derive(Clone)]
struct Case {
    home: Home,
    net: Net,
    spot: Spot,
    effort: Vec<Option<u64>>,
    loss: Vec<u64>,
}

impl std::fmt::Debug for Case {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        writeln!(f, "{:?} at {:?}", self.net, self.spot)?;
        for (place, c) in self.home.components.iter().enumerate() {
            let (shut, effort) = (c.normally_shut(), self.effort[place]);
            writeln!(f, "{} {:?} joins {:?} shut {shut} {effort:?}", c.id, c.kind, c.joins)?;
        }
        for link in &self.home.connections {
            writeln!(f, "{} {:?} one way {}", link.spot(), link.carries, link.one_way)?;
        }
        writeln!(f, "loss {:?}", self.loss)
    }
}

fn cases() -> impl Strategy<Value = Case> {
    let net = prop_oneof![4 => Just(Net::Water), 2 => Just(Net::Power), 1 => Just(Net::Gas)];
    let index = any::<prop::sample::Index>;
    let component = (
        index(),
        prop::option::weighted(0.3, any::<bool>()),
        prop::bool::weighted(0.1),
        prop_oneof![1 => Just(None), 5 => (0..30_u64).prop_map(Some)],
        prop_oneof![3 => Just(0), 1 => 1..90_u64],
    );
    let link = (index(), index(), prop::bool::weighted(0.1), any::<bool>(), any::<bool>());
    (
        net,
        prop::collection::vec(component, 2..11),
        prop::collection::vec(link, 11..16),
        0..6_usize,
        (0..3_u8, prop::collection::vec(index(), 1..4)),
    )
        .prop_map(|(net, parts, links, extra, (spot, places))| {
            let kinds = match net {
                Net::Power => POWER,
                Net::Gas => GAS,
                _ => WATER,
            };
            let count = parts.len();
            let mut home = Home::default();
            let (mut effort, mut loss) = (Vec::new(), Vec::new());
            let mut devices = 0;
            for (number, (kind, joins, shut, cost, missed)) in parts.into_iter().enumerate() {
                // The first one is a source nine times in ten.
                let kind = if number == 0 && cost.is_some() { kinds[0] } else { *kind.get(kinds) };
                devices += usize::from(kind.isolates(net));
                let kind = if devices > 7 && kind.isolates(net) { kinds[0] } else { kind };
                let mut component = Component::new(&format!("c{number}"), kind, "");
                component.joins = joins;
                let normally = if shut { Position::Shut } else { Position::Open };
                component.operates = Some(Operates { normally, ..Operates::default() });
                home.components.push(component);
                effort.push(cost);
                loss.push(missed);
            }
            for (number, (a, b, one_way, hot, swapped)) in links.into_iter().enumerate() {
                let (mut from, mut to) = if number + 1 < count {
                    (if hot { number } else { a.index(number + 1) }, number + 1)
                } else if number + 1 < count + extra {
                    (a.index(count), b.index(count))
                } else {
                    break;
                };
                if swapped && number % 3 == 0 {
                    (from, to) = (to, from);
                }
                let carries = match net {
                    Net::Power => Medium::Power,
                    Net::Gas => Medium::Gas,
                    _ if hot => Medium::HotWater,
                    _ => Medium::ColdWater,
                };
                home.connections.push(Connection {
                    id: None,
                    from: format!("c{from}"),
                    to: format!("c{to}"),
                    carries,
                    length_m: None,
                    size: None,
                    material: None,
                    one_way,
                    note: None,
                });
            }
            // Another system that must not be traced.
            let other = if net == Net::Gas { Medium::Signal } else { Medium::Gas };
            let mut stray = home.connections[0].clone();
            stray.carries = other;
            home.connections.insert(0, stray);
            let spot = match spot {
                0 => Spot::Component(places[0].index(count)),
                1 => Spot::Along(1 + places[0].index(home.connections.len() - 1)),
                _ => Spot::Space(places.iter().map(|p| p.index(count)).collect()),
            };
            Case { home, net, spot, effort, loss }
        })
}

/// What stands in the house: for each connection, whether something is let in at its `from` end, and
/// at its `to` end.
struct Standing {
    at_from: Vec<bool>,
    at_to: Vec<bool>,
}

impl Case {
    fn ends(&self, link: &Connection) -> (usize, usize) {
        let place = |id: &str| self.home.components.iter().position(|c| c.id == id).unwrap();
        (place(&link.from), place(&link.to))
    }

    fn traced(&self, number: usize) -> bool {
        self.home.connections[number].carries.net() == self.net
    }

    /// True if something may run along a connection against its drawn direction, as far as the
    /// connection itself is concerned: water and gas may; current only between the parts of the
    /// distribution.
    fn may_run_back(&self, link: &Connection) -> bool {
        let (from, to) = self.ends(link);
        match self.net {
            Net::Power => [from, to].iter().all(|&place| {
                matches!(
                    self.home.components[place].kind,
                    Kind::ElectricityService
                        | Kind::Generator
                        | Kind::ServiceDisconnect
                        | Kind::Breaker
                        | Kind::Disconnect
                        | Kind::TransferSwitch
                        | Kind::Panel
                )
            }),
            _ => true,
        }
    }

    /// True if something comes to component `place` along connection `number`.
    fn arrives(&self, standing: &Standing, place: usize, number: usize) -> bool {
        let link = &self.home.connections[number];
        let (from, to) = self.ends(link);
        let forward = to == place && standing.at_from[number];
        let back = from == place && standing.at_to[number] && !link.one_way;
        self.traced(number) && (forward || back)
    }

    /// True if component `place` lets something into connection `number`, at its `from` end or not.
    fn lets_in(
        &self,
        standing: &Standing,
        closed: &[bool],
        place: usize,
        number: usize,
        at_from: bool,
    ) -> bool {
        let component = &self.home.components[place];
        let is_source = matches!(
            (self.net, component.kind),
            (Net::Water, Kind::WaterMain | Kind::Well)
                | (Net::Power, Kind::ElectricityService | Kind::Generator)
                | (Net::Gas, Kind::GasMeter)
        );
        let is_water = self.net == Net::Water;
        let is_check = is_water
            && matches!(
                component.kind,
                Kind::CheckValve
                    | Kind::BackflowPreventer
                    | Kind::PressureReducingValve
                    | Kind::CirculationPump
            );
        let keeps_lines_apart = is_water
            && match component.kind {
                Kind::Tap | Kind::Sink | Kind::Shower | Kind::SprinklerRiser => {
                    component.joins != Some(true)
                }
                Kind::MixingValve => component.joins == Some(false),
                _ => false,
            };
        if !at_from && !self.may_run_back(&self.home.connections[number]) {
            return false;
        }
        if is_source {
            return true;
        }
        if closed[place] || keeps_lines_apart {
            return false;
        }
        (0..self.home.connections.len()).any(|line| {
            // Where there is a check inside: in by an inlet, the usual way, and out by an outlet.
            let inlet = self.ends(&self.home.connections[line]).1 == place;
            let passes = !is_check || (inlet && standing.at_from[line] && at_from);
            passes && self.arrives(standing, place, line)
        })
    }

    /// What stands where when the components marked `closed` are shut.
    fn standing(&self, closed: &[bool]) -> Standing {
        let count = self.home.connections.len();
        let mut standing = Standing { at_from: vec![false; count], at_to: vec![false; count] };
        loop {
            let mut changed = false;
            for number in (0..count).filter(|&n| self.traced(n)) {
                let (from, to) = self.ends(&self.home.connections[number]);
                if !standing.at_from[number] && self.lets_in(&standing, closed, from, number, true)
                {
                    standing.at_from[number] = true;
                    changed = true;
                }
                if !standing.at_to[number] && self.lets_in(&standing, closed, to, number, false) {
                    standing.at_to[number] = true;
                    changed = true;
                }
            }
            if !changed {
                return standing;
            }
        }
    }

    fn is_wet(&self, standing: &Standing, place: usize) -> bool {
        self.home.components[place].kind.is_source(self.net)
            || (0..self.home.connections.len()).any(|n| self.arrives(standing, place, n))
    }

    fn leaks(&self, standing: &Standing) -> bool {
        match &self.spot {
            Spot::Component(place) => self.is_wet(standing, *place),
            // A hole in a pipe is fed from both ends, even where a check in it keeps water back.
            Spot::Along(number) => standing.at_from[*number] || standing.at_to[*number],
            Spot::Space(places) => places.iter().any(|&place| self.is_wet(standing, place)),
        }
    }

    fn closed(&self, set: &[usize]) -> Vec<bool> {
        (0..self.home.components.len())
            .map(|place| {
                let component = &self.home.components[place];
                let device = component.kind.isolates(self.net);
                device && (component.normally_shut() || set.contains(&place))
            })
            .collect()
    }

    fn targets(&self) -> Vec<usize> {
        match &self.spot {
            Spot::Component(place) => vec![*place],
            Spot::Along(_) => Vec::new(),
            Spot::Space(places) => places.clone(),
        }
    }

    /// Every minimal set in the stated order, by trying all of them.
    fn expected(&self) -> Vec<Set> {
        let usable: Vec<usize> = (0..self.home.components.len())
            .filter(|&place| {
                let component = &self.home.components[place];
                component.kind.isolates(self.net)
                    && !component.normally_shut()
                    && self.effort[place].is_some()
                    && !self.targets().contains(&place)
            })
            .collect();
        let before = self.standing(&self.closed(&[]));
        let mut cuts: Vec<Vec<usize>> = Vec::new();
        let mut all: Vec<Vec<usize>> = (0..1_u32 << usable.len())
            .map(|bits| {
                let picked = |&(i, _): &(usize, &usize)| bits & (1 << i) != 0;
                usable.iter().enumerate().filter(picked).map(|(_, &place)| place).collect()
            })
            .collect();
        all.sort_by_key(Vec::len);
        for set in all {
            let holds_one = cuts.iter().any(|cut| cut.iter().all(|place| set.contains(place)));
            if !holds_one && !self.leaks(&self.standing(&self.closed(&set))) {
                cuts.push(set);
            }
        }
        let mut sets: Vec<Set> = cuts
            .into_iter()
            .filter(|set| !set.is_empty())
            .map(|set| {
                let after = self.standing(&self.closed(&set));
                let effort: u64 = set.iter().map(|&place| self.effort[place].unwrap().max(1)).sum();
                let lost: u64 = (0..self.home.components.len())
                    .filter(|&place| self.is_served(&before, place))
                    .filter(|&place| !self.is_served(&after, place))
                    .map(|place| self.loss[place])
                    .sum();
                let devices = set.into_iter().map(|place| place as Node).collect();
                Set { cost: effort + lost, devices }
            })
            .collect();
        sets.sort_by(|a, b| {
            (a.cost, a.devices.len(), &a.devices).cmp(&(b.cost, b.devices.len(), &b.devices))
        });
        sets
    }

    /// True if a component has supply: a check valve only by its inlet.
    fn is_served(&self, standing: &Standing, place: usize) -> bool {
        let component = &self.home.components[place];
        if !component.kind.is_one_way(self.net) {
            return self.is_wet(standing, place);
        }
        (0..self.home.connections.len()).any(|n| {
            self.traced(n) && self.ends(&self.home.connections[n]).1 == place && standing.at_from[n]
        })
    }
}

impl Terms for Case {
    fn effort(&self, device: Node) -> Option<u64> {
        self.effort[device as usize]
    }

    fn is_shut(&self, device: Node) -> bool {
        self.home.components[device as usize].normally_shut()
    }

    fn loss(&self, node: Node) -> u64 {
        self.loss.get(node as usize).copied().unwrap_or(0)
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]

    #[test]
    fn a_home_is_isolated_as_its_pipes_and_cables_run(case in cases()) {
        let places = Places::of_home(&case.home);
        let along = match case.spot {
            Spot::Along(number) => Some(number),
            _ => None,
        };
        let net = HomeNet::of(&case.home, &places, case.net, along);
        let targets: Vec<Node> = match along {
            Some(_) => vec![net.point.unwrap()],
            None => case.targets().into_iter().map(|place| net.body[place]).collect(),
        };
        let shut = |n: Node| net.network.is_device(n) && case.is_shut(n);
        prop_assert_eq!(
            net.network.is_fed(&targets, shut),
            case.leaks(&case.standing(&case.closed(&[])))
        );
        let all = case.expected();
        let found = Isolator::new(&net.network, &case).best(&targets, usize::MAX, usize::MAX);
        prop_assert!(found.proven);
        prop_assert_eq!(&found.sets, &all);
    }

    #[test]
    fn a_component_is_a_member_of_the_nets_it_is_connected_to(case in cases()) {
        let places = Places::of_home(&case.home);
        for net in Net::ALL {
            let derived = HomeNet::of(&case.home, &places, net, None);
            for (place, component) in case.home.components.iter().enumerate() {
                let joined = case.home.connections.iter().any(|link| {
                    link.carries.net() == net && [&link.from, &link.to].contains(&&component.id)
                });
                prop_assert_eq!(derived.member[place], joined);
            }
        }
    }
}
