//! Drains that back up, and sewage that rises.

use std::collections::BTreeMap;

use quarterturn_home::{DeviceState, Kind, Net, Role};
use quarterturn_network::{Check, Diagnosis, Drain, Node, Suspected, as_node, next_check};

use crate::catalogue::fill;
use crate::context::Context;
use crate::draft::Draft;
use crate::isolation::rounded;
use crate::{Act, By, NextCheck, Relief, Seen, Spot, Trouble};

/// Metres of cable that a drain is rodded with. Common practice, no source.
const CABLE_M: f64 = 30.0;
/// Seconds to run a little water and watch. Common practice, no source.
const LOOK_SECONDS: f64 = 20.0;
/// Fixtures named in one sentence.
const MOST_NAMED: usize = 6;

pub(crate) fn backs_up(ctx: &Context<'_>) -> Draft {
    let mut draft = Draft { net: Some(Net::Waste), ..Draft::default() };
    stop_water(ctx, &mut draft);
    draft.mapped = find_blockage(ctx, &mut draft);
    if !draft.mapped {
        general(ctx, &mut draft);
    }
    draft
}

/// Where the blockage may be, what comes of it, and what relieves it; false if the map does not tell.
pub(crate) fn find_blockage(ctx: &Context<'_>, draft: &mut Draft) -> bool {
    let drain = ctx.guide.drain();
    let seen = Sights::of(ctx, drain);
    if seen.all_of.is_empty() && seen.any_of.is_empty() {
        return false;
    }
    let drain = only_caps(drain.clone(), |place| opens(ctx, place));
    let mut suspected = drain.suspected(&seen.all_of, &seen.any_of, &seen.clear);
    if suspected.is_empty() {
        // No one blockage explains it all: what backs up is believed, what drains is doubted.
        draft.advice(ctx, "step-more-than-one-blockage", Act::Look, &[]);
        suspected = drain.suspected(&seen.all_of, &seen.any_of, &[]);
        if suspected.is_empty() {
            let first = seen.all_of.first().copied();
            suspected = drain.suspected(first.as_slice(), &[], &[]);
        }
    }
    if ctx.question.trouble == Trouble::SewageRising {
        doubt_dry_pieces(ctx, &drain, &mut suspected);
    }
    // One toilet that runs over is mostly blocked itself: it is plunged first, and nobody opens a cap
    // for it alone.
    let only_a_toilet = ctx.question.trouble == Trouble::ToiletOverflow && seen.all_of.len() < 2;
    if only_a_toilet {
        blame_the_toilet(ctx, &drain, &mut suspected);
    }
    let runs = |node: Node| ctx.seen(&ctx.home.components[node as usize].id) != Some(Seen::Off);
    let mut emerges: BTreeMap<Node, (f64, f64)> = BTreeMap::new();
    for suspect in &suspected {
        let openings = drain.emerges(suspect.piece, runs);
        let Some(&(_, lowest)) = openings.first() else { continue };
        for &(node, level) in openings.iter().take_while(|(_, level)| *level - lowest < 1e-6) {
            let entry = emerges.entry(node).or_insert((0.0, level));
            entry.0 += suspect.share;
        }
    }
    let mut order: Vec<(Node, (f64, f64))> = emerges.into_iter().collect();
    order.sort_by(|a, b| b.1.0.total_cmp(&a.1.0).then(a.1.1.total_cmp(&b.1.1)).then(a.0.cmp(&b.0)));
    // What the owner may open comes before what only others may.
    let ours = only_caps(drain.clone(), |place| ctx.by(place) == By::Anyone);
    let open =
        ours.relief(&suspected, &seen.all_of).or_else(|| drain.relief(&suspected, &seen.all_of));
    let rod = drain.rodding(&suspected, CABLE_M);
    let id = |node: Node| ctx.home.components[node as usize].id.clone();
    draft.relief = Some(Relief {
        open: open.map(|(node, _)| id(node)),
        rod_from: rod.map(|rod| id(rod.from)),
        emerges_at: order.iter().map(|(node, _)| id(*node)).collect(),
        blocked_between: suspected
            .iter()
            .map(|s| (id(drain.pieces[s.piece].from), id(drain.pieces[s.piece].to)))
            .collect(),
    });
    if !only_a_toilet {
        keep_clear(ctx, draft, &order);
    }
    let rising = ctx.question.trouble == Trouble::SewageRising;
    if let Some((cap, share)) = open
        && (rising || (share > 0.5 && !only_a_toilet))
    {
        open_cap(ctx, draft, cap as usize);
    } else if rising {
        draft.advice(ctx, "step-no-cap-helps", Act::Advice, &[]);
    }
    if let Some(rod) = rod {
        let place = rod.from as usize;
        let key = if rod.against_flow { "step-rod-against" } else { "step-rod" };
        draft.advice(ctx, key, Act::Advice, &[fill("device", &ctx.name(place))]);
    }
    draft.next_check = next_look(ctx, &drain, &suspected, &seen);
    who_pays(ctx, draft, &drain, &suspected);
    draft.faults = suspected
        .iter()
        .map(|s| {
            let piece = drain.pieces[s.piece];
            (Spot::Connection(id(piece.from), id(piece.to)), s.share)
        })
        .collect();
    draft.restore(ctx, "restore-drain-test", &[]);
    true
}

/// Sewage that rises comes from somewhere: a piece with nothing above it that runs water is hardly
/// the one, though it stays possible (ground water, a street that floods).
fn doubt_dry_pieces(ctx: &Context<'_>, drain: &Drain, suspected: &mut [Suspected]) {
    /// Share of its blame that such a piece keeps. Common practice, no source.
    const DOUBT: f64 = 0.02;
    for suspect in suspected.iter_mut() {
        let place = drain.pieces[suspect.piece].from as usize;
        if users_above(ctx, drain, &[place]).is_empty() {
            suspect.share *= DOUBT;
        }
    }
    in_order(suspected);
}

/// The way out of a toilet is narrow and crooked: what blocks it is mostly there.
fn blame_the_toilet(ctx: &Context<'_>, drain: &Drain, suspected: &mut [Suspected]) {
    /// How much likelier than its length says. Common practice, no source.
    const NARROW: f64 = 10.0;
    for suspect in suspected.iter_mut() {
        let place = drain.pieces[suspect.piece].from as usize;
        if ctx.home.components[place].kind == Kind::Toilet {
            suspect.share *= NARROW;
        }
    }
    in_order(suspected);
}

/// Shares that make 1, most likely first.
fn in_order(suspected: &mut [Suspected]) {
    let total: f64 = suspected.iter().map(|suspect| suspect.share).sum();
    for suspect in suspected.iter_mut() {
        suspect.share /= total;
    }
    suspected.sort_by(|a, b| b.share.total_cmp(&a.share).then(a.piece.cmp(&b.piece)));
}

/// The drain with the caps that `keep` holds; the others are taken as walled up.
fn only_caps(mut drain: Drain, keep: impl Fn(usize) -> bool) -> Drain {
    for (place, node) in drain.nodes.iter_mut().enumerate() {
        if !keep(place) {
            node.cap = None;
        }
    }
    drain
}

/// True if a cap is not known to be stuck.
fn opens(ctx: &Context<'_>, place: usize) -> bool {
    let component = &ctx.home.components[place];
    component.state() != DeviceState::Seized && !ctx.question.failed.contains(&component.id)
}

/// What was seen of the drains.
struct Sights {
    all_of: Vec<Node>,
    any_of: Vec<Node>,
    clear: Vec<Node>,
}

impl Sights {
    fn of(ctx: &Context<'_>, drain: &Drain) -> Self {
        let piped = |place: usize| {
            let node = as_node(place);
            drain.pieces.iter().any(|piece| piece.from == node)
        };
        let opening = |place: usize| {
            let kind = ctx.home.components[place].kind;
            piped(place) && (kind.is_drain_opening() || kind == Kind::Cleanout)
        };
        let (mut all_of, mut any_of) = (Vec::new(), Vec::new());
        match &ctx.question.at {
            Spot::Space(_) | Spot::Home => {
                let in_space = ctx.spot_components();
                any_of = in_space.into_iter().filter(|&p| opening(p)).map(as_node).collect();
            }
            // In a pipe, what stands in its upper end backs up.
            Spot::Connection(..) | Spot::Component(_) => {
                let spot = ctx.spot_components().into_iter().find(|&place| piped(place));
                all_of = spot.into_iter().map(as_node).collect();
            }
        }
        let mut clear = Vec::new();
        for (id, seen) in &ctx.question.seen {
            let Some(place) = ctx.places.of(id).filter(|&place| piped(place)) else { continue };
            match seen {
                Seen::BacksUp if !all_of.contains(&as_node(place)) => all_of.push(as_node(place)),
                Seen::Drains => clear.push(as_node(place)),
                _ => {}
            }
        }
        Self { all_of, any_of, clear }
    }
}

fn stop_water(ctx: &Context<'_>, draft: &mut Draft) {
    let machines: Vec<String> = ctx
        .home
        .components
        .iter()
        .enumerate()
        .filter(|(_, c)| matches!(c.kind, Kind::WashingMachine | Kind::Dishwasher))
        .map(|(place, _)| ctx.name(place))
        .take(MOST_NAMED)
        .collect();
    if machines.is_empty() {
        draft.advice(ctx, "step-stop-all-water", Act::StopUse, &[]);
    } else {
        let list = ctx.catalogue.list(&machines);
        draft.advice(ctx, "step-stop-all-water-named", Act::StopUse, &[fill("list", &list)]);
    }
    if condensate_to_sewer(ctx) {
        draft.advice(ctx, "step-stop-cooling", Act::StopUse, &[]);
    }
}

/// True if condensate of the cooling runs into the sewer.
fn condensate_to_sewer(ctx: &Context<'_>) -> bool {
    let in_waste = |id: &str| {
        ctx.home
            .connections
            .iter()
            .any(|l| l.carries.net() == Net::Waste && (l.from == id || l.to == id))
    };
    ctx.home.connections.iter().any(|l| l.carries.net() == Net::Condensate && in_waste(&l.to))
}

fn keep_clear(ctx: &Context<'_>, draft: &mut Draft, emerges: &[(Node, (f64, f64))]) {
    let Some(&(first, _)) = emerges.first() else { return };
    let place = first as usize;
    draft.advice(
        ctx,
        "step-comes-out-at",
        Act::Advice,
        &[fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))],
    );
}

fn open_cap(ctx: &Context<'_>, draft: &mut Draft, place: usize) {
    let there = ctx.leg(ctx.start(), place).work;
    draft.go_to(ctx, "step-open-cap", Act::OpenCap, place, there);
    draft.prove(ctx.catalogue.text("prove-cap"));
}

fn general(ctx: &Context<'_>, draft: &mut Draft) {
    draft.mapped = false;
    draft.advice(ctx, "step-drain-general", Act::Look, &[]);
    draft.call(Role::Plumber, "why-plumber-drain");
    draft.call(Role::SewerUtility, "why-sewer-utility");
}

/// Whom to call first: whoever owns most of what may be blocked. What lies below a boundary is on
/// the other party's side.
fn who_pays(ctx: &Context<'_>, draft: &mut Draft, drain: &Drain, suspected: &[Suspected]) {
    let beyond = |piece: usize| {
        let mut node = drain.pieces[piece].from;
        // Up to the openings: is there a boundary on the way down to here?
        let mut seen = vec![false; drain.nodes.len()];
        let mut stack = vec![node];
        while let Some(at) = stack.pop() {
            node = at;
            if ctx.home.components[node as usize].boundary {
                return true;
            }
            for up in drain.pieces.iter().filter(|p| p.to == node) {
                if !std::mem::replace(&mut seen[up.from as usize], true) {
                    stack.push(up.from);
                }
            }
        }
        false
    };
    let theirs: f64 = suspected.iter().filter(|s| beyond(s.piece)).map(|s| s.share).sum();
    if theirs > 0.5 {
        draft.call(Role::SewerUtility, "why-sewer-beyond-boundary");
        draft.call(Role::Plumber, "why-plumber-drain");
    } else {
        draft.call(Role::Plumber, "why-plumber-drain");
        draft.call(Role::SewerUtility, "why-sewer-utility");
    }
}

/// The fixture at which a little water tells most about where the blockage is.
fn next_look(
    ctx: &Context<'_>,
    drain: &Drain,
    suspected: &[Suspected],
    seen: &Sights,
) -> Option<NextCheck> {
    let hypotheses: Vec<Diagnosis> =
        suspected.iter().map(|s| Diagnosis { faults: Vec::new(), share: s.share }).collect();
    let known = |node: Node| seen.all_of.contains(&node) || seen.clear.contains(&node);
    let checks: Vec<Check> = (0..ctx.home.components.len())
        .filter(|&place| ctx.home.components[place].kind.is_drain_opening())
        .filter(|&place| drain.pieces.iter().any(|p| p.from == as_node(place)))
        .filter(|&place| !known(as_node(place)) && !ctx.is_forbidden(place))
        .map(|place| Check {
            node: as_node(place),
            seconds: ctx.walk_seconds(place) + LOOK_SECONDS,
            good: suspected.iter().map(|s| drain.drains(as_node(place), Some(s.piece))).collect(),
        })
        .collect();
    let (best, _) = next_check(&hypotheses, &checks)?;
    let place = best.node as usize;
    let mut look = NextCheck {
        component: ctx.home.components[place].id.clone(),
        look_for: ctx.catalogue.fill(
            "look-drains",
            &[fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))],
        ),
        seconds: rounded(best.seconds, 1.0),
    };
    // What each reply leads to: the likeliest stretch that is then left.
    let leading = |good: bool| {
        let left = suspected.iter().zip(&best.good).find(|(_, told)| **told == good);
        left.map(|(suspect, _)| {
            let piece = drain.pieces[suspect.piece];
            let [from, to] = [piece.from, piece.to].map(|node| ctx.name(node as usize));
            ctx.catalogue.fill("between-two", &[fill("from", &from), fill("to", &to)])
        })
    };
    look.tell_replies(ctx, leading(true), leading(false));
    Some(look)
}

/// What runs water into the drains at `places`, by place.
pub(crate) fn users_above(ctx: &Context<'_>, drain: &Drain, places: &[usize]) -> Vec<usize> {
    let nodes: Vec<Node> = places.iter().map(|&place| as_node(place)).collect();
    let above = drain.above(&nodes);
    (0..above.len()).filter(|&p| above[p] && ctx.home.components[p].kind.runs_water()).collect()
}
