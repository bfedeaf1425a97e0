//! A zip into a new home's folder. A zip comes from someone else and may have been made to do harm, so
//! that nothing in it is believed: what it says of its sizes is counted, and what does not belong to a
//! home is refused.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::{BufReader, Read, Seek, Write as _};
use std::path::{Path, PathBuf};

use zip::result::ZipError;
use zip::{CompressionMethod, ZipArchive};

use super::fault::ZipFault;
use super::packing::open;
use crate::kinds::{HOME_FILE, STATE_FOLDER, belongs, plain_parts};
use crate::replace::{parent, sync};
use crate::{Folder, FolderError};

/// What a zip may hold at most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// Files and folders in it.
    pub entries: usize,
    /// Size of one file, unpacked, in MiB.
    pub file_mib: u64,
    /// Size of all files, unpacked, in MiB.
    pub total_mib: u64,
    /// How many times its packed size a file may be. Text of a home is packed about 10 to 1; the most
    /// that deflate reaches is 1032 to 1 (zlib's own documentation).
    pub growth: u64,
}

impl Default for Limits {
    fn default() -> Self {
        Self { entries: 10_000, file_mib: 64, total_mib: 4096, growth: 200 }
    }
}

/// A file may grow beyond measure up to this size: a few blank lines do, and harm nobody.
const SMALL: u64 = 1 << 20;
/// Names that systems leave in folders and zips by themselves.
const DROPPINGS: &[&str] = &["__MACOSX", ".DS_Store", "Thumbs.db", "desktop.ini", STATE_FOLDER];

/// A home that was unpacked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unpacked {
    /// Its folder.
    pub folder: Folder,
    /// What was passed over because the system had put it there, or it was of another session.
    pub passed_over: Vec<String>,
}

/// Unpacks a home into the folder `into`, which must not be there or be empty.
///
/// Zips of the home's files and of its folder are both taken. It is unpacked beside `into` and takes
/// that name once it is whole and holds a home.
///
/// # Errors
/// If anything about the zip is not as it should be, or it cannot be written. Then nothing is left.
pub fn unpack(zip: &Path, into: &Path) -> Result<Unpacked, FolderError> {
    unpack_within(zip, into, Limits::default())
}

/// Like [`unpack`], with other limits.
///
/// # Errors
/// As for [`unpack`].
pub fn unpack_within(zip: &Path, into: &Path, limits: Limits) -> Result<Unpacked, FolderError> {
    let is_empty =
        |folder: &Path| std::fs::read_dir(folder).is_ok_and(|mut entries| entries.next().is_none());
    if std::fs::symlink_metadata(into).is_ok() && !is_empty(into) {
        return Err(FolderError::Occupied { path: into.to_owned() });
    }
    let file = open(zip)?;
    let fault = |fault| FolderError::Zip { zip: zip.to_owned(), fault };
    let writing = |error| FolderError::writing(into, error);

    let mut archive = ZipArchive::new(BufReader::new(file)).map_err(|error| match error {
        ZipError::Io(error) if error.kind() != std::io::ErrorKind::UnexpectedEof => {
            FolderError::reading(zip, error)
        }
        _ => fault(ZipFault::NotAZip),
    })?;
    let plan = Plan::of(&mut archive, limits).map_err(fault)?;

    let mut builder = tempfile::Builder::new();
    builder.prefix(".unpacking-");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        builder.permissions(std::fs::Permissions::from_mode(0o777));
    }
    let place = builder.tempdir_in(parent(into)).map_err(writing)?;
    for (folder, _) in crate::kinds::FOLDERS {
        std::fs::create_dir(place.path().join(folder)).map_err(writing)?;
    }
    let mut left = limits.total_mib << 20;
    for (index, parts) in &plan.files {
        let bytes = unpack_one(&mut archive, *index, limits, left).map_err(fault)?;
        left = left.saturating_sub(bytes.len().try_into().unwrap_or(u64::MAX));
        let target = place.path().join(parts.iter().collect::<PathBuf>());
        let mut file = File::create_new(&target).map_err(writing)?;
        file.write_all(&bytes).and_then(|()| file.sync_all()).map_err(writing)?;
    }
    // It must be a home before it takes the name of one. The path in the error is the zip's.
    Folder::at(place.path())?.read().map_err(|error| match error {
        FolderError::NoHome { problems, .. } => {
            FolderError::NoHome { path: zip.join(HOME_FILE), problems }
        }
        other => other,
    })?;
    for (folder, _) in crate::kinds::FOLDERS {
        // Those that stay empty are not needed; one with files in it is not taken away.
        drop(std::fs::remove_dir(place.path().join(folder)));
    }
    sync(place.path()).map_err(writing)?;
    if into.is_dir() {
        std::fs::remove_dir(into).map_err(writing)?;
    }
    std::fs::rename(place.path(), into).map_err(writing)?;
    // It has another name now, so that there is nothing to clean up.
    drop(place.keep());
    sync(parent(into)).map_err(writing)?;
    Ok(Unpacked { folder: Folder::at(into)?, passed_over: plan.passed_over })
}

/// What is to be unpacked.
struct Plan {
    /// Place in the zip, and the parts of the path from the home's folder.
    files: Vec<(usize, Vec<String>)>,
    passed_over: Vec<String>,
}

impl Plan {
    /// Looks at all names before anything is unpacked.
    fn of<R: Read + Seek>(archive: &mut ZipArchive<R>, limits: Limits) -> Result<Self, ZipFault> {
        if archive.len() > limits.entries {
            return Err(ZipFault::TooMany { most: limits.entries });
        }
        if archive.has_duplicate_names() {
            return Err(ZipFault::Twice { entry: String::new() });
        }
        // Files that share their packed bytes make a small zip grow without any of them growing much.
        if archive.has_overlapping_entries().map_err(|_error| ZipFault::NotAZip)? {
            return Err(ZipFault::NotAZip);
        }
        let mut names = Vec::new();
        let mut passed_over = Vec::new();
        for index in 0..archive.len() {
            let entry = archive.by_index_raw(index).map_err(|_error| ZipFault::NotAZip)?;
            let name = entry.name().map_err(|_error| ZipFault::NotAZip)?.into_owned();
            if entry.is_symlink() {
                return Err(ZipFault::Link { entry: name });
            }
            let path = name.trim_end_matches('/');
            let is_inside = entry.enclosed_name().is_some() && !path.starts_with('/');
            let Some(parts) = plain_parts(path).filter(|_| is_inside) else {
                return Err(ZipFault::Outside { entry: name });
            };
            if entry.encrypted() {
                return Err(ZipFault::Encrypted { entry: name });
            }
            // What else is read depends on what other crates ask of the library.
            let is_ours = [CompressionMethod::Stored, CompressionMethod::Deflated];
            if !is_ours.contains(&entry.compression()) {
                return Err(ZipFault::Method { entry: name });
            }
            if parts.iter().any(|part| DROPPINGS.contains(part)) {
                passed_over.push(name);
            } else if !entry.is_dir() {
                names.push((index, parts.join("/")));
            }
        }
        let top = top_folder(&names).ok_or(ZipFault::NoHomeFile)?;
        let mut files = Vec::new();
        let mut seen = BTreeSet::new();
        for (index, name) in names {
            let inside = name.strip_prefix(top.as_str()).filter(|path| !is_backup(path));
            let Some(path) = inside else {
                if name.starts_with(top.as_str()) {
                    passed_over.push(name);
                    continue;
                }
                return Err(ZipFault::Unexpected { entry: name });
            };
            let Some(parts) = belongs(path) else {
                return Err(ZipFault::Unexpected { entry: name });
            };
            let parts = parts.into_iter().map(str::to_owned).collect();
            // On many systems these are one file.
            if !seen.insert(path.to_lowercase()) {
                return Err(ZipFault::Twice { entry: name });
            }
            files.push((index, parts));
        }
        Ok(Self { files, passed_over })
    }
}

/// What stands before the home file's name: nothing, or the folder that was packed; `None` without one.
fn top_folder(names: &[(usize, String)]) -> Option<String> {
    let homes = names.iter().filter_map(|(_, name)| name.strip_suffix(HOME_FILE));
    homes
        .filter(|top| top.is_empty() || (top.ends_with('/') && top.matches('/').count() == 1))
        .min_by_key(|top| top.len())
        .map(str::to_owned)
}

/// What an earlier session left of the home file.
fn is_backup(path: &str) -> bool {
    path.strip_prefix(HOME_FILE)
        .and_then(|rest| rest.strip_prefix('.'))
        .is_some_and(|ending| ending == crate::kinds::BACKUP_ENDING)
}

/// Unpacks one file, and counts what comes out.
fn unpack_one<R: Read + Seek>(
    archive: &mut ZipArchive<R>,
    index: usize,
    limits: Limits,
    left: u64,
) -> Result<Vec<u8>, ZipFault> {
    let raw = archive.by_index_raw(index).map_err(|_error| ZipFault::NotAZip)?;
    let (entry, packed) = (raw.name().unwrap_or_default().into_owned(), raw.compressed_size());
    drop(raw);
    let grown = packed.saturating_mul(limits.growth).max(SMALL);
    let most = (limits.file_mib << 20).min(left).min(grown);
    let file = match archive.by_index(index) {
        Ok(file) => file,
        Err(_) => return Err(ZipFault::Damaged { entry }),
    };
    let mut bytes = Vec::new();
    let read = file.take(most.saturating_add(1)).read_to_end(&mut bytes);
    let Ok(read) = read.map(|read| u64::try_from(read).unwrap_or(u64::MAX)) else {
        return Err(ZipFault::Damaged { entry });
    };
    if read <= most {
        Ok(bytes)
    } else if most == limits.file_mib << 20 {
        Err(ZipFault::TooLarge { entry, most_mib: limits.file_mib })
    } else if most == left {
        Err(ZipFault::TooLargeAltogether { most_mib: limits.total_mib })
    } else {
        Err(ZipFault::Grows { entry, most: limits.growth })
    }
}
