//! The panel directory, a table of it from elsewhere, and finding what hangs on a circuit.

mod cells;
mod column;
mod directory;
mod face;
mod feeds;
mod finding;
mod importing;
mod numbers;
mod positions;
mod round;
mod standing;

pub(super) use standing::circuits;

use egui::Ui;
use quarterturn_mapping::Switched;

use super::MapState;
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::chosen_button;
use crate::tokens::{GAP, ONE_COLUMN};
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
    /// Turn to finding what hangs where, of these things; of all if there are none.
    Find(Switched, Vec<String>),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    match command {
        Command::Turn(part) => app.map.panel.part = part,
        Command::Directory(command) => directory::apply(app, ctx, command),
        Command::Import(command) => importing::apply(app, ctx, command),
        Command::Finding(command) => finding::apply(app, command),
        Command::Find(switched, things) => {
            app.map.panel.part = Part::Finding;
            finding::open(app, switched, &things);
        }
    }
}

/// Takes what threads have to say.
pub(super) fn poll(app: &mut App) {
    importing::poll(app);
}

/// The column of the tool.
pub(crate) fn column_ui(ui: &mut Ui, view: &View<'_>, map: &MapState, out: &mut Vec<Press>) {
    let state = &map.panel;
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
        Part::Directory => directory_ui(ui, view, map, &mut say),
        Part::Import => importing::importing_ui(ui, view, &state.importing, &mut say),
        Part::Finding => finding::finding_ui(ui, view, &state.finding, &mut say),
    }
}

fn directory_ui(ui: &mut Ui, view: &View<'_>, map: &MapState, say: &mut dyn FnMut(Command)) {
    let Some(board) = directory::shown(view.home, map) else {
        ui.add(egui::Label::new(view.text("panel-none")).wrap());
        return;
    };
    let state = &map.panel.directory;
    let mut say = |command| say(Command::Directory(command));
    column::choice_ui(ui, view, &board, &mut say);
    // In one column what is picked stands below, so that no row moves while it is typed in.
    if is_one_column(ui) {
        face::face_ui(ui, view, state, &board, &mut say);
    }
    column::picked_ui(ui, view, state, &board, &mut say);
}

/// A drawing in place of the plan; false if the plan is shown.
pub(crate) fn own_drawing_ui(
    ui: &mut Ui,
    view: &View<'_>,
    map: &MapState,
    out: &mut Vec<Press>,
) -> bool {
    let Some(board) = directory::shown(view.home, map) else { return false };
    if map.panel.part != Part::Directory {
        return false;
    }
    let mut say = |command| {
        let command = Command::Directory(command);
        out.push(Press::Map(super::MapCommand::Panel(command)));
    };
    if !is_one_column(ui) {
        face::scrolled_ui(ui, view, &map.panel.directory, &board, &mut say);
    }
    true
}

/// True if the page is one column, which scrolls as a whole.
fn is_one_column(ui: &Ui) -> bool {
    ui.ctx().content_rect().width() < ONE_COLUMN
}
