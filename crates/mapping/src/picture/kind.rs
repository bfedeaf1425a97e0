//! What kind of file it is, by its first bytes.

use image::ImageFormat;

use super::PictureError;

/// Kinds of picture that are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PictureKind {
    /// JPEG, as cameras write it.
    Jpeg,
    /// PNG, as screens and scanners write it.
    Png,
    /// WebP, as it is found on the web.
    WebP,
}

/// Kinds of file that people take for a picture, and that are not read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum OtherKind {
    /// HEIC or HEIF, as some phones write it.
    Heic,
    /// AVIF.
    Avif,
    /// PDF.
    Pdf,
    /// GIF.
    Gif,
    /// TIFF, or a raw picture of a camera.
    Tiff,
    /// BMP.
    Bmp,
    /// SVG.
    Svg,
    /// JPEG XL.
    JpegXl,
    /// A film.
    Video,
}

impl PictureKind {
    pub(super) fn format(self) -> ImageFormat {
        match self {
            Self::Jpeg => ImageFormat::Jpeg,
            Self::Png => ImageFormat::Png,
            Self::WebP => ImageFormat::WebP,
        }
    }
}

impl OtherKind {
    /// By which the text chooses.
    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Heic => "heic",
            Self::Avif => "avif",
            Self::Pdf => "pdf",
            Self::Gif => "gif",
            Self::Tiff => "tiff",
            Self::Bmp => "bmp",
            Self::Svg => "svg",
            Self::JpegXl => "jpeg-xl",
            Self::Video => "video",
        }
    }
}

/// The kind of the file.
pub(super) fn kind_of(bytes: &[u8]) -> Result<PictureKind, PictureError> {
    if bytes.is_empty() {
        return Err(PictureError::Empty);
    }
    let starts = |start: &[u8]| bytes.starts_with(start);
    let other = |kind| Err(PictureError::OtherKind(kind));
    if starts(b"\xff\xd8\xff") {
        Ok(PictureKind::Jpeg)
    } else if starts(b"\x89PNG\r\n\x1a\n") {
        Ok(PictureKind::Png)
    } else if starts(b"RIFF") && bytes.get(8..12) == Some(b"WEBP") {
        Ok(PictureKind::WebP)
    } else if let Some(kind) = media_file(bytes) {
        other(kind)
    } else if starts(b"GIF87a") || starts(b"GIF89a") {
        other(OtherKind::Gif)
    } else if starts(b"II*\0") || starts(b"MM\0*") {
        other(OtherKind::Tiff)
    } else if starts(b"\xff\x0a") || starts(b"\0\0\0\x0cJXL \r\n\x87\n") {
        other(OtherKind::JpegXl)
    } else if starts(b"\x1a\x45\xdf\xa3") {
        other(OtherKind::Video)
    } else if starts(b"BM") && bytes.get(6..10) == Some(&[0; 4]) {
        other(OtherKind::Bmp)
    } else if has_early(bytes, b"%PDF-") {
        // ISO 32000 readers look for it in the first kilobyte.
        other(OtherKind::Pdf)
    } else if has_early(bytes, b"<svg") {
        other(OtherKind::Svg)
    } else {
        Err(PictureError::NotAPicture)
    }
}

/// A file of the ISO base media format (ISO/IEC 14496-12): a box `ftyp` with a main brand and others that
/// it is compatible with. HEIF pictures have the brands of ISO/IEC 23008-12.
fn media_file(bytes: &[u8]) -> Option<OtherKind> {
    if bytes.get(4..8)? != b"ftyp" {
        return None;
    }
    let length: [u8; 4] = bytes.get(..4)?.try_into().ok()?;
    let end = usize::try_from(u32::from_be_bytes(length)).ok()?.clamp(12, 256).min(bytes.len());
    let (main, others) = (bytes.get(8..12)?, bytes.get(16..end).unwrap_or_default());
    let brands = || std::iter::once(main).chain(others.chunks_exact(4));
    let has = |wanted: &[&[u8]]| brands().any(|brand| wanted.contains(&brand));
    if has(&[b"avif", b"avis"]) {
        Some(OtherKind::Avif)
    } else if has(&[b"heic", b"heix", b"hevc", b"hevx", b"heim", b"heis", b"mif1", b"msf1"]) {
        Some(OtherKind::Heic)
    } else {
        Some(OtherKind::Video)
    }
}

fn has_early(bytes: &[u8], wanted: &[u8]) -> bool {
    let early = bytes.get(..1024).unwrap_or(bytes);
    early.windows(wanted.len()).any(|window| window == wanted)
}
