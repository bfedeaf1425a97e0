//! How the places of a panel are numbered, and which places a number names.
//!
//! Odd numbers on the left and even ones on the right, a breaker of two poles over two places of its
//! side: so panels of North America are numbered (common practice). Boards elsewhere are numbered in
//! one row, circuit by circuit, or by letters; there a circuit has one number whatever its poles.

use quarterturn_home::{Component, Home, Units};

/// Numbers beyond this are a slip of the pen.
pub(super) const MOST: u32 = 120;

/// How the places are numbered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Numbering {
    /// Odd ones on the left, even ones on the right.
    Sides,
    /// In one row.
    InARow,
    /// In one row, by letters.
    Letters,
}

/// The places that a number names: `9,11`, `1-3`, `4A`, `F4`, or `C` where letters are used.
pub(super) fn places(numbering: Numbering, number: &str) -> Vec<u32> {
    let pieces: Vec<&str> =
        number.split(|c: char| !c.is_alphanumeric()).filter(|piece| !piece.is_empty()).collect();
    if numbering == Numbering::Letters {
        let letters: Option<Vec<u32>> = pieces.iter().map(|piece| letter(piece)).collect();
        return letters.unwrap_or_default();
    }
    let found: Option<Vec<u32>> = pieces.iter().map(|piece| digits(piece)).collect();
    let found = found.unwrap_or_default();
    if let (&[low, high], true) = (found.as_slice(), number.contains('-')) {
        let is_every_other = numbering == Numbering::Sides && high.abs_diff(low) % 2 == 0;
        let step: u32 = if is_every_other { 2 } else { 1 };
        let between = (0_u32..4).map(|n| low + n * step).take_while(|place| *place < high);
        return between.chain([high]).collect();
    }
    found
}

/// The number of a piece such as `4`, `4A` or `F4`.
fn digits(piece: &str) -> Option<u32> {
    let letters = piece.chars().filter(|c| c.is_alphabetic()).count();
    let number = piece.trim_matches(char::is_alphabetic);
    let number = number.parse().ok().filter(|number| (1..=MOST).contains(number));
    number.filter(|_| letters <= 1)
}

/// The place of a letter: 1 for A.
fn letter(piece: &str) -> Option<u32> {
    let mut letters = piece.chars();
    match (letters.next(), letters.next()) {
        (Some(letter), None) if letter.is_ascii_alphabetic() => {
            Some(u32::from(letter.to_ascii_uppercase()) - u32::from('A') + 1)
        }
        _ => None,
    }
}

/// A place as the panel writes it.
pub(super) fn label(numbering: Numbering, place: u32) -> String {
    match numbering {
        Numbering::Letters => {
            let letter = char::from_u32(u32::from('A') + place.saturating_sub(1));
            letter.map_or_else(String::new, |letter| letter.to_string())
        }
        Numbering::Sides | Numbering::InARow => place.to_string(),
    }
}

/// How the places of a panel with these breakers are numbered.
pub(super) fn numbering(home: &Home, breakers: &[&Component]) -> Numbering {
    let any = |numbering| {
        breakers
            .iter()
            .any(|b| !places(numbering, b.circuit.as_deref().unwrap_or_default()).is_empty())
    };
    if !any(Numbering::Sides) && any(Numbering::Letters) {
        return Numbering::Letters;
    }
    match home.units {
        Units::Us => Numbering::Sides,
        Units::Si => Numbering::InARow,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_as_panels_write_them() {
        for (number, found) in [
            ("9", &[9][..]),
            ("9,11", &[9, 11]),
            ("1 & 3", &[1, 3]),
            ("1-5", &[1, 3, 5]),
            ("4A", &[4]),
            ("F4", &[4]),
            ("range block", &[]),
            ("C", &[]),
            ("0", &[]),
            ("999", &[]),
            ("", &[]),
        ] {
            assert_eq!(places(Numbering::Sides, number), found, "{number}");
        }
        assert_eq!(places(Numbering::InARow, "1-3"), [1, 2, 3]);
        assert_eq!(places(Numbering::Letters, "c"), [3]);
        assert_eq!(places(Numbering::Letters, "A,B"), [1, 2]);
        assert_eq!(label(Numbering::Letters, 3), "C");
    }
}
