//! What frames every page: the bar on top, the home file's problems, the box that opens another home.

use std::path::PathBuf;

use egui::{Frame, Key, Layout, Modal, ScrollArea, Stroke, TextEdit, Theme, Ui, vec2};
use quarterturn_guidance::{Catalogue, count, fill};

use crate::ask::{Command, Page};
use crate::controls::{button, focus_ring, main_button, soft, strong};
use crate::settings::ZOOMS;
use crate::starting;
use crate::tokens::{GAP, ONE_COLUMN, Palette, ROUND, TOUCH, size};
use crate::view::View;

/// What one press of a zoom button multiplies by.
const ZOOM_STEP: f32 = 1.1;

/// The bar on top: which home, the number for when people are in danger, and the window's own
/// settings.
pub(crate) fn bar_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let has_room = ui.available_width() >= ONE_COLUMN;
    ui.horizontal_wrapped(|ui| {
        ui.label(strong(view.home.name.as_str(), size::BODY));
        if let Some(phone) = &view.home.emergency_phone {
            let palette = Palette::of(ui);
            Frame::new()
                .stroke(Stroke::new(1.5, palette.ink))
                .corner_radius(ROUND)
                .inner_margin(egui::Margin::symmetric(10, 8))
                .show(ui, |ui| {
                    let text = view.fill("people-in-danger", &[fill("phone", phone)]);
                    ui.label(strong(text, size::BODY));
                });
        }
        if has_room {
            let from_the_right = Layout::right_to_left(egui::Align::Center);
            ui.with_layout(from_the_right, |ui| {
                menu_ui(ui, view, out);
                sizes_ui(ui, view, out);
                languages_ui(ui, view, out);
                quiet_ui(ui, view, out);
            });
        } else {
            languages_ui(ui, view, out);
            quiet_ui(ui, view, out);
            menu_ui(ui, view, out);
        }
    });
}

/// The other languages, each by its own name, for who cannot read this one.
fn languages_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let spoken = view.words.language();
    for language in Catalogue::languages().iter().filter(|language| language.tag != spoken) {
        if button(ui, &language.name).clicked() {
            out.push(Command::Speak(language.tag));
        }
    }
}

/// What there is to do when nothing is wrong: out of the way of who is in a hurry.
fn quiet_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let menu = ui.menu_button(view.text("quiet"), |ui| {
        if button(ui, &view.text("open-practice")).clicked() {
            out.push(Command::Practise);
        }
        for (key, page) in [
            ("open-log", Page::Log),
            ("open-map", Page::Map),
            ("open-papers", Page::Papers),
            ("open-care", Page::Care),
        ] {
            if button(ui, &view.text(key)).clicked() {
                out.push(Command::Open(page));
            }
        }
    });
    focus_ring(ui, &menu.response);
}

fn menu_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let menu = ui.menu_button(view.text("settings"), |ui| settings_ui(ui, view, out));
    focus_ring(ui, &menu.response);
}

/// Bigger and smaller text: in reach at all times, for who left their glasses elsewhere.
fn sizes_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let zoom = ui.ctx().zoom_factor();
    for (key, zoom) in [("bigger", zoom * ZOOM_STEP), ("smaller", zoom / ZOOM_STEP)] {
        let label = view.text(&format!("text-{key}-label"));
        if button(ui, &view.text(&format!("text-{key}"))).accessible_name(label).clicked() {
            out.push(Command::Zoom(zoom.clamp(*ZOOMS.start(), *ZOOMS.end())));
        }
    }
}

fn settings_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    if button(ui, &view.text("open-other")).clicked() {
        out.push(Command::OpenBox(true));
    }
    for (key, command) in
        [("start-new", starting::Command::New), ("start-copy", starting::Command::Copy)]
    {
        if button(ui, &view.text(key)).clicked() {
            out.push(Command::Start(command));
        }
    }
    let (key, theme) = if ui.visuals().dark_mode {
        ("theme-light", Theme::Light)
    } else {
        ("theme-dark", Theme::Dark)
    };
    if button(ui, &view.text(key)).clicked() {
        out.push(Command::Theme(theme));
    }
    let key = if view.motion { "motion-off" } else { "motion-on" };
    if button(ui, &view.text(key)).clicked() {
        out.push(Command::Motion(!view.motion));
    }
    // In a narrow window there is no room for them in the bar.
    if ui.ctx().content_rect().width() < ONE_COLUMN {
        sizes_ui(ui, view, out);
    }
}

/// The problems of the home's file: how many, and on demand which.
pub(crate) fn problems_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    if view.problems.is_empty() {
        return;
    }
    let n = u32::try_from(view.problems.len()).map_or(f64::INFINITY, f64::from);
    let key = if view.problems_open { "problems-hide" } else { "problems-show" };
    ui.horizontal_wrapped(|ui| {
        ui.label(view.fill("problems", &[count("n", n)]));
        if button(ui, &view.text(key)).clicked() {
            out.push(Command::FoldProblems);
        }
    });
    if view.problems_open {
        ScrollArea::vertical().id_salt("problems").max_height(160.0).show(ui, |ui| {
            for problem in view.problems {
                ui.label(soft(ui, view.words.problem(problem)));
            }
        });
    }
}

/// What the box that opens another home shows.
#[derive(Debug, Default)]
pub(crate) struct OpenBox {
    /// What is typed as the path.
    pub(crate) path: String,
    /// What went wrong, in words.
    pub(crate) message: Option<String>,
    /// True while the system's file window is open.
    pub(crate) is_choosing: bool,
    /// False until it was drawn once.
    pub(crate) is_drawn: bool,
}

/// The box that opens another home: by the system's file window, or by a typed path, which needs no
/// other program.
pub(crate) fn open_box_ui(ui: &Ui, view: &View<'_>, open: &OpenBox, out: &mut Vec<Command>) {
    let frame = Frame::window(ui.style()).inner_margin(egui::Margin::same(24));
    let modal = Modal::new(egui::Id::unique("open-box")).frame(frame).show(ui.ctx(), |ui| {
        ui.set_width(460.0_f32.min(ui.ctx().content_rect().width() - 60.0));
        ui.label(strong(view.text("open-title"), size::HEADING));
        ui.label(view.text("open-hint"));
        ui.add_space(GAP);
        if button(ui, &view.text("choose-file")).clicked() {
            out.push(Command::ChooseFile);
        }
        if button(ui, &view.text("start-new")).clicked() {
            out.push(Command::Start(starting::Command::New));
        }
        if open.is_choosing {
            ui.label(soft(ui, view.text("choosing")));
        }
        ui.add_space(GAP);
        let label = ui.label(view.text("path"));
        let mut path = open.path.clone();
        let typed = ui.add(
            TextEdit::singleline(&mut path)
                .id_salt("path")
                .desired_width(f32::INFINITY)
                .min_size(vec2(TOUCH, TOUCH))
                .align(egui::Align2::LEFT_CENTER),
        );
        let typed = typed.labelled_by(label.id);
        if !open.is_drawn {
            typed.request_focus();
        }
        if typed.changed() {
            out.push(Command::Path(path.clone()));
        }
        let entered = typed.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
        if let Some(message) = &open.message {
            ui.label(strong(message.as_str(), size::BODY));
        }
        ui.add_space(GAP);
        ui.horizontal_wrapped(|ui| {
            let pressed = main_button(ui, &view.text("open")).clicked();
            if (pressed || entered) && !path.trim().is_empty() {
                out.push(Command::OpenHome(PathBuf::from(path.trim())));
            }
            if button(ui, &view.text("cancel")).clicked() {
                out.push(Command::OpenBox(false));
            }
        });
    });
    if modal.should_close() {
        out.push(Command::OpenBox(false));
    }
}
