//! Troubles told at the window, from the first tap to the last step, with nothing but what a person
//! sees and presses, found by the names that a screen reader reads. The facts of each answer are worked
//! out by hand on the plans in `tests/it/stories`.

#![expect(clippy::expect_used, reason = "a test that cannot go on stops")]

use std::path::Path;

use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_guidance::{Answer, Catalogue, Trouble};
use quarterturn_home::{Date, DeviceState};
use quarterturn_window::{App, Opening};

/// Someone at the window.
struct Person {
    at: Harness<'static, App>,
    words: Catalogue,
}

impl Person {
    /// At the window of an example home.
    fn with(home: &str, language: &str) -> Self {
        let opening = if home == "two-storey" {
            Opening::built_in()
        } else {
            let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(home);
            let read = Opening::read(&folder).expect("an example");
            // Without its folder, nothing is written into the examples.
            Opening::new(read.home, None, read.problems)
        };
        Self::at(opening, language)
    }

    fn at(opening: Opening, language: &str) -> Self {
        let app = App::new(opening, Catalogue::in_language(language))
            .on_day(Date::new(2026, 11, 25))
            .with_seed(3);
        let mut at = Harness::builder()
            .with_size([1280.0, 800.0])
            .with_max_steps(12)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        Self { at, words: Catalogue::in_language(language) }
    }

    /// Presses the button of this name, scrolling to it first.
    fn press(&mut self, label: &str) {
        self.at.get_by_role_and_label(Role::Button, label).scroll_to_me();
        self.at.run();
        self.at.get_by_role_and_label(Role::Button, label).click();
        self.at.run();
    }

    /// Presses the button with a text of the window's.
    fn press_text(&mut self, key: &str) {
        let label = self.words.text(&format!("window-{key}"));
        self.press(&label);
    }

    /// Presses the button whose name begins so.
    fn press_first(&mut self, start: &str) {
        let label = self
            .at
            .query_all_by_role(Role::Button)
            .filter_map(|node| node.accesskit_node().label())
            .find(|label| label.starts_with(start))
            .unwrap_or_else(|| panic!("no button {start}: {:?}", self.texts()));
        self.press(&label);
    }

    fn pick(&mut self, trouble: Trouble) {
        let key = format!("trouble-{}", trouble.id());
        let (title, hint) = (self.words.text(&key), self.words.text(&format!("{key}-hint")));
        self.press(&format!("{title}, {hint}"));
    }

    fn type_text(&mut self, field: &str, text: &str) {
        let field = self.at.get_by_label(field);
        field.focus();
        field.type_text(text);
        self.at.run();
    }

    fn key(&mut self, key: Key) {
        self.at.key_press(key);
        self.at.run();
    }

    /// Tabs until the thing of this name has the focus.
    fn tab_to(&mut self, label: &str) {
        for _ in 0..250 {
            if self.at.query_by_label(label).is_some_and(|node| node.is_focused()) {
                return;
            }
            self.key(Key::Tab);
        }
        panic!("Tab never reaches {label}");
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

    #[track_caller]
    fn sees(&self, part: &str) {
        assert!(self.texts().iter().any(|text| text.contains(part)), "{part}: {:?}", self.texts());
    }

    #[track_caller]
    fn sees_not(&self, part: &str) {
        let seen: Vec<String> =
            self.texts().into_iter().filter(|text| text.contains(part)).collect();
        assert!(seen.is_empty(), "{seen:?}");
    }

    fn answer(&self) -> &Answer {
        self.at.state().answer().expect("an answer")
    }

    fn state(&self, id: &str) -> DeviceState {
        self.at.state().home().component(id).expect("a device").state()
    }

    /// Says that the step is done, whatever the button is called, until the last is.
    fn do_all(&mut self) {
        let buttons = ["it-worked", "done"].map(|key| self.words.text(&format!("window-{key}")));
        for _ in 0..40 {
            let Some(label) =
                buttons.iter().find(|label| self.at.query_by_label(label).is_some()).cloned()
            else {
                break;
            };
            self.press(&label);
        }
        let over = self.words.text("window-all-done");
        self.sees(&over);
    }
}

/// Water under the kitchen sink: two clicks to the right step, a stop that does not turn, the next
/// device with its way, done, brought back, and what was learnt changes the next answer.
#[test]
fn water_under_the_kitchen_sink() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::Leak);
    person.press("Pin: Kitchen sink");
    person.sees("Close: Cold stop under the kitchen sink (W36).");
    person.sees("Trouble is here: Kitchen sink");
    person.press("It won’t turn");
    // By hand: the cold branch of the ground floor feeds the cold stop.
    assert!(
        person.answer().sets.iter().all(|s| !s.close.contains(&"kitchen-cold-stop".to_owned()))
    );
    let next = person.answer().sets[0].close.clone();
    assert!(next.contains(&"cold-ground-valve".to_owned()), "{next:?}");
    person.do_all();
    person.press("Afterwards");
    person.sees("Bring it back afterwards");
    person.press("Cold stop under the kitchen sink: Does not move");
    assert_eq!(person.state("kitchen-cold-stop"), DeviceState::Seized);
    person.sees("Written on the map.");
    let log = &person.at.state().log().entries;
    assert_eq!((log.len(), log[0].trouble.as_str()), (1, "leak"));
    assert_eq!(log[0].failed, ["kitchen-cold-stop"]);
    person.press("Finished");
    person.pick(Trouble::Leak);
    person.press("Pin: Kitchen sink");
    let set = &person.answer().sets[0];
    assert!(!set.close.contains(&"kitchen-cold-stop".to_owned()), "a seized stop is not first");
}

/// What was learnt by mistake is taken back, and the map is as it was.
#[test]
fn what_was_learnt_can_be_taken_back() {
    let mut person = Person::with("two-storey", "en");
    let before = person.at.state().home().clone();
    person.pick(Trouble::Leak);
    person.press("W38 Kitchen sink");
    person.press("Afterwards");
    person.press("Cold stop under the kitchen sink: Stiff");
    assert_eq!(person.state("kitchen-cold-stop"), DeviceState::Stiff);
    person.press("Take back what was learnt about Cold stop under the kitchen sink");
    assert_eq!(*person.at.state().home(), before);
    person.press("Cold stop under the kitchen sink: Wrong label…");
    person.type_text("The tag on it reads", "b");
    person.press("Write it down");
    let tag = person.at.state().home().component("kitchen-cold-stop").and_then(|c| c.tag.clone());
    assert!(tag.is_some_and(|tag| tag != "W36"), "the label is put right");
}

/// Sewage in the laundry: stop all water first, then the cap in the front bed; it does not come off,
/// so the one at the property line.
#[test]
fn sewage_in_the_laundry() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::SewageRising);
    person.press_first("S4 ");
    person.sees("Stop all water in the house");
    person.sees("WARNING");
    assert_eq!(
        person.answer().relief.as_ref().and_then(|r| r.open.as_deref()),
        Some("house-cleanout")
    );
    while person.at.query_by_label("It won’t open").is_none() {
        person.press("Done");
    }
    person.press("It won’t open");
    let open = person.answer().relief.as_ref().and_then(|relief| relief.open.clone());
    assert_eq!(open.as_deref(), Some("property-cleanout"));
    person.do_all();
}

/// A dead outlet in the bath: the GFCI is in the garage, two floors down; the way leads downstairs.
#[test]
fn a_dead_outlet_in_the_main_bath() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::DeadOutlet);
    person.type_text("Find by name, tag or room", "main bath");
    person.key(Key::Enter);
    assert_eq!(person.answer().at, ["main-bath-outlet"]);
    assert_eq!(person.answer().suspects[0].component, "garage-gfci");
    person.sees("GFCI outlet by the garage steps");
    person.do_all();
}

/// The half bath has power: what is between them is left.
#[test]
fn a_live_outlet_narrows_it_down() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::DeadOutlet);
    person.press_first("E30 ");
    let at = person.answer().at.clone();
    let before = person.answer().suspects.len();
    person.press("It has power");
    assert!(person.answer().suspects.len() < before, "{at:?}");
    person.press("Go back one step");
    assert_eq!(person.answer().suspects.len(), before);
}

/// The air conditioner stopped: look into the pans first; the secondary one is wet.
#[test]
fn the_air_conditioner_stopped() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::CoolingStopped);
    assert_eq!(person.answer().at, ["air-handler"]);
    let check = person.answer().next_check.clone().expect("a look that tells");
    person.press(if check.component.contains("pan") { "Water stands there" } else { "It is off" });
    assert_ne!(person.answer().next_check.as_ref().map(|c| &c.component), Some(&check.component));
    person.do_all();
}

#[test]
fn water_comes_through_the_ceiling() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::WaterFromAbove);
    person.press("Anywhere in: Kitchen");
    person.sees("WARNING");
    person.press_first("Goes off");
    let off = &person.answer().sets[0].goes_off;
    let first = person.at.state().home().component(&off[0]).expect("known").name.clone();
    person.sees(&first);
    person.press("Now");
    person.do_all();
}

/// Nobody knows where it comes from: the main.
#[test]
fn a_leak_that_nobody_finds() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::Leak);
    person.press("I don’t know where");
    assert_eq!(person.answer().sets[0].close, ["house-main"]);
    person.sees("House main shutoff");
    person.sees("downstairs");
}

/// The main cannot be got to: the shutoffs outdoors. Nothing is learnt of how the main turns.
#[test]
fn the_main_is_out_of_reach() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::Leak);
    person.press("I don’t know where");
    while person.at.query_by_label("I can’t get there").is_none() {
        person.press("Done");
    }
    person.press("I can’t get there");
    person.sees("nobody can get there: House main shutoff");
    assert!(person.answer().sets.iter().all(|s| !s.close.contains(&"house-main".to_owned())));
    person.press("I can get to House main shutoff after all");
    assert_eq!(person.answer().sets[0].close, ["house-main"]);
    assert_eq!(person.state("house-main"), DeviceState::Works);
}

#[test]
fn the_toilet_upstairs_runs_over() {
    let mut person = Person::with("two-storey", "en");
    person.type_text("Or type what you see, such as “toilet” or “no light”", "toilet runs");
    person.key(Key::Enter);
    person.press_first("Pin: ");
    person.sees("Do not flush again.");
    person.do_all();
}

/// It smells of gas: one click, out, and the number; no plan, no valve.
#[test]
fn it_smells_of_gas() {
    let mut person = Person::with("two-storey", "en");
    person.type_text("Or type what you see, such as “toilet” or “no light”", "rotten eggs");
    person.key(Key::Enter);
    assert_eq!(person.answer().trouble, "gas-smell");
    person.sees("DANGER");
    person.sees("911");
    person.sees_not("Plan of");
    person.key(Key::Escape);
    person.sees("What do you see?");
}

/// The panel stands in water: nobody is sent to it.
#[test]
fn water_at_the_panel() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::WaterNearPower);
    person.press_first("Anywhere in: Workshop");
    let home = person.at.state().home().clone();
    let there =
        |id: &String| home.component(id).and_then(|c| c.space.as_deref()) == Some("workshop");
    for step in &person.answer().steps {
        assert!(!step.component.as_ref().is_some_and(there), "{step:?}");
    }
    person.press("Call");
    person.sees("555-01");
}

/// No hot water in an old house, told in words one presses: it stays cold everywhere.
#[test]
fn no_hot_water_in_the_old_house() {
    let mut person = Person::with("old-house", "en");
    person.pick(Trouble::NoHotWater);
    person.press_first("Pin: ");
    assert!(!person.answer().suspects.is_empty());
    person.do_all();
}

/// The flat: the bathroom line is fed twice, so that two valves are closed.
#[test]
fn the_flats_bathroom_line() {
    let mut person = Person::with("flat", "en");
    person.pick(Trouble::Leak);
    person.type_text("Find by name, tag or room", "cold line to the bath");
    person.key(Key::Enter);
    let mut close = person.answer().sets[0].close.clone();
    close.sort();
    assert_eq!(close, ["bath-valve", "kitchen-valve"]);
    person.press_first("All steps");
    person.sees("Other ways to stop it");
    person.press("Now");
    person.do_all();
}

#[test]
fn the_sump_pit_fills_up() {
    let mut person = Person::with("two-storey", "en");
    person.pick(Trouble::PitRising);
    if person.at.state().answer().is_none() {
        person.press_first("Pin: Sump pit");
    }
    let check = person.answer().next_check.as_ref().map(|check| check.component.clone());
    assert_eq!(check.as_deref(), Some("sump-gfci"));
    person.press("It has tripped");
    person.do_all();
}

/// With the keyboard alone, from the first page to the log.
#[test]
fn by_keyboard_alone() {
    let mut person = Person::with("two-storey", "en");
    let title = "Water is leaking, from a pipe, hose, valve, tap or appliance";
    person.tab_to(title);
    person.key(Key::Enter);
    person.tab_to("Pin: Dishwasher");
    person.key(Key::Enter);
    assert_eq!(person.answer().at, ["dishwasher"]);
    person.tab_to("It won’t turn");
    person.key(Key::Space);
    person.tab_to("Go back one step");
    person.key(Key::Enter);
    person.tab_to("It worked");
    person.key(Key::Enter);
    person.tab_to("Afterwards");
    person.key(Key::Enter);
    person.tab_to("Dishwasher stop under the kitchen sink: Stiff");
    person.key(Key::Enter);
    assert_eq!(person.state("dishwasher-stop"), DeviceState::Stiff);
    person.tab_to("See the log");
    person.key(Key::Enter);
    person.sees("What happened here");
    person.sees("Water is leaking");
    person.key(Key::Escape);
    assert_eq!(person.answer().at, ["dishwasher"], "the log is left for where one was");
}

/// The same in Spanish.
#[test]
fn en_espanol() {
    let mut person = Person::with("two-storey", "es");
    person.pick(Trouble::Leak);
    person.press_text("spot-unknown");
    assert_eq!(person.answer().sets[0].close, ["house-main"]);
    let turn = person.words.text("window-wont-turn");
    while person.at.query_by_label(&turn).is_none() {
        person.press_text("done");
    }
    person.press(&turn);
    assert!(person.answer().sets.iter().all(|s| !s.close.contains(&"house-main".to_owned())));
    person.do_all();
    person.press_text("tab-after");
    let learnt = person.words.text("window-learnt-seized");
    person.press(&format!("House main shutoff: {learnt}"));
    assert_eq!(person.state("house-main"), DeviceState::Seized);
    person.press_text("finish");
    let asks = person.words.text("window-what-do-you-see");
    person.sees(&asks);
}

/// Practice: the clock runs, one finds the device, and from then on the answers reckon with that.
#[test]
fn practice_is_kept() {
    let mut person = Person::with("two-storey", "en");
    person.press("When nothing is wrong…");
    person.press("Practice");
    person.press("Start the clock");
    person.at.run_steps(4);
    while person.at.query_by_label("I stand at it").is_none() {
        let done = person.at.query_by_label("Done");
        done.unwrap_or_else(|| panic!("{:?}", person.texts())).scroll_to_me();
        person.at.run_steps(4);
        person.at.get_by_role_and_label(Role::Button, "Done").click();
        person.at.run_steps(4);
    }
    person.sees("Lay your hand on it. Do not turn it.");
    person.at.run_steps(60);
    person.at.get_by_role_and_label(Role::Button, "I stand at it").scroll_to_me();
    person.at.run_steps(4);
    person.at.get_by_role_and_label(Role::Button, "I stand at it").click();
    person.at.run();
    person.sees("Found");
    let drills = &person.at.state().home().drills;
    assert_eq!(drills.len(), 1);
    // A step of the harness is a quarter of a second.
    assert!(drills[0].seconds >= 15.0, "{drills:?}");
    assert!(person.at.state().log().entries.is_empty(), "practice is no trouble");
    person.press("Enough for today");
    person.sees("What do you see?");
}

/// A home without a map still helps, and says that it is general advice.
#[test]
fn a_home_without_a_map() {
    let home = quarterturn_home::Home { format: 1, ..quarterturn_home::Home::default() };
    let mut person = Person::at(Opening::new(home, None, vec![]), "en");
    person.pick(Trouble::Leak);
    person.press("I don’t know where");
    assert!(!person.answer().mapped);
    person.sees("general advice");
    person.do_all();
}

/// What was written down is on disk when the window closes, and is there when it opens again.
#[test]
fn what_was_learnt_is_kept_on_disk() {
    let folder = std::env::temp_dir().join(format!("quarterturn-story-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    let example = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/flat/home.ron");
    std::fs::copy(example, folder.join("home.ron")).expect("copied");
    let device = {
        let mut person = Person::at(Opening::read(&folder).expect("a home"), "en");
        person.pick(Trouble::Leak);
        person.press("I don’t know where");
        let device = person.answer().sets[0].close[0].clone();
        let name = person.at.state().home().component(&device).expect("known").name.clone();
        person.do_all();
        person.press("Afterwards");
        person.press(&format!("{name}: Lets some through when closed"));
        person.at.state_mut().finish();
        device
    };
    let opening = Opening::read(&folder).expect("a home");
    assert_eq!(opening.home.component(&device).unwrap().state(), DeviceState::LeaksBy);
    let mut person = Person::at(opening, "en");
    person.press("When nothing is wrong…");
    person.press("What happened here");
    person.sees("Water is leaking");
    person.press_first("Remove from the log");
    person.sees("Nothing has happened here yet.");
    person.at.state_mut().finish();
    std::fs::remove_dir_all(&folder).expect("removed");
}
