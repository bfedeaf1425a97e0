//! What was perhaps meant by a word that nobody knows.

/// The candidate nearest to `word`, if one is near enough to be worth a question: at most a third of
/// the word may be wrong. Of several equally near ones, the first.
#[must_use]
pub fn nearest<'c>(word: &str, candidates: impl IntoIterator<Item = &'c str>) -> Option<&'c str> {
    let word: Vec<char> = word.to_lowercase().chars().collect();
    // Words are short. A longer one is a text that was put in the wrong place.
    if word.is_empty() || word.len() > 64 {
        return None;
    }
    let allowed = (word.len() / 3).max(1);
    candidates
        .into_iter()
        .filter(|candidate| candidate.len() <= 256)
        .map(|candidate| (candidate, candidate.to_lowercase().chars().collect::<Vec<_>>()))
        .filter(|(_, letters)| letters.len().abs_diff(word.len()) <= allowed)
        .map(|(candidate, letters)| (distance(&word, &letters), candidate))
        .filter(|(distance, _)| *distance <= allowed)
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, candidate)| candidate)
}

/// The `most` candidates nearest to `word`, best first, ties by name: for a list to choose from.
///
/// More forgiving than [`nearest`]: up to half of the word may be wrong, and a candidate that holds
/// the word, or is held by it, always counts.
#[must_use]
pub fn nearest_few<'c>(
    word: &str,
    candidates: impl IntoIterator<Item = &'c str>,
    most: usize,
) -> Vec<&'c str> {
    let lower = word.to_lowercase();
    let letters: Vec<char> = lower.chars().take(64).collect();
    let mut found: Vec<(usize, &str)> = candidates
        .into_iter()
        .filter_map(|candidate| {
            let other = candidate.to_lowercase();
            let held = !lower.is_empty() && (other.contains(&lower) || lower.contains(&other));
            let distance = distance(&letters, &other.chars().collect::<Vec<_>>());
            (held || distance * 2 <= letters.len()).then_some((distance, candidate))
        })
        .collect();
    found.sort_unstable();
    found.dedup();
    found.into_iter().take(most).map(|(_, candidate)| candidate).collect()
}

/// Fewest letters to add, drop, change or swap with their neighbour (optimal string alignment).
///
/// Time and space `O(a · b)`.
fn distance(a: &[char], b: &[char]) -> usize {
    let mut before: Vec<usize> = Vec::new();
    let mut last: Vec<usize> = (0..=b.len()).collect();
    for (i, letter) in a.iter().enumerate() {
        let mut row = Vec::with_capacity(last.len());
        row.push(i + 1);
        for (j, other) in b.iter().enumerate() {
            let at = |row: &[usize], k: usize| row.get(k).copied().unwrap_or(usize::MAX - 1);
            let changed = at(&last, j) + usize::from(letter != other);
            let mut best = changed.min(at(&last, j + 1) + 1).min(at(&row, j) + 1);
            let swapped = i > 0
                && j > 0
                && a.get(i - 1) == Some(other)
                && b.get(j - 1) == Some(letter)
                && letter != other;
            if swapped {
                best = best.min(at(&before, j - 1) + 1);
            }
            row.push(best);
        }
        before = std::mem::replace(&mut last, row);
    }
    last.last().copied().unwrap_or(a.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn letters(a: &str, b: &str) -> usize {
        distance(&a.chars().collect::<Vec<_>>(), &b.chars().collect::<Vec<_>>())
    }

    #[test]
    fn counts_each_slip_once() {
        assert_eq!(letters("kitten", "sitting"), 3);
        assert_eq!(letters("mian", "main"), 1);
        assert_eq!(letters("", "abc"), 3);
        assert_eq!(letters("abc", ""), 3);
        assert_eq!(letters("main", "main"), 0);
    }

    #[test]
    fn a_part_of_an_id_finds_all_that_hold_it() {
        let ids = ["kitchen-stop-cold", "kitchen-stop-hot", "laundry-valve"];
        assert_eq!(nearest_few("kitchen-stop", ids, 5), ["kitchen-stop-hot", "kitchen-stop-cold"]);
        assert!(nearest_few("xyzzy", ids, 5).is_empty());
    }

    #[test]
    fn a_slip_is_found_and_a_stranger_is_not() {
        let ids = ["stop-hot", "stop-cold", "main"];
        assert_eq!(nearest("stop-clod", ids), Some("stop-cold"));
        assert_eq!(nearest("MAIN", ids), Some("main"));
        assert_eq!(nearest("elephant", ids), None);
        assert_eq!(nearest("", ids), None);
        assert_eq!(nearest("x", []), None);
    }
}
