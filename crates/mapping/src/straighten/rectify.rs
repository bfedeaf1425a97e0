//! The straightened picture.

use super::corners::Corners;
use super::homography::Homography;
use crate::picture::{LONGEST_SIDE, Picture, PictureError, Progress, go_on};

/// How wide the strip round the rectangle is, as a share of its longer side.
const STRIP: f64 = 0.08;
/// How much beside the rectangle is kept, at most, as a share of it on each side.
const MOST_BESIDE: f64 = 1.5;
/// Rows that are worked on between two calls of the progress.
const ROWS_AT_ONCE: usize = 64;
/// Into how many parts the picture is cut to find what of it there is to keep.
const STEPS: u32 = 48;

/// What is known of the rectangle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Known {
    /// Nothing: its proportions are told from the photo as well as it goes.
    Nothing,
    /// How many times as wide as high it is.
    Aspect(f64),
    /// How wide and how high it is in metres, which gives the scale at once.
    Metres {
        /// Across.
        across: f64,
        /// Down.
        down: f64,
    },
}

/// What of the photo is kept.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum Margin {
    /// The rectangle alone: it was the edge of the paper.
    None,
    /// A strip round it as well, with what is drawn there: it was the outer walls.
    #[default]
    Strip,
    /// What is beside it as well: it was one room of the plan.
    Kept,
}

/// A photo that was put straight.
#[derive(Debug, Clone, PartialEq)]
pub struct Straightened {
    /// The picture. What the photo does not show is white.
    pub picture: Picture,
    /// Where the rectangle lies in it, in pixels: left, top, right, bottom.
    pub rectangle: [f64; 4],
    /// How many metres a pixel is, if the rectangle's size was known.
    pub metres_per_pixel: Option<f64>,
    /// From the photo to the picture.
    pub mapping: Homography,
}

/// Puts a photo straight, by the corners of a rectangle in it. Each pixel is mixed from the four next to
/// where it comes from. To be called off the window's own thread.
///
/// # Errors
/// If `progress` says stop, or a size of the rectangle is no size ([`PictureError::Damaged`]).
pub fn straighten(
    photo: &Picture,
    corners: &Corners,
    known: Known,
    margin: Margin,
    progress: Progress<'_>,
) -> Result<Straightened, PictureError> {
    go_on(progress, 0.0)?;
    let failed = || PictureError::Damaged("no such rectangle".to_owned());
    let (across, down) = rectangle(corners, known, photo.size()).ok_or_else(failed)?;
    let unit = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)];
    let to_unit = Homography::between(corners.points(), unit).ok_or_else(failed)?;
    let [left, top, right, bottom] = match margin {
        Margin::None => [0.0, 0.0, 1.0, 1.0],
        Margin::Strip => {
            let [left, top, right, bottom] = extent(photo, corners, &to_unit);
            // Equally wide all round, on paper.
            let (x, y) = (STRIP * across.max(down) / across, STRIP * across.max(down) / down);
            [left.max(-x), top.max(-y), right.min(1.0 + x), bottom.min(1.0 + y)]
        }
        Margin::Kept => extent(photo, corners, &to_unit),
    };
    let (wide, high) = ((right - left) * across, (bottom - top) * down);
    let scale = (f64::from(LONGEST_SIDE) / wide.max(high)).min(1.0);
    let (width, height) = (pixels(wide * scale), pixels(high * scale));
    // The rectangle's corners in the new picture, to the fraction of a pixel.
    let x = |share: f64| (share - left) / (right - left) * f64::from(width);
    let y = |share: f64| (share - top) / (bottom - top) * f64::from(height);
    let to = unit.map(|(u, v)| (x(u), y(v)));
    let mapping = Homography::between(corners.points(), to).ok_or_else(failed)?;
    let back = mapping.inverse().ok_or_else(failed)?;
    let pixels = resampled(photo, &back, (width, height), to, progress)?;
    let picture = Picture::from_pixels(width, height, pixels, photo.kind).ok_or_else(failed)?;
    let rectangle = [x(0.0), y(0.0), x(1.0), y(1.0)];
    let metres_per_pixel = match known {
        Known::Metres { across, .. } => Some(across / (x(1.0) - x(0.0))),
        Known::Aspect(_) | Known::Nothing => None,
    };
    Ok(Straightened { picture, rectangle, metres_per_pixel, mapping })
}

/// How many pixels the rectangle gets across and down: not fewer than it has in the photo.
fn rectangle(corners: &Corners, known: Known, size: (u32, u32)) -> Option<(f64, f64)> {
    let (across, down) = corners.sides();
    let aspect = match known {
        Known::Aspect(aspect) => aspect,
        Known::Metres { across, down } => across / down,
        Known::Nothing => corners.aspect(size).unwrap_or(across / down),
    };
    // Longer corridors than that are not drawn as one rectangle.
    if !(0.01..=100.0).contains(&aspect) {
        return None;
    }
    Some(if across / down > aspect { (across, across / aspect) } else { (down * aspect, down) })
}

/// Up to where the photo reaches, in rectangles from the rectangle's top left corner. Behind the line where
/// the plane vanishes nothing can be seen.
fn extent(photo: &Picture, corners: &Corners, to_unit: &Homography) -> [f64; 4] {
    let (width, height) = photo.size();
    let [first, ..] = corners.points();
    let side = to_unit.depth(first);
    let [mut left, mut top, mut right, mut bottom] = [0.0_f64, 0.0, 1.0, 1.0];
    for row in 0..=STEPS {
        for column in 0..=STEPS {
            let share = |step: u32, of: u32| f64::from(step) / f64::from(STEPS) * f64::from(of);
            let point = (share(column, width), share(row, height));
            if to_unit.depth(point) * side <= 0.0 {
                continue;
            }
            let Some((x, y)) = to_unit.map(point) else { continue };
            let kept = -MOST_BESIDE..=1.0 + MOST_BESIDE;
            // A far point would stretch the picture although little is to be seen there.
            if kept.contains(&x) && kept.contains(&y) {
                (left, right) = (left.min(x), right.max(x));
                (top, bottom) = (top.min(y), bottom.max(y));
            }
        }
    }
    [left, top, right, bottom]
}

fn resampled(
    photo: &Picture,
    back: &Homography,
    (width, height): (u32, u32),
    to: [(f64, f64); 4],
    progress: Progress<'_>,
) -> Result<Vec<u8>, PictureError> {
    let source = Source::of(photo);
    let [[a, b, c], [d, e, f], [g, h, i]] = back.matrix();
    let [first, ..] = to;
    let side = back.depth(first).signum();
    let row_bytes = index(f64::from(width)) * 3;
    let mut out = vec![255_u8; row_bytes * index(f64::from(height))];
    let rows: Vec<(f64, &mut [u8])> =
        (0..height).map(f64::from).zip(out.chunks_exact_mut(row_bytes.max(1))).collect();
    for (row, bytes) in rows {
        if index(row).is_multiple_of(ROWS_AT_ONCE) {
            #[expect(clippy::cast_possible_truncation, reason = "a share from 0 to 1")]
            go_on(progress, (row / f64::from(height)) as f32)?;
        }
        // In the middle of the pixel.
        let y = row + 0.5;
        let (u, v, w) = (b * y + c, e * y + f, h * y + i);
        for (column, pixel) in (0..width).map(f64::from).zip(bytes.as_chunks_mut::<3>().0) {
            let x = column + 0.5;
            let depth = g * x + w;
            if depth * side <= 0.0 {
                continue;
            }
            if let Some(mixed) = source.at((a * x + u) / depth, (d * x + v) / depth) {
                *pixel = mixed;
            }
        }
    }
    go_on(progress, 1.0)?;
    Ok(out)
}

/// The photo, to be looked up between its pixels.
struct Source<'p> {
    pixels: &'p [[u8; 3]],
    width: f64,
    height: f64,
    stride: usize,
}

impl<'p> Source<'p> {
    fn of(photo: &'p Picture) -> Self {
        let (width, height) = (f64::from(photo.size().0), f64::from(photo.size().1));
        Self { pixels: photo.pixels().as_chunks().0, width, height, stride: index(width) }
    }

    /// The colour at a point, mixed from the four pixels whose middles are round it; `None` outside.
    fn at(&self, x: f64, y: f64) -> Option<[u8; 3]> {
        if !(x >= 0.0 && y >= 0.0 && x <= self.width && y <= self.height) {
            return None;
        }
        // The outermost half pixel has no neighbour beyond it.
        let (x, y) =
            ((x - 0.5).clamp(0.0, self.width - 1.0), (y - 0.5).clamp(0.0, self.height - 1.0));
        let (left, top) = (x.floor(), y.floor());
        let (right, bottom) =
            ((left + 1.0).min(self.width - 1.0), (top + 1.0).min(self.height - 1.0));
        let (along, below) = (x - left, y - top);
        let pixel = |x: f64, y: f64| self.pixels.get(index(y) * self.stride + index(x));
        let (p, q) = (pixel(left, top)?, pixel(right, top)?);
        let (r, s) = (pixel(left, bottom)?, pixel(right, bottom)?);
        let mix = |p: u8, q: u8, r: u8, s: u8| {
            let upper = f64::from(p) + (f64::from(q) - f64::from(p)) * along;
            let lower = f64::from(r) + (f64::from(s) - f64::from(r)) * along;
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "between the least and the largest of four bytes"
            )]
            let mixed = (upper + (lower - upper) * below + 0.5) as u8;
            mixed
        };
        let ([p0, p1, p2], [q0, q1, q2]) = (*p, *q);
        let ([r0, r1, r2], [s0, s1, s2]) = (*r, *s);
        Some([mix(p0, q0, r0, s0), mix(p1, q1, r1, s1), mix(p2, q2, r2, s2)])
    }
}

/// A whole number that is not negative, as an index.
fn index(number: f64) -> usize {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a row or column of a picture of at most 20,000 pixels a side"
    )]
    let index = number as usize;
    index
}

/// A side in whole pixels.
fn pixels(side: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 1 and the longest side"
    )]
    let pixels = side.round().clamp(1.0, f64::from(LONGEST_SIDE)) as u32;
    pixels
}

#[cfg(test)]
mod tests {
    use serde::Deserialize;

    use super::*;
    use crate::picture::PictureKind;

    #[derive(Deserialize)]
    struct Fixture {
        rectified: Vec<Case>,
    }

    /// A picture in grey, and the same put straight by another library.
    #[derive(Deserialize)]
    struct Case {
        width: u32,
        height: u32,
        photo: Vec<u8>,
        corners: [(f64, f64); 4],
        across: u32,
        down: u32,
        straight: Vec<u8>,
    }

    fn grey(width: u32, height: u32, values: &[u8]) -> Picture {
        let pixels = values.iter().flat_map(|value| [*value; 3]).collect();
        Picture::from_pixels(width, height, pixels, PictureKind::Png).unwrap()
    }

    fn straight(
        photo: &Picture,
        corners: [(f64, f64); 4],
        known: Known,
        margin: Margin,
    ) -> Straightened {
        let corners = Corners::new(corners, photo.size()).unwrap();
        straighten(photo, &corners, known, margin, &|_| true).unwrap()
    }

    /// Against two other libraries: `tests/fixtures/make_homographies.py`.
    #[test]
    fn agrees_with_other_libraries_pixel_by_pixel() {
        let text = include_str!("../../../../tests/fixtures/homographies.json");
        let fixture: Fixture = serde_json::from_str(text).unwrap();
        assert!(fixture.rectified.len() >= 4);
        for case in fixture.rectified {
            let photo = grey(case.width, case.height, &case.photo);
            let unit = [
                (0.0, 0.0),
                (f64::from(case.across), 0.0),
                (f64::from(case.across), f64::from(case.down)),
                (0.0, f64::from(case.down)),
            ];
            let back = Homography::between(unit, case.corners).unwrap();
            let size = (case.across, case.down);
            let ours = resampled(&photo, &back, size, unit, &|_| true).unwrap();
            let (mut worst, mut total) = (0, 0);
            for (ours, theirs) in ours.as_chunks::<3>().0.iter().zip(&case.straight) {
                let off = ours[0].abs_diff(*theirs);
                worst = worst.max(off);
                total += u32::from(off);
            }
            // One level is rounding.
            assert!(worst <= 1, "{worst}");
            assert!(total * 20 < case.across * case.down, "{total}");
        }
    }

    #[test]
    fn a_picture_that_is_straight_stays_as_it_is() {
        let values: Vec<u8> = (0..60 * 40).map(|n| u8::try_from(n * 7 % 256).unwrap()).collect();
        let photo = grey(60, 40, &values);
        let corners = [(0.0, 0.0), (60.0, 0.0), (60.0, 40.0), (0.0, 40.0)];
        for margin in [Margin::None, Margin::Strip, Margin::Kept] {
            let out = straight(&photo, corners, Known::Aspect(1.5), margin);
            assert_eq!(out.picture, photo);
        }
    }

    #[test]
    fn the_rectangle_gets_its_true_proportions_and_its_scale() {
        let photo = grey(400, 300, &vec![90; 400 * 300]);
        let corners = [(90.0, 60.0), (310.0, 70.0), (350.0, 250.0), (40.0, 240.0)];
        let sides = |out: &Straightened| {
            let [left, top, right, bottom] = out.rectangle;
            (right - left, bottom - top)
        };
        let out = straight(&photo, corners, Known::Aspect(2.0), Margin::None);
        let (across, down) = sides(&out);
        assert!((across / down - 2.0).abs() < 0.02, "{across} {down}");
        // Not fewer pixels than in the photo.
        assert!(across >= 310.0 && down >= 180.0 - 26.0, "{across} {down}");
        assert_eq!(out.metres_per_pixel, None);

        let metres = Known::Metres { across: 4.0, down: 3.0 };
        for margin in [Margin::None, Margin::Strip, Margin::Kept] {
            let out = straight(&photo, corners, metres, margin);
            let (across, down) = sides(&out);
            let scale = out.metres_per_pixel.unwrap();
            assert!((across * scale - 4.0).abs() < 1e-9);
            assert!((down * scale - 3.0).abs() < 0.03);
        }
        let bad = Corners::new(corners, photo.size()).unwrap();
        let none = straighten(&photo, &bad, Known::Aspect(0.0), Margin::None, &|_| true);
        assert!(none.is_err());
    }

    #[test]
    fn what_is_beside_the_rectangle_is_kept_where_it_belongs() {
        // A black dot outside the rectangle.
        let mut values = vec![200; 400 * 300];
        for y in 140..160 {
            for x in 360..380 {
                values[y * 400 + x] = 0;
            }
        }
        let photo = grey(400, 300, &values);
        let corners = [(100.0, 80.0), (300.0, 80.0), (300.0, 220.0), (100.0, 220.0)];
        let out = straight(&photo, corners, Known::Aspect(200.0 / 140.0), Margin::Kept);
        assert_eq!(out.picture.size(), (400, 300));
        let (x, y) = out.mapping.map((370.0, 150.0)).unwrap();
        assert_eq!(out.picture.pixels.get_pixel(pixels(x), pixels(y)).0, [0; 3]);
        let alone = straight(&photo, corners, Known::Aspect(200.0 / 140.0), Margin::None);
        assert_eq!(alone.picture.size(), (200, 140));
        // 0.08 of the longer side, on each of the four.
        let strip = straight(&photo, corners, Known::Aspect(200.0 / 140.0), Margin::Strip);
        assert_eq!(strip.picture.size(), (232, 172));
        for (edge, wanted) in strip.rectangle.into_iter().zip([16.0, 16.0, 216.0, 156.0]) {
            assert!((edge - wanted).abs() < 1e-9, "{:?}", strip.rectangle);
        }
        assert!(alone.picture.pixels().iter().all(|value| *value == 200));
    }

    #[test]
    fn a_low_angle_gives_no_picture_without_bounds() {
        let photo = grey(400, 300, &vec![90; 400 * 300]);
        // The sides run together just above the picture's top edge.
        let corners = [(180.0, 60.0), (220.0, 60.0), (390.0, 290.0), (10.0, 290.0)];
        let out = straight(&photo, corners, Known::Nothing, Margin::Kept);
        let (width, height) = out.picture.size();
        assert!(width <= LONGEST_SIDE && height <= LONGEST_SIDE, "{width} {height}");
        // Where the plane has vanished it is white, not the photo upside down.
        assert!(out.picture.pixels().contains(&255));
    }

    #[test]
    fn straightening_stops_when_it_is_told_to() {
        let photo = grey(400, 300, &vec![90; 400 * 300]);
        let corners = Corners::new(Corners::to_begin_with((400, 300)), (400, 300)).unwrap();
        for stop in [0.0, 0.3, 1.0] {
            let out =
                straighten(&photo, &corners, Known::Nothing, Margin::Kept, &|done| done < stop);
            assert_eq!(out.unwrap_err(), PictureError::Stopped);
        }
    }
}
