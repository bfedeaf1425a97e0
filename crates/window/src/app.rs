//! The window's contents: which page is shown.
//!
//! What a press of a button does stands in `apply.rs`.

use std::path::{Path, PathBuf};
use std::sync::mpsc::Receiver;

use egui::{CentralPanel, Frame, Key, Panel, ScrollArea, Ui, UiBuilder, vec2};
use quarterturn_guidance::{Answer, Catalogue, Way};
use quarterturn_home::{Date, History, Log};

use crate::ask::{Asked, Command, Page, Tab};
use crate::chrome::{OpenBox, bar_ui, open_box_ui, problems_ui};
use crate::keeping::Keeping;
use crate::map::MapState;
use crate::opening::Opening;
use crate::pictures::Pictures;
use crate::practice::{self, Practice};
use crate::search::Hit;
use crate::session::Session;
use crate::settings::Settings;
use crate::spots::Row;
use crate::tokens::{self, GAP, ONE_COLUMN, PART, PLAN_IN_COLUMN, Palette, TOUCH};
use crate::view::View;
use crate::{
    answer, caring, fonts, happened, map, plan, printing, spots, starting, steps, troubles,
};

/// What was last asked for with [`Command::ChooseFile`], and when.
#[derive(Debug)]
pub(crate) struct Choosing {
    pub(crate) chosen: Receiver<Option<PathBuf>>,
    pub(crate) since: f64,
}

/// The window's contents. Needs no display: everything is drawn into the `Ui` it is given.
#[derive(Debug)]
pub struct App {
    pub(crate) opening: Opening,
    /// The home, with what was changed and can be taken back.
    pub(crate) history: History,
    pub(crate) log: Log,
    pub(crate) keeping: Keeping,
    pub(crate) words: Catalogue,
    pub(crate) settings: Settings,
    pub(crate) today: Option<Date>,
    pub(crate) page: Page,
    pub(crate) asked: Asked,
    pub(crate) answer: Option<Answer>,
    pub(crate) way: Option<Way>,
    pub(crate) session: Session,
    pub(crate) practice: Option<Practice>,
    pub(crate) map: MapState,
    pub(crate) papers: printing::State,
    pub(crate) care: caring::State,
    pub(crate) starting: starting::State,
    /// What picks the next thing to practise.
    pub(crate) seed: u64,
    pub(crate) rows: Vec<Row>,
    pub(crate) hits: Vec<Hit>,
    pub(crate) pictures: Pictures,
    pub(crate) problems_open: bool,
    pub(crate) open_box: Option<OpenBox>,
    pub(crate) choosing: Option<Choosing>,
    /// What became of what was last pressed, in words.
    pub(crate) message: Option<String>,
    pub(crate) is_dressed: bool,
    /// Counts the pages that were turned to: each begins at its top.
    pub(crate) turned: u64,
    /// True until the first frame of a page is drawn.
    pub(crate) is_new_page: bool,
    /// True if someone chose the language; another home does not change it then.
    pub(crate) is_language_chosen: bool,
}

impl App {
    /// The window on a home, at its first page.
    #[must_use]
    pub fn new(opening: Opening, catalogue: Catalogue) -> Self {
        let own = opening.home.language.as_deref().unwrap_or_default();
        let (keeping, log) = Keeping::of(&opening);
        let starting = starting::State::of(&keeping, &opening.home);
        Self {
            is_language_chosen: catalogue.language() != Catalogue::in_language(own).language(),
            pictures: Pictures::new(opening.source.clone()),
            history: History::new(opening.home.clone()),
            opening,
            log,
            keeping,
            words: catalogue,
            settings: Settings::default(),
            today: None,
            page: Page::Help,
            asked: Asked::default(),
            answer: None,
            way: None,
            session: Session::default(),
            practice: None,
            map: MapState::default(),
            papers: printing::State::default(),
            care: caring::State::default(),
            starting,
            seed: 0,
            rows: Vec::new(),
            hits: Vec::new(),
            problems_open: false,
            open_box: None,
            choosing: None,
            message: None,
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

    /// The window as someone likes it.
    #[must_use]
    pub fn with_settings(mut self, settings: Settings) -> Self {
        self.is_language_chosen |= settings.language.is_some();
        self.settings = settings;
        self
    }

    /// The window with its own order of things to practise.
    #[must_use]
    pub fn with_seed(mut self, seed: u64) -> Self {
        self.seed = seed;
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

    /// The home as it is now.
    #[must_use]
    pub fn home(&self) -> &quarterturn_home::Home {
        self.history.home()
    }

    /// The log of troubles as it is now.
    #[must_use]
    pub fn log(&self) -> &Log {
        &self.log
    }

    /// How the window is liked now.
    #[must_use]
    pub fn settings(&self) -> &Settings {
        &self.settings
    }

    /// Wakes the window with this when something was written to disk.
    pub fn wake_with(&mut self, wake: std::sync::Arc<dyn Fn() + Send + Sync>) {
        self.keeping.wake_with(wake);
    }

    /// Waits until all that was changed is on disk: before the window closes.
    pub fn finish(&mut self) {
        self.keeping.finish();
    }

    /// Draws everything, and does what was pressed.
    pub fn ui(&mut self, ui: &mut Ui) {
        if !self.is_dressed {
            dress(ui.ctx(), &self.settings);
            self.is_dressed = true;
            // Fonts take effect with the next pass, and this one has none of them.
            ui.ctx().request_discard("fonts");
            return;
        }
        self.take_chosen(ui);
        map::plans::poll(self, ui.ctx());
        starting::poll(self, ui.ctx());
        self.take_kept();
        self.papers.poll(ui.ctx());
        if self.page == Page::Care {
            caring::poll(self);
        }
        map::poll(self, ui.ctx());
        // Asked for now, so that the plans are there when they are wanted.
        for plan in self.history.home().levels.iter().filter_map(|level| level.plan.as_ref()) {
            self.pictures.get(ui.ctx(), Some(&plan.picture));
        }
        let mut commands = Vec::new();
        self.keys(ui, &mut commands);
        self.pages(ui, &mut commands);
        self.is_new_page = false;
        if let Some(open_box) = &mut self.open_box {
            open_box.is_drawn = true;
        }
        self.starting.drawn();
        self.remember(ui.ctx());
        for command in commands {
            self.apply(ui.ctx(), command);
        }
    }

    /// Esc goes back; so does Backspace with Alt, as in a book.
    fn keys(&self, ui: &Ui, out: &mut Vec<Command>) {
        let is_free = self.open_box.is_none()
            && !self.starting.is_open()
            && !egui::Popup::is_any_open(ui.ctx());
        if is_free && ui.input(|i| i.key_pressed(Key::Escape)) {
            out.push(match (self.page, &self.practice) {
                (Page::Help, None) => Command::Back,
                _ => Command::Leave,
            });
        }
        let undo = egui::KeyboardShortcut::new(egui::Modifiers::COMMAND, Key::Z);
        let redo =
            egui::KeyboardShortcut::new(egui::Modifiers::COMMAND | egui::Modifiers::SHIFT, Key::Z);
        // A text box undoes its own letters.
        if !ui.ctx().egui_wants_keyboard_input() {
            if ui.input_mut(|i| i.consume_shortcut(&redo)) {
                out.push(Command::Redo);
            }
            if ui.input_mut(|i| i.consume_shortcut(&undo)) {
                out.push(Command::Undo);
            }
        }
    }

    fn pages(&mut self, ui: &mut Ui, out: &mut Vec<Command>) {
        let drill = match &self.practice {
            Some(Practice::Running(running)) => Some(running),
            Some(Practice::Ready { .. } | Practice::Found(_)) | None => None,
        };
        let undo = self.history.undo_words().map(|words| self.words.undo(words));
        let redo = self.history.redo_words().map(|words| self.words.redo(words));
        let view = View {
            home: self.history.home(),
            problems: &self.opening.problems,
            words: &self.words,
            asked: &self.asked,
            answer: self.answer.as_ref(),
            rows: &self.rows,
            hits: &self.hits,
            way: self.way.as_ref(),
            drill,
            session: &self.session,
            log: &self.log,
            message: self.message.as_deref(),
            undo: undo.as_deref(),
            redo: redo.as_deref(),
            folder: self.opening.folder.as_deref(),
            today: self.today,
            lasts: self.keeping.lasts(),
            motion: self.settings.motion,
            problems_open: self.problems_open,
            is_new_page: self.is_new_page,
        };
        let turned = self.turned;
        let palette = Palette::of(ui);
        let part = Frame::new().fill(palette.ground).inner_margin(PART);
        let bar = Frame::new().fill(palette.card).inner_margin(egui::Margin::symmetric(16, 6));
        Panel::top("bar").frame(bar).resizable(false).show(ui, |ui| {
            bar_ui(ui, &view, out);
            problems_ui(ui, &view, out);
            if let Some(drill) = drill {
                practice::banner_ui(ui, &view, drill, out);
            }
        });
        let alone = |ui: &mut Ui, add: &mut dyn FnMut(&mut Ui)| {
            CentralPanel::default().frame(part).show(ui, |ui| page(ui, turned, |ui| add(ui)));
        };
        match (self.page, &self.practice) {
            (Page::Log, _) => alone(ui, &mut |ui| {
                answer::column_of_text(ui, |ui| happened::log_ui(ui, &view, out));
            }),
            (Page::Map, _) => map::map_ui(ui, &view, &self.map, &mut self.pictures, out),
            (Page::Papers, _) => alone(ui, &mut |ui| {
                printing::page_ui(ui, &view, &self.papers, out);
            }),
            (Page::Care, _) => alone(ui, &mut |ui| {
                caring::page_ui(ui, &view, &self.care, out);
            }),
            (_, Some(practice)) if drill.is_none() => alone(ui, &mut |ui| {
                answer::column_of_text(ui, |ui| practice::practice_ui(ui, &view, practice, out));
            }),
            _ => help_ui(ui, &view, turned, &mut self.pictures, out),
        }
        if let Some(open_box) = &self.open_box {
            open_box_ui(ui, &view, open_box, out);
        }
        starting::boxes_ui(ui, &view, &self.starting, out);
    }
}

/// What is wrong, where, and what to do.
fn help_ui(
    ui: &mut Ui,
    view: &View<'_>,
    turned: u64,
    pictures: &mut Pictures,
    out: &mut Vec<Command>,
) {
    let part = Frame::new().fill(Palette::of(ui).ground).inner_margin(PART);
    let leaves = view.asked.trouble.is_some_and(|t| t.is_leave_first());
    if view.asked.trouble.is_none() {
        CentralPanel::default().frame(part).show(ui, |ui| {
            page(ui, turned, |ui| troubles::troubles_ui(ui, view, out));
        });
    } else if let (true, Some(answer)) = (leaves, view.answer) {
        CentralPanel::default().frame(part).show(ui, |ui| {
            page(ui, turned, |ui| answer::leave_ui(ui, view, answer, out));
        });
    } else if ui.available_width() < ONE_COLUMN {
        CentralPanel::default().frame(part).show(ui, |ui| {
            page(ui, turned, |ui| narrow_ui(ui, view, pictures, out));
        });
    } else {
        let width = (ui.available_width() * 0.48).clamp(480.0, 720.0);
        Panel::left("column").frame(part).resizable(false).exact_size(width).show(ui, |ui| {
            let Some(answer) = view.answer else {
                page(ui, turned, |ui| column_ui(ui, view, pictures, out));
                return;
            };
            let foot = |ui: &mut Ui, out: &mut Vec<Command>| {
                if view.asked.tab == Tab::Now {
                    steps::replies_ui(ui, view, answer, out);
                }
                answer::tabs_ui(ui, view, answer, out);
            };
            over_a_foot(ui, foot, out, |ui, out| {
                page(ui, turned, |ui| column_ui(ui, view, pictures, out));
            });
        });
        CentralPanel::default().frame(part).show(ui, |ui| {
            plan::plan_ui(ui, view, pictures, out);
        });
    }
}

/// A page over what stays in sight at its foot, which is as high as it was in the pass before.
fn over_a_foot(
    ui: &mut Ui,
    foot: impl FnOnce(&mut Ui, &mut Vec<Command>),
    out: &mut Vec<Command>,
    page: impl FnOnce(&mut Ui, &mut Vec<Command>),
) {
    let id = ui.scope_id().with("foot");
    let height = ui.data(|data| data.get_temp::<f32>(id)).unwrap_or(TOUCH);
    let area = ui.available_rect_before_wrap();
    let cut = (area.bottom() - height - GAP).max(area.top());
    ui.scope_builder(UiBuilder::new().max_rect(area.with_max_y(cut)), |ui| page(ui, out));
    let below = area.with_min_y(cut + GAP);
    let used = ui.scope_builder(UiBuilder::new().max_rect(below), |ui| foot(ui, out));
    let used = used.response.rect.height();
    if (used - height).abs() > 0.5 {
        ui.data_mut(|data| data.insert_temp(id, used));
        ui.ctx().request_discard("the foot has another height");
        // A pass is not discarded twice: the next frame puts it right.
        ui.ctx().request_repaint();
    }
}

/// The page beside the plan.
fn column_ui(ui: &mut Ui, view: &View<'_>, pictures: &mut Pictures, out: &mut Vec<Command>) {
    answer::asked_ui(ui, view, out);
    match view.answer {
        Some(answer) => {
            if view.asked.tab == Tab::Now {
                answer::now_ui(ui, view, answer, pictures);
            } else {
                answer::back_to_now_ui(ui, view, answer, out);
            }
            answer::part_ui(ui, view, answer, out);
        }
        None => spots::spots_ui(ui, view, out),
    }
}

/// All in one column: what to do, then where it is, then the rest.
fn narrow_ui(ui: &mut Ui, view: &View<'_>, pictures: &mut Pictures, out: &mut Vec<Command>) {
    answer::asked_ui(ui, view, out);
    match view.answer {
        Some(answer) => {
            if view.asked.tab == Tab::Now {
                answer::now_ui(ui, view, answer, pictures);
            } else {
                answer::back_to_now_ui(ui, view, answer, out);
            }
            if view.asked.tab == Tab::Now {
                steps::replies_ui(ui, view, answer, out);
            }
            ui.add_space(GAP);
            answer::tabs_ui(ui, view, answer, out);
            if view.asked.tab == Tab::Now {
                plan_in_column(ui, view, pictures, out);
            }
            answer::part_ui(ui, view, answer, out);
        }
        None => {
            plan_in_column(ui, view, pictures, out);
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

/// Gives a context our fonts and colours, and what someone chose.
pub(crate) fn dress(ctx: &egui::Context, settings: &Settings) {
    ctx.set_fonts(fonts::definitions());
    // Where the system does not say: paper is lighter than night, and so are most rooms.
    ctx.options_mut(|options| options.fallback_theme = egui::Theme::Light);
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        ctx.style_mut_of(theme, |style| tokens::dress(style, theme));
    }
    if let Some(theme) = settings.theme {
        ctx.set_theme(egui::Theme::from(theme));
    }
    if let Some(zoom) = settings.zoom {
        ctx.set_zoom_factor(zoom);
    }
}
