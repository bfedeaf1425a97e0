//! What a row becomes: a circuit, a thing on a circuit, or a note.

use quarterturn_home::{Component, Kind};

use super::RowNote;
use super::reading::{Gathered, Reading, Side};
use crate::circuit_text::{CircuitText, circuit, watts};
use crate::columns::Column;
use crate::said::Said;
use crate::table::{Odd, Row};
use crate::words::{folded, is, says};

impl Reading<'_> {
    /// A row of a directory: a circuit.
    pub(super) fn entry(&mut self, row: &Row, side: Side) {
        let cell = |at: Option<usize>| at.and_then(|at| row.cells.get(at));
        let text = |at: Option<usize>| cell(at).map_or("", |cell| cell.text.as_str());
        if let Some(odd) = cell(side.circuit).and_then(|cell| cell.odd) {
            self.leave(row, odd_said(odd));
            return;
        }
        let number = text(side.circuit);
        let serves = text(side.serves);
        let Some(found) = circuit(number) else {
            let said = if number.is_empty() {
                Said::new("import-no-circuit")
            } else {
                Said::new("import-not-a-circuit").with("value", number)
            };
            self.leave(row, said);
            return;
        };
        if is(serves, "words-no-breaker") {
            self.leave(row, Said::new("import-no-breaker").with("circuit", &found.text));
            return;
        }
        let name = self.text(row, Column::Panel).to_owned();
        let panel = self.panel_of(&name);
        let (rating_a, told_poles) = self.rating(row, text(side.rating));
        let poles = self.poles(row, text(side.poles)).or(told_poles);
        for at in [side.serves, side.rating, side.poles] {
            if let Some(odd) = cell(at).and_then(|cell| cell.odd) {
                self.doubt(row, odd_said(odd));
            }
        }
        let same = |g: &Gathered| g.panel == panel && g.text.text == found.text;
        if let Some(first) = self.circuits.iter().find(|g| same(g)) {
            let said = Said::new("import-twice")
                .with("circuit", &found.text)
                .count("row", first.rows.first().copied().unwrap_or_default());
            self.leave(row, said);
            return;
        }
        if let Some(first) = self.other_pole(&panel, &found, serves, rating_a, poles) {
            if let Some(gathered) = self.circuits.get_mut(first) {
                gathered.rows.push(row.number);
                gathered.text.text = format!("{},{}", gathered.text.text, found.text);
                gathered.text.numbers.extend(&found.numbers);
                gathered.text.poles += 1;
            }
            return;
        }
        // Nothing but a number: a place in the panel, with or without a breaker, nobody knows.
        if serves.is_empty() && rating_a.is_none() && poles.is_none() {
            self.leave(row, Said::new("import-only-a-number").with("circuit", &found.text));
            return;
        }
        self.circuits.push(Gathered {
            panel,
            text: found,
            serves: (!serves.is_empty()).then(|| serves.to_owned()),
            rating_a,
            poles,
            rows: vec![row.number],
            things: Vec::new(),
        });
    }

    /// The circuit of which this row is another pole: two below it in the numbering, with as many
    /// poles still to come, and the same or no words of its own.
    fn other_pole(
        &self,
        panel: &str,
        found: &CircuitText,
        serves: &str,
        rating_a: Option<f64>,
        poles: Option<u32>,
    ) -> Option<usize> {
        let &[number] = found.numbers.as_slice() else { return None };
        self.circuits.iter().position(|g| {
            let wanted = g.poles.unwrap_or(1);
            let follows = g.text.numbers.last().is_some_and(|last| last + 2 == number);
            let ditto = matches!(serves.trim(), "" | "\"" | "\u{2033}" | "''" | "do." | "-" | "^");
            let same_words = ditto || g.serves.as_deref().map(folded) == Some(folded(serves));
            let same_rating = match (rating_a, g.rating_a) {
                (Some(a), Some(b)) => (a - b).abs() < 1e-6,
                (rating, _) => rating.is_none(),
            };
            g.panel == panel
                && follows
                && g.text.poles < wanted
                && same_words
                && same_rating
                && poles.is_none_or(|poles| poles == wanted)
        })
    }

    /// A row of a list of things.
    pub(super) fn thing(&mut self, row: &Row, side: Side) {
        let number_cell = side.circuit.and_then(|at| row.cells.get(at));
        let number = number_cell.map_or("", |cell| cell.text.as_str());
        let panel_name = self.text(row, Column::Panel).to_owned();
        let name = self.text(row, Column::Name);
        let serves = side.serves.and_then(|at| row.cells.get(at)).map_or("", |c| c.text.as_str());
        let sort = self.texts(row, Column::Kind);
        let kind = kind_of(&format!("{sort} {name} {serves}"));
        let shown = [name, serves, sort.trim()].into_iter().find(|text| !text.is_empty());
        let shown = shown.map(without_repeats).unwrap_or_default();
        if shown.is_empty() && number.is_empty() {
            self.leave(row, Said::new("import-no-name"));
            return;
        }
        let shown = if shown.is_empty() { self.words.text("import-thing") } else { shown };
        let stem = kind.name().to_lowercase();
        let id = self.free_id(&format!("{stem}-{}", row.number), "thing");
        let mut component = Component::new(&id, kind, &shown);
        component.tag = self.tags.next(kind);
        component.watts = watts(self.text(row, Column::Watts)).filter(|w| *w > 0.0);
        let rating_text =
            side.rating.and_then(|at| row.cells.get(at)).map_or("", |c| c.text.as_str());
        component.rating_a = self.rating(row, rating_text).0;
        self.place(&mut component, self.text(row, Column::Room));
        let unknown = |key| Said::new(key).with("name", &shown);
        let odd = number_cell.and_then(|cell| cell.odd);
        let found = if odd.is_some() { None } else { circuit(number) };
        let has_panel = !panel_name.is_empty() && !is(&panel_name, "words-unknown");
        let given =
            has_panel || self.into.panel.is_some() || !self.guess.columns.contains(&Column::Panel);
        let (Some(found), true) = (found, given) else {
            component.circuit = Some(number).filter(|n| !n.is_empty()).map(str::to_owned);
            component.panel = has_panel.then(|| self.panel_of(&panel_name));
            let why = match odd {
                Some(odd) => odd_said(odd),
                None if number.is_empty() => unknown("import-thing-without-circuit"),
                None => unknown("import-thing-with-odd-circuit").with("value", number),
            };
            self.import.unknown.push(told(row, why));
            self.import.components.push(component);
            return;
        };
        let panel = self.panel_of(&panel_name);
        component.panel = Some(panel.clone());
        component.circuit = Some(found.text.clone());
        let poles_text =
            side.poles.and_then(|at| row.cells.get(at)).map_or("", |c| c.text.as_str());
        let poles = self.poles(row, poles_text);
        let place = self.import.components.len();
        self.import.components.push(component);
        match self.circuits.iter_mut().find(|g| g.panel == panel && g.text.text == found.text) {
            Some(gathered) => {
                gathered.rows.push(row.number);
                gathered.things.push(place);
                gathered.poles = gathered.poles.max(poles);
            }
            None => self.circuits.push(Gathered {
                panel,
                text: found,
                serves: None,
                rating_a: None,
                poles,
                rows: vec![row.number],
                things: vec![place],
            }),
        }
    }
}

/// What a thing is, by the words for it; the most telling first.
fn kind_of(text: &str) -> Kind {
    let lists = [
        ("words-part-smoke-alarm", Kind::SmokeAlarm),
        ("words-part-switch", Kind::Switch),
        ("words-part-thermostat", Kind::Thermostat),
        ("words-part-gfci", Kind::Gfci),
        ("words-part-receptacle", Kind::Receptacle),
        ("words-part-light", Kind::Light),
        ("words-part-appliance", Kind::Appliance),
    ];
    lists.iter().find(|(list, _)| says(text, list)).map_or(Kind::Other, |(_, kind)| *kind)
}

/// A name whose parts are told twice, told once: `Outlet:Outlet:12` is `Outlet, 12`.
fn without_repeats(text: &str) -> String {
    let mut parts: Vec<&str> = Vec::new();
    for part in text.split(':').map(str::trim).filter(|p| !p.is_empty()) {
        if !parts.contains(&part) {
            parts.push(part);
        }
    }
    parts.join(", ")
}

/// A note on a row.
pub(super) fn told(row: &Row, why: Said) -> RowNote {
    let mut text: Vec<&str> =
        row.cells.iter().map(|c| c.text.as_str()).filter(|t| !t.is_empty()).collect();
    text.truncate(6);
    let text: String = text.join(" \u{b7} ").chars().take(120).collect();
    RowNote { row: row.number, text, why }
}

fn odd_said(odd: Odd) -> Said {
    Said::new(match odd {
        Odd::NoResult => "import-formula",
        Odd::Error => "import-error",
        Odd::Date => "import-date",
        Odd::TooLong => "import-too-long",
    })
}
