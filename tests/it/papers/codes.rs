//! The square codes, read back from the printed page by a reader that is not ours (rqrr).

use quarterturn_guidance::Catalogue;
use quarterturn_papers::Sheet;

use super::{printed, squeezed};

#[test]
fn each_tag_holds_its_text_in_a_code_that_can_be_read() {
    for language in ["en", "es"] {
        let (home, sheet) = printed("old-house", Sheet::Tags, language);
        let mut read = Vec::new();
        for page in 0..sheet.page_count() {
            // 300 dots an inch, as printers print: a phone held over the tag sees as much.
            let picture = sheet.picture(page, 2550).unwrap();
            let width = usize::try_from(picture.width).unwrap();
            let height = usize::try_from(picture.height).unwrap();
            // The reader gets lost among eight codes: it is shown a part of the page at a time.
            let (across, down) = (width / 2, height / 4);
            for (left, top) in (0..2).flat_map(|x| (0..7).map(move |y| (x * across, y * down / 2)))
            {
                let mut grey = rqrr::PreparedImage::prepare_from_greyscale(across, down, |x, y| {
                    picture.rgba[((top + y) * width + left + x) * 4 + 1]
                });
                for grid in grey.detect_grids() {
                    // A code that the edge of the part cuts does not decode; the next part has it whole.
                    read.extend(grid.decode().ok().map(|(_, text)| text));
                }
            }
        }
        let words = Catalogue::find(language).unwrap();
        let tagged = home.components.iter().filter(|component| {
            matches!(
                component.kind,
                quarterturn_home::Kind::IsolatingValve | quarterturn_home::Kind::Cleanout
            )
        });
        for device in tagged {
            let code = read.iter().find(|code| code.contains(&device.name));
            let code = code.unwrap_or_else(|| panic!("no code for {}", device.name));
            let how = quarterturn_guidance::how_to_close(device, &words);
            assert!(code.contains(device.tag.as_deref().unwrap()), "{code}");
            assert!(squeezed(code).contains(&squeezed(&how)), "{code}");
            assert!(code.contains(home.emergency_phone.as_deref().unwrap()), "{code}");
        }
    }
}
