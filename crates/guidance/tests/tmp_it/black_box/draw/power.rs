//! Wires from the street, the generator and the battery to the outlets.

use super::Site;

const POWER: &str = "Power";

impl Site {
    pub(super) fn power(&mut self) {
        let service = self.add_in("ElectricityService", Some("yard".to_owned()));
        let meter = self.on(&service, "ElectricityMeter", POWER);
        let mut tip = self.device(&meter, "ServiceDisconnect", POWER, 50);
        let transfer = self.dice.chance(20);
        if transfer {
            tip = self.device(&tip, "TransferSwitch", POWER, 100);
        }
        let switch = tip.clone();
        tip = self.device(&tip, "Breaker", POWER, 60);
        let panel = self.on(&tip, "Panel", POWER);
        self.own_source(&panel, transfer.then_some(switch.as_str()));
        let mut panels = vec![panel.clone()];
        if self.dice.chance(40) {
            let breaker = self.device(&panel, "Breaker", POWER, 90);
            panels.push(self.on(&breaker, "Panel", POWER));
        }
        if self.dice.chance(25) {
            let behind = self.dice.of(&panels);
            let kind = self.dice.of(&["Battery", "Inverter"]);
            let source = self.add(kind);
            let breaker = self.device(&source, "Breaker", POWER, 80);
            self.join(&breaker, &behind, POWER);
        }
        let mut circuits = Vec::new();
        for _ in 0..=self.dice.below(4) {
            let from = self.dice.of(&panels);
            circuits.push(self.circuit(&from));
        }
        if self.dice.chance(40) {
            self.fed_twice(&circuits);
        }
        self.pit(&circuits);
    }

    /// A generator behind its breaker or transfer switch.
    fn own_source(&mut self, panel: &str, transfer: Option<&str>) {
        if !(self.dice.chance(30) || transfer.is_some()) {
            return;
        }
        let generator = self.add("Generator");
        match transfer {
            Some(transfer) if transfer.starts_with("transfer") => {
                let transfer = transfer.to_owned();
                self.join(&generator, &transfer, POWER);
            }
            _ => {
                let inlet = if self.dice.chance(50) {
                    self.on(&generator, "JunctionBox", POWER)
                } else {
                    generator
                };
                let breaker = self.device(&inlet, "Breaker", POWER, 90);
                if breaker != inlet {
                    let shut = self.dice.chance(60);
                    self.part(&breaker).normally_shut = shut;
                }
                self.join(&breaker, panel, POWER);
            }
        }
    }

    /// A breaker and what hangs on it; returns its last outlet.
    fn circuit(&mut self, panel: &str) -> String {
        let mut tip = self.device(panel, "Breaker", POWER, 90);
        if self.dice.chance(12) {
            tip = self.on(&tip, "JunctionBox", POWER);
        }
        if self.dice.chance(45) {
            tip = self.on(&tip, "Gfci", POWER);
        }
        for _ in 0..self.dice.below(3) {
            tip = self.on(&tip, "Receptacle", POWER);
        }
        match self.dice.below(6) {
            0 => {
                let switch = self.on(&tip, "Switch", POWER);
                let half = self.on(&switch, "Receptacle", POWER);
                if self.dice.chance(60) {
                    self.join(&tip, &half, POWER);
                }
                half
            }
            1 => {
                let switch = self.on(&tip, "Switch", POWER);
                self.on(&switch, "Light", POWER)
            }
            2 => {
                let disconnect = self.device(&tip, "Disconnect", POWER, 90);
                self.on(&disconnect, "Appliance", POWER)
            }
            3 => {
                let kind = self.dice.of(&["MedicalDevice", "SmokeAlarm", "SumpPump", "Lampholder"]);
                self.on(&tip, kind, POWER)
            }
            _ => {
                let outlet = self.on(&tip, "Receptacle", POWER);
                if self.dice.chance(30) {
                    let load = self.on(&outlet, "Appliance", POWER);
                    let critical = self.dice.chance(40);
                    self.part(&load).critical = critical;
                }
                outlet
            }
        }
    }

    /// An outlet on two circuits, or a load that needs both its breakers.
    fn fed_twice(&mut self, circuits: &[String]) {
        if self.dice.chance(50) || self.left < 2 {
            let (one, other) = (self.dice.of(circuits), self.dice.of(circuits));
            let split = self.on(&one, "Receptacle", POWER);
            if one != other {
                self.join(&other, &split, POWER);
            }
            return;
        }
        let panel = self.house.parts.iter().find(|part| part.kind == "Panel").unwrap().id.clone();
        let load = self.add("Appliance");
        self.part(&load).poles = 2;
        for _ in 0..2 {
            let breaker = self.device(&panel, "Breaker", POWER, 100);
            let poles = self.dice.of(&[0, 0, 1, 2]);
            self.part(&breaker).poles = poles;
            self.join(&breaker, &load, POWER);
        }
    }

    /// A pit with one pump or two.
    fn pit(&mut self, circuits: &[String]) {
        if !self.dice.chance(25) {
            return;
        }
        let pit = self.add("SumpPit");
        for _ in 0..=self.dice.below(2) {
            let from = self.dice.of(circuits);
            let pump = self.on(&from, "SumpPump", POWER);
            self.join(&pit, &pump, "Waste");
        }
    }
}
