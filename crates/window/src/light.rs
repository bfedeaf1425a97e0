//! The plan under everything: its picture, or the rooms from their outlines. At an answer all of it is
//! dimmed but what matters: the device, the spot, and the way between.

use egui::epaint::{Mesh, Vertex};
use egui::{
    Align2, Color32, FontId, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, TextureId, Ui, Vec2,
};
use quarterturn_home::{Level, Space};

use crate::fonts::bold;
use crate::pictures::Picture;
use crate::place;
use crate::sheet::{Sheet, spaces_of};
use crate::tokens::{Palette, ROUND, size};
use crate::view::View;

/// Around a device or spot so much stays lit, in metres.
const AROUND_THINGS: f64 = 1.5;
/// On both sides of the way so much stays lit, in metres.
const AROUND_WAY: f64 = 0.8;
/// Beyond that it fades, in metres.
const FADE: f64 = 0.7;
/// Corners of a lit disc.
const CORNERS: u8 = 32;

/// What stays lit on a level, in metres.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Lit {
    /// Devices and spots.
    pub(crate) things: Vec<(f64, f64)>,
    /// Points of the way, in order, a list for each stretch.
    pub(crate) ways: Vec<Vec<(f64, f64)>>,
}

impl Lit {
    /// What matters at an answer on a level; `None` where nothing on it does, for then nothing is
    /// dimmed.
    pub(crate) fn of(view: &View<'_>, level: &Level) -> Option<Self> {
        let answer = view.answer?;
        let goal = view.asked.goal(answer).and_then(|id| place::of_component(view.home, &id));
        let spot = view.asked.at.as_ref().and_then(|spot| place::of_spot(view.home, spot));
        let here = [goal, spot].into_iter().flatten().filter(|place| place.level == level.id);
        let things: Vec<(f64, f64)> = here.map(|place| (place.x, place.y)).collect();
        let legs = view.way.into_iter().flat_map(|way| &way.legs);
        let ways: Vec<Vec<(f64, f64)>> =
            legs.filter(|leg| leg.level == level.id).map(|leg| leg.points.clone()).collect();
        (!things.is_empty() || !ways.is_empty()).then_some(Self { things, ways })
    }

    /// True if someone walks through the space or something in it matters.
    fn reaches(&self, space: &Space) -> bool {
        let within = |&(x, y): &(f64, f64)| place::is_within(&space.outline, x, y);
        self.things.iter().any(within) || self.ways.iter().any(|way| steps(way).iter().any(within))
    }
}

/// Points along a way, close enough for their discs to run together.
fn steps(way: &[(f64, f64)]) -> Vec<(f64, f64)> {
    const APART: f64 = 0.4;
    let mut points = Vec::new();
    for pair in way.windows(2) {
        let [(x, y), (u, v)] = pair else { continue };
        let long = (u - x).hypot(v - y);
        let mut far = 0.0;
        while far < long {
            let part = far / long;
            points.push((x + (u - x) * part, y + (v - y) * part));
            far += APART;
        }
    }
    points.extend(way.last().copied());
    points
}

/// Draws the level.
pub(crate) fn paper(
    ui: &Ui,
    view: &View<'_>,
    level: &Level,
    picture: &Picture<'_>,
    sheet: &Sheet,
    lit: Option<&Lit>,
) {
    let palette = Palette::of(ui);
    let painter = ui.painter();
    painter.rect_filled(sheet.rect, ROUND, palette.plan);
    match (picture, sheet.picture) {
        (Picture::Ready(texture), Some(rect)) => {
            photo(painter, palette, texture.id(), sheet, rect, lit);
            // What the picture does not show is drawn.
            let is_shown = |space: &Space| {
                space.outline.iter().all(|&(x, y)| rect.expand(2.0).contains(sheet.at(x, y)))
            };
            let rest = spaces_of(view.home, level).filter(|space| !is_shown(space));
            drawn(painter, view, palette, rest.collect(), sheet, lit);
        }
        _ => {
            let spaces = spaces_of(view.home, level).collect();
            drawn(painter, view, palette, spaces, sheet, lit);
        }
    }
    let edge = Stroke::new(1.0, palette.edge);
    painter.rect_stroke(sheet.seen, ROUND, edge, StrokeKind::Inside);
}

/// The picture under a veil, with what matters drawn once more over it.
fn photo(
    painter: &Painter,
    palette: &Palette,
    id: TextureId,
    sheet: &Sheet,
    rect: Rect,
    lit: Option<&Lit>,
) {
    // Of a mirrored picture, this box is turned inside out.
    let uv = Rect::from_min_max(
        sheet.on_picture(rect.left_top()),
        sheet.on_picture(rect.right_bottom()),
    );
    painter.image(id, rect, uv, palette.picture);
    let Some(lit) = lit else { return };
    painter.rect_filled(rect, 0.0, palette.veil);
    let mut mesh = Mesh::with_texture(id);
    for (points, around) in [
        (lit.ways.iter().flat_map(|way| steps(way)).collect::<Vec<_>>(), AROUND_WAY),
        (lit.things.clone(), AROUND_THINGS),
    ] {
        for (x, y) in points {
            let radius = (sheet.points(around), sheet.points(around + FADE));
            disc(&mut mesh, sheet, rect, sheet.at(x, y), radius, palette.picture);
        }
    }
    painter.add(Shape::mesh(mesh));
}

/// A disc of the picture that fades from the first radius to the second.
fn disc(
    mesh: &mut Mesh,
    sheet: &Sheet,
    rect: Rect,
    middle: Pos2,
    (full, none): (f32, f32),
    tint: Color32,
) {
    let Ok(first) = u32::try_from(mesh.vertices.len()) else { return };
    let mut vertex = |pos: Pos2, color: Color32| {
        // Beyond the picture there is nothing to show.
        let pos = pos.clamp(rect.min, rect.max);
        mesh.vertices.push(Vertex { pos, uv: sheet.on_picture(pos), color });
    };
    vertex(middle, tint);
    for n in 0..CORNERS {
        let way = Vec2::angled(f32::from(n) / f32::from(CORNERS) * std::f32::consts::TAU);
        vertex(middle + way * full, tint);
        vertex(middle + way * none, Color32::TRANSPARENT);
    }
    let corner = |n: u8| first + 1 + u32::from(n % CORNERS) * 2;
    for n in 0..CORNERS {
        let (this, next) = (corner(n), corner(n + 1));
        mesh.add_triangle(first, this, next);
        mesh.add_triangle(this, this + 1, next);
        mesh.add_triangle(this + 1, next + 1, next);
    }
}

/// The rooms from their outlines: those that matter on lighter paper, with stronger walls.
fn drawn(
    painter: &Painter,
    view: &View<'_>,
    palette: &Palette,
    mut spaces: Vec<&Space>,
    sheet: &Sheet,
    lit: Option<&Lit>,
) {
    let is_lit = |space: &Space| lit.is_none_or(|lit| lit.reaches(space));
    // The walls of those that matter over those of the others.
    spaces.sort_by_key(|space| is_lit(space));
    for space in &spaces {
        let stroke = if is_lit(space) {
            Stroke::new(if lit.is_some() { 3.5 } else { 2.0 }, palette.wall)
        } else {
            Stroke::new(1.5, palette.edge)
        };
        outline(painter, sheet, space, stroke);
    }
    for space in &spaces {
        let Some(middle) = place::of_space(view.home, &space.id) else { continue };
        let (font, ink) = if lit.is_some() && is_lit(space) {
            (FontId::new(size::ROOM, bold()), palette.ink)
        } else {
            (FontId::proportional(size::ROOM), palette.soft)
        };
        let at = sheet.at(middle.x, middle.y);
        painter.text(at, Align2::CENTER_CENTER, &space.name, font, ink);
    }
}

/// The outline of a space.
pub(crate) fn outline(painter: &Painter, sheet: &Sheet, space: &Space, stroke: Stroke) {
    let points: Vec<Pos2> = space.outline.iter().map(|&(x, y)| sheet.at(x, y)).collect();
    painter.add(Shape::closed_line(points, stroke));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_room_one_walks_through_is_lit() {
        let space = |outline| Space {
            id: "room".to_owned(),
            name: "Room".to_owned(),
            level: None,
            outline,
            outdoors: false,
        };
        let square = |x: f64| vec![(x, 0.0), (x + 4.0, 0.0), (x + 4.0, 4.0), (x, 4.0)];
        let lit = Lit { things: vec![(2.0, 2.0)], ways: vec![vec![(2.0, 2.0), (10.0, 2.0)]] };
        assert!(lit.reaches(&space(square(0.0))));
        // Neither end of the way is in there.
        assert!(lit.reaches(&space(square(4.5))));
        assert!(!lit.reaches(&space(square(20.0))));
    }

    #[test]
    fn a_way_of_no_length_still_has_a_point() {
        assert_eq!(steps(&[(1.0, 1.0), (1.0, 1.0)]), [(1.0, 1.0)]);
        assert_eq!(steps(&[]), []);
        let long = steps(&[(0.0, 0.0), (2.0, 0.0)]);
        assert_eq!(long.len(), 6);
    }
}
