//! From a home to its nets.

use quarterturn_home::{Component, Connection, Home, Kind, Net, Space};

use crate::drains::{Cap, Drain, Piece, Place};
use crate::{Builder, Network, Node};

/// One net of a home.
///
/// Node `i` stands for component `i` of the home, whether it is part of this net or not. After them
/// come the bodies of one-way components (reached from both sides, passed from neither) and the
/// point on the pipe or cable that was asked for.
#[derive(Debug, Clone)]
pub struct HomeNet {
    /// Which net.
    pub net: Net,
    /// Its arrays.
    pub network: Network,
    /// For each component, the node that leaks when it leaks: its body.
    pub body: Vec<Node>,
    /// For each component, true if the net has a connection to it.
    pub member: Vec<bool>,
    /// The node of the connection that was asked for.
    pub point: Option<Node>,
}

impl HomeNet {
    /// The net of a home, with a node on `connection` (by its place in the file) if one is asked for.
    ///
    /// Time and space: components + connections.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, reason = "a home has fewer than 2³² components")]
    pub fn of(home: &Home, places: &Places<'_>, net: Net, connection: Option<usize>) -> Self {
        let count = home.components.len();
        let mut builder = Builder::with_capacity(2 * count);
        for component in &home.components {
            if component.kind.is_source(net) {
                builder.source();
            } else if component.kind.isolates(net) {
                builder.device();
            } else {
                builder.node();
            }
        }
        let mut body: Vec<Node> = (0..count as Node).collect();
        for (index, component) in home.components.iter().enumerate() {
            if component.kind.is_one_way(net) {
                body[index] = builder.node();
                builder.one_way(index as Node, body[index]);
            }
        }
        let mut member = vec![false; count];
        let mut point = None;
        for (number, link) in home.connections.iter().enumerate() {
            if link.carries.net() != net {
                continue;
            }
            let (Some(from), Some(to)) = (places.of(&link.from), places.of(&link.to)) else {
                continue;
            };
            (member[from], member[to]) = (true, true);
            let flows = Flows::along(net, link, &home.components[from], &home.components[to]);
            let (a, b) = (from as Node, to as Node);
            match (flows.forward, flows.back) {
                (true, true) => builder.two_way(a, b),
                (true, false) => builder.one_way(a, b),
                (false, true) => builder.one_way(b, a),
                (false, false) => {}
            }
            // What may not pass backwards still stands in the body up to there, unless the line keeps it
            // out by itself.
            if body[from] != a && flows.back_pressure && !link.one_way {
                builder.one_way(b, body[from]);
            }
            if connection == Some(number) {
                let node = builder.node();
                if flows.forward {
                    builder.one_way(a, node);
                }
                if flows.back_pressure {
                    builder.one_way(b, node);
                }
                point = Some(node);
            }
        }
        Self { net, network: builder.build(), body, member, point }
    }
}

/// Which ways something flows along one connection.
struct Flows {
    forward: bool,
    back: bool,
    /// The far end can push back into the connection, even if nothing passes the near end.
    back_pressure: bool,
}

impl Flows {
    fn along(net: Net, link: &Connection, from: &Component, to: &Component) -> Self {
        let two_way = match net {
            Net::Water | Net::Gas | Net::Vent => true,
            Net::Power => from.kind.is_power_distribution() && to.kind.is_power_distribution(),
            Net::Waste | Net::Condensate | Net::Signal => false,
        };
        let passes = |component: &Component| match net {
            Net::Water => component.passes_water(),
            _ => true,
        };
        let back_pressure = two_way && passes(to) && !to.kind.is_one_way(net);
        Self {
            forward: passes(from),
            back: back_pressure && !link.one_way && !from.kind.is_one_way(net),
            back_pressure,
        }
    }
}

/// Height of a drain opening's rim above the floor when the map does not tell, in metres.
///
/// Common practice, from memory: toilet rim 15 in, tub 15 in, lavatory 31 in, sink 36 in,
/// standpipe 36 in; a shower's or floor drain's grate lies at the floor.
fn usual_rim_m(kind: Kind) -> f64 {
    match kind {
        Kind::Toilet | Kind::Bath => 0.38,
        Kind::Basin => 0.79,
        Kind::Shower => 0.03,
        Kind::FloorDrain => 0.0,
        _ => 0.9,
    }
}

/// The drain system of a home; node `i` stands for component `i`.
///
/// A cleanout that hangs on a drain as a stub counts as an opening of that drain.
#[must_use]
#[expect(clippy::cast_possible_truncation, reason = "a home has fewer than 2³² components")]
pub fn drain(home: &Home, places: &Places<'_>) -> Drain {
    let waste = |link: &&Connection| link.carries.net() == Net::Waste;
    let goes_on: Vec<&str> =
        home.connections.iter().filter(waste).map(|link| link.from.as_str()).collect();
    let pieces = home
        .connections
        .iter()
        .filter(waste)
        .filter_map(|link| {
            let (mut from, mut to) = (places.of(&link.from)?, places.of(&link.to)?);
            let lower = &home.components[to];
            if lower.kind == Kind::Cleanout && !goes_on.contains(&lower.id.as_str()) {
                (from, to) = (to, from);
            }
            let length_m = link.length_m.unwrap_or(2.0);
            let upper = home.components[from].kind;
            // Hair, grease and toys stop at the trap; roots and bellies come with length. The
            // figures are a rough guess of common practice and only rank what is possible anyway.
            let at_trap = upper.runs_water() || home.components[to].kind == Kind::Trap;
            let weight = length_m + if at_trap { 4.0 } else { 1.0 };
            Some(Piece { from: from as Node, to: to as Node, length_m, weight })
        })
        .collect();
    // A home that marks no space as outdoors does not tell which are, but for those that hold what stands
    // indoors only: there nobody should open a cap.
    let tells = home.spaces.iter().any(|space| space.outdoors);
    let is_outdoors = |space: &Space| {
        let holds = |c: &Component| c.space.as_ref() == Some(&space.id) && stands_indoors(c.kind);
        let is_told = tells || home.components.iter().any(holds);
        is_told.then_some(space.outdoors)
    };
    let nodes = home
        .components
        .iter()
        .map(|component| {
            let kind = component.kind;
            let floor_m = home.level_of(component).map_or(0.0, |level| level.elevation_m);
            let height_m = component.at.map(|(_, _, z)| floor_m + z);
            let space = component.space.as_deref().and_then(|id| home.space(id));
            Place {
                outfall: kind.is_outfall(),
                rim_m: kind
                    .is_drain_opening()
                    .then(|| height_m.unwrap_or(floor_m + usual_rim_m(kind))),
                cap: (kind == Kind::Cleanout)
                    .then(|| Cap { height_m, outdoors: space.and_then(is_outdoors) }),
                crown_m: None,
                stops_backflow: kind.stops_backflow(),
                runs: kind.runs_water(),
            }
        })
        .collect();
    Drain { pieces, nodes }
}

/// True for what stands indoors only (common practice): of what may stand outdoors in a mild climate,
/// such as a shower or a panel, nothing follows.
fn stands_indoors(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::Toilet
            | Kind::Basin
            | Kind::Bath
            | Kind::Dishwasher
            | Kind::WashingMachine
            | Kind::IceMaker
            | Kind::WaterHeater
            | Kind::SmokeAlarm
            | Kind::Thermostat
    )
}

/// Where each component stands in the home's list.
#[derive(Debug, Clone, Default)]
pub struct Places<'a> {
    by_id: std::collections::BTreeMap<&'a str, usize>,
}

impl<'a> Places<'a> {
    /// The places of a home's components. Time: components × log components.
    #[must_use]
    pub fn of_home(home: &'a Home) -> Self {
        Self {
            by_id: home.components.iter().enumerate().map(|(i, c)| (c.id.as_str(), i)).collect(),
        }
    }

    /// The place of the component with this id.
    #[must_use]
    pub fn of(&self, id: &str) -> Option<usize> {
        self.by_id.get(id).copied()
    }
}

/// For each component, true if it controls fire sprinklers and nothing else: everything that people
/// use and that it usually feeds is a sprinkler riser. Such a valve is never shut to save water.
///
/// Time: components × connections at worst.
#[must_use]
pub fn sprinkler_controls(home: &Home, places: &Places<'_>) -> Vec<bool> {
    let count = home.components.len();
    let mut controls = vec![false; count];
    if !home.components.iter().any(|c| c.kind == Kind::SprinklerRiser) {
        return controls;
    }
    let mut below: Vec<Vec<usize>> = vec![Vec::new(); count];
    for link in &home.connections {
        if let (Net::Water, Some(from), Some(to)) =
            (link.carries.net(), places.of(&link.from), places.of(&link.to))
        {
            below[from].push(to);
        }
    }
    for (index, component) in home.components.iter().enumerate() {
        if !component.kind.isolates(Net::Water) {
            continue;
        }
        let mut seen = vec![false; count];
        let mut stack = vec![index];
        let (mut sprinklers, mut others) = (false, false);
        while let Some(at) = stack.pop() {
            for &next in &below[at] {
                if !std::mem::replace(&mut seen[next], true) {
                    let kind = home.components[next].kind;
                    sprinklers |= kind == Kind::SprinklerRiser;
                    others |= kind != Kind::SprinklerRiser && kind.is_served();
                    stack.push(next);
                }
            }
        }
        controls[index] = sprinklers && !others;
    }
    controls
}
