//! The way round the house on which is ticked what went dead, room by room.

use quarterturn_home::{Home, Space};

/// A room on the way, with what is to be looked at there.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Room<'h> {
    /// `None` for what is in no room.
    pub(super) space: Option<&'h Space>,
    pub(super) stops: Vec<Stop>,
}

/// A thing to look at.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Stop {
    /// Its key in the search.
    pub(super) key: String,
    /// Its name; with its number where it is half of an outlet.
    pub(super) name: String,
}

/// The rooms in the order in which the way comes to each first; what is in a room in the order of the
/// way. A room that the way comes back to is walked through once.
pub(super) fn rooms<'h>(home: &'h Home, visit: &[String]) -> Vec<Room<'h>> {
    let mut rooms: Vec<Room<'h>> = Vec::new();
    for key in visit {
        let (id, half) = key.split_once('#').map_or((key.as_str(), None), |(a, b)| (a, Some(b)));
        let thing = home.component(id);
        let name = thing.map_or(id, |thing| thing.name.as_str());
        let name = half.map_or_else(|| name.to_owned(), |half| format!("{name} ({half})"));
        let space = thing.and_then(|thing| home.space(thing.space.as_deref()?));
        let stop = Stop { key: key.clone(), name };
        match rooms.iter_mut().find(|room| room.space == space) {
            Some(room) => room.stops.push(stop),
            None => rooms.push(Room { space, stops: vec![stop] }),
        }
    }
    rooms
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Component, Kind};

    #[test]
    fn a_room_is_walked_through_once_in_the_order_of_the_way() {
        let mut home = Home::default();
        for id in ["hall", "kitchen"] {
            home.spaces.push(Space {
                id: id.to_owned(),
                name: id.to_owned(),
                level: None,
                outline: Vec::new(),
                outdoors: false,
            });
        }
        for (id, space) in [("a", "kitchen"), ("b", "hall"), ("c", "kitchen"), ("d", "")] {
            let mut outlet = Component::new(id, Kind::Receptacle, id);
            outlet.space = Some(space.to_owned()).filter(|space| !space.is_empty());
            home.components.push(outlet);
        }
        let visit = ["c#1", "d", "b", "a"].map(str::to_owned);
        let told: Vec<(Option<&str>, Vec<String>)> = rooms(&home, &visit)
            .into_iter()
            .map(|room| {
                let names = room.stops.iter().map(|stop| stop.name.clone()).collect();
                (room.space.map(|space| space.id.as_str()), names)
            })
            .collect();
        let names = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect::<Vec<_>>();
        assert_eq!(
            told,
            [
                (Some("kitchen"), names(&["c (1)", "a"])),
                (None, names(&["d"])),
                (Some("hall"), names(&["b"])),
            ]
        );
    }
}
