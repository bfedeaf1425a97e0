//! The window without a display: clicked and typed into as a person would, read as a screen reader would.

#![expect(clippy::expect_used, reason = "a test that cannot go on stops")]

use std::path::{Path, PathBuf};

use egui::accesskit::Role;
use egui::{Key, Theme, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_guidance::{Catalogue, Trouble};
use quarterturn_home::{
    Component, Connection, Home, Kind, Level, Medium, Problem, Severity, Space,
};
use quarterturn_window::{App, Opening};

const WIDE: [f32; 2] = [1280.0, 800.0];

fn harness(opening: Opening, size: [f32; 2]) -> Harness<'static, App> {
    let app = App::new(opening, Catalogue::english());
    let mut harness = Harness::builder()
        .with_size(size)
        .with_max_steps(12)
        .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
    harness.run();
    harness
}

fn built_in() -> Harness<'static, App> {
    harness(Opening::built_in(), WIDE)
}

fn trouble(trouble: Trouble) -> String {
    let words = Catalogue::english();
    let key = format!("trouble-{}", trouble.id());
    format!("{}, {}", words.text(&key), words.text(&format!("{key}-hint")))
}

fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

/// Presses what may have to be scrolled to first.
fn press_anywhere(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    press(harness, label);
}

/// Says of the step to do now that it is done, whatever the button is called.
fn done(harness: &mut Harness<'_, App>) {
    let label = ["It worked", "Done"].into_iter().find(|l| harness.query_by_label(l).is_some());
    press_anywhere(harness, label.expect("a step to do"));
}

/// Turns to the part of the answer whose name begins so.
fn turn(harness: &mut Harness<'_, App>, part: &str) {
    let label = harness
        .query_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .find(|label| label.starts_with(part))
        .unwrap_or_else(|| panic!("no part {part}"));
    press_anywhere(harness, &label);
}

/// Every text on the screen, as a screen reader has it.
fn texts(harness: &Harness<'_, App>) -> Vec<String> {
    let mut texts = Vec::new();
    collect(harness.root(), &mut texts);
    texts
}

fn collect(node: Node<'_>, texts: &mut Vec<String>) {
    let inner = node.accesskit_node();
    texts.extend(inner.label());
    texts.extend(inner.value());
    for child in node.children() {
        collect(child, texts);
    }
}

fn has_text(harness: &Harness<'_, App>, part: &str) -> bool {
    texts(harness).iter().any(|text| text.contains(part))
}

/// No key of a missing text, no place left unfilled.
fn check_texts(harness: &Harness<'_, App>) {
    for text in texts(harness) {
        assert!(!text.contains("[window-") && !text.contains("{$"), "{text}");
        assert!(!text.starts_with('[') || !text.ends_with(']'), "{text}");
    }
}

#[test]
fn a_trouble_is_answered_in_two_clicks() {
    let mut harness = built_in();
    press(&mut harness, &trouble(Trouble::Leak));
    assert!(harness.state().answer().is_none());
    press(&mut harness, "W40 Dishwasher");
    let answer = harness.state().answer().expect("an answer after two clicks");
    assert_eq!(answer.trouble, "leak");
    assert_eq!(answer.at, ["dishwasher"]);
    // By hand on the plan: the dishwasher hangs on its own stop under the kitchen sink.
    assert_eq!(answer.sets[0].close, ["dishwasher-stop"]);
    harness.get_by_label("Go to: Dishwasher stop under the kitchen sink");
    assert!(has_text(&harness, "Close: Dishwasher stop under the kitchen sink (W39)"));
    harness.get_by_label("Plan of: Ground floor");
}

#[test]
fn the_spot_can_be_picked_on_the_plan() {
    let mut harness = built_in();
    press(&mut harness, &trouble(Trouble::Leak));
    press(&mut harness, "Pin: Kitchen sink");
    assert_eq!(harness.state().answer().expect("an answer").at, ["kitchen-sink"]);
}

#[test]
fn a_room_on_the_plan_is_a_spot() {
    // Two rooms side by side, drawn from their outlines: the hall is the right half.
    let mut harness = harness(Opening::new(two_rooms(), None, vec![]), WIDE);
    press(&mut harness, &trouble(Trouble::WaterFromAbove));
    let plan = harness.get_by_label("Plan of: Ground floor").rect();
    let at = plan.left_top() + vec2(plan.width() * 0.75, plan.width() * 0.2);
    harness.hover_at(at);
    harness.run();
    harness.drag_at(at);
    harness.drop_at(at);
    harness.run();
    assert!(harness.state().answer().is_some());
    harness.get_by_label("Anywhere in: Hall");
}

#[test]
fn a_room_that_has_nothing_to_do_with_it_cannot_be_picked() {
    let mut home = two_rooms();
    home.components.iter_mut().for_each(|c| c.space = Some("kitchen".to_owned()));
    let mut harness = harness(Opening::new(home, None, vec![]), WIDE);
    press(&mut harness, &trouble(Trouble::Leak));
    let plan = harness.get_by_label("Plan of: Ground floor").rect();
    let at = plan.left_top() + vec2(plan.width() * 0.85, plan.width() * 0.05);
    harness.hover_at(at);
    harness.run();
    harness.drag_at(at);
    harness.drop_at(at);
    harness.run();
    assert!(harness.state().answer().is_none());
    assert!(!has_text(&harness, "Nothing here is called"));
}

#[test]
fn it_wont_turn_gives_another_answer_at_once_and_can_be_taken_back() {
    let mut harness = built_in();
    press(&mut harness, &trouble(Trouble::Leak));
    press(&mut harness, "W40 Dishwasher");
    let first = harness.state().answer().expect("an answer").clone();
    let stuck = first.sets[0].close[0].clone();
    press(&mut harness, "It won’t turn");
    let second = harness.state().answer().expect("an answer").clone();
    assert_ne!(first.sets[0].close, second.sets[0].close);
    assert!(second.sets.iter().all(|set| !set.close.contains(&stuck)), "{:?}", second.sets);
    press_anywhere(&mut harness, "Dishwasher stop under the kitchen sink does work after all");
    assert_eq!(harness.state().answer(), Some(&first));
}

#[test]
fn done_brings_the_next_step_and_can_be_taken_back() {
    let mut harness = built_in();
    press(&mut harness, &trouble(Trouble::WaterFromAbove));
    press_anywhere(&mut harness, "Anywhere in: Living room");
    let steps = harness.state().answer().expect("an answer").steps.len();
    assert!(has_text(&harness, &format!("step 1 of {steps}")));
    for n in 2..=steps {
        done(&mut harness);
        assert!(has_text(&harness, &format!("step {n} of {steps}")), "{n}");
    }
    done(&mut harness);
    harness.get_by_label("Every step is done.");
    press_anywhere(&mut harness, "Go back one step");
    assert!(has_text(&harness, &format!("step {steps} of {steps}")));
    turn(&mut harness, "All steps");
    press_anywhere(&mut harness, "Step 2 is not done");
    turn(&mut harness, "Now");
    assert!(has_text(&harness, &format!("step 2 of {steps}")));
}

#[test]
fn what_was_seen_changes_the_suspects() {
    let mut harness = built_in();
    press(&mut harness, &trouble(Trouble::DeadOutlet));
    press_anywhere(&mut harness, "E29 Outlet in the half bath");
    let first = harness.state().answer().expect("an answer").clone();
    let check = first.next_check.clone().expect("a check that tells something");
    let buttons = ["It has power", "It is on", "It is dry"];
    let label = buttons.into_iter().find(|label| harness.query_by_label(label).is_some());
    press_anywhere(&mut harness, label.expect("a button for what was seen"));
    let second = harness.state().answer().expect("an answer").clone();
    assert_ne!(first.suspects, second.suspects, "after looking at {}", check.component);
    let name = Opening::built_in().home.component(&check.component).expect("known").name.clone();
    press_anywhere(&mut harness, &format!("Take back what was seen at {name}"));
    assert_eq!(harness.state().answer(), Some(&first));
}

#[test]
fn where_only_leaving_is_right_one_click_is_enough() {
    for which in Trouble::ALL.iter().copied().filter(|t| t.is_leave_first()) {
        let mut harness = built_in();
        press(&mut harness, &trouble(which));
        let answer = harness.state().answer().expect("an answer after one click");
        assert_eq!(answer.trouble, which.id());
        let first = answer.steps.first().expect("a step").text.clone();
        assert!(has_text(&harness, first.split(". ").next().expect("words")), "{which:?}");
        assert!(harness.query_by_label("Plan of: Ground floor").is_none());
        harness.get_by_label("911");
        harness.key_press(Key::Escape);
        harness.run();
        assert!(harness.state().answer().is_none());
        harness.get_by_label(&trouble(which));
    }
}

#[test]
fn where_there_is_one_spot_nobody_is_asked_for_it() {
    let mut harness = built_in();
    press(&mut harness, &trouble(Trouble::CoolingStopped));
    assert_eq!(harness.state().answer().expect("an answer").trouble, "cooling-stopped");
    harness.key_press(Key::Escape);
    harness.run();
    harness.get_by_label("What do you see?");
}

fn tab_to(harness: &mut Harness<'_, App>, label: &str) {
    for _ in 0..200 {
        if harness.query_by_label(label).is_some_and(|node| node.is_focused()) {
            return;
        }
        harness.key_press(Key::Tab);
        harness.run();
    }
    panic!("Tab never reaches {label}");
}

#[test]
fn the_keyboard_alone_is_enough() {
    let mut harness = built_in();
    tab_to(&mut harness, &trouble(Trouble::Leak));
    harness.key_press(Key::Enter);
    harness.run();
    tab_to(&mut harness, "Find by name, tag or room");
    harness.get_by_label("Find by name, tag or room").type_text("dishwahser");
    harness.run();
    assert!(harness.query_by_label("W38 Kitchen sink").is_none());
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(harness.state().answer().expect("an answer").at, ["dishwasher"]);
    tab_to(&mut harness, "It won’t turn");
    harness.key_press(Key::Enter);
    harness.run();
    assert!(has_text(&harness, "does work after all"));
    harness.key_press(Key::Escape);
    harness.run();
    harness.get_by_label("Where is it?");
    harness.key_press(Key::Escape);
    harness.run();
    harness.get_by_label("What do you see?");
}

#[test]
fn a_screen_reader_can_press_everything() {
    let mut harness = built_in();
    harness.get_by_label(&trouble(Trouble::Leak)).click_accesskit();
    harness.run();
    harness.get_by_role_and_label(Role::Button, "Pin: Kitchen sink").click_accesskit();
    harness.run();
    assert_eq!(harness.state().answer().expect("an answer").at, ["kitchen-sink"]);
    let kinds = |role: Role| harness.query_all_by_role(role).count();
    assert!(kinds(Role::Alert) > 0, "cautions are announced");
}

/// All troubles at all zooms and in both themes: no missing text, no missing glyph (the harness
/// checks those), nothing reaching out of the window sideways.
#[test]
fn every_page_fits_at_every_text_size() {
    for (zoom, theme) in [(1.0, Theme::Light), (1.5, Theme::Dark), (2.0, Theme::Light)] {
        let mut harness = built_in();
        harness.ctx.set_theme(theme);
        harness.ctx.set_zoom_factor(zoom);
        harness.run();
        fits(&harness);
        for which in Trouble::ALL {
            press_anywhere(&mut harness, &trouble(*which));
            fits(&harness);
            if harness.state().answer().is_none() {
                let spot = harness
                    .query_all_by_role(Role::Button)
                    .filter_map(|node| node.accesskit_node().label())
                    .find(|label| label.starts_with("Anywhere in") || is_tagged(label))
                    .expect("a spot");
                press_anywhere(&mut harness, &spot);
            }
            assert!(harness.state().answer().is_some(), "{which:?}");
            fits(&harness);
            while harness.query_by_label("What do you see?").is_none() {
                harness.key_press(Key::Escape);
                harness.run();
            }
        }
    }
}

/// The parts of an answer, the log and practice, twice as big and in a narrow window.
#[test]
fn every_part_fits_at_twice_the_size() {
    for size in [WIDE, [760.0, 800.0]] {
        let mut harness = harness(Opening::built_in(), size);
        harness.ctx.set_zoom_factor(2.0);
        harness.run();
        for (which, start) in [
            (Trouble::Leak, "Anywhere in: Kitchen"),
            (Trouble::SewageRising, "S4 "),
            (Trouble::DeadOutlet, "E31 "),
        ] {
            press_anywhere(&mut harness, &trouble(which));
            let spot = harness
                .query_all_by_role(Role::Button)
                .filter_map(|node| node.accesskit_node().label())
                .find(|label| label.starts_with(start))
                .expect("a spot");
            press_anywhere(&mut harness, &spot);
            for part in ["All steps", "Goes off", "Call", "Afterwards", "Now"] {
                turn(&mut harness, part);
                fits(&harness);
            }
            while harness.query_by_label("What do you see?").is_none() {
                harness.key_press(Key::Escape);
                harness.run();
            }
        }
        for page in ["Practice", "What happened here"] {
            press_anywhere(&mut harness, "When nothing is wrong…");
            press(&mut harness, page);
            fits(&harness);
            harness.key_press(Key::Escape);
            harness.run();
        }
    }
}

/// What one presses at a step is in sight without scrolling, as long as the plan stands beside it.
#[test]
fn the_replies_are_always_in_sight() {
    for zoom in [1.0, 1.3] {
        let mut harness = built_in();
        harness.ctx.set_zoom_factor(zoom);
        harness.run();
        press_anywhere(&mut harness, &trouble(Trouble::Leak));
        press_anywhere(&mut harness, "Anywhere in: Kitchen");
        let window = harness.ctx.content_rect();
        for reply in ["It worked", "It won’t turn", "I can’t get there", "Call", "Afterwards"] {
            let rect = harness.get_by_role_and_label(Role::Button, reply).rect();
            assert!(window.contains_rect(rect), "{reply} {rect} at {zoom}");
        }
    }
}

/// True for a name with a tag, such as `W3 Main shutoff`.
fn is_tagged(label: &str) -> bool {
    label.split(' ').next().is_some_and(|tag| tag.ends_with(|c: char| c.is_ascii_digit()))
}

fn fits(harness: &Harness<'_, App>) {
    check_texts(harness);
    let window = harness.ctx.content_rect();
    for role in [Role::Button, Role::Label, Role::Alert, Role::TextInput] {
        for node in harness.query_all_by_role(role) {
            let rect = node.rect();
            assert!(
                rect.left() >= window.left() - 1.0 && rect.right() <= window.right() + 1.0,
                "{:?} reaches from {} to {} of {}",
                node.accesskit_node().label().or(node.accesskit_node().value()),
                rect.left(),
                rect.right(),
                window.right()
            );
        }
    }
}

/// At the usual size of the window no trouble has to be scrolled for, and what endangers life comes first.
#[test]
fn all_troubles_are_in_sight_at_once() {
    let harness = built_in();
    let window = harness.ctx.content_rect();
    let place = |which: &Trouble| harness.get_by_label(&trouble(*which)).rect();
    for which in Trouble::ALL {
        let rect = place(which);
        assert!(window.contains_rect(rect), "{which:?}: {rect} is not in {window}");
        if which.is_leave_first() {
            assert!(Trouble::ALL.iter().all(|other| rect.top() <= place(other).top()), "{which:?}");
        }
    }
}

/// 44 by 44 for what is pressed (WCAG 2.2, 2.5.5), but for pins that have to share their place.
#[test]
fn what_is_pressed_is_big_enough() {
    let mut harness = built_in();
    let big = |harness: &Harness<'_, App>, least: f32| {
        for node in harness.query_all_by_role(Role::Button) {
            let label = node.accesskit_node().label().unwrap_or_default();
            let size = node.rect().size();
            let least = if label.starts_with("Pin: ") { 24.0 } else { least };
            assert!(size.min_elem() >= least - 0.5, "{label}: {size}");
        }
    };
    big(&harness, 44.0);
    for which in Trouble::ALL {
        assert!(harness.get_by_label(&trouble(*which)).rect().height() >= 56.0);
    }
    press(&mut harness, &trouble(Trouble::Leak));
    big(&harness, 44.0);
}

fn two_rooms() -> Home {
    let room = |id: &str, name: &str, left: f64| Space {
        id: id.to_owned(),
        name: name.to_owned(),
        level: Some("ground".to_owned()),
        outline: vec![(left, 0.0), (left + 4.0, 0.0), (left + 4.0, 3.0), (left, 3.0)],
        outdoors: false,
    };
    let device = |id: &str, kind, name: &str, space: &str, at| Component {
        space: Some(space.to_owned()),
        at: Some(at),
        ..Component::new(id, kind, name)
    };
    let pipe = |from: &str, to: &str| Connection::new(from, to, Medium::ColdWater);
    Home {
        format: 1,
        name: "Two rooms".to_owned(),
        levels: vec![Level {
            id: "ground".to_owned(),
            name: "Ground floor".to_owned(),
            elevation_m: 0.0,
            plan: None,
        }],
        spaces: vec![room("kitchen", "Kitchen", 0.0), room("hall", "Hall", 4.2)],
        components: vec![
            device("street", Kind::WaterMain, "Street main", "hall", (7.0, 2.0, 0.0)),
            device("main", Kind::IsolatingValve, "Main shutoff", "hall", (5.0, 1.0, 1.0)),
            device("tap", Kind::Tap, "Kitchen tap", "kitchen", (1.0, 1.0, 1.0)),
        ],
        connections: vec![pipe("street", "main"), pipe("main", "tap")],
        ..Home::default()
    }
}

#[test]
fn a_home_without_pictures_is_drawn_from_its_rooms() {
    let mut harness = harness(Opening::new(two_rooms(), None, vec![]), WIDE);
    press(&mut harness, &trouble(Trouble::Leak));
    harness.get_by_label("Plan of: Ground floor");
    press(&mut harness, "Pin: Kitchen tap");
    assert_eq!(harness.state().answer().expect("an answer").sets[0].close, ["main"]);
    harness.get_by_label("Go to: Main shutoff");
    check_texts(&harness);
}

#[test]
fn a_picture_that_is_not_there_is_told() {
    let mut home = two_rooms();
    home.levels[0].plan = Some(quarterturn_home::Plan {
        picture: "plans/lost.png".to_owned(),
        left_m: 0.0,
        top_m: 0.0,
        width_m: 8.0,
        mirrored: false,
    });
    let folder = std::env::temp_dir();
    let mut harness = harness(Opening::new(home, Some(folder), vec![]), WIDE);
    press(&mut harness, &trouble(Trouble::WaterFromAbove));
    for _ in 0..200 {
        if has_text(&harness, "plans/lost.png") {
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
        harness.run();
    }
    panic!("{:?}", texts(&harness));
}

#[test]
fn an_empty_home_still_answers() {
    let home = Home { format: 1, name: "Nothing yet".to_owned(), ..Home::default() };
    for which in Trouble::ALL {
        let mut harness = harness(Opening::new(home.clone(), None, vec![]), WIDE);
        press(&mut harness, &trouble(*which));
        check_texts(&harness);
        assert_eq!(harness.state().answer().is_some(), which.is_leave_first(), "{which:?}");
        if !which.is_leave_first() {
            press(&mut harness, "I don’t know where");
            let answer = harness.state().answer().expect("general advice");
            assert!(!answer.steps.is_empty() && !answer.mapped, "{which:?}");
            check_texts(&harness);
        }
    }
}

#[test]
fn problems_of_the_file_are_counted_and_shown_on_demand() {
    let problem = |line| Problem {
        severity: Severity::Warning,
        file: "home.ron".to_owned(),
        line,
        column: 1,
        key: "no-components",
        args: vec![],
    };
    let opening = Opening::new(two_rooms(), None, vec![problem(3), problem(7), problem(9)]);
    let mut harness = harness(opening, WIDE);
    harness.get_by_label("3 things in this home’s file need attention.");
    assert!(!has_text(&harness, "home.ron:7:1"));
    press(&mut harness, "Show them");
    assert!(has_text(&harness, "home.ron:7:1"));
    press(&mut harness, "Hide them");
    assert!(!has_text(&harness, "home.ron:7:1"));
}

fn examples() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples")
}

#[test]
fn another_home_is_opened_by_its_path() {
    let mut harness = built_in();
    assert_eq!(harness.state().folder(), None);
    press(&mut harness, "Settings…");
    press(&mut harness, "Another home…");
    let path = harness.get_by_role_and_label(Role::TextInput, "Or type the path of the folder");
    path.focus();
    path.type_text("/nowhere/at/all");
    harness.run();
    press(&mut harness, "Open");
    assert!(has_text(&harness, "could not be read"));
    press(&mut harness, "Cancel");
    press(&mut harness, "Settings…");
    press(&mut harness, "Another home…");
    let folder = examples().join("two-storey");
    let path = harness.get_by_role_and_label(Role::TextInput, "Or type the path of the folder");
    path.focus();
    path.type_text(&folder.display().to_string());
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(harness.state().folder(), Some(folder.as_path()));
    harness.get_by_label("What do you see?");
}

#[test]
fn a_narrow_window_is_one_column() {
    let mut harness = harness(Opening::built_in(), [520.0, 700.0]);
    fits(&harness);
    press_anywhere(&mut harness, &trouble(Trouble::Leak));
    fits(&harness);
    press_anywhere(&mut harness, "W40 Dishwasher");
    fits(&harness);
    let step = harness.get_by_label("Do this first").rect();
    let plan = harness.get_by_label("Plan of: Ground floor").rect();
    assert!(step.bottom() < plan.top(), "the answer stands over the plan");
    press(&mut harness, "Settings…");
    press(&mut harness, "Bigger text");
    assert!(harness.ctx.zoom_factor() > 1.0);
}

#[test]
fn the_built_in_home_has_its_pictures() {
    let home = Opening::built_in();
    assert!(home.problems.is_empty(), "{:?}", home.problems);
    assert!(!home.home.levels.is_empty());
    for level in &home.home.levels {
        let plan = level.plan.as_ref().expect("every level has a plan");
        assert!(quarterturn_window::builtin::picture(&plan.picture).is_some(), "{}", plan.picture);
    }
    assert_eq!(quarterturn_window::builtin::picture("plans/attic.png"), None);
}
