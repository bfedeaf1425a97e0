//! How long it takes to take a photo in and to put it straight.

use std::hint::black_box;

use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use image::{ImageFormat, Rgb, RgbImage};
use quarterturn_mapping::{Corners, Known, Margin, Picture, PictureKind, straighten};

/// A photo of 48 megapixels: lines of a plan, with noise as a sensor has it.
fn photo() -> Vec<u8> {
    let mut noise = 1_u32;
    let picture = RgbImage::from_fn(8000, 6000, |x, y| {
        noise ^= noise << 13;
        noise ^= noise >> 17;
        noise ^= noise << 5;
        let paper = if x % 800 < 12 || y % 600 < 12 { 40 } else { 215 };
        let [grain, ..] = (noise >> 4).to_le_bytes();
        Rgb([paper + grain / 16, paper + grain / 16, paper + grain / 12])
    });
    let mut bytes = std::io::Cursor::new(Vec::new());
    // A picture can always be written into memory.
    drop(picture.write_to(&mut bytes, ImageFormat::Jpeg));
    bytes.into_inner()
}

fn benches(c: &mut Criterion) {
    let bytes = photo();
    let mut group = c.benchmark_group("photo of 48 MP");
    group.sample_size(10);
    group.bench_function("read and shrunk to 4096", |b| {
        b.iter(|| Picture::read(black_box(&bytes), &|_| true));
    });
    let Ok(picture) = Picture::read(&bytes, &|_| true) else { return };
    group.bench_function("stored as JPEG", |b| b.iter(|| picture.stored()));
    group.bench_function("thumb of 256", |b| {
        b.iter_batched(|| &picture, |picture| picture.thumb(256), BatchSize::SmallInput);
    });
    let (width, height) = picture.size();
    let (w, h) = (f64::from(width), f64::from(height));
    let at = [(0.12, 0.15), (0.85, 0.08), (0.97, 0.9), (0.05, 0.93)];
    let corners = at.map(|(x, y)| (x * w, y * h));
    let Ok(corners) = Corners::new(corners, picture.size()) else { return };
    let go = |margin| straighten(&picture, &corners, Known::Aspect(4.0 / 3.0), margin, &|_| true);
    group.bench_function("straightened, 4096 wide", |b| b.iter(|| go(Margin::None)));
    group.bench_function("straightened with what is beside", |b| b.iter(|| go(Margin::Kept)));
    group.finish();

    let small = Picture::from_pixels(800, 600, vec![200; 800 * 600 * 3], PictureKind::Png);
    let Some(small) = small else { return };
    let Ok(corners) = Corners::new(Corners::to_begin_with((800, 600)), (800, 600)) else { return };
    c.bench_function("straightened while dragging, 800 wide", |b| {
        b.iter(|| straighten(&small, &corners, Known::Nothing, Margin::Kept, &|_| true));
    });
}

criterion_group!(all, benches);
criterion_main!(all);
