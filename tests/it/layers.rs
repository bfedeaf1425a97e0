//! Data flows one way: which crate may use which, and what the lower ones never do.

use std::path::{Path, PathBuf};

/// The crates from left to right in the picture of `DEVELOPERS.md`, each with those it may use.
const LAYERS: &[(&str, &[&str])] = &[
    ("home", &[]),
    ("estimate", &[]),
    ("network", &["home"]),
    ("guidance", &["home", "estimate", "network"]),
    ("mapping", &["home", "estimate", "network", "guidance"]),
    ("upkeep", &["home", "estimate", "network", "guidance"]),
    ("papers", &["home", "network", "guidance", "upkeep", "mapping"]),
    ("folder", &["home", "guidance", "mapping"]),
    ("window", &["home", "guidance", "mapping", "upkeep", "papers", "folder"]),
    ("quarterturn", &["home", "guidance", "mapping", "upkeep", "papers", "folder", "window"]),
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn read(path: &Path) -> String {
    let bytes = std::fs::read(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    String::from_utf8(bytes).unwrap()
}

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
    found.sort();
    found
}

#[test]
fn every_crate_is_known_and_uses_only_those_to_its_left() {
    let folder = root().join("crates");
    let mut names: Vec<String> = std::fs::read_dir(&folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    let mut known: Vec<&str> = LAYERS.iter().map(|(name, _)| *name).collect();
    known.sort_unstable();
    assert_eq!(names, known, "crates/ and the layers differ");
    for (name, allowed) in LAYERS {
        let manifest: toml::Value =
            toml::from_str(&read(&folder.join(name).join("Cargo.toml"))).unwrap();
        let dependencies = manifest["dependencies"].as_table().unwrap();
        for used in dependencies.keys().filter_map(|key| key.strip_prefix("quarterturn-")) {
            assert!(allowed.contains(&used), "{name} must not use {used}");
        }
    }
}

/// The lower crates open no file, read no clock, print nothing and read no environment.
#[test]
fn below_the_front_ends_nothing_touches_the_world() {
    for name in ["home", "estimate", "network", "guidance", "mapping", "upkeep", "papers"] {
        for file in sources(&root().join("crates").join(name).join("src")) {
            let text = read(&file);
            // Tests at the foot of a module may read what they like.
            let code = text.split("#[cfg(test)]").next().unwrap();
            for banned in [
                "std::fs",
                "std::env",
                "SystemTime",
                "Instant::",
                "println!",
                "eprintln!",
                "std::net",
            ] {
                assert!(!code.contains(banned), "{} uses {banned}", file.display());
            }
        }
    }
}

#[test]
fn the_network_and_the_home_hold_no_words_for_people() {
    for name in ["home", "network"] {
        for file in sources(&root().join("crates").join(name).join("src")) {
            let text = read(&file);
            let code = text.split("#[cfg(test)]").next().unwrap();
            assert!(!code.contains("fluent"), "{} reaches for the catalogue", file.display());
        }
    }
}

#[test]
fn the_developers_guide_names_every_crate() {
    let guide = read(&root().join("DEVELOPERS.md"));
    for (name, _) in LAYERS {
        assert!(guide.contains(&format!("crates/{name}")), "DEVELOPERS.md is silent on {name}");
    }
}
