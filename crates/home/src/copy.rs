//! A home for someone else: for the next lot of the same type, mirrored, or for the next owner.

use std::collections::BTreeSet;

use crate::attached::unknown;
use crate::{Contact, Date, Home, Role};

/// A copy of the home for the next lot of the same type: the house, without those who live in it.
///
/// | stays | goes |
/// | --- | --- |
/// | levels, plans, spaces, passages, places, outlines | the home's name and address: the copy gets its own; where north is: the next lot may lie otherwise |
/// | components with kind, name, tag, ratings, handle, tool, notes | states, days and seconds of devices: nobody tried those of another house |
/// | connections, jobs with their intervals | days on which jobs were done, what was done, drills, ticks of the move-in list |
/// | contacts whose ids are in `keep_contacts` | all other contacts, and every mention of them |
/// | documents that are not private | private documents; notes of private components; every photo, for it shows another house and what its people own |
/// | warranties, from `closes` on | warranties, if `closes` is not known: they run from a day |
///
/// The log is a file of its own and is not copied either. Tags stay since the same labels are printed for
/// each lot. Whether a contact serves the next lot too (the builder, the utilities) only a person
/// knows, hence the choice.
#[must_use]
pub fn copy_for_next_lot(home: &Home, keep_contacts: &[&str], closes: Option<Date>) -> Home {
    let mut copy = home.clone();
    copy.name = String::new();
    copy.address = None;
    copy.north_deg = None;
    copy.done.clear();
    copy.move_in.clear();
    copy.drills.clear();
    for job in &mut copy.jobs {
        job.last_done = None;
    }
    copy.components = std::mem::take(&mut copy.components)
        .into_iter()
        .map(|component| {
            let tag = component.tag.clone();
            crate::Component { tag, ..unknown(component) }
        })
        .collect();
    leave_out_private(&mut copy);
    match closes {
        Some(day) => copy.warranties.iter_mut().for_each(|warranty| warranty.from = day),
        None => copy.warranties.clear(),
    }
    let kept: BTreeSet<&str> = keep_contacts.iter().copied().collect();
    let gone: Vec<String> = copy
        .contacts
        .iter()
        .map(|c| c.id.clone())
        .filter(|id| !kept.contains(id.as_str()))
        .collect();
    for id in gone {
        crate::remove::remove_contact(&mut copy, &id);
    }
    copy
}

/// The home as its next owner gets it, at a sale.
///
/// | stays | goes |
/// | --- | --- |
/// | all of the house, with states and days of devices: they are its history | drills: they measure people |
/// | what was done of the upkeep, and when | who did it, and their remarks |
/// | warranties with their days | ticks of the move-in list: the next owner makes them |
/// | contacts of businesses, utilities, the association, the insurer of the building | telephone numbers, hours and notes of people; their names stay, for they own what the map says they own |
/// | documents and notes | those that are private |
///
/// People are owners and neighbours, and whoever has no role, gives no warranty, and owns nothing on the map. The
/// log is a file of its own and is not handed over.
#[must_use]
pub fn for_next_owner(home: &Home) -> Home {
    let mut copy = home.clone();
    copy.drills.clear();
    copy.move_in.clear();
    for done in &mut copy.done {
        done.by = None;
        done.note = None;
    }
    leave_out_private(&mut copy);
    for contact in copy.contacts.iter_mut().filter(|contact| is_person(home, contact)) {
        contact.phone = None;
        contact.hours = None;
        contact.note = None;
    }
    copy
}

/// True for a contact that is a person and no business, as far as the map tells.
#[must_use]
pub fn is_person(home: &Home, contact: &Contact) -> bool {
    let is_mentioned = || {
        let id = Some(contact.id.as_str());
        home.components.iter().any(|c| c.owner.as_deref() == id)
            || home.warranties.iter().any(|w| w.contact.as_deref() == id)
    };
    match contact.role {
        Some(Role::Owner | Role::Neighbor) => true,
        Some(
            Role::WaterUtility
            | Role::SewerUtility
            | Role::ElectricityUtility
            | Role::GasUtility
            | Role::Emergency
            | Role::Plumber
            | Role::Electrician
            | Role::Cooling
            | Role::Builder
            | Role::Manager
            | Role::Association
            | Role::Insurer
            | Role::Alarm,
        ) => false,
        None => !is_mentioned(),
    }
}

/// Takes out private documents, and note and photo of private components.
fn leave_out_private(home: &mut Home) {
    home.documents.retain(|document| !document.private);
    for component in home.components.iter_mut().filter(|component| component.private) {
        component.note = None;
        component.photo = None;
        component.private = false;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        Component, Document, Done, Drill, Job, Kept, Kind, MovedIn, Operates, Value, Warranty,
        What, changes, save,
    };

    fn day(text: &str) -> Date {
        text.parse().unwrap()
    }

    /// A home with something of every sort that may be somebody's own; all such words begin with
    /// `secret`.
    fn lived_in() -> Home {
        let contact = |id: &str, role| Contact {
            id: id.to_owned(),
            name: id.to_owned(),
            phone: Some(format!("secret-{id}")),
            role,
            hours: None,
            note: None,
        };
        let mut safe = Component::new("safe", Kind::Appliance, "Safe");
        safe.private = true;
        safe.note = Some("secret code".to_owned());
        safe.photo = Some("photos/secret.jpg".to_owned());
        let mut main = Component::new("main", Kind::IsolatingValve, "Main");
        main.tag = Some("W1".to_owned());
        main.owner = Some("neighbor".to_owned());
        main.photo = Some("photos/main.jpg".to_owned());
        main.note = Some("Behind the grey door".to_owned());
        main.operates = Some(Operates {
            state: crate::DeviceState::Stiff,
            exercised: Some(day("2026-01-02")),
            seconds: Some(40.0),
            tool: Some("meter key".to_owned()),
            ..Operates::default()
        });
        let document = |id: &str, private| Document {
            id: id.to_owned(),
            name: id.to_owned(),
            file: None,
            components: Vec::new(),
            private,
        };
        let job: Job = ron::from_str(
            r#"(id: "filter", name: "Filter", every_months: Some(3), last_done: Some("2026-01-03"))"#,
        )
        .unwrap();
        let warranty: Warranty = ron::from_str(
            r#"(id: "roof", name: "Roof", from: "2020-01-04", contact: Some("builder"))"#,
        )
        .unwrap();
        Home {
            name: "Our secret nest".to_owned(),
            address: Some("secret lane".to_owned()),
            north_deg: Some(120.5),
            components: vec![main, safe],
            contacts: vec![
                contact("utility", Some(Role::WaterUtility)),
                contact("builder", None),
                contact("neighbor", Some(Role::Neighbor)),
                contact("sitter", None),
            ],
            warranties: vec![warranty],
            jobs: vec![job],
            done: vec![Done {
                job: "filter".to_owned(),
                on: day("2026-01-03"),
                by: Some("secret".to_owned()),
                components: Vec::new(),
                finding: None,
                note: Some("secret".to_owned()),
            }],
            move_in: vec![MovedIn {
                item: "test-shutoffs".to_owned(),
                on: day("2026-01-05"),
                by: "secret".to_owned(),
                note: None,
            }],
            documents: vec![document("manual", false), document("secret-will", true)],
            drills: vec![Drill::new("main", None, 30.0, day("2026-01-06"))],
            ..Home::default()
        }
    }

    #[test]
    fn the_next_lot_gets_the_house_and_nothing_of_those_who_live_here() {
        let copy = copy_for_next_lot(&lived_in(), &["utility"], Some(day("2027-03-01")));
        let text = save(&copy, &Kept::default());
        assert!(!text.replace("secret-utility", "").contains("secret"), "{text}");
        assert!(!text.contains("2026") && !text.contains("2020"), "a day is left:\n{text}");
        let main = copy.component("main").unwrap();
        assert_eq!((main.tag.as_deref(), main.photo.as_deref()), (Some("W1"), None));
        assert_eq!((main.state(), main.owner.as_deref()), (crate::DeviceState::Unknown, None));
        assert_eq!(main.note.as_deref(), Some("Behind the grey door"));
        let operates = main.operates.as_ref().unwrap();
        assert_eq!((operates.tool.as_deref(), operates.seconds), (Some("meter key"), None));
        assert_eq!(copy.jobs[0].every_months, Some(3));
        assert_eq!(copy.warranties[0].from, day("2027-03-01"));
        assert_eq!(copy.warranties[0].contact, None);
        assert_eq!(copy.contacts.len(), 1);
        // The next lot may lie otherwise; who compares the two is told.
        assert_eq!(copy.north_deg, None);
        let changes = changes(&lived_in(), &copy);
        let What::Changed(fields) = &changes[0].what else { panic!("{changes:?}") };
        let north = fields.iter().find(|change| change.field == "north_deg").unwrap();
        assert_eq!((&north.before, &north.after), (&Some(Value::Number(120.5)), &None));
        assert!(copy_for_next_lot(&lived_in(), &[], None).warranties.is_empty());
    }

    #[test]
    fn the_next_owner_gets_the_history_of_the_house_and_no_numbers_of_people() {
        let copy = for_next_owner(&lived_in());
        let phone = |id: &str| copy.contact(id).unwrap().phone.as_deref();
        assert_eq!(phone("utility"), Some("secret-utility"));
        // Who gives a warranty is no private person, role or not.
        assert_eq!(phone("builder"), Some("secret-builder"));
        assert_eq!((phone("neighbor"), phone("sitter")), (None, None));
        let main = copy.component("main").unwrap();
        assert_eq!(main.state(), crate::DeviceState::Stiff);
        assert_eq!(main.photo.as_deref(), Some("photos/main.jpg"));
        assert_eq!(main.owner.as_deref(), Some("neighbor"));
        let safe = copy.component("safe").unwrap();
        assert_eq!((safe.note.as_deref(), safe.photo.as_deref()), (None, None));
        assert_eq!(copy.documents.len(), 1);
        assert_eq!(copy.warranties, lived_in().warranties);
        assert_eq!(copy.north_deg, Some(120.5));
        assert_eq!((copy.done[0].on, copy.done[0].by.as_deref()), (day("2026-01-03"), None));
        assert_eq!(copy.done[0].note, None);
        assert!(copy.drills.is_empty() && copy.move_in.is_empty());
    }
}
