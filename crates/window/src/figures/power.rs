//! Breakers, switches, outlets and plugs.

use super::pen::{Pen, Point};

/// What is done with a breaker's toggle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Toggle {
    /// It is looked at.
    Rest,
    /// It is switched off.
    Off,
    /// It has tripped, and is switched fully off, then on.
    Reset,
}

/// A breaker: on above, off below, between the two when it has tripped.
pub(super) fn breaker(pen: Pen<'_>, toggle: Toggle) {
    pen.body((27.0, 3.0), (73.0, 97.0), 5.0);
    pen.opening((37.0, 24.0), (63.0, 76.0), 4.0);
    pen.sign_on((50.0, 13.5));
    pen.sign_off((50.0, 86.5));
    let grip = |y: f32| pen.grip((39.5, y - 8.0), (60.5, y + 8.0), 3.0);
    let to = |y: f32| pen.grip_to((39.5, y - 8.0), (60.5, y + 8.0), 3.0);
    let (on, between, off) = (35.0, 50.0, 65.0);
    match toggle {
        Toggle::Rest => grip(on),
        Toggle::Off => {
            to(off);
            grip(on);
            pen.arrow((87.0, 28.0), (87.0, 74.0));
        }
        Toggle::Reset => {
            to(on - 1.5);
            to(off + 1.5);
            grip(between);
            pen.number((12.0, 38.0), 17.0, "1");
            pen.arrow((12.0, 51.0), (12.0, 80.0));
            pen.number((88.0, 86.0), 17.0, "2");
            pen.arrow((88.0, 74.0), (88.0, 20.0));
        }
    }
}

/// A box with a lever at its side: up is on, down is off.
pub(super) fn lever_switch(pen: Pen<'_>, is_worked: bool) {
    pen.body((8.0, 8.0), (58.0, 92.0), 4.0);
    pen.sign_on((33.0, 24.0));
    pen.sign_off((33.0, 76.0));
    let hub = (58.0, 50.0);
    let (up, down) = ((76.0, 17.0), (76.0, 83.0));
    if is_worked {
        pen.bar_to(hub, down, 12.0);
    }
    pen.bar(hub, up, 8.0);
    pen.bar((68.0, 32.0), up, 13.0);
    pen.knob(hub, 9.0);
    pen.hole(hub, 3.0);
    if is_worked {
        pen.turn(hub, 36.0, -40.0, 26.0);
    }
}

/// A box whose block is pulled straight out.
pub(super) fn pull_out(pen: Pen<'_>, is_worked: bool) {
    pen.body((4.0, 10.0), (34.0, 90.0), 4.0);
    let shift = if is_worked { 0.0 } else { -24.0 };
    if is_worked {
        pen.grip_to((22.0, 34.0), (34.0, 66.0), 2.0);
    }
    for y in [43.0, 57.0] {
        pen.bar((46.0 + shift, y), (58.0 + shift, y), 4.4);
    }
    pen.grip((57.0 + shift, 32.0), (75.0 + shift, 68.0), 3.0);
    // The handle to hold it by.
    let end = 90.0 + shift;
    pen.limb(&[(75.0 + shift, 40.0), (end, 40.0), (end, 60.0), (75.0 + shift, 60.0)], 5.0);
    if is_worked {
        pen.arrow((44.0, 18.0), (92.0, 18.0));
    }
}

/// The two faces of an outlet with room for buttons between them.
fn outlet_plate(pen: Pen<'_>, shift: f32) {
    pen.body((22.0 + shift, 3.0), (78.0 + shift, 97.0), 8.0);
    for top in [14.0, 70.0] {
        for x in [42.0, 58.0] {
            pen.wire(&[(x + shift, top), (x + shift, top + 10.0)], 4.0);
        }
        pen.wire(&[(50.0 + shift, top + 15.5), (50.0 + shift, top + 16.0)], 5.0);
    }
}

/// An outlet.
pub(super) fn outlet(pen: Pen<'_>) {
    outlet_plate(pen, 0.0);
}

/// Which button of a ground-fault outlet is pressed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum GfciButton {
    /// None.
    Rest,
    /// The one that switches it on again.
    Reset,
    /// The one that switches it off.
    Test,
}

/// A ground-fault outlet with its two buttons.
pub(super) fn gfci(pen: Pen<'_>, button: GfciButton) {
    let shift = if button == GfciButton::Rest { 0.0 } else { -18.0 };
    outlet_plate(pen, shift);
    let place = |y: f32| (((34.0 + shift), y - 4.5), ((66.0 + shift), y + 4.5));
    let (test, reset) = (43.0, 57.0);
    for (which, y) in [(GfciButton::Test, test), (GfciButton::Reset, reset)] {
        let (from, to) = place(y);
        if button == which {
            pen.grip(from, to, 3.0);
            pen.arrow((98.0, y), (65.0, y));
        } else {
            pen.opening(from, to, 3.0);
        }
    }
}

/// A button that is pressed.
pub(super) fn button(pen: Pen<'_>, is_worked: bool) {
    pen.body((6.0, 20.0), (66.0, 80.0), 8.0);
    pen.ring((36.0, 50.0), 21.0);
    pen.knob((36.0, 50.0), 14.5);
    if is_worked {
        pen.arrow((98.0, 50.0), (56.0, 50.0));
    }
}

/// A plug, pulled from its outlet.
pub(super) fn plug(pen: Pen<'_>) {
    pen.body((3.0, 18.0), (20.0, 82.0), 4.0);
    for y in [43.0, 57.0] {
        pen.bar((34.0, y), (48.0, y), 4.4);
    }
    pen.grip((47.0, 33.0), (66.0, 67.0), 4.0);
    pen.shape(&[(64.0, 38.0), (76.0, 45.0), (76.0, 55.0), (64.0, 62.0)]);
    let cord = super::pen::bend((76.0, 72.0), (22.0, 22.0), 1.0, -90.0, 20.0);
    pen.rod_smooth(&cord, 5.0, pen.ink());
    pen.arrow((40.0, 15.0), (86.0, 15.0));
}

/// A wall switch.
pub(super) fn wall_switch(pen: Pen<'_>, is_worked: bool) {
    let shift = if is_worked { -10.0 } else { 0.0 };
    let x = |x: f32| x + shift;
    pen.body((x(24.0), 6.0), (x(76.0), 94.0), 7.0);
    pen.opening((x(41.0), 32.0), (x(59.0), 68.0), 3.0);
    let grip = |y: f32| -> (Point, Point) { ((x(43.5), y - 8.0), (x(56.5), y + 8.0)) };
    let (on, off) = (grip(41.0), grip(59.0));
    if is_worked {
        pen.grip_to(off.0, off.1, 2.0);
    }
    pen.grip(on.0, on.1, 2.0);
    for y in [17.0, 83.0] {
        pen.ring((x(50.0), y), 2.6);
    }
    if is_worked {
        pen.arrow((86.0, 28.0), (86.0, 74.0));
    }
}

/// A thermostat, with the sign for off on it when it is to be switched off: IEC 60417, symbol 5009.
pub(super) fn thermostat(pen: Pen<'_>, is_worked: bool) {
    pen.body((10.0, 10.0), (90.0, 90.0), 14.0);
    if is_worked {
        pen.bow((50.0, 53.0), 21.0, -52.0, 232.0, 6.0);
        pen.bar((50.0, 25.0), (50.0, 48.0), 6.0);
        return;
    }
    pen.arc((50.0, 54.0), 28.0, 140.0, 400.0, 4.0);
    pen.bar((50.0, 54.0), (64.0, 34.0), 5.0);
    pen.knob((50.0, 54.0), 5.5);
}

/// A panel: its door, and the rows of its breakers.
pub(super) fn panel(pen: Pen<'_>) {
    pen.body((18.0, 4.0), (82.0, 96.0), 5.0);
    pen.opening((28.0, 14.0), (72.0, 86.0), 3.0);
    for row in [24.0, 37.0, 50.0, 63.0, 76.0] {
        for x in [39.0, 61.0] {
            pen.bar((x - 5.0, row), (x + 5.0, row), 6.0);
        }
    }
}

/// A light.
pub(super) fn light(pen: Pen<'_>) {
    pen.disc((50.0, 40.0), 30.0);
    pen.bow((50.0, 40.0), 15.0, 180.0, 270.0, 3.4);
    pen.bar((40.0, 78.0), (60.0, 78.0), 6.0);
    pen.bar((43.0, 90.0), (57.0, 90.0), 6.0);
}
