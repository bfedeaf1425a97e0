//! Chance that falls the same way every time.

/// Numbers that look random and hang on the number of the case alone (splitmix64: Steele, Lea &
/// Flood 2014).
#[derive(Debug, Clone)]
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn of_case(sort: &str, case: u64) -> Self {
        let mixed = sort
            .bytes()
            .fold(case, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
        Self(mixed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number from 0 to `below` - 1.
    pub(crate) fn below(&mut self, below: usize) -> usize {
        usize::try_from(self.next() % below.max(1) as u64).unwrap()
    }

    /// True `percent` times in a hundred.
    pub(crate) fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }

    /// One of some things.
    pub(crate) fn of<T: Clone>(&mut self, things: &[T]) -> T {
        things[self.below(things.len())].clone()
    }
}
