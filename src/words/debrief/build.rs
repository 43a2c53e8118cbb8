//! Builds: their names, what was changed for each and what was read of it.

use crate::bench::{CarrierSide, Ring};
use crate::exercise::debrief::{Build, Change, SawKind};
use crate::quantity::{Units, fine_length, number, torque};
use crate::words::bench::part as part_name;
use crate::words::say;

use super::amount::{both, both_nut_torque, both_torque};
use super::quantity::{pack, ring};

/// Name of a build.
pub fn name(build: &Build) -> String {
    if build.as_found {
        say!("debrief-build-as-found")
    } else if build.handed_over {
        say!("debrief-build-signed-off", number = build.number)
    } else {
        say!("debrief-build", number = build.number)
    }
}

/// Name of a build where there is little room.
pub fn short_name(build: &Build) -> String {
    if build.as_found {
        say!("debrief-build-as-found-short")
    } else {
        say!("debrief-build-short", number = build.number)
    }
}

/// Which operations belong to it.
pub fn span(build: &Build) -> String {
    let [first, last] = build.operations;
    if last < first {
        before()
    } else {
        say!("debrief-build-span", first = first, last = last)
    }
}

/// When a build ended that no operation belongs to.
pub fn before() -> String {
    say!("debrief-build-before")
}

/// What was changed, in a few words with numbers.
pub fn change(change: &Change) -> String {
    match change {
        Change::ShimsIn { place, labelled_mm } => {
            say!("debrief-change-shims-in", pack = pack(*place), by = both(*labelled_mm))
        }
        Change::ShimsOut { place } => say!("debrief-change-shims-out", pack = pack(*place)),
        Change::ShimsBy { place, labelled_mm } => {
            let (pack, by) = (pack(*place), both(labelled_mm.abs()));
            if *labelled_mm < 0.0 {
                say!("debrief-change-shims-thinner", pack = pack, by = by)
            } else {
                say!("debrief-change-shims-thicker", pack = pack, by = by)
            }
        }
        Change::Adjuster { side, notches } => adjuster(*side, *notches),
        Change::NutTightened { torque_nm } => {
            say!("debrief-change-nut-tightened", torque = both_nut_torque(*torque_nm))
        }
        Change::NutTurned { angle_deg, steps } => {
            say!(
                "debrief-change-nut-turned",
                angle = number(*angle_deg, 1),
                steps = *steps
            )
        }
        Change::NewSpacer => say!("debrief-change-new-spacer"),
        Change::NewNut => say!("debrief-change-new-nut"),
        Change::NewSeal => say!("debrief-change-new-seal"),
        Change::NewPart { part } => say!("debrief-change-new-part", part = part_name(*part)),
        Change::WheelFitted { crosswise: true } => say!("debrief-change-ring-gear-crosswise"),
        Change::WheelFitted { crosswise: false } => say!("debrief-change-ring-gear-around"),
        Change::WheelSeatCleaned => say!("debrief-change-seat-cleaned"),
        Change::Pressed { ring: of } => match of {
            Ring::HeadCone => say!("debrief-change-cone-pressed", ring = ring(*of)),
            Ring::HeadCup | Ring::TailCup => say!("debrief-change-cup-pressed", ring = ring(*of)),
        },
        Change::CapsSwapped => say!("debrief-change-caps-swapped"),
        Change::Condemned { part } => say!("debrief-change-rejected", part = part_name(*part)),
    }
}

/// Notches of an adjuster; positive screws it in.
fn adjuster(side: CarrierSide, notches: f64) -> String {
    let plural = notches.abs();
    let decimals = usize::from((plural - plural.round()).abs() > 1e-9);
    let count = number(plural, decimals);
    match (side, notches < 0.0) {
        (CarrierSide::Tooth, false) => say!("debrief-change-adjuster-tooth-in", plural = plural, count = count),
        (CarrierSide::Tooth, true) => say!("debrief-change-adjuster-tooth-out", plural = plural, count = count),
        (CarrierSide::Back, false) => say!("debrief-change-adjuster-back-in", plural = plural, count = count),
        (CarrierSide::Back, true) => say!("debrief-change-adjuster-back-out", plural = plural, count = count),
    }
}

/// What was read of a build, in one system of units.
pub fn saw(kind: SawKind, value: f64, units: Units) -> String {
    saw_value(
        kind,
        if kind.is_torque() {
            torque(value, units)
        } else {
            fine_length(value, units)
        },
    )
}

/// As [`saw`], in both.
pub fn saw_in_both(kind: SawKind, value: f64) -> String {
    saw_value(
        kind,
        if kind.is_torque() {
            both_torque(value)
        } else {
            both(value)
        },
    )
}

fn saw_value(kind: SawKind, value: String) -> String {
    match kind {
        SawKind::PinionTorque => say!("debrief-saw-pinion-torque", value = value),
        SawKind::TotalTorque => say!("debrief-saw-total-torque", value = value),
        SawKind::Lash => say!("debrief-saw-lash", value = value),
        SawKind::PinionDepth => say!("debrief-saw-pinion-depth", value = value),
        SawKind::EndPlay => say!("debrief-saw-end-play", value = value),
        SawKind::FaceRunout => say!("debrief-saw-face-runout", value = value),
    }
}
