//! Fixture units and drain sizes of the two American plumbing codes.
//!
//! Sources: IPC 2018 table 710.1(1), 704.1 (Chicago's text); UPC tables 702.1 and 703.2 (King
//! County WA, public health); a web calculator that mixes editions.

use quarterturn_estimate::Length;
use quarterturn_estimate::fixture_units::{
    Code, Finding, Fixture, check, least_slope, most_units, units,
};
use quarterturn_estimate::si::length::inch;

fn inches(inches: f64) -> Length {
    Length::new::<inch>(inches)
}

#[test]
fn ipc_building_drains() {
    for (size, eighth, quarter, half) in [
        (1.25, None, 1, 1),
        (1.5, None, 3, 3),
        (2.0, None, 21, 26),
        (2.5, None, 24, 31),
        (3.0, Some(36), 42, 50),
        (4.0, Some(180), 216, 250),
        (5.0, Some(390), 480, 575),
        (6.0, Some(700), 840, 1_000),
    ] {
        let most = |fall: f64| most_units(Code::Ipc, inches(size), fall / 12.0);
        assert_eq!(most(0.125), eighth, "{size}");
        assert_eq!(most(0.25), Some(quarter), "{size}");
        assert_eq!(most(0.5), Some(half), "{size}");
        assert_eq!(most(0.0625), None, "{size}");
    }
}

#[test]
fn upc_horizontal_drains() {
    for (size, most) in [(1.5, 1), (2.0, 8), (2.5, 14), (3.0, 35), (4.0, 216)] {
        assert_eq!(most_units(Code::Upc, inches(size), 0.25 / 12.0), Some(most), "{size}");
    }
}

#[test]
fn fixtures_of_both() {
    for (fixture, upc, ipc) in [
        (Fixture::Lavatory, 1, 1),
        (Fixture::Bathtub, 2, 2),
        (Fixture::Shower, 2, 2),
        (Fixture::KitchenSink, 2, 2),
        (Fixture::Dishwasher, 2, 2),
        (Fixture::BarSink, 1, 1),
        (Fixture::LaundryTub, 2, 2),
        (Fixture::ClothesWasher, 3, 2),
        (Fixture::Toilet, 3, 3),
        (Fixture::FullBath, 6, 5),
    ] {
        assert_eq!(units(Code::Upc, fixture), upc, "{fixture:?}");
        assert_eq!(units(Code::Ipc, fixture), ipc, "{fixture:?}");
    }
}

/// A web calculator prints "clothes washer 3, toilet 4, IPC 709.1": a mix of editions.
#[test]
fn the_mixed_calculator_is_not_the_ipc() {
    assert_ne!(units(Code::Ipc, Fixture::ClothesWasher), 3);
    assert_ne!(units(Code::Ipc, Fixture::Toilet), 4);
}

#[test]
fn least_slopes() {
    for (size, ipc, upc) in [
        (1.5, 0.25, 0.25),
        (2.5, 0.25, 0.25),
        (3.0, 0.125, 0.25),
        (6.0, 0.125, 0.25),
        (8.0, 0.0625, 0.25),
    ] {
        approx::assert_relative_eq!(least_slope(Code::Ipc, inches(size)), ipc / 12.0);
        approx::assert_relative_eq!(least_slope(Code::Upc, inches(size)), upc / 12.0);
    }
}

/// IPC table 710.1(1), note a: a drain that serves a toilet is 3 in at least. UPC: at most three
/// toilets on a level drain of 3 in.
#[test]
fn toilets() {
    let slope = 0.25 / 12.0;
    for code in [Code::Ipc, Code::Upc] {
        let found = check(code, inches(2.0), slope, &[Fixture::Toilet]);
        assert!(found.contains(&Finding::ToiletNeedsThreeInches), "{code:?}");
        assert_eq!(check(code, inches(3.0), slope, &[Fixture::Toilet; 3]), [], "{code:?}");
    }
    let four = [Fixture::Toilet; 4];
    assert_eq!(check(Code::Upc, inches(3.0), slope, &four), [Finding::TooManyToilets]);
    assert_eq!(check(Code::Ipc, inches(3.0), slope, &four), []);
}
