//! The log loses no entry, whatever is wrong with its text.

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use quarterturn_home::{
    DeviceState, DoneStep, Kept, LOG_FORMAT, Learnt, Lesson, Log, LogEntry, OpenedLog, open_log,
    save_log,
};

use crate::drawn::{date, some_text, text};

fn amount() -> impl Strategy<Value = f64> {
    prop_oneof![0.0..1e9, (0_u32..500).prop_map(f64::from)]
}

fn lesson() -> impl Strategy<Value = Lesson> {
    let states =
        [DeviceState::Works, DeviceState::Stiff, DeviceState::Seized, DeviceState::LeaksBy];
    let at = (amount(), -1e3..1e3, 0.0..3.0);
    prop_oneof![
        select(states.to_vec()).prop_map(Lesson::State),
        text().prop_map(Lesson::Tag),
        text().prop_map(Lesson::Name),
        (text(), text(), option::of(at)).prop_map(|(space, space_name, at)| Lesson::Place {
            space: Some(space),
            space_name,
            at
        }),
        (amount(), amount(), amount()).prop_map(|at| Lesson::Place {
            space: None,
            space_name: String::new(),
            at: Some(at)
        }),
    ]
}

prop_compose! {
    fn entry()(
        on in date(),
        at_time in option::of((0_u32..24, 0_u32..60)),
        trouble in text(),
        lists in (vec(text(), 0..3), vec(text(), 0..3), vec(text(), 0..3)),
        place_name in text(),
        seen in vec((text(), text()), 0..3),
        done in vec((text(), some_text(), option::of(amount())), 0..4),
        learnt in vec((text(), text(), lesson()), 0..3),
        litres in option::of((amount(), amount())),
        note in some_text(),
        practice in any::<bool>(),
        names in vec((text(), text()), 0..3),
    ) -> LogEntry {
        let (at, failed, solved_by) = lists;
        LogEntry {
            on,
            at_time: at_time.map(|(hours, minutes)| format!("{hours:02}:{minutes:02}")),
            trouble,
            at,
            place_name,
            failed,
            seen,
            done: done
                .into_iter()
                .map(|(text, component, seconds)| DoneStep { text, component, seconds })
                .collect(),
            solved_by,
            learnt: learnt
                .into_iter()
                .map(|(device, device_name, lesson)| Learnt { device, device_name, lesson })
                .collect(),
            litres,
            note,
            practice,
            names,
        }
    }
}

fn logs() -> impl Strategy<Value = Log> {
    vec(entry(), 0..6).prop_map(|entries| Log { entries })
}

proptest! {
    #[test]
    fn a_saved_log_opens_as_it_was(log in logs()) {
        let saved = save_log(&log, &Kept::default());
        let opened = open_log("log.ron", &saved);
        prop_assert!(opened.problems.is_empty(), "{:?}\n{saved}", opened.problems);
        prop_assert_eq!(&opened.kept, &Kept::default());
        prop_assert_eq!(opened.log.as_ref(), Some(&log));
        prop_assert_eq!(save_log(&log, &opened.kept), saved.as_str());
        // It is RON like any other.
        ron::from_str::<ron::Value>(&saved).map_err(|e| TestCaseError::fail(format!("{e}\n{saved}")))?;
    }

    #[test]
    fn a_log_with_slips_is_survived(
        log in logs(),
        slips in vec((any::<Index>(), 0_usize..12, select(vec![
            "", "\"", "(", ")", "[", "]", ",", ":", " ", "\n", "-", "Some(", "// ", "/*", "x", "1", "None", "é",
        ])), 1..4),
    ) {
        let mut text = save_log(&log, &Kept::default());
        for (at, length, put) in slips {
            let places: Vec<usize> = text.char_indices().map(|(i, _)| i).collect();
            let start = at.index(places.len());
            let end = (start + length).min(places.len() - 1);
            text.replace_range(places[start]..places[end], put);
        }
        survives(&text);
    }

    #[test]
    fn a_log_with_other_values_loses_nothing(
        log in logs(),
        slips in vec((any::<Index>(), select(vec![
            "5", "-1", "inf", "\"x\"", "\"\"", "None", "[]", "()", "[\"a\", 5]", "[(\"a\", 5)]",
            "[(text: 5)]", "[(text: \"x\", extra: 1)]", "[(device: \"a\")]", "(1, 2)", "(3, \"x\")",
            "Foo", "Works", "true", "\"25:00\"", "\"\\q\"", "5, extra: 1",
        ])), 1..8),
    ) {
        let mut text = save_log(&log, &Kept::default());
        for (at, value) in slips {
            let colons: Vec<usize> = text.match_indices(": ").map(|(i, _)| i + 2).collect();
            let start = colons[at.index(colons.len())];
            let length = text[start..].find([',', ')', ']']).unwrap_or(0);
            text.replace_range(start..start + length, value);
        }
        survives(&text);
    }
}

/// Nothing is lost by opening and saving: the same log, the same problems, the same text.
fn survives(text: &str) {
    let opened = open_log("log.ron", text);
    let Some(log) = &opened.log else {
        assert!(!opened.problems.is_empty() && !opened.may_save());
        return;
    };
    let saved = save_log(log, &opened.kept);
    let again = open_log("log.ron", &saved);
    assert_eq!(again.log.as_ref(), Some(log), "{text}\n{saved}");
    assert_eq!(save_log(log, &again.kept), saved, "{text}");
    assert_eq!(lasting(&again), lasting(&opened), "{text}\n{saved}");
}

/// Keys of the problems that writing the file anew does not put right.
fn lasting(opened: &OpenedLog) -> Vec<&'static str> {
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

#[test]
fn an_entry_that_cannot_be_used_stays_in_the_file() {
    let text = r#"Log(format: 1, entries: [
        (on: "2026-05-02", trouble: "leak", place_name: "Sink", done: [(text: "Shut W1", sekonds: 4)]),
        (on: "yesterday", trouble: "leak", mood: "bad"),
        (on: "2026-05-03", at_time: "8 o'clock", trouble: "leak", learnt: [(device: "main")]),
    ])"#;
    let opened = open_log("log.ron", text);
    let told: Vec<_> = opened.problems.iter().map(|p| (p.line, p.key)).collect();
    let expected = [
        (2, "unknown-field"),
        (3, "unreadable-date"),
        (3, "unknown-field"),
        (4, "unreadable-time"),
        (4, "one-lesson"),
    ];
    assert_eq!(told, expected);
    let log = opened.log.clone().unwrap();
    assert_eq!(log.entries.len(), 2);
    let saved = save_log(&log, &opened.kept);
    for piece in ["yesterday", "bad", "8 o'clock", "(device: \"main\")", "sekonds: 4"] {
        assert!(saved.contains(piece), "{piece} is lost:\n{saved}");
    }
}

#[test]
fn what_is_no_log_is_not_saved_over() {
    let newer = format!("Log(format: {})", LOG_FORMAT + 1);
    for text in [
        "Home(format: 1, name: \"Hut\")",
        "[1]",
        "Log(entries: [",
        newer.as_str(),
        "Log(format: 1, entries: 5)",
    ] {
        assert!(!open_log("log.ron", text).may_save(), "{text}");
    }
    assert!(open_log("log.ron", "Log(format: 1)").may_save());
}
