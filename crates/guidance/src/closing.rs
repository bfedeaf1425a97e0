//! The steps that shut valves, with their proof, what goes off, and the heater that must not run dry.

use quarterturn_home::{Kind, Medium, Net, Role};
use quarterturn_network::{HomeNet, plan};

use crate::catalogue::{count, fill};
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::{Way, rounded, way, ways};
use crate::lines::carries;
use crate::plan::StagedPlan;
use crate::water::MOST_NAMED;
use crate::{Act, By};

/// The steps of a plan, which may shut something far-reaching first and open it again.
///
/// Returns what is shut in the end.
pub(crate) fn in_stages(
    ctx: &Context<'_>,
    draft: &mut Draft,
    net: &HomeNet,
    plan: StagedPlan,
) -> Way {
    let kept = way(ctx, net, &plan.shut);
    let last_shut = plan.acts.iter().rposition(|staged| matches!(staged.act, plan::Act::Shut(_)));
    for (number, staged) in plan.acts.iter().enumerate() {
        match staged.act {
            plan::Act::Shut(_) => close(ctx, draft, "step-close", staged.place, staged.seconds),
            plan::Act::Open(_) => open_again(ctx, draft, staged.place, staged.seconds),
        }
        if Some(number) == last_shut {
            prove_dry(ctx, draft, &kept);
        }
    }
    goes_off(ctx, draft, &kept);
    heater_off(ctx, draft, &kept);
    // The rules look at all that is shut on the way, if only for a minute.
    let ever: Vec<usize> = plan
        .acts
        .iter()
        .filter(|staged| matches!(staged.act, plan::Act::Shut(_)))
        .map(|staged| staged.place)
        .collect();
    draft.used = Some(way(ctx, net, &ever));
    draft.choices = plan.choices;
    kept
}

fn open_again(ctx: &Context<'_>, draft: &mut Draft, place: usize, seconds: f64) {
    draft.at(
        ctx,
        "step-open-again",
        Act::Open,
        place,
        seconds,
        &[fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))],
    );
    draft.prove(ctx.catalogue.text("prove-stays-dry"));
}

/// One step a device, the last with the proof.
pub(crate) fn close_all(ctx: &Context<'_>, draft: &mut Draft, way: &Way, key: &str) {
    draft.used = Some(way.clone());
    for (&place, &seconds) in way.devices.iter().zip(&way.seconds) {
        close(ctx, draft, key, place, seconds);
    }
    prove_dry(ctx, draft, way);
    goes_off(ctx, draft, way);
}

/// How to see that a way is shut, at the last step.
fn prove_dry(ctx: &Context<'_>, draft: &mut Draft, way: &Way) {
    let proof = proof_tap(ctx, way);
    draft.prove(match proof {
        Some(tap) => ctx.catalogue.fill("prove-tap", &[fill("tap", &ctx.name(tap))]),
        None => ctx.catalogue.text("prove-water-generic"),
    });
}

fn goes_off(ctx: &Context<'_>, draft: &mut Draft, way: &Way) {
    let off: Vec<String> =
        way.lost.off.iter().map(|&place| ctx.name(place)).take(MOST_NAMED).collect();
    let rest = way.lost.off.len().saturating_sub(off.len());
    if !off.is_empty() {
        let list = ctx.catalogue.list(&off);
        #[expect(clippy::cast_precision_loss, reason = "a house has few components")]
        let more = rest as f64;
        draft.advice(
            ctx,
            "step-goes-off",
            Act::Advice,
            &[fill("list", &list), count("more", more)],
        );
    }
}

pub(crate) fn close(ctx: &Context<'_>, draft: &mut Draft, key: &str, place: usize, seconds: f64) {
    let component = &ctx.home.components[place];
    let tool = component.operates.as_ref().and_then(|o| o.tool.clone());
    let tool = tool
        .map_or_else(String::new, |tool| ctx.catalogue.fill("with-tool", &[fill("tool", &tool)]));
    draft.at(
        ctx,
        key,
        Act::Close,
        place,
        seconds,
        &[
            fill("device", &ctx.name(place)),
            fill("where", &ctx.where_sentence(place)),
            fill("how", &ctx.how_to_close(place)),
            fill("tool", &tool),
            count("seconds", rounded(seconds, 1.0)),
        ],
    );
}

/// A tap that runs dry when the way is shut: the lowest of those that go off, but not the spot.
fn proof_tap(ctx: &Context<'_>, way: &Way) -> Option<usize> {
    let spot = ctx.spot_components();
    way.lost
        .off
        .iter()
        .copied()
        .filter(|place| !spot.contains(place))
        .filter(|&place| is_ours(ctx, place))
        .filter(|&place| {
            matches!(
                ctx.home.components[place].kind,
                Kind::Tap | Kind::Basin | Kind::Sink | Kind::Bath | Kind::HoseBibb | Kind::Shower
            )
        })
        .min_by(|&a, &b| {
            let height =
                |place: usize| ctx.home.height_m(&ctx.home.components[place]).unwrap_or(f64::MAX);
            height(a).total_cmp(&height(b)).then(a.cmp(&b))
        })
}

/// True if nobody else is told to own it: one does not ring a neighbour to prove a valve.
fn is_ours(ctx: &Context<'_>, place: usize) -> bool {
    let owner = ctx.home.components[place].owner.as_deref();
    let contact = owner.and_then(|id| ctx.home.contact(id));
    owner.is_none() || contact.is_some_and(|contact| contact.role == Some(Role::Owner))
}

/// A heater that gets no water any more must not go on heating.
pub(crate) fn heater_off(ctx: &Context<'_>, draft: &mut Draft, way: &Way) {
    for &place in &way.lost.off {
        if ctx.home.components[place].kind != Kind::WaterHeater {
            continue;
        }
        let heater = ctx.name(place);
        let at_heater = |draft: &mut Draft, key: &str| {
            let seconds = ctx.walk_seconds(place);
            draft.at(ctx, key, Act::Advice, place, seconds, &[fill("heater", &heater)]);
        };
        if carries(ctx, place, Medium::Gas) {
            at_heater(draft, "step-heater-gas-off");
        } else if carries(ctx, place, Medium::Power) {
            let power = ctx.net(Net::Power);
            let best = ways(ctx, power, &[power.body[place]]);
            let Some(best) = best.list.into_iter().find(|way| way.by == By::Anyone) else {
                continue;
            };
            for (&breaker, &seconds) in best.devices.iter().zip(&best.seconds) {
                draft.at(
                    ctx,
                    "step-heater-power-off",
                    Act::SwitchOff,
                    breaker,
                    seconds,
                    &[
                        fill("heater", &heater),
                        fill("device", &ctx.name(breaker)),
                        fill("where", &ctx.where_sentence(breaker)),
                    ],
                );
            }
        } else {
            at_heater(draft, "step-heater-off");
        }
    }
}
