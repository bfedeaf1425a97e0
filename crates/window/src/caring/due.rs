//! What is due: how it is done, and what was found.

use egui::Ui;
use quarterturn_guidance::fill;
use quarterturn_home::{DeviceState, Done, Edit};
use quarterturn_upkeep::{Part, Upkeep, record};

use super::{Command, State, typed};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, card, chosen_button, line, main_button, section, soft, strong};
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// Writes down that a job was done: to all of its parts, or to one of them with what was found there.
pub(super) fn done(app: &mut App, job: String, found: Option<(String, DeviceState)>) {
    let Some(on) = app.today else {
        app.message = Some(app.words.text("window-no-day"));
        return;
    };
    let text = |text: &str| Some(text.trim().to_owned()).filter(|text| !text.is_empty());
    let done = Done {
        job,
        on,
        by: text(&app.care.initials),
        components: found.iter().map(|(part, _)| part.clone()).collect(),
        finding: found.as_ref().map(|(_, finding)| *finding),
        note: text(&app.care.note),
    };
    match record(app.history.home(), done) {
        Ok(edits) => {
            if app.edit(Edit::All(edits)) && found.is_none() {
                app.care.open = None;
                app.care.note.clear();
            }
        }
        Err(error) => {
            let fills = [fill("why", &error.to_string())];
            app.message = Some(app.words.fill("window-care-not-recorded", &fills));
        }
    }
}

/// What is due, the most urgent first.
pub(super) fn due_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    let Some(due) = &state.due else {
        ui.label(view.text("no-day"));
        return;
    };
    if due.is_empty() {
        ui.add(egui::Label::new(view.text("care-nothing-due")).wrap());
    }
    for (key, jobs) in [
        ("care-overdue", &due.overdue),
        ("care-this-month", &due.this_month),
        ("care-later", &due.later),
        ("care-once", &due.once),
    ] {
        if jobs.is_empty() {
            continue;
        }
        section(ui, &view.text(key));
        for job in jobs {
            job_ui(ui, view, state, job, out);
        }
    }
}

fn job_ui(ui: &mut Ui, view: &View<'_>, state: &State, job: &Upkeep, out: &mut Vec<Press>) {
    let is_open = state.open.as_ref() == Some(&job.id);
    let edge = Palette::of(ui).edge_stroke();
    card(ui, edge, |ui| {
        line(ui, |ui| {
            ui.add(egui::Label::new(strong(job.name.as_str(), size::BODY)).wrap());
            if let Some(day) = job.due {
                let day = quarterturn_guidance::told_day(view.words, day);
                ui.label(soft(ui, view.fill("care-by-day", &[fill("day", &day)])));
            }
        });
        if is_open {
            open_ui(ui, view, state, job, out);
            return;
        }
        let label = view.fill("care-open-of", &[fill("job", &job.name)]);
        if button(ui, &view.text("care-open")).accessible_name(label).clicked() {
            out.push(Press::Care(Command::Open(Some(job.id.clone()))));
        }
    });
}

/// How it is done, and the ways it may have turned out.
fn open_ui(ui: &mut Ui, view: &View<'_>, state: &State, job: &Upkeep, out: &mut Vec<Press>) {
    let mut told = |text: &str| {
        ui.add(egui::Label::new(text).wrap());
    };
    for caution in &job.cautions {
        told(&caution.text);
    }
    for text in job.how.iter().chain(&job.note) {
        told(text);
    }
    if !job.tools.is_empty() {
        told(&view.fill("tool", &[fill("tool", &view.words.list(&job.tools))]));
    }
    if let Some(by) = &job.by {
        told(by);
    }
    if let Some(source) = &job.source {
        ui.add(egui::Label::new(soft(ui, source.as_str())).wrap());
    }
    if let Some(initials) = typed(ui, "care-initials", &view.text("care-initials"), &state.initials)
    {
        out.push(Press::Care(Command::Initials(initials)));
    }
    if let Some(note) = typed(ui, "care-note", &view.text("care-note"), &state.note) {
        out.push(Press::Care(Command::Note(note)));
    }
    ui.add_space(GAP);
    for part in &job.parts {
        part_ui(ui, view, job, part, out);
    }
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("care-done")).clicked() {
            out.push(Press::Care(Command::Done(job.id.clone(), None)));
        }
        if button(ui, &view.text("care-close")).clicked() {
            out.push(Press::Care(Command::Open(None)));
        }
    });
}

/// One thing that the job is done to, and what may be found there.
fn part_ui(ui: &mut Ui, view: &View<'_>, job: &Upkeep, part: &Part, out: &mut Vec<Press>) {
    ui.add(egui::Label::new(part.name.as_str()).wrap());
    let Some(component) = view.home.component(&part.id) else { return };
    ui.horizontal_wrapped(|ui| {
        for (finding, key) in crate::after::STATES {
            let text = view.text(key);
            let fills = [fill("device", &component.name), fill("lesson", &text)];
            let label = view.fill("learnt-of", &fills);
            let is_known = component.state() == finding;
            if chosen_button(ui, &text, is_known).accessible_name(label).clicked() {
                let found = Some((part.id.clone(), finding));
                out.push(Press::Care(Command::Done(job.id.clone(), found)));
            }
        }
    });
}
