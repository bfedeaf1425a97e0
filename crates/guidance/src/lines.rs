//! Following the lines of the map from one component to the next.

use std::collections::VecDeque;

use quarterturn_home::Medium;

use crate::context::Context;

/// The nearest component that `wanted` holds for, against the usual direction of what the lines
/// carry; one of `starts` itself if it holds for that.
pub(crate) fn nearest_above(
    ctx: &Context<'_>,
    starts: &[usize],
    medium: Medium,
    wanted: impl Fn(usize) -> bool,
) -> Option<usize> {
    let mut queue: VecDeque<usize> = starts.iter().copied().collect();
    let mut seen = vec![false; ctx.home.components.len()];
    while let Some(place) = queue.pop_front() {
        if std::mem::replace(&mut seen[place], true) {
            continue;
        }
        if wanted(place) {
            return Some(place);
        }
        let id = &ctx.home.components[place].id;
        let into = ctx.guide.lines_at(place).filter(|l| l.carries == medium && &l.to == id);
        queue.extend(into.filter_map(|link| ctx.places.of(&link.from)));
    }
    None
}

/// True if a line of this sort leads to a component or from it.
pub(crate) fn carries(ctx: &Context<'_>, place: usize, medium: Medium) -> bool {
    ctx.guide.lines_at(place).any(|l| l.carries == medium)
}

/// What the lines of this sort lead to from a component, at once and in the usual direction.
pub(crate) fn next_below(ctx: &Context<'_>, place: usize, medium: Medium) -> Vec<usize> {
    let id = &ctx.home.components[place].id;
    let out = ctx.guide.lines_at(place).filter(|l| l.carries == medium && &l.from == id);
    out.filter_map(|link| ctx.places.of(&link.to)).collect()
}
