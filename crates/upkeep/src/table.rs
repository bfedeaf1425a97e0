//! The built-in lists: which jobs there are, what is done once, and where each comes from.

use std::sync::LazyLock;

use quarterturn_guidance::{Catalogue, Caution, Signal};
use quarterturn_home::{Kind, Role};
use serde::Deserialize;

/// An entry of a built-in list, for whoever wants to see where it comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Listed {
    /// Its id; the words stand in the catalogue under it.
    pub id: &'static str,
    /// Where it comes from, or that it is common practice.
    pub source: &'static str,
}

/// A job that a map gives rise to.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Template {
    pub(crate) id: String,
    /// Kinds it is done to.
    pub(crate) kinds: Vec<Kind>,
    /// Which of them; all without it.
    #[serde(default, rename = "where")]
    pub(crate) which: Option<Which>,
    /// A home's own job that comes again, on nothing but these kinds, is this one.
    #[serde(default)]
    pub(crate) only: bool,
    /// Doing it is working the device.
    #[serde(default)]
    pub(crate) exercises: bool,
    #[serde(default)]
    pub(crate) every_months: Option<u32>,
    /// Months of the year in which it falls due.
    #[serde(default)]
    pub(crate) months: Vec<i8>,
    /// Years after a thing was put in.
    #[serde(default)]
    pub(crate) after_years: Option<u32>,
    #[serde(default)]
    pub(crate) tools: Vec<String>,
    #[serde(default)]
    pub(crate) cautions: Vec<String>,
    /// Who does it, if not anyone.
    #[serde(default)]
    pub(crate) by: Option<Role>,
    pub(crate) source: String,
}

/// Which components of its kinds a job is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(crate) enum Which {
    /// What anyone may work.
    Workable,
    /// What trips on arcs.
    ArcFault,
    /// What holds water.
    Tank,
    /// What heats water as it runs.
    Tankless,
    /// What blows through a duct.
    Duct,
    /// What is connected to anything.
    Fed,
}

/// Something to do once after moving in.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OnceTemplate {
    pub(crate) id: String,
    #[serde(default)]
    pub(crate) cautions: Vec<String>,
    pub(crate) source: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct CautionEntry {
    id: String,
    signal: Signal,
    source: String,
}

// A table that cannot be read is empty here; a test reads each strictly.
static JOBS: LazyLock<Vec<Template>> = LazyLock::new(|| {
    ron::from_str(&unwrapped(include_str!("../../../assets/upkeep/jobs.ron"))).unwrap_or_default()
});
static ONCE: LazyLock<Vec<OnceTemplate>> = LazyLock::new(|| {
    ron::from_str(include_str!("../../../assets/upkeep/move_in.ron")).unwrap_or_default()
});
static CAUTIONS: LazyLock<Vec<CautionEntry>> = LazyLock::new(|| {
    ron::from_str(include_str!("../../../assets/upkeep/cautions.ron")).unwrap_or_default()
});

/// Where each built-in job comes from.
pub fn jobs_table() -> impl Iterator<Item = Listed> {
    JOBS.iter().map(|job| Listed { id: &job.id, source: &job.source })
}

/// Where each thing to do once comes from.
pub fn move_in_table() -> impl Iterator<Item = Listed> {
    ONCE.iter().map(|once| Listed { id: &once.id, source: &once.source })
}

/// Where each caution comes from.
pub fn cautions_table() -> impl Iterator<Item = Listed> {
    CAUTIONS.iter().map(|caution| Listed { id: &caution.id, source: &caution.source })
}

pub(crate) fn templates() -> &'static [Template] {
    &JOBS
}

pub(crate) fn once(id: &str) -> Option<&'static OnceTemplate> {
    ONCE.iter().find(|once| once.id == id)
}

/// Cautions in words, worst first.
pub(crate) fn cautions(ids: &[String], words: &Catalogue) -> Vec<Caution> {
    let mut told: Vec<Caution> = ids
        .iter()
        .map(|id| {
            let entry = CAUTIONS.iter().find(|caution| caution.id == *id);
            let key = format!("upkeep-caution-{id}");
            let signal = entry.map_or(Signal::Warning, |entry| entry.signal);
            Caution { text: words.text(&key), id: key, signal }
        })
        .collect();
    told.sort_by_key(|caution| caution.signal);
    told
}

/// With `None` and plain values both understood.
fn unwrapped(text: &str) -> String {
    format!("#![enable(implicit_some)]\n{text}")
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    fn distinct<'a>(ids: impl Iterator<Item = &'a str>) -> usize {
        ids.collect::<BTreeSet<_>>().len()
    }

    #[test]
    fn every_table_is_read_and_no_id_stands_twice() {
        let jobs = unwrapped(include_str!("../../../assets/upkeep/jobs.ron"));
        let read: Vec<Template> = ron::from_str(&jobs).unwrap();
        assert_eq!(read.len(), templates().len());
        let once: Vec<OnceTemplate> =
            ron::from_str(include_str!("../../../assets/upkeep/move_in.ron")).unwrap();
        let cautions: Vec<CautionEntry> =
            ron::from_str(include_str!("../../../assets/upkeep/cautions.ron")).unwrap();
        assert!(read.len() > 25 && once.len() > 15 && cautions.len() > 15);
        assert_eq!(distinct(read.iter().map(|t| t.id.as_str())), read.len());
        assert_eq!(distinct(once.iter().map(|t| t.id.as_str())), once.len());
        assert_eq!(distinct(cautions.iter().map(|t| t.id.as_str())), cautions.len());
    }

    #[test]
    fn every_entry_has_a_source_and_its_words_in_every_language() {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            let has = |key: String| assert!(words.has(&key), "{key} in {}", language.tag);
            for job in templates() {
                has(format!("job-{}", job.id));
                has(format!("job-{}-how", job.id));
                job.tools.iter().for_each(|tool| has(format!("tool-{tool}")));
            }
            for once in ONCE.iter() {
                has(format!("move-in-{}", once.id));
                has(format!("move-in-{}-how", once.id));
            }
            CAUTIONS.iter().for_each(|caution| has(format!("upkeep-caution-{}", caution.id)));
        }
        let sources = jobs_table().chain(move_in_table()).chain(cautions_table());
        for listed in sources {
            assert!(listed.source.len() > 15, "{}", listed.id);
        }
    }

    #[test]
    fn every_caution_that_is_named_is_there_and_used() {
        let jobs = templates().iter().flat_map(|job| &job.cautions);
        let used: BTreeSet<&str> =
            jobs.chain(ONCE.iter().flat_map(|once| &once.cautions)).map(String::as_str).collect();
        let known: BTreeSet<&str> = CAUTIONS.iter().map(|caution| caution.id.as_str()).collect();
        assert_eq!(used, known);
    }

    /// A job comes again after months, or in months of the year, or once after years.
    #[test]
    fn every_job_says_when_in_one_way() {
        for job in templates() {
            let ways =
                [job.every_months.is_some(), !job.months.is_empty(), job.after_years.is_some()];
            assert_eq!(ways.iter().filter(|way| **way).count(), 1, "{}", job.id);
            assert!(job.months.is_sorted() && job.months.iter().all(|m| (1..=12).contains(m)));
            assert!(!job.kinds.is_empty());
        }
    }
}
