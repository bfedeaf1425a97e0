//! Every problem that a home file can have, with its place.
//!
//! The texts below are marked: `⟦!key⟧` stands before the place of an error, `⟦?key⟧` before that of a
//! warning. The marks are taken out before the file is opened.

#![expect(clippy::unwrap_used, reason = "a test")]

mod fields;
mod notation;
mod references;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource};
use quarterturn_home::{
    CannotEdit, DeviceState, Edit, Kind, Opened, OperableBy, Problem, Severity, open, save,
};

/// Opens a marked text, compares every problem with its mark, and gives back what was opened.
#[track_caller]
fn check(marked: &str) -> Opened {
    let mut text = String::new();
    let mut expected = Vec::new();
    let mut rest = marked;
    while let Some((before, after)) = rest.split_once('⟦') {
        text.push_str(before);
        let (mark, after) = after.split_once('⟧').unwrap();
        let line = text.matches('\n').count() + 1;
        let last = text.rsplit('\n').next().unwrap();
        let column = last.chars().filter(|c| *c != '\u{feff}').count() + 1;
        expected.push(format!("{line}:{column} {mark}"));
        rest = after;
    }
    text.push_str(rest);

    let opened = open("home.ron", &text);
    let told: Vec<String> = opened.problems.iter().map(told).collect();
    assert_eq!(told, expected, "{:#?}\n{text}", opened.problems);
    for problem in &opened.problems {
        assert_eq!(problem.file, "home.ron");
        has_words(problem);
    }
    if let Some(home) = &opened.home {
        saving_loses_nothing(&opened, &save(home, &opened.kept));
    }
    opened
}

fn told(problem: &Problem) -> String {
    let mark = if problem.severity == Severity::Error { '!' } else { '?' };
    format!("{}:{} {mark}{}", problem.line, problem.column, problem.key)
}

/// The saved text says the same of the home, has the same problems, and is saved as it is.
#[track_caller]
fn saving_loses_nothing(opened: &Opened, saved: &str) {
    let again = open("home.ron", saved);
    let mut home = opened.home.clone().unwrap();
    home.format = 1;
    assert_eq!(again.home.as_ref(), Some(&home), "{saved}");
    assert_eq!(save(again.home.as_ref().unwrap(), &again.kept), saved);
    // These are put right by writing the file anew.
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
    let keys = |opened: &Opened| {
        let keys = opened.problems.iter().map(|p| p.key).filter(|key| !repaired.contains(key));
        let mut keys: Vec<&str> = keys.collect();
        keys.sort_unstable();
        keys
    };
    assert_eq!(keys(&again), keys(opened), "{saved}");
}

/// The catalogue has a cause and a remedy for the problem, and the problem fills all their places.
#[track_caller]
fn has_words(problem: &Problem) {
    let words = include_str!("../../../../assets/text/en/problems.ftl").to_owned();
    let mut bundle = FluentBundle::new(vec!["en".parse().unwrap()]);
    bundle.add_resource(FluentResource::try_new(words).unwrap()).unwrap();
    let mut args = FluentArgs::new();
    for (name, value) in &problem.args {
        args.set(*name, value.clone());
    }
    for id in [format!("problem-{}", problem.key), format!("problem-{}-remedy", problem.key)] {
        let message = bundle.get_message(&id).and_then(|m| m.value()).unwrap();
        let mut errors = Vec::new();
        let text = bundle.format_pattern(message, Some(&args), &mut errors);
        assert!(errors.is_empty() && !text.is_empty(), "{id}: {errors:?}");
    }
}

fn arg<'p>(problem: &'p Problem, name: &str) -> &'p str {
    problem.args.iter().find(|(n, _)| *n == name).map(|(_, value)| value.as_str()).unwrap()
}

fn arg_or<'p>(problem: &'p Problem, name: &str) -> &'p str {
    problem.args.iter().find(|(n, _)| *n == name).map_or("", |(_, value)| value)
}

/// A home with these components and connections, written after five lines of others.
fn home(components: &str, connections: &str) -> String {
    format!(
        r#"#![enable(implicit_some)]
Home(format: 1, name: "Test",
    levels: [(id: "ground", name: "Ground")],
    spaces: [(id: "hall", name: "Hall", level: "ground")],
    contacts: [(id: "utility", name: "Utility")],
    components: [
        (id: "street", kind: WaterMain, name: "Street"),
        (id: "pipe", kind: Pipe, name: "Pipe"),
        (id: "tap", kind: Tap, name: "Tap"),
        {components}
    ],
    connections: [{connections}],
)"#
    )
}

/// A home of one component, with more fields.
fn home_with(fields: &str) -> String {
    format!(
        "Home(format: 1, name: \"x\", {fields}\n components: [(id: \"a\", kind: Tap, name: \"A\")])"
    )
}
