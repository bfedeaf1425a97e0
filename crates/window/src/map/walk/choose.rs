//! Choosing what one stands in front of: by its name, or by what the room usually has.

use egui::{TextEdit, Ui, vec2};
use quarterturn_guidance::{Catalogue, count, fill};
use quarterturn_home::{Component, Kind, Space};
use quarterturn_mapping::{SetInfo, Usual, kind_key, sets, usual};

use super::{Command, MapCommand};
use crate::ask::Command as Press;
use crate::controls::{
    button, card, chosen_button, focus_ring, main_button, section, soft, strong,
};
use crate::map::{MapState, level_to_show};
use crate::matching::{matches, plain};
use crate::tokens::{GAP, Palette, TOUCH, size};
use crate::view::View;

/// Most devices found that are shown: more would have to be read.
const MOST: usize = 14;
/// What a map begins with: where the three nets come in and go out.
const FIRST: [&str; 5] = ["water-service", "house-drain", "panel", "water-heater", "gas-meter"];

/// What is put on the plan.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Pick {
    /// A typical set, by its id.
    Set(String),
    /// A device on its own.
    Kind(Kind),
}

impl Pick {
    /// What it is called.
    pub(crate) fn name(&self, words: &Catalogue) -> String {
        match self {
            Self::Set(id) => {
                let set = sets().into_iter().find(|set| set.id == id);
                set.map_or_else(|| id.clone(), |set| set.name.text(words))
            }
            Self::Kind(kind) => {
                let name = capital(&words.text(&kind_key(*kind)));
                // A set of the same name is placed far more often.
                let same =
                    |set: &SetInfo| set.name.text(words).to_lowercase() == name.to_lowercase();
                if sets().iter().any(same) {
                    words.fill("window-walk-alone", &[fill("kind", &name)])
                } else {
                    name
                }
            }
        }
    }
}

/// The column before anything is picked.
pub(super) fn choose_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let walk = &state.walk;
    ui.add(egui::Label::new(strong(view.text("walk-what"), size::BODY)).wrap());
    search_ui(ui, view, &walk.search, out);
    let rooms = rooms(view, state);
    if !rooms.is_empty() {
        section(ui, &view.text("walk-room"));
        ui.horizontal_wrapped(|ui| {
            for room in &rooms {
                let is_chosen = walk.room.as_deref() == Some(&room.id);
                if chosen_button(ui, &room.name, is_chosen).clicked() {
                    let room = (!is_chosen).then(|| room.id.clone());
                    say(out, Command::Room(room));
                }
            }
        });
    }
    if !plain(&walk.search).is_empty() {
        let found = found(view.words, &walk.search);
        if found.is_empty() {
            ui.add(egui::Label::new(soft(ui, view.text("walk-nothing-found"))).wrap());
        }
        picks_ui(ui, view, found.into_iter().map(|pick| (pick, false)), out);
        return;
    }
    let all = sets();
    let room = walk.room.as_deref().and_then(|id| view.home.space(id));
    let usual = room.map_or_else(Vec::new, |room| usual(view.home, room));
    let first: Vec<(Pick, bool)> = if usual.is_empty() {
        section(ui, &view.text("walk-first"));
        let sets = FIRST.iter().filter_map(|id| all.iter().find(|set| set.id == *id));
        sets.map(|set| (pick(set), view.home.components.iter().any(|c| c.kind == set.kind)))
            .collect()
    } else {
        let fills = [fill("room", room.map_or("", |room| &room.name))];
        section(ui, &view.fill("walk-usual", &fills));
        usual.iter().map(|usual| (pick(&usual.set), usual.there)).collect()
    };
    let rest: Vec<(Pick, bool)> = all
        .iter()
        .map(|set| (pick(set), false))
        .filter(|(pick, _)| first.iter().all(|(other, _)| other != pick))
        .collect();
    picks_ui(ui, view, first.into_iter(), out);
    section(ui, &view.text("walk-sets"));
    picks_ui(ui, view, rest.into_iter(), out);
    ui.add_space(GAP);
    ui.add(egui::Label::new(soft(ui, view.text("walk-search-more"))).wrap());
}

/// What is likely to come after a device that was just put there, as far as it is not there yet: what
/// its room hardly ever lacks and what every map begins with, then what the other rooms hardly ever lack
/// and what its own often has.
pub(super) fn then_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    last: &Component,
    out: &mut Vec<Press>,
) {
    /// Most that are shown: more would have to be read.
    const SHOWN: usize = 8;
    let room = last.space.as_deref().and_then(|id| view.home.space(id));
    let here = room.map_or_else(Vec::new, |room| usual(view.home, room));
    let others =
        rooms(view, state).into_iter().filter(|other| Some(&other.id) != last.space.as_ref());
    let there: Vec<_> = others.flat_map(|room| usual(view.home, room)).collect();
    let all = sets();
    let is_there = |set: &SetInfo| view.home.components.iter().any(|c| c.kind == set.kind);
    let first = FIRST.iter().filter_map(|id| all.iter().find(|set| set.id == *id));
    let first = first.filter(|set| !is_there(set)).map(pick);
    let missing = |list: &[Usual], always: bool| -> Vec<Pick> {
        let list = list.iter().filter(|usual| !usual.there && usual.always == always);
        list.map(|usual| pick(&usual.set)).collect()
    };
    let mut next: Vec<Pick> = Vec::new();
    let likely = missing(&here, true).into_iter().chain(first).chain(missing(&there, true));
    for pick in likely.chain(missing(&here, false)) {
        if !next.contains(&pick) && next.len() < SHOWN {
            next.push(pick);
        }
    }
    if !next.is_empty() {
        ui.add(egui::Label::new(soft(ui, view.text("walk-then"))).wrap());
        picks_ui(ui, view, next.into_iter().map(|pick| (pick, false)), out);
    }
}

/// The column while something waits for its place.
pub(super) fn picked_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    pick: &Pick,
    out: &mut Vec<Press>,
) {
    let walk = &state.walk;
    card(ui, Palette::of(ui).focus_stroke(), |ui| {
        ui.add(egui::Label::new(strong(pick.name(view.words), size::ACT)).wrap());
        ui.add(egui::Label::new(view.text("walk-press")).wrap());
        let counted = match pick {
            Pick::Set(id) => sets().into_iter().find(|set| set.id == id).and_then(|set| set.count),
            Pick::Kind(_) => None,
        };
        if let Some((usual, most)) = counted {
            let now = walk.count.unwrap_or(usual);
            ui.horizontal_wrapped(|ui| {
                for (sign, key, next) in [
                    ("\u{2212}", "walk-fewer", now.saturating_sub(1).max(1)),
                    ("+", "walk-more", (now + 1).min(most)),
                ] {
                    let response = button(ui, sign).accessible_name(view.text(key));
                    focus_ring(ui, &response);
                    if response.clicked() {
                        say(out, Command::Count(next));
                    }
                    if sign != "+" {
                        let n = u32::try_from(now).map_or(0.0, f64::from);
                        ui.label(view.fill("walk-count", &[count("n", n)]));
                    }
                }
            });
        }
        let rooms = rooms(view, state);
        if let Some(level) = level_to_show(view, state).filter(|_| !rooms.is_empty()) {
            ui.add(egui::Label::new(soft(ui, view.text("walk-no-place"))).wrap());
            ui.horizontal_wrapped(|ui| {
                let place = || Command::Place { level: level.id.clone(), at: None };
                for room in &rooms {
                    let text = view.fill("walk-into", &[fill("room", &room.name)]);
                    if pressed(ui, &text) {
                        say(out, Command::Room(Some(room.id.clone())));
                        say(out, place());
                    }
                }
            });
        }
        if pressed(ui, &view.text("walk-not")) {
            say(out, Command::Pick(None));
        }
    });
    ui.add_space(GAP);
    ui.add(egui::Label::new(soft(ui, view.text("canvas-keys"))).wrap());
}

/// What has the words that are searched for: what begins with them first, sets before single devices.
fn found(words: &Catalogue, search: &str) -> Vec<Pick> {
    let mut found: Vec<(u8, Pick)> = Vec::new();
    let all = sets();
    let of_sets = all.iter().map(|set| (pick(set), set.kind));
    let alone = Kind::ALL.iter().map(|&kind| (Pick::Kind(kind), kind));
    for (pick, kind) in of_sets.chain(alone) {
        let name = pick.name(words);
        let also = format!("window-also-{}", kind_key(kind).trim_start_matches("kind-"));
        let also = if words.has(&also) { words.text(&also) } else { String::new() };
        let of_kind = words.text(&kind_key(kind));
        let rank = if plain(&name).starts_with(&plain(search)) {
            0
        } else if matches(search, &name) {
            1
        } else if matches(search, &[name.as_str(), &of_kind, &also].join(" ")) {
            // A service or a drain is more than the valve or cleanout that it is known by.
            let is_more = matches!(pick, Pick::Set(_))
                && matches!(kind, Kind::IsolatingValve | Kind::Cleanout);
            2 + u8::from(is_more)
        } else {
            continue;
        };
        found.push((rank, pick));
    }
    found.sort_by_key(|(rank, _)| *rank);
    found.truncate(MOST);
    found.into_iter().map(|(_, pick)| pick).collect()
}

fn search_ui(ui: &mut Ui, view: &View<'_>, words: &str, out: &mut Vec<Press>) {
    let mut search = words.to_owned();
    let label = view.text("walk-search");
    let edit = TextEdit::singleline(&mut search)
        .id_salt("walk-search")
        .hint_text(label.clone())
        .desired_width(f32::INFINITY)
        .min_size(vec2(TOUCH, TOUCH))
        .align(egui::Align2::LEFT_CENTER);
    let response = ui.add(edit).accessible_name(label);
    if response.changed() {
        say(out, Command::Search(search.clone()));
    }
    let is_entered = response.lost_focus() && ui.input(|i| i.key_pressed(egui::Key::Enter));
    if is_entered && let Some(first) = found(view.words, &search).into_iter().next() {
        say(out, Command::Pick(Some(first)));
    }
}

/// A button for each; what the map has already says so.
fn picks_ui(
    ui: &mut Ui,
    view: &View<'_>,
    picks: impl Iterator<Item = (Pick, bool)>,
    out: &mut Vec<Press>,
) {
    ui.horizontal_wrapped(|ui| {
        for (pick, is_there) in picks {
            let name = pick.name(view.words);
            let fills = [fill("what", &name)];
            let response = if is_there {
                let response = button(ui, &view.fill("walk-there-sign", &fills));
                response.accessible_name(view.fill("walk-there", &fills))
            } else {
                button(ui, &name)
            };
            focus_ring(ui, &response);
            if response.clicked() {
                say(out, Command::Pick(Some(pick)));
            }
        }
    });
}

/// The rooms of the level that is shown, and those on no level.
fn rooms<'a>(view: &View<'a>, state: &MapState) -> Vec<&'a Space> {
    let level = level_to_show(view, state);
    let here = |space: &&Space| match (&space.level, level) {
        (Some(on), Some(level)) => *on == level.id,
        (None, _) | (_, None) => true,
    };
    view.home.spaces.iter().filter(here).collect()
}

fn pick(set: &SetInfo) -> Pick {
    Pick::Set(set.id.to_owned())
}

/// A button; true if it was pressed.
pub(super) fn pressed(ui: &mut Ui, text: &str) -> bool {
    let response = button(ui, text);
    focus_ring(ui, &response);
    response.clicked()
}

/// The button to press next; true if it was pressed.
pub(super) fn main_pressed(ui: &mut Ui, text: &str) -> bool {
    main_button(ui, text).clicked()
}

pub(super) fn say(out: &mut Vec<Press>, command: Command) {
    out.push(Press::Map(MapCommand::Walk(command)));
}

/// With a capital at its beginning, as the first word on a button.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn things_are_found_by_trade_names_in_both_languages() {
        let first = |language: &str, search: &str| {
            found(&Catalogue::in_language(language), search).into_iter().next()
        };
        let set = |id: &str| Some(Pick::Set(id.to_owned()));
        assert_eq!(first("en", "toilet"), set("toilet"));
        assert_eq!(first("en", "main shutoff"), set("water-service"));
        assert_eq!(first("en", "stopcock"), Some(Pick::Kind(Kind::IsolatingValve)));
        assert_eq!(first("en", "lavatory"), set("basin"));
        assert_eq!(first("en", "load center"), set("panel"));
        assert_eq!(first("es", "inodoro"), set("toilet"));
        assert_eq!(first("es", "tablero"), set("panel"));
        assert_eq!(first("en", "xyzzy"), None);
    }

    #[test]
    fn what_a_map_begins_with_is_a_set() {
        for id in FIRST {
            assert!(sets().iter().any(|set| set.id == id), "{id}");
        }
    }
}
