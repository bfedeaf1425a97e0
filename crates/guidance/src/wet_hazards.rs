//! What could hurt where water is: power near it, panels below it, stairs down into it, hot water.

use quarterturn_home::{Kind, Medium};

use crate::catalogue::fill;
use crate::context::{Context, is_electrical};
use crate::draft::Draft;

/// Most names in a caution: it must be read before anything is done.
const FEW: usize = 3;

/// A device lower than the leak: water may have run down there before one does.
pub(crate) fn go_down(ctx: &Context<'_>, draft: &mut Draft) {
    let level = |place: usize| {
        let space = ctx.space_of(place).and_then(|id| ctx.home.space(id))?;
        space.level.as_deref().and_then(|id| ctx.home.level(id))
    };
    let spot = ctx
        .spot_space()
        .and_then(|id| ctx.home.space(id))
        .and_then(|space| ctx.home.level(space.level.as_deref()?));
    let Some(spot) = spot else { return };
    let lower = draft
        .used
        .iter()
        .flat_map(|way| &way.devices)
        .filter_map(|&place| Some((place, level(place)?)))
        .find(|(place, level)| {
            let outdoors = ctx.space_of(*place).and_then(|id| ctx.home.space(id));
            level.elevation_m < spot.elevation_m && outdoors.is_some_and(|space| !space.outdoors)
        });
    if let Some((_, level)) = lower {
        draft.caution(ctx, "caution-going-down", &[fill("level", &level.name)]);
    }
}

pub(crate) fn warn_of_power(ctx: &Context<'_>, draft: &mut Draft) {
    warn_of_panels_below(ctx, draft);
    let Some(space) = ctx.spot_space() else {
        draft.caution(ctx, "caution-water-near-power", &[]);
        return;
    };
    let near: Vec<String> = ctx
        .components_in(space)
        .into_iter()
        .filter(|&place| is_electrical(ctx.home.components[place].kind))
        .map(|place| ctx.name(place))
        .take(FEW)
        .collect();
    if near.is_empty() {
        draft.caution(ctx, "caution-water-near-power", &[]);
    } else {
        let list = ctx.catalogue.list(&near);
        draft.caution(ctx, "caution-water-near-power-named", &[fill("list", &list)]);
    }
}

/// Water finds its way down: panels on lower levels, under the spot or near under it.
fn warn_of_panels_below(ctx: &Context<'_>, draft: &mut Draft) {
    /// How far water is taken to run along a ceiling, in metres. Common practice, no source.
    const ALONG_M: f64 = 3.0;
    let Some(spot) = ctx.spot_space().and_then(|id| ctx.home.space(id)) else { return };
    let elevation =
        |id: Option<&str>| id.and_then(|id| ctx.home.level(id)).map(|level| level.elevation_m);
    let Some(here) = elevation(spot.level.as_deref()) else { return };
    let below: Vec<String> = (0..ctx.home.components.len())
        .filter(|&p| matches!(ctx.home.components[p].kind, Kind::Panel | Kind::ServiceDisconnect))
        .filter(|&panel| {
            let space = ctx.space_of(panel).and_then(|id| ctx.home.space(id));
            let lower = space
                .filter(|space| !space.outdoors)
                .and_then(|space| elevation(space.level.as_deref()))
                .is_some_and(|there| there < here);
            lower && ctx.spot_point().is_near(ctx.point(panel), ALONG_M)
        })
        .map(|panel| ctx.name(panel))
        .collect();
    if !below.is_empty() {
        let list = ctx.catalogue.list(&below);
        draft.caution(ctx, "caution-panel-below", &[fill("list", &list)]);
    }
}

/// Hot water scalds: said where a hot line leads to the spot.
pub(crate) fn warn_of_heat(ctx: &Context<'_>, draft: &mut Draft) {
    let spot = ctx.spot_components();
    let hot = ctx.home.connections.iter().any(|link| {
        link.carries == Medium::HotWater
            && [&link.from, &link.to]
                .into_iter()
                .any(|id| ctx.places.of(id).is_some_and(|place| spot.contains(&place)))
    });
    if hot {
        draft.caution(ctx, "caution-hot-water", &[]);
    }
}
