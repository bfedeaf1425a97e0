//! The usual order of kinds along a line: what feeds what, and what drains into what.
//!
//! Common practice of the trade, no source: main, meter, backflow preventer, pressure reducing valve,
//! main shutoff, lines, stop, hose, tap; fixture, trap, branch, stack, cleanout, sewer; service,
//! meter, disconnect, panel, breaker, GFCI, outlet, appliance. The figures only rank: 0 is the very
//! next in the order, 1 about as good as eight metres nearer.

use quarterturn_home::{Component, Home, Kind, Medium, Net};

use crate::words::says;

/// What a component lacks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lack {
    /// Nothing brings it the medium.
    Feed,
    /// Nothing takes the medium away.
    Drain,
}

/// What a component lacks, by its kind and its lines; in a stated order.
#[must_use]
pub fn lacks(home: &Home, component: &Component) -> Vec<(Lack, Medium)> {
    let kind = component.kind;
    let id = component.id.as_str();
    let arrives = |net: Net| home.connections.iter().any(|l| l.to == id && l.carries.net() == net);
    let arrives_as = |medium| home.connections.iter().any(|l| l.to == id && l.carries == medium);
    let leaves = |net: Net| home.connections.iter().any(|l| l.from == id && l.carries.net() == net);
    let has_hot = home.components.iter().any(|c| c.kind == Kind::WaterHeater);
    let mut list = Vec::new();
    for medium in feeds(home, component, has_hot) {
        let there = match (medium, kind) {
            (Medium::ColdWater | Medium::HotWater, Kind::Dishwasher | Kind::Tap) => {
                arrives(Net::Water)
            }
            (Medium::ColdWater | Medium::HotWater, _) => arrives_as(medium),
            _ => arrives(medium.net()),
        };
        if !there {
            list.push((Lack::Feed, medium));
        }
    }
    let waste = match kind {
        Kind::Pipe | Kind::Cleanout | Kind::CheckValve => arrives(Net::Waste),
        Kind::FloorDrain
        | Kind::Standpipe
        | Kind::Trap
        | Kind::Stack
        | Kind::BackwaterValve
        | Kind::EjectorPit
        | Kind::SumpPit
        | Kind::SumpPump => true,
        kind => kind.runs_water(),
    };
    if waste && !leaves(Net::Waste) {
        list.push((Lack::Drain, Medium::Waste));
    }
    let condensate = match kind {
        Kind::AirHandler | Kind::CondensatePan | Kind::CondensatePump => true,
        Kind::Pipe | Kind::Trap => arrives(Net::Condensate),
        _ => false,
    };
    if condensate && !leaves(Net::Condensate) && !leaves(Net::Waste) {
        list.push((Lack::Drain, Medium::Condensate));
    }
    list
}

/// The media that a component needs brought to it.
fn feeds(home: &Home, component: &Component, has_hot: bool) -> Vec<Medium> {
    use Medium::{ColdWater, Gas, HotWater, Power};
    match component.kind {
        Kind::Toilet
        | Kind::HoseBibb
        | Kind::Irrigation
        | Kind::IceMaker
        | Kind::SprinklerRiser
        | Kind::WaterMeter
        | Kind::BackflowPreventer
        | Kind::PressureReducingValve
        | Kind::Softener
        | Kind::ExpansionTank
        | Kind::WaterHeater => vec![ColdWater],
        Kind::Sink | Kind::Basin | Kind::Bath | Kind::Shower | Kind::MixingValve => {
            if has_hot {
                vec![ColdWater, HotWater]
            } else {
                vec![ColdWater]
            }
        }
        Kind::Dishwasher => vec![if has_hot { HotWater } else { ColdWater }, Power],
        Kind::WashingMachine => vec![ColdWater, Power],
        Kind::ReliefValve => vec![HotWater],
        Kind::Tap | Kind::IsolatingValve | Kind::SupplyHose => {
            vec![water_in(home, component).unwrap_or(ColdWater)]
        }
        Kind::Pipe | Kind::Manifold | Kind::CheckValve => {
            let gas = home
                .connections
                .iter()
                .any(|l| l.from == component.id && l.carries == Gas)
                .then_some(Gas);
            gas.or_else(|| water_in(home, component)).into_iter().collect()
        }
        Kind::CirculationPump => vec![HotWater, Power],
        Kind::Receptacle
        | Kind::Gfci
        | Kind::Light
        | Kind::Lampholder
        | Kind::Switch
        | Kind::SumpPump
        | Kind::MedicalDevice
        | Kind::AirHandler
        | Kind::CondensatePump
        | Kind::JunctionBox
        | Kind::Disconnect
        | Kind::Appliance
        | Kind::SmokeAlarm
        | Kind::Breaker
        | Kind::Panel
        | Kind::ElectricityMeter
        | Kind::ServiceDisconnect
        | Kind::TransferSwitch => vec![Power],
        Kind::GasAppliance | Kind::GasValve => vec![Gas],
        _ => Vec::new(),
    }
}

/// Which water is in a component, as far as its lines, its kind and its name tell.
pub(crate) fn water_in(home: &Home, component: &Component) -> Option<Medium> {
    let mut cold = component.kind.is_source(Net::Water);
    let mut hot = false;
    for line in home.connections.iter().filter(|l| l.carries.net() == Net::Water) {
        // What comes to a heater is cold, what leaves it hot.
        if line.from == component.id || line.to == component.id {
            cold |= line.carries == Medium::ColdWater;
            hot |= line.carries == Medium::HotWater;
        }
    }
    match (cold, hot) {
        (true, false) => return Some(Medium::ColdWater),
        (false, true) => return Some(Medium::HotWater),
        (true, true) => return None,
        (false, false) => {}
    }
    match (says(&component.name, "words-cold"), says(&component.name, "words-hot")) {
        (true, false) => Some(Medium::ColdWater),
        (false, true) => Some(Medium::HotWater),
        _ => None,
    }
}

/// How well `upstream` fits as what brings a medium to `kind`; `None` if it does not.
pub(crate) fn feeds_rank(kind: Kind, upstream: Kind, medium: Medium) -> Option<f64> {
    match medium {
        Medium::ColdWater | Medium::HotWater => water_rank(kind, upstream, medium),
        Medium::Power => power_rank(kind, upstream),
        Medium::Gas => match upstream {
            Kind::GasValve if kind == Kind::GasAppliance => Some(0.0),
            Kind::GasMeter if kind == Kind::GasValve => Some(0.5),
            Kind::GasValve | Kind::Pipe => Some(1.0),
            Kind::GasMeter => Some(2.0),
            _ => None,
        },
        _ => None,
    }
}

fn water_rank(kind: Kind, upstream: Kind, medium: Medium) -> Option<f64> {
    use Kind as K;
    let hot = medium == Medium::HotWater;
    // What stands before the house's own lines; hot water begins at the heater.
    let head = |rank: f64| if hot { None } else { Some(rank) };
    match (kind, upstream) {
        (K::ReliefValve, K::WaterHeater) => Some(0.0),
        (K::ReliefValve, _) => None,
        (K::Bath | K::Shower, K::MixingValve) => Some(0.0),
        (K::Bath | K::Shower, K::IsolatingValve) => Some(0.3),
        (K::Bath | K::Shower, K::Pipe) => Some(1.0),
        (K::Bath | K::Shower, K::Manifold) => Some(1.5),
        (K::SupplyHose, K::IsolatingValve) => Some(0.0),
        (K::SupplyHose, K::Pipe) => Some(3.0),
        (K::SupplyHose, _) => None,
        (fixture, K::SupplyHose) if fixture.is_water_fixture() => Some(0.0),
        (K::HoseBibb | K::Irrigation | K::SprinklerRiser, K::IsolatingValve) => Some(0.0),
        (fixture, K::IsolatingValve) if fixture.is_water_fixture() => Some(1.0),
        (fixture, K::Pipe | K::Manifold) if fixture.is_water_fixture() => Some(3.0),
        (fixture, _) if fixture.is_water_fixture() => None,
        (K::WaterMeter, K::WaterMain) => head(0.2),
        (K::WaterMeter, K::IsolatingValve) => head(0.0),
        (K::WaterMeter, _) => None,
        (K::BackflowPreventer, K::WaterMeter) => head(0.0),
        (K::PressureReducingValve, K::BackflowPreventer) => head(0.0),
        (K::PressureReducingValve, K::WaterMeter) => head(0.3),
        (K::BackflowPreventer | K::PressureReducingValve, K::IsolatingValve | K::Pipe) => head(0.6),
        (K::BackflowPreventer | K::PressureReducingValve, K::WaterMain) => head(1.5),
        (K::BackflowPreventer | K::PressureReducingValve, _) => None,
        (K::WaterHeater, K::IsolatingValve) => Some(0.0),
        (K::WaterHeater, K::Pipe | K::Manifold) => Some(1.0),
        (K::WaterHeater, K::Softener) => head(1.5),
        (_, K::WaterHeater) => hot.then_some(0.2),
        (_, K::Pipe | K::Manifold) => Some(0.3),
        (_, K::IsolatingValve) => Some(0.8),
        (_, K::Softener) => head(0.8),
        (_, K::PressureReducingValve) => head(0.6),
        (_, K::PressureTank | K::BackflowPreventer) => head(0.9),
        (_, K::WaterMeter) => head(1.2),
        (_, K::WaterMain | K::Well) => head(2.0),
        (_, K::CheckValve | K::CirculationPump) => hot.then_some(2.0),
        _ => None,
    }
}

fn power_rank(kind: Kind, upstream: Kind) -> Option<f64> {
    use Kind as K;
    match (kind, upstream) {
        (K::ElectricityMeter, K::ElectricityService) => Some(0.0),
        (K::ElectricityMeter, _) => None,
        (K::ServiceDisconnect, K::ElectricityMeter) => Some(0.0),
        (K::ServiceDisconnect, K::ElectricityService) => Some(0.8),
        (K::ServiceDisconnect, _) => None,
        (K::Panel | K::TransferSwitch, K::ServiceDisconnect) => Some(0.0),
        (K::Panel | K::TransferSwitch, K::Breaker) => Some(0.5),
        (K::Panel | K::TransferSwitch, K::ElectricityMeter) => Some(1.0),
        (K::Panel | K::TransferSwitch, K::ElectricityService) => Some(1.8),
        (K::Panel, K::TransferSwitch) => Some(0.6),
        (K::Panel | K::TransferSwitch, _) => None,
        (K::Breaker, K::Panel) => Some(0.0),
        (K::Breaker, _) => None,
        (K::Light | K::Lampholder, K::Switch) => Some(0.0),
        (K::Light | K::Lampholder, K::Breaker | K::JunctionBox) => Some(1.0),
        (K::Light | K::Lampholder, _) => None,
        (K::Switch | K::SmokeAlarm | K::JunctionBox | K::Disconnect, K::Breaker) => Some(0.0),
        (K::SmokeAlarm, K::SmokeAlarm) => Some(1.0),
        (K::Switch | K::SmokeAlarm | K::JunctionBox | K::Disconnect, _) => None,
        (K::Gfci, K::Breaker) => Some(0.0),
        (K::Gfci, _) => None,
        (K::Receptacle, K::Gfci) => Some(0.2),
        (K::Receptacle, K::Breaker) => Some(0.4),
        (K::Receptacle, _) => None,
        (K::AirHandler, K::Disconnect) => Some(0.0),
        (_, K::Receptacle) => Some(0.0),
        (_, K::Gfci | K::Disconnect) => Some(0.3),
        (_, K::Breaker) => Some(0.6),
        _ => None,
    }
}

/// How well `downstream` fits as what takes a medium from `kind`; `None` if it does not.
pub(crate) fn drains_rank(kind: Kind, downstream: Kind, medium: Medium) -> Option<f64> {
    use Kind as K;
    if medium == Medium::Condensate {
        return match (kind, downstream) {
            (K::AirHandler, K::CondensatePan) => Some(0.0),
            (K::AirHandler, K::Trap) => Some(0.6),
            (K::AirHandler, _) => None,
            (K::CondensatePan, K::Trap) => Some(0.0),
            (_, K::CondensateOutlet) => Some(0.3),
            (_, K::CondensatePump) => Some(0.4),
            (_, K::Pipe) => Some(0.5),
            (_, K::FloorDrain | K::Standpipe) => Some(1.0),
            _ => None,
        };
    }
    match (kind, downstream) {
        (K::WashingMachine, K::Standpipe) => Some(0.0),
        (K::WashingMachine, K::Sink | K::FloorDrain) => Some(1.5),
        (K::WashingMachine, _) => None,
        (K::Dishwasher, K::Sink | K::Trap) => Some(0.4),
        (K::Dishwasher, K::Standpipe) => Some(1.0),
        (K::Dishwasher, _) => None,
        (K::Toilet, K::Pipe) => Some(0.0),
        (K::Toilet, K::Stack) => Some(0.4),
        (K::Toilet, K::Cleanout | K::SewerMain | K::SepticTank) => Some(1.8),
        (K::Toilet, _) => None,
        (K::Sink | K::Basin | K::Bath | K::Shower | K::FloorDrain | K::Standpipe, K::Trap) => {
            Some(0.0)
        }
        (K::Sink | K::Basin | K::Bath | K::Shower | K::FloorDrain | K::Standpipe, K::Pipe) => {
            Some(1.5)
        }
        (K::Sink | K::Basin | K::Bath | K::Shower | K::FloorDrain | K::Standpipe, _) => None,
        (K::Trap, K::Pipe) => Some(0.0),
        (K::Trap, K::Stack) => Some(0.5),
        (K::Trap, K::Cleanout) => Some(0.8),
        (K::Trap, K::SewerMain | K::SepticTank) => Some(2.0),
        (K::Trap, _) => None,
        (K::SumpPit | K::EjectorPit, K::SumpPump) => Some(0.0),
        (K::SumpPit, _) => None,
        (K::SumpPump | K::EjectorPit, K::CheckValve) => Some(0.0),
        (K::SumpPump | K::EjectorPit, K::Pipe) => Some(0.5),
        (K::SumpPump, _) => None,
        (K::Stack, K::Cleanout) => Some(0.0),
        (K::Stack, K::Pipe) => Some(0.3),
        (K::Stack, K::Stack) => None,
        (K::Cleanout, K::SewerMain | K::SepticTank) => Some(0.2),
        (K::Cleanout, K::Pipe | K::Cleanout) => Some(0.4),
        (K::Cleanout, K::BackwaterValve) => Some(0.3),
        (_, K::Stack) => Some(0.0),
        (_, K::BackwaterValve) => Some(0.2),
        (_, K::Cleanout) => Some(0.3),
        (_, K::Pipe) => Some(0.6),
        (_, K::SewerMain | K::SepticTank) => Some(0.9),
        _ => None,
    }
}

/// True for what is made to branch: it may feed many.
pub(crate) fn branches(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::Pipe
            | Kind::Manifold
            | Kind::WaterHeater
            | Kind::Panel
            | Kind::Breaker
            | Kind::JunctionBox
            | Kind::Receptacle
            | Kind::Gfci
            | Kind::Switch
            | Kind::Softener
            | Kind::SmokeAlarm
    )
}

/// True for two kinds that stand within reach of each other: a hose does not leave its room.
pub(crate) fn stand_together(one: Kind, other: Kind) -> bool {
    let close = |kind| matches!(kind, Kind::SupplyHose | Kind::Trap | Kind::Standpipe);
    let cord = |kind| matches!(kind, Kind::Receptacle | Kind::Switch);
    let plugged = |kind| {
        matches!(
            kind,
            Kind::Appliance
                | Kind::WashingMachine
                | Kind::Dishwasher
                | Kind::SumpPump
                | Kind::MedicalDevice
                | Kind::CondensatePump
                | Kind::Light
                | Kind::Lampholder
        )
    };
    let at_fixture = |a: Kind, b: Kind| a.is_water_fixture() && b == Kind::IsolatingValve;
    let trap_to_line =
        |a, b| a == Kind::Trap && matches!(b, Kind::Pipe | Kind::Stack | Kind::Cleanout);
    if trap_to_line(one, other) || trap_to_line(other, one) {
        return false;
    }
    close(one)
        || close(other)
        || (cord(one) && plugged(other))
        || (plugged(one) && cord(other))
        || at_fixture(one, other)
        || at_fixture(other, one)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_order_of_the_trade_ranks_the_next_first() {
        let cold = Medium::ColdWater;
        let water = |kind, up| feeds_rank(kind, up, cold);
        assert!(water(Kind::Toilet, Kind::SupplyHose) < water(Kind::Toilet, Kind::IsolatingValve));
        assert!(water(Kind::Toilet, Kind::IsolatingValve) < water(Kind::Toilet, Kind::Pipe));
        assert_eq!(water(Kind::Toilet, Kind::WaterMain), None);
        assert_eq!(feeds_rank(Kind::Manifold, Kind::WaterMeter, Medium::HotWater), None);
        let waste = |kind, down| drains_rank(kind, down, Medium::Waste);
        assert!(waste(Kind::Basin, Kind::Trap) < waste(Kind::Basin, Kind::Pipe));
        assert_eq!(waste(Kind::Toilet, Kind::Trap), None);
        assert!(waste(Kind::Stack, Kind::Cleanout) < waste(Kind::Stack, Kind::Pipe));
        assert_eq!(feeds_rank(Kind::Breaker, Kind::Receptacle, Medium::Power), None);
    }

    #[test]
    fn what_lacks_nothing_is_left_alone() {
        let mut home = Home::default();
        let ids =
            [("meter", Kind::GasMeter), ("thermostat", Kind::Thermostat), ("note", Kind::Other)];
        home.components = ids.iter().map(|(id, kind)| Component::new(id, *kind, id)).collect();
        for component in &home.components {
            assert_eq!(lacks(&home, component), [], "{}", component.id);
        }
        let basin = Component::new("basin", Kind::Basin, "Basin");
        let cold = (Lack::Feed, Medium::ColdWater);
        let drain = (Lack::Drain, Medium::Waste);
        assert_eq!(lacks(&home, &basin), [cold, drain]);
        home.components.push(Component::new("heater", Kind::WaterHeater, "Heater"));
        assert_eq!(lacks(&home, &basin), [cold, (Lack::Feed, Medium::HotWater), drain]);
    }
}
