//! What copper tube holds.
//!
//! Sources: Copper Development Association, Copper Tube Handbook, table 2f (K and L; cubic feet in
//! each foot); a dictionary of pipe sizes (M); a designer's data sheet of type L, with two bad
//! rows.

use quarterturn_estimate::si::length::{foot, inch};
use quarterturn_estimate::si::volume::{cubic_foot, gallon};
use quarterturn_estimate::standing::{self, Pipe};
use quarterturn_estimate::{Length, Volume};

use super::agrees;

/// What a foot holds.
#[expect(clippy::unwrap_used, reason = "a test stops where it fails")]
fn foot_of(pipe: Pipe, inches: f64) -> Volume {
    let bore = standing::bore(pipe, Length::new::<inch>(inches)).unwrap();
    standing::held(bore, Length::new::<foot>(1.0))
}

#[test]
fn type_l_in_cubic_feet() {
    for (inches, cubic_feet) in [(0.5, 0.001_62), (0.75, 0.003_36), (1.0, 0.005_73)] {
        let held = foot_of(Pipe::CopperL, inches).get::<cubic_foot>();
        assert!(agrees(held, cubic_feet, 0.004), "{inches} {held}");
    }
}

#[test]
fn all_types_in_gallons() {
    let table = [
        (0.375, [0.0066, 0.0075, 0.0083]),
        (0.5, [0.0113, 0.0121, 0.0132]),
        (0.75, [0.0226, 0.0251, 0.0268]),
        (1.0, [0.0404, 0.0429, 0.0454]),
        (1.25, [0.0632, 0.0653, 0.0680]),
        (1.5, [0.0895, 0.0924, 0.0951]),
        (2.0, [0.1566, 0.1608, 0.1647]),
    ];
    for (inches, gallons) in table {
        for (pipe, gallons) in
            [Pipe::CopperK, Pipe::CopperL, Pipe::CopperM].into_iter().zip(gallons)
        {
            let held = foot_of(pipe, inches).get::<gallon>();
            assert!(agrees(held, gallons, 0.008), "{pipe:?} {inches} {held}");
        }
    }
}

/// The data sheet of type L, within print.
#[test]
fn the_data_sheet_of_type_l() {
    for (inches, gallons) in
        [(0.5, 0.0121), (0.75, 0.0251), (1.0, 0.0429), (1.25, 0.0655), (1.5, 0.0925), (2.0, 0.161)]
    {
        let held = foot_of(Pipe::CopperL, inches).get::<gallon>();
        assert!(agrees(held, gallons, 0.005), "{inches} {held}");
    }
}

/// Its row of 5/8 in is that of type K (0.652 in bore), and of 4 in it prints 0.571 gal for 0.622.
/// Bores of type L: 0.666 and 3.905 in.
#[test]
fn two_rows_of_the_data_sheet_are_misprints() {
    let held = |bore: f64| {
        standing::held(Length::new::<inch>(bore), Length::new::<foot>(1.0)).get::<gallon>()
    };
    assert!(agrees(held(0.666), 0.0181, 0.005));
    assert!(!agrees(held(0.666), 0.0174, 0.02));
    assert!(agrees(held(3.905), 0.622, 0.005));
    assert!(!agrees(held(3.905), 0.571, 0.05));
}

/// The wall grows from M to K on the same outside: the bore shrinks.
#[test]
fn type_k_is_narrower_than_l_and_l_than_m() {
    for inches in [0.375, 0.5, 0.75, 1.0, 1.25, 1.5, 2.0] {
        let [k, l, m] = [Pipe::CopperK, Pipe::CopperL, Pipe::CopperM]
            .map(|pipe| standing::bore(pipe, Length::new::<inch>(inches)).unwrap());
        // Copper tube is 1/8 in more outside than its nominal size.
        assert!(k < l && l < m && m < Length::new::<inch>(inches + 0.125), "{inches}");
    }
}
