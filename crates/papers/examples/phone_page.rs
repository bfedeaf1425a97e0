//! Writes the phone page of a home: `cargo run -p quarterturn-papers --example phone_page -- HOME FILE [DAY]`.
//! The browser test uses it; people use `quarterturn papers`.

use std::collections::BTreeMap;
use std::io::{Read as _, Write as _};
use std::ops::ControlFlow;
use std::path::Path;
use std::time::Instant;

use quarterturn_home::{Date, open};
use quarterturn_papers::phone_page;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut arguments = std::env::args().skip(1);
    let (Some(folder), Some(file)) = (arguments.next(), arguments.next()) else {
        return Err("give the folder of a home and the file to write".into());
    };
    let today: Date = arguments.next().unwrap_or_else(|| "2026-11-25".to_owned()).parse()?;
    let folder = Path::new(&folder);
    let mut text = String::new();
    std::fs::File::open(folder.join("home.ron"))?.read_to_string(&mut text)?;
    let home = open("home.ron", &text).home.ok_or("the home cannot be read")?;
    let mut pictures = BTreeMap::new();
    for plan in home.levels.iter().filter_map(|level| level.plan.as_ref()) {
        let mut bytes = Vec::new();
        if let Ok(mut picture) = std::fs::File::open(folder.join(&plan.picture)) {
            picture.read_to_end(&mut bytes)?;
            pictures.insert(plan.picture.clone(), bytes);
        }
    }
    let begun = Instant::now();
    let page = phone_page(&home, &pictures, today, &mut |_, _| ControlFlow::Continue(()))?;
    let took = begun.elapsed();
    std::fs::File::create(&file)?.write_all(page.html.as_bytes())?;
    let mut out = std::io::stdout();
    writeln!(out, "{file}: {} bytes in {} ms", page.html.len(), took.as_millis())?;
    for path in page.unreadable_pictures {
        writeln!(out, "{path} cannot be shown")?;
    }
    Ok(())
}
