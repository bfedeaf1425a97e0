//! Inputs that cannot be reckoned with.

use thiserror::Error;

/// Why an estimate was refused.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
pub enum Refused {
    /// The table has no such size.
    #[error("no {kind} of {inches} in is in the table; measure the bore and use that")]
    UnknownSize {
        /// Kind of pipe.
        kind: &'static str,
        /// Nominal size asked for, in inches.
        inches: f64,
    },
    /// The formula does not hold there.
    #[error("{what} is {value}, but the formula holds from {from} to {to} only")]
    OutOfRange {
        /// What was given, with its unit.
        what: &'static str,
        /// What was given.
        value: f64,
        /// Least value that the formula holds for.
        from: f64,
        /// Greatest value that the formula holds for.
        to: f64,
    },
    /// A wet bulb cannot be warmer than a dry one.
    #[error("the wet bulb is warmer than the dry bulb; exchange the two readings")]
    WetBulbAboveDryBulb,
    /// What cannot be unplugged is too much on its own.
    #[error(
        "the fixed loads alone exceed the breaker; unplugging cannot help, call an electrician"
    )]
    FixedLoadsTooMuch,
}

impl Refused {
    /// Passes `value` on if it lies from `from` to `to`; not if it is no number.
    pub(crate) fn unless_between(
        what: &'static str,
        value: f64,
        from: f64,
        to: f64,
    ) -> Result<f64, Self> {
        if (from..=to).contains(&value) {
            Ok(value)
        } else {
            Err(Self::OutOfRange { what, value, from, to })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_number_is_out_of_range() {
        assert!(Refused::unless_between("slope", f64::NAN, 0.0, 1.0).is_err());
        assert_eq!(Refused::unless_between("slope", 1.0, 0.0, 1.0), Ok(1.0));
    }

    #[test]
    fn the_message_says_what_would_be_right() {
        let refused = Refused::unless_between("wet bulb in °C", 250.0, 0.0, 200.0);
        assert_eq!(
            refused.unwrap_err().to_string(),
            "wet bulb in °C is 250, but the formula holds from 0 to 200 only"
        );
    }
}
