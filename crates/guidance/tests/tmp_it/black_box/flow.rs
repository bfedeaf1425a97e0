//! How water and current run in a sketch, followed line by line.
//!
//! No graph of components is made here: what is kept is, for each line, whether something runs out of
//! it at its usual end, and whether something runs out of it at the other.

use super::house::House;

/// What is followed: water, hot and cold as one; power; or gas.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Sort {
    Water,
    Power,
    Gas,
}

impl Sort {
    pub(crate) fn media(self) -> &'static [&'static str] {
        match self {
            Self::Water => &["ColdWater", "HotWater"],
            Self::Power => &["Power"],
            Self::Gas => &["Gas"],
        }
    }

    fn is_source(self, kind: &str) -> bool {
        match self {
            Self::Water => matches!(kind, "WaterMain" | "Well"),
            Self::Power => {
                matches!(kind, "ElectricityService" | "Generator" | "Inverter" | "Battery")
            }
            Self::Gas => kind == "GasMeter",
        }
    }

    /// What is there to be shut, or to be opened for power.
    pub(crate) fn isolates(self, kind: &str) -> bool {
        match self {
            Self::Water => kind == "IsolatingValve",
            Self::Power => {
                matches!(kind, "ServiceDisconnect" | "Breaker" | "Disconnect" | "TransferSwitch")
            }
            Self::Gas => kind == "GasValve",
        }
    }
}

/// A line of one sort, by the places of its ends in the sketch.
#[derive(Debug, Clone, Copy)]
struct Way {
    from: usize,
    to: usize,
    one_way: bool,
}

/// One system of a sketch.
#[derive(Debug)]
pub(crate) struct Flow<'a> {
    pub(crate) sort: Sort,
    house: &'a House,
    ways: Vec<Way>,
    source: Vec<bool>,
    at: Vec<Vec<usize>>,
}

/// For each line: whether something runs out of it at its `to`, and at its `from`.
pub(crate) type Running = Vec<(bool, bool)>;

impl<'a> Flow<'a> {
    pub(crate) fn of(house: &'a House, sort: Sort) -> Self {
        let place = |id: &str| house.parts.iter().position(|part| part.id == id).unwrap();
        let ways: Vec<Way> = house
            .lines
            .iter()
            .filter(|line| sort.media().contains(&line.carries))
            .map(|line| Way { from: place(&line.from), to: place(&line.to), one_way: line.one_way })
            .collect();
        let mut at = vec![Vec::new(); house.parts.len()];
        for (number, way) in ways.iter().enumerate() {
            at[way.from].push(number);
            at[way.to].push(number);
        }
        let source = house.parts.iter().map(|part| sort.is_source(part.kind)).collect();
        Self { sort, house, ways, source, at }
    }

    /// True if the part is on a line of this sort.
    pub(crate) fn has(&self, part: usize) -> bool {
        !self.at[part].is_empty()
    }

    pub(crate) fn is_source(&self, part: usize) -> bool {
        self.source[part]
    }

    /// True if something can run along a line from one part to another.
    pub(crate) fn leads(&self, from: usize, to: usize) -> bool {
        self.at[from].iter().any(|&line| {
            let way = self.ways[line];
            (way.from == from && way.to == to)
                || (way.to == from && way.from == to && self.goes(line, false))
        })
    }

    /// Runs the system with some parts shut and some sources at work.
    pub(crate) fn run(
        &self,
        shut: &dyn Fn(usize) -> bool,
        works: &dyn Fn(usize) -> bool,
    ) -> Running {
        let mut running = vec![(false, false); self.ways.len()];
        let mut news: Vec<(usize, bool)> = Vec::new();
        for part in
            (0..self.source.len()).filter(|&part| self.source[part] && works(part) && !shut(part))
        {
            self.leave(part, None, &mut running, &mut news);
        }
        while let Some((line, forward)) = news.pop() {
            let way = self.ways[line];
            let part = if forward { way.to } else { way.from };
            if !shut(part) {
                self.leave(part, Some(line), &mut running, &mut news);
            }
        }
        running
    }

    fn leave(
        &self,
        part: usize,
        by: Option<usize>,
        running: &mut Running,
        news: &mut Vec<(usize, bool)>,
    ) {
        for &line in &self.at[part] {
            let way = self.ways[line];
            for forward in [true, false] {
                let starts = if forward { way.from } else { way.to };
                let done = if forward { running[line].0 } else { running[line].1 };
                if starts != part
                    || done
                    || !self.goes(line, forward)
                    || !self.passes(part, by, line)
                {
                    continue;
                }
                if forward {
                    running[line].0 = true;
                } else {
                    running[line].1 = true;
                }
                news.push((line, forward));
            }
        }
    }

    /// True if something can run along a line that way at all.
    fn goes(&self, line: usize, forward: bool) -> bool {
        let way = self.ways[line];
        forward || (!way.one_way && self.both_ways(line))
    }

    /// Reading: current runs both ways only where meters, panels, breakers and sources are joined;
    /// beyond a breaker it runs on from box to box.
    fn both_ways(&self, line: usize) -> bool {
        let way = self.ways[line];
        let distributes = |part: usize| {
            matches!(
                self.house.parts[part].kind,
                "ElectricityService"
                    | "Generator"
                    | "Inverter"
                    | "Battery"
                    | "ElectricityMeter"
                    | "Panel"
                    | "ServiceDisconnect"
                    | "Breaker"
                    | "Disconnect"
                    | "TransferSwitch"
            )
        };
        self.sort != Sort::Power || (distributes(way.from) && distributes(way.to))
    }

    /// True if a part lets something that came in by one line out by another. What a source gives
    /// comes in by no line.
    fn passes(&self, part: usize, by: Option<usize>, out: usize) -> bool {
        let Some(by) = by else { return true };
        if self.sort != Sort::Water {
            return true;
        }
        let sketch = &self.house.parts[part];
        match sketch.kind {
            // From the inlet to the outlet only.
            "BackflowPreventer" | "CheckValve" | "PressureReducingValve" | "CirculationPump" => {
                self.ways[by].to == part && self.ways[out].from == part
            }
            "MixingValve" => sketch.joins != Some(false),
            kind if is_fixture(kind) => sketch.joins == Some(true),
            _ => true,
        }
    }

    /// True if something stands in the part: out of any of its lines, or its own.
    pub(crate) fn reaches(&self, running: &Running, part: usize) -> bool {
        self.source[part]
            || self.at[part].iter().any(|&line| {
                (running[line].0 && self.ways[line].to == part)
                    || (running[line].1 && self.ways[line].from == part)
            })
    }

    /// True if something comes in that the part can use: by its inlet, where it has one.
    pub(crate) fn serves(&self, running: &Running, part: usize) -> bool {
        let by_inlet =
            || self.at[part].iter().any(|&line| running[line].0 && self.ways[line].to == part);
        match self.house.parts[part].kind {
            "BackflowPreventer" | "CheckValve" | "PressureReducingValve" | "CirculationPump"
                if self.sort == Sort::Water =>
            {
                by_inlet()
            }
            _ => self.reaches(running, part),
        }
    }

    /// True if something stands in the line between two parts (the first such line).
    ///
    /// Reading: a hole in a line may be anywhere in it, so both its ends push into it, even if what
    /// comes from the far end could not pass on; `one_way: true` does not tell where in the line the
    /// flap is.
    pub(crate) fn stands_in(
        &self,
        running: &Running,
        shut: &dyn Fn(usize) -> bool,
        from: &str,
        to: &str,
    ) -> bool {
        let ids = |way: &Way| {
            (self.house.parts[way.from].id.as_str(), self.house.parts[way.to].id.as_str())
        };
        let line = self.ways.iter().position(|way| ids(way) == (from, to)).unwrap();
        let end = self.ways[line].to;
        let back = self.at[end].iter().any(|&by| {
            let arrives = (running[by].0 && self.ways[by].to == end)
                || (running[by].1 && self.ways[by].from == end);
            arrives && by != line && self.passes(end, Some(by), line)
        });
        running[line].0 || (self.both_ways(line) && !shut(end) && (back || self.source[end]))
    }
}

/// What water is drawn from or ends in.
fn is_fixture(kind: &str) -> bool {
    matches!(
        kind,
        "Tap"
            | "HoseBibb"
            | "Irrigation"
            | "IceMaker"
            | "SprinklerRiser"
            | "Sink"
            | "Basin"
            | "Bath"
            | "Shower"
            | "Toilet"
            | "WashingMachine"
            | "Dishwasher"
            | "Appliance"
            | "AirHandler"
            | "MedicalDevice"
    )
}
