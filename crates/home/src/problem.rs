//! What is wrong with a home file, with its place and a way out.

/// How bad a problem is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Something in the file could not be used and was left out.
    Error,
    /// Everything could be used, but something looks wrong.
    Warning,
}

/// One thing that is wrong with a home file.
///
/// It holds no words for people: `key` and `args` name a text of the catalogue
/// (`problem-<key>` for the cause, `problem-<key>-remedy` for the way out).
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// How bad it is.
    pub severity: Severity,
    /// File name as given by the caller.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// Which text of the catalogue tells it.
    pub key: &'static str,
    /// What fills the text's places: name, value.
    pub args: Vec<(&'static str, String)>,
}

/// What became of a home file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Opened {
    /// The home, with what is sound. `None` if the text could not be read at all.
    pub home: Option<crate::Home>,
    /// What is wrong, by place.
    pub problems: Vec<Problem>,
    /// What could not be read, so that saving can write it back.
    pub kept: crate::Kept,
}
