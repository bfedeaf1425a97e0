//! Risers and one-lines in place of the plan: the same lines, drawn by what feeds what.
//!
//! A press on one box and then on another draws a line, as on the plan. Tab goes from box to box the
//! way the medium flows, Enter presses.

mod boxes;

use egui::scroll_area::{DragScroll, ScrollSource};
use egui::{
    Align2, FontId, Pos2, Rect, ScrollArea, Sense, Shape, Stroke, Ui, WidgetInfo, accesskit::Role,
    pos2, vec2,
};
use quarterturn_guidance::fill;
use quarterturn_home::{Connection, Home, Kind, Medium};
use quarterturn_mapping::Proposal;
use quarterturn_mapping::schematic::{Detail, Schematic, Sort};

use super::{MapCommand, MapState, lines};
use crate::ask::Command;
use crate::controls::{button, chosen_button, focus_ring, soft};
use crate::fonts::bold;
use crate::system::System;
use crate::tokens::{EDGE_ON_PLAN, Palette, ROUND, size};
use crate::trail;
use crate::view::View;
use boxes::Drawn;

/// Width and height of what one box has for itself, with the way for its lines.
const CELL: (f32, f32) = (196.0, 88.0);
/// Height of a row of a list, and how much further right what is fed stands in it.
const LISTED: f32 = 68.0;
const INDENT: f32 = 44.0;
/// Height of the name of a floor.
const HEAD: f32 = 34.0;
/// Growth with each step nearer.
const STEP: f32 = 1.15;
/// Steps nearer and farther: at the farthest a box is still as high as a finger needs.
const STEPS: std::ops::RangeInclusive<i32> = -2..=4;

/// The plan, or one of the drawings.
pub(super) fn choice_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Command>) {
    let mut say = |command| out.push(Command::Map(MapCommand::Lines(command)));
    let shown = state.lines.drawing;
    ui.horizontal_wrapped(|ui| {
        if chosen_button(ui, &view.text("schematic-plan"), shown.is_none()).clicked() {
            say(lines::Command::Show(None));
        }
        for sort in Sort::ALL {
            // Many homes have no gas.
            let is_there = sort != Sort::Gas || has_gas(view) || shown == Some(sort);
            if is_there && chosen_button(ui, &view.text(key(sort)), shown == Some(sort)).clicked() {
                say(lines::Command::Show(Some(sort)));
            }
        }
    });
}

/// A riser or one-line.
pub(super) fn schematic_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    sort: Sort,
    out: &mut Vec<Command>,
) {
    nearness_ui(ui, view, state, out);
    let Some(drawn) = &state.lines.schematic else { return };
    if drawn.spots.is_empty() && drawn.loose.is_empty() {
        ui.add(egui::Label::new(soft(ui, view.text("schematic-empty"))).wrap());
        return;
    }
    let area = ui.available_rect_before_wrap();
    ui.painter().rect_filled(area, ROUND, Palette::of(ui).plan);
    let by_hand = ScrollSource { drag: DragScroll::Always, ..ScrollSource::default() };
    let scroll = ScrollArea::both().id_salt(("schematic", key(sort))).auto_shrink(false);
    let scroll = scroll.scroll_source(by_hand);
    // A supply rises from below: there one begins to read.
    let scrolled = scroll.stick_to_bottom(sort != Sort::Power).show(ui, |ui| {
        let grid = Grid::new(ui, drawn, sort, state.lines.nearness, area.width());
        let (rect, response) = ui.allocate_exact_size(grid.size(), Sense::hover());
        let label = view.fill("schematic-of", &[fill("drawing", &view.text(key(sort)))]);
        response.widget_info(|| WidgetInfo::labeled(Role::Group, true, &label));
        let grid = Grid { origin: rect.min, ..grid };
        floors_ui(ui, view, &grid);
        for nth in 0..drawn.spots.len() {
            line_ui(ui, &grid, nth);
        }
        let all = boxes::in_order_of_flow(&grid, view.home, sort);
        boxes_ui(ui, view, state, sort, &all, grid.scale, out)
    });
    // In one column the drawing itself may be out of sight.
    if scrolled.inner {
        ui.scroll_to_rect(scrolled.inner_rect, None);
    }
}

/// Lays out what is shown, with what is proposed.
pub(super) fn laid_out(home: &Home, sort: Sort, proposed: &[Proposal]) -> Schematic {
    let proposed: Vec<&Connection> = proposed.iter().map(|p| &p.line).collect();
    Schematic::of(home, sort, Detail::Whole, &proposed)
}

/// A drawing on the screen.
struct Grid<'a> {
    drawn: &'a Schematic,
    /// True if each stands in a row of its own, further right than what feeds it: two dozen circuits
    /// beside each other are wider than any screen.
    is_list: bool,
    origin: Pos2,
    scale: f32,
    /// Boxes in a row of those that are joined to nothing.
    across: usize,
}

impl<'a> Grid<'a> {
    fn new(ui: &Ui, drawn: &'a Schematic, sort: Sort, nearness: i32, width: f32) -> Self {
        let scale = STEP.powi(nearness);
        let is_list = sort == Sort::Power;
        let mut grid = Self { drawn, is_list, origin: ui.cursor().min, scale, across: 1 };
        let columns = usize::try_from(drawn.columns).unwrap_or(1).max(1);
        grid.across = if is_list { 1 } else { columns };
        while float(grid.across + 1) * CELL.0 * scale <= width {
            grid.across += 1;
        }
        grid
    }

    fn size(&self) -> egui::Vec2 {
        let loose = self.drawn.loose.len().div_ceil(self.across);
        let heads = self.floors() + usize::from(loose > 0);
        let height = self.rows_high() + float(loose) * CELL.1 + float(heads) * HEAD;
        let across = if loose > 0 { float(self.across) * CELL.0 } else { 0.0 };
        let wide = if self.is_list {
            CELL.0 + length(self.drawn.rows) * INDENT
        } else {
            length(self.drawn.columns) * CELL.0
        };
        vec2(wide.max(across), height) * self.scale
    }

    /// Floors, each with its name; a one-line has none.
    fn floors(&self) -> usize {
        if self.is_list { 0 } else { self.drawn.floors.len() }
    }

    /// Height of all rows of what is joined, without the names of floors.
    fn rows_high(&self) -> f32 {
        if self.is_list {
            float(self.drawn.spots.len()) * LISTED
        } else {
            length(self.drawn.rows) * CELL.1
        }
    }

    /// Middle of a place: its column, what is above its row, and the floors that begin above it.
    fn middle(&self, column: usize, above: f32, heads: usize) -> Pos2 {
        let x = (float(column) + 0.5) * CELL.0;
        let y = above + 0.5 * CELL.1 + float(heads) * HEAD;
        self.origin + vec2(x, y) * self.scale
    }

    /// Middle of the spot at this place of the drawing.
    fn of_spot(&self, nth: usize) -> Pos2 {
        let Some(spot) = self.drawn.spots.get(nth) else { return self.origin };
        if self.is_list {
            let x = 0.5 * CELL.0 + length(spot.row) * INDENT;
            return self.origin + vec2(x, (float(nth) + 0.5) * LISTED) * self.scale;
        }
        let heads = self.drawn.floors.iter().filter(|floor| floor.top <= spot.row).count();
        let column = usize::try_from(spot.column).unwrap_or_default();
        self.middle(column, length(spot.row) * CELL.1, heads)
    }

    /// Middle of one that is joined to nothing, by its place among them.
    fn of_loose(&self, nth: usize) -> Pos2 {
        let heads = self.floors() + 1;
        let above = self.rows_high() + float(nth / self.across) * CELL.1;
        self.middle(nth % self.across, above, heads)
    }
}

/// A count as a length.
fn float(n: usize) -> f32 {
    u16::try_from(n).map_or(f32::MAX, f32::from)
}

/// The same of what the drawing counts.
fn length(n: u32) -> f32 {
    u16::try_from(n).map_or(f32::MAX, f32::from)
}

fn key(sort: Sort) -> &'static str {
    match sort {
        Sort::Water => "schematic-water",
        Sort::Drains => "schematic-drains",
        Sort::Power => "schematic-power",
        Sort::Gas => "schematic-gas",
    }
}

fn system(sort: Sort) -> System {
    match sort {
        Sort::Water => System::Water,
        Sort::Drains => System::Drain,
        Sort::Power => System::Power,
        Sort::Gas => System::Gas,
    }
}

fn has_gas(view: &View<'_>) -> bool {
    let of_gas = |kind| matches!(kind, Kind::GasMeter | Kind::GasValve | Kind::GasAppliance);
    view.home.components.iter().any(|component| of_gas(component.kind))
        || view.home.connections.iter().any(|line| line.carries == Medium::Gas)
}

/// Nearer and farther, and how it is used.
fn nearness_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Command>) {
    let now = state.lines.nearness;
    ui.horizontal_wrapped(|ui| {
        for (sign, name, steps) in
            [("+", "canvas-nearer", now + 1), ("\u{2212}", "plan-farther", now - 1)]
        {
            let name = view.text(name);
            let can = STEPS.contains(&steps);
            let response = ui.add_enabled_ui(can, |ui| button(ui, sign)).inner;
            let response = response.accessible_name(name.clone()).on_hover_text(name);
            focus_ring(ui, &response);
            if response.clicked() {
                out.push(Command::Map(MapCommand::Lines(lines::Command::Nearness(steps))));
            }
        }
        ui.add(egui::Label::new(soft(ui, view.text("schematic-hint"))).wrap());
    });
}

/// The names of the floors, always in sight, each with a line above it.
fn floors_ui(ui: &Ui, view: &View<'_>, grid: &Grid<'_>) {
    let palette = Palette::of(ui);
    let clip = ui.clip_rect();
    let font = FontId::new(size::SMALL, bold());
    let head = |heads: usize, above: f32, name: &str| {
        let y = grid.middle(0, above, heads).y - CELL.1 * grid.scale / 2.0;
        let top = y - HEAD * grid.scale;
        ui.painter().hline(clip.x_range(), top, Stroke::new(1.0, palette.line));
        let at = pos2(clip.left() + 10.0, (top + y) / 2.0);
        ui.painter().text(at, Align2::LEFT_CENTER, name, font.clone(), palette.ink);
    };
    for (nth, floor) in grid.drawn.floors.iter().take(grid.floors()).enumerate() {
        let level = floor.level.as_deref().and_then(|id| view.home.level(id));
        let name = match level {
            Some(level) => level.name.clone(),
            None => view.text("schematic-outdoors"),
        };
        head(nth + 1, length(floor.top) * CELL.1, &name);
    }
    if !grid.drawn.loose.is_empty() {
        head(grid.floors() + 1, grid.rows_high(), &view.text("schematic-loose"));
    }
}

/// The line to the box at this place: along the row of what it comes from, then along its own column; in
/// a list, down beside it, then along its own row.
fn line_ui(ui: &Ui, grid: &Grid<'_>, nth: usize) {
    let Some(spot) = grid.drawn.spots.get(nth) else { return };
    let (Some(parent), Some(carries)) = (spot.parent, spot.carries) else { return };
    let (from, to) = (grid.of_spot(parent), grid.of_spot(nth));
    if !ui.clip_rect().intersects(Rect::from_two_pos(from, to).expand(4.0)) {
        return;
    }
    let path = if grid.is_list {
        let x = from.x - (boxes::BOX.0 - INDENT) / 2.0 * grid.scale;
        [pos2(x, from.y), pos2(x, to.y), to]
    } else {
        [from, pos2(to.x, from.y), to]
    };
    let ink = trail::ink(System::of_net(carries.net()));
    let painter = ui.painter();
    let add = |width: f32, colour| {
        painter.add(Shape::line(path.to_vec(), Stroke::new(width, colour)));
    };
    add(8.0, EDGE_ON_PLAN);
    if spot.is_proposed {
        painter.extend(Shape::dashed_line(&path, Stroke::new(3.0, ink), 9.0, 7.0));
        return;
    }
    let is_double = matches!(carries, Medium::HotWater | Medium::Vent);
    add(if is_double { 6.0 } else { 3.5 }, ink);
    if is_double {
        add(2.0, EDGE_ON_PLAN);
    }
}

/// The boxes, each to be pressed; true if the keyboard has come to one.
fn boxes_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    sort: Sort,
    all: &[Drawn<'_>],
    scale: f32,
    out: &mut Vec<Command>,
) -> bool {
    let mut is_come_to = false;
    for drawn in all {
        let response = boxes::box_ui(ui, view, state, system(sort), drawn, scale);
        // Tab may lead to what is out of sight.
        if response.gained_focus() {
            ui.scroll_to_rect(response.rect.expand(HEAD), None);
            is_come_to = true;
        }
        if response.clicked() {
            boxes::pressed(view, state, &drawn.component.id, out);
        }
    }
    is_come_to
}
