//! A home with its past: undo and redo without limit.
//!
//! A past state is kept as what differs from the state after it, so that ten thousand edits of a home
//! take a few megabytes. A difference is its own inverse: laid over one of the two states it gives the
//! other, and turns round.

use std::sync::Arc;

use crate::{CannotEdit, Edit, Home, Words};

/// A home, with its past and what was undone.
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
    past: Vec<Change>,
    undone: Vec<Change>,
    /// The gesture that is under way, such as a drag.
    gesture: Option<String>,
}

/// A change that was made.
#[derive(Debug, Clone)]
struct Change {
    words: Words,
    /// Leads to the state before a past change, and to the state after one that was undone.
    difference: Difference,
}

impl History {
    /// A home without a past.
    #[must_use]
    pub fn new(home: Home) -> Self {
        Self { now: Arc::new(home), past: Vec::new(), undone: Vec::new(), gesture: None }
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
        self.change(&edit, None)
    }

    /// Changes the home as part of a gesture: one undo takes back all edits in a row that have the
    /// same label.
    ///
    /// # Errors
    /// If the home cannot be changed so. It stays as it was.
    pub fn apply_within(&mut self, gesture: &str, edit: Edit) -> Result<(), CannotEdit> {
        self.change(&edit, Some(gesture))
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

    /// What the next undo takes back, in words.
    #[must_use]
    pub fn undo_words(&self) -> Option<&Words> {
        self.past.last().map(|change| &change.words)
    }

    /// What the next redo makes again, in words.
    #[must_use]
    pub fn redo_words(&self) -> Option<&Words> {
        self.undone.last().map(|change| &change.words)
    }

    /// Takes the last change back; false if there is none.
    pub fn undo(&mut self) -> bool {
        self.gesture = None;
        let Some(mut change) = self.past.pop() else { return false };
        change.difference.swap(Arc::make_mut(&mut self.now));
        self.undone.push(change);
        true
    }

    /// Makes the change again that was undone last; false if there is none.
    pub fn redo(&mut self) -> bool {
        self.gesture = None;
        let Some(mut change) = self.undone.pop() else { return false };
        change.difference.swap(Arc::make_mut(&mut self.now));
        self.past.push(change);
        true
    }

    fn change(&mut self, edit: &Edit, gesture: Option<&str>) -> Result<(), CannotEdit> {
        let home = edit.made_on(&self.now)?;
        let goes_on = gesture.is_some() && self.gesture.as_deref() == gesture;
        self.gesture = gesture.map(str::to_owned);
        if home == *self.now {
            return Ok(());
        }
        self.undone.clear();
        let mut before = Arc::clone(&self.now);
        if goes_on && let Some(mut change) = self.past.pop() {
            change.difference.swap(Arc::make_mut(&mut before));
        }
        let words = edit.words(&before);
        self.past.push(Change { words, difference: Difference::between(&before, &home) });
        self.now = Arc::new(home);
        Ok(())
    }
}

/// What one state of a home has in place of what another has.
#[derive(Debug, Clone, Default)]
struct Difference {
    /// All that is in no list, if any of it differs; its lists are empty.
    head: Option<Box<Home>>,
    lists: Lists,
}

/// What differs in each list.
macro_rules! lists {
    ($($list:ident: $thing:ident,)+) => {
        #[derive(Debug, Clone, Default)]
        struct Lists {
            $($list: Pieces<crate::$thing>,)+
        }

        impl Difference {
            /// What leads from `after` back to `before`.
            fn between(before: &Home, after: &Home) -> Self {
                let (old, new) = (head(before), head(after));
                Self {
                    head: (old != new).then(|| Box::new(old)),
                    lists: Lists { $($list: Pieces::between(&before.$list, &after.$list),)+ },
                }
            }

            /// Turns one state into the other, and the difference round.
            fn swap(&mut self, home: &mut Home) {
                if let Some(other) = &mut self.head {
                    let mut now = std::mem::replace(home, Home::clone(other));
                    $(std::mem::swap(&mut home.$list, &mut now.$list);)+
                    **other = now;
                }
                $(self.lists.$list.swap(&mut home.$list);)+
            }
        }

        /// All of a home that is in no list.
        pub(crate) fn head(home: &Home) -> Home {
            // Field by field, so that a new one cannot be forgotten.
            let Home {
                format, name, units, language, address, emergency_phone, usual_space, north_deg,
                $($list: _,)+
            } = home;
            Home {
                format: *format,
                name: name.clone(),
                units: *units,
                language: language.clone(),
                address: address.clone(),
                emergency_phone: emergency_phone.clone(),
                usual_space: usual_space.clone(),
                north_deg: *north_deg,
                $($list: Vec::new(),)+
            }
        }
    };
}

lists! {
    levels: Level,
    spaces: Space,
    passages: Passage,
    components: Component,
    connections: Connection,
    contacts: Contact,
    warranties: Warranty,
    jobs: Job,
    done: Done,
    move_in: MovedIn,
    documents: Document,
    drills: Drill,
}

/// What differs between two lists.
#[derive(Debug, Clone)]
enum Pieces<T> {
    /// Of lists of the same length: what the other has, with its place.
    Single(Vec<(usize, T)>),
    /// From a place on, so many stand for what the other has.
    Run { start: usize, length: usize, other: Vec<T> },
}

impl<T> Default for Pieces<T> {
    fn default() -> Self {
        Self::Single(Vec::new())
    }
}

impl<T: Clone + PartialEq> Pieces<T> {
    fn between(before: &[T], after: &[T]) -> Self {
        if before.len() == after.len() {
            let pairs = before.iter().zip(after).enumerate();
            let differ = pairs.filter(|(_, (old, new))| old != new);
            return Self::Single(differ.map(|(i, (old, _))| (i, old.clone())).collect());
        }
        let shorter = before.len().min(after.len());
        let start = before.iter().zip(after).take_while(|(old, new)| old == new).count();
        let ends = before.iter().rev().zip(after.iter().rev());
        let end = ends.take(shorter - start).take_while(|(old, new)| old == new).count();
        let other = before.iter().skip(start).take(before.len() - end - start).cloned().collect();
        Self::Run { start, length: after.len() - end - start, other }
    }

    fn swap(&mut self, list: &mut Vec<T>) {
        match self {
            Self::Single(pieces) => {
                for (place, other) in pieces {
                    if let Some(now) = list.get_mut(*place) {
                        std::mem::swap(now, other);
                    }
                }
            }
            Self::Run { start, length, other } => {
                let end = (*start + *length).min(list.len());
                let put = std::mem::take(other);
                *length = put.len();
                *other = list.splice((*start).min(end)..end, put).collect();
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Component, Kind};

    fn put(id: &str) -> Edit {
        Edit::PutComponent(Box::new(Component::new(id, Kind::Pipe, id)))
    }

    fn pipes() -> History {
        let mut history = History::new(Home::default());
        for id in ["a", "b", "c"] {
            history.apply(put(id)).unwrap();
        }
        history
    }

    #[test]
    fn edits_of_one_gesture_are_undone_together() {
        let mut history = pipes();
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
    fn a_gesture_is_named_by_where_it_began() {
        let mut history = pipes();
        let rename = |name: &str| Edit::Rename { id: "a".to_owned(), name: name.to_owned() };
        for name in ["P", "Pi", "Pip", "Pipe"] {
            history.apply_within("type", rename(name)).unwrap();
        }
        let fills = |new: &str| vec![("name", "a".to_owned()), ("new", new.to_owned())];
        assert_eq!(history.undo_words(), Some(&("edit-rename", fills("Pipe"))));
        history.undo();
        assert_eq!(history.redo_words(), Some(&("edit-rename", fills("Pipe"))));
        assert_eq!(history.undo_words(), Some(&("edit-add", vec![("name", "c".to_owned())])));
        while history.undo() {}
        assert_eq!(history.undo_words(), None);
    }

    #[test]
    fn an_edit_that_changes_nothing_leaves_no_trace_and_the_past_has_no_end() {
        let mut history = History::new(Home::default());
        history.apply(put("a")).unwrap();
        history.apply(put("a")).unwrap();
        assert!(history.undo() && !history.can_undo());
        for number in 0..500 {
            history.apply(put(&format!("p{number}"))).unwrap();
        }
        let mut undone = 0;
        while history.undo() {
            undone += 1;
        }
        assert_eq!((undone, history.home().components.len()), (500, 0));
    }

    /// What ten thousand edits weigh: only what differs is kept, not a home each.
    #[test]
    fn a_change_keeps_what_differs_and_no_more() {
        let parts =
            (0..250).map(|number| Component::new(&format!("p{number}"), Kind::Pipe, "Pipe"));
        let home = Home { components: parts.collect(), ..Home::default() };
        let mut history = History::new(home);
        for number in 0..1000 {
            let id = format!("p{}", number % 250);
            let name = format!("Pipe {number}");
            history.apply(Edit::Rename { id, name }).unwrap();
        }
        history.apply(put("new")).unwrap();
        history.apply(Edit::RemoveComponent { id: "p7".to_owned() }).unwrap();
        let kept = |pieces: &Pieces<Component>| match pieces {
            Pieces::Single(pieces) => pieces.len(),
            Pieces::Run { other, .. } => other.len(),
        };
        let kept: Vec<usize> =
            history.past.iter().map(|change| kept(&change.difference.lists.components)).collect();
        assert_eq!(kept.len(), 1002);
        assert!(kept[..1000].iter().all(|kept| *kept == 1));
        assert_eq!(kept[1000..], [0, 1]);
        assert!(history.past.iter().all(|change| change.difference.head.is_none()));
    }
}
