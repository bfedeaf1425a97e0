//! How long it takes to reach a device and work it: as the map tells, or as this household measured.
//!
//! A [drill](quarterturn_home::Drill) is one walk against the clock, so it holds what no map tells:
//! shoes, keys, the dark, how quickly these people find and turn that device. The rule:
//!
//! 1. Drills to the device from the same space replace the estimate of walking, finding and working:
//!    the latest one, or the median of the last three where there are three.
//! 2. With drills from elsewhere only, the one whose way is most alike is corrected by the difference
//!    of the walks that the map tells. Neither may the correction make it less than half of the map's
//!    own estimate, nor more than the measured time with the whole walk on top.
//! 3. A drill without a starting place began where people mostly are.
//! 4. Where the clock stopped when the device was found, working it comes on top.
//!
//! Common practice, no source: a measured time of the people themselves is better than any table, one
//! slip of three does not count.

use quarterturn_home::{Drill, Home};
use quarterturn_network::Places;

use crate::route::Point;
use crate::walks::Walks;

/// The way to a device and the work there, in seconds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Leg {
    /// Until one stands at it.
    pub(crate) walk: f64,
    /// From then on, until it is worked.
    pub(crate) work: f64,
}

impl Leg {
    pub(crate) fn total(self) -> f64 {
        self.walk + self.work
    }
}

/// What the household has measured, by the place of the device.
#[derive(Debug, Default)]
pub(crate) struct Practice(Vec<Measured>);

/// The drills to one device from one starting place.
#[derive(Debug)]
struct Measured {
    device: usize,
    from: Point,
    seconds: f64,
    found_only: bool,
}

impl Practice {
    pub(crate) fn of_home(home: &Home, places: &Places<'_>) -> Self {
        /// A device, and where the clock was started.
        type Way<'h> = (usize, Option<&'h str>);
        let mut ways: Vec<(Way<'_>, Vec<&Drill>)> = Vec::new();
        let (least, most) = Drill::SECONDS;
        for drill in home.drills.iter().filter(|d| (least..=most).contains(&d.seconds)) {
            let Some(device) = places.of(&drill.component) else { continue };
            let way = (device, drill.from.as_deref().or(home.usual_space.as_deref()));
            match ways.iter_mut().find(|(other, _)| *other == way) {
                Some((_, drills)) => drills.push(drill),
                None => ways.push((way, vec![drill])),
            }
        }
        let measured = ways.into_iter().filter_map(|((device, from), mut drills)| {
            let from = from.map_or_else(Point::default, |space| Point::of_space(home, space));
            // Of one day, the last in the file is the latest.
            drills.sort_by_key(|drill| drill.on);
            let last = drills.len().saturating_sub(3);
            let mut recent = drills.split_off(last);
            if recent.len() == 3 {
                recent.sort_by(|a, b| a.seconds.total_cmp(&b.seconds));
                recent.pop();
            }
            let &Drill { seconds, found_only, .. } = recent.pop()?;
            Some(Measured { device, from, seconds, found_only })
        });
        Self(measured.collect())
    }

    /// True if the household has walked to this device against the clock.
    pub(crate) fn has(&self, device: usize) -> bool {
        self.0.iter().any(|measured| measured.device == device)
    }

    /// The way from `from` to a device that stands at `to`, and `work` seconds there, unless the
    /// household knows better. `walks` tells the seconds that the map gives for a walk.
    pub(crate) fn leg(
        &self,
        device: usize,
        from: Point,
        to: Point,
        work: f64,
        walks: &Walks<'_>,
    ) -> Leg {
        let walk = tidy(walks.seconds(from, to));
        let estimate = Leg { walk, work };
        let differs = |measured: &Measured| {
            if measured.from.is_same_space(from) {
                0.0
            } else {
                walk - tidy(walks.seconds(measured.from, to))
            }
        };
        // Of two that are alike, the same space comes first, then the order of the file.
        let nearest = self.0.iter().filter(|m| m.device == device).min_by(|a, b| {
            let strange = |m: &Measured| !m.from.is_same_space(from);
            strange(a).cmp(&strange(b)).then(differs(a).abs().total_cmp(&differs(b).abs()))
        });
        let Some(measured) = nearest else { return estimate };
        let by_map = if measured.found_only { walk } else { estimate.total() };
        let seconds = if measured.from.is_same_space(from) {
            measured.seconds
        } else {
            let most = measured.seconds + walk;
            (measured.seconds + differs(measured)).max(by_map / 2.0).min(most)
        };
        if measured.found_only {
            return Leg { walk: seconds, work };
        }
        let work = work.min(seconds);
        Leg { walk: seconds - work, work }
    }
}

/// Seconds without the noise of the last digits: of two valves equally far away, noise must not choose,
/// or else a house built the other way round would answer otherwise.
fn tidy(seconds: f64) -> f64 {
    (seconds * 1e6).round() / 1e6
}

#[cfg(test)]
mod tests {
    use quarterturn_home::{
        Closes, Component, Connection, Edit, Home, Kind, Level, Medium, Operates, Space,
    };

    use crate::{Answer, Catalogue, Question, Seen, Spot, Trouble, answer};

    /// A hall of 4 m by 4 m between the kitchen in the west and the garage in the east; the main is in
    /// the garage, and a tap in the kitchen.
    fn home() -> Home {
        let level = Level {
            id: "ground".to_owned(),
            name: "Ground floor".to_owned(),
            elevation_m: 0.0,
            plan: None,
        };
        let room = |id: &str, left: f64| Space {
            id: id.to_owned(),
            name: id.to_owned(),
            level: Some("ground".to_owned()),
            outline: vec![(left, 0.0), (left + 4.0, 0.0), (left + 4.0, 4.0), (left, 4.0)],
            outdoors: false,
        };
        let part = |id: &str, kind: Kind, space: &str, x: f64| {
            let mut part = Component::new(id, kind, id);
            part.space = Some(space.to_owned());
            part.at = Some((x, 2.0, 1.0));
            part
        };
        let mut main = part("main", Kind::IsolatingValve, "garage", 11.0);
        let closes = Some(Closes::QuarterTurn);
        main.operates = Some(Operates { closes, ..Operates::default() });
        let street = Component::new("street", Kind::WaterMain, "street");
        let tap = part("tap", Kind::Tap, "kitchen", 2.0);
        Home {
            format: 1,
            levels: vec![level],
            spaces: vec![room("kitchen", 0.0), room("hall", 4.0), room("garage", 8.0)],
            components: vec![street, main, tap],
            connections: vec![
                Connection::new("street", "main", Medium::ColdWater),
                Connection::new("main", "tap", Medium::ColdWater),
            ],
            usual_space: Some("hall".to_owned()),
            ..Home::default()
        }
    }

    /// The home after these drills to the main: from where, seconds, the day of May.
    fn practised(drills: &[(&str, f64, u32)]) -> Home {
        let drills = drills.iter().map(|&(from, seconds, day)| {
            let from = Some(from).filter(|from| !from.is_empty());
            let on = format!("2026-05-{day:02}").parse().unwrap();
            let drill = quarterturn_home::Drill::new("main", from, seconds, on);
            Edit::AddDrill(Box::new(drill))
        });
        Edit::All(drills.collect()).made_on(&home()).unwrap()
    }

    fn leak(home: &Home, from: &str) -> Answer {
        let question = Question {
            trouble: Trouble::Leak,
            at: Spot::Component("tap".to_owned()),
            from: Some(from.to_owned()),
            failed: Vec::new(),
            seen: Vec::<(String, Seen)>::new(),
        };
        answer(home, &question, &Catalogue::english())
    }

    /// Seconds of the step at the main, and of its set.
    fn seconds(home: &Home, from: &str) -> (f64, f64) {
        let answer = leak(home, from);
        let step = answer.steps.iter().find(|s| s.component.as_deref() == Some("main")).unwrap();
        assert_eq!(step.practised, !home.drills.is_empty());
        let set = answer.sets.iter().find(|set| set.close == ["main"]).unwrap();
        assert!((step.seconds.unwrap() - set.seconds).abs() < 1e-9);
        (step.seconds.unwrap(), set.litres.unwrap())
    }

    #[test]
    fn the_latest_drill_from_there_replaces_the_estimate() {
        let (by_map, litres) = seconds(&home(), "kitchen");
        let slow = seconds(&practised(&[("kitchen", 30.0, 1), ("kitchen", 95.0, 2)]), "kitchen");
        assert!((slow.0 - 95.0).abs() < 1e-9, "{slow:?}");
        assert!(slow.0 > by_map && slow.1 > litres, "more time is more water");
        // The latest by its day, not by its place in the file.
        let other = practised(&[("kitchen", 95.0, 2), ("kitchen", 30.0, 1)]);
        assert!((seconds(&other, "kitchen").0 - 95.0).abs() < 1e-9);
    }

    #[test]
    fn of_three_the_middle_one_counts_and_the_fourth_back_does_not() {
        let drills = [("kitchen", 999.0, 1), ("kitchen", 40.0, 2), ("kitchen", 20.0, 3)];
        assert!((seconds(&practised(&drills), "kitchen").0 - 40.0).abs() < 1e-9);
        let drills = [&drills[..], &[("kitchen", 25.0, 4)]].concat();
        assert!((seconds(&practised(&drills), "kitchen").0 - 25.0).abs() < 1e-9);
    }

    /// The hall is 4 m nearer than the kitchen, and one door less.
    #[test]
    fn from_elsewhere_the_difference_of_the_walks_is_taken_off() {
        let shorter = seconds(&home(), "kitchen").0 - seconds(&home(), "hall").0;
        assert!(shorter > 3.0, "{shorter}");
        let hall = seconds(&practised(&[("kitchen", 60.0, 1)]), "hall").0;
        assert!((hall - (60.0 - shorter)).abs() <= 1.0, "{hall}");
        let kitchen = seconds(&practised(&[("hall", 60.0, 1)]), "kitchen").0;
        assert!((kitchen - (60.0 + shorter)).abs() <= 1.0, "{kitchen}");
        // Whoever told no starting place began where people mostly are: in the hall.
        let usual = seconds(&practised(&[("", 60.0, 1)]), "kitchen").0;
        assert!((usual - kitchen).abs() < 1e-9, "{usual}");
    }

    #[test]
    fn the_correction_stays_within_sense() {
        let by_map = seconds(&home(), "garage").0;
        let quick = seconds(&practised(&[("kitchen", 1.0, 1)]), "garage").0;
        assert!((quick - by_map / 2.0).abs() <= 1.0, "{quick} {by_map}");
        let walk = seconds(&home(), "kitchen").0;
        let far = seconds(&practised(&[("garage", 5.0, 1)]), "kitchen").0;
        assert!((5.0..=5.0 + walk).contains(&far), "{far} {walk}");
    }

    #[test]
    fn where_the_clock_stopped_at_the_find_the_work_comes_on_top() {
        let mut home = practised(&[("kitchen", 50.0, 1)]);
        home.drills[0].found_only = true;
        let seconds = seconds(&home, "kitchen").0;
        assert!(seconds > 50.0 && seconds < 70.0, "{seconds}");
    }

    #[test]
    fn the_json_stays_as_it_was() {
        let plain = leak(&home(), "kitchen");
        let with = leak(&practised(&[("kitchen", 50.0, 1)]), "kitchen");
        let keys = |answer: &Answer| match serde_json::to_value(answer).unwrap() {
            serde_json::Value::Object(map) => map["steps"][0].as_object().unwrap().len(),
            other => panic!("{other}"),
        };
        assert_eq!(keys(&plain), keys(&with));
        assert_eq!(keys(&plain), 4);
    }
}
