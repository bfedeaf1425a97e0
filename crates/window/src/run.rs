//! Opens the window on the screen.

use std::fmt;

use quarterturn_guidance::Catalogue;
use quarterturn_home::Date;

use crate::{App, Opening};

/// There is no display on which a window could be opened.
#[derive(Debug)]
pub struct NoDisplay {
    /// What the system said, if it was asked.
    pub why: Option<String>,
}

impl fmt::Display for NoDisplay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.why {
            Some(why) => write!(f, "no window could be opened: {why}"),
            None => write!(f, "there is no display to open a window on"),
        }
    }
}

impl std::error::Error for NoDisplay {}

/// Opens the window on a home, in the words given, and returns when it is closed.
///
/// # Errors
/// If there is no display, or none that can show it.
pub fn run(opening: Opening, words: Catalogue) -> Result<(), NoDisplay> {
    if !has_display(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty())) {
        return Err(NoDisplay { why: None });
    }
    let title = words.text("window-title");
    let options = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_app_id("quarterturn")
            .with_title(title.clone())
            .with_inner_size([1280.0, 800.0])
            .with_min_inner_size([360.0, 320.0]),
        ..eframe::NativeOptions::default()
    };
    eframe::run_native(
        &title,
        options,
        Box::new(|_| Ok(Box::new(Window(App::new(opening, words).on_day(today()))))),
    )
    .map_err(|error| NoDisplay { why: Some(error.to_string()) })
}

/// The day by the machine's clock (UTC).
#[must_use]
#[expect(
    clippy::disallowed_methods,
    reason = "the one place where the clock is read; all else is given the day"
)]
pub fn today() -> Option<Date> {
    let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH).ok()?;
    Date::from_days_since_1970(i64::try_from(since.as_secs() / 86_400).ok()?)
}

/// Elsewhere than on Linux and its like there is always a display to ask for.
fn has_display(is_set: impl Fn(&str) -> bool) -> bool {
    if cfg!(any(target_os = "windows", target_os = "macos")) {
        return true;
    }
    ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"].into_iter().any(is_set)
}

struct Window(App);

impl eframe::App for Window {
    fn ui(&mut self, ui: &mut egui::Ui, _frame: &mut eframe::Frame) {
        self.0.ui(ui);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_a_display_nothing_is_opened() {
        assert!(has_display(|name| name == "WAYLAND_DISPLAY"));
        assert_eq!(has_display(|_| false), cfg!(any(target_os = "windows", target_os = "macos")));
    }
}
