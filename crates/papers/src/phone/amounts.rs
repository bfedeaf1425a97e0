//! Times and amounts of water, as people say them.

use quarterturn_guidance::{Catalogue, count, fill};
use quarterturn_home::{Home, Units};

/// A US gallon in litres, exactly (NIST Special Publication 811, appendix B.8).
const GALLON: f64 = 3.785_411_784;

/// How long something takes with the walk, and how much more water runs out by then.
pub(super) fn takes(home: &Home, words: &Catalogue, seconds: f64, litres: Option<f64>) -> String {
    let time = fill("time", &duration(words, seconds)).1;
    match litres {
        Some(litres) => {
            let water = fill("water", &volume(home, words, litres)).1;
            words.fill("phone-takes-and-spills", &[("time", time), ("water", water)])
        }
        None => words.fill("phone-takes", &[("time", time)]),
    }
}

/// Seconds in fives; beyond a minute and a half in minutes.
fn duration(words: &Catalogue, seconds: f64) -> String {
    if seconds < 90.0 {
        words.fill("phone-seconds", &[count("n", (seconds / 5.0).ceil().max(1.0) * 5.0)])
    } else {
        words.fill("phone-minutes", &[count("n", (seconds / 60.0).ceil())])
    }
}

/// An amount of water in the home's units, to two figures.
fn volume(home: &Home, words: &Catalogue, litres: f64) -> String {
    let (key, amount) = match home.units {
        Units::Si => ("phone-litres", litres),
        Units::Us => ("phone-gallons", litres / GALLON),
    };
    words.fill(key, &[count("n", two_figures(amount))])
}

/// Rounded to two figures, and to a half below ten, but never down to nothing.
fn two_figures(amount: f64) -> f64 {
    if amount < 10.0 {
        return ((amount * 2.0).round() / 2.0).max(0.5);
    }
    let unit = 10_f64.powf(amount.log10().floor() - 1.0);
    (amount / unit).round() * unit
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn amounts_are_no_more_exact_than_they_are_known() {
        for (amount, said) in [(0.2, 0.5), (3.74, 3.5), (12.4, 12.0), (1234.0, 1200.0)] {
            assert!((two_figures(amount) - said).abs() < 1e-9, "{amount}");
        }
    }

    /// Worked by hand: 61 seconds round up to 65, and 7.57 L are two US gallons.
    #[test]
    fn a_time_and_an_amount_read_as_a_sentence() {
        let us = Home { units: Units::Us, ..Home::default() };
        let said = takes(&us, &Catalogue::english(), 61.0, Some(7.570_823_568));
        assert!(said.contains("65 seconds") && said.contains("2 gal"), "{said}");
        let said = takes(&Home::default(), &Catalogue::in_language("es"), 91.0, None);
        assert!(said.contains("2 minutos"), "{said}");
    }
}
