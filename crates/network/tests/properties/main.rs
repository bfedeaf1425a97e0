//! Every search against plain brute force, on random nets small enough to try everything.
//!
//! Each property is checked both ways: nothing missed, and nothing extra.

#![expect(
    clippy::indexing_slicing,
    clippy::cast_possible_truncation,
    clippy::unwrap_used,
    reason = "cases have at most a dozen nodes, numbered by the case itself"
)]

mod case;
mod homes;
mod lines;
mod segments;
mod sets;
mod trees;
