//! An answer as plain text.

use std::io::{self, Write};

use quarterturn_guidance::{Answer, By, Catalogue, Question, Spot, count, fill};
use quarterturn_home::Home;

/// Width of a line, in characters.
const WIDTH: usize = 96;

/// Writes an answer down: dangers, steps, other ways, suspects, calls, how to bring it back.
pub(crate) fn answer(
    home: &Home,
    question: &Question,
    answer: &Answer,
    words: &Catalogue,
    out: &mut dyn Write,
) -> io::Result<()> {
    let title = words.text(&format!("trouble-{}", question.trouble.id()));
    let spot = spot_name(home, &question.at, words);
    match spot {
        Some(spot) => {
            let fills = [fill("trouble", &title), fill("spot", &spot)];
            writeln!(out, "{}", words.fill("cli-heading", &fills))?;
        }
        None => writeln!(out, "{title}")?,
    }
    writeln!(out)?;
    let signals: Vec<String> = answer
        .cautions
        .iter()
        .map(|caution| words.text(&format!("signal-{}", signal_word(caution.signal))))
        .collect();
    let widest = signals.iter().map(|signal| signal.chars().count()).max().unwrap_or_default();
    for (signal, caution) in signals.iter().zip(&answer.cautions) {
        paragraph(out, &format!("{signal:width$}", width = widest + 2), &caution.text)?;
    }
    writeln!(out)?;
    for (number, step) in answer.steps.iter().enumerate() {
        let seconds = step.seconds.map(|s| duration(words, s));
        let text = match seconds {
            Some(seconds) => words.fill(
                "cli-step-timed",
                &[fill("text", step.text.trim()), fill("seconds", &seconds)],
            ),
            None => step.text.trim().to_owned(),
        };
        paragraph(out, &format!("{:>2}. ", number + 1), &text)?;
        if let Some(prove) = &step.prove {
            let prove = words.fill("cli-prove", &[fill("text", prove)]);
            paragraph(out, "    ", &prove)?;
        }
    }
    if !answer.sets.is_empty() {
        writeln!(out, "\n{}", words.text("cli-sets"))?;
        for set in answer.sets_to_tell() {
            sets_line(home, words, set, out)?;
        }
    }
    if !answer.suspects.is_empty() {
        writeln!(out, "\n{}", words.text("cli-suspects"))?;
        for suspect in &answer.suspects {
            let percent = (suspect.share * 100.0).round();
            let name = name(home, &suspect.component);
            let fills = [fill("name", &name), count("percent", percent)];
            writeln!(out, "{}", words.fill("cli-suspect", &fills))?;
        }
    }
    if let Some(check) = &answer.next_check {
        let seconds = duration(words, check.seconds);
        let fills = [fill("text", &check.look_for), fill("seconds", &seconds)];
        writeln!(out)?;
        paragraph(out, "", &words.fill("cli-next-check", &fills))?;
    }
    if let Some(relief) = &answer.relief {
        writeln!(out, "\n{}", words.text("cli-blocked"))?;
        for (from, to) in &relief.blocked_between {
            let fills = [fill("from", &name(home, from)), fill("to", &name(home, to))];
            writeln!(out, "{}", words.fill("cli-blocked-between", &fills))?;
        }
    }
    writeln!(out, "\n{}", words.text("cli-call"))?;
    for call in &answer.call {
        let phone = call.phone.clone().unwrap_or_else(|| words.text("no-phone"));
        let fills = [fill("name", &call.name), fill("phone", &phone), fill("why", &call.why)];
        paragraph(out, "  ", &words.fill("cli-call-line", &fills))?;
    }
    if !answer.restore.is_empty() {
        writeln!(out, "\n{}", words.text("cli-restore"))?;
        for text in &answer.restore {
            paragraph(out, "  ", text)?;
        }
    }
    writeln!(out)?;
    paragraph(out, "", &words.text("caution-local-codes"))
}

fn sets_line(
    home: &Home,
    words: &Catalogue,
    set: &quarterturn_guidance::ClosingSet,
    out: &mut dyn Write,
) -> io::Result<()> {
    let names: Vec<String> = set.close.iter().map(|id| name(home, id)).collect();
    let by = words.text(match set.by {
        By::Anyone => "by-anyone",
        By::Licensed => "by-licensed",
        By::Utility => "by-utility",
    });
    let seconds = duration(words, set.seconds);
    let list = words.list(&names);
    let mut fills = vec![fill("list", &list), fill("by", &by), fill("seconds", &seconds)];
    #[expect(clippy::cast_precision_loss, reason = "a house has few components")]
    fills.push(count("off", set.goes_off.len() as f64));
    let key = match set.litres {
        Some(litres) => {
            let us = home.units == quarterturn_home::Units::Us;
            let amount = if us { litres / 3.785_412 } else { litres };
            fills.push(count("amount", amount.round()));
            if us { "cli-set-gallons" } else { "cli-set-litres" }
        }
        None => "cli-set",
    };
    paragraph(out, "  - ", &words.fill(key, &fills))
}

/// A time as people say it: seconds, or minutes where it is long.
fn duration(words: &Catalogue, seconds: f64) -> String {
    if seconds < 100.0 {
        words.fill("cli-seconds", &[count("seconds", seconds)])
    } else {
        words.fill("cli-minutes", &[count("minutes", (seconds / 60.0).ceil())])
    }
}

pub(crate) fn signal_word(signal: quarterturn_guidance::Signal) -> &'static str {
    use quarterturn_guidance::Signal as S;
    match signal {
        S::Danger => "danger",
        S::Warning => "warning",
        S::Caution => "caution",
        S::Notice => "notice",
    }
}

/// What people call a component: its name, its tag and its id, which the next command takes.
fn name(home: &Home, id: &str) -> String {
    home.component(id).map_or_else(
        || id.to_owned(),
        |component| match &component.tag {
            Some(tag) => format!("{} ({tag}) [{id}]", component.name),
            None => format!("{} [{id}]", component.name),
        },
    )
}

fn spot_name(home: &Home, spot: &Spot, words: &Catalogue) -> Option<String> {
    Some(match spot {
        Spot::Component(id) => name(home, id),
        Spot::Connection(from, to) => words
            .fill("cli-between", &[fill("from", &name(home, from)), fill("to", &name(home, to))]),
        Spot::Space(id) => home.space(id).map_or_else(|| id.clone(), |space| space.name.clone()),
        Spot::Home => return None,
    })
}

/// Writes text in lines of at most [`WIDTH`], the first behind `head`, the others indented as far.
pub(crate) fn paragraph(out: &mut dyn Write, head: &str, text: &str) -> io::Result<()> {
    let indent = " ".repeat(head.chars().count());
    let mut line = head.to_owned();
    let mut empty = true;
    for word in text.split_whitespace() {
        let longer = line.chars().count() + 1 + word.chars().count();
        if !empty && longer > WIDTH {
            writeln!(out, "{}", line.trim_end())?;
            line.clone_from(&indent);
            empty = true;
        }
        if !empty {
            line.push(' ');
        }
        line.push_str(word);
        empty = false;
    }
    writeln!(out, "{}", line.trim_end())
}
