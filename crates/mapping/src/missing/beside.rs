//! What is missing beside the nets.

use quarterturn_guidance::{Spot, Trouble};
use quarterturn_home::{Component, DeviceState, Home, Kind, Medium, OperableBy, Role};

use super::{Fix, Item};
use crate::said::Said;
use crate::words::says;

/// What no net tells: numbers to call, devices that nobody tried or that stand in no room, GFCIs with
/// nothing behind them.
pub(super) fn beside_the_nets(home: &Home) -> Vec<Item> {
    let mut list = Vec::new();
    let mut add = |said: Said, fix: Fix, trouble: Trouble, at: Spot, help: f64| {
        list.push(Item { said, fix, protects: vec![(trouble, at)], help });
    };
    if home.spaces.is_empty() {
        add(Said::new("missing-rooms"), Fix::DrawRooms, Trouble::Leak, Spot::Home, 9.0);
    }
    if home.emergency_phone.is_none() {
        let said = Said::new("missing-emergency-phone");
        add(said, Fix::EmergencyPhone, Trouble::Fire, Spot::Home, 13.0);
    }
    let has = |kind: Kind| home.components.iter().any(|c| c.kind == kind);
    for (role, kind, key, trouble) in [
        (Role::WaterUtility, Kind::WaterMain, "missing-water-utility", Trouble::Leak),
        (
            Role::ElectricityUtility,
            Kind::ElectricityService,
            "missing-electricity-utility",
            Trouble::WiresDown,
        ),
        (Role::SewerUtility, Kind::SewerMain, "missing-sewer-utility", Trouble::SewageRising),
        (Role::GasUtility, Kind::GasMeter, "missing-gas-utility", Trouble::GasSmell),
    ] {
        let known = home.contacts.iter().any(|c| c.role == Some(role) && c.phone.is_some());
        if has(kind) && !known {
            add(Said::new(key), Fix::AddContact { role }, trouble, Spot::Home, 5.0);
        }
    }
    for c in &home.components {
        let at = || Spot::Component(c.id.clone());
        let valve = c.kind == Kind::IsolatingValve && c.operable_by == OperableBy::Anyone;
        if c.kind == Kind::IsolatingValve && c.space.is_none() {
            let said = Said::new("missing-place").with("name", &c.name);
            // The utility knows where its own is.
            let help = if valve { 4.0 } else { 2.0 };
            add(said, Fix::PutInRoom { id: c.id.clone() }, Trouble::Leak, at(), help);
        } else if valve && c.state() == DeviceState::Unknown {
            // The main is tried first: all hangs on it.
            let main = says(&c.name, "words-main");
            let said = Said::new("missing-tried").with("name", &c.name);
            let help = if main { 6.0 } else { 1.5 };
            add(said, Fix::Try { id: c.id.clone() }, Trouble::Leak, at(), help);
        }
    }
    let bare: Vec<&Component> = home
        .components
        .iter()
        .filter(|c| c.kind == Kind::Gfci)
        .filter(|c| !home.connections.iter().any(|l| l.from == c.id && l.carries == Medium::Power))
        .collect();
    if let Some(first) = bare.first() {
        let said =
            Said::new("missing-behind-gfci").with("name", &first.name).count("count", bare.len());
        let at = Spot::Component(first.id.clone());
        add(said, Fix::FindGfcis, Trouble::DeadOutlet, at, 2.0);
    }
    list
}
