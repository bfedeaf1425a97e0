//! A home's folder into a zip.

use std::fs::File;
use std::io::{self, Cursor, ErrorKind, Seek, Write};
use std::path::Path;

use zip::result::ZipError;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

use crate::folder::read_at_most;
use crate::kinds::{HOME_FILE, LARGEST_FILE_MIB, LARGEST_HOME_MIB};
use crate::{Folder, FolderError};

/// The home as one zip: its file as it was last saved, plans, photos, papers and log. The same home
/// gives the same bytes.
///
/// # Errors
/// If one of its files cannot be read.
pub fn pack(folder: &Folder) -> Result<Vec<u8>, FolderError> {
    let mut bytes = Cursor::new(Vec::new());
    pack_to(folder, &mut bytes, folder.root())?;
    Ok(bytes.into_inner())
}

/// Writes the home into a new zip. It never takes the place of a file that is there.
///
/// # Errors
/// If there is such a file already, it cannot be written, or a file of the home cannot be read.
pub fn pack_into(folder: &Folder, zip: &Path) -> Result<(), FolderError> {
    let mut failed = None;
    let written = crate::replace::create_with(zip, |file| {
        pack_to(folder, file, zip).map_err(|error| {
            failed = Some(error);
            ErrorKind::Other.into()
        })
    });
    match (failed, written) {
        (Some(error), _) => Err(error),
        (None, Err(error)) => Err(FolderError::writing(zip, error)),
        (None, Ok(())) => Ok(()),
    }
}

fn pack_to(folder: &Folder, to: impl Write + Seek, zip: &Path) -> Result<(), FolderError> {
    let writing = |error| FolderError::writing(zip, from_zip(error));
    let mut writer = ZipWriter::new(to);
    for path in folder.members()? {
        let is_home = path == HOME_FILE;
        let bytes = if is_home {
            folder.home_bytes()?
        } else {
            read_at_most(&folder.root().join(&path), LARGEST_FILE_MIB.max(LARGEST_HOME_MIB))?
        };
        // Pictures are compressed already.
        let method = match is_home || path.ends_with(".ron") || path.ends_with(".txt") {
            true => CompressionMethod::Deflated,
            false => CompressionMethod::Stored,
        };
        let options = SimpleFileOptions::default()
            .compression_method(method)
            .last_modified_time(DateTime::default())
            .unix_permissions(0o644);
        writer.start_file(path.as_str(), options).map_err(writing)?;
        writer.write_all(&bytes).map_err(|error| FolderError::writing(zip, error))?;
    }
    writer.finish().map_err(writing)?;
    Ok(())
}

fn from_zip(error: ZipError) -> io::Error {
    match error {
        ZipError::Io(error) => error,
        other => io::Error::other(other),
    }
}

/// A file that was packed, to be read.
pub(super) fn open(zip: &Path) -> Result<File, FolderError> {
    File::open(zip).map_err(|error| FolderError::reading(zip, error))
}
