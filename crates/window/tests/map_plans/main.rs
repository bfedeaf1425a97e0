//! Floors, rooms, doors and plans put on the map at the window, a home begun from nothing, and homes that
//! were not saved or that two windows have; with nothing but what a person sees and presses.

#![expect(clippy::unwrap_used, reason = "a test that cannot go on stops")]

mod homes;
mod person;
mod photo;
mod rooms;
mod story;
