//! A home, read once, that answers many questions.

use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::fmt;

use quarterturn_home::{Connection, Date, Home, Net};
use quarterturn_network::{Drain, HomeNet, Impact, Places, drain, sprinkler_controls};

use crate::catalogue::Catalogue;
use crate::context::Context;
use crate::footpaths::Footpaths;
use crate::practice::Practice;
use crate::route::{Point, stands_in};
use crate::sides::Sides;
use crate::{Answer, Question, drafted};

/// A home, read once, that answers many questions.
///
/// [`answer`](crate::answer) reads the home anew for each question; a guide keeps what hangs on the
/// home alone (its nets and drains, its doors and stairs, its boundaries), worked out when it is first
/// asked for. Its answers are the same. It borrows the home, so that it cannot outlive a change of it.
/// It stays on the thread that made it; another thread makes its own.
///
/// ```
/// use quarterturn_guidance::{Catalogue, Guide, Question, Spot, Trouble, answer, spots};
///
/// let text = r#"Home(format: 1, name: "Hut", components: [
///     (id: "street", kind: WaterMain, name: "Street"),
///     (id: "main", kind: IsolatingValve, name: "Main"),
///     (id: "tap", kind: Tap, name: "Tap"),
/// ], connections: [
///     (from: "street", to: "main", carries: ColdWater),
///     (from: "main", to: "tap", carries: ColdWater),
/// ])"#;
/// let home = quarterturn_home::open("home.ron", text).home.unwrap();
/// let (guide, words) = (Guide::of(&home), Catalogue::english());
/// for at in spots(&home, Trouble::Leak) {
///     let question = Question { trouble: Trouble::Leak, at, from: None, failed: vec![], seen: vec![] };
///     assert_eq!(guide.answer(&question, &words, None), answer(&home, &question, &words));
/// }
/// ```
pub struct Guide<'a> {
    home: &'a Home,
    places: Places<'a>,
    impact: OnceCell<Impact>,
    sprinkler_control: OnceCell<Vec<bool>>,
    practice: OnceCell<Practice>,
    paths: OnceCell<Footpaths>,
    drain: OnceCell<Drain>,
    lines: OnceCell<Vec<Vec<usize>>>,
    /// For each component, the component that tells where it is.
    standing_in: Vec<OnceCell<usize>>,
    points: Vec<OnceCell<Point>>,
    nets: [OnceCell<HomeNet>; Net::ALL.len()],
    sides: [OnceCell<Sides>; Net::ALL.len()],
}

impl<'a> Guide<'a> {
    /// A guide to a home. Time: components × log components; all else waits for a question.
    #[must_use]
    pub fn of(home: &'a Home) -> Self {
        let count = home.components.len();
        Self {
            home,
            places: Places::of_home(home),
            impact: OnceCell::new(),
            sprinkler_control: OnceCell::new(),
            practice: OnceCell::new(),
            paths: OnceCell::new(),
            drain: OnceCell::new(),
            lines: OnceCell::new(),
            standing_in: vec![OnceCell::new(); count],
            points: vec![OnceCell::new(); count],
            nets: [const { OnceCell::new() }; Net::ALL.len()],
            sides: [const { OnceCell::new() }; Net::ALL.len()],
        }
    }

    /// The home that it guides through.
    #[must_use]
    pub fn home(&self) -> &'a Home {
        self.home
    }

    /// The answer to a question on a day, as [`answer_on`](crate::answer_on) gives it.
    #[must_use]
    pub fn answer(
        &self,
        question: &Question,
        catalogue: &Catalogue,
        today: Option<Date>,
    ) -> Answer {
        drafted(&Context::new(self, question, catalogue, today))
    }

    /// The answer to a question on a day in several languages, in their order. What is searched for in
    /// the home is searched for once.
    #[must_use]
    pub fn answers(
        &self,
        question: &Question,
        catalogues: &[Catalogue],
        today: Option<Date>,
    ) -> Vec<Answer> {
        let Some((first, others)) = catalogues.split_first() else { return Vec::new() };
        let mut ctx = Context::new(self, question, first, today);
        let mut answers = vec![drafted(&ctx)];
        for catalogue in others {
            ctx.catalogue = catalogue;
            answers.push(drafted(&ctx));
        }
        answers
    }

    pub(crate) fn places(&self) -> &Places<'a> {
        &self.places
    }

    pub(crate) fn impact(&self) -> &Impact {
        self.impact.get_or_init(|| Impact::of(self.home, &self.places))
    }

    /// Devices that control fire sprinklers and nothing else, by place.
    pub(crate) fn sprinkler_control(&self) -> &[bool] {
        self.sprinkler_control.get_or_init(|| sprinkler_controls(self.home, &self.places))
    }

    pub(crate) fn practice(&self) -> &Practice {
        self.practice.get_or_init(|| Practice::of_home(self.home, &self.places))
    }

    pub(crate) fn paths(&self) -> &Footpaths {
        self.paths.get_or_init(|| Footpaths::new(self.home))
    }

    pub(crate) fn drain(&self) -> &Drain {
        self.drain.get_or_init(|| drain(self.home, &self.places))
    }

    /// One net of the home.
    pub(crate) fn net(&self, net: Net) -> &HomeNet {
        let read = || HomeNet::of(self.home, &self.places, net, None);
        self.nets[net as usize].get_or_init(read)
    }

    /// The sides of the boundaries in one net.
    pub(crate) fn sides(&self, net: Net) -> &Sides {
        let read = || Sides::of(self.home, &self.places, net);
        self.sides[net as usize].get_or_init(read)
    }

    /// The lines from a component and to it, in the order of the file.
    pub(crate) fn lines_at(&self, place: usize) -> impl Iterator<Item = &'a Connection> {
        let home = self.home;
        self.lines()[place].iter().map(|&line| &home.connections[line])
    }

    /// Where a component is. A breaker without a place of its own is in its panel.
    pub(crate) fn point(&self, place: usize) -> Point {
        let read =
            || Point::of_component(self.home, &self.home.components[self.standing_in(place)]);
        *self.points[place].get_or_init(read)
    }

    /// The component that tells where `place` is: itself, or the panel it sits in.
    pub(crate) fn standing_in(&self, place: usize) -> usize {
        *self.standing_in[place].get_or_init(|| {
            let stands_in = stands_in(self.home, &self.home.components[place]);
            self.places.of(&stands_in.id).unwrap_or(place)
        })
    }

    /// For each component, the places in the file of the lines from it and to it.
    fn lines(&self) -> &[Vec<usize>] {
        self.lines.get_or_init(|| {
            let mut by_id: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
            for (line, link) in self.home.connections.iter().enumerate() {
                by_id.entry(&link.from).or_default().push(line);
                if link.to != link.from {
                    by_id.entry(&link.to).or_default().push(line);
                }
            }
            let of = |id: &str| by_id.get(id).cloned().unwrap_or_default();
            self.home.components.iter().map(|component| of(&component.id)).collect()
        })
    }
}

impl fmt::Debug for Guide<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Guide").field("home", &self.home.name).finish_non_exhaustive()
    }
}
