//! How long it takes to say what is missing, what probably feeds what, and where to walk next: in the
//! example house of 250 components, complete and with every fifth line forgotten.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Home, Kind, Medium, open};
use quarterturn_mapping::{
    Search, Wish, guess, may_connect, media_between, missing, place, proposals, read_text,
};

fn example() -> Home {
    open("home.ron", include_str!("../../../examples/two-storey/home.ron")).home.unwrap_or_default()
}

fn forgetful(mut home: Home) -> Home {
    let mut index = 0;
    home.connections.retain(|_| {
        index += 1;
        index % 5 != 0
    });
    home
}

fn mapping(bench: &mut Criterion) {
    let whole = example();
    let gaps = forgetful(example());
    let words = Catalogue::english();
    let mut group = bench.benchmark_group("mapping");
    group.bench_function("missing, complete", |b| b.iter(|| missing(black_box(&whole))));
    group.bench_function("missing, a fifth forgotten", |b| b.iter(|| missing(black_box(&gaps))));
    group
        .bench_function("proposals, a fifth forgotten", |b| b.iter(|| proposals(black_box(&gaps))));
    group.bench_function("may a line be drawn", |b| {
        b.iter(|| may_connect(black_box(&whole), "cold-upper", "family-tub", Medium::ColdWater));
    });
    group.bench_function("what a line may carry", |b| {
        b.iter(|| media_between(black_box(&whole), "cold-upper", "family-tub"));
    });
    group.bench_function("place a basin", |b| {
        let wish = Wish {
            set: "basin".to_owned(),
            space: Some("main-bath".to_owned()),
            at: Some((2.0, 2.0)),
            ..Wish::default()
        };
        b.iter(|| place(black_box(&whole), &wish, &words));
    });
    group.bench_function("next walk, all circuits unknown", |b| {
        let mut home = example();
        let breakers: Vec<String> = home
            .components
            .iter()
            .filter(|c| c.kind == Kind::Breaker)
            .map(|c| c.id.clone())
            .collect();
        home.connections.retain(|l| !breakers.contains(&l.from));
        let search = Search::breakers(&home, &[]);
        b.iter(|| search.as_ref().and_then(|s| s.next_walk(black_box(&home))));
    });
    group.bench_function("guess a table of 20 000 rows", |b| {
        let text: String =
            (0..20_000).map(|n| format!("P{},{},Room {n},20\n", n / 42, n % 42 + 1)).collect();
        b.iter(|| read_text(black_box(&text)).map(|table| guess(&table)));
    });
    group.finish();
}

criterion_group!(benches, mapping);
criterion_main!(benches);
