#![allow(warnings)]
#[path = "/tmp/shoot.rs"]
mod shoot;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::Catalogue;
use quarterturn_window::{App, Opening};
#[test]
fn shots() {
    for (name, w, h, zoom, dark, actions) in [
        ("a", 1280.0, 800.0, 1.0f32, false, vec!["When nothing is wrong…", "Map of the home", "Plans and rooms"]),
        ("b", 1280.0, 800.0, 2.0, true, vec!["When nothing is wrong…", "Map of the home", "Plans and rooms", "Doors and stairs"]),
        ("c", 1280.0, 800.0, 1.0, true, vec!["Settings…", "A new home…"]),
        ("d", 1280.0, 800.0, 1.0, true, vec!["When nothing is wrong…", "Map of the home", "Plans and rooms", "Doors and stairs"]),
        ("e", 1280.0, 800.0, 1.0, false, vec!["When nothing is wrong…", "Map of the home", "Plans and rooms", "Floors"]),
    ] {
        let size = egui::vec2(w, h);
        let tex = shoot::Textures::default();
        let home = Opening::built_in().home;
        let opening = if name == "a" || name == "b" { Opening::new(home, None, vec![]) } else { Opening::built_in() };
        let mut hx = Harness::builder()
            .with_size(size / zoom)
            .with_pixels_per_point(zoom)
            .with_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light })
            .with_max_steps(40)
            .renderer(tex.clone())
            .build_ui_state(|ui, app: &mut App| app.ui(ui), App::new(opening, Catalogue::english()));
        hx.run();
        for a in actions {
            let n = hx.query_all_by_role_and_label(Role::Button, a).last();
            let Some(n) = n else { eprintln!("no {a}"); continue };
            n.scroll_to_me();
            drop(n);
            hx.run_ok();
            hx.query_all_by_role_and_label(Role::Button, a).last().unwrap().click();
            hx.run_ok();
        }
        for _ in 0..20 { std::thread::sleep(std::time::Duration::from_millis(50)); hx.run_ok(); }
        let out = hx.output().shapes.clone();
        shoot::png(&hx.ctx, out, &tex, size / zoom, zoom, &format!("/tmp/pl_{name}.png"));
    }
}
