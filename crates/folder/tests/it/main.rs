//! A home on disk, from outside.
//!
//! - `child`: a process of its own, which the other tests start and kill.
//! - `killed`: killed at any moment, no home is lost.
//! - `places`: links, folders that go away, places where nothing may be written.
//! - `zips`: zips that are made to do harm, cut off or changed anywhere.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "tests: what goes wrong in them should stop them"
)]

mod child;
mod killed;
mod places;
mod zips;
