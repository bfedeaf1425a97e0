//! Putting a home on its map: panel tables from open data and from spreadsheets, a home mapped from
//! nothing.

mod duplex;
mod from_nothing;
mod spreadsheets;
