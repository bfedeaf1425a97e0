//! What a home file holds beyond the home: what could not be used, and the comments at its top.

/// The parts of a home file that are not in its [`Home`](crate::Home), so that saving loses none.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Kept {
    /// Comments above the attribute line.
    pub above: Vec<String>,
    /// Comments between the attribute line and the home.
    pub below: Vec<String>,
    /// Pieces that could not be used, in the order of the file.
    pub pieces: Vec<KeptPiece>,
    /// What stood after the home.
    pub after: Option<String>,
}

/// A piece of a home file that could not be used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct KeptPiece {
    /// The list it stood in, such as `components`; empty for the home itself.
    pub list: String,
    /// Its text, word for word. Empty if a field that must be there is missing.
    pub text: String,
    /// Where in the list it stood.
    pub place: KeptPlace,
}

/// Where a piece stood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum KeptPlace {
    /// An element of the list.
    Element {
        /// Key of the sound element before it.
        after: Option<String>,
        /// How many sound elements were before it.
        index: usize,
    },
    /// A field of an element.
    Field {
        /// Key of the element; empty for the home itself.
        element: String,
        /// The struct inside the element, such as `operates`; empty for the element itself.
        inner: String,
        /// The field of the model that it stands for; `None` for one that the model has not.
        field: Option<String>,
        /// What saving would write in its place. Once the field holds something else, someone has
        /// put it right, and the piece is dropped.
        instead: Option<String>,
    },
}
