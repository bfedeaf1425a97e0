//! A light that stays dark; a room or half of a house without power.

use quarterturn_home::{Kind, Net};

use crate::blame::{Blame, can_be_tried, warn_of_loss};
use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::power::{loads_below, main_switch, tell, unknown_circuit};
use crate::water::names;
use crate::{Act, Spot};

/// Most outlets and lights of a dead area that are reasoned about.
const MOST_DEAD: usize = 12;

pub(crate) fn light(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.caution(ctx, "caution-ladder", &[]);
    let found = Blame::of(ctx, ctx.net(Net::Power), &[]);
    if found.diagnoses.is_empty() {
        draft.advice(ctx, "step-change-lamp", Act::Look, &[]);
        unknown_circuit(ctx, &mut draft);
        return draft;
    }
    draft.mapped = true;
    tell(ctx, &mut draft, &found, "prove-light");
    draft
}

pub(crate) fn area(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.caution(ctx, "caution-lost-neutral", &[]);
    let net = ctx.net(Net::Power);
    // Some too bright and some too dim is the one case in which hurrying to the main saves things.
    match main_switch(ctx, net, &[]) {
        Some(way) => {
            let list = names(ctx, &way.devices);
            draft.advice(ctx, "step-lost-neutral", Act::Advice, &[fill("devices", &list)]);
        }
        None => draft.advice(ctx, "step-lost-neutral-call", Act::Call, &[]),
    }
    draft.advice(ctx, "step-neighbors-dark", Act::Look, &[]);
    let found = match below_the_spot(ctx) {
        Some(dead) => Blame::about(ctx, net, &dead),
        None => Blame::of(ctx, net, &[]),
    };
    let Some(&(cause, _)) = found.shares().first() else {
        unknown_circuit(ctx, &mut draft);
        draft.call(quarterturn_home::Role::ElectricityUtility, "why-electricity-utility");
        return draft;
    };
    draft.mapped = true;
    warn_of_loss(ctx, &mut draft, cause);
    tell(ctx, &mut draft, &found, "prove-live");
    draft.restore(ctx, "restore-after-outage", &[]);
    draft
}

/// What people would try below a panel or breaker; `None` for any other spot.
fn below_the_spot(ctx: &Context<'_>) -> Option<Vec<usize>> {
    let Spot::Component(id) = &ctx.question.at else { return None };
    let place = ctx.places.of(id)?;
    let kind = ctx.home.components[place].kind;
    if !kind.is_power_distribution() {
        return None;
    }
    let mut dead: Vec<usize> = loads_below(ctx, place);
    dead.retain(|&load| can_be_tried(Net::Power, ctx.home.components[load].kind));
    // Spread over all of them, so that no one circuit stands for a whole panel.
    let every = dead.len().div_ceil(MOST_DEAD).max(1);
    dead = dead.into_iter().step_by(every).collect();
    // A breaker is a spot of its own; what is fed through a panel tells more than the panel.
    if dead.is_empty() || kind != Kind::Panel {
        dead.push(place);
    }
    Some(dead)
}
