//! Writing a home's papers into a folder: the sheets as PDF, and the phone page.

use std::collections::BTreeMap;
use std::io::{self, Write};
use std::ops::ControlFlow;
use std::path::Path;

use quarterturn_folder::{Folder, FolderError, write_whole};
use quarterturn_guidance::{Catalogue, count, fill};
use quarterturn_home::{Date, Home, Severity};
use quarterturn_papers::{CannotPrint, Order, PackExtras, Paper, Sheet, lay_out, phone_page};
use quarterturn_window::Opening;

use crate::{ATTENTION, BAD_INPUT, DONE};

/// The phone page's file.
const PHONE: &str = "phone.html";

/// Writes all papers into `to`. What is being done goes to `err`, what was written to `out`.
///
/// A file is replaced only when the new one is whole: whoever breaks it off has the old one.
pub(crate) fn write_all(
    opening: &Opening,
    words: &Catalogue,
    to: &Path,
    paper: Option<Paper>,
    today: Option<Date>,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> io::Result<u8> {
    let Some(today) = today else {
        writeln!(err, "{}", words.text("paper-cli-no-day"))?;
        return Ok(BAD_INPUT);
    };
    if let Err(error) = std::fs::create_dir_all(to) {
        writeln!(err, "{}", unwritten(words, &FolderError::writing(to, error)))?;
        return Ok(BAD_INPUT);
    }
    let home = &opening.home;
    let (pictures, mut attention) = pictures(opening, words, err)?;
    attention |= opening.problems.iter().any(|problem| problem.severity == Severity::Error);
    let extras = PackExtras::of_home(home, today, words);
    let paper = paper.unwrap_or_else(|| Paper::of_home(home));
    let order = Order { home, pictures: &pictures, paper, words, today, extras: &extras };
    let all = Sheet::ALL.len() + 1;
    for (nth, sheet) in Sheet::ALL.into_iter().enumerate() {
        let title = words.text(sheet.title_key());
        progress(words, nth + 1, all, &title, err)?;
        let made = lay_out(sheet, &order).and_then(|printed| printed.pdf());
        let file = to.join(format!("{}.pdf", sheet.file_stem()));
        match made {
            Ok(bytes) => match write_whole(&file, &bytes) {
                Ok(()) => writeln!(out, "{}", file.display())?,
                Err(error) => {
                    writeln!(err, "{}", unwritten(words, &error))?;
                    return Ok(BAD_INPUT);
                }
            },
            Err(CannotPrint::Nothing) => {
                writeln!(err, "{}", words.fill("paper-cli-nothing", &[fill("title", &title)]))?;
            }
            Err(error) => {
                let fills = [fill("title", &title), fill("why", &error.to_string())];
                writeln!(err, "{}", words.fill("paper-cli-failed", &fills))?;
                attention = true;
            }
        }
    }
    progress(words, all, all, &words.text("paper-phone-page"), err)?;
    let file = to.join(PHONE);
    match phone_page(home, &pictures, today, &mut |_, _| ControlFlow::Continue(())) {
        Ok(page) => match write_whole(&file, page.html.as_bytes()) {
            Ok(()) => writeln!(out, "{}", file.display())?,
            Err(error) => {
                writeln!(err, "{}", unwritten(words, &error))?;
                return Ok(BAD_INPUT);
            }
        },
        Err(error) => {
            let title = words.text("paper-phone-page");
            let fills = [fill("title", &title), fill("why", &error.to_string())];
            writeln!(err, "{}", words.fill("paper-cli-failed", &fills))?;
            attention = true;
        }
    }
    Ok(if attention { ATTENTION } else { DONE })
}

fn progress(
    words: &Catalogue,
    nth: usize,
    all: usize,
    title: &str,
    err: &mut dyn Write,
) -> io::Result<()> {
    let number = |n: usize| f64::from(u32::try_from(n).unwrap_or(u32::MAX));
    let fills = [count("nth", number(nth)), count("all", number(all)), fill("title", title)];
    writeln!(err, "{}", words.fill("paper-cli-making", &fills))?;
    err.flush()
}

/// The pictures that the home names, by path. True if one could not be read; which, goes to `err`.
fn pictures(
    opening: &Opening,
    words: &Catalogue,
    err: &mut dyn Write,
) -> io::Result<(BTreeMap<String, Vec<u8>>, bool)> {
    let mut found = BTreeMap::new();
    let mut unread = false;
    let Some(root) = &opening.folder else { return Ok((found, unread)) };
    for path in named(&opening.home) {
        if found.contains_key(path) {
            continue;
        }
        match Folder::at(root).and_then(|folder| folder.read_inside(path)) {
            Ok(bytes) => {
                found.insert(path.to_owned(), bytes);
            }
            Err(error) => {
                let fills = [fill("path", path), fill("why", &error.to_string())];
                writeln!(err, "{}", words.fill("paper-cli-picture", &fills))?;
                unread = true;
            }
        }
    }
    Ok((found, unread))
}

/// The paths of pictures in a home.
fn named(home: &Home) -> impl Iterator<Item = &str> {
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref());
    let photos = home.components.iter().filter_map(|component| component.photo.as_deref());
    plans.map(|plan| plan.picture.as_str()).chain(photos)
}

fn unwritten(words: &Catalogue, error: &FolderError) -> String {
    words.fill("paper-cli-unwritten", &[fill("problem", &error.problem(words))])
}
