//! The first page: what do you see?

use egui::Ui;
use quarterturn_guidance::{Trouble, fill};

use crate::ask::Command;
use crate::controls::{End, Tile, height_of_tile, section, soft, strong, tile};
use crate::signs;
use crate::system::System;
use crate::tokens::{APART, size};
use crate::view::View;

/// Troubles that are told together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Group {
    Life,
    Water,
    Drains,
    Power,
    Cooling,
}

impl Group {
    const ALL: [Self; 5] = [Self::Life, Self::Water, Self::Drains, Self::Power, Self::Cooling];

    fn of(trouble: Trouble) -> Self {
        match trouble {
            Trouble::GasSmell | Trouble::CoAlarm | Trouble::Fire | Trouble::Sparks => Self::Life,
            Trouble::Leak | Trouble::WaterFromAbove => Self::Water,
            Trouble::DrainBacksUp | Trouble::SewageRising => Self::Drains,
            Trouble::DeadOutlet | Trouble::BreakerTrips => Self::Power,
            Trouble::CoolingStopped => Self::Cooling,
        }
    }

    fn key(self) -> &'static str {
        match self {
            Self::Life => "group-life",
            Self::Water => "group-water",
            Self::Drains => "group-drains",
            Self::Power => "group-power",
            Self::Cooling => "group-cooling",
        }
    }
}

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
    ui.label(strong(view.text("what-do-you-see"), size::HEADING));
    ui.label(soft(ui, view.text("what-do-you-see-hint")));
    let columns = columns(ui.available_width());
    let width = (ui.available_width() + APART) / as_f32(columns) - APART;
    let mut row: Vec<(Group, Vec<Trouble>)> = Vec::new();
    let mut taken = 0;
    for (group, troubles) in groups(columns) {
        if taken + troubles.len() > columns {
            row_ui(ui, view, width, &std::mem::take(&mut row), out);
            taken = 0;
        }
        taken += troubles.len();
        row.push((group, troubles));
    }
    row_ui(ui, view, width, &row, out);
}

/// How many tiles stand side by side.
fn columns(width: f32) -> usize {
    match width {
        w if w < 520.0 => 1,
        w if w < 1060.0 => 2,
        _ => 4,
    }
}

fn as_f32(n: usize) -> f32 {
    u16::try_from(n).map_or(1.0, f32::from)
}

/// The groups with their troubles, no more than `columns` at a time.
fn groups(columns: usize) -> Vec<(Group, Vec<Trouble>)> {
    let mut groups = Vec::new();
    for group in Group::ALL {
        let mut troubles: Vec<Trouble> =
            Trouble::ALL.iter().copied().filter(|t| Group::of(*t) == group).collect();
        troubles.sort_by_key(|t| !t.is_leave_first());
        groups.extend(troubles.chunks(columns).map(|some| (group, some.to_vec())));
    }
    groups
}

/// Groups side by side, each under its heading; a group that goes on has none.
fn row_ui(
    ui: &mut Ui,
    view: &View<'_>,
    width: f32,
    row: &[(Group, Vec<Trouble>)],
    out: &mut Vec<Command>,
) {
    let texts: Vec<(Trouble, [String; 3])> =
        row.iter().flat_map(|(_, troubles)| troubles).map(|t| (*t, texts(view, *t))).collect();
    let tiles: Vec<(Trouble, Tile<'_>)> = texts
        .iter()
        .map(|(t, [title, hint, label])| (*t, Tile { end: end(*t), title, hint, label }))
        .collect();
    let height = tiles.iter().map(|(_, t)| height_of_tile(ui, width, t)).fold(0.0, f32::max);
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = APART;
        for (group, troubles) in row {
            ui.vertical(|ui| {
                section(ui, &view.text(group.key()));
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
