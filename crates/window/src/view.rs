//! What the panels may look at.

use quarterturn_guidance::{Answer, Catalogue, Fill};
use quarterturn_home::{Home, Problem, Units};

use crate::ask::Asked;
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
            self.fill("seconds", &[quarterturn_guidance::count("n", fives)])
        } else {
            let minutes = (seconds / 60.0).ceil();
            self.fill("minutes", &[quarterturn_guidance::count("n", minutes)])
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
        self.fill(key, &[quarterturn_guidance::count("n", amount)])
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
