//! The panel directory, a table of it from elsewhere, and finding what hangs on a circuit.

mod directory;
mod finding;
mod importing;

use egui::Ui;

use super::MapState;
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::chosen_button;
use crate::tokens::GAP;
use crate::view::View;

/// The parts of the tool.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) enum Part {
    /// The directory, circuit by circuit.
    #[default]
    Directory,
    /// A table from elsewhere.
    Import,
    /// Finding what hangs where.
    Finding,
}

impl Part {
    const ALL: [Self; 3] = [Self::Directory, Self::Import, Self::Finding];

    fn key(self) -> &'static str {
        match self {
            Self::Directory => "panel-directory",
            Self::Import => "panel-import",
            Self::Finding => "panel-finding",
        }
    }
}

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    part: Part,
    directory: directory::State,
    importing: importing::State,
    finding: finding::State,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Turn to this part.
    Turn(Part),
    /// Something about the directory.
    Directory(directory::Command),
    /// Something about a table.
    Import(importing::Command),
    /// Something about finding circuits.
    Finding(finding::Command),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    match command {
        Command::Turn(part) => app.map.panel.part = part,
        Command::Directory(command) => directory::apply(app, command),
        Command::Import(command) => importing::apply(app, ctx, command),
        Command::Finding(command) => finding::apply(app, command),
    }
}

/// Takes what threads have to say.
pub(super) fn poll(app: &mut App) {
    importing::poll(app);
}

/// The column of the tool.
pub(crate) fn column_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let state = &state.panel;
    let mut say = |command: Command| out.push(Press::Map(super::MapCommand::Panel(command)));
    ui.horizontal_wrapped(|ui| {
        for part in Part::ALL {
            if chosen_button(ui, &view.text(part.key()), state.part == part).clicked() {
                say(Command::Turn(part));
            }
        }
    });
    ui.add_space(GAP);
    match state.part {
        Part::Directory => directory::directory_ui(ui, view, &state.directory, &mut say),
        Part::Import => importing::importing_ui(ui, view, &state.importing, &mut say),
        Part::Finding => finding::finding_ui(ui, view, &state.finding, &mut say),
    }
}

/// A drawing in place of the plan; false if the plan is shown.
pub(crate) fn own_drawing_ui(
    _ui: &mut Ui,
    _view: &View<'_>,
    _state: &MapState,
    _out: &mut Vec<Press>,
) -> bool {
    false
}
