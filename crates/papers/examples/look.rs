#![allow(
    clippy::all,
    clippy::disallowed_methods,
    clippy::unwrap_used,
    clippy::print_stdout,
    missing_docs
)]
use quarterturn_guidance::Catalogue;
use quarterturn_papers::{Order, PackExtras, Paper, Sheet, lay_out_watched};
use std::collections::BTreeMap;
fn main() {
    let args: Vec<String> = std::env::args().collect();
    let folder = std::path::Path::new(&args[1]);
    let text = std::fs::read_to_string(folder.join("home.ron")).unwrap();
    let mut home = quarterturn_home::open("home.ron", &text).home.unwrap();
    let mut pictures = BTreeMap::new();
    for p in home.levels.iter().filter_map(|l| l.plan.as_ref()) {
        pictures.insert(p.picture.clone(), std::fs::read(folder.join(&p.picture)).unwrap());
    }
    let words = Catalogue::in_language(&args[3]);
    let today = "2026-11-25".parse().unwrap();
    let extras = PackExtras::of_home(&home, today, &words);
    for turn in 0..args[5].parse::<usize>().unwrap() {
        if turn > 0 {
            home.name = format!("Home {turn}");
            home.components[0].name = format!("Street {turn}");
        }
        let order = Order {
            home: &home,
            pictures: &pictures,
            paper: Paper::of_home(&home),
            words: &words,
            today,
            extras: &extras,
        };
        for sheet in Sheet::ALL {
            if args[4] != "all" && args[4] != sheet.file_stem() {
                continue;
            }
            let t = std::time::Instant::now();
            let mut g = t.elapsed();
            match lay_out_watched(sheet, &order, &mut |_| {
                g = t.elapsed();
                std::ops::ControlFlow::Continue(())
            }) {
                Ok(p) => {
                    let a = t.elapsed();
                    let pdf = p.pdf().unwrap();
                    println!(
                        "{} {} pages, gather {g:?} layout {:?}, pdf {:?}, {} bytes",
                        sheet.file_stem(),
                        p.page_count(),
                        a - g,
                        t.elapsed() - a,
                        pdf.len()
                    );
                    std::fs::write(format!("{}/{}.pdf", args[2], sheet.file_stem()), pdf).unwrap();
                }
                Err(e) => println!("{}: {e}", sheet.file_stem()),
            }
        }
    }
}
