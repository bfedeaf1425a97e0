//! No water: is it ours, or the street's, and what stands in its way.

use quarterturn_home::{Kind, Medium, Net, OperableBy, Role};

use crate::blame::{Blame, LOOK_SECONDS, suspects, warn_of_loss};
use crate::catalogue::fill;
use crate::contacts::contact_for;
use crate::context::Context;
use crate::draft::Draft;
use crate::lines::carries;
use crate::power::suspect_steps;
use crate::{Act, By, Trouble};

/// Suspects that get a step of their own.
const SUSPECTS_TOLD: usize = 5;
/// Of what a well that brings nothing is blamed for, the part that falls to the power of its pump.
/// Common practice, no source.
const PUMP_POWER_SHARE: f64 = 0.6;

pub(crate) fn no_water(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Water), ..Draft::default() };
    draft.caution(ctx, "caution-taps-left-open", &[]);
    draft.caution(ctx, "caution-shut-for-a-reason", &[]);
    draft.advice(ctx, "step-look-for-a-break", Act::Look, &[]);
    ask_neighbors(ctx, &mut draft);
    let net = ctx.net(Net::Water);
    let found = Blame::of(ctx, net, &[]);
    if found.diagnoses.is_empty() {
        draft.advice(ctx, "step-no-water-general", Act::Look, &[]);
        draft.advice(ctx, "step-is-the-main-open", Act::Look, &[]);
        draft.call(Role::WaterUtility, "why-water-utility-outage");
        draft.call(Role::Plumber, "why-plumber-no-water");
        return draft;
    }
    draft.mapped = true;
    if found.disbelieved > 0 {
        draft.advice(ctx, "step-reports-contradict", Act::Look, &[]);
    }
    let mut shares = found.shares();
    for &(place, _) in shares.iter().take(SUSPECTS_TOLD) {
        suspect_step(ctx, &mut draft, place);
    }
    draft.next_check = found.next;
    if let Some((&(cause, _), _)) = shares.split_first() {
        warn_of_loss(ctx, &mut draft, cause);
        heater_stays_off(ctx, &mut draft, cause);
    }
    wells(ctx, &mut draft, &mut shares);
    draft.suspects = suspects(ctx, &shares);
    let theirs: f64 = shares.iter().filter(|(place, _)| is_theirs(ctx, *place)).map(|s| s.1).sum();
    let mut calls =
        [(Role::Plumber, "why-plumber-no-water"), (Role::WaterUtility, "why-water-utility-outage")];
    if theirs > 0.5 {
        calls.reverse();
    }
    for (role, why) in calls {
        draft.call(role, why);
    }
    draft.restore(ctx, "restore-water-slowly", &[]);
    draft.restore(ctx, "restore-run-clear", &[]);
    draft
}

/// "Ours or the street's?" is a question for the people next door.
fn ask_neighbors(ctx: &Context<'_>, draft: &mut Draft) {
    let known = contact_for(ctx.home, Role::Neighbor).and_then(|c| Some((c, c.phone.as_deref()?)));
    match known {
        Some((contact, phone)) => draft.advice(
            ctx,
            "step-ask-neighbor-named",
            Act::Look,
            &[fill("name", &contact.name), fill("phone", phone)],
        ),
        None => draft.advice(ctx, "step-ask-neighbors", Act::Look, &[]),
    }
}

/// What to do about one suspect.
pub(crate) fn suspect_step(ctx: &Context<'_>, draft: &mut Draft, place: usize) {
    let component = &ctx.home.components[place];
    let hot = ctx.question.trouble == Trouble::NoHotWater;
    let (key, act) = match component.kind {
        Kind::IsolatingValve => match ctx.by(place) {
            By::Anyone => ("step-suspect-valve", Act::Look),
            By::Licensed | By::Utility => ("step-suspect-their-valve", Act::Call),
        },
        Kind::WaterMain | Kind::WaterMeter => ("step-suspect-street", Act::Call),
        Kind::Well => ("step-suspect-well", Act::Look),
        Kind::PressureReducingValve | Kind::BackflowPreventer | Kind::CheckValve => {
            ("step-suspect-regulator", Act::Advice)
        }
        Kind::Softener => ("step-suspect-softener", Act::Look),
        Kind::WaterHeater => ("step-suspect-heater", Act::Look),
        kind if hot && kind.is_water_fixture() => ("step-suspect-mixer", Act::Advice),
        Kind::Toilet => ("step-suspect-toilet", Act::Look),
        kind if kind.is_water_fixture() => ("step-suspect-tap", Act::Look),
        _ => ("step-suspect-pipe", Act::Advice),
    };
    draft.go_to(ctx, key, act, place, LOOK_SECONDS);
    // What only a plumber may touch is not proven by the person who reads this.
    if act != Act::Advice {
        draft.prove(ctx.catalogue.text(if hot { "prove-hot-tap" } else { "prove-tap-runs" }));
    }
}

/// A well brings nothing while its pump has no power: its share of the blame is parted.
fn wells(ctx: &Context<'_>, draft: &mut Draft, shares: &mut Vec<(usize, f64)>) {
    let powered = |place: usize| {
        ctx.home.components[place].kind == Kind::Well && carries(ctx, place, Medium::Power)
    };
    let Some(at) = shares.iter().position(|&(place, _)| powered(place)) else { return };
    let (well, share) = shares[at];
    let found = Blame::about(ctx, ctx.net(Net::Power), &[well]);
    if found.diagnoses.is_empty() {
        return;
    }
    draft.caution(ctx, "caution-electric-shock", &[]);
    let others = found.shares().into_iter().map(|(place, _)| place).filter(|&p| p != well);
    let told: Vec<usize> = others.take(SUSPECTS_TOLD).collect();
    suspect_steps(ctx, draft, &found, &told, "prove-tap-runs");
    draft.call(Role::Electrician, "why-electrician");
    shares[at].1 = share * (1.0 - PUMP_POWER_SHARE);
    for (place, part) in found.shares() {
        add_share(shares, place, part * share * PUMP_POWER_SHARE);
    }
    shares.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
}

/// Adds to a component's share of the blame.
pub(crate) fn add_share(shares: &mut Vec<(usize, f64)>, place: usize, share: f64) {
    match shares.iter_mut().find(|(known, _)| *known == place) {
        Some((_, known)) => *known += share,
        None => shares.push((place, share)),
    }
}

/// A heater that gets no water while this is the cause must not go on heating.
fn heater_stays_off(ctx: &Context<'_>, draft: &mut Draft, cause: usize) {
    let lost = ctx.impact.lost(&ctx.arriving, |p| ctx.is_shut(p) || p == cause);
    let dry: Vec<String> = lost
        .off
        .iter()
        .filter(|&&place| ctx.home.components[place].kind == Kind::WaterHeater)
        .map(|&place| ctx.name(place))
        .collect();
    if !dry.is_empty() {
        let list = ctx.catalogue.list(&dry);
        draft.caution(ctx, "caution-heater-dry", &[fill("heater", &list)]);
        draft.restore(ctx, "restore-heater-full", &[]);
    }
}

/// True for what is the utility's to mend.
fn is_theirs(ctx: &Context<'_>, place: usize) -> bool {
    let component = &ctx.home.components[place];
    let owner = component.owner.as_deref().and_then(|id| ctx.home.contact(id));
    component.kind == Kind::WaterMain
        || component.operable_by == OperableBy::Utility
        || owner.is_some_and(|contact| contact.role == Some(Role::WaterUtility))
}
