//! Which of a house's systems something belongs to, and which troubles are told together.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Home, Kind, Net};
use serde::Serialize;

use crate::Trouble;

/// What has a sign of its own: a colour and a shape, on the screen as on paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum System {
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
    /// Control wiring, and what is of no known kind.
    Control,
}

impl System {
    /// Every system, in the order of lists.
    pub const ALL: [Self; 6] =
        [Self::Water, Self::Drain, Self::Power, Self::Gas, Self::Cooling, Self::Control];

    /// The system that a component is shown in. One that is in several is shown as part of
    /// `preferred`, such as the system of the trouble, if that is one of them, and else in the first.
    ///
    /// Cost: O(connections).
    ///
    /// ```
    /// # use quarterturn_guidance::System;
    /// # use quarterturn_home::{Component, Connection, Home, Kind, Medium};
    /// let washer = Component::new("washer", Kind::WashingMachine, "Washing machine");
    /// let home = Home {
    ///     connections: vec![
    ///         Connection::new("outlet", "washer", Medium::Power),
    ///         Connection::new("stop", "washer", Medium::ColdWater),
    ///     ],
    ///     components: vec![washer.clone()],
    ///     ..Home::default()
    /// };
    /// assert_eq!(System::of(&home, &washer, None), System::Water);
    /// assert_eq!(System::of(&home, &washer, Some(System::Power)), System::Power);
    /// ```
    #[must_use]
    pub fn of(home: &Home, component: &Component, preferred: Option<Self>) -> Self {
        let all = Self::all_of(home, component);
        match preferred {
            Some(system) if all.contains(&system) => system,
            _ => all.first().copied().unwrap_or_else(|| Self::of_kind(component.kind)),
        }
    }

    /// Every system that a component may be shown in; never none.
    ///
    /// What cools is in cooling alone, whatever feeds it: nobody looks for an air handler among the
    /// outlets. Everything else is in the systems of its lines, and what no line reaches yet in
    /// that of its kind.
    #[must_use]
    pub fn all_of(home: &Home, component: &Component) -> BTreeSet<Self> {
        let own = Self::of_kind(component.kind);
        if own == Self::Cooling {
            return BTreeSet::from([own]);
        }
        let joined: BTreeSet<Self> = home
            .connections
            .iter()
            .filter(|link| link.from == component.id || link.to == component.id)
            .map(|link| Self::of_net(link.carries.net()))
            .collect();
        if joined.is_empty() { BTreeSet::from([own]) } else { joined }
    }

    /// The system that a kind of component is in by itself, whatever it is joined to.
    #[must_use]
    pub fn of_kind(kind: Kind) -> Self {
        match kind {
            Kind::WaterMain
            | Kind::Well
            | Kind::WaterMeter
            | Kind::IsolatingValve
            | Kind::BackflowPreventer
            | Kind::CheckValve
            | Kind::PressureReducingValve
            | Kind::CirculationPump
            | Kind::MixingValve
            | Kind::ReliefValve
            | Kind::Manifold
            | Kind::Pipe
            | Kind::SupplyHose
            | Kind::PressureTank
            | Kind::WaterHeater
            | Kind::ExpansionTank
            | Kind::Softener
            | Kind::Tap
            | Kind::HoseBibb
            | Kind::Irrigation
            | Kind::IceMaker
            | Kind::SprinklerRiser
            | Kind::Sink
            | Kind::Basin
            | Kind::Bath
            | Kind::Shower
            | Kind::Toilet
            | Kind::WashingMachine
            | Kind::Dishwasher => Self::Water,
            Kind::FloorDrain
            | Kind::Standpipe
            | Kind::Trap
            | Kind::Stack
            | Kind::Cleanout
            | Kind::BackwaterValve
            | Kind::EjectorPit
            | Kind::SumpPit
            | Kind::SewerMain
            | Kind::SepticTank => Self::Drain,
            Kind::ElectricityService
            | Kind::Generator
            | Kind::Inverter
            | Kind::Battery
            | Kind::ElectricityMeter
            | Kind::Panel
            | Kind::JunctionBox
            | Kind::ServiceDisconnect
            | Kind::Breaker
            | Kind::Disconnect
            | Kind::TransferSwitch
            | Kind::Switch
            | Kind::Gfci
            | Kind::Receptacle
            | Kind::Light
            | Kind::Lampholder
            | Kind::Appliance
            | Kind::SumpPump
            | Kind::SmokeAlarm
            | Kind::MedicalDevice => Self::Power,
            Kind::AirHandler
            | Kind::CondensatePan
            | Kind::CondensatePump
            | Kind::CondensateOutlet
            | Kind::FloatSwitch
            | Kind::Thermostat => Self::Cooling,
            Kind::GasMeter | Kind::GasValve | Kind::GasAppliance => Self::Gas,
            Kind::Other => Self::Control,
        }
    }

    /// The system that a net belongs to.
    #[must_use]
    pub fn of_net(net: Net) -> Self {
        match net {
            Net::Water => Self::Water,
            Net::Waste | Net::Vent => Self::Drain,
            Net::Condensate => Self::Cooling,
            Net::Power => Self::Power,
            Net::Gas => Self::Gas,
            Net::Signal => Self::Control,
        }
    }

    /// The system that a trouble is in; `None` for an alarm and for fire.
    #[must_use]
    pub fn of_trouble(trouble: Trouble) -> Option<Self> {
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
}

/// Troubles that are told together, under one heading: dangers to life, and the rest by system.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// What can kill.
    Life,
    /// Water under pressure.
    Water,
    /// Drains.
    Drains,
    /// Electricity.
    Power,
    /// Cooling and condensate.
    Cooling,
    /// What no longer answers to its control.
    Control,
}

impl Group {
    /// Every group, dangers to life first.
    pub const ALL: [Self; 6] =
        [Self::Life, Self::Water, Self::Drains, Self::Power, Self::Cooling, Self::Control];

    /// The group of a trouble.
    #[must_use]
    pub fn of(trouble: Trouble) -> Self {
        if matches!(trouble, Trouble::Shock | Trouble::Sparks | Trouble::WaterNearPower) {
            return Self::Life;
        }
        match System::of_trouble(trouble) {
            _ if trouble.is_leave_first() => Self::Life,
            Some(System::Water) => Self::Water,
            Some(System::Drain) => Self::Drains,
            Some(System::Power) => Self::Power,
            Some(System::Cooling) => Self::Cooling,
            Some(System::Control) => Self::Control,
            Some(System::Gas) | None => Self::Life,
        }
    }

    /// The troubles of the group, those where one leaves at once first.
    #[must_use]
    pub fn troubles(self) -> Vec<Trouble> {
        let mut troubles: Vec<Trouble> =
            Trouble::ALL.iter().copied().filter(|trouble| Self::of(*trouble) == self).collect();
        troubles.sort_by_key(|trouble| !trouble.is_leave_first());
        troubles
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Connection, Medium};

    const MEDIA: [Medium; 8] = [
        Medium::ColdWater,
        Medium::HotWater,
        Medium::Waste,
        Medium::Vent,
        Medium::Condensate,
        Medium::Power,
        Medium::Gas,
        Medium::Signal,
    ];

    fn alone(kind: Kind) -> (Home, Component) {
        let component = Component::new("it", kind, "It");
        (Home { components: vec![component.clone()], ..Home::default() }, component)
    }

    fn joined(kind: Kind, lines: &[Medium]) -> (Home, Component) {
        let (mut home, component) = alone(kind);
        home.connections = lines.iter().map(|&m| Connection::new("it", "other", m)).collect();
        (home, component)
    }

    #[test]
    fn a_washing_machine_is_shown_in_the_system_of_the_trouble() {
        let lines = [Medium::Power, Medium::ColdWater, Medium::Waste];
        let (home, washer) = joined(Kind::WashingMachine, &lines);
        let all = BTreeSet::from([System::Water, System::Drain, System::Power]);
        assert_eq!(System::all_of(&home, &washer), all);
        assert_eq!(System::of(&home, &washer, Some(System::Drain)), System::Drain);
        assert_eq!(System::of(&home, &washer, Some(System::Power)), System::Power);
        assert_eq!(System::of(&home, &washer, Some(System::Gas)), System::Water);
        assert_eq!(System::of(&home, &washer, None), System::Water);
    }

    #[test]
    fn what_cools_stays_in_cooling_whatever_feeds_it() {
        let (home, handler) = joined(Kind::AirHandler, &[Medium::Power, Medium::Signal]);
        assert_eq!(System::of(&home, &handler, Some(System::Power)), System::Cooling);
    }

    #[test]
    fn what_no_line_reaches_is_in_the_system_of_its_kind() {
        for (kind, system) in [
            (Kind::GasValve, System::Gas),
            (Kind::Receptacle, System::Power),
            (Kind::MedicalDevice, System::Power),
            (Kind::Cleanout, System::Drain),
            (Kind::Toilet, System::Water),
            (Kind::Thermostat, System::Cooling),
            (Kind::Other, System::Control),
        ] {
            let (home, component) = alone(kind);
            assert_eq!(System::of(&home, &component, None), system, "{kind:?}");
            assert_eq!(System::of(&home, &component, Some(System::Control)), system, "{kind:?}");
        }
    }

    #[test]
    fn a_line_counts_for_more_than_the_kind() {
        let (home, valve) = joined(Kind::CheckValve, &[Medium::Waste]);
        assert_eq!(System::of(&home, &valve, None), System::Drain);
    }

    #[test]
    fn what_isolates_or_feeds_a_net_is_of_its_system_by_kind() {
        for kind in Kind::ALL.iter().copied() {
            for net in Net::ALL.into_iter().filter(|n| kind.isolates(*n) || kind.is_source(*n)) {
                assert_eq!(System::of_kind(kind), System::of_net(net), "{kind:?}");
            }
        }
    }

    #[test]
    fn a_kind_is_in_a_system_whose_lines_it_can_have() {
        for kind in Kind::ALL.iter().copied().filter(|kind| *kind != Kind::Other) {
            let has = |net: Net| MEDIA.iter().any(|m| m.net() == net && kind.can_meet(*m));
            let meets = |net: Net| System::of_net(net) == System::of_kind(kind) && has(net);
            // A thermostat cools by telling, over its control wire.
            let tells = kind == Kind::Thermostat && has(Net::Signal);
            assert!(tells || Net::ALL.into_iter().any(meets), "{kind:?}");
        }
    }

    #[test]
    fn each_trouble_is_told_once_and_those_where_one_leaves_first() {
        let told: Vec<Trouble> = Group::ALL.into_iter().flat_map(Group::troubles).collect();
        let set: BTreeSet<Trouble> = told.iter().copied().collect();
        assert_eq!(told.len(), Trouble::ALL.len());
        assert_eq!(set.len(), told.len());
        let leave: Vec<bool> = told.iter().map(|trouble| trouble.is_leave_first()).collect();
        assert!(leave.is_sorted_by(|a, b| a >= b), "{told:?}");
    }

    #[test]
    fn what_can_kill_is_told_as_that_and_not_as_electricity() {
        for trouble in [Trouble::Shock, Trouble::Sparks, Trouble::WaterNearPower] {
            assert_eq!(System::of_trouble(trouble), Some(System::Power));
            assert_eq!(Group::of(trouble), Group::Life);
        }
        assert_eq!(Group::of(Trouble::CoAlarm), Group::Life);
        assert_eq!(Group::of(Trouble::BreakerTrips), Group::Power);
    }
}
