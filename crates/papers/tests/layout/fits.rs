//! No text leaves its page or its box, and none lies over another.

use quarterturn_papers::{CannotPrint, Paper, Printed, Sheet, TextBox};

use crate::homes::{Given, example, four_hundred, hostile, long_names, three};

/// Letters may touch, but not lie over each other; in points.
const SLACK: f64 = 0.75;

fn check(given: &Given, what: &str) {
    for sheet in Sheet::ALL {
        for language in ["en", "es"] {
            match given.print(sheet, language) {
                Ok(printed) => fits(&printed, &format!("{what} {sheet:?} {language}")),
                Err(CannotPrint::Nothing) => {}
                Err(error) => panic!("{what} {sheet:?} {language}: {error}"),
            }
        }
    }
}

fn fits(printed: &Printed, what: &str) {
    let boxes = printed.text_boxes();
    assert!(!boxes.is_empty(), "{what}: nothing is on it");
    for page in 0..printed.page_count() {
        let (width, height) = printed.page_size(page).unwrap();
        let here: Vec<&TextBox> =
            boxes.iter().filter(|t| t.page == page && !t.text.trim().is_empty()).collect();
        for text in &here {
            let [left, top, right, bottom] = text.bounds;
            assert!(
                left >= 0.0 && top >= 0.0 && right <= width && bottom <= height,
                "{what}, page {page}: {text:?} leaves its page"
            );
            if let Some([from_left, from_top, to_right, to_bottom]) = text.clip {
                assert!(
                    left >= from_left - SLACK
                        && top >= from_top - SLACK
                        && right <= to_right + SLACK
                        && bottom <= to_bottom + SLACK,
                    "{what}, page {page}: {text:?} is cut off"
                );
            }
        }
        overlaps(&here, &format!("{what}, page {page}"));
    }
}

/// Holds each text against those that begin before it ends, from the top down.
fn overlaps(texts: &[&TextBox], what: &str) {
    let mut sorted = texts.to_vec();
    sorted.sort_by(|a, b| a.bounds[1].total_cmp(&b.bounds[1]));
    for (at, one) in sorted.iter().enumerate() {
        for other in sorted[at + 1..].iter().take_while(|o| o.bounds[1] < one.bounds[3] - SLACK) {
            let across = one.bounds[2].min(other.bounds[2]) - one.bounds[0].max(other.bounds[0]);
            let down = one.bounds[3].min(other.bounds[3]) - one.bounds[1].max(other.bounds[1]);
            assert!(
                across <= SLACK || down <= SLACK,
                "{what}: {one:?} lies over {other:?} by {across:.1} x {down:.1} pt"
            );
        }
    }
}

#[test]
fn the_two_storey_house() {
    check(&example("two-storey"), "two-storey");
}

#[test]
fn the_flat() {
    check(&example("flat"), "flat");
}

#[test]
fn the_old_house() {
    check(&example("old-house"), "old-house");
}

#[test]
fn a_home_with_three_devices() {
    check(&three(), "three");
}

#[test]
fn a_home_with_four_hundred_devices() {
    check(&four_hundred(), "four hundred");
}

#[test]
fn names_of_eighty_letters() {
    check(&long_names(), "long names");
}

#[test]
fn names_that_are_markup() {
    let given = hostile();
    check(&given, "hostile");
    // They are printed as they are.
    let printed = given.print(Sheet::Valves, "en").unwrap();
    let text: String = printed.text_boxes().iter().map(|t| t.text.as_str()).collect();
    assert!(text.contains("#strong[<script>]"), "{text}");
}

#[test]
fn the_other_paper() {
    for name in ["two-storey", "flat"] {
        let given = example(name);
        for paper in [Paper::A4, Paper::Letter] {
            for sheet in [Sheet::Fridge, Sheet::Tags] {
                fits(&given.print_on(sheet, "es", paper).unwrap(), &format!("{name} {paper:?}"));
            }
        }
    }
}

/// Its letter stands on every plan of the fridge door where north is known, and nowhere else.
#[test]
fn north_is_on_the_plans_if_it_is_known() {
    let mut given = example("old-house");
    let letters = |given: &Given| {
        let boxes = given.print(Sheet::Fridge, "es").unwrap().text_boxes();
        boxes.iter().filter(|text| text.text.trim() == "N").count()
    };
    given.home.north_deg = Some(210.0);
    assert!(letters(&given) >= 1);
    fits(&given.print(Sheet::Fridge, "es").unwrap(), "north is down left");
    given.home.north_deg = None;
    assert_eq!(letters(&given), 0);
}

/// The check itself finds what it looks for.
#[test]
#[should_panic(expected = "lies over")]
fn two_texts_on_one_place_are_found() {
    let text = |left: f64| TextBox {
        page: 0,
        text: "x".to_owned(),
        bounds: [left, 10.0, left + 20.0, 20.0],
        size: 10.0,
        clip: None,
    };
    overlaps(&[&text(10.0), &text(15.0)], "two");
}

/// The sheet hangs on the door before every number is known.
#[test]
fn a_number_that_is_not_known_has_a_line_to_write_it_on() {
    let says = |given: &Given, text: &str| {
        let printed = given.print(Sheet::Fridge, "en").unwrap();
        printed.text_boxes().iter().any(|shown| shown.text.contains(text))
    };
    let none = three();
    assert!(says(&none, "write them here") && says(&none, "A licensed plumber"));
    // All of them are known in this one.
    assert!(!says(&example("two-storey"), "write them here"));
}
