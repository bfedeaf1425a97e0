//! The sheets tell what the answers and the map tell.

use quarterturn_guidance::{Act, Catalogue, Question, Signal, Spot, Trouble, answer_on};
use quarterturn_home::{Home, Kind, Net};
use quarterturn_papers::Sheet;

use super::{printed, squeezed, text};

fn asked(home: &Home, trouble: Trouble, language: &str) -> quarterturn_guidance::Answer {
    let question =
        Question { trouble, at: Spot::Home, from: None, failed: Vec::new(), seen: Vec::new() };
    let words = Catalogue::find(language).unwrap();
    answer_on(home, &question, &words, Some("2026-11-25".parse().unwrap()))
}

#[test]
fn the_fridge_door_tells_what_the_screen_tells() {
    for example in ["two-storey", "flat", "old-house"] {
        for language in ["en", "es"] {
            let (home, sheet) = printed(example, Sheet::Fridge, language);
            let told = text(&sheet);
            for &trouble in Trouble::ALL.iter().filter(|t| t.is_leave_first()) {
                let answer = asked(&home, trouble, language);
                for step in answer.steps.iter().filter(|s| matches!(s.act, Act::Leave | Act::Call))
                {
                    assert!(told.contains(&squeezed(&step.text)), "{example}: {}", step.text);
                }
                let danger = answer.cautions.iter().find(|c| c.signal == Signal::Danger).unwrap();
                assert!(told.contains(&squeezed(&danger.text)), "{example}: {}", danger.text);
            }
            for trouble in [Trouble::Leak, Trouble::Shock, Trouble::Sparks, Trouble::WaterNearPower]
            {
                let answer = asked(&home, trouble, language);
                let first = &answer.steps[0].text;
                let at = told.find(&squeezed(first));
                let at = at.unwrap_or_else(|| panic!("{example} {language}: no {first}"));
                // What could hurt stands before the first act at a device. Where no device that anyone may
                // work helps, as in the old house, there is none.
                let act = answer.steps.iter().find_map(|step| {
                    step.component.as_ref()?;
                    told.find(&squeezed(&step.text))
                });
                assert!(act.is_some() || example == "old-house", "{example} {trouble:?}");
                let act = act.unwrap_or(at);
                for danger in answer.cautions.iter().filter(|c| c.signal == Signal::Danger) {
                    let danger = told.find(&squeezed(&danger.text));
                    assert!(danger.is_some_and(|danger| danger < act), "{example} {trouble:?}");
                }
                assert!(at <= act);
            }
        }
    }
}

#[test]
fn the_first_page_of_the_fridge_door_has_what_one_runs_to_it_for() {
    for example in ["two-storey", "flat", "old-house"] {
        let (home, sheet) = printed(example, Sheet::Fridge, "en");
        let first: String =
            sheet.text_boxes().into_iter().filter(|t| t.page == 0).map(|t| t.text).collect();
        let first = squeezed(&first);
        let words = Catalogue::english();
        let mut wanted = vec![
            home.name.clone(),
            home.address.clone().unwrap(),
            home.emergency_phone.clone().unwrap(),
            words.text("caution-local-codes"),
        ];
        // Each number that an answer ends with.
        let call = asked(&home, Trouble::Fire, "en").call;
        wanted.extend(call.into_iter().filter_map(|call| call.phone));
        for text in wanted {
            assert!(first.contains(&squeezed(&text)), "{example}: no {text}");
        }
        // What is done first is large enough to be read from a metre.
        let big = sheet.text_boxes().into_iter().filter(|t| t.page == 0 && t.size >= 11.0);
        assert!(big.count() > 20, "{example}");
    }
}

#[test]
fn every_sheet_ends_with_the_numbers_and_the_codes() {
    for language in ["en", "es"] {
        // The log's page is there only where something was written down.
        for sheet in [Sheet::Fridge, Sheet::Panels, Sheet::Valves, Sheet::Tags, Sheet::Pack] {
            let (home, sheet) = printed("two-storey", sheet, language);
            let told = text(&sheet);
            let words = Catalogue::find(language).unwrap();
            let codes = squeezed(&words.text("caution-local-codes"));
            assert!(told.contains(&codes));
            for call in asked(&home, Trouble::Fire, language).call {
                assert!(told.contains(&squeezed(&call.phone.unwrap())), "{}", call.name);
            }
        }
    }
}

/// Every circuit with its purpose, two of the two-storey house's panels and the others' boards (NFPA
/// 70, 408.4(A)).
#[test]
fn the_directory_has_every_breaker_of_the_map_and_names_the_empty_spaces() {
    for example in ["two-storey", "flat", "old-house"] {
        let (home, sheet) = printed(example, Sheet::Panels, "en");
        let told = text(&sheet);
        for breaker in home.components.iter().filter(|c| c.kind == Kind::Breaker) {
            assert!(told.contains(&squeezed(&breaker.name)), "{example}: no {}", breaker.name);
        }
        for panel in home.components.iter().filter(|c| c.kind == Kind::Panel) {
            assert!(told.contains(&squeezed(&panel.name)), "{example}: no {}", panel.name);
        }
    }
    // The main panel of the two-storey house has nothing in space 23, opposite the range.
    let (home, sheet) = printed("two-storey", Sheet::Panels, "en");
    let taken = home.components.iter().filter(|c| c.panel.as_deref() == Some("main-panel"));
    let taken: Vec<String> = taken
        .filter_map(|c| c.circuit.clone())
        .flat_map(|c| c.split(',').map(str::to_owned).collect::<Vec<_>>())
        .collect();
    let last = 24;
    let empty = (1..=last).filter(|n: &i32| !taken.contains(&n.to_string())).count();
    let told = text(&sheet);
    let named = told.matches(&squeezed("Empty space")).count();
    // The sub-panel's spaces 1 to 6 are all taken.
    assert_eq!(named, empty);
    assert!(told.contains(&squeezed("GFCI on this circuit")), "protection is marked");
}

/// A breaker of two poles takes two rows on its side: its number's neighbour below has no text of
/// its own.
#[test]
fn the_columns_of_the_directory_are_in_the_order_of_the_panel() {
    let (_, sheet) = printed("two-storey", Sheet::Panels, "en");
    let boxes = sheet.text_boxes();
    let numbers: Vec<(u32, f64, f64)> = boxes
        .iter()
        .filter(|t| t.page == 0 && t.size > 11.5 && t.size < 12.5)
        .filter_map(|t| Some((t.text.parse().ok()?, t.bounds[0], t.bounds[1])))
        .collect();
    let at = |number: u32| numbers.iter().find(|(n, _, _)| *n == number).copied().unwrap();
    for odd in (1..12).step_by(2) {
        let ((_, left, top), (_, right, beside)) = (at(odd), at(odd + 1));
        assert!(left < right, "{odd} stands left of {}", odd + 1);
        assert!((top - beside).abs() < 60.0, "{odd} and {} stand side by side", odd + 1);
        assert!(at(odd + 2).2 > top, "{} stands below {odd}", odd + 2);
    }
}

#[test]
fn the_valve_list_has_all_that_is_worked_by_hand_and_how_it_closes() {
    for example in ["two-storey", "flat", "old-house"] {
        let (home, sheet) = printed(example, Sheet::Valves, "en");
        let told = text(&sheet);
        let words = Catalogue::english();
        for device in &home.components {
            let is_valve = Net::ALL.iter().any(|net| device.kind.isolates(*net));
            if (is_valve && device.kind != Kind::Breaker) || device.kind == Kind::Cleanout {
                let how = quarterturn_guidance::how_to_close(device, &words);
                for part in [&device.name, &how] {
                    assert!(told.contains(&squeezed(part)), "{example}: no {part}");
                }
            }
        }
    }
}

#[test]
fn the_pack_has_every_device_party_warranty_and_job() {
    let (home, sheet) = printed("two-storey", Sheet::Pack, "en");
    let told = text(&sheet);
    let names = home.components.iter().map(|c| &c.name);
    let names = names.chain(home.contacts.iter().map(|c| &c.name));
    let names = names.chain(home.warranties.iter().map(|w| &w.name));
    for name in names.chain(home.jobs.iter().map(|job| &job.name)) {
        assert!(told.contains(&squeezed(name)), "no {name}");
    }
    for finding in quarterturn_guidance::check(&home, &Catalogue::english()) {
        assert!(told.contains(&squeezed(&finding.text)), "no {}", finding.text);
    }
}

/// The order of reading is the order of need: out first, then the acts, then the numbers.
#[test]
fn what_is_read_first_comes_first() {
    let (home, sheet) = printed("two-storey", Sheet::Fridge, "en");
    let told = text(&sheet);
    let at = |text: &str| told.find(&squeezed(text)).unwrap_or_else(|| panic!("no {text}"));
    let words = Catalogue::english();
    let leave = at(&words.text("paper-leave"));
    let leak = at(&words.text("trouble-leak"));
    let codes = at(&words.text("caution-local-codes"));
    assert!(at(&home.name) < leave && leave < leak && leak < codes);
}
