//! Practice: the same pages as in earnest, against the clock.
//!
//! What the clock says is kept in the home and replaces the estimate for this household.

use std::collections::BTreeSet;

use egui::Ui;
use quarterturn_guidance::{
    Act, Catalogue, Question, Spot, Step, Trouble, Way, answer_on, fill, spots,
};
use quarterturn_home::{Date, Home};

use crate::ask::{Command, StepKey};
use crate::controls::{button, card, main_button, soft, strong, tall_button};
use crate::place;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Where the practice stands.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Practice {
    /// Nobody has started the clock.
    Ready {
        /// Id of the space where one starts from.
        from: Option<String>,
        /// True if the last try found nothing to practise.
        nothing: bool,
    },
    /// The clock runs.
    Running(Running),
    /// The device was found.
    Found(Found),
}

/// A drill under way.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Running {
    /// When it began, in seconds of the window's clock.
    pub(crate) started: f64,
    /// Id of the space where one started.
    pub(crate) from: Option<String>,
}

/// How a drill went.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Found {
    /// Id of the device.
    pub(crate) component: String,
    /// Seconds until one stood at the device.
    pub(crate) seconds: f64,
    /// What had been reckoned with.
    pub(crate) estimate: Option<f64>,
    /// Where one started.
    pub(crate) from: Option<String>,
}

/// Something to practise: the trouble, and where.
pub(crate) type Task = (Trouble, Spot);

/// A task whose answer leads to a device on the map, picked by `seed`; devices that nobody has
/// practised yet come first.
pub(crate) fn task(
    home: &Home,
    words: &Catalogue,
    today: Option<Date>,
    from: Option<&str>,
    seed: u64,
) -> Option<Task> {
    /// Answers looked at before one gives up: a large home has thousands of spots.
    const MOST: usize = 60;
    let mut tasks: Vec<Task> = Trouble::ALL
        .iter()
        .filter(|trouble| !trouble.is_leave_first())
        .flat_map(|&trouble| spots(home, trouble).into_iter().map(move |spot| (trouble, spot)))
        .collect();
    shuffle(&mut tasks, seed);
    let practised: BTreeSet<&str> = home.drills.iter().map(|d| d.component.as_str()).collect();
    let mut known = None;
    for (trouble, spot) in tasks.into_iter().take(MOST) {
        let question = Question {
            trouble,
            at: spot.clone(),
            from: from.map(str::to_owned),
            failed: Vec::new(),
            seen: Vec::new(),
        };
        let answer = answer_on(home, &question, words, today);
        // General advice leads nowhere in particular.
        let goal = answer.steps.iter().find(|step| answer.mapped && is_goal(step));
        let Some(goal) = goal.and_then(|step| step.component.clone()) else { continue };
        if !practised.contains(goal.as_str()) {
            return Some((trouble, spot));
        }
        known.get_or_insert((trouble, spot));
    }
    known
}

/// True if the step sends one to a device to work it.
pub(crate) fn is_goal(step: &Step) -> bool {
    step.component.is_some()
        && matches!(step.act, Act::Close | Act::Open | Act::SwitchOff | Act::Reset | Act::OpenCap)
}

/// Puts a list into an order that `seed` decides (Fisher and Yates, with the steps of a splitmix64).
fn shuffle<T>(list: &mut [T], seed: u64) {
    let mut state = seed;
    for last in (1..list.len()).rev() {
        state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = state;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^= mixed >> 31;
        let other = usize::try_from(mixed % (u64::try_from(last).unwrap_or(u64::MAX - 1) + 1));
        list.swap(last, other.unwrap_or(0));
    }
}

/// The page before the clock runs, and after.
pub(crate) fn practice_ui(
    ui: &mut Ui,
    view: &View<'_>,
    practice: &Practice,
    out: &mut Vec<Command>,
) {
    match practice {
        Practice::Ready { from, nothing } => ready_ui(ui, view, from.as_deref(), *nothing, out),
        Practice::Running(_) => {}
        Practice::Found(found) => found_page_ui(ui, view, found, out),
    }
}

fn ready_ui(
    ui: &mut Ui,
    view: &View<'_>,
    from: Option<&str>,
    nothing: bool,
    out: &mut Vec<Command>,
) {
    ui.label(strong(view.text("practice"), size::HEADING));
    ui.add(egui::Label::new(view.text("practice-how")).wrap());
    ui.add_space(GAP);
    ui.label(strong(view.text("practice-where"), size::BODY));
    let here = from.and_then(|id| view.home.space(id));
    let text = here.map_or_else(|| view.text("stand-unknown"), |space| space.name.clone());
    let combo = egui::ComboBox::from_id_salt("practice-from").selected_text(text).height(400.0);
    let response = combo.show_ui(ui, |ui| {
        for space in &view.home.spaces {
            let is_here = here.is_some_and(|here| here.id == space.id);
            if ui.selectable_label(is_here, &space.name).clicked() {
                out.push(Command::PractiseFrom(space.id.clone()));
            }
        }
    });
    response.response.accessible_name(view.text("stand"));
    ui.add_space(GAP * 2.0);
    if nothing {
        ui.add(egui::Label::new(view.text("practice-nothing")).wrap());
    }
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("practice-start")).clicked() {
            out.push(Command::StartDrill);
        }
        if tall_button(ui, &view.text("back")).clicked() {
            out.push(Command::Leave);
        }
    });
}

fn found_page_ui(ui: &mut Ui, view: &View<'_>, found: &Found, out: &mut Vec<Command>) {
    ui.label(strong(view.text("practice-found"), size::HEADING));
    card(ui, Palette::of(ui).edge_stroke(), |ui| {
        let name = place::name(view.home, &found.component);
        let fills = [fill("device", name), fill("time", &view.exact(found.seconds))];
        ui.add(egui::Label::new(strong(view.fill("practice-took", &fills), size::ACT)).wrap());
        if let Some(estimate) = found.estimate {
            let fills = [fill("time", &view.exact(estimate))];
            ui.add(egui::Label::new(view.fill("practice-reckoned", &fills)).wrap());
        }
        ui.add(egui::Label::new(soft(ui, view.text("practice-kept"))).wrap());
    });
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("practice-again")).clicked() {
            out.push(Command::Practise);
        }
        if tall_button(ui, &view.text("practice-enough")).clicked() {
            out.push(Command::Leave);
        }
    });
}

/// What one presses at a step of a drill.
pub(crate) fn found_ui(
    ui: &mut Ui,
    view: &View<'_>,
    _drill: &Running,
    step: &Step,
    out: &mut Vec<Command>,
) {
    match &step.component {
        Some(id) if is_goal(step) => {
            if main_button(ui, &view.text("practice-found-it")).clicked() {
                out.push(Command::Found { component: id.clone(), walked_back: false });
            }
            if tall_button(ui, &view.text("practice-found-and-back")).clicked() {
                out.push(Command::Found { component: id.clone(), walked_back: true });
            }
        }
        _ => {
            if main_button(ui, &view.text("done")).clicked() {
                out.push(Command::Done(StepKey::of(step)));
            }
        }
    }
    if tall_button(ui, &view.text("practice-stop")).clicked() {
        out.push(Command::Leave);
    }
}

/// Says over everything that this is practice, with the clock.
pub(crate) fn banner_ui(ui: &mut Ui, view: &View<'_>, drill: &Running, out: &mut Vec<Command>) {
    let passed = ui.input(|i| i.time) - drill.started;
    // The clock shows whole seconds: one frame a second is enough.
    ui.ctx().request_repaint_after(std::time::Duration::from_secs_f64(1.0 - passed.fract()));
    ui.horizontal_wrapped(|ui| {
        let fills = [fill("time", &view.exact(passed.floor()))];
        ui.label(strong(view.fill("practice-runs", &fills), size::SECTION));
        ui.label(view.text("practice-do-not-turn"));
        if button(ui, &view.text("practice-stop-here")).clicked() {
            out.push(Command::Leave);
        }
    });
}

/// Seconds for a way at an unhurried pace: a metre a second, and two for each metre of height (common
/// practice; the answers reckon more closely).
pub(crate) fn walk_seconds(way: &Way) -> f64 {
    way.metres + 2.0 * (way.levels_up + way.levels_down)
}

/// Seconds until one stood at the device, from the clock. Who presses the button only after walking
/// back has walked twice: the way back, by the estimate, is taken off, but never more than half.
pub(crate) fn reached(clock: f64, walk_back: Option<f64>) -> f64 {
    (clock - walk_back.unwrap_or(0.0)).max(clock / 2.0).max(1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_way_back_is_no_part_of_the_time() {
        assert!((reached(50.0, None) - 50.0).abs() < 1e-9);
        assert!((reached(50.0, Some(15.0)) - 35.0).abs() < 1e-9);
        assert!((reached(50.0, Some(40.0)) - 25.0).abs() < 1e-9, "a walk back is half at most");
    }

    #[test]
    fn every_device_comes_up_before_one_comes_twice() {
        let words = Catalogue::english();
        let mut home = quarterturn_home::open("home.ron", crate::builtin::HOME).home.unwrap();
        let mut met = BTreeSet::new();
        for seed in 0..12 {
            let (trouble, at) = task(&home, &words, None, None, seed).expect("something to do");
            let question =
                Question { trouble, at, from: None, failed: Vec::new(), seen: Vec::new() };
            let answer = answer_on(&home, &question, &words, None);
            let goal = answer.steps.iter().find(|step| is_goal(step)).unwrap();
            let id = goal.component.clone().unwrap();
            let day = Date::new(2026, 11, 25).unwrap();
            home.drills.push(quarterturn_home::Drill::new(&id, None, 30.0, day));
            assert!(met.insert(id.clone()), "{id} twice");
        }
    }

    #[test]
    fn a_home_without_devices_has_nothing_to_practise() {
        assert_eq!(task(&Home::default(), &Catalogue::english(), None, None, 7), None);
    }
}
