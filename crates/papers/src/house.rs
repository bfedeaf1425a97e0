//! A home with what every sheet asks of it: names, places, what hangs on what, whom to call.

use std::cell::OnceCell;
use std::collections::BTreeMap;

use quarterturn_guidance::{Answer, Catalogue, Guide, Question, Spot, Trouble, count, fill};
use quarterturn_home::{Component, Home, Level, Role};
use quarterturn_network::{Arriving, Impact, Places};
use serde::Serialize;

use crate::order::Order;
use crate::sign::Sign;

/// Things named in a list before it says how many more there are.
const NAMED: usize = 6;

/// A home, read once for a sheet.
pub(crate) struct House<'a> {
    pub(crate) order: &'a Order<'a>,
    pub(crate) home: &'a Home,
    pub(crate) words: &'a Catalogue,
    pub(crate) places: Places<'a>,
    guide: Guide<'a>,
    impact: Impact,
    before: Arriving,
    shut: Vec<bool>,
    /// For each component, what is off when it is: many sheets ask again and again.
    off: Vec<OnceCell<Vec<usize>>>,
    /// The answer whose numbers end every sheet: asked once.
    leave: OnceCell<Answer>,
}

/// Someone to call.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Number {
    pub(crate) name: String,
    pub(crate) phone: String,
}

impl<'a> House<'a> {
    pub(crate) fn new(order: &'a Order<'a>) -> Self {
        let home = order.home;
        let places = Places::of_home(home);
        let impact = Impact::of(home, &places);
        let shut: Vec<bool> = home.components.iter().map(Component::normally_shut).collect();
        let before = impact.arriving(|place| shut.get(place).copied().unwrap_or_default());
        Self {
            order,
            home,
            words: order.words,
            places,
            guide: Guide::of(home),
            impact,
            before,
            shut,
            off: vec![OnceCell::new(); home.components.len()],
            leave: OnceCell::new(),
        }
    }

    /// The same answer as on the screen.
    pub(crate) fn answer(&self, trouble: Trouble, at: Spot) -> Answer {
        let question = Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() };
        self.guide.answer(&question, self.words, Some(self.order.today))
    }

    /// A text without places to fill.
    pub(crate) fn text(&self, key: &str) -> String {
        self.words.text(key)
    }

    /// What is off when a component is shut or dead: what must be named first in front, then in the
    /// order of the file.
    pub(crate) fn goes_off(&self, component: &Component) -> Vec<&'a Component> {
        let Some(at) = self.places.of(&component.id) else { return Vec::new() };
        let find = || {
            let is_shut = |place: usize| self.shut.get(place).copied().unwrap_or_default();
            self.impact.lost(&self.before, |place| place == at || is_shut(place)).off
        };
        let off = self.off.get(at).map_or(&[][..], |off| off.get_or_init(find));
        let mut off: Vec<&Component> =
            off.iter().filter_map(|&place| self.home.components.get(place)).collect();
        off.retain(|other| other.id != component.id);
        off.sort_by_key(|other| !other.is_critical());
        off
    }

    /// Names in a list that does not grow without end.
    pub(crate) fn few(&self, of: &[&Component]) -> String {
        let names: Vec<String> = of.iter().take(NAMED).map(|c| self.named(c)).collect();
        let more = of.len().saturating_sub(NAMED);
        let list = self.words.list(&names);
        self.words.fill("paper-few", &[count("more", number(more)), fill("list", &list)])
    }

    /// Its name and its tag.
    pub(crate) fn named(&self, component: &Component) -> String {
        match &component.tag {
            Some(tag) => self
                .words
                .fill("device-with-tag", &[fill("name", &component.name), fill("tag", tag)]),
            None => component.name.clone(),
        }
    }

    /// Where it is: space and level.
    pub(crate) fn whereabouts(&self, component: &Component) -> String {
        let space = component.space.as_deref().and_then(|id| self.home.space(id));
        match (space, self.home.level_of(component)) {
            (Some(space), Some(level)) if !space.outdoors => self
                .words
                .fill("paper-place", &[fill("space", &space.name), fill("level", &level.name)]),
            (Some(space), _) => space.name.clone(),
            (None, _) => self.text("paper-place-unknown"),
        }
    }

    pub(crate) fn sign(&self, component: &Component) -> Sign {
        Sign::of(self.home, component)
    }

    /// Levels, highest first, as one draws a house.
    pub(crate) fn levels(&self) -> Vec<&'a Level> {
        let mut levels: Vec<&Level> = self.home.levels.iter().collect();
        levels.sort_by(|a, b| b.elevation_m.total_cmp(&a.elevation_m));
        levels
    }

    /// The emergency number, and the others with what is known of them, the utilities first.
    ///
    /// They are those that every answer ends with.
    pub(crate) fn numbers(&self) -> (Number, Vec<Number>) {
        let answer = self.leave.get_or_init(|| self.answer(Trouble::Fire, Spot::Home));
        let missing = || self.text("no-phone");
        let mut calls = answer.call.iter().map(|call| Number {
            name: call.name.clone(),
            phone: call.phone.clone().unwrap_or_else(missing),
        });
        let emergency = calls
            .next()
            .unwrap_or_else(|| Number { name: self.text("role-emergency"), phone: missing() });
        let mut list: Vec<Number> = calls.collect();
        let called: Vec<&str> =
            answer.call.iter().filter_map(|call| call.contact.as_deref()).collect();
        let others =
            self.home.contacts.iter().filter(|contact| {
                contact.phone.is_some() && !called.contains(&contact.id.as_str())
            });
        list.extend(others.map(|contact| Number {
            name: contact.name.clone(),
            phone: contact.phone.clone().unwrap_or_else(missing),
        }));
        list.retain(|number| *number != emergency);
        (emergency, list)
    }

    /// The numbers that one may need within the hour, of those in [`House::numbers`].
    pub(crate) fn urgent_numbers(&self) -> Vec<Number> {
        let helps = |role: Option<Role>| {
            matches!(
                role,
                Some(
                    Role::WaterUtility
                        | Role::SewerUtility
                        | Role::ElectricityUtility
                        | Role::GasUtility
                        | Role::Plumber
                        | Role::Electrician
                        | Role::Cooling
                        | Role::Manager
                        | Role::Neighbor
                )
            )
        };
        let all = self.numbers().1;
        let called = self.leave.get().map(|answer| answer.call.as_slice()).unwrap_or_default();
        let ends_answers = |number: &Number| called.iter().any(|call| call.name == number.name);
        let is_help = |number: &Number| {
            let contact = self.home.contacts.iter().find(|contact| contact.name == number.name);
            contact.is_some_and(|contact| helps(contact.role))
        };
        all.into_iter().filter(|number| ends_answers(number) || is_help(number)).collect()
    }

    /// The labels of a template, by key.
    pub(crate) fn labels(&self, keys: &[&'static str]) -> BTreeMap<&'static str, String> {
        keys.iter().map(|key| (*key, self.text(key))).collect()
    }
}

/// A count as texts take it.
pub(crate) fn number(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap_or(u32::MAX))
}
