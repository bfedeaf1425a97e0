//! A home with left and right exchanged, as the next house of a row may be built.

use crate::Home;

/// The home mirrored left for right, about the middle of what is drawn of it, so that it lies where it
/// lay.
///
/// Every position follows: corners of spaces, places of components and passages, and where each plan
/// lies; its picture is to be drawn mirrored ([`Plan::mirrored`](crate::Plan::mirrored)), with the
/// writing on it. North follows too, as an arrow drawn on the plan would. Corners keep their order round the space, so that an outline that ran one way runs the
/// other way now; nothing depends on that. Names of rooms and things stay, also where they say left or
/// right: only a person can tell which of them are wrong now.
///
/// Mirrored twice it is as it was, but for the last digit of a number.
#[must_use]
pub fn mirrored(home: &Home) -> Home {
    let mut copy = home.clone();
    copy.north_deg = home.north_deg.map(|north| (360.0 - north) % 360.0);
    let Some((left, right)) = extent(home) else {
        turn_pictures(&mut copy, 0.0);
        return copy;
    };
    // x and its mirror image add up to this.
    let both = left + right;
    let turned = |x: f64| both - x;
    for (x, _) in copy.spaces.iter_mut().flat_map(|space| &mut space.outline) {
        *x = turned(*x);
    }
    for (x, _, _) in copy.components.iter_mut().filter_map(|component| component.at.as_mut()) {
        *x = turned(*x);
    }
    for (x, _) in copy.passages.iter_mut().flat_map(|p| [&mut p.at, &mut p.to_at]).flatten() {
        *x = turned(*x);
    }
    turn_pictures(&mut copy, both);
    copy
}

fn turn_pictures(home: &mut Home, both: f64) {
    for plan in home.levels.iter_mut().filter_map(|level| level.plan.as_mut()) {
        plan.left_m = both - (plan.left_m + plan.width_m);
        plan.mirrored = !plan.mirrored;
    }
}

/// The leftmost and the rightmost x of what is drawn: of the plans, the outlines, and whatever has a
/// place; `None` if nothing has.
fn extent(home: &Home) -> Option<(f64, f64)> {
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref());
    let plans = plans.flat_map(|plan| [plan.left_m, plan.left_m + plan.width_m]);
    let corners = home.spaces.iter().flat_map(|space| space.outline.iter().map(|(x, _)| *x));
    let things = home.components.iter().filter_map(|component| component.at.map(|(x, _, _)| x));
    let passages = home.passages.iter().flat_map(|passage| [passage.at, passage.to_at]).flatten();
    let all = plans.chain(corners).chain(things).chain(passages.map(|(x, _)| x));
    all.fold(None, |extent, x| match extent {
        None => Some((x, x)),
        Some((left, right)) => Some((left.min(x), right.max(x))),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Component, Kind, Level, Passage, Plan, Space};

    fn home() -> Home {
        let plan = |left_m: f64, width_m: f64| Plan {
            picture: "plans/ground.png".to_owned(),
            left_m,
            top_m: -1.0,
            width_m,
            mirrored: false,
        };
        let level = |id: &str, plan| Level {
            id: id.to_owned(),
            name: id.to_owned(),
            elevation_m: 0.0,
            plan: Some(plan),
        };
        let mut tap = Component::new("tap", Kind::Tap, "Left tap");
        tap.at = Some((1.0, 2.0, 0.5));
        let passage = Passage { at: Some((4.0, 1.0)), ..Passage::new("hall", "hall") };
        let hall = Space {
            id: "hall".to_owned(),
            name: "Hall".to_owned(),
            level: Some("ground".to_owned()),
            outline: vec![(0.0, 0.0), (3.0, 0.0), (3.0, 4.0)],
            outdoors: false,
        };
        Home {
            levels: vec![level("ground", plan(-1.0, 11.0)), level("upper", plan(0.0, 8.0))],
            spaces: vec![hall],
            components: vec![tap],
            passages: vec![passage],
            ..Home::default()
        }
    }

    /// The extent is -1 to 10, so that x becomes 9 - x.
    #[test]
    fn every_position_follows_and_names_stay() {
        let home = home();
        let other = mirrored(&home);
        assert_eq!(other.components[0].at, Some((8.0, 2.0, 0.5)));
        assert_eq!(other.components[0].name, "Left tap");
        assert_eq!(other.spaces[0].outline, [(9.0, 0.0), (6.0, 0.0), (6.0, 4.0)]);
        assert_eq!(other.passages[0].at, Some((5.0, 1.0)));
        let plans: Vec<_> = other.levels.iter().filter_map(|l| l.plan.as_ref()).collect();
        // The ground floor's plan is as wide as all, and stays; the upper one ran from 0 to 8.
        assert!((plans[0].left_m + 1.0).abs() < 1e-9 && (plans[1].left_m - 1.0).abs() < 1e-9);
        assert!(plans.iter().all(|plan| plan.mirrored));
        assert_eq!(mirrored(&other), home);
    }

    /// An arrow 30 degrees to the right of up leans as far to the left; up stays up, and down stays down.
    #[test]
    fn north_is_mirrored_with_the_plan() {
        for (north, other) in [(0.0, 0.0), (30.0, 330.0), (90.0, 270.0), (180.0, 180.0)] {
            let home = Home { north_deg: Some(north), ..home() };
            assert_eq!(mirrored(&home).north_deg, Some(other));
            assert_eq!(mirrored(&mirrored(&home)), home);
        }
        assert_eq!(mirrored(&home()).north_deg, None);
        let undrawn = Home { north_deg: Some(1e-20), ..Home::default() };
        assert_eq!(mirrored(&undrawn).north_deg, Some(0.0));
    }

    #[test]
    fn a_home_that_was_never_drawn_stays_as_it_is() {
        let home = Home { name: "Hut".to_owned(), ..Home::default() };
        assert_eq!(mirrored(&home), home);
    }
}
