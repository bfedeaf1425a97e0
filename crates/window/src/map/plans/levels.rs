//! The floors: added, named, put at their height, taken out with what is on them. They stand lowest first.
//! And where north is on all of them.

use egui::{Label, Sense, Ui, Vec2, WidgetInfo, accesskit::Role};
use quarterturn_guidance::fill;
use quarterturn_home::{Edit, Home, Level, Units};
use quarterturn_mapping::read_distance;

use super::paper::{FOOT, length};
use super::{Field, State, named, press};
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, main_button, section, soft};
use crate::field::field;
use crate::map::MapCommand;
use crate::north;
use crate::tokens::Palette;
use crate::view::View;

/// From one floor to the next, in metres, until someone tells better: common practice, a room of
/// 8 ft (2.44 m) and its ceiling.
const STOREY: f64 = 2.7;

/// What is done with levels.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Command {
    /// Add one over the highest, or under the lowest.
    Add {
        /// True over the highest.
        above: bool,
    },
    /// Give it the name and the height that are typed.
    Change(String),
    /// North is in this direction on the plans; `None` if it is not known.
    North(Option<f64>),
    /// North is where the degrees that are typed say.
    TypedNorth,
}

/// Does what was asked for.
pub(super) fn apply(app: &mut App, command: Command) {
    match command {
        Command::Add { above } => add(app, above),
        Command::Change(id) => change(app, &id),
        Command::North(north_deg) => set_north(app, north_deg),
        Command::TypedNorth => {
            let Some(typed) = app.map.plans.typed(Field::North, "") else { return };
            match read_degrees(typed) {
                Some(north_deg) => set_north(app, Some(north_deg)),
                None => app.map.plans.wrong = Some(app.words.text("window-north-bad")),
            }
        }
    }
}

fn add(app: &mut App, above: bool) {
    let home = app.history.home();
    let heights = home.levels.iter().map(|level| level.elevation_m);
    let (name, elevation_m) = if home.levels.is_empty() {
        ("plans-name-ground", 0.0)
    } else if above {
        ("plans-name-upper", heights.fold(f64::NEG_INFINITY, f64::max) + STOREY)
    } else {
        ("plans-name-lower", heights.fold(f64::INFINITY, f64::min) - STOREY)
    };
    let name = app.words.text(&format!("window-{name}"));
    let name = free_name(&name, |name| home.levels.iter().any(|level| level.name == name));
    let id = home.free_id(&name);
    let level = Level { id: id.clone(), name, elevation_m, plan: None };
    let edit = put(home, level);
    if app.edit(edit) {
        app.map.level = Some(id);
    }
}

fn change(app: &mut App, id: &str) {
    let home = app.history.home();
    let Some(old) = home.level(id) else { return };
    let state = &app.map.plans;
    let name = state.typed(Field::Name, id).map_or(old.name.as_str(), str::trim);
    let height = state.typed(Field::Height, id).map(|typed| read_height(typed, home.units));
    let elevation_m = match height {
        None => old.elevation_m,
        Some(Some(metres)) => metres,
        Some(None) => {
            app.map.plans.wrong = Some(app.words.text("window-plans-bad-height"));
            return;
        }
    };
    if name.is_empty() {
        app.map.plans.wrong = Some(app.words.text("window-plans-no-name"));
        return;
    }
    let level = Level { name: name.to_owned(), elevation_m, ..old.clone() };
    let edit = put(home, level);
    if app.edit(edit) {
        app.map.plans.forget_typed(id);
    }
}

fn set_north(app: &mut App, north_deg: Option<f64>) {
    if app.history.home().north_deg == north_deg || app.edit(Edit::SetNorth(north_deg)) {
        app.map.plans.typed.remove(&(Field::North, String::new()));
    }
}

/// A name that is not taken, with a number behind it if it must be.
pub(super) fn free_name(name: &str, is_taken: impl Fn(&str) -> bool) -> String {
    if !is_taken(name) {
        return name.to_owned();
    }
    let numbered = (2_u32..).map(|number| format!("{name} {number}"));
    numbered.into_iter().find(|name| !is_taken(name)).unwrap_or_else(|| name.to_owned())
}

/// Adds or changes a level, so that the levels stand lowest first.
fn put(home: &Home, level: Level) -> Edit {
    let key = if home.level(&level.id).is_some() { "edit-change" } else { "edit-add" };
    let name = level.name.clone();
    let mut levels: Vec<Level> = home.levels.clone();
    levels.retain(|other| other.id != level.id);
    levels.push(level.clone());
    levels.sort_by(|a, b| a.elevation_m.total_cmp(&b.elevation_m));
    let now = home.levels.iter().map(|level| &level.id);
    let is_in_order = if key == "edit-add" {
        now.chain([&level.id]).eq(levels.iter().map(|level| &level.id))
    } else {
        now.eq(levels.iter().map(|level| &level.id))
    };
    if is_in_order {
        return named(key, &name, vec![Edit::PutLevel(Box::new(level))]);
    }
    // Taken out and put in again in their order; the rooms then get theirs back.
    let out = home.levels.iter().map(|level| Edit::RemoveLevel { id: level.id.clone() });
    let back = levels.into_iter().map(|level| Edit::PutLevel(Box::new(level)));
    let rooms = home.spaces.iter().filter(|space| space.level.is_some());
    let rooms = rooms.map(|space| Edit::PutSpace(Box::new(space.clone())));
    named(key, &name, out.chain(back).chain(rooms).collect())
}

/// What takes out a level and its rooms.
pub(super) fn removal(home: &Home, level: &Level) -> Vec<Edit> {
    let rooms = crate::sheet::spaces_of(home, level);
    let mut edits: Vec<Edit> =
        rooms.map(|room| Edit::RemoveSpace { id: room.id.clone() }).collect();
    edits.push(Edit::RemoveLevel { id: level.id.clone() });
    edits
}

/// A height over the home's zero: with its unit, or 0, or below zero.
fn read_height(typed: &str, units: Units) -> Option<f64> {
    let typed = typed.trim();
    let (sign, rest) = match typed.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (-1.0, rest.trim()),
        None => (1.0, typed),
    };
    let bare = rest.replace(',', ".").parse::<f64>().ok();
    let metres = match bare {
        Some(number) if units == Units::Us => number * FOOT,
        Some(number) => number,
        None if rest.strip_suffix('m').is_some_and(is_zero) => 0.0,
        None if rest.strip_suffix("0\"").is_some_and(|feet| feet.trim() == "0'") => 0.0,
        None => read_distance(rest).ok()?,
    };
    // No home is that deep or that high.
    (metres.is_finite() && metres < 200.0).then_some(sign * metres)
}

/// A direction in degrees, brought within the turn.
fn read_degrees(typed: &str) -> Option<f64> {
    let number = typed.trim().trim_end_matches('°').trim_end().replace(['\u{2212}'], "-");
    let degrees: f64 = number.replace(',', ".").parse().ok()?;
    // A hair less than nothing is rounded up to a whole turn, which is nothing again.
    (degrees.abs() <= 360.0).then(|| degrees.rem_euclid(360.0) % 360.0)
}

fn is_zero(text: &str) -> bool {
    text.trim().replace(',', ".").parse::<f64>().is_ok_and(|number| number == 0.0)
}

/// The height of a level as it can be typed.
fn height_text(metres: f64, units: Units) -> String {
    let text = length(metres.abs(), units);
    if metres < 0.0 { format!("\u{2212}{text}") } else { text }
}

/// The column of the levels.
pub(super) fn column_ui(
    ui: &mut Ui,
    view: &View<'_>,
    state: &State,
    level: Option<&Level>,
    out: &mut Vec<Press>,
) {
    let Some(shown) = level else {
        ui.add(Label::new(view.text("map-no-levels")).wrap());
        if main_button(ui, &view.text("plans-add-first")).clicked() {
            out.push(level_press(Command::Add { above: true }));
        }
        return;
    };
    // As one sees them from the street: the highest on top.
    for level in view.home.levels.iter().rev() {
        let height = height_text(level.elevation_m, view.home.units);
        let label = view.fill("plans-floor", &[fill("name", &level.name), fill("height", &height)]);
        if chosen_button(ui, &label, level.id == shown.id).clicked() {
            out.push(Press::Map(MapCommand::Level(level.id.clone())));
        }
    }
    ui.horizontal_wrapped(|ui| {
        for (key, above) in [("plans-add-above", true), ("plans-add-below", false)] {
            if button(ui, &view.text(key)).clicked() {
                out.push(level_press(Command::Add { above }));
            }
        }
    });
    section(ui, &shown.name);
    let name = state.typed(Field::Name, &shown.id).unwrap_or(&shown.name);
    let typed = field(ui, &view.text("plans-floor-name"), "", name);
    let mut entered = typed.is_entered;
    type_press(Field::Name, &shown.id, typed.text, out);
    let now = height_text(shown.elevation_m, view.home.units);
    let height = state.typed(Field::Height, &shown.id).unwrap_or(&now);
    let typed = field(ui, &view.text("plans-floor-height"), "", height);
    entered |= typed.is_entered;
    type_press(Field::Height, &shown.id, typed.text, out);
    ui.add(Label::new(soft(ui, view.text("plans-floor-height-hint"))).wrap());
    ui.horizontal_wrapped(|ui| {
        if button(ui, &view.text("plans-floor-change")).clicked() || entered {
            out.push(level_press(Command::Change(shown.id.clone())));
        }
        if button(ui, &view.text("plans-floor-remove")).clicked() {
            out.push(press(super::Command::AskRemove(shown.id.clone())));
        }
    });
    north_ui(ui, view, state, out);
}

/// Asks where north is: eight ways round the mark, degrees to type, or that it is not known.
fn north_ui(ui: &mut Ui, view: &View<'_>, state: &State, out: &mut Vec<Press>) {
    /// As they lie round the middle, row by row.
    const ROSE: [[Option<&str>; 3]; 3] = [
        [Some("up-left"), Some("up"), Some("up-right")],
        [Some("left"), None, Some("right")],
        [Some("down-left"), Some("down"), Some("down-right")],
    ];
    let known = view.home.north_deg;
    section(ui, &view.text("north"));
    for row in ROSE {
        ui.columns(row.len(), |columns| {
            for (ui, way) in columns.iter_mut().zip(row) {
                match way {
                    Some(way) => way_ui(ui, view, way, out),
                    None => middle_ui(ui, view),
                }
            }
        });
    }
    if chosen_button(ui, &view.text("north-unknown"), known.is_none()).clicked() {
        out.push(level_press(Command::North(None)));
    }
    let now = known.map(|degrees| degrees.to_string()).unwrap_or_default();
    let shown = state.typed(Field::North, "").unwrap_or(&now);
    let typed = field(ui, &view.text("north-degrees"), "", shown);
    type_press(Field::North, "", typed.text, out);
    ui.add(Label::new(soft(ui, view.text("north-degrees-hint"))).wrap());
    if button(ui, &view.text("north-keep")).clicked() || typed.is_entered {
        out.push(level_press(Command::TypedNorth));
    }
}

/// One of the eight ways.
fn way_ui(ui: &mut Ui, view: &View<'_>, way: &str, out: &mut Vec<Press>) {
    let text = view.text(&format!("north-{way}"));
    let is_chosen = view.home.north_deg.and_then(north::way_of) == Some(way);
    let name = view.fill("north-towards", &[fill("way", &text)]);
    let pressed = ui.vertical_centered_justified(|ui| chosen_button(ui, &text, is_chosen));
    if pressed.inner.accessible_name(name).clicked() {
        let degrees = north::WAYS.into_iter().find(|(word, _)| *word == way);
        out.push(level_press(Command::North(degrees.map(|(_, degrees)| degrees))));
    }
}

/// The mark as the plans show it.
fn middle_ui(ui: &mut Ui, view: &View<'_>) {
    ui.vertical_centered(|ui| {
        let (area, response) = ui.allocate_exact_size(Vec2::splat(north::SIDE), Sense::hover());
        if let Some(north_deg) = view.home.north_deg {
            north::mark(ui.painter(), area, north_deg, view.words, Palette::of(ui));
            let words = north::words(view, north_deg);
            response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &words));
        }
    });
}

fn level_press(command: Command) -> Press {
    press(super::Command::Level(command))
}

/// What was typed, if something was.
pub(super) fn type_press(field: Field, id: &str, text: Option<String>, out: &mut Vec<Press>) {
    if let Some(text) = text {
        out.push(press(super::Command::Type(field, id.to_owned(), text)));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heights_are_read_above_and_below_zero() {
        for (typed, units, metres) in [
            ("0", Units::Si, 0.0),
            ("0.00 m", Units::Si, 0.0),
            ("0' 0\"", Units::Us, 0.0),
            ("2.7", Units::Si, 2.7),
            ("-2,4 m", Units::Si, -2.4),
            ("\u{2212}8 ft", Units::Us, -2.4384),
            ("9", Units::Us, 2.7432),
        ] {
            let read = read_height(typed, units).unwrap_or(f64::NAN);
            assert!((read - metres).abs() < 1e-9, "{typed}: {read}");
        }
        for typed in ["", "high", "1e9", "-"] {
            assert_eq!(read_height(typed, Units::Si), None, "{typed}");
        }
    }

    #[test]
    fn degrees_are_brought_within_the_turn() {
        for (typed, degrees) in [
            ("0", 0.0),
            (" 12,5\u{b0} ", 12.5),
            ("360", 0.0),
            ("\u{2212}90", 270.0),
            ("-1e-20", 0.0),
        ] {
            let read = read_degrees(typed).unwrap_or(f64::NAN);
            assert!((read - degrees).abs() < 1e-9, "{typed}: {read}");
        }
        for typed in ["", "up", "361", "NaN", "inf"] {
            assert_eq!(read_degrees(typed), None, "{typed}");
        }
    }

    #[test]
    fn levels_stand_lowest_first_and_rooms_stay_on_theirs() {
        let text = include_str!("../../../../../examples/two-storey/home.ron");
        let home = quarterturn_home::open("home.ron", text).home.unwrap();
        let under = Level {
            id: "under".to_owned(),
            name: "Under".to_owned(),
            elevation_m: -9.0,
            plan: None,
        };
        let after = put(&home, under).made_on(&home).unwrap();
        assert_eq!(after.levels[0].id, "under");
        assert_eq!(after.levels[1..], home.levels[..]);
        assert_eq!(after.spaces, home.spaces);
        assert_eq!(after.passages, home.passages);
    }
}
