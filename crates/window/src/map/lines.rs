//! What feeds what: lines drawn from pin to pin or chosen by name, and those that are probably there.
//!
//! A line that cannot be is not drawn, and why is told. A proposal is only that until it is accepted.

use std::sync::Arc;

use egui::{ComboBox, Ui};
use quarterturn_guidance::{count, fill};
use quarterturn_home::{Connection, Edit, Home, Level, Medium};
use quarterturn_mapping::schematic::{Schematic, Sort};
use quarterturn_mapping::{
    Lack, Proposal, accept, accept_all, may_connect, media_between, medium_key, proposals,
};

use super::canvas::{MarkedLine, Marks, Touch};
use super::{MapCommand, MapState, schematic};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, card, chosen_button, main_button, section, soft, strong};
use crate::field::field;
use crate::matching::matches;
use crate::place;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// As likely as not.
const LIKELY: f64 = 0.5;
/// Most names that a list shows at once.
const MOST: usize = 40;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    pub(super) from: Option<String>,
    to: Option<String>,
    /// What the line is to carry; `None` for the most likely.
    carries: Option<Medium>,
    /// Words by which the ends are looked for.
    search: String,
    /// What is probably there, worked out once for each state of the home.
    pub(super) proposed: Vec<Proposal>,
    of: Option<Arc<Home>>,
    /// The riser or one-line that is shown, laid out once for each state of the home.
    pub(super) schematic: Option<Schematic>,
    laid_out: Option<Sort>,
    /// Why the last line was not drawn.
    refused: Option<String>,
    /// The line whose particulars are being typed: size and length.
    changed: Option<(Box<Connection>, String, String)>,
    /// The riser or one-line in place of the plan.
    pub(super) drawing: Option<Sort>,
    /// How large that is, in steps; 0 for as large as it is made.
    pub(super) nearness: i32,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// This lacks a line that carries that: the other end is to be chosen.
    Begin(String, Lack, Medium),
    /// The line comes from here.
    From(Option<String>),
    /// The line goes here.
    To(Option<String>),
    /// It carries this.
    Carries(Medium),
    /// Words to find an end by.
    Search(String),
    /// Draw it.
    Draw,
    /// Draw the likeliest line from one to another.
    Join(String, String),
    /// Take a line out.
    Remove(Box<Connection>),
    /// Type a line's size and length.
    Change(Option<(Box<Connection>, String, String)>),
    /// Keep them as they are typed.
    Keep,
    /// Draw what is proposed for a component.
    Accept(String),
    /// Draw all that is proposed and at least as likely as not.
    AcceptAll,
    /// Show a riser or one-line, or the plan.
    Show(Option<Sort>),
    /// Make the riser or one-line larger or smaller.
    Nearness(i32),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, _ctx: &egui::Context, command: Command) {
    match command {
        Command::From(id) => {
            let lines = &mut app.map.lines;
            choose(&mut lines.from, id, &mut lines.carries);
        }
        Command::To(id) => {
            let lines = &mut app.map.lines;
            choose(&mut lines.to, id, &mut lines.carries);
        }
        Command::Begin(id, lack, carries) => {
            let (from, to) = match lack {
                Lack::Feed => (None, Some(id)),
                Lack::Drain => (Some(id), None),
            };
            let lines = &mut app.map.lines;
            (lines.from, lines.to, lines.carries) = (from, to, Some(carries));
            (lines.refused, lines.drawing) = (None, None);
        }
        Command::Carries(medium) => app.map.lines.carries = Some(medium),
        Command::Search(words) => app.map.lines.search = words,
        Command::Draw => {
            let lines = &app.map.lines;
            if let (Some(from), Some(to)) = (lines.from.clone(), lines.to.clone()) {
                let carries = lines.carries;
                draw(app, &from, &to, carries);
            }
        }
        Command::Join(from, to) => {
            let wanted = wanted_medium(&app.map.lines, &from, &to);
            app.map.lines.from = Some(from.clone());
            app.map.lines.to = Some(to.clone());
            let carries = wanted.or_else(|| shown_medium(app, &from, &to));
            draw(app, &from, &to, carries);
        }
        Command::Show(drawing) => app.map.lines.drawing = drawing,
        Command::Nearness(steps) => app.map.lines.nearness = steps,
        Command::Remove(line) => {
            app.edit(Edit::Disconnect(line));
        }
        Command::Change(changed) => app.map.lines.changed = changed,
        Command::Keep => keep(app),
        Command::Accept(of) => {
            let home = app.history.home();
            let found = app.map.lines.proposed.iter().find(|proposal| proposal.of == of);
            if let Some(edit) = found.and_then(|proposal| accept(home, proposal)) {
                app.edit(edit);
            }
        }
        Command::AcceptAll => {
            let home = app.history.home();
            let edits = accept_all(home, &app.map.lines.proposed, None, LIKELY);
            if !edits.is_empty() {
                app.edit(Edit::Named { key: "edit-proposed", fills: Vec::new(), edits });
            }
        }
    }
}

/// Works out anew what is probably there if the home has changed.
pub(super) fn poll(app: &mut App) {
    let home = app.history.home();
    if app.map.lines.of.as_ref().is_none_or(|of| !Arc::ptr_eq(of, home)) {
        app.map.lines.proposed = proposals(home);
        app.map.lines.of = Some(Arc::clone(home));
        app.map.lines.laid_out = None;
    }
    let lines = &mut app.map.lines;
    if lines.drawing != lines.laid_out {
        lines.schematic =
            lines.drawing.map(|sort| schematic::laid_out(home, sort, &lines.proposed));
        lines.laid_out = lines.drawing;
    }
}

/// Draws a line, or tells why it cannot be.
fn draw(app: &mut App, from: &str, to: &str, carries: Option<Medium>) {
    let home = app.history.home();
    if carries.is_none() && !is_plain(home, from, to) {
        app.map.lines.refused = Some(app.words.text("window-lines-which"));
        return;
    }
    let likely = || media_between(home, from, to).first().copied();
    // Where nothing may be drawn, any medium tells why.
    let carries = carries.or_else(likely).unwrap_or_else(|| usual_medium(home, from));
    match may_connect(home, from, to, carries) {
        Ok(()) => {
            app.map.lines.refused = None;
            if app.edit(Edit::Connect(Box::new(Connection::new(from, to, carries)))) {
                // One goes on from where the line ends.
                app.map.lines.from = Some(to.to_owned());
                app.map.lines.to = None;
                app.map.lines.carries = None;
            }
        }
        Err(refusal) => {
            let fills = [
                fill("cause", &refusal.cause.text(&app.words)),
                fill("remedy", &refusal.remedy.text(&app.words)),
            ];
            app.map.lines.refused = Some(app.words.fill("window-lines-refused", &fills));
        }
    }
}

/// Chooses an end. What a line carries is said of two ends, and forgotten with one of them.
fn choose(end: &mut Option<String>, id: Option<String>, carries: &mut Option<Medium>) {
    if end.is_some() || id.is_none() {
        *carries = None;
    }
    *end = id;
}

/// What a line is wanted for of which one end was chosen, if it can be seen in what is shown.
fn wanted_medium(lines: &State, from: &str, to: &str) -> Option<Medium> {
    let is_other_end = match (lines.from.as_deref(), lines.to.as_deref()) {
        (Some(begun), None) => begun == from,
        (None, Some(begun)) => begun == to,
        _ => false,
    };
    let is_shown =
        |medium: &Medium| lines.drawing.is_none_or(|drawing| drawing.media().contains(medium));
    lines.carries.filter(|_| is_other_end).filter(is_shown)
}

/// What a line carries that is drawn in a riser or one-line: what that shows. `None` on the plan,
/// which shows all.
fn shown_medium(app: &App, from: &str, to: &str) -> Option<Medium> {
    let media = app.map.lines.drawing?.media();
    let home = app.history.home();
    let likely = media_between(home, from, to).into_iter().find(|medium| media.contains(medium));
    let usual = || Some(usual_medium(home, from)).filter(|medium| media.contains(medium));
    likely.or_else(usual).or_else(|| media.first().copied())
}

/// True unless the likeliest line would bring to a component something that it has nothing to do with
/// so far, such as power to a sink: then a person says what it carries.
fn is_plain(home: &Home, from: &str, to: &str) -> bool {
    let Some(likely) = media_between(home, from, to).first().copied() else { return true };
    let mut nets = home
        .connections
        .iter()
        .filter(|line| line.from == from || line.to == from)
        .map(|line| line.carries.net())
        .peekable();
    nets.peek().is_none() || nets.any(|net| net == likely.net())
}

/// What the first line of a component carries.
fn usual_medium(home: &Home, id: &str) -> Medium {
    let line = home.connections.iter().find(|line| line.from == id || line.to == id);
    line.map_or(Medium::ColdWater, |line| line.carries)
}

/// Keeps the size and length that were typed.
fn keep(app: &mut App) {
    let Some((line, size, length)) = app.map.lines.changed.clone() else { return };
    let length_m = if length.trim().is_empty() {
        None
    } else {
        match quarterturn_mapping::read_distance(length.trim()) {
            Ok(metres) => Some(metres),
            Err(bad) => {
                app.map.lines.refused = Some(bad.told(&app.words));
                return;
            }
        }
    };
    let size = Some(size.trim().to_owned()).filter(|size| !size.is_empty());
    let to = Connection { length_m, size, ..Connection::clone(&line) };
    if app.edit(Edit::ChangeConnection { old: line, new: Box::new(to) }) {
        app.map.lines.changed = None;
        app.map.lines.refused = None;
    }
}

/// The column of the tool.
pub(crate) fn column_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let mut say = |command: Command| out.push(Press::Map(MapCommand::Lines(command)));
    accept_all_ui(ui, view, &state.lines, &mut say);
    ui.add(egui::Label::new(soft(ui, view.text("lines-hint"))).wrap());
    ends_ui(ui, view, &state.lines, &mut say);
    if let Some(refused) = &state.lines.refused {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(strong(refused.as_str(), size::BODY)).wrap());
        });
    }
    if let Some(id) = begun(&state.lines).or(state.selected.as_deref()) {
        drawn_ui(ui, view, &state.lines, id, &mut say);
    }
    proposed_ui(ui, view, &state.lines, &mut say);
}

/// The end that is chosen, the first of two.
fn begun(lines: &State) -> Option<&str> {
    lines.from.as_deref().or(lines.to.as_deref())
}

/// Where the line comes from, where it goes, what it carries.
fn ends_ui(ui: &mut Ui, view: &View<'_>, state: &State, say: &mut dyn FnMut(Command)) {
    let search = field(ui, &view.text("lines-search"), "", &state.search);
    if let Some(words) = search.text {
        say(Command::Search(words));
    }
    for (key, chosen, is_from) in
        [("lines-from", &state.from, true), ("lines-to", &state.to, false)]
    {
        ui.label(soft(ui, view.text(key)));
        let text = match chosen {
            Some(id) => place::name(view.home, id).to_owned(),
            None => view.text("lines-choose"),
        };
        let combo = ComboBox::from_id_salt(key).selected_text(text).height(400.0).width(300.0);
        let combo = combo.show_ui(ui, |ui| {
            let found = view.home.components.iter().filter(|component| {
                let tag = component.tag.as_deref().unwrap_or_default();
                matches(&state.search, &[component.name.as_str(), tag].join(" "))
            });
            for component in found.take(MOST) {
                let is_chosen = chosen.as_ref() == Some(&component.id);
                if ui.selectable_label(is_chosen, &component.name).clicked() {
                    let id = Some(component.id.clone());
                    say(if is_from { Command::From(id) } else { Command::To(id) });
                }
            }
        });
        combo.response.accessible_name(view.text(key));
    }
    let (from, to) = match (&state.from, &state.to) {
        (Some(from), Some(to)) => (from, to),
        (Some(end), None) => return other_end_ui(ui, view, "lines-begun-from", end),
        (None, Some(end)) => return other_end_ui(ui, view, "lines-begun-to", end),
        (None, None) => return,
    };
    let media = media_between(view.home, from, to);
    let chosen = state.carries.or_else(|| media.first().copied());
    ui.horizontal_wrapped(|ui| {
        for medium in media {
            let text = view.words.text(medium_key(medium));
            if chosen_button(ui, &text, chosen == Some(medium)).clicked() {
                say(Command::Carries(medium));
            }
        }
    });
    ui.add_space(GAP);
    if main_button(ui, &view.text("lines-draw")).clicked() {
        say(Command::Draw);
    }
}

/// What to do once one end is chosen.
fn other_end_ui(ui: &mut Ui, view: &View<'_>, key: &str, end: &str) {
    let text = view.fill(key, &[fill("device", place::name(view.home, end))]);
    ui.add(egui::Label::new(strong(text, size::BODY)).wrap());
}

/// The lines of a component, each with what is known of it.
fn drawn_ui(ui: &mut Ui, view: &View<'_>, state: &State, id: &str, say: &mut dyn FnMut(Command)) {
    let lines: Vec<&Connection> =
        view.home.connections.iter().filter(|line| line.from == id || line.to == id).collect();
    if lines.is_empty() {
        return;
    }
    section(ui, &view.fill("lines-of", &[fill("device", place::name(view.home, id))]));
    for line in lines {
        let name = named(view, line);
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(name.as_str()).wrap());
            if let Some((changed, size, length)) = &state.changed
                && **changed == *line
            {
                change_ui(ui, view, line, size, length, say);
                return;
            }
            ui.horizontal_wrapped(|ui| {
                let label = view.fill("lines-change-of", &[fill("line", &name)]);
                if button(ui, &view.text("lines-change")).accessible_name(label).clicked() {
                    let length = line.length_m.map(|m| format!("{m:.2} m")).unwrap_or_default();
                    let size = line.size.clone().unwrap_or_default();
                    say(Command::Change(Some((Box::new(line.clone()), size, length))));
                }
                let label = view.fill("lines-remove-of", &[fill("line", &name)]);
                if button(ui, &view.text("lines-remove")).accessible_name(label).clicked() {
                    say(Command::Remove(Box::new(line.clone())));
                }
            });
        });
    }
}

fn change_ui(
    ui: &mut Ui,
    view: &View<'_>,
    line: &Connection,
    size: &str,
    length: &str,
    say: &mut dyn FnMut(Command),
) {
    let changed = |size: &str, length: &str| {
        Command::Change(Some((Box::new(line.clone()), size.to_owned(), length.to_owned())))
    };
    if let Some(size) = field(ui, &view.text("lines-size"), "", size).text {
        say(changed(&size, length));
    }
    if let Some(length) = field(ui, &view.text("lines-length"), "", length).text {
        say(changed(size, &length));
    }
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("lines-keep")).clicked() {
            say(Command::Keep);
        }
        if button(ui, &view.text("cancel")).clicked() {
            say(Command::Change(None));
        }
    });
}

/// A line by its ends and what it carries.
fn named(view: &View<'_>, line: &Connection) -> String {
    let fills = [
        fill("from", place::name(view.home, &line.from)),
        fill("to", place::name(view.home, &line.to)),
        fill("carries", &view.words.text(medium_key(line.carries))),
    ];
    view.fill("lines-line", &fills)
}

/// How many lines are probably there, and one press for all that are likely.
fn accept_all_ui(ui: &mut Ui, view: &View<'_>, state: &State, say: &mut dyn FnMut(Command)) {
    if state.proposed.is_empty() {
        return;
    }
    let many = |n: usize| u32::try_from(n).map_or(f64::INFINITY, f64::from);
    let likely = state.proposed.iter().filter(|proposal| proposal.confidence >= LIKELY).count();
    let title = view.fill("lines-proposed", &[count("n", many(state.proposed.len()))]);
    ui.add(egui::Label::new(strong(title, size::SECTION)).wrap());
    ui.add(egui::Label::new(soft(ui, view.text("lines-proposed-hint"))).wrap());
    if likely > 0 && main_button(ui, &view.text("lines-accept-all")).clicked() {
        say(Command::AcceptAll);
    }
    ui.add_space(GAP);
}

/// What is probably there, with why.
fn proposed_ui(ui: &mut Ui, view: &View<'_>, state: &State, say: &mut dyn FnMut(Command)) {
    if state.proposed.is_empty() {
        return;
    }
    section(ui, &view.text("lines-proposed-each"));
    for proposal in &state.proposed {
        let name = named(view, &proposal.line);
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(name.as_str()).wrap());
            ui.add(egui::Label::new(soft(ui, proposal.why.text(view.words))).wrap());
            let label = view.fill("lines-accept-of", &[fill("line", &name)]);
            if button(ui, &view.text("lines-accept")).accessible_name(label).clicked() {
                say(Command::Accept(proposal.of.clone()));
            }
        });
    }
}

/// What the plan shows for it: the lines that are drawn, and dashed those that are proposed.
pub(crate) fn marks(view: &View<'_>, state: &MapState, _level: &Level) -> Marks {
    let marked = |line: &Connection, is_proposed| MarkedLine {
        from: line.from.clone(),
        to: line.to.clone(),
        carries: line.carries,
        is_proposed,
    };
    let drawn = view.home.connections.iter().map(|line| marked(line, false));
    let proposed = state.lines.proposed.iter().map(|proposal| marked(&proposal.line, true));
    Marks { lines: drawn.chain(proposed).collect(), ..Marks::default() }
}

/// A press on one pin and then on another, or a drag between them, draws a line.
pub(crate) fn touched(_view: &View<'_>, state: &MapState, touch: &Touch, out: &mut Vec<Press>) {
    let mut say = |command: Command| out.push(Press::Map(MapCommand::Lines(command)));
    match touch {
        Touch::Pressed { on: Some(id), .. } => match (&state.lines.from, &state.lines.to) {
            (Some(from), None) if from != id => say(Command::Join(from.clone(), id.clone())),
            (None, Some(to)) if to != id => say(Command::Join(id.clone(), to.clone())),
            (Some(from), _) if from == id => say(Command::From(None)),
            (None, Some(_)) => say(Command::To(None)),
            _ => {
                say(Command::From(Some(id.clone())));
                say(Command::To(None));
            }
        },
        Touch::Dragged { on: Some(from), over: Some(to), is_over: true, .. } if from != to => {
            say(Command::Join(from.clone(), to.clone()));
        }
        Touch::Pressed { .. } | Touch::Dragged { .. } | Touch::Hovered { .. } => {}
    }
}

/// A drawing in place of the plan; false if the plan is shown.
pub(crate) fn own_drawing_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    out: &mut Vec<Press>,
) -> bool {
    schematic::choice_ui(ui, view, state, out);
    match state.lines.drawing {
        Some(sort) => {
            schematic::schematic_ui(ui, view, state, sort, out);
            true
        }
        None => false,
    }
}
