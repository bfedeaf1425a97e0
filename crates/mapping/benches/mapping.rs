//! How long it takes.
use criterion::{Criterion, criterion_group, criterion_main};
fn none(_: &mut Criterion) {}
criterion_group!(benches, none);
criterion_main!(benches);
