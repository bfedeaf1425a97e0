//! The command line of Quarterturn. It holds no logic: it reads what was typed, opens the home, and
//! writes down what `quarterturn_guidance` answers.
//!
//! ```
//! let (mut out, mut err) = (Vec::new(), Vec::new());
//! let code = quarterturn::run(["quarterturn", "troubles"], &mut out, &mut err);
//! assert_eq!(code, quarterturn::DONE);
//! assert!(String::from_utf8_lossy(&out).contains("leak"));
//! ```

mod arguments;
mod papers;
mod settings;
mod text;
mod upkeep;

use std::ffi::OsString;
use std::io::{self, Write};
use std::path::Path;

use clap::Parser as _;
use quarterturn_guidance::{Catalogue, Question, Seen, Spot, Trouble, fill};
use quarterturn_home::{Home, Severity, nearest_few};
use quarterturn_window::{NotOpened, Opening};

use crate::arguments::{AnswerArguments, Arguments, Command, PapersArguments};

/// Done.
pub const DONE: u8 = 0;
/// Done, but something needs attention.
pub const ATTENTION: u8 = 1;
/// Bad input.
pub const BAD_INPUT: u8 = 2;

/// Runs the command line and returns the exit code. What is to be read goes to `out`, what is
/// wrong to `err`.
pub fn run<A: Into<OsString> + Clone>(
    arguments: impl IntoIterator<Item = A>,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> u8 {
    let parsed = match Arguments::try_parse_from(arguments) {
        Ok(parsed) => parsed,
        Err(error) => {
            let wrong = error.use_stderr();
            let written = if wrong { write!(err, "{error}") } else { write!(out, "{error}") };
            return if wrong || written.is_err() { BAD_INPUT } else { DONE };
        }
    };
    match obey(parsed, out, err) {
        Ok(code) => code,
        // Whoever read the output has read enough.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => DONE,
        Err(error) => {
            // There is nowhere left to say that even this cannot be written.
            drop(writeln!(err, "{error}"));
            BAD_INPUT
        }
    }
}

fn obey(parsed: Arguments, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let asked = match parsed.language.as_deref().map(|tag| (tag, Catalogue::find(tag))) {
        Some((tag, None)) => {
            writeln!(err, "{}", unknown_language(tag))?;
            return Ok(BAD_INPUT);
        }
        Some((_, Some(words))) => Some(words),
        None => None,
    };
    match parsed.command {
        None => open_window(parsed.home.as_deref(), asked, out, err),
        Some(Command::Troubles { json }) => {
            troubles(json, &asked.unwrap_or_else(Catalogue::english), out)
        }
        Some(Command::Answer(arguments)) => answer(&arguments, asked, out, err),
        Some(Command::Papers(PapersArguments { home, to, paper, today })) => {
            let Some((opening, words)) = open(&home, asked, err)? else { return Ok(BAD_INPUT) };
            let today = today.or_else(quarterturn_window::today);
            papers::write_all(&opening, &words, &to, paper, today, out, err)
        }
        Some(Command::Upkeep(arguments)) => {
            let Some((opening, words)) = open(&arguments.home, asked, err)? else {
                return Ok(BAD_INPUT);
            };
            let today = arguments.today.or_else(quarterturn_window::today);
            upkeep::tell(&arguments, &opening, &words, today, out, err)
        }
        Some(Command::Check { home, json }) => check(&home, json, asked, out, err),
    }
}

/// The words that were asked for, or else those of the home, or else English.
fn words_for(asked: Option<Catalogue>, home: Option<&Home>) -> Catalogue {
    let own = || home.and_then(|home| home.language.as_deref()).map(Catalogue::in_language);
    asked.or_else(own).unwrap_or_else(Catalogue::english)
}

fn unknown_language(tag: &str) -> String {
    let words = Catalogue::english();
    let all: Vec<String> = Catalogue::languages()
        .iter()
        .map(|l| words.fill("cli-language", &[fill("tag", l.tag), fill("name", &l.name)]))
        .collect();
    words.fill("cli-unknown-language", &[fill("text", tag), fill("list", &all.join(", "))])
}

fn open_window(
    home: Option<&Path>,
    asked: Option<Catalogue>,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> io::Result<u8> {
    let settings = settings::recall();
    // Words typed on the command line come before what was chosen in the window.
    let asked = asked.or_else(|| Catalogue::find(settings.language.as_deref()?));
    let (opening, words) = match home {
        Some(path) => match open(path, asked, err)? {
            Some(opened) => opened,
            None => return Ok(BAD_INPUT),
        },
        // A last home that is gone is no reason not to open.
        None => {
            let opening = settings
                .last_home
                .as_deref()
                .and_then(|path| Opening::read(path).ok())
                .unwrap_or_else(Opening::built_in);
            let words = words_for(asked, Some(&opening.home));
            (opening, words)
        }
    };
    let spoken = Catalogue::in_language(words.language());
    let Err(no_display) = quarterturn_window::run(opening, spoken, settings, settings::remember)
    else {
        return Ok(DONE);
    };
    match no_display.why {
        Some(why) => writeln!(err, "{}", words.fill("cli-no-window", &[fill("why", &why)]))?,
        None => writeln!(err, "{}", words.text("cli-no-display"))?,
    }
    // No display: the example's answer shows what the program does, and how to ask.
    let example = Opening::built_in().home;
    let question = Question {
        trouble: Trouble::Leak,
        at: Spot::Component("kitchen-sink".to_owned()),
        from: None,
        failed: Vec::new(),
        seen: Vec::new(),
    };
    writeln!(out, "{}", words.text("cli-example"))?;
    writeln!(out)?;
    let answer = quarterturn_guidance::answer(&example, &question, &words);
    text::answer(&example, &question, &answer, &words, out)?;
    writeln!(out)?;
    writeln!(out, "{}", words.text("cli-how-to-ask"))?;
    Ok(DONE)
}

fn troubles(json: bool, words: &Catalogue, out: &mut dyn Write) -> io::Result<u8> {
    if json {
        let list: Vec<_> = Trouble::ALL
            .iter()
            .map(|trouble| {
                let id = trouble.id();
                serde_json::json!({
                    "trouble": id,
                    "title": words.text(&format!("trouble-{id}")),
                    "hint": words.text(&format!("trouble-{id}-hint")),
                })
            })
            .collect();
        writeln!(out, "{}", serde_json::Value::from(list))?;
        return Ok(DONE);
    }
    for trouble in Trouble::ALL {
        let id = trouble.id();
        let title = words.text(&format!("trouble-{id}"));
        let hint = words.text(&format!("trouble-{id}-hint"));
        let fills = [fill("title", &title), fill("hint", &hint)];
        writeln!(out, "{id:18} {}", words.fill("cli-trouble-line", &fills))?;
    }
    Ok(DONE)
}

fn answer(
    arguments: &AnswerArguments,
    asked: Option<Catalogue>,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> io::Result<u8> {
    let Some((opening, words)) = open(&arguments.home, asked, err)? else { return Ok(BAD_INPUT) };
    let home = &opening.home;
    let Some(question) = question(arguments, home, &words, err)? else { return Ok(BAD_INPUT) };
    let today = arguments.today.or_else(quarterturn_window::today);
    let answer = quarterturn_guidance::answer_on(home, &question, &words, today);
    if arguments.json {
        let json = serde_json::to_string_pretty(&answer).map_err(io::Error::from)?;
        writeln!(out, "{json}")?;
    } else {
        text::answer(home, &question, &answer, &words, out)?;
    }
    let broken = opening.problems.iter().any(|problem| problem.severity == Severity::Error);
    Ok(if broken { ATTENTION } else { DONE })
}

/// The question that was typed; what is wrong with it goes to `err`, all at once.
fn question(
    arguments: &AnswerArguments,
    home: &Home,
    words: &Catalogue,
    err: &mut dyn Write,
) -> io::Result<Option<Question>> {
    let mut wrong: Vec<String> = Vec::new();
    let trouble = Trouble::from_id(&arguments.trouble);
    if trouble.is_none() {
        let ids = Trouble::ALL.iter().map(|trouble| trouble.id());
        wrong.push(unknown(words, "cli-unknown-trouble", &arguments.trouble, ids));
    }
    let at = match arguments.at.as_deref() {
        Some(text) => Spot::find(home, text).map_err(|near| {
            let near: Vec<&str> = near.iter().map(String::as_str).collect();
            wrong.push(told_with(words, "cli-unknown-spot", text, &near));
        }),
        None if trouble.is_none_or(Trouble::is_leave_first) => Ok(Spot::Home),
        None => {
            wrong.push(words.text("cli-no-spot"));
            Err(())
        }
    };
    let components = || home.components.iter().map(|component| component.id.as_str());
    let spaces = || home.spaces.iter().map(|space| space.id.as_str());
    if let Some(from) = arguments.from.as_deref().filter(|from| home.space(from).is_none()) {
        wrong.push(unknown(words, "cli-unknown-space", from, spaces()));
    }
    for id in arguments.failed.iter().filter(|id| home.component(id).is_none()) {
        wrong.push(unknown(words, "cli-unknown-device", id, components()));
    }
    let mut seen = Vec::new();
    for text in &arguments.seen {
        let (id, word) = text.split_once('=').unwrap_or((text, ""));
        match Seen::from_word(word) {
            None => {
                let all: Vec<&str> = Seen::ALL.iter().map(|(_, word)| *word).collect();
                wrong.push(words.fill(
                    "cli-unknown-state",
                    &[fill("text", text), fill("states", &all.join(", "))],
                ));
            }
            Some(_) if home.component(id).is_none() && home.space(id).is_none() => {
                wrong.push(unknown(words, "cli-unknown-seen", id, components().chain(spaces())));
            }
            Some(state) => seen.push((id.to_owned(), state)),
        }
    }
    for line in &wrong {
        writeln!(err, "{line}")?;
    }
    let (Some(trouble), Ok(at)) = (trouble, at) else { return Ok(None) };
    Ok(wrong.is_empty().then(|| Question {
        trouble,
        at,
        from: arguments.from.clone(),
        failed: arguments.failed.clone(),
        seen,
    }))
}

fn check(
    path: &Path,
    json: bool,
    asked: Option<Catalogue>,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> io::Result<u8> {
    let (home, problems) = match Opening::read(path) {
        Ok(opening) => (Some(opening.home), opening.problems),
        Err(NotOpened::NoHome(_, problems)) => (None, problems),
        Err(error) => {
            writeln!(err, "{}", not_opened(&words_for(asked, None), &error))?;
            return Ok(BAD_INPUT);
        }
    };
    let words = words_for(asked, home.as_ref());
    let findings =
        home.as_ref().map(|home| quarterturn_guidance::check(home, &words)).unwrap_or_default();
    if json {
        let problems: Vec<_> = problems
            .iter()
            .map(|problem| {
                serde_json::json!({
                    "file": problem.file,
                    "line": problem.line,
                    "column": problem.column,
                    "severity": match problem.severity {
                        Severity::Error => "error",
                        Severity::Warning => "warning",
                    },
                    "problem": problem.key,
                    "text": words.problem_cause(problem),
                    "remedy": words.problem_remedy(problem),
                })
            })
            .collect();
        let all = serde_json::json!({ "problems": problems, "findings": findings });
        writeln!(out, "{}", serde_json::to_string_pretty(&all).map_err(io::Error::from)?)?;
    } else {
        for problem in &problems {
            writeln!(out, "{}", words.problem(problem))?;
        }
        for finding in &findings {
            let fills = [
                fill("id", &finding.id),
                fill("text", &finding.text),
                fill("remedy", &finding.remedy),
            ];
            writeln!(out, "{}", words.fill("cli-finding", &fills))?;
        }
        if problems.is_empty() && findings.is_empty() {
            writeln!(out, "{}", words.text("cli-no-findings"))?;
        }
    }
    Ok(match home {
        None => BAD_INPUT,
        Some(_) if problems.is_empty() && findings.is_empty() => DONE,
        Some(_) => ATTENTION,
    })
}

/// Opens a home, and finds the words for it; what is wrong with it goes to `err`. `None` if nothing
/// of it can be used.
fn open(
    path: &Path,
    asked: Option<Catalogue>,
    err: &mut dyn Write,
) -> io::Result<Option<(Opening, Catalogue)>> {
    match Opening::read(path) {
        Ok(opening) => {
            let words = words_for(asked, Some(&opening.home));
            for problem in &opening.problems {
                writeln!(err, "{}", words.problem(problem))?;
            }
            Ok(Some((opening, words)))
        }
        Err(error) => {
            writeln!(err, "{}", not_opened(&words_for(asked, None), &error))?;
            Ok(None)
        }
    }
}

fn not_opened(words: &Catalogue, error: &NotOpened) -> String {
    match error {
        NotOpened::Unread(path, why) => {
            words.fill("cli-unread", &[fill("path", &shown(path)), fill("why", &why.to_string())])
        }
        NotOpened::NoHome(_, problems) => {
            let lines: Vec<String> = problems.iter().map(|p| words.problem(p)).collect();
            lines.join("\n")
        }
    }
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}

fn unknown<'a>(
    words: &Catalogue,
    key: &str,
    text: &str,
    ids: impl IntoIterator<Item = &'a str>,
) -> String {
    told_with(words, key, text, &nearest_few(text, ids, 5))
}

fn told_with(words: &Catalogue, key: &str, text: &str, near: &[&str]) -> String {
    let cause = words.fill(key, &[fill("text", text)]);
    if near.is_empty() {
        return cause;
    }
    let list = near.join(", ");
    words.fill("cli-did-you-mean", &[fill("cause", &cause), fill("list", &list)])
}
