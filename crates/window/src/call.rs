//! Whom to call: numbers that are read from across the room, who pays and why, and the address to
//! read out.

use egui::Ui;
use quarterturn_guidance::{Call, fill};

use crate::controls::{card, section, soft, strong};
use crate::tokens::{Palette, size};
use crate::view::View;

/// Whom to call. A utility that only might be needed gets one line below those that this trouble
/// needs.
pub(crate) fn calls_ui(ui: &mut Ui, view: &View<'_>, calls: &[Call]) {
    if calls.is_empty() {
        return;
    }
    address_ui(ui, view);
    section(ui, &view.text("call"));
    let palette = Palette::of(ui);
    // The reason that the answer gives to whoever has no other.
    let no_reason = view.words.text("why-utility");
    let (besides, needed): (Vec<&Call>, Vec<&Call>) =
        calls.iter().partition(|call| call.why == no_reason);
    card(ui, palette.edge_stroke(), |ui| {
        for (n, call) in needed.iter().enumerate() {
            if n > 0 {
                ui.separator();
            }
            call_ui(ui, view, call);
        }
        if !besides.is_empty() {
            if !needed.is_empty() {
                ui.separator();
            }
            besides_ui(ui, view, &besides);
        }
    });
}

/// The address, as it is read out to who comes.
fn address_ui(ui: &mut Ui, view: &View<'_>) {
    card(ui, Palette::of(ui).edge_stroke(), |ui| {
        ui.label(soft(ui, view.text("address")));
        ui.add(match &view.home.address {
            Some(address) => egui::Label::new(strong(address.as_str(), size::TILE)).wrap(),
            None => egui::Label::new(view.text("no-address")).wrap(),
        });
    });
}

/// A line for each, without a reason.
fn besides_ui(ui: &mut Ui, view: &View<'_>, calls: &[&Call]) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        ui.spacing_mut().item_spacing.y = 2.0;
        ui.label(soft(ui, view.text("call-besides")));
        for call in calls {
            ui.horizontal_wrapped(|ui| {
                if let Some(phone) = &call.phone {
                    ui.label(strong(phone.as_str(), size::PHONE_BESIDES));
                    ui.label(call.name.as_str());
                } else {
                    ui.label(view.fill("call-line-without", &[fill("name", &call.name)]));
                }
            });
        }
    });
}

fn call_ui(ui: &mut Ui, view: &View<'_>, call: &Call) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        ui.spacing_mut().item_spacing.y = 0.0;
        ui.add(match &call.phone {
            Some(phone) => egui::Label::new(strong(phone.as_str(), size::PHONE)).wrap(),
            None => egui::Label::new(soft(ui, view.text("no-number"))).wrap(),
        });
        ui.add(egui::Label::new(strong(call.name.as_str(), size::BODY)).wrap());
        ui.add(egui::Label::new(call.why.as_str()).wrap());
    });
}
