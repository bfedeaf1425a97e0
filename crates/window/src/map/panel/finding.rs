//! Finding what hangs on which breaker or GFCI, with the fewest walks: switch some off, walk, tick
//! what went dead.

use std::collections::BTreeSet;

use egui::Ui;
use quarterturn_guidance::{count, fill};
use quarterturn_home::Edit;
use quarterturn_mapping::{Search, Switched, Walk};

use super::Command as Panel;
use super::round;
use crate::app::App;
use crate::controls::{
    button, card, chosen_button, focus_ring, main_button, section, soft, strong,
};
use crate::place;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Height of what is ticked on the way.
const TILE_OF_A_STOP: f32 = 52.0;
/// Width of what stands beside it.
const WIDTH_BESIDE: f32 = 140.0;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    search: Option<Search>,
    /// What went dead on this walk.
    dead: BTreeSet<String>,
    /// What was not looked at.
    unseen: BTreeSet<String>,
    said: Option<String>,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Look for what hangs on breakers.
    Breakers,
    /// Look for what hangs on GFCIs.
    Gfcis,
    /// This device may go off, or not.
    Confirm(String, bool),
    /// This went dead, or not.
    Dead(String, bool),
    /// This was not looked at, or was.
    Unseen(String, bool),
    /// None of these was looked at, or all were.
    UnseenAll(Vec<String>, bool),
    /// The walk is done.
    Walked,
    /// Take the last walk back.
    Undo,
    /// Write what was found to the map.
    Write,
    /// Leave it.
    Leave,
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, command: Command) {
    let home = app.history.home();
    let state = &mut app.map.panel.finding;
    let mark = |set: &mut BTreeSet<String>, key: String, is_in: bool| {
        if is_in {
            set.insert(key);
        } else {
            set.remove(&key);
        }
    };
    match command {
        Command::Breakers | Command::Gfcis => {
            let switched = match command {
                Command::Breakers => Switched::Breakers,
                _ => Switched::Gfcis,
            };
            begin(app, switched, &[]);
        }
        Command::Confirm(id, may) => {
            if let Some(search) = &mut state.search {
                search.confirm(&id, may);
            }
        }
        Command::Dead(key, is_dead) => {
            mark(&mut state.unseen, key.clone(), false);
            mark(&mut state.dead, key, is_dead);
        }
        Command::Unseen(key, is_unseen) => {
            mark(&mut state.dead, key.clone(), false);
            mark(&mut state.unseen, key, is_unseen);
        }
        Command::UnseenAll(keys, are_unseen) => {
            for key in keys {
                mark(&mut state.dead, key.clone(), false);
                mark(&mut state.unseen, key, are_unseen);
            }
        }
        Command::Walked => {
            let Some(search) = &mut state.search else { return };
            let Some(next) = search.next_walk(home) else { return };
            let live = next
                .visit
                .iter()
                .filter(|key| !state.dead.contains(*key) && !state.unseen.contains(*key))
                .cloned()
                .collect();
            let dead = std::mem::take(&mut state.dead);
            state.unseen.clear();
            search.record(Walk { off: next.off, dead, live });
        }
        Command::Undo => {
            if let Some(search) = &mut state.search {
                search.undo();
            }
            state.dead.clear();
            state.unseen.clear();
        }
        Command::Write => {
            let Some(search) = &state.search else { return };
            let edits = search.found(home).edits;
            if !edits.is_empty() && app.edit(Edit::All(edits)) {
                let said = app.words.text("window-find-written");
                app.map.panel.finding = State { said: Some(said), ..State::default() };
            }
        }
        Command::Leave => *state = State::default(),
    }
}

/// Opens a search for what these things hang on. One in which something was walked already goes on:
/// nobody walks twice.
pub(super) fn open(app: &mut App, switched: Switched, things: &[String]) {
    let search = app.map.panel.finding.search.as_ref();
    if search.is_none_or(|search| search.walks().is_empty()) {
        begin(app, switched, things);
    }
}

/// Begins a search, for all if none of these things is looked for.
fn begin(app: &mut App, switched: Switched, things: &[String]) {
    let home = app.history.home();
    let mut search = match switched {
        Switched::Breakers => Search::breakers(home, &[]),
        Switched::Gfcis => Search::gfcis(home),
    };
    if let Some(search) = &mut search {
        search.keep_to(things);
    }
    let nothing = search.is_none().then(|| app.words.text("window-find-nothing"));
    app.map.panel.finding = State { search, said: nothing, ..State::default() };
}

/// The part of the tool.
pub(super) fn finding_ui(ui: &mut Ui, view: &View<'_>, state: &State, say: &mut dyn FnMut(Panel)) {
    let mut say = |command: Command| say(Panel::Finding(command));
    if let Some(said) = &state.said {
        ui.add(egui::Label::new(strong(said.as_str(), size::BODY)).wrap());
    }
    let Some(search) = &state.search else {
        ui.add(egui::Label::new(soft(ui, view.text("find-hint"))).wrap());
        ui.horizontal_wrapped(|ui| {
            if main_button(ui, &view.text("find-breakers")).clicked() {
                say(Command::Breakers);
            }
            if button(ui, &view.text("find-gfcis")).clicked() {
                say(Command::Gfcis);
            }
        });
        return;
    };
    // Read before the first walk; from then on what is ticked comes first.
    let is_begun = !search.walks().is_empty();
    if !is_begun {
        cautions_ui(ui, view, search);
    }
    asked_ui(ui, view, search, &mut say);
    walk_ui(ui, view, state, search, &mut say);
    found_ui(ui, view, search, &mut say);
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if is_begun && button(ui, &view.text("find-undo")).clicked() {
            say(Command::Undo);
        }
        if button(ui, &view.text("find-leave")).clicked() {
            say(Command::Leave);
        }
    });
    if is_begun {
        section(ui, &view.text("find-still"));
        cautions_ui(ui, view, search);
    }
}

/// What must be said and done before anything is switched.
fn cautions_ui(ui: &mut Ui, view: &View<'_>, search: &Search) {
    for caution in search.cautions(view.home) {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(caution.text(view.words)).wrap());
        });
    }
}

/// Devices that go off only once a person has said that they may.
fn asked_ui(ui: &mut Ui, view: &View<'_>, search: &Search, say: &mut dyn FnMut(Command)) {
    for device in search.devices().iter().filter(|device| !device.ask.is_empty()) {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            let name = place::name(view.home, &device.id);
            ui.add(egui::Label::new(strong(name, size::BODY)).wrap());
            for ask in &device.ask {
                ui.add(egui::Label::new(ask.text(view.words)).wrap());
            }
            let label = view.fill("find-may-off-of", &[fill("device", name)]);
            let text = view.text("find-may-off");
            if chosen_button(ui, &text, device.confirmed).accessible_name(label).clicked() {
                say(Command::Confirm(device.id.clone(), !device.confirmed));
            }
        });
    }
}

/// What to switch off next, and where to look.
fn walk_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    search: &Search,
    say: &mut dyn FnMut(Command),
) {
    let Some(next) = search.next_walk(view.home) else { return };
    let n = u32::try_from(search.walks().len() + 1).map_or(f64::INFINITY, f64::from);
    let fills = [count("n", n), count("most", f64::from(next.walks_at_most))];
    section(ui, &view.fill("find-walk", &fills));
    let names: Vec<String> =
        next.off.iter().map(|id| place::name(view.home, id).to_owned()).collect();
    let fills = [fill("devices", &view.words.list(&names))];
    ui.add(egui::Label::new(strong(view.fill("find-switch-off", &fills), size::ACT)).wrap());
    let time = view.duration(next.seconds);
    ui.label(soft(ui, view.fill("takes", &[fill("time", &time)])));
    ui.add(egui::Label::new(view.text("find-tick")).wrap());
    for room in round::rooms(view.home, &next.visit) {
        room_ui(ui, view, state, &room, say);
    }
    ui.add_space(GAP);
    let n = |n: usize| u32::try_from(n).map_or(f64::INFINITY, f64::from);
    let fills = [count("n", n(state.dead.len())), count("of", n(next.visit.len()))];
    ui.add(egui::Label::new(strong(view.fill("find-ticked", &fills), size::BODY)).wrap());
    if main_button(ui, &view.text("find-walked")).clicked() {
        say(Command::Walked);
    }
}

/// What is to be looked at in a room: each with one big press.
fn room_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    room: &round::Room<'_>,
    say: &mut dyn FnMut(Command),
) {
    let name = room.space.map_or_else(|| view.text("panel-no-room-known"), |s| s.name.clone());
    let unseen = room.stops.iter().all(|stop| state.unseen.contains(&stop.key));
    section(ui, &name);
    for stop in &room.stops {
        stop_ui(ui, view, state, stop, say);
    }
    if room.stops.len() < 2 {
        return;
    }
    let text = view.text("find-room-unseen");
    let label = view.fill("learnt-of", &[fill("device", &name), fill("lesson", &text)]);
    if chosen_button(ui, &text, unseen).accessible_name(label).clicked() {
        let keys = room.stops.iter().map(|stop| stop.key.clone()).collect();
        say(Command::UnseenAll(keys, !unseen));
    }
}

fn stop_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    stop: &round::Stop,
    say: &mut dyn FnMut(Command),
) {
    let palette = Palette::of(ui);
    let is_dead = state.dead.contains(&stop.key);
    let is_unseen = state.unseen.contains(&stop.key);
    let unseen = view.text("find-unseen");
    let label = |lesson: &str| {
        view.fill("learnt-of", &[fill("device", &stop.name), fill("lesson", lesson)])
    };
    ui.horizontal(|ui| {
        let beside = WIDTH_BESIDE.min(ui.available_width() / 3.0);
        let width = ui.available_width() - beside - GAP;
        let (fill, ink) =
            if is_dead { (palette.ink, palette.card) } else { (palette.card, palette.ink) };
        // The word stands there as well: colour does not stand alone.
        let state = if is_dead { view.text("find-dead") } else { String::new() };
        let text = |text: &str| egui::RichText::new(text).size(size::BODY).color(ink);
        let row = egui::Button::new(text(&stop.name))
            .right_text(text(&state))
            .fill(fill)
            .selected(is_dead)
            .wrap()
            .min_size(egui::vec2(width, TILE_OF_A_STOP));
        let row = ui.add_sized([width, TILE_OF_A_STOP], row);
        let row = row.accessible_name(label(&view.text("find-dead")));
        focus_ring(ui, &row);
        if row.clicked() {
            say(Command::Dead(stop.key.clone(), !is_dead));
        }
        let response = chosen_button(ui, &unseen, is_unseen).accessible_name(label(&unseen));
        if response.clicked() {
            say(Command::Unseen(stop.key.clone(), !is_unseen));
        }
    });
}

/// What was found so far.
fn found_ui(ui: &mut Ui, view: &View<'_>, search: &Search, say: &mut dyn FnMut(Command)) {
    if search.walks().is_empty() {
        return;
    }
    let found = search.found(view.home);
    section(ui, &view.text("find-found"));
    let name = |key: &str| {
        let id = key.split('#').next().unwrap_or(key);
        place::name(view.home, id).to_owned()
    };
    for (thing, device) in &found.on {
        let fills = [fill("thing", &name(thing)), fill("device", &name(device))];
        ui.add(egui::Label::new(view.fill("find-on", &fills)).wrap());
    }
    for thing in &found.on_none {
        let fills = [fill("thing", &name(thing))];
        ui.add(egui::Label::new(view.fill("find-on-none", &fills)).wrap());
    }
    for thing in &found.odd {
        let fills = [fill("thing", &name(thing))];
        ui.add(egui::Label::new(view.fill("find-odd", &fills)).wrap());
    }
    for conflict in &found.conflicts {
        ui.add(egui::Label::new(conflict.text(view.words)).wrap());
    }
    if !found.edits.is_empty() && main_button(ui, &view.text("find-write")).clicked() {
        say(Command::Write);
    }
}
