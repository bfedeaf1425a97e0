//! Saving loses nothing, the same home gives the same bytes, and no text makes the reader panic.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use quarterturn_home::{FORMAT, Home, Kept, Opened, open, save};

use crate::drawn::home;

proptest! {
    #[test]
    fn a_saved_home_opens_as_it_was(home in home()) {
        let saved = save(&home, &Kept::default());
        let opened = open("home.ron", &saved);
        prop_assert!(opened.problems.is_empty(), "{:?}\n{saved}", opened.problems);
        prop_assert_eq!(&opened.kept, &Kept::default());
        prop_assert_eq!(save(opened.home.as_ref().unwrap(), &opened.kept), saved.as_str());
        prop_assert_eq!(opened.home.unwrap(), home);
    }

    /// `ron` and the derived reader know nothing of our scanner.
    #[test]
    fn serde_reads_a_saved_home_by_itself(home in home()) {
        let saved = save(&home, &Kept::default());
        let read: Home = ron::from_str(&saved).map_err(|e| TestCaseError::fail(format!("{e}\n{saved}")))?;
        prop_assert_eq!(read, home);
    }

    /// What serde writes without our help opens without a problem.
    #[test]
    fn what_serde_writes_opens(home in home(), pretty in any::<bool>()) {
        let text = if pretty {
            ron::ser::to_string_pretty(&home, ron::ser::PrettyConfig::default().struct_names(true))
        } else {
            ron::to_string(&home)
        };
        let text = text.unwrap();
        let opened = open("home.ron", &text);
        prop_assert!(opened.problems.is_empty(), "{:?}\n{text}", opened.problems);
        prop_assert_eq!(opened.home.unwrap(), home);
    }

    #[test]
    fn lines_are_short(home in home()) {
        for line in save(&home, &Kept::default()).lines() {
            prop_assert!(line.chars().count() <= 140, "{line}");
        }
    }

    #[test]
    fn any_bytes_are_survived(bytes in vec(any::<u8>(), 0..400)) {
        survives(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn any_signs_are_survived(text in "[\\[\\](){},:\"'#!/*\\\\rb0-9a-zA-Z_.+\\- \n\r\t\u{feff}é]{0,200}") {
        survives(&text);
        survives(&format!("Home({text})"));
        survives(&format!("Home(format: 1, name: \"\", components: [(id: \"a\", {text})])"));
    }

    #[test]
    fn a_good_file_with_slips_is_survived(
        home in home(),
        slips in vec((any::<Index>(), 0_usize..12, select(vec![
            "", "\"", "(", ")", "[", "]", ",", ":", " ", "\n", "-", "Some(", "// ", "/*", "x", "1", "\u{feff}", "None", "é",
        ])), 1..4),
    ) {
        let mut text = save(&home, &Kept::default());
        for (at, length, put) in slips {
            let places: Vec<usize> = text.char_indices().map(|(i, _)| i).collect();
            if places.is_empty() { break; }
            let start = at.index(places.len());
            let end = (start + length).min(places.len() - 1);
            text.replace_range(places[start]..places[end], put);
        }
        survives(&text);
    }

    #[test]
    fn a_good_file_with_other_values_loses_nothing(
        home in home(),
        slips in vec((any::<Index>(), select(vec![
            "5", "-1", "inf", "1e200", "\"x\"", "\"c-0\"", "\"c-1\"", "\"\"", "None", "Some(\"c-1\")",
            "[]", "()", "[\"c-0\", 5]", "(x: 1)", "(1, 2, 3)", "Foo", "Tap", "Waste", "Pipe", "true",
            "\"\\q\"", "5, extra: 1", "\"l-0\", id: \"twice\"", "r#\"a\nb\"#", "/* in */ 7",
        ])), 1..8),
    ) {
        let mut text = save(&home, &Kept::default());
        for (at, value) in slips {
            put_value(&mut text, at, value);
        }
        survives(&text);
    }
}

/// Puts another value in place of the one that stands behind the colon there.
fn put_value(text: &mut String, at: Index, value: &str) {
    let colons: Vec<usize> = text.match_indices(": ").map(|(i, _)| i + 2).collect();
    let start = colons[at.index(colons.len())];
    let length = text[start..].find([',', ')', ']']).unwrap_or(0);
    text.replace_range(start..start + length, value);
}

/// Opening does not panic, and if there is a home, saving it loses no problem and is stable.
fn survives(text: &str) {
    let opened = open("home.ron", text);
    let lines = text.lines().count() + 1;
    for problem in &opened.problems {
        assert!(problem.line >= 1 && problem.line <= lines && problem.column >= 1);
    }
    let places: Vec<_> = opened.problems.iter().map(|p| (p.line, p.column)).collect();
    assert!(places.is_sorted());
    let Some(home) = &opened.home else {
        assert!(!opened.problems.is_empty());
        return;
    };
    let saved = save(home, &opened.kept);
    let again = open("home.ron", &saved);
    assert_eq!(save(again.home.as_ref().unwrap(), &again.kept), saved, "{text}");
    let mut home = home.clone();
    home.format = FORMAT;
    assert_eq!(again.home.as_ref(), Some(&home), "{text}\n{saved}");
    assert_eq!(lasting(&again), lasting(&opened), "{text}\n{saved}");
}

/// Keys of the problems that stay after saving; the others are put right by writing the file anew.
fn lasting(opened: &Opened) -> Vec<&'static str> {
    let repaired = [
        "missing-comma",
        "extra-comma",
        "quoted-name",
        "other-name",
        "unknown-extension",
        "format-missing",
        "format-newer",
        "format-unreadable",
    ];
    let keys = opened.problems.iter().map(|p| p.key).filter(|key| !repaired.contains(key));
    let mut keys: Vec<_> = keys.collect();
    keys.sort_unstable();
    keys
}
