//! Against other libraries and against published graphs.

#![expect(
    clippy::indexing_slicing,
    clippy::cast_possible_truncation,
    reason = "the data is numbered without gaps, and small"
)]

mod fixtures;
mod petgraph_flows;
mod published;
