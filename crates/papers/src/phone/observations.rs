//! What may be seen where a check is made, and the words for it.

use quarterturn_guidance::{Seen, System, Trouble};
use quarterturn_home::{Component, Home, Kind};

/// What may be seen at a component, the usual first.
pub(super) fn what_may_be_seen(
    home: &Home,
    trouble: Trouble,
    component: Option<&Component>,
) -> &'static [Seen] {
    let lacks_water = matches!(trouble, Trouble::NoWater | Trouble::NoHotWater);
    let Some(component) = component else { return &[] };
    match component.kind {
        // Whatever stands there, what matters is whether one's feet stay dry.
        _ if trouble == Trouble::WaterNearPower => &[Seen::Wet, Seen::Dry],
        Kind::CondensatePan | Kind::FloatSwitch => &[Seen::Wet, Seen::Dry],
        Kind::Thermostat | Kind::AirHandler | Kind::CondensatePump | Kind::SumpPump => {
            &[Seen::On, Seen::Off]
        }
        Kind::Breaker | Kind::Gfci => &[Seen::Tripped, Seen::On, Seen::Off],
        Kind::ServiceDisconnect | Kind::Disconnect | Kind::Switch | Kind::TransferSwitch => {
            &[Seen::On, Seen::Off]
        }
        Kind::IsolatingValve | Kind::GasValve if lacks_water => &[Seen::Off, Seen::On],
        _ if lacks_water => &[Seen::Dead, Seen::Live],
        _ if trouble == Trouble::GfciTrips => &[Seen::Wet, Seen::Dry],
        _ => match System::of_trouble(trouble).unwrap_or_else(|| System::of(home, component, None))
        {
            System::Drain => &[Seen::BacksUp, Seen::Drains],
            System::Power => &[Seen::Dead, Seen::Live],
            System::Water | System::Cooling => &[Seen::Wet, Seen::Dry],
            System::Gas | System::Control => &[Seen::On, Seen::Off],
        },
    }
}

/// Key of the words on the button for it.
pub(super) fn key(trouble: Trouble, component: Option<&Component>, seen: Seen) -> &'static str {
    let is_valve =
        component.is_some_and(|c| matches!(c.kind, Kind::IsolatingValve | Kind::GasValve));
    match (trouble, seen) {
        (Trouble::NoWater, Seen::Live) => return "phone-seen-water-comes",
        (Trouble::NoWater, Seen::Dead) => return "phone-seen-no-water",
        (Trouble::NoHotWater, Seen::Live) => return "phone-seen-hot-comes",
        (Trouble::NoHotWater, Seen::Dead) => return "phone-seen-no-hot",
        (_, Seen::On) if is_valve => return "phone-seen-open",
        (_, Seen::Off) if is_valve => return "phone-seen-shut",
        _ => {}
    }
    match seen {
        Seen::Live => "phone-seen-live",
        Seen::Dead => "phone-seen-dead",
        Seen::Drains => "phone-seen-drains",
        Seen::BacksUp => "phone-seen-backs-up",
        Seen::Wet => "phone-seen-wet",
        Seen::Dry => "phone-seen-dry",
        Seen::On => "phone-seen-on",
        Seen::Off => "phone-seen-off",
        Seen::Tripped => "phone-seen-tripped",
    }
}
