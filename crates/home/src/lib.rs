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

mod attached;
mod check;
mod compass;
mod copy;
mod date;
mod decode;
mod depends;
mod difference;
mod drill;
mod edit;
mod fit;
mod history;
mod kept;
mod kind;
mod layout;
mod learnt;
mod listed;
mod log;
mod mirror;
mod model;
mod nearest;
mod open;
mod operates;
mod parties;
mod problem;
mod read;
mod remove;
mod report;
mod save;
mod scan;
mod trade_names;
mod words;

pub use attached::{With, attached};
pub use check::Fault;
pub use compass::{CompassPoint, bearing_deg, side_of, side_of_house};
pub use copy::{copy_for_next_lot, for_next_owner, is_person};
pub use date::{Date, NotADate};
pub use depends::{depends_on, removal};
pub use difference::{Change, FieldChange, Part, Value, What, changes};
pub use drill::Drill;
pub use edit::{CannotEdit, Edit};
pub use history::History;
pub use kept::{Kept, KeptPiece, KeptPlace};
pub use kind::{Kind, Net};
pub use learnt::{Learnt, Lesson};
pub use log::{DoneStep, LOG_FORMAT, Log, LogEntry, OpenedLog, open_log, save_log};
pub use mirror::mirrored;
pub use model::{
    Component, Connection, Duct, FORMAT, Home, Level, Material, Medium, Passage, Plan, Space, Units,
};
pub use nearest::{nearest, nearest_few};
pub use open::open;
pub use operates::{Closes, DeviceState, Handle, OperableBy, Operates, Position};
pub use parties::{Contact, Document, Done, Job, MovedIn, Role, Warranty, WarrantyKind};
pub use problem::{Opened, Problem, Severity};
pub use save::save;
pub use words::Words;
