//! The signs of the troubles, drawn so that no font has to hold them.

use std::f32::consts::TAU;

use egui::{Align2, Color32, FontId, Painter, Pos2, Rect, Shape, Stroke, pos2, vec2};
use quarterturn_guidance::Trouble;

use crate::fonts::bold;

/// Draws the sign of a trouble into `rect`.
pub(crate) fn trouble(painter: &Painter, rect: Rect, ink: Color32, trouble: Trouble) {
    let sheet = Sheet { painter, rect, ink };
    match trouble {
        Trouble::Leak => sheet.drop(50.0, 54.0, 34.0),
        Trouble::WaterFromAbove => {
            sheet.line(&[(4.0, 18.0), (96.0, 18.0)]);
            sheet.drop(30.0, 52.0, 16.0);
            sheet.drop(68.0, 70.0, 20.0);
        }
        Trouble::ToiletOverflow => {
            sheet.line(&[(30.0, 6.0), (30.0, 52.0)]);
            sheet.line(&[(12.0, 52.0), (90.0, 52.0), (74.0, 84.0), (40.0, 84.0), (30.0, 52.0)]);
            sheet.arrow_up(66.0, 44.0, 6.0);
        }
        Trouble::NoWater => {
            sheet.tap();
            sheet.line(&[(52.0, 78.0), (92.0, 98.0)]);
            sheet.line(&[(92.0, 78.0), (52.0, 98.0)]);
        }
        Trouble::NoHotWater => {
            sheet.tap();
            sheet.line(&[(72.0, 70.0), (72.0, 98.0)]);
            sheet.line(&[(60.0, 77.0), (84.0, 91.0)]);
            sheet.line(&[(84.0, 77.0), (60.0, 91.0)]);
        }
        Trouble::PitRising => {
            sheet.line(&[(14.0, 14.0), (14.0, 94.0), (86.0, 94.0), (86.0, 14.0)]);
            sheet.line(&[(14.0, 70.0), (32.0, 78.0), (50.0, 70.0), (68.0, 78.0), (86.0, 70.0)]);
            sheet.arrow_up(50.0, 58.0, 8.0);
        }
        Trouble::DrainBacksUp => {
            sheet.line(&[(8.0, 30.0), (22.0, 66.0), (78.0, 66.0), (92.0, 30.0)]);
            sheet.line(&[(50.0, 66.0), (50.0, 94.0)]);
            sheet.arrow_up(50.0, 52.0, 8.0);
        }
        Trouble::SewageRising => {
            sheet.waves(66.0);
            sheet.waves(86.0);
            sheet.arrow_up(50.0, 52.0, 4.0);
        }
        Trouble::DeadOutlet => {
            sheet.outlet();
            sheet.line(&[(6.0, 94.0), (94.0, 6.0)]);
        }
        Trouble::DeadLight => {
            sheet.circle(50.0, 38.0, 30.0);
            sheet.line(&[(36.0, 76.0), (64.0, 76.0)]);
            sheet.line(&[(40.0, 92.0), (60.0, 92.0)]);
            sheet.line(&[(10.0, 94.0), (90.0, 4.0)]);
        }
        Trouble::DeadArea => {
            sheet.line(&[
                (50.0, 6.0),
                (92.0, 42.0),
                (92.0, 92.0),
                (8.0, 92.0),
                (8.0, 42.0),
                (50.0, 6.0),
            ]);
            sheet.fill(&[(50.0, 14.0), (87.0, 46.0), (87.0, 87.0), (50.0, 87.0)]);
        }
        Trouble::GfciTrips => {
            sheet.outlet();
            sheet.line(&[(34.0, 72.0), (66.0, 72.0)]);
        }
        Trouble::BreakerTrips => {
            sheet.line(&[(50.0, 4.0), (50.0, 28.0)]);
            sheet.line(&[(50.0, 72.0), (50.0, 96.0)]);
            sheet.line(&[(50.0, 72.0), (80.0, 34.0)]);
            sheet.dot(50.0, 28.0, 7.0);
            sheet.dot(50.0, 72.0, 7.0);
        }
        Trouble::Sparks => sheet.bolt(),
        Trouble::Shock => {
            sheet.dot(28.0, 16.0, 13.0);
            sheet.line(&[(28.0, 32.0), (28.0, 64.0), (14.0, 96.0)]);
            sheet.line(&[(28.0, 64.0), (42.0, 96.0)]);
            sheet.line(&[(8.0, 44.0), (52.0, 44.0)]);
            sheet.line(&[(84.0, 10.0), (64.0, 42.0), (90.0, 48.0), (66.0, 82.0)]);
        }
        Trouble::WaterNearPower => {
            sheet.line(&[(62.0, 4.0), (40.0, 30.0), (66.0, 34.0), (46.0, 58.0)]);
            sheet.waves(70.0);
            sheet.waves(88.0);
        }
        Trouble::WaterAtAirHandler => {
            sheet.line(&[(8.0, 8.0), (92.0, 8.0), (92.0, 48.0), (8.0, 48.0), (8.0, 8.0)]);
            sheet.line(&[(26.0, 28.0), (74.0, 28.0)]);
            sheet.drop(34.0, 80.0, 13.0);
            sheet.drop(68.0, 80.0, 13.0);
        }
        Trouble::WiresDown => {
            sheet.line(&[(24.0, 4.0), (24.0, 96.0)]);
            sheet.line(&[(6.0, 20.0), (44.0, 20.0)]);
            sheet.line(&[(40.0, 20.0), (58.0, 34.0), (66.0, 60.0), (62.0, 94.0), (94.0, 94.0)]);
        }
        Trouble::NotAnswering => {
            sheet.line(&[(14.0, 46.0), (86.0, 46.0), (86.0, 94.0), (14.0, 94.0), (14.0, 46.0)]);
            sheet.line(&[(30.0, 46.0), (30.0, 20.0), (50.0, 6.0), (70.0, 20.0), (70.0, 46.0)]);
            sheet.dot(50.0, 70.0, 9.0);
        }
        Trouble::CoolingStopped => {
            for turn in 0..3_u8 {
                let angle = f32::from(turn) * TAU / 6.0;
                let (x, y) = (angle.sin() * 44.0, angle.cos() * 44.0);
                sheet.line(&[(50.0 - x, 50.0 - y), (50.0 + x, 50.0 + y)]);
            }
            sheet.circle(50.0, 50.0, 22.0);
        }
        Trouble::GasSmell => {
            for x in [24.0, 50.0, 76.0] {
                sheet.line(&[
                    (x, 94.0),
                    (x - 10.0, 76.0),
                    (x + 10.0, 54.0),
                    (x - 10.0, 32.0),
                    (x, 10.0),
                ]);
            }
        }
        Trouble::CoAlarm => {
            sheet.circle(50.0, 50.0, 46.0);
            sheet.letters("CO");
        }
        Trouble::Fire => sheet.flame(),
    }
}

/// Draws the safety alert sign of ANSI Z535: a triangle with an exclamation mark.
pub(crate) fn alert(painter: &Painter, rect: Rect, ink: Color32, on: Color32) {
    let sheet = Sheet { painter, rect, ink };
    let triangle = [(50.0, 6.0), (97.0, 90.0), (3.0, 90.0)];
    let points = triangle.iter().map(|&(x, y)| sheet.at(x, y)).collect();
    painter.add(Shape::convex_polygon(points, ink, Stroke::NONE));
    let sheet = Sheet { painter, rect, ink: on };
    sheet.line(&[(50.0, 36.0), (50.0, 62.0)]);
    sheet.dot(50.0, 77.0, 6.0);
}

/// A square of 100 by 100 to draw on.
struct Sheet<'a> {
    painter: &'a Painter,
    rect: Rect,
    ink: Color32,
}

impl Sheet<'_> {
    fn at(&self, x: f32, y: f32) -> Pos2 {
        self.rect.lerp_inside(vec2(x / 100.0, y / 100.0))
    }

    fn scale(&self) -> f32 {
        self.rect.width() / 100.0
    }

    fn stroke(&self) -> Stroke {
        Stroke::new(10.0 * self.scale(), self.ink)
    }

    fn line(&self, corners: &[(f32, f32)]) {
        let points: Vec<Pos2> = corners.iter().map(|&(x, y)| self.at(x, y)).collect();
        self.painter.add(Shape::line(points, self.stroke()));
    }

    fn dot(&self, x: f32, y: f32, radius: f32) {
        self.painter.circle_filled(self.at(x, y), radius * self.scale(), self.ink);
    }

    fn circle(&self, x: f32, y: f32, radius: f32) {
        self.painter.circle_stroke(self.at(x, y), radius * self.scale(), self.stroke());
    }

    fn fill(&self, corners: &[(f32, f32)]) {
        let points = corners.iter().map(|&(x, y)| self.at(x, y)).collect();
        self.painter.add(Shape::convex_polygon(points, self.ink, Stroke::NONE));
    }

    fn drop(&self, x: f32, y: f32, radius: f32) {
        self.dot(x, y + radius * 0.2, radius);
        self.fill(&[
            (x, y - radius * 1.6),
            (x + radius * 0.87, y - radius * 0.28),
            (x - radius * 0.87, y - radius * 0.28),
        ]);
    }

    fn arrow_up(&self, x: f32, from: f32, to: f32) {
        self.line(&[(x, from), (x, to + 6.0)]);
        self.line(&[(x - 16.0, to + 18.0), (x, to), (x + 16.0, to + 18.0)]);
    }

    fn waves(&self, y: f32) {
        self.line(&[
            (4.0, y),
            (20.0, y + 9.0),
            (36.0, y),
            (52.0, y + 9.0),
            (68.0, y),
            (84.0, y + 9.0),
            (96.0, y),
        ]);
    }

    fn tap(&self) {
        self.line(&[(4.0, 38.0), (60.0, 38.0), (72.0, 48.0), (72.0, 62.0)]);
        self.line(&[(34.0, 38.0), (34.0, 14.0)]);
        self.line(&[(16.0, 12.0), (52.0, 12.0)]);
    }

    fn outlet(&self) {
        let rect = Rect::from_min_max(self.at(18.0, 10.0), self.at(82.0, 90.0));
        self.painter.rect_stroke(
            rect,
            egui::CornerRadius::same(4),
            Stroke::new(8.0 * self.scale(), self.ink),
            egui::StrokeKind::Middle,
        );
        self.line(&[(38.0, 34.0), (38.0, 54.0)]);
        self.line(&[(62.0, 34.0), (62.0, 54.0)]);
    }

    fn bolt(&self) {
        self.fill(&[(58.0, 2.0), (18.0, 58.0), (50.0, 58.0)]);
        self.fill(&[(42.0, 98.0), (82.0, 42.0), (50.0, 42.0)]);
    }

    fn flame(&self) {
        self.dot(50.0, 66.0, 30.0);
        self.fill(&[(54.0, 2.0), (78.0, 56.0), (26.0, 50.0)]);
        self.fill(&[(26.0, 26.0), (46.0, 60.0), (20.0, 66.0)]);
        self.fill(&[(78.0, 34.0), (80.0, 68.0), (60.0, 60.0)]);
    }

    fn letters(&self, text: &str) {
        let font = FontId::new(44.0 * self.scale(), bold());
        self.painter.text(self.at(50.0, 50.0), Align2::CENTER_CENTER, text, font, self.ink);
    }
}

/// Draws a tick.
pub(crate) fn tick(painter: &Painter, centre: Pos2, ink: Color32) {
    let points = vec![
        centre + vec2(-6.0, 0.0),
        centre + vec2(-2.0, 5.0),
        pos2(centre.x + 7.0, centre.y - 6.0),
    ];
    painter.add(Shape::line(points, Stroke::new(2.5, ink)));
}
