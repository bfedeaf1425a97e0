//! A GFCI that trips or does not reset: what is on its load side, and which of it leaks current.

use quarterturn_home::{Kind, Medium, Net, Role};
use quarterturn_network::{Check, Diagnosis, as_node, next_check};

use crate::blame::{LOOK_SECONDS, look_at, suspects};
use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::lines::nearest_above;
use crate::power::{loads_below, unplug};
use crate::{Act, NextCheck, Seen};

/// Names in one sentence.
const MOST_NAMED: usize = 8;

pub(crate) fn trips(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.caution(ctx, "caution-gfci-protects", &[]);
    draft.call(Role::Electrician, "why-trips-again");
    let is_gfci = |place: usize| ctx.home.components[place].kind == Kind::Gfci;
    let found = nearest_above(ctx, &ctx.spot_components(), Medium::Power, is_gfci);
    let Some(gfci) = found else {
        draft.advice(ctx, "step-unplug-all", Act::Unplug, &[]);
        draft.advice(ctx, "step-gfci-general", Act::Reset, &[]);
        draft.advice(ctx, "step-trips-again", Act::Advice, &[]);
        draft.advice(ctx, "step-one-by-one", Act::Look, &[]);
        draft.restore(ctx, "restore-gfci", &[]);
        return draft;
    };
    draft.mapped = true;
    let loads = loads_below(ctx, gfci);
    load_side(ctx, &mut draft, gfci, &loads);
    unplug(ctx, &mut draft, gfci);
    reset(ctx, &mut draft, gfci);
    draft.advice(ctx, "step-trips-again", Act::Advice, &[]);
    draft.advice(ctx, "step-one-by-one", Act::Look, &[]);
    let breaker = nearest_above(ctx, &[gfci], Medium::Power, |place| {
        ctx.home.components[place].kind == Kind::Breaker
    });
    if let Some(breaker) = breaker {
        draft.go_to(ctx, "step-gfci-has-no-power", Act::Look, breaker, LOOK_SECONDS);
    }
    let shares = shares(ctx, gfci, &loads, breaker);
    draft.suspects = suspects(ctx, &shares);
    draft.next_check = next_look(ctx, &shares);
    draft.restore(ctx, "restore-gfci", &[]);
    draft
}

/// Says what hangs on the load side, with its room, and what of it may be wet.
fn load_side(ctx: &Context<'_>, draft: &mut Draft, gfci: usize, loads: &[usize]) {
    let open = |place: &&usize| !ctx.is_forbidden(**place);
    let with_room = |&place: &usize| match ctx.space_of(place).and_then(|id| ctx.home.space(id)) {
        Some(space) => ctx.catalogue.fill(
            "device-in-space",
            &[fill("device", &ctx.name(place)), fill("space", &space.name)],
        ),
        None => ctx.name(place),
    };
    let all: Vec<String> = loads.iter().filter(open).map(with_room).take(MOST_NAMED).collect();
    if !all.is_empty() {
        let list = ctx.catalogue.list(&all);
        let fills = [fill("device", &ctx.name(gfci)), fill("list", &list)];
        draft.advice(ctx, "step-gfci-load-side", Act::Advice, &fills);
    }
    let outside: Vec<String> = loads
        .iter()
        .filter(|&&place| is_outdoors(ctx, place))
        .filter(open)
        .map(|&place| ctx.name(place))
        .take(MOST_NAMED)
        .collect();
    if !outside.is_empty() {
        let list = ctx.catalogue.list(&outside);
        draft.advice(ctx, "step-gfci-look-wet", Act::Look, &[fill("list", &list)]);
    }
}

fn reset(ctx: &Context<'_>, draft: &mut Draft, gfci: usize) {
    let lamp = ctx.home.components[gfci].lamp.clone();
    let key = if lamp.is_some() { "step-reset-gfci-lamp" } else { "step-reset-gfci" };
    draft.at(
        ctx,
        key,
        Act::Reset,
        gfci,
        ctx.leg(ctx.start(), gfci).total(),
        &[
            fill("device", &ctx.name(gfci)),
            fill("where", &ctx.where_sentence(gfci)),
            fill("lamp", &lamp.unwrap_or_default()),
        ],
    );
    draft.prove(ctx.catalogue.text("prove-gfci-holds"));
}

fn is_outdoors(ctx: &Context<'_>, place: usize) -> bool {
    ctx.space_of(place).and_then(|id| ctx.home.space(id)).is_some_and(|space| space.outdoors)
}

/// Who is to blame. Rough figures of common practice, no source: appliances with water or outdoors
/// leak current most, then wet outlets outdoors, then the device itself.
fn shares(
    ctx: &Context<'_>,
    gfci: usize,
    loads: &[usize],
    breaker: Option<usize>,
) -> Vec<(usize, f64)> {
    let seen = |place: usize| ctx.seen(&ctx.home.components[place].id);
    let mut list = vec![(gfci, if seen(gfci) == Some(Seen::On) { 0.1 } else { 1.0 })];
    for &place in loads {
        let kind = ctx.home.components[place].kind;
        let is_outlet =
            matches!(kind, Kind::Receptacle | Kind::Light | Kind::Lampholder | Kind::Gfci);
        let weight = match (is_outlet, is_outdoors(ctx, place)) {
            (false, true) => 4.0,
            (false, false) | (true, true) => 2.0,
            (true, false) => 0.4,
        };
        let factor = match seen(place) {
            Some(Seen::Wet) => 20.0,
            Some(Seen::Dry | Seen::Live) => 0.3,
            // It was unplugged, and the GFCI tripped all the same.
            Some(Seen::Off) => 0.02,
            _ => 1.0,
        };
        list.push((place, weight * factor));
    }
    if let Some(breaker) = breaker {
        let weight = match seen(breaker) {
            Some(Seen::Off | Seen::Tripped) => 30.0,
            Some(Seen::On | Seen::Live) => 0.05,
            _ => 1.0,
        };
        list.push((breaker, weight));
    }
    let total: f64 = list.iter().map(|part| part.1).sum();
    list.iter_mut().for_each(|part| part.1 /= total);
    list.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
    list
}

/// The suspect at which a look tells most: wet or damaged outdoors, or a breaker that is off.
fn next_look(ctx: &Context<'_>, shares: &[(usize, f64)]) -> Option<NextCheck> {
    let list: Vec<Diagnosis> = shares
        .iter()
        .map(|&(place, share)| Diagnosis { faults: vec![as_node(place)], share })
        .collect();
    let is_breaker = |place: usize| ctx.home.components[place].kind == Kind::Breaker;
    let checks: Vec<Check> = shares
        .iter()
        .map(|&(place, _)| place)
        .filter(|&place| is_breaker(place) || is_outdoors(ctx, place))
        .filter(|&place| {
            ctx.seen(&ctx.home.components[place].id).is_none() && !ctx.is_forbidden(place)
        })
        .map(|place| Check {
            node: as_node(place),
            seconds: ctx.walk_seconds(place) + LOOK_SECONDS,
            good: shares.iter().map(|&(other, _)| other != place).collect(),
        })
        .collect();
    let (best, _) = next_check(&list, &checks)?;
    let place = best.node as usize;
    let key = if is_breaker(place) { "look-breaker" } else { "look-wet" };
    Some(look_at(ctx, key, place, best.seconds))
}
