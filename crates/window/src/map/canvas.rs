//! The plan to work on: every device as a pin, rooms as outlines, what a tool shows beside.

use egui::{Pos2, Sense, Ui, WidgetInfo, accesskit::Role, vec2};
use quarterturn_guidance::fill;
use quarterturn_home::{Level, Medium};

use super::{MapCommand, MapState};
use crate::ask::Command;
use crate::controls::{chosen_button, focus_ring, pin};
use crate::looking::Aim;
use crate::pictures::Pictures;
use crate::sheet::Sheet;
use crate::system::System;
use crate::tokens::{PIN, Palette, TOUCH};
use crate::view::View;
use crate::{light, place};

/// What was done on the plan; x and y in metres on the level.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Touch {
    /// A press (click, tap, or Enter on a pin).
    Pressed {
        /// Id of the level.
        level: String,
        /// Where.
        at: (f64, f64),
        /// The component whose pin was pressed.
        on: Option<String>,
    },
    /// A drag that goes on.
    Dragged {
        /// Id of the level.
        level: String,
        /// Where it began.
        from: (f64, f64),
        /// The component on whose pin it began.
        on: Option<String>,
        /// Where it is.
        to: (f64, f64),
        /// The component over whose pin it is.
        over: Option<String>,
        /// True if the pointer was let go.
        is_over: bool,
    },
    /// The pointer is over the plan, without a press.
    Hovered {
        /// Where.
        at: (f64, f64),
        /// The component over whose pin it is.
        on: Option<String>,
    },
}

/// What a tool shows on the plan beside the devices.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Marks {
    /// Lines between components, by their ids, with what they carry; dashed if only proposed.
    pub(crate) lines: Vec<MarkedLine>,
    /// Outlines in metres, closed, with a name in their middle.
    pub(crate) outlines: Vec<(Vec<(f64, f64)>, String)>,
    /// Points in metres with a short text, such as the ends of a distance that is measured.
    pub(crate) points: Vec<((f64, f64), String)>,
    /// Components that stand out; the others are faint. Empty for all alike.
    pub(crate) bright: Vec<String>,
    /// True if a drag on the ground belongs to the tool; else it moves the plan.
    pub(crate) takes_drags: bool,
}

/// A line of a tool.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct MarkedLine {
    /// Id of the component it comes from.
    pub(crate) from: String,
    /// Id of the component it goes to.
    pub(crate) to: String,
    /// What it carries.
    pub(crate) carries: Medium,
    /// True if it is only proposed.
    pub(crate) is_proposed: bool,
}

/// Draws the plan with its devices, and tells what was done on it.
pub(crate) fn canvas_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    level: &Level,
    marks: &Marks,
    pictures: &mut Pictures,
    out: &mut Vec<Command>,
) -> Vec<Touch> {
    levels_ui(ui, view, level, out);
    let picture = level.plan.as_ref().map(|plan| plan.picture.as_str());
    let picture = pictures.get(ui.ctx(), picture);
    let area = ui.available_rect_before_wrap();
    let (_, ground) = ui.allocate_exact_size(area.size(), Sense::click_and_drag());
    let label = view.fill("plan-of", &[fill("level", &level.name)]);
    ground.widget_info(|| WidgetInfo::labeled(Role::Image, true, &label));
    let Some(sheet) = Sheet::fit(view.home, level, &picture, area, Aim::Whole, None) else {
        ui.painter().rect_filled(area, 4.0, Palette::of(ui).plan);
        return Vec::new();
    };
    let mut touches = Vec::new();
    ui.scope(|ui| {
        ui.shrink_clip_rect(area);
        light::paper(ui, view, level, &picture, &sheet, None);
        if let Some(at) = ground.interact_pointer_pos().filter(|_| ground.clicked()) {
            touches.push(Touch::Pressed {
                level: level.id.clone(),
                at: sheet.metres(at),
                on: None,
            });
        }
        pins_ui(ui, view, state, level, marks, &sheet, &mut touches);
    });
    touches
}

fn levels_ui(ui: &mut Ui, view: &View<'_>, shown: &Level, out: &mut Vec<Command>) {
    ui.horizontal_wrapped(|ui| {
        for level in &view.home.levels {
            if chosen_button(ui, &level.name, level.id == shown.id).clicked() {
                out.push(Command::Map(MapCommand::Level(level.id.clone())));
            }
        }
    });
}

fn pins_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    level: &Level,
    marks: &Marks,
    sheet: &Sheet,
    touches: &mut Vec<Touch>,
) {
    for component in &view.home.components {
        let Some(here) = place::of_component(view.home, &component.id) else { continue };
        if here.level != level.id || component.at.is_none() {
            continue;
        }
        let at: Pos2 = sheet.at(here.x, here.y);
        let rect = egui::Rect::from_center_size(at, vec2(TOUCH, TOUCH));
        let id = ui.scope_id().with(("map-pin", &component.id));
        let response = ui.interact(rect, id, Sense::click());
        let label = view.fill("pin", &[fill("device", &component.name)]);
        response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &label));
        let is_bright = marks.bright.is_empty() || marks.bright.contains(&component.id);
        let is_selected = state.selected.as_ref() == Some(&component.id);
        let radius = if is_selected { PIN * 1.3 } else { PIN };
        let edge = egui::Stroke::new(2.0, crate::tokens::EDGE_ON_PLAN);
        let mut painter = ui.painter().clone();
        painter.set_opacity(if is_bright { 1.0 } else { 0.35 });
        let system = System::of(view.home, component, None);
        pin(&painter, at, radius, system, component.tag.as_deref(), edge);
        focus_ring(ui, &response);
        if response.on_hover_text(&component.name).clicked() {
            touches.push(Touch::Pressed {
                level: level.id.clone(),
                at: (here.x, here.y),
                on: Some(component.id.clone()),
            });
        }
    }
}
