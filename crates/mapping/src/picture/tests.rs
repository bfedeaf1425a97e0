use std::cell::RefCell;

use image::{ImageFormat, Rgb, Rgba, RgbaImage};
use proptest::prelude::*;

use super::*;

/// A picture whose four quarters are red, green, blue and white, in reading order.
fn quarters(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| match (x < width / 2, y < height / 2) {
        (true, true) => Rgb([255, 0, 0]),
        (false, true) => Rgb([0, 255, 0]),
        (true, false) => Rgb([0, 0, 255]),
        (false, false) => Rgb([255, 255, 255]),
    })
}

fn file(picture: &RgbImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    picture.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

/// The segment in which a camera tells its orientation and its place (Exif 2.3, TIFF little-endian):
/// orientation, and a table for the place with the letter N and a latitude.
fn exif(orientation: u16) -> Vec<u8> {
    let mut tiff = b"II*\0\x08\0\0\0".to_vec();
    let entry = |tag: u16, kind: u16, count: u32, value: u32| {
        let mut bytes = tag.to_le_bytes().to_vec();
        bytes.extend(kind.to_le_bytes());
        bytes.extend(count.to_le_bytes());
        bytes.extend(value.to_le_bytes());
        bytes
    };
    tiff.extend(2u16.to_le_bytes());
    tiff.extend(entry(0x0112, 3, 1, u32::from(orientation)));
    tiff.extend(entry(0x8825, 4, 1, 38));
    tiff.extend(0u32.to_le_bytes());
    tiff.extend(1u16.to_le_bytes());
    tiff.extend(entry(0x0001, 2, 2, u32::from(b'N')));
    tiff.extend(0u32.to_le_bytes());
    let mut segment = b"Exif\0\0".to_vec();
    segment.extend(&tiff);
    segment.extend(b"GPSLatitude 12 34 56");
    segment
}

/// A JPEG with that segment after its first marker.
fn jpeg_with_exif(picture: &RgbImage, orientation: u16) -> Vec<u8> {
    let plain = file(picture, ImageFormat::Jpeg);
    let segment = exif(orientation);
    let mut bytes = plain[..2].to_vec();
    bytes.extend([0xff, 0xe1]);
    bytes.extend(u16::try_from(segment.len() + 2).unwrap().to_be_bytes());
    bytes.extend(segment);
    bytes.extend(&plain[2..]);
    bytes
}

fn read(bytes: &[u8]) -> Result<Picture, PictureError> {
    Picture::read(bytes, &|_| true)
}

fn near(picture: &Picture, x: u32, y: u32) -> [bool; 3] {
    picture.pixels.get_pixel(x, y).0.map(|value| value > 127)
}

const RED: [bool; 3] = [true, false, false];
const GREEN: [bool; 3] = [false, true, false];
const BLUE: [bool; 3] = [false, false, true];
const WHITE: [bool; 3] = [true, true, true];

#[test]
fn each_kind_is_read_by_its_content() {
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let picture = read(&file(&quarters(64, 32), format)).unwrap();
        assert_eq!(picture.size(), (64, 32));
        let corners = [(8, 8), (56, 8), (8, 24), (56, 24)];
        assert_eq!(corners.map(|(x, y)| near(&picture, x, y)), [RED, GREEN, BLUE, WHITE]);
        let kind = if format == ImageFormat::Png { PictureKind::Png } else { PictureKind::Jpeg };
        assert_eq!(picture.kind, kind);
    }
}

/// Exif 2.3, tag 274: where row 0 and column 0 of what is stored lie on what was seen.
#[test]
fn a_picture_is_upright_however_the_camera_was_held() {
    let corners = |picture: &Picture| {
        let (w, h) = picture.size();
        [(8, 8), (w - 8, 8), (8, h - 8), (w - 8, h - 8)].map(|(x, y)| near(picture, x, y))
    };
    for (orientation, size, seen) in [
        (1, (64, 32), [RED, GREEN, BLUE, WHITE]),
        (2, (64, 32), [GREEN, RED, WHITE, BLUE]),
        (3, (64, 32), [WHITE, BLUE, GREEN, RED]),
        (4, (64, 32), [BLUE, WHITE, RED, GREEN]),
        (5, (32, 64), [RED, BLUE, GREEN, WHITE]),
        (6, (32, 64), [BLUE, RED, WHITE, GREEN]),
        (7, (32, 64), [WHITE, GREEN, BLUE, RED]),
        (8, (32, 64), [GREEN, WHITE, RED, BLUE]),
        // None that there is.
        (9, (64, 32), [RED, GREEN, BLUE, WHITE]),
    ] {
        let picture = read(&jpeg_with_exif(&quarters(64, 32), orientation)).unwrap();
        assert_eq!((picture.size(), corners(&picture)), (size, seen), "orientation {orientation}");
    }
}

#[test]
fn of_the_place_nothing_is_kept() {
    let has = |bytes: &[u8], what: &[u8]| bytes.windows(what.len()).any(|window| window == what);
    let taken = jpeg_with_exif(&quarters(64, 32), 6);
    assert!(has(&taken, b"Exif") && has(&taken, b"GPSLatitude"));
    let mut picture = read(&taken).unwrap();
    for kind in [PictureKind::Jpeg, PictureKind::Png] {
        picture.kind = kind;
        let stored = picture.stored().unwrap();
        for word in [&b"Exif"[..], b"eXIf", b"GPS", b"http://ns.adobe.com", b"II*\0", b"MM\0*"] {
            assert!(!has(&stored, word), "{kind:?} {word:?}");
        }
        let mut decoder = ImageReader::new(Cursor::new(&stored))
            .with_guessed_format()
            .unwrap()
            .into_decoder()
            .unwrap();
        assert_eq!(decoder.exif_metadata().unwrap(), None);
        assert_eq!(decoder.xmp_metadata().unwrap(), None);
        assert_eq!(decoder.orientation().unwrap(), Orientation::NoTransforms);
        // Upright, it stays upright.
        assert_eq!(read(&stored).unwrap().size(), (32, 64));
    }
}

#[test]
fn what_is_transparent_is_white_paper() {
    let mut plan = RgbaImage::from_pixel(4, 4, Rgba([0, 0, 0, 0]));
    plan.put_pixel(1, 1, Rgba([10, 20, 30, 255]));
    plan.put_pixel(2, 2, Rgba([0, 0, 0, 128]));
    let mut bytes = Cursor::new(Vec::new());
    plan.write_to(&mut bytes, ImageFormat::Png).unwrap();
    let picture = read(&bytes.into_inner()).unwrap();
    assert_eq!(picture.pixels.get_pixel(0, 0).0, [255; 3]);
    assert_eq!(picture.pixels.get_pixel(1, 1).0, [10, 20, 30]);
    assert_eq!(picture.pixels.get_pixel(2, 2).0, [127; 3]);
}

#[test]
fn a_large_picture_is_shrunk_and_a_small_one_is_not() {
    let bytes = file(&quarters(300, 200), ImageFormat::Png);
    let within = |longest| Picture::read_within(&bytes, longest, &|_| true).unwrap().size();
    assert_eq!(within(4096), (300, 200));
    assert_eq!(within(300), (300, 200));
    assert_eq!(within(150), (150, 100));
    assert_eq!(within(1), (1, 1));
    let thin = file(&quarters(5000, 2), ImageFormat::Png);
    assert_eq!(read(&thin).unwrap().size(), (4096, 2));
    let thumb = read(&bytes).unwrap().thumb(30);
    assert_eq!(thumb.size(), (30, 20));
    assert_eq!(near(&thumb, 3, 3), RED);
}

#[test]
fn bombs_are_refused_before_they_go_off() {
    // Headers alone, which claim more than there is.
    let png = |width: u32, height: u32| {
        let mut bytes = file(&quarters(2, 2), ImageFormat::Png);
        bytes[16..20].copy_from_slice(&width.to_be_bytes());
        bytes[20..24].copy_from_slice(&height.to_be_bytes());
        let mut crc = crc32(&bytes[12..29]).to_be_bytes().to_vec();
        bytes.splice(29..33, crc.drain(..));
        bytes
    };
    assert!(matches!(
        read(&png(60_000, 60_000)),
        Err(PictureError::TooLarge { width: 60_000, .. })
    ));
    assert!(matches!(read(&png(20_001, 1)), Err(PictureError::TooLarge { .. })));
    // Within the sides, but 1.1 GiB of pixels.
    assert!(matches!(read(&png(20_000, 20_000)), Err(PictureError::TooLarge { .. })));
    let mut jpeg = file(&quarters(16, 16), ImageFormat::Jpeg);
    let frame = jpeg.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0xff; 4]);
    assert!(matches!(read(&jpeg), Err(PictureError::TooLarge { width: 65_535, height: 65_535 })));
}

/// CRC-32 of ISO 3309, as PNG has it.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
            if crc & 1 == 1 { (crc >> 1) ^ 0xedb8_8320 } else { crc >> 1 }
        })
    })
}

#[test]
fn a_picture_that_is_cut_off_is_noticed_wherever_it_is() {
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let whole = file(&quarters(64, 64), format);
        // The last chunk of a PNG holds no pixels.
        let end = if format == ImageFormat::Png { whole.len() - 16 } else { whole.len() };
        for cut in (0..end).step_by(7) {
            assert!(read(&whole[..cut]).is_err(), "{format:?} cut at {cut} of {}", whole.len());
        }
        let half = read(&whole[..whole.len() / 2]);
        assert_eq!(half, Err(PictureError::CutOff), "{format:?}");
    }
}

#[test]
fn what_a_phone_appends_does_no_harm_and_the_end_of_a_small_picture_inside_is_not_the_end() {
    let mut bytes = file(&quarters(64, 32), ImageFormat::Jpeg);
    let cut = bytes[..bytes.len() - 40].to_vec();
    bytes.extend(b"\0\0\0\x18ftypmp42 a film");
    assert!(read(&bytes).is_ok());
    // A comment that holds the end of another picture.
    let mut inside = cut[..2].to_vec();
    inside.extend([0xff, 0xfe, 0, 6, 1, 2, 0xff, 0xd9]);
    inside.extend(&cut[2..]);
    assert_eq!(read(&inside), Err(PictureError::CutOff));
}

#[test]
fn other_kinds_are_refused_with_what_to_do() {
    let media = |brands: &str| {
        let length = u8::try_from(8 + brands.len()).unwrap();
        [&[0, 0, 0, length], &b"ftyp"[..], brands.as_bytes(), b"rest of the file"].concat()
    };
    let cases = [
        (media("heic\0\0\0\0mif1heic"), OtherKind::Heic),
        (media("mif1\0\0\0\0mif1heic"), OtherKind::Heic),
        (media("mif1\0\0\0\0mif1avif"), OtherKind::Avif),
        (media("avif\0\0\0\0mif1miaf"), OtherKind::Avif),
        (media("mp42\0\0\0\0isommp42"), OtherKind::Video),
        (b"%PDF-1.7\n".to_vec(), OtherKind::Pdf),
        (b"\n\n%PDF-1.4".to_vec(), OtherKind::Pdf),
        (b"GIF89a...".to_vec(), OtherKind::Gif),
        (b"II*\0\x08\0\0\0".to_vec(), OtherKind::Tiff),
        (b"MM\0*\0\0\0\x08".to_vec(), OtherKind::Tiff),
        (b"BM\x46\0\0\0\0\0\0\0\x36".to_vec(), OtherKind::Bmp),
        (b"<?xml version=\"1.0\"?><svg>".to_vec(), OtherKind::Svg),
        (b"\xff\x0a\0\0".to_vec(), OtherKind::JpegXl),
        (b"\x1a\x45\xdf\xa3".to_vec(), OtherKind::Video),
    ];
    for (bytes, kind) in cases {
        assert_eq!(read(&bytes), Err(PictureError::OtherKind(kind)));
    }
    assert_eq!(read(b""), Err(PictureError::Empty));
    assert_eq!(read(b"Dear neighbour"), Err(PictureError::NotAPicture));
}

#[test]
fn each_refusal_is_told_in_every_language() {
    let kinds = [
        OtherKind::Heic,
        OtherKind::Avif,
        OtherKind::Pdf,
        OtherKind::Gif,
        OtherKind::Tiff,
        OtherKind::Bmp,
        OtherKind::Svg,
        OtherKind::JpegXl,
        OtherKind::Video,
    ];
    for language in Catalogue::languages() {
        let words = Catalogue::in_language(language.tag);
        let mut errors = vec![
            PictureError::Empty,
            PictureError::NotAPicture,
            PictureError::TooLarge { width: 60_000, height: 50_000 },
            PictureError::CutOff,
            PictureError::Damaged("bad Huffman code".to_owned()),
            PictureError::Stopped,
        ];
        errors.extend(kinds.map(PictureError::OtherKind));
        let mut texts: Vec<String> = errors.iter().map(|error| error.told(&words)).collect();
        for text in &texts {
            assert!(text.len() > 20 && !text.contains(['{', '[']), "{text}");
        }
        texts.sort();
        texts.dedup();
        assert_eq!(texts.len(), errors.len());
    }
}

#[test]
fn progress_grows_and_work_stops_when_it_is_told_to() {
    let bytes = file(&quarters(300, 200), ImageFormat::Jpeg);
    let seen = RefCell::new(Vec::new());
    let note = |done: f32| {
        seen.borrow_mut().push(done);
        true
    };
    Picture::read_within(&bytes, 100, &note).unwrap();
    let seen = seen.into_inner();
    assert!(seen.windows(2).all(|pair| pair[0] < pair[1]), "{seen:?}");
    for stop in seen {
        let stopped = Picture::read_within(&bytes, 100, &|done| done < stop);
        assert_eq!(stopped, Err(PictureError::Stopped), "at {stop}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn any_bytes_are_read_without_panic(start in 0usize..4, rest: Vec<u8>) {
        let starts = [&b""[..], b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n", b"RIFF\x10\0\0\0WEBP"];
        let bytes = [starts[start], &rest].concat();
        prop_assert!(read(&bytes).is_err());
    }

    #[test]
    fn a_picture_changed_anywhere_is_read_without_panic(
        format in prop::sample::select(vec![ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP]),
        changes in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..8),
    ) {
        let mut bytes = file(&quarters(32, 32), format);
        for (at, with) in changes {
            let at = at.index(bytes.len());
            bytes[at] = with;
        }
        if let Ok(picture) = read(&bytes) {
            prop_assert!(picture.size().0 <= LONGEST_SIDE && picture.size().1 <= LONGEST_SIDE);
        }
    }
}
