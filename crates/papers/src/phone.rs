//! One HTML file with all the answers in it, for a phone with no network.
//!
//! The page works nothing out: every trouble at every spot, and what comes of it when a device does
//! not turn or a check shows something, is answered beforehand by `quarterturn_guidance`, in every
//! language. It asks nothing of any network (its content security policy forbids it), keeps nothing
//! about anyone, and is useful without scripts: the preview of many phones runs none, and then it
//! shows the numbers to call and the first act of each trouble.

mod amounts;
mod branches;
mod dial;
mod escape;
mod first_acts;
mod frame;
mod observations;
mod picture;
mod plan;
mod system;
mod table;
mod work;

use std::collections::BTreeMap;
use std::ops::ControlFlow;

use quarterturn_guidance::{Catalogue, Spot, Trouble, spots};
use quarterturn_home::{Date, Home};

/// The page, and what could not be put into it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhonePage {
    /// The whole file.
    pub html: String,
    /// Paths of plan pictures that are missing or cannot be read; their floors are drawn from the
    /// outlines of the rooms.
    pub unreadable_pictures: Vec<String>,
}

/// Why there is no page.
#[derive(Debug, thiserror::Error)]
pub enum NoPhonePage {
    /// Whoever asked for it has stopped it.
    #[error("the phone page was cancelled before it was finished")]
    Cancelled,
    /// The answers could not be written down.
    #[error("the answers could not be written as JSON: {0}")]
    Unwritable(#[from] serde_json::Error),
}

/// The phone page of a home, with the answers of a day.
///
/// `pictures` holds the files of the plans, by the paths that the home names. `progress` is told how
/// many of how many troubles and spots are done, and may break it off.
///
/// # Errors
/// If `progress` breaks it off.
pub fn phone_page(
    home: &Home,
    pictures: &BTreeMap<String, Vec<u8>>,
    today: Date,
    progress: &mut dyn FnMut(usize, usize) -> ControlFlow<()>,
) -> Result<PhonePage, NoPhonePage> {
    let catalogues: Vec<Catalogue> =
        Catalogue::languages().iter().map(|l| Catalogue::in_language(l.tag)).collect();
    let plans = plan::Plans::new(home, pictures);
    let questions = questions(home);
    let mut tables = table::Tables::new(home, &catalogues);
    let mut acts = first_acts::FirstActs::new(home, &catalogues);
    let work = work::Work { home, catalogues: &catalogues, today, questions: &questions };
    work.all(&mut |done, asked| {
        acts.take(asked);
        tables.take(asked);
        progress(done, questions.len())
    })?;
    let data = tables.write(&plans, today)?;
    let html = frame::page(home, &catalogues, today, &acts, &data);
    Ok(PhonePage { html, unreadable_pictures: plans.unreadable })
}

/// Every trouble at every spot that makes sense for it, and at no spot in particular: whoever does not
/// find the spot in the list gets general advice.
fn questions(home: &Home) -> Vec<(Trouble, Spot)> {
    let mut questions = Vec::new();
    for &trouble in Trouble::ALL {
        let mut list = spots(home, trouble);
        if !list.contains(&Spot::Home) {
            list.push(Spot::Home);
        }
        questions.extend(list.into_iter().map(|spot| (trouble, spot)));
    }
    questions
}
