//! What a home's folder holds.

use std::path::{Component, Path};

/// The file that makes a folder a home.
pub(crate) const HOME_FILE: &str = "home.ron";
/// The folder with the lock and with what is not saved yet.
pub(crate) const STATE_FOLDER: &str = ".quarterturn";
/// What the file is called that holds what another session left of the home file.
pub(crate) const BACKUP_ENDING: &str = "bak";
/// Small files beside the home that belong to it.
pub(crate) const BESIDE: &[&str] = &["log.ron"];
/// Its folders, and what the files in them may end in.
pub(crate) const FOLDERS: &[(&str, &[&str])] = &[
    ("plans", PICTURE_ENDINGS),
    ("photos", PICTURE_ENDINGS),
    ("documents", &["pdf", "txt", "jpg", "jpeg", "png", "webp"]),
];
const PICTURE_ENDINGS: &[&str] = &["jpg", "jpeg", "png", "webp"];

/// Largest home file read, in MiB.
pub(crate) const LARGEST_HOME_MIB: u64 = 256;
/// Largest picture or other file read, in MiB.
pub(crate) const LARGEST_FILE_MIB: u64 = 64;

/// The parts of a path, from the home's folder, to a file that belongs to a home; `None` for any other.
pub(crate) fn belongs(path: &str) -> Option<Vec<&str>> {
    let parts = plain_parts(path)?;
    let is_ours = match parts.as_slice() {
        [name] => *name == HOME_FILE || BESIDE.contains(name),
        [folder, name] => FOLDERS.iter().any(|(ours, endings)| {
            let ending = Path::new(name).extension().and_then(|ending| ending.to_str());
            let ending = ending.map(str::to_ascii_lowercase);
            ours == folder && ending.is_some_and(|ending| endings.contains(&ending.as_str()))
        }),
        _ => false,
    };
    is_ours.then_some(parts)
}

/// The parts of a path that leads nowhere but down and means the same on every system.
pub(crate) fn plain_parts(path: &str) -> Option<Vec<&str>> {
    // What another system reads as a drive, a stream or a folder is refused on all of them.
    if path.contains(['\\', ':', '\0']) || path.chars().any(char::is_control) {
        return None;
    }
    let parts: Option<Vec<&str>> = Path::new(path)
        .components()
        .map(|part| match part {
            Component::Normal(name) => name.to_str(),
            _ => None,
        })
        .collect();
    parts.filter(|parts| !parts.is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_home_has_its_own_files_and_no_others() {
        for path in ["home.ron", "log.ron", "plans/ground.png", "photos/a.JPG", "documents/a.pdf"] {
            assert!(belongs(path).is_some(), "{path}");
        }
        for path in [
            "",
            "/home.ron",
            "home.ron.bak",
            "other.ron",
            "plans",
            "plans/a.exe",
            "plans/a",
            "plans/deep/a.png",
            "photos/a.pdf",
            "../home.ron",
            "plans/../home.ron",
            "plans\\a.png",
            "c:a.png",
            "plans/a.png:b.png",
            "plans/a\n.png",
        ] {
            assert!(belongs(path).is_none(), "{path}");
        }
    }
}
