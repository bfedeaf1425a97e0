//! How long an answer takes: the slowest kinds of question in the example house, and every trouble at
//! every spot of the three example homes, each with the home read anew and all with one guide.

use criterion::{Criterion, criterion_group, criterion_main};
use quarterturn_guidance::{
    Catalogue, Guide, Question, Spot, Stand, Trouble, answer, spots, trace, way,
};
use quarterturn_home::{Home, open};

const HOMES: [(&str, &str); 3] = [
    ("two-storey", include_str!("../../../examples/two-storey/home.ron")),
    ("flat", include_str!("../../../examples/flat/home.ron")),
    ("old-house", include_str!("../../../examples/old-house/home.ron")),
];

fn example() -> Home {
    let (name, text) = HOMES[0];
    open(name, text).home.unwrap_or_default()
}

fn question(trouble: Trouble, at: Spot) -> Question {
    Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() }
}

fn answers(bench: &mut Criterion) {
    let home = example();
    let words = Catalogue::english();
    let at = |id: &str| Spot::Component(id.to_owned());
    let cases = [
        ("leak at the kitchen sink", question(Trouble::Leak, at("kitchen-sink"))),
        ("leak in the kitchen", question(Trouble::Leak, Spot::Space("kitchen".to_owned()))),
        ("water from above", question(Trouble::WaterFromAbove, Spot::Space("living".to_owned()))),
        ("sewage rising", question(Trouble::SewageRising, at("laundry-drain"))),
        ("dead outlet", question(Trouble::DeadOutlet, at("family-bath-outlet"))),
        ("sparks", question(Trouble::Sparks, at("sink-base-outlet"))),
    ];
    let mut group = bench.benchmark_group("answer");
    for (name, question) in &cases {
        group.bench_function(*name, |b| b.iter(|| answer(&home, question, &words)));
    }
    // What walking through doors costs: the same house as if it had none.
    let doorless = Home { passages: Vec::new(), ..example() };
    group.bench_function("leak at the kitchen sink, straight through the walls", |b| {
        b.iter(|| answer(&doorless, &cases[0].1, &words));
    });
    group.bench_function("way from the kitchen sink to the main", |b| {
        b.iter(|| way(&home, Stand::Component("kitchen-sink"), "house-main"));
    });
    group.bench_function("trace from the main to the kitchen sink", |b| {
        b.iter(|| trace(&home, Trouble::Leak, &at("kitchen-sink"), "house-main"));
    });
    group.sample_size(10);
    for (name, text) in HOMES {
        let home = open(name, text).home.unwrap_or_default();
        let all: Vec<Question> = Trouble::ALL
            .iter()
            .flat_map(|&t| spots(&home, t).into_iter().map(move |at| question(t, at)))
            .collect();
        group.bench_function(format!("{name}: all {} troubles and spots", all.len()), |b| {
            b.iter(|| all.iter().map(|q| answer(&home, q, &words).steps.len()).sum::<usize>());
        });
        group.bench_function(format!("{name}: the same with one guide"), |b| {
            b.iter(|| {
                let guide = Guide::of(&home);
                all.iter().map(|q| guide.answer(q, &words, None).steps.len()).sum::<usize>()
            });
        });
    }
    group.finish();
}

criterion_group!(benches, answers);
criterion_main!(benches);
