//! The second page: where is it?

use egui::{Key, Response, Sense, StrokeKind, TextEdit, Ui, WidgetInfo, accesskit::Role, vec2};
use quarterturn_guidance::{Catalogue, Spot, Trouble, fill};
use quarterturn_home::Home;

use crate::ask::Command;
use crate::controls::{button, focus_ring, pin, section, soft, strong};
use crate::fonts::bold;
use crate::matching::{matches, plain};
use crate::system::System;
use crate::tokens::{Palette, ROUND, TOUCH, size};
use crate::view::View;
use crate::{place, tokens};

/// A spot as it is listed.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Row {
    pub(crate) spot: Spot,
    pub(crate) name: String,
    pub(crate) tag: Option<String>,
    pub(crate) system: Option<System>,
    /// Name of its space.
    pub(crate) space: Option<String>,
    /// Id of its level, and its place there.
    pub(crate) place: Option<(String, f64, f64)>,
    /// True for what people use and see, false for what is behind walls and cabinets.
    pub(crate) is_in_sight: bool,
    /// Everything it may be found by.
    words: String,
}

/// The spots for a trouble, as they are listed.
pub(crate) fn rows(home: &Home, trouble: Trouble, words: &Catalogue) -> Vec<Row> {
    let preferred = System::of_trouble(trouble);
    let row = |spot: Spot| {
        let name = place::name_of_spot(home, &spot, words);
        let component = match &spot {
            Spot::Component(id) => home.component(id),
            Spot::Connection(..) | Spot::Space(_) | Spot::Home => None,
        };
        let tag = component.and_then(|c| c.tag.clone());
        let space = place::space_of_spot(home, &spot).map(|s| s.name.clone());
        let parts = [Some(&name), tag.as_ref(), space.as_ref()];
        let found_by: Vec<&str> = parts.into_iter().flatten().map(String::as_str).collect();
        Row {
            words: found_by.join(" "),
            is_in_sight: component.is_some_and(|c| c.kind.is_served() || c.kind.is_drain_opening()),
            system: component.map(|c| System::of(home, c, preferred)),
            place: place::of_spot(home, &spot).map(|p| (p.level.to_owned(), p.x, p.y)),
            spot,
            name,
            tag,
            space,
        }
    };
    let mut rows: Vec<Row> =
        quarterturn_guidance::spots(home, trouble).into_iter().map(row).collect();
    rows.sort_by_key(|row| {
        let is_room = matches!(row.spot, Spot::Space(_));
        (rank(home, row), !is_room, !row.is_in_sight)
    });
    rows
}

/// The floor that people are mostly on comes first, then the others as the file has them; on each
/// floor, room by room.
fn rank(home: &Home, row: &Row) -> (bool, usize, usize) {
    let usual = home.usual_space.as_deref().and_then(|id| home.space(id));
    let Some(space) = place::space_of_spot(home, &row.spot) else {
        return (true, usize::MAX, usize::MAX);
    };
    let nth = |found: Option<usize>| found.unwrap_or(usize::MAX);
    (
        usual.is_some_and(|usual| usual.level != space.level),
        nth(home.levels.iter().position(|l| Some(&l.id) == space.level.as_ref())),
        nth(home.spaces.iter().position(|s| s.id == space.id)),
    )
}

/// True if the row has the words that are searched for.
pub(crate) fn is_found(row: &Row, search: &str) -> bool {
    matches(search, &row.words)
}

/// The row that was most likely meant: the one with this very tag or name, else one whose name begins
/// so, else the first.
fn best<'a>(found: &[&'a Row], search: &str) -> Option<&'a Row> {
    let wanted = plain(search);
    let tag = |row: &Row| row.tag.as_ref().is_some_and(|tag| plain(tag) == wanted);
    found.iter().copied().min_by_key(|row| {
        let name = plain(&row.name);
        (!tag(row) && name != wanted, !name.starts_with(&wanted))
    })
}

/// Asks where the trouble is: a search box, and every spot room by room.
pub(crate) fn spots_ui(ui: &mut Ui, view: &View<'_>, commands: &mut Vec<Command>) {
    ui.label(strong(view.text("where"), size::HEADING));
    ui.label(soft(ui, view.text("where-hint")));
    let found: Vec<&Row> = view.rows.iter().filter(|r| is_found(r, &view.asked.search)).collect();
    search_ui(ui, view, best(&found, &view.asked.search), commands);
    // Not knowing is an answer, too.
    if button(ui, &view.text("spot-unknown")).clicked() {
        commands.push(Command::PickSpot(Spot::Home));
    }
    if view.rows.is_empty() {
        ui.label(view.text("no-spots"));
    } else if found.is_empty() {
        ui.label(view.fill("none-found", &[fill("words", &view.asked.search)]));
        if button(ui, &view.text("show-all")).clicked() {
            commands.push(Command::Search(String::new()));
        }
    }
    let mut space: Option<&Option<String>> = None;
    for row in found {
        if space != Some(&row.space) {
            let unknown = view.text("space-unknown");
            section(ui, row.space.as_deref().unwrap_or(&unknown));
            space = Some(&row.space);
        }
        if row_ui(ui, view, row).clicked() {
            commands.push(Command::PickSpot(row.spot.clone()));
        }
    }
}

fn search_ui(ui: &mut Ui, view: &View<'_>, first: Option<&Row>, commands: &mut Vec<Command>) {
    let mut search = view.asked.search.clone();
    let label = view.text("search");
    let response = ui.add(
        TextEdit::singleline(&mut search)
            .id_salt("search")
            .hint_text(label.clone())
            .desired_width(f32::INFINITY)
            .min_size(vec2(TOUCH, TOUCH))
            .align(egui::Align2::LEFT_CENTER),
    );
    let response = response.accessible_name(label);
    // What one types at once goes here.
    if view.is_new_page {
        response.request_focus();
    }
    if response.changed() {
        commands.push(Command::Search(search.clone()));
    }
    let entered = response.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
    match first {
        Some(row) if entered && !search.trim().is_empty() => {
            commands.push(Command::PickSpot(row.spot.clone()));
        }
        _ => {}
    }
}

fn row_ui(ui: &mut Ui, view: &View<'_>, row: &Row) -> Response {
    let palette = Palette::of(ui);
    let width = ui.available_width();
    let font = match row.spot {
        Spot::Space(_) => egui::FontId::new(size::BODY, bold()),
        Spot::Component(_) | Spot::Connection(..) | Spot::Home => {
            egui::FontId::proportional(size::BODY)
        }
    };
    let galley = ui.painter().layout(row.name.clone(), font, palette.ink, width - 60.0);
    let height = (galley.size().y + 16.0).max(TOUCH);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::click());
    let label = match &row.tag {
        Some(tag) => view.fill("tagged", &[fill("tag", tag), fill("device", &row.name)]),
        None => row.name.clone(),
    };
    response.widget_info(|| WidgetInfo::labeled(Role::Button, ui.is_enabled(), &label));
    if ui.is_rect_visible(rect) {
        let pointed_at = response.hovered() || response.is_pointer_button_down_on();
        let fill = if pointed_at { palette.hover } else { palette.card };
        ui.painter().rect(rect, ROUND, fill, palette.edge_stroke(), StrokeKind::Inside);
        let centre = rect.left_center() + vec2(26.0, 0.0);
        match row.system {
            Some(system) => pin(
                ui.painter(),
                centre,
                tokens::PIN,
                system,
                row.tag.as_deref(),
                egui::Stroke::NONE,
            ),
            None => {
                let room = egui::Rect::from_center_size(centre, vec2(20.0, 16.0));
                let stroke = egui::Stroke::new(2.0, palette.ink);
                ui.painter().rect_stroke(room, 0.0, stroke, StrokeKind::Middle);
            }
        }
        let at = rect.left_center() + vec2(50.0, -galley.size().y / 2.0);
        ui.painter().galley(at, galley, palette.ink);
        focus_ring(ui, &response);
    }
    response
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(tag: &str, name: &str) -> Row {
        Row {
            spot: Spot::Home,
            name: name.to_owned(),
            tag: Some(tag.to_owned()),
            system: None,
            space: None,
            place: None,
            is_in_sight: true,
            words: format!("{tag} {name}"),
        }
    }

    #[test]
    fn enter_takes_what_was_most_likely_meant() {
        let rows = [row("W41", "Disposer under the kitchen sink"), row("W4", "Kitchen sink")];
        let found: Vec<&Row> = rows.iter().collect();
        let name = |search| best(&found, search).map(|row| row.name.as_str());
        assert_eq!(name(" Kitchen-sink"), Some("Kitchen sink"));
        assert_eq!(name("kitch"), Some("Kitchen sink"));
        assert_eq!(name("W4"), Some("Kitchen sink"));
        assert_eq!(name("sink"), Some("Disposer under the kitchen sink"));
    }
}
