//! A home built the other way round answers every trouble as the first one does.

#![expect(clippy::unwrap_used, reason = "a test")]

use std::path::Path;

use quarterturn_guidance::{Answer, Catalogue, Question, Spot, Trouble, answer, spots};
use quarterturn_home::{Home, mirrored, open};

fn example(name: &str) -> Home {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(name);
    let bytes = std::fs::read(file.join("home.ron")).unwrap();
    open("home.ron", &String::from_utf8(bytes).unwrap()).home.unwrap()
}

/// Every trouble at every spot that it can be at, and at no known spot. Distances are the same but for
/// the last digit, so that seconds may be rounded to the next one.
fn answers_alike(name: &str) {
    // On which side of the house a thing stands is told otherwise: see tests/sides_of_house.rs.
    let home = Home { north_deg: None, ..example(name) };
    let other = mirrored(&home);
    assert_ne!(home, other, "{name} has places");
    let catalogue = Catalogue::english();
    for &trouble in Trouble::ALL {
        let mut at = spots(&home, trouble);
        assert_eq!(at, spots(&other, trouble));
        at.push(Spot::Home);
        for at in at {
            let question =
                Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() };
            let [one, two] = [&home, &other].map(|home| answer(home, &question, &catalogue));
            same(&one, &two, &format!("{name}: {question:?}"));
        }
    }
}

fn same(one: &Answer, two: &Answer, of: &str) {
    let near = |a: f64, b: f64| (a - b).abs() <= 1.0 + 1e-9;
    assert_eq!(one.cautions, two.cautions, "{of}");
    assert_eq!(one.suspects.len(), two.suspects.len(), "{of}");
    for (a, b) in one.suspects.iter().zip(&two.suspects) {
        assert_eq!(a.component, b.component, "{of}");
        assert!((a.share - b.share).abs() < 1e-9, "{of}");
    }
    assert_eq!(one.relief, two.relief, "{of}");
    assert_eq!(one.call, two.call, "{of}");
    assert_eq!(one.restore, two.restore, "{of}");
    assert_eq!(one.steps.len(), two.steps.len(), "{of}");
    for (a, b) in one.steps.iter().zip(&two.steps) {
        assert_eq!((&a.id, &a.component, &a.prove), (&b.id, &b.component, &b.prove), "{of}");
        assert_eq!(without_numbers(&a.text), without_numbers(&b.text), "{of}");
        assert_eq!(a.seconds.is_some(), b.seconds.is_some(), "{of}");
        assert!(near(a.seconds.unwrap_or(0.0), b.seconds.unwrap_or(0.0)), "{of}: {a:?} {b:?}");
    }
    assert_eq!(one.sets.len(), two.sets.len(), "{of}");
    for (a, b) in one.sets.iter().zip(&two.sets) {
        assert_eq!((&a.close, a.by, &a.goes_off), (&b.close, b.by, &b.goes_off), "{of}");
        assert!(near(a.seconds, b.seconds), "{of}: {a:?} {b:?}");
    }
    let check = |answer: &Answer| answer.next_check.as_ref().map(|c| c.component.clone());
    assert_eq!(check(one), check(two), "{of}");
}

/// A text may tell seconds.
fn without_numbers(text: &str) -> String {
    text.chars().filter(|c| !c.is_ascii_digit()).collect()
}

#[test]
fn the_two_storey_house() {
    answers_alike("two-storey");
}

#[test]
fn the_flat() {
    answers_alike("flat");
}

#[test]
fn the_old_house() {
    answers_alike("old-house");
}
