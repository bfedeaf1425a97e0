//! What is still missing on the map, most protective first.
//!
//! It is worked out on a thread of its own after each change, one at a time, and never while a frame
//! is drawn.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use egui::{TextEdit, Ui, vec2};
use quarterturn_guidance::{count, fill};
use quarterturn_home::{Contact, Edit, Home, Kind, Role};
use quarterturn_mapping::{Fix, Item, Missing, Switched};

use super::walk::{self, Pick};
use super::{MapCommand, MapState, Tool, lines, panel};
use crate::app::App;
use crate::ask::{Command as Press, Page};
use crate::controls::{button, card, focus_ring, main_button, soft, strong};
use crate::place;
use crate::tokens::{GAP, Palette, TOUCH, size};
use crate::view::View;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    /// What was found last.
    found: Option<Missing>,
    /// The home that this is about, or that is being looked through.
    of: Option<Arc<Home>>,
    working: Option<Receiver<Missing>>,
    /// The number that is typed in the list, and what for; `None` is the emergency number.
    number: Option<(Option<Role>, String)>,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// This is typed as the number for that.
    Number(Option<Role>, String),
    /// Keep the number.
    Keep,
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, _ctx: &egui::Context, command: Command) {
    match command {
        Command::Number(role, text) => app.map.missing.number = Some((role, text)),
        Command::Keep => {
            let Some((role, text)) = app.map.missing.number.take() else { return };
            let number = text.trim();
            if number.is_empty() {
                return;
            }
            let home = app.history.home();
            let edit = match role {
                None => Edit::SetEmergencyPhone(Some(number.to_owned())),
                Some(role) => {
                    let name = app.words.text(&role_key(role));
                    let id = home.free_id(&name);
                    let phone = Some(number.to_owned());
                    let role = Some(role);
                    let (hours, note) = (None, None);
                    Edit::PutContact(Box::new(Contact { id, name, phone, role, hours, note }))
                }
            };
            app.edit(edit);
        }
    }
}

/// Looks through the home anew once it has changed, on a thread.
pub(crate) fn poll(app: &mut App, ctx: &egui::Context) {
    let state = &mut app.map.missing;
    if let Some(working) = &state.working {
        match working.try_recv() {
            Ok(found) => state.found = Some(found),
            Err(TryRecvError::Empty) => return,
            Err(TryRecvError::Disconnected) => {}
        }
        state.working = None;
    }
    let home = app.history.home();
    let is_known = state.of.as_ref().is_some_and(|of| Arc::ptr_eq(of, home));
    if app.page != Page::Map || is_known {
        return;
    }
    state.of = Some(Arc::clone(home));
    let (send, arrival) = channel();
    let (home, ctx) = (Arc::clone(home), ctx.clone());
    std::thread::spawn(move || {
        // Nobody waits any more if another home was opened meanwhile.
        if send.send(quarterturn_mapping::missing(&home)).is_ok() {
            ctx.request_repaint();
        }
    });
    state.working = Some(arrival);
}

/// One line that is always in sight: how far the map has come, and what would help most.
pub(crate) fn head_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let Some(found) = &state.missing.found else {
        ui.label(soft(ui, view.text("missing-looking")));
        return;
    };
    let percent = u32::try_from(found.percent()).map_or(0.0, f64::from);
    let text = view.fill("missing-percent", &[count("percent", percent)]);
    let first = found.list.first().filter(|_| state.tool != Tool::Missing);
    let Some(first) = first else {
        ui.add(egui::Label::new(soft(ui, text)).wrap());
        return;
    };
    ui.horizontal_wrapped(|ui| {
        let next = first.said.text(view.words);
        let response = button(ui, &view.fill("missing-next", &[fill("what", &next)]));
        focus_ring(ui, &response);
        if response.clicked() {
            put_right(view, state, &first.fix, out);
        }
        // Whole on the next row where it does not fit on this one.
        ui.add(egui::Label::new(soft(ui, text)).extend());
    });
}

/// The column of the tool.
pub(crate) fn column_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Press>) {
    let Some(found) = &state.missing.found else {
        ui.label(view.text("missing-looking"));
        return;
    };
    ui.add(egui::Label::new(strong(found.said().text(view.words), size::BODY)).wrap());
    ui.add(egui::Label::new(soft(ui, view.text("missing-why"))).wrap());
    if found.list.is_empty() {
        ui.add(egui::Label::new(view.text("missing-nothing")).wrap());
    }
    for (rank, item) in found.list.iter().enumerate() {
        ui.add_space(GAP);
        card(ui, Palette::of(ui).edge_stroke(), |ui| item_ui(ui, view, state, rank, item, out));
    }
}

fn item_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    rank: usize,
    item: &Item,
    out: &mut Vec<Press>,
) {
    let said = item.said.text(view.words);
    ui.add(egui::Label::new(strong(&said, size::BODY)).wrap());
    let mut places: Vec<String> = Vec::new();
    for (_, spot) in &item.protects {
        let name = place::name_of_spot(view.home, spot, view.words);
        if !places.contains(&name) {
            places.push(name);
        }
    }
    if !places.is_empty() {
        const SHOWN: usize = 3;
        let more = u32::try_from(places.len().saturating_sub(SHOWN)).map_or(0.0, f64::from);
        places.truncate(SHOWN);
        let fills = [fill("places", &view.words.list(&places)), count("more", more)];
        ui.add(egui::Label::new(soft(ui, view.fill("missing-protects", &fills))).wrap());
    }
    match &item.fix {
        Fix::EmergencyPhone => number_ui(ui, view, state, None, &said, out),
        Fix::AddContact { role } => number_ui(ui, view, state, Some(*role), &said, out),
        fix => {
            let name = view.fill("missing-fix-name", &[fill("what", &said)]);
            let text = view.text(fix_key(fix));
            // What helps most is the one to press.
            let response = if rank == 0 { main_button(ui, &text) } else { button(ui, &text) };
            focus_ring(ui, &response);
            if response.accessible_name(name).clicked() {
                put_right(view, state, fix, out);
            }
        }
    }
}

/// A number to be typed at once.
fn number_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    role: Option<Role>,
    said: &str,
    out: &mut Vec<Press>,
) {
    let typed = state.missing.number.as_ref().filter(|(of, _)| *of == role);
    let mut text = typed.map_or_else(String::new, |(_, text)| text.clone());
    let name = match role {
        Some(role) => view.words.text(&role_key(role)),
        None => view.text("missing-emergency"),
    };
    ui.horizontal_wrapped(|ui| {
        let edit = TextEdit::singleline(&mut text)
            .id_salt(("missing-number", &name))
            .hint_text(name.clone())
            .desired_width(220.0)
            .min_size(vec2(TOUCH, TOUCH))
            .align(egui::Align2::LEFT_CENTER);
        let response = ui.add(edit).accessible_name(name);
        let mut say = |command| out.push(Press::Map(MapCommand::Missing(command)));
        if response.changed() {
            say(Command::Number(role, text.clone()));
        }
        let entered = response.lost_focus() && ui.input(|i| i.key_pressed(egui::Key::Enter));
        let keep = button(ui, &view.text("missing-keep"));
        focus_ring(ui, &keep);
        let fills = [fill("what", said)];
        let keep = keep.accessible_name(view.fill("missing-fix-name", &fills));
        if typed.is_some() && (entered || keep.clicked()) {
            say(Command::Keep);
        }
    });
}

/// Goes to where it is put right, with all chosen that is known already.
fn put_right(view: &View<'_>, state: &MapState, fix: &Fix, out: &mut Vec<Press>) {
    let mut map = |command| out.push(Press::Map(command));
    match fix {
        Fix::DrawRooms => map(MapCommand::Take(Tool::Plans)),
        Fix::PlaceSet { set, space } => {
            show(view, space.as_deref(), out);
            out.extend(walk::start(Pick::Set((*set).to_owned()), space.clone()));
        }
        Fix::AddShutoff { before } => {
            let component = view.home.component(before);
            let room = component.and_then(|c| c.space.clone());
            let is_gas = component.is_some_and(|c| c.kind == Kind::GasAppliance);
            let kind = if is_gas { Kind::GasValve } else { Kind::IsolatingValve };
            show(view, room.as_deref(), out);
            out.extend(walk::start(Pick::Kind(kind), room));
        }
        Fix::AddMain => {
            out.extend(walk::start(Pick::Kind(Kind::IsolatingValve), state.walk.room.clone()));
        }
        Fix::AddCleanout => {
            out.extend(walk::start(Pick::Kind(Kind::Cleanout), state.walk.room.clone()));
        }
        Fix::Connect { id, lack, carries, proposal } => {
            if proposal.is_some() {
                pick(view, id, Tool::Walk, out);
                return;
            }
            pick(view, id, Tool::Lines, out);
            let begin = lines::Command::Begin(id.clone(), *lack, *carries);
            out.push(Press::Map(MapCommand::Lines(begin)));
        }
        Fix::FindBreakers { things } => find(Switched::Breakers, things.clone(), out),
        Fix::FindGfcis => find(Switched::Gfcis, Vec::new(), out),
        Fix::Try { id } => pick(view, id, Tool::Walk, out),
        Fix::PutInRoom { id } => {
            pick(view, id, Tool::Walk, out);
            let command = walk::Command::Putting(Some(id.clone()));
            out.push(Press::Map(MapCommand::Walk(command)));
        }
        Fix::EmergencyPhone | Fix::AddContact { .. } => map(MapCommand::Take(Tool::Missing)),
    }
}

/// Opens the search for what things hang on.
fn find(switched: Switched, things: Vec<String>, out: &mut Vec<Press>) {
    out.push(Press::Map(MapCommand::Take(Tool::Panel)));
    let command = panel::Command::Find(switched, things);
    out.push(Press::Map(MapCommand::Panel(command)));
}

/// Picks a device, and shows its level.
fn pick(view: &View<'_>, id: &str, tool: Tool, out: &mut Vec<Press>) {
    let space = view.home.component(id).and_then(|c| c.space.as_deref());
    show(view, space, out);
    out.push(Press::Map(MapCommand::Take(tool)));
    out.push(Press::Map(MapCommand::Walk(walk::Command::Pick(None))));
    out.push(Press::Map(MapCommand::Select(Some(id.to_owned()))));
}

/// Shows the level of a room.
fn show(view: &View<'_>, space: Option<&str>, out: &mut Vec<Press>) {
    let level = space.and_then(|id| view.home.space(id)).and_then(|space| space.level.clone());
    if let Some(level) = level {
        out.push(Press::Map(MapCommand::Level(level)));
    }
}

fn fix_key(fix: &Fix) -> &'static str {
    match fix {
        Fix::DrawRooms => "fix-rooms",
        Fix::PlaceSet { .. } | Fix::AddShutoff { .. } | Fix::AddMain | Fix::AddCleanout => {
            "fix-pin"
        }
        Fix::Connect { proposal: Some(_), .. } => "fix-proposal",
        Fix::Connect { proposal: None, .. } => "fix-line",
        Fix::FindBreakers { .. } => "fix-breakers",
        Fix::FindGfcis => "fix-gfcis",
        Fix::Try { .. } => "fix-try",
        Fix::PutInRoom { .. } => "fix-place",
        Fix::EmergencyPhone | Fix::AddContact { .. } => "fix-number",
    }
}

fn role_key(role: Role) -> String {
    let word = match role {
        Role::WaterUtility => "water-utility",
        Role::SewerUtility => "sewer-utility",
        Role::ElectricityUtility => "electricity-utility",
        Role::GasUtility => "gas-utility",
        Role::Emergency => "emergency",
        Role::Plumber => "plumber",
        Role::Electrician => "electrician",
        Role::Cooling => "cooling",
        Role::Builder => "builder",
        Role::Owner => "owner",
        Role::Manager => "manager",
        Role::Neighbor => "neighbor",
        Role::Association => "association",
        Role::Insurer => "insurer",
        Role::Alarm => "alarm",
    };
    format!("role-{word}")
}
