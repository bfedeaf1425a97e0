//! What may be live where it must not: a shock or a tingle, water near something electrical.

use quarterturn_home::{Kind, Net, Role};

use crate::blame::{LOOK_SECONDS, look_at};
use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::power::cut_power;
use crate::water::{names, whole_house};
use crate::wet_hazards::warn_of_power;
use crate::{Act, By, NextCheck};

pub(crate) fn shock(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-shocked-person", &[]);
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.advice(ctx, "step-shock-hands-off", Act::Advice, &[]);
    if !cut_power(ctx, &mut draft, "prove-dead") {
        draft.advice(ctx, "step-shock-utility", Act::Call, &[]);
    }
    draft.advice(ctx, "step-shock-breathing", Act::Call, &[]);
    draft.advice(ctx, "step-shock-doctor", Act::Advice, &[]);
    draft.advice(ctx, "step-tingle", Act::Advice, &[]);
    draft.call(Role::Electrician, "why-electrician-sparks");
    draft.call(Role::ElectricityUtility, "why-electricity-utility-cut");
    draft.restore(ctx, "restore-sparks", &[]);
    draft
}

pub(crate) fn water_near_power(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    warn_of_power(ctx, &mut draft);
    draft.advice(ctx, "step-keep-out-of-water", Act::Advice, &[]);
    let mut cut = Draft::default();
    cut.advice(ctx, "step-dry-way-only", Act::Look, &[]);
    let before = draft.steps.len();
    if cut_power(ctx, &mut draft, "prove-dead") {
        draft.steps.splice(before..before, cut.steps);
    } else {
        draft.advice(ctx, "step-power-in-water", Act::Call, &[]);
    }
    draft.next_check = dry_at_the_panel(ctx, &draft);
    stop_the_water(ctx, &mut draft);
    draft.advice(ctx, "step-was-wet-stays-off", Act::Advice, &[]);
    draft.call(Role::ElectricityUtility, "why-cut-power-outside");
    draft.call(Role::Electrician, "why-electrician-wet");
    draft.call(Role::Plumber, "why-plumber-leak");
    draft.restore(ctx, "restore-was-wet", &[]);
    draft
}

/// The one question that changes the answer: is it dry where the power would be cut?
fn dry_at_the_panel(ctx: &Context<'_>, draft: &Draft) -> Option<NextCheck> {
    let at = *draft.used.as_ref()?.devices.first()?;
    let told = ctx.space_of(at).is_some_and(|space| ctx.seen(space).is_some());
    if told || ctx.seen(&ctx.home.components[at].id).is_some() {
        return None;
    }
    let seconds = ctx.walk_seconds(at) + LOOK_SECONDS;
    Some(look_at(ctx, "look-dry-way", at, seconds))
}

/// The water itself, where it can be stopped with dry feet.
fn stop_the_water(ctx: &Context<'_>, draft: &mut Draft) {
    let not_the_sprinklers = |kind: Kind| kind.is_served() && kind != Kind::SprinklerRiser;
    let found = whole_house(ctx, ctx.net(Net::Water), not_the_sprinklers);
    match found.iter().find(|way| way.by == By::Anyone && !way.cuts_sprinklers(ctx)) {
        Some(way) => {
            let list = names(ctx, &way.devices);
            draft.advice(ctx, "step-stop-water-too", Act::Advice, &[fill("devices", &list)]);
        }
        None => draft.advice(ctx, "step-stop-water-general", Act::Advice, &[]),
    }
    let is_pump = |place: &usize| ctx.home.components[*place].kind == Kind::SumpPump;
    if draft.used.as_ref().is_some_and(|way| way.lost.off.iter().any(is_pump)) {
        draft.advice(ctx, "step-pump-stops-too", Act::Advice, &[]);
    }
}
