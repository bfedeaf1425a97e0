//! Putting a home on its map: pictures, lines, proposals, panel tables, what is still missing.

mod circuit_hints;
mod circuit_text;
mod columns;
mod find_circuits;
mod halving;
mod known;
mod lines;
mod missing;
mod order;
mod panel_table;
mod picture;
mod propose;
mod rooms;
mod said;
mod scale;
pub mod schematic;
mod sets;
mod straighten;
mod table;
mod tags;
mod usual;
mod way;
mod words;

pub use columns::{Column, Guess, Layout, guess};
pub use find_circuits::{Device, Found, NextWalk, Search, Switched, Walk};
pub use lines::{Refusal, Why, may_connect, media_between};
pub use missing::{Fix, Item, Missing, missing};
pub use order::{Lack, lacks};
pub use panel_table::{Circuit, Import, ImportTo, RowNote, import};
pub use picture::{LONGEST_SIDE, OtherKind, Picture, PictureError, PictureKind, Progress};
pub use propose::{Proposal, accept, accept_all, proposals, proposals_for};
pub use rooms::{Drawn, Laid, Overlap, Rectangle, lay_out, snapped};
pub use said::{Said, Told, kind_key, medium_key};
pub use scale::{BadDistance, BadScale, DOORS, Door, Scale, read_distance};
pub use sets::{CannotPlace, Placed, SetInfo, Wish, place, set_of, sets};
pub use straighten::{BadCorners, Corners, Homography, Known, Margin, Straightened, straighten};
pub use table::{
    Cell, Encoding, Form, MOST_BYTES, MOST_COLUMNS, MOST_LETTERS, MOST_ROWS, Odd, Row, Sheet,
    Table, TableError, read_table, read_text,
};
pub use tags::{next_tag, tag_letter};
pub use usual::{Usual, room_kind, room_name, usual};
