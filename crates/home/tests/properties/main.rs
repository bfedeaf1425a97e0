//! What holds for every home, log and edit, drawn at random.

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test")]

mod drawn;
mod edits;
mod log;
mod round_trip;
mod words;
