//! Writing a file so that it holds either all of the old or all of the new, whatever happens.

use std::ffi::OsString;
use std::fs::{File, Metadata};
use std::io::{self, ErrorKind, Write as _};
use std::path::Path;

use tempfile::{Builder, NamedTempFile};

/// What files end in that are only half written.
const PART: &str = ".part";

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
    let part = written(target, fill)?;
    if let Some(permissions) = existing(target)?.map(|metadata| metadata.permissions()) {
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
        builder.permissions(std::fs::Permissions::from_mode(0o666));
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
        std::fs::set_permissions(&file, std::fs::Permissions::from_mode(0o640)).unwrap();
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
