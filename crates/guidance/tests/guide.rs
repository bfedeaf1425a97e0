//! A guide that answered other questions before answers as one that reads the home anew: every trouble
//! at every spot of the three examples, then with the devices failed and the check made that it names.

#![expect(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test")]

use quarterturn_guidance::{
    Answer, Catalogue, Guide, Question, Seen, Spot, Trouble, answer_on, spots,
};
use quarterturn_home::{Date, Home, open};

const HOMES: [(&str, &str); 3] = [
    ("two-storey", include_str!("../../../examples/two-storey/home.ron")),
    ("flat", include_str!("../../../examples/flat/home.ron")),
    ("old-house", include_str!("../../../examples/old-house/home.ron")),
];

fn languages() -> Vec<Catalogue> {
    Catalogue::languages().iter().map(|l| Catalogue::in_language(l.tag)).collect()
}

fn home(text: &str) -> Home {
    open("home.ron", text).home.unwrap()
}

/// Every trouble at every spot that makes sense for it, and anywhere; every seventh line besides.
fn questions(home: &Home) -> Vec<Question> {
    let mut all = Vec::new();
    for &trouble in Trouble::ALL {
        let lines = home.connections.iter().step_by(7);
        let lines = lines.map(|line| Spot::Connection(line.from.clone(), line.to.clone()));
        let at = spots(home, trouble).into_iter().chain([Spot::Home]).chain(lines);
        all.extend(at.map(|at| Question { trouble, at, from: None, failed: vec![], seen: vec![] }));
    }
    all
}

/// What one may ask next: the best way failed, the next check made, someone in a room with a wet one
/// on the way.
fn next(home: &Home, question: &Question, answer: &Answer, turn: usize) -> Vec<Question> {
    let mut next = Vec::new();
    if let Some(set) = answer.sets.first() {
        next.push(Question { failed: set.close.clone(), ..question.clone() });
    }
    if let Some(check) = &answer.next_check {
        let seen = [Seen::Off, Seen::On, Seen::Wet][turn % 3];
        next.push(Question { seen: vec![(check.component.clone(), seen)], ..question.clone() });
    }
    let space = |turn: usize| home.spaces[turn % home.spaces.len()].id.clone();
    next.push(Question {
        from: Some(space(turn)),
        seen: vec![(space(7 * turn + 1), Seen::Wet)],
        ..question.clone()
    });
    next
}

#[test]
fn a_guide_answers_as_one_who_reads_the_home_anew() {
    let (words, today) = (languages(), Date::new(2026, 11, 25));
    let mut asked = 0;
    for (name, text) in HOMES {
        let home = home(text);
        let guide = Guide::of(&home);
        let mut check = |question: &Question, words: &Catalogue, today| {
            let answer = guide.answer(question, words, today);
            assert_eq!(answer, answer_on(&home, question, words, today), "{name}: {question:?}");
            asked += 1;
            answer
        };
        for (turn, question) in questions(&home).iter().enumerate() {
            // By turns in each language, with the day and without it.
            let words = &words[turn % words.len()];
            let answer = check(question, words, today.filter(|_| turn % 3 > 0));
            for question in next(&home, question, &answer, turn) {
                check(&question, words, today);
            }
        }
    }
    assert!(asked > 5_000, "{asked}");
}

#[test]
fn answers_in_all_languages_are_those_in_each() {
    let (words, today) = (languages(), Date::new(2026, 11, 25));
    assert!(words.len() > 1);
    for (name, text) in HOMES {
        let home = home(text);
        let guide = Guide::of(&home);
        for question in questions(&home) {
            let each: Vec<Answer> =
                words.iter().map(|words| answer_on(&home, &question, words, today)).collect();
            assert_eq!(guide.answers(&question, &words, today), each, "{name}: {question:?}");
        }
        assert_eq!(guide.answers(&questions(&home)[0], &[], today), []);
    }
}
