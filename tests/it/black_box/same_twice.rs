//! The same question gets the same bytes.

use std::path::Path;

use super::ask::{Asked, Case, hold, written};
use super::dice::Dice;
use super::draw::Site;

#[test]
fn asked_twice_answered_alike() {
    hold("same-twice", 60, draw, check);
}

fn draw(dice: Dice) -> Option<Case> {
    let mut site = Site::with_everything(dice);
    let house = site.house.clone();
    let ids: Vec<String> = house.parts.iter().map(|part| part.id.clone()).collect();
    let rooms: Vec<String> = house.rooms.iter().map(|room| room.id.clone()).collect();
    let trouble = site.dice.of(&[
        "leak",
        "water-from-above",
        "sewage-rising",
        "dead-outlet",
        "breaker-trips",
        "sparks",
    ]);
    let at = if site.dice.chance(30) { site.dice.of(&rooms) } else { site.dice.of(&ids) };
    let mut asked = Asked { trouble, at, failed: Vec::new(), seen: Vec::new() };
    while site.dice.chance(50) {
        asked.failed.push(site.dice.of(&ids));
        let state = site
            .dice
            .of(&["live", "dead", "drains", "backs-up", "wet", "dry", "on", "off", "tripped"]);
        asked.seen.push((site.dice.of(&ids), state));
    }
    Some(Case { house, asked })
}

fn check(case: &Case, folder: &Path) -> Result<(), String> {
    let first = written(case, folder)?;
    if written(case, folder)? == first {
        Ok(())
    } else {
        Err("asked twice, answered differently".to_owned())
    }
}
