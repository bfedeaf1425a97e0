//! Asking by the command line, and making what fails small enough to read.

use std::fs::{File, create_dir_all};
use std::io::Write as _;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use serde_json::Value;

use super::dice::Dice;
use super::house::House;
use super::shrink;

/// A question, in the words of the command line.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Asked {
    pub(crate) trouble: &'static str,
    /// A component, a room, or two components with two dots between.
    pub(crate) at: String,
    pub(crate) failed: Vec<String>,
    pub(crate) seen: Vec<(String, &'static str)>,
}

/// One case: a home and a question.
#[derive(Debug, Clone)]
pub(crate) struct Case {
    pub(crate) house: House,
    pub(crate) asked: Asked,
}

/// Draws `count` cases and holds each against `check`. One that fails is made as small as it goes
/// and shown with the text of its home file.
///
/// `QUARTERTURN_CASES` multiplies the count, for a long run.
pub(crate) fn hold(
    sort: &str,
    count: u64,
    draw: fn(Dice) -> Option<Case>,
    check: fn(&Case, &Path) -> Result<(), String>,
) {
    let times =
        std::env::var("QUARTERTURN_CASES").ok().and_then(|text| text.parse().ok()).unwrap_or(1);
    let folder = folder(sort);
    let mut held = 0;
    let mut number = 0;
    while held < count * times {
        number += 1;
        let Some(case) = draw(Dice::of_case(sort, number)) else { continue };
        held += 1;
        let Err(why) = checked(check, &case, &folder) else { continue };
        let (case, why) = smaller(case, why, check, &folder);
        let Asked { trouble, at, failed, seen } = &case.asked;
        panic!(
            "case {number} of {sort}: {why}\n--trouble {trouble} --at {at} failed {failed:?} seen {seen:?}\n{}",
            case.house.text()
        );
    }
}

/// The answer of the command line.
pub(crate) fn answer(case: &Case, folder: &Path) -> Result<Value, String> {
    let out = written(case, folder)?;
    serde_json::from_str(&out).map_err(|error| format!("no JSON: {error}\n{out}"))
}

/// The answer as the command line writes it.
pub(crate) fn written(case: &Case, folder: &Path) -> Result<String, String> {
    let mut file = File::create(folder.join("home.ron")).unwrap();
    file.write_all(case.house.text().as_bytes()).unwrap();
    drop(file);
    let asked = &case.asked;
    let mut words: Vec<String> = ["quarterturn", "answer"].map(str::to_owned).into();
    words.push(folder.to_str().unwrap().to_owned());
    for (flag, value) in [("--trouble", asked.trouble), ("--at", &asked.at)] {
        words.extend([flag.to_owned(), value.to_owned()]);
    }
    for id in &asked.failed {
        words.extend(["--failed".to_owned(), id.clone()]);
    }
    for (id, state) in &asked.seen {
        words.extend(["--seen".to_owned(), format!("{id}={state}")]);
    }
    words.push("--json".to_owned());
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let code = quarterturn::run(&words, &mut out, &mut err);
    if code == quarterturn::DONE {
        Ok(String::from_utf8(out).unwrap())
    } else {
        Err(format!("exit code {code}: {}", String::from_utf8(err).unwrap()))
    }
}

/// The texts of a list in the answer.
pub(crate) fn texts(list: &Value) -> Vec<String> {
    list.as_array().unwrap().iter().map(|item| item.as_str().unwrap().to_owned()).collect()
}

fn folder(sort: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("black-box").join(sort);
    create_dir_all(&folder).unwrap();
    folder
}

/// A panic counts as a failure like any other, so that it is made small too.
fn checked(
    check: fn(&Case, &Path) -> Result<(), String>,
    case: &Case,
    folder: &Path,
) -> Result<(), String> {
    catch_unwind(AssertUnwindSafe(|| check(case, folder)))
        .unwrap_or_else(|_| Err("it panics".to_owned()))
}

/// Takes out of a failing case whatever it fails without.
fn smaller(
    mut case: Case,
    mut why: String,
    check: fn(&Case, &Path) -> Result<(), String>,
    folder: &Path,
) -> (Case, String) {
    loop {
        // Only what still fails in the same way is the same failure.
        let sort = first_word(&why).to_owned();
        let fails = |less: Case| {
            let other = checked(check, &less, folder).err()?;
            (first_word(&other) == sort).then_some((less, other))
        };
        match fewer(&case).into_iter().find_map(fails) {
            Some((less, other)) => (case, why) = (less, other),
            None => return (case, why),
        }
    }
}

fn first_word(text: &str) -> &str {
    text.split(':').next().unwrap_or_default()
}

/// The case with one thing less, in every way.
fn fewer(case: &Case) -> Vec<Case> {
    let asked = &case.asked;
    let mut list = Vec::new();
    for number in 0..asked.failed.len() {
        let mut less = case.clone();
        less.asked.failed.remove(number);
        list.push(less);
    }
    for number in 0..asked.seen.len() {
        let mut less = case.clone();
        less.asked.seen.remove(number);
        list.push(less);
    }
    let named = |id: &str| {
        asked.at.split("..").any(|at| at == id)
            || asked.failed.iter().any(|failed| failed == id)
            || asked.seen.iter().any(|(seen, _)| seen == id)
    };
    let houses = shrink::less(&case.house, &named);
    list.extend(houses.into_iter().map(|house| Case { house, asked: asked.clone() }));
    list
}
