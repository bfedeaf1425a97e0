//! Pipes from the street and the well to the taps.

use super::Site;

const COLD: &str = "ColdWater";
const HOT: &str = "HotWater";

impl Site {
    pub(super) fn water(&mut self) {
        let service = self.entry();
        let mut trunk = self.device(&service, "IsolatingValve", COLD, 85);
        if self.dice.chance(40) {
            trunk = self.on(&trunk, "PressureReducingValve", COLD);
        }
        trunk = self.on(&trunk, "Pipe", COLD);
        self.well(&trunk);
        self.irrigation(&service, &trunk);
        if self.dice.chance(25) {
            trunk = self.softener(&trunk);
        }
        let mut cold = vec![trunk.clone()];
        for _ in 0..self.dice.below(3) {
            let valve = self.device(&trunk, "IsolatingValve", COLD, 60);
            let kind = self.dice.of(&["Pipe", "Manifold"]);
            cold.push(self.on(&valve, kind, COLD));
        }
        let hot = if self.dice.chance(75) { self.heater(&trunk) } else { Vec::new() };
        for _ in 0..=self.dice.below(4) {
            self.fixture(&cold, &hot);
        }
        self.surprises();
    }

    /// From the street to where the water comes in.
    fn entry(&mut self) -> String {
        let street = self.add_in("WaterMain", Some("yard".to_owned()));
        let curb = self.device(&street, "IsolatingValve", COLD, 70);
        if curb != street && self.dice.chance(80) {
            self.part(&curb).operable_by = "Utility";
        }
        let meter = self.on(&curb, "WaterMeter", COLD);
        let mut tip = meter;
        if self.dice.chance(45) {
            tip = self.device(&tip, "IsolatingValve", COLD, 80);
            tip = self.on(&tip, "BackflowPreventer", COLD);
            tip = self.device(&tip, "IsolatingValve", COLD, 80);
        }
        let service = self.on(&tip, "Pipe", COLD);
        if self.dice.chance(20) {
            let control = self.device(&service, "IsolatingValve", COLD, 60);
            self.on(&control, "SprinklerRiser", COLD);
        }
        service
    }

    fn well(&mut self, trunk: &str) {
        if !self.dice.chance(20) {
            return;
        }
        let well = self.add_in("Well", Some("yard".to_owned()));
        let mut tip = well;
        if self.dice.chance(40) {
            tip = self.on(&tip, "CheckValve", COLD);
        }
        if self.dice.chance(40) {
            tip = self.on(&tip, "PressureTank", COLD);
        }
        tip = self.device(&tip, "IsolatingValve", COLD, 70);
        self.join(&tip, trunk, COLD);
    }

    fn irrigation(&mut self, service: &str, trunk: &str) {
        if !self.dice.chance(25) {
            return;
        }
        let from = if self.dice.chance(50) { service } else { trunk }.to_owned();
        let valve = self.device(&from, "IsolatingValve", COLD, 70);
        let kind = self.dice.of(&["Irrigation", "HoseBibb"]);
        self.on(&valve, kind, COLD);
    }

    /// A softener between two valves, with a third one in its bypass.
    fn softener(&mut self, trunk: &str) -> String {
        let inlet = self.device(trunk, "IsolatingValve", COLD, 90);
        let softener = self.on(&inlet, "Softener", COLD);
        let outlet = self.device(&softener, "IsolatingValve", COLD, 90);
        let house = self.on(&outlet, "Pipe", COLD);
        if self.left > 0 {
            let bypass = self.device(trunk, "IsolatingValve", COLD, 100);
            let shut = self.dice.chance(60);
            self.part(&bypass).normally_shut = shut;
            self.join(&bypass, &house, COLD);
        }
        house
    }

    /// The water heater; returns the pipes with hot water.
    fn heater(&mut self, trunk: &str) -> Vec<String> {
        let inlet = self.device(trunk, "IsolatingValve", COLD, 75);
        let tee = self.on(&inlet, "Pipe", COLD);
        if self.dice.chance(20) {
            self.on(&tee, "ExpansionTank", COLD);
        }
        let heater = self.on(&tee, "WaterHeater", COLD);
        if self.dice.chance(20) {
            self.on(&heater, "ReliefValve", HOT);
        }
        let outlet = self.device(&heater, "IsolatingValve", HOT, 40);
        let trunk = self.on(&outlet, "Pipe", HOT);
        let mut hot = vec![trunk.clone()];
        if self.dice.chance(40) {
            let valve = self.device(&trunk, "IsolatingValve", HOT, 60);
            hot.push(self.on(&valve, "Pipe", HOT));
        }
        if self.dice.chance(35) {
            let far = hot[hot.len() - 1].clone();
            let mut back = self.device(&far, "IsolatingValve", HOT, 50);
            if self.dice.chance(60) {
                back = self.on(&back, "CirculationPump", HOT);
            }
            if self.dice.chance(50) {
                back = self.on(&back, "CheckValve", HOT);
            }
            self.join(&back, &tee, HOT);
        }
        hot
    }

    fn fixture(&mut self, cold: &[String], hot: &[String]) {
        let kind = self.dice.of(&[
            "Sink",
            "Sink",
            "Basin",
            "Bath",
            "Shower",
            "Toilet",
            "WashingMachine",
            "Dishwasher",
            "Tap",
            "IceMaker",
        ]);
        let fixture = self.add(kind);
        let both = matches!(kind, "Sink" | "Basin" | "Bath" | "Shower" | "WashingMachine");
        let mut lines = vec![(self.dice.of(cold), COLD)];
        if both && !hot.is_empty() {
            lines.push((self.dice.of(hot), HOT));
        }
        let mixer = (lines.len() == 2 && self.dice.chance(25)).then(|| self.add("MixingValve"));
        if self.dice.chance(15) {
            self.part(&fixture).joins = Some(true);
        }
        for (from, carries) in lines {
            let mut tip = self.device(&from, "IsolatingValve", carries, 60);
            if self.dice.chance(10) {
                tip = self.on(&tip, "CheckValve", carries);
            }
            if self.dice.chance(30) {
                tip = self.on(&tip, "SupplyHose", carries);
            }
            self.join(&tip, mixer.as_ref().unwrap_or(&fixture), carries);
        }
        if let Some(mixer) = mixer {
            if self.dice.chance(15) {
                self.part(&mixer).joins = Some(false);
            }
            self.join(&mixer, &fixture, HOT);
        }
    }

    /// A cross-tie, a parallel pipe, a line written down the other way round, one that runs one way.
    fn surprises(&mut self) {
        let pipes: Vec<String> = self
            .house
            .parts
            .iter()
            .filter(|part| matches!(part.kind, "Pipe" | "Manifold"))
            .map(|part| part.id.clone())
            .collect();
        if self.dice.chance(25) {
            let (from, to) = (self.dice.of(&pipes), self.dice.of(&pipes));
            let tip = self.device(&from, "IsolatingValve", COLD, 50);
            if tip != to {
                self.join(&tip, &to, COLD);
            }
        }
        for number in 0..self.house.lines.len() {
            match self.dice.below(30) {
                0 => self.house.lines[number].one_way = true,
                1 => {
                    let line = &mut self.house.lines[number];
                    std::mem::swap(&mut line.from, &mut line.to);
                }
                2 => {
                    let twin = self.house.lines[number].clone();
                    self.house.lines.push(twin);
                }
                _ => {}
            }
        }
    }

    /// What the water needs of power: a well's pump, an electric heater, a circulation pump.
    pub(super) fn power_for_water(&mut self) {
        let needy: Vec<String> = self
            .house
            .parts
            .iter()
            .filter(|part| {
                matches!(part.kind, "Well" | "WaterHeater" | "CirculationPump" | "WashingMachine")
            })
            .map(|part| part.id.clone())
            .collect();
        if needy.is_empty() {
            return;
        }
        let panel = match self.house.parts.iter().find(|part| part.kind == "Panel") {
            Some(panel) => panel.id.clone(),
            None => {
                let service = self.add("ElectricityService");
                let main = self.on(&service, "ServiceDisconnect", "Power");
                self.on(&main, "Panel", "Power")
            }
        };
        for id in needy {
            if self.dice.chance(70) {
                let breaker = self.on(&panel, "Breaker", "Power");
                let tip = if self.dice.chance(30) {
                    self.on(&breaker, "Receptacle", "Power")
                } else {
                    breaker
                };
                self.join(&tip, &id, "Power");
            }
        }
    }
}
