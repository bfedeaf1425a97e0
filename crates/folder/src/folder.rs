//! A home's folder, to be read from.

use std::fs::File;
use std::io::{ErrorKind, Read as _};
use std::path::{Path, PathBuf};

use quarterturn_home::{Home, Kept, Problem};

use crate::kinds::{
    HOME_FILE, LARGEST_FILE_MIB, LARGEST_HOME_MIB, STATE_FOLDER, belongs, plain_parts,
};
use crate::replace::parent;
use crate::{FolderError, Hold, Stamp};

/// A home on disk. Opening it writes nothing; [`hold`](Self::hold) is for writing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Folder {
    root: PathBuf,
    /// The home file itself, where links to it end.
    file: PathBuf,
}

/// A home file as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The home, with what is sound.
    pub home: Home,
    /// What is wrong with the file.
    pub problems: Vec<Problem>,
    /// What could not be used, so that saving can write it back.
    pub kept: Kept,
    /// What the file held.
    pub stamp: Stamp,
    is_text: bool,
    may_save: bool,
}

impl Folder {
    /// The home at `path`, which is its folder or the home file in it.
    ///
    /// # Errors
    /// If nothing is there, or the folder holds no `home.ron`.
    pub fn at(path: &Path) -> Result<Self, FolderError> {
        let metadata =
            std::fs::metadata(path).map_err(|error| FolderError::reading(path, error))?;
        let (root, file) = if metadata.is_dir() {
            (path, path.join(HOME_FILE))
        } else {
            (parent(path), path.to_owned())
        };
        let real = |path: &Path| path.canonicalize();
        let file = real(&file).map_err(|error| match error.kind() {
            ErrorKind::NotFound => {
                FolderError::NoHomeFile { folder: root.to_owned(), file: HOME_FILE.to_owned() }
            }
            _ => FolderError::reading(&file, error),
        })?;
        let root = real(root).map_err(|error| FolderError::reading(root, error))?;
        Ok(Self { root, file })
    }

    /// Makes a folder for a new home.
    ///
    /// # Errors
    /// If there is such a folder already and something is in it, or it cannot be written.
    pub fn create(root: &Path, home: &Home) -> Result<Self, FolderError> {
        make_empty(root)?;
        let file = root.join(HOME_FILE);
        let text = quarterturn_home::save(home, &Kept::default());
        crate::replace::create_with(&file, |file| std::io::Write::write_all(file, text.as_bytes()))
            .map_err(|error| FolderError::writing(&file, error))?;
        Self::at(root)
    }

    /// The folder, where the pictures are.
    #[must_use]
    pub fn root(&self) -> &Path {
        &self.root
    }

    /// The home file. Where `home.ron` is a link, the file that it leads to.
    #[must_use]
    pub fn file(&self) -> &Path {
        &self.file
    }

    /// Reads the home.
    ///
    /// # Errors
    /// If the file cannot be read, or holds nothing that could be shown as a home.
    pub fn read(&self) -> Result<Reading, FolderError> {
        let bytes = self.home_bytes()?;
        let text = String::from_utf8_lossy(&bytes);
        let is_text = matches!(text, std::borrow::Cow::Borrowed(_));
        let opened = quarterturn_home::open(&self.file.display().to_string(), &text);
        let may_save = opened.may_save();
        let Some(home) = opened.home else {
            return Err(FolderError::NoHome { path: self.file.clone(), problems: opened.problems });
        };
        let stamp = Stamp::of(&bytes);
        let (problems, kept) = (opened.problems, opened.kept);
        Ok(Reading { home, problems, kept, stamp, is_text, may_save })
    }

    /// Reads a picture, or another file of the home, by its path from the folder.
    ///
    /// # Errors
    /// If the path or a link on it leads out of the folder, or the file cannot be read or is too large.
    pub fn read_inside(&self, path: &str) -> Result<Vec<u8>, FolderError> {
        let outside = || FolderError::Outside { path: path.to_owned(), folder: self.root.clone() };
        let parts = plain_parts(path).ok_or_else(outside)?;
        let full = self.root.join(parts.iter().collect::<PathBuf>());
        let real = full.canonicalize().map_err(|error| FolderError::reading(&full, error))?;
        if !real.starts_with(&self.root) {
            return Err(outside());
        }
        read_at_most(&real, LARGEST_FILE_MIB)
    }

    /// Takes the right to write the home as it was read. One process has it at a time.
    ///
    /// # Errors
    /// If another has it, nothing may be written there, or saving would lose some of the file.
    pub fn hold(&self, reading: &Reading) -> Result<Hold, FolderError> {
        reading.check_may_save(&self.file)?;
        Hold::take(self, reading)
    }

    /// Files that belong to the home, by their paths from the folder, in order.
    pub(crate) fn members(&self) -> Result<Vec<String>, FolderError> {
        let mut paths: Vec<String> = vec![HOME_FILE.to_owned()];
        paths.extend(crate::kinds::BESIDE.iter().map(|name| (*name).to_owned()));
        paths.retain(|path| self.root.join(path).is_file());
        for (folder, _) in crate::kinds::FOLDERS {
            paths.extend(self.files_in(folder)?);
        }
        paths.sort();
        Ok(paths)
    }

    /// Files of the home in one of its folders, in order.
    pub(crate) fn files_in(&self, folder: &str) -> Result<Vec<String>, FolderError> {
        let full = self.root.join(folder);
        let entries = match std::fs::read_dir(&full) {
            Ok(entries) => entries,
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
            Err(error) => return Err(FolderError::reading(&full, error)),
        };
        let mut paths = Vec::new();
        for entry in entries {
            let entry = entry.map_err(|error| FolderError::reading(&full, error))?;
            let path = format!("{folder}/{}", entry.file_name().to_string_lossy());
            if belongs(&path).is_some() && entry.path().is_file() {
                paths.push(path);
            }
        }
        paths.sort();
        Ok(paths)
    }

    /// What the home file holds now.
    pub(crate) fn home_bytes(&self) -> Result<Vec<u8>, FolderError> {
        read_at_most(&self.file, LARGEST_HOME_MIB)
    }

    /// Where the lock is, and what is not saved yet. It stands beside the home file itself, so that
    /// all who reach it by different links share it.
    pub(crate) fn state(&self) -> PathBuf {
        parent(&self.file).join(STATE_FOLDER)
    }

    /// A file of the state folder that belongs to this home file: `home.lock` for `home.ron`.
    pub(crate) fn state_file(&self, what: &str) -> PathBuf {
        let stem = self.file.file_stem().map(|stem| stem.to_string_lossy()).unwrap_or_default();
        self.state().join(format!("{stem}{what}"))
    }

    /// Makes the state folder if it is not there.
    pub(crate) fn make_state(&self) -> Result<(), FolderError> {
        let state = self.state();
        if !parent(&self.file).is_dir() {
            return Err(FolderError::Gone { folder: self.root.clone() });
        }
        match std::fs::create_dir(&state) {
            Err(error) if error.kind() != ErrorKind::AlreadyExists || !state.is_dir() => {
                Err(FolderError::writing(&state, error))
            }
            _ => Ok(()),
        }
    }
}

impl Reading {
    /// True if saving the home loses nothing of its file.
    #[must_use]
    pub fn may_save(&self) -> bool {
        self.is_text && self.may_save
    }

    pub(crate) fn check_may_save(&self, file: &Path) -> Result<(), FolderError> {
        let path = file.to_owned();
        match (self.is_text, self.may_save) {
            (false, _) => Err(FolderError::NotText { path }),
            (true, false) => Err(FolderError::Newer { path }),
            (true, true) => Ok(()),
        }
    }
}

/// What a file holds, if it is not larger than `most_mib` MiB.
pub(crate) fn read_at_most(path: &Path, most_mib: u64) -> Result<Vec<u8>, FolderError> {
    let reading = |error| FolderError::reading(path, error);
    let most = most_mib << 20;
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(reading)?;
    if !file.metadata().map_err(reading)?.is_file() {
        // A pipe could keep one waiting for ever.
        return Err(FolderError::Unread {
            path: path.to_owned(),
            source: ErrorKind::InvalidInput.into(),
        });
    }
    let read = file.take(most + 1).read_to_end(&mut bytes).map_err(reading)?;
    if u64::try_from(read).is_ok_and(|read| read <= most) {
        Ok(bytes)
    } else {
        Err(FolderError::TooLarge { path: path.to_owned(), most_mib })
    }
}

/// Makes a folder, unless there is one already with something in it.
pub(crate) fn make_empty(folder: &Path) -> Result<(), FolderError> {
    match std::fs::create_dir(folder) {
        Err(error) if error.kind() == ErrorKind::AlreadyExists => {
            let is_empty =
                std::fs::read_dir(folder).is_ok_and(|mut entries| entries.next().is_none());
            if is_empty { Ok(()) } else { Err(FolderError::Occupied { path: folder.to_owned() }) }
        }
        other => other.map_err(|error| FolderError::writing(folder, error)),
    }
}
