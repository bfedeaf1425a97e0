//! The cheapest devices that cut targets off from every source: one maximum flow.
//!
//! A device is a node with a capacity; it is split into an inner side, towards what it feeds, and
//! an outer side. Flow is sent from the targets back to the sources (Dinic's algorithm), since a
//! trouble usually lies a few devices away from everything else and the search then stays near it.
//!
//! Reference: Dinitz 1970; Even & Tarjan 1975 for node capacities.

use crate::{Dominators, Network, Node, ROOT};

/// A capacity that no flow fills.
pub(crate) const UNLIMITED: u64 = u64::MAX;

/// The flow graph of a network, and room to search it again and again without clearing it.
#[derive(Debug, Clone)]
pub struct Cutter {
    first: Vec<u32>,
    head: Vec<u32>,
    twin: Vec<u32>,
    capacity: Vec<u64>,
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

const NONE: u32 = u32::MAX;

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
        // Each entry is an arc, its twin runs the other way. A pipe between two plain nodes is open
        // both ways, so its two arcs are each other's twin and never fill.
        let mut ends: Vec<(u32, u32, u64, u64)> = Vec::with_capacity(network.arcs.len());
        let devices: Vec<Node> =
            (0..nodes as Node).filter(|&node| network.device[node as usize]).collect();
        for &node in &devices {
            ends.push((outer[node as usize], inner[node as usize], UNLIMITED, 0));
        }
        let first_loss = ends.len();
        for (own, &lost) in losses.lost.iter().enumerate() {
            ends.push((first_shadow + own as u32, end, lost, 0));
        }
        let after_losses = ends.len();
        for &(above, own) in &losses.arcs {
            ends.push((first_shadow + above, first_shadow + own, UNLIMITED, 0));
        }
        for (node, &own) in losses.of_node.iter().enumerate().filter(|&(_, &own)| own != NONE) {
            ends.push((outer[node], first_shadow + own, UNLIMITED, 0));
        }
        let mut arcs = network.arcs.as_slice();
        while let [(a, b), rest @ ..] = arcs {
            let (from, to) = (inner[*b as usize], outer[*a as usize]);
            let plain = !network.device[*a as usize] && !network.device[*b as usize];
            if plain && rest.first() == Some(&(*b, *a)) {
                ends.push((from, to, UNLIMITED, UNLIMITED));
                arcs = &rest[1..];
            } else {
                ends.push((from, to, UNLIMITED, 0));
                arcs = rest;
            }
        }
        let mut first = vec![0_u32; flow_nodes + 1];
        for &(from, to, ..) in &ends {
            first[from as usize + 1] += 1;
            first[to as usize + 1] += 1;
        }
        for node in 0..flow_nodes {
            first[node + 1] += first[node];
        }
        let mut place = first.clone();
        let total = 2 * ends.len();
        let (mut head, mut twin, mut capacity) =
            (vec![0_u32; total], vec![0_u32; total], vec![0_u64; total]);
        let mut gate = vec![NONE; nodes];
        let mut loss_arcs: Vec<u32> = Vec::with_capacity(losses.lost.len());
        for (index, &(from, to, there, back)) in ends.iter().enumerate() {
            let arc = place[from as usize];
            place[from as usize] += 1;
            let other = place[to as usize];
            place[to as usize] += 1;
            (head[arc as usize], twin[arc as usize], capacity[arc as usize]) = (to, other, there);
            (head[other as usize], twin[other as usize], capacity[other as usize]) =
                (from, arc, back);
            if let Some(&device) = devices.get(index) {
                gate[device as usize] = arc;
            } else if (first_loss..after_losses).contains(&index) {
                loss_arcs.push(arc);
            }
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
            head,
            twin,
            capacity,
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
            self.capacity[arc] = cost(device).unwrap_or(UNLIMITED);
        }
    }

    /// Changes the cost of one device, and returns what it was.
    pub(crate) fn set_cost(&mut self, device: Node, cost: u64) -> u64 {
        std::mem::replace(&mut self.capacity[self.gate[device as usize] as usize], cost)
    }

    /// Leaves the loss of a node out of the count until [`Self::put_back`].
    pub(crate) fn leave_out(&mut self, node: Node, loss: u64) {
        if let Some(&arc) = self.loss.get(node as usize).filter(|&&arc| arc != NONE) {
            self.capacity[arc as usize] -= loss;
        }
    }

    /// Counts the loss of a node again.
    pub(crate) fn put_back(&mut self, node: Node, loss: u64) {
        if let Some(&arc) = self.loss.get(node as usize).filter(|&&arc| arc != NONE) {
            self.capacity[arc as usize] += loss;
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
            self.capacity[arc as usize] = capacity;
        }
        cut.retain(|&device| self.capacity[self.gate[device as usize] as usize] > 0);
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
                let open =
                    if free { self.capacity[arc] == UNLIMITED } else { self.capacity[arc] > 0 };
                let next = self.head[arc] as usize;
                if open && self.level[next] == NONE {
                    self.level[next] = level;
                    self.queue.push(self.head[arc]);
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
                let amount = path.iter().map(|&arc| self.capacity[arc as usize]).min().unwrap_or(0);
                total += amount;
                let mut keep = path.len();
                for (place, &arc) in path.iter().enumerate() {
                    self.push(arc, amount);
                    if self.capacity[arc as usize] == 0 {
                        keep = keep.min(place);
                    }
                }
                // Go on from the last node before the first arc that is full.
                node = path
                    .get(keep)
                    .map_or(start, |&arc| self.head[self.twin[arc as usize] as usize]);
                path.truncate(keep);
                continue;
            }
            let arc = self.next_arc[node as usize];
            if arc < self.first[node as usize + 1] {
                let next = self.head[arc as usize];
                let onwards = self.capacity[arc as usize] > 0
                    && self.level[next as usize] == self.level[node as usize].wrapping_add(1);
                if onwards {
                    path.push(arc);
                    node = next;
                } else {
                    self.next_arc[node as usize] += 1;
                }
            } else if let Some(arc) = path.pop() {
                node = self.head[self.twin[arc as usize] as usize];
                self.next_arc[node as usize] += 1;
            } else {
                return total;
            }
        }
    }

    fn push(&mut self, arc: u32, amount: u64) {
        let twin = self.twin[arc as usize];
        if self.capacity[arc as usize] != UNLIMITED {
            self.changed.push((arc, self.capacity[arc as usize]));
            self.capacity[arc as usize] -= amount;
        }
        if self.capacity[twin as usize] != UNLIMITED {
            self.changed.push((twin, self.capacity[twin as usize]));
            self.capacity[twin as usize] += amount;
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

/// The dominator tree as far as something is lost in it: each shadow node stands for a node and for
/// the run above it on which nothing else is lost.
#[derive(Default)]
struct Shadows {
    /// What is lost with each shadow node itself.
    lost: Vec<u64>,
    /// From shadow node to shadow node below.
    arcs: Vec<(u32, u32)>,
    /// The shadow node that goes dry with a node.
    of_node: Vec<u32>,
    /// The shadow node in which a node's own loss is counted.
    counted_in: Vec<u32>,
}

impl Shadows {
    #[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³¹ arcs")]
    fn of(network: &Network, tree: &Dominators, loss: impl Fn(Node) -> u64) -> Self {
        let nodes = network.nodes();
        // From where nothing flows on, nothing can flow to the targets: its loss counts with what
        // feeds it. A device that is shut is still fed itself, so its own loss is never certain.
        let mut own = vec![0_u64; nodes];
        let mut counted_at = vec![ROOT; nodes];
        for &node in tree.order() {
            let above = tree.parent(node);
            let ends_here = network.out(node).is_empty();
            let at = if ends_here { above } else { node };
            let lost = loss(node);
            if lost > 0 && at < ROOT && (ends_here || !network.is_device(node)) {
                own[at as usize] += lost;
                counted_at[node as usize] = at;
            }
        }
        let mut shadows =
            Self { of_node: vec![NONE; nodes], counted_in: vec![NONE; nodes], ..Self::default() };
        // From the leaves up, the shadow nodes right below each node.
        let mut below: Vec<Below> = vec![Below::Nothing; nodes];
        let mut pending: Vec<Vec<u32>> = Vec::new();
        for &node in tree.order().iter().rev() {
            let here = std::mem::replace(&mut below[node as usize], Below::Nothing);
            let shadow = match here {
                Below::Nothing if own[node as usize] == 0 => continue,
                Below::One(only) if own[node as usize] == 0 => only,
                several => {
                    let new = shadows.lost.len() as u32;
                    shadows.lost.push(own[node as usize]);
                    match several {
                        Below::Nothing => {}
                        Below::One(only) => shadows.arcs.push((new, only)),
                        Below::Many(list) => {
                            let list = std::mem::take(&mut pending[list as usize]);
                            shadows.arcs.extend(list.into_iter().map(|only| (new, only)));
                        }
                    }
                    new
                }
            };
            shadows.of_node[node as usize] = shadow;
            let above = tree.parent(node);
            if above < ROOT {
                let place = &mut below[above as usize];
                *place = match *place {
                    Below::Nothing => Below::One(shadow),
                    Below::One(other) => {
                        pending.push(vec![other, shadow]);
                        Below::Many(pending.len() as u32 - 1)
                    }
                    Below::Many(list) => {
                        pending[list as usize].push(shadow);
                        Below::Many(list)
                    }
                };
            }
        }
        for node in 0..nodes {
            let at = counted_at[node];
            if at < ROOT {
                shadows.counted_in[node] = shadows.of_node[at as usize];
            }
        }
        shadows
    }
}

/// The shadow nodes right below a node.
#[derive(Debug, Clone, Copy)]
enum Below {
    Nothing,
    One(u32),
    /// The place of a list of them.
    Many(u32),
}
