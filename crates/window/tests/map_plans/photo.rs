//! A plan from a photo.

use std::path::Path;

use egui::{Key, Rect, pos2, vec2};
use egui_kittest::kittest::Queryable as _;
use quarterturn_folder::Folder;
use quarterturn_mapping::Homography;
use quarterturn_window::Opening;

use crate::person::{Person, Place};

/// A drawn plan of 8 by 6 metres with three rooms before a camera that looks at it from below: a JPEG with noise, and where
/// its corners are in it.
pub(crate) fn photo(file: &Path) -> [(f64, f64); 4] {
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
            || ((near(-3.0, y) || near(3.0, y)) && inside_x)
            || (near(0.0, y) && (0.0..4.08).contains(&x));
        noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let grain = u8::try_from(noise >> 28).unwrap();
        let grey = if is_wall { 40 } else { 215 } + grain;
        image::Rgb([grey; 3])
    });
    picture.save_with_format(file, image::ImageFormat::Jpeg).unwrap();
    corners
}

/// The board with a picture of 8 by 6 metres and a metre round it.
const BESIDE: [f32; 4] = [-1.0, -1.0, 11.0, 9.0];

/// A picture in the middle of its area, as large as that allows.
fn fit(area: Rect, size: (f32, f32)) -> Rect {
    let scale = (area.width() / size.0).min(area.height() / size.1);
    Rect::from_center_size(area.center(), vec2(size.0, size.1) * scale)
}

/// Drags the four points to the corners of the drawn plan.
pub(crate) fn set_corners(person: &mut Person, corners: [(f64, f64); 4]) {
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
    set_corners(&mut person, corners);
    person.press("The rectangle alone");
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
    for y in [0.2, 0.4, 0.8].map(|part| part * f64::from(grey.height())) {
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a row")]
        let row = y as u32;
        let darkest = (grey.width() / 4..grey.width() * 3 / 4)
            .min_by_key(|x| grey.get_pixel(*x, row).0[0])
            .unwrap();
        let beside = f64::from(darkest) / f64::from(grey.width()) - 0.5;
        assert!(beside.abs() < 0.02, "{beside}");
    }

    // Under rooms that lie elsewhere it is moved by hand, and by keys in small steps: two undos.
    let left = person.home().levels[0].plan.clone().unwrap().left_m;
    person.press("Picture of a plan");
    person.wait("the picture", |person| !person.sees("The picture is coming"));
    let [from, to] = [(2.0, 2.0), (3.0, 2.0)].map(|at| person.on_board("Ground floor", BESIDE, at));
    person.drag(from, to);
    let moved = |person: &Person| person.home().levels[0].plan.clone().unwrap().left_m - left;
    assert!((moved(&person) - 1.0).abs() < 0.03, "{}", moved(&person));
    person.at.get_by_label("Drawing of Ground floor").focus();
    person.at.run();
    for _ in 0..3 {
        person.at.key_press(Key::ArrowLeft);
        person.at.run();
    }
    assert!((moved(&person) - 0.7).abs() < 0.03, "{}", moved(&person));
    person.press_starting("Undo: ");
    person.press_starting("Undo: ");
    assert!(moved(&person).abs() < 1e-9, "{}", moved(&person));

    // With a size that is known, nothing is left to measure.
    person.press("Picture of a plan");
    person.type_into("Or type where it is", &jpeg.display().to_string());
    person.press("Take it in");
    person.wait("the corners", |person| person.sees("Corner 1 of the rectangle"));
    set_corners(&mut person, corners);
    person.press("The rectangle alone");
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
fn a_photo_let_go_over_the_window_goes_to_the_device_that_is_picked() {
    let place = Place::new("dropped");
    let jpeg = place.path("valve.jpg");
    photo(&jpeg);
    let mut person = Person::opened(&place.example("flat"));
    person.press("When nothing is wrong…");
    person.press("Map of the home");
    // Nothing is picked: it is the plan of the floor, and taken in as one.
    person.drop_file(&jpeg);
    person.wait("the corners", |person| person.sees("Corner 1 of the rectangle"));
    person.press("Do not take this picture");
    person.press("Walk and pin");
    let texts = person.texts();
    let pin = texts.iter().find(|text| text.starts_with("Pin: ")).unwrap().clone();
    person.press(&pin);
    let name = pin.trim_start_matches("Pin: ").to_owned();
    let photo_of = |person: &Person| {
        let component = person.home().components.iter().find(|c| c.name == name).unwrap();
        component.photo.clone()
    };
    let before = photo_of(&person);
    person.drop_file(&jpeg);
    person.wait("its photo", |person| photo_of(person) != before);
    let stored = photo_of(&person).unwrap();
    let folder = Folder::at(person.at.state().folder().unwrap()).unwrap();
    assert!(image::load_from_memory(&folder.read_inside(&stored).unwrap()).is_ok());
    person.press_starting("Undo: ");
    assert_eq!(photo_of(&person), before);
}
