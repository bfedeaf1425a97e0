//! Whether a picture's file is all there. A decoder fills up with grey what is missing of a JPEG, so that
//! half a plan would be taken for a whole one.

use super::{PictureError, PictureKind};

/// Checks that the end of the file is there. For PNG the decoder does.
pub(super) fn check(kind: PictureKind, bytes: &[u8]) -> Result<(), PictureError> {
    let is_whole = match kind {
        PictureKind::Jpeg => jpeg_ends(bytes),
        PictureKind::Png => true,
        PictureKind::WebP => webp_ends(bytes),
    };
    if is_whole { Ok(()) } else { Err(PictureError::CutOff) }
}

/// True if the end-of-image marker comes where it belongs (ITU-T T.81, annex B): not that of a small
/// picture inside a segment, and with or without anything after it, as phones append a film.
fn jpeg_ends(bytes: &[u8]) -> bool {
    let mut rest = bytes.get(2..).unwrap_or_default();
    loop {
        // To the next marker; in compressed data a zero or a restart follows a byte of ones.
        let Some(at) = rest.windows(2).position(
            |pair| matches!(pair, [0xff, marker] if !matches!(marker, 0 | 1 | 0xff | 0xd0..=0xd7)),
        ) else {
            return false;
        };
        let Some([marker, after @ ..]) = rest.get(at + 1..) else { return false };
        if *marker == 0xd9 {
            return true;
        }
        let [high, low, ..] = after else { return false };
        let length = usize::from(u16::from_be_bytes([*high, *low]));
        let Some(next) = after.get(length.max(2)..) else { return false };
        rest = next;
    }
}

/// True if the file is as long as it says (RFC 9649, section 2.4).
fn webp_ends(bytes: &[u8]) -> bool {
    let Some(Ok(size)) = bytes.get(4..8).map(<[u8; 4]>::try_from) else { return false };
    usize::try_from(u32::from_le_bytes(size))
        .is_ok_and(|size| bytes.len() >= size.saturating_add(8))
}
