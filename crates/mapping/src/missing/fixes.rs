//! Where something missing is put right, and its words.

use quarterturn_guidance::Spot;
use quarterturn_home::{Home, Kind, Medium, Net};

use super::Fix;
use crate::known::{Cause, Known};
use crate::order::{Lack, lacks};
use crate::propose::proposals_for;
use crate::said::Said;

/// Where a cause is put right, and its words.
pub(super) fn fix(home: &Home, cause: &Cause, spots: &[&Known]) -> Option<(Fix, Said)> {
    let name = |id: &str| home.component(id).map_or_else(|| id.to_owned(), |c| c.name.clone());
    let set = |set, key| (Fix::PlaceSet { set, space: None }, Said::new(key));
    let count = spots.len();
    Some(match cause {
        Cause::NoSource(Net::Water) => set("water-service", "missing-water-service"),
        Cause::NoSource(Net::Power) => set("panel", "missing-panel"),
        Cause::NoSource(Net::Gas) => set("gas-meter", "missing-gas-meter"),
        Cause::NoSource(_) => return None,
        Cause::NoOutfall => set("house-drain", "missing-house-drain"),
        Cause::NoMain => (Fix::AddMain, Said::new("missing-main")),
        Cause::NoCleanout => {
            (Fix::AddCleanout, Said::new("missing-cleanout").count("count", count))
        }
        Cause::NoDevice(_, id) => (
            Fix::AddShutoff { before: id.clone() },
            Said::new("missing-shutoff").with("name", name(id)),
        ),
        Cause::NoFeed(net, id) => {
            let carries = spots_medium(home, id, *net);
            let said = Said::new("missing-feed")
                .with("name", name(id))
                .medium("medium", carries)
                .count("count", count);
            (connect(home, id, Lack::Feed, carries), said)
        }
        Cause::NoDrain(carries, id) => {
            let said = Said::new("missing-drain").with("name", name(id)).count("count", count);
            (connect(home, id, Lack::Drain, *carries), said)
        }
        Cause::NoPump(id) => {
            let said = Said::new("missing-pump").with("name", name(id));
            (connect(home, id, Lack::Drain, Medium::Waste), said)
        }
        Cause::NoBreaker(_) => {
            let mut things: Vec<String> = spots
                .iter()
                .filter_map(|spot| match &spot.at {
                    Spot::Component(id) => Some(id.clone()),
                    _ => None,
                })
                .collect();
            things.dedup();
            let said = Said::new("missing-breakers").count("count", things.len());
            let breakers = home.components.iter().any(|c| c.kind == Kind::Breaker);
            if breakers {
                (Fix::FindBreakers { things }, said)
            } else {
                (Fix::PlaceSet { set: "panel", space: None }, Said::new("missing-panel"))
            }
        }
        Cause::NoSet(id, space) => {
            let room = home.space(space).map_or(space.as_str(), |s| s.name.as_str());
            let info = crate::sets::sets().into_iter().find(|set| set.id == *id)?;
            let said = Said::new("missing-set").kind("kind", info.kind).with("room", room);
            (Fix::PlaceSet { set: info.id, space: Some(space.clone()) }, said)
        }
    })
}

/// What a component of a net lacks, as far as it tells: a line that leaves it, else the usual.
fn spots_medium(home: &Home, id: &str, net: Net) -> Medium {
    let lacking = home.component(id).map(|c| lacks(home, c)).unwrap_or_default();
    let told = lacking.into_iter().find(|(lack, m)| *lack == Lack::Feed && m.net() == net);
    told.map_or(
        match net {
            Net::Power => Medium::Power,
            Net::Gas => Medium::Gas,
            _ => Medium::ColdWater,
        },
        |(_, medium)| medium,
    )
}

fn connect(home: &Home, id: &str, lack: Lack, carries: Medium) -> Fix {
    let proposal = proposals_for(home, id)
        .into_iter()
        .find(|p| p.lack == lack && p.line.carries == carries)
        .map(Box::new);
    Fix::Connect { id: id.to_owned(), lack, carries, proposal }
}
