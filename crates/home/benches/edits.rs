//! How long an edit of a large home takes, and its undo.

#![expect(clippy::unwrap_used, reason = "a bench")]

use std::path::Path;

use criterion::{Criterion, criterion_group, criterion_main};
use quarterturn_home::{Edit, History, Home, With, changes, open};

fn example() -> Home {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/two-storey/home.ron");
    let text = String::from_utf8(std::fs::read(file).unwrap()).unwrap();
    open("home.ron", &text).home.unwrap()
}

fn drag(step: f64) -> Edit {
    let at = Some((step, 1.0, 1.0));
    Edit::Move { id: "kitchen-sink".to_owned(), space: None, at, with: With::Nothing }
}

fn edits(c: &mut Criterion) {
    let home = example();
    let component = home.component("kitchen-sink").unwrap().clone();
    c.bench_function("drag a pin", |b| {
        let mut history = History::new(home.clone());
        let mut step = 0.0;
        b.iter(|| {
            step += 0.01;
            history.apply_within("drag", drag(step)).unwrap();
        });
    });
    c.bench_function("put a component, checked against the file", |b| {
        b.iter(|| Edit::PutComponent(Box::new(component.clone())).made_on(&home).unwrap());
    });
    c.bench_function("undo and redo", |b| {
        let mut history = History::new(home.clone());
        history.apply(drag(1.0)).unwrap();
        b.iter(|| assert!(history.undo() && history.redo()));
    });
    c.bench_function("differences", |b| {
        let other = drag(1.0).made_on(&home).unwrap();
        b.iter(|| changes(&home, &other));
    });
}

criterion_group!(benches, edits);
criterion_main!(benches);
