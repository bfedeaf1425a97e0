//! Finding out which breaker, or which GFCI, each outlet and light hangs on: what to switch off, where
//! to walk, and what follows from what went dead.
//!
//! Several breakers are switched off at once and everything is walked past; what is dead hangs on one
//! of them. Twenty breakers take five walks so, instead of nineteen one at a time (`halving.rs`). The
//! main stays on, and so does what someone depends on, until a person says that it may go off.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_home::{Component, Connection, Edit, Home, Kind, Medium, Net};

use crate::circuit_hints::{
    NONE_LIKELY, SAME_ROOM, ask_first, breakers_above, feeds_breakers, has_feed, is_tried,
    likelihood, panel_of, protected,
};
use crate::halving::{Belief, choose, height, most_walks};
use crate::lines::{is_downstream, may_connect};
use crate::said::Said;
use crate::way::{seconds_between, walk_order};
use crate::words::says;

/// What is switched.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Switched {
    /// Breakers, off and on.
    Breakers,
    /// GFCIs, by their test and reset buttons.
    Gfcis,
}

/// A search under way. It holds ids and ticks, and nothing of the home: it may be kept while the
/// home is edited.
#[derive(Debug, Clone, PartialEq)]
pub struct Search {
    switched: Switched,
    devices: Vec<Device>,
    things: Vec<Thing>,
    walks: Vec<Walk>,
    thorough: bool,
}

/// A breaker or GFCI of a search.
#[derive(Debug, Clone, PartialEq)]
pub struct Device {
    /// Its id.
    pub id: String,
    /// Why a person must be asked before it goes off; empty for most.
    pub ask: Vec<Said>,
    /// True once a person has said that it may go off.
    pub confirmed: bool,
    /// True for a GFCI whose test button does not trip it.
    pub broken: bool,
}

/// Something whose device is looked for.
#[derive(Debug, Clone, PartialEq)]
struct Thing {
    /// Its id, or id and half: `outlet#1`.
    key: String,
    id: String,
    /// Belief in each device before any walk; the last is none of them.
    prior: Belief,
    room: Option<String>,
}

/// One walk: what was off, and what was seen.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Walk {
    /// Ids of the devices that were off.
    pub off: Vec<String>,
    /// Keys of the things that were dead.
    pub dead: BTreeSet<String>,
    /// Keys of the things that were live. What is in neither was not looked at.
    pub live: BTreeSet<String>,
}

/// What to do next.
#[derive(Debug, Clone, PartialEq)]
pub struct NextWalk {
    /// Ids of the devices to switch off, in the home's order.
    pub off: Vec<String>,
    /// Keys of the things to look at, in the order of the walk.
    pub visit: Vec<String>,
    /// Likely seconds: to switch, to walk and look, to come back and switch on.
    pub seconds: f64,
    /// Walks that are needed at most, this one included.
    pub walks_at_most: u32,
    /// Walks that one at a time would take, from here on.
    pub one_at_a_time: usize,
    /// True if it only makes sure that nothing was ticked wrongly.
    pub is_check: bool,
}

/// What a search has found.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Found {
    /// Thing by key, and its device.
    pub on: Vec<(String, String)>,
    /// Keys of things that hang on none of the devices.
    pub on_none: Vec<String>,
    /// Keys of things of which more than one device is left, with these.
    pub open: Vec<(String, Vec<String>)>,
    /// Keys of things whose ticks contradict each other: look again.
    pub odd: Vec<String>,
    /// What does not fit the map; nothing is changed there.
    pub conflicts: Vec<Said>,
    /// What to write onto the map.
    pub edits: Vec<Edit>,
}

/// Seconds to switch a breaker off and on again, and to look whether something is dead. Common
/// practice, no source.
const SWITCH_SECONDS: f64 = 4.0;
const LOOK_SECONDS: f64 = 8.0;
/// What switching a device costs, as a share of what a walk tells: clocks are to be set again.
const SWITCH_COST: f64 = 0.02;

impl Search {
    /// A search for the breakers of everything on power whose breaker is not known, among the
    /// breakers of these panels (all if none is given). Nothing if there is nothing to find.
    #[must_use]
    pub fn breakers(home: &Home, panels: &[String]) -> Option<Self> {
        let feeds_panel = |id: &str| {
            home.connections.iter().any(|l| {
                l.from == id
                    && l.carries == Medium::Power
                    && home.component(&l.to).is_some_and(|c| c.kind == Kind::Panel)
            })
        };
        let of_panel = |c: &Component| {
            panels.is_empty()
                || c.panel.as_ref().is_some_and(|p| panels.contains(p))
                || home.connections.iter().any(|l| l.to == c.id && panels.contains(&l.from))
        };
        let devices: Vec<&Component> = home
            .components
            .iter()
            // The main stays on.
            .filter(|c| c.kind == Kind::Breaker && !says(&c.name, "words-main"))
            .filter(|c| of_panel(c) && !feeds_panel(&c.id))
            .collect();
        let known = protected(home);
        let things: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| is_tried(c.kind) && !known.contains(c.id.as_str()))
            .collect();
        Self::of(home, Switched::Breakers, &devices, &things, true)
    }

    /// A search for what hangs on which GFCI, among the outlets that are not known to hang on one.
    #[must_use]
    pub fn gfcis(home: &Home) -> Option<Self> {
        let devices: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| c.kind == Kind::Gfci && !feeds_breakers(home, &c.id))
            .collect();
        let on_gfci = |c: &Component| {
            devices.iter().any(|gfci| is_downstream(home, Net::Power, &gfci.id, &c.id))
        };
        let things: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| matches!(c.kind, Kind::Receptacle | Kind::Light) && !on_gfci(c))
            .collect();
        Self::of(home, Switched::Gfcis, &devices, &things, true)
    }

    fn of(
        home: &Home,
        switched: Switched,
        devices: &[&Component],
        things: &[&Component],
        none_possible: bool,
    ) -> Option<Self> {
        if devices.is_empty() || things.is_empty() {
            return None;
        }
        let things = things
            .iter()
            .map(|thing| {
                let mut prior: Belief =
                    devices.iter().map(|d| likelihood(home, d, thing)).collect();
                prior.push(if none_possible { NONE_LIKELY } else { 0.0 });
                Thing {
                    key: thing.id.clone(),
                    id: thing.id.clone(),
                    prior,
                    room: thing.space.clone(),
                }
            })
            .collect();
        let devices = devices
            .iter()
            .map(|d| Device {
                id: d.id.clone(),
                ask: ask_first(home, d),
                confirmed: false,
                broken: false,
            })
            .collect();
        Some(Self { switched, devices, things, walks: Vec::new(), thorough: false })
    }

    /// What is switched.
    #[must_use]
    pub fn switched(&self) -> Switched {
        self.switched
    }

    /// The devices.
    #[must_use]
    pub fn devices(&self) -> &[Device] {
        &self.devices
    }

    /// Keys of the things, in the home's order.
    #[must_use]
    pub fn things(&self) -> Vec<&str> {
        self.things.iter().map(|thing| thing.key.as_str()).collect()
    }

    /// The walks so far.
    #[must_use]
    pub fn walks(&self) -> &[Walk] {
        &self.walks
    }

    /// Looks at everything in every walk and adds one walk at the end, so that any one slip of a tick
    /// is noticed.
    pub fn set_thorough(&mut self, thorough: bool) {
        self.thorough = thorough;
    }

    /// A person says that a device may go off, or that it may not after all.
    pub fn confirm(&mut self, id: &str, may_go_off: bool) {
        for device in self.devices.iter_mut().filter(|d| d.id == id) {
            device.confirmed = may_go_off;
        }
    }

    /// A GFCI does not trip by its button: it no longer protects anyone, and tells nothing.
    pub fn set_broken(&mut self, id: &str, broken: bool) {
        for device in self.devices.iter_mut().filter(|d| d.id == id) {
            device.broken = broken;
        }
    }

    /// The two halves of an outlet are on two breakers: each is looked for by itself, from the
    /// first walk on. The keys are `<id>#1` and `<id>#2`.
    pub fn split(&mut self, id: &str) {
        let Some(place) = self.things.iter().position(|t| t.key == id) else { return };
        let thing = self.things.remove(place);
        for half in [2, 1] {
            let key = format!("{id}#{half}");
            self.things.insert(place, Thing { key, ..thing.clone() });
        }
        for walk in &mut self.walks {
            walk.dead.remove(id);
            walk.live.remove(id);
        }
    }

    /// Writes a walk down.
    pub fn record(&mut self, walk: Walk) {
        self.walks.push(walk);
    }

    /// Takes the last walk back; false if there is none.
    pub fn undo(&mut self) -> bool {
        self.walks.pop().is_some()
    }

    /// What must be said and done before anything is switched.
    #[must_use]
    pub fn cautions(&self, home: &Home) -> Vec<Said> {
        let mut list = match self.switched {
            Switched::Breakers => {
                vec![Said::new("find-cover-stays-on"), Said::new("find-main-stays-on")]
            }
            Switched::Gfcis => vec![Said::new("find-press-test")],
        };
        list.push(Said::new("find-dry"));
        list.push(Said::new("find-tell-everyone"));
        list.push(Said::new("find-depend"));
        let mut names: Vec<String> = self
            .things
            .iter()
            .filter_map(|thing| home.component(&thing.id))
            .filter(|c| {
                c.is_critical() || says(&c.name, "words-freezer") || says(&c.name, "words-medical")
            })
            .map(|c| c.name.clone())
            .collect();
        names.dedup();
        if !names.is_empty() {
            list.push(Said::new("find-depend-named").list("list", names));
        }
        list.push(Said::new("find-computers"));
        list.push(Said::new("find-lamp"));
        list
    }

    /// What to switch off next and where to walk; `None` if no walk tells any more.
    #[must_use]
    pub fn next_walk(&self, home: &Home) -> Option<NextWalk> {
        let beliefs = self.beliefs();
        let allowed = self.allowed();
        let cost = vec![SWITCH_COST; self.devices.len()];
        let chosen = choose(&beliefs, &allowed, &cost);
        let is_check = chosen.is_none();
        let off = match chosen {
            Some(off) => off,
            None => self.check_walk(&allowed)?,
        };
        let open = |belief: &Belief| belief.iter().filter(|share| **share > 0.0).count() > 1;
        let seen = self.thorough || is_check;
        let visit: Vec<&Thing> = self
            .things
            .iter()
            .zip(&beliefs)
            .filter(|(_, belief)| seen || open(belief))
            .map(|(thing, _)| thing)
            .collect();
        let ids: Vec<String> = self
            .devices
            .iter()
            .zip(&off)
            .filter(|(_, off)| **off)
            .map(|(device, _)| device.id.clone())
            .collect();
        let start = ids.first().cloned().unwrap_or_default();
        let stops: Vec<&str> = visit.iter().map(|thing| thing.id.as_str()).collect();
        let (order, walking) = match self.switched {
            Switched::Breakers => walk_order(home, &start, &stops),
            // Each button is where it is: they are on the way as well.
            Switched::Gfcis => {
                let (order, walking) = walk_order(home, &start, &stops);
                let buttons: f64 = ids
                    .iter()
                    .zip(ids.iter().skip(1))
                    .map(|(a, b)| 2.0 * seconds_between(home, a, b))
                    .sum();
                (order, walking + buttons)
            }
        };
        let visit: Vec<String> =
            order.iter().filter_map(|&at| visit.get(at)).map(|thing| thing.key.clone()).collect();
        let count = |n: usize| f64::from(u32::try_from(n).unwrap_or(u32::MAX));
        let seconds =
            walking + 2.0 * SWITCH_SECONDS * count(ids.len()) + LOOK_SECONDS * count(visit.len());
        let left: BTreeSet<usize> = beliefs
            .iter()
            .filter(|belief| open(belief))
            .flat_map(|belief| {
                (0..self.devices.len()).filter(|&d| belief.get(d).is_some_and(|s| *s > 0.0))
            })
            .collect();
        let more = u32::from(self.thorough && !is_check);
        Some(NextWalk {
            off: ids,
            visit,
            seconds,
            walks_at_most: if is_check { 1 } else { most_walks(&beliefs, &allowed) + more },
            one_at_a_time: left.len().max(1),
            is_check,
        })
    }

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

    fn allowed(&self) -> Vec<bool> {
        self.devices.iter().map(|d| (d.ask.is_empty() || d.confirmed) && !d.broken).collect()
    }

    /// What is still possible for each thing, by all walks so far.
    fn beliefs(&self) -> Vec<Belief> {
        let mut beliefs: Vec<Belief> = self.things.iter().map(|t| t.prior.clone()).collect();
        for walk in &self.walks {
            let off: Vec<bool> = self.devices.iter().map(|d| walk.off.contains(&d.id)).collect();
            for (thing, belief) in self.things.iter().zip(&mut beliefs) {
                let dead = match (walk.dead.contains(&thing.key), walk.live.contains(&thing.key)) {
                    (true, _) => true,
                    (_, true) => false,
                    _ => continue,
                };
                for (device, share) in belief.iter_mut().enumerate() {
                    if off.get(device).copied().unwrap_or(false) != dead {
                        *share = 0.0;
                    }
                }
            }
        }
        self.same_room(&mut beliefs);
        beliefs
    }

    /// Outlets of one room are often on one breaker: where one is found, its neighbours lean to the
    /// same. It changes what is likely, never what is possible.
    fn same_room(&self, beliefs: &mut [Belief]) {
        let only = |belief: &Belief| {
            let mut left = belief.iter().enumerate().filter(|(_, share)| **share > 0.0);
            let first = left.next().map(|(device, _)| device);
            first.filter(|_| left.next().is_none())
        };
        let mut known: BTreeMap<&str, BTreeSet<usize>> = BTreeMap::new();
        for (thing, belief) in self.things.iter().zip(beliefs.iter()) {
            if let (Some(room), Some(device)) = (&thing.room, only(belief)) {
                known.entry(room).or_default().insert(device);
            }
        }
        for (thing, belief) in self.things.iter().zip(beliefs.iter_mut()) {
            let Some(near) = thing.room.as_deref().and_then(|room| known.get(room)) else {
                continue;
            };
            for &device in near {
                if let Some(share) = belief.get_mut(device) {
                    *share *= SAME_ROOM;
                }
            }
        }
    }

    /// One more walk that notices any one slip, if all was looked at in each walk: the devices that
    /// were off an odd number of times. A single parity bit makes all codes differ in two places.
    fn check_walk(&self, allowed: &[bool]) -> Option<Vec<bool>> {
        let enough = height(self.devices.len() + 1);
        let checked = self.walks.len() > usize::try_from(enough).unwrap_or(usize::MAX);
        if !self.thorough || self.walks.is_empty() || checked {
            return None;
        }
        let off: Vec<bool> = self
            .devices
            .iter()
            .zip(allowed)
            .map(|(d, allowed)| {
                let times = self.walks.iter().filter(|w| w.off.contains(&d.id)).count();
                *allowed && times % 2 == 1
            })
            .collect();
        let again = self.walks.iter().any(|walk| {
            self.devices.iter().zip(&off).all(|(d, off)| walk.off.contains(&d.id) == *off)
        });
        (off.contains(&true) && !again).then_some(off)
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

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::Catalogue;
    use quarterturn_home::{History, open};

    /// A panel with breakers named so, and outlets in rooms.
    fn home(breakers: &[&str], outlets: &[(&str, Kind)]) -> Home {
        let mut home = Home::default();
        home.components.push(Component::new("panel", Kind::Panel, "Panel"));
        for (n, name) in breakers.iter().enumerate() {
            let mut b = Component::new(&format!("b{n}"), Kind::Breaker, name);
            b.circuit = Some(n.to_string());
            home.components.push(b);
            home.connections.push(Connection::new("panel", &format!("b{n}"), Medium::Power));
        }
        for (id, kind) in outlets {
            home.components.push(Component::new(id, *kind, id));
        }
        home
    }

    /// Walks as the search wishes, with the things really on these devices, and ticks one wrongly.
    fn run(
        search: &mut Search,
        home: &Home,
        truth: &BTreeMap<&str, &str>,
        slip: Option<(usize, &str)>,
    ) {
        while let Some(next) = search.next_walk(home) {
            let mut walk = Walk { off: next.off.clone(), ..Walk::default() };
            for key in &next.visit {
                let mut dead =
                    truth.get(key.as_str()).is_some_and(|b| next.off.iter().any(|o| o == b));
                dead ^= slip == Some((search.walks().len(), key.as_str()));
                if dead {
                    walk.dead.insert(key.clone())
                } else {
                    walk.live.insert(key.clone())
                };
            }
            search.record(walk);
            assert!(search.walks().len() < 12);
        }
    }

    #[test]
    fn walks_find_every_breaker_and_write_them_onto_the_map() {
        let names = ["Kitchen", "Bath", "Hall", "Den", "Porch", "Lights", "Bedroom"];
        let home = home(
            &names,
            &[
                ("kitchen outlet", Kind::Receptacle),
                ("x", Kind::Receptacle),
                ("lamp", Kind::Light),
                ("alone", Kind::Receptacle),
            ],
        );
        let mut search = Search::breakers(&home, &[]).unwrap();
        let first = search.next_walk(&home).unwrap();
        assert_eq!((first.walks_at_most, first.one_at_a_time, first.visit.len()), (3, 7, 4));
        let truth = BTreeMap::from([("kitchen outlet", "b0"), ("x", "b4"), ("lamp", "b5")]);
        run(&mut search, &home, &truth, None);
        assert!(search.walks().len() <= 3);
        let found = search.found(&home);
        let on: Vec<(&str, &str)> =
            found.on.iter().map(|(t, b)| (t.as_str(), b.as_str())).collect();
        assert_eq!(on, [("kitchen outlet", "b0"), ("x", "b4"), ("lamp", "b5")]);
        assert_eq!(found.on_none, ["alone"]);
        let mut history = History::new(home);
        for edit in found.edits {
            history.apply(edit).unwrap();
        }
        let now = history.home();
        assert_eq!(now.component("x").unwrap().circuit.as_deref(), Some("4"));
        assert_eq!(now.component("x").unwrap().panel.as_deref(), Some("panel"));
        assert!(now.connections.contains(&Connection::new("b5", "lamp", Medium::Power)));
        // Only what is still unknown is looked for next time.
        assert_eq!(Search::breakers(now, &[]).unwrap().things(), ["alone"]);
    }

    #[test]
    fn undoing_a_walk_is_as_if_it_had_not_been() {
        let home = home(&["A", "B", "C", "D"], &[("x", Kind::Receptacle), ("y", Kind::Light)]);
        let mut search = Search::breakers(&home, &[]).unwrap();
        let before = search.clone();
        let next = search.next_walk(&home).unwrap();
        search.record(Walk {
            off: next.off,
            dead: BTreeSet::from(["x".to_owned()]),
            ..Walk::default()
        });
        assert_ne!(search.next_walk(&home), before.next_walk(&home));
        assert!(search.undo() && !search.undo());
        assert_eq!(search, before);
    }

    #[test]
    fn what_someone_depends_on_stays_on_until_a_person_says_so() {
        let mut home = home(
            &["Kitchen", "Oxygen concentrator", "Freezer", "Hall", "Main breaker"],
            &[("x", Kind::Receptacle), ("y", Kind::Receptacle)],
        );
        home.components.push(Component::new("pump", Kind::SumpPump, "Sump pump"));
        home.connections.push(Connection::new("b3", "pump", Medium::Power));
        let mut search = Search::breakers(&home, &[]).unwrap();
        let asked: Vec<&str> =
            search.devices().iter().filter(|d| !d.ask.is_empty()).map(|d| d.id.as_str()).collect();
        assert_eq!(asked, ["b1", "b2", "b3"]);
        assert!(search.devices().iter().all(|d| d.id != "b4"), "the main is switched");
        let off = |search: &Search| search.next_walk(&home).unwrap().off;
        assert_eq!(off(&search), ["b0"]);
        search.confirm("b2", true);
        assert!(!off(&search).contains(&"b1".to_owned()));
        let truth = BTreeMap::from([("x", "b1"), ("y", "b2")]);
        run(&mut search, &home, &truth, None);
        let found = search.found(&home);
        assert_eq!(found.on, [("y".to_owned(), "b2".to_owned())]);
        let (key, left) = &found.open[0];
        assert_eq!((key.as_str(), left.as_slice()), ("x", &["b1".to_owned(), "b3".to_owned()][..]));
        for said in search.devices().iter().flat_map(|d| &d.ask).chain(&search.cautions(&home)) {
            for language in Catalogue::languages() {
                let text = said.text(&Catalogue::in_language(language.tag));
                assert!(!text.contains(['{', '[']), "{text}");
            }
        }
    }

    #[test]
    fn a_thorough_search_notices_any_one_slip() {
        let home = home(&["A", "B", "C", "D", "E"], &[("x", Kind::Receptacle), ("y", Kind::Light)]);
        for on in ["b0", "b1", "b2", "b3", "b4", "none"] {
            let truth = BTreeMap::from([("x", on), ("y", "b2")]);
            let mut clean = Search::breakers(&home, &[]).unwrap();
            clean.set_thorough(true);
            run(&mut clean, &home, &truth, None);
            assert!(clean.found(&home).odd.is_empty());
            for walk in 0..clean.walks().len() {
                let mut search = Search::breakers(&home, &[]).unwrap();
                search.set_thorough(true);
                run(&mut search, &home, &truth, Some((walk, "x")));
                let found = search.found(&home);
                assert_eq!(found.odd, ["x"], "{on}, slip in walk {walk}: {:?}", search.walks());
            }
        }
    }

    #[test]
    fn a_split_outlet_is_two() {
        let home = home(&["A", "B", "C"], &[("x", Kind::Receptacle), ("y", Kind::Receptacle)]);
        let mut search = Search::breakers(&home, &[]).unwrap();
        search.split("x");
        assert_eq!(search.things(), ["x#1", "x#2", "y"]);
        let truth = BTreeMap::from([("x#1", "b0"), ("x#2", "b2"), ("y", "b1")]);
        run(&mut search, &home, &truth, None);
        let mut history = History::new(home.clone());
        for edit in search.found(&home).edits {
            history.apply(edit).unwrap();
        }
        let feeds = history.home().connections.iter().filter(|l| l.to == "x").count();
        assert_eq!(feeds, 2);
    }

    #[test]
    fn gfcis_of_the_example_are_found_again_when_forgotten() {
        let text = include_str!("../../../examples/two-storey/home.ron");
        let mut home = open("home.ron", text).home.unwrap();
        // What hangs on the garage's GFCI is remembered as hanging straight on the breaker.
        let behind: Vec<String> = home
            .connections
            .iter()
            .filter(|l| l.from == "garage-gfci" && l.carries == Medium::Power)
            .map(|l| l.to.clone())
            .collect();
        for line in &mut home.connections {
            if line.from == "garage-gfci" {
                line.from = "br-baths-outdoor".to_owned();
            }
        }
        let mut search = Search::gfcis(&home).unwrap();
        let ids: Vec<String> = search.devices().iter().map(|d| d.id.clone()).collect();
        for id in &ids {
            search.confirm(id, true);
        }
        let truth: BTreeMap<&str, &str> =
            behind.iter().map(|id| (id.as_str(), "garage-gfci")).collect();
        run(&mut search, &home, &truth, None);
        assert!(search.walks().len() <= usize::try_from(height(ids.len() + 1)).unwrap());
        let found = search.found(&home);
        assert!(found.conflicts.is_empty(), "{:?}", found.conflicts);
        let mut history = History::new(home);
        for edit in found.edits {
            history.apply(edit).unwrap();
        }
        for id in &behind {
            assert!(is_downstream(history.home(), Net::Power, "garage-gfci", id), "{id}");
        }
    }

    #[test]
    fn what_the_map_knows_otherwise_is_told_and_not_changed() {
        let mut home = home(&["A", "B"], &[("x", Kind::Receptacle), ("box", Kind::JunctionBox)]);
        home.components.push(Component::new("g", Kind::Gfci, "GFCI"));
        home.connections.push(Connection::new("b0", "g", Medium::Power));
        home.connections.push(Connection::new("b1", "x", Medium::Power));
        let mut search = Search::gfcis(&home).unwrap();
        run(&mut search, &home, &BTreeMap::from([("x", "g")]), None);
        let found = search.found(&home);
        assert_eq!(found.edits, []);
        assert_eq!(found.conflicts[0].key, "find-conflict");
        search.set_broken("g", true);
        assert!(search.found(&home).conflicts.iter().any(|s| s.key == "find-gfci-broken"));
    }
}
