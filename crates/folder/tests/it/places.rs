//! Links, folders that go away, places where nothing may be written.

use std::fs::File;
use std::io::Write as _;
use std::path::{Path, PathBuf};

use quarterturn_folder::{Folder, FolderError};
use quarterturn_home::Home;

use crate::child::{at_change, change_of, child, told};
use crate::killed::example;

fn write(path: &Path, bytes: &[u8]) {
    File::create(path).unwrap().write_all(bytes).unwrap();
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn a_home_is_opened_by_its_folder_or_its_file() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    assert_eq!(Folder::at(&folder.root().join("home.ron")).unwrap(), folder);
    assert_eq!(Folder::at(&folder.root().join("../home/.")).unwrap(), folder);
    for (path, key) in [
        (place.path().join("none"), "folder-missing"),
        (place.path().to_owned(), "folder-no-home-file"),
        (folder.root().join("other.ron"), "folder-missing"),
    ] {
        assert_eq!(Folder::at(&path).unwrap_err().key(), key, "{}", path.display());
    }
    assert_eq!(
        Folder::create(folder.root(), &Home::default()).unwrap_err().key(),
        "folder-occupied"
    );
}

#[test]
fn two_windows_cannot_write_one_home() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let reading = folder.read().unwrap();
    let mut hold = folder.hold(&reading).unwrap();
    // In the same process.
    let Err(FolderError::InUse { holder: Some(holder), .. }) = folder.hold(&reading) else {
        panic!("it is held");
    };
    assert_eq!(holder.process, std::process::id());
    // In another, which learns who it is.
    let other = child("who", folder.root()).output().unwrap();
    assert_eq!(told(&other.stdout), [std::process::id().to_string()]);
    hold.save(&at_change(&reading.home, 7)).unwrap();
    drop(hold);
    let other = child("save", folder.root()).output().unwrap();
    assert_eq!(told(&other.stdout), ["saved"]);
    assert_eq!(change_of(&folder.read().unwrap().home), 1);
}

#[test]
fn what_another_wrote_is_never_overwritten() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    // Read before the other saved, held after.
    let stale = folder.read().unwrap();
    let other = child("save", folder.root()).output().unwrap();
    assert_eq!(told(&other.stdout), ["saved"]);
    let mut hold = folder.hold(&stale).unwrap();
    let error = hold.save(&at_change(&stale.home, 9)).unwrap_err();
    assert!(matches!(error, FolderError::Changed { .. }), "{error}");
    assert_eq!(change_of(&folder.read().unwrap().home), 1);
    // One way out is a copy, the other to read it again.
    let copy = hold.save_copy(&at_change(&stale.home, 9), &place.path().join("mine")).unwrap();
    assert_eq!(change_of(&copy.read().unwrap().home), 9);
    let theirs = hold.reload().unwrap();
    hold.save(&at_change(&theirs.home, 2)).unwrap();
    assert_eq!(change_of(&folder.read().unwrap().home), 2);
    // What the other wrote is kept.
    let backup = std::fs::read(folder.root().join("home.ron.bak")).unwrap();
    let backup = quarterturn_home::open("", &String::from_utf8(backup).unwrap()).home.unwrap();
    assert_eq!(change_of(&backup), 1);
}

#[test]
fn the_backup_is_what_was_there_before_the_session() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let first = std::fs::read(folder.file()).unwrap();
    let reading = folder.read().unwrap();
    let mut hold = folder.hold(&reading).unwrap();
    for n in 1..4 {
        hold.save(&at_change(&reading.home, n)).unwrap();
        assert_eq!(std::fs::read(folder.root().join("home.ron.bak")).unwrap(), first);
    }
    assert_eq!(change_of(&folder.read().unwrap().home), 3);
    assert_eq!(names(folder.root()), [".quarterturn", "home.ron", "home.ron.bak"]);
}

#[test]
fn saving_what_is_there_already_touches_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let reading = folder.read().unwrap();
    folder.hold(&reading).unwrap().save(&reading.home).unwrap();
    assert_eq!(names(folder.root()), [".quarterturn", "home.ron"]);
}

#[test]
fn no_path_leads_out_of_the_folder() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    write(&place.path().join("secret.png"), b"secret");
    std::fs::create_dir(folder.root().join("plans")).unwrap();
    write(&folder.root().join("plans/ground.png"), b"plan");
    assert_eq!(folder.read_inside("plans/ground.png").unwrap(), b"plan");
    let absolute = place.path().join("secret.png").display().to_string();
    for path in ["../secret.png", "plans/../../secret.png", &absolute, "..\\secret.png", "", "."] {
        let error = folder.read_inside(path).unwrap_err();
        assert!(matches!(error, FolderError::Outside { .. }), "{path}: {error}");
    }
    assert_eq!(folder.read_inside("plans/none.png").unwrap_err().key(), "folder-missing");
    assert_eq!(folder.read_inside("plans").unwrap_err().key(), "folder-unread");
}

#[cfg(unix)]
#[test]
fn a_link_out_of_the_folder_is_not_followed() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    write(&place.path().join("secret.png"), b"secret");
    std::os::unix::fs::symlink(place.path(), folder.root().join("plans")).unwrap();
    let error = folder.read_inside("plans/secret.png").unwrap_err();
    assert!(matches!(error, FolderError::Outside { .. }), "{error}");
}

#[cfg(unix)]
#[test]
fn a_linked_home_is_saved_where_it_is() {
    let place = tempfile::tempdir().unwrap();
    let real = example(place.path());
    let link = place.path().join("link");
    std::fs::create_dir(&link).unwrap();
    std::os::unix::fs::symlink(real.file(), link.join("home.ron")).unwrap();
    let folder = Folder::at(&link).unwrap();
    assert_eq!(
        (folder.root(), folder.file()),
        (link.canonicalize().unwrap().as_path(), real.file())
    );
    let reading = folder.read().unwrap();
    let mut hold = folder.hold(&reading).unwrap();
    // Who comes by the other way finds it held.
    assert_eq!(real.hold(&reading).unwrap_err().key(), "folder-in-use");
    hold.save(&at_change(&reading.home, 3)).unwrap();
    assert!(std::fs::symlink_metadata(link.join("home.ron")).unwrap().is_symlink());
    assert_eq!(change_of(&real.read().unwrap().home), 3);
    // A folder that is a link.
    let other = place.path().join("other");
    std::os::unix::fs::symlink(real.root(), &other).unwrap();
    assert_eq!(Folder::at(&other).unwrap(), real);
}

#[test]
fn a_folder_that_goes_away_is_told() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let reading = folder.read().unwrap();
    let mut hold = folder.hold(&reading).unwrap();
    std::fs::remove_dir_all(folder.root()).unwrap();
    let error = hold.save(&at_change(&reading.home, 1)).unwrap_err();
    assert_eq!(error.key(), "folder-gone");
    assert!(!folder.root().exists());
    let error = folder.store_photo("main", &[0xff, 0xd8, 0xff]).unwrap_err();
    assert_eq!(error.key(), "folder-gone");
    // The way out that the text names.
    let copy = hold.save_copy(&at_change(&reading.home, 1), &place.path().join("copy"));
    assert_eq!(change_of(&copy.unwrap().read().unwrap().home), 1);
}

#[test]
fn a_home_file_that_was_taken_away_is_written_anew() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let reading = folder.read().unwrap();
    let mut hold = folder.hold(&reading).unwrap();
    std::fs::remove_file(folder.file()).unwrap();
    hold.save(&at_change(&reading.home, 1)).unwrap();
    assert_eq!(change_of(&folder.read().unwrap().home), 1);
}

#[test]
fn what_saving_would_lose_is_not_saved_over() {
    let place = tempfile::tempdir().unwrap();
    for (name, bytes, key) in [
        ("newer", &b"Home(format: 99, name: \"Hut\", units: Us)"[..], "folder-newer"),
        ("latin", b"Home(format: 1, name: \"Caba\xf1a\", units: Us)", "folder-not-text"),
    ] {
        let root = place.path().join(name);
        std::fs::create_dir(&root).unwrap();
        write(&root.join("home.ron"), bytes);
        let folder = Folder::at(&root).unwrap();
        let reading = folder.read().unwrap();
        assert!(!reading.may_save(), "{name}");
        assert_eq!(folder.hold(&reading).unwrap_err().key(), key);
    }
    let root = place.path().join("none");
    std::fs::create_dir(&root).unwrap();
    write(&root.join("home.ron"), b"Home(");
    assert_eq!(Folder::at(&root).unwrap().read().unwrap_err().key(), "folder-no-home");
}

#[cfg(unix)]
#[test]
fn a_disk_without_room_loses_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let before = std::fs::read(folder.file()).unwrap();
    let output = crate::child::child_with_little_room("save", folder.root()).output().unwrap();
    assert_eq!(told(&output.stdout), ["folder-full"]);
    assert_eq!(std::fs::read(folder.file()).unwrap(), before);
    assert_eq!(names(folder.root()), [".quarterturn", "home.ron"]);
}

/// Run as root, to whom everything is permitted, the child is another user.
#[cfg(unix)]
#[test]
fn a_folder_that_may_not_be_written_is_only_looked_at() {
    use std::os::unix::fs::{MetadataExt as _, PermissionsExt as _};
    use std::os::unix::process::CommandExt as _;
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    let mode = |path: &Path, mode| {
        std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode)).unwrap();
    };
    mode(place.path(), 0o755);
    mode(folder.root(), 0o555);
    let mut command = child("save", folder.root());
    if std::fs::metadata(place.path()).unwrap().uid() == 0 {
        const NOBODY: u32 = 65534;
        // The other user may not reach where this program was built.
        let program: PathBuf = place.path().join("child");
        std::fs::copy(std::env::current_exe().unwrap(), &program).unwrap();
        let mut other = std::process::Command::new(&program);
        other.args(command.get_args()).stdout(std::process::Stdio::piped());
        other.envs(command.get_envs().filter_map(|(name, value)| Some((name, value?))));
        other.uid(NOBODY).gid(NOBODY).current_dir(place.path());
        command = other;
    }
    let output = command.output().unwrap();
    mode(folder.root(), 0o755);
    assert_eq!(told(&output.stdout), ["folder-read-only"]);
    assert_eq!(names(folder.root()), ["home.ron"]);
    assert_eq!(change_of(&folder.read().unwrap().home), 0);
}
