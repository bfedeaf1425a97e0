//! Where each piece of text stands on the laid-out pages.

use typst::layout::{Abs, Frame, FrameItem, Point, Transform};
use typst_layout::PagedDocument;

use crate::printed::TextBox;

/// Every piece of text, page by page, in the order of reading.
pub(crate) fn of(document: &PagedDocument) -> Vec<TextBox> {
    let mut found = Vec::new();
    for (page, laid_out) in document.pages().iter().enumerate() {
        walk(&laid_out.frame, Transform::identity(), None, page, &mut found);
    }
    found
}

fn walk(
    frame: &Frame,
    at: Transform,
    clip: Option<[f64; 4]>,
    page: usize,
    found: &mut Vec<TextBox>,
) {
    for (place, item) in frame.items() {
        let here = at.pre_concat(Transform::translate(place.x, place.y));
        match item {
            FrameItem::Group(group) => {
                let inside = here.pre_concat(group.transform);
                let size = group.frame.size();
                let clip = if group.clip.is_some() {
                    Some(bounds(inside, Point::zero(), Point::new(size.x, size.y)))
                } else {
                    clip
                };
                walk(&group.frame, inside, clip, page, found);
            }
            FrameItem::Text(text) => {
                // The letters without their ascents: two lines of one paragraph may stand so close
                // that the boxes of the font itself touch.
                let (top, bottom) = (text.size * -0.72, text.size * 0.2);
                let bounds =
                    bounds(here, Point::new(Abs::zero(), top), Point::new(text.width(), bottom));
                found.push(TextBox {
                    page,
                    text: text.text.to_string(),
                    bounds,
                    size: text.size.to_pt(),
                    clip,
                });
            }
            _ => {}
        }
    }
}

/// The upright box around a box that may be turned: left, top, right, bottom.
fn bounds(at: Transform, from: Point, to: Point) -> [f64; 4] {
    let corners = [from, Point::new(to.x, from.y), to, Point::new(from.x, to.y)]
        .map(|corner| corner.transform(at));
    let over = |pick: fn(&Point) -> Abs, least: bool| {
        let all = corners.iter().map(|corner| pick(corner).to_pt());
        all.reduce(|a, b| if least { a.min(b) } else { a.max(b) }).unwrap_or_default()
    };
    [over(|p| p.x, true), over(|p| p.y, true), over(|p| p.x, false), over(|p| p.y, false)]
}
