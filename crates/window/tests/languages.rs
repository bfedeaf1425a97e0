//! The window in every language: nothing cut off, no sign missing, and the choice of the language.

use std::collections::BTreeSet;

use egui::accesskit::Role;
use egui::{Align2, FontFamily, FontId, FullOutput, Key, Rect, Shape, Theme, pos2, vec2};
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
    let app = App::new(opening, Catalogue::in_language(language));
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

/// A line of text that is drawn: what it says, where it is, and the part of that which is seen.
type Line = (String, Rect, Rect);

fn drawn(output: &FullOutput) -> Vec<Line> {
    fn collect(shape: &Shape, clip: Rect, lines: &mut Vec<Line>) {
        match shape {
            Shape::Vec(shapes) => shapes.iter().for_each(|shape| collect(shape, clip, lines)),
            Shape::Text(text) => {
                // Line by line: what wraps may begin in the middle of its first.
                for line in &text.galley.rows {
                    let ink = line.visuals.mesh_bounds;
                    let rect = ink.translate(text.pos.to_vec2() + line.pos.to_vec2());
                    lines.push((line.text(), rect, rect.intersect(clip)));
                }
            }
            _ => {}
        }
    }
    let mut lines = Vec::new();
    for shape in &output.shapes {
        collect(&shape.shape, shape.clip_rect, &mut lines);
    }
    lines.retain(|(_, _, seen)| seen.is_positive());
    lines
}

/// What is cut off at its side, or stands on another.
fn spoilt(lines: &[Line]) -> Option<String> {
    for (n, (one, here, seen)) in lines.iter().enumerate() {
        let hidden = (seen.left() - here.left()).max(here.right() - seen.right());
        if hidden > 2.0 {
            return Some(format!("{one:?} is cut off by {hidden}"));
        }
        for (other, _, there) in lines.iter().skip(n + 1) {
            if seen.shrink(2.0).intersect(there.shrink(2.0)).is_positive() {
                return Some(format!("{one:?} stands on {other:?}"));
            }
        }
    }
    None
}

/// No text is missing, reaches out of the window sideways, is cut off, or stands on another.
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
    // On the plan, labels lie on the drawing and may lie on each other.
    let plan = in_spanish("window-plan-of");
    let plan = plan.split(':').next().unwrap_or(&plan);
    let plan = texts.iter().find(|(text, _)| text.starts_with(plan)).map(|(_, rect)| *rect);
    let mut lines = drawn(harness.output());
    lines.retain(|(_, rect, _)| plan.is_none_or(|plan| !plan.contains(rect.center())));
    assert!(lines.len() > 3, "{lines:?}");
    assert_eq!(spoilt(&lines), None);
}

#[test]
fn a_text_cut_off_or_on_another_is_noticed() {
    let look = |x: f32, width: f32| {
        let harness = Harness::builder().with_size([300.0, 100.0]).build_ui(move |ui| {
            let clip = Rect::from_min_size(pos2(0.0, 0.0), vec2(width, 100.0));
            let painter = ui.painter().with_clip_rect(clip);
            let font = FontId::proportional(16.0);
            let ink = egui::Color32::BLACK;
            painter.text(pos2(4.0, 4.0), Align2::LEFT_TOP, "ADVERTENCIA", font.clone(), ink);
            painter.text(pos2(x, 4.0), Align2::LEFT_TOP, "humo", font, ink);
        });
        spoilt(&drawn(harness.output()))
    };
    assert_eq!(look(160.0, 300.0), None);
    assert!(look(80.0, 300.0).is_some_and(|text| text.contains("stands on")));
    assert!(look(160.0, 170.0).is_some_and(|text| text.contains("cut off")));
}

#[test]
fn every_page_fits_in_spanish() {
    for (zoom, theme) in [(1.0, Theme::Light), (1.4, Theme::Light), (2.0, Theme::Dark)] {
        let mut harness = built_in("es");
        harness.ctx.set_theme(theme);
        harness.ctx.set_zoom_factor(zoom);
        harness.run();
        check_pages(&mut harness, 1280.0, Trouble::ALL);
    }
}

#[test]
fn the_longest_words_fit_a_narrow_window() {
    let some = [Trouble::BreakerTrips, Trouble::SewageRising, Trouble::GasSmell];
    for width in [360.0, 520.0] {
        check_pages(&mut harness(Opening::built_in(), "es", [width, 800.0]), width, &some);
    }
}

/// Goes through the pages of each trouble, at its first spot.
fn check_pages(harness: &mut Harness<'_, App>, width: f32, troubles: &[Trouble]) {
    check_page(harness);
    let anywhere = in_spanish("window-spot-space");
    let anywhere = anywhere.split(':').next().unwrap_or(&anywhere);
    for which in troubles {
        press(harness, &trouble("es", *which));
        check_page(harness);
        if harness.state().answer().is_none() {
            let all = texts(harness);
            let mut spots = all.iter().map(|(text, _)| text);
            let spot = spots.find(|text| text.starts_with(anywhere) || is_tagged(text));
            press(harness, spot.unwrap_or_else(|| panic!("{which:?} has no spot")));
        }
        let answer = harness.state().answer().unwrap_or_else(|| panic!("{which:?}")).clone();
        check_page(harness);
        // All of it, and not only what is seen before scrolling.
        harness.set_size(vec2(width, 8000.0));
        harness.run();
        check_page(harness);
        harness.set_size(vec2(width, 800.0));
        harness.run();
        let first = answer.steps.first().and_then(|step| step.text.split(". ").next());
        let first = first.unwrap_or_else(|| panic!("{which:?} has no step"));
        assert!(texts(harness).iter().any(|(text, _)| text.contains(first)), "{first}");
        for _ in 0..3 {
            harness.key_press(Key::Escape);
            harness.run();
        }
        harness.get_by_label(&in_spanish("window-what-do-you-see"));
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
    press(&mut harness, "It worked");
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
        press(harness, &words.text("window-settings"));
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
