//! Floors, rooms, doors and stairs.

use egui::{Key, vec2};
use egui_kittest::kittest::Queryable as _;
use quarterturn_folder::Folder;
use quarterturn_window::Opening;

use crate::person::{BEGUN, EMPTY, Person, Place, centimetres, outline};

/// With the bathroom, which ends at 8.4 m.
const WIDER: [f32; 4] = [-3.0, -3.0, 15.0, 10.0];

#[test]
fn from_nothing_three_rooms_a_door_and_stairs() {
    let place = Place::new("nothing");
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    let folder = place.path("ours");
    person.begin("Ours", &folder);
    assert_eq!(person.home().levels.len(), 1);

    // By drag, from the wrong corner and beside the grid.
    person.press("Kitchen");
    let at = |person: &Person, part, point| person.on_board("Ground floor", part, point);
    let (from, to) = (at(&person, EMPTY, (4.06, 3.05)), at(&person, EMPTY, (0.05, -0.06)));
    person.drag(from, to);
    assert_eq!(centimetres(person.home(), "Kitchen"), ["0", "0", "400", "300"]);
    // The next draws itself to the kitchen's wall.
    person.press("Hall");
    let (from, to) = (at(&person, BEGUN, (4.2, 0.1)), at(&person, BEGUN, (6.0, 3.1)));
    person.drag(from, to);
    assert_eq!(centimetres(person.home(), "Hall"), ["400", "0", "600", "300"]);
    // By typing.
    person.press("Bathroom");
    person.type_into("Width of the new room", "2.40 m");
    person.type_into("Depth of the new room", "2 m");
    person.press("Add the room");
    let bath = outline(person.home(), "Bathroom");
    assert!((bath[2] - bath[0] - 2.4).abs() < 1e-9 && (bath[3] - bath[1] - 2.0).abs() < 1e-9);
    assert!((bath[0] - 6.0).abs() < 1e-9, "beside the hall: {bath:?}");

    // A door by pressing the wall, one from the list.
    person.press("Doors and stairs");
    let wall = at(&person, WIDER, (4.1, 1.4));
    person.click_at(wall);
    let door = person.home().passages[0].clone();
    assert_eq!(door.between, ("kitchen".to_owned(), "hall".to_owned()));
    let (x, y) = door.at.unwrap();
    assert!((x - 4.0).abs() < 1e-6 && (y - 1.4).abs() < 0.1, "{x} {y}");
    person.press("Door: Hall – Bathroom");
    assert_eq!(person.home().passages.len(), 2);
    // Where there is no wall there is no door.
    let nowhere = at(&person, WIDER, (2.0, 1.5));
    person.click_at(nowhere);
    assert!(person.sees("There is no wall between two rooms"));

    // Stairs to a floor above.
    person.press("Floors");
    person.press("Add a floor above");
    person.press("Rooms");
    person.press("Bedroom");
    person.type_into("Width of the new room", "4 m");
    person.type_into("Depth of the new room", "12' 6\"");
    person.press("Add the room");
    person.press("Doors and stairs");
    person.press("Stairs from Bedroom");
    person.press("Hall (Ground floor)");
    let stairs = person.home().passages[2].clone();
    assert!(stairs.stairs && stairs.at.is_some() && stairs.to_at.is_some());
    assert_eq!(stairs.between, ("bedroom".to_owned(), "hall".to_owned()));
    let heights: Vec<f64> = person.home().levels.iter().map(|level| level.elevation_m).collect();
    assert_eq!(heights, [0.0, 2.7]);

    // All of it is on disk, and one undo takes back one thing.
    let home = person.home().clone();
    person.press_starting("Undo: ");
    assert_eq!(person.home().passages.len(), 2);
    person.press_starting("Redo: ");
    assert_eq!(person.home(), &home);
    person.at.state_mut().finish();
    assert_eq!(Folder::at(&folder).unwrap().read().unwrap().home, home);
}

#[test]
fn floors_are_renamed_put_in_order_and_removed_with_what_is_on_them() {
    let place = Place::new("floors");
    let mut person = Person::opened(&place.example("two-storey"));
    let before = person.home().clone();
    person.press("When nothing is wrong…");
    person.press("Map of the home");
    person.press("Plans and rooms");
    person.press("Floors");
    person.press("Add a floor above");
    person.type_into("Name of the floor", "Cellar");
    person.type_into("Height of its floor", "-9 m");
    person.press("Keep name and height");
    assert_eq!(person.home().levels[0].name, "Cellar");
    assert_eq!(person.home().spaces, before.spaces);
    // A height without sense changes nothing and says so.
    person.type_into("Height of its floor", "deep");
    person.press("Keep name and height");
    assert!(person.sees("Type the height with its unit"));
    assert!((person.home().levels[0].elevation_m + 9.0).abs() < 1e-9);

    // A floor with rooms: what goes with it is told first.
    let level = before.levels.last().unwrap();
    let room = before.spaces.iter().find(|s| s.level.as_ref() == Some(&level.id)).unwrap();
    person.press(&level.name);
    person.press("Remove this floor…");
    assert!(person.sees(&format!("Remove {}?", level.name)) && person.sees(&room.name));
    person.press("Leave it");
    assert_eq!(person.home().levels.len(), before.levels.len() + 1);
    person.press("Remove this floor…");
    person.press("Remove it");
    assert!(person.home().level(&level.id).is_none() && person.home().space(&room.id).is_none());
    person.press_starting("Undo: ");
    assert!(person.home().space(&room.id).is_some());
}

#[test]
fn rooms_by_corners_are_moved_stretched_and_removed() {
    let place = Place::new("corners");
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    person.begin("Ours", &place.path("ours"));
    person.press("Press the corners");
    let corners = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (2.0, 2.0), (2.0, 4.0), (0.0, 4.0)];
    for corner in corners {
        let at = person.on_board("Ground floor", EMPTY, corner);
        person.click_at(at);
    }
    person.press("Close the room");
    let room = person.home().spaces[0].clone();
    let expected: Vec<(f64, f64)> =
        corners.iter().map(|(x, y)| (f64::from(*x), f64::from(*y))).collect();
    assert_eq!((room.name.as_str(), &room.outline), ("Room", &expected));
    // The keyboard moves a corner by a line of the grid.
    person.press("Draw a rectangle");
    person.at.get_by_label("Room, corner 3").focus();
    person.at.run();
    person.at.key_press(Key::ArrowRight);
    person.at.run();
    assert_eq!(person.home().spaces[0].outline[2], (4.25, 2.0));
    assert_eq!(person.home().spaces[0].outline.len(), 6);
    // A drag inside moves all of it.
    let from = person.on_board("Ground floor", BEGUN, (1.0, 3.0));
    let to = person.on_board("Ground floor", BEGUN, (3.0, 4.0));
    person.drag(from, to);
    assert_eq!(person.home().spaces[0].outline[0], (2.0, 1.0));
    person.press("Remove this room…");
    person.press("Remove it");
    assert!(person.home().spaces.is_empty());
}

#[test]
fn the_board_comes_nearer_and_is_moved_while_rooms_are_drawn() {
    let place = Place::new("nearer");
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    person.begin("Ours", &place.path("ours"));
    let area = person.at.get_by_label("Drawing of Ground floor").rect();
    let scale = (area.width() / EMPTY[2]).min(area.height() / EMPTY[3]);
    // A step of the button is 1.4, about the middle: x of 6 on the empty board.
    person.press("Nearer");
    person.press("Kitchen");
    let at = |x: f32| area.center() + vec2((x - 6.0) * scale * 1.4, 0.0);
    person.drag(at(4.0) - vec2(0.0, 100.0), at(7.0) + vec2(0.0, 40.0));
    let across = |person: &Person, room: &str| {
        let [left, _, right, _] = centimetres(person.home(), room);
        [left, right]
    };
    assert_eq!(across(&person, "Kitchen"), ["400", "700"]);
    // The right button moves the board and draws nothing.
    let before = person.home().clone();
    for (at, pressed) in
        [(at(7.0), None), (at(7.0), Some(true)), (at(6.0), None), (at(6.0), Some(false))]
    {
        person.other_pointer(at, pressed);
    }
    assert_eq!(person.home(), &before);
    // What was at 8 m is a metre further left now.
    person.press("Hall");
    person.drag(at(6.0) - vec2(0.0, 100.0), at(8.0) + vec2(0.0, 40.0));
    assert_eq!(across(&person, "Hall"), ["700", "900"]);
    // A key shows all of it again: from 1 to 15 m.
    person.at.get_by_label("Drawing of Ground floor").focus();
    person.at.run();
    person.at.key_press(Key::Num0);
    person.at.run();
    person.press("Bathroom");
    let at = |x: f32| area.center() + vec2((x - 8.0) * scale, 0.0);
    person.drag(at(9.1) - vec2(0.0, 60.0), at(12.0) + vec2(0.0, 60.0));
    assert_eq!(across(&person, "Bathroom"), ["900", "1200"]);
}

#[test]
fn the_boxes_fit_a_small_window() {
    let place = Place::new("small");
    let mut person = Person::at(Opening::built_in(), [640.0, 400.0]);
    person.begin("Small", &place.path("small"));
    person.press("Kitchen");
    person.type_into("Width of the new room", "4 m");
    person.type_into("Depth of the new room", "3 m");
    person.press("Add the room");
    assert_eq!(centimetres(person.home(), "Kitchen"), ["0", "0", "400", "300"]);
}
