//! The boxes of a riser or one-line: a tag plate and a name, to be pressed.

use egui::text::{LayoutJob, TextFormat, TextWrapping};
use egui::{FontId, Pos2, Rect, Response, Sense, Stroke, StrokeKind, Ui, WidgetInfo};
use egui::{accesskit::Role, vec2};
use quarterturn_guidance::fill;
use quarterturn_home::{Component, Home};
use quarterturn_mapping::schematic::Sort;

use super::{Grid, MapState};
use crate::ask::Command;
use crate::controls::{focus_ring, pin};
use crate::map::canvas::Touch;
use crate::map::{MapCommand, lines};
use crate::system::System;
use crate::tokens::{EDGE_ON_PLAN, PIN, Palette, ROUND, size};
use crate::view::View;

/// Width and height of a box.
pub(super) const BOX: (f32, f32) = (176.0, 60.0);
/// Width of the part with the plate.
const PLATE: f32 = 46.0;

/// A box on its place.
pub(super) struct Drawn<'a> {
    pub(super) component: &'a Component,
    middle: Pos2,
    is_copy: bool,
    /// Its number in the drawing: a component may stand in it several times.
    nth: usize,
}

/// All boxes, the way the medium flows; then those that are joined to nothing.
pub(super) fn in_order_of_flow<'a>(grid: &Grid<'_>, home: &'a Home, sort: Sort) -> Vec<Drawn<'a>> {
    let spots = grid.drawn.spots.iter().enumerate();
    let spots = spots.map(|(nth, spot)| (spot.place, grid.of_spot(nth), spot.is_copy));
    let mut all: Vec<(usize, Pos2, bool)> = spots.collect();
    // Drains are laid out from the sewer, and flow towards it.
    if sort == Sort::Drains {
        all.reverse();
    }
    let loose = grid.drawn.loose.iter().enumerate();
    all.extend(loose.map(|(nth, place)| (*place, grid.of_loose(nth), false)));
    let drawn = all.into_iter().enumerate().filter_map(|(nth, (place, middle, is_copy))| {
        let component = home.components.get(place)?;
        Some(Drawn { component, middle, is_copy, nth })
    });
    drawn.collect()
}

/// Draws a box.
pub(super) fn box_ui(
    ui: &Ui,
    view: &View<'_>,
    state: &MapState,
    system: System,
    drawn: &Drawn<'_>,
    scale: f32,
) -> Response {
    let component = drawn.component;
    let rect = Rect::from_center_size(drawn.middle, vec2(BOX.0, BOX.1) * scale);
    let id = ui.scope_id().with(("schematic-box", drawn.nth));
    let response = ui.interact(rect, id, Sense::click());
    let is_selected = state.selected.as_ref() == Some(&component.id);
    let key = if drawn.is_copy { "schematic-again" } else { "schematic-box" };
    let label = view.fill(key, &[fill("device", &component.name)]);
    response.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::Button, true, &label);
        info.selected = Some(is_selected);
        info
    });
    if !ui.is_rect_visible(rect) {
        return response;
    }
    let palette = Palette::of(ui);
    let is_begun = state.lines.from.as_ref() == Some(&component.id);
    let is_pointed_at = response.hovered() || response.is_pointer_button_down_on();
    let fill = if is_begun || is_pointed_at { palette.hover } else { palette.card };
    let edge = match (is_selected, drawn.is_copy) {
        (true, _) => Stroke::new(3.0, palette.ink),
        (false, true) => palette.edge_stroke(),
        (false, false) => Stroke::new(1.75, palette.ink),
    };
    let painter = ui.painter();
    painter.rect_filled(rect, ROUND, fill);
    painter.rect_stroke(rect, ROUND, edge, StrokeKind::Inside);
    let system = System::of(view.home, component, Some(system));
    // Hoses and traps are there, but nobody looks for them.
    let radius = if component.tag.is_some() { PIN } else { PIN * 0.6 };
    let plate = rect.left_center() + vec2(PLATE / 2.0 + 2.0, 0.0) * scale;
    let white = Stroke::new(1.0, EDGE_ON_PLAN);
    pin(painter, plate, radius * scale, system, component.tag.as_deref(), white);
    let ink = if drawn.is_copy { palette.soft } else { palette.ink };
    let format = TextFormat::simple(FontId::proportional(size::SMALL * scale), ink);
    let mut job = LayoutJob::single_section(component.name.clone(), format);
    let width = (BOX.0 - PLATE - 12.0) * scale;
    job.wrap = TextWrapping { max_width: width, max_rows: 2, ..TextWrapping::default() };
    let text = painter.layout_job(job);
    let is_cut = text.elided;
    let at = Pos2::new(rect.left() + (PLATE + 4.0) * scale, rect.center().y - text.size().y / 2.0);
    painter.galley(at, text, ink);
    focus_ring(ui, &response);
    if is_cut { response.on_hover_text(&component.name) } else { response }
}

/// A press on a box: it is picked, and begins or ends a line as a pin on the plan does.
pub(super) fn pressed(view: &View<'_>, state: &MapState, id: &str, out: &mut Vec<Command>) {
    let level = view.home.component(id).and_then(|component| view.home.level_of(component));
    let touch = Touch::Pressed {
        level: level.map(|level| level.id.clone()).unwrap_or_default(),
        at: (0.0, 0.0),
        on: Some(id.to_owned()),
    };
    out.push(Command::Map(MapCommand::Select(Some(id.to_owned()))));
    lines::touched(view, state, &touch, out);
}
