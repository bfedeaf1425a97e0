//! From the list of what is missing to where it is put right, with all chosen that is known already.

use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Connection, Date, FORMAT, Home, Kind, Level, Medium};
use quarterturn_mapping::{Fix, Item, missing};
use quarterturn_window::{App, Opening};

/// Someone at the map, with the list of what is missing open.
struct Mender {
    at: Harness<'static, App>,
    words: Catalogue,
}

impl Mender {
    fn begin(home: Home, language: &str) -> Self {
        let words = Catalogue::in_language(language);
        let app = App::new(Opening::new(home, None, Vec::new()), Catalogue::in_language(language))
            .on_day(Date::new(2026, 11, 25));
        let mut at = Harness::builder()
            .with_size([1280.0, 800.0])
            .with_max_steps(20)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        let mut mender = Self { at, words };
        for key in ["quiet", "open-map", "map-missing"] {
            mender.press_text(key);
        }
        mender
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

    /// Presses the way to put something right, once the thread has told of it.
    fn put_right(&mut self, item: &Item) {
        let what = item.said.text(&self.words);
        let label = self.words.fill("window-missing-fix-name", &[fill("what", &what)]);
        for _ in 0..400 {
            if self.buttons().contains(&label) {
                break;
            }
            std::thread::sleep(std::time::Duration::from_millis(10));
            self.at.run();
        }
        self.press(&label);
    }

    /// Presses the box of a device in a riser.
    fn press_box(&mut self, name: &str) {
        let label = self.words.fill("window-schematic-box", &[fill("device", name)]);
        self.press(&label);
    }

    fn buttons(&self) -> Vec<String> {
        let nodes = self.at.query_all_by_role(Role::Button);
        nodes.filter_map(|node| node.accesskit_node().label()).collect()
    }

    fn shows(&self, text: &str) -> bool {
        self.at.query_by_label(text).is_some()
    }

    /// The text of the window with a device's name in it.
    fn about(&self, key: &str, device: &str) -> String {
        self.words.fill(&format!("window-{key}"), &[fill("device", device)])
    }

    fn home(&self) -> &Home {
        self.at.state().home()
    }
}

fn home(components: &[(&str, Kind, &str)], connections: &[(&str, &str, Medium)]) -> Home {
    let level = Level {
        id: "ground".to_owned(),
        name: "Ground floor".to_owned(),
        elevation_m: 0.0,
        plan: None,
    };
    Home {
        format: FORMAT,
        levels: vec![level],
        components: components
            .iter()
            .map(|(id, kind, name)| Component::new(id, *kind, name))
            .collect(),
        connections: connections
            .iter()
            .map(|(from, to, carries)| Connection::new(from, to, *carries))
            .collect(),
        ..Home::default()
    }
}

/// What is missing and put right so.
fn item(home: &Home, is_meant: impl Fn(&Fix) -> bool) -> Item {
    let found = missing(home).list.into_iter().find(|item| is_meant(&item.fix));
    found.unwrap_or_else(|| panic!("{:?}", missing(home).list))
}

/// A meter, a toilet and a sink, so far apart in the order of the trade that nothing is proposed.
fn loose_ends() -> Home {
    home(
        &[
            ("street", Kind::WaterMain, "Street main"),
            ("meter", Kind::WaterMeter, "Water meter"),
            ("toilet", Kind::Toilet, "Toilet"),
            ("sink", Kind::Sink, "Laundry sink"),
            ("sewer", Kind::SewerMain, "Street sewer"),
        ],
        &[("street", "meter", Medium::ColdWater)],
    )
}

fn lacks_line(of: &str, wanted: Medium) -> impl Fn(&Fix) -> bool {
    move |fix: &Fix| matches!(fix, Fix::Connect { id, carries, proposal: None, .. } if id == of && *carries == wanted)
}

#[test]
fn a_drain_that_is_missing_begins_at_the_device_and_only_its_other_end_is_chosen() {
    for language in ["en", "es"] {
        let drain = item(&loose_ends(), lacks_line("sink", Medium::Waste));
        let mut mender = Mender::begin(loose_ends(), language);
        mender.put_right(&drain);
        assert!(mender.shows(&mender.about("lines-begun-from", "Laundry sink")));
        let before = mender.home().connections.clone();
        mender.press_text("schematic-drains");
        mender.press_box("Street sewer");
        let line = Connection::new("sink", "sewer", Medium::Waste);
        assert_eq!(mender.home().connections, [before, vec![line]].concat());
    }
}

#[test]
fn a_feed_that_is_missing_ends_at_the_device_and_only_its_other_end_is_chosen() {
    let feed = item(&loose_ends(), lacks_line("toilet", Medium::ColdWater));
    let mut mender = Mender::begin(loose_ends(), "en");
    mender.put_right(&feed);
    assert!(mender.shows(&mender.about("lines-begun-to", "Toilet")));
    mender.press_text("schematic-water");
    mender.press_box("Water meter");
    let line = Connection::new("meter", "toilet", Medium::ColdWater);
    assert!(mender.home().connections.contains(&line), "{:?}", mender.home().connections);
}

/// What is pressed twice is put down again: one is not caught in a line that one did not want.
#[test]
fn the_end_that_was_chosen_can_be_put_down() {
    let feed = item(&loose_ends(), lacks_line("toilet", Medium::ColdWater));
    let mut mender = Mender::begin(loose_ends(), "en");
    mender.put_right(&feed);
    mender.press_text("schematic-water");
    mender.press_box("Toilet");
    assert!(!mender.shows(&mender.about("lines-begun-to", "Toilet")));
    mender.press_box("Water meter");
    assert!(mender.shows(&mender.about("lines-begun-from", "Water meter")));
    assert_eq!(*mender.home(), loose_ends());
}

/// A panel with two breakers and three things on power, of which the list asks for the outlets.
fn unknown_circuits() -> Home {
    home(
        &[
            ("service", Kind::ElectricityService, "Service"),
            ("panel", Kind::Panel, "Panel"),
            ("one", Kind::Breaker, "Breaker one"),
            ("two", Kind::Breaker, "Breaker two"),
            ("hall", Kind::Receptacle, "Hall outlet"),
            ("den", Kind::Receptacle, "Den outlet"),
            ("alarm", Kind::SmokeAlarm, "Landing alarm"),
        ],
        &[
            ("service", "panel", Medium::Power),
            ("panel", "one", Medium::Power),
            ("panel", "two", Medium::Power),
        ],
    )
}

impl Mender {
    /// The tick of what went dead on a walk.
    fn dead(&self, thing: &str) -> String {
        let dead = self.words.text("window-find-dead");
        self.words.fill("window-learnt-of", &[fill("device", thing), fill("lesson", &dead)])
    }
}

#[test]
fn breakers_that_are_missing_open_the_search_for_just_those_things() {
    let breakers = item(
        &unknown_circuits(),
        |fix| matches!(fix, Fix::FindBreakers { things } if *things == ["hall", "den"]),
    );
    let mut mender = Mender::begin(unknown_circuits(), "en");
    mender.put_right(&breakers);
    let ticks = |mender: &Mender| {
        ["Hall outlet", "Den outlet", "Landing alarm"]
            .map(|thing| mender.buttons().contains(&mender.dead(thing)))
    };
    assert_eq!(ticks(&mender), [true, true, false]);
    // Whoever wants all of them can leave it and look for all.
    mender.press_text("find-leave");
    mender.press_text("find-breakers");
    assert_eq!(ticks(&mender), [true, true, true]);
}

#[test]
fn a_search_that_was_begun_goes_on() {
    let breakers = item(
        &unknown_circuits(),
        |fix| matches!(fix, Fix::FindBreakers { things } if !things.is_empty()),
    );
    let mut mender = Mender::begin(unknown_circuits(), "en");
    mender.put_right(&breakers);
    mender.press_text("find-walked");
    mender.press_text("map-missing");
    mender.put_right(&breakers);
    assert!(mender.buttons().contains(&mender.words.text("window-find-undo")), "a walk was made");
}
