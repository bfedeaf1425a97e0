//! Changes to a home, each of which can be undone.
//!
//! An edit leaves a home that its own file can tell: what opening the saved home would refuse is refused
//! here, with the same words ([`CannotEdit::Unfit`]).

use crate::attached::{With, copy, move_to};
use crate::check::{fault, loops};
use crate::fit::fit;
use crate::listed::{have, is_free, put, take};
use crate::remove::{remove_component, remove_contact, remove_level, remove_space};
use crate::{
    Component, Connection, Contact, Date, DeviceState, Document, Done, Drill, Home, Job, Level,
    MovedIn, Net, Passage, Plan, Problem, Space, Units, Warranty,
};

/// A change to a home.
///
/// `Put…` adds something, or replaces what has its id. `Remove…` takes it out with every mention of it;
/// [`depends_on`](crate::depends_on) tells beforehand what that is.
#[derive(Debug, Clone, PartialEq)]
pub enum Edit {
    /// Someone tried a device.
    SetState {
        /// The device.
        id: String,
        /// How it turned out.
        state: DeviceState,
        /// The day; `None` leaves the day that is known.
        exercised: Option<Date>,
    },
    /// Adds a component, or replaces the one with its id.
    PutComponent(Box<Component>),
    /// Takes out a component, its connections, and every mention of it.
    RemoveComponent {
        /// The component.
        id: String,
    },
    /// Adds a connection.
    Connect(Box<Connection>),
    /// Takes out the first connection that equals this one.
    Disconnect(Box<Connection>),
    /// Puts another connection in the place of the first that equals `old`.
    ChangeConnection {
        /// As it was.
        old: Box<Connection>,
        /// As it is to be.
        new: Box<Connection>,
    },
    /// Gives a component another name. Ids stay: printed tags refer to them.
    Rename {
        /// The component.
        id: String,
        /// Its new name.
        name: String,
    },
    /// Gives a component another tag, or none.
    SetTag {
        /// The component.
        id: String,
        /// Its new tag.
        tag: Option<String>,
    },
    /// Puts a component somewhere else.
    Move {
        /// The component.
        id: String,
        /// The space it is in from now on; `None` leaves it in its space.
        space: Option<String>,
        /// Where it is from now on; `None` leaves it in its place, or, in another space, forgets it.
        at: Option<(f64, f64, f64)>,
        /// What moves with it, by as much.
        with: With,
    },
    /// Adds another component like one that there is. Tag, photo, and what was learnt of the device stay
    /// with the first.
    Copy {
        /// The component.
        id: String,
        /// Id of the new one; [`Home::free_id`] finds one.
        new_id: String,
        /// Name of the new one.
        name: String,
        /// The space it is in; `None` for the same.
        space: Option<String>,
        /// Where it is.
        at: Option<(f64, f64, f64)>,
        /// What is copied with it.
        with: With,
    },
    /// Adds a space, or replaces the one with its id.
    PutSpace(Box<Space>),
    /// Takes out a space; what is in it stays, in no space.
    RemoveSpace {
        /// The space.
        id: String,
    },
    /// Adds a door, an opening or stairs.
    AddPassage(Box<Passage>),
    /// Takes out the first passage that equals this one.
    RemovePassage(Box<Passage>),
    /// Adds a level, or replaces the one with its id.
    PutLevel(Box<Level>),
    /// Takes out a level; its spaces stay, on no level.
    RemoveLevel {
        /// The level.
        id: String,
    },
    /// Gives a level another plan, or none.
    SetPlan {
        /// The level.
        level: String,
        /// Its plan.
        plan: Option<Box<Plan>>,
    },
    /// Adds a contact, or replaces the one with its id.
    PutContact(Box<Contact>),
    /// Takes out a contact and every mention of it.
    RemoveContact {
        /// The contact.
        id: String,
    },
    /// Adds a warranty, or replaces the one with its id.
    PutWarranty(Box<Warranty>),
    /// Takes out a warranty.
    RemoveWarranty {
        /// The warranty.
        id: String,
    },
    /// Adds a job, or replaces the one with its id.
    PutJob(Box<Job>),
    /// Takes out a job. What was done of it stays written down.
    RemoveJob {
        /// The job.
        id: String,
    },
    /// Writes down that a job was done.
    AddDone(Box<Done>),
    /// Takes out the first such note that equals this one.
    RemoveDone(Box<Done>),
    /// Ticks an item of the move-in list off, or changes its tick.
    TickMoveIn(Box<MovedIn>),
    /// Takes the tick off an item of the move-in list.
    UntickMoveIn {
        /// The item.
        item: String,
    },
    /// Adds a document, or replaces the one with its id.
    PutDocument(Box<Document>),
    /// Takes out a document. Its file stays where it is.
    RemoveDocument {
        /// The document.
        id: String,
    },
    /// Adds a drill.
    AddDrill(Box<Drill>),
    /// Takes out the first drill that equals this one.
    RemoveDrill(Box<Drill>),
    /// Gives the home another name.
    SetName(String),
    /// Gives the home another address, or none.
    SetAddress(Option<String>),
    /// Shows other units.
    SetUnits(Units),
    /// Answers in another language, or in the program's own.
    SetLanguage(Option<String>),
    /// Gives another number to call when people are in danger, or none.
    SetEmergencyPhone(Option<String>),
    /// Tells where people mostly are, or that it is not known.
    SetUsualSpace(Option<String>),
    /// Tells where north is on the plans ([`Home::north_deg`]), or that it is not known.
    SetNorth(Option<f64>),
    /// Several edits as one, in their order: all of them, or none.
    All(Vec<Self>),
    /// The same, with words of its own for people.
    Named {
        /// Key of the words in the catalogue.
        key: &'static str,
        /// What fills their places.
        fills: Vec<(&'static str, String)>,
        /// The edits.
        edits: Vec<Self>,
    },
}

/// Why a home cannot be changed so.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CannotEdit {
    /// No component has this id.
    #[error("no component has the id {0:?}")]
    NoComponent(String),
    /// Nothing of that sort has this id.
    #[error("{list} has nothing with the id {id:?}")]
    Nothing {
        /// The list of the home where it was looked for, such as `spaces`.
        list: &'static str,
        /// The id.
        id: String,
    },
    /// A thing needs an id.
    #[error("a thing needs an id")]
    NoId,
    /// Something else has this id.
    #[error("something else has the id {0:?}")]
    IdTaken(String),
    /// There is no such connection.
    #[error("there is no such connection: {0}")]
    NoConnection(String),
    /// The connection cannot be: to itself, or between media that cannot meet.
    #[error("there can be no such connection: {0}")]
    CannotConnect(String),
    /// A drain would run in a loop through these components.
    #[error("a drain would run in a loop: {0:?}")]
    DrainLoop(Vec<String>),
    /// The home's file could not tell it; the problem says why, in the words of the catalogue.
    #[error("the home's file could not tell it: {}", .0.key)]
    Unfit(Box<Problem>),
}

impl Edit {
    /// The home that becomes of `home`.
    ///
    /// # Errors
    /// If the home cannot be changed so.
    pub fn made_on(&self, home: &Home) -> Result<Home, CannotEdit> {
        let mut changed = home.clone();
        self.clone().make(&mut changed)?;
        if self.may_be_unfit() {
            fit(home, &changed)?;
        }
        Ok(changed)
    }

    /// False for those that cannot make a home that its file could not tell.
    fn may_be_unfit(&self) -> bool {
        match self {
            Self::SetState { .. }
            | Self::Rename { .. }
            | Self::SetTag { .. }
            | Self::Disconnect(_)
            | Self::SetName(_)
            | Self::SetAddress(_)
            | Self::SetUnits(_)
            | Self::SetLanguage(_)
            | Self::SetEmergencyPhone(_)
            | Self::RemoveComponent { .. }
            | Self::RemoveSpace { .. }
            | Self::RemoveLevel { .. }
            | Self::RemoveContact { .. }
            | Self::RemoveWarranty { .. }
            | Self::RemoveJob { .. }
            | Self::RemoveDocument { .. }
            | Self::RemoveDone(_)
            | Self::RemoveDrill(_)
            | Self::RemovePassage(_)
            | Self::UntickMoveIn { .. } => false,
            // A pin is dragged many times a second.
            Self::Move { at, space, .. } => {
                space.is_some() || at.is_some_and(|(x, y, z)| [x, y, z].into_iter().any(is_wild))
            }
            Self::All(edits) | Self::Named { edits, .. } => edits.iter().any(Self::may_be_unfit),
            _ => true,
        }
    }

    fn make(self, home: &mut Home) -> Result<(), CannotEdit> {
        match self {
            Self::SetState { id, state, exercised } => {
                let operates = component(home, id)?.operates.get_or_insert_default();
                operates.state = state;
                operates.exercised = exercised.or(operates.exercised);
            }
            Self::PutComponent(new) => put(home, *new)?,
            Self::RemoveComponent { id } => {
                have::<Component>(home, &id)?;
                remove_component(home, &id);
            }
            Self::Connect(connection) => {
                connect(home, home.connections.len(), *connection)?;
            }
            Self::Disconnect(connection) => {
                let index = place_of(home, &connection)?;
                home.connections.remove(index);
            }
            Self::ChangeConnection { old, new } => {
                let index = place_of(home, &old)?;
                home.connections.remove(index);
                connect(home, index, *new)?;
            }
            Self::Rename { id, name } => component(home, id)?.name = name,
            Self::SetTag { id, tag } => component(home, id)?.tag = tag,
            Self::Move { id, space, at, with } => {
                have::<Component>(home, &id)?;
                move_to(home, &id, with, (space, at));
            }
            Self::Copy { id, new_id, name, space, at, with } => {
                have::<Component>(home, &id)?;
                is_free(home, &new_id)?;
                copy(home, &id, with, (new_id, name), (space, at));
            }
            Self::PutSpace(new) => put(home, *new)?,
            Self::RemoveSpace { id } => {
                have::<Space>(home, &id)?;
                remove_space(home, &id);
            }
            Self::AddPassage(passage) => home.passages.push(*passage),
            Self::RemovePassage(passage) => take(&mut home.passages, &passage, "passages", || {
                format!("{}..{}", passage.between.0, passage.between.1)
            })?,
            Self::PutLevel(new) => put(home, *new)?,
            Self::RemoveLevel { id } => {
                have::<Level>(home, &id)?;
                remove_level(home, &id);
            }
            Self::SetPlan { level, plan } => {
                let found = home.levels.iter_mut().find(|l| l.id == level);
                let nothing = CannotEdit::Nothing { list: "levels", id: level };
                found.ok_or(nothing)?.plan = plan.map(|plan| *plan);
            }
            Self::PutContact(new) => put(home, *new)?,
            Self::RemoveContact { id } => {
                have::<Contact>(home, &id)?;
                remove_contact(home, &id);
            }
            Self::PutWarranty(new) => put(home, *new)?,
            Self::RemoveWarranty { id } => {
                have::<Warranty>(home, &id)?;
                home.warranties.retain(|w| w.id != id);
            }
            Self::PutJob(new) => put(home, *new)?,
            Self::RemoveJob { id } => {
                have::<Job>(home, &id)?;
                home.jobs.retain(|j| j.id != id);
            }
            Self::AddDone(done) => {
                for id in &done.components {
                    component(home, id.clone())?;
                }
                home.done.push(*done);
            }
            Self::RemoveDone(done) => take(&mut home.done, &done, "done", || done.job.clone())?,
            Self::TickMoveIn(new) => {
                match home.move_in.iter_mut().find(|old| old.item == new.item) {
                    Some(old) => *old = *new,
                    None => home.move_in.push(*new),
                }
            }
            Self::UntickMoveIn { item } => home.move_in.retain(|tick| tick.item != item),
            Self::PutDocument(new) => put(home, *new)?,
            Self::RemoveDocument { id } => {
                have::<Document>(home, &id)?;
                home.documents.retain(|d| d.id != id);
            }
            Self::AddDrill(drill) => home.drills.push(*drill),
            Self::RemoveDrill(drill) => {
                take(&mut home.drills, &drill, "drills", || drill.component.clone())?;
            }
            Self::SetName(name) => home.name = name,
            Self::SetAddress(address) => home.address = address,
            Self::SetUnits(units) => home.units = units,
            Self::SetLanguage(language) => home.language = language,
            Self::SetEmergencyPhone(phone) => home.emergency_phone = phone,
            Self::SetUsualSpace(space) => home.usual_space = space,
            Self::SetNorth(north_deg) => home.north_deg = north_deg,
            Self::All(edits) | Self::Named { edits, .. } => {
                for edit in edits {
                    edit.make(home)?;
                }
            }
        }
        Ok(())
    }
}

/// A number that no home file holds.
fn is_wild(number: f64) -> bool {
    !number.is_finite() || number.abs() > 1e9
}

fn component(home: &mut Home, id: String) -> Result<&mut Component, CannotEdit> {
    home.components.iter_mut().find(|c| c.id == id).ok_or(CannotEdit::NoComponent(id))
}

fn place_of(home: &Home, connection: &Connection) -> Result<usize, CannotEdit> {
    let index = home.connections.iter().position(|other| other == connection);
    index.ok_or_else(|| CannotEdit::NoConnection(connection.spot()))
}

fn connect(home: &mut Home, index: usize, connection: Connection) -> Result<(), CannotEdit> {
    let end = |id: &str| home.component(id).ok_or_else(|| CannotEdit::NoComponent(id.to_owned()));
    if fault(&connection, end(&connection.from)?, end(&connection.to)?).is_some() {
        return Err(CannotEdit::CannotConnect(connection.spot()));
    }
    let net = connection.carries.net();
    home.connections.insert(index, connection);
    if matches!(net, Net::Waste | Net::Condensate) {
        let drains = home.connections.iter().enumerate().filter(|(_, c)| c.carries.net() == net);
        if let Some((_, ids)) = loops(&drains.collect::<Vec<_>>()).into_iter().next() {
            return Err(CannotEdit::DrainLoop(ids));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::{History, Kind, Medium};

    fn waste(from: &str, to: &str) -> Edit {
        Edit::Connect(Box::new(link(from, to, Medium::Waste)))
    }

    fn link(from: &str, to: &str, carries: Medium) -> Connection {
        let text = format!("(from: {from:?}, to: {to:?}, carries: {carries:?})");
        ron::from_str(&text).unwrap()
    }

    fn put(id: &str, kind: Kind) -> Edit {
        Edit::PutComponent(Box::new(Component::new(id, kind, id)))
    }

    fn drains() -> History {
        let mut history = History::new(Home::default());
        for id in ["a", "b", "c"] {
            history.apply(put(id, Kind::Pipe)).unwrap();
        }
        history.apply(put("tap", Kind::Tap)).unwrap();
        history
    }

    #[test]
    fn a_tried_device_keeps_its_day_until_it_is_tried_again() {
        let mut history = drains();
        let day = Date::new(2026, 5, 2);
        let set = |state, exercised| Edit::SetState { id: "tap".to_owned(), state, exercised };
        history.apply(set(DeviceState::Stiff, day)).unwrap();
        history.apply(set(DeviceState::Seized, None)).unwrap();
        let operates = history.home().component("tap").unwrap().operates.clone().unwrap();
        assert_eq!((operates.state, operates.exercised), (DeviceState::Seized, day));
        let unknown = set(DeviceState::Works, None);
        let Edit::SetState { state, .. } = unknown else { unreachable!() };
        let nobody = Edit::SetState { id: "x".to_owned(), state, exercised: None };
        assert_eq!(history.apply(nobody), Err(CannotEdit::NoComponent("x".to_owned())));
    }

    #[test]
    fn putting_replaces_in_place_and_removing_leaves_no_mention() {
        let mut history = drains();
        history.apply(waste("a", "b")).unwrap();
        history.apply(put("a", Kind::Stack)).unwrap();
        assert_eq!(history.home().components[0].kind, Kind::Stack);
        assert_eq!(history.home().components.len(), 4);
        let mut home = Home::clone(history.home());
        home.jobs.push(ron::from_str(r#"(id: "j", name: "j", components: ["a", "b"])"#).unwrap());
        let mut history = History::new(home);
        history.apply(Edit::RemoveComponent { id: "a".to_owned() }).unwrap();
        assert_eq!(history.home().connections, []);
        assert_eq!(history.home().jobs[0].components, ["b"]);
        assert_eq!(history.apply(put("", Kind::Pipe)), Err(CannotEdit::NoId));
    }

    #[test]
    fn a_connection_that_cannot_be_is_refused_and_changes_nothing() {
        let mut history = drains();
        history.apply(waste("a", "b")).unwrap();
        history.apply(waste("b", "c")).unwrap();
        let before = Arc::clone(history.home());
        let ids = ["a", "b", "c"].map(str::to_owned).to_vec();
        assert_eq!(history.apply(waste("c", "a")), Err(CannotEdit::DrainLoop(ids)));
        let itself = CannotEdit::CannotConnect("a..a".to_owned());
        assert_eq!(history.apply(waste("a", "a")), Err(itself));
        let gas = Edit::Connect(Box::new(link("a", "tap", Medium::Gas)));
        assert_eq!(history.apply(gas), Err(CannotEdit::CannotConnect("a..tap".to_owned())));
        let nobody = CannotEdit::NoComponent("x".to_owned());
        assert_eq!(history.apply(waste("a", "x")), Err(nobody));
        let off = Edit::Disconnect(Box::new(link("c", "a", Medium::Waste)));
        assert_eq!(history.apply(off), Err(CannotEdit::NoConnection("c..a".to_owned())));
        assert_eq!(*history.home(), before);
        history.apply(Edit::Disconnect(Box::new(link("a", "b", Medium::Waste)))).unwrap();
        assert_eq!(history.home().connections, [link("b", "c", Medium::Waste)]);
    }
}
