//! Temporary.
use quarterturn_guidance::*;
use quarterturn_home::*;
fn main() {
    let homes = ["two-storey", "flat", "old-house"];
    let n = std::cell::Cell::new(0usize);
    for name in homes {
        let text = std::fs::read_to_string(format!("examples/{name}/home.ron")).unwrap();
        let home = open(name, &text).home.unwrap();
        let guide = Guide::of(&home);
        let shared = std::env::args().nth(1).is_some();
        for lang in ["en", "es"] {
            let words = Catalogue::in_language(lang);
            for &trouble in Trouble::ALL.iter() {
                let mut all = spots(&home, trouble);
                all.push(Spot::Home);
                all.extend(home.spaces.iter().map(|s| Spot::Space(s.id.clone())));
                all.extend(
                    home.connections
                        .iter()
                        .step_by(7)
                        .map(|c| Spot::Connection(c.from.clone(), c.to.clone())),
                );
                for at in all {
                    let mut q = Question { trouble, at, from: None, failed: vec![], seen: vec![] };
                    for today in [None, Date::new(2026, 11, 25)] {
                        let go = |q: &Question| {
                            let a = if shared {
                                guide.answer(q, &words, today)
                            } else {
                                answer_on(&home, q, &words, today)
                            };
                            println!(
                                "{name} {lang} {today:?} {q:?} => {a:?} {}",
                                serde_json::to_string(&a).unwrap()
                            );
                            n.set(n.get() + 1);
                            a
                        };
                        let a = go(&q);
                        if today.is_some() && lang == "es" {
                            continue;
                        }
                        if let Some(set) = a.sets.first() {
                            q.failed = set.close.clone();
                            go(&q);
                            q.failed.clear();
                        }
                        if let Some(c) = &a.next_check {
                            for s in [Seen::Off, Seen::On, Seen::Wet] {
                                q.seen = vec![(c.component.clone(), s)];
                                go(&q);
                            }
                            q.seen.clear();
                        }
                        if let Some(s) = home.spaces.get(n.get() % home.spaces.len().max(1)) {
                            q.from = Some(s.id.clone());
                            q.seen = vec![(
                                home.spaces[n.get() * 7 % home.spaces.len()].id.clone(),
                                Seen::Wet,
                            )];
                            go(&q);
                            q.from = None;
                            q.seen.clear();
                        }
                    }
                }
            }
        }
    }
    eprintln!("{}", n.get());
}
