//! Homes drawn at random: all that a file can hold.

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use quarterturn_home::{
    Closes, Component, Connection, Contact, Date, DeviceState, Document, Done, Drill, Duct, FORMAT,
    Handle, Home, Job, Kind, Level, Material, Medium, MovedIn, OperableBy, Operates, Passage, Plan,
    Position, Role, Space, Units, Warranty, WarrantyKind,
};

pub(crate) fn text() -> impl Strategy<Value = String> {
    prop_oneof![".{0,12}", "[a-zA-Z ]{0,60}", "[\\\\\"'\n\r\t\u{0}\u{7f}(){}\\[\\],:/*#]{0,8}"]
}

pub(crate) fn some_text() -> impl Strategy<Value = Option<String>> {
    option::of(text())
}

fn number() -> impl Strategy<Value = f64> {
    prop_oneof![-1e9..1e9, Just(0.0), Just(-0.0), Just(1e-300), (-50_i32..50).prop_map(f64::from)]
}

fn some_amount() -> impl Strategy<Value = Option<f64>> {
    option::weighted(0.3, prop_oneof![0.0..1e9, (0_u32..50).prop_map(f64::from)])
}

fn direction() -> impl Strategy<Value = f64> {
    prop_oneof![0.0..360.0, Just(0.0), Just(-0.0), Just(1e-300), (0_u32..360).prop_map(f64::from)]
}

pub(crate) fn date() -> impl Strategy<Value = Date> {
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
        flags in any::<[bool; 3]>(),
        space in option::of(any::<Index>()),
        owner in option::of(any::<Index>()),
        (arc_fault, installed, duct) in (any::<bool>(), option::of(date()), option::of((some_amount(), 0_u32..=50, 0_u32..=50))),
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
            private: flags[2],
            arc_fault,
            installed,
            duct: duct.map(|(length_m, quarter_elbows, eighth_elbows)| Duct { length_m, quarter_elbows, eighth_elbows }),
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
    fn drill()(
        at in any::<Index>(),
        from in option::of(any::<Index>()),
        seconds in 0.1..3600.0,
        on in date(),
        found_only in any::<bool>(),
    ) -> (Index, Option<Index>, Drill) {
        (at, from, Drill { found_only, ..Drill::new("", None, seconds, on) })
    }
}

fn warranty_kind() -> impl Strategy<Value = WarrantyKind> {
    select(vec![WarrantyKind::Workmanship, WarrantyKind::Parts, WarrantyKind::ServicePlan])
}

prop_compose! {
    fn done()(
        job in text(),
        on in date(),
        texts in (some_text(), some_text()),
        at in vec(any::<Index>(), 0..3),
        finding in option::of(select(vec![DeviceState::Works, DeviceState::Seized])),
    ) -> (Vec<Index>, Done) {
        let (by, note) = texts;
        (at, Done { job, on, by, components: Vec::new(), finding, note })
    }
}

prop_compose! {
    fn moved_in()(item in text(), on in date(), by in text(), note in some_text()) -> MovedIn {
        MovedIn { item, on, by, note }
    }
}

prop_compose! {
    pub(crate) fn home()(
        name in text(),
        units in select(vec![Units::Us, Units::Si]),
        heads in (some_text(), some_text(), option::of(any::<Index>()), some_text(), option::of(direction())),
        levels in vec((text(), number(), option::of((text(), number(), number(), 0.001..1e9, any::<bool>()))), 0..4),
        spaces in vec((text(), option::of(any::<Index>()), vec((number(), number()), 0..12), any::<bool>()), 0..6),
        passages in vec((any::<(Index, Index)>(), option::of((number(), number())), option::of((number(), number())), some_text()), 0..6),
        components in vec(component(), 1..12),
        connections in vec(connection(), 0..16),
        contacts in vec((text(), some_text(), option::of(select(vec![Role::Plumber, Role::WaterUtility, Role::Owner, Role::Neighbor])), some_text(), some_text()), 0..3),
        warranties in vec((text(), option::of(warranty_kind()), option::of(any::<Index>()), vec(any::<Index>(), 0..30), date(), (option::of(0_u32..366_000), option::of(0_u32..12_000), option::of(0_u32..1000))), 0..3),
        jobs in (vec((text(), vec(any::<Index>(), 0..4), option::of(1_u32..12_000), option::of(date()), (some_text(), some_text(), some_text())), 0..3), vec(done(), 0..3), vec(moved_in(), 0..3)),
        (documents, drills) in (vec((text(), some_text(), vec(any::<Index>(), 0..4), any::<bool>()), 0..3), vec(drill(), 0..4)),
    ) -> Home {
        let (n_levels, n_spaces, n_parts, n_contacts) =
            (levels.len(), spaces.len(), components.len(), contacts.len());
        let parts = |indices: Vec<Index>| -> Vec<String> {
            indices.into_iter().map(|i| numbered("c", i.index(n_parts))).collect()
        };
        let (jobs, done, move_in) = jobs;
        let components: Vec<Component> = components.into_iter().enumerate()
            .map(|(i, (component, space, owner))| Component {
                id: numbered("c", i),
                space: pick(space, "s", n_spaces),
                owner: pick(owner, "p", n_contacts),
                ..component
            })
            .collect();
        let connections = sound_connections(connections, &components);
        let spaces: Vec<Space> = spaces.into_iter().enumerate().map(|(i, (name, level, outline, outdoors))| Space {
            id: numbered("s", i), name, level: pick(level, "l", n_levels), outline, outdoors,
        }).collect();
        let passages = sound_passages(passages, &spaces);
        Home {
            format: FORMAT,
            name,
            units,
            language: heads.0,
            address: heads.3,
            emergency_phone: heads.1,
            usual_space: pick(heads.2, "s", n_spaces),
            north_deg: heads.4,
            levels: levels.into_iter().enumerate().map(|(i, (name, elevation_m, plan))| Level {
                id: numbered("l", i),
                name,
                elevation_m,
                plan: plan.map(|(picture, left_m, top_m, width_m, mirrored)| Plan { picture, left_m, top_m, width_m, mirrored }),
            }).collect(),
            spaces,
            passages,
            components,
            connections,
            contacts: contacts.into_iter().enumerate().map(|(i, (name, phone, role, hours, note))| Contact {
                id: numbered("p", i), name, phone, role, hours, note,
            }).collect(),
            warranties: warranties.into_iter().enumerate().map(|(i, (name, kind, contact, covers, from, (days, months, years)))| Warranty {
                id: numbered("w", i),
                name,
                kind,
                contact: pick(contact, "p", n_contacts),
                covers: parts(covers),
                media: vec![Medium::Waste, Medium::Vent],
                from,
                years,
                days,
                months,
            }).collect(),
            jobs: jobs.into_iter().enumerate().map(|(i, (name, on, every_months, last_done, (stands_for, how, note)))| Job {
                id: numbered("j", i), name, stands_for, components: parts(on), how, every_months, last_done, note,
            }).collect(),
            done: done.into_iter().map(|(on, done)| Done { components: parts(on), ..done }).collect(),
            move_in,
            documents: documents.into_iter().enumerate().map(|(i, (name, file, on, private))| Document {
                id: numbered("d", i), name, file, components: parts(on), private,
            }).collect(),
            drills: drills.into_iter().map(|(at, from, drill)| Drill {
                component: numbered("c", at.index(n_parts)),
                from: pick(from, "s", n_spaces),
                ..drill
            }).collect(),
        }
    }
}

type DrawnPassage = ((Index, Index), Option<(f64, f64)>, Option<(f64, f64)>, Option<String>);

/// Passages between two spaces: stairs where their levels differ.
fn sound_passages(drawn: Vec<DrawnPassage>, spaces: &[Space]) -> Vec<Passage> {
    let mut sound = Vec::new();
    for ((one, other), at, to_at, note) in drawn {
        if spaces.len() < 2 {
            break;
        }
        let (one, other) = (one.get(spaces), other.get(spaces));
        if one.id == other.id {
            continue;
        }
        let stairs = one.level != other.level;
        let to_at = to_at.filter(|_| stairs);
        let plain = Passage::new(&one.id, &other.id);
        sound.push(Passage { at, stairs, to_at, note, ..plain });
    }
    sound
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
