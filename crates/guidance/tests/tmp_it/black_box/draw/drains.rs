//! Drains from the fixtures to the street.

use super::Site;

const WASTE: &str = "Waste";

impl Site {
    pub(super) fn drains(&mut self) {
        let sewer = self.add_in("SewerMain", Some("yard".to_owned()));
        let mut tip = sewer.clone();
        // Upwards from the street: what runs into what.
        let mut nodes: Vec<String> = Vec::new();
        for _ in 0..=self.dice.below(3) {
            tip = self.above(&tip, &["Cleanout", "Pipe", "BackwaterValve", "Pipe"]);
            nodes.push(tip.clone());
        }
        for _ in 0..=self.dice.below(3) {
            let below = self.dice.of(&nodes);
            let kind = ["Pipe", "Stack", "Cleanout", "BackwaterValve", "CheckValve", "EjectorPit"];
            nodes.push(self.above(&below, &kind));
        }
        for _ in 0..2 + self.dice.below(4) {
            let below = self.dice.of(&nodes);
            let trap = if self.dice.chance(40) { self.above(&below, &["Trap"]) } else { below };
            let kind = [
                "Sink",
                "Basin",
                "Bath",
                "Shower",
                "Toilet",
                "FloorDrain",
                "FloorDrain",
                "WashingMachine",
                "Standpipe",
            ];
            self.above(&trap, &kind);
        }
        if self.dice.chance(30) {
            // A capped stub at the side of a drain: written as the drain leading to it.
            let beside = self.dice.of(&nodes);
            let stub = self.add("Cleanout");
            self.wear(&stub);
            self.join(&beside, &stub, WASTE);
        }
        self.second_way(&sewer, &nodes);
        self.heights();
    }

    fn above(&mut self, below: &str, kinds: &[&'static str]) -> String {
        let kind = self.dice.of(kinds);
        let id = self.add(kind);
        self.join(&id, below, WASTE);
        if self.dice.chance(60) {
            let length = 1.0 + self.dice.below(12) as f64;
            self.house.lines.last_mut().unwrap().length_m = Some(length);
        }
        if kind == "Cleanout" {
            self.wear(&id);
            self.part(&id).normally_shut = false;
        }
        id
    }

    /// Another way to the street, or a tank of its own.
    fn second_way(&mut self, sewer: &str, nodes: &[String]) {
        if !self.dice.chance(20) {
            return;
        }
        let from = self.dice.of(nodes);
        let to = if self.dice.chance(50) { sewer.to_owned() } else { self.add("SepticTank") };
        self.join(&from, &to, WASTE);
    }

    /// Rims and caps at heights of a few steps, so that some are level with each other.
    fn heights(&mut self) {
        let rooms: Vec<String> = self.house.rooms.iter().map(|room| room.id.clone()).collect();
        for number in 0..self.house.parts.len() {
            let step = self.dice.of(&[-0.5, -0.2, 0.0, 0.0, 0.03, 0.35, 0.4, 0.8, 0.9]);
            let room = self.dice.of(&rooms);
            let part = &mut self.house.parts[number];
            if part.kind == "Cleanout" && self.dice.chance(10) {
                part.at = None;
                continue;
            }
            part.room.get_or_insert(room);
            let (x, y, _) = part.at.unwrap_or((1.0, 1.0, 0.0));
            part.at = Some((x, y, step));
        }
    }
}
