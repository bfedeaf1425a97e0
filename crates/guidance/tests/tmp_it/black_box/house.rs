//! A home as plain words, and its text in the format of the home file.

use std::fmt::Write as _;

/// A sketch of a home. Everything in it is written into the file, and nothing else is.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct House {
    /// Id and height of each floor, in metres.
    pub(crate) levels: Vec<(String, f64)>,
    /// Rooms and outdoor places.
    pub(crate) rooms: Vec<Room>,
    /// Two rooms each that a door or stairs join.
    pub(crate) doors: Vec<(String, String)>,
    /// What is installed.
    pub(crate) parts: Vec<Part>,
    /// What feeds what.
    pub(crate) lines: Vec<Line>,
    /// Lines of the file behind those: contacts, the emergency number.
    pub(crate) rest: String,
}

#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Room {
    pub(crate) id: String,
    pub(crate) name: String,
    pub(crate) level: Option<String>,
    pub(crate) outdoors: bool,
}

#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Part {
    pub(crate) id: String,
    pub(crate) kind: &'static str,
    pub(crate) name: String,
    pub(crate) room: Option<String>,
    pub(crate) at: Option<(f64, f64, f64)>,
    /// `Works`, `Stiff`, `Seized`, `LeaksBy`, `Unknown`; empty where the file does not tell.
    pub(crate) state: &'static str,
    pub(crate) normally_shut: bool,
    /// `Utility` or `Licensed`; empty for anyone.
    pub(crate) operable_by: &'static str,
    pub(crate) tool: Option<String>,
    pub(crate) joins: Option<bool>,
    pub(crate) critical: bool,
    pub(crate) poles: u32,
    pub(crate) owner: Option<String>,
    /// More fields, as they stand in the file.
    pub(crate) more: String,
}

#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Line {
    pub(crate) from: String,
    pub(crate) to: String,
    pub(crate) carries: &'static str,
    pub(crate) one_way: bool,
    pub(crate) length_m: Option<f64>,
}

impl House {
    pub(crate) fn part(&self, id: &str) -> &Part {
        self.parts.iter().find(|part| part.id == id).unwrap()
    }

    pub(crate) fn room(&self, id: &str) -> Option<&Room> {
        self.rooms.iter().find(|room| room.id == id)
    }

    /// Height of the floor that a room is on.
    pub(crate) fn floor_m(&self, room: &Room) -> Option<f64> {
        let level = room.level.as_ref()?;
        self.levels.iter().find(|(id, _)| id == level).map(|(_, height)| *height)
    }

    /// True if a line of one of `media` leads to the part or from it.
    pub(crate) fn carries(&self, id: &str, media: &[&str]) -> bool {
        self.lines.iter().any(|l| media.contains(&l.carries) && (l.from == id || l.to == id))
    }

    /// The text of the home file.
    pub(crate) fn text(&self) -> String {
        let mut text = String::from(
            "#![enable(implicit_some)]\nHome(\n    format: 1,\n    name: \"Sketch\",\n    levels: [\n",
        );
        for (id, height) in &self.levels {
            writeln!(text, "        (id: {id:?}, name: \"Floor {id}\", elevation_m: {height:?}),")
                .unwrap();
        }
        text.push_str("    ],\n    spaces: [\n");
        for room in &self.rooms {
            let mut fields = format!("id: {:?}, name: {}", room.id, quoted(&room.name));
            if let Some(level) = &room.level {
                write!(fields, ", level: {level:?}").unwrap();
            }
            if room.outdoors {
                fields.push_str(", outdoors: true");
            }
            writeln!(text, "        ({fields}),").unwrap();
        }
        text.push_str("    ],\n    passages: [\n");
        for (one, other) in &self.doors {
            let level = |id: &str| self.room(id).and_then(|room| room.level.as_ref());
            let stairs = level(one) != level(other);
            writeln!(text, "        (between: ({one:?}, {other:?}), stairs: {stairs}),").unwrap();
        }
        text.push_str("    ],\n    components: [\n");
        for part in &self.parts {
            writeln!(text, "        ({}),", part.fields()).unwrap();
        }
        text.push_str("    ],\n    connections: [\n");
        for line in &self.lines {
            let mut fields =
                format!("from: {:?}, to: {:?}, carries: {}", line.from, line.to, line.carries);
            if let Some(length) = line.length_m {
                write!(fields, ", length_m: {length:?}").unwrap();
            }
            if line.one_way {
                fields.push_str(", one_way: true");
            }
            writeln!(text, "        ({fields}),").unwrap();
        }
        text.push_str("    ],\n");
        text.push_str(&self.rest);
        text.push_str(")\n");
        text
    }
}

impl Part {
    fn fields(&self) -> String {
        let mut fields =
            format!("id: {:?}, kind: {}, name: {}", self.id, self.kind, quoted(&self.name));
        if let Some(room) = &self.room {
            write!(fields, ", space: {room:?}").unwrap();
        }
        if let Some((x, y, z)) = self.at {
            write!(fields, ", at: ({x:?}, {y:?}, {z:?})").unwrap();
        }
        let mut operates: Vec<String> = Vec::new();
        if !self.state.is_empty() {
            operates.push(format!("state: {}", self.state));
        }
        if self.normally_shut {
            operates.push("normally: Shut".to_owned());
        }
        if let Some(tool) = &self.tool {
            operates.push(format!("tool: {}", quoted(tool)));
        }
        if !operates.is_empty() {
            write!(fields, ", operates: ({})", operates.join(", ")).unwrap();
        }
        if !self.operable_by.is_empty() {
            write!(fields, ", operable_by: {}", self.operable_by).unwrap();
        }
        if let Some(joins) = self.joins {
            write!(fields, ", joins: {joins}").unwrap();
        }
        if self.critical {
            fields.push_str(", critical: true");
        }
        if self.poles > 0 {
            write!(fields, ", poles: {}", self.poles).unwrap();
        }
        if let Some(owner) = &self.owner {
            write!(fields, ", owner: {owner:?}").unwrap();
        }
        if !self.more.is_empty() {
            write!(fields, ", {}", self.more).unwrap();
        }
        fields
    }
}

/// True for what can stand shut or off, so that nothing comes through.
pub(crate) fn can_stand_off(kind: &str) -> bool {
    matches!(
        kind,
        "IsolatingValve"
            | "GasValve"
            | "ServiceDisconnect"
            | "Breaker"
            | "Disconnect"
            | "TransferSwitch"
            | "Switch"
            | "Gfci"
    )
}

/// A text in quotation marks, in the way of RON.
fn quoted(text: &str) -> String {
    let mut out = String::from("\"");
    for sign in text.chars() {
        match sign {
            '"' | '\\' => out.extend(['\\', sign]),
            '\n' => out.push_str("\\n"),
            '\t' => out.push_str("\\t"),
            sign => out.push(sign),
        }
    }
    out.push('"');
    out
}
