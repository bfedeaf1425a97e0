//! What is asked: a trouble, a spot, and what was seen.

use quarterturn_home::Home;

/// The troubles, with the ids of the command line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Trouble {
    /// Water leaks.
    Leak,
    /// Water comes through a ceiling or wall.
    WaterFromAbove,
    /// A toilet runs over.
    ToiletOverflow,
    /// No water comes, or too little.
    NoWater,
    /// No hot water comes.
    NoHotWater,
    /// A drain backs up.
    DrainBacksUp,
    /// Sewage rises.
    SewageRising,
    /// The water in a sump or ejector pit rises.
    PitRising,
    /// An outlet is dead.
    DeadOutlet,
    /// A light stays dark.
    DeadLight,
    /// A room, or half of the house, has no power.
    DeadArea,
    /// A breaker trips.
    BreakerTrips,
    /// A GFCI trips, or does not reset.
    GfciTrips,
    /// Sparks, burning smell, a hot outlet.
    Sparks,
    /// Someone is being shocked, or feels a tingle.
    Shock,
    /// Water is near something electrical.
    WaterNearPower,
    /// The cooling stopped.
    CoolingStopped,
    /// Water stands or drips at the air handler.
    WaterAtAirHandler,
    /// A smell of gas.
    GasSmell,
    /// The carbon monoxide alarm sounds.
    CoAlarm,
    /// Smoke or fire.
    Fire,
    /// An electric wire lies on the ground or hangs low.
    WiresDown,
    /// A lock, door, alarm or thermostat does not answer.
    NotAnswering,
}

impl Trouble {
    /// Every trouble that has an answer, in the order it is listed.
    pub const ALL: &'static [Self] = &[
        Self::Leak,
        Self::WaterFromAbove,
        Self::ToiletOverflow,
        Self::NoWater,
        Self::NoHotWater,
        Self::DrainBacksUp,
        Self::SewageRising,
        Self::PitRising,
        Self::DeadOutlet,
        Self::DeadLight,
        Self::DeadArea,
        Self::BreakerTrips,
        Self::GfciTrips,
        Self::Sparks,
        Self::Shock,
        Self::WaterNearPower,
        Self::CoolingStopped,
        Self::WaterAtAirHandler,
        Self::GasSmell,
        Self::CoAlarm,
        Self::Fire,
        Self::WiresDown,
        Self::NotAnswering,
    ];

    /// Its id.
    #[must_use]
    pub fn id(self) -> &'static str {
        match self {
            Self::Leak => "leak",
            Self::WaterFromAbove => "water-from-above",
            Self::ToiletOverflow => "toilet-overflow",
            Self::NoWater => "no-water",
            Self::NoHotWater => "no-hot-water",
            Self::DrainBacksUp => "drain-backs-up",
            Self::SewageRising => "sewage-rising",
            Self::PitRising => "pit-rising",
            Self::DeadOutlet => "dead-outlet",
            Self::DeadLight => "dead-light",
            Self::DeadArea => "dead-area",
            Self::BreakerTrips => "breaker-trips",
            Self::GfciTrips => "gfci-trips",
            Self::Sparks => "sparks",
            Self::Shock => "shock",
            Self::WaterNearPower => "water-near-power",
            Self::CoolingStopped => "cooling-stopped",
            Self::WaterAtAirHandler => "water-at-air-handler",
            Self::GasSmell => "gas-smell",
            Self::CoAlarm => "co-alarm",
            Self::Fire => "fire",
            Self::WiresDown => "wires-down",
            Self::NotAnswering => "not-answering",
        }
    }

    /// The trouble with this id.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|trouble| trouble.id() == id)
    }

    /// True if the spot is where water or sewage is on the floor, or about to be. A pit that rises is
    /// still below the floor: what stands beside it must be looked at, as long as the floor is dry.
    #[must_use]
    pub fn is_wet(self) -> bool {
        matches!(
            self,
            Self::Leak
                | Self::WaterFromAbove
                | Self::ToiletOverflow
                | Self::DrainBacksUp
                | Self::SewageRising
                | Self::WaterNearPower
                | Self::WaterAtAirHandler
        )
    }

    /// True if the only right answer is to leave and call.
    #[must_use]
    pub fn is_leave_first(self) -> bool {
        matches!(self, Self::GasSmell | Self::CoAlarm | Self::Fire | Self::WiresDown)
    }
}

/// Where the trouble is.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Spot {
    /// A component, by id.
    Component(String),
    /// A connection, by the ids of its two ends in the file's order.
    Connection(String, String),
    /// All of a space, by id.
    Space(String),
    /// The whole home: where the answer hangs on no spot.
    Home,
}

/// What was seen at a component or space.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Seen {
    /// Power is there.
    Live,
    /// Power is not there.
    Dead,
    /// It drains well.
    Drains,
    /// It backs up.
    BacksUp,
    /// Water stands there.
    Wet,
    /// It is dry.
    Dry,
    /// It is on, open or running.
    On,
    /// It is off or shut.
    Off,
    /// It has tripped.
    Tripped,
}

impl Seen {
    /// Every observation, with its word on the command line.
    pub const ALL: &'static [(Self, &'static str)] = &[
        (Self::Live, "live"),
        (Self::Dead, "dead"),
        (Self::Drains, "drains"),
        (Self::BacksUp, "backs-up"),
        (Self::Wet, "wet"),
        (Self::Dry, "dry"),
        (Self::On, "on"),
        (Self::Off, "off"),
        (Self::Tripped, "tripped"),
    ];

    /// Its word on the command line.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::ALL.iter().find(|(seen, _)| *seen == self).map_or("", |(_, word)| word)
    }

    /// The observation with this word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.iter().find(|(_, w)| *w == word).map(|(seen, _)| *seen)
    }
}

/// A question to the map.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Question {
    /// What is wrong.
    pub trouble: Trouble,
    /// Where.
    pub at: Spot,
    /// Id of the space where the person stands; `None` for the spot's own.
    pub from: Option<String>,
    /// Ids of devices that do not turn, hold or open.
    pub failed: Vec<String>,
    /// What was seen, by id.
    pub seen: Vec<(String, Seen)>,
}

impl Spot {
    /// The spot that a text names: a component, a connection `a..b` (or its id), or a space.
    ///
    /// # Errors
    /// The ids nearest to the text, best first, if the home has no such spot.
    pub fn find(home: &Home, text: &str) -> Result<Self, Vec<String>> {
        if home.component(text).is_some() {
            return Ok(Self::Component(text.to_owned()));
        }
        if home.space(text).is_some() {
            return Ok(Self::Space(text.to_owned()));
        }
        let ends = text.split_once("..");
        for connection in &home.connections {
            let by_id = connection.id.as_deref() == Some(text);
            let by_ends = ends.is_some_and(|(a, b)| {
                (connection.from == a && connection.to == b)
                    || (connection.from == b && connection.to == a)
            });
            if by_id || by_ends {
                return Ok(Self::Connection(connection.from.clone(), connection.to.clone()));
            }
        }
        let links: Vec<String> =
            home.connections.iter().map(quarterturn_home::Connection::spot).collect();
        let ids = home
            .components
            .iter()
            .map(|c| c.id.as_str())
            .chain(home.spaces.iter().map(|s| s.id.as_str()))
            .chain(links.iter().map(String::as_str));
        Err(quarterturn_home::nearest_few(text, ids, 5).into_iter().map(str::to_owned).collect())
    }
}
