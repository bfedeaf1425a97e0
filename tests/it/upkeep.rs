//! Handover and upkeep: who is called first, what is due, what a finding changes, and the files for
//! calendar and phone, read by libraries that did not write them.

mod calendar;
mod call_first;
mod cards;
mod command;
mod findings;
mod lists;

use quarterturn_home::{Date, Home};

pub(crate) fn day(text: &str) -> Date {
    text.parse().unwrap()
}

/// A home of the text between its brackets.
pub(crate) fn home(inside: &str) -> Home {
    let text = format!(r#"Home(format: 1, name: "House", {inside})"#);
    let opened = quarterturn_home::open("home.ron", &text);
    assert!(opened.problems.iter().all(|p| p.key == "no-components"), "{:#?}", opened.problems);
    opened.home.unwrap()
}
