//! Builds: their names, what was changed for each and what was read of it.

use crate::bench::CarrierSide;
use crate::exercise::debrief::{Build, Change, SawKind};
use crate::quantity::{Units, fine_length, number, signed, torque};
use crate::words::bench::part as part_name;

use super::amount::{both, both_nut_torque, both_torque};
use super::quantity::{PINION_DEPTH, pack, ring};

/// Name of a build.
pub fn name(build: &Build) -> String {
    if build.as_found {
        "As it came in".to_owned()
    } else if build.handed_over {
        format!("Build {}, handed over", build.number)
    } else {
        format!("Build {}", build.number)
    }
}

/// Name of a build where there is little room.
pub fn short_name(build: &Build) -> String {
    if build.as_found {
        "as it came in".to_owned()
    } else {
        format!("build {}", build.number)
    }
}

/// Which operations belong to it.
pub fn span(build: &Build) -> String {
    let [first, last] = build.operations;
    if last < first {
        BEFORE.to_owned()
    } else {
        format!("operations {first} to {last}")
    }
}

/// When a build ended that no operation belongs to.
pub const BEFORE: &str = "before the first operation";

/// What was changed, in a few words with numbers.
pub fn change(change: &Change) -> String {
    match change {
        Change::ShimsIn { place, labelled_mm } => format!("{} {} by label", pack(*place), both(*labelled_mm)),
        Change::ShimsOut { place } => format!("{} out", pack(*place)),
        Change::ShimsBy { place, labelled_mm } => {
            let way = if *labelled_mm < 0.0 { "thinner" } else { "thicker" };
            format!("{} {} {way} by label", pack(*place), both(labelled_mm.abs()))
        }
        Change::Adjuster { side, notches } => {
            let adjuster = match side {
                CarrierSide::Tooth => "tooth-side adjuster",
                CarrierSide::Back => "adjuster behind",
            };
            format!("{adjuster} {} notches", signed(*notches, 1))
        }
        Change::NutTightened { torque_nm } => format!("nut tightened to {}", both_nut_torque(*torque_nm)),
        Change::NutTurned { angle_deg, steps } => {
            format!("nut turned on by {}° in {steps} steps", number(*angle_deg, 1))
        }
        Change::NewSpacer => "new spacer".to_owned(),
        Change::NewNut => "new nut".to_owned(),
        Change::NewSeal => "new seal".to_owned(),
        Change::NewPart { part } => format!("new {}", part_name(*part)),
        Change::WheelFitted { crosswise: true } => "ring gear drawn on crosswise".to_owned(),
        Change::WheelFitted { crosswise: false } => "ring gear drawn on round the circle".to_owned(),
        Change::WheelSeatCleaned => "ring gear's seat cleaned".to_owned(),
        Change::Pressed { ring: of } => format!("{} pressed on", ring(*of)),
        Change::CapsSwapped => "caps changed round".to_owned(),
        Change::Condemned { part } => format!("condemned: {}", part_name(*part)),
    }
}

/// What was read of a build, in one system of units.
pub fn saw(kind: SawKind, value: f64, units: Units) -> String {
    let value = if kind.is_torque() {
        torque(value, units)
    } else {
        fine_length(value, units)
    };
    format!("{} {value}", saw_name(kind))
}

/// As [`saw`], in both.
pub fn saw_in_both(kind: SawKind, value: f64) -> String {
    let value = if kind.is_torque() {
        both_torque(value)
    } else {
        both(value)
    };
    format!("{} {value}", saw_name(kind))
}

const fn saw_name(kind: SawKind) -> &'static str {
    match kind {
        SawKind::PinionTorque => "pinion alone",
        SawKind::TotalTorque => "in mesh",
        SawKind::Lash => "lash",
        SawKind::PinionDepth => PINION_DEPTH,
        SawKind::EndPlay => "end play",
        SawKind::FaceRunout => "face runout",
    }
}
