//! Pictures as people have them, taken in: decoded, upright, shrunk, without where and when they were
//! taken.

mod kind;
mod whole;

use std::io::{Cursor, ErrorKind};

use fast_image_resize as resize;
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::error::ImageError;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder as _, ImageReader, Limits, RgbImage};
use quarterturn_guidance::Catalogue;

pub use kind::{OtherKind, PictureKind};

use crate::Said;

/// Longest side kept, in pixels: a sheet of letter paper at 300 dots per inch is 3300.
pub const LONGEST_SIDE: u32 = 4096;
/// Longest side decoded, in pixels. The largest phone cameras have 16,320.
const MOST_PIXELS_A_SIDE: u32 = 20_000;
/// Most memory that decoding may take, in MiB.
const MOST_MEMORY_MIB: u64 = 512;
/// Quality of a JPEG that is stored, of 100.
const JPEG_QUALITY: u8 = 85;

/// Called with the share that is done, from 0 to 1, now and then; work ends early if it returns false.
/// Decoding a file is one stretch without a call, a few tenths of a second for 48 megapixels.
pub type Progress<'a> = &'a dyn Fn(f32) -> bool;

/// A picture, upright, in red, green and blue of 8 bits; what was transparent is white.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    pub(crate) pixels: RgbImage,
    /// How it is stored.
    pub kind: PictureKind,
}

/// Why a picture is not taken.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PictureError {
    /// There is nothing in the file.
    #[error("the file is empty")]
    Empty,
    /// It is something else than a picture.
    #[error("the file is no picture")]
    NotAPicture,
    /// It is of a kind that is not read.
    #[error("{0:?} is not read")]
    OtherKind(OtherKind),
    /// It has too many pixels.
    #[error("{width} × {height} pixels are too many")]
    TooLarge {
        /// Its width in pixels.
        width: u32,
        /// Its height in pixels.
        height: u32,
    },
    /// Its end is missing.
    #[error("the file is cut off")]
    CutOff,
    /// It is damaged.
    #[error("the file is damaged: {0}")]
    Damaged(String),
    /// It was stopped by who asked for it.
    #[error("stopped")]
    Stopped,
}

impl PictureError {
    /// What is wrong, and what to do about it.
    #[must_use]
    pub fn told(&self, words: &Catalogue) -> String {
        self.said().text(words)
    }

    /// The same in no language yet.
    #[must_use]
    pub fn said(&self) -> Said {
        match self {
            Self::Empty => Said::new("picture-empty"),
            Self::NotAPicture => Said::new("picture-not-a-picture"),
            Self::OtherKind(kind) => Said::new("picture-other-kind").with("kind", kind.word()),
            Self::TooLarge { width, height } => Said::new("picture-too-large")
                .with("width", width.to_string())
                .with("height", height.to_string())
                .with("side", MOST_PIXELS_A_SIDE.to_string()),
            Self::CutOff => Said::new("picture-cut-off"),
            Self::Damaged(why) => Said::new("picture-damaged").with("why", why),
            Self::Stopped => Said::new("picture-stopped"),
        }
    }
}

impl Picture {
    /// Takes a picture in: JPEG, PNG or WebP, whatever its name ends in.
    ///
    /// It comes out upright as the camera was held, its long side at most [`LONGEST_SIDE`]. Of what else
    /// the file told, such as the place and the time, nothing is kept. Colours are taken as sRGB. To be
    /// called off the window's own thread.
    ///
    /// # Errors
    /// If it is no picture, too large, cut off or damaged, or `progress` says stop.
    pub fn read(bytes: &[u8], progress: Progress<'_>) -> Result<Self, PictureError> {
        Self::read_within(bytes, LONGEST_SIDE, progress)
    }

    /// The same, with another longest side in pixels.
    ///
    /// # Errors
    /// As for [`read`](Self::read).
    pub fn read_within(
        bytes: &[u8],
        longest: u32,
        progress: Progress<'_>,
    ) -> Result<Self, PictureError> {
        go_on(progress, 0.0)?;
        let kind = kind::kind_of(bytes)?;
        whole::check(kind, bytes)?;
        let (decoded, orientation) = decode(kind, bytes)?;
        go_on(progress, 0.6)?;
        let pixels = shrunk(opaque(decoded), longest.max(1));
        go_on(progress, 0.9)?;
        // After shrinking: turning a large picture takes longer than decoding it.
        let mut pixels = DynamicImage::ImageRgb8(pixels);
        pixels.apply_orientation(orientation);
        go_on(progress, 1.0)?;
        // A WebP becomes what every system can show.
        let kind = if kind == PictureKind::Png { kind } else { PictureKind::Jpeg };
        Ok(Self { pixels: pixels.into_rgb8(), kind })
    }

    /// A picture of `width` × `height` pixels from their red, green and blue, row by row; `None` if they
    /// are not as many.
    #[must_use]
    pub fn from_pixels(
        width: u32,
        height: u32,
        pixels: Vec<u8>,
        kind: PictureKind,
    ) -> Option<Self> {
        RgbImage::from_raw(width, height, pixels).map(|pixels| Self { pixels, kind })
    }

    /// Width and height in pixels.
    #[must_use]
    pub fn size(&self) -> (u32, u32) {
        self.pixels.dimensions()
    }

    /// Red, green and blue of each pixel, row by row.
    #[must_use]
    pub fn pixels(&self) -> &[u8] {
        self.pixels.as_raw()
    }

    /// A small one, its long side at most `longest` pixels.
    #[must_use]
    pub fn thumb(&self, longest: u32) -> Self {
        Self { pixels: shrunk(self.pixels.clone(), longest.max(1)), kind: self.kind }
    }

    /// The file to store: JPEG or PNG as it came, with nothing in it but the picture.
    ///
    /// # Errors
    /// If it cannot be written, which its size alone would be a reason for.
    pub fn stored(&self) -> Result<Vec<u8>, PictureError> {
        let mut bytes = Vec::new();
        let written = match self.kind {
            PictureKind::Png => self.pixels.write_with_encoder(PngEncoder::new(&mut bytes)),
            PictureKind::Jpeg | PictureKind::WebP => self
                .pixels
                .write_with_encoder(JpegEncoder::new_with_quality(&mut bytes, JPEG_QUALITY)),
        };
        written.map_err(|error| PictureError::Damaged(error.to_string()))?;
        Ok(bytes)
    }
}

/// Goes on unless it was told to stop.
pub(crate) fn go_on(progress: Progress<'_>, done: f32) -> Result<(), PictureError> {
    if progress(done) { Ok(()) } else { Err(PictureError::Stopped) }
}

fn decode(kind: PictureKind, bytes: &[u8]) -> Result<(DynamicImage, Orientation), PictureError> {
    let mut reader = ImageReader::with_format(Cursor::new(bytes), kind.format());
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_MEMORY_MIB << 20);
    // Those of width and height are checked below, where the size is known for the text.
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(refused)?;
    let (width, height) = decoder.dimensions();
    let too_large = PictureError::TooLarge { width, height };
    if width.max(height) > MOST_PIXELS_A_SIDE || decoder.total_bytes() > MOST_MEMORY_MIB << 20 {
        return Err(too_large);
    }
    // A file that tells no sound orientation is taken as it is.
    let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let decoded = DynamicImage::from_decoder(decoder).map_err(|error| match error {
        ImageError::Limits(_) => too_large,
        other => refused(other),
    })?;
    Ok((decoded, orientation))
}

fn refused(error: ImageError) -> PictureError {
    match error {
        ImageError::IoError(error) if error.kind() == ErrorKind::UnexpectedEof => {
            PictureError::CutOff
        }
        ImageError::Limits(_) => {
            PictureError::TooLarge { width: MOST_PIXELS_A_SIDE, height: MOST_PIXELS_A_SIDE }
        }
        other => PictureError::Damaged(other.to_string()),
    }
}

/// On white paper, where it was transparent.
fn opaque(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let picture = picture.into_rgba8();
    let mut paper = RgbImage::new(picture.width(), picture.height());
    for (paper, image::Rgba([r, g, b, a])) in paper.pixels_mut().zip(picture.pixels()) {
        let over = |colour: &u8| {
            let (colour, alpha) = (u16::from(*colour), u16::from(*a));
            let mixed = (colour * alpha + 255 * (255 - alpha) + 127) / 255;
            u8::try_from(mixed).unwrap_or(u8::MAX)
        };
        *paper = image::Rgb([over(r), over(g), over(b)]);
    }
    paper
}

/// The picture with its long side at most `longest` pixels; as it is if that holds.
fn shrunk(picture: RgbImage, longest: u32) -> RgbImage {
    let (width, height) = picture.dimensions();
    let long = width.max(height);
    if long <= longest {
        return picture;
    }
    let side = |pixels: u32| {
        // Rounded to the nearest, and not more than `longest`.
        let pixels =
            (u64::from(pixels) * u64::from(longest) + u64::from(long) / 2) / u64::from(long);
        u32::try_from(pixels).unwrap_or(longest).max(1)
    };
    let (new_width, new_height) = (side(width), side(height));
    let pixel = resize::PixelType::U8x3;
    let mut small = resize::images::Image::new(new_width, new_height, pixel);
    // Bilinear over all pixels that fall on one: thin lines of a plan grow lighter but do not break.
    let how = resize::ResizeOptions::new()
        .resize_alg(resize::ResizeAlg::Convolution(resize::FilterType::Bilinear));
    let done = resize::images::ImageRef::new(width, height, picture.as_raw(), pixel)
        .ok()
        .and_then(|large| resize::Resizer::new().resize(&large, &mut small, &how).ok());
    let pixels = done.and_then(|()| RgbImage::from_raw(new_width, new_height, small.into_vec()));
    // Both pictures are as large as they say, so that it cannot fail.
    pixels.unwrap_or_else(|| {
        let filter = image::imageops::FilterType::Triangle;
        image::imageops::resize(&picture, new_width, new_height, filter)
    })
}

#[cfg(test)]
mod tests;
