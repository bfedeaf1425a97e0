#![allow(warnings, clippy::all)]
mod black_box;
mod safety;
