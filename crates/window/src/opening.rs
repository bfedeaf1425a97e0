//! A home, opened to be shown.

use std::fs::File;
use std::io::Read as _;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};

use quarterturn_folder::Stamp;
use quarterturn_home::{Home, Kept, Problem};

use crate::pictures::Source;

/// Name of the file in a home's folder.
const FILE: &str = "home.ron";
/// Largest home file read, in bytes.
const LARGEST_FILE: u64 = 256 << 20;

/// A home as it was opened.
#[derive(Debug, Clone, PartialEq)]
pub struct Opening {
    /// The home, with what is sound.
    pub home: Home,
    /// Its folder, where its pictures are; `None` for the home that is built in.
    pub folder: Option<PathBuf>,
    /// What is wrong with its file.
    pub problems: Vec<Problem>,
    /// What of its file could not be read, so that saving can write it back.
    pub kept: Kept,
    pub(crate) source: Source,
    /// What its file held; `None` if it is from none.
    pub(crate) stamp: Option<Stamp>,
}

/// Why a home could not be opened.
#[derive(Debug)]
pub enum NotOpened {
    /// The file could not be read.
    Unread(PathBuf, std::io::Error),
    /// The file holds no home that could be shown, even in part.
    NoHome(PathBuf, Vec<Problem>),
}

impl Opening {
    /// A home from `folder`, with the problems of its file.
    #[must_use]
    pub fn new(home: Home, folder: Option<PathBuf>, problems: Vec<Problem>) -> Self {
        let source = folder.clone().map_or(Source::Nowhere, Source::Folder);
        Self { home, folder, problems, kept: Kept::default(), source, stamp: None }
    }

    /// The home that is built in.
    #[must_use]
    pub fn built_in() -> Self {
        let opened = quarterturn_home::open(FILE, crate::builtin::HOME);
        Self {
            home: opened.home.unwrap_or_default(),
            folder: None,
            problems: opened.problems,
            kept: opened.kept,
            source: Source::BuiltIn,
            stamp: None,
        }
    }

    /// The home at `path`: its folder, or the `home.ron` in it.
    ///
    /// # Errors
    /// If the file cannot be read, or holds nothing that could be shown.
    pub fn read(path: &Path) -> Result<Self, NotOpened> {
        let file = if path.is_dir() { path.join(FILE) } else { path.to_owned() };
        let mut bytes = Vec::new();
        let unread = |error| NotOpened::Unread(file.clone(), error);
        let reader = File::open(&file).map_err(unread)?;
        reader.take(LARGEST_FILE).read_to_end(&mut bytes).map_err(unread)?;
        let opened =
            quarterturn_home::open(&file.display().to_string(), &String::from_utf8_lossy(&bytes));
        let Some(home) = opened.home else {
            return Err(NotOpened::NoHome(file, opened.problems));
        };
        let folder = file.parent().map(Path::to_owned);
        let mut opening = Self::new(home, folder, opened.problems);
        opening.kept = opened.kept;
        opening.stamp = Some(Stamp::of(&bytes));
        Ok(opening)
    }
}

/// Shows the system's file window on a thread of its own; the answer may take any time.
pub(crate) fn choose(ctx: &egui::Context, filter: &str) -> Receiver<Option<PathBuf>> {
    choose_file(ctx, filter, &["ron", "zip"])
}

/// The same for files with one of these endings.
pub(crate) fn choose_file(
    ctx: &egui::Context,
    filter: &str,
    endings: &'static [&'static str],
) -> Receiver<Option<PathBuf>> {
    let filter = filter.to_owned();
    in_dialog(ctx, move || rfd::FileDialog::new().add_filter(filter, endings).pick_file())
}

/// The same for a folder.
pub(crate) fn choose_folder(ctx: &egui::Context) -> Receiver<Option<PathBuf>> {
    in_dialog(ctx, || rfd::FileDialog::new().pick_folder())
}

fn in_dialog(
    ctx: &egui::Context,
    show: impl FnOnce() -> Option<PathBuf> + Send + 'static,
) -> Receiver<Option<PathBuf>> {
    let (send, chosen) = channel();
    let ctx = ctx.clone();
    std::thread::spawn(move || {
        let path = show();
        // Nobody waits any more if the window was closed meanwhile.
        if send.send(path).is_ok() {
            ctx.request_repaint();
        }
    });
    chosen
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_that_is_not_there_is_told_with_its_name() {
        let path = std::env::temp_dir().join("quarterturn-no-such-home");
        match Opening::read(&path) {
            Err(NotOpened::Unread(named, _)) => assert_eq!(named, path),
            other => panic!("{other:?}"),
        }
    }
}
