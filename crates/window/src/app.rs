//! The window's contents: which page is shown, and what a press of a button does.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError};

use egui::{CentralPanel, Frame, Key, Panel, ScrollArea, Ui, vec2};
use quarterturn_guidance::{Answer, Catalogue, fill};
use quarterturn_home::Date;

use crate::ask::{Asked, Command};
use crate::chrome::{OpenBox, bar_ui, open_box_ui, problems_ui};
use crate::opening::{NotOpened, Opening};
use crate::pictures::Pictures;
use crate::spots::Row;
use crate::tokens::{self, GAP, ONE_COLUMN, PART, PLAN_IN_COLUMN, Palette};
use crate::view::View;
use crate::{answer, fonts, plan, spots, troubles};

/// What was last asked for with [`Command::ChooseFile`], and when.
#[derive(Debug)]
struct Choosing {
    chosen: Receiver<Option<PathBuf>>,
    since: f64,
}

/// The window's contents. Needs no display: everything is drawn into the `Ui` it is given.
#[derive(Debug)]
pub struct App {
    opening: Opening,
    words: Catalogue,
    today: Option<Date>,
    asked: Asked,
    answer: Option<Answer>,
    rows: Vec<Row>,
    pictures: Pictures,
    problems_open: bool,
    open_box: Option<OpenBox>,
    choosing: Option<Choosing>,
    is_dressed: bool,
    /// Counts the pages that were turned to: each begins at its top.
    turned: u64,
    /// True until the first frame of a page is drawn.
    is_new_page: bool,
    /// True if someone chose the language; another home does not change it then.
    is_language_chosen: bool,
}

impl App {
    /// The window on a home, at its first page.
    #[must_use]
    pub fn new(opening: Opening, catalogue: Catalogue) -> Self {
        let own = opening.home.language.as_deref().unwrap_or_default();
        Self {
            is_language_chosen: catalogue.language() != Catalogue::in_language(own).language(),
            pictures: Pictures::new(opening.source.clone()),
            opening,
            words: catalogue,
            today: None,
            asked: Asked::default(),
            answer: None,
            rows: Vec::new(),
            problems_open: false,
            open_box: None,
            choosing: None,
            is_dressed: false,
            turned: 0,
            is_new_page: true,
        }
    }

    /// The window on a day: what was tried long ago is trusted less.
    #[must_use]
    pub fn on_day(mut self, today: Option<Date>) -> Self {
        self.today = today;
        self
    }

    /// The folder of the home that is shown; `None` for the one that is built in.
    #[must_use]
    pub fn folder(&self) -> Option<&Path> {
        self.opening.folder.as_deref()
    }

    /// The answer that is shown.
    #[must_use]
    pub fn answer(&self) -> Option<&Answer> {
        self.answer.as_ref()
    }

    /// Draws everything, and does what was pressed.
    pub fn ui(&mut self, ui: &mut Ui) {
        if !self.is_dressed {
            dress(ui.ctx());
            self.is_dressed = true;
            // Fonts take effect with the next pass, and this one has none of them.
            ui.ctx().request_discard("fonts");
            return;
        }
        self.take_chosen(ui);
        // Asked for now, so that the plans are there when they are wanted.
        for plan in self.opening.home.levels.iter().filter_map(|level| level.plan.as_ref()) {
            self.pictures.get(ui.ctx(), Some(&plan.picture));
        }
        let mut commands = Vec::new();
        self.keys(ui, &mut commands);
        self.pages(ui, &mut commands);
        self.is_new_page = false;
        if let Some(open_box) = &mut self.open_box {
            open_box.is_drawn = true;
        }
        for command in commands {
            self.apply(ui.ctx(), command);
        }
    }

    /// Esc goes back.
    fn keys(&self, ui: &Ui, out: &mut Vec<Command>) {
        let is_free = self.open_box.is_none() && !egui::Popup::is_any_open(ui.ctx());
        if is_free && ui.input(|i| i.key_pressed(Key::Escape)) {
            out.push(Command::Back);
        }
    }

    fn pages(&mut self, ui: &mut Ui, out: &mut Vec<Command>) {
        let view = View {
            home: &self.opening.home,
            problems: &self.opening.problems,
            words: &self.words,
            asked: &self.asked,
            answer: self.answer.as_ref(),
            rows: &self.rows,
            problems_open: self.problems_open,
            is_new_page: self.is_new_page,
        };
        let turned = self.turned;
        let palette = Palette::of(ui);
        let part = Frame::new().fill(palette.ground).inner_margin(PART);
        let is_narrow = ui.available_width() < ONE_COLUMN;
        let bar = Frame::new().fill(palette.card).inner_margin(egui::Margin::symmetric(16, 6));
        Panel::top("bar").frame(bar).resizable(false).show(ui, |ui| {
            bar_ui(ui, &view, out);
            problems_ui(ui, &view, out);
        });
        let leaves = self.asked.trouble.is_some_and(|t| t.is_leave_first());
        if view.asked.trouble.is_none() {
            CentralPanel::default().frame(part).show(ui, |ui| {
                page(ui, turned, |ui| troubles::troubles_ui(ui, &view, out));
            });
        } else if let (true, Some(answer)) = (leaves, view.answer) {
            CentralPanel::default().frame(part).show(ui, |ui| {
                page(ui, turned, |ui| answer::leave_ui(ui, &view, answer, out));
            });
        } else if is_narrow {
            let pictures = &mut self.pictures;
            CentralPanel::default().frame(part).show(ui, |ui| {
                page(ui, turned, |ui| match view.answer {
                    Some(answer) => {
                        answer::first_ui(ui, &view, answer, out);
                        plan_in_column(ui, &view, pictures, out);
                        answer::rest_ui(ui, &view, answer, out);
                    }
                    None => {
                        answer::asked_ui(ui, &view, out);
                        plan_in_column(ui, &view, pictures, out);
                        spots::spots_ui(ui, &view, out);
                    }
                });
            });
        } else {
            let width = (ui.available_width() * 0.48).clamp(480.0, 720.0);
            Panel::left("column").frame(part).resizable(false).exact_size(width).show(ui, |ui| {
                page(ui, turned, |ui| column_ui(ui, &view, out));
            });
            let pictures = &mut self.pictures;
            CentralPanel::default().frame(part).show(ui, |ui| {
                plan::plan_ui(ui, &view, pictures, out);
            });
        }
        if let Some(open_box) = &self.open_box {
            open_box_ui(ui, &view, open_box, out);
        }
    }

    /// The one place where anything changes.
    fn apply(&mut self, ctx: &egui::Context, command: Command) {
        match command {
            Command::FoldProblems => self.problems_open = !self.problems_open,
            Command::OpenBox(true) => self.open_box = Some(OpenBox::default()),
            Command::OpenBox(false) => self.open_box = None,
            Command::Path(path) => {
                if let Some(open_box) = &mut self.open_box {
                    open_box.path = path;
                }
            }
            Command::ChooseFile => self.choose(ctx),
            Command::OpenHome(path) => self.open(&path),
            Command::Theme(theme) => ctx.set_theme(theme),
            Command::Zoom(zoom) => ctx.set_zoom_factor(zoom),
            Command::Speak(tag) => self.speak(ctx, tag),
            command => {
                let before = (self.asked.trouble, self.asked.at.clone());
                // Where there was nothing to choose from, there is nothing to go back to.
                let skips = command == Command::Back && self.rows.len() == 1;
                let mut is_new = self.asked.apply(command);
                if skips && self.asked.trouble.is_some() {
                    is_new |= self.asked.apply(Command::Back);
                }
                if is_new {
                    if self.asked.trouble != before.0 {
                        self.list_spots();
                    }
                    if (self.asked.trouble, &self.asked.at) != (before.0, &before.1) {
                        self.turned += 1;
                        self.is_new_page = true;
                    }
                    self.answer = self.answered();
                }
            }
        }
    }

    fn answered(&self) -> Option<Answer> {
        let home = &self.opening.home;
        let question = self.asked.question()?;
        Some(quarterturn_guidance::answer_on(home, &question, &self.words, self.today))
    }

    /// Says everything in another language. What was asked and done stays.
    fn speak(&mut self, ctx: &egui::Context, tag: &str) {
        self.words = Catalogue::in_language(tag);
        self.is_language_chosen = true;
        ctx.send_viewport_cmd(egui::ViewportCommand::Title(self.words.text("window-title")));
        self.rows = self.spots();
        let now = self.answered();
        if let (Some(before), Some(now)) = (&self.answer, &now) {
            self.asked.retell(before, now);
        }
        self.answer = now;
    }

    fn spots(&self) -> Vec<Row> {
        let home = &self.opening.home;
        self.asked.trouble.map_or_else(Vec::new, |trouble| spots::rows(home, trouble, &self.words))
    }

    /// Lists the spots for the trouble, and takes the only one if there is only one.
    fn list_spots(&mut self) {
        self.rows = self.spots();
        if let [only] = self.rows.as_slice() {
            self.asked.apply(Command::PickSpot(only.spot.clone()));
        }
    }

    fn open(&mut self, path: &Path) {
        match Opening::read(path) {
            Ok(opening) => {
                let tag = if self.is_language_chosen {
                    self.words.language().to_owned()
                } else {
                    opening.home.language.clone().unwrap_or_default()
                };
                *self = Self {
                    is_dressed: true,
                    is_language_chosen: self.is_language_chosen,
                    today: self.today,
                    ..Self::new(opening, Catalogue::in_language(&tag))
                };
            }
            Err(error) => {
                let message = match error {
                    NotOpened::Unread(path, error) => self.words.fill(
                        "window-unread",
                        &[
                            fill("path", &path.display().to_string()),
                            fill("why", &error.to_string()),
                        ],
                    ),
                    NotOpened::NoHome(path, problems) => {
                        let first = problems.first().map(|problem| self.words.problem(problem));
                        self.words.fill(
                            "window-no-home",
                            &[
                                fill("path", &path.display().to_string()),
                                fill("why", &first.unwrap_or_default()),
                            ],
                        )
                    }
                };
                let open_box = self.open_box.get_or_insert_default();
                open_box.path = path.display().to_string();
                open_box.message = Some(message);
            }
        }
    }

    fn choose(&mut self, ctx: &egui::Context) {
        if self.choosing.is_some() {
            return;
        }
        let chosen = crate::opening::choose(ctx, &self.words.text("window-file-filter"));
        self.choosing = Some(Choosing { chosen, since: ctx.input(|i| i.time) });
        if let Some(open_box) = &mut self.open_box {
            open_box.is_choosing = true;
            open_box.message = None;
        }
    }

    /// Takes what the system's file window gave, and any file dropped on the window.
    fn take_chosen(&mut self, ui: &Ui) {
        let dropped = ui.input(|i| i.raw.dropped_files.first().map(|f| f.path().to_owned()));
        if let Some(path) = dropped {
            self.open(&path);
            return;
        }
        let Some(choosing) = &self.choosing else { return };
        let chosen = match choosing.chosen.try_recv() {
            Err(TryRecvError::Empty) => return,
            Err(TryRecvError::Disconnected) => None,
            Ok(chosen) => chosen,
        };
        let waited = ui.input(|i| i.time) - choosing.since;
        self.choosing = None;
        if let Some(open_box) = &mut self.open_box {
            open_box.is_choosing = false;
            // No person closes a window this fast, and the service that shows it gives up after 25 s.
            if chosen.is_none() && !(0.5..=24.0).contains(&waited) {
                open_box.message = Some(self.words.text("window-perhaps-no-dialog"));
            }
        }
        if let Some(path) = chosen {
            self.open(&path);
        }
    }
}

/// The page beside the plan.
fn column_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    match view.answer {
        Some(answer) => {
            answer::first_ui(ui, view, answer, out);
            answer::rest_ui(ui, view, answer, out);
        }
        None => {
            answer::asked_ui(ui, view, out);
            spots::spots_ui(ui, view, out);
        }
    }
}

fn plan_in_column(ui: &mut Ui, view: &View<'_>, pictures: &mut Pictures, out: &mut Vec<Command>) {
    ui.add_space(GAP);
    let size = vec2(ui.available_width(), PLAN_IN_COLUMN);
    ui.allocate_ui(size, |ui| {
        ui.set_max_height(PLAN_IN_COLUMN);
        plan::plan_ui(ui, view, pictures, out);
    });
    ui.add_space(GAP);
}

/// A page scrolls on its own, and begins at its top.
fn page(ui: &mut Ui, turned: u64, add: impl FnOnce(&mut Ui)) {
    ScrollArea::vertical().id_salt(("page", turned)).auto_shrink(false).show(ui, |ui| {
        // Room for the rings around what has the focus.
        Frame::new().inner_margin(egui::Margin::symmetric(4, 2)).show(ui, add);
    });
}

/// Gives a context our fonts and colours.
pub(crate) fn dress(ctx: &egui::Context) {
    ctx.set_fonts(fonts::definitions());
    // Where the system does not say: paper is lighter than night, and so are most rooms.
    ctx.options_mut(|options| options.fallback_theme = egui::Theme::Light);
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        ctx.style_mut_of(theme, |style| tokens::dress(style, theme));
    }
}
