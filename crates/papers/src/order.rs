//! What is to be printed, and why it could not be.

use std::collections::BTreeMap;

use quarterturn_guidance::Catalogue;
use quarterturn_home::{Date, Home};

use crate::Paper;

/// A sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Sheet {
    /// What to do first, for the fridge door.
    Fridge,
    /// The directory of each panel's circuits.
    Panels,
    /// The list of what is worked by hand.
    Valves,
    /// Tags to hang on what is worked by hand.
    Tags,
    /// Everything, for whoever moves in.
    Pack,
    /// The log of troubles, for the insurer and the builder.
    Log,
}

impl Sheet {
    /// Every sheet, in the order they are made.
    pub const ALL: [Self; 6] =
        [Self::Fridge, Self::Panels, Self::Valves, Self::Tags, Self::Pack, Self::Log];

    /// The name of its file, without an ending. It stays the same, so that a newer one replaces the
    /// older.
    #[must_use]
    pub fn file_stem(self) -> &'static str {
        match self {
            Self::Fridge => "fridge-door",
            Self::Panels => "panel-directory",
            Self::Valves => "valve-list",
            Self::Tags => "hang-tags",
            Self::Pack => "handover-pack",
            Self::Log => "log-of-troubles",
        }
    }

    /// The key of its title in the catalogue.
    #[must_use]
    pub fn title_key(self) -> &'static str {
        match self {
            Self::Fridge => "paper-fridge",
            Self::Panels => "paper-panels",
            Self::Valves => "paper-valves",
            Self::Tags => "paper-tags",
            Self::Pack => "paper-pack",
            Self::Log => "paper-log",
        }
    }

    pub(crate) fn template(self) -> &'static str {
        match self {
            Self::Fridge => "fridge.typ",
            Self::Panels => "panels.typ",
            Self::Valves => "valves.typ",
            Self::Tags => "tags.typ",
            Self::Pack => "pack.typ",
            Self::Log => "log.typ",
        }
    }
}

/// What a sheet is made from.
#[derive(Debug, Clone, Copy)]
pub struct Order<'a> {
    /// The home.
    pub home: &'a Home,
    /// Its plans and photos, by the path that the home's file gives.
    pub pictures: &'a BTreeMap<String, Vec<u8>>,
    /// The size of the paper.
    pub paper: Paper,
    /// The language.
    pub words: &'a Catalogue,
    /// The day that is printed on it, and on which valves are judged.
    pub today: Date,
    /// What the handover pack holds beyond the home's own file.
    pub extras: &'a PackExtras,
}

/// What the handover pack holds beyond the home's own file. Empty lists print nothing.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct PackExtras {
    /// The move-in list, in its order.
    pub move_in: Vec<MoveInLine>,
    /// Upkeep that is due, soonest first.
    pub due: Vec<DueLine>,
    /// What happened, latest first; for [`Sheet::Log`], not for the pack.
    pub log: Vec<LogLine>,
}

/// A trouble that was, as the log's sheet tells it.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct LogLine {
    /// The day, and the time if it is known.
    pub when: String,
    /// The trouble.
    pub trouble: String,
    /// Where.
    pub place: String,
    /// What was done, in order.
    pub done: Vec<String>,
    /// What did not work, what was seen, what ended it.
    pub facts: Vec<String>,
}

/// A line of the move-in list.
#[derive(Debug, Clone, PartialEq, Eq, serde::Serialize)]
pub struct MoveInLine {
    /// True if it has been done.
    pub done: bool,
    /// What is to be done.
    pub text: String,
    /// Where, when, or what was found.
    pub note: String,
}

/// A job that is due.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DueLine {
    /// The day by which it is due.
    pub due: Date,
    /// What is to be done.
    pub text: String,
    /// Where, and how.
    pub note: String,
}

/// What is being done, for whoever waits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    /// The answers are worked out and the pictures are made ready.
    Gathering,
    /// The pages are laid out.
    LayingOut,
}

/// Why a sheet could not be printed.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CannotPrint {
    /// The home has nothing that this sheet is about, such as no panel.
    #[error("the home has nothing for this sheet")]
    Nothing,
    /// Whoever waited wanted no more.
    #[error("cancelled")]
    Cancelled,
    /// The layout failed; a fault of the program, not of the home.
    #[error("the page could not be laid out: {0}")]
    Layout(String),
    /// The PDF could not be written; a fault of the program, not of the home.
    #[error("the PDF could not be written: {0}")]
    Pdf(String),
}
