//! A panel directory from a table onto the map.
//!
//! Nothing is dropped silently: each row is a circuit, a thing on a circuit, a thing whose circuit
//! nobody knows, or it is listed with the reason why it is none of these.

use std::collections::{BTreeMap, BTreeSet};

use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Connection, Edit, Home, Kind, Medium};

use crate::circuit_text::{CircuitText, circuit, poles, rating, watts};
use crate::columns::{Column, Guess, Layout};
use crate::lines::may_connect;
use crate::said::Said;
use crate::sets::slug;
use crate::table::{Odd, Row, Table};
use crate::tags::Tags;
use crate::words::{folded, is, says};

/// Where a directory without a column for the panel belongs.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ImportTo {
    /// Id of the panel; `None` for a new one.
    pub panel: Option<String>,
    /// Id of the space that a new panel stands in.
    pub space: Option<String>,
}

/// What a table becomes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Import {
    /// New components, and old ones with what the table adds to them.
    pub components: Vec<Component>,
    /// New lines.
    pub connections: Vec<Connection>,
    /// The circuits, in the order in which they first stand in the table.
    pub circuits: Vec<Circuit>,
    /// Rows of things that are taken in, but whose circuit nobody knows.
    pub unknown: Vec<RowNote>,
    /// Rows that are not used.
    pub left: Vec<RowNote>,
    /// Values that were not understood, in rows that are used.
    pub doubts: Vec<RowNote>,
    /// Numbers of the rows that are panels themselves.
    pub panels: Vec<usize>,
}

/// A circuit of a table.
#[derive(Debug, Clone, PartialEq)]
pub struct Circuit {
    /// Id of its panel.
    pub panel: String,
    /// Its number as the table writes it.
    pub circuit: String,
    /// Id of its breaker; `None` where it is a loop of an alarm panel, which has none.
    pub breaker: Option<String>,
    /// Numbers of the rows that tell of it.
    pub rows: Vec<usize>,
}

/// A row, and what there is to say about it.
#[derive(Debug, Clone, PartialEq)]
pub struct RowNote {
    /// Its number in the file.
    pub row: usize,
    /// What it holds, for finding it again.
    pub text: String,
    /// Why it is told.
    pub why: Said,
}

impl Import {
    /// The edits that put it on the map.
    #[must_use]
    pub fn edits(&self) -> Vec<Edit> {
        let components = self.components.iter().cloned().map(Box::new).map(Edit::PutComponent);
        let lines = self.connections.iter().cloned().map(Box::new).map(Edit::Connect);
        components.chain(lines).collect()
    }
}

/// Reads a table as a guess says, perhaps one that a person has changed.
#[must_use]
pub fn import(
    home: &Home,
    table: &Table,
    guess: &Guess,
    into: &ImportTo,
    words: &Catalogue,
) -> Import {
    let mut reading = Reading::new(home, guess, into, words);
    let rows = guess.rows(table);
    reading.find_panels(rows);
    for row in rows {
        reading.row(row);
    }
    reading.finish()
}

/// A side of a row: one circuit and what belongs to it.
#[derive(Debug, Clone, Copy, Default)]
struct Side {
    circuit: Option<usize>,
    rating: Option<usize>,
    poles: Option<usize>,
    serves: Option<usize>,
}

/// A circuit while it is being gathered.
struct Gathered {
    panel: String,
    text: CircuitText,
    serves: Option<String>,
    rating_a: Option<f64>,
    poles: Option<u32>,
    rows: Vec<usize>,
    /// Things on it, by place in the import's components.
    things: Vec<usize>,
}

struct Reading<'a> {
    home: &'a Home,
    guess: &'a Guess,
    into: &'a ImportTo,
    words: &'a Catalogue,
    sides: Vec<Side>,
    /// Panel ids by what the table calls them, folded.
    panels: BTreeMap<String, String>,
    /// Panels that are no panels of breakers.
    alarm_panels: BTreeSet<String>,
    ids: BTreeSet<String>,
    tags: Tags,
    circuits: Vec<Gathered>,
    import: Import,
}

impl<'a> Reading<'a> {
    fn new(home: &'a Home, guess: &'a Guess, into: &'a ImportTo, words: &'a Catalogue) -> Self {
        let all = |wanted: Column| -> Vec<usize> {
            guess
                .columns
                .iter()
                .enumerate()
                .filter(|(_, c)| **c == wanted)
                .map(|(at, _)| at)
                .collect()
        };
        let (ratings, poles, serves) =
            (all(Column::Rating), all(Column::Poles), all(Column::Serves));
        let circuits = all(Column::Circuit);
        let many = circuits.len().max(1);
        let sides = (0..many)
            .map(|side| {
                let of =
                    |list: &[usize]| list.get(side).or(list.first().filter(|_| many == 1)).copied();
                Side {
                    circuit: of(&circuits),
                    rating: of(&ratings),
                    poles: of(&poles),
                    serves: of(&serves),
                }
            })
            .collect();
        let ids = home
            .components
            .iter()
            .map(|c| c.id.clone())
            .chain(home.spaces.iter().map(|s| s.id.clone()))
            .chain(home.connections.iter().filter_map(|c| c.id.clone()))
            .collect();
        Self {
            home,
            guess,
            into,
            words,
            sides,
            panels: BTreeMap::new(),
            alarm_panels: BTreeSet::new(),
            ids,
            tags: Tags::of(home),
            circuits: Vec::new(),
            import: Import::default(),
        }
    }

    /// The first column of a meaning, in a row.
    fn text<'r>(&self, row: &'r Row, column: Column) -> &'r str {
        let at = self.guess.columns.iter().position(|c| *c == column);
        at.and_then(|at| row.cells.get(at)).map_or("", |cell| cell.text.as_str())
    }

    /// All columns of a meaning, in a row.
    fn texts(&self, row: &Row, column: Column) -> String {
        let cells = self.guess.columns.iter().zip(&row.cells).filter(|(c, _)| **c == column);
        cells.map(|(_, cell)| cell.text.as_str()).collect::<Vec<_>>().join(" ")
    }

    /// The panels that the table speaks of: those the home has, and new ones.
    fn find_panels(&mut self, rows: &[Row]) {
        let mut names: Vec<&str> = Vec::new();
        for row in rows {
            let name = self.text(row, Column::Panel);
            if !name.is_empty() && !is(name, "words-unknown") && !names.contains(&name) {
                names.push(name);
            }
        }
        for name in names {
            self.panel(name);
        }
    }

    /// The id of the panel of that name; a new one if there is none.
    fn panel(&mut self, name: &str) -> String {
        let key = folded(name);
        if let Some(id) = self.panels.get(&key) {
            return id.clone();
        }
        let known = self.home.components.iter().find(|c| {
            matches!(c.kind, Kind::Panel | Kind::Other) && (c.id == name || folded(&c.name) == key)
        });
        let alarm = says(name, "words-alarm");
        let id = if let Some(known) = known {
            known.id.clone()
        } else {
            let id = self.free_id(&slug(name), "panel");
            let kind = if alarm { Kind::Other } else { Kind::Panel };
            let mut panel = Component::new(&id, kind, name);
            panel.tag = self.tags.next(kind);
            panel.space.clone_from(&self.into.space);
            self.import.components.push(panel);
            id
        };
        if alarm {
            self.alarm_panels.insert(id.clone());
        }
        self.panels.insert(key, id.clone());
        id
    }

    fn free_id(&mut self, wanted: &str, otherwise: &str) -> String {
        let base = if wanted.is_empty() { otherwise } else { wanted };
        let id = (1_u32..)
            .map(|n| if n == 1 { base.to_owned() } else { format!("{base}-{n}") })
            .find(|id| !self.ids.contains(id))
            .unwrap_or_default();
        self.ids.insert(id.clone());
        id
    }

    fn row(&mut self, row: &Row) {
        if row.is_blank() {
            self.leave(row, Said::new("import-blank"));
            return;
        }
        let itself = self.text(row, Column::PanelItself);
        if self.guess.layout == Layout::Things
            && self.panels.contains_key(&folded(itself))
            && !itself.is_empty()
        {
            self.import.panels.push(row.number);
            return;
        }
        let sides = self.sides.clone();
        if self.guess.layout == Layout::Things {
            let side = sides.first().copied().unwrap_or_default();
            self.thing(row, side);
            return;
        }
        for (place, side) in sides.into_iter().enumerate() {
            let here = [side.circuit, side.serves, side.rating, side.poles];
            let blank = here.iter().flatten().all(|&at| {
                row.cells.get(at).is_none_or(|cell| cell.text.is_empty() && cell.odd.is_none())
            });
            // The other side of a panel may end sooner.
            if blank && (place > 0 || self.sides.len() > 1) {
                continue;
            }
            self.entry(row, side);
        }
    }

    /// A row of a directory: a circuit.
    fn entry(&mut self, row: &Row, side: Side) {
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
    fn thing(&mut self, row: &Row, side: Side) {
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

    /// The panel of a row: as it says, else as was wished, else a new one.
    fn panel_of(&mut self, name: &str) -> String {
        if !name.is_empty() && !is(name, "words-unknown") {
            return self.panel(name);
        }
        match &self.into.panel {
            Some(id) if self.home.component(id).is_some() => id.clone(),
            _ => {
                let name = self.words.text("import-new-panel");
                self.panel(&name)
            }
        }
    }

    fn rating(&mut self, row: &Row, text: &str) -> (Option<f64>, Option<u32>) {
        if text.is_empty() || is(text, "words-unknown") || text == "-" {
            return (None, None);
        }
        match rating(text) {
            Some((amps, poles)) => (Some(amps), poles),
            None => {
                self.doubt(row, Said::new("import-not-a-rating").with("value", text));
                (None, None)
            }
        }
    }

    fn poles(&mut self, row: &Row, text: &str) -> Option<u32> {
        if text.is_empty() || is(text, "words-unknown") || text == "-" {
            return None;
        }
        let found = poles(text);
        if found.is_none() {
            self.doubt(row, Said::new("import-not-poles").with("value", text));
        }
        found
    }

    /// Puts a thing into the room that the table names, if the home has it; else into its note.
    fn place(&self, component: &mut Component, room: &str) {
        if room.is_empty() {
            return;
        }
        let key = folded(room);
        let space = self.home.spaces.iter().find(|s| folded(&s.name) == key || s.id == room);
        match space {
            Some(space) => component.space = Some(space.id.clone()),
            None => {
                let note = self.words.fill("import-note-place", &[fill("place", room)]);
                component.note = Some(note);
            }
        }
    }

    fn leave(&mut self, row: &Row, why: Said) {
        self.import.left.push(told(row, why));
    }

    fn doubt(&mut self, row: &Row, why: Said) {
        self.import.doubts.push(told(row, why));
    }

    /// Turns the circuits into breakers, and joins what hangs on them.
    fn finish(mut self) -> Import {
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

fn told(row: &Row, why: Said) -> RowNote {
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::columns::guess;
    use crate::table::read_text;
    use quarterturn_home::{History, Space};

    fn imported(home: &Home, text: &str) -> Import {
        let table = read_text(text).unwrap();
        let guess = guess(&table);
        let import = import(home, &table, &guess, &ImportTo::default(), &Catalogue::english());
        // Every row is somewhere, whatever it holds.
        let mut rows: BTreeSet<usize> =
            import.circuits.iter().flat_map(|c| c.rows.clone()).collect();
        rows.extend(import.left.iter().chain(&import.unknown).map(|told| told.row));
        rows.extend(&import.panels);
        for row in guess.rows(&table) {
            assert!(rows.contains(&row.number), "row {} is lost", row.number);
        }
        for told in import.left.iter().chain(&import.unknown).chain(&import.doubts) {
            for language in Catalogue::languages() {
                let text = told.why.text(&Catalogue::in_language(language.tag));
                assert!(!text.contains(['{', '[']), "{text}");
            }
        }
        let mut history = History::new(home.clone());
        for edit in import.edits() {
            history.apply(edit).unwrap();
        }
        import
    }

    fn circuits(import: &Import) -> Vec<(&str, Option<&str>)> {
        import
            .circuits
            .iter()
            .map(|c| {
                let breaker = c
                    .breaker
                    .as_ref()
                    .and_then(|id| import.components.iter().find(|b| b.id == *id));
                (c.circuit.as_str(), breaker.map(|b| b.name.as_str()))
            })
            .collect()
    }

    #[test]
    fn a_door_directory_becomes_breakers_and_every_other_row_a_reason() {
        let import = imported(
            &Home::default(),
            "Circuit,Serves,Amps,Poles\n1,Kitchen counter,20,1\n3,Range,50,2\n5,,,\n2,Spare,20,1\n4,Space,,\n,Attic fan,15,\n<unnamed>,Shed,15,\n1,Kitchen again,20,1\n7,Bath,lots,1\n,,,\n9/11,Dryer,2P30,\n",
        );
        let names = circuits(&import);
        assert_eq!(
            names,
            [
                ("1", Some("Breaker 1, Kitchen counter")),
                ("3,5", Some("Breaker 3, Range")),
                ("2", Some("Breaker 2, spare")),
                ("7", Some("Breaker 7, Bath")),
                ("9,11", Some("Breaker 9,11, Dryer")),
            ]
            .map(|(c, n)| (
                c,
                n.map(|n| if n == "Breaker 3, Range" { "Breaker 3,5, Range" } else { n })
            ))
        );
        let left: Vec<(usize, &str)> = import.left.iter().map(|t| (t.row, t.why.key)).collect();
        assert_eq!(
            left,
            [
                (6, "import-no-breaker"),
                (7, "import-no-circuit"),
                (8, "import-not-a-circuit"),
                (9, "import-twice"),
                (11, "import-blank"),
            ]
        );
        assert_eq!(import.doubts[0].why.key, "import-not-a-rating");
        let poles: Vec<_> = import
            .components
            .iter()
            .filter(|c| c.kind == Kind::Breaker)
            .map(|c| c.poles.unwrap())
            .collect();
        assert_eq!(poles, [1, 2, 1, 1, 2]);
        assert_eq!(import.connections.len(), 5);
    }

    #[test]
    fn two_columns_of_a_panel_are_two_circuits_a_row() {
        let import = imported(&Home::default(), "1,Kitchen,Bath,2\n3,Hall,Den,4\n5,Attic,,\n");
        let numbers: Vec<&str> = import.circuits.iter().map(|c| c.circuit.as_str()).collect();
        assert_eq!(numbers, ["1", "2", "3", "4", "5"]);
        assert!(circuits(&import).contains(&("4", Some("Breaker 4, Den"))));
    }

    #[test]
    fn what_the_map_has_is_kept_and_completed() {
        let mut home = Home::default();
        let space: Space = ron::from_str(r#"(id: "hall", name: "Hall")"#).unwrap();
        home.spaces.push(space);
        let mut panel = Component::new("main-panel", Kind::Panel, "Main panel");
        panel.space = Some("hall".to_owned());
        home.components.push(panel);
        let breaker = |n: &str, name: &str| {
            let mut b = Component::new(&format!("b{n}"), Kind::Breaker, name);
            b.circuit = Some(n.to_owned());
            b.panel = Some("main-panel".to_owned());
            b
        };
        home.components.push(breaker("1", "Breaker 1"));
        home.components.push(breaker("2", "Breaker, my own words"));
        home.connections.push(Connection::new("main-panel", "b1", Medium::Power));
        let import = imported(
            &home,
            "Panel,Circuit,Description\nMain panel,1,Kitchen\nMain Panel,2,Bath\nmain panel,3,Den\n",
        );
        let names: Vec<(&str, &str)> =
            import.components.iter().map(|c| (c.id.as_str(), c.name.as_str())).collect();
        assert_eq!(
            names,
            [
                ("b1", "Breaker 1, Kitchen"),
                ("b2", "Breaker, my own words"),
                ("main-panel-3", "Breaker 3, Den"),
            ]
        );
        assert_eq!(import.components[2].space.as_deref(), Some("hall"));
        assert_eq!(import.connections.len(), 2);
    }

    #[test]
    fn things_hang_on_their_circuits_and_those_without_are_told() {
        let import = imported(
            &Home::default(),
            "Element,Type,Panel,Circuit,Room,VA\nOutlet A,Receptacle,P1,4,Hall,180\nLamp,Light,P1,4,Hall,60\nOven,Appliance,P1,\"6,8\",,7000\nFan,Appliance,,,,\nClock,Thermostat,P1,<unnamed>,,\n",
        );
        let numbers: Vec<&str> = import.circuits.iter().map(|c| c.circuit.as_str()).collect();
        assert_eq!(numbers, ["4", "6,8"]);
        let unknown: Vec<(usize, &str)> =
            import.unknown.iter().map(|t| (t.row, t.why.key)).collect();
        assert_eq!(
            unknown,
            [(5, "import-thing-without-circuit"), (6, "import-thing-with-odd-circuit")]
        );
        // The panel, two breakers, and all five things.
        assert_eq!(import.components.len(), 8);
    }
}
