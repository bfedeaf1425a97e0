//! A distance as people write it: `12' 6 1/2"`, `12 ft 6 in`, `3.81 m`, `381 cm`, `3,81 m`.

use quarterturn_guidance::Catalogue;

use crate::Said;

/// Least and largest distance, in metres: no wall of a home is longer, and shorter ones measure nothing.
const SHORTEST_M: f64 = 0.1;
const LONGEST_M: f64 = 200.0;

/// Why a text is no distance.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum BadDistance {
    /// There is nothing.
    #[error("there is no distance")]
    Empty,
    /// A number without a unit, which could be anything.
    #[error("{0:?} has no unit")]
    NoUnit(String),
    /// A unit, or anything else, where a number should be.
    #[error("{0:?} stands where a number should be")]
    NoNumber(String),
    /// Something that is neither a number nor a unit.
    #[error("{0:?} is no unit")]
    Unknown(String),
    /// A fraction of nothing, or whose parts are no whole numbers.
    #[error("{0:?} is no fraction")]
    BadFraction(String),
    /// Units that do not follow each other, such as inches before feet.
    #[error("{0:?} cannot stand after what is before it")]
    BadOrder(String),
    /// More inches than a foot has, or more centimetres than a metre.
    #[error("{0:?} is more than one of the unit before it")]
    TooMany(String),
    /// Shorter than anything on a plan.
    #[error("{0} m is too short")]
    TooShort(f64),
    /// Longer than any home.
    #[error("{0} m is too long")]
    TooLong(f64),
}

impl BadDistance {
    /// What is wrong, and what to do about it.
    #[must_use]
    pub fn told(&self, words: &Catalogue) -> String {
        self.said().text(words)
    }

    /// The same in no language yet.
    #[must_use]
    pub fn said(&self) -> Said {
        let found = |key, found: &String| Said::new(key).with("found", found);
        // In text, so that very small ones are not shown as nothing.
        let metres = |key, metres: &f64| Said::new(key).with("metres", format!("{metres}"));
        match self {
            Self::Empty => Said::new("picture-distance-empty"),
            Self::NoUnit(text) => found("picture-distance-no-unit", text),
            Self::NoNumber(text) => found("picture-distance-no-number", text),
            Self::Unknown(text) => found("picture-distance-unknown", text),
            Self::BadFraction(text) => found("picture-distance-fraction", text),
            Self::BadOrder(text) => found("picture-distance-order", text),
            Self::TooMany(text) => found("picture-distance-too-many", text),
            Self::TooShort(short) => metres("picture-distance-short", short),
            Self::TooLong(long) => metres("picture-distance-long", long),
        }
    }
}

/// Reads a distance in metres. A comma is a decimal point. Inches may follow feet without their sign.
///
/// # Errors
/// If it is no distance, or none that a home could have.
///
/// ```
/// use quarterturn_mapping::read_distance;
/// assert!((read_distance("12' 6 1/2\"")? - 3.8227).abs() < 1e-9);
/// assert!((read_distance("3,81 m")? - 3.81).abs() < 1e-9);
/// # Ok::<(), quarterturn_mapping::BadDistance>(())
/// ```
pub fn read_distance(text: &str) -> Result<f64, BadDistance> {
    let words = words(text);
    if words.is_empty() {
        return Err(BadDistance::Empty);
    }
    let mut words = words.iter().peekable();
    let mut before: Option<Unit> = None;
    let mut metres = 0.0;
    while words.peek().is_some() {
        let (number, mut written) = number(&mut words)?;
        let unit = match words.next() {
            Some(Word::Unit(text)) => {
                let unit = Unit::of(text).ok_or_else(|| BadDistance::Unknown(text.clone()))?;
                written = format!("{written} {text}");
                unit
            }
            // 12' 6
            None if before == Some(Unit::Foot) => Unit::Inch,
            _ => return Err(BadDistance::NoUnit(written)),
        };
        match before {
            Some(before) if !before.is_followed_by(unit) => {
                return Err(BadDistance::BadOrder(written));
            }
            Some(before) if number * unit.metres() >= before.metres() => {
                return Err(BadDistance::TooMany(written));
            }
            Some(_) | None => {}
        }
        metres += number * unit.metres();
        before = Some(unit);
    }
    if metres < SHORTEST_M {
        Err(BadDistance::TooShort(metres))
    } else if metres > LONGEST_M {
        Err(BadDistance::TooLong(metres))
    } else {
        Ok(metres)
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unit {
    Foot,
    Inch,
    Metre,
    Centimetre,
    Millimetre,
}

impl Unit {
    /// The unit with this name, in English or Spanish.
    fn of(name: &str) -> Option<Self> {
        Some(match name.trim_end_matches('.') {
            "'" | "ft" | "foot" | "feet" | "pie" | "pies" => Self::Foot,
            "\"" | "in" | "inch" | "inches" | "pulgada" | "pulgadas" | "pulg" => Self::Inch,
            "m" | "meter" | "meters" | "metre" | "metres" | "metro" | "metros" => Self::Metre,
            "cm" | "centimeter" | "centimeters" | "centimetre" | "centimetres" | "centímetro"
            | "centímetros" => Self::Centimetre,
            "mm" | "millimeter" | "millimeters" | "millimetre" | "millimetres" | "milímetro"
            | "milímetros" => Self::Millimetre,
            _ => return None,
        })
    }

    /// The foot and the inch are defined by the metre (international yard and pound agreement, 1959).
    fn metres(self) -> f64 {
        match self {
            Self::Foot => 0.3048,
            Self::Inch => 0.0254,
            Self::Metre => 1.0,
            Self::Centimetre => 0.01,
            Self::Millimetre => 0.001,
        }
    }

    fn is_followed_by(self, next: Self) -> bool {
        matches!((self, next), (Self::Foot, Self::Inch) | (Self::Metre, Self::Centimetre))
    }
}

/// A piece of the text.
#[derive(Debug, Clone, PartialEq)]
enum Word {
    /// Digits, with a point or without.
    Number(String),
    /// The stroke of a fraction.
    Stroke,
    /// Anything else: a unit, it is hoped.
    Unit(String),
}

/// The next number: whole, with decimals, a fraction, or a whole number and a fraction. Also as it was
/// written.
fn number<'w>(
    words: &mut std::iter::Peekable<impl Iterator<Item = &'w Word> + Clone>,
) -> Result<(f64, String), BadDistance> {
    let first = match words.next() {
        Some(Word::Number(text)) => text,
        Some(Word::Unit(text)) => return Err(BadDistance::NoNumber(text.clone())),
        Some(Word::Stroke) => return Err(BadDistance::NoNumber("/".to_owned())),
        None => return Err(BadDistance::Empty),
    };
    let mut ahead = words.clone();
    match (ahead.next(), ahead.next()) {
        (Some(Word::Stroke), _) => {
            words.next();
            let (value, below) = fraction(first, words.next())?;
            Ok((value, format!("{first}/{below}")))
        }
        (Some(Word::Number(above)), Some(Word::Stroke)) => {
            words.next();
            words.next();
            let (value, below) = fraction(above, words.next())?;
            let written = format!("{first} {above}/{below}");
            if first.contains('.') || value >= 1.0 {
                return Err(BadDistance::BadFraction(written));
            }
            Ok((decimal(first)? + value, written))
        }
        _ => Ok((decimal(first)?, first.clone())),
    }
}

fn fraction(above: &str, below: Option<&Word>) -> Result<(f64, String), BadDistance> {
    let below = match below {
        Some(Word::Number(text) | Word::Unit(text)) => text.as_str(),
        Some(Word::Stroke) => "/",
        None => "",
    };
    let bad = || BadDistance::BadFraction(format!("{above}/{below}"));
    let whole = |text: &str| text.parse::<u32>().map_err(|_error| bad());
    let (value, by) = (whole(above)?, whole(below)?);
    if by == 0 { Err(bad()) } else { Ok((f64::from(value) / f64::from(by), below.to_owned())) }
}

fn decimal(text: &str) -> Result<f64, BadDistance> {
    text.parse().map_err(|_error| BadDistance::NoNumber(text.to_owned()))
}

/// The pieces of a text, with the many signs for the same thing made one.
fn words(text: &str) -> Vec<Word> {
    let mut words: Vec<Word> = Vec::new();
    let mut word = String::new();
    let finish = |word: &mut String, words: &mut Vec<Word>| {
        if word.is_empty() {
            return;
        }
        let text = std::mem::take(word);
        let is_number = text.starts_with(|c: char| c.is_ascii_digit() || c == '.')
            && text.contains(|c: char| c.is_ascii_digit());
        words.push(if is_number { Word::Number(text) } else { Word::Unit(text) });
    };
    let plain = text.to_lowercase().replace("''", "\"").replace("\u{2032}\u{2032}", "\"");
    for c in plain.chars() {
        let c = match c {
            '\u{2018}' | '\u{2019}' | '\u{2032}' | '\u{b4}' | '`' => '\'',
            '\u{201c}' | '\u{201d}' | '\u{2033}' => '"',
            ',' => '.',
            '\u{2044}' | '\u{2215}' => '/',
            other => other,
        };
        if let Some((above, below)) = printed_fraction(c) {
            finish(&mut word, &mut words);
            words.extend([
                Word::Number(above.to_owned()),
                Word::Stroke,
                Word::Number(below.to_owned()),
            ]);
            continue;
        }
        // A dash binds what belongs together: 12'-6", 6-1/2".
        let is_binding =
            matches!(c, '-' | '\u{2010}'..='\u{2013}') && (!words.is_empty() || !word.is_empty());
        let is_number = |c: char| c.is_ascii_digit() || c == '.';
        match c {
            _ if c.is_whitespace() || is_binding => finish(&mut word, &mut words),
            '\'' | '"' => {
                finish(&mut word, &mut words);
                words.push(Word::Unit(c.to_string()));
            }
            '/' => {
                finish(&mut word, &mut words);
                words.push(Word::Stroke);
            }
            _ => {
                // 12ft: a number ends where letters begin, and the other way round; a point after a
                // unit ends it.
                let in_number = word.starts_with(is_number);
                let is_point_of_unit = c == '.' && !word.is_empty() && !in_number;
                if !word.is_empty() && in_number != is_number(c) && !is_point_of_unit {
                    finish(&mut word, &mut words);
                }
                word.push(c);
            }
        }
    }
    finish(&mut word, &mut words);
    words
}

fn printed_fraction(c: char) -> Option<(&'static str, &'static str)> {
    Some(match c {
        '\u{bd}' => ("1", "2"),
        '\u{bc}' => ("1", "4"),
        '\u{be}' => ("3", "4"),
        '\u{215b}' => ("1", "8"),
        '\u{215c}' => ("3", "8"),
        '\u{215d}' => ("5", "8"),
        '\u{215e}' => ("7", "8"),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    /// Worked out by hand: 1 in = 25.4 mm, 1 ft = 304.8 mm.
    #[test]
    fn distances_are_read_as_people_write_them() {
        for (text, millimetres) in [
            ("12' 6 1/2\"", 3822.7),
            ("12'6\u{bd}\"", 3822.7),
            ("12'-6 1/2\"", 3822.7),
            ("12\u{2019} 6\u{201d}", 3810.0),
            ("12\u{2032}6\u{2033}", 3810.0),
            ("12' 6''", 3810.0),
            ("12 ft 6 in", 3810.0),
            ("12ft. 6in.", 3810.0),
            ("12 FEET 6 inches", 3810.0),
            ("12 pies 6 pulgadas", 3810.0),
            ("12' 6", 3810.0),
            ("12'", 3657.6),
            ("12.5 ft", 3810.0),
            ("12 1/2'", 3810.0),
            ("150 in", 3810.0),
            ("6-1/2\"", 165.1),
            ("3/4 ft", 228.6),
            ("30 \u{be} in", 781.05),
            ("3.81 m", 3810.0),
            ("3,81 m", 3810.0),
            ("3.81m", 3810.0),
            ("3.81 metres", 3810.0),
            ("381 cm", 3810.0),
            ("381,5cm", 3815.0),
            ("3810 mm", 3810.0),
            ("3 m 81 cm", 3810.0),
            (" 4 metros ", 4000.0),
            (".5 m", 500.0),
        ] {
            let metres = read_distance(text).unwrap_or_else(|error| panic!("{text}: {error}"));
            assert!((metres * 1000.0 - millimetres).abs() < 1e-9, "{text}: {metres}");
        }
    }

    #[test]
    fn what_is_no_distance_is_refused_with_its_reason() {
        let text = |s: &str| s.to_owned();
        for (written, error) in [
            ("", BadDistance::Empty),
            ("  ", BadDistance::Empty),
            ("12", BadDistance::NoUnit(text("12"))),
            ("12 6", BadDistance::NoUnit(text("12"))),
            ("6 1/2", BadDistance::NoUnit(text("6 1/2"))),
            ("12' 6 7", BadDistance::NoUnit(text("6"))),
            ("ft", BadDistance::NoNumber(text("ft"))),
            ("/2 ft", BadDistance::NoNumber(text("/"))),
            ("1.2.3 m", BadDistance::NoNumber(text("1.2.3"))),
            ("1.250,5 m", BadDistance::NoNumber(text("1.250.5"))),
            ("-3 m", BadDistance::NoNumber(text("-"))),
            ("12 yd", BadDistance::Unknown(text("yd"))),
            ("12 ft 6 x", BadDistance::Unknown(text("x"))),
            ("1/0 ft", BadDistance::BadFraction(text("1/0"))),
            ("1/ ft", BadDistance::BadFraction(text("1/ft"))),
            ("6 3/2 in", BadDistance::BadFraction(text("6 3/2"))),
            ("6.5 1/2 in", BadDistance::BadFraction(text("6.5 1/2"))),
            ("6 in 12 ft", BadDistance::BadOrder(text("12 ft"))),
            ("3 m 6 in", BadDistance::BadOrder(text("6 in"))),
            ("3 m 2 m", BadDistance::BadOrder(text("2 m"))),
            ("12' 14\"", BadDistance::TooMany(text("14 \""))),
            ("3 m 150 cm", BadDistance::TooMany(text("150 cm"))),
            ("0 m", BadDistance::TooShort(0.0)),
            ("5 cm", BadDistance::TooShort(0.05)),
            ("900 m", BadDistance::TooLong(900.0)),
        ] {
            assert_eq!(read_distance(written), Err(error), "{written}");
        }
    }

    #[test]
    fn each_reason_is_told_in_every_language() {
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            let found = || "12 yd".to_owned();
            for bad in [
                BadDistance::NoUnit(found()),
                BadDistance::NoNumber(found()),
                BadDistance::Unknown(found()),
                BadDistance::BadFraction(found()),
                BadDistance::BadOrder(found()),
                BadDistance::TooMany(found()),
            ] {
                let text = bad.told(&words);
                assert!(text.contains("12 yd") && !text.contains(['{', '[']), "{text}");
            }
            for bad in
                [BadDistance::Empty, BadDistance::TooShort(0.05), BadDistance::TooLong(900.0)]
            {
                let text = bad.told(&words);
                assert!(text.len() > 20 && !text.contains(['{', '[']), "{text}");
            }
        }
    }

    proptest! {
        #[test]
        fn feet_and_inches_come_back(feet in 1u32..100, inches in 0u32..12, eighths in 0u32..8) {
            let right = f64::from(feet) * 0.3048 + (f64::from(inches) + f64::from(eighths) / 8.0) * 0.0254;
            let text = format!("{feet}' {inches} {eighths}/8\"");
            prop_assert!((read_distance(&text).unwrap() - right).abs() < 1e-9);
        }

        #[test]
        fn any_text_is_read_without_panic(text in "\\PC{0,20}|[0-9 ./,'\"ftincm-]{0,12}") {
            if let Ok(metres) = read_distance(&text) {
                prop_assert!((SHORTEST_M..=LONGEST_M).contains(&metres));
            }
        }
    }
}
