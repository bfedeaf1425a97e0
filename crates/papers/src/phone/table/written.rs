//! The tables as JSON.

use std::collections::BTreeMap;

use quarterturn_guidance::{Catalogue, Group, System, Trouble, fill};
use quarterturn_home::{Component, Date, DeviceState, Home};
use serde::Serialize;

use super::{NONE, Tables, as_number, emergency_phone, place_to_tell};
use crate::phone::escape::json_in_script;
use crate::phone::plan::{self, Plans};
use crate::phone::system::{bits, group_number, number};
use crate::phone::{NoPhonePage, dial};

/// Name, number as written, number to dial, hours. The emergency number has no name of the home's.
type ContactRow<'a> = (&'a str, &'a str, Option<String>, &'a str);
/// Name, picture, where that lies (left, top, width, height), 1 if it is mirrored.
type LevelRow<'a> = (&'a str, &'a str, Vec<i32>, i32);
/// Name, level, corners, 1 if it is outdoors.
type SpaceRow<'a> = (&'a str, i32, Vec<i32>, i32);
/// Name, tag, system, space, place on the level, note, a bit for each system that it is in.
type PartRow<'a> = (&'a str, &'a str, i32, i32, Vec<i32>, i32, i32);
/// Id, title, hint, group, system, 1 if one leaves at once, spots.
type TroubleRow = (&'static str, i32, i32, i32, i32, i32, Vec<[i32; 4]>);

/// The page's data as it is written. The names are short because each stands once, and the rows
/// have none at all.
#[derive(Debug, Serialize)]
struct Written<'a> {
    home: &'a str,
    /// What one tells of where one is.
    address: &'a str,
    /// Language of the home's own names.
    own: Option<&'a str>,
    langs: Vec<(&'a str, &'a str)>,
    emergency: Option<(&'a str, Option<String>)>,
    contacts: Vec<ContactRow<'a>>,
    usual: i32,
    ui: BTreeMap<&'static str, i32>,
    words: Vec<Vec<&'a str>>,
    /// Whole degrees clockwise from the top of the plans, if it is known.
    north: Option<i32>,
    levels: Vec<LevelRow<'a>>,
    spaces: Vec<SpaceRow<'a>>,
    parts: Vec<PartRow<'a>>,
    lists: &'a [Vec<i32>],
    cautions: &'a [[i32; 2]],
    steps: &'a [[i32; 5]],
    calls: &'a [[i32; 5]],
    sets: &'a [[i32; 5]],
    checks: &'a [[i32; 3]],
    answers: &'a [[i32; 10]],
    nodes: &'a [[i32; 4]],
    troubles: Vec<TroubleRow>,
}

/// The words that the page says by itself. Places are filled by the page: `{n}`.
const UI: [(&str, &[&str]); 66] = [
    ("what", &[]),
    ("what-hint", &[]),
    ("leave-first", &[]),
    ("short-gas-smell", &[]),
    ("short-co-alarm", &[]),
    ("short-fire", &[]),
    ("short-wires-down", &[]),
    ("group-life", &[]),
    ("group-water", &[]),
    ("group-drains", &[]),
    ("group-power", &[]),
    ("group-cooling", &[]),
    ("group-control", &[]),
    ("back", &[]),
    ("start-again", &[]),
    ("where", &[]),
    ("where-hint", &[]),
    ("search", &[]),
    ("none-found", &["words"]),
    ("no-spots", &[]),
    ("room-unknown", &[]),
    ("in-room", &["space"]),
    ("anywhere", &["space"]),
    ("hidden", &[]),
    ("signal-danger", &[]),
    ("signal-warning", &[]),
    ("signal-caution", &[]),
    ("signal-notice", &[]),
    ("more-cautions", &[]),
    ("not-mapped", &[]),
    ("step-of", &["n", "of"]),
    ("all-done", &[]),
    ("done", &[]),
    ("next", &[]),
    ("wont-turn", &[]),
    ("wont-switch-off", &[]),
    ("wont-stay-on", &[]),
    ("wont-open", &[]),
    ("cannot-reach", &[]),
    ("no-help", &[]),
    ("no-further", &[]),
    ("no-further-hint", &[]),
    ("left-out", &["device"]),
    ("prove", &["prove"]),
    ("whole-floor", &[]),
    ("closer", &[]),
    ("plan-of", &["level", "device"]),
    ("plan-of-north", &["level", "device", "degrees"]),
    ("all-steps", &[]),
    ("goes-off", &[]),
    ("call", &[]),
    ("call-besides", &[]),
    ("no-number", &[]),
    ("read-out", &[]),
    ("other-ways", &[]),
    ("suspects", &[]),
    ("check", &[]),
    ("relief", &[]),
    ("restore", &[]),
    ("emergency", &["phone"]),
    ("emergency-missing", &[]),
    ("things", &[]),
    ("whereabouts", &["space", "level"]),
    ("not-listed", &[]),
    ("not-sure", &[]),
    ("emergency-name", &[]),
];

impl Tables<'_> {
    /// All of it, written so that it may stand in a `script` element.
    pub(in crate::phone) fn write(
        mut self,
        plans: &Plans,
        today: Date,
    ) -> Result<String, NoPhonePage> {
        let home = self.home;
        let mut ui: BTreeMap<&'static str, i32> = UI
            .iter()
            .map(|(key, places)| {
                let holders: Vec<(&str, String)> =
                    places.iter().map(|place| (*place, format!("{{{place}}}"))).collect();
                let number = self.say(|words| {
                    let fills: Vec<_> = holders.iter().map(|(n, h)| fill(n, h)).collect();
                    words.fill(&format!("phone-{key}"), &fills)
                });
                (*key, number)
            })
            .collect();
        ui.insert("title", self.say(|w| w.fill("phone-title", &[fill("home", &home.name)])));
        ui.insert("north-letter", self.say(|w| w.text("north-letter")));
        let day = today.to_string();
        ui.insert("made-on", self.say(|w| w.fill("phone-made-on", &[fill("date", &day)])));
        let troubles: Vec<_> = Trouble::ALL
            .iter()
            .map(|&trouble| {
                let title = self.say(|w| w.text(&format!("trouble-{}", trouble.id())));
                let hint = self.say(|w| w.text(&format!("trouble-{}-hint", trouble.id())));
                let system = System::of_trouble(trouble).map_or(NONE, number);
                let group = group_number(Group::of(trouble));
                let leave = i32::from(trouble.is_leave_first());
                let spots = self.spots.get(&trouble).cloned().unwrap_or_default();
                (trouble.id(), title, hint, group, system, leave, spots)
            })
            .collect();
        let notes: Vec<i32> = home.components.iter().map(|c| self.note(c)).collect();
        let level = |id: &Option<String>| {
            let at = home.levels.iter().position(|l| Some(&l.id) == id.as_ref());
            at.map_or(NONE, as_number)
        };
        let space = |id: &Option<String>| {
            let at = home.spaces.iter().position(|s| Some(&s.id) == id.as_ref());
            at.map_or(NONE, as_number)
        };
        let usual = home.usual_space.as_deref().and_then(|id| home.space(id));
        let phone = emergency_phone(home);
        let written = Written {
            home: &home.name,
            address: place_to_tell(home),
            own: home.language.as_deref(),
            langs: Catalogue::languages().iter().map(|l| (l.tag, l.name.as_str())).collect(),
            emergency: phone.map(|phone| (phone, dial::tel(phone))),
            contacts: numbers(home),
            usual: usual.map_or(NONE, |usual| level(&usual.level)),
            ui,
            words: (0..self.catalogues.len())
                .map(|language| {
                    let texts = self.words.list.iter();
                    texts.map(|texts| texts.get(language).map_or("", String::as_str)).collect()
                })
                .collect(),
            north: home.north_deg.and_then(plan::whole_degrees),
            levels: plans
                .floors
                .iter()
                .map(|floor| match &floor.picture {
                    Some((picture, at)) => {
                        let mirrored = i32::from(floor.mirrored);
                        (floor.name.as_str(), picture.uri.as_str(), at.to_vec(), mirrored)
                    }
                    None => (floor.name.as_str(), "", Vec::new(), 0),
                })
                .collect(),
            spaces: home
                .spaces
                .iter()
                .map(|s| {
                    let outdoors = i32::from(s.outdoors);
                    (s.name.as_str(), level(&s.level), plan::outline(&s.outline), outdoors)
                })
                .collect(),
            parts: home
                .components
                .iter()
                .zip(notes)
                .map(|(c, note)| {
                    let system = number(System::of(home, c, None));
                    let at = plan::place(home, c).map_or_else(Vec::new, |at| at.to_vec());
                    let tag = c.tag.as_deref().unwrap_or_default();
                    let all = bits(&System::all_of(home, c));
                    (c.name.as_str(), tag, system, space(&c.space), at, note, all)
                })
                .collect(),
            lists: &self.lists.list,
            cautions: &self.cautions.list,
            steps: &self.steps.list,
            calls: &self.calls.list,
            sets: &self.sets.list,
            checks: &self.checks.list,
            answers: &self.answers.list,
            nodes: &self.nodes.list,
            troubles,
        };
        Ok(json_in_script(&serde_json::to_string(&written)?))
    }

    /// What to know of a device before touching it.
    fn note(&mut self, component: &Component) -> i32 {
        let state = match component.state() {
            DeviceState::Stiff => Some("phone-stiff"),
            DeviceState::LeaksBy => Some("phone-leaks-by"),
            DeviceState::Works | DeviceState::Seized | DeviceState::Unknown => None,
        };
        let note = component.note.as_deref().map(str::trim).filter(|note| !note.is_empty());
        match (state, note) {
            (None, None) => NONE,
            (Some(state), None) => self.say(|words| words.text(state)),
            (None, Some(note)) => self.say(|_| note.to_owned()),
            // Two paragraphs, not one sentence: the page keeps the line end.
            (Some(state), Some(note)) => {
                self.say(|words| [words.text(state).as_str(), note].join("\n"))
            }
        }
    }
}

/// The emergency number, and every contact that has another.
fn numbers(home: &Home) -> Vec<ContactRow<'_>> {
    let emergency = emergency_phone(home);
    let others = home.contacts.iter().filter_map(|contact| {
        let hours = contact.hours.as_deref().unwrap_or_default();
        Some((contact.name.as_str(), contact.phone.as_deref()?, hours))
    });
    emergency
        .into_iter()
        .map(|phone| ("", phone, ""))
        .chain(others.filter(|(_, phone, _)| Some(*phone) != emergency))
        .map(|(name, phone, hours)| (name, phone, dial::tel(phone), hours))
        .collect()
}
