//! How a device is worked, and by whom.

use serde::{Deserialize, Serialize};

use crate::Date;

/// How a device is worked.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Operates {
    /// What one takes hold of.
    pub handle: Option<Handle>,
    /// How it closes.
    pub closes: Option<Closes>,
    /// Whether it is known to work.
    pub state: DeviceState,
    /// How it stands on an ordinary day.
    pub normally: Position,
    /// The tool it takes.
    pub tool: Option<String>,
    /// When it was last worked.
    pub exercised: Option<Date>,
    /// How long it takes to work, once one stands at it, in seconds.
    pub seconds: Option<f64>,
}

/// What one takes hold of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Handle {
    /// A lever: across the pipe is closed.
    Lever,
    /// A wheel.
    Wheel,
    /// A small round or oval handle.
    Knob,
    /// A tee or butterfly handle.
    Tee,
    /// A screwdriver slot.
    Slot,
    /// A square or a nut for a key.
    Key,
    /// A push button.
    Button,
    /// A breaker's toggle.
    Toggle,
    /// A pull-out block.
    PullOut,
    /// A cap to unscrew.
    Cap,
}

/// How a device closes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Closes {
    /// A quarter turn, until the handle lies across.
    QuarterTurn,
    /// Several turns clockwise.
    MultiTurn,
    /// This many turns clockwise.
    Turns(f64),
    /// Push in.
    Push,
    /// Pull out.
    Pull,
    /// To OFF.
    ToOff,
    /// Turn a cap.
    Unscrew,
}

/// Whether a device is known to work.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum DeviceState {
    /// It was tried and works.
    Works,
    /// It works, but takes force or time.
    Stiff,
    /// It does not move.
    Seized,
    /// It moves, but does not hold.
    LeaksBy,
    /// Nobody tried.
    #[default]
    Unknown,
}

/// How a device stands on an ordinary day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Position {
    /// Open to flow (for power: on).
    #[default]
    Open,
    /// Shut (for power: off).
    Shut,
}

/// Who may work a device.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default, Serialize, Deserialize)]
pub enum OperableBy {
    /// Anyone in the house.
    #[default]
    Anyone,
    /// A licensed person.
    Licensed,
    /// The utility alone.
    Utility,
}
