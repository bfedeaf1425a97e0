//! Writing down that a job was done, and what was found.

use quarterturn_guidance::Catalogue;
use quarterturn_home::{Done, Edit, Home, Kind, Net};

use crate::job::jobs;

/// Why something cannot be written down.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CannotRecord {
    /// The home has no such job.
    #[error("no job has the id {0:?}")]
    NoJob(String),
    /// The job is not done to this component.
    #[error("the job {job:?} is not done to {component:?}")]
    NotItsPart {
        /// The job.
        job: String,
        /// The component.
        component: String,
    },
}

/// The edits that write down that a job was done. A finding sets the state of the devices, so that
/// the next answer knows it; working a device sets its day, unless a later one is known.
///
/// # Errors
/// If the home has no such job, or the job is not done to one of the components.
pub fn record(home: &Home, done: Done) -> Result<Vec<Edit>, CannotRecord> {
    // The words do not matter here: only what the job is done to.
    let words = Catalogue::english();
    let all = jobs(home, done.on, &words);
    // A job that does not come again and was done before is not in the list any more.
    let job = all.iter().find(|job| job.id == done.job);
    let own = home.jobs.iter().find(|job| job.id == done.job);
    if job.is_none() && own.is_none() {
        return Err(CannotRecord::NoJob(done.job));
    }
    let parts: Vec<String> = match (job, own) {
        (Some(job), _) => job.parts.iter().map(|part| part.id.clone()).collect(),
        (None, own) => own.map_or_else(Vec::new, |job| job.components.clone()),
    };
    if let Some(stranger) = done.components.iter().find(|id| !parts.contains(id)) {
        return Err(CannotRecord::NotItsPart { job: done.job, component: stranger.clone() });
    }
    let exercises = job.is_some_and(|job| job.exercises);
    let worked = if done.components.is_empty() { parts } else { done.components.clone() };
    let mut edits = Vec::new();
    for component in worked.iter().filter_map(|id| home.component(id)) {
        let known = component.operates.as_ref().and_then(|operates| operates.exercised);
        let is_newest = known.is_none_or(|known| known <= done.on);
        // An outlet or a hose has no state of its own: the note is the place for what was found.
        let is_device = component.operates.is_some() || is_worked(component.kind);
        let state = match done.finding {
            Some(finding) => finding,
            None if exercises => component.state(),
            None => continue,
        };
        if is_newest && is_device {
            edits.push(Edit::SetState {
                id: component.id.clone(),
                state,
                exercised: Some(done.on),
            });
        }
    }
    edits.push(Edit::AddDone(Box::new(done)));
    Ok(edits)
}

fn is_worked(kind: Kind) -> bool {
    Net::ALL.iter().any(|net| kind.isolates(*net))
        || matches!(kind, Kind::Gfci | Kind::Switch | Kind::Cleanout)
}
