//! Which home was opened last.

use std::io::{Read as _, Write as _};
use std::path::{Path, PathBuf};

/// The folder of the home that was opened last, if one was.
pub(crate) fn recall() -> Option<PathBuf> {
    let mut text = String::new();
    std::fs::File::open(file()?).ok()?.take(1 << 16).read_to_string(&mut text).ok()?;
    let path = PathBuf::from(text.trim_end_matches('\n'));
    path.is_absolute().then_some(path)
}

/// Keeps the folder for next time. Where nothing can be kept, the built-in home opens next time.
pub(crate) fn remember(folder: &Path) {
    let write = || -> Option<()> {
        let folder = folder.canonicalize().ok()?;
        let file = file()?;
        std::fs::create_dir_all(file.parent()?).ok()?;
        writeln!(std::fs::File::create(file).ok()?, "{}", folder.to_str()?).ok()
    };
    // It is a convenience; there is no one to tell when it fails.
    let _kept = write();
}

fn file() -> Option<PathBuf> {
    let folders = directories::ProjectDirs::from("", "", "quarterturn")?;
    Some(folders.config_dir().join("last-home"))
}
