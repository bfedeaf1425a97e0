//! What a search has found, and what that means for the map.

use quarterturn_home::{Connection, Edit, Home, Kind, Medium, Net};

use super::{Found, Search, Switched, Thing};
use crate::circuit_hints::{breakers_above, has_feed, panel_of};
use crate::lines::{is_downstream, may_connect};
use crate::said::Said;

impl Search {
    /// What is known by now, and what to write onto the map.
    #[must_use]
    pub fn found(&self, home: &Home) -> Found {
        let mut found = Found::default();
        for (thing, belief) in self.things.iter().zip(self.beliefs()) {
            let left: Vec<usize> =
                belief.iter().enumerate().filter(|(_, s)| **s > 0.0).map(|(d, _)| d).collect();
            let key = thing.key.clone();
            match left.as_slice() {
                [] => found.odd.push(key),
                [only] => match self.devices.get(*only) {
                    Some(device) => {
                        self.write(home, thing, &device.id, &mut found);
                        found.on.push((key, device.id.clone()));
                    }
                    None => found.on_none.push(key),
                },
                more => {
                    let ids = more.iter().filter_map(|d| self.devices.get(*d));
                    found.open.push((key, ids.map(|d| d.id.clone()).collect()));
                }
            }
        }
        for device in self.devices.iter().filter(|d| d.broken) {
            let name = home.component(&device.id).map_or(device.id.as_str(), |c| c.name.as_str());
            found.conflicts.push(Said::new("find-gfci-broken").with("name", name));
        }
        found
    }

    /// What a find means for the map.
    fn write(&self, home: &Home, thing: &Thing, device: &str, found: &mut Found) {
        let (Some(what), Some(by)) = (home.component(&thing.id), home.component(device)) else {
            return;
        };
        if is_downstream(home, Net::Power, device, &thing.id) {
            return;
        }
        let feeds: Vec<&Connection> = home
            .connections
            .iter()
            .filter(|l| l.to == thing.id && l.carries == Medium::Power)
            .collect();
        let line = Connection::new(device, &thing.id, Medium::Power);
        let told = |key| Said::new(key).with("name", &what.name).with("device", &by.name);
        match (self.switched, feeds.as_slice()) {
            (Switched::Breakers, []) => {}
            (Switched::Breakers, feeds) => {
                // It hangs on a box that itself hangs on nothing: that box is on the breaker.
                let loose = feeds.iter().all(|l| !has_feed(home, &l.from));
                if loose {
                    let from = feeds.first().map_or("", |l| l.from.as_str());
                    let up = Connection::new(device, from, Medium::Power);
                    let edit = Edit::Connect(Box::new(up));
                    if !found.edits.contains(&edit)
                        && may_connect(home, device, from, Medium::Power).is_ok()
                    {
                        found.edits.push(edit);
                    }
                    return;
                }
                if !thing.key.contains('#') {
                    found.conflicts.push(told("find-conflict"));
                    return;
                }
            }
            (Switched::Gfcis, feeds) => {
                if is_downstream(home, Net::Power, &thing.id, device) {
                    found.conflicts.push(told("find-gfci-before"));
                    return;
                }
                let ours = breakers_above(home, &thing.id);
                let theirs = breakers_above(home, device);
                if !ours.is_empty() && !theirs.is_empty() && ours.is_disjoint(&theirs) {
                    found.conflicts.push(told("find-conflict"));
                    return;
                }
                let off = feeds.iter().map(|l| Edit::Disconnect(Box::new((*l).clone())));
                found.edits.extend(off);
            }
        }
        if may_connect(home, device, &thing.id, Medium::Power).is_err() {
            found.conflicts.push(told("find-conflict"));
            return;
        }
        if by.kind == Kind::Breaker && by.circuit.is_some() && what.circuit != by.circuit {
            let mut known = what.clone();
            known.circuit.clone_from(&by.circuit);
            known.panel = by.panel.clone().or_else(|| panel_of(home, device));
            found.edits.push(Edit::PutComponent(Box::new(known)));
        }
        found.edits.push(Edit::Connect(Box::new(line)));
    }
}
