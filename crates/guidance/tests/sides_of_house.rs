//! Where something outdoors stands, by the compass. All of it worked out by hand.

#![expect(clippy::unwrap_used, reason = "a test")]

use std::path::Path;

use quarterturn_guidance::{Catalogue, Question, Spot, Trouble, answer};
use quarterturn_home::{Home, OperableBy, mirrored, open};

fn example(name: &str) -> Home {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(name);
    let bytes = std::fs::read(file.join("home.ron")).unwrap();
    open("home.ron", &String::from_utf8(bytes).unwrap()).home.unwrap()
}

/// The old house where the curb stop may be turned by anyone: it is all that stops a leak there.
///
/// Its rooms on the ground floor reach from 0.25 to 10.75 across and from 0.25 to 8.75 down, so that the
/// middle is 5.5, 4.5 and the walls are 5.25 and 4.25 off. The curb stop at 7.0, 13.6 is 1.5 / 5.25 =
/// 0.29 to the right and 9.1 / 4.25 = 2.14 down: 7.6 degrees from straight down.
fn old_house() -> Home {
    let mut home = example("old-house");
    let curb = home.components.iter_mut().find(|c| c.id == "curb-stop").unwrap();
    curb.operable_by = OperableBy::Anyone;
    home
}

/// What the first step at `device` says of its place.
#[track_caller]
fn told(home: &Home, language: &str, trouble: Trouble, at: &str, device: &str) -> String {
    let at = Spot::Component(at.to_owned());
    let question = Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() };
    let answer = answer(home, &question, &Catalogue::in_language(language));
    let here = answer.steps.iter().find(|step| step.component.as_deref() == Some(device));
    let text = &here.unwrap_or_else(|| panic!("no step at {device}: {:?}", answer.steps)).text;
    let from = if language == "es" { "Está aquí: " } else { "You find it here: " };
    let (_, place) = text.split_once(from).unwrap_or_else(|| panic!("no place: {text}"));
    place.split_once('.').map_or(place, |(place, _)| place).to_owned()
}

fn curb_stop(home: &Home, language: &str) -> String {
    told(home, language, Trouble::Leak, "shower", "curb-stop")
}

#[test]
fn the_curb_stop_is_on_the_side_of_the_street() {
    let home = old_house();
    assert_eq!(curb_stop(&home, "en"), "Front yard, Ground floor, on the south side of the house");
    assert_eq!(curb_stop(&home, "es"), "Front yard, Ground floor, en el lado sur de la casa");
    // With one level, its name is not told.
    let mut one = home.clone();
    one.levels.retain(|level| level.id == "ground");
    assert_eq!(curb_stop(&one, "en"), "Front yard, on the south side of the house");
}

/// The street is 172.4 degrees clockwise from up. With north to the right (90) that is 82.4 degrees from
/// north, east; with north 30 degrees to the left of up (330), 202.4: a hair before south-west, 202.5.
#[test]
fn a_house_that_lies_otherwise_has_its_street_elsewhere() {
    let side = |north_deg: Option<f64>| {
        let home = Home { north_deg, ..old_house() };
        curb_stop(&home, "en").replace("Front yard, Ground floor", "")
    };
    assert_eq!(side(Some(90.0)), ", on the east side of the house");
    assert_eq!(side(Some(330.0)), ", on the south side of the house");
    assert_eq!(side(Some(329.0)), ", on the south-west side of the house");
    assert_eq!(side(Some(180.0)), ", on the north side of the house");
    assert_eq!(side(None), "");
}

/// On the two-storey house's ground floor the middle is 7.0, 5.0 and the walls are 6.8 and 4.8 off. The
/// cleanout at 4.2, 10.6 is 2.8 / 6.8 = 0.41 to the left and 5.6 / 4.8 = 1.17 down: 19.4 degrees from
/// straight down. The shutoff at 1.4, 12.5 is 0.82 to the left and 1.56 down: 27.8 degrees.
#[test]
fn a_cleanout_and_a_shutoff_in_the_front_yard() {
    let home = example("two-storey");
    let cleanout =
        |home: &Home| told(home, "en", Trouble::SewageRising, "laundry-drain", "house-cleanout");
    let south = "Front yard, Ground floor, on the south side of the house";
    assert_eq!(cleanout(&home), south);
    assert_eq!(cleanout(&mirrored(&home)), south);
    let shutoff = |home: &Home| told(home, "en", Trouble::Leak, "house-main", "backflow-outlet");
    let corner = "Front yard, Ground floor, on the south-west side of the house";
    assert_eq!(shutoff(&home), corner);
    // Left for right, and north up still: the other end of the front.
    assert_eq!(shutoff(&mirrored(&home)), corner.replace("west", "east"));
}

/// The yard beside the house is called after its side: that is not said twice, and is said where the name
/// tells something else.
#[test]
fn a_side_that_the_name_tells_is_not_told_twice() {
    let meter = |home: &Home, language: &str| {
        told(home, language, Trouble::WaterNearPower, "kitchen", "service-disconnect")
    };
    let mut home = example("two-storey");
    assert_eq!(meter(&home, "en"), "East side of the house, Ground floor");
    home.north_deg = Some(90.0);
    assert_eq!(
        meter(&home, "en"),
        "East side of the house, Ground floor, on the north side of the house"
    );
    // In Spanish "Este" is a word of its own, and "oeste" is another.
    home.north_deg = Some(0.0);
    let yard = home.spaces.iter_mut().find(|space| space.id == "east-side").unwrap();
    yard.name = "Lado oeste".to_owned();
    assert_eq!(meter(&home, "es"), "Lado oeste, Ground floor, en el lado este de la casa");
}

#[test]
fn what_stands_indoors_is_on_no_side() {
    let home = example("two-storey");
    let place = told(&home, "en", Trouble::Leak, "main-bath-shower", "hot-upper-valve");
    assert_eq!(place, "Mechanical room, Basement");
}
