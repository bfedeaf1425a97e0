//! Answers checked from outside: random homes written as text in the home file's format, asked by
//! the command line, the JSON held against plain brute force over the same sketch of the home.
//!
//! The brute force is written from the sentences of the home file's documentation. It knows the
//! program's kinds and states only as the words that stand in the file. Where those sentences leave
//! something open, the reading taken stands beside the code as a line that begins with `Reading:`.

pub(crate) mod ask;
mod blame;
mod blockage;
pub(crate) mod dice;
pub(crate) mod draw;
mod flow;
pub(crate) mod house;
pub(crate) mod impact;
mod same_twice;
mod sets;
pub(crate) mod shrink;
