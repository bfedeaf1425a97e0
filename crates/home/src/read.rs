//! Reads the structs of the model from the pieces of a home file.
//!
//! Each element of a list is read on its own. One that cannot be used stays in its slot as text.

use std::ops::Range;

use crate::decode::{Fields, Left, Limits, Reference, present, slice, struct_fields};
use crate::report::Found;
use crate::scan::{Field, Form, Piece};
use crate::{
    Closes, Component, Connection, Contact, DeviceState, Document, Done, Duct, Job, Level, MovedIn,
    OperableBy, Operates, Passage, Plan, Position, Severity, Space, Warranty,
};

/// Longest spans of time that are taken, so that dates stay within the calendar: a thousand years.
const MOST_YEARS: u32 = 1_000;
const MOST_MONTHS: u32 = 12_000;
const MOST_DAYS: u32 = 366_000;

/// What a list of the home file holds.
pub(crate) trait Element: Sized {
    /// Name of the list in the file.
    const LIST: &'static str;
    /// Name that the struct may have in the file.
    const NAME: &'static str;

    /// Reads it; `None` if something is missing that nothing can stand for.
    fn read(fields: &mut Fields<'_, '_>) -> Option<Self>;

    /// Its own id, if it has one.
    fn id(&self) -> Option<&str>;

    /// What it is known by among the elements of its list, for what is put aside.
    fn key(&self) -> String {
        self.id().unwrap_or_default().to_owned()
    }
}

/// A place in a list of the file.
#[derive(Debug)]
pub(crate) struct Slot<T> {
    pub(crate) span: Range<usize>,
    /// What stands there, if it could be used.
    pub(crate) sound: Option<Sound<T>>,
}

/// An element that could be used, with what the check of the whole file needs.
#[derive(Debug)]
pub(crate) struct Sound<T> {
    pub(crate) value: T,
    pub(crate) path: String,
    /// Byte where it begins.
    pub(crate) at: usize,
    /// Name, start of the value, and span of each of its fields.
    pub(crate) spans: Vec<(String, usize, Range<usize>)>,
    pub(crate) left: Vec<Left>,
    pub(crate) references: Vec<Reference>,
}

impl<T> Sound<T> {
    /// Byte where the value of a field begins, or else the element.
    pub(crate) fn at_field(&self, name: &str) -> usize {
        self.spans.iter().find(|(n, ..)| n == name).map_or(self.at, |(_, at, _)| *at)
    }

    /// Puts the text of a field aside.
    pub(crate) fn leave(&mut self, text: &str, name: &str) {
        let span = self.spans.iter().find(|(n, ..)| n == name).map(|(_, _, span)| span);
        let text = span.map_or("", |span| slice(text, span)).to_owned();
        let already = |left: &Left| left.inner.is_empty() && left.field.as_deref() == Some(name);
        if !self.left.iter().any(already) {
            self.left.push(Left { inner: "", field: Some(name.to_owned()), text });
        }
    }
}

/// Reads a list of the home, slot by slot.
pub(crate) fn slots<T: Element>(home: &mut Fields<'_, '_>) -> Vec<Slot<T>> {
    let mut number = 0_usize;
    home.list(T::LIST, |home, piece| {
        number += 1;
        Some(Slot { span: piece.span.clone(), sound: element(home, piece, number) })
    })
}

fn element<T: Element>(
    home: &mut Fields<'_, '_>,
    piece: &Piece,
    number: usize,
) -> Option<Sound<T>> {
    let text = home.text;
    let inside = present(text, piece).unwrap_or(piece);
    let Some(pieces) = struct_fields(inside) else {
        let problem =
            home.problem(inside, "wrong-type", T::LIST, Severity::Error).with("wanted", "group");
        home.report(problem);
        return None;
    };
    let path = format!("{} / {}", T::LIST, label(text, pieces, number));
    if let Form::Struct { name: Some(name), .. } = &inside.form {
        let name_text = slice(text, name);
        if name_text != T::NAME && name_text != "Some" {
            let problem = Found::warning(name.start, "other-name")
                .with("path", path.as_str())
                .with("found", name_text)
                .with("wanted", T::NAME);
            home.report(problem);
        }
    }
    let mut fields = Fields::new(text, path, inside.span.start, pieces, home.found);
    let value = T::read(&mut fields);
    fields.finish();
    let Fields { path, left, references, .. } = fields;
    let spans = |field: &Field| {
        (slice(text, &field.name).to_owned(), field.value.span.start, field.span.clone())
    };
    Some(Sound {
        value: value?,
        path,
        at: inside.span.start,
        // Where a field stands twice, the first is the one that was read, and is found first.
        spans: pieces.iter().map(spans).collect(),
        left,
        references,
    })
}

/// What an element is called in a problem: its id, its ends, or its number in the list.
fn label(text: &str, fields: &[Field], number: usize) -> String {
    let quoted = |piece: &Piece| {
        let inside = slice(text, &piece.span).strip_prefix('"')?.strip_suffix('"')?;
        (!inside.is_empty() && inside.chars().count() <= 40).then_some(inside)
    };
    let value = |name: &str| {
        let field = fields.iter().find(|f| slice(text, &f.name) == name)?;
        quoted(present(text, &field.value)?)
    };
    if let Some(id) = value("id") {
        return id.to_owned();
    }
    if let (Some(from), Some(to)) = (value("from"), value("to")) {
        return format!("{from}..{to}");
    }
    let between = fields.iter().find(|f| slice(text, &f.name) == "between").map(|f| &f.value.form);
    if let Some(Form::Tuple { items, .. }) = between
        && let [one, other] = items.as_slice()
        && let [Some(one), Some(other)] = [one, other].map(quoted)
    {
        return format!("{one}..{other}");
    }
    format!("#{number}")
}

impl Fields<'_, '_> {
    /// The id, which must be there and should keep to small letters, digits and hyphens.
    fn own_id(&mut self) -> Option<String> {
        let id = self.needed_text("id")?;
        self.fit_id(id)
    }

    fn fit_id(&mut self, id: String) -> Option<String> {
        let at = self.find("id").map_or(self.at, |field| field.value.span.start);
        if id.is_empty() {
            let problem = Found::error(at, "empty-id").with("path", self.path.as_str());
            self.report(problem);
            return None;
        }
        if !id.bytes().all(|b| matches!(b, b'a'..=b'z' | b'0'..=b'9' | b'-')) {
            let problem = Found::warning(at, "odd-id")
                .with("path", self.path.as_str())
                .with("found", id.as_str())
                .with("better", better_id(&id));
            self.report(problem);
        }
        Some(id)
    }

    /// The name, or else the id in its place.
    fn own_name(&mut self, id: &str) -> String {
        self.needed_text("name").unwrap_or_else(|| {
            self.leave("name");
            id.to_owned()
        })
    }
}

/// An id like `id` that keeps to the rules.
fn better_id(id: &str) -> String {
    let small = |c: char| {
        let c = c.to_ascii_lowercase();
        if c.is_ascii_lowercase() || c.is_ascii_digit() { c } else { '-' }
    };
    let parts: String = id.chars().map(small).collect();
    let parts: Vec<&str> = parts.split('-').filter(|part| !part.is_empty()).collect();
    if parts.is_empty() { "part-1".to_owned() } else { parts.join("-") }
}

impl Element for Level {
    const LIST: &'static str = "levels";
    const NAME: &'static str = "Level";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let elevation_m = fields.number("elevation_m", Limits::ANY).unwrap_or_default();
        let plan = fields.nested("plan", read_plan);
        Some(Self { id: id?, name, elevation_m, plan })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}

fn read_plan(fields: &mut Fields<'_, '_>) -> Option<Plan> {
    let picture = fields.needed_text("picture");
    let left_m = fields.number("left_m", Limits::ANY).unwrap_or_default();
    let top_m = fields.number("top_m", Limits::ANY).unwrap_or_default();
    // A picture without width would put every pin on one spot.
    fields.need("width_m");
    let width_m = fields.number("width_m", Limits(0.001, 1e9));
    let mirrored = fields.yes_or_no("mirrored").unwrap_or_default();
    Some(Plan { picture: picture?, left_m, top_m, width_m: width_m?, mirrored })
}

impl Element for Space {
    const LIST: &'static str = "spaces";
    const NAME: &'static str = "Space";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let level = fields.reference("level");
        let outline = fields
            .points("outline", "outline", |points: &Vec<(f64, f64)>| {
                points.iter().flat_map(|(x, y)| [*x, *y]).collect()
            })
            .unwrap_or_default();
        let outdoors = fields.yes_or_no("outdoors").unwrap_or_default();
        Some(Self { id: id?, name, level, outline, outdoors })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}

impl Element for Passage {
    const LIST: &'static str = "passages";
    const NAME: &'static str = "Passage";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        fields.need("between");
        let between = fields.pair("between");
        let mut point = |name| fields.points(name, "place", |(x, y): &(f64, f64)| vec![*x, *y]);
        let at = point("at");
        let to_at = point("to_at");
        let stairs = fields.yes_or_no("stairs").unwrap_or_default();
        let note = fields.text("note");
        Some(Self { between: between?, at, stairs, to_at, note })
    }

    fn id(&self) -> Option<&str> {
        None
    }

    fn key(&self) -> String {
        format!("{}..{}", self.between.0, self.between.1)
    }
}

impl Element for Component {
    const LIST: &'static str = "components";
    const NAME: &'static str = "Component";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let kind = fields.kind("kind");
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let component = Self {
            tag: fields.text("tag"),
            space: fields.reference("space"),
            at: fields.points("at", "point", |(x, y, z): &(f64, f64, f64)| vec![*x, *y, *z]),
            operates: fields.nested("operates", |fields| Some(read_operates(fields))),
            // Who may work it was written, and is not known: nobody without a licence, then.
            operable_by: fields
                .choice("operable_by", Severity::Error)
                .or(OperableBy::default(), OperableBy::Licensed),
            rating_a: fields.number("rating_a", Limits::NOT_NEGATIVE),
            poles: fields.whole("poles", 1, 100),
            watts: fields.number("watts", Limits::NOT_NEGATIVE),
            volume_l: fields.number("volume_l", Limits::NOT_NEGATIVE),
            joins: fields.yes_or_no("joins"),
            critical: fields.yes_or_no("critical").unwrap_or_default(),
            boundary: fields.yes_or_no("boundary").unwrap_or_default(),
            owner: fields.reference("owner"),
            panel: fields.text("panel"),
            circuit: fields.text("circuit"),
            arc_fault: fields.yes_or_no("arc_fault").unwrap_or_default(),
            installed: fields.date("installed"),
            duct: fields.nested("duct", |fields| Some(read_duct(fields))),
            lamp: fields.text("lamp"),
            photo: fields.text("photo"),
            note: fields.text("note"),
            private: fields.yes_or_no("private").unwrap_or_default(),
            ..Self::new("", kind, &name)
        };
        Some(Self { id: id?, ..component })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}

fn read_operates(fields: &mut Fields<'_, '_>) -> Operates {
    Operates {
        handle: fields.choice("handle", Severity::Warning).known(),
        closes: read_closes(fields),
        state: fields
            .choice("state", Severity::Error)
            .or(DeviceState::default(), DeviceState::Unknown),
        normally: fields
            .choice("normally", Severity::Error)
            .or(Position::default(), Position::default()),
        tool: fields.text("tool"),
        exercised: fields.date("exercised"),
        seconds: fields.number("seconds", Limits::NOT_NEGATIVE),
    }
}

fn read_duct(fields: &mut Fields<'_, '_>) -> Duct {
    /// More elbows than any duct has room for.
    const MOST_ELBOWS: u32 = 50;
    Duct {
        length_m: fields.number("length_m", Limits::NOT_NEGATIVE),
        quarter_elbows: fields.whole("quarter_elbows", 0, MOST_ELBOWS).unwrap_or_default(),
        eighth_elbows: fields.whole("eighth_elbows", 0, MOST_ELBOWS).unwrap_or_default(),
    }
}

fn read_closes(fields: &mut Fields<'_, '_>) -> Option<Closes> {
    const TURNS: Limits = Limits(0.01, 10_000.0);
    let closes = fields.choice("closes", Severity::Warning).known()?;
    if let Closes::Turns(turns) = closes
        && !TURNS.allow(turns)
    {
        let piece = fields.take("closes")?;
        fields.out_of_range("closes", piece, TURNS);
        return None;
    }
    Some(closes)
}

impl Element for Connection {
    const LIST: &'static str = "connections";
    const NAME: &'static str = "Connection";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.text("id").and_then(|id| {
            let id = fields.fit_id(id);
            if id.is_none() {
                fields.leave("id");
            }
            id
        });
        fields.need("from");
        let from = fields.reference("from");
        fields.need("to");
        let to = fields.reference("to");
        fields.need("carries");
        let carries = fields.choice("carries", Severity::Error);
        let length_m = fields.number("length_m", Limits::NOT_NEGATIVE);
        let size = fields.text("size");
        let material = fields.choice("material", Severity::Warning).known();
        let one_way = fields.yes_or_no("one_way").unwrap_or_default();
        let note = fields.text("note");
        let carries = carries.known()?;
        Some(Self { id, from: from?, to: to?, carries, length_m, size, material, one_way, note })
    }

    fn id(&self) -> Option<&str> {
        self.id.as_deref()
    }

    fn key(&self) -> String {
        format!("{}..{} {:?}", self.from, self.to, self.carries)
    }
}

impl Element for Contact {
    const LIST: &'static str = "contacts";
    const NAME: &'static str = "Contact";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let phone = fields.text("phone");
        let role = fields.choice("role", Severity::Warning).known();
        let hours = fields.text("hours");
        let note = fields.text("note");
        Some(Self { id: id?, name, phone, role, hours, note })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}

impl Element for Warranty {
    const LIST: &'static str = "warranties";
    const NAME: &'static str = "Warranty";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let kind = fields.choice("kind", Severity::Warning).known();
        let contact = fields.reference("contact");
        let covers = fields.ids("covers");
        let media =
            fields.list("media", |fields, piece| fields.choice_of("media", piece, Severity::Error));
        fields.need("from");
        let from = fields.date("from");
        let years = fields.whole("years", 0, MOST_YEARS);
        let days = fields.whole("days", 0, MOST_DAYS);
        let months = fields.whole("months", 0, MOST_MONTHS);
        Some(Self { id: id?, name, kind, contact, covers, media, from: from?, years, days, months })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}

impl Element for Job {
    const LIST: &'static str = "jobs";
    const NAME: &'static str = "Job";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let stands_for = fields.text("stands_for");
        let components = fields.ids("components");
        let how = fields.text("how");
        // Every nought months would be due without end.
        let every_months = fields.whole("every_months", 1, MOST_MONTHS);
        let last_done = fields.date("last_done");
        let note = fields.text("note");
        Some(Self { id: id?, name, stands_for, components, how, every_months, last_done, note })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}

impl Element for Done {
    const LIST: &'static str = "done";
    const NAME: &'static str = "Done";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let job = fields.needed_text("job");
        fields.need("on");
        let on = fields.date("on");
        let by = fields.text("by");
        let components = fields.ids("components");
        let finding = fields.choice("finding", Severity::Warning).known();
        let note = fields.text("note");
        Some(Self { job: job?, on: on?, by, components, finding, note })
    }

    fn id(&self) -> Option<&str> {
        None
    }

    fn key(&self) -> String {
        format!("{} {}", self.job, self.on)
    }
}

impl Element for MovedIn {
    const LIST: &'static str = "move_in";
    const NAME: &'static str = "MovedIn";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let item = fields.needed_text("item");
        fields.need("on");
        let on = fields.date("on");
        let by = fields.needed_text("by").unwrap_or_else(|| {
            fields.leave("by");
            String::new()
        });
        let note = fields.text("note");
        Some(Self { item: item?, on: on?, by, note })
    }

    fn id(&self) -> Option<&str> {
        None
    }

    fn key(&self) -> String {
        self.item.clone()
    }
}

impl Element for Document {
    const LIST: &'static str = "documents";
    const NAME: &'static str = "Document";

    fn read(fields: &mut Fields<'_, '_>) -> Option<Self> {
        let id = fields.own_id();
        let name = fields.own_name(id.as_deref().unwrap_or_default());
        let file = fields.text("file");
        let components = fields.ids("components");
        let private = fields.yes_or_no("private").unwrap_or_default();
        Some(Self { id: id?, name, file, components, private })
    }

    fn id(&self) -> Option<&str> {
        Some(&self.id)
    }
}
