//! Published formulas with units: what a leak lets out, how long the way to a valve takes, what a
//! circuit carries, what a drain holds.
//!
//! Every quantity has its unit in its type ([`si`] names the units). Where an input is a guess the
//! result is a [`Range`]. Each function says where it comes from, where it holds and which way it
//! errs. Nothing here knows a home, reads a file or looks at a clock.
//!
//! ```
//! use quarterturn_estimate::si::{time::minute, volume::liter};
//! use quarterturn_estimate::{Range, Time, floor, leak};
//!
//! let flow = leak::typical(leak::Source::WasherHose);
//! let wet = floor::litres(flow, Range::exactly(Time::new::<minute>(10.0)));
//! assert!((300.0..450.0).contains(&wet.likely.get::<liter>()));
//! ```

pub mod air;
pub mod appliance;
pub mod circuit;
pub mod condensate;
pub mod device;
pub mod drain;
pub mod duct;
pub mod dwelling;
pub mod fixture_units;
pub mod floor;
pub mod leak;
mod range;
mod refused;
pub mod standing;
pub mod trip;
pub mod walk;

pub use range::Range;
pub use refused::Refused;
pub use uom::si;
pub use uom::si::f64::{
    Area, AvailableEnergy, ElectricCurrent, ElectricPotential, Frequency, Length, MassRate, Power,
    Pressure, Ratio, SpecificVolume, ThermodynamicTemperature, Time, Velocity, Volume, VolumeRate,
};
