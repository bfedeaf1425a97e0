//! What is done with a picture off the window's thread: read, made ready for the screen, stored.

use std::fs::File;
use std::io::Read as _;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};
use std::sync::mpsc::{Receiver, channel};

use egui::ColorImage;
use quarterturn_folder::{Folder, FolderError};
use quarterturn_mapping::{Picture, PictureError, Straightened};

/// Largest file read, in bytes: a photo of 48 megapixels has 20 MB.
const LARGEST_FILE: u64 = 256 << 20;

/// What goes on in a thread.
pub(crate) struct Work {
    pub(super) outcome: Receiver<Outcome>,
    /// How much of it is done, in thousandths.
    done: Arc<AtomicU32>,
    pub(super) stop: Arc<AtomicBool>,
    /// Key of the words for it.
    pub(in crate::map::plans) key: &'static str,
}

impl Work {
    /// How much of it is done, from 0 to 1.
    pub(in crate::map::plans) fn share(&self) -> f32 {
        let done = u16::try_from(self.done.load(Ordering::Relaxed)).unwrap_or(1000);
        f32::from(done) / 1000.0
    }
}

/// What came of it.
pub(super) enum Outcome {
    Read(Picture, ColorImage),
    Straight(Box<Straightened>, ColorImage),
    Stored(String),
    NotRead(PathBuf, std::io::Error),
    Refused(PictureError),
    NotStored(FolderError),
}

/// Reads a picture.
pub(super) fn read(path: PathBuf, most: usize, progress: &dyn Fn(f32) -> bool) -> Outcome {
    let mut bytes = Vec::new();
    let read = File::open(&path).and_then(|file| file.take(LARGEST_FILE).read_to_end(&mut bytes));
    if let Err(error) = read {
        return Outcome::NotRead(path, error);
    }
    match Picture::read(&bytes, progress) {
        Ok(picture) => {
            let shown = on_screen(&picture, most);
            Outcome::Read(picture, shown)
        }
        Err(error) => Outcome::Refused(error),
    }
}

/// Stores a picture in the home's folder.
pub(super) fn store(folder: &Folder, level: &str, picture: &Picture) -> Outcome {
    let bytes = match picture.stored() {
        Ok(bytes) => bytes,
        Err(error) => return Outcome::Refused(error),
    };
    match folder.store_plan(level, &bytes) {
        Ok(path) => Outcome::Stored(path),
        Err(error) => Outcome::NotStored(error),
    }
}

/// The picture for the screen, not larger than that can hold.
pub(super) fn on_screen(picture: &Picture, most: usize) -> ColorImage {
    let small = picture.thumb(u32::try_from(most).unwrap_or(u32::MAX).max(1));
    let (width, height) = small.size();
    let side = |pixels: u32| usize::try_from(pixels).unwrap_or_default();
    ColorImage::from_rgb([side(width), side(height)], small.pixels())
}

/// Starts something in a thread.
pub(super) fn work(
    ctx: &egui::Context,
    key: &'static str,
    does: impl FnOnce(&dyn Fn(f32) -> bool) -> Outcome + Send + 'static,
) -> Work {
    let (send, outcome) = channel();
    let done = Arc::new(AtomicU32::new(0));
    let stop = Arc::new(AtomicBool::new(false));
    let (told, stops, ctx) = (Arc::clone(&done), Arc::clone(&stop), ctx.clone());
    std::thread::spawn(move || {
        let progress = |share: f32| {
            told.store(thousandths(share), Ordering::Relaxed);
            ctx.request_repaint();
            !stops.load(Ordering::Relaxed)
        };
        let outcome = does(&progress);
        // Nobody waits any more if another home was opened meanwhile.
        if send.send(outcome).is_ok() {
            ctx.request_repaint();
        }
    });
    Work { outcome, done, stop, key }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "between 0 and 1000 nothing is lost but what is less than a thousandth"
)]
fn thousandths(share: f32) -> u32 {
    (share.clamp(0.0, 1.0) * 1000.0) as u32
}
