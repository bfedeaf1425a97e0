//! What is due in a home: as text, as JSON, and as files for a calendar and a phone's contacts.

use std::io::{self, Write};
use std::path::Path;

use quarterturn_folder::write_whole;
use quarterturn_guidance::{Catalogue, count, fill, told_day};
use quarterturn_home::{Date, Severity};
use quarterturn_papers::{calendar, cards};
use quarterturn_upkeep::{DueList, Every, Upkeep, due, move_in_list};
use quarterturn_window::Opening;

use crate::arguments::UpkeepArguments;
use crate::text::{paragraph, signal_word};
use crate::{ATTENTION, BAD_INPUT, DONE};

/// Tells what is due, and writes the files that are asked for. [`ATTENTION`] if something is overdue,
/// or the home's file has errors.
pub(crate) fn tell(
    arguments: &UpkeepArguments,
    opening: &Opening,
    words: &Catalogue,
    today: Option<Date>,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> io::Result<u8> {
    let Some(today) = today else {
        writeln!(err, "{}", words.text("upkeep-no-day"))?;
        return Ok(BAD_INPUT);
    };
    let home = &opening.home;
    let list = due(home, today, words);
    for (file, made) in [
        (&arguments.ics, arguments.ics.as_ref().map(|_| calendar(home, today, words))),
        (&arguments.cards, arguments.cards.as_ref().map(|_| cards(home, words))),
    ] {
        let (Some(file), Some(text)) = (file, made) else { continue };
        if !write_file(file, &text, words, err)? {
            return Ok(BAD_INPUT);
        }
        writeln!(err, "{}", words.fill("upkeep-written", &[fill("file", &shown(file))]))?;
    }
    if arguments.json {
        let items = move_in_list(home, today, words);
        let json = serde_json::json!({ "upkeep": list, "move_in": items });
        let text = serde_json::to_string_pretty(&json).map_err(io::Error::from)?;
        writeln!(out, "{text}")?;
    } else {
        text(opening, &list, words, out)?;
    }
    let broken = opening.problems.iter().any(|problem| problem.severity == Severity::Error);
    Ok(if broken || !list.overdue.is_empty() { ATTENTION } else { DONE })
}

fn write_file(file: &Path, text: &str, words: &Catalogue, err: &mut dyn Write) -> io::Result<bool> {
    match write_whole(file, text.as_bytes()) {
        Ok(()) => Ok(true),
        Err(error) => {
            let fills = [fill("problem", &error.problem(words))];
            writeln!(err, "{}", words.fill("upkeep-not-written", &fills))?;
            Ok(false)
        }
    }
}

fn shown(file: &Path) -> String {
    file.display().to_string()
}

fn text(
    opening: &Opening,
    list: &DueList,
    words: &Catalogue,
    out: &mut dyn Write,
) -> io::Result<()> {
    let home = &opening.home;
    let today = told_day(words, list.today);
    let fills = [fill("home", &home.name), fill("today", &today)];
    writeln!(out, "{}", words.fill("upkeep-title", &fills))?;
    if list.is_empty() {
        writeln!(out, "\n{}", words.text("upkeep-nothing"))?;
    }
    for (key, jobs) in [
        ("upkeep-overdue", &list.overdue),
        ("upkeep-this-month", &list.this_month),
        ("upkeep-later", &list.later),
        ("upkeep-once", &list.once),
    ] {
        if jobs.is_empty() {
            continue;
        }
        writeln!(out, "\n{}", words.text(key))?;
        for job in jobs {
            // How it is done is told where it is to be done now.
            let now = key != "upkeep-later";
            told(job, now, words, out)?;
        }
    }
    let items = move_in_list(home, list.today, words);
    if !items.is_empty() {
        let number = |n: usize| f64::from(u32::try_from(n).unwrap_or(u32::MAX));
        let ticked = items.iter().filter(|item| item.done.is_some()).count();
        let fills = [count("done", number(ticked)), count("all", number(items.len()))];
        writeln!(out, "\n{}", words.fill("upkeep-move-in", &fills))?;
    }
    writeln!(out)?;
    paragraph(out, "", &words.text("caution-local-codes"))
}

fn told(job: &Upkeep, how: bool, words: &Catalogue, out: &mut dyn Write) -> io::Result<()> {
    let mut when: Vec<String> = Vec::new();
    if let Some(due) = job.due {
        let day = told_day(words, due);
        when.push(words.fill("upkeep-due-on", &[fill("day", &day)]));
    }
    match &job.every {
        Every::Once => {}
        Every::Months(months) => {
            when.push(words.fill("upkeep-every-months", &[count("months", f64::from(*months))]));
        }
        Every::Year(months) => {
            let names: Vec<String> =
                months.iter().map(|month| words.text(&format!("month-{month}"))).collect();
            let list = words.list(&names);
            when.push(words.fill("upkeep-every-year", &[fill("list", &list)]));
        }
    }
    match job.last {
        Some(last) => {
            let day = told_day(words, last);
            when.push(words.fill("upkeep-last", &[fill("day", &day)]));
        }
        None if job.never => when.push(words.text("upkeep-never")),
        None if job.every != Every::Once => when.push(words.text("upkeep-some-never")),
        None => {}
    }
    let line = if when.is_empty() {
        job.name.clone()
    } else {
        let fills = [fill("name", &job.name), fill("due", &when.join("; "))];
        words.fill("upkeep-line", &fills)
    };
    paragraph(out, "- ", &line)?;
    if !how {
        return Ok(());
    }
    for caution in &job.cautions {
        let signal = words.text(&format!("signal-{}", signal_word(caution.signal)));
        paragraph(out, &format!("    {signal}  "), &caution.text)?;
    }
    let mut tell = |key: &str, place: &str, value: &str| {
        paragraph(out, "    ", &words.fill(key, &[fill(place, value)]))
    };
    if let Some(how) = &job.how {
        tell("upkeep-how", "how", how)?;
    }
    if !job.parts.is_empty() {
        let names: Vec<String> = job.parts.iter().map(|part| part.name.clone()).collect();
        tell("upkeep-parts", "list", &names.join("; "))?;
    }
    if !job.tools.is_empty() {
        tell("upkeep-tools", "list", &words.list(&job.tools))?;
    }
    if let Some(who) = &job.by {
        tell("upkeep-who", "who", who)?;
    }
    if let Some(note) = &job.note {
        tell("upkeep-note", "note", note)?;
    }
    if let Some(source) = &job.source {
        tell("upkeep-source", "source", source)?;
    }
    Ok(())
}
