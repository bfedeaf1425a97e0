//! Random homes that look like houses, small enough to try every set of devices.

mod cooling;
mod drains;
mod power;
mod water;

use super::dice::Dice;
use super::house::{House, Line, Part, Room};

/// A home in the making.
#[derive(Debug)]
pub(crate) struct Site {
    pub(crate) dice: Dice,
    pub(crate) house: House,
    /// Devices that may still be added, so that all their sets can be tried.
    left: usize,
    /// Every device works and is anyone's, where it is not said otherwise.
    well_kept: bool,
}

impl Site {
    /// Floors and rooms, and nothing in them.
    pub(crate) fn new(mut dice: Dice, devices: usize) -> Self {
        let mut house = House::default();
        let floors: &[(&str, f64)] = dice.of(&[
            &[("ground", 0.0)][..],
            &[("basement", -2.7), ("ground", 0.0)],
            &[("basement", -2.7), ("ground", 0.0), ("upper", 2.9)],
        ]);
        for &(id, height) in floors {
            house.levels.push((id.to_owned(), height));
            for number in 0..=dice.below(2) {
                house.rooms.push(Room {
                    id: format!("{id}-room-{number}"),
                    name: format!("Room {number} on {id}"),
                    level: Some(id.to_owned()),
                    outdoors: false,
                });
            }
        }
        let yard = Room {
            id: "yard".to_owned(),
            name: "Yard".to_owned(),
            level: Some("ground".to_owned()),
            outdoors: true,
        };
        house.rooms.push(yard);
        let well_kept = dice.chance(50);
        Self { dice, house, left: devices, well_kept }
    }

    /// A home with water, and the power that its water needs.
    pub(crate) fn with_water(dice: Dice) -> Self {
        let mut site = Self::new(dice, 10);
        site.water();
        site.power_for_water();
        site
    }

    /// A home with power, and the pits whose pumps hang on it.
    pub(crate) fn with_power(dice: Dice) -> Self {
        let mut site = Self::new(dice, 11);
        site.power();
        site
    }

    /// A home with drains.
    pub(crate) fn with_drains(dice: Dice) -> Self {
        let mut site = Self::new(dice, 0);
        site.drains();
        site
    }

    /// A home with everything.
    pub(crate) fn with_everything(dice: Dice) -> Self {
        let mut site = Self::new(dice, 10);
        site.water();
        site.left = 10;
        site.power();
        site.power_for_water();
        site.left = 4;
        site.cooling();
        site.gas();
        site.drains();
        site
    }

    /// Adds a part in a random room.
    fn add(&mut self, kind: &'static str) -> String {
        let rooms: Vec<String> = self.house.rooms.iter().map(|room| room.id.clone()).collect();
        let room = self.dice.chance(92).then(|| self.dice.of(&rooms));
        self.add_in(kind, room)
    }

    fn add_in(&mut self, kind: &'static str, room: Option<String>) -> String {
        let number = self.house.parts.len();
        let id = format!("{}-{number}", kind.to_lowercase());
        let at = self.dice.chance(80).then(|| {
            let mut step = |most: usize| self.dice.below(most) as f64 / 10.0;
            (step(90), step(90), step(18))
        });
        self.house.parts.push(Part {
            id: id.clone(),
            kind,
            name: format!("{kind} {number}"),
            room,
            at,
            ..Part::default()
        });
        id
    }

    /// The part with this id, to change.
    fn part(&mut self, id: &str) -> &mut Part {
        self.house.parts.iter_mut().find(|part| part.id == id).unwrap()
    }

    fn join(&mut self, from: &str, to: &str, carries: &'static str) {
        self.house.lines.push(Line {
            from: from.to_owned(),
            to: to.to_owned(),
            carries,
            one_way: false,
            length_m: None,
        });
    }

    /// Adds a part behind `from`.
    fn on(&mut self, from: &str, kind: &'static str, carries: &'static str) -> String {
        let id = self.add(kind);
        self.join(from, &id, carries);
        id
    }

    /// Adds a device of `kind` behind `from`, if there may be one more and the dice say so.
    fn device(
        &mut self,
        from: &str,
        kind: &'static str,
        carries: &'static str,
        percent: usize,
    ) -> String {
        let percent = if self.well_kept { percent + 15 } else { percent };
        if self.left == 0 || !self.dice.chance(percent) {
            return from.to_owned();
        }
        self.left -= 1;
        let id = self.on(from, kind, carries);
        self.wear(&id);
        id
    }

    /// Gives a device a state, a tool, someone who may work it.
    fn wear(&mut self, id: &str) {
        if self.well_kept {
            let state = self.dice.of(&["Works", "Unknown", ""]);
            self.part(id).state = state;
            return;
        }
        let state = self.dice.of(&[
            "Works", "Works", "Works", "Works", "Works", "Unknown", "Unknown", "", "", "Stiff",
            "Seized", "LeaksBy",
        ]);
        let who = match self.dice.below(20) {
            0 => "Licensed",
            1 | 2 => "Utility",
            _ => "",
        };
        let tool =
            self.dice.chance(15).then(|| self.dice.of(&["curb key", "screwdriver"]).to_owned());
        let shut = self.dice.chance(4);
        let part = self.part(id);
        (part.state, part.operable_by, part.tool, part.normally_shut) = (state, who, tool, shut);
    }
}
