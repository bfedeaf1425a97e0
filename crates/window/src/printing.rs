//! Papers: seen as they will be printed, saved, opened in the system's own viewer.
//!
//! They are made on a thread of their own; the window shows how far that is, and can call it off.

mod making;

use std::path::PathBuf;

use egui::{ComboBox, TextEdit, Ui, vec2};
use quarterturn_guidance::{count, fill};
use quarterturn_papers::{Paper, Sheet};

use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, card, chosen_button, line, main_button, soft, strong};
use crate::tokens::{GAP, ONE_COLUMN, Palette, TOUCH, size};
use crate::view::View;
use making::{Made, Making};

/// What can be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Item {
    /// A sheet, as PDF.
    Sheet(Sheet),
    /// The page for a phone.
    Phone,
    /// Upkeep for a calendar.
    Calendar,
    /// The parties for an address book.
    Cards,
}

impl Item {
    /// Everything, in the order it is shown: what is needed when the power is out comes first.
    const ALL: [Self; 9] = [
        Self::Sheet(Sheet::Fridge),
        Self::Phone,
        Self::Sheet(Sheet::Panels),
        Self::Sheet(Sheet::Valves),
        Self::Sheet(Sheet::Tags),
        Self::Sheet(Sheet::Pack),
        Self::Sheet(Sheet::Log),
        Self::Calendar,
        Self::Cards,
    ];

    /// The key of its name in the catalogue.
    fn key(self) -> &'static str {
        match self {
            Self::Sheet(sheet) => sheet.title_key(),
            Self::Phone => "window-papers-phone",
            Self::Calendar => "window-papers-calendar",
            Self::Cards => "window-papers-cards",
        }
    }

    /// The key of what it is for.
    fn hint_key(self) -> &'static str {
        match self {
            Self::Sheet(Sheet::Fridge) => "window-papers-fridge-hint",
            Self::Sheet(Sheet::Panels) => "window-papers-panels-hint",
            Self::Sheet(Sheet::Valves) => "window-papers-valves-hint",
            Self::Sheet(Sheet::Tags) => "window-papers-tags-hint",
            Self::Sheet(Sheet::Pack) => "window-papers-pack-hint",
            Self::Sheet(Sheet::Log) => "window-papers-log-hint",
            Self::Phone => "window-papers-phone-hint",
            Self::Calendar => "window-papers-calendar-hint",
            Self::Cards => "window-papers-cards-hint",
        }
    }

    /// The name of its file.
    pub(crate) fn file_name(self) -> String {
        match self {
            Self::Sheet(sheet) => format!("{}.pdf", sheet.file_stem()),
            Self::Phone => "phone.html".to_owned(),
            Self::Calendar => "upkeep.ics".to_owned(),
            Self::Cards => "contacts.vcf".to_owned(),
        }
    }
}

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    item: Option<Item>,
    /// The size that was chosen; `None` for the home's own.
    paper: Option<Paper>,
    making: Option<Making>,
    made: Option<Made>,
    /// The page that is shown, from 0.
    page: usize,
    /// Where it is to be saved, as typed.
    path: String,
    /// What became of it, in words.
    message: Option<String>,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Make this.
    Make(Item),
    /// On paper of this size.
    Paper(Paper),
    /// Call it off.
    Stop,
    /// Show this page.
    Page(usize),
    /// The path where it is to be saved.
    Path(String),
    /// Let the system's file window choose where.
    Choose,
    /// Save it at the path.
    Save,
    /// Make everything and save it in the folder at the path.
    SaveAll,
    /// Open it in the system's viewer, from where it is printed.
    View,
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: Command) {
    match command {
        Command::Make(item) => make(app, ctx, item),
        Command::Paper(paper) => {
            app.papers.paper = Some(paper);
            if let Some(item) = app.papers.item {
                make(app, ctx, item);
            }
        }
        Command::Stop => {
            if let Some(making) = app.papers.making.take() {
                making.stop();
            }
            app.papers.message = Some(app.words.text("window-papers-stopped"));
        }
        Command::Page(page) => app.papers.page = page,
        Command::Path(path) => app.papers.path = path,
        Command::Choose => {
            let name = app.papers.item.map(Item::file_name).unwrap_or_default();
            app.papers.start(Making::choose(ctx, name));
        }
        Command::Save => {
            let path = PathBuf::from(app.papers.path.trim());
            if let Some(made) = &app.papers.made {
                let making = Making::save(ctx, &app.words, path, made.bytes.clone());
                app.papers.start(making);
            }
        }
        Command::SaveAll => {
            let folder = PathBuf::from(app.papers.path.trim());
            if let Some(order) = making::Ordered::of(app) {
                app.papers.start(Making::save_all(ctx, order, &Item::ALL, folder));
            }
        }
        Command::View => {
            let name = app.papers.item.map(Item::file_name).unwrap_or_default();
            if let Some(made) = &app.papers.made {
                let making = Making::view(ctx, &app.words, &name, made.bytes.clone());
                app.papers.start(making);
            }
        }
    }
}

fn make(app: &mut App, ctx: &egui::Context, item: Item) {
    app.papers.item = Some(item);
    app.papers.made = None;
    app.papers.page = 0;
    match making::Ordered::of(app) {
        Some(order) => app.papers.start(Making::make(ctx, order, item)),
        None => app.papers.message = Some(app.words.text("window-no-day")),
    }
}

impl State {
    fn start(&mut self, making: Making) {
        if let Some(before) = self.making.replace(making) {
            before.stop();
        }
        self.message = None;
    }

    /// Takes what the thread has to say.
    pub(crate) fn poll(&mut self, ctx: &egui::Context) {
        let Some(making) = &self.making else { return };
        let Some(news) = making.news(ctx) else { return };
        match news {
            making::News::Made(made) => self.made = Some(made),
            making::News::Said(said) => self.message = said,
            making::News::Chosen(path) => self.path = path,
        }
        self.making = None;
    }

    /// Opens at the log.
    pub(crate) fn at_log() -> Item {
        Item::Sheet(Sheet::Log)
    }
}

/// The page.
pub(crate) fn page_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    ui.horizontal_wrapped(|ui| {
        if button(ui, &view.text("back")).clicked() {
            out.push(Press::Leave);
        }
        ui.label(strong(view.text("open-papers"), size::HEADING));
    });
    ui.add(egui::Label::new(soft(ui, view.text("papers-hint"))).wrap());
    ui.add_space(GAP);
    if ui.available_width() < ONE_COLUMN {
        choice_ui(ui, view, state, out);
        preview_ui(ui, view, state, out);
        return;
    }
    ui.horizontal_top(|ui| {
        let width = ui.available_width();
        ui.vertical(|ui| {
            ui.set_width(width * 0.36);
            choice_ui(ui, view, state, out);
        });
        ui.add_space(GAP * 2.0);
        ui.vertical(|ui| preview_ui(ui, view, state, out));
    });
}

/// Which paper, and of what size.
fn choice_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    ui.horizontal_wrapped(|ui| {
        let paper = state.paper.unwrap_or_else(|| Paper::of_home(view.home));
        for (size, word) in Paper::ALL {
            let text = view.text(&format!("papers-{word}"));
            if chosen_button(ui, &text, size == paper).clicked() {
                out.push(Press::Papers(Command::Paper(size)));
            }
        }
    });
    for item in Item::ALL {
        let text = view.words.text(item.key());
        if chosen_button(ui, &text, state.item == Some(item)).clicked() {
            out.push(Press::Papers(Command::Make(item)));
        }
        ui.add(egui::Label::new(soft(ui, view.words.text(item.hint_key()))).wrap());
    }
    save_all_ui(ui, view, state, out);
}

/// Everything at once, into a folder.
fn save_all_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    if state.item.is_some() {
        return;
    }
    ui.add_space(GAP);
    path_ui(ui, view, state, "papers-folder", out);
    let is_typed = !state.path.trim().is_empty() && state.making.is_none();
    ui.add_enabled_ui(is_typed, |ui| {
        if button(ui, &view.text("papers-save-all")).clicked() {
            out.push(Press::Papers(Command::SaveAll));
        }
    });
    said_ui(ui, view, state, out);
}

/// How far it is, or what became of it.
fn said_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    if let Some(making) = &state.making {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(strong(making.stage(view.words), size::BODY)).wrap());
            if button(ui, &view.text("papers-stop")).clicked() {
                out.push(Press::Papers(Command::Stop));
            }
        });
    }
    if let Some(message) = &state.message {
        ui.add(egui::Label::new(strong(message.as_str(), size::BODY)).wrap());
    }
}

fn path_ui(ui: &mut Ui, view: &View<'_>, state: &State, key: &str, out: &mut Vec<Press>) {
    let label = ui.label(view.text(key));
    let mut path = state.path.clone();
    let edit = TextEdit::singleline(&mut path)
        .id_salt("papers-path")
        .desired_width(f32::INFINITY)
        .min_size(vec2(TOUCH, TOUCH))
        .align(egui::Align2::LEFT_CENTER);
    if ui.add(edit).labelled_by(label.id).changed() {
        out.push(Press::Papers(Command::Path(path)));
    }
}

/// The pages as they will be printed, and what to do with them.
fn preview_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    let Some(item) = state.item else {
        ui.add(egui::Label::new(view.text("papers-choose")).wrap());
        return;
    };
    said_ui(ui, view, state, out);
    let Some(made) = &state.made else { return };
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("papers-view")).clicked() {
            out.push(Press::Papers(Command::View));
        }
        if button(ui, &view.text("papers-choose-place")).clicked() {
            out.push(Press::Papers(Command::Choose));
        }
    });
    path_ui(ui, view, state, "papers-path", out);
    ui.add_enabled_ui(!state.path.trim().is_empty() && state.making.is_none(), |ui| {
        if button(ui, &view.fill("papers-save", &[fill("file", &item.file_name())])).clicked() {
            out.push(Press::Papers(Command::Save));
        }
    });
    pages_ui(ui, view, state, made, out);
}

fn pages_ui(ui: &mut Ui, view: &View<'_>, state: &State, made: &Made, out: &mut Vec<Press>) {
    let pages = made.pages.len();
    let Some(texture) = made.pages.get(state.page) else {
        ui.add(egui::Label::new(soft(ui, view.text("papers-no-preview"))).wrap());
        return;
    };
    #[expect(clippy::cast_precision_loss, reason = "no paper has so many pages")]
    let number = |n: usize| n as f64;
    let fills = [count("page", number(state.page + 1)), count("all", number(pages))];
    let label = view.words.fill("paper-page", &fills);
    line(ui, |ui| {
        ui.label(strong(label.as_str(), size::BODY));
    });
    if pages > 1 {
        ui.horizontal_wrapped(|ui| {
            ui.add_enabled_ui(state.page > 0, |ui| {
                if button(ui, &view.text("papers-before")).clicked() {
                    out.push(Press::Papers(Command::Page(state.page.saturating_sub(1))));
                }
            });
            ui.add_enabled_ui(state.page + 1 < pages, |ui| {
                if button(ui, &view.text("papers-next")).clicked() {
                    out.push(Press::Papers(Command::Page(state.page + 1)));
                }
            });
            let combo = ComboBox::from_id_salt("papers-page").selected_text(label.as_str());
            let combo = combo.show_ui(ui, |ui| {
                for page in 0..pages {
                    let fills = [count("page", number(page + 1)), count("all", number(pages))];
                    let text = view.words.fill("paper-page", &fills);
                    if ui.selectable_label(page == state.page, text).clicked() {
                        out.push(Press::Papers(Command::Page(page)));
                    }
                }
            });
            combo.response.accessible_name(view.text("papers-which-page"));
        });
    }
    let size = texture.size_vec2();
    let scale = (ui.available_width() / size.x.max(1.0)).min(1.0);
    let (rect, response) = ui.allocate_exact_size(size * scale, egui::Sense::hover());
    response.widget_info(|| {
        egui::WidgetInfo::labeled(egui::accesskit::Role::Image, true, label.as_str())
    });
    let all = egui::Rect::from_min_max(egui::Pos2::ZERO, egui::pos2(1.0, 1.0));
    ui.painter().image(texture.id(), rect, all, egui::Color32::WHITE);
    let edge = Palette::of(ui).edge_stroke();
    ui.painter().rect_stroke(rect, 0.0, edge, egui::StrokeKind::Outside);
}
