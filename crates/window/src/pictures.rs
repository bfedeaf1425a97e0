//! Floor-plan pictures: found, checked, decoded and shrunk away from the window's own thread.

use std::collections::BTreeMap;
use std::fmt;
use std::fs::File;
use std::io::{Cursor, Read as _};
use std::path::{Component as Part, Path, PathBuf};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

use egui::{ColorImage, Context, TextureFilter, TextureHandle, TextureOptions};
use image::{DynamicImage, ImageDecoder as _, ImageReader, Limits};

/// A plan is mostly shown smaller than it is: without smaller copies of it, thin lines and small letters
/// break up. Not every renderer makes them.
pub(crate) const SHRINKS: TextureOptions =
    TextureOptions { mipmap_mode: Some(TextureFilter::Linear), ..TextureOptions::LINEAR };

/// Longest side kept, in pixels: a sheet of letter paper at 300 dots per inch is 3300.
const LONGEST_SIDE: u32 = 4096;
/// Largest file read, in bytes.
const LARGEST_FILE: u64 = 64 << 20;
/// Largest picture decoded, in pixels a side.
const LARGEST_SIDE: u32 = 20_000;
/// Most memory that decoding may take, in bytes.
const MOST_MEMORY: u64 = 512 << 20;

/// What became of a level's picture.
pub(crate) enum Picture<'a> {
    /// The level has none.
    None,
    /// It is being decoded.
    Coming,
    /// It is there.
    Ready(&'a TextureHandle),
    /// It is missing or could not be read.
    Unreadable,
}

/// Where pictures come from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Source {
    /// The home that is built in.
    BuiltIn,
    /// The folder of a home.
    Folder(PathBuf),
    /// No folder is known.
    Nowhere,
}

enum State {
    Coming(Receiver<Option<ColorImage>>),
    Ready(TextureHandle),
    Unreadable,
}

/// The pictures of a home, by path.
pub(crate) struct Pictures {
    source: Source,
    states: BTreeMap<String, State>,
}

impl Pictures {
    /// No picture yet.
    pub(crate) fn new(source: Source) -> Self {
        Self { source, states: BTreeMap::new() }
    }

    /// The picture at `path`, asked for on first use.
    pub(crate) fn get(&mut self, ctx: &Context, path: Option<&str>) -> Picture<'_> {
        let Some(path) = path else { return Picture::None };
        let source = &self.source;
        let state = self
            .states
            .entry(path.to_owned())
            .or_insert_with(|| State::Coming(fetch(ctx, source.clone(), path.to_owned())));
        if let State::Coming(arrival) = state {
            match arrival.try_recv() {
                Ok(Some(picture)) => {
                    *state = State::Ready(ctx.load_texture(path, picture, SHRINKS));
                }
                Ok(None) | Err(TryRecvError::Disconnected) => *state = State::Unreadable,
                Err(TryRecvError::Empty) => {}
            }
        }
        match state {
            State::Coming(_) => Picture::Coming,
            State::Ready(texture) => Picture::Ready(texture),
            State::Unreadable => Picture::Unreadable,
        }
    }
}

impl fmt::Debug for Pictures {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Pictures").field("source", &self.source).finish_non_exhaustive()
    }
}

/// Starts to read a picture; it arrives as `None` if it cannot be read.
fn fetch(ctx: &Context, source: Source, path: String) -> Receiver<Option<ColorImage>> {
    let (send, arrival) = channel();
    let longest =
        ctx.input(|i| u32::try_from(i.max_texture_side).unwrap_or(LONGEST_SIDE)).min(LONGEST_SIDE);
    let ctx = ctx.clone();
    std::thread::spawn(move || {
        let picture = read(&source, &path).and_then(|bytes| decode(&bytes, longest));
        // Nobody waits any more if another home was opened meanwhile.
        if send.send(picture).is_ok() {
            ctx.request_repaint();
        }
    });
    arrival
}

fn read(source: &Source, path: &str) -> Option<Vec<u8>> {
    match source {
        Source::BuiltIn => crate::builtin::picture(path).map(<[u8]>::to_vec),
        Source::Nowhere => None,
        Source::Folder(folder) => {
            // A home file names files of its own folder only.
            let inside = Path::new(path).components().all(|part| matches!(part, Part::Normal(_)));
            if !inside {
                return None;
            }
            let mut bytes = Vec::new();
            let file = File::open(folder.join(path)).ok()?;
            file.take(LARGEST_FILE).read_to_end(&mut bytes).ok()?;
            Some(bytes)
        }
    }
}

fn decode(bytes: &[u8], longest: u32) -> Option<ColorImage> {
    let mut reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format().ok()?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(LARGEST_SIDE);
    limits.max_image_height = Some(LARGEST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().ok()?;
    let orientation = decoder.orientation().ok()?;
    let mut picture = DynamicImage::from_decoder(decoder).ok()?;
    if picture.width().max(picture.height()) > longest {
        picture = picture.thumbnail(longest, longest);
    }
    picture.apply_orientation(orientation);
    let picture = picture.into_rgba8();
    let side = |pixels: u32| usize::try_from(pixels).ok();
    let size = [side(picture.width())?, side(picture.height())?];
    Some(ColorImage::from_rgba_unmultiplied(size, picture.as_raw()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn png(width: u32, height: u32) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        DynamicImage::new_rgb8(width, height)
            .write_to(&mut bytes, image::ImageFormat::Png)
            .unwrap();
        bytes.into_inner()
    }

    #[test]
    fn a_picture_is_shrunk_to_what_the_screen_can_hold() {
        assert_eq!(decode(&png(300, 200), 4096).unwrap().size, [300, 200]);
        assert_eq!(decode(&png(300, 200), 150).unwrap().size, [150, 100]);
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        assert!(decode(b"", 4096).is_none());
        assert!(decode(b"GIF89a and more", 4096).is_none());
        let cut_off = png(300, 200);
        assert!(decode(&cut_off[..40], 4096).is_none());
        assert!(decode(&png(LARGEST_SIDE + 1, 1), 4096).is_none());
    }

    #[test]
    fn a_home_reaches_no_file_outside_its_folder() {
        let folder = std::env::temp_dir();
        let inside = folder.join("quarterturn-picture-test.png");
        let mut file = File::create(&inside).unwrap();
        std::io::Write::write_all(&mut file, &png(2, 2)).unwrap();
        let source = Source::Folder(folder.clone());
        assert!(read(&source, "quarterturn-picture-test.png").is_some());
        assert!(read(&source, inside.to_str().unwrap()).is_none());
        let deeper = Source::Folder(folder.join("quarterturn-no-such"));
        assert!(read(&deeper, "../quarterturn-picture-test.png").is_none());
        std::fs::remove_file(inside).unwrap();
    }
}
