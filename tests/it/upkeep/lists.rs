//! The list of what is due and the move-in list, over the example homes and over nothing.

use std::collections::BTreeSet;

use quarterturn_guidance::Catalogue;
use quarterturn_home::{Home, Kind, MovedIn};
use quarterturn_papers::PackExtras;
use quarterturn_upkeep::{Every, due, move_in_list};

use super::{day, home};
use crate::homes::{EXAMPLES, example};

fn moved(home: &Home) -> Vec<String> {
    let list = move_in_list(home, day("2026-06-05"), &Catalogue::english());
    list.into_iter().map(|item| item.id).collect()
}

#[test]
fn an_empty_home_has_nothing_due_and_lacks_only_its_numbers() {
    let empty = Home::default();
    let list = due(&empty, day("2026-06-05"), &Catalogue::english());
    assert!(list.is_empty());
    assert_eq!(moved(&empty), ["number"]);
    assert_eq!(moved(&home(r#"emergency_phone: "911""#)), Vec::<String>::new());
}

#[test]
fn no_component_is_asked_for_twice_by_the_same_job() {
    let words = Catalogue::english();
    for name in EXAMPLES {
        let home = example(name);
        let list = due(&home, day("2026-06-05"), &words);
        let mut ids = BTreeSet::new();
        for job in list.all() {
            assert!(ids.insert(job.id.clone()), "{name}: {} twice", job.id);
        }
        // Each GFCI is tested by one job, whoever wrote it down.
        for component in home.components.iter().filter(|c| c.kind == Kind::Gfci) {
            let tests: Vec<&str> = list
                .all()
                .filter(|job| job.how.as_deref() == Some(words.text("job-gfci-test-how").as_str()))
                .filter(|job| job.parts.iter().any(|part| part.id == component.id))
                .map(|job| job.id.as_str())
                .collect();
            assert_eq!(tests.len(), 1, "{name}: {} by {tests:?}", component.id);
        }
    }
}

#[test]
fn the_due_list_of_the_two_storey_house_by_hand() {
    let home = example("two-storey");
    let list = due(&home, day("2026-06-05"), &Catalogue::english());
    let of = |id: &str| list.all().find(|job| job.id == id).unwrap();
    // Last done 30 May, every three months.
    assert_eq!(of("filter").due, Some(day("2026-08-30")));
    assert_eq!(of("gfci-test").due, Some(day("2026-07-01")));
    // The file's job has no seasons: it comes a year after.
    assert_eq!(of("winter").due, Some(day("2026-10-20")));
    assert_eq!(of("flap").due, Some(day("2027-02-11")));
    // Valves that the two own jobs leave out stay with the built-in one: W29 was worked on 2 May.
    assert!(of("exercise").own && !of("exercise-more").own);
    let ids: Vec<&str> = list
        .all()
        .filter(|job| job.parts.iter().any(|part| part.id == "utility-sink-cold"))
        .map(|job| job.name.as_str())
        .collect();
    assert_eq!(ids, ["Close and open each water shutoff"]);
    // Ten years from September 2025, for the one alarm whose age is known.
    assert_eq!(of("alarm-replace").due, Some(day("2035-09-15")));
    assert_eq!(of("alarm-replace").parts.len(), 1);
    // A month before the first year is over.
    assert_eq!(of("warranty-workmanship").due, Some(day("2026-10-15")));
    assert!(list.all().all(|job| job.id != "warranty-drains-60-days"), "it is over");
    assert_eq!(of("directory").every, Every::Once);
    assert!(list.once.iter().any(|job| job.id == "directory"));
    // The utility's valve and the sprinklers' are nobody's to exercise.
    for id in ["curb-stop", "sprinkler-valve", "property-cleanout"] {
        let all = list.all().flat_map(|job| &job.parts);
        assert!(all.filter(|part| part.id == id).count() == 0, "{id}");
    }
}

#[test]
fn the_move_in_list_holds_what_the_map_holds() {
    let home = example("two-storey");
    let items = move_in_list(&home, day("2026-06-05"), &Catalogue::english());
    let of = |id: &str| items.iter().find(|item| item.id == id).unwrap_or_else(|| panic!("{id}"));
    let gfci = of("gfci-garage-gfci");
    let on_it: BTreeSet<&str> = gfci.parts.iter().skip(1).map(|part| part.id.as_str()).collect();
    // By hand, from the map: the half bath, both baths upstairs, both outdoor outlets, the freezer.
    for id in [
        "freezer-outlet",
        "freezer",
        "half-bath-outlet",
        "family-bath-outlet",
        "main-bath-outlet",
        "front-outlet",
        "back-outlet",
    ] {
        assert!(on_it.contains(id), "{id} is not among {on_it:?}");
    }
    assert!(!on_it.contains("kitchen-outlet-left"));
    // 6.4 m are 21 ft; 35 ft less two elbows of 5 ft are 25 ft.
    let duct = of("dryer-duct-dryer");
    assert!(duct.how.contains("21 ft") && duct.how.contains("25 ft"), "{}", duct.how);
    assert!(duct.how.starts_with("It is within the limit"), "{}", duct.how);
    assert_eq!(of("dryer-cover-dryer").done.as_ref().unwrap().by, "J. R.");
    for id in [
        "fan-box-living-fan-box",
        "account-thermostat",
        "account-garage-door",
        "washer-box-washer",
        "cleanout-house-cleanout",
        "shutoffs-mechanical",
        "warranty-systems",
    ] {
        assert!(of(id).done.is_none(), "{id}");
    }
    // The sewer utility's own cleanout is not for the household.
    assert!(items.iter().all(|item| item.id != "cleanout-property-cleanout"));
    let valves = of("shutoffs-mechanical");
    assert!(valves.parts.iter().all(|part| part.id != "sprinkler-valve"));
}

#[test]
fn a_duct_that_is_too_long_or_unmeasured_is_told_as_such() {
    let told = |duct: &str, units: &str| {
        let home = home(&format!(
            r#"units: {units}, components: [(id: "d", kind: Appliance, name: "Dryer", duct: {duct})]"#
        ));
        let items = move_in_list(&home, day("2026-06-05"), &Catalogue::english());
        items.into_iter().find(|item| item.id == "dryer-duct-d").unwrap().how
    };
    let long = told("(length_m: 7.9, quarter_elbows: 2)", "Si");
    assert!(long.starts_with("It is too long: 7.9 m") && long.contains("7.6 m"), "{long}");
    let open = told("(quarter_elbows: 1, eighth_elbows: 1)", "Us");
    // 35 − 5 − 2.5 ft.
    assert!(open.starts_with("Measure it") && open.contains("27.5 ft"), "{open}");
}

#[test]
fn a_tick_stays_with_its_item_and_the_pack_prints_it() {
    let mut home = example("flat");
    let open = moved(&home);
    assert!(open.len() > 10, "{open:?}");
    let distinct: BTreeSet<&String> = open.iter().collect();
    assert_eq!(distinct.len(), open.len(), "each item has its own id");
    home.move_in.push(MovedIn {
        item: open[0].clone(),
        on: day("2026-06-01"),
        by: "K. L.".to_owned(),
        note: Some("All found.".to_owned()),
    });
    for language in Catalogue::languages() {
        let words = Catalogue::in_language(language.tag);
        let extras = PackExtras::of_home(&home, day("2026-06-05"), &words);
        assert_eq!(extras.move_in.len(), open.len());
        assert!(extras.move_in[0].done && extras.move_in[0].note.contains("K. L."));
        assert!(extras.move_in.iter().skip(1).all(|line| !line.done));
        assert!(extras.due.is_sorted_by_key(|line| line.due));
        let lines =
            extras.move_in.iter().map(|l| &l.text).chain(extras.due.iter().map(|l| &l.note));
        for text in lines {
            assert!(!text.contains('[') && !text.contains('{'), "{text}");
        }
    }
}
