//! Days reckoned on, by `jiff`, and how a day is told.
//!
//! A home file knows days, not hours: no time zone enters anywhere. The day of a question is an
//! argument, and whoever gives it has looked at the clock of the place where the home stands.

use jiff::{Span, civil};
use quarterturn_home::{Date, Warranty};

use crate::catalogue::{Catalogue, fill};

/// The day that many months and then days after `from`; `None` past the year 9999.
///
/// A month that lacks the day ends the span on its last day: one month after 31 January is 28
/// February.
///
/// Source: Regulation (EEC, Euratom) No 1182/71, article 3(2)(c), for the month that lacks the day.
///
/// ```
/// use quarterturn_guidance::later;
///
/// let day = "2026-01-31".parse()?;
/// assert_eq!(later(day, 1, 0), Some("2026-02-28".parse()?));
/// # Ok::<(), quarterturn_home::NotADate>(())
/// ```
#[must_use]
pub fn later(from: Date, months: u32, days: u32) -> Option<Date> {
    let months = Span::new().try_months(months).ok()?;
    let days = Span::new().try_days(days).ok()?;
    let after = civil_day(from)?.checked_add(months).ok()?.checked_add(days).ok()?;
    since_1970(after)
}

/// A day as `jiff` knows it.
#[must_use]
pub fn civil_day(day: Date) -> Option<civil::Date> {
    let days = Span::new().try_days(day.days_since_1970()).ok()?;
    civil::date(1970, 1, 1).checked_add(days).ok()
}

/// A day of `jiff` as a home file knows it.
#[must_use]
pub fn since_1970(day: civil::Date) -> Option<Date> {
    let (year, month, day) = (day.year(), day.month(), day.day());
    Date::new(i32::from(year), u32::try_from(month).ok()?, u32::try_from(day).ok()?)
}

/// The last day on which a warranty covers anything; `None` if the home file does not tell its
/// length.
///
/// The day it runs from is not counted, so that the day with the same number still is: a year from
/// 14 November ends with 14 November. Local law and the warranty's own words come first.
///
/// Source: Regulation (EEC, Euratom) No 1182/71, article 3(1) and (2).
#[must_use]
pub fn last_day(warranty: &Warranty) -> Option<Date> {
    if warranty.years.is_none() && warranty.months.is_none() && warranty.days.is_none() {
        return None;
    }
    let years = warranty.years.unwrap_or_default().saturating_mul(12);
    let months = years.saturating_add(warranty.months.unwrap_or_default());
    later(warranty.from, months, warranty.days.unwrap_or_default())
}

/// True if a warranty covers what it covers on this day.
#[must_use]
pub fn in_force(warranty: &Warranty, today: Date) -> bool {
    warranty.from <= today && last_day(warranty).is_none_or(|last| today <= last)
}

/// A day in words, such as `14 November 2026`.
#[must_use]
pub fn told_day(words: &Catalogue, day: Date) -> String {
    let Some(civil) = civil_day(day) else { return day.to_string() };
    let month = words.text(&format!("month-{}", civil.month()));
    let (day, year) = (civil.day().to_string(), civil.year().to_string());
    words.fill("day", &[fill("day", &day), fill("month", &month), fill("year", &year)])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> Date {
        text.parse().unwrap()
    }

    fn warranty(text: &str) -> Warranty {
        ron::from_str(&format!(r#"#![enable(implicit_some)] (id: "w", name: "W", {text})"#))
            .unwrap()
    }

    /// Of the Regulation's own rule: same number, or the last day of a month that lacks it.
    #[test]
    fn months_end_where_the_month_does() {
        for (from, months, days, to) in [
            ("2026-01-31", 1, 0, "2026-02-28"),
            ("2024-01-31", 1, 0, "2024-02-29"),
            ("2024-02-29", 12, 0, "2025-02-28"),
            ("2024-02-29", 48, 0, "2028-02-29"),
            ("2026-08-31", 6, 0, "2027-02-28"),
            ("2025-11-14", 0, 60, "2026-01-13"),
            // Months first, then days.
            ("2026-01-31", 1, 1, "2026-03-01"),
        ] {
            assert_eq!(later(day(from), months, days), Some(day(to)), "{from} {months} {days}");
        }
        assert_eq!(later(day("9999-12-31"), 0, 1), None);
        assert_eq!(later(day("2026-01-01"), u32::MAX, u32::MAX), None);
    }

    #[test]
    fn a_warranty_covers_its_last_day_and_not_the_next() {
        let year = warranty(r#"from: "2025-11-14", years: 1"#);
        assert_eq!(last_day(&year), Some(day("2026-11-14")));
        let told = |on: &str| in_force(&year, day(on));
        assert!(!told("2025-11-13") && told("2025-11-14"));
        assert!(told("2026-11-14") && !told("2026-11-15"));
        let both = warranty(r#"from: "2025-08-31", years: 1, months: 6, days: 2"#);
        assert_eq!(last_day(&both), Some(day("2027-03-02")));
        let open = warranty(r#"from: "2025-08-31""#);
        assert_eq!(last_day(&open), None);
        assert!(in_force(&open, day("2999-01-01")));
    }

    #[test]
    fn a_day_is_told_in_the_language() {
        let told = |tag: &str| told_day(&Catalogue::in_language(tag), day("2026-03-05"));
        assert_eq!(told("en"), "5 March 2026");
        assert_eq!(told("es"), "5 de marzo de 2026");
    }
}
