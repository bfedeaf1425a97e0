//! What the panels may look at.

use quarterturn_guidance::{Answer, Catalogue, Fill, Way, count, fill};
use quarterturn_home::{Date, Home, Log, Problem, Units};

use crate::ask::Asked;
use crate::practice::Running;
use crate::search::Hit;
use crate::session::Session;
use crate::spots::Row;

/// Everything that is shown, borrowed for one frame.
#[derive(Clone, Copy)]
pub(crate) struct View<'a> {
    pub(crate) home: &'a Home,
    pub(crate) problems: &'a [Problem],
    pub(crate) words: &'a Catalogue,
    pub(crate) asked: &'a Asked,
    pub(crate) answer: Option<&'a Answer>,
    /// The spots for the trouble.
    pub(crate) rows: &'a [Row],
    /// What may be meant by what is typed on the first page.
    pub(crate) hits: &'a [Hit],
    /// The way to the device of the step to do now.
    pub(crate) way: Option<&'a Way>,
    /// The drill under way.
    pub(crate) drill: Option<&'a Running>,
    /// What happened since the trouble was picked.
    pub(crate) session: &'a Session,
    /// What happened before.
    pub(crate) log: &'a Log,
    /// What became of what was last pressed, in words.
    pub(crate) message: Option<&'a str>,
    /// The change that the next undo takes back, in words.
    pub(crate) undo: Option<&'a str>,
    /// The change that the next redo makes again, in words.
    pub(crate) redo: Option<&'a str>,
    /// The home's folder; `None` for the one that is built in.
    pub(crate) folder: Option<&'a std::path::Path>,
    /// The day, if the clock is set.
    pub(crate) today: Option<Date>,
    /// True if what is written down outlasts the window.
    pub(crate) lasts: bool,
    /// True if marks may move.
    pub(crate) motion: bool,
    /// True if the home file's problems are folded out.
    pub(crate) problems_open: bool,
    /// True in the first frame of a page.
    pub(crate) is_new_page: bool,
}

impl View<'_> {
    /// The text with this key, less the `window-` in front.
    pub(crate) fn text(&self, key: &str) -> String {
        self.words.text(&format!("window-{key}"))
    }

    /// The same with its places filled.
    pub(crate) fn fill(&self, key: &str, fills: &[Fill<'_>]) -> String {
        self.words.fill(&format!("window-{key}"), fills)
    }

    /// A time as people say it: seconds in fives, beyond a minute and a half in minutes.
    pub(crate) fn duration(&self, seconds: f64) -> String {
        if seconds < 90.0 {
            let fives = (seconds / 5.0).ceil().max(1.0) * 5.0;
            self.fill("seconds", &[count("n", fives)])
        } else {
            let minutes = (seconds / 60.0).ceil();
            self.fill("minutes", &[count("n", minutes)])
        }
    }

    /// A time as a clock shows it.
    pub(crate) fn exact(&self, seconds: f64) -> String {
        let whole = seconds.max(0.0).round();
        if whole < 60.0 {
            return self.fill("seconds", &[count("n", whole)]);
        }
        let seconds = format!("{:02.0}", whole % 60.0);
        let fills = [count("minutes", (whole / 60.0).floor()), fill("seconds", &seconds)];
        self.fill("minutes-and-seconds", &fills)
    }

    /// A distance in the home's units, no more exact than a person walks.
    pub(crate) fn distance(&self, metres: f64) -> String {
        /// A foot in metres, exactly (NIST Special Publication 811, appendix B.8).
        const FOOT: f64 = 0.3048;
        match self.home.units {
            Units::Si => self.fill("metres", &[count("n", metres.round().max(1.0))]),
            Units::Us => {
                let feet = metres / FOOT;
                let rounded = if feet < 20.0 { feet.round() } else { (feet / 5.0).round() * 5.0 };
                self.fill("feet", &[count("n", rounded.max(1.0))])
            }
        }
    }

    /// An amount of water in the home's units, to two figures.
    pub(crate) fn volume(&self, litres: f64) -> String {
        self.amount(two_figures(self.in_units(litres)))
    }

    /// Litres, or gallons if the home is measured in those.
    pub(crate) fn in_units(&self, litres: f64) -> f64 {
        /// A US gallon in litres, exactly (NIST Special Publication 811, appendix B.8).
        const GALLON: f64 = 3.785_411_784;
        match self.home.units {
            Units::Si => litres,
            Units::Us => litres / GALLON,
        }
    }

    /// An amount of water that is in the home's units already.
    pub(crate) fn amount(&self, amount: f64) -> String {
        let key = match self.home.units {
            Units::Si => "litres",
            Units::Us => "gallons",
        };
        self.fill(key, &[count("n", amount)])
    }
}

/// Rounded to two figures, and to a half below ten.
fn two_figures(amount: f64) -> f64 {
    if amount < 10.0 {
        return (amount * 2.0).round() / 2.0;
    }
    let unit = 10_f64.powf(amount.log10().floor() - 1.0);
    (amount / unit).round() * unit
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn amounts_are_no_more_exact_than_they_are_known() {
        for (amount, said) in [(0.2, 0.0), (0.3, 0.5), (3.74, 3.5), (12.4, 12.0), (1234.0, 1200.0)]
        {
            assert!((two_figures(amount) - said).abs() < 1e-9, "{amount}");
        }
    }
}
