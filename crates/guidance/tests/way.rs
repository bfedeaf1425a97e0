//! Ways on foot: worked by hand on the examples, and against brute force on invented houses.

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test")]

use std::collections::BTreeMap;

use quarterturn_guidance::{Leg, Stand, Way, way};
use quarterturn_home::{Component, Home, Kind, Level, Passage, Space, open};

const TWO_STOREY: &str = include_str!("../../../examples/two-storey/home.ron");
const FLAT: &str = include_str!("../../../examples/flat/home.ron");
const OLD_HOUSE: &str = include_str!("../../../examples/old-house/home.ron");

fn home(text: &str) -> Home {
    let opened = open("home.ron", text);
    assert_eq!(opened.problems, []);
    opened.home.unwrap()
}

#[track_caller]
fn near(found: f64, wanted: f64) {
    assert!((found - wanted).abs() < 1e-4, "{found} instead of {wanted}");
}

#[test]
fn from_the_kitchen_sink_down_to_the_main() {
    let way = way(&home(TWO_STOREY), Stand::Component("kitchen-sink"), "house-main").unwrap();
    assert_eq!(way.spaces, ["kitchen", "dining", "hall", "playroom", "mechanical"]);
    // Kitchen (2.6, 0.5) to (5.0, 2.2): 2.94109. Dining room (5.12, 2.2) to (6.35, 4.0): 2.18014.
    // Hall (6.35, 4.12) to the stairs (7.95, 4.9): 1.78. Playroom (7.865, 8.9) to (4.72, 6.225):
    // 4.12877. Mechanical room (4.6, 6.225) to (0.5, 9.5): 5.24744. Three doorways of 0.12.
    near(way.metres, 16.63744);
    near(way.levels_down, 2.7);
    near(way.levels_up, 0.0);
    assert!(!way.is_guess);
    let levels: Vec<&str> = way.legs.iter().map(|leg| leg.level.as_str()).collect();
    assert_eq!(levels, ["ground", "basement"]);
    assert_eq!(way.legs[0].points.first(), Some(&(2.6, 0.5)));
    assert_eq!(way.legs[0].points.last(), Some(&(7.95, 4.9)));
    assert_eq!(way.legs[1].points.first(), Some(&(7.865, 8.9)));
    assert_eq!(way.legs[1].points.last(), Some(&(0.5, 9.5)));
}

#[test]
fn round_the_corner_of_the_hall_to_the_landing() {
    let way = way(&home(FLAT), Stand::Component("basin-cold-stop"), "landing-stopcock").unwrap();
    assert_eq!(way.spaces, ["bath", "hall", "stairwell"]);
    // Bath (8.7, 0.4) to (7.5, 1.525): 1.64488. Hall (7.4, 1.525) to its corner (6.4, 2.6): 1.46821,
    // along the wall to (4.675, 2.6): 1.725. Landing (4.675, 2.4) to (6.0, 2.0): 1.38406. Doorways of
    // 0.1 and 0.2.
    near(way.metres, 6.52215);
    assert!(way.legs[0].points.contains(&(6.4, 2.6)), "{:?}", way.legs);
}

#[test]
fn down_the_cellar_stairs_of_the_old_house() {
    let way = way(&home(OLD_HOUSE), Stand::Space("kitchen"), "main-gate").unwrap();
    assert_eq!(way.spaces, ["kitchen", "back-hall", "cellar-room"]);
    // Kitchen, its middle (2.125, 2.365) to (4.0, 3.5): 2.19177. Back hall (4.12, 3.5) to the stairs
    // (5.45, 0.9): 2.92043. Cellar (5.45, 3.6) to (6.4, 4.0): 1.03078. One doorway of 0.12.
    near(way.metres, 6.26298);
    near(way.levels_down, 2.2);
}

#[test]
fn every_space_of_the_examples_is_reached_but_for_the_pavement() {
    for (text, start, apart) in [
        (TWO_STOREY, "kitchen", &[][..]),
        (FLAT, "living", &["pavement"][..]),
        (OLD_HOUSE, "living", &[][..]),
    ] {
        let mut home = home(text);
        let spaces: Vec<String> = home.spaces.iter().map(|space| space.id.clone()).collect();
        let mut guessed = Vec::new();
        for space in spaces {
            let mark =
                Component { space: Some(space.clone()), ..Component::new("mark", Kind::Other, "") };
            home.components.retain(|c| c.id != "mark");
            home.components.push(mark);
            if way(&home, Stand::Space(start), "mark").unwrap().is_guess {
                guessed.push(space);
            }
        }
        assert_eq!(guessed, apart);
    }
}

#[test]
fn without_passages_the_way_is_a_straight_guess() {
    let mut home = home(TWO_STOREY);
    home.passages.clear();
    let found = way(&home, Stand::Component("kitchen-sink"), "house-main").unwrap();
    let line = vec![(2.6, 0.5), (0.5, 9.5)];
    let leg = |level: &str| Leg { level: level.to_owned(), points: line.clone() };
    assert_eq!(
        found,
        Way {
            legs: vec![leg("ground"), leg("basement")],
            // 2.1 by 9.0, with four tenths on top for what is between.
            metres: 2.1_f64.hypot(9.0) * 1.4,
            levels_up: 0.0,
            levels_down: 2.7,
            spaces: vec!["kitchen".to_owned(), "mechanical".to_owned()],
            is_guess: true,
        }
    );
    assert_eq!(way(&home, Stand::Space("kitchen"), "nobody"), None);
    assert_eq!(way(&home, Stand::Space("nowhere"), "house-main"), None);
}

#[test]
fn a_breaker_is_in_its_panel_and_a_point_is_in_the_room_around_it() {
    let mut home = home(TWO_STOREY);
    let is_fed = |home: &Home, id: &str| {
        home.connections.iter().any(|link| link.from == "main-panel" && link.to == id)
    };
    let breakers =
        home.components.iter().position(|c| c.kind == Kind::Breaker && is_fed(&home, &c.id));
    let breaker = &mut home.components[breakers.unwrap()];
    (breaker.space, breaker.at) = (None, None);
    let id = breaker.id.clone();
    let there = Stand::Point { level: "ground", x: 13.0, y: 6.0 };
    let way = way(&home, there, &id).unwrap();
    assert_eq!(way.spaces, ["garage"]);
    near(way.metres, 0.7);
}

#[test]
fn a_passage_without_a_place_is_in_the_middle_of_the_shared_wall() {
    let mut home = home(OLD_HOUSE);
    for passage in &mut home.passages {
        passage.at = passage.at.filter(|_| passage.stairs);
    }
    let way = way(&home, Stand::Space("kitchen"), "fuse-box").unwrap();
    assert_eq!(way.spaces, ["kitchen", "back-hall"]);
    // The rooms face each other from y = 0.25 to 4.48, with the wall from x = 4.0 to 4.12.
    let is_there = |point: &&(f64, f64)| (point.0 - 4.06).hypot(point.1 - 2.365) < 1e-9;
    assert!(way.legs[0].points.iter().any(|point| is_there(&point)), "{:?}", way.legs);
}

/// The brute force takes every order of passages that enters no space twice, and adds up straight
/// lines: its rooms are rectangles.
#[test]
fn no_order_of_doors_is_quicker() {
    let (mut reached, mut apart, mut climbed) = (0, 0, 0);
    for seed in 0..300 {
        let home = invented(seed);
        let ends = (Stand::Space("s0"), "device");
        let found = way(&home, ends.0, ends.1).unwrap();
        let Some((least, spaces)) = quickest(&home) else {
            assert!(found.is_guess, "{seed}");
            apart += 1;
            continue;
        };
        assert!(!found.is_guess, "{seed}");
        let doors =
            found.spaces.windows(2).filter(|pair| level(&home, &pair[0]) == level(&home, &pair[1]));
        let seconds = seconds(found.metres, doors.count(), found.levels_up, found.levels_down);
        // Each passage counts a thousandth of a second.
        assert!((seconds - least).abs() < 0.05, "{seed}: {seconds} {least} {found:?} {spaces:?}");
        let drawn: f64 = found
            .legs
            .iter()
            .flat_map(|leg| leg.points.windows(2))
            .map(|pair| (pair[1].0 - pair[0].0).hypot(pair[1].1 - pair[0].1))
            .sum();
        assert!((drawn - found.metres).abs() < 1e-6, "{seed}: {drawn} {}", found.metres);
        reached += 1;
        climbed += usize::from(found.levels_up > 0.0);
    }
    assert!(reached > 100 && apart > 20 && climbed > 50, "{reached} {apart} {climbed}");
}

/// A grid of three by three rooms on each of two levels, some of the doors, and two flights of stairs.
fn invented(seed: u64) -> Home {
    let mut dice = Dice(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) + 1);
    let (xs, ys) = ([0.0, 3.0, 5.5, 10.0], [0.0, 2.0, 6.0, 9.0]);
    let mut home = Home::default();
    for (number, elevation_m) in [(0, 0.0), (1, 2.8)] {
        home.levels.push(Level {
            id: format!("l{number}"),
            name: String::new(),
            elevation_m,
            plan: None,
        });
        for row in 0..3 {
            for column in 0..3 {
                let (x, y, u, v) = (xs[column], ys[row], xs[column + 1], ys[row + 1]);
                home.spaces.push(Space {
                    id: format!("s{}", number * 9 + row * 3 + column),
                    name: String::new(),
                    level: Some(format!("l{number}")),
                    outline: vec![(x, y), (u, y), (u, v), (x, v)],
                    outdoors: false,
                });
            }
        }
    }
    for level in 0..2 {
        for room in 0..9 {
            let (row, column) = (room / 3, room % 3);
            let one = format!("s{}", level * 9 + room);
            let part = dice.part();
            if column < 2 && dice.part() < 0.6 {
                let at = (xs[column + 1], ys[row] + part * (ys[row + 1] - ys[row]));
                let other = format!("s{}", level * 9 + room + 1);
                home.passages.push(Passage { at: Some(at), ..Passage::new(&one, &other) });
            }
            if row < 2 && dice.part() < 0.6 {
                let at = (xs[column] + part * (xs[column + 1] - xs[column]), ys[row + 1]);
                let other = format!("s{}", level * 9 + room + 3);
                home.passages.push(Passage { at: Some(at), ..Passage::new(&other, &one) });
            }
        }
    }
    for _ in 0..2 {
        let rooms = [dice.below(9), dice.below(9)];
        let [at, to_at] = rooms.map(|room| Some(middle(&home.spaces[room].outline)));
        let plain = Passage::new(&format!("s{}", rooms[0]), &format!("s{}", 9 + rooms[1]));
        home.passages.push(Passage { at, to_at, stairs: true, ..plain });
    }
    let space = dice.below(18);
    let (x, y) = home.spaces[space].outline[0];
    home.components.push(Component {
        space: Some(format!("s{space}")),
        at: Some((x + 0.5, y + 0.5, 1.0)),
        ..Component::new("device", Kind::IsolatingValve, "")
    });
    home
}

/// Seconds of a walk: 3 ft/s on the level with a tenth for furniture, 2 s a door; on stairs of 7-3/4
/// by 10 in., 0.47 m/s along the slope down and 0.8 of that up.
fn seconds(metres: f64, doors: usize, up_m: f64, down_m: f64) -> f64 {
    let slope = 7.75_f64.hypot(10.0) / 7.75;
    let doors = f64::from(u32::try_from(doors).unwrap());
    1.1 * metres / 0.9144 + 2.0 * doors + slope * (up_m / (0.8 * 0.47) + down_m / 0.47)
}

/// The least seconds from the middle of the first space to the device, and the spaces on the way.
fn quickest(home: &Home) -> Option<(f64, Vec<String>)> {
    let device = &home.components[0];
    let (x, y, _) = device.at.unwrap();
    let start = middle(&home.spaces[0].outline);
    let mut best: BTreeMap<u64, Vec<String>> = BTreeMap::new();
    let mut try_all = vec![(vec!["s0".to_owned()], start, 0.0)];
    while let Some((spaces, at, spent)) = try_all.pop() {
        let here = spaces.last().unwrap();
        if Some(here) == device.space.as_ref() {
            let total: f64 = spent + seconds((x - at.0).hypot(y - at.1), 0, 0.0, 0.0);
            // Positive figures sort like their bits.
            best.entry(total.to_bits()).or_insert(spaces);
            continue;
        }
        for passage in &home.passages {
            let (one, other) = (&passage.between.0, &passage.between.1);
            let (next, near, far) = if one == here {
                (other, passage.at, passage.other_at())
            } else if other == here {
                (one, passage.other_at(), passage.at)
            } else {
                continue;
            };
            if spaces.contains(next) {
                continue;
            }
            let (near, far) = (near.unwrap(), far.unwrap());
            let rise = elevation(home, next) - elevation(home, here);
            let across = (near.0 - at.0).hypot(near.1 - at.1);
            let doors = usize::from(!passage.stairs);
            let spent = spent + seconds(across, doors, rise.max(0.0), (-rise).max(0.0));
            let mut spaces = spaces.clone();
            spaces.push(next.clone());
            try_all.push((spaces, far, spent));
        }
    }
    best.into_iter().next().map(|(bits, spaces)| (f64::from_bits(bits), spaces))
}

fn middle(corners: &[(f64, f64)]) -> (f64, f64) {
    let (a, c) = (corners[0], corners[2]);
    ((a.0 + c.0) / 2.0, (a.1 + c.1) / 2.0)
}

fn level<'h>(home: &'h Home, space: &str) -> Option<&'h str> {
    home.space(space).unwrap().level.as_deref()
}

fn elevation(home: &Home, space: &str) -> f64 {
    home.level(level(home, space).unwrap()).unwrap().elevation_m
}

/// A linear congruential generator (Knuth's constants).
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> u64 {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        self.0 >> 33
    }

    fn below(&mut self, count: u64) -> usize {
        usize::try_from(self.roll() % count).unwrap()
    }

    fn part(&mut self) -> f64 {
        f64::from(u32::try_from(self.roll() % 1000).unwrap()) / 1000.0
    }
}
