//! The cheapest devices that cut targets off from every source: one maximum flow.
//!
//! A device is a node with a capacity; it is split into an inner side, towards what it feeds, and
//! an outer side. Flow is sent from the targets back to the sources (Dinic's algorithm), since a
//! trouble usually lies a few devices away from everything else and the search then stays near it.
//!
//! Reference: Dinitz 1970; Even & Tarjan 1975 for node capacities.

use crate::shadows::Shadows;
use crate::{Dominators, Network, Node};

/// A capacity that no flow fills.
pub(crate) const UNLIMITED: u64 = u64::MAX;

/// The flow graph of a network, and room to search it again and again without clearing it.
#[derive(Debug, Clone)]
pub struct Cutter {
    first: Vec<u32>,
    arcs: Vec<Arc>,
    /// Flow node that is entered when coming from what `node` feeds.
    outer: Vec<u32>,
    /// Flow node from which the feeders of `node` are reached.
    inner: Vec<u32>,
    /// Arc from the outer to the inner side of a device; `NONE` for other nodes.
    gate: Vec<u32>,
    /// True for the flow nodes of sources.
    finish: Vec<bool>,
    /// The node that a flow node is a side of.
    side_of: Vec<Node>,
    devices: Vec<Node>,
    /// Arc that fills when a node's loss is counted; `NONE` where it never is.
    loss: Vec<u32>,
    level: Vec<u32>,
    next_arc: Vec<u32>,
    queue: Vec<u32>,
    changed: Vec<(u32, u64)>,
}

/// An arc of the flow graph; its twin runs the other way.
#[derive(Debug, Clone, Copy, Default)]
struct Arc {
    capacity: u64,
    head: u32,
    twin: u32,
}

pub(crate) const NONE: u32 = u32::MAX;

/// What a search for a cut found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Cut {
    /// No operable device stands between: nothing cuts the targets off.
    Impossible,
    /// The cheapest devices, by number, and their capacities together. Among equally cheap sets it
    /// is the one nearest to the targets. Empty if no source reaches the targets at all.
    Devices(Vec<Node>, u64),
}

impl Cutter {
    /// The flow graph. Time and space: nodes + arcs.
    #[must_use]
    pub fn new(network: &Network) -> Self {
        Self::with_losses(network, None, |_| 0)
    }

    /// The flow graph of a search that also counts what goes off with the targets.
    ///
    /// What a cut leaves on the targets' side is dry, and with it all that it dominates, and what a
    /// device dominates goes off when it is shut. Each loss is counted once, however many of these
    /// hold. (What has two feeds and loses both is not counted: no flow can tell.)
    ///
    /// ```text
    ///   targets ◄── u ◄── … ◄── source          from u, flow may end below it instead,
    ///               ╎                           but no more than is lost there
    ///               u' ──► v' ──► (loss of v)   v is dominated by u
    /// ```
    ///
    /// This is the closure problem (Picard 1976) on the dominator tree. Time and space: nodes + arcs.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³¹ arcs")]
    pub(crate) fn with_losses(
        network: &Network,
        dominators: Option<&Dominators>,
        loss: impl Fn(Node) -> u64,
    ) -> Self {
        let nodes = network.nodes();
        let mut outer = Vec::with_capacity(nodes);
        let mut inner = Vec::with_capacity(nodes);
        let mut side_of: Vec<Node> = Vec::with_capacity(nodes);
        for node in 0..nodes {
            outer.push(side_of.len() as u32);
            if network.device[node] {
                side_of.push(node as Node);
            }
            inner.push(side_of.len() as u32);
            side_of.push(node as Node);
        }
        let losses = dominators.map(|tree| Shadows::of(network, tree, loss)).unwrap_or_default();
        let end = side_of.len() as u32;
        let first_shadow = end + u32::from(dominators.is_some());
        let flow_nodes = first_shadow as usize + losses.lost.len();
        let devices: Vec<Node> =
            (0..nodes as Node).filter(|&node| network.device[node as usize]).collect();
        let mut lines: Vec<Line> = Vec::with_capacity(network.arcs.len());
        let one_way = |from: u32, to: u32| Line { from, to, both_ways: false };
        let sides = |node: &Node| one_way(outer[*node as usize], inner[*node as usize]);
        lines.extend(devices.iter().map(sides));
        let shadow = |own: u32| first_shadow + own;
        lines.extend((0..losses.lost.len() as u32).map(|own| one_way(shadow(own), end)));
        let noted = lines.len();
        lines.extend(losses.arcs.iter().map(|&(above, own)| one_way(shadow(above), shadow(own))));
        let shaded = outer.iter().zip(&losses.of_node).filter(|&(_, &own)| own != NONE);
        lines.extend(shaded.map(|(&outer, &own)| one_way(outer, shadow(own))));
        let mut arcs = network.arcs.as_slice();
        while let [(a, b), rest @ ..] = arcs {
            let (from, to) = (inner[*b as usize], outer[*a as usize]);
            // A pipe between two plain nodes never fills, so that one line will do for both its arcs.
            let plain = !network.device[*a as usize] && !network.device[*b as usize];
            let both_ways = plain && rest.first() == Some(&(*b, *a));
            lines.push(Line { from, to, both_ways });
            arcs = if both_ways { &rest[1..] } else { rest };
        }
        let (first, mut arcs, places) = arranged(flow_nodes, &lines, noted);
        let (gates, loss_arcs) = places.split_at(devices.len());
        let mut gate = vec![NONE; nodes];
        for (&device, &arc) in devices.iter().zip(gates) {
            gate[device as usize] = arc;
        }
        for (&arc, &lost) in loss_arcs.iter().zip(&losses.lost) {
            arcs[arc as usize].capacity = lost;
        }
        let loss_of = |own: &u32| loss_arcs.get(*own as usize).copied().unwrap_or(NONE);
        let loss = losses.counted_in.iter().map(loss_of).collect();
        let mut finish = vec![false; flow_nodes];
        for &source in &network.sources {
            finish[outer[source as usize] as usize] = true;
        }
        if dominators.is_some() {
            finish[end as usize] = true;
        }
        Self {
            next_arc: first[..flow_nodes].to_vec(),
            level: vec![NONE; flow_nodes],
            first,
            arcs,
            outer,
            inner,
            gate,
            finish,
            side_of,
            devices,
            loss,
            queue: Vec::new(),
            changed: Vec::new(),
        }
    }

    /// Sets what it costs to shut each device; `None` for one that can't be used.
    ///
    /// Time: devices.
    pub fn set_costs(&mut self, cost: impl Fn(Node) -> Option<u64>) {
        for &device in &self.devices {
            let arc = self.gate[device as usize] as usize;
            self.arcs[arc].capacity = cost(device).unwrap_or(UNLIMITED);
        }
    }

    /// Changes the cost of one device, and returns what it was.
    pub(crate) fn set_cost(&mut self, device: Node, cost: u64) -> u64 {
        std::mem::replace(&mut self.arcs[self.gate[device as usize] as usize].capacity, cost)
    }

    /// Leaves the loss of a node out of the count until [`Self::put_back`].
    pub(crate) fn leave_out(&mut self, node: Node, loss: u64) {
        if let Some(&arc) = self.loss.get(node as usize).filter(|&&arc| arc != NONE) {
            self.arcs[arc as usize].capacity -= loss;
        }
    }

    /// Counts the loss of a node again.
    pub(crate) fn put_back(&mut self, node: Node, loss: u64) {
        if let Some(&arc) = self.loss.get(node as usize).filter(|&&arc| arc != NONE) {
            self.arcs[arc as usize].capacity += loss;
        }
    }

    /// The cheapest devices that cut `targets` off from every source. Targets are never in it.
    ///
    /// Time: for each round of flow one pass over the arcs around the targets; few rounds in
    /// practice. Devices of cost 0 (already shut) are never listed.
    pub fn cheapest(&mut self, targets: &[Node]) -> Cut {
        let starts: Vec<u32> = targets.iter().map(|&target| self.inner[target as usize]).collect();
        let at_source = targets.iter().any(|&t| self.finish[self.outer[t as usize] as usize]);
        if at_source || self.search(&starts, true) {
            self.forget();
            return Cut::Impossible;
        }
        self.forget();
        let mut total = 0;
        while self.search(&starts, false) {
            for &start in &starts {
                total += self.fill(start);
            }
            self.forget();
        }
        // The last search failed, so its levels mark all that still reaches the targets.
        // A device is cut where they end within it.
        let mut cut: Vec<Node> = Vec::new();
        for &side in &self.queue {
            let Some(&node) = self.side_of.get(side as usize) else { continue };
            if self.level[self.inner[node as usize] as usize] == NONE {
                cut.push(node);
            }
        }
        cut.sort_unstable();
        self.forget();
        for (arc, capacity) in self.changed.drain(..).rev() {
            self.arcs[arc as usize].capacity = capacity;
        }
        cut.retain(|&device| self.arcs[self.gate[device as usize] as usize].capacity > 0);
        Cut::Devices(cut, total)
    }

    /// Marks levels from `starts`; true if a source was reached. With `free`, only along arcs that
    /// no flow fills.
    fn search(&mut self, starts: &[u32], free: bool) -> bool {
        self.queue.clear();
        for &start in starts {
            if self.level[start as usize] == NONE {
                self.level[start as usize] = 0;
                self.queue.push(start);
            }
        }
        let mut done = 0;
        let mut last_level = NONE;
        while done < self.queue.len() {
            let node = self.queue[done] as usize;
            done += 1;
            let level = self.level[node] + 1;
            if level > last_level {
                break;
            }
            if self.finish[node] {
                continue;
            }
            for arc in self.first[node] as usize..self.first[node + 1] as usize {
                let open = if free {
                    self.arcs[arc].capacity == UNLIMITED
                } else {
                    self.arcs[arc].capacity > 0
                };
                let next = self.arcs[arc].head as usize;
                if open && self.level[next] == NONE {
                    self.level[next] = level;
                    self.queue.push(self.arcs[arc].head);
                    if self.finish[next] {
                        last_level = level;
                    }
                }
            }
        }
        last_level != NONE
    }

    /// Sends as much flow as the levels allow from `start` to the sources.
    fn fill(&mut self, start: u32) -> u64 {
        let mut total = 0;
        let mut path: Vec<u32> = Vec::new();
        let mut node = start;
        loop {
            if self.finish[node as usize] {
                let amount =
                    path.iter().map(|&arc| self.arcs[arc as usize].capacity).min().unwrap_or(0);
                total += amount;
                let mut keep = path.len();
                for (place, &arc) in path.iter().enumerate() {
                    self.push(arc, amount);
                    if self.arcs[arc as usize].capacity == 0 {
                        keep = keep.min(place);
                    }
                }
                // Go on from the last node before the first arc that is full.
                node = path
                    .get(keep)
                    .map_or(start, |&arc| self.arcs[self.arcs[arc as usize].twin as usize].head);
                path.truncate(keep);
                continue;
            }
            let arc = self.next_arc[node as usize];
            if arc < self.first[node as usize + 1] {
                let next = self.arcs[arc as usize].head;
                let onwards = self.arcs[arc as usize].capacity > 0
                    && self.level[next as usize] == self.level[node as usize].wrapping_add(1);
                if onwards {
                    path.push(arc);
                    node = next;
                } else {
                    self.next_arc[node as usize] += 1;
                }
            } else if let Some(arc) = path.pop() {
                node = self.arcs[self.arcs[arc as usize].twin as usize].head;
                self.next_arc[node as usize] += 1;
            } else {
                return total;
            }
        }
    }

    fn push(&mut self, arc: u32, amount: u64) {
        let twin = self.arcs[arc as usize].twin;
        if self.arcs[arc as usize].capacity != UNLIMITED {
            self.changed.push((arc, self.arcs[arc as usize].capacity));
            self.arcs[arc as usize].capacity -= amount;
        }
        if self.arcs[twin as usize].capacity != UNLIMITED {
            self.changed.push((twin, self.arcs[twin as usize].capacity));
            self.arcs[twin as usize].capacity += amount;
        }
    }

    /// Clears levels and arc pointers of the last search, and nothing else.
    fn forget(&mut self) {
        for node in self.queue.drain(..) {
            self.level[node as usize] = NONE;
            self.next_arc[node as usize] = self.first[node as usize];
        }
    }
}

/// An arc of the flow graph before it has its place; it starts unlimited.
struct Line {
    from: u32,
    to: u32,
    both_ways: bool,
}

/// Arcs and their twins in the order of the nodes they leave, with the first arc of each node, and
/// the places of the first `noted` lines. Time: nodes + lines (a counting sort).
fn arranged(nodes: usize, lines: &[Line], noted: usize) -> (Vec<u32>, Vec<Arc>, Vec<u32>) {
    let mut first = vec![0_u32; nodes + 1];
    for line in lines {
        first[line.from as usize + 1] += 1;
        first[line.to as usize + 1] += 1;
    }
    for node in 0..nodes {
        first[node + 1] += first[node];
    }
    let mut next = first.clone();
    let mut take = |node: u32| {
        let place = &mut next[node as usize];
        *place += 1;
        *place - 1
    };
    let mut arcs = vec![Arc::default(); 2 * lines.len()];
    let mut places: Vec<u32> = Vec::with_capacity(noted);
    for line in lines {
        let (there, back) = (take(line.from), take(line.to));
        arcs[there as usize] = Arc { capacity: UNLIMITED, head: line.to, twin: back };
        let capacity = if line.both_ways { UNLIMITED } else { 0 };
        arcs[back as usize] = Arc { capacity, head: line.from, twin: there };
        if places.len() < noted {
            places.push(there);
        }
    }
    (first, arcs, places)
}
