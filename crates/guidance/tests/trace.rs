//! Lines between devices and spots: read off the examples by hand, and against brute force.

#![expect(clippy::unwrap_used, reason = "a test")]

use std::collections::BTreeSet;

use quarterturn_guidance::{Spot, Trouble, trace};
use quarterturn_home::{Component, Connection, Home, Kind, Medium, open};

const TWO_STOREY: &str = include_str!("../../../examples/two-storey/home.ron");
const FLAT: &str = include_str!("../../../examples/flat/home.ron");
const OLD_HOUSE: &str = include_str!("../../../examples/old-house/home.ron");

fn at(id: &str) -> Spot {
    Spot::Component(id.to_owned())
}

fn lines(text: &str, trouble: Trouble, spot: &Spot, device: &str) -> Vec<String> {
    let home = open("home.ron", text).home.unwrap();
    trace(&home, trouble, spot, device).iter().map(|line| line.join(" ")).collect()
}

/// The bypass stands shut, so the water runs through the softener.
#[test]
fn the_main_feeds_a_sink_by_a_cold_line_and_a_hot_one() {
    assert_eq!(
        lines(TWO_STOREY, Trouble::Leak, &at("kitchen-sink"), "house-main"),
        [
            "house-main cold-trunk softener-inlet softener softener-outlet cold-manifold cold-ground-valve cold-ground kitchen-cold-stop kitchen-cold-hose kitchen-sink",
            "house-main cold-trunk softener-inlet softener softener-outlet cold-manifold heater-inlet heater-cold-tee water-heater heater-outlet hot-manifold hot-ground-valve hot-ground kitchen-hot-stop kitchen-hot-hose kitchen-sink",
        ]
    );
}

#[test]
fn a_stop_cuts_one_line_only() {
    assert_eq!(
        lines(TWO_STOREY, Trouble::Leak, &at("kitchen-sink"), "kitchen-cold-stop"),
        ["kitchen-cold-stop kitchen-cold-hose kitchen-sink"]
    );
    assert_eq!(
        lines(FLAT, Trouble::ToiletOverflow, &at("toilet"), "landing-stopcock"),
        [
            "landing-stopcock landing-line flat-meter flat-line bath-valve bath-cold toilet-stop toilet"
        ]
    );
}

#[test]
fn wires_and_drains_are_followed_too() {
    assert_eq!(
        lines(TWO_STOREY, Trouble::DeadOutlet, &at("family-bath-outlet"), "main-panel"),
        ["main-panel br-baths-outdoor garage-gfci half-bath-outlet family-bath-outlet"]
    );
    assert_eq!(
        lines(TWO_STOREY, Trouble::SewageRising, &at("laundry-drain"), "house-cleanout"),
        [
            "house-cleanout building-drain center-cleanout center-stack laundry-branch laundry-drain-trap laundry-drain"
        ]
    );
    assert_eq!(
        lines(OLD_HOUSE, Trouble::DrainBacksUp, &at("sink"), "cleanout"),
        ["cleanout building-drain kitchen-drain sink-trap sink"]
    );
}

#[test]
fn a_pipe_is_reached_with_its_far_end_last_and_a_device_at_the_spot_not_at_all() {
    let pipe = Spot::Connection("cold-ground".to_owned(), "kitchen-cold-stop".to_owned());
    assert_eq!(
        lines(TWO_STOREY, Trouble::Leak, &pipe, "cold-ground-valve"),
        ["cold-ground-valve cold-ground kitchen-cold-stop"]
    );
    let itself = lines(TWO_STOREY, Trouble::Leak, &at("kitchen-cold-stop"), "kitchen-cold-stop");
    assert_eq!(itself, [""; 0]);
    assert_eq!(lines(TWO_STOREY, Trouble::Leak, &Spot::Home, "house-main"), [""; 0]);
    assert_eq!(lines(TWO_STOREY, Trouble::Leak, &at("nobody"), "house-main"), [""; 0]);
}

#[test]
fn a_room_is_traced_to_each_thing_in_it() {
    let room = Spot::Space("half-bath".to_owned());
    let found = lines(TWO_STOREY, Trouble::Leak, &room, "cold-ground-valve");
    let ends: BTreeSet<&str> = found.iter().filter_map(|line| line.rsplit(' ').next()).collect();
    assert!(ends.contains("half-bath-toilet") && ends.contains("half-bath-basin"), "{found:#?}");
    assert!(
        found.iter().all(|line| line.starts_with("cold-ground-valve cold-ground ")),
        "{found:#?}"
    );
}

/// Random pipes, all of them open and none one-way: for each line into the spot, brute force lists
/// every way from the device along the usual direction that passes nothing twice.
#[test]
fn no_line_is_missed_and_none_is_longer_than_it_need_be() {
    let (mut joined, mut apart) = (0, 0);
    for seed in 0..200 {
        let home = pipes(seed);
        let found = trace(&home, Trouble::Leak, &at("p7"), "p0");
        let mut ways = Vec::new();
        every_way(&home, vec!["p0".to_owned()], &mut ways);
        let ends: BTreeSet<&String> = ways.iter().map(|way| &way[way.len() - 2]).collect();
        if ways.is_empty() {
            apart += 1;
            continue;
        }
        joined += 1;
        let told: Vec<&String> = found.iter().map(|line| &line[line.len() - 2]).collect();
        assert_eq!(told.iter().copied().collect::<BTreeSet<_>>(), ends, "{seed}");
        assert_eq!(told.len(), ends.len(), "{seed}: one for each line");
        for line in &found {
            assert!(ways.contains(line), "{seed}: {line:?}");
            let same = ways.iter().filter(|way| way[way.len() - 2] == line[line.len() - 2]);
            assert_eq!(same.map(Vec::len).min(), Some(line.len()), "{seed}: {line:?}");
        }
    }
    assert!(joined > 60 && apart > 20, "{joined} {apart}");
}

fn pipes(seed: u64) -> Home {
    let mut home = Home::default();
    let mut state = seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) + 7;
    let mut roll = || {
        state =
            state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) % 100
    };
    for number in 0..8 {
        let id = format!("p{number}");
        home.components.push(Component::new(&id, Kind::Pipe, &id));
    }
    for from in 0..8 {
        for to in 0..8 {
            if from != to && roll() < 17 {
                let link =
                    Connection::new(&format!("p{from}"), &format!("p{to}"), Medium::ColdWater);
                home.connections.push(link);
            }
        }
    }
    home
}

fn every_way(home: &Home, way: Vec<String>, ways: &mut Vec<Vec<String>>) {
    let last = way.last().unwrap();
    if last == "p7" {
        ways.push(way);
        return;
    }
    for link in home.connections.iter().filter(|link| link.from == *last) {
        if !way.contains(&link.to) {
            let mut longer = way.clone();
            longer.push(link.to.clone());
            every_way(home, longer, ways);
        }
    }
}
