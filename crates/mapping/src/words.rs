//! What a name or a heading means, by the lists of words in the catalogue.
//!
//! People name their rooms and fill their tables in their own language, whatever the program is set
//! to: the lists of all languages count, always. A list is a text of the catalogue, its words parted
//! by commas; a word with a star at its end also begins longer ones.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use quarterturn_guidance::Catalogue;

/// Keys of all lists of words.
pub(crate) const LISTS: &[&str] = &[
    "words-hot",
    "words-cold",
    "words-main",
    "words-freezer",
    "words-alarm",
    "words-medical",
    "words-pump",
    "words-computer",
    "words-spare",
    "words-no-breaker",
    "words-unknown",
    "words-half-bath",
    "words-bath",
    "words-kitchen",
    "words-laundry",
    "words-utility",
    "words-garage",
    "words-bedroom",
    "words-living",
    "words-hall",
    "words-outdoors",
    "words-basement",
    "words-attic",
    "words-table-panel",
    "words-table-panel-itself",
    "words-table-circuit",
    "words-table-rating",
    "words-table-poles",
    "words-table-serves",
    "words-table-room",
    "words-table-kind",
    "words-table-name",
    "words-table-watts",
    "words-part-smoke-alarm",
    "words-part-switch",
    "words-part-light",
    "words-part-receptacle",
    "words-part-gfci",
    "words-part-thermostat",
    "words-part-appliance",
    "words-yes-two-pole",
    "words-drain",
    "words-telling-nothing",
];

/// The words of each list in all languages, folded.
static WORDS: LazyLock<BTreeMap<&'static str, Vec<String>>> = LazyLock::new(|| {
    let languages: Vec<Catalogue> =
        Catalogue::languages().iter().map(|l| Catalogue::in_language(l.tag)).collect();
    LISTS
        .iter()
        .map(|&key| {
            let mut words: Vec<String> = languages
                .iter()
                .flat_map(|catalogue| {
                    let list = catalogue.text(key);
                    list.split(',').map(|word| folded(word.trim())).collect::<Vec<_>>()
                })
                .filter(|word| !word.is_empty())
                .collect();
            words.sort();
            words.dedup();
            (key, words)
        })
        .collect()
});

/// True if `text` holds a word of the list, as whole words.
pub(crate) fn says(text: &str, list: &str) -> bool {
    longest(text, list) > 0
}

/// True if `text` is a word of the list, and nothing else.
pub(crate) fn is(text: &str, list: &str) -> bool {
    let text = folded(text);
    words(list).iter().any(|word| fits(&text, word))
}

/// Length of the longest word of the list that `text` holds; 0 if it holds none.
pub(crate) fn longest(text: &str, list: &str) -> usize {
    let text = format!(" {} ", folded(text));
    words(list)
        .iter()
        .filter(|word| match word.strip_suffix('*') {
            Some(begin) => text.contains(&format!(" {begin}")),
            None => text.contains(&format!(" {word} ")),
        })
        .map(|word| word.chars().count())
        .max()
        .unwrap_or(0)
}

/// Small letters without accents, everything else as single spaces between words.
pub(crate) fn folded(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars().flat_map(char::to_lowercase) {
        let plain = match letter {
            '\u{e1}' | '\u{e0}' | '\u{e2}' | '\u{e4}' | '\u{e3}' => 'a',
            '\u{e9}' | '\u{e8}' | '\u{ea}' | '\u{eb}' => 'e',
            '\u{ed}' | '\u{ec}' | '\u{ee}' | '\u{ef}' => 'i',
            '\u{f3}' | '\u{f2}' | '\u{f4}' | '\u{f6}' | '\u{f5}' => 'o',
            '\u{fa}' | '\u{f9}' | '\u{fb}' | '\u{fc}' => 'u',
            '\u{f1}' => 'n',
            '*' | '#' | '<' | '>' | '?' => letter,
            other if other.is_alphanumeric() => other,
            _ => ' ',
        };
        if plain != ' ' || !out.ends_with(' ') {
            out.push(plain);
        }
    }
    out.trim().to_owned()
}

fn words(list: &str) -> &'static [String] {
    WORDS.get(list).map_or(&[], Vec::as_slice)
}

fn fits(text: &str, word: &str) -> bool {
    word.strip_suffix('*').map_or(text == word, |begin| text.starts_with(begin))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_list_has_words_in_every_language() {
        for language in Catalogue::languages() {
            let catalogue = Catalogue::in_language(language.tag);
            for key in LISTS {
                assert!(catalogue.has(key), "{} {key}", language.tag);
                assert!(catalogue.text(key).len() > 2, "{} {key}", language.tag);
            }
        }
    }

    #[test]
    fn words_count_whole_whatever_their_case_accents_and_language() {
        assert!(says("Ba\u{f1}o de arriba", "words-bath"));
        assert!(says("Upstairs BATHROOM", "words-bath"));
        assert!(!says("Sabbath corner", "words-bath"));
        assert!(says("Cold stop (kitchen)", "words-cold"));
        assert!(!says("Coldwell print room", "words-cold"));
        assert!(is(" Circuit # ", "words-table-circuit"));
        assert!(!is("circuit breaker in the hall", "words-table-circuit"));
        assert_eq!(folded("  Caf\u{e9}--BAR\t2 "), "cafe bar 2");
    }
}
