//! Small homes drawn in text, with the trouble marked: which sets cut it off.
//!
//! Each is a case in which walking up to the nearest valve, breaker or stop goes wrong.

mod drawing;
mod power;
mod supplies;
mod water;
