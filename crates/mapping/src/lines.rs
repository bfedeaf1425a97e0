//! Which lines may be drawn between two components, and why one may not.
//!
//! What the home file refuses is refused here as well ([`Home::fault`], [`Home::drain_loop`]); on top
//! of that come lines that a file may hold, but that nobody means who draws one: waste uphill, power
//! from an outlet back into its panel, hot water from a cold pipe.

mod rules;
#[cfg(test)]
mod tests;

use std::collections::BTreeSet;

use quarterturn_home::{Component, Connection, Home, Kind, Medium, Net};

use self::rules::Asked;
use crate::said::Said;
use crate::words::says;

/// Every medium, in the order in which a tie is broken.
const MEDIA: [Medium; 8] = [
    Medium::ColdWater,
    Medium::HotWater,
    Medium::Waste,
    Medium::Condensate,
    Medium::Power,
    Medium::Gas,
    Medium::Vent,
    Medium::Signal,
];

/// Why a line may not be drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// One end is not on the map.
    NoSuchComponent,
    /// Both ends are the same.
    ToItself,
    /// A kind has nothing to do with the medium.
    CannotMeet,
    /// Another medium is in that piece of line already.
    Mixes,
    /// The line is there already, one way or the other.
    Duplicate,
    /// The medium comes from here; nothing feeds it.
    SourceHasInlet,
    /// The medium ends here; nothing leaves it.
    OutfallHasOutlet,
    /// A drain would run in a loop.
    DrainLoop,
    /// Power or gas would run in a circle.
    Circle,
    /// Waste would run uphill.
    Uphill,
    /// Waste would run out of a drain into a fixture.
    IntoFixture,
    /// A fixture passes no water on.
    FixtureEndsIt,
    /// Power would run from what it is used at back to where it comes from.
    BackIntoPanel,
    /// Hot water from where only cold comes, or the other way round.
    WrongWater,
}

/// Why a line may not be drawn, and what would be right.
#[derive(Debug, Clone, PartialEq)]
pub struct Refusal {
    /// The rule that it breaks.
    pub why: Why,
    /// What is wrong with it.
    pub cause: Said,
    /// What would be right.
    pub remedy: Said,
}

/// Whether a line may be drawn from one component to another.
///
/// Time: connections.
///
/// # Errors
/// The first rule that the line breaks, with what would be right.
pub fn may_connect(home: &Home, from: &str, to: &str, carries: Medium) -> Result<(), Refusal> {
    let ends = (home.component(from), home.component(to));
    let (Some(upper), Some(lower)) = ends else {
        let missing = if ends.0.is_none() { from } else { to };
        let said = |key| Said::new(key).with("id", missing);
        return Err(Refusal {
            why: Why::NoSuchComponent,
            cause: said("lines-no-such-component"),
            remedy: said("lines-no-such-component-remedy"),
        });
    };
    let line = Connection::new(from, to, carries);
    let asked = Asked { home, line: &line, from: upper, to: lower };
    asked.file_refuses()?;
    asked.drawn_already()?;
    asked.ends_of_the_net()?;
    asked.uphill()?;
    asked.no_way_on()?;
    asked.circle()?;
    asked.wrong_water()
}

/// What a line between two components may carry, most likely first.
///
/// What comes to `from` and is missing at `to` counts most; ties in a fixed order.
#[must_use]
pub fn media_between(home: &Home, from: &str, to: &str) -> Vec<Medium> {
    let (Some(upper), Some(lower)) = (home.component(from), home.component(to)) else {
        return Vec::new();
    };
    let mut list: Vec<(i32, usize, Medium)> = MEDIA
        .iter()
        .enumerate()
        .filter(|(_, medium)| may_connect(home, from, to, **medium).is_ok())
        .map(|(order, &medium)| (-likelihood(home, upper, lower, medium), order, medium))
        .collect();
    list.sort_unstable();
    list.into_iter().map(|(_, _, medium)| medium).collect()
}

/// How likely a line carries a medium; larger is likelier. The figures only rank.
fn likelihood(home: &Home, from: &Component, to: &Component, medium: Medium) -> i32 {
    let arrives =
        |c: &Component| home.connections.iter().any(|l| l.to == c.id && l.carries == medium);
    let leaves =
        |c: &Component| home.connections.iter().any(|l| l.from == c.id && l.carries == medium);
    let mut score = 0;
    if arrives(from) || from.kind.is_source(medium.net()) {
        score += 8;
    }
    if leaves(to) || to.kind.is_outfall() && medium == Medium::Waste {
        score += 4;
    }
    if arrives(to) {
        score -= 3;
    }
    score += match (medium, from.kind, to.kind) {
        (Medium::HotWater, Kind::WaterHeater | Kind::MixingValve, _) => 10,
        (Medium::ColdWater, _, Kind::WaterHeater | Kind::Toilet | Kind::HoseBibb) => 6,
        (Medium::HotWater, _, Kind::Toilet | Kind::HoseBibb | Kind::IceMaker) => -6,
        (Medium::HotWater, _, Kind::Dishwasher) => 3,
        (Medium::Waste, kind, Kind::Trap | Kind::Stack | Kind::Cleanout | Kind::Standpipe)
            if kind.is_drain_opening() || kind == Kind::Pipe =>
        {
            9
        }
        (Medium::Waste, Kind::Trap | Kind::Stack | Kind::Cleanout | Kind::FloorDrain, _) => 9,
        (Medium::Condensate, Kind::AirHandler | Kind::CondensatePan, _) => 9,
        (Medium::Condensate, _, Kind::CondensatePan | Kind::CondensateOutlet) => 9,
        (Medium::Condensate, Kind::CondensatePump, _) => 9,
        (Medium::Signal, Kind::Thermostat | Kind::FloatSwitch, _) => 9,
        (Medium::Signal, _, Kind::FloatSwitch) => 9,
        (Medium::Signal, Kind::SmokeAlarm, Kind::SmokeAlarm) => 9,
        (Medium::Gas, Kind::GasMeter | Kind::GasValve, _) => 10,
        (Medium::Power, kind, _) if is_wiring(kind) => 7,
        (Medium::Vent, _, _) => -4,
        _ => 0,
    };
    let told = |list| [from, to].iter().any(|end| says(&end.name, list));
    let (hot, cold) = (told("words-hot"), told("words-cold"));
    match medium {
        Medium::HotWater if hot && !cold => score + 5,
        Medium::ColdWater if cold && !hot => score + 5,
        _ => score,
    }
}

/// True for what is wired to pass power on.
fn is_wiring(kind: Kind) -> bool {
    kind.is_power_distribution()
        || matches!(kind, Kind::JunctionBox | Kind::Switch | Kind::Gfci | Kind::Receptacle)
}

/// True if something that leaves `above` in a net comes to `below`. Time: connections.
pub(crate) fn is_downstream(home: &Home, net: Net, above: &str, below: &str) -> bool {
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    let mut stack = vec![above];
    while let Some(at) = stack.pop() {
        if at == below {
            return true;
        }
        for line in home.connections.iter().filter(|l| l.from == at && l.carries.net() == net) {
            if seen.insert(&line.to) {
                stack.push(&line.to);
            }
        }
    }
    false
}

/// The media that two kinds can both have to do with, apart from control wiring.
fn media_between_kinds(from: Kind, to: Kind) -> Vec<Medium> {
    MEDIA
        .into_iter()
        .filter(|medium| {
            *medium != Medium::Signal && from.can_meet(*medium) && to.can_meet(*medium)
        })
        .collect()
}
