//! The spots that make sense for a trouble.

use quarterturn_home::{Component, Home, Kind, Medium, Net};

use crate::blame::can_be_tried;
use crate::context::is_electrical;
use crate::{Spot, Trouble};

/// The spots that make sense for a trouble, space by space in the order of the home file: the space
/// itself where the trouble can be anywhere in it, then its components by name.
#[must_use]
pub fn spots(home: &Home, trouble: Trouble) -> Vec<Spot> {
    if trouble.is_leave_first() {
        return vec![Spot::Home];
    }
    let fits = |component: &Component| is_spot(home, trouble, component);
    let whole_space = |indoors: bool, any: bool| match trouble {
        Trouble::WaterFromAbove => indoors,
        Trouble::Leak
        | Trouble::SewageRising
        | Trouble::DrainBacksUp
        | Trouble::NoWater
        | Trouble::Sparks
        | Trouble::Shock
        | Trouble::WaterNearPower => any,
        _ => false,
    };
    let lights_up = |component: &Component| {
        can_be_tried(Net::Power, component.kind) && is_member(home, component, Net::Power)
    };
    let mut list = Vec::new();
    for space in &home.spaces {
        let mut here: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| c.space.as_deref() == Some(space.id.as_str()) && fits(c))
            .collect();
        here.sort_by(|a, b| a.name.cmp(&b.name).then_with(|| a.id.cmp(&b.id)));
        let powered = trouble == Trouble::DeadArea
            && home
                .components
                .iter()
                .any(|c| c.space.as_deref() == Some(space.id.as_str()) && lights_up(c));
        if powered || whole_space(!space.outdoors, !here.is_empty()) {
            list.push(Spot::Space(space.id.clone()));
        }
        list.extend(here.into_iter().map(|c| Spot::Component(c.id.clone())));
    }
    let nowhere = home
        .components
        .iter()
        .filter(|c| c.space.as_deref().and_then(|id| home.space(id)).is_none() && fits(c));
    list.extend(nowhere.map(|c| Spot::Component(c.id.clone())));
    list
}

/// True if the trouble can be at this component.
pub(crate) fn is_spot(home: &Home, trouble: Trouble, component: &Component) -> bool {
    let member = |component: &Component, net: Net| is_member(home, component, net);
    let has_hot_tap = |component: &Component| {
        component.kind.is_water_fixture()
            && home
                .connections
                .iter()
                .any(|l| l.carries == Medium::HotWater && l.to == component.id)
    };
    match trouble {
        Trouble::Leak => {
            (member(component, Net::Water) || member(component, Net::Waste))
                && !matches!(component.kind, Kind::WaterMain | Kind::SewerMain)
        }
        Trouble::WaterFromAbove => false,
        Trouble::ToiletOverflow => component.kind == Kind::Toilet,
        Trouble::NoWater => {
            member(component, Net::Water)
                && component.kind.is_water_fixture()
                && component.kind != Kind::SprinklerRiser
        }
        Trouble::NoHotWater => component.kind == Kind::WaterHeater || has_hot_tap(component),
        Trouble::PitRising => {
            matches!(component.kind, Kind::SumpPit | Kind::EjectorPit | Kind::SumpPump)
        }
        Trouble::DrainBacksUp | Trouble::SewageRising => {
            (component.kind.is_drain_opening() || component.kind == Kind::Cleanout)
                && member(component, Net::Waste)
        }
        Trouble::DeadOutlet => {
            matches!(component.kind, Kind::Receptacle | Kind::Gfci | Kind::Appliance)
        }
        Trouble::DeadLight => matches!(component.kind, Kind::Light | Kind::Lampholder),
        // Its rooms, and the panels that half of a house may hang on.
        Trouble::DeadArea => component.kind == Kind::Panel,
        Trouble::GfciTrips => component.kind == Kind::Gfci,
        Trouble::BreakerTrips => matches!(component.kind, Kind::Breaker | Kind::Receptacle),
        Trouble::Sparks | Trouble::WaterNearPower => is_electrical(component.kind),
        // One feels a tingle at a tap as well.
        Trouble::Shock => {
            is_electrical(component.kind)
                || (member(component, Net::Water) && component.kind.is_water_fixture())
        }
        Trouble::CoolingStopped => component.kind == Kind::AirHandler,
        Trouble::WaterAtAirHandler => {
            matches!(component.kind, Kind::AirHandler | Kind::CondensatePan)
        }
        Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire | Trouble::WiresDown => false,
        // What works by hand stands in the note; a lock or an opener has no kind of its own.
        Trouble::NotAnswering => {
            matches!(component.kind, Kind::SmokeAlarm | Kind::Thermostat)
                || (matches!(component.kind, Kind::Appliance | Kind::Other)
                    && component.note.is_some())
        }
    }
}

fn is_member(home: &Home, component: &Component, net: Net) -> bool {
    home.connections
        .iter()
        .any(|l| l.carries.net() == net && (l.from == component.id || l.to == component.id))
}
