//! A lock, door, alarm or thermostat that does not answer: what works by hand, and whose account it
//! is.

use quarterturn_home::{Kind, Medium, Net, Role};

use crate::Act;
use crate::blame::{Blame, LOOK_SECONDS, suspects};
use crate::catalogue::fill;
use crate::context::Context;
use crate::day::in_force;
use crate::draft::Draft;
use crate::lines::carries;
use crate::power::suspect_steps;

/// Suspects in its power that get a step of their own.
const SUSPECTS_TOLD: usize = 2;

pub(crate) fn not_answering(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    let Some(&thing) = ctx.spot_components().first() else {
        draft.caution(ctx, "caution-locked-in", &[]);
        draft.advice(ctx, "step-by-hand", Act::Advice, &[]);
        draft.advice(ctx, "step-new-batteries", Act::Look, &[]);
        draft.advice(ctx, "step-is-there-power", Act::Look, &[]);
        account(ctx, &mut draft, None);
        return draft;
    };
    draft.mapped = true;
    let component = &ctx.home.components[thing];
    let at = |draft: &mut Draft, key: &str, act: Act| {
        draft.at(
            ctx,
            key,
            act,
            thing,
            ctx.walk_seconds(thing) + LOOK_SECONDS,
            &[
                fill("device", &ctx.name(thing)),
                fill("where", &ctx.where_sentence(thing)),
                fill("note", component.note.as_deref().unwrap_or_default()),
            ],
        );
    };
    match component.kind {
        Kind::SmokeAlarm => draft.caution(ctx, "caution-alarm-silent", &[]),
        Kind::Thermostat => draft.caution(ctx, "caution-no-heat", &[]),
        _ => {
            draft.caution(ctx, "caution-locked-in", &[]);
            draft.caution(ctx, "caution-heavy-door", &[]);
        }
    }
    if component.note.as_deref().is_some_and(|note| !note.trim().is_empty()) {
        at(&mut draft, "step-by-hand-note", Act::Look);
    }
    match component.kind {
        Kind::SmokeAlarm => at(&mut draft, "step-alarm-test", Act::Look),
        Kind::Thermostat => at(&mut draft, "step-thermostat-by-hand", Act::Look),
        _ => at(&mut draft, "step-by-hand-at", Act::Look),
    }
    if !ctx.is_forbidden(thing) {
        draft.advice(ctx, "step-new-batteries", Act::Look, &[]);
    }
    if carries(ctx, thing, Medium::Power) {
        power(ctx, &mut draft, thing);
    } else {
        draft.advice(ctx, "step-is-there-power", Act::Look, &[]);
    }
    account(ctx, &mut draft, Some(thing));
    draft
}

fn power(ctx: &Context<'_>, draft: &mut Draft, thing: usize) {
    let found = Blame::about(ctx, ctx.net(Net::Power), &[thing]);
    if found.diagnoses.is_empty() {
        draft.advice(ctx, "step-is-there-power", Act::Look, &[]);
        return;
    }
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.suspects = suspects(ctx, &found.shares());
    let others = found.shares().into_iter().map(|(place, _)| place).filter(|&p| p != thing);
    let told: Vec<usize> = others.take(SUSPECTS_TOLD).collect();
    suspect_steps(ctx, draft, &found, &told, "prove-answers");
    draft.next_check = found.next;
    draft.call(Role::Electrician, "why-electrician");
    draft.call(Role::ElectricityUtility, "why-electricity-utility");
}

/// Whose account it is, who gave a warranty, and who is called in which order.
fn account(ctx: &Context<'_>, draft: &mut Draft, thing: Option<usize>) {
    draft.advice(ctx, "step-account", Act::Advice, &[]);
    let electrical = std::mem::take(&mut draft.calls);
    let component = thing.map(|place| &ctx.home.components[place]);
    let owner = component.and_then(|c| ctx.home.contact(c.owner.as_deref()?));
    let warranty = component.and_then(|c| {
        let covers = |w: &&quarterturn_home::Warranty| {
            w.covers.contains(&c.id) && ctx.today().is_none_or(|today| in_force(w, today))
        };
        ctx.home.contact(ctx.home.warranties.iter().find(covers)?.contact.as_deref()?)
    });
    if let Some(role) = warranty.and_then(|contact| contact.role) {
        draft.call(role, "why-warranty");
    }
    if let Some(role) = owner.and_then(|contact| contact.role) {
        draft.call(role, "why-account");
    }
    if owner.is_none() && warranty.is_none() {
        draft.call(Role::Builder, "why-account");
    }
    if component.is_some_and(|c| c.kind == Kind::Thermostat) {
        draft.call(Role::Cooling, "why-cooling-thermostat");
    }
    electrical.into_iter().for_each(|call| draft.call(call.role, call.why));
    draft.restore(ctx, "restore-answers", &[]);
}
