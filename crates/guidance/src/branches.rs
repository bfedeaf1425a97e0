//! Which branch leaks, when all is shut and nobody knows: open one branch after the other.

use quarterturn_network::{Dominators, HomeNet, Node, as_node};

use crate::By;
use crate::context::Context;
use crate::isolation::is_shut;

/// Seconds to wait at each branch for the drip to come back. Common practice, no source.
const WAIT_SECONDS: f64 = 120.0;

/// The branch shutoffs between what is shut and the targets, in the order that finds the leak soonest.
///
/// Each target counts for the first usable device below those in `shut` on every way to it. One leak,
/// in each target with equal chance, and a wait at each branch: then the order of chance for time is
/// the best (Smith 1956), as long as walking between them matters little beside the wait.
/// Fewer than two branches tell nothing; then the list is empty.
pub(crate) fn in_order(
    ctx: &Context<'_>,
    net: &HomeNet,
    targets: &[Node],
    shut: &[usize],
) -> Vec<usize> {
    let dominators = Dominators::of(&net.network, |node| is_shut(ctx, net, node));
    let mut branches: Vec<(usize, f64)> = Vec::new();
    for &target in targets {
        let above: Vec<Node> = dominators.above(target).collect();
        // From the source downwards, past what is shut already.
        let start = above.iter().position(|&node| shut.iter().any(|&p| as_node(p) == node));
        let below = &above[..start.unwrap_or(above.len())];
        let branch = below.iter().rev().map(|&node| node as usize).find(|&place| {
            net.network.is_device(as_node(place))
                && ctx.is_usable(place)
                && !ctx.is_shut(place)
                && !ctx.is_forbidden(place)
                && ctx.by(place) == By::Anyone
        });
        let Some(branch) = branch else { continue };
        match branches.iter_mut().find(|(place, _)| *place == branch) {
            Some((_, count)) => *count += 1.0,
            None => branches.push((branch, 1.0)),
        }
    }
    if branches.len() < 2 {
        return Vec::new();
    }
    let from = shut.last().map_or(ctx.start(), |&place| ctx.point(place));
    let rate = |&(place, count): &(usize, f64)| {
        let seconds = ctx.leg(from, place).total() + WAIT_SECONDS;
        count / seconds
    };
    branches.sort_by(|a, b| rate(b).total_cmp(&rate(a)).then(a.0.cmp(&b.0)));
    branches.into_iter().map(|(place, _)| place).collect()
}
