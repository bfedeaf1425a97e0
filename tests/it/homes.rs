//! The example homes: they open without a problem, and save back the same.

use std::path::{Path, PathBuf};

use quarterturn_home::{Home, Kind, Net, open, save};

pub(crate) const EXAMPLES: [&str; 3] = ["flat", "old-house", "two-storey"];

fn folder(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../examples").join(name)
}

fn text(name: &str) -> String {
    String::from_utf8(std::fs::read(folder(name).join("home.ron")).unwrap()).unwrap()
}

pub(crate) fn example(name: &str) -> Home {
    let opened = open("home.ron", &text(name));
    assert!(opened.problems.is_empty(), "{name}: {:#?}", opened.problems);
    opened.home.unwrap()
}

#[test]
fn each_folder_of_examples_is_tested_and_says_first_what_it_shows() {
    let mut found: Vec<String> = std::fs::read_dir(folder("."))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.is_dir())
        .map(|path| path.file_name().unwrap().to_str().unwrap().to_owned())
        .collect();
    found.sort();
    assert_eq!(found, EXAMPLES);
    for name in EXAMPLES {
        let text = text(name);
        let first = text.lines().next().unwrap();
        assert!(first.starts_with("// ") && first.len() > 40, "{name}: {first}");
        example(name);
    }
}

#[test]
fn saving_loses_nothing_and_the_second_time_changes_nothing() {
    for name in EXAMPLES {
        let opened = open("home.ron", &text(name));
        let home = opened.home.unwrap();
        let saved = save(&home, &opened.kept);
        let again = open("home.ron", &saved);
        assert!(again.problems.is_empty(), "{name}: {:?}", again.problems);
        assert_eq!(again.home.as_ref(), Some(&home), "{name}");
        assert_eq!(save(&home, &again.kept), saved, "{name}");
    }
}

#[test]
fn every_plan_and_photo_that_a_home_names_is_there() {
    for name in EXAMPLES {
        let home = example(name);
        for level in &home.levels {
            let plan = level.plan.as_ref().unwrap_or_else(|| panic!("{name}: {}", level.id));
            let bytes = std::fs::read(folder(name).join(&plan.picture)).unwrap();
            assert!(bytes.starts_with(b"\x89PNG"), "{name}: {}", plan.picture);
        }
        for photo in home.components.iter().filter_map(|c| c.photo.as_ref()) {
            assert!(folder(name).join(photo).exists(), "{name}: {photo}");
        }
    }
}

/// What the two-storey house is there to show; each line is a thing that some trouble turns on.
#[test]
fn the_two_storey_house_has_what_it_says() {
    let home = example("two-storey");
    assert!(home.components.len() >= 140, "{}", home.components.len());
    let count = |kind: Kind| home.components.iter().filter(|c| c.kind == kind).count();
    for (kind, least) in [
        (Kind::BackflowPreventer, 1),
        (Kind::Softener, 1),
        (Kind::CirculationPump, 1),
        (Kind::Generator, 1),
        (Kind::Cleanout, 2),
        (Kind::FloorDrain, 1),
        (Kind::SumpPump, 1),
        (Kind::AirHandler, 1),
        (Kind::CondensatePan, 2),
        (Kind::FloatSwitch, 2),
        (Kind::Panel, 2),
        (Kind::GasMeter, 1),
        (Kind::SprinklerRiser, 1),
        (Kind::MedicalDevice, 1),
    ] {
        assert!(count(kind) >= least, "{kind:?}");
    }
    for net in [Net::Water, Net::Waste, Net::Power, Net::Gas, Net::Condensate] {
        assert!(home.connections.iter().any(|l| l.carries.net() == net), "{net:?}");
    }
    let level = |id: &str| home.level_of(home.component(id).unwrap()).unwrap().id.clone();
    let load_side = |gfci: &str| {
        let mut ids = vec![gfci.to_owned()];
        let mut next = 0;
        while next < ids.len() {
            for link in &home.connections {
                if link.from == ids[next] && !ids.contains(&link.to) {
                    ids.push(link.to.clone());
                }
            }
            next += 1;
        }
        ids
    };
    let elsewhere = home.components.iter().filter(|c| c.kind == Kind::Gfci).any(|gfci| {
        load_side(&gfci.id).iter().any(|id| {
            home.component(id).unwrap().kind == Kind::Receptacle && level(id) != level(&gfci.id)
        })
    });
    assert!(elsewhere, "no GFCI feeds an outlet on another floor");
}
