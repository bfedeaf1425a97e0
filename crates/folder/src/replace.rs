//! Writing a file so that it holds either all of the old or all of the new, whatever happens.

use std::ffi::OsString;
use std::fs::{File, Metadata, Permissions};
use std::io::{self, ErrorKind, Write as _};
use std::path::Path;

use tempfile::{Builder, NamedTempFile};

use crate::FolderError;

/// What files end in that are only half written.
const PART: &str = ".part";

/// Writes a file, such as a paper that was asked for, whole or not at all.
///
/// What was there is replaced in one step, once the new file is on the disk: whoever pulls the plug
/// has the old one or the new one. The new one keeps the old one's permissions. What is
/// write-protected is not replaced, also where the file system would let it.
///
/// ```
/// # let place = tempfile::tempdir()?;
/// let file = place.path().join("calendar.ics");
/// quarterturn_folder::write_whole(&file, b"BEGIN:VCALENDAR")?;
/// assert_eq!(std::fs::read(&file)?, b"BEGIN:VCALENDAR");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// If its folder is not there ([`FolderError::Gone`]), it may not be written
/// ([`FolderError::ReadOnly`]), there is no room ([`FolderError::Full`]), or the system fails it for
/// another reason. The old file is untouched then.
pub fn write_whole(file: &Path, bytes: &[u8]) -> Result<(), FolderError> {
    replace(file, bytes).map_err(|error| FolderError::writing(file, error))
}

/// Puts `bytes` in place of the file `target`.
pub(crate) fn replace(target: &Path, bytes: &[u8]) -> io::Result<()> {
    replace_with(target, |file| file.write_all(bytes))
}

/// Puts what `fill` writes in place of the file `target`, which keeps its permissions.
///
/// It is written beside the target and synced before it takes the target's name, which the file
/// system does in one step. If anything fails the target is as it was.
pub(crate) fn replace_with(
    target: &Path,
    fill: impl FnOnce(&mut File) -> io::Result<()>,
) -> io::Result<()> {
    let permissions = existing(target)?.map(|metadata| metadata.permissions());
    // Unix asks the folder alone; whoever protected the file meant the file.
    if permissions.as_ref().is_some_and(Permissions::readonly) {
        return Err(ErrorKind::PermissionDenied.into());
    }
    let part = written(target, fill)?;
    if let Some(permissions) = permissions {
        part.as_file().set_permissions(permissions)?;
    }
    part.as_file().sync_all()?;
    part.persist(target).map_err(|failed| failed.error)?;
    sync(parent(target))
}

/// Puts what `fill` writes into the file `target`, unless there is such a file already.
pub(crate) fn create_with(
    target: &Path,
    fill: impl FnOnce(&mut File) -> io::Result<()>,
) -> io::Result<()> {
    let part = written(target, fill)?;
    part.as_file().sync_all()?;
    part.persist_noclobber(target).map_err(|failed| failed.error)?;
    sync(parent(target))
}

/// Takes away what writers of `target` left half written when they came to a sudden end. To be called
/// only by the one who may write it.
pub(crate) fn sweep(target: &Path) {
    let (Ok(entries), Some(start)) = (std::fs::read_dir(parent(target)), part_start(target)) else {
        return;
    };
    for entry in entries.flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        if name.starts_with(&*start.to_string_lossy()) && name.ends_with(PART) {
            // What cannot be taken away does no harm.
            drop(std::fs::remove_file(entry.path()));
        }
    }
}

/// Makes the names in a folder last; without it a power cut may bring the old ones back.
pub(crate) fn sync(folder: &Path) -> io::Result<()> {
    #[cfg(unix)]
    match File::open(folder)?.sync_all() {
        // Some network file systems cannot; the file itself is synced.
        Err(error) if matches!(error.kind(), ErrorKind::InvalidInput | ErrorKind::Unsupported) => {}
        other => other?,
    }
    Ok(())
}

/// The folder that a file stands in.
pub(crate) fn parent(file: &Path) -> &Path {
    match file.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

fn written(
    target: &Path,
    fill: impl FnOnce(&mut File) -> io::Result<()>,
) -> io::Result<NamedTempFile> {
    let start = part_start(target).ok_or(ErrorKind::InvalidInput)?;
    let mut builder = Builder::new();
    builder.prefix(&start).suffix(PART);
    // As any new file: readable by all whom the user's own setting lets read it.
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        builder.permissions(Permissions::from_mode(0o666));
    }
    let mut part = builder.tempfile_in(parent(target))?;
    fill(part.as_file_mut())?;
    Ok(part)
}

/// What the name of a half-written file begins with: `.home.ron.` for `home.ron`.
fn part_start(target: &Path) -> Option<OsString> {
    let mut start = OsString::from(".");
    start.push(target.file_name()?);
    start.push(".");
    Some(start)
}

fn existing(target: &Path) -> io::Result<Option<Metadata>> {
    match std::fs::metadata(target) {
        Ok(metadata) => Ok(Some(metadata)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(folder: &Path) -> Vec<String> {
        let mut names: Vec<String> = std::fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }

    #[test]
    fn a_writer_that_fails_half_way_leaves_the_file_as_it_was() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("home.ron");
        replace(&file, b"old").unwrap();
        let failed = replace_with(&file, |file| {
            file.write_all(b"ne")?;
            Err(ErrorKind::StorageFull.into())
        });
        assert_eq!(failed.unwrap_err().kind(), ErrorKind::StorageFull);
        assert_eq!(std::fs::read(&file).unwrap(), b"old");
        assert_eq!(names(folder.path()), ["home.ron"]);
    }

    #[test]
    fn a_file_is_written_and_written_over_and_nothing_is_left_beside_it() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("panel.pdf");
        write_whole(&file, b"first").unwrap();
        write_whole(&file, b"2nd").unwrap();
        assert_eq!(std::fs::read(&file).unwrap(), b"2nd");
        assert_eq!(names(folder.path()), ["panel.pdf"]);
    }

    #[test]
    fn a_protected_file_is_not_written_over() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("panel.pdf");
        write_whole(&file, b"kept").unwrap();
        let mut permissions = std::fs::metadata(&file).unwrap().permissions();
        permissions.set_readonly(true);
        std::fs::set_permissions(&file, permissions).unwrap();
        let error = write_whole(&file, b"new").unwrap_err();
        assert!(matches!(&error, FolderError::ReadOnly { path, .. } if *path == file), "{error:?}");
        assert_eq!(std::fs::read(&file).unwrap(), b"kept");
        assert_eq!(names(folder.path()), ["panel.pdf"]);
    }

    #[test]
    fn a_folder_that_is_missing_is_named_and_not_made() {
        let place = tempfile::tempdir().unwrap();
        let folder = place.path().join("papers");
        let error = write_whole(&folder.join("panel.pdf"), b"new").unwrap_err();
        assert!(matches!(&error, FolderError::Gone { folder: told } if *told == folder));
        assert!(!folder.exists());
    }

    #[test]
    fn where_a_folder_stands_or_a_file_instead_of_one_nothing_is_written() {
        let place = tempfile::tempdir().unwrap();
        let folder = place.path().join("papers");
        std::fs::create_dir(&folder).unwrap();
        let error = write_whole(&folder, b"new").unwrap_err();
        assert!(error.to_string().contains("papers"), "{error}");
        write_whole(&folder.join("file"), b"kept").unwrap();
        let error = write_whole(&folder.join("file").join("panel.pdf"), b"new").unwrap_err();
        assert!(error.to_string().contains("panel.pdf"), "{error}");
        assert_eq!(names(place.path()), ["papers"]);
        assert_eq!(names(&folder), ["file"]);
        let error = write_whole(&folder.join(".."), b"new").unwrap_err();
        assert!(matches!(error, FolderError::Unwritten { .. }), "{error:?}");
    }

    #[test]
    fn what_is_there_is_not_created_anew() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("photo.jpg");
        create_with(&file, |file| file.write_all(b"first")).unwrap();
        let failed = create_with(&file, |file| file.write_all(b"second")).unwrap_err();
        assert_eq!(failed.kind(), ErrorKind::AlreadyExists);
        assert_eq!(std::fs::read(&file).unwrap(), b"first");
        assert_eq!(names(folder.path()), ["photo.jpg"]);
    }

    #[cfg(unix)]
    #[test]
    fn permissions_are_kept_and_new_files_are_like_any_other() {
        use std::os::unix::fs::PermissionsExt as _;
        let folder = tempfile::tempdir().unwrap();
        let mode = |path: &Path| std::fs::metadata(path).unwrap().permissions().mode() & 0o777;
        let plain = folder.path().join("plain");
        drop(File::create(&plain).unwrap());
        let file = folder.path().join("home.ron");
        replace(&file, b"old").unwrap();
        assert_eq!(mode(&file), mode(&plain));
        std::fs::set_permissions(&file, Permissions::from_mode(0o640)).unwrap();
        replace(&file, b"new").unwrap();
        assert_eq!(mode(&file), 0o640);
    }

    #[test]
    fn only_parts_of_this_file_are_swept() {
        let folder = tempfile::tempdir().unwrap();
        for name in [".home.ron.x1.part", ".other.ron.x1.part", ".home.ron.x1", "home.ron"] {
            drop(File::create(folder.path().join(name)).unwrap());
        }
        sweep(&folder.path().join("home.ron"));
        assert_eq!(names(folder.path()), [".home.ron.x1", ".other.ron.x1.part", "home.ron"]);
    }
}
