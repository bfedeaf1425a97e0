//! From a home, a trouble and a spot to the one answer that every front end shows.
//!
//! [`answer`] is a function of the home, the question and the language, and of nothing else. It
//! never draws, prints, opens a file or looks at a clock. What it may never do to people stands in
//! one place: `compose.rs`.

#![expect(
    clippy::indexing_slicing,
    reason = "places of components come from the home itself; checked access would hide a mistake"
)]

mod answer;
mod catalogue;
mod compose;
mod contacts;
mod context;
mod cooling;
mod draft;
mod how;
mod isolation;
mod leave;
mod map_check;
mod plan;
mod power;
mod question;
mod route;
mod sewer;
mod sources;
mod spots;
mod water;

pub use answer::{
    Act, Answer, By, Call, Caution, Choice, ClosingSet, NextCheck, Relief, Signal, Step, Suspect,
};
pub use catalogue::{Catalogue, Fill, count, fill};
pub use map_check::{MapFinding, check};
pub use question::{Question, Seen, Spot, Trouble};
pub use sources::{Entry, entries, source};
pub use spots::spots;

use quarterturn_home::Home;

/// The answer to a question, computed from the map of the home.
#[must_use]
pub fn answer(home: &Home, question: &Question, catalogue: &Catalogue) -> Answer {
    let ctx = context::Context::new(home, question, catalogue);
    let draft = match question.trouble {
        Trouble::Leak => water::leak(&ctx),
        Trouble::WaterFromAbove => water::water_from_above(&ctx),
        Trouble::DrainBacksUp | Trouble::SewageRising => sewer::backs_up(&ctx),
        Trouble::DeadOutlet => power::dead_outlet(&ctx),
        Trouble::BreakerTrips => power::breaker_trips(&ctx),
        Trouble::Sparks => power::sparks(&ctx),
        Trouble::CoolingStopped => cooling::stopped(&ctx),
        Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire => leave::leave(&ctx),
    };
    compose::compose(&ctx, draft)
}
