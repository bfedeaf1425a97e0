//! The plan of a level with signs on it, none of them over another.
//!
//! Each sign is put as near to its device as there is room; a thin line leads from the sign to the
//! place itself. Where a level has no picture, its rooms are drawn from their outlines.

use quarterturn_home::{Component, Level};
use serde::Serialize;

use crate::house::House;
use crate::pictures::Pictures;
use crate::sign::Sign;

/// A level, ready to be drawn. Lengths are millimetres on the paper, from its top left corner.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Plan {
    pub(crate) level: String,
    /// What it shows, for those who do not see it.
    pub(crate) alt: String,
    pub(crate) picture: Option<String>,
    /// True if the picture is drawn left for right.
    pub(crate) mirrored: bool,
    pub(crate) width: f64,
    pub(crate) height: f64,
    /// Left, top, width and height of the whole picture, of which the drawing may show a part.
    pub(crate) whole: (f64, f64, f64, f64),
    pub(crate) rooms: Vec<Room>,
    pub(crate) pins: Vec<Pin>,
    /// Half the width of a sign.
    pub(crate) radius: f64,
    pub(crate) north: Option<North>,
}

/// The mark that shows where north is.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct North {
    /// Its middle.
    pub(crate) at: (f64, f64),
    /// Degrees clockwise from the top of the plan.
    pub(crate) deg: f64,
    pub(crate) letter: String,
    /// Half its width.
    pub(crate) radius: f64,
}

/// A room drawn from its outline.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Room {
    pub(crate) points: Vec<(f64, f64)>,
    /// Its letter on the plan.
    pub(crate) letter: String,
    pub(crate) name: String,
    /// Where its letter stands.
    pub(crate) at: (f64, f64),
    pub(crate) outdoors: bool,
}

/// A sign on the plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Pin {
    pub(crate) sign: Sign,
    /// Middle of the sign.
    pub(crate) at: (f64, f64),
    /// The device itself.
    pub(crate) device: (f64, f64),
}

/// How large a plan may become.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Frame {
    pub(crate) width: f64,
    pub(crate) height: f64,
    /// Half the width of a sign.
    pub(crate) radius: f64,
    /// True to show only the house and what is pointed at, and no yard around them.
    pub(crate) close: bool,
}

/// The plan of a level with the signs of `devices`, of which those elsewhere are left out. `None` if
/// there is nothing to draw it from, or none of them is on it.
pub(crate) fn plan(
    house: &House<'_>,
    pictures: &mut Pictures<'_>,
    level: &Level,
    devices: &[&Component],
    frame: Frame,
) -> Option<Plan> {
    let here: Vec<(&Component, (f64, f64))> = devices
        .iter()
        .filter(|device| house.home.level_of(device).is_some_and(|at| at.id == level.id))
        .filter_map(|device| device.at.map(|(x, y, _)| (*device, (x, y))))
        .collect();
    if here.is_empty() {
        return None;
    }
    let sheet = Drawn::from_picture(pictures, level).or_else(|| Drawn::from_rooms(house, level))?;
    let seen = if frame.close { sheet.close(house, level, &here) } else { sheet.all() };
    let scale = (frame.width / seen.width_m).min(frame.height / seen.height_m);
    let on_paper = |(x, y): (f64, f64)| ((x - seen.left_m) * scale, (y - seen.top_m) * scale);
    let (width, height) = (seen.width_m * scale, seen.height_m * scale);
    let (left, top) = on_paper((sheet.left_m, sheet.top_m));
    let whole = (left, top, sheet.width_m * scale, sheet.height_m * scale);
    let rooms = if sheet.picture.is_some() { Vec::new() } else { rooms(house, level, on_paper) };
    let mut taken: Vec<((f64, f64), f64)> =
        rooms.iter().map(|room| (room.at, LETTER_ROOM)).collect();
    let mut pins = Vec::new();
    for (device, place) in &here {
        let (x, y) = on_paper(*place);
        let device_at = (x.clamp(0.0, width), y.clamp(0.0, height));
        let Some(at) = free_place(device_at, frame.radius, (width, height), &taken) else {
            continue;
        };
        taken.push((at, frame.radius));
        pins.push(Pin { sign: house.sign(device), at, device: device_at });
    }
    let north = house.home.north_deg.and_then(|deg| {
        let at = free_corner((width, height), &taken)?;
        Some(North { at, deg, letter: house.text("north-letter"), radius: NORTH_RADIUS })
    });
    let names: Vec<String> = here.iter().map(|(device, _)| house.named(device)).collect();
    let mut fills = vec![
        quarterturn_guidance::fill("level", &level.name),
        quarterturn_guidance::fill("list", &house.words.list(&names)),
    ];
    let mut alt = "paper-plan-alt";
    if let Some(north) = &north {
        alt = "paper-plan-alt-north";
        let degrees = ((north.deg * 10.0).round() / 10.0).to_string();
        fills.push(quarterturn_guidance::fill("degrees", &degrees));
    }
    let alt = house.words.fill(alt, &fills);
    let level_plan = level.plan.as_ref();
    let level = level.name.clone();
    Some(Plan {
        level,
        alt,
        picture: sheet.picture,
        mirrored: level_plan.is_some_and(|plan| plan.mirrored),
        width,
        height,
        whole,
        rooms,
        pins,
        radius: frame.radius,
        north,
    })
}

/// Half the width of the mark of north, in millimetres.
const NORTH_RADIUS: f64 = 3.0;

/// Room that a letter takes, in millimetres from its middle.
const LETTER_ROOM: f64 = 2.2;
/// Free room between two signs, in millimetres.
const BETWEEN: f64 = 0.4;

/// What a plan is drawn on: a stretch of the level, in metres.
struct Drawn {
    picture: Option<String>,
    left_m: f64,
    top_m: f64,
    width_m: f64,
    height_m: f64,
}

/// The part of it that is seen.
struct Seen {
    left_m: f64,
    top_m: f64,
    width_m: f64,
    height_m: f64,
}

impl Drawn {
    fn all(&self) -> Seen {
        let Self { left_m, top_m, width_m, height_m, .. } = *self;
        Seen { left_m, top_m, width_m, height_m }
    }

    /// The rooms indoors and the devices, with air around them.
    fn close(&self, house: &House<'_>, level: &Level, here: &[(&Component, (f64, f64))]) -> Seen {
        /// Air around them, for signs to stand in.
        const AIR_M: f64 = 1.2;
        let rooms =
            house.home.spaces.iter().filter(|space| {
                !space.outdoors && space.level.as_deref() == Some(level.id.as_str())
            });
        let corners = rooms.flat_map(|space| space.outline.iter().copied());
        let places: Vec<(f64, f64)> = corners.chain(here.iter().map(|(_, at)| *at)).collect();
        let (right, bottom) = (self.left_m + self.width_m, self.top_m + self.height_m);
        let over = |pick: fn(&(f64, f64)) -> f64, least: fn(f64, f64) -> f64| {
            places.iter().map(pick).reduce(least).unwrap_or_default()
        };
        let left_m = (over(|p| p.0, f64::min) - AIR_M).clamp(self.left_m, right);
        let top_m = (over(|p| p.1, f64::min) - AIR_M).clamp(self.top_m, bottom);
        let width_m = (over(|p| p.0, f64::max) + AIR_M).clamp(self.left_m, right) - left_m;
        let height_m = (over(|p| p.1, f64::max) + AIR_M).clamp(self.top_m, bottom) - top_m;
        // A plan whose measures are a slip of the pen is shown whole.
        if width_m > AIR_M && height_m > AIR_M {
            Seen { left_m, top_m, width_m, height_m }
        } else {
            self.all()
        }
    }

    fn from_picture(pictures: &mut Pictures<'_>, level: &Level) -> Option<Self> {
        let plan = level.plan.as_ref()?;
        let ready = pictures.plan(&plan.picture)?;
        let (width, height) = (f64::from(ready.size.0), f64::from(ready.size.1));
        (width > 0.0 && plan.width_m > 0.0).then(|| Self {
            picture: Some(ready.name),
            left_m: plan.left_m,
            top_m: plan.top_m,
            width_m: plan.width_m,
            height_m: plan.width_m * height / width,
        })
    }

    fn from_rooms(house: &House<'_>, level: &Level) -> Option<Self> {
        /// Air around the outermost walls.
        const MARGIN_M: f64 = 0.5;
        let spaces =
            house.home.spaces.iter().filter(|s| s.level.as_deref() == Some(level.id.as_str()));
        let corners: Vec<(f64, f64)> = spaces.flat_map(|s| s.outline.iter().copied()).collect();
        let over = |pick: fn(&(f64, f64)) -> f64, least: fn(f64, f64) -> f64| {
            corners.iter().map(pick).reduce(least)
        };
        let left_m = over(|p| p.0, f64::min)? - MARGIN_M;
        let top_m = over(|p| p.1, f64::min)? - MARGIN_M;
        let width_m = over(|p| p.0, f64::max)? + MARGIN_M - left_m;
        let height_m = over(|p| p.1, f64::max)? + MARGIN_M - top_m;
        Some(Self { picture: None, left_m, top_m, width_m, height_m })
    }
}

fn rooms(
    house: &House<'_>,
    level: &Level,
    on_paper: impl Fn((f64, f64)) -> (f64, f64),
) -> Vec<Room> {
    let spaces = house
        .home
        .spaces
        .iter()
        .filter(|s| s.level.as_deref() == Some(level.id.as_str()) && s.outline.len() > 2);
    spaces
        .zip(1_u32..)
        .map(|(space, letter)| {
            let points: Vec<(f64, f64)> = space.outline.iter().map(|&p| on_paper(p)).collect();
            let left = points.iter().map(|p| p.0).fold(f64::INFINITY, f64::min);
            let top = points.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
            Room {
                at: (left + LETTER_ROOM + 0.4, top + LETTER_ROOM + 0.4),
                points,
                letter: letter.to_string(),
                name: space.name.clone(),
                outdoors: space.outdoors,
            }
        })
        .collect()
}

/// The place nearest to `wanted` at which a sign stands free, within the drawing.
fn free_place(
    wanted: (f64, f64),
    radius: f64,
    size: (f64, f64),
    taken: &[((f64, f64), f64)],
) -> Option<(f64, f64)> {
    /// Least number of places tried on each ring around the device.
    const AROUND: f64 = 24.0;
    let step = radius * 0.5;
    let reach = size.0.hypot(size.1);
    // A diamond reaches a little further than a circle.
    let edge = radius * 1.25;
    let inside =
        |(x, y): (f64, f64)| x >= edge && y >= edge && x <= size.0 - edge && y <= size.1 - edge;
    let free = |(x, y): (f64, f64)| {
        taken
            .iter()
            .all(|&((u, v), other)| (x - u).hypot(y - v) >= radius * 1.1 + other * 1.1 + BETWEEN)
    };
    let mut ring = 0.0;
    while ring <= reach {
        // Places on a ring lie as close as the rings do.
        let turn = (step / ring.max(step)).min(std::f64::consts::TAU / AROUND);
        let mut angle = 0.0_f64;
        while angle < std::f64::consts::TAU {
            let place = (wanted.0 + ring * angle.cos(), wanted.1 + ring * angle.sin());
            if inside(place) && free(place) {
                return Some(place);
            }
            angle += turn;
        }
        ring += step;
    }
    None
}

/// The first corner in which the mark of north stands free: top right, top left, bottom left, bottom
/// right; `None` if signs stand in all of them, or the drawing is too small for it.
fn free_corner(size: (f64, f64), taken: &[((f64, f64), f64)]) -> Option<(f64, f64)> {
    let edge = NORTH_RADIUS + BETWEEN;
    let (right, bottom) = (size.0 - edge, size.1 - edge);
    let corners = [(right, edge), (edge, edge), (edge, bottom), (right, bottom)];
    let is_free = |&(x, y): &(f64, f64)| {
        taken
            .iter()
            .all(|&((u, v), other)| (x - u).hypot(y - v) >= NORTH_RADIUS + other * 1.25 + BETWEEN)
    };
    let has_room = right > 3.0 * edge && bottom > 3.0 * edge;
    corners.into_iter().find(|corner| has_room && is_free(corner))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn north_stands_in_a_corner_without_a_sign_or_not_at_all() {
        let size = (100.0, 80.0);
        let mut taken = Vec::new();
        for corner in [(96.6, 3.4), (3.4, 3.4), (3.4, 76.6), (96.6, 76.6)] {
            let (x, y) = free_corner(size, &taken).unwrap();
            assert!((x - corner.0).hypot(y - corner.1) < 1e-9, "{x} {y}");
            taken.push(((x, y), 2.5));
        }
        assert_eq!(free_corner(size, &taken), None);
        assert_eq!(free_corner((10.0, 80.0), &[]), None);
    }

    #[test]
    fn signs_stand_free_of_each_other_and_inside_the_drawing() {
        let mut taken = Vec::new();
        // A hundred devices on one spot, in the corner.
        for _ in 0..100 {
            let at = free_place((0.0, 0.0), 2.5, (120.0, 90.0), &taken).unwrap();
            assert!(at.0 >= 2.5 && at.1 >= 2.5 && at.0 <= 117.5 && at.1 <= 87.5);
            for &((x, y), other) in &taken {
                assert!((at.0 - x).hypot(at.1 - y) >= 2.5 + other, "{at:?} on {x} {y}");
            }
            taken.push((at, 2.5));
        }
    }

    #[test]
    fn where_there_is_no_room_no_sign_is_put_over_another() {
        let mut taken = Vec::new();
        while let Some(at) = free_place((5.0, 5.0), 2.5, (12.0, 12.0), &taken) {
            taken.push((at, 2.5));
        }
        assert!((1..=4).contains(&taken.len()), "{}", taken.len());
    }
}
