//! The move-in list and what is due, as lines of the handover pack.

use quarterturn_guidance::{Catalogue, fill, told_day};
use quarterturn_home::{Date, Home};
use quarterturn_upkeep::{due, move_in_list};

use crate::{DueLine, MoveInLine, PackExtras};

impl PackExtras {
    /// What the pack holds of moving in and upkeep, on a day.
    #[must_use]
    pub fn of_home(home: &Home, today: Date, words: &Catalogue) -> Self {
        let move_in = move_in_list(home, today, words).into_iter().map(|item| {
            let places: Vec<String> = item.parts.into_iter().map(|part| part.name).collect();
            let note = match &item.done {
                Some(tick) => {
                    let day = told_day(words, tick.on);
                    let told = tick.note.as_deref().unwrap_or_default();
                    let fills = [fill("day", &day), fill("by", &tick.by), fill("note", told)];
                    words.fill("move-in-done", &fills)
                }
                None if places.is_empty() => item.how.clone(),
                None => {
                    let fills = [fill("how", &item.how), fill("list", &places.join("; "))];
                    words.fill("move-in-open", &fills)
                }
            };
            MoveInLine { done: item.done.is_some(), text: item.title, note }
        });
        let list = due(home, today, words);
        let jobs = list.overdue.iter().chain(&list.this_month).chain(&list.later);
        let due = jobs.filter_map(|job| {
            let places: Vec<String> = job.parts.iter().map(|part| part.name.clone()).collect();
            let how = job.how.clone().unwrap_or_default();
            let note = if places.is_empty() {
                how
            } else {
                let fills = [fill("how", &how), fill("list", &places.join("; "))];
                words.fill("move-in-open", &fills)
            };
            Some(DueLine { due: job.due?, text: job.name.clone(), note })
        });
        Self { move_in: move_in.collect(), due: due.collect(), log: Vec::new() }
    }
}
