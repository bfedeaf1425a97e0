//! The sizes of paper.

use quarterturn_home::{Home, Units};

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Paper {
    /// 210 mm by 297 mm (ISO 216).
    A4,
    /// 8½ in by 11 in (ANSI/ASME Y14.1, size A).
    Letter,
}

impl Paper {
    /// Every size, with its word on the command line.
    pub const ALL: [(Self, &'static str); 2] = [(Self::A4, "a4"), (Self::Letter, "letter")];

    /// The size that people who measure as this home does have in their printer.
    #[must_use]
    pub fn of_home(home: &Home) -> Self {
        match home.units {
            Units::Us => Self::Letter,
            Units::Si => Self::A4,
        }
    }

    /// The size with this word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.iter().find(|(_, known)| *known == word).map(|(paper, _)| *paper)
    }

    /// What typst calls it.
    pub(crate) fn typst(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "us-letter",
        }
    }

    /// Its width and height, upright, in millimetres.
    pub(crate) fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }
}
