//! Dead outlets, breakers that trip, sparks.

use quarterturn_home::{Kind, Medium, Net, Role};
use quarterturn_network::{HomeNet, Node};

use crate::blame::{Blame, LOOK_SECONDS, suspects};
use crate::catalogue::{count, fill};
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::{Way, ways};
use crate::lines::nearest_above;
use crate::{Act, By, Trouble};

/// Suspects that get a step of their own.
const SUSPECTS_TOLD: usize = 4;
/// Names in one sentence.
const MOST_NAMED: usize = 8;

pub(crate) fn dead_outlet(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.advice(ctx, "step-try-a-lamp", Act::Unplug, &[]);
    let net = ctx.net(Net::Power);
    let found = Blame::of(ctx, net, &[]);
    if found.diagnoses.is_empty() {
        unknown_circuit(ctx, &mut draft);
        return draft;
    }
    draft.mapped = true;
    tell(ctx, &mut draft, &found, "prove-live");
    draft
}

/// The suspects, the next check, and a step for each of the first few.
pub(crate) fn tell(ctx: &Context<'_>, draft: &mut Draft, found: &Blame, prove: &str) {
    draft.suspects = suspects(ctx, &found.shares());
    draft.next_check = found.next.clone();
    let told: Vec<usize> =
        found.shares().into_iter().map(|(place, _)| place).take(SUSPECTS_TOLD).collect();
    suspect_steps(ctx, draft, found, &told, prove);
    draft.call(Role::Electrician, "why-electrician");
    draft.call(Role::ElectricityUtility, "why-electricity-utility");
    draft.restore(ctx, "restore-power", &[]);
}

/// A step for each of the suspects that are told; before the first reset, what hangs on it unplugged.
pub(crate) fn suspect_steps(
    ctx: &Context<'_>,
    draft: &mut Draft,
    found: &Blame,
    told: &[usize],
    prove: &str,
) {
    if found.disbelieved > 0 {
        draft.advice(ctx, "step-reports-contradict", Act::Look, &[]);
    }
    let lights = ctx.question.trouble == Trouble::DeadLight;
    let mut reset = false;
    for &place in told {
        let kind = ctx.home.components[place].kind;
        let (key, act) = match kind {
            Kind::Gfci => ("step-suspect-gfci", Act::Reset),
            Kind::Breaker => ("step-suspect-breaker", Act::Reset),
            Kind::Switch if lights => ("step-suspect-light-switch", Act::Look),
            Kind::Switch => ("step-suspect-switch", Act::Look),
            Kind::ServiceDisconnect | Kind::Disconnect | Kind::TransferSwitch => {
                ("step-suspect-disconnect", Act::Look)
            }
            Kind::ElectricityService | Kind::ElectricityMeter => ("step-suspect-outage", Act::Look),
            Kind::Generator | Kind::Inverter | Kind::Battery => {
                ("step-suspect-own-source", Act::Look)
            }
            Kind::Panel | Kind::JunctionBox => ("step-suspect-wiring", Act::Advice),
            Kind::Light | Kind::Lampholder => ("step-suspect-lamp", Act::Look),
            Kind::SumpPump | Kind::CondensatePump => ("step-suspect-pump", Act::Advice),
            _ => ("step-suspect-itself", Act::Advice),
        };
        if act == Act::Reset && !reset {
            reset = true;
            unplug(ctx, draft, place);
        }
        let seconds = ctx.walk_seconds(place) + LOOK_SECONDS;
        let lamp = ctx.home.components[place].lamp.clone();
        let key = if kind == Kind::Gfci && lamp.is_some() { "step-suspect-gfci-lamp" } else { key };
        draft.at(
            ctx,
            key,
            act,
            place,
            seconds,
            &[
                fill("device", &ctx.name(place)),
                fill("where", &ctx.where_sentence(place)),
                fill("lamp", &lamp.unwrap_or_default()),
            ],
        );
        // What only an electrician may touch is not proven by the person who reads this.
        if act != Act::Advice {
            draft.prove(ctx.catalogue.text(prove));
        }
    }
    if reset {
        draft.advice(ctx, "step-trips-again", Act::Advice, &[]);
    }
}

/// Unplug what hangs on a device, by name.
pub(crate) fn unplug(ctx: &Context<'_>, draft: &mut Draft, device: usize) {
    // No one takes the plug of an alarm, or of what someone's health depends on, on our word.
    let stays = |kind: Kind| matches!(kind, Kind::MedicalDevice | Kind::SmokeAlarm);
    let below = loads_below(ctx, device);
    let in_water = below.iter().any(|&place| ctx.is_forbidden(place));
    let loads: Vec<String> = below
        .into_iter()
        .filter(|&place| !stays(ctx.home.components[place].kind) && !ctx.is_forbidden(place))
        .map(|place| ctx.name(place))
        .take(MOST_NAMED)
        .collect();
    if loads.is_empty() && in_water {
        // All that could be unplugged stands in water.
    } else if loads.is_empty() {
        draft.advice(ctx, "step-unplug-all", Act::Unplug, &[]);
    } else {
        let list = ctx.catalogue.list(&loads);
        draft.advice(ctx, "step-unplug-named", Act::Unplug, &[fill("list", &list)]);
    }
}

pub(crate) fn unknown_circuit(ctx: &Context<'_>, draft: &mut Draft) {
    draft.mapped = false;
    let gfcis: Vec<String> = (0..ctx.home.components.len())
        .filter(|&place| ctx.home.components[place].kind == Kind::Gfci && !ctx.is_forbidden(place))
        .map(|place| ctx.name(place))
        .take(MOST_NAMED)
        .collect();
    if gfcis.is_empty() {
        draft.advice(ctx, "step-look-for-gfci", Act::Look, &[]);
    } else {
        let list = ctx.catalogue.list(&gfcis);
        draft.advice(ctx, "step-look-at-gfcis", Act::Look, &[fill("list", &list)]);
    }
    draft.advice(ctx, "step-look-for-tripped", Act::Look, &[]);
    draft.call(Role::Electrician, "why-electrician");
    draft.restore(ctx, "restore-power", &[]);
}

pub(crate) fn breaker_trips(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.caution(ctx, "caution-burning-smell", &[]);
    let Some(breaker) = breaker_of(ctx) else {
        draft.advice(ctx, "step-unplug-all", Act::Unplug, &[]);
        draft.advice(ctx, "step-reset-unknown-breaker", Act::Advice, &[]);
        draft.advice(ctx, "step-trips-again", Act::Advice, &[]);
        draft.call(Role::Electrician, "why-trips-again");
        draft.restore(ctx, "restore-power", &[]);
        return draft;
    };
    draft.mapped = true;
    arithmetic(ctx, &mut draft, breaker);
    unplug(ctx, &mut draft, breaker);
    let there = ctx.leg(ctx.start(), breaker).work;
    draft.go_to(ctx, "step-reset-breaker", Act::Reset, breaker, there);
    draft.prove(ctx.catalogue.text("prove-breaker-holds"));
    draft.advice(ctx, "step-trips-again", Act::Advice, &[]);
    draft.advice(ctx, "step-one-by-one", Act::Look, &[]);
    draft.call(Role::Electrician, "why-trips-again");
    draft.restore(ctx, "restore-power", &[]);
    draft
}

/// What the map knows to be on the circuit, in watts, against what the breaker carries.
fn arithmetic(ctx: &Context<'_>, draft: &mut Draft, breaker: usize) {
    let component = &ctx.home.components[breaker];
    let Some(rating) = component.rating_a else { return };
    let volts = match (ctx.home.units, component.poles.unwrap_or(1)) {
        (quarterturn_home::Units::Us, 1) => 120.0,
        (quarterturn_home::Units::Us, _) => 240.0,
        (quarterturn_home::Units::Si, 1 | 2) => 230.0,
        (quarterturn_home::Units::Si, _) => 400.0,
    };
    let watts: f64 =
        loads_below(ctx, breaker).iter().filter_map(|&p| ctx.home.components[p].watts).sum();
    if watts <= 0.0 {
        return;
    }
    let carries = rating * volts;
    let key = if watts > carries { "step-load-too-much" } else { "step-load-fits" };
    draft.advice(
        ctx,
        key,
        Act::Look,
        &[
            count("watts", watts.round()),
            count("carries", carries.round()),
            count("rating", rating),
            count("lasting", (carries * 0.8).round()),
        ],
    );
}

pub(crate) fn sparks(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Power), ..Draft::default() };
    draft.caution(ctx, "caution-sparks", &[]);
    draft.caution(ctx, "caution-electric-shock", &[]);
    draft.advice(ctx, "step-sparks-stand-back", Act::Advice, &[]);
    if !cut_power(ctx, &mut draft, "prove-sparks") {
        draft.advice(ctx, "step-sparks-out", Act::Leave, &[]);
    }
    draft.advice(ctx, "step-sparks-not-again", Act::Advice, &[]);
    draft.call(Role::Electrician, "why-electrician-sparks");
    draft.call(Role::ElectricityUtility, "why-electricity-utility-cut");
    draft.restore(ctx, "restore-sparks", &[]);
    draft
}

/// Makes the spot dead: its own devices, else everything. False if nothing that anyone may touch
/// does that.
pub(crate) fn cut_power(ctx: &Context<'_>, draft: &mut Draft, prove: &str) -> bool {
    let net = ctx.net(Net::Power);
    let targets = ctx.targets(net);
    let found = ways(ctx, net, &targets);
    draft.ways = found.list;
    draft.mapped = !targets.is_empty() && found.fed;
    let first = draft.ways.iter().find(|way| way.by == By::Anyone).cloned();
    match first {
        Some(way) => {
            switch_off(ctx, draft, &way, prove);
            if let Some(next) = draft.ways.iter().find(|w| **w != way && w.by == By::Anyone) {
                let list: Vec<String> = next.devices.iter().map(|&p| ctx.name(p)).collect();
                let list = ctx.catalogue.list(&list);
                draft.advice(ctx, "step-if-not-switch-off", Act::Advice, &[fill("devices", &list)]);
            }
        }
        None => match main_switch(ctx, net, &targets) {
            Some(way) => {
                draft.mapped = false;
                switch_off(ctx, draft, &way, prove);
            }
            None => return false,
        },
    }
    true
}

pub(crate) fn switch_off(ctx: &Context<'_>, draft: &mut Draft, way: &Way, prove: &str) {
    draft.used = Some(way.clone());
    for (&place, &seconds) in way.devices.iter().zip(&way.seconds) {
        draft.at(
            ctx,
            "step-switch-off",
            Act::SwitchOff,
            place,
            seconds,
            &[fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))],
        );
    }
    draft.prove(ctx.catalogue.text(prove));
    let off: Vec<String> =
        way.lost.off.iter().map(|&place| ctx.name(place)).take(MOST_NAMED).collect();
    if !off.is_empty() {
        let list = ctx.catalogue.list(&off);
        #[expect(clippy::cast_precision_loss, reason = "a house has few components")]
        let more = (way.lost.off.len() - off.len()) as f64;
        draft.advice(
            ctx,
            "step-goes-off",
            Act::Advice,
            &[fill("list", &list), count("more", more)],
        );
    }
}

/// Where the map does not tell what feeds the spot: everything off, if anyone can.
pub(crate) fn main_switch(ctx: &Context<'_>, net: &HomeNet, targets: &[Node]) -> Option<Way> {
    if !targets.is_empty() && net.network.is_fed(targets, |_| false) {
        return None;
    }
    let everything: Vec<Node> = (0..ctx.home.components.len())
        .filter(|&p| net.member[p] && ctx.home.components[p].kind.is_served())
        .map(|p| net.body[p])
        .collect();
    ways(ctx, net, &everything).list.into_iter().find(|way| way.by == By::Anyone)
}

/// The breaker that the spot is, or hangs on: the nearest one against the usual direction.
fn breaker_of(ctx: &Context<'_>) -> Option<usize> {
    let is_breaker = |place: usize| ctx.home.components[place].kind == Kind::Breaker;
    nearest_above(ctx, &ctx.spot_components(), Medium::Power, is_breaker)
}

/// What people plug in or use below a device, in the usual direction, by place.
pub(crate) fn loads_below(ctx: &Context<'_>, device: usize) -> Vec<usize> {
    let is_served = |&place: &usize| ctx.home.components[place].kind.is_served();
    wired_below(ctx, device).into_iter().filter(is_served).collect()
}

/// All that gets its power through a device, in the usual direction, by place.
pub(crate) fn wired_below(ctx: &Context<'_>, device: usize) -> Vec<usize> {
    let mut seen = vec![false; ctx.home.components.len()];
    seen[device] = true;
    let mut stack = vec![device];
    while let Some(place) = stack.pop() {
        for link in ctx.guide.lines_at(place) {
            if link.carries == Medium::Power
                && link.from == ctx.home.components[place].id
                && let Some(next) = ctx.places.of(&link.to)
                && !std::mem::replace(&mut seen[next], true)
            {
                stack.push(next);
            }
        }
    }
    (0..seen.len()).filter(|&place| place != device && seen[place]).collect()
}
