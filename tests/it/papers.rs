//! What is on paper is what is on the screen; and the papers as the command line writes them.
//!
//! - `command`: files, progress, exit codes, and that a file is replaced only by a whole one.
//! - `content`: the sheets tell what the answers and the map tell.
//! - `codes`: the square codes, read back from the printed page by a reader that is not ours.

mod codes;
mod command;
mod content;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use quarterturn_guidance::Catalogue;
use quarterturn_home::Home;
use quarterturn_papers::{Order, PackExtras, Paper, Printed, Sheet, lay_out};

fn folder(example: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../examples").join(example)
}

/// Lays out a sheet of an example, on the day of all these tests, with its plans.
fn printed(example: &str, sheet: Sheet, language: &str) -> (Home, Printed) {
    let home = crate::homes::example(example);
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref());
    let pictures: BTreeMap<String, Vec<u8>> = plans
        .map(|p| (p.picture.clone(), std::fs::read(folder(example).join(&p.picture)).unwrap()))
        .collect();
    let printed = print(&home, &pictures, sheet, language);
    (home, printed)
}

fn print(
    home: &Home,
    pictures: &BTreeMap<String, Vec<u8>>,
    sheet: Sheet,
    language: &str,
) -> Printed {
    let order = Order {
        home,
        pictures,
        paper: Paper::of_home(home),
        words: &Catalogue::find(language).unwrap(),
        today: "2026-11-25".parse().unwrap(),
        extras: &PackExtras::default(),
    };
    lay_out(sheet, &order).unwrap()
}

/// The text of a sheet in the order of reading, without any blanks: where a line ends is not the
/// question here.
fn text(printed: &Printed) -> String {
    let all: String = printed.text_boxes().into_iter().map(|piece| piece.text).collect();
    squeezed(&all)
}

fn squeezed(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace() && *c != '\u{200b}').collect()
}
