//! How far things are from each other on foot, and a short way past many of them.

use quarterturn_estimate::si::length::meter;
use quarterturn_estimate::si::time::second;
use quarterturn_estimate::{Length, walk};
use quarterturn_home::{Component, Home};

/// Metres walked where the map does not tell.
const UNKNOWN_M: f64 = 8.0;
/// Metres walked for a metre straight through the walls. Common practice, no source.
const DETOUR: f64 = 1.4;

/// Likely seconds from one component to another on foot.
pub(crate) fn seconds_between(home: &Home, from: &str, to: &str) -> f64 {
    match (home.component(from), home.component(to)) {
        (Some(from), Some(to)) => seconds(home, from, to),
        _ => seconds_of(UNKNOWN_M, 0.0, 1),
    }
}

/// A short way from a component past others and back to it: the order, by place in `stops`, and the
/// likely seconds on foot.
///
/// The nearest next, then shortened by turning parts of it round as long as that helps (2-opt, Croes
/// 1958). Deterministic. Time: `O(n²)` for each pass.
pub(crate) fn walk_order(home: &Home, start: &str, stops: &[&str]) -> (Vec<usize>, f64) {
    /// Passes of shortening.
    const PASSES: usize = 8;
    let between = |a: Option<usize>, b: Option<usize>| {
        let id = |at: Option<usize>| at.and_then(|at| stops.get(at).copied()).unwrap_or(start);
        if id(a) == id(b) { 0.0 } else { seconds_between(home, id(a), id(b)) }
    };
    // Each pair is asked for often.
    let count = stops.len();
    let table: Vec<Vec<f64>> = (0..=count)
        .map(|a| {
            let at = |n: usize| n.checked_sub(1);
            (0..=count).map(|b| between(at(a), at(b))).collect()
        })
        .collect();
    let cost = |a: usize, b: usize| table.get(a).and_then(|row| row.get(b)).copied().unwrap_or(0.0);
    let mut order = vec![0];
    let mut left: Vec<usize> = (1..=count).collect();
    while !left.is_empty() {
        let here = order.last().copied().unwrap_or(0);
        let near = (0..left.len()).min_by(|&a, &b| {
            let to = |at: usize| left.get(at).map_or(f64::INFINITY, |stop| cost(here, *stop));
            to(a).total_cmp(&to(b))
        });
        order.push(left.remove(near.unwrap_or(0)));
    }
    let length = |order: &[usize]| -> f64 {
        let back = order.last().map_or(0.0, |last| cost(*last, 0));
        order.iter().zip(order.iter().skip(1)).map(|(a, b)| cost(*a, *b)).sum::<f64>() + back
    };
    let mut best = length(&order);
    // Beyond that many stops the nearest next is good enough.
    for _ in 0..if count <= 80 { PASSES } else { 0 } {
        let mut better = false;
        for i in 1..order.len() {
            for j in i + 1..order.len() {
                let at = |n: usize| order.get(n).copied().unwrap_or(0);
                let (before, first, last, after) = (at(i - 1), at(i), at(j), at(j + 1));
                let gain = cost(before, first) + cost(last, after)
                    - cost(before, last)
                    - cost(first, after);
                if gain > 1e-9
                    && let Some(part) = order.get_mut(i..=j)
                {
                    part.reverse();
                    better = true;
                }
            }
        }
        if !better {
            break;
        }
        best = length(&order);
    }
    (order.into_iter().skip(1).map(|stop| stop - 1).collect(), best)
}

fn seconds(home: &Home, from: &Component, to: &Component) -> f64 {
    let level_m = match (from.at, to.at) {
        (Some((x, y, _)), Some((u, v, _))) => (u - x).hypot(v - y) * DETOUR,
        _ if from.space.is_some() && from.space == to.space => 3.0,
        _ => UNKNOWN_M,
    };
    let floor = |c: &Component| home.level_of(c).map(|level| level.elevation_m);
    let rise_m = match (floor(from), floor(to)) {
        (Some(a), Some(b)) => b - a,
        _ => 0.0,
    };
    seconds_of(level_m, rise_m, u32::from(from.space != to.space))
}

fn seconds_of(level_m: f64, rise_m: f64, doors: u32) -> f64 {
    let path = walk::Path {
        level: Length::new::<meter>(level_m),
        up: Length::new::<meter>(rise_m.max(0.0)),
        down: Length::new::<meter>((-rise_m).max(0.0)),
        doors,
    };
    walk::time(&path, walk::Profile::Usual).likely.get::<second>()
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Kind;

    fn row(at: &[(f64, f64)]) -> Home {
        let components = at
            .iter()
            .enumerate()
            .map(|(n, (x, y))| {
                let mut c = Component::new(&format!("c{n}"), Kind::Receptacle, "c");
                c.at = Some((*x, *y, 0.0));
                c
            })
            .collect();
        Home { components, ..Home::default() }
    }

    #[test]
    fn the_way_round_a_ring_is_the_ring() {
        let ring = [(0.0, 0.0), (9.0, 1.0), (5.0, 9.0), (0.5, 6.0), (6.0, 0.0), (8.5, 6.0)];
        let home = row(&ring);
        let (order, seconds) = walk_order(&home, "c0", &["c1", "c2", "c3", "c4", "c5"]);
        // By hand: 4, 1, 5, 2, 3 counted as components, or the other way round.
        let mut forward: Vec<usize> = order.iter().map(|n| n + 1).collect();
        if forward[0] == 3 {
            forward.reverse();
        }
        assert_eq!(forward, [4, 1, 5, 2, 3]);
        assert!(seconds > 15.0 && seconds < 60.0, "{seconds}");
    }

    #[test]
    fn no_way_is_longer_than_the_best_by_much() {
        // Against every order of six stops.
        let home = row(&[
            (0.0, 0.0),
            (7.0, 2.0),
            (1.0, 5.0),
            (6.0, 6.0),
            (3.0, 1.0),
            (2.0, 8.0),
            (8.0, 8.0),
        ]);
        let stops = ["c1", "c2", "c3", "c4", "c5", "c6"];
        let (_, ours) = walk_order(&home, "c0", &stops);
        let mut best = f64::INFINITY;
        let mut order: Vec<usize> = (0..6).collect();
        permute(&mut order, 0, &mut |order| {
            let mut at = "c0";
            let mut sum = 0.0;
            for &n in order {
                sum += seconds_between(&home, at, stops[n]);
                at = stops[n];
            }
            best = best.min(sum + seconds_between(&home, at, "c0"));
        });
        assert!(ours <= best * 1.1 + 1e-9, "{ours} {best}");
    }

    fn permute(order: &mut Vec<usize>, from: usize, seen: &mut impl FnMut(&[usize])) {
        if from == order.len() {
            seen(order);
        }
        for i in from..order.len() {
            order.swap(from, i);
            permute(order, from + 1, seen);
            order.swap(from, i);
        }
    }
}
