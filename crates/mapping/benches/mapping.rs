//! How long it takes.
use criterion::{criterion_group, criterion_main, Criterion};
fn none(_: &mut Criterion) {}
criterion_group!(benches, none);
criterion_main!(benches);
