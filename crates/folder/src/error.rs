//! What can go wrong with a home on disk, for people and for developers.

use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use quarterturn_guidance::{Catalogue, Fill, fill};
use quarterturn_home::Problem;

use crate::{Holder, ZipFault};

/// Why something could not be done with a home on disk. Nothing was lost or overwritten by it.
///
/// [`told`](Self::told) is the text for people: what is wrong with which file, and what to do.
#[derive(Debug, thiserror::Error)]
pub enum FolderError {
    /// There is no such file or folder.
    #[error("{} is not there", path.display())]
    Missing {
        /// What was looked for.
        path: PathBuf,
    },
    /// The folder is no home.
    #[error("{} holds no {file}", folder.display())]
    NoHomeFile {
        /// The folder.
        folder: PathBuf,
        /// The file that makes a folder a home.
        file: String,
    },
    /// It could not be read.
    #[error("{} could not be read", path.display())]
    Unread {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// It is too large to be what it should be.
    #[error("{} has more than {most_mib} MiB", path.display())]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// Most that is read, in MiB.
        most_mib: u64,
    },
    /// A path leads out of the home's folder.
    #[error("{path} leads out of {}", folder.display())]
    Outside {
        /// The path, as the home file has it.
        path: String,
        /// The folder.
        folder: PathBuf,
    },
    /// A file beside the home cannot have this name.
    #[error("{name:?} is no name for a file beside a home")]
    BadName {
        /// The name.
        name: String,
    },
    /// It is no picture of a kind that is kept.
    #[error("{path} is no JPEG, PNG or WebP picture")]
    NotAPicture {
        /// What it would have been stored as.
        path: String,
    },
    /// The file holds nothing that could be shown as a home.
    #[error("{} holds no readable home: {} problems", path.display(), problems.len())]
    NoHome {
        /// The file.
        path: PathBuf,
        /// What is wrong with it; never empty.
        problems: Vec<Problem>,
    },
    /// The file is of a newer format, so that saving would lose something.
    #[error("{} is in a newer format", path.display())]
    Newer {
        /// The file.
        path: PathBuf,
    },
    /// The file is not text in UTF-8, so that saving would lose something.
    #[error("{} is not text in UTF-8", path.display())]
    NotText {
        /// The file.
        path: PathBuf,
    },
    /// Another window or process may write the home now.
    #[error("{} is being edited by {holder:?}", path.display())]
    InUse {
        /// The home file.
        path: PathBuf,
        /// Who it is, if known.
        holder: Option<Holder>,
    },
    /// The file is no longer the one that was read.
    #[error("{} was changed by someone else since it was read", path.display())]
    Changed {
        /// The file.
        path: PathBuf,
    },
    /// The home's folder is gone.
    #[error("the folder {} is gone", folder.display())]
    Gone {
        /// The folder.
        folder: PathBuf,
    },
    /// Nothing may be written there.
    #[error("{} may not be written", path.display())]
    ReadOnly {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// The disk is full.
    #[error("no room to write {}", path.display())]
    Full {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// It could not be written.
    #[error("{} could not be written", path.display())]
    Unwritten {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Something is there already, and is not overwritten.
    #[error("{} is there already", path.display())]
    Occupied {
        /// The file or folder.
        path: PathBuf,
    },
    /// The thread that saves has come to an end.
    #[error("{} is no longer saved: its thread has ended", path.display())]
    Stopped {
        /// The home file.
        path: PathBuf,
    },
    /// A zip is not taken.
    #[error("{}: {fault}", zip.display())]
    Zip {
        /// The zip.
        zip: PathBuf,
        /// What is wrong with it.
        fault: ZipFault,
    },
}

impl FolderError {
    /// What went wrong with which file, and what to do about it.
    #[must_use]
    pub fn told(&self, words: &Catalogue) -> String {
        let fills = [fill("problem", &self.problem(words)), fill("remedy", &self.remedy(words))];
        words.fill("folder-told", &fills)
    }

    /// What went wrong with which file.
    #[must_use]
    pub fn problem(&self, words: &Catalogue) -> String {
        words.fill(self.key(), &self.fills(words))
    }

    /// What to do about it.
    #[must_use]
    pub fn remedy(&self, words: &Catalogue) -> String {
        words.fill(&format!("{}-remedy", self.key()), &self.fills(words))
    }

    /// The key of the text for people; that of the remedy ends in `-remedy`.
    #[must_use]
    pub fn key(&self) -> &'static str {
        match self {
            Self::Missing { .. } => "folder-missing",
            Self::NoHomeFile { .. } => "folder-no-home-file",
            Self::Unread { .. } => "folder-unread",
            Self::TooLarge { .. } => "folder-too-large",
            Self::Outside { .. } => "folder-outside",
            Self::BadName { .. } => "folder-bad-name",
            Self::NotAPicture { .. } => "folder-not-a-picture",
            Self::NoHome { .. } => "folder-no-home",
            Self::Newer { .. } => "folder-newer",
            Self::NotText { .. } => "folder-not-text",
            Self::InUse { holder: Some(_), .. } => "folder-in-use",
            Self::InUse { holder: None, .. } => "folder-in-use-by-unknown",
            Self::Changed { .. } => "folder-changed",
            Self::Gone { .. } => "folder-gone",
            Self::ReadOnly { .. } => "folder-read-only",
            Self::Full { .. } => "folder-full",
            Self::Unwritten { .. } => "folder-unwritten",
            Self::Occupied { .. } => "folder-occupied",
            Self::Stopped { .. } => "folder-stopped",
            Self::Zip { fault, .. } => fault.key(),
        }
    }

    fn fills(&self, words: &Catalogue) -> Vec<Fill<'static>> {
        let place = |path: &Path| fill("path", &path.display().to_string());
        match self {
            Self::Missing { path }
            | Self::Newer { path }
            | Self::NotText { path }
            | Self::Changed { path }
            | Self::Occupied { path }
            | Self::Stopped { path }
            | Self::InUse { path, holder: None } => vec![place(path)],
            Self::NoHomeFile { folder, file } => vec![place(folder), fill("file", file)],
            Self::Gone { folder } => vec![place(folder)],
            Self::Unread { path, source }
            | Self::ReadOnly { path, source }
            | Self::Full { path, source }
            | Self::Unwritten { path, source } => {
                vec![place(path), fill("why", &source.to_string())]
            }
            Self::TooLarge { path, most_mib } => {
                vec![place(path), fill("most", &most_mib.to_string())]
            }
            Self::Outside { path, folder } => vec![fill("inside", path), place(folder)],
            Self::BadName { name } => vec![fill("path", name)],
            Self::NotAPicture { path } => vec![fill("path", path)],
            Self::NoHome { path, problems } => {
                let first = problems.first().map(|p| words.problem(p)).unwrap_or_default();
                vec![place(path), fill("first", &first)]
            }
            Self::InUse { path, holder: Some(holder) } => vec![
                place(path),
                fill("process", &holder.process.to_string()),
                fill("host", &holder.host),
            ],
            Self::Zip { zip, fault } => {
                let mut fills = fault.fills();
                fills.push(place(zip));
                fills
            }
        }
    }

    /// What people can do about it that the system did not write `path`, or did not make it.
    #[must_use]
    pub fn writing(path: &Path, source: io::Error) -> Self {
        let path = path.to_owned();
        match source.kind() {
            ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => {
                Self::ReadOnly { path, source }
            }
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::FileTooLarge => {
                Self::Full { path, source }
            }
            ErrorKind::AlreadyExists => Self::Occupied { path },
            ErrorKind::NotFound => Self::Gone { folder: crate::replace::parent(&path).to_owned() },
            _ => Self::Unwritten { path, source },
        }
    }

    /// Reading `path` failed.
    pub(crate) fn reading(path: &Path, source: io::Error) -> Self {
        let path = path.to_owned();
        match source.kind() {
            ErrorKind::NotFound => Self::Missing { path },
            _ => Self::Unread { path, source },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn one_of_each() -> Vec<FolderError> {
        let path = PathBuf::from("/homes/hut/home.ron");
        let folder = PathBuf::from("/homes/hut");
        let system = || io::Error::from(ErrorKind::Interrupted);
        let holder = Holder { process: 4711, host: "attic".to_owned() };
        let problems = quarterturn_home::open("home.ron", "Home(").problems;
        let mut all = vec![
            FolderError::Missing { path: path.clone() },
            FolderError::NoHomeFile { folder: folder.clone(), file: "home.ron".to_owned() },
            FolderError::Unread { path: path.clone(), source: system() },
            FolderError::TooLarge { path: path.clone(), most_mib: 64 },
            FolderError::Outside { path: "/homes/hut/../x".to_owned(), folder: folder.clone() },
            FolderError::BadName { name: "/homes/hut".to_owned() },
            FolderError::NotAPicture { path: "/homes/hut/photos/a".to_owned() },
            FolderError::NoHome { path: path.clone(), problems },
            FolderError::Newer { path: path.clone() },
            FolderError::NotText { path: path.clone() },
            FolderError::InUse { path: path.clone(), holder: Some(holder) },
            FolderError::InUse { path: path.clone(), holder: None },
            FolderError::Changed { path: path.clone() },
            FolderError::Gone { folder },
            FolderError::ReadOnly { path: path.clone(), source: system() },
            FolderError::Full { path: path.clone(), source: system() },
            FolderError::Unwritten { path: path.clone(), source: system() },
            FolderError::Occupied { path: path.clone() },
            FolderError::Stopped { path: path.clone() },
        ];
        let zip = PathBuf::from("/homes/hut.zip");
        all.extend(
            ZipFault::one_of_each()
                .into_iter()
                .map(|fault| FolderError::Zip { zip: zip.clone(), fault }),
        );
        all
    }

    #[test]
    fn each_error_names_its_file_and_a_remedy_in_every_language() {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for error in one_of_each() {
                let told = error.told(&words);
                assert!(words.has(error.key()), "{}", error.key());
                assert!(told.contains("/homes/hut"), "{told}");
                assert!(!told.contains(['{', '[']), "{told}");
                assert!(error.remedy(&words).len() > 20, "{told}");
                assert_ne!(error.problem(&words), error.remedy(&words));
            }
        }
    }

    #[test]
    fn what_the_system_says_becomes_what_people_can_act_on() {
        let path = Path::new("/homes/hut/home.ron");
        let key = |kind: ErrorKind| FolderError::writing(path, kind.into()).key();
        assert_eq!(key(ErrorKind::StorageFull), "folder-full");
        assert_eq!(key(ErrorKind::PermissionDenied), "folder-read-only");
        assert_eq!(key(ErrorKind::ReadOnlyFilesystem), "folder-read-only");
        assert_eq!(key(ErrorKind::NotFound), "folder-gone");
        assert_eq!(key(ErrorKind::Other), "folder-unwritten");
        assert_eq!(FolderError::reading(path, ErrorKind::NotFound.into()).key(), "folder-missing");
    }
}
