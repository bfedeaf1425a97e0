//! Pins on the plan: the spots to pick, the devices to go to, the trouble.

use std::time::Duration;

use egui::{FontId, Pos2, Rect, Sense, Stroke, Ui, Vec2, WidgetInfo, accesskit::Role, vec2};
use quarterturn_guidance::{Signal, fill};
use quarterturn_home::Level;

use crate::ask::Command;
use crate::controls::pin;
use crate::fonts::bold;
use crate::pins::{covered, in_reading_order, spread, squares};
use crate::sheet::{Sheet, shown_rows};
use crate::spots::Row;
use crate::system::System;
use crate::tokens::{self, PIN, PIN_NOW, Palette, ROUND, TOUCH, size};
use crate::view::View;
use crate::{place, signs};

/// Radius of the largest pin with its ring.
const PIN_ROUND: f32 = PIN_NOW * 1.75;

/// What a pin stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Meaning {
    Spot,
    Device,
    Goal,
    Trouble,
}

/// A pin, not yet moved off others.
#[derive(Debug)]
pub(crate) struct Pin {
    pub(crate) meaning: Meaning,
    /// Where what it stands for is on the screen.
    pub(crate) anchor: Pos2,
    /// Tells it from the others, also in another language.
    id: String,
    system: System,
    tag: Option<String>,
    name: String,
    label: String,
    press: Option<Command>,
}

/// The pins of a level, each with its place on the screen.
pub(crate) fn placed(view: &View<'_>, level: &Level, sheet: &Sheet) -> Vec<(Pin, Pos2)> {
    let pins = match view.answer {
        Some(_) => answer_pins(view, level, sheet),
        None => spot_pins(view, level, sheet),
    };
    // What leads on stays in sight at the edge; the rest belongs where it is.
    let stays = |pin: &Pin| matches!(pin.meaning, Meaning::Goal | Meaning::Trouble);
    let pins: Vec<Pin> =
        pins.into_iter().filter(|pin| stays(pin) || sheet.seen.contains(pin.anchor)).collect();
    let anchors: Vec<Pos2> = pins.iter().map(|pin| pin.anchor).collect();
    let (apart, inside) =
        if view.answer.is_some() { (PIN_NOW * 3.0, PIN_NOW * 1.8) } else { (PIN * 2.4, PIN) };
    let places = spread(&anchors, sheet.seen.shrink(inside), apart);
    pins.into_iter().zip(places).collect()
}

/// What the pins take up.
pub(crate) fn squares_of(pins: &[(Pin, Pos2)]) -> impl Iterator<Item = Rect> {
    pins.iter().map(|(_, place)| Rect::from_center_size(*place, Vec2::splat(2.0 * PIN_ROUND)))
}

/// Draws the pins and lets them be pressed, in the order one reads them. Names keep off
/// what is taken; gives what is taken then.
pub(crate) fn pins_ui(
    ui: &mut Ui,
    view: &View<'_>,
    sheet: &Sheet,
    pins: &[(Pin, Pos2)],
    mut taken: Vec<Rect>,
    out: &mut Vec<Command>,
) -> Vec<Rect> {
    let palette = Palette::of(ui);
    let places: Vec<Pos2> = pins.iter().map(|(_, place)| *place).collect();
    let squares = squares(&places, TOUCH);
    for (pin, place) in pins {
        if pin.anchor.distance(*place) > PIN {
            let (edge, line) = (tokens::EDGE_ON_PLAN, tokens::INK_ON_PLAN);
            ui.painter().line_segment([pin.anchor, *place], Stroke::new(4.0, edge));
            ui.painter().line_segment([pin.anchor, *place], Stroke::new(1.5, line));
            ui.painter().circle(pin.anchor, 3.5, line, Stroke::new(1.5, edge));
        }
    }
    for n in in_reading_order(&places, TOUCH) {
        if let (Some((pin, place)), Some(square)) = (pins.get(n), squares.get(n)) {
            pin_ui(ui, view, palette, pin, *place, *square, out);
        }
    }
    // Names over everything else, that of the goal away from that of the trouble.
    let of = |meaning| pins.iter().find(|(pin, _)| pin.meaning == meaning);
    let (goal, trouble) = (of(Meaning::Goal), of(Meaning::Trouble));
    let goal_is_above = goal.zip(trouble).is_some_and(|((_, goal), (_, t))| goal.y <= t.y);
    taken.extend(squares);
    for (named, over) in [(goal, goal_is_above), (trouble, goal.is_some() && !goal_is_above)] {
        if let Some((pin, place)) = named {
            let others =
                taken.iter().filter(|rect| rect.center() != *place).copied().collect::<Vec<_>>();
            taken.push(name_ui(ui, sheet, pin, *place, over, &others));
        }
    }
    taken
}

fn spot_pins(view: &View<'_>, level: &Level, sheet: &Sheet) -> Vec<Pin> {
    let pin = |row: &Row| {
        let (on, x, y) = row.place.as_ref()?;
        let system = row.system?;
        (*on == level.id).then(|| Pin {
            meaning: Meaning::Spot,
            anchor: sheet.at(*x, *y),
            id: format!("{:?}", row.spot),
            system,
            tag: row.tag.clone(),
            name: row.name.clone(),
            label: view.fill("pin", &[fill("device", &row.name)]),
            press: Some(Command::PickSpot(row.spot.clone())),
        })
    };
    shown_rows(view).filter_map(pin).collect()
}

fn answer_pins(view: &View<'_>, level: &Level, sheet: &Sheet) -> Vec<Pin> {
    let Some(answer) = view.answer else { return Vec::new() };
    let home = view.home;
    let preferred = view.asked.trouble.and_then(System::of_trouble);
    let goal = view.asked.goal(answer);
    let mut pins = Vec::new();
    let spot = view.asked.at.as_ref();
    if let Some((spot, at)) = spot.and_then(|s| Some((s, place::of_spot(home, s)?)))
        && at.level == level.id
    {
        let name = place::name_of_spot(home, spot, view.words);
        pins.push(Pin {
            meaning: Meaning::Trouble,
            anchor: sheet.at(at.x, at.y),
            id: "trouble".to_owned(),
            system: preferred.unwrap_or(System::Control),
            tag: None,
            label: view.fill("trouble-here-at", &[fill("spot", &name)]),
            name: view.text("trouble-here"),
            press: None,
        });
    }
    for id in view.asked.devices(answer) {
        let (Some(component), Some(at)) = (home.component(&id), place::of_component(home, &id))
        else {
            continue;
        };
        if at.level != level.id {
            continue;
        }
        let is_goal = goal.as_ref() == Some(&id);
        let key = if is_goal { "go-to" } else { "pin" };
        pins.push(Pin {
            meaning: if is_goal { Meaning::Goal } else { Meaning::Device },
            anchor: sheet.at(at.x, at.y),
            system: System::of(home, component, preferred),
            tag: component.tag.clone(),
            name: component.name.clone(),
            label: view.fill(key, &[fill("device", &component.name)]),
            press: None,
            id,
        });
    }
    pins
}

fn pin_ui(
    ui: &mut Ui,
    view: &View<'_>,
    palette: &Palette,
    shown: &Pin,
    place: Pos2,
    square: Rect,
    out: &mut Vec<Command>,
) {
    let id = ui.scope_id().with(("pin", &shown.id));
    let sense = if shown.press.is_some() { Sense::click() } else { Sense::hover() };
    let response = ui.interact(square, id, sense);
    let role = if shown.press.is_some() { Role::Button } else { Role::Image };
    response.widget_info(|| WidgetInfo::labeled(role, true, &shown.label));
    let painter = ui.painter();
    let around = Stroke::new(2.0, tokens::EDGE_ON_PLAN);
    let tag = shown.tag.as_deref();
    match shown.meaning {
        Meaning::Trouble => {
            let paint = tokens::signal(Signal::Danger);
            let rect = Rect::from_center_size(place, Vec2::splat(36.0));
            painter.circle_filled(place + vec2(0.0, 2.0), 22.0, tokens::EDGE_ON_PLAN);
            painter.circle_stroke(place + vec2(0.0, 2.0), 22.0, Stroke::new(2.0, paint.fill));
            signs::alert(painter, rect, paint.fill, paint.on);
        }
        Meaning::Goal => {
            if view.motion {
                pulse(ui, place);
            }
            let painter = ui.painter();
            painter.circle_filled(place, PIN_NOW * 1.75, tokens::EDGE_ON_PLAN);
            let ring = Stroke::new(4.0, tokens::INK_ON_PLAN);
            painter.circle_stroke(place, PIN_NOW * 1.65, ring);
            pin(painter, place, PIN_NOW, shown.system, tag, Stroke::NONE);
        }
        Meaning::Spot | Meaning::Device => {
            let pointed_at = response.hovered() && shown.press.is_some();
            let radius = if pointed_at { PIN * 1.25 } else { PIN };
            pin(painter, place, radius, shown.system, tag, around);
        }
    }
    if response.has_focus() {
        // The ring on white, so that it is seen on any plan.
        let stroke = palette.focus_stroke();
        let radius = PIN * 1.65;
        ui.painter().circle_stroke(place, radius, Stroke::new(7.0, tokens::EDGE_ON_PLAN));
        ui.painter().circle_stroke(
            place,
            radius,
            Stroke::new(stroke.width + 0.5, tokens::FOCUS_ON_PLAN),
        );
    }
    let response = response.on_hover_text(&shown.name);
    if let Some(press) = &shown.press
        && response.clicked()
    {
        out.push(press.clone());
    }
}

/// A ring that widens and fades, once in this many seconds.
fn pulse(ui: &Ui, place: Pos2) {
    const SECONDS: f64 = 1.6;
    /// Often enough for a slow ring, and no more.
    const FRAME: Duration = Duration::from_millis(40);
    let time = ui.input(|i| i.time);
    #[expect(clippy::cast_possible_truncation, reason = "a part of a round, from 0 to 1")]
    let part = ((time / SECONDS).fract()) as f32;
    let radius = PIN_NOW * (1.75 + 1.1 * part);
    let ink = tokens::INK_ON_PLAN.gamma_multiply(1.0 - part);
    let edge = tokens::EDGE_ON_PLAN.gamma_multiply(1.0 - part);
    ui.painter().circle_stroke(place, radius, Stroke::new(7.0, edge));
    ui.painter().circle_stroke(place, radius, Stroke::new(3.5, ink));
    ui.ctx().request_repaint_after(FRAME);
}

/// The name over, under or beside a pin: kept on the sheet, and over nothing else if that can be.
fn name_ui(ui: &Ui, sheet: &Sheet, pin: &Pin, place: Pos2, over: bool, taken: &[Rect]) -> Rect {
    let font = FontId::new(size::SMALL, bold());
    let (fill, ink, radius) = match pin.meaning {
        Meaning::Trouble => {
            let paint = tokens::signal(Signal::Danger);
            (paint.fill, paint.on, PIN_NOW * 1.4)
        }
        Meaning::Goal | Meaning::Device | Meaning::Spot => {
            (tokens::INK_ON_PLAN, tokens::EDGE_ON_PLAN, PIN_NOW * 1.9)
        }
    };
    let galley = ui.painter().layout(pin.name.clone(), font, ink, 240.0);
    let size = galley.size() + vec2(16.0, 8.0);
    let up = vec2(0.0, radius + size.y / 2.0);
    let right = vec2(radius + size.x / 2.0, 0.0);
    let first = if over { -up } else { up };
    let rect = [first, -first, right, -right]
        .into_iter()
        .map(|away| sheet.within(Rect::from_center_size(place + away, size)))
        .min_by(|a, b| {
            let own = Rect::from_center_size(place, Vec2::splat(radius * 1.8));
            let hidden = |rect: &Rect| covered(*rect, taken) + 4.0 * covered(*rect, &[own]);
            hidden(a).total_cmp(&hidden(b))
        })
        .unwrap_or(Rect::from_center_size(place + first, size));
    ui.painter().rect_filled(rect.expand(1.5), ROUND, tokens::EDGE_ON_PLAN);
    ui.painter().rect_filled(rect, ROUND, fill);
    ui.painter().galley(rect.min + vec2(8.0, 4.0), galley, ink);
    rect
}
