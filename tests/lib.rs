//! Tests that cross crates live in `it/`; this library is empty.
