//! The home: levels, spaces, components, connections and who is to be called.

use serde::{Deserialize, Serialize};

use crate::{
    Contact, Date, DeviceState, Document, Done, Drill, Job, Kind, MovedIn, Net, OperableBy,
    Operates, Position, Warranty,
};

/// The newest `format` of the home file that this version reads and writes.
pub const FORMAT: u32 = 1;

/// A home, as its file tells it. Everything is in SI units.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Home {
    /// Version of the file format.
    pub format: u32,
    /// What the people who live there call it.
    pub name: String,
    /// Units for display.
    #[serde(default)]
    pub units: Units,
    /// Language of the answers, as a BCP 47 tag; `None` for the program's own.
    #[serde(default)]
    pub language: Option<String>,
    /// Where it stands, as one tells it on the telephone.
    #[serde(default)]
    pub address: Option<String>,
    /// The number to call when people are in danger.
    #[serde(default)]
    pub emergency_phone: Option<String>,
    /// Id of the space where people mostly are when something happens.
    #[serde(default)]
    pub usual_space: Option<String>,
    /// In which direction north is on the plans, in degrees clockwise from their top, `0 <= x < 360`:
    /// 0 where north is up, 90 where it is to the right. All levels lie alike.
    #[serde(default)]
    pub north_deg: Option<f64>,
    /// Floors, lowest first if the file keeps to that.
    #[serde(default)]
    pub levels: Vec<Level>,
    /// Rooms, and outdoor places.
    #[serde(default)]
    pub spaces: Vec<Space>,
    /// Doors, openings and stairs: how people get from one space to the next.
    #[serde(default)]
    pub passages: Vec<Passage>,
    /// Everything that was installed.
    #[serde(default)]
    pub components: Vec<Component>,
    /// What feeds what.
    #[serde(default)]
    pub connections: Vec<Connection>,
    /// Whom to call.
    #[serde(default)]
    pub contacts: Vec<Contact>,
    /// Who answers for what, and how long.
    #[serde(default)]
    pub warranties: Vec<Warranty>,
    /// Upkeep.
    #[serde(default)]
    pub jobs: Vec<Job>,
    /// What was done of it, in the order of the file.
    #[serde(default)]
    pub done: Vec<Done>,
    /// What is ticked off of the things to do once after moving in.
    #[serde(default)]
    pub move_in: Vec<MovedIn>,
    /// Papers and pictures.
    #[serde(default)]
    pub documents: Vec<Document>,
    /// Walks to devices that were practised, in the order they were made.
    #[serde(default)]
    pub drills: Vec<Drill>,
}

/// Units for display; the file is always SI.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Units {
    /// Feet, gallons.
    Us,
    /// Metres, litres.
    #[default]
    Si,
}

/// A floor.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Level {
    /// Stable id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Height of its floor above the home's zero, in metres.
    #[serde(default)]
    pub elevation_m: f64,
    /// Its floor plan.
    #[serde(default)]
    pub plan: Option<Plan>,
}

/// A picture of a floor, and how metres lie on it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Plan {
    /// Path of the picture, from the home's folder.
    pub picture: String,
    /// Where the picture's left edge lies on the level, in metres.
    #[serde(default)]
    pub left_m: f64,
    /// Where the picture's top edge lies on the level, in metres; y grows downwards on the picture.
    #[serde(default)]
    pub top_m: f64,
    /// How wide the picture is, in metres.
    pub width_m: f64,
    /// True if the picture is drawn mirrored, left for right, in the place that it has.
    #[serde(default)]
    pub mirrored: bool,
}

/// A room, or a place outdoors.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Space {
    /// Stable id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Id of its level, if known.
    #[serde(default)]
    pub level: Option<String>,
    /// Corners on the level, in metres, in order round the space.
    #[serde(default)]
    pub outline: Vec<(f64, f64)>,
    /// True outdoors: preferred for letting sewage out.
    #[serde(default)]
    pub outdoors: bool,
}

/// A way on foot from one space to the next: a door, an opening, a hatch, a flight of stairs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Passage {
    /// Ids of the two spaces. It is walked both ways.
    pub between: (String, String),
    /// Where it is on the level of the first space, in metres; for stairs, where they begin there.
    #[serde(default)]
    pub at: Option<(f64, f64)>,
    /// True for stairs, which lead to another level.
    #[serde(default)]
    pub stairs: bool,
    /// Where stairs end on the level of the second space, in metres.
    #[serde(default)]
    pub to_at: Option<(f64, f64)>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

/// Something installed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Component {
    /// Stable id, `[a-z0-9-]+`.
    pub id: String,
    /// What it is.
    pub kind: Kind,
    /// What people call it.
    pub name: String,
    /// Letters and number on its tag, such as `W1`.
    #[serde(default)]
    pub tag: Option<String>,
    /// Id of the space it is in, if known.
    #[serde(default)]
    pub space: Option<String>,
    /// x, y on the level and height above its floor, in metres.
    #[serde(default)]
    pub at: Option<(f64, f64, f64)>,
    /// How it is worked.
    #[serde(default)]
    pub operates: Option<Operates>,
    /// Who may work it.
    #[serde(default)]
    pub operable_by: OperableBy,
    /// Rated current, in amperes.
    #[serde(default)]
    pub rating_a: Option<f64>,
    /// Number of poles.
    #[serde(default)]
    pub poles: Option<u32>,
    /// Power drawn, in watts.
    #[serde(default)]
    pub watts: Option<f64>,
    /// Water held, in litres.
    #[serde(default)]
    pub volume_l: Option<f64>,
    /// True if its hot and cold lines are joined; `None` for what its kind does.
    #[serde(default)]
    pub joins: Option<bool>,
    /// True if it must be named first when it goes off.
    #[serde(default)]
    pub critical: bool,
    /// True if one party's side ends here and another's begins.
    #[serde(default)]
    pub boundary: bool,
    /// Id of the contact who owns it.
    #[serde(default)]
    pub owner: Option<String>,
    /// The panel it is fed from, where only the directory's words are known.
    #[serde(default)]
    pub panel: Option<String>,
    /// The circuit it is on, as the panel directory writes it, such as `9,11,13`.
    #[serde(default)]
    pub circuit: Option<String>,
    /// True for a breaker or outlet that also trips on arcs, and has a button to test that.
    #[serde(default)]
    pub arc_fault: bool,
    /// The day it was put in, or made.
    #[serde(default)]
    pub installed: Option<Date>,
    /// The duct through which a dryer blows outdoors.
    #[serde(default)]
    pub duct: Option<Duct>,
    /// What its lamp or button tells.
    #[serde(default)]
    pub lamp: Option<String>,
    /// Path of a photo, from the home's folder.
    #[serde(default)]
    pub photo: Option<String>,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
    /// True if its note and photo are for those who live here alone: they are left out of a copy and
    /// of what the next owner gets.
    #[serde(default)]
    pub private: bool,
}

/// The duct of a clothes dryer, from the hose behind it to the outdoors.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Duct {
    /// How long the straight pieces are together, in metres.
    pub length_m: Option<f64>,
    /// How many elbows of 90 degrees it has.
    pub quarter_elbows: u32,
    /// How many elbows of 45 degrees it has.
    pub eighth_elbows: u32,
}

/// What a connection carries.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Medium {
    /// Cold water.
    ColdWater,
    /// Hot water.
    HotWater,
    /// Waste water.
    Waste,
    /// Air of the drains.
    Vent,
    /// Condensate.
    Condensate,
    /// Electricity.
    Power,
    /// Fuel gas.
    Gas,
    /// Control wiring.
    Signal,
}

impl Medium {
    /// The net this medium is traced in.
    #[must_use]
    pub fn net(self) -> Net {
        match self {
            Self::ColdWater | Self::HotWater => Net::Water,
            Self::Waste => Net::Waste,
            Self::Vent => Net::Vent,
            Self::Condensate => Net::Condensate,
            Self::Power => Net::Power,
            Self::Gas => Net::Gas,
            Self::Signal => Net::Signal,
        }
    }
}

/// What feeds what.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Connection {
    /// Id of its own, if it has one.
    #[serde(default)]
    pub id: Option<String>,
    /// Id of the component it usually comes from.
    pub from: String,
    /// Id of the component it usually goes to.
    pub to: String,
    /// What it carries.
    pub carries: Medium,
    /// Its length, in metres.
    #[serde(default)]
    pub length_m: Option<f64>,
    /// Its size, as the trade writes it, such as `3/4 in`.
    #[serde(default)]
    pub size: Option<String>,
    /// What it is made of.
    #[serde(default)]
    pub material: Option<Material>,
    /// True if nothing flows back in it.
    #[serde(default)]
    pub one_way: bool,
    /// Anything else.
    #[serde(default)]
    pub note: Option<String>,
}

/// What a pipe or cable is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Material {
    /// Copper.
    Copper,
    /// Cross-linked polyethylene.
    Pex,
    /// Polyethylene.
    Pe,
    /// Polyvinyl chloride.
    Pvc,
    /// Chlorinated polyvinyl chloride.
    Cpvc,
    /// Acrylonitrile butadiene styrene.
    Abs,
    /// Polypropylene.
    Pp,
    /// Galvanised steel.
    Galvanized,
    /// Black steel.
    Steel,
    /// Stainless steel.
    Stainless,
    /// Cast iron.
    CastIron,
    /// Vitrified clay.
    Clay,
    /// Lead.
    Lead,
    /// Rubber.
    Rubber,
    /// Braided steel.
    Braided,
    /// Aluminium.
    Aluminum,
}

impl Home {
    /// The component with this id.
    #[must_use]
    pub fn component(&self, id: &str) -> Option<&Component> {
        self.components.iter().find(|c| c.id == id)
    }

    /// The space with this id.
    #[must_use]
    pub fn space(&self, id: &str) -> Option<&Space> {
        self.spaces.iter().find(|s| s.id == id)
    }

    /// The level with this id.
    #[must_use]
    pub fn level(&self, id: &str) -> Option<&Level> {
        self.levels.iter().find(|l| l.id == id)
    }

    /// The contact with this id.
    #[must_use]
    pub fn contact(&self, id: &str) -> Option<&Contact> {
        self.contacts.iter().find(|c| c.id == id)
    }

    /// The level that a component's space lies on.
    #[must_use]
    pub fn level_of(&self, component: &Component) -> Option<&Level> {
        let space = self.space(component.space.as_deref()?)?;
        self.level(space.level.as_deref()?)
    }

    /// Height of a component above the home's zero, in metres, if level and height are known.
    #[must_use]
    pub fn height_m(&self, component: &Component) -> Option<f64> {
        let (_, _, z) = component.at?;
        Some(self.level_of(component)?.elevation_m + z)
    }
}

impl Component {
    /// A component with nothing known but id, kind and name.
    #[must_use]
    pub fn new(id: &str, kind: Kind, name: &str) -> Self {
        Self {
            id: id.to_owned(),
            kind,
            name: name.to_owned(),
            tag: None,
            space: None,
            at: None,
            operates: None,
            operable_by: OperableBy::Anyone,
            rating_a: None,
            poles: None,
            watts: None,
            volume_l: None,
            joins: None,
            critical: false,
            boundary: false,
            owner: None,
            panel: None,
            circuit: None,
            arc_fault: false,
            installed: None,
            duct: None,
            lamp: None,
            photo: None,
            note: None,
            private: false,
        }
    }

    /// Whether it is known to work.
    #[must_use]
    pub fn state(&self) -> DeviceState {
        self.operates.as_ref().map_or(DeviceState::Unknown, |o| o.state)
    }

    /// True if it stands shut on an ordinary day.
    #[must_use]
    pub fn normally_shut(&self) -> bool {
        self.operates.as_ref().is_some_and(|o| o.normally == Position::Shut)
    }

    /// True if water passes from one of its lines to another.
    #[must_use]
    pub fn passes_water(&self) -> bool {
        match self.kind {
            Kind::MixingValve => self.joins != Some(false),
            kind => !kind.is_water_fixture() || self.joins == Some(true),
        }
    }

    /// True if it must be named first when it goes off.
    #[must_use]
    pub fn is_critical(&self) -> bool {
        self.critical || self.kind.is_critical()
    }
}

impl Passage {
    /// A door or an opening with nothing known but the spaces on its sides.
    #[must_use]
    pub fn new(one: &str, other: &str) -> Self {
        Self {
            between: (one.to_owned(), other.to_owned()),
            at: None,
            stairs: false,
            to_at: None,
            note: None,
        }
    }

    /// Where it is on the level of the second space, in metres: a door is in one place for both.
    #[must_use]
    pub fn other_at(&self) -> Option<(f64, f64)> {
        if self.stairs { self.to_at } else { self.at }
    }
}

impl Connection {
    /// A connection with nothing known but its ends and what it carries.
    #[must_use]
    pub fn new(from: &str, to: &str, carries: Medium) -> Self {
        Self {
            id: None,
            from: from.to_owned(),
            to: to.to_owned(),
            carries,
            length_m: None,
            size: None,
            material: None,
            one_way: false,
            note: None,
        }
    }

    /// How the connection is named as a spot: `a..b`.
    #[must_use]
    pub fn spot(&self) -> String {
        format!("{}..{}", self.from, self.to)
    }
}
