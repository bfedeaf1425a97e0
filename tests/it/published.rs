//! The estimates held against published values, one file for each kind of source.
//!
//! Where a publication contradicts itself or the rest of the world, its figure stands here as a
//! case that must not pass.

mod ashrae_fundamentals;
mod condensate_rules;
mod copper_tube_handbook;
mod drain_tables;
mod drip_figures;
mod dryer_duct_codes;
mod gfci_ul_943;
mod iec_60898;
mod insurers_hose;
mod nec_annex_d;
mod nec_circuits;
mod pex_sheet;
mod plumbing_codes;
mod sprinkler_friction;
mod ul_489;
mod utility_leak_tables;
mod walking_speeds;

/// True if `value` is within `share` of `published`, as `approx` has it.
fn agrees(value: f64, published: f64, share: f64) -> bool {
    approx::relative_eq!(value, published, max_relative = share)
}
