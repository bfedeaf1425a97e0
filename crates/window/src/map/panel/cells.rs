//! What is typed into the cells of a position, and what becomes of the home by it.
//!
//! The home follows each letter, and all letters of a cell are one undo. What makes no sense stays as
//! it was typed, and is told; it changes nothing.

use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Closes, Component, Connection, Edit, Handle, Home, Kind, Medium, Operates};
use quarterturn_mapping::next_tag;

use super::numbers::{MOST, Numbering};
use super::positions::{Board, Row};
use super::standing::MAIN;

/// A cell of a position.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Cell {
    /// What it serves.
    Serves,
    /// What it lets through, in amperes.
    Amperes,
    /// How many poles it has.
    Poles,
    /// Its number in the panel.
    Number,
}

/// What becomes of what was typed.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Written {
    /// The home changes so.
    Edit(Edit),
    /// Nothing: there is nothing yet, or it is there already.
    Nothing,
    /// Nothing of the breaker is left but itself: it may be that it is to be taken out.
    Emptied,
    /// It makes no sense, and why.
    Bad(String),
}

impl Cell {
    /// Those of a row, from left to right.
    pub(super) const ROW: [Self; 3] = [Self::Serves, Self::Amperes, Self::Poles];

    /// The words for it, within the accessible name of a cell.
    pub(super) fn key(self) -> &'static str {
        match self {
            Self::Serves => "panel-cell-serves",
            Self::Amperes => "panel-cell-amperes",
            Self::Poles => "panel-cell-poles",
            Self::Number => "panel-cell-number",
        }
    }

    /// What the map says.
    pub(super) fn read(self, words: &Catalogue, row: &Row<'_>) -> String {
        let Some(breaker) = row.breaker() else { return String::new() };
        match self {
            Self::Serves if is_unnamed(words, row.first_label(), &breaker.name) => String::new(),
            Self::Serves => breaker.name.clone(),
            Self::Amperes => breaker.rating_a.map(|a| a.to_string()).unwrap_or_default(),
            Self::Poles => breaker.poles.map(|poles| poles.to_string()).unwrap_or_default(),
            Self::Number => row.label.clone(),
        }
    }
}

/// What becomes of a text in a cell of a row.
pub(super) fn write(
    home: &Home,
    words: &Catalogue,
    board: &Board<'_>,
    row: &Row<'_>,
    cell: Cell,
    text: &str,
) -> Written {
    let text = text.trim();
    let mut breaker = match row.breaker() {
        Some(breaker) => breaker.clone(),
        None if text.is_empty() => return Written::Nothing,
        None => fresh(home, words, board, row),
    };
    // What has no number cannot be called by it.
    let is_nameless = cell == Cell::Serves && text.is_empty() && row.label.is_empty();
    if is_nameless && breaker.rating_a.is_none() {
        return Written::Emptied;
    }
    let number = breaker.circuit.clone();
    let written = match cell {
        Cell::Serves => serves(home, words, row, &mut breaker, text),
        Cell::Amperes => amperes(&mut breaker, text),
        Cell::Poles => poles(board, row, &mut breaker, text),
        Cell::Number => renumber(words, board, row, &mut breaker, text),
    };
    if let Err((key, fills)) = written {
        let fills: Vec<_> = fills.iter().map(|(name, value)| fill(name, value)).collect();
        return Written::Bad(words.fill(&format!("window-{key}"), &fills));
    }
    let Some(known) = row.breaker() else {
        return Written::Edit(added(board, row, breaker));
    };
    let is_bare = is_unnamed(words, row.first_label(), &breaker.name)
        && breaker.rating_a.is_none()
        && breaker.poles.is_none_or(|poles| poles == 1);
    if text.is_empty() && is_bare && cell != Cell::Number {
        return Written::Emptied;
    }
    if breaker == *known {
        return Written::Nothing;
    }
    Written::Edit(changed(home, board, number.as_deref(), breaker))
}

/// Why something makes no sense: a text, and what fills its places.
type Bad = (&'static str, Vec<(&'static str, String)>);

/// A breaker for a free position.
fn fresh(home: &Home, words: &Catalogue, board: &Board<'_>, row: &Row<'_>) -> Component {
    let panel = board.panel;
    let number = if row.is_main() { MAIN.to_owned() } else { row.label.clone() };
    let name =
        if row.is_main() { words.text("window-panel-main-of-it") } else { spare(words, &number) };
    let id = home.free_id(&format!("{} {number}", panel.id));
    let mut breaker = Component::new(&id, Kind::Breaker, &name);
    breaker.tag = next_tag(home, Kind::Breaker);
    breaker.space.clone_from(&panel.space);
    breaker.at = panel.at;
    breaker.operates = Some(Operates {
        handle: Some(Handle::Toggle),
        closes: Some(Closes::ToOff),
        ..Operates::default()
    });
    breaker.panel = Some(panel.id.clone());
    breaker.circuit = Some(number);
    // It fills one place; a main may have any number of poles.
    breaker.poles = (!row.is_main()).then_some(1);
    breaker
}

/// A new breaker with its line: from the panel, or from the main to it.
fn added(board: &Board<'_>, row: &Row<'_>, breaker: Component) -> Edit {
    let (panel, id) = (board.panel.id.as_str(), breaker.id.as_str());
    let (from, to) = if row.is_main() { (id, panel) } else { (panel, id) };
    let line = Connection::new(from, to, Medium::Power);
    let fills = vec![("name", breaker.name.clone())];
    let edits = vec![Edit::PutComponent(Box::new(breaker)), Edit::Connect(Box::new(line))];
    Edit::Named { key: "edit-add", fills, edits }
}

/// A breaker that changes, and with its number what the map says of the things on it.
fn changed(home: &Home, board: &Board<'_>, number: Option<&str>, breaker: Component) -> Edit {
    let fills = vec![("name", breaker.name.clone())];
    let mut edits = Vec::new();
    if number != breaker.circuit.as_deref() && number.is_some() {
        let told = home.components.iter().filter(|thing| {
            thing.kind != Kind::Breaker
                && thing.circuit.as_deref() == number
                && thing.panel.as_ref() == Some(&board.panel.id)
        });
        for thing in told {
            let mut thing = thing.clone();
            thing.circuit.clone_from(&breaker.circuit);
            edits.push(Edit::PutComponent(Box::new(thing)));
        }
    }
    let itself = Edit::PutComponent(Box::new(breaker));
    // While its first cell is typed it is still called what is added.
    if edits.is_empty() {
        return itself;
    }
    edits.insert(0, itself);
    Edit::Named { key: "edit-change", fills, edits }
}

fn serves(
    home: &Home,
    words: &Catalogue,
    row: &Row<'_>,
    breaker: &mut Component,
    text: &str,
) -> Result<(), Bad> {
    if !text.is_empty() {
        text.clone_into(&mut breaker.name);
        return Ok(());
    }
    let label = row.first_label();
    if label.is_empty() {
        return Err(("panel-needs-name", Vec::new()));
    }
    let feeds = home.connections.iter().any(|l| l.carries == Medium::Power && l.from == breaker.id);
    breaker.name = if feeds { unnamed(words, label) } else { spare(words, label) };
    Ok(())
}

fn amperes(breaker: &mut Component, text: &str) -> Result<(), Bad> {
    /// Largest rating of a breaker in a house or a small works.
    const LARGEST: f64 = 1200.0;
    if text.is_empty() {
        breaker.rating_a = None;
        return Ok(());
    }
    let number = text.trim_end_matches(['a', 'A']).trim().replace(',', ".");
    let number = number.parse::<f64>().ok().filter(|n| *n > 0.0 && *n <= LARGEST);
    breaker.rating_a = Some(number.ok_or_else(|| ("panel-bad-amperes", Vec::new()))?);
    Ok(())
}

fn poles(board: &Board<'_>, row: &Row<'_>, breaker: &mut Component, text: &str) -> Result<(), Bad> {
    let in_sides = board.numbering == Numbering::Sides;
    let most = if in_sides { 3 } else { 4 };
    let poles = match text {
        "" => None,
        text => {
            let poles = text.parse::<u32>().ok().filter(|poles| (1..=most).contains(poles));
            let bad = || ("panel-bad-poles", vec![("most", most.to_string())]);
            Some(poles.ok_or_else(bad)?)
        }
    };
    breaker.poles = poles;
    let number = breaker.circuit.as_deref().unwrap_or_default();
    let is_plain = number.chars().all(|c| c.is_ascii_digit() || c == ',');
    if let (Some(&first), true, true) = (row.places.first(), in_sides, is_plain) {
        let below: Vec<u32> = (0..poles.unwrap_or(1)).map(|pole| first + 2 * pole).collect();
        free(board, &breaker.id, &below)?;
        breaker.circuit = Some(joined(board, &below));
    }
    Ok(())
}

fn renumber(
    words: &Catalogue,
    board: &Board<'_>,
    row: &Row<'_>,
    breaker: &mut Component,
    text: &str,
) -> Result<(), Bad> {
    let was_unnamed = is_unnamed(words, row.first_label(), &breaker.name);
    if row.is_main() && text.is_empty() {
        return Ok(());
    }
    let mut places = board.places(text);
    let in_sides = board.numbering == Numbering::Sides;
    let is_half = in_sides && text.chars().any(char::is_alphabetic);
    let poles = breaker.poles.unwrap_or(1);
    if let (&[first], true, false) = (places.as_slice(), in_sides, is_half) {
        places = (0..poles).map(|pole| first + 2 * pole).collect();
    }
    // Halves of a place may be two; letters tell them apart.
    if !is_half {
        free(board, &breaker.id, &places)?;
    }
    breaker.circuit = match (text, places.len() > 1) {
        ("", _) => None,
        (text, false) => Some(text.to_owned()),
        (_, true) => Some(joined(board, &places)),
    };
    if in_sides && places.len() > 1 {
        breaker.poles = u32::try_from(places.len()).ok();
    }
    let first = breaker.circuit.as_deref().and_then(|number| number.split(',').next());
    if let (true, Some(first)) = (was_unnamed, first) {
        breaker.name = spare(words, first);
    }
    Ok(())
}

/// Whether these places are there, and nobody else in them.
fn free(board: &Board<'_>, id: &str, places: &[u32]) -> Result<(), Bad> {
    for &place in places {
        let number = || ("number", board.label(place));
        if place > MOST {
            return Err(("panel-beyond", vec![number()]));
        }
        if let Some(other) = board.holder(place, id) {
            return Err(("panel-taken", vec![number(), ("other", other.name.clone())]));
        }
    }
    Ok(())
}

fn joined(board: &Board<'_>, places: &[u32]) -> String {
    places.iter().map(|place| board.label(*place)).collect::<Vec<_>>().join(",")
}

/// The name of a breaker that nothing is to hang on.
fn spare(words: &Catalogue, number: &str) -> String {
    words.fill("window-panel-spare", &[fill("number", number)])
}

/// The name of a breaker of which nobody has said what hangs on it.
fn unnamed(words: &Catalogue, number: &str) -> String {
    words.fill("window-panel-unnamed", &[fill("number", number)])
}

/// True if a name is one that we gave for want of a better.
fn is_unnamed(words: &Catalogue, number: &str, name: &str) -> bool {
    !number.is_empty() && (name == spare(words, number) || name == unnamed(words, number))
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{History, Units};

    fn begin() -> (History, Catalogue) {
        let mut home = Home { units: Units::Us, ..Home::default() };
        home.components.push(Component::new("panel", Kind::Panel, "Panel"));
        (History::new(home), Catalogue::in_language("en"))
    }

    /// Types into a cell; what became of it, if it is no edit.
    fn put(
        history: &mut History,
        words: &Catalogue,
        key: &str,
        cell: Cell,
        text: &str,
    ) -> Option<Written> {
        let home = history.home().clone();
        let board = Board::of(&home, home.component("panel").unwrap(), Some(8));
        match write(&home, words, &board, board.row(key).unwrap(), cell, text) {
            Written::Edit(edit) => {
                history.apply(edit).unwrap();
                None
            }
            other => Some(other),
        }
    }

    #[test]
    fn a_breaker_is_made_changed_and_emptied() {
        let (mut history, words) = begin();
        assert_eq!(put(&mut history, &words, "5", Cell::Serves, " "), Some(Written::Nothing));
        assert_eq!(put(&mut history, &words, "5", Cell::Serves, "Kitchen"), None);
        assert_eq!(put(&mut history, &words, "5", Cell::Amperes, "20 A"), None);
        let breaker = history.home().components[1].clone();
        assert_eq!(
            (breaker.name.as_str(), breaker.rating_a, breaker.poles),
            ("Kitchen", Some(20.0), Some(1))
        );
        assert_eq!(
            (breaker.circuit.as_deref(), breaker.panel.as_deref()),
            (Some("5"), Some("panel"))
        );
        assert_eq!(breaker.tag.as_deref(), Some("E1"));
        let line = Connection::new("panel", &breaker.id, Medium::Power);
        assert_eq!(history.home().connections, [line]);
        let bad = put(&mut history, &words, "5", Cell::Amperes, "twenty");
        assert!(
            matches!(bad, Some(Written::Bad(why)) if why.contains("20")),
            "it says what would do"
        );
        // Without a name it is a spare, as long as its amperes are known.
        assert_eq!(put(&mut history, &words, "5", Cell::Serves, ""), None);
        assert_eq!(history.home().components[1].name, "Spare 5");
        assert_eq!(put(&mut history, &words, "5", Cell::Amperes, ""), Some(Written::Emptied));
    }

    #[test]
    fn two_poles_take_the_place_below_if_it_is_free() {
        let (mut history, words) = begin();
        put(&mut history, &words, "1", Cell::Serves, "Dryer");
        let told = |thing: &str, history: &mut History| {
            let mut thing = Component::new(thing, Kind::Appliance, thing);
            thing.panel = Some("panel".to_owned());
            thing.circuit = Some("1".to_owned());
            history.apply(Edit::PutComponent(Box::new(thing))).unwrap();
        };
        told("drum", &mut history);
        assert_eq!(put(&mut history, &words, "1", Cell::Poles, "2"), None);
        let number = |history: &History, at: usize| history.home().components[at].circuit.clone();
        assert_eq!(number(&history, 1).as_deref(), Some("1,3"));
        // What the map says of things on it follows.
        assert_eq!(number(&history, 2).as_deref(), Some("1,3"));
        put(&mut history, &words, "5", Cell::Serves, "Hall");
        let bad = put(&mut history, &words, "1", Cell::Poles, "3");
        assert!(
            matches!(bad, Some(Written::Bad(why)) if why.contains('5') && why.contains("Hall"))
        );
        assert_eq!(put(&mut history, &words, "1", Cell::Poles, "1"), None);
        assert_eq!(number(&history, 1).as_deref(), Some("1"));
        for text in ["0", "4", "x"] {
            let bad = put(&mut history, &words, "1", Cell::Poles, text);
            assert!(matches!(bad, Some(Written::Bad(_))), "{text}");
        }
    }

    #[test]
    fn a_number_moves_a_breaker_unless_the_place_is_taken() {
        let (mut history, words) = begin();
        put(&mut history, &words, "1", Cell::Poles, "2");
        put(&mut history, &words, "2", Cell::Serves, "Hall");
        let bad = put(&mut history, &words, "1", Cell::Number, "2");
        assert!(matches!(bad, Some(Written::Bad(why)) if why.contains("Hall")));
        assert_eq!(put(&mut history, &words, "1", Cell::Number, "6"), None);
        let spare = history.home().components[1].clone();
        assert_eq!((spare.circuit.as_deref(), spare.name.as_str()), (Some("6,8"), "Spare 6"));
        let bad = put(&mut history, &words, "6", Cell::Number, "119");
        assert!(matches!(bad, Some(Written::Bad(why)) if why.contains("121")));
    }

    #[test]
    fn the_main_feeds_the_panel() {
        let (mut history, words) = begin();
        assert_eq!(put(&mut history, &words, MAIN, Cell::Amperes, "100"), None);
        let main = history.home().components[1].clone();
        assert_eq!((main.circuit.as_deref(), main.rating_a), (Some(MAIN), Some(100.0)));
        let line = Connection::new(&main.id, "panel", Medium::Power);
        assert_eq!(history.home().connections, [line]);
    }
}
