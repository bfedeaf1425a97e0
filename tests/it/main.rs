//! Tests that cross crates.
//!
//! - `black_box`: answers of the command line against brute force over random home files.
//! - `cli`: the command line: exit codes, JSON, bad input.
//! - `homes`: the example homes open, and save back the same.
//! - `layers`: which crate may use which, and what the lower ones never do.
//! - `mapping`: panel tables from open data and spreadsheets; a home mapped from nothing.
//! - `network`: each trap of isolation, drawn as text and asked through a home.
//! - `papers`: what is on paper is what is on the screen; the papers as the command line writes them.
//! - `phone`: the phone page: it shows what the program answers, and nothing typed becomes code.
//! - `published`: the estimates against published values, one file a source.
//! - `safety`: the safety rules of `DEVELOPERS.md`, over random homes and questions.
//! - `stories`: a trouble told from the first tap to the last step, worked out by hand.
//! - `upkeep`: who is called first, what is due, what a finding changes, the calendar and the cards.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::cast_precision_loss,
    reason = "tests: what goes wrong in them should stop them"
)]

mod black_box;
mod cli;
mod homes;
mod layers;
mod mapping;
mod network;
mod papers;
mod phone;
mod published;
mod safety;
mod stories;
mod upkeep;
