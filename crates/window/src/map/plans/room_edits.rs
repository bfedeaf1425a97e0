//! What becomes of the home when a room is drawn, moved or stretched. Draws nothing.

use quarterturn_home::{Edit, Home, Level, Passage, Space, With};
use quarterturn_mapping::{Rectangle, snapped};

use super::paper::{Point, snap};
use super::walls::{is_joined, shared};
use crate::place;
use crate::sheet::spaces_of;

/// How near an edge must be to another room's to share its wall, in metres.
pub(super) const REACH: f64 = 0.35;

/// The rectangle round an outline.
pub(super) fn around(outline: &[Point]) -> Option<Rectangle> {
    let least = |pick: fn(&Point) -> f64| outline.iter().map(pick).fold(f64::INFINITY, f64::min);
    let most = |pick: fn(&Point) -> f64| outline.iter().map(pick).fold(f64::NEG_INFINITY, f64::max);
    let (left, top) = (least(|p| p.0), least(|p| p.1));
    (!outline.is_empty()).then(|| Rectangle {
        left,
        top,
        right: most(|p| p.0),
        bottom: most(|p| p.1),
    })
}

/// True if an outline is an upright rectangle.
pub(super) fn is_rectangle(outline: &[Point]) -> bool {
    let on_edge = |rectangle: &Rectangle, (x, y): &Point| {
        let near = |a: f64, b: f64| (a - b).abs() < 1e-6;
        (near(*x, rectangle.left) || near(*x, rectangle.right))
            && (near(*y, rectangle.top) || near(*y, rectangle.bottom))
    };
    outline.len() == 4
        && around(outline).is_some_and(|rectangle| outline.iter().all(|p| on_edge(&rectangle, p)))
}

/// The rectangles of the rooms of a level, without one of them.
fn others(home: &Home, level: &Level, without: Option<&str>) -> Vec<Rectangle> {
    let rooms = spaces_of(home, level).filter(|room| Some(room.id.as_str()) != without);
    rooms.filter_map(|room| around(&room.outline)).collect()
}

/// Where a rectangle that was drawn between two points comes to lie.
pub(super) fn drawn(
    home: &Home,
    level: &Level,
    between: (Point, Point),
    without: Option<&str>,
) -> Option<Rectangle> {
    let rectangle = Rectangle::between(between.0, between.1);
    let laid = snapped(rectangle, &others(home, level, without), snap(level, home.units), REACH)?;
    // Rounding gives a zero its sign, which nobody wants to read in the home's file.
    let plain = |at: f64| at + 0.0;
    Some(Rectangle {
        left: plain(laid.left),
        top: plain(laid.top),
        right: plain(laid.right),
        bottom: plain(laid.bottom),
    })
}

/// Where a corner comes to lie: on one of another room that is there, or on the grid.
pub(super) fn corner(
    home: &Home,
    level: &Level,
    at: Point,
    without: Option<&str>,
    so_far: &[Point],
) -> Point {
    let rooms = spaces_of(home, level).filter(|room| Some(room.id.as_str()) != without);
    let there = rooms.flat_map(|room| room.outline.iter()).chain(so_far);
    let far = |point: &Point| (point.0 - at.0).hypot(point.1 - at.1);
    let nearest = there.copied().min_by(|a, b| far(a).total_cmp(&far(b)));
    match nearest {
        Some(point) if far(&point) <= REACH => point,
        _ => {
            let grid = snap(level, home.units);
            ((at.0 / grid).round() * grid + 0.0, (at.1 / grid).round() * grid + 0.0)
        }
    }
}

/// Where the next room of a size that was typed comes to lie: right of the room that is picked, or
/// of all.
pub(super) fn beside(
    home: &Home,
    level: &Level,
    picked: Option<&str>,
    (across, down): (f64, f64),
) -> Rectangle {
    let picked = picked.and_then(|id| home.space(id));
    let picked = picked.filter(|room| room.level.as_deref() == Some(&level.id));
    let all = others(home, level, None);
    let from = picked.and_then(|room| around(&room.outline)).or_else(|| {
        let most = |a: &Rectangle, b: &Rectangle| a.right.total_cmp(&b.right);
        all.iter().copied().max_by(most)
    });
    let (mut left, top) = from.map_or((0.0, 0.0), |room| (room.right, room.top));
    let at = |left: f64| Rectangle { left, top, right: left + across, bottom: top + down };
    // Past what lies there already.
    while let Some(right) = all
        .iter()
        .filter(|room| room.overlap(&at(left)) > 1e-6)
        .map(|room| room.right)
        .reduce(f64::max)
    {
        left = right;
    }
    at(left)
}

/// Gives a room another outline. Doors move to where its walls now meet others', and what is
/// installed in it moves by `by`.
pub(super) fn reshape(home: &Home, room: &Space, outline: Vec<Point>, by: Option<Point>) -> Edit {
    let changed = Space { outline: outline.clone(), ..room.clone() };
    let mut edits = vec![Edit::PutSpace(Box::new(changed))];
    let here = |id: &str| id == room.id;
    for passage in &home.passages {
        let (one, other) = (&passage.between.0, &passage.between.1);
        if !here(one) && !here(other) || passage.at.is_none() {
            continue;
        }
        let moved = moved_passage(home, room, passage, &outline, by);
        if moved != *passage {
            edits.push(Edit::RemovePassage(Box::new(passage.clone())));
            edits.push(Edit::AddPassage(Box::new(moved)));
        }
    }
    if let Some((dx, dy)) = by {
        for component in home.components.iter().filter(|c| c.space.as_deref() == Some(&room.id)) {
            let Some((x, y, z)) = component.at else { continue };
            edits.push(Edit::Move {
                id: component.id.clone(),
                space: None,
                at: Some((x + dx, y + dy, z)),
                with: With::Nothing,
            });
        }
    }
    super::named("edit-change", &room.name, edits)
}

/// A passage of a room whose outline changed.
fn moved_passage(
    home: &Home,
    room: &Space,
    passage: &Passage,
    outline: &[Point],
    by: Option<Point>,
) -> Passage {
    let mut moved = passage.clone();
    let (dx, dy) = by.unwrap_or_default();
    let shift = |at: Option<Point>| at.map(|(x, y)| (x + dx, y + dy));
    if passage.stairs {
        if passage.between.0 == room.id {
            moved.at = shift(passage.at);
        } else {
            moved.to_at = shift(passage.to_at);
        }
        return moved;
    }
    let other = if passage.between.0 == room.id { &passage.between.1 } else { &passage.between.0 };
    let wall = home.space(other).and_then(|other| shared(outline, &other.outline));
    let (Some(ends), Some(at)) = (wall, passage.at) else { return moved };
    let wall = super::walls::Wall { one: room.id.clone(), other: other.clone(), ends };
    let (nearest, far) = wall.nearest(at);
    if far > REACH {
        moved.at = Some(if far > 2.0 { wall.middle() } else { nearest });
    }
    moved
}

/// Stairs between two rooms of different levels.
pub(super) fn stairs(home: &Home, from: &str, to: &str) -> Option<Passage> {
    if is_joined(home, from, to) {
        return None;
    }
    let at = |id: &str| place::of_space(home, id).map(|place| (place.x, place.y));
    Some(Passage {
        between: (from.to_owned(), to.to_owned()),
        at: at(from),
        stairs: true,
        to_at: at(to),
        note: None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn home() -> Home {
        let room = |id: &str, left: f64| Space {
            id: id.to_owned(),
            name: id.to_owned(),
            level: Some("ground".to_owned()),
            outline: Rectangle::between((left, 0.0), (left + 4.0, 3.0)).outline(),
            outdoors: false,
        };
        let level =
            Level { id: "ground".to_owned(), name: "G".to_owned(), elevation_m: 0.0, plan: None };
        let door = Passage {
            between: ("a".to_owned(), "b".to_owned()),
            at: Some((4.0, 1.5)),
            stairs: false,
            to_at: None,
            note: None,
        };
        Home {
            levels: vec![level],
            spaces: vec![room("a", 0.0), room("b", 4.0)],
            passages: vec![door],
            ..Home::default()
        }
    }

    #[test]
    fn a_typed_room_lies_beside_the_picked_one_and_on_none() {
        let home = home();
        let level = &home.levels[0];
        // Right of `a` lies `b`: it goes past that.
        let placed = beside(&home, level, Some("a"), (2.0, 3.0));
        assert_eq!(placed, Rectangle { left: 8.0, top: 0.0, right: 10.0, bottom: 3.0 });
        let first = beside(&Home::default(), level, None, (2.0, 3.0));
        assert_eq!(first, Rectangle { left: 0.0, top: 0.0, right: 2.0, bottom: 3.0 });
    }

    #[test]
    fn a_door_goes_with_its_wall() {
        let home = home();
        let room = home.space("a").unwrap();
        let outline = Rectangle::between((1.0, 2.0), (4.0, 6.0)).outline();
        let after = reshape(&home, room, outline, None).made_on(&home).unwrap();
        let at = after.passages[0].at.unwrap();
        // The wall that is left goes from y 2 to y 3.
        assert!((at.0 - 4.0).abs() < 1e-9 && (2.0..=3.0).contains(&at.1), "{at:?}");
    }

    #[test]
    fn what_a_rectangle_is() {
        assert!(is_rectangle(&Rectangle::between((0.0, 0.0), (2.0, 1.0)).outline()));
        assert!(!is_rectangle(&[(0.0, 0.0), (2.0, 0.0), (1.5, 1.0), (0.0, 1.0)]));
        assert!(!is_rectangle(&[(0.0, 0.0), (2.0, 0.0), (2.0, 1.0)]));
    }
}
