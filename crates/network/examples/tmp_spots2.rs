#![allow(warnings)]
#[path = "../benches/generate.rs"]
mod generate;
use quarterturn_network::*;
use std::time::Instant;
fn main() {
    let g = generate::house();
    let mut iso = Isolator::new(&g.network, &g.terms);
    let n = g.network.nodes() as u32;
    let mut fl = vec![];
    for node in (1..n) {
        for b in 1..20000 {
            if iso.best(&[node], 5, b).proven { fl.push(b); break; }
        }
    }
    fl.sort();
    println!("flows k=5 median {} p90 {} max {}", fl[fl.len()/2], fl[fl.len()*9/10], fl[fl.len()-1]);
    let s = Instant::now();
    for _ in 0..20 { for node in 1..n { std::hint::black_box(iso.best(&[node], 5, 100000)); } }
    println!("{:?} each", s.elapsed() / 20 / n);
}
