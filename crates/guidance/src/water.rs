//! Leaks, and water from above.

use quarterturn_home::{Kind, Net, Role};
use quarterturn_network::{HomeNet, Node};

use crate::branches::in_order;
use crate::catalogue::{count, fill};
use crate::closing::{close_all, heater_off, in_stages};
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::{Way, Ways, ways};
use crate::plan::staged;
use crate::standing;
use crate::wet_hazards::{go_down, warn_of_heat, warn_of_power};
use crate::{Act, By, Spot};

/// Most names listed in one sentence.
pub(crate) const MOST_NAMED: usize = 6;

pub(crate) fn leak(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Water), ..Draft::default() };
    let net = ctx.net(Net::Water);
    let targets = ctx.targets(net);
    let found = ways(ctx, net, &targets);
    warn_of_power(ctx, &mut draft);
    if targets.is_empty() {
        leak_without_feed(ctx, &mut draft, net);
        return draft;
    }
    draft.mapped = true;
    warn_of_heat(ctx, &mut draft);
    if !found.fed {
        draft.advice(ctx, "step-nothing-feeds-it", Act::Advice, &[]);
        main_as_general_advice(ctx, &mut draft, net);
        return draft;
    }
    let rest_litres = cut_off(ctx, &mut draft, net, &targets, found);
    go_down(ctx, &mut draft);
    finish(ctx, &mut draft, rest_litres);
    draft
}

pub(crate) fn water_from_above(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Water), ..Draft::default() };
    let net = ctx.net(Net::Water);
    let above = above_or_inside(ctx, net);
    let targets: Vec<Node> = above.iter().map(|&place| net.body[place]).collect();
    warn_of_power(ctx, &mut draft);
    draft.caution(ctx, "caution-ceiling", &[]);
    if targets.is_empty() {
        main_as_general_advice(ctx, &mut draft, net);
        return draft;
    }
    draft.mapped = true;
    let found = ways(ctx, net, &targets);
    if !found.fed {
        draft.advice(ctx, "step-nothing-feeds-it", Act::Advice, &[]);
        main_as_general_advice(ctx, &mut draft, net);
        return draft;
    }
    let rest_litres = cut_off(ctx, &mut draft, net, &targets, found);
    go_down(ctx, &mut draft);
    draft.advice(ctx, "step-catch-water-above", Act::Advice, &[]);
    let named = |wanted: &dyn Fn(Kind) -> bool| -> Vec<String> {
        above
            .iter()
            .filter(|&&place| wanted(ctx.home.components[place].kind) && !ctx.is_forbidden(place))
            .map(|&place| ctx.name(place))
            .take(MOST_NAMED)
            .collect()
    };
    let served = named(&Kind::is_served);
    if !served.is_empty() {
        let list = ctx.catalogue.list(&served);
        draft.advice(ctx, "step-find-branch", Act::Look, &[fill("list", &list)]);
    }
    open_branches(ctx, &mut draft, net, &targets);
    finish(ctx, &mut draft, rest_litres);
    draft
}

/// How to find the leaking branch: all branches shut, the main open again, then one after the other.
fn open_branches(ctx: &Context<'_>, draft: &mut Draft, net: &HomeNet, targets: &[Node]) {
    let shut = draft.used.as_ref().map_or_else(Vec::new, |way| way.devices.clone());
    let branches = in_order(ctx, net, targets, &shut);
    if branches.is_empty() {
        // What is shut already are branches themselves, where there is more than one.
        if shut.len() >= 2 {
            let list = all_names(ctx, &shut);
            draft.advice(ctx, "step-one-branch-at-a-time", Act::Advice, &[fill("list", &list)]);
        }
        return;
    }
    if shut.is_empty() {
        return;
    }
    let (main, list) = (names(ctx, &shut), all_names(ctx, &branches));
    draft.advice(ctx, "step-shut-branches", Act::Advice, &[fill("list", &list)]);
    draft.advice(ctx, "step-main-for-test", Act::Advice, &[fill("devices", &main)]);
    draft.advice(ctx, "step-one-branch-at-a-time", Act::Advice, &[fill("list", &list)]);
}

fn all_names(ctx: &Context<'_>, places: &[usize]) -> String {
    let list: Vec<String> = places.iter().map(|&place| ctx.name(place)).collect();
    ctx.catalogue.list(&list)
}

/// What everyone is told who cuts water off: how it goes on when it does not hold, what to do
/// with the water that is still there, whom to call.
fn finish(ctx: &Context<'_>, draft: &mut Draft, rest_litres: Option<f64>) {
    // Less than a glass is not worth a figure.
    match rest_litres.filter(|litres| *litres >= 0.5) {
        Some(litres) => {
            let (unit, amount) = ctx.amount(litres);
            draft.advice(
                ctx,
                "step-catch-rest-amount",
                Act::Advice,
                &[fill("unit", unit), count("amount", amount)],
            );
        }
        None => draft.advice(ctx, "step-catch-rest", Act::Advice, &[]),
    }
    draft.call(Role::Plumber, "why-plumber-leak");
    draft.call(Role::WaterUtility, "why-water-utility");
    draft.restore(ctx, "restore-find-cause", &[]);
}

/// The steps that cut the targets off, and what if they don't.
///
/// Returns the litres that may still run out once they are done.
pub(crate) fn cut_off(
    ctx: &Context<'_>,
    draft: &mut Draft,
    net: &HomeNet,
    targets: &[Node],
    found: Ways,
) -> Option<f64> {
    draft.ways = found.list;
    let mut kept = None;
    let first = draft.ways.iter().find(|way| way.by == By::Anyone).cloned();
    if let Some(first) = &first {
        match staged(ctx, net, targets, &draft.ways) {
            Some(plan) => kept = Some(in_stages(ctx, draft, net, plan)),
            None => {
                close_all(ctx, draft, first, "step-close");
                heater_off(ctx, draft, first);
                kept = Some(first.clone());
            }
        }
    } else if let Some(dry) = without_devices(ctx, net, targets) {
        // All that could stop it stands among what may leak. It is worth a try all the same: more
        // likely something else leaks than the valve.
        let list = names(ctx, &dry.devices);
        draft.advice(ctx, "step-if-valve-is-dry", Act::Look, &[fill("devices", &list)]);
        close_all(ctx, draft, &dry, "step-close");
        heater_off(ctx, draft, &dry);
        kept = Some(dry);
    }
    // What helps when any one of the first devices fails shares none of them, if there is such a way.
    let used = first.as_ref().map_or(&[][..], |way| &way.devices);
    let others = || draft.ways.iter().filter(|w| Some(*w) != first.as_ref() && w.by != By::Utility);
    let next = others()
        .find(|way| !way.devices.iter().any(|device| used.contains(device)))
        .or_else(|| others().next())
        .cloned();
    if let Some(next) = next {
        let list = names(ctx, &next.devices);
        let key = if next.by == By::Anyone { "step-if-not-close" } else { "step-if-not-licensed" };
        draft.advice(ctx, key, Act::Advice, &[fill("devices", &list)]);
    }
    let theirs = draft.ways.iter().find(|way| way.by == By::Utility).cloned();
    match theirs {
        Some(way) => {
            let key =
                if draft.steps.is_empty() { "step-only-utility" } else { "step-last-utility" };
            let list = names(ctx, &way.devices);
            draft.advice(ctx, key, Act::Call, &[fill("devices", &list)]);
            draft.call(Role::WaterUtility, "why-water-utility-close");
        }
        None if draft.steps.is_empty() => {
            draft.advice(ctx, "step-nothing-isolates", Act::Call, &[]);
            draft.call(Role::WaterUtility, "why-water-utility-close");
        }
        None => {}
    }
    kept.map(|way| standing::litres(ctx, net, targets, &way).high)
}

/// The best way when the leak is at none of the devices among the targets.
fn without_devices(ctx: &Context<'_>, net: &HomeNet, targets: &[Node]) -> Option<Way> {
    let plain: Vec<Node> =
        targets.iter().copied().filter(|&node| !net.network.is_device(node)).collect();
    if plain.len() == targets.len() || plain.is_empty() {
        return None;
    }
    ways(ctx, net, &plain).list.into_iter().find(|way| way.by == By::Anyone)
}

/// A leak at something that no water line of the map leads to.
fn leak_without_feed(ctx: &Context<'_>, draft: &mut Draft, net: &HomeNet) {
    let waste: Vec<usize> = ctx
        .spot_components()
        .into_iter()
        .filter(|&place| {
            let id = &ctx.home.components[place].id;
            ctx.home
                .connections
                .iter()
                .any(|l| l.carries.net() == Net::Waste && (&l.from == id || &l.to == id))
        })
        .collect();
    let users = crate::sewer::users_above(ctx, ctx.guide.drain(), &waste);
    if !users.is_empty() && !matches!(ctx.question.at, Spot::Space(_)) {
        draft.mapped = true;
        draft.net = None;
        let list = names(ctx, &users);
        draft.advice(ctx, "step-stop-using-above", Act::StopUse, &[fill("list", &list)]);
        draft.advice(ctx, "step-catch-rest", Act::Advice, &[]);
        draft.call(Role::Plumber, "why-plumber-leak");
        draft.restore(ctx, "restore-drain-test", &[]);
        return;
    }
    main_as_general_advice(ctx, draft, net);
}

/// Where the map has no answer: shut everything off, by the best device that it has for that.
pub(crate) fn main_as_general_advice(ctx: &Context<'_>, draft: &mut Draft, net: &HomeNet) {
    let found = whole_house(ctx, net, Kind::is_served);
    let main = found.iter().find(|way| way.by == By::Anyone);
    let theirs = found.iter().find(|way| way.by == By::Utility);
    if let Some(main) = main {
        close_all(ctx, draft, main, "step-close-general");
    } else if let Some(theirs) = theirs {
        let list = names(ctx, &theirs.devices);
        draft.advice(ctx, "step-only-utility", Act::Call, &[fill("devices", &list)]);
        draft.call(Role::WaterUtility, "why-water-utility-close");
    } else {
        draft.advice(ctx, "step-find-main", Act::Advice, &[]);
    }
    draft.mapped = false;
    draft.advice(ctx, "step-call-utility-water", Act::Call, &[]);
    finish(ctx, draft, None);
}

/// The ways to cut off all of the house that `wanted` holds for.
pub(crate) fn whole_house(
    ctx: &Context<'_>,
    net: &HomeNet,
    wanted: impl Fn(Kind) -> bool,
) -> Vec<Way> {
    let everything: Vec<Node> = (0..ctx.home.components.len())
        .filter(|&place| {
            let kind = ctx.home.components[place].kind;
            net.member[place] && wanted(kind) && !kind.is_source(Net::Water)
        })
        .map(|place| net.body[place])
        .filter(|&node| net.network.is_fed(&[node], |_| false))
        .collect();
    ways(ctx, net, &everything).list
}

/// All that could be above a space or inside it.
fn above_or_inside(ctx: &Context<'_>, net: &HomeNet) -> Vec<usize> {
    if ctx.question.at == Spot::Home {
        return ctx.spot_components().into_iter().filter(|&place| net.member[place]).collect();
    }
    let Some(space) = ctx.spot_space().and_then(|id| ctx.home.space(id)) else { return Vec::new() };
    let level_of = |id: Option<&str>| id.and_then(|id| ctx.home.level(id)).map(|l| l.elevation_m);
    let here = level_of(space.level.as_deref());
    (0..ctx.home.components.len())
        .filter(|&place| net.member[place])
        .filter(|&place| !ctx.home.components[place].kind.is_source(Net::Water))
        .filter(|&place| {
            let own = ctx.home.components[place].space.as_deref();
            let other = own.and_then(|id| ctx.home.space(id));
            if own == Some(space.id.as_str()) {
                return true;
            }
            match (here, level_of(other.and_then(|s| s.level.as_deref()))) {
                (Some(here), Some(there)) => there > here,
                // What has no level may be above.
                (None, _) | (_, None) => other.is_none_or(|s| !s.outdoors) && own.is_some(),
            }
        })
        .collect()
}

pub(crate) fn names(ctx: &Context<'_>, places: &[usize]) -> String {
    let list: Vec<String> = places.iter().map(|&place| ctx.name(place)).take(MOST_NAMED).collect();
    ctx.catalogue.list(&list)
}
