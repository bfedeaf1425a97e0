//! The walk with the map in hand: from a home with one empty level to pins with lines, by mouse, by
//! keyboard and in Spanish, found by the names that a screen reader reads.

#![expect(clippy::expect_used, clippy::unwrap_used, reason = "a test that cannot go on stops")]

use std::time::Duration;

use egui::accesskit::Role;
use egui::{Key, Modifiers, Pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Date, DeviceState, FORMAT, Home, Kind, Level};
use quarterturn_window::{App, Opening};

/// Someone who walks round.
struct Walker {
    at: Harness<'static, App>,
    words: Catalogue,
}

impl Walker {
    /// In a home of one level of which nothing is known, with the map open.
    fn begin(language: &str) -> Self {
        let level = Level {
            id: "ground".to_owned(),
            name: "Ground floor".to_owned(),
            elevation_m: 0.0,
            plan: None,
        };
        let home = Home { format: FORMAT, levels: vec![level], ..Home::default() };
        Self::at(home, language, [1280.0, 800.0])
    }

    fn at(home: Home, language: &str, size: [f32; 2]) -> Self {
        let words = Catalogue::in_language(language);
        let app = App::new(Opening::new(home, None, Vec::new()), Catalogue::in_language(language))
            .on_day(Date::new(2026, 11, 25));
        let mut at = Harness::builder()
            .with_size(size)
            .with_max_steps(20)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        let mut walker = Self { at, words };
        walker.press_text("quiet");
        walker.press_text("open-map");
        walker
    }

    fn text(&self, key: &str) -> String {
        self.words.text(&format!("window-{key}"))
    }

    fn press(&mut self, label: &str) {
        self.at.get_by_role_and_label(Role::Button, label).scroll_to_me();
        self.at.run();
        self.at.get_by_role_and_label(Role::Button, label).click();
        self.at.run();
    }

    fn press_text(&mut self, key: &str) {
        let label = self.text(key);
        self.press(&label);
    }

    fn type_into(&mut self, key: &str, text: &str) {
        let label = self.text(key);
        let is_field = |role| matches!(role, Role::TextInput | Role::MultilineTextInput);
        let fields = self.at.query_all_by_label(&label);
        let field = fields.into_iter().find(|node| is_field(node.accesskit_node().role()));
        let field = field.unwrap_or_else(|| panic!("no field {label}"));
        field.focus();
        field.type_text(text);
        self.at.run();
    }

    fn buttons(&self) -> Vec<String> {
        let nodes = self.at.query_all_by_role(Role::Button);
        nodes.filter_map(|node| node.accesskit_node().label()).collect()
    }

    fn plan(&self) -> String {
        self.words.fill("window-plan-of", &[fill("level", "Ground floor")])
    }

    /// A point of the plan, as parts of its width and height.
    fn point(&self, x: f32, y: f32) -> Pos2 {
        let plan = self.at.get_by_label(&self.plan()).rect();
        plan.min + plan.size() * egui::vec2(x, y)
    }

    /// Presses a point of the plan.
    fn press_plan(&mut self, x: f32, y: f32) {
        let at = self.point(x, y);
        self.at.event(egui::Event::PointerMoved(at));
        self.at.run();
        for pressed in [true, false] {
            self.at.event(egui::Event::PointerButton {
                pos: at,
                button: egui::PointerButton::Primary,
                pressed,
                modifiers: Modifiers::NONE,
            });
            self.at.run();
        }
    }

    /// Searches for something, picks it, and presses its place.
    fn pin(&mut self, search: &str, pick: &str, x: f32, y: f32) {
        self.type_into("walk-search", search);
        self.press(pick);
        self.press_plan(x, y);
        self.clear_search(search);
    }

    /// Goes on to the next thing, with nothing typed.
    fn clear_search(&mut self, search: &str) {
        self.press_text("device-next");
        let label = self.text("walk-search");
        self.at.get_by_role_and_label(Role::TextInput, &label).focus();
        for _ in 0..search.chars().count() {
            self.at.key_press(Key::End);
            self.at.key_press(Key::Backspace);
            self.at.run();
        }
    }

    fn home(&self) -> &Home {
        self.at.state().home()
    }

    fn of(&self, kind: Kind) -> usize {
        self.home().components.iter().filter(|c| c.kind == kind).count()
    }

    /// Presses undo or redo while there is something to take back or make again; how often.
    fn all_of(&mut self, key: &str) -> usize {
        let nothing = self.text(&format!("{key}-nothing"));
        let begin = self.words.fill(&format!("edit-{key}"), &[fill("what", "")]);
        let mut times = 0;
        while !self.buttons().contains(&nothing) {
            let label = self.buttons().into_iter().find(|label| label.starts_with(begin.trim()));
            self.press(&label.expect("a button that says what it takes back"));
            times += 1;
            assert!(times < 100, "{:?}", self.buttons());
        }
        times
    }

    /// Waits for what a thread works out.
    fn wait_for(&mut self, is_there: impl Fn(&Self) -> bool) {
        for _ in 0..400 {
            if is_there(self) {
                return;
            }
            std::thread::sleep(Duration::from_millis(25));
            self.at.run();
        }
        panic!("it never came: {:?}", self.buttons());
    }
}

fn set(words: &Catalogue, id: &str) -> String {
    words.text(&format!("set-{id}"))
}

/// Pins a main shutoff, a basin and a toilet, accepts what is proposed, undoes all and redoes all.
fn story(language: &str, main: &str, basin: &str, toilet: &str) {
    let mut walker = Walker::begin(language);
    let before = walker.home().clone();
    let name = set(&walker.words, "water-service");
    walker.pin(main, &name, 0.2, 0.3);
    assert_eq!(walker.of(Kind::WaterMain), 1);
    // A device without a room would be on no level: the level is told as one.
    let main_valve = walker.home().components.iter().find(|c| c.tag.as_deref() == Some("W1"));
    let main_valve = main_valve.expect("the first tag");
    assert_eq!(walker.home().level_of(main_valve).map(|l| l.id.as_str()), Some("ground"));

    let name = set(&walker.words, "house-drain");
    walker.press(&name);
    walker.press_plan(0.8, 0.8);
    walker.press_text("device-next");
    let mut edits = 2;
    for (search, id, x) in [(basin, "basin", 0.5), (toilet, "toilet", 0.7)] {
        let name = set(&walker.words, id);
        walker.type_into("walk-search", search);
        walker.press(&name);
        walker.press_plan(x, 0.5);
        edits += 1;
        let lines = walker.home().connections.len();
        // All that is proposed is accepted with one press, and is one undo.
        let all = walker.words.text("window-offers-all");
        let begin = all.split('\u{2068}').next().unwrap_or_default().to_owned();
        let begin = begin.split('{').next().unwrap_or_default().trim().to_owned();
        let accept = walker.buttons().into_iter().find(|label| label.starts_with(&begin));
        let accept = accept.unwrap_or_else(|| panic!("{begin}: {:?}", walker.buttons()));
        walker.press(&accept);
        edits += 1;
        assert!(walker.home().connections.len() > lines, "{id}");
        walker.clear_search(search);
    }
    assert_eq!((walker.of(Kind::Basin), walker.of(Kind::Toilet)), (1, 1));
    let toilet = walker.home().components.iter().find(|c| c.kind == Kind::Toilet).unwrap();
    let drained = walker.home().connections.iter().any(|line| line.from == toilet.id);
    assert!(drained, "the toilet drains somewhere: {:?}", walker.home().connections);

    let after = walker.home().clone();
    assert_eq!(walker.all_of("undo"), edits);
    assert_eq!(walker.home(), &before);
    assert_eq!(walker.all_of("redo"), edits);
    assert_eq!(walker.home(), &after);
}

#[test]
fn from_an_empty_level_to_a_toilet_that_has_water_and_a_drain() {
    story("en", "main shutoff", "lavatory", "water closet");
}

#[test]
fn the_same_in_spanish() {
    story("es", "llave general", "lavamanos", "inodoro");
}

#[test]
fn by_keyboard_alone() {
    let mut walker = Walker::begin("en");
    walker.type_into("walk-search", "toilet");
    walker.at.key_press(Key::Enter);
    walker.at.run();
    // Enter took the first that was found; the tab key goes to the plan.
    let plan = walker.plan();
    let mut tabs = 0;
    while !walker.at.get_by_label(&plan).accesskit_node().is_focused() {
        walker.at.key_press(Key::Tab);
        walker.at.run();
        tabs += 1;
        assert!(tabs < 60, "the plan is not reached");
    }
    for _ in 0..3 {
        walker.at.key_press(Key::ArrowRight);
        walker.at.run();
    }
    walker.at.key_press(Key::ArrowUp);
    walker.at.run();
    assert!(walker.at.get_by_label(&plan).accesskit_node().is_focused(), "arrows stay on the plan");
    walker.at.key_press(Key::Enter);
    walker.at.run();
    let toilet = walker.home().components.iter().find(|c| c.kind == Kind::Toilet);
    let (x, y, _) = toilet.expect("Enter puts it there").at.expect("a place");
    // The empty level shows 10 by 10 metres, and the cross-hair begins in the middle.
    assert!(x > 5.0 && x < 7.0 && y < 5.0 && y > 4.0, "{x} {y}");

    // Its pin is picked; with the focus on it the arrows move it, all of them one undo.
    let id = toilet.unwrap().id.clone();
    let name = toilet.unwrap().name.clone();
    let pin = walker.words.fill("window-pin", &[fill("device", &name)]);
    walker.at.get_by_label(&pin).focus();
    walker.at.run();
    for _ in 0..5 {
        walker.at.key_press(Key::ArrowLeft);
        walker.at.run();
    }
    let moved = walker.home().component(&id).unwrap().at.unwrap();
    assert!((x - moved.0 - 0.5).abs() < 1e-6, "{moved:?}");
    assert_eq!(walker.all_of("undo"), 2);
}

#[test]
fn a_device_is_changed_copied_and_deleted_once_what_goes_with_it_was_seen() {
    let mut walker = Walker::begin("en");
    let valve = walker.words.text("kind-isolating-valve");
    walker.type_into("walk-search", "stopcock");
    let valve = walker.buttons().into_iter().find(|b| b.to_lowercase() == valve).unwrap();
    walker.press(&valve);
    walker.press_plan(0.5, 0.5);
    let id = walker.home().components[0].id.clone();
    walker.type_into("field-name", "X");
    walker.type_into("field-note", "behind the stairs");
    assert!(walker.home().components[0].name.contains('X'));
    assert_eq!(walker.home().components[0].note.as_deref(), Some("behind the stairs"));
    let tried = [fill("what", &walker.text("device-state")), fill("choice", "stuck")];
    let tried = walker.words.fill("window-device-choice", &tried);
    walker.press(&tried);
    let operates = walker.home().components[0].operates.clone().unwrap();
    assert_eq!(operates.state, DeviceState::Seized);
    assert_eq!(operates.exercised, Date::new(2026, 11, 25));
    // Nonsense is told, and changes nothing.
    let before = walker.home().clone();
    walker.type_into("field-height", "high");
    walker.at.get_by_label(&walker.text("field-no-sense"));
    assert_eq!(walker.home(), &before);

    walker.press_text("device-copy");
    assert_eq!(walker.of(Kind::IsolatingValve), 2);
    let copied = walker.home().components[1].clone();
    assert_eq!((copied.tag, copied.photo), (None, None));
    walker.press_text("device-delete");
    assert_eq!(walker.of(Kind::IsolatingValve), 2, "it is asked first");
    let name = [fill("name", &copied.name)];
    let now = walker.words.fill("window-device-delete-now", &name);
    walker.press(&now);
    assert_eq!(walker.home().components.len(), 1);
    assert_eq!(walker.home().components[0].id, id);
}

#[test]
fn what_is_missing_leads_to_where_it_is_put_right() {
    let mut walker = Walker::begin("en");
    walker.wait_for(|w| w.buttons().iter().any(|b| b.starts_with("Next:")));
    walker.press_text("map-missing");
    let water = walker.words.text("missing-water-service");
    let fix = walker.words.fill("window-missing-fix-name", &[fill("what", &water)]);
    walker.wait_for(|w| w.buttons().contains(&fix) || w.buttons().len() > 8);
    // The number is typed where it is missing.
    walker.type_into("missing-emergency", "555-0112");
    let phone = walker.words.text("missing-emergency-phone");
    let keep = walker.words.fill("window-missing-fix-name", &[fill("what", &phone)]);
    walker.press(&keep);
    assert_eq!(walker.home().emergency_phone.as_deref(), Some("555-0112"));
    walker.wait_for(|w| !w.buttons().contains(&keep));
}

#[test]
fn on_a_narrow_window_the_plan_is_pressed_too() {
    let mut walker = Walker::begin("en");
    let home = walker.home().clone();
    walker = Walker::at(home, "en", [640.0, 400.0]);
    let name = set(&walker.words, "toilet");
    walker.press(&name);
    let plan = walker.plan();
    walker.at.get_by_label(&plan).scroll_to_me();
    walker.at.run();
    walker.at.get_by_label(&plan).click();
    walker.at.run();
    assert_eq!(walker.of(Kind::Toilet), 1);
}

#[test]
fn a_set_of_outlets_goes_on_the_breaker_that_is_told_or_is_looked_for() {
    let mut walker = Walker::begin("en");
    walker.pin("panel with", "Panel with its breakers", 0.2, 0.3);
    walker.type_into("walk-search", "outlets");
    walker.press("Outlets");
    walker.press_plan(0.6, 0.6);
    // Four were put there together: what is told of one goes for all.
    walker.press("Breaker 7");
    let fed = |walker: &Walker| -> Vec<String> {
        let home = walker.at.state().home();
        let breaker = home.components.iter().find(|c| c.circuit.as_deref() == Some("7")).unwrap();
        let lines = home.connections.iter().filter(|line| line.from == breaker.id);
        lines.map(|line| line.to.clone()).collect()
    };
    assert_eq!(fed(&walker).len(), 4);
    assert!(!walker.buttons().contains(&"Breaker 7".to_owned()), "it is told");
    walker.press("Undo: breaker of Outlet 1, Ground floor");
    assert_eq!(fed(&walker), Vec::<String>::new());
    // Nobody knows: the search is of these four, and begins at once.
    walker.press_text("breaker-find");
    let things = |walker: &Walker| {
        let dead = |label: &String| label.starts_with("Outlet ") && label.ends_with(": Dead");
        walker.buttons().iter().filter(|label| dead(label)).count()
    };
    assert_eq!(things(&walker), 4, "{:?}", walker.buttons());
}
