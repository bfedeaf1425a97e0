//! The next free tag of each letter.

use std::collections::BTreeMap;

use quarterturn_guidance::System;
use quarterturn_home::{Home, Kind};

/// The last number that each letter was given.
#[derive(Debug, Clone)]
pub(crate) struct Tags {
    last: BTreeMap<char, u32>,
}

/// The tag that the next component of a kind gets: a number that was never given, since printed tags
/// may still hang. `None` for what needs no tag.
#[must_use]
pub fn next_tag(home: &Home, kind: Kind) -> Option<String> {
    Tags::of(home).next(kind)
}

/// The letter of a kind's tag: W water, S sewer, E electricity, C cooling, G gas; `None` for pieces
/// of line, hoses and what lies in the street.
#[must_use]
pub fn tag_letter(kind: Kind) -> Option<char> {
    let untagged = matches!(
        kind,
        Kind::SupplyHose
            | Kind::Pipe
            | Kind::Trap
            | Kind::WaterMain
            | Kind::SewerMain
            | Kind::ElectricityService
    );
    if untagged {
        return None;
    }
    match System::of_kind(kind) {
        System::Water => Some('W'),
        System::Drain => Some('S'),
        System::Power => Some('E'),
        System::Gas => Some('G'),
        System::Cooling => Some('C'),
        System::Control => None,
    }
}

impl Tags {
    pub(crate) fn of(home: &Home) -> Self {
        let mut last = BTreeMap::new();
        for tag in home.components.iter().filter_map(|c| c.tag.as_deref()) {
            let mut letters = tag.chars();
            let (Some(letter), Ok(number)) = (letters.next(), letters.as_str().parse::<u32>())
            else {
                continue;
            };
            let most = last.entry(letter.to_ascii_uppercase()).or_insert(0);
            *most = number.max(*most);
        }
        Self { last }
    }

    pub(crate) fn next(&mut self, kind: Kind) -> Option<String> {
        let letter = tag_letter(kind)?;
        let number = self.last.entry(letter).or_insert(0);
        *number = number.saturating_add(1);
        Some(format!("{letter}{number}"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Component;

    #[test]
    fn numbers_go_on_after_the_largest_and_odd_tags_do_no_harm() {
        let mut home = Home::default();
        for (id, tag) in [("a", "W2"), ("b", "W41"), ("c", "E3"), ("d", "Wet"), ("e", "")] {
            let mut c = Component::new(id, Kind::IsolatingValve, id);
            c.tag = Some(tag.to_owned());
            home.components.push(c);
        }
        assert_eq!(next_tag(&home, Kind::Toilet).as_deref(), Some("W42"));
        assert_eq!(next_tag(&home, Kind::Breaker).as_deref(), Some("E4"));
        assert_eq!(next_tag(&home, Kind::Cleanout).as_deref(), Some("S1"));
        assert_eq!(next_tag(&home, Kind::Pipe), None);
    }
}
