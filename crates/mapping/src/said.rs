//! Something to tell a person, as a key of the catalogue and what fills its places.

use quarterturn_guidance::{Catalogue, Fill, count, fill};
use quarterturn_home::{Kind, Medium};

/// A text of the catalogue with its places filled, in no language yet.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    /// Key of the text.
    pub key: &'static str,
    /// What fills its places, by name.
    pub fills: Vec<(&'static str, Told)>,
}

/// What fills a place of a text.
#[derive(Debug, Clone, PartialEq)]
pub enum Told {
    /// Words of the home, such as a name.
    Text(String),
    /// A number, by which the text may choose its forms.
    Number(f64),
    /// Another text of the catalogue, such as the name of a kind.
    Key(String),
    /// Names, told as a list.
    List(Vec<String>),
}

impl Said {
    /// A text without places.
    #[must_use]
    pub fn new(key: &'static str) -> Self {
        Self { key, fills: Vec::new() }
    }

    /// The words in the catalogue's language.
    #[must_use]
    pub fn text(&self, catalogue: &Catalogue) -> String {
        let fills: Vec<Fill<'_>> = self
            .fills
            .iter()
            .map(|(name, told)| match told {
                Told::Text(text) => fill(name, text),
                Told::Number(number) => count(name, *number),
                Told::Key(key) => fill(name, &catalogue.text(key)),
                Told::List(items) => fill(name, &catalogue.list(items)),
            })
            .collect();
        catalogue.fill(self.key, &fills)
    }

    /// Fills a place with words of the home, or with a word by which the text chooses.
    #[must_use]
    pub fn with(mut self, name: &'static str, text: impl Into<String>) -> Self {
        self.fills.push((name, Told::Text(text.into())));
        self
    }

    /// Fills a place with a number.
    #[must_use]
    pub fn number(mut self, name: &'static str, number: f64) -> Self {
        self.fills.push((name, Told::Number(number)));
        self
    }

    /// Fills a place with how many there are.
    #[must_use]
    pub fn count(self, name: &'static str, count: usize) -> Self {
        self.number(name, as_number(count))
    }

    /// Fills a place with a list of names.
    #[must_use]
    pub fn list(mut self, name: &'static str, items: Vec<String>) -> Self {
        self.fills.push((name, Told::List(items)));
        self
    }

    /// Fills a place with the name of what a line carries.
    #[must_use]
    pub fn medium(mut self, name: &'static str, medium: Medium) -> Self {
        self.fills.push((name, Told::Key(medium_key(medium).to_owned())));
        self
    }

    /// Fills a place with the name of a kind.
    #[must_use]
    pub fn kind(mut self, name: &'static str, kind: Kind) -> Self {
        self.fills.push((name, Told::Key(kind_key(kind))));
        self
    }
}

/// Key of the name of what a line carries.
#[must_use]
pub fn medium_key(medium: Medium) -> &'static str {
    match medium {
        Medium::ColdWater => "medium-cold-water",
        Medium::HotWater => "medium-hot-water",
        Medium::Waste => "medium-waste",
        Medium::Vent => "medium-vent",
        Medium::Condensate => "medium-condensate",
        Medium::Power => "medium-power",
        Medium::Gas => "medium-gas",
        Medium::Signal => "medium-signal",
    }
}

/// Key of the name of a kind, such as `kind-isolating-valve`.
#[must_use]
pub fn kind_key(kind: Kind) -> String {
    let mut key = "kind".to_owned();
    for letter in kind.name().chars() {
        if letter.is_ascii_uppercase() {
            key.push('-');
        }
        key.push(letter.to_ascii_lowercase());
    }
    key
}

/// A count as a number for a text.
pub(crate) fn as_number(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::from(u32::MAX), f64::from)
}

#[cfg(test)]
mod tests {
    use super::*;

    const MEDIA: [Medium; 8] = [
        Medium::ColdWater,
        Medium::HotWater,
        Medium::Waste,
        Medium::Vent,
        Medium::Condensate,
        Medium::Power,
        Medium::Gas,
        Medium::Signal,
    ];

    #[test]
    fn every_kind_and_medium_has_a_name_in_every_language() {
        assert_eq!(kind_key(Kind::IsolatingValve), "kind-isolating-valve");
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for &kind in Kind::ALL {
                assert!(words.has(&kind_key(kind)), "{} {kind:?}", language.tag);
            }
            for medium in MEDIA {
                assert!(words.has(medium_key(medium)), "{} {medium:?}", language.tag);
            }
        }
    }

    #[test]
    fn places_are_filled_by_names_numbers_and_other_texts() {
        let said = Said::new("lines-cannot-meet")
            .with("name", "Tub")
            .kind("kind", Kind::Bath)
            .medium("medium", Medium::Gas);
        let words = said.text(&Catalogue::english());
        assert!(
            words.contains("Tub") && words.contains("bath") && words.contains("gas"),
            "{words}"
        );
        assert!(!words.contains('['), "{words}");
    }
}
