//! On which side of the boundaries something lies: the street's, the house's, or between two.
//!
//! ```text
//! street main ── curb stop ── [meter] ── riser ── [flat's meter] ── kitchen tap
//!      street side           boundary   between      boundary       house side
//! ```

use std::collections::VecDeque;

use quarterturn_home::{Home, Kind, Net};
use quarterturn_network::Places;
use serde::Serialize;

/// A side of the boundaries that the map marks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Side {
    /// Between the utility's main and the first boundary.
    Street,
    /// Behind one boundary, with another between it and some of the house.
    Between,
    /// The boundary itself.
    Boundary,
    /// Behind the last boundary, or fed by nothing but the house's own source.
    House,
    /// The map marks no boundary in this net, or nothing that leads here.
    Unmarked,
}

/// The sides of one net.
#[derive(Debug)]
pub(crate) struct Sides {
    /// Boundaries on the way from the street to each component, and the last of them; `None` where
    /// the net does not lead from the street.
    reached: Vec<Option<(usize, Option<usize>)>>,
    boundary: Vec<bool>,
    neighbors: Vec<Vec<usize>>,
    /// The net comes from a utility, or ends in one.
    public: bool,
    /// The net has a boundary.
    marked: bool,
}

impl Sides {
    /// Reads the sides of `net` off a home. Cost: O(components + connections).
    pub(crate) fn of(home: &Home, places: &Places<'_>, net: Net) -> Self {
        let mut neighbors = vec![Vec::new(); home.components.len()];
        for link in home.connections.iter().filter(|link| link.carries.net() == net) {
            if let (Some(a), Some(b)) = (places.of(&link.from), places.of(&link.to)) {
                neighbors[a].push(b);
                neighbors[b].push(a);
            }
        }
        let boundary: Vec<bool> = home.components.iter().map(|c| c.boundary).collect();
        let is_street = |place: usize| utility_end(net, home.components[place].kind);
        let street: Vec<usize> = (0..neighbors.len())
            .filter(|&place| is_street(place) && !neighbors[place].is_empty())
            .collect();
        let mut reached = vec![None; neighbors.len()];
        // Breadth first, with the components before a boundary ahead of those behind it.
        let mut queue: VecDeque<(usize, usize, Option<usize>)> =
            street.iter().map(|&place| (place, 0, None)).collect();
        while let Some((place, crossed, last)) = queue.pop_front() {
            if reached[place].is_some() {
                continue;
            }
            reached[place] = Some((crossed, last));
            for &next in &neighbors[place] {
                if boundary[place] {
                    queue.push_back((next, crossed + 1, Some(place)));
                } else {
                    queue.push_front((next, crossed, last));
                }
            }
        }
        let marked = (0..boundary.len()).any(|place| boundary[place] && reached[place].is_some());
        Self { reached, boundary, neighbors, public: !street.is_empty(), marked }
    }

    /// The side of a component, and the boundary that tells: the last before it, or on the street
    /// side the first that comes.
    pub(crate) fn of_component(&self, place: usize) -> (Side, Option<usize>) {
        if self.boundary[place] {
            return (Side::Boundary, Some(place));
        }
        if !self.public && !self.neighbors[place].is_empty() {
            return (Side::House, None);
        }
        let Some((crossed, last)) = self.reached[place].filter(|_| self.marked) else {
            return (Side::Unmarked, None);
        };
        let further = self.further(place, crossed);
        match (crossed, further) {
            (0, Some(first)) => (Side::Street, Some(first)),
            // A branch of the street's side that no boundary parts from it.
            (0, None) => (Side::Unmarked, None),
            (_, Some(_)) => (Side::Between, last),
            (_, None) => (Side::House, last),
        }
    }

    /// How many boundaries lie between the street and a component.
    pub(crate) fn crossed(&self, place: usize) -> Option<usize> {
        self.reached[place].map(|(crossed, _)| crossed)
    }

    /// A boundary with something behind it that can be got to from `place` without crossing one.
    fn further(&self, place: usize, crossed: usize) -> Option<usize> {
        let mut seen = vec![false; self.neighbors.len()];
        let mut stack = vec![place];
        let mut found: Option<usize> = None;
        while let Some(at) = stack.pop() {
            if std::mem::replace(&mut seen[at], true) {
                continue;
            }
            if self.boundary[at] {
                let behind = |&next: &usize| self.crossed(next) == Some(crossed + 1);
                if self.crossed(at) == Some(crossed) && self.neighbors[at].iter().any(behind) {
                    found = Some(found.map_or(at, |first| first.min(at)));
                }
            } else {
                stack.extend(&self.neighbors[at]);
            }
        }
        found
    }
}

/// True for what belongs to a utility at the street's end of a net.
fn utility_end(net: Net, kind: Kind) -> bool {
    match net {
        Net::Water => kind == Kind::WaterMain,
        Net::Power => kind == Kind::ElectricityService,
        Net::Gas => kind == Kind::GasMeter,
        Net::Waste | Net::Vent | Net::Condensate => kind == Kind::SewerMain,
        Net::Signal => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A home of water drawn as `a-b b-c`; ids in capitals are boundaries, `street` is the main.
    fn sides(drawn: &str) -> impl Fn(&str) -> (Side, Option<String>) {
        let mut home = Home::default();
        for piece in drawn.split_whitespace() {
            let (from, to) = piece.split_once('-').unwrap();
            for id in [from, to] {
                let kind = match id {
                    "street" => Kind::WaterMain,
                    "well" => Kind::Well,
                    _ => Kind::Pipe,
                };
                if home.component(id).is_none() {
                    let mut new = quarterturn_home::Component::new(id, kind, id);
                    new.boundary = id.chars().all(char::is_uppercase);
                    home.components.push(new);
                }
            }
            let medium = quarterturn_home::Medium::ColdWater;
            home.connections.push(quarterturn_home::Connection::new(from, to, medium));
        }
        move |id| {
            let places = Places::of_home(&home);
            let sides = Sides::of(&home, &places, Net::Water);
            let (side, at) = sides.of_component(places.of(id).unwrap());
            (side, at.map(|place| home.components[place].id.clone()))
        }
    }

    fn told(side: Side, at: &str) -> (Side, Option<String>) {
        (side, Some(at.to_owned()))
    }

    #[test]
    fn a_meter_parts_the_street_from_the_house() {
        let side = sides("street-curb curb-M M-main main-tap main-bibb");
        assert_eq!(side("street"), told(Side::Street, "M"));
        assert_eq!(side("curb"), told(Side::Street, "M"));
        assert_eq!(side("M"), told(Side::Boundary, "M"));
        assert_eq!(side("main"), told(Side::House, "M"));
        assert_eq!(side("bibb"), told(Side::House, "M"));
    }

    #[test]
    fn between_two_meters_lies_what_all_share() {
        let side = sides("street-M M-riser riser-N N-tap riser-O O-sink");
        assert_eq!(side("riser"), told(Side::Between, "M"));
        assert_eq!(side("tap"), told(Side::House, "N"));
        assert_eq!(side("sink"), told(Side::House, "O"));
    }

    #[test]
    fn a_loop_past_the_boundary_does_not_hide_it() {
        let side = sides("street-M M-main main-a a-b b-main a-tap");
        assert_eq!(side("tap"), told(Side::House, "M"));
        // Two meters side by side, joined behind.
        let side = sides("street-M street-N M-main N-main main-tap");
        assert_eq!(side("main").0, Side::House);
    }

    #[test]
    fn what_the_map_does_not_mark_is_not_guessed() {
        let side = sides("street-main main-tap alone-other");
        assert_eq!(side("tap"), (Side::Unmarked, None));
        assert_eq!(side("alone"), (Side::Unmarked, None));
        // The house's own well: nobody else's side there.
        let side = sides("well-tank tank-tap");
        assert_eq!(side("tap"), (Side::House, None));
    }
}
