//! What is drawn over a plan between here and the device: the way on foot, and the pipes or wires.
//!
//! The way is solid ink with a head; a line is dashed in the colour of its system, and each system has
//! its own dashes. Both have a white edge, for a plan may be of any colour.

use egui::{Color32, Painter, Pos2, Rect, Shape, Stroke, vec2};
use quarterturn_guidance::Way;
use quarterturn_home::{Home, Level};

use crate::place;
use crate::sheet::Sheet;
use crate::system::System;
use crate::tokens::{EDGE_ON_PLAN, INK_ON_PLAN, PIN_NOW, system};

/// Width of the way, and of its white edge.
const WAY: (f32, f32) = (5.5, 10.5);
/// Width of a line, and of its white edge.
const LINE: (f32, f32) = (4.0, 8.0);
/// Length of the head of the way, and half its width.
const HEAD: (f32, f32) = (15.0, 11.0);
/// Around a pin that the way ends at.
const AROUND: f32 = PIN_NOW * 1.9;
/// Shorter than this, a way says nothing.
const LEAST: f32 = 28.0;

/// A part of the way on the level that is shown.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Stretch<'a> {
    /// In metres, in order.
    pub(crate) points: &'a [(f64, f64)],
    /// Id of the level it comes from by stairs.
    pub(crate) comes_from: Option<&'a str>,
    /// Id of the level it goes on to by stairs.
    pub(crate) goes_on: Option<&'a str>,
}

/// The parts of the way on a level.
pub(crate) fn stretches<'a>(way: &'a Way, level: &Level) -> Vec<Stretch<'a>> {
    let next_to = |n: usize| way.legs.get(n).map(|leg| leg.level.as_str());
    let here = way.legs.iter().enumerate().filter(|(_, leg)| leg.level == level.id);
    here.map(|(n, leg)| Stretch {
        points: &leg.points,
        comes_from: n.checked_sub(1).and_then(next_to),
        goes_on: next_to(n + 1),
    })
    .collect()
}

/// Draws a stretch of the way, up to the pins at `from` and `to`, if there are some.
pub(crate) fn way(
    painter: &Painter,
    sheet: &Sheet,
    stretch: &Stretch<'_>,
    from: Option<Pos2>,
    to: Option<Pos2>,
) {
    let mut path: Vec<Pos2> = stretch.points.iter().map(|&(x, y)| sheet.at(x, y)).collect();
    if let Some(pin) = from {
        path.reverse();
        shorten(&mut path, pin, AROUND);
        path.reverse();
    }
    if let Some(pin) = to {
        shorten(&mut path, pin, AROUND);
    }
    let [.., before, end] = path.as_slice() else { return };
    if length(&path) < LEAST {
        return;
    }
    let direction = (*end - *before).normalized();
    let tip = *end;
    let mut line = path.clone();
    // The line ends within the head.
    shorten(&mut line, tip, HEAD.0 * 0.8);
    let start = line.first().copied();
    for (width, grow, colour) in
        [(WAY.1, (WAY.1 - WAY.0) / 2.0, EDGE_ON_PLAN), (WAY.0, 0.0, INK_ON_PLAN)]
    {
        rod(painter, &line, width, colour);
        let base = tip - direction * HEAD.0;
        let side = direction.rot90() * (HEAD.1 + grow);
        let head = vec![
            tip + direction * grow * 1.6,
            base + side - direction * grow,
            base - side - direction * grow,
        ];
        painter.add(Shape::convex_polygon(head, colour, Stroke::NONE));
    }
    if let (None, Some(start)) = (from, start) {
        painter.circle(start, 8.5, EDGE_ON_PLAN, Stroke::new(4.5, INK_ON_PLAN));
    }
}

/// What a stretch of the way takes up on the screen, in small boxes.
pub(crate) fn footprints(sheet: &Sheet, stretch: &Stretch<'_>) -> Vec<Rect> {
    const SIDE: f32 = 22.0;
    let on_screen: Vec<Pos2> = stretch.points.iter().map(|&(x, y)| sheet.at(x, y)).collect();
    let mut boxes = Vec::new();
    for pair in on_screen.windows(2) {
        let [from, to] = pair else { continue };
        let (long, mut far) = (from.distance(*to), 0.0);
        while far < long {
            let middle = from.lerp(*to, far / long);
            boxes.push(Rect::from_center_size(middle, vec2(SIDE, SIDE)));
            far += SIDE;
        }
    }
    boxes
}

/// A line with round corners and ends.
fn rod(painter: &Painter, path: &[Pos2], width: f32, colour: Color32) {
    for point in path {
        painter.circle_filled(*point, width / 2.0, colour);
    }
    for pair in path.windows(2) {
        if let [from, to] = pair {
            painter.line_segment([*from, *to], Stroke::new(width, colour));
        }
    }
}

fn length(path: &[Pos2]) -> f32 {
    path.windows(2).map(|pair| if let [a, b] = pair { a.distance(*b) } else { 0.0 }).sum()
}

/// Takes off the end of a path what lies within `radius` of `pin`.
fn shorten(path: &mut Vec<Pos2>, pin: Pos2, radius: f32) {
    while let [.., before, end] = path.as_slice() {
        if end.distance(pin) >= radius {
            return;
        }
        let (before, end) = (*before, *end);
        path.pop();
        if before.distance(pin) > radius {
            path.push(leaves(before, end, pin, radius));
            return;
        }
    }
}

/// Where the line from a point outside a circle to one within it meets the circle.
fn leaves(outside: Pos2, within: Pos2, middle: Pos2, radius: f32) -> Pos2 {
    let (mut low, mut high) = (0.0_f32, 1.0_f32);
    for _ in 0..24 {
        let half = (low + high) / 2.0;
        if outside.lerp(within, half).distance(middle) > radius { low = half } else { high = half }
    }
    outside.lerp(within, low)
}

/// A stretch of a line on the level that is shown.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Run {
    pub(crate) system: System,
    /// In metres, in order.
    points: Vec<(f64, f64)>,
    /// True if it goes on to another level at its end.
    leaves_at_end: bool,
    /// True if it comes from another level at its beginning.
    comes_at_start: bool,
}

/// The lines on a level, each cut where it leaves it or where its system changes.
pub(crate) fn runs(
    home: &Home,
    level: &Level,
    lines: &[Vec<String>],
    preferred: Option<System>,
) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for line in lines {
        let mut open: Option<Run> = None;
        for pair in line.windows(2) {
            let [a, b] = pair else { continue };
            let (Some(from), Some(to)) =
                (place::of_component(home, a), place::of_component(home, b))
            else {
                continue;
            };
            let system = system_between(home, a, b).or(preferred).unwrap_or(System::Control);
            let (from_here, to_here) = (from.level == level.id, to.level == level.id);
            if open.as_ref().is_some_and(|run| run.system != system) {
                runs.extend(open.take());
            }
            match (from_here, to_here) {
                (true, true) => {
                    let run = open.get_or_insert_with(|| Run {
                        system,
                        points: vec![(from.x, from.y)],
                        leaves_at_end: false,
                        comes_at_start: false,
                    });
                    run.points.push((to.x, to.y));
                }
                (true, false) => {
                    if let Some(mut run) = open.take() {
                        run.leaves_at_end = true;
                        runs.push(run);
                    }
                }
                (false, true) => {
                    open = Some(Run {
                        system,
                        points: vec![(to.x, to.y)],
                        leaves_at_end: false,
                        comes_at_start: true,
                    });
                }
                (false, false) => runs.extend(open.take()),
            }
        }
        runs.extend(open);
    }
    runs.retain(|run| run.points.len() > 1);
    let mut once: Vec<Run> = Vec::new();
    for run in runs {
        if !once.contains(&run) {
            once.push(run);
        }
    }
    once
}

fn system_between(home: &Home, a: &str, b: &str) -> Option<System> {
    let joins = |from: &str, to: &str| (from == a && to == b) || (from == b && to == a);
    let connection = home.connections.iter().find(|c| joins(&c.from, &c.to))?;
    Some(System::of_net(connection.carries.net()))
}

/// Draws the lines, the edges of all below the dashes of all.
pub(crate) fn lines(painter: &Painter, sheet: &Sheet, runs: &[Run]) {
    let on_screen =
        |run: &Run| -> Vec<Pos2> { run.points.iter().map(|&(x, y)| sheet.at(x, y)).collect() };
    let paths: Vec<Vec<Pos2>> = runs.iter().map(on_screen).collect();
    for path in &paths {
        rod(painter, path, LINE.1, EDGE_ON_PLAN);
    }
    for (run, path) in runs.iter().zip(&paths) {
        dashes(painter, path, run.system);
        let ends = [
            path.first().filter(|_| run.comes_at_start),
            path.last().filter(|_| run.leaves_at_end),
        ];
        for end in ends.into_iter().flatten() {
            // It goes through floor or ceiling here.
            painter.circle(*end, 6.5, EDGE_ON_PLAN, Stroke::new(3.0, ink(run.system)));
        }
    }
}

/// A line in the colour and the dashes of its system.
pub(crate) fn dashes(painter: &Painter, path: &[Pos2], of: System) {
    let (dash, gap) = pattern(of);
    let stroke = Stroke::new(LINE.0, ink(of));
    painter.extend(Shape::dashed_line_with_offset(path, stroke, dash, gap, 0.0));
}

/// Dashes and the gaps after them: water long, drains long and short, power short, gas long and two
/// short, cooling and control dots.
fn pattern(of: System) -> (&'static [f32], &'static [f32]) {
    match of {
        System::Water => (&[14.0], &[6.0]),
        System::Drain => (&[16.0, 4.0], &[5.0, 5.0]),
        System::Power => (&[6.0], &[4.5]),
        System::Gas => (&[14.0, 3.0, 3.0], &[4.0, 4.0, 4.0]),
        System::Cooling => (&[4.0], &[6.0]),
        System::Control => (&[2.5], &[3.5]),
    }
}

/// The colour of a line on white. The yellow of gas cannot be seen there: it is drawn in ink.
pub(crate) fn ink(of: System) -> Color32 {
    match of {
        System::Gas => INK_ON_PLAN,
        other => system(other).fill,
    }
}

/// Stairs, up or down, drawn into `rect`.
pub(crate) fn stairs(painter: &Painter, rect: Rect, ink: Color32, goes_up: bool) {
    let at = |x: f32, y: f32| {
        let x = if goes_up { x } else { 1.0 - x };
        rect.lerp_inside(vec2(x, y))
    };
    let steps = [
        (0.0, 0.95),
        (0.25, 0.95),
        (0.25, 0.7),
        (0.5, 0.7),
        (0.5, 0.45),
        (0.75, 0.45),
        (0.75, 0.2),
        (1.0, 0.2),
    ];
    let steps: Vec<Pos2> = steps.iter().map(|&(x, y)| at(x, y)).collect();
    painter.add(Shape::line(steps, Stroke::new(2.6, ink)));
    let (from, to) = if goes_up { (0.0, 0.42) } else { (0.42, 0.0) };
    let (tail, tip) =
        (at(from, if goes_up { 0.5 } else { 0.05 }), at(to, if goes_up { 0.05 } else { 0.5 }));
    painter.arrow(tail, tip - tail, Stroke::new(2.2, ink));
}

/// A sample of the way, as it is drawn on the plan.
pub(crate) fn way_sample(painter: &Painter, rect: Rect) {
    let (from, to) = (rect.left_center() + vec2(6.0, 0.0), rect.right_center() - vec2(4.0, 0.0));
    rod(painter, &[from, to], WAY.1, EDGE_ON_PLAN);
    rod(painter, &[from, to], WAY.0, INK_ON_PLAN);
}

/// A sample of a line, as it is drawn on the plan.
pub(crate) fn line_sample(painter: &Painter, rect: Rect, of: System) {
    let (from, to) = (rect.left_center() + vec2(6.0, 0.0), rect.right_center() - vec2(4.0, 0.0));
    rod(painter, &[from, to], LINE.1, EDGE_ON_PLAN);
    dashes(painter, &[from, to], of);
}

#[cfg(test)]
mod tests {
    use super::*;
    use egui::pos2;

    #[test]
    fn a_way_stops_short_of_its_pin() {
        let mut path = vec![pos2(0.0, 0.0), pos2(100.0, 0.0), pos2(100.0, 50.0)];
        shorten(&mut path, pos2(100.0, 50.0), 20.0);
        assert_eq!(path.len(), 3);
        assert!((path[2].y - 30.0).abs() < 0.01, "{path:?}");
        // A pin so big that the last corner is within it.
        shorten(&mut path, pos2(100.0, 50.0), 60.0);
        assert_eq!(path.len(), 2);
        assert!((path[1].distance(pos2(100.0, 50.0)) - 60.0).abs() < 0.01);
        // All of it.
        shorten(&mut path, pos2(0.0, 0.0), 900.0);
        assert!(path.len() < 2);
    }

    #[test]
    fn no_two_systems_are_drawn_alike() {
        for (n, one) in System::ALL.iter().enumerate() {
            for other in &System::ALL[n + 1..] {
                assert_ne!(pattern(*one), pattern(*other), "{one:?} {other:?}");
                assert_ne!(ink(*one), ink(*other), "{one:?} {other:?}");
            }
        }
    }

    /// A pipe that leaves the floor between two taps is drawn in two parts.
    #[test]
    fn a_line_is_cut_where_it_leaves_the_floor() {
        let text = r#"Home(format: 1, name: "Hut", levels: [(id: "low", name: "Low"), (id: "up", name: "Up")],
            spaces: [(id: "a", name: "A", level: "low"), (id: "b", name: "B", level: "up")],
            components: [
                (id: "p", kind: Pipe, name: "P", space: "a", at: (0, 0, 0)),
                (id: "q", kind: Pipe, name: "Q", space: "a", at: (5, 0, 0)),
                (id: "r", kind: Pipe, name: "R", space: "b", at: (5, 0, 0)),
                (id: "s", kind: Pipe, name: "S", space: "a", at: (9, 0, 0)),
                (id: "t", kind: Tap, name: "T", space: "a", at: (9, 9, 0)),
            ], connections: [
                (from: "p", to: "q", carries: ColdWater), (from: "q", to: "r", carries: ColdWater),
                (from: "r", to: "s", carries: ColdWater), (from: "s", to: "t", carries: ColdWater),
            ])"#;
        let home = quarterturn_home::open("home.ron", text).home.unwrap();
        let level = home.level("low").unwrap();
        let line: Vec<String> = ["p", "q", "r", "s", "t"].map(str::to_owned).to_vec();
        let found = runs(&home, level, &[line.clone(), line], None);
        assert_eq!(found.len(), 2, "{found:?}");
        assert!(found.iter().all(|run| run.system == System::Water && run.points.len() == 2));
        assert!(found[0].leaves_at_end && !found[0].comes_at_start);
        assert!(found[1].comes_at_start && !found[1].leaves_at_end);
    }
}
