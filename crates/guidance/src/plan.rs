//! In which order to work the devices, so that least harm is done.

use quarterturn_estimate::leak;
use quarterturn_estimate::si::volume_rate::liter_per_second;
use quarterturn_network::plan::{self, Act, Situation};
use quarterturn_network::{HomeNet, Node};

use crate::context::Context;
use crate::isolation::{UTILITY_WAIT, Way, is_shut};
use crate::{By, Choice};

/// What one thing that goes off for an hour is worth, in litres on the floor. Common practice, no
/// source: a house without water for an afternoon is a nuisance, not a loss.
const LITRES_AN_HOUR: f64 = 1.0;
/// The same for something that must be named first.
const CRITICAL_LITRES_AN_HOUR: f64 = 60.0;
/// Hours until it is mended. Common practice, no source.
const HOURS_TO_MEND: f64 = 4.0;
/// What each act is worth as such, in litres: under stress it can be misread or done wrong. Common
/// practice, no source.
const LITRES_AN_ACT: f64 = 10.0;
/// Ways drawn beside the plan.
const CHOICES: usize = 3;

/// An act of the plan: what, where, and the seconds for walking there and doing it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Staged {
    pub(crate) act: Act,
    pub(crate) place: usize,
    pub(crate) seconds: f64,
}

/// The order of least expected harm among the devices of the ways that anyone can go.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct StagedPlan {
    pub(crate) acts: Vec<Staged>,
    /// Devices that are shut in the end, by place.
    pub(crate) shut: Vec<usize>,
    pub(crate) choices: Vec<Choice>,
}

/// The best order for the best way and the fastest single device; `None` if no one in the house can
/// cut it off.
pub(crate) fn staged(
    ctx: &Context<'_>,
    net: &HomeNet,
    targets: &[Node],
    ways: &[Way],
) -> Option<StagedPlan> {
    let ours: Vec<&Way> = ways.iter().filter(|way| way.by == By::Anyone).collect();
    let best = *ours.first()?;
    let mut places = best.devices.clone();
    let single = ours
        .iter()
        .filter(|way| way.devices.len() == 1)
        .min_by(|a, b| a.total_seconds().total_cmp(&b.total_seconds()));
    if let Some(&device) = single.and_then(|way| way.devices.first())
        && !places.contains(&device)
    {
        places.push(device);
    }
    if places.len() > plan::MOST_DEVICES {
        return None;
    }
    let house = House::new(ctx, net, targets, places);
    let found = plan::least_harm(&house);
    let mut acts = Vec::new();
    let (mut at, mut shut) = (None, 0_u32);
    for act in found.acts {
        let (Act::Shut(device) | Act::Open(device)) = act;
        let seconds = house.walk_seconds(at, device);
        acts.push(Staged { act, place: house.places[device], seconds });
        match act {
            Act::Shut(_) => shut |= 1 << device,
            Act::Open(_) => shut &= !(1 << device),
        }
        at = Some(device);
    }
    // A plan that gives up is none: the ways themselves then tell what to try.
    if !house.is_cut_off(shut) {
        return None;
    }
    let in_plan = |&d: &usize| shut & (1 << d) != 0;
    let shut = (0..house.places.len()).filter(in_plan).map(|d| house.places[d]).collect();
    let choices = house.choices(ctx, &acts, &ours);
    Some(StagedPlan { acts, shut, choices })
}

/// The house as the planner sees it, with everything that hangs on a set of devices worked out once.
struct House {
    places: Vec<usize>,
    /// Seconds to walk from the start (first) or from a device to a device, and to work it.
    reach: Vec<Vec<f64>>,
    fails: Vec<f64>,
    litres_a_second: f64,
    /// For each mask: the part of the leak that still runs, and what is off, in litres an hour.
    running: Vec<f64>,
    off: Vec<f64>,
}

impl House {
    fn new(ctx: &Context<'_>, net: &HomeNet, targets: &[Node], places: Vec<usize>) -> Self {
        // A drill tells walking and working together, so that only their sum is sure.
        let leg = |from: Option<usize>, to: usize| match from {
            // Who stands at a device does not walk to it.
            Some(from) if from == to => ctx.work_seconds(to),
            Some(from) => ctx.leg(ctx.point(from), to).total(),
            None => ctx.leg(ctx.start(), to).total(),
        };
        let reach = std::iter::once(None)
            .chain(places.iter().map(|&place| Some(place)))
            .map(|from| places.iter().map(|&to| leg(from, to)).collect())
            .collect();
        let (mut running, mut off) = (Vec::new(), Vec::new());
        let before = net.network.reached(|n| is_shut(ctx, net, n));
        for mask in 0..1_u32 << places.len() {
            let shut = |node: Node| {
                is_shut(ctx, net, node)
                    || places
                        .iter()
                        .enumerate()
                        .any(|(d, &place)| mask & (1 << d) != 0 && place == node as usize)
            };
            let after = net.network.reached(shut);
            let feeds = |reached: &[bool], open: &dyn Fn(Node) -> bool| -> f64 {
                targets
                    .iter()
                    .flat_map(|&target| net.network.feeders(target))
                    .filter(|&&feeder| reached[feeder as usize] && open(feeder))
                    .map(|_| 1.0)
                    .sum()
            };
            let all = feeds(&before, &|n| !is_shut(ctx, net, n));
            let left = feeds(&after, &|n| !shut(n));
            running.push(if all > 0.0 { left / all } else { 0.0 });
            let lost = (0..ctx.home.components.len()).filter(|&p| before[p] && !after[p]);
            off.push(lost.map(|p| weight(ctx, p)).sum());
        }
        let litres_a_second = leak::typical(ctx.leak_source()).likely.get::<liter_per_second>();
        Self {
            reach,
            fails: places.iter().map(|&place| fails(ctx, place)).collect(),
            places,
            litres_a_second,
            running,
            off,
        }
    }

    /// Litres on the floor against time, for the plan and for the best ways.
    fn choices(&self, ctx: &Context<'_>, acts: &[Staged], ours: &[&Way]) -> Vec<Choice> {
        let id = |place: usize| ctx.home.components[place].id.clone();
        let device = |place: usize| self.places.iter().position(|&p| p == place);
        let curve = |acts: &[(usize, bool, f64)]| {
            let (mut time, mut litres, mut mask) = (0.0, 0.0, 0_usize);
            let mut points = vec![(0.0, 0.0)];
            for &(device, shuts, seconds) in acts {
                time += seconds;
                litres += self.litres_a_second * self.running[mask] * seconds;
                mask = if shuts { mask | (1 << device) } else { mask & !(1 << device) };
                points.push((time, litres));
            }
            points
        };
        let staged: Vec<(usize, bool, f64)> = acts
            .iter()
            .filter_map(|a| Some((device(a.place)?, matches!(a.act, Act::Shut(_)), a.seconds)))
            .collect();
        let mut choices = vec![Choice {
            close: acts.iter().map(|a| id(a.place)).collect(),
            reopens: acts.iter().any(|a| matches!(a.act, Act::Open(_))),
            curve: curve(&staged),
        }];
        for way in ours {
            let known: Option<Vec<usize>> = way.devices.iter().map(|&p| device(p)).collect();
            let Some(devices) = known else { continue };
            let acts: Vec<(usize, bool, f64)> =
                devices.into_iter().zip(&way.seconds).map(|(d, &s)| (d, true, s)).collect();
            let choice = Choice {
                close: way.devices.iter().map(|&place| id(place)).collect(),
                reopens: false,
                curve: curve(&acts),
            };
            let same = |other: &Choice| {
                !other.reopens
                    && other.close.len() == choice.close.len()
                    && other.close.iter().all(|id| choice.close.contains(id))
            };
            if choices.len() < CHOICES && !choices.iter().any(same) {
                choices.push(choice);
            }
        }
        choices
    }
}

/// Chance that a device fails, or that one cannot get to it.
fn fails(ctx: &Context<'_>, place: usize) -> f64 {
    /// Chance that one has to turn back where water is on the only way. Common practice, no source.
    const TURNED_BACK: f64 = 0.5;
    let there = 1.0 - ctx.confidence(place);
    let is_wet = ctx.leads_through_water(ctx.start(), place);
    if is_wet { TURNED_BACK + (1.0 - TURNED_BACK) * there } else { there }
}

fn weight(ctx: &Context<'_>, place: usize) -> f64 {
    let component = &ctx.home.components[place];
    match (component.kind.is_served(), component.is_critical()) {
        (false, _) => 0.0,
        (true, true) => CRITICAL_LITRES_AN_HOUR,
        (true, false) => LITRES_AN_HOUR,
    }
}

impl Situation for House {
    fn devices(&self) -> usize {
        self.places.len()
    }

    fn walk_seconds(&self, from: Option<usize>, to: usize) -> f64 {
        self.reach[from.map_or(0, |device| device + 1)][to]
    }

    /// It is in the walk already.
    fn work_seconds(&self, _: usize) -> f64 {
        0.0
    }

    fn fails(&self, device: usize) -> f64 {
        self.fails[device]
    }

    fn harm_of_act(&self) -> f64 {
        LITRES_AN_ACT
    }

    fn harm_rate(&self, shut: u32) -> f64 {
        self.litres_a_second * self.running[shut as usize] + self.off[shut as usize] / 3600.0
    }

    fn is_cut_off(&self, shut: u32) -> bool {
        self.running[shut as usize] <= 0.0
    }

    fn harm_at_end(&self, shut: u32) -> f64 {
        self.off[shut as usize] * HOURS_TO_MEND
    }

    fn harm_of_giving_up(&self, shut: u32) -> f64 {
        self.harm_rate(shut) * UTILITY_WAIT
    }
}
