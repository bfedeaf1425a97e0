//! The quiet months: what is due, the list for moving in, who answers for what, copies of the home.

mod copies;
mod due;
mod moving;
mod parties;

use std::sync::Arc;

use egui::{TextEdit, Ui, vec2};
use quarterturn_home::{DeviceState, Home};
use quarterturn_upkeep::{DueList, MoveInItem, due as due_on, move_in_list};

use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, strong};
use crate::tokens::{GAP, TOUCH, size};
use crate::view::View;

/// The parts of the page.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) enum Tab {
    /// What is due.
    #[default]
    Due,
    /// The list for moving in.
    Moving,
    /// Who answers for what.
    Parties,
    /// Copies, and what changed.
    Copies,
}

impl Tab {
    const ALL: [Self; 4] = [Self::Due, Self::Moving, Self::Parties, Self::Copies];

    fn key(self) -> &'static str {
        match self {
            Self::Due => "care-due",
            Self::Moving => "care-moving",
            Self::Parties => "care-parties",
            Self::Copies => "care-copies",
        }
    }
}

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    pub(crate) tab: Tab,
    /// What is due, worked out once for each state of the home.
    due: Option<DueList>,
    items: Vec<MoveInItem>,
    /// The home that these are of, and the language they are in.
    of: Option<(Arc<Home>, &'static str)>,
    /// The job or item that is open.
    open: Option<String>,
    /// Initials, kept from one tick to the next.
    initials: String,
    /// What else is to be written down.
    note: String,
    parties: parties::State,
    copies: copies::State,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Turn to this part.
    Turn(Tab),
    /// Open a job or an item, or close it.
    Open(Option<String>),
    /// Who ticks.
    Initials(String),
    /// What else is to be written down.
    Note(String),
    /// A job is done: all of it, or to one device with what was found there.
    Done(String, Option<(String, DeviceState)>),
    /// An item is done.
    Tick(String),
    /// It is not done after all.
    Untick(String),
    /// Something about parties.
    Parties(parties::Command),
    /// Something about copies.
    Copies(copies::Command),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    match command {
        Command::Turn(tab) => {
            app.care.tab = tab;
            app.care.open = None;
        }
        Command::Open(id) => {
            app.care.open = id;
            app.care.note.clear();
        }
        Command::Initials(initials) => app.care.initials = initials,
        Command::Note(note) => app.care.note = note,
        Command::Done(job, finding) => due::done(app, job, finding),
        Command::Tick(item) => moving::tick(app, item),
        Command::Untick(item) => moving::untick(app, item),
        Command::Parties(command) => parties::apply(app, command),
        Command::Copies(command) => copies::apply(app, ctx, command),
    }
}

/// Works out anew what is due if the home has changed, and takes what threads have to say.
pub(crate) fn poll(app: &mut App) {
    app.care.copies.poll();
    let home = app.history.home();
    let language = app.words.language();
    let is_fresh = app
        .care
        .of
        .as_ref()
        .is_some_and(|(of, spoken)| Arc::ptr_eq(of, home) && *spoken == language);
    if is_fresh {
        return;
    }
    app.care.due = app.today.map(|today| due_on(home, today, &app.words));
    app.care.items =
        app.today.map(|today| move_in_list(home, today, &app.words)).unwrap_or_default();
    app.care.of = Some((Arc::clone(home), language));
}

/// The page.
pub(crate) fn page_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    ui.horizontal_wrapped(|ui| {
        if button(ui, &view.text("back")).clicked() {
            out.push(Press::Leave);
        }
        ui.label(strong(view.text("open-care"), size::HEADING));
        undo_ui(ui, view, out);
    });
    if let Some(message) = view.message {
        ui.add(egui::Label::new(strong(message, size::BODY)).wrap());
    }
    ui.horizontal_wrapped(|ui| {
        for tab in Tab::ALL {
            if chosen_button(ui, &view.text(tab.key()), state.tab == tab).clicked() {
                out.push(Press::Care(Command::Turn(tab)));
            }
        }
    });
    ui.add_space(GAP);
    crate::answer::column_of_text(ui, |ui| match state.tab {
        Tab::Due => due::due_ui(ui, view, state, out),
        Tab::Moving => moving::moving_ui(ui, view, state, out),
        Tab::Parties => parties::parties_ui(ui, view, &state.parties, out),
        Tab::Copies => copies::copies_ui(ui, view, &state.copies, out),
    });
}

/// Takes the last change back, by its name.
fn undo_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Press>) {
    if let Some(undo) = view.undo
        && button(ui, undo).clicked()
    {
        out.push(Press::Undo);
    }
}

/// A labelled box to type into; what was typed, if it changed.
fn typed(ui: &mut Ui, salt: &str, label: &str, text: &str) -> Option<String> {
    let label = ui.label(label);
    let mut typed = text.to_owned();
    let edit = TextEdit::singleline(&mut typed)
        .id_salt(salt)
        .desired_width(f32::INFINITY)
        .min_size(vec2(TOUCH, TOUCH))
        .align(egui::Align2::LEFT_CENTER);
    ui.add(edit).labelled_by(label.id).changed().then_some(typed)
}
