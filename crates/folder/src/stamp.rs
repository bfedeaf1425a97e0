//! What a file held, in few bytes.

use std::fmt;

use sha2::{Digest as _, Sha256};

/// The SHA-256 of what a file held, by which a change is noticed whatever its date says.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Stamp([u8; 32]);

impl Stamp {
    /// The stamp of these bytes.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// In hexadecimal, 64 digits.
    #[must_use]
    pub fn hex(&self) -> String {
        self.0.iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

impl fmt::Debug for Stamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Stamp({})", self.hex())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// FIPS 180-4, example "abc".
    #[test]
    fn agrees_with_the_published_example() {
        assert_eq!(
            Stamp::of(b"abc").hex(),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
        );
    }
}
