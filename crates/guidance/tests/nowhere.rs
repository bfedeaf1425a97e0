//! Nobody knows where it is: that, too, is answered.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on stops")]

use quarterturn_guidance::{Act, Catalogue, Question, Spot, Trouble, answer};
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

/// By hand on the plans: whatever leaks, the house main stops it, and nothing smaller stops all.
#[test]
fn a_leak_that_nobody_finds_is_stopped_at_the_main() {
    for (name, main) in [("two-storey", "house-main"), ("old-house", "main-gate")] {
        let home = example(name);
        for trouble in [Trouble::Leak, Trouble::WaterFromAbove] {
            let answer = ask(&home, trouble);
            assert!(answer.mapped, "{name}");
            let first = answer.steps.iter().find(|step| step.act == Act::Close).unwrap();
            assert_eq!(first.component.as_deref(), Some(main), "{name}: {answer:#?}");
        }
    }
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
