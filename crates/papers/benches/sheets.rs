//! How long sheets take: the fridge-door sheet again and again, as in the preview, and the whole
//! handover pack, both of the example and with the PDF written.

#![expect(clippy::expect_used, reason = "a bench without its example has nothing to measure")]

use std::collections::BTreeMap;
use std::path::Path;

use criterion::{Criterion, criterion_group, criterion_main};
use quarterturn_guidance::Catalogue;
use quarterturn_home::Home;
use quarterturn_papers::{Order, PackExtras, Paper, Sheet, lay_out};

/// The two-storey example with its plans.
#[expect(clippy::disallowed_methods, reason = "a bench reads its example from disk")]
fn example() -> (Home, BTreeMap<String, Vec<u8>>) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples/two-storey");
    let text = std::fs::read_to_string(folder.join("home.ron")).expect("the example is there");
    let home = quarterturn_home::open("home.ron", &text).home.expect("the example opens");
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref());
    let pictures = plans
        .map(|plan| {
            let bytes = std::fs::read(folder.join(&plan.picture)).expect("the plan is there");
            (plan.picture.clone(), bytes)
        })
        .collect();
    (home, pictures)
}

fn sheets(bench: &mut Criterion) {
    let (home, pictures) = example();
    let words = Catalogue::english();
    let extras = PackExtras::default();
    // A name changes each time, as it does while someone edits and looks at the preview.
    let print = |home: &Home, sheet| {
        let order = Order {
            home,
            pictures: &pictures,
            paper: Paper::of_home(home),
            words: &words,
            today: "2026-11-25".parse().expect("a day"),
            extras: &extras,
        };
        lay_out(sheet, &order).and_then(|printed| printed.pdf()).expect("the example prints")
    };
    for (name, sheet, samples) in [("fridge", Sheet::Fridge, 30), ("pack", Sheet::Pack, 10)] {
        let mut group = bench.benchmark_group("papers");
        group.sample_size(samples);
        let mut turn = 0;
        group.bench_function(format!("{name}, the home changed"), |bencher| {
            bencher.iter(|| {
                turn += 1;
                let mut home = home.clone();
                // A name that stands on both sheets: what hangs on it is laid out anew.
                let main = home.components.iter_mut().find(|c| c.id == "house-main");
                main.expect("the example has a main").name = format!("House main {turn}");
                print(&home, sheet)
            });
        });
        group.finish();
    }
}

criterion_group!(benches, sheets);
criterion_main!(benches);
