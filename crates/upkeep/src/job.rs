//! A job of upkeep, from the home's own list or from what its map holds.

use std::collections::BTreeSet;

use quarterturn_guidance::{Catalogue, Caution, contact_for, fill, last_day, later, told_day};
use quarterturn_home::{Component, Date, Home, Job, Role};
use serde::Serialize;

use crate::merge::{Share, shares};
use crate::part::Part;
use crate::repeat::next_first;
use crate::table::{Template, cautions};

/// How often a job comes.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Every {
    /// Once, or nobody knows when again.
    #[default]
    Once,
    /// So many months after it was done.
    Months(u32),
    /// In these months of the year.
    Year(Vec<i8>),
}

/// A job of upkeep, with all that one needs to do it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
pub struct Upkeep {
    /// Its id: of the home's own job, or of the built-in list.
    pub id: String,
    /// What is done.
    pub name: String,
    /// How.
    pub how: Option<String>,
    /// What the home's file adds.
    pub note: Option<String>,
    /// What it is done to.
    pub parts: Vec<Part>,
    /// How often.
    pub every: Every,
    /// When it was done last: of its parts, the one left longest; `None` if one never was.
    pub last: Option<Date>,
    /// When it falls due; `None` for what has no day.
    pub due: Option<Date>,
    /// True if nothing says that it was ever done, to any part of it.
    pub never: bool,
    /// What it takes.
    pub tools: Vec<String>,
    /// What could hurt.
    pub cautions: Vec<Caution>,
    /// Who does it, if not anyone.
    pub by: Option<String>,
    /// Where it comes from; `None` for the home's own.
    pub source: Option<String>,
    /// True for a job of the home's own list.
    pub own: bool,
    /// Doing it is working the device.
    #[serde(skip)]
    pub(crate) exercises: bool,
}

/// All jobs of a home on a day.
///
/// Its own stand first, in the order of the file, then those of the built-in list that its map gives
/// rise to, then the last days of warranties. Jobs that are done and do not come again are left out.
#[must_use]
pub fn jobs(home: &Home, today: Date, words: &Catalogue) -> Vec<Upkeep> {
    let mut all: Vec<Upkeep> = shares(home)
        .into_iter()
        .filter_map(|share| match share {
            Share::Own(job, template, parts) => own(home, job, template, &parts, today, words),
            Share::Map(template, parts) => from_map(home, template, &parts, today, words),
        })
        .collect();
    all.extend(home.warranties.iter().filter_map(|w| before_it_ends(home, w, today, words)));
    all
}

fn own(
    home: &Home,
    job: &Job,
    template: Option<&Template>,
    parts: &[&Component],
    today: Date,
    words: &Catalogue,
) -> Option<Upkeep> {
    let every = match (job.every_months, template) {
        (Some(months), _) => Every::Months(months),
        (None, Some(template)) => when(template),
        (None, None) => Every::Once,
    };
    let exercises = template.is_some_and(|template| template.exercises);
    let parts = dated(home, &job.id, job.last_done, exercises, parts, words);
    let whole = job.last_done.max(done_as_a_whole(home, &job.id));
    let last = if parts.is_empty() { whole } else { oldest(&parts) };
    if every == Every::Once && (whole.is_some() || (!parts.is_empty() && last.is_some())) {
        return None;
    }
    let key = template.map(|template| format!("job-{}-how", template.id));
    Some(Upkeep {
        id: job.id.clone(),
        name: job.name.clone(),
        how: job.how.clone().or_else(|| key.map(|key| words.text(&key))),
        note: job.note.clone(),
        due: falls_due(&every, last, today),
        never: last.is_none() && none_is_dated(&parts),
        every,
        last,
        tools: template.map_or_else(Vec::new, |t| tools(t, home, &parts, words)),
        cautions: template.map_or_else(Vec::new, |t| cautions(&t.cautions, words)),
        by: template.and_then(|t| by(home, t.by?, words)),
        source: template.map(|t| t.source.clone()),
        parts,
        own: true,
        exercises,
    })
}

fn from_map(
    home: &Home,
    template: &Template,
    parts: &[&Component],
    today: Date,
    words: &Catalogue,
) -> Option<Upkeep> {
    let id = map_id(home, template);
    let mut parts = dated(home, &id, None, template.exercises, parts, words);
    let (every, last, due) = if let Some(years) = template.after_years {
        // Whoever does not know how old a thing is, cannot be told when its time is up.
        let ends = |part: &Part| {
            let put_in = home.component(&part.id).and_then(|component| component.installed);
            later(put_in.max(part.last)?, years.saturating_mul(12), 0)
        };
        let first = parts.iter().filter_map(ends).min()?;
        parts.retain(|part| ends(part).is_some_and(|day| day <= first));
        (Every::Once, oldest(&parts), Some(first))
    } else {
        let (every, last) = (when(template), oldest(&parts));
        let due = falls_due(&every, last, today);
        (every, last, due)
    };
    Some(Upkeep {
        id,
        name: words.text(&format!("job-{}", template.id)),
        how: Some(words.text(&format!("job-{}-how", template.id))),
        note: None,
        never: none_is_dated(&parts) && template.after_years.is_none(),
        every,
        last,
        due,
        tools: tools(template, home, &parts, words),
        cautions: cautions(&template.cautions, words),
        by: template.by.and_then(|role| by(home, role, words)),
        source: Some(template.source.clone()),
        parts,
        own: false,
        exercises: template.exercises,
    })
}

/// Id of a job of the built-in list. Where a job of the home's own has that id and leaves components
/// over, they need one that tells the two apart.
fn map_id(home: &Home, template: &Template) -> String {
    if home.jobs.iter().any(|job| job.id == template.id) {
        format!("{}-more", template.id)
    } else {
        template.id.clone()
    }
}

/// Before a warranty ends, everything it covers is looked over, and what is found told in writing.
fn before_it_ends(
    home: &Home,
    warranty: &quarterturn_home::Warranty,
    today: Date,
    words: &Catalogue,
) -> Option<Upkeep> {
    /// Days before the last one. Common practice, no source.
    const AHEAD: i64 = 30;
    let id = format!("warranty-{}", warranty.id);
    let last = last_day(warranty).filter(|last| *last >= today)?;
    if done_as_a_whole(home, &id).is_some() {
        return None;
    }
    let due = Date::from_days_since_1970(last.days_since_1970() - AHEAD)?.max(warranty.from);
    let contact = warranty.contact.as_deref().and_then(|id| home.contact(id));
    let parts = warranty.covers.iter().filter_map(|id| home.component(id));
    Some(Upkeep {
        id,
        name: words.fill("job-warranty", &[fill("warranty", &warranty.name)]),
        how: Some(words.fill(
            "job-warranty-how",
            &[
                fill("until", &told_day(words, last)),
                fill("known", if contact.is_some() { "yes" } else { "no" }),
                fill("name", contact.map_or("", |contact| contact.name.as_str())),
            ],
        )),
        parts: parts.map(|component| Part::of(home, component, words)).collect(),
        due: Some(due.max(today)),
        source: Some("common practice, no source".to_owned()),
        ..Upkeep::default()
    })
}

fn when(template: &Template) -> Every {
    match template.every_months {
        Some(months) => Every::Months(months),
        None if template.months.is_empty() => Every::Once,
        None => Every::Year(template.months.clone()),
    }
}

/// When a job falls due. One that nobody has written down is due today, or in its season.
fn falls_due(every: &Every, last: Option<Date>, today: Date) -> Option<Date> {
    match (every, last) {
        (Every::Once, _) => None,
        (Every::Months(months), Some(last)) => later(last, *months, 0),
        (Every::Months(_), None) => Some(today),
        (Every::Year(months), Some(last)) => {
            // Done a little early, it need not be done again in the month that follows.
            let gap = 12 / u32::try_from(months.len().max(1)).unwrap_or(1);
            next_first(later(last, gap.div_ceil(2), 0)?, months)
        }
        (Every::Year(months), None) => {
            let now = quarterturn_guidance::civil_day(today)?.month();
            if months.contains(&now) { Some(today) } else { next_first(today, months) }
        }
    }
}

/// The parts of a job, each with the day it was last done.
fn dated(
    home: &Home,
    job: &str,
    last_done: Option<Date>,
    exercises: bool,
    parts: &[&Component],
    words: &Catalogue,
) -> Vec<Part> {
    let part = |component: &&Component| {
        let done = home.done.iter().filter(|done| {
            done.job == job
                && (done.components.is_empty() || done.components.contains(&component.id))
        });
        let exercised = component.operates.as_ref().and_then(|o| o.exercised).filter(|_| exercises);
        let last = done.map(|done| done.on).max().max(exercised).max(last_done);
        Part { last, ..Part::of(home, component, words) }
    };
    parts.iter().map(part).collect()
}

fn done_as_a_whole(home: &Home, job: &str) -> Option<Date> {
    let whole = home.done.iter().filter(|done| done.job == job && done.components.is_empty());
    whole.map(|done| done.on).max()
}

/// The day of the part that was left longest; `None` if one was never done, or there are none.
fn oldest(parts: &[Part]) -> Option<Date> {
    let days: Option<Vec<Date>> = parts.iter().map(|part| part.last).collect();
    days?.into_iter().min()
}

fn none_is_dated(parts: &[Part]) -> bool {
    parts.iter().all(|part| part.last.is_none())
}

/// The tools of a job, with those that its parts take, each once.
fn tools(template: &Template, home: &Home, parts: &[Part], words: &Catalogue) -> Vec<String> {
    let own = parts.iter().filter_map(|part| {
        let works = home.component(&part.id)?.operates.as_ref();
        works.and_then(|o| o.tool.clone()).filter(|_| template.exercises)
    });
    let mut seen = BTreeSet::new();
    let listed = template.tools.iter().map(|tool| words.text(&format!("tool-{tool}")));
    listed.chain(own).filter(|tool| seen.insert(tool.clone())).collect()
}

/// Who does it, with the number, if the home has one.
fn by(home: &Home, role: Role, words: &Catalogue) -> Option<String> {
    let key = match role {
        Role::Plumber => "role-plumber",
        Role::Electrician => "role-electrician",
        Role::Cooling => "role-cooling",
        _ => return None,
    };
    let contact = contact_for(home, role);
    let phone = contact.and_then(|c| c.phone.as_deref());
    Some(match (contact, phone) {
        (Some(contact), Some(phone)) => {
            words.fill("upkeep-by", &[fill("name", &contact.name), fill("phone", phone)])
        }
        (Some(contact), None) => contact.name.clone(),
        (None, _) => words.text(key),
    })
}
