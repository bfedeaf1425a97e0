//! The thirteen rules.

use std::collections::BTreeSet;

use quarterturn_guidance::{Act, By, Spot, Step};

use super::Told;
use super::facts::{
    Water, below, controls_sprinklers, emergency, is_electrical, leaves, names, off_with, worked,
};
use crate::black_box::impact::is_critical;

type Held = Result<(), String>;

fn must(holds: bool, why: impl FnOnce() -> String) -> Held {
    if holds { Ok(()) } else { Err(why()) }
}

/// The cautions of which each trouble needs one.
const OWN_DANGERS: &[(&str, &[&str])] = &[
    ("leak", &["caution-water-near-power", "caution-water-near-power-named"]),
    ("water-from-above", &["caution-water-near-power", "caution-water-near-power-named"]),
    ("drain-backs-up", &["caution-sewage"]),
    ("sewage-rising", &["caution-sewage"]),
    ("dead-outlet", &["caution-electric-shock"]),
    ("breaker-trips", &["caution-electric-shock"]),
    ("sparks", &["caution-sparks"]),
    ("cooling-stopped", &["caution-air-handler"]),
    ("gas-smell", &["caution-gas"]),
    ("co-alarm", &["caution-co"]),
    ("fire", &["caution-fire"]),
    ("toilet-overflow", &["caution-water-near-power", "caution-water-near-power-named"]),
    ("dead-light", &["caution-electric-shock"]),
    ("gfci-trips", &["caution-electric-shock"]),
    ("no-water", &["caution-shut-for-a-reason"]),
    ("no-hot-water", &["caution-heater-hands"]),
    ("pit-rising", &["caution-water-near-power", "caution-water-near-power-named"]),
    ("dead-area", &["caution-lost-neutral"]),
    ("shock", &["caution-shocked-person"]),
    ("water-near-power", &["caution-water-near-power", "caution-water-near-power-named"]),
    ("water-at-air-handler", &["caution-water-near-power", "caution-water-near-power-named"]),
    ("wires-down", &["caution-wires"]),
    ("not-answering", &["caution-locked-in", "caution-alarm-silent", "caution-no-heat"]),
];

/// Dangers come before the first action: worst first, and what the trouble itself may do is among them.
pub(super) fn rule_1_dangers_come_first(told: &Told<'_>) -> Held {
    let cautions = &told.answer.cautions;
    must(cautions.is_sorted_by_key(|caution| caution.signal), || {
        format!("not worst first: {cautions:?}")
    })?;
    let own = OWN_DANGERS.iter().find(|(trouble, _)| *trouble == told.answer.trouble);
    // A trouble that is not in the list has a danger of some sort all the same.
    let Some((_, any)) = own else {
        return must(cautions.len() > 1, || "no danger is named".to_owned());
    };
    must(cautions.iter().any(|caution| any.contains(&caution.id.as_str())), || {
        format!("none of {any:?}")
    })
}

/// Gas, carbon monoxide, fire: leave, then call from outside. No switch, no valve hunt.
pub(super) fn rule_2_leave_then_call(told: &Told<'_>) -> Held {
    let leave = leaves(told);
    if !leave {
        return Ok(());
    }
    let answer = told.answer;
    let acts: Vec<Act> = answer.steps.iter().map(|step| step.act).collect();
    must(acts.starts_with(&[Act::Leave, Act::Call]), || format!("{acts:?}"))?;
    let rest = acts.iter().all(|act| matches!(act, Act::Leave | Act::Call | Act::Advice));
    must(rest, || format!("more than leaving and calling: {acts:?}"))?;
    must(answer.steps.iter().all(|step| step.component.is_none()), || {
        "a step at a device".to_owned()
    })?;
    let nothing_else = answer.sets.is_empty()
        && answer.suspects.is_empty()
        && answer.next_check.is_none()
        && answer.relief.is_none();
    must(nothing_else, || "something to hunt for".to_owned())?;
    must(answer.call.first().is_some_and(|call| call.phone == emergency(told)), || {
        "the emergency number is not the first to call".to_owned()
    })
}

/// No step sends anyone to something electrical that stands in water, nor into standing water that may
/// be live, nor through it. Whom to call to cut the power stands beside it.
pub(super) fn rule_3_nobody_into_live_water(told: &Told<'_>) -> Held {
    let water = Water::of(told);
    let answer = told.answer;
    let mut sent: Vec<&str> = Vec::new();
    sent.extend(
        answer
            .steps
            .iter()
            .filter(|step| step.act != Act::Call)
            .filter_map(|step| step.component.as_deref()),
    );
    sent.extend(answer.sets.iter().flat_map(|set| set.close.iter().map(String::as_str)));
    sent.extend(answer.next_check.iter().map(|check| check.component.as_str()));
    if let Some(relief) = &answer.relief {
        sent.extend([&relief.open, &relief.rod_from].into_iter().flatten().map(String::as_str));
    }
    if let Some(id) = sent.into_iter().find(|id| water.forbids(told, id)) {
        return Err(format!("{id} stands in water"));
    }
    // Sentences of no one device that name things to unplug, to look at or to turn off.
    let hands = |step: &&Step| {
        let heater = step.id.starts_with("step-heater");
        step.component.is_none() && (heater || matches!(step.act, Act::Unplug | Act::Look))
    };
    for step in answer.steps.iter().filter(hands) {
        let wet = |id: &str| names(told, &step.text, id) && water.forbids(told, id);
        if let Some(part) = told.house.parts.iter().find(|part| wet(&part.id)) {
            return Err(format!(
                "{} names {}, which stands in water: {}",
                step.id, part.id, step.text
            ));
        }
    }
    let in_water = |id: &str| is_electrical(told.house.part(id).kind) && water.is_around(told, id);
    let plugs = || answer.steps.iter().filter(|step| matches!(step.act, Act::Unplug | Act::Reset));
    if let Spot::Component(id) = &told.question.at
        && in_water(id)
        && let Some(step) = plugs().next()
    {
        return Err(format!("{:?} at a spot that stands in water", step.text));
    }
    // No power is brought back to what stands in water.
    for device in
        plugs().filter(|step| step.act == Act::Reset).filter_map(|step| step.component.as_deref())
    {
        if let Some(load) = below(told, device, &["Power"]).into_iter().find(|id| in_water(id)) {
            return Err(format!(
                "a reset of {device} brings power to {load}, which stands in water"
            ));
        }
    }
    let panel = told.house.parts.iter().find(|part| {
        matches!(part.kind, "Panel" | "ServiceDisconnect") && water.forbids(told, &part.id)
    });
    let leave = leaves(told);
    if panel.is_some() && !leave {
        let warned = answer.cautions.iter().any(|caution| caution.id == "caution-power-in-water");
        must(warned, || {
            format!("{:?} stands in water and nobody is warned", panel.map(|part| &part.id))
        })?;
    }
    Ok(())
}

/// What the utility alone, or a licensed person, may work is never worked: the step says call.
pub(super) fn rule_4_the_utilitys_alone(told: &Told<'_>) -> Held {
    let works = |step: &&Step| !matches!(step.act, Act::Call | Act::Look | Act::Advice);
    for step in told.answer.steps.iter().filter(works) {
        let Some(id) = &step.component else { continue };
        let who = told.house.part(id).operable_by;
        must(who.is_empty(), || format!("{:?} at {id}, which is {who}'s alone", step.act))?;
    }
    for set in &told.answer.sets {
        let who: BTreeSet<&str> =
            set.close.iter().map(|id| told.house.part(id).operable_by).collect();
        let by = match (who.contains("Utility"), who.contains("Licensed")) {
            (true, _) => By::Utility,
            (false, true) => By::Licensed,
            (false, false) => By::Anyone,
        };
        must(set.by == by, || format!("{:?} for {:?}", set.by, set.close))?;
    }
    // Nor in words: only a call, or what the plumber is told, names a utility's device.
    let silent = |step: &&Step| step.act != Act::Call && !step.id.starts_with("step-rod");
    for step in told.answer.steps.iter().filter(silent) {
        let theirs = told.house.parts.iter().find(|part| {
            part.operable_by == "Utility"
                && matches!(
                    part.kind,
                    "IsolatingValve"
                        | "Breaker"
                        | "ServiceDisconnect"
                        | "Disconnect"
                        | "TransferSwitch"
                        | "Cleanout"
                        | "GasValve"
                )
                && names(told, &step.text, &part.id)
        });
        if let Some(part) = theirs
            && !matches!(step.act, Act::Look)
            && !step.id.starts_with("step-suspect")
        {
            return Err(format!("{} names {}, the utility's: {}", step.id, part.id, step.text));
        }
    }
    Ok(())
}

/// A sprinkler control valve is never shut to save water; what cuts sprinklers too says so, first.
pub(super) fn rule_5_sprinklers(told: &Told<'_>) -> Held {
    let answer = told.answer;
    let closed = answer
        .steps
        .iter()
        .filter(|step| step.act == Act::Close)
        .filter_map(|step| step.component.as_ref());
    let all = answer.sets.iter().flat_map(|set| &set.close).chain(closed);
    if let Some(id) = all.into_iter().find(|id| controls_sprinklers(told, id)) {
        return Err(format!("{id} controls the sprinklers"));
    }
    let is_riser = |id: &String| told.house.part(id).kind == "SprinklerRiser";
    let said = |id: &str| answer.cautions.iter().any(|caution| caution.id == id);
    let by_steps = off_with(told, &worked(told)).iter().any(is_riser);
    must(!by_steps || said("caution-sprinklers-off"), || "sprinklers go off unsaid".to_owned())?;
    let by_sets = answer.sets.iter().any(|set| set.goes_off.iter().any(is_riser));
    must(
        !by_sets || said("caution-sprinklers-off") || said("caution-sprinklers-fallback"),
        || "sprinklers would go off unsaid".to_owned(),
    )?;
    for set in answer.sets.iter().filter(|set| set.goes_off.iter().any(is_riser)) {
        let critical =
            set.goes_off.iter().take_while(|id| is_critical(told.house, id)).any(is_riser);
        must(critical, || format!("the riser is not among the first of {:?}", set.goes_off))?;
    }
    Ok(())
}

/// One reset of each device, after unplugging. A second trip: leave it off, licensed electrician.
pub(super) fn rule_6_one_reset_after_unplugging(told: &Told<'_>) -> Held {
    let steps = &told.answer.steps;
    let mut at: BTreeSet<&str> = BTreeSet::new();
    for step in steps.iter().filter(|step| step.act == Act::Reset) {
        let id = step.component.as_deref().unwrap_or_default();
        must(at.insert(id), || format!("two resets at {id}"))?;
    }
    let Some(first) = steps.iter().position(|step| step.act == Act::Reset) else { return Ok(()) };
    must(steps[..first].iter().any(|step| step.act == Act::Unplug), || {
        "a reset before unplugging".to_owned()
    })?;
    let again = |step: &Step| step.id == "step-trips-again";
    must(steps[first..].iter().any(again), || "nothing about a second trip".to_owned())?;
    let electrician = told
        .home
        .contacts
        .iter()
        .find(|contact| contact.role == Some(quarterturn_home::Role::Electrician));
    let name = electrician
        .map_or_else(|| told.words.text("role-electrician"), |contact| contact.name.clone());
    must(told.answer.call.iter().any(|call| call.name == name), || format!("{name} is not called"))
}

/// Each isolation ends with a check that it worked.
pub(super) fn rule_7_closed_is_not_proven(told: &Told<'_>) -> Held {
    for act in [Act::Close, Act::SwitchOff] {
        let last = told.answer.steps.iter().rfind(|step| step.act == act);
        let proven =
            last.is_none_or(|step| step.prove.as_ref().is_some_and(|prove| prove.len() > 10));
        must(proven, || format!("{act:?} ends without a check"))?;
    }
    Ok(())
}

/// Sewage: gloves, eyes, cap slowly, stand clear, no water use, wash, children and pets away.
pub(super) fn rule_8_sewage(told: &Told<'_>) -> Held {
    let answer = told.answer;
    let cap = answer.steps.iter().position(|step| step.act == Act::OpenCap);
    if !["drain-backs-up", "sewage-rising", "toilet-overflow"].contains(&answer.trouble)
        && cap.is_none()
    {
        return Ok(());
    }
    let words = |text: &str, wanted: &[&str]| {
        let text = text.to_lowercase();
        wanted
            .iter()
            .find(|word| !text.contains(**word))
            .map(|word| format!("{word:?} is missing in {text:?}"))
    };
    let caution = answer
        .cautions
        .iter()
        .find(|caution| caution.id == "caution-sewage")
        .map_or("", |c| &c.text);
    words(caution, &["gloves", "eye", "children", "pets", "wash"]).map_or(Ok(()), Err)?;
    let stop = answer.steps.iter().position(|step| step.act == Act::StopUse);
    must(stop.is_some_and(|stop| cap.is_none_or(|cap| stop < cap)), || {
        "water is not stopped first".to_owned()
    })?;
    if let Some(cap) = cap {
        words(&answer.steps[cap].text, &["slowly", "side", "gloves", "eye"]).map_or(Ok(()), Err)?;
        let pressure = answer.cautions.iter().any(|caution| caution.id == "caution-cap-pressure");
        must(pressure, || "nothing about the pressure behind the cap".to_owned())?;
    }
    let clean = told.words.text("restore-sewage-clean");
    must(answer.restore.contains(&clean), || "nothing about cleaning up".to_owned())
}

/// A heater that gets no water: its energy is off, and before that comes back, it is full.
pub(super) fn rule_9_heater(told: &Told<'_>) -> Held {
    let answer = told.answer;
    let is_heater = |id: &String| told.house.part(id).kind == "WaterHeater";
    let closes: Vec<&str> = answer
        .steps
        .iter()
        .filter(|step| step.act == Act::Close)
        .filter_map(|step| step.component.as_deref())
        .collect();
    let dry = answer.sets.iter().any(|set| {
        let water = set.close.iter().any(|id| told.house.part(id).kind == "IsolatingValve");
        water && set.goes_off.iter().any(is_heater)
    }) || off_with(told, &closes).iter().any(is_heater);
    if !dry {
        return Ok(());
    }
    let warned = answer.cautions.iter().any(|caution| caution.id.starts_with("caution-heater"));
    must(warned, || "a heater runs dry unsaid".to_owned())?;
    let full = told.words.text("restore-heater-full");
    must(answer.restore.contains(&full), || "nothing about filling the heater".to_owned())
}

/// Water comes back slowly, one tap open, before all else.
pub(super) fn rule_10_water_back_slowly(told: &Told<'_>) -> Held {
    let answer = told.answer;
    let closes = answer.steps.iter().any(|step| step.act == Act::Close)
        || answer.sets.iter().any(|set| set.litres.is_some());
    let slowly = told.words.text("restore-water-slowly");
    must(!closes || answer.restore.first() == Some(&slowly), || format!("{:?}", answer.restore))
}

/// What someone depends on is named first in what goes off, and aloud for what the steps shut.
pub(super) fn rule_11_what_someone_depends_on(told: &Told<'_>) -> Held {
    for set in &told.answer.sets {
        let first = set.goes_off.iter().map(|id| !is_critical(told.house, id));
        must(first.is_sorted(), || format!("not first in {:?}", set.goes_off))?;
    }
    let off = off_with(told, &worked(told));
    let critical = off
        .iter()
        .filter(|id| is_critical(told.house, id) && told.house.part(id).kind != "SprinklerRiser");
    let said = told
        .answer
        .cautions
        .iter()
        .find(|caution| caution.id == "caution-critical-off")
        .map_or("", |c| &c.text);
    for id in critical {
        let odd = told.house.part(id).name
            != format!("{} {}", told.house.part(id).kind, id.rsplit('-').next().unwrap());
        let named = if odd { !said.is_empty() } else { names(told, said, id) };
        must(named, || format!("{id} goes off unsaid: {said:?}"))?;
    }
    Ok(())
}

/// A map that does not tell never leaves people without advice, and the advice says that it is general.
pub(super) fn rule_12_advice_without_a_map(told: &Told<'_>) -> Held {
    let answer = told.answer;
    must(!answer.steps.is_empty(), || "no steps".to_owned())?;
    let leave = leaves(told);
    let marked = answer.cautions.iter().any(|caution| caution.id == "caution-not-from-map");
    must(leave || marked != answer.mapped, || format!("mapped {}, marked {marked}", answer.mapped))
}

/// The emergency number, the utilities' numbers, and that local codes and licensed trades come first.
pub(super) fn rule_13_numbers_at_the_end(told: &Told<'_>) -> Held {
    use quarterturn_home::Role;
    let answer = told.answer;
    let local = answer.cautions.iter().any(|caution| caution.id == "caution-local-codes");
    must(local, || "local codes are not named".to_owned())?;
    let leave = leaves(told);
    let place = if leave { answer.call.first() } else { answer.call.last() };
    must(place.is_some_and(|call| call.phone == emergency(told)), || {
        format!("emergency: {:?}", answer.call)
    })?;
    let utilities =
        [Role::WaterUtility, Role::SewerUtility, Role::ElectricityUtility, Role::GasUtility];
    for contact in
        told.home.contacts.iter().filter(|c| c.role.is_some_and(|role| utilities.contains(&role)))
    {
        let listed = answer
            .call
            .iter()
            .any(|call| call.contact.as_ref() == Some(&contact.id) && call.phone == contact.phone);
        must(listed, || format!("{} is not listed", contact.name))?;
    }
    // No number is made up, and no one stands there twice.
    let known: BTreeSet<&str> = told
        .home
        .contacts
        .iter()
        .filter_map(|contact| contact.phone.as_deref())
        .chain(told.home.emergency_phone.as_deref())
        .collect();
    let made_up = answer
        .call
        .iter()
        .filter_map(|call| call.phone.as_deref())
        .find(|phone| !known.contains(phone));
    must(made_up.is_none(), || format!("{made_up:?} is no one's number"))?;
    let contacts: Vec<&String> =
        answer.call.iter().filter_map(|call| call.contact.as_ref()).collect();
    must(contacts.iter().collect::<BTreeSet<_>>().len() == contacts.len(), || {
        format!("twice: {contacts:?}")
    })
}
