//! What probably feeds what: for each component that lacks a feed or a drain, the nearest sensible
//! one on the same system.
//!
//! A proposal is only that. Nothing is drawn until someone accepts it, and what is accepted is
//! checked again, so that no two proposals make a loop together.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Connection, Edit, Home, Kind, Medium, Net};

use crate::lines::{is_downstream, may_connect};
use crate::order::{Lack, branches, drains_rank, feeds_rank, lacks, stand_together, water_in};
use crate::said::Said;
use crate::words::{folded, says};

/// A line that is probably there.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    /// The component that lacks something.
    pub of: String,
    /// Its kind, so that all of a kind can be accepted at once.
    pub kind: Kind,
    /// What it lacks.
    pub lack: Lack,
    /// The line.
    pub line: Connection,
    /// Why this one.
    pub why: Said,
    /// How likely it is right, from 0 to 1. Common practice, no source: it only ranks and warns.
    pub confidence: f64,
}

/// Metres assumed where the map does not tell.
const UNKNOWN_M: f64 = 5.0;
/// What a metre costs against the order of kinds.
const A_METRE: f64 = 0.12;
/// Metres beyond which another metre makes no difference.
const FAR_M: f64 = 25.0;
/// Within so many metres two things stand together.
const TOGETHER_M: f64 = 3.0;

/// A proposal for each thing that is lacking and for which there is a sensible line, in the order of
/// the home's components.
///
/// Time: (lacking components) × (components + connections).
#[must_use]
pub fn proposals(home: &Home) -> Vec<Proposal> {
    let mut nets: Vec<Reached<'_>> = Vec::new();
    let mut list = Vec::new();
    for component in &home.components {
        for (lack, medium) in lacks(home, component) {
            let net = medium.net();
            if !nets.iter().any(|n| n.net == net) {
                nets.push(Reached::of(home, net));
            }
            let Some(reached) = nets.iter().find(|n| n.net == net) else { continue };
            list.extend(Search { home, component, lack, medium, reached }.best());
        }
    }
    list
}

/// The proposals for one component.
#[must_use]
pub fn proposals_for(home: &Home, id: &str) -> Vec<Proposal> {
    let Some(component) = home.component(id) else { return Vec::new() };
    lacks(home, component)
        .into_iter()
        .filter_map(|(lack, medium)| {
            let reached = Reached::of(home, medium.net());
            Search { home, component, lack, medium, reached: &reached }.best()
        })
        .collect()
}

/// The edit that draws a proposal, if the home still lacks it and still allows it.
#[must_use]
pub fn accept(home: &Home, proposal: &Proposal) -> Option<Edit> {
    fits(home, proposal).then(|| Edit::Connect(Box::new(proposal.line.clone())))
}

/// The edits that draw all proposals for a kind (all kinds if `None`) that are at least so likely.
/// What an earlier one has made illegal or needless is passed over.
#[must_use]
pub fn accept_all(
    home: &Home,
    proposals: &[Proposal],
    kind: Option<Kind>,
    least_confidence: f64,
) -> Vec<Edit> {
    let mut home = home.clone();
    let mut edits = Vec::new();
    for proposal in proposals {
        let wanted = kind.is_none_or(|kind| kind == proposal.kind);
        if wanted && proposal.confidence >= least_confidence && fits(&home, proposal) {
            home.connections.push(proposal.line.clone());
            edits.push(Edit::Connect(Box::new(proposal.line.clone())));
        }
    }
    edits
}

/// True if the line may be drawn, is still lacking and makes no loop of any kind.
fn fits(home: &Home, proposal: &Proposal) -> bool {
    let line = &proposal.line;
    let Some(component) = home.component(&proposal.of) else { return false };
    let other = if proposal.lack == Lack::Feed { &line.from } else { &line.to };
    let Some(other) = home.component(other) else { return false };
    let medium = line.carries;
    let nothing = Reached { net: medium.net(), ids: BTreeSet::new() };
    let search = Search { home, component, lack: proposal.lack, medium, reached: &nothing };
    lacks(home, component).contains(&(proposal.lack, medium))
        // An earlier proposal may have taken the one hose.
        && search.candidate(other).is_some()
        && may_connect(home, &line.from, &line.to, line.carries).is_ok()
        && !is_downstream(home, line.carries.net(), &line.to, &line.from)
}

/// What a net reaches from its sources, or what reaches its outfalls.
struct Reached<'a> {
    net: Net,
    ids: BTreeSet<&'a str>,
}

impl<'a> Reached<'a> {
    fn of(home: &'a Home, net: Net) -> Self {
        let drains = matches!(net, Net::Waste | Net::Condensate);
        let is_end = |c: &&Component| match net {
            Net::Waste => c.kind.is_outfall(),
            Net::Condensate => matches!(
                c.kind,
                Kind::CondensateOutlet | Kind::FloorDrain | Kind::Standpipe | Kind::CondensatePump
            ),
            _ => c.kind.is_source(net),
        };
        let mut stack: Vec<&str> =
            home.components.iter().filter(is_end).map(|c| c.id.as_str()).collect();
        let mut ids: BTreeSet<&str> = stack.iter().copied().collect();
        let lines: Vec<(&str, &str)> = home
            .connections
            .iter()
            .filter(|l| l.carries.net() == net)
            .map(|l| {
                if drains {
                    (l.to.as_str(), l.from.as_str())
                } else {
                    (l.from.as_str(), l.to.as_str())
                }
            })
            .collect();
        while let Some(at) = stack.pop() {
            for (_, next) in lines.iter().filter(|(near, _)| *near == at) {
                if ids.insert(next) {
                    stack.push(next);
                }
            }
        }
        Self { net, ids }
    }
}

/// Why a candidate was chosen, as far as that says something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Because {
    Circuit,
    Panel,
    Words,
    Near,
}

/// A search for what a component lacks.
struct Search<'a> {
    home: &'a Home,
    component: &'a Component,
    lack: Lack,
    medium: Medium,
    reached: &'a Reached<'a>,
}

struct Candidate<'a> {
    component: &'a Component,
    score: f64,
    because: Because,
    metres: Option<f64>,
}

impl<'a> Search<'a> {
    fn best(&self) -> Option<Proposal> {
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
    fn candidate(&self, other: &'a Component) -> Option<Candidate<'a>> {
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

    /// What the words of the panel directory say, for power; the rest of a house has none.
    fn electrical(&self, other: &Component, near: bool) -> Option<(Because, f64)> {
        let this = self.component;
        if self.medium != Medium::Power {
            return Some((Because::Near, 0.0));
        }
        let main = |c: &Component| c.kind == Kind::Breaker && says(&c.name, "words-main");
        match (this.kind, other.kind) {
            (Kind::Breaker, Kind::Panel) => {
                // A main breaker stands before its panel, not behind it.
                if main(this) {
                    return None;
                }
                let told = this.panel.as_deref().map(|panel| self.is_panel(panel, other));
                match told {
                    Some(true) => Some((Because::Panel, -3.0)),
                    Some(false) => None,
                    None => Some((Because::Near, 0.0)),
                }
            }
            (Kind::Panel, Kind::Breaker) => {
                let named = main(other) || shares_words(&this.name, &other.name);
                named.then_some((Because::Words, 0.0))
            }
            (_, Kind::Breaker | Kind::Gfci) => {
                if let (Some(ours), Some(theirs)) = (&this.circuit, &other.circuit) {
                    let same = folded(ours) == folded(theirs) && self.same_panel(other);
                    // The device that protects the circuit stands before its outlets.
                    return same.then_some((Because::Circuit, -4.0));
                }
                if other.kind == Kind::Gfci {
                    return near.then_some((Because::Near, 0.5));
                }
                if main(other) || self.feeds_panel(other) {
                    return None;
                }
                let space = this.space.as_deref().and_then(|id| self.home.space(id));
                let room = space.map_or("", |space| space.name.as_str());
                let shared =
                    shares_words(&this.name, &other.name) || shares_words(room, &other.name);
                shared.then_some((Because::Words, 0.0))
            }
            _ => Some((Because::Near, 0.0)),
        }
    }

    /// True if the text of a component's panel means that panel.
    fn is_panel(&self, text: &str, panel: &Component) -> bool {
        panel.id == text || folded(&panel.name) == folded(text)
    }

    /// False only if the panels of both are told and differ.
    fn same_panel(&self, other: &Component) -> bool {
        match (&self.component.panel, &other.panel) {
            (Some(ours), Some(theirs)) => {
                let one = |text: &str| {
                    let found = self
                        .home
                        .components
                        .iter()
                        .find(|c| c.kind == Kind::Panel && self.is_panel(text, c));
                    found.map_or_else(|| folded(text), |c| c.id.clone())
                };
                one(ours) == one(theirs)
            }
            _ => true,
        }
    }

    /// True for a breaker that feeds another panel.
    fn feeds_panel(&self, breaker: &Component) -> bool {
        self.home.connections.iter().any(|l| {
            l.from == breaker.id
                && self.home.component(&l.to).is_some_and(|c| c.kind == Kind::Panel)
        })
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
                    _ => Some(0.0),
                }
            }
        }
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

/// True if two names share a word that tells something.
fn shares_words(one: &str, other: &str) -> bool {
    let telling = |text: &str| -> BTreeSet<String> {
        let folded = folded(text);
        folded
            .split(' ')
            .filter(|word| word.chars().count() > 3 && !says(word, "words-telling-nothing"))
            .map(|word| word.trim_end_matches('s').to_owned())
            .collect()
    };
    !telling(one).is_disjoint(&telling(other))
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::Catalogue;
    use quarterturn_home::open;

    const HOMES: [&str; 3] = [
        include_str!("../../../examples/two-storey/home.ron"),
        include_str!("../../../examples/flat/home.ron"),
        include_str!("../../../examples/old-house/home.ron"),
    ];

    fn part(id: &str, kind: Kind, space: &str, x: f64) -> Component {
        let mut c = Component::new(id, kind, id);
        c.space = Some(space.to_owned());
        c.at = Some((x, 0.0, 0.5));
        c
    }

    fn lines(home: &Home) -> Vec<(String, f64)> {
        proposals(home).iter().map(|p| (p.line.spot(), p.confidence)).collect()
    }

    #[test]
    fn stop_before_hose_before_tap_and_trap_before_drain() {
        let home = Home {
            components: vec![
                part("hall-line", Kind::Pipe, "hall", 1.0),
                part("main", Kind::WaterMain, "street", 0.0),
                part("cold stop", Kind::IsolatingValve, "bath", 4.0),
                part("cold hose", Kind::SupplyHose, "bath", 4.1),
                part("far hose", Kind::SupplyHose, "kitchen", 4.2),
                part("toilet", Kind::Toilet, "bath", 4.5),
                part("basin", Kind::Basin, "bath", 5.0),
                part("trap", Kind::Trap, "bath", 5.0),
                part("stack", Kind::Stack, "bath", 6.0),
                part("sewer", Kind::SewerMain, "street", 0.0),
            ],
            connections: vec![
                Connection::new("main", "hall-line", Medium::ColdWater),
                Connection::new("stack", "sewer", Medium::Waste),
            ],
            ..Home::default()
        };
        let found: Vec<String> = lines(&home).into_iter().map(|(line, _)| line).collect();
        assert!(found.contains(&"hall-line..cold stop".to_owned()), "{found:?}");
        assert!(found.contains(&"cold stop..cold hose".to_owned()), "{found:?}");
        assert!(found.contains(&"cold hose..toilet".to_owned()), "{found:?}");
        assert!(found.contains(&"basin..trap".to_owned()), "{found:?}");
        assert!(found.contains(&"trap..stack".to_owned()), "{found:?}");
        assert!(found.contains(&"toilet..stack".to_owned()), "{found:?}");
        assert!(!found.iter().any(|line| line.starts_with("far hose")), "{found:?}");
        // One hose feeds one fixture: of the two that want it only one gets it.
        let edits = accept_all(&home, &proposals(&home), None, 0.0);
        let hose = |e: &&Edit| matches!(e, Edit::Connect(l) if l.from == "cold hose");
        assert_eq!(edits.iter().filter(hose).count(), 1, "{edits:#?}");
    }

    #[test]
    fn a_circuit_told_in_words_leads_to_its_breaker_or_its_gfci() {
        let on = |mut c: Component, circuit: &str| {
            c.circuit = Some(circuit.to_owned());
            c.panel = Some("Main panel".to_owned());
            c
        };
        let mut panel = part("p1", Kind::Panel, "garage", 0.0);
        panel.name = "Main panel".to_owned();
        let home = Home {
            components: vec![
                panel,
                on(part("b3", Kind::Breaker, "garage", 0.0), "3"),
                on(part("b5", Kind::Breaker, "garage", 0.0), "5"),
                on(part("outlet", Kind::Receptacle, "bedroom", 20.0), "3"),
                on(part("bath gfci", Kind::Gfci, "bath", 9.0), "5"),
                on(part("patio", Kind::Receptacle, "patio", 25.0), "5"),
                part("lost", Kind::Receptacle, "attic", 5.0),
            ],
            ..Home::default()
        };
        let found = lines(&home);
        let has = |line: &str| found.iter().any(|(l, c)| l == line && *c > 0.5);
        assert!(has("p1..b3") && has("p1..b5"), "{found:?}");
        assert!(has("b3..outlet") && has("b5..bath gfci") && has("bath gfci..patio"), "{found:?}");
        assert!(!found.iter().any(|(line, _)| line.ends_with("..lost")), "{found:?}");
        let all = proposals(&home);
        assert_eq!(accept_all(&home, &all, Some(Kind::Breaker), 0.0).len(), 2);
        assert_eq!(accept_all(&home, &all, Some(Kind::Breaker), 0.99).len(), 0);
    }

    #[test]
    fn accepting_everything_in_the_examples_with_lines_taken_out_stays_legal_and_finds_many_back() {
        for text in HOMES {
            let whole = open("home.ron", text).home.unwrap();
            let (mut right, mut wrong) = (0, 0);
            for skip in 0..9 {
                let mut home = whole.clone();
                let mut index = 0;
                home.connections.retain(|_| {
                    index += 1;
                    index % 9 != skip
                });
                let found = proposals(&home);
                for edit in accept_all(&home, &found, None, 0.0) {
                    let Edit::Connect(line) = edit else { panic!("{edit:?}") };
                    assert!(may_connect(&home, &line.from, &line.to, line.carries).is_ok());
                    home.connections.push(*line);
                }
                for proposal in &found {
                    let there = whole.connections.iter().any(|l| {
                        l.from == proposal.line.from
                            && l.to == proposal.line.to
                            && l.carries == proposal.line.carries
                    });
                    let cut = whole.connections.iter().enumerate().any(|(i, l)| {
                        (i + 1) % 9 == skip && (l.to == proposal.of || l.from == proposal.of)
                    });
                    if cut {
                        if there { right += 1 } else { wrong += 1 }
                    }
                }
                let text = quarterturn_home::save(&home, &quarterturn_home::Kept::default());
                let again = open("home.ron", &text);
                assert!(
                    again.problems.iter().all(|p| p.key != "drain-loop"),
                    "{:?}",
                    again.problems
                );
            }
            // Which of several like lines was meant, nobody can tell from outside: half is good.
            assert!(right * 2 >= wrong, "{right} right, {wrong} wrong");
        }
    }

    #[test]
    fn every_reason_has_words() {
        let home = open("home.ron", HOMES[0]).home.unwrap();
        let mut bare = home.clone();
        bare.connections.truncate(60);
        let mut keys = BTreeSet::new();
        for proposal in proposals(&bare) {
            keys.insert(proposal.why.key);
            for language in Catalogue::languages() {
                let text = proposal.why.text(&Catalogue::in_language(language.tag));
                assert!(!text.contains(['{', '[']), "{text}");
            }
        }
        assert!(keys.len() >= 3, "{keys:?}");
    }
}
