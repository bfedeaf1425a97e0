//! The kinds of component, and what each one does to what flows through it.

use serde::{Deserialize, Serialize};

use crate::Medium;

/// What flows, with cold and hot water taken as one: the nets that are traced.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Net {
    /// Cold and hot water under pressure.
    Water,
    /// Drains, by gravity.
    Waste,
    /// Air pipes of the drains.
    Vent,
    /// Condensate of a cooling coil, by gravity.
    Condensate,
    /// Electricity.
    Power,
    /// Fuel gas.
    Gas,
    /// Control wiring.
    Signal,
}

impl Net {
    /// All nets, in their stated order.
    pub const ALL: [Self; 7] = [
        Self::Water,
        Self::Waste,
        Self::Vent,
        Self::Condensate,
        Self::Power,
        Self::Gas,
        Self::Signal,
    ];
}

macro_rules! kinds {
    ($($(#[doc = $doc:literal])+ $name:ident,)+) => {
        /// The kind of a component. Names follow the enumerations of ISO 16739 where one fits.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        pub enum Kind {
            $($(#[doc = $doc])+ $name,)+
        }

        impl Kind {
            /// Every kind, in the order of the list in `DEVELOPERS.md`.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+];

            /// The name as it stands in a home file.
            #[must_use]
            pub fn name(self) -> &'static str {
                match self { $(Self::$name => stringify!($name),)+ }
            }
        }
    };
}

kinds! {
    /// The street's water main: a source.
    WaterMain,
    /// A well with its pump: a source, alive only while its pump has power, if wired.
    Well,
    /// A water meter.
    WaterMeter,
    /// A valve that is there to be shut: main shutoff, branch valve, angle stop, curb stop.
    IsolatingValve,
    /// A backflow preventer: one way.
    BackflowPreventer,
    /// A check valve: one way.
    CheckValve,
    /// A pressure reducing valve: one way.
    PressureReducingValve,
    /// A circulation pump: one way.
    CirculationPump,
    /// A mixing valve: joins hot and cold.
    MixingValve,
    /// A relief valve.
    ReliefValve,
    /// A manifold.
    Manifold,
    /// A run of pipe, for water or for drains.
    Pipe,
    /// A flexible hose to a fixture.
    SupplyHose,
    /// A pressure tank.
    PressureTank,
    /// A water heater, with or without a tank.
    WaterHeater,
    /// An expansion tank.
    ExpansionTank,
    /// A water softener.
    Softener,
    /// A tap on its own.
    Tap,
    /// An outside tap.
    HoseBibb,
    /// A garden watering system.
    Irrigation,
    /// An ice maker.
    IceMaker,
    /// The riser of a fire-sprinkler system.
    SprinklerRiser,
    /// A sink, with its tap.
    Sink,
    /// A wash basin, with its tap.
    Basin,
    /// A bath, with its tap.
    Bath,
    /// A shower.
    Shower,
    /// A toilet.
    Toilet,
    /// A washing machine.
    WashingMachine,
    /// A dishwasher.
    Dishwasher,
    /// A drain in a floor.
    FloorDrain,
    /// A standpipe, such as a washing machine drains into.
    Standpipe,
    /// A trap.
    Trap,
    /// A vertical drain.
    Stack,
    /// A capped opening to clear a drain through.
    Cleanout,
    /// A flap that keeps the sewer out.
    BackwaterValve,
    /// A pit that is pumped up into the sewer.
    EjectorPit,
    /// A pit for ground water, pumped out.
    SumpPit,
    /// The street's sewer: an outfall.
    SewerMain,
    /// A septic tank: an outfall.
    SepticTank,
    /// The utility's electricity service: a source.
    ElectricityService,
    /// A generator: a source.
    Generator,
    /// An inverter, such as for solar panels: a source.
    Inverter,
    /// A battery: a source.
    Battery,
    /// An electricity meter.
    ElectricityMeter,
    /// A breaker panel or sub-panel.
    Panel,
    /// A junction box.
    JunctionBox,
    /// The main switch of a service.
    ServiceDisconnect,
    /// A circuit breaker.
    Breaker,
    /// A disconnect near an appliance.
    Disconnect,
    /// A switch between utility and another source.
    TransferSwitch,
    /// A wall switch: can be off, but isolates nothing one relies on.
    Switch,
    /// A ground-fault device (also called a residual-current device).
    Gfci,
    /// A power outlet.
    Receptacle,
    /// A light.
    Light,
    /// A bare lampholder.
    Lampholder,
    /// Any other appliance.
    Appliance,
    /// A sump or ejector pump.
    SumpPump,
    /// A smoke or carbon monoxide alarm on the house's wiring.
    SmokeAlarm,
    /// Equipment that someone's health depends on.
    MedicalDevice,
    /// An air handler, with its cooling coil.
    AirHandler,
    /// A pan that catches condensate.
    CondensatePan,
    /// A pump that lifts condensate.
    CondensatePump,
    /// Where condensate leaves the house.
    CondensateOutlet,
    /// A switch that stops the air handler when water rises.
    FloatSwitch,
    /// A thermostat.
    Thermostat,
    /// A gas meter: a source.
    GasMeter,
    /// A gas valve.
    GasValve,
    /// A gas appliance.
    GasAppliance,
    /// Something else, or a kind that this version does not know. It is traced as a plain piece of
    /// line, so that nothing it feeds is taken as cut off.
    Other,
}

impl Kind {
    /// The kind named `name`, if there is one.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.name() == name)
    }

    /// True if `net` comes from this kind.
    #[must_use]
    pub fn is_source(self, net: Net) -> bool {
        match net {
            Net::Water => matches!(self, Self::WaterMain | Self::Well),
            Net::Power => matches!(
                self,
                Self::ElectricityService | Self::Generator | Self::Inverter | Self::Battery
            ),
            Net::Gas => matches!(self, Self::GasMeter),
            Net::Waste | Net::Vent | Net::Condensate | Net::Signal => false,
        }
    }

    /// True if drains end here.
    #[must_use]
    pub fn is_outfall(self) -> bool {
        matches!(self, Self::SewerMain | Self::SepticTank)
    }

    /// True if the kind is there to be shut (or opened, for power) so that `net` stops, and can be
    /// relied on for that.
    #[must_use]
    pub fn isolates(self, net: Net) -> bool {
        match net {
            Net::Water => matches!(self, Self::IsolatingValve),
            Net::Power => matches!(
                self,
                Self::ServiceDisconnect | Self::Breaker | Self::Disconnect | Self::TransferSwitch
            ),
            Net::Gas => matches!(self, Self::GasValve),
            Net::Waste | Net::Vent | Net::Condensate | Net::Signal => false,
        }
    }

    /// True if `net` passes this kind only from its inlet to its outlet.
    #[must_use]
    pub fn is_one_way(self, net: Net) -> bool {
        match net {
            Net::Water => matches!(
                self,
                Self::BackflowPreventer
                    | Self::CheckValve
                    | Self::PressureReducingValve
                    | Self::CirculationPump
            ),
            Net::Waste | Net::Condensate => true,
            Net::Power | Net::Gas | Net::Vent | Net::Signal => false,
        }
    }

    /// True for what water is drawn from or ends in: nothing flows on from one of its lines to
    /// another unless the component says `joins: true`.
    #[must_use]
    pub fn is_water_fixture(self) -> bool {
        matches!(
            self,
            Self::Tap
                | Self::HoseBibb
                | Self::Irrigation
                | Self::IceMaker
                | Self::SprinklerRiser
                | Self::Sink
                | Self::Basin
                | Self::Bath
                | Self::Shower
                | Self::Toilet
                | Self::WashingMachine
                | Self::Dishwasher
                | Self::Appliance
                | Self::AirHandler
                | Self::MedicalDevice
        )
    }

    /// True for what is wired so that power may run through it either way: the distribution as far
    /// as the circuits. Beyond it, power runs on from box to box and never back.
    #[must_use]
    pub fn is_power_distribution(self) -> bool {
        matches!(
            self,
            Self::ElectricityService
                | Self::Generator
                | Self::Inverter
                | Self::Battery
                | Self::ElectricityMeter
                | Self::Panel
                | Self::ServiceDisconnect
                | Self::Breaker
                | Self::Disconnect
                | Self::TransferSwitch
        )
    }

    /// True for what people use, and would miss when it goes off.
    #[must_use]
    pub fn is_served(self) -> bool {
        matches!(
            self,
            Self::Tap
                | Self::HoseBibb
                | Self::Irrigation
                | Self::IceMaker
                | Self::SprinklerRiser
                | Self::Sink
                | Self::Basin
                | Self::Bath
                | Self::Shower
                | Self::Toilet
                | Self::WashingMachine
                | Self::Dishwasher
                | Self::WaterHeater
                | Self::Gfci
                | Self::Receptacle
                | Self::Light
                | Self::Lampholder
                | Self::Appliance
                | Self::SumpPump
                | Self::EjectorPit
                | Self::SumpPit
                | Self::SmokeAlarm
                | Self::MedicalDevice
                | Self::AirHandler
                | Self::CondensatePump
                | Self::Thermostat
                | Self::GasAppliance
                | Self::Well
                | Self::CirculationPump
        )
    }

    /// True for what must be named first when it goes off, whether the file says `critical` or not:
    /// equipment someone's health depends on, pumps that keep water out, alarms and sprinklers.
    #[must_use]
    pub fn is_critical(self) -> bool {
        matches!(
            self,
            Self::MedicalDevice
                | Self::SumpPump
                | Self::SumpPit
                | Self::EjectorPit
                | Self::SmokeAlarm
                | Self::SprinklerRiser
        )
    }

    /// True for what waste water can come out of when a drain backs up.
    #[must_use]
    pub fn is_drain_opening(self) -> bool {
        self.runs_water() || matches!(self, Self::FloorDrain | Self::Standpipe)
    }

    /// True for a drain opening that has water of its own to send down.
    #[must_use]
    pub fn runs_water(self) -> bool {
        matches!(
            self,
            Self::Sink
                | Self::Basin
                | Self::Bath
                | Self::Shower
                | Self::Toilet
                | Self::WashingMachine
                | Self::Dishwasher
        )
    }

    /// True for what stops waste from coming back up through it.
    #[must_use]
    pub fn stops_backflow(self) -> bool {
        matches!(self, Self::BackwaterValve | Self::CheckValve | Self::EjectorPit | Self::SumpPit)
    }

    /// True if this kind can be part of a line that carries `medium`.
    #[must_use]
    pub fn can_meet(self, medium: Medium) -> bool {
        use Medium as M;
        let allowed: &[Medium] = match self {
            Self::WaterMain | Self::Well | Self::WaterMeter => &[M::ColdWater, M::Power, M::Signal],
            Self::IsolatingValve
            | Self::Manifold
            | Self::SupplyHose
            | Self::BackflowPreventer
            | Self::PressureReducingValve
            | Self::PressureTank
            | Self::ExpansionTank
            | Self::MixingValve
            | Self::Tap
            | Self::HoseBibb
            | Self::SprinklerRiser => &[M::ColdWater, M::HotWater, M::Waste, M::Power, M::Signal],
            Self::CheckValve => &[M::ColdWater, M::HotWater, M::Waste, M::Condensate, M::Gas],
            Self::CirculationPump
            | Self::Softener
            | Self::Irrigation
            | Self::IceMaker
            | Self::Sink
            | Self::Basin
            | Self::Bath
            | Self::Shower
            | Self::Toilet
            | Self::WashingMachine
            | Self::Dishwasher => {
                &[M::ColdWater, M::HotWater, M::Waste, M::Condensate, M::Power, M::Signal, M::Gas]
            }
            Self::ReliefValve => &[M::ColdWater, M::HotWater, M::Waste, M::Condensate, M::Gas],
            Self::Pipe => &[M::ColdWater, M::HotWater, M::Waste, M::Vent, M::Condensate, M::Gas],
            Self::FloorDrain | Self::Standpipe | Self::Trap | Self::Stack => {
                &[M::Waste, M::Vent, M::Condensate, M::ColdWater]
            }
            Self::Cleanout | Self::BackwaterValve => &[M::Waste, M::Vent, M::Condensate],
            Self::SewerMain | Self::SepticTank => {
                &[M::Waste, M::Vent, M::Condensate, M::Power, M::Signal]
            }
            Self::EjectorPit | Self::SumpPit | Self::SumpPump => {
                &[M::Waste, M::Vent, M::Condensate, M::Power, M::Signal]
            }
            Self::ElectricityService
            | Self::ElectricityMeter
            | Self::Panel
            | Self::JunctionBox
            | Self::ServiceDisconnect
            | Self::Breaker
            | Self::Disconnect
            | Self::TransferSwitch
            | Self::Switch
            | Self::Gfci
            | Self::Receptacle
            | Self::Light
            | Self::Lampholder
            | Self::SmokeAlarm
            | Self::Thermostat
            | Self::Battery
            | Self::Inverter => &[M::Power, M::Signal],
            Self::Generator => &[M::Power, M::Signal, M::Gas],
            Self::CondensatePan | Self::CondensateOutlet => &[M::Condensate, M::Waste, M::Signal],
            Self::CondensatePump => &[M::Condensate, M::Waste, M::Power, M::Signal],
            Self::FloatSwitch => &[M::Condensate, M::Signal, M::Power, M::Waste],
            Self::GasMeter | Self::GasValve => &[M::Gas, M::Signal],
            Self::WaterHeater
            | Self::Appliance
            | Self::MedicalDevice
            | Self::AirHandler
            | Self::GasAppliance
            | Self::Other => return true,
        };
        allowed.contains(&medium)
    }

    /// True for a plain piece of line, in which two media would mix.
    #[must_use]
    pub fn is_plain_line(self) -> bool {
        matches!(
            self,
            Self::Pipe
                | Self::IsolatingValve
                | Self::Manifold
                | Self::SupplyHose
                | Self::BackflowPreventer
                | Self::CheckValve
                | Self::PressureReducingValve
                | Self::Stack
                | Self::Trap
        )
    }
}
