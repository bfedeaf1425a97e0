//! A toilet that runs over: its water first, then its drain.

use quarterturn_home::{Kind, Net, Role};
use quarterturn_network::Node;

use crate::Act;
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::ways;
use crate::sewer::find_blockage;
use crate::water::{cut_off, main_as_general_advice};
use crate::wet_hazards::warn_of_power;

pub(crate) fn runs_over(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Water), ..Draft::default() };
    warn_of_power(ctx, &mut draft);
    draft.advice(ctx, "step-no-flush", Act::StopUse, &[]);
    draft.advice(ctx, "step-lift-float", Act::Advice, &[]);
    let net = ctx.net(Net::Water);
    let targets: Vec<Node> = toilets(ctx)
        .into_iter()
        .filter(|&place| net.member[place])
        .map(|place| net.body[place])
        .collect();
    let found = ways(ctx, net, &targets);
    if found.fed {
        draft.mapped = true;
        cut_off(ctx, &mut draft, net, &targets, found);
        if let Some(last) = draft.steps.iter_mut().rfind(|s| s.step.act == Act::Close) {
            last.step.prove = Some(ctx.catalogue.text("prove-toilet"));
        }
    } else {
        draft.advice(ctx, "step-toilet-stop-general", Act::Advice, &[]);
        main_as_general_advice(ctx, &mut draft, net);
        draft.calls.clear();
    }
    draft.advice(ctx, "step-plunge", Act::Advice, &[]);
    if !find_blockage(ctx, &mut draft) {
        draft.call(Role::Plumber, "why-plumber-drain");
        draft.call(Role::SewerUtility, "why-sewer-utility");
    }
    draft.restore(ctx, "restore-toilet", &[]);
    draft
}

/// The toilets that the spot stands for: all of a room's. Whatever else was asked for is taken for
/// one.
fn toilets(ctx: &Context<'_>) -> Vec<usize> {
    let spot = ctx.spot_components();
    let is_toilet = |place: &usize| ctx.home.components[*place].kind == Kind::Toilet;
    let toilets: Vec<usize> = spot.iter().copied().filter(is_toilet).collect();
    if toilets.is_empty() { spot } else { toilets }
}
