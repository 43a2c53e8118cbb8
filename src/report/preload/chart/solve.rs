//! Places on the chart: which spacer or nut torque gives which preload and torque.

use crate::bearing::{SpacerMemory, Support, Tightened};
use crate::numerics::root::{self, RootError};
use crate::report::preload::case::Preload;

/// State of the support with the chart's own value at `x`.
pub(super) fn state_at(present: &Preload, x: f64) -> Result<Tightened, RootError> {
    if present.support.has_sleeve() {
        present.support.tightened_to(x, SpacerMemory::default())
    } else {
        present
            .support
            .with_spacer_length_mm(x)
            .tightened_to(present.conditions.nut_torque_nm, SpacerMemory::default())
    }
}

pub(super) fn torque_with(present: &Preload, factor: Option<f64>, preload_n: f64) -> f64 {
    let at = |support: &Support| support.rolling_torque(preload_n, present.running).total_nm;
    factor.map_or_else(
        || at(&present.support),
        |factor| at(&present.support.with_friction_factor(factor)),
    )
}

/// Where the bearings just touch: the spacer length, or the nut torque of a sleeve.
pub(super) fn touching_place(present: &Preload) -> f64 {
    let support = &present.support;
    if support.has_sleeve() {
        let shortening = support.spacer.free_length_mm - support.zero_preload_length_mm;
        support
            .nut
            .tightening_torque_nm(support.spacer.force_n(shortening, SpacerMemory::default()))
    } else {
        place_with_spacer_force(
            present,
            support.nut.clamp_n(present.conditions.nut_torque_nm),
            support.zero_preload_length_mm,
        )
    }
}

/// Spacer length or nut torque at which the bearings carry `preload_n` > 0.
pub(super) fn place_of_preload(present: &Preload, preload_n: f64) -> Result<f64, RootError> {
    let support = &present.support;
    let loaded = support.zero_preload_length_mm - support.pair().closing_mm(preload_n);
    if support.has_sleeve() {
        let state = support.closed_to(loaded, SpacerMemory::default())?;
        return Ok(support.nut_torque_nm(&state));
    }
    let left_n = support.nut.clamp_n(present.conditions.nut_torque_nm) - preload_n;
    Ok(place_with_spacer_force(
        present,
        if left_n > 0.0 { left_n } else { 0.0 },
        loaded,
    ))
}

/// Preload at which bearings with a friction factor turn with `torque_nm`.
pub(super) fn preload_for_torque(present: &Preload, factor: f64, torque_nm: f64) -> Result<f64, RootError> {
    let excess = |preload_n: f64| torque_with(present, Some(factor), preload_n) - torque_nm;
    let mut high = 1000.0;
    while excess(high) < 0.0 && high < 1.0e7 {
        high *= 2.0;
    }
    root::in_bracket(excess, 0.0, high, 0.1)
}

/// Free length of a solid spacer that is `loaded_mm` long under a force, mm.
fn place_with_spacer_force(present: &Preload, force_n: f64, loaded_mm: f64) -> f64 {
    let per_length = force_n * present.support.spacer.compliance_mm_per_n() / present.support.spacer.free_length_mm;
    loaded_mm / (1.0 - per_length)
}
