//! A handful of pictures of the window, compared with those in `tests/snapshots`.
//!
//! They need a renderer (a software one will do) and are a step of their own:
//! `cargo test -p quarterturn-window --features pictures --test pictures`. Where nothing can render they
//! are skipped, and say so. `UPDATE_SNAPSHOTS=1` takes them anew.

use egui::Theme;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use quarterturn_guidance::Catalogue;
use quarterturn_home::Date;
use quarterturn_window::{App, Opening};

/// The window at its usual size, with its plans there; `None` where nothing can render.
fn window(theme: Theme, zoom: f32) -> Option<Harness<'static, App>> {
    let rendered = std::panic::catch_unwind(|| {
        let app =
            App::new(Opening::built_in(), Catalogue::english()).on_day(Date::new(2026, 11, 25));
        let mut harness = Harness::builder()
            .with_size([1280.0, 800.0])
            .with_max_steps(12)
            .with_theme(theme)
            .wgpu()
            .build_ui_state(|ui, app: &mut App| app.ui(ui), app);
        harness.ctx.set_zoom_factor(zoom);
        harness.run();
        harness.render().map(|_| harness)
    });
    match rendered {
        Ok(Ok(harness)) => Some(harness),
        Ok(Err(_)) | Err(_) => {
            println!("SKIPPED: nothing here can render, so that no picture was compared");
            None
        }
    }
}

fn press(harness: &mut Harness<'_, App>, label: &str) {
    harness.get_by_role_and_label(Role::Button, label).click();
    harness.run();
}

/// Plans are read on a thread of their own.
fn wait_for_plans(harness: &mut Harness<'_, App>) {
    for _ in 0..300 {
        harness.run();
        if harness.query_by_label("The picture is coming").is_none() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    harness.run();
}

const LEAK: &str = "Water is leaking, from a pipe, hose, valve, tap or appliance";

#[test]
fn first_page() {
    let Some(mut harness) = window(Theme::Light, 1.0) else { return };
    harness.snapshot("first-page");
}

#[test]
fn a_step_in_the_dark() {
    let Some(mut harness) = window(Theme::Dark, 1.0) else { return };
    press(&mut harness, LEAK);
    press(&mut harness, "Pin: Kitchen sink");
    wait_for_plans(&mut harness);
    harness.snapshot("step-dark");
}

#[test]
fn whom_to_call_at_twice_the_size() {
    let Some(mut harness) = window(Theme::Light, 2.0) else { return };
    let label = harness.get_by_role_and_label(Role::Button, LEAK);
    label.scroll_to_me();
    harness.run();
    press(&mut harness, LEAK);
    let unknown = "I don’t know where";
    harness.get_by_role_and_label(Role::Button, unknown).scroll_to_me();
    harness.run();
    press(&mut harness, unknown);
    harness.get_by_role_and_label(Role::Button, "Call").scroll_to_me();
    harness.run();
    press(&mut harness, "Call");
    assert!(harness.get_by_label("Call").accesskit_node().label().is_some());
    harness.snapshot("call-twice");
}
