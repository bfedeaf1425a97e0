//! A component as a job or an item names it.

use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Component, Date, Home, OperableBy, Role};
use serde::Serialize;

/// A component that something is done to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Part {
    /// Its id.
    pub id: String,
    /// Its name with its tag, and where it is.
    pub name: String,
    /// When it was done last, as far as is written down.
    pub last: Option<Date>,
}

impl Part {
    pub(crate) fn of(home: &Home, component: &Component, words: &Catalogue) -> Self {
        Self { id: component.id.clone(), name: name(home, component, words), last: None }
    }
}

/// Name, tag and room of a component.
pub(crate) fn name(home: &Home, component: &Component, words: &Catalogue) -> String {
    let device = match &component.tag {
        Some(tag) => {
            words.fill("device-with-tag", &[fill("name", &component.name), fill("tag", tag)])
        }
        None => component.name.clone(),
    };
    match component.space.as_deref().and_then(|id| home.space(id)) {
        Some(space) => {
            words.fill("upkeep-part", &[fill("space", &space.name), fill("device", &device)])
        }
        None => device,
    }
}

/// True for what the household looks after: nobody else is named as its owner.
pub(crate) fn is_ours(home: &Home, component: &Component) -> bool {
    let Some(owner) = component.owner.as_deref() else { return true };
    match home.contact(owner) {
        // Whoever keeps the account of a thing does not look after the thing.
        Some(contact) => matches!(contact.role, Some(Role::Owner | Role::Alarm)),
        None => true,
    }
}

/// True for what anyone of the household may work.
pub(crate) fn is_workable(home: &Home, component: &Component) -> bool {
    is_ours(home, component) && component.operable_by == OperableBy::Anyone
}
