//! Homes with everything that a home file can lack or hold against expectation.

use crate::black_box::dice::Dice;
use crate::black_box::draw::Site;
use crate::black_box::house::House;

/// Names that no sentence should stumble over.
const ODD: &[&str] = &[
    "Valve \"main\"",
    "L'arrivée d'eau",
    "Ventil\tunten",
    "  spaces around  ",
    "two  blanks   and three",
    "{ braces }",
    "-flag=--x",
    "水の元栓",
    "محبس الماء",
    "Hahn 🚰",
    "line\nbreak",
    "\\backslash\\",
    "",
    " ",
    "100 % of it; <b>bold</b> & more",
    "a very long name of something that nobody would ever write down in full but somebody once did all the same",
];

/// A random home with some of its data missing or strange.
pub(crate) fn home(dice: &mut Dice) -> House {
    let mut site = Site::with_everything(dice.clone());
    *dice = site.dice.clone();
    let house = &mut site.house;
    devices(dice, house);
    rooms(dice, house);
    doors(dice, house);
    names(dice, house);
    fields(dice, house);
    house.rest = people(dice);
    if dice.chance(2) {
        house.parts.clear();
        house.lines.clear();
    }
    house.clone()
}

fn devices(dice: &mut Dice, house: &mut House) {
    let all: &[(&str, &str)] = &[
        ("Utility", ""),
        ("Licensed", ""),
        ("", "Seized"),
        ("", "LeaksBy"),
        ("Utility", "Seized"),
    ];
    if dice.chance(20) {
        let (who, state) = dice.of(all);
        for part in house.parts.iter_mut().filter(|part| is_device(part.kind)) {
            (part.operable_by, part.state) = (who, state);
        }
    }
    for number in 0..house.parts.len() {
        if dice.chance(5) {
            house.parts[number].operable_by = dice.of(&["Utility", "Licensed"]);
        }
        if dice.chance(6) {
            house.parts[number].critical = true;
        }
        if dice.chance(4) {
            house.parts[number].joins = Some(dice.chance(50));
        }
    }
}

fn is_device(kind: &str) -> bool {
    matches!(
        kind,
        "IsolatingValve"
            | "Breaker"
            | "ServiceDisconnect"
            | "Disconnect"
            | "TransferSwitch"
            | "Cleanout"
            | "GasValve"
    )
}

fn rooms(dice: &mut Dice, house: &mut House) {
    if dice.chance(15) {
        house.levels.clear();
        house.rooms.iter_mut().for_each(|room| room.level = None);
    }
    if dice.chance(10) {
        house.rooms.clear();
        house.parts.iter_mut().for_each(|part| part.room = None);
    }
    // All in one room: the panel with the taps and the pit.
    if dice.chance(15) && !house.rooms.is_empty() {
        let room = house.rooms[0].id.clone();
        house.parts.iter_mut().for_each(|part| part.room = Some(room.clone()));
    }
    for number in 0..house.parts.len() {
        if dice.chance(10) {
            house.parts[number].at = None;
        }
        if dice.chance(5) {
            house.parts[number].room = None;
        }
    }
}

/// Doors between some of the rooms, so that there may be one way, several, or none.
fn doors(dice: &mut Dice, house: &mut House) {
    if dice.chance(35) {
        return;
    }
    let most = dice.of(&[30, 60, 100]);
    for number in 1..house.rooms.len() {
        if dice.chance(most) {
            let other = dice.below(number);
            let pair = (house.rooms[number].id.clone(), house.rooms[other].id.clone());
            house.doors.push(pair);
        }
    }
    while house.rooms.len() > 1 && dice.chance(30) {
        let (one, other) = (dice.below(house.rooms.len()), dice.below(house.rooms.len()));
        if one != other {
            let pair = (house.rooms[one].id.clone(), house.rooms[other].id.clone());
            house.doors.push(pair);
        }
    }
}

fn names(dice: &mut Dice, house: &mut House) {
    if !dice.chance(40) {
        return;
    }
    for number in 0..house.parts.len() {
        if dice.chance(40) {
            house.parts[number].name = dice.of(ODD).to_owned();
        }
        if dice.chance(10) {
            house.parts[number].tool = Some(dice.of(ODD).to_owned());
        }
    }
    for number in 0..house.rooms.len() {
        if dice.chance(30) {
            house.rooms[number].name = dice.of(ODD).to_owned();
        }
    }
}

fn fields(dice: &mut Dice, house: &mut House) {
    for number in 0..house.parts.len() {
        let mut more: Vec<String> = Vec::new();
        if dice.chance(30) {
            more.push(format!("tag: \"W{number}\""));
        }
        if dice.chance(20) {
            more.push(format!("watts: {}", dice.of(&[0, 60, 1500, 9000])));
        }
        if dice.chance(15) {
            more.push(format!("rating_a: {}", dice.of(&[6, 15, 20, 200])));
        }
        if dice.chance(8) {
            more.push("boundary: true".to_owned());
        }
        if dice.chance(15) {
            more.push("lamp: \"Green = has power.\"".to_owned());
        }
        house.parts[number].more = more.join(", ");
    }
}

/// Contacts with and without numbers, an emergency number or none.
fn people(dice: &mut Dice) -> String {
    let mut text = String::new();
    if dice.chance(60) {
        text.push_str("    emergency_phone: \"112\",\n");
    }
    if dice.chance(30) {
        text.push_str("    units: Us,\n");
    }
    let roles = [
        "WaterUtility",
        "SewerUtility",
        "ElectricityUtility",
        "GasUtility",
        "Emergency",
        "Plumber",
        "Electrician",
        "Cooling",
        "Builder",
        "Manager",
        "Neighbor",
    ];
    text.push_str("    contacts: [\n");
    for (number, role) in roles.iter().enumerate() {
        if dice.chance(50) {
            let phone = if dice.chance(80) {
                format!(", phone: \"555-01{number:02}\"")
            } else {
                String::new()
            };
            text.push_str(&format!(
                "        (id: \"c{number}\", name: \"The {role}\", role: {role}{phone}),\n"
            ));
        }
    }
    text.push_str("    ],\n");
    text
}
