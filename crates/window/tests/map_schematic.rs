//! Risers and one-lines in place of the plan: what they show, and lines drawn on them by mouse and by
//! keyboard, found by the names that a screen reader reads.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use egui::Key;
use egui::accesskit::{Role, Toggled};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Connection, Date, FORMAT, Home, Kind, Level, Medium};
use quarterturn_mapping::may_connect;
use quarterturn_window::{App, Opening};

/// Someone at the map, with the tool for lines taken.
struct Drawer {
    at: Harness<'static, App>,
    words: Catalogue,
}

impl Drawer {
    fn begin(opening: Opening, language: &str, size: [f32; 2]) -> Self {
        let words = Catalogue::in_language(language);
        let app = App::new(opening, Catalogue::in_language(language));
        let app = app.on_day(Date::new(2026, 11, 25));
        let mut at = Harness::builder()
            .with_size(size)
            .with_max_steps(20)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        let mut drawer = Self { at, words };
        for key in ["quiet", "open-map", "map-lines"] {
            drawer.press_text(key);
        }
        drawer
    }

    fn built_in() -> Self {
        Self::begin(Opening::built_in(), "en", [1280.0, 800.0])
    }

    fn press(&mut self, label: &str) {
        self.at.get_by_role_and_label(Role::Button, label).scroll_to_me();
        self.at.run();
        self.at.get_by_role_and_label(Role::Button, label).click();
        self.at.run();
    }

    fn press_text(&mut self, key: &str) {
        let label = self.words.text(&format!("window-{key}"));
        self.press(&label);
    }

    fn label(&self, name: &str) -> String {
        self.words.fill("window-schematic-box", &[fill("device", name)])
    }

    fn press_box(&mut self, name: &str) {
        let label = self.label(name);
        self.press(&label);
    }

    fn buttons(&self) -> Vec<String> {
        let nodes = self.at.query_all_by_role(Role::Button);
        nodes.filter_map(|node| node.accesskit_node().label()).collect()
    }

    fn home(&self) -> &Home {
        self.at.state().home()
    }

    fn name(&self, id: &str) -> String {
        self.home().component(id).unwrap().name.clone()
    }

    /// A tap that no line from the house main reaches yet, and one may.
    fn tap_to_join(&self) -> String {
        let home = self.home();
        let names = |name: &str| home.components.iter().filter(|c| c.name == name).count();
        let found = home.components.iter().find(|component| {
            component.kind.is_water_fixture()
                && names(&component.name) == 1
                && may_connect(home, "house-main", &component.id, Medium::ColdWater).is_ok()
        });
        found.unwrap().id.clone()
    }

    fn shows(&self, text: &str) -> bool {
        self.at.query_by_label(text).is_some()
    }
}

#[test]
fn the_riser_of_the_built_in_home_shows_the_house_main_and_the_kitchen_sink() {
    let mut drawer = Drawer::built_in();
    assert!(!drawer.buttons().contains(&drawer.label("House main shutoff")), "the plan at first");
    drawer.press_text("schematic-water");
    for name in ["House main shutoff", "Kitchen sink"] {
        assert!(drawer.buttons().contains(&drawer.label(name)), "{name}");
    }
    let sewer = drawer.home().components.iter().find(|c| c.kind == Kind::SewerMain).unwrap();
    let sewer = drawer.label(&sewer.name);
    assert!(!drawer.buttons().contains(&sewer), "only the net that was chosen");
    drawer.press_text("schematic-drains");
    assert!(drawer.buttons().contains(&sewer));
    drawer.press_text("schematic-power");
    let panel = drawer.home().components.iter().find(|c| c.kind == Kind::Panel).unwrap();
    let panel = drawer.label(&panel.name);
    assert!(drawer.buttons().contains(&panel));
    drawer.press_text("schematic-plan");
    assert!(!drawer.buttons().contains(&panel));
}

#[test]
fn two_presses_draw_a_line_that_may_be_and_one_undo_takes_it_back() {
    let mut drawer = Drawer::built_in();
    drawer.press_text("schematic-water");
    let before = drawer.home().clone();
    let tap = drawer.tap_to_join();
    drawer.press_box("House main shutoff");
    let pressed = drawer.label("House main shutoff");
    let pressed = drawer.at.get_by_role_and_label(Role::Button, &pressed);
    assert_eq!(pressed.accesskit_node().toggled(), Some(Toggled::True));
    drawer.press_box(&drawer.name(&tap));
    let line = Connection::new("house-main", &tap, Medium::ColdWater);
    assert!(drawer.home().connections.contains(&line));
    let undo = drawer.buttons();
    let begin = drawer.words.fill("edit-undo", &[fill("what", "")]);
    let undo = undo.iter().find(|label| label.starts_with(begin.trim())).unwrap();
    drawer.press(undo);
    assert_eq!(*drawer.home(), before);
}

#[test]
fn a_line_that_cannot_be_is_refused_with_its_reason() {
    for language in ["en", "es"] {
        let mut drawer = Drawer::begin(Opening::built_in(), language, [1280.0, 800.0]);
        drawer.press_text("schematic-water");
        let before = drawer.home().clone();
        drawer.press_box("Kitchen sink");
        drawer.press_box("House main shutoff");
        assert_eq!(*drawer.home(), before);
        let refusal = may_connect(&before, "kitchen-sink", "house-main", Medium::ColdWater);
        let refusal = refusal.unwrap_err();
        let told = drawer.words.fill(
            "window-lines-refused",
            &[
                fill("cause", &refusal.cause.text(&drawer.words)),
                fill("remedy", &refusal.remedy.text(&drawer.words)),
            ],
        );
        assert!(drawer.shows(&told), "{told}");
    }
}

/// A line of a riser carries what the riser shows, whatever else there could be between the two.
#[test]
fn a_line_drawn_on_the_drains_carries_waste() {
    let level = Level {
        id: "ground".to_owned(),
        name: "Ground floor".to_owned(),
        elevation_m: 0.0,
        plan: None,
    };
    let kinds = [("heater", Kind::WaterHeater), ("drain", Kind::FloorDrain)];
    let home = Home {
        format: FORMAT,
        levels: vec![level],
        components: kinds.map(|(id, kind)| Component::new(id, kind, id)).into(),
        ..Home::default()
    };
    let mut drawer = Drawer::begin(Opening::new(home, None, Vec::new()), "en", [900.0, 700.0]);
    drawer.press_text("schematic-drains");
    // With keys: the boxes of what is joined to nothing stand in the order of the file.
    let label = drawer.label("heater");
    drawer.at.get_by_role_and_label(Role::Button, &label).focus();
    drawer.at.run();
    for key in [Key::Enter, Key::Tab, Key::Enter] {
        drawer.at.key_press(key);
        drawer.at.run();
    }
    let lines = [Connection::new("heater", "drain", Medium::Waste)];
    assert_eq!(drawer.home().connections, lines);
}

#[test]
fn tab_goes_the_way_that_water_flows_and_waste_too() {
    let mut drawer = Drawer::built_in();
    for (drawing, media) in [
        ("schematic-water", [Medium::ColdWater, Medium::HotWater]),
        ("schematic-drains", [Medium::Waste, Medium::Vent]),
    ] {
        drawer.press_text(drawing);
        let order = drawer.buttons();
        let at = |id: &str| order.iter().position(|b| *b == drawer.label(&drawer.name(id)));
        let mut along = 0;
        let mut against = 0;
        for line in &drawer.home().connections {
            if media.contains(&line.carries)
                && let (Some(from), Some(to)) = (at(&line.from), at(&line.to))
            {
                if from < to { along += 1 } else { against += 1 }
            }
        }
        // A loop of hot water, or a second way to a fixture, has to go back somewhere.
        assert!(along > 10 && against * 8 <= along, "{drawing}: {along} on, {against} back");
    }
}

/// The limit that is set for a big home: four hundred devices, of which only one net is shown.
#[test]
fn a_home_of_four_hundred_devices_can_be_worked_on() {
    let mut home = Home { format: FORMAT, ..Home::default() };
    home.components.push(Component::new("street", Kind::WaterMain, "Street"));
    for n in 0..200 {
        let (valve, tap) = (format!("valve-{n}"), format!("tap-{n}"));
        home.components.push(Component::new(&valve, Kind::IsolatingValve, &format!("Valve {n}")));
        home.components.push(Component::new(&tap, Kind::Basin, &format!("Basin {n}")));
        home.connections.push(Connection::new("street", &valve, Medium::ColdWater));
        if n != 199 {
            home.connections.push(Connection::new(&valve, &tap, Medium::ColdWater));
        }
    }
    let mut drawer = Drawer::begin(Opening::new(home, None, Vec::new()), "en", [640.0, 400.0]);
    drawer.press_text("schematic-water");
    for name in ["Valve 199", "Basin 199"] {
        let label = drawer.label(name);
        drawer.at.get_by_role_and_label(Role::Button, &label).focus();
        drawer.at.run();
        let at = drawer.at.get_by_role_and_label(Role::Button, &label).rect().center();
        assert!(at.x > 0.0 && at.x < 640.0 && at.y > 0.0 && at.y < 400.0, "{name} at {at}");
        drawer.at.key_press(Key::Enter);
        drawer.at.run();
    }
    let line = Connection::new("valve-199", "tap-199", Medium::ColdWater);
    assert!(drawer.home().connections.contains(&line));
    drawer.press_text("plan-farther");
    let height = drawer.at.get_by_role_and_label(Role::Button, "Box: Valve 0").rect().height();
    assert!(height >= 44.0, "{height}");
}
