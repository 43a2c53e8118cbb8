//! What was believed: quantities at the head of a row, and how they were read.

use crate::bench::Measurand;
use crate::exercise::debrief::{LastReading, Subject};
use crate::words::bench::{plate_number, tool};
use crate::words::say;

use super::quantity::{pack, ring, stem, tooth_number};

/// What a belief is about.
pub fn subject(subject: Subject) -> String {
    match subject {
        Subject::PinionTorque => say!("debrief-subject-pinion-torque"),
        Subject::TotalTorque => say!("debrief-subject-total-torque"),
        Subject::Of(what) => match what {
            Measurand::Lash { tooth } => say!("debrief-subject-lash", tooth = tooth_number(tooth)),
            Measurand::WheelFaceRunout {} => say!("debrief-subject-face-runout"),
            Measurand::WheelRadialRunout {} => say!("debrief-subject-radial-runout"),
            Measurand::PinionRunout {} => say!("debrief-subject-pinion-runout"),
            Measurand::NutTorque {} => say!("debrief-subject-nut-torque"),
            Measurand::BreakawayTorque {} => say!("debrief-subject-breakaway"),
            Measurand::RollingTorque {} => say!("debrief-subject-rotating"),
            Measurand::CarrierTorque {} => say!("debrief-subject-carrier-torque"),
            Measurand::PinionDepth {} => say!("debrief-subject-pinion-depth"),
            Measurand::PinionEndPlay {} => say!("debrief-subject-pinion-play"),
            Measurand::CarrierEndPlay {} => say!("debrief-subject-carrier-play"),
            Measurand::CaseSpread {} => say!("debrief-subject-spread"),
            Measurand::SeatGap { ring: of } => say!("debrief-subject-gap", ring = ring(of)),
            Measurand::ShimPiece { piece } => say!("debrief-subject-piece", piece = piece),
            Measurand::ShimPack { place } => say!("debrief-subject-pack", pack = pack(place)),
            Measurand::WheelTemperature {} => say!("debrief-subject-temperature"),
            Measurand::Print {} => say!("debrief-subject-print"),
            Measurand::Plate { plate: of } => say!("debrief-subject-plate", plate = plate_number(of)),
            Measurand::MatchNumbers {} => say!("debrief-subject-numbers"),
        },
    }
}

/// With what it was read.
pub fn read_with(read: &LastReading) -> String {
    let instrument = tool(&read.instrument);
    match read.stem {
        Some(laid) => say!("debrief-read-with", instrument = instrument, stem = stem(laid)),
        None => instrument,
    }
}
