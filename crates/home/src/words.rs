//! What edits are called for people: a text of the catalogue, and what fills its places.

use crate::{CannotEdit, Component, DeviceState, Edit, Home, Units};

/// A text of the catalogue by its key, and what fills its places by their names.
pub type Words = (&'static str, Vec<(&'static str, String)>);

impl Edit {
    /// What the edit is called; `before` is the home that it is made on.
    ///
    /// ```
    /// use quarterturn_home::{Component, Edit, Home, Kind};
    ///
    /// let tap = Component::new("tap", Kind::Tap, "Kitchen tap");
    /// let home = Home { components: vec![tap], ..Home::default() };
    /// let edit = Edit::RemoveComponent { id: "tap".to_owned() };
    /// assert_eq!(edit.words(&home), ("edit-remove", vec![("name", "Kitchen tap".to_owned())]));
    /// ```
    #[must_use]
    pub fn words(&self, before: &Home) -> Words {
        let device = |id: &str| named(before.component(id).map(|c| &c.name), id);
        let one = |key, name: String| (key, vec![("name", name)]);
        let put = |is_known: bool, name: &str| {
            one(if is_known { "edit-change" } else { "edit-add" }, name.to_owned())
        };
        match self {
            Self::SetState { id, state, .. } => {
                ("edit-state", vec![("name", device(id)), ("state", state_word(*state).to_owned())])
            }
            Self::PutComponent(new) => put(before.component(&new.id).is_some(), &new.name),
            Self::RemoveComponent { id } => one("edit-remove", device(id)),
            Self::Connect(line) => ends("edit-connect", before, &line.from, &line.to),
            Self::Disconnect(line) => ends("edit-disconnect", before, &line.from, &line.to),
            Self::ChangeConnection { new, .. } => {
                ends("edit-change-connection", before, &new.from, &new.to)
            }
            Self::Rename { id, name } => {
                ("edit-rename", vec![("name", device(id)), ("new", name.clone())])
            }
            Self::SetTag { id, tag: Some(tag) } => {
                ("edit-tag", vec![("name", device(id)), ("tag", tag.clone())])
            }
            Self::SetTag { id, tag: None } => one("edit-untag", device(id)),
            Self::Move { id, .. } => one("edit-move", device(id)),
            Self::Copy { id, .. } => one("edit-copy", device(id)),
            Self::PutSpace(new) => put(before.space(&new.id).is_some(), &new.name),
            Self::RemoveSpace { id } => {
                one("edit-remove", named(before.space(id).map(|s| &s.name), id))
            }
            Self::AddPassage(passage) => {
                passage_words("edit-add-passage", before, &passage.between)
            }
            Self::RemovePassage(passage) => {
                passage_words("edit-remove-passage", before, &passage.between)
            }
            Self::PutLevel(new) => put(before.level(&new.id).is_some(), &new.name),
            Self::RemoveLevel { id } => {
                one("edit-remove", named(before.level(id).map(|l| &l.name), id))
            }
            Self::SetPlan { level, plan } => {
                let key = if plan.is_some() { "edit-plan" } else { "edit-remove-plan" };
                one(key, named(before.level(level).map(|l| &l.name), level))
            }
            Self::PutContact(new) => put(before.contact(&new.id).is_some(), &new.name),
            Self::RemoveContact { id } => {
                one("edit-remove", named(before.contact(id).map(|c| &c.name), id))
            }
            Self::PutWarranty(new) => {
                put(before.warranties.iter().any(|w| w.id == new.id), &new.name)
            }
            Self::RemoveWarranty { id } => {
                let warranty = before.warranties.iter().find(|w| w.id == *id);
                one("edit-remove", named(warranty.map(|w| &w.name), id))
            }
            Self::PutJob(new) => put(before.jobs.iter().any(|j| j.id == new.id), &new.name),
            Self::RemoveJob { id } => one("edit-remove", job(before, id)),
            Self::AddDone(done) => {
                ("edit-done", vec![("name", job(before, &done.job)), ("on", done.on.to_string())])
            }
            Self::RemoveDone(done) => {
                let name = job(before, &done.job);
                ("edit-remove-done", vec![("name", name), ("on", done.on.to_string())])
            }
            Self::TickMoveIn(tick) => one("edit-tick", tick.item.clone()),
            Self::UntickMoveIn { item } => one("edit-untick", item.clone()),
            Self::PutDocument(new) => {
                put(before.documents.iter().any(|d| d.id == new.id), &new.name)
            }
            Self::RemoveDocument { id } => {
                let document = before.documents.iter().find(|d| d.id == *id);
                one("edit-remove", named(document.map(|d| &d.name), id))
            }
            Self::AddDrill(drill) => one("edit-drill", device(&drill.component)),
            Self::RemoveDrill(drill) => one("edit-remove-drill", device(&drill.component)),
            Self::SetName(name) => one("edit-home-name", name.clone()),
            Self::SetAddress(_) => ("edit-address", Vec::new()),
            Self::SetUnits(units) => ("edit-units", vec![("units", units_word(*units).to_owned())]),
            Self::SetLanguage(_) => ("edit-language", Vec::new()),
            Self::SetEmergencyPhone(_) => ("edit-emergency-phone", Vec::new()),
            Self::SetUsualSpace(_) => ("edit-usual-space", Vec::new()),
            Self::SetNorth(_) => ("edit-north", Vec::new()),
            Self::All(edits) => match edits.as_slice() {
                [only] => only.words(before),
                edits => ("edit-all", vec![("n", edits.len().to_string())]),
            },
            Self::Named { key, fills, .. } => (key, fills.clone()),
        }
    }
}

impl CannotEdit {
    /// Why not, for people. For [`CannotEdit::Unfit`] it is the problem's own words: `problem-` and its
    /// key, with the problem's fills.
    #[must_use]
    pub fn words(&self, home: &Home) -> Words {
        let id = |key, id: &String| (key, vec![("id", id.clone())]);
        match self {
            Self::NoComponent(missing) | Self::Nothing { id: missing, .. } => {
                id("edit-cannot-find", missing)
            }
            Self::NoId => ("edit-cannot-no-id", Vec::new()),
            Self::IdTaken(taken) => id("edit-cannot-taken", taken),
            Self::NoConnection(spot) => spot_words("edit-cannot-find-connection", home, spot),
            Self::CannotConnect(spot) => spot_words("edit-cannot-connect", home, spot),
            Self::DrainLoop(ids) => {
                let names: Vec<String> =
                    ids.iter().map(|id| named(home.component(id).map(|c| &c.name), id)).collect();
                ("edit-cannot-loop", vec![("names", names.join(" → "))])
            }
            Self::Unfit(problem) => ("edit-cannot-unfit", vec![("key", problem.key.to_owned())]),
        }
    }
}

/// The word by which a text of the catalogue chooses.
pub(crate) fn state_word(state: DeviceState) -> &'static str {
    match state {
        DeviceState::Works => "works",
        DeviceState::Stiff => "stiff",
        DeviceState::Seized => "seized",
        DeviceState::LeaksBy => "leaks-by",
        DeviceState::Unknown => "unknown",
    }
}

fn units_word(units: Units) -> &'static str {
    match units {
        Units::Us => "us",
        Units::Si => "si",
    }
}

/// The name of a thing, or its id where the home has no such thing.
fn named(name: Option<&String>, id: &str) -> String {
    name.filter(|name| !name.is_empty()).map_or(id, String::as_str).to_owned()
}

fn job(home: &Home, id: &str) -> String {
    named(home.jobs.iter().find(|j| j.id == id).map(|j| &j.name), id)
}

fn ends(key: &'static str, home: &Home, from: &str, to: &str) -> Words {
    let name = |id: &str| named(home.component(id).map(|c: &Component| &c.name), id);
    (key, vec![("from", name(from)), ("to", name(to))])
}

fn passage_words(key: &'static str, home: &Home, (one, other): &(String, String)) -> Words {
    let name = |id: &str| named(home.space(id).map(|s| &s.name), id);
    (key, vec![("one", name(one)), ("other", name(other))])
}

fn spot_words(key: &'static str, home: &Home, spot: &str) -> Words {
    let (from, to) = spot.split_once("..").unwrap_or((spot, ""));
    ends(key, home, from, to)
}
