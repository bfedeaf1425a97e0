//! Homes that were not saved, that two windows have, or that came in a zip.

use std::sync::Arc;

use quarterturn_folder::{Autosave, Folder, pack_into};
use quarterturn_home::Home;
use quarterturn_window::Opening;

use crate::person::{Person, Place};

#[test]
fn what_a_killed_session_left_is_offered_and_taken_up() {
    let place = Place::new("left");
    let path = place.example("flat");
    let folder = Folder::at(&path).unwrap();
    let leave = |name: &str| {
        let reading = folder.read().unwrap();
        let autosave = Autosave::new(folder.hold(&reading).unwrap(), || ()).unwrap();
        autosave.submit(Arc::new(Home { name: name.to_owned(), ..reading.home }));
        // As a kill would leave it: kept beside the home file, not saved in it.
        autosave.flush().unwrap();
    };
    leave("Unsaved");
    let mut person = Person::opened(&path);
    assert!(person.sees("Something was not saved") && person.sees("was kept"));
    assert_ne!(person.home().name, "Unsaved");
    // Left for the next time.
    person.press("Leave it; ask again next time");
    assert!(!person.sees("Something was not saved"));
    drop(person);
    let mut person = Person::opened(&path);
    person.press("Take it up");
    assert_eq!(person.home().name, "Unsaved");
    person.at.state_mut().finish();
    drop(person);
    assert_eq!(folder.read().unwrap().home.name, "Unsaved");
    assert!(!Person::opened(&path).sees("Something was not saved"));

    leave("Unwanted");
    let mut person = Person::opened(&path);
    person.press("Throw it away");
    drop(person);
    assert!(!Person::opened(&path).sees("Something was not saved"));
    assert_eq!(folder.read().unwrap().home.name, "Unsaved");
}

/// Renames the floor that is shown.
fn rename_floor(person: &mut Person, name: &str) {
    person.press("When nothing is wrong…");
    person.press("Map of the home");
    person.press("Plans and rooms");
    person.press("Floors");
    person.type_into("Name of the floor", name);
    person.press("Keep name and height");
}

fn has_floor(home: &Home, name: &str) -> bool {
    home.levels.iter().any(|level| level.name == name)
}

#[test]
fn two_windows_on_one_home_do_not_overwrite_each_other() {
    let place = Place::new("two");
    let path = place.example("flat");
    let folder = Folder::at(&path).unwrap();
    let on_disk = || folder.read().unwrap().home;
    let (mut first, mut second) = (Person::opened(&path), Person::opened(&path));
    rename_floor(&mut first, "First");
    first.wait("saved", |_| has_floor(&on_disk(), "First"));
    rename_floor(&mut second, "Second");
    second.wait("a question", |person| person.sees("Another window has this home"));
    assert!(has_floor(second.home(), "Second") && !has_floor(&on_disk(), "Second"));
    // The first is closed: the file is still not the one that the second opened.
    first.at.state_mut().finish();
    drop(first);
    second.press("The other window is closed: save now");
    second.wait("a question", |person| person.sees("Someone else changed this home"));
    assert!(has_floor(&on_disk(), "First"));
    second.press("Save mine as a copy…");
    let copy = place.path("mine");
    second.type_into("Folder that it is kept in", &copy.display().to_string());
    second.press("Save the copy");
    second.wait("the copy", |_| copy.join("home.ron").exists());
    second.wait("the copy", |person| {
        person.at.state().folder() == Some(&copy.canonicalize().unwrap())
    });
    assert!(has_floor(&Folder::at(&copy).unwrap().read().unwrap().home, "Second"));
    assert!(has_floor(&on_disk(), "First") && !has_floor(&on_disk(), "Second"));
}

#[test]
fn a_file_that_someone_else_changed_is_shown_when_asked() {
    let place = Place::new("changed");
    let path = place.example("flat");
    let folder = Folder::at(&path).unwrap();
    let mut person = Person::opened(&path);
    let reading = folder.read().unwrap();
    let theirs = Home { name: "Theirs".to_owned(), ..reading.home.clone() };
    folder.hold(&reading).unwrap().save(&theirs).unwrap();
    rename_floor(&mut person, "Mine");
    person.wait("a question", |person| person.sees("Someone else changed this home"));
    person.press("Show what the other wrote; mine goes");
    assert_eq!(person.home(), &theirs);
    // From there it goes on.
    rename_floor(&mut person, "Ours");
    person.wait("saved", |_| has_floor(&folder.read().unwrap().home, "Ours"));
}

#[test]
fn a_zip_is_unpacked_where_one_likes() {
    let place = Place::new("zip");
    let path = place.example("flat");
    let zip = place.path("flat.zip");
    pack_into(&Folder::at(&path).unwrap(), &zip).unwrap();
    let mut person = Person::at(Opening::built_in(), [1280.0, 800.0]);
    let name = Opening::read(&path).unwrap().home.name;
    person.press("Settings…");
    person.press("Another home…");
    person.type_into("Or type the path of the folder", &zip.display().to_string());
    person.press("Open");
    let to = place.path("unpacked");
    person.type_into("Folder that it is kept in", &to.display().to_string());
    person.press("Unpack and open");
    person.wait("the home", |person| person.home().name == name);
    assert_eq!(person.at.state().folder(), Some(to.canonicalize().unwrap().as_path()));
}
