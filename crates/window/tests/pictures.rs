//! A handful of pictures of the window, compared with those in `tests/snapshots`.
//!
//! They need a renderer (a software one will do) and are a step of their own, `.ci/pictures`. Where nothing
//! can render they are skipped, and say so. `.ci/pictures take` takes those anew that no longer fit.

#![expect(clippy::expect_used, reason = "a test that cannot go on stops")]
#![expect(clippy::print_stdout, reason = "a test that is skipped says so")]

use std::sync::LazyLock;
use std::time::Duration;

use egui::Theme;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::wgpu::WgpuTestRenderer;
use egui_kittest::{Harness, SnapshotOptions, try_image_snapshot_options};
use image::imageops::crop_imm;
use quarterturn_guidance::{Catalogue, Trouble, fill};
use quarterturn_home::Date;
use quarterturn_window::{App, Opening};

/// How much a pixel may differ, as a weighted squared distance of colours (YIQ): some eleven of 255 steps
/// of grey. Measured: one step between two drivers of Mesa 22.3 (Vulkan and OpenGL), and with another
/// software renderer (`SwiftShader`) more than this only where the picture of a plan is shrunk.
const ROUNDING: f32 = 60.0;
/// How many pixels may differ by more. A word that stands one pixel beside its place has more than 70.
const STRAY_PIXELS: usize = 8;
/// What the harness leaves free around the window, in points.
const MARGIN: f32 = 8.0;

/// Width and height in points, and pixels a point: small enough to be kept, large enough to be read.
#[derive(Clone, Copy)]
struct Screen([f32; 2], f32);

/// The window as it opens.
const USUAL: Screen = Screen([1280.0, 800.0], 0.625);
/// The same with everything twice as large.
const TWICE: Screen = Screen([640.0, 400.0], 1.25);

/// True if something here can render; found out once, so that all pictures are compared or none.
static RENDERS: LazyLock<bool> =
    LazyLock::new(|| std::panic::catch_unwind(WgpuTestRenderer::new).is_ok());

/// Someone at the window.
struct Person {
    at: Harness<'static, App>,
    words: Catalogue,
    screen: Screen,
}

impl Person {
    /// At the first page of the built-in home; `None` where nothing can render.
    fn begin(theme: Theme, screen: Screen) -> Option<Self> {
        if !*RENDERS {
            println!("SKIPPED: nothing here can render, so that no picture was compared");
            return None;
        }
        let words = Catalogue::english();
        let app =
            App::new(Opening::built_in(), Catalogue::english()).on_day(Date::new(2026, 11, 25));
        let Screen([width, height], scale) = screen;
        let at = Harness::builder()
            .with_size([width + 2.0 * MARGIN, height + 2.0 * MARGIN])
            .with_pixels_per_point(scale)
            .with_max_steps(20)
            .with_theme(theme)
            .with_render_cursor(false)
            .renderer(WgpuTestRenderer::new())
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        let mut person = Self { at, words, screen };
        person.at.run();
        Some(person)
    }

    fn text(&self, key: &str) -> String {
        self.words.text(&format!("window-{key}"))
    }

    fn press(&mut self, label: &str) {
        self.at.get_by_role_and_label(Role::Button, label).scroll_to_me();
        self.at.run();
        self.at.get_by_role_and_label(Role::Button, label).click();
        self.at.run();
    }

    fn press_text(&mut self, key: &str) {
        let label = self.text(key);
        self.press(&label);
    }

    fn pick(&mut self, trouble: Trouble) {
        let key = format!("trouble-{}", trouble.id());
        let (title, hint) = (self.words.text(&key), self.words.text(&format!("{key}-hint")));
        self.press(&format!("{title}, {hint}"));
    }

    fn press_pin(&mut self, device: &str) {
        let label = self.words.fill("window-pin", &[fill("device", device)]);
        self.press(&label);
    }

    fn has_button(&self, start: &str) -> bool {
        let labels = self.at.query_all_by_role(Role::Button);
        labels.filter_map(|node| node.accesskit_node().label()).any(|l| l.starts_with(start))
    }

    /// Waits for what a thread works out.
    fn wait(&mut self, what: &str, is_there: impl Fn(&Self) -> bool) {
        for _ in 0..6000 {
            if is_there(self) {
                return;
            }
            std::thread::sleep(Duration::from_millis(20));
            self.at.run();
        }
        panic!("{what} never came");
    }

    fn wait_for_plan(&mut self) {
        let coming = self.text("picture-coming");
        self.wait("the plan", |person| person.at.query_by_label(&coming).is_none());
    }

    /// Turns to the map, and waits for its plan and for what is missing on it.
    fn open_map(&mut self) {
        self.press_text("quiet");
        self.press_text("open-map");
        let next = self.words.fill("window-missing-next", &[fill("what", "")]);
        self.wait("what is missing", |person| person.has_button(next.trim()));
        self.wait_for_plan();
    }

    /// Compares the window with its picture, with nothing under the pointer.
    fn compare(mut self, name: &str) {
        self.at.event(egui::Event::PointerGone);
        self.at.run();
        let Screen([width, height], scale) = self.screen;
        let picture = self.at.render().expect("something that was there to render");
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "small")]
        let [margin, width, height] = [MARGIN, width, height].map(|side| (side * scale) as u32);
        let window = crop_imm(&picture, margin, margin, width, height).to_image();
        let options = SnapshotOptions::new().threshold(ROUNDING).max_failed_pixels(STRAY_PIXELS);
        if let Err(error) = try_image_snapshot_options(&window, name, &options) {
            panic!("{error}");
        }
    }
}

fn first_page_in(theme: Theme, name: &str) {
    let Some(person) = Person::begin(theme, USUAL) else { return };
    person.compare(name);
}

#[test]
fn first_page() {
    first_page_in(Theme::Light, "first-page");
}

#[test]
fn first_page_in_the_dark() {
    first_page_in(Theme::Dark, "first-page-dark");
}

fn answer_in(theme: Theme, name: &str) {
    let Some(mut person) = Person::begin(theme, USUAL) else { return };
    person.pick(Trouble::Leak);
    person.wait_for_plan();
    person.press_pin("Kitchen sink");
    person.wait_for_plan();
    person.compare(name);
}

#[test]
fn an_answer_beside_the_plan() {
    answer_in(Theme::Light, "answer");
}

#[test]
fn an_answer_in_the_dark() {
    answer_in(Theme::Dark, "answer-dark");
}

#[test]
fn the_answer_at_twice_the_size() {
    let Some(mut person) = Person::begin(Theme::Light, TWICE) else { return };
    person.pick(Trouble::Leak);
    person.press_text("spot-unknown");
    person.compare("answer-twice");
}

#[test]
fn gas_means_leaving_first() {
    let Some(mut person) = Person::begin(Theme::Light, USUAL) else { return };
    person.pick(Trouble::GasSmell);
    person.compare("gas");
}

#[test]
fn whom_to_call() {
    let Some(mut person) = Person::begin(Theme::Light, USUAL) else { return };
    person.pick(Trouble::SewageRising);
    person.press_text("spot-unknown");
    person.press_text("call");
    person.wait_for_plan();
    person.compare("call");
}

#[test]
fn walking_round_with_the_map() {
    let Some(mut person) = Person::begin(Theme::Light, USUAL) else { return };
    person.open_map();
    person.press_pin("Kitchen sink");
    person.compare("map-walk");
}

#[test]
fn rooms_over_the_picture_of_a_plan() {
    let Some(mut person) = Person::begin(Theme::Light, USUAL) else { return };
    person.open_map();
    person.press_text("map-plans");
    person.wait_for_plan();
    person.compare("map-board");
}

#[test]
fn the_riser() {
    let Some(mut person) = Person::begin(Theme::Light, USUAL) else { return };
    person.open_map();
    person.press_text("map-lines");
    person.press_text("schematic-water");
    let main = person.words.fill("window-schematic-box", &[fill("device", "House main shutoff")]);
    person.at.get_by_role_and_label(Role::Button, &main).scroll_to_me();
    person.at.run();
    person.compare("map-riser");
}

#[test]
fn papers_as_they_will_be_printed() {
    let Some(mut person) = Person::begin(Theme::Light, USUAL) else { return };
    person.press_text("quiet");
    person.press_text("open-papers");
    let sheet = person.words.text("paper-panels");
    person.press(&sheet);
    let view = person.text("papers-view");
    person.wait("the sheet", |person| person.has_button(&view));
    person.compare("papers");
}
