//! A home with one thing less, so that what fails can be read.

use super::house::House;

/// The home without one of its parts, lines or fields, in every way. What is `named` stays.
pub(crate) fn less(house: &House, named: &dyn Fn(&str) -> bool) -> Vec<House> {
    let mut list = Vec::new();
    let mut with = |change: &dyn Fn(&mut House)| {
        let mut less = house.clone();
        change(&mut less);
        if less != *house {
            list.push(less);
        }
    };
    for part in house.parts.iter().filter(|part| !named(&part.id)) {
        with(&|less| {
            less.parts.retain(|other| other.id != part.id);
            less.lines.retain(|line| line.from != part.id && line.to != part.id);
        });
        // A pipe between two lines is one line.
        with(&|less| shorten(less, &part.id));
    }
    for number in 0..house.lines.len() {
        let line = &house.lines[number];
        if !(named(&line.from) && named(&line.to)) {
            with(&|less| drop(less.lines.remove(number)));
        }
        with(&|less| less.lines[number].one_way = false);
        with(&|less| less.lines[number].length_m = None);
    }
    for room in house.rooms.iter().filter(|room| !named(&room.id)) {
        with(&|less| {
            if !less.parts.iter().any(|part| part.room.as_ref() == Some(&room.id)) {
                less.rooms.retain(|other| other.id != room.id);
                less.doors.retain(|(one, other)| *one != room.id && *other != room.id);
            }
        });
    }
    for number in 0..house.doors.len() {
        with(&|less| drop(less.doors.remove(number)));
    }
    for number in 0..house.parts.len() {
        with(&|less| less.parts[number].state = "");
        with(&|less| less.parts[number].operable_by = "");
        with(&|less| less.parts[number].tool = None);
        with(&|less| less.parts[number].normally_shut = false);
        with(&|less| less.parts[number].joins = None);
        with(&|less| less.parts[number].poles = 0);
        with(&|less| less.parts[number].critical = false);
        with(&|less| less.parts[number].more.clear());
    }
    list
}

/// Takes a part out of the middle of one line.
fn shorten(house: &mut House, id: &str) {
    let into: Vec<usize> = (0..house.lines.len()).filter(|&n| house.lines[n].to == id).collect();
    let out: Vec<usize> = (0..house.lines.len()).filter(|&n| house.lines[n].from == id).collect();
    let ([into], [out]) = (&into[..], &out[..]) else { return };
    let same = house.lines[*into].carries == house.lines[*out].carries;
    if !same || house.lines[*into].from == house.lines[*out].to {
        return;
    }
    house.lines[*into].to = house.lines[*out].to.clone();
    house.lines.remove(*out);
    house.parts.retain(|part| part.id != id);
}
