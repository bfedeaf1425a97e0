//! Opens the window on the screen.

use std::fmt;

use quarterturn_guidance::Catalogue;
use quarterturn_home::Date;

use crate::{App, Opening, Settings};

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

/// Opens the window on a home, in the words given and as someone likes it, and returns when it is
/// closed. `keep` is called with the settings when they change.
///
/// # Errors
/// If there is no display, or none that can show it.
pub fn run(
    opening: Opening,
    words: Catalogue,
    settings: Settings,
    keep: impl Fn(&Settings) + 'static,
) -> Result<(), NoDisplay> {
    if !has_display(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty())) {
        return Err(NoDisplay { why: None });
    }
    let title = words.text("window-title");
    let (width, height) = settings.size.unwrap_or((1280.0, 800.0));
    let options = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_app_id("quarterturn")
            .with_title(title.clone())
            .with_inner_size([width, height])
            .with_min_inner_size([360.0, 320.0]),
        ..eframe::NativeOptions::default()
    };
    let app = App::new(opening, words).on_day(today()).with_settings(settings).with_seed(seed());
    eframe::run_native(
        &title,
        options,
        Box::new(move |created| {
            let ctx = created.egui_ctx.clone();
            let mut app = app;
            app.wake_with(std::sync::Arc::new(move || ctx.request_repaint()));
            let kept = app.settings().clone();
            Ok(Box::new(Window { app, kept, keep: Box::new(keep) }))
        }),
    )
    .map_err(|error| NoDisplay { why: Some(error.to_string()) })
}

/// A number that differs from one start to the next.
fn seed() -> u64 {
    use std::hash::{BuildHasher as _, Hasher as _};
    std::hash::RandomState::new().build_hasher().finish()
}

/// The day by the machine's clock, where it stands. The one place, with the time of day, where the
/// clock is read; all else is given the day.
#[must_use]
pub fn today() -> Option<Date> {
    let now = jiff::Zoned::now();
    let (month, day) = (u8::try_from(now.month()).ok()?, u8::try_from(now.day()).ok()?);
    Date::new(now.year().into(), month.into(), day.into())
}

/// The time of day by the machine's clock, where it stands, as `HH:MM`.
pub(crate) fn time_of_day() -> Option<String> {
    let now = jiff::Zoned::now();
    Some(format!("{:02}:{:02}", now.hour(), now.minute()))
}

/// Elsewhere than on Linux and its like there is always a display to ask for.
fn has_display(is_set: impl Fn(&str) -> bool) -> bool {
    if cfg!(any(target_os = "windows", target_os = "macos")) {
        return true;
    }
    ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET"].into_iter().any(is_set)
}

struct Window {
    app: App,
    kept: Settings,
    keep: Box<dyn Fn(&Settings)>,
}

impl eframe::App for Window {
    fn ui(&mut self, ui: &mut egui::Ui, _frame: &mut eframe::Frame) {
        self.app.ui(ui);
        // While the window is dragged wider its size changes with every frame.
        let settled = !ui.input(|i| i.pointer.any_down());
        if settled && *self.app.settings() != self.kept {
            self.kept = self.app.settings().clone();
            (self.keep)(&self.kept);
        }
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        self.app.finish();
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
