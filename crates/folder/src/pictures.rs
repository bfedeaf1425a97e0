//! Photos and plans, stored by what they hold.
//!
//! A file once stored never changes: its name has the beginning of its stamp, so that the same picture
//! is stored once and another never takes its place. That needs no [`Hold`](crate::Hold).

use std::io::{ErrorKind, Write as _};

use quarterturn_home::Home;

use crate::folder::read_at_most;
use crate::kinds::{LARGEST_FILE_MIB, LARGEST_HOME_MIB, belongs};
use crate::{Folder, FolderError, Hold, Stamp};

impl Folder {
    /// Stores a photo of the component with this id. Returns its path from the folder, such as
    /// `photos/main-1f0c77aa.jpg`.
    ///
    /// # Errors
    /// If it is no JPEG, PNG or WebP, or cannot be written.
    pub fn store_photo(&self, id: &str, bytes: &[u8]) -> Result<String, FolderError> {
        self.store("photos", id, bytes)
    }

    /// Stores a plan of the level with this id. Returns its path from the folder.
    ///
    /// # Errors
    /// If it is no JPEG, PNG or WebP, or cannot be written.
    pub fn store_plan(&self, level: &str, bytes: &[u8]) -> Result<String, FolderError> {
        self.store("plans", level, bytes)
    }

    /// Stores a plan or photo under the path that a home names it by, as in a copy of that home. A file
    /// that is there already stays.
    ///
    /// # Errors
    /// If it is no path of a plan or photo, or cannot be written.
    pub fn store_as(&self, path: &str, bytes: &[u8]) -> Result<(), FolderError> {
        if belongs(path).is_none() {
            return Err(FolderError::BadName { name: path.to_owned() });
        }
        let file = self.root().join(path);
        let full = crate::replace::parent(&file);
        std::fs::create_dir_all(full).map_err(|error| FolderError::writing(full, error))?;
        match crate::replace::create_with(&file, |file| file.write_all(bytes)) {
            Err(error) if error.kind() != ErrorKind::AlreadyExists => {
                Err(FolderError::writing(&file, error))
            }
            _ => Ok(()),
        }
    }

    /// Plans and photos that neither the home, nor anything unsaved, nor the backup refers to, in order. They are never
    /// taken away without being asked: an undo may need them again.
    ///
    /// # Errors
    /// If the folder cannot be read.
    pub fn unused(&self, home: &Home) -> Result<Vec<String>, FolderError> {
        let mut files = self.files_in("photos")?;
        files.extend(self.files_in("plans")?);
        let mut used: Vec<String> = mentioned(home);
        used.extend(mentioned(&self.read()?.home));
        for left in crate::unsaved::all(self)? {
            used.extend(mentioned(&left.home));
        }
        if let Ok(bytes) = read_at_most(&crate::hold::backup(self), LARGEST_HOME_MIB) {
            let before = quarterturn_home::open("", &String::from_utf8_lossy(&bytes));
            used.extend(before.home.iter().flat_map(mentioned));
        }
        files.retain(|file| !used.contains(file));
        files.sort();
        Ok(files)
    }

    fn store(&self, folder: &str, id: &str, bytes: &[u8]) -> Result<String, FolderError> {
        let id: String = id
            .chars()
            .map(|c| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { '-' })
            .collect();
        let Some(ending) = ending(bytes) else {
            return Err(FolderError::NotAPicture { path: format!("{folder}/{id}") });
        };
        if !self.root().is_dir() {
            return Err(FolderError::Gone { folder: self.root().to_owned() });
        }
        let full = self.root().join(folder);
        std::fs::create_dir_all(&full).map_err(|error| FolderError::writing(&full, error))?;
        let stamp = Stamp::of(bytes).hex();
        // Two pictures whose stamps begin alike are told apart by more digits.
        for digits in [8, 64] {
            let short: String = stamp.chars().take(digits).collect();
            let path = format!("{folder}/{id}-{short}.{ending}");
            let file = self.root().join(&path);
            match crate::replace::create_with(&file, |file| file.write_all(bytes)) {
                Ok(()) => return Ok(path),
                Err(error) if error.kind() == ErrorKind::AlreadyExists => {
                    if read_at_most(&file, LARGEST_FILE_MIB).is_ok_and(|there| there == bytes) {
                        return Ok(path);
                    }
                }
                Err(error) => return Err(FolderError::writing(&file, error)),
            }
        }
        Err(FolderError::Occupied { path: full })
    }
}

impl Hold {
    /// Deletes these plans and photos, which the owner was asked about. One that has come into use
    /// meanwhile stays.
    ///
    /// # Errors
    /// If one of them cannot be deleted.
    pub fn delete_unused(&self, home: &Home, paths: &[String]) -> Result<(), FolderError> {
        for path in self.folder().unused(home)?.iter().filter(|path| paths.contains(path)) {
            let file = self.folder().root().join(path);
            std::fs::remove_file(&file).map_err(|error| FolderError::writing(&file, error))?;
        }
        Ok(())
    }
}

/// Paths of files that the home mentions.
fn mentioned(home: &Home) -> Vec<String> {
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref()).map(|p| &p.picture);
    let photos = home.components.iter().filter_map(|component| component.photo.as_ref());
    let documents = home.documents.iter().filter_map(|document| document.file.as_ref());
    plans.chain(photos).chain(documents).cloned().collect()
}

/// What the name of such a picture ends in.
fn ending(bytes: &[u8]) -> Option<&'static str> {
    if bytes.starts_with(&[0xff, 0xd8, 0xff]) {
        Some("jpg")
    } else if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
        Some("png")
    } else if bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        Some("webp")
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use quarterturn_home::{Component, Kind};

    use super::*;

    fn jpeg(rest: &[u8]) -> Vec<u8> {
        [&[0xff, 0xd8, 0xff, 0xe0], rest].concat()
    }

    fn folder() -> (tempfile::TempDir, Folder) {
        let place = tempfile::tempdir().unwrap();
        let home = Home { format: 1, name: "Hut".to_owned(), ..Home::default() };
        let folder = Folder::create(&place.path().join("hut"), &home).unwrap();
        (place, folder)
    }

    #[test]
    fn a_picture_is_stored_once_and_never_replaced() {
        let (_place, folder) = folder();
        let first = folder.store_photo("main", &jpeg(b"one")).unwrap();
        assert!(first.starts_with("photos/main-") && first.ends_with(".jpg"), "{first}");
        assert_eq!(folder.store_photo("main", &jpeg(b"one")).unwrap(), first);
        assert_ne!(folder.store_photo("main", &jpeg(b"two")).unwrap(), first);
        assert_eq!(folder.read_inside(&first).unwrap(), jpeg(b"one"));
        // Someone put another file where it would be.
        crate::replace::replace(&folder.root().join(&first), b"else").unwrap();
        let longer = folder.store_photo("main", &jpeg(b"one")).unwrap();
        assert!(longer.len() > first.len());
        assert_eq!(folder.read_inside(&first).unwrap(), b"else");
    }

    #[test]
    fn an_id_cannot_lead_elsewhere_and_only_pictures_are_stored() {
        let (_place, folder) = folder();
        let path = folder.store_plan("../../Up stairs", &jpeg(b"")).unwrap();
        assert!(path.starts_with("plans/------up-stairs-"), "{path}");
        assert!(matches!(
            folder.store_photo("main", b"GIF89a"),
            Err(FolderError::NotAPicture { .. })
        ));
    }

    #[test]
    fn only_what_nothing_refers_to_is_unused_and_only_what_was_asked_about_is_deleted() {
        let (_place, folder) = folder();
        let path = |name: &str| folder.store_photo(name, &jpeg(name.as_bytes())).unwrap();
        let (used, left, one, two) = (path("used"), path("left"), path("one"), path("two"));
        let with = |photo: &String| {
            let mut home = folder.read().unwrap().home;
            let mut main = Component::new("main", Kind::IsolatingValve, "Main");
            main.photo = Some(photo.clone());
            home.components.push(main);
            home
        };
        let hold = folder.hold(&folder.read().unwrap()).unwrap();
        hold.keep_unsaved(&with(&left)).unwrap();
        let home = with(&used);
        let mut unused = vec![one.clone(), two.clone()];
        unused.sort();
        assert_eq!(folder.unused(&home).unwrap(), unused);
        hold.delete_unused(&home, &[one.clone(), used.clone(), "home.ron".to_owned()]).unwrap();
        assert_eq!(folder.unused(&home).unwrap(), [two]);
        assert!(folder.read_inside(&used).is_ok() && folder.file().is_file());
    }
}
