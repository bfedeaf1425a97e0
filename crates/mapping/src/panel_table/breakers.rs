//! The circuits of a table as breakers, with what hangs on them.

use quarterturn_guidance::fill;
use quarterturn_home::{Component, Connection, Kind, Medium};

use super::reading::{Gathered, Reading};
use super::{Circuit, Import};
use crate::circuit_text::circuit;
use crate::lines::may_connect;
use crate::sets::slug;
use crate::words::{folded, is, says};

impl Reading<'_> {
    /// Turns the circuits into breakers, and joins what hangs on them.
    pub(super) fn finish(mut self) -> Import {
        for gathered in std::mem::take(&mut self.circuits) {
            let alarm = self.alarm_panels.contains(&gathered.panel);
            let breaker = (!alarm).then(|| self.breaker(&gathered));
            let (from, medium) = match &breaker {
                Some(id) => (id.clone(), Medium::Power),
                None => (gathered.panel.clone(), Medium::Signal),
            };
            let ids: Vec<String> = gathered
                .things
                .iter()
                .filter_map(|&place| self.import.components.get(place))
                .filter(|c| c.kind.can_meet(medium))
                .map(|c| c.id.clone())
                .collect();
            for id in ids {
                self.import.connections.push(Connection::new(&from, &id, medium));
            }
            self.import.circuits.push(Circuit {
                panel: gathered.panel,
                circuit: gathered.text.text,
                breaker,
                rows: gathered.rows,
            });
        }
        // Panels and breakers before what hangs on them.
        let rank = |c: &Component| match c.kind {
            Kind::Panel => 0,
            Kind::Breaker => 1,
            _ => 2,
        };
        self.import.components.sort_by_key(rank);
        self.import
    }

    /// The breaker of a circuit: the home's own with what the table adds, or a new one.
    fn breaker(&mut self, gathered: &Gathered) -> String {
        let panel = self.home.component(&gathered.panel);
        let known = self.home.components.iter().find(|c| {
            c.kind == Kind::Breaker
                && c.circuit
                    .as_deref()
                    .and_then(circuit)
                    .is_some_and(|t| t.text == gathered.text.text)
                && (c.panel.as_deref().is_some_and(|p| {
                    p == gathered.panel
                        || panel.is_some_and(|panel| folded(&panel.name) == folded(p))
                }) || self
                    .home
                    .connections
                    .iter()
                    .any(|l| l.from == gathered.panel && l.to == c.id))
        });
        let name = match &gathered.serves {
            Some(serves) if is(serves, "words-spare") => {
                self.words.fill("import-spare-name", &[fill("circuit", &gathered.text.text)])
            }
            Some(serves) => self.words.fill(
                "import-breaker-name",
                &[fill("circuit", &gathered.text.text), fill("serves", serves)],
            ),
            None => {
                self.words.fill("import-breaker-number", &[fill("circuit", &gathered.text.text)])
            }
        };
        let mut breaker = if let Some(known) = known {
            let mut known = known.clone();
            // What stands on the map was looked at; the table only adds a name where it was bare.
            if gathered.serves.is_some() && is_bare(&known.name) {
                known.name = name;
            }
            known
        } else {
            let id = self
                .free_id(&slug(&format!("{} {}", gathered.panel, gathered.text.text)), "breaker");
            let mut new = Component::new(&id, Kind::Breaker, &name);
            new.tag = self.tags.next(Kind::Breaker);
            new.space = panel.and_then(|p| p.space.clone()).or_else(|| self.into.space.clone());
            new.at = panel.and_then(|p| p.at);
            new
        };
        breaker.circuit = Some(gathered.text.text.clone());
        breaker.panel = Some(gathered.panel.clone());
        breaker.rating_a = breaker.rating_a.or(gathered.rating_a);
        let poles = gathered.poles.unwrap_or(1).max(gathered.text.poles);
        breaker.poles = breaker.poles.or(Some(poles));
        let id = breaker.id.clone();
        self.import.components.push(breaker);
        let mut with = self.home.clone();
        with.components.extend(self.import.components.iter().cloned());
        if may_connect(&with, &gathered.panel, &id, Medium::Power).is_ok() {
            self.import.connections.push(Connection::new(&gathered.panel, &id, Medium::Power));
        }
        id
    }
}

/// True for a name that says no more than a number.
fn is_bare(name: &str) -> bool {
    let folded = folded(name);
    folded
        .split(' ')
        .all(|word| word.chars().all(|c| c.is_ascii_digit()) || says(word, "words-telling-nothing"))
}
