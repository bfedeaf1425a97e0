//! What a sheet may see while it is laid out: its template, its data, its pictures, our fonts.
//!
//! There is no way from a template to a disk, a clock or a network: each path that was not handed in
//! is refused.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use quarterturn_home::Date;
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt as _, World};

/// Name under which a template finds its data.
pub(crate) const DATA: &str = "data.json";

/// What all sheets have in common, and then each sheet.
const TEMPLATES: [(&str, &str); 9] = [
    ("look.typ", include_str!("../../../assets/sheets/look.typ")),
    ("fridge.typ", include_str!("../../../assets/sheets/fridge.typ")),
    ("panels.typ", include_str!("../../../assets/sheets/panels.typ")),
    ("valves.typ", include_str!("../../../assets/sheets/valves.typ")),
    ("tags.typ", include_str!("../../../assets/sheets/tags.typ")),
    ("directory.typ", include_str!("../../../assets/sheets/directory.typ")),
    ("valvelist.typ", include_str!("../../../assets/sheets/valvelist.typ")),
    ("log.typ", include_str!("../../../assets/sheets/log.typ")),
    ("pack.typ", include_str!("../../../assets/sheets/pack.typ")),
];

/// Text, bold text, and what neither has, such as arrows.
const FONTS: [&[u8]; 3] = [
    include_bytes!("../../../assets/fonts/NotoSans-Regular.ttf"),
    include_bytes!("../../../assets/fonts/NotoSans-Bold.ttf"),
    include_bytes!("../../../assets/fonts/DejaVuSans.ttf"),
];

/// What never changes: read once, since fonts and templates take longer to read than to use.
struct Fixed {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    templates: BTreeMap<&'static str, Source>,
}

static FIXED: LazyLock<Fixed> = LazyLock::new(|| {
    let fonts: Vec<Font> = FONTS.iter().flat_map(|bytes| Font::iter(Bytes::new(*bytes))).collect();
    let templates = TEMPLATES
        .iter()
        .filter_map(|(name, text)| Some((*name, Source::new(file_id(name)?, (*text).to_owned()))))
        .collect();
    Fixed {
        library: LazyHash::new(Library::default()),
        book: LazyHash::new(FontBook::from_fonts(&fonts)),
        fonts,
        templates,
    }
});

/// One sheet's template, data and pictures.
pub(crate) struct SheetWorld {
    main: FileId,
    /// By their names; typst's own numbers for files depend on what was seen before.
    files: BTreeMap<String, Bytes>,
    today: Date,
}

impl SheetWorld {
    /// A world in which `template` is laid out on the day `today`. `None` if there is no such
    /// template.
    pub(crate) fn new(template: &str, data: Vec<u8>, today: Date) -> Option<Self> {
        let main = FIXED.templates.get(template)?.id();
        let mut world = Self { main, files: BTreeMap::new(), today };
        world.put(DATA, data);
        Some(world)
    }

    /// Hands in a file under a name that the data uses.
    pub(crate) fn put(&mut self, name: &str, bytes: Vec<u8>) {
        self.files.insert(name.to_owned(), Bytes::new(bytes));
    }
}

impl World for SheetWorld {
    fn library(&self) -> &LazyHash<Library> {
        &FIXED.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &FIXED.book
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        FIXED.templates.get(name(id)).cloned().ok_or(FileError::AccessDenied)
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        self.files.get(name(id)).cloned().ok_or(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        FIXED.fonts.get(index).cloned()
    }

    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        datetime(self.today)
    }
}

/// The start of a day, as typst writes it.
pub(crate) fn datetime(date: Date) -> Option<Datetime> {
    let text = date.to_string();
    let mut parts = text.split('-');
    let year = parts.next()?.parse().ok()?;
    let month = parts.next()?.parse().ok()?;
    let day = parts.next()?.parse().ok()?;
    Datetime::from_ymd_hms(year, month, day, 0, 0, 0)
}

/// The name of a file of this project; files of packages have none.
fn name(id: FileId) -> &'static str {
    let path = id.get();
    match path.root() {
        VirtualRoot::Project => path.vpath().get_without_slash(),
        VirtualRoot::Package(_) => "",
    }
}

fn file_id(name: &str) -> Option<FileId> {
    let path = VirtualPath::new(name).ok()?;
    Some(FileId::new(RootedPath::new(VirtualRoot::Project, path)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_font_is_read_and_every_template_parses() {
        assert_eq!(FIXED.fonts.len(), FONTS.len());
        for (name, source) in &FIXED.templates {
            let (errors, _) = source.root().errors_and_warnings();
            assert!(errors.is_empty(), "{name}: {errors:?}");
        }
        assert_eq!(FIXED.templates.len(), TEMPLATES.len());
    }

    #[test]
    fn a_template_cannot_reach_what_was_not_handed_in() {
        let world =
            SheetWorld::new("fridge.typ", Vec::new(), "2026-11-25".parse().unwrap()).unwrap();
        for name in ["../Cargo.toml", "etc/passwd", "plan.png"] {
            if let Some(id) = file_id(name) {
                assert_eq!(world.file(id).unwrap_err(), FileError::AccessDenied, "{name}");
            }
        }
        assert!(SheetWorld::new("other.typ", Vec::new(), "2026-11-25".parse().unwrap()).is_none());
    }
}
