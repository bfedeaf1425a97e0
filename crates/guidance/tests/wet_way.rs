//! Water on the way: what one does not walk through, and what one rather does not.
//!
//! ```text
//!   ┌─────────┬──────┬──────┬─────────┐
//!   │ bedroom   hall   bath   utility │   the main is in the utility room, behind the bath
//!   └─────────┴─    ─┴──────┴─────────┘
//!             │ yard │                    a second valve, far out in the yard
//!             └──────┘
//! ```

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test")]

use quarterturn_guidance::{Answer, Catalogue, Question, Seen, Spot, Trouble, answer};
use quarterturn_home::{Home, Passage, open};

const HOUSE: &str = r#"Home(format: 1, name: "Row",
    levels: [(id: "ground", name: "Ground")],
    spaces: [
        (id: "bedroom", name: "Bedroom", level: "ground", outline: [(0, 0), (4, 0), (4, 4), (0, 4)]),
        (id: "hall", name: "Hall", level: "ground", outline: [(4, 0), (6, 0), (6, 4), (4, 4)]),
        (id: "bath", name: "Bathroom", level: "ground", outline: [(6, 0), (8, 0), (8, 4), (6, 4)]),
        (id: "utility", name: "Utility room", level: "ground", outline: [(8, 0), (12, 0), (12, 4), (8, 4)]),
        (id: "yard", name: "Yard", level: "ground", outdoors: true, outline: [(4, 4), (6, 4), (6, 20), (4, 20)]),
    ],
    passages: [
        (between: ("bedroom", "hall"), at: (4, 2)),
        (between: ("hall", "bath"), at: (6, 2)),
        (between: ("bath", "utility"), at: (8, 2)),
        (between: ("hall", "yard"), at: (5, 4)),
    ],
    components: [
        (id: "street", kind: WaterMain, name: "Street main"),
        (id: "yard-valve", kind: IsolatingValve, name: "Yard valve", space: "yard", at: (5, 19, 0)),
        (id: "main", kind: IsolatingValve, name: "House main", space: "utility", at: (9, 2, 1)),
        (id: "toilet", kind: Toilet, name: "Toilet", space: "bath", at: (7, 3, 0)),
    ],
    connections: [
        (from: "street", to: "yard-valve", carries: ColdWater),
        (from: "yard-valve", to: "main", carries: ColdWater),
        (from: "main", to: "toilet", carries: ColdWater),
    ],
)"#;

fn house() -> Home {
    let opened = open("home.ron", HOUSE);
    assert_eq!(opened.problems, []);
    opened.home.unwrap()
}

fn leak(home: &Home, from: Option<&str>, seen: &[(&str, Seen)]) -> Answer {
    let question = Question {
        trouble: Trouble::Leak,
        at: Spot::Component("toilet".to_owned()),
        from: from.map(str::to_owned),
        failed: Vec::new(),
        seen: seen.iter().map(|(id, seen)| ((*id).to_owned(), *seen)).collect(),
    };
    answer(home, &question, &Catalogue::english())
}

fn sets(answer: &Answer) -> Vec<&str> {
    answer.sets.iter().map(|set| set.close[0].as_str()).collect()
}

fn warns(answer: &Answer, id: &str) -> bool {
    answer.cautions.iter().any(|caution| caution.id == id)
}

/// By hand: 7 m to the main and 18 m to the yard, each of them twice the doors at most, so that only
/// the water in the bathroom turns the two round.
#[test]
fn a_valve_behind_the_wet_room_comes_after_one_that_is_reached_dry() {
    let mut home = house();
    assert_eq!(sets(&leak(&home, Some("bedroom"), &[])), ["yard-valve", "main"]);
    // Who stands in the bathroom leaves it either way.
    assert_eq!(sets(&leak(&home, None, &[]))[0], "main");
    // So does a door from the hall, of whatever length.
    home.passages.push(Passage { at: Some((6.0, 0.5)), ..Passage::new("hall", "utility") });
    let dry = leak(&home, Some("bedroom"), &[]);
    assert_eq!(sets(&dry), ["main", "yard-valve"]);
    assert!(!warns(&dry, "caution-way-through-water"));
}

#[test]
fn where_there_is_no_other_way_one_looks_first() {
    let mut home = house();
    home.components.retain(|c| c.id != "yard-valve");
    home.connections.retain(|c| c.from != "yard-valve");
    home.connections[0].to = "main".to_owned();
    let told = leak(&home, Some("bedroom"), &[]);
    assert_eq!(sets(&told), ["main"]);
    let caution = told.cautions.iter().find(|c| c.id == "caution-way-through-water").unwrap();
    assert!(caution.text.contains("Bathroom"), "{}", caution.text);
    assert!(!warns(&leak(&home, None, &[]), "caution-way-through-water"));
    assert!(!warns(
        &leak(&home, Some("bedroom"), &[("bath", Seen::Dry)]),
        "caution-way-through-water"
    ));
}

#[test]
fn nobody_walks_through_standing_water() {
    let mut home = house();
    let wet = [("bath", Seen::Wet)];
    let told = leak(&home, Some("bedroom"), &wet);
    assert_eq!(sets(&told), ["yard-valve"]);
    assert!(told.steps.iter().all(|step| step.component.as_deref() != Some("main")), "{told:#?}");
    // Unless there is another door, or the map knows of none at all.
    let passages = home.passages.clone();
    home.passages.push(Passage { at: Some((6.0, 0.5)), ..Passage::new("hall", "utility") });
    assert_eq!(sets(&leak(&home, Some("bedroom"), &wet)), ["main", "yard-valve"]);
    home.passages.clear();
    assert_eq!(sets(&leak(&home, Some("bedroom"), &wet)).len(), 2);
    // Who calls from beyond the water can still reach the main.
    home.passages = passages;
    assert_eq!(sets(&leak(&home, Some("utility"), &wet)), ["main"]);
}

/// By hand, from the middle of the bedroom: 2 + 2 + 2 + 1 m to the main, a tenth more for furniture,
/// at 3 ft/s; three doors of 2 s; and the quarter turn or many that the valve takes.
#[test]
fn the_time_is_that_of_the_way_through_the_doors() {
    let mut home = house();
    home.components[2].operates = Some(quarterturn_home::Operates {
        seconds: Some(10.0),
        ..quarterturn_home::Operates::default()
    });
    let told = leak(&home, Some("bedroom"), &[]);
    let main = told.sets.iter().find(|set| set.close == ["main"]).unwrap();
    let by_hand: f64 = 7.0 * 1.1 / 0.9144 + 3.0 * 2.0 + 10.0;
    assert!((main.seconds - by_hand).abs() <= 0.5, "{} {by_hand}", main.seconds);
    // Straight through the walls, as without doors: 7 m, four tenths more, one door.
    home.passages.clear();
    let told = leak(&home, Some("bedroom"), &[]);
    let main = told.sets.iter().find(|set| set.close == ["main"]).unwrap();
    let by_hand: f64 = 7.0 * 1.4 / 0.9144 + 2.0 + 10.0;
    assert!((main.seconds - by_hand).abs() <= 0.5, "{} {by_hand}", main.seconds);
}
