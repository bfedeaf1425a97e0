//! Why a zip is not taken.

use quarterturn_guidance::{Fill, fill};

/// What is wrong with a zip that should be a home. Nothing of it was unpacked.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum ZipFault {
    /// It is no zip, or its end is missing.
    #[error("not a zip, or cut off")]
    NotAZip,
    /// A file in it is damaged.
    #[error("{entry} is damaged")]
    Damaged {
        /// The file in the zip.
        entry: String,
    },
    /// A file in it has a password.
    #[error("{entry} is encrypted")]
    Encrypted {
        /// The file in the zip.
        entry: String,
    },
    /// A file in it is packed in a way that is not read.
    #[error("{entry} is compressed in a way that is not read")]
    Method {
        /// The file in the zip.
        entry: String,
    },
    /// A link, which may lead anywhere.
    #[error("{entry} is a link")]
    Link {
        /// The link in the zip.
        entry: String,
    },
    /// A path that leads out of the folder.
    #[error("{entry} leads out of the folder")]
    Outside {
        /// The path in the zip.
        entry: String,
    },
    /// Two files of the same name, or whose names differ in nothing but capitals.
    #[error("{entry} is there twice")]
    Twice {
        /// The name; empty if it cannot be told.
        entry: String,
    },
    /// Something that does not belong to a home.
    #[error("{entry} does not belong to a home")]
    Unexpected {
        /// The file in the zip.
        entry: String,
    },
    /// Too many files.
    #[error("more than {most} files")]
    TooMany {
        /// Most that are taken.
        most: usize,
    },
    /// A file that is too large.
    #[error("{entry} has more than {most_mib} MiB")]
    TooLarge {
        /// The file in the zip.
        entry: String,
        /// Most that is taken, in MiB.
        most_mib: u64,
    },
    /// Too much altogether.
    #[error("more than {most_mib} MiB altogether")]
    TooLargeAltogether {
        /// Most that is taken, in MiB.
        most_mib: u64,
    },
    /// It grows beyond measure when unpacked, as only a zip does that was made to do harm.
    #[error("{entry} grows more than {most} times")]
    Grows {
        /// The file in the zip.
        entry: String,
        /// How many times it may grow.
        most: u64,
    },
    /// There is no home file in it.
    #[error("no home file")]
    NoHomeFile,
}

impl ZipFault {
    pub(crate) fn key(&self) -> &'static str {
        match self {
            Self::NotAZip => "folder-zip-not-a-zip",
            Self::Damaged { .. } => "folder-zip-damaged",
            Self::Encrypted { .. } => "folder-zip-encrypted",
            Self::Method { .. } => "folder-zip-method",
            Self::Link { .. } => "folder-zip-link",
            Self::Outside { .. } => "folder-zip-outside",
            Self::Twice { .. } => "folder-zip-twice",
            Self::Unexpected { .. } => "folder-zip-unexpected",
            Self::TooMany { .. } => "folder-zip-too-many",
            Self::TooLarge { .. } => "folder-zip-too-large",
            Self::TooLargeAltogether { .. } => "folder-zip-too-large-altogether",
            Self::Grows { .. } => "folder-zip-grows",
            Self::NoHomeFile => "folder-zip-no-home-file",
        }
    }

    pub(crate) fn fills(&self) -> Vec<Fill<'static>> {
        match self {
            Self::NotAZip | Self::NoHomeFile => Vec::new(),
            Self::Damaged { entry }
            | Self::Encrypted { entry }
            | Self::Method { entry }
            | Self::Link { entry }
            | Self::Outside { entry }
            | Self::Twice { entry }
            | Self::Unexpected { entry } => vec![fill("entry", &shown(entry))],
            Self::TooMany { most } => vec![fill("most", &most.to_string())],
            Self::TooLarge { entry, most_mib } => {
                vec![fill("entry", &shown(entry)), fill("most", &most_mib.to_string())]
            }
            Self::TooLargeAltogether { most_mib } => vec![fill("most", &most_mib.to_string())],
            Self::Grows { entry, most } => {
                vec![fill("entry", &shown(entry)), fill("most", &most.to_string())]
            }
        }
    }

    #[cfg(test)]
    pub(crate) fn one_of_each() -> Vec<Self> {
        let entry = || "plans/ground.png".to_owned();
        vec![
            Self::NotAZip,
            Self::Damaged { entry: entry() },
            Self::Encrypted { entry: entry() },
            Self::Method { entry: entry() },
            Self::Link { entry: entry() },
            Self::Outside { entry: entry() },
            Self::Twice { entry: entry() },
            Self::Unexpected { entry: entry() },
            Self::TooMany { most: 10 },
            Self::TooLarge { entry: entry(), most_mib: 10 },
            Self::TooLargeAltogether { most_mib: 10 },
            Self::Grows { entry: entry(), most: 10 },
            Self::NoHomeFile,
        ]
    }
}

/// A name from a zip may hold anything: what would not show is marked, and it is kept short.
fn shown(entry: &str) -> String {
    const LONGEST: usize = 80;
    let mut text: String =
        entry.chars().take(LONGEST).map(|c| if c.is_control() { '\u{fffd}' } else { c }).collect();
    if entry.chars().count() > LONGEST {
        text.push('\u{2026}');
    }
    text
}
