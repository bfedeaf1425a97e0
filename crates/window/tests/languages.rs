//! The window in every language: nothing cut off, no sign missing, and the choice of the language.

use std::collections::BTreeSet;

use egui::accesskit::Role;
use egui::{FontFamily, FontId, Key, Rect, Theme};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_guidance::{Catalogue, Trouble, fill};
use quarterturn_window::{App, Opening};

/// Everything that is read in Spanish.
const SPANISH: [&str; 5] = [
    include_str!("../../../assets/text/es/guidance.ftl"),
    include_str!("../../../assets/text/es/problems.ftl"),
    include_str!("../../../assets/text/es/check.ftl"),
    include_str!("../../../assets/text/es/window.ftl"),
    include_str!("../../../assets/text/es/command-line.ftl"),
];

fn harness(opening: Opening, language: &str, size: [f32; 2]) -> Harness<'static, App> {
    let app = App::new(opening, Catalogue::find(language).expect("a language"));
    let mut harness = Harness::builder()
        .with_size(size)
        .with_max_steps(12)
        .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
    harness.run();
    harness
}

fn built_in(language: &str) -> Harness<'static, App> {
    harness(Opening::built_in(), language, [1280.0, 800.0])
}

fn in_spanish(key: &str) -> String {
    Catalogue::in_language("es").text(key)
}

fn trouble(language: &str, trouble: Trouble) -> String {
    let words = Catalogue::in_language(language);
    let key = format!("trouble-{}", trouble.id());
    let fills =
        [fill("trouble", &words.text(&key)), fill("hint", &words.text(&format!("{key}-hint")))];
    words.fill("window-trouble-and-hint", &fills)
}

fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).scroll_to_me();
    harness.run();
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

/// What can be read, with its place.
fn texts(harness: &Harness<'_, App>) -> Vec<(String, Rect)> {
    fn collect(node: Node<'_>, texts: &mut Vec<(String, Rect)>) {
        let inner = node.accesskit_node();
        let is_text = matches!(
            inner.role(),
            Role::Button | Role::Label | Role::Alert | Role::TextInput | Role::Image
        );
        let text = inner.label().or(inner.value()).filter(|_| is_text);
        texts.extend(text.map(|text| (text, node.rect())));
        node.children().for_each(|child| collect(child, texts));
    }
    let mut texts = Vec::new();
    collect(harness.root(), &mut texts);
    texts
}

/// Nothing reaches out of the window sideways, and what stands in the bar stands apart.
fn check_page(harness: &Harness<'_, App>) {
    let window = harness.ctx.content_rect();
    let texts = texts(harness);
    for (text, rect) in &texts {
        assert!(!text.contains("[window-") && !text.contains("{$"), "{text}");
        assert!(
            rect.left() >= window.left() - 1.0 && rect.right() <= window.right() + 1.0,
            "{text:?} reaches from {} to {} of {}",
            rect.left(),
            rect.right(),
            window.right()
        );
    }
    let phone = texts.iter().find(|(text, _)| text.contains("911")).expect("the number in the bar");
    let bar: Vec<_> =
        texts.iter().filter(|(_, r)| r.y_range().intersects(phone.1.y_range())).collect();
    for (n, (one, here)) in bar.iter().enumerate() {
        for (other, there) in bar.iter().skip(n + 1) {
            assert!(!here.shrink(1.0).intersects(there.shrink(1.0)), "{one:?} on {other:?}");
        }
    }
}

#[test]
fn every_page_fits_in_spanish() {
    for (zoom, theme) in [(1.0, Theme::Light), (1.4, Theme::Light), (2.0, Theme::Dark)] {
        let mut harness = built_in("es");
        harness.ctx.set_theme(theme);
        harness.ctx.set_zoom_factor(zoom);
        harness.run();
        check_page(&harness);
        let anywhere = in_spanish("window-spot-space");
        let anywhere = anywhere.split(':').next().expect("words").to_owned();
        for which in Trouble::ALL {
            press(&mut harness, &trouble("es", *which));
            check_page(&harness);
            if harness.state().answer().is_none() {
                let spot = texts(&harness)
                    .into_iter()
                    .map(|(text, _)| text)
                    .find(|text| text.starts_with(&anywhere) || is_tagged(text))
                    .expect("a spot");
                press(&mut harness, &spot);
            }
            let answer = harness.state().answer().unwrap_or_else(|| panic!("{which:?}")).clone();
            check_page(&harness);
            let first = answer.steps.first().expect("a step").text.clone();
            let first = first.split(". ").next().expect("words").to_owned();
            assert!(texts(&harness).iter().any(|(text, _)| text.contains(&first)), "{first}");
            for _ in 0..3 {
                harness.key_press(Key::Escape);
                harness.run();
            }
            harness.get_by_label(&in_spanish("window-what-do-you-see"));
        }
    }
}

/// True for a name with a tag, such as `W3 Main shutoff`.
fn is_tagged(label: &str) -> bool {
    label.split(' ').next().is_some_and(|tag| {
        tag.len() > 1 && tag.starts_with(char::is_alphabetic) && tag.ends_with(char::is_numeric)
    })
}

#[test]
fn the_bar_has_room_for_its_words_at_every_width() {
    for language in Catalogue::languages() {
        for width in [360.0, 480.0, 640.0, 800.0, 899.0, 900.0, 960.0, 1100.0, 1280.0, 1920.0] {
            let harness = harness(Opening::built_in(), language.tag, [width, 800.0]);
            check_page(&harness);
        }
    }
}

#[test]
fn every_sign_of_the_texts_is_in_the_fonts() {
    let signs: BTreeSet<char> = SPANISH.iter().flat_map(|file| file.chars()).collect();
    assert!(signs.is_superset(&"áéíóúñ¿".chars().collect()));
    let harness = built_in("es");
    for family in [FontFamily::Proportional, FontFamily::Name("bold".into())] {
        let font = FontId::new(16.0, family);
        let missing: Vec<char> = harness.ctx.fonts_mut(|fonts| {
            let shown = signs.iter().copied().filter(|c| !c.is_control());
            shown.filter(|c| !fonts.has_glyph(&font, *c)).collect()
        });
        assert!(missing.is_empty(), "{font:?}: {missing:?}");
        let knows = harness.ctx.fonts_mut(|fonts| fonts.has_glyph(&font, '\u{5bb6}'));
        assert!(!knows, "the question is never answered no");
    }
}

#[test]
fn the_language_is_chosen_in_the_bar_and_what_was_done_stays() {
    let mut harness = built_in("en");
    press(&mut harness, &trouble("en", Trouble::Leak));
    press(&mut harness, "W40 Dishwasher");
    press(&mut harness, "Done");
    let english = harness.state().answer().expect("an answer").clone();
    press(&mut harness, "Español");
    let spanish = harness.state().answer().expect("an answer").clone();
    assert_ne!(spanish, english);
    let ids = |answer: &quarterturn_guidance::Answer| -> Vec<String> {
        answer.steps.iter().map(|step| step.id.clone()).collect()
    };
    assert_eq!(ids(&spanish), ids(&english));
    let now = Catalogue::in_language("es").text("window-do-this-now");
    harness.get_by_label(&now);
    assert!(harness.query_by_label("Do this now").is_none());
    assert!(harness.query_by_label("Español").is_none(), "the other languages only");
    press(&mut harness, "English");
    harness.get_by_label("Do this now");
    assert_eq!(harness.state().answer(), Some(&english));
}

#[test]
fn the_home_says_its_language_unless_someone_chose() {
    let folder = std::env::temp_dir().join(format!("quarterturn-spanish-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    let file = r#"Home(format: 1, name: "Casa", language: "es-US")"#;
    let mut home = std::fs::File::create(folder.join("home.ron")).expect("a file");
    std::io::Write::write_all(&mut home, file.as_bytes()).expect("written");
    let open = |harness: &mut Harness<'_, App>, words: &Catalogue| {
        press(harness, &words.text("window-open-other"));
        let label = words.text("window-path");
        let path = harness.get_by_role_and_label(Role::TextInput, &label);
        path.focus();
        path.type_text(&folder.display().to_string());
        harness.run();
        press(harness, &words.text("window-open"));
        assert_eq!(harness.state().folder(), Some(folder.as_path()));
    };
    let [english, spanish] = ["en", "es"].map(Catalogue::in_language);
    let mut unasked = built_in("en");
    open(&mut unasked, &english);
    unasked.get_by_label(&spanish.text("window-what-do-you-see"));
    let mut asked = built_in("en");
    press(&mut asked, "Español");
    press(&mut asked, "English");
    open(&mut asked, &english);
    asked.get_by_label("What do you see?");
    std::fs::remove_dir_all(&folder).expect("removed");
}
