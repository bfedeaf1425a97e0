//! The file in which the window's settings are kept.

use std::io::Read as _;
use std::path::PathBuf;

use quarterturn_folder::write_whole;
use quarterturn_window::Settings;

/// Largest file read, in bytes.
const LARGEST: u64 = 1 << 16;

/// The settings that were kept; the defaults if there are none.
pub(crate) fn recall() -> Settings {
    let read = || -> Option<Settings> {
        let mut text = String::new();
        std::fs::File::open(file()?).ok()?.take(LARGEST).read_to_string(&mut text).ok()?;
        Some(Settings::read(&text))
    };
    let mut settings = read().unwrap_or_default();
    settings.last_home = settings.last_home.filter(|path| path.is_absolute());
    settings
}

/// Keeps the settings for next time, in one step, so that a sudden end leaves the old or the new.
pub(crate) fn remember(settings: &Settings) {
    let write = || -> Option<()> {
        let mut settings = settings.clone();
        settings.last_home = settings.last_home.and_then(|path| path.canonicalize().ok());
        let file = file()?;
        std::fs::create_dir_all(file.parent()?).ok()?;
        write_whole(&file, settings.text().as_bytes()).ok()
    };
    // It is a convenience; there is no one to tell when it fails.
    let _kept = write();
}

fn file() -> Option<PathBuf> {
    let folders = directories::ProjectDirs::from("", "", "quarterturn")?;
    Some(folders.config_dir().join("settings.ron"))
}
