//! The directory: each circuit with its number, what it serves, its amperes and poles.

use egui::{ComboBox, Ui};
use quarterturn_guidance::fill;
use quarterturn_home::{Component, Connection, Edit, Home, Kind, Medium};

use super::Command as Panel;
use crate::app::App;
use crate::controls::{button, card, main_button, section, soft, strong};
use crate::field::field;
use crate::place;
use crate::tokens::{GAP, Palette, size};
use crate::view::View;

/// How far one is with it.
#[derive(Debug, Default)]
pub(crate) struct State {
    /// The panel that is shown; `None` for the first.
    panel: Option<String>,
    /// The circuit that is being written.
    row: Option<Row>,
}

/// A circuit as it is typed.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Row {
    /// Id of the breaker; `None` for a new one.
    id: Option<String>,
    number: String,
    serves: String,
    amperes: String,
    poles: String,
}

/// What is done with it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Show this panel.
    Panel(String),
    /// Write this circuit; `None` leaves it.
    Row(Option<Row>),
    /// Keep it as it is typed.
    Keep,
    /// Take a breaker out.
    Remove(String),
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, command: Command) {
    match command {
        Command::Panel(id) => {
            app.map.panel.directory.panel = Some(id);
            app.map.panel.directory.row = None;
        }
        Command::Row(row) => app.map.panel.directory.row = row,
        Command::Keep => keep(app),
        Command::Remove(id) => {
            if app.edit(Edit::RemoveComponent { id }) {
                app.map.panel.directory.row = None;
            }
        }
    }
}

/// The panel that is shown.
fn shown<'h>(home: &'h Home, state: &State) -> Option<&'h Component> {
    let mut panels = home.components.iter().filter(|c| c.kind == Kind::Panel);
    let wanted = state.panel.as_deref();
    wanted.and_then(|id| home.component(id)).or_else(|| panels.next())
}

/// Its breakers, by their numbers.
fn breakers<'h>(home: &'h Home, panel: &str) -> Vec<&'h Component> {
    let fed = |id: &str| {
        home.connections.iter().any(|l| l.carries == Medium::Power && l.from == panel && l.to == id)
    };
    let mut found: Vec<&Component> = home
        .components
        .iter()
        .filter(|c| c.kind == Kind::Breaker)
        .filter(|c| fed(&c.id) || c.panel.as_deref() == Some(panel))
        .collect();
    let number = |c: &Component| {
        let text = c.circuit.as_deref().unwrap_or_default();
        let digits: String = text.chars().take_while(char::is_ascii_digit).collect();
        digits.parse::<u32>().unwrap_or(u32::MAX)
    };
    found.sort_by_key(|c| number(c));
    found
}

/// Writes the circuit that is typed: its breaker, fed by the panel.
fn keep(app: &mut App) {
    let Some(row) = app.map.panel.directory.row.clone() else { return };
    let home = app.history.home();
    let Some(panel) = shown(home, &app.map.panel.directory).cloned() else { return };
    let number = |text: &str| text.trim().replace(',', ".").parse::<f64>().ok();
    let bad = |text: &str| !text.trim().is_empty() && number(text).is_none_or(|n| n <= 0.0);
    let poles = row.poles.trim().parse::<u32>().ok().filter(|poles| (1..=4).contains(poles));
    if bad(&row.amperes) || (!row.poles.trim().is_empty() && poles.is_none()) {
        app.message = Some(app.words.text("window-panel-bad-number"));
        return;
    }
    let name = if row.serves.trim().is_empty() {
        app.words.fill("window-panel-spare", &[fill("number", row.number.trim())])
    } else {
        row.serves.trim().to_owned()
    };
    let known = row.id.as_deref().and_then(|id| home.component(id)).cloned();
    let is_new = known.is_none();
    let mut breaker = known.unwrap_or_else(|| {
        Component::new(&home.free_id(&format!("breaker {name}")), Kind::Breaker, &name)
    });
    breaker.name = name;
    breaker.circuit = Some(row.number.trim().to_owned()).filter(|text| !text.is_empty());
    breaker.panel = Some(panel.id.clone());
    breaker.rating_a = number(&row.amperes);
    breaker.poles = poles;
    breaker.space = breaker.space.or_else(|| panel.space.clone());
    breaker.at = breaker.at.or(panel.at);
    let id = breaker.id.clone();
    let mut edits = vec![Edit::PutComponent(Box::new(breaker))];
    if is_new {
        edits.push(Edit::Connect(Box::new(Connection::new(&panel.id, &id, Medium::Power))));
    }
    if app.edit(Edit::All(edits)) {
        app.map.panel.directory.row = None;
    }
}

/// The directory in two columns, odd numbers on the left as they stand in a panel.
pub(super) fn directory_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    say: &mut dyn FnMut(Panel),
) {
    let mut say = |command: Command| say(Panel::Directory(command));
    let Some(panel) = shown(view.home, state) else {
        ui.add(egui::Label::new(view.text("panel-none")).wrap());
        return;
    };
    let combo = ComboBox::from_id_salt("panel-shown").selected_text(&panel.name).width(280.0);
    let combo = combo.show_ui(ui, |ui| {
        for other in view.home.components.iter().filter(|c| c.kind == Kind::Panel) {
            if ui.selectable_label(other.id == panel.id, &other.name).clicked() {
                say(Command::Panel(other.id.clone()));
            }
        }
    });
    combo.response.accessible_name(view.text("panel-which"));
    if let Some(row) = &state.row {
        row_ui(ui, view, row, &mut say);
    } else if main_button(ui, &view.text("panel-new")).clicked() {
        say(Command::Row(Some(Row { poles: "1".to_owned(), ..Row::default() })));
    }
    section(ui, &view.fill("panel-circuits", &[fill("panel", &panel.name)]));
    for breaker in breakers(view.home, &panel.id) {
        circuit_ui(ui, view, breaker, &mut say);
    }
}

fn circuit_ui(ui: &mut Ui, view: &View<'_>, breaker: &Component, say: &mut dyn FnMut(Command)) {
    let number = breaker.circuit.clone().unwrap_or_default();
    let fills = [fill("number", &number), fill("serves", &breaker.name)];
    let title = view.fill("panel-circuit", &fills);
    card(ui, Palette::of(ui).edge_stroke(), |ui| {
        ui.add(egui::Label::new(strong(title.as_str(), size::BODY)).wrap());
        let mut facts = Vec::new();
        if let Some(amperes) = breaker.rating_a {
            facts.push(view.fill("panel-amperes", &[fill("n", &amperes.to_string())]));
        }
        if let Some(poles) = breaker.poles {
            let n = quarterturn_guidance::count("n", f64::from(poles));
            facts.push(view.fill("panel-poles", &[n]));
        }
        let loads: Vec<String> = view
            .home
            .connections
            .iter()
            .filter(|l| l.carries == Medium::Power && l.from == breaker.id)
            .map(|l| place::name(view.home, &l.to).to_owned())
            .collect();
        facts.extend(loads);
        ui.add(egui::Label::new(soft(ui, facts.join(" · "))).wrap());
        ui.horizontal_wrapped(|ui| {
            let label = view.fill("care-change-of", &[fill("name", &title)]);
            if button(ui, &view.text("care-change")).accessible_name(label).clicked() {
                say(Command::Row(Some(Row {
                    id: Some(breaker.id.clone()),
                    number: number.clone(),
                    serves: breaker.name.clone(),
                    amperes: breaker.rating_a.map(|a| a.to_string()).unwrap_or_default(),
                    poles: breaker.poles.map(|p| p.to_string()).unwrap_or_default(),
                })));
            }
        });
    });
}

fn row_ui(ui: &mut Ui, view: &View<'_>, row: &Row, say: &mut dyn FnMut(Command)) {
    card(ui, Palette::of(ui).edge_stroke(), |ui| {
        let changed = |row: Row| Command::Row(Some(row));
        if let Some(number) = field(ui, &view.text("panel-number"), "", &row.number).text {
            say(changed(Row { number, ..row.clone() }));
        }
        if let Some(serves) = field(ui, &view.text("panel-serves"), "", &row.serves).text {
            say(changed(Row { serves, ..row.clone() }));
        }
        if let Some(amperes) = field(ui, &view.text("panel-rating"), "", &row.amperes).text {
            say(changed(Row { amperes, ..row.clone() }));
        }
        if let Some(poles) = field(ui, &view.text("panel-how-many-poles"), "", &row.poles).text {
            say(changed(Row { poles, ..row.clone() }));
        }
        ui.add_space(GAP);
        ui.horizontal_wrapped(|ui| {
            if main_button(ui, &view.text("care-keep")).clicked() {
                say(Command::Keep);
            }
            if button(ui, &view.text("cancel")).clicked() {
                say(Command::Row(None));
            }
            if let Some(id) = &row.id
                && button(ui, &view.text("care-remove")).clicked()
            {
                say(Command::Remove(id.clone()));
            }
        });
    });
}
