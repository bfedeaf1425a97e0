//! Making folders: a new home, a copy, a zip unpacked. Off the window's own thread.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};

use quarterturn_folder::{Folder, FolderError, pack_into, unpack};
use quarterturn_home::Home;

/// What becomes of it: the folder of the home.
pub(super) type Made = Result<PathBuf, FolderError>;

/// Starts it in a thread.
pub(super) fn start(
    ctx: &egui::Context,
    make: impl FnOnce() -> Made + Send + 'static,
) -> Receiver<Made> {
    let (send, made) = channel();
    let ctx = ctx.clone();
    std::thread::spawn(move || {
        let done = make();
        // Nobody waits any more if the box was closed meanwhile.
        if send.send(done).is_ok() {
            ctx.request_repaint();
        }
    });
    made
}

/// Makes the folder that `path` is to be in.
fn make_parent(path: &Path) -> Result<(), FolderError> {
    let Some(parent) = path.parent().filter(|parent| !parent.as_os_str().is_empty()) else {
        return Ok(());
    };
    std::fs::create_dir_all(parent)
        .map_err(|source| FolderError::Unwritten { path: parent.to_owned(), source })
}

/// A folder with a new home.
pub(super) fn create(to: &Path, home: &Home) -> Made {
    make_parent(to)?;
    Folder::create(to, home).map(|folder| folder.root().to_owned())
}

/// A folder unpacked from a zip.
pub(super) fn unzip(zip: &Path, to: &Path) -> Made {
    make_parent(to)?;
    unpack(zip, to).map(|unpacked| unpacked.folder.root().to_owned())
}

/// A copy of a home as it is in the window, with everything that is in its folder; of the home that is
/// built in, with its pictures.
pub(super) fn copy(from: Option<&Folder>, home: &Home, to: &Path) -> Made {
    make_parent(to)?;
    let Some(from) = from else { return copy_built_in(home, to) };
    // By way of a zip, which takes along all that belongs to a home and nothing else.
    let zip = to.with_extension("copying.zip");
    pack_into(from, &zip)?;
    let unpacked = unpack(&zip, to);
    // The copy is there or is not; the zip is of no use any more.
    drop(std::fs::remove_file(&zip));
    save_in(&unpacked?.folder, home)
}

fn copy_built_in(home: &Home, to: &Path) -> Made {
    let folder = Folder::create(to, home)?;
    let mut home = home.clone();
    for level in &mut home.levels {
        let Some(plan) = &mut level.plan else { continue };
        if let Some(bytes) = crate::builtin::picture(&plan.picture) {
            plan.picture = folder.store_plan(&level.id, bytes)?;
        }
    }
    save_in(&folder, &home)
}

fn save_in(folder: &Folder, home: &Home) -> Made {
    let reading = folder.read()?;
    folder.hold(&reading)?.save(home)?;
    Ok(folder.root().to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fresh(name: &str) -> PathBuf {
        let path = std::env::temp_dir().join(format!("qt-work-{}-{name}", std::process::id()));
        drop(std::fs::remove_dir_all(&path));
        path
    }

    #[test]
    fn the_built_in_home_is_copied_with_its_plans() {
        let to = fresh("built-in").join("deeper");
        let mut home = crate::Opening::built_in().home;
        home.name = "Ours".to_owned();
        let root = copy(None, &home, &to).unwrap();
        let folder = Folder::at(&root).unwrap();
        let read = folder.read().unwrap().home;
        assert_eq!((read.name.as_str(), &read.components), ("Ours", &home.components));
        for level in &read.levels {
            assert!(folder.read_inside(&level.plan.as_ref().unwrap().picture).is_ok());
        }
        // What is there is not overwritten.
        assert!(matches!(copy(None, &home, &to), Err(FolderError::Occupied { .. })));
        std::fs::remove_dir_all(to.parent().unwrap()).unwrap();
    }

    #[test]
    fn a_copy_of_a_folder_is_what_the_window_has_not_what_the_file_has() {
        let base = fresh("folder");
        let home = crate::Opening::built_in().home;
        let first = copy(None, &home, &base.join("first")).unwrap();
        let first = Folder::at(&first).unwrap();
        let changed = Home { name: "Changed".to_owned(), ..first.read().unwrap().home };
        let second = copy(Some(&first), &changed, &base.join("second")).unwrap();
        let second = Folder::at(&second).unwrap();
        assert_eq!(second.read().unwrap().home, changed);
        let plan = changed.levels[0].plan.as_ref().unwrap();
        assert!(second.read_inside(&plan.picture).is_ok());
        assert_ne!(first.read().unwrap().home.name, "Changed");
        assert!(!base.join("second.copying.zip").exists());
        std::fs::remove_dir_all(base).unwrap();
    }
}
