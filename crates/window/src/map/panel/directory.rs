//! The directory of a panel: its state, and what is done with it.
//!
//! It is drawn in `face.rs` and in `column.rs`; what is typed becomes edits in `cells.rs`.

use std::collections::BTreeMap;

use quarterturn_home::{Component, Connection, Edit, Home, depends_on};

use super::cells::{Cell, Written, write};
use super::feeds;
use super::numbers::MOST;
use super::positions::Board;
use super::standing::panels;
use crate::app::App;
use crate::map::MapState;

/// Positions that come or go with one press: boxes differ by so many, or by a few times so many
/// (common practice).
const STEP: u32 = 6;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    /// The panel that is shown; `None` for the one that is picked on the map, or the first.
    panel: Option<String>,
    /// How many positions of each panel are shown, where someone has said so.
    counts: BTreeMap<String, u32>,
    /// What is being typed, or was and makes no sense: by panel, row and cell.
    drafts: BTreeMap<(String, String, Cell), Draft>,
    /// The row that is picked.
    pub(super) picked: Option<String>,
    /// The cell that the keyboard goes to next.
    pub(super) focus: Option<(String, Cell)>,
    /// Breakers that nothing is left of, until it is said whether they go.
    asking: Vec<Asking>,
    /// Words by which what is fed is looked for.
    pub(super) search: String,
    /// Why the last line was not drawn.
    pub(super) refused: Option<String>,
}

/// A text that is being typed.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Draft {
    pub(super) text: String,
    /// Why it makes no sense.
    pub(super) why: Option<String>,
    /// True if the breaker is left without anything by it.
    is_emptied: bool,
}

/// A breaker that is perhaps to be taken out.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Asking {
    panel: String,
    key: String,
    pub(super) id: String,
    /// What goes with it, in words.
    pub(super) goes: Vec<String>,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Show this panel.
    Panel(String),
    /// Pick this row.
    Pick(String),
    /// This was typed into a cell.
    Type(String, Cell, String),
    /// A cell was left.
    Done(String, Cell),
    /// Go on from a cell to the row below, or above.
    Next(String, Cell, bool),
    /// The keyboard has come to where it was sent.
    Come,
    /// Show more positions.
    More,
    /// Show fewer.
    Fewer,
    /// Take the breaker of a row out.
    TakeOut(String),
    /// Keep it.
    Keep(String),
    /// Words to find by what is fed.
    Search(String),
    /// The picked breaker feeds this.
    Feed(String),
    /// It does not.
    TakeOff(Box<Connection>),
}

impl State {
    /// The panel that is shown.
    pub(super) fn panel<'h>(&self, home: &'h Home, picked: Option<&str>) -> Option<&'h Component> {
        let of = |id: &str| {
            let component = home.component(id)?;
            let panel = component.panel.as_deref().unwrap_or(id);
            panels(home).find(|known| known.id == panel)
        };
        self.panel
            .as_deref()
            .and_then(of)
            .or_else(|| picked.and_then(of))
            .or_else(|| panels(home).next())
    }

    /// The panel with its positions.
    pub(super) fn board<'h>(&self, home: &'h Home, picked: Option<&str>) -> Option<Board<'h>> {
        let panel = self.panel(home, picked)?;
        Some(Board::of(home, panel, self.counts.get(&panel.id).copied()))
    }

    /// What is being typed into a cell.
    pub(super) fn draft(&self, panel: &str, key: &str, cell: Cell) -> Option<&Draft> {
        self.drafts.get(&(panel.to_owned(), key.to_owned(), cell))
    }

    /// Whether the breaker of a row is to go, and what goes with it.
    pub(super) fn asking(&self, panel: &str, key: &str) -> Option<&Asking> {
        self.asking.iter().find(|asking| asking.is_of(panel, key))
    }

    /// The row that is picked, and the breaker in it.
    pub(super) fn breaker<'h>(&self, board: &Board<'h>) -> Option<&'h Component> {
        board.row(self.picked.as_deref()?)?.breaker()
    }
}

impl Asking {
    fn is_of(&self, panel: &str, key: &str) -> bool {
        self.panel == panel && self.key == key
    }
}

/// The panel of the map's state, with its positions.
pub(super) fn shown<'h>(home: &'h Home, map: &MapState) -> Option<Board<'h>> {
    map.panel.directory.board(home, map.selected.as_deref())
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    let home = app.history.home().clone();
    let board = shown(&home, &app.map);
    let state = &mut app.map.panel.directory;
    match command {
        Command::Panel(id) => {
            state.panel = Some(id);
            state.picked = None;
            state.refused = None;
        }
        Command::Pick(key) => {
            if state.picked.as_ref() != Some(&key) {
                state.picked = Some(key);
                state.refused = None;
                state.search.clear();
            }
        }
        Command::Come => state.focus = None,
        Command::Search(words) => state.search = words,
        Command::TakeOff(line) => {
            app.edit(feeds::take_off(&home, &line));
        }
        Command::Type(..)
        | Command::Done(..)
        | Command::Next(..)
        | Command::More
        | Command::Fewer
        | Command::Feed(_)
        | Command::TakeOut(_)
        | Command::Keep(_) => {
            if let Some(board) = board {
                within(app, ctx, &home, &board, command);
            }
        }
    }
}

/// Does what needs the panel.
fn within(app: &mut App, ctx: &egui::Context, home: &Home, board: &Board<'_>, command: Command) {
    let panel = board.panel.id.clone();
    let state = &mut app.map.panel.directory;
    match command {
        Command::More => {
            state.counts.insert(panel, (board.count + STEP).min(MOST));
        }
        Command::Fewer => {
            state.counts.insert(panel, board.count.saturating_sub(STEP).max(board.least).max(1));
        }
        Command::Next(key, cell, is_below) => {
            let beside = board.beside(&key, is_below).map_or(key, |row| row.key.clone());
            state.focus = Some((beside, cell));
            ctx.request_repaint();
        }
        Command::Feed(thing) => {
            let Some(breaker) = state.breaker(board) else { return };
            match feeds::feed(home, &app.words, &breaker.id, &thing) {
                Ok(edit) => {
                    state.refused = None;
                    app.edit(edit);
                }
                Err(why) => state.refused = Some(why),
            }
        }
        Command::Keep(key) => {
            state.asking.retain(|asking| !asking.is_of(&panel, &key));
            state.drafts.retain(|(p, k, _), draft| *p != panel || *k != key || !draft.is_emptied);
        }
        Command::TakeOut(key) => {
            let asked = state.asking(&panel, &key).map(|asking| asking.id.clone());
            let Some(id) = asked else { return };
            if app.edit(Edit::RemoveComponent { id }) {
                let state = &mut app.map.panel.directory;
                state.asking.retain(|asking| !asking.is_of(&panel, &key));
                state.drafts.retain(|(p, k, _), _| *p != panel || *k != key);
                state.focus = Some((key, Cell::Serves));
                ctx.request_repaint();
            }
        }
        Command::Type(key, cell, text) => typed(app, home, board, key, cell, text),
        Command::Done(key, cell) => done(app, home, board, &key, cell),
        _ => {}
    }
}

/// Takes what was typed. A number is taken once it is finished: half of it may be another's.
fn typed(app: &mut App, home: &Home, board: &Board<'_>, key: String, cell: Cell, text: String) {
    let Some(row) = board.row(&key) else { return };
    let panel = board.panel.id.clone();
    // The panel keeps its size while it fills.
    app.map.panel.directory.counts.entry(panel.clone()).or_insert(board.count);
    let mut draft = Draft { text, why: None, is_emptied: false };
    if cell != Cell::Number {
        match write(home, &app.words, board, row, cell, &draft.text) {
            Written::Edit(edit) => {
                let gesture = format!("panel {panel} {key} {cell:?}");
                if !app.edit_within(&gesture, edit) {
                    draft.why = app.message.clone();
                }
            }
            Written::Nothing => {}
            Written::Emptied => draft.is_emptied = true,
            Written::Bad(why) => draft.why = Some(why),
        }
    }
    let state = &mut app.map.panel.directory;
    state.asking.retain(|asking| !asking.is_of(&panel, &key));
    state.drafts.insert((panel, key, cell), draft);
}

/// A cell was left: what made sense is on the map, the rest stays as it was typed.
fn done(app: &mut App, home: &Home, board: &Board<'_>, key: &str, cell: Cell) {
    app.history.end_gesture();
    let at = (board.panel.id.clone(), key.to_owned(), cell);
    let Some(draft) = app.map.panel.directory.drafts.get(&at).cloned() else { return };
    let Some(row) = board.row(key) else { return };
    if cell == Cell::Number {
        number(app, home, board, row.breaker(), at, &draft.text);
        return;
    }
    let state = &mut app.map.panel.directory;
    match row.breaker().filter(|_| draft.is_emptied) {
        Some(breaker) => {
            let changes = depends_on(home, &breaker.id);
            let goes = changes.iter().flat_map(|change| app.words.change(change)).collect();
            let (panel, key) = (at.0, key.to_owned());
            state.asking.retain(|asking| !asking.is_of(&panel, &key));
            state.asking.push(Asking { panel, key, id: breaker.id.clone(), goes });
        }
        None if draft.why.is_some() => {}
        None => {
            state.drafts.remove(&at);
        }
    }
}

/// Gives a breaker another number, and follows it to where it stands then.
fn number(
    app: &mut App,
    home: &Home,
    board: &Board<'_>,
    breaker: Option<&Component>,
    at: (String, String, Cell),
    text: &str,
) {
    let (Some(breaker), Some(row)) = (breaker, board.row(&at.1)) else { return };
    let why = match write(home, &app.words, board, row, Cell::Number, text) {
        Written::Edit(edit) => (!app.edit(edit)).then(|| app.message.clone().unwrap_or_default()),
        Written::Nothing | Written::Emptied => None,
        Written::Bad(why) => Some(why),
    };
    let state = &mut app.map.panel.directory;
    if let Some(draft) = state.drafts.get_mut(&at)
        && why.is_some()
    {
        draft.why = why;
        return;
    }
    state.drafts.remove(&at);
    let home = app.history.home().clone();
    if let Some(board) = shown(&home, &app.map)
        && let Some(row) = board.row_of(&breaker.id)
    {
        app.map.panel.directory.picked = Some(row.key.clone());
    }
}
