//! A process of its own: this test program, started again with a role.

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::time::Duration;

use quarterturn_folder::{Autosave, Folder, FolderError};
use quarterturn_home::Home;

const ROLE: &str = "QUARTERTURN_CHILD_ROLE";
const FOLDER: &str = "QUARTERTURN_CHILD_FOLDER";
/// What the lines begin with that a child tells its parent, unlike those of the test program.
const TOLD: &str = "told: ";

/// A child with a role in a folder. Nothing runs yet.
pub(crate) fn child(role: &str, folder: &Path) -> Command {
    let mut command = Command::new(std::env::current_exe().unwrap());
    of_this_test(&mut command, role, folder);
    command
}

/// The same under a limit to the size of a file, by which a write fails half way as on a full disk.
#[cfg(unix)]
pub(crate) fn child_with_little_room(role: &str, folder: &Path) -> Command {
    let mut command = Command::new("sh");
    // Without the trap the signal would end the process before it could tell.
    command.args(["-c", "trap '' XFSZ; ulimit -f 2; exec \"$0\" \"$@\""]);
    command.arg(std::env::current_exe().unwrap());
    of_this_test(&mut command, role, folder);
    command
}

/// What a child told in its lines.
pub(crate) fn told(output: &[u8]) -> Vec<String> {
    let text = String::from_utf8_lossy(output);
    // The first line of a child follows the name of the test on the same line.
    text.lines().filter_map(|line| line.split_once(TOLD).map(|(_, rest)| rest.to_owned())).collect()
}

/// The home of a session that has come to change number `n`.
pub(crate) fn at_change(home: &Home, n: u64) -> Home {
    let mut home = home.clone();
    home.name = format!("change {n}");
    // Also near the end of the file, so that half an old and half a new one would be noticed.
    home.contacts.last_mut().unwrap().name = format!("after change {n}");
    home
}

/// Which change a home has come to; panics if it is half one and half another.
pub(crate) fn change_of(home: &Home) -> u64 {
    let Some(n) = home.name.strip_prefix("change ") else { return 0 };
    assert_eq!(home.contacts.last().unwrap().name, format!("after change {n}"));
    n.parse().unwrap()
}

#[test]
fn does_what_it_is_told() {
    let Some(role) = std::env::var_os(ROLE) else {
        // Nobody gave a role: see that a child tells when it is given one that there is not.
        let mut unknown = child("dance", Path::new("."));
        assert!(!unknown.stdout(Stdio::null()).stderr(Stdio::null()).status().unwrap().success());
        return;
    };
    let folder = PathBuf::from(std::env::var_os(FOLDER).unwrap());
    match role.to_str() {
        Some("edit calmly") => edit(&folder, false),
        Some("edit busily") => edit(&folder, true),
        Some("save") => tell(&save(&folder).map_or_else(|error| error.key(), |()| "saved")),
        Some("who") => match save(&folder) {
            Err(FolderError::InUse { holder: Some(holder), .. }) => tell(&holder.process),
            other => panic!("{other:?}"),
        },
        other => panic!("no role {other:?}"),
    }
}

fn of_this_test(command: &mut Command, role: &str, folder: &Path) {
    command
        .args(["--exact", "child::does_what_it_is_told", "--nocapture", "--test-threads=1"])
        .env(ROLE, role)
        .env(FOLDER, folder)
        .stdout(Stdio::piped())
        .stderr(Stdio::null());
}

fn tell(what: &impl std::fmt::Display) {
    let mut out = std::io::stdout().lock();
    writeln!(out, "{TOLD}{what}").unwrap();
    out.flush().unwrap();
}

/// Takes up what was left, then edits without end, and tells each change. A busy session waits until each
/// change is kept or saved, so that it is writing nearly all the time. A calm one only submits, as someone
/// who never saves: what is kept then is kept by itself.
fn edit(folder: &Path, is_busy: bool) {
    let folder = Folder::at(folder).unwrap();
    let reading = folder.read().unwrap();
    let hold = folder.hold(&reading).unwrap();
    let (autosave, mut n) = match hold.unsaved().unwrap() {
        Some(left) => {
            let n = change_of(&left.home);
            (Autosave::taking_up(hold, left, || {}).unwrap(), n)
        }
        None => (Autosave::new(hold, || {}).unwrap(), change_of(&reading.home)),
    };
    loop {
        n += 1;
        let home = Arc::new(at_change(&reading.home, n));
        if is_busy && n.is_multiple_of(2) {
            autosave.save(home);
        } else {
            autosave.submit(home);
        }
        tell(&format_args!("submitted {n}"));
        if is_busy {
            autosave.flush().unwrap();
            tell(&format_args!("flushed {n}"));
        } else {
            std::thread::sleep(Duration::from_millis(3));
        }
    }
}

/// Changes the home and saves it.
fn save(folder: &Path) -> Result<(), FolderError> {
    let folder = Folder::at(folder)?;
    let reading = folder.read()?;
    folder.hold(&reading)?.save(&at_change(&reading.home, 1))
}
