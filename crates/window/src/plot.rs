//! How much water is on the floor by then: litres against time, for the order of the steps and for
//! other ways.

use std::sync::Arc;

use egui::{
    Color32, FontId, Galley, Painter, Pos2, Rect, Sense, Shape, Stroke, Ui, WidgetInfo,
    accesskit::Role, pos2, vec2,
};
use quarterturn_guidance::{Answer, Choice, count, fill};

use crate::controls::{card, section, soft, strong};
use crate::place;
use crate::steps::device_line;
use crate::tokens::{GAP, PLOT_HEIGHT, PLOT_SAMPLE, Palette, size};
use crate::view::View;

/// Seconds between ticks: what a clock is read in.
const CLOCK: [f64; 14] =
    [1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0, 7200.0];
/// Most spaces between ticks.
const SPACES: f64 = 4.0;
/// Up to here a time is told in seconds, so that two choices can be told apart.
const IN_SECONDS: f64 = 180.0;
/// The part of the width that the names at the ends of the lines may take.
const NAMES: f32 = 0.34;
/// Distance between a line or an axis and what is written at it.
const BESIDE: f32 = 6.0;
/// Half the width of a mark.
const MARK: f32 = 5.0;

/// The plot, and under it a sentence for each choice.
pub(crate) fn choices_ui(ui: &mut Ui, view: &View<'_>, answer: &Answer) {
    let lines: Vec<Line<'_>> =
        answer.choices.iter().enumerate().filter_map(|(n, choice)| Line::new(n, choice)).collect();
    if lines.is_empty() {
        return;
    }
    section(ui, &view.text("plot"));
    ui.label(soft(ui, view.text(if lines.len() > 1 { "plot-hint" } else { "plot-hint-one" })));
    let edge = Stroke::new(1.0, Palette::of(ui).line);
    card(ui, edge, |ui| {
        plot_ui(ui, view, &lines);
        for line in &lines {
            sentence_ui(ui, view, line);
        }
    });
}

/// A choice as it is drawn.
struct Line<'a> {
    choice: &'a Choice,
    look: Look,
    /// Seconds and litres when no more comes.
    stop: (f64, f64),
    /// Seconds when the last device has been worked.
    end: f64,
}

impl<'a> Line<'a> {
    fn new(n: usize, choice: &'a Choice) -> Option<Self> {
        let (end, most) = *choice.curve.last()?;
        let stop = choice.curve.iter().find(|(_, litres)| *litres >= most)?;
        Some(Self { choice, look: Look::of(n), stop: *stop, end })
    }
}

/// How a line is drawn: never told apart by its colour alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Look {
    /// Unbroken, with a round mark.
    Unbroken,
    /// Dashes, with a square mark.
    Dashes,
    /// Dots, with a three-cornered mark.
    Dots,
}

impl Look {
    fn of(n: usize) -> Self {
        match n {
            0 => Self::Unbroken,
            1 => Self::Dashes,
            _ => Self::Dots,
        }
    }

    fn colour(self, palette: &Palette) -> Color32 {
        let [first, second, third] = palette.plot;
        match self {
            Self::Unbroken => first,
            Self::Dashes => second,
            Self::Dots => third,
        }
    }

    fn line(self, painter: &Painter, path: &[Pos2], colour: Color32) {
        match self {
            Self::Unbroken => {
                painter.add(Shape::line(path.to_vec(), Stroke::new(3.0, colour)));
            }
            Self::Dashes => {
                let stroke = Stroke::new(2.5, colour);
                painter.extend(Shape::dashed_line(path, stroke, 9.0, 6.0));
            }
            Self::Dots => {
                painter.extend(Shape::dotted_line(path, colour, 5.5, 1.6));
            }
        }
    }

    fn mark(self, painter: &Painter, at: Pos2, colour: Color32) {
        match self {
            Self::Unbroken => {
                painter.circle_filled(at, MARK, colour);
            }
            Self::Dashes => {
                let square = Rect::from_center_size(at, vec2(MARK * 1.8, MARK * 1.8));
                painter.rect_filled(square, 0.0, colour);
            }
            Self::Dots => {
                let corners = [(0.0, -1.3), (1.2, 0.8), (-1.2, 0.8)];
                let corners = corners.iter().map(|&(x, y)| at + vec2(x, y) * MARK).collect();
                painter.add(Shape::convex_polygon(corners, colour, Stroke::NONE));
            }
        }
    }
}

/// An axis from 0: ticks at every `step`, the last at or beyond what is shown.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Axis {
    step: f64,
    spaces: f64,
}

impl Axis {
    /// Round clock times.
    fn of_time(most: f64) -> Self {
        let step = CLOCK.into_iter().find(|step| most <= step * SPACES);
        Self::with(most, step.unwrap_or_else(|| round_step(most)))
    }

    /// Round amounts.
    fn of_amount(most: f64) -> Self {
        Self::with(most, round_step(most))
    }

    fn with(most: f64, step: f64) -> Self {
        // A hair less, so that 0.3 in steps of 0.1 does not get a fourth space.
        Self { step, spaces: (most / step - 1e-9).ceil().max(1.0) }
    }

    fn end(self) -> f64 {
        self.step * self.spaces
    }

    /// From 0 to the end, each without the digits that adding up in binary leaves behind.
    fn ticks(self) -> impl Iterator<Item = f64> {
        let decimals = 10_f64.powf((-self.step.log10()).ceil().max(0.0));
        (0_u8..=u8::MAX)
            .map(f64::from)
            .take_while(move |n| *n <= self.spaces)
            .map(move |n| (n * self.step * decimals).round() / decimals)
    }

    /// How far along it lies, from 0 to 1.
    fn along(self, value: f64) -> f32 {
        as_f32((value / self.end()).clamp(0.0, 1.0))
    }
}

/// The least of 1, 2 and 5 times a power of ten that needs no more than [`SPACES`].
fn round_step(most: f64) -> f64 {
    if most <= 0.0 || !most.is_finite() {
        return 1.0;
    }
    let least = most / SPACES;
    let ten = 10_f64.powf(least.log10().floor());
    let round = [1.0, 2.0, 5.0].into_iter().map(|n| n * ten);
    round.into_iter().find(|step| most <= step * SPACES * (1.0 + 1e-9)).unwrap_or(10.0 * ten)
}

fn plot_ui(ui: &mut Ui, view: &View<'_>, lines: &[Line<'_>]) {
    let width = ui.available_width();
    let (rect, response) = ui.allocate_exact_size(vec2(width, PLOT_HEIGHT), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, view.text("plot-in-words")));
    if !ui.is_rect_visible(rect) {
        return;
    }
    let palette = Palette::of(ui);
    let painter = ui.painter();
    let most = |pick: fn(&Line<'_>) -> f64| lines.iter().map(pick).fold(0.0, f64::max);
    let time = Axis::of_time(most(|line| line.end));
    let water = Axis::of_amount(view.in_units(most(|line| line.stop.1)));

    let small = |text: String| {
        painter.layout_no_wrap(text, FontId::proportional(size::SMALL), palette.soft)
    };
    let amounts: Vec<(f64, Arc<Galley>)> =
        water.ticks().map(|amount| (amount, small(at_water(view, amount)))).collect();
    let names: Vec<Arc<Galley>> =
        lines.iter().map(|line| name(painter, palette, view, line, width * NAMES)).collect();
    let widest = |galleys: &mut dyn Iterator<Item = &Arc<Galley>>| {
        galleys.map(|galley| galley.size().x).fold(0.0, f32::max)
    };
    let left = widest(&mut amounts.iter().map(|(_, galley)| galley)) + BESIDE;
    let right = widest(&mut names.iter()) + 3.0 * BESIDE;
    let row = small(view.text("plot-zero")).size().y;
    let area =
        Rect::from_min_max(rect.min + vec2(left, row / 2.0), rect.max - vec2(right, row + BESIDE));
    let at = |(seconds, litres): (f64, f64)| {
        let x = time.along(seconds);
        let y = water.along(view.in_units(litres));
        area.lerp_inside(vec2(x, 1.0 - y))
    };

    for (amount, galley) in amounts {
        let y = egui::lerp(area.bottom()..=area.top(), water.along(amount));
        painter.hline(area.x_range(), y, Stroke::new(1.0, palette.line));
        let place = pos2(area.left() - BESIDE - galley.size().x, y - galley.size().y / 2.0);
        painter.galley(place, galley, palette.soft);
    }
    let axis = Stroke::new(1.5, palette.edge);
    painter.hline(area.x_range(), area.bottom(), axis);
    painter.vline(area.left(), area.y_range(), axis);
    let mut free_from = f32::NEG_INFINITY;
    for seconds in time.ticks() {
        let x = egui::lerp(area.x_range(), time.along(seconds));
        painter.vline(x, area.bottom()..=area.bottom() + BESIDE / 2.0, axis);
        let galley = small(at_time(view, seconds, time.step));
        let from = x - galley.size().x / 2.0;
        // Where it is tight, a tick goes without its time rather than over another's.
        if from >= free_from {
            free_from = from + galley.size().x + BESIDE;
            painter.galley(pos2(from, area.bottom() + BESIDE), galley, palette.soft);
        }
    }

    // The order of the steps last, over what it shares with the others.
    for line in lines.iter().rev() {
        let colour = line.look.colour(palette);
        let mut path: Vec<Pos2> = line.choice.curve.iter().map(|point| at(*point)).collect();
        // What is on the floor stays there.
        path.push(at((time.end(), line.stop.1)));
        line.look.line(painter, &path, colour);
    }
    for line in lines.iter().rev() {
        line.look.mark(painter, at(line.stop), line.look.colour(palette));
    }
    let wanted: Vec<f32> = lines.iter().map(|line| at((time.end(), line.stop.1)).y).collect();
    let places = apart(&wanted, row, (rect.top() + row / 2.0)..=(area.bottom() - row / 2.0));
    for (((line, galley), wanted), y) in lines.iter().zip(names).zip(wanted).zip(places) {
        let colour = line.look.colour(palette);
        let beside = pos2(area.right() + 2.0 * BESIDE, y);
        painter.line_segment([pos2(area.right(), wanted), beside], Stroke::new(1.5, colour));
        let place = pos2(beside.x + BESIDE / 2.0, y - galley.size().y / 2.0);
        painter.galley(place, galley, palette.ink);
    }
}

/// What stands at the end of a line, cut off at `width`.
fn name(
    painter: &Painter,
    palette: &Palette,
    view: &View<'_>,
    line: &Line<'_>,
    width: f32,
) -> Arc<Galley> {
    let (close, _) = devices(&line.choice.close);
    let font = FontId::new(size::SMALL, crate::fonts::bold());
    let mut job = egui::text::LayoutJob::simple_singleline(list(view, &close), font, palette.ink);
    job.wrap = egui::text::TextWrapping::truncate_at_width(width);
    painter.layout_job(job)
}

/// A sample of the line, and what it means.
fn sentence_ui(ui: &mut Ui, view: &View<'_>, line: &Line<'_>) {
    ui.scope(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        ui.horizontal_top(|ui| {
            let (rect, _) = ui.allocate_exact_size(PLOT_SAMPLE, Sense::hover());
            let colour = line.look.colour(Palette::of(ui));
            let (painter, y) = (ui.painter(), rect.center().y);
            line.look.line(painter, &[pos2(rect.left(), y), pos2(rect.right(), y)], colour);
            line.look.mark(painter, rect.center(), colour);
            ui.add_space(GAP / 2.0);
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                let text = sentence(view, line);
                if line.look == Look::Unbroken {
                    ui.add(egui::Label::new(strong(text, size::BODY)).wrap());
                    return;
                }
                ui.add(egui::Label::new(text).wrap());
                // No step names these.
                let (close, _) = devices(&line.choice.close);
                let names: Vec<String> = close.iter().map(|id| device_line(view, id)).collect();
                ui.add(egui::Label::new(soft(ui, view.words.list(&names))).wrap());
            });
        });
    });
}

/// What a choice is, how long it takes until no more comes, and how much is out by then.
fn sentence(view: &View<'_>, line: &Line<'_>) -> String {
    let (close, again) = devices(&line.choice.close);
    let (seconds, litres) = line.stop;
    let devices = list(view, &close);
    let (time, water) = (time(view, seconds), view.amount(two_digits(view.in_units(litres))));
    let fills = [fill("devices", &devices), fill("time", &time), fill("water", &water)];
    if !line.choice.reopens {
        return view.fill("choice", &fills);
    }
    let [devices, time, water] = fills;
    let (again, end) = (list(view, &again), self::time(view, line.end));
    view.fill("choice-reopens", &[devices, time, water, fill("again", &again), fill("end", &end)])
}

/// The devices that are closed, and those among them that are opened again: those that stand twice.
fn devices(worked: &[String]) -> (Vec<&str>, Vec<&str>) {
    let (mut close, mut again) = (Vec::new(), Vec::new());
    for id in worked.iter().map(String::as_str) {
        if close.contains(&id) { &mut again } else { &mut close }.push(id);
    }
    (close, again)
}

/// The tags of devices, or their names where they have none.
fn list(view: &View<'_>, ids: &[&str]) -> String {
    let short = |id: &str| {
        let tag = view.home.component(id).and_then(|component| component.tag.clone());
        tag.unwrap_or_else(|| place::name(view.home, id).to_owned())
    };
    let Some((first, rest)) = ids.split_first() else { return String::new() };
    if rest.is_empty() {
        return short(first);
    }
    view.fill("choice-list", &[fill("first", &short(first)), fill("rest", &list(view, rest))])
}

/// A time for comparing: whole seconds for as long as they are what counts.
fn time(view: &View<'_>, seconds: f64) -> String {
    if seconds > IN_SECONDS {
        return view.duration(seconds);
    }
    view.fill("seconds", &[count("n", seconds.round())])
}

/// The amount at a tick.
fn at_water(view: &View<'_>, amount: f64) -> String {
    if amount <= 0.0 { view.text("plot-zero") } else { view.amount(amount) }
}

/// The time at a tick.
fn at_time(view: &View<'_>, seconds: f64, step: f64) -> String {
    if seconds <= 0.0 {
        return view.text("plot-zero");
    }
    let (key, n) =
        if step < 60.0 { ("plot-seconds", seconds) } else { ("plot-minutes", seconds / 60.0) };
    view.fill(key, &[count("n", n)])
}

/// Two figures: more would be made up.
fn two_digits(amount: f64) -> f64 {
    if amount <= 0.0 || !amount.is_finite() {
        return 0.0;
    }
    let unit = 10_f64.powf(1.0 - amount.log10().floor());
    (amount * unit).round() / unit
}

/// Heights near those wanted, in the same order, at least `row` apart and within `bounds`, if there
/// is room for that.
fn apart(wanted: &[f32], row: f32, bounds: std::ops::RangeInclusive<f32>) -> Vec<f32> {
    let mut order: Vec<(usize, f32)> = wanted.iter().copied().enumerate().collect();
    // From the top down; of two at one height, the one that comes first is the upper.
    order.sort_by(|a, b| a.1.total_cmp(&b.1).then(a.0.cmp(&b.0)));
    let mut lowest = *bounds.start();
    for (_, y) in &mut order {
        *y = y.max(lowest);
        lowest = *y + row;
    }
    let mut highest = *bounds.end();
    for (_, y) in order.iter_mut().rev() {
        *y = y.min(highest);
        highest = *y - row;
    }
    order.sort_by_key(|(n, _)| *n);
    order.into_iter().map(|(_, y)| y).collect()
}

#[expect(clippy::cast_possible_truncation, reason = "a place on the screen needs no more digits")]
fn as_f32(value: f64) -> f32 {
    value as f32
}

#[cfg(test)]
mod tests {
    use quarterturn_guidance::Catalogue;
    use quarterturn_home::{Component, Home, Kind, Log, Units};

    use super::*;
    use crate::ask::Asked;
    use crate::session::Session;

    fn with_view<T>(units: Units, look: impl FnOnce(&View<'_>) -> T) -> T {
        let device = |id: &str, tag: Option<&str>| Component {
            tag: tag.map(str::to_owned),
            ..Component::new(id, Kind::IsolatingValve, "Valve by the door")
        };
        let home = Home {
            units,
            components: vec![
                device("main", Some("W3")),
                device("stop", Some("W9")),
                device("door", None),
            ],
            ..Home::default()
        };
        let words = Catalogue::english();
        look(&View {
            home: &home,
            problems: &[],
            words: &words,
            asked: &Asked::default(),
            answer: None,
            rows: &[],
            hits: &[],
            way: None,
            drill: None,
            session: &Session::default(),
            log: &Log::default(),
            message: None,
            undo: None,
            redo: None,
            folder: None,
            today: None,
            lasts: false,
            motion: false,
            problems_open: false,
            is_new_page: false,
        })
    }

    fn choice(close: &[&str], curve: &[(f64, f64)]) -> Choice {
        let close: Vec<String> = close.iter().map(|id| (*id).to_owned()).collect();
        let reopens = !devices(&close).1.is_empty();
        Choice { close, reopens, curve: curve.to_vec() }
    }

    fn told(units: Units, choice: &Choice) -> String {
        with_view(units, |view| sentence(view, &Line::new(0, choice).unwrap()))
    }

    /// 4.54 L are 1.2 US gallons (3.785 L each).
    #[test]
    fn a_choice_is_told_in_the_units_of_the_home() {
        let both = choice(&["main", "stop"], &[(0.0, 0.0), (8.4, 3.0), (17.1, 4.54)]);
        assert_eq!(told(Units::Us, &both), "Close W3, W9: 17 seconds, 1.2 gal.");
        assert_eq!(told(Units::Si, &both), "Close W3, W9: 17 seconds, 4.5 L.");
    }

    #[test]
    fn a_device_without_a_tag_goes_by_its_name() {
        let long = choice(&["door"], &[(0.0, 0.0), (400.0, 1234.0)]);
        assert_eq!(told(Units::Si, &long), "Close Valve by the door: 7 minutes, 1200 L.");
    }

    /// The time is that of the stop, not that of the last act.
    #[test]
    fn a_choice_that_opens_a_device_again_says_so() {
        let staged = choice(
            &["main", "stop", "main"],
            &[(0.0, 0.0), (17.0, 4.54), (40.0, 4.54), (66.0, 4.54)],
        );
        assert_eq!(
            told(Units::Us, &staged),
            "Close W3, W9: 17 seconds, 1.2 gal. Then open W3 again: after 66 seconds the rest of \
             the house has water."
        );
    }

    #[test]
    fn nothing_is_drawn_of_a_choice_without_a_curve() {
        assert!(Line::new(0, &choice(&["main"], &[])).is_none());
    }

    #[test]
    fn axes_have_few_round_ticks_and_hold_all() {
        let mut most = 0.003;
        while most < 20_000.0 {
            for axis in [Axis::of_time(most), Axis::of_amount(most)] {
                let ticks: Vec<f64> = axis.ticks().collect();
                assert!((2..=5).contains(&ticks.len()), "{most}: {ticks:?}");
                assert!(axis.end() >= most * (1.0 - 1e-9), "{most}: {ticks:?}");
                assert!(axis.end() - axis.step < most, "{most}: {ticks:?}");
                assert!(ticks.iter().all(|t| format!("{t}").len() <= 6), "{most}: {ticks:?}");
            }
            most *= 1.07;
        }
    }

    #[test]
    fn ticks_are_those_one_would_write() {
        let ticks = |axis: Axis| axis.ticks().collect::<Vec<_>>();
        assert_eq!(ticks(Axis::of_time(50.0)), [0.0, 15.0, 30.0, 45.0, 60.0]);
        assert_eq!(ticks(Axis::of_time(200.0)), [0.0, 60.0, 120.0, 180.0, 240.0]);
        assert_eq!(ticks(Axis::of_amount(0.3)), [0.0, 0.1, 0.2, 0.3]);
        assert_eq!(ticks(Axis::of_amount(7.0)), [0.0, 2.0, 4.0, 6.0, 8.0]);
        assert_eq!(ticks(Axis::of_amount(0.0)), [0.0, 1.0]);
    }

    #[test]
    fn names_do_not_lie_on_one_another() {
        for wanted in [[50.0, 50.0, 50.0], [0.0, 1.0, 99.0], [99.0, 98.0, 97.0], [40.0, 60.0, 50.0]]
        {
            let places = apart(&wanted, 18.0, 10.0..=90.0);
            for (n, a) in places.iter().enumerate() {
                assert!((10.0..=90.0).contains(a), "{wanted:?}: {places:?}");
                for (m, b) in places.iter().enumerate().skip(n + 1) {
                    assert!((a - b).abs() > 17.9, "{wanted:?}: {places:?}");
                    let order = wanted[n].total_cmp(&wanted[m]);
                    assert!(order.is_eq() || order == a.total_cmp(b), "{wanted:?}: {places:?}");
                }
            }
        }
        assert_eq!(apart(&[20.0, 60.0], 18.0, 10.0..=90.0), [20.0, 60.0]);
    }

    #[test]
    fn amounts_have_two_figures() {
        for (amount, said) in [(1.234, 1.2), (0.0456, 0.046), (37.6, 38.0), (1234.0, 1200.0)] {
            assert!((two_digits(amount) - said).abs() < 1e-9, "{amount}");
        }
        assert!(two_digits(0.0).abs() < 1e-9);
    }
}
