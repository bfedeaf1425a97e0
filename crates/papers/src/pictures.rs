//! Pictures made fit for print: those that cannot be read are left out, large photos made smaller.

use std::collections::BTreeMap;
use std::io::Cursor;

use image::{DynamicImage, ImageDecoder as _, ImageReader, Limits};
use typst::foundations::Bytes;
use typst::visualize::{ExchangeFormat, RasterImage};

/// Widest and highest that a photo is printed, in pixels: 60 mm at 300 dots an inch.
const PHOTO: u32 = 720;
/// A photo of so many bytes is taken as it is, if it is no larger than [`PHOTO`].
const LIGHT: usize = 200_000;
/// Widest and highest that a picture may be.
const LARGEST: u32 = 20_000;
/// Memory that decoding may take.
const MEMORY: u64 = 1 << 30;

/// Pictures by the names under which the template finds them.
pub(crate) struct Pictures<'a> {
    given: &'a BTreeMap<String, Vec<u8>>,
    files: BTreeMap<String, Vec<u8>>,
    names: BTreeMap<String, Option<Ready>>,
}

/// A picture that can be printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Ready {
    /// The name for the template.
    pub(crate) name: String,
    /// Width and height in pixels, upright.
    pub(crate) size: (u32, u32),
}

impl<'a> Pictures<'a> {
    pub(crate) fn new(given: &'a BTreeMap<String, Vec<u8>>) -> Self {
        Self { given, files: BTreeMap::new(), names: BTreeMap::new() }
    }

    /// A plan, as it is. `None` if there is none at this path or it cannot be read.
    pub(crate) fn plan(&mut self, path: &str) -> Option<Ready> {
        self.ready("plan", path, |bytes| {
            // Typst keeps what it decoded: the second time costs nothing.
            let format = ExchangeFormat::detect(bytes)?;
            let seen = RasterImage::plain(Bytes::new(bytes.to_vec()), format).ok()?;
            Some((bytes.to_vec(), (seen.width(), seen.height())))
        })
    }

    /// A photo, made small enough for print. `None` if there is none or it cannot be read.
    pub(crate) fn photo(&mut self, path: &str) -> Option<Ready> {
        self.ready("photo", path, small_photo)
    }

    /// A drawing made by us.
    pub(crate) fn drawing(&mut self, svg: String) -> String {
        let name = format!("drawing-{}.svg", self.files.len());
        self.files.insert(name.clone(), svg.into_bytes());
        name
    }

    /// The files for the template.
    pub(crate) fn into_files(self) -> BTreeMap<String, Vec<u8>> {
        self.files
    }

    fn ready(
        &mut self,
        sort: &str,
        path: &str,
        make: impl FnOnce(&[u8]) -> Option<(Vec<u8>, (u32, u32))>,
    ) -> Option<Ready> {
        let key = format!("{sort} {path}");
        if let Some(known) = self.names.get(&key) {
            return known.clone();
        }
        let made = self.given.get(path).and_then(|bytes| make(bytes));
        let ready = made.map(|(bytes, size)| {
            let name = format!("{sort}-{}", self.files.len());
            self.files.insert(name.clone(), bytes);
            Ready { name, size }
        });
        self.names.insert(key, ready.clone());
        ready
    }
}

fn small_photo(bytes: &[u8]) -> Option<(Vec<u8>, (u32, u32))> {
    let mut reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format().ok()?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(LARGEST);
    limits.max_image_height = Some(LARGEST);
    limits.max_alloc = Some(MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().ok()?;
    let orientation = decoder.orientation().ok()?;
    let photo = DynamicImage::from_decoder(decoder).ok()?;
    let (width, height) = (photo.width(), photo.height());
    let mut small = if width.max(height) > PHOTO { photo.thumbnail(PHOTO, PHOTO) } else { photo };
    let upright = orientation == image::metadata::Orientation::NoTransforms;
    if upright && width.max(height) <= PHOTO && bytes.len() <= LIGHT {
        return Some((bytes.to_vec(), (width, height)));
    }
    small.apply_orientation(orientation);
    let mut out = Cursor::new(Vec::new());
    let rgb = small.to_rgb8();
    rgb.write_to(&mut out, image::ImageFormat::Jpeg).ok()?;
    Some((out.into_inner(), rgb.dimensions()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn png(width: u32, height: u32) -> Vec<u8> {
        let mut out = Cursor::new(Vec::new());
        image::RgbImage::new(width, height).write_to(&mut out, image::ImageFormat::Png).unwrap();
        out.into_inner()
    }

    #[test]
    fn a_picture_that_cannot_be_read_is_left_out_and_a_large_one_made_small() {
        let mut given = BTreeMap::new();
        given.insert("broken.png".to_owned(), b"\x89PNG\r\n\x1a\nno more".to_vec());
        given.insert("large.png".to_owned(), png(3000, 1500));
        given.insert("plan.png".to_owned(), png(300, 150));
        let mut pictures = Pictures::new(&given);
        assert_eq!(pictures.plan("broken.png"), None);
        assert_eq!(pictures.photo("broken.png"), None);
        assert_eq!(pictures.plan("absent.png"), None);
        assert_eq!(pictures.plan("plan.png").unwrap().size, (300, 150));
        let photo = pictures.photo("large.png").unwrap();
        assert_eq!(photo.size, (PHOTO, PHOTO / 2));
        // The same picture twice is one file.
        assert_eq!(pictures.photo("large.png").unwrap(), photo);
        assert_eq!(pictures.into_files().len(), 2);
    }
}
