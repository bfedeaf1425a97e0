//! Laying a sheet out, and what comes of it.

use std::ops::ControlFlow;

use typst::comemo;
use typst::diag::SourceDiagnostic;
use typst::foundations::Smart;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};
use typst_render::RenderOptions;

use crate::gather;
use crate::order::{CannotPrint, Order, Sheet, Stage};
use crate::world::{SheetWorld, datetime};

/// Typst keeps what it worked out, so that the next preview is quick. What was not used for so many
/// sheets is forgotten.
const FORGET_AFTER: usize = 12;

/// Pages that were laid out.
pub struct Printed {
    document: PagedDocument,
    ident: String,
    timestamp: Option<Timestamp>,
}

/// A page as a picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    /// Width in pixels.
    pub width: u32,
    /// Height in pixels.
    pub height: u32,
    /// Red, green, blue and opacity of each pixel, row by row from the top. Pages are opaque.
    pub rgba: Vec<u8>,
}

/// A piece of text on a page, for tests: where its line stands and how far it reaches.
#[derive(Debug, Clone, PartialEq)]
pub struct TextBox {
    /// Its page, from 0.
    pub page: usize,
    /// The text.
    pub text: String,
    /// Left, top, right and bottom, in points from the page's top left corner.
    pub bounds: [f64; 4],
    /// Height of the letters, in points.
    pub size: f64,
    /// The box that clips it, if one does.
    pub clip: Option<[f64; 4]>,
}

/// Lays a sheet out.
///
/// The same order gives the same pages, and the same bytes of PDF.
///
/// # Errors
/// If the home has nothing for this sheet; or by a fault of the program.
pub fn lay_out(sheet: Sheet, order: &Order<'_>) -> Result<Printed, CannotPrint> {
    lay_out_watched(sheet, order, &mut |_| ControlFlow::Continue(()))
}

/// Lays a sheet out and tells `watch` what is being done; it can call the work off between stages.
///
/// # Errors
/// If `watch` breaks off, if the home has nothing for this sheet, or by a fault of the program.
pub fn lay_out_watched(
    sheet: Sheet,
    order: &Order<'_>,
    watch: &mut dyn FnMut(Stage) -> ControlFlow<()>,
) -> Result<Printed, CannotPrint> {
    let mut at = |stage| match watch(stage) {
        ControlFlow::Continue(()) => Ok(()),
        ControlFlow::Break(()) => Err(CannotPrint::Cancelled),
    };
    at(Stage::Gathering)?;
    let gathered = gather::gather(sheet, order)?;
    let mut world = SheetWorld::new(sheet.template(), gathered.data, order.today)
        .ok_or_else(|| CannotPrint::Layout(format!("{} is missing", sheet.template())))?;
    for (name, bytes) in gathered.files {
        world.put(&name, bytes);
    }
    at(Stage::LayingOut)?;
    let laid_out = typst::compile::<PagedDocument>(&world);
    comemo::evict(FORGET_AFTER);
    let document = laid_out.output.map_err(|wrong| CannotPrint::Layout(told(&wrong)))?;
    let ident = format!("{} {} {}", sheet.file_stem(), order.home.name, order.words.language());
    let timestamp = datetime(order.today).map(Timestamp::new_utc);
    Ok(Printed { document, ident, timestamp })
}

impl Printed {
    /// How many pages there are.
    #[must_use]
    pub fn page_count(&self) -> usize {
        self.document.pages().len()
    }

    /// The pages as a PDF that screen readers can read (ISO 14289-1, PDF/UA-1).
    ///
    /// # Errors
    /// By a fault of the program.
    pub fn pdf(&self) -> Result<Vec<u8>, CannotPrint> {
        let standards = PdfStandards::new(&[PdfStandard::Ua_1])
            .map_err(|wrong| CannotPrint::Pdf(format!("{wrong:?}")))?;
        let options = PdfOptions {
            ident: Smart::Custom(self.ident.clone()),
            timestamp: self.timestamp,
            standards,
            ..PdfOptions::default()
        };
        typst_pdf::pdf(&self.document, &options).map_err(|wrong| CannotPrint::Pdf(told(&wrong)))
    }

    /// Width and height of a page in points; `None` if there is no such page.
    #[must_use]
    pub fn page_size(&self, page: usize) -> Option<(f64, f64)> {
        let size = self.document.pages().get(page)?.frame.size();
        Some((size.x.to_pt(), size.y.to_pt()))
    }

    /// A page, from 0, as a picture of a width in pixels (at least 1, at most 8192); `None` if there
    /// is no such page.
    #[must_use]
    pub fn picture(&self, page: usize, width: u32) -> Option<Picture> {
        const WIDEST: u32 = 8192;
        let page = self.document.pages().get(page)?;
        let across = page.frame.width().to_pt();
        let scale = f64::from(width.clamp(1, WIDEST)) / across;
        let options = RenderOptions { pixel_per_pt: scale.into(), ..RenderOptions::default() };
        let drawn = typst_render::render(page, &options);
        let (width, height) = (drawn.width(), drawn.height());
        Some(Picture { width, height, rgba: drawn.take() })
    }

    /// Every piece of text in the order of reading, for tests of the layout.
    #[must_use]
    pub fn text_boxes(&self) -> Vec<TextBox> {
        crate::boxes::of(&self.document)
    }
}

impl std::fmt::Debug for Printed {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Printed")
            .field("ident", &self.ident)
            .field("pages", &self.page_count())
            .finish_non_exhaustive()
    }
}

fn told(wrong: &[SourceDiagnostic]) -> String {
    let each: Vec<String> = wrong
        .iter()
        .map(|one| {
            let hints: Vec<&str> = one.hints.iter().map(|hint| hint.v.as_str()).collect();
            format!("{} {}", one.message, hints.join(" ")).trim().to_owned()
        })
        .collect();
    each.join("; ")
}
