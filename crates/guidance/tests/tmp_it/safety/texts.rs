//! What every text of an answer is held to.

use super::Told;

/// No text is missing, unfilled, or padded.
pub(super) fn every_text_reads_well(told: &Told<'_>) -> Result<(), String> {
    let answer = told.answer;
    let mut texts: Vec<&str> = Vec::new();
    texts.extend(answer.cautions.iter().map(|caution| caution.text.as_str()));
    for step in &answer.steps {
        texts.push(&step.text);
        texts.extend(step.prove.as_deref());
    }
    texts.extend(answer.next_check.iter().map(|check| check.look_for.as_str()));
    texts.extend(answer.call.iter().flat_map(|call| [call.name.as_str(), call.why.as_str()]));
    texts.extend(answer.restore.iter().map(String::as_str));
    texts.into_iter().try_for_each(|text| match fault(text) {
        Some(fault) => Err(format!("{fault} in {text:?}")),
        None => Ok(()),
    })
}

fn fault(text: &str) -> Option<&'static str> {
    if text.is_empty() {
        return Some("nothing");
    }
    if text.trim() != text {
        return Some("blanks at an end");
    }
    if text.contains("  ") {
        return Some("a double blank");
    }
    if text.contains("{$") || text.contains("{ $") {
        return Some("an unfilled place");
    }
    let key = |word: &str| {
        !word.is_empty()
            && word.bytes().all(|b| b.is_ascii_lowercase() || b"-0123456789".contains(&b))
    };
    let bracketed =
        text.split('[').skip(1).filter_map(|rest| rest.split_once(']')).any(|(word, _)| key(word));
    bracketed.then_some("a missing text")
}

/// Every caution and every step can say where it comes from.
pub(super) fn every_id_has_a_source(told: &Told<'_>) -> Result<(), String> {
    let cautions = told.answer.cautions.iter().map(|caution| &caution.id);
    let steps = told.answer.steps.iter().map(|step| &step.id);
    cautions.chain(steps).try_for_each(|id| match quarterturn_guidance::source(id) {
        Some(source) if source.len() > 5 => Ok(()),
        _ => Err(format!("{id} has none")),
    })
}

#[test]
fn faults_are_found() {
    assert_eq!(fault("Close Tap 1 (W1). It is [here], in [Room 2]."), Some("a missing text"));
    assert_eq!(fault("[step-close]"), Some("a missing text"));
    assert_eq!(fault("Close  it."), Some("a double blank"));
    assert_eq!(fault("Close it. "), Some("blanks at an end"));
    assert_eq!(fault("Close {$device}."), Some("an unfilled place"));
    assert_eq!(fault("Close { braces } [Tap 1]."), None);
}
