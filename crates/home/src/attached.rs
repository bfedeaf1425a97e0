//! What hangs on a component and serves nothing else: its stops, hoses and traps. It is moved and copied
//! with it.

use std::collections::{BTreeMap, BTreeSet};

use crate::{Component, Connection, DeviceState, Home, Kind};

/// What is moved or copied with a component.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum With {
    /// Nothing.
    #[default]
    Nothing,
    /// What serves it alone ([`attached`]), with the connections between.
    Attached,
    /// The same, and for a copy also the connections that lead on into the house.
    AttachedAndLines,
}

/// Ids of what serves a component alone, in the order of the file: from the component along its
/// connections, fittings that connect it to one thing more and stand in the same space (or in none).
///
/// ```text
///   branch ── stop ── hose ── basin ── trap ── stack       attached to basin: stop, hose, trap
/// ```
///
/// Sources, outfalls, boundaries, what is the utility's, and whatever people use themselves (another
/// basin) are never attached.
#[must_use]
pub fn attached(home: &Home, id: &str) -> Vec<String> {
    let Some(middle) = home.component(id) else { return Vec::new() };
    let mut neighbors: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for Connection { from, to, .. } in &home.connections {
        neighbors.entry(from).or_default().insert(to);
        neighbors.entry(to).or_default().insert(from);
    }
    let of = |id: &str| neighbors.get(id).into_iter().flatten().copied();
    let is_fitting = |component: &Component| {
        let is_end = crate::Net::ALL.iter().any(|net| component.kind.is_source(*net))
            || component.kind.is_outfall();
        let is_apart = component.space.is_some() && component.space != middle.space;
        let is_hub = matches!(component.kind, Kind::Panel | Kind::Manifold | Kind::Stack);
        !is_end
            && !is_apart
            && !is_hub
            && !component.boundary
            && !component.kind.is_served()
            && component.operable_by != crate::OperableBy::Utility
            && of(&component.id).count() <= 2
    };
    let mut set = BTreeSet::from([id]);
    let mut next = vec![id];
    while let Some(here) = next.pop() {
        for there in of(here) {
            let fits = home.component(there).is_some_and(is_fitting);
            if fits && set.insert(there) {
                next.push(there);
            }
        }
    }
    let in_set = home.components.iter().map(|c| c.id.as_str()).filter(|other| set.contains(other));
    in_set.filter(|other| *other != id).map(str::to_owned).collect()
}

impl Home {
    /// An id that nothing in the home has, made from a name: `Kitchen tap` gives `kitchen-tap`, or
    /// `kitchen-tap-2` if that is taken.
    #[must_use]
    pub fn free_id(&self, name: &str) -> String {
        let plain: String = name.to_lowercase().chars().map(plain_letter).collect();
        let words: Vec<&str> = plain.split('-').filter(|word| !word.is_empty()).collect();
        let id = if words.is_empty() { "part".to_owned() } else { words.join("-") };
        if !self.has_id(&id) {
            return id;
        }
        // A number at its end is counted on, so that copies of copies do not pile numbers up.
        let stem = match id.rsplit_once('-') {
            Some((stem, number)) if number.bytes().all(|b| b.is_ascii_digit()) => stem.to_owned(),
            _ => id,
        };
        let mut numbered = (2_u64..).map(|number| format!("{stem}-{number}"));
        numbered.find(|id| !self.has_id(id)).unwrap_or(stem)
    }

    /// True if something that has an id has this one.
    #[must_use]
    pub fn has_id(&self, id: &str) -> bool {
        self.component(id).is_some()
            || self.space(id).is_some()
            || self.level(id).is_some()
            || self.contact(id).is_some()
            || self.connections.iter().any(|c| c.id.as_deref() == Some(id))
            || self.warranties.iter().any(|w| w.id == id)
            || self.jobs.iter().any(|j| j.id == id)
            || self.documents.iter().any(|d| d.id == id)
    }
}

/// A letter as an id may have it. Accents of the languages that the program speaks are taken off.
fn plain_letter(c: char) -> char {
    match c {
        'a'..='z' | '0'..='9' => c,
        'á' | 'à' | 'â' | 'ä' | 'ã' | 'å' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'ì' | 'î' | 'ï' => 'i',
        'ó' | 'ò' | 'ô' | 'ö' | 'õ' => 'o',
        'ú' | 'ù' | 'û' | 'ü' => 'u',
        'ñ' => 'n',
        'ç' => 'c',
        _ => '-',
    }
}

/// A space, and a place on its level.
type Where = (Option<String>, Option<(f64, f64, f64)>);

/// Puts a component somewhere else. What is attached keeps its distance, where places are known.
pub(crate) fn move_to(home: &mut Home, id: &str, with: With, (space, at): Where) {
    let ids = parts(home, id, with);
    let shift = shift(home, id, at);
    for component in home.components.iter_mut().filter(|c| ids.contains(&c.id)) {
        let is_first = component.id == id;
        put_there(component, is_first, (space.clone(), at), shift);
    }
}

/// Adds a copy of a component as `new`, its id and name; what is copied with it gets ids of its own.
pub(crate) fn copy(home: &mut Home, id: &str, with: With, new: (String, String), to: Where) {
    let ids = parts(home, id, with);
    let shift = shift(home, id, to.1);
    let (new_id, name) = new;
    let mut renamed: BTreeMap<String, String> = BTreeMap::new();
    let originals: Vec<Component> =
        home.components.iter().filter(|c| ids.contains(&c.id)).cloned().collect();
    // The component itself first, so that what is attached cannot take the id that was asked for.
    let (first, attached): (Vec<_>, Vec<_>) = originals.into_iter().partition(|c| c.id == id);
    for original in first.into_iter().chain(attached) {
        let is_first = original.id == id;
        let copy_id = if is_first { new_id.clone() } else { home.free_id(&original.id) };
        let mut copy = Component { id: copy_id.clone(), ..unknown(original.clone()) };
        if is_first {
            copy.name.clone_from(&name);
        }
        put_there(&mut copy, is_first, to.clone(), shift);
        home.components.push(copy);
        renamed.insert(original.id, copy_id);
    }
    let lines: Vec<Connection> = home
        .connections
        .iter()
        .filter_map(|line| {
            let ends = (renamed.get(&line.from), renamed.get(&line.to));
            let (from, to) = match ends {
                (Some(from), Some(to)) => (from, to),
                (Some(from), None) if with == With::AttachedAndLines => (from, &line.to),
                (None, Some(to)) if with == With::AttachedAndLines => (&line.from, to),
                _ => return None,
            };
            Some(Connection { id: None, from: from.clone(), to: to.clone(), ..line.clone() })
        })
        .collect();
    home.connections.extend(lines);
}

/// A device of the same make, of which nobody knows anything yet.
pub(crate) fn unknown(mut component: Component) -> Component {
    component.tag = None;
    component.photo = None;
    component.installed = None;
    if let Some(operates) = &mut component.operates {
        operates.state = DeviceState::Unknown;
        operates.exercised = None;
        operates.seconds = None;
    }
    component
}

fn parts(home: &Home, id: &str, with: With) -> BTreeSet<String> {
    let mut ids = BTreeSet::from([id.to_owned()]);
    if with != With::Nothing {
        ids.extend(attached(home, id));
    }
    ids
}

/// How far a component is moved, if its place is known before and after.
fn shift(home: &Home, id: &str, at: Option<(f64, f64, f64)>) -> Option<(f64, f64, f64)> {
    let (x, y, z) = home.component(id)?.at?;
    let (u, v, w) = at?;
    Some((u - x, v - y, w - z))
}

/// Puts the first component to `at` and the others by `shift`; into `space`, if that is another one.
fn put_there(
    component: &mut Component,
    is_first: bool,
    (space, at): Where,
    shift: Option<(f64, f64, f64)>,
) {
    let is_elsewhere = space.is_some() && component.space != space;
    component.at = match (is_first, at, component.at, shift) {
        (true, Some(at), ..) => Some(at),
        // What is attached is moved along the plan; its height is its own.
        (false, Some(_), Some((x, y, z)), Some((dx, dy, _))) => Some((x + dx, y + dy, z)),
        (_, None, at, _) if !is_elsewhere => at,
        (false, Some(_), at, None) if !is_elsewhere => at,
        _ => None,
    };
    if is_elsewhere {
        component.space = space;
    }
}
