//! What was believed: quantities at the head of a row, and how they were read.

use crate::bench::Measurand;
use crate::exercise::debrief::{LastReading, Subject};
use crate::words::bench::plate_number;

use super::quantity::{pack, plain, ring, stem};

/// What a belief is about.
pub fn subject(subject: Subject) -> String {
    match subject {
        Subject::PinionTorque => "Rotating torque, pinion alone".to_owned(),
        Subject::TotalTorque => "Rotating torque, gears in mesh".to_owned(),
        Subject::Of(what) => match what {
            Measurand::Lash { tooth } => format!("Lash at tooth {tooth}"),
            Measurand::WheelFaceRunout {} => "Face runout, back of the ring gear".to_owned(),
            Measurand::WheelRadialRunout {} => "Radial runout of the ring gear".to_owned(),
            Measurand::PinionRunout {} => "Runout of the pinion".to_owned(),
            Measurand::NutTorque {} => "Torque on the pinion nut".to_owned(),
            Measurand::BreakawayTorque {} => "Breakaway torque".to_owned(),
            Measurand::RollingTorque {} => "Rotating torque".to_owned(),
            Measurand::CarrierTorque {} => "Torque of the carrier alone".to_owned(),
            Measurand::PinionDepth {} => "Axis to pinion head, by arbor and block".to_owned(),
            Measurand::PinionEndPlay {} => "End play of the pinion".to_owned(),
            Measurand::CarrierEndPlay {} => "End play of the carrier".to_owned(),
            Measurand::CaseSpread {} => "Spread of the case".to_owned(),
            Measurand::SeatGap { ring: of } => format!("Gap behind the {}", ring(of)),
            Measurand::ShimPiece { piece } => format!("Thickness of shim piece {piece}"),
            Measurand::ShimPack { place } => format!("Thickness of the {}", pack(place)),
            Measurand::WheelTemperature {} => "Temperature of the ring gear".to_owned(),
            Measurand::Print {} => "Print".to_owned(),
            Measurand::Plate { plate: of } => format!("Plate {}", plate_number(of)),
            Measurand::MatchNumbers {} => "Etched numbers".to_owned(),
        },
    }
}

/// With what it was read.
pub fn read_with(read: &LastReading) -> String {
    let laid = read.stem.map_or_else(String::new, |laid| format!(", {}", stem(laid)));
    format!("{}{laid}", plain(&read.instrument))
}
