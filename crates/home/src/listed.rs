//! The lists of a home whose things have ids: finding, putting and taking them.

use crate::{CannotEdit, Component, Contact, Document, Home, Job, Level, Space, Warranty};

/// What has an id of its own in a list of the home.
pub(crate) trait Listed: Sized {
    fn id(&self) -> &str;
    fn list(home: &Home) -> &[Self];
    fn list_mut(home: &mut Home) -> &mut Vec<Self>;
    fn nothing(id: &str) -> CannotEdit;
}

macro_rules! listed {
    ($($thing:ident $list:ident,)+) => {
        $(impl Listed for $thing {
            fn id(&self) -> &str {
                &self.id
            }

            fn list(home: &Home) -> &[Self] {
                &home.$list
            }

            fn list_mut(home: &mut Home) -> &mut Vec<Self> {
                &mut home.$list
            }

            fn nothing(id: &str) -> CannotEdit {
                match stringify!($list) {
                    "components" => CannotEdit::NoComponent(id.to_owned()),
                    list => CannotEdit::Nothing { list, id: id.to_owned() },
                }
            }
        })+
    };
}

listed! {
    Level levels,
    Space spaces,
    Component components,
    Contact contacts,
    Warranty warranties,
    Job jobs,
    Document documents,
}

/// Puts a thing in the place of the one with its id, or behind all others.
pub(crate) fn put<T: Listed>(home: &mut Home, new: T) -> Result<(), CannotEdit> {
    let is_known = T::list(home).iter().any(|old| old.id() == new.id());
    if !is_known {
        is_free(home, new.id())?;
    }
    let list = T::list_mut(home);
    match list.iter_mut().find(|old| old.id() == new.id()) {
        Some(old) => *old = new,
        None => list.push(new),
    }
    Ok(())
}

pub(crate) fn have<T: Listed>(home: &Home, id: &str) -> Result<(), CannotEdit> {
    let is_there = T::list(home).iter().any(|thing| thing.id() == id);
    if is_there { Ok(()) } else { Err(T::nothing(id)) }
}

/// Refuses an id that is empty, or that a spot of the home has.
pub(crate) fn is_free(home: &Home, id: &str) -> Result<(), CannotEdit> {
    if id.is_empty() {
        return Err(CannotEdit::NoId);
    }
    if home.has_id(id) { Err(CannotEdit::IdTaken(id.to_owned())) } else { Ok(()) }
}

/// Takes out the first of a list that equals `thing`.
pub(crate) fn take<T: PartialEq>(
    things: &mut Vec<T>,
    thing: &T,
    list: &'static str,
    id: impl Fn() -> String,
) -> Result<(), CannotEdit> {
    let index = things.iter().position(|other| other == thing);
    things.remove(index.ok_or_else(|| CannotEdit::Nothing { list, id: id() })?);
    Ok(())
}
