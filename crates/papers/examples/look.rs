#![allow(
    clippy::all,
    clippy::disallowed_methods,
    clippy::unwrap_used,
    clippy::print_stdout,
    missing_docs
)]
use quarterturn_guidance::Catalogue;
use quarterturn_papers::{Order, PackExtras, Paper, Sheet, lay_out};
use std::collections::BTreeMap;
fn main() {
    let args: Vec<String> = std::env::args().collect();
    let folder = std::path::Path::new(&args[1]);
    let text = std::fs::read_to_string(folder.join("home.ron")).unwrap();
    let home = quarterturn_home::open("home.ron", &text).home.unwrap();
    let mut pictures = BTreeMap::new();
    for p in home.levels.iter().filter_map(|l| l.plan.as_ref()) {
        pictures.insert(p.picture.clone(), std::fs::read(folder.join(&p.picture)).unwrap());
    }
    let words = Catalogue::in_language(&args[3]);
    let extras = PackExtras::default();
    let order = Order {
        home: &home,
        pictures: &pictures,
        paper: if args.len() > 5 && args[5] != "dump" {
            Paper::from_word(&args[5]).unwrap()
        } else {
            Paper::of_home(&home)
        },
        words: &words,
        today: "2026-11-25".parse().unwrap(),
        extras: &extras,
    };
    for sheet in Sheet::ALL {
        if args[4] != "all" && args[4] != sheet.file_stem() {
            continue;
        }
        if args.last().unwrap() == "dump" {
            let (data, files) = quarterturn_papers::scratch_dump(sheet, &order);
            let dir = format!("{}/{}", args[2], sheet.file_stem());
            std::fs::create_dir_all(&dir).unwrap();
            std::fs::write(format!("{dir}/data.json"), data).unwrap();
            for (n, b) in files {
                std::fs::write(format!("{dir}/{n}"), b).unwrap();
            }
            continue;
        }
        let t = std::time::Instant::now();
        match lay_out(sheet, &order) {
            Ok(p) => {
                let a = t.elapsed();
                match p.pdf() {
                    Ok(pdf) => {
                        println!(
                            "{} {} pages, layout {a:?}, pdf {:?}, {} bytes",
                            sheet.file_stem(),
                            p.page_count(),
                            t.elapsed() - a,
                            pdf.len()
                        );
                        std::fs::write(format!("{}/{}.pdf", args[2], sheet.file_stem()), pdf)
                            .unwrap();
                    }
                    Err(e) => println!("{e}"),
                }
            }
            Err(e) => println!("{}: {e}", sheet.file_stem()),
        }
    }
}
