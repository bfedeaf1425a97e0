//! What stands in the cells of a panel directory: circuit numbers, ratings, poles.

use crate::words::{folded, is};

/// A circuit as a directory writes it.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct CircuitText {
    /// Its text, such as `9,11,13`.
    pub(crate) text: String,
    /// How many poles the text names.
    pub(crate) poles: u32,
    /// Its numbers, where they are plain numbers.
    pub(crate) numbers: Vec<u32>,
}

/// Largest number of a circuit.
const MOST: u32 = 999;

/// The circuit that a cell names; `None` if it names none: empty, `<unnamed>`, or no number at all.
///
/// `9,11,13`, `9/11/13`, `1 & 3` and `1-3` (every other number, as the two columns of a panel are
/// numbered) are circuits of several poles; `7A` is one of a pair in one place; `F4` is a number too.
pub(crate) fn circuit(text: &str) -> Option<CircuitText> {
    if text.is_empty() || is(text, "words-unknown") {
        return None;
    }
    let mut plain = text.trim().trim_start_matches('#').trim().to_lowercase();
    for word in ["circuit", "circuito", "ckt", "cct", "no.", "n\u{ba}", "#"] {
        plain = plain.strip_prefix(word).unwrap_or(&plain).trim().to_owned();
    }
    let pieces: Vec<&str> = plain
        .split([',', ';', '/', '&', '+', ' '])
        .map(str::trim)
        .filter(|p| !p.is_empty())
        .collect();
    let (&[first, ..], true) = (pieces.as_slice(), pieces.len() <= 4) else { return None };
    if let (&[only], Some((low, high))) = (pieces.as_slice(), first.split_once('-'))
        && let (Some(low), Some(high)) = (whole(low), whole(high))
    {
        let step = if (high.saturating_sub(low)) % 2 == 0 { 2 } else { 1 };
        let poles = high.checked_sub(low)? / step + 1;
        let numbers: Vec<u32> = (0..poles).map(|n| low + n * step).collect();
        let fits = (2..=3).contains(&poles);
        return fits.then(|| CircuitText { text: only.to_owned(), poles, numbers });
    }
    let names: Option<Vec<String>> = pieces.iter().map(|piece| name(piece)).collect();
    let names = names?;
    let numbers: Vec<u32> = names.iter().filter_map(|n| n.parse().ok()).collect();
    let poles = u32::try_from(names.len()).ok()?;
    // Two halves of one place are two circuits, each of one pole.
    (poles <= 3).then(|| CircuitText { text: names.join(","), poles, numbers })
}

/// A single circuit name: a number, perhaps with a letter before or after it.
fn name(piece: &str) -> Option<String> {
    if let Some(number) = whole(piece) {
        return Some(number.to_string());
    }
    let (head, tail) = (piece.trim_end_matches(|c: char| c.is_ascii_alphabetic()), piece);
    let suffix = tail.get(head.len()..)?;
    if let Some(number) = whole(head)
        && suffix.len() == 1
    {
        return Some(format!("{number}{}", suffix.to_uppercase()));
    }
    let digits = piece.trim_start_matches(|c: char| c.is_ascii_alphabetic());
    let prefix = piece.get(..piece.len().checked_sub(digits.len())?)?;
    let number = whole(digits.trim_start_matches('-'))?;
    (1..=3).contains(&prefix.len()).then(|| format!("{}{number}", prefix.to_uppercase()))
}

/// A whole number from 1 to the largest of a circuit; `9.0` out of a spreadsheet is one.
fn whole(text: &str) -> Option<u32> {
    let text = text.strip_suffix(".0").unwrap_or(text);
    text.parse::<u32>().ok().filter(|n| (1..=MOST).contains(n))
}

/// The amperes, and poles if it tells them, of a rating such as `20`, `20 A`, `C16`, `2P20`, `20/2`.
/// `None` if it is none.
pub(crate) fn rating(text: &str) -> Option<(f64, Option<u32>)> {
    let text = text.trim().to_lowercase().replace(',', ".");
    let mut numbers: Vec<f64> = Vec::new();
    let mut words: Vec<String> = Vec::new();
    let mut token = String::new();
    let mut digits = false;
    for letter in text.chars().chain([' ']) {
        let is_digit = letter.is_ascii_digit() || (letter == '.' && digits);
        if !token.is_empty() && (is_digit != digits || !(is_digit || letter.is_alphabetic())) {
            if digits {
                numbers.push(token.trim_end_matches('.').parse().ok()?);
            } else {
                words.push(std::mem::take(&mut token));
            }
            token.clear();
        }
        if is_digit || letter.is_alphabetic() {
            token.push(letter);
            digits = is_digit;
        }
    }
    let known = |word: &String| {
        matches!(
            word.as_str(),
            "a" | "amp"
                | "amps"
                | "ampere"
                | "amperes"
                | "amperios"
                | "b"
                | "c"
                | "d"
                | "k"
                | "p"
                | "pole"
                | "poles"
                | "polos"
                | "polo"
                | "x"
        )
    };
    if !words.iter().all(known) {
        return None;
    }
    let poles = |n: f64| {
        [(1.0, 1), (2.0, 2), (3.0, 3), (4.0, 4)]
            .iter()
            .find(|(f, _)| (f - n).abs() < 1e-9)
            .map(|p| p.1)
    };
    let (amps, poles) = match numbers.as_slice() {
        [amps] => (*amps, None),
        [a, b] if poles(*a).is_some() && *b > 4.0 => (*b, poles(*a)),
        [a, b] if poles(*b).is_some() && *a > 4.0 => (*a, poles(*b)),
        _ => return None,
    };
    (1.0..=1200.0).contains(&amps).then_some((amps, poles))
}

/// The number of poles that a cell tells.
pub(crate) fn poles(text: &str) -> Option<u32> {
    if is(text, "words-yes-two-pole") {
        return Some(2);
    }
    let folded = folded(text);
    let digits: String = folded.chars().take_while(char::is_ascii_digit).collect();
    digits.parse().ok().filter(|n| (1..=4).contains(n))
}

/// A number of watts or volt-amperes.
pub(crate) fn watts(text: &str) -> Option<f64> {
    let text = text.to_lowercase().replace(',', ".");
    let number: String = text.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
    let rest = text.get(number.len()..)?.trim();
    let times = match rest {
        "" | "w" | "va" | "watts" | "watt" => 1.0,
        "kw" | "kva" => 1000.0,
        _ => return None,
    };
    number.parse::<f64>().ok().map(|n| n * times).filter(|n| (0.0..=100_000.0).contains(n))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn circuits_are_read_as_directories_write_them() {
        let is = |text: &str, wanted: &str, poles: u32| {
            let found = circuit(text).unwrap_or_else(|| panic!("{text}"));
            assert_eq!((found.text.as_str(), found.poles), (wanted, poles), "{text}");
        };
        is("9", "9", 1);
        is(" 9.0 ", "9", 1);
        is("#12", "12", 1);
        is("Circuit 4", "4", 1);
        is("9,11,13", "9,11,13", 3);
        is("1 & 3", "1,3", 2);
        is("1/3", "1,3", 2);
        is("1-3", "1-3", 2);
        is("1-5", "1-5", 3);
        is("7a", "7A", 1);
        is("F4", "F4", 1);
        assert_eq!(circuit("1-5").unwrap().numbers, [1, 3, 5]);
        for text in [
            "",
            "<unnamed>",
            "?",
            "n/a",
            "unknown",
            "sin nombre",
            "-",
            "Hall",
            "0",
            "5000",
            "3-1",
            "1-9",
            "1 2 3 4 5",
        ] {
            assert_eq!(circuit(text), None, "{text}");
        }
    }

    #[test]
    fn ratings_are_read_with_their_units_and_poles() {
        for (text, amps, poles) in [
            ("20", 20.0, None),
            ("20A", 20.0, None),
            ("15 amps", 15.0, None),
            ("C16", 16.0, None),
            ("B 16 A", 16.0, None),
            ("2P20", 20.0, Some(2)),
            ("20A 2P", 20.0, Some(2)),
            ("30/2", 30.0, Some(2)),
            ("0,5", 0.5, None),
            ("12,5 A", 12.5, None),
        ] {
            let found = rating(text);
            if amps < 1.0 {
                assert_eq!(found, None, "{text}");
            } else {
                assert_eq!(found, Some((amps, poles)), "{text}");
            }
        }
        for text in ["", "A", "big", "20 V", "9999", "20 15 10", "-"] {
            assert_eq!(rating(text), None, "{text}");
        }
    }

    #[test]
    fn poles_and_watts() {
        assert_eq!(["1", "2P", "2-pole", "DP", "3.0"].map(poles), [1, 2, 2, 2, 3].map(Some));
        assert_eq!(["", "many", "9"].map(poles), [None; 3]);
        assert_eq!(watts("180"), Some(180.0));
        assert_eq!(watts("1,5 kW"), Some(1500.0));
        assert_eq!(watts("lots"), None);
    }
}
