//! The desktop window: asks what is wrong and where, and shows the answer on the plan.
//!
//! Everything is drawn by [`App::ui`] into an [`egui::Ui`], which needs no display; [`run`] puts it on
//! the screen. The panels borrow what they show and return commands, and [`App`] alone applies them.
//! The answers come from `quarterturn_guidance`: nothing is worked out here that the command line
//! could not tell.
//!
//! ```no_run
//! let words = quarterturn_guidance::Catalogue::english();
//! quarterturn_window::run(quarterturn_window::Opening::built_in(), words).unwrap();
//! ```

mod answer;
mod app;
mod ask;
pub mod builtin;
mod chrome;
mod controls;
mod fonts;
mod matching;
mod more;
mod opening;
mod pictures;
mod pins;
mod place;
mod plan;
mod plot;
mod run;
mod sheet;
mod signs;
mod spots;
mod steps;
mod system;
mod tokens;
mod troubles;
mod view;

pub use app::App;
pub use opening::{NotOpened, Opening};
pub use run::{NoDisplay, run, today};
