//! What would go with a thing, to be shown before it is deleted.

use crate::difference::{Change, Part, changes};
use crate::{Edit, Home};

/// What taking out the thing with this id changes besides.
///
/// Connections, passages and drills that go, and things that stay but lose a mention of it, in the order
/// of [`changes`]; empty if nothing has the id, or nothing else knows it.
///
/// It is worked out by taking the thing out of a copy, so that it tells no less and no more than
/// happens.
///
/// ```
/// use quarterturn_home::{Component, Connection, Home, Kind, Medium, Part, depends_on};
///
/// let home = Home {
///     components: ["main", "tap"].map(|id| Component::new(id, Kind::Pipe, id)).to_vec(),
///     connections: vec![Connection::new("main", "tap", Medium::ColdWater)],
///     ..Home::default()
/// };
/// let goes = depends_on(&home, "tap");
/// assert_eq!((goes.len(), goes[0].part), (1, Part::Connection));
/// ```
#[must_use]
pub fn depends_on(home: &Home, id: &str) -> Vec<Change> {
    let Some((part, edit)) = removal(home, id) else { return Vec::new() };
    let Ok(after) = edit.made_on(home) else { return Vec::new() };
    let mut changes = changes(home, &after);
    changes.retain(|change| change.part != part || change.id != id);
    changes
}

/// The edit that takes out the thing with this id, and what sort of thing it is.
#[must_use]
pub fn removal(home: &Home, id: &str) -> Option<(Part, Edit)> {
    let own = || id.to_owned();
    let line = || home.connections.iter().find(|c| c.id.as_deref() == Some(id) || c.spot() == id);
    if home.component(id).is_some() {
        Some((Part::Component, Edit::RemoveComponent { id: own() }))
    } else if home.space(id).is_some() {
        Some((Part::Space, Edit::RemoveSpace { id: own() }))
    } else if home.level(id).is_some() {
        Some((Part::Level, Edit::RemoveLevel { id: own() }))
    } else if home.contact(id).is_some() {
        Some((Part::Contact, Edit::RemoveContact { id: own() }))
    } else if home.warranties.iter().any(|w| w.id == id) {
        Some((Part::Warranty, Edit::RemoveWarranty { id: own() }))
    } else if home.jobs.iter().any(|j| j.id == id) {
        Some((Part::Job, Edit::RemoveJob { id: own() }))
    } else if home.documents.iter().any(|d| d.id == id) {
        Some((Part::Document, Edit::RemoveDocument { id: own() }))
    } else {
        line().map(|line| (Part::Connection, Edit::Disconnect(Box::new(line.clone()))))
    }
}
