//! What a plane looks like from elsewhere: the mapping between two photos of the same flat thing.

/// A mapping of the plane that keeps straight lines straight, by a matrix of 3 × 3 for homogeneous
/// coordinates.
///
/// Through four pairs of points there is exactly one. It is found in closed form: the three first points
/// as columns, weighted so that their sum is the fourth, map the corners of the projective frame to the
/// four points; from one picture to the other it goes by way of that frame. Source: J. Richter-Gebert,
/// *Perspectives on Projective Geometry*, Springer 2011, section 3.4 (from memory). The points are moved
/// and scaled first so that the numbers are of a size, as R. Hartley, *In defense of the eight-point
/// algorithm*, IEEE PAMI 19 (1997), advises.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Homography(Matrix);

type Point = (f64, f64);
/// By rows.
type Matrix = [[f64; 3]; 3];
type Vector = [f64; 3];

/// Three points count as in one line if the triangle between them is smaller than this share of the
/// square of their mean distance from the middle.
const FLAT: f64 = 1e-9;

impl Homography {
    /// The mapping that takes each of four points to its partner; `None` if three of either four are in
    /// one line, or a number is none.
    #[must_use]
    pub fn between(from: [Point; 4], to: [Point; 4]) -> Option<Self> {
        let (from_norm, _, from) = normal(from)?;
        let (_, to_back, to) = normal(to)?;
        let there = frame(to)?;
        let back = adjugate(frame(from)?);
        let whole = product(to_back, product(product(there, back), from_norm));
        Self::of(whole)
    }

    /// Where a point goes; `None` on the line that goes to infinity.
    #[must_use]
    pub fn map(&self, (x, y): Point) -> Option<Point> {
        let [u, v, w] = times(self.0, [x, y, 1.0]);
        let mapped = (u / w, v / w);
        (mapped.0.is_finite() && mapped.1.is_finite()).then_some(mapped)
    }

    /// By how much a point is divided. Its sign tells on which side of the line that goes to infinity
    /// the point is: of what is on both sides only one was before the camera.
    #[must_use]
    pub fn depth(&self, (x, y): Point) -> f64 {
        let [_, _, bottom] = self.0;
        dot(bottom, [x, y, 1.0])
    }

    /// The mapping back.
    #[must_use]
    pub fn inverse(&self) -> Option<Self> {
        Self::of(adjugate(self.0))
    }

    /// The matrix by rows, its last number 1.
    #[must_use]
    pub fn matrix(&self) -> [[f64; 3]; 3] {
        self.0
    }

    /// Scaled so that the last number is 1, as is the custom. That it is 0 means that the origin goes to
    /// infinity; then it is left as it is.
    fn of(matrix: Matrix) -> Option<Self> {
        let [.., [_, _, last]] = matrix;
        let largest = matrix.as_flattened().iter().fold(0.0_f64, |most, n| most.max(n.abs()));
        let by = if last.abs() > largest * f64::EPSILON { last } else { largest };
        let matrix = matrix.map(|row| row.map(|number| number / by));
        matrix.as_flattened().iter().all(|number| number.is_finite()).then_some(Self(matrix))
    }
}

/// Moves points so that their middle is the origin, and scales them so that their mean distance from it
/// is √2: how to get there, how to get back, and the points.
fn normal(points: [Point; 4]) -> Option<(Matrix, Matrix, [Point; 4])> {
    let mean = |of: fn(&Point) -> f64| points.iter().map(of).sum::<f64>() / 4.0;
    let (x, y) = (mean(|p| p.0), mean(|p| p.1));
    let spread = points.iter().map(|p| (p.0 - x).hypot(p.1 - y)).sum::<f64>() / 4.0;
    if !(spread.is_finite() && spread > 0.0) {
        return None;
    }
    let scale = std::f64::consts::SQRT_2 / spread;
    let there = [[scale, 0.0, -scale * x], [0.0, scale, -scale * y], [0.0, 0.0, 1.0]];
    let back = [[1.0 / scale, 0.0, x], [0.0, 1.0 / scale, y], [0.0, 0.0, 1.0]];
    Some((there, back, points.map(|p| ((p.0 - x) * scale, (p.1 - y) * scale))))
}

/// The matrix that takes the projective frame to four points; `None` if three of them are in one line.
fn frame([a, b, c, d]: [Point; 4]) -> Option<Matrix> {
    let area = |p: Point, q: Point, r: Point| (q.0 - p.0) * (r.1 - p.1) - (q.1 - p.1) * (r.0 - p.0);
    if area(a, b, c).abs() < FLAT {
        return None;
    }
    let weights = [area(d, b, c), area(a, d, c), area(a, b, d)];
    let [u, v, w] = weights;
    weights.iter().all(|weight| weight.abs() >= FLAT).then_some([
        [u * a.0, v * b.0, w * c.0],
        [u * a.1, v * b.1, w * c.1],
        [u, v, w],
    ])
}

/// The inverse but for a factor, which does not matter here.
fn adjugate([[a, b, c], [d, e, f], [g, h, i]]: Matrix) -> Matrix {
    [
        [e * i - f * h, c * h - b * i, b * f - c * e],
        [f * g - d * i, a * i - c * g, c * d - a * f],
        [d * h - e * g, b * g - a * h, a * e - b * d],
    ]
}

fn product(left: Matrix, right: Matrix) -> Matrix {
    let [[a, b, c], [d, e, f], [g, h, i]] = right;
    let columns = [[a, d, g], [b, e, h], [c, f, i]];
    left.map(|row| columns.map(|column| dot(row, column)))
}

fn times(matrix: Matrix, vector: Vector) -> Vector {
    matrix.map(|row| dot(row, vector))
}

fn dot([a, b, c]: Vector, [x, y, z]: Vector) -> f64 {
    a * x + b * y + c * z
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde::Deserialize;

    use super::*;

    const SQUARE: [Point; 4] = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)];

    #[derive(Deserialize)]
    struct Fixture {
        homographies: Vec<Case>,
    }

    #[derive(Deserialize)]
    struct Case {
        from: [Point; 4],
        to: [Point; 4],
        matrix: [[f64; 3]; 3],
        points: Vec<Point>,
        mapped: Vec<Point>,
    }

    /// Against a solution in fractions, and two other libraries that agree with it:
    /// `tests/fixtures/make_homographies.py`.
    #[test]
    fn agrees_with_other_libraries() {
        let text = include_str!("../../../../tests/fixtures/homographies.json");
        let fixture: Fixture = serde_json::from_str(text).unwrap();
        assert!(fixture.homographies.len() >= 200);
        for case in fixture.homographies {
            let found = Homography::between(case.from, case.to).unwrap();
            for (ours, theirs) in found.0.as_flattened().iter().zip(case.matrix.as_flattened()) {
                assert!((ours - theirs).abs() <= 1e-8 * theirs.abs().max(1.0), "{ours} {theirs}");
            }
            for (point, theirs) in case.points.iter().zip(&case.mapped) {
                let ours = found.map(*point).unwrap();
                let off = (ours.0 - theirs.0).hypot(ours.1 - theirs.1);
                assert!(off < 1e-9 * (1.0 + theirs.0.hypot(theirs.1)), "{ours:?} {theirs:?}");
            }
        }
    }

    /// Heckbert, *Fundamentals of Texture Mapping and Image Warping* (1989), section 2.2.3: the unit square
    /// to a parallelogram is affine.
    #[test]
    fn a_parallelogram_needs_no_perspective() {
        let to = [(1.0, 2.0), (4.0, 3.0), (5.0, 7.0), (2.0, 6.0)];
        let found = Homography::between(SQUARE, to).unwrap().matrix();
        for (ours, right) in
            found.as_flattened().iter().zip([3.0, 1.0, 1.0, 1.0, 4.0, 2.0, 0.0, 0.0, 1.0])
        {
            assert!((ours - right).abs() < 1e-12, "{found:?}");
        }
    }

    #[test]
    fn three_in_a_line_have_no_mapping() {
        let flat = [(0.0, 0.0), (1.0, 1.0), (2.0, 2.0), (0.0, 5.0)];
        for turn in 0..4 {
            let mut flat = flat;
            flat.rotate_left(turn);
            assert_eq!(Homography::between(SQUARE, flat), None);
            assert_eq!(Homography::between(flat, SQUARE), None);
        }
        assert_eq!(Homography::between(SQUARE, [(1.0, 1.0); 4]), None);
        let none = [(0.0, 0.0), (f64::NAN, 0.0), (1.0, 1.0), (0.0, 1.0)];
        assert_eq!(Homography::between(SQUARE, none), None);
    }

    /// A rectangle whose corners are moved by less than a third of its sides: always convex.
    fn four_points() -> impl Strategy<Value = [Point; 4]> {
        let corner = (-0.3..0.3, -0.3..0.3);
        let size = (10.0..8000.0, 10.0..8000.0, -5000.0..5000.0, -5000.0..5000.0);
        (prop::array::uniform4(corner), size).prop_map(|(moved, (width, height, left, top))| {
            let place =
                |(x, y): Point, (dx, dy): Point| (left + (x + dx) * width, top + (y + dy) * height);
            let [a, b, c, d] = SQUARE;
            let [e, f, g, h] = moved;
            [place(a, e), place(b, f), place(c, g), place(d, h)]
        })
    }

    proptest! {
        #[test]
        fn corners_go_to_corners_and_back(from in four_points(), to in four_points(), inside in (0.0..1.0, 0.0..1.0)) {
            let there = Homography::between(from, to).unwrap();
            let back = there.inverse().unwrap();
            for (from, to) in from.iter().zip(&to) {
                let mapped = there.map(*from).unwrap();
                prop_assert!((mapped.0 - to.0).hypot(mapped.1 - to.1) < 1e-5, "{mapped:?} {to:?}");
            }
            let point = Homography::between(SQUARE, from).unwrap().map(inside).unwrap();
            let again = back.map(there.map(point).unwrap()).unwrap();
            prop_assert!((again.0 - point.0).hypot(again.1 - point.1) < 1e-5, "{again:?} {point:?}");
            let swapped = Homography::between(to, from).unwrap().map(to[0]).unwrap();
            prop_assert!((swapped.0 - from[0].0).hypot(swapped.1 - from[0].1) < 1e-5);
        }

        #[test]
        fn what_is_in_a_line_stays_in_a_line(to in four_points(), t in 0.05..0.95) {
            let mapping = Homography::between(SQUARE, to).unwrap();
            // A point of the diagonal, and the two ends.
            let (a, b) = (mapping.map((0.0, 0.0)).unwrap(), mapping.map((1.0, 1.0)).unwrap());
            let p = mapping.map((t, t)).unwrap();
            let off = ((b.0 - a.0) * (p.1 - a.1) - (b.1 - a.1) * (p.0 - a.0)) / (b.0 - a.0).hypot(b.1 - a.1);
            prop_assert!(off.abs() < 1e-6, "{off}");
        }
    }
}
