//! How a level lies on the screen, and which part of it matters.

use egui::{Pos2, Rect, pos2, vec2};
use quarterturn_home::{Home, Level, Space};

use crate::looking::Aim;
use crate::pictures::Picture;
use crate::place;
use crate::spots::{Row, is_found};
use crate::view::View;

/// How metres lie on the screen.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Sheet {
    /// All of the level, which may reach beyond what is seen of it.
    pub(crate) rect: Rect,
    /// What is seen of it.
    pub(crate) seen: Rect,
    /// Points of the screen for a metre.
    pub(crate) scale: f64,
    /// The same when all of the level is seen.
    pub(crate) whole: f64,
    /// Where the level's picture lies, if there is one.
    pub(crate) picture: Option<Rect>,
    /// True if the picture is drawn left for right.
    pub(crate) is_mirrored: bool,
    /// Of its left edge, in metres.
    pub(crate) left: f64,
    /// Of its top edge, in metres.
    pub(crate) top: f64,
}

/// A part of a level, in metres: left, top, width, height.
pub(crate) type Part = (f64, f64, f64, f64);

/// The part that matters is shown up to this many times as large as all of the level.
const CLOSE: f64 = 4.0;
/// By hand one gets as near as this.
const CLOSEST: f64 = 12.0;

impl Sheet {
    /// Fits the level into `area`: its picture if there is one, and all that has a place on it. What
    /// is aimed at is in the middle as far as the level reaches; with `aim` on what matters, that is
    /// `focus`, shown as large as it can be.
    pub(crate) fn fit(
        home: &Home,
        level: &Level,
        picture: &Picture<'_>,
        area: Rect,
        aim: Aim,
        focus: Option<Part>,
    ) -> Option<Self> {
        let picture = on_picture(level, picture);
        let part = match picture {
            Some(part) => with_what_is_beside(home, level, part),
            None => extent(home, level)?,
        };
        Self::of(level, (part, picture), area, aim, focus)
    }

    /// Fits a level that is worked on into `area`: there is always room around what has a place on
    /// it, and on an empty one.
    pub(crate) fn to_work_on(
        home: &Home,
        level: &Level,
        picture: &Picture<'_>,
        area: Rect,
        aim: Aim,
    ) -> Option<Self> {
        let picture = on_picture(level, picture);
        let part = match picture {
            Some(part) => with_what_is_beside(home, level, part),
            None => with_room_around(extent(home, level)),
        };
        Self::of(level, (part, picture), area, aim, None)
    }

    /// Fits a level on which rooms are drawn into `area`: see [`to_draw_on`].
    pub(crate) fn board(
        home: &Home,
        level: &Level,
        picture: &Picture<'_>,
        area: Rect,
        aim: Aim,
    ) -> Option<Self> {
        let picture = on_picture(level, picture);
        Self::of(level, (to_draw_on(home, level, picture), picture), area, aim, None)
    }

    /// Fits a part of a level into `area`; the other part is the one that its picture covers.
    fn of(
        level: &Level,
        ((left, top, width, height), picture): (Part, Option<Part>),
        area: Rect,
        aim: Aim,
        focus: Option<Part>,
    ) -> Option<Self> {
        let fill = |width: f64, height: f64| {
            (f64::from(area.width()) / width).min(f64::from(area.height()) / height)
        };
        let whole = fill(width, height);
        if !whole.is_finite() || whole <= 0.0 {
            return None;
        }
        let middle = (left + width / 2.0, top + height / 2.0);
        let (scale, (x, y)) = match (aim, focus) {
            (Aim::Whole, _) | (Aim::WhatMatters, None) => (whole, middle),
            (Aim::WhatMatters, Some((l, t, w, h))) => {
                (fill(w, h).clamp(whole, whole * CLOSE), (l + w / 2.0, t + h / 2.0))
            }
            (Aim::ByHand { x, y, scale }, _) => (scale.clamp(whole, whole * CLOSEST), (x, y)),
        };
        let size = vec2(as_f32(width * scale), as_f32(height * scale));
        let middle = vec2(as_f32((x - left) * scale), as_f32((y - top) * scale));
        let wanted = area.center() - middle;
        let along = |wanted: f32, from: f32, to: f32, size: f32, slack: f32| {
            if size <= to - from {
                from + (to - from - size) * slack
            } else {
                wanted.clamp(to - size, from)
            }
        };
        let min = pos2(
            along(wanted.x, area.left(), area.right(), size.x, 0.5),
            along(wanted.y, area.top(), area.bottom(), size.y, 0.0),
        );
        let rect = Rect::from_min_size(min, size);
        let is_mirrored = level.plan.as_ref().is_some_and(|plan| plan.mirrored);
        let seen = rect.intersect(area);
        let mut sheet = Self { rect, seen, scale, whole, picture: None, is_mirrored, left, top };
        sheet.picture = picture.map(|(left, top, width, height)| {
            Rect::from_min_max(sheet.at(left, top), sheet.at(left + width, top + height))
        });
        Some(sheet)
    }

    /// Which point of the picture is there on the screen, from 0 to 1 each way.
    pub(crate) fn on_picture(&self, at: Pos2) -> Pos2 {
        let rect = self.picture.unwrap_or(self.rect);
        let part = (at - rect.min) / rect.size();
        pos2(if self.is_mirrored { 1.0 - part.x } else { part.x }, part.y)
    }

    /// The box moved as little as it takes to lie within what is seen.
    pub(crate) fn within(&self, rect: Rect) -> Rect {
        let inside = |from: f32, to: f32, least: f32, most: f32| {
            if from < least { least - from } else { (most - to).min(0.0).max(least - from) }
        };
        let seen = self.seen.shrink(4.0);
        rect.translate(vec2(
            inside(rect.left(), rect.right(), seen.left(), seen.right()),
            inside(rect.top(), rect.bottom(), seen.top(), seen.bottom()),
        ))
    }

    /// This many metres, in points of the screen.
    pub(crate) fn points(&self, metres: f64) -> f32 {
        as_f32(metres * self.scale)
    }

    /// Where a point of the level is on the screen.
    pub(crate) fn at(&self, x: f64, y: f64) -> Pos2 {
        self.rect.min
            + vec2(as_f32((x - self.left) * self.scale), as_f32((y - self.top) * self.scale))
    }

    /// Which point of the level is there on the screen.
    pub(crate) fn metres(&self, at: Pos2) -> (f64, f64) {
        let from = at - self.rect.min;
        (f64::from(from.x) / self.scale + self.left, f64::from(from.y) / self.scale + self.top)
    }
}

/// The part of a level that matters now: at an answer where to go, where from, and the trouble;
/// before that the house with all that can be picked. `None` for all of it.
pub(crate) fn focus(view: &View<'_>, level: &Level) -> Option<Part> {
    /// Room left around the points, and the least that is shown, in metres.
    const AROUND: f64 = 2.0;
    const LEAST: f64 = 8.0;
    let points: Vec<(f64, f64)> = match view.answer {
        Some(answer) => {
            let goal = view.asked.goal(answer).and_then(|id| place::of_component(view.home, &id));
            let spot = view.asked.at.as_ref().and_then(|spot| place::of_spot(view.home, spot));
            let places = [goal, view.asked.stands_at(view.home), spot].into_iter().flatten();
            let on_way = view.way.into_iter().flat_map(|way| &way.legs);
            let walked = on_way.filter(|leg| leg.level == level.id).flat_map(|leg| &leg.points);
            // Where there is nothing to go to, what one stands at is no reason to come near.
            if goal.is_some_and(|g| g.level != level.id) && walked.clone().next().is_none() {
                return None;
            }
            places
                .filter(|place| place.level == level.id)
                .map(|place| (place.x, place.y))
                .chain(walked.copied())
                .collect()
        }
        None => {
            let indoors = spaces_of(view.home, level).filter(|space| !space.outdoors);
            let corners = indoors.flat_map(|space| space.outline.iter().copied());
            let on_level = shown_rows(view).filter_map(|row| {
                row.place.as_ref().filter(|(on, ..)| *on == level.id).map(|(_, x, y)| (*x, *y))
            });
            corners.chain(on_level).collect()
        }
    };
    let range = |pick: fn(&(f64, f64)) -> f64| {
        let least = points.iter().map(pick).fold(f64::INFINITY, f64::min);
        let most = points.iter().map(pick).fold(f64::NEG_INFINITY, f64::max);
        let size = (most - least + 2.0 * AROUND).max(LEAST);
        ((least + most - size) / 2.0, size)
    };
    let ((left, width), (top, height)) = (range(|p| p.0), range(|p| p.1));
    (!points.is_empty()).then_some((left, top, width, height))
}

/// The spots that get a pin: what is in sight, or, once something is searched for, all that is found.
pub(crate) fn shown_rows<'a>(view: &View<'a>) -> impl Iterator<Item = &'a Row> {
    let search = view.asked.search.as_str();
    let all = !search.trim().is_empty() || !view.rows.iter().any(|row| row.is_in_sight);
    view.rows.iter().filter(move |row| (all || row.is_in_sight) && is_found(row, search))
}

/// Left, top, width and height of all that has a place on a level, with a margin.
fn extent(home: &Home, level: &Level) -> Option<Part> {
    const MARGIN: f64 = 0.6;
    let (left, top, width, height) = tight_extent(home, level)?;
    let (width, height) = (width + 2.0 * MARGIN, height + 2.0 * MARGIN);
    Some((left - MARGIN, top - MARGIN, width, height))
}

/// The same without a margin.
fn tight_extent(home: &Home, level: &Level) -> Option<Part> {
    let corners = spaces_of(home, level).flat_map(|space| space.outline.iter().copied());
    let devices = home.components.iter().filter_map(|component| {
        let on_it = home.level_of(component).is_some_and(|l| l.id == level.id);
        component.at.filter(|_| on_it).map(|(x, y, _)| (x, y))
    });
    around(corners.chain(devices))
}

/// Left, top, width and height of the box round points.
fn around(points: impl Iterator<Item = (f64, f64)>) -> Option<Part> {
    let points: Vec<(f64, f64)> = points.filter(|(x, y)| x.is_finite() && y.is_finite()).collect();
    let range = |pick: fn(&(f64, f64)) -> f64| {
        let least = points.iter().map(pick).fold(f64::INFINITY, f64::min);
        let most = points.iter().map(pick).fold(f64::NEG_INFINITY, f64::max);
        (least, most - least)
    };
    if points.is_empty() {
        return None;
    }
    let ((left, width), (top, height)) = (range(|p| p.0), range(|p| p.1));
    Some((left, top, width, height))
}

/// The part that a picture covers, and what has a place beside it: a yard is seldom on a plan, but its
/// curb stop is wanted.
fn with_what_is_beside(home: &Home, level: &Level, picture: Part) -> Part {
    let is_within = tight_extent(home, level).is_none_or(|extent| {
        let (left, top, width, height) = picture;
        let near = |a: f64, b: f64| a <= b + 1e-6;
        near(left, extent.0)
            && near(top, extent.1)
            && near(extent.0 + extent.2, left + width)
            && near(extent.1 + extent.3, top + height)
    });
    let beside = extent(home, level).filter(|_| !is_within);
    union(picture, beside)
}

fn union(one: Part, other: Option<Part>) -> Part {
    let corners = |(left, top, width, height): Part| [(left, top), (left + width, top + height)];
    around([Some(one), other].into_iter().flatten().flat_map(corners)).unwrap_or(one)
}

/// The part of a level to draw on: its rooms and its picture, and room for more beside them. It changes
/// by whole metres, so that the drawing does not creep.
fn to_draw_on(home: &Home, level: &Level, picture: Option<Part>) -> Part {
    /// Least part that is shown, in metres: a small home and its surroundings.
    const LEAST: (f64, f64) = (14.0, 10.0);
    /// Room left around what is drawn, to draw the next room in, in metres: with a picture, most rooms
    /// are on that.
    const AROUND: f64 = 3.0;
    const BESIDE_PICTURE: f64 = 1.0;
    let corners = spaces_of(home, level).flat_map(|space| space.outline.iter().copied());
    let rooms = around(corners);
    let there = match picture {
        Some(picture) => Some(union(picture, rooms)),
        None => rooms,
    };
    let Some((left, top, width, height)) = there else { return (-1.0, -1.0, LEAST.0, LEAST.1) };
    let room = if picture.is_some() { BESIDE_PICTURE } else { AROUND };
    let least = if picture.is_some() { (1.0, 1.0) } else { LEAST };
    let range = |from: f64, size: f64, least: f64| {
        let start = (from - room).floor();
        (start, ((from + size + room).ceil() - start).max(least))
    };
    let ((left, width), (top, height)) = (range(left, width, least.0), range(top, height, least.1));
    (left, top, width, height)
}

/// The part that the level's picture covers, if it is there.
fn on_picture(level: &Level, picture: &Picture<'_>) -> Option<Part> {
    match (&level.plan, picture) {
        (Some(plan), Picture::Ready(texture)) if plan.width_m > 0.0 => {
            let size = texture.size_vec2();
            let aspect = f64::from(size.y / size.x.max(1.0));
            Some((plan.left_m, plan.top_m, plan.width_m, plan.width_m * aspect))
        }
        _ => None,
    }
}

/// The part with so much room around that it does not grow with every pin, and at least 10 by 10
/// metres; its edges lie on whole metres.
fn with_room_around(extent: Option<Part>) -> Part {
    const LEAST: f64 = 10.0;
    const STEP: f64 = 2.0;
    let Some((left, top, width, height)) = extent else { return (0.0, 0.0, LEAST, LEAST) };
    let along = |from: f64, size: f64| {
        let least = (from / STEP).floor() * STEP;
        let most = ((from + size) / STEP).ceil() * STEP;
        // An empty level shows from 0 to 10; a first pin on it changes nothing.
        let least = if least >= 0.0 && most <= LEAST { 0.0 } else { least };
        (least, (most - least).max(LEAST))
    };
    let ((left, width), (top, height)) = (along(left, width), along(top, height));
    (left, top, width, height)
}

/// The spaces on a level.
pub(crate) fn spaces_of<'a>(home: &'a Home, level: &'a Level) -> impl Iterator<Item = &'a Space> {
    home.spaces.iter().filter(|space| space.level.as_deref() == Some(&level.id))
}

#[expect(clippy::cast_possible_truncation, reason = "a place on the screen needs no more digits")]
fn as_f32(value: f64) -> f32 {
    value as f32
}
