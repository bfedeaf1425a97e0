//! The plan of a level: rooms, spots to pick, devices to go to.

use egui::{
    ComboBox, CursorIcon, Rect, Response, Sense, Stroke, StrokeKind, Ui, WidgetInfo,
    accesskit::Role, vec2,
};
use quarterturn_guidance::{Signal, Spot, fill};
use quarterturn_home::{Level, Space};

use crate::ask::Command;
use crate::controls::{button, focus_ring, soft, strong};
use crate::leading;
use crate::light::{self, Lit, outline};
use crate::looking::{self, Aim, Looking};
use crate::near::NearBar;
use crate::pictures::{Picture, Pictures};
use crate::sheet::{Sheet, focus, spaces_of};
use crate::tokens::{self, Palette, ROUND, TOUCH, size};
use crate::trail;
use crate::view::View;
use crate::{marks, north, place};

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
    let mut looking = Looking::load(ui, view, level);
    bar_ui(ui, view, level, out);
    let picture = level.plan.as_ref().map(|plan| plan.picture.as_str());
    let picture = pictures.get(ui.ctx(), picture);
    match picture {
        Picture::Unreadable => {
            let path = level.plan.as_ref().map_or("", |plan| plan.picture.as_str());
            ui.label(soft(ui, view.fill("picture-unreadable", &[fill("path", path)])));
        }
        Picture::Coming => {
            ui.label(soft(ui, view.text("picture-coming")));
        }
        Picture::None | Picture::Ready(_) => {}
    }
    way_ui(ui, view, level, out);
    leading::legend_ui(ui, view, level, &looking.lines);
    drawing_ui(ui, view, level, &picture, &mut looking, out);
    looking.store(ui);
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
    // Where there is nothing to choose on the usual floor, the floor of what there is to choose.
    let choice = || {
        let levels = || view.rows.iter().filter_map(|row| Some(row.place.as_ref()?.0.as_str()));
        let here = usual();
        let none_here = here.is_none_or(|here| !levels().any(|level| level == here));
        levels().next().filter(|_| view.answer.is_none() && none_here)
    };
    let found = asked
        .level
        .as_deref()
        .or_else(goal)
        .or_else(device)
        .or_else(spot)
        .or_else(choice)
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
    // Where the spot tells nothing, people are taken to be where they mostly are.
    let usual = || view.home.usual_space.as_deref().filter(|_| spot.is_none());
    let from = view.asked.from.as_deref();
    let here = from.and_then(|id| view.home.space(id)).or(spot);
    let here = here.or_else(|| view.home.space(usual()?));
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
    looking: &mut Looking,
    out: &mut Vec<Command>,
) {
    let area = ui.available_rect_before_wrap();
    let focus = focus(view, level);
    let fit = |aim: Aim| Sheet::fit(view.home, level, picture, area, aim, focus);
    let Some(mut sheet) = fit(looking.aim) else {
        ui.label(view.text("no-plan"));
        return;
    };
    let (_, background) = ui.allocate_exact_size(area.size(), Sense::click_and_drag());
    let label = view.fill("plan-of", &[fill("level", &level.name)]);
    background.widget_info(|| WidgetInfo::labeled(Role::Image, true, &label));
    ui.ctx().accesskit_node_builder(background.id, |node| {
        node.set_description(view.text("plan-keys"));
    });
    for turn in looking::turns(ui, &background, area) {
        looking.turn(&sheet, area, turn);
        sheet = fit(looking.aim).unwrap_or(sheet);
    }
    let buttons = NearBar::new(ui, view, looking.aim, &sheet, area);
    ui.scope(|ui| {
        ui.shrink_clip_rect(sheet.seen.expand(1.0));
        light::paper(ui, view, level, picture, &sheet, Lit::of(view, level).as_ref());
        rooms(ui, view, level, &sheet, &background, out);
        let pins = marks::placed(view, level, &sheet);
        let mut taken = buttons.rects();
        let keep_off: Vec<Rect> = marks::squares_of(&pins).chain(taken.iter().copied()).collect();
        taken.extend(north::mark_ui(ui, view, sheet.seen, &keep_off));
        let runs = leading::runs(view, level, &looking.lines);
        trail::lines(ui.painter(), &sheet, &runs);
        leading::way_ui(ui, view, level, &sheet, &pins);
        let taken = marks::pins_ui(ui, view, &sheet, &pins, taken, out);
        leading::stairs_ui(ui, view, level, &sheet, taken, out);
    });
    if background.has_focus() {
        let inside = sheet.seen.shrink(1.0);
        let edge = Stroke::new(6.0, tokens::EDGE_ON_PLAN);
        let ring = Stroke::new(3.5, tokens::FOCUS_ON_PLAN);
        ui.painter().rect_stroke(inside, ROUND, edge, StrokeKind::Inside);
        ui.painter().rect_stroke(inside, ROUND, ring, StrokeKind::Inside);
    }
    if background.dragged() {
        ui.ctx().set_cursor_icon(CursorIcon::Grabbing);
    }
    if let Some(turn) = buttons.show(ui, view) {
        looking.turn(&sheet, area, turn);
        ui.ctx().request_repaint();
    }
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
