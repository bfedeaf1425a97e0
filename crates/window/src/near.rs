//! The buttons on the plan: nearer, farther, the whole floor, what matters.

use std::sync::Arc;

use egui::{
    Color32, FontId, Galley, Painter, Pos2, Rect, Sense, Stroke, StrokeKind, Ui, WidgetInfo,
    accesskit::Role, pos2, vec2,
};

use crate::controls::focus_ring;
use crate::looking::{self, Aim, Turn};
use crate::sheet::Sheet;
use crate::tokens::{GAP, Palette, ROUND, TOUCH, size};
use crate::view::View;

/// Narrower than this, the signs stand without words.
const WORDS: f32 = 470.0;
/// Side of a sign.
const SIGN: f32 = 18.0;

/// The signs of the buttons.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Sign {
    Farther,
    Closer,
    Whole,
    Matters,
}

/// A button in its place.
#[derive(Debug)]
struct Near {
    key: &'static str,
    sign: Sign,
    turn: Turn,
    /// True if the plan is looked at so; `None` for what is done again and again.
    is_chosen: Option<bool>,
    words: Option<Arc<Galley>>,
    rect: Rect,
}

/// The buttons, from left to right.
#[derive(Debug)]
pub(crate) struct NearBar(Vec<Near>);

impl NearBar {
    /// Puts them at the right bottom of what is seen, or beside it where there is room.
    pub(crate) fn new(ui: &Ui, view: &View<'_>, aim: Aim, sheet: &Sheet, area: Rect) -> Self {
        let palette = Palette::of(ui);
        let is_whole = aim == Aim::Whole || sheet.scale <= sheet.whole * 1.001;
        let buttons = [
            ("plan-farther", Sign::Farther, looking::farther(area), None),
            ("closer", Sign::Closer, looking::nearer(area), None),
            ("whole-floor", Sign::Whole, Turn::Whole, Some(is_whole)),
            ("plan-matters", Sign::Matters, Turn::WhatMatters, Some(aim == Aim::WhatMatters)),
        ];
        let mut corner = pos2(area.right(), sheet.seen.bottom()) - vec2(GAP, GAP);
        let mut bar = Vec::new();
        for (key, sign, turn, is_chosen) in buttons.into_iter().rev() {
            let ink = if is_chosen == Some(true) { palette.card } else { palette.ink };
            let words = (area.width() >= WORDS && is_chosen.is_some()).then(|| {
                let font = FontId::proportional(size::SMALL);
                ui.painter().layout_no_wrap(view.text(key), font, ink)
            });
            let width = words.as_ref().map_or(TOUCH, |words| words.size().x + 52.0);
            let rect = Rect::from_min_max(corner - vec2(width, TOUCH), corner);
            corner.x = rect.left() - GAP * 0.75;
            bar.push(Near { key, sign, turn, is_chosen, words, rect });
        }
        bar.reverse();
        Self(bar)
    }

    /// What they take up.
    pub(crate) fn rects(&self) -> Vec<Rect> {
        self.0.iter().map(|near| near.rect).collect()
    }

    /// Draws them. Gives what the one that was pressed asks for.
    pub(crate) fn show(self, ui: &Ui, view: &View<'_>) -> Option<Turn> {
        let mut pressed = None;
        for near in self.0 {
            let turn = near.turn;
            if near.show(ui, view) {
                pressed = Some(turn);
            }
        }
        pressed
    }
}

impl Near {
    fn show(self, ui: &Ui, view: &View<'_>) -> bool {
        let palette = Palette::of(ui);
        let response = ui.interact(self.rect, ui.scope_id().with(self.key), Sense::click());
        response.widget_info(|| {
            let label = view.text(self.key);
            match self.is_chosen {
                None => WidgetInfo::labeled(Role::Button, true, label),
                Some(is_chosen) => WidgetInfo::selected(Role::Button, true, is_chosen, label),
            }
        });
        let (fill, ink) = match (self.is_chosen, response.hovered()) {
            (Some(true), _) => (palette.ink, palette.card),
            (_, true) => (palette.hover, palette.ink),
            (_, false) => (palette.card, palette.ink),
        };
        let painter = ui.painter();
        painter.rect(self.rect, ROUND, fill, palette.edge_stroke(), StrokeKind::Inside);
        let middle = self.rect.center();
        let at = match &self.words {
            Some(_) => pos2(self.rect.left() + 24.0, middle.y),
            None => middle,
        };
        self.sign.draw(painter, at, ink);
        if let Some(words) = self.words {
            let at = pos2(self.rect.left() + 40.0, middle.y - words.size().y / 2.0);
            painter.galley(at, words, ink);
        }
        focus_ring(ui, &response);
        response.on_hover_text(view.text(self.key)).clicked()
    }
}

impl Sign {
    fn draw(self, painter: &Painter, middle: Pos2, ink: Color32) {
        let rect = Rect::from_center_size(middle, vec2(SIGN, SIGN));
        let stroke = Stroke::new(2.4, ink);
        let at = |x: f32, y: f32| rect.lerp_inside(vec2(x, y));
        match self {
            Self::Closer | Self::Farther => {
                painter.line_segment([at(0.05, 0.5), at(0.95, 0.5)], stroke);
                if self == Self::Closer {
                    painter.line_segment([at(0.5, 0.05), at(0.5, 0.95)], stroke);
                }
            }
            Self::Whole => {
                painter.rect_stroke(rect.shrink(1.0), 1.0, stroke, StrokeKind::Inside);
                painter.line_segment([at(0.55, 0.1), at(0.55, 0.55)], Stroke::new(1.6, ink));
                painter.line_segment([at(0.1, 0.55), at(0.9, 0.55)], Stroke::new(1.6, ink));
            }
            Self::Matters => {
                painter.circle_stroke(middle, SIGN * 0.4, stroke);
                painter.circle_filled(middle, SIGN * 0.15, ink);
            }
        }
    }
}
