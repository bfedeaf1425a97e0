//! What is pressed and read: tiles, buttons, headings, tag plates.

use std::sync::Arc;

use egui::text::{LayoutJob, TextFormat};
use egui::{
    Align2, Button, Color32, FontId, Frame, Galley, Pos2, Rect, Response, RichText, Sense, Stroke,
    StrokeKind, Ui, Vec2, WidgetInfo, accesskit::Role, vec2,
};

use crate::fonts::bold;
use crate::system::{System, shape};
use quarterturn_guidance::Signal;

use crate::tokens::{self, GAP, INSIDE, Palette, ROUND, SMALL_TILE, TILE, TILE_END, TOUCH, size};

/// Text that is to be read first.
pub(crate) fn strong(text: impl Into<String>, points: f32) -> RichText {
    RichText::new(text).family(bold()).size(points)
}

/// Text that explains.
pub(crate) fn soft(ui: &Ui, text: impl Into<String>) -> RichText {
    RichText::new(text).size(size::SMALL).color(Palette::of(ui).soft)
}

/// A heading within a column.
pub(crate) fn section(ui: &mut Ui, text: &str) {
    ui.add_space(tokens::APART - GAP);
    ui.label(strong(text, size::SECTION));
}

/// Things on a line that is no higher than they are; it wraps.
pub(crate) fn line(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        ui.horizontal_wrapped(add);
    });
}

/// The one thing to press: ink on paper turned round.
pub(crate) fn main_button(ui: &mut Ui, text: &str) -> Response {
    let palette = Palette::of(ui);
    let response = ui.add(
        Button::new(strong(text, size::BODY).color(palette.card))
            .fill(palette.ink)
            .stroke(Stroke::new(1.0, palette.ink))
            .min_size(vec2(120.0, 52.0)),
    );
    focus_ring(ui, &response);
    response
}

/// A choice beside [`main_button`], as high as that.
pub(crate) fn tall_button(ui: &mut Ui, text: &str) -> Response {
    let palette = Palette::of(ui);
    let button = Button::new(text).fill(palette.card).stroke(Stroke::new(1.5, palette.ink));
    let response = ui.add(button.min_size(vec2(120.0, 52.0)));
    focus_ring(ui, &response);
    response
}

/// Something else that may be pressed.
pub(crate) fn button(ui: &mut Ui, text: &str) -> Response {
    button_if(ui, true, text)
}

/// Something that may be pressed at times.
pub(crate) fn button_if(ui: &mut Ui, enabled: bool, text: &str) -> Response {
    let palette = Palette::of(ui);
    let button = Button::new(text).fill(palette.card).min_size(vec2(TOUCH, TOUCH)).wrap();
    ui.add_enabled(enabled, button)
}

/// One of several that can be chosen; the chosen one is ink on paper turned round.
pub(crate) fn chosen_button(ui: &mut Ui, text: &str, is_chosen: bool) -> Response {
    let palette = Palette::of(ui);
    let (fill, ink) =
        if is_chosen { (palette.ink, palette.card) } else { (palette.card, palette.ink) };
    let text = RichText::new(text).size(size::CAUTION).color(ink);
    let button = Button::new(text).fill(fill).selected(is_chosen).min_size(vec2(TOUCH, TOUCH));
    let response = ui.add(button);
    focus_ring(ui, &response);
    response
}

/// Draws the ring around what the keyboard acts on.
pub(crate) fn focus_ring(ui: &Ui, response: &Response) {
    if response.has_focus() {
        let rect = response.rect.expand(3.0);
        ui.painter().rect_stroke(rect, ROUND, Palette::of(ui).focus_stroke(), StrokeKind::Outside);
    }
}

/// What stands at the end of a tile, under its sign.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum End {
    /// The red of DANGER, all over.
    Danger,
    /// The shape of a system.
    System(System),
}

/// What a tile shows.
pub(crate) struct Tile<'a> {
    /// What stands at its end.
    pub(crate) end: End,
    /// What it says, big.
    pub(crate) title: &'a str,
    /// What it says, small.
    pub(crate) hint: &'a str,
    /// What a screen reader says.
    pub(crate) label: &'a str,
    /// True if what it says small is only said when it is pointed at.
    pub(crate) is_small: bool,
}

/// A big button with a sign at its end, as wide as `width`.
pub(crate) fn tile(
    ui: &mut Ui,
    width: f32,
    height: f32,
    tile: &Tile<'_>,
    sign: impl FnOnce(&egui::Painter, Rect, Color32),
) -> Response {
    let palette = Palette::of(ui);
    let text = tile_text(ui, width, tile);
    let height = height.max(tile_height(tile, &text));
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::click());
    response.widget_info(|| WidgetInfo::labeled(Role::Button, ui.is_enabled(), tile.label));
    if ui.is_rect_visible(rect) {
        let pointed_at = response.hovered() || response.is_pointer_button_down_on();
        let fill = if pointed_at { palette.hover } else { palette.card };
        let painter = ui.painter();
        painter.rect_filled(rect, ROUND, fill);
        let end = Rect::from_min_size(rect.min, vec2(TILE_END, rect.height()));
        let corners = egui::CornerRadius { ne: 0, se: 0, ..ROUND };
        end_ui(painter, end, corners, tile.end, sign);
        let edge = if pointed_at { Stroke::new(1.5, palette.ink) } else { palette.edge_stroke() };
        painter.rect_stroke(rect, ROUND, edge, StrokeKind::Inside);
        let at = Pos2::new(end.right() + 12.0, rect.center().y - text.size().y / 2.0);
        painter.galley(at, text, palette.ink);
        focus_ring(ui, &response);
    }
    if tile.is_small { response.on_hover_text(tile.hint) } else { response }
}

/// Draws the end of a tile with its sign.
pub(crate) fn end_ui(
    painter: &egui::Painter,
    rect: Rect,
    corners: egui::CornerRadius,
    end: End,
    sign: impl FnOnce(&egui::Painter, Rect, Color32),
) {
    let middle = rect.center();
    let square = |side: f32| Rect::from_center_size(middle, Vec2::splat(side));
    match end {
        End::Danger => {
            let paint = tokens::signal(Signal::Danger);
            painter.rect_filled(rect, corners, paint.fill);
            sign(painter, square(rect.width().min(rect.height()) * 0.6), paint.on);
        }
        End::System(system) => {
            let paint = tokens::system(system);
            let side = rect.width().min(rect.height());
            shape(system, painter, middle, side * 0.38, paint.fill, Stroke::NONE);
            sign(painter, square(side * 0.42), paint.on);
        }
    }
}

/// How high a tile has to be for its text.
pub(crate) fn height_of_tile(ui: &Ui, width: f32, tile: &Tile<'_>) -> f32 {
    tile_height(tile, &tile_text(ui, width, tile))
}

fn tile_height(tile: &Tile<'_>, text: &Galley) -> f32 {
    if tile.is_small {
        (text.size().y + 12.0).max(SMALL_TILE)
    } else {
        (text.size().y + 14.0).max(TILE)
    }
}

fn tile_text(ui: &Ui, width: f32, tile: &Tile<'_>) -> Arc<Galley> {
    let palette = Palette::of(ui);
    let mut job = LayoutJob::default();
    job.wrap.max_width = (width - TILE_END - 24.0).max(40.0);
    let format = |font, color| TextFormat { font_id: font, color, ..TextFormat::default() };
    if tile.is_small {
        job.append(tile.title, 0.0, format(FontId::new(size::SMALL_TILE, bold()), palette.ink));
        return ui.painter().layout_job(job);
    }
    job.append(tile.title, 0.0, format(FontId::new(size::TILE, bold()), palette.ink));
    job.append("\n", 0.0, format(FontId::proportional(size::SMALL), palette.soft));
    job.append(tile.hint, 0.0, format(FontId::proportional(size::SMALL), palette.soft));
    ui.painter().layout_job(job)
}

/// A device's tag on the shape of its system, as on the plan and on the real tag.
pub(crate) fn plate(ui: &mut Ui, system: System, tag: Option<&str>, radius: f32) {
    let (rect, _) = ui.allocate_exact_size(Vec2::splat(radius * 2.6), Sense::hover());
    pin(ui.painter(), rect.center(), radius, system, tag, Stroke::NONE);
}

/// Draws a pin: the system's shape with the tag in it.
pub(crate) fn pin(
    painter: &egui::Painter,
    centre: Pos2,
    radius: f32,
    system: System,
    tag: Option<&str>,
    edge: Stroke,
) {
    let paint = tokens::system(system);
    shape(system, painter, centre, radius, paint.fill, edge);
    match tag {
        Some(tag) => {
            // Long tags are written smaller, to stay within the shape.
            let letters = tag.chars().count().max(2);
            let shrink = if letters > 3 {
                0.72
            } else if letters > 2 {
                0.86
            } else {
                1.0
            };
            let font = FontId::new(size::PIN * radius / tokens::PIN * shrink, bold());
            painter.text(centre, Align2::CENTER_CENTER, tag, font, paint.on);
        }
        None => {
            painter.circle_filled(centre, radius * 0.3, paint.on);
        }
    }
}

/// A raised sheet as wide as there is room, with its edge drawn so.
pub(crate) fn card(ui: &mut Ui, edge: Stroke, add: impl FnOnce(&mut Ui)) {
    Frame::new()
        .fill(Palette::of(ui).card)
        .stroke(edge)
        .corner_radius(ROUND)
        .inner_margin(INSIDE)
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            add(ui);
        });
}
