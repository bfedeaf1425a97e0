//! Every colour, size and distance of the window.
//!
//! Colour is kept for what open standards give it to: signal words (ANSI Z535.4, ISO 3864) and
//! systems (APWA Uniform Color Code). All the rest is ink on paper, so that nothing competes with a
//! warning. No colour stands alone: a signal has its word, a system its shape and tag.

use egui::{Color32, CornerRadius, Margin, Stroke, Vec2};
use quarterturn_guidance::Signal;

use crate::system::System;

/// Height and width that a finger needs: WCAG 2.2, success criterion 2.5.5 (44 by 44).
pub(crate) const TOUCH: f32 = 44.0;
/// Height of what one presses in a hurry.
pub(crate) const TILE: f32 = 88.0;
/// Height of what one presses with a little more time.
pub(crate) const SMALL_TILE: f32 = 56.0;
/// Width of the coloured end of a tile.
pub(crate) const TILE_END: f32 = 64.0;
/// Least width of the coloured end of a caution, which holds its signal word.
pub(crate) const SIGNAL_WIDTH: f32 = 136.0;
/// Distance between things that belong together.
pub(crate) const GAP: f32 = 8.0;
/// Distance between things that do not.
pub(crate) const APART: f32 = 20.0;
/// Inside of a card.
pub(crate) const INSIDE: Margin = Margin::same(14);
/// Inside of the window's parts.
pub(crate) const PART: Margin = Margin::same(16);
/// Corners of cards and buttons.
pub(crate) const ROUND: CornerRadius = CornerRadius::same(6);
/// Narrower than this, the window is one column.
pub(crate) const ONE_COLUMN: f32 = 900.0;
/// Height of the plan where it is one of several things in a column.
pub(crate) const PLAN_IN_COLUMN: f32 = 420.0;
/// Side of the picture beside the step to do now.
pub(crate) const FIGURE: f32 = 128.0;
/// Narrower than this, the picture stands over the words.
pub(crate) const SIDE_BY_SIDE: f32 = 380.0;
/// Widest that a column of text gets.
pub(crate) const TEXT_COLUMN: f32 = 860.0;
/// Height of a plot with its axes.
pub(crate) const PLOT_HEIGHT: f32 = 168.0;
/// The sample of a line beside what it means.
pub(crate) const PLOT_SAMPLE: Vec2 = Vec2::new(39.0, 22.0);
/// Radius of a pin.
pub(crate) const PIN: f32 = 15.0;
/// Radius of the pin of what is to be done now.
pub(crate) const PIN_NOW: f32 = 19.0;

/// Sizes of text, in points of the screen.
pub(crate) mod size {
    /// What is to be done now.
    pub(crate) const ACT: f32 = 22.0;
    /// A heading.
    pub(crate) const HEADING: f32 = 24.0;
    /// The name of a trouble.
    pub(crate) const TILE: f32 = 18.5;
    /// The name of a trouble on a small tile.
    pub(crate) const SMALL_TILE: f32 = 16.0;
    /// Telephone numbers.
    pub(crate) const PHONE: f32 = 44.0;
    /// Telephone numbers of those who might be needed.
    pub(crate) const PHONE_BESIDES: f32 = 22.0;
    /// A heading within a column.
    pub(crate) const SECTION: f32 = 16.0;
    /// Ordinary text, and buttons.
    pub(crate) const BODY: f32 = 17.0;
    /// The words of a caution.
    pub(crate) const CAUTION: f32 = 15.5;
    /// Hints.
    pub(crate) const SMALL: f32 = 14.5;
    /// Text in pins.
    pub(crate) const PIN: f32 = 12.0;
    /// Names of rooms on a plan that has no picture.
    pub(crate) const ROOM: f32 = 13.0;
}

/// The colours of a theme.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Palette {
    /// Behind everything.
    pub(crate) ground: Color32,
    /// Cards, buttons, text boxes.
    pub(crate) card: Color32,
    /// A card under the pointer.
    pub(crate) hover: Color32,
    /// Text.
    pub(crate) ink: Color32,
    /// Text that explains.
    pub(crate) soft: Color32,
    /// Edges of what can be pressed (3:1 against ground and card: WCAG 2.2, 1.4.11).
    pub(crate) edge: Color32,
    /// Lines that only part things.
    pub(crate) line: Color32,
    /// Ring around what the keyboard acts on.
    pub(crate) focus: Color32,
    /// Paper of a plan drawn from outlines.
    pub(crate) plan: Color32,
    /// Walls of a plan drawn from outlines.
    pub(crate) wall: Color32,
    /// What a plan's picture is multiplied with.
    pub(crate) picture: Color32,
    /// Laid over a plan's picture where it does not matter.
    pub(crate) veil: Color32,
    /// Lines of a plot. None is the colour of a signal or a system, and each has its own dashes and
    /// mark.
    pub(crate) plot: [Color32; 3],
}

const LIGHT: Palette = Palette {
    ground: Color32::from_rgb(0xf1, 0xef, 0xea),
    card: Color32::from_rgb(0xff, 0xff, 0xff),
    hover: Color32::from_rgb(0xe4, 0xe1, 0xd9),
    ink: Color32::from_rgb(0x1a, 0x1c, 0x1e),
    soft: Color32::from_rgb(0x50, 0x54, 0x58),
    edge: Color32::from_rgb(0x80, 0x7d, 0x75),
    line: Color32::from_rgb(0xd3, 0xcf, 0xc6),
    focus: Color32::from_rgb(0x7a, 0x1f, 0xa2),
    plan: Color32::from_rgb(0xfb, 0xfa, 0xf7),
    wall: Color32::from_rgb(0x3a, 0x3d, 0x40),
    picture: Color32::WHITE,
    veil: Color32::from_rgba_premultiplied(0x9a, 0x98, 0x94, 0xa8),
    plot: [
        Color32::from_rgb(0x1a, 0x1c, 0x1e),
        Color32::from_rgb(0x00, 0x75, 0x80),
        Color32::from_rgb(0x93, 0x58, 0x1b),
    ],
};

const DARK: Palette = Palette {
    ground: Color32::from_rgb(0x16, 0x18, 0x1a),
    card: Color32::from_rgb(0x24, 0x27, 0x2a),
    hover: Color32::from_rgb(0x36, 0x3a, 0x3e),
    ink: Color32::from_rgb(0xf2, 0xf0, 0xea),
    soft: Color32::from_rgb(0xb9, 0xba, 0xb8),
    edge: Color32::from_rgb(0x80, 0x84, 0x88),
    line: Color32::from_rgb(0x3c, 0x40, 0x44),
    focus: Color32::from_rgb(0xd9, 0xa6, 0xff),
    plan: Color32::from_rgb(0x1e, 0x21, 0x24),
    wall: Color32::from_rgb(0xc9, 0xc8, 0xc3),
    picture: Color32::from_gray(0xd2),
    veil: Color32::from_rgba_premultiplied(0x10, 0x11, 0x12, 0xa8),
    plot: [
        Color32::from_rgb(0xf2, 0xf0, 0xea),
        Color32::from_rgb(0x4f, 0xc3, 0xcf),
        Color32::from_rgb(0xdf, 0xa8, 0x6c),
    ],
};

impl Palette {
    /// The colours of the theme that the window shows.
    pub(crate) fn of(ui: &egui::Ui) -> &'static Self {
        Self::of_theme(egui::Theme::from_dark_mode(ui.visuals().dark_mode))
    }

    /// The colours of a theme.
    pub(crate) fn of_theme(theme: egui::Theme) -> &'static Self {
        match theme {
            egui::Theme::Light => &LIGHT,
            egui::Theme::Dark => &DARK,
        }
    }

    /// Edge of what can be pressed.
    pub(crate) fn edge_stroke(&self) -> Stroke {
        Stroke::new(1.0, self.edge)
    }

    /// Ring around what the keyboard acts on.
    pub(crate) fn focus_stroke(&self) -> Stroke {
        Stroke::new(3.0, self.focus)
    }
}

/// A fill and what is written on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Paint {
    /// The fill.
    pub(crate) fill: Color32,
    /// The writing.
    pub(crate) on: Color32,
}

/// What is drawn over a plan, always with a white edge: a plan may be of any colour.
pub(crate) const INK_ON_PLAN: Color32 = BLACK;
/// The edge of it.
pub(crate) const EDGE_ON_PLAN: Color32 = Color32::WHITE;
/// Ring around what the keyboard acts on there.
pub(crate) const FOCUS_ON_PLAN: Color32 = LIGHT.focus;

/// Near-black on light fills; pure black would glare beside coloured fields.
const BLACK: Color32 = Color32::from_rgb(0x10, 0x10, 0x10);

/// Colours of a signal word: red, orange, yellow, blue (ANSI Z535.4; sRGB values approximate).
pub(crate) const fn signal(signal: Signal) -> Paint {
    match signal {
        Signal::Danger => Paint { fill: Color32::from_rgb(0xc8, 0x10, 0x2e), on: Color32::WHITE },
        Signal::Warning => Paint { fill: Color32::from_rgb(0xff, 0x82, 0x00), on: BLACK },
        Signal::Caution => Paint { fill: Color32::from_rgb(0xff, 0xd1, 0x00), on: BLACK },
        Signal::Notice => Paint { fill: Color32::from_rgb(0x00, 0x63, 0xb8), on: Color32::WHITE },
    }
}

/// Colours of a system: blue potable water, green sewer and drain, red electric, yellow gas, orange
/// communication (APWA Uniform Color Code; sRGB values approximate). Cooling has none there: grey.
pub(crate) const fn system(system: System) -> Paint {
    match system {
        System::Water => Paint { fill: Color32::from_rgb(0x00, 0x5e, 0xb8), on: Color32::WHITE },
        System::Drain => Paint { fill: Color32::from_rgb(0x1f, 0x75, 0x2e), on: Color32::WHITE },
        System::Power => Paint { fill: Color32::from_rgb(0xc0, 0x1a, 0x24), on: Color32::WHITE },
        System::Gas => Paint { fill: Color32::from_rgb(0xff, 0xd1, 0x00), on: BLACK },
        System::Control => Paint { fill: Color32::from_rgb(0xf2, 0x8c, 0x28), on: BLACK },
        System::Cooling => Paint { fill: Color32::from_rgb(0x5a, 0x60, 0x68), on: Color32::WHITE },
    }
}

/// Lays the theme's colours and the sizes over egui's own style.
pub(crate) fn dress(style: &mut egui::Style, theme: egui::Theme) {
    use egui::{FontFamily, FontId, TextStyle};
    let palette = Palette::of_theme(theme);
    let proportional = |points: f32| FontId::new(points, FontFamily::Proportional);
    style.text_styles = [
        (TextStyle::Small, proportional(size::SMALL)),
        (TextStyle::Body, proportional(size::BODY)),
        (TextStyle::Button, proportional(size::BODY)),
        (TextStyle::Heading, FontId::new(size::HEADING, crate::fonts::bold())),
        (TextStyle::Monospace, FontId::new(size::SMALL, FontFamily::Monospace)),
    ]
    .into();
    style.spacing.interact_size = Vec2::splat(TOUCH);
    style.spacing.item_spacing = Vec2::splat(GAP);
    style.spacing.button_padding = Vec2::new(14.0, 9.0);
    style.spacing.combo_width = 160.0;
    style.spacing.icon_width = 20.0;
    style.spacing.scroll = egui::style::ScrollStyle::solid();
    style.spacing.scroll.bar_width = 12.0;
    style.interaction.selectable_labels = false;
    style.animation_time = 0.0;
    style.scroll_animation = egui::style::ScrollAnimation::none();

    let visuals = &mut style.visuals;
    visuals.override_text_color = None;
    visuals.weak_text_color = Some(palette.soft);
    visuals.panel_fill = palette.ground;
    visuals.window_fill = palette.ground;
    visuals.window_stroke = palette.edge_stroke();
    visuals.window_corner_radius = ROUND;
    visuals.menu_corner_radius = ROUND;
    visuals.extreme_bg_color = palette.card;
    visuals.text_edit_bg_color = Some(palette.card);
    visuals.faint_bg_color = palette.hover;
    visuals.hyperlink_color = palette.ink;
    // Also the frame of the text box that is typed into.
    visuals.selection.bg_fill = palette.hover;
    visuals.selection.stroke = Stroke::new(2.0, palette.focus);
    visuals.text_cursor.stroke = Stroke::new(2.0, palette.ink);
    visuals.text_cursor.blink = false;
    visuals.interact_cursor = Some(egui::CursorIcon::PointingHand);
    let widgets = &mut visuals.widgets;
    let ink = Stroke::new(1.5, palette.ink);
    widgets.noninteractive.fg_stroke = Stroke::new(1.0, palette.ink);
    widgets.noninteractive.bg_stroke = Stroke::new(1.0, palette.line);
    for (state, fill, stroke) in [
        (&mut widgets.inactive, palette.card, palette.edge_stroke()),
        (&mut widgets.hovered, palette.hover, Stroke::new(1.5, palette.ink)),
        // egui shows what has the focus as active.
        (&mut widgets.active, palette.hover, palette.focus_stroke()),
        (&mut widgets.open, palette.card, palette.edge_stroke()),
    ] {
        state.bg_fill = fill;
        state.weak_bg_fill = fill;
        state.bg_stroke = stroke;
        state.fg_stroke = ink;
        state.corner_radius = ROUND;
        state.expansion = 0.0;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance: WCAG 2.2, definition "relative luminance".
    fn luminance(colour: Color32) -> f64 {
        let linear = |channel: u8| {
            let c = f64::from(channel) / 255.0;
            if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
        };
        0.2126 * linear(colour.r()) + 0.7152 * linear(colour.g()) + 0.0722 * linear(colour.b())
    }

    /// Contrast ratio: WCAG 2.2, definition "contrast ratio".
    fn contrast(a: Color32, b: Color32) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    /// Values published beside the definition: black on white 21, #767676 on white 4.54, #777777 4.48.
    #[test]
    fn the_formula_agrees_with_published_values() {
        for (grey, expected) in [(0x00, 21.0), (0x76, 4.54), (0x77, 4.48)] {
            let found = contrast(Color32::from_gray(grey), Color32::WHITE);
            assert!((found - expected).abs() < 0.005, "{grey:x}: {found}");
        }
    }

    /// 4.5 to 1 for text: WCAG 2.2, 1.4.3.
    #[test]
    fn text_can_be_read() {
        for palette in [&LIGHT, &DARK] {
            for ground in [palette.ground, palette.card, palette.hover, palette.plan] {
                for text in [palette.ink, palette.soft, palette.focus] {
                    let found = contrast(text, ground);
                    assert!(found >= 4.5, "{text:?} on {ground:?}: {found}");
                }
            }
            assert!(contrast(palette.wall, palette.plan) >= 4.5);
        }
        let signals = [Signal::Danger, Signal::Warning, Signal::Caution, Signal::Notice];
        let paints = signals.map(signal).into_iter().chain(System::ALL.map(system));
        for paint in paints {
            let found = contrast(paint.on, paint.fill);
            assert!(found >= 4.5, "{paint:?}: {found}");
        }
    }

    /// 3 to 1 for edges, focus rings and the lines of a plot: WCAG 2.2, 1.4.11.
    #[test]
    fn edges_can_be_seen() {
        for palette in [&LIGHT, &DARK] {
            for ground in [palette.ground, palette.card] {
                let [first, second, third] = palette.plot;
                for edge in [palette.edge, palette.focus, palette.ink, first, second, third] {
                    let found = contrast(edge, ground);
                    assert!(found >= 3.0, "{edge:?} on {ground:?}: {found}");
                }
            }
        }
    }
}
