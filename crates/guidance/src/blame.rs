//! Who is to blame for what gets no power, no water or no hot water, and what to look at next.

use quarterturn_home::{Component, DeviceState, Kind, Medium, Net, OperableBy};
use quarterturn_network::{
    Check, Diagnosis, Faults, HomeNet, Node, Observed, Priors, as_node, blame, next_check,
};

use crate::catalogue::fill;
use crate::context::{Context, is_electrical};
use crate::draft::Draft;
use crate::isolation::{is_shut, rounded};
use crate::{NextCheck, Seen, Spot, Suspect, Trouble};

/// Most diagnoses searched for.
const MOST_DIAGNOSES: usize = 12;
/// Seconds to look at a device, or to try an outlet or a tap. Common practice, no source.
pub(crate) const LOOK_SECONDS: f64 = 10.0;

/// Who is to blame for what is dead.
pub(crate) struct Blame {
    pub(crate) diagnoses: Vec<Diagnosis>,
    pub(crate) next: Option<NextCheck>,
    pub(crate) disbelieved: usize,
}

impl Blame {
    /// The diagnoses of the spot and of what was seen, with `also_dead` dead as well.
    pub(crate) fn of(ctx: &Context<'_>, net: &HomeNet, also_dead: &[usize]) -> Self {
        let single = !matches!(ctx.question.at, Spot::Space(_));
        let mut dead: Vec<usize> = ctx.spot_components();
        dead.retain(|&place| single || can_be_tried(net.net, ctx.home.components[place].kind));
        dead.extend(also_dead);
        Self::about(ctx, net, &dead)
    }

    /// The diagnoses of these components and of what was seen, whatever the spot is.
    pub(crate) fn about(ctx: &Context<'_>, net: &HomeNet, dead: &[usize]) -> Self {
        let none = Self { diagnoses: Vec::new(), next: None, disbelieved: 0 };
        let known =
            |place: usize| net.member[place] && net.network.is_fed(&[as_node(place)], |_| false);
        let loads: Vec<Node> = (0..ctx.home.components.len())
            .filter(|&p| net.member[p] && ctx.home.components[p].kind.is_served())
            .map(as_node)
            .collect();
        let mut seen = Observed::default();
        for &place in dead {
            // What someone saw live is not dead because the question is about its room.
            let live = ctx.seen(&ctx.home.components[place].id) == Some(Seen::Live);
            if known(place) && !live && !seen.dead.contains(&as_node(place)) {
                seen.dead.push(as_node(place));
            }
        }
        for (id, state) in &ctx.question.seen {
            let Some(place) = ctx.places.of(id).filter(|&p| known(p)) else { continue };
            let list = match state {
                Seen::Dead => &mut seen.dead,
                Seen::Live => &mut seen.live,
                _ => continue,
            };
            if !list.contains(&as_node(place)) {
                list.push(as_node(place));
            }
        }
        if seen.dead.is_empty() {
            return none;
        }
        // What stands off on an ordinary day brings nothing and is not the fault either, unless what
        // is dead has no other feed.
        let stands_off = |node: Node| {
            let component = ctx.home.components.get(node as usize);
            component.is_some_and(Component::normally_shut) && is_shut(ctx, net, node)
        };
        let fed = seen.dead.iter().all(|&node| net.network.is_fed(&[node], stands_off));
        let idle = |node: Node| fed && stands_off(node);
        let faults = Faults::of(&net.network, &loads, idle);
        let found = faults.diagnoses(&Usual { ctx, net: net.net }, &seen, MOST_DIAGNOSES);
        let next = next_look(ctx, net, &faults, &found.list, &seen, &loads);
        Self { diagnoses: found.list, next, disbelieved: found.disbelieved.len() }
    }

    /// Each component's share of the blame, largest first.
    pub(crate) fn shares(&self) -> Vec<(usize, f64)> {
        blame(&self.diagnoses).into_iter().map(|(node, share)| (node as usize, share)).collect()
    }
}

/// Shares of the blame as the answer shows them, largest first.
pub(crate) fn suspects(ctx: &Context<'_>, shares: &[(usize, f64)]) -> Vec<Suspect> {
    let mut list: Vec<Suspect> = shares
        .iter()
        .map(|&(place, share)| Suspect {
            component: ctx.home.components[place].id.clone(),
            share: rounded(share, 0.001),
        })
        .collect();
    list.sort_by(|a, b| b.share.total_cmp(&a.share));
    list
}

/// Says what someone depends on and may have lost, if this is the cause.
pub(crate) fn warn_of_loss(ctx: &Context<'_>, draft: &mut Draft, cause: usize) {
    let lost = ctx.impact.lost(&ctx.arriving, |p| ctx.is_shut(p) || p == cause);
    let critical: Vec<String> = lost
        .off
        .iter()
        .filter(|&&place| ctx.home.components[place].is_critical())
        .map(|&place| ctx.name(place))
        .collect();
    if !critical.is_empty() {
        let list = ctx.catalogue.list(&critical);
        draft.caution(ctx, "caution-critical-lost", &[fill("list", &list)]);
    }
}

/// A look at one component, with what to look for.
pub(crate) fn look_at(ctx: &Context<'_>, key: &str, place: usize, seconds: f64) -> NextCheck {
    NextCheck {
        component: ctx.home.components[place].id.clone(),
        look_for: ctx.catalogue.fill(
            key,
            &[fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))],
        ),
        seconds: rounded(seconds, 1.0),
    }
}

/// True for what a person can try, to see whether it has power or water.
pub(crate) fn can_be_tried(net: Net, kind: Kind) -> bool {
    match net {
        Net::Power => {
            matches!(kind, Kind::Receptacle | Kind::Light | Kind::Lampholder | Kind::Gfci)
        }
        Net::Water => matches!(
            kind,
            Kind::Tap
                | Kind::HoseBibb
                | Kind::Sink
                | Kind::Basin
                | Kind::Bath
                | Kind::Shower
                | Kind::Toilet
        ),
        _ => false,
    }
}

/// The check that tells most for the time it takes: a device to look at, or an outlet or tap to try.
fn next_look(
    ctx: &Context<'_>,
    net: &HomeNet,
    faults: &Faults,
    list: &[Diagnosis],
    seen: &Observed,
    loads: &[Node],
) -> Option<NextCheck> {
    let seconds = |place: usize| ctx.walk_seconds(place) + LOOK_SECONDS;
    let mut checks: Vec<Check> = Vec::new();
    // A device whose state can be seen tells whether it is the fault.
    for (place, component) in ctx.home.components.iter().enumerate() {
        let told = ctx.seen(&component.id).is_some();
        if look_key(net.net, component).is_some()
            && !told
            && net.member[place]
            && !ctx.is_forbidden(place)
        {
            let good = list.iter().map(|d| !d.faults.contains(&as_node(place))).collect();
            checks.push(Check { node: as_node(place), seconds: seconds(place), good });
        }
    }
    let to_try: Vec<Node> = loads
        .iter()
        .copied()
        .filter(|node| !seen.dead.contains(node) && !seen.live.contains(node))
        .filter(|&node| {
            let place = node as usize;
            can_be_tried(net.net, ctx.home.components[place].kind)
                && ctx.seen(&ctx.home.components[place].id).is_none()
                && !ctx.is_forbidden(place)
        })
        .collect();
    let live: Vec<Vec<bool>> = list.iter().map(|d| faults.live_loads(d, &to_try)).collect();
    for (index, &node) in to_try.iter().enumerate() {
        let good = live.iter().map(|loads| loads[index]).collect();
        checks.push(Check { node, seconds: seconds(node as usize), good });
    }
    let (best, _) = next_check(list, &checks)?;
    let place = best.node as usize;
    let key = look_key(net.net, &ctx.home.components[place]).unwrap_or(match net.net {
        Net::Water if ctx.question.trouble == Trouble::NoHotWater => "look-hot-tap",
        Net::Water => "look-tap",
        _ => "look-outlet",
    });
    let mut look = look_at(ctx, key, place, best.seconds);
    // What each reply leads to: the likeliest cause that is then left.
    let leading = |good: bool| {
        let of =
            |(d, told): (&Diagnosis, &bool)| (*told == good).then(|| d.faults.first().copied());
        list.iter().zip(&best.good).find_map(of).flatten().map(|node| ctx.name(node as usize))
    };
    look.tell_replies(ctx, leading(true), leading(false));
    Some(look)
}

/// What to look for at a device whose state can be seen; `None` for all else.
fn look_key(net: Net, component: &Component) -> Option<&'static str> {
    match (net, component.kind) {
        (Net::Power, Kind::Gfci) => Some("look-gfci"),
        (Net::Power, Kind::Breaker) => Some("look-breaker"),
        (Net::Power, Kind::Switch) => Some("look-switch"),
        (Net::Power, Kind::ServiceDisconnect | Kind::Disconnect) => Some("look-disconnect"),
        (Net::Water, Kind::IsolatingValve) if component.operable_by == OperableBy::Anyone => {
            Some("look-valve")
        }
        _ => None,
    }
}

/// How likely each kind is to have failed, before anything was seen.
///
/// Rough figures of common practice, no source. Power: a tripped GFCI is the usual cause, then a
/// breaker, a wall switch, a worn outlet or loose joint, an outage. Water: work or a break in the
/// street, a tap or sieve that is clogged, a valve that someone shut, a stuck pressure regulator. They
/// rank what the map leaves possible.
struct Usual<'a, 'c> {
    ctx: &'c Context<'a>,
    net: Net,
}

impl Usual<'_, '_> {
    fn feeds_a_panel(&self, id: &str) -> bool {
        let is_panel =
            |id: &str| self.ctx.home.component(id).is_some_and(|c| c.kind == Kind::Panel);
        let links = &self.ctx.home.connections;
        links.iter().any(|l| l.carries == Medium::Power && l.from == id && is_panel(&l.to))
    }

    fn power(&self, component: &Component) -> f64 {
        let trouble = self.ctx.question.trouble;
        match component.kind {
            // One that was asked for because it stays dark has burnt out more often than not.
            Kind::Light | Kind::Lampholder if trouble == Trouble::DeadLight => 0.2,
            Kind::SumpPump if trouble == Trouble::PitRising => 0.05,
            Kind::Gfci => 0.12,
            // One that feeds a whole panel trips far more rarely.
            Kind::Breaker if self.feeds_a_panel(&component.id) => 0.005,
            Kind::Breaker => 0.05,
            Kind::Switch => 0.04,
            Kind::Receptacle | Kind::Light | Kind::Lampholder => 0.03,
            Kind::ElectricityService => 0.02,
            Kind::Disconnect | Kind::TransferSwitch => 0.01,
            Kind::JunctionBox | Kind::ServiceDisconnect => 0.004,
            kind if is_electrical(kind) => 0.003,
            _ => 0.02,
        }
    }

    fn water(&self, component: &Component) -> f64 {
        match component.kind {
            Kind::WaterHeater if self.ctx.question.trouble == Trouble::NoHotWater => 0.15,
            Kind::WaterMain | Kind::Well => 0.08,
            // What does not move has not been shut by anyone.
            Kind::IsolatingValve if component.state() == DeviceState::Seized => 0.002,
            Kind::IsolatingValve if component.operable_by == OperableBy::Utility => 0.01,
            Kind::IsolatingValve => 0.03,
            Kind::PressureReducingValve
            | Kind::Softener
            | Kind::PressureTank
            | Kind::MixingValve => 0.02,
            Kind::SupplyHose | Kind::BackflowPreventer | Kind::CheckValve => 0.01,
            kind if kind.is_water_fixture() => 0.05,
            _ => 0.003,
        }
    }
}

impl Priors for Usual<'_, '_> {
    fn odds_against(&self, node: Node) -> Option<f64> {
        // The point on a cable that was asked for is no component, and is not blamed.
        let component = self.ctx.home.components.get(node as usize)?;
        let of = |p: f64| ((1.0 - p) / p).ln();
        match self.ctx.seen(&component.id) {
            Some(Seen::Off | Seen::Tripped) => return Some(0.0),
            None if self.ctx.is_shut(node as usize) => return Some(0.0),
            // It stands on, so only a fault inside is left.
            Some(Seen::On) => return Some(of(0.001)),
            _ => {}
        }
        Some(of(match self.net {
            Net::Water => self.water(component),
            _ => self.power(component),
        }))
    }
}
