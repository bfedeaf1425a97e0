//! The examples, and homes that are hard to lay out.

use std::collections::BTreeMap;
use std::path::Path;

use quarterturn_guidance::Catalogue;
use quarterturn_home::{
    Closes, Component, Connection, Contact, Handle, Home, Kind, Level, Medium, Operates, Role,
    Space, Units, Warranty,
};
use quarterturn_papers::{
    CannotPrint, DueLine, MoveInLine, Order, PackExtras, Paper, Printed, Sheet,
};

/// A home with its pictures.
pub(crate) struct Given {
    pub(crate) home: Home,
    pub(crate) pictures: BTreeMap<String, Vec<u8>>,
    pub(crate) extras: PackExtras,
}

impl Given {
    fn of(home: Home) -> Self {
        Self { home, pictures: BTreeMap::new(), extras: PackExtras::default() }
    }

    /// Lays a sheet out on the paper that the home would take.
    pub(crate) fn print(&self, sheet: Sheet, language: &str) -> Result<Printed, CannotPrint> {
        self.print_on(sheet, language, Paper::of_home(&self.home))
    }

    pub(crate) fn print_on(
        &self,
        sheet: Sheet,
        language: &str,
        paper: Paper,
    ) -> Result<Printed, CannotPrint> {
        let order = Order {
            home: &self.home,
            pictures: &self.pictures,
            paper,
            words: &Catalogue::find(language).unwrap(),
            today: "2026-11-25".parse().unwrap(),
            extras: &self.extras,
        };
        quarterturn_papers::lay_out(sheet, &order)
    }
}

pub(crate) fn example(name: &str) -> Given {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(name);
    let text = std::fs::read_to_string(folder.join("home.ron")).unwrap();
    let home = quarterturn_home::open("home.ron", &text).home.unwrap();
    let plans = home.levels.iter().filter_map(|level| level.plan.as_ref());
    let pictures = plans
        .map(|plan| (plan.picture.clone(), std::fs::read(folder.join(&plan.picture)).unwrap()))
        .collect();
    Given { home, pictures, extras: PackExtras::default() }
}

/// Three devices, one room, no plan, no numbers.
pub(crate) fn three() -> Given {
    let mut valve = Component::new("valve", Kind::IsolatingValve, "Main shutoff");
    valve.space = Some("hall".to_owned());
    valve.tag = Some("W1".to_owned());
    let mut home = Home {
        format: 1,
        name: "Hut".to_owned(),
        components: vec![
            Component::new("street", Kind::WaterMain, "Street main"),
            valve,
            Component::new("tap", Kind::Tap, "Tap"),
        ],
        connections: vec![
            Connection::new("street", "valve", Medium::ColdWater),
            Connection::new("valve", "tap", Medium::ColdWater),
        ],
        ..Home::default()
    };
    home.spaces = vec![space("hall", "Hall", "ground")];
    home.levels = vec![level("ground", "Ground floor")];
    Given::of(home)
}

/// Four hundred devices: fifty fixtures with two stops and two hoses each, a panel with sixty breakers
/// and as many outlets, all of them in two rooms drawn from outlines.
pub(crate) fn four_hundred() -> Given {
    let mut home = three().home;
    home.name = "House of four hundred".to_owned();
    home.units = Units::Us;
    let mut add = |id: String, kind: Kind, tag: &str, room: &str| {
        let number = home.components.len();
        let mut component = Component::new(&id, kind, &format!("{kind:?} number {number}"));
        component.tag = Some(format!("{tag}{number}"));
        component.space = Some(room.to_owned());
        component.at = Some((1.0 + 0.01 * f64::from(u32::try_from(number).unwrap()), 2.0, 0.5));
        home.components.push(component);
    };
    add("panel".to_owned(), Kind::Panel, "E", "hall");
    add("service".to_owned(), Kind::ElectricityService, "E", "hall");
    for n in 0..60 {
        add(format!("breaker-{n}"), Kind::Breaker, "E", "hall");
        add(format!("outlet-{n}"), Kind::Receptacle, "E", "study");
    }
    for n in 0..56 {
        add(format!("sink-{n}"), Kind::Sink, "W", "study");
        for side in ["cold", "hot"] {
            add(format!("{side}-stop-{n}"), Kind::IsolatingValve, "W", "study");
            add(format!("{side}-hose-{n}"), Kind::SupplyHose, "W", "study");
        }
    }
    let mut link = |from: &str, to: &str, carries| {
        home.connections.push(Connection::new(from, to, carries));
    };
    link("service", "panel", Medium::Power);
    for n in 0..60 {
        link("panel", &format!("breaker-{n}"), Medium::Power);
        link(&format!("breaker-{n}"), &format!("outlet-{n}"), Medium::Power);
    }
    for n in 0..56 {
        for (side, medium) in [("cold", Medium::ColdWater), ("hot", Medium::HotWater)] {
            link("valve", &format!("{side}-stop-{n}"), medium);
            link(&format!("{side}-stop-{n}"), &format!("{side}-hose-{n}"), medium);
            link(&format!("{side}-hose-{n}"), &format!("sink-{n}"), medium);
        }
    }
    for (n, component) in home.components.iter_mut().filter(|c| c.kind == Kind::Breaker).enumerate()
    {
        component.panel = Some("panel".to_owned());
        component.circuit = Some((n + 1).to_string());
    }
    home.spaces = vec![space("hall", "Hall", "ground"), space("study", "Study", "ground")];
    home.spaces[0].outline = vec![(0.0, 0.0), (5.0, 0.0), (5.0, 4.0), (0.0, 4.0)];
    home.spaces[1].outline = vec![(5.2, 0.0), (9.0, 0.0), (9.0, 4.0), (5.2, 4.0)];
    assert!(home.components.len() >= 400, "{}", home.components.len());
    Given::of(home)
}

/// Names of eighty letters everywhere, half of them in one word.
pub(crate) fn long_names() -> Given {
    let mut given = example("flat");
    let words = "Shutoff of the cold and hot water behind the washing machine next to the window x";
    let one_word =
        "Donaudampfschifffahrtsgesellschaftskapitaenswitwenrentenauszahlungsstellenleiter";
    assert!(words.len() >= 80 && one_word.len() >= 80);
    let home = &mut given.home;
    home.name = one_word.to_owned();
    home.address = Some(words.repeat(2));
    for (n, component) in home.components.iter_mut().enumerate() {
        component.name = if n % 2 == 0 { words } else { one_word }.to_owned();
        if n % 7 == 0 {
            component.note = Some(one_word.to_owned());
        }
    }
    for space in &mut home.spaces {
        space.name = one_word.to_owned();
    }
    for level in &mut home.levels {
        level.name = words.to_owned();
    }
    for contact in &mut home.contacts {
        contact.name = one_word.to_owned();
        contact.phone = Some("555-0100 or 555-0101, from outside 555-0102".to_owned());
    }
    for warranty in &mut home.warranties {
        warranty.name = one_word.to_owned();
    }
    for job in &mut home.jobs {
        job.name = one_word.to_owned();
    }
    given
}

/// Names that would be markup if they were pasted into a template, or into anything else.
pub(crate) fn hostile() -> Given {
    let name = "#strong[<script>] *_`$ \\ \" ' {} // @x <b> & #import \"x\" \u{202e}";
    let mut home = three().home;
    home.name = name.to_owned();
    home.address = Some(name.to_owned());
    home.emergency_phone = Some(name.to_owned());
    for component in &mut home.components {
        component.name = name.to_owned();
        component.tag = Some("#1".to_owned());
        component.note = Some(name.to_owned());
        component.photo = Some("../../etc/passwd".to_owned());
        component.operates = Some(Operates {
            handle: Some(Handle::Wheel),
            closes: Some(Closes::Turns(f64::MAX)),
            tool: Some(name.to_owned()),
            ..Operates::default()
        });
    }
    for space in &mut home.spaces {
        space.name = "#strong[<script>]".to_owned();
    }
    home.levels[0].plan = Some(quarterturn_home::Plan {
        picture: "plan.png".to_owned(),
        left_m: f64::MIN,
        top_m: 0.0,
        width_m: 1e-9,
        mirrored: true,
    });
    home.contacts = vec![Contact {
        id: "x".to_owned(),
        name: name.to_owned(),
        phone: None,
        role: Some(Role::Plumber),
        hours: Some(name.to_owned()),
        note: Some(name.to_owned()),
    }];
    home.warranties = vec![Warranty {
        id: "w".to_owned(),
        name: name.to_owned(),
        kind: None,
        years: Some(3),
        contact: Some("x".to_owned()),
        covers: vec!["nothing".to_owned()],
        media: Vec::new(),
        from: "9999-12-31".parse().unwrap(),
        days: None,
        months: Some(u32::MAX),
    }];
    let mut given = Given::of(home);
    given.pictures.insert("plan.png".to_owned(), b"\x89PNG\r\n\x1a\n".to_vec());
    given.extras.move_in =
        vec![MoveInLine { done: true, text: name.to_owned(), note: name.to_owned() }];
    given.extras.due = vec![DueLine {
        due: "2026-12-01".parse().unwrap(),
        text: name.to_owned(),
        note: String::new(),
    }];
    given
}

fn space(id: &str, name: &str, level: &str) -> Space {
    Space {
        id: id.to_owned(),
        name: name.to_owned(),
        level: Some(level.to_owned()),
        outline: Vec::new(),
        outdoors: false,
    }
}

fn level(id: &str, name: &str) -> Level {
    Level { id: id.to_owned(), name: name.to_owned(), elevation_m: 0.0, plan: None }
}
