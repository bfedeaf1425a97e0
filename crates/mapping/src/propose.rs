//! What probably feeds what: for each component that lacks a feed or a drain, the nearest sensible
//! one on the same system.
//!
//! A proposal is only that. Nothing is drawn until someone accepts it, and what is accepted is
//! checked again, so that no two proposals make a loop together.

mod circuits;
mod reached;
mod search;
#[cfg(test)]
mod tests;

use quarterturn_home::{Connection, Edit, Home, Kind};

use self::reached::Reached;
use self::search::Search;
use crate::lines::{is_downstream, may_connect};
use crate::order::{Lack, lacks};
use crate::said::Said;

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
    let nothing = Reached::nothing(medium.net());
    let search = Search { home, component, lack: proposal.lack, medium, reached: &nothing };
    lacks(home, component).contains(&(proposal.lack, medium))
        // An earlier proposal may have taken the one hose.
        && search.candidate(other).is_some()
        && may_connect(home, &line.from, &line.to, line.carries).is_ok()
        && !is_downstream(home, line.carries.net(), &line.to, &line.from)
}
