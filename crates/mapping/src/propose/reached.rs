//! What a net reaches.

use std::collections::BTreeSet;

use quarterturn_home::{Component, Home, Kind, Net};

/// What a net reaches from its sources, or what reaches its outfalls.
pub(super) struct Reached<'a> {
    pub(super) net: Net,
    pub(super) ids: BTreeSet<&'a str>,
}

impl<'a> Reached<'a> {
    pub(super) fn nothing(net: Net) -> Self {
        Self { net, ids: BTreeSet::new() }
    }

    pub(super) fn of(home: &'a Home, net: Net) -> Self {
        let drains = matches!(net, Net::Waste | Net::Condensate);
        let is_end = |c: &&Component| match net {
            Net::Waste => c.kind.is_outfall(),
            Net::Condensate => matches!(
                c.kind,
                Kind::CondensateOutlet | Kind::FloorDrain | Kind::Standpipe | Kind::CondensatePump
            ),
            _ => c.kind.is_source(net),
        };
        let mut stack: Vec<&str> =
            home.components.iter().filter(is_end).map(|c| c.id.as_str()).collect();
        let mut ids: BTreeSet<&str> = stack.iter().copied().collect();
        let lines: Vec<(&str, &str)> = home
            .connections
            .iter()
            .filter(|l| l.carries.net() == net)
            .map(|l| {
                if drains {
                    (l.to.as_str(), l.from.as_str())
                } else {
                    (l.from.as_str(), l.to.as_str())
                }
            })
            .collect();
        while let Some(at) = stack.pop() {
            for (_, next) in lines.iter().filter(|(near, _)| *near == at) {
                if ids.insert(next) {
                    stack.push(next);
                }
            }
        }
        Self { net, ids }
    }
}
