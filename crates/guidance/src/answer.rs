//! What a person is told: the one thing that screen, paper and command line show.

use serde::Serialize;

/// The answer to a trouble at a spot.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Answer {
    /// Id of the trouble.
    pub trouble: &'static str,
    /// Ids that the spot stands for.
    pub at: Vec<String>,
    /// True if the answer was computed from the map, false if it is general advice.
    pub mapped: bool,
    /// What could hurt, before anything is done.
    pub cautions: Vec<Caution>,
    /// What to do, in order.
    pub steps: Vec<Step>,
    /// The ways to cut the spot off, best first.
    pub sets: Vec<ClosingSet>,
    /// What may be the cause, most likely first.
    pub suspects: Vec<Suspect>,
    /// The check that tells most for the time it takes.
    pub next_check: Option<NextCheck>,
    /// What a blocked drain does, and what relieves it.
    pub relief: Option<Relief>,
    /// Whom to call.
    pub call: Vec<Call>,
    /// How to bring it back.
    pub restore: Vec<String>,
    /// Litres on the floor against time, for the order of the steps and for other ways.
    #[serde(skip)]
    pub choices: Vec<Choice>,
}

impl Answer {
    /// The sets worth reading to a person: the best few, and the utility's as the last resort. A
    /// program gets all of [`Answer::sets`].
    pub fn sets_to_tell(&self) -> impl Iterator<Item = &ClosingSet> {
        /// More would not be read in a hurry.
        const FEW: usize = 5;
        let last_resort = self.sets.iter().skip(FEW).find(|set| set.by == By::Utility);
        self.sets.iter().take(FEW).chain(last_resort)
    }
}

/// What a way to cut a leak off lets onto the floor.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// Ids of the devices, in the order they are worked.
    pub close: Vec<String>,
    /// True if one of them is opened again once the others hold.
    pub reopens: bool,
    /// Seconds and likely litres, from 0 to the end; straight lines between.
    pub curve: Vec<(f64, f64)>,
}

/// Signal words of ANSI Z535.4, worst first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, serde::Deserialize)]
#[serde(rename_all = "UPPERCASE")]
pub enum Signal {
    /// Will kill or seriously injure.
    Danger,
    /// Could kill or seriously injure.
    Warning,
    /// Could injure.
    Caution,
    /// Harm to things, or something to know.
    Notice,
}

/// Something that could hurt.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Caution {
    /// Id of the text; its source stands in `assets/guidance`.
    pub id: String,
    /// How bad.
    pub signal: Signal,
    /// The words.
    pub text: String,
}

/// One act.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// The words.
    pub text: String,
    /// The device it is done at.
    pub component: Option<String>,
    /// How long it takes, with the walk, in seconds.
    pub seconds: Option<f64>,
    /// True if `seconds` are what this household measured when it practised.
    #[serde(skip)]
    pub practised: bool,
    /// How to see that it worked.
    pub prove: Option<String>,
    /// What kind of act it is; the safety rules look at this.
    #[serde(skip)]
    pub act: Act,
    /// Id of the text; its source stands in `assets/guidance`.
    #[serde(skip)]
    pub id: String,
}

/// What kind of act a step is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Act {
    /// Get out.
    Leave,
    /// Telephone.
    Call,
    /// Shut a valve.
    Close,
    /// Open a valve again.
    Open,
    /// Switch off a breaker or disconnect.
    SwitchOff,
    /// Reset a breaker or GFCI, once.
    Reset,
    /// Unplug.
    Unplug,
    /// Loosen the cap of a cleanout.
    OpenCap,
    /// Stop using something.
    StopUse,
    /// Look, listen or test.
    Look,
    /// Anything else that touches no device.
    Advice,
}

/// A set of devices that cuts the spot off.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ClosingSet {
    /// Ids of the devices, in the order to work them.
    pub close: Vec<String>,
    /// Who can do all of it.
    pub by: By,
    /// Walking and working, in seconds.
    pub seconds: f64,
    /// Litres on the floor by then, for water.
    pub litres: Option<f64>,
    /// Ids of what goes off, what must be named first in front.
    pub goes_off: Vec<String>,
    /// Tools it takes.
    pub needs: Vec<String>,
    /// Chance that all of them work and hold, from 0 to 1.
    pub confidence: f64,
}

/// Who can work a set of devices.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum By {
    /// Anyone in the house.
    Anyone,
    /// A licensed person is needed.
    Licensed,
    /// The utility is needed.
    Utility,
}

/// A possible cause.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Suspect {
    /// Its id.
    pub component: String,
    /// Its share of the blame, from 0 to 1; all shares make 1.
    pub share: f64,
}

/// A check worth making.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NextCheck {
    /// Where to look.
    pub component: String,
    /// What to look for.
    pub look_for: String,
    /// How long it takes, with the walk, in seconds.
    pub seconds: f64,
}

/// A blocked drain.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Relief {
    /// The cleanout to open, if opening one helps.
    pub open: Option<String>,
    /// The cleanout to rod from.
    pub rod_from: Option<String>,
    /// Where it comes out next.
    pub emerges_at: Vec<String>,
    /// The stretches that may be blocked, most likely first.
    pub blocked_between: Vec<(String, String)>,
}

/// Someone to call.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Call {
    /// Id of the contact, if the home has one.
    pub contact: Option<String>,
    /// Who.
    pub name: String,
    /// The number, if the home has one.
    pub phone: Option<String>,
    /// Why.
    pub why: String,
}
