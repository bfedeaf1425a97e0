//! What a trouble taught about the map, and the edits that write it there.

use crate::{Date, DeviceState, Edit, Home, With};

/// Something learnt about a device.
///
/// That the spot was wet or dry is no lesson: it passes, and the map holds what stays.
#[derive(Debug, Clone, PartialEq)]
pub struct Learnt {
    /// Id of the device.
    pub device: String,
    /// What it was called before.
    pub device_name: String,
    /// What was learnt.
    pub lesson: Lesson,
}

/// What was learnt about a device.
#[derive(Debug, Clone, PartialEq)]
pub enum Lesson {
    /// How it works, or that it does not.
    State(DeviceState),
    /// The label was wrong: its tag reads so.
    Tag(String),
    /// The label was wrong: it is called so.
    Name(String),
    /// It is somewhere else.
    Place {
        /// Id of the space, if it is in another one.
        space: Option<String>,
        /// What that space was called on the day.
        space_name: String,
        /// x, y on the level and height above its floor, in metres, if known.
        at: Option<(f64, f64, f64)>,
    },
}

impl Learnt {
    /// A lesson about a device of `home`, with the names as they are now.
    #[must_use]
    pub fn new(home: &Home, device: &str, mut lesson: Lesson) -> Self {
        if let Lesson::Place { space: Some(space), space_name, .. } = &mut lesson
            && space_name.is_empty()
        {
            *space_name = home.space(space).map(|s| s.name.clone()).unwrap_or_default();
        }
        let device_name = home.component(device).map(|c| c.name.clone()).unwrap_or_default();
        Self { device: device.to_owned(), device_name, lesson }
    }

    /// The edit that writes it to the map; `on` is the day it was learnt.
    ///
    /// A device that was seized or that leaks by was not worked through, so that the day it was last
    /// worked stays as it is known.
    #[must_use]
    pub fn edit(&self, on: Date) -> Edit {
        let id = self.device.clone();
        match &self.lesson {
            Lesson::State(state) => {
                let worked = matches!(state, DeviceState::Works | DeviceState::Stiff);
                Edit::SetState { id, state: *state, exercised: worked.then_some(on) }
            }
            Lesson::Tag(tag) => {
                let tag = Some(tag.trim().to_owned()).filter(|tag| !tag.is_empty());
                Edit::SetTag { id, tag }
            }
            Lesson::Name(name) => Edit::Rename { id, name: name.clone() },
            Lesson::Place { space, at, .. } => {
                Edit::Move { id, space: space.clone(), at: *at, with: With::Nothing }
            }
        }
    }

    /// The edits of several lessons, as one change: all or nothing.
    #[must_use]
    pub fn edits(learnt: &[Self], on: Date) -> Edit {
        Edit::All(learnt.iter().map(|one| one.edit(on)).collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{CannotEdit, Component, History, Kind, Operates, Space};

    fn home() -> Home {
        let mut main = Component::new("main", Kind::IsolatingValve, "Main");
        main.space = Some("hall".to_owned());
        main.at = Some((1.0, 2.0, 0.4));
        let day = "2025-01-01".parse().unwrap();
        main.operates = Some(Operates { exercised: Some(day), ..Operates::default() });
        let space = |id: &str| Space {
            id: id.to_owned(),
            name: id.to_uppercase(),
            level: None,
            outline: Vec::new(),
            outdoors: false,
        };
        let spaces = vec![space("hall"), space("cellar")];
        Home { spaces, components: vec![main], ..Home::default() }
    }

    fn after(lessons: Vec<Lesson>) -> Result<Component, CannotEdit> {
        let home = home();
        let learnt: Vec<_> = lessons.into_iter().map(|l| Learnt::new(&home, "main", l)).collect();
        let mut history = History::new(home);
        history.apply(Learnt::edits(&learnt, "2026-05-02".parse().unwrap()))?;
        let main = history.home().component("main").unwrap().clone();
        assert!(history.undo() && !history.can_undo(), "one click, one undo");
        Ok(main)
    }

    #[test]
    fn a_device_that_turned_was_worked_that_day_and_a_seized_one_was_not() {
        for (state, day) in [
            (DeviceState::Stiff, "2026-05-02"),
            (DeviceState::Works, "2026-05-02"),
            (DeviceState::Seized, "2025-01-01"),
            (DeviceState::LeaksBy, "2025-01-01"),
        ] {
            let main = after(vec![Lesson::State(state)]).unwrap();
            let operates = main.operates.unwrap();
            assert_eq!(operates.state, state);
            assert_eq!(operates.exercised, Some(day.parse().unwrap()), "{state:?}");
        }
    }

    #[test]
    fn a_wrong_label_and_a_wrong_place_are_put_right_together() {
        let main = after(vec![
            Lesson::Tag(" W7 ".to_owned()),
            Lesson::Name("Garden main".to_owned()),
            Lesson::Place { space: Some("cellar".to_owned()), space_name: String::new(), at: None },
        ]);
        let main = main.unwrap();
        assert_eq!((main.tag.as_deref(), main.name.as_str()), (Some("W7"), "Garden main"));
        // Where in the cellar is not known, and the place in the hall would be wrong.
        assert_eq!((main.space.as_deref(), main.at), (Some("cellar"), None));
    }

    #[test]
    fn a_space_that_is_not_there_changes_nothing_at_all() {
        let nowhere =
            Lesson::Place { space: Some("attic".to_owned()), space_name: String::new(), at: None };
        let error = after(vec![Lesson::State(DeviceState::Stiff), nowhere]);
        let Err(CannotEdit::Unfit(problem)) = error else { panic!("{error:?}") };
        assert_eq!(problem.key, "unknown-id");
    }
}
