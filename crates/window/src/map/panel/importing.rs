//! A table of circuits from elsewhere: pasted, or a file of separated text or a spreadsheet.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, channel};

use egui::{ComboBox, TextEdit, Ui, vec2};
use quarterturn_guidance::{count, fill};
use quarterturn_home::Edit;
use quarterturn_mapping::{
    Column, Guess, Import, ImportTo, RowNote, Table, TableError, guess, import, read_table,
    read_text,
};

use super::Command as Panel;
use crate::app::App;
use crate::controls::{button, card, main_button, section, soft, strong};
use crate::field::field;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Rows that are told of each sort; the rest is counted.
const MOST: usize = 12;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    path: String,
    pasted: String,
    table: Option<Table>,
    guess: Option<Guess>,
    import: Option<Import>,
    said: Option<String>,
    reading: Option<Receiver<Result<Table, Refused>>>,
}

/// Why there is no table.
#[derive(Debug)]
enum Refused {
    Table(TableError),
    File(String),
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// The path of the file.
    Path(String),
    /// Read it.
    Read,
    /// What was pasted.
    Pasted(String),
    /// Read that.
    ReadPasted,
    /// A column holds this.
    Column(usize, Column),
    /// Put it on the map.
    Confirm,
    /// Leave it.
    Leave,
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    let state = &mut app.map.panel.importing;
    match command {
        Command::Path(path) => state.path = path,
        Command::Pasted(text) => state.pasted = text,
        Command::Read => {
            let path = PathBuf::from(state.path.trim());
            let (send, receive) = channel();
            let ctx = ctx.clone();
            std::thread::spawn(move || {
                let read = read_file(&path);
                // Nobody waits any more if it was left.
                if send.send(read).is_ok() {
                    ctx.request_repaint();
                }
            });
            state.said = None;
            state.reading = Some(receive);
        }
        Command::ReadPasted => {
            let read = read_text(&state.pasted).map_err(Refused::Table);
            take(app, read);
        }
        Command::Column(at, column) => {
            if let Some(guess) = &mut state.guess
                && let Some(held) = guess.columns.get_mut(at)
            {
                *held = column;
            }
            work_out(app);
        }
        Command::Confirm => {
            let edits = state.import.as_ref().map(Import::edits).unwrap_or_default();
            if !edits.is_empty() && app.edit(Edit::All(edits)) {
                let said = app.words.text("window-panel-imported");
                app.map.panel.importing = State { said: Some(said), ..State::default() };
            }
        }
        Command::Leave => *state = State::default(),
    }
}

/// Largest file read, in bytes.
const LARGEST: u64 = 64 << 20;

fn read_file(path: &std::path::Path) -> Result<Table, Refused> {
    use std::io::Read as _;
    let mut bytes = Vec::new();
    std::fs::File::open(path)
        .and_then(|file| file.take(LARGEST).read_to_end(&mut bytes))
        .map_err(|error| Refused::File(error.to_string()))?;
    read_table(&bytes).map_err(Refused::Table)
}

/// Takes what was read.
pub(super) fn poll(app: &mut App) {
    let arrived = app.map.panel.importing.reading.as_ref().and_then(|r| r.try_recv().ok());
    if let Some(read) = arrived {
        app.map.panel.importing.reading = None;
        take(app, read);
    }
}

fn take(app: &mut App, read: Result<Table, Refused>) {
    let words = &app.words;
    let state = &mut app.map.panel.importing;
    match read {
        Ok(table) => {
            state.guess = Some(guess(&table));
            state.table = Some(table);
            state.said = None;
            work_out(app);
        }
        Err(Refused::Table(error)) => {
            let fills = [
                fill("cause", &error.cause().text(words)),
                fill("remedy", &error.remedy().text(words)),
            ];
            state.said = Some(words.fill("window-panel-refused", &fills));
        }
        Err(Refused::File(why)) => {
            let fills = [fill("path", state.path.trim()), fill("why", &why)];
            state.said = Some(words.fill("window-unread", &fills));
        }
    }
}

/// What the table becomes, as its columns are understood now.
fn work_out(app: &mut App) {
    let home = app.history.home();
    let state = &app.map.panel.importing;
    let panel = home.components.iter().find(|c| c.kind == quarterturn_home::Kind::Panel);
    let into = ImportTo { panel: panel.map(|panel| panel.id.clone()), space: None };
    let worked = match (&state.table, &state.guess) {
        (Some(table), Some(guess)) if guess.is_enough() => {
            Some(import(home, table, guess, &into, &app.words))
        }
        _ => None,
    };
    app.map.panel.importing.import = worked;
}

/// The part of the tool.
pub(super) fn importing_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    say: &mut dyn FnMut(Panel),
) {
    let mut say = |command: Command| say(Panel::Import(command));
    if let Some(said) = &state.said {
        ui.add(egui::Label::new(strong(said.as_str(), size::BODY)).wrap());
    }
    match (&state.table, &state.guess) {
        (Some(table), Some(guess)) => table_ui(ui, view, state, table, guess, &mut say),
        _ => source_ui(ui, view, state, &mut say),
    }
}

fn source_ui(ui: &mut Ui, view: &View<'_>, state: &State, say: &mut dyn FnMut(Command)) {
    ui.add(egui::Label::new(soft(ui, view.text("panel-import-hint"))).wrap());
    let path = field(ui, &view.text("panel-path"), "", &state.path);
    if let Some(path) = path.text {
        say(Command::Path(path));
    }
    let is_typed = !state.path.trim().is_empty();
    ui.add_enabled_ui(is_typed && state.reading.is_none(), |ui| {
        if main_button(ui, &view.text("panel-read")).clicked() || (path.is_entered && is_typed) {
            say(Command::Read);
        }
    });
    let label = ui.label(soft(ui, view.text("panel-paste")));
    let mut pasted = state.pasted.clone();
    let edit = TextEdit::multiline(&mut pasted)
        .id_salt("panel-paste")
        .desired_rows(5)
        .desired_width(f32::INFINITY)
        .min_size(vec2(0.0, 44.0));
    if ui.add(edit).labelled_by(label.id).changed() {
        say(Command::Pasted(pasted));
    }
    ui.add_enabled_ui(!state.pasted.trim().is_empty(), |ui| {
        if button(ui, &view.text("panel-read-pasted")).clicked() {
            say(Command::ReadPasted);
        }
    });
}

fn table_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    table: &Table,
    guess: &Guess,
    say: &mut dyn FnMut(Command),
) {
    section(ui, &view.text("panel-columns"));
    let rows = table.sheets.get(guess.sheet).map_or(&[][..], |sheet| &sheet.rows);
    let heading = guess.heading.and_then(|row| rows.get(row));
    let first = rows.get(guess.heading.map_or(0, |row| row + 1));
    for (at, column) in guess.columns.iter().enumerate() {
        let cell = |row: Option<&quarterturn_mapping::Row>| {
            row.and_then(|row| row.cells.get(at)).map(|cell| cell.text.clone()).unwrap_or_default()
        };
        let fills = [fill("heading", &cell(heading)), fill("example", &cell(first))];
        let label = view.fill("panel-column", &fills);
        ui.add(egui::Label::new(label.as_str()).wrap());
        let combo = ComboBox::from_id_salt(("panel-column", at))
            .selected_text(column.said().text(view.words))
            .width(260.0);
        let combo = combo.show_ui(ui, |ui| {
            for other in Column::ALL {
                let text = other.said().text(view.words);
                if ui.selectable_label(other == column, text).clicked() {
                    say(Command::Column(at, *other));
                }
            }
        });
        combo.response.accessible_name(label);
    }
    match &state.import {
        Some(import) => import_ui(ui, view, import, say),
        None => {
            ui.add(egui::Label::new(strong(view.text("panel-which-circuit"), size::BODY)).wrap());
        }
    }
    if button(ui, &view.text("cancel")).clicked() {
        say(Command::Leave);
    }
}

/// What it becomes, and every row that is not used, with why.
fn import_ui(ui: &mut Ui, view: &View<'_>, import: &Import, say: &mut dyn FnMut(Command)) {
    let n = |n: usize| u32::try_from(n).map_or(f64::INFINITY, f64::from);
    let fills = [
        count("circuits", n(import.circuits.len())),
        count("things", n(import.components.len())),
        count("lines", n(import.connections.len())),
    ];
    section(ui, &view.text("panel-becomes"));
    ui.add(egui::Label::new(view.fill("panel-becomes-of", &fills)).wrap());
    for (key, notes) in [
        ("panel-unknown", &import.unknown),
        ("panel-left", &import.left),
        ("panel-doubts", &import.doubts),
    ] {
        notes_ui(ui, view, key, notes);
    }
    ui.add_space(GAP);
    if main_button(ui, &view.text("panel-confirm")).clicked() {
        say(Command::Confirm);
    }
}

fn notes_ui(ui: &mut Ui, view: &View<'_>, key: &str, notes: &[RowNote]) {
    if notes.is_empty() {
        return;
    }
    let n = u32::try_from(notes.len()).map_or(f64::INFINITY, f64::from);
    ui.add(egui::Label::new(strong(view.fill(key, &[count("n", n)]), size::BODY)).wrap());
    card(ui, Palette::of(ui).edge_stroke(), |ui| {
        for note in notes.iter().take(MOST) {
            let fills = [
                fill("row", &note.row.to_string()),
                fill("text", &note.text),
                fill("why", &note.why.text(view.words)),
            ];
            ui.add(egui::Label::new(view.fill("panel-row", &fills)).wrap());
        }
        let more = notes.len().saturating_sub(MOST);
        if more > 0 {
            let more = u32::try_from(more).map_or(f64::INFINITY, f64::from);
            ui.label(view.fill("panel-more-rows", &[count("n", more)]));
        }
    });
}
