//! Finding a spot by what someone types in a hurry.

/// True if each word of `query` is found in `text`, whatever the case, in any order, with a slip of
/// the finger forgiven in longer words.
pub(crate) fn matches(query: &str, text: &str) -> bool {
    let text = text.to_lowercase();
    let words: Vec<&str> = split(&text).collect();
    let query = query.to_lowercase();
    split(&query)
        .all(|wanted| text.contains(wanted) || words.iter().any(|word| is_nearly(wanted, word)))
}

/// The words of a text, in small letters and with single spaces between.
pub(crate) fn plain(text: &str) -> String {
    split(&text.to_lowercase()).collect::<Vec<_>>().join(" ")
}

fn split(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty())
}

/// True if `wanted` is the beginning of `word`, but for the slips that its length allows: none up to
/// three letters, one up to six, two beyond.
fn is_nearly(wanted: &str, word: &str) -> bool {
    let wanted: Vec<char> = wanted.chars().collect();
    let word: Vec<char> = word.chars().collect();
    let allowed = match wanted.len() {
        0..=3 => return false,
        4..=6 => 1,
        _ => 2,
    };
    slips_to_a_beginning(&wanted, &word) <= allowed
}

/// Fewest letters to put in, leave out, change or swap with the next to make `wanted` the beginning
/// of `word`.
fn slips_to_a_beginning(wanted: &[char], word: &[char]) -> usize {
    let mut before: Vec<usize> = Vec::new();
    let mut last: Vec<usize> = (0..=word.len()).collect();
    for (i, letter) in wanted.iter().enumerate() {
        let mut row = vec![i + 1];
        for (j, other) in word.iter().enumerate() {
            let at = |row: &[usize], j: usize| row.get(j).copied().unwrap_or(usize::MAX / 2);
            let mut best = at(&last, j) + usize::from(letter != other);
            best = best.min(at(&last, j + 1) + 1).min(at(&row, j) + 1);
            let swapped = i > 0
                && j > 0
                && wanted.get(i - 1) == Some(other)
                && word.get(j - 1) == Some(letter);
            if swapped {
                best = best.min(at(&before, j - 1) + 1);
            }
            row.push(best);
        }
        before = std::mem::replace(&mut last, row);
    }
    last.into_iter().min().unwrap_or(wanted.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_what_was_meant() {
        let text = "W12 Cold stop under the sink Kitchen";
        for query in ["", "w12", "sink kit", "KITCHEN cold", "kitchn", "kithcen", "undr", "stpo"] {
            assert!(matches(query, text), "{query}");
        }
    }

    #[test]
    fn does_not_find_everything() {
        let text = "W12 Cold stop under the sink Kitchen";
        for query in ["w13", "bath", "hot", "sink bath", "shower", "chicken"] {
            assert!(!matches(query, text), "{query}");
        }
    }
}
