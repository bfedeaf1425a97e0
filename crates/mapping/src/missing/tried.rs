//! The home as it would be if something missing were there, to see what that answers.

use quarterturn_guidance::Catalogue;
use quarterturn_home::{Component, Connection, Edit, Home, Kind, Medium, Net, OperableBy};

use super::Fix;
use crate::order::{Lack, lacks};
use crate::propose::{Proposal, accept_all, proposals_for};
use crate::sets::{Wish, place};

/// The home as if something missing had been recorded; `None` if that cannot be tried.
pub(super) fn tried(home: &Home, fix: &Fix, words: &Catalogue) -> Option<Home> {
    let mut then = home.clone();
    match fix {
        Fix::PlaceSet { set, space } => {
            let wish = Wish { set: (*set).to_owned(), space: space.clone(), ..Wish::default() };
            let placed = place(home, &wish, words).ok()?;
            then.components.extend(placed.components);
            then.connections.extend(placed.connections);
            for edit in accept_all(&then, &placed.proposals, None, 0.0) {
                if let Edit::Connect(line) = edit {
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
        .filter(|c| !lacks(before, c).is_empty())
        .take(60)
        .flat_map(|c| proposals_for(then, &c.id))
        .collect();
    for edit in accept_all(then, &lacking, None, 0.0) {
        if let Edit::Connect(line) = edit {
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
