//! What the words of a panel directory say of who hangs on whom.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Kind, Medium};

use super::search::{Because, Search};
use crate::words::{folded, says};

impl Search<'_> {
    /// What the words of the panel directory say, for power; the rest of a house has none.
    pub(super) fn electrical(&self, other: &Component, near: bool) -> Option<(Because, f64)> {
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
