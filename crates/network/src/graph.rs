//! One net as arrays: nodes, and the arcs along which something can flow.

/// A node, by its place in the arrays.
pub type Node = u32;

/// The node at a place in the arrays.
#[must_use]
#[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³² nodes")]
pub const fn as_node(index: usize) -> Node {
    index as Node
}

/// Lists of nodes, one list a node, in one array.
#[derive(Debug, Clone, Default)]
pub struct Lists {
    first: Vec<u32>,
    items: Vec<Node>,
}

impl Lists {
    /// Collects `(node, item)` pairs by node, keeping their order within a node.
    ///
    /// Time and space: nodes + pairs (a counting sort).
    pub(crate) fn collect(nodes: usize, pairs: impl Iterator<Item = (Node, Node)> + Clone) -> Self {
        let mut first = vec![0_u32; nodes + 1];
        for (node, _) in pairs.clone() {
            first[node as usize + 1] += 1;
        }
        for node in 0..nodes {
            first[node + 1] += first[node];
        }
        let mut next = first.clone();
        let mut items = vec![0; first[nodes] as usize];
        for (node, item) in pairs {
            let place = &mut next[node as usize];
            items[*place as usize] = item;
            *place += 1;
        }
        Self { first, items }
    }

    /// The list of a node.
    #[must_use]
    pub fn of(&self, node: Node) -> &[Node] {
        let node = node as usize;
        &self.items[self.first[node] as usize..self.first[node + 1] as usize]
    }

    /// All lists one after the other.
    #[must_use]
    pub fn all(&self) -> &[Node] {
        &self.items
    }
}

/// One net: where it comes from, along which arcs it can flow, and which nodes can shut it off.
///
/// ```text
///   source 0 ── 1 ──► 2      arcs 0→1, 1→0 (two-way), 1→2 (one-way)
/// ```
#[derive(Debug, Clone, Default)]
pub struct Network {
    pub(crate) out: Lists,
    pub(crate) into: Lists,
    pub(crate) arcs: Vec<(Node, Node)>,
    pub(crate) sources: Vec<Node>,
    pub(crate) source: Vec<bool>,
    pub(crate) device: Vec<bool>,
}

/// Collects nodes and arcs for a [`Network`].
#[derive(Debug, Clone, Default)]
pub struct Builder {
    arcs: Vec<(Node, Node)>,
    source: Vec<bool>,
    device: Vec<bool>,
}

impl Builder {
    /// An empty builder with room for `nodes` nodes.
    #[must_use]
    pub fn with_capacity(nodes: usize) -> Self {
        Self {
            arcs: Vec::with_capacity(2 * nodes),
            source: Vec::with_capacity(nodes),
            device: Vec::with_capacity(nodes),
        }
    }

    /// Adds a node through which things flow.
    #[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³² nodes")]
    pub fn node(&mut self) -> Node {
        self.source.push(false);
        self.device.push(false);
        (self.source.len() - 1) as Node
    }

    /// Adds a node that can shut off what flows through it.
    pub fn device(&mut self) -> Node {
        let node = self.node();
        self.device[node as usize] = true;
        node
    }

    /// Adds a source.
    pub fn source(&mut self) -> Node {
        let node = self.node();
        self.source[node as usize] = true;
        node
    }

    /// Adds an arc from `a` to `b`.
    pub fn one_way(&mut self, a: Node, b: Node) {
        self.arcs.push((a, b));
    }

    /// Adds an arc each way between `a` and `b`.
    pub fn two_way(&mut self, a: Node, b: Node) {
        self.arcs.push((a, b));
        self.arcs.push((b, a));
    }

    /// The network. Time and space: nodes + arcs.
    #[must_use]
    pub fn build(self) -> Network {
        let nodes = self.source.len();
        let out = Lists::collect(nodes, self.arcs.iter().copied());
        let into = Lists::collect(nodes, self.arcs.iter().map(|&(a, b)| (b, a)));
        let sources = numbered(&self.source);
        Network { out, into, arcs: self.arcs, sources, source: self.source, device: self.device }
    }
}

impl Network {
    /// Number of nodes.
    #[must_use]
    pub fn nodes(&self) -> usize {
        self.source.len()
    }

    /// Number of arcs.
    #[must_use]
    pub fn arcs(&self) -> usize {
        self.arcs.len()
    }

    /// Every arc, in the order it was added.
    #[must_use]
    pub fn arc_list(&self) -> &[(Node, Node)] {
        &self.arcs
    }

    /// The sources, by number.
    #[must_use]
    pub fn sources(&self) -> &[Node] {
        &self.sources
    }

    /// True if `node` is a source.
    #[must_use]
    pub fn is_source(&self, node: Node) -> bool {
        self.source[node as usize]
    }

    /// True if `node` can shut off what flows through it.
    #[must_use]
    pub fn is_device(&self, node: Node) -> bool {
        self.device[node as usize]
    }

    /// Nodes that `node` can flow to.
    #[must_use]
    pub fn out(&self, node: Node) -> &[Node] {
        self.out.of(node)
    }

    /// Nodes that can flow to `node`.
    #[must_use]
    pub fn feeders(&self, node: Node) -> &[Node] {
        self.into.of(node)
    }

    /// Marks what the sources reach when nothing flows on from a node that is `shut`.
    ///
    /// A shut node is itself marked if something arrives at it. Reach ignores what a node needs to
    /// work; for that see [`crate::Impact`]. Time: arcs.
    #[must_use]
    pub fn reached(&self, shut: impl Fn(Node) -> bool) -> Vec<bool> {
        self.reached_from(&self.sources, shut)
    }

    /// Marks what `starts` reach when nothing flows on from a node that is `shut`.
    #[must_use]
    pub fn reached_from(&self, starts: &[Node], shut: impl Fn(Node) -> bool) -> Vec<bool> {
        let mut seen = vec![false; self.nodes()];
        let mut stack: Vec<Node> = Vec::new();
        for &start in starts {
            if !seen[start as usize] {
                seen[start as usize] = true;
                stack.push(start);
            }
        }
        while let Some(node) = stack.pop() {
            if shut(node) {
                continue;
            }
            for &next in self.out.of(node) {
                if !seen[next as usize] {
                    seen[next as usize] = true;
                    stack.push(next);
                }
            }
        }
        seen
    }

    /// Marks the targets, and all from which something flows to them past no node that is `shut`.
    ///
    /// Time: nodes + arcs.
    #[must_use]
    pub fn open_to(&self, targets: &[Node], shut: impl Fn(Node) -> bool) -> Vec<bool> {
        let mut marks = vec![false; self.nodes()];
        for node in self.behind(targets, &mut vec![false; self.nodes()], shut) {
            marks[node as usize] = true;
        }
        marks
    }

    /// The targets, and all from which something flows to them past no node that `stops` it, by number.
    ///
    /// `seen` is room for one mark a node, clear before and after. Time: the arcs of what is found, and
    /// its sorting.
    pub(crate) fn behind(
        &self,
        targets: &[Node],
        seen: &mut [bool],
        stops: impl Fn(Node) -> bool,
    ) -> Vec<Node> {
        let mut found: Vec<Node> = Vec::new();
        for &target in targets {
            if !std::mem::replace(&mut seen[target as usize], true) {
                found.push(target);
            }
        }
        let mut done = 0;
        while let Some(&node) = found.get(done) {
            done += 1;
            for &feeder in self.feeders(node) {
                if !seen[feeder as usize] && !stops(feeder) {
                    seen[feeder as usize] = true;
                    found.push(feeder);
                }
            }
        }
        for &node in &found {
            seen[node as usize] = false;
        }
        found.sort_unstable();
        found
    }

    /// True if a source reaches one of `targets` when nothing flows on from a node that is `shut`.
    ///
    /// Searches backwards from the targets. Time: arcs at most.
    #[must_use]
    pub fn is_fed(&self, targets: &[Node], shut: impl Fn(Node) -> bool) -> bool {
        let mut seen = vec![false; self.nodes()];
        let mut stack: Vec<Node> = targets.to_vec();
        for &target in targets {
            if self.source[target as usize] {
                return true;
            }
            seen[target as usize] = true;
        }
        while let Some(node) = stack.pop() {
            for &feeder in self.into.of(node) {
                if seen[feeder as usize] || shut(feeder) {
                    continue;
                }
                if self.source[feeder as usize] {
                    return true;
                }
                seen[feeder as usize] = true;
                stack.push(feeder);
            }
        }
        false
    }
}

/// The numbers of the marked nodes, in order.
#[expect(clippy::cast_possible_truncation, reason = "a net has fewer than 2³² nodes")]
pub(crate) fn numbered(marks: &[bool]) -> Vec<Node> {
    (0..marks.len() as Node).filter(|&node| marks[node as usize]).collect()
}
