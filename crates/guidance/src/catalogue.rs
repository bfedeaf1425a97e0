//! Every text that a person reads, by key.
//!
//! The texts are Fluent resources in `assets/text/<language>/`. A text has places for names and
//! numbers, so that no sentence is built by gluing words and every one can be translated.

use std::borrow::Cow;
use std::fmt;
use std::sync::LazyLock;

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

/// A language that there are texts in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Language {
    /// Its BCP 47 tag.
    pub tag: &'static str,
    /// What it calls itself.
    pub name: String,
}

/// The texts of a language, one string a file.
struct Texts {
    tag: &'static str,
    files: &'static [&'static str],
}

/// The first is the one that stands in for the others.
const LANGUAGES: &[Texts] = &[
    Texts {
        tag: "en",
        files: &[
            include_str!("../../../assets/text/en/guidance.ftl"),
            include_str!("../../../assets/text/en/problems.ftl"),
            include_str!("../../../assets/text/en/check.ftl"),
            include_str!("../../../assets/text/en/window.ftl"),
            include_str!("../../../assets/text/en/command-line.ftl"),
            include_str!("../../../assets/text/en/papers.ftl"),
            include_str!("../../../assets/text/en/upkeep.ftl"),
            include_str!("../../../assets/text/en/mapping.ftl"),
        ],
    },
    Texts {
        tag: "es",
        files: &[
            include_str!("../../../assets/text/es/guidance.ftl"),
            include_str!("../../../assets/text/es/problems.ftl"),
            include_str!("../../../assets/text/es/check.ftl"),
            include_str!("../../../assets/text/es/window.ftl"),
            include_str!("../../../assets/text/es/command-line.ftl"),
            include_str!("../../../assets/text/es/papers.ftl"),
            include_str!("../../../assets/text/es/upkeep.ftl"),
            include_str!("../../../assets/text/es/mapping.ftl"),
        ],
    },
];

/// Read once: the window asks for them in every frame.
static NAMED: LazyLock<Vec<Language>> = LazyLock::new(|| {
    LANGUAGES
        .iter()
        .map(|texts| Language {
            tag: texts.tag,
            name: Catalogue::load(texts).text("language-name"),
        })
        .collect()
});

impl Catalogue {
    /// The languages that there are.
    #[must_use]
    pub fn languages() -> &'static [Language] {
        &NAMED
    }

    /// The catalogue in English.
    #[must_use]
    pub fn english() -> Self {
        Self::load(&LANGUAGES[0])
    }

    /// The catalogue in the language of a BCP 47 tag, such as `es` or `es-US`, if there is one.
    #[must_use]
    pub fn find(tag: &str) -> Option<Self> {
        let wanted = tag.trim().split(['-', '_']).next().unwrap_or_default().to_lowercase();
        LANGUAGES.iter().find(|texts| texts.tag == wanted).map(Self::load)
    }

    /// The catalogue in the language of a BCP 47 tag; English if there is none in that language.
    #[must_use]
    pub fn in_language(tag: &str) -> Self {
        Self::find(tag).unwrap_or_else(Self::english)
    }

    fn load(texts: &Texts) -> Self {
        let locale = texts.tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        // The marks would show as boxes in fonts that lack them.
        bundle.set_use_isolating(false);
        // English first: in an emergency a sentence in another language is better than none.
        let english = LANGUAGES.iter().take(1).filter(|first| first.tag != texts.tag);
        for file in english.chain([texts]).flat_map(|texts| texts.files) {
            // A faulty entry is left out by the parser; a test reads every file strictly.
            let resource = match FluentResource::try_new((*file).to_owned()) {
                Ok(resource) | Err((resource, _)) => resource,
            };
            bundle.add_resource_overriding(resource);
        }
        Self { bundle, language: texts.tag }
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
    use std::collections::{BTreeMap, BTreeSet};

    use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
    use fluent_syntax::ast::{Resource, VariantKey};

    use super::*;

    /// The texts of a language by key.
    type Keyed = BTreeMap<&'static str, Pattern<&'static str>>;

    /// Reads a language strictly: nothing faulty, no key twice, nothing but texts.
    fn strictly(texts: &Texts) -> Keyed {
        let mut all = BTreeMap::new();
        for file in texts.files {
            let resource: Resource<&'static str> =
                fluent_syntax::parser::parse(*file).map_err(|(_, errors)| errors).unwrap();
            for entry in resource.body {
                let message = match entry {
                    Entry::Message(message) => message,
                    Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {
                        continue;
                    }
                    other => panic!("{}: {other:?}", texts.tag),
                };
                let key = message.id.name;
                assert!(message.attributes.is_empty(), "{}: {key}", texts.tag);
                let text = message.value.unwrap_or_else(|| panic!("{}: {key} is empty", texts.tag));
                assert!(all.insert(key, text).is_none(), "{}: {key} stands twice", texts.tag);
            }
        }
        all
    }

    /// English, and the other languages with their tags.
    fn english_and_others() -> (Keyed, Vec<(&'static str, Keyed)>) {
        let (english, others) = LANGUAGES.split_first().unwrap();
        assert_eq!(english.tag, "en");
        assert!(!others.is_empty());
        (strictly(english), others.iter().map(|texts| (texts.tag, strictly(texts))).collect())
    }

    /// The places of a text, each with the words of the program that lead to it, such as
    /// `[quarter][lever]$turns`. Which forms a number takes is each language's own.
    fn places(text: &Pattern<&str>, under: &str, all: &mut BTreeSet<String>) {
        for element in &text.elements {
            let PatternElement::Placeable { expression } = element else { continue };
            match expression {
                Expression::Inline(InlineExpression::VariableReference { id }) => {
                    all.insert(format!("{under}${}", id.name));
                }
                Expression::Select {
                    selector: InlineExpression::VariableReference { id },
                    variants,
                } => {
                    all.insert(format!("{under}${}", id.name));
                    for variant in variants {
                        let mut under = under.to_owned();
                        if let VariantKey::Identifier { name } = variant.key
                            && !["zero", "one", "two", "few", "many", "other"].contains(&name)
                        {
                            under = format!("{under}[{name}]");
                            all.insert(under.clone());
                        }
                        places(&variant.value, &under, all);
                    }
                }
                other => panic!("{other:?}"),
            }
        }
    }

    /// True if a text has words of its own beside its places and units.
    fn has_words(text: &Pattern<&str>) -> bool {
        text.elements.iter().any(|element| match element {
            PatternElement::TextElement { value } => {
                value.split(|c: char| !c.is_alphabetic()).any(|word| word.chars().count() > 2)
            }
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                variants.iter().any(|variant| has_words(&variant.value))
            }
            PatternElement::Placeable { .. } => false,
        })
    }

    #[test]
    fn no_text_is_missing_in_any_language_and_none_is_there_in_vain() {
        let (english, others) = english_and_others();
        assert!(english.len() > 400);
        for (tag, texts) in others {
            let missing: Vec<_> = english.keys().filter(|key| !texts.contains_key(*key)).collect();
            let extra: Vec<_> = texts.keys().filter(|key| !english.contains_key(*key)).collect();
            assert!(missing.is_empty() && extra.is_empty(), "{tag}: - {missing:#?} + {extra:#?}");
        }
    }

    #[test]
    fn every_text_has_the_same_places_in_every_language() {
        let (english, others) = english_and_others();
        for (tag, texts) in others {
            for (key, text) in texts {
                let [mut ours, mut theirs] = [BTreeSet::new(), BTreeSet::new()];
                places(&english[key], "", &mut ours);
                places(&text, "", &mut theirs);
                assert_eq!(theirs, ours, "{key} in {tag} (left) and in English (right)");
            }
        }
    }

    #[test]
    fn no_text_was_left_in_english() {
        /// Units and words that are the same in both.
        const SAME: &[&str] = &[
            "paper-system-gas",
            "problem-line-error",
            "window-gallons",
            "window-map-panel",
            "window-minutes-and-seconds",
            "window-plot-minutes",
        ];
        let (english, others) = english_and_others();
        for (tag, texts) in others {
            for (key, text) in texts.iter().filter(|(key, _)| !SAME.contains(key)) {
                assert!(*text != english[key] || !has_words(text), "{key} in {tag}");
            }
        }
    }

    #[test]
    fn a_place_left_out_deep_in_a_selection_is_noticed() {
        let found = |text: &str| {
            let file = format!("a = {text}\n");
            let resource = fluent_syntax::parser::parse(file.as_str()).unwrap();
            let Some(Entry::Message(message)) = resource.body.first() else { panic!("{file}") };
            let mut all = BTreeSet::new();
            places(message.value.as_ref().unwrap(), "", &mut all);
            all
        };
        let choice =
            "{ $way ->\n [up] { $n ->\n [one] one\n *[other] { $n } NAME\n }\n *[no] no\n }";
        let with = found(&choice.replace("NAME", "{ $name }"));
        assert_eq!(with, ["$way", "[no]", "[up]", "[up]$n", "[up]$name"].map(str::to_owned).into());
        assert_ne!(found(&choice.replace("NAME", "")), with);
        assert_ne!(found(&choice.replace("NAME", "{ $name }").replace("[up]", "[down]")), with);
    }

    #[test]
    fn a_language_is_found_by_its_tag_and_names_itself() {
        let named: Vec<_> =
            Catalogue::languages().iter().map(|l| (l.tag, l.name.as_str())).collect();
        assert_eq!(named, [("en", "English"), ("es", "Espa\u{f1}ol")]);
        for tag in ["es", "es-US", "ES_mx", " es "] {
            assert_eq!(Catalogue::find(tag).unwrap().language(), "es", "{tag}");
        }
        for tag in ["", "e", "est", "english"] {
            assert!(Catalogue::find(tag).is_none(), "{tag}");
            assert_eq!(Catalogue::in_language(tag).language(), "en");
        }
    }

    #[test]
    fn lists_read_as_sentences() {
        for (tag, and) in [("en", "and"), ("es", "y")] {
            let c = Catalogue::in_language(tag);
            let items = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect::<Vec<_>>();
            assert_eq!(c.list(&items(&["a"])), "a");
            assert_eq!(c.list(&items(&["a", "b"])), format!("a {and} b"));
            assert_eq!(c.list(&items(&["a", "b", "c"])), format!("a, b {and} c"));
            assert_eq!(c.list(&items(&["a", "b", "c", "d"])), format!("a, b, c {and} d"));
        }
    }

    #[test]
    fn a_trouble_is_referred_to_by_its_name() {
        for language in Catalogue::languages() {
            let c = Catalogue::in_language(language.tag);
            let (step, name) = (c.text("step-look-for-a-break"), c.text("trouble-leak"));
            assert!(step.contains(&name), "{step} / {name}");
        }
    }

    #[test]
    fn spanish_numbers_take_their_forms() {
        let c = Catalogue::in_language("es");
        let turns = |n: f64| {
            let fills = [fill("way", "counted"), fill("handle", "wheel"), count("turns", n)];
            c.fill("how-to-close", &fills)
        };
        assert!(turns(1.0).contains("una vuelta,"), "{}", turns(1.0));
        assert!(turns(8.0).contains("8 vueltas,"), "{}", turns(8.0));
        assert!(turns(2.5).contains("2.5 vueltas,"), "{}", turns(2.5));
    }
}
