//! Homes drawn in text.
//!
//! ```text
//!   street@ - meter - main* - trunk ; trunk - stop*30 - tap:Tap!
//! ```
//!
//! `-` a line both ways, `>` a line that nothing runs back in; `;` or a new line ends a run. Marks stand after a
//! name where it first comes up, in this order: `@` a source, `:Kind` what it is, `&` its lines are
//! joined, `*` it can be shut (with its effort after it), `/` it stands shut, `^` it does not turn,
//! `+` what is lost when it goes off, `!` the trouble. A line can be in trouble too: `a -! b`.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a drawing that cannot be read is a mistake in the test, and must fail it"
)]

use quarterturn_home::{
    Component, Connection, DeviceState, Home, Kind, Medium, Operates, Position,
};
use quarterturn_network::{HomeNet, Isolator, Node, Places, Terms};

/// A home drawn in text, and where its trouble is.
pub(crate) struct Drawing {
    home: Home,
    medium: Medium,
    effort: Vec<u64>,
    loss: Vec<u64>,
    spots: Vec<usize>,
    line: Option<usize>,
}

/// A set, in names, and what it costs.
pub(crate) type Named = (Vec<String>, u64);

/// A drawing of water pipes.
pub(crate) fn water(text: &str) -> Drawing {
    Drawing::read(text, Medium::ColdWater, [Kind::WaterMain, Kind::IsolatingValve, Kind::Pipe])
}

/// A drawing of the electrical distribution.
pub(crate) fn power(text: &str) -> Drawing {
    Drawing::read(text, Medium::Power, [Kind::ElectricityService, Kind::Breaker, Kind::Panel])
}

impl Drawing {
    /// `usual` are the kinds of a source, of what can be shut, and of anything else.
    fn read(text: &str, medium: Medium, usual: [Kind; 3]) -> Self {
        let mut drawing = Self {
            home: Home::default(),
            medium,
            effort: Vec::new(),
            loss: Vec::new(),
            spots: Vec::new(),
            line: None,
        };
        for run in text.split([';', '\n']).map(str::trim).filter(|run| !run.is_empty()) {
            let mut words = run.split_whitespace();
            let mut from = drawing.component(words.next().unwrap(), usual);
            while let Some(line) = words.next() {
                let to = drawing.component(words.next().unwrap(), usual);
                assert!(["-", ">", "-!", ">!"].contains(&line), "{line} is not a line");
                if line.ends_with('!') {
                    drawing.line = Some(drawing.home.connections.len());
                }
                drawing.home.connections.push(Connection {
                    id: None,
                    from: drawing.home.components[from].id.clone(),
                    to: drawing.home.components[to].id.clone(),
                    carries: medium,
                    length_m: None,
                    size: None,
                    material: None,
                    one_way: line.starts_with('>'),
                    note: None,
                });
                from = to;
            }
        }
        assert!(!drawing.spots.is_empty() || drawing.line.is_some(), "no trouble is marked");
        drawing
    }

    /// The component named by a word, added if it is new.
    fn component(&mut self, word: &str, [source, device, other]: [Kind; 3]) -> usize {
        let end = word.find(|c: char| !c.is_ascii_alphanumeric()).unwrap_or(word.len());
        let (name, mut marks) = word.split_at(end);
        if let Some(place) = self.home.components.iter().position(|c| c.id == name) {
            assert!(marks.is_empty(), "{word}: marks stand where a name first comes up");
            return place;
        }
        let mut component = Component::new(name, other, name);
        let mut operates = Operates::default();
        let (mut effort, mut loss) = (1, 0);
        let place = self.home.components.len();
        while let Some(mark) = marks.chars().next() {
            marks = &marks[1..];
            let end = marks.find(|c: char| !c.is_ascii_alphanumeric()).unwrap_or(marks.len());
            let (value, rest) = marks.split_at(end);
            let number = || value.parse::<u64>().unwrap();
            match mark {
                '@' => component.kind = source,
                ':' => component.kind = Kind::from_name(value).unwrap(),
                '&' => component.joins = Some(true),
                '*' => {
                    component.kind = device;
                    effort = if value.is_empty() { 1 } else { number() };
                }
                '/' => operates.normally = Position::Shut,
                '^' => operates.state = DeviceState::Seized,
                '+' => loss = number(),
                '!' => self.spots.push(place),
                _ => panic!("{word}: {mark} is no mark"),
            }
            marks = rest;
        }
        component.operates = Some(operates);
        self.home.components.push(component);
        self.effort.push(effort);
        self.loss.push(loss);
        place
    }

    fn net(&self) -> (HomeNet, Vec<Node>) {
        let places = Places::of_home(&self.home);
        let net = HomeNet::of(&self.home, &places, self.medium.net(), self.line);
        let spots = self.spots.iter().map(|&place| net.body[place]).chain(net.point).collect();
        (net, spots)
    }

    /// All minimal sets that cut the trouble off, best first, with what they cost.
    pub(crate) fn priced_sets(&self) -> Vec<Named> {
        let (net, spots) = self.net();
        let found = Isolator::new(&net.network, self).best(&spots, usize::MAX, usize::MAX);
        assert!(found.proven);
        let name = |&node: &Node| self.home.components[node as usize].id.clone();
        found.sets.iter().map(|set| (set.devices.iter().map(name).collect(), set.cost)).collect()
    }

    /// All minimal sets that cut the trouble off, best first, one a line.
    pub(crate) fn sets(&self) -> String {
        let sets = self.priced_sets();
        sets.iter().map(|(names, _)| names.join(" ")).collect::<Vec<_>>().join("\n")
    }

    /// The best set.
    pub(crate) fn best(&self) -> String {
        self.sets().lines().next().unwrap_or_default().to_owned()
    }

    /// True if the trouble is fed when the components named in `closed` are shut.
    pub(crate) fn is_fed(&self, closed: &[&str]) -> bool {
        let (net, spots) = self.net();
        net.network.is_fed(&spots, |node| {
            let named = |c: &Component| closed.contains(&c.id.as_str());
            net.network.is_device(node)
                && (self.is_shut(node) || named(&self.home.components[node as usize]))
        })
    }
}

impl Terms for Drawing {
    fn effort(&self, device: Node) -> Option<u64> {
        let device = device as usize;
        let turns = self.home.components[device].state() != DeviceState::Seized;
        turns.then_some(self.effort[device])
    }

    fn is_shut(&self, device: Node) -> bool {
        self.home.components[device as usize].normally_shut()
    }

    fn loss(&self, node: Node) -> u64 {
        self.loss.get(node as usize).copied().unwrap_or(0)
    }
}
