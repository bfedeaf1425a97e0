//! Generated water nets: a house, a block of flats, a district. The same each time.

use quarterturn_network::{Builder, Network, Node, Terms};

/// A net, what working its devices costs, and three places to ask about.
pub(crate) struct Generated {
    pub(crate) name: &'static str,
    pub(crate) network: Network,
    pub(crate) terms: Costs,
    /// A hose under a sink, far in.
    pub(crate) flat: Node,
    /// The pipe that a street's or riser's branches hang on.
    pub(crate) street: Node,
}

/// Made-up efforts and losses, by node.
pub(crate) struct Costs {
    effort: Vec<Option<u64>>,
    loss: Vec<u64>,
}

impl Terms for Costs {
    fn effort(&self, device: Node) -> Option<u64> {
        self.effort[device as usize]
    }

    fn is_shut(&self, _: Node) -> bool {
        false
    }

    fn loss(&self, node: Node) -> u64 {
        self.loss[node as usize]
    }
}

/// One house: about 300 nodes, 18 % of them devices.
pub(crate) fn house() -> Generated {
    let mut net = Growing::default();
    let street = net.builder.source();
    net.costs(None, 0);
    let flat = net.house(street);
    let trunk = flat.trunk;
    net.done("house", flat.hose, trunk)
}

/// 66 flats on two risers that are tied at the top: about 20 000 nodes.
pub(crate) fn block() -> Generated {
    let mut net = Growing::default();
    let street = net.builder.source();
    net.costs(None, 0);
    let meter = net.run(street, 3);
    let main = net.device(meter);
    let foot = net.run(main, 2);
    let mut tops = [foot; 2];
    let (mut flats, mut middle) = (Vec::new(), foot);
    for floor in 0..11 {
        for (side, top) in tops.iter_mut().enumerate() {
            let valve = net.device(*top);
            *top = net.run(valve, 2);
            if (floor, side) == (5, 1) {
                middle = *top;
            }
            for _ in 0..3 {
                flats.push(net.house(*top));
            }
        }
    }
    let tie = net.device(tops[0]);
    net.builder.two_way(tie, tops[1]);
    net.done("block", flats[40].hose, middle)
}

/// 3 300 houses along a grid of 30 by 28 crossings with four feeds at its corners: about a million
/// nodes. A valve stands at both ends of each street.
pub(crate) fn district() -> Generated {
    const WIDE: usize = 30;
    const DEEP: usize = 28;
    let mut net = Growing::default();
    let crossings: Vec<Node> = (0..WIDE * DEEP).map(|_| net.node()).collect();
    for corner in [0, WIDE - 1, WIDE * (DEEP - 1), WIDE * DEEP - 1] {
        let feed = net.builder.source();
        net.costs(None, 0);
        let valve = net.device(feed);
        net.builder.two_way(valve, crossings[corner]);
    }
    let mut streets = Vec::new();
    for y in 0..DEEP {
        for x in 0..WIDE {
            let here = y * WIDE + x;
            if x + 1 < WIDE {
                streets.push((crossings[here], crossings[here + 1]));
            }
            if y + 1 < DEEP {
                streets.push((crossings[here], crossings[here + WIDE]));
            }
        }
    }
    let (mut flats, mut pipes) = (Vec::new(), Vec::new());
    for (number, &(from, to)) in streets.iter().enumerate() {
        let near = net.device(from);
        let mut pipe = net.run(near, 2);
        pipes.push(pipe);
        // Two houses a street, and one more in every so many.
        let last = 3300 * (number + 1) / streets.len();
        while flats.len() < last {
            flats.push(net.house(pipe));
            pipe = net.run(pipe, 1);
        }
        let far = net.device(pipe);
        net.builder.two_way(far, to);
    }
    let (hose, pipe) = (flats[1777].hose, pipes[pipes.len() / 2]);
    net.done("district", hose, pipe)
}

/// Places in a house that was added.
struct House {
    trunk: Node,
    hose: Node,
}

#[derive(Default)]
struct Growing {
    builder: Builder,
    effort: Vec<Option<u64>>,
    loss: Vec<u64>,
    state: u64,
}

impl Growing {
    fn costs(&mut self, effort: Option<u64>, loss: u64) {
        self.effort.push(effort);
        self.loss.push(loss);
    }

    fn node(&mut self) -> Node {
        self.costs(None, 0);
        self.builder.node()
    }

    /// A device after `before`; one in twenty does not turn.
    fn device(&mut self, before: Node) -> Node {
        let effort = 5 + self.random(95);
        let turns = self.random(20) > 0;
        self.costs(turns.then_some(effort), 0);
        let device = self.builder.device();
        self.builder.two_way(before, device);
        device
    }

    /// So many pieces of pipe one after the other.
    fn run(&mut self, before: Node, pieces: usize) -> Node {
        let mut end = before;
        for _ in 0..pieces {
            let next = self.node();
            self.builder.two_way(end, next);
            end = next;
        }
        end
    }

    /// A fixture on a cold and a hot hose; some let water through from one to the other.
    fn fixture(&mut self, hoses: &[Node], joins: bool) {
        let loss = 1 + self.random(40);
        self.costs(None, loss);
        let fixture = self.builder.node();
        for &hose in hoses {
            if joins {
                self.builder.two_way(hose, fixture);
            } else {
                self.builder.one_way(hose, fixture);
            }
        }
    }

    /// A house hung on `feed`: curb stop, meter, main, softener with bypass, heater, eight rooms.
    fn house(&mut self, feed: Node) -> House {
        let curb = self.device(feed);
        let meter = self.run(curb, 2);
        let main = self.device(meter);
        let reducer = self.node();
        self.builder.one_way(main, reducer);
        let before = self.run(reducer, 1);
        let (inlet, bypass) = (self.device(before), self.device(before));
        let softener = self.run(inlet, 1);
        let outlet = self.device(softener);
        let trunk = self.run(outlet, 1);
        self.builder.two_way(bypass, trunk);
        let heater_inlet = self.device(trunk);
        let heater = self.run(heater_inlet, 1);
        let heater_outlet = self.device(heater);
        let (mut cold, mut hot) = (trunk, self.run(heater_outlet, 1));
        let mut hose = trunk;
        for room in 0..8 {
            (cold, hot) = (self.run(cold, 2), self.run(hot, 2));
            let sides = [cold, hot].map(|pipe| {
                let valve = self.device(pipe);
                self.run(valve, 5)
            });
            for place in 0..2 {
                let hoses = sides.map(|side| {
                    let pipe = self.run(side, 3);
                    let stop = self.device(pipe);
                    self.run(stop, 1)
                });
                hose = hoses[0];
                self.fixture(&hoses, room % 4 == 1 && place == 1);
            }
            self.fixture(&sides[..1], false);
        }
        House { trunk, hose }
    }

    fn done(self, name: &'static str, flat: Node, street: Node) -> Generated {
        let terms = Costs { effort: self.effort, loss: self.loss };
        Generated { name, network: self.builder.build(), terms, flat, street }
    }

    /// A number below `limit`: splitmix64, so that every run has the same net.
    fn random(&mut self, limit: u64) -> u64 {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % limit
    }
}
