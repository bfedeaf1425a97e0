//! Changes to a home, each of which can be undone.

use std::collections::VecDeque;
use std::sync::Arc;

use crate::check::{fault, loops};
use crate::{Component, Connection, Date, DeviceState, Home, Net};

/// Past states that are kept.
const MOST: usize = 100;

/// A change to a home.
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
    /// Gives a component another name. Ids stay: printed tags refer to them.
    Rename {
        /// The component.
        id: String,
        /// Its new name.
        name: String,
    },
}

/// Why a home cannot be changed so.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CannotEdit {
    /// No component has this id.
    #[error("no component has the id {0:?}")]
    NoComponent(String),
    /// A component needs an id.
    #[error("a component needs an id")]
    NoId,
    /// There is no such connection.
    #[error("there is no such connection: {0}")]
    NoConnection(String),
    /// The connection cannot be: to itself, or between media that cannot meet.
    #[error("there can be no such connection: {0}")]
    CannotConnect(String),
    /// A drain would run in a loop through these components.
    #[error("a drain would run in a loop: {0:?}")]
    DrainLoop(Vec<String>),
}

/// A home, with its past and what was undone.
///
/// Homes are small, so that whole states are kept: an undo cannot go wrong.
///
/// ```
/// use quarterturn_home::{Component, Edit, History, Home, Kind};
///
/// let mut history = History::new(Home::default());
/// history.apply(Edit::PutComponent(Box::new(Component::new("main", Kind::IsolatingValve, "Main"))))?;
/// assert!(history.home().component("main").is_some());
/// assert!(history.undo());
/// assert!(history.home().component("main").is_none());
/// # Ok::<(), quarterturn_home::CannotEdit>(())
/// ```
#[derive(Debug, Clone)]
pub struct History {
    now: Arc<Home>,
    past: VecDeque<Arc<Home>>,
    undone: Vec<Arc<Home>>,
    /// The gesture that is under way, such as a drag.
    gesture: Option<String>,
}

impl History {
    /// A home without a past.
    #[must_use]
    pub fn new(home: Home) -> Self {
        Self { now: Arc::new(home), past: VecDeque::new(), undone: Vec::new(), gesture: None }
    }

    /// The home as it is now.
    #[must_use]
    pub fn home(&self) -> &Arc<Home> {
        &self.now
    }

    /// Changes the home; one undo takes the change back.
    ///
    /// # Errors
    /// If the home cannot be changed so. It stays as it was.
    pub fn apply(&mut self, edit: Edit) -> Result<(), CannotEdit> {
        self.change(edit, None)
    }

    /// Changes the home as part of a gesture: one undo takes back all edits in a row that have the
    /// same label.
    ///
    /// # Errors
    /// If the home cannot be changed so. It stays as it was.
    pub fn apply_within(&mut self, gesture: &str, edit: Edit) -> Result<(), CannotEdit> {
        self.change(edit, Some(gesture))
    }

    /// Ends the gesture: what comes next is undone on its own, whatever its label.
    pub fn end_gesture(&mut self) {
        self.gesture = None;
    }

    /// True if there is something to undo.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// True if there is something to redo.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        !self.undone.is_empty()
    }

    /// Takes the last change back; false if there is none.
    pub fn undo(&mut self) -> bool {
        self.gesture = None;
        let Some(before) = self.past.pop_back() else { return false };
        self.undone.push(std::mem::replace(&mut self.now, before));
        true
    }

    /// Makes the change again that was undone last; false if there is none.
    pub fn redo(&mut self) -> bool {
        self.gesture = None;
        let Some(after) = self.undone.pop() else { return false };
        self.past.push_back(std::mem::replace(&mut self.now, after));
        true
    }

    fn change(&mut self, edit: Edit, gesture: Option<&str>) -> Result<(), CannotEdit> {
        let mut home = Home::clone(&self.now);
        edit.make(&mut home)?;
        let goes_on = gesture.is_some() && self.gesture.as_deref() == gesture;
        self.gesture = gesture.map(str::to_owned);
        if home == *self.now {
            return Ok(());
        }
        let before = std::mem::replace(&mut self.now, Arc::new(home));
        self.undone.clear();
        if !goes_on || self.past.is_empty() {
            self.past.push_back(before);
            if self.past.len() > MOST {
                self.past.pop_front();
            }
        }
        Ok(())
    }
}

impl Edit {
    fn make(self, home: &mut Home) -> Result<(), CannotEdit> {
        match self {
            Self::SetState { id, state, exercised } => {
                let operates = component(home, id)?.operates.get_or_insert_default();
                operates.state = state;
                operates.exercised = exercised.or(operates.exercised);
            }
            Self::PutComponent(new) => {
                if new.id.is_empty() {
                    return Err(CannotEdit::NoId);
                }
                match home.components.iter_mut().find(|old| old.id == new.id) {
                    Some(old) => *old = *new,
                    None => home.components.push(*new),
                }
            }
            Self::RemoveComponent { id } => {
                component(home, id.clone())?;
                home.components.retain(|c| c.id != id);
                home.connections.retain(|c| c.from != id && c.to != id);
                let warranties = home.warranties.iter_mut().map(|w| &mut w.covers);
                let jobs = home.jobs.iter_mut().map(|j| &mut j.components);
                let documents = home.documents.iter_mut().map(|d| &mut d.components);
                for mentions in warranties.chain(jobs).chain(documents) {
                    mentions.retain(|mention| *mention != id);
                }
            }
            Self::Connect(connection) => connect(home, *connection)?,
            Self::Disconnect(connection) => {
                let Some(index) = home.connections.iter().position(|c| *c == *connection) else {
                    return Err(CannotEdit::NoConnection(connection.spot()));
                };
                home.connections.remove(index);
            }
            Self::Rename { id, name } => component(home, id)?.name = name,
        }
        Ok(())
    }
}

fn component(home: &mut Home, id: String) -> Result<&mut Component, CannotEdit> {
    home.components.iter_mut().find(|c| c.id == id).ok_or(CannotEdit::NoComponent(id))
}

fn connect(home: &mut Home, connection: Connection) -> Result<(), CannotEdit> {
    let end = |id: &str| home.component(id).ok_or_else(|| CannotEdit::NoComponent(id.to_owned()));
    if fault(&connection, end(&connection.from)?, end(&connection.to)?).is_some() {
        return Err(CannotEdit::CannotConnect(connection.spot()));
    }
    let net = connection.carries.net();
    home.connections.push(connection);
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
    use super::*;
    use crate::{Kind, Medium};

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

    #[test]
    fn edits_of_one_gesture_are_undone_together() {
        let mut history = drains();
        let rename = |name: &str| Edit::Rename { id: "a".to_owned(), name: name.to_owned() };
        let name = |history: &History| history.home().components[0].name.clone();
        history.apply_within("type a name", rename("P")).unwrap();
        history.apply_within("type a name", rename("Pi")).unwrap();
        history.end_gesture();
        history.apply_within("type a name", rename("Pipe")).unwrap();
        assert!(history.undo());
        assert_eq!(name(&history), "Pi");
        assert!(history.undo());
        assert_eq!(name(&history), "a");
        assert!(history.redo() && history.redo());
        assert_eq!(name(&history), "Pipe");
        assert!(!history.redo());
        history.undo();
        history.apply(rename("Other")).unwrap();
        assert!(!history.can_redo());
    }

    #[test]
    fn an_edit_that_changes_nothing_leaves_no_trace_and_the_past_is_capped() {
        let mut history = drains();
        while history.undo() {}
        history = History::new(Home::clone(history.home()));
        history.apply(put("a", Kind::Pipe)).unwrap();
        history.apply(put("a", Kind::Pipe)).unwrap();
        assert!(history.undo() && !history.can_undo());
        for number in 0..150 {
            history.apply(put(&format!("p{number}"), Kind::Pipe)).unwrap();
        }
        let mut undone = 0;
        while history.undo() {
            undone += 1;
        }
        assert_eq!(undone, 100);
        assert_eq!(history.home().components.len(), 50);
    }
}
