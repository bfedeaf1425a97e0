//! Floors, rooms, doors and plans put on the map at the window, a home begun from nothing, and homes that
//! were not saved or that two windows have; with nothing but what a person sees and presses.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, PointerButton, Pos2, Rect, pos2, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_folder::{Autosave, Folder, pack_into};
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Date, Home};
use quarterturn_mapping::Homography;
use quarterturn_window::{App, Opening};

/// A folder of a test, empty at first and taken away at the end.
struct Place(PathBuf);

impl Place {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("qt-plans-{}-{name}", std::process::id()));
        drop(std::fs::remove_dir_all(&path));
        std::fs::create_dir_all(&path).unwrap();
        Self(path)
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.join(name)
    }

    /// A copy of an example's home file.
    fn example(&self, name: &str) -> PathBuf {
        let from = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(name);
        let to = self.path(name);
        std::fs::create_dir_all(&to).unwrap();
        std::fs::copy(from.join("home.ron"), to.join("home.ron")).unwrap();
        to
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        drop(std::fs::remove_dir_all(&self.0));
    }
}

/// Someone at the window, whose presses, drags and typed fields are counted.
struct Person {
    at: Harness<'static, App>,
    actions: u32,
}

impl Person {
    fn at(opening: Opening, size: [f32; 2]) -> Self {
        let app = App::new(opening, Catalogue::english()).on_day(Date::new(2026, 11, 25));
        let mut at = Harness::builder()
            .with_size(size)
            .with_max_steps(40)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        Self { at, actions: 0 }
    }

    fn opened(folder: &Path) -> Self {
        Self::at(Opening::read(folder).unwrap(), [1280.0, 800.0])
    }

    fn home(&self) -> &Home {
        self.at.state().home()
    }

    fn press(&mut self, label: &str) {
        self.actions += 1;
        let all: Vec<_> = self.at.query_all_by_role_and_label(Role::Button, label).collect();
        let Some(node) = all.last() else { panic!("no {label}: {:?}", self.texts()) };
        node.scroll_to_me();
        drop(all);
        self.at.run();
        let all: Vec<_> = self.at.query_all_by_role_and_label(Role::Button, label).collect();
        all.last().unwrap().click();
        drop(all);
        self.at.run();
    }

    /// Presses the one of these two that tells what is taken back or made again.
    fn press_starting(&mut self, start: &str) {
        let texts = self.texts();
        let label = texts.iter().find(|text| text.starts_with(start));
        let label = label.unwrap_or_else(|| panic!("no {start}: {texts:?}")).clone();
        self.press(&label);
    }

    fn sees(&self, text: &str) -> bool {
        self.texts().iter().any(|seen| seen.contains(text))
    }

    fn texts(&self) -> Vec<String> {
        fn collect(node: Node<'_>, texts: &mut Vec<String>) {
            let inner = node.accesskit_node();
            texts.extend(inner.label());
            texts.extend(inner.value());
            node.children().for_each(|child| collect(child, texts));
        }
        let mut texts = Vec::new();
        collect(self.at.root(), &mut texts);
        texts
    }

    /// Types into a box in place of what stands there.
    fn type_into(&mut self, field: &str, text: &str) {
        self.actions += 1;
        self.at.get_by_role_and_label(Role::TextInput, field).scroll_to_me();
        self.at.run();
        self.at.get_by_role_and_label(Role::TextInput, field).focus();
        self.at.run();
        self.at.key_press_modifiers(Modifiers::COMMAND, Key::A);
        self.at.run();
        self.at.get_by_role_and_label(Role::TextInput, field).type_text(text);
        self.at.run();
    }

    fn pointer(&mut self, at: Pos2, pressed: Option<bool>) {
        self.at.event(Event::PointerMoved(at));
        if let Some(pressed) = pressed {
            let modifiers = Modifiers::NONE;
            let button = PointerButton::Primary;
            self.at.event(Event::PointerButton { pos: at, button, pressed, modifiers });
        }
        self.at.run();
    }

    fn drag(&mut self, from: Pos2, to: Pos2) {
        self.actions += 1;
        self.pointer(from, None);
        self.pointer(from, Some(true));
        self.pointer(from.lerp(to, 0.5), None);
        self.pointer(to, None);
        self.pointer(to, Some(false));
    }

    fn click_at(&mut self, at: Pos2) {
        self.actions += 1;
        self.pointer(at, None);
        // In one go: a click that takes a second is none.
        for pressed in [true, false] {
            let (modifiers, button) = (Modifiers::NONE, PointerButton::Primary);
            self.at.event(Event::PointerButton { pos: at, button, pressed, modifiers });
        }
        self.at.run();
    }

    /// Where a point of the level is, in metres, on the drawing of it.
    fn on_board(&self, level: &str, part: [f32; 4], (x, y): (f32, f32)) -> Pos2 {
        let area = self.at.get_by_label(&format!("Drawing of {level}")).rect();
        let [left, top, width, height] = part;
        let scale = (area.width() / width).min(area.height() / height);
        let rect = Rect::from_center_size(area.center(), vec2(width, height) * scale);
        rect.min + vec2(x - left, y - top) * scale
    }

    /// Waits for a thread, until something is so.
    fn wait(&mut self, what: &str, is_so: impl Fn(&Self) -> bool) {
        for _ in 0..600 {
            self.at.run_ok();
            if is_so(self) {
                return;
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        panic!("never: {what}; {:?}", self.texts());
    }

    /// Begins a home in a folder.
    fn begin(&mut self, name: &str, folder: &Path) {
        self.press("Settings…");
        self.press("A new home…");
        self.type_into("Name of the home", name);
        self.type_into("Emergency number", "911");
        self.type_into("Folder that it is kept in", &folder.display().to_string());
        self.press("Metres and litres");
        self.press("Make this home");
        self.wait("a new home", |person| person.home().name == name);
        self.press("Plans and rooms");
    }
}

/// The drawing of a level with nothing on it, and of one with something at its origin: left, top, width
/// and height in metres.
const EMPTY: [f32; 4] = [-1.0, -1.0, 14.0, 10.0];
const BEGUN: [f32; 4] = [-3.0, -3.0, 14.0, 10.0];

/// Left, top, right and bottom of a room, in whole centimetres.
fn centimetres(home: &Home, room: &str) -> [String; 4] {
    outline(home, room).map(|metres| format!("{:.0}", metres * 100.0))
}

fn outline(home: &Home, room: &str) -> [f64; 4] {
    let room = home.spaces.iter().find(|space| space.name == room);
    let outline = &room.unwrap_or_else(|| panic!("{:?}", home.spaces)).outline;
    let least = |pick: fn(&(f64, f64)) -> f64| outline.iter().map(pick).fold(f64::MAX, f64::min);
    let most = |pick: fn(&(f64, f64)) -> f64| outline.iter().map(pick).fold(f64::MIN, f64::max);
    [least(|p| p.0), least(|p| p.1), most(|p| p.0), most(|p| p.1)]
}

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
    let wall = at(&person, BEGUN, (4.1, 1.4));
    person.click_at(wall);
    let door = person.home().passages[0].clone();
    assert_eq!(door.between, ("kitchen".to_owned(), "hall".to_owned()));
    let (x, y) = door.at.unwrap();
    assert!((x - 4.0).abs() < 1e-6 && (y - 1.4).abs() < 0.1, "{x} {y}");
    person.press("Door: Hall – Bathroom");
    assert_eq!(person.home().passages.len(), 2);
    // Where there is no wall there is no door.
    let nowhere = at(&person, BEGUN, (2.0, 1.5));
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

/// A drawn plan of 8 by 6 metres before a camera that looks at it from below: a JPEG with noise, and where
/// its corners are in it.
fn photo(file: &Path) -> [(f64, f64); 4] {
    const SIZE: (u32, u32) = (1000, 800);
    let project = |(x, y): (f64, f64)| {
        // Tilted about both axes: a photo tilted about one alone does not tell proportions.
        let ((sin, cos), (sin_y, cos_y)) =
            (25_f64.to_radians().sin_cos(), 20_f64.to_radians().sin_cos());
        let (y, z) = (y * cos, y * sin);
        let (x, z) = (x * cos_y + z * sin_y, z * cos_y - x * sin_y);
        let deep = z + 13.0;
        (x * 1000.0 / deep + 500.0, y * 1000.0 / deep + 400.0)
    };
    let plane = [(-4.0, -3.0), (4.0, -3.0), (4.0, 3.0), (-4.0, 3.0)];
    let corners = plane.map(project);
    let back = Homography::between(corners, plane).unwrap();
    let mut noise = 1_u32;
    let picture = image::RgbImage::from_fn(SIZE.0, SIZE.1, |px, py| {
        let (x, y) = back.map((f64::from(px) + 0.5, f64::from(py) + 0.5)).unwrap();
        let near = |wall: f64, at: f64| (at - wall).abs() < 0.08;
        let (inside_x, inside_y) = (x.abs() < 4.08, y.abs() < 3.08);
        let is_wall = ((near(-4.0, x) || near(4.0, x) || near(0.0, x)) && inside_y)
            || ((near(-3.0, y) || near(3.0, y)) && inside_x);
        noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let grain = u8::try_from(noise >> 28).unwrap();
        let grey = if is_wall { 40 } else { 215 } + grain;
        image::Rgb([grey; 3])
    });
    picture.save_with_format(file, image::ImageFormat::Jpeg).unwrap();
    corners
}

#[test]
fn a_photo_taken_at_an_angle_becomes_a_plan() {
    let place = Place::new("photo");
    let jpeg = place.path("plan.jpg");
    let corners = photo(&jpeg);
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    let folder = place.path("ours");
    person.begin("Ours", &folder);
    person.press("Picture of a plan");
    // What is no picture is refused, with what to do.
    std::fs::copy(folder.join("home.ron"), place.path("no.jpg")).unwrap();
    person.type_into("Or type where it is", &place.path("no.jpg").display().to_string());
    person.press("Take it in");
    person.wait("a refusal", |person| person.sees("The file is no picture"));

    person.type_into("Or type where it is", &jpeg.display().to_string());
    person.press("Take it in");
    person.wait("the corners", |person| person.sees("Corner 1 of the rectangle"));
    let fit = |area: Rect, size: (f32, f32)| {
        let scale = (area.width() / size.0).min(area.height() / size.1);
        Rect::from_center_size(area.center(), vec2(size.0, size.1) * scale)
    };
    let set_corners = |person: &mut Person| {
        for (number, (x, y)) in (1..).zip(corners) {
            let area = fit(person.at.get_by_label("The picture").rect(), (1000.0, 800.0));
            #[expect(clippy::cast_possible_truncation, reason = "points of the screen")]
            let to = pos2(
                area.left() + area.width() * (x / 1000.0) as f32,
                area.top() + area.height() * (y / 800.0) as f32,
            );
            let label = format!("Corner {number} of the rectangle");
            let from = person.at.get_by_label(&label).rect().center();
            person.drag(from, to);
        }
    };
    set_corners(&mut person);
    person.press("Cut off what is beside it");
    person.press("Put it straight");
    person.wait("a straight picture", |person| person.sees("Is it straight now?"));
    person.press("Yes, go on");
    // Without points nothing is measured.
    person.type_into("Distance between the two points", "8");
    person.press("Put it on the map");
    assert!(person.sees("Press the two points on the picture first"));
    let area = fit(person.at.get_by_label("The picture").rect(), (8.0, 6.0));
    person.click_at(area.left_center() + vec2(2.0, 0.0));
    person.click_at(area.right_center() - vec2(2.0, 0.0));
    person.press("Put it on the map");
    assert!(person.sees("has no unit"), "{:?}", person.texts());
    person.type_into("Distance between the two points", "8 m");
    person.press("Put it on the map");
    person.wait("a plan", |person| person.home().levels[0].plan.is_some());
    let plan = person.home().levels[0].plan.clone().unwrap();
    assert!((plan.width_m - 8.0).abs() < 0.16, "{}", plan.width_m);
    let stored = Folder::at(&folder).unwrap().read_inside(&plan.picture).unwrap();
    let stored = image::load_from_memory(&stored).unwrap();
    let aspect = f64::from(stored.width()) / f64::from(stored.height());
    assert!((aspect - 8.0 / 6.0).abs() < 0.04, "{aspect}");
    // The wall between the two rooms stands upright in the middle, from top to bottom.
    let grey = stored.to_luma8();
    for y in [0.2, 0.5, 0.8].map(|part| part * f64::from(grey.height())) {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a row")]
        let row = y as u32;
        let darkest = (grey.width() / 4..grey.width() * 3 / 4)
            .min_by_key(|x| grey.get_pixel(*x, row).0[0])
            .unwrap();
        let beside = f64::from(darkest) / f64::from(grey.width()) - 0.5;
        assert!(beside.abs() < 0.02, "{beside}");
    }

    // With a size that is known, nothing is left to measure.
    person.press("Picture of a plan");
    person.type_into("Or type where it is", &jpeg.display().to_string());
    person.press("Take it in");
    person.wait("the corners", |person| person.sees("Corner 1 of the rectangle"));
    set_corners(&mut person);
    person.press("Cut off what is beside it");
    person.type_into("Width of the rectangle", "16 m");
    person.type_into("Depth of the rectangle", "12 m");
    person.press("Put it straight");
    person.wait("a straight picture", |person| person.sees("Is it straight now?"));
    person.press("Yes, go on");
    person.wait("another plan", |person| {
        person.home().levels[0].plan.as_ref().is_some_and(|plan| plan.width_m > 12.0)
    });
    let plan = person.home().levels[0].plan.clone().unwrap();
    assert!((plan.width_m - 16.0).abs() < 0.05, "{}", plan.width_m);
}

#[test]
fn without_a_folder_no_picture_is_taken_until_a_copy_is_saved() {
    let place = Place::new("copy");
    let jpeg = place.path("plan.jpg");
    photo(&jpeg);
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    person.press("When nothing is wrong…");
    person.press("Map of the home");
    person.press("Plans and rooms");
    person.press("Picture of a plan");
    person.type_into("Or type where it is", &jpeg.display().to_string());
    person.press("Take it in");
    assert!(person.sees("This home has no folder yet"));
    person.press("Settings…");
    person.press("Save a copy as…");
    let folder = place.path("deeper").join("mine");
    person.type_into("Folder that it is kept in", &folder.display().to_string());
    person.press("Save the copy");
    person.wait("a copy", |person| person.at.state().folder().is_some());
    let copy = Folder::at(&folder).unwrap().read().unwrap().home;
    assert_eq!(copy.components, Opening::built_in().home.components);
    // A folder with something in it is not written over.
    person.press("Settings…");
    person.press("Save a copy as…");
    person.type_into("Folder that it is kept in", &folder.display().to_string());
    person.press("Save the copy");
    person.wait("a refusal", |person| !person.sees("Just a moment…"));
    assert!(
        person.sees("Save a copy")
            && person.at.state().folder() == Some(&folder.canonicalize().unwrap())
    );
}

#[test]
fn what_a_killed_session_left_is_offered_and_taken_up() {
    let place = Place::new("left");
    let path = place.example("flat");
    let folder = Folder::at(&path).unwrap();
    let leave = |name: &str| {
        let reading = folder.read().unwrap();
        let autosave = Autosave::new(folder.hold(&reading).unwrap(), || ()).unwrap();
        autosave.submit(Arc::new(Home { name: name.to_owned(), ..reading.home }));
        // As a kill would leave it: kept beside the home file, not saved in it.
        autosave.flush().unwrap();
    };
    leave("Unsaved");
    let mut person = Person::opened(&path);
    assert!(person.sees("Something was not saved") && person.sees("was kept"));
    assert_ne!(person.home().name, "Unsaved");
    // Left for the next time.
    person.press("Leave it; ask again next time");
    assert!(!person.sees("Something was not saved"));
    drop(person);
    let mut person = Person::opened(&path);
    person.press("Take it up");
    assert_eq!(person.home().name, "Unsaved");
    person.at.state_mut().finish();
    drop(person);
    assert_eq!(folder.read().unwrap().home.name, "Unsaved");
    assert!(!Person::opened(&path).sees("Something was not saved"));

    leave("Unwanted");
    let mut person = Person::opened(&path);
    person.press("Throw it away");
    drop(person);
    assert!(!Person::opened(&path).sees("Something was not saved"));
    assert_eq!(folder.read().unwrap().home.name, "Unsaved");
}

/// Renames the floor that is shown.
fn rename_floor(person: &mut Person, name: &str) {
    person.press("When nothing is wrong…");
    person.press("Map of the home");
    person.press("Plans and rooms");
    person.press("Floors");
    person.type_into("Name of the floor", name);
    person.press("Keep name and height");
}

fn has_floor(home: &Home, name: &str) -> bool {
    home.levels.iter().any(|level| level.name == name)
}

#[test]
fn two_windows_on_one_home_do_not_overwrite_each_other() {
    let place = Place::new("two");
    let path = place.example("flat");
    let folder = Folder::at(&path).unwrap();
    let on_disk = || folder.read().unwrap().home;
    let (mut first, mut second) = (Person::opened(&path), Person::opened(&path));
    rename_floor(&mut first, "First");
    first.wait("saved", |_| has_floor(&on_disk(), "First"));
    rename_floor(&mut second, "Second");
    second.wait("a question", |person| person.sees("Another window has this home"));
    assert!(has_floor(second.home(), "Second") && !has_floor(&on_disk(), "Second"));
    // The first is closed: the file is still not the one that the second opened.
    first.at.state_mut().finish();
    drop(first);
    second.press("The other window is closed: save now");
    second.wait("a question", |person| person.sees("Someone else changed this home"));
    assert!(has_floor(&on_disk(), "First"));
    second.press("Save mine as a copy…");
    let copy = place.path("mine");
    second.type_into("Folder that it is kept in", &copy.display().to_string());
    second.press("Save the copy");
    second.wait("the copy", |_| copy.join("home.ron").exists());
    second.wait("the copy", |person| {
        person.at.state().folder() == Some(&copy.canonicalize().unwrap())
    });
    assert!(has_floor(&Folder::at(&copy).unwrap().read().unwrap().home, "Second"));
    assert!(has_floor(&on_disk(), "First") && !has_floor(&on_disk(), "Second"));
}

#[test]
fn a_file_that_someone_else_changed_is_shown_when_asked() {
    let place = Place::new("changed");
    let path = place.example("flat");
    let folder = Folder::at(&path).unwrap();
    let mut person = Person::opened(&path);
    let reading = folder.read().unwrap();
    let theirs = Home { name: "Theirs".to_owned(), ..reading.home.clone() };
    folder.hold(&reading).unwrap().save(&theirs).unwrap();
    rename_floor(&mut person, "Mine");
    person.wait("a question", |person| person.sees("Someone else changed this home"));
    person.press("Show what the other wrote; mine goes");
    assert_eq!(person.home(), &theirs);
    // From there it goes on.
    rename_floor(&mut person, "Ours");
    person.wait("saved", |_| has_floor(&folder.read().unwrap().home, "Ours"));
}

#[test]
fn a_zip_is_unpacked_where_one_likes() {
    let place = Place::new("zip");
    let path = place.example("flat");
    let zip = place.path("flat.zip");
    pack_into(&Folder::at(&path).unwrap(), &zip).unwrap();
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    let name = Opening::read(&path).unwrap().home.name;
    person.press("Settings…");
    person.press("Another home…");
    person.type_into("Or type the path of the folder", &zip.display().to_string());
    person.press("Open");
    let to = place.path("unpacked");
    person.type_into("Folder that it is kept in", &to.display().to_string());
    person.press("Unpack and open");
    person.wait("the home", |person| person.home().name == name);
    assert_eq!(person.at.state().folder(), Some(to.canonicalize().unwrap().as_path()));
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
