//! Opens a home file: what is sound becomes a [`Home`], everything else a problem with its place.

use crate::check::{Ids, Lists, check, unknown_id};
use crate::decode::{Fields, Left, Reference, slice, struct_fields};
use crate::kept::{Kept, KeptPiece, KeptPlace};
use crate::read::{Element as _, Slot, slots};
use crate::report::{Found, by_place};
use crate::save::{Stored, home_written, keys, written};
use crate::scan::{Form, Scan, excerpt, scan};
use crate::{Component, FORMAT, Home, Opened, Severity, Space, Units};

/// Reads the text of a home file.
///
/// It takes what it can: one bad field, one bad component leaves the others as they are. All that is
/// wrong is reported at once, sorted by place, under the name `file`. What could not be used is kept
/// as text, so that [`save`](crate::save) writes it back. Only a text whose brackets or quotes do not
/// close gives no home at all.
///
/// ```
/// let text = r#"Home(format: 1, name: "Hut", components: [(id: "tap", kind: Tapp, name: "Tap")])"#;
/// let opened = quarterturn_home::open("home.ron", text);
/// let problem = &opened.problems[0];
/// assert_eq!((problem.key, problem.line, problem.column), ("unknown-kind", 1, 61));
/// assert_eq!(opened.home.unwrap().components.len(), 1);
/// ```
#[must_use]
pub fn open(file: &str, text: &str) -> Opened {
    let mut found = Vec::new();
    let (home, kept) = match scan(text, &mut found) {
        Ok(scan) => match read_home(text, &scan, &mut found) {
            Some((home, kept)) => (Some(home), kept),
            None => (None, Kept::default()),
        },
        Err(fatal) => {
            found.push(fatal);
            (None, Kept::default())
        }
    };
    Opened { home, problems: by_place(file, text, found), kept }
}

impl Opened {
    /// True if saving the home loses nothing: it could be read, and its format is one that this
    /// version writes.
    #[must_use]
    pub fn may_save(&self) -> bool {
        let is_strange =
            self.problems.iter().any(|p| matches!(p.key, "format-newer" | "format-unreadable"));
        self.home.is_some() && !is_strange
    }
}

fn read_home(text: &str, scan: &Scan, found: &mut Vec<Found>) -> Option<(Home, Kept)> {
    let Some(pieces) = struct_fields(&scan.root) else {
        let shown = excerpt(text.get(scan.root.span.clone()).unwrap_or_default());
        found.push(Found::error(scan.root.span.start, "not-a-home").with("found", shown));
        return None;
    };
    if let Form::Struct { name: Some(name), .. } | Form::Empty { name: Some(name) } =
        &scan.root.form
    {
        let word = text.get(name.clone()).unwrap_or_default();
        if word != "Home" {
            let problem = Found::warning(name.start, "other-name")
                .with("path", "Home")
                .with("found", word)
                .with("wanted", "Home");
            found.push(problem);
        }
    }
    let mut kept = Kept { above: scan.above.clone(), below: scan.below.clone(), ..Kept::default() };
    if let Some(rest) = &scan.rest {
        let rest_text = text.get(rest.clone()).unwrap_or_default();
        found.push(Found::error(rest.start, "text-after-home").with("found", excerpt(rest_text)));
        kept.after = Some(rest_text.to_owned());
    }

    let mut fields = Fields::new(text, "Home".to_owned(), scan.root.span.start, pieces, found);
    let mut home = Home {
        format: read_format(&mut fields, FORMAT),
        name: fields.needed_text("name").unwrap_or_else(|| {
            fields.leave("name");
            String::new()
        }),
        units: fields.choice("units", Severity::Error).or(Units::default(), Units::default()),
        language: fields.text("language"),
        address: fields.text("address"),
        emergency_phone: fields.text("emergency_phone"),
        usual_space: fields.reference("usual_space"),
        north_deg: fields.direction("north_deg"),
        ..Home::default()
    };
    let has_components = fields.find(Component::LIST).map(|field| field.value.span.start);
    let mut lists = Lists {
        levels: slots(&mut fields),
        spaces: slots(&mut fields),
        passages: slots(&mut fields),
        components: slots(&mut fields),
        connections: slots(&mut fields),
        contacts: slots(&mut fields),
        warranties: slots(&mut fields),
        jobs: slots(&mut fields),
        done: slots(&mut fields),
        move_in: slots(&mut fields),
        documents: slots(&mut fields),
        drills: slots(&mut fields),
    };
    fields.finish();
    let Fields { mut left, references, .. } = fields;

    check(text, &mut lists, found);
    if let Some(reference) = references.into_iter().next() {
        let spaces = lists.spaces.iter().filter_map(|slot| slot.sound.as_ref());
        let ids: Ids = spaces.map(|space| (space.value.id.clone(), space.at)).collect();
        if !ids.contains_key(&reference.id) {
            let Reference { field, id, at } = reference;
            found.push(unknown_id("Home", field, &id, at, Space::LIST, &ids));
            home.usual_space = None;
            let raw = pieces
                .iter()
                .find(|piece| slice(text, &piece.name) == field)
                .map_or("", |piece| slice(text, &piece.span));
            left.push(Left { inner: "", field: Some(field.to_owned()), text: raw.to_owned() });
        }
    }
    if lists.components.iter().all(|slot| slot.sound.is_none()) {
        let at = has_components.unwrap_or(scan.root.span.start);
        found.push(Found::warning(at, "no-components"));
    }

    home.levels = settle(text, lists.levels, &mut kept);
    home.spaces = settle(text, lists.spaces, &mut kept);
    home.passages = settle(text, lists.passages, &mut kept);
    home.components = settle(text, lists.components, &mut kept);
    home.connections = settle(text, lists.connections, &mut kept);
    home.contacts = settle(text, lists.contacts, &mut kept);
    home.warranties = settle(text, lists.warranties, &mut kept);
    home.jobs = settle(text, lists.jobs, &mut kept);
    home.done = settle(text, lists.done, &mut kept);
    home.move_in = settle(text, lists.move_in, &mut kept);
    home.documents = settle(text, lists.documents, &mut kept);
    home.drills = settle(text, lists.drills, &mut kept);
    for piece in left {
        let instead = piece.field.as_deref().and_then(|field| home_written(&home, field));
        kept.pieces.push(kept_field("", "", piece, instead));
    }
    Some((home, kept))
}

/// The version of the format. One that is missing or unreadable counts as the newest.
pub(crate) fn read_format(fields: &mut Fields<'_, '_>, newest: u32) -> u32 {
    let Some(piece) = fields.take("format") else {
        let problem = Found::error(fields.at, "format-missing").with("newest", newest.to_string());
        fields.report(problem);
        return newest;
    };
    match fields.leaf::<u32>(piece) {
        Ok(format) => {
            if format > newest {
                let problem = fields
                    .problem(piece, "format-newer", "format", Severity::Error)
                    .with("newest", newest.to_string());
                fields.report(problem);
            }
            format
        }
        Err(_) => {
            let problem = fields
                .problem(piece, "format-unreadable", "format", Severity::Error)
                .with("newest", newest.to_string());
            fields.report(problem);
            newest
        }
    }
}

/// The sound elements of a list; the rest goes to `kept`.
pub(crate) fn settle<T: Stored>(text: &str, slots: Vec<Slot<T>>, kept: &mut Kept) -> Vec<T> {
    let keys = keys(slots.iter().filter_map(|slot| slot.sound.as_ref()).map(|s| &s.value));
    let mut keys = keys.into_iter();
    let mut after = None;
    let mut values = Vec::new();
    for slot in slots {
        let Some(sound) = slot.sound else {
            kept.pieces.push(KeptPiece {
                list: T::LIST.to_owned(),
                text: slice(text, &slot.span).to_owned(),
                place: KeptPlace::Element { after: after.clone(), index: values.len() },
            });
            continue;
        };
        let key = keys.next().unwrap_or_default();
        for left in sound.left {
            let field = left.field.as_deref();
            let instead = field.and_then(|field| written(&sound.value, left.inner, field));
            kept.pieces.push(kept_field(T::LIST, &key, left, instead));
        }
        after = Some(key);
        values.push(sound.value);
    }
    values
}

pub(crate) fn kept_field(
    list: &str,
    element: &str,
    left: Left,
    instead: Option<String>,
) -> KeptPiece {
    KeptPiece {
        list: list.to_owned(),
        text: left.text,
        place: KeptPlace::Field {
            element: element.to_owned(),
            inner: left.inner.to_owned(),
            field: left.field,
            instead,
        },
    }
}
