//! Finding out which breaker, or which GFCI, each outlet and light hangs on: what to switch off, where
//! to walk, and what follows from what went dead.
//!
//! Several breakers are switched off at once and everything is walked past; what is dead hangs on one
//! of them. Twenty breakers take five walks so, instead of nineteen one at a time (`halving.rs`). The
//! main stays on, and so does what someone depends on, until a person says that it may go off.

mod findings;
mod next;
mod possible;
#[cfg(test)]
mod tests;

use std::collections::BTreeSet;

use quarterturn_home::{Component, Edit, Home, Kind, Medium, Net};

use crate::circuit_hints::{
    NONE_LIKELY, ask_first, feeds_breakers, is_tried, likelihood, protected,
};
use crate::halving::Belief;
use crate::lines::is_downstream;
use crate::said::Said;
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

    /// Keeps to some of the things, by their ids: nothing else is looked at. False, and all are kept,
    /// if none of them is looked for.
    pub fn keep_to(&mut self, ids: &[String]) -> bool {
        let is_wanted = |thing: &Thing| ids.contains(&thing.id);
        if !self.things.iter().any(is_wanted) {
            return false;
        }
        self.things.retain(is_wanted);
        true
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
}
