//! What a template is given: data and pictures. Names and sentences of the home travel as data
//! alone, so that nothing in them is read as markup.

use std::collections::BTreeMap;

use quarterturn_guidance::fill;
use serde_json::{Value, json};

use crate::house::House;
use crate::order::{CannotPrint, Order, Sheet};
use crate::pictures::Pictures;
use crate::{fridge, happened, pack, panels, valves};

/// A sheet's data, as JSON, and its pictures by name.
pub(crate) struct Gathered {
    pub(crate) data: Vec<u8>,
    pub(crate) files: BTreeMap<String, Vec<u8>>,
}

/// Longest word that is left whole, and the length of the parts of a longer one: narrower than the
/// narrowest column.
const LONGEST_WORD: usize = 14;

pub(crate) fn gather(sheet: Sheet, order: &Order<'_>) -> Result<Gathered, CannotPrint> {
    let house = House::new(order);
    let mut pictures = Pictures::new(order.pictures);
    let body = match sheet {
        Sheet::Fridge => Some(fridge::gather(&house, &mut pictures)),
        Sheet::Panels => panels::gather(&house),
        Sheet::Valves => valves::list(&house),
        Sheet::Tags => valves::tags(&house, &mut pictures),
        Sheet::Pack => Some(pack::gather(&house, &mut pictures)),
        Sheet::Log => happened::gather(&house),
    };
    let body = body.ok_or(CannotPrint::Nothing)?;
    let (emergency, numbers) = house.numbers();
    let (width, height) = order.paper.size_mm();
    let mut data = json!({
        "title": house.text(sheet.title_key()),
        "language": order.words.language(),
        "paper": order.paper.typst(),
        "paper_mm": [width, height],
        "home": order.home.name,
        "address": order.home.address,
        "today": order.today.to_string(),
        "emergency": emergency,
        "numbers": numbers,
        "body": body,
        "words": house.labels(&[
            "caution-local-codes",
            "paper-address-missing",
        ]),
        "page_of": order.words.fill(
            "paper-page",
            // The template puts the numbers in the place of these marks.
            &[fill("page", "\u{1}"), fill("all", "\u{2}")],
        ),
        "printed": order.words.fill(
            "paper-printed",
            &[fill("home", &order.home.name), fill("day", &order.today.to_string())],
        ),
    });
    soften(&mut data);
    // What is not set in lines stays as it is.
    if let Some(fields) = data.as_object_mut() {
        let title = house.text(sheet.title_key());
        let names = [fill("title", &title), fill("home", &order.home.name)];
        let whole = order.words.fill("paper-document-title", &names);
        fields.insert("document-title".to_owned(), json!(whole));
    }
    Ok(Gathered { data: data.to_string().into_bytes(), files: pictures.into_files() })
}

/// Lets very long words break: a name of eighty letters would leave its column.
fn soften(value: &mut Value) {
    match value {
        Value::String(text) => {
            if text.split_whitespace().any(|word| word.chars().count() > LONGEST_WORD) {
                *text = softened(text);
            }
        }
        Value::Array(items) => items.iter_mut().for_each(soften),
        Value::Object(fields) => fields
            .iter_mut()
            // Texts that are not set in lines: read aloud, or named.
            .filter(|(name, _)| !matches!(name.as_str(), "alt" | "picture" | "photo" | "code"))
            .for_each(|(_, field)| soften(field)),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

fn softened(text: &str) -> String {
    /// Zero-width space: a place where a line may end.
    const BREAK: char = '\u{200b}';
    /// Longer than any word of English or Spanish that stands in our texts.
    const NATURAL: usize = 24;
    let mut out = String::with_capacity(text.len() + 8);
    for piece in text.split_inclusive(char::is_whitespace) {
        let length = piece.trim_end().chars().count();
        for (at, letter) in piece.chars().enumerate() {
            if length > NATURAL && at > 0 && at % LONGEST_WORD == 0 && at < length {
                out.push(BREAK);
            }
            out.push(letter);
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_words_that_no_column_holds_are_broken() {
        assert_eq!(softened("a refrigerator, unplugged"), "a refrigerator, unplugged");
        let long = "x".repeat(80);
        let soft = softened(&long);
        assert_eq!(soft.replace('\u{200b}', ""), long);
        assert!(soft.split('\u{200b}').all(|part| part.chars().count() <= LONGEST_WORD));
    }
}
