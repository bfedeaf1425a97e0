//! What stands below the steps of an answer, read as a screen reader would.

#![expect(clippy::expect_used, reason = "a test that cannot go on stops")]

use egui::accesskit::Role;
use egui::{Theme, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_guidance::{Catalogue, Choice, Trouble};
use quarterturn_home::{Component, Connection, Home, Kind, Medium, Operates, Space, Units};
use quarterturn_window::{App, Opening};

const PLOT: &str = "Plot of the water on the floor against time. The same follows in words.";

fn asked(opening: Opening, trouble: Trouble, spot: &str) -> Harness<'static, App> {
    let app = App::new(opening, Catalogue::english());
    let mut harness = Harness::builder()
        .with_size([1280.0, 800.0])
        .with_max_steps(12)
        .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
    harness.run();
    let words = Catalogue::english();
    let key = format!("trouble-{}", trouble.id());
    press(&mut harness, &format!("{}, {}", words.text(&key), words.text(&format!("{key}-hint"))));
    press(&mut harness, spot);
    assert!(harness.state().answer().is_some(), "{spot}");
    harness
}

fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

/// Turns to the part of the answer whose name begins so.
fn turn(harness: &mut Harness<'_, App>, part: &str) {
    let label = harness
        .query_all_by_role(Role::Button)
        .filter_map(|node| node.accesskit_node().label())
        .find(|label| label.starts_with(part))
        .unwrap_or_else(|| panic!("no part {part}"));
    press(harness, &label);
}

/// Says of the step to do now that it is done, whatever the button is called.
fn done(harness: &mut Harness<'_, App>) {
    let label = ["It worked", "Done"].into_iter().find(|l| harness.query_by_label(l).is_some());
    press(harness, label.expect("a step to do"));
}

/// Every text on the screen with the top of where it stands.
fn texts(harness: &Harness<'_, App>) -> Vec<(String, f32)> {
    fn collect(node: Node<'_>, texts: &mut Vec<(String, f32)>) {
        let inner = node.accesskit_node();
        let text = inner.label().or(inner.value());
        texts.extend(text.map(|text| (text, node.rect().top())));
        node.children().for_each(|child| collect(child, texts));
    }
    let mut texts = Vec::new();
    collect(harness.root(), &mut texts);
    texts
}

fn with(harness: &Harness<'_, App>, part: &str) -> Vec<(String, f32)> {
    texts(harness).into_iter().filter(|(text, _)| text.contains(part)).collect()
}

/// Seconds and litres from which on no more comes.
fn stop(choice: &Choice) -> (f64, f64) {
    let mut stop = (0.0, 0.0);
    for &(seconds, litres) in &choice.curve {
        if litres > stop.1 {
            stop = (seconds, litres);
        }
    }
    stop
}

#[test]
fn each_choice_is_told_with_its_seconds_and_gallons() {
    let mut harness = asked(Opening::built_in(), Trouble::Leak, "W38 Kitchen sink");
    turn(&mut harness, "All steps");
    let home = Opening::built_in().home;
    let choices = harness.state().answer().expect("an answer").choices.clone();
    assert!(choices.len() > 1, "{choices:?}");
    // By hand on the plan: the sink hangs on its two stops, both under it.
    assert_eq!(choices[0].close, ["kitchen-cold-stop", "kitchen-hot-stop"]);
    let said = with(&harness, "Close W36, W37: ");
    assert_eq!(said.len(), 1, "{said:?}");
    let mut above = with(&harness, PLOT)[0].1;
    for choice in &choices {
        let tags: Vec<&str> = choice
            .close
            .iter()
            .map(|id| home.component(id).and_then(|c| c.tag.as_deref()).expect("a tag"))
            .collect();
        let (seconds, litres) = stop(choice);
        let said = with(&harness, &format!("Close {}: {seconds:.0} seconds, ", tags.join(", ")));
        let [(said, top)] = said.as_slice() else { panic!("{tags:?} {seconds}: {said:?}") };
        let gallons: f64 = said
            .split(", ")
            .last()
            .and_then(|end| end.strip_suffix(" gal."))
            .and_then(|number| number.parse().ok())
            .unwrap_or_else(|| panic!("{said}"));
        // Two figures are right to a twentieth; a US gallon is 3.785 L.
        assert!((gallons * 3.785 / litres - 1.0).abs() < 0.051, "{said} for {litres} L");
        assert!(*top > above, "below the plot, in the order of the answer: {said}");
        above = *top;
    }
}

#[test]
fn the_plot_is_small_and_keeps_within_the_window_at_every_text_size() {
    let mut harness = asked(Opening::built_in(), Trouble::Leak, "W38 Kitchen sink");
    turn(&mut harness, "All steps");
    for (width, zoom, theme) in
        [(1280.0, 1.0, Theme::Light), (1280.0, 2.0, Theme::Dark), (520.0, 2.0, Theme::Light)]
    {
        harness.set_size(vec2(width, 800.0));
        harness.ctx.set_theme(theme);
        harness.ctx.set_zoom_factor(zoom);
        harness.run();
        harness.get_by_role_and_label(Role::Image, PLOT).scroll_to_me();
        harness.run();
        let plot = harness.get_by_role_and_label(Role::Image, PLOT).rect();
        let window = harness.ctx.content_rect();
        assert!(plot.height() <= 220.0, "{plot}");
        assert!(plot.width() >= 180.0, "{plot} at {width} by {zoom}");
        assert!(window.contains_rect(plot), "{plot} in {window} at {width} by {zoom}");
    }
}

#[test]
fn without_choices_there_is_no_plot() {
    let mut harness =
        asked(Opening::built_in(), Trouble::DeadOutlet, "E29 Outlet in the half bath");
    turn(&mut harness, "All steps");
    assert!(harness.state().answer().expect("an answer").choices.is_empty());
    assert!(with(&harness, "How much water by then").is_empty());
    assert!(with(&harness, PLOT).is_empty());
}

/// A basin whose stop is a long walk away and slow, and a main beside it that would leave a medical
/// device dry: shut the main first, then the stop, then the main is opened again.
fn far_stop() -> Home {
    let room = |id: &str, left: f64| Space {
        id: id.to_owned(),
        name: id.to_owned(),
        level: Some("ground".to_owned()),
        outline: vec![(left, 0.0), (left + 10.0, 0.0), (left + 10.0, 4.0), (left, 4.0)],
        outdoors: false,
    };
    let device = |id: &str, tag: &str, kind, space: &str, x: f64| Component {
        tag: Some(tag.to_owned()),
        space: Some(space.to_owned()),
        at: Some((x, 2.0, 0.5)),
        ..Component::new(id, kind, id)
    };
    let pipe = |from: &str, to: &str| Connection::new(from, to, Medium::ColdWater);
    let mut stop = device("Stop", "W9", Kind::IsolatingValve, "Hall", 59.0);
    stop.operates = Some(Operates { seconds: Some(60.0), ..Operates::default() });
    let mut sink = device("Sink", "W7", Kind::Sink, "Hall", 55.0);
    sink.critical = true;
    Home {
        format: 1,
        name: "Far stop".to_owned(),
        units: Units::Si,
        levels: vec![quarterturn_home::Level {
            id: "ground".to_owned(),
            name: "Ground floor".to_owned(),
            elevation_m: 0.0,
            plan: None,
        }],
        spaces: vec![room("Bath", 0.0), room("Hall", 50.0)],
        components: vec![
            device("Street", "W1", Kind::WaterMain, "Bath", 1.0),
            device("Main", "W2", Kind::IsolatingValve, "Bath", 2.0),
            device("Tee", "W3", Kind::Manifold, "Bath", 3.0),
            stop,
            device("Basin", "W5", Kind::Basin, "Bath", 4.0),
            sink,
        ],
        connections: vec![
            pipe("Street", "Main"),
            pipe("Main", "Tee"),
            pipe("Tee", "Stop"),
            pipe("Stop", "Basin"),
            pipe("Tee", "Sink"),
        ],
        ..Home::default()
    }
}

#[test]
fn the_main_that_is_opened_again_is_told_and_gone_to_again() {
    let opening = Opening::new(far_stop(), None, vec![]);
    let mut harness = asked(opening, Trouble::Leak, "W5 Basin");
    let first = harness.state().answer().expect("an answer").choices[0].clone();
    assert_eq!((first.close.join(" ").as_str(), first.reopens), ("Main Stop Main", true));
    turn(&mut harness, "All steps");
    let said = with(&harness, "Then open W2 again: after ");
    assert_eq!(said.len(), 1, "{said:?}");
    assert!(said[0].0.starts_with("Close W2, W9: "), "{said:?}");
    assert!(said[0].0.contains(" L. "), "{said:?}");
    turn(&mut harness, "Now");
    harness.get_by_label("Go to: Main");
    for goal in ["Stop", "Main"] {
        let goal = format!("Go to: {goal}");
        for _ in 0..6 {
            if harness.query_by_label(&goal).is_none() {
                done(&mut harness);
            }
        }
        harness.get_by_label(&goal);
    }
    let now = with(&harness, "Now open this again");
    assert!(!now.is_empty());
    harness.get_by_role_and_label(Role::Button, "It won’t turn");
}

#[test]
fn what_goes_off_is_told_once() {
    let mut harness = asked(Opening::built_in(), Trouble::Leak, "W38 Kitchen sink");
    let off = harness.state().answer().expect("an answer").sets[0].goes_off.clone();
    assert!(off.len() > 1);
    turn(&mut harness, "Goes off");
    for id in &off {
        let name = Opening::built_in().home.component(id).expect("known").name.clone();
        assert!(!with(&harness, &name).is_empty(), "{name}");
    }
    let said = with(&harness, "This goes off with it");
    assert_eq!(said.len(), 1, "{said:?}");
}

#[test]
fn those_to_call_for_this_come_before_the_other_utilities() {
    let mut harness = asked(Opening::built_in(), Trouble::Leak, "W38 Kitchen sink");
    turn(&mut harness, "Call");
    let calls = harness.state().answer().expect("an answer").call.clone();
    let besides = with(&harness, "Your other utilities");
    let [(_, besides)] = besides.as_slice() else { panic!("{besides:?}") };
    let emergency = harness.get_by_label("911").rect().top();
    assert!(emergency < *besides);
    let (mut before, mut after) = (0, 0);
    for call in &calls {
        let phone = call.phone.as_deref().expect("a number");
        let places = with(&harness, phone);
        assert!(!places.is_empty(), "{phone} is on the screen");
        if call.why == "Your utility." {
            assert!(places.iter().all(|(_, top)| top > besides), "{places:?}");
            let names = with(&harness, &call.name);
            assert!(!names.is_empty(), "{}", call.name);
            after += 1;
        } else {
            assert!(places.iter().any(|(_, top)| top < besides), "{places:?}");
            before += 1;
        }
    }
    assert!(before >= 2 && after >= 2, "{calls:?}");
    assert!(with(&harness, "Your utility.").is_empty());
}

#[test]
fn five_suspects_are_shown_and_the_rest_on_demand() {
    let mut harness =
        asked(Opening::built_in(), Trouble::DeadOutlet, "E29 Outlet in the half bath");
    let suspects = harness.state().answer().expect("an answer").suspects.clone();
    assert!(suspects.len() > 5, "{suspects:?}");
    assert_eq!(with(&harness, "%: ").len(), 5);
    let percent = (suspects[0].share * 100.0).round();
    assert!(with(&harness, "%: ")[0].0.starts_with(&format!("{percent}%: ")));
    let more = suspects.len() - 5;
    let more = with(&harness, &format!("{more} more, less likely"))[0].0.clone();
    harness.get_by_label(&more).scroll_to_me();
    harness.run();
    harness.get_by_label(&more).click();
    harness.run();
    assert_eq!(with(&harness, "%: ").len(), suspects.len());
}
