//! Small files beside the home, such as the log of troubles.

use crate::folder::read_at_most;
use crate::kinds::{BESIDE, LARGEST_FILE_MIB};
use crate::lock::Lock;
use crate::replace::{create_with, replace};
use crate::{Folder, FolderError, Stamp};

/// A file beside the home, as it was read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Beside {
    /// What it holds.
    pub bytes: Vec<u8>,
    /// By which a change is noticed.
    pub stamp: Stamp,
}

impl Folder {
    /// Reads a file beside the home, such as `log.ron`; `None` if there is none yet.
    ///
    /// # Errors
    /// If it is no name for such a file, or it cannot be read.
    pub fn read_beside(&self, name: &str) -> Result<Option<Beside>, FolderError> {
        check(name)?;
        match read_at_most(&self.root().join(name), LARGEST_FILE_MIB) {
            Ok(bytes) => {
                let stamp = Stamp::of(&bytes);
                Ok(Some(Beside { bytes, stamp }))
            }
            Err(FolderError::Missing { .. }) => Ok(None),
            Err(other) => Err(other),
        }
    }

    /// Writes a file beside the home, in one step. `was` is the stamp of what was read, `None` if there
    /// was none. It needs no [`Hold`](crate::Hold): a log is also written while another edits the home.
    ///
    /// # Errors
    /// If someone else wrote it meanwhile ([`FolderError::Changed`]: read it again and add to that),
    /// it is no name for such a file, or it cannot be written.
    pub fn write_beside(
        &self,
        name: &str,
        bytes: &[u8],
        was: Option<Stamp>,
    ) -> Result<Stamp, FolderError> {
        check(name)?;
        let file = self.root().join(name);
        self.make_state()?;
        // Another process that writes it looks at the stamp before or after us, not between.
        let path = self.state().join("beside.lock");
        let _lock =
            Lock::take_shortly(&path).map_err(|error| FolderError::writing(&path, error))?;
        crate::replace::sweep(&file);
        if self.read_beside(name)?.map(|beside| beside.stamp) != was {
            return Err(FolderError::Changed { path: file });
        }
        let written = match was {
            Some(_) => replace(&file, bytes),
            None => create_with(&file, |file| std::io::Write::write_all(file, bytes)),
        };
        written.map_err(|error| FolderError::writing(&file, error))?;
        Ok(Stamp::of(bytes))
    }
}

fn check(name: &str) -> Result<(), FolderError> {
    if BESIDE.contains(&name) {
        Ok(())
    } else {
        Err(FolderError::BadName { name: name.to_owned() })
    }
}

#[cfg(test)]
mod tests {
    use quarterturn_home::Home;

    use super::*;

    #[test]
    fn a_log_is_written_and_a_change_by_another_is_noticed() {
        let place = tempfile::tempdir().unwrap();
        let folder = Folder::create(&place.path().join("hut"), &Home::default()).unwrap();
        assert_eq!(folder.read_beside("log.ron").unwrap(), None);
        let first = folder.write_beside("log.ron", b"[1]", None).unwrap();
        assert_eq!(folder.read_beside("log.ron").unwrap().unwrap().bytes, b"[1]");
        let second = folder.write_beside("log.ron", b"[1, 2]", Some(first)).unwrap();
        for stale in [None, Some(first)] {
            let error = folder.write_beside("log.ron", b"[3]", stale).unwrap_err();
            assert!(matches!(error, FolderError::Changed { .. }), "{error}");
        }
        let read = folder.read_beside("log.ron").unwrap().unwrap();
        assert_eq!((read.bytes.as_slice(), read.stamp), (&b"[1, 2]"[..], second));
    }

    #[test]
    fn nothing_but_files_of_the_home_are_reached() {
        let place = tempfile::tempdir().unwrap();
        let folder = Folder::create(&place.path().join("hut"), &Home::default()).unwrap();
        for name in ["home.ron", "../log.ron", "/log.ron", "photos/a.jpg", "", ".quarterturn"] {
            assert!(matches!(folder.read_beside(name), Err(FolderError::BadName { .. })), "{name}");
            let written = folder.write_beside(name, b"", None);
            assert!(matches!(written, Err(FolderError::BadName { .. })), "{name}");
        }
    }

    #[test]
    fn of_many_who_add_at_once_none_is_lost() {
        let place = tempfile::tempdir().unwrap();
        let folder = Folder::create(&place.path().join("hut"), &Home::default()).unwrap();
        std::thread::scope(|scope| {
            for who in 0..4u8 {
                let folder = &folder;
                scope.spawn(move || {
                    for _ in 0..10 {
                        loop {
                            let read = folder.read_beside("log.ron").unwrap();
                            let was = read.as_ref().map(|read| read.stamp);
                            let mut bytes = read.map(|read| read.bytes).unwrap_or_default();
                            bytes.push(b'a' + who);
                            match folder.write_beside("log.ron", &bytes, was) {
                                Ok(_) => break,
                                Err(FolderError::Changed { .. }) => {}
                                Err(other) => panic!("{other}"),
                            }
                        }
                    }
                });
            }
        });
        let bytes = folder.read_beside("log.ron").unwrap().unwrap().bytes;
        for who in b'a'..=b'd' {
            assert_eq!(bytes.iter().filter(|byte| **byte == who).count(), 10);
        }
    }
}
