//! How the plan is looked at: how near and at which part, by wheel, drag, pinch and keys.
//!
//! What was turned to by hand holds until the page, the level or the goal changes. It is kept where
//! egui keeps what its own scroll areas remember, since it is no part of what is asked.

use std::sync::Arc;

use egui::{EventFilter, Id, Key, Modifiers, Pos2, Rect, Response, Ui, UiKind, Vec2, vec2};
use quarterturn_guidance::{Spot, Trouble, trace};
use quarterturn_home::Level;

use crate::sheet::Sheet;
use crate::view::View;

/// A press of a button or key comes this many times nearer.
const NEARER: f32 = 1.4;
/// A double click.
const NEARER_AT_ONCE: f32 = 2.0;
/// Points of a wheel for coming e times nearer.
const WHEEL: f32 = 260.0;
/// A key moves by this part of what is seen.
const STRIDE: f32 = 0.15;

/// What is aimed at.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) enum Aim {
    /// What matters now.
    #[default]
    WhatMatters,
    /// All of the level.
    Whole,
    /// A point of the level in the middle, in metres, with so many points of the screen for a metre.
    ByHand { x: f64, y: f64, scale: f64 },
}

/// A way to look elsewhere.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Turn {
    /// This many times nearer to what is there on the screen.
    Nearer(f32, Pos2),
    /// The plan by so many points.
    By(Vec2),
    /// All of the level.
    Whole,
    /// What matters.
    WhatMatters,
}

/// The lines between a device and the spot, by the ids of the components along each.
type Lines = Vec<Vec<String>>;

/// What the plan is about: another one is looked at anew.
#[derive(Debug, Clone, Default, PartialEq)]
struct Subject {
    level: String,
    trouble: Option<Trouble>,
    at: Option<Spot>,
    goal: Option<String>,
}

/// How the plan is looked at.
#[derive(Debug, Clone, Default)]
pub(crate) struct Looking {
    subject: Subject,
    pub(crate) aim: Aim,
    /// Traced once for each subject.
    pub(crate) lines: Arc<Lines>,
    /// The pass it was last used in: a plan that was out of sight is looked at anew.
    pass: u64,
}

impl Looking {
    /// How the plan of a level was looked at last.
    pub(crate) fn load(ui: &Ui, view: &View<'_>, level: &Level) -> Self {
        let pass = ui.ctx().cumulative_pass_nr();
        let goal = view.answer.and_then(|answer| view.asked.goal(answer));
        let subject = Subject {
            level: level.id.clone(),
            trouble: view.asked.trouble,
            at: view.asked.at.clone(),
            goal,
        };
        let kept = ui.data(|data| data.get_temp::<Self>(id()));
        match kept.filter(|kept| kept.subject == subject && pass <= kept.pass + 1) {
            Some(kept) => Self { pass, ..kept },
            None => {
                let lines = Arc::new(lines(view, &subject));
                Self { subject, aim: Aim::default(), lines, pass }
            }
        }
    }

    /// Keeps it for the next frame.
    pub(crate) fn store(self, ui: &Ui) {
        ui.data_mut(|data| data.insert_temp(id(), self));
    }

    /// Looks elsewhere.
    pub(crate) fn turn(&mut self, sheet: &Sheet, area: Rect, turn: Turn) {
        self.aim = turned(sheet, area, turn);
    }
}

/// What is aimed at after a turn.
pub(crate) fn turned(sheet: &Sheet, area: Rect, turn: Turn) -> Aim {
    let by_hand = |scale: f64, middle: Pos2| {
        // All of it is all of it, however one got there.
        if scale <= sheet.whole * 1.001 {
            return Aim::Whole;
        }
        let (x, y) = sheet.metres(middle);
        Aim::ByHand { x, y, scale }
    };
    match turn {
        Turn::Whole => Aim::Whole,
        Turn::WhatMatters => Aim::WhatMatters,
        Turn::By(by) => by_hand(sheet.scale, area.center() - by),
        Turn::Nearer(times, at) => {
            let scale = (sheet.scale * f64::from(times)).max(sheet.whole);
            // The point under the pointer stays there.
            by_hand(scale, at + (area.center() - at) / times)
        }
    }
}

fn id() -> Id {
    Id::unique("how the plan is looked at")
}

fn lines(view: &View<'_>, subject: &Subject) -> Lines {
    let (Some(trouble), Some(spot), Some(goal)) = (subject.trouble, &subject.at, &subject.goal)
    else {
        return Lines::new();
    };
    trace(view.home, trouble, spot, goal)
}

/// What wheel, pointer, fingers and keys ask for.
pub(crate) fn turns(ui: &Ui, response: &Response, area: Rect) -> Vec<Turn> {
    let mut turns = wheel(ui, area);
    let pointer = ui.input(|i| i.pointer.latest_pos());
    let at = pointer.filter(|at| area.contains(*at)).unwrap_or(area.center());
    if response.dragged() && ui.input(|i| i.multi_touch().is_none()) {
        turns.push(Turn::By(response.drag_delta()));
    }
    if response.double_clicked() {
        turns.push(Turn::Nearer(NEARER_AT_ONCE, at));
    }
    turns.extend(keys(ui, response, area));
    turns
}

/// What wheel and fingers over the plan ask for.
pub(crate) fn wheel(ui: &Ui, area: Rect) -> Vec<Turn> {
    let mut turns = Vec::new();
    if ui.rect_contains_pointer(area) {
        let pointer = ui.input(|i| i.pointer.latest_pos());
        let at = pointer.filter(|at| area.contains(*at)).unwrap_or(area.center());
        let (zoom, scrolled, moved) = ui.input(|i| {
            let moved = i.multi_touch().map_or(Vec2::ZERO, |touch| touch.translation_delta);
            (i.zoom_delta(), i.smooth_scroll_delta(), moved)
        });
        // On a page that scrolls, the wheel alone belongs to the page.
        let scrolls = ui.stack().contained_in(UiKind::ScrollArea);
        let wheel = if scrolls { 1.0 } else { (scrolled.y / WHEEL).exp() };
        let times = zoom * wheel;
        if (times - 1.0).abs() > 1e-4 {
            turns.push(Turn::Nearer(times, at));
        }
        if moved != Vec2::ZERO {
            turns.push(Turn::By(moved));
        }
    }
    turns
}

/// With the focus on the plan: arrows move, + and - come nearer and go farther, 0 shows the whole
/// floor, Home what matters.
pub(crate) fn keys(ui: &Ui, response: &Response, area: Rect) -> Vec<Turn> {
    if !response.has_focus() {
        return Vec::new();
    }
    let filter =
        EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    let stride = area.size() * STRIDE;
    let middle = area.center();
    // With ctrl these keys make all of the window bigger.
    ui.input(|i| {
        let plain = i.modifiers.matches_logically(Modifiers::NONE) || i.modifiers.shift_only();
        let presses = i.events.iter().filter_map(|event| match event {
            egui::Event::Key { key, pressed: true, .. } if plain => Some(*key),
            _ => None,
        });
        presses
            .filter_map(|key| match key {
                Key::ArrowLeft => Some(Turn::By(vec2(stride.x, 0.0))),
                Key::ArrowRight => Some(Turn::By(vec2(-stride.x, 0.0))),
                Key::ArrowUp => Some(Turn::By(vec2(0.0, stride.y))),
                Key::ArrowDown => Some(Turn::By(vec2(0.0, -stride.y))),
                Key::Plus | Key::Equals => Some(Turn::Nearer(NEARER, middle)),
                Key::Minus => Some(Turn::Nearer(NEARER.recip(), middle)),
                Key::Num0 => Some(Turn::Whole),
                Key::Home => Some(Turn::WhatMatters),
                _ => None,
            })
            .collect()
    })
}

/// One step nearer to the middle, and back.
pub(crate) fn nearer(area: Rect) -> Turn {
    Turn::Nearer(NEARER, area.center())
}

/// One step away from the middle.
pub(crate) fn farther(area: Rect) -> Turn {
    Turn::Nearer(NEARER.recip(), area.center())
}

#[cfg(test)]
mod tests {
    use super::*;
    use egui::pos2;
    use quarterturn_home::{Home, Space};

    use crate::pictures::Picture;

    /// Ten by ten metres.
    fn home() -> Home {
        let space = Space {
            id: "room".to_owned(),
            name: "Room".to_owned(),
            level: Some("ground".to_owned()),
            outline: vec![(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)],
            outdoors: false,
        };
        let level = Level {
            id: "ground".to_owned(),
            name: "Ground".to_owned(),
            elevation_m: 0.0,
            plan: None,
        };
        Home { levels: vec![level], spaces: vec![space], ..Home::default() }
    }

    fn area() -> Rect {
        Rect::from_min_size(pos2(100.0, 50.0), vec2(400.0, 400.0))
    }

    fn sheet(aim: Aim) -> Sheet {
        let home = home();
        let focus = Some((4.0, 4.0, 5.0, 5.0));
        Sheet::fit(&home, &home.levels[0], &Picture::None, area(), aim, focus).unwrap()
    }

    #[test]
    fn what_is_under_the_pointer_stays_under_it() {
        let mut looking = Looking::default();
        let before = sheet(Aim::Whole);
        let pointer = pos2(250.0, 300.0);
        let under = before.metres(pointer);
        looking.turn(&before, area(), Turn::Nearer(3.0, pointer));
        let after = sheet(looking.aim);
        assert!((after.scale / before.scale - 3.0).abs() < 1e-6);
        assert!(after.at(under.0, under.1).distance(pointer) < 0.1);
    }

    #[test]
    fn dragging_moves_the_plan_with_the_pointer_but_not_off_the_sheet() {
        let mut looking = Looking::default();
        looking.turn(&sheet(Aim::Whole), area(), Turn::Nearer(2.0, area().center()));
        let before = sheet(looking.aim);
        let place = before.at(5.0, 5.0);
        looking.turn(&before, area(), Turn::By(vec2(30.0, -20.0)));
        let after = sheet(looking.aim);
        assert!(after.at(5.0, 5.0).distance(place + vec2(30.0, -20.0)) < 0.1);
        // However far one drags, the level fills the area.
        looking.turn(&after, area(), Turn::By(vec2(9000.0, 9000.0)));
        let end = sheet(looking.aim);
        assert!(end.seen.width() > 399.0 && end.seen.height() > 399.0, "{}", end.seen);
        // And the way back begins at once.
        looking.turn(&end, area(), Turn::By(vec2(-10.0, 0.0)));
        let back = sheet(looking.aim);
        assert!((end.rect.left() - back.rect.left() - 10.0).abs() < 0.1);
    }

    #[test]
    fn going_far_enough_away_shows_the_whole_floor() {
        let mut looking = Looking::default();
        looking.turn(&sheet(Aim::WhatMatters), area(), Turn::Nearer(0.01, area().center()));
        assert_eq!(looking.aim, Aim::Whole);
        looking.turn(&sheet(Aim::Whole), area(), Turn::Nearer(1e6, area().center()));
        let near = sheet(looking.aim);
        assert!((near.scale / near.whole - 12.0).abs() < 1e-6);
    }

    /// What is mirrored is the picture, not the places of things.
    #[test]
    fn a_mirrored_picture_is_turned_left_for_right() {
        let home = home();
        for is in [false, true] {
            let mut level = home.levels[0].clone();
            level.plan = Some(quarterturn_home::Plan {
                picture: "plan.png".to_owned(),
                left_m: 0.0,
                top_m: 0.0,
                width_m: 10.0,
                mirrored: is,
            });
            let none = Picture::None;
            let sheet = Sheet::fit(&home, &level, &none, area(), Aim::Whole, None).unwrap();
            let corner = sheet.on_picture(sheet.rect.left_top());
            assert_eq!(corner, pos2(if is { 1.0 } else { 0.0 }, 0.0));
            assert!(sheet.at(0.0, 5.0).x < sheet.at(10.0, 5.0).x);
        }
    }

    #[test]
    fn what_matters_is_shown_large() {
        let matters = sheet(Aim::WhatMatters);
        assert!((matters.scale / 80.0 - 1.0).abs() < 0.01, "{}", matters.scale);
        assert!(matters.at(6.5, 6.5).distance(area().center()) < 30.0);
    }
}
