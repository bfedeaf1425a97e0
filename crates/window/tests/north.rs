//! Where north is on the plans: told by a press or typed, shown on the plans, and taken back.

use egui::accesskit::Role;
use egui::{Key, Modifiers, Rect};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use quarterturn_guidance::{Catalogue, Trouble};
use quarterturn_home::{Component, Connection, Date, Home, Kind, Level, Medium, Space};
use quarterturn_window::{App, Opening};

/// A hut with a tap in the right upper corner of its plan, and a room upstairs. Nobody told north.
fn hut() -> Home {
    let level = |id: &str, elevation_m: f64| Level {
        id: id.to_owned(),
        name: id.to_uppercase(),
        elevation_m,
        plan: None,
    };
    let room = |id: &str, level: &str| Space {
        id: id.to_owned(),
        name: id.to_owned(),
        level: Some(level.to_owned()),
        outline: vec![(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)],
        outdoors: false,
    };
    let mut tap = Component::new("tap", Kind::Tap, "Corner tap");
    tap.space = Some("den".to_owned());
    tap.at = Some((9.8, 0.2, 1.0));
    tap.tag = Some("W1".to_owned());
    Home {
        format: 1,
        name: "Hut".to_owned(),
        levels: vec![level("low", 0.0), level("up", 2.7)],
        spaces: vec![room("den", "low"), room("loft", "up")],
        components: vec![Component::new("street", Kind::WaterMain, "Street main"), tap],
        connections: vec![Connection::new("street", "tap", Medium::ColdWater)],
        ..Home::default()
    }
}

fn window(home: Home, language: &str, size: [f32; 2]) -> Harness<'static, App> {
    let opening = Opening::new(home, None, vec![]);
    let app = App::new(opening, Catalogue::in_language(language)).on_day(Date::new(2026, 11, 25));
    let mut harness = Harness::builder()
        .with_size(size)
        .with_max_steps(60)
        .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
    harness.run();
    harness
}

/// The window on the floors of the map.
fn on_the_floors(home: Home) -> Harness<'static, App> {
    let mut harness = window(home, "en", [1280.0, 800.0]);
    let words = Catalogue::english();
    open_map(&mut harness, &words);
    for key in ["window-map-plans", "window-plans-floors"] {
        press(&mut harness, &words.text(key));
    }
    harness
}

fn open_map(harness: &mut Harness<'_, App>, words: &Catalogue) {
    for key in ["window-quiet", "window-map"] {
        press(harness, &words.text(key));
    }
}

#[track_caller]
fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

fn north(harness: &Harness<'_, App>) -> Option<f64> {
    harness.state().home().north_deg
}

/// How many marks say so: one in the middle of the eight ways, one on the plan.
fn marks(harness: &Harness<'_, App>, label: &str) -> usize {
    harness.query_all_by_role_and_label(Role::Image, label).count()
}

#[test]
fn north_is_told_by_a_press_and_taken_back() {
    let mut harness = on_the_floors(hut());
    assert_eq!(north(&harness), None);
    press(&mut harness, "North: Up right");
    assert_eq!(north(&harness), Some(45.0));
    let mark = "North is up right on the plan";
    assert!(marks(&harness, mark) >= 1);
    press(&mut harness, "North: Left");
    assert_eq!(north(&harness), Some(270.0));
    assert_eq!(marks(&harness, mark), 0);
    assert!(marks(&harness, "North is to the left on the plan") >= 1);
    // One press is one thing to take back, named in words.
    press(&mut harness, "Undo: direction of north on the plans");
    assert_eq!(north(&harness), Some(45.0));
    assert!(marks(&harness, mark) >= 1);
    press(&mut harness, "Undo: direction of north on the plans");
    assert_eq!(north(&harness), None);
    assert_eq!(marks(&harness, mark), 0);
    press(&mut harness, "Redo: direction of north on the plans");
    assert_eq!(north(&harness), Some(45.0));
    press(&mut harness, "Not known");
    assert_eq!(north(&harness), None);
    // What is so already is no change: the same is taken back as before.
    press(&mut harness, "Not known");
    press(&mut harness, "Undo: direction of north on the plans");
    assert_eq!(north(&harness), Some(45.0));
}

#[test]
fn all_of_the_eight_ways_mean_what_they_say() {
    let mut harness = on_the_floors(hut());
    for (way, degrees) in [
        ("Up", 0.0),
        ("Up right", 45.0),
        ("Right", 90.0),
        ("Down right", 135.0),
        ("Down", 180.0),
        ("Down left", 225.0),
        ("Left", 270.0),
        ("Up left", 315.0),
    ] {
        press(&mut harness, &format!("North: {way}"));
        assert_eq!(north(&harness), Some(degrees), "{way}");
    }
}

fn type_degrees(harness: &mut Harness<'_, App>, text: &str) {
    let label = "Degrees, clockwise from up";
    harness.get_by_role_and_label(Role::TextInput, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, label).focus();
    harness.run();
    harness.key_press_modifiers(Modifiers::COMMAND, Key::A);
    harness.run();
    harness.get_by_role_and_label(Role::TextInput, label).type_text(text);
    harness.run();
}

#[test]
fn degrees_are_typed_and_a_slip_is_told() {
    let mut harness = on_the_floors(hut());
    type_degrees(&mut harness, "12,5");
    press(&mut harness, "Keep these degrees");
    assert_eq!(north(&harness), Some(12.5));
    assert!(marks(&harness, "North is 12.5 degrees clockwise from up on the plan") >= 1);
    type_degrees(&mut harness, "north");
    press(&mut harness, "Keep these degrees");
    assert_eq!(north(&harness), Some(12.5));
    harness.get_by_label("Type the degrees clockwise from up, from 0 to 360.");
    // With Enter, and a little more than a turn back.
    type_degrees(&mut harness, "-90");
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(north(&harness), Some(270.0));
}

/// The mark stands on the plan to work on and on the plan in an emergency, off the pins, and a press on
/// it does what a press on the plan does.
#[test]
fn the_mark_keeps_off_the_pins() {
    let home = Home { north_deg: Some(180.0), ..hut() };
    let label = "North is down on the plan";
    for size in [[1280.0, 800.0], [640.0, 900.0]] {
        let mut harness = window(home.clone(), "en", size);
        let words = Catalogue::english();
        let id = Trouble::Leak.id();
        let trouble = format!(
            "{}, {}",
            words.text(&format!("trouble-{id}")),
            words.text(&format!("trouble-{id}-hint"))
        );
        press(&mut harness, &trouble);
        let rect = |harness: &Harness<'_, App>, label: &str| -> Rect {
            harness.get_by_role_and_label(Role::Image, label).rect()
        };
        let mark = rect(&harness, label);
        let plan = rect(&harness, "Plan of: LOW");
        assert!(plan.contains_rect(mark), "{mark} {plan}");
        let pin = harness.get_by_role_and_label(Role::Button, "Pin: Corner tap").rect();
        assert!(!mark.intersects(pin), "{mark} {pin}");
    }
    let mut harness = window(home, "en", [1280.0, 800.0]);
    open_map(&mut harness, &Catalogue::english());
    let mark = harness.get_by_role_and_label(Role::Image, label).rect();
    let pin = harness.get_by_role_and_label(Role::Button, "Pin: Corner tap").rect();
    assert!(!mark.intersects(pin), "{mark} {pin}");
    assert_eq!(harness.query_all_by_role_and_label(Role::Button, label).count(), 0);
}

#[test]
fn the_mark_speaks_spanish() {
    let home = Home { north_deg: Some(315.0), ..hut() };
    let mut harness = window(home, "es", [1280.0, 800.0]);
    open_map(&mut harness, &Catalogue::in_language("es"));
    harness.get_by_label("En el plano el norte está arriba a la izquierda");
}
