//! One question to one home, with what is read off the map for it.

use std::cell::{OnceCell, RefCell};
use std::collections::{BTreeMap, BTreeSet};

use quarterturn_estimate::si::time::second;
use quarterturn_estimate::{device, leak};
use quarterturn_home::{
    Closes, Component, Date, DeviceState, Handle, Home, Kind, Medium, Net, OperableBy,
};
use quarterturn_network::{Arriving, HomeNet, Impact, Node, Places};

use crate::catalogue::{Catalogue, fill};
use crate::guide::Guide;
use crate::isolation::Ways;
use crate::practice::Leg;
use crate::route::Point;
use crate::walks::Walks;
use crate::{By, Question, Seen, Spot, Trouble, spots};

/// Litres in a US gallon (NIST Handbook 44, appendix C).
pub(crate) const LITRES_A_GALLON: f64 = 3.785_412;

/// Everything an answer is computed from.
pub(crate) struct Context<'a> {
    pub(crate) guide: &'a Guide<'a>,
    pub(crate) home: &'a Home,
    pub(crate) question: &'a Question,
    /// The words of the answer. Nothing else here hangs on the language.
    pub(crate) catalogue: &'a Catalogue,
    today: Option<Date>,
    pub(crate) places: &'a Places<'a>,
    pub(crate) impact: &'a Impact,
    /// What arrives where before anything more is shut.
    pub(crate) arriving: Arriving,
    /// Devices that are shut already and hold, by place.
    shut: Vec<bool>,
    /// Devices that control fire sprinklers and nothing else, by place.
    pub(crate) sprinkler_control: &'a [bool],
    /// Devices that the question calls failed, by place.
    failed: Vec<bool>,
    /// Ids of spaces where water stands, as far as was seen or follows from the trouble.
    wet: BTreeSet<String>,
    start: Point,
    walks: Walks<'a>,
    /// The net of the connection that was asked for, with a point on it.
    net_with_point: OnceCell<HomeNet>,
    /// The ways found so far, by net and by what they cut off.
    pub(crate) ways: RefCell<BTreeMap<(Net, Vec<Node>), Ways>>,
}

impl<'a> Context<'a> {
    pub(crate) fn new(
        guide: &'a Guide<'_>,
        question: &'a Question,
        catalogue: &'a Catalogue,
        today: Option<Date>,
    ) -> Self {
        let home = guide.home();
        let places = guide.places();
        let mut failed = vec![false; home.components.len()];
        for id in &question.failed {
            if let Some(place) = places.of(id) {
                failed[place] = true;
            }
        }
        let mut this = Self {
            guide,
            home,
            question,
            catalogue,
            today,
            places,
            impact: guide.impact(),
            arriving: Arriving::default(),
            shut: Vec::new(),
            sprinkler_control: guide.sprinkler_control(),
            failed,
            wet: BTreeSet::new(),
            start: Point::default(),
            walks: Walks::new(guide, Vec::new(), Vec::new()),
            net_with_point: OnceCell::new(),
            ways: RefCell::new(BTreeMap::new()),
        };
        this.shut = (0..home.components.len()).map(|place| this.stands_shut(place)).collect();
        this.arriving = this.impact.arriving(|place| this.shut[place]);
        this.wet = this.wet_spaces();
        this.start = this.start_point();
        let (wet, barred) = this.water_to_walk_round();
        this.walks = Walks::new(guide, wet, barred);
        this
    }

    /// The day of the question, if it is known.
    pub(crate) fn today(&self) -> Option<Date> {
        self.today
    }

    /// Places of the components that the spot stands for.
    pub(crate) fn spot_components(&self) -> Vec<usize> {
        match &self.question.at {
            Spot::Component(id) => self.places.of(id).into_iter().collect(),
            Spot::Connection(from, to) => {
                [from, to].into_iter().filter_map(|id| self.places.of(id)).collect()
            }
            Spot::Space(id) => self.components_in(id),
            Spot::Home => self.anything(),
        }
    }

    /// Places of what the trouble can be at where nobody knows where it is: all that people use and
    /// see indoors (what happens outdoors is seen). Devices that cut off are not among them, for they
    /// are what helps, nor are fire sprinklers, for their water is not shut off to save water.
    fn anything(&self) -> Vec<usize> {
        // What comes through a ceiling leaks somewhere.
        let trouble = match self.question.trouble {
            Trouble::WaterFromAbove => Trouble::Leak,
            trouble => trouble,
        };
        (0..self.home.components.len())
            .filter(|&place| {
                let component = &self.home.components[place];
                let kind = component.kind;
                let space = component.space.as_deref().and_then(|id| self.home.space(id));
                kind != Kind::SprinklerRiser
                    && !space.is_some_and(|space| space.outdoors)
                    && (kind.is_served() || kind.is_drain_opening())
                    && ![Net::Water, Net::Power, Net::Gas].iter().any(|net| kind.isolates(*net))
                    && spots::is_spot(self.home, trouble, component)
            })
            .collect()
    }

    /// Place in the file of the connection that the spot stands for.
    pub(crate) fn spot_connection(&self) -> Option<usize> {
        let Spot::Connection(from, to) = &self.question.at else { return None };
        self.home.connections.iter().position(|link| &link.from == from && &link.to == to)
    }

    /// Id of the space that the spot lies in.
    pub(crate) fn spot_space(&self) -> Option<&'a str> {
        match &self.question.at {
            Spot::Space(id) => self.home.space(id).map(|space| space.id.as_str()),
            Spot::Home => None,
            _ => self.spot_components().into_iter().find_map(|place| self.space_of(place)),
        }
    }

    /// Places of the components in a space.
    pub(crate) fn components_in(&self, space: &str) -> Vec<usize> {
        (0..self.home.components.len())
            .filter(|&place| self.home.components[place].space.as_deref() == Some(space))
            .collect()
    }

    /// The nodes that leak, or are dangerous, when the spot does.
    pub(crate) fn targets(&self, net: &HomeNet) -> Vec<Node> {
        if let (Spot::Connection(..), Some(point)) = (&self.question.at, net.point) {
            return vec![point];
        }
        if matches!(self.question.at, Spot::Connection(..)) {
            return Vec::new();
        }
        self.spot_components()
            .into_iter()
            .filter(|&place| net.member[place])
            .map(|place| net.body[place])
            .collect()
    }

    /// What was seen last at a component or space.
    pub(crate) fn seen(&self, id: &str) -> Option<Seen> {
        self.question.seen.iter().rev().find(|(at, _)| at == id).map(|(_, seen)| *seen)
    }

    /// True if a device is shut already and holds: seen so, or normally so.
    pub(crate) fn is_shut(&self, place: usize) -> bool {
        self.shut[place]
    }

    fn stands_shut(&self, place: usize) -> bool {
        let component = &self.home.components[place];
        let shuts = [Net::Water, Net::Power, Net::Gas].iter().any(|&n| component.kind.isolates(n))
            || matches!(component.kind, Kind::Switch | Kind::Gfci);
        if !shuts || self.failed[place] || component.state() == DeviceState::LeaksBy {
            return false;
        }
        match self.seen(&component.id) {
            Some(Seen::Off | Seen::Tripped) => true,
            Some(Seen::On) => false,
            _ => component.normally_shut(),
        }
    }

    /// True if a device can be worked and is known of nothing that speaks against it.
    pub(crate) fn is_usable(&self, place: usize) -> bool {
        let component = &self.home.components[place];
        !self.failed[place]
            && !self.sprinkler_control[place]
            && !matches!(component.state(), DeviceState::Seized | DeviceState::LeaksBy)
    }

    /// Who can work a device.
    pub(crate) fn by(&self, place: usize) -> By {
        match self.home.components[place].operable_by {
            OperableBy::Anyone => By::Anyone,
            OperableBy::Licensed => By::Licensed,
            OperableBy::Utility => By::Utility,
        }
    }

    /// Chance that a device works and holds, by its state, its kind and when it was last worked.
    ///
    /// Common practice, no source for the figures: valves that were never moved fail, multi-turn ones
    /// more often than quarter-turn ones, and what was tried years ago counts for less.
    pub(crate) fn confidence(&self, place: usize) -> f64 {
        /// What is lost for each year since a device was last worked, and at most.
        const A_YEAR: f64 = 0.03;
        const AT_MOST: f64 = 0.18;
        let component = &self.home.components[place];
        let operates = component.operates.as_ref();
        let years = match (operates.and_then(|o| o.exercised), self.today) {
            (Some(last), Some(today)) => {
                #[expect(clippy::cast_precision_loss, reason = "days of a few years")]
                let days = (today.days_since_1970() - last.days_since_1970()).max(0) as f64;
                // Within a year it is as good as new.
                (days / 365.25 - 1.0).max(0.0)
            }
            _ => 0.0,
        };
        let fresh = match (component.state(), closes(component)) {
            (DeviceState::Works, _) => 0.98,
            (DeviceState::Stiff, _) => 0.8,
            (DeviceState::Seized | DeviceState::LeaksBy, _) => return 0.0,
            (DeviceState::Unknown, Closes::MultiTurn | Closes::Turns(_)) => 0.8,
            (DeviceState::Unknown, _) => 0.92,
        };
        fresh - (A_YEAR * years).min(AT_MOST)
    }

    /// Likely seconds to work a device, once one stands at it.
    pub(crate) fn work_seconds(&self, place: usize) -> f64 {
        let component = &self.home.components[place];
        if let Some(seconds) = component.operates.as_ref().and_then(|o| o.seconds) {
            return seconds;
        }
        let way = match closes(component) {
            Closes::QuarterTurn => device::Way::QuarterTurn,
            Closes::MultiTurn => device::Way::MultiTurn,
            Closes::Turns(turns) => device::Way::Turns(turns),
            Closes::Push => device::Way::Push,
            Closes::Pull => device::Way::Pull,
            Closes::ToOff => device::Way::ToOff,
            Closes::Unscrew => device::Way::Unscrew,
        };
        let condition = match component.state() {
            DeviceState::Works => device::Condition::Works,
            DeviceState::Stiff => device::Condition::Stiff,
            DeviceState::Seized => device::Condition::Seized,
            DeviceState::LeaksBy => device::Condition::LeaksBy,
            DeviceState::Unknown => device::Condition::Unknown,
        };
        device::work_time(way, condition).likely.get::<second>()
    }

    /// The way from `from` to a device and the work there, as this household measured it, else as the
    /// map tells.
    pub(crate) fn leg(&self, from: Point, place: usize) -> Leg {
        let work = self.work_seconds(place);
        self.guide.practice().leg(place, from, self.point(place), work, &self.walks)
    }

    /// Likely seconds until one stands at a component, from where the person starts.
    pub(crate) fn walk_seconds(&self, place: usize) -> f64 {
        self.leg(self.start, place).walk
    }

    /// True if this household has walked to a device against the clock.
    pub(crate) fn is_practised(&self, place: usize) -> bool {
        self.guide.practice().has(place)
    }

    /// Where the person starts from: where they say they are, else at the spot, else where people
    /// mostly are.
    pub(crate) fn start(&self) -> Point {
        self.start
    }

    /// Where a component is. A breaker without a place of its own is in its panel.
    pub(crate) fn point(&self, place: usize) -> Point {
        self.guide.point(place)
    }

    /// The component that tells where `place` is: itself, or the panel it sits in.
    pub(crate) fn standing_in(&self, place: usize) -> usize {
        self.guide.standing_in(place)
    }

    /// Id of the space a component is in, or its panel is.
    pub(crate) fn space_of(&self, place: usize) -> Option<&'a str> {
        self.home.components[self.standing_in(place)].space.as_deref()
    }

    /// True if water stands in this space, as far as is known.
    pub(crate) fn is_wet(&self, space: &str) -> bool {
        self.wet.contains(space)
    }

    /// True if water was seen standing in this space, or on something in it.
    fn water_stands(&self, space: &str) -> bool {
        self.question.seen.iter().any(|(id, seen)| {
            *seen == Seen::Wet && (id == space || self.wets_its_space(id) == Some(space))
        })
    }

    /// Id of the space that is wet when this component is: its own, unless it is there to hold water.
    fn wets_its_space(&self, id: &str) -> Option<&'a str> {
        let place = self.places.of(id)?;
        let holds_water = matches!(
            self.home.components[place].kind,
            Kind::CondensatePan | Kind::FloatSwitch | Kind::SumpPit | Kind::EjectorPit
        );
        if holds_water { None } else { self.space_of(place) }
    }

    /// True if nobody may go to this component: it is in water, or every way to it leads through water
    /// that may be live.
    pub(crate) fn is_forbidden(&self, place: usize) -> bool {
        self.is_in_water(place) || self.walks.is_barred(self.start, || self.point(place))
    }

    /// True if water is on the way from a point to this component, and there is no other way.
    pub(crate) fn leads_through_water(&self, from: Point, place: usize) -> bool {
        self.walks.is_wet(from, || self.point(place))
    }

    /// Spaces with water that the way to this component leads across, since there is no other; in
    /// order, by place in the home.
    pub(crate) fn water_on_the_way(&self, place: usize) -> Vec<usize> {
        self.walks.water_on_the_way(self.start, self.point(place))
    }

    /// For each space of the home, whether one walks round it if one can, and whether nobody walks
    /// across it: the water that stands there may be live. One may leave where one is.
    fn water_to_walk_round(&self) -> (Vec<bool>, Vec<bool>) {
        let spaces = self.home.spaces.iter().enumerate();
        spaces
            .map(|(place, space)| {
                let is_wet = self.is_wet(&space.id);
                let stands = self.water_stands(&space.id);
                let meets_power = self.question.trouble == Trouble::WaterNearPower && is_wet;
                let elsewhere = self.start.space != Some(place);
                let live = (stands || meets_power) && self.may_be_live(&space.id);
                (elsewhere && (is_wet || stands) && !space.outdoors, elsewhere && live)
            })
            .unzip()
    }

    /// True if this component is something electrical where it is wet, or anything in standing water
    /// that may be live.
    pub(crate) fn is_in_water(&self, place: usize) -> bool {
        let component = &self.home.components[place];
        if self.seen(&component.id) == Some(Seen::Wet) && is_electrical(component.kind) {
            return true;
        }
        let Some(space) = self.space_of(place) else { return false };
        if is_electrical(component.kind) && self.is_wet(space) {
            return true;
        }
        self.water_stands(space) && self.may_be_live(space)
    }

    /// True if standing water in a space may be live: something electrical is in it, or nobody has
    /// written down what is.
    fn may_be_live(&self, space: &str) -> bool {
        let here = self.components_in(space);
        let wired = |&place: &usize| {
            is_electrical(self.home.components[place].kind)
                || self.guide.lines_at(place).any(|l| l.carries == Medium::Power)
        };
        here.iter().any(wired) || !here.iter().any(|&p| is_electrical(self.home.components[p].kind))
    }

    fn wet_spaces(&self) -> BTreeSet<String> {
        let mut wet = BTreeSet::new();
        for (id, seen) in &self.question.seen {
            if *seen != Seen::Wet {
                continue;
            }
            if self.home.space(id).is_some() {
                wet.insert(id.clone());
            } else if let Some(space) = self.wets_its_space(id) {
                wet.insert(space.to_owned());
            }
        }
        if self.question.trouble.is_wet() {
            wet.extend(self.spot_space().map(str::to_owned));
        }
        for (id, seen) in &self.question.seen {
            if *seen == Seen::Dry {
                wet.remove(id);
            }
        }
        wet
    }

    fn start_point(&self) -> Point {
        match &self.question.from {
            Some(space) => Point::of_space(self.home, space),
            None => self.spot_point(),
        }
    }

    /// Where the spot is on the plan.
    pub(crate) fn spot_point(&self) -> Point {
        match &self.question.at {
            Spot::Space(id) => Point::of_space(self.home, id),
            Spot::Home => self
                .home
                .usual_space
                .as_deref()
                .map_or_else(Point::default, |id| Point::of_space(self.home, id)),
            Spot::Component(_) | Spot::Connection(..) => {
                self.spot_components().first().map_or_else(Point::default, |&p| self.point(p))
            }
        }
    }

    /// Litres as a unit's word and a figure with no more digits than it deserves.
    pub(crate) fn amount(&self, litres: f64) -> (&'static str, f64) {
        let (unit, amount) = match self.home.units {
            quarterturn_home::Units::Us => ("gallons", litres / LITRES_A_GALLON),
            quarterturn_home::Units::Si => ("liters", litres),
        };
        (unit, if amount < 10.0 { amount.ceil() } else { (amount / 5.0).round() * 5.0 })
    }

    /// What broke, as far as the spot tells.
    pub(crate) fn leak_source(&self) -> leak::Source {
        let kind = |place: usize| self.home.components[place].kind;
        match (&self.question.at, self.spot_components().first()) {
            (Spot::Component(_), Some(&place)) => match kind(place) {
                Kind::WashingMachine => leak::Source::WasherHose,
                Kind::SupplyHose
                | Kind::Tap
                | Kind::Sink
                | Kind::Basin
                | Kind::Bath
                | Kind::Shower
                | Kind::Dishwasher
                | Kind::IceMaker => leak::Source::SplitHose,
                Kind::Toilet => leak::Source::ToiletFill,
                Kind::WaterHeater | Kind::PressureTank | Kind::ExpansionTank => {
                    leak::Source::HeaterTank
                }
                Kind::WaterMain | Kind::WaterMeter => leak::Source::BurstOneInch,
                _ => leak::Source::BurstHalfInch,
            },
            _ => leak::Source::BurstHalfInch,
        }
    }

    /// The net of the home, with a point on the connection that was asked for.
    pub(crate) fn net(&self, net: Net) -> &HomeNet {
        let connection = self.spot_connection();
        let is_in_net = |at: usize| self.home.connections[at].carries.net() == net;
        if !connection.is_some_and(is_in_net) {
            return self.guide.net(net);
        }
        self.net_with_point.get_or_init(|| HomeNet::of(self.home, self.places, net, connection))
    }

    /// The name of a component, with its tag if it has one.
    pub(crate) fn name(&self, place: usize) -> String {
        let component = &self.home.components[place];
        match &component.tag {
            Some(tag) => self
                .catalogue
                .fill("device-with-tag", &[fill("name", &component.name), fill("tag", tag)]),
            None => component.name.clone(),
        }
    }
}

/// True for what must not be touched, or gone to, where it is wet.
pub(crate) fn is_electrical(kind: Kind) -> bool {
    kind.is_power_distribution()
        || matches!(
            kind,
            Kind::JunctionBox
                | Kind::Switch
                | Kind::Gfci
                | Kind::Receptacle
                | Kind::Light
                | Kind::Lampholder
                | Kind::Appliance
                | Kind::SumpPump
                | Kind::SmokeAlarm
                | Kind::MedicalDevice
                | Kind::CirculationPump
                | Kind::CondensatePump
                | Kind::Thermostat
        )
}

/// How a device closes: as its file says, else as its handle or kind usually does.
pub fn closes(component: &Component) -> Closes {
    let operates = component.operates.as_ref();
    if let Some(closes) = operates.and_then(|o| o.closes) {
        return closes;
    }
    match (operates.and_then(|o| o.handle), component.kind) {
        (Some(Handle::Wheel | Handle::Knob), _) => Closes::MultiTurn,
        (Some(Handle::Lever | Handle::Tee | Handle::Slot | Handle::Key), _) => Closes::QuarterTurn,
        (Some(Handle::PullOut), _) => Closes::Pull,
        (Some(Handle::Cap), _) | (None, Kind::Cleanout) => Closes::Unscrew,
        (Some(Handle::Button), _) => Closes::Push,
        (Some(Handle::Toggle), _) => Closes::ToOff,
        (
            None,
            Kind::Breaker | Kind::ServiceDisconnect | Kind::Disconnect | Kind::TransferSwitch,
        ) => Closes::ToOff,
        (None, Kind::GasValve) => Closes::QuarterTurn,
        (None, _) => Closes::MultiTurn,
    }
}
