//! A home on disk: opening, saving that survives a kill, one writer, one zip.
//!
//! A home is a folder with `home.ron`, `plans/`, `photos/` and perhaps `documents/` and `log.ron`.
//! Beside them stands `.quarterturn/`, with the lock of the one who may write and with what is not
//! saved yet. The crate never draws, never decodes a picture, and never decides what a home is.
//!
//! - [`Folder`] reads: the home, its pictures, and small files beside it.
//! - [`Hold`] is the right to write a home, which one process has at a time.
//! - [`Autosave`] keeps what is being edited, on a thread of its own, at most a second behind.
//! - [`recover`] finds what a session left that came to a sudden end.
//! - [`pack`] and [`unpack`] make a home one zip and back.
//! - [`write_whole`] writes any other file, such as a paper, whole or not at all.
//!
//! ```
//! use quarterturn_folder::{Folder, recover};
//! use quarterturn_home::Home;
//!
//! let place = tempfile::tempdir()?;
//! let home = Home { format: 1, name: "Hut".to_owned(), ..Home::default() };
//! let folder = Folder::create(&place.path().join("hut"), &home)?;
//!
//! let reading = folder.read()?;
//! let mut hold = folder.hold(&reading)?;
//! hold.save(&Home { name: "Cabin".to_owned(), ..reading.home })?;
//! assert_eq!(folder.read()?.home.name, "Cabin");
//! assert!(recover(&folder)?.is_none());
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod autosave;
mod beside;
mod error;
mod folder;
mod hold;
mod kinds;
mod lock;
mod pictures;
mod replace;
mod stamp;
mod unsaved;
mod zipped;

pub use autosave::{Autosave, Report};
pub use beside::Beside;
pub use error::FolderError;
pub use folder::{Folder, Reading};
pub use hold::Hold;
pub use lock::Holder;
pub use replace::write_whole;
pub use stamp::Stamp;
pub use unsaved::{Unsaved, recover};
pub use zipped::{Limits, Unpacked, ZipFault, pack, pack_into, unpack, unpack_within};
