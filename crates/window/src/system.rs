//! The shape of each system's sign.

use egui::{Color32, Painter, Pos2, Shape, Stroke, Vec2};
pub(crate) use quarterturn_guidance::System;

/// Draws the system's shape: round for water, square for drains, a diamond for power, a hexagon
/// for gas, an upright oblong for cooling, a triangle for control.
pub(crate) fn shape(
    system: System,
    painter: &Painter,
    centre: Pos2,
    radius: f32,
    fill: Color32,
    edge: Stroke,
) {
    let corners: &[(f32, f32)] = match system {
        System::Water => {
            painter.circle(centre, radius, fill, edge);
            return;
        }
        System::Drain => &[(-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)],
        System::Power => &[(0.0, -1.2), (1.2, 0.0), (0.0, 1.2), (-1.2, 0.0)],
        System::Gas => {
            &[(-0.6, -0.95), (0.6, -0.95), (1.15, 0.0), (0.6, 0.95), (-0.6, 0.95), (-1.15, 0.0)]
        }
        System::Cooling => &[(-0.8, -1.1), (0.8, -1.1), (0.8, 1.1), (-0.8, 1.1)],
        System::Control => &[(-1.2, -0.9), (1.2, -0.9), (0.0, 1.2)],
    };
    let points = corners.iter().map(|&(x, y)| centre + Vec2::new(x, y) * radius).collect();
    painter.add(Shape::convex_polygon(points, fill, edge));
}
