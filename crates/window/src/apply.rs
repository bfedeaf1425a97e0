//! What a press of a button does. The one place where anything changes.

use std::path::Path;
use std::sync::mpsc::TryRecvError;

use egui::Ui;
use quarterturn_guidance::{Answer, Catalogue, Stand, fill, way};
use quarterturn_home::{CannotEdit, Drill, Edit, Learnt, Lesson};

use crate::app::{App, Choosing};
use crate::ask::{Asked, Command, Page};
use crate::chrome::OpenBox;
use crate::opening::{NotOpened, Opening};
use crate::practice::{self, Found, Practice, Running};
use crate::session::Session;
use crate::settings::{Theme, ZOOMS};
use crate::{caring, map, printing, search, spots, starting};

impl App {
    /// Does what was pressed.
    pub(crate) fn apply(&mut self, ctx: &egui::Context, command: Command) {
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
            Command::OpenHome(path) => self.open_any(ctx, &path),
            Command::Theme(theme) => {
                self.settings.theme = Some(Theme::from(theme));
                ctx.set_theme(theme);
            }
            Command::Zoom(zoom) => ctx.set_zoom_factor(zoom),
            Command::Motion(motion) => self.settings.motion = motion,
            Command::Speak(tag) => self.speak(ctx, tag),
            Command::Open(page) => self.turn_to(page),
            Command::Leave => self.leave(),
            Command::Practise => {
                self.turn_to(Page::Practice);
                let from = self.history.home().usual_space.clone();
                self.practice = Some(Practice::Ready { from, nothing: false });
            }
            Command::PractiseFrom(space) => {
                self.practice = Some(Practice::Ready { from: Some(space), nothing: false });
            }
            Command::StartDrill => self.start_drill(ctx),
            Command::Found { component, walked_back } => self.found(ctx, component, walked_back),
            Command::Restored(at) => {
                let restored = &mut self.session.restored;
                match restored.iter().position(|done| *done == at) {
                    Some(place) => {
                        restored.remove(place);
                    }
                    None => restored.push(at),
                }
            }
            Command::Learn(device, lesson) => self.learn(&device, lesson),
            Command::Unlearn(device) => self.unlearn(&device),
            Command::Relabel(relabel) => self.session.relabel = relabel,
            Command::Note(note) => {
                self.session.note = note;
                self.tell();
            }
            Command::RemoveEntry(at) => {
                if at < self.log.entries.len() {
                    self.log.entries.remove(at);
                    self.session.entry = None;
                    self.keeping.log(&self.log);
                }
            }
            Command::PrintLog => self.print_log(ctx),
            Command::Map(command) => map::apply(self, ctx, command),
            Command::Papers(command) => printing::apply(self, ctx, command),
            Command::Care(command) => caring::apply(self, ctx, command),
            Command::Start(command) => starting::apply(self, ctx, command),
            Command::Undo => self.undo(),
            Command::Redo => self.redo(),
            Command::PickHit(hit) => {
                self.ask(Command::PickTrouble(hit.trouble));
                if let Some(spot) = hit.spot {
                    self.ask(Command::PickSpot(spot));
                }
            }
            command => self.ask(command),
        }
    }

    /// Does what is about the question, and answers it anew.
    fn ask(&mut self, command: Command) {
        let before = (self.asked.trouble, self.asked.at.clone());
        let is_search = matches!(command, Command::Search(_));
        // Where there was nothing to choose from, there is nothing to go back to.
        let skips = command == Command::Back && self.rows.len() == 1;
        let mut is_new = self.asked.apply(command);
        if skips && self.asked.trouble.is_some() {
            is_new |= self.asked.apply(Command::Back);
        }
        if is_search && self.asked.trouble.is_none() {
            self.hits = search::hits(self.history.home(), &self.words, &self.asked.search);
        }
        if is_new {
            if self.asked.trouble != before.0 {
                self.hits.clear();
                self.list_spots();
            }
            if (self.asked.trouble, &self.asked.at) != (before.0, &before.1) {
                self.turned += 1;
                self.is_new_page = true;
                self.session = Session::default();
                self.message = None;
            }
            self.answer = self.answered();
        }
        self.way = self.way_to_goal();
        self.tell();
    }

    pub(crate) fn answered(&self) -> Option<Answer> {
        let home = self.history.home();
        let question = self.asked.question()?;
        Some(quarterturn_guidance::answer_on(home, &question, &self.words, self.today))
    }

    /// The way from where the person is taken to be to where the step sends them.
    fn way_to_goal(&self) -> Option<quarterturn_guidance::Way> {
        let home = self.history.home();
        let goal = self.asked.goal(self.answer.as_ref()?)?;
        let here = self.asked.stands_at(home)?;
        way(home, Stand::Point { level: here.level, x: here.x, y: here.y }, &goal)
    }

    /// Everything that follows from the home is worked out anew.
    pub(crate) fn home_changed(&mut self) {
        self.keeping.home(self.history.home());
        if !self.history.home().components.is_empty() {
            self.not_empty_any_more();
        }
        self.rows = self.spots();
        self.answer = self.answered();
        self.way = self.way_to_goal();
    }

    /// That the file was empty is told no more: something is being put into it.
    pub(crate) fn not_empty_any_more(&mut self) {
        self.opening.problems.retain(|problem| problem.key != "no-components");
    }

    /// Changes the home. What cannot be changed so stays as it was, and is told.
    pub(crate) fn edit(&mut self, edit: Edit) -> bool {
        let applied = self.history.apply(edit);
        self.edited(applied)
    }

    fn edited(&mut self, applied: Result<(), CannotEdit>) -> bool {
        match applied {
            Ok(()) => {
                self.message = None;
                self.home_changed();
                true
            }
            Err(error) => {
                self.message = Some(self.words.cannot_edit(&error, self.history.home()));
                false
            }
        }
    }

    /// Changes the home as part of a gesture: one undo takes back all of it.
    pub(crate) fn edit_within(&mut self, gesture: &str, edit: Edit) -> bool {
        let applied = self.history.apply_within(gesture, edit);
        self.edited(applied)
    }

    fn undo(&mut self) {
        if self.history.undo() {
            self.home_changed();
        }
    }

    fn redo(&mut self) {
        if self.history.redo() {
            self.home_changed();
        }
    }

    /// Turns to another page; what was asked stays.
    pub(crate) fn turn_to(&mut self, page: Page) {
        self.page = page;
        self.turned += 1;
        self.is_new_page = true;
        self.message = None;
    }

    /// Leaves a page: practice ends, and a trouble that is over makes room for the next.
    fn leave(&mut self) {
        let was_help = self.page == Page::Help;
        let was_practice = self.practice.take().is_some();
        self.turn_to(Page::Help);
        if was_help || was_practice {
            self.asked = Asked::default();
            self.answer = None;
            self.way = None;
            self.rows.clear();
            self.session = Session::default();
        }
    }

    fn start_drill(&mut self, ctx: &egui::Context) {
        let Some(Practice::Ready { from, .. }) = &self.practice else { return };
        let from = from.clone();
        self.seed = self.seed.wrapping_add(1);
        let home = self.history.home();
        let found = practice::task(home, &self.words, self.today, from.as_deref(), self.seed);
        let Some((trouble, spot)) = found else {
            self.practice = Some(Practice::Ready { from, nothing: true });
            return;
        };
        self.page = Page::Help;
        self.practice =
            Some(Practice::Running(Running { started: ctx.input(|i| i.time), from: from.clone() }));
        self.ask(Command::PickTrouble(trouble));
        self.ask(Command::PickSpot(spot));
        if let Some(from) = from {
            self.ask(Command::StandIn(from));
        }
    }

    fn found(&mut self, ctx: &egui::Context, component: String, walked_back: bool) {
        let Some(Practice::Running(running)) = &self.practice else { return };
        let clock = ctx.input(|i| i.time) - running.started;
        let from = running.from.clone();
        let steps = self.answer.iter().flat_map(|answer| &answer.steps);
        let estimate = steps
            .filter(|step| step.component.as_ref() == Some(&component))
            .find_map(|step| step.seconds);
        let walk = self.way.as_ref().map(practice::walk_seconds);
        let seconds = practice::reached(clock, walk.filter(|_| walked_back));
        if let Some(on) = self.today {
            let mut drill = Drill::new(&component, from.as_deref(), seconds.round(), on);
            drill.found_only = true;
            self.edit(Edit::AddDrill(Box::new(drill)));
        }
        self.practice = Some(Practice::Found(Found { component, seconds, estimate, from }));
        self.turn_to(Page::Practice);
    }

    /// Makes a paper of the log.
    fn print_log(&mut self, ctx: &egui::Context) {
        self.turn_to(Page::Papers);
        printing::apply(self, ctx, printing::Command::Make(printing::State::at_log()));
    }

    fn learn(&mut self, device: &str, lesson: Lesson) {
        let Some(today) = self.today else {
            self.message = Some(self.words.text("window-no-day"));
            return;
        };
        let learnt = Learnt::new(self.history.home(), device, lesson);
        self.unlearn_quietly(device, &learnt.lesson);
        if self.edit(learnt.edit(today)) {
            self.session.relabel = None;
            self.session.learnt.push(learnt);
            self.tell();
        }
    }

    /// Of one device one state is learnt: another replaces it.
    fn unlearn_quietly(&mut self, device: &str, lesson: &Lesson) {
        let same = std::mem::discriminant(lesson);
        self.session
            .learnt
            .retain(|l| l.device != device || std::mem::discriminant(&l.lesson) != same);
    }

    /// Takes back what was learnt about a device: what the map said of it before holds again.
    fn unlearn(&mut self, device: &str) {
        self.session.learnt.retain(|learnt| learnt.device != device);
        let Some(before) = self.opening.home.component(device).cloned() else { return };
        if self.edit(Edit::PutComponent(Box::new(before))) {
            self.tell();
        }
    }

    /// Writes to the log what happened so far. Practice is not written there.
    fn tell(&mut self) {
        let (Some(answer), Some(today)) = (&self.answer, self.today) else { return };
        if self.practice.is_some() || !self.session.is_worth_telling(&self.asked) {
            return;
        }
        if self.session.at_time.is_none() {
            self.session.at_time = crate::run::time_of_day();
        }
        let home = self.history.home();
        let entry = self.session.entry(home, &self.asked, answer, &self.words, today);
        let Some(entry) = entry else { return };
        match self.session.entry.and_then(|at| self.log.entries.get_mut(at)) {
            Some(written) if *written == entry => return,
            Some(written) => *written = entry,
            None => {
                self.session.entry = Some(self.log.entries.len());
                self.log.entries.push(entry);
            }
        }
        self.keeping.log(&self.log);
    }

    /// Takes what saving has to say.
    pub(crate) fn take_kept(&mut self) {
        if let Some(message) = self.keeping.news(&self.words) {
            self.message = Some(message);
        }
        starting::take_conflict(self);
    }

    /// Keeps how the window is liked now.
    pub(crate) fn remember(&mut self, ctx: &egui::Context) {
        let zoom = ctx.zoom_factor().clamp(*ZOOMS.start(), *ZOOMS.end());
        self.settings.zoom = ((zoom - 1.0).abs() > 1e-3).then_some(zoom);
        let size = ctx.input(|i| i.viewport().inner_rect.map(|rect| rect.size()));
        if let Some(size) = size {
            // What the user sees as the same window has other points at another zoom.
            self.settings.size = Some((size.x * zoom, size.y * zoom));
        }
        self.settings.last_home.clone_from(&self.opening.folder);
    }

    /// Says everything in another language. What was asked and done stays.
    fn speak(&mut self, ctx: &egui::Context, tag: &str) {
        self.words = Catalogue::in_language(tag);
        self.is_language_chosen = true;
        self.settings.language = Some(tag.to_owned());
        ctx.send_viewport_cmd(egui::ViewportCommand::Title(self.words.text("window-title")));
        self.rows = self.spots();
        self.hits = search::hits(self.history.home(), &self.words, &self.asked.search);
        let now = self.answered();
        if let (Some(before), Some(now)) = (&self.answer, &now) {
            self.asked.retell(before, now);
        }
        self.answer = now;
    }

    pub(crate) fn spots(&self) -> Vec<spots::Row> {
        let home = self.history.home();
        self.asked.trouble.map_or_else(Vec::new, |trouble| spots::rows(home, trouble, &self.words))
    }

    /// Lists the spots for the trouble, and takes the only one if there is only one.
    fn list_spots(&mut self) {
        self.rows = self.spots();
        if let [only] = self.rows.as_slice() {
            self.asked.apply(Command::PickSpot(only.spot.clone()));
        }
    }

    /// Opens a home, or asks where to unpack it if it is one zip.
    fn open_any(&mut self, ctx: &egui::Context, path: &Path) {
        if path.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("zip")) {
            starting::apply(self, ctx, starting::Command::Unzip(path.to_owned()));
        } else {
            self.open(path);
        }
    }

    pub(crate) fn open(&mut self, path: &Path) {
        // It may be the same home: what is not on disk yet comes first.
        self.keeping.finish();
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
                    settings: std::mem::take(&mut self.settings),
                    today: self.today,
                    seed: self.seed,
                    turned: self.turned + 1,
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
    pub(crate) fn take_chosen(&mut self, ui: &Ui) {
        let dropped = ui.input(|i| i.raw.dropped_files.first().map(|f| f.path().to_owned()));
        if let Some(path) = dropped {
            if !map::plans::is_picture(&path) {
                self.open_any(ui.ctx(), &path);
            } else if self.folder().is_some() {
                if !map::take_photo(self, ui.ctx(), &path) {
                    map::plans::take_in(self, ui.ctx(), &path);
                }
            } else {
                // There is no folder to keep it in: it is the plan of a home to be begun.
                starting::apply(self, ui.ctx(), starting::Command::NewFrom(path));
            }
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
            self.open_any(ui.ctx(), &path);
        }
    }
}
