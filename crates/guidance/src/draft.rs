//! What a trouble's own module puts together, before the safety rules.

use quarterturn_home::{Net, Role};

use crate::catalogue::{Fill, fill};
use crate::context::Context;
use crate::isolation::{Way, rounded};
use crate::{Act, Caution, Choice, NextCheck, Relief, Spot, Step, Suspect, sources};

/// An answer in the making. Only [`crate::compose`] makes an [`crate::Answer`] of it.
#[derive(Debug, Default)]
pub(crate) struct Draft {
    pub(crate) mapped: bool,
    pub(crate) cautions: Vec<Caution>,
    pub(crate) steps: Vec<DraftStep>,
    pub(crate) ways: Vec<Way>,
    /// The way that the steps work; it need not be among `ways`.
    pub(crate) used: Option<Way>,
    pub(crate) choices: Vec<Choice>,
    pub(crate) net: Option<Net>,
    pub(crate) suspects: Vec<Suspect>,
    pub(crate) next_check: Option<NextCheck>,
    pub(crate) relief: Option<Relief>,
    pub(crate) calls: Vec<DraftCall>,
    /// What may be at fault, each with its share, where it is neither the spot nor `suspects`.
    pub(crate) faults: Vec<(Spot, f64)>,
    pub(crate) restore: Vec<String>,
}

impl NextCheck {
    /// Adds what each reply leads to, where both are known.
    pub(crate) fn tell_replies(
        &mut self,
        ctx: &Context<'_>,
        good: Option<String>,
        bad: Option<String>,
    ) {
        if let (Some(good), Some(bad)) = (good, bad) {
            self.look_for = ctx.catalogue.fill(
                "look-replies",
                &[fill("look", &self.look_for), fill("good", &good), fill("bad", &bad)],
            );
        }
    }
}

/// A step, with the place of its component in the home.
#[derive(Debug, Clone)]
pub(crate) struct DraftStep {
    pub(crate) step: Step,
    pub(crate) place: Option<usize>,
}

/// Someone to call, by what they are called for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct DraftCall {
    pub(crate) role: Role,
    pub(crate) why: &'static str,
}

impl Draft {
    pub(crate) fn caution(&mut self, ctx: &Context<'_>, id: &str, fills: &[Fill<'_>]) {
        if self.cautions.iter().any(|caution| caution.id == id) {
            return;
        }
        self.cautions.push(Caution {
            id: id.to_owned(),
            signal: sources::signal(id),
            text: ctx.catalogue.fill(id, fills),
        });
    }

    /// Adds a step that touches no device.
    pub(crate) fn advice(&mut self, ctx: &Context<'_>, id: &str, act: Act, fills: &[Fill<'_>]) {
        self.steps.push(DraftStep {
            step: Step {
                text: ctx.catalogue.fill(id, fills),
                component: None,
                seconds: None,
                practised: false,
                prove: None,
                act,
                id: id.to_owned(),
            },
            place: None,
        });
    }

    /// Adds a step at a device.
    pub(crate) fn at(
        &mut self,
        ctx: &Context<'_>,
        id: &str,
        act: Act,
        place: usize,
        seconds: f64,
        fills: &[Fill<'_>],
    ) {
        self.steps.push(DraftStep {
            step: Step {
                text: ctx.catalogue.fill(id, fills),
                component: Some(ctx.home.components[place].id.clone()),
                seconds: Some(rounded(seconds, 1.0)),
                practised: ctx.is_practised(place),
                prove: None,
                act,
                id: id.to_owned(),
            },
            place: Some(place),
        });
    }

    /// Adds a step at a device that takes `there_seconds` once one stands at it, and whose text needs
    /// only its name and where it is.
    pub(crate) fn go_to(
        &mut self,
        ctx: &Context<'_>,
        id: &str,
        act: Act,
        place: usize,
        there_seconds: f64,
    ) {
        let seconds = ctx.walk_seconds(place) + there_seconds;
        let fills = [fill("device", &ctx.name(place)), fill("where", &ctx.where_sentence(place))];
        self.at(ctx, id, act, place, seconds, &fills);
    }

    /// Gives the last step its proof.
    pub(crate) fn prove(&mut self, text: String) {
        if let Some(last) = self.steps.last_mut() {
            last.step.prove = Some(text);
        }
    }

    pub(crate) fn call(&mut self, role: Role, why: &'static str) {
        if !self.calls.iter().any(|call| call.role == role) {
            self.calls.push(DraftCall { role, why });
        }
    }

    pub(crate) fn restore(&mut self, ctx: &Context<'_>, id: &str, fills: &[Fill<'_>]) {
        self.restore.push(ctx.catalogue.fill(id, fills));
    }
}
