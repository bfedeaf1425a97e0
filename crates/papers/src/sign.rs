//! The sign of a device: the shape and colour of its system, and its tag.

use quarterturn_home::{Component, Home, Kind, Net};
use serde::Serialize;

/// What a colour and a shape stand for, the same as in the window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum System {
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
    /// Control wiring, and what is on no line.
    Control,
}

impl System {
    /// Every system, in the order of lists.
    pub(crate) const ALL: [Self; 6] =
        [Self::Water, Self::Drain, Self::Power, Self::Gas, Self::Cooling, Self::Control];

    /// Its key in the catalogue.
    pub(crate) fn key(self) -> &'static str {
        match self {
            Self::Water => "paper-system-water",
            Self::Drain => "paper-system-drain",
            Self::Power => "paper-system-power",
            Self::Gas => "paper-system-gas",
            Self::Cooling => "paper-system-cooling",
            Self::Control => "paper-system-control",
        }
    }

    /// The system of a component; one that is in several is shown in the first.
    pub(crate) fn of(home: &Home, component: &Component) -> Self {
        if matches!(
            component.kind,
            Kind::AirHandler
                | Kind::CondensatePan
                | Kind::CondensatePump
                | Kind::CondensateOutlet
                | Kind::FloatSwitch
                | Kind::Thermostat
        ) {
            return Self::Cooling;
        }
        let on = home
            .connections
            .iter()
            .filter(|link| link.from == component.id || link.to == component.id);
        on.map(|link| Self::of_net(link.carries.net()))
            .min()
            .unwrap_or_else(|| Self::by_kind(component.kind))
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

    /// For what no line of the map reaches yet.
    fn by_kind(kind: Kind) -> Self {
        [(Net::Water, Self::Water), (Net::Power, Self::Power), (Net::Gas, Self::Gas)]
            .into_iter()
            .find(|(net, _)| kind.isolates(*net) || kind.is_source(*net))
            .map_or_else(
                || match kind {
                    Kind::Cleanout | Kind::FloorDrain | Kind::SewerMain => Self::Drain,
                    kind if kind.is_water_fixture() => Self::Water,
                    kind if kind.is_power_distribution() => Self::Power,
                    _ => Self::Control,
                },
                |(_, system)| system,
            )
    }
}

/// What is drawn for a device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Sign {
    /// Gives the shape and the colour.
    pub(crate) system: System,
    /// What stands in it.
    pub(crate) tag: String,
}

impl Sign {
    /// The sign of a component; without a tag, the shape alone.
    pub(crate) fn of(home: &Home, component: &Component) -> Self {
        let tag = component.tag.clone().unwrap_or_default();
        Self { system: System::of(home, component), tag }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Connection, Medium};

    #[test]
    fn a_device_in_several_systems_is_shown_in_the_first_and_cooling_goes_before() {
        let washer = Component::new("washer", Kind::WashingMachine, "Washer");
        let handler = Component::new("handler", Kind::AirHandler, "Air handler");
        let valve = Component::new("valve", Kind::GasValve, "Gas valve, not joined yet");
        let home = Home {
            components: vec![washer.clone(), handler.clone(), valve.clone()],
            connections: vec![
                Connection::new("outlet", "washer", Medium::Power),
                Connection::new("stop", "washer", Medium::ColdWater),
                Connection::new("breaker", "handler", Medium::Power),
            ],
            ..Home::default()
        };
        assert_eq!(System::of(&home, &washer), System::Water);
        assert_eq!(System::of(&home, &handler), System::Cooling);
        assert_eq!(System::of(&home, &valve), System::Gas);
    }
}
