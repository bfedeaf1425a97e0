//! Whom to call first: whoever answers for most of what may be at fault today.

use quarterturn_home::{Contact, Net, Role};

use crate::catalogue::fill;
use crate::contacts::{call, contact_for};
use crate::context::Context;
use crate::draft::Draft;
use crate::responsible::{Answering, Responsible};
use crate::{Act, Call, Spot, Trouble};

/// The calls of a draft in their order: what cannot wait, then whoever answers for it, then the
/// others as they were drafted.
pub(crate) fn calls_in_order(ctx: &Context<'_>, draft: &Draft) -> Vec<Call> {
    struct Entry<'a> {
        contact: Option<&'a Contact>,
        role: Role,
        why: String,
        urgent: bool,
    }
    let mut list: Vec<Entry<'_>> = draft
        .calls
        .iter()
        .filter(|drafted| drafted.role != Role::Emergency)
        .map(|drafted| Entry {
            // A trade that the home does not know is still worth saying; no number is invented.
            contact: contact_for(ctx.home, drafted.role),
            role: drafted.role,
            why: ctx.catalogue.text(drafted.why),
            urgent: is_urgent(draft, drafted.why),
        })
        .collect();
    if let Some(told) = first_to_call(ctx, draft) {
        let contact = told.first.contact.as_deref().and_then(|id| ctx.home.contact(id));
        let same = |entry: &Entry<'_>| match (contact, entry.contact) {
            (Some(first), Some(other)) => first.id == other.id,
            (None, None) => entry.role == told.role,
            _ => false,
        };
        // What stands in front because it cannot wait stays there.
        let after_urgent = list.iter().take_while(|entry| entry.urgent).count();
        let new = Entry { contact, role: told.role, why: told.why.clone(), urgent: false };
        match list.iter().position(same) {
            Some(at) => {
                let mut entry = list.remove(at);
                let fills = [fill("why", &entry.why), fill("reason", &told.why)];
                entry.why = ctx.catalogue.fill("why-and-reason", &fills);
                list.insert(at.min(after_urgent), entry);
            }
            None => list.insert(after_urgent, new),
        }
    }
    list.into_iter().map(|e| call(ctx.catalogue, e.contact, e.role, &e.why)).collect()
}

/// Who is to be called first about a draft; `None` where nothing on the map tells, or where the
/// only right thing is to leave.
fn first_to_call(ctx: &Context<'_>, draft: &Draft) -> Option<Responsible> {
    let trouble = ctx.question.trouble;
    if trouble.is_leave_first() {
        return None;
    }
    let mut found: Vec<(Responsible, f64)> = Vec::new();
    for (spot, share) in faults(ctx, draft) {
        let Some(net) = net_of(ctx, trouble, &spot) else { continue };
        let answering = Answering::new(ctx.guide, net, ctx.today(), ctx.catalogue);
        let Some(told) = answering.at(&spot) else { continue };
        let alike = |(other, _): &&mut (Responsible, f64)| {
            (&other.first.contact, &other.first.name) == (&told.first.contact, &told.first.name)
        };
        match found.iter_mut().find(alike) {
            Some((_, sum)) => *sum += share,
            None => found.push((told, share)),
        }
    }
    // The first of equals: suspects come with the likeliest in front.
    let most = found.iter().map(|(_, share)| *share).fold(0.0, f64::max);
    found.into_iter().find(|(_, share)| *share >= most).map(|(told, _)| told)
}

/// What may be at fault, each with its share: the stretches of a drain, else the suspects, else the
/// spot itself.
fn faults(ctx: &Context<'_>, draft: &Draft) -> Vec<(Spot, f64)> {
    if !draft.faults.is_empty() {
        return draft.faults.clone();
    }
    if !draft.suspects.is_empty() {
        let spot = |id: &String| Spot::Component(id.clone());
        return draft.suspects.iter().map(|s| (spot(&s.component), s.share)).collect();
    }
    match (ctx.question.trouble, &ctx.question.at) {
        // What leaks lies above or inside, not in the room where it drips.
        (Trouble::WaterFromAbove, Spot::Space(_)) => Vec::new(),
        (_, spot) => vec![(spot.clone(), 1.0)],
    }
}

/// The net in which a spot is asked about: the trouble's, or else one that it has.
fn net_of(ctx: &Context<'_>, trouble: Trouble, spot: &Spot) -> Option<Net> {
    let wanted: &[Net] = match trouble {
        Trouble::Leak | Trouble::WaterFromAbove | Trouble::NoWater | Trouble::NoHotWater => {
            &[Net::Water, Net::Gas, Net::Power]
        }
        Trouble::ToiletOverflow
        | Trouble::DrainBacksUp
        | Trouble::SewageRising
        | Trouble::PitRising => &[Net::Waste, Net::Power],
        Trouble::WaterNearPower => &[Net::Water, Net::Waste],
        Trouble::CoolingStopped | Trouble::WaterAtAirHandler => &[Net::Condensate, Net::Power],
        Trouble::DeadOutlet
        | Trouble::DeadLight
        | Trouble::DeadArea
        | Trouble::BreakerTrips
        | Trouble::GfciTrips
        | Trouble::Sparks
        | Trouble::Shock => &[Net::Power],
        Trouble::NotAnswering => &[Net::Power, Net::Signal],
        Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire | Trouble::WiresDown => &[],
    };
    let joins = |place: usize, net: Net| ctx.guide.lines_at(place).any(|l| l.carries.net() == net);
    let has = |net: Net| match spot {
        Spot::Component(id) => ctx.places.of(id).is_some_and(|place| joins(place, net)),
        Spot::Connection(from, to) => ctx
            .home
            .connections
            .iter()
            .any(|l| &l.from == from && &l.to == to && l.carries.net() == net),
        Spot::Space(id) => ctx.components_in(id).into_iter().any(|place| joins(place, net)),
        Spot::Home => false,
    };
    wanted.iter().copied().find(|net| has(*net))
}

/// True for a call that ends the danger, or shuts off what runs: it cannot wait for whoever pays.
fn is_urgent(draft: &Draft, why: &str) -> bool {
    match why {
        "why-cut-power-outside" | "why-electricity-utility-cut" => true,
        // Where the household can shut nothing itself, only they stop the water.
        "why-water-utility-close" => !draft.steps.iter().any(|s| s.step.act == Act::Close),
        _ => false,
    }
}

/// True if whoever insures the home should hear of a trouble.
pub(crate) fn does_damage(trouble: Trouble) -> bool {
    trouble.is_wet() || matches!(trouble, Trouble::Fire | Trouble::PitRising)
}
