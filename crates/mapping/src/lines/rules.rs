//! The rules that a line may break, one function each.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Connection, Fault, Home, Kind, Medium, Net};

use super::{MEDIA, Refusal, Why, is_downstream, media_between_kinds};
use crate::said::Said;

/// How much higher the lower end of a drain may be drawn, in metres: heights are paced off, not
/// surveyed. Common practice, no source.
const SLACK_M: f64 = 0.5;

/// A line that someone wants to draw.
pub(super) struct Asked<'a> {
    pub(super) home: &'a Home,
    pub(super) line: &'a Connection,
    pub(super) from: &'a Component,
    pub(super) to: &'a Component,
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
    pub(super) fn file_refuses(&self) -> Result<(), Refusal> {
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

    pub(super) fn drawn_already(&self) -> Result<(), Refusal> {
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

    pub(super) fn ends_of_the_net(&self) -> Result<(), Refusal> {
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
    pub(super) fn uphill(&self) -> Result<(), Refusal> {
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
    pub(super) fn no_way_on(&self) -> Result<(), Refusal> {
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
    pub(super) fn circle(&self) -> Result<(), Refusal> {
        let net = self.line.carries.net();
        let both_ways =
            self.from.kind.is_power_distribution() && self.to.kind.is_power_distribution();
        let may = !matches!(net, Net::Power | Net::Gas) || (net == Net::Power && both_ways);
        if may || !is_downstream(self.home, net, &self.to.id, &self.from.id) {
            return Ok(());
        }
        Err(self.refuse(Why::Circle, "lines-circle", "lines-circle-remedy"))
    }

    pub(super) fn wrong_water(&self) -> Result<(), Refusal> {
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
