//! An air handler with its pans, floats and drain line; gas lines.

use super::Site;

impl Site {
    pub(super) fn cooling(&mut self) {
        if !self.dice.chance(40) {
            return;
        }
        let unit = self.add("AirHandler");
        if let Some(panel) = self.house.parts.iter().find(|part| part.kind == "Panel") {
            let panel = panel.id.clone();
            let breaker = self.device(&panel, "Breaker", "Power", 90);
            let disconnect = self.device(&breaker, "Disconnect", "Power", 50);
            self.join(&disconnect, &unit, "Power");
        }
        for _ in 0..self.dice.below(3) {
            let pan = self.on(&unit, "CondensatePan", "Condensate");
            if self.dice.chance(60) {
                let float = self.on(&pan, "FloatSwitch", "Signal");
                self.join(&float, &unit, "Signal");
            }
            let drain = self.dice.of(&["CondensateOutlet", "Standpipe", "CondensatePump"]);
            if self.dice.chance(70) {
                self.on(&pan, drain, "Condensate");
            }
        }
        if self.dice.chance(50) {
            self.on(&unit, "Thermostat", "Power");
        }
    }

    pub(super) fn gas(&mut self) {
        if !self.dice.chance(40) {
            return;
        }
        let meter = self.add("GasMeter");
        let valve = self.device(&meter, "GasValve", "Gas", 80);
        self.on(&valve, "GasAppliance", "Gas");
        let heater = self.house.parts.iter().find(|part| part.kind == "WaterHeater");
        if let Some(heater) = heater.map(|part| part.id.clone()) {
            let valve = self.device(&valve, "GasValve", "Gas", 60);
            self.join(&valve, &heater, "Gas");
        }
    }
}
