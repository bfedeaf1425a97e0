//! The ways to cut a spot off, with what they take and what goes off with them.

use quarterturn_estimate::si::time::second;
use quarterturn_estimate::si::volume::liter;
use quarterturn_estimate::{Range, Time, floor, leak};
use quarterturn_home::{Kind, Net, Role};
use quarterturn_network::{HomeNet, Isolator, Lost, Node, Terms, as_node};

use crate::context::Context;
use crate::practice::Leg;
use crate::route::Point;
use crate::{By, ClosingSet};

/// A way to cut the spot off.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Way {
    /// Places of the devices, in the order to work them.
    pub(crate) devices: Vec<usize>,
    /// For each device, seconds to walk there from the one before and work it.
    pub(crate) seconds: Vec<f64>,
    pub(crate) by: By,
    pub(crate) lost: Lost,
    pub(crate) litres: Option<f64>,
    pub(crate) confidence: f64,
}

/// What the search for ways found.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Ways {
    /// Best first.
    pub(crate) list: Vec<Way>,
    /// True if a source reaches the spot at all.
    pub(crate) fed: bool,
}

/// How many ways are looked for.
const WANTED: usize = 12;
/// Most maximum flows spent on that.
const BUDGET: usize = 600;
/// Weights are in tenths of a second.
const TENTHS: f64 = 10.0;
/// What one thing that goes off weighs, as seconds of effort. Common practice, no source: one
/// rather works a second device than leaves the whole house dry, but not a third and fourth.
const LOSS_SECONDS: f64 = 4.0;
/// The same for a neighbour's: they have no say in it.
const NEIGHBOR_SECONDS: f64 = 30.0;
/// What each device costs beyond walking and working: it has to be found, under stress.
const FINDING_SECONDS: f64 = 15.0;
/// What it weighs that the only way to a device leads across a room where water is. Common practice,
/// no source: one may slip, or find the water live and have to turn back, so that two minutes more
/// elsewhere are better.
const THROUGH_WATER_SECONDS: f64 = 120.0;
/// What something critical weighs.
const CRITICAL_SECONDS: f64 = 600.0;
/// What it weighs that a licensed person or the utility must come: more than anything in a house.
const LICENSED_WEIGHT: f64 = 20_000.0;
const UTILITY_WEIGHT: f64 = 200_000.0;
/// How long they may take to come. Common practice, no source: an hour or two, at night as well.
const LICENSED_WAIT: f64 = 7_200.0;
pub(crate) const UTILITY_WAIT: f64 = 3_600.0;
/// What a failed try costs, against the chance that it fails.
const FAILURE_SECONDS: f64 = 60.0;

/// The ways to cut `targets` off, best first: what anyone can do before what a licensed person or
/// the utility must do, then by effort (one round past all devices) and by what goes off, then fewer
/// devices, then the order of the home file.
///
/// The search itself counts each device's walk from the start, since only what adds up can be
/// searched exactly; the sets it finds are then put in order by their rounds.
pub(crate) fn ways(ctx: &Context<'_>, net: &HomeNet, targets: &[Node]) -> Ways {
    let key = (net.net, targets.to_vec());
    // A net made for one purpose, such as the hot lines alone, is not the home's.
    let is_homes = std::ptr::eq(net, ctx.net(net.net));
    if let Some(known) = ctx.ways.borrow().get(&key).filter(|_| is_homes) {
        return known.clone();
    }
    let found = search_ways(ctx, net, targets);
    if is_homes {
        ctx.ways.borrow_mut().insert(key, found.clone());
    }
    found
}

fn search_ways(ctx: &Context<'_>, net: &HomeNet, targets: &[Node]) -> Ways {
    let fed = net.network.is_fed(targets, |node| is_shut(ctx, net, node));
    if !fed {
        return Ways { list: Vec::new(), fed };
    }
    let everyone = Costs::new(ctx, net, |_| true);
    let mut found = search(net, &everyone, targets, WANTED);
    // The utility's device is the last resort, so it is always told, behind all others.
    if !found.iter().any(|set| by(ctx, set) == By::Utility) {
        let theirs = Costs::new(ctx, net, |place| ctx.by(place) == By::Utility);
        found.extend(search(net, &theirs, targets, 1));
    }
    let mut list: Vec<(f64, Way)> = found
        .into_iter()
        .map(|set| way(ctx, net, &set))
        .map(|way| (way.burden(ctx), way))
        .collect();
    list.sort_by(|(a, way), (b, other)| {
        let fewer = way.devices.len().cmp(&other.devices.len());
        way.by.cmp(&other.by).then(a.total_cmp(b)).then(fewer)
    });
    Ways { list: list.into_iter().map(|(_, way)| way).collect(), fed }
}

fn search(net: &HomeNet, costs: &Costs, targets: &[Node], wanted: usize) -> Vec<Vec<usize>> {
    let mut isolator = Isolator::new(&net.network, costs);
    let found = isolator.best(targets, wanted, BUDGET);
    found
        .sets
        .into_iter()
        .map(|set| set.devices.into_iter().map(|node| node as usize).collect())
        .collect()
}

fn by(ctx: &Context<'_>, devices: &[usize]) -> By {
    devices.iter().map(|&place| ctx.by(place)).max().unwrap_or(By::Anyone)
}

/// Shutting these devices, in the order of the shortest round.
pub(crate) fn way(ctx: &Context<'_>, net: &HomeNet, devices: &[usize]) -> Way {
    let (devices, seconds) = round(ctx, devices);
    let shut = |place: usize| ctx.is_shut(place) || devices.contains(&place);
    let mut lost = ctx.impact.lost(&ctx.arriving, shut);
    // Rule 11: what must be named first stands first, else the order of the home file.
    lost.off.sort_by_key(|&place| (!ctx.home.components[place].is_critical(), place));
    let by = by(ctx, &devices);
    let total = seconds.iter().sum::<f64>() + wait_seconds(by);
    let litres = (net.net == Net::Water).then(|| {
        let flow = leak::typical(ctx.leak_source());
        let time = Range::exactly(Time::new::<second>(total));
        floor::litres(flow, time).likely.get::<liter>()
    });
    Way {
        by,
        confidence: devices.iter().map(|&place| ctx.confidence(place)).product(),
        lost,
        litres,
        devices,
        seconds,
    }
}

/// The devices in the order that makes the shortest round, and the seconds for each.
fn round(ctx: &Context<'_>, devices: &[usize]) -> (Vec<usize>, Vec<f64>) {
    let mut left: Vec<usize> = devices.to_vec();
    let mut at = ctx.start();
    let (mut order, mut seconds) = (Vec::new(), Vec::new());
    // The nearest next: sets have two or three devices, where that is rarely beaten.
    while !left.is_empty() {
        let mut best = (Leg { walk: f64::MAX, work: 0.0 }, 0);
        for (index, &place) in left.iter().enumerate() {
            let leg = ctx.leg(at, place);
            if leg.walk < best.0.walk {
                best = (leg, index);
            }
        }
        let place = left.remove(best.1);
        at = ctx.point(place);
        seconds.push(best.0.total());
        order.push(place);
    }
    (order, seconds)
}

pub(crate) fn is_shut(ctx: &Context<'_>, net: &HomeNet, node: Node) -> bool {
    net.network.is_device(node) && ctx.is_shut(node as usize)
}

impl Way {
    pub(crate) fn total_seconds(&self) -> f64 {
        self.seconds.iter().sum::<f64>() + wait_seconds(self.by)
    }

    /// What the way costs, in seconds of effort: the round, finding each device, the risk that one
    /// fails, the water on the way, and what goes off.
    fn burden(&self, ctx: &Context<'_>) -> f64 {
        let effort: f64 = self.seconds.iter().sum();
        let mut at = ctx.start();
        let mut water = 0.0;
        for &place in &self.devices {
            water += water_seconds(ctx, at, place);
            at = ctx.point(place);
        }
        let devices: f64 = self
            .devices
            .iter()
            .map(|&place| {
                finding_seconds(ctx, place) + (1.0 - ctx.confidence(place)) * FAILURE_SECONDS
            })
            .sum();
        let lost = self.lost.off.iter().map(|&place| loss_seconds(ctx, place));
        effort + water + devices + lost.sum::<f64>()
    }

    pub(crate) fn to_set(&self, ctx: &Context<'_>) -> ClosingSet {
        let id = |&place: &usize| ctx.home.components[place].id.clone();
        let mut needs: Vec<String> = self
            .devices
            .iter()
            .filter_map(|&place| ctx.home.components[place].operates.as_ref()?.tool.clone())
            .collect();
        needs.sort();
        needs.dedup();
        ClosingSet {
            close: self.devices.iter().map(id).collect(),
            by: self.by,
            seconds: rounded(self.total_seconds(), 1.0),
            litres: self.litres.map(|litres| rounded(litres, 0.1)),
            goes_off: self.lost.off.iter().map(id).collect(),
            needs,
            confidence: rounded(self.confidence, 0.01),
        }
    }

    /// True if it cuts a fire-sprinkler riser.
    pub(crate) fn cuts_sprinklers(&self, ctx: &Context<'_>) -> bool {
        self.lost.off.iter().any(|&place| ctx.home.components[place].kind == Kind::SprinklerRiser)
    }
}

/// How long one waits for those who must do it.
fn wait_seconds(by: By) -> f64 {
    match by {
        By::Anyone => 0.0,
        By::Licensed => LICENSED_WAIT,
        By::Utility => UTILITY_WAIT,
    }
}

/// A figure with no more digits than it deserves.
pub(crate) fn rounded(value: f64, step: f64) -> f64 {
    let digits = (1.0 / step).round();
    (value * digits).round() / digits
}

/// What each device and each loss costs, worked out once.
struct Costs {
    effort: Vec<Option<u64>>,
    shut: Vec<bool>,
    loss: Vec<u64>,
}

impl Costs {
    fn new(ctx: &Context<'_>, net: &HomeNet, may: impl Fn(usize) -> bool) -> Self {
        let count = ctx.home.components.len();
        let device = |place: usize| net.member[place] && net.network.is_device(as_node(place));
        let effort = (0..count)
            .map(|place| {
                let usable = device(place) && ctx.is_usable(place) && may(place);
                (usable && !ctx.is_forbidden(place)).then(|| tenths(effort_seconds(ctx, place)))
            })
            .collect();
        let loss = ctx
            .home
            .components
            .iter()
            .enumerate()
            .map(|(place, component)| {
                let counts = net.member[place] && component.kind.is_served();
                if counts { tenths(loss_seconds(ctx, place)) } else { 0 }
            })
            .collect();
        let shut = (0..count).map(|place| device(place) && ctx.is_shut(place)).collect();
        Self { effort, shut, loss }
    }
}

/// What it weighs that something goes off.
fn loss_seconds(ctx: &Context<'_>, place: usize) -> f64 {
    let component = &ctx.home.components[place];
    let owner = component.owner.as_deref().and_then(|id| ctx.home.contact(id));
    match (component.is_critical(), owner.and_then(|contact| contact.role)) {
        (true, _) => CRITICAL_SECONDS,
        (false, Some(Role::Neighbor)) => NEIGHBOR_SECONDS,
        (false, _) => LOSS_SECONDS,
    }
}

/// What finding a device costs beyond the time it takes; one that was practised is known.
fn finding_seconds(ctx: &Context<'_>, place: usize) -> f64 {
    if ctx.is_practised(place) { 0.0 } else { FINDING_SECONDS }
}

/// What it weighs that water is on the way to a device.
fn water_seconds(ctx: &Context<'_>, from: Point, place: usize) -> f64 {
    if ctx.leads_through_water(from, place) { THROUGH_WATER_SECONDS } else { 0.0 }
}

fn effort_seconds(ctx: &Context<'_>, place: usize) -> f64 {
    let wait = match ctx.by(place) {
        By::Anyone => 0.0,
        By::Licensed => LICENSED_WEIGHT,
        By::Utility => UTILITY_WEIGHT,
    };
    ctx.leg(ctx.start(), place).total()
        + water_seconds(ctx, ctx.start(), place)
        + finding_seconds(ctx, place)
        + (1.0 - ctx.confidence(place)) * FAILURE_SECONDS
        + wait
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "seconds are clamped to a small positive range"
)]
fn tenths(seconds: f64) -> u64 {
    (seconds.clamp(0.0, 1e9) * TENTHS).round() as u64
}

impl Terms for Costs {
    fn effort(&self, device: Node) -> Option<u64> {
        self.effort.get(device as usize).copied().flatten()
    }

    fn is_shut(&self, device: Node) -> bool {
        self.shut.get(device as usize).copied().unwrap_or(false)
    }

    fn loss(&self, node: Node) -> u64 {
        self.loss.get(node as usize).copied().unwrap_or(0)
    }
}
