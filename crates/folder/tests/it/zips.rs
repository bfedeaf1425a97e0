//! Zips that are made to do harm, cut off or changed anywhere.

use std::fs::File;
use std::io::{Cursor, Write as _};
use std::path::Path;

use proptest::prelude::*;
use quarterturn_folder::{
    Folder, FolderError, Limits, Unpacked, ZipFault, pack, pack_into, unpack, unpack_within,
};
use quarterturn_home::Home;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

const HOME: &[u8] = b"#![enable(implicit_some)]\nHome(format: 1, name: \"Hut\", units: Us)\n";
const PNG: &[u8] = b"\x89PNG\r\n\x1a\n and so on";

/// A zip of these files.
fn zip(files: &[(&str, &[u8])]) -> Vec<u8> {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in files {
        if name.ends_with('/') {
            writer.add_directory(*name, SimpleFileOptions::default()).unwrap();
        } else {
            writer.start_file(*name, deflated()).unwrap();
            writer.write_all(bytes).unwrap();
        }
    }
    writer.finish().unwrap().into_inner()
}

fn deflated() -> SimpleFileOptions {
    SimpleFileOptions::default().compression_method(CompressionMethod::Deflated)
}

/// Unpacks bytes within limits. What it does not refuse must be a home, and what it does leaves nothing.
fn try_within(bytes: &[u8], limits: Limits) -> Result<(Unpacked, tempfile::TempDir), FolderError> {
    let place = tempfile::tempdir().unwrap();
    let file = place.path().join("sent.zip");
    File::create(&file).unwrap().write_all(bytes).unwrap();
    let into = place.path().join("home");
    let unpacked = unpack_within(&file, &into, limits);
    let mut names: Vec<_> = std::fs::read_dir(place.path())
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    match unpacked {
        Ok(unpacked) => {
            assert_eq!(names, ["home", "sent.zip"]);
            unpacked.folder.read().unwrap();
            Ok((unpacked, place))
        }
        Err(error) => {
            assert_eq!(names, ["sent.zip"], "{error}");
            Err(error)
        }
    }
}

fn fault(bytes: &[u8]) -> ZipFault {
    fault_within(bytes, Limits::default())
}

fn fault_within(bytes: &[u8], limits: Limits) -> ZipFault {
    match try_within(bytes, limits) {
        Err(FolderError::Zip { fault, .. }) => fault,
        other => panic!("{other:?}"),
    }
}

fn files_of(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files.extend(files_of(&path));
        } else {
            files.push((
                path.file_name().unwrap().to_str().unwrap().to_owned(),
                std::fs::read(&path).unwrap(),
            ));
        }
    }
    files.sort();
    files
}

#[test]
fn a_home_comes_out_as_it_went_in() {
    let place = tempfile::tempdir().unwrap();
    for name in ["flat", "old-house", "two-storey"] {
        let example = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(name);
        let folder = Folder::at(&example).unwrap();
        let bytes = pack(&folder).unwrap();
        assert_eq!(bytes, pack(&folder).unwrap(), "{name}: the same home gives the same bytes");
        let file = place.path().join(format!("{name}.zip"));
        pack_into(&folder, &file).unwrap();
        assert_eq!(std::fs::read(&file).unwrap(), bytes);
        assert_eq!(pack_into(&folder, &file).unwrap_err().key(), "folder-occupied");
        let unpacked = unpack(&file, &place.path().join(name)).unwrap();
        assert_eq!(unpacked.passed_over, Vec::<String>::new());
        assert_eq!(files_of(unpacked.folder.root()), files_of(&example), "{name}");
    }
}

#[test]
fn a_session_and_its_leftovers_are_not_sent() {
    let place = tempfile::tempdir().unwrap();
    let home = Home { format: 1, name: "Hut".to_owned(), ..Home::default() };
    let folder = Folder::create(&place.path().join("hut"), &home).unwrap();
    folder.write_beside("log.ron", b"[]", None).unwrap();
    let photo = folder.store_photo("main", PNG).unwrap();
    let mut hold = folder.hold(&folder.read().unwrap()).unwrap();
    hold.save(&Home { name: "Cabin".to_owned(), ..home }).unwrap();
    let archive = zip::ZipArchive::new(Cursor::new(pack(&folder).unwrap())).unwrap();
    let names: Vec<String> = archive.file_names().map(|name| name.unwrap().into_owned()).collect();
    assert_eq!(names, ["home.ron", "log.ron", photo.as_str()]);
}

#[test]
fn a_folder_that_was_zipped_by_other_means_is_taken() {
    let bytes = zip(&[
        ("hut/", b""),
        ("hut/home.ron", HOME),
        ("hut/home.ron.bak", HOME),
        ("hut/.DS_Store", b"x"),
        ("hut/.quarterturn/home.lock", b"1 attic"),
        ("hut/plans/", b""),
        ("hut/plans/ground.png", PNG),
        ("__MACOSX/hut/._home.ron", b"x"),
    ]);
    let (unpacked, _place) = try_within(&bytes, Limits::default()).unwrap();
    assert_eq!(unpacked.folder.read_inside("plans/ground.png").unwrap(), PNG);
    assert_eq!(
        unpacked.passed_over,
        [
            "hut/.DS_Store",
            "hut/.quarterturn/home.lock",
            "__MACOSX/hut/._home.ron",
            "hut/home.ron.bak"
        ]
    );
    assert_eq!(files_of(unpacked.folder.root()).len(), 2);
}

#[test]
fn what_is_there_is_not_unpacked_over() {
    let place = tempfile::tempdir().unwrap();
    let file = place.path().join("sent.zip");
    File::create(&file).unwrap().write_all(&zip(&[("home.ron", HOME)])).unwrap();
    let into = place.path().join("home");
    std::fs::create_dir(&into).unwrap();
    unpack(&file, &into).unwrap();
    assert_eq!(unpack(&file, &into).unwrap_err().key(), "folder-occupied");
    assert_eq!(unpack(&file, &file).unwrap_err().key(), "folder-occupied");
    assert_eq!(
        unpack(&place.path().join("none"), &place.path().join("x")).unwrap_err().key(),
        "folder-missing"
    );
}

#[test]
fn no_path_leads_out() {
    for name in [
        "../home.ron",
        "plans/../../evil.png",
        "/etc/evil.png",
        "plans/../plans/../../evil.png",
        "..\\evil.png",
        "C:\\evil.png",
        "c:evil.png",
        "\\\\server\\evil.png",
        "plans/evil.png:hidden.png",
        "plans/ev\0il.png",
    ] {
        let fault = fault(&zip(&[("home.ron", HOME), (name, PNG)]));
        assert!(matches!(fault, ZipFault::Outside { .. }), "{name}: {fault}");
    }
}

#[test]
fn links_are_refused() {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    writer.start_file("home.ron", deflated()).unwrap();
    writer.write_all(HOME).unwrap();
    writer.add_symlink("plans", "/etc", SimpleFileOptions::default()).unwrap();
    let bytes = writer.finish().unwrap().into_inner();
    assert_eq!(fault(&bytes), ZipFault::Link { entry: "plans".to_owned() });
}

#[test]
fn only_what_belongs_to_a_home_is_taken() {
    for name in
        ["run.sh", "plans/run.exe", "plans/deep/ground.png", "other/home.ron", "photos/a.svg"]
    {
        let fault = fault(&zip(&[("home.ron", HOME), (name, b"x")]));
        assert_eq!(fault, ZipFault::Unexpected { entry: name.to_owned() });
    }
    assert_eq!(fault(&zip(&[("plans/ground.png", PNG)])), ZipFault::NoHomeFile);
    assert_eq!(fault(&zip(&[("a/b/home.ron", HOME)])), ZipFault::NoHomeFile);
    assert_eq!(fault(&zip(&[])), ZipFault::NoHomeFile);
    let error = try_within(&zip(&[("home.ron", b"no home")]), Limits::default()).unwrap_err();
    assert_eq!(error.key(), "folder-no-home");
}

#[test]
fn names_that_are_one_file_elsewhere_are_refused() {
    let files: &[(&str, &[u8])] = &[("home.ron", HOME), ("plans/a.png", PNG), ("plans/A.png", PNG)];
    assert_eq!(fault(&zip(files)), ZipFault::Twice { entry: "plans/A.png".to_owned() });
    // The same name twice, which no writer makes: the name of another entry is changed.
    let mut bytes = zip(&[("home.ron", HOME), ("plans/a.png", PNG), ("plans/b.png", PNG)]);
    replace_all(&mut bytes, b"plans/b.png", b"plans/a.png");
    assert!(matches!(fault(&bytes), ZipFault::Twice { .. }));
}

#[test]
fn a_zip_that_grows_beyond_measure_is_refused() {
    let zeros = vec![0; 40 << 20];
    let bytes = zip(&[("home.ron", HOME), ("plans/a.png", &zeros)]);
    assert!(bytes.len() < 100_000);
    assert_eq!(fault(&bytes), ZipFault::Grows { entry: "plans/a.png".to_owned(), most: 200 });
    // What it says of its size is not believed.
    let mut lying = bytes.clone();
    let size = u32::try_from(zeros.len()).unwrap().to_le_bytes();
    replace_all(&mut lying, &size, &100u32.to_le_bytes());
    assert_ne!(lying, bytes);
    assert!(matches!(fault(&lying), ZipFault::Grows { .. } | ZipFault::Damaged { .. }));
}

#[test]
fn sizes_and_numbers_are_limited() {
    let random: Vec<u8> =
        (0..3u32 << 20).map(|n| (n.wrapping_mul(2_654_435_761) >> 24) as u8).collect();
    let limits = Limits { file_mib: 2, ..Limits::default() };
    let bytes = zip(&[("home.ron", HOME), ("plans/a.png", &random)]);
    let large = ZipFault::TooLarge { entry: "plans/a.png".to_owned(), most_mib: 2 };
    assert_eq!(fault_within(&bytes, limits), large);

    let limits = Limits { total_mib: 4, ..Limits::default() };
    assert!(try_within(&bytes, limits).is_ok());
    let bytes = zip(&[("home.ron", HOME), ("plans/a.png", &random), ("plans/b.png", &random)]);
    assert_eq!(fault_within(&bytes, limits), ZipFault::TooLargeAltogether { most_mib: 4 });

    let names: Vec<String> = (0..20).map(|n| format!("plans/{n}.png")).collect();
    let mut files: Vec<(&str, &[u8])> = vec![("home.ron", HOME)];
    files.extend(names.iter().map(|name| (name.as_str(), PNG)));
    let limits = Limits { entries: 20, ..Limits::default() };
    assert_eq!(fault_within(&zip(&files), limits), ZipFault::TooMany { most: 20 });
    assert!(try_within(&zip(&files[..20]), limits).is_ok());
}

#[test]
fn files_that_share_their_bytes_are_refused() {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    writer.start_file("home.ron", deflated()).unwrap();
    writer.write_all(HOME).unwrap();
    writer.start_file("plans/a.png", deflated()).unwrap();
    writer.write_all(PNG).unwrap();
    for n in 0..5 {
        writer.shallow_copy_file("plans/a.png", &format!("plans/{n}.png")).unwrap();
    }
    assert_eq!(fault(&writer.finish().unwrap().into_inner()), ZipFault::NotAZip);
}

#[test]
fn what_cannot_be_read_is_told_by_its_reason() {
    let good = zip(&[("home.ron", HOME), ("plans/a.png", PNG)]);
    // Bit 0 of the flags: encrypted. Local header PK\3\4: flags at 6; central PK\1\2: at 8.
    let mut locked = good.clone();
    for at in starts(&good, b"PK\x03\x04") {
        locked[at + 6] |= 1;
    }
    for at in starts(&good, b"PK\x01\x02") {
        locked[at + 8] |= 1;
    }
    assert!(matches!(fault(&locked), ZipFault::Encrypted { .. }));
    // A method that is not built in, such as 14, LZMA. Local header: at 8; central: at 10.
    let mut strange = good.clone();
    for at in starts(&good, b"PK\x03\x04") {
        strange[at + 8] = 14;
    }
    for at in starts(&good, b"PK\x01\x02") {
        strange[at + 10] = 14;
    }
    assert!(matches!(fault(&strange), ZipFault::Method { .. }));
    // One bit of the packed bytes.
    let mut damaged = good.clone();
    damaged[30 + "home.ron".len() + 10] ^= 4;
    assert_eq!(fault(&damaged), ZipFault::Damaged { entry: "home.ron".to_owned() });
}

#[test]
fn a_zip_that_is_cut_off_anywhere_is_refused() {
    let good = zip(&[("home.ron", HOME), ("plans/a.png", PNG)]);
    assert!(try_within(&good, Limits::default()).is_ok());
    for end in 0..good.len() {
        assert!(try_within(&good[..end], Limits::default()).is_err(), "cut off at {end}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn any_bytes_are_refused_without_panic(bytes: Vec<u8>) {
        prop_assert!(try_within(&bytes, Limits::default()).is_err());
    }

    #[test]
    fn a_zip_changed_anywhere_does_no_harm(changes in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..6)) {
        let mut bytes = zip(&[("home.ron", HOME), ("log.ron", b"[]"), ("plans/a.png", PNG)]);
        for (at, with) in changes {
            let at = at.index(bytes.len());
            bytes[at] = with;
        }
        if let Ok((unpacked, _place)) = try_within(&bytes, Limits::default()) {
            prop_assert!(files_of(unpacked.folder.root()).len() <= 3);
        }
    }
}

fn starts(bytes: &[u8], of: &[u8]) -> Vec<usize> {
    bytes.windows(of.len()).enumerate().filter(|(_, w)| *w == of).map(|(at, _)| at).collect()
}

fn replace_all(bytes: &mut [u8], old: &[u8], new: &[u8]) {
    for at in starts(bytes, old) {
        bytes[at..at + new.len()].copy_from_slice(new);
    }
}
