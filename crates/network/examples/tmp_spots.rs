#![allow(warnings)]
#[path = "../benches/generate.rs"]
mod generate;
use quarterturn_network::*;
use std::time::Instant;
fn main() {
    for g in [generate::house(), generate::block(), generate::district()] {
        let big = g.network.nodes() > 5000;
        let mut iso = Isolator::new(&g.network, &g.terms);
        let n = g.network.nodes() as u32;
        for k in [0usize, 1, 5] {
            if k == 5 && n > 100_000 {
                continue;
            }
            let mut t: Vec<(f64, u32, bool)> = vec![];
            let step = if big { n / if n > 100_000 { 60 } else { 200 } } else { 1 };
            let mut node = 1;
            while node < n {
                let s = Instant::now();
                let ok = if k == 0 {
                    iso.first(&[node], if n > 100_000 { 20 } else { 2000 }).is_some()
                } else {
                    iso.best(&[node], k, if n > 100_000 { 20 } else { 2000 }).proven
                };
                t.push((s.elapsed().as_secs_f64() * 1e6, node, ok));
                node += step;
            }
            t.sort_by(|a, b| a.0.total_cmp(&b.0));
            println!(
                "{} k={k} n={} median {:.1} p90 {:.1} max {:?} unproven/none {}",
                g.name,
                t.len(),
                t[t.len() / 2].0,
                t[t.len() * 9 / 10].0,
                t[t.len() - 1],
                t.iter().filter(|x| !x.2).count()
            );
        }
    }
}
