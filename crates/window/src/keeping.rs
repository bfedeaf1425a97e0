//! Keeps the home and its log on disk, away from the window's own thread.
//!
//! The folder is taken hold of with the first change: who only looks at a home writes nothing there.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};

use quarterturn_folder::{Autosave, Folder, FolderError, Hold, Report, Stamp, Unsaved, recover};
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Home, Kept, Log, open_log, save_log};

use crate::opening::Opening;

/// Name of the log in a home's folder.
const LOG: &str = "log.ron";

/// Wakes the window when something was written.
pub(crate) type Wake = Arc<dyn Fn() + Send + Sync>;

/// What keeps a home and its log.
#[derive(Default)]
pub(crate) struct Keeping {
    folder: Option<Folder>,
    autosave: Option<Autosave>,
    log: Option<LogKeeper>,
    log_stamp: Option<Stamp>,
    log_kept: Kept,
    /// False where writing the log would lose something of it.
    log_may_be_saved: bool,
    wake: Option<Wake>,
    failed: Option<Arc<FolderError>>,
    /// True if the home could not be taken hold of: told once.
    refused: bool,
    /// What the home file held when it was opened or last written by us; `None` where nobody looked.
    stamp: Option<Stamp>,
    /// Why what was changed cannot be saved where it is from, until someone decides.
    conflict: Option<Conflict>,
}

/// Why what was changed cannot be saved where it is from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Conflict {
    /// Another window has the home.
    InUse,
    /// Someone else changed the file.
    Changed,
}

impl Keeping {
    /// What keeps the home that was opened, and the log beside it.
    pub(crate) fn of(opening: &Opening) -> (Self, Log) {
        let folder = opening.folder.as_deref().and_then(|path| Folder::at(path).ok());
        let mut keeping =
            Self { folder, log_may_be_saved: true, stamp: opening.stamp, ..Self::default() };
        let beside =
            keeping.folder.as_ref().and_then(|folder| folder.read_beside(LOG).ok().flatten());
        let Some(beside) = beside else { return (keeping, Log::default()) };
        let opened = open_log(LOG, &String::from_utf8_lossy(&beside.bytes));
        keeping.log_may_be_saved = opened.may_save() && std::str::from_utf8(&beside.bytes).is_ok();
        keeping.log_stamp = Some(beside.stamp);
        keeping.log_kept = opened.kept;
        (keeping, opened.log.unwrap_or_default())
    }

    /// Wakes the window with this when something was written.
    pub(crate) fn wake_with(&mut self, wake: Wake) {
        self.wake.get_or_insert(wake);
    }

    /// True if changes outlast the window.
    pub(crate) fn lasts(&self) -> bool {
        self.folder.is_some() && !self.refused
    }

    /// The home's folder.
    pub(crate) fn folder(&self) -> Option<&Folder> {
        self.folder.as_ref()
    }

    /// What an earlier session left unsaved in it.
    pub(crate) fn unsaved(&self) -> Option<Unsaved> {
        self.folder.as_ref().and_then(|folder| recover(folder).ok().flatten())
    }

    /// Takes the right to write the home as it was opened.
    fn hold(&self) -> Result<Option<Hold>, FolderError> {
        let Some(folder) = &self.folder else { return Ok(None) };
        let reading = folder.read()?;
        // The other window is asked first: that tells more than that the file was changed.
        let hold = folder.hold(&reading)?;
        if self.stamp.is_some_and(|stamp| stamp != reading.stamp) {
            return Err(FolderError::Changed { path: folder.file().to_owned() });
        }
        Ok(Some(hold))
    }

    fn waker(&self) -> impl Fn() + Send + use<> + 'static {
        let wake = self.wake.clone();
        move || {
            if let Some(wake) = &wake {
                wake();
            }
        }
    }

    /// Goes on from what an earlier session left.
    pub(crate) fn take_up(&mut self, left: Unsaved) -> Result<(), FolderError> {
        if let Some(hold) = self.hold()? {
            self.autosave = Some(Autosave::taking_up(hold, left, self.waker())?);
        }
        Ok(())
    }

    /// Forgets what an earlier session left.
    pub(crate) fn discard(&self, left: Unsaved) -> Result<(), FolderError> {
        match self.hold()? {
            Some(hold) => left.discard(&hold),
            None => Ok(()),
        }
    }

    /// Why what was changed cannot be saved; told once.
    pub(crate) fn conflict(&mut self) -> Option<Conflict> {
        self.conflict.take()
    }

    /// Tries once more to save the home.
    pub(crate) fn retry(&mut self, home: &Arc<Home>) {
        self.refused = false;
        self.home(home);
    }

    /// Saves the home, soon.
    pub(crate) fn home(&mut self, home: &Arc<Home>) {
        if self.autosave.is_none() && !self.refused {
            let held = self
                .hold()
                .and_then(|hold| hold.map(|hold| Autosave::new(hold, self.waker())).transpose());
            match held {
                Ok(autosave) => self.autosave = autosave,
                Err(error) => {
                    self.refused = true;
                    self.conflict = conflict_of(&error);
                    self.failed = Some(Arc::new(error));
                }
            }
        }
        if let Some(autosave) = &self.autosave {
            autosave.save(Arc::clone(home));
        }
    }

    /// Saves the log, soon.
    pub(crate) fn log(&mut self, log: &Log) {
        let Some(folder) = &self.folder else { return };
        if !self.log_may_be_saved {
            return;
        }
        let keeper = self.log.get_or_insert_with(|| {
            LogKeeper::start(
                folder.clone(),
                self.log_stamp,
                self.log_kept.clone(),
                self.wake.clone(),
            )
        });
        keeper.keep(log.clone());
    }

    /// What could not be kept, in words; each failure once.
    pub(crate) fn news(&mut self, words: &Catalogue) -> Option<String> {
        let mut failed = self.failed.take();
        if let Some(autosave) = &self.autosave {
            for report in autosave.reports().try_iter() {
                if let Report::Failed(error) = report {
                    self.conflict = conflict_of(&error).or(self.conflict);
                    failed = Some(error);
                }
            }
        }
        if let Some(log) = &self.log {
            failed = log.failures.try_iter().last().or(failed);
        }
        failed.map(|error| error.told(words))
    }

    /// Waits until the home is on disk, which takes some milliseconds.
    pub(crate) fn flush(&self) {
        if let Some(autosave) = &self.autosave {
            // A failure is told by its report.
            drop(autosave.flush());
        }
    }

    /// Waits until all is on disk: before the window closes.
    pub(crate) fn finish(&mut self) {
        // What failed was told; the rest is written when these are dropped.
        if let Some(autosave) = self.autosave.take() {
            drop(autosave);
            let reading = self.folder.as_ref().and_then(|folder| folder.read().ok());
            self.stamp = reading.map(|reading| reading.stamp);
        }
        drop(self.log.take());
    }
}

impl std::fmt::Debug for Keeping {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Keeping").field("folder", &self.folder).finish_non_exhaustive()
    }
}

/// A failure that someone has to decide about.
fn conflict_of(error: &FolderError) -> Option<Conflict> {
    match error {
        FolderError::InUse { .. } => Some(Conflict::InUse),
        FolderError::Changed { .. } => Some(Conflict::Changed),
        _ => None,
    }
}

/// Writes the log on a thread of its own; of several in a row only the last.
struct LogKeeper {
    send: Option<Sender<Log>>,
    failures: Receiver<Arc<FolderError>>,
    thread: Option<std::thread::JoinHandle<()>>,
}

impl LogKeeper {
    fn start(folder: Folder, mut stamp: Option<Stamp>, kept: Kept, wake: Option<Wake>) -> Self {
        let (send, logs) = channel::<Log>();
        let (fail, failures) = channel();
        let thread = std::thread::spawn(move || {
            while let Ok(mut log) = logs.recv() {
                // Only the last counts.
                while let Ok(newer) = logs.try_recv() {
                    log = newer;
                }
                match write(&folder, &log, &kept, stamp) {
                    Ok(written) => stamp = Some(written),
                    Err(error) => {
                        drop(fail.send(Arc::new(error)));
                        if let Some(wake) = &wake {
                            wake();
                        }
                    }
                }
            }
        });
        Self { send: Some(send), failures, thread: Some(thread) }
    }

    fn keep(&self, log: Log) {
        if let Some(send) = &self.send {
            // The thread ends only when this is dropped.
            drop(send.send(log));
        }
    }
}

impl Drop for LogKeeper {
    fn drop(&mut self) {
        drop(self.send.take());
        if let Some(thread) = self.thread.take() {
            drop(thread.join());
        }
    }
}

/// Writes the log. What another window wrote meanwhile stays: our entries are added to it.
fn write(
    folder: &Folder,
    log: &Log,
    kept: &Kept,
    stamp: Option<Stamp>,
) -> Result<Stamp, FolderError> {
    match folder.write_beside(LOG, save_log(log, kept).as_bytes(), stamp) {
        Err(FolderError::Changed { path }) => {
            let Some(theirs) = folder.read_beside(LOG)? else {
                return folder.write_beside(LOG, save_log(log, kept).as_bytes(), None);
            };
            let opened = open_log(LOG, &String::from_utf8_lossy(&theirs.bytes));
            if !opened.may_save() {
                return Err(FolderError::Changed { path });
            }
            let mut both = opened.log.unwrap_or_default();
            for entry in &log.entries {
                if !both.entries.contains(entry) {
                    both.entries.push(entry.clone());
                }
            }
            let text = save_log(&both, &opened.kept);
            folder.write_beside(LOG, text.as_bytes(), Some(theirs.stamp))
        }
        other => other,
    }
}
