//! The same order gives the same bytes; the PDF is one that screen readers can read.

use quarterturn_papers::{CannotPrint, Sheet};

use crate::homes::{example, three};

#[test]
fn the_same_order_gives_the_same_bytes() {
    let given = example("flat");
    for sheet in Sheet::ALL {
        let once = match given.print(sheet, "es") {
            Ok(printed) => printed.pdf().unwrap(),
            Err(CannotPrint::Nothing) => continue,
            Err(error) => panic!("{sheet:?}: {error}"),
        };
        // Another home in between, so that what is kept from before could show.
        let _other = three().print(Sheet::Fridge, "en").unwrap();
        let again = given.print(sheet, "es").unwrap().pdf().unwrap();
        assert!(once == again, "{sheet:?} differs");
    }
}

/// Typst refuses to write PDF/UA-1 (ISO 14289-1) where a title, a language or the text for a picture
/// is missing; what it writes says so of itself.
#[test]
fn each_pdf_says_that_it_is_for_screen_readers_too() {
    for given in [example("two-storey"), three()] {
        for sheet in Sheet::ALL {
            let printed = match given.print(sheet, "en") {
                Ok(printed) => printed,
                Err(CannotPrint::Nothing) => continue,
                Err(error) => panic!("{sheet:?}: {error}"),
            };
            let bytes = printed.pdf().unwrap();
            let text = String::from_utf8_lossy(&bytes);
            assert!(text.contains("pdfuaid:part") && text.contains("/Marked true"), "{sheet:?}");
            assert!(text.contains("2026-11-25"), "{sheet:?} has another day");
        }
    }
}

#[test]
fn a_page_becomes_a_picture_of_the_width_that_was_asked_for() {
    let printed = three().print(Sheet::Fridge, "en").unwrap();
    let picture = printed.picture(0, 500).unwrap();
    assert_eq!(picture.width, 500);
    assert_eq!(picture.rgba.len(), usize::try_from(picture.width * picture.height * 4).unwrap());
    assert!(picture.rgba.chunks(4).any(|pixel| pixel[0] < 40), "there is ink on it");
    assert!(printed.picture(99, 500).is_none());
}
