//! What the map of a home lacks or gets wrong, as far as its nets can tell.

use quarterturn_home::{DeviceState, Home, Kind, Net, OperableBy};

use crate::{HomeNet, NO_FEED, Network, Node, Places, as_node, drain, lines_of_defence};

/// Something that the map lacks or gets wrong. Components are given by place in the home.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Finding {
    /// Nothing that anyone in the house may work cuts this off.
    NoIsolation(Net, usize),
    /// Only one device stands between this and the supply; if it fails, nothing is left.
    OneLineOfDefence(Net, usize),
    /// The net has a line to this, but no source reaches it.
    Unreachable(Net, usize),
    /// Shutting this device cuts nothing off that it alone or with others could.
    IsolatesNothing(Net, usize),
    /// Waste from here passes no cleanout on its way out.
    DrainWithoutCleanout(usize),
    /// Waste from here reaches no sewer or septic tank.
    DrainWithoutOutfall(usize),
    /// No breaker is known for this outlet, light or appliance.
    NoBreaker(usize),
    /// A one-way component that nothing leaves or nothing enters.
    OneWayDeadEnd(Net, usize),
    /// Nothing is connected to this.
    NotConnected(usize),
}

/// Everything the nets tell about the map, in a stated order: by kind of finding, net and place.
///
/// Time: for each net one pass, and a bounded search for each device that may isolate nothing.
#[must_use]
pub fn check(home: &Home, places: &Places<'_>) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut connected = vec![false; home.components.len()];
    for link in &home.connections {
        for id in [&link.from, &link.to] {
            if let Some(place) = places.of(id) {
                connected[place] = true;
            }
        }
    }
    for net in [Net::Water, Net::Power, Net::Gas] {
        check_supply(home, &HomeNet::of(home, places, net, None), &mut findings);
    }
    check_drains(home, places, &mut findings);
    for (place, component) in home.components.iter().enumerate() {
        let loose = matches!(component.kind, Kind::Other | Kind::Thermostat | Kind::SmokeAlarm);
        if !connected[place] && !loose {
            findings.push(Finding::NotConnected(place));
        }
    }
    findings.sort();
    findings
}

fn check_supply(home: &Home, net: &HomeNet, findings: &mut Vec<Finding>) {
    let network = &net.network;
    let operable = |node: Node| {
        home.components.get(node as usize).is_some_and(|component| {
            component.operable_by == OperableBy::Anyone
                && !matches!(component.state(), DeviceState::Seized | DeviceState::LeaksBy)
        })
    };
    let lines = lines_of_defence(network, operable);
    for (place, component) in home.components.iter().enumerate() {
        if !net.member[place] || component.kind.is_source(net.net) {
            continue;
        }
        // A leak at the component is a leak at its body.
        let count = lines[net.body[place] as usize];
        let used = component.kind.is_served();
        if count == NO_FEED {
            findings.push(Finding::Unreachable(net.net, place));
        } else if used && count == 0 {
            findings.push(Finding::NoIsolation(net.net, place));
        } else if used && count == 1 {
            findings.push(Finding::OneLineOfDefence(net.net, place));
        }
        let has_load = net.net == Net::Power
            && matches!(
                component.kind,
                Kind::Receptacle | Kind::Gfci | Kind::Light | Kind::Lampholder | Kind::Appliance
            );
        // A residual-current device that stands before the breakers has none before it.
        let before_breakers = component.kind == Kind::Gfci
            && network.out(as_node(place)).iter().any(|&next| {
                home.components.get(next as usize).is_some_and(|c| c.kind == Kind::Breaker)
            });
        if has_load && !before_breakers && !passes_breaker(home, network, as_node(place)) {
            findings.push(Finding::NoBreaker(place));
        }
        if component.kind.is_one_way(net.net) {
            let node = as_node(place);
            let leaves = network.out(node).iter().any(|&next| next != net.body[place]);
            if !leaves || network.feeders(node).is_empty() {
                findings.push(Finding::OneWayDeadEnd(net.net, place));
            }
        }
        if component.kind.isolates(net.net) && !component.normally_shut() {
            let targets =
                |node: Node| home.components.get(node as usize).is_some_and(|c| c.kind.is_served());
            if isolates_nothing(network, as_node(place), targets) == Some(true) {
                findings.push(Finding::IsolatesNothing(net.net, place));
            }
        }
    }
    if net.net == Net::Power {
        for (place, component) in home.components.iter().enumerate() {
            let wired = matches!(
                component.kind,
                Kind::Receptacle | Kind::Gfci | Kind::Light | Kind::Lampholder
            );
            if wired && !net.member[place] {
                findings.push(Finding::NoBreaker(place));
            }
        }
    }
}

/// True if a breaker or fuse stands on every way from the sources to `node`.
fn passes_breaker(home: &Home, network: &Network, node: Node) -> bool {
    let breaker =
        |n: Node| home.components.get(n as usize).is_some_and(|c| c.kind == Kind::Breaker);
    !network.is_fed(&[node], breaker) && network.is_fed(&[node], |_| false)
        || !network.is_fed(&[node], |_| false)
}

/// Whether a device is in no minimal cut of any target; `None` if the search was cut short.
///
/// A device matters to a target if on some simple way from a source to the target through it,
/// shutting every device off that way leaves the way the only one. It is enough to try each simple
/// way. In general that is NP-complete (Fortune, Hopcroft & Wyllie 1980); houses are small, and the
/// search ends after a fixed number of steps.
fn isolates_nothing(
    network: &Network,
    device: Node,
    is_target: impl Fn(Node) -> bool,
) -> Option<bool> {
    /// Steps before the search gives up.
    const STEPS: usize = 20_000;
    let below = network.reached_from(&[device], |_| false);
    let fed = network.is_fed(&[device], |_| false);
    let any =
        fed && (0..below.len()).any(|n| below[n] && is_target(as_node(n)) && as_node(n) != device);
    if !any {
        return Some(true);
    }
    // Ways from the device to a target and back to a source are searched together: first from the
    // device up to a source, then from it down to a target, never through the same node twice.
    let mut search = Search { network, device, steps: STEPS, on_way: vec![false; below.len()] };
    search.on_way[device as usize] = true;
    let matters = search.up(device, &is_target);
    if matters {
        Some(false)
    } else if search.steps == 0 {
        None
    } else {
        Some(true)
    }
}

struct Search<'a> {
    network: &'a Network,
    device: Node,
    steps: usize,
    on_way: Vec<bool>,
}

impl Search<'_> {
    fn up(&mut self, node: Node, is_target: &impl Fn(Node) -> bool) -> bool {
        if self.network.is_source(node) {
            return self.down(self.device, is_target);
        }
        for &feeder in self.network.feeders(node) {
            if self.steps == 0 {
                return false;
            }
            self.steps -= 1;
            if !self.on_way[feeder as usize] {
                self.on_way[feeder as usize] = true;
                if self.up(feeder, is_target) {
                    return true;
                }
                self.on_way[feeder as usize] = false;
            }
        }
        false
    }

    fn down(&mut self, node: Node, is_target: &impl Fn(Node) -> bool) -> bool {
        if node != self.device && is_target(node) && self.is_only_way(node) {
            return true;
        }
        for &next in self.network.out(node) {
            if self.steps == 0 {
                return false;
            }
            self.steps -= 1;
            if !self.on_way[next as usize] {
                self.on_way[next as usize] = true;
                if self.down(next, is_target) {
                    return true;
                }
                self.on_way[next as usize] = false;
            }
        }
        false
    }

    /// True if the target gets nothing once the device and every device off the way are shut.
    fn is_only_way(&self, target: Node) -> bool {
        !self.network.is_fed(&[target], |n| {
            self.network.is_device(n) && (n == self.device || !self.on_way[n as usize])
        })
    }
}

fn check_drains(home: &Home, places: &Places<'_>, findings: &mut Vec<Finding>) {
    let drain = drain(home, places);
    for (place, component) in home.components.iter().enumerate() {
        if !component.kind.is_drain_opening() {
            continue;
        }
        let node = as_node(place);
        if !drain.pieces.iter().any(|piece| piece.from == node) {
            continue;
        }
        let mut seen = vec![false; drain.nodes.len()];
        let mut stack = vec![node];
        let (mut cleanout, mut outfall) = (false, false);
        while let Some(at) = stack.pop() {
            let here = &drain.nodes[at as usize];
            cleanout |= here.cap.is_some();
            outfall |= here.outfall;
            // A cleanout that opens the drain from the side stands above the place it joins.
            let beside = drain.pieces.iter().filter(|p| p.to == at);
            cleanout |=
                at != node && beside.clone().any(|p| drain.nodes[p.from as usize].cap.is_some());
            for piece in drain.pieces.iter().filter(|p| p.from == at) {
                if !std::mem::replace(&mut seen[piece.to as usize], true) {
                    stack.push(piece.to);
                }
            }
        }
        if !outfall {
            findings.push(Finding::DrainWithoutOutfall(place));
        }
        if !cleanout {
            findings.push(Finding::DrainWithoutCleanout(place));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Builder;

    #[test]
    fn a_valve_beside_an_open_pipe_isolates_nothing() {
        let mut b = Builder::default();
        let street = b.source();
        let valve = b.device();
        let (trunk, tap) = (b.node(), b.node());
        b.two_way(street, valve);
        b.two_way(valve, trunk);
        b.two_way(street, trunk);
        b.one_way(trunk, tap);
        assert_eq!(isolates_nothing(&b.build(), valve, |n| n == tap), Some(true));
    }

    #[test]
    fn a_valve_with_another_beside_it_matters_together_with_it() {
        let mut b = Builder::default();
        let street = b.source();
        let (valve, other) = (b.device(), b.device());
        let (trunk, tap) = (b.node(), b.node());
        for v in [valve, other] {
            b.two_way(street, v);
            b.two_way(v, trunk);
        }
        b.one_way(trunk, tap);
        assert_eq!(isolates_nothing(&b.build(), valve, |n| n == tap), Some(false));
    }

    #[test]
    fn a_valve_on_a_dead_end_isolates_nothing() {
        let mut b = Builder::default();
        let street = b.source();
        let (trunk, tap, valve, stub) = (b.node(), b.node(), b.device(), b.node());
        b.two_way(street, trunk);
        b.one_way(trunk, tap);
        b.two_way(trunk, valve);
        b.two_way(valve, stub);
        assert_eq!(isolates_nothing(&b.build(), valve, |n| n == tap), Some(true));
    }
}
