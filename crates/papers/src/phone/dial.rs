//! What a telephone dials for a number as people write it.

/// Fewest digits that are a number to dial: 112, 911.
const FEWEST: usize = 3;

/// The `tel:` address (RFC 3966) of a number, without its separators. Whatever follows the first
/// number (an extension, a second number, a remark) is left to be read. `None` if the text does not
/// begin with a number.
pub(super) fn tel(phone: &str) -> Option<String> {
    let mut number = String::from("tel:");
    let mut digits = 0;
    for c in phone.trim().chars() {
        match c {
            '0'..='9' => {
                number.push(c);
                digits += 1;
            }
            '+' if digits == 0 && !number.ends_with('+') => number.push(c),
            // RFC 3966, visual-separator, and what is written for them.
            '-' | '.' | '(' | ')' | ' ' | '\u{a0}' | '\u{2010}' | '\u{2011}' | '\u{2013}' | '/' => {
            }
            _ => break,
        }
    }
    (digits >= FEWEST).then_some(number)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_dialled_as_they_are_written() {
        for (written, dialled) in [
            ("911", Some("tel:911")),
            (" 555-0100 ", Some("tel:5550100")),
            ("+1 (555) 555-0105 ext. 3", Some("tel:+15555550105")),
            ("555.0100, nights 555.0101", Some("tel:5550100")),
            ("12", None),
            ("", None),
            ("ask the neighbor: 555-0109", None),
            ("javascript:alert(1)", None),
            ("\"><script>alert(1)</script>", None),
        ] {
            assert_eq!(tel(written).as_deref(), dialled, "{written}");
        }
    }
}
