//! The search for what fits best to what a component lacks.

use quarterturn_home::{Component, Connection, Home, Kind, Medium};

use super::Proposal;
use super::reached::Reached;
use crate::lines::{is_downstream, may_connect};
use crate::order::{Lack, branches, drains_rank, feeds_rank, stand_together, water_in};
use crate::said::Said;
use crate::words::says;

/// Metres assumed where the map does not tell.
const UNKNOWN_M: f64 = 5.0;
/// What a metre costs against the order of kinds.
const A_METRE: f64 = 0.12;
/// Metres beyond which another metre makes no difference.
const FAR_M: f64 = 25.0;
/// Within so many metres two things stand together.
const TOGETHER_M: f64 = 3.0;

/// Why a candidate was chosen, as far as that says something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Because {
    Circuit,
    Panel,
    Words,
    Near,
}

/// A search for what a component lacks.
pub(super) struct Search<'a> {
    pub(super) home: &'a Home,
    pub(super) component: &'a Component,
    pub(super) lack: Lack,
    pub(super) medium: Medium,
    pub(super) reached: &'a Reached<'a>,
}

pub(super) struct Candidate<'a> {
    component: &'a Component,
    score: f64,
    because: Because,
    metres: Option<f64>,
}

impl<'a> Search<'a> {
    pub(super) fn best(&self) -> Option<Proposal> {
        let mut found: Vec<Candidate<'_>> =
            self.home.components.iter().filter_map(|c| self.candidate(c)).collect();
        found.sort_by(|a, b| a.score.total_cmp(&b.score));
        let legal = |c: &Candidate<'_>| {
            let line = self.line(c.component);
            may_connect(self.home, &line.from, &line.to, line.carries).is_ok()
                && !is_downstream(self.home, self.medium.net(), &line.to, &line.from)
        };
        let mut legal_ones = found.iter().filter(|c| legal(c));
        let best = legal_ones.next()?;
        // What comes after it on the same run is no rival: what joins the one goes through the other.
        let same_run = |c: &&Candidate<'_>| {
            let net = self.medium.net();
            self.lack == Lack::Drain
                && is_downstream(self.home, net, &best.component.id, &c.component.id)
        };
        let mut legal_ones = legal_ones.filter(|c| !same_run(c));
        let margin =
            legal_ones.next().map_or(1.0, |next| ((next.score - best.score) / 1.2).min(1.0));
        let sure = match best.because {
            Because::Circuit => 0.95,
            Because::Panel => 0.9,
            Because::Words => 0.5,
            Because::Near => 0.85,
        };
        let far = best.metres.map_or(0.2, |metres| (metres / 40.0).min(0.25));
        let dry = if self.reached.ids.contains(best.component.id.as_str()) { 0.0 } else { 0.1 };
        let confidence = (sure * (0.65 + 0.35 * margin) - far - dry).clamp(0.05, 0.95);
        Some(Proposal {
            of: self.component.id.clone(),
            kind: self.component.kind,
            lack: self.lack,
            line: self.line(best.component),
            why: self.why(best, found.len() == 1),
            confidence: (confidence * 100.0).round() / 100.0,
        })
    }

    fn line(&self, other: &Component) -> Connection {
        match self.lack {
            Lack::Feed => Connection::new(&other.id, &self.component.id, self.medium),
            Lack::Drain => Connection::new(&self.component.id, &other.id, self.medium),
        }
    }

    /// How well another component fits; `None` if it does not.
    pub(super) fn candidate(&self, other: &'a Component) -> Option<Candidate<'a>> {
        let this = self.component;
        if other.id == this.id {
            return None;
        }
        let rank = match self.lack {
            Lack::Feed => feeds_rank(this.kind, other.kind, self.medium)?,
            Lack::Drain => drains_rank(this.kind, other.kind, self.medium)?,
        };
        let metres = self.metres(other);
        let same_space = this.space.is_some() && this.space == other.space;
        let near = same_space || metres.is_some_and(|m| m <= TOGETHER_M);
        if stand_together(this.kind, other.kind) && !near {
            return None;
        }
        let (because, told) = self.electrical(other, near)?;
        let mut score = rank + told + self.medium_fits(other)? + self.in_use(other)?;
        score += A_METRE * metres.unwrap_or(UNKNOWN_M).min(FAR_M);
        if !same_space {
            score += 0.5;
        }
        if !self.reached.ids.contains(other.id.as_str()) {
            score += 1.0;
        }
        Some(Candidate { component: other, score, because, metres })
    }

    /// Cost of a doubt about what the other one carries; `None` if it carries something else.
    fn medium_fits(&self, other: &Component) -> Option<f64> {
        match self.medium {
            Medium::ColdWater | Medium::HotWater => {
                let hot = self.medium == Medium::HotWater;
                if matches!(other.kind, Kind::WaterHeater | Kind::MixingValve) {
                    return hot.then_some(0.0);
                }
                match water_in(self.home, other) {
                    Some(medium) => (medium == self.medium).then_some(0.0),
                    // A line for gas or waste is none for water.
                    None if self.carries_other(other) => None,
                    None => (!hot).then_some(0.5),
                }
            }
            Medium::Waste | Medium::Condensate | Medium::Gas if other.kind == Kind::Pipe => {
                let touches = self.home.connections.iter().any(|l| {
                    (l.from == other.id || l.to == other.id) && l.carries.net() == self.medium.net()
                });
                touches.then_some(0.0).or_else(|| {
                    let drain = self.medium != Medium::Gas && says(&other.name, "words-drain");
                    (drain && !self.carries_other(other)).then_some(0.6)
                })
            }
            _ => Some(0.0),
        }
    }

    fn carries_other(&self, other: &Component) -> bool {
        self.home.connections.iter().any(|l| {
            (l.from == other.id || l.to == other.id) && l.carries.net() != self.medium.net()
        })
    }

    /// Cost of a candidate that serves something else already; `None` if it can serve but one.
    fn in_use(&self, other: &Component) -> Option<f64> {
        let net = self.medium.net();
        let lines = self.home.connections.iter().filter(|l| l.carries.net() == net);
        match self.lack {
            Lack::Feed => {
                let serves = lines.filter(|l| l.from == other.id).count();
                match (serves, other.kind) {
                    (0, _) => Some(0.0),
                    (_, Kind::SupplyHose | Kind::ElectricityMeter | Kind::ServiceDisconnect) => {
                        None
                    }
                    // What needs hot water hangs on the line that leaves the heater, where there is one.
                    (_, Kind::WaterHeater) if self.has_hot_line(other) => Some(2.0),
                    (_, kind) if branches(kind) => Some(0.0),
                    // An appliance may share a stop by a tee.
                    (_, Kind::IsolatingValve) => Some(1.6),
                    _ => Some(1.2),
                }
            }
            Lack::Drain => {
                let takes = lines.filter(|l| l.to == other.id).count();
                match (takes, other.kind) {
                    (0, _) => Some(0.0),
                    (_, Kind::Trap) if self.component.kind.is_drain_opening() => Some(1.0),
                    (_, Kind::SumpPump) => None,
                    // All fixtures join before the house cleanout (common practice).
                    (_, Kind::Pipe) if self.is_after_cleanout(other) => Some(1.0),
                    _ => Some(0.0),
                }
            }
        }
    }

    fn has_hot_line(&self, heater: &Component) -> bool {
        let hot = self.home.connections.iter().filter(|l| l.carries == Medium::HotWater);
        let fed = hot.filter(|l| l.from == heater.id).filter_map(|l| self.home.component(&l.to));
        fed.into_iter().any(|fed| matches!(fed.kind, Kind::Pipe | Kind::Manifold))
    }

    fn is_after_cleanout(&self, pipe: &Component) -> bool {
        let waste = self.home.connections.iter().filter(|l| l.carries == Medium::Waste);
        let before = waste.filter(|l| l.to == pipe.id).filter_map(|l| self.home.component(&l.from));
        before.into_iter().any(|before| before.kind == Kind::Cleanout)
    }

    /// Metres between the two, levels counted, if the map tells.
    fn metres(&self, other: &Component) -> Option<f64> {
        let ((x, y, _), (u, v, _)) = (self.component.at?, other.at?);
        let floor = |c: &Component| self.home.level_of(c).map(|level| level.elevation_m);
        let rise = match (floor(self.component), floor(other)) {
            (Some(a), Some(b)) => (a - b).abs(),
            _ => 0.0,
        };
        Some((u - x).hypot(v - y) + rise)
    }

    fn why(&self, best: &Candidate<'_>, only: bool) -> Said {
        let same_space =
            self.component.space.is_some() && self.component.space == best.component.space;
        let key = match best.because {
            Because::Circuit => "propose-why-circuit",
            Because::Panel => "propose-why-panel",
            Because::Words => "propose-why-words",
            Because::Near if only => "propose-why-only",
            Because::Near if same_space => "propose-why-same-space",
            Because::Near => "propose-why-nearest",
        };
        let said = Said::new(key)
            .with("name", &best.component.name)
            .with("of", &self.component.name)
            .kind("kind", best.component.kind);
        match best.because {
            Because::Circuit => {
                said.with("circuit", self.component.circuit.as_deref().unwrap_or_default())
            }
            _ => said,
        }
    }
}
