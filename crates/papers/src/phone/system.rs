//! The systems as numbers of the page's data.

use std::collections::BTreeSet;

use quarterturn_guidance::{Group, System};

/// A system's place in the page's data, which `page.js` and `page.css` know it by.
pub(super) fn number(system: System) -> i32 {
    match system {
        System::Water => 0,
        System::Drain => 1,
        System::Power => 2,
        System::Gas => 3,
        System::Cooling => 4,
        System::Control => 5,
    }
}

/// A bit for each of some systems.
pub(super) fn bits(systems: &BTreeSet<System>) -> i32 {
    systems.iter().fold(0, |bits, system| bits | 1 << number(*system))
}

/// The place of a group of troubles in the page's data.
pub(super) fn group_number(group: Group) -> i32 {
    match group {
        Group::Life => 0,
        Group::Water => 1,
        Group::Drains => 2,
        Group::Power => 3,
        Group::Cooling => 4,
        Group::Control => 5,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_follow_the_order_of_lists_and_each_has_its_bit() {
        for (nth, (system, group)) in (0..).zip(System::ALL.into_iter().zip(Group::ALL)) {
            assert_eq!(number(system), nth);
            assert_eq!(group_number(group), nth);
        }
        assert_eq!(
            bits(&BTreeSet::from([System::Water, System::Power, System::Control])),
            0b10_0101
        );
    }
}
