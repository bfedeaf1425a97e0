//! Every sheet of every home, in both languages and on both papers, is laid out whole.
//!
//! - `fits`: no text leaves its page or its box, and none lies over another.
//! - `homes`: the examples, and homes that are hard to lay out.
//! - `same`: the same order gives the same bytes, and the PDF is accepted as PDF/UA-1.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::disallowed_methods,
    reason = "tests: what goes wrong in them should stop them, and they read the examples"
)]

mod fits;
mod homes;
mod same;
