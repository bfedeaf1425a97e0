//! Cooling that stopped.

use quarterturn_home::{Kind, Medium, Net, Role};

use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::rounded;
use crate::power::{self, Blame};
use crate::{Act, NextCheck, Seen, Suspect};

/// Share of the blame that a float switch with its drain gets before anyone has looked. Common
/// practice, no source: a stopped unit is more often a full pan than a tripped breaker.
const FLOAT_SHARE: f64 = 0.6;
/// Seconds to look into a pan. Common practice, no source.
const LOOK_SECONDS: f64 = 20.0;

pub(crate) fn stopped(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-air-handler", &[]);
    draft.advice(ctx, "step-cooling-off", Act::StopUse, &[]);
    let Some(unit) = air_handler(ctx) else {
        draft.advice(ctx, "step-cooling-general", Act::Look, &[]);
        draft.call(Role::Cooling, "why-cooling");
        return draft;
    };
    draft.mapped = true;
    let net = ctx.net(Net::Power);
    let found = Blame::of(ctx, &net, &[unit]);
    let drain = around(ctx, unit);
    let of_kind = |kind: Kind| -> Vec<usize> {
        drain.iter().copied().filter(|&p| ctx.home.components[p].kind == kind).collect()
    };
    let (pans, floats) = (of_kind(Kind::CondensatePan), of_kind(Kind::FloatSwitch));
    let is = |place: usize, seen: Seen| ctx.seen(&ctx.home.components[place].id) == Some(seen);
    let wet = pans.iter().chain(&floats).any(|&p| is(p, Seen::Wet) || is(p, Seen::Tripped));
    let dry = !pans.is_empty() && pans.iter().all(|&p| is(p, Seen::Dry));
    let secondary = secondary_pan(ctx, &pans);
    if secondary.is_some_and(|p| is(p, Seen::Wet)) {
        draft.caution(ctx, "caution-secondary-pan", &[fill("below", &below(ctx, unit))]);
    }
    for &pan in &pans {
        let key = if Some(pan) == secondary { "step-look-secondary-pan" } else { "step-look-pan" };
        look(ctx, &mut draft, key, pan);
    }
    for &float in &floats {
        look(ctx, &mut draft, "step-look-float", float);
    }
    let outlets: Vec<usize> = [of_kind(Kind::CondensateOutlet), of_kind(Kind::Standpipe)].concat();
    match outlets.first() {
        Some(&outlet) => look(ctx, &mut draft, "step-clear-drain-at", outlet),
        None => draft.advice(ctx, "step-clear-drain", Act::Advice, &[]),
    }
    draft.advice(ctx, "step-empty-pan", Act::Advice, &[]);
    power::tell(ctx, &mut draft, &found, "prove-cooling");
    blame_floats(ctx, &mut draft, &floats, wet, dry);
    let unknown = pans.iter().copied().find(|&p| ctx.seen(&ctx.home.components[p].id).is_none());
    if let (Some(pan), false) = (unknown, wet) {
        draft.next_check = Some(NextCheck {
            component: ctx.home.components[pan].id.clone(),
            look_for: ctx.catalogue.fill(
                "look-pan",
                &[fill("device", &ctx.name(pan)), fill("where", &ctx.where_sentence(pan))],
            ),
            seconds: rounded(ctx.start().seconds_to(ctx.point(pan)) + LOOK_SECONDS, 1.0),
        });
    }
    draft.calls.clear();
    draft.call(Role::Cooling, "why-cooling");
    draft.call(Role::Electrician, "why-electrician");
    draft.restore.clear();
    draft.restore(ctx, "restore-cooling", &[]);
    draft
}

/// The float switches take their share before what feeds the unit.
fn blame_floats(ctx: &Context<'_>, draft: &mut Draft, floats: &[usize], wet: bool, dry: bool) {
    if floats.is_empty() {
        return;
    }
    let share = match (wet, dry) {
        (true, _) => 0.95,
        (false, true) => 0.05,
        (false, false) => FLOAT_SHARE,
    };
    let share = if draft.suspects.is_empty() { 1.0 } else { share };
    for suspect in &mut draft.suspects {
        suspect.share = rounded(suspect.share * (1.0 - share), 0.001);
    }
    #[expect(clippy::cast_precision_loss, reason = "a unit has a handful of float switches")]
    let each = share / floats.len() as f64;
    draft.suspects.extend(floats.iter().map(|&place| Suspect {
        component: ctx.home.components[place].id.clone(),
        share: rounded(each, 0.001),
    }));
    draft.suspects.sort_by(|a, b| b.share.total_cmp(&a.share));
}

fn look(ctx: &Context<'_>, draft: &mut Draft, key: &str, place: usize) {
    draft.at(
        ctx,
        key,
        Act::Look,
        place,
        ctx.start().seconds_to(ctx.point(place)) + LOOK_SECONDS,
        &[fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))],
    );
}

/// The spot itself, or the unit that its lines lead to, or the only one there is.
fn air_handler(ctx: &Context<'_>) -> Option<usize> {
    let is_unit = |place: usize| ctx.home.components[place].kind == Kind::AirHandler;
    let spot = ctx.spot_components();
    if let Some(&unit) = spot.iter().find(|&&place| is_unit(place)) {
        return Some(unit);
    }
    let near = spot.iter().flat_map(|&place| around(ctx, place)).find(|&place| is_unit(place));
    near.or_else(|| (0..ctx.home.components.len()).find(|&place| is_unit(place)))
}

/// What hangs on a component by condensate or control lines, however far, by place.
fn around(ctx: &Context<'_>, start: usize) -> Vec<usize> {
    let mut seen = vec![false; ctx.home.components.len()];
    seen[start] = true;
    let mut stack = vec![start];
    while let Some(place) = stack.pop() {
        let id = &ctx.home.components[place].id;
        for link in &ctx.home.connections {
            if !matches!(link.carries, Medium::Condensate | Medium::Signal) {
                continue;
            }
            let other = if &link.from == id {
                &link.to
            } else if &link.to == id {
                &link.from
            } else {
                continue;
            };
            if let Some(next) = ctx.places.of(other)
                && !std::mem::replace(&mut seen[next], true)
            {
                stack.push(next);
            }
        }
    }
    (0..seen.len()).filter(|&p| seen[p]).collect()
}

/// The pan under the other one: the lower, or the one that takes in no condensate line directly.
fn secondary_pan(ctx: &Context<'_>, pans: &[usize]) -> Option<usize> {
    if pans.len() < 2 {
        return None;
    }
    let height = |place: usize| ctx.home.height_m(&ctx.home.components[place]);
    let lowest = pans.iter().copied().filter(|&p| height(p).is_some()).min_by(|&a, &b| {
        height(a).unwrap_or(f64::MAX).total_cmp(&height(b).unwrap_or(f64::MAX)).then(b.cmp(&a))
    });
    lowest.or_else(|| pans.last().copied())
}

/// Names of the spaces below a component.
fn below(ctx: &Context<'_>, place: usize) -> String {
    let component = &ctx.home.components[place];
    let here = ctx.home.level_of(component).map(|level| level.elevation_m);
    let point = component.at;
    let mut names: Vec<String> = Vec::new();
    for space in ctx.home.spaces.iter().filter(|s| !s.outdoors) {
        let level = space.level.as_deref().and_then(|id| ctx.home.level(id));
        let lower = matches!((here, level), (Some(h), Some(l)) if l.elevation_m < h);
        let under = point
            .is_none_or(|(x, y, _)| space.outline.is_empty() || contains(&space.outline, x, y));
        if lower && under {
            names.push(space.name.clone());
        }
    }
    ctx.catalogue.list(&names)
}

/// True if a point lies inside an outline (even–odd rule).
fn contains(outline: &[(f64, f64)], x: f64, y: f64) -> bool {
    let mut inside = false;
    let mut last = outline.last().copied();
    for &(u, v) in outline {
        if let Some((s, t)) = last
            && (v > y) != (t > y)
            && x < (s - u) * (y - v) / (t - v) + u
        {
            inside = !inside;
        }
        last = Some((u, v));
    }
    inside
}
