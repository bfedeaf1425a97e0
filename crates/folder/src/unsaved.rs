//! What is edited and not saved yet, kept so that a sudden end loses little.
//!
//! It is the whole home, written beside the home file at each change, in one step like the home file
//! itself. Three lines stand above it: what it is, the stamp of the home file it was edited from, and
//! its own stamp, by which one that is damaged is known.

use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use quarterturn_home::{Home, Kept};

use crate::folder::read_at_most;
use crate::kinds::LARGEST_HOME_MIB;
use crate::lock::Lock;
use crate::replace::replace;
use crate::{Folder, FolderError, Hold, Stamp};

const FIRST_LINE: &str = "// quarterturn: not saved yet, format 1";

/// What a session left that came to a sudden end before it saved.
#[derive(Debug, Clone, PartialEq)]
pub struct Unsaved {
    /// The home as it was left.
    pub home: Home,
    /// What of its file could not be used.
    pub kept: Kept,
    /// When it was left.
    pub when: SystemTime,
    /// True if the home file is no longer the one that was edited: saving this one would take back what
    /// was changed there since.
    pub home_changed_since: bool,
    file: PathBuf,
    /// The stamp of its text.
    stamp: String,
}

/// What a session left unsaved in a home that came to a sudden end; the newest if there are several.
///
/// A home that someone is editing has nothing to offer: what is unsaved there is theirs.
///
/// # Errors
/// If it is there and cannot be read.
pub fn recover(folder: &Folder) -> Result<Option<Unsaved>, FolderError> {
    if Lock::is_held(&folder.state_file(".lock")) { Ok(None) } else { find(folder) }
}

impl Unsaved {
    /// Forgets it, for good. To be called when the owner does not want it, or once it is saved.
    ///
    /// # Errors
    /// If it cannot be taken away.
    pub fn discard(self, hold: &Hold) -> Result<(), FolderError> {
        self.remove_twins(hold.folder())?;
        remove(&self.file)
    }

    /// Takes away other files that hold the same: a session was killed after it had taken this one up
    /// and before it had taken the old file away.
    fn remove_twins(&self, folder: &Folder) -> Result<(), FolderError> {
        for twin in all(folder)? {
            if twin.stamp == self.stamp && twin.file != self.file {
                remove(&twin.file)?;
            }
        }
        Ok(())
    }
}

/// Where the session that is under way keeps what is unsaved.
pub(crate) fn journal(folder: &Folder) -> PathBuf {
    folder.state_file("-unsaved.ron")
}

/// Keeps `text` as unsaved, edited from the home file with the stamp `base`.
pub(crate) fn keep(folder: &Folder, base: Stamp, text: &str) -> Result<(), FolderError> {
    folder.make_state()?;
    let file = journal(folder);
    let whole =
        format!("{FIRST_LINE}\n// {}\n// {}\n{text}", base.hex(), Stamp::of(text.as_bytes()).hex());
    replace(&file, whole.as_bytes()).map_err(|error| FolderError::writing(&file, error))
}

/// Forgets what the session kept.
pub(crate) fn forget(folder: &Folder) -> Result<(), FolderError> {
    remove(&journal(folder))
}

/// Makes what an earlier session left this one's. What is still to be discarded once this session has
/// kept it; `None` if it stands where this session keeps its own, which takes its place in one step.
pub(crate) fn take_up(folder: &Folder, left: Unsaved) -> Result<Option<Unsaved>, FolderError> {
    if left.file == journal(folder) {
        left.remove_twins(folder)?;
        return Ok(None);
    }
    // Another that nobody has decided on yet may stand there.
    set_aside(folder)?;
    Ok(Some(left))
}

/// Discards what this session has taken up and kept.
pub(crate) fn taken_up(folder: &Folder, left: &Unsaved) -> Result<(), FolderError> {
    remove(&left.file).and_then(|()| {
        let ours = Unsaved { file: journal(folder), ..left.clone() };
        ours.remove_twins(folder)
    })
}

/// Moves what stands where this session keeps its own out of the way, so that neither is lost.
pub(crate) fn set_aside(folder: &Folder) -> Result<(), FolderError> {
    let ours = journal(folder);
    if let Some(left) = all(folder)?.into_iter().find(|left| left.file == ours) {
        let short: String = left.stamp.chars().take(8).collect();
        let aside = folder.state_file(&format!("-unsaved-{short}.ron"));
        std::fs::rename(&ours, &aside).map_err(|error| FolderError::writing(&aside, error))?;
    }
    Ok(())
}

/// The newest that is whole and holds something else than the home file.
pub(crate) fn find(folder: &Folder) -> Result<Option<Unsaved>, FolderError> {
    Ok(all(folder)?.into_iter().max_by_key(|left| left.when))
}

/// All that are whole and hold something else than the home file.
pub(crate) fn all(folder: &Folder) -> Result<Vec<Unsaved>, FolderError> {
    let now = match folder.home_bytes() {
        Ok(bytes) => Some(Stamp::of(&bytes)),
        Err(FolderError::Missing { .. }) => None,
        Err(other) => return Err(other),
    };
    let mut left = Vec::new();
    for file in candidates(folder)? {
        let bytes = read_at_most(&file, LARGEST_HOME_MIB)?;
        let Some((base, stamp, text)) = parts(&bytes) else { continue };
        if Some(stamp) == now.map(|now| now.hex()).as_deref() {
            continue;
        }
        let opened = quarterturn_home::open(&file.display().to_string(), text);
        let when = std::fs::metadata(&file).and_then(|metadata| metadata.modified());
        let when = when.map_err(|error| FolderError::reading(&file, error))?;
        let Some(home) = opened.home else { continue };
        let stamp = stamp.to_owned();
        let home_changed_since = now.is_none_or(|now| now.hex() != base);
        left.push(Unsaved { home, kept: opened.kept, when, home_changed_since, file, stamp });
    }
    Ok(left)
}

/// The files that may hold something unsaved, in order.
fn candidates(folder: &Folder) -> Result<Vec<PathBuf>, FolderError> {
    let state = folder.state();
    let entries = match std::fs::read_dir(&state) {
        Ok(entries) => entries,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(FolderError::reading(&state, error)),
    };
    let start = folder.state_file("-unsaved");
    let start = start.file_name().unwrap_or_default().to_string_lossy();
    let mut files: Vec<PathBuf> = entries
        .flatten()
        .map(|entry| entry.path())
        .filter(|path| {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            name.starts_with(&*start) && name.ends_with(".ron") && path.is_file()
        })
        .collect();
    files.sort();
    Ok(files)
}

/// The stamp it was edited from, its own stamp, and the home's text; `None` if it is damaged.
fn parts(bytes: &[u8]) -> Option<(&str, &str, &str)> {
    let rest = std::str::from_utf8(bytes).ok()?.strip_prefix(FIRST_LINE)?.strip_prefix('\n')?;
    let (base, rest) = rest.strip_prefix("// ")?.split_once('\n')?;
    let (stamp, text) = rest.strip_prefix("// ")?.split_once('\n')?;
    (Stamp::of(text.as_bytes()).hex() == stamp).then_some((base, stamp, text))
}

fn remove(file: &Path) -> Result<(), FolderError> {
    match std::fs::remove_file(file) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(FolderError::writing(file, error)),
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn home(name: &str) -> Home {
        Home { format: 1, name: name.to_owned(), ..Home::default() }
    }

    fn folder() -> (tempfile::TempDir, Folder) {
        let place = tempfile::tempdir().unwrap();
        let folder = Folder::create(&place.path().join("hut"), &home("saved")).unwrap();
        (place, folder)
    }

    #[test]
    fn what_was_left_is_found_until_it_is_saved() {
        let (_place, folder) = folder();
        assert_eq!(recover(&folder).unwrap(), None);
        let mut hold = folder.hold(&folder.read().unwrap()).unwrap();
        hold.keep_unsaved(&home("left")).unwrap();
        assert_eq!(recover(&folder).unwrap(), None, "it belongs to whoever is editing");
        let left = hold.unsaved().unwrap().unwrap();
        assert_eq!((left.home.name.as_str(), left.home_changed_since), ("left", false));
        hold.save(&left.home).unwrap();
        assert_eq!(hold.unsaved().unwrap(), None);
        drop(hold);
        assert_eq!(recover(&folder).unwrap(), None);
    }

    #[test]
    fn it_is_told_if_the_home_was_changed_meanwhile() {
        let (_place, folder) = folder();
        let hold = folder.hold(&folder.read().unwrap()).unwrap();
        hold.keep_unsaved(&home("left")).unwrap();
        drop(hold);
        let text = quarterturn_home::save(&home("by hand"), &Kept::default());
        replace(folder.file(), text.as_bytes()).unwrap();
        assert!(recover(&folder).unwrap().unwrap().home_changed_since);
    }

    #[test]
    fn what_was_left_is_not_overwritten_by_the_next_session() {
        let (_place, folder) = folder();
        let hold = folder.hold(&folder.read().unwrap()).unwrap();
        hold.keep_unsaved(&home("first")).unwrap();
        set_aside(&folder).unwrap();
        hold.keep_unsaved(&home("second")).unwrap();
        assert_eq!(all(&folder).unwrap().len(), 2);
        forget(&folder).unwrap();
        let found = hold.unsaved().unwrap().unwrap();
        assert_eq!(found.home.name, "first");
        found.discard(&hold).unwrap();
        assert_eq!(hold.unsaved().unwrap(), None);
    }

    #[test]
    fn what_is_discarded_is_not_offered_in_another_file() {
        let (_place, folder) = folder();
        let hold = folder.hold(&folder.read().unwrap()).unwrap();
        hold.keep_unsaved(&home("first")).unwrap();
        set_aside(&folder).unwrap();
        // Killed after it was taken up and kept, before the old file was taken away.
        hold.keep_unsaved(&home("first")).unwrap();
        assert_eq!(all(&folder).unwrap().len(), 2);
        hold.unsaved().unwrap().unwrap().discard(&hold).unwrap();
        assert_eq!(all(&folder).unwrap(), []);
    }

    #[test]
    fn what_equals_the_home_is_not_offered() {
        let (_place, folder) = folder();
        let hold = folder.hold(&folder.read().unwrap()).unwrap();
        hold.keep_unsaved(&home("saved")).unwrap();
        assert_eq!(hold.unsaved().unwrap(), None);
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        #[test]
        fn a_damaged_one_is_passed_over(at in 0usize..400, with: u8, cut in 0usize..400) {
            let (_place, folder) = folder();
            let hold = folder.hold(&folder.read().unwrap()).unwrap();
            hold.keep_unsaved(&home("left")).unwrap();
            let file = journal(&folder);
            let mut bytes = std::fs::read(&file).unwrap();
            let whole = bytes.clone();
            let at = at % bytes.len();
            bytes[at] = with;
            bytes.truncate(bytes.len() - cut % bytes.len());
            replace(&file, &bytes).unwrap();
            let found = hold.unsaved().unwrap();
            // The second line may be any: it only tells whether the home was changed since.
            let text_is_whole = bytes.len() == whole.len()
                && parts(&bytes).is_some_and(|(_, _, text)| whole.ends_with(text.as_bytes()));
            prop_assert_eq!(found.is_some(), text_is_whole);
        }

        #[test]
        fn any_bytes_are_read_without_panic(bytes: Vec<u8>, header: bool) {
            let mut whole = if header { format!("{FIRST_LINE}\n// ").into_bytes() } else { Vec::new() };
            whole.extend(bytes);
            prop_assert!(parts(&whole).is_none());
        }
    }
}
