//! Which system a device belongs to, and its sign.

use egui::{Color32, Painter, Pos2, Shape, Stroke, Vec2};
use quarterturn_guidance::Trouble;
use quarterturn_home::{Component, Home, Kind, Net};

/// What a colour and a shape stand for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
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
    /// Control wiring.
    Control,
}

impl System {
    /// Every system.
    #[cfg(test)]
    pub(crate) const ALL: [Self; 6] =
        [Self::Water, Self::Drain, Self::Power, Self::Gas, Self::Cooling, Self::Control];

    /// The system that a trouble is in, if it is in one.
    pub(crate) fn of_trouble(trouble: Trouble) -> Option<Self> {
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
    pub(crate) fn of(home: &Home, component: &Component, preferred: Option<Self>) -> Self {
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

    /// The system that a net belongs to.
    pub(crate) fn of_net(net: Net) -> Self {
        match net {
            Net::Water => Self::Water,
            Net::Waste | Net::Vent => Self::Drain,
            Net::Condensate => Self::Cooling,
            Net::Power => Self::Power,
            Net::Gas => Self::Gas,
            Net::Signal => Self::Control,
        }
    }

    /// Draws the system's shape: round for water, square for drains, a diamond for power, a hexagon
    /// for gas, an upright oblong for cooling, a triangle for control.
    pub(crate) fn shape(
        self,
        painter: &Painter,
        centre: Pos2,
        radius: f32,
        fill: Color32,
        edge: Stroke,
    ) {
        let corners: &[(f32, f32)] = match self {
            Self::Water => {
                painter.circle(centre, radius, fill, edge);
                return;
            }
            Self::Drain => &[(-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)],
            Self::Power => &[(0.0, -1.2), (1.2, 0.0), (0.0, 1.2), (-1.2, 0.0)],
            Self::Gas => {
                &[(-0.6, -0.95), (0.6, -0.95), (1.15, 0.0), (0.6, 0.95), (-0.6, 0.95), (-1.15, 0.0)]
            }
            Self::Cooling => &[(-0.8, -1.1), (0.8, -1.1), (0.8, 1.1), (-0.8, 1.1)],
            Self::Control => &[(-1.2, -0.9), (1.2, -0.9), (0.0, 1.2)],
        };
        let points = corners.iter().map(|&(x, y)| centre + Vec2::new(x, y) * radius).collect();
        painter.add(Shape::convex_polygon(points, fill, edge));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Connection, Medium};

    fn joined(from: &str, to: &str, carries: Medium) -> Connection {
        Connection {
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

    #[test]
    fn a_washing_machine_is_shown_in_the_system_of_the_trouble() {
        let washer = Component::new("washer", Kind::WashingMachine, "Washing machine");
        let home = Home {
            components: vec![washer.clone()],
            connections: vec![
                joined("outlet", "washer", Medium::Power),
                joined("stop", "washer", Medium::ColdWater),
                joined("washer", "standpipe", Medium::Waste),
            ],
            ..Home::default()
        };
        assert_eq!(System::of(&home, &washer, Some(System::Drain)), System::Drain);
        assert_eq!(System::of(&home, &washer, Some(System::Power)), System::Power);
        assert_eq!(System::of(&home, &washer, Some(System::Gas)), System::Water);
        assert_eq!(System::of(&home, &washer, None), System::Water);
    }
}
