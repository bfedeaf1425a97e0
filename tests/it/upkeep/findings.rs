//! What is found when a job is done flows into the next answer.

use quarterturn_guidance::{Answer, Catalogue, Question, Spot, Trouble, answer_on};
use quarterturn_home::{DeviceState, Done, Edit, History, Home};
use quarterturn_upkeep::{CannotRecord, due, record};

use super::{day, home};
use crate::homes::example;

fn done(job: &str, on: &str, components: &[&str], finding: Option<DeviceState>) -> Done {
    Done {
        job: job.to_owned(),
        on: day(on),
        by: Some("A. B.".to_owned()),
        components: components.iter().map(|id| (*id).to_owned()).collect(),
        finding,
        note: None,
    }
}

fn recorded(home: &Home, done: Done) -> Home {
    let mut history = History::new(home.clone());
    for edit in record(home, done).unwrap() {
        history.apply(edit).unwrap();
    }
    Home::clone(history.home())
}

fn leak(home: &Home, today: &str) -> Answer {
    let question = Question {
        trouble: Trouble::Leak,
        at: Spot::Component("kitchen-cold-hose".to_owned()),
        from: None,
        failed: Vec::new(),
        seen: Vec::new(),
    };
    answer_on(home, &question, &Catalogue::english(), Some(day(today)))
}

#[test]
fn a_valve_entered_as_seized_changes_the_next_answer() {
    let before = example("two-storey");
    let stop = "kitchen-cold-stop";
    let names = |answer: &Answer| answer.sets[0].close.clone();
    assert_eq!(names(&leak(&before, "2026-06-20")), [stop]);
    let seized = done("stops", "2026-06-19", &[stop], Some(DeviceState::Seized));
    let after = recorded(&before, seized);
    let answer = leak(&after, "2026-06-20");
    assert_eq!(names(&answer), ["cold-ground-valve"]);
    assert!(answer.sets.iter().all(|set| !set.close.contains(&stop.to_owned())));
    assert!(answer.steps.iter().all(|step| step.component.as_deref() != Some(stop)));
    // The history is kept in the file.
    let opened =
        quarterturn_home::open("home.ron", &quarterturn_home::save(&after, &Default::default()));
    assert_eq!(opened.home.as_ref(), Some(&after));
    assert_eq!(after.done.last().unwrap().finding, Some(DeviceState::Seized));
}

#[test]
fn a_stiff_valve_is_trusted_less_and_one_that_works_more() {
    let before = example("two-storey");
    let confidence = |home: &Home| leak(home, "2030-01-01").sets[0].confidence;
    let stiff = done("stops", "2029-12-30", &["kitchen-cold-stop"], Some(DeviceState::Stiff));
    let works = done("stops", "2029-12-30", &["kitchen-cold-stop"], Some(DeviceState::Works));
    let years_ago = confidence(&before);
    assert!(confidence(&recorded(&before, works)) > years_ago);
    let stiff = recorded(&before, stiff);
    let set = |home: &Home| {
        let answer = leak(home, "2030-01-01");
        answer.sets.iter().find(|set| set.close == ["kitchen-cold-stop"]).map(|set| set.confidence)
    };
    assert!(set(&stiff).unwrap() < set(&before).unwrap());
}

#[test]
fn working_a_device_sets_its_day_and_an_older_note_changes_no_newer_one() {
    let before = home(
        r#"components: [(id: "v", kind: IsolatingValve, name: "V", operates: (state: Stiff, exercised: "2026-05-02")),
            (id: "w", kind: IsolatingValve, name: "W")]"#,
    );
    let all = recorded(&before, done("exercise", "2026-06-01", &[], None));
    let operates = |home: &Home, id: &str| home.component(id).unwrap().operates.clone().unwrap();
    for id in ["v", "w"] {
        assert_eq!(operates(&all, id).exercised, Some(day("2026-06-01")), "{id}");
    }
    // Nobody said how they turned out: what was known stays.
    assert_eq!(operates(&all, "v").state, DeviceState::Stiff);
    assert_eq!(operates(&all, "w").state, DeviceState::Unknown);
    let old = done("exercise", "2026-01-01", &["v"], Some(DeviceState::Seized));
    let edits = record(&all, old).unwrap();
    assert!(matches!(edits.as_slice(), [Edit::AddDone(_)]), "{edits:?}");
}

#[test]
fn what_was_done_is_not_due_again_until_its_time() {
    let words = Catalogue::english();
    let before = home(
        r#"components: [(id: "a", kind: SmokeAlarm, name: "A"), (id: "b", kind: SmokeAlarm, name: "B")]"#,
    );
    let find = |home: &Home, today: &str| {
        let list = due(home, day(today), &words);
        let job = list.all().find(|job| job.id == "alarm-test").unwrap().clone();
        (job.due.unwrap().to_string(), list.overdue.iter().any(|job| job.id == "alarm-test"))
    };
    assert_eq!(find(&before, "2026-06-10"), ("2026-06-10".to_owned(), false));
    let one = recorded(&before, done("alarm-test", "2026-06-10", &["a"], None));
    // The other one was never tested.
    assert_eq!(find(&one, "2026-06-11"), ("2026-06-11".to_owned(), false));
    let both = recorded(&one, done("alarm-test", "2026-06-30", &[], None));
    assert_eq!(find(&both, "2026-07-30"), ("2026-07-30".to_owned(), false));
    assert_eq!(find(&both, "2026-07-31"), ("2026-07-30".to_owned(), true));
}

#[test]
fn what_cannot_be_written_down_is_refused() {
    let before = example("two-storey");
    let none = record(&before, done("polish", "2026-06-01", &[], None));
    assert_eq!(none, Err(CannotRecord::NoJob("polish".to_owned())));
    let stranger = record(&before, done("stops", "2026-06-01", &["dryer"], None));
    let job = "stops".to_owned();
    assert_eq!(stranger, Err(CannotRecord::NotItsPart { job, component: "dryer".to_owned() }));
}
