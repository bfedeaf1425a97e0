//! The edit that puts a thing on the map.

use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Closes, Component, Edit, Handle, Home, Kind, Operates, Space};
use quarterturn_mapping::{self as mapping, CannotPlace, kind_key, next_tag};

use super::choose::{Pick, capital};
use crate::place;

/// A point so near to a wall lies in the room behind it, in metres.
const ON_THE_WALL: f64 = 1.0;

/// What is put, and where.
pub(super) struct Wish<'a> {
    pub(super) pick: &'a Pick,
    /// How many of its numbered parts; `None` for as many as usual.
    pub(super) count: Option<usize>,
    /// Id of the level.
    pub(super) level: &'a str,
    /// Where on the level, in metres.
    pub(super) at: Option<(f64, f64)>,
    /// Id of the room that was chosen.
    pub(super) room: Option<&'a str>,
}

/// What is ready to be put on the map.
#[derive(Debug)]
pub(super) struct Ready {
    /// All of it: one undo takes it back.
    pub(super) edit: Edit,
    /// Id of the device that it is known by.
    pub(super) id: String,
    /// Ids of all devices of it.
    pub(super) all: Vec<String>,
}

/// The room that something is put into.
#[derive(Debug, PartialEq)]
pub(super) enum Room {
    /// A room of the home.
    Known(String),
    /// One that the map has to be told first.
    Told(Box<Space>),
    /// None is known.
    None,
}

impl Room {
    pub(super) fn id(&self) -> Option<&str> {
        match self {
            Self::Known(id) => Some(id),
            Self::Told(space) => Some(&space.id),
            Self::None => None,
        }
    }

    /// The edit that tells the map of it.
    pub(super) fn edit(&self) -> Option<Edit> {
        match self {
            Self::Told(space) => Some(Edit::PutSpace(space.clone())),
            Self::Known(_) | Self::None => None,
        }
    }
}

/// The edit that puts it on the map, under one name.
///
/// # Errors
/// If there is no such set, or so many parts it cannot have.
pub(super) fn put(home: &Home, words: &Catalogue, wish: &Wish<'_>) -> Result<Ready, CannotPlace> {
    let room = room(home, wish.level, wish.at, wish.room);
    let mut edits: Vec<Edit> = room.edit().into_iter().collect();
    let told = edits.first().and_then(|edit| edit.made_on(home).ok());
    let home = told.as_ref().unwrap_or(home);
    let space = room.id().map(str::to_owned);
    let (id, name, all) = match wish.pick {
        Pick::Set(set) => {
            let wish = mapping::Wish {
                set: set.clone(),
                space,
                at: wish.at,
                label: None,
                count: wish.count,
            };
            let placed = mapping::place(home, &wish, words)?;
            edits.extend(placed.edits());
            let all = placed.components.iter().map(|component| component.id.clone()).collect();
            let main = placed.components.into_iter().next();
            let (id, name) = main.map_or_else(Default::default, |main| (main.id, main.name));
            (id, name, all)
        }
        Pick::Kind(kind) => {
            let component = alone(home, words, *kind, space, wish.at);
            let (id, name) = (component.id.clone(), component.name.clone());
            edits.push(Edit::PutComponent(Box::new(component)));
            (id.clone(), name, vec![id])
        }
    };
    Ok(Ready { edit: Edit::Named { key: "edit-add", fills: vec![("name", name)], edits }, id, all })
}

/// The room at a point of a level: the one whose outline is round it or close by, else the one that
/// was chosen, else one of the level without an outline, which is made if there is none. A device
/// without a room would be on no level.
pub(super) fn room(home: &Home, level: &str, at: Option<(f64, f64)>, chosen: Option<&str>) -> Room {
    let chosen = chosen.and_then(|id| home.space(id));
    let on_level = |space: &&Space| space.level.as_deref() == Some(level);
    let Some((x, y)) = at else {
        return chosen.map_or(Room::None, |space| Room::Known(space.id.clone()));
    };
    let here = home.spaces.iter().filter(on_level);
    if let Some(space) = here.clone().find(|space| place::is_within(&space.outline, x, y)) {
        return Room::Known(space.id.clone());
    }
    match chosen {
        Some(space) if space.outline.is_empty() && on_level(&space) => {
            return Room::Known(space.id.clone());
        }
        Some(space) if space.outline.is_empty() && space.level.is_none() => {
            let level = Some(level.to_owned());
            return Room::Told(Box::new(Space { level, ..space.clone() }));
        }
        _ => {}
    }
    let near = here
        .clone()
        .map(|space| (far_from(&space.outline, (x, y)), space))
        .filter(|(far, _)| *far <= ON_THE_WALL)
        .min_by(|a, b| a.0.total_cmp(&b.0));
    if let Some((_, space)) = near {
        return Room::Known(space.id.clone());
    }
    if let Some(space) = here.clone().find(|space| space.outline.is_empty()) {
        return Room::Known(space.id.clone());
    }
    let Some(level) = home.level(level) else { return Room::None };
    Room::Told(Box::new(Space {
        id: home.free_id(&level.name),
        name: level.name.clone(),
        level: Some(level.id.clone()),
        outline: Vec::new(),
        outdoors: false,
    }))
}

/// How far a point is from the walls of a room, in metres; infinitely far if they are not known.
fn far_from(outline: &[(f64, f64)], (x, y): (f64, f64)) -> f64 {
    let after = outline.iter().skip(1).chain(outline.first());
    let walls = outline.iter().zip(after).map(|(&(a, b), &(c, d))| {
        let (u, v) = (c - a, d - b);
        let long = u * u + v * v;
        let part =
            if long > 0.0 { (((x - a) * u + (y - b) * v) / long).clamp(0.0, 1.0) } else { 0.0 };
        (x - a - part * u).hypot(y - b - part * v)
    });
    walls.fold(f64::INFINITY, f64::min)
}

/// A device on its own, with what is usual for its kind.
fn alone(
    home: &Home,
    words: &Catalogue,
    kind: Kind,
    space: Option<String>,
    at: Option<(f64, f64)>,
) -> Component {
    let own = capital(&words.text(&kind_key(kind)));
    let name = match space.as_deref().and_then(|id| home.space(id)) {
        Some(space) => words.fill("set-in-space", &[fill("set", &own), fill("space", &space.name)]),
        None => own,
    };
    let mut component = Component::new(&home.free_id(&name), kind, &name);
    component.tag = next_tag(home, kind);
    component.space = space;
    component.at = at.map(|(x, y)| (x, y, usual_height(kind)));
    component.operates = usual_handle(kind).map(|handle| Operates {
        handle: Some(handle),
        closes: Some(usual_way(handle)),
        ..Operates::default()
    });
    component
}

/// How high such a thing is above the floor, in metres (common practice): to be put right on the spot.
pub(super) fn usual_height(kind: Kind) -> f64 {
    match kind {
        Kind::FloorDrain | Kind::Cleanout | Kind::Shower => 0.0,
        Kind::Receptacle | Kind::CondensatePan | Kind::Toilet => 0.4,
        Kind::Switch | Kind::Gfci | Kind::Thermostat => 1.2,
        Kind::Panel | Kind::Breaker | Kind::ServiceDisconnect | Kind::Disconnect => 1.5,
        Kind::Light | Kind::Lampholder | Kind::SmokeAlarm => 2.4,
        Kind::SumpPit | Kind::EjectorPit | Kind::Trap => -0.3,
        _ => 1.0,
    }
}

/// What one takes hold of at such a thing, if it is worked (common practice).
fn usual_handle(kind: Kind) -> Option<Handle> {
    Some(match kind {
        Kind::IsolatingValve | Kind::GasValve => Handle::Lever,
        Kind::Breaker | Kind::ServiceDisconnect | Kind::TransferSwitch | Kind::Switch => {
            Handle::Toggle
        }
        Kind::Disconnect => Handle::PullOut,
        Kind::Gfci => Handle::Button,
        Kind::Cleanout => Handle::Cap,
        _ => return None,
    })
}

/// How such a handle closes (common practice).
pub(super) fn usual_way(handle: Handle) -> Closes {
    match handle {
        Handle::Lever | Handle::Tee | Handle::Slot | Handle::Key => Closes::QuarterTurn,
        Handle::Wheel | Handle::Knob => Closes::MultiTurn,
        Handle::Button => Closes::Push,
        Handle::Toggle => Closes::ToOff,
        Handle::PullOut => Closes::Pull,
        Handle::Cap => Closes::Unscrew,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Level;

    fn home() -> Home {
        let level = |id: &str| Level {
            id: id.to_owned(),
            name: id.to_owned(),
            elevation_m: 0.0,
            plan: None,
        };
        Home { levels: vec![level("ground"), level("upper")], ..Home::default() }
    }

    fn space(id: &str, outline: Vec<(f64, f64)>) -> Space {
        let level = Some("ground".to_owned());
        Space { id: id.to_owned(), name: id.to_owned(), level, outline, outdoors: false }
    }

    #[test]
    fn on_a_level_without_rooms_one_is_made_so_that_the_device_is_on_it() {
        let home = home();
        let pick = Pick::Kind(Kind::IsolatingValve);
        let wish =
            Wish { pick: &pick, count: None, level: "upper", at: Some((2.0, 3.0)), room: None };
        let ready = put(&home, &Catalogue::english(), &wish).unwrap();
        let after = ready.edit.made_on(&home).unwrap();
        let valve = after.component(&ready.id).unwrap();
        assert_eq!(after.level_of(valve).unwrap().id, "upper");
        assert_eq!(valve.at, Some((2.0, 3.0, 1.0)));
        assert_eq!(valve.tag.as_deref(), Some("W1"));
        // The next one finds that room.
        assert_eq!(room(&after, "upper", Some((9.0, 9.0)), None).edit(), None);
    }

    #[test]
    fn the_room_is_the_one_around_the_point_then_the_one_behind_the_wall() {
        let mut home = home();
        let square = |x: f64| vec![(x, 0.0), (x + 4.0, 0.0), (x + 4.0, 4.0), (x, 4.0)];
        home.spaces = vec![space("a", square(0.0)), space("b", square(4.0))];
        let at = |x, y| room(&home, "ground", Some((x, y)), Some("a")).id().map(str::to_owned);
        assert_eq!(at(5.0, 1.0).as_deref(), Some("b"));
        assert_eq!(at(6.0, 4.5).as_deref(), Some("b"));
        // Far from every wall it is the rest of the level.
        assert_eq!(at(6.0, 9.0).as_deref(), Some("ground-2"));
        // Without a point the chosen one counts.
        assert_eq!(room(&home, "ground", None, Some("a")), Room::Known("a".to_owned()));
        assert_eq!(room(&home, "ground", None, None), Room::None);
    }

    #[test]
    fn a_set_is_one_edit_with_its_name() {
        let mut home = home();
        home.spaces = vec![space("bath", vec![(0.0, 0.0), (3.0, 0.0), (3.0, 3.0), (0.0, 3.0)])];
        let pick = Pick::Set("toilet".to_owned());
        let wish =
            Wish { pick: &pick, count: None, level: "ground", at: Some((1.0, 1.0)), room: None };
        let ready = put(&home, &Catalogue::english(), &wish).unwrap();
        let after = ready.edit.made_on(&home).unwrap();
        assert_eq!(after.component(&ready.id).unwrap().kind, Kind::Toilet);
        assert_eq!(after.components.len(), 3);
        assert_eq!(after.spaces.len(), 1);
        let no = Pick::Set("no-such".to_owned());
        assert!(put(&home, &Catalogue::english(), &Wish { pick: &no, ..wish }).is_err());
    }
}
