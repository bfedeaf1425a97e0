//! Saving loses nothing, the same home gives the same bytes, and no text makes the reader panic.

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test")]

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use quarterturn_home::{
    Closes, Component, Connection, Contact, Date, DeviceState, Document, FORMAT, Handle, Home, Job,
    Kept, Kind, Level, Material, Medium, Opened, OperableBy, Operates, Plan, Position, Role, Space,
    Units, Warranty, open, save,
};

fn text() -> impl Strategy<Value = String> {
    prop_oneof![".{0,12}", "[a-zA-Z ]{0,60}", "[\\\\\"'\n\r\t\u{0}\u{7f}(){}\\[\\],:/*#]{0,8}"]
}

fn some_text() -> impl Strategy<Value = Option<String>> {
    option::of(text())
}

fn number() -> impl Strategy<Value = f64> {
    prop_oneof![-1e9..1e9, Just(0.0), Just(-0.0), Just(1e-300), (-50_i32..50).prop_map(f64::from)]
}

fn some_amount() -> impl Strategy<Value = Option<f64>> {
    option::weighted(0.3, prop_oneof![0.0..1e9, (0_u32..50).prop_map(f64::from)])
}

fn date() -> impl Strategy<Value = Date> {
    (1_i32..=9999, 1_u32..=12, 1_u32..=28).prop_map(|(y, m, d)| Date::new(y, m, d).unwrap())
}

fn operates() -> impl Strategy<Value = Operates> {
    let handles = [Handle::Lever, Handle::Wheel, Handle::Toggle, Handle::PullOut, Handle::Cap];
    let closes = prop_oneof![
        select(vec![Closes::QuarterTurn, Closes::MultiTurn, Closes::ToOff, Closes::Unscrew]),
        (0.01..10_000.0).prop_map(Closes::Turns),
    ];
    let states = [
        DeviceState::Works,
        DeviceState::Stiff,
        DeviceState::Seized,
        DeviceState::LeaksBy,
        DeviceState::Unknown,
    ];
    (
        option::of(select(handles.to_vec())),
        option::of(closes),
        select(states.to_vec()),
        select(vec![Position::Open, Position::Shut]),
        some_text(),
        option::of(date()),
        some_amount(),
    )
        .prop_map(|(handle, closes, state, normally, tool, exercised, seconds)| Operates {
            handle,
            closes,
            state,
            normally,
            tool,
            exercised,
            seconds,
        })
}

prop_compose! {
    fn component()(
        kind in select(Kind::ALL),
        texts in vec(some_text(), 7),
        name in text(),
        at in option::of((number(), number(), number())),
        operates in option::of(operates()),
        operable_by in select(vec![OperableBy::Anyone, OperableBy::Licensed, OperableBy::Utility]),
        amounts in vec(some_amount(), 3),
        poles in option::of(1_u32..=100),
        joins in any::<Option<bool>>(),
        flags in any::<[bool; 2]>(),
        space in option::of(any::<Index>()),
        owner in option::of(any::<Index>()),
    ) -> (Component, Option<Index>, Option<Index>) {
        let mut texts = texts.into_iter();
        let mut next = || texts.next().unwrap();
        let component = Component {
            tag: next(),
            at,
            operates,
            operable_by,
            rating_a: amounts[0],
            watts: amounts[1],
            volume_l: amounts[2],
            poles,
            joins,
            critical: flags[0],
            boundary: flags[1],
            panel: next(),
            circuit: next(),
            lamp: next(),
            photo: next(),
            note: next(),
            ..Component::new("", kind, &name)
        };
        (component, space, owner)
    }
}

prop_compose! {
    fn connection()(
        ends in any::<(Index, Index)>(),
        carries in select(vec![
            Medium::ColdWater, Medium::HotWater, Medium::Waste, Medium::Vent, Medium::Condensate,
            Medium::Power, Medium::Gas, Medium::Signal,
        ]),
        has_id in any::<bool>(),
        length_m in some_amount(),
        texts in (some_text(), some_text()),
        material in option::of(select(vec![Material::Copper, Material::CastIron, Material::Pe])),
        one_way in any::<bool>(),
    ) -> ((Index, Index), Connection) {
        let id = has_id.then(String::new);
        let (size, note) = texts;
        let connection = Connection {
            id, from: String::new(), to: String::new(), carries, length_m, size, material, one_way, note,
        };
        (ends, connection)
    }
}

/// Ids such as `c-3`, numbered so that they differ.
fn numbered(letter: &str, number: usize) -> String {
    format!("{letter}-{number}")
}

fn pick(index: Option<Index>, letter: &str, count: usize) -> Option<String> {
    Some(numbered(letter, index?.index(Some(count).filter(|c| *c > 0)?)))
}

prop_compose! {
    fn home()(
        name in text(),
        units in select(vec![Units::Us, Units::Si]),
        heads in (some_text(), some_text(), option::of(any::<Index>())),
        levels in vec((text(), number(), option::of((text(), number(), number(), 0.001..1e9))), 0..4),
        spaces in vec((text(), option::of(any::<Index>()), vec((number(), number()), 0..12), any::<bool>()), 0..6),
        components in vec(component(), 1..12),
        connections in vec(connection(), 0..16),
        contacts in vec((text(), some_text(), option::of(select(vec![Role::Plumber, Role::WaterUtility])), some_text()), 0..3),
        warranties in vec((text(), option::of(any::<Index>()), vec(any::<Index>(), 0..30), date(), option::of(0_u32..366_000), option::of(0_u32..12_000)), 0..3),
        jobs in vec((text(), vec(any::<Index>(), 0..4), option::of(1_u32..12_000), option::of(date()), some_text()), 0..3),
        documents in vec((text(), some_text(), vec(any::<Index>(), 0..4)), 0..3),
    ) -> Home {
        let (n_levels, n_spaces, n_parts, n_contacts) =
            (levels.len(), spaces.len(), components.len(), contacts.len());
        let parts = |indices: Vec<Index>| -> Vec<String> {
            indices.into_iter().map(|i| numbered("c", i.index(n_parts))).collect()
        };
        let components: Vec<Component> = components.into_iter().enumerate()
            .map(|(i, (component, space, owner))| Component {
                id: numbered("c", i),
                space: pick(space, "s", n_spaces),
                owner: pick(owner, "p", n_contacts),
                ..component
            })
            .collect();
        let connections = sound_connections(connections, &components);
        Home {
            format: FORMAT,
            name,
            units,
            language: heads.0,
            emergency_phone: heads.1,
            usual_space: pick(heads.2, "s", n_spaces),
            levels: levels.into_iter().enumerate().map(|(i, (name, elevation_m, plan))| Level {
                id: numbered("l", i),
                name,
                elevation_m,
                plan: plan.map(|(picture, left_m, top_m, width_m)| Plan { picture, left_m, top_m, width_m }),
            }).collect(),
            spaces: spaces.into_iter().enumerate().map(|(i, (name, level, outline, outdoors))| Space {
                id: numbered("s", i), name, level: pick(level, "l", n_levels), outline, outdoors,
            }).collect(),
            components,
            connections,
            contacts: contacts.into_iter().enumerate().map(|(i, (name, phone, role, note))| Contact {
                id: numbered("p", i), name, phone, role, note,
            }).collect(),
            warranties: warranties.into_iter().enumerate().map(|(i, (name, contact, covers, from, days, months))| Warranty {
                id: numbered("w", i),
                name,
                contact: pick(contact, "p", n_contacts),
                covers: parts(covers),
                media: vec![Medium::Waste, Medium::Vent],
                from,
                days,
                months,
            }).collect(),
            jobs: jobs.into_iter().enumerate().map(|(i, (name, on, every_months, last_done, note))| Job {
                id: numbered("j", i), name, components: parts(on), every_months, last_done, note,
            }).collect(),
            documents: documents.into_iter().enumerate().map(|(i, (name, file, on))| Document {
                id: numbered("d", i), name, file, components: parts(on),
            }).collect(),
        }
    }
}

/// Connections from lower to higher numbers, so that no drain loops, between media that can meet; a
/// plain line carries the medium of its first connection only.
fn sound_connections(
    drawn: Vec<((Index, Index), Connection)>,
    components: &[Component],
) -> Vec<Connection> {
    let mut lines: Vec<Option<Medium>> = vec![None; components.len()];
    let mut sound = Vec::new();
    for ((a, b), connection) in drawn {
        let (a, b) = (a.index(components.len()), b.index(components.len()));
        let (a, b) = (a.min(b), a.max(b));
        let medium = connection.carries;
        let fits = |i: usize| {
            let kind = components[i].kind;
            let line_fits = !kind.is_plain_line() || lines[i].is_none_or(|m| m == medium);
            kind.can_meet(medium) && line_fits
        };
        if a == b || !fits(a) || !fits(b) {
            continue;
        }
        (lines[a], lines[b]) = (Some(medium), Some(medium));
        sound.push(Connection {
            id: connection.id.map(|_| numbered("n", sound.len())),
            from: numbered("c", a),
            to: numbered("c", b),
            ..connection
        });
    }
    sound
}

proptest! {
    #[test]
    fn a_saved_home_opens_as_it_was(home in home()) {
        let saved = save(&home, &Kept::default());
        let opened = open("home.ron", &saved);
        prop_assert!(opened.problems.is_empty(), "{:?}\n{saved}", opened.problems);
        prop_assert_eq!(&opened.kept, &Kept::default());
        prop_assert_eq!(save(opened.home.as_ref().unwrap(), &opened.kept), saved.as_str());
        prop_assert_eq!(opened.home.unwrap(), home);
    }

    /// `ron` and the derived reader know nothing of our scanner.
    #[test]
    fn serde_reads_a_saved_home_by_itself(home in home()) {
        let saved = save(&home, &Kept::default());
        let read: Home = ron::from_str(&saved).map_err(|e| TestCaseError::fail(format!("{e}\n{saved}")))?;
        prop_assert_eq!(read, home);
    }

    /// What serde writes without our help opens without a problem.
    #[test]
    fn what_serde_writes_opens(home in home(), pretty in any::<bool>()) {
        let text = if pretty {
            ron::ser::to_string_pretty(&home, ron::ser::PrettyConfig::default().struct_names(true))
        } else {
            ron::to_string(&home)
        };
        let text = text.unwrap();
        let opened = open("home.ron", &text);
        prop_assert!(opened.problems.is_empty(), "{:?}\n{text}", opened.problems);
        prop_assert_eq!(opened.home.unwrap(), home);
    }

    #[test]
    fn lines_are_short(home in home()) {
        for line in save(&home, &Kept::default()).lines() {
            prop_assert!(line.chars().count() <= 140, "{line}");
        }
    }

    #[test]
    fn any_bytes_are_survived(bytes in vec(any::<u8>(), 0..400)) {
        survives(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn any_signs_are_survived(text in "[\\[\\](){},:\"'#!/*\\\\rb0-9a-zA-Z_.+\\- \n\r\t\u{feff}é]{0,200}") {
        survives(&text);
        survives(&format!("Home({text})"));
        survives(&format!("Home(format: 1, name: \"\", components: [(id: \"a\", {text})])"));
    }

    #[test]
    fn a_good_file_with_slips_is_survived(
        home in home(),
        slips in vec((any::<Index>(), 0_usize..12, select(vec![
            "", "\"", "(", ")", "[", "]", ",", ":", " ", "\n", "-", "Some(", "// ", "/*", "x", "1", "\u{feff}", "None", "é",
        ])), 1..4),
    ) {
        let mut text = save(&home, &Kept::default());
        for (at, length, put) in slips {
            let places: Vec<usize> = text.char_indices().map(|(i, _)| i).collect();
            if places.is_empty() { break; }
            let start = at.index(places.len());
            let end = (start + length).min(places.len() - 1);
            text.replace_range(places[start]..places[end], put);
        }
        survives(&text);
    }

    #[test]
    fn a_good_file_with_other_values_loses_nothing(
        home in home(),
        slips in vec((any::<Index>(), select(vec![
            "5", "-1", "inf", "1e200", "\"x\"", "\"c-0\"", "\"c-1\"", "\"\"", "None", "Some(\"c-1\")",
            "[]", "()", "[\"c-0\", 5]", "(x: 1)", "(1, 2, 3)", "Foo", "Tap", "Waste", "Pipe", "true",
            "\"\\q\"", "5, extra: 1", "\"l-0\", id: \"twice\"", "r#\"a\nb\"#", "/* in */ 7",
        ])), 1..8),
    ) {
        let mut text = save(&home, &Kept::default());
        for (at, value) in slips {
            put_value(&mut text, at, value);
        }
        survives(&text);
    }
}

/// Puts another value in place of the one that stands behind the colon there.
fn put_value(text: &mut String, at: Index, value: &str) {
    let colons: Vec<usize> = text.match_indices(": ").map(|(i, _)| i + 2).collect();
    let start = colons[at.index(colons.len())];
    let length = text[start..].find([',', ')', ']']).unwrap_or(0);
    text.replace_range(start..start + length, value);
}

/// Opening does not panic, and if there is a home, saving it loses no problem and is stable.
fn survives(text: &str) {
    let opened = open("home.ron", text);
    let lines = text.lines().count() + 1;
    for problem in &opened.problems {
        assert!(problem.line >= 1 && problem.line <= lines && problem.column >= 1);
    }
    let places: Vec<_> = opened.problems.iter().map(|p| (p.line, p.column)).collect();
    assert!(places.is_sorted());
    let Some(home) = &opened.home else {
        assert!(!opened.problems.is_empty());
        return;
    };
    let saved = save(home, &opened.kept);
    let again = open("home.ron", &saved);
    assert_eq!(save(again.home.as_ref().unwrap(), &again.kept), saved, "{text}");
    let mut home = home.clone();
    home.format = FORMAT;
    assert_eq!(again.home.as_ref(), Some(&home), "{text}\n{saved}");
    assert_eq!(lasting(&again), lasting(&opened), "{text}\n{saved}");
}

/// Keys of the problems that stay after saving; the others are put right by writing the file anew.
fn lasting(opened: &Opened) -> Vec<&'static str> {
    let repaired = [
        "missing-comma",
        "extra-comma",
        "quoted-name",
        "other-name",
        "unknown-extension",
        "format-missing",
        "format-newer",
        "format-unreadable",
    ];
    let keys = opened.problems.iter().map(|p| p.key).filter(|key| !repaired.contains(key));
    let mut keys: Vec<_> = keys.collect();
    keys.sort_unstable();
    keys
}
