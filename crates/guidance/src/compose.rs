//! The one place where answers are composed, and where the safety rules stand.
//!
//! A trouble's module drafts; nothing becomes an [`Answer`] but through [`compose`]. Each rule of the
//! list in `DEVELOPERS.md` is a function here, named by its number, and a property test holds them
//! over random homes.

use std::collections::BTreeSet;

use quarterturn_home::{Kind, Net, OperableBy, Role};

use crate::call_first::{calls_in_order, does_damage};
use crate::catalogue::fill;
use crate::contacts::contact_for;
use crate::context::{Context, is_electrical};
use crate::draft::{Draft, DraftCall, DraftStep};
use crate::isolation::Way;
use crate::power::wired_below;
use crate::{Act, Answer, Call, Step, Trouble};

/// The answer that a draft becomes under the safety rules.
pub(crate) fn compose(ctx: &Context<'_>, mut draft: Draft) -> Answer {
    rule_2_leave_first(ctx, &mut draft);
    rule_3_nobody_into_live_water(ctx, &mut draft);
    rule_4_the_utility_works_its_own(ctx, &mut draft);
    rule_5_sprinklers_stay_on(ctx, &mut draft);
    rule_6_one_reset(ctx, &mut draft);
    rule_7_closed_is_proven(ctx, &mut draft);
    rule_8_sewage(ctx, &mut draft);
    rule_9_heater(ctx, &mut draft);
    rule_10_water_back_slowly(ctx, &mut draft);
    rule_11_critical_first(ctx, &mut draft);
    rule_12_general_advice_is_marked(ctx, &mut draft);
    rule_1_dangers_first(ctx, &mut draft);
    let call = rule_13_numbers_at_the_end(ctx, &mut draft);
    Answer {
        trouble: ctx.question.trouble.id(),
        at: ctx.spot_ids(),
        mapped: draft.mapped,
        cautions: draft.cautions,
        steps: draft.steps.into_iter().map(|drafted| drafted.step).collect(),
        sets: draft.ways.iter().map(|way| way.to_set(ctx)).collect(),
        suspects: draft.suspects,
        next_check: draft.next_check,
        relief: draft.relief,
        call,
        restore: draft.restore,
        choices: draft.choices,
    }
}

/// Dangers come before the first action: they are their own list, worst first, and never empty.
fn rule_1_dangers_first(ctx: &Context<'_>, draft: &mut Draft) {
    draft.caution(ctx, "caution-local-codes", &[]);
    draft.cautions.sort_by_key(|caution| caution.signal);
}

/// Gas, carbon monoxide, fire: leave, then call from outside. Nothing else.
fn rule_2_leave_first(ctx: &Context<'_>, draft: &mut Draft) {
    if !ctx.question.trouble.is_leave_first() {
        return;
    }
    draft.steps.retain(|s| {
        matches!(s.step.act, Act::Leave | Act::Call | Act::Advice) && s.place.is_none()
    });
    let rank = |s: &DraftStep| match s.step.act {
        Act::Leave => 0,
        Act::Call => 1,
        _ => 2,
    };
    draft.steps.sort_by_key(rank);
    draft.ways.clear();
    draft.choices.clear();
    draft.suspects.clear();
    draft.next_check = None;
    draft.relief = None;
}

/// No step sends anyone to something electrical that stands in water, nor through water that may be
/// live.
fn rule_3_nobody_into_live_water(ctx: &Context<'_>, draft: &mut Draft) {
    let forbidden = |id: &str| ctx.places.of(id).is_some_and(|place| ctx.is_forbidden(place));
    let before = draft.steps.len();
    draft.steps.retain(|s| !s.place.is_some_and(|place| ctx.is_forbidden(place)));
    nothing_live_in_water(ctx, draft);
    draft.ways.retain(|way| !way.devices.iter().any(|&place| ctx.is_forbidden(place)));
    let mut dropped = draft.steps.len() < before;
    if draft.next_check.as_ref().is_some_and(|check| forbidden(&check.component)) {
        draft.next_check = None;
        dropped = true;
    }
    if let Some(relief) = &mut draft.relief {
        for cap in [&mut relief.open, &mut relief.rod_from] {
            if cap.as_deref().is_some_and(forbidden) {
                *cap = None;
                dropped = true;
            }
        }
    }
    let panel_is_wet = ctx.home.components.iter().enumerate().any(|(place, component)| {
        matches!(component.kind, Kind::Panel | Kind::ServiceDisconnect) && ctx.is_forbidden(place)
    });
    if dropped && !ctx.question.trouble.is_leave_first() {
        let mut call = Draft::default();
        call.advice(ctx, "step-power-in-water", Act::Call, &[]);
        let first = if draft.net == Some(Net::Power) { 0 } else { draft.steps.len() };
        draft.steps.splice(first..first, call.steps);
    }
    warn_of_water_on_the_way(ctx, draft);
    if dropped || panel_is_wet {
        draft.caution(ctx, "caution-power-in-water", &[]);
        draft.call(Role::ElectricityUtility, "why-cut-power-outside");
    }
}

/// Where the only way to a device leads across a room with water, whoever goes there looks first.
fn warn_of_water_on_the_way(ctx: &Context<'_>, draft: &mut Draft) {
    let places: BTreeSet<usize> = draft.steps.iter().filter_map(|s| s.place).collect();
    let spaces: BTreeSet<usize> =
        places.into_iter().flat_map(|place| ctx.water_on_the_way(place)).collect();
    if !spaces.is_empty() {
        let names: Vec<String> =
            spaces.into_iter().map(|space| ctx.home.spaces[space].name.clone()).collect();
        let list = ctx.catalogue.list(&names);
        draft.caution(ctx, "caution-way-through-water", &[fill("list", &list)]);
    }
}

/// Nothing is unplugged or reset at a spot that stands in water, and no power is brought back to
/// what stands in water elsewhere.
fn nothing_live_in_water(ctx: &Context<'_>, draft: &mut Draft) {
    let in_water =
        |place: usize| is_electrical(ctx.home.components[place].kind) && ctx.is_in_water(place);
    let spot = ctx.spot_components().into_iter().any(in_water);
    let revives = |place: usize| wired_below(ctx, place).into_iter().any(in_water);
    let resets = |draft: &Draft| draft.steps.iter().any(|s| s.step.act == Act::Reset);
    let reset = resets(draft);
    draft.steps.retain(|s| match s.step.act {
        Act::Unplug => !spot,
        Act::Reset => !spot && !s.place.is_some_and(revives),
        _ => true,
    });
    if reset && !resets(draft) {
        // Without a reset there is nothing to try afterwards.
        draft.steps.retain(|s| s.step.id != "step-one-by-one" && s.step.id != "step-trips-again");
    }
}

/// What is the utility's alone, or a licensed person's, is never worked: the step says call.
fn rule_4_the_utility_works_its_own(ctx: &Context<'_>, draft: &mut Draft) {
    let mut calls: Vec<DraftCall> = Vec::new();
    for drafted in &mut draft.steps {
        let works = matches!(
            drafted.step.act,
            Act::Close | Act::Open | Act::SwitchOff | Act::Reset | Act::OpenCap
        );
        let Some(place) = drafted.place.filter(|_| works) else { continue };
        let (id, role) = match ctx.home.components[place].operable_by {
            OperableBy::Anyone => continue,
            OperableBy::Utility => ("step-utility-works-it", utility_for(ctx, place)),
            OperableBy::Licensed => ("step-licensed-works-it", trade_for(ctx, place)),
        };
        let device = ctx.name(place);
        let contact = contact_for(ctx.home, role);
        let name = contact.map_or_else(|| ctx.role_name(role), |c| c.name.clone());
        let phone =
            contact.and_then(|c| c.phone.clone()).unwrap_or_else(|| ctx.catalogue.text("no-phone"));
        drafted.step = Step {
            text: ctx
                .catalogue
                .fill(id, &[fill("device", &device), fill("name", &name), fill("phone", &phone)]),
            component: Some(ctx.home.components[place].id.clone()),
            seconds: None,
            practised: false,
            prove: None,
            act: Act::Call,
            id: id.to_owned(),
        };
        calls.push(DraftCall { role, why: "why-works-device" });
    }
    for call in calls {
        draft.call(call.role, call.why);
    }
}

/// A fire-sprinkler control valve is never shut to save water; what cuts sprinklers says so first.
fn rule_5_sprinklers_stay_on(ctx: &Context<'_>, draft: &mut Draft) {
    let control = |place: usize| ctx.sprinkler_control[place];
    draft.steps.retain(|s| s.step.act != Act::Close || !s.place.is_some_and(control));
    draft.ways.retain(|way| !way.devices.iter().any(|&place| control(place)));
    // What the steps use comes first; the other ways are there if it fails.
    let first = draft.used.as_ref().is_some_and(|way| way.cuts_sprinklers(ctx));
    let telling: Vec<&Way> =
        if first { draft.used.iter().collect() } else { draft.ways.iter().collect() };
    let mut names: Vec<String> = Vec::new();
    for way in telling.into_iter().filter(|way| way.cuts_sprinklers(ctx)) {
        for &place in &way.devices {
            let name = ctx.name(place);
            if !names.contains(&name) {
                names.push(name);
            }
        }
    }
    if !names.is_empty() {
        let list = ctx.catalogue.list(&names);
        let id = if first { "caution-sprinklers-off" } else { "caution-sprinklers-fallback" };
        draft.caution(ctx, id, &[fill("devices", &list)]);
    }
}

/// One reset, after unplugging. Trips again: leave it off.
fn rule_6_one_reset(ctx: &Context<'_>, draft: &mut Draft) {
    let mut reset: BTreeSet<Option<usize>> = BTreeSet::new();
    draft.steps.retain(|s| s.step.act != Act::Reset || reset.insert(s.place));
    let Some(first) = draft.steps.iter().position(|s| s.step.act == Act::Reset) else { return };
    let unplugged = draft.steps.iter().take(first).any(|s| s.step.act == Act::Unplug);
    if !unplugged {
        let mut extra = Draft::default();
        extra.advice(ctx, "step-unplug-all", Act::Unplug, &[]);
        draft.steps.splice(first..first, extra.steps);
    }
    if !draft.steps.iter().any(|s| s.step.id == "step-trips-again") {
        draft.advice(ctx, "step-trips-again", Act::Advice, &[]);
    }
    draft.call(Role::Electrician, "why-trips-again");
}

/// Closed is not proven: each isolation ends with a check.
fn rule_7_closed_is_proven(ctx: &Context<'_>, draft: &mut Draft) {
    for (act, key) in [(Act::Close, "prove-water-generic"), (Act::SwitchOff, "prove-power")] {
        let of_act: Vec<usize> =
            (0..draft.steps.len()).filter(|&i| draft.steps[i].step.act == act).collect();
        let Some(&last) = of_act.last() else { continue };
        if draft.steps[last].step.prove.is_none() {
            draft.steps[last].step.prove = Some(ctx.catalogue.text(key));
        }
    }
}

/// Sewage: gloves, eyes, cap slowly, stand clear, no water use, wash, keep away.
fn rule_8_sewage(ctx: &Context<'_>, draft: &mut Draft) {
    let caps = draft.steps.iter().any(|s| s.step.act == Act::OpenCap);
    let sewage = matches!(
        ctx.question.trouble,
        Trouble::SewageRising | Trouble::DrainBacksUp | Trouble::ToiletOverflow
    );
    if !(sewage || caps) {
        return;
    }
    draft.caution(ctx, "caution-sewage", &[]);
    if caps {
        draft.caution(ctx, "caution-cap-pressure", &[]);
    }
    if !draft.steps.iter().any(|s| s.step.act == Act::StopUse) {
        let mut extra = Draft::default();
        extra.advice(ctx, "step-stop-all-water", Act::StopUse, &[]);
        draft.steps.splice(0..0, extra.steps);
    }
    draft.restore(ctx, "restore-sewage-clean", &[]);
}

/// A heater that gets no water is off; before it is on again, it is full.
fn rule_9_heater(ctx: &Context<'_>, draft: &mut Draft) {
    if draft.net != Some(Net::Water) {
        return;
    }
    let heater = |place: &usize| ctx.home.components[*place].kind == Kind::WaterHeater;
    let dry: Vec<usize> = draft
        .ways
        .iter()
        .chain(&draft.used)
        .flat_map(|way| way.lost.off.iter().copied().filter(heater))
        .collect::<BTreeSet<usize>>()
        .into_iter()
        .collect();
    if dry.is_empty() && draft.mapped {
        return;
    }
    let named: Vec<String> = dry.iter().map(|&place| ctx.name(place)).collect();
    if named.is_empty() {
        draft.caution(ctx, "caution-heater-general", &[]);
    } else {
        let list = ctx.catalogue.list(&named);
        draft.caution(ctx, "caution-heater-dry", &[fill("heater", &list)]);
    }
    draft.restore(ctx, "restore-heater-full", &[]);
}

/// Water comes back slowly, one tap open.
fn rule_10_water_back_slowly(ctx: &Context<'_>, draft: &mut Draft) {
    let closes = draft.steps.iter().any(|s| s.step.act == Act::Close);
    if draft.net == Some(Net::Water) && (closes || !draft.ways.is_empty() || !draft.mapped) {
        let mut slow = Draft::default();
        slow.restore(ctx, "restore-water-slowly", &[]);
        draft.restore.splice(0..0, slow.restore);
    }
}

/// What someone depends on is named first in what goes off, and in a caution of its own.
fn rule_11_critical_first(ctx: &Context<'_>, draft: &mut Draft) {
    // The order inside each set is made where the set is; here it is said aloud, for all that the
    // steps shut and switch off, or for the best set if the steps can work none.
    let mut shut: BTreeSet<usize> = draft
        .steps
        .iter()
        .filter(|s| matches!(s.step.act, Act::Close | Act::Open | Act::SwitchOff))
        .filter_map(|s| s.place)
        .collect();
    if shut.is_empty()
        && let Some(first) = draft.used.as_ref().or(draft.ways.first())
    {
        shut.extend(&first.devices);
    }
    let lost = ctx.impact.lost(&ctx.arriving, |p| ctx.is_shut(p) || shut.contains(&p));
    let critical: Vec<String> = lost
        .off
        .iter()
        .filter(|&&place| {
            let component = &ctx.home.components[place];
            component.is_critical() && component.kind != Kind::SprinklerRiser
        })
        .map(|&place| ctx.name(place))
        .collect();
    if !critical.is_empty() {
        let list = ctx.catalogue.list(&critical);
        // Whoever is being shocked comes before a freezer, and nobody wades to a pump.
        let people_first = matches!(ctx.question.trouble, Trouble::Shock | Trouble::WaterNearPower);
        let when = if people_first { "after" } else { "before" };
        draft.caution(ctx, "caution-critical-off", &[fill("list", &list), fill("when", when)]);
    }
}

/// General advice is marked as not from the map, and says what to add.
fn rule_12_general_advice_is_marked(ctx: &Context<'_>, draft: &mut Draft) {
    if !draft.mapped && !ctx.question.trouble.is_leave_first() {
        draft.caution(ctx, "caution-not-from-map", &[]);
    }
}

/// Every answer ends with the emergency number, the utilities, and who comes first.
fn rule_13_numbers_at_the_end(ctx: &Context<'_>, draft: &mut Draft) -> Vec<Call> {
    let leave_first = ctx.question.trouble.is_leave_first();
    let mut calls: Vec<Call> = Vec::new();
    if leave_first {
        calls.push(ctx.emergency_call());
    }
    calls.extend(calls_in_order(ctx, draft));
    for role in [Role::WaterUtility, Role::SewerUtility, Role::ElectricityUtility, Role::GasUtility]
    {
        let Some(contact) = contact_for(ctx.home, role) else { continue };
        if !calls.iter().any(|call| call.contact.as_deref() == Some(contact.id.as_str())) {
            calls.push(ctx.call(Some(contact), role, "why-utility"));
        }
    }
    if does_damage(ctx.question.trouble)
        && let Some(insurer) = contact_for(ctx.home, Role::Insurer)
    {
        calls.push(ctx.call(Some(insurer), Role::Insurer, "why-insurer"));
    }
    if !leave_first {
        calls.push(ctx.emergency_call());
    }
    calls
}

/// Whose device it is, by what it carries.
pub(crate) fn utility_for(ctx: &Context<'_>, place: usize) -> Role {
    match carried(ctx, place) {
        Net::Power => Role::ElectricityUtility,
        Net::Gas => Role::GasUtility,
        Net::Waste | Net::Vent | Net::Condensate => Role::SewerUtility,
        Net::Water | Net::Signal => Role::WaterUtility,
    }
}

fn trade_for(ctx: &Context<'_>, place: usize) -> Role {
    match carried(ctx, place) {
        Net::Power => Role::Electrician,
        _ => Role::Plumber,
    }
}

fn carried(ctx: &Context<'_>, place: usize) -> Net {
    let component = &ctx.home.components[place];
    if is_electrical(component.kind) {
        return Net::Power;
    }
    ctx.guide.lines_at(place).next().map_or(Net::Water, |link| link.carries.net())
}
