//! What a house is, how its file is read and written, and how it is edited.
//!
//! It never reads or writes a file itself (text comes in and goes out), never computes an answer, and
//! holds no words for people: a [`Problem`] names a text of the catalogue.
//!
//! ```
//! use quarterturn_home::{open, save};
//!
//! let opened = open("home.ron", r#"Home(format: 1, name: "Hut", units: Us)"#);
//! let home = opened.home.expect("the brackets close");
//! assert_eq!(home.name, "Hut");
//! // It has no components yet, which is worth a warning.
//! assert_eq!(opened.problems[0].key, "no-components");
//! assert!(save(&home, &opened.kept).starts_with("#![enable(implicit_some)]\nHome(\n"));
//! ```

mod check;
mod date;
mod decode;
mod edit;
mod kept;
mod kind;
mod layout;
mod model;
mod nearest;
mod open;
mod operates;
mod parties;
mod problem;
mod read;
mod report;
mod save;
mod scan;
mod trade_names;

pub use date::{Date, NotADate};
pub use edit::{CannotEdit, Edit, History};
pub use kept::{Kept, KeptPiece, KeptPlace};
pub use kind::{Kind, Net};
pub use model::{Component, Connection, FORMAT, Home, Level, Material, Medium, Plan, Space, Units};
pub use nearest::{nearest, nearest_few};
pub use open::open;
pub use operates::{Closes, DeviceState, Handle, OperableBy, Operates, Position};
pub use parties::{Contact, Document, Job, Role, Warranty};
pub use problem::{Opened, Problem, Severity};
pub use save::save;
