//! What the window remembers from one day to the next.

use std::path::PathBuf;

use serde::{Deserialize, Serialize};

/// How someone likes the window, and which home was open. Everything has a default, and what a newer
/// version wrote is passed over.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// BCP 47 tag of the language that was chosen; `None` for that of the home.
    pub language: Option<String>,
    /// Light or dark, if someone chose; `None` for what the system says.
    pub theme: Option<Theme>,
    /// How many times as big as usual everything is; `None` for as usual.
    pub zoom: Option<f32>,
    /// True if marks may move. Things stand still until someone allows it.
    pub motion: bool,
    /// Width and height of the window in points.
    pub size: Option<(f32, f32)>,
    /// Folder of the home that was open.
    pub last_home: Option<PathBuf>,
}

/// Light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Theme {
    /// Dark ink on light paper.
    Light,
    /// Light ink on dark paper.
    Dark,
}

/// Smallest and largest zoom that is kept.
pub(crate) const ZOOMS: std::ops::RangeInclusive<f32> = 0.75..=3.0;

impl Settings {
    /// The settings in a file's text; the defaults where it cannot be read, for no setting is worth
    /// keeping someone from the answer.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let mut read: Self = ron::from_str(text).unwrap_or_default();
        read.zoom = read.zoom.filter(|zoom| ZOOMS.contains(zoom));
        read.size = read
            .size
            .filter(|(w, h)| (200.0..20_000.0).contains(w) && (150.0..20_000.0).contains(h));
        read
    }

    /// The text of the settings' file.
    #[must_use]
    pub fn text(&self) -> String {
        ron::ser::to_string_pretty(self, ron::ser::PrettyConfig::default()).unwrap_or_default()
    }
}

impl From<Theme> for egui::Theme {
    fn from(theme: Theme) -> Self {
        match theme {
            Theme::Light => Self::Light,
            Theme::Dark => Self::Dark,
        }
    }
}

impl From<egui::Theme> for Theme {
    fn from(theme: egui::Theme) -> Self {
        match theme {
            egui::Theme::Light => Self::Light,
            egui::Theme::Dark => Self::Dark,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_written_is_read_again() {
        let settings = Settings {
            language: Some("es".to_owned()),
            theme: Some(Theme::Dark),
            zoom: Some(1.5),
            motion: true,
            size: Some((1000.0, 700.0)),
            last_home: Some(PathBuf::from("/homes/one")),
        };
        assert_eq!(Settings::read(&settings.text()), settings);
    }

    #[test]
    fn what_makes_no_sense_is_passed_over() {
        assert_eq!(Settings::read("not a file of ours"), Settings::default());
        assert_eq!(
            Settings::read("(zoom: Some(90.0), size: Some((1.0, 2.0)))"),
            Settings::default()
        );
        assert!(Settings::read("(motion: true, newer: 7)").motion);
    }
}
