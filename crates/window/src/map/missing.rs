//! What is still missing on the map, most protective first.

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
