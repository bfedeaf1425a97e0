//! Who can walk where in one question, how long it takes, and whether water is in the way.

use std::cell::OnceCell;
use std::rc::Rc;

use crate::footpaths::{Footpaths, Reach};
use crate::guide::Guide;
use crate::route::Point;

/// The walks of one question; each is worked out when it is first asked for.
pub(crate) struct Walks<'a> {
    guide: &'a Guide<'a>,
    /// Spaces that nobody walks across if there is another way, by place in the home.
    wet: Vec<bool>,
    /// Spaces that nobody walks across: the water in them may be live.
    barred: Vec<bool>,
    past_water: OnceCell<Rc<Reach>>,
    past_live_water: OnceCell<Rc<Reach>>,
    anywhere: OnceCell<Rc<Reach>>,
}

/// A walk from one point to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Walk {
    /// Seconds by a way that leads through no water.
    Dry(f64),
    /// Seconds by a way that leads across a space where water is. There is no other.
    Wet(f64),
    /// Every way leads through water that may be live.
    Barred,
    /// The map tells no way.
    Unknown,
}

impl<'a> Walks<'a> {
    pub(crate) fn new(guide: &'a Guide<'_>, wet: Vec<bool>, barred: Vec<bool>) -> Self {
        Self {
            guide,
            wet,
            barred,
            past_water: OnceCell::new(),
            past_live_water: OnceCell::new(),
            anywhere: OnceCell::new(),
        }
    }

    /// Likely seconds for someone who takes their time: by the passages, past water if that can be;
    /// else straight, with an allowance for what is in between.
    pub(crate) fn seconds(&self, from: Point, to: Point) -> f64 {
        match self.walk(from, to) {
            Walk::Dry(seconds) | Walk::Wet(seconds) => seconds,
            Walk::Barred | Walk::Unknown => from.seconds_straight_to(to),
        }
    }

    pub(crate) fn walk(&self, from: Point, to: Point) -> Walk {
        let paths = self.paths();
        if paths.is_empty() {
            return Walk::Unknown;
        }
        if let Some(seconds) = paths.seconds(self.past_water(), from, to) {
            return Walk::Dry(seconds);
        }
        if !self.wet.contains(&true) && !self.barred.contains(&true) {
            return Walk::Unknown;
        }
        if let Some(seconds) = paths.seconds(self.past_live_water(), from, to) {
            return Walk::Wet(seconds);
        }
        let anywhere = self.anywhere.get_or_init(|| paths.reach(&[]));
        if paths.seconds(anywhere, from, to).is_some() { Walk::Barred } else { Walk::Unknown }
    }

    /// True if every way leads through water that may be live.
    pub(crate) fn is_barred(&self, from: Point, to: impl Fn() -> Point) -> bool {
        self.barred.contains(&true) && self.walk(from, to()) == Walk::Barred
    }

    /// True if the only way leads across a space where water is.
    pub(crate) fn is_wet(&self, from: Point, to: impl Fn() -> Point) -> bool {
        self.wet.contains(&true) && matches!(self.walk(from, to()), Walk::Wet(_))
    }

    /// Spaces with water that the way leads across, in order, by place in the home.
    pub(crate) fn water_on_the_way(&self, from: Point, to: Point) -> Vec<usize> {
        if !self.is_wet(from, || to) {
            return Vec::new();
        }
        let route = self.paths().route(self.past_live_water(), from, to);
        let spaces = route.map(|route| route.spaces).unwrap_or_default();
        let last = spaces.len().saturating_sub(1);
        let between = spaces.into_iter().take(last).skip(1);
        between.filter(|&space| self.wet.get(space).copied().unwrap_or(false)).collect()
    }

    fn paths(&self) -> &'a Footpaths {
        self.guide.paths()
    }

    fn past_water(&self) -> &Reach {
        self.past_water.get_or_init(|| {
            let both = self.wet.iter().zip(&self.barred);
            let avoided: Vec<bool> = both.map(|(wet, barred)| *wet || *barred).collect();
            self.paths().reach(&avoided)
        })
    }

    fn past_live_water(&self) -> &Reach {
        self.past_live_water.get_or_init(|| self.paths().reach(&self.barred))
    }
}
