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
mod last_home;
mod text;

use std::ffi::OsString;
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use clap::Parser as _;
use quarterturn_guidance::{Catalogue, Question, Seen, Spot, Trouble, fill};
use quarterturn_home::{Home, Severity, nearest_few};
use quarterturn_window::{NotOpened, Opening};

use crate::arguments::{AnswerArguments, Arguments, Command};

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
    let code = match parsed.command {
        None => open_window(parsed.home.as_deref(), out, err),
        Some(Command::Troubles { json }) => troubles(json, out),
        Some(Command::Answer(arguments)) => answer(&arguments, out, err),
        Some(Command::Check { home, json }) => check(&home, json, out, err),
    };
    match code {
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

fn open_window(home: Option<&Path>, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let words = Catalogue::english();
    let opening = match home {
        Some(path) => match open(path, &words, err)? {
            Some(opening) => opening,
            None => return Ok(BAD_INPUT),
        },
        // A last home that is gone is no reason not to open.
        None => last_home::recall()
            .and_then(|path| Opening::read(&path).ok())
            .unwrap_or_else(Opening::built_in),
    };
    if let Some(folder) = &opening.folder {
        last_home::remember(folder);
    }
    let Err(no_display) = quarterturn_window::run(opening) else { return Ok(DONE) };
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

fn troubles(json: bool, out: &mut dyn Write) -> io::Result<u8> {
    let words = Catalogue::english();
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

fn answer(arguments: &AnswerArguments, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let english = Catalogue::english();
    let Some(opening) = open(&arguments.home, &english, err)? else { return Ok(BAD_INPUT) };
    let home = &opening.home;
    let tag = arguments.language.as_deref().or(home.language.as_deref()).unwrap_or("en");
    let words = Catalogue::in_language(tag);
    let Some(question) = question(arguments, home, &words, err)? else { return Ok(BAD_INPUT) };
    let answer = quarterturn_guidance::answer(home, &question, &words);
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

fn check(path: &Path, json: bool, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let words = Catalogue::english();
    let (home, problems) = match Opening::read(path) {
        Ok(opening) => (Some(opening.home), opening.problems),
        Err(NotOpened::NoHome(_, problems)) => (None, problems),
        Err(error) => {
            writeln!(err, "{}", not_opened(&words, &error))?;
            return Ok(BAD_INPUT);
        }
    };
    let words =
        home.as_ref().and_then(|h| h.language.as_deref()).map_or(words, Catalogue::in_language);
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

/// Opens a home; what is wrong with it goes to `err`. `None` if nothing of it can be used.
fn open(path: &Path, words: &Catalogue, err: &mut dyn Write) -> io::Result<Option<Opening>> {
    match Opening::read(path) {
        Ok(opening) => {
            for problem in &opening.problems {
                writeln!(err, "{}", words.problem(problem))?;
            }
            Ok(Some(opening))
        }
        Err(error) => {
            writeln!(err, "{}", not_opened(words, &error))?;
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

fn shown(path: &PathBuf) -> String {
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
