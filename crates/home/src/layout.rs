//! Lays out RON: one element on a line where it fits, or else filled lines.

/// Longest line, in characters.
const WIDTH: usize = 140;

/// A value to write.
#[derive(Debug)]
pub(crate) enum Node {
    /// Text as it stands in the file.
    Leaf(String),
    /// Values in square brackets.
    List(Vec<Self>),
    /// Fields in round brackets, all that the model has, in its order.
    Struct(Vec<Entry>),
}

/// A field to write.
#[derive(Debug)]
pub(crate) struct Entry {
    pub(crate) name: &'static str,
    /// `None` for the default, which is not written.
    pub(crate) value: Option<Node>,
    /// Text of the file that stands for the field, name and all.
    pub(crate) kept: Option<String>,
}

impl Entry {
    pub(crate) fn new(name: &'static str, value: Option<Node>) -> Self {
        Self { name, value, kept: None }
    }

    /// The field as it is written on one line; empty if it is not written.
    pub(crate) fn written(&self) -> String {
        if let Some(kept) = &self.kept {
            return kept.clone();
        }
        self.value
            .as_ref()
            .map_or_else(String::new, |value| format!("{}: {}", self.name, value.on_one_line()))
    }
}

impl Node {
    pub(crate) fn on_one_line(&self) -> String {
        match self {
            Self::Leaf(text) => text.clone(),
            Self::List(items) => {
                let items: Vec<String> = items.iter().map(Self::on_one_line).collect();
                format!("[{}]", items.join(", "))
            }
            Self::Struct(entries) => {
                let entries = entries.iter().map(Entry::written).filter(|text| !text.is_empty());
                format!("({})", entries.collect::<Vec<_>>().join(", "))
            }
        }
    }

    /// The value as an item of a list that is indented by `indent`, with a comma and a line end.
    pub(crate) fn as_item(&self, indent: usize) -> String {
        let line = self.on_one_line();
        let margin = " ".repeat(indent);
        if indent + length(&line) < WIDTH && !line.contains('\n') {
            return format!("{margin}{line},\n");
        }
        let mut atoms = Vec::new();
        self.atoms(String::new(), ",", &mut atoms);
        let mut text = margin;
        let mut column = indent;
        for (i, atom) in atoms.iter().enumerate() {
            if i > 0 && column + 1 + length(atom) > WIDTH {
                text.push('\n');
                column = indent + 4;
                text.push_str(&" ".repeat(column));
            } else if i > 0 {
                text.push(' ');
                column += 1;
            }
            text.push_str(atom);
            // Kept text may hold lines of its own.
            let last = atom.rsplit('\n').next().unwrap_or_default();
            column = if last.len() == atom.len() { column + length(atom) } else { length(last) };
        }
        text.push('\n');
        text
    }

    /// Parts between which a line may end. A part that is short enough is not broken further.
    fn atoms(&self, before: String, after: &str, atoms: &mut Vec<String>) {
        const SHORT: usize = WIDTH - 40;
        let line = self.on_one_line();
        let parts: Vec<(String, Option<&Self>)> = match self {
            Self::Leaf(_) => Vec::new(),
            Self::List(items) => items.iter().map(|item| (String::new(), Some(item))).collect(),
            Self::Struct(entries) => entries
                .iter()
                .filter(|entry| !entry.written().is_empty())
                .map(|entry| match (&entry.kept, &entry.value) {
                    (None, Some(value)) => (format!("{}: ", entry.name), Some(value)),
                    _ => (entry.written(), None),
                })
                .collect(),
        };
        let is_whole = length(&line) <= SHORT && !before.is_empty();
        if parts.is_empty() || is_whole {
            atoms.push(format!("{before}{line}{after}"));
            return;
        }
        let (open, close) = if matches!(self, Self::List(_)) { ('[', ']') } else { ('(', ')') };
        let last = parts.len() - 1;
        for (i, (text, value)) in parts.into_iter().enumerate() {
            let text = if i == 0 { format!("{before}{open}{text}") } else { text };
            let end = if i == last { format!("{close}{after}") } else { ",".to_owned() };
            match value {
                Some(value) => value.atoms(text, &end, atoms),
                None => atoms.push(format!("{text}{end}")),
            }
        }
    }
}

fn length(text: &str) -> usize {
    text.chars().count()
}
