//! The panel directory, and finding what hangs on a circuit.

use egui::Ui;

use super::MapState;
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

/// The column of the tool.
pub(crate) fn column_ui(_ui: &mut Ui, _view: &View<'_>, _state: &MapState, _out: &mut Vec<Press>) {}

/// A drawing in place of the plan; false if the plan is shown.
pub(crate) fn own_drawing_ui(
    _ui: &mut Ui,
    _view: &View<'_>,
    _state: &MapState,
    _out: &mut Vec<Press>,
) -> bool {
    false
}
