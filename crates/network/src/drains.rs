//! Where a drain can be blocked, where it comes out next, what relieves it.

use std::cmp::Ordering;

use crate::{Node, as_node};

/// A drain system: waste runs along the arcs, down to the outfalls.
///
/// Heights are in metres above any one zero, lengths in metres.
#[derive(Debug, Clone, Default)]
pub struct Drain {
    /// Each piece: from, to and length.
    pub pieces: Vec<Piece>,
    /// What stands at each node.
    pub nodes: Vec<Place>,
}

/// A piece of drain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    /// Upper end.
    pub from: Node,
    /// Lower end.
    pub to: Node,
    /// Length, in metres.
    pub length_m: f64,
    /// How likely it is to be the blocked one, against the others.
    pub weight: f64,
}

/// What stands at a node of a drain.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Place {
    /// Drains end here.
    pub outfall: bool,
    /// Height of the rim that waste can come out over, for an open fixture or floor drain.
    pub rim_m: Option<f64>,
    /// A capped opening.
    pub cap: Option<Cap>,
    /// Height of the pipe here, where known: waste must rise so far to pass.
    pub crown_m: Option<f64>,
    /// Nothing comes back up through it.
    pub stops_backflow: bool,
    /// It has water of its own to send down.
    pub runs: bool,
}

/// The cap of a cleanout.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cap {
    /// Height of the cap, if known.
    pub height_m: Option<f64>,
    /// It opens outdoors; `None` if the map does not tell.
    pub outdoors: Option<bool>,
}

/// A piece that may be blocked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suspected {
    /// Its place in [`Drain::pieces`].
    pub piece: usize,
    /// Its share of the blame, from 0 to 1.
    pub share: f64,
}

/// A cleanout to rod from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rodding {
    /// The cleanout.
    pub from: Node,
    /// Share of the blame that lies within reach.
    pub share: f64,
    /// Metres to the blockage, on average.
    pub metres: f64,
    /// True if one rods up, against the flow.
    pub against_flow: bool,
}

impl Drain {
    /// The pieces of which one alone explains what was seen, most likely first, ties by place.
    ///
    /// A piece is suspected if without it none of `all_of` reaches an outfall, at least one of
    /// `any_of` doesn't (if there are any), and all of `clear` still do. Time: for each piece on one
    /// way down, one pass over the drain.
    ///
    /// ```text
    ///   shower ──┐
    ///            ├── a ──┬── street        shower and sink back up, the floor drain is clear:
    ///   sink  ───┘       │                 it is a; or the way from the meeting point to a
    ///   floor drain ─────┘
    /// ```
    #[must_use]
    pub fn suspected(&self, all_of: &[Node], any_of: &[Node], clear: &[Node]) -> Vec<Suspected> {
        let Some(&start) = all_of.first().or(any_of.first()) else { return Vec::new() };
        let mut on_ways: Vec<usize> = if all_of.is_empty() {
            any_of.iter().flat_map(|&node| self.way_down(node)).collect()
        } else {
            self.way_down(start)
        };
        on_ways.sort_unstable();
        on_ways.dedup();
        let blocked = |node: Node, piece: usize| !self.drains(node, Some(piece));
        let mut found: Vec<Suspected> = on_ways
            .into_iter()
            .filter(|&piece| {
                all_of.iter().all(|&node| blocked(node, piece))
                    && (any_of.is_empty() || any_of.iter().any(|&node| blocked(node, piece)))
                    && !clear.iter().any(|&node| blocked(node, piece))
            })
            .map(|piece| Suspected { piece, share: self.pieces[piece].weight })
            .collect();
        let total: f64 = found.iter().map(|s| s.share).sum();
        for suspect in &mut found {
            suspect.share /= total;
        }
        found.sort_by(|a, b| b.share.total_cmp(&a.share).then(a.piece.cmp(&b.piece)));
        found
    }

    /// True if something that enters at `node` reaches an outfall when `blocked` is blocked.
    #[must_use]
    pub fn drains(&self, node: Node, blocked: Option<usize>) -> bool {
        self.walk_down(node, blocked).1
    }

    /// Marks what drains into `nodes`, themselves included.
    #[must_use]
    pub fn above(&self, nodes: &[Node]) -> Vec<bool> {
        let mut seen = vec![false; self.nodes.len()];
        let mut stack = nodes.to_vec();
        for &node in nodes {
            seen[node as usize] = true;
        }
        while let Some(node) = stack.pop() {
            for piece in self.pieces.iter().filter(|piece| piece.to == node) {
                if !std::mem::replace(&mut seen[piece.from as usize], true) {
                    stack.push(piece.from);
                }
            }
        }
        seen
    }

    /// The openings that waste comes out of when a piece is blocked, lowest spill level first: node
    /// and level. Ties by node.
    ///
    /// Everything above the blockage fills. A flap stops what comes back, but if something runs
    /// above the flap, its own water is trapped there and rises too. An opening spills at the
    /// highest point that the waste must rise to on the way to it. `runs` tells what may be running.
    #[must_use]
    pub fn emerges(&self, blocked: usize, runs: impl Fn(Node) -> bool) -> Vec<(Node, f64)> {
        self.openings(&self.spill_levels(blocked, true, &runs))
    }

    /// The openings that waste comes out of when it rises to these levels, lowest first.
    fn openings(&self, levels: &[Option<f64>]) -> Vec<(Node, f64)> {
        let mut openings: Vec<(Node, f64)> = numbered(&self.nodes)
            .filter_map(|(node, place)| {
                let rim = place.rim_m?;
                let level = levels[node as usize]?;
                Some((node, rim.max(level)))
            })
            .collect();
        openings.sort_by(|a, b| a.1.total_cmp(&b.1).then(a.0.cmp(&b.0)));
        openings
    }

    /// The cleanout whose cap relieves most of the suspected blockages, and the share it relieves.
    ///
    /// It must lie above the blockage with no flap between, its cap lower than every opening that
    /// waste would come out of, and not indoors: there sewage is no relief. Ties: known to be
    /// outdoors, then the lower cap, then the smaller number.
    ///
    /// The house's own water is taken as stopped, so that what lies behind a flap stays dry, unless
    /// one of `rising`, where waste was seen, lies there.
    #[must_use]
    pub fn relief(&self, suspected: &[Suspected], rising: &[Node]) -> Option<(Node, f64)> {
        let mut share = vec![0.0; self.nodes.len()];
        for suspect in suspected {
            let mut levels = self.spill_levels(suspect.piece, false, &|_| true);
            if rising.iter().any(|&node| levels[node as usize].is_none()) {
                levels = self.spill_levels(suspect.piece, true, &|_| true);
            }
            let lowest = self.openings(&levels).first().map(|&(_, level)| level);
            let Some(lowest) = lowest else { continue };
            for (node, place) in numbered(&self.nodes) {
                let cap = place.cap.filter(|cap| cap.outdoors != Some(false));
                if let (Some(height), Some(level)) =
                    (cap.and_then(|cap| cap.height_m), levels[node as usize])
                    && height.max(level) < lowest
                {
                    share[node as usize] += suspect.share;
                }
            }
        }
        let cap = |node: Node| self.nodes[node as usize].cap;
        let better = |a: &Node, b: &Node| -> Ordering {
            let of = |node: Node| share[node as usize];
            let indoors = |node: Node| cap(node).and_then(|c| c.outdoors) != Some(true);
            let height = |node: Node| cap(node).and_then(|c| c.height_m).unwrap_or(f64::MAX);
            // Shares are sums of rounded numbers: what differs by less than this is equal.
            let by_share = if (of(*a) - of(*b)).abs() < 1e-9 {
                Ordering::Equal
            } else {
                of(*b).total_cmp(&of(*a))
            };
            by_share
                .then(indoors(*a).cmp(&indoors(*b)))
                .then(height(*a).total_cmp(&height(*b)))
                .then(a.cmp(b))
        };
        numbered(&self.nodes)
            .map(|(node, _)| node)
            .filter(|&node| share[node as usize] > 0.0)
            .min_by(better)
            .map(|node| (node, share[node as usize]))
    }

    /// The cleanout from which most of the suspected blockages can be rodded, and of those the
    /// nearest, with a cable of `cable_m`. With the flow where that reaches anything at all; against
    /// it only if not, and then only as far as no other drain joins, for a cable can't be steered.
    /// Never through a flap.
    #[must_use]
    pub fn rodding(&self, suspected: &[Suspected], cable_m: f64) -> Option<Rodding> {
        let best = |against_flow: bool| {
            numbered(&self.nodes)
                .filter(|(_, place)| place.cap.is_some())
                .filter_map(|(node, _)| self.rod_from(node, suspected, cable_m, against_flow))
                .min_by(|a, b| {
                    let by_share = if (a.share - b.share).abs() < 1e-9 {
                        Ordering::Equal
                    } else {
                        b.share.total_cmp(&a.share)
                    };
                    by_share.then(a.metres.total_cmp(&b.metres)).then(a.from.cmp(&b.from))
                })
        };
        best(false).or_else(|| best(true))
    }

    fn rod_from(
        &self,
        from: Node,
        suspected: &[Suspected],
        cable_m: f64,
        against_flow: bool,
    ) -> Option<Rodding> {
        let distances = self.cable_distances(from, against_flow);
        let (mut share, mut sum) = (0.0, 0.0);
        for suspect in suspected {
            let piece = &self.pieces[suspect.piece];
            let near = if against_flow { piece.to } else { piece.from };
            let past_flap = near != from && self.nodes[near as usize].stops_backflow;
            let may_enter = !past_flap && (!against_flow || self.joining(piece.to) == 1);
            if let Some(distance) = distances[near as usize]
                && distance <= cable_m
                && may_enter
            {
                share += suspect.share;
                sum += suspect.share * distance;
            }
        }
        (share > 0.0).then(|| Rodding { from, share, metres: sum / share, against_flow })
    }

    /// Metres of cable from a node to each other, where the cable gets there.
    fn cable_distances(&self, from: Node, against_flow: bool) -> Vec<Option<f64>> {
        let mut distance: Vec<Option<f64>> = vec![None; self.nodes.len()];
        distance[from as usize] = Some(0.0);
        let mut stack = vec![from];
        while let Some(node) = stack.pop() {
            let here = distance[node as usize].unwrap_or(0.0);
            if node != from && self.nodes[node as usize].stops_backflow {
                continue;
            }
            if against_flow && self.joining(node) != 1 {
                continue;
            }
            for piece in &self.pieces {
                let (near, far) =
                    if against_flow { (piece.to, piece.from) } else { (piece.from, piece.to) };
                if near == node && distance[far as usize].is_none_or(|d| d > here + piece.length_m)
                {
                    distance[far as usize] = Some(here + piece.length_m);
                    stack.push(far);
                }
            }
        }
        distance
    }

    /// How many drains join at a node.
    fn joining(&self, node: Node) -> usize {
        self.pieces.iter().filter(|piece| piece.to == node).count()
    }

    /// The pieces on one way from `node` down to an outfall; as far as it goes if there is none.
    fn way_down(&self, node: Node) -> Vec<usize> {
        self.walk_down(node, None).0
    }

    fn walk_down(&self, start: Node, blocked: Option<usize>) -> (Vec<usize>, bool) {
        let ends_here = |node: Node| {
            self.nodes[node as usize].outfall || !self.pieces.iter().any(|piece| piece.from == node)
        };
        let mut came_by: Vec<Option<usize>> = vec![None; self.nodes.len()];
        let mut seen = vec![false; self.nodes.len()];
        seen[start as usize] = true;
        let mut stack = vec![start];
        while let Some(node) = stack.pop() {
            if ends_here(node) {
                let mut way = Vec::new();
                let mut at = node;
                while let Some(piece) = came_by[at as usize] {
                    way.push(piece);
                    at = self.pieces[piece].from;
                }
                return (way, true);
            }
            for (index, piece) in self.pieces.iter().enumerate() {
                let open = piece.from == node && Some(index) != blocked;
                if open && !std::mem::replace(&mut seen[piece.to as usize], true) {
                    came_by[piece.to as usize] = Some(index);
                    stack.push(piece.to);
                }
            }
        }
        (Vec::new(), false)
    }

    /// For each node above a blockage, how high waste must rise to get there; `None` elsewhere.
    ///
    /// Waste that can still run down another way to an outfall does not rise. Minimax search.
    fn spill_levels(
        &self,
        blocked: usize,
        behind_flaps: bool,
        runs: &impl Fn(Node) -> bool,
    ) -> Vec<Option<f64>> {
        let mut level: Vec<Option<f64>> = vec![None; self.nodes.len()];
        let bottom = self.pieces[blocked].from;
        let crown = |node: Node| self.nodes[node as usize].crown_m.unwrap_or(f64::MIN);
        level[bottom as usize] = Some(crown(bottom));
        let mut stack = vec![bottom];
        while let Some(node) = stack.pop() {
            let here = level[node as usize].unwrap_or(f64::MIN);
            let passes = !self.nodes[node as usize].stops_backflow
                || (behind_flaps && self.runs_above(node, runs));
            if !passes {
                continue;
            }
            for piece in &self.pieces {
                if piece.to != node || self.drains(piece.from, Some(blocked)) {
                    continue;
                }
                let rise = here.max(crown(piece.from));
                if level[piece.from as usize].is_none_or(|known| rise < known) {
                    level[piece.from as usize] = Some(rise);
                    stack.push(piece.from);
                }
            }
        }
        level
    }

    /// True if something that may be running drains into `node`.
    fn runs_above(&self, node: Node, runs: &impl Fn(Node) -> bool) -> bool {
        let above = self.above(&[node]);
        numbered(&self.nodes).any(|(at, place)| above[at as usize] && place.runs && runs(at))
    }
}

fn numbered(places: &[Place]) -> impl Iterator<Item = (Node, &Place)> {
    places.iter().enumerate().map(|(index, place)| (as_node(index), place))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A drain from `from>to` words; all pieces 1 m long and equally suspect.
    fn drain(text: &str) -> (Drain, Vec<String>) {
        let mut names: Vec<String> = Vec::new();
        let mut built = Drain::default();
        for word in text.split_whitespace() {
            let mut before: Option<Node> = None;
            for name in word.split('>') {
                let node = as_node(names.iter().position(|n| n == name).unwrap_or_else(|| {
                    names.push(name.to_owned());
                    built.nodes.push(Place { outfall: name == "street", ..Place::default() });
                    names.len() - 1
                }));
                if let Some(from) = before {
                    built.pieces.push(Piece { from, to: node, length_m: 1.0, weight: 1.0 });
                }
                before = Some(node);
            }
        }
        (built, names)
    }

    fn node(names: &[String], name: &str) -> Node {
        as_node(names.iter().position(|n| n == name).unwrap())
    }

    fn pieces(built: &Drain, names: &[String], found: &[Suspected]) -> Vec<String> {
        let name = |n: Node| names[n as usize].clone();
        let mut list: Vec<String> = found
            .iter()
            .map(|s| {
                let piece = built.pieces[s.piece];
                format!("{}>{}", name(piece.from), name(piece.to))
            })
            .collect();
        list.sort();
        list
    }

    #[test]
    fn blocked_below_where_all_that_back_up_meet_and_not_below_what_drains() {
        let (d, n) = drain("shower>a sink>a>b floor>b>street");
        let found = d.suspected(&[node(&n, "shower"), node(&n, "sink")], &[], &[node(&n, "floor")]);
        assert_eq!(pieces(&d, &n, &found), ["a>b"]);
        let found = d.suspected(&[node(&n, "sink")], &[], &[]);
        assert_eq!(pieces(&d, &n, &found), ["a>b", "b>street", "sink>a"]);
        // What drains through it clears it; contradictory words leave nothing.
        assert!(d.suspected(&[node(&n, "floor")], &[], &[node(&n, "sink")]).len() == 1);
    }

    /// Row 15 of the design's table of traps: sewage comes out of the floor drain, not of the
    /// fixture in use, and the low outdoor cleanout relieves it, not the kitchen's.
    #[test]
    fn comes_out_lowest_and_the_low_cleanout_relieves() {
        let (mut d, n) =
            drain("floor>base kitchen>co-kitchen>stack bath>stack>base>co-out>bd>street");
        for (name, rim) in [("floor", 0.0), ("kitchen", 0.9), ("bath", 3.4)] {
            d.nodes[node(&n, name) as usize].rim_m = Some(rim);
        }
        for (name, height, outdoors) in
            [("co-kitchen", 0.5, Some(false)), ("co-out", -0.2, Some(true))]
        {
            d.nodes[node(&n, name) as usize].cap = Some(Cap { height_m: Some(height), outdoors });
        }
        let found = d.suspected(&[node(&n, "kitchen"), node(&n, "floor")], &[], &[]);
        let to_street = found.iter().find(|s| d.pieces[s.piece].to == node(&n, "street")).unwrap();
        assert_eq!(d.emerges(to_street.piece, |_| true)[0].0, node(&n, "floor"));
        assert_eq!(d.relief(&found, &[]).unwrap().0, node(&n, "co-out"));
        // Both lie above the last piece, and co-out lies nearer; the kitchen's reaches all of them.
        assert_eq!(d.rodding(&[*to_street], 30.0).unwrap().from, node(&n, "co-out"));
        assert_eq!(d.rodding(&found, 30.0).unwrap().from, node(&n, "co-kitchen"));
    }

    #[test]
    fn a_cleanout_below_the_blockage_or_above_the_shower_does_not_relieve() {
        let (mut d, n) = drain("shower>a>co-low>street");
        d.nodes[node(&n, "shower") as usize].rim_m = Some(0.1);
        d.nodes[node(&n, "co-low") as usize].cap =
            Some(Cap { height_m: Some(-1.0), outdoors: None });
        let above = [Suspected { piece: 1, share: 1.0 }];
        assert_eq!(d.relief(&above, &[]), None, "it lies below the blockage");
        let below = [Suspected { piece: 2, share: 1.0 }];
        assert!(d.relief(&below, &[]).is_some());
        d.nodes[node(&n, "co-low") as usize].cap =
            Some(Cap { height_m: Some(0.3), outdoors: Some(true) });
        assert_eq!(d.relief(&below, &[]), None, "its cap is higher than the shower");
        d.nodes[node(&n, "co-low") as usize].cap =
            Some(Cap { height_m: Some(-1.0), outdoors: Some(false) });
        assert_eq!(d.relief(&below, &[]), None, "sewage indoors is no relief");
    }

    /// Row 16 of the design's table of traps.
    #[test]
    fn a_flap_protects_unless_the_house_runs_water_behind_it() {
        let (mut d, n) = drain("shower>bd>street floor>bpipe sink>bpipe>flap>bd");
        for (name, rim) in [("floor", -2.0), ("sink", -1.2), ("shower", 0.1)] {
            d.nodes[node(&n, name) as usize].rim_m = Some(rim);
        }
        d.nodes[node(&n, "sink") as usize].runs = true;
        d.nodes[node(&n, "flap") as usize].stops_backflow = true;
        let to_street = d.pieces.iter().position(|p| p.to == node(&n, "street")).unwrap();
        assert_eq!(d.emerges(to_street, |_| true)[0].0, node(&n, "floor"));
        assert_eq!(d.emerges(to_street, |_| false)[0].0, node(&n, "shower"));
    }

    #[test]
    fn a_cable_is_not_steered_up_past_a_junction() {
        let (mut d, n) = drain("shower>a>b sink>b>co>street");
        d.nodes[node(&n, "co") as usize].cap = Some(Cap { height_m: None, outdoors: None });
        let piece = |from: &str| d.pieces.iter().position(|p| p.from == node(&n, from)).unwrap();
        let at = |piece| [Suspected { piece, share: 1.0 }];
        assert!(d.rodding(&at(piece("b")), 30.0).unwrap().against_flow);
        assert_eq!(d.rodding(&at(piece("a")), 30.0), None);
        assert!(!d.rodding(&at(piece("co")), 30.0).unwrap().against_flow);
    }

    #[test]
    fn a_cable_does_not_go_through_a_flap() {
        let (mut d, n) = drain("sink>co>flap>bd>street");
        d.nodes[node(&n, "co") as usize].cap = Some(Cap { height_m: None, outdoors: None });
        d.nodes[node(&n, "flap") as usize].stops_backflow = true;
        let at = |from: &str| {
            let piece = d.pieces.iter().position(|p| p.from == node(&n, from)).unwrap();
            [Suspected { piece, share: 1.0 }]
        };
        assert!(d.rodding(&at("co"), 30.0).is_some());
        assert_eq!(d.rodding(&at("flap"), 30.0), None);
    }
}
