//! An answer or a home on paper, phone and calendar.
//!
//! Sheets are laid out by typst from templates in `assets/sheets`. A sheet is a function of the home,
//! its pictures, the language, the paper and the day: the same order gives the same bytes. Nothing
//! here opens a file, reads a clock or prints, and nothing is decided here: what a sheet tells to do
//! is what `quarterturn_guidance` answers on the screen.
//!
//! ```
//! use std::collections::BTreeMap;
//! use quarterturn_guidance::Catalogue;
//! use quarterturn_papers::{Order, PackExtras, Paper, Sheet, lay_out};
//!
//! let home = quarterturn_home::open("home.ron", r#"Home(format: 1, name: "Hut", units: Si)"#);
//! let home = home.home.expect("the brackets close");
//! let order = Order {
//!     home: &home,
//!     pictures: &BTreeMap::new(),
//!     paper: Paper::of_home(&home),
//!     words: &Catalogue::english(),
//!     today: "2026-11-25".parse().expect("a day"),
//!     extras: &PackExtras::default(),
//! };
//! let printed = lay_out(Sheet::Fridge, &order)?;
//! assert!(printed.page_count() >= 1);
//! assert!(printed.pdf()?.starts_with(b"%PDF"));
//! # Ok::<(), quarterturn_papers::CannotPrint>(())
//! ```

mod boxes;
mod calendar;
mod card;
mod code;
mod drawing;
mod extras;
mod fridge;
mod gather;
mod happened;
mod house;
mod order;
mod pack;
mod panels;
mod paper;
mod phone;
mod pictures;
mod plan;
mod printed;
mod sign;
mod valves;
mod world;

pub use calendar::calendar;
pub use card::cards;
pub use order::{CannotPrint, DueLine, LogLine, MoveInLine, Order, PackExtras, Sheet, Stage};
pub use paper::Paper;
pub use phone::{NoPhonePage, PhonePage, phone_page};
pub use printed::{Picture, Printed, TextBox, lay_out, lay_out_watched};
