//! What probably feeds and drains the device that is picked: proposed, and drawn only when accepted.

use std::sync::Arc;

use egui::Ui;
use quarterturn_guidance::{count, fill};
use quarterturn_home::{Home, attached};
use quarterturn_mapping::{Proposal, medium_key, proposals_for};

use super::Command;
use super::choose::{main_pressed, pressed, say};
use crate::app::App;
use crate::ask::{Command as Press, Page};
use crate::controls::{card, section, soft};
use crate::place;
use crate::tokens::Palette;
use crate::view::View;

/// The proposals for a device and what hangs on it alone, worked out once for each state of the home.
#[derive(Debug, Default)]
pub(super) struct Offers {
    /// What they were worked out for.
    of: Option<(Arc<Home>, String)>,
    pub(super) list: Vec<Proposal>,
}

/// Works them out anew if the home or what is picked has changed.
pub(super) fn poll(app: &mut App) {
    let offers = &mut app.map.walk.offers;
    let id = app.map.selected.as_deref().filter(|_| app.page == Page::Map);
    let Some(id) = id else {
        *offers = Offers::default();
        return;
    };
    let home = app.history.home();
    if offers.of.as_ref().is_some_and(|(of, picked)| Arc::ptr_eq(of, home) && picked == id) {
        return;
    }
    let group = attached(home, id);
    let ids = std::iter::once(id).chain(group.iter().map(String::as_str));
    offers.list = ids.flat_map(|id| proposals_for(home, id)).collect();
    offers.of = Some((Arc::clone(home), id.to_owned()));
}

/// Each with a button that draws it, and one for all.
pub(super) fn offers_ui(ui: &mut Ui, view: &View<'_>, offers: &Offers, out: &mut Vec<Press>) {
    if offers.list.is_empty() {
        return;
    }
    section(ui, &view.text("offers"));
    card(ui, Palette::of(ui).edge_stroke(), |ui| {
        for proposal in &offers.list {
            let line = &proposal.line;
            let fills = [
                fill("from", place::name(view.home, &line.from)),
                fill("to", place::name(view.home, &line.to)),
                fill("medium", &view.words.text(medium_key(line.carries))),
            ];
            ui.add(egui::Label::new(view.fill("offer", &fills)).wrap());
            ui.add(egui::Label::new(soft(ui, proposal.why.text(view.words))).wrap());
            let response = crate::controls::button(ui, &view.text("offer-yes"));
            let response = response.accessible_name(view.fill("offer-accept", &fills));
            crate::controls::focus_ring(ui, &response);
            if response.clicked() {
                say(out, Command::Accept(Box::new(proposal.clone())));
            }
        }
        if offers.list.len() > 1 {
            let many = u32::try_from(offers.list.len()).map_or(0.0, f64::from);
            if main_pressed(ui, &view.fill("offers-all", &[count("n", many)])) {
                say(out, Command::AcceptAll);
            }
        }
    });
}

/// The button that goes on to the next thing.
pub(super) fn next_ui(ui: &mut Ui, view: &View<'_>, offers: &Offers, out: &mut Vec<Press>) {
    let text = view.text("device-next");
    // While something is proposed, that is the next thing to do.
    let is_pressed =
        if offers.list.is_empty() { main_pressed(ui, &text) } else { pressed(ui, &text) };
    if is_pressed {
        out.push(Press::Map(super::MapCommand::Select(None)));
    }
}
