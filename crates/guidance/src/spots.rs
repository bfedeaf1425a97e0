//! The spots that make sense for a trouble.

use quarterturn_home::{Component, Home, Kind, Net};

use crate::context::is_electrical;
use crate::{Spot, Trouble};

/// The spots that make sense for a trouble, space by space in the order of the home file: the space
/// itself where the trouble can be anywhere in it, then its components by name.
#[must_use]
pub fn spots(home: &Home, trouble: Trouble) -> Vec<Spot> {
    if trouble.is_leave_first() {
        return vec![Spot::Home];
    }
    let member = |component: &Component, net: Net| {
        home.connections
            .iter()
            .any(|l| l.carries.net() == net && (l.from == component.id || l.to == component.id))
    };
    let fits = |component: &Component| match trouble {
        Trouble::Leak => {
            (member(component, Net::Water) || member(component, Net::Waste))
                && !matches!(component.kind, Kind::WaterMain | Kind::SewerMain)
        }
        Trouble::WaterFromAbove => false,
        Trouble::DrainBacksUp | Trouble::SewageRising => {
            (component.kind.is_drain_opening() || component.kind == Kind::Cleanout)
                && member(component, Net::Waste)
        }
        Trouble::DeadOutlet => matches!(
            component.kind,
            Kind::Receptacle | Kind::Gfci | Kind::Light | Kind::Lampholder | Kind::Appliance
        ),
        Trouble::BreakerTrips => matches!(component.kind, Kind::Breaker | Kind::Receptacle),
        Trouble::Sparks => is_electrical(component.kind),
        Trouble::CoolingStopped => component.kind == Kind::AirHandler,
        Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire => false,
    };
    let whole_space = |indoors: bool, any: bool| match trouble {
        Trouble::WaterFromAbove => indoors,
        Trouble::Leak | Trouble::SewageRising | Trouble::DrainBacksUp | Trouble::Sparks => any,
        _ => false,
    };
    let mut list = Vec::new();
    for space in &home.spaces {
        let mut here: Vec<&Component> = home
            .components
            .iter()
            .filter(|c| c.space.as_deref() == Some(space.id.as_str()) && fits(c))
            .collect();
        here.sort_by(|a, b| a.name.cmp(&b.name).then_with(|| a.id.cmp(&b.id)));
        if whole_space(!space.outdoors, !here.is_empty()) {
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
