//! A square code that holds a text itself (ISO/IEC 18004), so that a phone reads it without a network.

use std::fmt::Write as _;

use qrcode::{Color, EcLevel, QrCode};

/// Longest text, in bytes: as much as can still be read from a tag at arm's length.
pub(crate) const LONGEST: usize = 260;

/// The code of a text as a drawing. `None` if the text is too long for any code.
pub(crate) fn drawing(text: &str) -> Option<String> {
    /// Light modules around the code (ISO/IEC 18004, quiet zone).
    const QUIET: usize = 4;
    let code = QrCode::with_error_correction_level(text, EcLevel::M).ok()?;
    let width = code.width();
    let side = width + 2 * QUIET;
    let mut path = String::new();
    for (y, row) in code.to_colors().chunks(width).enumerate() {
        let mut x = 0;
        for run in row.chunk_by(|a, b| a == b) {
            if run.first() == Some(&Color::Dark) {
                let (left, top, length) = (x + QUIET, y + QUIET, run.len());
                // Nothing can go wrong when writing to a string.
                let _written = write!(path, "M{left} {top}h{length}v1h-{length}z");
            }
            x += run.len();
        }
    }
    Some(format!(
        r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}"><path fill="#fff" d="M0 0h{side}v{side}H0z"/><path fill="#000" d="{path}"/></svg>"##
    ))
}

/// The lines of a text, as many whole ones as a code may hold.
pub(crate) fn lines(lines: &[String]) -> String {
    let mut text = String::new();
    for line in lines.iter().filter(|line| !line.is_empty()) {
        let longer = text.len() + usize::from(!text.is_empty()) + line.len();
        if longer > LONGEST {
            continue;
        }
        if !text.is_empty() {
            text.push('\n');
        }
        text.push_str(line);
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_fit_is_left_out_by_whole_lines() {
        let long = "x".repeat(LONGEST);
        assert_eq!(lines(&["W1".to_owned(), long, "end".to_owned()]), "W1\nend");
        assert!(drawing("W1").unwrap().contains("<path"));
        assert_eq!(drawing(&"x".repeat(5000)), None);
    }
}
