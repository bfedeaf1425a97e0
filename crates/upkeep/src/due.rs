//! The list of what is due on a day.

use quarterturn_guidance::{Catalogue, civil_day};
use quarterturn_home::{Date, Home};
use serde::Serialize;

use crate::job::{Upkeep, jobs};

/// What is due on a day. In each part the earliest comes first, then the order of the home's file and
/// of the built-in list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct DueList {
    /// The day.
    pub today: Date,
    /// What should have been done before today.
    pub overdue: Vec<Upkeep>,
    /// What is due today or later in this month; what nobody has written down is due today.
    pub this_month: Vec<Upkeep>,
    /// What is due after this month.
    pub later: Vec<Upkeep>,
    /// What has no day: to be done once, whenever.
    pub once: Vec<Upkeep>,
}

/// What is due in a home on a day.
#[must_use]
pub fn due(home: &Home, today: Date, words: &Catalogue) -> DueList {
    let mut list =
        DueList { today, overdue: vec![], this_month: vec![], later: vec![], once: vec![] };
    let month = |day: Date| civil_day(day).map(|day| (day.year(), day.month()));
    for job in jobs(home, today, words) {
        match job.due {
            None => list.once.push(job),
            Some(due) if due < today => list.overdue.push(job),
            Some(due) if month(due) == month(today) => list.this_month.push(job),
            Some(_) => list.later.push(job),
        }
    }
    for part in [&mut list.overdue, &mut list.this_month, &mut list.later] {
        part.sort_by_key(|job| job.due);
    }
    list
}

impl DueList {
    /// All jobs, those without a day last.
    pub fn all(&self) -> impl Iterator<Item = &Upkeep> {
        self.overdue.iter().chain(&self.this_month).chain(&self.later).chain(&self.once)
    }

    /// True if there is nothing to do, ever.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.all().next().is_none()
    }
}
