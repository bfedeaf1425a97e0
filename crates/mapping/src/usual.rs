//! What a room usually has, guessed from its name.

use quarterturn_home::{Home, Space};

use crate::said::Said;
use crate::sets::{DATA, SetInfo, sets};
use crate::words::{longest, says};

/// A set that a room usually has.
#[derive(Debug, Clone, PartialEq)]
pub struct Usual {
    /// The set.
    pub set: SetInfo,
    /// True if such a room hardly ever lacks it.
    pub always: bool,
    /// True if the map has what it is known by in this room already.
    pub there: bool,
}

/// The sort of room that a name tells, as the id of a text (`room-<id>`) and for [`usual`].
///
/// Of several sorts that fit, the one with the longest word: a "laundry bathroom" is a laundry only
/// if the list says so, a "half bath" is no bath.
#[must_use]
pub fn room_kind(name: &str) -> Option<&'static str> {
    let mut best: Option<(usize, &'static str)> = None;
    for room in &DATA.rooms {
        let fit = longest(name, list(&room.id)?);
        if fit > best.map_or(0, |(most, _)| most) {
            best = Some((fit, room.id.as_str()));
        }
    }
    best.map(|(_, id)| id)
}

/// The name of a sort of room.
#[must_use]
pub fn room_name(id: &str) -> Option<Said> {
    ROOMS.iter().find(|(room, ..)| *room == id).map(|(_, _, key)| Said::new(key))
}

/// What a room usually has, what it hardly ever lacks first; nothing if its name tells nothing.
#[must_use]
pub fn usual(home: &Home, space: &Space) -> Vec<Usual> {
    let kind = room_kind(&space.name).or(if space.outdoors { Some("outdoors") } else { None });
    let Some(room) = DATA.rooms.iter().find(|room| Some(room.id.as_str()) == kind) else {
        return Vec::new();
    };
    let all = sets();
    let ids =
        room.always.iter().map(|id| (id, true)).chain(room.often.iter().map(|id| (id, false)));
    ids.filter_map(|(id, always)| {
        let set = all.iter().find(|set| set.id == id)?.clone();
        // There is but one street service, panel and house drain: anywhere counts.
        let of_the_house = matches!(set.id, "water-service" | "house-drain" | "gas-meter");
        let there = home.components.iter().any(|c| {
            let here = c.space.as_deref() == Some(space.id.as_str());
            let is_main =
                set.id != "water-service" || says(&c.name, "words-main") || c.id.contains("main");
            c.kind == set.kind && is_main && (here || of_the_house)
        });
        Some(Usual { set, always, there })
    })
    .collect()
}

fn list(room: &str) -> Option<&'static str> {
    ROOMS.iter().find(|(id, ..)| *id == room).map(|(_, list, _)| *list)
}

/// Each sort of room, the list of its words and the key of its name.
const ROOMS: &[(&str, &str, &str)] = &[
    ("half-bath", "words-half-bath", "room-half-bath"),
    ("bath", "words-bath", "room-bath"),
    ("kitchen", "words-kitchen", "room-kitchen"),
    ("laundry", "words-laundry", "room-laundry"),
    ("utility", "words-utility", "room-utility"),
    ("garage", "words-garage", "room-garage"),
    ("outdoors", "words-outdoors", "room-outdoors"),
    ("basement", "words-basement", "room-basement"),
    ("attic", "words-attic", "room-attic"),
    ("bedroom", "words-bedroom", "room-bedroom"),
    ("living", "words-living", "room-living"),
    ("hall", "words-hall", "room-hall"),
];

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::Catalogue;
    use quarterturn_home::open;

    #[test]
    fn rooms_are_known_by_their_names_in_both_languages() {
        let expected = [
            ("Half bath", "half-bath"),
            ("Main bath", "bath"),
            ("Family bathroom upstairs", "bath"),
            ("Ba\u{f1}o", "bath"),
            ("Aseo", "half-bath"),
            ("Kitchen", "kitchen"),
            ("Cocina", "kitchen"),
            ("Laundry room", "laundry"),
            ("Lavander\u{ed}a", "laundry"),
            ("Mechanical room", "utility"),
            ("North bedroom", "bedroom"),
            ("Dormitorio", "bedroom"),
            ("Living room", "living"),
            ("Front yard", "outdoors"),
            ("Jard\u{ed}n", "outdoors"),
            ("Attic", "attic"),
            ("Garage", "garage"),
            ("Upstairs landing", "hall"),
        ];
        for (name, kind) in expected {
            assert_eq!(room_kind(name), Some(kind), "{name}");
        }
        for name in ["", "Zimmer 4", "x", "Orangery"] {
            assert_eq!(room_kind(name), None, "{name}");
        }
    }

    #[test]
    fn every_room_of_the_file_has_words_and_a_name() {
        assert_eq!(DATA.rooms.len(), ROOMS.len());
        let known: Vec<&str> = sets().iter().map(|set| set.id).collect();
        for room in &DATA.rooms {
            assert!(list(&room.id).is_some(), "{}", room.id);
            for set in room.always.iter().chain(&room.often) {
                assert!(known.contains(&set.as_str()), "{}: {set}", room.id);
            }
            for language in Catalogue::languages() {
                let text = room_name(&room.id).unwrap().text(&Catalogue::in_language(language.tag));
                assert!(!text.starts_with('['), "{text}");
            }
        }
    }

    #[test]
    fn what_is_there_is_ticked() {
        let text = include_str!("../../../examples/two-storey/home.ron");
        let home = open("home.ron", text).home.unwrap();
        let kitchen = home.space("kitchen").unwrap();
        let list = usual(&home, kitchen);
        assert_eq!(list[0].set.id, "kitchen-sink");
        assert!(list[0].always && list[0].there, "{:?}", list[0]);
        let mut bare = home.clone();
        bare.components.retain(|c| c.space.as_deref() != Some("kitchen"));
        assert!(usual(&bare, kitchen).iter().all(|usual| !usual.there));
    }
}
