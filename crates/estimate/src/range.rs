//! A guess, as three figures.

use std::ops::{Add, Mul};

/// A guess: the least that is reasonable, the likeliest, and the most that is reasonable.
///
/// Not a statistical interval: nothing is claimed about how often the truth lies outside.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range<T> {
    /// The least.
    pub low: T,
    /// The likeliest.
    pub likely: T,
    /// The most.
    pub high: T,
}

impl<T: Copy + PartialOrd> Range<T> {
    /// The range of three figures, given in any order: the middle one is the likeliest.
    ///
    /// ```
    /// # use quarterturn_estimate::Range;
    /// assert_eq!(Range::new(3.0, 2.0, 1.0), Range { low: 1.0, likely: 2.0, high: 3.0 });
    /// ```
    #[must_use]
    pub fn new(a: T, b: T, c: T) -> Self {
        let (a, b) = ordered(a, b);
        let (b, c) = ordered(b, c);
        let (a, b) = ordered(a, b);
        Self { low: a, likely: b, high: c }
    }

    /// A figure that is no guess.
    #[must_use]
    pub fn exactly(value: T) -> Self {
        Self { low: value, likely: value, high: value }
    }

    /// What becomes of each figure under `f`, which only rises or only falls.
    #[must_use]
    pub fn map<U: Copy + PartialOrd>(self, f: impl Fn(T) -> U) -> Range<U> {
        Range::new(f(self.low), f(self.likely), f(self.high))
    }

    /// Both guesses taken together by `f`, which rises with each: low with low, high with high.
    ///
    /// That is the widest result; guesses that err independently spread less.
    #[must_use]
    pub fn with<U: Copy + PartialOrd, V: Copy + PartialOrd>(
        self,
        other: Range<U>,
        f: impl Fn(T, U) -> V,
    ) -> Range<V> {
        Range::new(f(self.low, other.low), f(self.likely, other.likely), f(self.high, other.high))
    }

    /// True if `value` lies in the range, ends included.
    #[must_use]
    pub fn contains(&self, value: T) -> bool {
        self.low <= value && value <= self.high
    }
}

impl<T: Add<Output = T>> Add for Range<T> {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self {
            low: self.low + other.low,
            likely: self.likely + other.likely,
            high: self.high + other.high,
        }
    }
}

/// A guess so many times over; `times` is not negative.
impl<T: Copy + PartialOrd + Mul<f64, Output = T>> Mul<f64> for Range<T> {
    type Output = Self;

    fn mul(self, times: f64) -> Self {
        self.map(|figure| figure * times)
    }
}

fn ordered<T: PartialOrd>(a: T, b: T) -> (T, T) {
    if b < a { (b, a) } else { (a, b) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_falling_function_leaves_low_below_high() {
        let halves = Range::new(1.0, 2.0, 4.0).map(|x: f64| 8.0 / x);
        assert_eq!(halves, Range { low: 2.0, likely: 4.0, high: 8.0 });
    }

    #[test]
    fn every_order_gives_the_same_range() {
        for [a, b, c] in [[1, 2, 3], [1, 3, 2], [2, 1, 3], [2, 3, 1], [3, 1, 2], [3, 2, 1]] {
            assert_eq!(Range::new(a, b, c), Range { low: 1, likely: 2, high: 3 });
        }
    }

    #[test]
    fn sums_take_the_worst_with_the_worst() {
        let sum = Range::new(1, 2, 3) + Range::new(10, 20, 30);
        assert_eq!(sum, Range { low: 11, likely: 22, high: 33 });
        assert!(sum.contains(33) && !sum.contains(34));
    }
}
