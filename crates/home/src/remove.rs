//! Taking things out of a home with every mention of them.

use crate::Home;

/// Takes out a component, its connections and drills, and every mention of it.
///
/// What speaks of certain components would speak of all once none is left: a warranty for this
/// component alone goes with it, and so does the note that a job was done to it alone.
pub(crate) fn remove_component(home: &mut Home, id: &str) {
    home.components.retain(|c| c.id != id);
    home.connections.retain(|c| c.from != id && c.to != id);
    home.drills.retain(|d| d.component != id);
    let alone = |ids: &[String]| !ids.is_empty() && ids.iter().all(|mention| mention == id);
    home.warranties.retain(|warranty| !alone(&warranty.covers));
    home.done.retain(|done| !alone(&done.components));
    let warranties = home.warranties.iter_mut().map(|w| &mut w.covers);
    let jobs = home.jobs.iter_mut().map(|j| &mut j.components);
    let done = home.done.iter_mut().map(|d| &mut d.components);
    let documents = home.documents.iter_mut().map(|d| &mut d.components);
    for mentions in warranties.chain(jobs).chain(done).chain(documents) {
        mentions.retain(|mention| mention != id);
    }
}

/// Takes out a space, its passages, and the drills that began in it. What is in it stays, in no space
/// and without a place: places are told on the level of a space.
pub(crate) fn remove_space(home: &mut Home, id: &str) {
    home.spaces.retain(|s| s.id != id);
    home.passages.retain(|p| p.between.0 != id && p.between.1 != id);
    home.drills.retain(|d| d.from.as_deref() != Some(id));
    for component in home.components.iter_mut().filter(|c| c.space.as_deref() == Some(id)) {
        component.space = None;
        component.at = None;
    }
    home.usual_space = home.usual_space.take().filter(|space| space != id);
}

/// Takes out a level; its spaces stay, on no level.
pub(crate) fn remove_level(home: &mut Home, id: &str) {
    home.levels.retain(|l| l.id != id);
    for space in home.spaces.iter_mut().filter(|s| s.level.as_deref() == Some(id)) {
        space.level = None;
    }
}

/// Takes out a contact and every mention of it.
pub(crate) fn remove_contact(home: &mut Home, id: &str) {
    home.contacts.retain(|c| c.id != id);
    let owners = home.components.iter_mut().map(|c| &mut c.owner);
    let warrantors = home.warranties.iter_mut().map(|w| &mut w.contact);
    for mention in owners.chain(warrantors) {
        *mention = mention.take().filter(|contact| contact != id);
    }
}
