//! Who answers for a spot, and whom to call first about it on a day.

use quarterturn_home::{
    Component, Connection, Contact, Date, Home, Kind, Medium, Net, Role, Warranty, WarrantyKind,
};
use quarterturn_network::Places;
use serde::Serialize;

use crate::catalogue::{Catalogue, fill};
use crate::contacts::{call, contact_for, role_name};
use crate::day::{in_force, last_day, told_day};
use crate::guide::Guide;
use crate::sides::{Side, Sides};
use crate::{Call, Spot, System};

/// Who answers for a spot in one of its nets.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Responsible {
    /// On which side of the boundaries it lies.
    pub side: Side,
    /// Id of the boundary that tells.
    pub boundary: Option<String>,
    /// Whose it is to mend.
    pub party: Party,
    /// Id of the warranty that covers it on the day.
    pub warranty: Option<String>,
    /// The last day of that warranty, or of the last one that ran out.
    pub until: Option<Date>,
    /// Why.
    pub why: String,
    /// Whom to call first: with the reason and the hours.
    pub first: Call,
    /// What they are called for.
    #[serde(skip)]
    pub role: Role,
}

/// Whose something is.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Party {
    /// The owner of the home, or whoever stands in for one.
    Owner,
    /// A contact of the home, by id.
    Contact(String),
    /// A utility that the home has no contact for.
    Utility(Role),
}

/// Who answers for a spot in a net on a day, computed from boundaries, owners and warranties.
///
/// Without a day no warranty is looked at but to say that there may be one. `None` if the spot has
/// nothing of that net, or stands for more than one party.
///
/// ```
/// use quarterturn_guidance::{Catalogue, Party, Spot, responsible};
/// use quarterturn_home::{Net, open};
///
/// let text = r#"Home(format: 1, name: "Hut", components: [
///     (id: "street", kind: WaterMain, name: "Street", owner: "utility"),
///     (id: "meter", kind: WaterMeter, name: "Meter", owner: "utility", boundary: true),
///     (id: "tap", kind: Tap, name: "Tap"),
/// ], connections: [
///     (from: "street", to: "meter", carries: ColdWater),
///     (from: "meter", to: "tap", carries: ColdWater),
/// ], contacts: [(id: "utility", name: "Water utility", phone: "555-0100")])"#;
/// let home = open("home.ron", text).home.expect("the brackets close");
/// let day = "2026-05-02".parse().ok();
/// let at = |id: &str| {
///     let spot = Spot::Component(id.to_owned());
///     responsible(&home, &spot, Net::Water, day, &Catalogue::english()).map(|r| r.party)
/// };
/// assert_eq!(at("tap"), Some(Party::Owner));
/// assert_eq!(at("street"), Some(Party::Contact("utility".to_owned())));
/// ```
#[must_use]
pub fn responsible(
    home: &Home,
    at: &Spot,
    net: Net,
    today: Option<Date>,
    words: &Catalogue,
) -> Option<Responsible> {
    Answering::new(&Guide::of(home), net, today, words).at(at)
}

/// Who answers for the things of one net.
pub(crate) struct Answering<'a> {
    guide: &'a Guide<'a>,
    home: &'a Home,
    places: &'a Places<'a>,
    net: Net,
    today: Option<Date>,
    words: &'a Catalogue,
    sides: &'a Sides,
}

/// One thing of the net: a component, or the line between two.
#[derive(Debug, Clone, Copy)]
enum Thing<'a> {
    Component(usize),
    Line(&'a Connection),
}

impl<'a> Answering<'a> {
    pub(crate) fn new(
        guide: &'a Guide<'_>,
        net: Net,
        today: Option<Date>,
        words: &'a Catalogue,
    ) -> Self {
        let (home, places, sides) = (guide.home(), guide.places(), guide.sides(net));
        Self { guide, home, places, net, today, words, sides }
    }

    /// Who answers for a spot. A space answers only if all of the net in it has one answer.
    pub(crate) fn at(&self, at: &Spot) -> Option<Responsible> {
        match at {
            Spot::Component(id) => {
                let place = self.places.of(id)?;
                self.is_in_net(place).then(|| self.of(Thing::Component(place)))
            }
            Spot::Connection(from, to) => {
                let link = self.home.connections.iter().find(|link| {
                    &link.from == from && &link.to == to && link.carries.net() == self.net
                })?;
                Some(self.of(Thing::Line(link)))
            }
            Spot::Space(id) => {
                let here = (0..self.home.components.len()).filter(|&place| {
                    self.home.components[place].space.as_ref() == Some(id) && self.is_in_net(place)
                });
                let mut all = here.map(|place| self.of(Thing::Component(place)));
                let first = all.next()?;
                let alike = |other: &Responsible| {
                    (&other.party, &other.warranty, &other.first.contact)
                        == (&first.party, &first.warranty, &first.first.contact)
                };
                all.all(|other| alike(&other)).then_some(first)
            }
            Spot::Home => None,
        }
    }

    fn is_in_net(&self, place: usize) -> bool {
        self.lines_at(place).next().is_some()
    }

    fn lines_at(&self, place: usize) -> impl Iterator<Item = &'a Connection> {
        let net = self.net;
        self.guide.lines_at(place).filter(move |link| link.carries.net() == net)
    }

    fn of(&self, thing: Thing<'_>) -> Responsible {
        let (side, boundary) = self.side(thing);
        let party = match self.owner(thing) {
            Some(contact) if contact.role == Some(Role::Owner) => Party::Owner,
            Some(contact) => Party::Contact(contact.id.clone()),
            None if side == Side::Street => {
                let role = utility_role(self.net);
                contact_for(self.home, role)
                    .map_or(Party::Utility(role), |c| Party::Contact(c.id.clone()))
            }
            None => Party::Owner,
        };
        let covering = self.covering(thing, party == Party::Owner);
        let in_force = self
            .today
            .and_then(|today| covering.iter().copied().find(|warranty| in_force(warranty, today)));
        let ran_out = covering
            .iter()
            .filter_map(|warranty| Some((*warranty, last_day(warranty)?)))
            .filter(|(_, last)| self.today.is_some_and(|today| *last < today))
            .max_by_key(|(_, last)| *last);
        let boundary_name = boundary.map(|place| self.home.components[place].name.clone());
        let (contact, role, why) =
            self.first(&party, in_force, ran_out, boundary_name, thing, side);
        Responsible {
            side,
            boundary: boundary.map(|place| self.home.components[place].id.clone()),
            party,
            warranty: in_force.map(|warranty| warranty.id.clone()),
            until: match in_force {
                Some(warranty) => last_day(warranty),
                None => ran_out.map(|(_, last)| last),
            },
            first: call(self.words, contact, role, &why),
            why,
            role,
        }
    }

    /// The side of a thing. A line lies on the side of its end that is no boundary; with a boundary
    /// at each end, behind the one that comes first from the street.
    fn side(&self, thing: Thing<'_>) -> (Side, Option<usize>) {
        let link = match thing {
            Thing::Component(place) => return self.sides.of_component(place),
            Thing::Line(link) => link,
        };
        let ends = [&link.from, &link.to].map(|id| self.places.of(id));
        let told = ends.map(|end| end.map(|place| self.sides.of_component(place)));
        let plain = told.iter().flatten().find(|(side, _)| *side != Side::Boundary);
        if let Some(told) = plain {
            return *told;
        }
        let first = ends.into_iter().flatten().min_by_key(|&place| self.sides.crossed(place));
        (Side::Between, first)
    }

    /// The contact that the map names as the owner. A line belongs to its end away from the street,
    /// unless that end is a boundary.
    fn owner(&self, thing: Thing<'_>) -> Option<&'a Contact> {
        // Whoever keeps the account of a thing does not own the thing.
        let owner = |place: usize| {
            let owner = self.home.contact(self.home.components[place].owner.as_deref()?);
            owner.filter(|contact| contact.role != Some(Role::Alarm))
        };
        let link = match thing {
            Thing::Component(place) => return owner(place),
            Thing::Line(link) => link,
        };
        // Water and power come from the street, waste goes there.
        let to_street = matches!(self.net, Net::Waste | Net::Vent | Net::Condensate);
        let mut ends = if to_street { [&link.from, &link.to] } else { [&link.to, &link.from] }
            .map(|id| self.places.of(id))
            .into_iter()
            .flatten();
        let plain = |place: &usize| !self.home.components[*place].boundary;
        ends.find(plain).and_then(owner)
    }

    /// Warranties that cover a thing whatever the day, the one to call upon in front: what leaves
    /// least to the owner, then what names the thing, then what ends last, then the order of the file.
    fn covering(&self, thing: Thing<'_>, is_owners: bool) -> Vec<&'a Warranty> {
        let (ids, media): (Vec<&str>, Vec<Medium>) = match thing {
            Thing::Component(place) => {
                let component = &self.home.components[place];
                let media = if is_brought_in(self.home, component) || !is_owners {
                    Vec::new()
                } else {
                    self.lines_at(place).map(|link| link.carries).collect()
                };
                (vec![component.id.as_str()], media)
            }
            Thing::Line(link) if is_owners => (Vec::new(), vec![link.carries]),
            Thing::Line(_) => (Vec::new(), Vec::new()),
        };
        let mut found: Vec<(&Warranty, bool)> = self
            .home
            .warranties
            .iter()
            .filter_map(|warranty| {
                let named = warranty.covers.iter().any(|id| ids.contains(&id.as_str()));
                let by_line = warranty.media.iter().any(|medium| media.contains(medium));
                (named || by_line).then_some((warranty, named))
            })
            .collect();
        let end = |warranty: &Warranty| last_day(warranty).map_or(i64::MAX, Date::days_since_1970);
        found.sort_by_key(|(warranty, named)| {
            (pays_least(warranty.kind), !named, std::cmp::Reverse(end(warranty)))
        });
        found.into_iter().map(|(warranty, _)| warranty).collect()
    }

    fn first(
        &self,
        party: &Party,
        warranty: Option<&Warranty>,
        ran_out: Option<(&Warranty, Date)>,
        boundary: Option<String>,
        thing: Thing<'_>,
        side: Side,
    ) -> (Option<&'a Contact>, Role, String) {
        let boundary = boundary.unwrap_or_default();
        if let Some(warranty) = warranty {
            let until = last_day(warranty).map(|day| told_day(self.words, day));
            let end = if until.is_some() { "known" } else { "open" };
            let fills = [
                fill("warranty", &warranty.name),
                fill("end", end),
                fill("until", &until.unwrap_or_default()),
                fill("pays", pays(warranty.kind)),
            ];
            let why = self.words.fill("responsible-warranty", &fills);
            let contact = warranty.contact.as_deref().and_then(|id| self.home.contact(id));
            let role = contact.and_then(|c| c.role).unwrap_or(Role::Builder);
            let contact = contact.or_else(|| contact_for(self.home, role));
            return (contact, role, why);
        }
        match party {
            Party::Contact(id) => {
                let contact = self.home.contact(id);
                let role = contact.and_then(|c| c.role).unwrap_or_else(|| utility_role(self.net));
                let key = match side {
                    Side::Street => "responsible-street",
                    Side::Boundary => "responsible-boundary",
                    Side::Between | Side::House | Side::Unmarked => "responsible-theirs",
                };
                let name = contact.map_or_else(String::new, |c| c.name.clone());
                let fills = [fill("name", &name), fill("boundary", &boundary)];
                (contact, role, self.words.fill(key, &fills))
            }
            Party::Utility(role) => {
                let role = *role;
                let name = role_name(self.words, role);
                let fills = [fill("name", &name), fill("boundary", &boundary)];
                (None, role, self.words.fill("responsible-street", &fills))
            }
            Party::Owner => {
                let role = trade(self.home, self.net, thing_component(self.home, thing));
                let mark = if boundary.is_empty() {
                    if side == Side::House { "own" } else { "unmarked" }
                } else if side == Side::Boundary {
                    "boundary"
                } else if side == Side::Between {
                    "between"
                } else {
                    "house"
                };
                let (cover, warranty, until) = match (self.today, ran_out) {
                    (None, _) => ("unknown", "", String::new()),
                    (Some(_), Some((warranty, last))) => {
                        ("ended", warranty.name.as_str(), told_day(self.words, last))
                    }
                    (Some(_), None) => ("none", "", String::new()),
                };
                let fills = [
                    fill("mark", mark),
                    fill("boundary", &boundary),
                    fill("cover", cover),
                    fill("warranty", warranty),
                    fill("until", &until),
                ];
                let why = self.words.fill("responsible-ours", &fills);
                (contact_for(self.home, role), role, why)
            }
        }
    }
}

/// What is plugged in, or was bought with its plug and hoses: a warranty on lines does not cover it.
fn is_brought_in(home: &Home, component: &Component) -> bool {
    let plugged = || {
        home.connections.iter().any(|link| {
            let from = || home.component(&link.from).map(|feeder| feeder.kind);
            link.carries == Medium::Power
                && link.to == component.id
                && matches!(from(), Some(Kind::Receptacle | Kind::Gfci))
        })
    };
    match component.kind {
        Kind::WashingMachine | Kind::MedicalDevice => true,
        Kind::Appliance | Kind::Light => plugged(),
        _ => false,
    }
}

/// Order of warranties that cover the same: what leaves least to the owner first.
fn pays_least(kind: Option<WarrantyKind>) -> u8 {
    match kind {
        Some(WarrantyKind::Workmanship | WarrantyKind::Structural) => 0,
        Some(WarrantyKind::PartsAndLabor) | None => 1,
        Some(WarrantyKind::Parts) => 2,
        Some(WarrantyKind::ServicePlan) => 3,
    }
}

fn pays(kind: Option<WarrantyKind>) -> &'static str {
    match kind {
        Some(
            WarrantyKind::Workmanship | WarrantyKind::Structural | WarrantyKind::PartsAndLabor,
        ) => "all",
        Some(WarrantyKind::Parts) => "parts",
        Some(WarrantyKind::ServicePlan) => "fee",
        None => "ask",
    }
}

/// The utility of a net.
pub(crate) fn utility_role(net: Net) -> Role {
    match net {
        Net::Power | Net::Signal => Role::ElectricityUtility,
        Net::Gas => Role::GasUtility,
        Net::Waste | Net::Vent | Net::Condensate => Role::SewerUtility,
        Net::Water => Role::WaterUtility,
    }
}

/// The trade that mends something.
fn trade(home: &Home, net: Net, thing: Option<&Component>) -> Role {
    let cools = |kind: Kind| System::of_kind(kind) == System::Cooling;
    // Where nobody is named for cooling, a plumber or electrician is still somebody to call.
    let known = |role: Role| contact_for(home, role).is_some();
    if (net == Net::Condensate || thing.is_some_and(|c| cools(c.kind))) && known(Role::Cooling) {
        return Role::Cooling;
    }
    match net {
        Net::Power | Net::Signal => Role::Electrician,
        Net::Condensate => Role::Cooling,
        Net::Water | Net::Waste | Net::Vent | Net::Gas => Role::Plumber,
    }
}

fn thing_component<'h>(home: &'h Home, thing: Thing<'_>) -> Option<&'h Component> {
    match thing {
        Thing::Component(place) => home.components.get(place),
        Thing::Line(_) => None,
    }
}
