//! What the boxes look like.

use egui::{Frame, Label, Modal, ScrollArea, Ui};
use quarterturn_folder::Unsaved;
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::Units;

use super::{Command, Field, Form, State, folder};
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, main_button, soft, strong};
use crate::field::{field, field_with};
use crate::keeping::Conflict;
use crate::tokens::{GAP, size};
use crate::view::View;

/// Widest that a box gets, in points.
const WIDTH: f32 = 520.0;

/// The box that is to be answered now, if any.
pub(crate) fn boxes_ui(ui: &Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    if let Some(form) = &state.form {
        form_ui(ui, view, state, form, out);
    } else if let Some(conflict) = state.conflict {
        conflict_ui(ui, view, conflict, out);
    } else if let Some(left) = &state.left {
        left_ui(ui, view, left, out);
    }
}

fn press(command: Command) -> Press {
    Press::Start(command)
}

/// A box over everything. `close` is what Esc means.
fn boxed(
    ui: &Ui,
    id: &str,
    close: Command,
    out: &mut Vec<Press>,
    add: impl FnOnce(&mut Ui, &mut Vec<Press>),
) {
    let frame = Frame::window(ui.style()).inner_margin(egui::Margin::same(24));
    let modal = Modal::new(egui::Id::unique(id)).frame(frame).show(ui.ctx(), |ui| {
        let room = ui.ctx().content_rect().size();
        ui.set_width(WIDTH.min(room.x - 60.0));
        let most = (room.y - 80.0).max(120.0);
        ScrollArea::vertical().max_height(most).min_scrolled_height(most).show(ui, |ui| {
            Frame::new().inner_margin(egui::Margin::symmetric(4, 2)).show(ui, |ui| add(ui, out));
        });
    });
    if modal.should_close() {
        out.push(press(close));
    }
}

/// A button with what it does, and whether it is the one to press.
fn choice(
    ui: &mut Ui,
    view: &View<'_>,
    key: &str,
    is_main: bool,
    command: Command,
    out: &mut Vec<Press>,
) {
    let text = view.text(key);
    let response = if is_main { main_button(ui, &text) } else { button(ui, &text) };
    if response.clicked() {
        out.push(press(command));
    }
}

fn form_ui(ui: &Ui, view: &View<'_>, state: &State, form: &Form, out: &mut Vec<Press>) {
    boxed(ui, "start-box", Command::Close, out, |ui, out| {
        let (title, go) = match form {
            Form::New => ("start-new-title", "start-new-go"),
            Form::Copy => ("start-copy-title", "start-copy-go"),
            Form::Unzip(_) => ("start-unzip-title", "start-unzip-go"),
        };
        ui.add(Label::new(strong(view.text(title), size::HEADING)).wrap());
        let mut entered = match form {
            Form::New => new_ui(ui, view, state, out),
            Form::Copy => {
                ui.add(Label::new(view.text("start-copy-hint")).wrap());
                false
            }
            Form::Unzip(zip) => {
                let zip = zip.display().to_string();
                ui.add(Label::new(view.fill("start-unzip-hint", &[fill("path", &zip)])).wrap());
                false
            }
        };
        entered |= folder_ui(ui, view, state, out);
        if let Some(wrong) = &state.wrong {
            ui.add(Label::new(strong(wrong.as_str(), size::BODY)).wrap());
        }
        ui.add_space(GAP);
        ui.horizontal_wrapped(|ui| {
            if state.work.is_some() {
                ui.add(Label::new(view.text("start-working")).wrap());
            } else if main_button(ui, &view.text(go)).clicked() || entered {
                out.push(press(Command::Go));
            }
            choice(ui, view, "cancel", false, Command::Close, out);
        });
    });
}

/// What a new home is. True if Enter was pressed in a box.
fn new_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) -> bool {
    let mut entered = false;
    if let Some(picture) = &state.picture {
        let path = picture.display().to_string();
        ui.add(Label::new(view.fill("start-picture", &[fill("path", &path)])).wrap());
    }
    for (key, kind) in [
        ("start-name", Field::Name),
        ("start-address", Field::Address),
        ("start-emergency", Field::Emergency),
    ] {
        let value = state.typed.get(&kind).map_or("", String::as_str);
        let takes_focus = kind == Field::Name && !state.is_drawn;
        let typed = field_with(ui, &view.text(key), "", value, takes_focus);
        entered |= typed.is_entered;
        if let Some(text) = typed.text {
            out.push(press(Command::Type(kind, text)));
        }
    }
    ui.add(Label::new(soft(ui, view.text("start-emergency-hint"))).wrap());
    ui.horizontal_wrapped(|ui| {
        for (key, units) in [("start-units-us", Units::Us), ("start-units-si", Units::Si)] {
            if chosen_button(ui, &view.text(key), state.units == units).clicked() {
                out.push(press(Command::Units(units)));
            }
        }
    });
    ui.add(Label::new(soft(ui, view.text("start-language"))).wrap());
    ui.horizontal_wrapped(|ui| {
        let now = state.language.unwrap_or(view.words.language());
        for language in Catalogue::languages() {
            if chosen_button(ui, &language.name, language.tag == now).clicked() {
                out.push(press(Command::Language(language.tag)));
            }
        }
    });
    entered
}

/// Where it goes: chosen or typed. True if Enter was pressed in the box.
fn folder_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) -> bool {
    ui.add_space(GAP);
    let here = view.folder;
    let usual = folder(state, view.home, here, view.words).display().to_string();
    let value = state.typed.get(&Field::Folder).map_or(usual.as_str(), String::as_str);
    let typed = field(ui, &view.text("start-folder-label"), &usual, value);
    if let Some(text) = typed.text {
        out.push(press(Command::Type(Field::Folder, text)));
    }
    if button(ui, &view.text("start-choose-folder")).clicked() {
        out.push(press(Command::ChooseFolder));
    }
    if state.choosing.is_some() {
        ui.add(Label::new(soft(ui, view.text("choosing"))).wrap());
    }
    ui.add(Label::new(soft(ui, view.text("start-folder-hint"))).wrap());
    typed.is_entered
}

/// What a session left that came to a sudden end.
fn left_ui(ui: &Ui, view: &View<'_>, left: &Unsaved, out: &mut Vec<Press>) {
    boxed(ui, "left-box", Command::Leave, out, |ui, out| {
        ui.add(Label::new(strong(view.text("start-left-title"), size::HEADING)).wrap());
        let when = jiff::Timestamp::try_from(left.when).map_or_else(
            |_| view.text("start-left-long-ago"),
            |when| {
                when.to_zoned(jiff::tz::TimeZone::system()).strftime("%Y-%m-%d %H:%M").to_string()
            },
        );
        ui.add(Label::new(view.fill("start-left", &[fill("when", &when)])).wrap());
        if left.home_changed_since {
            let since = strong(view.text("start-left-changed-since"), size::BODY);
            ui.add(Label::new(since).wrap());
        }
        ui.add_space(GAP);
        choice(ui, view, "start-left-take-up", true, Command::TakeUp, out);
        choice(ui, view, "start-left-leave", false, Command::Leave, out);
        choice(ui, view, "start-left-discard", false, Command::Discard, out);
    });
}

/// Another window has the home, or someone else changed its file.
fn conflict_ui(ui: &Ui, view: &View<'_>, conflict: Conflict, out: &mut Vec<Press>) {
    boxed(ui, "conflict-box", Command::Close, out, |ui, out| {
        let (title, hint) = match conflict {
            Conflict::InUse => ("start-in-use-title", "start-in-use"),
            Conflict::Changed => ("start-changed-title", "start-changed"),
        };
        ui.add(Label::new(strong(view.text(title), size::HEADING)).wrap());
        ui.add(Label::new(view.text(hint)).wrap());
        ui.add_space(GAP);
        choice(ui, view, "start-keep-copy", true, Command::Copy, out);
        choice(ui, view, "start-reload", false, Command::Reload, out);
        if conflict == Conflict::InUse {
            choice(ui, view, "start-retry", false, Command::Retry, out);
        }
        choice(ui, view, "start-later", false, Command::Close, out);
    });
}
