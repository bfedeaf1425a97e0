//! What still runs out after everything is shut: water that stands above the leak.

use quarterturn_estimate::si::length::meter;
use quarterturn_estimate::si::volume::liter;
use quarterturn_estimate::standing::{self, Air, Column, Pipe};
use quarterturn_estimate::{Length, Range, Volume};
use quarterturn_home::{Connection, Material, Net};
use quarterturn_network::{HomeNet, Node, as_node};

use crate::context::Context;
use crate::isolation::{Way, is_shut};

/// Height of a tank when the map does not tell, in metres. Common practice, no source.
const TANK_M: f64 = 1.2;
/// Size of a pipe when the map does not tell. Common practice, no source: half inch.
const USUAL_SIZE: &str = "1/2 in";

/// Litres that may still run out at the targets once the way is shut: what stands in pipes and tanks
/// that are open to them, and higher. What has no known height counts in the upper figure alone.
///
/// Errs high: air must get in for a pipe to run empty, and a tank's dip tube may hold its water back.
pub(crate) fn litres(ctx: &Context<'_>, net: &HomeNet, targets: &[Node], way: &Way) -> Range<f64> {
    let shut = |node: Node| {
        is_shut(ctx, net, node) || way.devices.iter().any(|&place| as_node(place) == node)
    };
    let open = net.network.open_to(targets, shut);
    let count = ctx.home.components.len();
    let height = |place: usize| ctx.home.height_m(&ctx.home.components[place]);
    let leak = targets
        .iter()
        .map(|&node| node as usize)
        .chain(ctx.spot_components())
        .filter(|&place| place < count)
        .find_map(height);
    let (mut known, mut unknown) = (Vec::new(), Volume::default());
    for place in (0..count).filter(|&place| open[place]) {
        let Some(holds) = ctx.home.components[place].volume_l else { continue };
        let holds = Volume::new::<liter>(holds);
        match height(place) {
            Some(bottom) => known.push(column(bottom, bottom + TANK_M, holds)),
            None => unknown += holds,
        }
    }
    for link in ctx.home.connections.iter().filter(|link| link.carries.net() == Net::Water) {
        let (Some(from), Some(to)) = (ctx.places.of(&link.from), ctx.places.of(&link.to)) else {
            continue;
        };
        if !(open[from] && open[to]) {
            continue;
        }
        let Some(holds) = held(link) else { continue };
        match (height(from), height(to)) {
            (Some(a), Some(b)) => known.push(column(a.min(b), a.max(b), holds)),
            _ => unknown += holds,
        }
    }
    let litres = |volume: Volume| volume.get::<liter>();
    let Some(leak) = leak else {
        // Any of it may stand above a leak of unknown height.
        let all = known.iter().fold(unknown, |sum, column| sum + column.holds);
        return Range::new(0.0, litres(all) / 2.0, litres(all));
    };
    let drains = standing::still_drains(&known, Length::new::<meter>(leak), Air::Unknown);
    Range::new(litres(drains.low), litres(drains.likely), litres(drains.high + unknown))
}

fn column(bottom: f64, top: f64, holds: Volume) -> Column {
    let [bottom, top] = [bottom, top].map(Length::new::<meter>);
    Column { bottom, top, holds }
}

/// What a connection holds, if its length is known.
fn held(link: &Connection) -> Option<Volume> {
    let length = Length::new::<meter>(link.length_m?);
    let nominal = standing::nominal(link.size.as_deref().unwrap_or(USUAL_SIZE))?;
    let pipe = match link.material {
        Some(Material::Pex | Material::Pe | Material::Pp | Material::Cpvc) => Pipe::Pex,
        _ => Pipe::CopperL,
    };
    // A size that the table lacks is near enough to its own name.
    let bore = standing::bore(pipe, nominal).unwrap_or(nominal);
    Some(standing::held(bore, length))
}
