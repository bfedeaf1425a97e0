//! Where pins are drawn, so that each can be seen and pressed.

use egui::{Pos2, Rect, Vec2, vec2};

/// Rounds of pushing apart; a floor with a hundred pins comes to rest well before.
const ROUNDS: usize = 120;

/// Moves pins off one another and into `bounds`, each as little as it takes. Two pins come to lie at
/// least `apart` from one another unless there is no room for that.
pub(crate) fn spread(anchors: &[Pos2], bounds: Rect, apart: f32) -> Vec<Pos2> {
    let bounds = never_inside_out(bounds);
    let mut places: Vec<Pos2> = anchors.iter().map(|a| a.clamp(bounds.min, bounds.max)).collect();
    for _ in 0..ROUNDS {
        let mut moved = false;
        for second in 1..places.len() {
            let (before, rest) = places.split_at_mut(second);
            let Some(pin) = rest.first_mut() else { break };
            for (first, other) in before.iter_mut().enumerate() {
                let between = *pin - *other;
                let distance = between.length();
                if distance >= apart {
                    continue;
                }
                // Pins at the very same place part in a direction of their own.
                let away =
                    if distance < 0.5 { direction(first + second) } else { between / distance };
                let push = away * ((apart - distance) * 0.5 + 0.05);
                *pin = (*pin + push).clamp(bounds.min, bounds.max);
                *other = (*other - push).clamp(bounds.min, bounds.max);
                moved = true;
            }
        }
        if !moved {
            break;
        }
    }
    places
}

/// On a sheet narrower than its pins, what is left of the bounds is the line through its middle.
fn never_inside_out(bounds: Rect) -> Rect {
    Rect::from_center_size(bounds.center(), bounds.size().max(Vec2::ZERO))
}

fn direction(n: usize) -> Vec2 {
    /// The golden angle: no two of its multiples fall together.
    const GOLDEN: f32 = 2.399_963;
    let turns = u16::try_from(n % 360).unwrap_or_default();
    Vec2::angled(f32::from(turns) * GOLDEN)
}

/// The square around each pin that answers to a press: `side` wide, and less where that would
/// overlap another's.
pub(crate) fn squares(places: &[Pos2], side: f32) -> Vec<Rect> {
    let square = |(i, place): (usize, &Pos2)| {
        let others = places.iter().enumerate().filter(|(j, _)| *j != i);
        let nearest = others
            .map(|(_, other)| {
                let between = (*other - *place).abs();
                between.x.max(between.y)
            })
            .fold(side, f32::min);
        Rect::from_center_size(*place, vec2(nearest, nearest))
    };
    places.iter().enumerate().map(square).collect()
}

/// How much of `rect` lies over what is taken.
pub(crate) fn covered(rect: Rect, taken: &[Rect]) -> f32 {
    let both = taken.iter().map(|other| other.intersect(rect)).filter(|both| both.is_positive());
    both.map(|both| both.area()).sum()
}

/// The pins by rows of this height from the top, in each from the left: as one reads.
pub(crate) fn in_reading_order(places: &[Pos2], row: f32) -> Vec<usize> {
    let mut order: Vec<usize> = (0..places.len()).collect();
    let key = |n: &usize| {
        places.get(*n).map_or((0.0, 0.0), |place| ((place.y / row.max(1.0)).floor(), place.x))
    };
    order.sort_by(|a, b| {
        let ((row_a, x_a), (row_b, x_b)) = (key(a), key(b));
        row_a.total_cmp(&row_b).then(x_a.total_cmp(&x_b)).then(a.cmp(b))
    });
    order
}

#[cfg(test)]
mod tests {
    use super::*;
    use egui::pos2;

    #[test]
    fn pins_are_read_row_by_row() {
        let places = [pos2(300.0, 95.0), pos2(10.0, 100.0), pos2(200.0, 10.0), pos2(5.0, 200.0)];
        assert_eq!(in_reading_order(&places, 44.0), [2, 1, 0, 3]);
        assert_eq!(in_reading_order(&[], 44.0), [0_usize; 0]);
    }

    fn closest(places: &[Pos2]) -> f32 {
        let mut closest = f32::INFINITY;
        for (i, a) in places.iter().enumerate() {
            for b in &places[i + 1..] {
                closest = closest.min(a.distance(*b));
            }
        }
        closest
    }

    #[test]
    fn pins_in_one_heap_part() {
        let bounds = Rect::from_min_size(Pos2::ZERO, vec2(600.0, 600.0));
        let heap = vec![pos2(300.0, 300.0); 30];
        let places = spread(&heap, bounds, 34.0);
        assert!(closest(&places) > 30.0, "{}", closest(&places));
        assert!(places.iter().all(|p| bounds.contains(*p)));
    }

    #[test]
    fn pins_that_have_room_stay() {
        let bounds = Rect::from_min_size(Pos2::ZERO, vec2(600.0, 600.0));
        let far = [pos2(50.0, 50.0), pos2(100.0, 50.0), pos2(100.0, 100.0)];
        assert_eq!(spread(&far, bounds, 34.0), far);
        assert_eq!(spread(&[pos2(-9.0, 700.0)], bounds, 34.0), [pos2(0.0, 600.0)]);
    }

    #[test]
    fn no_two_squares_overlap() {
        let places: Vec<Pos2> = (0..40_u8)
            .map(|n| pos2(f32::from(n % 7) * 31.0, f32::from(n / 7) * 23.0 + f32::from(n)))
            .collect();
        let squares = squares(&places, 44.0);
        for (i, a) in squares.iter().enumerate() {
            for b in &squares[i + 1..] {
                let shared = a.intersect(*b);
                assert!(shared.width() <= 0.01 || shared.height() <= 0.01, "{a} {b}");
            }
        }
        let alone = super::squares(&[pos2(9.0, 9.0)], 44.0);
        assert!((alone[0].width() - 44.0).abs() < 0.01);
    }

    /// Two rooms far apart, whose sheet is a strip that no pin fits into.
    #[test]
    fn pins_on_a_strip_stand_on_its_middle() {
        let strip = Rect::from_min_max(pos2(0.0, 0.0), pos2(600.0, 20.0)).shrink(30.0);
        for place in spread(&[pos2(5.0, 4.0), pos2(9.0, 19.0)], strip, 57.0) {
            assert!((place.y - 10.0).abs() < 0.01 && (30.0..=570.0).contains(&place.x), "{place}");
        }
    }
}
