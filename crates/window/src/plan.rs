//! The plan of a level: rooms, spots to pick, devices to go to.

use egui::{
    Align2, ComboBox, CursorIcon, FontId, Pos2, Rect, Response, Sense, Shape, Stroke, Ui, Vec2,
    WidgetInfo, accesskit::Role, pos2, vec2,
};
use quarterturn_guidance::{Signal, Spot, fill};
use quarterturn_home::{Level, Space};

use crate::ask::Command;
use crate::controls::{button, focus_ring, pin, soft, strong};
use crate::fonts::bold;
use crate::pictures::{Picture, Pictures};
use crate::pins::{spread, squares};
use crate::sheet::{Sheet, focus, shown_rows, spaces_of};
use crate::spots::Row;
use crate::system::System;
use crate::tokens::{self, PIN, PIN_NOW, Palette, ROUND, TOUCH, size};
use crate::view::View;
use crate::{place, signs};

/// The plan of the level that matters, with the choice of the others.
pub(crate) fn plan_ui(
    ui: &mut Ui,
    view: &View<'_>,
    pictures: &mut Pictures,
    out: &mut Vec<Command>,
) {
    let Some(level) = level_to_show(view) else {
        ui.label(view.text("no-levels"));
        return;
    };
    bar_ui(ui, view, level, out);
    let picture = level.plan.as_ref().map(|plan| plan.picture.as_str());
    let picture = pictures.get(ui.ctx(), picture);
    if matches!(picture, Picture::Unreadable) {
        let path = level.plan.as_ref().map_or("", |plan| plan.picture.as_str());
        ui.label(soft(ui, view.fill("picture-unreadable", &[fill("path", path)])));
    }
    way_ui(ui, view, level, out);
    drawing_ui(ui, view, level, &picture, out);
}

/// The level to show: the one asked for, else the one where the next device or the spot is, else the
/// one where people mostly are.
pub(crate) fn level_to_show<'a>(view: &View<'a>) -> Option<&'a Level> {
    let home = view.home;
    let asked = view.asked;
    let goal = || {
        let goal = asked.goal(view.answer?)?;
        place::of_component(home, &goal).map(|p| p.level)
    };
    let device = || {
        let devices = asked.devices(view.answer?);
        devices.iter().find_map(|id| place::of_component(home, id)).map(|p| p.level)
    };
    let spot = || place::of_spot(home, asked.at.as_ref()?).map(|p| p.level);
    let usual = || home.space(home.usual_space.as_deref()?)?.level.as_deref();
    let found = asked
        .level
        .as_deref()
        .or_else(goal)
        .or_else(device)
        .or_else(spot)
        .or_else(usual)
        .and_then(|id| home.level(id));
    found.or_else(|| home.levels.first())
}

/// The levels, and at an answer the room where one is.
fn bar_ui(ui: &mut Ui, view: &View<'_>, shown: &Level, out: &mut Vec<Command>) {
    let devices = view.answer.map(|a| view.asked.devices(a)).unwrap_or_default();
    ui.horizontal_wrapped(|ui| {
        for level in &view.home.levels {
            let here = devices
                .iter()
                .filter(|id| {
                    place::of_component(view.home, id).is_some_and(|p| p.level == level.id)
                })
                .count();
            let text = match here {
                0 => level.name.clone(),
                n => view.fill(
                    "level-with-devices",
                    &[fill("level", &level.name), fill("n", &n.to_string())],
                ),
            };
            if level_button(ui, &text, level.id == shown.id).clicked() {
                out.push(Command::ShowLevel(level.id.clone()));
            }
        }
        if view.answer.is_some() && !view.asked.trouble.is_some_and(|t| t.is_leave_first()) {
            stand_ui(ui, view, out);
        }
    });
}

fn level_button(ui: &mut Ui, text: &str, is_shown: bool) -> Response {
    let palette = Palette::of(ui);
    let (fill, ink) =
        if is_shown { (palette.ink, palette.card) } else { (palette.card, palette.ink) };
    let label = egui::RichText::new(text).color(ink);
    let response =
        ui.add(egui::Button::new(label).fill(fill).min_size(vec2(TOUCH, TOUCH)).selected(is_shown));
    focus_ring(ui, &response);
    response
}

/// Asks in which room the person is: the walk is counted from there.
fn stand_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    let spot = view.asked.at.as_ref().and_then(|spot| place::space_of_spot(view.home, spot));
    let here = view.asked.from.as_deref().and_then(|id| view.home.space(id)).or(spot);
    let unknown = view.text("stand-unknown");
    let text = match here {
        Some(space) => view.fill("stand-in", &[fill("space", &space.name)]),
        None => unknown,
    };
    let combo = ComboBox::from_id_salt("stand").selected_text(text).height(400.0);
    let response = combo.show_ui(ui, |ui| {
        for space in &view.home.spaces {
            let is_here = here.is_some_and(|h| h.id == space.id);
            if ui.selectable_label(is_here, &space.name).clicked() {
                out.push(Command::StandIn(space.id.clone()));
            }
        }
    });
    response.response.accessible_name(view.text("stand"));
}

/// Says which level to go to, where the plan alone cannot show the way.
fn way_ui(ui: &mut Ui, view: &View<'_>, shown: &Level, out: &mut Vec<Command>) {
    let Some(goal) = view.answer.and_then(|a| view.asked.goal(a)) else { return };
    let name = place::name(view.home, &goal);
    let Some(to) = place::of_component(view.home, &goal) else {
        ui.label(view.fill("not-on-plan", &[fill("device", name)]));
        return;
    };
    let to_level = view.home.level(to.level).map_or("", |l| l.name.as_str());
    if to.level != shown.id {
        let text = view.fill("device-on-level", &[fill("device", name), fill("level", to_level)]);
        if button(ui, &text).clicked() {
            out.push(Command::ShowLevel(to.level.to_owned()));
        }
        return;
    }
    if let Some(from) = view.asked.stands_at(view.home).filter(|from| from.level != to.level) {
        let from_level = view.home.level(from.level).map_or("", |l| l.name.as_str());
        let text = view.fill("go-to-level", &[fill("from", from_level), fill("to", to_level)]);
        ui.label(strong(text, size::BODY));
    }
}

fn drawing_ui(
    ui: &mut Ui,
    view: &View<'_>,
    level: &Level,
    picture: &Picture<'_>,
    out: &mut Vec<Command>,
) {
    let area = ui.available_rect_before_wrap();
    let focus = focus(view, level);
    let Some(sheet) = Sheet::fit(view.home, level, picture, area, focus) else {
        ui.label(view.text("no-plan"));
        return;
    };
    let (_, background) = ui.allocate_exact_size(area.size(), Sense::click());
    let label = view.fill("plan-of", &[fill("level", &level.name)]);
    background.widget_info(|| WidgetInfo::labeled(Role::Image, true, &label));
    ui.scope(|ui| {
        ui.shrink_clip_rect(sheet.seen.expand(1.0));
        paper(ui, view, level, picture, &sheet);
        rooms(ui, view, level, &sheet, &background, out);
        pins_ui(ui, view, level, &sheet, out);
    });
    if view.asked.whole_floor || focus.is_some() && sheet.seen != sheet.rect {
        closer_ui(ui, view, &sheet, out);
    }
}

/// Switches between the part that matters and the whole floor.
fn closer_ui(ui: &mut Ui, view: &View<'_>, sheet: &Sheet, out: &mut Vec<Command>) {
    let whole = view.asked.whole_floor;
    let text = view.text(if whole { "closer" } else { "whole-floor" });
    let size = vec2(130.0, TOUCH);
    let corner = sheet.seen.right_bottom() - size - vec2(8.0, 8.0);
    let rect = Rect::from_min_size(corner, size);
    let fill = Palette::of(ui).card;
    if ui.put(rect, egui::Button::new(text).fill(fill)).clicked() {
        out.push(Command::WholeFloor(!whole));
    }
}

/// The picture, or the rooms drawn from their outlines.
fn paper(ui: &Ui, view: &View<'_>, level: &Level, picture: &Picture<'_>, sheet: &Sheet) {
    let palette = Palette::of(ui);
    let painter = ui.painter();
    if let Picture::Ready(texture) = picture {
        let all = Rect::from_min_max(Pos2::ZERO, pos2(1.0, 1.0));
        painter.image(texture.id(), sheet.rect, all, palette.picture);
    } else {
        painter.rect_filled(sheet.rect, ROUND, palette.plan);
        for space in spaces_of(view.home, level) {
            outline(painter, sheet, space, Stroke::new(2.0, palette.wall));
            if let Some(middle) = place::of_space(view.home, &space.id) {
                let font = FontId::proportional(size::ROOM);
                let at = sheet.at(middle.x, middle.y);
                painter.text(at, Align2::CENTER_CENTER, &space.name, font, palette.soft);
            }
        }
    }
    let edge = Stroke::new(1.0, palette.edge);
    painter.rect_stroke(sheet.seen, ROUND, edge, egui::StrokeKind::Inside);
}

fn outline(painter: &egui::Painter, sheet: &Sheet, space: &Space, stroke: Stroke) {
    let points: Vec<Pos2> = space.outline.iter().map(|&(x, y)| sheet.at(x, y)).collect();
    painter.add(Shape::closed_line(points, stroke));
}

/// Lets a room be picked, and shows the one that the trouble is in.
fn rooms(
    ui: &Ui,
    view: &View<'_>,
    level: &Level,
    sheet: &Sheet,
    background: &Response,
    out: &mut Vec<Command>,
) {
    if let Some(Spot::Space(id)) = &view.asked.at
        && let Some(space) = spaces_of(view.home, level).find(|s| s.id == *id)
    {
        let danger = tokens::signal(Signal::Danger);
        outline(ui.painter(), sheet, space, Stroke::new(4.0, danger.fill));
    }
    if view.answer.is_some() || view.asked.trouble.is_none() {
        return;
    }
    let pointer = background.hover_pos().or(background.interact_pointer_pos());
    let Some((x, y)) = pointer.map(|at| sheet.metres(at)) else { return };
    let under = spaces_of(view.home, level).find(|s| place::is_within(&s.outline, x, y));
    let has_spots = |space: &&Space| {
        view.rows
            .iter()
            .any(|row| place::space_of_spot(view.home, &row.spot).is_some_and(|s| s.id == space.id))
    };
    let Some(space) = under.filter(has_spots) else { return };
    outline(ui.painter(), sheet, space, Stroke::new(4.0, Palette::of(ui).focus));
    ui.ctx().set_cursor_icon(CursorIcon::PointingHand);
    if background.clicked() {
        let spot = Spot::Space(space.id.clone());
        out.push(if view.rows.iter().any(|row| row.spot == spot) {
            Command::PickSpot(spot)
        } else {
            Command::Search(space.name.clone())
        });
    }
}

/// What a pin stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Meaning {
    Spot,
    Device,
    Goal,
    Trouble,
}

#[derive(Debug)]
struct Pin {
    meaning: Meaning,
    anchor: Pos2,
    system: System,
    tag: Option<String>,
    name: String,
    label: String,
    press: Option<Command>,
}

fn pins_ui(ui: &mut Ui, view: &View<'_>, level: &Level, sheet: &Sheet, out: &mut Vec<Command>) {
    let pins = match view.answer {
        Some(_) => answer_pins(view, level, sheet),
        None => spot_pins(view, level, sheet),
    };
    let pins: Vec<Pin> = pins
        .into_iter()
        .filter(|pin| pin.meaning != Meaning::Device || sheet.seen.contains(pin.anchor))
        .collect();
    let anchors: Vec<Pos2> = pins.iter().map(|pin| pin.anchor).collect();
    let (apart, inside) =
        if view.answer.is_some() { (PIN_NOW * 3.0, PIN_NOW * 1.8) } else { (PIN * 2.4, PIN) };
    let places = spread(&anchors, sheet.seen.shrink(inside), apart);
    let squares = squares(&places, TOUCH);
    way(ui, view, level, sheet, &pins, &places);
    for (pin, place) in pins.iter().zip(&places) {
        if pin.anchor.distance(*place) > PIN {
            let palette = Palette::of(ui);
            ui.painter().line_segment([pin.anchor, *place], Stroke::new(4.0, palette.card));
            ui.painter().line_segment([pin.anchor, *place], Stroke::new(1.5, palette.ink));
            ui.painter().circle_filled(pin.anchor, 3.0, palette.ink);
        }
    }
    for ((pin, place), square) in pins.iter().zip(&places).zip(&squares) {
        pin_ui(ui, pin, *place, *square, out);
    }
    // Names over everything else, that of the goal away from that of the trouble.
    let of = |meaning| pins.iter().zip(&places).find(|(pin, _)| pin.meaning == meaning);
    let (goal, trouble) = (of(Meaning::Goal), of(Meaning::Trouble));
    let goal_is_above = goal.zip(trouble).is_some_and(|((_, goal), (_, t))| goal.y <= t.y);
    if let Some((pin, place)) = trouble {
        name_ui(ui, sheet, pin, *place, goal.is_some() && !goal_is_above);
    }
    if let Some((pin, place)) = goal {
        name_ui(ui, sheet, pin, *place, goal_is_above);
    }
}

fn spot_pins(view: &View<'_>, level: &Level, sheet: &Sheet) -> Vec<Pin> {
    let pin = |row: &Row| {
        let (on, x, y) = row.place.as_ref()?;
        let system = row.system?;
        (*on == level.id).then(|| Pin {
            meaning: Meaning::Spot,
            anchor: sheet.at(*x, *y),
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
        });
    }
    pins
}

fn pin_ui(ui: &mut Ui, pin: &Pin, place: Pos2, square: Rect, out: &mut Vec<Command>) {
    let palette = Palette::of(ui);
    let id = ui.scope_id().with(("pin", &pin.label));
    let sense = if pin.press.is_some() { Sense::click() } else { Sense::hover() };
    let response = ui.interact(square, id, sense);
    let role = if pin.press.is_some() { Role::Button } else { Role::Image };
    response.widget_info(|| WidgetInfo::labeled(role, true, &pin.label));
    let painter = ui.painter();
    let around = Stroke::new(2.0, tokens::EDGE_ON_PLAN);
    match pin.meaning {
        Meaning::Trouble => {
            let paint = tokens::signal(Signal::Danger);
            let rect = Rect::from_center_size(place, Vec2::splat(36.0));
            painter.circle_filled(place + vec2(0.0, 2.0), 22.0, tokens::EDGE_ON_PLAN);
            painter.circle_stroke(place + vec2(0.0, 2.0), 22.0, Stroke::new(2.0, paint.fill));
            signs::alert(painter, rect, paint.fill, paint.on);
        }
        Meaning::Goal => {
            painter.circle_filled(place, PIN_NOW * 1.75, tokens::EDGE_ON_PLAN);
            let ring = Stroke::new(4.0, tokens::INK_ON_PLAN);
            painter.circle_stroke(place, PIN_NOW * 1.65, ring);
            crate::controls::pin(
                painter,
                place,
                PIN_NOW,
                pin.system,
                pin.tag.as_deref(),
                Stroke::NONE,
            );
        }
        Meaning::Spot | Meaning::Device => {
            let pointed_at = response.hovered() && pin.press.is_some();
            let radius = if pointed_at { PIN * 1.25 } else { PIN };
            pin_shape(painter, place, radius, pin, around);
        }
    }
    if response.has_focus() {
        painter.circle_stroke(place, PIN * 1.6, palette.focus_stroke());
    }
    let response = response.on_hover_text(&pin.name);
    if let Some(press) = &pin.press
        && response.clicked()
    {
        out.push(press.clone());
    }
}

fn pin_shape(painter: &egui::Painter, place: Pos2, radius: f32, shown: &Pin, around: Stroke) {
    pin(painter, place, radius, shown.system, shown.tag.as_deref(), around);
}

/// The name over or under a pin, kept on the sheet.
fn name_ui(ui: &Ui, sheet: &Sheet, pin: &Pin, place: Pos2, over: bool) {
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
    let away = vec2(0.0, radius + size.y / 2.0);
    let place_at = |over: bool| if over { place - away } else { place + away };
    let fits = |over: bool| {
        sheet.seen.y_range().contains(place_at(over).y + if over { -size.y } else { size.y } / 2.0)
    };
    let over = if fits(over) { over } else { !over };
    let mut rect = Rect::from_center_size(place_at(over), size);
    let beyond = (rect.right() - sheet.seen.right()).max(0.0);
    let before = (sheet.seen.left() - rect.left()).max(0.0);
    rect = rect.translate(vec2(before - beyond, 0.0));
    ui.painter().rect_filled(rect, ROUND, fill);
    ui.painter().galley(rect.min + vec2(8.0, 4.0), galley, ink);
}

/// A line from where the person stands to the device.
fn way(ui: &Ui, view: &View<'_>, level: &Level, sheet: &Sheet, pins: &[Pin], places: &[Pos2]) {
    let Some(from) = view.asked.stands_at(view.home).filter(|from| from.level == level.id) else {
        return;
    };
    let at_trouble =
        view.asked.done.iter().all(|step| step.component.is_none()) && view.asked.from.is_none();
    let pairs = || pins.iter().zip(places);
    let trouble = pairs().find(|(pin, _)| pin.meaning == Meaning::Trouble).map(|(_, place)| *place);
    let start = trouble.filter(|_| at_trouble).unwrap_or_else(|| sheet.at(from.x, from.y));
    let Some((_, goal)) = pairs().find(|(pin, _)| pin.meaning == Meaning::Goal) else { return };
    let along = *goal - start;
    let gap = PIN_NOW * 1.8;
    if along.length() < gap * 2.0 {
        return;
    }
    let direction = along.normalized();
    let tip = *goal - direction * gap;
    let end = tip - direction * 12.0;
    let side = direction.rot90() * 10.0;
    let painter = ui.painter();
    for (width, colour) in [(9.0, tokens::EDGE_ON_PLAN), (5.0, tokens::INK_ON_PLAN)] {
        let grow = (width - 5.0) / 2.0;
        painter.line_segment([start, end], Stroke::new(width, colour));
        let spread = side.normalized() * (10.0 + grow);
        let head = vec![
            tip + direction * grow,
            end + spread - direction * grow,
            end - spread - direction * grow,
        ];
        painter.add(Shape::convex_polygon(head, colour, Stroke::NONE));
    }
    if trouble.is_none() || !at_trouble {
        painter.circle(start, 8.0, tokens::EDGE_ON_PLAN, Stroke::new(4.0, tokens::INK_ON_PLAN));
    }
}
