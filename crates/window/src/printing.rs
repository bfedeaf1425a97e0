//! Papers: seen as they will be printed, saved, opened in the system's own viewer.

use egui::Ui;

use crate::app::App;
use crate::ask::Command as Press;
use crate::view::View;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {}

/// Does what was asked for.
pub(crate) fn apply(_app: &mut App, _ctx: &egui::Context, command: Command) {
    match command {}
}

/// The page.
pub(crate) fn page_ui(_ui: &mut Ui, _view: &View<'_>, _state: &State, _out: &mut Vec<Press>) {}
