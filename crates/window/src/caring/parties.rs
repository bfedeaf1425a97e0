//! Who answers for what: numbers and hours, warranties and until when, and who is called first for a
//! device today.

use egui::{ComboBox, Ui};
use quarterturn_guidance::{Spot, fill, last_day, responsible, told_day};
use quarterturn_home::{Contact, Edit, Net};

use super::{Command as Care, typed};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, card, main_button, section, soft, strong};
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// What is being changed.
#[derive(Debug, Default)]
pub(crate) struct State {
    /// The contact that is being changed.
    contact: Option<Contact>,
    /// The device that one asks about.
    device: Option<String>,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Change this contact; `None` leaves it.
    Change(Option<Box<Contact>>),
    /// Keep it as it is typed.
    Keep,
    /// Take it out.
    Remove(String),
    /// Ask about this device.
    Ask(String),
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, command: Command) {
    match command {
        Command::Change(contact) => app.care.parties.contact = contact.map(|contact| *contact),
        Command::Keep => {
            let Some(mut contact) = app.care.parties.contact.clone() else { return };
            if contact.id.is_empty() {
                contact.id = app.history.home().free_id(&contact.name);
            }
            if app.edit(Edit::PutContact(Box::new(contact))) {
                app.care.parties.contact = None;
            }
        }
        Command::Remove(id) => {
            if app.edit(Edit::RemoveContact { id }) {
                app.care.parties.contact = None;
            }
        }
        Command::Ask(device) => app.care.parties.device = Some(device),
    }
}

/// The part of the page.
pub(super) fn parties_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    first_ui(ui, view, state, out);
    section(ui, &view.text("care-contacts"));
    for contact in &view.home.contacts {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            match state.contact.as_ref().filter(|changed| changed.id == contact.id) {
                Some(changed) => change_ui(ui, view, changed, out),
                None => contact_ui(ui, view, contact, out),
            }
        });
    }
    match state.contact.as_ref().filter(|changed| changed.id.is_empty()) {
        Some(new) => card(ui, Palette::of(ui).edge_stroke(), |ui| change_ui(ui, view, new, out)),
        None => {
            if button(ui, &view.text("care-new-contact")).clicked() {
                out.push(change(Some(Contact {
                    id: String::new(),
                    name: String::new(),
                    phone: None,
                    role: None,
                    hours: None,
                    note: None,
                })));
            }
        }
    }
    warranties_ui(ui, view);
}

fn change(contact: Option<Contact>) -> Press {
    Press::Care(Care::Parties(Command::Change(contact.map(Box::new))))
}

fn contact_ui(ui: &mut Ui, view: &View<'_>, contact: &Contact, out: &mut Vec<Press>) {
    ui.add(egui::Label::new(strong(contact.name.as_str(), size::BODY)).wrap());
    let phone = contact.phone.clone().unwrap_or_else(|| view.text("no-number"));
    ui.label(strong(phone, size::PHONE_BESIDES));
    for text in contact.hours.iter().chain(&contact.note) {
        ui.add(egui::Label::new(soft(ui, text.as_str())).wrap());
    }
    let label = view.fill("care-change-of", &[fill("name", &contact.name)]);
    if button(ui, &view.text("care-change")).accessible_name(label).clicked() {
        out.push(change(Some(contact.clone())));
    }
}

fn change_ui(ui: &mut Ui, view: &View<'_>, contact: &Contact, out: &mut Vec<Press>) {
    let optional = |text: String| Some(text).filter(|text| !text.trim().is_empty());
    let or_empty = |text: &Option<String>| text.clone().unwrap_or_default();
    if let Some(name) = typed(ui, "contact-name", &view.text("care-name"), &contact.name) {
        out.push(change(Some(Contact { name, ..contact.clone() })));
    }
    let phone = or_empty(&contact.phone);
    if let Some(phone) = typed(ui, "contact-phone", &view.text("care-phone"), &phone) {
        out.push(change(Some(Contact { phone: optional(phone), ..contact.clone() })));
    }
    let hours = or_empty(&contact.hours);
    if let Some(hours) = typed(ui, "contact-hours", &view.text("care-hours"), &hours) {
        out.push(change(Some(Contact { hours: optional(hours), ..contact.clone() })));
    }
    ui.add_space(GAP);
    ui.horizontal_wrapped(|ui| {
        if main_button(ui, &view.text("care-keep")).clicked() && !contact.name.trim().is_empty() {
            out.push(Press::Care(Care::Parties(Command::Keep)));
        }
        if button(ui, &view.text("cancel")).clicked() {
            out.push(change(None));
        }
        if !contact.id.is_empty() && button(ui, &view.text("care-remove")).clicked() {
            out.push(Press::Care(Care::Parties(Command::Remove(contact.id.clone()))));
        }
    });
}

/// Who is called first for a device today, and why.
fn first_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    section(ui, &view.text("care-first"));
    let device = state.device.as_deref().and_then(|id| view.home.component(id));
    let text = device.map_or_else(|| view.text("care-which-device"), |c| c.name.clone());
    let combo =
        ComboBox::from_id_salt("care-device").selected_text(text).height(400.0).width(320.0);
    let combo = combo.show_ui(ui, |ui| {
        for component in &view.home.components {
            let is_chosen = device.is_some_and(|device| device.id == component.id);
            if ui.selectable_label(is_chosen, &component.name).clicked() {
                out.push(Press::Care(Care::Parties(Command::Ask(component.id.clone()))));
            }
        }
    });
    combo.response.accessible_name(view.text("care-which-device"));
    let Some(device) = device else { return };
    let spot = Spot::Component(device.id.clone());
    let nets = [Net::Water, Net::Waste, Net::Power, Net::Condensate, Net::Gas];
    let first =
        nets.into_iter().find_map(|net| responsible(view.home, &spot, net, view.today, view.words));
    card(ui, Palette::of(ui).edge_stroke(), |ui| match first {
        Some(first) => {
            if let Some(phone) = &first.first.phone {
                ui.label(strong(phone.as_str(), size::PHONE));
            }
            ui.add(egui::Label::new(strong(first.first.name.as_str(), size::BODY)).wrap());
            ui.add(egui::Label::new(first.first.why.as_str()).wrap());
        }
        None => {
            ui.add(egui::Label::new(view.text("care-first-unknown")).wrap());
        }
    });
}

fn warranties_ui(ui: &mut Ui, view: &View<'_>) {
    if view.home.warranties.is_empty() {
        return;
    }
    section(ui, &view.text("care-warranties"));
    for warranty in &view.home.warranties {
        card(ui, Palette::of(ui).edge_stroke(), |ui| {
            ui.add(egui::Label::new(strong(warranty.name.as_str(), size::BODY)).wrap());
            let contact = warranty.contact.as_deref().and_then(|id| view.home.contact(id));
            if let Some(contact) = contact {
                ui.add(egui::Label::new(contact.name.as_str()).wrap());
            }
            let from = told_day(view.words, warranty.from);
            let text = match last_day(warranty) {
                Some(last) => {
                    let last = told_day(view.words, last);
                    view.fill("care-from-until", &[fill("from", &from), fill("until", &last)])
                }
                None => view.fill("care-from", &[fill("from", &from)]),
            };
            ui.add(egui::Label::new(soft(ui, text)).wrap());
        });
    }
}
