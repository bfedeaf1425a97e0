//! Drainage fixture units, and whether a drain is large and steep enough by the plumbing codes.
//!
//! The two code families of the United States differ, so the family is an argument, never a
//! constant. Both are model codes: the adopted edition and its amendments govern, and an old house
//! that was right when built is not in breach.

use uom::si::f64::Length;
use uom::si::length::inch;

/// A family of plumbing codes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Code {
    /// International Plumbing Code, 2018, and the plumbing part of the IRC.
    Ipc,
    /// Uniform Plumbing Code.
    Upc,
}

/// A fixture, by what it sends down.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fixture {
    /// A wash basin.
    Lavatory,
    /// A bath, with or without a shower over it.
    Bathtub,
    /// A shower of its own.
    Shower,
    /// A kitchen sink, with disposer or dishwasher.
    KitchenSink,
    /// A dishwasher with its own drain.
    Dishwasher,
    /// A bar sink.
    BarSink,
    /// A laundry tub.
    LaundryTub,
    /// A clothes washer on a standpipe.
    ClothesWasher,
    /// A toilet of 1.6 gal a flush or less.
    Toilet,
    /// Lavatory, bath or shower, and toilet of one bathroom.
    FullBath,
}

/// What a check of a drain finds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Finding {
    /// Too many fixtures for its size and slope.
    TooSmall,
    /// Too flat for its size.
    TooFlat,
    /// A toilet on a drain of less than 3 in.
    ToiletNeedsThreeInches,
    /// More than three toilets on a 3 in drain (UPC).
    TooManyToilets,
}

/// Fixture units of one fixture.
///
/// Sources: UPC table 702.1 (King County, Washington, extract); IPC table 709.1 (from memory except
/// shower, laundry tub and toilet, which IRC P3004.1 has the same).
#[must_use]
pub fn units(code: Code, fixture: Fixture) -> u32 {
    match fixture {
        Fixture::Lavatory | Fixture::BarSink => 1,
        Fixture::Bathtub
        | Fixture::Shower
        | Fixture::KitchenSink
        | Fixture::Dishwasher
        | Fixture::LaundryTub => 2,
        Fixture::ClothesWasher => match code {
            Code::Ipc => 2,
            Code::Upc => 3,
        },
        Fixture::Toilet => 3,
        // The UPC has no group: lavatory, bath and toilet added up.
        Fixture::FullBath => match code {
            Code::Ipc => 5,
            Code::Upc => 6,
        },
    }
}

/// Most fixture units on a level drain of a nominal size, laid at `slope`; `None` if the code does
/// not allow that size or slope at all, or the table here ends.
///
/// Sources: IPC 2018 table 710.1(1), building drains and sewers; UPC table 703.2, horizontal drains
/// at 1/4 in to the foot (King County extract). Slopes between the columns count as the flatter.
#[must_use]
pub fn most_units(code: Code, nominal: Length, slope: f64) -> Option<u32> {
    let inches = nominal.get::<inch>();
    match code {
        Code::Ipc => {
            let (_, columns) = IPC_DRAINS.iter().find(|(size, _)| same(*size, inches))?;
            let [eighth, quarter, half] = *columns;
            match slope {
                _ if reaches(slope, 0.5) => half,
                _ if reaches(slope, 0.25) => quarter,
                _ if reaches(slope, 0.125) => eighth,
                _ => None,
            }
        }
        Code::Upc => {
            let &(_, most) = UPC_DRAINS.iter().find(|(size, _)| same(*size, inches))?;
            reaches(slope, 0.25).then_some(most)
        }
    }
}

/// Least slope of a drain of a nominal size.
///
/// Sources: IPC 704.1: 1/4 in to the foot up to 2-1/2 in, 1/8 up to 6 in, 1/16 beyond. UPC: 1/4 for
/// all (3 in and more may be laid at 1/8 where the authority agrees). Editions of the IRC disagree
/// for 3 in: read the adopted one.
#[must_use]
pub fn least_slope(code: Code, nominal: Length) -> f64 {
    let inches = nominal.get::<inch>();
    let in_a_foot = match code {
        Code::Upc => 0.25,
        Code::Ipc if inches < 2.75 => 0.25,
        Code::Ipc if inches < 7.0 => 0.125,
        Code::Ipc => 0.0625,
    };
    in_a_foot / 12.0
}

/// What the code would object to in a level drain that serves `fixtures`.
///
/// A pipe that the table does not know is not objected to for its size. Cost: O(fixtures).
#[must_use]
pub fn check(code: Code, nominal: Length, slope: f64, fixtures: &[Fixture]) -> Vec<Finding> {
    let inches = nominal.get::<inch>();
    let sum: u32 = fixtures.iter().map(|&fixture| units(code, fixture)).sum();
    let toilets = fixtures
        .iter()
        .filter(|fixture| matches!(fixture, Fixture::Toilet | Fixture::FullBath))
        .count();
    let mut findings = Vec::new();
    let slope_counted = slope.max(least_slope(code, nominal));
    if most_units(code, nominal, slope_counted).is_some_and(|most| sum > most) {
        findings.push(Finding::TooSmall);
    }
    if slope < least_slope(code, nominal) - SLACK {
        findings.push(Finding::TooFlat);
    }
    if toilets > 0 && inches < 2.9 {
        findings.push(Finding::ToiletNeedsThreeInches);
    }
    if code == Code::Upc && toilets > 3 && same(inches, 3.0) {
        findings.push(Finding::TooManyToilets);
    }
    findings
}

/// Size in inches; most units at 1/8, 1/4 and 1/2 in to the foot.
const IPC_DRAINS: [(f64, [Option<u32>; 3]); 8] = [
    (1.25, [None, Some(1), Some(1)]),
    (1.5, [None, Some(3), Some(3)]),
    (2.0, [None, Some(21), Some(26)]),
    (2.5, [None, Some(24), Some(31)]),
    (3.0, [Some(36), Some(42), Some(50)]),
    (4.0, [Some(180), Some(216), Some(250)]),
    (5.0, [Some(390), Some(480), Some(575)]),
    (6.0, [Some(700), Some(840), Some(1000)]),
];

/// Size in inches; most units.
const UPC_DRAINS: [(f64, u32); 5] = [(1.5, 1), (2.0, 8), (2.5, 14), (3.0, 35), (4.0, 216)];

/// A slope read off a level is good to a hundredth of an inch in a foot.
const SLACK: f64 = 0.01 / 12.0;

fn reaches(slope: f64, inches_per_foot: f64) -> bool {
    slope >= inches_per_foot / 12.0 - SLACK
}

fn same(size: f64, inches: f64) -> bool {
    (size - inches).abs() < 0.01
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inches(inches: f64) -> Length {
        Length::new::<inch>(inches)
    }

    #[test]
    fn a_house_of_two_baths_fits_on_four_inches() {
        let house =
            [Fixture::FullBath, Fixture::FullBath, Fixture::KitchenSink, Fixture::ClothesWasher];
        for code in [Code::Ipc, Code::Upc] {
            assert_eq!(check(code, inches(4.0), 0.25 / 12.0, &house), [], "{code:?}");
        }
    }

    #[test]
    fn what_is_too_small_too_flat_or_too_narrow_is_found() {
        let seven_baths = [Fixture::FullBath; 7];
        // 35 and 42 units against 42 and 35.
        assert_eq!(check(Code::Ipc, inches(3.0), 0.25 / 12.0, &seven_baths), []);
        assert_eq!(
            check(Code::Upc, inches(3.0), 0.25 / 12.0, &seven_baths),
            [Finding::TooSmall, Finding::TooManyToilets]
        );
        assert_eq!(
            check(Code::Ipc, inches(2.0), 0.125 / 12.0, &[Fixture::Toilet]),
            [Finding::TooFlat, Finding::ToiletNeedsThreeInches]
        );
        assert_eq!(check(Code::Upc, inches(4.0), 0.125 / 12.0, &[]), [Finding::TooFlat]);
    }

    #[test]
    fn a_drain_may_be_used_to_its_limit() {
        let mut fixtures = vec![Fixture::Toilet; 14];
        let slope = 0.25 / 12.0;
        assert_eq!(check(Code::Ipc, inches(3.0), slope, &fixtures), []);
        fixtures.push(Fixture::Lavatory);
        assert_eq!(check(Code::Ipc, inches(3.0), slope, &fixtures), [Finding::TooSmall]);
    }

    #[test]
    fn steeper_and_larger_never_carry_less() {
        for code in [Code::Ipc, Code::Upc] {
            let mut smaller = 0;
            for size in [1.5, 2.0, 2.5, 3.0, 4.0] {
                let quarter = most_units(code, inches(size), 0.25 / 12.0).unwrap();
                let half = most_units(code, inches(size), 0.5 / 12.0).unwrap();
                assert!(quarter >= smaller && half >= quarter, "{code:?} {size}");
                smaller = quarter;
            }
        }
        assert_eq!(most_units(Code::Ipc, inches(2.0), 0.125 / 12.0), None);
        assert_eq!(most_units(Code::Ipc, inches(7.0), 0.25 / 12.0), None);
    }
}
