//! Killed at any moment during editing and saving, a home opens with at most the last second lost.

use std::io::{BufRead as _, BufReader};
use std::path::Path;
use std::sync::mpsc::channel;
use std::time::{Duration, Instant};

use quarterturn_folder::{Folder, recover};

use crate::child::{change_of, child, told};

/// Sessions killed altogether, and how many homes they are killed in at the same time.
const KILLS: u32 = 200;
const HOMES: u32 = 4;
/// What may be lost.
const SECOND: Duration = Duration::from_secs(1);

/// A folder with the example home of two storeys, as large as homes are.
pub(crate) fn example(place: &Path) -> Folder {
    let text = include_str!("../../../../examples/two-storey/home.ron");
    let home = quarterturn_home::open("home.ron", text).home.unwrap();
    Folder::create(&place.join("home"), &home).unwrap()
}

#[test]
fn no_home_is_lost_when_its_session_is_killed() {
    std::thread::scope(|scope| {
        for number in 0..HOMES {
            scope.spawn(move || kill_again_and_again(number));
        }
    });
}

fn kill_again_and_again(number: u32) {
    let place = tempfile::tempdir().unwrap();
    let folder = example(place.path());
    // Any sequence does, as long as it is another for each home.
    let mut random = u64::from(number) + 1;
    for kill in 0..KILLS / HOMES {
        random =
            random.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let wait = (random >> 33) % 400;
        let (role, when) = match kill % 10 {
            // Without saving, for more than a second.
            9 => ("edit calmly", When::AfterFirst(1200 + wait)),
            // While it starts and takes up what was left.
            0 | 5 => ("edit busily", When::AfterStart(wait / 2)),
            _ => ("edit busily", When::AfterFirst(wait / 3)),
        };
        let before = reached(&folder);
        let session = run_and_kill(role, folder.root(), when);
        let reached = reached(&folder);
        assert!(reached >= before, "kill {kill}: {before} was there, now {reached}");
        assert!(
            reached >= session.must_be_there,
            "kill {kill}, {when:?}: {} must be there, {reached} is",
            session.must_be_there
        );
        assert!(reached <= session.submitted.max(before), "kill {kill}: {reached} out of nowhere");
    }
    assert!(reached(&folder) > 0, "no session came to write anything");
}

/// When a session is killed, in milliseconds.
#[derive(Debug, Clone, Copy)]
enum When {
    AfterStart(u64),
    /// After the first change.
    AfterFirst(u64),
}

/// What a session told before it was killed.
struct Session {
    submitted: u64,
    /// Flushed, or submitted more than a second before it was killed.
    must_be_there: u64,
}

fn run_and_kill(role: &str, folder: &Path, when: When) -> Session {
    let mut running = child(role, folder).spawn().unwrap();
    let mut lines = BufReader::new(running.stdout.take().unwrap());
    let (send, first) = channel();
    let reader = std::thread::spawn(move || {
        let mut heard = Vec::new();
        let mut line = Vec::new();
        while lines.read_until(b'\n', &mut line).is_ok_and(|read| read > 0) {
            // When it is heard it was submitted a little before.
            heard.extend(told(&line).into_iter().map(|told| (Instant::now(), told)));
            line.clear();
            if !heard.is_empty() {
                // Only the first time someone listens.
                send.send(()).ok();
            }
        }
        heard
    });
    let wait = match when {
        When::AfterStart(wait) => wait,
        When::AfterFirst(wait) => {
            first.recv().unwrap();
            wait
        }
    };
    std::thread::sleep(Duration::from_millis(wait));
    let killed = Instant::now();
    // On Unix this is signal 9.
    running.kill().unwrap();
    running.wait().unwrap();
    let mut session = Session { submitted: 0, must_be_there: 0 };
    for (when, line) in reader.join().unwrap() {
        let (what, n) = line.split_once(' ').unwrap();
        let n: u64 = n.parse().unwrap();
        session.submitted = session.submitted.max(n);
        if what == "flushed" || when + SECOND < killed {
            session.must_be_there = session.must_be_there.max(n);
        }
    }
    session
}

/// The change that a home has come to, on disk: saved, or left unsaved.
fn reached(folder: &Folder) -> u64 {
    let reading = folder.read().unwrap();
    assert!(reading.problems.is_empty(), "{:?}", reading.problems);
    let saved = change_of(&reading.home);
    let Some(left) = recover(folder).unwrap() else { return saved };
    let left = change_of(&left.home);
    assert!(left > saved, "{left} is offered although {saved} is saved");
    left
}
