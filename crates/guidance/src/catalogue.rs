//! Every text that a person reads, by key.
//!
//! The texts are Fluent resources in `assets/text/<language>/`. A text has places for names and
//! numbers, so that no sentence is built by gluing words and every one can be translated.

use std::borrow::Cow;
use std::fmt;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use quarterturn_home::Problem;

/// The texts of one language.
pub struct Catalogue {
    bundle: FluentBundle<FluentResource>,
    language: &'static str,
}

/// What fills a place in a text.
pub type Fill<'a> = (&'a str, FluentValue<'a>);

/// The texts of a language, one string a file.
struct Language {
    tag: &'static str,
    files: &'static [&'static str],
}

const LANGUAGES: &[Language] = &[Language {
    tag: "en",
    files: &[
        include_str!("../../../assets/text/en/guidance.ftl"),
        include_str!("../../../assets/text/en/problems.ftl"),
        include_str!("../../../assets/text/en/check.ftl"),
        include_str!("../../../assets/text/en/window.ftl"),
        include_str!("../../../assets/text/en/command-line.ftl"),
    ],
}];

impl Catalogue {
    /// The catalogue in English.
    #[must_use]
    pub fn english() -> Self {
        Self::load(&LANGUAGES[0])
    }

    /// The catalogue in the language of a BCP 47 tag, such as `en` or `en-US`; English if there is
    /// none in that language.
    #[must_use]
    pub fn in_language(tag: &str) -> Self {
        let wanted = tag.split(['-', '_']).next().unwrap_or_default().to_lowercase();
        LANGUAGES.iter().find(|l| l.tag == wanted).map_or_else(Self::english, Self::load)
    }

    fn load(language: &Language) -> Self {
        let locale = language.tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        // The marks would show as boxes in fonts that lack them.
        bundle.set_use_isolating(false);
        for file in language.files {
            // A faulty entry is left out by the parser; a test reads every file strictly.
            let resource = match FluentResource::try_new((*file).to_owned()) {
                Ok(resource) | Err((resource, _)) => resource,
            };
            bundle.add_resource_overriding(resource);
        }
        Self { bundle, language: language.tag }
    }

    /// Tag of the language.
    #[must_use]
    pub fn language(&self) -> &'static str {
        self.language
    }

    /// True if there is a text with this key.
    #[must_use]
    pub fn has(&self, key: &str) -> bool {
        self.bundle.has_message(key)
    }

    /// The text with this key, which has no places to fill.
    #[must_use]
    pub fn text(&self, key: &str) -> String {
        self.fill(key, &[])
    }

    /// The text with this key, its places filled. A missing text shows as its key in brackets.
    #[must_use]
    pub fn fill(&self, key: &str, fills: &[Fill<'_>]) -> String {
        let Some(pattern) = self.bundle.get_message(key).and_then(|message| message.value()) else {
            return format!("[{key}]");
        };
        let args: FluentArgs<'_> =
            fills.iter().map(|(name, value)| (Cow::Borrowed(*name), value.clone())).collect();
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(&args), &mut errors);
        // An empty place leaves its blank behind, and a name may have brought some of its own.
        let mut text = text.trim().to_owned();
        while text.contains("  ") {
            text = text.replace("  ", " ");
        }
        text
    }

    /// Items as a list in a sentence: "a, b and c".
    #[must_use]
    pub fn list(&self, items: &[String]) -> String {
        match items {
            [] => String::new(),
            [only] => only.clone(),
            [first, last] => self.fill("list-two", &[fill("first", first), fill("last", last)]),
            [first, rest @ ..] => {
                let rest = self.list(rest);
                let key = if items.len() == 3 { "list-more-last" } else { "list-more" };
                self.fill(key, &[fill("first", first), fill("rest", &rest)])
            }
        }
    }

    /// What is wrong with a home file.
    #[must_use]
    pub fn problem_cause(&self, problem: &Problem) -> String {
        self.problem_text(problem, "")
    }

    /// What to do about it.
    #[must_use]
    pub fn problem_remedy(&self, problem: &Problem) -> String {
        self.problem_text(problem, "-remedy")
    }

    fn problem_text(&self, problem: &Problem, part: &str) -> String {
        let fills: Vec<Fill<'_>> =
            problem.args.iter().map(|(name, value)| fill(name, value)).collect();
        self.fill(&format!("problem-{}{part}", problem.key), &fills)
    }

    /// What is wrong with a home file and what to do about it, on one line with its place.
    #[must_use]
    pub fn problem(&self, problem: &Problem) -> String {
        let (cause, remedy) = (self.problem_cause(problem), self.problem_remedy(problem));
        let key = match problem.severity {
            quarterturn_home::Severity::Error => "problem-line-error",
            quarterturn_home::Severity::Warning => "problem-line-warning",
        };
        self.fill(
            key,
            &[
                fill("file", &problem.file),
                fill("line", &problem.line.to_string()),
                fill("column", &problem.column.to_string()),
                fill("cause", &cause),
                fill("remedy", &remedy),
            ],
        )
    }
}

/// A place filled with text.
#[must_use]
pub fn fill<'a>(name: &'a str, value: &str) -> Fill<'a> {
    (name, FluentValue::from(value.to_owned()))
}

/// A place filled with a number, so that the text can choose singular or plural by it.
#[must_use]
pub fn count<'a>(name: &'a str, value: f64) -> Fill<'a> {
    (name, FluentValue::from(value))
}

impl fmt::Debug for Catalogue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Catalogue").field("language", &self.language).finish_non_exhaustive()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_file_parses_and_no_key_stands_twice() {
        for language in LANGUAGES {
            let mut bundle =
                FluentBundle::<FluentResource>::new_concurrent(vec![language.tag.parse().unwrap()]);
            for file in language.files {
                let resource = FluentResource::try_new((*file).to_owned())
                    .map_err(|(_, errors)| errors)
                    .unwrap();
                bundle.add_resource(resource).unwrap();
            }
        }
    }

    #[test]
    fn lists_read_as_sentences() {
        let c = Catalogue::english();
        let items = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect::<Vec<_>>();
        assert_eq!(c.list(&items(&["a"])), "a");
        assert_eq!(c.list(&items(&["a", "b"])), "a and b");
        assert_eq!(c.list(&items(&["a", "b", "c"])), "a, b and c");
        assert_eq!(c.list(&items(&["a", "b", "c", "d"])), "a, b, c and d");
    }
}
