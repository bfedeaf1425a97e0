//! Pictures of plans, levels and rooms.

use egui::Ui;
use quarterturn_home::Level;

use super::MapState;
use super::canvas::{Marks, Touch};
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

/// What the plan shows for it.
pub(crate) fn marks(_view: &View<'_>, _state: &MapState, _level: &Level) -> Marks {
    Marks::default()
}

/// What is made of something done on the plan.
pub(crate) fn touched(_view: &View<'_>, _state: &MapState, _touch: &Touch, _out: &mut Vec<Press>) {}

/// A drawing in place of the plan; false if the plan is shown.
pub(crate) fn own_drawing_ui(
    _ui: &mut Ui,
    _view: &View<'_>,
    _state: &MapState,
    _out: &mut Vec<Press>,
) -> bool {
    false
}
