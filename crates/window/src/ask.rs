//! What has been asked, and what a press of a button does to it. Draws nothing.

use std::path::PathBuf;

use quarterturn_guidance::{Answer, Question, Seen, Spot, Step, Trouble};
use quarterturn_home::{Home, Lesson};

use crate::map::MapCommand;
use crate::search::Hit;
use crate::{caring, place, printing, starting};

/// What a panel wants done.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// This is the trouble.
    PickTrouble(Trouble),
    /// This is the spot.
    PickSpot(Spot),
    /// One page back.
    Back,
    /// Show only spots with these words.
    Search(String),
    /// Show this level.
    ShowLevel(String),
    /// This step is done.
    Done(StepKey),
    /// It is not done after all, nor are those after it.
    NotDone(StepKey),
    /// This device does not turn, hold or open.
    Failed(String),
    /// One cannot get to this device.
    OutOfReach(String),
    /// It works after all, or can be got to.
    Works(String),
    /// Take back the last thing that was said of the answer.
    TakeBack,
    /// Turn to this part of the answer.
    Turn(Tab),
    /// What was typed on the first page means this.
    PickHit(Hit),
    /// Open this page.
    Open(Page),
    /// Leave the page, for the first one.
    Leave,
    /// Make ready to practise.
    Practise,
    /// One practises from this space.
    PractiseFrom(String),
    /// Start the clock.
    StartDrill,
    /// The device was found.
    Found {
        /// Id of the device.
        component: String,
        /// True if one walked back to say so.
        walked_back: bool,
    },
    /// This act that brings it back is done, or is not after all.
    Restored(usize),
    /// Write to the map what was learnt about a device.
    Learn(String, Lesson),
    /// Take back what was learnt about it.
    Unlearn(String),
    /// Put this device's label right; `None` closes that.
    Relabel(Option<(String, String)>),
    /// What else the log should say.
    Note(String),
    /// Take the entry at this place out of the log.
    RemoveEntry(usize),
    /// Make a paper of the log.
    PrintLog,
    /// Something done to the map.
    Map(MapCommand),
    /// Something about papers.
    Papers(printing::Command),
    /// Something about upkeep.
    Care(caring::Command),
    /// Something about a new home, a copy, or what could not be saved.
    Start(starting::Command),
    /// Take the last change of the home back.
    Undo,
    /// Make it again.
    Redo,
    /// Whether marks may move.
    Motion(bool),
    /// This was seen there; `None` takes it back.
    Saw(String, Option<Seen>),
    /// The person is in this space.
    StandIn(String),
    /// Show these devices instead of the step's; `None` goes back to the step's.
    Show(Option<Vec<String>>),
    /// Fold the home file's problems out or in.
    FoldProblems,
    /// Show or hide the box that opens another home.
    OpenBox(bool),
    /// The path in that box.
    Path(String),
    /// Let the system's file window choose a home.
    ChooseFile,
    /// Open the home at this path.
    OpenHome(PathBuf),
    /// Switch between light and dark.
    Theme(egui::Theme),
    /// Make everything this many times as big.
    Zoom(f32),
    /// Say everything in the language with this tag.
    Speak(&'static str),
}

/// The pages beside the one that helps.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) enum Page {
    /// What is wrong, where, and what to do.
    #[default]
    Help,
    /// Practice against the clock.
    Practice,
    /// The log of troubles.
    Log,
    /// The map, to be worked on.
    Map,
    /// Papers.
    Papers,
    /// Upkeep, moving in, parties and copies.
    Care,
}

/// The parts of an answer, of which one is in sight.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) enum Tab {
    /// What to do now.
    #[default]
    Now,
    /// All the steps, and the other ways.
    Steps,
    /// What goes off.
    GoesOff,
    /// Whom to call.
    Call,
    /// How it is brought back, and what was learnt.
    After,
}

impl Tab {
    /// All of them, in the order they are shown.
    pub(crate) const ALL: [Self; 5] =
        [Self::Now, Self::Steps, Self::GoesOff, Self::Call, Self::After];

    /// The key of its name.
    pub(crate) fn key(self) -> &'static str {
        match self {
            Self::Now => "tab-now",
            Self::Steps => "tab-steps",
            Self::GoesOff => "tab-goes-off",
            Self::Call => "tab-call",
            Self::After => "tab-after",
        }
    }
}

/// Tells a step from the others, also after the answer was computed anew.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct StepKey {
    /// Id of its text.
    id: String,
    /// Id of the device it is done at.
    pub(crate) component: Option<String>,
    /// Its words.
    pub(crate) text: String,
}

impl StepKey {
    /// The key of a step.
    pub(crate) fn of(step: &Step) -> Self {
        Self { id: step.id.clone(), component: step.component.clone(), text: step.text.clone() }
    }
}

/// What was said of an answer.
#[derive(Debug, Clone, PartialEq)]
struct Said {
    failed: Vec<String>,
    out_of_reach: Vec<String>,
    seen: Vec<(String, Seen)>,
    done: Vec<StepKey>,
}

/// What has been asked so far.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Asked {
    pub(crate) trouble: Option<Trouble>,
    pub(crate) at: Option<Spot>,
    pub(crate) from: Option<String>,
    pub(crate) failed: Vec<String>,
    /// Those of `failed` that one could not get to; nothing is known of how they turn.
    pub(crate) out_of_reach: Vec<String>,
    pub(crate) seen: Vec<(String, Seen)>,
    pub(crate) done: Vec<StepKey>,
    /// What was said before, so that it can be taken back one by one.
    past: Vec<Said>,
    pub(crate) tab: Tab,
    pub(crate) search: String,
    /// The level that was asked for; `None` shows the one that matters.
    pub(crate) level: Option<String>,
    /// Devices that were asked for; `None` shows those of the step.
    pub(crate) shown: Option<Vec<String>>,
}

impl Asked {
    /// The question that has been asked, if it is complete.
    pub(crate) fn question(&self) -> Option<Question> {
        Some(Question {
            trouble: self.trouble?,
            at: self.at.clone()?,
            from: self.from.clone(),
            failed: self.failed.clone(),
            seen: self.seen.clone(),
        })
    }

    /// Changes what is asked. True if the answer has to be computed anew.
    pub(crate) fn apply(&mut self, command: Command) -> bool {
        match command {
            Command::PickTrouble(trouble) => {
                *self = Self { trouble: Some(trouble), ..Self::default() };
                return true;
            }
            Command::PickSpot(spot) => {
                self.at = Some(spot);
                self.forget_answer();
                return true;
            }
            Command::Back if self.at.is_some() => {
                self.at = None;
                self.search.clear();
                self.forget_answer();
                return true;
            }
            Command::Back => {
                *self = Self::default();
                return true;
            }
            Command::Failed(id) => {
                self.say();
                if !self.failed.contains(&id) {
                    self.failed.push(id);
                }
                self.follow();
                return true;
            }
            Command::OutOfReach(id) => {
                self.say();
                if !self.failed.contains(&id) {
                    self.failed.push(id.clone());
                }
                if !self.out_of_reach.contains(&id) {
                    self.out_of_reach.push(id);
                }
                self.follow();
                return true;
            }
            Command::Works(id) => {
                self.say();
                self.failed.retain(|failed| *failed != id);
                self.out_of_reach.retain(|far| *far != id);
                self.follow();
                return true;
            }
            Command::TakeBack => {
                let Some(said) = self.past.pop() else { return false };
                self.failed = said.failed;
                self.out_of_reach = said.out_of_reach;
                self.seen = said.seen;
                self.done = said.done;
                self.follow();
                return true;
            }
            Command::Turn(tab) => self.tab = tab,
            Command::Saw(id, seen) => {
                self.say();
                self.seen.retain(|(at, _)| *at != id);
                if let Some(seen) = seen {
                    self.seen.push((id, seen));
                }
                self.follow();
                return true;
            }
            Command::StandIn(space) => {
                self.from = Some(space);
                self.follow();
                return true;
            }
            Command::Done(step) => {
                self.say();
                self.done.push(step);
                self.follow();
            }
            Command::NotDone(step) => {
                self.say();
                if let Some(at) = self.done.iter().position(|done| *done == step) {
                    self.done.truncate(at);
                }
                self.follow();
            }
            Command::Search(words) => self.search = words,
            Command::ShowLevel(level) => self.level = Some(level),
            Command::Show(devices) => {
                self.level = None;
                self.shown = devices;
            }
            // These are about the window or the home, not about what is asked.
            Command::PickHit(_)
            | Command::Open(_)
            | Command::Leave
            | Command::Practise
            | Command::PractiseFrom(_)
            | Command::StartDrill
            | Command::Found { .. }
            | Command::Restored(_)
            | Command::Learn(..)
            | Command::Unlearn(_)
            | Command::Relabel(_)
            | Command::Note(_)
            | Command::RemoveEntry(_)
            | Command::PrintLog
            | Command::Map(_)
            | Command::Papers(_)
            | Command::Care(_)
            | Command::Undo
            | Command::Redo
            | Command::Motion(_)
            | Command::FoldProblems
            | Command::OpenBox(_)
            | Command::Path(_)
            | Command::ChooseFile
            | Command::OpenHome(_)
            | Command::Theme(_)
            | Command::Zoom(_)
            | Command::Start(_)
            | Command::Speak(_) => {}
        }
        false
    }

    /// True if something was said that can be taken back.
    pub(crate) fn can_take_back(&self) -> bool {
        !self.past.is_empty()
    }

    /// Remembers what was said so far.
    fn say(&mut self) {
        self.past.push(Said {
            failed: self.failed.clone(),
            out_of_reach: self.out_of_reach.clone(),
            seen: self.seen.clone(),
            done: self.done.clone(),
        });
    }

    fn forget_answer(&mut self) {
        self.past.clear();
        self.tab = Tab::Now;
        self.out_of_reach.clear();
        self.failed.clear();
        self.seen.clear();
        self.done.clear();
        self.follow();
    }

    /// Keeps what was done when the same answer is told in other words.
    pub(crate) fn retell(&mut self, before: &Answer, now: &Answer) {
        let past = self.past.iter_mut().flat_map(|said| &mut said.done);
        for done in self.done.iter_mut().chain(past) {
            let at = before.steps.iter().position(|step| *done == StepKey::of(step));
            if let Some(step) = at.and_then(|at| now.steps.get(at)) {
                *done = StepKey::of(step);
            }
        }
    }

    /// Lets the plan follow the steps again, and the column too.
    fn follow(&mut self) {
        self.level = None;
        self.shown = None;
    }

    /// The step to be done now.
    pub(crate) fn now(&self, answer: &Answer) -> Option<usize> {
        answer.steps.iter().position(|step| !self.done.contains(&StepKey::of(step)))
    }

    /// The devices to show: the first is where to go now.
    pub(crate) fn devices(&self, answer: &Answer) -> Vec<String> {
        if let Some(shown) = &self.shown {
            return shown.clone();
        }
        let now = self.now(answer).unwrap_or(answer.steps.len());
        let steps = answer.steps.iter().skip(now).filter_map(|step| step.component.as_ref());
        let checks = answer.next_check.iter().map(|check| &check.component);
        let relief = answer.relief.iter().flat_map(|r| r.open.iter().chain(r.rod_from.iter()));
        let mut devices = Vec::new();
        for id in steps.chain(checks).chain(relief) {
            if !devices.contains(id) {
                devices.push(id.clone());
            }
        }
        devices
    }

    /// Where to go: the device of the step, or of the next step that has one.
    pub(crate) fn goal(&self, answer: &Answer) -> Option<String> {
        if let Some(shown) = &self.shown {
            return shown.first().cloned();
        }
        answer.steps.iter().skip(self.now(answer)?).find_map(|step| step.component.clone())
    }

    /// Where the person is taken to be: at the device of the last step done, or where they said, or
    /// in the space of the spot, or where people mostly are.
    pub(crate) fn stands_at<'a>(&self, home: &'a Home) -> Option<place::Place<'a>> {
        let device = self.done.iter().rev().find_map(|step| step.component.as_deref());
        if let Some(id) = device {
            return place::of_component(home, id);
        }
        match &self.from {
            Some(space) => place::of_space(home, space),
            None => place::of_spot(home, self.at.as_ref()?)
                .or_else(|| place::of_space(home, home.usual_space.as_deref()?)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_guidance::Act;

    fn step(id: &str, component: Option<&str>) -> Step {
        Step {
            text: id.to_owned(),
            component: component.map(str::to_owned),
            seconds: None,
            practised: false,
            prove: None,
            act: Act::Close,
            id: id.to_owned(),
        }
    }

    fn answer(steps: Vec<Step>) -> Answer {
        Answer {
            trouble: "leak",
            at: vec![],
            mapped: true,
            cautions: vec![],
            steps,
            sets: vec![],
            suspects: vec![],
            next_check: None,
            relief: None,
            call: vec![],
            restore: vec![],
            choices: vec![],
        }
    }

    #[test]
    fn a_new_spot_forgets_what_was_found_out_at_the_old_one() {
        let mut asked = Asked::default();
        asked.apply(Command::PickTrouble(Trouble::Leak));
        asked.apply(Command::PickSpot(Spot::Space("kitchen".to_owned())));
        asked.apply(Command::Failed("main".to_owned()));
        asked.apply(Command::Failed("main".to_owned()));
        assert_eq!(asked.failed, ["main"]);
        asked.apply(Command::Back);
        assert_eq!(asked.trouble, Some(Trouble::Leak));
        assert_eq!((asked.at.clone(), asked.failed.len()), (None, 0));
        asked.apply(Command::Back);
        assert_eq!(asked, Asked::default());
    }

    #[test]
    fn steps_done_stay_done_when_the_answer_changes() {
        let mut asked = Asked::default();
        let first = step("dry-hands", None);
        asked.apply(Command::Done(StepKey::of(&first)));
        assert_eq!(asked.now(&answer(vec![first.clone(), step("close", Some("a"))])), Some(1));
        assert_eq!(asked.now(&answer(vec![step("close", Some("b")), first.clone()])), Some(0));
        assert_eq!(asked.now(&answer(vec![first])), None);
    }

    #[test]
    fn taking_a_step_back_takes_back_those_after_it() {
        let mut asked = Asked::default();
        let steps = [step("a", None), step("b", None), step("c", None)];
        for step in &steps {
            asked.apply(Command::Done(StepKey::of(step)));
        }
        asked.apply(Command::NotDone(StepKey::of(&steps[1])));
        assert_eq!(asked.now(&answer(steps.to_vec())), Some(1));
    }

    /// The plan leads to the main twice, though it was worked before.
    #[test]
    fn a_device_that_is_opened_again_is_gone_to_again() {
        let open = Step { act: Act::Open, ..step("open-again", Some("main")) };
        let steps = [step("close", Some("main")), step("close", Some("stop")), open];
        let answer = answer(steps.to_vec());
        let mut asked = Asked::default();
        for (step, goal) in steps.iter().zip(["main", "stop", "main"]) {
            assert_eq!(asked.goal(&answer).as_deref(), Some(goal));
            assert_eq!(asked.devices(&answer).first().map(String::as_str), Some(goal));
            asked.apply(Command::Done(StepKey::of(step)));
        }
        assert_eq!(asked.now(&answer), None);
    }

    #[test]
    fn what_was_done_stays_done_in_another_language() {
        let mut asked = Asked::default();
        let english = answer(vec![step("a", Some("x")), step("b", None)]);
        let mut spanish = english.clone();
        for step in &mut spanish.steps {
            step.text.push_str(", en espanol");
        }
        asked.apply(Command::Done(StepKey::of(&english.steps[0])));
        assert_eq!(asked.now(&spanish), Some(0));
        asked.retell(&english, &spanish);
        assert_eq!(asked.now(&spanish), Some(1));
    }

    #[test]
    fn what_was_seen_last_counts() {
        let mut asked = Asked::default();
        asked.apply(Command::Saw("outlet".to_owned(), Some(Seen::Dead)));
        asked.apply(Command::Saw("outlet".to_owned(), Some(Seen::Live)));
        assert_eq!(asked.seen, [("outlet".to_owned(), Seen::Live)]);
        asked.apply(Command::Saw("outlet".to_owned(), None));
        assert!(asked.seen.is_empty());
    }
}
