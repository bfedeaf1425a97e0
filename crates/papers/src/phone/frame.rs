//! The file around the data: head, policy, style, script.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use quarterturn_guidance::{Catalogue, fill};
use quarterturn_home::{Date, Home};
use sha2::{Digest as _, Sha256};

use super::escape::html;
use super::first_acts::FirstActs;

const FRAME: &str = include_str!("../../../../assets/phone/page.html");
const STYLE: &str = include_str!("../../../../assets/phone/page.css");
const SCRIPT: &str = include_str!("../../../../assets/phone/page.js");
const SIGNS: &str = include_str!("../../../../assets/phone/signs.svg");

/// The whole file.
pub(super) fn page(
    home: &Home,
    catalogues: &[Catalogue],
    today: Date,
    acts: &FirstActs<'_>,
    data: &str,
) -> String {
    let own = home.language.as_deref().and_then(Catalogue::find);
    let own = own.map_or("en", |words| words.language());
    let words = Catalogue::in_language(own);
    let title = words.fill("phone-title", &[fill("home", &home.name)]);
    // The home's own language first: it is what is read where no script runs.
    let mut order: Vec<usize> = (0..catalogues.len()).collect();
    order.sort_by_key(|&at| catalogues.get(at).is_none_or(|c| c.language() != own));
    let plain: String = order
        .into_iter()
        .filter_map(|at| Some((at, catalogues.get(at)?)))
        .map(|(at, words)| {
            let made = words.fill("phone-made-on", &[fill("date", &today.to_string())]);
            format!(
                "<div class=\"plain\" lang=\"{}\">\n{}<p class=\"soft\">{}</p>\n</div>\n",
                words.language(),
                acts.to_html(at),
                html(&made),
            )
        })
        .collect();
    fill_in(FRAME, |place| match place {
        "language" => own.to_owned(),
        "title" => html(&title),
        "policy" => policy(),
        "style" => STYLE.to_owned(),
        "signs" => SIGNS.to_owned(),
        "plain" => plain.clone(),
        "data" => data.to_owned(),
        "script" => SCRIPT.to_owned(),
        _ => String::new(),
    })
}

/// What the page may do (Content Security Policy Level 3): its own script and style, by their hashes,
/// and pictures that stand in it. Nothing may be fetched, sent or framed.
fn policy() -> String {
    let hash = |text: &str| STANDARD.encode(Sha256::digest(text.as_bytes()));
    format!(
        "default-src 'none'; script-src 'sha256-{}'; style-src 'sha256-{}'; img-src data:; base-uri 'none'; form-action 'none'",
        hash(SCRIPT),
        hash(STYLE),
    )
}

/// The frame with its places filled, in one pass: what is filled in is not looked through again.
fn fill_in(frame: &str, fill: impl Fn(&str) -> String) -> String {
    let mut page = String::new();
    let mut rest = frame;
    while let Some((before, after)) = rest.split_once("[[") {
        page.push_str(before);
        match after.split_once("]]") {
            Some((place, behind)) => {
                page.push_str(&fill(place));
                rest = behind;
            }
            None => rest = after,
        }
    }
    page.push_str(rest);
    page
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_filled_in_is_not_looked_through_again() {
        assert_eq!(fill_in("a [[x]] b [[y]]", |place| format!("[[{place}]]")), "a [[x]] b [[y]]");
    }

    /// What would end the element it stands in.
    #[test]
    fn style_and_script_end_where_they_end() {
        assert!(!STYLE.contains("</") && !SCRIPT.contains("</") && !SCRIPT.contains("<!--"));
        assert!(!STYLE.contains("@import") && !STYLE.contains("url("));
    }

    /// Nothing that could reach out, and nothing that makes code or markup of text.
    #[test]
    fn the_script_makes_no_markup_of_text() {
        for word in [
            "innerHTML",
            "outerHTML",
            "insertAdjacent",
            "document.write",
            "eval(",
            "Function(",
            "fetch(",
            "XMLHttpRequest",
            "sendBeacon",
            "WebSocket",
            "import(",
            "http:",
            "https:",
            "localStorage",
            "cookie",
        ] {
            let found = SCRIPT.replace("http://www.w3.org/2000/svg", "").contains(word);
            assert!(!found, "{word}");
        }
    }

    /// SHA-256 of nothing: FIPS 180-4 example values, in Base64.
    #[test]
    fn the_hash_is_the_one_that_browsers_take() {
        let empty = STANDARD.encode(Sha256::digest(b""));
        assert_eq!(empty, "47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=");
    }
}
