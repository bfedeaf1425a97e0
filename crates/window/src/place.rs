//! Where things are on the plans, and what they are called on the screen.

use quarterturn_guidance::{Catalogue, Spot, fill};
use quarterturn_home::{Component, Home, Space};

/// A point on a level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Place<'a> {
    /// Id of the level.
    pub(crate) level: &'a str,
    /// Metres to the right.
    pub(crate) x: f64,
    /// Metres down the plan.
    pub(crate) y: f64,
}

/// Where a component is drawn: its own place, or the middle of its space.
pub(crate) fn of_component<'a>(home: &'a Home, id: &str) -> Option<Place<'a>> {
    let component = home.component(id)?;
    let level = home.level_of(component)?;
    match component.at {
        Some((x, y, _)) => Some(Place { level: &level.id, x, y }),
        None => of_space(home, component.space.as_deref()?),
    }
}

/// The middle of a space, if its outline is known.
pub(crate) fn of_space<'a>(home: &'a Home, id: &str) -> Option<Place<'a>> {
    let space = home.space(id)?;
    let level = home.level(space.level.as_deref()?)?;
    let (x, y) = middle(&space.outline)?;
    Some(Place { level: &level.id, x, y })
}

/// Where a spot is drawn.
pub(crate) fn of_spot<'a>(home: &'a Home, spot: &Spot) -> Option<Place<'a>> {
    match spot {
        Spot::Component(id) => of_component(home, id),
        Spot::Space(id) => of_space(home, id),
        Spot::Home => None,
        Spot::Connection(from, to) => match (of_component(home, from), of_component(home, to)) {
            (Some(a), Some(b)) if a.level == b.level => {
                Some(Place { level: a.level, x: (a.x + b.x) / 2.0, y: (a.y + b.y) / 2.0 })
            }
            (a, b) => a.or(b),
        },
    }
}

/// Id of the space that a spot is in.
pub(crate) fn space_of_spot<'a>(home: &'a Home, spot: &Spot) -> Option<&'a Space> {
    let id = match spot {
        Spot::Home => return None,
        Spot::Space(id) => id.as_str(),
        Spot::Component(id) => home.component(id)?.space.as_deref()?,
        Spot::Connection(from, to) => [from, to]
            .into_iter()
            .find_map(|id| home.component(id).and_then(|c| c.space.as_deref()))?,
    };
    home.space(id)
}

/// What a spot is called.
pub(crate) fn name_of_spot(home: &Home, spot: &Spot, words: &Catalogue) -> String {
    match spot {
        Spot::Home => words.text("window-spot-home"),
        Spot::Component(id) => name(home, id).to_owned(),
        Spot::Space(id) => {
            let space = home.space(id).map_or(id.as_str(), |s| s.name.as_str());
            words.fill("window-spot-space", &[fill("space", space)])
        }
        Spot::Connection(from, to) => words.fill(
            "window-spot-connection",
            &[fill("from", name(home, from)), fill("to", name(home, to))],
        ),
    }
}

/// What a component is called; its id if the home has no such component.
pub(crate) fn name<'a>(home: &'a Home, id: &'a str) -> &'a str {
    home.component(id).map_or(id, |c| c.name.as_str())
}

/// Room and floor of a component, as one line.
pub(crate) fn whereabouts(home: &Home, component: &Component, words: &Catalogue) -> String {
    let space = component.space.as_deref().and_then(|id| home.space(id));
    match (space, home.level_of(component)) {
        (Some(space), Some(level)) => words
            .fill("window-whereabouts", &[fill("space", &space.name), fill("level", &level.name)]),
        (Some(space), None) => space.name.clone(),
        (None, _) => words.text("window-whereabouts-unknown"),
    }
}

/// True if the point lies within the outline.
pub(crate) fn is_within(outline: &[(f64, f64)], x: f64, y: f64) -> bool {
    let edges = outline.iter().zip(outline.iter().cycle().skip(1));
    edges.filter(|(a, b)| (a.1 > y) != (b.1 > y) && x < crossing(**a, **b, y)).count() % 2 == 1
}

/// Where the edge from `a` to `b` meets the horizontal through `y`.
fn crossing(a: (f64, f64), b: (f64, f64), y: f64) -> f64 {
    a.0 + (b.0 - a.0) * (y - a.1) / (b.1 - a.1)
}

/// A point well within an outline: its centre of area, or, for a shape that bends round it, the
/// middle of the longest stretch on the line through that height.
pub(crate) fn middle(outline: &[(f64, f64)]) -> Option<(f64, f64)> {
    let first = *outline.first()?;
    let edges = || outline.iter().zip(outline.iter().cycle().skip(1));
    let twice_area: f64 = edges().map(|(a, b)| a.0 * b.1 - b.0 * a.1).sum();
    if twice_area.abs() < 1e-9 {
        return Some(first);
    }
    let sum = edges().fold((0.0, 0.0), |sum, (a, b)| {
        let part = a.0 * b.1 - b.0 * a.1;
        (sum.0 + (a.0 + b.0) * part, sum.1 + (a.1 + b.1) * part)
    });
    let centre = (sum.0 / (3.0 * twice_area), sum.1 / (3.0 * twice_area));
    if is_within(outline, centre.0, centre.1) {
        return Some(centre);
    }
    let mut crossings: Vec<f64> = edges()
        .filter(|(a, b)| (a.1 > centre.1) != (b.1 > centre.1))
        .map(|(a, b)| crossing(*a, *b, centre.1))
        .collect();
    crossings.sort_by(f64::total_cmp);
    crossings
        .chunks_exact(2)
        .filter_map(|pair| match pair {
            [left, right] => Some((right - left, (left + right) / 2.0)),
            _ => None,
        })
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, x)| (x, centre.1))
        .or(Some(first))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_middle_of_a_room_is_in_the_room() {
        let square = [(0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (0.0, 2.0)];
        assert_eq!(middle(&square), Some((2.0, 1.0)));
        // A U: its centre of area lies in the gap.
        let bent = [
            (0.0, 0.0),
            (1.0, 0.0),
            (1.0, 9.0),
            (9.0, 9.0),
            (9.0, 0.0),
            (10.0, 0.0),
            (10.0, 10.0),
            (0.0, 10.0),
        ];
        let (x, y) = middle(&bent).unwrap();
        assert!(is_within(&bent, x, y), "{x} {y}");
    }

    #[test]
    fn a_point_in_the_notch_of_an_l_is_outside() {
        let l = [(0.0, 0.0), (2.0, 0.0), (2.0, 1.0), (1.0, 1.0), (1.0, 2.0), (0.0, 2.0)];
        assert!(is_within(&l, 0.5, 1.5));
        assert!(!is_within(&l, 1.5, 1.5));
    }

    #[test]
    fn an_outline_without_area_still_has_a_middle() {
        assert_eq!(middle(&[]), None);
        assert_eq!(middle(&[(3.0, 4.0)]), Some((3.0, 4.0)));
        assert_eq!(middle(&[(3.0, 4.0), (5.0, 6.0)]), Some((3.0, 4.0)));
    }
}
