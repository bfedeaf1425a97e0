//! Upkeep as a calendar file (RFC 5545), for the calendar on a phone or a computer.
//!
//! Every job with a day is a whole-day event without a time zone (a floating date), transparent, so
//! that nobody's day looks taken. The same home, day and language give the same bytes: the stamp is
//! the day that is handed in, and the ids follow from the home's name and the job's id, so that
//! reading the file again changes the events instead of doubling them.

use icalendar::{Calendar, Component as _, Event, Property};
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Date, Home};
use quarterturn_upkeep::{Repeat, Rule, Upkeep, due};
use uuid::Uuid;

/// The upkeep of a home from `today` on, as the text of a calendar file with its CRLF line ends.
///
/// What is overdue stands on today. What has no day, such as a job to do once, is left out. There
/// are no alarms of its own: for whole days each calendar has its habit.
///
/// ```
/// use quarterturn_guidance::Catalogue;
/// use quarterturn_papers::calendar;
///
/// let text = r#"Home(format: 1, name: "Hut", components: [
///     (id: "alarm", kind: SmokeAlarm, name: "Smoke alarm in the hall"),
/// ], done: [(job: "alarm-test", on: "2026-05-31")])"#;
/// let home = quarterturn_home::open("home.ron", text).home.expect("the brackets close");
/// let text = calendar(&home, "2026-06-05".parse()?, &Catalogue::english());
/// assert!(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"));
/// assert!(text.contains("DTSTART;VALUE=DATE:20260628\r\n"));
/// assert!(text.contains("RRULE:FREQ=MONTHLY;BYMONTHDAY=28\r\n"));
/// # Ok::<(), quarterturn_home::NotADate>(())
/// ```
#[must_use]
pub fn calendar(home: &Home, today: Date, words: &Catalogue) -> String {
    let name = words.fill("upkeep-calendar", &[fill("home", &home.name)]);
    let mut calendar = Calendar::empty();
    calendar
        .append_property(Property::new("VERSION", "2.0"))
        .append_property(Property::new("PRODID", "-//Quarterturn//Upkeep//EN"))
        .append_property(Property::new("CALSCALE", "GREGORIAN"))
        .name(&plain(&name));
    for job in due(home, today, words).all() {
        if let Some(repeat) = Repeat::of(job, today) {
            calendar.push(event(home, job, &repeat, today, words));
        }
    }
    folded(&calendar.to_string())
}

fn event(home: &Home, job: &Upkeep, repeat: &Repeat, today: Date, words: &Catalogue) -> Event {
    let mut event = Event::new();
    event
        .uid(&stable_id(home, "upkeep", &job.id).to_string())
        .add_property("DTSTAMP", format!("{}T000000Z", compact(today)))
        .append_property(
            // No end: a whole-day event without one is one day long (RFC 5545, 3.6.1).
            Property::new("DTSTART", compact(repeat.start)).add_parameter("VALUE", "DATE").done(),
        )
        .add_property("TRANSP", "TRANSPARENT")
        .summary(&plain(&job.name))
        .description(&plain(&described(job, words)));
    if let Some(rule) = rule(repeat) {
        event.add_property("RRULE", rule);
    }
    event.done()
}

/// The text with no line longer than 75 octets (RFC 5545, 3.1).
///
/// The library folds too, but forgets the blank in front of the last piece of a line, so that this
/// piece may be one octet too long.
fn folded(text: &str) -> String {
    const LONGEST: usize = 75;
    let mut all = String::with_capacity(text.len());
    for line in text.split_inclusive("\r\n") {
        let mut rest = line;
        while rest.trim_end_matches("\r\n").len() > LONGEST {
            let (piece, behind) = rest.split_at(rest.floor_char_boundary(LONGEST));
            all.push_str(piece);
            // One octet is all that was too much: what follows is never long.
            all.push_str("\r\n ");
            rest = behind;
        }
        all.push_str(rest);
    }
    all
}

/// The recurrence rule. The days of its months are given, so that a day on which a month has none
/// skips nothing (RFC 5545, 3.3.10), and the first day keeps to the rule.
fn rule(repeat: &Repeat) -> Option<String> {
    let start = compact(repeat.start);
    let day: u32 = start.get(6..8).and_then(|day| day.parse().ok())?;
    let monthly = |months: u32, day: String| {
        // Twelve months are told as a year: more calendars show that well.
        if months.is_multiple_of(12) {
            let month: u32 = start.get(4..6).and_then(|month| month.parse().ok())?;
            Some(format!("FREQ=YEARLY{};BYMONTH={month};BYMONTHDAY={day}", interval(months / 12)))
        } else {
            Some(format!("FREQ=MONTHLY{};BYMONTHDAY={day}", interval(months)))
        }
    };
    match &repeat.rule {
        Rule::Once => None,
        Rule::Months(months) => monthly(*months, day.to_string()),
        Rule::LastDay(months) => monthly(*months, "-1".to_owned()),
        Rule::Year(months) => {
            let months: Vec<String> = months.iter().map(i8::to_string).collect();
            Some(format!("FREQ=YEARLY;BYMONTH={};BYMONTHDAY={day}", months.join(",")))
        }
    }
}

fn interval(every: u32) -> String {
    if every == 1 { String::new() } else { format!(";INTERVAL={every}") }
}

/// What one needs to know to do the job: how, on what, with what, what could hurt, who.
fn described(job: &Upkeep, words: &Catalogue) -> String {
    let line = |key: &str, place: &str, value: &str| words.fill(key, &[fill(place, value)]);
    let mut lines = Vec::new();
    for caution in &job.cautions {
        lines.push(caution.text.clone());
    }
    lines.extend(job.how.as_deref().map(|how| line("upkeep-how", "how", how)));
    if !job.parts.is_empty() {
        let names: Vec<String> = job.parts.iter().map(|part| part.name.clone()).collect();
        lines.push(line("upkeep-parts", "list", &names.join("; ")));
    }
    if !job.tools.is_empty() {
        lines.push(line("upkeep-tools", "list", &words.list(&job.tools)));
    }
    lines.extend(job.by.as_deref().map(|who| line("upkeep-who", "who", who)));
    lines.extend(job.note.as_deref().map(|note| line("upkeep-note", "note", note)));
    lines.extend(job.source.as_deref().map(|source| line("upkeep-source", "source", source)));
    lines.join("\n")
}

/// An id that stays the same for the same thing of the same home (RFC 9562, version 5).
pub(crate) fn stable_id(home: &Home, what: &str, id: &str) -> Uuid {
    let name = format!("quarterturn:{what}:{}:{id}", home.name);
    Uuid::new_v5(&Uuid::NAMESPACE_URL, name.as_bytes())
}

/// Text without control characters but for line breaks: the format has no way to write them.
pub(crate) fn plain(text: &str) -> String {
    text.chars().filter(|c| *c == '\n' || !c.is_control()).collect()
}

/// A day as `20260502`.
fn compact(day: Date) -> String {
    day.to_string().replace('-', "")
}
