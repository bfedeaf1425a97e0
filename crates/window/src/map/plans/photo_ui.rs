//! What one sees of a picture that is taken in.

use std::path::PathBuf;

use egui::{
    Color32, Label, Pos2, ProgressBar, Rect, Sense, Stroke, StrokeKind, TextureHandle, Ui, Vec2,
    WidgetInfo, accesskit::Role, vec2,
};
use quarterturn_guidance::fill;
use quarterturn_home::{Level, Units};
use quarterturn_mapping::Margin;

use super::handle::{Handle, handle_ui};
use super::paper::{Paper, Point, length};
use super::photo::{Command, Stage, State, doors};
use super::press;
use crate::ask::Command as Press;
use crate::controls::{button, chosen_button, main_button, section, soft, strong};
use crate::field::field;
use crate::tokens::{EDGE_ON_PLAN, FOCUS_ON_PLAN, GAP, Palette, TOUCH, size};
use crate::view::View;

/// Before there is a picture: from where to take it.
pub(super) fn start_ui(
    ui: &mut Ui,
    view: &View<'_>,
    photo: &State,
    level: &Level,
    out: &mut Vec<Press>,
) {
    ui.add(Label::new(view.text("plans-picture-hint")).wrap());
    wrong_ui(ui, photo);
    ui.add_space(GAP);
    if main_button(ui, &view.text("plans-choose-picture")).clicked() {
        out.push(photo_press(Command::Choose(level.id.clone())));
    }
    if matches!(photo.stage, Stage::Choosing(..)) {
        ui.add(Label::new(soft(ui, view.text("choosing"))).wrap());
    }
    ui.add_space(GAP);
    let typed = field(ui, &view.text("plans-picture-path"), "", &photo.path);
    if let Some(path) = typed.text {
        out.push(photo_press(Command::Path(path)));
    }
    let pressed = button(ui, &view.text("plans-take-picture")).clicked();
    let path = photo.path.trim();
    if (pressed || typed.is_entered) && !path.is_empty() {
        out.push(photo_press(Command::Take(level.id.clone(), PathBuf::from(path))));
    }
    ui.add(Label::new(soft(ui, view.text("plans-picture-none"))).wrap());
    if level.plan.is_some() {
        section(ui, &view.fill("plans-picture-there", &[fill("level", &level.name)]));
        ui.add(Label::new(view.text("plans-picture-move")).wrap());
        if button(ui, &view.text("plans-picture-remove")).clicked() {
            out.push(photo_press(Command::Remove(level.id.clone())));
        }
    }
}

fn wrong_ui(ui: &mut Ui, photo: &State) {
    if let Some(wrong) = &photo.wrong {
        ui.add(Label::new(strong(wrong.as_str(), size::BODY)).wrap());
    }
}

/// The column while a picture is taken in.
pub(super) fn column_ui(ui: &mut Ui, view: &View<'_>, photo: &State, out: &mut Vec<Press>) {
    wrong_ui(ui, photo);
    match &photo.stage {
        Stage::Working(work) => {
            let words = view.text(work.key);
            ui.add(Label::new(strong(words.as_str(), size::SECTION)).wrap());
            ui.add(ProgressBar::new(work.share()).desired_height(TOUCH / 2.0));
            if button(ui, &view.text("plans-stop")).clicked() {
                out.push(photo_press(Command::Stop));
            }
        }
        Stage::Corners => corners_ui(ui, view, photo, out),
        Stage::Straight(_) => {
            step_ui(ui, view, "plans-straight-title", "plans-straight-hint");
            if main_button(ui, &view.text("plans-straight-accept")).clicked() {
                out.push(photo_press(Command::Accept));
            }
            if button(ui, &view.text("plans-straight-again")).clicked() {
                out.push(photo_press(Command::Again));
            }
            forget_ui(ui, view, out);
        }
        Stage::Measuring => measure_ui(ui, view, photo, out),
        Stage::Nothing | Stage::Choosing(..) => {}
    }
}

fn step_ui(ui: &mut Ui, view: &View<'_>, title: &str, hint: &str) {
    ui.add(Label::new(strong(view.text(title), size::SECTION)).wrap());
    ui.add(Label::new(view.text(hint)).wrap());
    ui.add_space(GAP);
}

fn forget_ui(ui: &mut Ui, view: &View<'_>, out: &mut Vec<Press>) {
    ui.add_space(GAP);
    if button(ui, &view.text("plans-picture-forget")).clicked() {
        out.push(photo_press(Command::Forget));
    }
}

fn corners_ui(ui: &mut Ui, view: &View<'_>, photo: &State, out: &mut Vec<Press>) {
    step_ui(ui, view, "plans-corners-title", "plans-corners-how");
    ui.horizontal_wrapped(|ui| {
        for (key, beside) in [
            ("plans-beside-strip", Margin::Strip),
            ("plans-beside-cut", Margin::None),
            ("plans-beside-kept", Margin::Kept),
        ] {
            if chosen_button(ui, &view.text(key), photo.beside == beside).clicked() {
                out.push(photo_press(Command::Beside(beside)));
            }
        }
    });
    ui.add(Label::new(soft(ui, view.text("plans-size-hint"))).wrap());
    let example = length(3.81, view.home.units);
    ui.columns(2, |columns| {
        let boxes = [("plans-size-across", false), ("plans-size-down", true)];
        for ((ui, (key, is_depth)), now) in columns.iter_mut().zip(boxes).zip(&photo.sizes) {
            if let Some(text) = field(ui, &view.text(key), &example, now).text {
                out.push(photo_press(Command::Size(is_depth, text)));
            }
        }
    });
    ui.add_space(GAP);
    if main_button(ui, &view.text("plans-straighten")).clicked() {
        out.push(photo_press(Command::Straighten));
    }
    if button(ui, &view.text("plans-as-it-is")).clicked() {
        out.push(photo_press(Command::AsItIs));
    }
    forget_ui(ui, view, out);
}

fn measure_ui(ui: &mut Ui, view: &View<'_>, photo: &State, out: &mut Vec<Press>) {
    step_ui(ui, view, "plans-measure-title", "plans-measure-how");
    let example = length(3.81, view.home.units);
    let typed = field(ui, &view.text("plans-distance"), &example, &photo.distance);
    if let Some(distance) = typed.text {
        out.push(photo_press(Command::Distance(distance)));
    }
    ui.add(Label::new(soft(ui, view.text("plans-door-hint"))).wrap());
    ui.horizontal_wrapped(|ui| {
        for (name, metres) in doors(view.words, view.home.units == Units::Us) {
            let width = length(metres, view.home.units);
            let label =
                view.fill("plans-door-width", &[fill("door", &name), fill("width", &width)]);
            if button(ui, &label).clicked() {
                out.push(photo_press(Command::Door(metres)));
            }
        }
    });
    ui.add_space(GAP);
    if main_button(ui, &view.text("plans-measure")).clicked() || typed.is_entered {
        out.push(photo_press(Command::Measure));
    }
    forget_ui(ui, view, out);
}

/// The picture itself, with what is set on it.
pub(super) fn drawing_ui(ui: &mut Ui, view: &View<'_>, photo: &State, out: &mut Vec<Press>) {
    let area = ui.available_rect_before_wrap();
    let (_, ground) = ui.allocate_exact_size(area.size(), Sense::click());
    ground.widget_info(|| WidgetInfo::labeled(Role::Image, true, view.text("plans-picture-shown")));
    let palette = Palette::of(ui);
    let (Some(texture), Some((width, height))) = (&photo.texture, photo.size()) else {
        ui.painter().rect_filled(area, 4.0, palette.plan);
        return;
    };
    let paper = Paper::fit(area, (0.0, 0.0, f64::from(width), f64::from(height)));
    let whole = Rect::from_min_max(Pos2::ZERO, Pos2::new(1.0, 1.0));
    ui.painter().image(texture.id(), paper.rect, whole, palette.picture);
    match &photo.stage {
        Stage::Corners => {
            let points: Vec<Pos2> = photo.corners.iter().map(|at| paper.at(*at)).collect();
            outline(ui, &points);
            for (place, at) in photo.corners.iter().enumerate() {
                let number = (place + 1).to_string();
                let label = view.fill("plans-photo-corner", &[fill("number", &number)]);
                let step = paper.far(1.0);
                let handle = Handle { id: ("photo-corner", place), label: &label, at: *at, step };
                let moved = handle_ui(ui, &paper, &handle);
                if let Some(moved) = moved {
                    loupe(ui, texture, &paper, moved.to);
                    out.push(photo_press(Command::Corner(place, moved.to)));
                }
            }
        }
        Stage::Measuring => {
            if let Some(at) = ground.interact_pointer_pos().filter(|_| ground.clicked()) {
                out.push(photo_press(Command::Point(paper.point(at))));
            }
            let points: Vec<Pos2> = photo.points.iter().map(|at| paper.at(*at)).collect();
            outline(ui, &points);
            for (place, at) in photo.points.iter().enumerate() {
                let number = (place + 1).to_string();
                let label = view.fill("plans-photo-point", &[fill("number", &number)]);
                let step = paper.far(1.0);
                let handle = Handle { id: ("photo-point", place), label: &label, at: *at, step };
                if let Some(moved) = handle_ui(ui, &paper, &handle) {
                    loupe(ui, texture, &paper, moved.to);
                    out.push(photo_press(Command::MovePoint(place, moved.to)));
                }
            }
        }
        Stage::Nothing | Stage::Choosing(..) | Stage::Working(_) | Stage::Straight(_) => {}
    }
}

/// What is under a point that is moved, larger: the finger and the handle hide it. In a corner of the
/// picture where the point is not.
fn loupe(ui: &Ui, texture: &TextureHandle, paper: &Paper, at: Point) {
    /// Side, and how many times larger, in points.
    const SIDE: f32 = 140.0;
    const TIMES: f32 = 3.0;
    let point = paper.at(at);
    let area = paper.rect.intersect(ui.clip_rect());
    let is_left = point.x < area.center().x;
    let left = if is_left { area.right() - SIDE - 8.0 } else { area.left() + 8.0 };
    let glass = Rect::from_min_size(Pos2::new(left, area.top() + 8.0), vec2(SIDE, SIDE));
    let seen = Rect::from_center_size(point, glass.size() / TIMES);
    let on_texture = |at: Pos2| ((at - paper.rect.min) / paper.rect.size()).to_pos2();
    let palette = Palette::of(ui);
    // Over all that is drawn after it.
    let layer = egui::LayerId::new(egui::Order::Foreground, ui.scope_id().with("loupe"));
    let painter = ui.ctx().layer_painter(layer).with_clip_rect(glass.expand(3.0));
    painter.rect_filled(glass, 0.0, palette.plan);
    // Beyond the picture's edge there is nothing.
    let shown = Rect::from_min_max(
        glass.min + (paper.rect.min - seen.min).max(Vec2::ZERO) * TIMES,
        glass.max - (seen.max - paper.rect.max).max(Vec2::ZERO) * TIMES,
    );
    let seen = seen.intersect(paper.rect);
    if seen.is_positive() {
        let uv = Rect::from_min_max(on_texture(seen.min), on_texture(seen.max));
        painter.image(texture.id(), shown, uv, palette.picture);
    }
    for (width, colour) in [(3.5, EDGE_ON_PLAN), (1.5, FOCUS_ON_PLAN)] {
        let stroke = Stroke::new(width, colour);
        painter.hline(glass.x_range(), glass.center().y, stroke);
        painter.vline(glass.center().x, glass.y_range(), stroke);
    }
    painter.rect_stroke(glass, 0.0, palette.edge_stroke(), StrokeKind::Outside);
}

/// A line through points that is seen on any picture.
fn outline(ui: &Ui, points: &[Pos2]) {
    let next = points.iter().cycle().skip(1);
    for (from, to) in points.iter().zip(next) {
        for (width, colour) in [(5.0, EDGE_ON_PLAN), (2.5, FOCUS_ON_PLAN)] {
            ui.painter().line_segment([*from, *to], Stroke::new(width, colour));
        }
    }
    if let [only] = points {
        ui.painter().circle_filled(*only, 3.0, Color32::WHITE);
    }
}

/// Moves the picture of a level by so many metres.
pub(super) fn move_press(level: &Level, by: Point, is_by_key: bool) -> Press {
    photo_press(Command::Move(level.id.clone(), by, is_by_key))
}

fn photo_press(command: Command) -> Press {
    press(super::Command::Photo(command))
}
