//! The log of troubles on paper, for the insurer and the builder.

use quarterturn_guidance::{Catalogue, Seen, fill, told_day};
use quarterturn_home::{Log, LogEntry};
use serde_json::{Value, json};

use crate::LogLine;
use crate::house::House;

impl LogLine {
    /// What a log holds that really happened, latest first, in the words of a language.
    #[must_use]
    pub fn of_log(log: &Log, words: &Catalogue) -> Vec<Self> {
        log.latest().map(|entry| line(entry, words)).collect()
    }
}

fn line(entry: &LogEntry, words: &Catalogue) -> LogLine {
    let day = told_day(words, entry.on);
    let when = match &entry.at_time {
        Some(time) => words.fill("paper-log-when", &[fill("day", &day), fill("time", time)]),
        None => day,
    };
    let names = |ids: &[String]| {
        words.list(&ids.iter().map(|id| entry.name_of(id).to_owned()).collect::<Vec<_>>())
    };
    let mut facts = Vec::new();
    if !entry.failed.is_empty() {
        let devices = names(&entry.failed);
        facts.push(words.fill("paper-log-failed", &[fill("devices", &devices)]));
    }
    for (id, seen) in &entry.seen {
        let seen = match Seen::from_word(seen) {
            Some(seen) => words.text(&format!("window-seen-{}", seen.word())),
            None => seen.clone(),
        };
        let fills = [fill("device", entry.name_of(id)), fill("seen", &seen)];
        facts.push(words.fill("paper-log-seen", &fills));
    }
    if !entry.solved_by.is_empty() {
        let devices = names(&entry.solved_by);
        facts.push(words.fill("paper-log-solved", &[fill("devices", &devices)]));
    }
    facts.extend(entry.note.clone());
    LogLine {
        when,
        trouble: words.text(&format!("trouble-{}", entry.trouble)),
        place: entry.place_name.clone(),
        done: entry.done.iter().map(|step| step.text.clone()).collect(),
        facts,
    }
}

/// The data of the sheet. `None` if nothing has happened.
pub(crate) fn gather(house: &House<'_>) -> Option<Value> {
    let entries = &house.order.extras.log;
    (!entries.is_empty()).then(|| json!({ "entries": entries, "words": {} }))
}
