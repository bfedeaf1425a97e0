//! The command line as others run it: exit codes, JSON, and what it says of bad input.

use std::path::{Path, PathBuf};

use quarterturn::{ATTENTION, BAD_INPUT, DONE};
use serde_json::Value;

struct Run {
    code: u8,
    out: String,
    err: String,
}

fn run(arguments: &[&str]) -> Run {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let all = std::iter::once("quarterturn").chain(arguments.iter().copied());
    let code = quarterturn::run(all, &mut out, &mut err);
    Run { code, out: String::from_utf8(out).unwrap(), err: String::from_utf8(err).unwrap() }
}

fn example(name: &str) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../examples").join(name);
    folder.to_str().unwrap().to_owned()
}

/// A folder of its own with a `home.ron`, gone when dropped.
struct Folder(PathBuf);

impl Folder {
    fn with(name: &str, text: &str) -> Self {
        let path =
            std::env::temp_dir().join(format!("quarterturn-cli-{}-{name}", std::process::id()));
        std::fs::create_dir_all(&path).unwrap();
        std::io::Write::write_all(
            &mut std::fs::File::create(path.join("home.ron")).unwrap(),
            text.as_bytes(),
        )
        .unwrap();
        Self(path)
    }

    fn path(&self) -> &str {
        self.0.to_str().unwrap()
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        std::fs::remove_dir_all(&self.0).unwrap();
    }
}

const TWO_ROOMS: &str = r#"#![enable(implicit_some)]
Home(
    format: 1,
    name: "Two rooms",
    units: Us,
    levels: [(id: "ground", name: "Ground floor", elevation_m: 0.0)],
    spaces: [
        (id: "kitchen", name: "Kitchen", level: "ground"),
        (id: "hall",    name: "Hall",    level: "ground"),
    ],
    components: [
        (id: "street",     kind: WaterMain,   name: "Street main",          owner: "utility"),
        (id: "meter",      kind: WaterMeter,  name: "Water meter",          owner: "utility", boundary: true),
        (id: "main",       kind: IsolatingValve, name: "House main shutoff", tag: "W1", space: "hall", at: (0.4, 0.2, 1.1),
            operates: (handle: Lever, closes: QuarterTurn, state: Works, exercised: "2026-05-02")),
        (id: "stop-cold",  kind: IsolatingValve, name: "Cold stop under the sink", tag: "W2", space: "kitchen", at: (2.1, 3.0, 0.4)),
        (id: "hose-cold",  kind: SupplyHose,  name: "Cold hose to the tap", space: "kitchen"),
        (id: "tap",        kind: Tap,         name: "Kitchen tap",          space: "kitchen"),
    ],
    connections: [
        (from: "street", to: "meter",     carries: ColdWater),
        (from: "meter",  to: "main",      carries: ColdWater, length_m: 9.0, size: "3/4 in", material: Copper),
        (from: "main",   to: "stop-cold", carries: ColdWater),
        (from: "stop-cold", to: "hose-cold", carries: ColdWater),
        (from: "hose-cold", to: "tap",    carries: ColdWater),
    ],
    contacts: [(id: "utility", name: "Water utility, emergencies", phone: "555-0100")],
)
"#;

/// The home file of the design, word for word. Either valve alone will do, and only the tap goes
/// off with each; the main is known to work and turns a quarter, so it comes first.
#[test]
fn the_home_of_the_design_is_answered() {
    let home = Folder::with("design", TWO_ROOMS);
    let run = run(&["answer", home.path(), "--trouble", "leak", "--at", "tap", "--json"]);
    assert_eq!((run.code, run.err.as_str()), (DONE, ""));
    let answer: Value = serde_json::from_str(&run.out).unwrap();
    let sets: Vec<&Value> =
        answer["sets"].as_array().unwrap().iter().map(|s| &s["close"]).collect();
    assert_eq!(sets, [&serde_json::json!(["main"]), &serde_json::json!(["stop-cold"])]);
    assert_eq!(answer["mapped"], true);
    assert_eq!(answer["call"][0]["phone"], Value::Null, "no plumber is in the home file");
    let utility = answer["call"].as_array().unwrap().iter().find(|c| c["contact"] == "utility");
    assert_eq!(utility.unwrap()["phone"], "555-0100");
}

#[test]
fn a_leak_in_the_main_itself_is_the_utilitys() {
    let home = Folder::with("main", TWO_ROOMS);
    let run = run(&["answer", home.path(), "--trouble", "leak", "--at", "main", "--json"]);
    let answer: Value = serde_json::from_str(&run.out).unwrap();
    assert_eq!(answer["sets"], serde_json::json!([]));
    assert!(answer["steps"][0]["component"].is_null());
}

#[test]
fn the_json_has_the_keys_of_the_design_and_no_others() {
    let keys =
        |value: &Value| -> Vec<String> { value.as_object().unwrap().keys().cloned().collect() };
    let run = run(&[
        "answer",
        &example("two-storey"),
        "--trouble",
        "sewage-rising",
        "--at",
        "laundry-drain",
        "--json",
    ]);
    let answer: Value = serde_json::from_str(&run.out).unwrap();
    let sorted = |mut list: Vec<&'static str>| {
        list.sort_unstable();
        list
    };
    assert_eq!(
        keys(&answer),
        sorted(vec![
            "trouble",
            "at",
            "mapped",
            "cautions",
            "steps",
            "sets",
            "suspects",
            "next_check",
            "relief",
            "call",
            "restore"
        ])
    );
    assert_eq!(keys(&answer["cautions"][0]), ["id", "signal", "text"]);
    assert_eq!(keys(&answer["steps"][0]), sorted(vec!["text", "component", "seconds", "prove"]));
    assert_eq!(
        keys(&answer["relief"]),
        sorted(vec!["open", "rod_from", "emerges_at", "blocked_between"])
    );
    assert_eq!(keys(&answer["call"][0]), sorted(vec!["contact", "name", "phone", "why"]));
    assert_eq!(keys(&answer["next_check"]), sorted(vec!["component", "look_for", "seconds"]));
}

#[test]
fn a_mistyped_spot_is_met_with_the_nearest_ids() {
    let home = Folder::with("typo", TWO_ROOMS);
    let typo = run(&["answer", home.path(), "--trouble", "leak", "--at", "stop-codl"]);
    assert_eq!(typo.code, BAD_INPUT);
    assert!(typo.err.contains("stop-cold"), "{}", typo.err);
    assert!(typo.out.is_empty());
}

#[test]
fn everything_wrong_with_a_question_is_told_at_once() {
    let home = Folder::with("wrong", TWO_ROOMS);
    let wrong = run(&[
        "answer",
        home.path(),
        "--trouble",
        "leek",
        "--at",
        "tapp",
        "--from",
        "hal",
        "--failed",
        "mian",
        "--seen",
        "tap=purple",
    ]);
    assert_eq!(wrong.code, BAD_INPUT);
    for hint in ["leak", "tap", "hall", "main", "backs-up"] {
        assert!(wrong.err.contains(hint), "{hint}: {}", wrong.err);
    }
}

#[test]
fn a_home_broken_in_part_is_answered_and_said_to_need_attention() {
    let text = TWO_ROOMS.replace("kind: Tap,", "kind: Tapp,");
    let home = Folder::with("part", &text);
    let answered =
        run(&["answer", home.path(), "--trouble", "leak", "--at", "hose-cold", "--json"]);
    assert_eq!(answered.code, ATTENTION);
    assert!(answered.err.contains("home.ron:18:34"), "{}", answered.err);
    assert!(answered.err.contains("Tap"), "{}", answered.err);
    let answer: Value = serde_json::from_str(&answered.out).unwrap();
    assert_eq!(answer["sets"].as_array().unwrap().len(), 2);
}

#[test]
fn a_file_that_is_no_home_is_bad_input_with_its_place() {
    let home = Folder::with("broken", "Home(\n  format: 1,\n  name: \"x\",\n  components: [\n");
    for arguments in [
        vec!["check", home.path()],
        vec!["answer", home.path(), "--trouble", "leak", "--at", "tap"],
        vec![home.path()],
    ] {
        let broken = run(&arguments);
        assert_eq!(broken.code, BAD_INPUT);
        let said = broken.out + &broken.err;
        assert!(said.contains("home.ron:"), "{said}");
    }
    let absent = run(&["check", "no-such-folder"]);
    assert_eq!(absent.code, BAD_INPUT);
    assert!(absent.err.contains("no-such-folder"), "{}", absent.err);
}

#[test]
fn check_tells_what_is_missing_and_that_nothing_is() {
    let sound = run(&["check", &example("two-storey")]);
    assert_eq!((sound.code, sound.err.as_str()), (DONE, ""), "{}", sound.out);
    let old = run(&["check", &example("old-house"), "--json"]);
    assert_eq!(old.code, ATTENTION);
    let found: Value = serde_json::from_str(&old.out).unwrap();
    let sorts: Vec<&str> = found["findings"]
        .as_array()
        .unwrap()
        .iter()
        .filter_map(|f| f["finding"].as_str())
        .collect();
    for sort in ["no-isolation", "one-line-of-defence", "no-breaker"] {
        assert!(sorts.contains(&sort), "{sorts:?}");
    }
}

#[test]
fn troubles_lists_every_id_and_each_has_its_words() {
    let listed = run(&["troubles"]);
    assert_eq!(listed.code, DONE);
    for trouble in quarterturn_guidance::Trouble::ALL {
        assert!(listed.out.lines().any(|l| l.split_whitespace().next() == Some(trouble.id())));
    }
    assert!(!listed.out.contains('['), "{}", listed.out);
}

#[test]
fn help_goes_to_the_reader_and_a_wrong_option_is_bad_input() {
    let help = run(&["--help"]);
    assert_eq!((help.code, help.err.as_str()), (DONE, ""));
    assert!(help.out.contains("answer"));
    let wrong = run(&["answer", "--no-such-option"]);
    assert_eq!(wrong.code, BAD_INPUT);
    assert!(wrong.out.is_empty());
}

#[test]
fn leaving_asks_for_no_spot_and_the_others_do() {
    let home = Folder::with("leave", TWO_ROOMS);
    let gas = run(&["answer", home.path(), "--trouble", "gas-smell"]);
    assert_eq!(gas.code, DONE);
    let leak = run(&["answer", home.path(), "--trouble", "leak"]);
    assert_eq!(leak.code, BAD_INPUT);
    assert!(leak.err.contains("--at"), "{}", leak.err);
}

#[test]
fn the_same_question_gives_the_same_bytes() {
    let ask = || {
        run(&["answer", &example("two-storey"), "--trouble", "leak", "--at", "kitchen", "--json"])
            .out
    };
    assert_eq!(ask(), ask());
}

#[test]
fn every_command_speaks_the_language_asked_for() {
    let troubles = run(&["troubles", "--language", "es"]);
    assert_eq!(troubles.code, DONE);
    assert!(troubles.out.contains("Huele a gas"), "{}", troubles.out);
    assert!(troubles.out.contains("gas-smell"), "ids are the same in every language");
    let checked = run(&["check", &example("old-house"), "--language", "es-MX"]);
    assert_eq!(checked.code, ATTENTION);
    assert!(checked.out.contains("Entre esto y la entrada"), "{}", checked.out);
    let home = Folder::with("spanish", TWO_ROOMS);
    let ask = ["answer", home.path(), "--trouble", "gas-smell"];
    let answered = run(&[&ask[..], &["--language", "es"]].concat());
    assert!(answered.out.contains("PELIGRO"), "{}", answered.out);
    assert!(run(&ask).out.contains("DANGER"));
}

#[test]
fn the_home_says_the_language_if_nobody_else_does() {
    let text = TWO_ROOMS.replace("units: Us,", "units: Us, language: \"es\",");
    let home = Folder::with("casa", &text.replace("kind: Tap,", "kind: Tapp,"));
    let ask = ["answer", home.path(), "--trouble", "leak", "--at", "hose-cold"];
    let own = run(&ask);
    assert_eq!(own.code, ATTENTION);
    assert!(own.out.contains("Cierre: House main shutoff (W1)"), "{}", own.out);
    assert!(own.err.contains("no existe el tipo Tapp"), "{}", own.err);
    assert!(run(&["check", home.path()]).out.contains("no existe el tipo Tapp"));
    let english = run(&[&ask[..], &["--language", "en"]].concat());
    assert!(english.out.contains("Close: House main shutoff (W1)"), "{}", english.out);
}

/// A signal word runs into no text, however long it is.
#[test]
fn signal_words_stand_apart_from_what_they_head() {
    let asked = ["answer", &example("two-storey"), "--trouble", "breaker-trips", "--at", "kitchen"];
    let answered = run(&[&asked[..], &["--language", "es"]].concat());
    let text = |word: &str| {
        let line = answered.out.lines().find(|line| line.starts_with(word)).unwrap();
        line.strip_prefix(word).unwrap().to_owned()
    };
    let [danger, warning] = ["PELIGRO", "ADVERTENCIA"].map(text);
    assert!(warning.starts_with("  ") && danger.starts_with("      "), "{}", answered.out);
}

#[test]
fn a_language_that_there_is_not_is_bad_input() {
    let home = Folder::with("language", TWO_ROOMS);
    for arguments in [
        vec!["troubles", "--language", "tlh"],
        vec!["check", home.path(), "--language", "tlh"],
        vec!["answer", home.path(), "--trouble", "fire", "--language", "tlh"],
        vec!["--language", "tlh", home.path()],
    ] {
        let unknown = run(&arguments);
        assert_eq!((unknown.code, unknown.out.as_str()), (BAD_INPUT, ""), "{arguments:?}");
        for part in ["tlh", "en (English)", "es (Espa\u{f1}ol)"] {
            assert!(unknown.err.contains(part), "{part}: {}", unknown.err);
        }
    }
}
