//! The right to write a home.

use std::path::{Path, PathBuf};

use quarterturn_home::{Home, Kept};

use crate::folder::{make_empty, read_at_most};
use crate::kinds::{BACKUP_ENDING, HOME_FILE, LARGEST_FILE_MIB, LARGEST_HOME_MIB};
use crate::lock::{Asked, Lock};
use crate::replace::{replace, sweep};
use crate::unsaved::{self, Unsaved};
use crate::{Folder, FolderError, Reading, Stamp};

/// The right to write a home. It lasts until it is dropped or the process ends, however that ends.
#[derive(Debug)]
pub struct Hold {
    folder: Folder,
    kept: Kept,
    /// What the home file held when it was read or last written by us.
    stamp: Stamp,
    /// True once the home file holds what we wrote.
    is_ours: bool,
    _lock: Lock,
}

impl Hold {
    pub(crate) fn take(folder: &Folder, reading: &Reading) -> Result<Self, FolderError> {
        folder.make_state()?;
        let path = folder.state_file(".lock");
        let asked = Lock::ask(&path).map_err(|error| FolderError::writing(&path, error))?;
        let lock = match asked {
            Asked::Taken(lock) => lock,
            Asked::Held(holder) => {
                return Err(FolderError::InUse { path: folder.file().to_owned(), holder });
            }
        };
        // A writer that was killed leaves its half-written files.
        sweep(folder.file());
        sweep(&backup(folder));
        sweep(&unsaved::journal(folder));
        Ok(Self {
            folder: folder.clone(),
            kept: reading.kept.clone(),
            stamp: reading.stamp,
            is_ours: false,
            _lock: lock,
        })
    }

    /// The home's folder.
    #[must_use]
    pub fn folder(&self) -> &Folder {
        &self.folder
    }

    /// Saves the home. If the process is killed meanwhile, the file holds the old or the new home, whole.
    ///
    /// What the file held before this hold first wrote it is kept beside it, as `home.ron.bak`. What
    /// was unsaved of this session is forgotten.
    ///
    /// Between the check that nobody else changed the file and the moment the new one takes its name lie
    /// some microseconds, in which an editor that asks for no lock could slip in.
    ///
    /// # Errors
    /// If someone else changed the file since it was read ([`FolderError::Changed`]: save a copy, or
    /// [`reload`](Self::reload)), or it cannot be written. The file is then as it was.
    pub fn save(&mut self, home: &Home) -> Result<(), FolderError> {
        let text = self.text(home);
        let file = self.folder.file();
        let writing = |error| FolderError::writing(file, error);
        match self.folder.home_bytes() {
            Ok(now) if Stamp::of(&now) != self.stamp => {
                return Err(FolderError::Changed { path: file.to_owned() });
            }
            Ok(now) if now == text.as_bytes() => {
                unsaved::forget(&self.folder)?;
                return Ok(());
            }
            Ok(now) => {
                if !self.is_ours {
                    let backup = backup(&self.folder);
                    replace(&backup, &now).map_err(|error| FolderError::writing(&backup, error))?;
                }
            }
            // Someone took the file away. Nothing is overwritten by putting it back.
            Err(FolderError::Missing { .. }) if self.folder.root().is_dir() => {}
            Err(FolderError::Missing { .. }) => {
                return Err(FolderError::Gone { folder: self.folder.root().to_owned() });
            }
            Err(other) => return Err(other),
        }
        // First as unsaved, in place of an older one: killed between the two steps below, the next session
        // finds unsaved what equals what is saved, and is not offered what is older. If it cannot be
        // kept, saving is still worth the attempt.
        drop(self.keep_unsaved(home));
        replace(file, text.as_bytes()).map_err(writing)?;
        self.stamp = Stamp::of(text.as_bytes());
        self.is_ours = true;
        unsaved::forget(&self.folder)
    }

    /// Reads what someone else wrote, from which saving goes on. What is unsaved of this session stays
    /// until the next save.
    ///
    /// # Errors
    /// If it cannot be read, or saving it would lose some of it.
    pub fn reload(&mut self) -> Result<Reading, FolderError> {
        let reading = self.folder.read()?;
        reading.check_may_save(self.folder.file())?;
        self.kept = reading.kept.clone();
        self.stamp = reading.stamp;
        self.is_ours = false;
        Ok(reading)
    }

    /// Saves the home in a new folder, with everything else that belongs to it.
    ///
    /// # Errors
    /// If there is such a folder with something in it, or it cannot be written.
    pub fn save_copy(&self, home: &Home, to: &Path) -> Result<Folder, FolderError> {
        copy(&self.folder, &self.text(home), to)
    }

    /// What an earlier session left unsaved, if it came to a sudden end.
    ///
    /// # Errors
    /// If it is there and cannot be read.
    pub fn unsaved(&self) -> Result<Option<Unsaved>, FolderError> {
        unsaved::find(&self.folder)
    }

    /// Goes on from a home with this beside it.
    pub(crate) fn adopt(&mut self, kept: Kept) {
        self.kept = kept;
    }

    /// Keeps the home as unsaved, in place of what this session kept before.
    pub(crate) fn keep_unsaved(&self, home: &Home) -> Result<(), FolderError> {
        unsaved::keep(&self.folder, self.stamp, &self.text(home))
    }

    fn text(&self, home: &Home) -> String {
        quarterturn_home::save(home, &self.kept)
    }
}

/// Copies a home to a new folder, with `text` as its home file.
fn copy(from: &Folder, text: &str, to: &Path) -> Result<Folder, FolderError> {
    make_empty(to)?;
    for path in from.members()?.iter().filter(|path| *path != HOME_FILE) {
        let bytes = read_at_most(&from.root().join(path), LARGEST_FILE_MIB.max(LARGEST_HOME_MIB))?;
        let target = to.join(path);
        let writing = |error| FolderError::writing(&target, error);
        std::fs::create_dir_all(crate::replace::parent(&target)).map_err(writing)?;
        replace(&target, &bytes).map_err(writing)?;
    }
    // Last: a folder without it is no home, so that half a copy is not taken for a whole one.
    let file = to.join(HOME_FILE);
    replace(&file, text.as_bytes()).map_err(|error| FolderError::writing(&file, error))?;
    Folder::at(to)
}

/// Where what another session left of the home file is kept.
pub(crate) fn backup(folder: &Folder) -> PathBuf {
    let mut name = folder.file().as_os_str().to_owned();
    name.push(".");
    name.push(BACKUP_ENDING);
    PathBuf::from(name)
}
