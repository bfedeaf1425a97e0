//! Keys on the plan: the arrows move a cross-hair, Enter presses there.

use egui::{Event, EventFilter, Key, Modifiers, Rect, Response, Ui};

use super::Look;
use crate::looking::{Aim, Turn};
use crate::sheet::Sheet;

/// An arrow moves the cross-hair by so many points of the screen, with shift by the smaller number.
const STRIDE: (f64, f64) = (16.0, 2.0);
/// An arrow moves a device by so many metres, with shift by the smaller number.
const NUDGE: (f64, f64) = (0.1, 0.01);
/// Plus and minus come so many times nearer.
const NEARER: f32 = 1.4;

/// Moves the cross-hair, comes nearer and goes farther. True if Enter or the space bar was pressed.
pub(super) fn keys(
    ui: &Ui,
    ground: &Response,
    sheet: &Sheet,
    area: Rect,
    look: &mut Look,
    turns: &mut Vec<Turn>,
) -> bool {
    let mut is_entered = false;
    for (key, is_fine) in pressed(ui, ground) {
        let cross = look.cross.unwrap_or_else(|| sheet.metres(sheet.seen.center()));
        let at = sheet.at(cross.0, cross.1);
        match key {
            Key::Plus | Key::Equals => turns.push(Turn::Nearer(NEARER, at)),
            Key::Minus => turns.push(Turn::Nearer(NEARER.recip(), at)),
            Key::Num0 | Key::Home => turns.push(Turn::Whole),
            Key::Enter | Key::Space => {
                look.cross = Some(cross);
                is_entered = true;
            }
            key => {
                let Some((x, y)) = arrow(key) else { continue };
                let far = if is_fine { STRIDE.1 } else { STRIDE.0 } / sheet.scale;
                let (least, most) = (sheet.metres(sheet.rect.min), sheet.metres(sheet.rect.max));
                let moved = (
                    (cross.0 + x * far).clamp(least.0, most.0),
                    (cross.1 + y * far).clamp(least.1, most.1),
                );
                look.cross = Some(moved);
                // The plan follows a cross-hair that leaves what is seen.
                if !area.expand(1.0).contains(sheet.at(moved.0, moved.1)) {
                    look.aim = Aim::ByHand { x: moved.0, y: moved.1, scale: sheet.scale };
                }
            }
        }
    }
    is_entered
}

/// By how much the arrows move what has the focus, in metres.
pub(in crate::map) fn nudge(ui: &Ui, pin: &Response) -> (f64, f64) {
    let mut by = (0.0, 0.0);
    for (key, is_fine) in pressed(ui, pin) {
        if let Some((x, y)) = arrow(key) {
            let far = if is_fine { NUDGE.1 } else { NUDGE.0 };
            by = (by.0 + x * far, by.1 + y * far);
        }
    }
    by
}

fn arrow(key: Key) -> Option<(f64, f64)> {
    match key {
        Key::ArrowLeft => Some((-1.0, 0.0)),
        Key::ArrowRight => Some((1.0, 0.0)),
        Key::ArrowUp => Some((0.0, -1.0)),
        Key::ArrowDown => Some((0.0, 1.0)),
        _ => None,
    }
}

/// The keys pressed while it has the focus, and whether shift was held. Arrows stay with it.
fn pressed(ui: &Ui, response: &Response) -> Vec<(Key, bool)> {
    let filter =
        EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    // With ctrl these keys make all of the window bigger.
    ui.input(|i| {
        let keys = i.events.iter().filter_map(|event| match event {
            Event::Key { key, pressed: true, modifiers, .. }
                if modifiers.matches_logically(Modifiers::NONE) || modifiers.shift_only() =>
            {
                Some((*key, modifiers.shift))
            }
            _ => None,
        });
        keys.collect()
    })
}
