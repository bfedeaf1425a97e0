use super::*;
use quarterturn_home::{Kind, OperableBy, open};

fn example() -> Home {
    open("home.ron", include_str!("../../../../examples/two-storey/home.ron")).home.unwrap()
}

fn all_said(missing: &Missing) {
    for language in Catalogue::languages() {
        let words = Catalogue::in_language(language.tag);
        for said in missing.list.iter().map(|item| &item.said).chain([&missing.said()]) {
            let text = said.text(&words);
            assert!(!text.contains(['{', '[']), "{}: {text}", language.tag);
        }
    }
}

#[test]
fn an_empty_home_begins_with_water_power_and_drain() {
    let missing = missing(&Home::default());
    assert_eq!((missing.percent(), missing.spots, missing.answered), (0, 3, 0));
    let keys: Vec<&str> = missing.list.iter().map(|item| item.said.key).take(5).collect();
    for key in
        ["missing-water-service", "missing-panel", "missing-house-drain", "missing-emergency-phone"]
    {
        assert!(keys.contains(&key), "{keys:?}");
    }
    assert_eq!(keys[0], "missing-water-service");
    all_said(&missing);
}

#[test]
fn the_example_is_nearly_complete() {
    let missing = missing(&example());
    assert!(missing.percent() >= 90, "{} {:#?}", missing.percent(), missing.list);
    all_said(&missing);
}

#[test]
fn a_toilet_whose_stop_is_forgotten_is_told_with_its_name() {
    let mut home = example();
    // The upstairs toilet hangs on the riser, and the riser's own valves are the plumber's.
    for valve in home.components.iter_mut().filter(|c| c.kind == Kind::IsolatingValve) {
        if valve.id != "family-toilet-stop" {
            valve.operable_by = OperableBy::Licensed;
        }
    }
    home.components.retain(|c| c.id != "family-toilet-stop");
    home.connections.retain(|l| l.to != "family-toilet-stop");
    for line in &mut home.connections {
        if line.from == "family-toilet-stop" {
            line.from = "cold-upper".to_owned();
        }
    }
    let missing = missing(&home);
    let at = |item: &Item| {
        item.protects.iter().any(|(_, at)| *at == Spot::Component("family-toilet".to_owned()))
    };
    let item = missing.list.iter().find(|item| at(item)).unwrap();
    assert!(matches!(item.fix, Fix::AddMain | Fix::AddShutoff { .. }), "{item:?}");
    all_said(&missing);
}

#[test]
fn what_helps_most_comes_first_and_doing_it_helps() {
    let mut home = example();
    // All but sprinklers and garden hang on one line that is missing.
    home.connections.retain(|l| !(l.from == "house-main" && l.to == "cold-trunk"));
    home.connections.retain(|l| l.to != "west-stack" || l.from != "main-bath-branch");
    let before = missing(&home);
    let feeds = |item: &&Item| matches!(&item.fix, Fix::Connect { id, lack: Lack::Feed, .. } if id == "cold-trunk");
    let item = before.list.iter().find(feeds).unwrap();
    let Fix::Connect { proposal: Some(proposal), .. } = &item.fix else { panic!("{item:#?}") };
    assert!(item.protects.len() > 3, "{item:#?}");
    let mut then = home.clone();
    then.connections.push(proposal.line.clone());
    let after = missing(&then);
    assert!(after.answered > before.answered + 3, "{} {}", before.answered, after.answered);
    assert!(before.list.iter().any(|item| matches!(&item.fix, Fix::Connect { id, lack: Lack::Drain, .. } if id == "main-bath-branch")));
    let helps: Vec<f64> = before.list.iter().map(|item| item.help).collect();
    assert!(helps.is_sorted_by(|a, b| a >= b), "{helps:?}");
    all_said(&before);
}

#[test]
fn a_bathroom_without_a_toilet_is_not_complete() {
    let mut home = example();
    home.components.retain(|c| c.id != "half-bath-toilet");
    home.connections.retain(|l| l.from != "half-bath-toilet" && l.to != "half-bath-toilet");
    let missing = missing(&home);
    let set = Fix::PlaceSet { set: "toilet", space: Some("half-bath".to_owned()) };
    assert!(missing.list.iter().any(|item| item.fix == set), "{:#?}", missing.list);
    all_said(&missing);
}

#[test]
fn outlets_without_a_breaker_are_one_search() {
    let mut home = example();
    home.connections.retain(|l| l.from != "br-living" && l.from != "br-kitchen-left");
    let missing = missing(&home);
    let item = missing.list.iter().find(|i| matches!(i.fix, Fix::FindBreakers { .. })).unwrap();
    assert!(item.protects.len() >= 4, "{item:#?}");
    all_said(&missing);
}
