//! Nobody knows where it is: that, too, is answered.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use quarterturn_guidance::{Act, By, Catalogue, Question, Spot, Trouble, answer};
use quarterturn_home::Home;

fn example(name: &str) -> Home {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../examples")
        .join(name)
        .join("home.ron");
    let bytes = std::fs::read(path).unwrap();
    quarterturn_home::open("home.ron", std::str::from_utf8(&bytes).unwrap()).home.unwrap()
}

fn ask(home: &Home, trouble: Trouble) -> quarterturn_guidance::Answer {
    let question =
        Question { trouble, at: Spot::Home, from: None, failed: Vec::new(), seen: Vec::new() };
    answer(home, &question, &Catalogue::english())
}

/// By hand on the plan: whatever leaks indoors, the house main stops it, and nothing smaller stops all.
#[test]
fn a_leak_that_nobody_finds_is_stopped_at_the_main() {
    let home = example("two-storey");
    for trouble in [Trouble::Leak, Trouble::WaterFromAbove] {
        let answer = ask(&home, trouble);
        assert!(answer.mapped, "{trouble:?}");
        let first = answer.steps.iter().find(|step| step.act == Act::Close).unwrap();
        assert_eq!(first.component.as_deref(), Some("house-main"), "{answer:#?}");
    }
}

/// By hand on the plan: neither gate valve of the old house can be relied on (one is seized, the other
/// leaks by), so that only the curb stop is left, and that is the utility's.
#[test]
fn where_no_main_can_be_relied_on_the_utility_is_called() {
    let home = example("old-house");
    let answer = ask(&home, Trouble::Leak);
    assert!(answer.mapped);
    let sets: Vec<(&[String], By)> =
        answer.sets.iter().map(|set| (set.close.as_slice(), set.by)).collect();
    assert_eq!(sets, [(&["curb-stop".to_owned()][..], By::Utility)]);
    assert!(answer.steps.iter().any(|step| step.act == Act::Call), "{answer:#?}");
    assert!(answer.steps.iter().all(|step| step.act != Act::Close), "{answer:#?}");
}

#[test]
fn every_trouble_that_nobody_can_place_has_steps() {
    for name in ["two-storey", "flat", "old-house"] {
        let home = example(name);
        for trouble in Trouble::ALL {
            let answer = ask(&home, *trouble);
            assert!(!answer.steps.is_empty(), "{name} {trouble:?}");
        }
    }
    let empty = Home { format: 1, ..Home::default() };
    for trouble in Trouble::ALL {
        let answer = ask(&empty, *trouble);
        assert!(!answer.steps.is_empty(), "{trouble:?}");
        assert!(trouble.is_leave_first() || !answer.mapped, "{trouble:?}");
    }
}
