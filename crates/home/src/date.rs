//! Calendar days.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize, de};

/// A day of the Gregorian calendar, written `2026-05-02` (ISO 8601).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    year: i32,
    month: u32,
    day: u32,
}

/// Text that is not a day.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{0:?} is not a day; write it as 2026-05-02")]
pub struct NotADate(pub String);

impl Date {
    /// The day, if the calendar has it.
    #[must_use]
    pub fn new(year: i32, month: u32, day: u32) -> Option<Self> {
        let exists = (1..=9999).contains(&year)
            && (1..=12).contains(&month)
            && (1..=days_in_month(year, month)).contains(&day);
        exists.then_some(Self { year, month, day })
    }

    /// The day that many days after 1970-01-01, if the calendar has it.
    #[must_use]
    pub fn from_days_since_1970(days: i64) -> Option<Self> {
        // The inverse of `days_since_1970`: years begin in March, an era has 400 of them.
        let days = days.checked_add(719_468)?;
        let era = days.div_euclid(146_097);
        let day_of_era = days.rem_euclid(146_097);
        let year_of_era =
            (day_of_era - day_of_era / 1460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
        let day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
        let from_march = (5 * day_of_year + 2) / 153;
        let day = day_of_year - (153 * from_march + 2) / 5 + 1;
        let month = if from_march < 10 { from_march + 3 } else { from_march - 9 };
        let year = year_of_era + era * 400 + i64::from(month <= 2);
        Self::new(i32::try_from(year).ok()?, u32::try_from(month).ok()?, u32::try_from(day).ok()?)
    }

    /// Days since 1970-01-01, negative before.
    #[must_use]
    pub fn days_since_1970(self) -> i64 {
        // Years begin in March here, so that the leap day is the last one of a year.
        let year = i64::from(self.year) - i64::from(self.month <= 2);
        let month = (i64::from(self.month) + 9) % 12;
        let day_of_year = (153 * month + 2) / 5 + i64::from(self.day) - 1;
        let era = year.div_euclid(400);
        let year_of_era = year.rem_euclid(400);
        era * 146_097 + year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year
            - 719_468
    }
}

fn days_in_month(year: i32, month: u32) -> u32 {
    match month {
        2 if year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

impl FromStr for Date {
    type Err = NotADate;

    fn from_str(text: &str) -> Result<Self, NotADate> {
        let parse = || {
            let mut parts = text.split('-');
            let year = parts.next().filter(|p| p.len() == 4)?.parse().ok()?;
            let month = parts.next().filter(|p| p.len() == 2)?.parse().ok()?;
            let day = parts.next().filter(|p| p.len() == 2)?.parse().ok()?;
            if parts.next().is_some() { None } else { Self::new(year, month, day) }
        };
        parse().ok_or_else(|| NotADate(text.to_owned()))
    }
}

impl Serialize for Date {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Date {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        text.parse().map_err(de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_that_do_not_exist_are_refused() {
        assert!("2026-02-29".parse::<Date>().is_err());
        assert!("2028-02-29".parse::<Date>().is_ok());
        assert!("2026-2-01".parse::<Date>().is_err());
    }

    #[test]
    fn days_and_dates_are_each_others_inverse() {
        for days in -200_000..200_000 {
            let date = Date::from_days_since_1970(days).unwrap();
            assert_eq!(date.days_since_1970(), days, "{date}");
        }
        assert_eq!(Date::from_days_since_1970(i64::MAX), None);
    }

    /// POSIX time 1 000 000 000 s fell on 2001-09-09 (IEEE Std 1003.1, seconds since the Epoch).
    #[test]
    fn counts_days_as_posix_does() {
        let day: Date = "2001-09-09".parse().unwrap();
        assert_eq!(day.days_since_1970(), 1_000_000_000 / 86_400);
    }
}
