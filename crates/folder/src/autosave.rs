//! Keeps what is being edited, on a thread of its own.

use std::path::Path;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::thread::JoinHandle;
use std::time::Duration;

use quarterturn_home::Home;

use crate::{Folder, FolderError, Hold, Reading, Unsaved, unsaved};

/// Least time between two writes of what is unsaved. A fifth of the second that may be lost, so that a
/// slow disk has the rest.
const SPACING: Duration = Duration::from_millis(200);
/// When a failed write is tried again although nothing was changed since.
const RETRY: Duration = Duration::from_secs(2);

/// Keeps a home while it is edited, so that a sudden end loses at most the last second.
///
/// [`submit`](Self::submit) never waits: of several homes in a row only the last is written, as unsaved,
/// beside the home file. [`save`](Self::save) writes the home file itself. When it is dropped, what was
/// submitted is on disk.
#[derive(Debug)]
pub struct Autosave {
    shared: Arc<Shared>,
    folder: Folder,
    reports: Receiver<Report>,
    thread: Option<JoinHandle<()>>,
}

/// What became of what was to be written.
#[derive(Debug, Clone)]
pub enum Report {
    /// The home file holds the home.
    Saved,
    /// What is unsaved is kept again, after it could not be.
    Kept,
    /// Something could not be written. It is tried again with the next change, and after a while. The
    /// same failure is told once.
    Failed(Arc<FolderError>),
}

#[derive(Debug)]
struct Shared {
    asked: Mutex<Asked>,
    changed: Condvar,
    hold: Mutex<Hold>,
}

/// What is to be done, and how far it is done.
#[derive(Debug, Default)]
struct Asked {
    /// To be kept as unsaved; newer than `save`.
    keep: Option<Arc<Home>>,
    /// To be saved.
    save: Option<Arc<Home>>,
    /// How many times something was asked for, and up to which it is done.
    count: u64,
    done: u64,
    /// The last failure, until something is written again.
    failed: Option<Arc<FolderError>>,
    /// Someone waits.
    is_hurried: bool,
    is_over: bool,
}

impl Autosave {
    /// Starts to keep a home. `wake` is called after each [`Report`], from the thread that saves.
    ///
    /// What an earlier session left unsaved is set aside: it is offered again by
    /// [`recover`](crate::recover) until it is discarded.
    ///
    /// # Errors
    /// If what was left cannot be read or set aside.
    pub fn new(hold: Hold, wake: impl Fn() + Send + 'static) -> Result<Self, FolderError> {
        unsaved::set_aside(hold.folder())?;
        Ok(Self::start(hold, Asked::default(), None, wake))
    }

    /// Starts to keep a home from what an earlier session left unsaved, which then is this session's.
    ///
    /// # Errors
    /// If what was left cannot be set aside.
    pub fn taking_up(
        mut hold: Hold,
        left: Unsaved,
        wake: impl Fn() + Send + 'static,
    ) -> Result<Self, FolderError> {
        hold.adopt(left.kept.clone());
        let keep = Arc::new(left.home.clone());
        let left = unsaved::take_up(hold.folder(), left)?;
        let asked = Asked { keep: Some(keep), count: 1, ..Asked::default() };
        Ok(Self::start(hold, asked, left, wake))
    }

    fn start(
        hold: Hold,
        asked: Asked,
        left: Option<Unsaved>,
        wake: impl Fn() + Send + 'static,
    ) -> Self {
        let folder = hold.folder().clone();
        let shared = Arc::new(Shared {
            asked: Mutex::new(asked),
            changed: Condvar::new(),
            hold: Mutex::new(hold),
        });
        let (send, reports) = channel();
        let writer = Writer { shared: Arc::clone(&shared), left, again: None, send, wake };
        let thread = std::thread::spawn(move || writer.run());
        Self { shared, folder, reports, thread: Some(thread) }
    }

    /// The home's folder.
    #[must_use]
    pub fn folder(&self) -> &Folder {
        &self.folder
    }

    /// Keeps the home as unsaved, soon. Does not wait.
    pub fn submit(&self, home: Arc<Home>) {
        self.ask(|asked| asked.keep = Some(home));
    }

    /// Saves the home, soon. Does not wait: [`reports`](Self::reports) tells what became of it.
    pub fn save(&self, home: Arc<Home>) {
        self.ask(|asked| {
            asked.keep = None;
            asked.save = Some(home);
        });
    }

    /// Waits until all that was asked for is on disk.
    ///
    /// # Errors
    /// The last failure, if it is not.
    pub fn flush(&self) -> Result<(), Arc<FolderError>> {
        let mut asked = self.shared.asked();
        let wanted = asked.count;
        while asked.done < wanted {
            if self.thread.as_ref().is_none_or(JoinHandle::is_finished) {
                let path = self.folder.file().to_owned();
                return Err(Arc::new(FolderError::Stopped { path }));
            }
            asked.is_hurried = true;
            self.shared.changed.notify_all();
            asked = self.shared.wait(asked, RETRY);
        }
        asked.failed.clone().map_or(Ok(()), Err)
    }

    /// What became of what was asked for, oldest first.
    #[must_use]
    pub fn reports(&self) -> &Receiver<Report> {
        &self.reports
    }

    /// Forgets what is unsaved: the owner does not want it. Waits for a write that is under way.
    ///
    /// # Errors
    /// If it cannot be taken away.
    pub fn forget(&self) -> Result<(), FolderError> {
        let mut asked = self.shared.asked();
        asked.keep = None;
        asked.failed = None;
        drop(asked);
        let hold = self.shared.hold();
        unsaved::forget(hold.folder())
    }

    /// Reads what someone else wrote, from which saving goes on; see [`Hold::reload`].
    ///
    /// # Errors
    /// If it cannot be read, or saving it would lose some of it.
    pub fn reload(&self) -> Result<Reading, FolderError> {
        self.shared.hold().reload()
    }

    /// Saves the home in a new folder; see [`Hold::save_copy`].
    ///
    /// # Errors
    /// If there is such a folder with something in it, or it cannot be written.
    pub fn save_copy(&self, home: &Home, to: &Path) -> Result<Folder, FolderError> {
        self.shared.hold().save_copy(home, to)
    }

    fn ask(&self, change: impl FnOnce(&mut Asked)) {
        let mut asked = self.shared.asked();
        change(&mut asked);
        asked.count += 1;
        drop(asked);
        self.shared.changed.notify_all();
    }
}

impl Drop for Autosave {
    fn drop(&mut self) {
        self.shared.asked().is_over = true;
        self.shared.changed.notify_all();
        if let Some(thread) = self.thread.take() {
            // A thread that panicked has told so already.
            drop(thread.join());
        }
    }
}

impl Shared {
    // A thread that panicked leaves nothing half done here: each field is set in one step.
    fn asked(&self) -> MutexGuard<'_, Asked> {
        self.asked.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn hold(&self) -> MutexGuard<'_, Hold> {
        self.hold.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn wait<'a>(&self, asked: MutexGuard<'a, Asked>, most: Duration) -> MutexGuard<'a, Asked> {
        self.changed.wait_timeout(asked, most).unwrap_or_else(PoisonError::into_inner).0
    }
}

/// The thread that writes.
struct Writer<W> {
    shared: Arc<Shared>,
    /// What an earlier session left; forgotten once this session has kept it.
    left: Option<Unsaved>,
    /// What could not be kept, to be tried again.
    again: Option<Arc<Home>>,
    send: Sender<Report>,
    wake: W,
}

impl<W: Fn()> Writer<W> {
    fn run(mut self) {
        loop {
            let mut asked = self.shared.asked();
            while asked.keep.is_none() && asked.save.is_none() && !asked.is_over {
                if self.again.is_none() {
                    let waited = self.shared.changed.wait(asked);
                    asked = waited.unwrap_or_else(PoisonError::into_inner);
                    continue;
                }
                asked = self.shared.wait(asked, RETRY);
                if asked.keep.is_none() && asked.save.is_none() {
                    asked.keep = self.again.take();
                }
            }
            let (keep, save, upto) = (asked.keep.take(), asked.save.take(), asked.count);
            asked.is_hurried = false;
            if keep.is_none() && save.is_none() {
                return;
            }
            drop(asked);
            let failed = self.write(keep, save);

            let mut asked = self.shared.asked();
            asked.done = upto;
            self.tell(&mut asked, failed);
            self.shared.changed.notify_all();
            // Not more often than needed; but who waits, saves or leaves is served at once.
            if !asked.is_hurried && asked.save.is_none() && !asked.is_over {
                drop(self.shared.wait_until_hurried(asked));
            }
        }
    }

    /// Saves, then keeps. What cannot be saved is kept.
    fn write(&mut self, keep: Option<Arc<Home>>, save: Option<Arc<Home>>) -> Option<FolderError> {
        let mut hold = self.shared.hold();
        let mut failed = None;
        let mut keep = keep;
        if let Some(home) = save {
            match hold.save(&home) {
                Ok(()) => {
                    self.again = None;
                    forget_left(&mut self.left, &hold);
                    drop(self.send.send(Report::Saved));
                    (self.wake)();
                }
                Err(error) => {
                    failed = Some(error);
                    keep = keep.or(Some(home));
                }
            }
        }
        if let Some(home) = keep {
            match hold.keep_unsaved(&home) {
                Ok(()) => {
                    self.again = None;
                    forget_left(&mut self.left, &hold);
                }
                Err(error) => {
                    failed = failed.or(Some(error));
                    self.again = Some(home);
                }
            }
        }
        failed
    }

    fn tell(&self, asked: &mut Asked, failed: Option<FolderError>) {
        let failed = failed.map(Arc::new);
        let key = |failed: &Option<Arc<FolderError>>| failed.as_ref().map(|error| error.key());
        if key(&failed) != key(&asked.failed) {
            let report = failed.clone().map_or(Report::Kept, Report::Failed);
            // Nobody listens any more when the window is closing.
            drop(self.send.send(report));
            (self.wake)();
        }
        asked.failed = failed;
    }
}

impl Shared {
    /// Waits for [`SPACING`], or until someone is in a hurry.
    fn wait_until_hurried<'a>(&self, asked: MutexGuard<'a, Asked>) -> MutexGuard<'a, Asked> {
        let is_calm =
            |asked: &mut Asked| !asked.is_hurried && asked.save.is_none() && !asked.is_over;
        let waited = self.changed.wait_timeout_while(asked, SPACING, is_calm);
        waited.unwrap_or_else(PoisonError::into_inner).0
    }
}

/// What an earlier session left is this session's now; if the old file stays, it is offered once more.
fn forget_left(left: &mut Option<Unsaved>, hold: &Hold) {
    if let Some(left) = left.take() {
        drop(unsaved::taken_up(hold.folder(), &left));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::recover;

    fn home(name: &str) -> Arc<Home> {
        Arc::new(Home { format: 1, name: name.to_owned(), ..Home::default() })
    }

    fn place() -> (tempfile::TempDir, Folder) {
        let place = tempfile::tempdir().unwrap();
        let folder = Folder::create(&place.path().join("hut"), &home("saved")).unwrap();
        (place, folder)
    }

    fn hold(folder: &Folder) -> Hold {
        folder.hold(&folder.read().unwrap()).unwrap()
    }

    #[test]
    fn of_many_changes_the_last_is_kept_and_the_home_file_waits_for_saving() {
        let (_place, folder) = place();
        let autosave = Autosave::new(hold(&folder), || {}).unwrap();
        for n in 0..2000 {
            autosave.submit(home(&format!("change {n}")));
        }
        autosave.flush().unwrap();
        assert_eq!(folder.read().unwrap().home.name, "saved");
        drop(autosave);
        assert_eq!(recover(&folder).unwrap().unwrap().home.name, "change 1999");
    }

    #[test]
    fn what_was_submitted_is_on_disk_when_it_is_dropped() {
        let (_place, folder) = place();
        let autosave = Autosave::new(hold(&folder), || {}).unwrap();
        autosave.submit(home("one"));
        autosave.submit(home("two"));
        drop(autosave);
        assert_eq!(recover(&folder).unwrap().unwrap().home.name, "two");
    }

    #[test]
    fn after_saving_nothing_is_unsaved_and_it_is_told() {
        let (_place, folder) = place();
        let autosave = Autosave::new(hold(&folder), || {}).unwrap();
        autosave.submit(home("one"));
        autosave.save(home("two"));
        autosave.flush().unwrap();
        assert!(matches!(autosave.reports().try_recv(), Ok(Report::Saved)));
        drop(autosave);
        assert_eq!(folder.read().unwrap().home.name, "two");
        assert_eq!(recover(&folder).unwrap(), None);
    }

    #[test]
    fn what_cannot_be_saved_is_kept_as_unsaved_and_told_once() {
        let (_place, folder) = place();
        let autosave = Autosave::new(hold(&folder), || {}).unwrap();
        let theirs = quarterturn_home::save(&home("theirs"), &quarterturn_home::Kept::default());
        crate::replace::replace(folder.file(), theirs.as_bytes()).unwrap();
        for _ in 0..3 {
            autosave.save(home("ours"));
            assert!(matches!(*autosave.flush().unwrap_err(), FolderError::Changed { .. }));
        }
        let reports: Vec<Report> = autosave.reports().try_iter().collect();
        assert!(matches!(reports.as_slice(), [Report::Failed(_)]), "{reports:?}");
        assert_eq!(folder.read().unwrap().home.name, "theirs");

        // One way out: the other's is taken, ours is saved elsewhere.
        let to = folder.root().with_extension("copy");
        let copy = autosave.save_copy(&home("ours"), &to).unwrap();
        assert_eq!(copy.read().unwrap().home.name, "ours");
        assert_eq!(autosave.reload().unwrap().home.name, "theirs");
        autosave.save(home("theirs and more"));
        autosave.flush().unwrap();
        assert_eq!(folder.read().unwrap().home.name, "theirs and more");
    }

    #[test]
    fn what_an_earlier_session_left_is_offered_until_it_is_taken_up() {
        let (_place, folder) = place();
        hold(&folder).keep_unsaved(&home("left")).unwrap();
        // A session that neither takes it up nor discards it.
        let autosave = Autosave::new(hold(&folder), || {}).unwrap();
        autosave.submit(home("other"));
        autosave.flush().unwrap();
        autosave.forget().unwrap();
        drop(autosave);

        let hold = hold(&folder);
        let left = hold.unsaved().unwrap().unwrap();
        assert_eq!(left.home.name, "left");
        let autosave = Autosave::taking_up(hold, left, || {}).unwrap();
        autosave.flush().unwrap();
        drop(autosave);
        assert_eq!(recover(&folder).unwrap().unwrap().home.name, "left");
        let names: Vec<_> = std::fs::read_dir(folder.state())
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .filter(|name| name.contains("unsaved"))
            .collect();
        assert_eq!(names, ["home-unsaved.ron"]);
    }

    #[test]
    fn a_failure_is_told_and_so_is_its_end() {
        let (_place, folder) = place();
        let autosave = Autosave::new(hold(&folder), || {}).unwrap();
        // Where the unsaved home should stand there is a folder: nothing can take its name.
        let blocked = unsaved::journal(&folder);
        std::fs::create_dir(&blocked).unwrap();
        autosave.submit(home("one"));
        assert!(autosave.flush().is_err());
        std::fs::remove_dir(&blocked).unwrap();
        autosave.submit(home("two"));
        autosave.flush().unwrap();
        let reports: Vec<Report> = autosave.reports().try_iter().collect();
        assert!(matches!(reports.as_slice(), [Report::Failed(_), Report::Kept]), "{reports:?}");
    }

    #[test]
    fn what_could_not_be_kept_is_tried_again_by_itself() {
        let (_place, folder) = place();
        let (send, woken) = channel();
        let autosave = Autosave::new(hold(&folder), move || send.send(()).unwrap()).unwrap();
        let blocked = unsaved::journal(&folder);
        std::fs::create_dir(&blocked).unwrap();
        autosave.submit(home("one"));
        woken.recv().unwrap();
        std::fs::remove_dir(&blocked).unwrap();
        woken.recv().unwrap();
        let reports: Vec<Report> = autosave.reports().try_iter().collect();
        assert!(matches!(reports.as_slice(), [Report::Failed(_), Report::Kept]), "{reports:?}");
        drop(autosave);
        assert_eq!(recover(&folder).unwrap().unwrap().home.name, "one");
    }
}
