//! One who may write at a time.
//!
//! The lock is the operating system's own, on a file that stays. It ends with the process that took it,
//! however that came to an end, so that no lock is ever stale. What the file holds only tells who it is.

use std::fs::{File, OpenOptions, TryLockError};
use std::io::{self, Read as _, Seek as _, Write as _};
use std::path::Path;
use std::time::Duration;

/// Largest lock file read, in bytes.
const LARGEST: u64 = 1 << 10;
/// How often a short lock is asked for again, and how long is slept between, before it is given up.
const TRIES: u32 = 200;
const PAUSE: Duration = Duration::from_millis(10);

/// Who may write a home now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Holder {
    /// The process's number on its computer.
    pub process: u32,
    /// The computer's name.
    pub host: String,
}

/// A lock, for as long as it is kept.
#[derive(Debug)]
pub(crate) struct Lock {
    _file: File,
}

/// What became of asking for a lock.
#[derive(Debug)]
pub(crate) enum Asked {
    /// It is ours.
    Taken(Lock),
    /// Someone else has it, known by name if the file says so.
    Held(Option<Holder>),
}

impl Lock {
    /// Asks for the lock on the file at `path`, which is made if it is not there.
    pub(crate) fn ask(path: &Path) -> io::Result<Asked> {
        let mut file =
            OpenOptions::new().read(true).write(true).create(true).truncate(false).open(path)?;
        match file.try_lock() {
            Err(TryLockError::WouldBlock) => return Ok(Asked::Held(holder(&mut file))),
            // Some network file systems have no locks. Then a change by another is still noticed by
            // its stamp before anything is written.
            Ok(()) | Err(TryLockError::Error(_)) => {}
        }
        file.set_len(0)?;
        file.rewind()?;
        let host = gethostname::gethostname().to_string_lossy().into_owned();
        writeln!(file, "{} {host}", std::process::id())?;
        Ok(Asked::Taken(Self { _file: file }))
    }

    /// True if someone has the lock on the file at `path`.
    pub(crate) fn is_held(path: &Path) -> bool {
        // Asking for it needs no right to write.
        File::open(path).is_ok_and(|file| matches!(file.try_lock(), Err(TryLockError::WouldBlock)))
    }

    /// Takes a lock that everyone keeps for moments only.
    pub(crate) fn take_shortly(path: &Path) -> io::Result<Self> {
        for _ in 0..TRIES {
            if let Asked::Taken(lock) = Self::ask(path)? {
                return Ok(lock);
            }
            std::thread::sleep(PAUSE);
        }
        Err(io::ErrorKind::TimedOut.into())
    }
}

fn holder(file: &mut File) -> Option<Holder> {
    let mut text = String::new();
    file.take(LARGEST).read_to_string(&mut text).ok()?;
    let (process, host) = text.trim().split_once(' ')?;
    Some(Holder { process: process.parse().ok()?, host: host.to_owned() })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_second_is_told_who_has_it_and_gets_it_when_the_first_is_done() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("lock");
        assert!(!Lock::is_held(&path));
        let Asked::Taken(lock) = Lock::ask(&path).unwrap() else { panic!("it is free") };
        assert!(Lock::is_held(&path));
        let Asked::Held(Some(holder)) = Lock::ask(&path).unwrap() else { panic!("it is taken") };
        assert_eq!(holder.process, std::process::id());
        assert!(!holder.host.is_empty());
        drop(lock);
        assert!(!Lock::is_held(&path));
        assert!(matches!(Lock::ask(&path).unwrap(), Asked::Taken(_)));
    }

    #[test]
    fn what_a_lock_file_holds_may_be_anything() {
        let folder = tempfile::tempdir().unwrap();
        for text in [&b""[..], b"\xff\xfe\x00", b"twelve host", b"12", &[b'9'; 5000]] {
            let path = folder.path().join("lock");
            File::create(&path).unwrap().write_all(text).unwrap();
            assert_eq!(holder(&mut File::open(&path).unwrap()), None);
            assert!(matches!(Lock::ask(&path).unwrap(), Asked::Taken(_)));
        }
    }
}
