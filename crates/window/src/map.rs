//! The map of the home, to be put together at move-in and put right later.
//!
//! On the left stands one of several tools; on the right the plan, on which it is used. A tool draws
//! its column, says what the plan shows for it, and turns what is done on the plan into commands.

pub(crate) mod canvas;
mod lines;
mod missing;
mod panel;
pub(crate) mod plans;
mod schematic;
mod walk;

use egui::scroll_area::ScrollBarVisibility;
use egui::{CentralPanel, Frame, Panel, ScrollArea, Ui};
use quarterturn_home::{Edit, Level};

use crate::app::App;
use crate::ask::Command;
use crate::controls::{button, button_if, chosen_button, soft, strong};
use crate::pictures::Pictures;
use crate::tokens::{GAP, ONE_COLUMN, PART, PLAN_IN_COLUMN, Palette, size};
use crate::view::View;
use canvas::Touch;

pub(crate) use walk::take_photo;

/// What is used on the map.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) enum Tool {
    /// Walk round and pin what one stands in front of.
    #[default]
    Walk,
    /// Pictures of plans, levels and rooms.
    Plans,
    /// What feeds what.
    Lines,
    /// The panel directory, and finding circuits.
    Panel,
    /// What is still missing.
    Missing,
}

impl Tool {
    /// All of them, in the order they are shown.
    pub(crate) const ALL: [Self; 5] =
        [Self::Walk, Self::Plans, Self::Lines, Self::Panel, Self::Missing];

    fn key(self) -> &'static str {
        match self {
            Self::Walk => "map-walk",
            Self::Plans => "map-plans",
            Self::Lines => "map-lines",
            Self::Panel => "map-panel",
            Self::Missing => "map-missing",
        }
    }
}

/// How the map is being worked on. Nothing of it is saved.
#[derive(Debug, Default)]
pub(crate) struct MapState {
    pub(crate) tool: Tool,
    /// The level that is shown; `None` for the usual one.
    pub(crate) level: Option<String>,
    /// The component that was picked.
    pub(crate) selected: Option<String>,
    /// How the plan is looked at.
    pub(crate) look: canvas::Look,
    pub(crate) walk: walk::State,
    pub(crate) plans: plans::State,
    pub(crate) lines: lines::State,
    pub(crate) panel: panel::State,
    pub(crate) missing: missing::State,
}

/// What is done to the map.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum MapCommand {
    /// Take this tool.
    Take(Tool),
    /// Show this level.
    Level(String),
    /// Pick a component, or none.
    Select(Option<String>),
    /// Look at the plan so.
    Look(canvas::Look),
    /// Change the home; one undo takes it back.
    Edit(Box<Edit>),
    /// Something for a tool.
    Walk(walk::Command),
    /// Something for a tool.
    Plans(plans::Command),
    /// Something for a tool.
    Lines(lines::Command),
    /// Something for a tool.
    Panel(panel::Command),
    /// Something for a tool.
    Missing(missing::Command),
}

/// Does what was asked for.
pub(crate) fn apply(app: &mut App, ctx: &egui::Context, command: MapCommand) {
    match command {
        MapCommand::Take(tool) => app.map.tool = tool,
        MapCommand::Level(level) => app.map.level = Some(level),
        MapCommand::Select(id) => {
            app.map.selected = id;
            app.map.walk.forget();
        }
        MapCommand::Look(look) => app.map.look = look,
        MapCommand::Edit(edit) => {
            app.edit(*edit);
        }
        MapCommand::Walk(command) => walk::apply(app, ctx, command),
        MapCommand::Plans(command) => plans::apply(app, ctx, command),
        MapCommand::Lines(command) => lines::apply(app, ctx, command),
        MapCommand::Panel(command) => panel::apply(app, ctx, command),
        MapCommand::Missing(command) => missing::apply(app, ctx, command),
    }
}

/// Takes what threads have worked out, and has worked out what follows from a change.
pub(crate) fn poll(app: &mut App, ctx: &egui::Context) {
    panel::poll(app);
    if app.page == crate::ask::Page::Map && app.map.tool == Tool::Lines {
        lines::poll(app);
    }
    walk::poll(app, ctx);
    missing::poll(app, ctx);
}

/// The page of the map.
pub(crate) fn map_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    pictures: &mut Pictures,
    out: &mut Vec<Command>,
) {
    let part = Frame::new().fill(Palette::of(ui).ground).inner_margin(PART);
    if ui.available_width() < ONE_COLUMN {
        CentralPanel::default().frame(part).show(ui, |ui| {
            scrolled(ui, |ui| {
                head_ui(ui, view, state, out);
                ui.add_space(GAP);
                tool_ui(ui, view, state, out);
                ui.add_space(GAP);
                ui.allocate_ui(egui::vec2(ui.available_width(), PLAN_IN_COLUMN), |ui| {
                    ui.set_max_height(PLAN_IN_COLUMN);
                    plan_ui(ui, view, state, pictures, out);
                });
            });
        });
        return;
    }
    // Across the whole width, so that it takes little of the height that plan and tool need.
    let top =
        Frame::new().fill(Palette::of(ui).ground).inner_margin(egui::Margin::symmetric(16, 8));
    Panel::top("map-head").frame(top).resizable(false).show(ui, |ui| {
        head_ui(ui, view, state, out);
    });
    let width = (ui.available_width() * 0.42).clamp(440.0, 640.0);
    Panel::left("map-column").frame(part).resizable(false).exact_size(width).show(ui, |ui| {
        scrolled(ui, |ui| tool_ui(ui, view, state, out));
    });
    CentralPanel::default().frame(part).show(ui, |ui| {
        plan_ui(ui, view, state, pictures, out);
    });
}

/// Back, the tools, undo and redo; how far the map has come and what would help most.
fn head_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Command>) {
    ui.horizontal_wrapped(|ui| {
        if button(ui, &view.text("back")).clicked() {
            out.push(Command::Leave);
        }
        for tool in Tool::ALL {
            if chosen_button(ui, &view.text(tool.key()), state.tool == tool).clicked() {
                out.push(Command::Map(MapCommand::Take(tool)));
            }
        }
        history_ui(ui, view, out);
    });
    if let Some(message) = view.message {
        ui.add(egui::Label::new(strong(message, size::BODY)).wrap());
    }
    missing::head_ui(ui, view, state, out);
}

/// What can be taken back and made again, by its name.
fn history_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Command>) {
    for (key, words, command) in
        [("undo", view.undo, Command::Undo), ("redo", view.redo, Command::Redo)]
    {
        let label = match words {
            Some(words) => words.to_owned(),
            None => view.text(&format!("{key}-nothing")),
        };
        let text = view.text(&format!("{key}-short"));
        let response = button_if(ui, words.is_some(), &text);
        let response = response.accessible_name(label.clone()).on_hover_text(label);
        if response.clicked() {
            out.push(command);
        }
    }
}

fn tool_ui(ui: &mut Ui, view: &View<'_>, state: &MapState, out: &mut Vec<Command>) {
    match state.tool {
        Tool::Walk => walk::column_ui(ui, view, state, out),
        Tool::Plans => plans::column_ui(ui, view, state, out),
        Tool::Lines => lines::column_ui(ui, view, state, out),
        Tool::Panel => panel::column_ui(ui, view, state, out),
        Tool::Missing => missing::column_ui(ui, view, state, out),
    }
}

/// The plan that the tool is used on.
fn plan_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &MapState,
    pictures: &mut Pictures,
    out: &mut Vec<Command>,
) {
    // Some tools have a drawing of their own in place of the plan.
    let own = match state.tool {
        Tool::Plans => plans::own_drawing_ui(ui, view, state, pictures, out),
        Tool::Lines => lines::own_drawing_ui(ui, view, state, out),
        Tool::Panel => panel::own_drawing_ui(ui, view, state, out),
        Tool::Walk | Tool::Missing => false,
    };
    if own {
        return;
    }
    let Some(level) = level_to_show(view, state) else {
        ui.add(egui::Label::new(soft(ui, view.text("map-no-levels"))).wrap());
        return;
    };
    let marks = match state.tool {
        Tool::Walk => walk::marks(view, state, level),
        Tool::Plans => plans::marks(view, state, level),
        Tool::Lines => lines::marks(view, state, level),
        Tool::Panel | Tool::Missing => canvas::Marks::default(),
    };
    for touch in canvas::canvas_ui(ui, view, state, level, &marks, pictures, out) {
        touched(view, state, &touch, out);
    }
}

/// What the tool makes of what was done on the plan.
fn touched(view: &View<'_>, state: &MapState, touch: &Touch, out: &mut Vec<Command>) {
    match state.tool {
        Tool::Walk => walk::touched(view, state, touch, out),
        Tool::Plans => plans::touched(view, state, touch, out),
        Tool::Lines => lines::touched(view, state, touch, out),
        Tool::Panel | Tool::Missing => {
            if let Touch::Pressed { on: Some(id), .. } = touch {
                out.push(Command::Map(MapCommand::Select(Some(id.clone()))));
            }
        }
    }
}

/// The level that the plan shows.
pub(crate) fn level_to_show<'a>(view: &View<'a>, state: &MapState) -> Option<&'a Level> {
    let home = view.home;
    let usual = || home.space(home.usual_space.as_deref()?)?.level.as_deref();
    let wanted = state.level.as_deref().filter(|id| home.level(id).is_some());
    wanted.or_else(usual).and_then(|id| home.level(id)).or_else(|| home.levels.first())
}

fn scrolled(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    // The bar has its room at all times: what is pressed must not move when it appears.
    let scroll = ScrollArea::vertical().id_salt("map-scroll").auto_shrink(false);
    scroll.scroll_bar_visibility(ScrollBarVisibility::AlwaysVisible).show(ui, |ui| {
        Frame::new().inner_margin(egui::Margin::symmetric(4, 2)).show(ui, add);
    });
}
