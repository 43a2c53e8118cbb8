//! Quantities, packs, rings and sides in the middle of a sentence.

use crate::bench::{Measurand, Ring, ShimPlace, StemChoice};
use crate::words::bench::plate_number;

/// A quantity, exactly enough for one line.
pub fn quantity(what: Measurand) -> String {
    match what {
        Measurand::Lash { tooth } => format!("lash at tooth {tooth}"),
        Measurand::WheelFaceRunout {} => "the ring gear's face runout".to_owned(),
        Measurand::WheelRadialRunout {} => "the ring gear's radial runout".to_owned(),
        Measurand::PinionRunout {} => "the pinion's runout".to_owned(),
        Measurand::NutTorque {} => "the nut's torque".to_owned(),
        Measurand::BreakawayTorque {} => "breakaway torque".to_owned(),
        Measurand::RollingTorque {} => "rotating torque".to_owned(),
        Measurand::CarrierTorque {} => "the carrier's torque".to_owned(),
        Measurand::PinionDepth {} => PINION_DEPTH.to_owned(),
        Measurand::PinionEndPlay {} => "the pinion's end play".to_owned(),
        Measurand::CarrierEndPlay {} => "the carrier's end play".to_owned(),
        Measurand::CaseSpread {} => "the spread of the case".to_owned(),
        Measurand::ShimPiece { piece } => format!("shim piece {piece}"),
        Measurand::ShimPack { place } => format!("the pack of {}", pack(place)),
        Measurand::SeatGap { ring: of } => format!("the gap behind the {}", ring(of)),
        Measurand::WheelTemperature {} => "the ring gear's temperature".to_owned(),
        Measurand::Print {} => "the print".to_owned(),
        Measurand::Plate { plate: of } => format!("plate {}", plate_number(of)),
        Measurand::MatchNumbers {} => "the etched numbers".to_owned(),
    }
}

pub(super) const PINION_DEPTH: &str = "the pinion's depth by arbor and block";

/// Where shims go.
pub const fn pack(place: ShimPlace) -> &'static str {
    match place {
        ShimPlace::Depth => "depth shims",
        ShimPlace::Spacer => "spacer shims",
        ShimPlace::ToothSide => "shims on the tooth side",
        ShimPlace::BackSide => "shims behind the ring gear",
    }
}

/// A ring.
pub const fn ring(ring: Ring) -> &'static str {
    match ring {
        Ring::HeadCone => "head cone",
        Ring::HeadCup => "head cup",
        Ring::TailCup => "tail cup",
    }
}

/// A stem.
pub const fn stem(stem: StemChoice) -> &'static str {
    match stem {
        StemChoice::SquareToTrace => "stem square to the tooth",
        StemChoice::AlongMotion => "stem along the motion",
        StemChoice::AlongNormal => "stem square to the flank",
    }
}

/// A name on the bench as it is spoken.
pub fn plain(name: &str) -> String {
    name.replace('_', " ")
}
