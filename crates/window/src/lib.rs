//! The desktop window: asks what is wrong and where, and shows the answer on the plan.
//!
//! Everything is drawn by [`App::ui`] into an [`egui::Ui`], which needs no display; [`run`] puts it on
//! the screen. The panels borrow what they show and return commands, and [`App`] alone applies them.
//! The answers come from `quarterturn_guidance`: nothing is worked out here that the command line
//! could not tell.
//!
//! ```no_run
//! let words = quarterturn_guidance::Catalogue::english();
//! let opening = quarterturn_window::Opening::built_in();
//! let settings = quarterturn_window::Settings::default();
//! quarterturn_window::run(opening, words, settings, |_settings| ()).unwrap();
//! ```

mod after;
mod answer;
mod app;
mod apply;
mod ask;
pub mod builtin;
mod call;
mod caring;
mod chrome;
mod controls;
mod field;
mod figures;
mod fonts;
mod happened;
mod keeping;
mod leading;
mod light;
mod looking;
mod map;
mod marks;
mod matching;
mod more;
mod near;
mod north;
mod opening;
mod pictures;
mod pins;
mod place;
mod plan;
mod plot;
mod practice;
mod printing;
mod run;
mod search;
mod session;
mod settings;
mod sheet;
mod signs;
mod spots;
mod starting;
mod steps;
mod system;
mod tokens;
mod trail;
mod troubles;
mod view;

pub use app::App;
pub use opening::{NotOpened, Opening};
pub use run::{NoDisplay, run, today};
pub use settings::{Settings, Theme};
