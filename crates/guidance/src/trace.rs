//! The pipes or wires between a device and the spot.

use std::collections::{BTreeSet, VecDeque};

use quarterturn_home::{Home, Net};
use quarterturn_network::{HomeNet, Places};

use crate::{Spot, Trouble};

/// The lines between a device and a spot, each as the ids of the components along it, from the device
/// to the spot.
///
/// One for each line that ends at the spot and that leads there from the device: a sink has a cold and
/// a hot one, and the house main feeds both. Each is the one over the fewest components. A spot that
/// is a connection is reached from its ends, and its far end stands last. They are in the order of the
/// file: by the component at the spot, then by the line that comes in. Empty if nothing of the
/// trouble's system joins them, if the device is at the spot, or if the spot is the whole home.
///
/// Lines are followed the usual way first, past what stands shut on ordinary days: those are what the
/// device cuts. Only where none leads to the spot so, water is followed both ways along a pipe, though
/// never backwards through what lets it run one way only, and then through shut devices as well.
/// Drains are followed from either side, since a cap stands below what it relieves.
///
/// Breadth-first search. Time: (components + connections) for each component at the spot and each of
/// its lines.
///
/// ```
/// use quarterturn_guidance::{Spot, Trouble, trace};
///
/// let text = r#"Home(format: 1, name: "Hut", components: [
///     (id: "main", kind: IsolatingValve, name: "Main"),
///     (id: "pipe", kind: Pipe, name: "Pipe"),
///     (id: "tap", kind: Tap, name: "Tap"),
/// ], connections: [
///     (from: "main", to: "pipe", carries: ColdWater),
///     (from: "pipe", to: "tap", carries: ColdWater),
/// ])"#;
/// let home = quarterturn_home::open("home.ron", text).home.unwrap();
/// let tap = Spot::Component("tap".to_owned());
/// assert_eq!(trace(&home, Trouble::Leak, &tap, "main"), [["main", "pipe", "tap"]]);
/// ```
#[must_use]
pub fn trace(home: &Home, trouble: Trouble, spot: &Spot, device: &str) -> Vec<Vec<String>> {
    let places = Places::of_home(home);
    let Some(device) = places.of(device) else { return Vec::new() };
    let found = nets(trouble)
        .iter()
        .flat_map(|&net| [(net, Follow::Usual), (net, Follow::Open), (net, Follow::Any)])
        .map(|(net, follow)| Lines::of(home, &places, net, follow, device, spot))
        .map(|lines| lines.between(home, &places, device, spot))
        .find(|found| !found.is_empty())
        .unwrap_or_default();
    let id = |place: usize| home.components[place].id.clone();
    found.into_iter().map(|line| line.into_iter().map(id).collect()).collect()
}

/// The nets that a trouble is in, the one that is looked at first in front.
fn nets(trouble: Trouble) -> &'static [Net] {
    match trouble {
        Trouble::Leak | Trouble::ToiletOverflow => &[Net::Water, Net::Waste],
        Trouble::WaterFromAbove | Trouble::NoWater | Trouble::NoHotWater => &[Net::Water],
        Trouble::DrainBacksUp | Trouble::SewageRising => &[Net::Waste],
        Trouble::PitRising => &[Net::Power, Net::Waste],
        Trouble::DeadOutlet
        | Trouble::DeadLight
        | Trouble::DeadArea
        | Trouble::BreakerTrips
        | Trouble::GfciTrips
        | Trouble::Sparks
        | Trouble::Shock
        | Trouble::WaterNearPower
        | Trouble::NotAnswering => &[Net::Power],
        Trouble::CoolingStopped | Trouble::WaterAtAirHandler => {
            &[Net::Condensate, Net::Power, Net::Signal]
        }
        Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire | Trouble::WiresDown => &[Net::Gas],
    }
}

/// Which lines are followed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Follow {
    /// The usual way, past what stands shut.
    Usual,
    /// Any way that it may run, past what stands shut.
    Open,
    /// Any way that it may run.
    Any,
}

/// One net, as it is followed: for each component, those that come next and before.
struct Lines {
    next: Vec<Vec<usize>>,
    before: Vec<Vec<usize>>,
}

impl Lines {
    /// The net of a home; the connection that is the spot itself is not among its lines.
    fn of(
        home: &Home,
        places: &Places<'_>,
        net: Net,
        follow: Follow,
        device: usize,
        spot: &Spot,
    ) -> Self {
        let count = home.components.len();
        let mut lines = Self { next: vec![Vec::new(); count], before: vec![Vec::new(); count] };
        let spot = ends(places, spot);
        let network = HomeNet::of(home, places, net, None).network;
        let both_ways = matches!(net, Net::Waste | Net::Condensate | Net::Signal);
        let usual: BTreeSet<(usize, usize)> = home
            .connections
            .iter()
            .filter(|link| link.carries.net() == net)
            .filter_map(|link| Some((places.of(&link.from)?, places.of(&link.to)?)))
            .collect();
        let is_shut = |place: usize| place != device && home.components[place].normally_shut();
        for &(from, to) in network.arc_list() {
            let (from, to) = (from as usize, to as usize);
            // Behind the components come the bodies of one-way ones, which nothing passes.
            let is_line = from < count && to < count;
            let is_spot = spot == Some((from, to)) || spot == Some((to, from));
            if !is_line || is_spot {
                continue;
            }
            let follows = match follow {
                Follow::Usual => usual.contains(&(from, to)) && !is_shut(from),
                Follow::Open => !is_shut(from),
                Follow::Any => true,
            };
            if !follows {
                continue;
            }
            lines.add(from, to);
            if both_ways {
                lines.add(to, from);
            }
        }
        lines
    }

    fn add(&mut self, from: usize, to: usize) {
        if !self.next[from].contains(&to) {
            self.next[from].push(to);
            self.before[to].push(from);
        }
    }

    fn between(
        &self,
        home: &Home,
        places: &Places<'_>,
        device: usize,
        spot: &Spot,
    ) -> Vec<Vec<usize>> {
        if let Some((from, to)) = ends(places, spot) {
            let sides = [(from, to), (to, from)].into_iter();
            return sides
                .filter_map(|(near, far)| {
                    let mut line = self.shortest(device, near, None)?;
                    line.push(far);
                    // What comes round by the far end is the other side's line.
                    (line.iter().filter(|&&place| place == far).count() == 1).then_some(line)
                })
                .collect();
        }
        let targets: Vec<usize> = match spot {
            Spot::Component(id) => places.of(id).into_iter().collect(),
            Spot::Space(id) => (0..home.components.len())
                .filter(|&place| home.components[place].space.as_deref() == Some(id.as_str()))
                .collect(),
            Spot::Connection(..) | Spot::Home => Vec::new(),
        };
        let mut found: Vec<Vec<usize>> = Vec::new();
        for target in targets.into_iter().filter(|&target| target != device) {
            for &last in &self.before[target] {
                let Some(mut line) = self.shortest(device, last, Some(target)) else { continue };
                line.push(target);
                found.push(line);
            }
        }
        found
    }

    /// The line over the fewest components, of several the one whose connections come first in the
    /// file, that does not pass `past`.
    fn shortest(&self, from: usize, to: usize, past: Option<usize>) -> Option<Vec<usize>> {
        let mut before: Vec<Option<usize>> = vec![None; self.next.len()];
        let mut queue = VecDeque::from([from]);
        while let Some(at) = queue.pop_front() {
            if at == to {
                break;
            }
            for &next in &self.next[at] {
                if next != from && Some(next) != past && before[next].is_none() {
                    before[next] = Some(at);
                    queue.push_back(next);
                }
            }
        }
        let mut line = vec![to];
        let mut at = to;
        while at != from {
            at = before[at]?;
            line.push(at);
        }
        line.reverse();
        Some(line)
    }
}

/// The two components that a spot between them joins.
fn ends(places: &Places<'_>, spot: &Spot) -> Option<(usize, usize)> {
    let Spot::Connection(from, to) = spot else { return None };
    Some((places.of(from)?, places.of(to)?))
}
