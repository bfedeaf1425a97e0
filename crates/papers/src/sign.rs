//! The sign of a device: the shape and colour of its system, and its tag.

use quarterturn_guidance::System;
use quarterturn_home::{Component, Home};
use serde::Serialize;

/// A system's key in the catalogue.
pub(crate) fn key(system: System) -> &'static str {
    match system {
        System::Water => "paper-system-water",
        System::Drain => "paper-system-drain",
        System::Power => "paper-system-power",
        System::Gas => "paper-system-gas",
        System::Cooling => "paper-system-cooling",
        System::Control => "paper-system-control",
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
        Self { system: System::of(home, component, None), tag }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::{Connection, Kind, Medium};

    #[test]
    fn a_device_in_several_systems_has_the_sign_of_the_first_and_its_tag() {
        let mut washer = Component::new("washer", Kind::WashingMachine, "Washer");
        washer.tag = Some("W7".to_owned());
        let home = Home {
            components: vec![washer.clone()],
            connections: vec![
                Connection::new("outlet", "washer", Medium::Power),
                Connection::new("stop", "washer", Medium::ColdWater),
            ],
            ..Home::default()
        };
        let sign = Sign { system: System::Water, tag: "W7".to_owned() };
        assert_eq!(Sign::of(&home, &washer), sign);
        washer.tag = None;
        assert_eq!(Sign::of(&home, &washer).tag, "");
    }
}
