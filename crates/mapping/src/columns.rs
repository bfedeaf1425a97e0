//! What the columns of a panel table mean: a guess that the person confirms or changes.

use std::collections::BTreeSet;

use crate::circuit_text::{circuit, poles, rating};
use crate::said::Said;
use crate::table::{Row, Sheet, Table};
use crate::words::{is, longest};

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Column {
    /// Nothing that is used.
    Nothing,
    /// The panel that the circuit is in.
    Panel,
    /// The name of the panel, where the row is a panel itself.
    PanelItself,
    /// The number of the circuit.
    Circuit,
    /// The amperes of the breaker, or of the thing.
    Rating,
    /// The number of poles.
    Poles,
    /// What the circuit serves.
    Serves,
    /// The room or floor.
    Room,
    /// What sort of thing it is.
    Kind,
    /// What the thing is called.
    Name,
    /// The watts of the thing.
    Watts,
}

impl Column {
    /// Every meaning, in the order in which they are offered.
    pub const ALL: &'static [Self] = &[
        Self::Nothing,
        Self::Circuit,
        Self::Serves,
        Self::Rating,
        Self::Poles,
        Self::Panel,
        Self::Name,
        Self::Kind,
        Self::Room,
        Self::Watts,
        Self::PanelItself,
    ];

    /// Its name.
    #[must_use]
    pub fn said(self) -> Said {
        Said::new(match self {
            Self::Nothing => "column-nothing",
            Self::Panel => "column-panel",
            Self::PanelItself => "column-panel-itself",
            Self::Circuit => "column-circuit",
            Self::Rating => "column-rating",
            Self::Poles => "column-poles",
            Self::Serves => "column-serves",
            Self::Room => "column-room",
            Self::Kind => "column-kind",
            Self::Name => "column-name",
            Self::Watts => "column-watts",
        })
    }
}

/// What a row stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layout {
    /// A circuit: the directory on the panel's door.
    Directory,
    /// An outlet, a light, an appliance: a list of things with their circuits.
    Things,
}

/// What a table probably means. Every field may be changed before it is read.
#[derive(Debug, Clone, PartialEq)]
pub struct Guess {
    /// The sheet, by place.
    pub sheet: usize,
    /// The row of headings, by place in the sheet, if there is one.
    pub heading: Option<usize>,
    /// What each column holds.
    pub columns: Vec<Column>,
    /// For each column, true if its heading told it, false if only its content did.
    pub told: Vec<bool>,
    /// What a row stands for.
    pub layout: Layout,
}

impl Guess {
    /// True if enough is known to read the table: where the circuit numbers are.
    #[must_use]
    pub fn is_enough(&self) -> bool {
        self.columns.contains(&Column::Circuit)
    }

    /// The rows below the heading.
    pub(crate) fn rows<'t>(&self, table: &'t Table) -> &'t [Row] {
        let rows = table.sheets.get(self.sheet).map_or(&[][..], |sheet| &sheet.rows);
        rows.get(self.heading.map_or(0, |row| row + 1)..).unwrap_or_default()
    }
}

/// The lists of words that headings are known by, with what they mean.
const HEADINGS: [(&str, Column); 9] = [
    ("words-table-circuit", Column::Circuit),
    ("words-table-serves", Column::Serves),
    ("words-table-rating", Column::Rating),
    ("words-table-poles", Column::Poles),
    ("words-table-panel", Column::Panel),
    ("words-table-room", Column::Room),
    ("words-table-kind", Column::Kind),
    ("words-table-name", Column::Name),
    ("words-table-watts", Column::Watts),
];

/// Rows among which the heading is looked for.
const HEAD_ROWS: usize = 15;
/// Rows by which a column without a heading is judged.
const LOOK_ROWS: usize = 200;

/// What a table probably means, by the words of its headings in any language, and where they do not
/// tell by what the columns hold.
#[must_use]
pub fn guess(table: &Table) -> Guess {
    let mut best: Option<(usize, Guess)> = None;
    for (place, sheet) in table.sheets.iter().enumerate() {
        let guess = guess_sheet(place, sheet);
        let score = guess.columns.iter().filter(|c| **c != Column::Nothing).count() * 2
            + usize::from(guess.is_enough()) * 10;
        if best.as_ref().is_none_or(|(most, _)| score > *most) {
            best = Some((score, guess));
        }
    }
    best.map_or_else(
        || Guess {
            sheet: 0,
            heading: None,
            columns: Vec::new(),
            told: Vec::new(),
            layout: Layout::Directory,
        },
        |(_, guess)| guess,
    )
}

fn guess_sheet(place: usize, sheet: &Sheet) -> Guess {
    let width = sheet.rows.iter().map(|row| row.cells.len()).max().unwrap_or(0);
    let heading = heading(sheet);
    let mut columns = vec![Column::Nothing; width];
    if let Some(row) = heading.and_then(|row| sheet.rows.get(row)) {
        for (column, cell) in columns.iter_mut().zip(&row.cells) {
            *column = meaning(&cell.text);
        }
        // A second column for the panel's name tells which rows are panels.
        if columns.iter().filter(|c| **c == Column::Panel).count() > 1 {
            let itself = row.cells.iter().position(|c| is(&c.text, "words-table-panel-itself"));
            if let Some(column) = itself.and_then(|at| columns.get_mut(at)) {
                *column = Column::PanelItself;
            }
        }
        only_one(&mut columns);
    }
    let told: Vec<bool> = columns.iter().map(|c| *c != Column::Nothing).collect();
    let body = sheet.rows.get(heading.map_or(0, |row| row + 1)..).unwrap_or_default();
    by_content(body, &mut columns, heading.is_some());
    let layout = layout(body, &columns);
    Guess { sheet: place, heading, columns, told, layout }
}

/// The row of headings: the first with most of them, if it has two, or one and nothing else.
fn heading(sheet: &Sheet) -> Option<usize> {
    let mut best: Option<(usize, usize)> = None;
    for (place, row) in sheet.rows.iter().take(HEAD_ROWS).enumerate() {
        let known = row.cells.iter().filter(|c| meaning(&c.text) != Column::Nothing).count();
        let filled = row.cells.iter().filter(|c| !c.text.is_empty()).count();
        let numbers = row
            .cells
            .iter()
            .any(|c| c.text.chars().all(|d| d.is_ascii_digit()) && !c.text.is_empty());
        let enough = known >= 2 || (known == 1 && filled <= 2);
        if enough && !numbers && best.is_none_or(|(most, _)| known > most) {
            best = Some((known, place));
        }
    }
    best.map(|(_, place)| place)
}

/// What a heading means: it is one of the words, else it holds one. The longest word wins.
fn meaning(text: &str) -> Column {
    // A heading is short; a sentence that speaks of circuits is none.
    if text.is_empty() || text.chars().count() > 40 {
        return Column::Nothing;
    }
    if let Some((_, column)) = HEADINGS.iter().find(|(list, _)| is(text, list)) {
        return *column;
    }
    let mut best = (2, Column::Nothing);
    for (list, column) in HEADINGS {
        let fit = longest(text, list);
        if fit > best.0 {
            best = (fit, column);
        }
    }
    best.1
}

/// Of the columns that can be there but once, the first stays. Two columns of circuits are the left
/// and the right side of a panel, each with what it serves; several may tell the sort of thing.
fn only_one(columns: &mut [Column]) {
    let sides = columns.iter().filter(|c| **c == Column::Circuit).count().max(1);
    for column in [
        Column::Panel,
        Column::PanelItself,
        Column::Name,
        Column::Room,
        Column::Watts,
        Column::Rating,
        Column::Poles,
        Column::Serves,
    ] {
        let most = match column {
            Column::Rating | Column::Poles | Column::Serves => sides,
            _ => 1,
        };
        columns.iter_mut().filter(|c| **c == column).skip(most).for_each(|c| *c = Column::Nothing);
    }
}

/// Fills in by content what is missing: the circuit always, the rest only without a heading.
fn by_content(body: &[Row], columns: &mut [Column], headed: bool) {
    let cells = |at: usize| -> Vec<&str> {
        body.iter()
            .take(LOOK_ROWS)
            .filter_map(|row| row.cells.get(at))
            .map(|cell| cell.text.as_str())
            .filter(|text| !text.is_empty())
            .collect()
    };
    let share = |texts: &[&str], fits: &dyn Fn(&str) -> bool| {
        texts.len() >= 2 && texts.iter().filter(|t| fits(t)).count() * 10 >= texts.len() * 7
    };
    let free = |columns: &[Column]| -> Vec<usize> {
        (0..columns.len()).filter(|&at| columns.get(at) == Some(&Column::Nothing)).collect()
    };
    let put = |columns: &mut [Column], at: Option<usize>, column: Column| {
        if let Some(slot) = at.and_then(|at| columns.get_mut(at)) {
            *slot = column;
        }
    };
    if !columns.contains(&Column::Circuit) {
        let found: Vec<usize> = free(columns)
            .into_iter()
            .filter(|&at| {
                let texts = cells(at);
                let distinct: BTreeSet<&&str> = texts.iter().collect();
                let short = texts.iter().all(|t| t.chars().count() <= 12);
                short
                    && distinct.len() * 2 > texts.len()
                    && share(&texts, &|t| circuit(t).is_some())
            })
            .collect();
        let numbers = |at: usize| -> Vec<u32> {
            cells(at).iter().filter_map(|t| circuit(t)).flat_map(|c| c.numbers).collect()
        };
        let first = found.first().copied();
        put(columns, first, Column::Circuit);
        // The other side of a panel goes on with the numbering; amperes do not.
        if let (Some(first), false) = (first, headed) {
            let left = numbers(first);
            let second = found.into_iter().skip(1).find(|&at| {
                let right = numbers(at);
                let places = 2 * u32::try_from(left.len() + right.len()).unwrap_or(u32::MAX / 2);
                let apart = right.iter().all(|n| !left.contains(n));
                apart && right.iter().chain(&left).all(|n| *n <= places)
            });
            put(columns, second, Column::Circuit);
        }
    }
    if headed {
        return;
    }
    let sides = columns.iter().filter(|c| **c == Column::Circuit).count().max(1);
    let lengths = |texts: &[&str]| {
        texts.iter().map(|t| t.chars().count()).sum::<usize>() / texts.len().max(1)
    };
    let wordy: Vec<usize> = free(columns)
        .into_iter()
        .filter(|&at| {
            let texts = cells(at);
            share(&texts, &|t| t.chars().filter(|c| c.is_alphabetic()).count() >= 3)
                && lengths(&texts) >= 3
        })
        .collect();
    for at in wordy.into_iter().take(sides) {
        put(columns, Some(at), Column::Serves);
    }
    let of_poles: Vec<usize> = free(columns)
        .into_iter()
        .filter(|&at| share(&cells(at), &|t| poles(t).is_some() && t.chars().count() < 4))
        .collect();
    for at in of_poles.into_iter().take(sides) {
        put(columns, Some(at), Column::Poles);
    }
    let usual = [
        10.0, 13.0, 15.0, 16.0, 20.0, 25.0, 30.0, 32.0, 35.0, 40.0, 45.0, 50.0, 60.0, 63.0, 70.0,
        80.0, 90.0, 100.0,
    ];
    let of_rating: Vec<usize> = free(columns)
        .into_iter()
        .filter(|&at| {
            share(&cells(at), &|t| {
                rating(t)
                    .is_some_and(|(amps, _)| usual.iter().any(|u: &f64| (u - amps).abs() < 0.1))
            })
        })
        .collect();
    for at in of_rating.into_iter().take(sides) {
        put(columns, Some(at), Column::Rating);
    }
}

/// A list of things has a column for the sort of thing or for its name, or the same circuit on many
/// rows.
fn layout(body: &[Row], columns: &[Column]) -> Layout {
    let at = |wanted: Column| columns.iter().position(|c| *c == wanted);
    if at(Column::Kind).is_some() || (at(Column::Name).is_some() && at(Column::Serves).is_none()) {
        return Layout::Things;
    }
    let Some(circuits) = at(Column::Circuit) else { return Layout::Directory };
    let key = |row: &Row| -> Option<(String, String)> {
        let text = |at: usize| row.cells.get(at).map(|c| c.text.clone());
        let number = circuit(&text(circuits)?)?.text;
        Some((at(Column::Panel).and_then(text).unwrap_or_default(), number))
    };
    let keys: Vec<_> = body.iter().filter_map(key).collect();
    let distinct: BTreeSet<_> = keys.iter().collect();
    if distinct.len() * 3 < keys.len() * 2 { Layout::Things } else { Layout::Directory }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::read_text;
    use quarterturn_guidance::Catalogue;

    fn guessed(text: &str) -> (Vec<Column>, Layout, Option<usize>) {
        let guess = guess(&read_text(text).unwrap());
        (guess.columns, guess.layout, guess.heading)
    }

    #[test]
    fn headings_are_known_in_both_languages() {
        use Column::{Circuit, Nothing, Poles, Rating, Room, Serves};
        let (columns, layout, heading) = guessed(
            "Panel directory of our house,,,\nCkt #,Description,Breaker size (amps),Poles\n1,Kitchen,20,1\n3,Range,50,2\n",
        );
        assert_eq!(
            (columns, layout, heading),
            (vec![Circuit, Serves, Rating, Poles], Layout::Directory, Some(1))
        );
        let (columns, ..) = guessed(
            "N\u{ba} de circuito;Descripci\u{f3}n;Calibre;Observaciones;Planta\n1;Cocina;16;;1\n2;Ba\u{f1}o;16;;2\n",
        );
        assert_eq!(columns, [Circuit, Serves, Rating, Nothing, Room]);
    }

    #[test]
    fn without_headings_the_content_tells() {
        use Column::{Circuit, Poles, Rating, Serves};
        let (columns, layout, heading) =
            guessed("1,Kitchen counter,20,1\n2,Bedroom lights,15,1\n3,Range,50,2\n4,Dryer,30,2\n");
        assert_eq!(
            (columns, layout, heading),
            (
                vec![Circuit, Serves, Poles, Rating].into_iter().zip([0, 1, 3, 2]).fold(
                    vec![Circuit; 4],
                    |mut all, (c, at)| {
                        all[at] = c;
                        all
                    }
                ),
                Layout::Directory,
                None
            )
        );
        let (columns, ..) = guessed("1,Kitchen,Bath,2\n3,Hall,Den,4\n5,Attic,Porch,6\n");
        assert_eq!(columns, [Circuit, Serves, Serves, Circuit]);
    }

    #[test]
    fn a_table_of_something_else_is_not_enough() {
        let guess = guess(&read_text("Name,Birthday\nAnn,June\nBob,May\n").unwrap());
        assert!(!guess.is_enough());
    }

    #[test]
    fn every_meaning_has_a_name() {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for column in Column::ALL {
                assert!(!column.said().text(&words).starts_with('['), "{column:?}");
            }
        }
    }
}
