//! Which lines may be drawn between two components, and why one may not.
//!
//! What the home file refuses is refused here as well ([`Home::fault`], [`Home::drain_loop`]); on top
//! of that come lines that a file may hold, but that nobody means who draws one: waste uphill, power
//! from an outlet back into its panel, hot water from a cold pipe.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Connection, Fault, Home, Kind, Medium, Net};

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

/// How much higher the lower end of a drain may be drawn, in metres: heights are paced off, not
/// surveyed. Common practice, no source.
const SLACK_M: f64 = 0.5;

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

/// A line that someone wants to draw.
struct Asked<'a> {
    home: &'a Home,
    line: &'a Connection,
    from: &'a Component,
    to: &'a Component,
}

impl Asked<'_> {
    /// The refusal by a rule, with the places that its texts may have.
    fn refuse(&self, why: Why, key: &'static str, remedy: &'static str) -> Refusal {
        let told = |key| {
            Said::new(key)
                .with("from", &self.from.name)
                .with("to", &self.to.name)
                .medium("medium", self.line.carries)
        };
        Refusal { why, cause: told(key), remedy: told(remedy) }
    }

    /// What the home file would not take.
    fn file_refuses(&self) -> Result<(), Refusal> {
        match self.home.fault(self.line) {
            None => {}
            Some(Fault::ToItself) => {
                return Err(self.refuse(
                    Why::ToItself,
                    "lines-to-itself",
                    "lines-to-itself-remedy",
                ));
            }
            Some(Fault::CannotMeet { id, kind }) => {
                let mut refusal =
                    self.refuse(Why::CannotMeet, "lines-cannot-meet", "lines-cannot-meet-remedy");
                let name = self.home.component(&id).map_or(id.as_str(), |c| c.name.as_str());
                refusal.cause = refusal.cause.with("name", name).kind("kind", kind);
                let carries = MEDIA.into_iter().filter(|medium| kind.can_meet(*medium));
                let possible = media_between_kinds(self.from.kind, self.to.kind);
                let key = if possible.is_empty() {
                    "lines-cannot-meet-at-all-remedy"
                } else {
                    "lines-cannot-meet-remedy"
                };
                refusal.remedy.key = key;
                refusal.remedy = refusal
                    .remedy
                    .with("name", name)
                    .kind("kind", kind)
                    .count("count", carries.count());
                return Err(refusal);
            }
            Some(Fault::Mixes { id, medium, .. }) => {
                let mut refusal = self.refuse(Why::Mixes, "lines-mixes", "lines-mixes-remedy");
                let name = self.home.component(&id).map_or(id.as_str(), |c| c.name.as_str());
                refusal.cause = refusal.cause.with("name", name).medium("other", medium);
                refusal.remedy = refusal.remedy.with("name", name).medium("other", medium);
                return Err(refusal);
            }
        }
        // A loop is found in the file as well, but is best told with its way.
        let Some(ids) = self.home.drain_loop(self.line) else { return Ok(()) };
        let names = ids.iter().map(|id| self.name(id)).collect();
        let mut refusal =
            self.refuse(Why::DrainLoop, "lines-drain-loop", "lines-drain-loop-remedy");
        refusal.cause = refusal.cause.list("way", names);
        Err(refusal)
    }

    fn drawn_already(&self) -> Result<(), Refusal> {
        let there = |from: &str, to: &str| {
            self.home
                .connections
                .iter()
                .any(|l| l.from == from && l.to == to && l.carries == self.line.carries)
        };
        if there(&self.from.id, &self.to.id) {
            return Err(self.refuse(Why::Duplicate, "lines-duplicate", "lines-duplicate-remedy"));
        }
        // Between panels and their sources power runs both ways anyway; a second line says nothing.
        if there(&self.to.id, &self.from.id) {
            let key = "lines-other-way";
            return Err(self.refuse(Why::Duplicate, key, "lines-other-way-remedy"));
        }
        Ok(())
    }

    fn ends_of_the_net(&self) -> Result<(), Refusal> {
        let net = self.line.carries.net();
        // A battery and an inverter take power as well as give it; what stands before a gas meter is
        // the utility's, and some draw it.
        let gives_only = match self.to.kind {
            Kind::Battery | Kind::Inverter => false,
            Kind::GasMeter => !matches!(self.from.kind, Kind::Pipe | Kind::GasValve | Kind::Other),
            kind => kind.is_source(net),
        };
        if gives_only {
            let remedy = "lines-source-has-inlet-remedy";
            return Err(self.refuse(Why::SourceHasInlet, "lines-source-has-inlet", remedy));
        }
        let ends_here = match net {
            Net::Waste | Net::Condensate => {
                self.from.kind.is_outfall()
                    || (self.from.kind == Kind::CondensateOutlet && net == Net::Condensate)
            }
            _ => false,
        };
        if ends_here {
            let remedy = "lines-outfall-has-outlet-remedy";
            return Err(self.refuse(Why::OutfallHasOutlet, "lines-outfall-has-outlet", remedy));
        }
        Ok(())
    }

    /// Waste runs down. Heights count where both are told; a stack spans floors, a cleanout is told by
    /// its cap, and what a pump has lifted may go where the pump sends it.
    fn uphill(&self) -> Result<(), Refusal> {
        if !matches!(self.line.carries, Medium::Waste | Medium::Condensate) {
            return Ok(());
        }
        let spans = |kind| matches!(kind, Kind::Stack | Kind::Cleanout);
        if spans(self.from.kind) || spans(self.to.kind) || self.is_pumped() {
            return Ok(());
        }
        let heights = (self.home.height_m(self.from), self.home.height_m(self.to));
        let (Some(from), Some(to)) = heights else { return Ok(()) };
        if to <= from + SLACK_M {
            return Ok(());
        }
        let metres = ((to - from) * 10.0).round() / 10.0;
        let mut refusal = self.refuse(Why::Uphill, "lines-uphill", "lines-uphill-remedy");
        refusal.cause = refusal.cause.number("metres", metres);
        Err(refusal)
    }

    /// True if a pump lifts what runs in the line.
    fn is_pumped(&self) -> bool {
        let lifts = |kind| {
            matches!(kind, Kind::SumpPump | Kind::EjectorPit | Kind::SumpPit | Kind::CondensatePump)
        };
        // A washer and a dishwasher pump their own water out.
        let pumps_out = matches!(self.from.kind, Kind::WashingMachine | Kind::Dishwasher);
        let mut seen: BTreeSet<&str> = BTreeSet::new();
        let mut stack = vec![self.from];
        while let Some(at) = stack.pop() {
            if lifts(at.kind) {
                return true;
            }
            // The pressure ends where a line opens into a drain.
            if !matches!(at.kind, Kind::CheckValve | Kind::Pipe | Kind::IsolatingValve) {
                continue;
            }
            let above = self.home.connections.iter().filter(|l| {
                l.to == at.id && matches!(l.carries, Medium::Waste | Medium::Condensate)
            });
            for line in above {
                if seen.insert(&line.from) {
                    stack.extend(self.home.component(&line.from));
                }
            }
        }
        pumps_out
    }

    /// What runs no further, or nowhere else.
    fn no_way_on(&self) -> Result<(), Refusal> {
        match self.line.carries.net() {
            Net::Waste => {
                let drains = matches!(
                    self.from.kind,
                    Kind::Trap | Kind::Stack | Kind::Cleanout | Kind::BackwaterValve
                );
                let opening = self.to.kind.is_drain_opening();
                if opening && (drains || self.to.kind == Kind::Toilet) {
                    let remedy = "lines-into-fixture-remedy";
                    return Err(self.refuse(Why::IntoFixture, "lines-into-fixture", remedy));
                }
            }
            Net::Water if !self.from.passes_water() => {
                let remedy = "lines-fixture-ends-it-remedy";
                return Err(self.refuse(Why::FixtureEndsIt, "lines-fixture-ends-it", remedy));
            }
            Net::Power => {
                let used_at = matches!(
                    self.from.kind,
                    Kind::Receptacle
                        | Kind::Light
                        | Kind::Lampholder
                        | Kind::Switch
                        | Kind::Appliance
                        | Kind::SmokeAlarm
                        | Kind::MedicalDevice
                        | Kind::SumpPump
                        | Kind::Thermostat
                );
                let comes_from = matches!(
                    self.to.kind,
                    Kind::ElectricityMeter
                        | Kind::ServiceDisconnect
                        | Kind::Panel
                        | Kind::Breaker
                        | Kind::TransferSwitch
                );
                if used_at && comes_from {
                    let remedy = "lines-back-into-panel-remedy";
                    return Err(self.refuse(Why::BackIntoPanel, "lines-back-into-panel", remedy));
                }
            }
            _ => {}
        }
        Ok(())
    }

    /// Power beyond the breakers, and gas, never come back to where they came from. Water may: a
    /// return line, a bypass.
    fn circle(&self) -> Result<(), Refusal> {
        let net = self.line.carries.net();
        let both_ways =
            self.from.kind.is_power_distribution() && self.to.kind.is_power_distribution();
        let may = !matches!(net, Net::Power | Net::Gas) || (net == Net::Power && both_ways);
        if may || !is_downstream(self.home, net, &self.to.id, &self.from.id) {
            return Ok(());
        }
        Err(self.refuse(Why::Circle, "lines-circle", "lines-circle-remedy"))
    }

    fn wrong_water(&self) -> Result<(), Refusal> {
        let other = match self.line.carries {
            Medium::HotWater => Medium::ColdWater,
            Medium::ColdWater => Medium::HotWater,
            _ => return Ok(()),
        };
        let changes = matches!(
            self.from.kind,
            Kind::WaterHeater
                | Kind::MixingValve
                | Kind::Appliance
                | Kind::GasAppliance
                | Kind::Other
        );
        let mut arriving = self
            .home
            .connections
            .iter()
            .filter(|l| l.to == self.from.id && l.carries.net() == Net::Water)
            .map(|l| l.carries)
            .peekable();
        let source = self.from.kind.is_source(Net::Water) && self.line.carries == Medium::HotWater;
        if changes || !source && (arriving.peek().is_none() || arriving.any(|m| m != other)) {
            return Ok(());
        }
        let mut refusal =
            self.refuse(Why::WrongWater, "lines-wrong-water", "lines-wrong-water-remedy");
        refusal.cause = refusal.cause.medium("other", other);
        refusal.remedy = refusal.remedy.medium("other", other);
        Err(refusal)
    }

    fn name(&self, id: &str) -> String {
        self.home.component(id).map_or_else(|| id.to_owned(), |c| c.name.clone())
    }
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

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::Catalogue;
    use quarterturn_home::{Level, Space};

    /// A home of two floors; `id:Kind` on the ground floor, `id:Kind@z` upstairs at that height.
    fn home(components: &[(&str, Kind, Option<f64>)], lines: &[(&str, &str, Medium)]) -> Home {
        let level = |id: &str, elevation_m| Level {
            id: id.to_owned(),
            name: id.to_owned(),
            elevation_m,
            plan: None,
        };
        let space = |id: &str, level: &str| -> Space {
            ron::from_str(&format!("(id: {id:?}, name: {id:?}, level: Some({level:?}))")).unwrap()
        };
        Home {
            levels: vec![level("ground", 0.0), level("upper", 2.8)],
            spaces: vec![space("down", "ground"), space("up", "upper")],
            components: components
                .iter()
                .map(|&(id, kind, up)| {
                    let mut c = Component::new(id, kind, id);
                    c.space = Some(if up.is_some() { "up" } else { "down" }.to_owned());
                    c.at = Some((0.0, 0.0, up.unwrap_or(0.3)));
                    c
                })
                .collect(),
            connections: lines.iter().map(|&(a, b, m)| Connection::new(a, b, m)).collect(),
            ..Home::default()
        }
    }

    fn why(home: &Home, from: &str, to: &str, carries: Medium) -> Option<Why> {
        let refusal = may_connect(home, from, to, carries).err()?;
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for said in [&refusal.cause, &refusal.remedy] {
                let text = said.text(&words);
                assert!(!text.contains(['{', '[']), "{}: {text}", language.tag);
            }
        }
        Some(refusal.why)
    }

    #[test]
    fn each_rule_is_told_by_itself() {
        use Medium::{ColdWater, Condensate, Gas, HotWater, Power, Waste};
        let home = home(
            &[
                ("street", Kind::WaterMain, None),
                ("line", Kind::Pipe, None),
                ("sink", Kind::Sink, None),
                ("trap", Kind::Trap, None),
                ("stack", Kind::Stack, None),
                ("sewer", Kind::SewerMain, None),
                ("drain-up", Kind::Pipe, Some(0.2)),
                ("panel", Kind::Panel, None),
                ("breaker", Kind::Breaker, None),
                ("outlet", Kind::Receptacle, None),
                ("lamp", Kind::Light, None),
                ("box", Kind::JunctionBox, None),
                ("toilet", Kind::Toilet, None),
                ("outside", Kind::CondensateOutlet, None),
                ("floor-drain", Kind::FloorDrain, None),
            ],
            &[
                ("street", "line", ColdWater),
                ("sink", "trap", Waste),
                ("trap", "stack", Waste),
                ("stack", "sewer", Waste),
                ("panel", "breaker", Power),
                ("breaker", "outlet", Power),
                ("outlet", "box", Power),
            ],
        );
        let is =
            |from, to, m, expected| assert_eq!(why(&home, from, to, m), expected, "{from} {to}");
        is("line", "nobody", ColdWater, Some(Why::NoSuchComponent));
        is("line", "line", ColdWater, Some(Why::ToItself));
        is("line", "outlet", ColdWater, Some(Why::CannotMeet));
        is("line", "sink", Waste, Some(Why::Mixes));
        is("street", "line", ColdWater, Some(Why::Duplicate));
        is("outlet", "breaker", Power, Some(Why::Duplicate));
        is("line", "street", ColdWater, Some(Why::Duplicate));
        is("sewer", "stack", Waste, Some(Why::DrainLoop));
        is("sewer", "drain-up", Waste, Some(Why::OutfallHasOutlet));
        is("stack", "trap", Waste, Some(Why::DrainLoop));
        is("trap", "drain-up", Waste, Some(Why::Uphill));
        is("drain-up", "stack", Waste, None);
        is("trap", "floor-drain", Waste, Some(Why::IntoFixture));
        is("sink", "toilet", Waste, Some(Why::IntoFixture));
        is("sink", "line", ColdWater, Some(Why::FixtureEndsIt));
        is("lamp", "breaker", Power, Some(Why::BackIntoPanel));
        is("box", "outlet", Power, Some(Why::Duplicate));
        is("line", "sink", HotWater, Some(Why::WrongWater));
        is("line", "sink", ColdWater, None);
        is("line", "toilet", Gas, Some(Why::Mixes));
        is("outside", "floor-drain", Condensate, Some(Why::OutfallHasOutlet));
    }

    #[test]
    fn power_and_gas_never_run_in_a_circle_but_water_may() {
        let lines = |m| [("a", "b", m), ("b", "c", m)];
        let boxes = [
            ("a", Kind::JunctionBox, None),
            ("b", Kind::JunctionBox, None),
            ("c", Kind::JunctionBox, None),
        ];
        let wired = home(&boxes, &lines(Medium::Power));
        assert_eq!(why(&wired, "c", "a", Medium::Power), Some(Why::Circle));
        let pipes = boxes.map(|(id, _, at)| (id, Kind::Pipe, at));
        let water = home(&pipes, &lines(Medium::HotWater));
        assert_eq!(why(&water, "c", "a", Medium::HotWater), None);
        let gas = home(&pipes, &lines(Medium::Gas));
        assert_eq!(why(&gas, "c", "a", Medium::Gas), Some(Why::Circle));
        let drains = home(&pipes, &lines(Medium::Waste));
        assert_eq!(why(&drains, "c", "a", Medium::Waste), Some(Why::DrainLoop));
    }

    #[test]
    fn a_pump_may_lift_and_a_battery_may_be_charged() {
        let home = home(
            &[
                ("pit", Kind::EjectorPit, None),
                ("pump", Kind::SumpPump, None),
                ("check", Kind::CheckValve, None),
                ("high", Kind::Pipe, Some(0.5)),
                ("panel", Kind::Panel, None),
                ("battery", Kind::Battery, None),
                ("service", Kind::ElectricityService, None),
            ],
            &[("pit", "pump", Medium::Waste), ("pump", "check", Medium::Waste)],
        );
        assert_eq!(why(&home, "check", "high", Medium::Waste), None);
        assert_eq!(why(&home, "panel", "battery", Medium::Power), None);
        assert_eq!(why(&home, "panel", "service", Medium::Power), Some(Why::SourceHasInlet));
    }

    #[test]
    fn what_a_line_most_likely_carries_comes_first() {
        use Medium::{ColdWater, HotWater, Power, Waste};
        let home = home(
            &[
                ("heater", Kind::WaterHeater, None),
                ("cold", Kind::Pipe, None),
                ("hot stop", Kind::IsolatingValve, None),
                ("sink", Kind::Sink, None),
                ("trap", Kind::Trap, None),
                ("outlet", Kind::Receptacle, None),
                ("washer", Kind::WashingMachine, None),
                ("street", Kind::WaterMain, None),
            ],
            &[("street", "cold", ColdWater), ("cold", "heater", ColdWater)],
        );
        let first = |from, to| media_between(&home, from, to).first().copied();
        assert_eq!(first("heater", "hot stop"), Some(HotWater));
        assert_eq!(first("hot stop", "sink"), Some(HotWater));
        assert_eq!(first("cold", "sink"), Some(ColdWater));
        assert_eq!(first("sink", "trap"), Some(Waste));
        assert_eq!(first("outlet", "washer"), Some(Power));
        assert_eq!(media_between(&home, "outlet", "trap"), []);
        assert_eq!(media_between(&home, "nobody", "trap"), []);
        assert_eq!(first("outlet", "cold"), None);
    }

    #[test]
    fn every_line_of_the_examples_may_be_drawn_and_is_among_the_likely_ones() {
        let homes = [
            include_str!("../../../examples/two-storey/home.ron"),
            include_str!("../../../examples/flat/home.ron"),
            include_str!("../../../examples/old-house/home.ron"),
        ];
        for text in homes {
            let whole = quarterturn_home::open("home.ron", text).home.unwrap();
            let (mut first, mut all) = (0, 0);
            for index in 0..whole.connections.len() {
                let mut home = whole.clone();
                let line = home.connections.remove(index);
                let refusal = may_connect(&home, &line.from, &line.to, line.carries).err();
                assert_eq!(refusal, None, "{}", line.spot());
                let likely = media_between(&home, &line.from, &line.to);
                first += usize::from(likely.first() == Some(&line.carries));
                all += 1;
            }
            assert!(first * 10 >= all * 8, "{first} of {all} guessed");
        }
    }
}
