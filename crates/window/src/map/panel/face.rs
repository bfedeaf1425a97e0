//! The panel as it is: its positions side by side, each a row that is typed in.

use std::sync::Arc;

use egui::text::{CCursor, CCursorRange, LayoutJob};
use egui::{
    Align2, Color32, FontId, Frame, Galley, Key, Margin, Rect, ScrollArea, Sense, Stroke,
    StrokeKind, TextEdit, Ui, Vec2, vec2,
};
use quarterturn_guidance::{count, fill};
use quarterturn_home::Medium;

use super::cells::Cell;
use super::directory::{Command, State};
use super::numbers::Numbering;
use super::positions::{Board, Holds, Row, Wrong};
use crate::controls::{button, card, focus_ring, main_button, soft, strong};
use crate::fonts::bold;
use crate::tokens::{GAP, Palette, TOUCH, size};
use crate::view::View;

/// Narrower than this, the left side of the panel stands over the right.
const SIDE_BY_SIDE: f32 = 600.0;
/// Width of the number of a position.
const NUMBER: f32 = 40.0;
/// Width of its amperes.
const AMPERES: f32 = 48.0;
/// Width of its poles.
const POLES: f32 = 44.0;
/// Width of how much hangs on it.
const ON_IT: f32 = 42.0;

/// The panel in a part of the window of its own, where it scrolls.
pub(super) fn scrolled_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    board: &Board<'_>,
    say: &mut dyn FnMut(Command),
) {
    let id = ("panel-face", &board.panel.id);
    ScrollArea::vertical().id_salt(id).auto_shrink(false).show(ui, |ui| {
        // Room for the rings around what has the focus.
        Frame::new().inner_margin(Margin::symmetric(4, 2)).show(ui, |ui| {
            face_ui(ui, view, state, board, say);
        });
    });
}

/// The panel.
pub(super) fn face_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    board: &Board<'_>,
    say: &mut dyn FnMut(Command),
) {
    ui.add(egui::Label::new(strong(&board.panel.name, size::ACT)).wrap());
    ui.add(egui::Label::new(soft(ui, view.text("panel-hint"))).wrap());
    let mut face = Face { view, state, board, say, next: None };
    for fed_by in &board.fed_by {
        let fills = [fill("device", &fed_by.name)];
        ui.add(egui::Label::new(view.fill("panel-fed-by", &fills)).wrap());
    }
    if !board.main.is_empty() {
        face.side_ui(ui, &board.main);
    }
    ui.add_space(GAP);
    if board.right.is_empty() {
        face.side_ui(ui, &board.left);
    } else if ui.available_width() >= SIDE_BY_SIDE {
        ui.columns(2, |sides| {
            if let [left, right] = sides {
                let under = egui::Layout::top_down(egui::Align::Min);
                left.with_layout(under, |ui| face.side_ui(ui, &board.left));
                right.with_layout(under, |ui| face.side_ui(ui, &board.right));
            }
        });
    } else {
        for (key, side) in [("panel-left-side", &board.left), ("panel-right-side", &board.right)] {
            if board.numbering == Numbering::Sides {
                ui.add_space(GAP);
                ui.label(strong(view.text(key), size::SECTION));
            }
            face.side_ui(ui, side);
        }
    }
    if !board.apart.is_empty() {
        ui.add_space(GAP);
        ui.label(strong(view.text("panel-apart"), size::SECTION));
        face.side_ui(ui, &board.apart);
    }
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        let more = button(ui, &view.text("panel-more"));
        focus_ring(ui, &more);
        if more.clicked() {
            (face.say)(Command::More);
        }
        let can = board.count > board.least.max(1);
        let fewer = ui.add_enabled_ui(can, |ui| button(ui, &view.text("panel-fewer"))).inner;
        focus_ring(ui, &fewer);
        if fewer.clicked() {
            (face.say)(Command::Fewer);
        }
    });
    face.go_on(ui);
}

/// What a panel is drawn with.
struct Face<'a, 'h, 's> {
    view: &'a View<'a>,
    state: &'a State,
    board: &'a Board<'h>,
    say: &'s mut dyn FnMut(Command),
    /// The cell that the keyboard goes on to.
    next: Option<(String, Cell)>,
}

impl Face<'_, '_, '_> {
    /// Rows under one another, with what their cells hold over them.
    fn side_ui(&mut self, ui: &mut Ui, rows: &[Row<'_>]) {
        ui.spacing_mut().item_spacing.y = 0.0;
        self.head_ui(ui);
        for row in rows {
            self.row_ui(ui, row);
        }
        ui.spacing_mut().item_spacing.y = GAP;
    }

    fn head_ui(&self, ui: &mut Ui) {
        let width = ui.available_width();
        let (rect, _) = ui.allocate_exact_size(vec2(width, 22.0), Sense::hover());
        let palette = Palette::of(ui);
        let keys = ["panel-no", "panel-what", "panel-amperes", "panel-poles", "panel-on-it"];
        for (key, at) in keys.into_iter().zip(columns(rect)) {
            // Over narrow columns in the middle, over what is read from its beginning there.
            let (align, x) = if key == "panel-what" {
                (Align2::LEFT_CENTER, at.left() + 8.0)
            } else {
                (Align2::CENTER_CENTER, at.center().x)
            };
            let font = FontId::proportional(13.0);
            let pos = egui::pos2(x, rect.center().y);
            ui.painter().text(pos, align, self.view.text(key), font, palette.soft);
        }
    }

    fn row_ui(&mut self, ui: &mut Ui, row: &Row<'_>) {
        let palette = Palette::of(ui);
        let places = u16::try_from(row.height()).map_or(1.0, f32::from);
        let size = vec2(ui.available_width(), TOUCH * places);
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        let [number, serves, amperes, poles, on_it] = columns(rect);
        if row.is_typed_in() {
            ui.painter().rect_filled(rect.with_min_x(number.right()), 0, palette.card);
        }
        self.number_ui(ui, number, row);
        if let Holds::Part(breaker) = row.holds {
            let fills = [fill_other(&breaker.name)];
            let text = self.view.fill("panel-part", &fills);
            let at = rect.with_min_x(number.right());
            let mut inside = ui.new_child(egui::UiBuilder::new().max_rect(at.shrink(8.0)));
            let text = soft(&inside, text);
            inside.add(egui::Label::new(text).truncate());
        } else {
            for (cell, at) in Cell::ROW.into_iter().zip([serves, amperes, poles]) {
                self.cell_ui(ui, row, cell, at);
            }
            self.on_it_ui(ui, on_it, row);
        }
        ui.painter().rect_stroke(rect, 0, palette.edge_stroke(), StrokeKind::Middle);
        self.told_ui(ui, row);
        self.asking_ui(ui, row);
    }

    /// The number of each position that it takes.
    fn number_ui(&self, ui: &Ui, rect: Rect, row: &Row<'_>) {
        let palette = Palette::of(ui);
        let is_there = row.breaker().is_some();
        let is_picked = self.state.picked.as_ref() == Some(&row.key);
        if is_picked {
            ui.painter().rect_filled(rect, 0, palette.ink);
        }
        let ink = match (is_picked, is_there) {
            (true, _) => palette.card,
            (false, true) => palette.ink,
            (false, false) => palette.soft,
        };
        let font = |points| {
            if is_there { FontId::new(points, bold()) } else { FontId::proportional(points) }
        };
        let labels: Vec<String> = match row.places.as_slice() {
            _ if row.is_main() => vec![self.view.text("panel-main")],
            // A half of a place, or no place, is called as it is written.
            [] | [_] => vec![row.label.clone()],
            places => places.iter().map(|place| self.board.label(*place)).collect(),
        };
        let labels_count = u16::try_from(labels.len().max(1)).map_or(1.0, f32::from);
        let height = rect.height() / labels_count;
        let painter = ui.painter().with_clip_rect(rect);
        let mut top = rect.top();
        for label in labels {
            let points = if label.chars().count() > 3 { 12.0 } else { size::CAUTION };
            let middle = egui::pos2(rect.center().x, top + height / 2.0);
            painter.text(middle, Align2::CENTER_CENTER, label, font(points), ink);
            top += height;
        }
    }

    fn cell_ui(&mut self, ui: &mut Ui, row: &Row<'_>, cell: Cell, rect: Rect) {
        let palette = Palette::of(ui);
        let draft = self.state.draft(&self.board.panel.id, &row.key, cell);
        let mut text = self.text(row, cell);
        let is_bad = draft.is_some_and(|draft| draft.why.is_some());
        let id = self.id(&row.key, cell);
        let inside = rect.shrink2(vec2(6.0, 0.0));
        let align = if cell == Cell::Serves { Align2::LEFT_CENTER } else { Align2::CENTER_CENTER };
        let name = row.breaker().filter(|_| cell == Cell::Serves).map(|breaker| &breaker.name);
        // A long name is read in two lines, and typed in one.
        let long = (cell == Cell::Serves && !ui.memory(|memory| memory.has_focus(id)))
            .then(|| long_name(ui, &text, inside.width()))
            .flatten();
        let edit = TextEdit::singleline(&mut text)
            .id(id)
            .frame(Frame::new().inner_margin(Margin::symmetric(6, 0)))
            .hint_text(name.map_or("", String::as_str))
            .font(FontId::proportional(size::CAUTION))
            .align(align)
            .desired_width(inside.width())
            .min_size(rect.size());
        let edit = if long.is_some() { edit.text_color(Color32::TRANSPARENT) } else { edit };
        let mut child = ui.new_child(egui::UiBuilder::new().max_rect(rect));
        child.spacing_mut().interact_size = Vec2::ZERO;
        let response = child.add_sized(rect.size(), edit);
        let response = response.accessible_name(self.name_of(row, cell));
        if let Some(long) = long {
            let top = rect.center().y - long.size().y / 2.0;
            ui.painter().galley(egui::pos2(inside.left(), top), long, palette.ink);
        }
        let line = Stroke::new(1.0, palette.line);
        ui.painter().vline(rect.left(), rect.y_range(), line);
        if is_bad {
            let ring = Stroke::new(2.0, palette.ink);
            ui.painter().rect_stroke(rect.shrink(2.0), 0, ring, StrokeKind::Inside);
        }
        if response.has_focus() {
            ui.painter().rect_stroke(rect, 2, palette.focus_stroke(), StrokeKind::Inside);
        }
        // It may be that the row it was sent to is another by now.
        let is_sent = self.state.focus.as_ref();
        let is_sent = is_sent.is_some_and(|(key, c)| *key == row.key && *c == cell);
        if is_sent {
            (self.say)(Command::Come);
        }
        let comes = is_sent && !response.has_focus();
        if comes {
            response.request_focus();
        }
        if is_sent || response.gained_focus() {
            (self.say)(Command::Pick(row.key.clone()));
            ui.scroll_to_rect(rect.expand(TOUCH), None);
        }
        if comes || (response.gained_focus() && !is_sent) {
            select_all(ui, id, &text);
        }
        if response.changed() {
            (self.say)(Command::Type(row.key.clone(), cell, text));
        }
        self.keys(ui, &response, row, cell);
    }

    /// What leads on from a cell.
    fn keys(&mut self, ui: &Ui, response: &egui::Response, row: &Row<'_>, cell: Cell) {
        let pressed = |key| ui.input(|i| i.key_pressed(key));
        let mut next = None;
        if response.lost_focus() {
            (self.say)(Command::Done(row.key.clone(), cell));
            next = pressed(Key::Enter).then_some(true);
        } else if response.has_focus() {
            let is_up = pressed(Key::ArrowUp);
            next = (is_up || pressed(Key::ArrowDown)).then_some(!is_up);
        }
        if let Some(is_below) = next {
            let beside = self.board.beside(&row.key, is_below);
            self.next = beside.map(|row| (row.key.clone(), cell));
            (self.say)(Command::Next(row.key.clone(), cell, is_below));
        }
    }

    /// Goes on to the next cell once all were drawn, so that none takes the letters of another and
    /// none is lost.
    fn go_on(&self, ui: &Ui) {
        let Some((key, cell)) = &self.next else { return };
        let Some(row) = self.board.row(key) else { return };
        let id = self.id(key, *cell);
        select_all(ui, id, &self.text(row, *cell));
        ui.memory_mut(|memory| memory.request_focus(id));
    }

    /// What stands in a cell.
    fn text(&self, row: &Row<'_>, cell: Cell) -> String {
        let draft = self.state.draft(&self.board.panel.id, &row.key, cell);
        draft.map_or_else(|| cell.read(self.view.words, row), |draft| draft.text.clone())
    }

    fn id(&self, key: &str, cell: Cell) -> egui::Id {
        egui::Id::unique(("panel-cell", &self.board.panel.id, key, cell.key()))
    }

    /// How many things hang on it.
    fn on_it_ui(&self, ui: &Ui, rect: Rect, row: &Row<'_>) {
        let palette = Palette::of(ui);
        ui.painter().vline(rect.left(), rect.y_range(), Stroke::new(1.0, palette.line));
        let Some(breaker) = row.breaker().filter(|_| !row.is_main()) else { return };
        let lines = self.view.home.connections.iter();
        let on_it =
            lines.filter(|line| line.carries == Medium::Power && line.from == breaker.id).count();
        let text = if on_it == 0 { "\u{2013}".to_owned() } else { on_it.to_string() };
        let font = FontId::proportional(size::SMALL);
        ui.painter().text(rect.center(), Align2::CENTER_CENTER, text, font, palette.soft);
    }

    /// What a screen reader calls a cell.
    fn name_of(&self, row: &Row<'_>, cell: Cell) -> String {
        let what = self.view.text(cell.key());
        let what = fill("what", &what);
        let name = row.breaker().map_or("", |breaker| breaker.name.as_str());
        if row.is_main() {
            return self.view.fill("panel-cell-main", &[what]);
        }
        match (row.places.is_empty(), row.label.is_empty()) {
            (false, _) => self.view.fill("panel-cell", &[fill("position", &row.label), what]),
            (true, false) => {
                self.view.fill("panel-cell-apart", &[fill("position", &row.label), what])
            }
            (true, true) => self.view.fill("panel-cell-unnumbered", &[fill("name", name), what]),
        }
    }

    /// What is wrong with its number, and with what was typed.
    fn told_ui(&self, ui: &mut Ui, row: &Row<'_>) {
        let draft = |cell| self.state.draft(&self.board.panel.id, &row.key, cell);
        let typed = Cell::ROW.into_iter().filter_map(|cell| draft(cell)?.why.clone());
        let poles = row.breaker().and_then(|breaker| breaker.poles).unwrap_or(1);
        let numbers = row.wrong.iter().map(|wrong| match wrong {
            Wrong::Twice { number, other } => {
                self.view.fill("panel-twice", &[fill("number", number), fill_other(other)])
            }
            Wrong::NoRoom { number, other } => {
                let poles = count("poles", f64::from(poles));
                self.view.fill("panel-no-room", &[poles, fill("number", number), fill_other(other)])
            }
            Wrong::NoNumber => self.view.text("panel-no-number"),
        });
        for text in typed.chain(numbers) {
            Frame::new().inner_margin(Margin::symmetric(8, 6)).show(ui, |ui| {
                ui.add(egui::Label::new(strong(text, size::SMALL)).wrap());
            });
        }
    }

    /// Whether the breaker goes, once what goes with it was seen.
    fn asking_ui(&mut self, ui: &mut Ui, row: &Row<'_>) {
        let view = self.view;
        let asking = self.state.asking(&self.board.panel.id, &row.key);
        let (Some(asking), Some(breaker)) = (asking, row.breaker()) else { return };
        ui.add_space(GAP / 2.0);
        card(ui, Palette::of(ui).focus_stroke(), |ui| {
            ui.spacing_mut().item_spacing.y = GAP;
            let name = [fill("name", &breaker.name)];
            let text = strong(view.fill("panel-take-out-what", &name), size::BODY);
            ui.add(egui::Label::new(text).wrap());
            let key =
                if asking.goes.is_empty() { "device-delete-nothing" } else { "device-delete-with" };
            ui.add(egui::Label::new(view.text(key)).wrap());
            for change in &asking.goes {
                ui.add(egui::Label::new(soft(ui, change.as_str())).wrap());
            }
            ui.horizontal_wrapped(|ui| {
                if main_button(ui, &view.text("panel-take-out")).clicked() {
                    (self.say)(Command::TakeOut(row.key.clone()));
                }
                let keep = button(ui, &view.text("device-keep"));
                focus_ring(ui, &keep);
                if keep.clicked() {
                    (self.say)(Command::Keep(row.key.clone()));
                }
            });
        });
        ui.add_space(GAP / 2.0);
    }
}

/// The parts of a row: number, what it serves, amperes, poles, how much hangs on it.
fn columns(row: Rect) -> [Rect; 5] {
    let widths = [NUMBER, 0.0, AMPERES, POLES, ON_IT];
    let rest = (row.width() - widths.iter().sum::<f32>()).max(TOUCH);
    let mut left = row.left();
    widths.map(|width| {
        let width = if width > 0.0 { width } else { rest };
        let part = Rect::from_min_size(egui::pos2(left, row.top()), vec2(width, row.height()));
        left += width;
        part
    })
}

/// A name in two smaller lines, if it is too long for one.
fn long_name(ui: &Ui, text: &str, width: f32) -> Option<Arc<Galley>> {
    let ink = Palette::of(ui).ink;
    let font = FontId::proportional(size::CAUTION);
    let galley = ui.painter().layout_no_wrap(text.to_owned(), font, ink);
    if galley.size().x <= width {
        return None;
    }
    let small = FontId::proportional(13.0);
    let mut job = LayoutJob::simple(text.to_owned(), small, ink, width);
    job.wrap.max_rows = 2;
    Some(ui.painter().layout_job(job))
}

fn fill_other(name: &str) -> quarterturn_guidance::Fill<'_> {
    fill("other", name)
}

/// What the keyboard comes to is typed over; the pointer chose its place in the text.
pub(super) fn select_all(ui: &Ui, id: egui::Id, text: &str) {
    if ui.input(|i| i.pointer.any_down() || i.pointer.any_released()) {
        return;
    }
    let mut state = TextEdit::load_state(ui.ctx(), id).unwrap_or_default();
    let end = CCursor::new(text.chars().count());
    state.cursor.set_char_range(Some(CCursorRange::two(CCursor::new(0), end)));
    state.store(ui.ctx(), id);
}
