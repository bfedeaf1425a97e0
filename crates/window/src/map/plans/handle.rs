//! A point that is dragged, or moved by the arrow keys.

use egui::{Color32, EventFilter, Key, Rect, Sense, Stroke, Ui, WidgetInfo, accesskit::Role, vec2};

use super::paper::{Paper, Point};
use crate::controls::focus_ring;
use crate::tokens::{EDGE_ON_PLAN, FOCUS_ON_PLAN, TOUCH};

/// Radius of a handle, in points of the screen.
const RADIUS: f32 = 9.0;

/// A handle as it is now.
pub(crate) struct Handle<'a> {
    /// Tells it from the others.
    pub(crate) id: (&'static str, usize),
    /// What a screen reader says.
    pub(crate) label: &'a str,
    /// Where it is.
    pub(crate) at: Point,
    /// How far an arrow key moves it.
    pub(crate) step: f64,
}

/// Where a handle was moved to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Moved {
    /// There.
    pub(crate) to: Point,
    /// False while it is being dragged.
    pub(crate) is_over: bool,
    /// True if it was moved by a key: just as far as that says, to nothing near.
    pub(crate) is_by_key: bool,
}

/// Shows a handle; tells where it was moved to.
pub(crate) fn handle_ui(ui: &Ui, paper: &Paper, handle: &Handle<'_>) -> Option<Moved> {
    let at = paper.at(handle.at);
    let id = ui.scope_id().with(handle.id);
    let rect = Rect::from_center_size(at, vec2(TOUCH, TOUCH));
    let response = ui.interact(rect, id, Sense::click_and_drag());
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, handle.label));
    if response.clicked() || response.drag_started() {
        response.request_focus();
    }
    let held = response.dragged() || response.has_focus();
    let fill = if held { FOCUS_ON_PLAN } else { Color32::from_black_alpha(0xb0) };
    ui.painter().circle(at, RADIUS, fill, Stroke::new(2.5, EDGE_ON_PLAN));
    ui.painter().circle_filled(at, 1.5, EDGE_ON_PLAN);
    focus_ring(ui, &response);
    if response.dragged() || response.drag_stopped() {
        let to = response.interact_pointer_pos()?;
        let is_over = response.drag_stopped();
        return Some(Moved { to: paper.point(to), is_over, is_by_key: false });
    }
    if !response.has_focus() {
        return None;
    }
    let filter =
        EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
    let (mut x, mut y) = handle.at;
    ui.input(|i| {
        let step = if i.modifiers.shift { handle.step * 10.0 } else { handle.step };
        for (key, dx, dy) in [
            (Key::ArrowLeft, -step, 0.0),
            (Key::ArrowRight, step, 0.0),
            (Key::ArrowUp, 0.0, -step),
            (Key::ArrowDown, 0.0, step),
        ] {
            if i.key_pressed(key) {
                x += dx;
                y += dy;
            }
        }
    });
    ((x, y) != handle.at).then_some(Moved { to: (x, y), is_over: true, is_by_key: true })
}
