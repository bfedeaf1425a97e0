use super::*;
use quarterturn_guidance::Catalogue;
use quarterturn_home::{Level, Space};

/// A home of two floors; `id:Kind` on the ground floor, `id:Kind@z` upstairs at that height.
fn home(components: &[(&str, Kind, Option<f64>)], lines: &[(&str, &str, Medium)]) -> Home {
    let level = |id: &str, elevation_m| Level {
        id: id.to_owned(),
        name: id.to_owned(),
        elevation_m,
        plan: None,
    };
    let space = |id: &str, level: &str| -> Space {
        ron::from_str(&format!("(id: {id:?}, name: {id:?}, level: Some({level:?}))")).unwrap()
    };
    Home {
        levels: vec![level("ground", 0.0), level("upper", 2.8)],
        spaces: vec![space("down", "ground"), space("up", "upper")],
        components: components
            .iter()
            .map(|&(id, kind, up)| {
                let mut c = Component::new(id, kind, id);
                c.space = Some(if up.is_some() { "up" } else { "down" }.to_owned());
                c.at = Some((0.0, 0.0, up.unwrap_or(0.3)));
                c
            })
            .collect(),
        connections: lines.iter().map(|&(a, b, m)| Connection::new(a, b, m)).collect(),
        ..Home::default()
    }
}

fn why(home: &Home, from: &str, to: &str, carries: Medium) -> Option<Why> {
    let refusal = may_connect(home, from, to, carries).err()?;
    for language in Catalogue::languages() {
        let words = Catalogue::in_language(language.tag);
        for said in [&refusal.cause, &refusal.remedy] {
            let text = said.text(&words);
            assert!(!text.contains(['{', '[']), "{}: {text}", language.tag);
        }
    }
    Some(refusal.why)
}

#[test]
fn each_rule_is_told_by_itself() {
    use Medium::{ColdWater, Condensate, Gas, HotWater, Power, Waste};
    let home = home(
        &[
            ("street", Kind::WaterMain, None),
            ("line", Kind::Pipe, None),
            ("sink", Kind::Sink, None),
            ("trap", Kind::Trap, None),
            ("stack", Kind::Stack, None),
            ("sewer", Kind::SewerMain, None),
            ("drain-up", Kind::Pipe, Some(0.2)),
            ("panel", Kind::Panel, None),
            ("breaker", Kind::Breaker, None),
            ("outlet", Kind::Receptacle, None),
            ("lamp", Kind::Light, None),
            ("box", Kind::JunctionBox, None),
            ("toilet", Kind::Toilet, None),
            ("outside", Kind::CondensateOutlet, None),
            ("floor-drain", Kind::FloorDrain, None),
        ],
        &[
            ("street", "line", ColdWater),
            ("sink", "trap", Waste),
            ("trap", "stack", Waste),
            ("stack", "sewer", Waste),
            ("panel", "breaker", Power),
            ("breaker", "outlet", Power),
            ("outlet", "box", Power),
        ],
    );
    let is = |from, to, m, expected| assert_eq!(why(&home, from, to, m), expected, "{from} {to}");
    is("line", "nobody", ColdWater, Some(Why::NoSuchComponent));
    is("line", "line", ColdWater, Some(Why::ToItself));
    is("line", "outlet", ColdWater, Some(Why::CannotMeet));
    is("line", "sink", Waste, Some(Why::Mixes));
    is("street", "line", ColdWater, Some(Why::Duplicate));
    is("outlet", "breaker", Power, Some(Why::Duplicate));
    is("line", "street", ColdWater, Some(Why::Duplicate));
    is("sewer", "stack", Waste, Some(Why::DrainLoop));
    is("sewer", "drain-up", Waste, Some(Why::OutfallHasOutlet));
    is("stack", "trap", Waste, Some(Why::DrainLoop));
    is("trap", "drain-up", Waste, Some(Why::Uphill));
    is("drain-up", "stack", Waste, None);
    is("trap", "floor-drain", Waste, Some(Why::IntoFixture));
    is("sink", "toilet", Waste, Some(Why::IntoFixture));
    is("sink", "line", ColdWater, Some(Why::FixtureEndsIt));
    is("lamp", "breaker", Power, Some(Why::BackIntoPanel));
    is("box", "outlet", Power, Some(Why::Duplicate));
    is("line", "sink", HotWater, Some(Why::WrongWater));
    is("line", "sink", ColdWater, None);
    is("line", "toilet", Gas, Some(Why::Mixes));
    is("outside", "floor-drain", Condensate, Some(Why::OutfallHasOutlet));
}

#[test]
fn power_and_gas_never_run_in_a_circle_but_water_may() {
    let lines = |m| [("a", "b", m), ("b", "c", m)];
    let boxes = [
        ("a", Kind::JunctionBox, None),
        ("b", Kind::JunctionBox, None),
        ("c", Kind::JunctionBox, None),
    ];
    let wired = home(&boxes, &lines(Medium::Power));
    assert_eq!(why(&wired, "c", "a", Medium::Power), Some(Why::Circle));
    let pipes = boxes.map(|(id, _, at)| (id, Kind::Pipe, at));
    let water = home(&pipes, &lines(Medium::HotWater));
    assert_eq!(why(&water, "c", "a", Medium::HotWater), None);
    let gas = home(&pipes, &lines(Medium::Gas));
    assert_eq!(why(&gas, "c", "a", Medium::Gas), Some(Why::Circle));
    let drains = home(&pipes, &lines(Medium::Waste));
    assert_eq!(why(&drains, "c", "a", Medium::Waste), Some(Why::DrainLoop));
}

#[test]
fn a_pump_may_lift_and_a_battery_may_be_charged() {
    let home = home(
        &[
            ("pit", Kind::EjectorPit, None),
            ("pump", Kind::SumpPump, None),
            ("check", Kind::CheckValve, None),
            ("high", Kind::Pipe, Some(0.5)),
            ("panel", Kind::Panel, None),
            ("battery", Kind::Battery, None),
            ("service", Kind::ElectricityService, None),
        ],
        &[("pit", "pump", Medium::Waste), ("pump", "check", Medium::Waste)],
    );
    assert_eq!(why(&home, "check", "high", Medium::Waste), None);
    assert_eq!(why(&home, "panel", "battery", Medium::Power), None);
    assert_eq!(why(&home, "panel", "service", Medium::Power), Some(Why::SourceHasInlet));
}

#[test]
fn what_a_line_most_likely_carries_comes_first() {
    use Medium::{ColdWater, HotWater, Power, Waste};
    let home = home(
        &[
            ("heater", Kind::WaterHeater, None),
            ("cold", Kind::Pipe, None),
            ("hot stop", Kind::IsolatingValve, None),
            ("sink", Kind::Sink, None),
            ("trap", Kind::Trap, None),
            ("outlet", Kind::Receptacle, None),
            ("washer", Kind::WashingMachine, None),
            ("street", Kind::WaterMain, None),
        ],
        &[("street", "cold", ColdWater), ("cold", "heater", ColdWater)],
    );
    let first = |from, to| media_between(&home, from, to).first().copied();
    assert_eq!(first("heater", "hot stop"), Some(HotWater));
    assert_eq!(first("hot stop", "sink"), Some(HotWater));
    assert_eq!(first("cold", "sink"), Some(ColdWater));
    assert_eq!(first("sink", "trap"), Some(Waste));
    assert_eq!(first("outlet", "washer"), Some(Power));
    assert_eq!(media_between(&home, "outlet", "trap"), []);
    assert_eq!(media_between(&home, "nobody", "trap"), []);
    assert_eq!(first("outlet", "cold"), None);
}

#[test]
fn every_line_of_the_examples_may_be_drawn_and_is_among_the_likely_ones() {
    let homes = [
        include_str!("../../../../examples/two-storey/home.ron"),
        include_str!("../../../../examples/flat/home.ron"),
        include_str!("../../../../examples/old-house/home.ron"),
    ];
    for text in homes {
        let whole = quarterturn_home::open("home.ron", text).home.unwrap();
        let (mut first, mut all) = (0, 0);
        for index in 0..whole.connections.len() {
            let mut home = whole.clone();
            let line = home.connections.remove(index);
            let refusal = may_connect(&home, &line.from, &line.to, line.carries).err();
            assert_eq!(refusal, None, "{}", line.spot());
            let likely = media_between(&home, &line.from, &line.to);
            first += usize::from(likely.first() == Some(&line.carries));
            all += 1;
        }
        assert!(first * 10 >= all * 8, "{first} of {all} guessed");
    }
}
