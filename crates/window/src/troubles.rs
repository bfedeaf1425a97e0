//! The first page: what do you see?

use egui::Ui;
use quarterturn_guidance::{Group, Trouble, fill};

use crate::ask::Command;
use crate::controls::{End, Tile, height_of_tile, section, strong, tile};
use crate::system::System;
use crate::tokens::{APART, GAP, size};
use crate::view::View;
use crate::{search, signs};

/// Narrower than this, tiles stand one under the other.
const TWO_COLUMNS: f32 = 520.0;
/// Most tiles side by side.
const MOST_COLUMNS: usize = 4;

/// What stands at the end of a trouble's tile.
pub(crate) fn end(trouble: Trouble) -> End {
    match System::of_trouble(trouble) {
        Some(system) if Group::of(trouble) != Group::Life => End::System(system),
        _ => End::Danger,
    }
}

/// Asks what is seen, dangers to life first: groups side by side as far as there is room, so that
/// nothing has to be scrolled for on an ordinary screen.
pub(crate) fn troubles_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    if ui.available_width() < TWO_COLUMNS {
        ui.label(strong(view.text("what-do-you-see"), size::HEADING));
        search::box_ui(ui, view, f32::INFINITY, out);
    } else {
        ui.horizontal(|ui| {
            ui.label(strong(view.text("what-do-you-see"), size::HEADING));
            ui.add_space(GAP);
            search::box_ui(ui, view, f32::INFINITY, out);
        });
    }
    if !view.asked.search.trim().is_empty() {
        search::hits_ui(ui, view, out);
        return;
    }
    let columns = columns(ui.available_width());
    let width = (ui.available_width() + APART) / as_f32(columns) - APART;
    let mut rows: Vec<Vec<(Group, Vec<Trouble>)>> = Vec::new();
    let mut row: Vec<(Group, Vec<Trouble>)> = Vec::new();
    let mut taken = 0;
    for (group, troubles) in groups(columns) {
        if taken + troubles.len() > columns {
            rows.push(std::mem::take(&mut row));
            taken = 0;
        }
        taken += troubles.len();
        row.push((group, troubles));
    }
    rows.push(row);
    let mut last = None;
    for row in rows {
        let headed = row.iter().any(|(group, _)| Some(*group) != last);
        last = row.last().map(|(group, _)| *group);
        let layout = Layout { width, has_room: columns == MOST_COLUMNS, headed };
        row_ui(ui, view, layout, &row, out);
    }
}

/// How a row of tiles is laid out.
#[derive(Debug, Clone, Copy)]
struct Layout {
    /// Width of a tile.
    width: f32,
    /// True if all the troubles are in sight at once, as long as most of their tiles are small.
    has_room: bool,
    /// False if all of the row goes on with the group before, and needs no heading.
    headed: bool,
}

/// How many tiles stand side by side.
fn columns(width: f32) -> usize {
    match width {
        w if w < TWO_COLUMNS => 1,
        w if w < 1060.0 => 2,
        _ => MOST_COLUMNS,
    }
}

fn as_f32(n: usize) -> f32 {
    u16::try_from(n).map_or(1.0, f32::from)
}

/// The groups with their troubles, no more than `columns` at a time.
fn groups(columns: usize) -> Vec<(Group, Vec<Trouble>)> {
    let mut groups = Vec::new();
    for group in Group::ALL {
        groups.extend(group.troubles().chunks(columns).map(|some| (group, some.to_vec())));
    }
    groups
}

/// The key of the words over a group of troubles.
fn key(group: Group) -> &'static str {
    match group {
        Group::Life => "group-life",
        Group::Water => "group-water",
        Group::Drains => "group-drains",
        Group::Power => "group-power",
        Group::Cooling => "group-cooling",
        Group::Control => "group-control",
    }
}

/// Groups side by side, each under its heading; a group that goes on has none.
fn row_ui(
    ui: &mut Ui,
    view: &View<'_>,
    layout: Layout,
    row: &[(Group, Vec<Trouble>)],
    out: &mut Vec<Command>,
) {
    let texts: Vec<(Trouble, [String; 3])> =
        row.iter().flat_map(|(_, troubles)| troubles).map(|t| (*t, texts(view, *t))).collect();
    let tiles: Vec<(Trouble, Tile<'_>)> = texts
        .iter()
        .map(|(t, [title, hint, label])| {
            let is_small = layout.has_room && Group::of(*t) != Group::Life;
            (*t, Tile { end: end(*t), title, hint, label, is_small })
        })
        .collect();
    let width = layout.width;
    let height = tiles.iter().map(|(_, t)| height_of_tile(ui, width, t)).fold(0.0, f32::max);
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = APART;
        for (group, troubles) in row {
            ui.vertical(|ui| {
                match (layout.headed, layout.has_room) {
                    (true, true) => {
                        ui.label(strong(view.text(key(*group)), size::SECTION));
                    }
                    (true, false) => section(ui, &view.text(key(*group))),
                    (false, _) => {}
                }
                ui.horizontal_top(|ui| {
                    for (trouble, shown) in tiles.iter().filter(|(t, _)| troubles.contains(t)) {
                        let sign = |painter: &egui::Painter, rect, ink| {
                            signs::trouble(painter, rect, ink, *trouble);
                        };
                        if tile(ui, width, height, shown, sign).clicked() {
                            out.push(Command::PickTrouble(*trouble));
                        }
                    }
                });
            });
        }
    });
}

/// Title, hint, and both in one for a screen reader.
fn texts(view: &View<'_>, trouble: Trouble) -> [String; 3] {
    let key = format!("trouble-{}", trouble.id());
    let title = view.words.text(&key);
    let hint = view.words.text(&format!("{key}-hint"));
    let label = view.fill("trouble-and-hint", &[fill("trouble", &title), fill("hint", &hint)]);
    [title, hint, label]
}
