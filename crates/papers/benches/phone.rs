//! How long the phone page takes: for the three example homes, and for a home of 400 components.

use std::collections::BTreeMap;
use std::ops::ControlFlow;

use criterion::{Criterion, SamplingMode, criterion_group, criterion_main};
use quarterturn_home::{Component, Connection, Date, Home, open};
use quarterturn_papers::phone_page;

const HOMES: [(&str, &str); 3] = [
    ("two-storey", include_str!("../../../examples/two-storey/home.ron")),
    ("flat", include_str!("../../../examples/flat/home.ron")),
    ("old-house", include_str!("../../../examples/old-house/home.ron")),
];

fn pages(bench: &mut Criterion) {
    let today = Date::new(2026, 11, 25).unwrap_or_else(|| unreachable!("the calendar has it"));
    let mut group = bench.benchmark_group("phone page");
    group.sample_size(10).sampling_mode(SamplingMode::Flat);
    let mut homes: Vec<(String, Home)> = HOMES
        .iter()
        .map(|(name, text)| ((*name).to_owned(), open(name, text).home.unwrap_or_default()))
        .collect();
    if let Some((_, house)) = homes.first() {
        homes.push(("400 components".to_owned(), in_copies(house, 400)));
    }
    for (name, home) in &homes {
        group.bench_function(name, |b| {
            b.iter(|| {
                phone_page(home, &BTreeMap::new(), today, &mut |_, _| ControlFlow::Continue(()))
                    .map(|page| page.html.len())
                    .unwrap_or_default()
            });
        });
    }
    group.finish();
}

/// The home built again and again behind the same street and meters, until it has so many components.
fn in_copies(house: &Home, wanted: usize) -> Home {
    let mut home = house.clone();
    let shared = |component: &Component| component.owner.is_some();
    let mut copy = 1;
    while home.components.len() < wanted {
        let again = |id: &str| match house.component(id) {
            Some(component) if shared(component) => id.to_owned(),
            _ => format!("{id}-{copy}"),
        };
        for component in house.components.iter().filter(|c| !shared(c)) {
            if home.components.len() == wanted {
                break;
            }
            let name = format!("{} {copy}", component.name);
            home.components.push(Component { id: again(&component.id), name, ..component.clone() });
        }
        let links: Vec<Connection> = house
            .connections
            .iter()
            .map(|link| Connection {
                id: None,
                from: again(&link.from),
                to: again(&link.to),
                ..link.clone()
            })
            .filter(|link| {
                home.component(&link.from).is_some() && home.component(&link.to).is_some()
            })
            .filter(|link| !home.connections.contains(link))
            .collect();
        home.connections.extend(links);
        copy += 1;
    }
    home
}

criterion_group!(benches, pages);
criterion_main!(benches);
