//! No hot water: the branch to the tap, or the heater, and then what the heater lacks.

use quarterturn_home::{Kind, Medium, Net, Role};
use quarterturn_network::{Builder, HomeNet, as_node};

use crate::blame::{Blame, LOOK_SECONDS, look_at, suspects};
use crate::context::Context;
use crate::draft::Draft;
use crate::lines::{carries, nearest_above};
use crate::power::suspect_steps;
use crate::supply::{add_share, suspect_step};
use crate::{Act, NextCheck, Seen};

/// Branch suspects that get a step of their own.
const SUSPECTS_TOLD: usize = 3;
/// Suspects in the heater's power that get a step of their own.
const POWER_TOLD: usize = 2;
/// Above this share of the blame one looks at the heater, and no longer at other taps.
const HEATER_IS_SURE: f64 = 0.8;
/// How a heater that heats nothing shares its blame with what it lacks. Common practice, no source.
const ITSELF: f64 = 3.0;
const POWER: f64 = 4.0;
const GAS: f64 = 2.0;
const INLET: f64 = 1.0;
/// What seeing a device off or tripped multiplies its weight by; seeing it on, divides.
const SEEN_FACTOR: f64 = 30.0;

pub(crate) fn no_hot_water(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Water), ..Draft::default() };
    draft.caution(ctx, "caution-heater-hands", &[]);
    draft.advice(ctx, "step-try-other-hot-tap", Act::Look, &[]);
    let found = Blame::of(ctx, &hot_lines(ctx), &[]);
    let mut shares = found.shares();
    let heater = heater_of(ctx, &shares);
    if let (Some(heater), true) = (heater, shares.is_empty()) {
        shares.push((heater, 1.0));
    }
    let Some(heater) = heater else {
        draft.advice(ctx, "step-no-hot-water-general", Act::Look, &[]);
        draft.call(Role::Plumber, "why-plumber-heater");
        return draft;
    };
    draft.mapped = true;
    if found.disbelieved > 0 {
        draft.advice(ctx, "step-reports-contradict", Act::Look, &[]);
    }
    let lacks = Lacks::of(ctx, heater);
    let at_heater = shares.iter().find(|(place, _)| *place == heater).map_or(0.0, |s| s.1);
    if ctx.home.components[heater].volume_l.is_some() && at_heater > 0.0 {
        draft.advice(ctx, "step-hot-used-up", Act::Advice, &[]);
    }
    let branch: Vec<usize> =
        shares.iter().map(|s| s.0).filter(|&p| p != heater).take(SUSPECTS_TOLD).collect();
    // The branch before the heater, if the heater is hardly to blame.
    if at_heater < 0.5 {
        branch.iter().for_each(|&place| suspect_step(ctx, &mut draft, place));
    }
    if at_heater > 0.0 {
        heater_steps(ctx, &mut draft, heater, &lacks);
    }
    if at_heater >= 0.5 {
        branch.iter().for_each(|&place| suspect_step(ctx, &mut draft, place));
    }
    lacks.part(ctx, heater, &mut shares);
    draft.suspects = suspects(ctx, &shares);
    draft.next_check =
        if at_heater > HEATER_IS_SURE { lacks.next(ctx) } else { None }.or(found.next);
    draft.call(Role::Plumber, "why-plumber-heater");
    draft.restore(ctx, "restore-heater-full", &[]);
    draft.restore(ctx, "restore-hot-slowly", &[]);
    draft
}

/// The hot lines alone, from the heaters to the taps, in their usual direction: where hot and cold
/// are joined at a shower, cold water comes back, but not hot.
fn hot_lines(ctx: &Context<'_>) -> HomeNet {
    let count = ctx.home.components.len();
    let mut builder = Builder::with_capacity(count);
    for component in &ctx.home.components {
        if component.kind == Kind::WaterHeater {
            builder.source();
        } else if component.kind.isolates(Net::Water) {
            builder.device();
        } else {
            builder.node();
        }
    }
    let mut member = vec![false; count];
    for link in ctx.home.connections.iter().filter(|link| link.carries == Medium::HotWater) {
        if let (Some(from), Some(to)) = (ctx.places.of(&link.from), ctx.places.of(&link.to)) {
            (member[from], member[to]) = (true, true);
            builder.one_way(as_node(from), as_node(to));
        }
    }
    let body = (0..count).map(as_node).collect();
    HomeNet { net: Net::Water, network: builder.build(), body, member, point: None }
}

/// The heater that is blamed; else the one on the way to the spot; else the only one.
fn heater_of(ctx: &Context<'_>, shares: &[(usize, f64)]) -> Option<usize> {
    let is_heater = |place: usize| ctx.home.components[place].kind == Kind::WaterHeater;
    let blamed = shares.iter().map(|s| s.0).find(|&place| is_heater(place));
    let above = || nearest_above(ctx, &ctx.spot_components(), Medium::HotWater, is_heater);
    let mut all = (0..ctx.home.components.len()).filter(|&place| is_heater(place));
    let only = all.next().filter(|_| all.next().is_none());
    blamed.or_else(above).or(only)
}

/// What a heater needs to heat.
struct Lacks {
    power: Option<Blame>,
    gas: Option<usize>,
    inlet: Option<usize>,
}

impl Lacks {
    fn of(ctx: &Context<'_>, heater: usize) -> Self {
        let kind = |place: usize| ctx.home.components[place].kind;
        let power = Blame::about(ctx, ctx.net(Net::Power), &[heater]);
        Self {
            power: Some(power).filter(|found| !found.diagnoses.is_empty()),
            gas: nearest_above(ctx, &[heater], Medium::Gas, |p| kind(p) == Kind::GasValve),
            inlet: nearest_above(ctx, &[heater], Medium::ColdWater, |p| {
                kind(p) == Kind::IsolatingValve
            }),
        }
    }

    /// Parts the heater's share of the blame among the heater and what it lacks.
    fn part(&self, ctx: &Context<'_>, heater: usize, shares: &mut Vec<(usize, f64)>) {
        let Some(at) = shares.iter().position(|(place, _)| *place == heater) else { return };
        let whole = shares.remove(at).1;
        let state = |place: usize| ctx.seen(&ctx.home.components[place].id);
        let weighed = |place: usize, weight: f64| match state(place) {
            Some(Seen::Off | Seen::Tripped) => weight * SEEN_FACTOR,
            Some(Seen::On) => weight / SEEN_FACTOR,
            _ => weight,
        };
        let mut parts: Vec<(usize, f64)> = vec![(heater, ITSELF)];
        let valves = [(self.gas, GAS), (self.inlet, INLET)];
        parts.extend(
            valves
                .iter()
                .filter_map(|&(valve, weight)| valve.map(|place| (place, weighed(place, weight)))),
        );
        if let Some(found) = &self.power {
            let list = found.shares();
            let off = |&&(place, _): &&(usize, f64)| {
                matches!(state(place), Some(Seen::Off | Seen::Tripped))
            };
            let factor = if list.iter().any(|s| off(&s)) { SEEN_FACTOR } else { 1.0 };
            parts.extend(list.into_iter().map(|(place, share)| (place, share * POWER * factor)));
        }
        let total: f64 = parts.iter().map(|part| part.1).sum();
        for (place, part) in parts {
            add_share(shares, place, whole * part / total);
        }
        shares.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
    }

    /// What to look at once the heater is sure: its power, then its gas.
    fn next(&self, ctx: &Context<'_>) -> Option<NextCheck> {
        let power = self.power.as_ref().and_then(|found| found.next.clone());
        power.or_else(|| {
            let open = |&place: &usize| {
                ctx.seen(&ctx.home.components[place].id).is_none() && !ctx.is_forbidden(place)
            };
            self.gas.filter(open).map(|valve| {
                let seconds = ctx.walk_seconds(valve) + LOOK_SECONDS;
                look_at(ctx, "look-gas-valve", valve, seconds)
            })
        })
    }
}

fn heater_steps(ctx: &Context<'_>, draft: &mut Draft, heater: usize, lacks: &Lacks) {
    let at = |draft: &mut Draft, key: &str, act: Act, place: usize| {
        draft.go_to(ctx, key, act, place, LOOK_SECONDS);
    };
    at(draft, "step-suspect-heater", Act::Look, heater);
    if let Some(inlet) = lacks.inlet {
        suspect_step(ctx, draft, inlet);
    }
    if let Some(found) = &lacks.power {
        draft.caution(ctx, "caution-electric-shock", &[]);
        draft.advice(ctx, "step-heater-full-first", Act::Advice, &[]);
        // The heater itself has had its step.
        let others = found.shares().into_iter().map(|(place, _)| place).filter(|&p| p != heater);
        let told: Vec<usize> = others.take(POWER_TOLD).collect();
        suspect_steps(ctx, draft, found, &told, "prove-hot-comes");
        draft.call(Role::Electrician, "why-electrician");
    }
    if lacks.gas.is_some() || carries(ctx, heater, Medium::Gas) {
        draft.caution(ctx, "caution-gas-appliance", &[]);
    }
    if let Some(valve) = lacks.gas {
        at(draft, "step-suspect-gas-valve", Act::Look, valve);
        draft.call(Role::GasUtility, "why-gas-utility-heater");
    }
}
