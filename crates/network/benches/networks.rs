//! How long the questions take on a house, a block of flats and a district.
//!
//! `cargo bench -p quarterturn-network`; one size only: `cargo bench -p quarterturn-network -- block/`.
//! The line `floor` is one plain pass over the arcs of the same net in the same run: no exact answer
//! about the whole net can be faster than that.

#![expect(
    clippy::indexing_slicing,
    clippy::cast_possible_truncation,
    clippy::print_stderr,
    reason = "generated nodes are numbered without gaps; a benchmark tells what it measures"
)]

mod generate;

use std::hint::black_box;
use std::time::Duration;

use criterion::{Criterion, criterion_group, criterion_main};
use generate::Generated;
use quarterturn_network::{
    Builder, Cutter, Dominators, Faults, Isolator, Needs, Network, Node, Observed, Priors, Supply,
    Terms as _, lines_of_defence, segments,
};

criterion_group!(networks, house, block, district);
criterion_main!(networks);

fn house(criterion: &mut Criterion) {
    measure(criterion, &generate::house(), 50);
}

fn block(criterion: &mut Criterion) {
    measure(criterion, &generate::block(), 20);
}

fn district(criterion: &mut Criterion) {
    measure(criterion, &generate::district(), 10);
}

fn measure(criterion: &mut Criterion, generated: &Generated, samples: usize) {
    let Generated { name, network, terms, flat, street } = generated;
    let devices = (0..network.nodes()).filter(|&n| network.is_device(n as u32)).count();
    eprintln!("{name}: {} nodes, {} arcs, {devices} devices", network.nodes(), network.arcs());
    let mut group = criterion.benchmark_group(*name);
    group.sample_size(samples);
    group.warm_up_time(Duration::from_millis(300)).measurement_time(Duration::from_millis(1500));

    group.bench_function("floor", |bench| bench.iter(|| pass_over_arcs(black_box(network))));
    group.bench_function("build network", |bench| bench.iter(|| rebuilt(network)));
    group.bench_function("build cutter", |bench| bench.iter(|| Cutter::new(network)));
    group.bench_function("prepare isolator", |bench| bench.iter(|| Isolator::new(network, terms)));

    // Effort and loss, as a person is answered.
    let mut isolator = Isolator::new(network, terms);
    for (place, spot) in [("flat", *flat), ("street", *street)] {
        group.bench_function(format!("best set, {place}"), |bench| {
            bench.iter(|| isolator.first(black_box(&[spot]), 10_000));
        });
    }
    if network.nodes() < 1000 {
        for (place, spot) in [("flat", *flat), ("street", *street)] {
            group.bench_function(format!("five best sets, {place}"), |bench| {
                bench.iter(|| isolator.best(black_box(&[spot]), 5, 10_000));
            });
        }
    }
    // Effort alone, as the other libraries' cuts were measured.
    let mut cutter = Cutter::new(network);
    cutter.set_costs(|device| terms.effort(device));
    for (place, spot) in [("flat", *flat), ("street", *street)] {
        group.bench_function(format!("cut, {place}"), |bench| {
            bench.iter(|| cutter.cheapest(black_box(&[spot])));
        });
    }

    group.bench_function("reached", |bench| bench.iter(|| network.reached(|_| false)));
    group.bench_function("dominators", |bench| bench.iter(|| Dominators::of(network, |_| false)));
    group.bench_function("lines of defence", |bench| {
        bench.iter(|| lines_of_defence(network, |_| true));
    });
    group.bench_function("segments", |bench| bench.iter(|| segments(network)));

    // What goes off: by reach, and by needs, where a node lives if all its ports are fed.
    let set = isolator.first(&[*flat], 10_000).map_or_else(Vec::new, |set| set.devices);
    group.bench_function("impact of the best set, reach", |bench| {
        bench.iter(|| isolator.lost(black_box(&set)));
    });
    let supply = needs_of(network);
    group.bench_function("impact of the best set, needs", |bench| {
        bench.iter(|| supply.alive(|node| set.contains(&node)));
    });
    let faults = Faults::of(network, &[*flat], |_| false);
    let seen = Observed { dead: vec![*flat], live: Vec::new() };
    group.bench_function("suspects, three diagnoses", |bench| {
        bench.iter(|| faults.diagnoses(&Alike, black_box(&seen), 3));
    });
    group.finish();
}

/// Every node as likely to have failed as every other.
struct Alike;

impl Priors for Alike {
    fn odds_against(&self, _: Node) -> Option<f64> {
        Some(3.0)
    }
}

/// The network as a supply in which each node needs one feed.
fn needs_of(network: &Network) -> Supply {
    let mut needs = Needs::default();
    for _ in 0..network.nodes() {
        needs.node();
    }
    let nodes = network.nodes() as u32;
    let ports: Vec<Option<u32>> =
        (0..nodes).map(|n| (!network.is_source(n)).then(|| needs.port(n))).collect();
    for &(a, b) in network.arc_list() {
        if let Some(port) = ports[b as usize] {
            needs.feed(a, port);
        }
    }
    needs.build()
}

/// Looks at every arc once, in the order of the array.
fn pass_over_arcs(network: &Network) -> u64 {
    network.arc_list().iter().fold(0, |sum, &(a, b)| sum.wrapping_add(u64::from(a ^ b)))
}

/// The same network again, from its nodes and arcs.
fn rebuilt(network: &Network) -> Network {
    let mut builder = Builder::with_capacity(network.nodes());
    for node in 0..network.nodes() as u32 {
        if network.is_source(node) {
            builder.source();
        } else if network.is_device(node) {
            builder.device();
        } else {
            builder.node();
        }
    }
    for &(a, b) in network.arc_list() {
        builder.one_way(a, b);
    }
    builder.build()
}
