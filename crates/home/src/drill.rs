//! What a household has practised: how long it took to reach a device.

use serde::{Deserialize, Serialize};

use crate::Date;
use crate::decode::{Fields, Limits};
use crate::layout::{Entry, Node};
use crate::read::Element;
use crate::save::{Stored, number, text, yes};

/// A walk to a device that was practised against the clock.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Drill {
    /// Id of the device.
    pub component: String,
    /// Id of the space where the clock was started; `None` for where people mostly are.
    #[serde(default)]
    pub from: Option<String>,
    /// How long it took, in seconds: walking there, finding it, and working it.
    pub seconds: f64,
    /// The day.
    pub on: Date,
    /// True if the clock stopped when the device was found, so that working it comes on top.
    #[serde(default)]
    pub found_only: bool,
}

impl Drill {
    /// Least and most seconds of a drill. Whoever takes longer than an hour let the clock run.
    pub const SECONDS: (f64, f64) = (0.1, 3600.0);

    /// A device reached and worked.
    #[must_use]
    pub fn new(component: &str, from: Option<&str>, seconds: f64, on: Date) -> Self {
        Self {
            component: component.to_owned(),
            from: from.map(str::to_owned),
            seconds,
            on,
            found_only: false,
        }
    }
}

impl Element for Drill {
    const LIST: &'static str = "drills";
    const NAME: &'static str = "Drill";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        fields.need("component");
        let component = fields.reference("component");
        let from = fields.reference("from");
        fields.need("seconds");
        let seconds = fields.number("seconds", Limits(Self::SECONDS.0, Self::SECONDS.1));
        fields.need("on");
        let on = fields.date("on");
        let found_only = fields.yes_or_no("found_only").unwrap_or_default();
        Some(Self { component: component?, from, seconds: seconds?, on: on?, found_only })
    }

    fn id(&self) -> Option<&str> {
        None
    }

    fn key(&self) -> String {
        format!("{} {}", self.component, self.on)
    }
}

impl Stored for Drill {
    fn entries(&self) -> Vec<Entry> {
        let found_only: Option<Node> = self.found_only.then(yes);
        vec![
            Entry::new("component", Some(text(&self.component))),
            Entry::new("from", self.from.as_deref().map(text)),
            Entry::new("seconds", Some(number(self.seconds))),
            Entry::new("on", Some(text(&self.on.to_string()))),
            Entry::new("found_only", found_only),
        ]
    }
}
