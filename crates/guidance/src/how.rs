//! Which way a device is worked, in words.

use quarterturn_home::{Closes, Component, Handle, Kind};

use crate::catalogue::{Catalogue, count, fill};
use crate::context::{Context, closes};

/// How a device is closed, as a sentence. What the map does not know is told both ways.
#[must_use]
pub fn how_to_close(component: &Component, catalogue: &Catalogue) -> String {
    let operates = component.operates.as_ref();
    let handle = operates.and_then(|o| o.handle);
    let known = operates.is_some_and(|o| o.closes.is_some() || o.handle.is_some());
    let (way, turns) = match closes(component) {
        Closes::QuarterTurn => ("quarter", 0.0),
        Closes::Turns(turns) => ("counted", turns),
        Closes::MultiTurn if known => ("turns", 0.0),
        Closes::MultiTurn => ("unknown", 0.0),
        Closes::Push => ("push", 0.0),
        Closes::Pull => ("pull", 0.0),
        Closes::ToOff => ("off", 0.0),
        Closes::Unscrew => ("unscrew", 0.0),
    };
    let handle = match handle {
        Some(Handle::Lever) => "lever",
        Some(Handle::Wheel) => "wheel",
        Some(Handle::Tee) => "tee",
        Some(Handle::Slot) => "slot",
        Some(Handle::Key) => "key",
        Some(Handle::Knob) => "knob",
        _ if component.kind == Kind::Breaker => "toggle",
        _ => "handle",
    };
    catalogue
        .fill("how-to-close", &[fill("way", way), fill("handle", handle), count("turns", turns)])
}

impl Context<'_> {
    pub(crate) fn how_to_close(&self, place: usize) -> String {
        how_to_close(&self.home.components[place], self.catalogue)
    }
}
