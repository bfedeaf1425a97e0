//! Cooling that stopped, and water at the air handler.

use quarterturn_home::{Kind, Medium, Net, Role};

use crate::blame::{Blame, look_at, suspects};
use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::{Way, rounded, ways};
use crate::{Act, By, NextCheck, Seen, Suspect, power, water, wet_hazards};

/// Share of the blame that a float switch with its drain gets before anyone has looked. Common
/// practice, no source: a stopped unit is more often a full pan than a tripped breaker.
const FLOAT_SHARE: f64 = 0.6;
/// Seconds to look into a pan. Common practice, no source.
const LOOK_SECONDS: f64 = 20.0;

/// Suspects in a condensate pump's power that get a step of their own.
const PUMP_POWER_TOLD: usize = 2;

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
    let found = Blame::of(ctx, net, &[unit]);
    let drain = CondensateDrain::of(ctx, unit);
    let (wet, dry) = (drain.is_wet, drain.is_dry);
    drain.steps(ctx, &mut draft, unit);
    power::tell(ctx, &mut draft, &found, "prove-cooling");
    blame_floats(ctx, &mut draft, &drain.floats, wet, dry);
    draft.next_check = drain.next_look(ctx).or(draft.next_check);
    draft.calls.clear();
    draft.call(Role::Cooling, "why-cooling");
    draft.call(Role::Electrician, "why-electrician");
    draft.restore.clear();
    draft.restore(ctx, "restore-cooling", &[]);
    draft
}

/// Water stands or drips at the unit: its drain, before it reaches the ceiling below.
pub(crate) fn water_at_air_handler(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Condensate), ..Draft::default() };
    draft.caution(ctx, "caution-air-handler", &[]);
    wet_hazards::warn_of_power(ctx, &mut draft);
    draft.advice(ctx, "step-cooling-off", Act::StopUse, &[]);
    draft.advice(ctx, "step-catch-water-above", Act::Advice, &[]);
    draft.call(Role::Cooling, "why-cooling");
    let Some(unit) = air_handler(ctx) else {
        draft.advice(ctx, "step-cooling-general", Act::Look, &[]);
        draft.advice(ctx, "step-clear-drain", Act::Advice, &[]);
        draft.advice(ctx, "step-empty-pan", Act::Advice, &[]);
        draft.restore(ctx, "restore-cooling", &[]);
        return draft;
    };
    draft.mapped = true;
    let ceiling = below(ctx, unit);
    if !ceiling.is_empty() {
        draft.caution(ctx, "caution-ceiling-below", &[fill("below", &ceiling)]);
    }
    let drain = CondensateDrain::of(ctx, unit);
    drain.steps(ctx, &mut draft, unit);
    if let Some(&pump) = drain.pumps.first() {
        look(ctx, &mut draft, "step-look-condensate-pump", pump);
        let found = Blame::about(ctx, ctx.net(Net::Power), &[pump]);
        let told: Vec<usize> =
            found.shares().into_iter().map(|(place, _)| place).take(PUMP_POWER_TOLD).collect();
        power::suspect_steps(ctx, &mut draft, &found, &told, "prove-pump");
    }
    if !ctx.is_forbidden(unit) {
        draft.advice(ctx, "step-look-filter", Act::Look, &[]);
    }
    unit_off(ctx, &mut draft, unit);
    draft.suspects = suspects(ctx, &drain.shares(ctx, unit));
    draft.next_check = drain.next_look(ctx);
    draft.call(Role::Electrician, "why-electrician-wet");
    draft.restore(ctx, "restore-cooling", &[]);
    draft
}

/// The unit's own breaker or disconnect, for when water reaches its wires; none that would take
/// with it what someone depends on.
fn unit_off(ctx: &Context<'_>, draft: &mut Draft, unit: usize) {
    let net = ctx.net(Net::Power);
    if !net.member[unit] {
        return;
    }
    let spares = |way: &&Way| {
        way.lost.off.iter().all(|&place| place == unit || !ctx.home.components[place].is_critical())
    };
    let found = ways(ctx, net, &[net.body[unit]]).list;
    if let Some(way) = found.iter().find(|way| way.by == By::Anyone && spares(way)) {
        let list = water::names(ctx, &way.devices);
        draft.advice(ctx, "step-unit-off", Act::Advice, &[fill("devices", &list)]);
    } else {
        draft.advice(ctx, "step-unit-off-call", Act::Advice, &[]);
    }
}

/// What catches a unit's condensate and leads it away, with what was seen of it.
struct CondensateDrain {
    /// All of it, the unit too.
    all: Vec<usize>,
    pans: Vec<usize>,
    floats: Vec<usize>,
    pumps: Vec<usize>,
    secondary: Option<usize>,
    is_wet: bool,
    is_dry: bool,
}

impl CondensateDrain {
    fn of(ctx: &Context<'_>, unit: usize) -> Self {
        let all = around(ctx, unit);
        let of_kind = |kind: Kind| -> Vec<usize> {
            all.iter().copied().filter(|&p| ctx.home.components[p].kind == kind).collect()
        };
        let (pans, floats) = (of_kind(Kind::CondensatePan), of_kind(Kind::FloatSwitch));
        let pumps = of_kind(Kind::CondensatePump);
        let is = |place: usize, seen: Seen| ctx.seen(&ctx.home.components[place].id) == Some(seen);
        let is_wet = pans.iter().chain(&floats).any(|&p| is(p, Seen::Wet) || is(p, Seen::Tripped));
        let is_dry = !pans.is_empty() && pans.iter().all(|&p| is(p, Seen::Dry));
        let secondary = secondary_pan(ctx, &pans);
        Self { all, pans, floats, pumps, secondary, is_wet, is_dry }
    }

    /// Pans, float switches, the line, in this order.
    fn steps(&self, ctx: &Context<'_>, draft: &mut Draft, unit: usize) {
        let is_wet = |p: usize| ctx.seen(&ctx.home.components[p].id) == Some(Seen::Wet);
        if self.secondary.is_some_and(is_wet) {
            draft.caution(ctx, "caution-secondary-pan", &[fill("below", &below(ctx, unit))]);
        }
        for &pan in &self.pans {
            let second = Some(pan) == self.secondary;
            look(ctx, draft, if second { "step-look-secondary-pan" } else { "step-look-pan" }, pan);
        }
        for &float in &self.floats {
            look(ctx, draft, "step-look-float", float);
        }
        let end = |kind: Kind| {
            self.all.iter().copied().find(|&place| ctx.home.components[place].kind == kind)
        };
        match end(Kind::CondensateOutlet).or_else(|| end(Kind::Standpipe)) {
            Some(outlet) => look(ctx, draft, "step-clear-drain-at", outlet),
            None => draft.advice(ctx, "step-clear-drain", Act::Advice, &[]),
        }
        // Nobody bends over a pan in standing water.
        if !ctx.is_forbidden(unit) {
            draft.advice(ctx, "step-empty-pan", Act::Advice, &[]);
        }
    }

    /// The first pan that nobody has looked into, while none is known to be wet.
    fn next_look(&self, ctx: &Context<'_>) -> Option<NextCheck> {
        let unknown = |place: &usize| ctx.seen(&ctx.home.components[*place].id).is_none();
        let pan = self.pans.iter().copied().find(unknown).filter(|_| !self.is_wet)?;
        let seconds = ctx.walk_seconds(pan) + LOOK_SECONDS;
        Some(look_at(ctx, "look-pan", pan, seconds))
    }

    /// Who is to blame for water at the unit. Rough figures of common practice, no source: slime in
    /// the trap and the line, a pump that stands still, a coil that froze behind a full filter.
    fn shares(&self, ctx: &Context<'_>, unit: usize) -> Vec<(usize, f64)> {
        let dry = |place: usize| ctx.seen(&ctx.home.components[place].id) == Some(Seen::Dry);
        let mut list: Vec<(usize, f64)> = self
            .all
            .iter()
            .filter_map(|&place| {
                let weight = match ctx.home.components[place].kind {
                    Kind::CondensatePump => 4.0,
                    Kind::Trap => 3.0,
                    Kind::Pipe | Kind::CondensateOutlet => 2.0,
                    Kind::CondensatePan if dry(place) => 0.1,
                    Kind::CondensatePan => 1.0,
                    _ if place == unit => 1.5,
                    _ => return None,
                };
                Some((place, weight))
            })
            .collect();
        let total: f64 = list.iter().map(|part| part.1).sum();
        list.iter_mut().for_each(|part| part.1 /= total);
        list.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
        list
    }
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
    draft.go_to(ctx, key, Act::Look, place, LOOK_SECONDS);
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
        for link in ctx.guide.lines_at(place) {
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
