//! Everything that edits and differences say has words in the catalogue.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use quarterturn_home::{CannotEdit, Change, Home, Value, What, Words};

static ENGLISH: LazyLock<FluentBundle<FluentResource>> = LazyLock::new(|| {
    let mut bundle = FluentBundle::new_concurrent(vec!["en".parse().unwrap()]);
    for text in [
        include_str!("../../../../assets/text/en/window.ftl"),
        include_str!("../../../../assets/text/en/mapping.ftl"),
        include_str!("../../../../assets/text/en/guidance.ftl"),
        include_str!("../../../../assets/text/en/problems.ftl"),
    ] {
        let resource = match FluentResource::try_new(text.to_owned()) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        bundle.add_resource_overriding(resource);
    }
    bundle
});

/// The catalogue has the text, and the fills are all its places.
#[track_caller]
pub(crate) fn has_words((key, fills): &Words) {
    let message = ENGLISH.get_message(key).unwrap_or_else(|| panic!("no text {key}"));
    let mut args = FluentArgs::new();
    for (name, value) in fills {
        args.set(*name, FluentValue::from(value.as_str()));
    }
    let mut errors = Vec::new();
    ENGLISH.format_pattern(message.value().unwrap(), Some(&args), &mut errors);
    assert!(errors.is_empty(), "{key}: {errors:?}");
}

#[track_caller]
pub(crate) fn says_why_not(why: &CannotEdit, home: &Home) {
    if let CannotEdit::Unfit(problem) = why {
        let key = format!("problem-{}", problem.key);
        assert!(ENGLISH.has_message(&key), "no text {key}");
    }
    has_words(&why.words(home));
}

/// Every field and every name of the model that differs has words.
#[track_caller]
pub(crate) fn tells(change: &Change) {
    let What::Changed(fields) = &change.what else { return };
    let mut missing = BTreeSet::new();
    for field in fields {
        let key = format!("change-of-{}", field.field.replace('_', "-"));
        if !ENGLISH.has_message(&key) {
            missing.insert(key);
        }
        for value in [&field.before, &field.after].into_iter().flatten() {
            words_of(value, &mut missing);
        }
    }
    assert!(missing.is_empty(), "no texts {missing:?}");
}

fn words_of(value: &Value, missing: &mut BTreeSet<String>) {
    match value {
        Value::Word(word, _) => {
            let kebab: String = word
                .char_indices()
                .flat_map(|(i, c)| {
                    let hyphen = (i > 0 && c.is_ascii_uppercase()).then_some('-');
                    hyphen.into_iter().chain([c.to_ascii_lowercase()])
                })
                .collect();
            let has = |sort: &str| ENGLISH.has_message(&format!("{sort}-{kebab}"));
            if !["change-word", "kind", "medium", "role"].into_iter().any(has) {
                missing.insert(format!("change-word-{kebab}"));
            }
        }
        Value::List(values) => values.iter().for_each(|value| words_of(value, missing)),
        Value::Text(_) | Value::Number(_) | Value::Yes(_) | Value::Point(_) => {}
    }
}
