//! Which system a device or a trouble belongs to.

use quarterturn_guidance::Trouble;
use quarterturn_home::{Component, Home, Kind, Net};

/// What a colour and a shape stand for. The order is that of the page's data.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum System {
    /// Water under pressure.
    Water,
    /// Drains and their vents.
    Drain,
    /// Electricity.
    Power,
    /// Fuel gas.
    Gas,
    /// Air handler and condensate.
    Cooling,
    /// Control wiring.
    Control,
}

impl System {
    /// Its place in the page's data.
    pub(super) fn number(self) -> i32 {
        match self {
            Self::Water => 0,
            Self::Drain => 1,
            Self::Power => 2,
            Self::Gas => 3,
            Self::Cooling => 4,
            Self::Control => 5,
        }
    }

    /// The system that a trouble is in, if it is in one.
    pub(super) fn of_trouble(trouble: Trouble) -> Option<Self> {
        match trouble {
            Trouble::Leak
            | Trouble::WaterFromAbove
            | Trouble::ToiletOverflow
            | Trouble::NoWater
            | Trouble::NoHotWater => Some(Self::Water),
            Trouble::DrainBacksUp | Trouble::SewageRising | Trouble::PitRising => Some(Self::Drain),
            Trouble::DeadOutlet
            | Trouble::DeadLight
            | Trouble::DeadArea
            | Trouble::BreakerTrips
            | Trouble::GfciTrips
            | Trouble::Sparks
            | Trouble::Shock
            | Trouble::WaterNearPower
            | Trouble::WiresDown => Some(Self::Power),
            Trouble::CoolingStopped | Trouble::WaterAtAirHandler => Some(Self::Cooling),
            Trouble::NotAnswering => Some(Self::Control),
            Trouble::GasSmell => Some(Self::Gas),
            Trouble::CoAlarm | Trouble::Fire => None,
        }
    }

    /// The system of a component. One that is in several is shown as part of `preferred`, if that is
    /// one of them.
    pub(super) fn of(home: &Home, component: &Component, preferred: Option<Self>) -> Self {
        if let Some(cooling) = Self::cooling(component.kind) {
            return cooling;
        }
        let mut systems: Vec<Self> = home
            .connections
            .iter()
            .filter(|c| c.from == component.id || c.to == component.id)
            .map(|c| Self::of_net(c.carries.net()))
            .collect();
        systems.sort();
        match preferred {
            Some(system) if systems.contains(&system) => system,
            _ => systems.first().copied().unwrap_or(Self::Control),
        }
    }

    /// A bit for each system that a component is in.
    pub(super) fn all_of(home: &Home, component: &Component) -> i32 {
        let own = Self::cooling(component.kind).map_or(0, |system| 1 << system.number());
        home.connections
            .iter()
            .filter(|c| c.from == component.id || c.to == component.id)
            .fold(own, |all, c| all | 1 << Self::of_net(c.carries.net()).number())
    }

    fn cooling(kind: Kind) -> Option<Self> {
        matches!(
            kind,
            Kind::AirHandler
                | Kind::CondensatePan
                | Kind::CondensatePump
                | Kind::CondensateOutlet
                | Kind::FloatSwitch
                | Kind::Thermostat
        )
        .then_some(Self::Cooling)
    }

    fn of_net(net: Net) -> Self {
        match net {
            Net::Water => Self::Water,
            Net::Waste | Net::Vent => Self::Drain,
            Net::Condensate => Self::Cooling,
            Net::Power => Self::Power,
            Net::Gas => Self::Gas,
            Net::Signal => Self::Control,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Connection, Medium};

    #[test]
    fn a_washing_machine_is_in_three_systems() {
        let washer = Component::new("washer", Kind::WashingMachine, "Washing machine");
        let home = Home {
            components: vec![washer.clone()],
            connections: vec![
                Connection::new("outlet", "washer", Medium::Power),
                Connection::new("stop", "washer", Medium::ColdWater),
                Connection::new("washer", "standpipe", Medium::Waste),
            ],
            ..Home::default()
        };
        assert_eq!(System::of(&home, &washer, None), System::Water);
        assert_eq!(System::of(&home, &washer, Some(System::Power)), System::Power);
        assert_eq!(System::of(&home, &washer, Some(System::Gas)), System::Water);
        assert_eq!(System::all_of(&home, &washer), 0b111);
    }
}
