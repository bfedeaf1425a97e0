//! Drains, fixtures and machines, and what is done without a device.

use super::pen::{Pen, Point, bend};

/// A cap with a nut on it, unscrewed slowly to the left with a wrench.
pub(super) fn cap(pen: Pen<'_>, is_worked: bool) {
    if !is_worked {
        pen.disc((50.0, 50.0), 40.0);
        pen.ring((50.0, 50.0), 30.0);
        pen.grip((39.0, 39.0), (61.0, 61.0), 2.0);
        return;
    }
    let (x, y) = (38.0, 62.0);
    pen.disc((x, y), 32.0);
    pen.ring((x, y), 23.0);
    pen.grip((x - 9.0, y - 9.0), (x + 9.0, y + 9.0), 1.5);
    for side in [-1.0, 1.0] {
        pen.limb(&[(x - 6.0, y + side * 14.5), (x + 12.0, y + side * 15.5), (x + 24.0, y)], 6.5);
    }
    pen.bar((x + 22.0, y), (95.0, y), 10.0);
    pen.slow_turn((x, y), 46.0, -14.0, -82.0);
}

/// A telephone.
pub(super) fn telephone(pen: Pen<'_>) {
    pen.bow((76.0, 24.0), 50.0, 100.0, 170.0, 13.0);
    pen.limb(&[(67.0, 73.0), (79.0, 62.0)], 17.0);
    pen.limb(&[(27.0, 33.0), (38.0, 21.0)], 17.0);
    pen.bow((58.0, 42.0), 17.0, -80.0, -10.0, 5.0);
    pen.bow((58.0, 42.0), 32.0, -80.0, -10.0, 5.0);
}

/// An eye: look.
pub(super) fn eye(pen: Pen<'_>) {
    let mut lids = bend((50.0, 82.0), (56.0, 56.0), 1.0, 215.0, 325.0);
    lids.extend(bend((50.0, 18.0), (56.0, 56.0), 1.0, 35.0, 145.0));
    lids.extend(lids.first().copied());
    pen.rod_smooth(&lids, 6.5, pen.ink());
    pen.knob((50.0, 50.0), 15.0);
    pen.hole((55.0, 45.0), 4.6);
}

/// The eye in the corner of a device: look at this.
pub(super) fn eye_badge(pen: Pen<'_>) {
    pen.hole((79.0, 21.0), 20.5);
    pen.ring((79.0, 21.0), 19.0);
    eye(pen.within(64.0, 6.0, 30.0));
}

/// Someone who goes out of a door.
pub(super) fn leave(pen: Pen<'_>) {
    pen.body((4.0, 6.0), (44.0, 96.0), 2.0);
    pen.opening((12.0, 14.0), (44.0, 96.0), 0.0);
    pen.knob((60.0, 25.0), 9.0);
    pen.limb(&[(57.0, 40.0), (50.0, 62.0)], 11.0);
    pen.limb(&[(50.0, 62.0), (64.0, 74.0), (61.0, 93.0)], 7.5);
    pen.limb(&[(50.0, 62.0), (41.0, 78.0), (24.0, 82.0)], 7.5);
    pen.limb(&[(57.0, 41.0), (69.0, 54.0), (79.0, 47.0)], 6.5);
    pen.limb(&[(56.0, 41.0), (41.0, 44.0), (36.0, 57.0)], 6.5);
    pen.arrow((76.0, 25.0), (99.0, 25.0));
}

/// A tap that is not to be used: the ring and bar of a prohibition (ISO 3864-1).
pub(super) fn stop_use(pen: Pen<'_>) {
    tap(pen.within(23.0, 22.0, 56.0));
    pen.rim((50.0, 50.0), 43.0, 7.0);
    pen.bar((19.6, 19.6), (80.4, 80.4), 7.0);
}

/// A tap over nothing.
pub(super) fn tap(pen: Pen<'_>) {
    pen.wire(&[(8.0, 44.0), (60.0, 44.0), (72.0, 54.0), (72.0, 66.0)], 13.0);
    pen.wire(&[(34.0, 42.0), (34.0, 18.0)], 7.0);
    pen.wire(&[(16.0, 16.0), (52.0, 16.0)], 8.0);
    drop(pen, (72.0, 86.0), 7.0);
}

/// A drop of water.
fn drop(pen: Pen<'_>, (x, y): Point, radius: f32) {
    pen.knob((x, y + radius * 0.2), radius);
    pen.shape(&[
        (x, y - radius * 1.6),
        (x + radius * 0.87, y - radius * 0.28),
        (x - radius * 0.87, y - radius * 0.28),
    ]);
}

/// A sink, basin or bath with its tap.
pub(super) fn basin(pen: Pen<'_>) {
    pen.body((6.0, 48.0), (94.0, 58.0), 3.0);
    pen.stays(&[(14.0, 58.0), (86.0, 58.0), (74.0, 88.0), (26.0, 88.0)]);
    pen.wire(&[(50.0, 88.0), (50.0, 98.0)], 7.0);
    pen.limb(&[(28.0, 48.0), (28.0, 20.0), (48.0, 20.0), (48.0, 30.0)], 7.0);
    drop(pen, (48.0, 42.0), 4.0);
}

/// A shower over its drain.
pub(super) fn shower(pen: Pen<'_>) {
    pen.limb(&[(14.0, 96.0), (14.0, 12.0), (56.0, 12.0), (56.0, 20.0)], 6.0);
    pen.grip((38.0, 20.0), (74.0, 28.0), 4.0);
    for x in [43.0, 56.0, 69.0] {
        pen.wire(&[(x, 38.0), (x, 48.0)], 4.0);
        pen.wire(&[(x, 58.0), (x, 68.0)], 4.0);
    }
    pen.body((28.0, 84.0), (96.0, 96.0), 4.0);
    pen.bar((54.0, 90.0), (64.0, 90.0), 4.0);
}

/// A toilet with its tank.
pub(super) fn toilet(pen: Pen<'_>) {
    pen.body((10.0, 6.0), (38.0, 50.0), 4.0);
    pen.body((34.0, 44.0), (92.0, 54.0), 5.0);
    pen.stays(&[(36.0, 54.0), (86.0, 54.0), (68.0, 78.0), (64.0, 94.0), (36.0, 94.0)]);
    pen.bar((24.0, 16.0), (32.0, 16.0), 5.0);
}

/// A grate in the floor.
pub(super) fn floor_drain(pen: Pen<'_>) {
    pen.disc((50.0, 50.0), 42.0);
    for (y, half) in [(28.0, 18.0), (43.0, 26.0), (57.0, 26.0), (72.0, 18.0)] {
        pen.bar((50.0 - half, y), (50.0 + half, y), 6.0);
    }
}

/// A pit with water in it, and a pump.
pub(super) fn pit(pen: Pen<'_>) {
    pen.wire(
        &[(4.0, 22.0), (18.0, 22.0), (18.0, 94.0), (82.0, 94.0), (82.0, 22.0), (96.0, 22.0)],
        5.0,
    );
    waves(pen, 54.0);
    pen.body((32.0, 66.0), (60.0, 90.0), 4.0);
    pen.wire(&[(46.0, 66.0), (46.0, 4.0)], 7.0);
}

/// A pan that water gathers in, with the float that switches off.
pub(super) fn float(pen: Pen<'_>) {
    pen.wire(&[(6.0, 46.0), (6.0, 90.0), (94.0, 90.0), (94.0, 46.0)], 5.0);
    waves(pen, 72.0);
    pen.bar((64.0, 14.0), (64.0, 54.0), 5.0);
    pen.grip((46.0, 8.0), (82.0, 20.0), 3.0);
    pen.oval((64.0, 60.0), (15.0, 11.0));
}

fn waves(pen: Pen<'_>, y: f32) {
    let wave: Vec<Point> = (0..=64_u8)
        .map(|n| {
            let x = 22.0 + f32::from(n) / 64.0 * 56.0;
            (x, y + 3.0 * ((x - 22.0) / 14.0 * std::f32::consts::PI).sin())
        })
        .collect();
    pen.rod_smooth(&wave, 4.0, pen.ink());
}

/// A tank that heats water.
pub(super) fn heater(pen: Pen<'_>) {
    for x in [38.0, 62.0] {
        pen.wire(&[(x, 4.0), (x, 18.0)], 6.0);
    }
    pen.body((24.0, 16.0), (76.0, 96.0), 12.0);
    pen.knob((50.0, 74.0), 9.5);
    pen.shape(&[(51.0, 48.0), (59.3, 70.0), (40.7, 72.0)]);
}

/// A machine that blows air over a coil.
pub(super) fn air_handler(pen: Pen<'_>) {
    pen.body((12.0, 4.0), (88.0, 96.0), 5.0);
    pen.ring((50.0, 34.0), 21.0);
    for turn in [0.0_f32, 120.0, 240.0] {
        let (x, y) = (turn.to_radians().sin(), turn.to_radians().cos());
        pen.bar((50.0, 34.0), (50.0 + x * 13.0, 34.0 + y * 13.0), 7.0);
    }
    pen.limb(&[(26.0, 68.0), (38.0, 84.0), (50.0, 68.0), (62.0, 84.0), (74.0, 68.0)], 4.6);
}

/// An alarm on the ceiling.
pub(super) fn alarm(pen: Pen<'_>) {
    pen.disc((50.0, 50.0), 34.0);
    pen.ring((50.0, 50.0), 24.0);
    pen.knob((50.0, 50.0), 8.0);
    for from in [-35.0, 145.0] {
        pen.bow((50.0, 50.0), 45.0, from, from + 70.0, 4.6);
    }
}

/// A meter with its dial.
pub(super) fn meter(pen: Pen<'_>) {
    pen.pipe(72.0, 18.0, 50.0);
    pen.disc((50.0, 46.0), 34.0);
    pen.opening((30.0, 30.0), (70.0, 44.0), 2.0);
    pen.bar((50.0, 60.0), (60.0, 52.0), 4.6);
    pen.knob((50.0, 60.0), 4.6);
}

/// A length of pipe.
pub(super) fn pipe(pen: Pen<'_>) {
    pen.pipe(50.0, 26.0, 50.0);
    drop(pen, (50.0, 84.0), 7.0);
}

/// A machine with a door.
pub(super) fn machine(pen: Pen<'_>) {
    pen.body((12.0, 6.0), (88.0, 94.0), 6.0);
    pen.wire(&[(12.0, 24.0), (88.0, 24.0)], 2.6);
    pen.knob((26.0, 15.0), 4.0);
    pen.ring((50.0, 58.0), 26.0);
    pen.bow((50.0, 58.0), 15.0, 180.0, 270.0, 4.6);
}

/// A device of a kind that has no figure of its own.
pub(super) fn device(pen: Pen<'_>) {
    pen.body((10.0, 16.0), (90.0, 84.0), 8.0);
    pen.ring((34.0, 50.0), 15.0);
    pen.bar((34.0, 50.0), (42.0, 42.0), 5.0);
    for y in [38.0, 50.0, 62.0] {
        pen.bar((60.0, y), (78.0, y), 4.6);
    }
}

/// A sheet with lines: something to know.
pub(super) fn note(pen: Pen<'_>) {
    pen.body((18.0, 6.0), (82.0, 94.0), 4.0);
    for (y, end) in [(28.0, 70.0), (44.0, 70.0), (60.0, 70.0), (76.0, 54.0)] {
        pen.bar((30.0, y), (end, y), 5.0);
    }
}
