//! The phone page: what it shows is what the program answers, in every language and down every
//! branch; nothing typed becomes code; the same home and day give the same bytes.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::ControlFlow;
use std::sync::OnceLock;

use quarterturn_guidance::{
    Answer, Catalogue, Question, Seen, Signal, Spot, Trouble, answer_on, spots,
};
use quarterturn_home::{
    Component, Connection, Contact, Date, Home, Kind, Level, Medium, Space, open,
};
use quarterturn_papers::{NoPhonePage, phone_page};
use serde_json::Value;

fn day() -> Date {
    Date::new(2026, 11, 25).unwrap()
}

fn example(name: &str) -> Home {
    let path = format!("{}/../examples/{name}/home.ron", env!("CARGO_MANIFEST_DIR"));
    let bytes = std::fs::read(path).unwrap();
    open("home.ron", std::str::from_utf8(&bytes).unwrap()).home.unwrap()
}

/// The pages of the examples with their plans, each made once for all the tests.
fn page_of(name: &str) -> &'static str {
    static PAGES: [(&str, OnceLock<String>); 3] = [
        ("two-storey", OnceLock::new()),
        ("flat", OnceLock::new()),
        ("old-house", OnceLock::new()),
    ];
    let (_, page) = PAGES.iter().find(|(known, _)| *known == name).unwrap();
    page.get_or_init(|| {
        let home = example(name);
        let mut pictures = BTreeMap::new();
        for plan in home.levels.iter().filter_map(|level| level.plan.as_ref()) {
            let root = env!("CARGO_MANIFEST_DIR");
            let path = format!("{root}/../examples/{name}/{}", plan.picture);
            pictures.insert(plan.picture.clone(), std::fs::read(path).unwrap());
        }
        let page =
            phone_page(&home, &pictures, day(), &mut |_, _| ControlFlow::Continue(())).unwrap();
        assert!(page.unreadable_pictures.is_empty(), "{:?}", page.unreadable_pictures);
        page.html
    })
}

fn html(home: &Home) -> String {
    phone_page(home, &BTreeMap::new(), day(), &mut |_, _| ControlFlow::Continue(())).unwrap().html
}

/// The data of a page, read as its script reads it.
struct Page {
    data: Value,
    language: usize,
}

impl Page {
    fn of(page: &str) -> Self {
        let (_, rest) = page.split_once("id=\"data\">").unwrap();
        let (json, _) = rest.split_once("</script>").unwrap();
        Self { data: serde_json::from_str(json).unwrap(), language: 0 }
    }

    fn row(&self, table: &str, n: i64) -> Vec<i64> {
        let row = &self.data[table][usize::try_from(n).unwrap()];
        row.as_array().unwrap().iter().map(|v| v.as_i64().unwrap()).collect()
    }

    fn word(&self, n: i64) -> String {
        if n < 0 {
            return String::new();
        }
        let words = &self.data["words"][self.language];
        words[usize::try_from(n).unwrap()].as_str().unwrap().to_owned()
    }

    fn words(&self, list: i64) -> Vec<String> {
        self.row("lists", list).into_iter().map(|n| self.word(n)).collect()
    }

    /// The node at which a trouble at the nth spot begins.
    fn root(&self, trouble: Trouble, nth: usize) -> i64 {
        let all = self.data["troubles"].as_array().unwrap();
        let found = all.iter().find(|t| t[0] == trouble.id()).unwrap();
        found[6][nth][2].as_i64().unwrap()
    }

    /// Where a node leads: when a step's device refuses, when nothing helped, when a check shows
    /// something.
    fn refused(&self, node: i64) -> BTreeMap<usize, i64> {
        let pairs = self.row("lists", self.row("nodes", node)[1]);
        pairs.chunks(2).map(|pair| (usize::try_from(pair[0]).unwrap(), pair[1])).collect()
    }

    fn shown(&self, node: i64) -> Vec<(String, i64)> {
        let pairs = self.row("lists", self.row("nodes", node)[3]);
        pairs.chunks(2).map(|pair| (self.word(pair[0]), pair[1])).collect()
    }
}

/// All that a node tells, held against the answer that the program gives.
fn assert_same(page: &Page, home: &Home, node: i64, expected: &Answer, context: &str) {
    let row = page.row("answers", page.row("nodes", node)[0]);
    assert_eq!(row[0] == 1, expected.mapped, "{context}");
    let cautions: Vec<(i64, String)> = page
        .row("lists", row[1])
        .into_iter()
        .map(|n| page.row("cautions", n))
        .map(|caution| (caution[0], page.word(caution[1])))
        .collect();
    let signal = |signal: Signal| match signal {
        Signal::Danger => 0,
        Signal::Warning => 1,
        Signal::Caution => 2,
        Signal::Notice => 3,
    };
    let told: Vec<(i64, String)> =
        expected.cautions.iter().map(|c| (signal(c.signal), c.text.clone())).collect();
    assert_eq!(cautions, told, "{context}");
    let id =
        |n: i64| usize::try_from(n).ok().and_then(|n| home.components.get(n)).map(|c| c.id.clone());
    let steps: Vec<(String, Option<String>, Option<String>)> = page
        .row("lists", row[2])
        .into_iter()
        .map(|n| page.row("steps", n))
        .map(|step| (page.word(step[0]), (step[1] >= 0).then(|| page.word(step[1])), id(step[2])))
        .collect();
    let told: Vec<(String, Option<String>, Option<String>)> = expected
        .steps
        .iter()
        .map(|s| (s.text.clone(), s.prove.clone(), s.component.clone()))
        .collect();
    assert_eq!(steps, told, "{context}");
    let calls: Vec<(String, String, String)> = page
        .row("lists", row[3])
        .into_iter()
        .map(|n| page.row("calls", n))
        .map(|call| (page.word(call[0]), page.word(call[1]), page.word(call[3])))
        .collect();
    let told: Vec<(String, String, String)> = expected
        .call
        .iter()
        .map(|c| (c.name.clone(), c.phone.clone().unwrap_or_default(), c.why.clone()))
        .collect();
    assert_eq!(calls, told, "{context}");
    assert_eq!(page.words(row[4]), expected.restore, "{context}");
    let sets: Vec<Vec<String>> = page
        .row("lists", row[5])
        .into_iter()
        .map(|n| page.row("lists", page.row("sets", n)[0]))
        .map(|parts| parts.into_iter().filter_map(id).collect())
        .collect();
    let told: Vec<Vec<String>> =
        expected.sets_to_tell().skip(1).map(|set| set.close.clone()).collect();
    assert_eq!(sets, told[..sets.len()], "{context}");
    assert!(sets.len() == told.len().min(5), "{context}");
    let suspects: Vec<String> =
        page.row("lists", row[6]).chunks(2).filter_map(|pair| id(pair[0])).collect();
    let told: Vec<String> = expected.suspects.iter().take(6).map(|s| s.component.clone()).collect();
    assert_eq!(suspects, told, "{context}");
    let check =
        (row[7] >= 0).then(|| page.row("checks", row[7])).map(|c| (id(c[0]), page.word(c[1])));
    let told =
        expected.next_check.as_ref().map(|c| (Some(c.component.clone()), c.look_for.clone()));
    assert_eq!(check, told, "{context}");
    let relief = page.words(row[8]);
    match &expected.relief {
        None => assert!(relief.is_empty(), "{context}"),
        Some(told) => {
            let lines = usize::from(told.open.is_some())
                + usize::from(told.rod_from.is_some())
                + usize::from(!told.emerges_at.is_empty())
                + told.blocked_between.len();
            assert_eq!(relief.len(), lines, "{context}");
        }
    }
}

fn question(trouble: Trouble, at: &Spot) -> Question {
    Question { trouble, at: at.clone(), from: None, failed: Vec::new(), seen: Vec::new() }
}

/// The spots of a trouble as the page has them.
fn spots_of_page(home: &Home, trouble: Trouble) -> Vec<Spot> {
    let mut list = spots(home, trouble);
    if !list.contains(&Spot::Home) {
        list.push(Spot::Home);
    }
    list
}

#[test]
fn the_page_shows_what_the_program_answers() {
    for name in ["two-storey", "flat", "old-house"] {
        let home = example(name);
        let mut page = Page::of(page_of(name));
        let mut compared = 0;
        for (language, words) in Catalogue::languages().iter().enumerate() {
            let words = Catalogue::in_language(words.tag);
            page.language = language;
            for &trouble in Trouble::ALL {
                let all = spots_of_page(&home, trouble);
                // Every spot would take minutes without optimisation; each trouble has a first, a
                // last, and some between.
                for nth in (0..all.len()).step_by(7).chain([all.len() - 1]) {
                    let asked = question(trouble, &all[nth]);
                    let expected = answer_on(&home, &asked, &words, Some(day()));
                    let context = format!("{name}: {asked:?} in {}", words.language());
                    assert_same(&page, &home, page.root(trouble, nth), &expected, &context);
                    compared += 1;
                }
            }
        }
        assert!(compared > 60, "{name}: {compared}");
    }
}

/// Devices that refuse one after the other, down to the last that the page follows.
#[test]
fn branches_lead_where_the_program_leads() {
    for name in ["two-storey", "flat", "old-house"] {
        let home = example(name);
        let page = Page::of(page_of(name));
        let words = Catalogue::english();
        let (mut followed, mut deepest) = (0, 0);
        for trouble in [Trouble::Leak, Trouble::Sparks, Trouble::SewageRising, Trouble::Shock] {
            let all = spots_of_page(&home, trouble);
            for nth in (0..all.len()).step_by(5) {
                let mut asked = question(trouble, &all[nth]);
                let mut node = page.root(trouble, nth);
                loop {
                    let expected = answer_on(&home, &asked, &words, Some(day()));
                    assert_same(&page, &home, node, &expected, &format!("{name}: {asked:?}"));
                    // A different device in each round, so that not only first steps are refused.
                    let refused = page.refused(node);
                    let Some((&step, &next)) =
                        refused.iter().nth(asked.failed.len() % refused.len().max(1))
                    else {
                        break;
                    };
                    asked.failed.push(expected.steps[step].component.clone().unwrap());
                    node = next;
                    followed += 1;
                    deepest = deepest.max(asked.failed.len());
                }
            }
        }
        assert!(followed > 20 && deepest >= 2, "{name}: {followed} {deepest}");
    }
}

/// What a check shows leads to the answer of someone who saw that.
#[test]
fn checks_lead_where_the_program_leads() {
    let home = example("two-storey");
    let page = Page::of(page_of("two-storey"));
    let words = Catalogue::english();
    let mut followed = 0;
    for trouble in [Trouble::DeadOutlet, Trouble::SewageRising, Trouble::NoWater] {
        let all = spots_of_page(&home, trouble);
        for nth in (0..all.len()).step_by(4) {
            let asked = question(trouble, &all[nth]);
            let node = page.root(trouble, nth);
            let Some(check) = answer_on(&home, &asked, &words, Some(day())).next_check else {
                assert!(page.shown(node).is_empty(), "{asked:?}");
                continue;
            };
            for (said, next) in page.shown(node) {
                let seen = match said.as_str() {
                    "It has power" | "Water comes" | "It gets hot" => Seen::Live,
                    "It has no power" | "No water" | "It stays cold" => Seen::Dead,
                    "It drains well" => Seen::Drains,
                    "It backs up" => Seen::BacksUp,
                    "Water stands there" => Seen::Wet,
                    "It is dry" => Seen::Dry,
                    "It is on" | "It is open" => Seen::On,
                    "It is off" | "It is shut" => Seen::Off,
                    "It has tripped" => Seen::Tripped,
                    other => panic!("{other}"),
                };
                let asked =
                    Question { seen: vec![(check.component.clone(), seen)], ..asked.clone() };
                let expected = answer_on(&home, &asked, &words, Some(day()));
                assert_same(&page, &home, next, &expected, &format!("{asked:?}"));
                followed += 1;
            }
        }
    }
    assert!(followed > 10, "{followed}");
}

#[test]
fn every_row_names_rows_that_there_are() {
    let page = Page::of(page_of("two-storey"));
    let count = |table: &str| page.data[table].as_array().unwrap().len();
    let words = page.data["words"].as_array().unwrap();
    assert_eq!(words.len(), Catalogue::languages().len());
    let number = |text: &Value| text.as_array().unwrap().len();
    assert!(words.iter().all(|language| number(language) == number(&words[0])));
    let mut reached = BTreeSet::new();
    let mut waiting: Vec<i64> = page.data["troubles"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|t| t[6].as_array().unwrap().iter().map(|spot| spot[2].as_i64().unwrap()))
        .collect();
    while let Some(node) = waiting.pop() {
        if reached.insert(node) {
            let row = page.row("nodes", node);
            waiting.extend(page.refused(node).values());
            waiting.extend(page.shown(node).into_iter().map(|(_, there)| there));
            waiting.extend((row[2] >= 0).then_some(row[2]));
        }
    }
    assert_eq!(reached.len(), count("nodes"), "nodes that nothing leads to");
    assert!(count("nodes") > 1000 && count("answers") <= count("nodes"));
}

/// A home whose every text tries to be more than text.
fn hostile() -> Home {
    let nasty = "<script>alert(1)</script>";
    let nastier = "</script><!--<script>\"' onload='x' \u{2028}\u{2029} &amp; [[script]] ]]>";
    let space = |id: &str, name: &str| Space {
        id: id.to_owned(),
        name: name.to_owned(),
        level: Some("ground".to_owned()),
        outline: vec![(0.0, 0.0), (4.0, 0.0), (4.0, 3.0)],
        outdoors: false,
    };
    let part = |id: &str, kind: Kind, name: &str| Component {
        space: Some("a".to_owned()),
        tag: Some(nastier.to_owned()),
        note: Some(format!("{nasty}{nastier}")),
        ..Component::new(id, kind, name)
    };
    Home {
        format: 1,
        name: format!("{nastier}{nasty}"),
        address: Some(nastier.to_owned()),
        emergency_phone: Some(format!("911{nasty}")),
        levels: vec![Level {
            id: "ground".to_owned(),
            name: nasty.to_owned(),
            elevation_m: 0.0,
            plan: None,
        }],
        spaces: vec![space("a", nasty), space("b", nastier)],
        components: vec![
            part("street", Kind::WaterMain, nasty),
            part("main", Kind::IsolatingValve, nastier),
            part("sink", Kind::Sink, nasty),
        ],
        connections: vec![
            Connection::new("street", "main", Medium::ColdWater),
            Connection::new("main", "sink", Medium::ColdWater),
        ],
        contacts: vec![Contact {
            id: "plumber".to_owned(),
            name: nastier.to_owned(),
            phone: Some("\"><script>alert(2)</script>".to_owned()),
            role: None,
            hours: None,
            note: None,
        }],
        ..Home::default()
    }
}

#[test]
fn nothing_typed_becomes_code() {
    let page = html(&hostile());
    // The page's own: its data and its script, one policy, no more.
    let lower = page.to_lowercase();
    assert_eq!(lower.matches("<script").count(), 2);
    assert_eq!(lower.matches("</script").count(), 2);
    assert_eq!(lower.matches("<!--").count(), 0);
    assert_eq!(lower.matches("http-equiv").count(), 1);
    assert!(!page.contains(['\u{2028}', '\u{2029}']));
    for link in page.split("href=\"").skip(1) {
        let to = link.split('"').next().unwrap();
        let is_number =
            to.strip_prefix("tel:").is_some_and(|n| n.chars().all(|c| "+0123456789".contains(c)));
        assert!(is_number || to.starts_with('#'), "{to}");
    }
    // And all of it is still there to be read.
    let read = Page::of(&page);
    assert_eq!(read.data["spaces"][0][0], "<script>alert(1)</script>");
    assert_eq!(read.data["emergency"][1], "tel:911");
    assert!(page.contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
}

#[test]
fn the_page_reaches_for_nothing() {
    let page = page_of("flat");
    let policy = page.split("Content-Security-Policy\" content=\"").nth(1).unwrap();
    let policy = policy.split('"').next().unwrap();
    assert!(policy.starts_with("default-src 'none'; script-src 'sha256-"), "{policy}");
    assert!(!policy.contains("unsafe") && !policy.contains('*') && !policy.contains("http"));
    for reach in [" src=", "<link", "<iframe", "<object", "<embed", "@import", "url("] {
        assert!(!page.contains(reach), "{reach}");
    }
    // The name of SVG is the only address that looks like one.
    assert_eq!(page.replace("http://www.w3.org/2000/svg", "").matches("://").count(), 0);
}

#[test]
fn the_same_home_and_day_give_the_same_bytes() {
    let home = example("old-house");
    assert_eq!(html(&home), html(&home));
    let tomorrow = Date::new(2026, 11, 26).unwrap();
    let other =
        phone_page(&home, &BTreeMap::new(), tomorrow, &mut |_, _| ControlFlow::Continue(()));
    assert_ne!(other.unwrap().html, html(&home));
}

#[test]
fn without_scripts_there_are_the_numbers_and_every_trouble() {
    let empty = html(&Home::default());
    for (home, page) in [
        (example("two-storey"), page_of("two-storey")),
        (example("flat"), page_of("flat")),
        (Home::default(), empty.as_str()),
    ] {
        let (_, plain) = page.split_once("<main id=\"plain\">").unwrap();
        let (plain, _) = plain.split_once("</main>").unwrap();
        for language in Catalogue::languages() {
            let words = Catalogue::in_language(language.tag);
            for trouble in Trouble::ALL {
                let title = words.text(&format!("trouble-{}", trouble.id()));
                assert!(plain.contains(&title), "{title}");
            }
        }
        if let Some(address) = &home.address {
            assert_eq!(plain.matches(address.as_str()).count(), Catalogue::languages().len());
        }
        if let Some(phone) = &home.emergency_phone {
            assert!(plain.contains(&format!("href=\"tel:{phone}\"")), "{phone}");
        }
    }
}

/// A home that is not mapped yet still gives general advice for every trouble.
#[test]
fn an_empty_home_leaves_nobody_without_advice() {
    let home = Home { name: "New".to_owned(), ..Home::default() };
    let page = Page::of(&html(&home));
    for &trouble in Trouble::ALL {
        let row = page.row("answers", page.row("nodes", page.root(trouble, 0))[0]);
        assert!(!page.row("lists", row[2]).is_empty(), "{trouble:?} has no step");
    }
}

#[test]
fn the_page_knows_north_where_the_home_does() {
    let north = |north_deg| {
        let page = Page::of(&html(&Home { north_deg, ..Home::default() }));
        assert_eq!(page.word(page.data["ui"]["north-letter"].as_i64().unwrap()), "N");
        page.data["north"].as_i64()
    };
    assert_eq!(north(None), None);
    assert_eq!(north(Some(0.0)), Some(0));
    assert_eq!(north(Some(359.8)), Some(0));
    assert_eq!(north(Some(225.4)), Some(225));
}

#[test]
fn whoever_waits_hears_how_far_it_is_and_may_stop_it() {
    let home = example("old-house");
    let mut heard = Vec::new();
    phone_page(&home, &BTreeMap::new(), day(), &mut |done, of| {
        heard.push((done, of));
        ControlFlow::Continue(())
    })
    .unwrap();
    let of = heard.len();
    assert!(heard.iter().zip(1..).all(|(told, n)| *told == (n, of)), "{heard:?}");
    let stopped = phone_page(&home, &BTreeMap::new(), day(), &mut |done, _| {
        if done < 5 { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
    });
    assert!(matches!(stopped, Err(NoPhonePage::Cancelled)));
}

#[test]
fn a_picture_that_cannot_be_shown_is_named_and_the_page_is_there() {
    let home = example("old-house");
    let path = home.levels[0].plan.as_ref().unwrap().picture.clone();
    let pictures = BTreeMap::from([(path.clone(), b"not a picture".to_vec())]);
    let page = phone_page(&home, &pictures, day(), &mut |_, _| ControlFlow::Continue(())).unwrap();
    assert_eq!(page.unreadable_pictures.len(), home.levels.len());
    assert_eq!(page.unreadable_pictures[0], path);
    assert!(page.html.contains("</html>"));
}

/// The example with its three plans is to stay small enough to be sent by message.
#[test]
fn the_example_stays_under_two_megabytes() {
    let page = page_of("two-storey");
    assert_eq!(page.matches("data:image/png;base64,").count(), 3);
    assert!(page.len() < 2_000_000, "{}", page.len());
}
