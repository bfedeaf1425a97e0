//! The fonts: one for text, and one for the signs that it lacks.

use std::sync::Arc;

use egui::{FontData, FontDefinitions, FontFamily};

/// The family of what is to be read first.
pub(crate) fn bold() -> FontFamily {
    FontFamily::Name("bold".into())
}

/// Only our own files, so that the window looks the same everywhere.
pub(crate) fn definitions() -> FontDefinitions {
    let mut fonts = FontDefinitions::empty();
    let files: [(&str, &'static [u8]); 3] = [
        ("noto", include_bytes!("../../../assets/fonts/NotoSans-Regular.ttf")),
        ("noto-bold", include_bytes!("../../../assets/fonts/NotoSans-Bold.ttf")),
        ("dejavu", include_bytes!("../../../assets/fonts/DejaVuSans.ttf")),
    ];
    for (name, bytes) in files {
        fonts.font_data.insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    }
    let names = |list: [&str; 2]| list.map(str::to_owned).to_vec();
    fonts.families.insert(FontFamily::Proportional, names(["noto", "dejavu"]));
    fonts.families.insert(FontFamily::Monospace, names(["noto", "dejavu"]));
    fonts.families.insert(bold(), names(["noto-bold", "dejavu"]));
    fonts
}
