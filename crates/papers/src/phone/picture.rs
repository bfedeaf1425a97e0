//! Plan pictures, small enough for a page and free of what a camera writes into them.

use std::io::Cursor;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder as _, ImageFormat, ImageReader, Limits, RgbImage};

/// A PNG up to this size, in bytes, is kept as it is: a drawn plan is sharper and smaller than a
/// JPEG of it.
const SMALL_ENOUGH: usize = 120_000;
/// Longest side of what is kept as it is, in pixels.
const LONGEST_KEPT: u32 = 2400;
/// Longest side of what is made smaller, in pixels: a phone at its closest shows about a third of it.
const LONGEST: u32 = 1400;
/// The same where a home has many floors.
const LONGEST_OF_MANY: u32 = 900;
/// Quality of a JPEG, of 100.
const QUALITY: u8 = 70;
/// Largest picture decoded, in pixels a side.
const LARGEST_SIDE: u32 = 20_000;
/// Most memory that decoding may take, in bytes.
const MOST_MEMORY: u64 = 512 << 20;

/// A picture that stands in the page itself.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Picture {
    /// A `data:` address (RFC 2397).
    pub(super) uri: String,
    /// Its height by its width.
    pub(super) aspect: f64,
}

/// The picture for the page, or `None` if the bytes are none that can be read.
pub(super) fn picture(bytes: &[u8], is_one_of_many: bool) -> Option<Picture> {
    let reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format().ok()?;
    let is_png = reader.format() == Some(ImageFormat::Png);
    let decoded = decode(reader)?;
    let (width, height) = (decoded.width(), decoded.height());
    let aspect = f64::from(height) / f64::from(width.max(1));
    if is_png
        && bytes.len() <= SMALL_ENOUGH
        && width.max(height) <= LONGEST_KEPT
        && let Some(bare) = bare_png(bytes)
    {
        return Some(Picture { uri: data_uri("image/png", &bare), aspect });
    }
    let longest = if is_one_of_many { LONGEST_OF_MANY } else { LONGEST };
    let small = if width.max(height) > longest {
        decoded.resize(longest, longest, FilterType::Triangle)
    } else {
        decoded
    };
    let mut jpeg = Vec::new();
    on_white(&small).write_with_encoder(JpegEncoder::new_with_quality(&mut jpeg, QUALITY)).ok()?;
    Some(Picture { uri: data_uri("image/jpeg", &jpeg), aspect })
}

fn decode(mut reader: ImageReader<Cursor<&[u8]>>) -> Option<DynamicImage> {
    let mut limits = Limits::default();
    limits.max_image_width = Some(LARGEST_SIDE);
    limits.max_image_height = Some(LARGEST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().ok()?;
    let orientation = decoder.orientation().ok()?;
    let mut picture = DynamicImage::from_decoder(decoder).ok()?;
    picture.apply_orientation(orientation);
    Some(picture)
}

/// What is clear becomes paper.
fn on_white(picture: &DynamicImage) -> RgbImage {
    let rgba = picture.to_rgba8();
    let mut rgb = RgbImage::new(rgba.width(), rgba.height());
    for (to, from) in rgb.pixels_mut().zip(rgba.pixels()) {
        let [r, g, b, a] = from.0;
        let mix = |c: u8| {
            let (c, a) = (u16::from(c), u16::from(a));
            u8::try_from((c * a + 255 * (255 - a)) / 255).unwrap_or(u8::MAX)
        };
        to.0 = [mix(r), mix(g), mix(b)];
    }
    rgb
}

/// The PNG without all that is not needed to show it: no place, time, name or thumbnail that a camera
/// or a program wrote into it (PNG specification, third edition, 5.3 and 11.2).
fn bare_png(bytes: &[u8]) -> Option<Vec<u8>> {
    const NEEDED: [&[u8]; 5] = [b"IHDR", b"PLTE", b"tRNS", b"IDAT", b"IEND"];
    let (signature, mut rest) = bytes.split_at_checked(8)?;
    let mut bare = signature.to_vec();
    while !rest.is_empty() {
        let length: [u8; 4] = rest.get(..4)?.try_into().ok()?;
        let length = usize::try_from(u32::from_be_bytes(length)).ok()?;
        // Length, type and checksum take four bytes each.
        let (chunk, behind) = rest.split_at_checked(length.checked_add(12)?)?;
        let kind = chunk.get(4..8)?;
        if NEEDED.contains(&kind) {
            bare.extend_from_slice(chunk);
        }
        if kind == b"IEND" {
            break;
        }
        rest = behind;
    }
    Some(bare)
}

fn data_uri(kind: &str, bytes: &[u8]) -> String {
    format!("data:{kind};base64,{}", STANDARD.encode(bytes))
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::Rgba;

    fn encoded(picture: &DynamicImage, format: ImageFormat) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        picture.write_to(&mut bytes, format).unwrap();
        bytes.into_inner()
    }

    fn bytes_of(picture: &Picture) -> Vec<u8> {
        STANDARD.decode(picture.uri.split_once(',').unwrap().1).unwrap()
    }

    #[test]
    fn a_small_drawing_is_kept_and_rid_of_remarks() {
        let png = encoded(&DynamicImage::new_luma8(30, 20), ImageFormat::Png);
        // A text chunk behind signature and header (8 and 25 bytes); its checksum is not looked at.
        let remark = [&[0, 0, 0, 6][..], b"tEXt", b"at\0two", &[0, 0, 0, 0]].concat();
        let chatty = [&png[..33], &remark, &png[33..]].concat();
        assert_eq!(bare_png(&chatty).unwrap(), png);
        let kept = picture(&png, false).unwrap();
        assert!(kept.uri.starts_with("data:image/png;base64,"));
        assert_eq!(bytes_of(&kept), png);
        assert!((kept.aspect - 2.0 / 3.0).abs() < 1e-9);
    }

    #[test]
    fn a_big_photo_is_made_small() {
        let photo = DynamicImage::ImageRgb8(RgbImage::from_fn(3000, 1500, |x, y| {
            image::Rgb([(x % 251) as u8, (y % 241) as u8, ((x * y) % 239) as u8])
        }));
        for (many, side) in [(false, LONGEST), (true, LONGEST_OF_MANY)] {
            let small = picture(&encoded(&photo, ImageFormat::Jpeg), many).unwrap();
            assert!(small.uri.starts_with("data:image/jpeg;base64,"));
            let read = image::load_from_memory(&bytes_of(&small)).unwrap();
            assert_eq!((read.width(), read.height()), (side, side / 2));
        }
    }

    #[test]
    fn clear_parts_become_white_paper() {
        let mut clear = image::RgbaImage::new(2, 1);
        clear.put_pixel(1, 0, Rgba([200, 100, 50, 255]));
        let flat = on_white(&DynamicImage::ImageRgba8(clear));
        assert_eq!(flat.get_pixel(0, 0).0, [255, 255, 255]);
        assert_eq!(flat.get_pixel(1, 0).0, [200, 100, 50]);
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        assert_eq!(picture(b"", false), None);
        assert_eq!(picture(b"GIF89a and more", false), None);
        assert_eq!(picture(b"<svg onload=alert(1)>", false), None);
        let png = encoded(&DynamicImage::new_luma8(30, 20), ImageFormat::Png);
        assert_eq!(picture(&png[..40], false), None);
    }
}
