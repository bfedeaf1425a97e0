//! The contacts of a home as cards (RFC 6350), for the phone.

use quarterturn_guidance::{Catalogue, contact_for, fill, role_name};
use quarterturn_home::{Contact, Home, Role};
use vcard4::property::Kind;
use vcard4::{Vcard, VcardBuilder};

use crate::calendar::{plain, stable_id};

/// Cards of all contacts that have a number, in the order of the file, the emergency number first;
/// empty if there is none.
///
/// Version 4.0, with CRLF line ends. Numbers stand as the home file writes them, for that is what
/// people dial.
///
/// ```
/// use quarterturn_guidance::Catalogue;
/// use quarterturn_papers::cards;
///
/// let text = r#"Home(format: 1, name: "Hut", contacts: [
///     (id: "plumber", name: "Plumber", phone: "555-0105", role: Plumber, hours: "weekdays 8 to 17"),
/// ])"#;
/// let home = quarterturn_home::open("home.ron", text).home.expect("the brackets close");
/// let text = cards(&home, &Catalogue::english());
/// assert!(text.contains("FN:Plumber\r\n") && text.contains("TEL:555-0105\r\n"));
/// ```
#[must_use]
pub fn cards(home: &Home, words: &Catalogue) -> String {
    let known = contact_for(home, Role::Emergency).is_some_and(|c| c.phone.is_some());
    let mut all: Vec<Vcard> = Vec::new();
    if let Some(phone) = home.emergency_phone.as_deref().filter(|_| !known) {
        let contact = Contact {
            id: "emergency".to_owned(),
            name: role_name(words, Role::Emergency),
            phone: Some(phone.to_owned()),
            role: None,
            hours: None,
            note: None,
        };
        all.extend(card(home, &contact, words));
    }
    let (first, rest): (Vec<&Contact>, Vec<&Contact>) =
        home.contacts.iter().partition(|contact| contact.role == Some(Role::Emergency));
    all.extend(first.into_iter().chain(rest).filter_map(|contact| card(home, contact, words)));
    all.iter().map(Vcard::to_string).collect()
}

fn card(home: &Home, contact: &Contact, words: &Catalogue) -> Option<Vcard> {
    let phone = contact.phone.as_deref().map(line).filter(|phone| !phone.is_empty())?;
    let name = line(&contact.name);
    let person = matches!(contact.role, Some(Role::Owner | Role::Neighbor));
    let mut builder = VcardBuilder::new(name.clone())
        .kind(if person { Kind::Individual } else { Kind::Org })
        .telephone(phone)
        .categories(vec![line(&home.name)])
        .prod_id("-//Quarterturn//Contacts//EN".to_owned());
    if !person {
        // What phones show as a company.
        builder = builder.org(vec![name]);
    }
    if let Some(role) = contact.role {
        builder = builder.role(role_name(words, role));
    }
    let hours = contact.hours.as_deref().map(|h| words.fill("card-hours", &[fill("hours", h)]));
    let notes: Vec<String> = hours.into_iter().chain(contact.note.clone()).collect();
    if !notes.is_empty() {
        builder = builder.note(plain(&notes.join("\n")));
    }
    // The library has no other way to write an id; a urn of this form is always one.
    if let Ok(id) = format!("urn:uuid:{}", stable_id(home, "contact", &contact.id)).parse() {
        builder = builder.uid(id);
    }
    Some(builder.finish())
}

/// Text on one line.
fn line(text: &str) -> String {
    plain(text).replace('\n', " ").trim().to_owned()
}
