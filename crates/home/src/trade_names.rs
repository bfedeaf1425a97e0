//! Which kind was perhaps meant by a name that is none.

use crate::Kind;
use crate::nearest::nearest;

/// The kind that was perhaps meant: one that the trade calls so, or one that is written nearly so.
pub(crate) fn nearest_kind(word: &str) -> Option<Kind> {
    let by_trade = TRADE_NAMES.iter().map(|(name, _)| *name);
    let named = nearest(word, Kind::ALL.iter().map(|kind| kind.name()).chain(by_trade))?;
    let of_trade = TRADE_NAMES.iter().find(|(name, _)| *name == named).map(|(_, kind)| *kind);
    Kind::from_name(named).or(of_trade)
}

/// Trade names that people write for a kind (common practice).
const TRADE_NAMES: &[(&str, Kind)] = &[
    ("Valve", Kind::IsolatingValve),
    ("ShutoffValve", Kind::IsolatingValve),
    ("Shutoff", Kind::IsolatingValve),
    ("StopValve", Kind::IsolatingValve),
    ("Stopcock", Kind::IsolatingValve),
    ("AngleStop", Kind::IsolatingValve),
    ("CurbStop", Kind::IsolatingValve),
    ("BallValve", Kind::IsolatingValve),
    ("GateValve", Kind::IsolatingValve),
    ("PressureRegulator", Kind::PressureReducingValve),
    ("CirculatingPump", Kind::CirculationPump),
    ("RecirculationPump", Kind::CirculationPump),
    ("WaterSoftener", Kind::Softener),
    ("Boiler", Kind::WaterHeater),
    ("Hose", Kind::SupplyHose),
    ("Faucet", Kind::Tap),
    ("Spigot", Kind::HoseBibb),
    ("OutsideTap", Kind::HoseBibb),
    ("Washbasin", Kind::Basin),
    ("Bathtub", Kind::Bath),
    ("Washer", Kind::WashingMachine),
    ("ClothesWasher", Kind::WashingMachine),
    ("Sewer", Kind::SewerMain),
    ("CleanOut", Kind::Cleanout),
    ("BackflowValve", Kind::BackwaterValve),
    ("CircuitBreaker", Kind::Breaker),
    ("MainBreaker", Kind::ServiceDisconnect),
    ("DistributionBoard", Kind::Panel),
    ("SubPanel", Kind::Panel),
    ("Outlet", Kind::Receptacle),
    ("Socket", Kind::Receptacle),
    ("PowerOutlet", Kind::Receptacle),
    ("Rcd", Kind::Gfci),
    ("ResidualCurrentDevice", Kind::Gfci),
    ("Lamp", Kind::Light),
    ("Heater", Kind::Appliance),
    ("Refrigerator", Kind::Appliance),
    ("SmokeDetector", Kind::SmokeAlarm),
    ("Furnace", Kind::GasAppliance),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kind_is_found_by_slip_of_the_pen_and_by_trade_name() {
        assert_eq!(nearest_kind("IsolationValve"), Some(Kind::IsolatingValve));
        assert_eq!(nearest_kind("recepticle"), Some(Kind::Receptacle));
        assert_eq!(nearest_kind("Outlet"), Some(Kind::Receptacle));
        assert_eq!(nearest_kind("AngleStop"), Some(Kind::IsolatingValve));
        assert_eq!(nearest_kind("tap"), Some(Kind::Tap));
        assert_eq!(nearest_kind("Elephant"), None);
    }
}
