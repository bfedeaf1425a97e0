//! The plan to work on: every device as a pin, rooms as outlines, what a tool shows beside.
//!
//! All that a pointer does on it can be done with keys: with the focus on the plan the arrows move a
//! cross-hair, and Enter presses there.

mod draw;
mod keys;

pub(super) use keys::nudge;

use egui::{
    CursorIcon, PointerButton, Pos2, Rect, Response, Sense, Ui, WidgetInfo, accesskit::Role,
};
use quarterturn_guidance::fill;
use quarterturn_home::{Component, Kind, Level, Medium};

use super::{MapCommand, MapState, Tool};
use crate::ask::Command;
use crate::controls::{button, chosen_button, focus_ring, pin, soft};
use crate::looking::{self, Aim, Turn};
use crate::pictures::{Picture, Pictures};
use crate::pins::{in_reading_order, spread, squares};
use crate::sheet::Sheet;
use crate::system::System;
use crate::tokens::{EDGE_ON_PLAN, PIN, Palette, TOUCH};
use crate::view::View;
use crate::{light, north};

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

/// From so many points of the screen for a metre on, hoses and traps are shown too.
const NEAR: f32 = 45.0;

/// How the plan is looked at.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Look {
    /// Id of the level that it is about: another one is looked at anew.
    level: String,
    pub(super) aim: Aim,
    /// Where the cross-hair is, in metres, once a key has moved it.
    cross: Option<(f64, f64)>,
}

impl Look {
    /// The same of this level: anew if it was another's.
    pub(super) fn of(&self, level: &Level) -> Self {
        if self.level == level.id {
            return self.clone();
        }
        Self { level: level.id.clone(), ..Self::default() }
    }
}

/// A pin on its place on the screen.
struct Placed<'a> {
    component: &'a Component,
    /// In metres.
    here: (f64, f64),
    /// Where that is on the screen.
    anchor: Pos2,
    /// Where it is drawn.
    at: Pos2,
    /// What answers to a press.
    square: Rect,
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
    let path = level.plan.as_ref().map(|plan| plan.picture.as_str());
    let picture = pictures.get(ui.ctx(), path);
    let zooms = bar_ui(ui, view, level, out);
    picture_ui(ui, view, path, &picture);
    let area = ui.available_rect_before_wrap();
    let (_, ground) = ui.allocate_exact_size(area.size(), Sense::click_and_drag());
    let mut look = state.look.of(level);
    let Some(sheet) = Sheet::to_work_on(view.home, level, &picture, area, look.aim) else {
        ui.painter().rect_filled(area, 4.0, Palette::of(ui).plan);
        return Vec::new();
    };
    let mut turns = looking::wheel(ui, area);
    turns.extend(zooms.map(|zoom| zoom.turn(area)));
    let mut touches = Vec::new();
    let mut is_entered = false;
    if ground.has_focus() {
        is_entered = keys::keys(ui, &ground, &sheet, area, &mut look, &mut turns);
    }
    name_ground(view, level, &ground, &look);
    ui.scope(|ui| {
        ui.shrink_clip_rect(area);
        light::paper(ui, view, level, &picture, &sheet, None);
        draw::ground(ui, view, level, &picture, &sheet);
        let pins = placed(view, state, level, marks, &sheet);
        let squares: Vec<Rect> = pins.iter().map(|pin| pin.square).collect();
        north::mark_ui(ui, view, sheet.seen, &squares);
        draw::marks(ui, view, level, marks, &pins, &sheet);
        ground_touches(ui, level, marks, &ground, &sheet, &pins, &mut turns, &mut touches);
        pins_ui(ui, view, state, level, marks, &sheet, &pins, &mut touches);
        if ground.has_focus() {
            let at = look.cross.map_or(sheet.seen.center(), |(x, y)| sheet.at(x, y));
            draw::cross(ui, view, level, sheet.metres(at), at);
            if is_entered || ground.clicked() && !ground.clicked_by(PointerButton::Primary) {
                touches.push(press(level, &sheet, &pins, at));
            }
        }
    });
    ground_ring(ui, &ground);
    for turn in turns {
        look.aim = looking::turned(&sheet, area, turn);
    }
    if look != state.look {
        out.push(Command::Map(MapCommand::Look(look)));
    }
    touches
}

/// A button that changes how near one is.
#[derive(Debug, Clone, Copy)]
pub(super) enum Zoom {
    Nearer,
    Farther,
    Whole,
}

impl Zoom {
    pub(super) fn turn(self, area: Rect) -> Turn {
        match self {
            Self::Nearer => looking::nearer(area),
            Self::Farther => looking::farther(area),
            Self::Whole => Turn::Whole,
        }
    }
}

/// What there is to say of the level's picture.
pub(super) fn picture_ui(ui: &mut Ui, view: &View<'_>, path: Option<&str>, picture: &Picture<'_>) {
    match picture {
        Picture::Unreadable => {
            let fills = [fill("path", path.unwrap_or_default())];
            ui.label(soft(ui, view.fill("picture-unreadable", &fills)));
        }
        Picture::Coming => {
            ui.label(soft(ui, view.text("picture-coming")));
        }
        Picture::None | Picture::Ready(_) => {}
    }
}

/// The floors, and how near one is.
pub(super) fn bar_ui(
    ui: &mut Ui,
    view: &View<'_>,
    shown: &Level,
    out: &mut Vec<Command>,
) -> Option<Zoom> {
    let mut pressed = None;
    ui.horizontal_wrapped(|ui| {
        for level in &view.home.levels {
            if chosen_button(ui, &level.name, level.id == shown.id).clicked() {
                out.push(Command::Map(MapCommand::Level(level.id.clone())));
            }
        }
        let (nearer, farther) = (view.text("canvas-nearer"), view.text("plan-farther"));
        let whole = view.text("whole-floor");
        for (sign, name, zoom) in [
            ("+", nearer, Zoom::Nearer),
            ("\u{2212}", farther, Zoom::Farther),
            (whole.as_str(), whole.clone(), Zoom::Whole),
        ] {
            let response = button(ui, sign).accessible_name(name.clone()).on_hover_text(name);
            focus_ring(ui, &response);
            if response.clicked() {
                pressed = Some(zoom);
            }
        }
    });
    pressed
}

/// What a screen reader says of the plan: its level, and the room under the cross-hair.
fn name_ground(view: &View<'_>, level: &Level, ground: &Response, look: &Look) {
    let label = view.fill("plan-of", &[fill("level", &level.name)]);
    let room = look.cross.and_then(|at| draw::room_at(view.home, level, at));
    ground.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::Image, true, &label);
        info.current_text_value = room.map(|space| space.name.clone());
        info
    });
}

fn ground_ring(ui: &Ui, ground: &Response) {
    if ground.has_focus() {
        let stroke = Palette::of(ui).focus_stroke();
        ui.painter().rect_stroke(ground.rect.shrink(2.0), 4.0, stroke, egui::StrokeKind::Inside);
    }
}

/// The devices of a level that are seen, off one another.
fn placed<'a>(
    view: &View<'a>,
    state: &MapState,
    level: &Level,
    marks: &Marks,
    sheet: &Sheet,
) -> Vec<Placed<'a>> {
    let mut pins: Vec<(&Component, (f64, f64))> = Vec::new();
    for component in &view.home.components {
        let Some((x, y, _)) = component.at else { continue };
        let named =
            state.selected.as_ref() == Some(&component.id) || marks.bright.contains(&component.id);
        // Breakers stand in their panel, two dozen on one spot: the panel shows them.
        if component.kind == Kind::Breaker && component.panel.is_some() && !named {
            continue;
        }
        // Hoses and traps would hide what people look for, until one comes near or draws their lines.
        let is_small = component.tag.is_none() && !component.kind.is_served();
        let is_far = sheet.points(1.0) < NEAR && state.tool != Tool::Lines;
        if is_small && is_far && !named {
            continue;
        }
        let is_here = view.home.level_of(component).is_some_and(|on| on.id == level.id);
        if is_here && sheet.seen.contains(sheet.at(x, y)) {
            pins.push((component, (x, y)));
        }
    }
    let anchors: Vec<Pos2> = pins.iter().map(|(_, (x, y))| sheet.at(*x, *y)).collect();
    let places = spread(&anchors, sheet.seen.shrink(PIN), PIN * 2.2);
    let boxes = squares(&places, TOUCH);
    let mut placed: Vec<Placed<'_>> = Vec::new();
    for n in in_reading_order(&places, TOUCH) {
        let all = (pins.get(n), anchors.get(n), places.get(n), boxes.get(n));
        if let (Some(&(component, here)), Some(&anchor), Some(&at), Some(&square)) = all {
            placed.push(Placed { component, here, anchor, at, square });
        }
    }
    placed
}

/// A press at a point: on the pin there, if there is one.
fn press(level: &Level, sheet: &Sheet, pins: &[Placed<'_>], at: Pos2) -> Touch {
    let on = pin_at(pins, at);
    let (here, on) = match on {
        Some(pin) => (pin.here, Some(pin.component.id.clone())),
        None => (sheet.metres(at), None),
    };
    Touch::Pressed { level: level.id.clone(), at: here, on }
}

fn pin_at<'p, 'a>(pins: &'p [Placed<'a>], at: Pos2) -> Option<&'p Placed<'a>> {
    let near = |pin: &&Placed<'_>| pin.square.contains(at) && pin.at.distance(at) < TOUCH / 2.0;
    pins.iter().filter(near).min_by(|a, b| a.at.distance(at).total_cmp(&b.at.distance(at)))
}

#[expect(clippy::too_many_arguments, reason = "all of them are what the ground is about")]
fn ground_touches(
    ui: &Ui,
    level: &Level,
    marks: &Marks,
    ground: &Response,
    sheet: &Sheet,
    pins: &[Placed<'_>],
    turns: &mut Vec<Turn>,
    touches: &mut Vec<Touch>,
) {
    let pointer = ground.interact_pointer_pos();
    if let Some(at) = pointer.filter(|_| ground.clicked_by(PointerButton::Primary)) {
        let at = (level.id.clone(), sheet.metres(at));
        touches.push(Touch::Pressed { level: at.0, at: at.1, on: None });
    }
    let is_dragged = ground.dragged() || ground.drag_stopped();
    if is_dragged && marks.takes_drags {
        touches.extend(drag(ui, level, ground, sheet, pins, None));
    } else if ground.dragged() && ui.input(|i| i.multi_touch().is_none()) {
        ui.set_cursor_icon(CursorIcon::Grabbing);
        turns.push(Turn::By(ground.drag_delta()));
    }
    if let Some(at) = ground.hover_pos().filter(|_| !is_dragged) {
        touches.push(Touch::Hovered { at: sheet.metres(at), on: None });
    }
}

/// A drag that began on the ground or on a pin.
fn drag(
    ui: &Ui,
    level: &Level,
    response: &Response,
    sheet: &Sheet,
    pins: &[Placed<'_>],
    on: Option<&Placed<'_>>,
) -> Option<Touch> {
    let pointer = response.interact_pointer_pos()?;
    let from = match on {
        Some(pin) => pin.here,
        None => sheet.metres(ui.input(|i| i.pointer.press_origin()).unwrap_or(pointer)),
    };
    let own = on.map(|pin| pin.component.id.clone());
    let over = pin_at(pins, pointer).map(|pin| pin.component.id.clone());
    Some(Touch::Dragged {
        level: level.id.clone(),
        from,
        over: over.filter(|over| Some(over) != own.as_ref()),
        on: own,
        to: sheet.metres(pointer),
        is_over: response.drag_stopped(),
    })
}

#[expect(clippy::too_many_arguments, reason = "all of them are what the pins are about")]
fn pins_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    level: &Level,
    marks: &Marks,
    sheet: &Sheet,
    pins: &[Placed<'_>],
    touches: &mut Vec<Touch>,
) {
    for placed in pins {
        let component = placed.component;
        let id = ui.scope_id().with(("map-pin", &component.id));
        let response = ui.interact(placed.square, id, Sense::click_and_drag());
        let label = view.fill("pin", &[fill("device", &component.name)]);
        response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &label));
        let is_bright = marks.bright.is_empty() || marks.bright.contains(&component.id);
        let is_selected = state.selected.as_ref() == Some(&component.id);
        let mut at = placed.at;
        if response.dragged() && state.tool == Tool::Walk {
            at = response.interact_pointer_pos().unwrap_or(at);
        }
        let mut painter = ui.painter().clone();
        painter.set_opacity(if is_bright { 1.0 } else { 0.35 });
        draw::tie(&painter, placed.anchor, at);
        let radius = match (is_selected, &component.tag) {
            (true, _) => PIN * 1.3,
            (false, Some(_)) => PIN,
            // Hoses and traps are there, but nobody looks for them.
            (false, None) => PIN * 0.6,
        };
        let edge = egui::Stroke::new(2.0, EDGE_ON_PLAN);
        if is_selected {
            let focus = Palette::of(ui).focus_stroke();
            painter.circle_stroke(at, radius + 4.0, focus);
        }
        let system = System::of(view.home, component, None);
        pin(&painter, at, radius, system, component.tag.as_deref(), edge);
        focus_ring(ui, &response);
        if response.clicked() {
            touches.push(Touch::Pressed {
                level: level.id.clone(),
                at: placed.here,
                on: Some(component.id.clone()),
            });
        }
        if response.dragged() || response.drag_stopped() {
            touches.extend(drag(ui, level, &response, sheet, pins, Some(placed)));
        } else if response.hovered() {
            let on = Some(component.id.clone());
            touches.push(Touch::Hovered { at: placed.here, on });
        }
        if response.has_focus() && is_selected && state.tool == Tool::Walk {
            let by = nudge(ui, &response);
            if by != (0.0, 0.0) {
                let (x, y) = placed.here;
                touches.push(Touch::Dragged {
                    level: level.id.clone(),
                    from: placed.here,
                    on: Some(component.id.clone()),
                    to: (x + by.0, y + by.1),
                    over: None,
                    is_over: true,
                });
            }
        }
        response.on_hover_text(&component.name);
    }
}
