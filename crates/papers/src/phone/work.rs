//! Works through all the questions on all the cores, and hands the answers over in order.

use std::collections::BTreeMap;
use std::num::NonZero;
use std::ops::ControlFlow;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc;

use quarterturn_guidance::{Catalogue, Guide, Spot, Trouble};
use quarterturn_home::{Date, Home};

use super::NoPhonePage;
use super::branches::{Asked, follow};

/// Most threads: beyond that the one who writes the table is the slowest.
const MOST_THREADS: usize = 8;
/// Most answers for one trouble at one spot.
const MOST_NODES: usize = 32;
/// Most answers for the page as a whole, as far as each spot has its first one. A home of 400
/// components has some 2000 troubles and spots.
const MOST_IN_ALL: usize = 16_000;

/// All that is to be answered.
#[derive(Debug, Clone, Copy)]
pub(super) struct Work<'a> {
    pub(super) home: &'a Home,
    pub(super) catalogues: &'a [Catalogue],
    pub(super) today: Date,
    pub(super) questions: &'a [(Trouble, Spot)],
}

impl Work<'_> {
    /// Answers every question; `take` gets how many are done and each with all that may come of it,
    /// in the order of the questions, and may break it off.
    pub(super) fn all(
        self,
        take: &mut dyn FnMut(usize, &Asked) -> ControlFlow<()>,
    ) -> Result<(), NoPhonePage> {
        let most = (MOST_IN_ALL / self.questions.len().max(1)).clamp(4, MOST_NODES);
        let threads = std::thread::available_parallelism().map_or(1, NonZero::get);
        let (next, stop) = (AtomicUsize::new(0), AtomicBool::new(false));
        std::thread::scope(|scope| {
            let (send, arrivals) = mpsc::channel();
            for _ in 0..threads.min(MOST_THREADS) {
                let (send, next, stop) = (send.clone(), &next, &stop);
                scope.spawn(move || {
                    let guide = Guide::of(self.home);
                    while !stop.load(Ordering::Relaxed) {
                        let at = next.fetch_add(1, Ordering::Relaxed);
                        let Some((trouble, spot)) = self.questions.get(at) else { break };
                        let spot = spot.clone();
                        let asked =
                            follow(&guide, self.catalogues, self.today, most, *trouble, spot);
                        if send.send((at, asked)).is_err() {
                            break;
                        }
                    }
                });
            }
            drop(send);
            let mut early: BTreeMap<usize, Asked> = BTreeMap::new();
            let mut done = 0;
            for (at, asked) in arrivals {
                early.insert(at, asked);
                while let Some(asked) = early.remove(&done) {
                    done += 1;
                    if take(done, &asked).is_break() {
                        stop.store(true, Ordering::Relaxed);
                        return Err(NoPhonePage::Cancelled);
                    }
                }
            }
            Ok(())
        })
    }
}
