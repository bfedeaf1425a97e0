//! Against other libraries and against published graphs.

#![expect(
    clippy::indexing_slicing,
    clippy::cast_possible_truncation,
    clippy::unwrap_used,
    reason = "the data is numbered without gaps, and small"
)]

mod fixtures;
mod petgraph_flows;
mod published;
