//! The safety rules, held from outside over random homes and questions.
//!
//! The rules are those of `DEVELOPERS.md`, one function each, named by its number. They look only at
//! the home, the question and the answer, and know nothing of how the answer was made.

mod facts;
mod nasty;
mod rules;
mod texts;

use std::panic::{AssertUnwindSafe, catch_unwind};

use quarterturn_guidance::{Answer, Catalogue, Question, Seen, Spot, Trouble, answer};
use quarterturn_home::Home;

use crate::black_box::dice::Dice;
use crate::black_box::house::House;
use crate::black_box::shrink;

/// Homes, and questions to each.
const HOMES: u64 = 260;
const QUESTIONS: usize = 10;

/// What a rule looks at.
struct Told<'a> {
    house: &'a House,
    home: &'a Home,
    question: &'a Question,
    answer: &'a Answer,
    words: &'a Catalogue,
}

type Rule = fn(&Told<'_>) -> Result<(), String>;

const RULES: &[(&str, Rule)] = &[
    ("rule 1", rules::rule_1_dangers_come_first),
    ("rule 2", rules::rule_2_leave_then_call),
    ("rule 3", rules::rule_3_nobody_into_live_water),
    ("rule 4", rules::rule_4_the_utilitys_alone),
    ("rule 5", rules::rule_5_sprinklers),
    ("rule 6", rules::rule_6_one_reset_after_unplugging),
    ("rule 7", rules::rule_7_closed_is_not_proven),
    ("rule 8", rules::rule_8_sewage),
    ("rule 9", rules::rule_9_heater),
    ("rule 10", rules::rule_10_water_back_slowly),
    ("rule 11", rules::rule_11_what_someone_depends_on),
    ("rule 12", rules::rule_12_advice_without_a_map),
    ("rule 13", rules::rule_13_numbers_at_the_end),
    ("words", texts::every_text_reads_well),
    ("sources", texts::every_id_has_a_source),
];

/// `QUARTERTURN_CASES` multiplies the number of homes, for a long run.
#[test]
fn every_answer_keeps_every_rule() {
    let times =
        std::env::var("QUARTERTURN_CASES").ok().and_then(|text| text.parse().ok()).unwrap_or(1);
    let words = Catalogue::english();
    let mut asked = [0; Trouble::ALL.len()];
    for number in 1..=HOMES * times {
        let mut dice = Dice::of_case("safety", number);
        let house = nasty::home(&mut dice);
        let home = read(&house);
        for _ in 0..QUESTIONS {
            let question = question(&mut dice, &home);
            asked[Trouble::ALL.iter().position(|&t| t == question.trouble).unwrap()] += 1;
            if let Err(why) = holds(&house, &home, &question, &words) {
                let (house, question, why) = smaller(house, question, why, &words);
                let answer =
                    catch_unwind(AssertUnwindSafe(|| answer(&read(&house), &question, &words)));
                panic!("home {number}: {why}\n{question:?}\n{answer:#?}\n{}", house.text());
            }
        }
    }
    assert!(asked.iter().all(|&count| count > 50), "some troubles were hardly asked: {asked:?}");
}

fn read(house: &House) -> Home {
    quarterturn_home::open("home.ron", &house.text()).home.unwrap()
}

/// Takes out of a failing case whatever it fails without.
fn smaller(
    mut house: House,
    mut question: Question,
    mut why: String,
    words: &Catalogue,
) -> (House, Question, String) {
    loop {
        let rule = why.split(':').next().unwrap_or_default().to_owned();
        let mut list = fewer(&house, &question).into_iter();
        let found = list.find_map(|(house, question)| {
            let why = holds(&house, &read(&house), &question, words).err()?;
            why.starts_with(&rule).then_some((house, question, why))
        });
        match found {
            Some(less) => (house, question, why) = less,
            None => return (house, question, why),
        }
    }
}

fn fewer(house: &House, question: &Question) -> Vec<(House, Question)> {
    let mut list = Vec::new();
    for number in 0..question.failed.len() {
        let mut less = question.clone();
        less.failed.remove(number);
        list.push((house.clone(), less));
    }
    for number in 0..question.seen.len() {
        let mut less = question.clone();
        less.seen.remove(number);
        list.push((house.clone(), less));
    }
    let at: Vec<&str> = match &question.at {
        Spot::Component(id) | Spot::Space(id) => vec![id],
        Spot::Connection(from, to) => vec![from, to],
        Spot::Home => Vec::new(),
    };
    let named = |id: &str| {
        at.contains(&id)
            || question.from.as_deref() == Some(id)
            || question.failed.iter().any(|failed| failed == id)
            || question.seen.iter().any(|(seen, _)| seen == id)
    };
    let houses = shrink::less(house, &named);
    list.extend(houses.into_iter().map(|house| (house, question.clone())));
    list
}

fn holds(house: &House, home: &Home, question: &Question, words: &Catalogue) -> Result<(), String> {
    let answer = catch_unwind(AssertUnwindSafe(|| answer(home, question, words)))
        .map_err(|_panic| "it panics".to_owned())?;
    let told = Told { house, home, question, answer: &answer, words };
    RULES.iter().try_for_each(|(name, rule)| rule(&told).map_err(|why| format!("{name}: {why}")))
}

fn question(dice: &mut Dice, home: &Home) -> Question {
    let trouble = dice.of(Trouble::ALL);
    let ids: Vec<&str> = home.components.iter().map(|component| component.id.as_str()).collect();
    let spaces: Vec<&str> = home.spaces.iter().map(|space| space.id.as_str()).collect();
    let spots = quarterturn_guidance::spots(home, trouble);
    let at = match dice.below(10) {
        0 => Spot::Home,
        1 if !home.connections.is_empty() => {
            let line = dice.of(&home.connections);
            Spot::Connection(line.from, line.to)
        }
        2 | 3 if !spaces.is_empty() => Spot::Space(dice.of(&spaces).to_owned()),
        4 | 5 if !ids.is_empty() => Spot::Component(dice.of(&ids).to_owned()),
        _ if !spots.is_empty() => dice.of(&spots),
        _ => Spot::Home,
    };
    let from = (!spaces.is_empty() && dice.chance(30)).then(|| dice.of(&spaces).to_owned());
    let mut question = Question { trouble, at, from, failed: Vec::new(), seen: Vec::new() };
    while !ids.is_empty() && dice.chance(40) {
        question.failed.push(dice.of(&ids).to_owned());
    }
    let states: Vec<Seen> = Seen::ALL.iter().map(|(seen, _)| *seen).collect();
    while !ids.is_empty() && dice.chance(50) {
        question.seen.push((dice.of(&ids).to_owned(), dice.of(&states)));
    }
    while !spaces.is_empty() && dice.chance(25) {
        question
            .seen
            .push((dice.of(&spaces).to_owned(), dice.of(&[Seen::Wet, Seen::Wet, Seen::Dry])));
    }
    question
}
