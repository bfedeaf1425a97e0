//! From nothing but a photo of a plan to right answers, in forty actions.

use egui::{Pos2, pos2, vec2};
use egui_kittest::kittest::Queryable as _;
use quarterturn_folder::Folder;
use quarterturn_guidance::{Act, Answer, By, Catalogue, Question, Spot, Trouble, answer};
use quarterturn_home::Home;
use quarterturn_window::Opening;

use crate::person::{Person, Place, outline};
use crate::photo::{photo, set_corners};

fn ask(home: &Home, trouble: Trouble, at: &str) -> Answer {
    let question = Question {
        trouble,
        at: Spot::Component(at.to_owned()),
        from: None,
        failed: Vec::new(),
        seen: Vec::new(),
    };
    answer(home, &question, &Catalogue::english())
}

#[test]
fn forty_actions_from_a_photo_to_right_answers() {
    let place = Place::new("story");
    let jpeg = place.path("plan.jpg");
    let corners = photo(&jpeg);
    let folder = place.path("ours");
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);

    // The photo, put straight by the outer walls, 8 by 6 metres.
    person.drop_file(&jpeg);
    person.type_into("Name of the home", "Ours");
    person.type_into("Emergency number", "911");
    person.type_into("Folder that it is kept in", &folder.display().to_string());
    person.press("Metres and litres");
    person.press("Make this home");
    person.wait("the corners", |person| person.sees("Corner 1 of the rectangle"));
    set_corners(&mut person, corners);
    person.type_into("Width of the rectangle", "8 m");
    person.type_into("Depth of the rectangle", "6 m");
    person.press("Put it straight");
    person.wait("a straight picture", |person| person.sees("Is it straight now?"));
    person.press("Yes, go on");
    person.wait("a plan", |person| person.home().levels.first().unwrap().plan.is_some());
    let plan = person.home().levels.first().unwrap().plan.clone().unwrap();
    // The strip round the walls is 0.08 of 8 m wide: the walls' corner is the origin.
    assert!((plan.left_m + 0.64).abs() < 0.05 && (plan.top_m + 0.64).abs() < 0.05, "{plan:?}");

    // Three rooms, drawn over what the picture shows.
    for (name, from, to) in [
        ("Kitchen", (0.05, 0.02), (3.98, 5.95)),
        ("Bathroom", (4.05, 0.04), (8.0, 2.97)),
        ("Utility room", (4.03, 3.04), (7.96, 6.0)),
    ] {
        person.press(name);
        let at = |point| person.on_board("Ground floor", BOARD, point);
        let (from, to) = (at(from), at(to));
        person.drag(from, to);
    }
    // As exactly as a hand draws, and with walls in common.
    let [bathroom, utility] = ["Bathroom", "Utility room"].map(|it| outline(person.home(), it));
    for (edge, drawn) in [4.0, 0.0, 8.0, 3.0].into_iter().zip(bathroom) {
        assert!((edge - drawn).abs() < 0.1, "{bathroom:?}");
    }
    assert!((utility[0] - bathroom[0]).abs() + (utility[1] - bathroom[3]).abs() < 1e-9);

    // A walk round the house.
    person.press("Walk and pin");
    person.wait("the picture", |person| !person.sees("The picture is coming"));
    for (set, at) in [
        ("Water service, from the street to the main shutoff", (7.6, 5.0)),
        ("Panel with its breakers", (4.4, 5.5)),
        ("House drain with its cleanout, to the street", (6.0, 5.6)),
        ("Water heater with a tank", (7.4, 3.6)),
        ("Toilet", (7.4, 0.6)),
        ("GFCI and what hangs on it", (5.0, 0.4)),
    ] {
        person.press(set);
        let at = on_plan(&person, at);
        person.click_at(at);
    }
    person.press("Breaker 5");
    person.press("Kitchen sink");
    let at = on_plan(&person, (1.0, 0.5));
    person.click_at(at);
    person.press("What feeds what");
    person.press("Accept all that are likely");
    assert!(person.actions <= 40, "{}", person.actions);
    let percent = quarterturn_mapping::missing(person.home()).percent();
    assert!(percent >= 85, "{percent}");

    // A leak at the kitchen sink: the main is the nearest; its own stops leave the rest of the home its
    // water; last the utility's curb stop. Nothing else closes it.
    let home = person.home();
    let leak = ask(home, Trouble::Leak, "kitchen-sink");
    let sets: Vec<(Vec<&str>, By)> = leak
        .sets
        .iter()
        .map(|set| (set.close.iter().map(String::as_str).collect(), set.by))
        .collect();
    let main = (vec!["utility-room-water-service-main"], By::Anyone);
    let stops = (vec!["kitchen-sink-cold-stop", "kitchen-sink-hot-stop"], By::Anyone);
    assert!(leak.mapped && sets.contains(&main) && sets.contains(&stops), "{sets:?}");
    assert!(
        sets.contains(&(vec!["utility-room-water-service-curb-stop"], By::Utility)),
        "{sets:?}"
    );
    assert_eq!(sets.last().map(|(_, by)| *by), Some(By::Utility));
    // Sewage at the toilet: all drains of the house go through the building drain, so it is what is
    // blocked, or what comes after it; it is rodded from the cleanout.
    let sewage = ask(home, Trouble::SewageRising, "bathroom-toilet");
    let relief = sewage.relief.unwrap();
    assert_eq!(relief.rod_from.as_deref(), Some("utility-room-house-drain-cleanout"), "{relief:?}");
    assert_eq!(relief.emerges_at, ["bathroom-toilet"]);
    // It stands indoors, beside the water heater: nobody is told to open it.
    assert_eq!(relief.open, None);
    assert_eq!(sewage.steps.first().map(|step| step.act), Some(Act::StopUse));
    assert!(sewage.steps.iter().all(|step| step.act != Act::OpenCap), "{:#?}", sewage.steps);
    // A dead outlet behind the GFCI: that first, then its breaker.
    let dead = ask(home, Trouble::DeadOutlet, "bathroom-gfci-outlet-1");
    let suspects: Vec<&str> = dead.suspects.iter().map(|s| s.component.as_str()).collect();
    assert_eq!(suspects.first(), Some(&"bathroom-gfci"), "{suspects:?}");
    assert!(suspects.contains(&"utility-room-panel-breaker-5"), "{suspects:?}");
    assert!(!suspects.contains(&"utility-room-panel-breaker-4"), "{suspects:?}");

    // All of it is in the folder.
    let home = home.clone();
    person.at.state_mut().finish();
    assert_eq!(Folder::at(&folder).unwrap().read().unwrap().home, home);
}

/// The board with the picture and a metre round it, in whole metres.
const BOARD: [f32; 4] = [-2.0, -2.0, 12.0, 10.0];

/// Where a point of the level is on the plan with the pins.
fn on_plan(person: &Person, (x, y): (f32, f32)) -> Pos2 {
    let plan = person.home().levels.first().unwrap().plan.clone().unwrap();
    let picture = person.at.state().folder().unwrap().join(&plan.picture);
    let (wide, high) = image::image_dimensions(picture).unwrap();
    #[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "of a screen")]
    let (left, top, width, aspect) =
        (plan.left_m as f32, plan.top_m as f32, plan.width_m as f32, high as f32 / wide as f32);
    let area = person.at.get_by_label("Plan of: Ground floor").rect();
    let scale = (area.width() / width).min(area.height() / (width * aspect));
    let corner = pos2(area.center().x - width * scale / 2.0, area.top());
    corner + vec2(x - left, y - top) * scale
}
