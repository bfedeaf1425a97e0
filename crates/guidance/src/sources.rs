//! Where each caution and step comes from: the data in `assets/guidance/`.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::Signal;

/// A caution or step, apart from its words.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Key of its words in the catalogue.
    pub id: String,
    /// Signal word, for cautions.
    #[serde(default)]
    pub signal: Option<Signal>,
    /// The public source and its edition, or `common practice`.
    pub source: String,
}

static ENTRIES: LazyLock<BTreeMap<String, Entry>> = LazyLock::new(|| {
    let files = [
        include_str!("../../../assets/guidance/cautions.ron"),
        include_str!("../../../assets/guidance/steps.ron"),
    ];
    // The tests read both files strictly, so that nothing is lost here.
    files
        .into_iter()
        .filter_map(|text| read(text).ok())
        .flatten()
        .map(|entry| (entry.id.clone(), entry))
        .collect()
});

fn read(text: &str) -> Result<Vec<Entry>, ron::error::SpannedError> {
    ron::Options::default()
        .with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME)
        .from_str(text)
}

/// All cautions and steps, by id.
pub fn entries() -> impl Iterator<Item = &'static Entry> {
    ENTRIES.values()
}

/// The source of a caution or step.
#[must_use]
pub fn source(id: &str) -> Option<&'static str> {
    ENTRIES.get(id).map(|entry| entry.source.as_str())
}

/// The signal word of a caution; the strongest if the data does not tell.
pub(crate) fn signal(id: &str) -> Signal {
    ENTRIES.get(id).and_then(|entry| entry.signal).unwrap_or(Signal::Danger)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Catalogue;

    #[test]
    fn every_entry_has_words_and_a_source_and_stands_once() {
        let catalogue = Catalogue::english();
        let mut count = 0;
        for text in [
            include_str!("../../../assets/guidance/cautions.ron"),
            include_str!("../../../assets/guidance/steps.ron"),
        ] {
            for entry in read(text).unwrap() {
                assert!(catalogue.has(&entry.id), "{} has no words", entry.id);
                assert!(entry.source.len() > 5, "{} has no source", entry.id);
                assert_eq!(
                    entry.id.starts_with("caution-"),
                    entry.signal.is_some(),
                    "{}",
                    entry.id
                );
                count += 1;
            }
        }
        assert_eq!(count, entries().count(), "an id stands twice");
    }
}
