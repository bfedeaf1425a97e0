//! What happened since a trouble was picked, as it is written to the log.

use quarterturn_guidance::{Answer, Catalogue};
use quarterturn_home::{Date, DoneStep, Home, Learnt, LogEntry};

use crate::ask::{Asked, StepKey};
use crate::place;

/// What is found out after a trouble, beside what was asked.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Session {
    /// Which of the acts that bring it back are done.
    pub(crate) restored: Vec<usize>,
    /// What was learnt, and is on the map.
    pub(crate) learnt: Vec<Learnt>,
    /// The device whose label is being put right, and what is typed.
    pub(crate) relabel: Option<(String, String)>,
    /// Anything else, for the log.
    pub(crate) note: String,
    /// Place of the entry in the log, once it was written.
    pub(crate) entry: Option<usize>,
    /// The time of day when it was first written.
    pub(crate) at_time: Option<String>,
}

impl Session {
    /// True if something was done or found out that the log should tell.
    pub(crate) fn is_worth_telling(&self, asked: &Asked) -> bool {
        !asked.done.is_empty() || !asked.failed.is_empty() || !self.learnt.is_empty()
    }

    /// The entry for the log.
    pub(crate) fn entry(
        &self,
        home: &Home,
        asked: &Asked,
        answer: &Answer,
        words: &Catalogue,
        today: Date,
    ) -> Option<LogEntry> {
        let spot = asked.at.as_ref()?;
        let place_name = place::name_of_spot(home, spot, words);
        let mut entry = LogEntry::new(today, answer.trouble, &place_name);
        entry.at_time.clone_from(&self.at_time);
        entry.at.clone_from(&answer.at);
        entry.failed.clone_from(&asked.failed);
        entry.seen =
            asked.seen.iter().map(|(id, seen)| (id.clone(), seen.word().to_owned())).collect();
        let step = |key: &StepKey| answer.steps.iter().find(|step| *key == StepKey::of(step));
        entry.done = asked
            .done
            .iter()
            .map(|key| DoneStep {
                text: key.text.clone(),
                component: key.component.clone(),
                seconds: step(key).and_then(|step| step.seconds),
            })
            .collect();
        // It is over once everything was done.
        if asked.now(answer).is_none() {
            let set = answer.sets.iter().find(|set| {
                set.close
                    .iter()
                    .all(|id| asked.done.iter().any(|key| key.component.as_ref() == Some(id)))
            });
            entry.solved_by = set.map(|set| set.close.clone()).unwrap_or_default();
        }
        entry.learnt.clone_from(&self.learnt);
        let note = self.note.trim();
        entry.note = (!note.is_empty()).then(|| note.to_owned());
        entry.remember(home);
        Some(entry)
    }
}
