//! `quarterturn papers`: files, progress, exit codes, and that a file is replaced only by a whole one.

use std::path::Path;

use quarterturn::{ATTENTION, BAD_INPUT, DONE};

use super::folder;

/// What a run came to: its code, and what it wrote to the two streams.
struct Run {
    code: u8,
    out: String,
    err: String,
}

fn papers(home: &Path, to: &Path, more: &[&str]) -> Run {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let start = ["quarterturn", "papers", home.to_str().unwrap(), "--to", to.to_str().unwrap()];
    let all = start.iter().chain(more).copied();
    let code = quarterturn::run(all, &mut out, &mut err);
    Run { code, out: String::from_utf8(out).unwrap(), err: String::from_utf8(err).unwrap() }
}

const FILES: [&str; 6] = [
    "fridge-door.pdf",
    "handover-pack.pdf",
    "hang-tags.pdf",
    "panel-directory.pdf",
    "phone.html",
    "valve-list.pdf",
];

fn files(of: &Path) -> Vec<String> {
    let entries = std::fs::read_dir(of).unwrap();
    let mut names: Vec<String> =
        entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    names
}

#[test]
fn all_papers_are_written_once_more_the_same_and_nothing_else_is_left() {
    let place = tempfile::tempdir().unwrap();
    let to = place.path().join("papers/of the flat");
    let day = ["--today", "2026-11-25"];
    let run = papers(&folder("flat"), &to, &day);
    assert_eq!(run.code, DONE, "{}", run.err);
    assert_eq!(files(&to), FILES);
    assert!(run.err.contains("1 of 7") && run.err.contains("7 of 7"), "{}", run.err);
    for file in FILES {
        assert!(run.out.contains(file), "{}", run.out);
    }
    let before: Vec<Vec<u8>> = FILES.iter().map(|f| std::fs::read(to.join(f)).unwrap()).collect();
    assert_eq!(papers(&folder("flat"), &to, &day).code, DONE);
    let after: Vec<Vec<u8>> = FILES.iter().map(|f| std::fs::read(to.join(f)).unwrap()).collect();
    assert!(before == after, "the same order gives the same files");
    assert_eq!(files(&to), FILES);
}

#[test]
fn paper_and_language_can_be_chosen() {
    let place = tempfile::tempdir().unwrap();
    let more = ["--today", "2026-11-25", "--paper", "letter", "--language", "es"];
    let run = papers(&folder("old-house"), place.path(), &more);
    assert_eq!(run.code, DONE, "{}", run.err);
    assert!(run.err.contains("Qué hacer primero"), "{}", run.err);
    let wrong = papers(&folder("old-house"), place.path(), &["--paper", "a5"]);
    assert_eq!(wrong.code, BAD_INPUT);
    assert!(wrong.err.contains("a4") && wrong.err.contains("letter"), "{}", wrong.err);
}

#[test]
fn a_picture_that_is_gone_is_told_and_the_papers_are_made_without_it() {
    let place = tempfile::tempdir().unwrap();
    let home = place.path().join("home");
    std::fs::create_dir(&home).unwrap();
    std::fs::copy(folder("flat").join("home.ron"), home.join("home.ron")).unwrap();
    let to = place.path().join("out");
    let run = papers(&home, &to, &["--today", "2026-11-25"]);
    assert_eq!(run.code, ATTENTION, "{}", run.err);
    assert!(run.err.contains("plans/third.png"), "{}", run.err);
    assert_eq!(files(&to), FILES);
}

#[test]
fn a_folder_that_cannot_be_written_is_bad_input_with_its_name() {
    let place = tempfile::tempdir().unwrap();
    let file = place.path().join("taken");
    std::fs::copy(folder("flat").join("home.ron"), &file).unwrap();
    let run = papers(&folder("flat"), &file, &["--today", "2026-11-25"]);
    assert_eq!(run.code, BAD_INPUT);
    assert!(run.err.contains("taken"), "{}", run.err);
}
