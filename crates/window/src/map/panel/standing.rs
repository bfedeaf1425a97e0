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

/// The breakers of circuits, panel by panel in the order of their numbers: not those that feed a panel.
pub(crate) fn circuits(home: &Home) -> Vec<&Component> {
    let mut all = Vec::new();
    let mut feed: Vec<&str> = Vec::new();
    for panel in panels(home) {
        let (mains, others) = mains(home, panel);
        feed.extend(mains.into_iter().chain(others).map(|component| component.id.as_str()));
    }
    for panel in panels(home) {
        let mut here = of_panel(home, panel);
        here.retain(|breaker| breaker.circuit.is_some() && !feed.contains(&breaker.id.as_str()));
        here.sort_by_key(|breaker| {
            let number = breaker.circuit.as_deref().unwrap_or_default();
            places(Numbering::Sides, number).first().copied().unwrap_or(u32::MAX)
        });
        all.extend(here);
    }
    all
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

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Connection;

    #[test]
    fn circuits_are_told_by_number_and_without_what_feeds_a_panel() {
        let breaker = |id: &str, panel: &str, number: &str| {
            let mut breaker = Component::new(id, Kind::Breaker, id);
            breaker.panel = Some(panel.to_owned());
            breaker.circuit = Some(number.to_owned());
            breaker
        };
        let line = |from: &str, to: &str| Connection::new(from, to, Medium::Power);
        let home = Home {
            components: vec![
                Component::new("panel", Kind::Panel, "Panel"),
                Component::new("sub", Kind::Panel, "Sub-panel"),
                breaker("main", "panel", "main"),
                breaker("ten", "panel", "10"),
                breaker("two", "panel", "2"),
                breaker("to-sub", "panel", "4"),
                breaker("one-of-sub", "sub", "1"),
            ],
            connections: vec![line("main", "panel"), line("to-sub", "sub")],
            ..Home::default()
        };
        let ids: Vec<&str> = circuits(&home).iter().map(|breaker| breaker.id.as_str()).collect();
        assert_eq!(ids, ["two", "ten", "one-of-sub"]);
    }
}
