//! What is typed of a device. It is on the map as soon as it makes sense; until then it is kept as it
//! was typed.

use egui::{TextEdit, Ui, vec2};
use quarterturn_home::{Component, Edit, Operates, Units};
use quarterturn_mapping::read_distance;

use super::Command;
use super::choose::say;
use crate::app::App;
use crate::ask::Command as Press;
use crate::controls::soft;
use crate::tokens::TOUCH;
use crate::view::View;

/// A foot in metres, exactly (NIST Special Publication 811, appendix B.8).
const FOOT: f64 = 0.3048;
/// A US gallon in litres, exactly (NIST Special Publication 811, appendix B.8).
const GALLON: f64 = 3.785_411_784;

/// Something of a device that is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Field {
    Name,
    Tag,
    Note,
    Height,
    Tool,
    Lamp,
    Circuit,
    Rating,
    Poles,
    Watts,
    Volume,
}

/// A field that is being typed into.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Typing {
    id: String,
    field: Field,
    text: String,
    /// False if what was typed makes no sense, or not yet.
    is_good: bool,
}

impl Field {
    fn key(self) -> &'static str {
        match self {
            Self::Name => "field-name",
            Self::Tag => "field-tag",
            Self::Note => "field-note",
            Self::Height => "field-height",
            Self::Tool => "field-tool",
            Self::Lamp => "field-lamp",
            Self::Circuit => "field-circuit",
            Self::Rating => "field-rating",
            Self::Poles => "field-poles",
            Self::Watts => "field-watts",
            Self::Volume => "field-volume",
        }
    }

    /// What the map says.
    fn read(self, component: &Component, units: Units) -> String {
        let words = |text: &Option<String>| text.clone().unwrap_or_default();
        let number = |value: Option<f64>| value.map_or_else(String::new, short);
        match self {
            Self::Name => component.name.clone(),
            Self::Tag => words(&component.tag),
            Self::Note => words(&component.note),
            Self::Height => component.at.map_or_else(String::new, |(_, _, z)| match units {
                Units::Si => format!("{} m", short(z)),
                Units::Us => format!("{} ft", short(z / FOOT)),
            }),
            Self::Tool => component.operates.as_ref().map_or_else(String::new, |o| words(&o.tool)),
            Self::Lamp => words(&component.lamp),
            Self::Circuit => words(&component.circuit),
            Self::Rating => number(component.rating_a),
            Self::Poles => component.poles.map_or_else(String::new, |poles| poles.to_string()),
            Self::Watts => number(component.watts),
            Self::Volume => number(component.volume_l.map(|litres| match units {
                Units::Si => litres,
                Units::Us => litres / GALLON,
            })),
        }
    }

    /// Writes what was typed into the device; false if it makes no sense.
    fn write(self, component: &mut Component, text: &str, units: Units) -> bool {
        let text = text.trim();
        let words = || (!text.is_empty()).then(|| text.to_owned());
        match self {
            Self::Name if text.is_empty() => return false,
            Self::Name => component.name = text.to_owned(),
            Self::Tag => component.tag = words(),
            Self::Note => component.note = words(),
            Self::Height => {
                let Some((x, y, _)) = component.at else { return false };
                let Some(z) = height(text, units) else { return false };
                component.at = Some((x, y, z));
            }
            Self::Tool => {
                component.operates.get_or_insert_with(Operates::default).tool = words();
            }
            Self::Lamp => component.lamp = words(),
            Self::Circuit => component.circuit = words(),
            Self::Rating => return number(text).map(|n| component.rating_a = n).is_some(),
            Self::Watts => return number(text).map(|n| component.watts = n).is_some(),
            Self::Volume => {
                let Some(volume) = number(text) else { return false };
                component.volume_l = volume.map(|volume| match units {
                    Units::Si => volume,
                    Units::Us => volume * GALLON,
                });
            }
            Self::Poles if text.is_empty() => component.poles = None,
            Self::Poles => match text.parse() {
                Ok(poles @ 1..=4) => component.poles = Some(poles),
                Ok(_) | Err(_) => return false,
            },
        }
        true
    }
}

/// A box for the field, with its name above.
pub(super) fn field_ui(
    ui: &mut Ui,
    view: &View<'_>,
    typing: Option<&Typing>,
    component: &Component,
    field: Field,
    out: &mut Vec<Press>,
) {
    let typing = typing.filter(|typing| typing.id == component.id && typing.field == field);
    let label = view.text(field.key());
    let mut text =
        typing.map_or_else(|| field.read(component, view.home.units), |typing| typing.text.clone());
    ui.add(egui::Label::new(soft(ui, &label)).wrap());
    let edit = if field == Field::Note {
        TextEdit::multiline(&mut text).desired_rows(2)
    } else {
        TextEdit::singleline(&mut text).align(egui::Align2::LEFT_CENTER)
    };
    let edit = edit
        .id_salt(("device-field", &component.id, field.key()))
        .desired_width(f32::INFINITY)
        .min_size(vec2(TOUCH, TOUCH));
    let response = ui.add(edit).accessible_name(label);
    if response.changed() {
        say(out, Command::Type(component.id.clone(), field, text));
    }
    if typing.is_some_and(|typing| !typing.is_good) {
        ui.add(egui::Label::new(view.text("field-no-sense")).wrap());
    }
    if response.lost_focus() {
        say(out, Command::Typed);
    }
}

/// Takes what was typed; all that is typed in a row is one undo.
pub(super) fn typed(app: &mut App, id: String, field: Field, text: String) {
    let home = app.history.home();
    let Some(component) = home.component(&id) else { return };
    let mut changed = component.clone();
    let is_good = field.write(&mut changed, &text, home.units);
    if is_good {
        let gesture = format!("{} {id}", field.key());
        let edit = match field {
            Field::Name => Edit::Rename { id: id.clone(), name: changed.name },
            Field::Tag => Edit::SetTag { id: id.clone(), tag: changed.tag },
            _ => Edit::PutComponent(Box::new(changed)),
        };
        app.edit_within(&gesture, edit);
    }
    app.map.walk.typing = Some(Typing { id, field, text, is_good });
}

/// A height; a bare number is in the home's unit. Below the floor it is negative.
fn height(text: &str, units: Units) -> Option<f64> {
    let (text, sign) = match text.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (rest.trim(), -1.0),
        None => (text, 1.0),
    };
    let bare = text.replace(',', ".").parse::<f64>().ok();
    let metres = match (bare, units) {
        (Some(number), Units::Si) => number,
        (Some(number), Units::Us) => number * FOOT,
        // No thing of a house stands at no height that could be told.
        (None, _) => read_distance(text).ok()?,
    };
    (metres.is_finite() && metres < 100.0).then_some(metres * sign)
}

/// A number that is not negative, or nothing; `None` if it is neither.
fn number(text: &str) -> Option<Option<f64>> {
    if text.is_empty() {
        return Some(None);
    }
    let number = text.replace(',', ".").parse::<f64>().ok()?;
    (number.is_finite() && number >= 0.0).then_some(Some(number))
}

/// A number with two digits after its point, and fewer where they are noughts.
fn short(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quarterturn_home::Kind;

    #[test]
    fn what_is_typed_is_read_back_and_nonsense_changes_nothing() {
        let mut heater = Component::new("heater", Kind::WaterHeater, "Heater");
        heater.at = Some((1.0, 2.0, 1.0));
        for (field, good, back, bad) in [
            (Field::Height, "3 ft 6 in", "3.5 ft", "high"),
            (Field::Height, "-2", "-2 ft", "1e999"),
            (Field::Volume, "50", "50", "-1"),
            (Field::Rating, "12,5", "12.5", "x"),
            (Field::Poles, "2", "2", "9"),
            (Field::Name, " Tank ", "Tank", " "),
        ] {
            assert!(field.write(&mut heater, good, Units::Us), "{field:?} {good}");
            assert_eq!(field.read(&heater, Units::Us), back);
            let before = heater.clone();
            assert!(!field.write(&mut heater, bad, Units::Us), "{field:?} {bad}");
            assert_eq!(heater, before);
        }
        // 50 US gallons are 189.27 litres (NIST Special Publication 811, appendix B.8).
        assert!((heater.volume_l.unwrap() - 189.27).abs() < 0.01);
        assert!(Field::Note.write(&mut heater, "  ", Units::Us));
        assert_eq!(heater.note, None);
    }
}
