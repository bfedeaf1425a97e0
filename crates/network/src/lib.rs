//! A house as graphs: where things come from, what cuts them off, what goes off with it, where a
//! drain can be blocked, and what may be the cause of dead power.
//!
//! Plain ids in, plain ids and numbers out. This crate reads no files and holds no text for people.
//! The algorithms work on a [`Network`] of plain numbers; [`HomeNet`] derives one from a home, for
//! each question anew, so that nothing can be out of date.
//!
//! Two notions are never mixed: **reach** (can anything arrive? ignores what a node needs) decides
//! isolation; **alive** (has it all that it needs?) decides impact.

#![expect(
    clippy::indexing_slicing,
    reason = "nodes are dense numbers, given out by the builder; checked access would hide a mistake"
)]

mod alive;
mod check;
mod cut;
mod defence;
mod derive;
mod dominators;
mod drains;
mod dry;
mod graph;
mod impact;
mod isolate;
pub mod plan;
mod segments;
mod shadows;
mod suspects;

pub use alive::{Needs, Supply};
pub use check::{Finding, check};
pub use cut::{Cut, Cutter};
pub use defence::{NO_FEED, lines_of_defence};
pub use derive::{HomeNet, Places, drain, sprinkler_controls};
pub use dominators::{Dominators, ROOT, UNREACHED};
pub use drains::{Cap, Drain, Piece, Place, Rodding, Suspected};
pub use graph::{Builder, Lists, Network, Node, as_node};
pub use impact::{Arriving, Impact, Lost};
pub use isolate::{Isolation, Isolator, Set, Terms};
pub use segments::segments;
pub use suspects::{Check, Diagnoses, Diagnosis, Faults, Observed, Priors, blame, next_check};
