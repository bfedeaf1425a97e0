//! The sheet for the fridge door: the first acts for each kind of trouble, worst harm first.
//!
//! Nothing is decided here. Each card is what the screen answers to the same trouble, asked as one
//! asks who does not know where it is; the sheet only picks from it: what could hurt, the first acts,
//! and what to do when something does not turn.

use std::cmp::Reverse;

use quarterturn_guidance::{Act, Answer, Signal, Spot, Step, Trouble, fill, spots};
use quarterturn_home::{Component, Kind, Role};
use serde::Serialize;
use serde_json::{Value, json};

use crate::house::House;
use crate::pictures::Pictures;
use crate::plan::{Frame, Plan, plan};
use crate::sign::Sign;

/// A trouble in which one leaves, and calls from outside.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Leave {
    title: String,
    hint: String,
    warning: Option<String>,
    acts: Vec<String>,
}

/// Troubles that are met with the same acts, and what to do first.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Card {
    troubles: Vec<Named>,
    warnings: Vec<Warning>,
    /// What is done at a device.
    acts: Vec<Doing>,
    otherwise: Vec<String>,
    /// False if it is general advice, because the map is silent.
    mapped: bool,
}

/// A trouble, and what comes before a device is worked.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Named {
    title: String,
    /// The trouble alone, without the place.
    name: String,
    first: Vec<String>,
}

/// What could hurt, all of one rank.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Warning {
    /// The signal word, in the language of the sheet.
    word: String,
    /// Its rank, for the colour.
    signal: Signal,
    /// By their ids: the same caution may be worded a little otherwise for another trouble.
    #[serde(skip)]
    ids: Vec<String>,
    texts: Vec<String>,
}

/// One act, with the sign of the device it is done at.
#[derive(Debug, Clone, PartialEq, Serialize)]
struct Doing {
    text: String,
    sign: Option<Sign>,
}

/// Signs are large enough to be found from a step away, in millimetres.
const SIGN_RADIUS: f64 = 3.4;
/// Plans that stand on the first page.
const FIRST_PAGE_PLANS: usize = 2;
/// Acts on a card: more would not be read in a hurry, and the screen has the rest.
const ACTS: usize = 3;

/// The data of the sheet.
pub(crate) fn gather(house: &House<'_>, pictures: &mut Pictures<'_>) -> Value {
    let leave: Vec<Leave> = Trouble::ALL
        .iter()
        .filter(|trouble| trouble.is_leave_first())
        .map(|&trouble| leave(house, trouble))
        .collect();
    let mut asked: Vec<(Trouble, Spot, Answer)> = Trouble::ALL
        .iter()
        .filter(|trouble| !trouble.is_leave_first())
        .filter_map(|&trouble| {
            let at = spot(house, trouble)?;
            let answer = house.answer(trouble, at.clone());
            Some((trouble, at, answer))
        })
        .collect();
    asked.sort_by_key(|(trouble, _, answer)| harm(*trouble, answer));
    let mut cards: Vec<Card> = Vec::new();
    for (trouble, at, answer) in &asked {
        let next = card(house, *trouble, at, answer);
        match cards.iter_mut().find(|known| known.is_met_like(&next)) {
            Some(known) => known.join(next),
            None => cards.push(next),
        }
    }
    let urgent = asked.iter().filter(|(trouble, _, answer)| harm(*trouble, answer).0 < LATER);
    let devices = devices(house, urgent.map(|(_, _, answer)| answer));
    let plans = plans(house, pictures, &devices);
    let (first, more) = plans.split_at(plans.len().min(FIRST_PAGE_PLANS));
    json!({
        "leave": leave,
        "cards": cards,
        "numbers": house.urgent_numbers(),
        "blanks": blanks(house),
        "plans": first,
        "more_plans": more,
        "words": house.labels(&[
            "paper-leave",
            "paper-general",
            "paper-blanks",
        ]),
    })
}

/// Whom this home needs a number of and has none: a line to write it on by hand, for the sheet hangs there
/// before the map is complete.
fn blanks(house: &House<'_>) -> Vec<String> {
    let is_there = |kinds: &[Kind]| house.home.components.iter().any(|c| kinds.contains(&c.kind));
    let needed = [
        (Role::WaterUtility, is_there(&[Kind::WaterMain]), "role-water-utility"),
        (Role::SewerUtility, is_there(&[Kind::SewerMain]), "role-sewer-utility"),
        (Role::ElectricityUtility, true, "role-electricity-utility"),
        (
            Role::GasUtility,
            is_there(&[Kind::GasMeter, Kind::GasValve, Kind::GasAppliance]),
            "role-gas-utility",
        ),
        (Role::Plumber, true, "role-plumber"),
        (Role::Electrician, true, "role-electrician"),
    ];
    let is_known =
        |role: Role| house.home.contacts.iter().any(|c| c.role == Some(role) && c.phone.is_some());
    let blank = needed.into_iter().filter(|(role, needs, _)| *needs && !is_known(*role));
    blank.map(|(.., key)| house.text(key)).collect()
}

/// Where a trouble is asked about: anywhere, where an answer can be given to that; else where it does
/// the most harm. `None` if this home cannot have it.
fn spot(house: &House<'_>, trouble: Trouble) -> Option<Spot> {
    let all = spots(house.home, trouble);
    let first = all.first()?;
    let height = |spot: &Spot| match spot {
        Spot::Component(id) => {
            house.home.component(id).and_then(|component| house.home.height_m(component))
        }
        _ => None,
    };
    match trouble {
        Trouble::Leak
        | Trouble::WaterFromAbove
        | Trouble::Sparks
        | Trouble::Shock
        | Trouble::WaterNearPower => Some(Spot::Home),
        // The lowest opening runs over first.
        Trouble::SewageRising | Trouble::DrainBacksUp => {
            let open = all.iter().filter_map(|spot| Some((height(spot)?, spot)));
            open.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, spot)| spot.clone())
        }
        // From the highest one it runs through all below.
        Trouble::ToiletOverflow => {
            let open = all.iter().filter_map(|spot| Some((height(spot)?, spot)));
            open.max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, spot)| spot.clone())
        }
        _ => {
            // The one that most hangs on; of equals the first.
            let weight = |spot: &Spot| match spot {
                Spot::Component(id) => house.home.component(id).map_or(0, |component| {
                    let off = house.goes_off(component);
                    off.len() + 10 * off.iter().filter(|c| c.is_critical()).count()
                }),
                _ => 0,
            };
            // Of equals the last in reverse is the first.
            all.iter().rev().max_by_key(|spot| weight(spot)).cloned()
        }
    }
    .or_else(|| Some(first.clone()))
}

/// The rank of what can wait until the others have been dealt with.
const LATER: u8 = 2;

/// Worst harm first: what can kill people; then what ruins a house by the minute; then what fails.
/// Within each, by the worst signal word, then in the order of the troubles.
fn harm(trouble: Trouble, answer: &Answer) -> (u8, Signal, Trouble) {
    let rank = match trouble {
        Trouble::Shock | Trouble::WaterNearPower | Trouble::Sparks => 0,
        Trouble::Leak
        | Trouble::WaterFromAbove
        | Trouble::SewageRising
        | Trouble::ToiletOverflow
        | Trouble::PitRising
        | Trouble::DrainBacksUp
        | Trouble::WaterAtAirHandler => 1,
        _ => LATER,
    };
    let worst = answer.cautions.iter().map(|caution| caution.signal).min();
    (rank, worst.unwrap_or(Signal::Notice), trouble)
}

fn leave(house: &House<'_>, trouble: Trouble) -> Leave {
    let answer = house.answer(trouble, Spot::Home);
    let acts = answer.steps.iter().filter(|step| matches!(step.act, Act::Leave | Act::Call));
    let warning = answer.cautions.iter().find(|caution| caution.signal == Signal::Danger);
    Leave {
        title: house.text(&format!("trouble-{}", trouble.id())),
        hint: house.text(&format!("trouble-{}-hint", trouble.id())),
        warning: warning.map(|caution| caution.text.clone()),
        acts: acts.map(|step| step.text.clone()).collect(),
    }
}

fn card(house: &House<'_>, trouble: Trouble, at: &Spot, answer: &Answer) -> Card {
    let name = house.text(&format!("trouble-{}", trouble.id()));
    let spot = match at {
        Spot::Component(id) => house.home.component(id).map(|component| house.named(component)),
        Spot::Space(id) => house.home.space(id).map(|space| space.name.clone()),
        Spot::Connection(..) | Spot::Home => None,
    };
    let title = match spot {
        Some(spot) => {
            house.words.fill("paper-trouble-at", &[fill("trouble", &name), fill("spot", &spot)])
        }
        None => name.clone(),
    };
    let first = first_acts(&answer.steps);
    let told = || answer.steps.iter().take(first);
    let before = told().take_while(|step| step.component.is_none()).count();
    let otherwise = answer.steps.iter().skip(first).filter(|step| is_otherwise(step));
    let mut warnings: Vec<Warning> = Vec::new();
    for caution in &answer.cautions {
        if !matches!(caution.signal, Signal::Danger | Signal::Warning) {
            continue;
        }
        let (id, text) = (caution.id.clone(), caution.text.clone());
        add_warning(
            &mut warnings,
            house.text(signal_key(caution.signal)),
            caution.signal,
            id,
            text,
        );
    }
    Card {
        troubles: vec![Named {
            title,
            name: name.clone(),
            first: told().take(before).map(|step| step.text.clone()).collect(),
        }],
        warnings,
        acts: told()
            .skip(before)
            .map(|step| {
                let device = step.component.as_deref().and_then(|id| house.home.component(id));
                Doing { text: step.text.clone(), sign: device.map(|device| house.sign(device)) }
            })
            .collect(),
        otherwise: otherwise.map(|step| step.text.clone()).collect(),
        mapped: answer.mapped,
    }
}

fn add_warning(
    warnings: &mut Vec<Warning>,
    word: String,
    signal: Signal,
    id: String,
    text: String,
) {
    match warnings.iter_mut().find(|warning| warning.signal == signal) {
        Some(known) if known.ids.contains(&id) => {}
        Some(known) => {
            known.ids.push(id);
            known.texts.push(text);
        }
        None => warnings.push(Warning { word, signal, ids: vec![id], texts: vec![text] }),
    }
}

impl Card {
    /// True if the same devices are worked in the same way.
    fn is_met_like(&self, other: &Self) -> bool {
        !self.acts.is_empty() && self.acts == other.acts && self.mapped == other.mapped
    }

    /// Takes in a card that is met like this one.
    fn join(&mut self, other: Self) {
        self.troubles.extend(other.troubles);
        for warning in other.warnings {
            for (id, text) in warning.ids.into_iter().zip(warning.texts) {
                add_warning(&mut self.warnings, warning.word.clone(), warning.signal, id, text);
            }
        }
        self.warnings.sort_by_key(|warning| warning.signal);
        for text in other.otherwise {
            if !self.otherwise.contains(&text) {
                self.otherwise.push(text);
            }
        }
    }
}

/// How many steps from the first one make up the first acts: up to and with the first device that is
/// worked, and further ones that are worked the same way.
fn first_acts(steps: &[Step]) -> usize {
    let works = |step: &Step| {
        step.component.is_some()
            && matches!(
                step.act,
                Act::Close | Act::SwitchOff | Act::OpenCap | Act::Reset | Act::Unplug
            )
    };
    // Where many looks come first, the first few of them are the first acts.
    let Some(first) = steps.iter().position(works).filter(|&first| first <= ACTS) else {
        return steps.len().min(ACTS);
    };
    let act = steps.get(first).map(|step| step.act);
    let same = steps.iter().skip(first).take_while(|s| works(s) && Some(s.act) == act).count();
    first + same
}

/// True for a step that says what to do when the first acts do not help.
fn is_otherwise(step: &Step) -> bool {
    step.id.starts_with("step-if-")
        || matches!(
            step.id.as_str(),
            "step-last-utility"
                | "step-only-utility"
                | "step-nothing-isolates"
                | "step-no-cap-helps"
                | "step-trips-again"
                | "step-call-utility-water"
                | "step-shock-utility"
                | "step-shock-breathing"
                | "step-utility-works-it"
                | "step-licensed-works-it"
        )
}

fn signal_key(signal: Signal) -> &'static str {
    match signal {
        Signal::Danger => "signal-danger",
        Signal::Warning => "signal-warning",
        Signal::Caution => "signal-caution",
        Signal::Notice => "signal-notice",
    }
}

/// The devices that the answers work, or fall back on, in that order.
fn devices<'a>(
    house: &House<'a>,
    answers: impl Iterator<Item = &'a Answer> + Clone,
) -> Vec<&'a Component> {
    let steps = answers.clone().flat_map(|answer| {
        let first = first_acts(&answer.steps);
        answer.steps.iter().take(first).filter_map(|step| step.component.as_deref())
    });
    let sets = answers.flat_map(|answer| answer.sets_to_tell().take(2).flat_map(|set| &set.close));
    // A sign without a tag would tell nothing.
    let mut found: Vec<&Component> = Vec::new();
    for id in steps.chain(sets.map(String::as_str)) {
        if let Some(component) = house.home.component(id)
            && component.tag.is_some()
            && !found.iter().any(|known| known.id == component.id)
        {
            found.push(component);
        }
    }
    found
}

/// The plans of the levels on which those devices are, the one with most of them first.
fn plans(house: &House<'_>, pictures: &mut Pictures<'_>, devices: &[&Component]) -> Vec<Plan> {
    let (width, _) = house.order.paper.size_mm();
    let frame =
        Frame { width: (width - 20.0) * 0.31, height: 42.0, radius: SIGN_RADIUS, close: true };
    let mut plans: Vec<Plan> = house
        .levels()
        .into_iter()
        .filter_map(|level| plan(house, pictures, level, devices, frame))
        .collect();
    plans.sort_by_key(|plan| Reverse(plan.pins.len()));
    plans
}
