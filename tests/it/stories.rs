//! Troubles told from the first tap to the last step, on the example homes.
//!
//! What is expected was worked out by hand from the home files; how stands beside each story.

mod cooling_and_gas;
mod drains;
mod more_house;
mod more_power;
mod more_water;
mod power;
mod water;

use std::collections::BTreeSet;
use std::path::Path;

use serde_json::Value;

/// An answer, read as a person would.
struct Story(Value);

impl Story {
    /// Asks the command line about an example home, on a day in the second year of the two-storey
    /// house: its builder's two years for pipes and wires still run, the first year's workmanship does
    /// not. `more` stands behind the spot, as typed.
    fn of(home: &str, trouble: &str, at: &str, more: &str) -> Self {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../examples").join(home);
        let mut words =
            vec!["quarterturn", "answer", folder.to_str().unwrap(), "--trouble", trouble, "--json"];
        if !at.is_empty() {
            words.extend(["--at", at]);
        }
        words.extend(more.split_whitespace());
        words.extend(["--today", "2026-11-25"]);
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let code = quarterturn::run(words, &mut out, &mut err);
        assert_eq!(code, quarterturn::DONE, "{}", String::from_utf8(err).unwrap());
        Self(serde_json::from_slice(&out).unwrap())
    }

    /// The sets, each as its devices in alphabetical order with blanks between, and who can do it.
    fn sets(&self) -> BTreeSet<(String, String)> {
        self.list("sets").iter().map(|set| (sorted(&set["close"]), text(&set["by"]))).collect()
    }

    /// True if these devices, in alphabetical order with blanks between, are one of the sets.
    fn has_set(&self, close: &str) -> bool {
        self.sets().iter().any(|(set, _)| set == close)
    }

    /// True if a device is in any set.
    fn ever_closes(&self, id: &str) -> bool {
        self.sets().iter().any(|(set, _)| set.split(' ').any(|device| device == id))
    }

    /// The first set.
    fn best(&self) -> &Value {
        &self.0["sets"][0]
    }

    /// What goes off with the set of these devices.
    fn goes_off_with(&self, close: &str) -> Vec<String> {
        let set = self.list("sets").iter().find(|set| sorted(&set["close"]) == close).unwrap();
        set["goes_off"].as_array().unwrap().iter().map(text).collect()
    }

    /// The devices that the steps go to, in order.
    fn way(&self) -> Vec<String> {
        self.list("steps")
            .iter()
            .filter_map(|step| step["component"].as_str())
            .map(str::to_owned)
            .collect()
    }

    /// All that the steps say.
    fn steps(&self) -> String {
        let texts: Vec<String> =
            self.list("steps").iter().map(|step| text(&step["text"])).collect();
        texts.join("\n")
    }

    /// How the steps are proven.
    fn proofs(&self) -> String {
        let texts: Vec<&str> =
            self.list("steps").iter().filter_map(|step| step["prove"].as_str()).collect();
        texts.join("\n")
    }

    /// The ids of the cautions, in order.
    fn cautions(&self) -> Vec<String> {
        self.list("cautions").iter().map(|caution| text(&caution["id"])).collect()
    }

    /// The words of a caution.
    fn caution(&self, id: &str) -> String {
        self.list("cautions")
            .iter()
            .find(|caution| caution["id"] == id)
            .map(|c| text(&c["text"]))
            .unwrap_or_default()
    }

    /// The suspects, most likely first.
    fn suspects(&self) -> Vec<String> {
        self.list("suspects").iter().map(|suspect| text(&suspect["component"])).collect()
    }

    fn share(&self, id: &str) -> f64 {
        let suspect = self.list("suspects").iter().find(|suspect| suspect["component"] == id);
        suspect.map_or(0.0, |suspect| suspect["share"].as_f64().unwrap())
    }

    /// The stretches that may be blocked, each as `a>b`.
    fn blocked(&self) -> BTreeSet<String> {
        let pairs = self.0["relief"]["blocked_between"].as_array().unwrap();
        pairs.iter().map(|pair| format!("{}>{}", text(&pair[0]), text(&pair[1]))).collect()
    }

    fn emerges_at(&self) -> BTreeSet<String> {
        self.0["relief"]["emerges_at"].as_array().unwrap().iter().map(text).collect()
    }

    /// The telephone numbers, in order.
    fn phones(&self) -> Vec<String> {
        self.list("call")
            .iter()
            .filter_map(|call| call["phone"].as_str())
            .map(str::to_owned)
            .collect()
    }

    fn list(&self, name: &str) -> &[Value] {
        self.0[name].as_array().unwrap()
    }
}

fn text(value: &Value) -> String {
    value.as_str().unwrap().to_owned()
}

fn sorted(list: &Value) -> String {
    let mut ids: Vec<&str> =
        list.as_array().unwrap().iter().map(|id| id.as_str().unwrap()).collect();
    ids.sort_unstable();
    ids.join(" ")
}

/// Words with blanks between, as a set.
fn words(text: &str) -> BTreeSet<String> {
    text.split_whitespace().map(str::to_owned).collect()
}

/// Sets written one a line: who, then the devices.
fn sets(lines: &str) -> BTreeSet<(String, String)> {
    let split = |line: &str| {
        line.trim().split_once(": ").map(|(who, set)| (set.to_owned(), who.to_owned()))
    };
    lines.lines().filter_map(split).collect()
}
