//! Text that someone typed, where it must stay text.

/// A text between the tags of HTML, or within a quoted attribute. What no page may hold (controls
/// but for line ends) becomes a blank.
pub(super) fn html(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            '\n' | '\u{2028}' | '\u{2029}' => safe.push('\n'),
            c if c.is_control() => safe.push(' '),
            c => safe.push(c),
        }
    }
    safe
}

/// JSON that may stand within a `script` element: none of what could end it, or start a comment in
/// it, and none of the line ends that old scripts do not know. All of these stand only within
/// strings, where JSON knows another way to write them (RFC 8259, section 7).
pub(super) fn json_in_script(json: &str) -> String {
    let mut safe = String::with_capacity(json.len());
    for c in json.chars() {
        match c {
            '<' => safe.push_str("\\u003c"),
            '>' => safe.push_str("\\u003e"),
            '&' => safe.push_str("\\u0026"),
            '\u{2028}' => safe.push_str("\\u2028"),
            '\u{2029}' => safe.push_str("\\u2029"),
            c => safe.push(c),
        }
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::*;

    const NASTY: &str = "</script><!--<script>alert('1')//\"&amp;\u{2028}\u{2029}\u{0}\u{1b}]]>";

    #[test]
    fn nothing_typed_becomes_a_tag() {
        let safe = html(NASTY);
        assert!(!safe.contains(['<', '>', '"', '\'', '\u{0}', '\u{1b}', '\u{2028}']), "{safe}");
        assert!(safe.contains("&amp;amp;"), "{safe}");
    }

    #[test]
    fn json_stays_json_and_ends_no_script() {
        let json = serde_json::to_string(&[NASTY]).unwrap();
        let safe = json_in_script(&json);
        assert!(!safe.contains(['<', '>', '&', '\u{2028}', '\u{2029}', '\u{0}']), "{safe}");
        let read: Vec<String> = serde_json::from_str(&safe).unwrap();
        assert_eq!(read, [NASTY]);
    }
}
