//! Someone at the window, and folders for them.

use std::path::{Path, PathBuf};
use std::time::Duration;

use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, PointerButton, Pos2, pos2, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Date, Home};
use quarterturn_window::{App, Opening};

/// A folder of a test, empty at first and taken away at the end.
pub(crate) struct Place(PathBuf);

impl Place {
    pub(crate) fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("qt-plans-{}-{name}", std::process::id()));
        drop(std::fs::remove_dir_all(&path));
        std::fs::create_dir_all(&path).unwrap();
        Self(path)
    }

    pub(crate) fn path(&self, name: &str) -> PathBuf {
        self.0.join(name)
    }

    /// A copy of an example's home file.
    pub(crate) fn example(&self, name: &str) -> PathBuf {
        let from = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples").join(name);
        let to = self.path(name);
        std::fs::create_dir_all(&to).unwrap();
        std::fs::copy(from.join("home.ron"), to.join("home.ron")).unwrap();
        to
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        drop(std::fs::remove_dir_all(&self.0));
    }
}

/// Someone at the window, whose presses, drags and typed fields are counted.
pub(crate) struct Person {
    pub(crate) at: Harness<'static, App>,
    pub(crate) actions: u32,
}

impl Person {
    pub(crate) fn at(opening: Opening, size: [f32; 2]) -> Self {
        let app = App::new(opening, Catalogue::english()).on_day(Date::new(2026, 11, 25));
        let mut at = Harness::builder()
            .with_size(size)
            .with_max_steps(40)
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        at.run();
        Self { at, actions: 0 }
    }

    pub(crate) fn opened(folder: &Path) -> Self {
        Self::at(Opening::read(folder).unwrap(), [1280.0, 800.0])
    }

    pub(crate) fn home(&self) -> &Home {
        self.at.state().home()
    }

    pub(crate) fn press(&mut self, label: &str) {
        self.actions += 1;
        let all: Vec<_> = self.at.query_all_by_role_and_label(Role::Button, label).collect();
        let Some(node) = all.last() else { panic!("no {label}: {:?}", self.texts()) };
        node.scroll_to_me();
        drop(all);
        self.at.run();
        let all: Vec<_> = self.at.query_all_by_role_and_label(Role::Button, label).collect();
        all.last().unwrap().click();
        drop(all);
        self.at.run();
    }

    /// Presses the one of these two that tells what is taken back or made again.
    pub(crate) fn press_starting(&mut self, start: &str) {
        let texts = self.texts();
        let label = texts.iter().find(|text| text.starts_with(start));
        let label = label.unwrap_or_else(|| panic!("no {start}: {texts:?}")).clone();
        self.press(&label);
    }

    pub(crate) fn sees(&self, text: &str) -> bool {
        self.texts().iter().any(|seen| seen.contains(text))
    }

    pub(crate) fn texts(&self) -> Vec<String> {
        fn collect(node: Node<'_>, texts: &mut Vec<String>) {
            let inner = node.accesskit_node();
            texts.extend(inner.label());
            texts.extend(inner.value());
            node.children().for_each(|child| collect(child, texts));
        }
        let mut texts = Vec::new();
        collect(self.at.root(), &mut texts);
        texts
    }

    /// Types into a box in place of what stands there.
    pub(crate) fn type_into(&mut self, field: &str, text: &str) {
        self.actions += 1;
        self.at.get_by_role_and_label(Role::TextInput, field).scroll_to_me();
        self.at.run();
        self.at.get_by_role_and_label(Role::TextInput, field).focus();
        self.at.run();
        self.at.key_press_modifiers(Modifiers::COMMAND, Key::A);
        self.at.run();
        self.at.get_by_role_and_label(Role::TextInput, field).type_text(text);
        self.at.run();
    }

    fn pointer(&mut self, at: Pos2, pressed: Option<bool>) {
        self.button(at, PointerButton::Primary, pressed);
    }

    /// The same with the right button.
    pub(crate) fn other_pointer(&mut self, at: Pos2, pressed: Option<bool>) {
        self.button(at, PointerButton::Secondary, pressed);
    }

    fn button(&mut self, at: Pos2, button: PointerButton, pressed: Option<bool>) {
        self.at.event(Event::PointerMoved(at));
        if let Some(pressed) = pressed {
            let modifiers = Modifiers::NONE;
            self.at.event(Event::PointerButton { pos: at, button, pressed, modifiers });
        }
        self.at.run();
    }

    pub(crate) fn drag(&mut self, from: Pos2, to: Pos2) {
        self.actions += 1;
        self.pointer(from, None);
        self.pointer(from, Some(true));
        self.pointer(from.lerp(to, 0.5), None);
        self.pointer(to, None);
        self.pointer(to, Some(false));
    }

    pub(crate) fn click_at(&mut self, at: Pos2) {
        self.actions += 1;
        self.pointer(at, None);
        // In one go: a click that takes a second is none.
        for pressed in [true, false] {
            let (modifiers, button) = (Modifiers::NONE, PointerButton::Primary);
            self.at.event(Event::PointerButton { pos: at, button, pressed, modifiers });
        }
        self.at.run();
    }

    /// Where a point of the level is, in metres, on the drawing of it.
    pub(crate) fn on_board(&self, level: &str, part: [f32; 4], (x, y): (f32, f32)) -> Pos2 {
        let area = self.at.get_by_label(&format!("Drawing of {level}")).rect();
        let [left, top, width, height] = part;
        let scale = (area.width() / width).min(area.height() / height);
        // In the middle, and at the top.
        let corner = pos2(area.center().x - width * scale / 2.0, area.top());
        corner + vec2(x - left, y - top) * scale
    }

    /// Waits for a thread, until something is so.
    pub(crate) fn wait(&mut self, what: &str, is_so: impl Fn(&Self) -> bool) {
        for _ in 0..600 {
            self.at.run_ok();
            if is_so(self) {
                return;
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        panic!("never: {what}; {:?}", self.texts());
    }

    /// Lets go of a file over the window.
    pub(crate) fn drop_file(&mut self, file: &Path) {
        #[derive(Debug)]
        struct Dropped(PathBuf);
        impl egui::DroppedFile for Dropped {
            fn path(&self) -> &Path {
                &self.0
            }
            fn bytes(&self) -> Result<Vec<u8>, String> {
                std::fs::read(&self.0).map_err(|error| error.to_string())
            }
        }
        self.actions += 1;
        self.at.input_mut().dropped_files = vec![std::sync::Arc::new(Dropped(file.to_owned()))];
        self.at.run();
    }

    /// Begins a home in a folder.
    pub(crate) fn begin(&mut self, name: &str, folder: &Path) {
        self.press("Settings…");
        self.press("A new home…");
        self.type_into("Name of the home", name);
        self.type_into("Emergency number", "911");
        self.type_into("Folder that it is kept in", &folder.display().to_string());
        self.press("Metres and litres");
        self.press("Make this home");
        self.wait("a new home", |person| person.home().name == name);
        self.press("Rooms");
    }
}

/// The drawing of a level with nothing on it, and of one with something at its origin: left, top, width
/// and height in metres.
pub(crate) const EMPTY: [f32; 4] = [-1.0, -1.0, 14.0, 10.0];
pub(crate) const BEGUN: [f32; 4] = [-3.0, -3.0, 14.0, 10.0];

/// Left, top, right and bottom of a room, in whole centimetres.
pub(crate) fn centimetres(home: &Home, room: &str) -> [String; 4] {
    outline(home, room).map(|metres| format!("{:.0}", metres * 100.0))
}

pub(crate) fn outline(home: &Home, room: &str) -> [f64; 4] {
    let room = home.spaces.iter().find(|space| space.name == room);
    let outline = &room.unwrap_or_else(|| panic!("{:?}", home.spaces)).outline;
    let least = |pick: fn(&(f64, f64)) -> f64| outline.iter().map(pick).fold(f64::MAX, f64::min);
    let most = |pick: fn(&(f64, f64)) -> f64| outline.iter().map(pick).fold(f64::MIN, f64::max);
    [least(|p| p.0), least(|p| p.1), most(|p| p.0), most(|p| p.1)]
}
