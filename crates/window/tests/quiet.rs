//! When nothing is wrong: papers, upkeep, lines, the panel; pressed and read as a person would.

#![expect(clippy::expect_used, reason = "a test that cannot go on stops")]

use std::path::{Path, PathBuf};

use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_guidance::{Catalogue, Trouble};
use quarterturn_home::{Component, Date, DeviceState, Home, Kind, Level, Medium, Space};
use quarterturn_window::{App, Opening};

fn window(opening: Opening) -> Harness<'static, App> {
    let app = App::new(opening, Catalogue::english()).on_day(Date::new(2026, 11, 25));
    let mut harness = Harness::builder()
        .with_size([1280.0, 800.0])
        .with_max_steps(12)
        .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
    harness.run();
    harness
}

fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

fn labels(harness: &Harness<'_, App>) -> Vec<String> {
    harness
        .query_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .collect()
}

fn press_first(harness: &mut Harness<'_, App>, start: &str) {
    let found = labels(harness).into_iter().find(|label| label.starts_with(start));
    let label = found.unwrap_or_else(|| panic!("no button {start}: {:?}", labels(harness)));
    press(harness, &label);
}

fn open(harness: &mut Harness<'_, App>, page: &str) {
    press(harness, "When nothing is wrong…");
    press(harness, page);
}

fn type_into(harness: &mut Harness<'_, App>, field: &str, text: &str) {
    harness.get_by_label(field).scroll_to_me();
    harness.run();
    let field = harness.get_by_label(field);
    field.focus();
    field.type_text(text);
    harness.run();
}

fn texts(harness: &Harness<'_, App>) -> Vec<String> {
    fn collect(node: Node<'_>, texts: &mut Vec<String>) {
        let inner = node.accesskit_node();
        texts.extend(inner.label());
        texts.extend(inner.value());
        node.children().for_each(|child| collect(child, texts));
    }
    let mut texts = Vec::new();
    collect(harness.root(), &mut texts);
    texts
}

#[track_caller]
fn sees(harness: &Harness<'_, App>, part: &str) {
    let texts = texts(harness);
    assert!(texts.iter().any(|text| text.contains(part)), "{part}: {texts:?}");
}

/// Threads need a while; what they bring is taken in the next frame.
#[track_caller]
fn wait_for(harness: &mut Harness<'_, App>, part: &str) {
    for _ in 0..1500 {
        harness.run_steps(1);
        if texts(harness).iter().any(|text| text.contains(part)) {
            harness.run();
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(40));
    }
    panic!("{part} never comes: {:?}", texts(harness));
}

/// A folder of this test's own, gone when it is over.
struct Scratch(PathBuf);

impl Scratch {
    fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("quarterturn-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&path).expect("a folder");
        Self(path)
    }

    fn path(&self, name: &str) -> String {
        self.0.join(name).display().to_string()
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        let _gone = std::fs::remove_dir_all(&self.0);
    }
}

#[test]
fn the_fridge_sheet_is_seen_and_saved() {
    let scratch = Scratch::new("papers");
    let mut harness = window(Opening::built_in());
    open(&mut harness, "Papers");
    let title = Catalogue::english().text("paper-fridge");
    press_and_wait(&mut harness, &title, "Page 1 of");
    assert!(harness.query_all_by_role(Role::Image).count() > 0, "the page itself is shown");
    let file = scratch.path("fridge.pdf");
    type_into(&mut harness, "Save it as (path of the file)", &file);
    press_and_wait(&mut harness, "Save fridge-door.pdf", "Saved: ");
    assert!(std::fs::read(&file).expect("a file").starts_with(b"%PDF"));
}

/// Presses something that a thread works on.
fn press_and_wait(harness: &mut Harness<'_, App>, label: &str, part: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, label).click();
    wait_for(harness, part);
}

/// An empty log makes no paper, and says so; no page of the papers leaves the window.
#[test]
fn what_there_is_nothing_for_is_told() {
    let mut harness = window(Opening::built_in());
    open(&mut harness, "Papers");
    let title = Catalogue::english().text("paper-log");
    harness.get_by_role_and_label(Role::Button, &title).click();
    wait_for(&mut harness, &title);
    for _ in 0..200 {
        harness.run_steps(1);
        std::thread::sleep(std::time::Duration::from_millis(10));
    }
    assert!(texts(&harness).iter().all(|text| !text.contains("Page 1 of")));
}

/// A job done with a valve found seized changes the next answer; one undo takes it back.
#[test]
fn upkeep_that_finds_a_seized_valve_changes_the_answer() {
    let mut harness = window(Opening::built_in());
    let before = harness.state().home().clone();
    open(&mut harness, "Upkeep and handover");
    press(&mut harness, "Open: Close and open each water shutoff");
    type_into(&mut harness, "Who did it (initials)", "AB");
    press(&mut harness, "Dishwasher stop under the kitchen sink: Does not move");
    let after = harness.state().home().clone();
    let changed: Vec<&str> = after
        .components
        .iter()
        .filter(|c| before.component(&c.id).map(Component::state) != Some(c.state()))
        .map(|c| c.id.as_str())
        .collect();
    assert_eq!(changed, ["dishwasher-stop"], "one valve was found so, not all");
    assert_eq!(after.component("dishwasher-stop").unwrap().state(), DeviceState::Seized);
    assert!(after.done.iter().any(|done| done.by.as_deref() == Some("AB")));
    let first_set = |harness: &mut Harness<'_, App>| {
        press(harness, "← Back");
        press(harness, &leak());
        press(harness, "Pin: Dishwasher");
        harness.state().answer().expect("an answer").sets[0].close.clone()
    };
    let set = first_set(&mut harness);
    assert!(!set.contains(&"dishwasher-stop".to_owned()), "{set:?}");
    open(&mut harness, "Upkeep and handover");
    press_first(&mut harness, "Undo: ");
    assert_eq!(*harness.state().home(), before);
}

/// The tile of a leak.
fn leak() -> String {
    let words = Catalogue::english();
    let key = format!("trouble-{}", Trouble::Leak.id());
    format!("{}, {}", words.text(&key), words.text(&format!("{key}-hint")))
}

#[test]
fn a_thing_to_do_at_move_in_is_ticked_and_unticked() {
    let mut harness = window(Opening::built_in());
    let before = harness.state().home().move_in.len();
    open(&mut harness, "Upkeep and handover");
    press(&mut harness, "Moving in");
    press_first(&mut harness, "Open: ");
    type_into(&mut harness, "Who did it (initials)", "AB");
    press(&mut harness, "Done");
    let ticks = harness.state().home().move_in.clone();
    assert_eq!(ticks.len(), before + 1);
    assert!(ticks.iter().any(|tick| tick.by == "AB"));
    press_first(&mut harness, "Undo: ");
    assert_eq!(harness.state().home().move_in.len(), before);
}

/// A mirrored copy is a home of its own, without what belongs to this house's owner.
#[test]
fn a_mirrored_copy_is_written() {
    let scratch = Scratch::new("copy");
    let mut harness = window(Opening::built_in());
    open(&mut harness, "Upkeep and handover");
    press(&mut harness, "Copies and changes");
    type_into(&mut harness, "Name of the new home", "Lot 12");
    let folder = scratch.path("lot-12");
    type_into(&mut harness, "Folder to write it to", &folder);
    press(&mut harness, "Plan turned left to right");
    press_and_wait(&mut harness, "Copy for the next lot", "Saved: ");
    let copy = Opening::read(Path::new(&folder)).expect("a home");
    assert_eq!(copy.home.name, "Lot 12");
    assert!(copy.problems.is_empty(), "{:?}", copy.problems);
    assert_eq!(copy.home.components.len(), harness.state().home().components.len());
    assert!(Path::new(&folder).join("plans/ground.png").is_file(), "its plans go along");
    let at = |home: &Home| home.component("house-main").and_then(|c| c.at);
    assert_ne!(at(&copy.home), at(harness.state().home()));
    press(&mut harness, "Compare");
    wait_for(&mut harness, "Nothing has changed.");
}

#[test]
fn whom_to_call_first_is_told_with_the_reason() {
    let mut harness = window(Opening::built_in());
    open(&mut harness, "Upkeep and handover");
    press(&mut harness, "Who answers");
    sees(&harness, "Water utility, emergencies");
    press(&mut harness, "Another contact…");
    type_into(&mut harness, "Name, and for what", "Locksmith");
    type_into(&mut harness, "Number", "555-0199");
    press(&mut harness, "Keep");
    let contacts = &harness.state().home().contacts;
    assert!(contacts.iter().any(|c| c.phone.as_deref() == Some("555-0199")), "{contacts:?}");
}

/// A street main, a valve, a sink and a lamp in one room, not joined yet.
fn unjoined() -> Home {
    let at = |id: &str, kind, name: &str, x: f64| Component {
        space: Some("hall".to_owned()),
        at: Some((x, 2.0, 0.5)),
        ..Component::new(id, kind, name)
    };
    Home {
        format: 1,
        name: "One room".to_owned(),
        levels: vec![Level {
            id: "ground".to_owned(),
            name: "Ground floor".to_owned(),
            elevation_m: 0.0,
            plan: None,
        }],
        spaces: vec![Space {
            id: "hall".to_owned(),
            name: "Hall".to_owned(),
            level: Some("ground".to_owned()),
            outline: vec![(0.0, 0.0), (9.0, 0.0), (9.0, 5.0), (0.0, 5.0)],
            outdoors: false,
        }],
        components: vec![
            at("street", Kind::WaterMain, "Street main", 1.0),
            at("main", Kind::IsolatingValve, "House main", 3.0),
            at("sink", Kind::Sink, "Sink", 5.0),
            at("lamp", Kind::Light, "Lamp", 7.0),
            at("cleanout", Kind::Cleanout, "Cleanout", 8.5),
        ],
        ..Home::default()
    }
}

/// Pin by pin: what can be is drawn, what cannot be says why; one undo each.
#[test]
fn lines_are_drawn_from_pin_to_pin() {
    let mut harness = window(Opening::new(unjoined(), None, vec![]));
    open(&mut harness, "Map of the home");
    press(&mut harness, "What feeds what");
    press(&mut harness, "Pin: Street main");
    press(&mut harness, "Pin: House main");
    assert_eq!(harness.state().home().connections.len(), 1);
    press(&mut harness, "Pin: Sink");
    assert_eq!(harness.state().home().connections.len(), 2, "it goes on from where the line ends");
    press(&mut harness, "Pin: Lamp");
    let lines = &harness.state().home().connections;
    assert!(lines.iter().all(|l| l.carries == Medium::ColdWater), "{lines:?}");
    sees(&harness, "It is not clear what this line carries.");
    assert_eq!(harness.state().home().connections.len(), 2, "no power to a sink by a slip");
    press(&mut harness, "Pin: Lamp");
    press(&mut harness, "Pin: Cleanout");
    sees(&harness, "This line cannot be drawn.");
    assert_eq!(harness.state().home().connections.len(), 2);
    press_first(&mut harness, "Undo: ");
    assert_eq!(harness.state().home().connections.len(), 1);
}

#[test]
fn proposals_are_only_that_until_they_are_accepted() {
    let mut harness = window(Opening::new(unjoined(), None, vec![]));
    open(&mut harness, "Map of the home");
    press(&mut harness, "What feeds what");
    assert!(harness.state().home().connections.is_empty());
    press_first(&mut harness, "Accept Street main");
    assert_eq!(harness.state().home().connections.len(), 1);
    press_first(&mut harness, "Undo: ");
    assert!(harness.state().home().connections.is_empty());
}

/// The open data of a real two-flat house (see `tests/fixtures`): 24 circuits, and nothing lost.
#[test]
fn a_table_becomes_a_panel_directory() {
    let file =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/fixtures/duplex/circuits.csv");
    let mut harness = window(Opening::new(unjoined(), None, vec![]));
    open(&mut harness, "Map of the home");
    press(&mut harness, "Panel");
    press(&mut harness, "From a table");
    type_into(&mut harness, "Path of the file", &file.display().to_string());
    press_and_wait(&mut harness, "Read it", "Circuits: 24.");
    press(&mut harness, "Put it on the map");
    let breakers = |harness: &Harness<'_, App>| {
        harness.state().home().components.iter().filter(|c| c.kind == Kind::Breaker).count()
    };
    assert!(breakers(&harness) >= 20, "{}", breakers(&harness));
    press_first(&mut harness, "Undo: ");
    assert_eq!(breakers(&harness), 0);
}

/// Three outlets on three breakers: two walks with simulated ticks find them all.
#[test]
fn circuits_are_found_by_walking() {
    let text = r#"Home(format: 1, name: "Three", components: [
        (id: "panel", kind: Panel, name: "Panel"),
        (id: "b1", kind: Breaker, name: "One", circuit: "1"), (id: "b2", kind: Breaker, name: "Two", circuit: "2"),
        (id: "b3", kind: Breaker, name: "Three", circuit: "3"),
        (id: "o1", kind: Receptacle, name: "Left outlet"), (id: "o2", kind: Receptacle, name: "Middle outlet"),
        (id: "o3", kind: Receptacle, name: "Right outlet"),
    ], connections: [
        (from: "panel", to: "b1", carries: Power), (from: "panel", to: "b2", carries: Power),
        (from: "panel", to: "b3", carries: Power),
    ])"#;
    let home = quarterturn_home::open("home.ron", text).home.expect("a home");
    let truth = [("Left outlet", "Two"), ("Middle outlet", "One"), ("Right outlet", "Three")];
    let mut harness = window(Opening::new(home, None, vec![]));
    open(&mut harness, "Map of the home");
    press(&mut harness, "Panel");
    press(&mut harness, "Find circuits");
    press(&mut harness, "Find what hangs on the breakers");
    for _ in 0..4 {
        let shown = texts(&harness);
        let Some(off) = shown.iter().find(|text| text.starts_with("Switch off: ")).cloned() else {
            break;
        };
        for (thing, breaker) in truth {
            let label = format!("{thing}: Dead");
            if off.contains(breaker) && harness.query_by_label(&label).is_some() {
                press(&mut harness, &label);
            }
        }
        press(&mut harness, "I have looked");
    }
    press(&mut harness, "Write it to the map");
    let home = harness.state().home();
    for (thing, breaker) in [("o1", "b2"), ("o2", "b1"), ("o3", "b3")] {
        assert!(
            home.connections.iter().any(|l| l.from == breaker && l.to == thing),
            "{thing}: {:?}",
            home.connections
        );
    }
}

/// What was written down in a trouble is a paper for the insurer.
#[test]
fn the_log_is_printed() {
    let mut harness = window(Opening::built_in());
    press(&mut harness, &leak());
    press(&mut harness, "Pin: Kitchen sink");
    press(&mut harness, "It worked");
    press(&mut harness, "Afterwards");
    press(&mut harness, "See the log");
    press_and_wait(&mut harness, "Make a paper of it", "Page 1 of");
}
