//! Valves, by what one takes hold of.

use super::pen::{Pen, Point};
use super::{Motion, Travel};

/// The middle of a valve whose lever needs room on one side.
const ASIDE: Point = (36.0, 36.0);
/// The middle of a valve that needs the same room on all sides.
const MIDDLE: Point = (50.0, 50.0);

/// A lever over a pipe: along it is open, across it is closed.
pub(super) fn lever(pen: Pen<'_>, motion: Motion) {
    pen.pipe(ASIDE.1, 22.0, ASIDE.0);
    pen.disc(ASIDE, 18.0);
    let (along, across) = ((91.0, ASIDE.1), (ASIDE.0, 91.0));
    quarter(pen, motion, 16.0, (along, across), |pen, end| {
        let grip = (ASIDE.0 + (end.0 - ASIDE.0) * 0.34, ASIDE.1 + (end.1 - ASIDE.1) * 0.34);
        pen.bar(ASIDE, end, 9.0);
        pen.bar(grip, end, 15.0);
        pen.knob(ASIDE, 11.0);
        pen.hole(ASIDE, 3.6);
    });
}

/// A gas cock: its flat end lies along the pipe when open, and is turned with a wrench.
pub(super) fn gas_cock(pen: Pen<'_>, motion: Motion) {
    pen.pipe(ASIDE.1, 22.0, ASIDE.0);
    pen.disc(ASIDE, 20.0);
    let (along, across) = ((93.0, ASIDE.1), (ASIDE.0, 93.0));
    quarter(pen, motion, 13.0, (along, across), |pen, end| {
        let lies = end.1 <= ASIDE.1;
        // Along the wrench, and beside it.
        let place = |far: f32, side: f32| {
            if lies { (ASIDE.0 + far, ASIDE.1 + side) } else { (ASIDE.0 - side, ASIDE.1 + far) }
        };
        pen.shape(&[place(-13.0, -4.0), place(11.0, -4.0), place(11.0, 4.0), place(-13.0, 4.0)]);
        for side in [-1.0, 1.0] {
            pen.limb(&[place(-5.0, side * 10.0), place(11.0, side * 11.0)], 6.5);
            pen.limb(&[place(11.0, side * 11.0), place(22.0, 0.0)], 8.0);
        }
        pen.bar(place(20.0, 0.0), end, 10.0);
    });
}

/// A quarter turn about [`ASIDE`] between `along` and `across` the pipe.
fn quarter(
    pen: Pen<'_>,
    motion: Motion,
    width: f32,
    (along, across): (Point, Point),
    handle: impl Fn(Pen<'_>, Point),
) {
    match motion {
        Motion::Rest => handle(pen, along),
        Motion::Close => {
            pen.bar_to(ASIDE, across, width);
            handle(pen, along);
            pen.turn(ASIDE, 47.0, 15.0, 61.0);
        }
        Motion::Open => {
            pen.bar_to(ASIDE, along, width);
            handle(pen, across);
            pen.turn(ASIDE, 47.0, 75.0, 29.0);
        }
    }
}

/// A tee or butterfly handle: two wings, along the pipe when open.
pub(super) fn tee(pen: Pen<'_>, motion: Motion) {
    pen.pipe(MIDDLE.1, 20.0, MIDDLE.0);
    pen.disc(MIDDLE, 17.0);
    let wings = |across: bool| {
        for side in [-1.0, 1.0] {
            let far = |far: f32| {
                if across {
                    (MIDDLE.0, MIDDLE.1 + side * far)
                } else {
                    (MIDDLE.0 + side * far, MIDDLE.1)
                }
            };
            pen.bar(MIDDLE, far(24.0), 8.0);
            pen.oval(far(25.0), if across { (8.5, 14.0) } else { (14.0, 8.5) });
        }
        pen.knob(MIDDLE, 9.5);
        pen.hole(MIDDLE, 3.2);
    };
    let wings_to = |across: bool| {
        let ends = if across {
            ((MIDDLE.0, 20.0), (MIDDLE.0, 80.0))
        } else {
            ((20.0, MIDDLE.1), (80.0, MIDDLE.1))
        };
        pen.bar_to(ends.0, ends.1, 17.0);
    };
    match motion {
        Motion::Rest => wings(false),
        Motion::Close | Motion::Open => {
            let opens = motion == Motion::Open;
            wings_to(!opens);
            wings(opens);
            let (from, to) = if opens { (76.0, 30.0) } else { (14.0, 60.0) };
            for half in [0.0, 180.0] {
                pen.turn(MIDDLE, 43.0, from + half, to + half);
            }
        }
    }
}

/// The small oval handle of a stop at the wall.
pub(super) fn oval(pen: Pen<'_>, motion: Motion, travel: Travel) {
    let centre = (50.0, 54.0);
    pen.run((43.0, -6.0), (57.0, 40.0));
    pen.body((39.0, 12.0), (61.0, 22.0), 2.0);
    pen.disc(centre, 21.0);
    let (upright, lying) = ((12.0, 27.0), (27.0, 12.0));
    match (travel, motion) {
        (_, Motion::Rest) => pen.oval(centre, upright),
        (Travel::Quarter, _) => {
            let opens = motion == Motion::Open;
            let (to, now) = if opens { (upright, lying) } else { (lying, upright) };
            pen.oval_to(centre, to);
            pen.oval(centre, now);
            let (from, to) = if opens { (164.0, 122.0) } else { (106.0, 146.0) };
            for half in [0.0, 180.0] {
                pen.turn(centre, 38.0, from + half, to + half);
            }
        }
        (Travel::Turns(count), _) => {
            pen.oval(centre, (22.0, 12.0));
            turns(pen, centre, motion, (29.0, 39.0), count);
        }
    }
    if motion == Motion::Rest || travel == Travel::Quarter {
        pen.hole(centre, 3.4);
    } else {
        pen.hole(centre, 3.2);
    }
}

/// A round handwheel.
pub(super) fn wheel(pen: Pen<'_>, motion: Motion, count: Option<f64>) {
    pen.pipe(MIDDLE.1, 20.0, MIDDLE.0);
    pen.hole(MIDDLE, 26.0);
    for spoke in [-90.0_f32, -18.0, 54.0, 126.0, 198.0] {
        let (x, y) = (spoke.to_radians().cos(), spoke.to_radians().sin());
        pen.bar(MIDDLE, (MIDDLE.0 + x * 23.0, MIDDLE.1 + y * 23.0), 4.4);
    }
    pen.rim(MIDDLE, 23.0, 7.0);
    pen.knob(MIDDLE, 7.5);
    pen.hole(MIDDLE, 2.8);
    turns(pen, MIDDLE, motion, (32.0, 42.0), count);
}

/// Several turns: an arrow that goes round more than once, and how often if it is known.
fn turns(pen: Pen<'_>, centre: Point, motion: Motion, radius: (f32, f32), count: Option<f64>) {
    match motion {
        Motion::Rest => return,
        Motion::Close => pen.swirl(centre, radius, 1.0, -150.0, 385.0),
        Motion::Open => pen.swirl(centre, radius, 1.0, -30.0, -565.0),
    }
    if let Some(count) = count {
        pen.number((89.0, 92.0), 17.0, &times(count));
    }
}

/// `3×`, `2.5×`.
fn times(count: f64) -> String {
    format!("{}×", (count * 10.0).round() / 10.0)
}

/// A slot for a screwdriver.
pub(super) fn slot(pen: Pen<'_>, motion: Motion, travel: Travel) {
    let centre = (44.0, 46.0);
    pen.pipe(centre.1, 20.0, centre.0);
    pen.disc(centre, 23.0);
    pen.bar((80.0, 82.0), (86.0, 88.0), 4.4);
    pen.bar((87.0, 89.0), (93.0, 95.0), 10.0);
    let (lying, upright) = (((28.0, 46.0), (60.0, 46.0)), ((44.0, 30.0), (44.0, 62.0)));
    match (travel, motion) {
        (_, Motion::Rest) => pen.bar(lying.0, lying.1, 7.5),
        (Travel::Quarter, _) => {
            let opens = motion == Motion::Open;
            let (now, to) = if opens { (upright, lying) } else { (lying, upright) };
            pen.bar_to(to.0, to.1, 8.5);
            pen.bar(now.0, now.1, 7.5);
            let (from, to) = if opens { (-14.0, -60.0) } else { (-76.0, -30.0) };
            for half in [0.0, 180.0] {
                pen.turn(centre, 35.0, from + half, to + half);
            }
        }
        (Travel::Turns(count), _) => {
            pen.bar((33.0, 35.0), (55.0, 57.0), 7.5);
            match motion {
                Motion::Open => pen.swirl(centre, (29.0, 38.0), 1.0, 10.0, -525.0),
                _ => pen.swirl(centre, (29.0, 38.0), 1.0, -190.0, 345.0),
            }
            if let Some(count) = count {
                pen.number((88.0, 12.0), 17.0, &times(count));
            }
        }
    }
}

/// A square or a nut in a box in the ground, turned from above with a key.
pub(super) fn key(pen: Pen<'_>, motion: Motion, travel: Travel) {
    pen.pipe(86.0, 12.0, 50.0);
    pen.wire(&[(2.0, 60.0), (30.0, 60.0), (30.0, 78.0)], 2.6);
    pen.wire(&[(98.0, 60.0), (70.0, 60.0), (70.0, 78.0)], 2.6);
    pen.disc((50.0, 85.0), 10.0);
    pen.grip((44.0, 68.0), (56.0, 79.0), 2.0);
    pen.bar((50.0, 24.0), (50.0, 72.0), 6.0);
    pen.bar((24.0, 24.0), (76.0, 24.0), 9.0);
    pen.knob((50.0, 24.0), 6.5);
    // Seen from above it goes clockwise: in front from right to left.
    let centre = (50.0, 25.0);
    let (from, to) = match travel {
        Travel::Quarter => (22.0, 92.0),
        Travel::Turns(_) => (-62.0, 222.0),
    };
    match motion {
        Motion::Rest => return,
        Motion::Close => pen.swirl(centre, (41.0, 41.0), 0.42, from, to),
        Motion::Open => pen.swirl(centre, (41.0, 41.0), 0.42, 180.0 - from, 180.0 - to),
    }
    if let Travel::Turns(Some(count)) = travel {
        pen.number((88.0, 48.0), 16.0, &times(count));
    }
}

/// A knob that is pushed in or pulled out; `inwards` is the way it goes now.
pub(super) fn plunger(pen: Pen<'_>, motion: Motion, inwards: bool) {
    pen.run((14.0, -6.0), (38.0, 106.0));
    pen.body((36.0, 36.0), (50.0, 64.0), 2.0);
    let (near, far) = (58.0, 80.0);
    let (now, to) = if inwards { (far, near) } else { (near, far) };
    if motion != Motion::Rest {
        pen.grip_to((to, 34.0), (to + 12.0, 66.0), 4.0);
    }
    pen.bar((50.0, 50.0), (now, 50.0), 6.0);
    pen.grip((now, 33.0), (now + 12.0, 67.0), 4.0);
    if motion != Motion::Rest {
        let (from, to) = if inwards { (94.0, 54.0) } else { (52.0, 94.0) };
        pen.arrow((from, 17.0), (to, 17.0));
    }
}

/// Both handles that a valve may have, where the map does not tell which.
pub(super) fn either(pen: Pen<'_>, motion: Motion) {
    lever(pen.within(0.0, 0.0, 54.0), motion);
    wheel(pen.within(46.0, 46.0, 54.0), motion, None);
    pen.wire(&[(80.0, 16.0), (16.0, 80.0)], 1.6);
}
