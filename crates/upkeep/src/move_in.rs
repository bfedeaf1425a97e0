//! The things to do once after moving in, made from what the map holds.

use std::collections::BTreeSet;

use quarterturn_estimate::duct::{Bend, Code, Elbow, Turn, longest};
use quarterturn_estimate::si::length::{foot, meter};
use quarterturn_guidance::{
    Catalogue, Caution, Fill, contact_for, count, fill, in_force, last_day, told_day,
};
use quarterturn_home::{Component, Date, Home, Kind, Medium, MovedIn, Role, Units};
use quarterturn_network::{Places, sprinkler_controls};
use serde::Serialize;

use crate::part::{Part, is_ours, is_workable};
use crate::table::{cautions, once};

/// Something to do once after moving in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct MoveInItem {
    /// Its id, which a tick refers to. It stays the same while the map keeps what it is about.
    pub id: String,
    /// What is done.
    pub title: String,
    /// How.
    pub how: String,
    /// What it is done to.
    pub parts: Vec<Part>,
    /// What could hurt.
    pub cautions: Vec<Caution>,
    /// Where it comes from.
    pub source: String,
    /// The tick, if it is done.
    pub done: Option<MovedIn>,
}

/// The move-in list of a home on a day, in the order of `assets/upkeep/move_in.ron` and then of the
/// home's file. An empty home has none but to fill in the numbers.
#[must_use]
pub fn move_in_list(home: &Home, today: Date, words: &Catalogue) -> Vec<MoveInItem> {
    let mut list = List { home, words, items: Vec::new() };
    list.numbers();
    list.all_of("boundary", |component| component.boundary);
    list.all_of("main", |c| {
        matches!(c.kind, Kind::Panel | Kind::ServiceDisconnect) && is_ours(home, c)
    });
    list.shutoffs();
    list.all_of("meter", |c| c.kind == Kind::WaterMeter);
    list.each("cleanout", |c| c.kind == Kind::Cleanout && is_ours(home, c));
    list.gfcis();
    list.all_of("alarms", |c| c.kind == Kind::SmokeAlarm && is_ours(home, c));
    list.each("dryer-cover", |component| component.duct.is_some());
    list.ducts();
    list.each("washer-box", |c| c.kind == Kind::WashingMachine && is_ours(home, c));
    list.each("fan-box", |c| c.kind == Kind::Lampholder && is_ours(home, c));
    list.each("account", |component| has_account(home, component));
    list.each("heater", |c| c.kind == Kind::WaterHeater && is_ours(home, c));
    list.all_of("gas", |component| component.kind == Kind::GasMeter);
    list.all_of("sump", |c| matches!(c.kind, Kind::SumpPump | Kind::SumpPit | Kind::EjectorPit));
    list.all_of("floats", |component| component.kind == Kind::FloatSwitch);
    list.sprinklers();
    list.all_of("generator", |component| component.kind == Kind::Generator);
    list.warranties(today);
    list.items
}

struct List<'a> {
    home: &'a Home,
    words: &'a Catalogue,
    items: Vec<MoveInItem>,
}

impl List<'_> {
    fn push(&mut self, template: &str, id: String, parts: &[&Component], fills: &[Fill<'_>]) {
        let listed = once(template);
        let ids = listed.map_or(&[] as &[String], |listed| &listed.cautions);
        let done = self.home.move_in.iter().find(|tick| tick.item == id).cloned();
        self.items.push(MoveInItem {
            title: self.words.fill(&format!("move-in-{template}"), fills),
            how: self.words.fill(&format!("move-in-{template}-how"), fills),
            parts: parts.iter().map(|c| Part::of(self.home, c, self.words)).collect(),
            cautions: cautions(ids, self.words),
            source: listed.map_or_else(String::new, |listed| listed.source.clone()),
            id,
            done,
        });
    }

    /// One item for all components of a sort.
    fn all_of(&mut self, template: &str, wanted: impl Fn(&Component) -> bool) {
        let home = self.home;
        let parts: Vec<&Component> = home.components.iter().filter(|c| wanted(c)).collect();
        if !parts.is_empty() {
            self.push(template, template.to_owned(), &parts, &[]);
        }
    }

    /// An item for each component of a sort.
    fn each(&mut self, template: &str, wanted: impl Fn(&Component) -> bool) {
        let home = self.home;
        for component in home.components.iter().filter(|c| wanted(c)) {
            let fills = [fill("device", &component.name)];
            self.push(template, format!("{template}-{}", component.id), &[component], &fills);
        }
    }

    /// Numbers that are missing: the emergency number, and those of contacts without one.
    fn numbers(&mut self) {
        let home = self.home;
        let known = |role: Role| contact_for(home, role).is_some_and(|c| c.phone.is_some());
        let mut missing = Vec::new();
        if home.emergency_phone.is_none() && !known(Role::Emergency) {
            missing.push(self.words.text("role-emergency"));
        }
        let without = home.contacts.iter().filter(|c| c.phone.is_none());
        missing.extend(without.filter(|c| c.role != Some(Role::Emergency)).map(|c| c.name.clone()));
        if !missing.is_empty() {
            let list = self.words.list(&missing);
            self.push("number", "number".to_owned(), &[], &[fill("list", &list)]);
        }
    }

    /// The water shutoffs that anyone may work, an item for each room.
    fn shutoffs(&mut self) {
        let home = self.home;
        let places = Places::of_home(home);
        let sprinklers = sprinkler_controls(home, &places);
        let valves: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| c.kind == Kind::IsolatingValve && is_workable(home, c))
            .filter(|c| places.of(&c.id).and_then(|p| sprinklers.get(p)) != Some(&true))
            .collect();
        let rooms = home.spaces.iter().map(|space| Some(space.id.as_str())).chain([None]);
        for room in rooms {
            let here: Vec<&Component> =
                valves.iter().copied().filter(|c| c.space.as_deref() == room).collect();
            if here.is_empty() {
                continue;
            }
            let name = match room.and_then(|id| home.space(id)) {
                Some(space) => space.name.clone(),
                None => self.words.text("upkeep-no-place"),
            };
            let id = room.map_or_else(|| "shutoffs".to_owned(), |id| format!("shutoffs-{id}"));
            #[expect(clippy::cast_precision_loss, reason = "a room has few valves")]
            let fills = [fill("space", &name), count("count", here.len() as f64)];
            self.push("shutoffs", id, &here, &fills);
        }
    }

    /// What hangs on each GFCI: all that is wired on from it.
    fn gfcis(&mut self) {
        let home = self.home;
        for gfci in home.components.iter().filter(|c| c.kind == Kind::Gfci && is_workable(home, c))
        {
            let mut reached: BTreeSet<&str> = BTreeSet::from([gfci.id.as_str()]);
            let mut stack = vec![gfci.id.as_str()];
            while let Some(at) = stack.pop() {
                for link in home.connections.iter().filter(|l| l.carries == Medium::Power) {
                    if link.from == at && reached.insert(&link.to) {
                        stack.push(&link.to);
                    }
                }
            }
            let on_it = home.components.iter().filter(|component| {
                component.id != gfci.id
                    && reached.contains(component.id.as_str())
                    && component.kind.is_served()
            });
            let mut parts = vec![gfci];
            parts.extend(on_it);
            let lamp = gfci.lamp.clone().unwrap_or_default();
            let told = if gfci.lamp.is_some() { "yes" } else { "no" };
            #[expect(clippy::cast_precision_loss, reason = "few outlets hang on one device")]
            let fills = [
                fill("device", &gfci.name),
                count("count", (parts.len() - 1) as f64),
                fill("told", told),
                fill("lamp", &lamp),
            ];
            self.push("gfci", format!("gfci-{}", gfci.id), &parts, &fills);
        }
    }

    /// Whether each dryer's duct is short enough.
    fn ducts(&mut self) {
        let home = self.home;
        for dryer in &home.components {
            let Some(duct) = &dryer.duct else { continue };
            let elbow = |turn| Elbow { bend: Bend::Mitered, turn };
            let repeat = |turn, times: u32| (0..times).map(move |_| elbow(turn));
            let elbows: Vec<Elbow> = repeat(Turn::Quarter, duct.quarter_elbows)
                .chain(repeat(Turn::Eighth, duct.eighth_elbows))
                .collect();
            let most = longest(Code::Irc, &elbows);
            let fits = match duct.length_m {
                None => "unknown",
                // A centimetre is within what a tape measure tells.
                Some(length) if length <= most.get::<meter>() + 0.01 => "yes",
                Some(_) => "no",
            };
            let length = duct.length_m.unwrap_or_default();
            let (unit, length, most) = match home.units {
                Units::Us => ("feet", length / 0.3048, most.get::<foot>()),
                Units::Si => ("meters", length, most.get::<meter>()),
            };
            let tenth = |value: f64| (value * 10.0).round() / 10.0;
            let fills = [
                fill("device", &dryer.name),
                fill("fits", fits),
                fill("unit", unit),
                count("length", tenth(length)),
                // Rounded down: what is told must not be more than what may be.
                count("most", ((most * 10.0) + 1e-6).floor() / 10.0),
                count("elbows", f64::from(duct.quarter_elbows + duct.eighth_elbows)),
            ];
            self.push("dryer-duct", format!("dryer-duct-{}", dryer.id), &[dryer], &fills);
        }
    }

    fn sprinklers(&mut self) {
        let home = self.home;
        let places = Places::of_home(home);
        let controls = sprinkler_controls(home, &places);
        self.all_of("sprinkler", |c| {
            c.kind == Kind::SprinklerRiser
                || places.of(&c.id).and_then(|place| controls.get(place)) == Some(&true)
        });
    }

    /// The warranties in force, with their last days.
    fn warranties(&mut self, today: Date) {
        let home = self.home;
        for warranty in home.warranties.iter().filter(|w| in_force(w, today)) {
            let last = last_day(warranty).map(|day| told_day(self.words, day));
            let contact = warranty.contact.as_deref().and_then(|id| home.contact(id));
            let parts: Vec<&Component> =
                warranty.covers.iter().filter_map(|id| home.component(id)).collect();
            let fills = [
                fill("warranty", &warranty.name),
                fill("end", if last.is_some() { "known" } else { "open" }),
                fill("until", &last.unwrap_or_default()),
                fill("known", if contact.is_some() { "yes" } else { "no" }),
                fill("name", contact.map_or("", |contact| contact.name.as_str())),
            ];
            self.push("warranty", format!("warranty-{}", warranty.id), &parts, &fills);
        }
    }
}

/// True for what someone keeps an account for, or what talks to something else by wire or air: it
/// must be moved to the new owner, and may have to work by hand until then.
fn has_account(home: &Home, component: &Component) -> bool {
    let kept = component.owner.as_deref().and_then(|id| home.contact(id));
    let signals = || {
        home.connections.iter().any(|link| {
            link.carries == Medium::Signal && (link.from == component.id || link.to == component.id)
        })
    };
    match component.kind {
        Kind::Thermostat => is_ours(home, component),
        Kind::Appliance => is_ours(home, component) && (kept.is_some() || signals()),
        _ => kept.is_some_and(|contact| contact.role == Some(Role::Alarm)),
    }
}
