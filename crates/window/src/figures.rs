//! Figures of devices: what one takes hold of, and which way it goes.
//!
//! [`Figure::of`] chooses from what the map knows of a device and from what a step does with it; the
//! words for those who do not see the figure come from the same choice.

mod pen;
mod power;
mod scenes;
mod valves;

use egui::{Painter, Rect, Response, Sense, Ui, Vec2, WidgetInfo, accesskit::Role};
use quarterturn_guidance::{Act, Catalogue, Fill, closes, count, fill};
use quarterturn_home::{Closes, Component, Handle, Kind};

use crate::tokens::Palette;
use pen::Pen;
use power::{GfciButton, Toggle};

/// What is done with a valve.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Motion {
    /// It is looked at.
    Rest,
    /// It is closed.
    Close,
    /// It is opened again.
    Open,
}

/// How far a valve goes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Travel {
    /// A quarter turn.
    Quarter,
    /// Several turns, or this many.
    Turns(Option<f64>),
}

/// What is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Figure {
    /// A lever over a pipe.
    Lever(Motion),
    /// A tee or butterfly handle.
    Tee(Motion),
    /// A small oval handle.
    Oval(Motion, Travel),
    /// A wheel, and how many turns it takes if that is known.
    Wheel(Motion, Option<f64>),
    /// A slot for a screwdriver.
    Slot(Motion, Travel),
    /// A square or nut turned from above with a key.
    Key(Motion, Travel),
    /// A cock turned with a wrench.
    GasCock(Motion),
    /// A knob that is pushed in (true) or pulled out.
    Plunger(Motion, bool),
    /// A valve whose handle is not known: both kinds.
    Either(Motion),
    /// A breaker.
    Breaker(Toggle),
    /// A switch with a lever at its side, that is worked or not.
    LeverSwitch(bool),
    /// A block that is pulled out, or not.
    PullOut(bool),
    /// A ground-fault outlet.
    Gfci(GfciButton),
    /// A button, pressed or not.
    Button(bool),
    /// A plug that is pulled.
    Plug,
    /// A wall switch, switched off or not.
    WallSwitch(bool),
    /// A thermostat, switched off or not.
    Thermostat(bool),
    /// A cap, unscrewed or not.
    Cap(bool),
    /// Someone who goes out.
    Leave,
    /// A telephone.
    Telephone,
    /// Not to be used.
    StopUse,
    /// An eye.
    Eye,
    /// Something to know.
    Note,
    /// A thing without a handle, by its kind.
    Thing(Kind),
}

impl Figure {
    /// The figure for what a step does with a device.
    pub(crate) fn of(component: Option<&Component>, act: Act) -> Self {
        match (act, component) {
            (Act::Leave, _) => Self::Leave,
            (Act::Call, _) => Self::Telephone,
            (Act::StopUse, _) => Self::StopUse,
            (Act::Unplug, _) => Self::Plug,
            (Act::OpenCap, _) => Self::Cap(true),
            (Act::Close, None) => Self::Either(Motion::Close),
            (Act::Open, None) => Self::Either(Motion::Open),
            (Act::SwitchOff, None) => Self::Breaker(Toggle::Off),
            (Act::Reset, None) => Self::Breaker(Toggle::Reset),
            (Act::Look, None) => Self::Eye,
            (Act::Advice, None) => Self::Note,
            (Act::Close, Some(component)) => Self::worked(component, Motion::Close),
            (Act::Open, Some(component)) => Self::worked(component, Motion::Open),
            (Act::SwitchOff, Some(component)) => Self::switched(component, Toggle::Off),
            (Act::Reset, Some(component)) => Self::switched(component, Toggle::Reset),
            (Act::Look | Act::Advice, Some(component)) => Self::at_rest(component),
        }
    }

    /// A valve that is closed or opened.
    fn worked(component: &Component, motion: Motion) -> Self {
        let operates = component.operates.as_ref();
        let handle = operates.and_then(|o| o.handle);
        let is_known = operates.is_some_and(|o| o.handle.is_some() || o.closes.is_some());
        let is_gas = matches!(component.kind, Kind::GasMeter | Kind::GasValve);
        let travel = match closes(component) {
            Closes::QuarterTurn => Travel::Quarter,
            Closes::MultiTurn if !is_known => return Self::Either(motion),
            Closes::MultiTurn => Travel::Turns(None),
            Closes::Turns(turns) => Travel::Turns(Some(turns)),
            // Opened the other way than it is closed.
            Closes::Push => return Self::Plunger(motion, motion != Motion::Open),
            Closes::Pull => return Self::Plunger(motion, motion == Motion::Open),
            Closes::ToOff => return Self::switched(component, Toggle::Off),
            Closes::Unscrew => return Self::Cap(motion != Motion::Rest),
        };
        match (handle, travel) {
            (Some(Handle::Knob), _) => Self::Oval(motion, travel),
            (Some(Handle::Slot), _) => Self::Slot(motion, travel),
            (Some(Handle::Key), Travel::Quarter) if is_gas => Self::GasCock(motion),
            (Some(Handle::Key), _) => Self::Key(motion, travel),
            (Some(Handle::Tee), Travel::Quarter) => Self::Tee(motion),
            (Some(Handle::Wheel), Travel::Quarter) => Self::Oval(motion, travel),
            (_, Travel::Quarter) => Self::Lever(motion),
            (_, Travel::Turns(count)) => Self::Wheel(motion, count),
        }
    }

    /// Something electrical that is switched off, reset or looked at.
    fn switched(component: &Component, toggle: Toggle) -> Self {
        let is_worked = toggle != Toggle::Rest;
        let handle = component.operates.as_ref().and_then(|o| o.handle);
        match (component.kind, handle) {
            (Kind::Gfci, _) => Self::Gfci(match toggle {
                Toggle::Rest => GfciButton::Rest,
                Toggle::Off => GfciButton::Test,
                Toggle::Reset => GfciButton::Reset,
            }),
            (_, Some(Handle::PullOut)) => Self::PullOut(is_worked),
            (_, Some(Handle::Button)) => Self::Button(is_worked),
            (_, Some(Handle::Lever)) => Self::LeverSwitch(is_worked),
            (Kind::Breaker, _) | (_, Some(Handle::Toggle)) => Self::Breaker(toggle),
            (Kind::Switch, _) => Self::WallSwitch(is_worked),
            (Kind::Thermostat, _) => Self::Thermostat(is_worked),
            (Kind::ServiceDisconnect | Kind::Disconnect | Kind::TransferSwitch, _) => {
                Self::LeverSwitch(is_worked)
            }
            _ if is_worked => Self::Breaker(toggle),
            (kind, _) => Self::Thing(kind),
        }
    }

    /// A device that is only looked at.
    fn at_rest(component: &Component) -> Self {
        match component.kind {
            Kind::IsolatingValve | Kind::GasValve => Self::worked(component, Motion::Rest),
            Kind::Cleanout => Self::Cap(false),
            _ => Self::switched(component, Toggle::Rest),
        }
    }

    /// Key of the words for it, less `window-figure-`, and the way it goes.
    fn key(self) -> (&'static str, &'static str) {
        let way = |motion: Motion| match motion {
            Motion::Rest => "rest",
            Motion::Close => "close",
            Motion::Open => "open",
        };
        let travel = |motion: Motion, travel: Travel| match (motion, travel) {
            (Motion::Rest, _) => "rest",
            (Motion::Close, Travel::Quarter) => "close",
            (Motion::Open, Travel::Quarter) => "open",
            (Motion::Close, Travel::Turns(_)) => "turns",
            (Motion::Open, Travel::Turns(_)) => "turns-open",
        };
        let worked = |is_worked: bool| if is_worked { "work" } else { "rest" };
        match self {
            Self::Lever(motion) => ("lever", way(motion)),
            Self::Tee(motion) => ("tee", way(motion)),
            Self::Oval(motion, far) => ("oval", travel(motion, far)),
            Self::Wheel(motion, count) => ("wheel", travel(motion, Travel::Turns(count))),
            Self::Slot(motion, far) => ("slot", travel(motion, far)),
            Self::Key(motion, far) => ("key", travel(motion, far)),
            Self::GasCock(motion) => ("gas-cock", way(motion)),
            Self::Plunger(Motion::Rest, _) => ("plunger", "rest"),
            Self::Plunger(_, true) => ("plunger", "push"),
            Self::Plunger(_, false) => ("plunger", "pull"),
            Self::Either(motion) => ("either", way(motion)),
            Self::Breaker(Toggle::Rest) => ("breaker", "rest"),
            Self::Breaker(Toggle::Off) => ("breaker", "off"),
            Self::Breaker(Toggle::Reset) => ("breaker", "reset"),
            Self::LeverSwitch(is) => ("lever-switch", worked(is)),
            Self::PullOut(is) => ("pull-out", worked(is)),
            Self::Gfci(GfciButton::Rest) => ("gfci", "rest"),
            Self::Gfci(GfciButton::Reset) => ("gfci", "reset"),
            Self::Gfci(GfciButton::Test) => ("gfci", "test"),
            Self::Button(is) => ("button", worked(is)),
            Self::Plug => ("plug", "work"),
            Self::WallSwitch(is) => ("wall-switch", worked(is)),
            Self::Thermostat(is) => ("thermostat", worked(is)),
            Self::Cap(is) => ("cap", worked(is)),
            Self::Leave => ("leave", "work"),
            Self::Telephone => ("telephone", "work"),
            Self::StopUse => ("stop-use", "work"),
            Self::Eye => ("look", "work"),
            Self::Note => ("note", "rest"),
            Self::Thing(_) => ("thing", "rest"),
        }
    }

    /// Draws it as large as it can be within `rect`.
    fn draw(self, pen: Pen<'_>) {
        match self {
            Self::Lever(motion) => valves::lever(pen, motion),
            Self::Tee(motion) => valves::tee(pen, motion),
            Self::Oval(motion, travel) => valves::oval(pen, motion, travel),
            Self::Wheel(motion, count) => valves::wheel(pen, motion, count),
            Self::Slot(motion, travel) => valves::slot(pen, motion, travel),
            Self::Key(motion, travel) => valves::key(pen, motion, travel),
            Self::GasCock(motion) => valves::gas_cock(pen, motion),
            Self::Plunger(motion, inwards) => valves::plunger(pen, motion, inwards),
            Self::Either(motion) => valves::either(pen, motion),
            Self::Breaker(toggle) => power::breaker(pen, toggle),
            Self::LeverSwitch(is) => power::lever_switch(pen, is),
            Self::PullOut(is) => power::pull_out(pen, is),
            Self::Gfci(button) => power::gfci(pen, button),
            Self::Button(is) => power::button(pen, is),
            Self::Plug => power::plug(pen),
            Self::WallSwitch(is) => power::wall_switch(pen, is),
            Self::Thermostat(is) => power::thermostat(pen, is),
            Self::Cap(is) => scenes::cap(pen, is),
            Self::Leave => scenes::leave(pen),
            Self::Telephone => scenes::telephone(pen),
            Self::StopUse => scenes::stop_use(pen),
            Self::Eye => scenes::eye(pen),
            Self::Note => scenes::note(pen),
            Self::Thing(kind) => thing(pen, kind),
        }
    }
}

/// Draws a device, and what a step does with it, into `rect`.
pub(crate) fn device(
    painter: &Painter,
    rect: Rect,
    component: Option<&Component>,
    act: Act,
    palette: &Palette,
) {
    let pen = Pen::new(painter, rect, palette);
    let figure = Figure::of(component, act);
    if act == Act::Look && component.is_some() {
        figure.draw(pen.within(0.0, 17.0, 83.0));
        scenes::eye_badge(pen);
    } else {
        figure.draw(pen);
    }
}

/// A figure on the page, as an image called `label`: see [`label`].
pub(crate) fn figure_ui(
    ui: &mut Ui,
    size: Vec2,
    component: Option<&Component>,
    act: Act,
    label: &str,
) -> Response {
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, label));
    if ui.is_rect_visible(rect) {
        device(ui.painter(), rect, component, act, Palette::of(ui));
    }
    response
}

/// A figure in words: what one takes hold of, and which way it goes.
pub(crate) fn label(words: &Catalogue, component: Option<&Component>, act: Act) -> String {
    let figure = Figure::of(component, act);
    let (key, way) = figure.key();
    let turns = match figure {
        Figure::Wheel(_, Some(turns))
        | Figure::Oval(_, Travel::Turns(Some(turns)))
        | Figure::Slot(_, Travel::Turns(Some(turns)))
        | Figure::Key(_, Travel::Turns(Some(turns))) => turns,
        _ => 0.0,
    };
    let name = component.map_or("", |component| component.name.as_str());
    let fills: [Fill<'_>; 3] = [fill("way", way), count("turns", turns), fill("device", name)];
    words.fill(&format!("window-figure-{key}"), &fills)
}

/// A thing without a handle.
fn thing(pen: Pen<'_>, kind: Kind) {
    match kind {
        Kind::Panel | Kind::JunctionBox | Kind::ElectricityService => power::panel(pen),
        Kind::Receptacle => power::outlet(pen),
        Kind::Light | Kind::Lampholder => power::light(pen),
        Kind::SmokeAlarm => scenes::alarm(pen),
        Kind::WaterMeter | Kind::GasMeter | Kind::ElectricityMeter => scenes::meter(pen),
        Kind::Sink | Kind::Basin | Kind::Bath => scenes::basin(pen),
        Kind::Tap | Kind::HoseBibb | Kind::MixingValve => scenes::tap(pen),
        Kind::Shower => scenes::shower(pen),
        Kind::Toilet => scenes::toilet(pen),
        Kind::FloorDrain | Kind::Standpipe => scenes::floor_drain(pen),
        Kind::SumpPit | Kind::EjectorPit | Kind::SumpPump => scenes::pit(pen),
        Kind::CondensatePan | Kind::FloatSwitch | Kind::CondensatePump => scenes::float(pen),
        Kind::WaterHeater => scenes::heater(pen),
        Kind::AirHandler => scenes::air_handler(pen),
        Kind::WashingMachine | Kind::Dishwasher => scenes::machine(pen),
        Kind::Pipe | Kind::SupplyHose | Kind::Trap | Kind::Stack | Kind::WaterMain => {
            scenes::pipe(pen);
        }
        _ => scenes::device(pen),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Operates;

    const ACTS: [Act; 11] = [
        Act::Leave,
        Act::Call,
        Act::Close,
        Act::Open,
        Act::SwitchOff,
        Act::Reset,
        Act::Unplug,
        Act::OpenCap,
        Act::StopUse,
        Act::Look,
        Act::Advice,
    ];
    const HANDLES: [Handle; 10] = [
        Handle::Lever,
        Handle::Wheel,
        Handle::Knob,
        Handle::Tee,
        Handle::Slot,
        Handle::Key,
        Handle::Button,
        Handle::Toggle,
        Handle::PullOut,
        Handle::Cap,
    ];
    const WAYS: [Closes; 7] = [
        Closes::QuarterTurn,
        Closes::MultiTurn,
        Closes::Turns(3.0),
        Closes::Push,
        Closes::Pull,
        Closes::ToOff,
        Closes::Unscrew,
    ];

    fn component(kind: Kind, handle: Option<Handle>, closes: Option<Closes>) -> Component {
        let operates = Operates { handle, closes, ..Operates::default() };
        Component { operates: Some(operates), ..Component::new("a", kind, "Device") }
    }

    fn valve(handle: Handle, closes: Option<Closes>) -> Component {
        component(Kind::IsolatingValve, Some(handle), closes)
    }

    /// Every device that a home file can tell of, and some that make no sense.
    fn every_device() -> impl Iterator<Item = Component> {
        let handles = || HANDLES.into_iter().map(Some).chain([None]);
        let ways = || WAYS.into_iter().map(Some).chain([None]);
        Kind::ALL.iter().flat_map(move |kind| {
            handles()
                .flat_map(move |handle| ways().map(move |closes| component(*kind, handle, closes)))
        })
    }

    #[test]
    fn the_handle_decides_what_is_drawn() {
        let close = |handle, closes| Figure::of(Some(&valve(handle, closes)), Act::Close);
        let close_as_usual = |handle| close(handle, None);
        assert_eq!(close_as_usual(Handle::Lever), Figure::Lever(Motion::Close));
        assert_eq!(close_as_usual(Handle::Tee), Figure::Tee(Motion::Close));
        assert_eq!(close_as_usual(Handle::Wheel), Figure::Wheel(Motion::Close, None));
        assert_eq!(
            close(Handle::Wheel, Some(Closes::Turns(3.0))),
            Figure::Wheel(Motion::Close, Some(3.0))
        );
        assert_eq!(
            close(Handle::Knob, Some(Closes::QuarterTurn)),
            Figure::Oval(Motion::Close, Travel::Quarter)
        );
        assert_eq!(
            close(Handle::Slot, Some(Closes::Turns(3.0))),
            Figure::Slot(Motion::Close, Travel::Turns(Some(3.0)))
        );
        assert_eq!(close_as_usual(Handle::Key), Figure::Key(Motion::Close, Travel::Quarter));
        let gas = component(Kind::GasValve, Some(Handle::Key), None);
        assert_eq!(Figure::of(Some(&gas), Act::Close), Figure::GasCock(Motion::Close));
    }

    #[test]
    fn what_the_map_does_not_know_is_drawn_both_ways() {
        let unknown = Component::new("a", Kind::IsolatingValve, "Valve");
        assert_eq!(Figure::of(Some(&unknown), Act::Close), Figure::Either(Motion::Close));
    }

    #[test]
    fn opening_goes_the_other_way() {
        let pushed = valve(Handle::Button, Some(Closes::Push));
        assert_eq!(Figure::of(Some(&pushed), Act::Close), Figure::Plunger(Motion::Close, true));
        assert_eq!(Figure::of(Some(&pushed), Act::Open), Figure::Plunger(Motion::Open, false));
        let lever = valve(Handle::Lever, None);
        assert_eq!(Figure::of(Some(&lever), Act::Open), Figure::Lever(Motion::Open));
    }

    #[test]
    fn a_breaker_is_reset_by_going_off_first() {
        let breaker = component(Kind::Breaker, Some(Handle::Toggle), Some(Closes::ToOff));
        assert_eq!(Figure::of(Some(&breaker), Act::Reset), Figure::Breaker(Toggle::Reset));
        let gfci = component(Kind::Gfci, Some(Handle::Button), Some(Closes::Push));
        assert_eq!(Figure::of(Some(&gfci), Act::Reset), Figure::Gfci(GfciButton::Reset));
        let pulled = component(Kind::Disconnect, Some(Handle::PullOut), Some(Closes::Pull));
        assert_eq!(Figure::of(Some(&pulled), Act::SwitchOff), Figure::PullOut(true));
    }

    #[test]
    fn every_figure_has_words_in_every_language() {
        for words in [Catalogue::english(), Catalogue::in_language("es")] {
            for act in ACTS {
                for component in every_device() {
                    let label = label(&words, Some(&component), act);
                    assert!(label.len() > 10 && !label.contains("window-"), "{act:?} {label}");
                    assert!(!label.contains('{'), "{label}");
                }
                let label = label(&words, None, act);
                assert!(label.len() > 10 && !label.contains("window-"), "{act:?} {label}");
            }
        }
    }

    #[test]
    fn no_figure_leaves_its_square_or_is_empty() {
        let ctx = egui::Context::default();
        let rect = Rect::from_min_size(egui::pos2(40.0, 60.0), Vec2::splat(96.0));
        let mut all: Vec<Component> = every_device().collect();
        all.dedup_by_key(|c| Figure::of(Some(c), Act::Close).key());
        ctx.set_fonts(crate::fonts::definitions());
        let frame = || {
            ctx.run_ui(egui::RawInput::default(), |ui| {
                // Fonts take effect with the second frame.
                if ui.ctx().cumulative_frame_nr() == 0 {
                    return;
                }
                for act in ACTS {
                    for component in &all {
                        device(ui.painter(), rect, Some(component), act, Palette::of(ui));
                    }
                }
            })
        };
        // What is not painted goes away with its textures.
        frame().textures_delta.clear();
        let mut output = frame();
        output.textures_delta.clear();
        assert!(!output.shapes.is_empty());
        for shape in &output.shapes {
            let drawn = shape.shape.visual_bounding_rect().intersect(shape.clip_rect);
            assert!(
                rect.expand(1.5).contains_rect(drawn) || drawn.is_negative(),
                "{drawn}: {:?}",
                shape.shape
            );
        }
    }
}
