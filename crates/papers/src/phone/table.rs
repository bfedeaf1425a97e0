//! All the answers as tables of whole numbers, each text and each step in them once.
//!
//! An answer is a row of numbers of other rows; two nodes with the same answer that lead to the same
//! nodes are one. -1 stands for nothing. `assets/phone/page.js` reads it, and so do the tests, which
//! hold it against the answers it was made from.

mod written;

use std::collections::BTreeMap;

use quarterturn_guidance::{
    Act, Answer, By, Call, Catalogue, Caution, ClosingSet, Signal, Spot, Step, Trouble, count, fill,
};
use quarterturn_home::{Component, Home};

use super::amounts::takes;
use super::branches::{Asked, Node, leaves_first};
use super::{dial, observations};

/// Nothing.
const NONE: i32 = -1;
/// Other ways that are told.
const WAYS: usize = 5;
/// Causes that are told.
const SUSPECTS: usize = 6;

/// Rows, each once, numbered in the order in which they came.
#[derive(Debug)]
struct Rows<T> {
    list: Vec<T>,
    numbers: BTreeMap<T, i32>,
}

impl<T> Default for Rows<T> {
    fn default() -> Self {
        Self { list: Vec::new(), numbers: BTreeMap::new() }
    }
}

impl<T: Ord + Clone> Rows<T> {
    fn number(&mut self, row: T) -> i32 {
        if let Some(&number) = self.numbers.get(&row) {
            return number;
        }
        let number = as_number(self.list.len());
        self.list.push(row.clone());
        self.numbers.insert(row, number);
        number
    }
}

/// What the page knows.
#[derive(Debug)]
pub(super) struct Tables<'a> {
    home: &'a Home,
    catalogues: &'a [Catalogue],
    parts: BTreeMap<&'a str, i32>,
    /// A text in each language.
    words: Rows<Vec<String>>,
    lists: Rows<Vec<i32>>,
    cautions: Rows<[i32; 2]>,
    steps: Rows<[i32; 5]>,
    calls: Rows<[i32; 5]>,
    sets: Rows<[i32; 5]>,
    checks: Rows<[i32; 3]>,
    answers: Rows<[i32; 10]>,
    nodes: Rows<[i32; 4]>,
    /// For each trouble its spots: what kind, which, the node, whether it is in sight.
    spots: BTreeMap<Trouble, Vec<[i32; 4]>>,
}

impl<'a> Tables<'a> {
    pub(super) fn new(home: &'a Home, catalogues: &'a [Catalogue]) -> Self {
        let parts = (0..).zip(&home.components).map(|(n, c)| (c.id.as_str(), n)).collect();
        Self {
            home,
            catalogues,
            parts,
            words: Rows::default(),
            lists: Rows::default(),
            cautions: Rows::default(),
            steps: Rows::default(),
            calls: Rows::default(),
            sets: Rows::default(),
            checks: Rows::default(),
            answers: Rows::default(),
            nodes: Rows::default(),
            spots: BTreeMap::new(),
        }
    }

    /// Takes in a trouble at a spot with all that may come of it.
    pub(super) fn take(&mut self, asked: &Asked) {
        let mut numbers = vec![NONE; asked.nodes.len()];
        let number = |numbers: &[i32], at: usize| numbers.get(at).copied().unwrap_or(NONE);
        for at in leaves_first(asked) {
            let Some(node) = asked.nodes.get(at) else { continue };
            let answer = self.answer(node);
            let refused: Vec<i32> = node
                .refused
                .iter()
                .flat_map(|&(step, there)| [as_number(step), number(&numbers, there)])
                .collect();
            let no_help = node.no_help.map_or(NONE, |there| number(&numbers, there));
            let check = node.answers.first().and_then(|a| a.next_check.as_ref());
            let component = check.and_then(|check| self.home.component(&check.component));
            let mut shown = Vec::new();
            for &(seen, there) in &node.shown {
                let key = observations::key(asked.trouble, component, seen);
                shown.extend([self.say(|words| words.text(key)), number(&numbers, there)]);
            }
            let row = [answer, self.lists.number(refused), no_help, self.lists.number(shown)];
            let found = self.nodes.number(row);
            if let Some(slot) = numbers.get_mut(at) {
                *slot = found;
            }
        }
        let root = number(&numbers, 0);
        let spot = match &asked.spot {
            Spot::Home | Spot::Connection(..) => [2, NONE, root, 1],
            Spot::Space(id) => {
                let at = self.home.spaces.iter().position(|s| s.id == *id);
                [1, at.map_or(NONE, as_number), root, 1]
            }
            Spot::Component(id) => {
                let in_sight = self
                    .home
                    .component(id)
                    .is_some_and(|c| c.kind.is_served() || c.kind.is_drain_opening());
                [0, self.part(id), root, i32::from(in_sight)]
            }
        };
        self.spots.entry(asked.trouble).or_default().push(spot);
    }

    /// A text in every language.
    fn say(&mut self, text: impl Fn(&Catalogue) -> String) -> i32 {
        let texts = self.catalogues.iter().map(text).collect();
        self.words.number(texts)
    }

    fn part(&self, id: &str) -> i32 {
        self.parts.get(id).copied().unwrap_or(NONE)
    }

    /// The answer of a node in all languages as one row.
    fn answer(&mut self, node: &Node) -> i32 {
        let Some(first) = node.answers.first() else { return NONE };
        // A sentence in another language is better than one in the wrong place.
        let all: Vec<&Answer> = node
            .answers
            .iter()
            .map(|answer| if is_alike(first, answer) { answer } else { first })
            .collect();
        let cautions = (0..first.cautions.len()).map(|at| self.caution(&all, at)).collect();
        let steps = (0..first.steps.len()).map(|at| self.step(&all, at)).collect();
        let calls = (0..first.call.len()).map(|at| self.call(&all, at)).collect();
        let restore = (0..first.restore.len())
            .map(|at| self.each(&all, |a| a.restore.get(at).cloned()))
            .collect();
        let ways: Vec<&ClosingSet> = first.sets_to_tell().skip(1).take(WAYS).collect();
        let sets = ways.into_iter().map(|set| self.set(set)).collect();
        let suspects = first
            .suspects
            .iter()
            .take(SUSPECTS)
            .flat_map(|suspect| {
                let percent = (suspect.share * 100.0).round();
                let said =
                    self.say(|words| words.fill("phone-percent", &[count("percent", percent)]));
                [self.part(&suspect.component), said]
            })
            .collect();
        let check = match &first.next_check {
            None => NONE,
            Some(check) => {
                let look = self.each(&all, |a| a.next_check.as_ref().map(|c| c.look_for.clone()));
                let home = self.home;
                let time = self.say(|words| takes(home, words, check.seconds, None));
                self.checks.number([self.part(&check.component), look, time])
            }
        };
        let relief = self.relief(first);
        let goes_off = self.goes_off(first);
        let row = [
            i32::from(first.mapped),
            self.lists.number(cautions),
            self.lists.number(steps),
            self.lists.number(calls),
            self.lists.number(restore),
            self.lists.number(sets),
            self.lists.number(suspects),
            check,
            self.lists.number(relief),
            self.lists.number(goes_off),
        ];
        self.answers.number(row)
    }

    /// A text of an answer in each language.
    fn each(&mut self, all: &[&Answer], text: impl Fn(&Answer) -> Option<String>) -> i32 {
        let texts = all.iter().map(|answer| text(answer).unwrap_or_default()).collect();
        self.words.number(texts)
    }

    fn caution(&mut self, all: &[&Answer], at: usize) -> i32 {
        let caution = |a: &Answer| a.cautions.get(at).map(|c: &Caution| c.text.clone());
        let signal = all.first().and_then(|a| a.cautions.get(at)).map_or(3, |c| match c.signal {
            Signal::Danger => 0,
            Signal::Warning => 1,
            Signal::Caution => 2,
            Signal::Notice => 3,
        });
        let word = self.each(all, caution);
        self.cautions.number([signal, word])
    }

    fn step(&mut self, all: &[&Answer], at: usize) -> i32 {
        let Some((answer, step)) = all.first().and_then(|a| Some((*a, a.steps.get(at)?))) else {
            return NONE;
        };
        let text = self.each(all, |a| a.steps.get(at).map(|s: &Step| s.text.clone()));
        let prove = match &step.prove {
            None => NONE,
            Some(_) => self.each(all, |a| a.steps.get(at).and_then(|s| s.prove.clone())),
        };
        let set = answer
            .sets
            .first()
            .filter(|set| step.component.iter().any(|id| set.close.contains(id)));
        let (home, litres) = (self.home, set.and_then(|set| set.litres));
        let time = step
            .seconds
            .map_or(NONE, |seconds| self.say(|words| takes(home, words, seconds, litres)));
        let act = match step.act {
            Act::Close | Act::Open => 1,
            Act::SwitchOff => 2,
            Act::Reset => 3,
            Act::OpenCap => 4,
            Act::Call => 5,
            Act::Leave | Act::Unplug | Act::StopUse | Act::Look | Act::Advice => 0,
        };
        let part = step.component.as_ref().map_or(NONE, |id| self.part(id));
        self.steps.number([text, prove, part, time, act])
    }

    fn call(&mut self, all: &[&Answer], at: usize) -> i32 {
        let Some(call) = all.first().and_then(|a| a.call.get(at)) else { return NONE };
        let name = self.each(all, |a| a.call.get(at).map(|c: &Call| c.name.clone()));
        let why = self.each(all, |a| a.call.get(at).map(|c: &Call| c.why.clone()));
        let own = |tables: &mut Self, text: &str| tables.say(|_| text.to_owned());
        let phone = call.phone.as_ref().map_or(NONE, |phone| own(self, phone));
        let tel = call.phone.as_deref().and_then(dial::tel);
        let tel = tel.map_or(NONE, |tel| own(self, &tel));
        // The reason that the answer gives to whoever has no other.
        let besides = self.catalogues.first().is_some_and(|w| w.text("why-utility") == call.why);
        self.calls.number([name, phone, tel, why, i32::from(besides)])
    }

    fn set(&mut self, set: &ClosingSet) -> i32 {
        let home = self.home;
        let parts = set.close.iter().map(|id| self.part(id)).collect();
        let time = self.say(|words| takes(home, words, set.seconds, set.litres));
        let by = match set.by {
            By::Anyone => NONE,
            By::Licensed => self.say(|words| words.text("phone-by-licensed")),
            By::Utility => self.say(|words| words.text("phone-by-utility")),
        };
        let names = self.names(&set.goes_off);
        let off = if names.is_empty() {
            NONE
        } else {
            self.say(|words| {
                words.fill("phone-goes-off-list", &[fill("devices", &words.list(&names))])
            })
        };
        let needs = if set.needs.is_empty() {
            NONE
        } else {
            self.say(|words| words.fill("phone-tool", &[fill("tool", &words.list(&set.needs))]))
        };
        self.sets.number([self.lists.number(parts), time, by, off, needs])
    }

    fn names(&self, ids: &[String]) -> Vec<String> {
        let name = |id: &String| self.home.component(id).map_or(id, |c| &c.name).clone();
        ids.iter().map(name).collect()
    }

    /// What goes off with the first set, what matters most first; not if a step tells it already.
    fn goes_off(&mut self, answer: &Answer) -> Vec<i32> {
        let told = answer.steps.iter().any(|step| step.id == "step-goes-off");
        let Some(set) = answer.sets.first().filter(|_| !told) else { return Vec::new() };
        let (critical, rest): (Vec<String>, Vec<String>) = set
            .goes_off
            .iter()
            .cloned()
            .partition(|id| self.home.component(id).is_some_and(Component::is_critical));
        [critical, rest]
            .into_iter()
            .filter(|ids| !ids.is_empty())
            .map(|ids| {
                let names = self.names(&ids);
                self.say(|words| words.list(&names))
            })
            .collect()
    }

    fn relief(&mut self, answer: &Answer) -> Vec<i32> {
        let Some(relief) = &answer.relief else { return Vec::new() };
        let home = self.home;
        let name = |id: &String| home.component(id).map_or(id.clone(), |c| c.name.clone());
        let mut lines = Vec::new();
        for (key, cap) in
            [("phone-relief-open", &relief.open), ("phone-relief-rod", &relief.rod_from)]
        {
            if let Some(id) = cap {
                lines.push(self.say(|words| words.fill(key, &[fill("device", &name(id))])));
            }
        }
        if !relief.emerges_at.is_empty() {
            let names: Vec<String> = relief.emerges_at.iter().map(name).collect();
            lines.push(self.say(|words| {
                words.fill("phone-relief-emerges", &[fill("devices", &words.list(&names))])
            }));
        }
        for (from, to) in &relief.blocked_between {
            let (from, to) = (name(from), name(to));
            lines.push(self.say(|words| {
                words.fill("phone-relief-between", &[fill("from", &from), fill("to", &to)])
            }));
        }
        lines
    }
}

/// The number to call when people are in danger, if the home has one. None is ever invented.
pub(super) fn emergency_phone(home: &Home) -> Option<&str> {
    let contact = home.contacts.iter().find(|c| c.role == Some(quarterturn_home::Role::Emergency));
    home.emergency_phone.as_deref().or_else(|| contact?.phone.as_deref())
}

/// What one tells on the telephone of where one is: the address, or else what the home is called.
pub(super) fn place_to_tell(home: &Home) -> &str {
    let address = home.address.as_deref().map(str::trim).filter(|address| !address.is_empty());
    address.unwrap_or(&home.name)
}

/// True if two answers differ in their words at most.
fn is_alike(a: &Answer, b: &Answer) -> bool {
    let steps = |a: &Answer| -> Vec<(String, Option<String>, bool)> {
        a.steps.iter().map(|s| (s.id.clone(), s.component.clone(), s.prove.is_some())).collect()
    };
    let cautions = |a: &Answer| -> Vec<(String, Signal)> {
        a.cautions.iter().map(|c| (c.id.clone(), c.signal)).collect()
    };
    let calls = |a: &Answer| -> Vec<(Option<String>, Option<String>)> {
        a.call.iter().map(|c| (c.contact.clone(), c.phone.clone())).collect()
    };
    let check = |a: &Answer| a.next_check.as_ref().map(|c| c.component.clone());
    steps(a) == steps(b)
        && cautions(a) == cautions(b)
        && calls(a) == calls(b)
        && a.restore.len() == b.restore.len()
        && check(a) == check(b)
        && a.relief == b.relief
        && a.suspects == b.suspects
}

fn as_number(n: usize) -> i32 {
    i32::try_from(n).unwrap_or(i32::MAX)
}
