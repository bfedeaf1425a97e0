//! From a home, a trouble and a spot to the one answer that every front end shows.
//!
//! [`answer`] is a function of the home, the question and the language, and of nothing else; a
//! [`Guide`] gives many answers for one reading of the home. Neither draws, prints, opens a file or
//! looks at a clock. What an answer may never do to people stands in one place: `compose.rs`.

#![expect(
    clippy::indexing_slicing,
    reason = "places of components come from the home itself; checked access would hide a mistake"
)]

mod answer;
mod blame;
mod branches;
mod by_hand;
mod call_first;
mod catalogue;
mod changes;
mod closing;
mod compose;
mod contacts;
mod context;
mod cooling;
mod dark;
mod day;
mod draft;
mod floor;
mod footpaths;
mod gfci;
mod guide;
mod hot_water;
mod how;
mod isolation;
mod leave;
mod lines;
mod live;
mod map_check;
mod pit;
mod plan;
mod power;
mod practice;
mod question;
mod responsible;
mod route;
mod sewer;
mod sides;
mod sources;
mod spots;
mod standing;
mod supply;
mod system;
mod toilet;
mod trace;
mod walks;
mod water;
mod way;
mod wet_hazards;
mod whereabouts;

pub use answer::{
    Act, Answer, By, Call, Caution, Choice, ClosingSet, NextCheck, Relief, Signal, Step, Suspect,
};
pub use catalogue::{Catalogue, Fill, Language, count, fill};
pub use contacts::{contact_for, role_name};
pub use context::closes;
pub use day::{civil_day, in_force, last_day, later, since_1970, told_day};
pub use guide::Guide;
pub use how::how_to_close;
pub use map_check::{MapFinding, check};
pub use question::{Question, Seen, Spot, Trouble};
pub use responsible::{Party, Responsible, responsible};
pub use sides::Side;
pub use sources::{Entry, entries, source};
pub use spots::spots;
pub use system::{Group, System};
pub use trace::trace;
pub use way::{Leg, Stand, Way, way};

use quarterturn_home::{Date, Home};

/// The answer to a question, computed from the map of the home, on a day that nobody knows.
#[must_use]
pub fn answer(home: &Home, question: &Question, catalogue: &Catalogue) -> Answer {
    answer_on(home, question, catalogue, None)
}

/// The answer to a question on a day: a valve that nobody has moved for years is trusted less.
#[must_use]
pub fn answer_on(
    home: &Home,
    question: &Question,
    catalogue: &Catalogue,
    today: Option<Date>,
) -> Answer {
    Guide::of(home).answer(question, catalogue, today)
}

/// The answer to the question of a context, in the words of its catalogue.
fn drafted(ctx: &context::Context<'_>) -> Answer {
    let draft = match ctx.question.trouble {
        Trouble::Leak => water::leak(ctx),
        Trouble::WaterFromAbove => water::water_from_above(ctx),
        Trouble::ToiletOverflow => toilet::runs_over(ctx),
        Trouble::NoWater => supply::no_water(ctx),
        Trouble::NoHotWater => hot_water::no_hot_water(ctx),
        Trouble::DrainBacksUp | Trouble::SewageRising => sewer::backs_up(ctx),
        Trouble::PitRising => pit::rises(ctx),
        Trouble::DeadOutlet => power::dead_outlet(ctx),
        Trouble::DeadLight => dark::light(ctx),
        Trouble::DeadArea => dark::area(ctx),
        Trouble::GfciTrips => gfci::trips(ctx),
        Trouble::Shock => live::shock(ctx),
        Trouble::WaterNearPower => live::water_near_power(ctx),
        Trouble::BreakerTrips => power::breaker_trips(ctx),
        Trouble::Sparks => power::sparks(ctx),
        Trouble::CoolingStopped => cooling::stopped(ctx),
        Trouble::WaterAtAirHandler => cooling::water_at_air_handler(ctx),
        Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire | Trouble::WiresDown => {
            leave::leave(ctx)
        }
        Trouble::NotAnswering => by_hand::not_answering(ctx),
    };
    compose::compose(ctx, draft)
}
