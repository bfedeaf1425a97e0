//! Which breakers stand in a panel, and which of them cut the whole of it.

use quarterturn_home::{Component, Home, Kind, Medium};

use super::numbers::{Numbering, places};

/// The circuit of the breaker that cuts the whole panel.
pub(super) const MAIN: &str = "main";

/// The panels of a home.
pub(super) fn panels(home: &Home) -> impl Iterator<Item = &Component> {
    home.components.iter().filter(|component| component.kind == Kind::Panel)
}

/// The breakers that stand in a panel: those that say so, and those that are fed straight from it.
pub(super) fn of_panel<'h>(home: &'h Home, panel: &Component) -> Vec<&'h Component> {
    let is_fed = |id: &str| {
        home.connections
            .iter()
            .any(|l| l.carries == Medium::Power && l.from == panel.id && l.to == id)
    };
    let breakers = home.components.iter().filter(|c| c.kind == Kind::Breaker);
    breakers
        .filter(|breaker| match breaker.panel.as_deref() {
            Some(named) => named == panel.id,
            None => is_fed(&breaker.id),
        })
        .collect()
}

/// What cuts the whole panel, and what else feeds it.
pub(super) fn mains<'h>(
    home: &'h Home,
    panel: &Component,
) -> (Vec<&'h Component>, Vec<&'h Component>) {
    let feeds = |id: &str| {
        home.connections
            .iter()
            .any(|l| l.carries == Medium::Power && l.from == id && l.to == panel.id)
    };
    let (mut mains, mut others) = (Vec::new(), Vec::new());
    for component in &home.components {
        let number = component.circuit.as_deref().unwrap_or_default();
        let is_here = component.panel.as_deref().is_none_or(|named| named == panel.id);
        let says_main = component.kind == Kind::Breaker
            && component.panel.as_ref() == Some(&panel.id)
            && number.eq_ignore_ascii_case(MAIN);
        let switches = matches!(
            component.kind,
            Kind::Breaker | Kind::ServiceDisconnect | Kind::Disconnect | Kind::TransferSwitch
        );
        // A breaker in a place of its own, such as a generator's, feeds back from there.
        let is_placed = !places(Numbering::Sides, number).is_empty();
        if says_main || (feeds(&component.id) && is_here && switches && !is_placed) {
            mains.push(component);
        } else if feeds(&component.id) && !(is_here && is_placed) {
            others.push(component);
        }
    }
    (mains, others)
}
