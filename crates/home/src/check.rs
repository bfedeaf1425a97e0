//! What only the whole file can tell: ids that are used twice or that nothing has, connections that
//! cannot be, drains that run in a loop.

use std::collections::{BTreeMap, BTreeSet, VecDeque};

use petgraph::algo::tarjan_scc;
use petgraph::graph::{DiGraph, NodeIndex};

use crate::nearest::nearest;
use crate::read::{Element, Slot, Sound};
use crate::report::Found;
use crate::{
    Component, Connection, Contact, Document, Done, Drill, Home, Job, Kind, Level, Medium, MovedIn,
    Net, Passage, Severity, Space, Warranty,
};

/// The lists of a home file, slot by slot.
#[derive(Debug)]
pub(crate) struct Lists {
    pub(crate) levels: Vec<Slot<Level>>,
    pub(crate) spaces: Vec<Slot<Space>>,
    pub(crate) passages: Vec<Slot<Passage>>,
    pub(crate) components: Vec<Slot<Component>>,
    pub(crate) connections: Vec<Slot<Connection>>,
    pub(crate) contacts: Vec<Slot<Contact>>,
    pub(crate) warranties: Vec<Slot<Warranty>>,
    pub(crate) jobs: Vec<Slot<Job>>,
    pub(crate) done: Vec<Slot<Done>>,
    pub(crate) move_in: Vec<Slot<MovedIn>>,
    pub(crate) documents: Vec<Slot<Document>>,
    pub(crate) drills: Vec<Slot<Drill>>,
}

/// Reports what does not fit together, and takes it out.
pub(crate) fn check(text: &str, lists: &mut Lists, found: &mut Vec<Found>) {
    let levels = unique(&mut lists.levels, found);
    let spaces = unique(&mut lists.spaces, found);
    let components = unique(&mut lists.components, found);
    let contacts = unique(&mut lists.contacts, found);
    unique(&mut lists.warranties, found);
    unique(&mut lists.jobs, found);
    unique(&mut lists.documents, found);
    let connections = unique_connection_ids(text, &mut lists.connections, found);
    shared_spots(&spaces, &components, &connections, found);

    for space in sound(&mut lists.spaces) {
        if unknown(space, "level", Level::LIST, &levels, found) {
            space.value.level = None;
            space.leave(text, "level");
        }
    }
    check_passages(text, &mut lists.passages, &lists.spaces, &spaces, found);
    for component in sound(&mut lists.components) {
        if unknown(component, "space", Space::LIST, &spaces, found) {
            component.value.space = None;
            component.leave(text, "space");
        }
    }
    unknown_owners(&lists.components, &contacts, found);
    for warranty in sound(&mut lists.warranties) {
        if unknown(warranty, "contact", Contact::LIST, &contacts, found) {
            warranty.value.contact = None;
            warranty.leave(text, "contact");
        }
        if unknown(warranty, "covers", Component::LIST, &components, found) {
            warranty.value.covers.retain(|id| components.contains_key(id));
            warranty.leave(text, "covers");
        }
    }
    for job in sound(&mut lists.jobs) {
        if unknown(job, "components", Component::LIST, &components, found) {
            job.value.components.retain(|id| components.contains_key(id));
            job.leave(text, "components");
        }
    }
    for done in sound(&mut lists.done) {
        if unknown(done, "components", Component::LIST, &components, found) {
            done.value.components.retain(|id| components.contains_key(id));
            done.leave(text, "components");
        }
    }
    for document in sound(&mut lists.documents) {
        if unknown(document, "components", Component::LIST, &components, found) {
            document.value.components.retain(|id| components.contains_key(id));
            document.leave(text, "components");
        }
    }
    check_drills(text, lists, &components, &spaces, found);
    check_connections(lists, &components, found);
}

/// Past so many problems nobody reads what was perhaps meant, and looking for it takes long.
const MOST_GUESSES: usize = 200;

/// Where each id of a list is first given.
pub(crate) type Ids = BTreeMap<String, usize>;

/// Ids of a list; elements whose id was given before are taken out.
fn unique<T: Element>(slots: &mut [Slot<T>], found: &mut Vec<Found>) -> Ids {
    let mut ids = Ids::new();
    for slot in slots {
        let Some(sound) = &slot.sound else { continue };
        let Some(id) = sound.value.id() else { continue };
        let at = sound.at_field("id");
        if let Some(first) = ids.get(id) {
            found.push(duplicate(T::LIST, id, at, *first));
            slot.sound = None;
        } else {
            ids.insert(id.to_owned(), at);
        }
    }
    ids
}

/// Ids of connections. One whose id was given before loses the id, not its place in the house.
fn unique_connection_ids(
    text: &str,
    slots: &mut [Slot<Connection>],
    found: &mut Vec<Found>,
) -> Ids {
    let mut ids = Ids::new();
    for connection in sound(slots) {
        let Some(id) = &connection.value.id else { continue };
        let at = connection.at_field("id");
        if let Some(first) = ids.get(id) {
            found.push(duplicate(Connection::LIST, id, at, *first));
            connection.value.id = None;
            connection.leave(text, "id");
        } else {
            ids.insert(id.clone(), at);
        }
    }
    ids
}

fn duplicate(list: &str, id: &str, at: usize, first: usize) -> Found {
    Found::error(at, "duplicate-id").with("list", list).with("id", id).other(first)
}

/// A spot is named by the id of a component, a space or a connection: each should mean one thing.
fn shared_spots(spaces: &Ids, components: &Ids, connections: &Ids, found: &mut Vec<Found>) {
    let pairs = [
        (Space::LIST, spaces, Component::LIST, components),
        (Space::LIST, spaces, Connection::LIST, connections),
        (Component::LIST, components, Connection::LIST, connections),
    ];
    for (list, ids, other_list, other_ids) in pairs {
        for (id, at) in ids {
            let Some(other) = other_ids.get(id) else { continue };
            let (list, at, other_list, other) = if at > other {
                (list, at, other_list, other)
            } else {
                (other_list, other, list, at)
            };
            let problem = Found::warning(*at, "shared-id")
                .with("list", list)
                .with("other_list", other_list)
                .with("id", id.as_str())
                .other(*other);
            found.push(problem);
        }
    }
}

/// Reports ids in a field that nothing in `list` has; true if there are any.
fn unknown<T>(
    sound: &Sound<T>,
    field: &str,
    list: &str,
    ids: &Ids,
    found: &mut Vec<Found>,
) -> bool {
    let mut any = false;
    for reference in sound.references.iter().filter(|r| r.field == field) {
        if !ids.contains_key(&reference.id) {
            let guess = if found.len() < MOST_GUESSES { ids } else { &Ids::new() };
            found.push(unknown_id(&sound.path, field, &reference.id, reference.at, list, guess));
            any = true;
        }
    }
    any
}

/// An id that nothing in `list` has.
pub(crate) fn unknown_id(
    path: &str,
    field: &str,
    id: &str,
    at: usize,
    list: &str,
    ids: &Ids,
) -> Found {
    Found::error(at, "unknown-id")
        .with("path", path)
        .with("field", field)
        .with("id", id)
        .with("list", list)
        .suggest(nearest(id, ids.keys().map(String::as_str)))
}

/// An owner may be told in free words; in a file that has contacts it is worth a look, once.
fn unknown_owners(components: &[Slot<Component>], contacts: &Ids, found: &mut Vec<Found>) {
    let mut told = BTreeSet::new();
    for component in components.iter().filter_map(|slot| slot.sound.as_ref()) {
        for owner in component.references.iter().filter(|r| r.field == "owner") {
            let is_known = contacts.is_empty() || contacts.contains_key(&owner.id);
            if !is_known && told.insert(owner.id.as_str()) {
                let problem = Found::warning(owner.at, "unknown-owner")
                    .with("path", component.path.as_str())
                    .with("id", owner.id.as_str())
                    .suggest(nearest(&owner.id, contacts.keys().map(String::as_str)));
                found.push(problem);
            }
        }
    }
}

/// Takes out passages that lead nowhere, and reports those that look wrong.
fn check_passages(
    text: &str,
    passages: &mut [Slot<Passage>],
    spaces: &[Slot<Space>],
    ids: &Ids,
    found: &mut Vec<Found>,
) {
    let levels: BTreeMap<&str, Option<&str>> = spaces
        .iter()
        .filter_map(|slot| slot.sound.as_ref())
        .map(|sound| (sound.value.id.as_str(), sound.value.level.as_deref()))
        .collect();
    for slot in passages {
        let Some(passage) = &mut slot.sound else { continue };
        if unknown(passage, "between", Space::LIST, ids, found) {
            slot.sound = None;
            continue;
        }
        let (one, other) = &passage.value.between;
        let told = |field: &str, key| {
            Found::error(passage.at_field(field), key)
                .with("path", passage.path.as_str())
                .with("one", one.as_str())
                .with("other", other.as_str())
        };
        if one == other {
            found.push(told("between", "passage-to-itself"));
            slot.sound = None;
            continue;
        }
        let level = |id: &str| levels.get(id).copied().flatten();
        if let (Some(here), Some(there)) = (level(one), level(other)) {
            let key = match (passage.value.stairs, here == there) {
                (true, true) => Some(("stairs", "stairs-on-one-level")),
                (false, false) => Some(("between", "door-between-levels")),
                (true, false) | (false, true) => None,
            };
            if let Some((field, key)) = key {
                found.push(Found { severity: Severity::Warning, ..told(field, key) });
            }
        }
        if passage.value.to_at.is_some() && !passage.value.stairs {
            found.push(told("to_at", "door-in-two-places"));
            passage.value.to_at = None;
            passage.leave(text, "to_at");
        }
    }
}

/// Takes out drills to nothing, and starting places that are not there.
fn check_drills(
    text: &str,
    lists: &mut Lists,
    components: &Ids,
    spaces: &Ids,
    found: &mut Vec<Found>,
) {
    for slot in &mut lists.drills {
        let Some(drill) = &mut slot.sound else { continue };
        if unknown(drill, "from", Space::LIST, spaces, found) {
            drill.value.from = None;
            drill.leave(text, "from");
        }
        if unknown(drill, "component", Component::LIST, components, found) {
            slot.sound = None;
        }
    }
}

/// Takes out connections that cannot be.
fn check_connections(lists: &mut Lists, ids: &Ids, found: &mut Vec<Found>) {
    let components: BTreeMap<&str, &Component> = lists
        .components
        .iter()
        .filter_map(|slot| slot.sound.as_ref())
        .map(|sound| (sound.value.id.as_str(), &sound.value))
        .collect();
    // What each plain line carries, by its first connection, and where that stands.
    let mut lines: BTreeMap<String, Vec<(Medium, usize)>> = BTreeMap::new();
    for slot in &mut lists.connections {
        let Some(connection) = &slot.sound else { continue };
        let value = &connection.value;
        let ends = (components.get(value.from.as_str()), components.get(value.to.as_str()));
        let (Some(from), Some(to)) = ends else {
            unknown(connection, "from", Component::LIST, ids, found);
            unknown(connection, "to", Component::LIST, ids, found);
            slot.sound = None;
            continue;
        };
        let fault = fault(value, from, to).or_else(|| mixing(value, [from, to], &lines));
        if let Some(fault) = fault {
            found.push(fault.problem(connection));
            slot.sound = None;
            continue;
        }
        for end in [from, to] {
            if end.kind.is_plain_line() && !passes_between(value, end) {
                lines.entry(end.id.clone()).or_default().push((value.carries, connection.at));
            }
        }
    }
    drain_loops(&mut lists.connections, found);
}

/// Why a connection cannot be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// Both ends are the same.
    ToItself,
    /// A component can have nothing to do with the medium.
    CannotMeet {
        /// The component.
        id: String,
        /// Its kind.
        kind: Kind,
    },
    /// Another medium is in that plain line already.
    Mixes {
        /// The plain line.
        id: String,
        /// What it carries already.
        medium: Medium,
        /// Where that is told: a byte of the file, or a place in the home's list of connections.
        first: usize,
    },
}

impl Home {
    /// What would be wrong with one more connection, as far as its ends and what they carry tell;
    /// `None` too if an end is not there. Time: connections × log components.
    #[must_use]
    pub fn fault(&self, connection: &Connection) -> Option<Fault> {
        let (from, to) = (self.component(&connection.from)?, self.component(&connection.to)?);
        let mut lines: BTreeMap<String, Vec<(Medium, usize)>> = BTreeMap::new();
        for (index, other) in self.connections.iter().enumerate() {
            for end in [from, to] {
                let touches = other.from == end.id || other.to == end.id;
                if touches && end.kind.is_plain_line() && !passes_between(other, end) {
                    lines.entry(end.id.clone()).or_default().push((other.carries, index));
                }
            }
        }
        fault(connection, from, to).or_else(|| mixing(connection, [from, to], &lines))
    }

    /// The ids along the loop in which a drain would run with one more connection, in the direction
    /// of flow; `None` if it would run in none. Time: connections.
    #[must_use]
    pub fn drain_loop(&self, connection: &Connection) -> Option<Vec<String>> {
        let net = connection.carries.net();
        if !matches!(net, Net::Waste | Net::Condensate) {
            return None;
        }
        let drains: Vec<(usize, &Connection)> = self
            .connections
            .iter()
            .chain([connection])
            .enumerate()
            .filter(|(_, other)| other.carries.net() == net)
            .collect();
        loops(&drains).into_iter().next().map(|(_, ids)| ids)
    }
}

impl Fault {
    fn problem(self, connection: &Sound<Connection>) -> Found {
        let at = connection.at_field("carries");
        let value = &connection.value;
        let told = |problem: Found| {
            problem
                .with("path", connection.path.as_str())
                .with("from", value.from.as_str())
                .with("to", value.to.as_str())
                .with("carries", format!("{:?}", value.carries))
        };
        match self {
            Self::ToItself => told(Found::error(connection.at_field("to"), "to-itself")),
            Self::CannotMeet { id, kind } => {
                told(Found::error(at, "cannot-meet")).with("id", id).with("kind", kind.name())
            }
            Self::Mixes { id, medium, first } => told(Found::error(at, "media-mix"))
                .with("id", id)
                .with("medium", format!("{medium:?}"))
                .other(first),
        }
    }
}

/// What is wrong with a connection between two components, looked at on its own.
pub(crate) fn fault(connection: &Connection, from: &Component, to: &Component) -> Option<Fault> {
    if connection.from == connection.to {
        return Some(Fault::ToItself);
    }
    let stranger = [from, to].into_iter().find(|end| !end.kind.can_meet(connection.carries))?;
    Some(Fault::CannotMeet { id: stranger.id.clone(), kind: stranger.kind })
}

/// The plain line in which a connection's medium would mix with another.
fn mixing(
    connection: &Connection,
    ends: [&Component; 2],
    lines: &BTreeMap<String, Vec<(Medium, usize)>>,
) -> Option<Fault> {
    ends.into_iter().filter(|end| !passes_between(connection, end)).find_map(|end| {
        let carried = lines.get(&end.id)?;
        let (medium, first) =
            carried.iter().find(|(medium, _)| spoils(*medium, connection.carries))?;
        Some(Fault::Mixes { id: end.id.clone(), medium: *medium, first: *first })
    })
}

/// True if two media in one pipe are a mistake.
fn spoils(one: Medium, other: Medium) -> bool {
    let is_dirty = |net| matches!(net, Net::Waste | Net::Condensate);
    match (one.net(), other.net()) {
        (Net::Water | Net::Gas, net) | (net, Net::Water | Net::Gas) if is_dirty(net) => true,
        (Net::Water, Net::Gas) | (Net::Gas, Net::Water) => true,
        _ => false,
    }
}

/// True where water goes over into a drain by design, so that both meet in one component: the
/// discharge of a backflow preventer, a drain cock that stands shut, a primer that keeps a trap full
/// (common practice).
fn passes_between(connection: &Connection, end: &Component) -> bool {
    let leaves = connection.from == end.id;
    match (end.kind, connection.carries.net()) {
        (Kind::BackflowPreventer, Net::Waste | Net::Condensate) => leaves,
        (Kind::IsolatingValve, Net::Waste | Net::Condensate) => leaves && end.normally_shut(),
        (Kind::Trap, Net::Water) => !leaves,
        _ => false,
    }
}

/// Takes out the last connection of each loop in which a drain would run, until there is none.
fn drain_loops(slots: &mut [Slot<Connection>], found: &mut Vec<Found>) {
    for net in [Net::Waste, Net::Condensate] {
        loop {
            let connections: Vec<(usize, &Connection)> = slots
                .iter()
                .enumerate()
                .filter_map(|(i, slot)| Some((i, &slot.sound.as_ref()?.value)))
                .filter(|(_, connection)| connection.carries.net() == net)
                .collect();
            let loops = loops(&connections);
            if loops.is_empty() {
                break;
            }
            for (index, ids) in loops {
                let Some(slot) = slots.get_mut(index) else { continue };
                if let Some(connection) = slot.sound.take() {
                    let problem = Found::error(connection.at, "drain-loop")
                        .with("path", connection.path.as_str())
                        .with("from", connection.value.from.as_str())
                        .with("to", connection.value.to.as_str())
                        .with("ids", ids.join(", "));
                    found.push(problem);
                }
            }
        }
    }
}

/// One loop of each part of a drain that runs in loops: the number of its last connection, and the
/// ids along it, in the direction of flow.
///
/// ```text
/// sink ─► trap ─► stack ─► sewer      loop: stack, branch
///                 ▲   │
///                 └─ branch
/// ```
pub(crate) fn loops(connections: &[(usize, &Connection)]) -> Vec<(usize, Vec<String>)> {
    let mut nodes: BTreeMap<&str, NodeIndex> = BTreeMap::new();
    let mut graph: DiGraph<&str, usize> = DiGraph::new();
    for (index, connection) in connections {
        let mut node = |id| *nodes.entry(id).or_insert_with(|| graph.add_node(id));
        let (from, to) = (node(connection.from.as_str()), node(connection.to.as_str()));
        graph.add_edge(from, to, *index);
    }
    // Which part each node is in. A part of one node is no loop: nothing connects to itself here.
    let mut part: BTreeMap<NodeIndex, usize> = BTreeMap::new();
    for (number, nodes) in tarjan_scc(&graph).into_iter().enumerate() {
        if nodes.len() > 1 {
            part.extend(nodes.into_iter().map(|node| (node, number)));
        }
    }
    let mut last: BTreeMap<usize, (usize, NodeIndex, NodeIndex)> = BTreeMap::new();
    for edge in graph.edge_indices() {
        let Some((from, to)) = graph.edge_endpoints(edge) else { continue };
        let (Some(here), Some(there)) = (part.get(&from), part.get(&to)) else { continue };
        let index = graph.edge_weight(edge).copied().unwrap_or_default();
        if here == there && last.get(here).is_none_or(|(other, ..)| *other < index) {
            last.insert(*here, (index, from, to));
        }
    }
    let mut loops: Vec<_> =
        last.into_values().map(|(index, from, to)| (index, way(&graph, to, from))).collect();
    loops.sort();
    loops
}

/// The ids of a shortest way from `start` to `end`, both among them.
fn way(graph: &DiGraph<&str, usize>, start: NodeIndex, end: NodeIndex) -> Vec<String> {
    let mut before: BTreeMap<NodeIndex, NodeIndex> = BTreeMap::from([(start, start)]);
    let mut queue = VecDeque::from([start]);
    while let Some(node) = queue.pop_front() {
        if node == end {
            break;
        }
        for next in graph.neighbors(node) {
            before.entry(next).or_insert_with(|| {
                queue.push_back(next);
                node
            });
        }
    }
    let mut ids = Vec::new();
    let mut node = end;
    loop {
        ids.push(graph.node_weight(node).map(|id| (*id).to_owned()).unwrap_or_default());
        match before.get(&node) {
            Some(previous) if node != start => node = *previous,
            _ => break,
        }
    }
    ids.reverse();
    ids
}

fn sound<T>(slots: &mut [Slot<T>]) -> impl Iterator<Item = &mut Sound<T>> {
    slots.iter_mut().filter_map(|slot| slot.sound.as_mut())
}
