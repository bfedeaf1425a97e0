//! A box to type in, with its label over it.

use egui::{Key, TextEdit, Ui, vec2};

use crate::controls::{focus_ring, soft};
use crate::tokens::TOUCH;

/// What was done in a box to type in.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct Typed {
    /// What stands in it now, if that changed.
    pub(crate) text: Option<String>,
    /// True if Enter was pressed in it.
    pub(crate) is_entered: bool,
}

/// Shows a box with this label. What stands in it is kept by who asks.
pub(crate) fn field(ui: &mut Ui, label: &str, hint: &str, value: &str) -> Typed {
    field_with(ui, label, hint, value, false)
}

/// The same; one that `takes_focus` is there to be typed into at once.
pub(crate) fn field_with(
    ui: &mut Ui,
    label: &str,
    hint: &str,
    value: &str,
    takes_focus: bool,
) -> Typed {
    let label = ui.label(soft(ui, label));
    let mut text = value.to_owned();
    let response = ui.add(
        TextEdit::singleline(&mut text)
            .id_salt(label.id)
            .hint_text(hint)
            .desired_width(f32::INFINITY)
            .min_size(vec2(TOUCH, TOUCH))
            .align(egui::Align2::LEFT_CENTER),
    );
    let response = response.labelled_by(label.id);
    focus_ring(ui, &response);
    if takes_focus {
        response.request_focus();
    }
    let is_entered = response.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
    Typed { text: response.changed().then_some(text), is_entered }
}
