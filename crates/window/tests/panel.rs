//! The panel directory, typed as it is read off the door: by keys alone, by the names that a screen
//! reader reads, with what hangs on each breaker.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::{Catalogue, Question, Spot, Trouble, answer, fill};
use quarterturn_home::{Component, Connection, FORMAT, Home, Kind, Level, Medium, Space, Units};
use quarterturn_window::{App, Opening};

/// Someone before the open door of a panel.
struct Reader {
    at: Harness<'static, App>,
    words: Catalogue,
}

impl Reader {
    fn begin(home: Home) -> Self {
        Self::at(home, [1280.0, 800.0])
    }

    fn at(home: Home, size: [f32; 2]) -> Self {
        let words = Catalogue::in_language("en");
        let app = App::new(Opening::new(home, None, Vec::new()), Catalogue::in_language("en"));
        let mut at = Harness::builder()
            .with_size(size)
            .with_max_steps(30)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        let mut reader = Self { at, words };
        for key in ["quiet", "open-map", "map-panel"] {
            let label = reader.text(key);
            reader.press(&label);
        }
        reader
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

    fn key(&mut self, key: Key) {
        self.at.key_press(key);
        self.at.run();
    }

    fn go_to(&mut self, cell: &str) {
        self.at.get_by_role_and_label(Role::TextInput, cell).focus();
        self.at.run();
    }

    /// Types into whatever the keyboard is in.
    fn letters(&mut self, text: &str) {
        self.at.event(egui::Event::Text(text.to_owned()));
        self.at.run();
    }

    fn write(&mut self, cell: &str, text: &str) {
        self.go_to(cell);
        self.letters(text);
    }

    fn clear(&mut self, cell: &str) {
        self.go_to(cell);
        self.at.key_press_modifiers(Modifiers::COMMAND, Key::A);
        self.key(Key::Backspace);
    }

    /// The label of what the keyboard is in.
    fn focused(&self) -> Option<String> {
        let fields = self.at.query_all_by_role(Role::TextInput);
        let focused = fields.into_iter().find(|node| node.accesskit_node().is_focused())?;
        focused.accesskit_node().label()
    }

    fn shown(&self, cell: &str) -> String {
        let node = self.at.get_by_role_and_label(Role::TextInput, cell);
        node.accesskit_node().value().unwrap_or_default()
    }

    fn home(&self) -> &Home {
        self.at.state().home()
    }

    /// The breakers by number: name, amperes, poles.
    fn breakers(&self) -> Vec<(String, String, Option<f64>, Option<u32>)> {
        let breakers = self.home().components.iter().filter(|c| c.kind == Kind::Breaker);
        breakers
            .map(|b| (b.circuit.clone().unwrap_or_default(), b.name.clone(), b.rating_a, b.poles))
            .collect()
    }

    /// Takes the last change back; what the button says is taken back.
    fn undo(&mut self) -> String {
        let begin = self.words.fill("edit-undo", &[fill("what", "")]);
        let labels: Vec<String> = self
            .at
            .query_all_by_role(Role::Button)
            .filter_map(|node| node.accesskit_node().label())
            .collect();
        let label = labels.into_iter().find(|label| label.starts_with(begin.trim())).unwrap();
        self.press(&label);
        label
    }
}

/// A panel in a garage, and three things in a kitchen that nothing feeds yet.
fn bare() -> Home {
    let mut home = Home { format: FORMAT, units: Units::Us, ..Home::default() };
    home.levels.push(Level {
        id: "ground".to_owned(),
        name: "Ground floor".to_owned(),
        elevation_m: 0.0,
        plan: None,
    });
    for (id, name) in [("garage", "Garage"), ("kitchen", "Kitchen")] {
        home.spaces.push(Space {
            id: id.to_owned(),
            name: name.to_owned(),
            level: Some("ground".to_owned()),
            outline: Vec::new(),
            outdoors: false,
        });
    }
    for (id, kind, name, space) in [
        ("service", Kind::ElectricityService, "Service", "garage"),
        ("panel", Kind::Panel, "Panel", "garage"),
        ("counter", Kind::Receptacle, "Counter outlet", "kitchen"),
        ("lamp", Kind::Light, "Ceiling light", "kitchen"),
        ("door", Kind::Receptacle, "Outlet by the door", "garage"),
    ] {
        let mut component = Component::new(id, kind, name);
        component.space = Some(space.to_owned());
        home.components.push(component);
    }
    home.connections.push(Connection::new("service", "panel", Medium::Power));
    home
}

#[test]
fn five_circuits_are_typed_by_keys_alone_and_taken_back_one_by_one() {
    let mut reader = Reader::begin(bare());
    let before = reader.home().clone();
    let first = "Position 1, what it serves";
    let mut tabs = 0;
    while reader.focused().as_deref() != Some(first) {
        reader.key(Key::Tab);
        tabs += 1;
        assert!(tabs < 40, "the keyboard does not come to the panel");
    }
    for name in ["Kitchen", "Hall", "Bath", "Dryer", "Porch"] {
        reader.letters(name);
        reader.key(Key::Enter);
    }
    assert_eq!(reader.focused().as_deref(), Some("Position 11, what it serves"));
    // What is picked goes along.
    reader.at.get_by_label("Position 11 is free");
    let numbers: Vec<(String, String)> =
        reader.breakers().into_iter().map(|(number, name, ..)| (number, name)).collect();
    let told = [("1", "Kitchen"), ("3", "Hall"), ("5", "Bath"), ("7", "Dryer"), ("9", "Porch")];
    assert_eq!(numbers, told.map(|(a, b)| (a.to_owned(), b.to_owned())));
    let fed = reader.home().connections.iter().filter(|line| line.from == "panel").count();
    assert_eq!(fed, 5);
    // Back up, and on to the amperes.
    for _ in 0..5 {
        reader.key(Key::ArrowUp);
    }
    assert_eq!(reader.focused().as_deref(), Some(first));
    reader.key(Key::Tab);
    assert_eq!(reader.focused().as_deref(), Some("Position 1, amperes"));
    reader.letters("20");
    reader.key(Key::ArrowDown);
    reader.letters("25");
    reader.key(Key::Enter);
    // What the keyboard comes back to is typed over.
    reader.key(Key::ArrowUp);
    reader.letters("15");
    reader.key(Key::Enter);
    assert_eq!(reader.breakers()[0].2, Some(20.0));
    assert_eq!(reader.breakers()[1].2, Some(15.0));

    // Each cell is one undo, and says which.
    assert!(reader.undo().contains("change Hall"));
    assert_eq!(reader.breakers()[1].2, Some(25.0));
    assert!(reader.undo().contains("change Hall"));
    assert_eq!((reader.breakers()[0].2, reader.breakers()[1].2), (Some(20.0), None));
    reader.undo();
    for left in [4, 3, 2, 1] {
        let said = reader.undo();
        assert!(said.contains("add "), "{said}");
        assert_eq!(reader.breakers().len(), left);
    }
    reader.undo();
    assert_eq!(reader.home(), &before);
    assert_eq!(reader.shown(first), "");
}

#[test]
fn a_breaker_of_two_poles_takes_two_positions_of_its_side() {
    let mut reader = Reader::begin(bare());
    reader.write("Position 2, what it serves", "Dryer");
    reader.write("Position 2, poles", "2");
    reader.key(Key::Enter);
    let dryer = ("2,4".to_owned(), "Dryer".to_owned(), None, Some(2));
    assert_eq!(reader.breakers(), vec![dryer.clone()]);
    // On to the next that is there.
    assert_eq!(reader.focused().as_deref(), Some("Position 6, poles"));
    assert!(reader.at.query_by_label("Position 4, what it serves").is_none());
    reader.write("Position 6, what it serves", "Range");
    // Three would reach into the range: that is told, and nothing is lost.
    reader.write("Position 2,4, poles", "3");
    reader.key(Key::Enter);
    reader.at.get_by_label("Position 6 is taken by Range.");
    assert_eq!(reader.shown("Position 2,4, poles"), "3");
    assert_eq!(reader.breakers()[0], dryer);
    reader.write("Position 2,4, poles", "1");
    reader.key(Key::Enter);
    assert_eq!(reader.breakers()[0].0, "2");
    assert!(reader.at.query_by_label("Position 6 is taken by Range.").is_none());
    reader.at.get_by_label("Position 4, what it serves");
}

#[test]
fn a_wrong_number_stays_as_it_was_typed_and_says_what_is_wrong() {
    let mut reader = Reader::begin(bare());
    reader.write("Position 5, what it serves", "Hall");
    reader.write("Position 5, amperes", "2o");
    reader.key(Key::Enter);
    let why = reader.text("panel-bad-amperes");
    reader.at.get_by_label(&why);
    let home = reader.home().clone();
    // On other pages of the map and back.
    reader.write("Position 9, what it serves", "Bath");
    for key in ["map-lines", "map-panel"] {
        let label = reader.text(key);
        reader.press(&label);
    }
    assert_eq!(reader.shown("Position 5, amperes"), "2o");
    reader.at.get_by_label(&why);
    assert_eq!(reader.home().component("panel-5"), home.component("panel-5"));
    reader.write("Position 5, amperes", "20");
    reader.key(Key::Enter);
    assert!(reader.at.query_by_label(&why).is_none());
    assert_eq!(reader.home().component("panel-5").unwrap().rating_a, Some(20.0));
}

#[test]
fn what_a_breaker_feeds_is_added_and_a_dead_outlet_names_it() {
    let mut reader = Reader::begin(bare());
    let names_it = |home: &Home| {
        let at = Spot::Component("counter".to_owned());
        let question = Question {
            trouble: Trouble::DeadOutlet,
            at,
            from: None,
            failed: Vec::new(),
            seen: Vec::new(),
        };
        let told = answer(home, &question, &Catalogue::in_language("en"));
        let suspect = told.suspects.iter().any(|suspect| suspect.component == "panel-5");
        suspect && told.steps.iter().any(|step| step.text.contains("Kitchen counter"))
    };
    reader.write("Position 5, what it serves", "Kitchen counter");
    reader.at.get_by_label("One of 1 circuits serves nothing known yet.");
    assert!(!names_it(reader.home()));
    reader.press("Add: Counter outlet, Kitchen");
    let line = Connection::new("panel-5", "counter", Medium::Power);
    assert!(reader.home().connections.contains(&line));
    assert!(names_it(reader.home()));
    reader.at.get_by_label("Of each of 1 circuits it is known what hangs on it.");

    // What has a feed is told and stays there; another is found by its name.
    reader.write("Position 7, what it serves", "Kitchen lights");
    let search = reader.text("panel-add-search");
    reader.write(&search, "kitchen");
    let told = reader.words.fill(
        "window-panel-fed-already",
        &[fill("thing", "Counter outlet"), fill("device", "Kitchen counter")],
    );
    reader.at.get_by_label(&told);
    assert!(reader.at.query_by_label("Add: Counter outlet, Kitchen").is_none());
    reader.press("Add: Ceiling light, Kitchen");
    assert!(reader.home().connections.contains(&Connection::new("panel-7", "lamp", Medium::Power)));
    assert!(reader.home().connections.contains(&line));

    reader.press("Take off: Ceiling light");
    assert!(!reader.home().connections.iter().any(|line| line.to == "lamp"));
    assert!(reader.undo().contains("disconnect"));
    assert!(reader.home().connections.iter().any(|line| line.to == "lamp"));
}

#[test]
fn a_line_that_may_not_be_is_refused_with_its_reason() {
    let mut home = bare();
    // Found by words, and never to be fed by a breaker of the panel that it feeds.
    home.components.push(Component::new("sub", Kind::Panel, "Sub-panel"));
    home.components.push(Component::new("b", Kind::Breaker, "Feeder"));
    home.components[6].panel = Some("sub".to_owned());
    home.components[6].circuit = Some("1".to_owned());
    home.connections.push(Connection::new("sub", "b", Medium::Power));
    let mut reader = Reader::begin(home);
    // The second panel is chosen by its name.
    let which = reader.text("panel-which");
    reader.at.get_by_label(&which).click();
    reader.at.run();
    reader.at.get_by_label("Sub-panel").click();
    reader.at.run();
    reader.go_to("Position 1, what it serves");
    let before = reader.home().clone();
    assert!(reader.at.query_by_label("Add: Sub-panel, In no room").is_none());
    let search = reader.text("panel-add-search");
    reader.write(&search, "sub-panel");
    reader.press("Add: Sub-panel, In no room");
    assert_eq!(reader.home(), &before);
    let refusal = quarterturn_mapping::may_connect(&before, "b", "sub", Medium::Power).unwrap_err();
    let fills = [
        fill("cause", &refusal.cause.text(&reader.words)),
        fill("remedy", &refusal.remedy.text(&reader.words)),
    ];
    let told = reader.words.fill("window-lines-refused", &fills);
    reader.at.get_by_label(&told);
}

#[test]
fn a_row_that_is_cleared_asks_before_its_breaker_goes() {
    let mut reader = Reader::begin(bare());
    reader.write("Position 5, what it serves", "Kitchen counter");
    reader.key(Key::Enter);
    reader.go_to("Position 5, what it serves");
    reader.press("Add: Counter outlet, Kitchen");
    let whole = reader.home().clone();

    reader.clear("Position 5, what it serves");
    reader.key(Key::Enter);
    let take_out = reader.text("panel-take-out");
    let keep = reader.text("device-keep");
    // Its loads are named first. A circuit that feeds something keeps a name until then.
    assert!(reader.home().component("panel-5").is_some());
    let what = [fill("name", "Kitchen counter")];
    let asked = reader.words.fill("window-panel-take-out-what", &what);
    reader.at.get_by_label(&asked);
    let told: Vec<String> = quarterturn_home::depends_on(&whole, "panel-5")
        .iter()
        .flat_map(|change| reader.words.change(change))
        .collect();
    assert!(told.iter().any(|told| told.contains("Counter outlet")), "{told:?}");
    for told in &told {
        reader.at.get_by_label(told);
    }
    reader.press(&keep);
    assert_eq!(reader.home(), &whole);
    assert_eq!(reader.shown("Position 5, what it serves"), "Kitchen counter");

    reader.clear("Position 5, what it serves");
    reader.key(Key::Enter);
    reader.press(&take_out);
    assert!(reader.home().component("panel-5").is_none());
    assert!(!reader.home().connections.iter().any(|line| line.to == "counter"));
    assert_eq!(reader.shown("Position 5, what it serves"), "");
    assert!(reader.undo().contains("Kitchen counter"));
    assert_eq!(reader.home(), &whole);
}

#[test]
fn numbers_that_are_missing_or_twice_are_told_and_put_right() {
    let mut home = bare();
    for (id, number) in [("one", Some("1")), ("other", Some("1")), ("loose", None)] {
        let mut breaker = Component::new(id, Kind::Breaker, id);
        breaker.panel = Some("panel".to_owned());
        breaker.circuit = number.map(str::to_owned);
        home.components.push(breaker);
    }
    let mut reader = Reader::begin(home);
    let twice = |other: &str| {
        format!("Position 1 is also that of {other}. Give one of them another number.")
    };
    let clean = |text: String| text.replace(['\u{2068}', '\u{2069}'], "");
    let all = |reader: &Reader| -> Vec<String> {
        let labels = reader.at.query_all_by_role(Role::Label);
        labels.filter_map(|node| node.accesskit_node().value()).map(clean).collect()
    };
    assert!(all(&reader).contains(&twice("one")) && all(&reader).contains(&twice("other")));
    let missing = reader.text("panel-no-number");
    assert!(all(&reader).contains(&missing));
    reader.go_to("loose without a number, what it serves");
    let number = reader.text("panel-number");
    reader.write(&number, "1");
    reader.key(Key::Enter);
    assert!(all(&reader).iter().any(|text| text.contains("taken by one")), "{:?}", all(&reader));
    assert_eq!(reader.home().component("loose").unwrap().circuit, None);
    reader.write(&number, "3");
    reader.key(Key::Enter);
    assert_eq!(reader.home().component("loose").unwrap().circuit.as_deref(), Some("3"));
    assert!(!all(&reader).contains(&missing));
    assert_eq!(reader.shown("Position 3, what it serves"), "loose");
}

#[test]
fn there_are_as_many_positions_as_are_wanted_and_as_breakers_need() {
    let mut reader = Reader::begin(bare());
    let (more, fewer) = (reader.text("panel-more"), reader.text("panel-fewer"));
    let is_there = |reader: &Reader, n: u32| {
        reader.at.query_by_label(&format!("Position {n}, what it serves")).is_some()
    };
    assert!(is_there(&reader, 24) && !is_there(&reader, 25));
    reader.press(&more);
    assert!(is_there(&reader, 30) && !is_there(&reader, 31));
    reader.write("Position 22, what it serves", "Porch");
    for _ in 0..2 {
        reader.press(&fewer);
    }
    assert!(is_there(&reader, 22) && !is_there(&reader, 23));
}

#[test]
fn at_twice_the_text_size_it_is_one_column_and_typed_in_as_well() {
    // 1280 by 800 at 200 %.
    let mut reader = Reader::at(bare(), [640.0, 400.0]);
    // What is missing is worked out on a thread, and stands above.
    for _ in 0..400 {
        if reader.at.query_by_label_contains("Next:").is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(25));
        reader.at.run();
    }
    reader.write("Position 1, what it serves", "Kitchen counter");
    reader.key(Key::Enter);
    reader.letters("Hall");
    reader.key(Key::Enter);
    assert_eq!(reader.focused().as_deref(), Some("Position 5, what it serves"));
    assert_eq!(reader.breakers().len(), 2);
    let cell =
        reader.at.get_by_role_and_label(Role::TextInput, "Position 5, what it serves").rect();
    let screen = egui::Rect::from_min_size(egui::Pos2::ZERO, egui::vec2(640.0, 400.0));
    assert!(screen.contains_rect(cell), "{cell:?}");
    // What is picked stands below, and is pressed there.
    reader.go_to("Position 1, what it serves");
    reader.press("Add: Counter outlet, Kitchen");
    assert!(reader.home().connections.contains(&Connection::new(
        "panel-1",
        "counter",
        Medium::Power
    )));
}

#[test]
fn what_went_dead_is_ticked_room_by_room_with_one_press_each() {
    let mut home = bare();
    for (at, name) in ["Kitchen", "Garage"].into_iter().enumerate() {
        let mut breaker = Component::new(&format!("b{at}"), Kind::Breaker, name);
        breaker.panel = Some("panel".to_owned());
        breaker.circuit = Some((at + 1).to_string());
        home.components.push(breaker);
        home.connections.push(Connection::new("panel", &format!("b{at}"), Medium::Power));
    }
    let mut reader = Reader::begin(home);
    for key in ["panel-finding", "find-breakers"] {
        let label = reader.text(key);
        reader.press(&label);
    }
    let mut search = quarterturn_mapping::Search::breakers(reader.home(), &[]).unwrap();
    let truth = [("counter", "b0"), ("lamp", "b0"), ("door", "b1")];
    let dead = reader.text("find-dead");
    let walked = reader.text("find-walked");
    while let Some(next) = search.next_walk(reader.home()) {
        let mut walk = quarterturn_mapping::Walk { off: next.off.clone(), ..Default::default() };
        for key in &next.visit {
            let on = truth.iter().find(|(thing, _)| thing == key).unwrap().1;
            if next.off.iter().any(|off| off == on) {
                walk.dead.insert(key.clone());
                let name = reader.home().component(key).unwrap().name.clone();
                let fills = [fill("device", &name), fill("lesson", &dead)];
                let label = reader.words.fill("window-learnt-of", &fills);
                reader.press(&label);
            } else {
                walk.live.insert(key.clone());
            }
        }
        reader.press(&walked);
        search.record(walk);
        assert!(search.walks().len() < 4);
    }
    let write = reader.text("find-write");
    reader.press(&write);
    for (thing, breaker) in truth {
        let line = Connection::new(breaker, thing, Medium::Power);
        assert!(reader.home().connections.contains(&line), "{thing}");
    }
}
