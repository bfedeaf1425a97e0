//! The board on which rooms are drawn and doors are set, with or without a picture under it.

use std::sync::Arc;

use egui::{
    Align2, CursorIcon, FontId, Galley, Painter, PointerButton, Pos2, Rect, Response, Sense, Shape,
    Stroke, StrokeKind, Ui, Vec2, WidgetInfo, accesskit::Role,
};
use quarterturn_guidance::fill;
use quarterturn_home::{Level, Space};

use super::handle::{Handle, handle_ui};
use super::paper::{Paper, Point, grid, length, snap};
use super::room_edits::{around, drawn};
use super::rooms::room_press;
use super::walls::{is_joined, walls};
use super::{At, State, doors, photo_ui, rooms};
use crate::ask::Command as Press;
use crate::fonts::bold;
use crate::looking::{self, Turn};
use crate::map::canvas::{self, nudge};
use crate::map::{MapCommand, MapState};
use crate::north;
use crate::pictures::{Picture, Pictures};
use crate::place;
use crate::sheet::{Sheet, spaces_of};
use crate::tokens::{Palette, ROUND, size};
use crate::view::View;

/// Smallest that the name of a room gets before it is left out, in points.
const SMALLEST: f32 = 9.0;
/// Half the width of a door as it is drawn, in metres: common practice, a door of 0.8 m.
const HALF_DOOR: f64 = 0.4;

/// The board of a level.
pub(super) fn board_ui(
    ui: &mut Ui,
    view: &View<'_>,
    map: &MapState,
    level: &Level,
    pictures: &mut Pictures,
    out: &mut Vec<Press>,
) {
    let state = &map.plans;
    let path = level.plan.as_ref().map(|plan| plan.picture.as_str());
    let picture = pictures.get(ui.ctx(), path);
    let zoom = canvas::bar_ui(ui, view, level, out);
    canvas::picture_ui(ui, view, path, &picture);
    let area = ui.available_rect_before_wrap();
    let (_, ground) = ui.allocate_exact_size(area.size(), Sense::click_and_drag());
    let label = view.fill("plans-board", &[fill("level", &level.name)]);
    ground.widget_info(|| WidgetInfo::labeled(Role::Image, true, &label));
    let mut look = map.look.of(level);
    let Some(sheet) = Sheet::board(view.home, level, &picture, area, look.aim) else { return };
    let paper = Paper::of(&sheet);
    // How far the picture is dragged, and whether it was let go.
    let moves_picture = state.at == At::Picture && sheet.picture.is_some();
    let dragged = drag(ui, &ground).filter(|_| moves_picture);
    let dragged = dragged.map(|drag| (drag.to - drag.from, drag.is_over));
    if dragged.is_some_and(|(_, is_over)| !is_over) {
        ui.set_cursor_icon(CursorIcon::Grabbing);
    }
    ui.scope(|ui| {
        ui.shrink_clip_rect(area);
        let palette = Palette::of(ui);
        ui.painter().rect_filled(paper.rect, ROUND, palette.plan);
        lines(ui.painter(), palette, &paper, grid(view.home.units));
        if let (Picture::Ready(texture), Some(rect)) = (&picture, sheet.picture) {
            let rect = rect.translate(dragged.map_or(Vec2::ZERO, |(by, _)| by));
            // Of a mirrored picture, this box is turned inside out.
            let (left, right) = if sheet.is_mirrored { (1.0, 0.0) } else { (0.0, 1.0) };
            let uv = Rect { min: Pos2::new(left, 0.0), max: Pos2::new(right, 1.0) };
            ui.painter().image(texture.id(), rect, uv, palette.picture);
        }
        if matches!(state.at, At::Rooms | At::Picture) {
            below(ui, view, level, &paper);
        }
        let picked = state.room.as_deref().and_then(|id| view.home.space(id));
        let picked = picked.filter(|room| room.level.as_deref() == Some(&level.id));
        for room in spaces_of(view.home, level) {
            let is_picked = picked.is_some_and(|picked| picked.id == room.id);
            room_shape(ui, view, &paper, &room.outline, &room.name, is_picked);
        }
        doors_shape(ui, view, level, &paper, state.at == At::Doors);
        match state.at {
            At::Rooms => rooms_ui(ui, view, state, level, picked, &paper, &ground, out),
            At::Doors => {
                if let Some(at) = ground.interact_pointer_pos().filter(|_| ground.clicked()) {
                    let press = doors::Command::Press(level.id.clone(), paper.point(at));
                    out.push(doors::door_press(press));
                }
            }
            At::Picture => {
                if let Some((by, true)) = dragged {
                    let by = (paper.far(by.x), paper.far(by.y));
                    out.push(photo_ui::move_press(level, by, false));
                }
                let nudged = if ground.has_focus() { nudge(ui, &ground) } else { (0.0, 0.0) };
                if sheet.picture.is_some() && nudged != (0.0, 0.0) {
                    out.push(photo_ui::move_press(level, nudged, true));
                }
            }
            At::Floors => {}
        }
        north::mark_ui(ui, view, paper.rect.intersect(area), &[]);
    });
    let mut turns = looking::wheel(ui, area);
    turns.extend(zoom.map(|zoom| zoom.turn(area)));
    turns.extend(pan(ui, state, level, &ground));
    let keys = looking::keys(ui, &ground, area).into_iter();
    // There the arrows move the picture.
    turns.extend(keys.filter(|turn| !(moves_picture && matches!(turn, Turn::By(_)))));
    for turn in turns {
        look.aim = looking::turned(&sheet, area, turn);
    }
    if look != map.look {
        out.push(Press::Map(MapCommand::Look(look)));
    }
}

/// A drag of the ground by the left button or a finger.
#[derive(Debug, Clone, Copy)]
struct Drag {
    /// Where it was pressed, not where it was known to be a drag.
    from: Pos2,
    to: Pos2,
    is_over: bool,
}

fn drag(ui: &Ui, ground: &Response) -> Option<Drag> {
    let is_over = ground.drag_stopped_by(PointerButton::Primary);
    if !is_over && !ground.dragged_by(PointerButton::Primary) {
        return None;
    }
    let id = ground.id.with("from");
    if ground.drag_started() {
        let from = ui.input(|i| i.pointer.press_origin()).or(ground.interact_pointer_pos());
        if let Some(from) = from {
            ui.data_mut(|data| data.insert_temp(id, from));
        }
    }
    let from = ui.data(|data| data.get_temp::<Pos2>(id))?;
    Some(Drag { from, to: ground.interact_pointer_pos()?, is_over })
}

/// Moves the board: by the right or middle button at all times, by the left one where it has nothing
/// else to drag.
fn pan(ui: &Ui, state: &State, level: &Level, ground: &Response) -> Option<Turn> {
    let by_left = match state.at {
        At::Floors | At::Doors => true,
        At::Picture => level.plan.is_none(),
        At::Rooms => state.by_corners,
    };
    let is_left = by_left && ground.dragged_by(PointerButton::Primary);
    let is_other =
        ground.dragged_by(PointerButton::Secondary) || ground.dragged_by(PointerButton::Middle);
    let is_one = ui.input(|i| i.multi_touch().is_none());
    ((is_left || is_other) && is_one).then(|| Turn::By(ground.drag_delta()))
}

/// The rooms of the floor below, faintly: walls stand on walls, and water comes down through them.
fn below(ui: &Ui, view: &View<'_>, level: &Level, paper: &Paper) {
    let lower = view.home.levels.iter().filter(|other| other.elevation_m < level.elevation_m);
    let Some(lower) = lower.max_by(|a, b| a.elevation_m.total_cmp(&b.elevation_m)) else { return };
    let stroke = Stroke::new(1.5, Palette::of(ui).soft);
    for room in spaces_of(view.home, lower) {
        let closed = room.outline.iter().chain(room.outline.first());
        let points: Vec<Pos2> = closed.map(|point| paper.at(*point)).collect();
        ui.painter().extend(Shape::dashed_line(&points, stroke, 3.0, 5.0));
    }
}

/// The lines that rooms snap to; each fourth is stronger.
fn lines(painter: &Painter, palette: &Palette, paper: &Paper, grid: f64) {
    let (left, top) = paper.point(paper.rect.min);
    let (right, bottom) = paper.point(paper.rect.max);
    // A level as large as a field has lines too close to see.
    let step = if paper.far(6.0) > grid { grid * 4.0 } else { grid };
    if paper.far(6.0) > step {
        return;
    }
    let stroke = |at: f64| {
        let is_fourth = ((at / grid).round() % 4.0).abs() < 0.5;
        Stroke::new(if is_fourth { 1.0 } else { 0.5 }, palette.line)
    };
    let mut x = (left / step).ceil() * step;
    while x < right {
        painter.vline(paper.at((x, 0.0)).x, paper.rect.y_range(), stroke(x));
        x += step;
    }
    let mut y = (top / step).ceil() * step;
    while y < bottom {
        painter.hline(paper.rect.x_range(), paper.at((0.0, y)).y, stroke(y));
        y += step;
    }
}

/// A room with its name and size.
fn room_shape(
    ui: &Ui,
    view: &View<'_>,
    paper: &Paper,
    outline: &[Point],
    name: &str,
    is_picked: bool,
) {
    let palette = Palette::of(ui);
    let points: Vec<Pos2> = outline.iter().map(|point| paper.at(*point)).collect();
    let Some(rectangle) = around(outline) else { return };
    let stroke =
        if is_picked { Stroke::new(4.0, palette.focus) } else { Stroke::new(2.5, palette.wall) };
    ui.painter().add(Shape::closed_line(points, stroke));
    let (width, height) = (rectangle.right - rectangle.left, rectangle.bottom - rectangle.top);
    let middle = (
        f64::midpoint(rectangle.left, rectangle.right),
        f64::midpoint(rectangle.top, rectangle.bottom),
    );
    let at = paper.at(middle);
    let units = view.home.units;
    let sizes = view.fill(
        "plans-size",
        &[fill("across", &length(width, units)), fill("down", &length(height, units))],
    );
    let room = paper.at((rectangle.right, 0.0)).x - paper.at((rectangle.left, 0.0)).x - 6.0;
    let text = name_within(ui, name, room);
    let small = ui.painter().layout_no_wrap(sizes, FontId::proportional(size::PIN), palette.soft);
    // Of a closet, the name alone; of what is smaller still, its outline.
    let deep = paper.at((0.0, rectangle.bottom)).y - paper.at((0.0, rectangle.top)).y;
    if text.size().x > room.max(24.0) || text.size().y > deep {
        return;
    }
    let has_sizes = small.size().x <= room && text.size().y + small.size().y <= deep;
    let below_it = if has_sizes { small.size() } else { Vec2::ZERO };
    let whole = Rect::from_center_size(
        at,
        egui::vec2(text.size().x.max(below_it.x), text.size().y + below_it.y),
    );
    // Readable over a picture too.
    ui.painter().rect_filled(whole.expand(3.0), 3.0, palette.plan.gamma_multiply(0.85));
    let top = Pos2::new(at.x - text.size().x / 2.0, whole.top());
    let below = Pos2::new(at.x - small.size().x / 2.0, whole.top() + text.size().y);
    ui.painter().galley(top, text, palette.ink);
    if has_sizes {
        ui.painter().galley(below, small, palette.soft);
    }
}

/// A name as large as it goes into so much room: on one line, or broken between its words.
fn name_within(ui: &Ui, name: &str, room: f32) -> Arc<Galley> {
    let ink = Palette::of(ui).ink;
    let mut size = size::ROOM + 1.0;
    loop {
        let font = FontId::new(size, bold());
        let wide =
            |text: &str| ui.painter().layout_no_wrap(text.to_owned(), font.clone(), ink).size().x;
        let widest = name.split_whitespace().map(wide).fold(0.0, f32::max);
        if widest <= room || size <= SMALLEST {
            return ui.painter().layout(name.to_owned(), font, ink, room.max(widest));
        }
        size -= 1.0;
    }
}

/// Doors as gaps in the wall, stairs as treads; where a door could be, a dashed line.
fn doors_shape(ui: &Ui, view: &View<'_>, level: &Level, paper: &Paper, with_walls: bool) {
    let palette = Palette::of(ui);
    let here = |id: &str| view.home.space(id).and_then(|s| s.level.as_deref()) == Some(&level.id);
    let walls = walls(view.home, level);
    if with_walls {
        for wall in &walls {
            if !is_joined(view.home, &wall.one, &wall.other) {
                let ends = [paper.at(wall.ends.0), paper.at(wall.ends.1)];
                let stroke = Stroke::new(5.0, palette.focus);
                ui.painter().extend(Shape::dashed_line(&ends, stroke, 8.0, 6.0));
            }
        }
    }
    for passage in &view.home.passages {
        let (one, other) = (&passage.between.0, &passage.between.1);
        if passage.stairs {
            for (id, at) in [(one, passage.at), (other, passage.to_at)] {
                let Some(at) = at.filter(|_| here(id)) else { continue };
                let middle = paper.at(at);
                let rect = Rect::from_center_size(middle, egui::vec2(22.0, 26.0));
                ui.painter().rect_filled(rect, 2.0, palette.plan);
                let stroke = Stroke::new(1.5, palette.wall);
                ui.painter().rect_stroke(rect, 2.0, stroke, StrokeKind::Inside);
                for tread in [-6.5, 0.0, 6.5] {
                    ui.painter().hline(rect.x_range(), middle.y + tread, stroke);
                }
            }
            continue;
        }
        let Some(at) = passage.at.filter(|_| here(one) && here(other)) else { continue };
        let wall = walls.iter().find(|wall| {
            (&wall.one, &wall.other) == (one, other) || (&wall.other, &wall.one) == (one, other)
        });
        let ((ax, ay), (bx, by)) = wall.map_or((at, (at.0 + 1.0, at.1)), |wall| wall.ends);
        let long = (bx - ax).hypot(by - ay).max(1e-9);
        let (ux, uy) = ((bx - ax) / long * HALF_DOOR, (by - ay) / long * HALF_DOOR);
        let ends = [paper.at((at.0 - ux, at.1 - uy)), paper.at((at.0 + ux, at.1 + uy))];
        ui.painter().line_segment(ends, Stroke::new(7.0, palette.plan));
        let side = (ends[1] - ends[0]).normalized().rot90() * 6.0;
        for end in ends {
            ui.painter().line_segment([end - side, end + side], Stroke::new(2.5, palette.wall));
        }
    }
}

/// What drawing and dragging does to rooms.
#[expect(clippy::too_many_arguments, reason = "all of it is one look at the board")]
fn rooms_ui(
    ui: &Ui,
    view: &View<'_>,
    state: &State,
    level: &Level,
    picked: Option<&Space>,
    paper: &Paper,
    ground: &Response,
    out: &mut Vec<Press>,
) {
    let palette = Palette::of(ui);
    if let Some(at) = ground.interact_pointer_pos().filter(|_| ground.clicked()) {
        let at = paper.point(at);
        if state.by_corners {
            out.push(room_press(rooms::Command::Corner(level.id.clone(), at)));
        } else {
            let mut on = spaces_of(view.home, level)
                .filter(|room| place::is_within(&room.outline, at.0, at.1));
            out.push(room_press(rooms::Command::Pick(on.next().map(|room| room.id.clone()))));
        }
    }
    for (place, corner) in state.corners.iter().enumerate() {
        ui.painter().circle_filled(paper.at(*corner), 6.0, palette.focus);
        if let Some(next) = state.corners.get(place + 1) {
            let ends = [paper.at(*corner), paper.at(*next)];
            ui.painter().line_segment(ends, Stroke::new(3.0, palette.focus));
        }
    }
    if let Some(room) = picked.filter(|_| !state.by_corners) {
        corners_of_ui(ui, view, (level, room), paper, out);
    }
    drag_ui(ui, view, state, level, picked, paper, ground, out);
}

/// The corners of the picked room, to be dragged or moved by the arrow keys.
fn corners_of_ui(
    ui: &Ui,
    view: &View<'_>,
    (level, room): (&Level, &Space),
    paper: &Paper,
    out: &mut Vec<Press>,
) {
    let palette = Palette::of(ui);
    for (place, at) in room.outline.iter().enumerate() {
        let number = (place + 1).to_string();
        let label = view.fill("plans-corner", &[fill("name", &room.name), fill("number", &number)]);
        let step = snap(level, view.home.units);
        let handle = Handle { id: ("room-corner", place), label: &label, at: *at, step };
        let Some(moved) = handle_ui(ui, paper, &handle) else { continue };
        if moved.is_over {
            let (id, to, snaps) = (room.id.clone(), moved.to, !moved.is_by_key);
            out.push(room_press(rooms::Command::Stretch { id, place, to, snaps }));
        } else {
            let stroke = Stroke::new(2.0, palette.focus);
            let ends = [paper.at(*at), paper.at(moved.to)];
            ui.painter().extend(Shape::dashed_line(&ends, stroke, 6.0, 4.0));
        }
    }
}

/// A drag on the ground: of the picked room, or of a new rectangle.
#[expect(clippy::too_many_arguments, reason = "all of it is one look at the board")]
fn drag_ui(
    ui: &Ui,
    view: &View<'_>,
    state: &State,
    level: &Level,
    picked: Option<&Space>,
    paper: &Paper,
    ground: &Response,
    out: &mut Vec<Press>,
) {
    let Some(drag) = drag(ui, ground).filter(|_| !state.by_corners) else { return };
    let (from, to) = (paper.point(drag.from), paper.point(drag.to));
    let moves = picked.filter(|room| place::is_within(&room.outline, from.0, from.1));
    let by = (to.0 - from.0, to.1 - from.1);
    if drag.is_over {
        out.push(room_press(match moves {
            Some(room) => rooms::Command::Move(room.id.clone(), by),
            None => rooms::Command::Drawn(level.id.clone(), from, to),
        }));
        return;
    }
    let palette = Palette::of(ui);
    if let Some(room) = moves {
        let outline = room.outline.iter().map(|(x, y)| paper.at((x + by.0, y + by.1))).collect();
        ui.painter().add(Shape::closed_line(outline, Stroke::new(2.5, palette.focus)));
        return;
    }
    let Some(rectangle) = drawn(view.home, level, (from, to), None) else { return };
    let corners = ((rectangle.left, rectangle.top), (rectangle.right, rectangle.bottom));
    let rect = Rect::from_min_max(paper.at(corners.0), paper.at(corners.1));
    ui.painter().rect_stroke(rect, 0.0, Stroke::new(3.0, palette.focus), StrokeKind::Middle);
    let units = view.home.units;
    let across = length(rectangle.right - rectangle.left, units);
    let down = length(rectangle.bottom - rectangle.top, units);
    let text = view.fill("plans-size", &[fill("across", &across), fill("down", &down)]);
    let font = FontId::new(size::BODY, bold());
    ui.painter().text(rect.center(), Align2::CENTER_CENTER, text, font, palette.ink);
}
