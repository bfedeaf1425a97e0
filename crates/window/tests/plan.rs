//! The plan without a display: looked at closer by keys, buttons and pointer, and what leads to the
//! device.

use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, MouseWheelUnit, PointerButton, Pos2, Rect, TouchPhase, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::{Catalogue, Trouble};
use quarterturn_home::{Component, Connection, Home, Kind, Level, Medium, Passage, Space};
use quarterturn_window::{App, Opening};

const WIDE: [f32; 2] = [1280.0, 800.0];
/// A window narrower than two columns.
const NARROW: [f32; 2] = [640.0, 900.0];

fn harness(opening: Opening, size: [f32; 2]) -> Harness<'static, App> {
    let app = App::new(opening, Catalogue::english());
    let mut harness = Harness::builder()
        .with_size(size)
        .with_max_steps(60)
        .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
    harness.run();
    harness
}

fn trouble(trouble: Trouble) -> String {
    let words = Catalogue::english();
    let key = format!("trouble-{}", trouble.id());
    format!("{}, {}", words.text(&key), words.text(&format!("{key}-hint")))
}

fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

/// A hut of two floors: a tap upstairs that hangs on the main downstairs, with stairs between.
fn hut() -> Home {
    let space = |id: &str, level: &str, left: f64| Space {
        id: id.to_owned(),
        name: id.to_uppercase(),
        level: Some(level.to_owned()),
        outline: vec![(left, 0.0), (left + 6.0, 0.0), (left + 6.0, 6.0), (left, 6.0)],
        outdoors: false,
    };
    // Far off on both sides, so that the house is a part of its level only.
    let yard = |id: &str, at: f64| Space {
        outline: vec![(at, at), (at + 6.0, at), (at + 6.0, at + 6.0), (at, at + 6.0)],
        outdoors: true,
        ..space(id, "up", 0.0)
    };
    let level = |id: &str, elevation_m: f64| Level {
        id: id.to_owned(),
        name: id.to_uppercase(),
        elevation_m,
        plan: None,
    };
    let thing = |id: &str, kind: Kind, space: &str, x: f64, y: f64| Component {
        space: Some(space.to_owned()),
        at: Some((x, y, 1.0)),
        ..Component::new(id, kind, id)
    };
    let stairs = Passage {
        at: Some((11.0, 5.0)),
        stairs: true,
        to_at: Some((11.0, 1.0)),
        ..Passage::new("bath", "cellar")
    };
    let door = Passage { at: Some((6.0, 3.0)), ..Passage::new("den", "bath") };
    Home {
        format: 1,
        name: "Hut".to_owned(),
        levels: vec![level("low", 0.0), level("up", 3.0)],
        spaces: vec![
            space("cellar", "low", 6.0),
            space("den", "up", 0.0),
            space("bath", "up", 6.0),
            yard("front", -20.0),
            yard("back", 20.0),
        ],
        passages: vec![door, stairs],
        components: vec![
            thing("street", Kind::WaterMain, "cellar", 6.5, 0.5),
            thing("main", Kind::IsolatingValve, "cellar", 7.0, 5.0),
            thing("riser", Kind::Pipe, "cellar", 9.0, 5.0),
            thing("branch", Kind::Pipe, "bath", 9.0, 4.0),
            thing("tap", Kind::Tap, "den", 4.0, 2.5),
            thing("basin", Kind::Basin, "bath", 8.0, 4.5),
        ],
        connections: vec![
            Connection::new("street", "main", Medium::ColdWater),
            Connection::new("main", "riser", Medium::ColdWater),
            Connection::new("riser", "branch", Medium::ColdWater),
            Connection::new("branch", "tap", Medium::ColdWater),
            Connection::new("branch", "basin", Medium::ColdWater),
        ],
        ..Home::default()
    }
}

/// The hut with water at its tap.
fn wet_hut(size: [f32; 2]) -> Harness<'static, App> {
    let mut harness = harness(Opening::new(hut(), None, vec![]), size);
    press(&mut harness, &trouble(Trouble::Leak));
    press(&mut harness, "tap");
    assert!(harness.state().answer().is_some());
    harness
}

fn rect(harness: &Harness<'_, App>, label: &str) -> Rect {
    harness.get_by_label(label).rect()
}

/// How far two pins are apart on the screen: how near one looks.
fn apart(harness: &Harness<'_, App>) -> f32 {
    let pin = |label: &str| rect(harness, label).center();
    pin("Pin: tap").distance(pin("Pin: basin"))
}

/// The page on which the spot is picked, with the pins of the upper floor.
fn where_is_it() -> Harness<'static, App> {
    let mut harness = harness(Opening::new(hut(), None, vec![]), WIDE);
    press(&mut harness, &trouble(Trouble::Leak));
    press(&mut harness, "UP");
    harness.get_by_label("Pin: tap");
    harness
}

fn key(harness: &mut Harness<'_, App>, key: Key) {
    harness.key_press(key);
    harness.run();
}

#[test]
fn the_plan_is_moved_and_brought_nearer_by_keys() {
    let mut harness = where_is_it();
    harness.get_by_label("Plan of: UP").focus();
    harness.run();
    let at_first = apart(&harness);
    key(&mut harness, Key::Num0);
    let whole = apart(&harness);
    assert!(whole < at_first * 0.8, "{at_first} {whole}");
    key(&mut harness, Key::Plus);
    let nearer = apart(&harness);
    assert!((nearer / whole - 1.4).abs() < 0.05, "{whole} {nearer}");
    key(&mut harness, Key::Home);
    // The arrows move the plan, and the focus stays where it is.
    let before = rect(&harness, "Pin: tap").center();
    key(&mut harness, Key::ArrowLeft);
    let after = rect(&harness, "Pin: tap").center();
    assert!(after.x > before.x + 5.0, "{before} {after}");
    assert!(harness.get_by_label("Plan of: UP").is_focused());
    key(&mut harness, Key::ArrowUp);
    assert!(rect(&harness, "Pin: tap").center().y > after.y + 5.0);
    key(&mut harness, Key::Num0);
    key(&mut harness, Key::Minus);
    assert!((apart(&harness) - whole).abs() < 0.5, "no farther than the whole floor");
    key(&mut harness, Key::Home);
    assert!((apart(&harness) - at_first).abs() < 0.5, "what matters again");
}

#[test]
fn the_keys_are_left_alone_while_the_focus_is_elsewhere() {
    let mut harness = where_is_it();
    let before = apart(&harness);
    // The search has the focus.
    key(&mut harness, Key::Minus);
    key(&mut harness, Key::Num0);
    let search = harness.get_by_role(Role::TextInput).value();
    assert_eq!(
        harness.query_by_label("Pin: tap").map(|_| apart(&harness)),
        Some(before),
        "{search:?}"
    );
}

#[test]
fn a_wheel_brings_nearer_what_is_under_the_pointer() {
    let mut harness = where_is_it();
    let pointer = rect(&harness, "Pin: tap").center();
    let before = (apart(&harness), rect(&harness, "Pin: tap").center());
    harness.hover_at(pointer);
    harness.run();
    harness.event(Event::MouseWheel {
        unit: MouseWheelUnit::Point,
        delta: vec2(0.0, 120.0),
        phase: TouchPhase::Move,
        source: egui::MouseWheelSource::Unknown,
        modifiers: Modifiers::NONE,
    });
    harness.run();
    let after = (apart(&harness), rect(&harness, "Pin: tap").center());
    assert!(after.0 > before.0 * 1.2, "{before:?} {after:?}");
    assert!(after.1.distance(before.1) < 3.0, "{before:?} {after:?}");
}

/// A press and a release of the mouse, where the pointer stays afterwards.
fn click(harness: &mut Harness<'_, App>, at: Pos2) {
    harness.event(Event::PointerMoved(at));
    harness.step();
    for pressed in [true, false] {
        let button = PointerButton::Primary;
        harness.event(Event::PointerButton {
            pos: at,
            button,
            pressed,
            modifiers: Modifiers::NONE,
        });
        harness.step();
    }
}

#[test]
fn a_double_click_comes_nearer_at_once() {
    let mut harness = where_is_it();
    let before = apart(&harness);
    // Between the two pins, where no pin is in the way.
    let pin = |label: &str| rect(&harness, label).center();
    let free = pin("Pin: tap").lerp(pin("Pin: basin"), 0.5);
    // A home whose rooms are no spots: a click on one only searches for it.
    click(&mut harness, free);
    click(&mut harness, free);
    harness.run();
    if harness.state().answer().is_none() {
        let near = apart(&harness);
        assert!((near / before - 2.0).abs() < 0.1, "{before} {near}");
    }
}

#[test]
fn the_plan_is_dragged_without_picking_anything() {
    let mut harness = where_is_it();
    press(&mut harness, "Closer");
    let pin = |harness: &Harness<'_, App>, label: &str| rect(harness, label).center();
    let (tap, basin) = (pin(&harness, "Pin: tap"), pin(&harness, "Pin: basin"));
    let (from, by) = (tap.lerp(basin, 0.5), vec2(40.0, 25.0));
    harness.event(Event::PointerMoved(from));
    harness.step();
    let button = |pressed: bool, pos: Pos2| Event::PointerButton {
        pos,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    };
    harness.event(button(true, from));
    harness.step();
    for part in [0.3, 0.6, 1.0] {
        harness.event(Event::PointerMoved(from + by * part));
        harness.step();
    }
    harness.event(button(false, from + by));
    harness.run();
    let moved = pin(&harness, "Pin: tap") - tap;
    assert!((moved - by).length() < 2.0, "{moved:?}");
    assert!(harness.state().answer().is_none());
}

#[test]
fn the_buttons_do_the_same_and_are_big_enough() {
    let mut harness = where_is_it();
    let at_first = apart(&harness);
    for label in ["Closer", "Farther", "Whole floor", "What matters"] {
        let rect = rect(&harness, label);
        assert!(rect.width() >= 44.0 && rect.height() >= 44.0, "{label} {rect}");
    }
    press(&mut harness, "Whole floor");
    let whole = apart(&harness);
    press(&mut harness, "Closer");
    press(&mut harness, "Closer");
    assert!(apart(&harness) > whole * 1.3);
    press(&mut harness, "Farther");
    press(&mut harness, "Farther");
    assert!((apart(&harness) - whole).abs() < 0.5);
    press(&mut harness, "What matters");
    assert!((apart(&harness) - at_first).abs() < 0.5);
}

#[test]
fn another_level_and_another_page_are_looked_at_anew() {
    let mut harness = where_is_it();
    let at_first = apart(&harness);
    for _ in 0..3 {
        press(&mut harness, "Closer");
    }
    press(&mut harness, "LOW");
    press(&mut harness, "UP");
    assert!((apart(&harness) - at_first).abs() < 0.5);
}

#[test]
fn every_pin_can_be_pressed_by_keyboard_in_reading_order() {
    let mut harness = where_is_it();
    harness.get_by_label("Plan of: UP").focus();
    harness.run();
    let mut order = Vec::new();
    for _ in 0..6 {
        key(&mut harness, Key::Tab);
        let pins = harness.query_all_by_role(Role::Button).filter(|node| node.is_focused());
        order.extend(pins.filter_map(|node| node.accesskit_node().label()));
    }
    // The tap is in the upper left, the basin below it to the right, the buttons last.
    let pins: Vec<&str> = order.iter().map(String::as_str).take(2).collect();
    assert_eq!(pins, ["Pin: tap", "Pin: basin"], "{order:?}");
    assert!(order.contains(&"What matters".to_owned()), "{order:?}");
    harness.get_by_label("Pin: tap").focus();
    harness.run();
    key(&mut harness, Key::Enter);
    assert_eq!(harness.state().answer().expect("an answer").at, ["tap"]);
}

#[test]
fn the_plan_shows_the_level_of_the_device_and_the_stairs_lead_back() {
    let mut harness = wet_hut(WIDE);
    harness.get_by_label("Plan of: LOW");
    harness.get_by_label("Go to: main");
    assert!(harness.query_by_label_contains("Your way: ").is_some());
    harness.get_by_label("Water pipe to the trouble");
    press(&mut harness, "Comes from: UP");
    harness.get_by_label("Plan of: UP");
    harness.get_by_label("Trouble is here: tap");
    assert!(harness.query_by_label_contains("Your way: ").is_some());
    press(&mut harness, "Goes on: LOW");
    harness.get_by_label("Plan of: LOW");
}

#[test]
fn a_home_without_doors_is_told_a_straight_line() {
    let home = Home { passages: vec![], ..hut() };
    let mut harness = harness(Opening::new(home, None, vec![]), WIDE);
    press(&mut harness, &trouble(Trouble::Leak));
    press(&mut harness, "basin");
    assert!(harness.query_by_label_contains("Straight there, ").is_some());
    assert!(harness.query_by_label_contains("Comes from: ").is_none());
}

#[test]
fn on_a_page_that_scrolls_the_wheel_scrolls_the_page() {
    let mut harness = wet_hut(NARROW);
    let label = "Plan of: LOW";
    harness.get_by_label(label).scroll_to_me();
    harness.run();
    let before = (rect(&harness, label), rect(&harness, "Go to: main").center());
    harness.hover_at(before.0.center());
    harness.event(Event::MouseWheel {
        unit: MouseWheelUnit::Point,
        delta: vec2(0.0, -60.0),
        phase: TouchPhase::Move,
        source: egui::MouseWheelSource::Unknown,
        modifiers: Modifiers::NONE,
    });
    harness.run();
    let after = (rect(&harness, label), rect(&harness, "Go to: main").center());
    let (plan, pin) = (after.0.min - before.0.min, after.1 - before.1);
    // The pin goes with the plan: nothing came nearer.
    assert!((plan - pin).length() < 1.0, "{plan:?} {pin:?}");
}

#[test]
fn a_plan_that_is_decoded_says_so_and_a_missing_one_too() {
    let mut harness = harness(Opening::built_in(), WIDE);
    press(&mut harness, &trouble(Trouble::Leak));
    // Decoding ends sooner or later, and then nobody is told to wait.
    for _ in 0..400 {
        if harness.query_by_label_contains("The picture is coming").is_none() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(25));
        harness.run();
    }
    assert!(harness.query_by_label_contains("The picture is coming").is_none());
    let mut home = hut();
    for level in &mut home.levels {
        level.plan = Some(quarterturn_home::Plan {
            picture: "missing.png".to_owned(),
            left_m: 0.0,
            top_m: 0.0,
            width_m: 12.0,
            mirrored: false,
        });
    }
    let mut missing = self::harness(Opening::new(home, None, vec![]), WIDE);
    press(&mut missing, &trouble(Trouble::Leak));
    for _ in 0..100 {
        if missing.query_by_label_contains("missing.png").is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(25));
        missing.run();
    }
    assert!(missing.query_by_label_contains("The picture missing.png cannot be shown").is_some());
    // The rooms are drawn all the same.
    assert!(missing.query_by_label_contains("Plan of: ").is_some());
}
