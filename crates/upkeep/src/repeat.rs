//! On which days a job comes again, so that a calendar and the list say the same.
//!
//! A rule "every month" that begins on the 31st skips every month without one (RFC 5545, 3.3.10:
//! dates that do not exist are left out). So a job never repeats from the 29th or 30th: it is put on
//! the 28th, which every month has; and one of the 31st is put on the last day of the month.

use quarterturn_guidance::{civil_day, later, since_1970};
use quarterturn_home::Date;

use crate::job::{Every, Upkeep};

/// The days on which a job comes up.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Repeat {
    /// The first day.
    pub start: Date,
    /// How it goes on.
    pub rule: Rule,
}

/// How a job comes again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Rule {
    /// It does not.
    Once,
    /// Every so many months on the same day, which every month has.
    Months(u32),
    /// Every so many months on the last day of the month.
    LastDay(u32),
    /// In these months of every year, on the same day.
    Year(Vec<i8>),
}

impl Repeat {
    /// The days of a job from `today` on; `None` for one without a day.
    ///
    /// What is overdue comes up today.
    #[must_use]
    pub fn of(job: &Upkeep, today: Date) -> Option<Self> {
        let due = job.due?.max(today);
        match &job.every {
            Every::Once => Some(Self { start: due, rule: Rule::Once }),
            Every::Months(months) => {
                let day = civil_day(due)?;
                if day.day() == 31 {
                    return Some(Self { start: due, rule: Rule::LastDay(*months) });
                }
                let start = if day.day() > 28 {
                    // Rather a day or two early than late, unless that would lie in the past.
                    let early = since_1970(day.with().day(28).build().ok()?)?;
                    if early >= today { early } else { first_of_next_month(due)? }
                } else {
                    due
                };
                Some(Self { start, rule: Rule::Months(*months) })
            }
            Every::Year(months) => {
                let day = civil_day(due)?;
                let start = if months.contains(&day.month()) && day.day() <= 28 {
                    due
                } else {
                    next_first(due, months)?
                };
                Some(Self { start, rule: Rule::Year(months.clone()) })
            }
        }
    }

    /// The days up to and with `last`, in order.
    #[must_use]
    pub fn days(&self, last: Date) -> Vec<Date> {
        let mut days = Vec::new();
        let mut step = 0_u32;
        loop {
            let next = match &self.rule {
                Rule::Once => (step == 0).then_some(self.start),
                Rule::Months(months) | Rule::LastDay(months) => {
                    later(self.start, months.saturating_mul(step), 0)
                }
                Rule::Year(_) => later(self.start, step, 0),
            };
            let Some(next) = next.filter(|next| *next <= last) else { return days };
            let wanted = match &self.rule {
                Rule::Year(months) => {
                    civil_day(next).is_some_and(|day| months.contains(&day.month()))
                }
                Rule::Once | Rule::Months(_) | Rule::LastDay(_) => true,
            };
            if wanted {
                days.push(next);
            }
            step = step.saturating_add(1);
        }
    }
}

/// The first day of the first of these months that begins on or after `day`.
pub(crate) fn next_first(day: Date, months: &[i8]) -> Option<Date> {
    let mut first = civil_day(day)?;
    if first.day() > 1 {
        first = civil_day(first_of_next_month(day)?)?;
    }
    for _ in 0..12 {
        if months.contains(&first.month()) {
            return since_1970(first);
        }
        first = civil_day(later(since_1970(first)?, 1, 0)?)?;
    }
    None
}

fn first_of_next_month(day: Date) -> Option<Date> {
    later(since_1970(civil_day(day)?.first_of_month())?, 1, 0)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn day(text: &str) -> Date {
        text.parse().unwrap()
    }

    fn days(start: &str, rule: Rule, last: &str) -> Vec<String> {
        let days = Repeat { start: day(start), rule }.days(day(last));
        days.iter().map(Date::to_string).collect()
    }

    #[test]
    fn the_last_day_of_a_month_stays_the_last_day() {
        assert_eq!(
            days("2026-01-31", Rule::LastDay(1), "2026-06-30"),
            ["2026-01-31", "2026-02-28", "2026-03-31", "2026-04-30", "2026-05-31", "2026-06-30"]
        );
        // The trap: a plain rule from the 31st would skip April.
        assert_eq!(
            days("2026-01-31", Rule::LastDay(3), "2026-12-31"),
            ["2026-01-31", "2026-04-30", "2026-07-31", "2026-10-31"]
        );
    }

    #[test]
    fn months_of_the_year_come_every_year() {
        assert_eq!(
            days("2026-07-01", Rule::Year(vec![4, 7, 10]), "2027-07-01"),
            ["2026-07-01", "2026-10-01", "2027-04-01", "2027-07-01"]
        );
        assert_eq!(days("2026-07-01", Rule::Once, "2036-01-01"), ["2026-07-01"]);
        assert_eq!(days("2026-07-01", Rule::Once, "2026-06-30"), Vec::<String>::new());
    }

    #[test]
    fn the_next_first_of_a_month_is_on_or_after_the_day() {
        let first = |from: &str| next_first(day(from), &[4, 10]).unwrap().to_string();
        assert_eq!(first("2026-04-01"), "2026-04-01");
        assert_eq!(first("2026-04-02"), "2026-10-01");
        assert_eq!(first("2026-10-31"), "2027-04-01");
        assert_eq!(next_first(day("2026-01-01"), &[]), None);
    }

    fn due_on(due: Date, every: Every) -> Upkeep {
        Upkeep { due: Some(due), every, ..Upkeep::default() }
    }

    proptest! {
        /// Whatever the day, no month is skipped, nothing lies before today, and no reminder comes
        /// more than three days after what is due.
        #[test]
        fn no_month_is_skipped(from in 10_000_i64..40_000, ahead in 0_i64..400, months in 1_u32..30) {
            let today = Date::from_days_since_1970(from).unwrap();
            let due = Date::from_days_since_1970(from + ahead).unwrap();
            let repeat = Repeat::of(&due_on(due, Every::Months(months)), today).unwrap();
            prop_assert!(repeat.start >= today);
            let off = repeat.start.days_since_1970() - due.days_since_1970();
            prop_assert!((-2..=3).contains(&off), "{} for {due}", repeat.start);
            let last = later(repeat.start, months * 5, 0).unwrap();
            let days = repeat.days(last);
            prop_assert_eq!(days.len(), 6);
            let month = |day: &Date| {
                let day = civil_day(*day).unwrap();
                i32::from(day.year()) * 12 + i32::from(day.month())
            };
            for pair in days.windows(2) {
                prop_assert_eq!(month(&pair[1]) - month(&pair[0]), i32::try_from(months).unwrap());
            }
        }
    }
}
