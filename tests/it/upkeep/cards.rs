//! The cards of a home's contacts, read by a library that did not write them.

use calcard::vcard::{VCard, VCardProperty};
use quarterturn_guidance::Catalogue;
use quarterturn_home::Home;
use quarterturn_papers::cards;

use super::home;
use crate::homes::{EXAMPLES, example};

fn read(text: &str) -> Vec<VCard> {
    text.split_inclusive("END:VCARD\r\n").map(|card| VCard::parse(card).unwrap()).collect()
}

fn texts(card: &VCard, wanted: &VCardProperty) -> Vec<String> {
    let entries = card.entries.iter().filter(|entry| entry.name == *wanted);
    entries.flat_map(|e| &e.values).filter_map(|value| value.as_text().map(str::to_owned)).collect()
}

#[test]
fn every_contact_with_a_number_is_a_card() {
    for name in EXAMPLES {
        let home = example(name);
        for language in Catalogue::languages() {
            let text = cards(&home, &Catalogue::in_language(language.tag));
            let cards = read(&text);
            let wanted: Vec<_> = home.contacts.iter().filter(|c| c.phone.is_some()).collect();
            assert_eq!(cards.len(), wanted.len(), "{name}");
            for (card, contact) in cards.iter().zip(wanted) {
                assert_eq!(texts(card, &VCardProperty::Fn), std::slice::from_ref(&contact.name));
                assert_eq!(texts(card, &VCardProperty::Tel), [contact.phone.clone().unwrap()]);
                assert_eq!(texts(card, &VCardProperty::Version).len(), 1);
                let notes = texts(card, &VCardProperty::Note).join("\n");
                for part in contact.hours.iter().chain(&contact.note) {
                    assert!(notes.contains(part.as_str()), "{notes} lacks {part}");
                }
            }
        }
    }
}

/// RFC 6350, 3.2 and 3.4: CRLF, lines of at most 75 octets, and comma, backslash and line break escaped.
#[test]
fn odd_names_come_through_whole() {
    let odd = "Plumber, \"Peña & Söhne\"; day\\night ☎ — a name that is much longer than one line of a card may be, ñ";
    let mut home: Home = home(
        r#"emergency_phone: "112", contacts: [(id: "p", name: "x", phone: "555-0100", note: "one\ntwo")]"#,
    );
    home.contacts[0].name = format!("{odd}\u{7}");
    let text = cards(&home, &Catalogue::english());
    for line in text.split("\r\n") {
        assert!(line.len() <= 75, "{} octets: {line}", line.len());
        assert!(!line.contains('\n'));
    }
    let cards = read(&text);
    assert_eq!(texts(&cards[0], &VCardProperty::Tel), ["112"], "the emergency number comes first");
    assert_eq!(texts(&cards[1], &VCardProperty::Fn), [odd]);
    assert_eq!(texts(&cards[1], &VCardProperty::Note), ["one\ntwo"]);
}

#[test]
fn nobody_to_call_is_no_card() {
    assert_eq!(cards(&Home::default(), &Catalogue::english()), "");
    let silent = home(r#"contacts: [(id: "p", name: "Plumber")]"#);
    assert_eq!(cards(&silent, &Catalogue::english()), "");
}
