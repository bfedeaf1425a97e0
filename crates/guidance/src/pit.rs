//! A sump or ejector pit that rises: its pump's power, its float, its check valve.

use quarterturn_home::{Kind, Medium, Net, Role};

use crate::blame::{Blame, LOOK_SECONDS};
use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::lines::next_below;
use crate::power::tell;
use crate::sewer::users_above;
use crate::water::names;
use crate::wet_hazards::warn_of_power;
use crate::{Act, Seen};

pub(crate) fn rises(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    warn_of_power(ctx, &mut draft);
    draft.caution(ctx, "caution-electric-shock", &[]);
    let Some(pit) = pit_of(ctx) else {
        draft.advice(ctx, "step-pit-stop-use", Act::StopUse, &[]);
        draft.advice(ctx, "step-pit-general", Act::Look, &[]);
        bail_out(ctx, &mut draft);
        draft.restore(ctx, "restore-pit", &[]);
        return draft;
    };
    draft.mapped = true;
    let kind = ctx.home.components[pit].kind;
    let users = users_above(ctx, ctx.guide.drain(), &[pit]);
    if !users.is_empty() {
        let list = names(ctx, &users);
        draft.advice(ctx, "step-stop-using-above", Act::StopUse, &[fill("list", &list)]);
    } else if kind == Kind::EjectorPit {
        draft.advice(ctx, "step-pit-stop-use", Act::StopUse, &[]);
    }
    if kind == Kind::EjectorPit {
        draft.caution(ctx, "caution-sewage", &[]);
        draft.restore(ctx, "restore-sewage-clean", &[]);
    }
    let pumps = ctx.impact.pumps_of(pit);
    if pumps.iter().chain([&pit]).any(|&place| ctx.is_forbidden(place)) {
        // It has run over: nobody reaches for the pump any more.
        draft.advice(ctx, "step-keep-out-of-water", Act::Advice, &[]);
        draft.advice(ctx, "step-power-in-water", Act::Call, &[]);
        draft.call(Role::ElectricityUtility, "why-cut-power-outside");
        draft.call(Role::Plumber, "why-plumber-pit");
        draft.restore(ctx, "restore-was-wet", &[]);
        draft.restore(ctx, "restore-pit", &[]);
        return draft;
    }
    let here: &[usize] = if pumps.is_empty() { &[pit] } else { pumps };
    for &pump in here {
        at(ctx, &mut draft, "step-look-pump", pump);
    }
    draft.advice(ctx, "step-free-float", Act::Advice, &[]);
    let runs = |&place: &usize| ctx.seen(&ctx.home.components[place].id) == Some(Seen::On);
    if !pumps.iter().any(runs) {
        power(ctx, &mut draft, here);
    }
    if let Some(check) = check_valve(ctx, pit, pumps) {
        at(ctx, &mut draft, "step-look-pit-check", check);
    } else {
        draft.advice(ctx, "step-look-pit-outlet", Act::Look, &[]);
    }
    bail_out(ctx, &mut draft);
    draft.restore(ctx, "restore-pit", &[]);
    draft
}

/// Why the pumps have no power, if the map tells; the pit itself may be what is wired.
fn power(ctx: &Context<'_>, draft: &mut Draft, dead: &[usize]) {
    let found = Blame::about(ctx, ctx.net(Net::Power), dead);
    if found.diagnoses.is_empty() {
        draft.advice(ctx, "step-pit-general", Act::Look, &[]);
    } else {
        tell(ctx, draft, &found, "prove-pump");
        draft.advice(ctx, "step-plug-pump-in", Act::Advice, &[]);
    }
}

fn bail_out(ctx: &Context<'_>, draft: &mut Draft) {
    draft.advice(ctx, "step-pit-bail", Act::Advice, &[]);
    // The plumber comes before the electrician whom the power suspects called.
    let others = std::mem::take(&mut draft.calls);
    draft.call(Role::Plumber, "why-plumber-pit");
    others.into_iter().for_each(|call| draft.call(call.role, call.why));
}

fn at(ctx: &Context<'_>, draft: &mut Draft, key: &str, place: usize) {
    draft.go_to(ctx, key, Act::Look, place, LOOK_SECONDS);
}

/// The pit that the spot is, or that its pump empties, or the only one there is.
fn pit_of(ctx: &Context<'_>) -> Option<usize> {
    let is_pit =
        |place: usize| matches!(ctx.home.components[place].kind, Kind::SumpPit | Kind::EjectorPit);
    let spot = ctx.spot_components();
    let all: Vec<usize> = (0..ctx.home.components.len()).filter(|&place| is_pit(place)).collect();
    let here = spot.iter().copied().find(|&place| is_pit(place));
    let emptied = || {
        let by_spot = |&pit: &usize| ctx.impact.pumps_of(pit).iter().any(|p| spot.contains(p));
        all.iter().copied().find(by_spot)
    };
    here.or_else(emptied).or_else(|| all.first().copied().filter(|_| all.len() == 1))
}

/// The check valve that keeps pumped water from running back.
fn check_valve(ctx: &Context<'_>, pit: usize, pumps: &[usize]) -> Option<usize> {
    let after = pumps.iter().chain([&pit]).flat_map(|&place| next_below(ctx, place, Medium::Waste));
    after.into_iter().find(|&place| ctx.home.components[place].kind == Kind::CheckValve)
}
