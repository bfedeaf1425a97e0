//! What is due in a home, and when; what was done; the things to do once after moving in.
//!
//! Everything is a function of the home and of the day that is handed in: it never looks at a clock,
//! never opens a file, never draws. The words come from the catalogue, the jobs from
//! `assets/upkeep`.
//!
//! ```
//! use quarterturn_guidance::Catalogue;
//! use quarterturn_home::open;
//! use quarterturn_upkeep::due;
//!
//! let text = r#"Home(format: 1, name: "Hut", components: [
//!     (id: "alarm", kind: SmokeAlarm, name: "Smoke alarm in the hall"),
//! ], done: [(job: "alarm-test", on: "2026-05-02")])"#;
//! let home = open("home.ron", text).home.expect("the brackets close");
//! let list = due(&home, "2026-06-05".parse()?, &Catalogue::english());
//! assert_eq!(list.overdue[0].id, "alarm-test");
//! assert_eq!(list.overdue[0].due, "2026-06-02".parse().ok());
//! # Ok::<(), quarterturn_home::NotADate>(())
//! ```

mod due;
mod job;
mod merge;
mod move_in;
mod part;
mod record;
mod repeat;
mod table;

pub use due::{DueList, due};
pub use job::{Every, Upkeep, jobs};
pub use move_in::{MoveInItem, move_in_list};
pub use part::Part;
pub use record::{CannotRecord, record};
pub use repeat::{Repeat, Rule};
pub use table::{Listed, cautions_table, jobs_table, move_in_table};
