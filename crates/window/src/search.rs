//! Finding a trouble, and where it is, by what someone types on the first page.

use egui::{Key, TextEdit, Ui, vec2};
use quarterturn_guidance::{Catalogue, Spot, Trouble, fill, spots};
use quarterturn_home::Home;

use crate::ask::Command;
use crate::controls::{Tile, button, soft, tile};
use crate::matching::{matches, plain};
use crate::tokens::{SMALL_TILE, TOUCH};
use crate::view::View;
use crate::{place, signs, troubles};

/// Most that is shown: more would have to be read.
const MOST: usize = 12;

/// Something that may be meant.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Hit {
    pub(crate) trouble: Trouble,
    /// Where, if what was typed tells it.
    pub(crate) spot: Option<Spot>,
    /// How it is said.
    title: String,
}

/// What may be meant: troubles by their words, and things that are called so, each with what can be
/// wrong with it. Best first.
pub(crate) fn hits(home: &Home, words: &Catalogue, query: &str) -> Vec<Hit> {
    if plain(query).is_empty() {
        return Vec::new();
    }
    let text = |trouble: Trouble, end: &str| words.text(&format!("trouble-{}{end}", trouble.id()));
    let mut found: Vec<(u8, Hit)> = Vec::new();
    for &trouble in Trouble::ALL {
        let title = text(trouble, "");
        let (hint, others) = (text(trouble, "-hint"), text(trouble, "-words"));
        let rank = if plain(&title).starts_with(&plain(query)) {
            0
        } else if matches(query, &title) {
            1
        } else if matches(query, &[title.as_str(), &hint, &others].join(" ")) {
            2
        } else {
            continue;
        };
        // Where life is in danger, it is told before all else that is as near.
        found.push((
            rank * 2 + u8::from(!trouble.is_leave_first()),
            Hit { trouble, spot: None, title },
        ));
    }
    found.sort_by_key(|(rank, _)| *rank);
    let mut hits: Vec<Hit> = found.into_iter().map(|(_, hit)| hit).collect();
    let mut at_things: Vec<((bool, bool), Hit)> = Vec::new();
    for &trouble in Trouble::ALL {
        for spot in spots(home, trouble) {
            let Spot::Component(id) = &spot else { continue };
            let Some(component) = home.component(id) else { continue };
            let space = component.space.as_deref().and_then(|id| home.space(id));
            let kind = component.kind;
            let parts = [
                Some(component.name.as_str()),
                component.tag.as_deref(),
                space.map(|space| space.name.as_str()),
            ];
            let known_by = parts.into_iter().flatten().collect::<Vec<_>>().join(" ");
            if !(kind.is_served() || kind.is_drain_opening()) || !matches(query, &known_by) {
                continue;
            }
            let name = place::name(home, id);
            let fills = [fill("trouble", &text(trouble, "")), fill("spot", name)];
            let title = words.fill("window-trouble-at", &fills);
            let (said, wanted) = (plain(name), plain(query));
            let rank = (said != wanted, !said.starts_with(&wanted));
            at_things.push((rank, Hit { trouble, spot: Some(spot), title }));
        }
    }
    at_things.sort_by_key(|(rank, _)| *rank);
    hits.extend(at_things.into_iter().map(|(_, hit)| hit));
    hits.truncate(MOST);
    hits
}

/// The box to type into. It takes what is typed without being pressed first.
pub(crate) fn box_ui(ui: &mut Ui, view: &View<'_>, width: f32, out: &mut Vec<Command>) {
    let mut search = view.asked.search.clone();
    let label = view.text("search-trouble");
    let response = ui.add(
        TextEdit::singleline(&mut search)
            .id_salt("search-trouble")
            .hint_text(label.clone())
            .desired_width(width)
            .min_size(vec2(TOUCH, TOUCH))
            .align(egui::Align2::LEFT_CENTER),
    );
    let response = response.accessible_name(label);
    // What one types at once goes here.
    if view.is_new_page {
        response.request_focus();
    }
    if response.changed() {
        out.push(Command::Search(search));
    }
    let entered = response.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
    if let (true, Some(first)) = (entered, view.hits.first()) {
        out.push(Command::PickHit(first.clone()));
    }
}

/// What may be meant.
pub(crate) fn hits_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    if view.hits.is_empty() {
        ui.label(view.fill("none-found-trouble", &[fill("words", &view.asked.search)]));
    }
    let width = ui.available_width().min(720.0);
    for hit in view.hits {
        let key = format!("trouble-{}-hint", hit.trouble.id());
        let hint = view.words.text(&key);
        let shown = Tile {
            end: troubles::end(hit.trouble),
            title: &hit.title,
            hint: &hint,
            label: &hit.title,
            is_small: true,
        };
        let sign = |painter: &egui::Painter, rect, ink| {
            signs::trouble(painter, rect, ink, hit.trouble);
        };
        if tile(ui, width, SMALL_TILE, &shown, sign).clicked() {
            out.push(Command::PickHit(hit.clone()));
        }
    }
    ui.add_space(8.0);
    ui.label(soft(ui, view.text("search-trouble-hint")));
    if button(ui, &view.text("show-all")).clicked() {
        out.push(Command::Search(String::new()));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn first(query: &str, words: &Catalogue) -> Vec<Trouble> {
        let home = quarterturn_home::open("home.ron", crate::builtin::HOME).home.unwrap();
        hits(&home, words, query).iter().map(|hit| hit.trouble).collect()
    }

    #[test]
    fn what_people_call_it_finds_the_trouble() {
        let english = Catalogue::english();
        for (query, trouble) in [
            ("toilet", Trouble::ToiletOverflow),
            ("no light", Trouble::DeadLight),
            ("no power", Trouble::DeadOutlet),
            ("rotten eggs", Trouble::GasSmell),
            ("beeping", Trouble::CoAlarm),
            ("ac", Trouble::CoolingStopped),
            ("burst pipe", Trouble::Leak),
            ("cieling", Trouble::WaterFromAbove),
        ] {
            assert!(first(query, &english).contains(&trouble), "{query}");
        }
        let spanish = Catalogue::in_language("es");
        assert_eq!(first("huele a gas", &spanish).first(), Some(&Trouble::GasSmell));
        assert_eq!(first("inodoro", &spanish).first(), Some(&Trouble::ToiletOverflow));
    }

    #[test]
    fn a_thing_is_found_with_what_can_be_wrong_with_it() {
        let home = quarterturn_home::open("home.ron", crate::builtin::HOME).home.unwrap();
        let hits = hits(&home, &Catalogue::english(), "dishwasher");
        let spot = Spot::Component("dishwasher".to_owned());
        let at: Vec<_> = hits.iter().filter(|hit| hit.spot.as_ref() == Some(&spot)).collect();
        assert!(at.iter().any(|hit| hit.trouble == Trouble::Leak), "{hits:?}");
    }

    #[test]
    fn nothing_typed_finds_nothing_and_every_trouble_has_its_words() {
        for tag in ["en", "es"] {
            let words = Catalogue::in_language(tag);
            assert_eq!(first("  ", &words), []);
            for trouble in Trouble::ALL {
                let key = format!("trouble-{}-words", trouble.id());
                assert!(words.text(&key).split(' ').count() > 3, "{key} {tag}");
            }
        }
    }
}
